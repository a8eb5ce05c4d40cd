from __future__ import annotations

from stepper.session.fault.landmarks import MOST_SECTIONS, sections_at
from stepper.session.state import Position
from tests.plans import final_increase, plan


def test_markers_come_first() -> None:
    """They are counted between by everyone."""
    garment = plan(("body", [("co40", {"markers": (10, 30)}), ("k10 m1 k30", {"markers": (11, 31)})]))
    at_start = sections_at(garment, Position(index=1))
    inside = sections_at(garment, Position(index=1, stitch=11))
    assert at_start is not None
    assert (at_start.kind, at_start.counts) == ("marker", (10, 20, 10))
    assert inside is not None
    assert sum(inside.counts) == 41


def test_without_markers_the_increases_are_counted_between() -> None:
    """They can be seen in the fabric, also some rounds later."""
    sections = sections_at(final_increase(), Position(index=4))
    assert sections is not None
    assert sections.kind == "change"
    assert len(sections.counts) <= MOST_SECTIONS
    assert sum(sections.counts) == 246
    assert sections.counts[:2] == (6, 12)


def test_plain_knitting_has_nothing_to_count_between() -> None:
    """Nothing is made up."""
    assert sections_at(plan(("body", ["co40", "k40", "k40"])), Position(index=2)) is None


def test_repeats_can_be_told_apart() -> None:
    """A rib or a chart is counted by its repeats."""
    sections = sections_at(plan(("cuff", ["co40", "(k2 p2)x10"])), Position(index=2))
    assert sections is not None
    assert (sections.kind, set(sections.counts)) == ("repeat", {4})
