"""How long the fit of the sample takes, and how long its picture. Prints figures; fails on nothing.

    python tests/bench/fit.py
"""

from __future__ import annotations

import resource
import subprocess
import sys
import time
from pathlib import Path
from statistics import median

from stepper.sitting.project_file import load_sizes
from stepper.plan.blend import blends
from stepper.report.fit.report import report_fit
from stepper.report.drawing.shapes import write_svg
from stepper.report.drawing.png import write_png
from stepper.report.drawing.yoke_picture import draw_yoke_of

SAMPLE = Path(__file__).parents[1] / "fixtures" / "switchback.yaml"
TIMES = 7


def cpu_of_command(*words: str) -> float:
    """Give the processor time of one cold run of the program. Unit: s."""
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    subprocess.run([sys.executable, "-m", "stepper", *words], check=True, stdout=subprocess.DEVNULL)
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    return after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime


def main() -> None:
    """Measure and print."""
    cold = sorted(cpu_of_command("fit", str(SAMPLE)) for _ in range(TIMES))
    plain = sorted(cpu_of_command("check", str(SAMPLE)) for _ in range(TIMES))
    print(f"stepper fit, cold process: CPU {median(cold):.2f} s, least {cold[0]:.2f} s")
    print(f"stepper check, cold process: CPU {median(plain):.2f} s, least {plain[0]:.2f} s")
    sized = load_sizes(SAMPLE)
    tries, ranks = [], []
    for _ in range(TIMES):
        start = time.process_time()
        tried = tuple(blends(sized.project, sized.readings))
        middle = time.process_time()
        report_fit(sized.project, sized.plan, tried)
        tries.append(middle - start)
        ranks.append(time.process_time() - middle)
    print(f"{len(tried)} ways worked: CPU {median(tries) * 1000:.0f} ms; measured and ranked: {median(ranks) * 1000:.0f} ms")
    start = time.process_time()
    drawing = draw_yoke_of(sized.project, sized.plan, tried)
    assert drawing is not None
    write_svg(drawing)
    middle = time.process_time()
    write_png(drawing)
    print(f"yoke picture: SVG {(middle - start) * 1000:.0f} ms, PNG {(time.process_time() - middle) * 1000:.0f} ms")


if __name__ == "__main__":
    main()
