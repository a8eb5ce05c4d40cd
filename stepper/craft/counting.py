"""Counting: when a count of the stitches is worth its time.

Theory of operation. A count costs time and finds a fault early; without it the fault is found later and more
must be ripped out. Computers that save their work face the same question, and Young gave the first answer:
the interval at which the cost of saving equals the expected cost of loss, sqrt(2 C M), where C is the cost of
one check and M the work between faults. It holds if faults are rare compared with checks, as a knitter's are.
In knitting a fault is silent until counted. If it can then be seen in the fabric, ripping goes back to it,
half an interval on average; if not, it goes back to the last good count, a whole interval. No fault rate of
knitters is published, so hers is learned from her own counts. No I/O.
"""

from __future__ import annotations

import math
from typing import Literal

from stepper.craft.bounds import require_positive
from stepper.records import dataclass

BackTo = Literal["fault", "count"]

SECONDS_PER_COUNTED_STITCH = 0.5
"""Counting in pairs along the needle. Assumption; no source found. Unit: s."""
RIP_SHARE = 0.25
"""Time to rip and pick up a stitch, as a share of knitting it. Assumption; no source found."""

PRIOR_FAULTS = 1.0
"""Assumed before any count: this many faults ... Assumption; no source found."""
PRIOR_STITCHES = 3000.0
"""... in this many stitches. Assumption; no source found."""


def young_interval(check_cost: float, mean_between_faults: float) -> float:
    """Return the best amount of work between checks, to first order.

    Args:
        check_cost: Cost of one check. Range: above 0. Unit: any unit of work or time.
        mean_between_faults: Work between faults on average. Range: above 0. Unit: the same.

    Returns:
        Unit: the same.

    Raises:
        ValueError: An argument is not above 0.

    Source: J. W. Young, "A first order approximation to the optimum checkpoint interval", Comm. ACM 17(9),
        1974: sqrt(2 C M).
    """
    cost = require_positive(check_cost, "cost of a check")
    return math.sqrt(2 * cost * require_positive(mean_between_faults, "work between faults"))


@dataclass(frozen=True, slots=True, kw_only=True)
class CountCosts:
    """What counting, knitting and ripping cost the knitter, and how often a stitch goes wrong."""

    faults_per_stitch: float
    """Chance that a stitch goes wrong. Range: above 0, below 1."""
    knit_s: float
    """Time to knit a stitch. Range: above 0. Unit: s."""
    count_s: float = SECONDS_PER_COUNTED_STITCH
    """Time to count a stitch. Range: above 0. Unit: s."""
    rip_s: float | None = None
    """Time to rip a stitch; None for `RIP_SHARE` of knitting it. Range: 0 and up. Unit: s."""
    back_to: BackTo = "fault"
    """Where ripping stops: at the fault, if it can be seen, or at the last good count."""

    def __post_init__(self) -> None:
        """Refuse impossible costs.

        Raises:
            ValueError: A number is out of range.
        """
        if not 0 < self.faults_per_stitch < 1:
            raise ValueError(f"faults per stitch must be between 0 and 1 (got {self.faults_per_stitch}).")
        require_positive(self.knit_s, "time to knit")
        require_positive(self.count_s, "time to count")
        if self.rip_s is not None and not self.rip_s >= 0:
            raise ValueError(f"time to rip must be 0 or more (got {self.rip_s}).")
        if self.back_to not in ("fault", "count"):
            raise ValueError(f'ripping goes back to the "fault" or the "count" (got "{self.back_to}").')

    @property
    def redo_s(self) -> float:
        """Time to rip a stitch and knit it again. Unit: s."""
        return self.knit_s + (RIP_SHARE * self.knit_s if self.rip_s is None else self.rip_s)


def count_interval(round_stitches: int, costs: CountCosts) -> float:
    """Return the stitches to knit between counts.

    Young's rule with the loss measured as the cost of redoing; if ripping goes back to the last count, a
    fault costs a whole interval instead of half, so his formula is given half as many stitches between
    faults.

    Args:
        round_stitches: Stitches of a round. Range: 1 and up.
        costs: What counting, knitting and ripping cost.

    Returns:
        Unit: stitches.

    Raises:
        ValueError: The round has no stitches.

    Source: Young (1974); derived here for silent faults.
    """
    if round_stitches < 1:
        raise ValueError(f"a round has 1 stitch or more (got {round_stitches}).")
    loss = costs.faults_per_stitch * costs.redo_s * (2 if costs.back_to == "count" else 1)
    return young_interval(round_stitches * costs.count_s, 1 / loss)


def learned_fault_rate(faults: int, stitches: int) -> float:
    """Estimate from her own counts how often a stitch goes wrong.

    Args:
        faults: Faults that counts have found. Range: 0 and up.
        stitches: Stitches those counts covered. Range: 0 and up.

    Returns:
        Faults per stitch: at first the assumption, then her own rate as counts add up. Always above 0.

    Raises:
        ValueError: A number is below 0.

    Source: mean of a gamma distribution after Poisson faults, starting from `PRIOR_FAULTS` in
        `PRIOR_STITCHES`.
    """
    if faults < 0 or stitches < 0:
        raise ValueError(f"faults and stitches must be 0 or more (got {faults}, {stitches}).")
    return (PRIOR_FAULTS + faults) / (PRIOR_STITCHES + stitches)
