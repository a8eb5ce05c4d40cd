"""Every line that whole garments say is fit for the ear: knitted from end to end, and asked about on the way."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

from stepper.language.aloud import spell_out
from stepper.language.effect_words import tell_effect
from stepper.language.numbers import number, words
from stepper.plan.model import Plan
from stepper.session import cues
from stepper.session.machine import Session
from stepper.session.questions.topics import HelpWith, Topic
from stepper.sitting.project_file import load_project
from tests.fixtures import plan_named

AT = "2025-03-03T20:15:00+01:00"
ASKING: tuple[cues.Cue, ...] = (
    *(cues.About(at=AT, topic=topic) for topic in Topic),
    *(cues.Help(at=AT, about=about) for about in HelpWith),
    *(kind(at=AT) for kind in (cues.Again, cues.Where, cues.Spacing, cues.HowMany, cues.HowFar, cues.HowLong, cues.Why)),
)
GARMENTS = ("switchback", "shawl", "hat")
PAGES = tuple(
    Path(__file__).parent / "project" / "corpus" / "garments" / f"{name}.yaml"
    for name in ("cabledmitts", "harbour", "raglan", "saltmarsh")
)
EVERY = 100
"""Rounds between those in which everything is asked."""
NUMBER = (
    "zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|"
    "eighteen|nineteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|thousand"
)
BESIDE = re.compile(rf"\b(?:{NUMBER})(?:[ -](?:{NUMBER}))+\b")
ROUGH = re.compile(r"\bthousand$")
"""Rounded to thousands: "about twenty seven thousand"."""
DIGITS = "count is two four six"
"""The one number that the help says digit by digit, as it is surest heard."""
UNFIT = re.compile(
    r"^[Aa]nd\b|\band[.,;]|\"|every first|\d|  |\(|\*|\.\.|,,"
    r"|\b(?:sts?|k2tog|ssk|[Pp]m|sm|rem|DS|tog|beg|rep|cont|rnds?|foll)\b"
    r"|\b(?:cursor|panel|column|click|badge|window|keyboard)\b"
)
"""What is left of a wording taken apart, what only print has, and terms of the screen."""


def told(plan: Plan) -> Iterator[str]:
    """Knit a garment round by round and yield each line as it is spoken."""
    session = Session(plan)
    considered = session.consider_opening(AT, "x")
    asked = -1
    while True:
        session.adopt(considered)
        effects = list(considered.effects)
        index = session.state.place.index
        if index >= len(session.plan.rounds):
            return
        if index != asked and index % EVERY == 0:
            effects += [effect for cue in ASKING for effect in session.consider(cue).effects]
        asked = index
        yield from (spell_out(tell_effect(effect, session.plan)) for effect in effects)
        considered = session.consider(cues.RoundsDone(at=AT) if index % EVERY else cues.Next(at=AT))


@cache
def lines_of(name: str) -> frozenset[str]:
    """Give each line that a garment says, once."""
    return frozenset(line for line in told(plan_named(name)) if line)


def beside_each_other(line: str) -> list[str]:
    """Give words for numbers that stand side by side and are not one number; decimals are said digit by digit."""
    whole = re.sub(rf"\bpoint (?:(?:{NUMBER})\b ?)+", "point ", line.lower()).replace(DIGITS, "")
    found = [match.group().replace("-", " ") for match in BESIDE.finditer(whole)]
    return [each for each in found if not ROUGH.search(each) and words(number(each) or 0) != each]


@pytest.mark.parametrize("name", GARMENTS)
def test_no_number_is_said_beside_another_without_a_pause(name: str) -> None:
    """"Stitch forty five fifteen times" is heard as forty five hundred, or not at all."""
    lines = lines_of(name)
    assert len(lines) > 100
    assert [(each, line) for line in lines for each in beside_each_other(line)] == []


@pytest.mark.parametrize("name", GARMENTS)
def test_nothing_is_left_over_from_print_or_from_a_wording_taken_apart(name: str) -> None:
    """"And." at an end, "every first", figures, abbreviations and terms of the screen are not said aloud."""
    assert [(match.group(), line) for line in lines_of(name) if (match := UNFIT.search(line))] == []


@pytest.mark.parametrize("path", PAGES, ids=lambda path: path.stem)
def test_nothing_is_left_over_in_what_a_page_says_beside_its_stitches(path: Path) -> None:
    """Pages of other writers are taken apart the most: "Pm and.", "4 (4, 5, 5) sts before BOR m", "16\" "."""
    plan = load_project(path).plan
    said = {spell_out(f"{remark.rstrip('.')}.") for round_ in plan.rounds for remark in round_.remarks}
    assert said
    assert [(match.group(), line) for line in said if (match := UNFIT.search(line))] == []


@pytest.mark.parametrize(
    "line", ["Knit forty five fifteen times.", "Repeat one chalk two two times.", "Round three forty stitches."]
)
def test_numbers_side_by_side_are_noticed(line: str) -> None:
    """A check that finds nothing in such lines would find nothing anywhere."""
    assert beside_each_other(line)


@pytest.mark.parametrize("line", ["Pm and.", "At every first round.", "Working rem DS as one st.", "13684 stitches."])
def test_what_is_unfit_is_noticed(line: str) -> None:
    """The same of leftovers."""
    assert UNFIT.search(line)
