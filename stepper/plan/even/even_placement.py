"""Place the changes of an evenly spread round: evenly first, then out of the way as far as that can be done.

Kept clear unasked: the stitches beside a marker, so that nobody wonders on which side of it a change stands,
and the motif stitches of a chart round just below, where a change would part a motif. Both are kept clear as
long as the gaps still differ by no more than one; otherwise the round stays even and the knitter is told of a
marker. Kept clear because she says so: a centre, whatever that costs in evenness. No I/O.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator

from stepper.craft.even.manners import Manner
from stepper.craft.even.respacing import avoid_places, places_touching
from stepper.craft.even.spacing import gaps_between
from stepper.craft.gauge import half_up
from stepper.craft.stitches import Kind, stitch
from stepper.plan.drafts import DraftRound
from stepper.plan.model import Item, flatten
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.evenly import (
    Change,
    even_places,
    even_round,
    formerly_written,
    round_at,
    tally_changes,
)
from stepper.plan.stitches.row_facing import mirror_places
from stepper.project.keys.alterations import meets
from stepper.project.model import Alteration, RuleKind
from stepper.project.problems import Span

Placed = tuple[tuple[Item, ...], tuple[int, ...], tuple[str, ...]]
"""The round, the stitches of the old round worked before each change, and the rules that moved them."""


def placed_round(
    before: int, after: int, needles: Needles, place: Span, change: Change
) -> Placed:
    """Spread an increase or decrease evenly over a round, clear of what should stay plain.

    Args:
        before: Stitches on the needles.
        after: Stitches to reach.
        needles: The knitting in hand.
        place: Where the instruction stands, for warnings.
        change: What the changes are worked in, which go from the one count to the other.

    Raises:
        ValueError: No such round is possible, or none with the centre kept free.
    """
    number, over = divmod(after - before, change.adds)
    if over:
        raise ValueError(f"{change.code} changes the count by {change.adds:+d} at a time.")
    # A count alone needs no phrase; where the changes stand matters to markers and to the ends of rows.
    cheap = needles.checking and not needles.flat and not needles.markers
    manner = needles.project.spacing or Manner.MIXED
    even = even_places(before, number, change, flat=needles.flat, manner=Manner.MIXED if cheap else manner)
    positions = even
    moved_by: tuple[str, ...] = ()
    rules = _rules(needles)
    if rules:
        positions = _with_free_centres(positions, before, change.uses, rules, needles)
        moved_by = tuple(rule.text for rule in rules) if positions != even else ()
    elif positions and not needles.checking:
        positions = _out_of_the_way(positions, before, change.uses, needles, place)
    if needles.checking:
        worked = tuple(place - change.inside for place in positions)
        return tally_changes(before, number, change), worked, moved_by
    if needles.project.spacing is None:
        made = formerly_written(before, positions, change)
    elif positions == even:
        made = even_round(before, number, change, flat=needles.flat, manner=manner)
    else:
        made = round_at(before, positions, change)
    return made.items, made.places, moved_by


# --- by themselves ------------------------------------------------------------------------------------


def _out_of_the_way(
    positions: tuple[int, ...], stitches: int, uses: int, needles: Needles, place: Span
) -> tuple[int, ...]:
    """Keep off markers and motifs as far as the gaps allow it."""
    markers = markers_ahead(needles)
    for barred in _tiers(markers, motif_stitches(needles), needles, uses):
        try:
            moved = avoid_places(positions, stitches, barred, flat=needles.flat, uses=uses, within=1)
        except ValueError:
            continue
        if _even(moved, stitches, uses, flat=needles.flat):
            return moved
    if set(positions) & _across(markers, uses):
        needles.warn(place, "a change stands at a marker: the stitches leave no other even place for it.")
    return positions


def _tiers(
    markers: tuple[int, ...], motif: tuple[int, ...], needles: Needles, uses: int
) -> Iterator[frozenset[int]]:
    """Yield what to keep clear: everything first, then less and less."""
    beside = places_touching({side for each in markers for side in (each, each + 1)}, uses=uses)
    if not uses:
        beside = frozenset(markers)  # two markers a stitch apart keep nothing clear between them
    parted = _disturbing(motif, needles, uses)
    across = _across(markers, uses)
    for barred in (beside | parted, beside, across | parted, across, parted):
        if barred:
            yield barred


def _disturbing(kept: Collection[int], needles: Needles, uses: int) -> frozenset[int]:
    """Return the places where a change would disturb kept stitches; the end of a round is its beginning."""
    places = places_touching(kept, uses=uses)
    if not uses and not needles.flat and 1 in kept and needles.count in kept:
        places |= {0, needles.count}
    return places


def _across(markers: tuple[int, ...], uses: int) -> frozenset[int]:
    """Return the places where a change would stand right at a marker."""
    return frozenset(each - 1 if uses else each for each in markers)


def _even(positions: tuple[int, ...], stitches: int, uses: int, *, flat: bool) -> bool:
    gaps = gaps_between(positions, stitches, flat=flat, uses=uses)
    inner = gaps[1:-1] if flat else gaps
    return not inner or max(inner) - min(inner) <= 1


def markers_ahead(needles: Needles) -> tuple[int, ...]:
    """Return the places of the markers inside the round that comes, in working order."""
    wrong = needles.wrong
    markers = mirror_places(needles.markers, needles.count) if wrong else needles.markers
    return tuple(each for each in markers if 0 < each < needles.count)


def motif_stitches(needles: Needles) -> tuple[int, ...]:
    """Number the motif stitches of the round just worked, if it is one of a chart, in the order of the next.

    A stitch belongs to the motif if its yarn is not the one in hand, or if it is part of a cable.
    """
    last = needles.drafts[-1] if needles.drafts else None
    if last is None or not (last.chart or _has_chart(last)):
        return ()
    found, number = [], 0
    for run in flatten(last.phrase):
        for _ in range(run.leaves):
            number += 1
            if run.yarn != needles.yarn or stitch(run.stitch).kind is Kind.CABLE:
                found.append(number)
    if needles.flat:
        return tuple(sorted(number + 1 - each for each in found))
    return tuple(found)


def _has_chart(draft: DraftRound) -> bool:
    return any(getattr(item, "name", "") for item in draft.phrase)


# --- because she says so ------------------------------------------------------------------------------


def _rules(needles: Needles) -> list[Alteration]:
    if not needles.knitted:
        return []
    rules = needles.project.alterations
    return [rule for rule in rules if rule.kind is RuleKind.KEEP_FREE and meets(rule, needles.section.name)]


def _with_free_centres(
    positions: tuple[int, ...], stitches: int, uses: int, rules: list[Alteration], needles: Needles
) -> tuple[int, ...]:
    kept = {number for rule in rules for number in free_stitches(rule, stitches, needles)}
    barred = _disturbing(kept, needles, uses) | _across(markers_ahead(needles), uses)
    try:
        return avoid_places(positions, stitches, barred, flat=needles.flat, uses=uses)
    except ValueError as error:
        said = " and ".join(f'"{rule.text}"' for rule in rules)
        raise ValueError(f"with {said}, {error}") from None


def free_stitches(rule: Alteration, stitches: int, needles: Needles) -> set[int]:
    """Number the stitches of a round that a rule keeps free, the first being 1.

    Rounds are taken to begin at the centre back, or at the side if the rule says so; rows at the centre
    front.
    """
    width = rule.stitches
    if rule.mm is not None:
        width = half_up(rule.mm / needles.fabric.gauge.stitch_mm)
    side = "side" in rule.words.split()
    centres = []
    if "front" in rule.words:
        centres.append(stitches // 4 if side else 0 if needles.flat else stitches // 2)
    if "back" in rule.words:
        centres.append(3 * stitches // 4 if side else stitches // 2 if needles.flat else 0)
    first = [centre - width // 2 for centre in centres]
    return {number % stitches + 1 for start in first for number in range(start, start + min(width, stitches))}
