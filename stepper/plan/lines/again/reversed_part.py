"""Work a part from the other edge: "reversing shaping", "complete to match first side". No I/O.

Each row is worked as its mirror image: what stood at its beginning stands at its end, and what leaned to the
left leans to the right. Stitches are bound off and cast on only at the beginning of rows, so those of one row
move to the next; if two rows in turn have them, they are exchanged. Source: common practice.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import replace

from stepper.craft.stitches import Kind, stitch
from stepper.plan.drafts import DraftRound, Template, own_words_of
from stepper.plan.lines.rounds import work_template
from stepper.plan.lines.working import work
from stepper.plan.model import Group, Item, Run, flatten
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.run_repeats import condense
from stepper.project.instructions import AsPart, BindOff, Return
from stepper.project.model import Section
from stepper.project.problems import Span
from stepper.project.stitchwork import Element, Hold, Numbers, Several, Until, Work
from stepper.records import dataclass
from stepper.regex import regex

_PAIRS = (
    ("k2tog", "ssk"), ("p2tog", "ssp"), ("k3tog", "sssk"), ("p3tog", "sssp"),
    ("m1l", "m1r"), ("m1lp", "m1rp"), ("rli", "lli"),
)  # fmt: skip
MIRRORED = {
    **{one: other for pair in _PAIRS for one, other in (pair, pair[::-1])},
    "skp": "k2tog", "k2tog tbl": "k2tog", "p2tog tbl": "p2tog",
    "sk2p": "k3tog", "k3tog tbl": "k3tog", "p3tog tbl": "p3tog",
}  # fmt: skip
"""What leans the other way, for each decrease and increase that leans."""
_STEPS_APART = 2
"""By how many stitches the steps of a shoulder differ at most. Source: common practice, nearly equal."""
_UPRIGHT = frozenset({"m1", "m1p", "kfb", "pfb", "inc", "dec", "s2kp", "s2pp", "kfbf", "kyok"})
"""Increases and decreases that do not lean."""
_TOLD = (
    "worked from the other edge: shaping is mirrored, k2tog and ssk exchanged, and stitches bound off at the "
    "edge come one row later."
)


@dataclass(slots=True, kw_only=True)
class _Row:
    """A row that is to be mirrored."""

    draft: DraftRound | None
    """None for a row put in at the end for stitches bound off there."""
    edge: Run | None
    """Stitches bound off or cast on at its beginning."""
    body: tuple[Run, ...]
    taken: int = 0
    """Stitches that another row binds off in its place."""


def work_reversed(
    instruction: AsPart,
    sources: Iterable[tuple[Section, int | None]],
    lines: set[int],
    needles: Needles,
    *,
    begun: int = 0,
) -> None:
    """Work the rows of another part as their mirror images.

    Args:
        instruction: The line that asks for it.
        sources: Its sections, each with how many of its rows are worked; None for all of those lines.
        lines: Lines of the file whose rows are worked.
        needles: The knitting in hand.
        begun: How many of its rows are worked already, on stitches of this section's own.
    """
    drafts: list[DraftRound] = []
    for source, rows in sources:
        own = [draft for draft in needles.drafts if draft.section == source.name and draft.line in lines]
        drafts += own[:rows]
    work_mirrored(drafts, begun, instruction, needles)


def match_other_side(instruction: AsPart, needles: Needles) -> None:
    """Work what is left of a side as the mirror image of the side before it, from the row it has come to."""
    place, drafts = instruction.place, needles.drafts
    if not needles.count and not needles.counting.lost and _waits_alone(needles):
        needles.warn(place, "the stitches of the other side are taken back first, and yarn joined.")
        here = next(at for at in range(len(drafts) - 1, -1, -1) if drafts[at].divide)
        begun = drafts[min(here + (drafts[here].codes == {"rest", "hold"}), len(drafts) - 1)]
        work(Return("", place, wrong_side=begun.side == "WS"), needles)
    back = next((at for at in range(len(drafts) - 1, -1, -1) if "return" in drafts[at].codes), None)
    parted = next((at for at in range((back or 0) - 1, -1, -1) if drafts[at].divide), None)
    if back is None or parted is None or drafts[parted].section != needles.section.name:
        told = "no first side of this part is known, that begins where the other is put on hold."
        needles.miss(place, told, "Write the rows of this side out.", anywhere=True)
        return
    # Where the row that parts them is worked over both, the rows of the first side begin behind it.
    parted += drafts[parted].codes == {"rest", "hold"}
    first, done = drafts[parted:back], len(drafts) - back - 1
    if done >= len(first) or (done and first[done].side != needles.side):
        needles.miss(place, "the rows of this side do not go on as those of the first side.", anywhere=True)
        return
    work_mirrored(first, done, instruction, needles)


def _waits_alone(needles: Needles) -> bool:
    """Return whether the only stitches on hold are those of the other side, as many as the first side had."""
    parted = [at for at in range(needles.section.start, len(needles.drafts)) if needles.drafts[at].divide]
    return bool(parted) and list(needles.held.values()) == [needles.drafts[parted[-1]].after]


def work_mirrored(drafts: list[DraftRound], skip: int, instruction: AsPart, needles: Needles) -> None:
    """Work rows as their mirror images.

    Args:
        drafts: The rows of the other side, from where it began.
        skip: How many of them are left out, as they are worked here already.
        instruction: The line that asks for it.
        needles: The knitting in hand.
    """
    place = instruction.place
    if any(draft.opened is not None for draft in drafts[skip:]):
        told = "the rows come without the buttonholes of the other side."
        needles.warn(instruction.place, told)
    why = _hindrance(drafts[skip:])
    if why or len(drafts) <= skip:
        told = f"{why or 'no rows of that part are known'}; it is not worked from the other edge here."
        needles.miss(place, told, "Write its rows out.", anywhere=True)
        return
    rows = [_row(draft) for draft in drafts]
    _shift_edges(rows, skip)
    needles.warn(place, _TOLD)
    needles.flat = True
    for row in rows[skip:]:
        if not _work_row(row, place, needles):
            return
    if needles.count and not needles.section.pattern:
        needles.section.pattern = (Template((Until("pattern", "end", None, None, place),), place),)


def _hindrance(drafts: list[DraftRound]) -> str:
    """Return what in some rows has no mirror image here; empty if all have one."""
    for draft in drafts:
        runs = list(flatten(draft.phrase))
        if draft.words:
            return f"{own_words_of(draft.line)}, which have no mirror image"
        if draft.chart:
            return f"line {draft.line} works a chart"
        if not draft.flat and draft.before:
            return f"line {draft.line} is worked in the round"
        odd = [code for code in sorted(draft.codes) if not _has_image(code)]
        if odd:
            return f"{odd[0]} in line {draft.line} has no mirror image"
        if len({run.yarn for run in runs if stitch(run.stitch).kind is Kind.PLAIN}) > 1:
            return f"line {draft.line} is worked in more than one yarn"
    return ""


def _has_image(code: str) -> bool:
    entry = stitch(code)
    if entry.shapes:
        return code in MIRRORED or code in _UPRIGHT
    moved = ("co", "bo", "draw", "hold", "pm", "sm", "rm")
    return (entry.kind is Kind.PLAIN and code != "ds") or code in moved


def _row(draft: DraftRound) -> _Row:
    runs = tuple(run for run in flatten(draft.phrase) if stitch(run.stitch).kind is not Kind.MARK)
    whole = not draft.before or not draft.after
    edge = runs[0] if runs and runs[0].stitch in ("bo", "co") and not whole else None
    return _Row(draft=draft, edge=edge, body=runs[1:] if edge is not None else runs)


def begins_at_edge(draft: DraftRound) -> bool:
    """Return whether a row binds off or casts on at its beginning, which its image does a row later."""
    return _row(draft).edge is not None


def _shift_edges(rows: list[_Row], done: int) -> None:
    """Move what is bound off or cast on at the beginning of a row to the row after it, exchanging the two.

    Nothing comes into one of the rows that are done already: there each edge comes a row later than the one
    before it.

    The last step of a shoulder binds off all that is left, two rows after the step before it. It comes a row
    later like the others, since its edge is at the beginning of that row.
    """
    if _ends_in_step(rows):
        rows.insert(len(rows) - 1, _Row(draft=None, edge=None, body=()))
    at = 0
    while at < len(rows):
        row = rows[at]
        if row.edge is None:
            at += 1
            continue
        follows = rows[at + 1].draft if at + 1 < len(rows) else None
        if follows is None or not follows.after:
            rows.insert(at + 1, _Row(draft=None, edge=None, body=()))
        other = rows[at + 1]
        for one in (row, other):
            one.taken = one.edge.times if one.edge is not None and one.edge.stitch == "bo" else 0
        if at < done and other.edge is not None:
            carried, row.edge = row.edge, None
            at = _carry_on(carried, rows, at + 1)
            continue
        row.edge, other.edge = other.edge, row.edge
        at += 2


def _carry_on(carried: Run, rows: list[_Row], at: int) -> int:
    """Put an edge into a row, that row's into the one after it, and so on; return the row behind the last."""
    moved: Run | None = carried
    while moved is not None:
        draft = rows[at].draft if at < len(rows) else None
        if at == len(rows) or (draft is not None and not draft.after):
            rows.insert(at, _Row(draft=None, edge=None, body=()))
        row = rows[at]
        row.taken = row.edge.times if row.edge is not None and row.edge.stitch == "bo" else 0
        moved, row.edge = row.edge, moved
        at += 1
    return at


def _ends_in_step(rows: list[_Row]) -> bool:
    """Return whether the last row binds off what is left, at the edge of the step two rows before it."""
    if len(rows) < 3:
        return False
    step, last = rows[-3].draft, rows[-1].draft
    edge = rows[-3].edge
    if step is None or last is None or last.after or rows[-2].edge is not None:
        return False
    if last.bound_off is None and last.codes != {"bo"}:
        return False
    alike = edge is not None and edge.stitch == "bo" and abs(last.before - edge.times) <= _STEPS_APART
    return alike and step.side == last.side


def _work_row(row: _Row, place: Span, needles: Needles) -> bool:
    """Work one row as its mirror image; return whether it fitted."""
    draft, before, side = row.draft, len(needles.findings), ""
    yarn = next((run.yarn for run in row.body if stitch(run.stitch).kind in (Kind.PLAIN, Kind.EDGE)), "")
    needles.yarn = yarn or needles.yarn
    if draft is not None:
        needles.needle_mm, needles.fabric = draft.needle_mm, draft.fabric
        needles.remarks.extend(_OTHER_SIDE.sub(_exchanged, remark) for remark in draft.remarks)
        if draft.bound_off is not None:
            if draft.before != needles.count and not needles.counting.lost:
                told = f"from the other edge {needles.count} stitches are left, not {draft.before}."
                needles.miss(place, told, "Write the rows of this side out.", anywhere=True)
                return False
            how = "draw" if draft.codes == {"draw"} else "bind off"
            work(BindOff(draft.bound_off, place, how=how), needles)
            return len(needles.findings) == before
        side = draft.side if draft.before else ""
        if needles.free:
            needles.side = side or needles.side
    work_template(Template(_elements(row, place), place, side=side), needles)
    return len(needles.findings) == before and not needles.counting.lost


_OTHER_SIDE = regex(
    r"\b(left|right)(?=\s+(?:side|front|shoulder|half|neck|armhole|edge|sleeve)\b(?!\s+(?:of\s+(?:the\s+)?work\s+)?facing))",
    re.I,
)
"""A side of the garment in words that are said: the other one is worked now."""


def _exchanged(match: re.Match[str]) -> str:
    return "right" if match.group().lower() == "left" else "left"


def _elements(row: _Row, place: Span) -> tuple[Element, ...]:
    """Return the mirror image of a row."""
    made: list[Element] = []
    if row.edge is not None:
        made.append(Work(row.edge.stitch, _number(row.edge.times, place), None, place))
    plain = all(stitch(run.stitch).kind is Kind.PLAIN for run in row.body)
    if row.draft is None or ((row.taken or row.edge is not None) and plain):
        return (*made, Until("pattern", "end", None, None, place))
    image = tuple(replace(run, stitch=MIRRORED.get(run.stitch, run.stitch)) for run in reversed(row.body))
    held = any(run.stitch == "hold" for run in image)
    made += [_element(item, place) for item in (image if held else condense(image))]
    if row.taken:
        made.append(Work("pattern", _number(row.taken, place), None, place))
    return tuple(made)


def _element(item: Item, place: Span) -> Element:
    if isinstance(item, Group):
        inner = tuple(_element(each, place) for each in item.items)
        return Several(inner, _number(item.times, place), "times", None, place)
    if item.stitch == "hold":
        return Hold(_number(item.times, place), item.yarn, place)
    return Work(item.stitch, _number(item.times, place), None, place)


def _number(times: int, place: Span) -> Numbers:
    return Numbers((times,), place)
