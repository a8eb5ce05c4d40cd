from __future__ import annotations

from stepper.session.fault.ways import RemedyKind, cost_remedy
from stepper.session.state import Position


def test_what_only_looks_or_counts_settles_nothing() -> None:
    """The fault stays looked for, or it would be forgotten as soon as she looks."""
    assert [kind for kind in RemedyKind if not kind.settles] == [
        RemedyKind.LOOK,
        RemedyKind.RECOUNT,
        RemedyKind.NARROW,
        RemedyKind.FINISH,
    ]


def test_the_values_of_old_journals_stay() -> None:
    """An entry of an older version is read by its value."""
    old = ("recount", "plain", "drop", "tink", "rip", "accept")
    assert [RemedyKind(value) for value in old]


def test_a_cost_is_told_in_stitches_and_minutes() -> None:
    """At the usual pace, until hers is known."""
    way = cost_remedy(RemedyKind.TINK, 60.4, Position(index=2), undone=30)
    assert (way.stitches, way.undone, way.kind) == (60, 30, RemedyKind.TINK)
    assert way.minutes > 0
