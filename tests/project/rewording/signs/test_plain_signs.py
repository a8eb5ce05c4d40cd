"""Signs of a line put as most pages have them.

Source of the forms: common practice, US and UK, old and modern print.
"""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import undress
from stepper.project.rewording.signs.plain_signs import HEAD_SIGNS, PLAIN_SIGNS
from tests.tables import each_row

SAME = (
    # --- heads ---
    ("R1 [RS]: K2, p2, k to end.", "Rnd 1 (RS): K2, p2, k to end."),
    ("R3-10: Rep rows 1 and 2.", "Rnds 3-10: Rep rows 1 and 2."),
    ("Rows 1 – Knit.", "Rows 1: Knit."),
    ("Row 1 (RS) – K2, p2.", "Row 1 (RS): K2, p2."),
    ("Row #3: Knit.", "Row 3: Knit."),
    ("Row3: Knit.", "Row 3: Knit."),
    ("(WS) Row 2: P2, k to end.", "Row 2 (WS): P2, k to end."),
    ("WS Row 2: P2, k to end.", "Row 2 (WS): P2, k to end."),
    ("Row 1, RS: Knit.", "Row 1 (RS): Knit."),
    ("Row 1: (RS). Knit.", "Row 1 (RS): Knit."),
    ("Shape neck: Next row: (RS). K30, turn.", "Shape neck: Next row (RS): K30, turn."),
    ("Next row:- Purl.", "Next row: Purl."),
    ("1st row (RS):– Knit.", "1st row (RS): Knit."),
    ("2nd-4th Rows. Work in st st.", "Rows 2-4: Work in st st."),
    ("Moss st row – K1, *p1, k1; rep from * to end.", "Moss st row: K1, *p1, k1; rep from * to end."),
    ("Inc Rnd. *K4, m1; rep from * around.", "Inc Rnd: *K4, m1; rep from * around."),
    # --- repeats ---
    ("*K2, p2*, rep between * * to end.", "*K2, p2; rep from * to end."),
    ("*K2, p2*; rep between asterisks.", "*K2, p2; rep from * to end."),
    ("*K2, p2*; rep to last 2 sts, k2.", "*K2, p2; rep from * to last 2 sts, k2."),
    ("{K2, p2} to end.", "[K2, p2] to end."),
    ("Rep [k2, p2] to end.", "[k2, p2] to end."),
    ("[K2, p2] (3 times), k to end.", "[K2, p2] 3 times, k to end."),
    # --- stitches ---
    ("K. 1, K2-tog, M1 L, k to end.", "K1, K2tog, m1L, k to end."),
    ("(K2. P2) to end.", "(K2, P2) to end."),
    # --- counts ---
    ("Knit to end → 70 sts.", "Knit to end. 70 sts."),
    ("Knit to end // 70 (72, 74) sts", "Knit to end. 70 (72, 74) sts"),
    ("Knit to end. {70 sts}", "Knit to end. 70 sts"),
    ("Knit for armholes (= 34 sts).", "Knit for armholes. 34 sts."),
    ("Ssk, k1, 22 sts.", "Ssk, k1. 22 sts."),
    # --- units ---
    ("Work until piece measures 3 cms, ending with a WS row.", "Work until piece measures 3 cm, ending with a WS row."),
    ("Work for 5 cm, 2 in, from beg.", "Work for 5 cm [2 in] from beg."),
)  # fmt: skip

OTHERWISE = (
    "Row 1 - Set-up row (RS): K2, pm, k to end.",
    "Rows 1-4: Knit.",
    "Knit 1 row. 20 sts.",
    "K to last 4 sts, hold 4 sts",
    "With R, knit 2 rows.",
    "*K2, p2; rep from * to end.",
    "K. 6 rows.",
    "Rep from * to * once more.",
)
"""What looks alike and is something else, or has its signs already."""


@each_row("row", [*HEAD_SIGNS, *PLAIN_SIGNS])
def test_every_row_reads_its_example(row: object) -> None:
    """A row whose example is read without it, or not read with it, is of no use."""
    example = row.example  # type: ignore[attr-defined] # a row of the table
    assert reads(example)
    assert undress(made_plain(example)).text != made_plain(example)


@each_row(("printed", "most"), SAME)
def test_signs_are_put_as_most_pages_have_them(printed: str, most: str) -> None:
    """Whoever reads the sentence in one dress reads it in each."""
    assert undress(made_plain(printed)).text == most


@pytest.mark.parametrize("line", OTHERWISE)
def test_what_is_something_else_keeps_its_signs(line: str) -> None:
    """A sign with a meaning of its own must not be lost."""
    assert undress(line).text == line


def test_letters_keep_their_printed_place() -> None:
    """A problem is told where it is printed."""
    line = undress("R1 [RS] - K10/12/14, frob to end.")
    assert line.text == "Rnd 1 (RS): K10 (12, 14), frob to end."
    assert line.place(line.text.index("frob"), 4) == ("R1 [RS] - K10/12/14, frob".index("frob"), 4)
