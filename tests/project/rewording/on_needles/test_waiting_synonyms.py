"""Who waits, on what, in every form of the verb. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword


def written(printed: str) -> str:
    """Return a line in the words it is read in at the second look."""
    return " ".join(reword(made_plain(printed), spoken=True).text.split()).strip(" ,.")


@pytest.mark.parametrize("said", ["park the next 8 sts on a piece of string", "let the next 8 sts rest on a thread", "the next 8 sts wait on a spare needle"])
def test_the_form_of_the_verb_changes_nothing(said: str) -> None:
    """Eight stitches wait, and the row goes on behind them."""
    assert written(f"K8, {said}, k to end.") == "K8, hold 8 sts, k to end"


@pytest.mark.parametrize("said", ["The sleeve stitches stay on their holders.", "The 24 sts of the sleeve wait on a thread.", "Place the 14 held sts on the needles, then bake a cake."])
def test_what_waits_already_is_not_put_aside_again(said: str) -> None:
    """A fact about stitches on hold is no order for those on the needle."""
    assert "hold all" not in written(said)
    assert "hold 24" not in written(said)
    assert "hold 14" not in written(said)


def test_stitches_just_worked_are_not_the_next() -> None:
    """These are behind the yarn."""
    assert written("K8 and place these 8 sts on a pin, k to end.") == "K8, hold these 8 sts, k to end"


def test_a_bind_off_in_front_of_a_row_is_never_passed_over() -> None:
    """What divides a piece is no name of its line."""
    assert reads("Divide for front and back: Bind off the next 8 sts, knit 80, bind off the next 8 sts, knit to the end.")
    line = reword("Divide for front and back: Bind off the next 8 sts, knit 80, bind off the next 8 sts, knit to the end.")
    assert line.text.lower().count("bind off 8 sts") == 2
    assert line.kept == ()
