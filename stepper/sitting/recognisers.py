"""Join the ears to a session: what can be heard, and from where."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from importlib.util import find_spec
from pathlib import Path

from stepper.devices.ports import Microphone, NoInputError
from stepper.ears.ports import Recogniser
from stepper.ears.wordings import Reply
from stepper.errors import SurroundingsError
from stepper.plan.model import Plan
from stepper.records import dataclass
from stepper.session.cues import Count, Cue, No, Yes
from stepper.sitting.preferences import Preferences, read_preferences, settings_path
from stepper.sitting.recogniser_wordings import list_wordings
from stepper.sitting.user_folders import model_folders
from stepper.sitting.vocabulary_file import read_vocabulary

NONE_HERE = "no recogniser is made for this kind of computer"
"""Why nothing is heard where no wheel of the bundled recogniser exists."""


class Toggle:
    """Something that is on or off; set and read from any thread."""

    def __init__(self, is_on: bool) -> None:
        """Start on or off."""
        self._is_on = is_on

    def __call__(self) -> bool:
        """Return whether it is on."""
        return self._is_on

    def turn(self, is_on: bool) -> None:
        """Turn it on or off."""
        self._is_on = is_on


class OpenQuestion:
    """What one word may answer now; set and read from any thread."""

    def __init__(self) -> None:
        """Start with nothing asked."""
        self._replies: frozenset[Reply] = frozenset()

    def __call__(self) -> frozenset[Reply]:
        """Return what is asked for."""
        return self._replies

    def ask(self, answers: frozenset[type[Cue]]) -> None:
        """Take note of the kinds of cue that answer what is open; empty if nothing is."""
        kinds = {Count: Reply.NUMBER, Yes: Reply.YES_OR_NO, No: Reply.NO_ANSWER}
        self._replies = frozenset(reply for cue, reply in kinds.items() if cue in answers)


@dataclass(frozen=True, slots=True, kw_only=True)
class Hearing:
    """What the ears and the conductor tell each other."""

    film: Toggle
    """Whether a film is on, so that a cue needs the address word."""
    question: OpenQuestion
    ears: Toggle
    """Whether the ears are open."""


def open_microphone(recording: Path | None, device: str) -> Microphone:
    """Open a recording, or else the microphone.

    Args:
        recording: A WAV file; None for the microphone.
        device: Part of the microphone's name; empty for the usual one.

    Raises:
        SurroundingsError: The recording cannot be played, or there is no microphone.
    """
    if recording is not None:
        from stepper.devices.wav_microphone import WavMicrophone

        return WavMicrophone(recording)
    from stepper.devices.live_microphone import LiveMicrophone

    try:
        return LiveMicrophone(device)
    except NoInputError as reason:
        raise SurroundingsError(f"There is no microphone, since {reason}.") from reason


def hear_recording(
    path: Path,
    plan: Plan,
    is_addressed: Callable[[], bool] | None = None,
    mine: Preferences | None = None,
    asked: Callable[[], frozenset[Reply]] = frozenset,
) -> Iterator[str]:
    """Open a recording at once and return an iterator over the cues in it, in order.

    Args:
        path: A WAV file.
        plan: What is knitted, for the names a cue may hold.
        is_addressed: Whether the address word is required now; if None, as the settings say.
        mine: The knitter's settings; read from their file if None.
        asked: What one word may answer now.

    Raises:
        SurroundingsError: The file cannot be played, or the recogniser is not installed.
    """
    from stepper.ears.listen import listen, load_speech_detector

    microphone = open_microphone(path, "")
    speech = load_speech_detector()
    recogniser = load_recogniser(plan, mine, is_addressed, asked)
    return (heard.text for heard in listen(microphone, recogniser, speech))


def load_recogniser(
    plan: Plan | None,
    mine: Preferences | None = None,
    is_addressed: Callable[[], bool] | None = None,
    asked: Callable[[], frozenset[Reply]] = frozenset,
) -> Recogniser:
    """Load the recogniser.

    Args:
        plan: What is knitted, for the names a cue may hold.
        mine: The knitter's settings; read from their file if None.
        is_addressed: Whether the address word is required now; if None, as the settings say.
        asked: What one word may answer now, without the address word.

    Raises:
        SurroundingsError: It is not installed, or there is no such model or vocabulary.
    """
    mine = mine if mine is not None else read_preferences()
    settings = mine.hearing
    is_bundled = settings.recogniser == "bundled" or (
        settings.recogniser == "auto"
        and not (settings.model or settings.vocabulary)
        and (find_spec("moonshine_voice") is not None or not _models())
    )
    if settings.vocabulary:
        if is_bundled:
            raise SurroundingsError(
                "The bundled recogniser knows English only; cues of a vocabulary file need a Vosk model."
            )
        wordings = read_vocabulary(_vocabulary(settings.vocabulary), mine.wordings).wordings()
    else:
        wordings = list_wordings(plan, mine.wordings)
    if is_bundled:
        if find_spec("moonshine_voice") is None and find_spec("onnxruntime") is not None:
            raise SurroundingsError(f"Nothing is heard: {NONE_HERE}. A Vosk model does in its place.")
        from stepper.ears.bundled.moonshine import MoonshineRecogniser

        return MoonshineRecogniser(
            wordings,
            address=settings.address_word.casefold(),
            is_addressed=is_addressed or (lambda: settings.address),
            asked=asked,
        )
    from stepper.ears.vosk_recogniser import VoskRecogniser

    address = settings.address_word.casefold() if settings.address else ""
    return VoskRecogniser(wordings, _model(settings.model), address=address)


def _vocabulary(name: str) -> Path:
    """Find a vocabulary file in the current folder or beside the settings."""
    path = Path(name).expanduser()
    beside = settings_path().parent / path
    return beside if not path.exists() and beside.exists() else path


def _models() -> list[Path]:
    from stepper.ears.vosk_model import models_in

    return models_in(*model_folders())


def _model(name: str) -> Path:
    """Find the model of the settings.

    Raises:
        SurroundingsError: There is none of that name, or none at all.
    """
    models = _models()
    if not name and models:
        return models[0]
    found = [each for each in models if each.name == name] or [Path(name)] * bool(name)
    if not found or not found[0].is_dir():
        what = f'There is no Vosk model "{name}"' if name else "There is no Vosk model"
        raise SurroundingsError(f"{what}; put one in place with: stepper voice install PATH-OR-ADDRESS")
    return found[0]
