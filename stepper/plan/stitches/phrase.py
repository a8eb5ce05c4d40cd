"""One written-out round worked on a given number of stitches. No I/O.

The elements of a line are worked from left to right with a cursor on the left needle
(`stepper.plan.stitches.cursor`); this module works out a whole round, and what is left over.
"""

from __future__ import annotations

from stepper.craft.stitches import Kind, stitch
from stepper.plan.model import Group, Item, Run, flatten, runs_written
from stepper.plan.stitches.both_sides import with_other_ball
from stepper.plan.stitches.cursor import Cursor
from stepper.plan.stitches.halves import Instep, bounds_of, moved_instep
from stepper.plan.stitches.round_sources import RoundSources
from stepper.plan.stitches.row_elements import JustWorked, MisfitError
from stepper.plan.stitches.row_facing import Facing, Left, face, leave
from stepper.project.problems import Span
from stepper.project.stitchwork import Across, Element
from stepper.records import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class WorkedPhrase:
    """The result of a written-out round."""

    items: tuple[Item, ...]
    after: int
    """Stitches on the needles after it."""
    markers: tuple[int, ...]
    """Places of the markers after it, from the right side. Unit: stitches from the beginning."""
    held: tuple[tuple[str, int], ...]
    """Stitches put on hold: name and number."""
    left: Left
    """The places on the needles after it."""
    behind: tuple[JustWorked, ...]
    """Stitches of its own that go on hold, in the order worked."""
    turned: bool
    parted: bool
    """Whether it ended at a turn with the rest put on hold, so that rows follow."""
    returned: tuple[str, ...]
    """Names of held stitches that came back."""
    begins: int
    """Where the next round begins, if a marker for that was placed within this one; else 0."""
    ends: tuple[int, ...]
    """Where the needles of a sock end after it, but the last. Unit: stitches from the beginning."""
    instep: Instep | None
    """Where the instep of a sock lies after it; None if nobody can tell."""
    charts: tuple[tuple[str, int], ...]
    """Charts worked over a part of it: name and round."""


def work_phrase(
    elements: tuple[Element, ...],
    *,
    count: int,
    size: int,
    yarn: str,
    place: Span,
    facing: Facing | None = None,
    method: str = "",
    ends: tuple[int, ...] = (),
    instep: Instep | None = None,
    supplies: RoundSources | None = None,
) -> WorkedPhrase:
    """Work a written-out round.

    Args:
        elements: The round as printed.
        count: Stitches on the needles before it.
        size: The size knitted: place in the list of sizes, from 0.
        yarn: Key of the yarn in hand.
        place: Where the line stands, for problems of the round as a whole.
        facing: The needles as the row meets them, if not simply from the first stitch.
        ends: Where the needles of a sock end before it, but the last.
        instep: Where the instep of a sock lies before it, if that is known.
        method: How short rows are turned: `german`, `wrap` or `plain`.
        supplies: Charts, held stitches and anything else the round may ask for.

    Raises:
        MisfitError: the round does not fit the stitches.
    """
    met = facing or face(count=count, flat=True, side="RS")
    cursor = Cursor(facing=met, size=size, yarn=yarn, method=method, supplies=supplies or RoundSources())
    plain = not (met.around or met.wrong or met.lead)
    if plain:
        _lay_out(cursor, ends, instep)
    items = _work_row(cursor, elements, place)
    used, made = cursor.used, cursor.made
    worked = tuple(items)
    _leave_rest(cursor, items, count, place)
    after = count - used + made
    left = _left_behind(cursor, worked, used=used, made=made)
    if met.begins_at_turn and method == "german" and not (met.around and cursor.parted):
        items = _with_double_stitch(items)
    return WorkedPhrase(
        items=(Run("rest", met.lead, yarn), *items) if met.lead else tuple(items),
        after=after,
        markers=left.markers,
        held=tuple(cursor.held),
        left=left,
        turned=cursor.turned,
        parted=cursor.parted,
        behind=tuple(cursor.behind),
        returned=tuple(cursor.returned),
        charts=tuple(cursor.charts),
        begins=cursor.begins if plain and cursor.begins < after else 0,
        ends=() if cursor.held else cursor.ends.left(used, made),
        instep=_instep_behind(cursor, after) if plain else None,
    )


def _work_row(cursor: Cursor, elements: tuple[Element, ...], place: Span) -> list[Item]:
    """Work the stitches of a row, with a ball of its own for each of two parts."""
    cursor.called = frozenset(element.name for element in elements if isinstance(element, Across))
    items = cursor.work_row(elements)
    cursor.check_taken(place)
    return with_other_ball(items, cursor.facing, cursor.yarn, place) if cursor.facing.parted else items


def _lay_out(cursor: Cursor, ends: tuple[int, ...], instep: Instep | None) -> None:
    """Tell the cursor where the needles of a sock end before the round, and where its instep lies."""
    cursor.ends.waiting = list(ends)
    cursor.instep = instep
    cursor.halves.waiting = bounds_of(instep, cursor.facing.end)


def _instep_behind(cursor: Cursor, after: int) -> Instep | None:
    """Return where the instep lies behind a round: where it came back from hold, or was carried to."""
    if cursor.held or cursor.turned:
        return None
    if cursor.came is not None:
        return cursor.came if cursor.came[1] - cursor.came[0] < after else None
    return moved_instep(cursor.instep, cursor.facing.end, cursor.halves, cursor.used, cursor.made)


def _left_behind(cursor: Cursor, worked: tuple[Item, ...], *, used: int, made: int) -> Left:
    """Return the places on the needles after a row, as seen from the right side.

    Behind a wrong-side row that put the rest of a ring on hold, both turns are the edges of what is left.
    """
    met, after = cursor.facing, cursor.facing.count - used + made
    placed = tuple(sorted({place for place in cursor.placed if 0 < place < cursor.made}))
    if met.around and cursor.parted:
        markers = sorted(after - mark for mark in placed if 0 < mark < after)
        return Left(markers=tuple(markers), gap=None, turns=(), passed=False)
    return leave(met, worked, used=used, made=made, placed=placed, turned=cursor.turned)


def _leave_rest(cursor: Cursor, items: list[Item], count: int, place: Span) -> None:
    """Leave on the needle what the round does not reach, where it says so."""
    met, used = cursor.facing, cursor.used
    rest = met.room - used
    if not rest:
        return
    if cursor.called and met.end and not cursor.turned:
        told = f"the line works stitches from hold and not the {rest} that are on the needles besides."
        raise MisfitError(place, told, 'Put those on hold first, or say how they are worked: ", k to end".')
    if not (cursor.turned or used == met.end):
        _require_nothing_left(tuple(items), count, used, rest, place)
    cursor.advance(Run("rest", rest, cursor.yarn), items)


def _require_nothing_left(worked: tuple[Item, ...], count: int, used: int, rest: int, place: Span) -> None:
    """Refuse a round that ends before its last stitch and does not say why.

    Raises:
        MisfitError: stitches were worked or bound off, and others are left over.
    """
    if _works(worked):
        told = f"the line works {used} of the {count} stitches on the needles; {rest} are left over."
        if used and count % used == 0:
            often = f'"*…; rep from * to end" fits {count // used} times.'
            raise MisfitError(place, told, f"Did the line mean to repeat? {often}")
        raise MisfitError(place, told, 'End the line with "k to end" where the rest is knitted.', "left over")
    off = sum(run.uses for run in flatten(worked) if run.stitch == "bo")
    if off:
        raise MisfitError(
            place,
            f"the line binds off {off} of the {count} stitches and does not say how the other {rest} are "
            "worked.",
            'End it with "k to end" or "work in pattern to end"; stitches bound off at both edges are '
            'written "at the beginning of the next 2 rows".',
        )


def _works(items: tuple[Item, ...]) -> bool:
    """Return whether any stitch is worked, rather than cast on, moved or marked."""
    idle = (Kind.EDGE, Kind.MARK, Kind.SHIFT)
    return any(stitch(run.stitch).kind not in idle for run in runs_written(items))


def _with_double_stitch(items: list[Item]) -> list[Item]:
    """Make the first stitch after a German turn the double stitch; it stays one stitch."""
    for at, item in enumerate(items):
        if isinstance(item, Group):
            rest = [Group(item.items, item.times - 1, item.name)] if item.times > 1 else []
            return [*items[:at], *_with_double_stitch(list(item.items)), *rest, *items[at + 1 :]]
        if item.uses:
            if stitch(item.stitch).kind is not Kind.PLAIN or item.stitch.startswith("sl"):
                return items  # a slipped stitch after the turn is the pattern's own way
            rest_run = [Run(item.stitch, item.times - 1, item.yarn)] if item.times > 1 else []
            return [*items[:at], Run("ds", 1, item.yarn), *rest_run, *items[at + 1 :]]
    return items
