"""How long it takes from file to JSON: a cold process and a warm call, and how long the help takes.

Run: python tests/bench/plan.py [FILE]
Prints figures and never fails on time.
"""

from __future__ import annotations

import json
import statistics
import subprocess
import sys
import time
from pathlib import Path

from stepper.commands.plan import speak_once
from stepper.plan.compile import compile_plan
from stepper.plan.export import plan_document
from stepper.project.reader import read_project

ROOT = Path(__file__).parents[2]


def figures(name: str, seconds: list[float]) -> None:
    ordered = sorted(seconds)
    p95 = ordered[min(len(ordered) - 1, int(0.95 * len(ordered)))]
    print(f"{name:44} median {statistics.median(ordered) * 1e3:8.1f} ms   p95 {p95 * 1e3:8.1f} ms   n {len(ordered)}")


def timed(call, times: int) -> list[float]:
    taken = []
    for _ in range(times):
        start = time.perf_counter()
        call()
        taken.append(time.perf_counter() - start)
    return taken


def main() -> None:
    path = Path(sys.argv[1]) if len(sys.argv) > 1 else ROOT / "tests" / "fixtures" / "switchback.yaml"
    text = path.read_text(encoding="utf-8")

    def compiled():
        return compile_plan(read_project(text).project).plan

    def document():
        plan = compiled()
        return json.dumps(plan_document(plan, spoken=speak_once(plan)))

    plan = compiled()
    print(f"{path.name}: {len(plan.rounds)} rounds, {len(text)} characters, {len(document())} characters of JSON")
    figures("warm: text to plan", timed(compiled, 30))
    figures("warm: text to JSON", timed(document, 30))

    def process(*words: str) -> None:
        subprocess.run([sys.executable, "-m", "stepper", *words], stdout=subprocess.DEVNULL, check=False)

    figures("cold process: stepper plan FILE --json", timed(lambda: process("plan", str(path), "--json"), 7))
    figures("cold process: stepper --help", timed(lambda: process("--help"), 9))
    figures("cold process: python -c pass", timed(lambda: subprocess.run([sys.executable, "-c", "pass"]), 9))


if __name__ == "__main__":
    main()
