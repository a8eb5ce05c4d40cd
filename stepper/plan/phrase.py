"""One written-out round worked on a given number of stitches. No I/O.

The elements of a line are worked from left to right with a cursor on the left needle. Open-ended elements
(`k to last 3 sts`, `rep from * to end`) run up to their place; everything else takes its own number.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from stepper.craft.stitches import Kind, stitch
from stepper.plan.model import Group, Item, Run, flatten
from stepper.project.instructions import Element, Hold, Mark, Several, TurnHere, Until, Work
from stepper.project.problems import Place


class MisfitError(Exception):
    """The line does not fit the stitches on the needles."""

    def __init__(self, place: Place, message: str, hint: str = "") -> None:
        super().__init__(message)
        self.place = place
        self.message = message
        self.hint = hint


@dataclass(frozen=True, slots=True, kw_only=True)
class Worked:
    """What a written-out round comes to."""

    items: tuple[Item, ...]
    after: int
    """Stitches on the needles after it."""
    markers: tuple[int, ...]
    """Places of the markers after it. Unit: stitches from the beginning."""
    held: tuple[tuple[str, int], ...]
    """Stitches put on hold: name and number."""


def work_phrase(
    elements: tuple[Element, ...],
    *,
    count: int,
    size: int,
    yarn: str,
    markers: tuple[int, ...] = (),
    place: Place,
) -> Worked:
    """Work a written-out round.

    Args:
        elements: The round as printed.
        count: Stitches on the needles before it.
        size: The size knitted: place in the list of sizes, from 0.
        yarn: Key of the yarn in hand.
        markers: Places of the markers before it, rising. Unit: stitches from the beginning.
        place: Where the line stands, for problems of the round as a whole.

    Raises:
        MisfitError: the round does not fit the stitches.
    """
    cursor = _Cursor(count=count, size=size, yarn=yarn, waiting=list(markers))
    items = cursor.work(elements)
    left = count - cursor.used
    if left:
        works = any(
            stitch(run.stitch).kind not in (Kind.EDGE, Kind.MARK, Kind.SHIFT) for run in flatten(tuple(items))
        )
        if works and not cursor.turned:
            raise MisfitError(
                place,
                f"the line works {cursor.used} of the {count} stitches on the needles; {left} are left over.",
                _leftover_hint(elements, count, cursor.used),
            )
        cursor.advance(Run("rest", left, yarn), items)
    cursor.pass_markers()
    return Worked(
        items=tuple(items), after=cursor.made, markers=tuple(cursor.placed), held=tuple(cursor.held)
    )


def _leftover_hint(elements: tuple[Element, ...], count: int, used: int) -> str:
    if used and count % used == 0:
        return f'Did the line mean to repeat? "*…; rep from * to end" fits {count // used} times.'
    return 'End the line with "k to end" where the rest is knitted.'


@dataclass(slots=True, kw_only=True)
class _Cursor:
    """The place in the round while it is worked."""

    count: int
    size: int
    yarn: str
    waiting: list[int]
    """Markers not reached yet, on the old round."""
    used: int = 0
    made: int = 0
    placed: list[int] = field(default_factory=list)
    held: list[tuple[str, int]] = field(default_factory=list)
    turned: bool = False
    at_marker: bool = False
    """Whether a marker at this very place was already slipped."""

    def work(self, elements: tuple[Element, ...]) -> list[Item]:
        items: list[Item] = []
        for number, element in enumerate(elements):
            if isinstance(element, Several):
                self._several(element, elements[number + 1 :], items)
            elif isinstance(element, Work):
                self._work(element, items)
            elif isinstance(element, Until):
                self._until(element, items)
            elif isinstance(element, Mark):
                self._mark(element, items)
            elif isinstance(element, Hold):
                self._hold(element, items)
            else:
                self.turned = True
                items.append(Run("w&t" if element.method == "wrap" else "turn", 1, self.yarn))
        return items

    def advance(self, run: Run, items: list[Item]) -> None:
        """Work a run, carrying the markers that it passes."""
        entry = stitch(run.stitch)
        if run.times <= 0:
            return
        start_used, start_made = self.used, self.made
        self.used += run.uses
        self.made += run.leaves
        if entry.uses:
            while self.waiting and self.waiting[0] < self.used:
                passed = self.waiting.pop(0)
                self.placed.append(start_made + (passed - start_used) // entry.uses * entry.leaves)
            self.at_marker = False
        items.append(run)

    def pass_markers(self) -> None:
        """Carry the markers at the very end of the round."""
        for passed in self.waiting:
            if passed <= self.used and self.made not in self.placed:
                self.placed.append(self.made)
        self.waiting = []
        self.placed = sorted({place for place in self.placed if 0 < place < self.made})

    def _need(self, uses: int, what: str, place: Place) -> None:
        left = self.count - self.used
        if uses > left:
            raise MisfitError(
                place,
                f"{what} needs {uses} stitches; {left} of the {self.count} are left at this place.",
            )

    def _work(self, element: Work, items: list[Item]) -> None:
        times = element.times.of(self.size)
        run = Run(element.stitch, times, element.yarn or self.yarn)
        self._need(run.uses, _said(element.stitch, times), element.place)
        self.advance(run, items)

    def _hold(self, element: Hold, items: list[Item]) -> None:
        times = element.times.of(self.size)
        name = element.name or "holder"
        self._need(times, f"hold {times}", element.place)
        self.held.append((name, times))
        self.advance(Run("hold", times, name), items)

    def _mark(self, element: Mark, items: list[Item]) -> None:
        if element.stitch == "pm":
            self.placed.append(self.made)
        elif not self.waiting or self.waiting[0] != self.used:
            where = (
                f"the next is {self.waiting[0] - self.used} stitches on"
                if self.waiting
                else "there is none left"
            )
            raise MisfitError(element.place, f'"{element.stitch}": no marker is at this place; {where}.')
        else:
            self.waiting.pop(0)
            if element.stitch == "sm":
                self.placed.append(self.made)
            self.at_marker = True
        items.append(Run(element.stitch, 1, self.yarn))

    def _goal(self, element: Until | Several) -> int:
        """Give the place up to which an element works. Unit: stitches of the old round."""
        short = element.short.of(self.size) if element.short else 0
        if element.goal == "marker":
            if not self.waiting:
                raise MisfitError(
                    element.place,
                    "no marker is left in this round.",
                    "Place markers first: pm in a line, or Place marker every 20 sts.",
                )
            goal = self.waiting[0] - short
        elif element.goal == "last":
            goal = self.count - short
        else:
            goal = self.count
        if goal < self.used:
            raise MisfitError(
                element.place,
                f"{self.used} stitches are worked at this place, past the one to work to ({goal}).",
            )
        return goal

    def _until(self, element: Until, items: list[Item]) -> None:
        goal = self._goal(element)
        code = "k" if element.stitch == "pattern" else element.stitch
        entry = stitch(code)
        room = goal - self.used
        if not entry.uses or room % entry.uses:
            raise MisfitError(
                element.place,
                f'"{code}" uses {entry.uses} stitches and cannot fill the {room} up to this place.',
            )
        self.advance(Run(code, room // entry.uses, element.yarn or self.yarn), items)

    def _several(self, element: Several, following: tuple[Element, ...], items: list[Item]) -> None:
        if element.goal == "times" and element.times is not None:
            self._repeat(element, element.times.of(self.size), items)
            return
        unit = self._unit(element)
        goal = self._goal(element)
        if element.goal == "rest":
            goal -= sum(_fixed_uses(other, self.size) for other in following)
        room = goal - self.used
        if unit == 0:
            raise MisfitError(element.place, "the repeat uses no stitches, so it would never end.")
        if room < 0 or room % unit:
            raise MisfitError(element.place, *_no_division(unit, room, self.count))
        self._repeat(element, room // unit, items)

    def _unit(self, element: Several) -> int:
        return sum(_fixed_uses(inner, self.size) for inner in element.elements)

    def _repeat(self, element: Several, times: int, items: list[Item]) -> None:
        """Work a group; equal rounds of it are kept as one group."""
        if times == 0:
            return
        marks = any(isinstance(inner, Until | Mark) for inner in element.elements)
        if marks or times == 1:
            for _ in range(times):
                items.extend(self.work(element.elements))
            return
        start = self.used
        once = self.work(element.elements)
        unit = self.used - start
        self._need(unit * (times - 1), f"the repeat of {unit} stitches, {times} times,", element.place)
        if self.waiting:
            for _ in range(times - 1):
                for run in flatten(tuple(once)):
                    self.advance(run, [])
        else:
            self.used += unit * (times - 1)
            self.made += sum(item.leaves for item in once) * (times - 1)
        items.append(Group(tuple(once), times))


def _fixed_uses(element: Element, size: int) -> int:
    """Give the stitches an element uses by its own number. Raises MisfitError where it is open-ended."""
    if isinstance(element, Work):
        return element.times.of(size) * stitch(element.stitch).uses
    if isinstance(element, Hold):
        return element.times.of(size)
    if isinstance(element, Mark | TurnHere):
        return 0
    if isinstance(element, Several) and element.times is not None:
        return element.times.of(size) * sum(_fixed_uses(inner, size) for inner in element.elements)
    raise MisfitError(
        element.place,
        "an element that works up to a place cannot stand inside a repeat that does so too.",
        "Give the inner one a number.",
    )


def _no_division(unit: int, room: int, count: int) -> tuple[str, str]:
    fits, over = divmod(max(room, 0), unit)
    below, above = count - over, count + unit - over
    message = (
        f"the repeat of {unit} stitches does not divide the {room} it has: {fits} repeats leave {over} over."
    )
    near = f"{below} or {above}" if below > 0 else f"{above}"
    return message, f"It would fit on {near} stitches instead of {count}."


def _said(code: str, times: int) -> str:
    return f"{code}{times}" if len(code) == 1 else f"{code} × {times}" if times > 1 else code
