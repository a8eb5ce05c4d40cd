"""Columns of the fabric: what lies below each stitch on the needles, and what a row makes of it. No I/O.

Theory of operation. A column is what one stitch of the fabric is on each row of the repeat, as seen from the
right side. A row is laid out as the stitches it leaves, each with the columns below it. A decrease removes
columns: of those below it, the one it looks like stays (k2tog over a knit and a purl column leaves the knit
one), or else the one farther from the edge. Changes that cancel out at one place (yo, k2tog) leave every
column where it was. An increase adds a new column, which continues the repeat beside it, on the side away
from the edge; without a repeat it is stockinette. One made purlwise (m1p, pfb) is a column that looks so, and
one made away from the edges between two columns that are alike is a third of them.
Cables are told by `stepper.plan.stitches.cable_cells`. It is long because each kind of change has a rule of
its own for what becomes of the columns, and all of them work on the one row that is laid out.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Callable, Sequence
from functools import lru_cache
from itertools import accumulate, pairwise
from typing import NamedTuple

from stepper.craft.stitches import STITCHES, Kind, Stitch, stitch
from stepper.plan.drafts import DraftRound, own_words_of
from stepper.plan.fabric.borders import border_of, keep_borders
from stepper.plan.fabric.repeats import SEEN, first_repeat_of, repeat_of
from stepper.plan.model import Item, Run, flatten, runs_written
from stepper.plan.state.in_hand import Cell, Column
from stepper.plan.stitches.cable_cells import crossings, look_of, looks_of
from stepper.plan.stitches.row_facing import mirror_places
from stepper.records import dataclass

KNIT: Cell = ("k", "")
PURL: Cell = ("p", "")
SELVEDGE = 3
"""Stitches beside an edge or a marker that a line may work its own way. Unit: stitches; an assumption."""


_PURLWISE = ("m1p", "m1lp", "m1rp", "pfb")
"""Increases whose new stitches are purled."""


class UnknownFabricError(Exception):
    """The columns cannot be worked out; the message says why."""


class LaceError(UnknownFabricError):
    """The columns cannot be worked out, as stitches are made and taken within the pattern."""


@dataclass(slots=True)
class Noticed:
    """What a row does to the columns away from edges and markers, where it is not the pattern's own."""

    other_stitches: bool = False
    """Whether it works stitches in another way than their columns."""
    hidden: bool = False
    """Whether a decrease looks otherwise than every column it was worked from."""


class StandingColumns(NamedTuple):
    """One stitch that a row leaves on the needles."""

    below: tuple[int, ...]
    """Places in the old row of the columns it was worked from; empty for a new stitch."""
    cell: Cell | None
    """What it looks like from the right side; None if that says nothing about its column."""
    held: str = ""
    """Name of the held stitches it comes from."""
    look: Cell | None = None
    """What it looks like if that does not follow its column."""
    made: str = ""
    """What a new stitch made purlwise looks like from the right side, `k` or `p`; empty of any other."""


def lay_columns(draft: DraftRound) -> tuple[StandingColumns, ...]:
    """Lay out what a row leaves, from the first stitch of its right side.

    Raises:
        UnknownFabricError: it twists stitches of which nobody can tell which are purled.
    """
    if draft.words:
        raise UnknownFabricError(own_words_of(draft.line))
    return _laid(draft.phrase, wrong=draft.side == "WS")


@lru_cache(maxsize=1024)
def _laid(phrase: tuple[Item, ...], *, wrong: bool) -> tuple[StandingColumns, ...]:
    """Lay out a phrase, which comes again in other rows, and in every blend that is tried."""
    made: list[StandingColumns] = []
    chunk: list[Stitch] = []
    at = 0
    yarns = {run.yarn for run in runs_written(phrase) if stitch(run.stitch).kind is not Kind.SHIFT}
    for run in flatten(phrase):
        entry = stitch(run.stitch)
        if entry.kind is Kind.MARK:
            continue
        if entry.shapes:
            chunk += [entry] * run.times
            continue
        if chunk:
            at = _changed(chunk, at, made, wrong=wrong)
            chunk = []
        if entry.kind is Kind.CABLE:
            try:
                looks = looks_of(run)
            except ValueError as error:
                raise UnknownFabricError(str(error)) from error
            made += [StandingColumns((at + place,), (look, "")) for place, look in enumerate(looks)]
            at += len(looks)
            continue
        at = _plain(run, entry, at, made, wrong=wrong, coloured=len(yarns) > 1)
    at = _changed(chunk, at, made, wrong=wrong)
    if not wrong:
        return tuple(made)
    return tuple(
        each._replace(below=tuple(at - 1 - place for place in reversed(each.below)))
        for each in reversed(made)
    )


def _plain(
    run: Run, entry: Stitch, at: int, made: list[StandingColumns], *, wrong: bool, coloured: bool
) -> int:
    """Lay out stitches that stay, come or go one by one; return the place after them."""
    if not entry.uses:
        held = run.yarn if run.stitch == "return" else ""
        made += [StandingColumns((), KNIT if run.stitch == "pu" else None, held)] * run.times
        return at
    if entry.leaves:
        told = entry.kind is Kind.PLAIN and entry.code != "ds"
        cell = (as_seen(entry.code, wrong=wrong), run.yarn if coloured else "") if told else None
        made += [StandingColumns((place,), cell) for place in range(at, at + run.times)]
    return at + run.uses


def _changed(chunk: list[Stitch], at: int, made: list[StandingColumns], *, wrong: bool) -> int:
    """Lay out neighbouring increases and decreases; those that cancel out leave the columns as they were."""
    uses, leaves = sum(each.uses for each in chunk), sum(each.leaves for each in chunk)
    if uses == leaves:
        eaten = [_look(each, wrong=wrong) for each in chunk if each.kind is Kind.DECREASE]
        # A yarn over has no look of its own: it belongs to the fabric of the decreases that make up for it.
        over = min(eaten, default="k")
        looks = "".join(
            (over if each.code.startswith("yo") else _look(each, wrong=wrong)) * each.leaves for each in chunk
        )
        made += [StandingColumns((at + place,), None, look=(look, "")) for place, look in enumerate(looks)]
        return at + uses
    for each in chunk:
        below = tuple(range(at, at + each.uses))
        if each.kind is Kind.DECREASE:
            made.append(
                StandingColumns(below, None if each.code == "dec" else (_look(each, wrong=wrong), ""))
            )
        else:
            purlwise = _look(each, wrong=wrong) if each.code.startswith(_PURLWISE) else ""
            made += [StandingColumns(below, None)] * each.uses
            made += [StandingColumns((), None, made=purlwise)] * each.change
        at += each.uses
    return at


def _look(entry: Stitch, *, wrong: bool) -> str:
    """Return what an increase or decrease looks like from the right side: `k` or `p`."""
    purl = entry.code.startswith(("p", "ssp", "sssp", "s2pp", *_PURLWISE))
    return "p" if purl != wrong else "k"


def as_seen(code: str, *, wrong: bool) -> str:
    """Return what a stitch looks like from the right side: its opposite if it is worked on the wrong side."""
    entry = STITCHES.get(code)
    return (entry.wrong_side or code) if wrong and entry is not None else code


def agrees(draft: DraftRound, cell: Cell) -> bool:
    """Return whether a row works every stitch, of those it works at all, as one cell does."""
    told = (
        run
        for run in flatten(draft.phrase)
        if stitch(run.stitch).kind in (Kind.PLAIN, Kind.CABLE) and run.stitch != "ds"
    )
    wrong = draft.side == "WS"
    return all(as_seen(run.stitch, wrong=wrong) == cell[0] for run in told)


def alike_all_along(drafts: Sequence[DraftRound]) -> Column | None:
    """Return the single column of rows that each work one stitch throughout; None if any does not."""
    cells: list[Cell] = []
    for draft in drafts:
        first, *more = draft.phrase
        if more or not isinstance(first, Run):
            return None
        if stitch(first.stitch).kind is not Kind.PLAIN:
            return None
        cells.append((as_seen(first.stitch, wrong=draft.side == "WS"), ""))
    return tuple(cells)


def fields(draft: DraftRound) -> list[int]:
    """Return the edges and markers after a row, from its first stitch on the right side."""
    marks = mirror_places(draft.markers, draft.after) if draft.side == "WS" else draft.markers
    return [0, *sorted(marks), draft.after]


def carry_columns(
    columns: Sequence[Column],
    draft: DraftRound,
    phase: int,
    held: Callable[[str], list[Column] | None],
    *,
    strictly: bool = False,
    noticed: Noticed | None = None,
) -> list[Column]:
    """Carry columns through a row.

    Args:
        columns: Before the row, from the first stitch of the right side; all with as many cells.
        draft: The row.
        phase: Which cell the row works.
        held: Returns the columns of held stitches by name, the cell that comes next first; None if they
            are not known.
        strictly: Whether to refuse a row that works a stitch in another way than its column.
        noticed: Takes down what the row does that is not the pattern's own.

    Raises:
        UnknownFabricError: the row breaks into the pattern, so that nobody can tell how it goes on.
    """
    row = lay_columns(draft)
    if any(below >= len(columns) for each in row for below in each.below):
        # A count that was put right in between: the file has a problem, and the row has other stitches.
        raise UnknownFabricError("the row has more stitches than the pattern before it")
    back = _returned(row, held)
    lengths = {len(column) for column in (*columns, *back) if len(column) > 1}
    if len(lengths) > 1:
        raise UnknownFabricError("stitches of two patterns are on the needles")
    period = lengths.pop() if lengths else 1
    shift = -phase % period
    edges = fields(draft)
    made: list[Column | None] = []
    for place, each in enumerate(row):
        if each.held:
            column = back.pop(0)
            column = column * (period // len(column))
            made.append(column[shift:] + column[:shift])
        elif not each.below:
            made.append(None)
        else:
            column = (
                columns[each.below[0]] if len(each.below) == 1 else _kept(columns, each, phase, place, edges)
            )
            if each.cell is not None and each.cell[0] != look_of(column[phase % len(column)][0]):
                near = not strictly and _near(place, edges)
                if noticed is not None and not near and not each.cell[0].startswith("sl"):
                    noticed.hidden |= len(each.below) > 1
                    noticed.other_stitches |= len(each.below) == 1
                if len(each.below) == 1:
                    column = _told(column, each.cell, near=near, strictly=strictly)
            made.append(column if len(column) == period else column * period)
    _add_alike(made, row, edges, phase)
    return keep_borders(columns, fill_columns(made, edges, period), draft)


def _add_alike(
    made: list[Column | None], row: Sequence[StandingColumns], edges: list[int], phase: int
) -> None:
    """Fill the new columns that look as those beside them: made purlwise, or between two that are alike."""
    known = list(made)
    last = list(accumulate((at if one is not None else -1 for at, one in enumerate(known)), max, initial=-1))
    behind = ((at if one is not None else len(known)) for at, one in reversed(list(enumerate(known))))
    next_ = list(accumulate(behind, min, initial=len(known)))[::-1]
    for place, each in enumerate(row):
        if each.below or each.held:
            continue
        low, high = _field_of(place, edges)
        before = known[last[place]] if last[place] >= low else None
        after = known[next_[place]] if next_[place] < high else None
        if each.made:
            beside = (one for one in (before, after) if one is not None)
            alike = (one for one in beside if look_of(one[phase % len(one)][0]) == each.made)
            made[place] = next(alike, None)
        elif before == after and not _near(place, edges):
            made[place] = before


def _returned(row: Sequence[StandingColumns], held: Callable[[str], list[Column] | None]) -> list[Column]:
    """Return the columns of the held stitches that a row brings back, in its order."""
    names = list(dict.fromkeys(each.held for each in row if each.held))
    back: list[Column] = []
    for name in names:
        kept = held(name)
        if kept is None or len(kept) != sum(each.held == name for each in row):
            raise UnknownFabricError(f"the pattern of the stitches held for {name} is not known")
        back += kept
    return back


def _inner_last(place: int, edges: list[int]) -> bool:
    """Return whether the edge or marker nearest to a place is the one before it."""
    before, after = _field_of(place, edges)
    return place - before <= after - 1 - place


def _field_of(place: int, edges: list[int]) -> tuple[int, int]:
    """Return the edges or markers between which a place lies."""
    at = bisect_right(edges, place)
    return edges[at - 1], edges[at]


def _near(place: int, edges: list[int]) -> bool:
    return any(-SELVEDGE <= place - edge < SELVEDGE for edge in edges)


def _kept(
    columns: Sequence[Column], each: StandingColumns, phase: int, place: int, edges: list[int]
) -> Column:
    """Return which of the columns that a stitch was worked from stays."""
    below = [columns[place] for place in each.below]
    if each.cell is not None:
        seen = [look_of(column[phase % len(column)][0]) for column in below]
        alike = [column for column, look in zip(below, seen, strict=True) if look == each.cell[0]]
        twisted = [column for column, look in zip(below, seen, strict=True) if look.startswith(each.cell[0])]
        below = alike or twisted or below
    return below[-1] if _inner_last(place, edges) else below[0]


def _told(column: Column, cell: Cell, *, near: bool, strictly: bool) -> Column:
    """Return the column after a stitch that was worked in another way than the column asks."""
    if cell[0].startswith("sl"):
        return column  # a slipped stitch says nothing about its column
    if near or (len(column) == 1 and not strictly):
        return (cell,) * len(column)
    raise UnknownFabricError("the rows since do not follow it")


def fill_columns(columns: Sequence[Column | None], edges: list[int], period: int) -> list[Column]:
    """Fill every new column from the repeat beside it, or else with stockinette.

    Args:
        columns: None for each new column.
        edges: Edges and markers between which columns belong together.
        period: Cells of a column.
    """
    made = list(columns)
    for low, high in pairwise(edges):
        middle = (low + high) / 2
        fresh = [place for place in range(low, high) if made[place] is None]
        told = [place for place in range(low, high) if made[place] is not None] or [high]
        for place in sorted(fresh, key=lambda place: abs(place + 0.5 - middle)):
            if place < middle:
                inwards = made[place + 1 : min(high, place + 1 + SEEN)]
            else:
                inwards = made[max(low, place - SEEN) : place][::-1]
            outermost = not told[0] < place < told[-1] or _near(place, [low, high])
            repeat = repeat_of(inwards) if outermost else first_repeat_of(inwards)
            made[place] = repeat[-1] if repeat else (KNIT,) * period
    return made  # type: ignore[return-value] # from the first edge to the last each is filled


def trace_columns(drafts: Sequence[DraftRound]) -> list[Column]:
    """Return the columns that rows made, each with one cell per row, first row first.

    Raises:
        UnknownFabricError: the rows hold lace or cables, or were not worked along the whole needle.
    """
    histories: list[dict[int, _Told]] = [{} for _ in range(drafts[0].before)]
    edges = [0, len(histories)]
    for number, draft in enumerate(drafts):
        if not (draft.before and draft.after):
            raise UnknownFabricError("it has not been worked once through")
        if len(drafts) > 1 and _is_lace(draft):
            raise LaceError("its stitches are increased and decreased in the pattern")
        edges = fields(draft)
        crossed = crossings(draft.phrase) if len(drafts) > 1 else {}
        made: list[dict[int, _Told]] = []
        row = lay_columns(draft)
        if any(below >= len(histories) for each in row for below in each.below):
            # A line between them was refused, and the count taken up again from a printed one.
            raise UnknownFabricError("it was not worked along the whole needle")
        for place, each in enumerate(row):
            if not each.below:
                made.append({number: ((each.made, ""), True)} if each.made else {})
                continue
            last = len(each.below) > 1 and _inner_last(place, edges)
            history = histories[each.below[-1 if last else 0]]
            cell = crossed.get(place) or each.cell or (each.look if len(drafts) == 1 else None)
            made.append({**history, number: (cell, len(each.below) == 1)})
        histories = made
    known = [_whole(history, len(drafts)) for history in histories]
    filled = fill_columns(known, edges, len(drafts))
    return [
        filled[place] if known[place] is not None else _agreeing(filled, place, histories[place])
        for place in range(len(filled))
    ]


def trace_with_borders(drafts: Sequence[DraftRound], period: int) -> list[Column]:
    """Return the columns that the last rows of a pattern made, one cell per row of it, first row first.

    Where the last row shapes within a garter edge, the edge is told by the rows before it.
    """
    *before, last = drafts
    if last.flat and last.before != last.after and len(before) >= period > 1:
        columns = trace_columns(before[-period:])
        kept = carry_columns(columns, last, 0, lambda _: None)
        if border_of(columns) and border_of(kept):
            return [(*column[1:], column[0]) for column in kept]
    return trace_columns(drafts[-period:])


def _agreeing(columns: Sequence[Column], place: int, told: dict[int, _Told]) -> Column:
    """Return the column for a new stitch: one beside it that is as rows since have worked it.

    In an edge of garter stitch the row back knits what was made inside it; stockinette would be purled.
    """
    sure = {number: cell for number, (cell, one) in told.items() if one and cell is not None}
    beside = sorted(range(len(columns)), key=lambda at: abs(at - place))[: 2 * SELVEDGE + 1]
    return next(
        (columns[at] for at in beside if all(columns[at][number] == cell for number, cell in sure.items())),
        columns[place],
    )


_Told = tuple[Cell | None, bool]
"""What a column was on a row, and whether a stitch was worked one into one there, which makes it certain."""


def _whole(history: dict[int, _Told], period: int) -> Column | None:
    """Return the column of a history; None if it is new or a decrease in it differs from its other rows."""
    cells = tuple(cell for cell, _ in history.values() if cell is not None)
    if len(cells) < period or (len(set(cells)) > 1 and not all(sure for _, sure in history.values())):
        return None
    return cells


def _is_lace(draft: DraftRound) -> bool:
    """Return whether a row both increases and decreases; or crosses stitches where nobody can tell which."""
    kinds = {stitch(code).kind for code in draft.codes}
    crosses = Kind.CABLE in kinds and (draft.side == "WS" or draft.before != draft.after)
    return kinds >= {Kind.INCREASE, Kind.DECREASE} or crosses


def period_of(columns: Sequence[Column]) -> int:
    """Return on how many rows the columns repeat; one where there are none."""
    return len(columns[0]) if columns else 1


def shortest(columns: Sequence[Column]) -> list[Column]:
    """Return the same columns with the fewest cells."""
    period = period_of(columns)
    for cells in range(1, period):
        if all(column == column[:cells] * (period // cells) for column in columns):
            return [column[:cells] for column in columns]
    return list(columns)
