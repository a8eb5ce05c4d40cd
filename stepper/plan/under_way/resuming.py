"""Find the place of the knitting in a changed plan, or the places between which she has to choose. Pure.

Theory of operation. What is knitted is a sequence of rounds; names, labels and remarks are not in the fabric.

1. Where the new plan begins with the very rounds that are knitted, the place is after them; it does not
   matter where in an even round its changes stand. A round half worked has to begin the same as well.
2. Otherwise the plan was changed in what is knitted already. Every seam of the new plan is measured by the
   rounds that are alike before it and after it (`stepper.plan.under_way.aligning`). The place is sure if one
   seam alone is best, the rounds on both sides of it are those on both sides of the place, nothing that was
   still to come would count as done and nothing done would come again, and most of what is knitted is found.
3. A name is a hint only: if the round after the seam lies in a section of another name, and the section she
   was in is still there, the place is not sure, whatever the rounds say. Two mittens are alike.
4. What is not sure is a question: the seams that fit best, the place as far into section and label as she
   was, and the last place up to which both plans are the same, to which she can rip back.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from stepper.craft.stitches import Stitch
from stepper.craft.stitches import stitch as stitch_of
from stepper.plan.model import Plan, Round
from stepper.plan.under_way.aligning import common_lengths, renamed_sections, seams, skipped_or_doubled
from stepper.plan.under_way.fingerprint import Knitted, describe_knitted, placed_alike
from stepper.plan.under_way.labelled import same_distance
from stepper.plan.under_way.respace import NoRoomError, moves_marker, respace, spread_of
from stepper.records import dataclass

MOST_CHOICES = 4
"""Places offered at most: about as many as can be kept in mind while they are read out (Cowan 2001, from
memory)."""
MOST_SEAMS = 2
"""Most of the best-fitting seams for which places are offered."""
FOUND = 0.5
"""Share of the rounds knitted, and of those that would count as knitted, that must be alike for a place to be
sure. Source: chosen here."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PlaceChoice:
    """A place where the knitting may go on in a changed plan."""

    index: int
    """Round to go on with, from 0; the number of rounds if none is left."""
    stitch: int
    """Stitches of it worked."""
    section: str
    """Section of the round; of the last one if none is left."""
    number: int
    """Its number in the section, from 1; 0 if none is left."""
    flat: bool
    label: str | None
    have: int
    """Stitches on the needles there, by the plan knitted so far. Unit: stitches."""
    want: int
    """Stitches the new plan has there. Unit: stitches."""
    rounds_back: int = 0
    """Rounds that come off first, besides the one in hand."""
    stitches_back: int = 0
    """Stitches of the round in hand that come off first. Unit: stitches."""
    places: tuple[int, ...] = ()
    """Where the increases or decreases of the round then lie, including those already made; empty unless the
    rest of them is respaced. Unit: stitches of the old round before each."""
    made: int = 0
    """How many of them are made."""
    before: int = 0
    """Stitches the round begins with if it is respaced. Unit: stitches."""
    after: int = 0
    """Stitches it then ends with. Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Resumed:
    """A place in the new plan, or the choice of one."""

    index: int
    """Round to go on with; the likeliest if she has to choose."""
    stitch: int
    same: bool
    """Whether the round in hand is in the new plan at this place, with the same stitches in it."""
    choices: tuple[PlaceChoice, ...] = ()
    """Places to choose from, the likeliest first; empty if the place is sure."""


@dataclass(frozen=True, slots=True, kw_only=True)
class _Both:
    """Two plans and what is knitted in their rounds, with the place in the old one."""

    old: Plan
    new: Plan
    done: list[Knitted]
    ahead: list[Knitted]
    after: list[Knitted]
    stitch: int

    @property
    def index(self) -> int:
        return len(self.done)

    @property
    def hand(self) -> Round | None:
        """The round half worked."""
        return self.old.rounds[self.index] if self.stitch and self.ahead else None


def resume(old: Plan, new: Plan, *, index: int, stitch: int) -> Resumed:
    """Find where to go on.

    Args:
        old: The plan knitted so far, as knitted.
        new: The plan to go on with.
        index: Round in hand in the old plan, from 0; the number of rounds when all are done.
        stitch: Stitches of it worked.
    """
    works = [placed_alike(round_) for round_ in old.rounds]
    after = [placed_alike(round_) for round_ in new.rounds]
    index = min(index, len(works))
    both = _Both(old=old, new=new, done=works[:index], ahead=works[index:], after=after, stitch=stitch)
    if after[:index] == both.done and _in_its_section(both, index):
        if _worked_alike(both, index) >= stitch:
            return Resumed(index=index, stitch=stitch, same=_same_ahead(both, index))
    elif not stitch and after[:index] == both.done:
        return _asked(both, [index])
    fitting = seams(both.done, both.ahead, after)
    most = max(fitting)
    best = [seam for seam, alike in enumerate(fitting) if alike == most]
    # What is worked of a round is on the needles: it belongs where a round begins with the same.
    likely = [seam for seam in best if _worked_alike(both, seam) >= stitch]
    if len(likely) == 1 and _is_sure(both, likely[0]):
        return Resumed(index=likely[0], stitch=stitch, same=True)
    return _asked(both, likely or best)


def follow(old: Plan, new: Plan, index: int) -> int | None:
    """Find the round of another plan that goes with one of the old plan.

    Returns:
        Its index, the number of rounds for the end; None if that round is not there.
    """
    works = [placed_alike(round_) for round_ in old.rounds]
    after = [placed_alike(round_) for round_ in new.rounds]
    if after[: index + 1] == works[: index + 1]:
        return index
    fitting = seams(works[:index], works[index:], after)
    most = max(fitting)
    alike = (
        seam
        for seam, count in enumerate(fitting)
        if count == most and after[seam : seam + 1] == works[index : index + 1]
    )
    return next(alike, None)


def _is_sure(both: _Both, seam: int) -> bool:
    """Return whether the one best seam is beyond doubt."""
    alike = common_lengths(both.done, both.after[:seam])[-1]
    return (
        bool(both.done)
        and seam > 0
        and both.after[seam - 1] == both.done[-1]
        and both.new.rounds[seam - 1].held == both.old.rounds[both.index - 1].held
        and (_same_ahead(both, seam) if both.ahead else seam == len(both.after))
        and alike >= FOUND * max(both.index, seam)
        and not skipped_or_doubled(both.done, both.ahead, both.after, seam)
        and _in_its_section(both, seam)
    )


def _same_ahead(both: _Both, seam: int) -> bool:
    """Return whether the round in hand comes next at a seam."""
    return both.after[seam : seam + 1] == both.ahead[:1]


def _in_its_section(both: _Both, seam: int) -> bool:
    """Return whether the section names agree: they are the same, or the old one is gone."""
    pairs = [(both.index - 1, seam - 1)] if both.index and seam else []
    pairs += [(both.index, seam)] if both.stitch and seam < len(both.after) else []
    for old, new in pairs:
        was, now = both.old.rounds[old].section, both.new.rounds[new].section
        if was != now and was in both.new.sections:
            return False
    return True


def _worked_alike(both: _Both, seam: int) -> int:
    """Count the stitches of the half-worked round that begin the round at a seam in the same way."""
    if both.hand is None or seam >= len(both.after) or both.new.rounds[seam].before != both.hand.before:
        return 0
    place = 0
    for one, other in zip(_singly(both.hand), _singly(both.new.rounds[seam]), strict=False):
        if one != other or place >= both.stitch:
            break
        place += stitch_of(one[0]).progress
    return place


def _singly(round_: Round) -> Iterator[tuple[str, str]]:
    """Yield the stitches of a round one by one."""
    for code, yarn, times in describe_knitted(round_)[4]:
        yield from [(code, yarn)] * times


# The question


def _asked(both: _Both, best: list[int]) -> Resumed:
    """Put the places to choose from in order, the likeliest first."""
    by_name = same_distance(both.old, both.new, both.index, renamed_sections(both.old, both.new))
    ranked = sorted({by_name, *best}, key=lambda seam: (*_misfit(both, seam), seam != by_name, seam))
    fitting = [seam for seam in ranked if not _misfit(both, seam)[0]][:MOST_SEAMS]
    kept = [seam for seam in ranked if seam == by_name or seam in fitting]
    back = _ripped_back(both)
    offers = [choice for seam in kept for choice in _at_seam(both, seam)]
    unlike = {(each.index, each.stitch, each.places): each for each in (*offers[: MOST_CHOICES - 1], back)}
    choices = tuple(unlike.values())
    first = choices[0]
    same = first.stitch == both.stitch and _same_ahead(both, first.index)
    return Resumed(index=first.index, stitch=first.stitch, same=same, choices=choices)


def _misfit(both: _Both, seam: int) -> tuple[bool, bool, bool]:
    """Rank a seam: by its count, then by whether the rounds around it are those around the place."""
    return (
        both.old.count_before(both.index) != both.new.count_before(seam),
        not _same_ahead(both, seam),
        both.after[max(0, seam - 1) : seam] != both.done[-1:],
    )


def _at_seam(both: _Both, seam: int) -> Iterator[PlaceChoice]:
    """Offer to go on at a seam; in a round that begins differently, also from where the two part."""
    stitch, hand = both.stitch, both.hand
    if hand is None:
        yield _choice(both, seam, 0, have=both.old.count_before(both.index))
        return
    alike = _worked_alike(both, seam)
    if alike < stitch and seam < len(both.after):
        yield from _spread_anew(both, hand, seam)
    if alike < stitch and seam < len(both.after) and both.new.rounds[seam].before == hand.before:
        have = _on_needles(hand, alike)
        yield _choice(both, seam, alike, have=have, stitches_back=stitch - alike)
    last = both.new.rounds[seam].progress - 1 if seam < len(both.after) else 0
    yield _choice(both, seam, max(0, min(stitch, last)), have=_on_needles(hand, stitch))


def _spread_anew(both: _Both, hand: Round, seam: int) -> Iterator[PlaceChoice]:
    """Offer to keep what is worked and respace the rest of the increases or decreases to meet the new count;
    not if they have places of their own."""
    new = both.new.rounds[seam]
    was, now = spread_of(hand), spread_of(new)
    if was is None or now is None or was.change != now.change or new.before != hand.before or not new.evenly:
        return
    made, used = _changes_made(hand, both.stitch, now.change)
    try:
        places = respace(new, used=used, made=made)
    except NoRoomError:
        return
    places = (*hand.shaping[:made], *places[made:])
    if moves_marker(new, places):
        return
    have = _on_needles(hand, both.stitch)
    stitch = used + made * now.change.change
    yield replace(
        _choice(both, seam, stitch, have=have),
        want=have,
        places=places,
        made=made,
        before=new.before,
        after=new.after,
    )


def _changes_made(round_: Round, worked: int, change: Stitch) -> tuple[int, int]:
    """Count the changes made in the stitches worked of a round, and the old stitches they took up."""
    steps = [*_steps(round_, worked)]
    made = sum(done for entry, done in steps if entry.code == change.code)
    return made, sum(done * entry.uses for entry, done in steps)


def _steps(round_: Round, worked: int) -> Iterator[tuple[Stitch, int]]:
    """Yield what is worked of a round, and how many of each; one half made is not counted."""
    for code, _, times in describe_knitted(round_)[4]:
        entry = stitch_of(code)
        done = times if times * entry.progress <= worked else worked // entry.progress
        yield entry, done
        worked -= done * entry.progress
        if done < times:
            return


def _ripped_back(both: _Both) -> PlaceChoice:
    """Offer to rip back to where both plans part."""
    seam = 0
    while seam < both.index and both.after[seam : seam + 1] == both.done[seam : seam + 1]:
        seam += 1
    stitches = both.stitch if both.hand is not None else 0
    have = both.old.count_before(seam)
    return _choice(both, seam, 0, have=have, rounds_back=both.index - seam, stitches_back=stitches)


def _choice(
    both: _Both, index: int, stitch: int, *, have: int, rounds_back: int = 0, stitches_back: int = 0
) -> PlaceChoice:
    rounds = both.new.rounds
    here = rounds[index] if index < len(rounds) else None
    shown = here if here is not None else rounds[-1] if rounds else None
    want = _on_needles(here, stitch) if here is not None and stitch else both.new.count_before(index)
    return PlaceChoice(
        index=index,
        stitch=stitch,
        section=shown.section if shown is not None else "",
        number=here.number if here is not None else 0,
        flat=shown is not None and shown.flat,
        label=here.label if here is not None else None,
        have=have,
        want=want,
        rounds_back=rounds_back,
        stitches_back=stitches_back,
    )


def _on_needles(round_: Round, worked: int) -> int:
    """Count the stitches on both needles after some of a round; one half made is not counted."""
    return round_.before + sum(done * entry.change for entry, done in _steps(round_, worked))
