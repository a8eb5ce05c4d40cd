"""A plan, and what the screen keeps asking of it worked out once: sums of stitches, changes to come.

No I/O.
"""

from __future__ import annotations

from itertools import accumulate, groupby

from stepper.plan.model import Plan, Round
from stepper.plan.stitches.abbreviate import yarns_of
from stepper.records import dataclass
from stepper.session.state import Position


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class SummedPlan:
    """A plan with its sums."""

    plan: Plan
    before: tuple[int, ...]
    """Stitches of all rounds before each round, and last those of the whole garment. Unit: stitches.
    Shape: (rounds + 1,)."""
    section_ends: tuple[int, ...]
    """For each round, the index one past the last round of its section. Shape: (rounds,)."""
    section_begins: tuple[int, ...]
    """For each round, the index of the first round of its section. Shape: (rounds,)."""
    shaped: tuple[int, ...]
    """Indexes of the rounds that increase or decrease."""
    counted: tuple[int, ...]
    """Indexes of the rounds that end with a checkpoint."""
    yarns: tuple[tuple[str, ...], ...]
    """For each round the keys of its yarns, in the order they are first used. Shape: (rounds,)."""

    @property
    def rounds(self) -> tuple[Round, ...]:
        """All rounds of the garment."""
        return self.plan.rounds

    def done(self, place: Position) -> int:
        """Count the stitches worked in all. Unit: stitches."""
        return self.before[min(place.index, len(self.rounds))] + (
            place.stitch if place.index < len(self.rounds) else 0
        )

    def stitches_in(self, index: int) -> int:
        """Count the stitches of a round, as on the right needle. Unit: stitches."""
        return self.before[index + 1] - self.before[index]

    @property
    def stitches(self) -> int:
        """Stitches of the whole garment. Unit: stitches."""
        return self.before[-1]


def course_of(plan: Plan) -> SummedPlan:
    """Work out the sums of a plan."""
    rounds = plan.rounds
    begins: list[int] = []
    ends: list[int] = []
    for _, section in groupby(rounds, key=lambda round_: round_.section):
        indexes = [round_.index for round_ in section]
        begins += [indexes[0]] * len(indexes)
        ends += [indexes[-1] + 1] * len(indexes)
    return SummedPlan(
        plan=plan,
        before=(0, *accumulate(round_.progress for round_ in rounds)),
        section_ends=tuple(ends),
        section_begins=tuple(begins),
        shaped=tuple(round_.index for round_ in rounds if round_.shaping),
        counted=tuple(round_.index for round_ in rounds if round_.checkpoint is not None),
        yarns=tuple(yarns_of(round_.runs) for round_ in rounds),
    )
