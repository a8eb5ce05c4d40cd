"""Estimate how long it takes to say a text, or a part of a round. No I/O.

A part of a round is estimated by its stitches, since steps are cut without knowing what the yarns are called;
a yarn's name is taken to be one word of six letters.
"""

from __future__ import annotations

from collections.abc import Iterable
from enum import Enum
from functools import cache
from itertools import pairwise
from typing import Final

from stepper.craft.even.phrases import number_words
from stepper.craft.rows import row_word
from stepper.craft.stitches import Kind, stitch
from stepper.plan.model import Group, Item, Round, Run, flatten

LONGEST_S: Final = 8.0
"""The longest that one stretch of speech lasts. Unit: s. Source: chosen here."""
MOST_S: Final = 7.2
"""An estimate above which something is parted: it falls short by less than the rest. Unit: s."""
WORDS_PER_MINUTE: Final = 150
"""The usual rate of the voice. Source: ordinary speech has 120 to 180 words a minute."""
_LETTER_S, _WORD_S, _COMMA_S, _COLON_S, _SENTENCE_S = 0.067, 0.016, 0.33, 0.41, 0.26
# What each takes at 150 words a minute: by least squares over sentences of six garments, rendered by
# eSpeak NG (`tests/bench/speech_seconds.py`). Over 4,845 of them the standard deviation of what is left is
# 0.21 s, and none takes more than 0.7 s longer.
_LETTERS_OF_A_DIGIT: Final = 7
# A figure too large to be put into words is said in full: "28576" takes as long as 35 letters.
_LATER_S, _LATER_HUNDREDS_S = 1.3, 2.2
# What stands in front of a later step: "at stitch eighty:", and in a round of a hundred stitches or more.
REPEAT_S: Final = 1.3
"""What a repeat read out by itself has in front: ", repeat one of nine". Unit: s."""
_YARN_LETTERS: Final = 6
_COUNTED: Final = {"co": "cast on", "bo": "bind off", "pu": "pick up and knit", "rest": "leave unworked"}
_TO_NINETEEN: Final = (0, 3, 3, 5, 4, 4, 3, 5, 5, 4, 3, 6, 6, 8, 8, 7, 7, 9, 8, 8)
_TENS: Final = (0, 3, 6, 6, 5, 5, 5, 7, 6, 6)


class YarnsSaid(Enum):
    """How the yarns are said in a round."""

    UNSAID = "unsaid"
    """There is one, or no stitch is worked."""
    INSTEAD = "instead"
    """All is knitted, so that the yarn's name stands in place of "knit"."""
    BESIDE = "beside"
    """Stitch and yarn are both said."""


def yarns_said(items: Iterable[Item]) -> YarnsSaid:
    """Return how the yarns are said in a round, by all of its items."""
    worked = [run for run in flatten(tuple(items)) if stitch(run.stitch).kind not in (Kind.SHIFT, Kind.MARK)]
    if len({run.yarn for run in worked}) < 2:
        return YarnsSaid.UNSAID
    return YarnsSaid.INSTEAD if all(run.stitch == "k" for run in worked) else YarnsSaid.BESIDE


def seconds_of(text: str) -> float:
    """Estimate how long a text takes to say, with every figure in words. Unit: s, at 150 words a minute."""
    return (
        _LETTER_S * sum(_LETTERS_OF_A_DIGIT if sign.isdigit() else sign.isalnum() for sign in text)
        + _WORD_S * len(text.split())
        + _COMMA_S * text.count(",")
        + _COLON_S * (text.count(":") + text.count(";"))
        + _SENTENCE_S
    )


def seconds_of_items(items: Iterable[Item], yarns: YarnsSaid = YarnsSaid.UNSAID) -> float:
    """Estimate how long some items of a round take to say, with the commas behind them. Unit: s.

    Args:
        items: The whole of a round or a part of it.
        yarns: How the yarns are said in the round.
    """
    return sum(_item_s(item, yarns) for item in items)


def seconds_of_lead(round_: Round) -> float:
    """Estimate how long the place takes that is said before a round, without its label or chart. Unit: s.

    The first round of a section is named in full.
    """
    word = row_word(round_.flat)
    side = ", wrong side" if round_.side == "WS" else ""
    if round_.number > 1:
        return _words_s(word, (round_.number,)) + seconds_of(f"{side}:")
    chart = f", chart {round_.chart} {word} one" if round_.chart is not None else ""
    label = f", {round_.label}" if round_.label else ""
    said = f"{round_.section}, {word} of{label}{chart}{side}:"
    return seconds_of(said) + _words_s("", (round_.number, round_.of))


def seconds_of_later_lead(stitches: int) -> float:
    """Estimate how long the place takes that is said before a later step of a round. Unit: s.

    Args:
        stitches: Those of the round.
    """
    return _LATER_S if stitches < 100 else _LATER_HUNDREDS_S


def _item_s(item: Item, yarns: YarnsSaid) -> float:
    if isinstance(item, Run):
        return _run_s(item, yarns) + _COMMA_S
    inner = seconds_of_items(item.items, yarns)
    if item.times == 1:
        return inner
    # Around a repeat inside it stand "then", and "all that" before how often.
    repeats = [isinstance(one, Group) for one in item.items]
    thens = sum(one or other for one, other in pairwise(repeats))
    around = " then" * thens + " all that" * any(repeats)
    return inner + _words_s(f"{around} times", (item.times,)) + _COMMA_S


def _run_s(run: Run, yarns: YarnsSaid) -> float:
    entry = stitch(run.stitch)
    if run.stitch in ("hold", "return"):
        around = "hold for" if run.stitch == "hold" else "work across of"
        return _words_s(f"{around} {run.yarn}", (run.times,))
    if run.stitch in _COUNTED:
        return _words_s(_COUNTED[run.stitch], (run.times,))
    name = "x" * _YARN_LETTERS if yarns is not YarnsSaid.UNSAID else ""
    if yarns is YarnsSaid.INSTEAD and run.stitch == "k":
        return _words_s(name, (run.times,))
    if entry.counted and run.times > 1:
        return _words_s(f"{entry.counted.format(n='')} {name}", (run.times,))
    often = (run.times,) if run.times > 1 else ()
    return _words_s(f"{entry.said} {name}{' times' * len(often)}", often)


def _words_s(text: str, numbers: Iterable[int] = ()) -> float:
    """Estimate how long words and numbers take that stand in the midst of a sentence."""
    letters = sum(map(str.isalnum, text)) + sum(map(number_letters, numbers))
    return _LETTER_S * letters + _WORD_S * (len(text.split()) + sum(map(number_words, numbers)))


@cache
def number_letters(number: int) -> int:
    """Count the letters of a whole number said without "and".

    Args:
        number: Range: 0 to 999,999.

    Source: English cardinals; the tests compare with the numbers that the program says.
    """
    thousands, below = divmod(number, 1000)
    hundreds, rest = divmod(below, 100)
    last = _TO_NINETEEN[rest] if rest < 20 else _TENS[rest // 10] + _TO_NINETEEN[rest % 10]
    hundred = _TO_NINETEEN[hundreds] + len("hundred") if hundreds else 0
    return (number_letters(thousands) + len("thousand") if thousands else 0) + hundred + last
