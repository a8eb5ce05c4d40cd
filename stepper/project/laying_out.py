"""Records of what is laid out without working a stitch: markers, marks to measure from, needles."""

from __future__ import annotations

from dataclasses import dataclass

from stepper.project.problems import Span
from stepper.project.stitchwork import Numbers


@dataclass(frozen=True, slots=True)
class MarkEvery:
    """Place a marker every so many stitches."""

    every: Numbers
    place: Span


@dataclass(frozen=True, slots=True)
class MarkRow:
    """A mark placed in the row just worked, to measure from: `place markers at each end of last row`."""

    text: str
    place: Span


@dataclass(frozen=True, slots=True)
class OverNeedles:
    """Stitches of a round laid over several needles, as for a sock."""

    needles: Numbers | None
    """How many needles; None if only the stitches on each are given."""
    counts: tuple[Numbers, ...]
    """Stitches on each needle in order; a single number if all are alike; none if divided evenly."""
    place: Span


@dataclass(frozen=True, slots=True)
class MoveOver:
    """Stitches slipped from one needle to its neighbour: `Slip 7 sts from needle 2 to needle 1`."""

    number: Numbers
    source: int
    """Needle they come from, from 1."""
    to: int
    place: Span
