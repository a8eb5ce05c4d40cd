"""Named rounds worked at intervals, alone or two side by side, and stitches changed at the edges. No I/O.

Common practice: "every 8th round" works seven plain rounds and then the named one. A named row of the right
side that would fall on the wrong side is worked one row sooner. Two shapings side by side share the rows on
which both fall: one changes the beginning of the row, the other its end.
"""

from __future__ import annotations

from dataclasses import replace

from stepper.craft.stitches import stitch
from stepper.plan.needles import Needles, Template
from stepper.plan.rounds import repeat, work_template
from stepper.plan.supplies import Choice
from stepper.project.instructions import AtIntervals, EdgeRows, Leg, Together
from stepper.project.problems import Place, nearest
from stepper.project.stitchwork import Element, Numbers, Until, Work


def named_round(label: str, place: Place, needles: Needles) -> Template | None:
    """Find a round by the name it was written out under; nothing, reported, where there is none."""
    template = needles.named.get(label)
    if template is None:
        hint = nearest(label, needles.named) or 'Write it out first, as "Dec round: k1, k2tog, …".'
        needles.miss(place, f'"{label}" has not been written out in this section.', hint)
    return template


def work_at_intervals(instruction: AtIntervals, needles: Needles) -> None:
    """Work a named round every so many rounds, plain rounds between."""
    template = _round_of(instruction, needles)
    if template is None:
        return
    if instruction.at_once:
        work_template(template, needles)
    for leg in _legs(instruction, needles):
        every, times = leg.every.of(needles.size), leg.times.of(needles.size)
        for _ in range(times):
            before = len(needles.findings)
            plain = every - 1
            if leg.side and template.side and leg.side != template.side:
                needles.report(
                    leg.every.place,
                    f"the shaping is written for {template.side} rows, and asked for on {leg.side} rows.",
                )
                return
            template = replace(template, side=template.side or leg.side)
            if _falls_wrong(template, plain, needles):
                plain = plain - 1 if plain else 1
            repeat(plain_cycle(needles), plain, needles, leg.every.place)
            work_template(template, needles)
            if len(needles.findings) > before:
                return


def _round_of(instruction: AtIntervals, needles: Needles) -> Template | None:
    """Give the round that is worked at intervals: written in the line itself, or by its name."""
    if instruction.round is None:
        return named_round(instruction.label, instruction.place, needles)
    return Template(instruction.round.elements, instruction.round.place, side=needles.line_side)


def _legs(instruction: AtIntervals, needles: Needles) -> tuple[Leg, ...]:
    """Give the legs; where "next and every 4th row 5 times" counts the next one too, one time less."""
    if not instruction.at_once:
        return instruction.legs
    first, *rest = instruction.legs
    times = first.times.of(needles.size)
    place = first.times.place
    needles.choices.append(
        Choice(
            place=place,
            words=f"next and every … {times} times",
            first=f"{times + 1} times in all",
            second=f"{times} times in all",
            line=instruction.place.line,
        )
    )
    if (place.line, place.column) not in needles.readings:
        return instruction.legs
    return (Leg(first.every, Numbers((times - 1,), place), first.more), *rest)


def _falls_wrong(template: Template, plain: int, needles: Needles) -> bool:
    """Say whether the row after so many plain ones is of another side than the named row is for."""
    if not template.side or not needles.flat:
        return False
    same = needles.side == template.side
    return same != (plain % 2 == 0)


def plain_cycle(needles: Needles) -> tuple[Template, ...]:
    """Give the plain rounds between shapings: as the fabric is, with the wrong side as the pattern has it."""
    place = Place(line=needles.line or 1, column=1)
    if needles.garter and needles.flat:
        return (Template((Until("k", "end", None, None, place),), place),)
    plain = Template((), place, stockinette=True)
    if needles.back is not None and needles.flat:
        return (needles.back, plain) if needles.side == "WS" else (plain, needles.back)
    return (plain,)


def work_together(instruction: Together, needles: Needles) -> None:
    """Work two shapings side by side, each at its own intervals, until both are done."""
    due: dict[int, list[Template]] = {}
    for part in instruction.parts:
        template = _round_of(part, needles)
        if template is None:
            return
        at = _begins(part, needles)
        if part.at_once:
            at += 1
            due.setdefault(at, []).append(template)
        for leg in _legs(part, needles):
            template = replace(template, side=template.side or leg.side)
            for _ in range(leg.times.of(needles.size)):
                plain = leg.every.of(needles.size) - 1
                if needles.flat and template.side:
                    lands = needles.side if (at + plain) % 2 == 0 else _other(needles.side)
                    if lands != template.side:
                        plain = plain - 1 if plain else 1
                at += plain + 1
                due.setdefault(at, []).append(template)
    for number in range(1, max(due, default=0) + 1):
        before = len(needles.findings)
        if number in due:
            both = _joined(due[number], instruction.place, needles)
            if both is None:
                return
            work_template(both, needles)
        else:
            work_template(plain_cycle(needles)[0], needles)
        if len(needles.findings) > before:
            return


def _begins(part: AtIntervals, needles: Needles) -> int:
    """Give how many rounds pass before a shaping beside another begins."""
    if part.after is None:
        return 0
    origin = 0 if part.after.start == "cast-on" else needles.section_start
    length = part.after.length
    return max(0, needles.rounds_for(length, origin=origin, measured=True, blocked=False)[0])


def _other(side: str) -> str:
    return "WS" if side == "RS" else "RS"


def _joined(templates: list[Template], place: Place, needles: Needles) -> Template | None:
    """Make one round of two shapings that fall together: one at the beginning, one at the end of the row."""
    if len(templates) == 1:
        return templates[0]
    heads: list[Element] = []
    tails: list[Element] = []
    for template in templates:
        split = [at for at, element in enumerate(template.elements) if isinstance(element, Until)]
        if len(split) != 1:
            needles.report(
                template.place,
                "two shapings side by side each need one stretch that is worked plain.",
                'Write them as "k1, ssk, k to end" and "k to last 3 sts, k2tog, k1".',
            )
            return None
        head, tail = template.elements[: split[0]], template.elements[split[0] + 1 :]
        if (heads and head) or (tails and tail):
            needles.report(place, "both shapings change the same end of the row; they cannot share it.")
            return None
        heads += head
        tails += tail
    middle = next(element for element in templates[0].elements if isinstance(element, Until))
    short = sum(_uses(element, needles.size) for element in tails)
    goal = Until(middle.stitch, "last", Numbers((short,), place), middle.yarn, place)
    return Template((*heads, goal, *tails), place, side=templates[0].side)


def _uses(element: Element, size: int) -> int:
    return element.times.of(size) * stitch(element.stitch).uses if isinstance(element, Work) else 0


def work_edge_rows(instruction: EdgeRows, needles: Needles) -> None:
    """Bind off or cast on so many stitches at the beginning of each of several rows."""
    place = instruction.place
    change = Work(instruction.stitch, instruction.number, None, place)
    rest = Until("pattern", "end", None, None, place)
    template = Template((change, rest), place)
    for _ in range(instruction.rows.of(needles.size)):
        before = len(needles.findings)
        work_template(template, needles)
        if len(needles.findings) > before:
            return
