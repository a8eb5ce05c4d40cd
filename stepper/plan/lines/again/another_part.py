"""Work another part again: which one a line means, and how far it goes. No I/O.

A part that was worked before is worked again line by line, so that its counts are checked and its named
rounds are known. How far it goes - to a mark, a length, a count, the beginning of its armholes - is found in
the rows it came to the first time, and the lines are worked for as many.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from stepper.craft.gauge import half_up
from stepper.plan.drafts import DraftRound
from stepper.plan.lines.again.part_names import (
    ORDINALS,
    first_of,
    piece_of,
    sections_of_piece,
    words_of,
)
from stepper.plan.lines.again.whole_again import to_its_end, whole_ended_by
from stepper.plan.lines.ended_rounds import find_side_ended
from stepper.plan.state.measuring_places import (
    first_row_of,
    last_shaped,
    measured_from,
    rib_ended,
    stretch_named,
    without_heel,
    without_held,
)
from stepper.plan.state.needles import Needles
from stepper.project.duration import Rounds, UntilCount, UntilLength, UntilLike
from stepper.project.instructions import AsPart, Line, Phrase, PrintedCount, Repeated, Return, Sentence
from stepper.project.model import Section
from stepper.project.pairs import WHOLE_NAMES
from stepper.project.problems import one_of
from stepper.project.stitchwork import Across, Mark, PickUp, Work

_UNNAMED = "beginning"
"""What a pasted page calls its first part where nothing stands over it."""
_GARMENT = frozenset({"back", "front", "body", "sleeve"})


def part_meant(instruction: AsPart, section: Section, needles: Needles) -> tuple[Section, ...]:
    """Find the part that a line means, among those before its own section.

    Returns:
        Its section, or those of a piece that has several; all sections up to here for the second of a whole
        garment; empty, and reported, if unknown.
    """
    sections = needles.project.sections
    before = sections[: sections.index(section)] if section in sections else sections
    words = set(instruction.part.split())
    exact = [one for one in before if one.name.lower() == instruction.part]
    nouns = {word.removesuffix("s") for word in words - ORDINALS}
    if not exact and not nouns and _made_again(instruction):
        first = whole_ended_by(section, needles) or first_of(section, before, instruction, needles)
        return first or (section,)
    if not instruction.part:
        return (section,)
    named = exact or [one for one in before if nouns and nouns <= set(words_of(one.name))]
    if len(named) > 1 and not exact:
        named = [one for one in named if "first" in words_of(one.name)] or named
    pieces = {piece_of(one) for one in named}
    if len(pieces) == 1 and nouns <= set(words_of(*pieces)):
        return to_its_end(sections_of_piece(named[0], before), (*before, section), nouns, needles)
    if len(named) == 1:
        return to_its_end(named, (*before, section), nouns, needles)
    if not named and nouns <= set(words_of(section.name)) and _made_again(instruction):
        return first_of(section, before, instruction, needles) or (section,)
    if not named and nouns == {"side"} and _made_again(instruction) and not _parted(section, needles):
        return (section,)
    if not named and nouns & WHOLE_NAMES and _made_again(instruction):
        return (*before, section)
    if not named and len(before) == 1 and before[0].name == _UNNAMED and nouns & _GARMENT:
        needles.warn(instruction.place, f'"{instruction.part}" is taken as the one part before this one.')
        return before
    known = one_of(one.name for one in before) or "none"
    what = "more than one part is meant by" if named else "no part was worked before this one that is called"
    needles.miss(
        instruction.place, f'{what} "{instruction.part}".', f"The parts so far are {known}.", anywhere=True
    )
    return ()


def _parted(section: Section, needles: Needles) -> bool:
    """Return whether stitches of a section were put on hold, so that it has sides of its own."""
    return any(draft.section == section.name and draft.divide for draft in needles.drafts)


def _made_again(instruction: AsPart) -> bool:
    """Return whether a line makes a second one, rather than works a part as another."""
    some = instruction.from_mark or instruction.to_mark or instruction.upto or instruction.until
    return not (some or instruction.reversed_ or instruction.rest)


def lines_of(instruction: AsPart, source: Section, needles: Needles) -> tuple[Line, ...]:
    """Return the lines of a part that are worked again, between its marks; empty, and reported, if it has
    none."""
    lines = tuple(line for line in source.lines if not _is_second(line))
    for mark, first in ((instruction.from_mark, True), (instruction.to_mark, False)):
        if not mark or (first and lines and mark in lines[0].opens):
            continue
        at = next((at for at, line in enumerate(lines) if mark in line.marks), None)
        if at is None:
            needles.miss(instruction.place, f"no mark {mark} stands in the {source.name}.", anywhere=True)
            return ()
        lines = lines[at + 1 :] if first else lines[: at + 1]
    here = next((at for at, line in enumerate(lines) if instruction in line.sentences), len(lines))
    if here == len(lines):
        return lines
    own = lines[here].sentences
    at = own.index(instruction)
    if not here and not at:  # "Make 2. Cast on 20 sts." stands in front of what it means
        return (replace(lines[0], sentences=own[1:]), *lines[1:])
    # "Bind off. Work the other one the same." binds off the other one too
    return *lines[:here], *((replace(lines[here], sentences=own[:at]),) if at else ())


def _is_second(line: Line) -> bool:
    """Return whether a line only makes the second of a pair: `Make 2.`"""
    return all(isinstance(one, AsPart) and _made_again(one) and not one.rest for one in line.sentences)


def lines_after_own(
    instruction: AsPart, lines: tuple[Line, ...], source: Section, needles: Needles
) -> tuple[tuple[Line, ...], int]:
    """Leave out the beginning of a part where the section in hand has cast on or taken up its own stitches.

    "Cast on 25 sts. Work as for back to armhole" does not cast on the stitches of the back as well. What was
    worked here is compared with the part by its rows alone, since its stitches are others.

    Returns:
        The lines that are left, and how many rows of the part are left out; no lines, and reported, if it
        cannot be told which come next.
    """
    theirs = [draft for draft in needles.drafts if draft.section == source.name]
    if not needles.count or not theirs or theirs[0].before or theirs[0].line not in map(_number, lines):
        return lines, 0
    done = len(needles.drafts) - needles.section.start
    at = next(at for at, line in enumerate(lines) if _number(line) == theirs[0].line)
    rest = lines[at:]
    if done == 1 and (sentence := _beginning(rest[0])) is not None:
        after = rest[0].sentences[rest[0].sentences.index(sentence) + 1 :]
        return (replace(rest[0], sentences=after), *rest[1:]) if after else rest[1:], 1
    begun = zip(needles.drafts[needles.section.start :], theirs, strict=False)
    alike = all(ours.codes == their.codes for ours, their in begun)
    for number in range(1, len(rest)):
        if sum(draft.line in map(_number, rest[:number]) for draft in theirs) == done:
            if not alike and _reaches_back(rest[number:], theirs, needles):
                break  # rows of the other part are worked again, and those worked here are others
            told = f"goes on with line {_number(rest[number])}; the rows before it are worked here already."
            needles.warn(instruction.place, f"as the {source.name}: {told}")
            return rest[number:], done
    told = f"stitches are on the needles and {done} rows are worked"
    unknown = f"so it is not known where in the {source.name} this goes on"
    needles.miss(instruction.place, f"{told}, {unknown}.", "Write its lines out.", anywhere=True)
    return (), 0


def _reaches_back(lines: tuple[Line, ...], theirs: list[DraftRound], needles: Needles) -> bool:
    """Return whether the first of some lines to repeat rows repeats any from before these lines."""
    since = 0
    for line in lines:
        again = next((one for one in line.sentences if isinstance(one, Repeated) and not one.pattern), None)
        if again is not None:
            return again.last is None or again.last.of(needles.size) > since
        since += sum(draft.line == _number(line) for draft in theirs)
    return False


def _number(line: Line) -> int:
    return line.place.line


def _beginning(line: Line) -> Sentence | None:
    """Return the sentence of a line that puts the first stitches on the needles and does no more, if any."""
    worked = next((each for each in line.sentences if isinstance(each, (Phrase, Return))), None)
    if worked is None or isinstance(worked, Return):
        return worked
    begins = [element for element in worked.elements if not isinstance(element, Mark)]
    alone = len(begins) == 1 and (
        isinstance(begins[0], (PickUp, Across)) or (isinstance(begins[0], Work) and begins[0].stitch == "co")
    )
    return worked if alone else None


def parts_meant(
    instruction: AsPart, parts: Sequence[Section], needles: Needles, ending: str = ""
) -> tuple[tuple[Section, int | None], ...]:
    """Return the sections of a piece that are worked again, up to where the line ends.

    Each with after how many rows it ends, None for all of them; none, reported, if the piece never gets that
    far.

    Args:
        instruction: The line that works the piece again.
        parts: Its sections, in their order.
        needles: The knitting in hand.
        ending: As `rows_meant`.
    """
    if len(parts) == 1 or instruction.from_mark or instruction.to_mark:
        return ((parts[0], rows_meant(instruction, parts[0], needles, ending)),)
    if not instruction.upto and instruction.until is None:
        return tuple((part, None) for part in parts)
    counted = not instruction.upto and not isinstance(instruction.until, UntilCount)
    side = find_side_ended(ending)
    for at, part in enumerate(parts[:1] if counted else parts):  # a length goes on over the sections
        own = [number for number, draft in enumerate(needles.drafts) if draft.section == part.name]
        found = _rows_to_end(instruction, own, needles, side) if own else None
        if found is not None:
            last = ((part, found),) if found else ()
            return (*((one, None) for one in parts[:at]), *last)
    _report_no_end(instruction, piece_of(parts[0]), needles)
    return ()


def rows_meant(instruction: AsPart, source: Section, needles: Needles, ending: str = "") -> int | None:
    """Return after how many rows a part ends, counted as it was worked before; None for all of its lines.

    0, reported, if it never gets that far.

    Args:
        instruction: The line that works the part again.
        source: The part.
        needles: The knitting in hand.
        ending: The row that the line ends with (`WS`, `p`); empty if it does not say.
    """
    if not instruction.upto and instruction.until is None:
        return None
    own = [at for at, draft in enumerate(needles.drafts) if draft.section == source.name]
    found = _rows_to_end(instruction, own, needles, find_side_ended(ending)) if own else None
    if found is None:
        _report_no_end(instruction, source.name, needles)
        return 0
    return found


def _report_no_end(instruction: AsPart, name: str, needles: Needles) -> None:
    told = f"the {name} never comes to where this line ends."
    needles.miss(instruction.place, told, "Write its lines out.", anywhere=True)


def _rows_to_end(instruction: AsPart, own: list[int], needles: Needles, side: str) -> int | None:
    """Return after how many of its own drafts, by their indices, a part ends; None if it never does.

    The row back after the last that shapes belongs to it if the line ends with a row of that side.
    """
    if instruction.upto:
        return _named(instruction, range(own[0], own[-1] + 1), needles, side)
    if isinstance(instruction.until, UntilLike):
        return _like(instruction.until, own, needles, side)
    if isinstance(instruction.until, UntilLength):
        return _long(instruction.until, own, needles)
    if isinstance(instruction.until, UntilCount):
        wanted = instruction.until.number.of(needles.size)
        shaped = (number for number, at in enumerate(own, 1) if _comes_to(needles.drafts[at], wanted))
        number = next(shaped, None)
        if number is None or number == len(own):
            return number
        last, back = (needles.drafts[at] for at in own[number - 1 : number + 1])
        plain = back.before == back.after == wanted
        return number + 1 if last.flat and plain and last.side != side == back.side else number
    if isinstance(instruction.until, Rounds):
        wanted = instruction.until.number.of(needles.size)
        rows = [number for number, at in enumerate(own, 1) if needles.drafts[at].before]  # a cast-on is none
        return next(iter(rows[wanted - 1 : wanted]), None)
    return None


def _named(instruction: AsPart, drafts: range, needles: Needles, side: str) -> int | None:
    """Return the number of rows before the first that belongs to what the line names, or up to its end.

    A second front whose armhole begins with a row of the other side ends a plain row earlier, which is told.
    """
    name = re.sub(r"\s+(?:shapings?|opening|divide)$", "", instruction.upto)
    if name.startswith("end of "):
        return _ended(name.removeprefix("end of "), instruction, drafts, needles, side)
    stretch = stretch_named(name, needles, drafts)
    if stretch is None:
        return None
    line = needles.drafts[stretch[0]].line
    told = f"{instruction.upto}: worked up to line {line}, as that is where it begins."
    last = needles.drafts[stretch[0] - 1]
    earlier = bool(side) and last.flat and last.side != side and last.before == last.after
    if earlier:
        told = f"{instruction.upto}: worked up to a row before line {line}, to end with a {side} row."
    needles.warn(instruction.place, told)
    return stretch[0] - drafts.start - earlier


def _ended(name: str, instruction: AsPart, drafts: range, needles: Needles, side: str) -> int | None:
    """Return the number of rows up to the last that shapes what the line names, or the row back behind it."""
    last = rib_ended(needles, drafts) if name.startswith("rib") else last_shaped(name, needles, drafts)
    if last is None:
        return None
    told = f"{instruction.upto}: worked up to the last such row of line {needles.drafts[last].line}."
    needles.warn(instruction.place, told)
    if side and needles.drafts[last].side != side and last + 1 in drafts:
        back = needles.drafts[last + 1]
        last += back.flat and back.before == back.after
    return last + 1 - drafts.start


def _like(until: UntilLike, own: list[int], needles: Needles, side: str) -> int | None:
    """Return the rows of a part up to so many before its shoulders or the like; None if there are none.

    It ends a plain row earlier to end with a row of the side that the line names, which is told.
    """
    first = first_row_of(until, own, needles)
    if first is None:
        return None
    last = first - 1 - (0 if until.fewer is None else until.fewer.of(needles.size))
    if last <= own[0]:
        return None
    draft = needles.drafts[last]
    plain = draft.flat and draft.before == draft.after
    earlier = bool(side) and until.fewer is None and plain and draft.side != side
    if earlier:
        needles.warn(until.place, f"worked a row less than up to the {until.upto}, to end with a {side} row.")
    return last + 1 - own[0] - earlier


def _long(until: UntilLength, own: list[int], needles: Needles) -> int | None:
    """Return the number of rows after which a part is that long.

    Args:
        until: The length, measured from the cast-on edge of the part or from where its armhole begins.
        own: Indices of its drafts.
        needles: The knitting in hand.

    Returns:
        The rows; the nearest number that ends with a row of the side that the line names. None if it is
        never so long.
    """
    origin = _origin(until, own, needles)
    if origin is None:
        return None
    target, height = until.length.of(needles.size), 0.0
    if until.ending_side.startswith("at "):
        told = "where the edge of the other part is cannot be told from here."
        needles.report(until.length.place, told, 'Write "ending with a WS row", or a RS row.')
        return None
    side = find_side_ended(until.ending_side)
    best: tuple[float, int] | None = None
    number_of = {at: number for number, at in enumerate(own, 1)}
    for at in range(origin, own[-1] + 1):
        draft = needles.drafts[at]
        height += draft.height_mm
        if at not in number_of or not draft.after:
            continue
        left = (target - height) * draft.fabric.gauge.rounds / 100
        number = number_of[at]
        if not side or not draft.flat:
            if half_up(left) < 1:
                return number
        elif draft.side == side and (best is None or abs(left) <= best[0]):
            best = (abs(left), number)
        if half_up(left) < -1:
            break
    return best[1] if best is not None and best[0] <= 1 else None


def _origin(until: UntilLength, own: list[int], needles: Needles) -> int | None:
    """Return the draft from whose beginning a part is measured; None where nobody can tell."""
    if until.start in ("section", "cast-on"):
        return own[0]
    if not until.start.startswith("beg "):
        return None
    piece = next((at for at in range(own[0], -1, -1) if not needles.drafts[at].before), own[0])
    stretch = stretch_named(until.start.removeprefix("beg "), needles, range(piece, own[-1] + 1))
    return stretch[0] if stretch is not None else None


def _comes_to(draft: DraftRound, wanted: int) -> bool:
    return draft.after == wanted and 0 < draft.before != draft.after


def times_again(instruction: AsPart, lines: tuple[Line, ...], needles: Needles) -> int:
    """Return how often marked rows are worked again: as the line says, or to a length by the gauge.

    To a length they are worked whole, the nearest number of times, which is told.

    Returns:
        The times; 0, reported, where the piece is that long already or the rows have no height.
    """
    duration = instruction.until
    if not isinstance(duration, UntilLength) or needles.counting.lost:
        return instruction.times
    if duration.ending is not None or duration.ending_side:
        told = "rows between marks are worked whole to a length; with which row they end is not chosen."
        needles.report(instruction.place, told, "Leave out with which row it ends.")
        return 0
    duration = without_held(without_heel(duration, needles), needles)
    origin, found = measured_from(duration, needles), len(needles.findings)
    exact, _ = needles.length_in_rounds(duration.length, origin=origin, blocked=duration.blocked)
    if len(needles.findings) > found:
        return 0
    rounds = _rows_last_worked({line.place.line for line in lines}, needles)
    times = half_up(exact / rounds) if rounds else 0
    if times < 1:
        long = duration.length.printed
        told = f"by the gauge the piece measures {long} before these rows are worked once more."
        needles.report(
            instruction.place, told, "Say from where it is measured, or how often they are worked."
        )
        return 0
    often = {1: "once", 2: "twice"}.get(times, f"{times} times")
    told = f"by the gauge these {rounds} rows are worked {often} more, whole, to {duration.length.printed}."
    needles.warn(instruction.place, told)
    return times


def _rows_last_worked(numbers: set[int], needles: Needles) -> int:
    """Count the rows that lines came to when they were last worked, by the numbers of the lines."""
    rows, above = 0, max(numbers, default=0)
    for draft in reversed(needles.drafts[needles.section.start :]):
        if draft.line not in numbers or draft.line > above or not draft.before:
            break
        above = draft.line
        rows += bool(draft.height_mm)
    return rows


def with_counts_of_here(
    worked: Sequence[tuple[Section, int | None, tuple[Line, ...]]], needles: Needles
) -> list[tuple[Section, int | None, tuple[Line, ...]]]:
    """Leave printed counts out of lines that were worked first from another number of stitches.

    "Section 5: As section 3. 273 sts": the counts printed in section 3 are of that section.
    """
    source = worked[0][0] if worked else None
    first = next((each for each in needles.drafts if source and each.section == source.name), None)
    if first is None or not needles.count or first.before in (0, needles.count):
        return list(worked)
    return [(part, rows, tuple(_without_counts(line) for line in lines)) for part, rows, lines in worked]


def _without_counts(line: Line) -> Line:
    return replace(line, sentences=tuple(one for one in line.sentences if not isinstance(one, PrintedCount)))
