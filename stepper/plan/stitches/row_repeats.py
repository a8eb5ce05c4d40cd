"""Work runs of stitches one after the other, and the repeats of them inside a round. No I/O."""

from __future__ import annotations

from dataclasses import field, replace

from stepper.craft.stitches import stitch
from stepper.plan.model import Group, Item, Run, flatten
from stepper.plan.stitches.inline_repeats import goes_by_markers, no_division, said_so_often
from stepper.plan.stitches.needle_by_needle import NeedleEnds
from stepper.plan.stitches.places import RoundProgress
from stepper.plan.stitches.round_sources import TwoReadings
from stepper.plan.stitches.row_elements import MisfitError, fixed_uses
from stepper.project.problems import Span
from stepper.project.stitchwork import Element, Mark, Several, Until, Work
from stepper.records import dataclass


@dataclass(slots=True, kw_only=True)
class RowRepeats(RoundProgress):
    """A round as far as it is worked, with what it takes to work a part of it over and over."""

    yarn: str
    ends: NeedleEnds = field(default_factory=NeedleEnds)
    """Where the needles of a sock end."""
    halves: NeedleEnds = field(default_factory=NeedleEnds)
    """Where its instep and its sole end."""

    def work(self, elements: tuple[Element, ...]) -> list[Item]:
        """Work elements one after the other; return what they come to."""
        raise NotImplementedError

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
        for carried in (self.ends, self.halves):
            if carried.waiting:
                carried.advance(run, entry, start_used, start_made)
        items.append(run)

    def need(self, uses: int, what: str, place: Span) -> None:
        """Require a number of stitches.

        Raises:
            MisfitError: there are fewer.
        """
        left = self.facing.room - self.used
        if uses > left:
            raise MisfitError(
                place,
                f"{what} needs {uses} stitches; {left} of the {self.facing.count} are left at this place.",
            )

    def _around(self, element: Several, items: list[Item]) -> None:
        """Work "k8, k2tog around": all of it to the end, or in the other reading its last stitch alone."""
        last = element.elements[-1]
        assert isinstance(last, Work)
        place = element.place
        words = ", ".join(
            said_so_often(one.stitch, one.times.of(self.size))
            for one in element.elements
            if isinstance(one, Work)
        )
        choice = TwoReadings(
            place=place,
            words=f"{words} to the end",
            first="all of it repeated to the end",
            second=f"only {last.stitch} repeated to the end",
            line=place.line,
        )
        if self.supplies.reads_second(choice):
            alone = Until(last.stitch, "end", None, last.yarn, last.place)
            items.extend(self.work((*element.elements[:-1], alone)))
            return
        self.several(replace(element, goal="end"), (), items)

    def several(self, element: Several, following: tuple[Element, ...], items: list[Item]) -> None:
        """Work a repeat, as often as its number or its place says."""
        if element.goal == "around":
            self._around(element, items)
            return
        if element.times is not None:
            self._repeat(element, self._times(element, element.times.of(self.size)), items)
            return
        if element.goal == "markers" or (element.goal in ("rest", "end") and goes_by_markers(element)):
            self._repeat(element, self._sections(element), items)
            return
        unit = self._unit(element)
        goal = self.goal(element)
        if element.goal == "fit":
            fixed = (other for other in following if not isinstance(other, Until))
            goal -= sum(fixed_uses(other, self.size) for other in fixed)
            self._repeat(element, max(0, goal - self.used) // max(1, unit), items)
            return
        tailed = element.goal == "end" and all(isinstance(other, Work | Mark) for other in following)
        ends = element.goal == "rest" or tailed  # "rep from * across, k2": the two end the row
        behind = sum(fixed_uses(other, self.size) for other in following) if ends else 0
        room = goal - self.used - behind
        if unit == 0:
            raise MisfitError(element.place, "the repeat uses no stitches, so it would never end.")
        if room < 0:
            told = f"what stands behind the repeat uses {behind} stitches; {room + behind} are left for both."
            raise MisfitError(element.place, told)
        if room % unit:
            raise MisfitError(element.place, *no_division(unit, room, self.facing.count))
        self._repeat(element, room // unit, items)

    def _times(self, element: Several, times: int) -> int:
        """Return how often a repeat with a number is worked, and remember it if that has two readings."""
        if not element.reading or times < 2:
            return times
        choice = TwoReadings(
            place=element.place,
            words=f"rep from * {times - 1} times",
            first=f"{times} times in all",
            second=f"{times - 1} times in all",
            line=element.place.line,
        )
        return times - self.supplies.reads_second(choice)

    def _sections(self, element: Several) -> int:
        """Return how often a repeat that works from marker to marker is worked: once for every section."""
        marks = sum(isinstance(inner, Mark) and inner.stitch != "pm" for inner in element.elements)
        after = element.elements[-1]
        to_end = isinstance(after, Mark) and element.goal != "markers"
        sections = len(self.waiting) + (1 if to_end else 0)
        if not marks or sections % marks:
            raise MisfitError(
                element.place,
                f"the repeat meets {marks} markers and does not divide the {sections} that are left.",
                "Place markers first: pm in a line, or Place marker every 20 sts.",
            )
        if element.name == "both" and sections != 2 * marks:
            told = f"two markers are meant, and {sections} hang ahead in this round."
            raise MisfitError(element.place, told, "Place a marker at each side first.")
        return sections // marks

    def _unit(self, element: Several) -> int:
        return sum(fixed_uses(inner, self.size) for inner in element.elements)

    def _repeat(self, element: Several, times: int, items: list[Item]) -> None:
        """Work a group; equal rounds of it are kept as one group."""
        if times == 0:
            return
        if times == 1 or _varies(element):
            passes = [tuple(self.work(element.elements)) for _ in range(times)]
            if times > 1 and len(set(passes)) == 1:
                items.append(Group(passes[0], times))
            else:
                items.extend(item for made in passes for item in made)
            return
        start = self.used
        once = self.work(element.elements)
        unit = self.used - start
        more = f"{times - 1} more time{'s' if times > 2 else ''}"
        self.need(unit * (times - 1), f"the repeat of {unit} stitches, {more},", element.place)
        if self.waiting or self.ends.waiting or self.halves.waiting:
            for _ in range(times - 1):
                for run in flatten(tuple(once)):
                    self.advance(run, [])
        else:
            self.used += unit * (times - 1)
            self.made += sum(item.leaves for item in once) * (times - 1)
        items.append(Group(tuple(once), times))


def _varies(element: Several) -> bool:
    """Return whether a repeat may come to something else each time, or has to be counted each time.

    It does not where all of it is stitches by their number.
    """
    for inner in element.elements:
        if isinstance(inner, Several):
            if inner.times is None or _varies(inner):
                return True
        elif not isinstance(inner, Work) or inner.stitch == "pattern" or inner.fabric:
            return True
    return False
