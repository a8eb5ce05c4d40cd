"""The established fabric: what "even", "straight" and "in pattern" go on with. No I/O.

Theory of operation. A line that sets up a pattern leaves its rounds (`establish`). If nothing was shaped
since, they are worked again from where they stopped. After shaping, and for part of a row, the fabric is a
row of columns (`stepper.plan.fabric.columns`): read off the last rounds of the pattern and carried through
every row worked since, but only on request, since that is rare. Lines that go on "in pattern" set nothing up,
nor does a row that agrees with the columns, nor one that shapes; repeated rounds that shape give the columns
but not the shaping.

It is long because the columns are carried from one row to the next in one state, `Established`, which all of
these read and write.
"""

from __future__ import annotations

from dataclasses import replace

from stepper.craft.stitches import TURNS, stitch
from stepper.plan.drafts import DraftRound, Template, own_words_in, own_words_of
from stepper.plan.fabric.begun_charts import (
    asks_pattern,
    chart_parts_in,
    go_on_with_charts,
    rounds_of_cycle,
)
from stepper.plan.fabric.columns import (
    KNIT,
    LaceError,
    Noticed,
    UnknownFabricError,
    agrees,
    alike_all_along,
    as_seen,
    carry_columns,
    period_of,
    shortest,
    trace_columns,
    trace_with_borders,
)
from stepper.plan.fabric.openings import openings_of, with_openings_closed
from stepper.plan.fabric.own_fabric import goes_on_as_lace, hers, hers_after, in_own_words
from stepper.plan.fabric.rows_ahead import rows_ahead
from stepper.plan.fabric.shaped_edges import EdgeNotes, settle_edges
from stepper.plan.model import Group, Item, Run, flatten, runs_written
from stepper.plan.state.in_hand import Cell, Column, Established, HeldFabric
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.cable_cells import look_of
from stepper.project.problems import Span
from stepper.project.stitchwork import Across, Until

HINT = 'Name the fabric ("Work in k2, p2 rib for 5 cm", "Knit 5 rounds") or write the round out.'


def establish(cycle: tuple[Template, ...], needles: Needles, *, start: int) -> None:
    """Take up the rounds just worked as the pattern of the fabric, if they are one.

    Args:
        cycle: The rounds that were worked, once or repeatedly.
        needles: The knitting in hand.
        start: Index of the first draft worked of them.
    """
    needles.section.pattern = cycle
    if any(template.evenly is not None for template in cycle):
        return  # a round with a spread change is not a fabric; the one before it goes on
    worked, known = needles.drafts[start:], needles.established
    if not cycle or not worked or needles.counting.lost or not _sets_up(cycle, worked):
        return
    if any(_is_short(draft) for draft in worked[-len(cycle) :]):
        return
    if _goes_on(known, cycle, start, needles):
        known.end, known.since, known.shaped = len(needles.drafts), 0, False
        known.columns, known.why, known.phase, known.one_yarn_since = None, "", 0, 0
        return
    once = worked[: len(cycle)]
    named = needles.flat and any(template.stockinette for template in cycle)  # by its name, not row by row
    shapes = once[0].before != once[-1].after
    own = own_words_in(cycle)
    if own:
        needles.established = in_own_words(cycle, own, start, worked)
        return
    if len(worked) == 1 and (shapes or _is_single(worked[0]) or (_agrees(known, needles) and not named)):
        return
    if shapes and len(cycle) == 1:
        return
    if len(worked) == 1 and not named:
        column = _faced_before(known, needles)
        if column is not None:
            _go_on_faced(column, needles)
            return
    needles.established = Established(
        cycle=() if shapes else cycle, rounds=len(cycle), start=start, end=len(needles.drafts)
    )


def as_it_looks(pattern: tuple[Template, ...], needles: Needles, place: Span) -> tuple[Template, ...]:
    """Return what "in pattern" goes on with: in rows, one written row goes on as it looks from each side.

    A row knitted throughout makes garter stitch, and is knitted on both sides.
    """
    only = pattern[0]
    if len(pattern) > 1 or not needles.flat or only.chart or only.stockinette or only.own is not None:
        return pattern
    if all(isinstance(element, Until) and element.stitch == "k" for element in only.elements):
        return pattern
    return (Template((Until("pattern", "end", None, None, place),), place),)


def _sets_up(cycle: tuple[Template, ...], worked: list[DraftRound]) -> bool:
    """Return whether rounds set up a pattern themselves, rather than going on with one or shaping within it.

    Rows of lace with "work in pattern" on the wrong side between are told by the others.
    """
    asking = [template for template in cycle if asks_pattern(template.elements)]
    if not asking:
        return True
    once = worked[: len(cycle)]
    shaped = any(draft.template in asking and draft.shapes for draft in once)
    return len(asking) < len(cycle) <= len(worked) and not shaped and once[0].before == once[-1].after


def _goes_on(known: Established, cycle: tuple[Template, ...], start: int, needles: Needles) -> bool:
    """Return whether rounds of the pattern were worked once more, in its order from where it stood.

    A round between them that goes on in the pattern and changes nothing, as one that hangs in a marker, is
    one of its rounds.
    """
    if any(each not in known.cycle for each in cycle):
        return False
    if known.end != start and (known.shaped or known.reached != start):
        return False
    begin, rounds = start - known.start, len(known.cycle)
    return all(
        draft.template == known.cycle[(begin + at) % rounds]
        for at, draft in enumerate(needles.drafts[start:])
    )


def _faced_before(known: Established, needles: Needles) -> Column | None:
    """Return the column of a row that alone would make garter stitch, if the rows before it say otherwise.

    Short rows set up no fabric, nor does a row that shapes; those purled on the wrong side still say that a
    knit row between them is one of stockinette.
    """
    last = needles.drafts[-1]
    alike = alike_all_along([last]) if last.flat else None
    if alike is None or last.codes != {"k"}:
        return None
    cell, since = alike[0], needles.drafts[known.end : -1]
    for draft in reversed(since):
        if not draft.flat or not draft.before or draft.words or not agrees(draft, cell):
            return None
        if draft.side != last.side and draft.codes & {"k", "p"}:
            return (cell,)
    return None


def _go_on_faced(column: Column, needles: Needles) -> None:
    """Take up a fabric that is the same column all along, as the rows before show it; what ends is told."""
    known, here = needles.established, len(needles.drafts)
    doubt = ""
    if known.end > known.start:
        line = needles.drafts[known.end].line
        doubt = f"the fabric of the rows from line {line} goes on, and not the one before them."
    needles.established = Established(
        start=here - 1, end=here, reached=here, columns=[column] * needles.count, doubt=doubt
    )


def _is_single(draft: DraftRound) -> bool:
    """Return whether a row is a buttonhole row or the like, whose changes do not form a repeat across it."""
    changed = [item for item in draft.phrase if _changes(item)]
    fills = any(isinstance(item, Group) and 2 * item.uses >= draft.before for item in changed)
    return bool(changed) and (not fills or "buttonhole" in (draft.label or "").lower())


def _is_short(draft: DraftRound) -> bool:
    """Return whether a row was not worked from end to end."""
    return draft.from_turn or any(
        isinstance(item, Run) and (item.stitch == "rest" or item.stitch in TURNS) for item in draft.phrase
    )


def _changes(item: Item) -> bool:
    return any(stitch(run.stitch).shapes for run in runs_written((item,)))


def _agrees(known: Established, needles: Needles) -> bool:
    """Return whether the row just worked is what the fabric has there anyway."""
    if not known.cycle and not any("return" in draft.codes for draft in needles.drafts[known.start :][:1]):
        return False
    if (known.cycle and known.cycle[0].chart) or not (needles.drafts[-1].flat or known.rounds > 1):
        return False  # in the round, one row repeated is the same fabric whichever line it comes from
    _carry(known, needles, end=len(needles.drafts) - 1)
    if not known.columns:
        return False
    columns, phase = list(known.columns), known.phase % period_of(known.columns)
    try:
        for_each = carry_columns(columns, needles.drafts[-1], phase, lambda _: None, strictly=True)
    except UnknownFabricError:
        return False
    return for_each == columns


# --- the columns --------------------------------------------------------------------------------------


def _tell(known: Established, needles: Needles) -> None:
    """Read the columns off the last rounds of the pattern."""
    drafts = needles.drafts[known.start : known.end]
    if known.hers:
        known.columns = hers(drafts[-1].after if drafts else needles.count)
        return
    flat, alone = drafts[-1].flat, known.rounds == 1 and len(drafts) == 1
    rounds = max(known.rounds, rounds_of_cycle(known.cycle, needles))
    period = rounds * (2 if flat and rounds % 2 and not alone else 1)
    begun = bool(go_on_with_charts(known.cycle, needles))
    if begun or len(drafts) < period:
        ahead = rows_ahead(known, needles)
        if ahead:
            drafts, period, begun, alone = ahead, len(ahead), False, False
    if begun:
        known.why = "its chart is not worked once through"
        return
    if len(drafts) < period:
        known.why = "it was not worked once through before it was shaped"
        return
    try:
        one = alike_all_along(drafts[-period:])
        columns = [one] * drafts[-1].after if one is not None else trace_with_borders(drafts, period)
    except UnknownFabricError as unknown:
        if isinstance(unknown, LaceError) and goes_on_as_lace(known, drafts):
            known.hers, known.lace, known.columns = True, drafts[0].line, hers(drafts[-1].after)
        else:
            known.why = str(unknown)
        return
    plain = alone and flat and not known.cycle[0].stockinette
    side = "k" if drafts[-1].side == "RS" else "p"
    if plain and {column[0][0] for column in columns} == {side}:
        other: Cell = ("p" if side == "k" else "k", "")
        columns = [(other, column[0]) for column in columns]  # a row knitted throughout makes garter stitch
    known.columns = shortest(columns)


def _carry(known: Established, needles: Needles, *, end: int | None = None) -> None:
    """Carry the columns through the rows worked since the last request, up to a given draft or the last."""
    if known.columns is None and not known.why:
        _tell(known, needles)
    known.reached = max(known.reached, known.end)
    end = len(needles.drafts) if end is None else end
    for number in range(known.reached, end):
        _through(known, number, needles)
    known.reached = max(known.reached, end)


def _through(known: Established, number: int, needles: Needles) -> None:
    """Carry the columns through one row."""
    draft = needles.drafts[number]
    openings, known.openings = known.openings, ()
    known.since += 1
    if number > known.end and needles.drafts[number - 1] is draft:
        known.phase += 1  # one draft stands for identical rounds that change nothing
        return
    changes = draft.before != draft.after or draft.shapes
    if changes or _is_short(draft):
        known.shaped, known.spread = True, draft.evenly
    if known.columns is None and not _closes_heel(draft):
        return
    try:
        if known.columns is None:
            known.columns, known.why, known.phase = _with_instep(draft, number, needles), "", 0
        elif known.hers:
            known.columns = hers_after(draft, known)
        else:
            met = _as_many(known.columns, draft.before)
            made = _after(met, draft, known.phase % period_of(met), number, needles)
            known.columns = with_openings_closed(draft, made, openings)
            known.openings = openings_of(draft, met)
    except UnknownFabricError as unknown:
        known.columns, known.why = None, str(unknown)
    known.phase += 1 if draft.before else 0


def _closes_heel(draft: DraftRound) -> bool:
    """Return whether a round knits a turned heel, takes up stitches beside it and takes the instep back."""
    if not {"pu", "return"} <= draft.codes or _is_short(draft) or draft.words:
        return False
    runs = tuple(flatten(draft.phrase))
    back = [run.yarn for run in runs if run.stitch == "return"]
    return back == ["instep"] and all(run.stitch in ("k", "pu", "return", "sm", "pm") for run in runs)


def _with_instep(draft: DraftRound, number: int, needles: Needles) -> list[Column]:
    """Return the columns behind a round that closes a heel, whatever its flap was worked in.

    The instep goes on in its pattern; the knitted heel and what was picked up are the sole, in stockinette
    (common practice).

    Raises:
        UnknownFabricError: the instep's cannot be told.
    """
    made: list[Column] = []
    for run in flatten(draft.phrase):
        back = _kept(run.yarn, number, needles) if run.stitch == "return" else None
        if run.stitch == "return" and (back is None or len(back) != run.leaves):
            raise UnknownFabricError("the pattern of the stitches held for the instep is not known")
        made += back or [(KNIT,)] * run.leaves
    period = max(map(len, made))
    return [column if len(column) == period else column * period for column in made]


def _after(
    columns: list[Column], draft: DraftRound, phase: int, number: int, needles: Needles
) -> list[Column]:
    """Return the columns after a row, whose draft has the given index."""
    if draft.words:
        raise UnknownFabricError(own_words_of(draft.line))
    period, changed = period_of(columns), draft.before != draft.after
    if draft.evenly:
        if len(set(columns)) > 1 and changed:
            spread = draft.template.evenly if draft.template is not None else None
            # "Knit 1 round, increasing 16 sts evenly" ends the pattern as a plain round does.
            needles.established.plain_since = draft.line if spread is not None and spread.stitch == "k" else 0
            raise UnknownFabricError("a change was spread over it")
        return columns[:1] * draft.after if changed else columns
    if draft.from_turn and changed:
        raise UnknownFabricError("short rows in the round changed its stitches")
    if period > 1 and _is_short(draft):
        raise UnknownFabricError("some rows were not worked to their end")
    plain = len(set(columns)) == 1 and not draft.from_turn and agrees(draft, columns[0][phase])
    if plain and not _brings_another(columns[0], draft, number, needles):
        return columns[:1] * draft.after
    if draft.from_turn:
        return columns
    noticed = Noticed()
    made = carry_columns(columns, draft, phase, lambda name: _kept(name, number, needles), noticed=noticed)
    notes = EdgeNotes()
    made = settle_edges(columns, made, draft, phase, notes)
    needles.established.doubt = notes.told(draft.line) or needles.established.doubt
    own = draft.template is not None and asks_pattern(draft.template.elements)
    shapes = changed or draft.shapes
    if shapes and not own:
        _take_down(noticed, made, draft, needles.established)
    return made


def _brings_another(column: Column, draft: DraftRound, number: int, needles: Needles) -> bool:
    """Return whether a row takes back stitches in their pattern, which is another than that on the needle."""
    elements = draft.template.elements if draft.template is not None else ()
    if not any(isinstance(one, Across) and one.stitch == "pattern" for one in elements):
        return False
    names = {run.yarn for run in flatten(draft.phrase) if run.stitch == "return"}
    came = [columns for name in names if (columns := _kept(name, number, needles)) is not None]
    return any(set(other) != set(column) for columns in came for other in columns)


def _take_down(noticed: Noticed, made: list[Column], draft: DraftRound, known: Established) -> None:
    """Keep what a row that shapes leaves open about the pattern.

    Raises:
        UnknownFabricError: it works stitches in another way than the pattern has them, and so says nothing of
            how that goes on.
    """
    if noticed.other_stitches:
        known.plain_since = draft.line if set(made) == {(KNIT,)} else 0
        raise UnknownFabricError(f"line {draft.line} shapes it in other stitches than the pattern has there")
    if noticed.hidden:
        known.doubt = (
            f"the decreases of line {draft.line} are taken as worked into the stitches of the pattern, which "
            'goes on beside them as it was. Name the fabric if it is another ("Knit 5 rounds").'
        )


def row_due(needles: Needles) -> int:
    """Return which row of the fabric's cycle comes next, from 0."""
    known = needles.established
    _carry(known, needles)
    return (known.end - known.start + known.since) % max(1, len(known.cycle))


def row_due_is_known(needles: Needles) -> bool:
    """Return whether the fabric still goes on, so that its next row is known."""
    _carry(needles.established, needles)
    return needles.established.columns is not None


def columns_of(needles: Needles) -> tuple[list[Column], int]:
    """Return the columns on the needles, from the right side, and which cell of each comes next.

    Raises:
        UnknownFabricError: they cannot be worked out.
    """
    known = needles.established
    _carry(known, needles)
    if known.one_yarn_since and not _charted(known):
        raise UnknownFabricError(_said_in_one(known))
    if known.columns is None:
        if _comes_back(known, needles):
            return trace_columns(needles.drafts[-1:]), 0
        raise UnknownFabricError(known.why)
    columns = _as_many(known.columns, needles.count)
    return columns, known.phase % period_of(columns)


def _comes_back(known: Established, needles: Needles) -> bool:
    """Return whether the row that comes next is one of the pattern that is worked as the row before looks."""
    if needles.drafts[-1].template not in known.cycle:
        return False
    following = known.cycle[(len(needles.drafts) - known.start) % len(known.cycle)]
    return asks_pattern(following.elements) and needles.drafts[-1].after == needles.count


def _as_many(columns: list[Column], count: int) -> list[Column]:
    """Return a given number of columns: a printed count may have been accepted that differs from the rows."""
    if len(columns) == count:
        return columns
    return [*columns, *[(KNIT,) * period_of(columns)] * count][:count]


def look(needles: Needles) -> tuple[Cell, ...]:
    """Return how the stitches are worked to go on in pattern, from where the next row begins.

    Each is a stitch, as worked on the next side, and a yarn, or none for the current one.

    Raises:
        UnknownFabricError: the pattern cannot be worked out.
    """
    try:
        columns, phase = columns_of(needles)
        plain = _plain_row_due(needles) if needles.established.lace else ""
    except UnknownFabricError:
        plain = _plain_row_due(needles)
        if not plain:
            raise
    if plain:
        return ((plain, ""),) * needles.count
    wrong = needles.wrong
    facing = needles.facing
    met = [column[phase] for column in (reversed(columns) if wrong else columns)]
    seen = {
        cell: (as_seen(look_of(cell[0]) if wrong else cell[0], wrong=wrong), cell[1]) for cell in set(met)
    }
    cells = [seen[cell] for cell in met]
    start = facing.count - facing.end if facing.around else facing.lead
    return (*cells[start:], *cells[:start])


def _plain_row_due(needles: Needles) -> str:
    """Return the stitch of the row of the pattern that comes next, in rows, if it works one throughout.

    Of lace nobody can tell the columns, but "cast off 9 sts at beg of next 2 rows" falls on its plain rows.

    Returns:
        `k` or `p`, as worked on the side of the row; empty where the row is another, or not known.
    """
    known, since = needles.established, needles.drafts[needles.established.end :]
    rows = needles.drafts[known.start : known.end][: len(known.cycle)]
    own = all(draft.template is not None and asks_pattern(draft.template.elements) for draft in since)
    if not needles.flat or known.own or not rows or len(rows) < len(known.cycle) or not own:
        return ""
    if needles.short_rows.gap is not None or any(_is_short(draft) or draft.evenly for draft in since):
        return ""
    due = rows[(known.end - known.start + len(since)) % len(known.cycle)]
    runs = runs_written(due.phrase)
    only = {run.stitch for run in runs}
    return only.pop() if due.side == needles.side and only in ({"k"}, {"p"}) and not due.words else ""


def keep_held(phrase: tuple[Item, ...], needles: Needles) -> None:
    """Keep, for when they come back, the fabric of the stitches that the next row puts on hold."""
    known, at = needles.established, 0
    for run in flatten(phrase):
        if run.stitch == "hold":
            places = range(at, at + run.times)
            held = (
                tuple(needles.count - 1 - place for place in reversed(places))
                if needles.side == "WS"
                else tuple(places)
            )
            now = replace(known)
            here = HeldFabric(established=now, row=len(needles.drafts), places=held)
            needles.kept[run.yarn] = (*needles.kept.get(run.yarn, ()), here)
        at += run.uses


def _kept(name: str, number: int, needles: Needles) -> list[Column] | None:
    """Return the columns of stitches that were on hold by a name when the row of the given index took them
    back.

    Another part may have gone on hold by the same name since.

    Returns:
        The columns, the cell that comes next first; None if they are not known.
    """
    kept = next((one for one in reversed(needles.kept.get(name, ())) if one.row < number), None)
    if kept is None:
        return None
    known = replace(kept.established)
    if known.hers:
        return None  # which row comes next belongs to the piece that went on
    _carry(known, needles, end=kept.row)
    if not known.columns or len(known.columns) <= max(kept.places):
        return None
    phase = known.phase % period_of(known.columns)
    return [known.columns[place][phase:] + known.columns[place][:phase] for place in kept.places]


def ground(needles: Needles) -> str:
    """Say what the fabric is: `plain` (stockinette), `garter` (rows each of one stitch) or `pattern`;
    `unknown` behind a row in own words.

    Empty if nothing is established or it cannot be worked out.
    """
    if needles.counting.lost:
        return ""
    if needles.established.own:
        return "unknown"
    try:
        columns, _ = columns_of(needles)
    except UnknownFabricError:
        return ""
    if len(set(columns)) != 1:
        return "pattern" if columns else ""
    return "plain" if columns[0] == (KNIT,) else "garter" if len(columns[0]) > 1 else "pattern"


def pattern_stands(needles: Needles) -> bool:
    """Return whether anything was set up that "patt 10" may go on with.

    A bare cast-on is none, nor are rows of which is only said that they are knitted ("Knit 4 rows"). Behind a
    line that was not read it may have stood in that line.
    """
    if needles.section.shaky:
        return True
    here = [line for line in needles.project.lines if line.place.line == needles.here.line]
    if not any("patt" in line.text.lower() for line in here):
        return True  # the page says only what is done at the ends of the row
    known = needles.established
    if known.end > known.start or known.cycle or known.why or known.own:
        return known.name != "k" or ground(needles) != "garter"
    return any(set(column) != {KNIT} for column in known.columns or ())


def goes_on_from_before(place: Span, needles: Needles) -> bool:
    """Return whether the fabric of the section before goes on, or that of stitches just taken back.

    A heading between two sections changes no stitch, nor does a holder. What goes on is told, unless it is
    stockinette.
    """
    last = needles.drafts[-1] if needles.drafts else None
    if last is None:
        return False
    back = "return" in last.codes
    known = ground(needles) if back or last.section != needles.section.name else ""
    if known in ("pattern", "garter"):
        needles.warn(place, f"the pattern of {'the held stitches' if back else last.section} goes on.")
    return known in ("plain", "pattern", "garter")


def spread_since(needles: Needles) -> bool:
    """Return whether a change has since been spread over the fabric, so that it can only start over."""
    known = needles.established
    _carry(known, needles)
    return known.spread or (known.columns is None and bool(known.why))


def stands_in_its_rounds(needles: Needles) -> bool:
    """Return whether the rounds of the established fabric can be counted on: nothing was shaped since."""
    known = needles.established
    _carry(known, needles)
    return bool(known.cycle) and not known.shaped


# --- going on -----------------------------------------------------------------------------------------


def tell_doubt(needles: Needles, place: Span) -> None:
    """Tell the knitter what was assumed of the pattern that a line goes on with."""
    known = needles.established
    if known.doubt:
        needles.warn(place, known.doubt)
        known.doubt = ""


def even(needles: Needles, place: Span, *, straight: bool = True) -> tuple[tuple[Template, ...], int] | None:
    """Return the rounds that go on without shaping, and which is next; None, reported, if there are none.

    Args:
        needles: The knitting in hand.
        place: Where the line says so.
        straight: Whether it only says that nothing is shaped, and not that a pattern goes on.
    """
    known = needles.established
    _carry(known, needles)
    tell_doubt(needles, place)
    if known.one_yarn_since and (straight or not _charted(known)):
        return _in_one_yarn(known, needles, place, straight=straight)
    if known.lace and _is_faced_otherwise(known, needles):
        ways = ("rounds", "rows") if needles.flat else ("rows", "rounds")
        told = "the lace was worked in {}, and goes on in {} here: every other one would be wrong."
        needles.report(place, told.format(*ways), "Write its rows out as they are worked here.")
        needles.lose()
        return None
    begun = go_on_with_charts(known.cycle, needles)
    if begun and not known.shaped and not known.since and not (needles.flat and len(begun) % 2):
        return begun, 0
    if known.cycle and not known.shaped and not begun and not _turns_over(known, needles):
        return known.cycle, row_due(needles)
    if known.columns is not None:
        if set(known.columns) == {(KNIT,)}:
            return (Template((), place, stockinette=True),), 0
        looks = Template((Until("pattern", "end", None, None, place),), place)
        return (looks,) * period_of(known.columns), 0
    if known.plain_since and straight:
        told = f"line {known.plain_since} was knitted plain over the pattern before it: stockinette goes on."
        needles.warn(place, told)
        return (Template((), place, stockinette=True),), 0
    if known.spread and known.cycle:
        first = _first_on_side(known, needles)
        row = f", with its row {first + 1}, the next of a {needles.side} side" if first else ""
        told = f"the pattern begins anew on the {needles.count} stitches of the change before{row}."
        needles.warn(place, told)
        return known.cycle, first
    needles.report(place, f"nobody can tell how the pattern goes on here: {known.why}.", HINT)
    needles.lose()
    return None


def _charted(known: Established) -> bool:
    """Return whether the pattern is from charts, which change their yarns on the way."""
    return any(template.chart or chart_parts_in(template.elements) for template in known.cycle)


def _turns_over(known: Established, needles: Needles) -> bool:
    """Return whether rows written to be worked back and forth go on in the round, or rounds in rows.

    Every other one would show its other face; the columns know how they look.
    """
    own = known.own or known.hers or _charted(known) or known.cycle[0].stockinette
    return not own and _is_faced_otherwise(known, needles)


def _is_faced_otherwise(known: Established, needles: Needles) -> bool:
    """Return whether the pattern was worked back and forth and the work goes round now, or the other way."""
    before = needles.drafts[known.start : known.end]
    return bool(before) and before[-1].flat != needles.flat and not any(map(_is_short, before))


def _said_in_one(known: Established) -> str:
    return f"line {known.one_yarn_since} names a yarn behind a pattern in two"


def _in_one_yarn(
    known: Established, needles: Needles, place: Span, *, straight: bool
) -> tuple[tuple[Template, ...], int] | None:
    """Return what goes on where a line took one yarn behind a pattern in two: stockinette, if it was that."""
    said = _said_in_one(known)
    if straight and all(agrees(draft, KNIT) for draft in needles.drafts[known.start : known.end]):
        needles.warn(place, f"{said}: it ends there, and stockinette goes on in one.")
        return (Template((), place, stockinette=True),), 0
    needles.report(place, f"{said}, so nobody can tell whether that goes on.", HINT)
    needles.lose()
    return None


def _first_on_side(known: Established, needles: Needles) -> int:
    """Return the row with which a pattern in rows begins anew: its first, or the one due on the other side.

    Behind a change in a right-side row comes a wrong-side row of the pattern, not its first on that side.
    """
    rows, began = len(known.cycle), needles.drafts[known.start]
    if not needles.flat or not began.flat or rows % 2 or began.side == needles.side:
        return 0
    due = (len(needles.drafts) - known.start) % rows
    return due if due % 2 else 1
