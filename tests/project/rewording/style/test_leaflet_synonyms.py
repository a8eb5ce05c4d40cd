"""Sentences of leaflets and hobby pages in other words. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Change to 3 1/4mm needles.", "Change to 3.25 mm needles."),
        ("Sl 1, p8, (9, 10), p2tog, p1, turn.", "Sl 1, p8 (9, 10), p2tog, p1, turn."),
        ("Row 6: K1*yo, k2tog* k1.", "Row 6: K1, *yo, k2tog; rep from *, k1."),
        ("Increase to 38 sts, by adding 4sts, evenly spaced.", "Increase 4 sts evenly. 38 sts."),
        ("Rows 4 and 5: Repeat rows 2 and 3 - 36 sts in row 5.", "Rows 4 and 5: Repeat rows 2 and 3. 36 sts."),
        ("Cont on the 41 sts obtained until piece measures 9 cm.", "41 sts. work even until piece measures 9 cm."),
        ("Bind off for shoulders at the beg of the next 6 rows 4 sts.", "Bind off 4 sts at beg of next 6 rows."),
        ("K1, m1r, k to end of needle 1; k to last st on needle 2, m1l, k1.", "needle 1: K1, m1r, k to end; needle 2: k to last st, m1l, k1."),
        ("Divide over needles (15, 10, 10).", "divide over 3 needles, 15 sts on needle 1, 10 sts on needle 2, 10 sts on needle 3."),
        ("Distribute sts on DPNs as follows: 8:10:8 (8:12:8, 10:10:10).", "divide over 3 needles, 8 (8, 10) sts on needle 1, 10 (12, 10) sts on needle 2, 8 (8, 10) sts on needle 3."),
    ],
)  # fmt: skip
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """What is meant is the same, whichever way the page writes it."""
    assert reword(made_plain(printed)).text == read


@pytest.mark.parametrize(
    "printed",
    [
        "K2, (3), k4.",
        "Rep rows 1-2 2 more times so you have a total of 5 repeats.",
        "Rows 4 and 5: Repeat rows 2 and 3 - 36 sts in row 4.",
        "Keep first 3 and last 4 sts of row in seed st, and work center sts in stockinette st, until piece measures 3 cm.",
    ],
)
def test_what_does_not_agree_with_itself_stays_as_it_is(printed: str) -> None:
    """A sum that does not come out, or a list with a number too few, is not put right in silence."""
    made = reword(made_plain(printed))
    assert made.text == printed
    assert made.kept == ()


def test_needles_in_figures_need_a_number_for_each() -> None:
    """With one too few nobody can tell which needle has none."""
    assert "divide over" not in reword(made_plain("Divide sts on dpns: 8:8:8 (8:8).")).text


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Change to st st.", "go on in st st."),
        ("*Sl 1, p1* across on WS rows.", "WS rows: *Sl 1, p1; rep from * to end."),
        ("K1 (k2, k2), pm, k16, pm, k to end.", "K1 (2, 2), pm, k16, pm, k to end."),
        ("Bind off 6 sts 3 times from armhole side.", "Bind off 6 sts at armhole edge every 2nd row 3 times."),
        ("Work even for 9 cm from the first binding off.", "Work even until armhole measures 9 cm."),
        ("K to marker, slip sts between next two markers onto scrap yarn, k to end.", "K to marker, hold to next marker, k to end."),
        ("Join carefully not to twist and knit 3 rnds.", "join in the round. knit 3 rnds."),
    ],
)  # fmt: skip
def test_a_line_is_put_into_the_words_that_are_read_on_hobby_pages(printed: str, read: str) -> None:
    """What is meant is the same, whichever way the page writes it."""
    assert reword(made_plain(printed)).text == read


@pytest.mark.parametrize("printed", ["Change to lattice pattern.", "K1 (p2, k2), k16."])
def test_what_may_mean_something_else_stays_as_it_is(printed: str) -> None:
    """A fabric that nobody named is no stockinette, and a list of two stitches no list of sizes."""
    made = reword(made_plain(printed))
    assert made.text == printed
    assert made.kept == ()
