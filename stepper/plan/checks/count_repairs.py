"""Which single number, in its line or those before, would bring a differing printed count right. No I/O.

Each number in turn is made one larger and the pattern worked again; how far that moves the count shows which
value would bring it to the printed one, and working the pattern with that value proves it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import field, replace
from itertools import islice

from stepper.plan.drafts import Finding
from stepper.project.instructions import Line, PrintedCount
from stepper.project.model import Project
from stepper.project.nested_records import records_in, replace_nested
from stepper.project.problems import one_of
from stepper.project.stitchwork import Numbers
from stepper.records import dataclass

_MOST_NUMBERS = 12
_MOST_TOLD = 3
_MANY = 20
"""Each so many faults found make a working of the pattern count once more: it is that much slower."""

Findings = Callable[[Project, int], tuple[Finding, ...]]
"""Works a project in one printed size and returns what does not fit."""


@dataclass(slots=True, kw_only=True)
class NumberRepair:
    """Looks for the number that is wrong."""

    project: Project
    findings: Findings
    trials: int = 60
    """How often the pattern may still be worked in the search, so that a file full of faults is answered at
    once."""
    known: dict[tuple[int, int, int], int] = field(default_factory=dict)
    """How many faults come before a place in the file as it is, by place and size."""

    def __call__(self, finding: Finding) -> str:
        """Say which number would bring a count right; empty if no single number does."""
        found: list[str] = []
        if self.trials < 2:
            return ""
        for numbers in islice(self._numbers(finding), _MOST_NUMBERS):
            if len(found) == _MOST_TOLD or self.trials < 2:
                break
            value = self._value(numbers, finding)
            if value is not None:
                found.append(_told(numbers, value, finding))
        return f"It would come right with {one_of(found)}." if found else ""

    def _numbers(self, finding: Finding) -> Iterator[Numbers]:
        """List the numbers that lead up to a count, nearest first, back to the count before it."""
        begun = [one for one in self.project.sections if one.place.line <= finding.place.line]
        lines = [line for one in begun[-1:] for line in one.lines if line.place.line <= finding.place.line]
        for back, line in enumerate(reversed(lines)):
            if back and any(isinstance(sentence, PrintedCount) for sentence in line.sentences):
                return
            yield from _own_numbers(line, finding)

    def _value(self, numbers: Numbers, finding: Finding) -> int | None:
        """Return the value of a number that brings the count right."""
        old = numbers.of(finding.size)
        moved = self._count(numbers, old + 1, finding)
        if moved is None or moved == finding.counted:
            return None
        more, over = divmod(finding.printed - finding.counted, moved - finding.counted)
        if over or old + more < 1:
            return None
        return old + more if self._count(numbers, old + more, finding) == finding.printed else None

    def _count(self, numbers: Numbers, value: int, finding: Finding) -> int | None:
        """Return the count with another value of a number; None if a line does not fit any more."""
        trial = _with(self._up_to(finding), numbers, _set(numbers, finding.size, value))
        found = self.findings(trial, finding.size)
        self.trials -= 1 + len(found) // _MANY
        earlier = [one for one in found if one.place.line <= finding.place.line]
        here = [one for one in earlier if one.place == finding.place and one.kind == "count"]
        if here:
            return here[0].counted
        return finding.printed if len(earlier) <= self._before(finding) else None

    def _before(self, finding: Finding) -> int:
        """Count the faults before a place in the file as it is."""
        key = (finding.place.line, finding.place.column, finding.size)
        if key not in self.known:
            found = self.findings(self._up_to(finding), finding.size)
            self.known[key] = sum(
                one.place.line <= finding.place.line and one.place != finding.place for one in found
            )
        return self.known[key]

    def _up_to(self, finding: Finding) -> Project:
        """Leave out the sections after a count, and the switches of size."""
        kept = tuple(section for section in self.project.sections if section.place.line <= finding.place.line)
        return replace(self.project, sections=kept, switches=(), alterations=())


def _own_numbers(line: Line, finding: Finding) -> Iterator[Numbers]:
    found = [
        numbers
        for numbers in records_in(line.sentences)
        if isinstance(numbers, Numbers)
        and (numbers.place.line, numbers.place.column) < (finding.place.line, finding.place.column)
    ]
    yield from sorted(
        {id(numbers): numbers for numbers in found}.values(),
        key=lambda numbers: (numbers.place.line, numbers.place.column),
        reverse=True,
    )


def _with(project: Project, old: Numbers, new: Numbers) -> Project:
    """Replace a number wherever it is in the lines of a project."""
    sections = replace_nested(project.sections, lambda inner: new if inner is old else inner)
    return replace(project, sections=sections)


def _set(numbers: Numbers, size: int, value: int) -> Numbers:
    at = size if len(numbers.values) > 1 else 0
    values = (*numbers.values[:at], value, *numbers.values[at + 1 :])
    return replace(numbers, values=values)


def _told(numbers: Numbers, value: int, finding: Finding) -> str:
    first, *rest = numbers.values
    words = f"{first} ({', '.join(map(str, rest))})" if rest else str(first)
    where = (
        f"column {numbers.place.column}"
        if numbers.place.line == finding.place.line
        else f"line {numbers.place.line}, column {numbers.place.column}"
    )
    if rest:
        return f'{value} instead of {numbers.of(finding.size)} in "{words}" ({where})'
    return f"{value} instead of {words} ({where})"
