"""Which fabric a round is, judged by needle and stitches and not by the section it is in. Pure.

A section names one gauge, yet a leg begins with a rib on the smaller needle, and a sleeve ends with one. The
gauge belongs to the fabric: if the file has one for the needle in hand, that is the round's.
"""

from __future__ import annotations

import re

from stepper.craft.needles import is_same_needle
from stepper.plan.model import Item, runs_written
from stepper.project.model import Fabric, Project
from stepper.regex import regex
from stepper.report.measure.measuring import AnyRound

_RIB = regex(r"\b(?:rib\w*|cuffs?|brim|edge|edging|bands?|hem)\b", re.IGNORECASE)


class Fabrics:
    """The fabrics of a file, and which of them each round is."""

    def __init__(self, project: Project) -> None:
        self._fabrics = project.fabrics
        self._found: dict[int, tuple[AnyRound, Fabric | None]] = {}

    def of(self, round_: AnyRound) -> Fabric | None:
        """Return the fabric of a round; None if the file has no gauge for it."""
        key = id(round_)
        if key not in self._found:  # the round is kept alive with it, so that no other gets its id
            self._found[key] = round_, self._find(round_)
        return self._found[key][1]

    def _find(self, round_: AnyRound) -> Fabric | None:
        own = self._fabrics.get(round_.gauge)
        if own is None:
            return None
        needle = round_.needle_mm
        if needle is None or own.needle_mm is None:
            others = [own, *(each for each in self._fabrics.values() if each is not own)]
            return next((each for each in others if needle is None and _suits(each, round_)), own)
        if is_same_needle(needle, own.needle_mm):
            return own
        same = [each for each in self._fabrics.values() if _on(each, needle)]
        return next((each for each in same if _suits(each, round_)), same[0] if same else own)


def _on(fabric: Fabric, needle_mm: float) -> bool:
    return fabric.needle_mm is not None and is_same_needle(fabric.needle_mm, needle_mm)


def _suits(fabric: Fabric, round_: AnyRound) -> bool:
    """Return whether fabric and round agree in being a rib or not."""
    return bool(_RIB.search(fabric.name)) is is_rib(round_.phrase)


def is_rib(phrase: tuple[Item, ...]) -> bool:
    """Return whether the stitches are knits and purls and nothing else, as in a rib."""
    codes = {run.stitch.removesuffix(" tbl") for run in runs_written(phrase)} - {"pm", "sm", "rm"}
    return codes == {"k", "p"}
