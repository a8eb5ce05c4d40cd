"""A knitter who made one mistake, and mends it by what she is told: the whole conversation, to the last stitch.

She has hands, needles and loops (`tests.fabric`) and knows nothing of how faults are looked for. She counts, looks
and answers truthfully, but not always: of three knitters one answers all that is asked, one answers half and
otherwise asks what she can do, one asks that at once. Whatever way is then said first she takes, and works it stitch
by stitch, also where it does harm. Afterwards her fabric is laid beside one that was knitted right: the stitches
between all markers, live loops, and whether what was made good lies in the same stretch as the mistake, between the same
two markers, changes or repeats.
"""

from __future__ import annotations

import random
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field, replace

from stepper.language.aloud import spell_out
from stepper.language.effect_words import tell_effect
from stepper.plan.model import Plan
from stepper.plan.under_way.absorb import Mend
from stepper.session.cues import Choose, Count, Cue, Next, Remedies, Saw, SectionCount
from stepper.session.effects import AskCount, AskLook, AskSections, Effect, Refuse, TellStep
from stepper.session.fault.inquiry import inquire
from stepper.session.fault.respond import AskAgain, TellLadder
from stepper.session.fault.ways import Remedy, RemedyKind, cost_remedy
from stepper.session.machine import Session
from stepper.session.state import Knitting, Position, Seen, State, Verified
from tests import fabric, hunt
from tests.fabric import Sight, Step
from tests.playbook import AT

KINDS = (
    "dropped", "yarn over", "missed increase", "missed decrease", "doubled decrease", "missed repeat",
    "lost at the join", "split yarn", "miscount",
)  # fmt: skip
"""What can go wrong. Miscount: the fabric is right, and the count was wrong once."""
KNITTERS = ("all", "half", "at once")
"""Who answers what."""
SEEN_ROUNDS = 10
"""Rounds above a change or a repeat in which it still makes a stretch of its own; above that plain fabric is plain.
Source: chosen here."""
PATIENCE = 40
"""Things said to her before she gives up."""
WORDS_A_SECOND = 2.75
"""Words said in a second: 165 a minute. Source: common practice of audio books, 150 to 175."""


@dataclass
class Outcome:
    """What came of a mistake."""

    kind: str
    knitter: str
    garment: str = ""
    first: str = ""
    """The remedy that was said first."""
    first_right: bool = False
    """Whether that one left the right fabric, or asked to look or count."""
    harm: str = ""
    """What was spoilt; empty where nothing was."""
    right: bool = False
    """Whether the fabric is right in the end."""
    questions: int = 0
    stitches: int = 0
    """Counted, after the count that began it."""
    words: list[int] = field(default_factory=list)
    """Of each answer, before what she may choose from."""
    said: list[tuple[int, str]] = field(default_factory=list)
    """The same with what was said."""
    log: list[str] = field(default_factory=list)


@dataclass
class Piece:
    """A garment with photographs of its fabric before each round."""

    name: str
    plan: Plan
    photographs: list[fabric.Knitting]


def piece(name: str, plan: Plan) -> Piece:
    """Knit a garment right, once."""
    return Piece(name, plan, fabric.knitted_right(plan))


# The mistake


def _with_mistake(
    plan: Plan, before: fabric.Knitting, index: int, kind: str, dice: random.Random
) -> tuple[fabric.Knitting, int] | None:
    """Work a round with a mistake; the fabric, and the stitches worked right before it."""
    now, todo, falls = before.copy(), fabric.steps(plan.rounds[index].phrase), None
    plain = [at for at, each in enumerate(todo) if each.code in ("k", "p")]
    if kind == "miscount":
        now.work(index, todo)
        return now, 0
    if kind == "missed repeat":
        return _missed_repeat(plan, now, index, dice)
    if kind in ("dropped", "lost at the join", "split yarn") and not plain:
        return None
    if kind == "dropped":
        at = falls = dice.choice(plain)
    elif kind == "lost at the join":
        at = plain[-1]
        if at < len(todo) - 3:
            return None
        if dice.random() < 0.5 or plain[-2:] != [at - 1, at]:
            falls = at
        else:
            at -= 1
            todo[at : at + 2] = [Step("k2tog")]
    elif kind == "split yarn":
        at = dice.choice(plain)
        todo[at] = Step("split")
    else:
        changed = _changed(todo, kind, dice)
        if changed is None:
            return None
        at = changed
        falls = at if kind == "yarn over" else None
    now.work(index, todo, falls=falls, marks=("fault", at))
    return now, sum(fabric.hands(each.code)[1] for each in todo[:at])


def _changed(todo: list[Step], kind: str, dice: random.Random) -> int | None:
    """Make a mistake at an increase or decrease; the step it is at."""
    change = {each: fabric.hands(each.code)[1] - fabric.hands(each.code)[0] for each in todo}
    up = kind in ("yarn over", "missed increase")
    places = [
        at
        for at, each in enumerate(todo)
        if fabric.changing(each.code) and (change[each] > 0) == up and (kind != "yarn over" or each.code == "yo")
    ]
    if kind == "doubled decrease":
        wide = [fabric.hands(todo[at].code)[0] for at in places]
        places = [
            at
            for at, takes in zip(places, wide, strict=True)
            if len(todo) > at + takes and all(each.code in ("k", "p") for each in todo[at + 1 : at + 1 + takes])
        ]
    if not places:
        return None
    at = dice.choice(places)
    takes = fabric.hands(todo[at].code)[0]
    if kind in ("missed increase", "missed decrease"):
        todo[at : at + 1] = [Step("k")] * takes
    elif kind == "doubled decrease":
        todo[at + 1 : at + 1 + takes] = [Step(todo[at].code)]
        at += 1
    return at


def _missed_repeat(
    plan: Plan, now: fabric.Knitting, index: int, dice: random.Random
) -> tuple[fabric.Knitting, int] | None:
    todo = fabric.repeated(plan.rounds[index], dice, more=False)
    if todo is None:
        return None
    right = fabric.steps(plan.rounds[index].phrase)
    at = next((at for at, (a, b) in enumerate(zip(todo, right, strict=False)) if a.code != b.code), len(todo))
    now.work(index, todo, marks=("fault", at))
    return now, sum(fabric.hands(each.code)[1] for each in todo[:at])


# The conversation


class Mender:
    """A knitter at work on one mistake."""

    def __init__(self, whole: Piece, kind: str, knitter: str, dice: random.Random) -> None:
        """Sit down; `begin` makes the mistake."""
        self.piece, self.kind, self.knitter, self.dice = whole, kind, knitter, dice
        self.outcome = Outcome(kind, knitter, whole.name)
        self.index, self.before_fault = -1, 0
        self.fabric: fabric.Knitting
        self.session: Session
        self.effects: tuple[Effect, ...] = ()
        self.marked = False

    def begin(self) -> bool:
        """Make the mistake, knit on up to two plain rounds, and count; false where it has no room or nothing
        shows."""
        plan, photographs = self.piece.plan, self.piece.photographs
        index = self.dice.randrange(1, len(plan.rounds))
        if not plan.rounds[index].before:
            return False
        made = _with_mistake(plan, photographs[index], index, self.kind, self.dice)
        if made is None:
            return False
        self.fabric, self.before_fault = made
        self.index, last = index, index
        for _ in range(self.dice.randint(0, 2)):
            if last + 1 < len(plan.rounds) and hunt.one_stitch(plan.rounds[last + 1]):
                last += 1
                code = plan.rounds[last].runs[0].stitch
                hunt.turned(plan, self.fabric, last)
                self.fabric.work(last, [Step(code)] * self.fabric.count)
        hunt.turned(plan, self.fabric, last + 1)
        verified = Verified(place=Position(index=max(0, index - self.dice.randint(0, 3))), stitches=0)
        place = Position(index=last + 1)
        self.session = Session(plan, State(seq=1, knitting=Knitting(place=place, verified=verified)))
        first = self._first_count(last)
        if first is None:
            return False
        self.say(first)
        return inquire(self.session.plan, self.session.state) is not None

    def _first_count(self, last: int) -> Cue | None:
        """Give the count, or what else shows that something is wrong."""
        wanted = self.piece.plan.rounds[last].after
        if wanted < 4:
            return None
        if self.kind == "miscount":
            return Count(stitches=max(1, wanted + self.dice.choice((-3, -2, -1, -1, 1, 1, 2, 3))), at=AT)
        if self.fabric.count > 2 * max(1, wanted):
            return None
        if self.fabric.count not in (wanted, hunt.at_end(self.piece.plan, last + 1)):
            return Count(stitches=self.fabric.count, at=AT)
        over = self.fabric.left[self.index]
        if over and last == self.index:
            return Saw(seen=Seen.LEFT, number=abs(over), sign=1 if over > 0 else -1, at=AT)
        return None

    def say(self, cue: Cue) -> None:
        """Say something, and hear the answer."""
        considered = self.session.consider(cue)
        self.session.adopt(considered)
        self.effects = considered.effects
        lines = [tell_effect(each, self.session.plan) for each in self.effects if not isinstance(each, TellStep)]
        said = spell_out(" ".join(line for line in lines if line))
        before = said.partition("Say:")[0].partition("Then say:")[0]
        self.outcome.words.append(len(before.replace(",", " ").split()))
        self.outcome.said.append((self.outcome.words[-1], said))
        self.outcome.log += [f"> {cue}", *lines]
        refused = [each for each in self.effects if isinstance(each, Refuse)]
        assert not refused, (self.outcome.log, self.kind, self.index)

    def run(self) -> Outcome:
        """Go on until nothing is asked and nothing is wrong as far as she knows, or patience ends."""
        for _ in range(PATIENCE):
            answer = self._answer()
            if answer is not None and self._answers():
                self.outcome.questions += 1
                answer()
            elif self.session.state.knitting.fault is None or not self._take_first():
                break
        self.outcome.right = self._is_right()
        if not self.outcome.first:  # what she was asked was all it took
            self.outcome.first, self.outcome.first_right = "asked", self.outcome.right
        if self.fabric.loose and not self.outcome.harm:
            self.outcome.harm = "loop left"
        return self.outcome

    def _answers(self) -> bool:
        return self.knitter == "all" or (self.knitter == "half" and self.dice.random() < 0.5)

    def _answer(self) -> Callable[[], None] | None:
        """Find out how to answer what was asked last; None if nothing was."""
        asked = AskSections | AskLook | AskAgain | AskCount | TellLadder
        ask = next((each for each in reversed(self.effects) if isinstance(each, asked)), None)
        match ask:
            case AskSections():
                return lambda: self._count_stretch(ask)
            case AskLook():
                return lambda: self._look(ask)
            case AskAgain() | AskCount():
                return self._count
            case TellLadder():
                return self._ladder
        return None

    def _count_stretch(self, ask: AskSections) -> None:
        counted = self.fabric.between(ask.stretch.kind, ask.stretch.first, ask.stretch.end)
        self.outcome.stitches += counted
        self.say(SectionCount(stitches=counted, at=AT))

    def _look(self, ask: AskLook) -> None:
        seen = hunt.look_for(self.session.plan, self.fabric, ask)
        self.say(Saw(seen=ask.seen, number=abs(seen), sign=-1 if seen < 0 else 1, at=AT))

    def _count(self) -> None:
        self.outcome.stitches += self.fabric.count
        self.say(Count(stitches=self.fabric.count, at=AT))

    def _ladder(self) -> None:
        self.fabric.ladder()
        self.say(Saw(seen=Seen.LOOP, number=0, at=AT))

    def _take_first(self) -> bool:
        """Ask what she can do, take the first way and carry it out; false where there is none."""
        self.say(Remedies(at=AT))
        inquiry = inquire(self.session.plan, self.session.state)
        assert inquiry is not None
        if not inquiry.remedies:
            self.outcome.first = self.outcome.first or "none"
            return False
        way = inquiry.remedies[0]
        is_first = not self.outcome.first
        self.outcome.first = self.outcome.first or way.kind.value
        self.say(Choose(number=1, at=AT))
        self.outcome.log.append(f"# {way}")
        if way.kind in (RemedyKind.LOOK, RemedyKind.RECOUNT, RemedyKind.NARROW):
            self.outcome.first_right = self.outcome.first_right or is_first
            answer = self._answer()
            assert answer is not None
            self.outcome.questions += 1
            answer()
            return True
        self.carry_out(way)
        if is_first:
            self.outcome.first_right = self._is_right()
        return True

    def carry_out(self, way: Remedy) -> None:
        """Do what was said."""
        if way.kind is RemedyKind.LADDER:
            self.fabric.ladder()
            self._count()
            return
        if self.kind == "miscount":
            self.outcome.harm = self.outcome.harm or f"good knitting changed: {way.kind}"
        if way.kind in (RemedyKind.TINK, RemedyKind.RIP):
            self._take_back(way.place)
            return
        if self.fabric.loose:
            self.outcome.harm = self.outcome.harm or f"loop left: {way.kind}"
        if way.mend is not None:
            self._knit_to_the_mend(way)

    def _take_back(self, place: Position) -> None:
        """Undo to a place; what is left of the round there is worked again as the pattern has it."""
        photograph = self.piece.photographs[place.index].copy()
        gone = place.index < self.index or (place.index == self.index and place.stitch <= self.before_fault)
        if gone or self.kind == "miscount":
            self.fabric = photograph
            hunt_round = fabric.steps(self.session.plan.rounds[place.index].phrase)
            self.fabric.work(place.index, hunt_round)
        else:
            made = fabric.Knitting(needle=self.fabric.needle, loose=self.fabric.loose)
            self.fabric = made  # the mistake is still in it
            self.outcome.log.append("# the mistake is still in what was kept")
        last = place.index
        if gone or self.kind == "miscount":
            hunt.turned(self.piece.plan, self.fabric, last + 1)
            self._say_next(last)
            self._count()

    def _knit_to_the_mend(self, way: Remedy) -> None:
        assert way.mend is not None
        plan = self.session.plan
        if way.mend.index >= len(plan.rounds) or not plan.rounds[way.mend.index].before:
            self.outcome.log.append("# goes on to the end")
            return
        self.marked = any(isinstance(each, fabric.Marker) for each in self.fabric.needle)
        for index in range(self.session.state.place.index, way.mend.index + 1):
            round_ = plan.rounds[index]
            todo, marks = fabric.steps(round_.phrase), None
            if index == way.mend.index and not way.mend.spread:
                marks = ("mend", _step_at(todo, way.mend.stitch))
            self.fabric.work(index, todo, marks=marks)
            if self.fabric.left[index]:
                self.outcome.log.append(f"# {self.fabric.left[index]} left over in {index}")
            hunt.turned(self.piece.plan, self.fabric, index + 1)
            self._say_next(index)
        if self._strays(way):
            self.outcome.harm = self.outcome.harm or f"wrong section: {way.kind}"
        self._count()

    def _say_next(self, index: int) -> None:
        """Say "next" until the round is done; a long one is read out in parts."""
        while self.session.state.place.index == index:
            self.say(Next(at=AT))

    def _strays(self, way: Remedy) -> bool:
        """Look whether a marker, or a change or repeat, lies between the mistake and what makes it good."""
        places = {each.kind: at for at, each in enumerate(self.fabric.needle) if isinstance(each, Sight)}
        if "fault" not in places or "mend" not in places:
            return False
        low, high = sorted((places["fault"], places["mend"]))
        between = self.fabric.needle[low + 1 : high]
        if self.marked:  # markers hung since make no stretches of what lay there before
            return any(isinstance(each, fabric.Marker) for each in between)
        if self.kind == "doubled decrease":
            own = {("change", self.index)}  # the decrease too many itself, and the one it doubles
            beside = [at for at, e in enumerate(between) if isinstance(e, Sight) and (e.kind, e.index) in own]
            near = beside[:1] if low == places["fault"] else beside[-1:]
            between = tuple(each for at, each in enumerate(between) if at not in near)
        loops = [at for at, each in enumerate(between) if isinstance(each, str)]
        between = between[loops[0] : loops[-1] + 1] if loops else ()  # what hangs at one of the two is beside it
        assert way.mend is not None
        sights = [each for each in self.fabric.needle if isinstance(each, Sight)]
        first = way.mend.index - SEEN_ROUNDS
        made = [e for e in sights if first <= e.index < way.mend.index and e.kind in ("change", "repeat")]
        latest = max((each.index for each in made), default=-1)
        kind = "change" if any((e.kind, e.index) == ("change", latest) for e in made) else "repeat"
        return any(isinstance(each, Sight) and (each.kind, each.index) == (kind, latest) for each in between)

    def _is_right(self) -> bool:
        """Lay her fabric beside one knitted right."""
        place = self.session.state.place
        if place.stitch or place.index >= len(self.piece.photographs):
            place = replace(place, stitch=0)
        if place.index >= len(self.piece.photographs):
            return self.fabric.count == self.piece.plan.rounds[-1].after and not self.fabric.loose
        wanted = self.piece.photographs[place.index]
        return (
            self.fabric.count == wanted.count
            and not self.fabric.loose
            and self.fabric.edges("marker") == wanted.edges("marker")
            and not self.outcome.harm
            and not self._has_shifted()
        )

    def _has_shifted(self) -> bool:
        """Look whether the round of the mistake is still in it with stitches left over: nothing made good then
        brings its pattern back into line."""
        still = any(isinstance(each, Sight) and each.kind == "fault" for each in self.fabric.needle)
        round_ = self.piece.plan.rounds[self.index]
        return still and self.kind == "missed repeat" and not (round_.evenly or hunt.one_stitch(round_))


def _step_at(todo: list[Step], stitch: int) -> int:
    """Find the step at which so many stitches are on the right needle."""
    made = 0
    for at, step in enumerate(todo):
        takes, gives = fabric.hands(step.code)
        if made >= stitch and (takes or gives):
            return at
        made += gives or takes
    return len(todo)


def loops_before(knitting: fabric.Knitting, kind: str) -> int:
    """Count the stitches on the needle before a sight of a kind."""
    at = next(at for at, each in enumerate(knitting.needle) if isinstance(each, Sight) and each.kind == kind)
    return sum(isinstance(each, str) for each in knitting.needle[:at])


def a_stitch_more(knitting: Mender) -> Remedy:
    """Give a way that no one should take: to make a stitch in the next round, whatever is wrong."""
    place = knitting.session.state.place
    return cost_remedy(RemedyKind.PLAIN, 3, place, mend=Mend(index=place.index, stitch=0, change=1, origin=place.index))


def mend(whole: Piece, kind: str, knitter: str, dice: random.Random) -> Outcome | None:
    """Make one mistake at a random place and mend it; None where it has no room there."""
    knitting = Mender(whole, kind, knitter, dice)
    return knitting.run() if knitting.begin() else None


def outcomes(pieces: list[Piece], times: int, seed: int, knitter: str) -> Iterator[Outcome]:
    """Make so many mistakes, as many of each kind, in garments and at places at random; the same for each
    knitter."""
    for number in range(times):
        kind = KINDS[number % len(KINDS)]
        dice = random.Random(f"mending {seed} {number}")
        found = None
        while found is None:
            found = mend(dice.choice(pieces), kind, knitter, dice)
        yield found
