"""The record of a garment."""

from __future__ import annotations

from stepper.plan.compile import compile_plan
from stepper.report.notes import notes
from stepper.session.events import Noted
from stepper.session.state import Place
from tests.plan.test_blend import switchback


def test_the_record_holds_the_blend_the_alterations_and_what_was_noted() -> None:
    """What somebody else would need to knit the same."""
    project = switchback()
    plan = compile_plan(project).plan
    assert plan is not None
    event = Noted(at="2027-01-05T20:00:00+01:00", place=Place(), text="ran short of ember")
    text = "\n".join(notes(project, plan, [(1, event)]))
    assert "- Size 4\n- Size 2 from Final increase on" in text
    assert "- no bobbles" in text
    assert "- 2027-01-05: ran short of ember" in text
