"""Time the page to print: plan to HTML for every sample, and the command as a cold process.

python tests/bench/page.py
"""

from __future__ import annotations

import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from stepper.sitting.project_file import load_project  # noqa: E402
from stepper.commands.yarn import list_rows  # noqa: E402
from stepper.report.sheet.page import write_page  # noqa: E402


def main() -> None:
    """Print figures."""
    slowest = ("", 0.0)
    for path in sorted((ROOT / "tests" / "fixtures").glob("*.yaml")):
        loaded = load_project(path)
        plan, rows = list_rows(loaded)
        times = []
        for _ in range(7):
            begin = time.perf_counter()
            written = write_page(plan, loaded.project, rows)
            times.append(1000 * (time.perf_counter() - begin))
        middle = statistics.median(times)
        slowest = max(slowest, (str(path), middle), key=lambda each: each[1])
        print(f"{path.stem:12} {len(plan.rounds):4} rounds  {len(written) / 1000:6.0f} kB  {middle:6.1f} ms")
    with tempfile.TemporaryDirectory() as folder:
        words = [
            sys.executable,
            "-m",
            "stepper",
            "plan",
            slowest[0],
            "--html",
            str(Path(folder) / "out.html"),
        ]
        times = []
        for _ in range(5):
            begin = time.perf_counter()
            subprocess.run(words, check=True, cwd=ROOT, stdout=subprocess.DEVNULL)
            times.append(time.perf_counter() - begin)
        print(
            f"stepper plan {Path(slowest[0]).stem} --html, cold process: {statistics.median(times):.2f} s (median of 5)"
        )


if __name__ == "__main__":
    main()
