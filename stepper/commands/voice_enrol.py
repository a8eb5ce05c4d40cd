"""`stepper voice enrol`: learn the knitter's voice, so that she is heard more surely, and others are not.

Fifteen seconds of her speech become 96 numbers. The recording is discarded when the command
ends, unless she names a file for it.
"""

from __future__ import annotations

import argparse
import io
import time
import wave
from collections.abc import Iterator
from pathlib import Path

from stepper.devices.ports import HEARING_RATE_HZ, Microphone
from stepper.ears.known_voice import ANOTHER, HERS, PIECE_S, Enrolment, enrol, keep_voice, pieces_of
from stepper.ears.speaker_embedding import SpeakerEncoder, likeness
from stepper.errors import SurroundingsError
from stepper.files import write_private
from stepper.mouth.settings import SpeechSettings
from stepper.sitting.folding import print_folded
from stepper.sitting.patience import patience
from stepper.sitting.preferences import read_preferences
from stepper.sitting.recognisers import open_microphone
from stepper.sitting.user_folders import voice_path

SPEECH_S = 15.0
"""Amount of speech taken. Unit: s."""
PATIENCE_S = 120.0
"""Time allowed for it. Unit: s."""
_CHUNK_BYTES = 1024
_SPEECH = 0.5

TO_READ = (
    "Next step. Where are we? Say that again, please.",
    "The kettle is on, the lamp is lit, and I have all the evening for this yoke.",
    "My count is two hundred and forty six, which is as it should be.",
    "Nobody telephones after nine, so I can take my time over the colours.",
    "Go back one step. That was wrong. How many stitches should there be?",
    "The next increase comes four rounds on, just after the second marker.",
)
"""Something to read, with cues in it; invented."""
_OTHERS = ("en-us", "en-us+f3", "en-us+f5", "en-gb-x-rp+m7")
# Stand-ins for the other voices at the table; they are synthetic, and people may be more alike.


EXAMPLES = (
    ("stepper voice enrol", "read fifteen seconds aloud"),
    ("stepper voice enrol --forget", "hear every voice again"),
)


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("--hear", type=Path, metavar="WAV", help="take a recording, not the microphone")
    parser.add_argument("--keep-recording", type=Path, metavar="WAV", help="keep what was said in this file")
    parser.add_argument("--forget", action="store_true", help="forget the voice that is kept")


def run(args: argparse.Namespace) -> int:
    """Enrol.

    Returns:
        Exit code.

    Raises:
        SurroundingsError: Nothing can be heard, too little was said, or the encoder is not installed.
    """
    path = voice_path()
    if args.forget:
        path.unlink(missing_ok=True)
        print_folded(["No voice is kept; every voice is heard."])
        return 0
    with patience("Loading what knows a voice"):
        encoder = SpeakerEncoder()
    microphone = open_microphone(args.hear, read_preferences().hearing.device)
    speech = b"".join(_speech(microphone, live=args.hear is None))
    if args.keep_recording is not None:
        _write(speech, args.keep_recording)
    enrolment = enrol(speech, encoder)
    keep_voice(enrolment.voice, path)
    print_folded(report(enrolment, encoder))
    kept = f" The recording is in {args.keep_recording}." if args.keep_recording else ""
    told = f"Kept in {path}: {len(enrolment.voice.vector)} numbers, no sound.{kept}"
    since = "What is surely not you needs the program's name in front of it from now on."
    print_folded([told, f"{since} To undo it: stepper voice enrol --forget"])
    return 0


def report(enrolment: Enrolment, encoder: SpeakerEncoder) -> list[str]:
    """Return lines that tell how surely she is known, and what it costs."""
    own = len(enrolment.own)
    lines = [
        f"Of the {own} pieces just heard, {enrolment.sure} are surely you, and {enrolment.refused} would be "
        "taken for somebody else."
    ]
    others = _others(enrolment, encoder)
    if others:
        taken, refused = sum(each >= HERS for each in others), sum(each < ANOTHER for each in others)
        lines.append(
            f"Of {len(others)} pieces by {len(_OTHERS)} synthetic voices, {taken} are taken for you, and "
            f"{refused} are surely not you. "
            "Voices of people near you may be more like yours."
        )
    began = time.perf_counter()
    encoder.vector(bytes(round(PIECE_S * HEARING_RATE_HZ) * 2))
    lines.append(f"It costs {(time.perf_counter() - began) * 1e3:.0f} ms for each cue.")
    return lines


def _others(enrolment: Enrolment, encoder: SpeakerEncoder) -> list[float]:
    """Measure how similar other voices are to hers; empty if none can be made."""
    from stepper.devices.resample import resample
    from stepper.mouth.espeak import EspeakVoice

    found = []
    for name in _OTHERS:
        try:
            voice = EspeakVoice(SpeechSettings(voice=name))
        except SurroundingsError:
            return []
        try:
            said = b"".join(voice.speech(line, 150) for line in TO_READ[:3])
        finally:
            voice.close()
        sound = resample(said, voice.rate_hz, HEARING_RATE_HZ)
        found += [likeness(encoder.vector(piece), enrolment.voice.vector) for piece in pieces_of(sound)]
    return found


def _speech(microphone: Microphone, *, live: bool) -> Iterator[bytes]:
    """Yield the chunks that are speech, until there is enough of it."""
    from stepper.ears.listen import load_speech_detector

    detect = load_speech_detector()
    if live:
        print_folded(
            ["Read this aloud, as you would speak to the program, again from the top until it is enough:"]
        )
        print_folded(f"  {line}" for line in TO_READ)
    rest, taken_s, told_s, ends_at = b"", 0.0, 0.0, time.monotonic() + PATIENCE_S
    try:
        for block in microphone.blocks():
            rest += block
            while len(rest) >= _CHUNK_BYTES and taken_s < SPEECH_S:
                chunk, rest = rest[:_CHUNK_BYTES], rest[_CHUNK_BYTES:]
                if detect(chunk) >= _SPEECH:
                    taken_s += _CHUNK_BYTES / 2 / HEARING_RATE_HZ
                    yield chunk
            if live and taken_s - told_s >= 5:
                told_s = taken_s
                print(f"{taken_s:.0f} of {SPEECH_S:.0f} seconds of speech.", flush=True)
            if taken_s >= SPEECH_S or (live and time.monotonic() > ends_at):
                return
    finally:
        microphone.close()


def _write(speech: bytes, path: Path) -> None:
    try:
        content = io.BytesIO()
        with wave.open(content, "wb") as file:
            file.setnchannels(1)
            file.setsampwidth(2)
            file.setframerate(HEARING_RATE_HZ)
            file.writeframes(speech)
        write_private(path, content.getvalue())
    except OSError as error:
        raise SurroundingsError(f"{path} cannot be written: {error.strerror}.") from error
