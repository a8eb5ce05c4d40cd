from __future__ import annotations

from stepper.plan.under_way.labelled import same_distance
from tests.plans import plan

OLD = plan(
    ("neck", ["co20", "k20"]),
    ("yoke", ["k20", ("k20", {"label": "First"}), "p20", ("k20", {"label": "Second"}), "p20"]),
    ("hem", ["bo20"]),
)


def test_a_place_is_as_far_from_its_label_as_it_was() -> None:
    """Two rounds more before the label move along what comes after it."""
    new = plan(
        ("neck", ["co20", "k20"]),
        ("yoke", ["k20"] * 3 + [("k20", {"label": "first"}), "p20", ("k20", {"label": "Second"}), "p20"]),
        ("hem", ["bo20"]),
    )

    assert [same_distance(OLD, new, at, {}) for at in range(9)] == [0, 1, 2, 5, 6, 7, 8, 9, 10]


def test_another_name_is_looked_up_and_a_lost_section_leads_to_the_next() -> None:
    """The hint goes with the name the section has now."""
    renamed = plan(("neck", ["co20", "k20"]), ("chest", ["k20"] * 5), ("hem", ["bo20"]))

    assert same_distance(OLD, renamed, 4, {"yoke": "chest"}) == 4
    assert same_distance(OLD, renamed, 4, {}) == 7


def test_the_end_stays_the_end() -> None:
    """All done is all done, and a plan that is not yet written has one place only."""
    assert same_distance(OLD, OLD, len(OLD.rounds), {}) == len(OLD.rounds)
    assert same_distance(OLD, plan(), 3, {}) == 0
