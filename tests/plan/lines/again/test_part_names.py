"""Which part is the first of a pair, and what is worked again of it. Worked out by hand; source of the reading: common practice."""

from __future__ import annotations

from tests.plan.lines.again.test_another_part import knit, refused
from tests.tables import each_row

SLEEVE = ("== first sleeve", "CO 50 sts. Work flat.", "K 2 rows.", "Bind off.")
BACK = ("== back", "CO 60 sts. Work flat.", "K 2 rows.", "Bind off.")
GLOVE = ("== cuff", "CO 22 sts. Join. Put the first 5 sts on a holder for the thumb, k to end.", "Bind off.",
         "== thumb", "Place the thumb sts on the needles. Knit 1 rnd. Bind off.")  # fmt: skip
WORKED = [
    ((*SLEEVE, *BACK, "== second sleeve", "Same as the first."), [50, 50, 50, 0, 60, 60, 60, 0, 50, 50, 50, 0]),
    ((*SLEEVE, *BACK, "== second sleeve", "Work as first."), [50, 50, 50, 0, 60, 60, 60, 0, 50, 50, 50, 0]),
    ((*GLOVE, "== second glove", "As the first."), [22, 17, 0, 5, 5, 0, 22, 17, 0, 5, 5, 0]),
    ((*GLOVE, "== second glove", "Make the second glove the same."), [22, 17, 0, 5, 5, 0, 22, 17, 0, 5, 5, 0]),
    (("== edges", "CO 20 sts. Join. K 1 rnd.", "Bind off. Work the other one the same."), [20, 20, 0, 20, 20, 0]),
    (("== edges", "Make 2. CO 20 sts. Join. K 1 rnd.", "Bind off."), [20, 20, 0, 20, 20, 0]),
]
"""Lines of a page, and the stitches after each row."""


@each_row("lines, rows", WORKED)
def test_the_second_of_a_pair_is_worked_whole(lines: tuple[str, ...], rows: list[int]) -> None:
    """No bind-off is missing from it, and "as the first" below its own heading is not itself, which is nothing."""
    assert [round_.after for round_ in knit(*lines).rounds] == rows


def test_what_names_no_first_is_refused() -> None:
    """Else the second band would silently be no band at all."""
    assert "nothing of the second band stands before this line" in refused(*BACK, "== second band", "As the first.")
