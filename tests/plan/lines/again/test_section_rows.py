"""Rows of one section worked in another, called by its number. The wordings are common practice in print."""

from __future__ import annotations

import pytest

from stepper.plan.lines.again.section_rows import names_called
from tests.plan.test_compile import compiled, plan_of
from tests.project.samples import project

ROWS = "Cast on 4 sts. Work flat.\nRow 1 (RS): K to last 2 sts, kfb, k1.\nRow 2 (WS): Knit.\n"
SECOND = '  - name: {}\n    work: |\n      {}\n      Bind off.\n'


def pattern(first: str, second: str, *, rows: str = ROWS) -> str:
    """Return a file of two sections."""
    text = project(rows, sizes="S", size="S")
    name = text.rpartition("- name: ")[2].partition("\n")[0]
    text = text.replace(f"- name: {name}", f"- name: {first}")
    return text.rstrip("\n") + "\n" + SECOND.format("later", second)


@pytest.mark.parametrize(
    ("name", "called"),
    [
        ("section 2", ("section 2",)),
        ("Section 2: eyelets", ("Section 2", "eyelets section")),
        ("lace section", ("lace section",)),
        ("body", ()),
    ],
)
def test_a_section_is_called_by_its_number_or_title(name: str, called: tuple[str, ...]) -> None:
    """The body of a garment is no pattern, whatever rows it has."""
    assert names_called(name) == called


def test_the_rows_are_worked_again() -> None:
    """Each time they gain a stitch, as in their own section."""
    plan = plan_of(pattern("section 1", "Rep rows 1 and 2 of Section 1 3 times. 8 sts."))
    assert [round_.after for round_ in plan.rounds[3:-1]] == [6, 6, 7, 7, 8, 8]


def test_rows_numbered_twice_are_nobodys() -> None:
    """Where two rows 1 stand in a section nobody can tell which is meant; nor on the other side of the work."""
    again = "Rep rows 1 and 2 of Section 1 3 times."
    twice = ROWS + "Row 1 (RS): Knit.\nRow 2 (WS): Purl.\n"
    assert compiled(pattern("section 1", again, rows=twice)).plan is None
    assert compiled(pattern("section 1", f"Knit 1 row.\n      {again}")).plan is None
    assert compiled(pattern("body", again)).plan is None
