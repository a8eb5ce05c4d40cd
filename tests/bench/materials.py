"""How long yarn and colours take for the largest sample: warm, and as cold processes.

Run: python tests/bench/materials.py [FILE]
Prints CPU time and never fails on it.
"""

from __future__ import annotations

import resource
import statistics
import subprocess
import sys
import tempfile
from pathlib import Path

from stepper.plan.compile import compile_plan
from stepper.project.reader import read_project
from stepper.report.drawing.colour_picture import draw_colours
from stepper.report.colours import compare_colours
from stepper.report.drawing.png import write_png
from stepper.report.yarn import list_yarns
from stepper.report.yarn_lines import yarn_lines

ROOT = Path(__file__).parents[2]


def figures(name: str, seconds: list[float]) -> None:
    ordered = sorted(seconds)
    p95 = ordered[min(len(ordered) - 1, int(0.95 * len(ordered)))]
    print(f"{name:56} median {statistics.median(ordered) * 1e3:8.1f} ms   p95 {p95 * 1e3:8.1f} ms   n {len(ordered)}")


def cpu() -> float:
    """CPU seconds of this process and of those it has waited for: a busy machine does not change them much."""
    return sum(sum(resource.getrusage(who)[:2]) for who in (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN))


def timed(call, times: int) -> list[float]:
    taken = []
    for _ in range(times):
        start = cpu()
        call()
        taken.append(cpu() - start)
    return taken


def main() -> None:
    path = Path(sys.argv[1]) if len(sys.argv) > 1 else ROOT / "tests" / "fixtures" / "switchback.yaml"
    text = path.read_text(encoding="utf-8")
    # The pair that vanishes, so that a mend has to be looked for.
    lost = text.replace("#1f4d3a", "#1e7a34").replace("#c4512d", "#c0392b")

    def compiled(source: str):
        project = read_project(source).project
        return project, compile_plan(project).plan

    (project, plan), (lost_project, lost_plan) = compiled(text), compiled(lost)
    print(f"{path.name}: {len(plan.rounds)} rounds, {len(plan.yarns)} yarns")
    figures("warm: text to plan (part of each command)", timed(lambda: compiled(text), 20))
    figures("warm: yarn rows and their lines", timed(lambda: list(yarn_lines(plan, list_yarns(plan), {})), 50))
    figures("warm: colours, nothing to mend", timed(lambda: compare_colours(project, plan), 50))
    figures("warm: colours, red and green to mend", timed(lambda: compare_colours(lost_project, lost_plan), 50))
    found = compare_colours(lost_project, lost_plan)
    figures("warm: the picture as PNG", timed(lambda: write_png(draw_colours(found, plan.title)), 5))

    def process(*words: str) -> None:
        subprocess.run([sys.executable, "-m", "stepper", *words], stdout=subprocess.DEVNULL, check=False)

    with tempfile.TemporaryDirectory() as folder:
        garment = Path(folder) / "garment.yaml"
        garment.write_text(lost, encoding="utf-8")
        figures("cold process: stepper yarn FILE", timed(lambda: process("yarn", str(garment)), 7))
        figures("cold process: stepper colours FILE", timed(lambda: process("colours", str(garment)), 7))
    figures("cold process: stepper check FILE", timed(lambda: process("check", str(path)), 7))


if __name__ == "__main__":
    main()
