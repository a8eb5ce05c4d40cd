"""Stripes: rounds of a fabric in stripes, and lines that call for a stripe sequence of the page. No I/O.

The stripes of a sequence go on, round for round, through whatever is worked - a shaping, a rib, a bind-off at
an edge - until a line names a yarn, the section ends, or the sequence is worked as often as its line says.
"""

from __future__ import annotations

from dataclasses import replace
from itertools import cycle as over_and_over
from itertools import islice
from math import lcm

from stepper.plan.drafts import Template
from stepper.plan.fabric.established import as_it_looks, even
from stepper.plan.lines.durations import cycle_of, last_for
from stepper.plan.state.needles import MOST_ROUNDS, Needles
from stepper.plan.state.stripes_in_hand import StripesInHand
from stepper.project.instructions import BindOff, BreakYarn, Line, Remark, Striped, WithYarn, WorkRounds
from stepper.project.problems import Span, nearest, one_of
from stepper.project.stripes.striping import StripesCalled

_IDLE = (Remark, WithYarn, BreakYarn, BindOff)


def work_stripes(instruction: Striped, needles: Needles) -> None:
    """Work rounds of a fabric in stripes, each of so many rounds in its yarn, for a duration."""
    if needles.count == 0:
        needles.miss_stitches(instruction.place)
        return
    yarns = yarns_of(instruction, needles)
    rounds = _fabric(instruction, needles)
    if rounds is None or len(yarns) < sum(number for number, _ in instruction.stripes):
        needles.lose()
        return
    striped = tuple(
        replace(row, yarn=yarn)
        for row, yarn in islice(
            zip(over_and_over(rounds), over_and_over(yarns), strict=False), lcm(len(rounds), len(yarns))
        )
    )
    last_for(striped, instruction.duration, needles, instruction.place, start=len(needles.drafts))


def _fabric(instruction: Striped, needles: Needles) -> tuple[Template, ...] | None:
    """Return the rounds of the fabric, the one that comes next first; None, reported, if there are none."""
    if instruction.manner == "pattern" and needles.section.pattern:
        going = even(needles, instruction.place)
        if going is None:
            return None
        rounds, first = going
        rounds = as_it_looks(rounds, needles, instruction.place)
        return (*rounds[first % len(rounds) :], *rounds[: first % len(rounds)])
    return cycle_of(WorkRounds(instruction.manner, instruction.duration, instruction.place), needles)


def yarns_of(instruction: Striped, needles: Needles) -> list[str]:
    """Return the yarn of every round of the stripes; fewer, reported, where the file has not all of them."""
    keys = {key.lower(): key for key in needles.project.yarns}
    found: list[str] = []
    for number, name in instruction.stripes:
        key = keys.get(name.lower())
        if key is None:
            _refuse_yarn(f'"{name}"', name, instruction.place, needles)
            continue
        if number > MOST_ROUNDS:
            needles.report(instruction.place, f"a stripe of more than {MOST_ROUNDS} rounds is no stripe.")
            continue
        found += [key] * number
    return found


# --- sequences of the page --------------------------------------------------------------------------


def call_stripes(line: Line, needles: Needles) -> None:
    """Take up, go on with or end the stripes of the page, as a line says."""
    called = line.stripes
    if called is not None:
        if any(isinstance(one, WithYarn | BreakYarn | Striped) for one in line.sentences):
            told = "the line names a yarn and a stripe sequence; which of them is worked first is unclear."
            needles.report(called.place, told, "Write the yarn and the stripes on lines of their own.")
            needles.lose()
            return
        _begin(called, needles)
        return
    stripes = needles.stripes
    if stripes is None or not any(not isinstance(one, _IDLE) for one in line.sentences):
        return
    if any(isinstance(one, WithYarn | Striped) for one in line.sentences):
        return  # the yarn that it names ends them
    if stripes.whole:
        told = f"the {stripes.name} is worked as often as its line says, and this line names no yarn."
        needles.report(line.place, told, 'Write the yarn: "With MC, ...", or "in stripe sequence".')
        needles.lose()
    elif not stripes.told:
        stripes.told = True
        told = f"the stripes go on here, as no line has ended the {stripes.name}."
        needles.warn(line.place, f'{told} Write "With MC, ..." where one yarn goes on.')


def end_in_stripes(instruction: BindOff, needles: Needles) -> None:
    """Bind off in the yarn of the last stripe, which is in hand; told where another comes next.

    Source: common practice.
    """
    stripes = needles.stripes
    if stripes is None:
        return
    if stripes.last and stripes.last != needles.yarn:
        name = needles.project.yarns[stripes.last].name
        told = f"nothing says in which yarn it is bound off: that of the last stripe, {name}, is taken."
        needles.warn(instruction.place, told)
        needles.yarn = stripes.last
    needles.stripes = None


def _begin(called: StripesCalled, needles: Needles) -> None:
    yarns = _yarns_called(called, needles)
    if yarns is None:
        needles.lose()
        return
    before = needles.stripes or needles.stripes_left
    if before is not None and before.yarns != yarns:
        before = None  # stripes of other yarns, which these do not go on with
    begun = StripesInHand(name=called.name, yarns=yarns, line=needles.line.number)
    if called.start is not None:
        begun.next = called.start
    elif called.first:
        place = _stripe_in(called, needles)
        if place is None:
            needles.lose()
            return
        begun.next = place
    elif before is not None and (needles.stripes is not None or called.goes_on) and not called.whole:
        begun.next, begun.last = before.next, before.last
        if needles.stripes is None:
            due = f"round {before.next + 1} of {len(yarns)}"
            needles.warn(called.place, f"the {called.name} goes on where it was left, with its {due}.")
    elif called.whole and called.goes_on and before is not None:
        begun.next = before.next
    elif called.goes_on:
        needles.warn(called.place, f"no stripes of the {called.name} are worked before: it begins here.")
    begun.whole = called.whole
    needles.stripes, needles.stripes_left = begun, None
    begun.told = called.whole
    needles.yarn = begun.yarn


def _yarns_called(called: StripesCalled, needles: Needles) -> tuple[str, ...] | None:
    """Return the yarn of every round of the sequence; None, reported, where the file lacks one."""
    found: list[str] = []
    for number, name in called.stripes:
        key = _key_of(name, needles)
        if key is None:
            _refuse_yarn(f'"{name}", which the {called.name} names', name, called.place, needles)
            return None
        found += [key] * number
    return tuple(found)


def _key_of(name: str, needles: Needles) -> str | None:
    """Return the key of the yarn that a page calls by its letters or by its colour."""
    keys = {key.lower(): key for key in needles.project.yarns}
    if name.lower() in keys:
        return keys[name.lower()]
    named = [key for key, yarn in needles.project.yarns.items() if yarn.name.lower() == name.lower()]
    return named[0] if len(named) == 1 else None


def _stripe_in(called: StripesCalled, needles: Needles) -> int | None:
    """Return the round that begins the stripe in a yarn; None, reported, if there are several or none."""
    begins, at = [], 0
    for number, name in called.stripes:
        if _key_of(name, needles) == _key_of(called.first, needles):
            begins.append(at)
        at += number
    if len(begins) == 1:
        return begins[0]
    told = "no stripe" if not begins else f"{len(begins)} stripes"
    needles.report(
        called.place,
        f"{told} of the {called.name} is in {called.first}, so that it is not clear where it begins.",
        "Write the round: beginning with round 3 of stripe sequence.",
    )
    return None


def _refuse_yarn(what: str, name: str, place: Span, needles: Needles) -> None:
    """Report a yarn that the file lacks, with the one that may be meant."""
    yarns = needles.project.yarns
    hint = nearest(name, yarns) or f"The yarns are {one_of(yarns)}."
    needles.report(place, f"there is no yarn {what}.", hint)
