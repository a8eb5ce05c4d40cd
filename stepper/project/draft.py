"""The state of a file as it is read from the top: the values so far, and the problems. No I/O."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import field

from stepper.project.keys.pictures import Pixels
from stepper.project.model import Chart, Fabric, Yarn
from stepper.project.problems import Problem, Span
from stepper.records import dataclass

Pictures = Callable[[str], Pixels | str]
"""Returns the picture that the file names, or what is wrong with it as a sentence."""


@dataclass(slots=True, kw_only=True)
class FileDraft:
    """What is known so far, as the file is read from the top."""

    text_lines: list[str]
    problems: list[Problem] = field(default_factory=list)
    inches: bool = False
    sizes: tuple[str, ...] = ()
    yarns: dict[str, Yarn] = field(default_factory=dict)
    fabrics: dict[str, Fabric] = field(default_factory=dict)
    charts: dict[str, Chart] = field(default_factory=dict)
    faulty: set[str] = field(default_factory=set)
    """Names of charts that could not be read: lines that use them are not checked."""
    pictures: Pictures | None = None
    """Finds the pictures that charts name; None if there is no folder to look in."""

    def report(self, place: Span, message: str, hint: str = "") -> None:
        """Add a problem at a place, as `Span.problem` makes it."""
        self.problems.append(place.problem(message, hint))
