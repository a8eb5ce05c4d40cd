"""Numbered rows filled by repeating others: `Rows 3-10: Repeat rows 1-2.` No I/O.

The numbers say how far it goes: whole repeats of the rows named, up to the last number, or the line is
refused. A number of times in the line has to say the same.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from stepper.craft.stitch_patterns import find_pattern
from stepper.plan.drafts import DraftRound, Template, without_places
from stepper.plan.fabric.established import establish
from stepper.plan.fabric.named_patterns import NAMED, comes_on_side, named_cycle
from stepper.plan.lines.shaping.intervals import find_named_round
from stepper.plan.model import flatten
from stepper.plan.state.needle_and_yarn import refuse_needles_by_turns
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.abbreviate import yarns_of
from stepper.project.duration import Times
from stepper.project.instructions import Line, Repeated, RowsCount
from stepper.project.pattern_heads import key_of
from stepper.project.problems import one_of
from stepper.project.stitchwork import TurnHere, every_element


def fill_numbers(line: Line, repeated: Repeated, needles: Needles) -> tuple[Template, ...]:
    """Return a round for each number of a line that repeats others.

    Args:
        line: The line, with its numbers.
        repeated: What it repeats.
        needles: The knitting as it stands before the first of the numbers.

    Returns:
        As many rounds as the line has numbers; none, reported, where they do not come out.
    """
    cycle = repeated_cycle(repeated, needles)
    rows = len(line.numbers)
    if not cycle or not come_as_they_were(cycle, repeated, needles):
        return ()
    times, over = divmod(rows, len(cycle))
    if over:
        needles.report(
            line.place,
            f"the line is for {rows} rows, and the {len(cycle)} it repeats do not fill them: "
            f"{over} are left over.",
            f"{one_of(str(len(cycle) * n) for n in (times, times + 1) if n)} rows would be whole repeats.",
        )
        needles.lose()
        return ()
    if not _says_so(repeated, times, needles):
        needles.report(
            repeated.place,
            f"the line is for {rows} rows, which is {times} times the {len(cycle)} it repeats, "
            "but says otherwise.",
            "Write the rows alone, or how often without the rows.",
        )
        needles.lose()
        return ()
    return cycle * times


def repeated_cycle(repeated: Repeated, needles: Needles) -> tuple[Template, ...]:
    """Return the rounds a line repeats, by name or number or the last; none, reported, if unknown."""
    if repeated.pattern:
        return _pattern_rounds(repeated, needles)
    if repeated.label:
        named = find_named_round(repeated.label, repeated.place, needles)
        return (named,) if named is not None else ()
    if repeated.numbers:
        missing = [number for number in repeated.numbers if number not in needles.section.numbered]
        if missing:
            known = one_of(str(number) for number in sorted(needles.section.numbered)) or "none"
            needles.miss(
                repeated.place,
                f"round {one_of(map(str, missing))} has not been written out in this section.",
                f"The rounds written out are {known}.",
            )
            return ()
        cycle = tuple(needles.section.numbered[number] for number in repeated.numbers)
        return () if _holed(cycle, repeated, needles) else cycle
    cycle = last_rounds(repeated, needles)
    return () if repeated.last is None and _holed(cycle, repeated, needles) else cycle


def _holed(cycle: tuple[Template, ...], repeated: Repeated, needles: Needles) -> bool:
    """Return whether buttonholes lie in rounds where these are written out; if so, that is reported."""
    holed = (draft for draft in needles.drafts[needles.section.start :] if draft.opened is not None)
    found = any(
        draft.template in cycle and draft.template is not None and draft.line == draft.template.place.line
        for draft in holed
    )
    if found:
        _miss_buttonholes(repeated, needles)
    return found


def _miss_buttonholes(repeated: Repeated, needles: Needles) -> None:
    """Report rows with buttonholes that are worked again, as whether these come again is not said."""
    told = "buttonholes lie in the rows repeated, and the line does not say whether they come again."
    needles.miss(repeated.place, told, "Write those rows out, or say in which rows the buttonholes lie.")


def of_rows_above(repeated: Repeated, needles: Needles) -> Repeated:
    """Return a line that repeats rows "of the lace pattern" as one of those above, if no others can be meant.

    The page defines no pattern that is called so, and the section numbers its rows once.
    """
    key, section = key_of(repeated.pattern), needles.section
    known = any(key in (name, name.split()[-1]) for name in needles.patterns)
    known = known or find_pattern(repeated.pattern) is not None
    more = repeated.again or getattr(repeated.duration, "more", False)
    written = repeated.numbers and set(repeated.numbers) <= set(section.numbered)
    if not key or known or not more or not written or section.numberings != 1:
        return repeated
    needles.warn(repeated.place, f'the rows of "{repeated.pattern}" are taken to be those above.')
    return replace(repeated, pattern="", again=True)


def _pattern_rounds(repeated: Repeated, needles: Needles) -> tuple[Template, ...]:
    """Return rounds of a pattern called by its name, by number or all; none, reported, if unknown."""
    cycle = named_cycle(f"{NAMED}{repeated.pattern}", needles, repeated.place)
    if cycle is None:
        return ()
    if repeated.last is not None and repeated.last.of(needles.size) != len(cycle):
        told = (
            f"the pattern has {len(cycle)} rounds, and the line speaks of {repeated.last.of(needles.size)}."
        )
        needles.report(repeated.place, told, "Say which: rows 1-4 of the pattern.")
        return ()
    missing = [number for number in repeated.numbers if not 1 <= number <= len(cycle)]
    if missing:
        told = f"the pattern has {len(cycle)} rounds, and no round {one_of(map(str, missing))}."
        needles.report(repeated.place, told)
        return ()
    rows = tuple(cycle[number - 1] for number in repeated.numbers) or cycle
    rows = cycle[repeated.numbers[0] - 1 :] if repeated.onwards else rows
    return rows if _fits_sides(repeated, cycle[0].side, len(rows), needles) else ()


def _fits_sides(repeated: Repeated, first: str, rows: int, needles: Needles) -> bool:
    """Return whether rows of a pattern come on the sides it was written for; if not, that is reported.

    Args:
        repeated: The line.
        first: The side of row 1; empty if the page does not say.
        rows: How many rows are worked each time.
        needles: The knitting in hand.
    """
    if not first or not needles.flat:
        return True
    number = repeated.numbers[0] if repeated.numbers else 1
    if not comes_on_side(number, first, needles):
        told = f"a {needles.side} row comes next, and row {number} of the pattern is none."
        needles.report(repeated.place, told, "Work one row before it, or begin with another row.")
        return False
    if rows % 2 and not _once(repeated, needles):
        told = f"{rows} rows, worked again, would each come on the other side the second time."
        needles.report(repeated.place, told, "Write the rows out, or repeat an even number of them.")
        return False
    return True


def establish_pattern(
    repeated: Repeated, cycle: tuple[Template, ...], needles: Needles, *, start: int
) -> None:
    """Take up what was repeated; a pattern worked by the numbers of its rounds goes on with the next of them.

    Where nobody can tell which is next, what was worked is a fabric without the pattern's name.

    Args:
        repeated: The line.
        cycle: The rounds it names.
        needles: The knitting in hand, after them.
        start: Index of the first draft worked of them.
    """
    if not repeated.pattern:
        establish(cycle, needles, start=start)
        return
    whole = named_cycle(f"{NAMED}{repeated.pattern}", needles, repeated.place)
    assert whole is not None, repeated.pattern
    numbers = repeated.numbers or tuple(range(1, len(whole) + 1))
    numbers = tuple(range(numbers[0], len(whole) + 1)) if repeated.onwards else numbers
    in_order = numbers == tuple(range(numbers[0], numbers[0] + len(numbers)))
    if not in_order or (len(numbers) < len(whole) and not isinstance(repeated.duration, Times)):
        establish(cycle, needles, start=start)
        return
    first = numbers[0] - 1
    begin = start if len(numbers) == len(whole) else len(needles.drafts) - len(numbers)
    establish(whole[first:] + whole[:first], needles, start=begin)
    if needles.established.end == len(needles.drafts):
        needles.established.name = key_of(f"{NAMED}{repeated.pattern}")


def last_rounds(repeated: Repeated, needles: Needles) -> tuple[Template, ...]:
    """Return a number of last rounds; without a number, those just written out if none was worked since."""
    own = [draft.template for draft in needles.drafts[needles.line.start :]] if repeated.line else []
    known = tuple(template for template in own if template is not None)
    if known and len(known) == len(own):
        return known
    if repeated.last is None:
        rounds, end = needles.last.written
        since = needles.drafts[end:]
        if not rounds or any(draft.template not in rounds for draft in since) or len(since) % len(rounds):
            needles.miss(
                repeated.place,
                "the line does not say how many rounds are repeated.",
                'Write how many: "rep last 2 rounds", or their numbers.',
            )
            return ()
        return rounds
    wanted = repeated.last.of(needles.size)
    drafts = needles.drafts[needles.section.start :]
    if repeated.short:
        drafts = _short_rows(drafts, wanted, repeated, needles)
        if not drafts:
            return ()
    if len(drafts) < wanted:
        needles.miss(repeated.place, f"only {len(drafts)} rounds come before this line in the section.")
        return ()
    last = drafts[-wanted:] if wanted else []
    if repeated.side:
        last = [draft for draft in last if draft.flat and draft.side == repeated.side]
        if len(last) != 1:
            needles.miss(repeated.place, f"the two rows before this line have not one {repeated.side} row.")
            return ()
    if any(draft.opened is not None for draft in last):
        _miss_buttonholes(repeated, needles)
        return ()
    again = tuple(
        _in_its_yarn(draft, draft.template, last)
        for draft in last
        if draft.template is not None and _comes_again(draft, draft.template)
    )
    if len(again) < len(last):
        needles.miss(
            repeated.place,
            f"one of the last {wanted} rounds cannot be worked again: it casts the piece on, binds off, "
            "takes stitches back from hold or goes to a fixed count.",
            "Write out the rounds that are repeated.",
        )
        return ()
    return again


def _short_rows(
    drafts: list[DraftRound], wanted: int, repeated: Repeated, needles: Needles
) -> list[DraftRound]:
    """Return the last short rows, whatever was worked since; none, reported, if they cannot come next.

    A row that works to its end is none, and one of the other side than the next would begin at the wrong end:
    then "short row" means it and the row back, or the page is wrong.
    """
    short = [draft for draft in drafts if draft.template is not None and _turns(draft.template)][-wanted:]
    odd = wanted % 2 and not _once(repeated, needles)
    if len(short) < wanted or odd or short[0].side != needles.side:
        told = f"the last {wanted} short rows are not known, or do not begin where the work stands."
        needles.miss(repeated.place, told, "Write out the rows that are repeated.")
        return []
    return short


def _turns(template: Template) -> bool:
    return any(isinstance(element, TurnHere) for element in every_element(template.elements))


def _once(repeated: Repeated, needles: Needles) -> bool:
    lasts = repeated.duration
    return isinstance(lasts, Times) and lasts.number.of(needles.size) == 1


def _in_its_yarn(draft: DraftRound, template: Template, last: list[DraftRound]) -> Template:
    """Return a round as it is worked again: in its own yarn where those repeated are not all in the same."""
    own = yarns_of(flatten(draft.phrase))
    if len(own) != 1 or all(yarns_of(flatten(other.phrase)) == own for other in last):
        return template
    return replace(template, yarn=next(iter(own)))


def in_yarn_named(
    cycle: tuple[Template, ...], repeated: Repeated, needles: Needles
) -> tuple[Template, ...]:
    """Return rounds in the yarn that a line names right before them, if it is none of theirs; told."""
    named = needles.last.yarn_taken == len(needles.drafts) and needles.stripes is None
    own = {template.yarn for template in cycle if template.yarn}
    if not named or cycle[0].yarn in ("", needles.yarn) or (len(own) > 1 and needles.yarn in own):
        return cycle
    called = needles.project.yarns[needles.yarn].name
    needles.warn(repeated.place, f"all of it is worked in {called}, which the line names.")
    return tuple(replace(template, yarn="") for template in cycle)


def are_same_rounds(some: Sequence[Template | None], others: Sequence[Template]) -> bool:
    """Return whether rounds are the same, also where they are worked again in the yarn that each had."""
    return len(some) == len(others) and all(
        one is not None and one.place == other.place and replace(one, yarn=other.yarn) == other
        for one, other in zip(some, others, strict=True)
    )


def come_as_they_were(cycle: tuple[Template, ...], repeated: Repeated, needles: Needles) -> bool:
    """Return whether rounds can be worked again as they were last; if not, that is reported.

    Rows written for back and forth show another face in the round, and needles may change among them.
    """
    drafts = needles.drafts
    for end in range(len(drafts), needles.section.start + len(cycle) - 1, -1):
        found = drafts[end - len(cycle) : end]
        if not are_same_rounds([draft.template for draft in found], cycle):
            continue
        several = len(cycle) > 1 or (found[-1].flat and found[-1].side == "WS")
        if several and found[-1].flat != needles.flat and not any(map(_is_short, found)):
            if all(map(_turns_by_itself, cycle)):
                return True
            ways = ("rows", "rounds") if found[-1].flat else ("rounds", "rows")
            told = "what is worked again was in {}, and it goes in {} here: every other one would be wrong."
            needles.report(repeated.place, told.format(*ways), "Write them out as they are worked here.")
            needles.lose()
            return False
        before = drafts[end - len(cycle) - 1] if end > len(cycle) else None
        return not refuse_needles_by_turns(found, before, repeated.place, needles)
    return True


def _is_short(draft: DraftRound) -> bool:
    return draft.from_turn or (draft.template is not None and _turns(draft.template))


def _turns_by_itself(template: Template) -> bool:
    """Return whether a row is read for the side on which it comes: stockinette, a chart, as it looks."""
    return template.stockinette or bool(template.chart) or template.asks


def _comes_again(draft: DraftRound, template: Template) -> bool:
    """Return whether a round can be repeated: a cast-on of the piece or a change to a count comes once."""
    return draft.before > 0 and (template.evenly is None or template.evenly.to is None)


def _says_so(repeated: Repeated, times: int, needles: Needles) -> bool:
    """Return whether the line's own number of times, if any, agrees with the rows it is for."""
    if repeated.implied:
        return True
    duration = repeated.duration
    if not isinstance(duration, Times):
        return False
    said = duration.number.of(needles.size)
    in_all = times + 1 if not duration.more else times
    return said in (times, in_all)


def _written_before(needles: Needles) -> int:
    """Return how many rounds are written out right before the line that goes on with them; 0 for none."""
    pattern = {without_places(template) for template in needles.section.pattern}
    first = max(needles.section.start, needles.line.start - len(needles.section.pattern))
    above = needles.drafts[first : needles.line.start]
    alike = bool(above) and all(without_places(draft.template) in pattern for draft in above)
    return len(needles.section.pattern) if alike else 0


def check_rounds(instruction: RowsCount, needles: Needles) -> None:
    """Check a printed number of rounds against the rounds of its line, or those it repeats besides."""
    printed = instruction.number.of(needles.size)
    worked = len(needles.drafts) - needles.line.start
    fits = {worked, worked + _written_before(needles)}
    if instruction.total:
        cast_on = sum(not draft.before for draft in needles.drafts[needles.section.start :])
        fits |= {len(needles.drafts) - needles.section.start - cast_on}
    if needles.section.shaky and printed > worked:
        return  # a fault told before took rounds away: too few are no fault of their own
    if not needles.counting.lost and printed not in fits:
        needles.report(
            instruction.place,
            f"the pattern prints {printed} rounds; the line comes to {worked}.",
            "Rounds written out before the line count where it says so: (10 rounds in all).",
        )
