"""eSpeak NG as a voice, in a worker process."""

from __future__ import annotations

from stepper.mouth.process_voice import ProcessVoice
from stepper.mouth.settings import SpeechSettings


class EspeakVoice(ProcessVoice):
    """Make speech with eSpeak NG."""

    def __init__(self, settings: SpeechSettings) -> None:
        """Start the worker and wait until it is ready.

        Raises:
            NoVoiceError: It cannot be started.
        """
        super().__init__("stepper.mouth.espeak_worker", settings)
