"""Lists of sizes of any form as one number and one bracket. Source of the forms: common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.signs.list_forms import write_in_one_bracket
from tests.tables import each_row

LISTS = (
    ("K to end. 58/62/68/74/80/86/92 sts.", "K to end. 58 (62, 68, 74, 80, 86, 92) sts."),
    ("K10-12-14, pm, k to end.", "K10 (12, 14), pm, k to end."),
    ("Hold 20 / 22 / 24 for sleeve.", "Hold 20 (22, 24) for sleeve."),
    ('5/5/5½" (12.5/12.5/13.5 cm)', '5 (5, 5½)" (12.5 (12.5, 13.5) cm)'),
    ("every 4th-6th-8th row 5-6-7 times", "every 4th (6th, 8th) row 5 (6, 7) times"),
    ("every 12th (12th) 10th (9th) rnd", "every 12th (12th, 10th, 9th) rnd"),
    ("every 4th (6th-8th) row", "every 4th (6th, 8th) row"),
    ("CO (82, 90, 98) sts.", "CO 82 (90, 98) sts."),
    ("K(20, 22, 24), p2.", "K20 (22, 24), p2."),
    ("Knit to end. (64/68/72 sts)", "Knit to end. (64 (68, 72) sts)"),
    ("K22 (23, 24) 25 (26, 27) 28 (28, 29), turn.", "K22 (23, 24, 25, 26, 27, 28, 28, 29), turn."),
    ("CO 80 {88-96-104} sts.", "CO 80 (88, 96, 104) sts."),
    ("64 (68/72) sts", "64 (68, 72) sts"),
    ("K10 (11) 12 (13) 14 (sleeve), pm, k24 (25) 26.", "K10 (11, 12, 13, 14) (sleeve), pm, k24 (25, 26)."),
    ("*K10 (14, 15) 16 (17), k2tog", "*K10 (14, 15, 16, 17), k2tog"),
)
NO_LISTS = (
    "Rows 1-3-5: Knit.",
    "2/1/1 RPC, k to end.",
    "Work for 2/3 cm.",
    "4-5 rounds",
    "K2, (5), k4.",
    "Distribute sts as follows: 8:10:8 (8:12:8, 10:10:10).",
    "Work for 2 (1/2) cm.",
    "needles 2-3-4",
    "CO 64 (72, 80) sts.",
    "64 (68; 72) sts",
    "(k2, p2) 3 times",
)


@each_row(("printed", "plain"), LISTS)
def test_a_list_of_any_form_becomes_one_bracket(printed: str, plain: str) -> None:
    """A page has its lists in one form at every place where a number may stand."""
    assert write_in_one_bracket(as_printed(printed)).text == plain


@pytest.mark.parametrize("line", NO_LISTS)
def test_numbers_that_are_no_list_stay_as_they_are(line: str) -> None:
    """Rows, cables and fractions have numbers with the same signs between them."""
    assert write_in_one_bracket(as_printed(line)).text == line


def test_each_number_keeps_its_printed_place() -> None:
    """A problem with one size is told at its number."""
    line = write_in_one_bracket(as_printed("CO 10/12/14 sts."))
    assert line.place(line.text.index("14"), 2) == ("CO 10/12/14".index("14"), 2)
