"""How long a pattern is worked: a number of rounds or times, or to a length. No I/O.

It is long because one line may name several of these: to a length, ending with a row, not beyond a count.
"""

from __future__ import annotations

import re
from dataclasses import replace
from itertools import takewhile

from stepper.craft.gauge import half_up
from stepper.plan.alter import ALTERED
from stepper.plan.checks.counts import stitches_on
from stepper.plan.drafts import Template, own_words_in, own_words_of, without_places
from stepper.plan.fabric.begun_charts import asks_pattern, chart_parts_in, rounds_of_cycle
from stepper.plan.fabric.columns import KNIT, PURL, agrees, alike_all_along
from stepper.plan.fabric.established import HINT, as_it_looks, establish, even, ground
from stepper.plan.fabric.marker_sections import pair_of_markers
from stepper.plan.fabric.named_patterns import NAMED, edged_cycle, named_cycle, shows_other_face
from stepper.plan.fabric.own_rows import begins_in_own_words
from stepper.plan.fabric.page_pattern import may_mean_page_pattern
from stepper.plan.fabric.ribs import rib_below, rib_stands
from stepper.plan.lines.all_worked import close_the_gap, work_heel_row, work_until_none_waits
from stepper.plan.lines.cut_short import forget_cut_short, tell_cut_short
from stepper.plan.lines.rounds import repeat
from stepper.plan.lines.shaping.edge_sides import side_ending_at
from stepper.plan.lines.short_row_method import count_unwrapped
from stepper.plan.model import Stretch, other_side
from stepper.plan.state.fitting_counts import nearest_counts
from stepper.plan.state.in_hand import Established
from stepper.plan.state.measuring_places import like_another, measured_from, without_heel, without_held
from stepper.plan.state.needle_and_yarn import refuse_needles_by_turns
from stepper.plan.state.needles import MOST_ROUNDS, Needles
from stepper.plan.state.own_gauge import tell_other_needle
from stepper.project.duration import (
    Duration,
    Rounds,
    Times,
    UntilAllWorked,
    UntilBetween,
    UntilCount,
    UntilLength,
    UntilLike,
    UntilRows,
)
from stepper.project.instructions import Going, WorkRounds
from stepper.project.problems import Span, one_of
from stepper.project.stitchwork import Numbers, Several, Until, Work
from stepper.regex import regex

_NEXT = regex(r"\s*(?:\*\*?\s*)?next\s+(?:row|rnd|round)\b", re.I)


def cycle_of(instruction: WorkRounds, needles: Needles) -> tuple[Template, ...] | None:
    """Return the rounds that a duration repeats; None, reported, if none has been set up."""
    place = instruction.place
    plain = Template((), place, stockinette=True)
    knit, purl = (Template((Until(code, "end", None, None, place),), place) for code in "kp")
    if instruction.edges is not None:
        return edged_cycle(instruction, needles)
    if instruction.manner in ("k", "stockinette"):
        return (knit,) if instruction.manner == "k" and needles.flat else (plain,)
    if instruction.manner == "p":
        return (purl,)
    if instruction.manner == "garter":
        return (knit,) if needles.flat else (purl, knit) if _joined_behind_ridge(needles) else (knit, purl)
    if instruction.manner.startswith("rib "):
        return _rib(instruction, needles)
    if instruction.manner.startswith(NAMED):
        return named_cycle(instruction.manner, needles, place)
    own = own_words_in(needles.section.pattern)
    if own:
        told = f"nobody can tell how the pattern goes on here: {own_words_of(own)}."
        needles.miss(place, told, "Repeat the rows by their numbers, or name the fabric.")
        return None
    if needles.section.pattern:
        return as_it_looks(needles.section.pattern, needles, place)
    if instruction.even and needles.drafts and not needles.drafts[-1].before:
        needles.warn(place, "nothing says in which fabric the cast-on goes on; stockinette is taken.")
        return (plain,)
    needles.report(
        place,
        "no pattern has been set up before this line.",
        "Write the round first, for example *K2, p2; rep from * to end. Work for 3 cm.",
    )
    return None


def _joined_behind_ridge(needles: Needles) -> bool:
    """Return whether garter stitch in rows ended with a right-side row, so that a purl round comes next."""
    last = needles.drafts[-1]
    return last.flat and last.side == "RS" and set(last.codes) == {"k"} and ground(needles) == "garter"


def _rib(instruction: WorkRounds, needles: Needles) -> tuple[Template, ...] | None:
    """Set up a rib named by its stitches, as "k2, p2 rib"; in rows it ends as it begins.

    The page's own rows of that name come first.
    """
    place = instruction.place
    knit, purl = (int(word) for word in instruction.manner.split()[1:])
    own = needles.patterns.get(f"{knit}x{purl} rib")
    if own is not None and not _is_of_other_work(own, needles):
        return own
    if own is not None:
        named = f"k{knit}, p{purl}"
        told = f"the page's rows of {named} rib are written for other work: *{named} is taken here."
        needles.warn(place, told)
    over = needles.count % (knit + purl)
    if over and not (needles.flat and over == knit):
        multiple = f"a multiple of {knit + purl}{f', or {knit} more' if needles.flat else ''}"
        near = nearest_counts(needles.count, knit + purl)
        needles.report(
            place,
            f"k{knit}, p{purl} rib needs {multiple}; {needles.count} stitches are on the needles.",
            f"It would fit on {one_of(map(str, near))} stitches.",
        )
        return None
    pair = (Work("k", Numbers((knit,), place), None, place), Work("p", Numbers((purl,), place), None, place))
    last = (Work("k", Numbers((knit,), place), None, place),) if over else ()
    row = Template((Several(pair, None, "rest", None, place), *last), place)
    if not needles.flat:
        return (row,)
    looks = Template((Until("pattern", "end", None, None, place),), place)
    second = instruction.first is not None and instruction.first.of(needles.size) % 2 == 0
    _begin_rib((row, looks), knit, purl, needles, wrong=needles.wrong != second)
    return (row, looks)


def _is_of_other_work(rows: tuple[Template, ...], needles: Needles) -> bool:
    """Return whether rows of a rib are written back and forth and the work goes round, or the other way."""
    if len(rows) < 2:
        return False
    if shows_other_face(rows, needles):
        return True
    return not needles.flat and any(row.elements != rows[0].elements for row in rows)


def _begin_rib(cycle: tuple[Template, ...], knit: int, purl: int, needles: Needles, *, wrong: bool) -> None:
    """Leave the fabric below: a rib in rows stands by itself, also on a ridge that breaks into the rows.

    Its row 1 is for the side that comes next, or for the other where the line begins with a 2nd row
    (`wrong`: it is for the wrong side).
    """
    here, fits = len(needles.drafts), needles.count // (knit + purl) + 1
    row = [(KNIT,) * knit + (PURL,) * purl for _ in range(fits)]
    cells = [cell for pair in row for cell in pair][: needles.count]
    if wrong:
        cells = [PURL if cell == KNIT else KNIT for cell in reversed(cells)]
    needles.established = Established(
        cycle=cycle, start=here, end=here, reached=here, columns=[(cell,) for cell in cells]
    )


def work_even(instruction: WorkRounds, needles: Needles) -> None:
    """Go on with the established fabric for a duration, without shaping."""
    if instruction.manner == "rib" and not rib_stands(needles):
        below = rib_below(needles)
        if below is not None:
            told = f"in rib: as line {below.place.line}, over the plain round that begins the yarn."
            needles.warn(instruction.place, told)
            begin = len(needles.drafts)
            last_for((below,), instruction.duration, needles, instruction.place, start=begin)
            establish((below,), needles, start=begin)
            return
        told = "no rib stands under these stitches, so nobody can tell which are knitted."
        needles.miss(instruction.place, told, 'Name it: "Work in k2, p2 rib for 5 cm".')
        return
    straight = instruction.bare or instruction.even
    if not straight and instruction.manner == "pattern" and may_mean_page_pattern(instruction.place, needles):
        return
    if _refuses_row_between(instruction.place, needles, straight=straight):
        return
    going = even(needles, instruction.place, straight=straight)
    if going is None:
        return
    cycle, first = going
    known = needles.established
    found = needles.drafts[known.start : known.end][-len(cycle) :]
    before = needles.drafts[known.end - len(cycle) - 1] if known.end > len(cycle) else None
    if len(found) == len(cycle) and refuse_needles_by_turns(
        found, before, instruction.place, needles, tell=False
    ):
        return
    if needles.last.yarn_named == len(needles.drafts) and any(template.yarn for template in cycle):
        cycle = tuple(replace(template, yarn="") for template in cycle)
        needles.warn(instruction.place, "the stripes before it end here: the line names its yarn.")
    last = needles.drafts[-1] if needles.drafts else None
    if instruction.bare and last is not None and last.before and last.before != last.after:
        needles.warn(
            instruction.place,
            f"read as worked even: the shaping of line {last.line} is not worked again.",
        )
    _tell_row_alone(instruction.place, needles)
    looks = as_it_looks(cycle, needles, instruction.place)
    begin = len(needles.drafts)
    less = int(instruction.but_last)
    last_for(looks, instruction.duration, needles, instruction.place, start=begin, first=first, less=less)
    if looks == cycle:
        establish(cycle, needles, start=begin)


def _refuses_row_between(place: Span, needles: Needles, *, straight: bool) -> bool:
    """Report what goes on behind one or two plain rows that are no fabric, but stand between two stretches.

    "Purl 1 rnd. Work 4 rnds in pattern": the pattern is what was worked before that ridge, if it is anything.
    """
    known = needles.established
    rows, before = needles.drafts[known.start :], needles.drafts[: known.start][-1:]
    figured = len(known.cycle) != 1 or (known.name or known.cycle[0].stockinette) not in ("", False, "k", "p")
    if figured or not 0 < len(rows) <= 2 or not before or not before[0].before:
        return False
    plain = alike_all_along(rows[-1:])
    if plain is None or before[0].after != needles.count or agrees(before[0], plain[0]):
        return False
    if straight and (needles.flat or plain == (KNIT,)):
        return False
    told = f"nobody can tell whether the plain row of line {rows[0].line} goes on here or what was before it."
    needles.miss(place, told, HINT)
    return True


def go_on_in(instruction: Going, needles: Needles) -> None:
    """Take up the fabric for the rows of a shaping and those between; no row is worked yet."""
    place = instruction.place
    if instruction.manner == "pattern" and may_mean_page_pattern(place, needles):
        return
    if needles.counting.lost or instruction.manner in ("pattern", "rib"):
        if not needles.counting.lost and not needles.count:
            needles.report(place, "no pattern has been set up before this line.")
        return
    if instruction.manner.startswith(NAMED) and begins_in_own_words(instruction.manner, place, needles):
        return
    garter = instruction.manner == "garter" and needles.flat
    if not garter and instruction.manner != "stockinette":
        needles.report(
            place,
            "a fabric that begins with its shaping is read of stockinette, and of garter stitch in rows.",
            "Write the rows of the fabric before the shaping, then go on in pattern.",
        )
        return
    if instruction.side and needles.flat and needles.side != instruction.side:
        told = f"a {instruction.side} row begins the line; by the rows so far one of the other side comes."
        needles.report(place, told, "Count the rows before it.")
        return
    here = len(needles.drafts)
    knit = Template((Until("k", "end", None, None, place),), place)
    cycle = (knit if garter else Template((), place, stockinette=True),)
    needles.section.pattern, needles.section.garter = cycle, garter
    needles.established = Established(
        cycle=cycle,
        start=here,
        end=here,
        reached=here,
        columns=[(KNIT, PURL) if garter else (KNIT,)] * needles.count,
        phase=int(garter and needles.wrong),
    )


def _is_figured(row: Template) -> bool:
    """Return whether a row is written out in more than one stitch."""
    return len(row.elements) > 1 or any(isinstance(element, Several) for element in row.elements)


def _tell_row_alone(place: Span, needles: Needles) -> None:
    """Tell the knitter if "in pattern" takes the last of two successive rows written without numbers."""
    known = needles.established
    if len(known.cycle) != 1 or known.start <= needles.section.start:
        return
    if known.start >= len(needles.drafts):
        return  # the line before changed to this fabric, and no row of it was worked yet
    before, alone = (draft.template for draft in needles.drafts[known.start - 1 : known.start + 1])
    if before is None or alone is None or before == alone or alone != known.cycle[0]:
        return
    if chart_parts_in(alone.elements):
        return  # it goes on with the next row of its chart
    numbered = needles.section.numbered.values()
    if before in numbered or alone in numbered or not _is_figured(alone):
        return
    if not _is_figured(before) and not (needles.flat and _comes_next(before, needles)):
        return
    draft = needles.drafts[known.start - 1]
    if draft.before == draft.after == needles.count:
        needles.warn(
            place,
            f"read as line {alone.place.line} alone; number it and line {before.place.line} as rows 1 and 2 "
            "if the pattern is both.",
        )


def _comes_next(row: Template, needles: Needles) -> bool:
    """Return whether a row is written under "Next row", as one of several that make a pattern may be."""
    lines = needles.project.lines
    return any(line.place.line == row.place.line and _NEXT.match(line.text) for line in lines)


def last_for(
    cycle: tuple[Template, ...],
    duration: Duration,
    needles: Needles,
    place: Span,
    *,
    start: int,
    first: int = 0,
    less: int = 0,
    again: bool = False,
) -> None:
    """Work a cycle for a duration; rounds of it since `start` count unless the line says "more".

    Args:
        cycle: The rounds.
        duration: How long.
        needles: The knitting in hand.
        place: Where the line says so.
        start: Index of the first draft that counts.
        first: Round of the cycle that the first of them is, from 0.
        less: Rounds of the end that are left for what the line says next.
        again: Whether the line repeats rounds written out before, so that a total number of rows is of those.
    """
    forget_cut_short(cycle, needles)
    done = len(needles.drafts) - start
    at = done + first
    if isinstance(duration, Rounds):
        counted = _so_far(cycle, needles) if duration.total else done
        rounds = duration.number.of(needles.size) - (0 if duration.more else counted) - less
        if duration.total and rounds < 1:
            needles.report(duration.number.place, f"{counted} such rounds are worked already.")
        elif duration.total and not counted and _worked_before(needles):
            told = "the rounds in all are those of this line; the others before it in this part do not count."
            needles.warn(duration.number.place, told)
        repeat(cycle, rounds, needles, duration.number.place, start=at)
    elif isinstance(duration, Times):
        rounds = duration.number.of(needles.size) * len(cycle) - (0 if duration.more else done) - less
        if not duration.more and not duration.number.of(needles.size) and done > 0:
            needles.report(
                duration.number.place,
                "the rounds are written out above, and of this size none of them is worked.",
                "Write the sizes in which they are worked in front of each of them, and of this line.",
            )
        repeat(cycle, rounds, needles, duration.number.place, start=at)
    elif isinstance(duration, UntilCount | UntilBetween):
        _to_count(cycle, duration, needles, start=at)
    elif isinstance(duration, UntilAllWorked):
        work_until_none_waits(cycle, duration, needles, start=at)
    elif isinstance(duration, UntilRows):
        these = _so_far(cycle, needles) if again else 0
        repeat(cycle, rows_left(duration, needles, these) - less, needles, place, start=at)
    elif isinstance(duration, UntilLike):
        repeat(cycle, like_another(duration, needles) - less, needles, place, start=at)
    else:
        _to_length(cycle, duration, needles, place, start=start, first=first, less=less)
    needles.last.repeated = (cycle, (len(needles.drafts) - start + first) % len(cycle))


def _so_far(cycle: tuple[Template, ...], needles: Needles) -> int:
    """Return how many rounds of a cycle were worked just before, one after the other, in this section.

    On which line they stand makes no difference: "Knit 6 rounds. Knit until there are 10 rounds in all."
    """
    alike, worked = {without_places(template) for template in cycle}, 0
    for draft in reversed(needles.drafts[needles.section.start :]):
        if draft.template is None or without_places(draft.template) not in alike:
            break
        worked += 1
    return worked


def _worked_before(needles: Needles) -> bool:
    """Return whether rounds are worked in this section already, besides a cast-on."""
    return any(draft.before for draft in needles.drafts[needles.section.start :])


def _to_count(
    cycle: tuple[Template, ...], duration: UntilCount | UntilBetween, needles: Needles, *, start: int
) -> None:
    """Work a cycle until a number of stitches is left: the first round that leaves them is the last."""
    wanted = duration.number.of(needles.size)
    if needles.counting.lost:
        if isinstance(duration, UntilCount):
            needles.regain(wanted)
        return
    begun = _counted(needles, duration)
    if begun is None:
        return
    cycle = close_the_gap(cycle, duration.number.place, needles)
    if needles.counting.lost:
        return
    now: int | None = begun
    for number in range(MOST_ROUNDS):
        count = now
        if count == wanted:
            needles.last.counted = len(needles.drafts)
            if number:
                tell_cut_short(cycle, duration.number.place, needles, at=start + number)
            return
        findings = len(needles.findings)
        work_heel_row(cycle[(start + number) % len(cycle)], duration.number.place, needles)
        now = _counted(needles, duration)
        if now is None or len(needles.findings) > findings:
            return
        passed = (begun - wanted) * (now - wanted) < 0
        stuck = number >= 2 * len(cycle) and now == begun
        away = number >= 4 * len(cycle) and (now - begun) * (begun - wanted) > 0
        if passed or stuck or away:
            how = f"goes from {count} to {now} stitches past it" if passed else "changes no count"
            how = f"goes from {begun} to {now} stitches, away from it" if away else how
            told = f"the repeat never leaves {wanted} stitches{_between_what(duration)}: it {how}."
            needles.report(duration.number.place, told)
            return


def _between_what(duration: UntilCount | UntilBetween) -> str:
    if isinstance(duration, UntilCount):
        return ""
    if duration.needle:
        return f" on needle {duration.needle}"
    return f" between the {'wraps' if duration.wraps else 'markers'}"


def _counted(needles: Needles, duration: UntilCount | UntilBetween) -> int | None:
    """Return the stitches that a repeat ends by: all, or between two markers or wraps; None, reported."""
    if isinstance(duration, UntilCount):
        return needles.count
    if duration.needle:
        return stitches_on(duration.needle, duration.number.place, needles)
    if duration.wraps:
        wrapped = count_unwrapped(needles)
        if wrapped is None:
            told = "stitches between wraps are counted, and no two short rows were wrapped and turned here."
            needles.report(duration.number.place, told, "Say how many times instead.")
        return wrapped
    if len(needles.markers) == 2:
        return needles.markers[1] - needles.markers[0]
    pair = pair_of_markers(needles) if duration.kind else None
    if pair is not None:
        return pair[1] - pair[0]
    told = f"the stitches between two markers are counted, and {len(needles.markers)} markers are there."
    needles.report(duration.number.place, told, "Say the stitches in all instead.")
    return None


def rows_left(duration: UntilRows, needles: Needles, these: int = 0) -> int:
    """Return the rows still to work until a piece has so many; tell those before this line that count.

    Args:
        duration: How many rows.
        needles: The knitting in hand.
        these: Rows just worked of those that the line repeats, of which "until 8 rows have been worked" is
            said; 0 if it repeats none.
    """
    own = reversed(needles.drafts[needles.section.start :])
    before = len([*takewhile(lambda draft: draft.before, own)])
    rows, place = duration.number.of(needles.size) - before, duration.number.place
    if 0 < these < before and not duration.in_all:
        told = f"the {these} rows just worked of these count towards them, {before - these} before do not."
        needles.warn(place, f'{told} Write "in all" if they do.')
        rows, before = duration.number.of(needles.size) - these, these
    elif 0 < these < before and rows > 0:
        needles.warn(place, f"the {before} rows of this piece before the line count towards them.")
    if rows < 1:
        needles.report(place, f"{before} rows are worked already.")
    elif before and not duration.in_all and not these:
        needles.warn(place, f"the {before} rows of this piece before the line count towards them.")
    return rows


_JUST_PASSED = 2
"""Rounds that a piece may be too long: the last decrease of a sleeve often comes where its length ends."""


def _to_length(
    cycle: tuple[Template, ...],
    duration: UntilLength,
    needles: Needles,
    place: Span,
    *,
    start: int,
    first: int,
    less: int = 0,
) -> None:
    duration = without_held(without_heel(duration, needles), needles)
    origin = measured_from(duration, needles) if duration.measured else start
    shift, first = first - start, len(needles.drafts)
    exact, target = needles.length_in_rounds(duration.length, origin=origin, blocked=duration.blocked)
    if half_up(exact) <= 0:
        inches = needles.project.units == "in"
        reached = f"{needles.height_mm(origin) / (25.4 if inches else 10):.1f} {needles.project.units}"
        told = f"the piece already measures {reached} here, so {duration.length.printed} is"
        if half_up(exact) >= -_JUST_PASSED and needles.height_mm(origin) > 0:
            word = "passed" if half_up(exact) else "reached"
            needles.warn(duration.length.place, f"{told} {word}: no row is worked for it.")
            return
        needles.report(
            duration.length.place,
            f"{told} passed.",
            'Say from where it is measured, or write "for" a length instead.',
            kind="length",
        )
        return
    if not _has_ending(cycle, duration, needles):
        return
    tell_other_needle(duration.length, needles)
    duration = _with_side(cycle, duration, needles)
    rounds = _ended(exact, cycle, duration, needles, first + shift) - less
    repeat(cycle, rounds, needles, place, start=first + shift)
    last = len(needles.drafts) - 1
    if last < first or target <= 0:
        return
    needles.stretches.append(
        Stretch(
            first=first,
            last=last,
            origin=origin,
            target_mm=target,
            rounds_per_10cm=needles.fabric.gauge.rounds,
            cycle=rounds_of_cycle(cycle, needles),
        )
    )
    _blocking_caution(duration, needles)


def numbers_of(cycle: tuple[Template, ...], needles: Needles) -> range | list[int]:
    """Return the numbers of the rounds of a cycle as printed, or from 1 if they have none."""
    if all(template.chart_round for template in cycle):
        return [template.chart_round for template in cycle]
    numbered = needles.section.numbered
    for first in sorted(numbered):
        if all(numbered.get(first + at) == template for at, template in enumerate(cycle)):
            return range(first, first + len(cycle))
    return range(1, len(cycle) + 1)


def _has_ending(cycle: tuple[Template, ...], duration: UntilLength, needles: Needles) -> bool:
    """Return whether the round that a line ends with is one of those repeated; report it if not."""
    numbers = numbers_of(cycle, needles) if duration.ending is not None else ()
    if duration.ending is None or duration.ending in numbers:
        return True
    needles.report(
        duration.length.place,
        f"the line ends with round {duration.ending}, which is none of those it repeats.",
        f"They are {', '.join(map(str, numbers))}.",
    )
    return False


def _with_side(cycle: tuple[Template, ...], duration: UntilLength, needles: Needles) -> UntilLength:
    """Return the length with the side it ends on: a purl row of stockinette is a wrong-side row."""
    if duration.ending_side.startswith("at "):
        ends = side_ending_at(duration.ending_side.removeprefix("at "), duration.length.place, needles)
        return replace(duration, ending_side=ends)
    if duration.ending_side not in ("k", "p"):
        return duration
    plain = all(
        template.stockinette or (asks_pattern(template.elements) and ground(needles) == "plain")
        for template in cycle
    )
    if not (plain and needles.flat):
        needles.report(
            duration.length.place,
            "which of these rows is the knit row and which the purl row cannot be told.",
            'Write "ending with a WS row".',
        )
    return replace(duration, ending_side="RS" if duration.ending_side == "k" else "WS")


def _ended(
    exact: float, cycle: tuple[Template, ...], duration: UntilLength, needles: Needles, done: int
) -> int:
    """Round a length in rounds once: to the nearest end of those that the line allows, never to none.

    Rounded to a whole number first and to the side asked for after that, 71.5 rows would become 73.
    """
    if duration.ending is not None and len(cycle) > 1:
        wanted = (numbers_of(cycle, needles).index(duration.ending) + 1) % len(cycle)
        return nearest_rows(exact, len(cycle), (wanted - done) % len(cycle))
    if duration.ending_side and needles.flat and needles.project.spacing is None:
        rounds = half_up(exact)  # as plans did before, for a journal knitted then
        last_side = needles.side if rounds % 2 else other_side(needles.side)
        return rounds if last_side == duration.ending_side else rounds + 1
    if duration.ending_side and needles.flat:
        return nearest_rows(exact, 2, 1 if needles.side == duration.ending_side else 0)
    return half_up(exact)


def nearest_rows(exact: float, every: int, over: int) -> int:
    """Return the nearest number from 1 up that leaves `over` when divided by `every`; midway the larger."""
    fits = half_up((exact - over) / every) * every + over
    while fits < 1:
        fits += every
    return fits


def _blocking_caution(duration: UntilLength, needles: Needles) -> None:
    fabric = needles.fabric
    if fabric.blocked is None or duration.blocked:
        return
    worked = duration.length.of(needles.size)
    after = worked * fabric.gauge.rounds / fabric.blocked.rounds
    unit = 25.4 if needles.project.units == "in" else 10
    if abs(after - worked) >= 5:
        printed = duration.length.printed.removesuffix(ALTERED)
        as_printed = printed == duration.length.printed and len(set(duration.length.values)) == 1
        own = printed if as_printed else f"{round(worked / unit, 2):g} {needles.project.units}"
        needles.warn(
            duration.length.place,
            f"{own} on the needles become {after / unit:.1f} {needles.project.units} after blocking; "
            f'write "{printed} after blocking" if the finished length is meant.',
        )


def times_in_words(duration: Duration, needles: Needles) -> str:
    """Say how often, for a caution."""
    if isinstance(duration, Times):
        return f"{duration.number.of(needles.size)} times"
    return "so long"
