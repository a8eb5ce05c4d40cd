"""How well is what the program says understood? A recogniser listens to rendered instructions, by voice and speed.

    python -m tests.bench.listen [VOICE ...]

Needs moonshine-voice 0.1.0, whose wheel holds an English model. Prints the share of words
understood, and what was heard. No person listened: a recogniser stands in for one.
"""

from __future__ import annotations

import re
import sys
import tempfile
import wave
from array import array
from pathlib import Path

from stepper.devices.resample import resample
from stepper.mouth.settings import SpeechSettings
from tests.speech import render

LINES = (
    ("Round eighty four. Knit all stitches.", "round eighty four knit all stitches"),
    ("Knit to two stitches before the marker.", "knit to two stitches before the marker"),
    ("Knit two together, then knit thirty six.", "knit two together then knit thirty six"),
    ("You should have 246 stitches.", "you should have two hundred forty six stitches"),
    ("Slip the marker and purl seventeen.", "slip the marker and purl seventeen"),
    ("Repeat to the end of the round.", "repeat to the end of the round"),
    ("Change to green for five stitches.", "change to green for five stitches"),
    ("Three rounds to go in the sleeve.", "three rounds to go in the sleeve"),
)


def moonshine():
    from moonshine_voice import ModelArch, get_model_path
    from moonshine_voice.transcriber import Transcriber

    found = Transcriber(get_model_path("tiny-en"), ModelArch.TINY, options={"vad_threshold": "0"})

    def hear(pcm: bytes) -> str:
        samples = [value / 32768 for value in array("h", pcm)]
        return " ".join(line.text for line in found.transcribe_without_streaming(samples, 16_000).lines)

    return hear


NUMBERS = {"84": "eighty four", "36": "thirty six", "246": "two hundred forty six", "17": "seventeen", "2": "two"}
NUMBERS |= {"5": "five", "3": "three", "knits": "knit", "pearl": "purl", "nit": "knit"}


def words_of(text: str) -> list[str]:
    found = re.findall(r"[a-z]+|\d+", text.lower().replace("-", " "))
    return " ".join(NUMBERS.get(word, word) for word in found if word != "and").split()


def missed(said: list[str], heard: list[str]) -> int:
    """Edit distance in words."""
    row = list(range(len(heard) + 1))
    for i, a in enumerate(said, 1):
        before, row[0] = row[0], i
        for j, b in enumerate(heard, 1):
            before, row[j] = row[j], min(row[j] + 1, row[j - 1] + 1, before + (a != b))
    return row[-1]


def main() -> None:
    silence = bytes(2 * 8000)
    hear = moonshine()
    for voice in sys.argv[1:] or ["", "en-us"]:
        for speed in (120, 150, 180):
            wrong = total = 0
            heard_lines = []
            for line, wanted in LINES:
                with tempfile.TemporaryDirectory() as folder:
                    path = Path(folder, "line.wav")
                    render(line, path, SpeechSettings(voice=voice, rate_wpm=speed))
                    with wave.open(str(path)) as file:
                        pcm = resample(file.readframes(file.getnframes()), file.getframerate(), 16_000)
                heard_lines.append(hear(silence + pcm + silence))
                wrong += missed(words_of(wanted), words_of(heard_lines[-1]))
                total += len(words_of(wanted))
            print(f"voice {voice or 'usual':12} {speed} words a minute: {1 - wrong / total:.0%} understood")
            if speed == 150:
                print("   ", " | ".join(heard_lines))


if __name__ == "__main__":
    main()
