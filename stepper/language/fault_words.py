"""Words for faults: what to count, what probably happened, how to mend it. No I/O."""

from __future__ import annotations

from collections.abc import Callable
from types import MappingProxyType
from typing import Any, Final, assert_never

from stepper.craft.spacing import count_gaps
from stepper.craft.stitches import Kind, stitch
from stepper.language.measures import plural
from stepper.language.numbers import ordinal_words, words
from stepper.language.phrasing import said_items
from stepper.language.places import place_name, round_word, sentence_case
from stepper.plan.absorb import Mend, made_good
from stepper.plan.model import Plan, Round, Run
from stepper.session import effects
from stepper.session.effects import Effect
from stepper.session.fault.diagnosis import Likely
from stepper.session.fault.landmarks import Landmark
from stepper.session.fault.remedies import Remedy, RemedyKind
from stepper.session.fault.symptoms import Cause
from stepper.session.state import Asking, Position, Seen

LIKELY_TOLD: Final = 3
"""Most causes told; nobody compares more than three by ear."""

_LANDMARKS: Final = {
    Landmark.MARKER: "marker",
    Landmark.CHANGE: "increase or decrease",
    Landmark.REPEAT: "repeat",
}


def _stretch(kind: Landmark, first: int, end: int | None) -> str:
    """Name the stretch between two landmarks."""
    name = _LANDMARKS[kind]
    start = f"the {ordinal_words(first)} {name}" if first else "the beginning of the round"
    return f"from {start} to {f'the {ordinal_words(end)} {name}' if end is not None else 'the end'}"


def _ask_sections(effect: effects.AskSections, plan: Plan) -> str:
    where = _stretch(effect.kind, effect.first, effect.end)
    return f"Count {where}: {effect.expect} expected. Then say: there are, and the number."


def _look(effect: effects.AskLook, plan: Plan) -> str:
    round_ = plan.rounds[effect.index]
    name = f"{round_word(round_)} {round_.number}"
    if effect.seen is Seen.LOOP:
        return "Is there a loose loop below the needles? Say: I see a loop, or: no loop."
    if effect.seen is Seen.LEFT:
        return f"Did {name} come out at its end? Say: it came out, or how many left over or short."
    if effect.seen is Seen.WHOLE:
        return f"Does {name} look like another all along? Say: it looks like another, or: it looks right."
    return (
        f"Count the increases and decreases of {name}. Say: changes are right, or how many too many or few."
    )


def _found(effect: effects.TellFound, plan: Plan) -> str:
    many = f"{abs(effect.difference)} {'too many' if effect.difference > 0 else 'too few'}"
    if effect.kind is None:
        return f"{sentence_case(many)}; no markers here to tell where."
    where = _stretch(effect.kind, effect.first, effect.end)
    if not effect.single:
        return f"This cannot be a single fault; there is more than one {where}."
    return f"The fault lies {where}: {many}."


def _causes(effect: effects.TellCauses, plan: Plan) -> str:
    if not effect.causes:
        return "No single fault that I know explains this. Say: what can I do."
    first, *others = [name_cause(each, plan) for each in effect.causes[:LIKELY_TOLD]]
    line = f"Probably {first}{_because(effect.causes[0])}."
    return f"{line} Or {', or '.join(others)}." if others else line


def name_cause(likely: Likely, plan: Plan) -> str:
    """Say one cause, with its round."""
    round_ = plan.rounds[likely.index]
    where = f"in {round_.section} {round_word(round_)} {round_.number}"
    if likely.cause is Cause.OTHER_ROUND and likely.other is not None:
        return f"{round_word(round_)} {plan.rounds[likely.other].number} was worked for {where[3:]}"
    thing = "a change"
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


def _because(likely: Likely) -> str:
    words = {
        Seen.LOOP: "the loop",
        Seen.CHANGES: "the increases and decreases",
        Seen.LEFT: "the end of the round",
        Seen.WHOLE: "the look of the round",
    }
    known = [words[each] for each in likely.known]
    return f", going by the count and {' and '.join(known)}" if known else ", going by the count"


def _remedies(effect: effects.TellRemedies, plan: Plan) -> str:
    if not effect.remedies:
        return "The only remedy I know is to look for the fault by eye."
    ways = "; ".join(f"{at}, {name_remedy(each, plan)}" for at, each in enumerate(effect.remedies, 1))
    by = ""
    if effect.exact_at is not None and effect.difference:
        by = f" It has to be right before {place_name(plan.rounds[effect.exact_at])}."
    return f"{sentence_case(ways)}.{by} Say: take remedy, and the number."


def name_remedy(remedy: Remedy, plan: Plan) -> str:
    """Say one remedy with its cost."""
    minutes = max(1, round(remedy.minutes))
    cost = f"about {plural(remedy.stitches, 'stitch', 'stitches')} of work, {plural(minutes, 'minute')}"
    return f"{_way(remedy, plan)}, {cost}"


def _way(remedy: Remedy, plan: Plan) -> str:
    stitches = plural(remedy.undone, "stitch", "stitches")
    match remedy.kind:
        case RemedyKind.RECOUNT:
            return "count once more before anything is changed"
        case RemedyKind.PLAIN:
            return _mended(_made_good_by(remedy), plan)
        case RemedyKind.ACCEPT:
            return f"go on as it is, {_accepted(_made_good_by(remedy), plan)}"
        case RemedyKind.DROP:
            return "drop down one column to the fault and work it up again"
        case RemedyKind.TINK:
            return f"undo {stitches} one by one, to {_at(remedy.place, plan)}"
        case RemedyKind.RIP:
            to = "the lifeline" if remedy.lifeline else "the last sound place"
            return f"rip {stitches} back to {to}, {_at(remedy.place, plan)}"
    assert_never(remedy.kind)


def _made_good_by(way: Remedy | effects.TellRemedied) -> Mend:
    """Return how an accepted count is made good; called only for remedies that have this."""
    assert way.mend is not None, way
    return way.mend


def _accepted(mend: Mend, plan: Plan) -> str:
    """Say where an accepted count is made good, according to the plan before that change."""
    round_ = plan.rounds[mend.index] if mend.index < len(plan.rounds) else None
    good = made_good(round_, mend) if round_ is not None and round_.before else None
    if round_ is None or good is None:
        last = plan.rounds[mend.index - 1]
        return f"with {last.before - mend.change} stitches to the end of {last.section}"
    if not mend.spread:
        return f"and make it good in the pattern: {_mended(mend, plan)}"
    was, now = len(round_.shaping), len(good.shaping)
    if not now:
        return f"and work {_name(round_)} without {_changes_of(round_)}"
    return f"and the shaping takes it up: {_name(round_)} with {now} {_changes_of(round_)} instead of {was}"


def _changes_of(round_: Round) -> str:
    up = any(stitch(run.stitch).kind is Kind.INCREASE for run in round_.runs)
    return "increases" if up else "decreases"


def _name(round_: Round) -> str:
    return f"{round_.section} {round_word(round_)} {round_.number}"


def _at(place: Position, plan: Plan) -> str:
    round_ = plan.rounds[place.index]
    where = f"{round_.section} {round_word(round_)} {round_.number}"
    return f"{where}, stitch {place.stitch}" if place.stitch else f"the beginning of {where}"


def _mended(mend: Mend, plan: Plan) -> str:
    round_ = plan.rounds[min(mend.index, len(plan.rounds) - 1)]
    many = plural(abs(mend.change), "stitch", "stitches")
    side = "more" if mend.change > 0 else "fewer"
    return (
        f"work {many} {side} in {round_.section} {round_word(round_)} {round_.number} at stitch {mend.stitch}"
    )


def _remedied(effect: effects.TellRemedied, plan: Plan) -> str:
    match effect.remedy:
        case RemedyKind.RECOUNT:
            return "Nothing is changed. Count once more, then say: count is, and the number."
        case RemedyKind.TINK:
            return f"Undo, the last stitch first: {_said(effect.undone, effect.place, plan)}."
        case RemedyKind.RIP:
            return f"Rip back to {_at(effect.place, plan)}, pick up the stitches, then count."
        case RemedyKind.DROP:
            return "Drop down one column to the fault and work it up again, then count."
        case RemedyKind.PLAIN | RemedyKind.ACCEPT:
            return _gone_on(_made_good_by(effect), plan)
    assert_never(effect.remedy)


def _gone_on(mend: Mend, plan: Plan) -> str:
    if mend.index >= len(plan.rounds) or not plan.rounds[mend.index].before:
        return "Go on; all that follows is said for the stitches you have."
    if mend.spread:
        round_ = plan.rounds[mend.index]
        return f"Go on; {_name(round_)} then has {len(round_.shaping)} {_changes_of(round_)}, spread anew."
    return f"{sentence_case(_mended(mend, plan))}; I will say so there."


def _said(runs: tuple[Run, ...], place: Position, plan: Plan) -> str:
    return said_items(runs, plan.rounds[place.index], plan) if runs else "nothing"


def _mend(effect: effects.TellMend, plan: Plan) -> str:
    mend = effect.mend
    if mend.spread:
        return "This round takes up the count that was off, so it differs from the pattern."
    how = "make one for the stitch that is missing" if mend.change > 0 else "work two together as one"
    times = "" if abs(mend.change) == 1 else f", {abs(mend.change)} times"
    return f"Mend in this round: at stitch {mend.stitch}, {how}{times}."


def _tinked(effect: effects.TellTinked, plan: Plan) -> str:
    return f"Undo: {_said(effect.runs, effect.place, plan)}. Then you are at {_at(effect.place, plan)}."


def _respaced(effect: effects.TellRespaced, plan: Plan) -> str:
    """Say how the rest is spaced: "nine left: every eleventh, seven times; then every tenth, twice"."""
    if not effect.left:
        return "None left: knit to the end."
    first, gaps = effect.first + effect.uses, effect.gaps
    alike = gaps[:1] == (first,)
    said = [
        f"every {ordinal_words(gap)}, {_times(times)}"
        for gap, times in count_gaps((first, *gaps) if alike else gaps)
    ]
    if not alike:
        said.insert(0, f"the next in {words(effect.first)}" if effect.first else "the next now")
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
        return f"You begin {_name(plan.rounds[effect.index])}."
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
        effects.TellRemedies: _remedies,
        effects.TellRemedied: _remedied,
        effects.TellMend: _mend,
        effects.TellTinked: _tinked,
        effects.TellRespaced: _respaced,
        effects.TellLifeline: _lifeline,
        effects.TellAsking: _asking,
        effects.TellTally: _tally,
        effects.TellSpot: _spot,
    }
)
"""The words of each effect."""
