"""The lines of a section in their order: numbered rounds, named rounds, sides, and everything else. No I/O.

Lines that number their rounds are put together until the numbering begins anew, and worked in the order of
their numbers, whatever the order of the lines: "Rnds 2 and 4: knit" comes between rounds 1, 3 and 5. A line
for "all WS rows" stands for every row that has none of its own.
"""

from __future__ import annotations

from dataclasses import replace

from stepper.plan.counts import check_count
from stepper.plan.drafts import Template
from stepper.plan.established import asks_pattern, establish
from stepper.plan.filling import filled
from stepper.plan.in_hand import LineInHand
from stepper.plan.needles import Needles
from stepper.plan.rounds import repeat, work_template
from stepper.plan.supplies import Choice
from stepper.plan.working import work
from stepper.project.instructions import (
    AtIntervals,
    BreakYarn,
    ChartWork,
    Count,
    Evenly,
    Join,
    Labelled,
    Line,
    Needle,
    Phrase,
    Remark,
    Repeated,
    Rounds,
    RowsCount,
    Sentence,
    Together,
    TurnMethod,
    Unread,
    WithYarn,
    WorkRounds,
)
from stepper.project.model import Section
from stepper.project.problems import one_of
from stepper.project.stitchwork import Element, Several, TurnHere, Until


def blocks(lines: tuple[Line, ...]) -> list[list[Line]]:
    """Put lines that number their rounds together until the numbering begins anew."""
    found: list[list[Line]] = []
    for line in lines:
        if _numbered(line) and found and _goes_with(line, found[-1]):
            found[-1].append(line)
        else:
            found.append([line])
    return found


def _numbered(line: Line) -> bool:
    return bool(line.numbers or line.every)


def _goes_with(line: Line, block: list[Line]) -> bool:
    """Say whether a numbered line belongs to the numbered lines before it."""
    last = block[-1]
    if not _numbered(last) or line.label or _extra(last):
        return False
    taken = {number for other in block for number in other.numbers}
    return not set(line.numbers) & taken


_LEAD = (WithYarn, Needle, BreakYarn, TurnMethod)


def _lead(line: Line) -> tuple[Sentence, ...]:
    """Give what a line takes in hand before its round: `Rnd 1: With A, …`."""
    row = next(
        (at for at, one in enumerate(line.sentences) if not isinstance(one, _LEAD)), len(line.sentences)
    )
    return line.sentences[:row]


def _row(line: Line) -> Sentence:
    """Give the round of a line: its first sentence behind what it takes in hand."""
    return line.sentences[min(len(_lead(line)), len(line.sentences) - 1)]


def _extra(line: Line) -> tuple[Sentence, ...]:
    """Give what a numbered line says after its round."""
    rest = line.sentences[len(_lead(line)) + 1 :]
    return tuple(sentence for sentence in rest if not isinstance(sentence, Count | RowsCount))


def work_block(block: list[Line], section: Section, needles: Needles) -> None:
    """Work one line, or the lines of one numbering, of those that are for the size in hand."""
    block = [line for line in block if not line.only or needles.size in line.only]
    if not block:
        return
    first = block[0]
    if _numbered(first):
        _work_numbered(block, needles)
        return
    _start_line(first, needles)
    needles.section.label = first.label or needles.section.label
    name = (first.label or "").lower()
    named = _is_named_round(first)
    if named:
        needles.section.named[name] = replace(_template(first.sentences[0], needles), side=first.side)
    if named and first.times is None and _only_defined(name, first, section, needles):
        needles.section.label = None
        printed = tuple(sentence for sentence in first.sentences if isinstance(sentence, Count))
        needles.section.named[name] = replace(needles.section.named[name], counts=printed)
        for sentence in first.sentences[1:]:
            if not isinstance(sentence, Count):
                work(sentence, needles)
        return
    needles.remarks.extend(first.said)
    _take_side(first, needles, turns=_turns(first))
    counts = [sentence for sentence in first.sentences if isinstance(sentence, Count | RowsCount)]
    if first.times is None:
        counts = []
    for _ in range(first.times.of(needles.size) if first.times is not None else 1):
        for sentence in first.sentences:
            if sentence not in counts:
                work(sentence, needles)
    for sentence in counts:
        work(sentence, needles)


def _start_line(line: Line, needles: Needles) -> None:
    needles.line = LineInHand(
        number=line.place.line, place=line.place, start=len(needles.drafts), side=line.side
    )
    for assumed in line.assumed:
        needles.warn(assumed.place, assumed.text)
    needles.alterations.line = (
        *needles.alterations.section,
        *needles.alterations.marks.get(line.place.line, ()),
    )


def _turns(line: Line) -> bool:
    """Say whether a line turns in the middle of a row."""

    def turning(elements: tuple[Element, ...]) -> bool:
        return any(
            isinstance(element, TurnHere) or (isinstance(element, Several) and turning(element.elements))
            for element in elements
        )

    return any(isinstance(sentence, Phrase) and turning(sentence.elements) for sentence in line.sentences)


def _take_side(line: Line, needles: Needles, *, turns: bool) -> None:
    """Go to rows where the line speaks of rows, and to the side it names.

    Short rows in the round are rows, but the piece stays round. A stretch worked to a length that ends on the
    other side than the line needs is one row longer.
    """
    if (line.rows or line.side) and not (
        turns or needles.short_rows.gap is not None or needles.short_rows.turns
    ):
        begun = needles.flat
        needles.flat = True
        if not begun and line.side:
            needles.side = line.side
    if not line.side or line.side == needles.side or not (needles.flat or needles.short_rows.gap is not None):
        return
    if needles.short_rows.gap is None and _lengthened(needles):
        return
    if needles.short_rows.gap is None and (needles.free or _just_cast_on(needles)):
        needles.side = line.side
        return
    needles.warn(
        line.place,
        f"the line is for {line.side} rows; by the rows so far one of the other side comes next. "
        "Taken as printed.",
    )
    if needles.short_rows.gap is None:
        needles.side = line.side


def _just_cast_on(needles: Needles) -> bool:
    """Say whether no row has been worked yet on what is on the needles."""
    return not needles.drafts or needles.drafts[-1].before == 0 or not needles.count


def _lengthened(needles: Needles) -> bool:
    """Work one row more of the stretch just worked to a length; say whether there is one."""
    if not needles.stretches or needles.stretches[-1].last != len(needles.drafts) - 1:
        return False
    cycle, at = needles.last.repeated
    if not cycle:
        return False
    repeat(cycle, 1, needles, cycle[0].place, start=at)
    needles.stretches[-1] = replace(needles.stretches[-1], last=len(needles.drafts) - 1)
    return True


def _is_named_round(line: Line) -> bool:
    """Say whether a line gives a round a name: `Dec round: k1, k2tog, …`."""
    last = (line.label or "").lower().split()[-1:]
    return bool(last and last[0] in ("round", "rnd", "row")) and isinstance(line.sentences[0], Phrase)


def _only_defined(name: str, written: Line, section: Section, needles: Needles) -> bool:
    """Say whether a named round is worked only where a later sentence says so.

    It is worked where it is printed, and again where it is called. "Work dec round every 8th round 6 times"
    right behind it counts all six, the first on the eighth round; "rep dec round …" comes on top of the once,
    and so does what follows other rounds. Where the printed counts say otherwise, the other is taken.
    """
    between = False
    for line in section.lines[section.lines.index(written) + 1 :]:
        for sentence in line.sentences:
            if isinstance(sentence, Labelled) and sentence.label == name:
                return not sentence.again and _called_only(name, written, line, needles)
            between = between or (not _is_named_round(line) and _works_rounds(sentence, name))
            for part in sentence.parts if isinstance(sentence, Together) else (sentence,):
                if isinstance(part, AtIntervals) and part.label == name:
                    if part.again or any(leg.more for leg in part.legs):
                        return False
                    if between:
                        _count_in_all(name, written, line, needles)
                        return False
                    return _all_told(name, written, line, needles)
    return False


def _works_rounds(sentence: Sentence, name: str) -> bool:
    """Say whether a sentence between a named round and its call works rounds: then so did the named one."""
    if isinstance(sentence, AtIntervals | Together):
        parts = sentence.parts if isinstance(sentence, Together) else (sentence,)
        return all(part.label != name for part in parts)
    return isinstance(sentence, WorkRounds | Repeated | ChartWork | Evenly | Phrase)


def _count_in_all(name: str, written: Line, line: Line, needles: Needles) -> None:
    """Note that "work … times" behind other rounds may count the once that was worked before them."""
    place = written.place
    needles.choices.append(
        Choice(
            place=place,
            words=f"work {name} … times",
            first="so often after the once where it is written out",
            second="so often in all, that once included",
            line=line.place.line,
        )
    )
    if (place.line, place.column) in needles.readings:
        needles.section.in_all.add(name)


def _called_only(name: str, written: Line, line: Line, needles: Needles) -> bool:
    """Say whether "work dec round" means the once that is written out; note that it has two readings."""
    place = written.place
    needles.choices.append(
        Choice(
            place=place,
            words=f"work {name}",
            first=f"once more after the {name} where it is written out",
            second="the once that is written out",
            line=line.place.line,
        )
    )
    return (place.line, place.column) in needles.readings


def _all_told(name: str, written: Line, line: Line, needles: Needles) -> bool:
    """Say whether "work … times" counts every time; note that the words have another reading."""
    place = written.place
    needles.choices.append(
        Choice(
            place=place,
            words=f"work {name} … times",
            first="so often in all",
            second="so often after the once where it is written out",
            line=line.place.line,
            quiet=True,
        )
    )
    return (place.line, place.column) not in needles.readings


def _template(sentence: Sentence, needles: Needles) -> Template:
    """Make a repeatable round of the round of a numbered or named line."""
    if isinstance(sentence, Phrase):
        return Template(sentence.elements, sentence.place)
    if isinstance(sentence, ChartWork):
        return Template((), sentence.place, chart=sentence.name, chart_round=sentence.first or 0)
    if _once_as_set(sentence):
        return Template((Until("pattern", "end", None, None, sentence.place),), sentence.place)
    needles.report(
        sentence.place,
        "a line for all such rows gives one row, stitch by stitch.",
        'Write it out, for example "All WS rows: purl".',
    )
    return Template((), sentence.place, stockinette=True)


def _once_as_set(sentence: Sentence) -> bool:
    """Say whether a sentence is one round in pattern: `Row 2: Work in pattern`."""
    if not isinstance(sentence, WorkRounds) or not isinstance(sentence.duration, Rounds):
        return False
    return sentence.manner in ("pattern", "rib") and sentence.duration.number.values == (1,)


def _work_numbered(block: list[Line], needles: Needles) -> None:
    """Work `Rnd 1: …`, `Rnds 2-4: …` in the order of their numbers, once."""
    order = {number: line for line in block for number in line.numbers}
    for line in block:
        _fill(order, line, block, needles)
    if not order:
        return
    _fill_back(order, needles)
    if min(order) == 1:
        needles.section.numbered = {}
    turns = any(_turns(line) for line in block)
    begin = len(needles.drafts)
    spread: dict[int, tuple[Template, ...]] = {}
    if block[0].label:
        needles.section.label = block[0].label
    for number in sorted(order):
        line = order[number]
        _start_line(line, needles)
        if number == min(line.numbers, default=number):
            needles.remarks.extend(line.said)
        alone = len(line.numbers) == 1 and not line.every
        side = line.side if alone else _side_of(number, order)
        _take_side(replace(line, side=side), needles, turns=turns)
        _establish_so_far(number, line, order, begin, needles)
        last = number == max(line.numbers, default=number)
        _work_number(number, line, needles, spread)
        _check_counts(line, needles, last=last)
    missing = [number for number in range(min(order), max(order)) if number not in order]
    if missing:
        needles.report(
            block[0].place,
            f"round {one_of(map(str, missing))} is not written out between rounds {min(order)} and "
            f"{max(order)}.",
            'Write it, or a line for all of them: "All WS rows: purl".',
        )
    cycle = tuple(
        needles.section.numbered[number] for number in sorted(order) if number in needles.section.numbered
    )
    establish(cycle, needles, start=begin)
    needles.last.written = (cycle, len(needles.drafts))
    needles.line.start = begin
    for sentence in _extra(block[-1]):
        work(sentence, needles)


def _establish_so_far(number: int, line: Line, order: dict[int, Line], begin: int, needles: Needles) -> None:
    """Take the rows before the first one that goes on in pattern as that pattern."""
    row = _row(line)
    asks = _once_as_set(row) or (isinstance(row, Phrase) and asks_pattern(row.elements))
    before = [each for each in sorted(order) if each < number]
    cycle = tuple(needles.section.numbered[each] for each in before if each in needles.section.numbered)
    if asks and cycle and not any(asks_pattern(template.elements) for template in cycle):
        establish(cycle, needles, start=begin)


def _fill(order: dict[int, Line], line: Line, block: list[Line], needles: Needles) -> None:
    """Put a line for all rows of a side at every number that has no line of its own."""
    if not line.every:
        return
    back = _template(_row(line), needles)
    odd = line.every == "odd"
    if line.every in ("WS", "RS"):
        sided = {
            other.side: other.numbers[0] % 2 == 1 for other in block if other.side and len(other.numbers) == 1
        }
        known = sided.get(line.every)
        other_side = sided.get("RS" if line.every == "WS" else "WS")
        odd = known if known is not None else not other_side if other_side is not None else line.every == "RS"
    if line.every == "WS" or (line.every == "even" and line.rows):
        needles.section.back = back
        needles.section.back_line = line
    numbers = [number for other in block for number in other.numbers]
    if not numbers:
        return
    last = max(numbers)
    if (last + 1) % 2 == odd:
        last += 1
    for number in range(min(numbers), last + 1):
        if number % 2 == odd and number not in order:
            order[number] = line


def _fill_back(order: dict[int, Line], needles: Needles) -> None:
    """Put the line for all wrong-side rows, written earlier in the section, between right-side ones."""
    back = needles.section.back_line
    if back is None or not needles.flat or _side_of(min(order), order) != "RS":
        return
    for number in range(min(order), max(order) + 2):
        if number not in order and _side_of(number, order) == "WS":
            order[number] = back


def _side_of(number: int, order: dict[int, Line]) -> str:
    """Give the side of a numbered row, where another row of the numbering names its side."""
    for other, line in order.items():
        if line.side and line.every in ("", line.side):
            same = other % 2 == number % 2
            return line.side if same else ("WS" if line.side == "RS" else "RS")
    return ""


def _chart_number(number: int, line: Line, drawn: ChartWork, needles: Needles) -> int:
    """Give the round of a chart that a numbered row works, from 1; 0 for the one after that last worked.

    Several rows take as many rounds of the chart, one after the other: "Rnds 5-8: chart fern, rounds 1-4".
    """
    chart = needles.project.charts.get(drawn.name)
    whole = chart is not None and drawn.first is None and len(line.numbers) == len(chart.rounds)
    if drawn.first is None and not whole:
        return 0
    first = drawn.first or 1
    last = drawn.last or (len(chart.rounds) if chart is not None else first)
    at = line.numbers.index(number) if number in line.numbers else 0
    return first + at % (last - first + 1)


def _work_number(number: int, line: Line, needles: Needles, spread: dict[int, tuple[Template, ...]]) -> None:
    """Work one number of a line.

    Args:
        number: The number.
        line: Its line, which may be for more of them.
        needles: The knitting in hand.
        spread: Rounds for the numbers of lines that repeat others, by the identity of the line; filled here.
    """
    row = _row(line)
    for sentence in _lead(line):
        work(sentence, needles)
    if isinstance(row, WorkRounds) and isinstance(row.duration, Rounds) and not _once_as_set(row):
        needles.report(
            row.place,
            "a numbered line gives one round, not a number of rounds.",
            "Write what each of the rounds is, for example Rnds 1-4: Knit.",
        )
        return
    if isinstance(row, Repeated):
        if id(line) not in spread:
            spread[id(line)] = filled(line, row, needles)
        rounds = spread[id(line)]
        if rounds:
            _work_written(number, line, rounds[line.numbers.index(number)], needles)
        return
    if not isinstance(row, Phrase | ChartWork) and not _once_as_set(row):
        _work_whole(number, line, row, needles)
        return
    template = _template(row, needles)
    if isinstance(row, ChartWork):
        if not _chart_fills(line, row, needles):
            return
        template = replace(template, chart_round=_chart_number(number, line, row, needles))
    if any(isinstance(sentence, WithYarn) for sentence in _lead(line)):
        template = replace(template, yarn=needles.yarn)
    if line.label:
        needles.section.named[line.label.lower()] = replace(template, side=line.side)
    _work_written(number, line, template, needles)


def _work_written(number: int, line: Line, template: Template, needles: Needles) -> None:
    needles.section.numbered[number] = template
    if needles.count == 0:
        needles.report(_row(line).place, "there are no stitches on the needles.", "Cast on first.")
        return
    work_template(template, needles)


def _check_counts(line: Line, needles: Needles, *, last: bool) -> None:
    """Check the counts of a numbered round: a change after each, stitches and rounds after the last."""
    for sentence in line.sentences[1:]:
        if isinstance(sentence, Count) and (last or sentence.change):
            check_count(sentence, needles)
        elif isinstance(sentence, RowsCount) and last:
            needles.line.start = len(needles.drafts) - max(1, len(line.numbers))
            work(sentence, needles)


def _work_whole(number: int, line: Line, row: Sentence, needles: Needles) -> None:
    """Work an instruction of a numbered line that brings its own rounds: as many as it has numbers."""
    each = isinstance(row, Evenly | Labelled | Join)
    if number != min(line.numbers, default=number) and not each:
        return
    begin, findings = len(needles.drafts), len(needles.findings)
    work(row, needles)
    worked, wanted = len(needles.drafts) - begin, 1 if each else len(line.numbers) or 1
    told = (
        needles.counting.lost or len(needles.findings) > findings or isinstance(row, Remark | Join | Unread)
    )
    if worked != wanted and not told:
        needles.report(
            row.place,
            f"the line numbers {wanted} of the rows, and comes to {worked}.",
            "Number as many rows as it works, or leave the numbers out.",
        )


def _chart_fills(line: Line, drawn: ChartWork, needles: Needles) -> bool:
    """Say whether the times in a line for rows of a chart agree with its numbers; report it if not."""
    chart = needles.project.charts.get(drawn.name)
    if drawn.times is None and drawn.lasts is None:
        return True
    rounds = (drawn.last or (len(chart.rounds) if chart is not None else 0)) - (drawn.first or 1) + 1
    if drawn.times is not None and (line.every or drawn.times.of(needles.size) * rounds == len(line.numbers)):
        return True
    needles.report(drawn.place, f"the line numbers {len(line.numbers)} rows, and its chart comes to others.")
    return False
