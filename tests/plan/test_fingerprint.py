"""The name of a plan's numbers changes when they do, and only then."""

from __future__ import annotations

from stepper.plan.fingerprint import fingerprint
from tests.plan.test_compile import plan_of
from tests.project.samples import project

WORK = "Cast on 8 sts.\nKnit 4 rounds.\nIncrease evenly to 12 sts.\nBind off."


def test_words_do_not_change_it() -> None:
    """A note or another title leaves the place in the knitting as it is."""
    other = project(WORK + "\nNote: done.").replace("Bramble", "Thistle")
    assert fingerprint(plan_of(project(WORK))) == fingerprint(plan_of(other))


def test_every_number_changes_it() -> None:
    """One stitch or one round more is another plan."""
    marks = {
        fingerprint(plan_of(project(text)))
        for text in (WORK, WORK.replace("8", "9"), WORK.replace("4", "5"), WORK.replace("12", "13"))
    }
    assert len(marks) == 4
    assert all(len(mark) == 32 for mark in marks)
