"""Lay buttonholes into rows that were just worked: "rib 7 rows, making 7 buttonholes in row 4". No I/O.

The rows are worked first as if there were none, so that their fabric, and whatever is worked on it later,
goes on beside them; then each row that has buttonholes keeps beside it what it becomes
(`DraftRound.opened`), and `plan/finish` takes that. They lie where the line says, or by the spacing of
`craft/buttonholes`, which is told with the row. One that is bound off is cast on again in the next row.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import pairwise
from typing import Final, NamedTuple

from stepper.craft.buttonholes import USUAL_ENDS, space_buttonholes
from stepper.craft.rows import row_word
from stepper.craft.stitches import stitch
from stepper.plan.drafts import DraftRound, Opened
from stepper.plan.lines.again.repeated_rounds import are_same_rounds, repeated_cycle
from stepper.plan.lines.rounds import work_template
from stepper.plan.model import Item, Run, flatten
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.phrase import work_phrase
from stepper.plan.stitches.row_elements import MisfitError
from stepper.plan.stitches.run_repeats import condense, join_runs
from stepper.project.instructions import Buttonholes
from stepper.project.problems import Span
from stepper.project.stitchwork import Element, Several, Until, Work, every_element

_ROWS: Final = 'Write the rows out, as "K4, *yo, k2tog, k8; rep from * 3 times more, k to end."'
_HOW: Final = 'Say how each is made: "…, making 5 buttonholes in row 4 by yo, k2tog", "… by bind off 2".'
_AS_SET: Final = "own"
"""Stands for a stitch of the row as it comes."""


class _Hole(NamedTuple):
    """One buttonhole of a row."""

    at: int
    """Stitches of the row before it, in working order."""
    uses: int
    """Stitches of the row that it takes."""
    runs: tuple[tuple[str, int], ...]
    """What is worked there: a stitch and how often."""

    @property
    def closed(self) -> int:
        """Stitches that it binds off, to be cast on again; 0 for an eyelet."""
        return sum(times for code, times in self.runs if code == "bo")


def lay_buttonholes(instruction: Buttonholes, needles: Needles) -> None:
    """Lay buttonholes into the rows that the line worked before this sentence."""
    if needles.counting.lost:
        return
    if instruction.more:
        _work_another(instruction, needles)
        return
    if instruction.none:
        _refuse_written_out(instruction, needles)
        return
    if needles.last.unholed:
        return
    begin = needles.line.start - _rows_before(instruction, needles)
    while begin < len(needles.drafts) and not needles.drafts[begin].before:
        begin += 1
    try:
        made = _as_before(instruction, needles) if not instruction.made else instruction
        for index in _rows(made, begin, needles):
            _lay(made, index, needles)
    except MisfitError as misfit:
        needles.report(misfit.place, misfit.message, misfit.hint)
        needles.lose()
        return
    needles.last.buttonholes = made


def _rows_before(instruction: Buttonholes, needles: Needles) -> int:
    """Return how many rows were worked before the line that repeats them, and count among those it speaks of.

    "Rep these 2 rows 17 times more, making a buttonhole on the 11th row" counts from the first of 36.
    """
    if instruction.again is None:
        return 0
    cycle = repeated_cycle(instruction.again, needles)
    begin = needles.line.start - len(cycle)
    found = [draft.template for draft in needles.drafts[max(0, begin) : needles.line.start]]
    if not cycle or not are_same_rounds(found, cycle):
        return 0
    told = "the rows of the buttonholes are counted from the first of those that are repeated."
    needles.warn(instruction.place, told)
    return len(cycle)


def _as_before(instruction: Buttonholes, needles: Needles) -> Buttonholes:
    """Return buttonholes made as those before: laid into rows, or in a row of their own.

    Raises:
        MisfitError: there were none, or the words may mean several things.
    """
    known = needles.last.buttonholes
    if known is not None and instruction.number is not None and known.number is not None:
        return replace(instruction, made=known.made, ends=instruction.ends or known.ends)
    if known is not None and known.number is None:
        return replace(instruction, made=known.made, number=None)
    index = _last_holed(needles)
    if index < 0:
        raise MisfitError(instruction.place, "the line does not say how a buttonhole is made.", _HOW)
    before = needles.drafts[index]
    template = before.template
    assert template is not None
    many = instruction.number is not None and instruction.number.of(needles.size) > 1
    if many or len(instruction.rows) > 2:
        raise MisfitError(instruction.place, "where the buttonholes lie is not said.", _ROWS)
    row = needles.line.start + min(instruction.rows, default=1) - 1
    if row < len(needles.drafts) and needles.drafts[row].flat and needles.drafts[row].side != before.side:
        told = f"the buttonhole before lies in a {before.side} row, and this one would not."
        raise MisfitError(instruction.place, told, _ROWS)
    return replace(instruction, made=template.elements, number=None)


def _last_holed(needles: Needles) -> int:
    """Return the draft of the last row that is written out with a buttonhole; -1 for none."""
    for index in range(len(needles.drafts) - 1, -1, -1):
        draft = needles.drafts[index]
        if draft.template is None or not draft.template.elements or not draft.before or not draft.after:
            continue
        named = "buttonhole" in (draft.label or "").lower()
        closed = index + 1 < len(needles.drafts) and "co" in needles.drafts[index + 1].codes
        if (named and draft.shapes) or ("bo" in draft.codes and closed):
            return index
    return -1


def _refuse_written_out(instruction: Buttonholes, needles: Needles) -> None:
    """Report a part worked again without its buttonholes whose rows are written out with them."""
    needles.last.unholed = False
    if any(draft.before and _makes_holes(draft) for draft in needles.drafts[needles.line.start :]):
        told = "buttonholes are written out in the rows worked again, and cannot be left out of them."
        needles.miss(instruction.place, told, "Write the rows out, without them.")


def _makes_holes(draft: DraftRound) -> bool:
    """Return whether a row as written makes an eyelet, or binds off stitches within it."""
    named = "buttonhole" in (draft.label or "").lower()
    return named or "yo" in draft.codes or ("bo" in draft.codes and draft.after > 0)


def _work_another(instruction: Buttonholes, needles: Needles) -> None:
    """Work the row or the two rows of the last buttonhole once more."""
    index = _last_holed(needles)
    if index < 0:
        needles.miss(instruction.place, "no buttonhole was worked before this one.", _HOW)
        return
    rows = needles.drafts[index : index + (2 if "bo" in needles.drafts[index].codes else 1)]
    if rows[0].flat and rows[0].side != needles.side:
        told = f"the buttonhole before lies in a {rows[0].side} row, and a row of the other side comes next."
        needles.miss(instruction.place, told, _ROWS)
        return
    for row in rows:
        if row.template is not None:
            needles.section.label = row.label
            work_template(row.template, needles)


def _rows(instruction: Buttonholes, begin: int, needles: Needles) -> list[int]:
    """Return which drafts the buttonholes lie in.

    Raises:
        MisfitError: the line did not work such rows.
    """
    place, worked = instruction.place, len(needles.drafts) - begin
    if not instruction.rows:
        if worked != 1:
            told = f"the line works {worked} rows, and does not say in which of them the buttonholes lie."
            raise MisfitError(place, told, 'Write "…, making 5 buttonholes in row 4".')
        return [begin]
    rows = list(instruction.rows)
    if instruction.every:
        often = instruction.times.of(needles.size) if instruction.times is not None else 0
        last = rows[0] + (often - 1) * instruction.every if often else worked
        rows = list(range(rows[0], last + 1, instruction.every))
    if any(isinstance(one, Work) and one.stitch == "bo" for one in every_element(instruction.made)):
        rows = [row for row in rows if row - 1 not in rows]  # the second of two closes it
    if not rows or max(rows) > worked or min(rows) < 1:
        told = f"the line works {worked} rows, and there is no row {max(rows, default=1)} to lie in."
        raise MisfitError(place, told, "Count the rows that are worked beside them.")
    return [begin + row - 1 for row in rows]


def _lay(instruction: Buttonholes, index: int, needles: Needles) -> None:
    """Lay the buttonholes of one row, and what closes them in the next.

    Raises:
        MisfitError: they do not fit there.
    """
    draft, place = needles.drafts[index], instruction.place
    if draft.opened is not None or draft.template is None:
        raise MisfitError(place, "the row has buttonholes already, or nobody knows its stitches.", _ROWS)
    written_out = any(not isinstance(one, Work) for one in instruction.made)
    spread = instruction.number is not None and not written_out
    holes = _spread(instruction, draft, needles) if spread else _told(instruction, draft, needles)
    closed = sum(hole.closed for hole in holes)
    if closed and (draft.markers or index + 1 >= len(needles.drafts)):
        told = "markers hang in the row" if draft.markers else "the line works no row behind it"
        told += ", and the stitches of its buttonholes are cast on again in the next."
        raise MisfitError(place, told, _ROWS)
    phrase = _with_holes(draft, holes, place)
    told = _remark(instruction, draft, holes, needles)
    opened = Opened(phrase=phrase, before=draft.before, after=draft.after - closed, remark=told)
    needles.drafts[index] = replace(draft, opened=opened)
    if closed:
        _close(holes, index + 1, needles, place)
    needles.stretches[:] = [
        each for each in needles.stretches if not each.first <= index + bool(closed) or index > each.last
    ]


def _close(holes: Sequence[_Hole], index: int, needles: Needles, place: Span) -> None:
    """Cast on again over the stitches that the row before bound off."""
    draft = needles.drafts[index]
    if draft.opened is not None or draft.template is None or draft.flat != needles.drafts[index - 1].flat:
        raise MisfitError(place, "the row that casts on again is worked otherwise.", _ROWS)
    before = draft.before
    places = [(before - hole.at - hole.uses if draft.flat else hole.at, hole) for hole in holes]
    again = sorted(_Hole(at, hole.uses, (("co", hole.uses),)) for at, hole in places)
    phrase = _with_holes(draft, again, place)
    number = again[0].uses
    told = f"cast on {_stitches(number)} over {'each' if len(again) > 1 else 'the'} gap"
    closed = sum(hole.uses for hole in again)
    opened = Opened(phrase=phrase, before=before - closed, after=draft.after, remark=told, closes=True)
    needles.drafts[index] = replace(draft, opened=opened)


def _spread(instruction: Buttonholes, draft: DraftRound, needles: Needles) -> list[_Hole]:
    """Return buttonholes spread evenly over a row."""
    number = instruction.number.of(needles.size) if instruction.number is not None else 0
    uses, runs = _hole(instruction, draft, needles)
    ends = instruction.ends.of(needles.size) if instruction.ends is not None else USUAL_ENDS
    if number == 1 and instruction.ends is None:
        raise MisfitError(
            instruction.place, "the line does not say where the buttonhole lies.",
            'Write its row to it: "… by k3, yo, k2tog, k to end".',
        )
    try:
        places = space_buttonholes(draft.before, number, uses, ends) if number > 1 else (ends,)
    except ValueError as unfit:
        raise MisfitError(instruction.place, f"{unfit}", _ROWS) from unfit
    if instruction.ends is None:
        told = "how far from the ends the first and last buttonhole lie is not said"
        needles.warn(instruction.place, f"{told}: {USUAL_ENDS} stitches, as is usual.")
    return [_Hole(at, uses, runs) for at in places]


def _hole(
    instruction: Buttonholes, draft: DraftRound, needles: Needles
) -> tuple[int, tuple[tuple[str, int], ...]]:
    """Return how many stitches one buttonhole takes, and what is worked there.

    Raises:
        MisfitError: it is not made of stitches that leave as many as they take, or that are bound off.
    """
    runs = []
    for element in instruction.made:
        if not isinstance(element, Work):
            told = "how a buttonhole is made is not read from these words."
            raise MisfitError(instruction.place, told, _HOW)
        runs.append((element.stitch, element.times.of(needles.size)))
    uses = sum(times * stitch(code).uses for code, times in runs)
    leaves = sum(times * stitch(code).leaves for code, times in runs)
    bound = all(code == "bo" for code, _ in runs)
    plain = [code for code, _ in (*runs[:1], *runs[-1:]) if code in ("k", "p")]
    if plain:
        told = f"{plain[0]} in how a buttonhole is made may tell where it lies, or be a stitch of each."
        raise MisfitError(instruction.place, told, _ROWS)
    if not uses or (not bound and uses != leaves):
        told = f"a buttonhole made so takes {uses} stitches and leaves {leaves}."
        raise MisfitError(instruction.place, told, _HOW)
    return uses, tuple(runs)


def _told(instruction: Buttonholes, draft: DraftRound, needles: Needles) -> list[_Hole]:
    """Return buttonholes where the words of the row have them; the rest of it goes on as it comes.

    Raises:
        MisfitError: the words do not fit the row, or say another pattern than it has.
    """
    elements = tuple(map(_as_set, instruction.made))
    end = Until(_AS_SET, "end", None, None, instruction.place)
    if instruction.right and draft.flat and draft.side == "WS":
        told = "at the right front a wrong-side row ends, and the words of the row begin it there."
        raise MisfitError(instruction.place, told, _ROWS)
    ended = any(isinstance(one, Until | Several) and one.goal in ("end", "rest") for one in elements)
    tried = [elements] if ended else [(*elements, end), elements]
    for at, way in enumerate(tried):
        try:
            worked = work_phrase(
                way, count=draft.before, size=needles.size, yarn=needles.yarn, place=instruction.place
            )
            break
        except MisfitError:
            if at + 1 == len(tried):
                raise
    if instruction.right and not ended:
        told = "the right front is taken to be where right-side rows begin, as in a piece that grows upwards."
        needles.warn(instruction.place, told)
    looks = [run.stitch for run in flatten(draft.phrase) for _ in range(run.uses)]
    holes: list[_Hole] = []
    at, open_at = 0, -1
    runs: list[tuple[str, int]] = []
    for run in (*flatten(worked.items), Run(_AS_SET, 1, "")):
        one = stitch(run.stitch)
        if one.shapes or run.stitch == "bo":
            open_at = at if open_at < 0 else open_at
            runs.append((run.stitch, run.times))
            at += run.uses
            continue
        if runs:
            holes.append(_Hole(open_at, at - open_at, tuple(runs)))
            open_at, runs = -1, []
        for look in looks[at : at + run.uses]:
            if run.stitch in ("k", "p") and look in ("k", "p") and look != run.stitch:
                told = f"the words of the row say {run.stitch} where its pattern has {look}."
                raise MisfitError(instruction.place, told, _ROWS)
        at += run.uses
    if not holes:
        raise MisfitError(instruction.place, "no buttonhole is made by these words.", _HOW)
    if not holes[0].at or instruction.ends is not None:
        told = "the words of the row make it at the very edge" if not holes[0].at else "how many is not said"
        raise MisfitError(instruction.place, f"{told}: where the buttonhole lies is not clear.", _ROWS)
    number = instruction.number.of(needles.size) if instruction.number is not None else len(holes)
    if number != len(holes):
        told = f"the words of the row make {len(holes)} buttonholes, and the line says {number}."
        raise MisfitError(instruction.place, told, _ROWS)
    for hole in holes:
        leaves = sum(times * stitch(code).leaves for code, times in hole.runs)
        if not hole.closed and leaves != hole.uses:
            told = f"a buttonhole made so takes {hole.uses} stitches and leaves {leaves}."
            raise MisfitError(instruction.place, told, _HOW)
    return holes


def _as_set(element: Element) -> Element:
    """Return an element of a row with its stitches in pattern as they come."""
    if isinstance(element, Work | Until) and element.stitch == "pattern":
        return replace(element, stitch=_AS_SET)
    if isinstance(element, Several):
        return replace(element, elements=tuple(map(_as_set, element.elements)))
    return element


def _with_holes(draft: DraftRound, holes: Sequence[_Hole], place: Span) -> tuple[Item, ...]:
    """Return a row with something else worked at some places of it.

    Raises:
        MisfitError: a stitch of the row lies half within such a place.
    """
    singles = list(_singles(draft.phrase))
    made: list[Run] = []
    at, ahead = 0, list(holes)
    for run in singles:
        if ahead and at >= ahead[0].at and at < ahead[0].at + ahead[0].uses:
            hole = ahead[0]
            if at == hole.at:
                made += [Run(code, times, run.yarn) for code, times in hole.runs]
            at += run.uses
            if at > hole.at + hole.uses or run.uses != run.leaves:
                raise MisfitError(place, "a buttonhole falls on stitches that the row shapes.", _ROWS)
            if at == hole.at + hole.uses:
                ahead.pop(0)
            continue
        at += run.uses
        if ahead and at > ahead[0].at:
            raise MisfitError(place, "a buttonhole falls on stitches that the row shapes.", _ROWS)
        made.append(run)
    if ahead:
        told = f"the buttonholes reach past the {draft.before} stitches of the row."
        raise MisfitError(place, told, _ROWS)
    return condense(join_runs(made))


def _singles(phrase: tuple[Item, ...]) -> Iterator[Run]:
    """Yield the stitches of a row one by one."""
    for run in flatten(phrase):
        for _ in range(run.times):
            yield Run(run.stitch, 1, run.yarn)


def _remark(
    instruction: Buttonholes, draft: DraftRound, holes: Sequence[_Hole], needles: Needles
) -> str:
    """Say where the buttonholes of a row lie."""
    first, last = holes[0], holes[-1]
    behind = draft.before - last.at - last.uses
    if len(holes) == 1:
        where = f"{_stitches(first.at)} from the beginning of the {row_word(draft.flat)}"
        return f"a buttonhole of {_stitches(first.uses)}, {where}"
    between = [later.at - one.at - one.uses for one, later in pairwise(holes)]
    low, high = min(between), max(between)
    apart = f"{low}" if low == high else f"{low} or {high}" if high == low + 1 else f"{low} to {high}"
    ends = f"{_stitches(first.at)} before the first and {behind} behind the last"
    return f"{len(holes)} buttonholes of {_stitches(first.uses)}, {ends}, {apart} between them"


def _stitches(number: int) -> str:
    return f"{number} stitch" if number == 1 else f"{number} stitches"
