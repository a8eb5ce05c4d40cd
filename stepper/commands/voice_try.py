"""`stepper voice try`: what is heard, how far it is from each cue, and which wordings sound alike."""

from __future__ import annotations

import argparse
import threading
from collections.abc import Callable, Iterator
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

from stepper.devices.ports import HEARING_RATE_HZ, Microphone
from stepper.ears.ports import Heard, Recogniser
from stepper.language.numbers import words
from stepper.language.understanding.normal_text import normalise
from stepper.sitting.folding import print_folded
from stepper.sitting.patience import patience
from stepper.sitting.preferences import Preferences, read_preferences
from stepper.sitting.recognisers import load_recogniser, open_microphone

if TYPE_CHECKING:
    from stepper.ears.bundled.moonshine import MoonshineRecogniser

SECONDS = 6.0
"""How long it records unless asked otherwise. Unit: s."""
_SHOWN = 5


EXAMPLES = (
    ("stepper voice try", "say a few cues within six seconds"),
    ("stepper voice try --film --seconds 20", "the same with the address word in front"),
    ("stepper voice try --address marigold", "try an address word of your own"),
    ("stepper voice try --hear cues.wav", "what is heard in a recording"),
)


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument(
        "--hear", type=Path, metavar="WAV", help="take a recording in place of the microphone"
    )
    parser.add_argument(
        "--seconds", type=float, default=SECONDS, help=f"how long to record ({SECONDS:g}, at most 60)"
    )
    parser.add_argument("--all", action="store_true", help="show the distance from every cue")
    parser.add_argument(
        "--film", action="store_true", help="listen as if a film were on: after the address word"
    )
    parser.add_argument(
        "--address", type=_address_word, metavar="WORD", help="the same after an address word of your own"
    )


def run(args: argparse.Namespace) -> int:
    """Record or read, and report.

    Returns:
        Exit code.

    Raises:
        SurroundingsError: There is no microphone or no recogniser, or the recording cannot be played.
    """
    mine = read_preferences()
    print_folded(mine.remarks)
    if args.address is not None:
        mine = replace(mine, hearing=replace(mine.hearing, address_word=args.address))
    is_addressed = args.film or args.address is not None or mine.hearing.address
    microphone = open_microphone(args.hear, mine.hearing.device)
    try:
        with patience("Loading the ears"):
            recogniser = load_recogniser(None, mine, lambda: is_addressed)
        try:
            print_folded(list_warnings(recogniser, mine))
            print_folded(judge_address(recogniser))
            if args.hear is None:
                print(f"Say a few cues; listening for {args.seconds:g} seconds.", flush=True)
                threading.Timer(min(60.0, args.seconds), microphone.close).start()
            listen_and_tell(microphone, ReportingRecogniser(recogniser, _say, everything=args.all), _say)
        finally:
            recogniser.close()
    finally:
        microphone.close()
    return 0


def list_warnings(recogniser: Recogniser, mine: Preferences) -> Iterator[str]:
    """Say which of her own wordings will be hard to hear.

    Args:
        recogniser: Which recogniser listens.
        mine: Her settings.
    """
    own = {normalise(wording) or wording.casefold(): wording for wording in mine.wordings}
    for wording in mine.wordings:
        if len(wording.split()) < 2:
            yield f'"{wording}" is a single word, which is easily heard when nobody said it.'
        if "{" in mine.wordings[wording]:
            yield f'"{wording}" stands for a cue with a number or a name, which it has no place for.'
    from stepper.ears.bundled.moonshine import MoonshineRecogniser

    if isinstance(recogniser, MoonshineRecogniser):
        for phrase in recogniser.unspeakable:
            yield f'"{own.get(phrase, phrase)}" has no sound, so it is never heard.'
        for one, other, distance in recogniser.alike():
            if one in own or other in own:
                pair = f'"{own.get(one, one)}" and "{own.get(other, other)}"'
                yield f"{pair} sound alike ({distance:.2f} apart)."
    for phrase in getattr(recogniser, "left_out", ()):
        if phrase in own:
            yield f'The model does not know all words of "{own[phrase]}", so it is never heard.'


def judge_address(recogniser: Recogniser) -> Iterator[str]:
    """Say what speaks against the address word.

    Args:
        recogniser: Which recogniser listens.
    """
    from stepper.ears.bundled.moonshine import MoonshineRecogniser

    judged = recogniser.judge_address() if isinstance(recogniser, MoonshineRecogniser) else None
    if judged is None:
        return
    if not judged.syllables:
        yield f'"{judged.word}" has no sound, so nothing is heard behind it: take another address word.'
    elif not judged.is_long_enough:
        count = f"{words(judged.syllables)} syllable{'s' * (judged.syllables > 1)}"
        yield f'"{judged.word}" has {count}: an address word needs two to four.'
    if judged.alike:
        yield f'"{judged.word}" sounds like "{judged.alike[0]}": take another address word.'


class ReportingRecogniser:
    """A recogniser that reports what it makes of each utterance."""

    def __init__(self, recogniser: Recogniser, tell: Callable[[str], None], *, everything: bool) -> None:
        """Wrap another recogniser.

        Args:
            recogniser: The recogniser to wrap.
            tell: Called with each line.
            everything: Whether to report the distance from every cue, not only from the nearest few.
        """
        self._recogniser, self._tell, self._everything = recogniser, tell, everything
        self.count = 0
        """Number of utterances so far."""
        self.taken = False
        """Whether the last one was taken for a cue."""

    def recognise(self, segment: bytes) -> Heard | None:
        """Recognise an utterance, and report it."""
        self.count += 1
        heard = self._recogniser.recognise(segment)
        self.taken = bool(heard and heard.text)
        taken = f'taken for "{heard.text}"' if heard and heard.text else "not taken for a cue"
        self._tell(f"{self.count}. {len(segment) / 2 / HEARING_RATE_HZ:.1f} s, {taken}.")
        from stepper.ears.bundled.moonshine import MoonshineRecogniser

        if isinstance(self._recogniser, MoonshineRecogniser):
            for line in _distances(self._recogniser, segment, self._everything):
                self._tell(line)
        return heard

    def close(self) -> None:
        """Close the wrapped recogniser."""
        self._recogniser.close()


def listen_and_tell(
    microphone: Microphone, recogniser: ReportingRecogniser, tell: Callable[[str], None]
) -> None:
    """Listen until the microphone ends.

    Args:
        microphone: Where the sound comes from.
        recogniser: Recognises what is said.
        tell: Called with a line when nobody spoke, and when a cue is ignored for what was around it.
    """
    from stepper.ears.listen import listen, load_speech_detector

    for heard in listen(microphone, recogniser, load_speech_detector()):
        if recogniser.taken and not heard.text:
            tell("   Ignored: someone just as loud was talking until just before.")
    if not recogniser.count:
        tell("Nobody was heard to speak near the microphone.")


def _distances(recogniser: MoonshineRecogniser, sound: bytes, everything: bool) -> Iterator[str]:
    utterance = recogniser.take_in(sound)
    yield (
        f'   It sounds like: "{utterance.transcript}".'
        if utterance.transcript
        else "   No words were made out."
    )
    shown: set[object] = set()
    for each in recogniser.distances(utterance):
        cue = each.means if each.figures == each.text else "a count"
        if cue not in shown and (everything or len(shown) < _SHOWN):
            shown.add(cue)
            yield f"   {abs(each.score):.1f} from {each.text}"


def _address_word(written: str) -> str:
    """Read an address word.

    Raises:
        ArgumentTypeError: It is empty.
    """
    word = " ".join(written.split())
    if not word:
        raise argparse.ArgumentTypeError("an address word is a word")
    return word


def _say(line: str) -> None:
    print_folded([line])
