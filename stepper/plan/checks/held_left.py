"""See to it that no stitches are forgotten on a holder: picked up beside, or left there at the end. No
I/O."""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import lru_cache
from typing import Final

from stepper.plan.state.needles import Needles
from stepper.plan.stitches.row_elements import is_unnamed
from stepper.project.instructions import Line
from stepper.regex import regex


def check_picked_up(lines: Sequence[Line], needles: Needles, since: int) -> None:
    """Refuse to pick up new stitches where stitches of that very place wait on hold.

    "Pick up and knit 26 sts from back neck" behind "leave 26 sts on a holder for back neck" means those on
    hold; taken for new stitches, they would stay there until they run.

    Args:
        lines: The lines just worked.
        needles: What was worked so far.
        since: Index of the first draft that they made.
    """
    if needles.counting.lost or not needles.held:
        return
    for line in lines:
        named = (
            (name, called)
            for name, number in needles.held.items()
            if (called := _called(name, needles))
            and (
                (called == name and _speaks_of(name, line.text))
                or _picks_as_many(called, number, line.text)
            )
        )
        name, called = next(named, ("", ""))
        own = (draft for draft in needles.drafts[since:] if draft.line == line.place.line)
        if name and any("pu" in draft.codes for draft in own):
            number = needles.held[name]
            needles.report(
                line.place,
                f"{number} stitches are on hold for {called}, and the line picks up new ones there.",
                f'Write "k across {number} held {called} sts" if those are meant.',
            )
            needles.lose()
            return


def _called(name: str, needles: Needles) -> str:
    """Return what held stitches are called: those without a name by the section that put them on hold."""
    if not is_unnamed(name):
        return name
    section = needles.held_by.get(name, ("", 0))[0]
    return section if section != needles.section.name else ""


@lru_cache(maxsize=4096)
def _picks_as_many(name: str, number: int, words: str) -> bool:
    """Return whether a line picks up as many stitches as wait, along an edge called as they are."""
    places = set(name.lower().split())
    for told in _ALONG.finditer(words):
        if number in map(int, re.findall(r"\d+", told[1])) and places & set(told[2].lower().split()):
            return True
    return False


_ALONG: Final = regex(
    r"(?<![\w.])(\d+(?:\s*[(\[{][\d\s,;:]+[)\]}])*)\s*(?:sts?\b|stitches\b)?\s+(?:across|along|over|around|from|at)\s+"
    r"(?:the\s+)?([a-z]+(?:\s+[a-z]+)?)",
    re.I,
)


@lru_cache(maxsize=4096)  # every line is asked in every size
def _speaks_of(name: str, words: str) -> bool:
    """Return whether a line works from the place that held stitches are named for."""
    return re.search(rf"\bfrom\s+(?:the\s+)?{re.escape(name)}\b", words, re.I) is not None


def note_left_on_hold(needles: Needles) -> None:
    """Tell what is on hold when the last line is done: live stitches run unless something closes them."""
    left = {name: number for name, number in needles.held.items() if not is_unnamed(name)}
    unnamed = sum(number for name, number in needles.held.items() if is_unnamed(name))
    for name, number in [*left.items(), *([("", unnamed)] if unnamed else [])]:
        what = f" for {name}" if name else ""
        told = f"{number} stitches are still on hold{what} when the last line is done."
        needles.warn(needles.project.lines[-1].place, told)
