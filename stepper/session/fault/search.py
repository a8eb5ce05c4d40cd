"""Find a fault by counting between landmarks: what to count next, and where the fault must be.

Theory of operation. The answers so far are folded over all sections: what was counted and is right is
cleared, what is off is narrowed to. As long as one stretch of sections accounts for the whole difference the
fault is taken for single and looked for with the least counting (`stepper.craft.fault_finding`); when an
answer explains only a part of the difference, or a difference of another size, it cannot be single, which is
said. One case looks like two and is not: where increases and decreases themselves are the landmarks, one left
out makes its section run on to the next, one too many cuts it short. No I/O.
"""

from __future__ import annotations

from dataclasses import dataclass

from stepper.craft.fault_finding import CountedSection, NextCount, next_count, plain_odds
from stepper.plan.model import Plan
from stepper.session.fault.landmarks import Landmark, Sections, is_turned, sections_at
from stepper.session.fault.symptoms import list_symptoms
from stepper.session.state import Answer, Fault, Position, State, Verified
from stepper.session.tally import tally_stitches

BREAK_ODDS = 40.0
"""How many plain stitches an interruption weighs in the odds. Place-keeping errors double after a break of
2.8 s (Altmann, Trafton and Hambrick 2014); that a break weighs as much as a section is chosen here."""

QUESTION_STITCHES = 8.0
"""Hearing a question, finding the landmarks and answering take as long as counting so many stitches, four
seconds at the assumed half a second each. Assumption; no source found."""


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
    """Whether the counts can still come from one fault."""
    difference: int = 0
    """Stitches off among the suspects. Unit: stitches."""
    landmark: int = 0
    """-1 where an increase or decrease is missing among the landmarks, 1 where one is too many."""

    @property
    def found(self) -> tuple[int, int] | None:
        """Stitches on the needles between which the fault lies, when no more need be counted."""
        if self.sections is None or self.next is not None or not self.single or not self.suspects:
            return None
        return self.sections.edges[self.suspects[0]], self.sections.edges[self.suspects[-1] + 1]


def search(plan: Plan, state: State, fault: Fault) -> Search:
    """Work out how far the looking has come from the answers given."""
    sections = sections_at(plan, fault.place)
    off = fault.difference
    if sections is None or not off:
        return Search(sections=sections, difference=off)
    suspects = tuple(range(len(sections.counts)))
    for answer in fault.answers:
        counted = range(answer.first, answer.end)
        inside = answer.stitches - sum(sections.counts[answer.first : answer.end])
        landmark = _landmark(sections, answer, off, suspects)
        if landmark:
            # One stitch from landmark to landmark and that one missing: the section before looked right.
            hidden = landmark < 0 and sections.counts[answer.first] == -off and answer.first > 0
            first = answer.first - 1 if hidden else answer.first
            # Seen from the other side the stitch itself lies behind its landmark.
            end = min(answer.end + sections.turned, len(sections.counts))
            kept = tuple(range(first, end))
            return Search(sections=sections, suspects=kept, difference=off, landmark=landmark)
        kept = tuple(each for each in suspects if (each in counted) == bool(inside))
        if inside not in (0, off) or not kept:
            return Search(sections=sections, suspects=suspects, single=False, difference=off)
        suspects = kept
    rows = _weighed(plan, state, fault, sections)
    rounds = window(plan, fault, state.knitting.stands)
    ordered = sections.kind is Landmark.CHANGE and sections.index in rounds
    ask = next_count(rows, suspects, question=QUESTION_STITCHES, in_order=ordered)
    return Search(sections=sections, suspects=suspects, next=ask, difference=off)


def _landmark(sections: Sections, answer: Answer, off: int, suspects: tuple[int, ...]) -> int:
    """Return whether a count shows that a landmark of the stretch is missing or one too many.

    Only changes can be, and only counted from where all before are known to be there.
    """
    first, end, marks = answer.first, answer.end, sections.marks
    if (
        sections.kind is not Landmark.CHANGE
        or not suspects
        or first > suspects[0]
        or end not in range(len(sections.edges))
    ):
        return 0
    start, right = sections.edges[first], sections.edges[end]
    if answer.stitches in (right - start, right - start + off) or end == len(sections.counts):
        return 0
    following = marks[end * sections.every] if end * sections.every < len(marks) else sections.edges[-1]
    if answer.stitches == following - start + off:
        return -1
    return 1 if answer.stitches < min(right - start, right - start + off) else 0


def most_counted(sections: Sections, first: int, end: int) -> int:
    """Return the most stitches a count of some sections can be.

    Where changes or repeats are the landmarks one may be missing, or all; then she counts on to the end.
    """
    wanted = sum(sections.counts[first:end])
    return max(2 * wanted, 0 if sections.kind is Landmark.MARKER else 2 * sections.edges[-1])


def off_sections(sections: Sections, counts: tuple[int, ...]) -> tuple[tuple[int, int], ...]:
    """Return which sections are off and by how much, from the counts of all of them."""
    pairs = zip(counts, sections.counts, strict=True)
    return tuple((at, got - want) for at, (got, want) in enumerate(pairs) if got != want)


def window(plan: Plan, fault: Fault, verified: Verified | None) -> tuple[int, ...]:
    """List the rounds the fault can be in, the latest first."""
    if fault.index is not None:  # a length measured since may have left fewer rounds
        return (fault.index,) if fault.index < len(plan.rounds) else ()
    last = fault.place.index if fault.place.stitch else fault.place.index - 1
    last = min(last, len(plan.rounds) - 1)
    first = verified.place.index if verified is not None else max(0, last - UNVERIFIED_ROUNDS + 1)
    return tuple(range(last, min(first, last) - 1, -1)) if last >= 0 else ()


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
    round_ = plan.rounds[place.index] if place.index < len(plan.rounds) else None
    return 0.0 if round_ is None else tally_stitches(round_, place.stitch).used / max(1, round_.before)
