"""A knitter who made one mistake, and mends it by what she is told: the whole conversation, to the last stitch.

She has hands, needles and loops (`tests.fabric`) and knows nothing of how faults are looked for. She counts, looks
and answers truthfully, but not always: of three knitters one answers all that is asked, one answers half and
otherwise asks what she can do, one asks that at once. Whatever way is then said first she takes, and works it stitch
by stitch, also where it does harm. Afterwards her fabric is laid beside one that was knitted right: the stitches
between all markers, live loops, and whether what was made good lies in the same stretch as the mistake, between the same
two markers, changes or repeats. A mistake is noticed at the end of its round or up to two plain rounds later or, where
she is told to, in the middle of its round, behind the mistake, with the rest still on the left needle.
"""

from __future__ import annotations

import random
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from itertools import groupby

from stepper.language.aloud import spell_out
from stepper.language.effect_words import tell_effect
from stepper.plan.model import Plan
from stepper.plan.under_way.absorb import Mend
from stepper.session.counting.doubts import AskBack
from stepper.session.cues import Choose, Count, Cue, Next, No, Remedies, Saw, SectionCount
from stepper.session.effects import AskCount, AskLook, AskSections, Effect, Refuse, TellStep
from stepper.session.fault.inquiry import inquire
from stepper.session.fault.respond import AskAgain, TellLadder
from stepper.session.fault.ways import Remedy, RemedyKind, cost_remedy
from stepper.session.machine import Considered, Session
from stepper.session.state import DoubtKind, Knitting, Position, Seen, State, Verified
from tests import fabric, hunt
from tests.fabric import Sight, Step
from tests.playbook import AT

KINDS = (
    "dropped", "yarn over", "missed increase", "missed decrease", "doubled decrease", "missed repeat",
    "lost at the join", "split yarn", "miscount", "lost at a marker",
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
    midway: bool = False
    """Whether it was noticed in the middle of its round."""
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


@dataclass(frozen=True)
class Slip:
    """A round as she works it, with a mistake."""

    todo: list[Step]
    at: int
    """The step of the mistake, behind which the rest is as planned."""
    end: int
    """The first step behind it."""
    falls: int | None = None
    """The step whose loop falls off the needle."""
    is_made: bool = True
    """Whether anything is wrong with it."""

    @property
    def before(self) -> int:
        """Stitches on the right needle when it happens."""
        return made(self.todo[: self.at])


def _slip(
    plan: Plan, before: fabric.Knitting, kind: str, dice: random.Random, *, index: int, midway: bool
) -> Slip | None:
    """Plan a round with a mistake, over what hangs on the needle before it; None where it has no room for it."""
    todo = fabric.steps(plan.rounds[index].phrase)
    plain = [at for at, each in enumerate(todo) if each.code in ("k", "p")]
    if kind == "miscount":
        return Slip(todo, 0, 0, is_made=False)
    if kind == "missed repeat":
        return _missed_repeat(plan, index, dice)
    if kind in ("missed increase", "missed decrease", "doubled decrease", "yarn over"):
        change = _changed(todo, kind, dice)
        return None if change is None else Slip(todo, *change, change[0] if kind == "yarn over" else None)
    if not plain:
        return None
    if kind == "dropped":
        at = dice.choice(plain)
        return Slip(todo, at, at + 1, at)
    if kind == "split yarn":
        at = dice.choice(plain)
        todo[at] = Step("split")
        return Slip(todo, at, at + 1)
    if kind == "lost at a marker":
        hung = [at for at in plain if at and todo[at - 1].code in ("sm", "pm")]
        return _lost(todo, dice.choice(hung), dice, before) if hung else None
    at = plain[0] if midway else plain[-1]
    return _lost(todo, at, dice, before) if min(at, len(todo) - 1 - at) < NEAR_THE_JOIN else None


NEAR_THE_JOIN = 3
"""Steps from the end of a round within which a stitch is at the join. Source: chosen here."""


def _lost(todo: list[Step], at: int, dice: random.Random, before: fabric.Knitting) -> Slip | None:
    """Lose a stitch: it slips off, or is caught up in its neighbour, if no marker hangs between the two, which would
    be knitted in with them and seen at once."""
    hung = before.edges("marker")

    def alike(first: int) -> bool:
        taken = sum(fabric.hands(each.code)[0] for each in todo[: first + 1])
        return [each.code for each in todo[first : first + 2]] in _ALIKE and taken not in hung

    pair = next((each for each in (at - 1, at) if alike(each)), None)
    if dice.random() < LOST_BY_SLIPPING or pair is None or pair < 0:
        return Slip(todo, at, at + 1, at)
    todo[pair : pair + 2] = [Step("k2tog", stray=True)]
    return Slip(todo, pair, pair + 1)


_ALIKE = (["k", "k"], ["p", "p"])
LOST_BY_SLIPPING = 0.5
"""How often a stitch lost slips off. Source: chosen here."""


def made(todo: list[Step]) -> int:
    """Count the stitches that steps leave on the right needle, those bound off as one each."""
    return sum(gives or takes for takes, gives in (fabric.hands(each.code) for each in todo))


def _changed(todo: list[Step], kind: str, dice: random.Random) -> tuple[int, int] | None:
    """Make a mistake at an increase or decrease; the step it is at, and the first one behind it."""
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
        return at, at + takes
    if kind == "doubled decrease":
        todo[at + 1 : at + 1 + takes] = [Step(todo[at].code)]
        at += 1
    return at, at + 1


def _missed_repeat(plan: Plan, index: int, dice: random.Random) -> Slip | None:
    todo = fabric.repeated(plan.rounds[index], dice, more=False)
    if todo is None:
        return None
    right = fabric.steps(plan.rounds[index].phrase)
    at = next((at for at, (a, b) in enumerate(zip(todo, right, strict=False)) if a.code != b.code), len(todo))
    return Slip(todo, at, at)


# The conversation


Tell = Callable[[Considered, State, State], list[str]]
"""Writes what is kept of an answer and what is another in the state for it, of the states before and after."""


def tell_nothing(_considered: Considered, _was: State, _now: State) -> list[str]:
    """Write nothing of what is kept: the words are enough."""
    return []


class Mender:
    """A knitter at work on one mistake."""

    def __init__(
        self,
        whole: Piece,
        kind: str,
        knitter: str,
        dice: random.Random,
        *,
        midway: bool = False,
        tell: Tell = tell_nothing,
    ) -> None:
        """Sit down; `begin` makes the mistake, noticed in the middle of its round if `midway`."""
        self.tell = tell
        self.piece, self.kind, self.knitter, self.dice, self.midway = whole, kind, knitter, dice, midway
        self.outcome = Outcome(kind, knitter, whole.name, midway)
        self.index = -1
        self.slip: Slip
        self.fabric: fabric.Knitting
        self.session: Session
        self.effects: tuple[Effect, ...] = ()
        self.marked = False

    def begin(self) -> bool:
        """Make the mistake, knit on and count; false where it has no room or nothing shows."""
        plan, photographs = self.piece.plan, self.piece.photographs
        index = self.dice.randrange(1, len(plan.rounds))
        if not plan.rounds[index].before:
            return False
        slip = _slip(plan, photographs[index], self.kind, self.dice, index=index, midway=self.midway)
        if slip is None:
            return False
        self.slip, self.index, self.fabric = slip, index, photographs[index].copy()
        place = self._to_the_middle() if self.midway else self._to_the_end()
        if place is None:
            return False
        verified = Verified(place=Position(index=max(0, index - self.dice.randint(0, 3))), stitches=0)
        self.session = Session(plan, State(seq=1, knitting=Knitting(place=place, verified=verified)))
        first = self._first_count(place)
        if first is None:
            return False
        self.say(first)
        return inquire(self.session.plan, self.session.state) is not None

    def _work_wrong(self, todo: list[Step], *, stops: bool) -> None:
        marks = ("fault", self.slip.at) if self.slip.is_made else None
        self.fabric.work(self.index, todo, falls=self.slip.falls, marks=marks, stops=stops)

    def _to_the_end(self) -> Position:
        """Work the round of the mistake, and up to two plain rounds above it."""
        plan, last = self.piece.plan, self.index
        self._work_wrong(self.slip.todo, stops=False)
        for _ in range(self.dice.randint(0, 2)):
            if last + 1 < len(plan.rounds) and hunt.one_stitch(plan.rounds[last + 1]):
                last += 1
                code = plan.rounds[last].runs[0].stitch
                hunt.turned(plan, self.fabric, last)
                self.fabric.work(last, [Step(code)] * self.fabric.count)
        hunt.turned(plan, self.fabric, last + 1)
        return Position(index=last + 1)

    def _to_the_middle(self) -> Position | None:
        """Stop somewhere behind the mistake, in its round, where she takes herself to be by the pattern; None where
        nothing lies behind it."""
        right = fabric.steps(self.piece.plan.rounds[self.index].phrase)
        longer = len(right) - len(self.slip.todo)
        stop = self.dice.randint(self.slip.end + longer, len(right))
        while stop < len(right) and not any(fabric.hands(right[stop].code)):
            stop += 1  # a marker there hangs on the right needle
        place = Position(index=self.index, stitch=made(right[:stop]))
        if not 0 < place.stitch < made(right):
            return None
        self._work_wrong(self.slip.todo[: stop - longer], stops=True)
        return place

    def _first_count(self, place: Position) -> Cue | None:
        """Return the count, or what else shows that something is wrong."""
        plan = self.piece.plan
        wanted = self._wanted(place).count if place.stitch else plan.rounds[place.index - 1].after
        if wanted < 4:
            return None
        if self.kind == "miscount":
            return Count(stitches=max(1, wanted + self.dice.choice((-3, -2, -1, -1, 1, 1, 2, 3))), at=AT)
        if self.fabric.count > 2 * max(1, wanted):
            return None
        end = wanted if place.stitch else hunt.at_end(plan, place.index)
        if self.fabric.count not in (wanted, end):
            return Count(stitches=self.fabric.count, at=AT)
        over = self.fabric.left.get(self.index, 0)
        if over and place == Position(index=self.index + 1):
            return Saw(seen=Seen.LEFT, number=abs(over), sign=1 if over > 0 else -1, at=AT)
        return None

    def _wanted(self, place: Position) -> fabric.Knitting:
        """Knit to a place without a mistake."""
        wanted = self.piece.photographs[place.index]
        if place.stitch:
            wanted, todo = wanted.copy(), fabric.steps(self.piece.plan.rounds[place.index].phrase)
            wanted.work(place.index, todo[: _step_at(todo, place.stitch)], stops=True)
        return wanted

    def say(self, cue: Cue) -> None:
        """Say something, and hear the answer."""
        considered, was = self.session.consider(cue), self.session.state
        self.session.adopt(considered)
        self.effects = considered.effects
        lines = [tell_effect(each, self.session.plan) for each in self.effects if not isinstance(each, TellStep)]
        said = spell_out(" ".join(line for line in lines if line))
        before = said.partition("Say:")[0].partition("Then say:")[0]
        self.outcome.words.append(len(before.replace(",", " ").split()))
        self.outcome.said.append((self.outcome.words[-1], said))
        self.outcome.log += [f"> {cue}", *lines, *self.tell(considered, was, self.session.state)]
        refused = [each for each in self.effects if isinstance(each, Refuse)]
        assert not refused, (self.outcome.log, self.kind, self.index)
        if any(isinstance(each, AskBack) and each.doubt.kind is DoubtKind.FINISHED for each in self.effects):
            self.say(No(at=AT))  # the count is by chance that of the end of the round

    def run(self) -> Outcome:
        """Go on until nothing is asked and nothing is wrong as far as she knows, or patience ends."""
        for _ in range(PATIENCE):
            answer = self._answer()
            if answer is not None and self._answers():
                self.outcome.questions += 1
                answer()
            elif self.session.state.knitting.fault is None or not self._take_first():
                break
        if self.session.state.knitting.fault is None:
            self._finish_round()
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
        if way.kind is RemedyKind.FINISH:
            self.outcome.first_right = self.outcome.first_right or is_first
            self.outcome.questions += 1
            self._finish_round(by_eye=way.by_eye)
            self._count()
            return True
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
        if way.kind is RemedyKind.RESPACE:
            self._finish_round()
            self._count()
        if way.mend is not None:
            self._knit_to_the_mend(way)

    def _take_back(self, place: Position) -> None:
        """Undo to a place; what is left of the round there is worked again as the pattern has it."""
        index = place.index
        gone = index < self.index or (index == self.index and place.stitch <= self.slip.before)
        if not gone and self.slip.is_made:
            self.outcome.log.append("# the mistake is still in what was kept")
            if not self.midway:
                return
            self.fabric = self.piece.photographs[index].copy()
            right = fabric.steps(self.piece.plan.rounds[index].phrase)
            kept = _step_at(right, place.stitch) - len(right) + len(self.slip.todo)
            self._work_wrong(self.slip.todo[:kept], stops=True)
        else:
            self.fabric = self._wanted(place).copy()
        self._finish_round(index)
        self._count()

    def _finish_round(self, index: int | None = None, *, by_eye: bool = False) -> None:
        """Work what is left of the round in hand as it is read out; of one that was not begun, if it is named, all."""
        place, plan = self.session.state.place, self.session.plan
        if not place.stitch and index is None:
            return
        todo = fabric.steps(plan.rounds[place.index].phrase)
        todo = todo[_step_at(todo, place.stitch) if place.stitch else 0 :]
        self.fabric.work(place.index, self._to_the_markers(todo) if by_eye else todo)
        hunt.turned(self.piece.plan, self.fabric, place.index + 1)
        self._say_next(place.index)

    def _to_the_markers(self, todo: list[Step]) -> list[Step]:
        """Make the longest plain stretch before each marker, and before the end, as long as it comes."""
        place, hung = self.session.state.place, self.fabric.ahead()
        done = self.piece.photographs[place.index + 1].edges("marker")
        if self.piece.plan.rounds[place.index].side != self.piece.plan.rounds[place.index + 1].side:
            done = [self.piece.plan.rounds[place.index].after - each for each in reversed(done)]
        ends = [_step_at(todo, each - place.stitch) for each in done if each > place.stitch]
        if len(ends) != len(hung) - 1:
            return todo
        fitted: list[Step] = []
        for start, end, there in zip([0, *ends], [*ends, len(todo)], hung, strict=True):
            part = todo[start:end]
            runs = [list(run) for _, run in groupby(part, key=lambda each: each.code in ("k", "p"))]
            longest = max(runs, key=lambda run: len(run) if run[0].code in ("k", "p") else 0, default=[])
            more = there - sum(fabric.hands(each.code)[0] for each in part)
            for run in runs:
                fitted += run[:more] if run is longest and more < 0 else run
                fitted += run[-1:] * more if run is longest else []
        return fitted

    def _knit_to_the_mend(self, way: Remedy) -> None:
        assert way.mend is not None
        plan = self.session.plan
        self._finish_round()
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
        marks = [each for each in between if isinstance(each, fabric.Marker)]
        assert way.mend is not None
        if self.marked and (marks or not self._lace_goes_on(way.mend.index)):
            return bool(marks)  # markers hung since make no stretches of what lay there before
        if self.kind == "doubled decrease":
            own = {("change", self.index)}  # the decrease too many itself, and the one it doubles
            beside = [at for at, e in enumerate(between) if isinstance(e, Sight) and (e.kind, e.index) in own]
            near = beside[:1] if low == places["fault"] else beside[-1:]
            between = tuple(each for at, each in enumerate(between) if at not in near)
        loops = [at for at, each in enumerate(between) if isinstance(each, str)]
        between = between[loops[0] : loops[-1] + 1] if loops else ()  # what hangs at one of the two is beside it
        sights = [each for each in self.fabric.needle if isinstance(each, Sight)]
        first = way.mend.index - SEEN_ROUNDS
        made = [e for e in sights if first <= e.index < way.mend.index and e.kind in ("change", "repeat")]
        latest = max((each.index for each in made), default=-1)
        kind = "change" if any((e.kind, e.index) == ("change", latest) for e in made) else "repeat"
        return any(isinstance(each, Sight) and (each.kind, each.index) == (kind, latest) for each in between)

    def _lace_goes_on(self, index: int) -> bool:
        """Look whether there is lace in the rounds below a round and in those above it."""
        rounds = self.piece.plan.rounds
        changes = [
            {hands > 0 for each in fabric.steps(round_.phrase) if (hands := _gain(each.code)) and fabric.changing(each.code)}
            for round_ in rounds[max(0, index - SEEN_ROUNDS) : index + SEEN_ROUNDS]
        ]
        at = min(index, SEEN_ROUNDS)
        return all(any(len(each) == 2 for each in part) for part in (changes[:at], changes[at:]))

    def _is_right(self) -> bool:
        """Lay her fabric beside one knitted right."""
        place = self.session.state.place
        if place.index >= len(self.piece.photographs):
            return self.fabric.count == self.piece.plan.rounds[-1].after and not self.fabric.loose
        wanted = self._wanted(place)
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


def _gain(code: str) -> int:
    """Count the stitches a code gains; below 0 for those it loses."""
    takes, gives = fabric.hands(code)
    return gives - takes


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
    """Return a way that no one should take: to make a stitch in the next round, whatever is wrong."""
    place = knitting.session.state.place
    return cost_remedy(RemedyKind.PLAIN, 3, place, mend=Mend(index=place.index, stitch=0, change=1, origin=place.index))


def mend(
    whole: Piece,
    kind: str,
    knitter: str,
    dice: random.Random,
    *,
    midway: bool = False,
    tell: Tell = tell_nothing,
) -> Outcome | None:
    """Make one mistake at a random place and mend it; None where it has no room there."""
    knitting = Mender(whole, kind, knitter, dice, midway=midway, tell=tell)
    return knitting.run() if knitting.begin() else None


MIDWAY_EVERY = 3
"""Of so many mistakes of each kind one is noticed in the middle of its round. Source: chosen here."""


def outcomes(
    pieces: list[Piece], times: int, seed: int, knitter: str, *, midway: bool | None = None
) -> Iterator[Outcome]:
    """Make so many mistakes, as many of each kind, in garments and at places at random; the same for each
    knitter. A third of them is noticed in the middle of the round, unless all or none are to be."""
    for number in range(times):
        kind = KINDS[number % len(KINDS)]
        dice = random.Random(f"mending {seed} {number}")
        soon = number // len(KINDS) % MIDWAY_EVERY == MIDWAY_EVERY - 1 if midway is None else midway
        found = None
        while found is None:
            found = mend(dice.choice(pieces), kind, knitter, dice, midway=soon)
        yield found
