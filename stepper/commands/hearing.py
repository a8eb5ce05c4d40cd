"""Join the ears to a session: what can be heard in it, and from where."""

from __future__ import annotations

import importlib
from collections.abc import Iterator
from pathlib import Path

from stepper.language.understand import NotUnderstood, understand
from stepper.language.vocabulary import VOCABULARY
from stepper.plan.model import Plan
from stepper.voice.ports import Recogniser

_FEWEST_WORDS = 2
# A single word heard over a film would be a guess.


def heard_in(path: Path, plan: Plan) -> Iterator[str]:
    """Open a recording at once and give the cues it holds, in order, as they are asked for.

    Args:
        path: A WAV file.
        plan: What is knitted, for the names a cue may hold.

    Raises:
        SurroundingsError: The file cannot be heard, or the recogniser is not installed.
    """
    ears = importlib.import_module("stepper.voice.ears")
    microphone = importlib.import_module("stepper.voice.wav_microphone").WavMicrophone(path)
    speech = ears.speech_detector()
    recogniser = recogniser_for(plan)
    return (heard.text for heard in ears.listen(microphone, recogniser, speech))


def recogniser_for(plan: Plan) -> Recogniser:
    """Load what makes words of sound.

    Args:
        plan: What is knitted, for the names a cue may hold.

    Raises:
        SurroundingsError: It is not installed.
    """
    moonshine = importlib.import_module("stepper.voice.moonshine")
    recogniser: Recogniser = moonshine.MoonshineRecogniser(heard_phrases(), lambda text: is_cue(text, plan))
    return recogniser


def heard_phrases() -> dict[str, object]:
    """List every spoken wording without a slot, each with what it means."""
    return {
        phrase: (row.cue, tuple(row.fixed.items()))
        for row in VOCABULARY
        for phrase in row.spoken
        if "{" not in phrase and len(phrase.split()) >= _FEWEST_WORDS
    }


def is_cue(text: str, plan: Plan) -> bool:
    """Tell whether a transcript is a cue just as it stands."""
    return len(text.split()) >= _FEWEST_WORDS and not isinstance(understand(text, plan), NotUnderstood)
