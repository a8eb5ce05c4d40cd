"""What is ahead: the next count, shaping, and change of needle or yarn, and how much is done. No I/O."""

from __future__ import annotations

from bisect import bisect_left

from stepper.craft.rows import row_word
from stepper.craft.stitches import Kind
from stepper.language.measures import plural
from stepper.plan.model import Round
from stepper.records import dataclass
from stepper.screen.course import SummedPlan
from stepper.screen.drawing.rows import Row, Styled, write_fact
from stepper.session.counting.tally import each_stitch, shaping_at
from stepper.session.pace.outlook import paces_of, work_until
from stepper.session.state import Asking, State

MOST_STITCHES_AHEAD = 1500
"""A change farther away than this is given in rounds alone. Source: chosen here. Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class NextShaping:
    """The increase or decrease that comes next."""

    word: str
    """`increase` or `decrease`."""
    stitches: int
    """Stitches to work before it. Unit: stitches."""
    rounds: int
    """Rounds until it: 0 if it is in the current round."""


def find_next_shaping(course: SummedPlan, state: State) -> NextShaping | None:
    """Return the increase or decrease that comes next; None if none follows."""
    place = state.place
    if place.index >= len(course.rounds):
        return None
    here = course.rounds[place.index]
    shaping = shaping_at(here, place.stitch)
    if shaping is not None and shaping.next_in is not None:
        return NextShaping(word=_change(here, shaping.done), stitches=shaping.next_in, rounds=0)
    at = bisect_left(course.shaped, place.index + 1)
    if at == len(course.shaped):
        return None
    round_ = course.rounds[course.shaped[at]]
    away = course.before[round_.index] - course.done(place) + round_.shaping[0]
    return NextShaping(word=_change(round_, 0), stitches=away, rounds=round_.index - place.index)


def _change(round_: Round, number: int) -> str:
    """Name one of a round's changes, given by its number from 0."""
    changes = [entry for entry in each_stitch(round_.runs) if entry.shapes]
    return str((changes[number].kind if number < len(changes) else Kind.INCREASE).value)


def list_facts(course: SummedPlan, state: State) -> list[Row]:
    """Return rows that say what is ahead, nearest first."""
    if state.place.index >= len(course.rounds):
        return []
    found = [_count(course, state), _shaping(course, state), _needle(course, state), _yarn(course, state)]
    return [fact for fact in found if fact is not None]


def _count(course: SummedPlan, state: State) -> Row | None:
    if state.knitting.asking is Asking.NEVER:
        return write_fact("Counts", "none asked for")
    at = bisect_left(course.counted, state.place.index)
    if at == len(course.counted):
        return None
    round_ = course.rounds[course.counted[at]]
    assert round_.checkpoint is not None
    return write_fact("Count", f"{round_.checkpoint.expect} {_after(round_, state.place.index)}")


def _shaping(course: SummedPlan, state: State) -> Row | None:
    """Return a row that says when stitches are next increased or decreased; None if that is in the round in
    hand, whose place says it already."""
    change = find_next_shaping(course, state)
    if change is None or not change.rounds:
        return None
    stitches = plural(change.stitches, "stitch", "stitches")
    # Nobody counts thousands of stitches ahead.
    exact = f", {stitches}" if change.stitches <= MOST_STITCHES_AHEAD else ""
    return write_fact(f"Next {change.word}", _in(change.rounds) + exact)


def _needle(course: SummedPlan, state: State) -> Row | None:
    place = state.place
    here = course.rounds[place.index].needle_mm
    for round_ in course.rounds[place.index + 1 :]:
        if round_.needle_mm is not None and round_.needle_mm != here:
            return write_fact("Needle", f"{round_.needle_mm:g} mm {_in(round_.index - place.index)}")
    return None


def _yarn(course: SummedPlan, state: State) -> Row | None:
    """Return a row that says which yarns join and which end at the next change."""
    place = state.place
    here = set(course.yarns[place.index])
    for index in range(place.index + 1, len(course.rounds)):
        there = course.yarns[index]
        if not there or set(there) == here:
            continue
        names = course.plan.yarns
        comes = [names.get(key, key) for key in there if key not in here]
        goes = [names.get(key, key) for key in here if key not in there]
        joins = "joins" if len(comes) == 1 else "join"
        change = f"{' and '.join(comes)} {joins}" if comes else f"without {' and '.join(sorted(goes))}"
        return write_fact("Yarn", f"{change} {_in(index - place.index)}")
    return None


def _after(round_: Round, index: int) -> str:
    word = row_word(round_.flat)
    if round_.index == index:
        return f"at the end of this {word}"
    return f"in {plural(round_.index - index + 1, word)}"


def _in(rounds: int) -> str:
    return "next round" if rounds == 1 else f"in {rounds} rounds"


def list_progress(course: SummedPlan, state: State) -> list[tuple[str, float, str]]:
    """List how much of section and garment is done.

    Returns:
        For each its name, the share that is done, from 0 to 1, and how long the rest should take; empty if
        nothing is left. What is not read to its end is left out: its share is not known.
    """
    place, paces, done = state.place, paces_of(state), course.done(state.place)

    def rest(end: int) -> str:
        # As "how far to go" says it: each kind of knitting at its own pace.
        return f"{say_duration(paces.seconds_for(work_until(course.plan, place, end)))} left"

    found = []
    if place.index < len(course.rounds):
        round_ = course.rounds[place.index]
        begin = course.before[course.section_begins[place.index]]
        last = course.section_ends[place.index]
        end = course.before[last]
        if round_.of:
            found.append(_done(round_.section, done - begin, end - begin, rest(last)))
    if course.plan.open is not None:
        return found
    return [*found, _done("garment", done, course.stitches, rest(len(course.rounds)))]


def _done(name: str, done: int, of: int, left: str) -> tuple[str, float, str]:
    return name, done / of if of else 1.0, left if done < of else ""


def draw_progress(course: SummedPlan, state: State, bar: int, *, blocks: bool) -> list[Row]:
    """Return rows that say how much of section and garment is done, and how long the rest should take.

    Args:
        course: What is knitted.
        state: Where it stands.
        bar: Width of the bars. Unit: columns.
        blocks: Whether the terminal has block signs.
    """
    full, empty = ("█", "░") if blocks else ("#", ".")
    rows = []
    for name, share, left in list_progress(course, state):
        filled = int(share * bar)
        label = write_fact(name, f"{int(share * 100)} %{', ' + left if left else ''}")
        rows.append((*label, Styled(f" {full * filled}{empty * (bar - filled)}")) if bar else label)
    return rows


def say_duration(seconds: float) -> str:
    """Say how long something takes, no more precisely than anyone can foresee. Unit of the argument: s."""
    minutes = round(seconds / 60)
    if minutes < 1:
        return "under 1 min"
    if minutes < 60:
        return f"about {minutes} min"
    if minutes < 600:
        hours, rest = divmod(round(minutes, -1), 60)
        return f"about {hours} h {rest} min" if rest else f"about {hours} h"
    return f"about {round(minutes / 60)} h"
