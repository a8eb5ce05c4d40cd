"""A second knitter for tests: hands, needles and loops, and no knowledge of `stepper.session` at all.

She reads a round of the plan, code by code, and works it with a table of her own: what each stitch takes off
the left needle and puts on the right (Craft Yarn Council, list of abbreviations; cables as printed, n/m). Each
loop on the needles remembers what made it; markers hang between the loops and travel with them, and so does what
can be seen there. She makes one mistake where she is told to. Whatever is asked of her afterwards she answers by looking at the loops.
"""

from __future__ import annotations

import random
import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field, replace
from functools import cache, lru_cache
from itertools import islice
from typing import Literal

from stepper.plan.model import Group, Item, Plan, Round

Mistake = Literal[
    "left out",
    "one too many",
    "repeat twice",
    "repeat left out",
    "yarn over dropped",
    "stitch dropped",
    "other round",
]
MISTAKES: tuple[Mistake, ...] = (
    "left out", "one too many", "repeat twice", "repeat left out", "yarn over dropped", "stitch dropped", "other round"
)  # fmt: skip

HANDS: dict[str, tuple[int, int]] = {
    **dict.fromkeys(("k", "p", "k tbl", "p tbl", "sl", "sl wyib", "sl wyif", "sl kwise", "sl pwise"), (1, 1)),
    **dict.fromkeys(("k1b", "mb", "ds"), (1, 1)),
    **dict.fromkeys(("m1", "m1l", "m1r", "m1p", "m1lp", "m1rp", "yo", "rli", "lli"), (0, 1)),
    **dict.fromkeys(("kfb", "pfb", "inc"), (1, 2)),
    **dict.fromkeys(("kfbf", "kyok"), (1, 3)),
    "yo2": (0, 2),
    **dict.fromkeys(("k2tog", "p2tog", "k2tog tbl", "p2tog tbl", "ssk", "ssp", "skp", "dec"), (2, 1)),
    **dict.fromkeys(
        ("k3tog", "p3tog", "k3tog tbl", "p3tog tbl", "sssk", "sssp", "sk2p", "s2kp", "s2pp"), (3, 1)
    ),
    **dict.fromkeys(("co", "pu", "return"), (0, 1)),
    **dict.fromkeys(("bo", "graft", "draw", "hold"), (1, 0)),
    "rest": (1, 1),
    "split": (1, 2),
    **dict.fromkeys(("pm", "sm", "rm", "turn", "w&t", "join 2nd ball", "other ball"), (0, 0)),
}
"""Takes from the left needle, gives to the right. Source: Craft Yarn Council master list, from memory."""
_CABLE = re.compile(r"(\d+)/(\d+)(?:/(\d+))? [rl]p?c")
_PLAIN = frozenset(code for code, hands in HANDS.items() if hands == (1, 1)) - {"rest"}
_EDGES = frozenset(("co", "pu", "return", "bo", "graft", "draw", "hold", "rest"))


@cache
def hands(code: str) -> tuple[int, int]:
    """Return what a code takes and gives."""
    cable = _CABLE.fullmatch(code)
    if cable is not None:
        width = sum(int(part) for part in cable.groups() if part)
        return width, width
    return HANDS[code]


def changing(code: str) -> bool:
    """Tell whether a code is an increase or a decrease."""
    takes, gives = hands(code)
    return takes != gives and code not in _EDGES and code != "split"


class Marker:
    """Hangs between two loops."""


@dataclass(frozen=True)
class Sight:
    """Something to be seen between two loops: the end of a change or of a repeat made there."""

    kind: str
    """`change` or `repeat`; `colour` where another yarn was taken up in the round just worked; `loop` where one hangs below; what else a test wants to find again."""
    index: int
    """The round it was made in."""
    behind: bool = True
    """Whether the stitch it was seen at is worked before it; no longer once the work is turned."""


@cache
def _sight(kind: str, index: int) -> Sight:
    # Made for every stitch of every round, and few differ.
    return Sight(kind, index)


@cache
def _from_behind(seen: Sight) -> Sight:
    return replace(seen, behind=not seen.behind)


Loop = str
"""A stitch on the needles: the code that made it."""
Needle = tuple[Loop | Marker | Sight, ...]


@dataclass(frozen=True)
class Step:
    """One thing the hands do."""

    code: str
    ends_repeat: bool = False
    yarn: str = ""
    """Empty where she makes a mistake; that does not make her take up another yarn."""
    stray: bool = False
    """Whether it is a change made unawares, found by looking for changes too many but no landmark to count to."""


def steps(items: tuple[Item, ...]) -> list[Step]:
    """Read a round: one step for each stitch; the last of each repetition of an outer repeat is marked."""
    return list(_read(items))


@lru_cache(maxsize=8192)
def _read(items: tuple[Item, ...]) -> tuple[Step, ...]:
    read: list[Step] = []
    for item in items:
        if not isinstance(item, Group):
            read += [Step(item.stitch, yarn=item.yarn)] * item.times
            continue
        for _ in range(item.times):
            inner = [Step(each.code, yarn=each.yarn) for each in steps(item.items)]
            last = max((at for at, each in enumerate(inner) if hands(each.code)[1]), default=None)
            if last is not None:
                inner[last] = replace(inner[last], ends_repeat=True)
            read += inner
    return tuple(read)


@dataclass(frozen=True)
class Begun:
    """A round left in the middle."""

    before: int
    """Stitches on the needles before it."""
    wants: int
    """Stitches of the old round that what was worked of it takes."""
    changes: int
    """Increases and decreases made."""
    fresh: bool
    """Whether no marker hung before it."""


@dataclass
class Knitting:
    """What is on the needles, and what can be seen of what was done."""

    needle: Needle = ()
    loose: int = 0
    """Loops hanging below."""
    left: dict[int, int] = field(default_factory=dict)
    """Stitches over at the end of each round; below 0 where they ran out."""
    changes: dict[int, int] = field(default_factory=dict)
    """Increases and decreases to be seen in each round."""
    swapped: frozenset[int] = frozenset()
    """Rounds that look like another."""
    begun: Begun | None = None
    """What is known of a round left in the middle; `here` is the sight between its two needles."""

    @property
    def count(self) -> int:
        """Stitches on the needles."""
        return _loops(self.needle)

    def turn(self) -> None:
        """Turn the work: what was worked last comes first."""
        turned = (_from_behind(e) if isinstance(e, Sight) else e for e in self.needle[::-1])
        self.needle = tuple(turned)

    def copy(self) -> Knitting:
        """Take a photograph."""
        return Knitting(self.needle, self.loose, dict(self.left), dict(self.changes), self.swapped, self.begun)

    def ladder(self) -> None:
        """Catch every loop that hangs below and work it up to the needle, where it belongs."""
        loops = [isinstance(each, Sight) and each.kind == "loop" for each in self.needle]
        self.needle = tuple("k" if loop else each for each, loop in zip(self.needle, loops, strict=True))
        self.loose = 0

    def work(
        self,
        index: int,
        todo: list[Step],
        *,
        falls: int | None = None,
        marks: tuple[str, int] | None = None,
        stops: bool = False,
    ) -> None:
        """Work a round step by step, or go on with one left in the middle.

        Args:
            index: Which round it is.
            todo: What the hands do.
            falls: The step whose loop falls off the needle once it is made.
            marks: A sight to leave, and the step before which it lies.
            stops: Whether she stops there, in the middle of the round, with the rest on the left needle.
        """
        right, below, begun = self._taken_up()
        left = list(reversed([*below]))  # the next stitch is the last of the list
        yarn = ""
        before, wants, short, changes, fresh = begun.before, begun.wants, False, begun.changes, begun.fresh
        for at, step in enumerate(todo):
            takes, gives = hands(step.code)
            wants += takes
            marked = marks is not None and marks[1] == at
            if marks is not None and marked and not takes:
                right.append(_sight(marks[0], index))
            if step.code in ("sm", "rm") and not fresh:
                self._meet(left, right, keep=step.code == "sm")
            if step.code == "pm" or (step.code == "sm" and fresh):
                right.append(Marker())  # "place marker every 14 sts" stands between the rounds
            if takes and not gives:
                self._leave(left)
            if not self._take(left, right, takes) or (short and not takes):
                short = True
                continue  # the stitches have run out
            if marks is not None and marked and takes:
                right.append(_sight(marks[0], index))
            if gives and step.yarn:
                right += [_sight("colour", index)] * (yarn not in ("", step.yarn))
                yarn = step.yarn
            if at == falls:
                self.loose += 1
                right.append(_sight("loop", index))
            else:
                right += [step.code] * gives
                changes += changing(step.code)
                right += [_sight("change", index)] * (changing(step.code) and not step.stray)
            right += [_sight("repeat", index)] * step.ends_repeat
        if marks is not None and marks[1] >= len(todo):
            right.append(_sight(marks[0], index))
        self.begun = Begun(before, wants, changes, fresh) if stops else None
        if stops:
            self.needle = (*right, _sight("here", index), *reversed(left))
            return
        right += ["k" if isinstance(each, Loop) else each for each in reversed(left)]  # as anyone would
        self.left[index] = before - wants
        self.changes[index] = changes
        self.needle = tuple(right)

    def _taken_up(self) -> tuple[list[Loop | Marker | Sight], list[Loop | Marker | Sight], Begun]:
        """Take the work up: what is on the right needle, what is on the left, and what is known of the round."""
        at = next((at for at, e in enumerate(self.needle) if isinstance(e, Sight) and e.kind == "here"), None)
        right = list(self.needle[:at]) if at is not None else []
        left = self.needle[at + 1 :] if at is not None else self.needle
        below = [e for e in left if not (isinstance(e, Sight) and e.kind == "colour")]
        fresh = not any(isinstance(each, Marker) for each in self.needle)
        return right, below, self.begun or Begun(self.count, 0, 0, fresh)

    @staticmethod
    def _meet(left: list[Loop | Marker | Sight], right: list[Loop | Marker | Sight], *, keep: bool) -> None:
        """Slip or remove the marker in front, if there is one before the next loop."""
        while left and not isinstance(left[-1], Loop):
            each = left.pop()
            if not isinstance(each, Marker):
                right.append(each)
                continue
            right += [each] * keep
            return

    @staticmethod
    def _leave(left: list[Loop | Marker | Sight]) -> None:
        """Lose sight of what was made at the next loop, which leaves the needle: it lies in the column below it."""
        at = next((at for at in range(len(left) - 1, -1, -1) if isinstance(left[at], Loop)), None)
        if at is None:
            return
        around = range(len(left) - 1, at, -1), range(at - 1, -1, -1)
        for side, behind in zip(around, (False, True), strict=True):
            for place in side:
                each = left[place]
                if isinstance(each, Loop):
                    break
                if isinstance(each, Sight) and each.kind in ("change", "repeat") and each.behind == behind:
                    left[place] = _sight("gone", each.index)

    @staticmethod
    def _take(left: list[Loop | Marker | Sight], right: list[Loop | Marker | Sight], takes: int) -> bool:
        """Take loops off the left needle, slipping what hangs in front of them; not if there are too few."""
        if takes and sum(1 for _ in islice((e for e in reversed(left) if isinstance(e, Loop)), takes)) < takes:
            return False
        while takes:
            each = left.pop()
            if isinstance(each, Loop):
                takes -= 1
            else:
                right.append(each)
        return True

    # What she is asked

    def edges(self, kind: str) -> list[int]:
        """Count the stitches from the beginning to each landmark: markers, or the changes or repeats of the
        last round in which there are any."""
        seen = [each.index for each in self.needle if isinstance(each, Sight) and each.kind == kind]
        latest, found, place = max(seen, default=-1), list[int](), 0
        for each in self.needle:
            if isinstance(each, Loop):
                place += 1
            elif isinstance(each, Marker):
                found += [place] if kind == "marker" else []
            elif (each.kind, each.index) == (kind, latest) and place not in found:
                found.append(place)
        return [each for each in found if 0 < each < place]

    def ahead(self) -> list[int]:
        """Count the stitches on the left needle up to each marker, and from the last one to the end."""
        _, left, _ = self._taken_up()
        counts = [0]
        for each in left:
            if isinstance(each, Marker):
                counts.append(0)
            elif isinstance(each, Loop):
                counts[-1] += 1
        return counts

    def between(self, kind: str, first: int, end: int | None) -> int:
        """Count from one landmark to another; where there are not so many, to the end."""
        edges = [0, *self.edges(kind)]
        start = edges[first] if first < len(edges) else self.count
        return (edges[end] if end is not None and end < len(edges) else self.count) - start


def _loops(needle: Iterable[Loop | Marker | Sight]) -> int:
    return sum(isinstance(each, Loop) for each in needle)


def knitted_right(plan: Plan) -> list[Knitting]:
    """Knit a whole garment without a mistake; return a photograph before each round."""
    now, photographs = Knitting(), []
    for round_ in plan.rounds:
        if not round_.before:
            now.needle = ()
        elif round_.side != plan.rounds[round_.index - 1].side:
            now.turn()
        photographs.append(now.copy())
        now = now.copy()
        now.loose, now.left, now.changes = 0, {}, {}
        now.work(round_.index, steps(round_.phrase))
        assert now.count == round_.after, (round_.section, round_.number, now.count, round_.after)
    return photographs


def with_mistake(
    plan: Plan, before: Knitting, index: int, mistake: Mistake, dice: random.Random
) -> Knitting | None:
    """Work a round with one mistake at a random place; nothing where the round has no room for it."""
    now, round_ = before.copy(), plan.rounds[index]
    todo = steps(round_.phrase)
    if mistake == "other round":
        return _swapped(plan, now, index, dice)
    if mistake in ("repeat twice", "repeat left out"):
        again = repeated(round_, dice, more=mistake == "repeat twice")
        if again is None:
            return None
        now.work(index, again)
        return now
    places = list(_places(todo, mistake))
    if not places:
        return None
    at = dice.choice(places)
    if mistake == "left out":
        todo[at : at + 1] = [Step("k")] * hands(todo[at].code)[0]
    elif mistake == "one too many":
        code = dice.choice([each.code for each in todo if changing(each.code)])
        takes = hands(code)[0]
        fit = [at for at in _places(todo, "stitch dropped") if all(
            each.code in _PLAIN for each in todo[at : at + takes]) and at + takes <= len(todo)]  # fmt: skip
        if not fit:
            return None
        at = dice.choice(fit)
        todo[at : at + takes] = [Step(code)]
    now.work(index, todo, falls=at if mistake in ("yarn over dropped", "stitch dropped") else None)
    return now


def _places(todo: list[Step], mistake: Mistake) -> Iterator[int]:
    """Say at which steps a mistake can be made."""
    for at, step in enumerate(todo):
        fits = {
            "left out": changing(step.code),
            "one too many": changing(step.code),
            "yarn over dropped": step.code == "yo",
            "stitch dropped": step.code in _PLAIN,
        }[mistake]  # type: ignore[index] # the others are dealt with before
        if fits:
            yield at


def repeated(round_: Round, dice: random.Random, *, more: bool) -> list[Step] | None:
    """Work one repetition of a repeat twice, or leave one out."""
    groups = [at for at, item in enumerate(round_.phrase) if isinstance(item, Group) and item.uses]
    if not groups:
        return None
    at = dice.choice(groups)
    item = round_.phrase[at]
    assert isinstance(item, Group)
    whole = dice.randrange(item.times)
    todo = steps(round_.phrase[:at])
    once = steps((Group(item.items, 1),))
    for number in range(item.times):
        if number == whole:
            todo += once * 2 if more else []
        else:
            todo += once
    return todo + steps(round_.phrase[at + 1 :])


def _swapped(plan: Plan, now: Knitting, index: int, dice: random.Random) -> Knitting | None:
    """Work the round before or after in its place."""
    near = [at for at in (index - 1, index + 1) if 0 < at < len(plan.rounds)]
    other = plan.rounds[dice.choice(near)]
    hung = {run.stitch for run in plan.rounds[index].runs} & {"pm", "sm"}
    if hung and not any(isinstance(each, Marker) for each in now.needle):
        return None  # markers that were never hung give it away
    if other.runs == plan.rounds[index].runs or any(run.stitch in _EDGES for run in other.runs):
        return None  # nobody binds off or divides in the place of a round by mistake
    now.work(index, steps(other.phrase))
    now.swapped |= {index}
    return now
