"""Numbered lines against a sheet of squared paper with a line for each number.

The second reckoning knows no lines: it pencils the words of each row at its number, fills what is left with the row
for all of a kind, and reads the sheet from its first number to its last. Both reckonings are the project's own; that
"all WS rows" stand between the others and end them is common practice.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import cycle, islice

from hypothesis import given, settings
from hypothesis import strategies as st

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import HEAD, project
from tests.tables import each_row

STITCHES = 20
ABOVE = HEAD.count("\n") + 3
"""Line of the file on which the first numbered line stands, behind cast-on and manner."""
OTHER = {"RS": "WS", "WS": "RS"}


@dataclass
class Sheet:
    """What is on the page, and what the paper says of it."""

    lines: list[str]
    expected: list[tuple[str, str, int]]
    """Side, words and line of each row."""
    told: str = ""
    """What is missing or in disorder; empty if the page is sound."""


def words_of(knits: int, grows: bool) -> str:
    """Print a row that is told from the others by its first stitches."""
    return f"K{knits}, {'kfb, ' * grows}p to end."


def worked(knits: int, grows: bool, count: int) -> str:
    """Say the same row stitch by stitch."""
    return f"k{knits}, " + (f"kfb, p{count - knits - 1}" if grows else f"p{count - knits}")


@st.composite
def sheets(draw: st.DrawFn) -> Sheet:
    """Draw a page of numbered lines, some of them for several numbers, one perhaps for all of a kind."""
    flat = draw(st.booleans())
    first = draw(st.sampled_from([1, 1, 1, 2]))
    last = first + draw(st.integers(0, 6))
    parity = draw(st.sampled_from([None, 0, 1]))
    groups = _groups(draw, first, last, parity)
    singles = [group[0] for group in groups if len(group) == 1]
    told = "is written behind row" if singles != sorted(singles) else ""
    sided = min(min(group) for group in groups)
    says_side = flat and [sided] in groups
    side = draw(st.sampled_from(["RS", "WS"])) if says_side else "RS"
    noun = "Row" if flat else "Rnd"
    printed: list[str] = []
    paper: dict[int, tuple[int, bool, int]] = {}
    for knits, group in enumerate(groups, start=1):
        grows = draw(st.booleans())
        # Of several rows in one line the side is not said: they may be on both.
        said = f" ({side})" if says_side and group == [sided] else ""
        paper |= {number: (knits, grows, len(printed)) for number in group}
        printed.append(f"{noun}{'s' * (len(group) > 1)} {_numbers(group)}{said}: {words_of(knits, grows)}")
    if parity is not None:
        kinds = ["odd" if parity else "even", *[side if parity == sided % 2 else OTHER[side]] * says_side]
        free = next(
            (number for number in range(sided, last + 1) if number % 2 == parity and number not in paper),
            None,
        )
        named = free is not None and draw(st.booleans())
        at = len(printed) if named else draw(st.integers(0, len(printed)))
        head = f"{noun} {free} and all" if named else "All"
        knits = len(groups) + 1
        printed.insert(at, f"{head} {draw(st.sampled_from(kinds))} {noun.lower()}s: {words_of(knits, False)}")
        paper = {number: (one, grows, line + (line >= at)) for number, (one, grows, line) in paper.items()}
        if free is not None and named:
            paper[free] = (knits, False, at)
        for number in range(sided, max(paper) + 2):
            if number % 2 == parity:
                paper.setdefault(number, (knits, False, at))
    if len(paper) <= max(paper) - min(paper):
        told = told or "not written out"
    expected, count = [], STITCHES
    for number in sorted(paper):
        knits, grows, line = paper[number]
        expected.append((side, worked(knits, grows, count), ABOVE + line))
        count += grows
        side = OTHER[side] if flat else side
        # A count behind a line for several rows is that of its last.
        if any(number == max(group) for group in groups) and draw(st.integers(0, 3)) == 0:
            off = draw(st.integers(0, 9)) == 0
            printed[line] += f" {count + off} sts."
            told = told or "prints" * off
    begin = draw(st.integers(min(paper), max(paper)))
    if draw(st.booleans()) and not told and not (flat and (max(paper) + 1 - begin) % 2):
        end = draw(st.integers(begin, max(paper)))
        for number in range(begin, end + 1):
            knits, grows, _ = paper[number]
            expected.append((side, worked(knits, grows, count), ABOVE + len(printed)))
            count += grows
            side = OTHER[side] if flat else side
        printed.append(f"Rep {noun.lower()}{f's {begin}-{end}' if end > begin else f' {begin}'}.")
    manner = "Work flat." if flat else "Join in the round."
    return Sheet([f"Cast on {STITCHES} sts.", manner, *printed], expected, told)


def _groups(draw: st.DrawFn, first: int, last: int, parity: int | None) -> list[list[int]]:
    """Draw which numbers have a line of their own and which share one; the others are left to a line for all, or out."""
    own: list[int] = []
    shared: list[int] = []
    for number in range(first, last + 1):
        left = parity == number % 2 and draw(st.integers(0, 3)) > 0
        if not left and draw(st.integers(0, 19)):
            (own if draw(st.integers(0, 2)) else shared).append(number)
    groups = sorted([*([number] for number in own), *([shared] if shared else [])]) or [[first]]
    if len(groups) > 1 and draw(st.integers(0, 9)) == 0:
        groups[0], groups[1] = groups[1], groups[0]
    return groups


def _numbers(group: list[int]) -> str:
    """Print the numbers of a line."""
    if len(group) > 2 and group == list(range(group[0], group[-1] + 1)):
        return f"{group[0]}-{group[-1]}"
    return " and ".join(filter(None, [", ".join(map(str, group[:-1])), str(group[-1])]))


@given(sheets())
@settings(max_examples=120)
def test_the_rows_are_those_on_the_paper(sheet: Sheet) -> None:
    """A row at another number is on the other side of the fabric; a row too few is a shorter piece."""
    text = project("\n".join([*sheet.lines, "Bind off."]), sizes="S", size="S")
    if sheet.told:
        assert sheet.told in faults(text)
        return
    plan = plan_of(text)
    assert [(each.side, each.instruction, each.line) for each in plan.rounds[1:-1]] == sheet.expected


FOUR = HEAD.replace(
    "      .aa.\n",
    '      .aa.\n  ladder:\n    key: {{".": MC, a: A}}\n    rows: |\n      a...\n      .a..\n      ..a.\n      ...a\n',
)
"""A drawn chart of four rounds, the stitch in the other yarn one farther in each; round 1 is at the bottom."""


@each_row("numbers", range(1, 7))
@each_row("rounds", [None, (1, 2), (2, 3), (1, 4), (3, 4), (2, 2)])
def test_the_rounds_of_a_chart_are_dealt_to_the_numbers_in_turn(
    numbers: int, rounds: tuple[int, int] | None
) -> None:
    """As cards are dealt: the first round of the chart to the first number, and from the beginning when they are used up."""
    printed = (
        ""
        if rounds is None
        else f", rounds {rounds[0]}-{rounds[1]}"
        if rounds[0] < rounds[1]
        else f", round {rounds[0]}"
    )
    head = "Rnd 2" if numbers == 1 else f"Rnds 2-{numbers + 1}"
    work = f"Cast on 8 sts.\nJoin in the round.\nRnd 1: Chart ladder, round 1.\n{head}: Chart ladder{printed}.\nBind off."
    plan = plan_of(project(work, sizes="S", size="S", head=FOUR))
    drawn = {"A...": 1, ".A..": 2, "..A.": 3, "...A": 4}
    seen = []
    for each in plan.rounds[1:-1]:
        yarns = "".join(("A" if run.yarn == "A" else ".") * run.leaves for run in each.runs)
        seen.append(drawn[yarns[:4]])
        assert yarns == yarns[:4] * 2
    begin, end = rounds or (1, 4)
    whole = rounds is not None or numbers == 4
    # Where no rounds are named and the numbers are not those of the whole chart, it goes on behind the round last worked.
    dealt = range(begin, end + 1) if whole else [2, 3, 4, 1]
    assert seen == [1, *islice(cycle(dealt), numbers)]
