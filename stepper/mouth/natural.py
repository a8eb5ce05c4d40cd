"""The natural voice of the extra `natural`, in a worker process, with likely lines made ahead."""

from __future__ import annotations

from stepper.mouth.prefetch import PrefetchingVoice
from stepper.mouth.process_voice import ProcessVoice
from stepper.mouth.settings import SpeechSettings


class NaturalVoice(PrefetchingVoice):
    """Make speech with Piper."""

    def __init__(self, settings: SpeechSettings) -> None:
        """Start the worker and wait until its model is loaded.

        Raises:
            NoVoiceError: It cannot be started.
        """
        voice = ProcessVoice("stepper.mouth.natural_worker", settings)
        super().__init__(voice)
        self.voice_is_known = voice.voice_is_known
        """Whether the voice of the settings was found; otherwise the packaged one speaks."""
        self.process_id = voice.process_id
        """The system's number for the worker process that was started."""
