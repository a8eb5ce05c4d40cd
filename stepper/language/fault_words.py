"""Words for finding a fault: what to count and look at, where it is, what probably happened. No I/O."""

from __future__ import annotations

from collections.abc import Callable
from itertools import groupby
from types import MappingProxyType
from typing import Any, Final

from stepper.craft.even.spacing import count_gaps
from stepper.craft.stitches import Kind, stitch
from stepper.language.measures import plural
from stepper.language.numbers import ordinal_words, words
from stepper.language.places import name_from, round_word, sentence_case
from stepper.plan.model import Plan, Round
from stepper.session import effects
from stepper.session.effects import Effect
from stepper.session.fault import respond as faults
from stepper.session.fault.diagnosis import Likely
from stepper.session.fault.landmarks import Landmark, colour_blocks, marked_off
from stepper.session.fault.symptoms import Cause
from stepper.session.fault.ways import StitchesToCount
from stepper.session.state import Asking, Seen

LIKELY_TOLD: Final = 2
"""Most causes told; more cannot be compared by ear."""

LADDERED: Final = "put a hook through it, draw each bar above through, in pattern, up to the needle"
"""How a dropped stitch is brought back. Source: common practice."""

MARKED_FROM: Final = 12
"""Landmark from which a marker is hung where the count ended, so that nobody counts to the fortieth increase
again. Source: chosen here."""


def stretch_words(kind: Landmark, first: int, end: int | None, index: int | None, plan: Plan) -> str:
    """Say what lies between two landmarks of a round, which of them belongs to it, and what they are."""
    seen = plan.rounds[index] if index is not None else None
    if kind is Landmark.COLOUR and seen is not None:
        return _blocks_words(first, end, seen, plan)
    name = _landmark(kind, seen)
    if kind is Landmark.MARKER:
        goal = f"the {ordinal_words(end)}" if end is not None else "the end"
        return f"from the {ordinal_words(first)} {name} to {goal}" if first else f"up to {goal} {name}"
    start = f"after the {ordinal_words(first)} {name}" if first else ""
    if end is None:
        return f"{start} to the end" if first else "all of it"
    goal = f"up to and including the {ordinal_words(end)}"
    return f"{start} {goal}" if first else f"{goal} {name}"


def _blocks_words(first: int, end: int | None, seen: Round, plan: Plan) -> str:
    """Say from which block of colour to which, each numbered among those of its own colour."""
    yarns = [yarn for yarn, _ in colour_blocks(seen)]

    def block(number: int) -> str:
        yarn = yarns[number - 1]
        return f"the {ordinal_words(yarns[:number].count(yarn))} {plan.yarns.get(yarn, yarn)} block"

    parts = [f"after {block(first)}"] if first else []
    if end is None:
        return " ".join([*parts, "to the end" if first else "all of it"])
    return " ".join([*parts, f"up to and including {block(end)}"])


def _landmark(kind: Landmark, seen: Round | None) -> str:
    """Name a landmark by what can be seen of it."""
    if kind is not Landmark.CHANGE or seen is None:
        return {Landmark.MARKER: "marker", Landmark.REPEAT: "repeat"}.get(kind, "increase or decrease")
    kinds = {stitch(run.stitch).kind for run in seen.runs} & {Kind.INCREASE, Kind.DECREASE}
    codes = {run.stitch for run in seen.runs if stitch(run.stitch).kind is Kind.INCREASE}
    up = "yarn over" if codes and codes <= {"yo", "yo2"} else "increase"
    return {1: up if Kind.INCREASE in kinds else "decrease"}.get(len(kinds), f"{up} or decrease")


def _stretch(stretch: StitchesToCount, plan: Plan) -> str:
    return stretch_words(stretch.kind, stretch.first, stretch.end, stretch.index, plan)


def ask_stretch(stretch: StitchesToCount, plan: Plan) -> str:
    """Ask for the count of a stretch."""
    hang = ""
    if stretch.end is not None and stretch.end > MARKED_FROM and stretch.kind is not Landmark.MARKER:
        hang = ", a marker there"
    return f"count {_stretch(stretch, plan)}{hang}: {stretch.expect} expected"


def _ask_sections(effect: effects.AskSections, plan: Plan) -> str:
    again = "In parts: " if effect.again else ""
    asked = ask_stretch(effect.stretch, plan)
    how = "yes, or the number" if effect.yes else "there are, and the number"
    return f"{again}{asked if again else sentence_case(asked)}. Say: {how}."


def ask_again(expect: int, *, plain: bool) -> str:
    """Ask for the whole count once more, marked off in parts if nothing else can be seen."""
    parts, size = marked_off(expect) if plain else (1, expect)
    if parts == 1:
        return f"count once more: {expect} expected. Say: count is, and the number"
    rest = expect - size * (parts - 1)
    how = f"a marker after {size}, the half; {rest} behind it"
    if parts > 2:
        how = f"a marker every {size}; {rest} behind the third"
    return f"count once more: {how}. Say: count is, and the number"


def _ask_again(effect: faults.AskAgain, plan: Plan) -> str:
    return f"{sentence_case(ask_again(effect.expect, plain=effect.plain))}."


def _sound(effect: faults.TellSound, plan: Plan) -> str:
    return f"It is all there: {effect.stitches}. The count was a slip."


def _fault_open(effect: faults.TellFaultOpen, plan: Plan) -> str:
    if effect.loop:
        return f"The loop is not caught yet: {LADDERED}. Then say: it is caught."
    many, where = abs(effect.difference), name_from(effect.index, effect.here, plan)
    if not many:
        return "The fault is not mended yet. Say: what happened; or: not now."
    side = "too many" if effect.difference > 0 else "too few"
    return f"Still open: {many} {side}, counted in {where}. Say: what happened; or: not now."


def _ladder(effect: faults.TellLadder, plan: Plan) -> str:
    return f"Catch the loop first: {LADDERED}. Then say: it is caught."


def _finish(effect: faults.AskToFinish, plan: Plan) -> str:
    return f"{sentence_case(finish_round(effect.expect, by_eye=effect.by_eye))}."


def finish_round(expect: int, *, by_eye: bool) -> str:
    """Have the round in hand finished and counted, whatever its count."""
    how = ", its shaping where you see it belongs" if by_eye else ""
    return f"finish the round{how}, then count: {expect} expected"


def _look(effect: effects.AskLook, plan: Plan) -> str:
    return sentence_case(look_words(effect.seen, effect.index, plan))


def look_words(seen: Seen, index: int, plan: Plan) -> str:
    """Ask to look at the fabric for one thing."""
    round_ = plan.rounds[index]
    name = f"{round_word(round_)} {round_.number}"
    if seen is Seen.LOOP:
        return "is there a loose loop below the needles? Say: I see a loop, or: no loop."
    if seen is Seen.LEFT:
        return f"did {name} come out at its end? Say: it came out, or how many left over or short."
    if seen is Seen.WHOLE:
        return f"does {name} look like another all along? Say: it looks like another, or: it looks right."
    return (
        f"count the increases and decreases of {name}. Say: changes are right, or how many too many or few."
    )


def _found(effect: effects.TellFound, plan: Plan) -> str:
    many = f"{abs(effect.difference)} {'too many' if effect.difference > 0 else 'too few'}"
    if effect.kind is None:
        return f"{sentence_case(many)}, in plain fabric. Say: what can I do."
    where = stretch_words(effect.kind, effect.first, effect.end, effect.index, plan)
    if not effect.single:
        return f"It is off in more than one place, {where}."
    if effect.rest:
        rest = f"{abs(effect.rest)} {'too many' if effect.rest > 0 else 'too few'}"
        return f"Two faults: {many} {where}; {rest} elsewhere, for later. Say: what can I do."
    return f"The fault lies {where}: {many}. Say: what can I do."


def _causes(effect: effects.TellCauses, plan: Plan) -> str:
    if not effect.causes and not effect.difference:
        return "Without a count that is off I cannot tell what it was. Say: what can I do."
    if not effect.causes:
        return "No single fault that I know explains this. Say: what can I do."
    first, *others = [name_cause(each, plan) for each in effect.causes[:LIKELY_TOLD]]
    line = f"Probably {first}{_because(effect.causes[0], counted=bool(effect.difference))}."
    return f"{line} Or {', or '.join(others)}." if others else line


def name_cause(likely: Likely, plan: Plan) -> str:
    """Say one cause, with its round."""
    round_ = plan.rounds[likely.index]
    where = f"in {round_.section} {round_word(round_)} {round_.number}"
    if likely.cause is Cause.OTHER_ROUND and likely.other is not None:
        return f"{round_word(round_)} {plan.rounds[likely.other].number} was worked for {where[3:]}"
    thing = "a change"
    if likely.cause is Cause.ONE_TOO_MANY and likely.code and not round_.shaping:
        together = likely.code == "k2tog"
        by_mistake = "two stitches were worked together" if together else "a stitch was split or made"
        return f"{by_mistake} by mistake {where}"
    if likely.code:
        thing = "an increase" if stitch(likely.code).kind is Kind.INCREASE else "a decrease"
    said = {
        Cause.LEFT_OUT: f"{thing} was left out",
        Cause.ONE_TOO_MANY: f"{thing} too many was made",
        Cause.REPEAT_TWICE: "a repeat was worked twice",
        Cause.REPEAT_LEFT_OUT: "a repeat was left out",
        Cause.YARN_OVER: "a yarn over was dropped",
        Cause.DROPPED: "a stitch was dropped",
    }[likely.cause]
    return f"{said} {where}"


def _because(likely: Likely, *, counted: bool) -> str:
    words = {
        Seen.LOOP: "the loop",
        Seen.CHANGES: "the increases and decreases",
        Seen.LEFT: "the end of the round",
        Seen.WHOLE: "the look of the round",
    }
    known = [*(["the count"] if counted else []), *(words[each] for each in likely.known)]
    return f", going by {' and '.join(known)}" if known else ""


def _mend(effect: effects.TellMend, plan: Plan) -> str:
    mend = effect.mend
    if mend.spread:
        return "This round takes up the count that was off: not as printed."
    how = "make one" if mend.change > 0 else "work two together"
    times = "" if abs(mend.change) == 1 else f" {_times(abs(mend.change))}"
    return f"Mend in this round: at stitch {mend.stitch}, {how}{times}."


_MOST_STRETCHES: Final = 4
"""Most stretches of equal gaps that are said one after the other; chosen here."""


def _gap_words(gap: int, times: int, *, leads: bool) -> str:
    """Say how far apart some changes are: "every eleventh, seven times", "one more in four"."""
    if times == 1:
        near = "the next" if leads else "one more"
        return f"{near} in {words(gap)}" if gap > 1 else f"{near} at once"
    return f"every {ordinal_words(gap) if gap > 1 else 'stitch'}, {_times(times)}"


def _respaced(effect: effects.TellRespaced, plan: Plan) -> str:
    """Say how the rest is spaced: "nine left: every eighth, seven times; then one more in six".

    Where long and short gaps take turns, their order is left to the steps.
    """
    if not effect.left:
        return "None left: knit to the end."
    first = effect.first + effect.uses
    alike = effect.gaps[:1] == (first,)
    said = [] if alike else [f"the next in {words(effect.first)}" if effect.first else "the next now"]
    gaps = (first, *effect.gaps) if alike else effect.gaps
    stretches = [(gap, len(tuple(same))) for gap, same in groupby(gaps)]
    if len(stretches) > _MOST_STRETCHES:
        mixed = " and ".join(f"{words(times)} of {words(gap)}" for gap, times in count_gaps(gaps))
        said.append(f"gaps mixed, {mixed}, as each step says")
    else:
        said += [_gap_words(gap, times, leads=alike and not at) for at, (gap, times) in enumerate(stretches)]
    return f"{sentence_case(words(effect.left))} left: {'; then '.join(said)}."


def _times(times: int) -> str:
    return {1: "once", 2: "twice"}.get(times) or f"{words(times)} times"


def _lifeline(effect: effects.TellLifeline, plan: Plan) -> str:
    if effect.laid:
        return "Lifeline kept; it is the place to rip back to."
    return "A lifeline pays here. When it is in, say: lifeline here."


def _asking(effect: effects.TellAsking, plan: Plan) -> str:
    return {
        Asking.COST: "I ask for a count where one pays.",
        Asking.PATTERN: "I ask for a count where the pattern does, and nowhere else.",
        Asking.MORE: "I ask for a count twice as often, and where the pattern does.",
        Asking.LESS: "I ask for a count only where a fault would be locked in.",
        Asking.NEVER: "I ask for no counts.",
    }[effect.asking]


def _tally(effect: effects.TellTally, plan: Plan) -> str:
    if not effect.total:
        return "Count with me: say each ten, then: that is all of them."
    return f"{effect.total} so far."


def _spot(effect: effects.TellSpot, plan: Plan) -> str:
    past = plural(effect.past, "stitch", "stitches")
    if effect.index is not None:
        round_ = plan.rounds[effect.index]
        return f"You begin {round_.section} {round_word(round_)} {round_.number}."
    if not effect.marker:
        return f"You are {past} past the beginning of the round."
    marker = f"the {ordinal_words(effect.marker)} marker"
    return f"You are {past} past {marker}." if effect.past else f"You are at {marker}."


LINES: Final[MappingProxyType[type[Effect], Callable[[Any, Plan], str]]] = MappingProxyType(
    {
        effects.AskSections: _ask_sections,
        effects.AskLook: _look,
        effects.TellFound: _found,
        effects.TellCauses: _causes,
        faults.AskAgain: _ask_again,
        faults.TellSound: _sound,
        faults.TellFaultOpen: _fault_open,
        faults.TellLadder: _ladder,
        faults.AskToFinish: _finish,
        effects.TellMend: _mend,
        effects.TellRespaced: _respaced,
        effects.TellLifeline: _lifeline,
        effects.TellAsking: _asking,
        effects.TellTally: _tally,
        effects.TellSpot: _spot,
    }
)
"""The words of each effect."""
