"""How soon does the natural voice begin: a line it expected, a line it did not, and the plain voice beside it?

    python tests/bench/natural.py [--lines N]

Needs pip install '.[natural]' and PulseAudio. "Heard" is the moment a recorder of the virtual loudspeaker has it.
"""

from __future__ import annotations

import argparse
import statistics
import sys
import tempfile
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))

from stepper.language.numbers import words
from stepper.mouth.open_speaker import open_speaker
from stepper.mouth.ports import SpokenLine
from stepper.mouth.settings import SpeechSettings
from tests.bench.evening import the_room


def line(number: int) -> str:
    return f"Round {words(number)}: knit to two stitches before the marker, knit two together, slip marker."


def first_sounds(room, engine: str, lines: int, *, expected: bool) -> list[float]:
    speaker, remark = open_speaker(SpeechSettings(engine=engine))
    if remark:
        print(remark)
    found = []
    with room.record() as recording:
        speaker.say("Ready.")
        speaker.wait(20)
        for number in range(20, 20 + lines):
            if expected:
                speaker.expect([SpokenLine(text=line(number))])
            time.sleep(8 if expected else 1)
            began = time.monotonic()
            speaker.say(line(number))
            found.append(recording.wait_for_sound(after=began, timeout_s=20) - began)
            speaker.silence()
            time.sleep(1)
    speaker.close()
    return found


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--lines", type=int, default=12)
    lines = parser.parse_args().lines
    with tempfile.TemporaryDirectory() as folder:
        room = the_room(Path(folder))
        try:
            for engine, expected in (("espeak", False), ("natural", True), ("natural", False)):
                found = sorted(first_sounds(room, engine, lines, expected=expected))
                p95 = found[min(len(found) - 1, round(0.95 * len(found)))]
                what = f"{engine}, {'expected' if expected else 'not expected'}"
                print(f"{what:24} from say to heard: median {statistics.median(found):.3f} s, p95 {p95:.3f} s, n {lines}")
        finally:
            room.stop()


if __name__ == "__main__":
    main()
