"""What a clause says comes out of a row is its count. All sentences are invented."""

from __future__ import annotations

from stepper.project.rewording.clauses.results import write_results
from stepper.project.rewording.reworded import as_printed
from tests.tables import each_row

COUNTS = (
    ("K to end, when there should be 40 sts.", "K to end. 40 sts."),
    ("K to end, at which point you will have 40 (44) sts.", "K to end. 40 (44) sts."),
    ("*K2, ssk; rep from * to end, thus having 30 sts.", "*K2, ssk; rep from * to end. 30 sts."),
    ("Dec 1 st at each end of next row, there being now 38 sts.", "Dec 1 st at each end of next row. 38 sts."),
    ("Dec 1 st at each end of every 4th row 5 times, when 40 sts will remain.", "Dec 1 st at each end of every 4th row 5 times. 40 sts."),
    ("*K2, ssk; rep from * to end, bringing the total to 30 sts.", "*K2, ssk; rep from * to end. 30 sts."),
    ("*K2, ssk; rep from * to end, with 30 sts remaining.", "*K2, ssk; rep from * to end. 30 sts."),
    ("*K2, ssk; rep from * to end, ten times in all.", "*K2, ssk; rep from * 9 more times."),
    ("Knit 1 row. When the dust settles you have 18 sts.", "Knit 1 row. you have 18 sts."),
    ("*K3, p1; rep from * to end (8 reps).", "*K3, p1; rep from * 7 more times."),
    ("*K3, p1; rep from * - 30 (33, 35) reps.", "*K3, p1; rep from * 29 (32, 34) more times."),
    ("*K3, p1; rep from *, eight repeats in all.", "*K3, p1; rep from * 7 more times."),
    ("Place a marker after every 20 (22, 24) sts, 6 sections.", "place marker every 20 (22, 24) sts. 120 (132, 144) sts."),
    ("Place a marker after every 20 sts (you will have made 6 sections).", "place marker every 20 sts. 120 sts."),
    ("Work these 2 rows 14 times altogether, 28 rows.", "Work these 2 rows 14 times altogether. 28 rows."),
    ("Work these 2 rows 14 times, 28 rows, then row 1 once more.", "Work these 2 rows 14 times, then row 1 once more."),
    ("Knit until sleeve is 15 in, decreasing 1 st somewhere in the last rnd.", "Knit until sleeve is 15 in, decreasing 1 st in the last rnd."),
    ("Next rnd: Knit, placing a marker after every 15 sts.", "Next rnd: Knit. Place marker every 15 sts."),
)  # fmt: skip
NO_COUNTS = (
    "*K2, ssk; rep from * 10 times.",
    "K to end, with 30 sts in rib.",
    "K to end, when 40 sts are bound off.",
    "Knit 1 row. When both sleeves are held you have 18 sts.",
    "Knit 1 row. When you have purled you have 18 sts.",
    "K to end, when there should be 40 sts on each side.",
    "*K3, p1; rep from * - 3 reps of the chart.",
    "Place a marker after every 20 sts, 6 sections of rib.",
    "Place a marker after every 20 (22) sts, 6 (7, 8) sections.",
    "Work these 2 rows 14 times, 28 rows of them in B.",
    "Next rnd: Knit, placing a marker after every 15 sts and slipping the last.",
)


@each_row(("printed", "read"), COUNTS)
def test_what_comes_out_is_a_count(printed: str, read: str) -> None:
    """So the plan holds it against the stitches that there are."""
    assert write_results(as_printed(printed)).text == read


@each_row("line", NO_COUNTS)
def test_what_hangs_on_a_number_is_no_count(line: str) -> None:
    """It says what is worked, or of which part, and stays."""
    assert write_results(as_printed(line)).text == line
