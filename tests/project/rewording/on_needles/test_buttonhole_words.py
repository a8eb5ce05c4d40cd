"""Buttonholes made beside rows, in any order of what is told of them. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.wording import reads
from stepper.project.rewording.on_needles.buttonhole_words import write_buttonholes
from stepper.project.rewording.reworded import as_printed


def written(printed: str) -> str:
    """Return a line with its buttonholes behind its rows."""
    return write_buttonholes(as_printed(printed)).text


@pytest.mark.parametrize(
    "told",
    [
        ", making 7 buttonholes in row 4 thus: (yrn, work 2 tog), first and last 4 sts from ends, remainder spaced evenly between",
        ", working 7 buttonholes evenly spaced on 4th row (yo, k2tog), 4 sts from each edge",
        "; at the same time work 7 evenly spaced buttonholes on the fourth row, each worked yo, k2tog, the first and last 4 sts from the ends",
        ", but on the 4th row make 7 buttonholes evenly by yo, k2tog, 4 sts in from each end",
        " and, at the same time, place seven buttonholes in the 4th row, the first and last buttonholes 4 sts from either end of the band, the others equally spaced: yfwd, k2tog",
    ],
)
def test_how_many_where_and_how_may_come_in_any_order(told: str) -> None:
    """Every house prints them in its own."""
    assert written(f"Rib 7 rows{told}.") == "Rib 7 rows. With 7 buttonholes in row 4, 4 sts from each end, by yo, k2tog."


@pytest.mark.parametrize(
    ("printed", "meant"),
    [
        ("Rib 9 rows, making eighth buttonhole as before on 4th and 5th.", "Rib 9 rows. With a buttonhole as before in rows 4, 5."),
        ("Knit 6 rows, making 4 buttonholes evenly on row 3: cast off 3, and cast on 3 over each on the next row.", "Knit 6 rows. With 4 buttonholes in row 3 by bind off 3."),
        ("Buttonhole row: Rib, making 5 buttonholes evenly (yo, k2tog).", "Buttonhole row: Work in pattern. With 5 buttonholes by yo, k2tog."),
        ("Knit 40 rows, working a buttonhole every 14th row beginning at row 5: k2, yo, k2tog, k to end.", "Knit 40 rows. With a buttonhole every 14th row from row 5 by k2, yo, k2tog, k to end."),
        ("As right band, omitting buttonholes.", "As right band. Without buttonholes."),
        ("K 10 rows, make another buttonhole as before. K 4 rows.", "K 10 rows. Work another buttonhole. K 4 rows."),
        ("Rib 5, cast off 3, rib to end; and on next row cast on 3 over those cast off.", "Rib 5, cast off 3, rib to end. Work in pattern, casting on 3 sts over each buttonhole."),
        ("K4, cast off 2, k to end. Cast on 2 sts over these on the return row.", "K4, cast off 2, k to end. Work in pattern, casting on 2 sts over each buttonhole."),
        ("Buttonhole row: K3, *yo twice, k2tog, k14; rep from * to last 5 sts, yo twice, k2tog, k3. Next row drop one of the two yo's.", "Buttonhole row: K3, *yo, k2tog, k14; rep from * to last 5 sts, yo, k2tog, k3. Work 1 row even."),
        ("Make another buttonhole as before, k 4 rows.", "Work another buttonhole. k 4 rows."),
    ],
)  # fmt: skip
def test_one_row_two_rows_or_the_next_of_them(printed: str, meant: str) -> None:
    """A buttonhole lies in one row, or in two."""
    line = write_buttonholes(as_printed(printed))
    assert line.text == meant
    assert len(line.places) == len(line.text) + 1


@pytest.mark.parametrize(
    "printed",
    [
        "Knit 8 rows, making 5 buttonholes evenly spaced on 4th row.",  # how?
        "Knit 8 rows, making 5 buttonholes on 4th row thus: yo, k2tog.",  # where?
        "Knit 8 rows, making 5 buttonholes to match the buttons thus: yo, k2tog.",
        "Knit 8 rows, working buttonholes at left front in row 3 thus: k2, yo, k2tog.",
        "Making 5 buttonholes evenly in row 4 (yo, k2tog).",  # beside no rows
        "Sew on buttons to match buttonholes.",
        "Rib 5, cast off 3, rib to end; and on next row cast on 3 over those cast off twice.",
        "Cast on 2 sts over these on the next row.",  # nothing is bound off before
        "K3, *yo twice, k2tog; rep from * to end.",
        "Knit 1 row. Next row drop one of the two yo's.",
    ],
)
def test_what_is_not_told_is_not_taken(printed: str) -> None:
    """Where a buttonhole lies is never guessed."""
    assert written(printed) == printed


def test_what_is_only_said_is_kept() -> None:
    """The edge is told with the row."""
    printed = "Knit 8 rows, making a buttonhole at right front (left for a boy) on the 3rd row thus: k2, yo, k2tog, k1."
    line = write_buttonholes(as_printed(printed))
    assert line.text == "Knit 8 rows. With a buttonhole at right front in row 3 by k2, yo, k2tog, k1."
    assert line.kept == ("at right front (left for a boy)",)


@pytest.mark.parametrize("closed", ["cast on 2 over each on the next row", "cast on 3 over each twice on the next row", "cast on 3 over every other one"])
def test_what_closes_them_otherwise_is_not_passed_over(closed: str) -> None:
    """Two cast on over three would draw the band in at each button."""
    assert not reads(f"Knit 6 rows, making 4 buttonholes evenly on row 3: cast off 3, and {closed}.")
