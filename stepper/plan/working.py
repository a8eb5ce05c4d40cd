"""Working the instructions of a line, one short helper for each kind. No I/O.

Each helper takes the knitting in hand and one instruction, and adds rounds to it. What does not fit is
reported, and the work goes on as the line intended, so that one fault is told once.
"""

from __future__ import annotations

from dataclasses import replace
from functools import singledispatch

from stepper.craft.stitches import STITCHES, stitch
from stepper.plan.evenly import even_round
from stepper.plan.model import Group, Item, Run, Stretch
from stepper.plan.needles import Needles, Template
from stepper.plan.phrase import MisfitError, work_phrase
from stepper.plan.phrase import Worked as PhraseWorked
from stepper.project.instructions import (
    AtIntervals,
    BindOff,
    BreakYarn,
    ChartWork,
    Count,
    Duration,
    Element,
    Evenly,
    Flat,
    Hold,
    Join,
    Labelled,
    Mark,
    MarkEvery,
    Needle,
    Phrase,
    Remark,
    Repeated,
    Return,
    Rounds,
    Sentence,
    Times,
    Until,
    UntilLength,
    WithYarn,
    Work,
    Worked,
)
from stepper.project.model import Chart
from stepper.project.problems import Place, nearest, one_of

MOST_ROUNDS = 20_000
"""More rounds than any garment has; a larger number is a slip of the pen."""


@singledispatch
def work(instruction: Sentence, needles: Needles) -> None:
    """Work one instruction of a line."""
    raise AssertionError(f"no helper works {type(instruction).__name__}")


def work_template(template: Template, needles: Needles, **told: object) -> None:
    """Work one round of a pattern once."""
    if template.chart:
        _chart_round(template, needles)
        return
    try:
        worked = _worked(template, needles)
    except MisfitError as misfit:
        needles.report(misfit.place, misfit.message, misfit.hint)
        return
    for name, number in worked.held:
        needles.held[name] = needles.held.get(name, 0) + number
    needles.markers = worked.markers
    needles.emit(worked.items, worked.after, template=template, divide=bool(worked.held), **told)


def _worked(template: Template, needles: Needles) -> PhraseWorked:
    """Work out a round, once for the same stitches: most rounds of a garment repeat the one before."""
    purl = template.stockinette and needles.flat and needles.side == "WS"
    key = (id(template), needles.count, needles.size, needles.yarn, needles.markers, purl)
    known = needles.known.get(key)
    if known is not None:
        return known[1]
    elements = template.elements
    if template.stockinette:
        elements = (Until("p" if purl else "k", "end", None, None, template.place),)
    worked = work_phrase(
        elements,
        count=needles.count,
        size=needles.size,
        yarn=needles.yarn,
        markers=needles.markers,
        place=template.place,
    )
    worked = replace(worked, items=_altered_items(worked.items, needles))
    needles.known[key] = (template, worked)
    return worked


def _altered_items(items: tuple[Item, ...], needles: Needles) -> tuple[Item, ...]:
    """Leave out bobbles where the knitter does."""
    if not any(alteration.kind == "no bobbles" for alteration in needles.project.alterations):
        return items

    def without(item: Item) -> Item:
        if isinstance(item, Group):
            return Group(tuple(without(inner) for inner in item.items), item.times, item.name)
        return Run("k", item.times, item.yarn) if item.stitch == "mb" else item

    return tuple(without(item) for item in items)


def repeat(
    templates: tuple[Template, ...], rounds: int, needles: Needles, place: Place, *, start: int = 0
) -> None:
    """Work a cycle of rounds for a number of rounds, beginning with one of the cycle (from 0)."""
    if rounds > MOST_ROUNDS:
        needles.report(place, f"{rounds} rounds are more than any garment has.", kind="length")
        return
    before = len(needles.findings)
    for number in range(rounds):
        work_template(templates[(start + number) % len(templates)], needles)
        if len(needles.findings) > before:
            return
        if number == 1 and len(templates) == 1 and _changes_nothing(needles):
            # The rest are the same round: one draft stands for all of them, which is most of a garment.
            needles.drafts.extend([needles.drafts[-1]] * (rounds - 2))
            return


def _changes_nothing(needles: Needles) -> bool:
    """Say whether the round last worked leaves everything as it met it."""
    draft = needles.drafts[-1]
    same = draft.before == draft.after and not draft.divide and draft.markers == needles.drafts[-2].markers
    return same and not draft.flat


# --- written-out rounds -------------------------------------------------------------------------------


@work.register
def _(instruction: Phrase, needles: Needles) -> None:
    if all(isinstance(element, Mark) for element in instruction.elements):
        for element in instruction.elements:
            if isinstance(element, Mark):
                name = f" for {element.name}" if element.name else ""
                needles.remarks.append(f"{STITCHES[element.stitch].said}{name}")
        return
    template = Template(instruction.elements, instruction.place)
    if needles.count == 0 and not _brings_stitches(instruction.elements):
        needles.report(instruction.place, "there are no stitches on the needles.", "Cast on first.")
        needles.count = 0
        return
    work_template(template, needles)
    if not _only_edge(instruction.elements):
        needles.pattern = (template,)


def _brings_stitches(elements: tuple[Element, ...]) -> bool:
    first = elements[0]
    return isinstance(first, Work) and stitch(first.stitch).uses == 0


def _only_edge(elements: tuple[Element, ...]) -> bool:
    edges = ("co", "pu", "bo")
    return all(
        isinstance(one, Hold | Mark) or (isinstance(one, Work) and one.stitch in edges) for one in elements
    )


# --- durations ----------------------------------------------------------------------------------------


@work.register
def _(instruction: Worked, needles: Needles) -> None:
    if needles.count == 0:
        needles.report(instruction.place, "there are no stitches on the needles.", "Cast on first.")
        return
    cycle = _cycle(instruction, needles)
    if cycle is None:
        return
    continues = instruction.manner == "pattern" and len(needles.drafts) > needles.line_start
    start = needles.line_start if continues else len(needles.drafts)
    _last_for(cycle, instruction.duration, needles, instruction.place, start=start)
    needles.pattern = cycle


def _cycle(instruction: Worked, needles: Needles) -> tuple[Template, ...] | None:
    place = instruction.place
    if instruction.manner in ("k", "stockinette"):
        flat_knit = instruction.manner == "k" and needles.flat
        if flat_knit:
            return (Template((Until("k", "end", None, None, place),), place),)
        return (Template((), place, stockinette=True),)
    if instruction.manner == "p":
        return (Template((Until("p", "end", None, None, place),), place),)
    if instruction.manner == "garter":
        knit = Template((Until("k", "end", None, None, place),), place)
        purl = Template((Until("p", "end", None, None, place),), place)
        return (knit,) if needles.flat else (knit, purl)
    if needles.pattern:
        return needles.pattern
    needles.report(
        place,
        "no pattern has been set up before this line.",
        "Write the round first, for example *K2, p2; rep from * to end. Work for 3 cm.",
    )
    return None


def _last_for(
    cycle: tuple[Template, ...], duration: Duration, needles: Needles, place: Place, *, start: int
) -> None:
    """Work a cycle for a duration; rounds of it since `start` count unless the line says "more"."""
    done = len(needles.drafts) - start
    if isinstance(duration, Rounds):
        rounds = duration.number.of(needles.size) - (0 if duration.more else done)
        repeat(cycle, rounds, needles, duration.number.place, start=done)
    elif isinstance(duration, Times):
        rounds = duration.number.of(needles.size) * len(cycle) - (0 if duration.more else done)
        repeat(cycle, rounds, needles, duration.number.place, start=done)
    else:
        _to_length(cycle, duration, needles, place, start=start)


def _to_length(
    cycle: tuple[Template, ...], duration: UntilLength, needles: Needles, place: Place, *, start: int
) -> None:
    origin = start
    if duration.measured:
        origin = 0 if duration.start == "cast-on" else needles.section_start
    first = len(needles.drafts)
    rounds, target = needles.rounds_for(
        duration.length, origin=origin, measured=True, blocked=duration.blocked
    )
    if rounds <= 0:
        reached = needles.height_mm(origin) / 10
        needles.report(
            duration.length.place,
            f"the piece already measures {reached:.1f} cm here, so {duration.length.printed} is passed.",
            'Say from where it is measured, or write "for" a length instead.',
            kind="length",
        )
        return
    rounds = _ended(rounds, cycle, duration, needles, first - start)
    repeat(cycle, rounds, needles, place, start=first - start)
    last = len(needles.drafts) - 1
    if last < first or needles.fabric is None or target <= 0:
        return
    needles.stretches.append(
        Stretch(
            first=first,
            last=last,
            origin=origin,
            target_mm=target,
            rounds_per_10cm=needles.fabric.gauge.rounds,
            cycle=len(cycle),
        )
    )
    _blocking_caution(duration, needles)


def _ended(
    rounds: int, cycle: tuple[Template, ...], duration: UntilLength, needles: Needles, done: int
) -> int:
    """Move the end to the round or side that the line asks for: the nearest, never none."""
    if duration.ending is not None and len(cycle) > 1:
        wanted = duration.ending % len(cycle)
        near = [rounds + shift for shift in range(-len(cycle) // 2, len(cycle) + 1)]
        fits = [value for value in near if value >= 1 and (done + value) % len(cycle) == wanted]
        return min(fits, key=lambda value: abs(value - rounds))
    if duration.ending_side and needles.flat:
        last_side = needles.side if rounds % 2 else ("WS" if needles.side == "RS" else "RS")
        return rounds if last_side == duration.ending_side else rounds + 1
    return rounds


def _blocking_caution(duration: UntilLength, needles: Needles) -> None:
    fabric = needles.fabric
    if fabric is None or fabric.blocked is None or duration.blocked:
        return
    after = duration.length.of(needles.size) * fabric.gauge.rounds / fabric.blocked.rounds
    if abs(after - duration.length.of(needles.size)) >= 5:
        needles.warn(
            duration.length.place,
            f"{duration.length.printed} on the needles become {after / 10:.1f} cm after blocking; "
            f'write "{duration.length.printed} after blocking" if the finished length is meant.',
        )


@work.register
def _(instruction: Repeated, needles: Needles) -> None:
    cycle = _repeated_cycle(instruction, needles)
    if not cycle:
        return
    in_all = not instruction.again and not getattr(instruction.duration, "more", False)
    start = len(needles.drafts)
    if in_all and len(needles.drafts) >= len(cycle):
        recent = tuple(draft.template for draft in needles.drafts[-len(cycle) :])
        if recent == cycle:
            start -= len(cycle)
            needles.warn(
                instruction.place,
                f"read as {_times(instruction.duration, needles)} in all, the once just worked included; "
                'write "repeat" if they come on top.',
            )
    _last_for(cycle, instruction.duration, needles, instruction.place, start=start)
    needles.pattern = cycle


def _times(duration: Duration, needles: Needles) -> str:
    if isinstance(duration, Times):
        return f"{duration.number.of(needles.size)} times"
    return "so long"


def _repeated_cycle(instruction: Repeated, needles: Needles) -> tuple[Template, ...]:
    if instruction.numbers:
        missing = [number for number in instruction.numbers if number not in needles.numbered]
        if missing:
            known = one_of(str(number) for number in sorted(needles.numbered)) or "none"
            needles.report(
                instruction.place,
                f"round {one_of(map(str, missing))} has not been written out in this section.",
                f"The rounds written out are {known}.",
            )
            return ()
        return tuple(needles.numbered[number] for number in instruction.numbers)
    wanted = instruction.last.of(needles.size) if instruction.last else 1
    history = [
        draft.template for draft in needles.drafts[needles.section_start :] if draft.template is not None
    ]
    if len(history) < wanted:
        needles.report(instruction.place, f"only {len(history)} rounds come before this line in the section.")
        return ()
    return tuple(history[-wanted:])


@work.register
def _(instruction: AtIntervals, needles: Needles) -> None:
    template = _named(instruction.label, instruction.place, needles)
    if template is None:
        return
    plain = Template((), template.place, stockinette=True)
    for leg in instruction.legs:
        every, times = leg.every.of(needles.size), leg.times.of(needles.size)
        for _ in range(times):
            before = len(needles.findings)
            repeat((plain,), every - 1, needles, leg.every.place)
            work_template(template, needles)
            if len(needles.findings) > before:
                return


@work.register
def _(instruction: Labelled, needles: Needles) -> None:
    template = _named(instruction.label, instruction.place, needles)
    if template is not None:
        work_template(template, needles)


def _named(label: str, place: Place, needles: Needles) -> Template | None:
    template = needles.named.get(label)
    if template is None:
        hint = nearest(label, needles.named) or 'Write it out first, as "Dec round: k1, k2tog, …".'
        needles.report(place, f'"{label}" has not been written out in this section.', hint)
    return template


# --- shaping and charts -------------------------------------------------------------------------------


@work.register
def _(instruction: Evenly, needles: Needles) -> None:
    before = needles.count
    if instruction.to is not None:
        after = instruction.to.of(needles.size)
    else:
        by = instruction.by.of(needles.size) if instruction.by is not None else 0
        after = before + instruction.direction * by
    word = "increase" if instruction.direction > 0 else "decrease"
    if (after - before) * instruction.direction < 0 and not needles.reshape:
        needles.report(
            instruction.place,
            f"the line asks to {word} to {after} stitches, but {before} are on the needles already.",
            f"A line that goes from {before} to {after} must "
            f"{'decrease' if instruction.direction > 0 else 'increase'}; "
            f"or switch size at another line, or allow it with `reshape: yes` beside the switch.",
        )
        needles.count = after
        return
    try:
        phrase, positions = even_round(
            before, after, yarn=needles.yarn, flat=needles.flat, grouped=not needles.checking
        )
    except ValueError as error:
        needles.report(instruction.place, f"cannot {word} from {before} to {after} stitches: {error}")
        needles.count = max(after, 0)
        return
    if after == before:
        needles.warn(instruction.place, f"nothing to {word}: {before} stitches are on the needles already.")
        phrase = (Run("k", before, needles.yarn),)
    needles.markers = tuple(
        place + sum(1 for position in positions if position <= place) * (1 if after >= before else -1)
        for place in needles.markers
    )
    needles.emit(phrase, after, evenly=True, shaping=positions)


@work.register
def _(instruction: ChartWork, needles: Needles) -> None:
    charts = {name.lower(): chart for name, chart in needles.project.charts.items()}
    chart = charts.get(instruction.name.lower())
    if chart is None:
        hint = (
            nearest(instruction.name, charts) or f"The charts are {one_of(needles.project.charts) or 'none'}."
        )
        needles.report(instruction.place, f'there is no chart "{instruction.name}".', hint)
        return
    first = instruction.first or 1
    last = instruction.last or len(chart.rounds)
    if first < 1 or last > len(chart.rounds):
        needles.report(
            instruction.place, f'chart "{chart.name}" has {len(chart.rounds)} rounds, not {max(first, last)}.'
        )
        return
    times = instruction.times.of(needles.size) if instruction.times else 1
    cycle = tuple(
        Template((), instruction.place, chart=chart.name, chart_round=number)
        for number in range(first, last + 1)
    )
    repeat(cycle, times * len(cycle), needles, instruction.place)
    needles.pattern = cycle


def _chart_round(template: Template, needles: Needles) -> None:
    chart = needles.project.charts[template.chart]
    wrong = needles.flat and needles.side == "WS"
    phrase_key = (chart.name, template.chart_round, needles.yarn, wrong, needles.count)
    runs = chart_runs(chart, template.chart_round, yarn=needles.yarn, wrong_side=wrong)
    uses = sum(run.uses for run in runs)
    if uses == 0 or needles.count % uses:
        fits, over = divmod(needles.count, uses or 1)
        hint = f"It would fit on {fits * uses} or {(fits + 1) * uses} stitches."
        needles.report(
            template.place,
            f'round {template.chart_round} of chart "{chart.name}" has {uses} stitches and does not divide '
            f"{needles.count}: {fits} repeats leave {over} over.",
            hint,
        )
        return
    times = needles.count // uses
    after = times * sum(run.leaves for run in runs)
    phrase = needles.charted.setdefault(phrase_key, (Group(runs, times, chart.name),))
    needles.emit(phrase, after, chart=chart.name, chart_round=template.chart_round, template=template)


def chart_runs(chart: Chart, number: int, *, yarn: str, wrong_side: bool) -> tuple[Run, ...]:
    """Read one round of a chart in the order in which it is knitted.

    Args:
        chart: The chart.
        number: Round of the chart, from 1 at the bottom.
        yarn: The yarn in hand, for squares that name none.
        wrong_side: Whether it is worked from the wrong side, left to right, each stitch as its opposite.
    """
    cells = chart.rounds[number - 1] if wrong_side else tuple(reversed(chart.rounds[number - 1]))
    runs: list[Run] = []
    for cell in cells:
        if not cell.stitch:
            continue
        code = (
            STITCHES[cell.stitch].wrong_side or cell.stitch
            if wrong_side and cell.stitch in STITCHES
            else cell.stitch
        )
        key = cell.yarn or yarn
        if runs and runs[-1].stitch == code and runs[-1].yarn == key:
            runs[-1] = Run(code, runs[-1].times + 1, key)
        else:
            runs.append(Run(code, 1, key))
    return tuple(runs)


# --- the needles and what is on them ------------------------------------------------------------------


@work.register
def _(instruction: BindOff, needles: Needles) -> None:
    if needles.count == 0:
        needles.report(instruction.place, "there are no stitches on the needles to bind off.")
        return
    needles.markers = ()
    needles.emit((Run("bo", needles.count, needles.yarn),), 0, bound_off=instruction.manner)
    needles.pattern = ()


@work.register
def _(instruction: Return, needles: Needles) -> None:
    number = needles.held.pop(instruction.name, None)
    if number is None:
        hint = nearest(instruction.name, needles.held) or f"On hold: {one_of(needles.held) or 'nothing'}."
        needles.report(instruction.place, f'nothing is on hold for "{instruction.name}".', hint)
        return
    rest = (Run("rest", needles.count, needles.yarn),) if needles.count else ()
    needles.emit((*rest, Run("return", number, instruction.name)), needles.count + number)


@work.register
def _(instruction: Join, needles: Needles) -> None:
    needles.flat = False
    needles.side = "RS"
    needles.remarks.append("join in the round")


@work.register
def _(instruction: Flat, needles: Needles) -> None:
    needles.flat = True
    needles.remarks.append("work in rows")


@work.register
def _(instruction: Needle, needles: Needles) -> None:
    mm = instruction.mm
    for alteration in needles.project.alterations:
        if alteration.section and alteration.section.lower() != needles.section.lower():
            continue
        if alteration.kind == "no needle change" and needles.needle_mm is not None:
            return
        if alteration.kind == "needle" and alteration.mm is not None and alteration.instead_of in (None, mm):
            mm = alteration.mm
            needles.remarks.append(f"your own needle, {mm:g} instead of {instruction.mm:g} mm")
    needles.needle_mm = mm
    needles.remarks.append(f"change to {mm:g} mm needles")


@work.register
def _(instruction: WithYarn, needles: Needles) -> None:
    key = _yarn_key(instruction.yarn, instruction.place, needles)
    if key is not None and key != needles.yarn:
        needles.yarn = key
        needles.remarks.append(f"with {needles.project.yarns[key].name}")


@work.register
def _(instruction: BreakYarn, needles: Needles) -> None:
    words = "break the yarn"
    if instruction.yarn:
        key = _yarn_key(instruction.yarn, instruction.place, needles)
        if key is None:
            return
        words = f"break {needles.project.yarns[key].name}"
    if needles.count == 0 and needles.drafts:
        # The stitches are off: there may be no round left to say it with.
        last = needles.drafts[-1]
        last.remarks = (*last.remarks, f"{words} when it is done")
    else:
        needles.remarks.append(words)


def _yarn_key(name: str, place: Place, needles: Needles) -> str | None:
    keys = {key.lower(): key for key in needles.project.yarns}
    key = keys.get(name.lower())
    if key is None:
        hint = nearest(name, keys.values()) or f"The yarns are {one_of(keys.values())}."
        needles.report(place, f'there is no yarn "{name}".', hint)
    return key


@work.register
def _(instruction: MarkEvery, needles: Needles) -> None:
    every = instruction.every.of(needles.size)
    if not 0 < every < max(needles.count, 1):
        needles.report(
            instruction.place, f"a marker every {every} stitches does not go on {needles.count} stitches."
        )
        return
    needles.markers = tuple(range(every, needles.count, every))
    needles.remarks.append(f"place a marker every {every} stitches")


@work.register
def _(instruction: Remark, needles: Needles) -> None:
    needles.remarks.append(instruction.text)


@work.register
def _(instruction: Count, needles: Needles) -> None:
    printed = instruction.number.of(needles.size)
    if printed != needles.count:
        needles.report(
            instruction.place,
            f"the pattern prints {printed} stitches; the lines so far come to {needles.count}",
            kind="count",
        )
