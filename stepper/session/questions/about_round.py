"""Answers about the round in hand and those beside it: yarn, side, repeat, chart, marker, float. Pure.

One record for each answer, beside what works it out; the words stand in `stepper.language.about_words`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import islice, takewhile

from stepper.craft.stitches import TURNS, Kind, stitch
from stepper.plan.kinds import kind_of
from stepper.plan.model import Plan, Round
from stepper.plan.yarn.floats import floats
from stepper.plan.yarn.strand_remarks import carrying_of, catches_of
from stepper.records import dataclass
from stepper.session.counting.tally import between_markers, markers_in, placed_runs
from stepper.session.effects import Effect, Lead, TellFinished, TellStep
from stepper.session.state import State
from stepper.session.steps import By, StepPart, cut_into_steps, part_at


@dataclass(frozen=True, slots=True, kw_only=True)
class TellNear(Effect):
    """Say a step near the one in hand."""

    ahead: int
    """How many steps after the one in hand; -1 for the one before it."""
    step: TellStep | TellFinished | None
    """The step; None if there is none before the first."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellRound(Effect):
    """Say briefly what a round beside the one in hand is."""

    ahead: int
    """1 for the next round, 2 for the one after it, -1 for the last one, 0 for the one in hand."""
    index: int | None
    """None if there is no such round."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellAlike(Effect):
    """Say how many more rounds are worked as the one in hand."""

    index: int
    """The round in hand."""
    more: int
    """How many follow it that are like it, one behind the other."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellStitchesLeft(Effect):
    """Say how many stitches of a round are left."""

    index: int
    left: int
    """Unit: stitches."""
    of: int
    """Stitches that the round works at all."""
    turned: bool
    """Whether it is turned before its end."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellYarns(Effect):
    """Say which yarn is in hand, and which ones the round needs."""

    now: str | None
    """Key of the yarn of the next stitch; None if the rest of the round works no stitch."""
    yarns: tuple[str, ...]
    """Keys of the yarns of the round, in the order in which they are first needed."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellColourChange(Effect):
    """Say when another yarn is taken up."""

    stitches: int | None
    """Stitches of this round before it; None if the rest of the round is in one yarn. Unit: stitches."""
    index: int | None
    """The next round with another set of yarns, if this one has no change left; None if none comes."""
    yarns: tuple[str, ...]
    """Keys of the yarns taken up; empty if none is."""
    here: int
    """The round in hand."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellFloats(Effect):
    """Say how long the floats of the round are."""

    longest: tuple[tuple[str, int], ...]
    """Longest float of each yarn that has any, the longest first. Unit: stitches."""
    stitch_mm: float | None
    """Width of a stitch; None if no gauge is known. Unit: mm."""
    catches: tuple[str, ...]
    """Where they are caught, in the words of the round's remarks; empty if none has to be."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellCarried(Effect):
    """Say which yarn lies below the others."""

    words: str
    """As the plan says it; empty for a round of one yarn."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellSide(Effect):
    """Say which side of the work faces her."""

    index: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TellRepeat(Effect):
    """Say which repeat it is."""

    number: int | None
    """From 1; None between repeats."""
    of: int
    """0 if the round has no repeat."""
    left: int | None = None
    """Stitches to the end of it, where that is known. Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellChartRow(Effect):
    """Say which round of a chart is in hand."""

    index: int
    left: int
    """Rounds of the chart that follow without a break after this one; 0 outside a chart."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellMarker(Effect):
    """Say where the next marker is."""

    stitches: int | None
    """Stitches before it; None if none lies ahead in this round. Unit: stitches."""
    between: tuple[int, ...]
    """Stitches between the markers after the round; empty without markers."""
    number: int
    """Which marker of the round the next one is, from 1; 0 if none lies ahead."""
    of: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TellTurn(Effect):
    """Say where a short row is turned."""

    index: int
    """The row that is turned."""
    stitches: int | None
    """Stitches before the turn, from the place in hand or from the row's beginning; None if none comes."""
    rows: int = 0
    """Rows of the section that are still to be turned, that one among them."""


def tell_step(plan: Plan, state: State, at: str, *, ahead: int) -> Iterator[Effect]:
    """Tell a step after the one in hand, or the one before it.

    Args:
        ahead: 1 and up for steps to come, -1 for the step before.
    """
    steps = _steps_before(plan, state) if ahead < 0 else _steps_after(plan, state)
    found = next(islice(steps, abs(ahead) - 1, None), None)
    yield TellNear(ahead=ahead, step=TellFinished() if found is None and ahead > 0 else found)


def _steps_after(plan: Plan, state: State) -> Iterator[TellStep]:
    place = state.place
    for round_ in plan.rounds[place.index :]:
        for part in cut_into_steps(round_, state.knitting.by_of(round_)):
            if round_.index > place.index or part.start > place.stitch:
                yield _step(round_, part)


def _steps_before(plan: Plan, state: State) -> Iterator[TellStep]:
    place = state.place
    for round_ in reversed(plan.rounds[: place.index + 1]):
        reached = place.stitch if round_.index == place.index else round_.progress
        for part in reversed(cut_into_steps(round_, state.knitting.by_of(round_))):
            if part.end <= reached and (part.end or round_.index < place.index):
                yield _step(round_, part)


def _step(round_: Round, part: StepPart) -> TellStep:
    """Tell a step, with its section too where that begins."""
    lead = Lead.PART if part.start else Lead.FULL if round_.number == 1 else Lead.ROUND
    return TellStep(index=round_.index, part=part, lead=lead)


def tell_round(plan: Plan, state: State, at: str, *, ahead: int) -> Iterator[Effect]:
    """Tell the next round or the last one briefly, or the one in hand in full."""
    index = state.place.index + ahead
    yield TellRound(ahead=ahead, index=index if 0 <= index < len(plan.rounds) else None)


def tell_alike(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell how many more rounds are worked as the one in hand, before anything else comes.

    Alike are rounds of one line of the pattern that are of one kind of knitting and shape alike.
    """
    here = plan.rounds[state.place.index]
    ahead = takewhile(lambda each: _is_alike(each, here), plan.rounds[here.index + 1 :])
    yield TellAlike(index=here.index, more=sum(1 for _ in ahead))


def _is_alike(one: Round, other: Round) -> bool:
    same_line = (one.section, one.line, one.words) == (other.section, other.line, other.words)
    return same_line and kind_of(one) is kind_of(other) and bool(one.shaping) is bool(other.shaping)


def tell_stitches_left(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell how many stitches of the round in hand are left; of a row that is turned those before the turn."""
    round_ = plan.rounds[state.place.index]
    resting = [(place, run.progress) for place, run in placed_runs(round_) if run.stitch == "rest"]
    waiting = sum(many for _, many in resting)
    behind = sum(many for place, many in resting if place >= state.place.stitch)
    yield TellStitchesLeft(
        index=round_.index,
        left=max(0, round_.progress - state.place.stitch - behind),
        of=round_.progress - waiting,
        turned=_turn_in(round_) is not None,
    )


def tell_yarns(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell which yarn is in hand."""
    round_ = plan.rounds[state.place.index]
    ahead = _yarns_from(round_, state.place.stitch)
    yield TellYarns(now=ahead[0][0] if ahead else None, yarns=yarns_of(round_))


def yarns_of(round_: Round) -> tuple[str, ...]:
    """Return the yarns of a round, in the order in which they are first needed."""
    return tuple(dict.fromkeys(yarn for yarn, _ in _yarns_from(round_, 0)))


def _yarns_from(round_: Round, stitch_: int) -> tuple[tuple[str, int], ...]:
    """Return the yarns worked from a place on, each with the stitches in it up to the next one."""
    found: list[tuple[str, int]] = []
    for place, run in placed_runs(round_):
        left = min(run.progress, place + run.progress - stitch_)
        if left <= 0 or stitch(run.stitch).kind in (Kind.SHIFT, Kind.MARK):
            continue
        if found and found[-1][0] == run.yarn:
            left += found.pop()[1]
        found.append((run.yarn, left))
    return tuple(found)


def tell_colour_change(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell when another yarn is taken up, in this round or a later one."""
    place = state.place
    ahead = _yarns_from(plan.rounds[place.index], place.stitch)
    if len(ahead) > 1:
        yield TellColourChange(stitches=ahead[0][1], index=None, yarns=(ahead[1][0],), here=place.index)
        return
    here = set(yarns_of(plan.rounds[place.index]))
    for round_ in plan.rounds[place.index + 1 :]:
        fresh = tuple(yarn for yarn in yarns_of(round_) if yarn not in here)
        if fresh:
            yield TellColourChange(stitches=None, index=round_.index, yarns=fresh, here=place.index)
            return
    yield TellColourChange(stitches=None, index=None, yarns=(), here=place.index)


def tell_floats(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell how long the floats of the round are, and where they are caught."""
    round_ = plan.rounds[state.place.index]
    longest: dict[str, int] = {}
    for one in floats(round_.runs, flat=round_.flat):
        longest[one.yarn] = max(one.stitches, longest.get(one.yarn, 0))
    loop = plan.materials.loop(round_.gauge)
    yield TellFloats(
        longest=tuple(sorted(longest.items(), key=lambda each: -each[1])),
        stitch_mm=None if loop is None else loop.stitch_mm,
        catches=catches_of(round_),
    )


def tell_carried(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell which yarn of the round is carried below; the plan says it once for each set of yarns."""
    round_ = plan.rounds[state.place.index]
    held = set(yarns_of(round_))
    alike = (each for each in plan.rounds if set(yarns_of(each)) == held)
    yield TellCarried(words=next((words for each in alike for words in carrying_of(each)), ""))


def tell_side(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell which side of the work faces her."""
    yield TellSide(index=state.place.index)


def tell_repeat(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell which repeat the next stitch is in, and of how many."""
    round_ = plan.rounds[state.place.index]
    cut = cut_into_steps(round_, By.REPEAT)
    here = part_at(cut, state.place.stitch)
    before = [part.repeat for part in cut if part.repeat is not None and part.start <= here.start]
    most = max((part.repeat[1] for part in cut if part.repeat is not None), default=0)
    # A long repeat is read in several breaths, and only the first has its number.
    last = max((part.end for part in cut if part.repeat is not None), default=0)
    if before and (here.repeat is not None or here.start < last):
        number, of = before[-1]
        end = _end_of_repeat(cut, here.start)
        yield TellRepeat(number=number, of=of, left=None if end is None else end - state.place.stitch)
    else:
        yield TellRepeat(number=None, of=most)


def _end_of_repeat(cut: Sequence[StepPart], start: int) -> int | None:
    """Return the stitches of the round up to the end of a repeat; None for a single one, which has no mark.

    Args:
        cut: The round by repeats.
        start: The stitch at which a part of the repeat begins.
    """
    begins = [(part.start, part.repeat[0]) for part in cut if part.repeat is not None]
    at = max(number for number, (begin, _) in enumerate(begins) if begin <= start)
    begin, number = begins[at]
    if at + 1 < len(begins) and begins[at + 1][1] == number + 1:
        return begins[at + 1][0]
    return 2 * begin - begins[at - 1][0] if number > 1 else None


def tell_chart(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell which round of a chart is in hand, and how many of it follow."""
    here = plan.rounds[state.place.index]
    left = 0
    if here.chart is not None:
        for round_ in plan.rounds[here.index + 1 :]:
            if round_.chart != here.chart or round_.chart_round == 1:
                break
            left += 1
    yield TellChartRow(index=here.index, left=left)


def tell_marker(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell where the next marker is and what lies between the markers."""
    round_ = plan.rounds[state.place.index]
    markers = markers_in(round_)
    ahead = [each - state.place.stitch for each in markers if each > state.place.stitch]
    yield TellMarker(
        stitches=ahead[0] if ahead else None,
        between=between_markers(round_),
        number=len(markers) - len(ahead) + 1 if ahead else 0,
        of=len(markers),
    )


def tell_turn(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell where the row in hand is turned, or the next one that is."""
    place = state.place
    for round_ in plan.rounds[place.index :]:
        turn = _turn_in(round_)
        start = place.stitch if round_.index == place.index else 0
        if turn is not None and turn >= start:
            section = [each for each in plan.rounds[round_.index :] if each.section == round_.section]
            rows = sum(_turn_in(each) is not None for each in section)
            yield TellTurn(index=round_.index, stitches=turn - start, rows=rows)
            return
    yield TellTurn(index=place.index, stitches=None)


def _turn_in(round_: Round) -> int | None:
    """Return the stitches of a row before it is turned; None if it is worked to its end."""
    return next((place for place, run in placed_runs(round_) if run.stitch in TURNS), None)


