"""Try rows of a file with a change: what they work where they stand, and whether all still fits. No I/O."""

from __future__ import annotations

from collections.abc import Sequence

from stepper.plan.compile import work_as_knitted
from stepper.plan.model import Item
from stepper.plan.state.needles import Needles
from stepper.project.draft import Pictures
from stepper.project.page.pieces import works
from stepper.project.page.unread.kept_rows import put_rows
from stepper.project.reader import read_project
from stepper.records import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Worked:
    """What a row comes to where it stands, in the size that is knitted."""

    rounds: tuple[tuple[int, int, tuple[Item, ...]], ...] = ()
    """Of each of its rows: stitches before and after, and how it is worked; none if it works no stitch."""
    known: bool = True
    """Whether that is known; not below a row whose stitches are not."""
    flat: bool = False
    """Whether they are rows; else they are rounds."""

    @property
    def before(self) -> int:
        """Stitches before the first. Always: it works stitches."""
        return self.rounds[0][0]

    @property
    def after(self) -> int:
        """Stitches after the last. Always: it works stitches."""
        return self.rounds[-1][1]


def find_worked(
    text: str, first: int, last: int, ways: Sequence[tuple[Sequence[str], int]], pictures: Pictures
) -> list[Worked | None]:
    """Put rows in the place of some rows of a file, one way after the other, and find what they work there.

    Args:
        text: The whole file.
        first: The first row replaced, from 1.
        last: The last.
        ways: The rows that may stand there instead, without indentation, and which of them is asked about,
            from 0.
        pictures: Finds the pictures that charts name.

    Returns:
        For each way what that row works; None if it is not read there or does not fit, or if another row does
        not fit that did before.
    """
    before = _worked(text, pictures)
    faults = _faults(before[0]) if before is not None else set()
    found: list[Worked | None] = []
    for rows, asked in ways:
        now = _worked(put_rows(text, first, last, rows), pictures)
        shift = len(rows) - (last - first + 1)
        stood = {line if line < first else line + shift for line in faults}
        new = range(first, first + len(rows))
        if now is None or before is None or not _faults(now[0]) <= stood or not now[1].isdisjoint(new):
            found.append(None)
            continue
        drafts = [draft for draft in now[0].drafts if draft.line == first + asked]
        if not drafts and first + asked in now[2]:
            found.append(Worked(known=False))
            continue
        rounds = tuple((draft.before, draft.after, draft.phrase) for draft in drafts)
        found.append(Worked(rounds=rounds, flat=any(draft.flat for draft in drafts)))
    return found


def _worked(text: str, pictures: Pictures) -> tuple[Needles, frozenset[int], frozenset[int]] | None:
    """Work a file as it is knitted; return it with the rows that are not read, and those that work stitches.

    None if nothing is there.
    """
    reading = read_project(text, pictures)
    project = reading.project or reading.partial
    if project is None:
        return None
    working = (line.place.line for part in project.sections for line in part.lines if works(line))
    unread = frozenset(each.line for each in reading.problems)
    return work_as_knitted(project, frozenset()), unread, frozenset(working)


def _faults(needles: Needles) -> set[int]:
    return {each.place.line for each in needles.findings}
