"""The list of what can be knitted."""

from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.plan.blend import Blend, blends
from stepper.plan.compile import compile_plan
from stepper.project.model import Project
from stepper.report.fit.ranking import find_present
from stepper.report.fit.report import report_fit
from stepper.report.fit.table import ROWS, PresentChoice, table_lines
from tests.plan.test_blend import switchback, tried_blends


def table(project: Project, most: int | None = ROWS, tried: tuple[Blend, ...] | None = None) -> list[str]:
    """List what can be knitted of the pullover."""
    plan = compile_plan(project).plan
    assert plan is not None
    found = report_fit(project, plan, tried_blends() if tried is None else tried)
    present = PresentChoice(
        name="as it is", lines=found.now, blend=find_present(project, found.ranked, alone=False)
    )
    return list(table_lines(found.ranked, project, present, most=most))


def numbered(rows: list[str]) -> list[str]:
    """Keep the rows that are choices."""
    return [row for row in rows if row[1:5].strip().isdigit() or row.startswith(">")]


def is_sentence(row: str) -> bool:
    """Tell a sentence, which is broken where it is printed, from a row of the table."""
    return row.startswith(("Can be knitted", "Assumed"))


@pytest.mark.parametrize("body", [{}, {"bust": 880.0}, {"bust": 880.0, "upper_arm": 280.0, "neck": 360.0}])
def test_the_list_has_ten_rows_of_80_columns_with_the_present_choice_marked(body: dict[str, float]) -> None:
    """A list that scrolls off the screen helps nobody."""
    rows = table(replace(switchback(), body=body))
    assert all(len(row) <= 80 for row in rows if not is_sentence(row))
    assert len(numbered(rows)) == ROWS
    (present,) = [row for row in rows if row.startswith(">")]
    assert "4, then 2: Final increase" in present
    assert "225-246" in present
    assert rows[-1].endswith("more: --all lists them.")


def test_inches_keep_their_columns_apart() -> None:
    """Hundredths side by side have a space between them; 7.61 + 2.04 + 0.23 are 9.88 in off."""
    rows = table(replace(switchback(), units="in"))
    assert all(len(row) <= 80 for row in rows if not is_sentence(row))
    (present,) = [row for row in rows if row.startswith(">")]
    assert present.split()[-8:] == ["-4.61", "in", "-0.04", "in", "+2.23", "in", "9.88", "in"]


def test_all_of_them_on_request() -> None:
    """Ninety can be knitted of the 96 ways."""
    rows = table(switchback(), most=None)
    assert len(numbered(rows)) == 90
    assert "--all" not in rows[-1]


def test_a_choice_of_several_switches_has_a_row_without_a_number() -> None:
    """It is no pair of two sizes, and still what is on the needles."""
    project = switchback()
    first, second = project.switches[0], replace(project.switches[0], label="First increase", size=4)
    both = replace(project, switches=(second, first))
    rows = table(both, tried=tuple(blends(both)))
    assert len(numbered(rows)) == ROWS
    assert rows[-2].startswith(">      as it is")


def test_what_is_assumed_says_so_and_what_is_asked_does_not() -> None:
    """The order is by her wishes if she has any."""
    assert "bust +7.6 cm assumed" in " ".join(table(switchback())[:2])
    asked = table(replace(switchback(), wanted_ease={"bust": 60.0}))
    assert asked[0] == "Can be knitted, nearest first to the ease wanted (bust +6 cm):"
    assert not any("ssumed" in row for row in asked)


def test_a_long_label_is_cut_and_says_so() -> None:
    """The columns stay where they are."""
    project = switchback()
    rows = table(project)
    assert any("Second increa… " in row for row in rows)
