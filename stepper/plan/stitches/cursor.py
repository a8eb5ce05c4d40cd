"""The place in a round while it is worked; every element of the line moves it on. No I/O.

Open-ended elements (`k to last 3 sts`, `rep from * to end`) run up to their place; all others have their own
number. All places are counted from where the row begins (`stepper.plan.stitches.row_facing`). It is long
because every kind of element moves the one place, in one class.
"""

from __future__ import annotations

from dataclasses import field, replace
from itertools import groupby

from stepper.craft.even.manners import Manner
from stepper.craft.stitches import TURNS, Kind, stitch
from stepper.plan.model import Group, Item, Run
from stepper.plan.stitches.both_sides import BALLS, cross_neck
from stepper.plan.stitches.cable_cells import cross_again
from stepper.plan.stitches.evenly import even_round, in_fabric, usual_change
from stepper.plan.stitches.halves import HALVES, SAY_WHERE, Instep, bounds_of, half_left_over, in_halves
from stepper.plan.stitches.inline_repeats import said_so_often
from stepper.plan.stitches.needle_by_needle import SAY_HOW, UNDIVIDED, in_order, left_over, parts_of
from stepper.plan.stitches.places import begins_round
from stepper.plan.stitches.rib_cells import is_ribbed
from stepper.plan.stitches.row_elements import (
    UNNAMED,
    JustWorked,
    MisfitError,
    fixed_uses,
    held_stitches,
    is_of_pair,
    is_short,
    is_unnamed,
    name_apart,
)
from stepper.plan.stitches.row_repeats import RowRepeats
from stepper.plan.stitches.run_repeats import condense, join_runs
from stepper.project.problems import Span, nearest, one_of
from stepper.project.stitchwork import (
    Across,
    ChartPart,
    Element,
    Hold,
    Mark,
    PickUp,
    Several,
    Spread,
    TurnHere,
    Until,
    Work,
)
from stepper.records import dataclass

MOST_STITCHES = 20_000
"""More stitches than any round has; a larger number is a slip of the pen."""
_MOST_STEPS = 50_000
_TOO_MANY = "this comes to more stitches than any round has."
_TURNED = "the line turns in the middle of a row and goes on: what is worked back is a row of its own."
_ROWS = 'Write each row as a sentence: "K10, turn. P10, turn. K to end."'

_OF_BODY = frozenset(("front", "back", "half", "body"))
_BESIDE_BODY = frozenset(("underarm", "underarms", "armhole", "armholes"))
"""What waits beside a body and is no part of it: it is grafted later."""
"""Words for a part of a body that is on hold as one."""
_WHICH_MARKER = "the stitches before it pass a marker; that one may be meant, or the end of the round."
_SAY_MARKER = 'Write "removing markers" for all, or where it hangs: "K to marker, remove marker, k to end."'
_ASIDE = ("sleeve", "thumb", "gusset", "instep", "underarm", "neck", "tab")
"""Parts that wait on hold while others are worked."""


@dataclass(slots=True, kw_only=True)
class Cursor(RowRepeats):
    """The place in the round while it is worked."""

    method: str
    held: list[tuple[str, int]] = field(default_factory=list)
    behind: list[JustWorked] = field(default_factory=list)
    """Stitches that go on hold when the row has worked them."""
    returned: list[str] = field(default_factory=list)
    called: frozenset[str] = frozenset()
    """Parts on hold that the line names."""
    taken: dict[str, int] = field(default_factory=dict)
    """Stitches taken so far of a part on hold that the line works in pieces, by name."""
    charts: list[tuple[str, int]] = field(default_factory=list)
    turned: bool = False
    parted: bool = False
    """Whether the row ended at a turn with the rest put on hold."""
    instep: Instep | None = None
    """Where the instep of a sock lies, on the old round; None if nobody can tell."""
    came: Instep | None = None
    """Where it lies on the new round if the row took it back from hold."""
    begins: int = 0
    """Where a marker for the beginning of the round was placed within it, on the new round; 0 for nowhere."""
    steps: int = 0
    """Number of elements worked so far, counting every pass of a repeat."""

    def __post_init__(self) -> None:
        """Take the markers that the row will meet."""
        self.waiting = list(self.facing.markers)

    def work_row(self, elements: tuple[Element, ...]) -> list[Item]:
        """Work the elements of a whole row; of one told needle by needle, those of each needle to its end.

        Raises:
            MisfitError: one of them does not fit.
        """
        items = self._work_row(elements)
        if self.made > MOST_STITCHES:
            raise MisfitError(elements[0].place, _TOO_MANY)
        return items

    def _work_row(self, elements: tuple[Element, ...]) -> list[Item]:
        parts = parts_of(elements)
        if not parts:
            return self.work(elements)
        whole, items, start = self.facing, list[Item](), 0
        of_foot = parts[0][0].name in HALVES
        if of_foot:
            parts, bounds = in_halves(parts, self.instep, whole.end)
        else:
            if not self.ends.waiting:
                self._lay_on_two(parts)
            bounds = [*self.ends.waiting, whole.end]
            parts = in_order(parts, len(bounds))
        carried = (self.ends, self.halves)
        kept = [(one, {place for place in one.waiting if place in bounds}) for one in carried]
        for one, here in kept:
            one.waiting = [place for place in one.waiting if place not in here]
        for number, (mark, inside) in enumerate(parts, 1):
            end = bounds[number - 1]
            self.facing = replace(whole, end=end)
            items += self.work(inside)
            if self.used != end:
                holds, worked = end - start, self.used - start
                half = half_left_over(mark, holds, worked)
                raise half if of_foot else left_over(mark, number, holds, worked)
            start = self.used
            for one, here in kept:
                one.placed += [self.made] * (end in here)
        self.facing = whole
        return items

    def _lay_on_two(self, parts: list[tuple[Mark, tuple[Element, ...]]]) -> None:
        """Take the first of two needles as that of the instep, where the rounds begin with it, and tell it.

        Raises:
            MisfitError: they do not, or there are other needles.
        """
        first, bounds = parts[0][0], bounds_of(self.instep, self.facing.end)
        two = sorted(mark.name for mark, _ in parts) == ["1", "2"]
        if self.instep is None or self.instep[0] or len(bounds) != 1 or not two:
            raise MisfitError(first.place, UNDIVIDED, SAY_HOW)
        told = f"needle 1 is taken to hold the instep, {bounds[0]} stitches, with which the round begins."
        self.supplies.tell(first.place, told)
        self.ends.waiting = bounds

    def work(self, elements: tuple[Element, ...]) -> list[Item]:
        """Work elements one after the other; return the resulting items.

        Raises:
            MisfitError: one of them does not fit.
        """
        items: list[Item] = []
        last = begun = self.made
        for number, element in enumerate(elements):
            last, begun = begun, self.made
            self.steps += 1
            if self.steps > _MOST_STEPS:
                raise MisfitError(element.place, _TOO_MANY)
            if self.turned and not _may_follow_turn(element):
                raise MisfitError(element.place, _TURNED, _ROWS)
            self.closes_gap = self.method == "wrap" and _is_decrease(elements[number + 1 : number + 2])
            if isinstance(element, Several):
                self.several(element, elements[number + 1 :], items)
            elif isinstance(element, Work):
                self._work(element, items)
            elif isinstance(element, Until):
                self._until(element, items)
            elif isinstance(element, Mark):
                self._mark(element, items, last)
            elif isinstance(element, Hold) and element.worked:
                self.behind.append(JustWorked(hold=element, last=last, end=self.made))
            elif isinstance(element, Hold):
                self._hold(element, items, works_on=_works_on(elements[number + 1 :]))
            elif isinstance(element, TurnHere):
                self._turn(element, items)
            elif isinstance(element, ChartPart):
                self._chart(element, elements[number + 1 :], items)
            else:
                self._supplied(element, items)
        return items

    def _supplied(self, element: PickUp | Across | Spread, items: list[Item]) -> None:
        if isinstance(element, Spread):
            self._spread(element, items)
        elif isinstance(element, PickUp):
            number = self.supplies.picked(element)
            if number < 1:
                raise MisfitError(element.place, "no rows were worked there to pick up from.")
            self.advance(Run("pu", number, self.yarn), items)
        else:
            self._across(element, items)

    def _across(self, element: Across, items: list[Item]) -> None:
        """Work across held stitches, or across those on the needles if nothing of that name is on hold."""
        held = {name: number for name, number in self.supplies.held.items() if name not in self.returned}
        section = self.supplies.section.lower()
        all_here = element.number is None or element.number.of(self.size) == self.facing.room
        in_hand = bool(self.facing.end) and section not in held and not self.used and all_here
        own = section if element.name.endswith("s") else section.removesuffix("s")
        waits = any(set(part.split()) <= set(element.name.split()) for part in held)
        named = bool(element.name) and (own == element.name or own.endswith(f" {element.name}"))
        # The part came back before: its stitches are those on the needles, not another part's on hold.
        by_name = in_hand and named and not waits
        # "Transfer sleeve sts to dpns. Pick up 3 sts, knit across the held sts": those that came back.
        unnamed = self.supplies.came_back and not element.name and all_here and not self.used
        if by_name or unnamed:
            self._until(Until(element.stitch, "end", None, None, element.place), items)
            return
        known = element.name in held or is_short(element.name, held)
        # "Across held sts" names no part and means some on hold, never those on the needle beside them.
        known = known or (not element.name and bool(held))
        here = not known and not self.used and bool(self.facing.end) and not nearest(element.name, held)
        aside = element.number is None and element.name.endswith(_ASIDE) and any(map(is_unnamed, held))
        if here and aside:
            told = f'"{element.name}" may be what is on the needle or what is on hold without a name.'
            raise MisfitError(element.place, told, "Say how many stitches they are.")
        if here and element.name.split()[-1:] in (["instep"], ["sole"]):
            told = f"the {element.name} is a part of what is on the needles; the rest is not told."
            raise MisfitError(element.place, told, SAY_WHERE)
        if here and all_here:
            self._until(Until(element.stitch, "end", None, None, element.place), items)
            return
        supplies = self.supplies
        try:
            name, number = held_stitches(
                element, held, self.size, supplies.section, supplies.copied, supplies.lots()
            )
        except MisfitError:
            # "76 sts of the front, 46 sts of the right sleeve, 76 sts of the back": both are of the body.
            number = element.number.of(self.size) if element.number is not None else 0
            words = set(element.name.split())
            of_body = bool(words & {"front", "back"}) and words <= _OF_BODY
            if not of_body or not self._from_hold(element, number, items):
                raise
            return
        self.returned.append(name)
        begin = self.made
        self.advance(Run("return", number, name), items)
        if name == "instep":
            self.came = (begin, self.made)

    def _from_hold(self, element: Work | Across, times: int, items: list[Item]) -> bool:
        """Work stitches of the one part on hold that the line does not name: `k68 front sts` of a body.

        Only where nothing is on the needles, and plain stitches; all of it is worked by the end of the round.
        Without a number (0) they are what is left of it, or half of it where its underarms part it in two
        halves alike.
        """
        called = {*self.called, *(f"{name}s" for name in self.called), *self.returned}
        others = [name for name in self.supplies.held if name.partition(",")[0] not in called]
        of_body = [one for one in others if not is_unnamed(one) and not _BESIDE_BODY & set(one.split())]
        others = of_body or others
        if element.stitch not in ("k", "p") or len(others) != 1 or not self.called:
            return False
        (name,) = others
        taken = self.taken.get(name, 0)
        left = self.supplies.held[name] - taken
        times = times or (left if taken else self.supplies.half(name))
        if not times:
            return False
        if times > left:
            raise MisfitError(
                element.place, f"{times} stitches are worked of the {left} left on hold for {name}."
            )
        self.taken[name] = taken + times
        if times == left:
            self.returned.append(name)
        self.advance(Run("return", times, name), items)
        return True

    def check_taken(self, place: Span) -> None:
        """Report a part on hold of which only some stitches were worked.

        Raises:
            MisfitError: some are left.
        """
        for name, taken in self.taken.items():
            left = self.supplies.held[name] - taken
            if left:
                raise MisfitError(place, f"{left} of the stitches on hold for {name} are not worked.")

    def _turn(self, element: TurnHere, items: list[Item]) -> None:
        if self.used == 0:
            raise MisfitError(element.place, "the row turns before a stitch of it is worked.")
        rest = self.facing.room - self.used
        if element.left is not None and element.left.of(self.size) != rest:
            said = element.left.of(self.size)
            raise MisfitError(
                element.place, f"the line leaves {said} stitches unworked; {rest} are left here."
            )
        if not rest and self.supplies.flat and not self.held:
            return  # the row ends here, and every row is turned at its end
        if not rest and self.held:
            self.parted = True  # all that is left waits on hold: the row ends here, as every row does
            return
        self.turned = True
        closed = bool(items) and isinstance(items[-1], Run) and stitch(items[-1].stitch).kind is Kind.DECREASE
        method = element.method or ("plain" if closed else self.method)
        items.append(Run("w&t" if method == "wrap" else "turn", 1, self.yarn))

    def _chart(self, element: ChartPart, after: tuple[Element, ...], items: list[Item]) -> None:
        room = self._room(element, after)
        drawn = self.supplies.chart(element, room)
        if not drawn.fits(room):
            edges = f" besides {drawn.edges} of its edges" if drawn.edges else ""
            raise MisfitError(
                element.place,
                f'chart "{element.name}" repeats {drawn.uses} stitches{edges} and does not fit '
                f"the {room} it has here.",
                f"It would fit on {one_of(map(str, drawn.near(room)))}.",
            )
        self.need(room, f'chart "{element.name}"', element.place)
        self.charts.append((drawn.name, drawn.number))
        times = drawn.times(room)
        if len(drawn.repeat) < 2 or not times:  # a plain row is read as one stretch, not as repeats
            plain = (Run(run.stitch, run.times * times, run.yarn) for run in drawn.repeat if times)
            for run in join_runs((*drawn.before, *plain, *drawn.after)):
                self.advance(run, items)
            return
        for run in drawn.before:
            self.advance(run, items)
        once: list[Item] = []
        for number in range(times):
            for run in drawn.repeat:
                self.advance(run, once if number == 0 else [])
        items.append(Group(tuple(once), times, drawn.name))
        for run in drawn.after:
            self.advance(run, items)

    def _room(self, element: ChartPart, after: tuple[Element, ...]) -> int:
        """Return the stitches a chart is worked over.

        "K3, work chart, k3" leaves the last three; "sm, work chart, p1, sm" all up to a stitch before the
        marker. Where what follows goes on to a place itself, the chart is worked once across.
        """
        if element.over is not None:
            return element.over.of(self.size)
        if element.goal != "fill":
            return self.goal(element) - self.used
        if own := self.supplies.width(element):
            return own
        behind = 0
        for each in after:
            if isinstance(each, Mark) and each.stitch != "pm":
                return self.goal(replace(element, goal="marker")) - behind - self.used
            if isinstance(each, Until) or (isinstance(each, Several | ChartPart) and each.goal):
                drawn = self.supplies.chart(element, self.facing.end - self.used)
                return drawn.edges + drawn.uses
            behind += fixed_uses(each, self.size)
        return max(0, self.facing.end - behind - self.used)

    def _work(self, element: Work, items: list[Item]) -> None:
        times = element.times.of(self.size)
        if element.stitch == "pattern":
            self._as_it_looks(times, element, items)
            return
        if element.fabric:
            self._stretch(times, element, items)
            return
        run = Run(element.stitch, times, element.yarn or self.yarn)
        if not self.facing.count and run.uses and self._from_hold(element, times, items):
            return
        if run.uses > self.facing.room - self.used:
            self.need(run.uses, said_so_often(element.stitch, times), element.place)
        self.advance(run, items)

    def _hold(self, element: Hold, items: list[Item], *, works_on: bool) -> None:
        # "K to marker, place sleeve sts on hold, k to end": the part reaches to the next marker.
        beyond = element.times is None and works_on and any(self.used < mark for mark in self.waiting)
        to_marker = element.to_marker or beyond
        times = self._held_number(element, to_marker=to_marker, works_on=works_on)
        # All of a part made twice goes by the part's name with its number printed too: both wait.
        twice = times == self.facing.count and is_of_pair(self.supplies.section)
        all_of_it = (element.times is None or twice) and not to_marker and not self.used
        name = self._held_name(element, whole=all_of_it)
        self.need(times, f"hold {times}", element.place)
        if self.turned:
            self._close_turn(times, element.place, items)
        elif self.facing.around and self.facing.wrong and self.used and times == self.facing.room - self.used:
            # A heel from the middle of the sole: both turns are its edges, and rows follow on it.
            self.parted = True
        self.held.append((name, times))
        self.advance(Run("hold", times, name), items)

    def _held_number(self, element: Hold, *, to_marker: bool, works_on: bool) -> int:
        """Return how many stitches go on hold: as told, to the next marker, or all that are left."""
        left = self.facing.room - self.used
        if to_marker:
            times = self.goal(Until("k", "marker", None, None, element.place)) - self.used
        else:
            times = element.times.of(self.size) if element.times is not None else left
        if element.times is None and works_on and not to_marker:
            raise MisfitError(
                element.place,
                "all the stitches left go on hold here, and the line works more behind them.",
                "Write how many are put on hold, or place a marker behind them.",
            )
        if element.times is None and not times and self.used:
            raise MisfitError(
                element.place,
                "no stitches are left in this row to go on hold.",
                'Put what the row has worked on hold in a line of its own: "Place all sts on a holder."',
            )
        if element.rest and times < left:
            raise MisfitError(
                element.place,
                f"{times} stitches are called the remaining ones, and {left} are left here.",
                f'Write which: "hold {times} sts" for the next ones, or "hold last {times} sts".',
            )
        return times

    def _held_name(self, element: Hold, *, whole: bool) -> str:
        """Return the name under which stitches wait: as told, else that of the section if it is all of it."""
        name = element.name or (self.supplies.section.lower() if whole else "") or UNNAMED
        line = element.place.line
        before = {other for other in self.supplies.held if self.supplies.held_by.get(other) != line}
        return name_apart(name, {other for other, _ in self.held} | (before - set(self.returned)))

    def _close_turn(self, times: int, place: Span, items: list[Item]) -> None:
        """Take back a turn after which all that is left goes on hold: the row ends there."""
        left = self.facing.room - self.used
        if times != left:
            raise MisfitError(
                place,
                f"{times} stitches go on hold at the turn, and {left} are left there.",
                f"Hold all {left}, or say how the others are worked before the turn.",
            )
        del items[max(at for at, item in enumerate(items) if _is_turn(item))]
        self.turned, self.parted = False, True

    def _fell(self, items: list[Item]) -> bool:
        """Take out a marker that hung among the stitches just bound off or held; return whether one did."""
        bound = 0
        for item in reversed(items):
            if not (isinstance(item, Run) and item.stitch in ("bo", "hold")):
                break
            bound += item.times
        if self.made not in self.placed or not any(
            self.used - bound < mark < self.used for mark in self.facing.markers
        ):
            return False
        self.placed.remove(self.made)
        return True

    def _went_along(self, items: list[Item]) -> bool:
        """Return whether a marker that is known no more may have gone on hold with the stitches just held.

        It is the one of the beginning of the round, where that was moved to before it. A marker that hangs
        nearer than they are many may be meant instead.
        """
        last = items[-1] if items else None
        if not (isinstance(last, Run) and last.stitch == "hold"):
            return False
        return not self.waiting or self.waiting[0] - self.used >= last.times

    def _begins_bound_off(self, items: list[Item]) -> bool:
        """Return whether a round without markers has only bound off so far: "BO 8 sts, rm, k to end"."""
        if self.supplies.flat or self.facing.markers or self.waiting or self.placed:
            return False
        return bool(items) and all(isinstance(item, Run) and item.stitch == "bo" for item in items)

    def _mark(self, element: Mark, items: list[Item], last: int) -> None:
        """Work a marker; `last` is where the stitches before it begin on the new row."""
        if element.name == "all":
            self.waiting, self.placed = [], []
            return
        if self.facing.parted or element.stitch in BALLS:
            cross_neck(element, self, items)
            return
        if element.stitch == "pm":
            self.placed.append(self.made)
            self.begins = self.made if begins_round(element.name) else self.begins
            if self.waiting and self.waiting[0] == self.used and not self.begins:
                self.waiting.pop(0)  # it hangs here already, as where a round is worked again
                items.append(Run("sm", 1, self.yarn))
                return
        elif self.waiting and self.waiting[0] == self.used:
            self.waiting.pop(0)
            if element.stitch == "sm":
                self.placed.append(self.made)
        elif element.stitch == "rm" and (self._fell(items) or self._went_along(items)):
            pass
        elif element.stitch == "rm" and self._begins_bound_off(items):
            pass  # the one at which the rounds began, among stitches bound off on both sides of it
        elif self.used and self.used != self.facing.end:  # the end of the round is a marker too
            where = (
                f"the next is {self.waiting[0] - self.used} stitches on"
                if self.waiting
                else "there is none left"
            )
            raise MisfitError(element.place, f'"{element.stitch}": no marker is at this place; {where}.')
        elif element.stitch == "rm" and any(last < mark < self.made for mark in self.placed):
            raise MisfitError(element.place, _WHICH_MARKER, _SAY_MARKER)
        items.append(Run(element.stitch, 1, self.yarn))

    def _until(self, element: Until, items: list[Item]) -> None:
        goal = self.goal(element)
        room = goal - self.used
        if element.stitch == "pattern":
            self._as_it_looks(room, element, items)
            return
        if element.fabric:
            self._stretch(room, element, items)
            return
        entry = stitch(element.stitch)
        if not entry.uses or room % entry.uses:
            raise MisfitError(
                element.place,
                f'"{element.stitch}" uses {entry.uses} stitches and cannot fill the {room} up to this place.',
            )
        self.advance(Run(element.stitch, room // entry.uses, element.yarn or self.yarn), items)

    def _stretch(self, number: int, element: Work | Until, items: list[Item]) -> None:
        """Work stitches in a fabric called by its name."""
        self.need(number, f"working {number} in {element.fabric} stitch", element.place)
        cells = self.supplies.stretch(element.fabric, self.used, number, element.place)
        runs = join_runs(
            Run(code, len(tuple(alike)), self.yarn) for code, alike in groupby(code for code, _ in cells)
        )
        for run in runs:
            self.advance(run, [])
        items.extend(condense(runs))

    def _as_it_looks(self, number: int, element: Work | Until, items: list[Item]) -> None:
        """Work stitches as the pattern has them, from this side."""
        self.need(number, f"working {number} in pattern", element.place)
        seen = self.supplies.look(element.place)
        cells = seen[self.used : self.used + number]
        cells += (("k", ""),) * (number - len(cells))
        if element.ribbed and not is_ribbed(seen, cells):
            told = "no rib stands under these stitches, so nobody can tell which are knitted."
            raise MisfitError(element.place, told, "Write the rib with its stitches, for example k2, p2.")
        if element.patterned and {code for code, _ in cells} == {"k"} and not self.supplies.pattern_stands():
            told = "no pattern has been set up before this line, so nobody can tell how these are worked."
            raise MisfitError(element.place, told, "Write them out, or the rows of the pattern before them.")
        worked, broken = cross_again(cells)
        for cable in broken:
            told = f"{cable} does not cross here: not all of its stitches stand together."
            self.supplies.tell(element.place, told)
        runs = join_runs(
            Run(code, len(tuple(alike)), yarn or self.yarn) for (code, yarn), alike in groupby(worked)
        )
        for run in runs:
            self.advance(run, [])
        items.extend(condense(runs))

    def _spread(self, element: Spread, items: list[Item]) -> None:
        """Make or lose stitches evenly over the next so many, with half a gap at both ends."""
        short = element.short.of(self.size) if element.short is not None else 0
        left = self.facing.end - self.used - short
        over, by = element.over.of(self.size) if element.over is not None else left, element.by.of(self.size)
        self.need(over, f"the change over {over} stitches", element.place)
        after = over + element.change * by
        change = usual_change(over, after, self.yarn, element.worked_in)
        try:
            phrase = even_round(over, by, change, flat=True, manner=Manner.MIXED).items
        except ValueError as error:
            raise MisfitError(
                element.place, f"the {by} changes do not fit {over} stitches: {error}"
            ) from error
        seen = self.supplies.look(element.place)[self.used : self.used + over]
        if element.stitch:
            seen = ((element.stitch, ""),) * over
        try:
            runs = in_fabric(phrase, seen)
        except ValueError as error:
            raise MisfitError(element.place, f"{error}.") from error
        for run in runs:
            self.advance(run, [])
        items.extend(condense(runs))


def _works_on(elements: tuple[Element, ...]) -> bool:
    """Return whether some of the elements work stitches of the old round."""
    return any(isinstance(each, Until | Work) and not _adds(each) for each in elements)


def _adds(element: Until | Work) -> bool:
    """Return whether an element takes no stitch of the old round, as a cast-on does."""
    return element.stitch != "pattern" and not stitch(element.stitch).uses


def _is_decrease(elements: tuple[Element, ...]) -> bool:
    """Return whether the first of some elements is a decrease."""
    first = elements[0] if elements else None
    if not isinstance(first, Work) or first.stitch == "pattern":
        return False
    return stitch(first.stitch).kind is Kind.DECREASE


def _may_follow_turn(element: Element) -> bool:
    """Return whether an element may stand behind a turn: one that works no stitch of the row."""
    casts_on = isinstance(element, Work) and element.stitch == "co"
    return casts_on or isinstance(element, Mark | Hold | TurnHere)


def _is_turn(item: Item) -> bool:
    return isinstance(item, Run) and item.stitch in TURNS
