"""Find a fault by counting between landmarks: what to count next, and where the fault must be.

Theory of operation. The answers so far are folded over all sections: what was counted and is right is
cleared, what is off is narrowed to. As long as one stretch of sections accounts for the whole difference the
fault is taken for single and halved (`stepper.craft.fault_finding`); when an answer explains only a part of
the difference, or a difference of another size, it cannot be single and that is said. No I/O.
"""

from __future__ import annotations

from dataclasses import dataclass

from stepper.craft.fault_finding import NextCount, Section, next_count, plain_odds
from stepper.plan.model import Plan
from stepper.session.landmarks import Sections, sections_at
from stepper.session.state import Fault, Place, State, Verified
from stepper.session.tally import tally

BREAK_ODDS = 40.0
"""How many plain stitches an interruption weighs in the odds. Place-keeping errors double after a break of
2.8 s (Altmann, Trafton and Hambrick 2014); that a break weighs as much as a section is chosen here."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Search:
    """How far the looking has come."""

    sections: Sections | None
    """Nothing where the stitches cannot be told apart."""
    suspects: tuple[int, int] = (0, 0)
    """First section under suspicion and one past the last."""
    next: NextCount | None = None
    """What to count next; nothing when no count helps any more."""
    single: bool = True
    """Whether the counts can still come from one fault."""
    difference: int = 0
    """Stitches off among the suspects. Unit: stitches."""

    @property
    def found(self) -> tuple[int, int] | None:
        """Stitches on the needles between which the fault lies, when no more need be counted."""
        if self.sections is None or self.next is not None or not self.single:
            return None
        first, end = self.suspects
        return self.sections.edges[first], self.sections.edges[end]


def search(plan: Plan, state: State, fault: Fault) -> Search:
    """Work out how far the looking has come from the answers given."""
    sections = sections_at(plan, fault.place)
    if sections is None or not fault.difference:
        return Search(sections=sections, difference=fault.difference)
    first, end, off = 0, len(sections.counts), fault.difference
    for answer in fault.answers:
        inside = answer.stitches - sum(sections.counts[answer.first : answer.end])
        outside = off - inside
        if not inside or not outside:
            first, end = _narrowed(first, end, answer.first, answer.end, wrong=bool(inside))
        else:
            return Search(sections=sections, suspects=(first, end), single=False, difference=off)
    rows = _weighed(plan, state, fault, sections)
    ask = next_count(rows, (first, end))
    return Search(sections=sections, suspects=(first, end), next=ask, difference=off)


def _narrowed(first: int, end: int, low: int, high: int, *, wrong: bool) -> tuple[int, int]:
    """Keep of the suspects what was counted wrong, or what is left when it was right."""
    low, high = max(first, low), min(end, high)
    if low >= high:
        return first, end
    if wrong:
        return low, high
    return (high, end) if low == first and high < end else (first, low) if low > first else (first, end)


def off_sections(sections: Sections, counts: tuple[int, ...]) -> tuple[tuple[int, int], ...]:
    """Give which sections are off and by how much, from the counts of all of them."""
    pairs = zip(counts, sections.counts, strict=True)
    return tuple((at, got - want) for at, (got, want) in enumerate(pairs) if got != want)


def window(plan: Plan, fault: Fault, verified: Verified | None) -> tuple[int, ...]:
    """List the rounds the fault can be in, the latest first."""
    if fault.index is not None:
        return (fault.index,)
    last = fault.place.index if fault.place.stitch else fault.place.index - 1
    last = min(last, len(plan.rounds) - 1)
    first = verified.place.index if verified is not None else max(0, last - UNVERIFIED_ROUNDS + 1)
    return tuple(range(last, min(first, last) - 1, -1)) if last >= 0 else ()


UNVERIFIED_ROUNDS = 20
"""Rounds looked back over where nothing was ever counted. Source: chosen here."""


def _weighed(plan: Plan, state: State, fault: Fault, sections: Sections) -> list[Section]:
    """Weigh the sections: their stitches, what was shaped there, where she was interrupted."""
    total = sections.edges[-1]
    suspects = window(plan, fault, state.knitting.verified)
    marks = [share for index in suspects for share in _shaped(plan, index)]
    broken = [_share(plan, each) for each in state.breaks if each.index in suspects]
    rows = []
    for before, after in zip(sections.edges, sections.edges[1:], strict=False):
        inside = sum(before <= share * total < after for share in marks)
        breaks = sum(before <= share * total < after for share in broken)
        odds = plain_odds(max(1, after - before), inside) + BREAK_ODDS * breaks
        rows.append(Section(stitches=max(1, after - before), odds=odds))
    return rows


def _shaped(plan: Plan, index: int) -> list[float]:
    """Give where the changes of a round lie, as shares of it."""
    round_ = plan.rounds[index]
    return [place / max(1, round_.before) for place in round_.shaping]


def _share(plan: Plan, place: Place) -> float:
    """Give how far around the needles a place is."""
    round_ = plan.rounds[place.index] if place.index < len(plan.rounds) else None
    return 0.0 if round_ is None else tally(round_, place.stitch).used / max(1, round_.before)
