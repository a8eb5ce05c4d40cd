"""Find a fault by counting between landmarks: what to count next, and where the fault must be.

Theory of operation. The answers so far are folded over all sections: what was counted and is right is
cleared, what is off is narrowed to, and a count that later ones refute is left. As long as one stretch of
sections accounts for the whole difference the fault is taken for single and looked for with the least
counting (`stepper.craft.fault_finding`). A stretch is never only inferred: the last one is counted itself
before it is called found, because the count of the whole may be the one that is wrong; where all are as
they should be, it is. Where an answer explains another difference, either a whole round was worked for
another, which shifts everything, or there are several faults, and these are looked for one after the
other, each with its sign. One case looks like two and is not: where increases and decreases themselves
are the landmarks, one left out makes its section run on to the next, one too many cuts it short. No I/O.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from stepper.craft.fault_finding import CountedSection, NextCount, next_count, plain_odds
from stepper.plan.model import Plan
from stepper.records import dataclass
from stepper.session.counting.tally import piece_begun, tally_stitches
from stepper.session.fault.landmarks import Landmark, Sections, is_turned, sections_at
from stepper.session.fault.symptoms import SPREAD, list_symptoms
from stepper.session.state import Answer, Fault, Position, State, Verified

BREAK_ODDS = 40.0
"""How many plain stitches an interruption weighs in the odds. Place-keeping errors double after a break of
2.8 s (Altmann, Trafton and Hambrick 2014); that a break weighs as much as a section is chosen here."""

QUESTION_STITCHES = 8.0
"""Hearing a question, finding the landmarks and answering take as long as counting so many stitches, four
seconds at the assumed half a second each. Assumption; no source found."""

MOST_GROUPS = 24
"""Stretches weighed against each other at most; where there are more sections, several are taken together
until the fault is known to lie in one stretch. Source: chosen here."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Search:
    """How far the looking has come."""

    sections: Sections | None
    """None if the stitches cannot be told apart."""
    suspects: tuple[int, ...] = ()
    """Sections under suspicion, in order."""
    next: NextCount | None = None
    """What to count next; None if no count helps any more."""
    single: bool = True
    """Whether the counts can still come from one fault in one place."""
    difference: int
    """Stitches off among the suspects. Unit: stitches."""
    rest: int = 0
    """Stitches off elsewhere, by another fault. Unit: stitches."""
    landmark: int = 0
    """-1 where an increase or decrease is missing among the landmarks, 1 where one is too many."""
    spot: int | None = None
    """Where the one too many was counted to. Unit: stitches on the needles."""
    sound: bool = False
    """Whether every section was counted and is as it should be, so that the whole count was a slip."""
    counted: tuple[int, ...] = ()
    """The sections of the last count that was off."""

    @property
    def found(self) -> tuple[int, int] | None:
        """Stitches on the needles between which the fault lies, known by a count of just these."""
        if self.sections is None or self.next is not None or not self.single or not self.suspects:
            return None
        return self.sections.edges[self.suspects[0]], self.sections.edges[self.suspects[-1] + 1]


def search(plan: Plan, state: State, fault: Fault) -> Search:
    """Work out how far the looking has come from the answers given."""
    sections = sections_at(plan, fault.place)
    off = fault.difference
    if sections is None or not off:
        return Search(sections=sections, difference=off)
    rounds = window(plan, fault, state.knitting.stands)
    looking = _folded(sections, fault, shifted=_may_have_shifted(plan, rounds, off))
    if looking.sound or not looking.single:
        return looking
    if looking.landmark:
        if len(looking.counted) < 2:
            return looking
        # Of their landmarks one is missing or too many.
        return replace(looking, next=_count_of(looking, looking.counted[: len(looking.counted) // 2]))
    if len(looking.suspects) == 1:
        is_counted = looking.counted == looking.suspects
        return looking if is_counted else replace(looking, next=_count_of(looking, looking.suspects))
    rows = _weighed(plan, state, fault, sections)
    ordered = sections.kind is Landmark.CHANGE and sections.index in rounds
    return replace(looking, next=_least_counting(sections, rows, looking.suspects, in_order=ordered))


def _may_have_shifted(plan: Plan, rounds: Sequence[int], off: int) -> bool:
    """Return whether a whole round, or the rest of one, can have been worked otherwise."""
    told = (each for index in rounds for each in list_symptoms(plan, index))
    return any(each.difference == off and each.cause in SPREAD for each in told)


def _folded(sections: Sections, fault: Fault, *, shifted: bool) -> Search:
    """Fold the answers over the sections."""
    whole = fault.difference
    right = {
        at
        for answer in fault.answers
        if answer.stitches == sum(sections.counts[answer.first : answer.end])
        for at in range(answer.first, answer.end)
    }
    suspects = tuple(at for at in range(len(sections.counts)) if at not in right)
    if not suspects:
        return Search(sections=sections, difference=whole, sound=True)
    off, landmark, counted, spot = whole, 0, tuple[int, ...](), None
    for answer in fault.answers:
        inside = answer.stitches - sum(sections.counts[answer.first : answer.end])
        shown = _landmark(sections, answer, off, suspects)
        if shown:
            landmark, suspects = shown, _around_landmark(sections, answer, off, shown)
            counted = tuple(range(answer.first, answer.end))
            spot = sections.edges[answer.first] + answer.stitches - 1 if shown > 0 else None
            continue
        kept = tuple(at for at in suspects if answer.first <= at < answer.end)
        if landmark:
            suspects = tuple(at for at in suspects if at >= answer.end) or suspects
            counted = tuple(at for at in counted if at >= answer.end) or counted
        if not inside or not kept:
            continue  # as it should be, or refuted by later counts, or another fault's
        if inside != off and shifted:
            return Search(sections=sections, suspects=suspects, single=False, difference=off)
        suspects, off, counted = kept, inside, tuple(range(answer.first, answer.end))
    return Search(
        sections=sections,
        suspects=suspects,
        difference=off,
        rest=whole - off,
        landmark=landmark,
        spot=spot,
        counted=counted,
    )


def _count_of(looking: Search, asked: tuple[int, ...]) -> NextCount:
    """Ask for neighbouring sections; for the one left, which is only inferred so far, too."""
    assert looking.sections is not None
    stitches = sum(looking.sections.counts[at] for at in asked)
    return NextCount(
        count=(asked[0], asked[-1] + 1),
        if_wrong=asked,
        if_right=tuple(at for at in looking.suspects if at not in asked),
        stitches=stitches,
        expected_counts=1.0,
        expected_stitches=float(stitches),
    )


def _least_counting(
    sections: Sections, rows: Sequence[CountedSection], suspects: tuple[int, ...], *, in_order: bool
) -> NextCount | None:
    """Choose the count that finds the fault with the least counting, several sections together where there
    are very many."""
    size = -(-len(suspects) // MOST_GROUPS)
    if size == 1:
        return next_count(rows, suspects, question=QUESTION_STITCHES, in_order=in_order)
    groups = [suspects[at : at + size] for at in range(0, len(suspects), size)]
    merged = [
        CountedSection(
            stitches=sum(rows[at].stitches for at in group), odds=sum(rows[at].odds for at in group)
        )
        for group in groups
    ]
    ask = next_count(merged, question=QUESTION_STITCHES, in_order=in_order)
    if ask is None:
        return None
    first, end = groups[ask.count[0]][0], groups[ask.count[1] - 1][-1] + 1
    return replace(
        ask,
        count=(first, end),
        if_wrong=tuple(each for at in ask.if_wrong for each in groups[at]),
        if_right=tuple(each for at in ask.if_right for each in groups[at]),
        stitches=sum(sections.counts[first:end]),
    )


def _around_landmark(sections: Sections, answer: Answer, off: int, landmark: int) -> tuple[int, ...]:
    """Return the sections in which a landmark is missing or too many."""
    # One stitch from landmark to landmark and that one missing: the section before looked right.
    hidden = landmark < 0 and sections.counts[answer.first] == -off and answer.first > 0
    first = answer.first - 1 if hidden else answer.first
    # Seen from the other side the stitch itself lies behind its landmark.
    return tuple(range(first, min(answer.end + sections.turned, len(sections.counts))))


def _landmark(sections: Sections, answer: Answer, off: int, suspects: tuple[int, ...]) -> int:
    """Return whether a count shows that a landmark of the stretch is missing or one too many.

    Only changes can be, and only counted from where all before are known to be there.
    """
    first, end, edges = answer.first, answer.end, sections.edges
    if sections.kind is not Landmark.CHANGE:
        return 0
    if end == len(sections.counts):
        # Nothing lies behind the last landmark: it is not there, and she counted on to the end before it.
        return -1 if not answer.stitches and sections.counts[first] == -off and first + 1 == end else 0
    if first > suspects[0]:
        return 0
    start, wanted = edges[first], edges[end]
    if answer.stitches in (wanted - start, wanted - start + off):
        return 0
    if answer.stitches == edges[end + 1] - start + off:
        return -1
    return 1 if answer.stitches < min(wanted - start, wanted - start + off) else 0


def most_counted(sections: Sections, first: int, end: int) -> int:
    """Return the most stitches a count of some sections can be.

    Where changes or repeats are the landmarks one may be missing, or all; then she counts on to the end.
    """
    wanted = sum(sections.counts[first:end])
    return max(2 * wanted, 0 if sections.kind is Landmark.MARKER else 2 * sections.edges[-1])


def window(plan: Plan, fault: Fault, verified: Verified | None) -> tuple[int, ...]:
    """List the rounds the fault can be in, the latest first: none of a piece that was finished before."""
    if fault.index is not None:  # a length measured since may have left fewer rounds
        return (fault.index,) if fault.index < len(plan.rounds) else ()
    last = fault.place.index if fault.place.stitch else fault.place.index - 1
    last = min(last, len(plan.rounds) - 1)
    if last < 0:
        return ()
    first = verified.place.index if verified is not None else last - UNVERIFIED_ROUNDS + 1
    first = max(first, piece_begun(plan, last))
    return tuple(range(last, min(first, last) - 1, -1))


UNVERIFIED_ROUNDS = 20
"""Rounds looked back over where nothing was ever counted. Source: chosen here."""


def _weighed(plan: Plan, state: State, fault: Fault, sections: Sections) -> list[CountedSection]:
    """Weigh the sections: what can lead to the difference there, and where she was interrupted."""
    total = max(1, sections.edges[-1])
    suspects = window(plan, fault, state.knitting.stands)
    told = [
        (each, is_turned(plan, index, fault.place.index))
        for index in suspects
        for each in list_symptoms(plan, index)
        if each.difference == fault.difference
    ]
    whole = sum(each.odds for each, _ in told)
    broken = [_share(plan, each) for each in state.breaks if each.index in suspects]
    rows = []
    for before, after in zip(sections.edges, sections.edges[1:], strict=False):
        stitches, (low, high) = max(1, after - before), (before / total, after / total)
        odds = sum(each.odds * each.inside(low, high, turned=other_way) for each, other_way in told)
        # Where nothing single explains it, every stitch is as likely as any other.
        odds = odds / whole if whole else plain_odds(stitches, 0) / total
        odds += BREAK_ODDS / total * sum(low <= share < high for share in broken)
        rows.append(CountedSection(stitches=stitches, odds=max(odds, LEAST_ODDS)))
    return rows


LEAST_ODDS = 1e-6
"""No section is ever beyond suspicion: what is foretold may not be all that can happen."""


def _share(plan: Plan, place: Position) -> float:
    """Return how far around the needles a place is."""
    round_ = plan.rounds[place.index]
    return tally_stitches(round_, place.stitch).used / max(1, round_.before)
