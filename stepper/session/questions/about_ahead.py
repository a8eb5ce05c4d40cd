"""Answers about what lies ahead and behind: shaping, places, lengths, yarn, time, reminders. Pure.

One record for each answer, beside what works it out; the words stand in `stepper.language.about_words`.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import pairwise

from stepper.craft.stitches import Kind, stitch
from stepper.plan.kinds import kind_of
from stepper.plan.model import Plan, Round
from stepper.plan.yarn.skein_ends import SkeinEnd
from stepper.plan.yarn.worked_twice import with_second_pieces
from stepper.plan.yarn.yarn_left import forecast
from stepper.plan.yarn.yarn_use import Amount, total, yarn_use
from stepper.records import dataclass
from stepper.session.counting.tally import tally_stitches
from stepper.session.due.next_skein import find_ends_ahead
from stepper.session.effects import Effect
from stepper.session.pace.learning import evening_of
from stepper.session.pace.outlook import Outlook, look_ahead, paces_of
from stepper.session.questions.about_round import yarns_of
from stepper.session.questions.yarn_left import forecast_ball
from stepper.session.state import Reminder, State, Verified

MOST_SIGHTS = 3
"""Most things ahead that are named at once. Source: as `stepper.session.steps.BREATH`, less the length."""

PUT_AWAY = 10
"""Rounds without a yarn after which its ball no longer lies at hand. Chosen here."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellNextShaping(Effect):
    """Say when the next increases or decreases come."""

    increases: bool
    index: int | None
    """The round, the one in hand included; None if none comes."""
    here: int
    """Index of the round in hand."""
    changes: int = 0
    """Stitches they make or lose in it, less those already done. Unit: changes."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellShapingLeft(Effect):
    """Say how many increases or decreases are left in a section."""

    increases: bool
    section: str
    flat: bool
    rounds: int
    """Rounds with such changes, the one in hand included."""
    changes: int
    done: int
    """Rounds of the section with such changes that are worked."""
    in_hand: tuple[int, int] | None = None
    """In the round in hand: the changes still to be made, and all; None if it has none."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellRoundsTo(Effect):
    """Say how far it is to a round."""

    place: str
    """What was asked for, in the pattern's words."""
    index: int | None
    """The round; None if it does not lie ahead."""
    here: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TellNeedle(Effect):
    """Say which needle is in hand, and when another one is taken up."""

    needle_mm: float | None
    index: int | None
    """The next round on another needle; None if none comes."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellSize(Effect):
    """Say which size is knitted here."""

    size: str
    others: tuple[tuple[int, str], ...]
    """Where another size begins, in the order knitted: the index of its first round, and the size."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellGauge(Effect):
    """Say the gauge of the fabric in hand."""

    name: str
    stitches_per_10cm: float | None
    """None if the file gives no gauge."""
    rounds_per_10cm: float
    needle_mm: float | None


@dataclass(frozen=True, slots=True, kw_only=True)
class TellLength(Effect):
    """Say how long the piece is by its rounds."""

    section: str
    flat: bool
    length_mm: float | None
    """From where its length is measured; None if no gauge is known. Unit: mm."""
    target_mm: float | None
    """None if it is not worked to a length. Unit: mm."""
    rounds_left: int
    """To that length, or else to the end of the section, the round in hand included."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellYarnNeeded(Effect):
    """Say how much yarn the rest takes."""

    needed: tuple[tuple[str, float], ...]
    """Each yarn of the rest, the one in hand first, with its weight. Unit: g."""
    unknown: bool
    """Whether the file says too little of a yarn to weigh it."""
    weighed: bool = False
    """Whether the first of them was weighed; whether it lasts is then said behind it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellYarnUsed(Effect):
    """Say how much yarn is knitted."""

    used: tuple[tuple[str, float], ...]
    """Each yarn of the rounds done, those in hand first, with its weight. Unit: g."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellPace(Effect):
    """Say how fast she knits what is in hand."""

    stitches_per_minute: float
    round_s: float
    """Time for the round in hand. Unit: s."""
    measured: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class TellEvening(Effect):
    """Say what an evening's knitting from here will reach."""

    outlook: Outlook
    sights: tuple[int, ...]
    """Rounds at which something begins on the way: a section, a needle, a yarn, a hold, another skein."""
    skeins: tuple[SkeinEnd, ...]
    """The skeins that likely end on the way."""
    reminders: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TellKnittedToday(Effect):
    """Say how much was knitted this evening."""

    stitches: int
    rounds: float
    """The same in rounds, back from the place in hand."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellReminders(Effect):
    """Say which of her reminders are still to come."""

    reminders: tuple[Reminder, ...]
    here: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TellLastCount(Effect):
    """Say what the last right count was."""

    count: Verified | None
    """None if there is none, or it says nothing of the stitches in hand."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellAlterations(Effect):
    """Say what is not knitted as printed."""

    here: tuple[tuple[str, tuple[str, ...]], ...]
    """In the section in hand: each change in her words, with the other sections that it is made in."""
    elsewhere: tuple[tuple[str, tuple[str, ...]], ...]
    """The other changes, each with its sections."""
    sizes: tuple[tuple[int, str], ...] = ()
    """Where another size begins: the index of its first round, and the size."""


def tell_next_shaping(plan: Plan, state: State, at: str, *, kind: Kind) -> Iterator[Effect]:
    """Tell when the next increases or decreases come."""
    here = state.place.index
    for round_ in plan.rounds[here:]:
        changes = changes_in(round_, kind)
        if round_.index == here:
            changes -= _done_in(round_, state.place.stitch, kind)
        if changes > 0:
            yield TellNextShaping(
                increases=kind is Kind.INCREASE, index=round_.index, here=here, changes=changes
            )
            return
    yield TellNextShaping(increases=kind is Kind.INCREASE, index=None, here=here)


def tell_shaping_left(plan: Plan, state: State, at: str, *, kind: Kind) -> Iterator[Effect]:
    """Tell how many increases or decreases are left in the section in hand."""
    here = plan.rounds[state.place.index]
    shaped = [round_ for round_ in plan.rounds if round_.section == here.section and changes_in(round_, kind)]
    ahead = [round_ for round_ in shaped if round_.index >= here.index]
    left = sum(changes_in(round_, kind) for round_ in ahead)
    in_hand = None
    if ahead and ahead[0].index == here.index:
        made = _done_in(here, state.place.stitch, kind)
        left -= made
        in_hand = (changes_in(here, kind) - made, changes_in(here, kind))
    yield TellShapingLeft(
        in_hand=in_hand,
        increases=kind is Kind.INCREASE,
        section=here.section,
        flat=here.flat,
        rounds=len(ahead),
        changes=left,
        done=len(shaped) - len(ahead),
    )


def changes_in(round_: Round, kind: Kind) -> int:
    """Count the increases or the decreases of a round. Unit: changes."""
    return sum(run.times for run in round_.runs if stitch(run.stitch).kind is kind)


def _done_in(round_: Round, stitches: int, kind: Kind) -> int:
    """Count the changes of a kind that are worked; where a round has both kinds, those of both so far."""
    return min(changes_in(round_, kind), tally_stitches(round_, stitches).shaped)


def tell_division(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell when stitches are put on hold."""
    yield TellRoundsTo(place="the division", index=division(plan, state.place.index), here=state.place.index)


def division(plan: Plan, start: int) -> int | None:
    """Find the next round, from one on, in which stitches are put on hold; None if there is none."""
    return next((round_.index for round_ in plan.rounds[start:] if round_.holds), None)


def tell_needle(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell which needle is in hand, and when another one is taken up."""
    here = plan.rounds[state.place.index]
    other = (
        round_.index
        for round_ in plan.rounds[here.index + 1 :]
        if round_.needle_mm not in (None, here.needle_mm)
    )
    yield TellNeedle(needle_mm=here.needle_mm, index=next(other, None))


def tell_size(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell which size is knitted here, and where another one is."""
    here = plan.rounds[state.place.index]
    spans = ((0, plan.rounds[0].size), *_size_changes(plan))
    in_hand = max((at for at, _ in spans if at <= here.index), default=0)
    yield TellSize(size=here.size, others=tuple(each for each in spans if each[0] != in_hand))


def tell_gauge(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell the gauge of the fabric in hand."""
    here = plan.rounds[state.place.index]
    loop = plan.materials.loop(here.gauge)
    if loop is None:
        yield TellGauge(name="", stitches_per_10cm=None, rounds_per_10cm=0.0, needle_mm=None)
        return
    yield TellGauge(
        name=here.gauge,
        stitches_per_10cm=100 / loop.stitch_mm,
        rounds_per_10cm=100 / loop.round_mm,
        needle_mm=loop.needle_mm,
    )


def tell_length(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell how long the piece is by its rounds, from where its length is measured."""
    here = plan.rounds[state.place.index]
    stretch = plan.stretch_at(here.index)
    inside = [round_ for round_ in plan.rounds if round_.section == here.section]
    length = length_mm(plan, (round_ for round_ in inside if round_.index < here.index))
    target, last = None if stretch is None else stretch.target_mm, inside[-1].index
    if stretch is not None:
        number, last = plan.stretches.index(stretch), stretch.last
        measured = (each for each in state.knitting.corrections if each.stretch == number)
        per_10cm = next((each.rounds_per_10cm for each in measured), stretch.rounds_per_10cm)
        length = (here.index - stretch.origin) / per_10cm * 100
    yield TellLength(
        section=here.section,
        flat=here.flat,
        length_mm=length,
        target_mm=target,
        rounds_left=last + 1 - here.index,
    )


def length_mm(plan: Plan, rounds: Iterable[Round]) -> float | None:
    """Return how long some rounds are by their gauge; None where one has none. Unit: mm.

    A short row adds nothing where it was not worked.
    """
    total = 0.0
    for round_ in rounds:
        loop = plan.materials.loop(round_.gauge)
        if loop is None:
            return None
        short = any(run.stitch == "rest" for run in round_.runs)
        if not short and any(run.uses and run.leaves for run in round_.runs):
            total += loop.round_mm
    return total


def tell_yarn_needed(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell how much of each yarn the rest takes, in her hands if it was weighed, and whether it lasts."""
    place = state.place
    uses = with_second_pieces(plan, yarn_use(plan))[place.index :]
    in_hand = yarns_of(plan.rounds[place.index])
    unknown = any(yarn not in plan.materials.stocks for use in uses for yarn in use)
    found = {ball.yarn: forecast(plan, ball.yarn, ball.weighing) for ball in state.knitting.balls}
    factors = {yarn: each.factor for yarn, each in found.items() if each is not None}
    needed = tuple((yarn, grams * factors.get(yarn, 1.0)) for yarn, grams in _weights(plan, uses, in_hand))
    lasting = [
        effect
        for ball in state.knitting.balls
        if needed and ball.yarn == needed[0][0]
        for effect in forecast_ball(plan, ball.yarn, ball.weighing, named=True)
    ]
    yield TellYarnNeeded(needed=needed, unknown=unknown, weighed=bool(lasting))
    yield from lasting


def tell_yarn_used(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell how much of each yarn the rounds so far have taken."""
    place = state.place
    yield TellYarnUsed(used=_weights(plan, yarn_use(plan)[: place.index], yarns_of(plan.rounds[place.index])))


def _weights(
    plan: Plan, uses: Sequence[Mapping[str, Amount]], first: tuple[str, ...]
) -> tuple[tuple[str, float], ...]:
    """Add up what rounds take of each yarn that can be weighed, those in hand first. Unit: g."""
    found = []
    for yarn in dict.fromkeys((*first, *(yarn for use in uses for yarn in use))):
        stock = plan.materials.stocks.get(yarn)
        amounts = [use[yarn] for use in uses if yarn in use]
        if stock is not None and amounts:
            found.append((yarn, stock.skein.grams_of(max(0.0, total(amounts).likely_mm) / 1000)))
    return tuple(found)


def tell_pace(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell how fast she knits what is in hand."""
    here = plan.rounds[state.place.index]
    pace = paces_of(state).of(kind_of(here))
    yield TellPace(
        stitches_per_minute=pace.stitches_per_minute,
        round_s=pace.seconds_for(here.progress),
        measured=pace.measured,
    )


def tell_tonight(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell what two hours of knitting from here will reach, and what begins on the way."""
    seen = look_ahead(plan, state, at)
    here = state.place.index
    until = min(seen.film_to.index, len(plan.rounds) - 1)
    skeins = tuple(end for end in find_ends_ahead(plan, state.knitting) if here < end.likely <= until)
    ending = {end.likely for end in skeins}
    sights = [
        index for index in range(here + 1, until + 1) if index in ending or _begins_something(plan, index)
    ]
    ahead = [each for each in state.knitting.reminders if here < each.index <= until]
    yield TellEvening(
        outlook=seen, sights=tuple(sights[:MOST_SIGHTS]), skeins=skeins, reminders=len(ahead)
    )


def _begins_something(plan: Plan, index: int) -> bool:
    """Return whether a section begins at a round, or a needle, yarn, marker or holder has to be at hand
    there."""
    before, round_ = plan.rounds[index - 1], plan.rounds[index]
    return (
        round_.section != before.section
        or round_.needle_mm not in (None, before.needle_mm)
        or bool(yarns_taken_up(plan, index))
        or any(run.stitch in ("hold", "pm") for run in round_.runs)
    )


def yarns_taken_up(plan: Plan, index: int) -> tuple[str, ...]:
    """Return the yarns of a round that have to be fetched: none of the last rounds had them in hand."""
    lately = {yarn for round_ in plan.rounds[max(0, index - PUT_AWAY) : index] for yarn in yarns_of(round_)}
    return tuple(yarn for yarn in yarns_of(plan.rounds[index]) if yarn not in lately)


def tell_knitted_today(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell how much was knitted this evening, in stitches and in rounds back from the place in hand."""
    today = evening_of(at)
    stitches = sum(done.stitches for day in state.days if day.date == today for done in day.done)
    left, rounds = stitches - state.place.stitch, 0.0
    for round_ in reversed(plan.rounds[: state.place.index]):
        if left <= 0 or not round_.progress:
            break
        rounds += min(1.0, left / round_.progress)
        left -= round_.progress
    yield TellKnittedToday(stitches=stitches, rounds=rounds)


def tell_reminders_kept(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell which of her reminders are still to come."""
    ahead = tuple(each for each in state.knitting.reminders if each.index > state.place.index)
    yield TellReminders(reminders=ahead, here=state.place.index)


def tell_last_count(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell what the last right count was."""
    yield TellLastCount(count=state.knitting.stands)


def tell_alterations(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell what is not knitted as printed."""
    here = plan.rounds[min(state.place.index, len(plan.rounds) - 1)].section
    found: dict[str, dict[str, None]] = {}
    for round_ in plan.rounds:
        for words in round_.altered:
            found.setdefault(words, {})[round_.section] = None
    told = {words: tuple(each for each in sections if each != here) for words, sections in found.items()}
    yield TellAlterations(
        here=tuple((words, others) for words, others in told.items() if here in found[words]),
        elsewhere=tuple((words, others) for words, others in told.items() if here not in found[words]),
        sizes=_size_changes(plan),
    )


def _size_changes(plan: Plan) -> tuple[tuple[int, str], ...]:
    """Return where another size begins: the index of its first round, and the size."""
    pairs = pairwise(plan.rounds)
    return tuple((each.index, each.size) for before, each in pairs if each.size != before.size)
