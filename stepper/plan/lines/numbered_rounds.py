"""Lines that number their rounds, worked in the order of their numbers. No I/O.

Wherever its line stands, "Rnds 2 and 4: knit" comes between rounds 1, 3 and 5; a single row behind one of a
higher number is refused. A line for "all WS rows" stands for every row that has none of its own. It is long
because what a number means hangs on all lines of its block, which are ordered and worked together.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from itertools import pairwise
from typing import TypeVar

from stepper.craft.stitches import stitch
from stepper.plan.checks.counts import check_count
from stepper.plan.drafts import Template
from stepper.plan.fabric.begun_charts import asks_pattern
from stepper.plan.fabric.chart_rounds import charts_by_name
from stepper.plan.fabric.established import establish
from stepper.plan.fabric.named_patterns import first_row
from stepper.plan.lines.again.repeated_rounds import fill_numbers
from stepper.plan.lines.durations import cycle_of
from stepper.plan.lines.line_in_hand import begin_line, take_side, turns_midway
from stepper.plan.lines.rounds import work_template
from stepper.plan.lines.working import work
from stepper.plan.lines.wrong_side import tell_wrong_side
from stepper.plan.model import flatten, other_side
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.abbreviate import yarns_of
from stepper.project.duration import Rounds
from stepper.project.instructions import (
    AtIntervals,
    BreakYarn,
    ChartWork,
    Evenly,
    Join,
    Labelled,
    Line,
    Needle,
    OwnWords,
    Phrase,
    PrintedCount,
    Remark,
    Repeated,
    RowsCount,
    Sentence,
    TurnMethod,
    Unread,
    WithYarn,
    WorkRounds,
)
from stepper.project.problems import one_of
from stepper.project.stitchwork import Until, Work, every_element


def is_numbered(line: Line) -> bool:
    """Return whether a line says which rounds it is for."""
    return bool(line.numbers or line.every)


_LEAD = (WithYarn, Needle, BreakYarn, TurnMethod)
_Kind = TypeVar("_Kind", bound=Sentence)


def take_leading(
    sentences: Iterable[Sentence], kind: type[_Kind] | tuple[type[_Kind], ...]
) -> tuple[_Kind, ...]:
    """Return the sentences of a kind that stand before any other."""
    found: list[_Kind] = []
    for sentence in sentences:
        if not isinstance(sentence, kind):
            break
        found.append(sentence)
    return tuple(found)


def lead_of(line: Line) -> tuple[Sentence, ...]:
    """Return what a line takes up before its round: `Rnd 1: With A, …`."""
    return take_leading(line.sentences, _LEAD)


def row_of(line: Line) -> Sentence:
    """Return the round of a line: its first sentence after what it takes up."""
    return line.sentences[min(len(lead_of(line)), len(line.sentences) - 1)]


def said_after_round(line: Line) -> tuple[Sentence, ...]:
    """Return what a numbered line says after its round and the counts right behind that."""
    rest = line.sentences[len(lead_of(line)) + 1 :]
    return rest[len(_counts_of_round(line)) :]


def _counts_of_round(line: Line) -> tuple[PrintedCount | RowsCount, ...]:
    """Return the counts printed right behind the round of a line."""
    return take_leading(line.sentences[len(lead_of(line)) + 1 :], (PrintedCount, RowsCount))


def template_of(sentence: Sentence, needles: Needles) -> Template:
    """Make a repeatable round from a numbered or named line."""
    if isinstance(sentence, Phrase):
        return Template(sentence.elements, sentence.place)
    if isinstance(sentence, ChartWork):
        return Template((), sentence.place, chart=sentence.name, chart_round=sentence.first or 0)
    if isinstance(sentence, OwnWords):
        return Template((), sentence.place, own=sentence)
    if is_one_round_in_pattern(sentence):
        return Template((Until("pattern", "end", None, None, sentence.place),), sentence.place)
    needles.report(
        sentence.place,
        "a line for all such rows gives one row, stitch by stitch.",
        'Write it out, for example "All WS rows: purl".',
    )
    return Template((), sentence.place, stockinette=True)


def is_one_round_in_pattern(sentence: Sentence) -> bool:
    """Return whether a sentence is one round in pattern: `Row 2: Work in pattern`."""
    if not isinstance(sentence, WorkRounds) or not isinstance(sentence.duration, Rounds):
        return False
    return sentence.manner in ("pattern", "rib") and sentence.duration.number.values == (1,)


def lines_by_number(block: list[Line], needles: Needles) -> dict[int, Line]:
    """Return the line of each number; a line for all rows of a side fills numbers without their own."""
    order = {number: line for line in block for number in line.numbers}
    for line in block:
        _fill(order, line, block, needles)
    if order:
        _fill_back(order, needles)
    return order


def work_numbered(block: list[Line], needles: Needles) -> None:
    """Work `Rnd 1: …`, `Rnds 2-4: …` in the order of their numbers, once."""
    order = lines_by_number(block, needles)
    if not order:
        _refuse_open_shaping(block, needles)
        return
    _refuse_disorder(block, needles)
    if min(order) == 1:
        needles.section.numbered = {}
        needles.section.numberings += 1
        needles.section.first_side = side_of(1, order)
    elif block[0].label:
        _fill_before(order, block[0], needles)
    turns = any(turns_midway(line) for line in block)
    if needles.joined and needles.drafts and not needles.drafts[-1].before:
        needles.section.rows_are_rounds = not any(line.side for line in block)
    begin = len(needles.drafts)
    spread: dict[int, tuple[Template, ...]] = {}
    leads = any(isinstance(one, WithYarn) for line in order.values() for one in lead_of(line))
    label = block[0].label
    for number in sorted(order):
        line = order[number]
        if label and line is block[0]:
            needles.section.label, label = label, None
        begin_line(line, needles)
        turns_back = number + 1 in order and order[number + 1].rows
        needles.line.turns_back = turns_back and not needles.section.rows_are_rounds
        if number == min(line.numbers, default=number):
            needles.remarks.extend(line.said)
        alone = len(line.numbers) == 1 and not line.every
        side = line.side if alone else side_of(number, order)
        if number == min(line.numbers, default=0) and not line.every and side != line.side and line.side:
            _refuse_side(line, side, needles)
        take_side(replace(line, side=side), needles, turns=turns)
        begin = len(needles.drafts) if number == min(order) else begin  # behind the last of a stretch
        _establish_so_far(number, line, order, begin, needles)
        last = number == max(line.numbers, default=number)
        _work_number(number, line, needles, spread)
        if leads:
            _keep_yarns([each for each in sorted(order) if each <= number], begin, needles)
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
    for sentence in said_after_round(block[-1]):
        work(sentence, needles)


def _refuse_open_shaping(block: list[Line], needles: Needles) -> None:
    """Report a row that makes or loses stitches on all rows of a side, where no line says on how many."""
    for line in block:
        elements = row.elements if isinstance(row := row_of(line), Phrase) else ()
        worked = (one for one in every_element(elements) if isinstance(one, Work | Until))
        if any(one.stitch != "pattern" and stitch(one.stitch).change for one in worked):
            told = "the line says on which rows it is worked, and not on how many."
            needles.miss(line.place, told, 'Write how often: "Every RS row 6 times: K1, ssk, k to end."')


def _refuse_disorder(block: list[Line], needles: Needles) -> None:
    """Report a row that is written behind one of a higher number, each in a line of its own.

    Lines for several rows are sorted, as "Rnds 2 and 4" stands behind "Rnds 1 and 3"; of single rows nobody
    can tell whether the number is wrong or the order.
    """
    single = [line for line in block if len(line.numbers) == 1 and not line.every]
    for before, line in pairwise(single):
        if line.numbers[0] < before.numbers[0]:
            needles.report(
                line.place,
                f"row {line.numbers[0]} is written behind row {before.numbers[0]}.",
                "Write the rows in the order in which they are worked, or mend the number.",
            )


def _establish_so_far(number: int, line: Line, order: dict[int, Line], begin: int, needles: Needles) -> None:
    """Take the rows before the first that goes on in pattern as that pattern."""
    row = row_of(line)
    asks = is_one_round_in_pattern(row) or (isinstance(row, Phrase) and asks_pattern(row.elements))
    before = [each for each in sorted(order) if each < number]
    cycle = tuple(needles.section.numbered[each] for each in before if each in needles.section.numbered)
    if asks and cycle and not any(asks_pattern(template.elements) for template in cycle):
        establish(cycle, needles, start=begin)


def _fill(order: dict[int, Line], line: Line, block: list[Line], needles: Needles) -> None:
    """Put a line for all rows of a side at every number that has no line of its own."""
    if not line.every:
        return
    back = template_of(row_of(line), needles)
    odd = line.every == "odd"
    if line.every in ("WS", "RS"):
        sided = next((each for each in block if each.side and len(each.numbers) == 1), None)
        first = "RS" if sided is None else sided.side if sided.numbers[0] % 2 else other_side(sided.side)
        odd = line.every == first
    if line.every == "WS" or (line.every == "even" and line.rows):
        needles.section.back = back
        needles.section.back_line = line
    numbers = [number for other in block for number in other.numbers]
    if not numbers:
        return
    last = max(numbers)
    leads = bool(line.numbers) and line.numbers[0] == min(numbers)
    if (last + 1) % 2 == odd and not leads:
        last += 1  # one more ends the rows, unless such a row begins them
    for number in range(min(numbers), last + 1):
        if number % 2 == odd and number not in order:
            order[number] = line


def _fill_back(order: dict[int, Line], needles: Needles) -> None:
    """Put the line for all wrong-side rows, written earlier in the section, between right-side ones."""
    back = needles.section.back_line
    if back is None or not needles.flat or side_of(min(order), order) != "RS":
        return
    for number in range(min(order), max(order) + 2):
        if number not in order and side_of(number, order) == "WS" and _is_for(number, back):
            order[number] = back


def _is_for(number: int, back: Line) -> bool:
    """Return whether a line for all wrong-side rows may be for a number: "all even rows" are no odd row."""
    return back.every == "WS" or number % 2 == 0


def _fill_before(order: dict[int, Line], named: Line, needles: Needles) -> None:
    """Put the line for all wrong-side rows between a row with a name, "Row 4 (Inc row)", and that before it.

    A name sets a row apart from those before it, and the numbering goes on all the same: rows that are
    missing in between are reported.
    """
    first, before = min(order), max(needles.section.numbered, default=0)
    if not 0 < before < first - 1 or needles.last.written[1] != len(needles.drafts):
        return  # nothing is missing, or rows without numbers stand in between
    back = needles.section.back_line
    alone = first == before + 2 and needles.flat and needles.side == "WS"
    if back is not None and alone and _is_for(first - 1, back):
        order[first - 1] = back
        return
    numbers = [str(number) for number in range(before + 1, first)]
    are = f"rounds {numbers[0]} to {numbers[-1]} are" if len(numbers) > 1 else f"round {numbers[0]} is"
    needles.report(
        named.place,
        f"{are} not written out between rounds {before} and {first}.",
        'Write them, or a line for all of them: "All WS rows: purl".',
    )


def _refuse_side(line: Line, side: str, needles: Needles) -> None:
    """Report rows whose printed side is not that of the first of them, by the rows numbered before."""
    needles.report(
        line.place,
        f"the first of these rows is a {side} row by the rows before, not a {line.side} row.",
        "Write the numbers or the side as they are.",
    )


def side_of(number: int, order: dict[int, Line]) -> str:
    """Return the side of a numbered row, if another row of the numbering names its side."""
    for other, line in order.items():
        if line.side and line.every in ("", line.side):
            same = other % 2 == number % 2
            return line.side if same else other_side(line.side)
    return ""


def _chart_number(number: int, line: Line, drawn: ChartWork, needles: Needles) -> int:
    """Return the round of a chart that a numbered row works, from 1; 0 for the one after that last worked.

    Several rows take as many rounds of the chart, in turn: "Rnds 5-8: chart fern, rounds 1-4".
    """
    chart = charts_by_name(needles).get(drawn.name.lower())
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
        line: Its line, which may be for several numbers.
        needles: The knitting in hand.
        spread: Rounds for the numbers of lines that repeat others, by the identity of the line; filled here.
    """
    row = row_of(line)
    for sentence in lead_of(line):
        work(sentence, needles)
    fabric = _names_a_fabric(row, line)
    rounds_given = isinstance(row, WorkRounds) and isinstance(row.duration, Rounds)
    if rounds_given and not fabric and not is_one_round_in_pattern(row):
        needles.report(
            row.place,
            "a numbered line gives one round, not a number of rounds.",
            "Write what each of the rounds is, for example Rnds 1-4: Knit.",
        )
        return
    if isinstance(row, Repeated) or fabric:
        if id(line) not in spread:
            spread[id(line)] = (
                fill_numbers(line, row, needles)
                if isinstance(row, Repeated)
                else _rows_in(row, line, needles)
            )
        rounds = spread[id(line)]
        if rounds:
            _work_written(number, line, rounds[line.numbers.index(number)], needles)
        return
    if not isinstance(row, Phrase | ChartWork | OwnWords) and not is_one_round_in_pattern(row):
        _work_whole(number, line, row, needles)
        return
    template = template_of(row, needles)
    if isinstance(row, ChartWork):
        if not _chart_fills(line, row, needles):
            return
        template = replace(template, chart_round=_chart_number(number, line, row, needles))
    if any(isinstance(sentence, WithYarn) for sentence in lead_of(line)):
        template = replace(template, yarn=needles.yarn)
    if line.label:
        needles.section.named[line.label.lower()] = replace(template, side=line.side)
    _work_written(number, line, template, needles)


def _keep_yarns(numbers: list[int], begin: int, needles: Needles) -> None:
    """Keep in which yarn each of the numbered rounds was worked, if they are of several: they come so again.

    Args:
        numbers: Those worked so far, in their order.
        begin: Index of the first draft of them.
        needles: The knitting in hand, after them.
    """
    drafts = needles.drafts[begin:]
    own = [yarns_of(flatten(draft.phrase)) for draft in drafts]
    several = len({yarns for yarns in own if len(yarns) == 1}) > 1
    if len(drafts) != len(numbers) or needles.stripes is not None or not several:
        return
    numbered = needles.section.numbered
    for number, draft, yarns in zip(numbers, drafts, own, strict=True):
        template = numbered.get(number)
        if template is not None and len(yarns) == 1 and not (template.yarn or template.chart):
            numbered[number] = replace(template, yarn=yarns[0])
            draft.template = numbered[number] if draft.template == template else draft.template


def _names_a_fabric(row: Sentence, line: Line) -> bool:
    """Return whether a line for several rows in turn names the fabric of all: `Rows 3-6: St st`."""
    if not isinstance(row, WorkRounds) or not row.once or row.edges is not None or len(line.numbers) < 2:
        return False
    in_turn = line.numbers == tuple(range(line.numbers[0], line.numbers[-1] + 1))
    return in_turn and row.manner not in ("pattern", "rib")


def _rows_in(row: Sentence, line: Line, needles: Needles) -> tuple[Template, ...]:
    """Return a row of a fabric for each number of a line; none, reported, if it does not fit."""
    assert isinstance(row, WorkRounds)
    cycle = cycle_of(row, needles)
    first = first_row(row, cycle, needles) if cycle is not None else None
    if cycle is None or first is None:
        return ()
    return tuple(cycle[(first + at) % len(cycle)] for at in range(len(line.numbers)))


def _work_written(number: int, line: Line, template: Template, needles: Needles) -> None:
    needles.section.numbered[number] = template
    if needles.count == 0:
        needles.miss_stitches(row_of(line).place)
        return
    tell_wrong_side(template, needles)
    work_template(template, needles)


def _check_counts(line: Line, needles: Needles, *, last: bool) -> None:
    """Check the counts of a numbered round: a change after each, stitches and rounds after the last."""
    for sentence in _counts_of_round(line):
        if isinstance(sentence, PrintedCount) and (last or sentence.change):
            check_count(sentence, needles)
        elif isinstance(sentence, RowsCount) and last:
            needles.line.start = len(needles.drafts) - max(1, len(line.numbers))
            work(sentence, needles)


def _work_whole(number: int, line: Line, row: Sentence, needles: Needles) -> None:
    """Work an instruction of a numbered line that brings its own rounds: as many as it has numbers."""
    each = isinstance(row, Evenly | Labelled | Join) or _shapes_each(row, line)
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


def _shapes_each(row: Sentence, line: Line) -> bool:
    """Return whether a shaping of one row is that of each row of a line: "Bind off 4 sts at beg of row".

    One "of next row" is not: which of the rows is meant then, is not said.
    """
    if not isinstance(row, AtIntervals) or row.round is None or row.first or row.after or len(row.legs) > 1:
        return False
    (leg,) = row.legs
    once = leg.every.values == (1,) and leg.times is not None and leg.times.values == (1,)
    return once and " next " not in line.text.partition(":")[2].lower()


def _chart_fills(line: Line, drawn: ChartWork, needles: Needles) -> bool:
    """Return whether the times in a line for rows of a chart agree with its numbers; report it if not."""
    chart = charts_by_name(needles).get(drawn.name.lower())
    if drawn.numbers:
        needles.report(drawn.place, "rows of a chart in another order are read in a line without numbers.")
        return False
    if drawn.times is None and drawn.lasts is None:
        return True
    rounds = (drawn.last or (len(chart.rounds) if chart is not None else 0)) - (drawn.first or 1) + 1
    if drawn.times is not None and (line.every or drawn.times.of(needles.size) * rounds == len(line.numbers)):
        return True
    needles.report(drawn.place, f"the line numbers {len(line.numbers)} rows, and its chart comes to others.")
    return False
