"""Measure the full screen: a key to the redrawn screen, drawing alone, and the processor while nothing happens.

Run: python tests/bench/screen.py [SECONDS OF IDLENESS]. Prints figures; fails on nothing. The real program on a
real pseudo-terminal with its journal on the disk; from the key written to the first bytes of the new screen,
which is written in one piece. Beside it the time on the processor that the key took, in all threads: other work
on the machine makes the first longer, the second hardly.
"""

from __future__ import annotations

import os
import shutil
import statistics
import sys
import tempfile
import time
from pathlib import Path

import pexpect

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from stepper.sitting.project_file import load_project
from stepper.sitting.full_screen import list_screen_yarns
from stepper.screen.course import course_of
from stepper.screen.ui_state import UIState
from stepper.screen.keys import Page
from stepper.screen.scene import Scene
from stepper.screen.drawing.style import Depth, Terminal
from stepper.screen.view import draw_screen
from stepper.session.state import Knitting, Position, State

SAMPLE = ROOT / "tests" / "fixtures" / "switchback.yaml"
SIZES = ((80, 24), (40, 12), (120, 40), (200, 60))
KEYS = {
    "a step": [" ", "w", " ", "u", " ", "h", " ", "\x1b[6~"] * 6,
    "the chart": ["d", " "] * 10,
    "the yoke": ["o", " "] * 10,
}
"""What is timed; a step leads back from a page to the round."""
MEANT_S = 0.3
"""Keys come slower than they are debounced."""


def milliseconds(times: list[float]) -> str:
    """Give median, 95th percentile and worst."""
    cut = statistics.quantiles(times, n=20)
    return f"median {statistics.median(times) * 1e3:.1f} ms, p95 {cut[18] * 1e3:.1f} ms, worst {max(times) * 1e3:.1f} ms"


def started(path: Path, columns: int, rows: int) -> pexpect.spawn:
    """Start the program in the middle of the yoke and wait until it is quiet."""
    env = os.environ | {
        "PYTHONPATH": str(ROOT),
        "PYTHONUTF8": "1",
        "TERM": "xterm-256color",
        "COLORTERM": "truecolor",
        "PROMPT_TOOLKIT_NO_CPR": "1",
    }
    child = pexpect.spawn(
        sys.executable,
        ["-m", "stepper", "knit", str(path), "--mute"],
        env=env,
        dimensions=(rows, columns),
        timeout=30,
    )
    child.delaybeforesend = None
    child.expect_exact(" keys", timeout=60)  # the last row of the first screen
    quiet(child, 2.0)
    child.send("/go to yoke round 21\r")
    quiet(child, 0.5)
    child.send("/by repeat\r")
    quiet(child, 0.5)
    return child


def quiet(child: pexpect.spawn, seconds: float) -> int:
    """Read until nothing has come for a while; give how many bytes came."""
    count = 0
    while True:
        try:
            count += len(child.read_nonblocking(65536, timeout=seconds))
        except pexpect.TIMEOUT:
            return count


def processor_s(child: pexpect.spawn) -> float:
    """Return the time on the processor so far, of all threads there are. Source: Linux, proc(5), schedstat."""
    tasks = Path(f"/proc/{child.pid}/task").iterdir()
    return sum(int((task / "schedstat").read_text().split()[0]) for task in tasks) / 1e9


def timed_keys(path: Path, columns: int, rows: int) -> None:
    """Press keys and time each until the new screen comes: steps, and the turns to the chart and to the yoke."""
    child = started(path, columns, rows)
    written = 0
    for what, keys in KEYS.items():
        times: list[float] = []
        processor: list[float] = []
        for key in keys:
            used, begin = processor_s(child), time.perf_counter()
            child.send(key)
            written = len(child.read_nonblocking(65536, timeout=10))
            took = time.perf_counter() - begin
            written += quiet(child, MEANT_S)
            if what == "a step" or key != " ":
                times.append(took)
                processor.append(processor_s(child) - used)
        print(f"{columns}x{rows}, {what}: key to new screen {milliseconds(times)}; last {written} bytes")
        print(f"{columns}x{rows}, {what}: on the processor {milliseconds(processor)}", flush=True)
    child.close(force=True)


def idle(path: Path, seconds: float) -> None:
    """Leave the program alone and see what it takes of the processor."""
    child = started(path, 80, 24)

    def used_s() -> float:
        fields = Path(f"/proc/{child.pid}/stat").read_text().rsplit(")", 1)[1].split()
        return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")

    before = used_s()
    time.sleep(seconds)
    took = used_s() - before
    print(f"idle: {took:.2f} s of the processor in {seconds:.0f} s, {took / seconds * 100:.2f} % of a core")
    child.close(force=True)


def drawing() -> None:
    """Time the rows alone on the processor, without terminal or disk."""
    loaded = load_project(SAMPLE)
    course = course_of(loaded.plan)
    state = State(knitting=Knitting(place=Position(index=31, stitch=90)))
    for page in Page:
        for columns, rows in SIZES:
            scene = Scene(course=course, state=state, ui=UIState(page=page), yarns=list_screen_yarns(loaded))
            terminal = Terminal(columns=columns, rows=rows, depth=Depth.TRUE)
            draw_screen(scene, terminal)
            times = []
            for _ in range(40):
                begin = time.process_time()
                draw_screen(scene, terminal)
                times.append(time.process_time() - begin)
            print(f"rows of {page.value:11} {columns:3}x{rows}: {milliseconds(times)}")


def main() -> None:
    """Print all figures."""
    seconds = float(sys.argv[1]) if len(sys.argv) > 1 else 30.0
    with tempfile.TemporaryDirectory() as folder:
        path = Path(shutil.copy(SAMPLE, folder))
        for columns, rows in SIZES:
            timed_keys(path, columns, rows)
        idle(path, seconds)
    drawing()


if __name__ == "__main__":
    main()
