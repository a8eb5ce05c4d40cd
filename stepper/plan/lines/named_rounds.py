"""Rounds with a name of their own, worked where printed or only where called. No I/O."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence

from stepper.plan.state.needles import Needles
from stepper.plan.stitches.round_sources import TwoReadings
from stepper.project.instructions import (
    AtIntervals,
    ChartWork,
    Evenly,
    Labelled,
    Line,
    Phrase,
    Repeated,
    Sentence,
    Together,
    WorkRounds,
    is_only_said,
)
from stepper.project.model import Section
from stepper.regex import regex

ROUND_NAME = regex(r"\b(?:round|rnd|row)(?:\s+\d{1,2})?$", re.I)
"""A label that names a round, which other lines may call."""
_IN_THIS_WAY = regex(r"\b(?:this|that|the\s+same)\s+(?:way|manner|fashion)\b", re.I)
"""Words of a line that calls the round above it, which was worked there."""
_IN_ALL = regex(r"\b(?:in\s+(?:all|total)|total)\b", re.I)
_TIMES_IN_ALL = regex(
    r"\btimes\s*,?\s+(?:in\s+(?:all|total)|altogether|total)\b|\btotal\s+of\s+[\w\s(),]+?\s+times\b", re.I
)

_SHAPED = {f"{change} {each}" for change in ("decrease", "increase") for each in ("round", "row")}


def is_named_round(line: Line) -> bool:
    """Return whether a line gives a round a name: `Dec round: k1, k2tog, …`."""
    named = ROUND_NAME.search(line.label or "")
    return named is not None and isinstance(line.sentences[0], Phrase)


def rows_of_one_name(needles: Needles) -> int:
    """Return how many of the last rows are one pattern by their names: "Rib row 1", "Rib row 2".

    Returns:
        The number at the end of the last row's name, if the rows before it have the same name and the
        numbers from 1; else 1.
    """
    labels = {line.place.line: (line.label or "").lower() for line in needles.project.lines}
    last = [labels.get(draft.template.place.line, "") if draft.template else "" for draft in needles.drafts]
    found = _NUMBERED_NAME.fullmatch(last[-1]) if last else None
    number = int(found["number"]) if found else 1
    named = [f"{found['name']} {each}" for each in range(1, number + 1)] if found else []
    return number if found and last[-number:] == named else 1


_NUMBERED_NAME = regex(r"(?P<name>.+\b(?:round|rnd|row)) (?P<number>[2-9]|1\d)", re.I)


def in_full(label: str) -> str:
    """Return a name without abbreviations: what was written out as "Dec rnd" is "decrease round"."""
    for short, full in ((r"rnd", "round"), (r"dec", "decrease"), (r"inc", "increase")):
        label = re.sub(rf"\b{short}\b", full, label)
    return label


def short_name(name: str, section: Section) -> str:
    """Return what a page may call a round for short: "Dec rnd" where the only one is the "Waist dec rnd".

    Returns:
        The short name in full, as "decrease round"; empty if that is its name, or the section has another
        round that it may mean.
    """
    short = " ".join(in_full(name).split()[-2:])
    names = {in_full((line.label or "").lower()) for line in section.lines if is_named_round(line)}
    alike = [other for other in names if f" {other}".endswith(f" {short}")]
    return short if short in _SHAPED and alike == [in_full(name)] != [short] else ""


def is_only_defined(name: str, written: Line, section: Section, needles: Needles) -> bool:
    """Return whether a named round is worked only where a later sentence says so.

    It is worked where it is printed, and again where it is called. "Work dec round every 8th round 6 times"
    right after it means six in all, the first on the eighth round; "rep dec round …" is in addition to the
    one worked, and so is a call after other rounds. If the printed counts say otherwise, the other reading is
    taken.
    """
    between = False
    lines = section.lines
    names = {(line.label or "").lower() for line in lines if is_named_round(line)}

    full = in_full(name), short_name(name, section)

    def called(label: str) -> bool:
        return label == name or (label not in names and in_full(label) in full)

    for line in lines[lines.index(written) :]:
        for sentence in line.sentences[1:] if line is written else line.sentences:
            if isinstance(sentence, Labelled) and called(sentence.label):
                return not sentence.again and _called_only(name, written, line, needles)
            between = between or (not is_named_round(line) and _works_rounds(sentence, called))
            for part in sentence.parts if isinstance(sentence, Together) else (sentence,):
                if isinstance(part, AtIntervals) and called(part.label):
                    if part.again or any(leg.more for leg in part.legs):
                        return False
                    if _IN_THIS_WAY.search(line.text):
                        if _IN_ALL.search(line.text):
                            needles.section.in_all.add(name)
                        else:
                            _count_in_all(name, written, line, needles)
                        return False
                    if between:
                        _count_in_all(name, written, line, needles)
                        return False
                    called_only = _all_told(name, written, line, needles)
                    if called_only and _TIMES_IN_ALL.search(line.text):
                        _tell_not_at_once(name, written, line, needles)
                    return called_only
    _refuse_called_unread(name, written, lines[lines.index(written) + 1 :], needles)
    return False


def _refuse_called_unread(name: str, written: Line, behind: Sequence[Line], needles: Needles) -> None:
    """Refuse a named round that only a line left as a note says when to work: it may not be worked here."""
    spelt = re.escape(in_full(name)).replace("increase", "inc(?:rease)?").replace("decrease", "dec(?:rease)?")
    spelt = spelt.replace("round", "(?:round|rnd)")
    notes = filter(is_only_said, behind)
    if any(re.search(rf"\b(?:work|then)\s+(?:an?\s+|the\s+)?{spelt}\b", line.text, re.I) for line in notes):
        told = f"a line that is not read says when {name} is worked: whether here, too, is not known."
        needles.report(written.place, told, "Put that line right first.")


def _works_rounds(sentence: Sentence, called: Callable[[str], bool]) -> bool:
    """Return whether a sentence between a named round and its call works rounds; then so did that one."""
    if isinstance(sentence, AtIntervals | Together):
        parts = sentence.parts if isinstance(sentence, Together) else (sentence,)
        return not any(called(part.label) for part in parts)
    return isinstance(sentence, WorkRounds | Repeated | ChartWork | Evenly | Phrase)


def _count_in_all(name: str, written: Line, line: Line, needles: Needles) -> None:
    """Note that "work … times" behind other rounds may count the once that was worked before them."""
    first, second = "so often after the once where it is written out", "so often in all, that once included"
    told = _TIMES_IN_ALL.search(line.text) is not None
    readings = (second, first) if told else (first, second)
    if _is_second(f"work {name} … times", *readings, written, line, needles, quiet=told) != told:
        needles.section.in_all.add(name)


def _called_only(name: str, written: Line, line: Line, needles: Needles) -> bool:
    """Return whether "work dec round" means the once that is written out; note that it has two readings."""
    first, second = f"once more after the {name} where it is written out", "the once that is written out"
    return _is_second(f"work {name}", first, second, written, line, needles)


def _all_told(name: str, written: Line, line: Line, needles: Needles) -> bool:
    """Return whether "work … times" counts every time; note that the words have another reading."""
    first, second = "so often in all", "so often after the once where it is written out"
    return not _is_second(f"work {name} … times", first, second, written, line, needles, quiet=True)


def _tell_not_at_once(name: str, written: Line, line: Line, needles: Needles) -> None:
    """Tell on which round a shaping of so many "in all" first falls, which may be where it is written out.

    "Knit 8 rnds. Dec rnd: …. Work dec rnd every 11th rnd a total of 10 times" ends with the same count if its
    first is the ninth round.
    """
    told = f"{name} is worked first where line {line.place.line} says, and not where it is written out."
    needles.warn(written.place, f'{told} Write "repeat" there if it is worked here, too.')


def _is_second(
    words: str, first: str, second: str, written: Line, line: Line, needles: Needles, *, quiet: bool = False
) -> bool:
    """Note words of two readings at a named round; return whether they are taken in the second."""
    place, last = written.place, line.place.line
    return needles.reads_second(
        TwoReadings(place=place, words=words, first=first, second=second, line=last, quiet=quiet)
    )
