"""The lines of a section in order, grouped by numbering. No I/O.

Lines that number their rounds are grouped until the numbering starts over
(`stepper.plan.lines.numbered_rounds`).
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import Final

from stepper.craft.stitches import STITCHES
from stepper.plan.fabric.page_pattern import keep_page_pattern
from stepper.plan.lines.fastened_off import fasten_off
from stepper.plan.lines.line_in_hand import begin_line, take_side, turns_midway
from stepper.plan.lines.named_rounds import is_named_round, is_only_defined, short_name
from stepper.plan.lines.numbered_rounds import (
    is_numbered,
    said_after_round,
    take_leading,
    template_of,
    work_numbered,
)
from stepper.plan.lines.pattern_definitions import (
    closes_definition,
    define_pattern,
    define_row,
    defined_name,
    told_in_a_row,
)
from stepper.plan.lines.rows_or_rounds import says_neither, settle_rows, settle_turned_rows
from stepper.plan.lines.techniques import is_technique, keep_technique
from stepper.plan.lines.working import work
from stepper.plan.lines.wrong_side import tell_side_bound_off
from stepper.plan.state.needle_words import tell_needle_unsaid
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.halves import HALVES
from stepper.project.instructions import (
    BindOff,
    Flat,
    Join,
    Line,
    Phrase,
    PrintedCount,
    RowsCount,
    WorkRounds,
)
from stepper.project.model import Section
from stepper.project.rewording.work.counts_apart import counts_apart
from stepper.project.stitchwork import Mark, Several, Until, Work
from stepper.regex import regex

_OFF: Final = regex(r"\b(?:bind|cast)\s+off\b|\bBO\b", re.I)
"""The order to bind off, as printed."""
_JOINING: Final = regex(r"\b(?:re)?(?:join|clos)(?:e|ed|ing)?\b", re.I)
"""The order to join in the round, as printed."""
_SENTENCES: Final = regex(r"(?<=[.;])\s+")


def blocks(lines: tuple[Line, ...]) -> list[list[Line]]:
    """Group lines that number their rounds until the numbering starts over."""
    found: list[list[Line]] = []
    for line in lines:
        if is_numbered(line) and found and _goes_with(line, found[-1]):
            found[-1].append(line)
        else:
            found.append([line])
    return found


def _goes_with(line: Line, block: list[Line]) -> bool:
    """Return whether a numbered line belongs to the numbered lines before it."""
    last = block[-1]
    if not is_numbered(last) or line.label or said_after_round(last):
        return False
    taken = {number for other in block for number in other.numbers}
    return not set(line.numbers) & taken


def work_block(block: list[Line], section: Section, needles: Needles) -> None:
    """Work one line, or the lines of one numbering, of those that are for the size in hand."""
    block = [line for line in block if not line.only or needles.size in line.only]
    if block:
        _work_lines(block, section, needles)
        keep_page_pattern(block, needles)


def _work_lines(block: list[Line], section: Section, needles: Needles) -> None:
    first = block[0]
    if is_numbered(first):
        defined = defined_name(first, needles)
        needles.section.defined = defined
        if defined:
            define_pattern(defined, block, needles)
        else:
            if says_neither(first):
                settle_rows(first, section, needles)
            elif any(map(turns_midway, block)):
                settle_turned_rows(block, section, needles)
            work_numbered(block, needles)
        return
    if needles.section.defined and closes_definition(first, needles):
        return
    needles.section.defined = told_in_a_row(first, needles)
    begin_line(first, needles)
    if needles.section.defined:
        define_row(needles.section.defined, first, needles)
        return
    needles.line.turns_back = _is_followed_by_wrong_side(first, section)
    needles.section.label = first.label or needles.section.label
    name = (first.label or "").lower()
    if name in HALVES and _is_one_round(first) and needles.count and not (needles.flat or needles.held):
        told = f"the line is for the {name}, and would be worked over the whole round."
        needles.report(first.place, told, 'Write both halves in one line: "On instep: ...; on sole: ...".')
        needles.lose()
        return
    named = is_named_round(first)
    if named:
        written = replace(template_of(first.sentences[0], needles), side=first.side)
        names = {name, short_name(name, section)} - {""}
        needles.section.named.update(dict.fromkeys(names, written))
    if is_technique(first, needles):
        needles.section.label = None
        printed = take_leading(first.sentences[1:], PrintedCount)
        keep_technique(first, replace(written, counts=printed), needles)
        return
    if named and first.times is None and is_only_defined(name, first, section, needles):
        needles.section.label = None
        printed = take_leading(first.sentences[1:], PrintedCount)
        needles.section.named.update(dict.fromkeys(names, replace(written, counts=printed)))
        for sentence in first.sentences[1 + len(printed) :]:
            work(sentence, needles)
        return
    tell_needle_unsaid(first, needles)
    closing, joining = _said_with_binding_off(first), _said_with_joining(first)
    apart = (*closing, *joining)
    needles.remarks.extend(words for words in _said_besides(first) if words not in apart)
    take_side(first, needles, turns=turns_midway(first))
    begin = len(needles.drafts)
    _work_sentences(first, section, needles, closing, joining)
    _tell_counts_last(first, begin, needles)
    tell_side_bound_off(first, needles)
    fasten_off(first, section, needles)


def _work_sentences(
    first: Line, section: Section, needles: Needles, closing: Sequence[str], joining: Sequence[str]
) -> None:
    """Work the sentences of a line, as often as it says, and hold its counts against all of them."""
    counts = [sentence for sentence in first.sentences if isinstance(sentence, PrintedCount | RowsCount)]
    if first.times is None:
        counts = []
    for _ in range(first.times.of(needles.size) if first.times is not None else 1):
        for sentence in first.sentences:
            if sentence not in counts and not needles.reached:
                if not isinstance(sentence, Flat | Join):
                    settle_rows(first, section, needles)
                if isinstance(sentence, BindOff):
                    needles.remarks.extend(closing)
                work(sentence, needles)
                if isinstance(sentence, Join):
                    needles.remarks.extend(joining)
    for sentence in counts:
        work(sentence, needles)


def _tell_counts_last(line: Line, begin: int, needles: Needles) -> None:
    """Tell how many stitches each part has with the last round of a line, which leaves them, not its first.

    Args:
        line: The line.
        begin: Index of its first draft.
        needles: The knitting in hand, behind it.
    """
    drafts = needles.drafts
    if len(drafts) < begin + 2 or not drafts[-1].after:
        return
    first, last = drafts[begin], drafts[-1]
    counts = tuple(words for words in first.remarks if words in line.said and _counts_behind(words, line))
    if counts:
        left = tuple(words for words in first.remarks if words not in counts)
        drafts[begin] = replace(first, remarks=left)
        drafts[-1] = replace(last, remarks=(*last.remarks, *counts))


def _counts_behind(words: str, line: Line) -> bool:
    """Return whether words tell the counts of parts, and stand behind what the line orders."""
    told = any(counts_apart(each) is not None for each in _SENTENCES.split(words))
    return told and not line.text.lower().startswith(words.lower())


def _is_followed_by_wrong_side(line: Line, section: Section) -> bool:
    """Return whether the next line of the section is for a wrong-side row."""
    after = [other for other in section.lines if other.place.line > line.place.line]
    return bool(after) and after[0].side == "WS"


def _is_one_round(line: Line) -> bool:
    """Return whether all that a line tells is how one round is worked from its beginning to its end."""
    only = line.sentences[0] if len(line.sentences) == 1 else None
    if isinstance(only, Phrase):
        return all(isinstance(element, Work | Until | Several) for element in only.elements)
    return isinstance(only, WorkRounds)


def _said_besides(line: Line) -> Iterator[str]:
    """Return the words said with a line, without a marker that is told where it is placed.

    "Cast on 96 sts. Place marker for beginning of round.": with the line too, it came before the cast-on.
    """
    placed = {
        f"{STITCHES[element.stitch].said} for {element.name}".lower()
        for sentence in line.sentences
        if isinstance(sentence, Phrase) and all(isinstance(each, Mark) for each in sentence.elements)
        for element in sentence.elements
        if isinstance(element, Mark) and element.name
    }
    yield from (words for words in line.said if words.rstrip(".").lower() not in placed)


def _said_with_joining(line: Line) -> tuple[str, ...]:
    """Return the words said with a line that stand behind its order to join in the round.

    "Cast on 96 sts. Join, being careful not to twist.": before the cast-on it is forgotten by the join.
    """
    order = _JOINING.search(line.text)
    joins = [isinstance(sentence, Join) for sentence in line.sentences]
    before = line.sentences[: joins.index(True)] if any(joins) else line.sentences
    if order is None or not any(joins) or not all(map(_only_casts_on, before)):
        return ()
    behind = " ".join(line.text[order.start() :].lower().split())
    return tuple(words for words in _said_besides(line) if words.lower().rstrip(".") in behind)


def _only_casts_on(sentence: object) -> bool:
    return not isinstance(sentence, Phrase | WorkRounds) or (
        isinstance(sentence, Phrase)
        and all(isinstance(each, Work) and each.stitch == "co" for each in sentence.elements)
    )


def _said_with_binding_off(line: Line) -> tuple[str, ...]:
    """Return the words said with a line that stand behind its order to bind all off, if rows precede it.

    "Knit 10 rows. Cast off firmly.": said with the first of the rows, it would be about these.
    """
    worked = [one for one in line.sentences if isinstance(one, BindOff | Phrase | WorkRounds)]
    orders = [*_OFF.finditer(line.text)]
    if len(worked) < 2 or not orders or not isinstance(worked[-1], BindOff):
        return ()
    behind = line.text[orders[-1].end() :].lower()
    return tuple(words for words in line.said if words.lower().rstrip(".") in behind)
