"""The list of a folder in words; `tests/commands/test_where.py` runs it on real files."""

from __future__ import annotations

from dataclasses import replace

from stepper.report.garment_list import Garment, garment_lines, outlook_fields
from stepper.session.pace.outlook import look_ahead
from stepper.session.progress import measure_progress
from stepper.session.state import Knitting, Position, State
from tests.plans import final_increase

NOW = "2026-11-25T20:00:00+01:00"
PLAN = final_increase()


def garment(file: str, index: int, touched: str = "", finish_by: str | None = None) -> Garment:
    """Return a garment at a round."""
    plan = replace(PLAN, title=file.partition(".")[0].capitalize(), finish_by=finish_by)
    state = State(knitting=Knitting(place=Position(index=index)), last_cue_at=touched)
    return Garment(
        file=file,
        standing=measure_progress(plan, state),
        outlook=look_ahead(plan, state, NOW),
        begun=bool(touched),
    )


def test_the_last_touched_comes_first_and_the_unbegun_after() -> None:
    """What is on the needles before what is not; what cannot be read last, in its line."""
    lines = list(
        garment_lines(
            [
                garment("old.yaml", 3, "2026-10-01T20:00:00+01:00"),
                garment("planned.yaml", 0, finish_by="2026-12-24"),
                garment("done.yaml", len(PLAN.rounds), "2026-09-01T20:00:00+01:00"),
                garment("new.yaml", 4, "2026-11-24T20:00:00+01:00", "2026-12-04"),
            ],
            [("torn.yaml", "line 3: no.")],
        )
    )
    assert [line.split()[0] for line in lines] == [
        "New",
        "About",
        "Old",
        "About",
        "Planned",
        "Done",
        "torn.yaml:",
    ]
    assert lines[0] == "New (new.yaml): yoke, round 3 of 6, 21 % done, last touched 24 November."
    assert lines[1].endswith("(partly a guess); due 4 December: 2 rounds an evening.")
    assert lines[4].startswith("Planned (planned.yaml): not begun, 23 rounds, about 2 hours 40 minutes; ")
    assert lines[4].endswith("; due 24 December: 1 round an evening.")
    assert lines[5] == "Done (done.yaml): finished, last touched 1 September."
    assert lines[6] == "torn.yaml: cannot be read: line 3: no."


def test_a_day_that_has_passed_is_said_to_have() -> None:
    """Nothing is asked of evenings gone by."""
    assert "was due 4 November" in list(garment_lines([garment("a.yaml", 3, NOW, "2026-11-04")], []))[1]


def test_an_empty_folder_says_so() -> None:
    """And what to do about it."""
    assert list(garment_lines([], [])) == ["No project files here. `stepper start` writes one."]


def test_the_figures_are_those_of_the_outlook() -> None:
    """A program that reads them gets what she is told."""
    each = garment("a.yaml", 3, NOW, "2026-12-04")
    fields = outlook_fields(each.outlook)
    assert (fields["finish_by"], fields["evenings"], fields["rounds_an_evening"]) == ("2026-12-04", 10, 2)
    assert fields["finish_early"] <= fields["finish"] <= fields["finish_late"]
    assert (fields["pace_measured"], fields["assumed_days"]) == (False, 7)
    assert fields["stitches_per_minute"]["plain"] == 30
