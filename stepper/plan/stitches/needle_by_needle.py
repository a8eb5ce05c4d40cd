"""Rounds worked needle by needle, as in socks, and where the needles end after any other round. No I/O."""

from __future__ import annotations

from dataclasses import field

from stepper.craft.stitches import Stitch
from stepper.plan.model import Run
from stepper.plan.stitches.row_elements import MisfitError
from stepper.project.stitchwork import Element, Mark
from stepper.records import dataclass


@dataclass(slots=True, kw_only=True)
class NeedleEnds:
    """Where the needles of a round end, except the last. Unit: stitches from the beginning."""

    waiting: list[int] = field(default_factory=list)
    """Ends not reached yet, on the old round."""
    placed: list[int] = field(default_factory=list)
    unsure: bool = False
    """Whether a stitch came up at an end, so that nobody can tell on which needle it is."""

    def advance(self, run: Run, entry: Stitch, used: int, made: int) -> None:
        """Carry over the ends that a run passes; `used` and `made` are the stitches before it."""
        if not entry.uses:
            self.unsure |= used in self.waiting
            return
        while self.waiting and self.waiting[0] < used + run.uses:
            over = self.waiting.pop(0) - used
            self.unsure |= over % entry.uses > 0
            self.placed.append(made + over // entry.uses * entry.leaves)

    def left(self, used: int, made: int) -> tuple[int, ...]:
        """Return the ends after the round; empty if one of them is not sure."""
        rest = [made for end in self.waiting if end == used]
        if self.unsure or len(rest) < len(self.waiting):
            return ()
        return tuple(self.placed + rest)


def parts_of(elements: tuple[Element, ...]) -> list[tuple[Mark, tuple[Element, ...]]]:
    """Split a round at its needles; empty if it is not written needle by needle."""
    if not elements or not _begins_needle(elements[0]):
        return []
    starts = [at for at, element in enumerate(elements) if _begins_needle(element)]
    parts = []
    for start, stop in zip(starts, [*starts[1:], len(elements)], strict=True):
        mark = elements[start]
        assert isinstance(mark, Mark)
        parts.append((mark, elements[start + 1 : stop]))
    return parts


def _begins_needle(element: Element) -> bool:
    return isinstance(element, Mark) and element.stitch == "needle"


def in_order(
    parts: list[tuple[Mark, tuple[Element, ...]]], needles: int
) -> list[tuple[Mark, tuple[Element, ...]]]:
    """Return a part for each needle of the round, in order.

    Raises:
        MisfitError: a needle is left out, or there is none of that number.
    """
    first = parts[0][0]
    if first.name == "each":
        return [(first, parts[0][1])] * needles
    rest = next((part for part in parts if part[0].name == "rest"), None)
    told = {int(mark.name): (mark, inside) for mark, inside in parts if mark.name != "rest"}
    for number, (mark, _) in told.items():
        if number > needles:
            why = f"the stitches are on {needles} needles; there is no needle {number}."
            raise MisfitError(mark.place, why)
    made = []
    for number in range(1, needles + 1):
        part = told.get(number, rest)
        if part is None:
            raise MisfitError(
                first.place,
                f"the stitches are on {needles} needles, and the round does not say how needle {number} is "
                "worked.",
                f'Write it, for example "N{number}: knit".',
            )
        made.append(part)
    return made


UNDIVIDED = "the stitches are not divided over needles, or nobody can tell any more how."
SAY_HOW = 'Say it before this line: "Divide over 2 needles, 16 sts on each needle."'


def left_over(mark: Mark, number: int, holds: int, worked: int) -> MisfitError:
    """Return the error for a needle that is not worked to its end, or past it."""
    told = f"needle {number} holds {holds} stitches, and the round works {worked} of them."
    return MisfitError(mark.place, told)
