"""How quickly, and at what cost, is a line spoken and silenced? Prints figures; passes no judgement.

    python tests/bench/speak.py [--rounds N]

Starts a private sound server when pulseaudio is installed and records its loudspeaker, so "heard" is the moment a
recorder has the sound. No real loudspeaker takes part: its own delay, and a headset's, come on top.
"""

from __future__ import annotations

import argparse
import os
import resource
import shutil
import statistics
import sys
import tempfile
import time
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from stepper.mouth.open_speaker import open_speaker
from stepper.mouth.espeak import EspeakVoice
from stepper.mouth.settings import SpeechSettings
from tests.sound_room import Room

LINE = "Knit to two stitches before the marker, knit two together, slip marker."


def show(name: str, seconds: list[float]) -> None:
    ordered = sorted(seconds)
    p95 = ordered[min(len(ordered) - 1, round(0.95 * len(ordered)))]
    median = statistics.median(ordered)
    print(f"{name:58} median {median * 1e3:7.1f} ms   p95 {p95 * 1e3:7.1f} ms   n {len(ordered)}")


def cpu_s(process_id: int) -> float:
    ticks = Path(f"/proc/{process_id}/stat").read_text().rpartition(")")[2].split()[11:13]
    return sum(map(int, ticks)) / os.sysconf("SC_CLK_TCK")


def voice_alone(rounds: int) -> None:
    cold, warm, again = [], [], []
    for _ in range(rounds):
        began = time.perf_counter()
        voice = EspeakVoice(SpeechSettings())
        voice.speech(LINE, 150)
        cold.append(time.perf_counter() - began)
        os.kill(voice.process_id, 9)
        began = time.perf_counter()
        voice.speech(LINE, 150)
        again.append(time.perf_counter() - began)
        voice.close()
    voice = EspeakVoice(SpeechSettings())
    for _ in range(rounds * 5):
        began = time.perf_counter()
        voice.speech(LINE, 150)
        warm.append(time.perf_counter() - began)
    count = 400
    before, own = cpu_s(voice.process_id), time.process_time()
    for _ in range(count):
        pcm = voice.speech(LINE, 150)
    worker, own = (cpu_s(voice.process_id) - before) / count, (time.process_time() - own) / count
    voice.close()
    show("whole line made, worker cold (process started)", cold)
    show("whole line made, worker warm", warm)
    show("whole line made, worker just killed (restart included)", again)
    lasts_s = len(pcm) / 2 / 22_050
    print(f"{'CPU for a line of ' + format(lasts_s, '.1f') + ' s':58} worker {worker * 1e3:.1f} ms, program {own * 1e3:.1f} ms")


def through_the_room(room, rounds: int) -> None:
    for engine in ("espeak", "pyttsx3"):
        opened, closed, first, silent, to_quiet = [], [], [], [], []
        for _ in range(3):
            began = time.perf_counter()
            speaker, remark = open_speaker(SpeechSettings(engine=engine))
            opened.append(time.perf_counter() - began)
            if speaker is None:
                break
            began = time.perf_counter()
            speaker.close()
            closed.append(time.perf_counter() - began)
        if remark:
            print(f"{engine}: {remark}")
            continue
        speaker, _ = open_speaker(SpeechSettings(engine=engine))
        time.sleep(2.5)
        before, began = time.process_time(), time.monotonic()
        time.sleep(4)
        idle = (time.process_time() - before) / (time.monotonic() - began)
        before, began = time.process_time(), time.monotonic()
        speaker.say(LINE)
        speaker.wait(15)
        busy = time.process_time() - before - idle * (time.monotonic() - began)
        with room.record() as recording:
            for _ in range(rounds):
                time.sleep(0.5)
                began = time.monotonic()
                speaker.say(LINE)
                first.append(recording.wait_for_sound(after=began) - began)
                time.sleep(0.6)
                began = time.monotonic()
                speaker.silence()
                to_quiet.append(time.monotonic() - began)
                time.sleep(0.5)
                silent.append(recording.loud_at()[-1] - began)
        speaker.close()
        show(f"{engine}: open the speaker", opened)
        show(f"{engine}: from say to heard", first)
        show(f"{engine}: from silence to silent", silent)
        show(f"{engine}: silence() returns after", to_quiet)
        show(f"{engine}: close", closed)
        print(f"{engine + ': CPU of the program while quiet':58} {idle:.1%} of a core")
        print(f"{engine + ': more while a line is said':58} {busy * 1e3:.0f} ms a line")


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--rounds", type=int, default=30)
    rounds = parser.parse_args().rounds
    voice_alone(rounds)
    if shutil.which("pulseaudio") is None:
        print("no pulseaudio here: nothing was heard, so nothing more was measured")
        return
    with tempfile.TemporaryDirectory() as folder:
        room = Room(Path(folder), dict(os.environ))
        room.start()
        os.environ.update(room.changed)
        try:
            through_the_room(room, rounds)
        finally:
            room.stop()
    peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    print(f"peak memory of the program: {peak:.0f} MB", file=sys.stderr)


if __name__ == "__main__":
    main()
