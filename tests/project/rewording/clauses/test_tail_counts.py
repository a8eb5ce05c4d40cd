"""Counts that a row or an order ends with, in words of their own. Source: common practice."""

from __future__ import annotations

from stepper.project.rewording.clauses.tail_counts import write_counted_rows, write_tail_counts
from stepper.project.rewording.reworded import as_printed
from tests.tables import each_row


@each_row(
    ("printed", "words"),
    [
        ("K2tog around, which leaves you with 30.", "K2tog around. 30 sts"),
        ("*K10, m1* and you're at 66 (72).", "*K10, m1*. 66 (72) sts"),
        ("*K5, m1*, which brings us to the full 264. No more increases!", "*K5, m1*. 264 sts. No more increases!"),
        ("*K10, m1* 66 sts.", "*K10, m1*. 66 sts"),
        ("(K8, k2tog) around: 54.", "(K8, k2tog) around. 54 sts"),
        ("K to end, giving 54 sts on the needles.", "K to end. 54 sts"),
    ],
)
def test_the_count_is_a_sentence_of_its_own(printed: str, words: str) -> None:
    """Whatever says that so many are there now."""
    assert write_tail_counts(as_printed(printed)).text.removesuffix(".") == words.removesuffix(".")


@each_row(
    "printed",
    [
        "Knit until you have 54 sts.",
        "Rep rows 1-2, which makes 6.",
        "Knit to end, and you have 6 left.",
        "K2tog, leaving 5 sts unworked.",
        "Leave 30 sts on hold, leaving 24 for the front.",
        "Bind off 5 sts and there are 20 sts for each shoulder.",
        "K1: 54 rounds.",
    ],
)
def test_what_may_count_something_else_is_left(printed: str) -> None:
    """Rounds, a part of the stitches, or what is worked up to."""
    assert write_tail_counts(as_printed(printed)).text == printed


def test_a_row_is_written_up_to_its_count() -> None:
    """Of a line whose rows are not read nothing is changed here."""
    assert write_counted_rows(as_printed("*K8, k2tog*, leaving 54.")).text == "*k8, k2tog; rep from * to end. 54 sts."
    assert write_counted_rows(as_printed("K8 as shown in the photo, leaving 54.")).text == "K8 as shown in the photo, leaving 54."
