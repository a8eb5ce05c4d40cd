"""Work a round that increases or decreases evenly on the stitches in hand. No I/O."""

from __future__ import annotations

from itertools import pairwise

from stepper.plan.drafts import Template
from stepper.plan.even.blended_count import blended_target
from stepper.plan.even.even_placement import placed_round
from stepper.plan.fabric.columns import UnknownFabricError
from stepper.plan.fabric.established import HINT, ground, look
from stepper.plan.fabric.own_rows import words_due
from stepper.plan.fabric.ribs import rib_stands
from stepper.plan.model import Item, Run
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.evenly import Change, carry_mark, in_fabric, purl_instead, usual_change
from stepper.plan.stitches.row_facing import mirror_places
from stepper.plan.stitches.run_repeats import condense
from stepper.project.instructions import Evenly
from stepper.project.model import MOST_ROUNDS_OVER

MUCH = 2
"""A blend that changes one stitch in this many, or more, is doubted. Source: chosen here."""


def work_evenly(instruction: Evenly, needles: Needles) -> None:
    """Work a round that increases or decreases evenly, to a count or by a number of stitches."""
    if needles.counting.lost:
        if instruction.to is not None:
            needles.regain(instruction.to.of(needles.size))
        return
    before = needles.count
    if instruction.to is not None:
        after = instruction.to.of(needles.size)
    else:
        assert instruction.by is not None  # a line says one of the two
        by = instruction.by.of(needles.size)
        reached = blended_target(instruction, by, needles)
        after = before + instruction.direction * by if reached is None else reached
    spread_to(instruction, after, needles)


def spread_to(instruction: Evenly, after: int, needles: Needles, change: Change | None = None) -> bool:
    """Change the stitches on the needles evenly to a count, over as many rounds as she asks for.

    Args:
        instruction: Which way the line goes, and where it stands.
        after: Stitches to reach.
        needles: The knitting in hand.
        change: What the changes are worked in; None for the usual ones.

    Returns:
        Whether it could be done; if not, that is reported.
    """
    before = needles.count
    if not before:
        needles.miss_stitches(instruction.place)
        return False
    if needles.short_rows.gap is not None:
        told = "an even change over whole rounds begins in the middle of a short row here: that is not read."
        needles.miss(instruction.place, told, "End the round first.")
        return False
    if not _goes_its_way(instruction, after, needles):
        needles.count = after
        return False
    if change is not None and (after - before) * change.adds < 0:
        change = None  # allowed to go the other way, with the usual stitch for it
    # A journal knitted before there were manners was knitted in the usual stitches.
    worked_in = instruction.worked_in if needles.project.spacing is not None else ""
    used = change or usual_change(before, after, needles.yarn, worked_in)
    rounds = needles.alterations.over if after != before else 1
    _doubt(instruction, after, needles, used)
    for target in counts_over(before, after, rounds, used.adds):
        if not _work_round(instruction, target, needles, used):
            needles.count = max(after, 0)
            return False
    needles.alterations.over = 1
    return True


def counts_over(before: int, after: int, rounds: int, step: int) -> tuple[int, ...]:
    """Return the stitches after each of some rounds that share a change, each in the same proportion.

    Args:
        before: Stitches before the first. Range: 1 and up.
        after: Stitches after the last. Range: 1 and up.
        rounds: Range: 1 and up.
        step: Stitches that one change adds; below 0 for a decrease.

    Source: a geometric sequence, so that the changes stand about as far apart in every round.
    """
    counts = []
    for at in range(1, rounds):
        share = before * (after / before) ** (at / rounds)
        counts.append(before + step * round((share - before) / step))
    return (*counts, after)


def _rounds_needed(before: int, after: int, step: int) -> int:
    """Return the fewest rounds in which a change fits; 0 if none of those that she may ask for help."""
    if (after - before) % step:
        return 0
    for rounds in range(2, MOST_ROUNDS_OVER + 1):
        counts = (before, *counts_over(before, after, rounds, step))
        if all(one <= 2 * other and other <= 2 * one for one, other in pairwise(counts)):
            return rounds
    return 0


def _goes_its_way(instruction: Evenly, after: int, needles: Needles) -> bool:
    """Report a line that would have to do the opposite of what it says, unless she allows it."""
    before = needles.count
    if (after - before) * instruction.direction >= 0 or needles.alterations.reshape:
        return True
    needles.report(
        instruction.place,
        f"the line asks to {instruction.word} to {after} stitches, "
        f"but {before} are on the needles already.",
        f"A line that goes from {before} to {after} must "
        f"{'decrease' if instruction.direction == 1 else 'increase'}; "
        f"or switch size at another line, or allow it with `reshape: yes` beside the switch.",
    )
    return False


def _doubt(instruction: Evenly, after: int, needles: Needles, change: Change) -> None:
    """Warn where a blend changes half of the stitches or more in one round."""
    before, changed = needles.count, abs(after - needles.count)
    if needles.alterations.blended is None or needles.alterations.over > 1 or changed * MUCH < before:
        return
    alone = needles.alterations.blended(needles.size).get(needles.line.number, ())
    if any(each.before == before for each in alone):
        return  # the size alone does the same
    half, _ = counts_over(before, after, 2, change.adds)
    needles.warn(
        instruction.place,
        f"{changed} {change.word}s on {before} stitches in one round: half of them or more are changed. "
        f"`over: 2 rounds` beside the switch goes from {before} to {half} and then to {after}.",
    )


def _work_round(instruction: Evenly, after: int, needles: Needles, change: Change) -> bool:
    before = needles.count
    try:
        phrase, positions, moved_by = placed_round(before, after, needles, instruction.place, change)
    except ValueError as error:
        hint = ""
        rounds = _rounds_needed(before, after, change.adds) if needles.alterations.blended is not None else 0
        if rounds > needles.alterations.over:
            hint = f"`over: {rounds} rounds` beside the switch spreads the change over {rounds} rounds."
        needles.report(
            instruction.place, f"cannot {instruction.word} from {before} to {after} stitches: {error}", hint
        )
        return False
    if after == before:
        needles.warn(
            instruction.place,
            f"nothing to {instruction.word}: {before} stitches are on the needles already.",
        )
        phrase = (Run("k", before, needles.yarn),)
    _carry_markers(positions, after, change, needles)
    stitch = _stitch(instruction, needles)
    if stitch is None:
        called = "rib" if instruction.fabric.startswith("rib") else instruction.fabric.removeprefix("named ")
        told = f"no {called} stands under these stitches, so nobody can tell which are knitted."
        needles.miss(instruction.place, told, "Work a row of it first, or write the row out.")
        return True
    patterned = stitch == "pattern" and not needles.checking
    if patterned:
        worked = _in_pattern(instruction, phrase, needles)
        if worked is None:
            return True
        phrase = worked
    open_ = not instruction.stitch and after != before and ground(needles) in ("pattern", "unknown")
    needles.emit(
        purl_instead(phrase) if stitch == "p" else phrase,
        after,
        template=Template((), instruction.place, evenly=instruction),
        evenly=not patterned,
        shaping=positions,
        altered=moved_by,
        due=words_due(phrase, needles),
    )
    needles.last.plain_change = instruction.place if open_ else None
    return True


def _stitch(instruction: Evenly, needles: Needles) -> str | None:
    """Return how the round is worked, as in `Evenly.stitch`; None if its fabric does not lie under it."""
    fabric = instruction.fabric
    if fabric == "stockinette":
        return "p" if needles.flat and needles.wrong else "k"
    if fabric == "garter" and needles.flat:
        return "k"
    if fabric.startswith("rib"):
        stands = rib_stands(needles)
    else:
        stands = ground(needles) in ("pattern", "unknown", "garter")
    return instruction.stitch if not fabric or stands else None


def _carry_markers(positions: tuple[int, ...], after: int, change: Change, needles: Needles) -> None:
    """Leave every marker between the stitches it hung between; one inside a decrease, before that decrease.

    Args:
        positions: Stitches of the old round worked before each change.
        after: Stitches behind it.
        change: What it is worked in.
        needles: The knitting in hand.
    """
    wrong = needles.wrong
    places = mirror_places(needles.markers, needles.count) if wrong else needles.markers
    carried = [carry_mark(place, positions, change.code) for place in places]
    needles.markers = mirror_places(tuple(carried), after) if wrong else tuple(carried)


def _in_pattern(instruction: Evenly, phrase: tuple[Item, ...], needles: Needles) -> tuple[Item, ...] | None:
    """Write a round in the stitches of the fabric; None, and reported, if they cannot be told."""
    try:
        return condense(in_fabric(phrase, look(needles)))
    except (UnknownFabricError, ValueError) as unknown:
        needles.report(instruction.place, f"nobody can tell how the pattern goes on here: {unknown}.", HINT)
        return None
