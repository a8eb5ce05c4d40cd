"""A page in other dress is the same garment: other words for the same, one size alone, the sizes in another order.

Nobody has to have read the works for it: what one wording comes to, another has to come to as well, or be refused. The
words that are exchanged mean the same in every pattern (common practice; the abbreviations are those of the Craft Yarn
Council's list).
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from functools import lru_cache

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from stepper.plan.compile import compile_plan
from stepper.plan.model import flatten
from stepper.project.reader import read_project
from tests.plan.test_agreed_works import FORMERLY, KINDS, works
from tests.project.corpus_entries import entries
from tests.project.corpus_judge import text_of

Plan = tuple[tuple[object, ...], ...]

DRESSES: dict[str, tuple[tuple[str, str], ...]] = {
    "twice": ((r"\btwice\b", "2 times"), (r"\bonce\b", "1 time"), (r"\b3 times\b", "three times")),
    "2 times": ((r"\b2 times\b", "twice"), (r"\b1 time\b", "once")),
    "in full": (
        (r"\bCO\b", "Cast on"), (r"\bBO\b", "Bind off"), (r"\b(r|R)nd", r"\1ound"), (r"\b(r|R)ep\b", r"\1epeat"),
        (r"\bsts\b", "stitches"), (r"\bbeg\b", "beginning"), (r"\bfoll\b", "following"), (r"\bsts rem\b", "sts remain"),
        (r"\bpm\b", "place marker"), (r"\bsm\b", "slip marker"), (r"\bRS\b", "right side"), (r"\bWS\b", "wrong side"),
    ),
    "short": (
        (r"\b[Cc]ast on\b", "CO"), (r"\b[Bb]ind off\b", "BO"), (r"\b(r|R)ound", r"\1nd"), (r"\b(r|R)epeat\b", r"\1ep"),
        (r"\bstitches\b", "sts"), (r"\bbeginning\b", "beg"), (r"\bfollowing\b", "foll"), (r"\bmarker\b", "m"),
        (r"\b(i|I)ncrease\b", r"\1nc"), (r"\b(d|D)ecrease\b", r"\1ec"), (r"\bpattern\b", "patt"),
    ),
    "other": ((r"\bevery 2nd\b", "every other"), (r"\bstockinette(?: st(?:itch)?)?\b", "st st")),
    "2nd": ((r"\bevery other\b", "every 2nd"), (r"\bst st\b", "stockinette")),
    "brackets": ((r"(\d+) \((\d+), (\d+)\)", r"\1 [\2:\3]"),),
    "dashes": ((r"(\d+) \((\d+), (\d+)\)", r"\1-\2-\3"),),
}  # fmt: skip
_LIST = re.compile(r"(?<![\d/.-])(\d+) \((\d+(?:, \d+)*)\)")
_OTHER_LISTS = re.compile(
    r"[\d)-]\s*[(\[{]\s*[\dk-]|[(\[{]\s*[\d-]+\s*[,:;/-]|\d\s*[:/–-]\s*\d|\d, [(\d]|\d(?:th|rd|nd) \(|[(\[{]\s*(?:once|twice|one|two|three|four|five|six)\b|\b(?:[SML]|[2-5]?XL|sizes?)\b",
    re.IGNORECASE,
)
"""What is left of a line, without its lists as written here, if it has sizes in another manner."""


def in_dress(line: str, dress: str) -> str:
    """Return a line with the words of one dress for those of another."""
    for pattern, words in DRESSES[dress]:
        line = re.sub(pattern, words, line)
    return line


def _pick(line: str, sizes: int, write: Callable[[list[str]], str]) -> str:
    def written(match: re.Match[str]) -> str:
        numbers = [match[1], *match[2].split(", ")]
        return write(numbers) if len(numbers) == sizes else match[0]

    return _LIST.sub(written, line)


@lru_cache(maxsize=1)
def pages() -> dict[str, tuple[tuple[str, ...], int, str, tuple[str, ...]]]:
    """Return the lines, sizes, units and own lengths of each page of a few lines, by its name."""
    found: dict[str, tuple[tuple[str, ...], int, str, tuple[str, ...]]] = {
        name: ((*one.before, *one.printed, *one.after), one.sizes, one.units, one.own) for name, one in entries().items()
    }
    for kind in KINDS:
        for name, lines in works(kind).items():
            heads = [line for line in lines if line.startswith("!")]
            if FORMERLY not in lines and all(head.startswith("! sizes") for head in heads):
                sizes = next((int(head.split()[2]) for head in heads), 1)
                found[f"{kind}: {name}"] = (tuple(line for line in lines if line not in heads), sizes, "cm", ())
    return found


@lru_cache(maxsize=4096)
def plan_of_page(lines: tuple[str, ...], sizes: int, units: str, own: tuple[str, ...], size: int = 0) -> Plan | None:
    """Return what is knitted in a size, round by round; None if the page is refused."""
    reading = read_project(text_of(list(lines), sizes, units, own)[0])
    if reading.project is None or reading.problems:
        return None
    plan = compile_plan(replace(reading.project, size=size)).plan
    return plan and tuple(
        (
            each.section, each.side if each.flat else "", each.before, each.after, each.needle_mm, each.markers,
            tuple((run.stitch, run.times, run.yarn) for run in flatten(each.phrase)),
        )
        for each in plan.rounds
    )  # fmt: skip


@lru_cache
def changed_by(dress: str) -> list[str]:
    """Return the pages that have words to exchange."""
    return sorted(name for name, page in pages().items() if any(in_dress(line, dress) != line for line in page[0]))


@lru_cache
def in_sizes() -> list[str]:
    """Return the pages that have all their sizes in lists of one manner, as many numbers as sizes."""

    def rest(line: str, sizes: int) -> str:
        return _pick(line, sizes, lambda numbers: "1")

    return sorted(
        name
        for name, (lines, sizes, _, _) in pages().items()
        if sizes > 1 and not any(_OTHER_LISTS.search(rest(line, sizes)) for line in lines)
    )


@pytest.mark.parametrize("dress", DRESSES)
@given(data=st.data())
@settings(max_examples=12, deadline=None)
def test_other_words_for_the_same_are_the_same_garment_or_refused(dress: str, data: st.DataObject) -> None:
    """Where an abbreviation and its word part ways, one of the two is knitted wrong in silence."""
    lines, sizes, units, own = pages()[data.draw(st.sampled_from(changed_by(dress)))]
    dressed = tuple(in_dress(line, dress) for line in lines)
    one, other = (plan_of_page(each, sizes, units, own) for each in (lines, dressed))
    assert one is None or other is None or one == other, (lines, dressed)


@given(data=st.data())
@settings(max_examples=40, deadline=None)
def test_a_size_alone_or_in_another_order_is_the_same_garment(data: st.DataObject) -> None:
    """A list read for the wrong size, or a size that another one changes, would show in no count that all share."""
    lines, sizes, units, own = pages()[data.draw(st.sampled_from(in_sizes()))]
    size = data.draw(st.integers(0, sizes - 1))
    as_listed = plan_of_page(lines, sizes, units, own, size)
    assume(as_listed is not None)
    alone = tuple(_pick(line, sizes, lambda numbers: numbers[size]) for line in lines)
    assert plan_of_page(alone, 1, units, own) in (None, as_listed), alone
    turned = tuple(_pick(line, sizes, lambda numbers: f"{numbers[-1]} ({', '.join(numbers[-2::-1])})") for line in lines)
    assert plan_of_page(turned, sizes, units, own, sizes - 1 - size) in (None, as_listed), turned
