"""Sentences joined in one, in other words. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword
from tests.waiting import processor_s, usual_s


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("CO 20 sts; join.", "CO 20 sts. join in the round."),
        ("Join and work in k1, p1 rib for 4 rnds.", "join in the round. work in k1, p1 rib for 4 rnds."),
        ("Change to st st and work 4 rows.", "work 4 rows in st st."),
        ("Rep last 2 rows 3 times more, then row 1 once more.", "rep last 2 rows 3 times more. work row 1 once more."),
        ("Work 5 rows straight, ending with a WS row.", "Work 5 rows straight. ends with a WS row."),
        ("Rep last 2 rows until 32 sts remain, ending with a P row.", "rep last 2 rows until 32 sts remain. ends with a P row."),
        ("K3, *p2, k2; rep from *, end last rep k3.", "K3, *p2, k2; rep from *, p2, k3."),
        ("Rep from ** to ** twice more.", "again from ** to ** twice more."),
        ("Work 4 rnds in *k1, p1* rib.", "Work 4 rnds in k1, p1 rib."),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """What is joined on the page is worked one after the other."""
    assert reword(made_plain(printed)).text.casefold() == read.casefold()


@pytest.mark.parametrize(
    "printed",
    ["Join CC and work 4 rounds.", "Dec 1 st at neck edge of every row, then at armhole edge of every row.", "*K2, p2; rep from *, end k3."],
)
def test_what_joins_something_else_is_no_joining_in_the_round(printed: str) -> None:
    """A yarn is joined too, another edge is another edge, and an end without "last rep" is what follows."""
    made = reword(made_plain(printed)).text
    assert "in the round" not in made
    assert "then on" not in made
    assert "p2, k3" not in made


def test_a_line_that_names_needles_hundreds_of_times_is_recast_at_once() -> None:
    """A page pasted without its line ends is one line; she does not wait seconds to be told that it is not read."""
    row = "Increase Round: K1, m1R, k to end of Needle 1; k to last st on Needle 2, m1L, k1; k1, m1R, k to end of Needle 3; k to last st on Needle 4, m1L, k1.; "
    line = made_plain(row * 80)
    reword("K to end of needle 1.")  # the table is made
    assert processor_s(lambda: reword.__wrapped__(line)) < usual_s(0.5)
