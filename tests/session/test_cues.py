from __future__ import annotations

import inspect
from dataclasses import FrozenInstanceError

import pytest

from stepper.session import cues


def test_every_cue_is_in_the_list() -> None:
    """The rules, the help and the tests read the list, so a cue that is missing there cannot be asked for."""
    defined = {
        each
        for _, each in inspect.getmembers(cues, inspect.isclass)
        if issubclass(each, cues.Cue) and each is not cues.Cue
    }

    assert set(cues.CUES) == defined - {cues.Asks, cues.Keeps, cues.KeepsAhead}
    assert len(cues.CUES) == len(defined) - 3
    assert set(cues.FAMILIES) == {each for each in defined if any(each in cue.__bases__ for cue in cues.CUES)}


def test_a_cue_cannot_be_changed_on_its_way() -> None:
    """It goes from one thread to another."""
    with pytest.raises(FrozenInstanceError):
        cues.Next().at = "later"  # type: ignore[misc] # the point of the test
