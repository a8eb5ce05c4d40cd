"""Find what each line comes to in a size knitted alone, which is what a blend has to reach. No I/O."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Mapping
from itertools import pairwise

from stepper.craft.stitches import stitch
from stepper.plan.drafts import DraftRound
from stepper.plan.model import Run
from stepper.plan.stitches.evenly import Change, usual_change
from stepper.plan.stitches.run_repeats import laid_flat
from stepper.project.instructions import Line
from stepper.project.model import Project
from stepper.project.problems import one_of
from stepper.records import dataclass

FEWEST_CHANGES = 3
"""Fewer changes than this in a written-out round have their places for a reason. Source: chosen here."""


@dataclass(frozen=True, slots=True, kw_only=True)
class RoundAlone:
    """A round of a line in one size."""

    before: int
    """Stitches it begins with. Unit: stitches."""
    after: int
    """Stitches it ends with."""
    change: Change | None
    """The change that it spreads over all its stitches; None if it does not."""


LinesAlone = Mapping[int, tuple[RoundAlone, ...]]
"""The rounds of each line of the file, by the number of the line."""
AloneIn = Callable[[int], LinesAlone]
"""Returns for a size, by its place from 0, what its lines come to."""


def lines_alone(drafts: Iterable[DraftRound]) -> LinesAlone:
    """Sort the rounds of a size knitted alone by their lines."""
    found: dict[int, list[RoundAlone]] = {}
    known: dict[int, RoundAlone] = {}
    for draft in drafts:
        if id(draft) not in known:  # one draft may stand for a hundred rounds
            known[id(draft)] = RoundAlone(before=draft.before, after=draft.after, change=change_of(draft))
        found.setdefault(draft.line, []).append(known[id(draft)])
    return {line: tuple(rounds) for line, rounds in found.items()}


def lines_labelled_once(project: Project) -> tuple[Line, ...]:
    """List the lines whose label no other line has: those a switch can name."""
    lines = [line for line in project.lines if line.label]
    times = Counter((line.label or "").lower() for line in lines)
    return tuple(line for line in lines if times[(line.label or "").lower()] == 1)


def spreads_change(line: Line, alone: LinesAlone) -> bool:
    """Return whether a line of a size spreads a change over its stitches, so that it can be blended."""
    return any(each.change is not None for each in alone.get(line.place.line, ()))


def why_unmet(line: Line, size: int, count: int, alone: LinesAlone, project: Project) -> str:
    """Return why a line cannot bring another size's stitches to those of a size, and which lines can.

    Args:
        line: The line of the switch.
        size: The size switched to: its place, from 0.
        count: Stitches on the needles there.
        alone: What the lines come to in that size.
        project: The checked file.

    Returns:
        Empty if it can, or if the stitches are those of the size already.
    """
    rounds = alone.get(line.place.line, ())
    if not rounds or rounds[0].before in (0, count) or spreads_change(line, alone):
        return ""
    changes = any(each.before != each.after for each in rounds)
    why = "its shaping stands at places of its own" if changes else "it changes no stitches"
    return (
        f'"{line.label}" begins with {rounds[0].before} stitches in size {project.sizes[size]}, '
        f"{count} are on the needles, and {why}. {_where_switched(alone, project)}"
    )


def why_as_wide(rule: str, line: Line, size: int, count: int, alone: LinesAlone, project: Project) -> str:
    """Return why a part that is worked in a size of its own is not as wide as in that size.

    Args:
        rule: What she wrote: "size S in body".
        line: The first line of the part.
        size: The size: its place, from 0.
        count: Stitches on the needles there.
        alone: What the lines come to in that size.
        project: The checked file.

    Returns:
        Empty if the part begins with the stitches of that size, or changes to them at once.
    """
    rounds = alone.get(line.place.line, ())
    if not count or not rounds or rounds[0].before in (0, count) or spreads_change(line, alone):
        return ""
    return (
        f"{rule}: its lengths are those of size {project.sizes[size]}, but it is as wide as the {count} "
        f"stitches that come to it; that size has {rounds[0].before}. {_where_switched(alone, project)}"
    )


def _where_switched(alone: LinesAlone, project: Project) -> str:
    """Return at which lines a size can be switched, so that its stitches are met."""
    able = [other.label or "" for other in lines_labelled_once(project) if spreads_change(other, alone)]
    return f"A size can be switched at {one_of(quote_label(each) for each in able)}." if able else _NONE_CAN


def quote_label(label: str) -> str:
    """Put a label into quotation marks."""
    return f'"{label}"'


_NONE_CAN = (
    "No line with a label of its own spreads a change evenly: put one in front of such a line, "
    "as in `Inc round: increase evenly to 240 sts.`"
)


def change_of(draft: DraftRound) -> Change | None:
    """Return the change that a round spreads over all its stitches; None if it does not.

    A written-out round spreads one if it is one change in plain stitches, over and over, with gaps that
    differ by two at most: "*K4, k2tog; rep from * to last 4 sts, k to end". One with markers, or with a
    decrease at either edge, has its shaping in fixed places.
    """
    if draft.before == draft.after or not draft.before:
        return None
    runs = laid_flat(draft.phrase)
    if draft.evenly:
        even = draft.template.evenly if draft.template is not None else None
        worked_in = even.worked_in if even is not None else ""
        return usual_change(draft.before, draft.after, runs[0].yarn, worked_in)
    codes = {run.stitch for run in runs}
    changes = [code for code in codes if stitch(code).shapes]
    plain = [code for code in codes if code in ("k", "p")]
    if len(changes) != 1 or len(plain) > 1 or len(codes) != 1 + len(plain):
        return None
    yarns, (code,) = {run.yarn for run in runs}, changes
    if len(yarns) != 1 or draft.chart or not _is_spread(runs, code):
        return None
    return Change(code=code, yarn=yarns.pop(), plain=plain.pop() if plain else "k")


def _is_spread(runs: tuple[Run, ...], change: str) -> bool:
    places: list[int] = []
    plain = 0
    for run in runs:
        if run.stitch == change:
            places += [plain] * run.times
        else:
            plain += run.times
    gaps = [later - earlier for earlier, later in pairwise(places)]
    if len(places) < FEWEST_CHANGES or max(gaps) - min(gaps) > 2:
        return False
    return max(places[0], plain - places[-1]) <= max(gaps) + 2
