"""What a page says beside the work, and signs lost or doubled in print. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Bind (cast) off 7 sts at beg of next 4 rows.", "bind off 7 sts at beg of next 4 rows."),
        ("Rnd 3: *(P1, k3), around.", "Rnd 3: (P1, k3) to end."),
        ("7th and 8th rows: As 3rd and 4th.", "rows 7 and 8: Repeat rows 3 and 4."),
    ],
)
def test_a_sign_of_the_page_is_put_into_the_notation(printed: str, words: str) -> None:
    """A dash in front, a star without an end and a word of two countries mean what is meant."""
    assert " ".join(reword(made_plain(printed)).text.split()) == words


@pytest.mark.parametrize(
    ("printed", "said"),
    [
        ("Keeping patt correct, cast off 5 sts at beg of next 2 rows.", "Keeping patt correct"),
        ("Cast off 9 sts, rib to end, to form pocket opening.", "to form pocket opening"),
        ("These will be the cuff stitches.", "These will be the cuff stitches"),
    ],
)
def test_a_remark_is_said_with_the_line(printed: str, said: str) -> None:
    """Nothing the page says is lost, though it works no stitches."""
    assert said in reword(made_plain(printed)).kept


@pytest.mark.parametrize(
    "printed",
    [
        "Knit 4 rows, to form ridge every other row.",
        "The sleeves will be worked flat.",
        "This will be repeated twice.",
        "K8 (for 3 rows), k to end.",
    ],
)
def test_a_remark_that_may_instruct_is_no_remark(printed: str) -> None:
    """How often, in which rows and in what manner is never passed over."""
    assert reword(made_plain(printed)).kept == ()
