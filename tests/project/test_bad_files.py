"""Bad files, each with the exact text of its error beside it: what a slip teaches.

After a wording was changed on purpose, `python -m tests.project.test_bad_files` writes the texts anew, to be
read before they are kept.
"""

from __future__ import annotations

from pathlib import Path

from stepper.errors import ProjectError
from stepper.sitting.project_file import plan_of_text
from tests.tables import each_row
from tests.waiting import processor_s, usual_s

BAD = sorted((Path(__file__).parent / "bad").glob("*.yaml"))


def error_of(path: Path) -> str:
    """Return the text that `stepper check` prints for a file."""
    try:
        plan_of_text(path.read_text(encoding="utf-8"), path.name, path.parent)
    except ProjectError as error:
        return f"{error}\n"
    return "sound\n"


@each_row("path", BAD)
def test_every_bad_file_has_the_text_beside_it(path: Path) -> None:
    """Where, what was found, what was expected, and the nearest legal wording: word for word."""
    assert error_of(path) == path.with_suffix(".txt").read_text(encoding="utf-8")


def test_every_text_has_its_file() -> None:
    """A text without its file would never be looked at."""
    assert [path.stem for path in BAD] == sorted(text.stem for text in BAD[0].parent.glob("*.txt"))


def test_twenty_faults_of_a_long_file_are_listed_in_order_within_a_second() -> None:
    """A file of 200 lines with 20 different faults: all of them, in the order of the file, in one run."""
    path = BAD[0].parent / "twenty_faults.yaml"
    text = path.read_text(encoding="utf-8")
    assert text.count("\n") == 200
    error_of(path)  # the grammar is read once for all
    took = processor_s(lambda: error_of(path))
    shown = error_of(path)
    told = [row.split(":", 4) for row in shown.splitlines() if ": error: " in row]
    assert [int(row[1]) for row in told] == sorted(int(row[1]) for row in told)
    assert len({row[4] for row in told}) == len(told) == 20
    assert shown.endswith("20 problems in twenty_faults.yaml. Nothing was changed.\n")
    assert took < usual_s(1.0)


if __name__ == "__main__":
    for each in BAD:
        each.with_suffix(".txt").write_text(error_of(each), encoding="utf-8")
