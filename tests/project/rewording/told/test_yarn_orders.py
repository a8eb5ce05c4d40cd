"""Orders for the yarns between colour bands. Source: common practice of yokes in print."""

from __future__ import annotations

from stepper.project.instructions import BreakYarn, WithYarn
from stepper.project.problems import Span
from stepper.project.reading.wording import Words, read_line, reads
from stepper.project.rewording.told.phrases import split_phrases
from stepper.project.rewording.told.yarn_orders import YARN_ORDERS, write_yarn_orders

YARNS = {"MC": "grey", "CC1": "rust", "CC2": "straw", "A": "white"}
ORDERS = {
    "Break CC1 after this round.": ("-CC1", ("after this round",)),
    "Break CC1 and CC2 and continue in MC only.": ("-CC1 -CC2 +MC", ()),
    "Break off both pattern colours; the rest is grey.": ("+MC", ("Break off both pattern colours",)),
    "Cut the white, leaving a tail to weave in.": ("-A", ("leaving a tail to weave in",)),
    "The rest of the hat is worked in white.": ("+A", ()),
    "Break A but do not cut CC1.": ("-A", ("do not cut CC1",)),
}
STAY = (
    "Break both contrast colours.",
    "Join CC1 and CC2.",
    "Continue in MC, then break CC1.",
    "Break CC1 after the next round.",
    "Break CC1 and knit the rest.",
    "Continue in MC and then in CC1.",
)
"""Which yarn goes on is not said, or when; or more is said than the phrases mean."""


def yarns_of(line: str) -> tuple[str, tuple[str, ...]]:
    """Return the yarns that a line breaks (-) and goes on with (+), and what is said with it."""
    read = read_line(
        line, lambda at, length: Span(line=1, column=at + 1, length=length), Words(sizes=0, yarns=YARNS)
    )
    assert read.line is not None, (line, read.problems)
    signs = [
        f"{'-' if isinstance(one, BreakYarn) else '+'}{one.yarn}"
        for one in read.line.sentences
        if isinstance(one, BreakYarn | WithYarn)
    ]
    return " ".join(signs), read.line.said


def test_yarns_are_cut_and_gone_on_with_as_the_sentence_says() -> None:
    """A band that goes on in the wrong yarn is seen across the room."""
    assert {line: yarns_of(line) for line in ORDERS} == ORDERS


def test_a_sentence_that_leaves_a_yarn_open_is_not_written() -> None:
    """Both colours cut, and nothing said of what goes on: which is it?"""
    split = {line: split_phrases(line, 0, YARN_ORDERS) for line in STAY}
    assert [line for line, found in split.items() if found is not None and write_yarn_orders(found[0])] == []
    assert [line for line in STAY if reads(line)] == []
