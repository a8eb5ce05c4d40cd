"""Every kind of single mistake at random places of every sample garment, looked for with the session itself.

Prints figures; fails never. `python -m tests.bench.faults [places]`, 200 places for each kind and garment
unless told otherwise. What the knitter answers stands in `tests.hunt`.
"""

from __future__ import annotations

import sys
from collections.abc import Iterable
from pathlib import Path

from stepper.sitting.project_file import load_project
from tests import fabric, hunt
from tests.hunt import Trial

SAMPLES = sorted((Path(__file__).parents[1] / "fixtures").glob("*.yaml"))


def share(found: Iterable[int], below: int) -> float:
    """Give the share of ranks below a number. Unit: percent."""
    ranks = list(found)
    return 100 * sum(each < below for each in ranks) / max(1, len(ranks))


def line(name: str, trials: list[Trial]) -> str:
    """Sum trials up: first and among three, from the count alone, with sections, with looks."""
    if not trials:
        return f"  {name:20} no room for it"
    pairs = [
        f"{share(ranks, 1):5.1f} {share(ranks, 3):5.1f}"
        for ranks in (
            [each.by_count for each in trials],
            [each.by_sections for each in trials],
            [each.by_looks for each in trials],
        )
    ]
    many = len(trials)
    counted = [each for each in trials if each.counts]
    of_all = 100 * sum(each.stitches for each in counted) / max(1, sum(each.all_stitches for each in counted))
    return (
        f"  {name:20} {many:5}  {'   '.join(pairs)}   {sum(each.looks for each in trials) / many:4.1f}"
        f"   {sum(each.counts for each in counted) / max(1, len(counted)):4.1f} {of_all:5.1f} %"
        f"   {100 * sum(each.round_right for each in trials) / many:5.1f}"
    )


def main() -> None:
    """Print one line for each kind in each garment, and the sums."""
    places = int(sys.argv[1]) if len(sys.argv) > 1 else 200
    print("first and among three, in percent, by: the count alone; and counts between landmarks; and looks")
    everything: list[Trial] = []
    by_kind: dict[str, list[Trial]] = {mistake: [] for mistake in fabric.MISTAKES}
    for path in SAMPLES:
        plan = load_project(path).plan
        photographs = fabric.knitted_right(plan)
        print(f"{path.stem:22}trials  count         sections      looks         looks counts stitches  round")
        whole: list[Trial] = []
        for mistake in fabric.MISTAKES:
            found = hunt.trials(plan, photographs, mistake, places, 1)
            print(line(mistake, found), flush=True)
            by_kind[mistake] += found
            whole += found
        print(line("together", whole), flush=True)
        everything += whole
    print("all garments")
    for mistake, found in by_kind.items():
        print(line(mistake, found))
    print(line("together", everything))


if __name__ == "__main__":
    main()
