"""Rounds told by the halves of a foot, its instep and its sole, and where they lie afterwards. No I/O.

The instep is one stretch of the round; all other stitches are the sole, which lies in two pieces where the
rounds begin in its middle, as behind a heel. Common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.plan.stitches.needle_by_needle import NeedleEnds
from stepper.plan.stitches.row_elements import MisfitError
from stepper.project.stitchwork import Element, Mark, Until

HALVES: Final = ("instep", "sole")
Instep = tuple[int, int]
"""Where the instep begins and ends. Unit: stitches from the beginning of the round."""
NO_INSTEP: Final = "nothing before says which stitches are the instep, or nobody can tell any more."
SAY_WHERE: Final = 'Say it with numbers, markers or needles, or where the instep lies: "Instep on needle 1."'


def bounds_of(instep: Instep | None, count: int) -> list[int]:
    """Return the places within a round where one half ends and the other begins."""
    return [place for place in instep or () if 0 < place < count]


def moved_instep(
    before: Instep | None, count: int, halves: NeedleEnds, used: int, made: int
) -> Instep | None:
    """Return where the instep lies behind a round.

    Args:
        before: Where it lay.
        count: Stitches of the round before.
        halves: Its bounds as the round carried them.
        used: Stitches of the old round that were worked.
        made: Stitches that they came to.
    """
    if before is None:
        return None
    bounds, places = bounds_of(before, count), halves.left(used, made)
    if len(places) != len(bounds):
        return None
    new = dict(zip(bounds, places, strict=True)) | {0: 0, count: count - used + made}
    return new[before[0]], new[before[1]]


def turned_on(instep: Instep | None, number: int, count: int) -> Instep | None:
    """Return where the instep lies when the rounds begin so many stitches further on; None if within it."""
    if instep is None:
        return None
    start, end = instep
    if start < number < end:
        return None
    begin = (start - number) % count
    return begin, begin + end - start


def in_halves(
    parts: list[tuple[Mark, tuple[Element, ...]]], instep: Instep | None, count: int
) -> tuple[list[tuple[Mark, tuple[Element, ...]]], list[int]]:
    """Return a part for each piece of the round, in order, and where each of them ends.

    Raises:
        MisfitError: nobody can tell where the halves lie, or the round does not say how one is worked.
    """
    first = parts[0][0]
    if instep is None:
        raise MisfitError(first.place, NO_INSTEP, SAY_WHERE)
    ends = [*bounds_of(instep, count), count]
    starts = [0, *ends[:-1]]
    names = ["instep" if start == instep[0] else "sole" for start in starts]
    printed = [mark.name for mark, _ in parts]
    if printed == names:
        return parts, ends
    missing = next((name for name in names if name not in printed), "")
    if missing:
        told = f"the round does not say how the {missing} is worked."
        raise MisfitError(first.place, told, f'Write it, for example "on {missing}: knit".')
    once = len(set(printed)) == len(printed)
    whole = all(len(inside) == 1 and _fills(inside[0]) for mark, inside in parts if mark.name == "sole")
    if not once or (names.count("sole") > 1 and not whole):
        told = f"the round meets {', '.join(names)} here, and the line tells {', '.join(printed)}."
        raise MisfitError(first.place, told, SAY_WHERE)
    told_of = {part[0].name: part for part in parts}
    return [told_of[name] for name in names], ends


def _fills(element: Element) -> bool:
    """Return whether an element fills any piece of a round: "knit", "in pattern"."""
    return isinstance(element, Until) and element.goal == "end" and not element.name


def half_left_over(mark: Mark, holds: int, worked: int) -> MisfitError:
    """Return the error for a half that is not worked to its end, or past it."""
    told = f"the {mark.name} has {holds} stitches here, and the round works {worked} of them."
    return MisfitError(mark.place, told)
