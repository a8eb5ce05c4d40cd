"""Phrases of a round of even changes: worked, said, heard back, counted and printed."""

from __future__ import annotations

import random
import re

import pytest
from num2words import num2words

from stepper.craft.even.phrases import (
    KNIT_TOGETHER,
    MAKE_ONE,
    Part,
    Phrase,
    Plain,
    Repeat,
    SpacedStretch,
    number_words,
    print_phrase,
    speak_phrase,
    unfold,
    words_in,
)
from stepper.language.aloud import spell_out
from stepper.language.numbers import words
from stepper.language.phrasing import said_items
from stepper.plan.model import Group, Item, Plan, Round, Run
from stepper.project.reading.wording import reads
from tests.tables import each_row

EIGHT: Phrase = (Repeat((SpacedStretch(4, 4), SpacedStretch(3, 3)), 8),)
RUNS: Phrase = (SpacedStretch(11, 15), SpacedStretch(10, 6))
EXAMPLES: list[tuple[Phrase, str, str]] = [
    (EIGHT, "8 times: knit 4, make one, 4 times; knit 3, make one, 3 times", "[(k4, m1) 4 times, (k3, m1) 3 times] 8 times"),
    (RUNS, "knit 11, make one, 15 times; knit 10, make one, 6 times", "(k11, m1) 15 times, (k10, m1) 6 times"),
    ((SpacedStretch(5), SpacedStretch(4, 3)), "knit 5, make one; then knit 4, make one, 3 times", "k5, m1, (k4, m1) 3 times"),
    ((Repeat((SpacedStretch(5), SpacedStretch(4)), 7),), "knit 5, make one, knit 4, make one, 7 times", "(k5, m1, k4, m1) 7 times"),
    (
        (Repeat((SpacedStretch(5), SpacedStretch(4, 4)), 14),),
        "14 times: knit 5, make one, once; knit 4, make one, 4 times",
        "[k5, m1, (k4, m1) 4 times] 14 times",
    ),
    (
        (Repeat((SpacedStretch(5), Repeat((SpacedStretch(4, 2), SpacedStretch(3)), 2)), 3),),
        "all this 3 times: knit 5, make one; then 2 times: knit 4, make one, 2 times; knit 3, make one",
        "[k5, m1, [(k4, m1) 2 times, k3, m1] 2 times] 3 times",
    ),
    (
        (SpacedStretch(2), Repeat((SpacedStretch(4, 2), SpacedStretch(3)), 9), Plain(2)),
        "knit 2, make one; then 9 times: knit 4, make one, 2 times; knit 3, make one; then knit 2",
        "k2, m1, [(k4, m1) 2 times, k3, m1] 9 times, k2",
    ),
]  # fmt: skip


def heard(line: str) -> tuple[tuple[int, ...], int]:
    """Work what is said by the rules in the module's docstring alone, without looking at commas.

    A reader of its own: what was said since the last boundary, and the repeat begun in front, if there is one.
    """
    every = 1
    if line.startswith("all this "):
        every, line = int(line.split()[2]), line.split(": ", 1)[1]
    tokens = re.findall(
        r"\d+ times:|\d+ times|once|then|knit \d+|make one|knit two together", line.replace(",", "")
    )
    done: list[str] = []
    inside: list[str] | None = None
    since: list[str] = []
    times = 1

    def settle(how_often: int = 1) -> None:
        nonlocal since
        (done if inside is None else inside).extend(since * how_often)
        since = []

    for token in [*tokens, "then"]:
        if token.endswith("times:"):
            settle()
            assert inside is None, "a repeat that begins with its times may not stand in another"
            inside, times = [], int(token.split()[0])
        elif token.endswith("times"):
            settle(int(token.split()[0]))
        elif token in ("once", "then"):
            settle()
            if token == "then" and inside is not None:
                done += inside * times
                inside = None
        else:
            since.append(token)
    gaps, plain = [], 0
    for each in done * every:
        if each.startswith("knit ") and each[5:].isdigit():
            plain += int(each[5:])
        else:
            gaps.append(plain)
            plain = 0
    return tuple(gaps), plain


@pytest.mark.parametrize(("phrase", "said", "in_print"), EXAMPLES)
def test_a_phrase_is_said_and_printed(phrase: Phrase, said: str, in_print: str) -> None:
    """Wording worked out by hand; each rule of how repeats are said has a row."""
    assert speak_phrase(phrase, MAKE_ONE) == said
    assert print_phrase(phrase, MAKE_ONE) == in_print


@pytest.mark.parametrize(("phrase", "said", "in_print"), EXAMPLES)
def test_what_is_said_is_heard_as_meant(phrase: Phrase, said: str, in_print: str) -> None:
    """Commas are not heard: the words alone must tell what is repeated."""
    assert heard(said) == unfold(phrase)


@pytest.mark.parametrize(("phrase", "said", "in_print"), EXAMPLES)
def test_what_is_printed_reads_as_a_line_of_a_pattern(phrase: Phrase, said: str, in_print: str) -> None:
    """She may put the round into her pattern as it is printed."""
    assert reads(in_print[0].upper() + in_print[1:] + ".")


@each_row("change", [MAKE_ONE, KNIT_TOGETHER])
@each_row(("phrase", "said", "in_print"), EXAMPLES)
def test_the_measure_counts_the_words_as_spoken(
    phrase: Phrase, said: str, in_print: str, change: str
) -> None:
    """What is called twelve words is twelve words in the ear."""
    assert words_in(phrase, change) == len(spell_out(speak_phrase(phrase, change)).replace(",", "").split())


@each_row(
    "number", [*range(1, 130), 199, 200, 219, 220, 221, 999, 1000, 1001, 1020, 1100, 2021, 9999]
)
def test_number_words_are_those_said_and_those_of_num2words(number: int) -> None:
    """Source: the program's own numbers, and num2words without "and" and hyphens."""
    outside = num2words(number).replace("-", " ").replace(",", "").replace(" and ", " ").split()
    assert number_words(number) == len(words(number).split()) == len(outside)


def _items(parts: Phrase) -> tuple[Item, ...]:
    items: list[Item] = []
    for part in parts:
        if isinstance(part, Plain):
            items.append(Run("k", part.stitches, "a"))
        elif isinstance(part, Repeat):
            items.append(Group(_items(part.parts), part.times))
        else:
            pair = (Run("k", part.gap, "a"), Run("m1", 1, "a"))
            items += [Group(pair, part.times)] if part.times > 1 else pair
    return tuple(items)


def _runs(items: tuple[Item, ...]) -> list[Run]:
    return [
        run
        for item in items
        for run in (_runs(item.items) * item.times if isinstance(item, Group) else [item])
    ]


@pytest.mark.parametrize(
    "phrase",
    [(SpacedStretch(4, 18),), (SpacedStretch(2), SpacedStretch(4, 17), Plain(2)), *(phrase for phrase, _, _ in EXAMPLES)],
)
def test_the_session_says_these_words(phrase: Phrase) -> None:
    """What was measured is what she hears, also from the stitches alone."""
    items = _items(phrase)
    round_ = Round.__new__(Round)
    object.__setattr__(round_, "phrase", ())
    object.__setattr__(round_, "runs", tuple(_runs(items)))
    object.__setattr__(round_, "instruction", "")
    object.__setattr__(round_, "words", "")
    object.__setattr__(round_, "evenly", True)
    object.__setattr__(round_, "shaping", (1,))
    plan = Plan.__new__(Plan)
    object.__setattr__(plan, "yarns", {"a": "a"})
    assert said_items(items, round_, plan) == spell_out(speak_phrase(phrase, MAKE_ONE))


def test_any_phrase_is_heard_as_meant_and_measured() -> None:
    """Two thousand phrases thrown together, within what may stand in what."""
    dice = random.Random(17)

    def part(level: int) -> Part:
        if level < 0 or dice.random() < 0.6:
            return SpacedStretch(dice.randint(0, 25), dice.choice((1, 1, 2, 5)))
        while True:
            repeat = Repeat(tuple(part(level - 1) for _ in range(dice.randint(2, 3))), dice.randint(2, 4))
            if level or not repeat.nested:
                return repeat

    for _ in range(2000):
        phrase: Phrase = tuple(part(1) for _ in range(dice.randint(1, 4)))
        if dice.random() < 0.3:
            phrase = (Repeat((*phrase, part(0)), 3),)
        elif dice.random() < 0.5:
            phrase = (*phrase, Plain(dice.randint(1, 9)))
        for change in (MAKE_ONE, KNIT_TOGETHER):
            line = speak_phrase(phrase, change)
            assert heard(line) == unfold(phrase), line
            assert words_in(phrase, change) == len(spell_out(line).replace(",", "").split()), line


def test_changes_with_nothing_between_are_printed_without_a_knit_stitch() -> None:
    """ "K0, m1" would send her looking for the stitch."""
    assert print_phrase((SpacedStretch(0, 1), SpacedStretch(2, 1), SpacedStretch(0, 3), SpacedStretch(2, 3)), "m1") == (
        "m1, k2, m1, m1 3 times, (k2, m1) 3 times"
    )
