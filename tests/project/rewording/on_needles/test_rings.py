"""A ring that is joined and marked in any order of words. Source: common practice."""

from __future__ import annotations

from stepper.project.rewording.on_needles.rings import write_rings
from stepper.project.rewording.reworded import as_printed
from tests.tables import each_row

JOINED, MARKED = "Join in the round", "Join in the round. Pm for BOR"


@each_row(
    ("printed", "order"),
    [
        ("Mark beg of rnd, join.", f"{MARKED}."),
        ("Join without twisting and mark the beginning of the rnd (left side).", f"{MARKED}."),
        ("Join into a round; the marker is at the centre back.", f"{JOINED}."),
        ("Taking care that the edge is not twisted, join into a ring and mark the beg. of the round with a loop of coloured wool.", f"{MARKED}."),
        ("Join in the round (don't twist!), put your special marker on.", f"{MARKED}."),
        ("CO 60 sts, join to work in the rnd and place your odd marker for BOR.", f"CO 60 sts. {MARKED}."),
        ("Put and keep a marker on needle between last and first sts of rnd (this will be at left side).", "Pm for BOR."),
        ("Join into a ring; place a marker after 30 sts.", f"{JOINED}; place a marker after 30 sts."),
        # what only looks like it
        ("Join MC and mark the beginning of the round.", None),
        ("Join the fronts and the back.", None),
        ("Mark the first and last 10 sts.", None),
        ("Mark the beginning of the row.", None),
        ("Place a marker at each side of the round.", None),
        ("K30, place a marker and join in the round.", None),
    ],
)
def test_what_is_joined_and_marked_is_ordered_and_how_is_said(printed: str, order: str | None) -> None:
    """A sentence is made of such phrases up to its end, or it stays as it is printed."""
    line = write_rings(as_printed(printed))
    assert line.text == (printed if order is None else order)
    assert len(line.places) == len(line.text) + 1
    assert not line.kept or order is not None
