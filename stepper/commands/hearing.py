"""Join the ears to a session: what can be heard in it, and from where."""

from __future__ import annotations

import importlib
from collections.abc import Iterator
from pathlib import Path

from stepper.commands.wordings import wordings_for
from stepper.plan.model import Plan
from stepper.voice.ports import Recogniser


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
    recogniser: Recogniser = moonshine.MoonshineRecogniser(wordings_for(plan))
    return recogniser
