"""Small works, each about one rule or one refusal, are worked out or refused as they were when they were read.

A file in `tests/plan/works/` holds works of one kind: `@` and what it is about, then its lines, in the piece that the corpus is
about (3 rounds to the centimetre, in rib 4; `tests/project/corpus_judge.py`). A line that begins with `!` says how many sizes there are,
or is a key of the file, which goes on where more space follows; `! formerly` says that it is worked as before there were manners of spacing. What becomes of each stands under the
same name in `tests/plan/agreed_works/`, row by row in each size, or with the place and the words of its refusal. All of it was compared with the row worked out
by hand when it was kept. Where one differs, the difference is read before it is kept: `STEPPER_WRITE_GOLDENS=1`.
"""

from __future__ import annotations

import re
from dataclasses import replace
from pathlib import Path

import pytest

from stepper.plan.compile import compile_plan, faults_of
from stepper.project.reader import FileReading, read_project
from tests.agreed import compare, compiled_rows, problem_row
from tests.fixtures import compile_in_size
from tests.project.corpus_judge import text_of

WORKS = Path(__file__).parent / "works"
AGREED = Path(__file__).parent / "agreed_works"
FORMERLY = "! formerly"
KINDS = sorted(path.stem for path in WORKS.glob("*.txt"))


def works(kind: str) -> dict[str, list[str]]:
    """Return the lines of each work of a file, by what it is about."""
    found = {}
    for block in re.split(r"^@ ", (WORKS / f"{kind}.txt").read_text(encoding="utf-8"), flags=re.M)[1:]:
        name, *lines = block.splitlines()
        assert name not in found, name
        found[name] = [line for line in lines if line]
    return found


def as_file(lines: list[str]) -> str:
    """Write a work as a project file."""
    heads = "\n".join(line[2:] for line in lines if line.startswith("! ") and line != FORMERLY)
    keys = re.split(r"\n(?! )", heads) if heads else []
    sizes = next((int(head.split()[1]) for head in keys if head.startswith("sizes ")), 1)
    text, _ = text_of([line for line in lines if not line.startswith("! ")], sizes, "cm")
    for head in keys:
        if not head.startswith("sizes "):
            text = re.sub(rf"^{head.partition(':')[0]}:.*\n(?: .*\n)*", "", text, flags=re.M)
            text = text.replace("units: cm\n", f"units: cm\n{head}\n", 1)
    return text


def becomes(lines: list[str]) -> list[str]:
    """Return what becomes of a work: its rows, or why it is refused."""
    return rows_of(read_project(as_file(lines)), formerly=FORMERLY in lines)


def rows_of(reading: FileReading, *, formerly: bool) -> list[str]:
    """Return what becomes of a file that was read; `formerly`: worked as before there were manners of spacing."""
    if reading.project is None:
        return ["not read", *map(problem_row, reading.problems)]
    project = replace(reading.project, spacing=None) if formerly else reading.project
    rows = compiled_rows(compile_plan(project))
    for size in range(1, len(project.sizes)) if rows[0] != "refused" else ():
        rows += [f"in size {project.sizes[size]}", *compiled_rows(compile_in_size(project, size))]
    return rows


def unread_beside(lines: list[str]) -> list[str]:
    """Return what is told of a work besides a line that is not read, in the place of the one behind its first."""
    first = next(at for at, line in enumerate(lines) if not line.startswith("!"))
    if len(lines) < first + 3:
        return []
    reading = read_project(as_file([*lines[: first + 1], "Frobble the brim.", *lines[first + 2 :]]))
    return [] if reading.partial is None else [problem_row(each) for each in faults_of(reading.partial)]


@pytest.mark.parametrize("kind", KINDS)
def test_small_works_become_what_was_agreed(kind: str) -> None:
    """A rule that is met only where a page is unlike all others is held nowhere else."""
    compare(
        AGREED / f"{kind}.txt",
        [row for name, lines in works(kind).items() for row in (f"@ {name}", *becomes(lines))],
    )


def test_beside_a_line_that_is_not_read_the_others_are_judged_as_agreed() -> None:
    """What follows from the one fault is not told as another, and what is wrong anyway is told at once."""
    found = {f"@ {name}": unread_beside(lines) for kind in KINDS for name, lines in works(kind).items()}
    compare(AGREED / "unread" / "faults.txt", [row for name, rows in found.items() if rows for row in (name, *rows)])


def test_no_agreed_work_is_left_over() -> None:
    """What nobody works any more must not be kept as if it were agreed on."""
    assert {path.stem for path in AGREED.glob("*.txt")} == set(KINDS)
