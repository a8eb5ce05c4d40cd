"""What measuring needs of a round, and a measurement of the garment beside the wearer's. Pure."""

from __future__ import annotations

from stepper.craft.fit import fit_word
from stepper.plan.drafts import DraftRound
from stepper.plan.model import Round
from stepper.project.model import Project
from stepper.records import dataclass

COMPARED_LENGTHS = ("foot_length",)
"""Lengths of the wearer that a garment has to match; others are only shown beside it."""


AnyRound = Round | DraftRound
"""What is measured: a round of the plan, or of a blend that was tried."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Measurement:
    """One measurement of the garment."""

    name: str
    needles_mm: float
    """As knitted. Unit: mm."""
    blocked_mm: float | None
    """After blocking; None if the file has no blocked gauge. Unit: mm."""
    stitches: int = 0
    """Stitches around; 0 for a length."""
    measure: str = ""
    """Name of the wearer's matching measurement; empty if none."""
    body_mm: float | None = None
    """The wearer's measurement. Unit: mm."""
    from_table: bool = False
    """Whether the wearer's measurement is from a table of sizes and not her own."""

    @property
    def finished_mm(self) -> float:
        """As worn: blocked if that is known. Unit: mm."""
        return self.blocked_mm or self.needles_mm

    @property
    def ease_mm(self) -> float | None:
        """Finished garment minus body. Unit: mm."""
        return None if self.body_mm is None else self.finished_mm - self.body_mm

    @property
    def compared(self) -> bool:
        """Whether ease is meaningful here: around, and for a length the garment has to match."""
        return bool(self.stitches) or self.measure in COMPARED_LENGTHS

    @property
    def word(self) -> str:
        """The word for its fit; empty except at the chest."""
        if self.measure != "bust" or self.ease_mm is None:
            return ""
        return fit_word(self.ease_mm, self.body_mm)


def body_of(project: Project, measure: str) -> float | None:
    """Return the wearer's measurement, the chest for the bust; None if not given. Unit: mm."""
    if measure == "bust":
        return project.body.get("bust", project.body.get("chest"))
    return project.body.get(measure)
