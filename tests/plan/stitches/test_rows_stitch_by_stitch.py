"""A second reckoning of a written row: a knitter with two needles, who takes one stitch after the other off the left one.

Stitches and markers lie on her needles as a list; she reads the words of the row in their order and does what each says.
She shares no code with the cursor. What each stitch takes and leaves: Craft Yarn Council (from memory); that a marker hangs between
stitches and goes along with them: common practice. What words mean that print leaves open (where "to marker" leads from a
marker, what a repeat leaves room for, when a row is refused) she does as the docstrings promise, in a way of her own.
It is long because each kind of words has its own way of being followed.
"""

from __future__ import annotations

from itertools import groupby
from random import Random

from stepper.plan.model import Run, flatten
from stepper.plan.stitches.phrase import WorkedPhrase, work_phrase
from stepper.plan.stitches.round_sources import ChartRound, RoundSources
from stepper.plan.stitches.row_elements import MisfitError
from stepper.plan.stitches.row_facing import Facing, face
from stepper.project.problems import Span
from stepper.project.stitchwork import (
    ChartPart,
    Element,
    Hold,
    Mark,
    Numbers,
    PickUp,
    Several,
    TurnHere,
    Until,
    Work,
)

HERE = Span(line=1, column=1)
TAKES = {"k2tog": 2, "ssk": 2, "p2tog": 2, "sk2p": 3, "m1": 0, "yo": 0, "co": 0, "pu": 0}
"""Stitches taken by those that do not take one."""
GIVES = {"kfb": 2, "bo": 0, "hold": 0}
"""Stitches left by those that do not leave one."""
DECREASES = ("k2tog", "ssk", "p2tog", "sk2p")
IDLE = ("co", "bo", "pu", "hold", "rest", "pm", "sm", "rm", "turn", "w&t")
MARK = "|"


class RefusalError(Exception):
    """She does not know how to go on; the words say why."""


def of_stitches(each: Several) -> bool:
    """Return whether a repeat is of stitches by their number alone, in the pattern none and on hold none."""
    for one in each.elements:
        if isinstance(one, Work) and one.stitch == "pattern":
            return False
        if not isinstance(one, Work) and not (
            isinstance(one, Several) and one.times is not None and of_stitches(one)
        ):
            return False
    return True


class Knitter:
    """What is on her needles, and what she did."""

    def __init__(self, facing: Facing, method: str, supplies: RoundSources) -> None:
        self.facing, self.method, self.supplies = facing, method, supplies
        self.left: list[str] = []
        for place in range(facing.room + 1):
            self.left += [MARK] * facing.markers.count(place) + ["s"] * (place < facing.room)
        self.right: list[str] = []
        self.done: list[tuple[str, str]] = []
        self.held: list[tuple[str, int]] = []
        self.behind: list[tuple[int, int]] = []
        self.charts: list[tuple[str, int]] = []
        self.turned = self.parted = self.before_decrease = False
        self.aimed = -1
        self.alike_until = 0
        """How much she had done behind the last repeat that was the same each time: of it no single stitch is the last."""

    @property
    def taken(self) -> int:
        """Stitches of the old row she has worked."""
        return self.facing.room - self.left.count("s")

    @property
    def made(self) -> int:
        """Stitches on her right needle."""
        return self.right.count("s")

    def hanging(self) -> list[int]:
        """Return the places of the markers on the left needle, on the old row."""
        return [self.taken + self.left[:at].count("s") for at, one in enumerate(self.left) if one == MARK]

    def meets(self) -> bool:
        """Return whether any marker hangs in the row but that where the round begins."""
        return MARK in self.left + self.right or bool(self.facing.markers)

    def stitch(self, code: str, yarn: str) -> None:
        """Work one stitch."""
        for _ in range(TAKES.get(code, 1)):
            while self.left[0] == MARK:
                self.right.append(self.left.pop(0))
            self.left.pop(0)
        self.right += ["s"] * GIVES.get(code, 1)
        self.done.append((code, yarn))

    def stitches(self, code: str, times: int, yarn: str) -> None:
        """Work a stitch several times."""
        if TAKES.get(code, 1) * times > self.left.count("s"):
            raise RefusalError(f"{self.left.count('s')} of the {self.facing.count} are left at this place")
        for _ in range(times):
            self.stitch(code, yarn)

    def place_of(self, goal: str, name: str, short: int, *, several: bool = False) -> int:
        """Return up to which place of the old row she works."""
        end, ahead = self.facing.end, self.hanging()
        if goal in ("turn", "past"):
            turns = [turn for turn in self.facing.turns if turn > self.taken]
            near = [turn for turn in turns if turn <= end]
            if self.method == "wrap" and self.before_decrease and not name and len(near) > 1:
                place = near[-1] + 1
            elif not turns:
                raise RefusalError("no short row was turned ahead")
            else:
                place = turns[0] + (name == "wrap" if goal == "past" else -(name == "ds"))
            place += short if goal == "past" else -short
            if place > self.facing.room:
                raise RefusalError("past the end of the row")
        elif goal in ("marker", "behind") and not name and self.facing.room > end > self.taken and not self.meets():
            place = end + short if goal == "behind" else end - short  # the one where the round begins
            if place > self.facing.room:
                raise RefusalError("past the end of the row")
        elif goal in ("marker", "behind") and name != "end":
            if name == "first" and self.facing.markers and self.facing.markers[0] < self.taken:
                raise RefusalError("the first marker of the row is behind")
            if name.isdigit():
                every, number = self.facing.markers, int(name)
                if len(every) < number:
                    raise RefusalError("no such one to work to")
                if self.facing.wrong and 2 * number != len(every) + 1:
                    raise RefusalError("from which end the markers are counted")
                if every[number - 1] not in ahead:
                    raise RefusalError("that marker of the row is behind")
                ahead = [every[number - 1]]
            elif ahead and ahead[0] == self.taken == self.aimed:
                ahead = ahead[1:]
            if ahead:
                self.aimed = ahead[-1] if name == "last" else ahead[0]
                place = self.aimed
            elif (MARK in self.right + self.left and self.taken < end) or (several and not self.taken):
                place = end
            else:
                raise RefusalError("no marker is left")
            place += short if goal == "behind" else -short
            if goal == "behind" and place > (end if self.taken < end else self.facing.room):
                raise RefusalError("past the end of the row")
        elif goal == "half":
            if end % 2:
                raise RefusalError("is no place between two")
            place = end // 2 - short
        elif goal in ("centre", "before centre"):
            width = short if goal == "centre" else 1
            grown = self.made > self.taken
            if width == 0 and end % 2 and grown:  # the spine of a shawl, before which the edge has grown
                width = 1
            if end < width or (end - width) % 2:
                raise RefusalError(f"have no {width} in the middle")
            if self.taken != self.made and not (width == 1 and grown):
                raise RefusalError("stitches were changed before the middle")
            place = (end - width) // 2 - (short if goal == "before centre" else 0)
        else:
            place = end - (short if goal in ("last", "marker") else 0)
        if place < self.taken:
            raise RefusalError(
                f"{self.taken} stitches are worked at this place, past the one to work to ({place})"
            )
        return place

    def pattern(self, number: int) -> None:
        """Work stitches as those below them look."""
        if number > self.left.count("s"):
            raise RefusalError(f"{self.left.count('s')} of the {self.facing.count} are left at this place")
        for _ in range(number):
            code, yarn = self.supplies.look(HERE)[self.taken]
            self.stitch(code, yarn or "MC")

    def read(self, elements: tuple[Element, ...]) -> None:
        """Do what the words of a row say, one after the other."""
        starts = [self.made]
        for at, each in enumerate(elements):
            after = elements[at + 1 :]
            starts.append(self.made)
            casts_on = isinstance(each, Work) and each.stitch == "co"
            if self.turned and not (casts_on or isinstance(each, Mark | Hold | TurnHere)):
                raise RefusalError("turns in the middle of a row")
            self.before_decrease = bool(after) and isinstance(after[0], Work) and after[0].stitch in DECREASES
            if isinstance(each, Work):
                if each.stitch == "pattern":
                    self.pattern(each.times.of(0))
                else:
                    self.stitches(each.stitch, each.times.of(0), each.yarn or "MC")
            elif isinstance(each, Until):
                self.until(each)
            elif isinstance(each, Mark):
                self.mark(each, starts[-2])
            elif isinstance(each, Several):
                self.repeat(each, self.times_of(each, after))
            elif isinstance(each, Hold) and each.worked:
                self.behind.append((starts[-2], self.made))
            elif isinstance(each, Hold):
                self.hold(each, after)
            elif isinstance(each, TurnHere):
                self.turn(each)
            elif isinstance(each, PickUp):
                picked = self.supplies.picked(each)
                if picked <= 0:
                    raise RefusalError("no rows were worked there")
                self.stitches("pu", picked, "MC")
            elif isinstance(each, ChartPart):
                self.chart(each, after)

    def repeat(self, each: Several, often: int) -> None:
        """Do the same words over and over; of stitches alone she sees after the first time whether there are enough."""
        passes = set()
        for time in range(often):
            before, done = self.left.count("s"), len(self.done)
            self.read(each.elements)
            passes.add(tuple(self.done[done:]))
            unit, left = before - self.left.count("s"), self.left.count("s")
            if time == 0 and of_stitches(each) and unit * (often - 1) > left:
                raise RefusalError(
                    f"needs {unit * (often - 1)} stitches; {left} of the {self.facing.count} are left at this place"
                )
        if often > 1 and len(passes) == 1 and passes != {()}:
            self.alike_until = len(self.done)

    def until(self, each: Until) -> None:
        """Work up to a place."""
        number = self.place_of(each.goal, each.name, each.short.of(0) if each.short else 0) - self.taken
        if each.stitch == "pattern":
            self.pattern(number)
            return
        takes = TAKES.get(each.stitch, 1)
        if not takes or number % takes:
            raise RefusalError(f"cannot fill the {number} up to this place")
        self.stitches(each.stitch, number // takes, each.yarn or "MC")

    def mark(self, each: Mark, begun: int) -> None:
        """Place, slip or remove a marker; the words before it began at `begun` stitches on the right needle."""
        hangs = self.left[:1] == [MARK]
        if each.name == "all":
            self.left = [one for one in self.left if one != MARK]
            self.right = [one for one in self.right if one != MARK]
            return
        if each.stitch == "rm" and not hangs and self.fell():
            self.right.reverse()
            self.right.remove(MARK)
            self.right.reverse()
            self.done.append(("rm", "MC"))
            return
        if each.stitch == "rm" and not hangs and self.went_along():
            self.done.append(("rm", "MC"))
            return
        first = not self.facing.markers and {code for code, _ in self.done} == {"bo"}
        if each.stitch == "rm" and not hangs and first and not self.supplies.flat:
            self.done.append(("rm", "MC"))  # the one at which the rounds began
            return
        if each.stitch != "pm" and not hangs and self.taken not in (0, self.facing.end):
            ahead = self.hanging()
            raise RefusalError(
                f"the next is {ahead[0] - self.taken} stitches on" if ahead else "there is none left"
            )
        if each.stitch == "rm" and not hangs and not self.facing.parted:
            passed = [self.right[:at].count("s") for at, one in enumerate(self.right) if one == MARK]
            if any(begun < place < self.made for place in passed):
                raise RefusalError("the stitches before it pass a marker")
        if hangs:
            self.left.pop(0)
        if each.stitch == "pm" or (hangs and each.stitch == "sm"):
            self.right.append(MARK)
        self.done.append(("sm" if each.stitch == "pm" and hangs else each.stitch, "MC"))

    def fell(self) -> bool:
        """Return whether a marker hangs at the tip of the right needle that was among stitches just bound off."""
        codes = [code for code, _ in self.done]
        bound = next((at for at, code in enumerate(reversed(codes)) if code not in ("bo", "hold")), len(codes))
        among = any(self.taken - bound < mark < self.taken for mark in self.facing.markers)
        return among and self.right[-1:] == [MARK]

    def went_along(self) -> bool:
        """Return whether no marker hangs nearer than the stitches just held are many."""
        codes = [code for code, _ in self.done]
        held = next((at for at, code in enumerate(reversed(codes)) if code != "hold"), len(codes))
        ahead = self.hanging()
        return held > 0 and (not ahead or ahead[0] - self.taken >= held)

    def number_of(self, elements: tuple[Element, ...]) -> int:
        """Return the stitches that words take which say how many."""
        number = 0
        for each in elements:
            if isinstance(each, Work):
                number += each.times.of(0) * TAKES.get(each.stitch, 1)
            elif isinstance(each, Several) and each.times is not None:
                number += each.times.of(0) * self.number_of(each.elements)
            elif isinstance(each, Hold) and (each.worked or each.times is not None):
                number += 0 if each.worked or each.times is None else each.times.of(0)
            elif isinstance(each, ChartPart) and each.over is not None:
                number += each.over.of(0)
            elif not isinstance(each, Mark | TurnHere | PickUp):
                raise RefusalError("cannot stand inside a repeat")
        return number

    def times_of(self, each: Several, after: tuple[Element, ...]) -> int:
        """Return how often she works a repeat."""
        if each.times is not None:
            return each.times.of(0)
        slipped = [one for one in each.elements if isinstance(one, Mark) and one.stitch != "pm"]
        by_markers = slipped and any(isinstance(one, Until) and one.goal == "marker" for one in each.elements)
        if each.goal == "markers" or (each.goal in ("rest", "end") and by_markers):
            sections = len(self.hanging())
            sections += each.goal != "markers" and isinstance(each.elements[-1], Mark)
            if not slipped or sections % len(slipped):
                raise RefusalError(f"meets {len(slipped)} markers and does not divide the {sections}")
            return sections // len(slipped)
        unit = self.number_of(each.elements)
        place = self.place_of(each.goal, each.name, each.short.of(0) if each.short else 0, several=True)
        if each.goal == "fit":
            room = (
                place - self.taken - self.number_of(tuple(one for one in after if not isinstance(one, Until)))
            )
            return max(room, 0) // unit if unit else max(room, 0)
        behind = 0
        if each.goal == "rest" or (each.goal == "end" and all(isinstance(one, Work | Mark) for one in after)):
            behind = self.number_of(after)
        room = place - self.taken - behind
        if not unit:
            raise RefusalError("never end")
        if room < 0:
            raise RefusalError(f"uses {behind} stitches; {room + behind} are left for both")
        if room % unit:
            raise RefusalError(
                f"the repeat of {unit} stitches does not divide the {room} it has: {room // unit} repeats leave {room % unit}"
            )
        return room // unit

    def hold(self, each: Hold, after: tuple[Element, ...]) -> None:
        """Put stitches on hold."""
        works_on = any(
            isinstance(one, Until) or (isinstance(one, Work) and TAKES.get(one.stitch, 1)) for one in after
        )
        left = self.left.count("s")
        further = [place for place in self.hanging() if place > self.taken]
        to_marker = each.to_marker or (each.times is None and works_on and bool(further))
        number = left if each.times is None else each.times.of(0)
        if to_marker:
            number = self.place_of("marker", "", 0) - self.taken
        elif each.times is None and works_on:
            raise RefusalError("all the stitches left go on hold here")
        if each.times is None and not number and self.taken:
            raise RefusalError("no stitches are left in this row to go on hold.")
        if each.rest and number < left:
            raise RefusalError(f"{number} stitches are called the remaining ones, and {left} are left")
        alone = each.times is None and not to_marker and self.taken == 0
        name = each.name or (self.supplies.section.lower() if alone else "") or "holder"
        others = [other for other, _ in self.held] + list(self.supplies.held)
        names = (name, *(f"{which} {name}" for which in ("second", "third", "fourth", "fifth", "sixth")))
        called = next((one for one in names if one not in others), name)
        if number > left:
            raise RefusalError(f"{left} of the {self.facing.count} are left at this place")
        if self.turned:
            if number != left:
                raise RefusalError(f"{number} stitches go on hold at the turn, and {left} are left")
            last = max(at for at, (code, _) in enumerate(self.done) if code in ("turn", "w&t"))
            del self.done[last]
            self.turned, self.parted = False, True
        elif self.facing.around and self.facing.wrong and self.taken and number == left:
            self.parted = True
        self.held.append((called, number))
        self.stitches("hold", number, called)

    def turn(self, each: TurnHere) -> None:
        """Turn the work."""
        left = self.left.count("s")
        if not self.taken:
            raise RefusalError("turns before a stitch")
        if each.left is not None and each.left.of(0) != left:
            raise RefusalError(f"leaves {each.left.of(0)} stitches unworked; {left} are left")
        if not left and self.supplies.flat and not self.held:
            return
        if not left and self.held:
            self.parted = True
            return
        self.turned = True
        closed = self.done[-1][0] in DECREASES and self.alike_until != len(self.done)
        method = each.method or ("plain" if closed else self.method)
        self.done.append(("w&t" if method == "wrap" else "turn", "MC"))

    def chart(self, each: ChartPart, after: tuple[Element, ...]) -> None:
        """Work a chart over its room."""
        drawn = self.supplies.chart(each, 0)
        edges, repeat = len(drawn.before) + len(drawn.after), sum(run.times for run in drawn.repeat)
        short = each.short.of(0) if each.short else 0
        if each.over is not None:
            room = each.over.of(0)
        elif each.goal != "fill":
            room = self.place_of(each.goal, "", short) - self.taken
        else:
            room = self.filled(each, after, edges + repeat)
        repeats = max(0, room - edges) // repeat
        if edges + repeats * repeat != room:
            raise RefusalError(f"does not fit the {room} it has here")
        if room > self.left.count("s"):
            raise RefusalError(f"{self.left.count('s')} of the {self.facing.count} are left at this place")
        self.charts.append((drawn.name, drawn.number))
        for run in (*drawn.before, *drawn.repeat * repeats, *drawn.after):
            self.stitches(run.stitch, run.times, run.yarn)

    def filled(self, each: ChartPart, after: tuple[Element, ...], once: int) -> int:
        """Return the room of a chart that what stands behind it leaves."""
        for at, one in enumerate(after):
            if isinstance(one, Mark) and one.stitch != "pm":
                return self.place_of("marker", "", 0) - self.number_of(after[:at]) - self.taken
            if isinstance(one, Until) or (isinstance(one, Several | ChartPart) and one.goal):
                self.number_of(after[:at])
                return once
        return max(0, self.facing.end - self.number_of(after) - self.taken)

    def end_row(self) -> None:
        """Leave what the row does not reach, or refuse it."""
        rest = self.left.count("s")
        if rest and not self.turned and self.taken != self.facing.end:
            if any(code not in IDLE for code, _ in self.done):
                raise RefusalError(
                    f"the line works {self.taken} of the {self.facing.count} stitches on the needles; {rest} are left over"
                )
            if any(code == "bo" for code, _ in self.done):
                raise RefusalError("does not say how the other")
        self.stitches("rest", rest, "MC")
        if (
            self.facing.begins_at_turn
            and self.method == "german"
            and not (self.facing.around and self.parted)
        ):
            first = next(
                (
                    at
                    for at, (code, _) in enumerate(self.done)
                    if TAKES.get(code, 1) and code not in ("pm", "sm", "rm", "turn", "w&t")
                ),
                None,
            )
            if first is not None and self.done[first][0] in ("k", "p"):
                self.done[first] = ("ds", self.done[first][1])


# --- rows drawn by chance -----------------------------------------------------------------------------


def times(number: int) -> Numbers:
    """Write a number."""
    return Numbers((number,), HERE)


def draw_work(chance: Random) -> Work:
    """Draw a stitch, or several."""
    code = chance.choice(
        ("k", "k", "k", "p", "p", "k2tog", "ssk", "sk2p", "m1", "yo", "kfb", "bo", "co", "pattern")
    )
    number = chance.randint(1, 6) if code in ("k", "p", "pattern") else chance.choice((1, 1, 2))
    return Work(code, times(number), chance.choice((None, None, None, "A")), HERE)


def draw_until(chance: Random) -> Until:
    """Draw a stitch up to a place."""
    goal = chance.choice(
        (
            "end",
            "end",
            "last",
            "last",
            "marker",
            "marker",
            "marker",
            "behind",
            "half",
            "centre",
            "before centre",
            "turn",
            "past",
        )
    )
    short = None if goal == "end" or chance.random() < 0.4 else times(chance.randint(1, 3))
    if goal in ("last", "behind", "centre") and short is None:
        short = times(1)
    name = ""
    if goal in ("marker", "behind"):
        name = chance.choice(
            ("", "", "", "", "first", "last", "end" if goal == "marker" else "", "1", "2", "3")
        )
    if goal in ("turn", "past"):
        name = chance.choice(("", "", "ds", "wrap"))
    return Until(
        chance.choice(("k", "k", "k", "p", "k2tog", "pattern", "m1")),
        goal,
        short,
        chance.choice((None, None, "A")),
        HERE,
        name=name,
    )


def draw_several(chance: Random, depth: int) -> Several:
    """Draw a repeat."""
    goal = chance.choice(("times", "times", "end", "end", "rest", "rest", "fit", "last", "marker", "markers"))
    if goal in ("markers", "rest", "end") and chance.random() < (0.8 if goal == "markers" else 0.3):
        inner: list[Element] = [Until("k", "marker", times(chance.randint(0, 2)), None, HERE)]
        if chance.random() < 0.5:
            inner.append(Work(chance.choice(("k2tog", "m1", "k")), times(1), None, HERE))
        inner.append(Mark(chance.choice(("sm", "sm", "rm")), "", HERE))
        inner += [Work("k", times(1), None, HERE)] * (chance.random() < 0.2)
    else:
        inner = [draw_work(chance) for _ in range(chance.choice((1, 1, 2, 2, 3)))]
        if depth and chance.random() < 0.2:
            inner.append(draw_several(chance, depth - 1))
        if chance.random() < (0.08 if depth else 0.3):
            inner.insert(
                0, chance.choice((draw_until(chance), Mark("pm", "", HERE), Hold(times(2), "neck", HERE)))
            )
    number = times(chance.choice((0, 1, 2, 2, 3, 4))) if goal == "times" else None
    short = times(chance.randint(1, 3)) if goal == "last" else None
    return Several(tuple(inner), number, goal, short, HERE)


def draw_row(chance: Random) -> tuple[Element, ...]:
    """Draw the words of a row."""
    row: list[Element] = []
    for _ in range(chance.choice((1, 2, 3, 3, 4, 5))):
        what = chance.random()
        if what < 0.34:
            row.append(draw_work(chance))
        elif what < 0.56:
            row.append(draw_until(chance))
        elif what < 0.7:
            row.append(draw_several(chance, 1))
        elif what < 0.85:
            row.append(
                Mark(chance.choice(("pm", "sm", "sm", "rm")), "all" if chance.random() < 0.04 else "", HERE)
            )
        elif what < 0.9:
            way = chance.randrange(5)
            row.append(Hold(times(chance.randint(1, 5)) if way < 2 else None, chance.choice(("", "neck", "sleeve")), HERE,
                            to_marker=way == 2, rest=chance.random() < 0.3, worked=way == 3))  # fmt: skip
        elif what < 0.93:
            row.append(
                TurnHere(
                    chance.choice(("", "", "wrap", "german", "plain")),
                    HERE,
                    times(chance.randint(0, 9)) if chance.random() < 0.2 else None,
                )
            )
        elif what < 0.95:
            row.append(PickUp(times(chance.choice((0, 3))), times(4), "edge", HERE))
        else:
            goal = chance.choice(("", "fill", "fill", "end", "last", "marker"))
            short = times(chance.randint(1, 3)) if goal in ("last", "marker") else None
            row.append(
                ChartPart("fern", None, None if goal else times(chance.randint(1, 12)), goal, short, HERE)
            )
    if chance.random() < 0.6:
        row.append(Until("k", "end", None, None, HERE))
    if chance.random() < 0.1:
        row.append(TurnHere("", HERE))
    return tuple(row)


def draw_facing(chance: Random) -> Facing:
    """Draw the needles as a row meets them."""
    count = chance.choice((*range(1, 25), 30, 40, 0))
    if count < 2:
        return face(count=count, flat=True, side="RS")
    marks = tuple(sorted(chance.sample(range(1, count), min(count - 1, chance.choice((0, 1, 2, 2, 3, 4))))))
    if chance.random() < 0.6:
        return face(count=count, flat=True, side="RS", markers=marks)
    turns = tuple(sorted(chance.sample(range(1, count), min(count - 1, chance.randint(1, 4)))))
    flat, side = chance.random() < 0.5, chance.choice(("RS", "WS"))
    gap = chance.choice(turns) if not flat or chance.random() < 0.7 else None
    return face(count=count, flat=flat, side=side, markers=marks, gap=gap, turns=turns)


def flat_run(worked: WorkedPhrase) -> list[tuple[str, str]]:
    """Lay a row out stitch by stitch."""
    return [(run.stitch, run.yarn) for run in flatten(worked.items) for _ in range(run.times)]


def test_a_written_row_is_what_a_knitter_does_stitch_by_stitch() -> None:
    """Rows of words drawn by chance: the same stitches in the same order, the same markers, or refused for the same reason."""
    chance = Random(23)
    worked_out, refused = 0, set[str]()
    for number in range(5000):
        facing, row, method = (
            draw_facing(chance),
            draw_row(chance),
            chance.choice(("", "german", "wrap", "plain")),
        )
        below = tuple((chance.choice("kp"), chance.choice(("", "", "", "A"))) for _ in range(facing.count))
        drawn = ChartRound(
            before=(Run("p", 1, "B"),) * chance.randint(0, 1), repeat=(Run("k", 1, "B"), Run("p", 1, "MC"))[: chance.choice((1, 2, 2))],
            after=(Run("k", 1, "MC"),) * chance.randint(0, 2), name="fern", number=3,
        )  # fmt: skip
        supplies = RoundSources(
            chart=lambda part, room, drawn=drawn: drawn, look=lambda place, below=below: below, flat=chance.random() < 0.5,
            picked=lambda edge: edge.stitches.of(0), section=chance.choice(("", "Back")), held={"neck": 4} if chance.random() < 0.2 else {},
        )  # fmt: skip
        knitter, why = Knitter(facing, method, supplies), ""
        try:
            knitter.read(row)
            knitter.end_row()
        except RefusalError as refusal:
            why = str(refusal)
        case = (number, facing, row, method)
        try:
            worked, misfit = (
                work_phrase(
                    row,
                    count=facing.count,
                    size=0,
                    yarn="MC",
                    place=HERE,
                    facing=facing,
                    method=method,
                    supplies=supplies,
                ),
                "",
            )
        except MisfitError as told:
            worked, misfit = None, told.message
        assert bool(misfit) == bool(why), (misfit, why, case)
        if worked is None:
            assert why in misfit, case
            refused.add(" ".join("".join(word) for digit, word in groupby(why, str.isdigit) if not digit))
            continue
        stitches = [*[("rest", "MC")] * facing.lead, *knitter.done]
        assert flat_run(worked) == stitches, case
        assert worked.after == facing.lead + knitter.made, case
        assert worked.held == tuple(knitter.held), case
        assert (worked.turned, worked.parted) == (knitter.turned, knitter.parted), case
        assert worked.charts == tuple(knitter.charts), case
        assert [(each.last, each.end) for each in worked.behind] == knitter.behind, case
        if not (facing.begins_at_turn or facing.wrong or facing.turns or worked.turned):
            lies = knitter.right + knitter.left
            places = {lies[:at].count("s") for at, one in enumerate(lies) if one == MARK}
            assert worked.markers == tuple(sorted(place for place in places if 0 < place < worked.after)), (
                case
            )
        worked_out += 1
    assert worked_out > 1000
    assert len(refused) > 20
