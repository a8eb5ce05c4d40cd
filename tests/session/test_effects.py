from __future__ import annotations

import inspect

from stepper.language.effect_words import LINES
from stepper.session import answers, effects
from stepper.session.counting import doubts
from stepper.session.due import next_skein, round_reached, to_fetch
from stepper.session.effects import Effect
from stepper.session.fault import respond as faults
from stepper.session.open_row import telling
from stepper.session.questions import (
    about,
    about_ahead,
    about_named,
    about_piece,
    about_round,
    about_series,
    slips,
    why,
)


def test_every_effect_has_words() -> None:
    """An effect that nobody puts into words would be silence."""
    defined = {
        each
        for module in (
            *(about, about_ahead, about_named, about_piece, about_round, about_series, slips, why),
            *(answers, doubts, round_reached, effects, faults, to_fetch, next_skein, telling),
        )
        for _, each in inspect.getmembers(module, inspect.isclass)
        if issubclass(each, Effect) and each is not Effect
    }

    assert set(LINES) == defined
