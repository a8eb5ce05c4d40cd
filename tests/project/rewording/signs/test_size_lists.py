"""Lists of sizes in one form. Source: the print of patterns in many sizes; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.signs.size_lists import find_lists, in_brackets, write_lists_plainly
from tests.tables import each_row


def written(printed: str) -> str:
    """Return a line with its lists of sizes in one form."""
    return write_lists_plainly(as_printed(made_plain(printed))).text


@each_row(
    ("printed", "read"),
    [
        ("CO 80 [84, 88] (92, 96) {100} sts.", "CO 80 (84, 88, 92, 96, 100) sts."),
        ("K44 (48) [52], p2.", "K44 (48, 52), p2."),
        ("Rep row 1 once [twice, 3 times] more.", "Rep row 1 1 (2, 3) times more."),
        ("Rep row 1 once (twice) {3 times}.", "Rep row 1 1 (2, 3) times."),
        ("Rep row 1 twice (3, 4 times).", "Rep row 1 2 (3, 4) times."),
        ("Inc every 8th [6th] {4th} rnd.", "Inc every 8th (6th, 4th) rnd."),
        ("Inc every – [6th] {4th} rnd.", "Inc every 0th (6th, 4th) rnd."),
        ("Work for 14 cm (15 cm, 16 cm).", "Work for 14 (15, 16) cm."),
        ("Work for 11½ [12] {12½}\".", "Work for 11½ (12, 12½)\"."),
        ("[– (–, 96) sts]", "[0 (0, 96) sts]"),
        ("CO 80, 84, 88 (92, 96) sts.", "CO 80 (84, 88, 92, 96) sts."),
        ("Knit 3, 4 (5, 6) rnds, k20, 22, 24, 26 (28), pm.", "Knit 3 (4, 5, 6) rnds, k20 (22, 24, 26, 28), pm."),
        ("K across 9, 9 (8, 8) sts of front, 4, 5 (6, 6) sts of sleeve.", "K across 9 (9, 8, 8) sts of front, 4 (5, 6, 6) sts of sleeve."),
    ],
)
def test_a_list_becomes_one_number_and_one_bracket(printed: str, read: str) -> None:
    """The brackets say nothing: the order of the numbers is that of the sizes."""
    assert written(printed) == read


@pytest.mark.parametrize(
    "printed",
    [
        "K2 (4, 6), p2.",
        "(K2, p2) 4 times [12 sts].",
        "Cast on 64 - (72, 80) sts.",
        "Knit to end - (24) sts.",
        "Work for 4 cm (2 in).",
        "Row 3 [RS] (12 sts): Knit.",
        "Rep row 1 once, then row 2 twice.",
        "Rep rnds 1 and 2, 12 (14, 16) times.",
        "K2, 4 (5, 6) sts on hold.",
        "Rep rnds 1-4, 5 (6, 7) times.",
        "Work rows 1, 2 (3, 4) of chart.",
    ],
)
def test_what_is_no_such_list_stays(printed: str) -> None:
    """A bracket of stitches, of a side or of another unit is no size, and a dash may stand between two."""
    assert written(printed) == printed


def test_each_number_keeps_its_printed_place() -> None:
    """A problem is shown under the number that is printed."""
    line = write_lists_plainly(as_printed("CO 80 [84, 88] {92} sts."))
    assert line.places[line.text.index("92")] == "CO 80 [84, 88] {92} sts.".index("92")
    assert len(line.places) == len(line.text) + 1


def test_the_values_are_told_as_printed() -> None:
    """Ordinals, how often and dashes stay what they are."""
    ((match, values),) = find_lists("Rep - [once] {3 times}.")
    assert values == ["-", "once", "3 times"]
    assert match.group() == "- [once] {3 times}"


@pytest.mark.parametrize(
    ("printed", "bracketed"),
    [
        ("after 102 / 112 / 122 / 134 sts", "after 102 (112, 122, 134) sts"),
        ("cast on 88-92-98 sts", "cast on 88 (92, 98) sts"),
        ("6/8/10/13 times, (14 / 16 inc rnds)", "6 (8, 10, 13) times, (14 (16) inc rnds)"),
        ("until 29 – 30 – 31½ cm", "until 29 (30, 31½) cm"),
        ("5-6 rows, 1/2 in, C2/2 and 2/2 RC", "5-6 rows, 1/2 in, C2/2 and 2/2 RC"),
        ("Rows 2 / 4 / 6: purl, as on pages 3-4-5", "Rows 2 / 4 / 6: purl, as on pages 3-4-5"),
    ],
)
def test_lists_without_brackets_are_told_from_ranges_fractions_and_rows(printed: str, bracketed: str) -> None:
    """Leaflets of many countries set a number for each size side by side; a range and a cable look alike."""
    assert in_brackets(printed) == bracketed
