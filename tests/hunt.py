"""Seed one mistake in a garment, count, and let the session look for it: the whole flow of a knitter.

What she answers: the count at the end of a round up to two plain rounds after the mistake (or, where the count
is right and the round did not come out, how many stitches were over); each count between landmarks she is
asked for, or the whole once more; each thing she is asked to look for. She answers all of it truthfully, from the loops on her
needles (`tests.fabric`), and volunteers nothing else. The last good count is up to three rounds before the
mistake, and known to the session.
"""

from __future__ import annotations

import random
from dataclasses import dataclass, field
from itertools import islice

from stepper.craft.stitches import Kind, stitch
from stepper.plan.model import Plan, Round
from stepper.session.cues import Count, Cue, Saw, SectionCount
from stepper.session.effects import AskLook, AskSections, Effect, Refuse
from stepper.session.fault.inquiry import inquire
from stepper.session.fault.respond import AskAgain
from stepper.session.machine import Session
from stepper.session.state import Knitting, Position, Seen, State, Verified
from tests import fabric
from tests.fabric import Mistake

FAR = 99
"""Rank of a cause that is not named at all."""
AT = "2025-03-03T20:15:00+01:00"


@dataclass(frozen=True)
class Trial:
    """How one mistake was looked for."""

    mistake: Mistake
    index: int
    by_count: int
    """Rank of the true cause from the count alone, from 0."""
    by_sections: int
    """Its rank once a loop was looked for and the counts between landmarks are made."""
    by_looks: int
    """Its rank once everything asked was looked at."""
    round_right: bool
    """Whether the first cause names the right round, too."""
    counts: int
    """Counts between landmarks that were asked for."""
    stitches: int
    """Stitches counted for them."""
    all_stitches: int
    """Stitches on the needles."""
    looks: int
    """Things that were looked at."""
    session: Session = field(repr=False, compare=False)
    """As it stands then."""
    knitting: fabric.Knitting = field(repr=False, compare=False)
    """What is on the needles."""


def one_stitch(round_: Round) -> bool:
    """Tell whether a round is the same plain stitch all along."""
    return len(round_.runs) == 1 and stitch(round_.runs[0].stitch).kind is Kind.PLAIN


def trials(
    plan: Plan, photographs: list[fabric.Knitting], mistake: Mistake, times: int, seed: int
) -> list[Trial]:
    """Look for a mistake of one kind at so many random places; fewer, or none, where it has no room."""
    dice = random.Random(f"{plan.title} {mistake} {seed}")
    found = (trial(plan, photographs, mistake, dice) for _ in range(20 * times))
    return list(islice((each for each in found if each is not None), times))


def trial(
    plan: Plan, photographs: list[fabric.Knitting], mistake: Mistake, dice: random.Random
) -> Trial | None:
    """Make one mistake and look for it; nothing where the round has no room for it or nothing shows."""
    index = dice.randrange(1, len(plan.rounds))
    if not plan.rounds[index].before:
        return None
    knitting = fabric.with_mistake(plan, photographs[index], index, mistake, dice)
    if knitting is None:
        return None
    last = index
    for _ in range(dice.randint(0, 2)):
        if last + 1 < len(plan.rounds) and one_stitch(plan.rounds[last + 1]):
            last += 1
            code = plan.rounds[last].runs[0].stitch
            turned(plan, knitting, last)
            knitting.work(last, [fabric.Step(code)] * knitting.count)
    turned(plan, knitting, last + 1)
    verified = Verified(place=Position(index=max(0, index - dice.randint(0, 3))), stitches=0)
    place = Position(index=last + 1)
    session = Session(plan, State(seq=1, knitting=Knitting(place=place, verified=verified)))
    if knitting.count > 2 * max(1, plan.rounds[last].after):
        return None  # she would not say so: there is nothing left to count, or twice as much as there can be
    if knitting.count not in (plan.rounds[last].after, at_end(plan, last + 1)):
        first: Cue = Count(stitches=knitting.count, at=AT)
    elif knitting.left[index] and last == index:
        over = knitting.left[index]
        first = Saw(seen=Seen.LEFT, number=abs(over), sign=1 if over > 0 else -1, at=AT)
    else:
        return None
    return _looked_for(session, knitting, mistake, index, first)


def turned(plan: Plan, knitting: fabric.Knitting, index: int) -> None:
    """Turn the work in front of a row that is worked from the other side."""
    if index < len(plan.rounds) and plan.rounds[index].side != plan.rounds[index - 1].side:
        knitting.turn()


def at_end(plan: Plan, index: int) -> int:
    """Return the count at which the session takes it that the round in hand is worked already."""
    return plan.rounds[index].after if index < len(plan.rounds) else plan.rounds[-1].after


def _looked_for(
    session: Session, knitting: fabric.Knitting, mistake: Mistake, index: int, first: Cue
) -> Trial:
    effects = _told(session, first)
    inquiry = inquire(session.plan, session.state)
    assert inquiry is not None, (mistake, index, effects)
    by_count = _rank([each.cause.value for each in inquiry.causes], mistake)
    by_sections: int | None = None
    counts = stitches = looks = 0
    while True:
        ask = next((each for each in effects if isinstance(each, AskSections | AskLook | AskAgain)), None)
        is_loop = isinstance(ask, AskLook) and ask.seen is Seen.LOOP
        if by_sections is None and not is_loop and not isinstance(ask, AskSections | AskAgain):
            by_sections = _rank(_named(session), mistake)
        if ask is None:
            break
        if isinstance(ask, AskSections):
            counted = knitting.between(ask.stretch.kind, ask.stretch.first, ask.stretch.end)
            counts, stitches = counts + 1, stitches + counted
            effects = _told(session, SectionCount(stitches=counted, at=AT))
        elif isinstance(ask, AskAgain):
            effects = _told(session, Count(stitches=knitting.count, at=AT))
        else:
            looks += 1
            assert looks < 12, "it never stops asking"
            seen = look_for(session.plan, knitting, ask)
            cue = Saw(seen=ask.seen, number=abs(seen), sign=-1 if seen < 0 else 1, at=AT)
            effects = _told(session, cue)
        assert not any(isinstance(each, Refuse) for each in effects), (mistake, index, effects)
    found = inquire(session.plan, session.state)
    causes = found.causes if found is not None else ()
    named = [each.cause.value for each in causes]
    return Trial(
        mistake=mistake,
        index=index,
        by_count=by_count,
        by_sections=FAR if by_sections is None else by_sections,
        by_looks=_rank(named, mistake),
        round_right=bool(causes) and causes[0].index == index,
        counts=counts,
        stitches=stitches,
        all_stitches=knitting.count,
        looks=looks,
        session=session,
        knitting=knitting,
    )


def _named(session: Session) -> list[str]:
    """Name the causes, the likeliest first."""
    found = inquire(session.plan, session.state)
    return [each.cause.value for each in found.causes] if found is not None else []


def _told(session: Session, cue: Cue) -> tuple[Effect, ...]:
    considered = session.consider(cue)
    session.adopt(considered)
    return considered.effects


def _rank(named: list[str], mistake: Mistake) -> int:
    kinds = list(dict.fromkeys(named))
    return kinds.index(mistake) if mistake in kinds else FAR


def look_for(plan: Plan, knitting: fabric.Knitting, ask: AskLook) -> int:
    """Look at the fabric for what is asked."""
    if ask.seen is Seen.LOOP:
        return int(knitting.loose > 0)
    if ask.seen is Seen.LEFT:
        return knitting.left.get(ask.index, 0)
    if ask.seen is Seen.WHOLE:
        return int(ask.index in knitting.swapped)
    should = sum(fabric.changing(each.code) for each in fabric.steps(plan.rounds[ask.index].phrase))
    return knitting.changes.get(ask.index, should) - should
