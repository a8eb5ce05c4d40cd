"""Other words for one thing. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword
from tests.tables import each_row


@each_row(
    ("printed", "words"),
    [
        ("Return to thinner pins and purl 2 rows.", "Return to smaller pins and purl 2 rows."),
        ("With the thicker needles, Knit 3 rows.", "Change to larger needles. Knit 3 rows."),
        ("K5, slip next 9 sts onto a scrap of cotton, k5.", "K5, hold 9 sts, k5."),
        ("Inc 1 st at each end 4 x in every 6th row.", "Inc 1 st at each end every 6th row 4 times."),
        ("Repeat these increases in each 6th round another 4 times.", "rep same inc round each 6th round 4 times more."),
        ("On the fourth needle, p1, k to end.", "needle 4: p1, k to end."),
        ("On the 2nd and 3rd dpns work in pattern.", "needles 2 and 3: work in pattern to end."),
        ("For the border, knit 7 rows.", "border: knit 7 rows."),
        ("Work these 6 rows until piece measures 9 cm.", "rep last 6 rows until piece measures 9 cm."),
        ("Work even until piece measures 8 cm, 3¼ in, from cast-on edge.", "Work even until piece measures 8 cm [3¼ in] from cast-on edge."),
        ("P3tog, break wool and fasten off.", "P3tog. Bind off rem 1 st."),
        ("Work 3 rows, thus finishing with a right side row.", "Work 3 rows. ends with a right side row."),
    ],
)  # fmt: skip
def test_a_thing_is_known_by_its_other_names(printed: str, words: str) -> None:
    """Each of these can mean one thing only."""
    assert " ".join(reword(made_plain(printed)).text.split()) == words


@pytest.mark.parametrize(
    "printed",
    [
        "For the heel flap work 20 rows.",
        "Rep the shaping on the first needle only.",
        "Use a finer yarn for the border.",
    ],
)
def test_what_only_looks_like_it_stays_as_printed(printed: str) -> None:
    """A part of the stitches, a number of rows in all, another yarn: none is put into other words."""
    assert reword(made_plain(printed)).text == printed
