"""Every kind of single mistake at random places of every sample garment, looked for with the session itself.

Prints figures; fails never. `python -m tests.bench.faults [places]`, 200 places for each kind and garment
unless told otherwise. What the knitter answers stands in `tests.hunt`.

`python -m tests.bench.faults mend [mistakes] [seed] [knitter ...]`: a thousand mistakes, unless told otherwise, made and mended by
what is said, with three knitters (`tests.mending`), over the fixtures and one garment of each construction. Prints as
it goes. A third of them is noticed in the middle of the round. Seed 1 is the one the advice was worked out with; any other has not been looked at.
"""

from __future__ import annotations

import sys
from collections import Counter
from collections.abc import Iterable
from pathlib import Path
from statistics import median

from stepper.sitting.project_file import load_project
from tests import fabric, hunt, mending
from tests.garments import NAMES, read_garment
from tests.hunt import Trial
from tests.mending import WORDS_A_SECOND, Outcome

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


def mended(made: int) -> None:
    """Make and mend so many mistakes with each knitter."""
    pieces = [mending.piece(path.stem, load_project(path).plan) for path in SAMPLES]
    pieces += [mending.piece(name, read_garment(name)[1]) for name in NAMES]
    seed = int(sys.argv[3]) if len(sys.argv) > 3 else 1
    for knitter in sys.argv[4:] or mending.KNITTERS:
        found: list[Outcome] = []
        for outcome in mending.outcomes(pieces, made, seed, knitter):
            found.append(outcome)
            if len(found) % 100 == 0:
                print(outcome_line(f"answers {knitter}", found), flush=True)
        print(outcome_line("  in mid-round", [each for each in found if each.midway]))
        print(outcome_line("  at the end", [each for each in found if not each.midway]))
        for kind in mending.KINDS:
            print(outcome_line(f"  {kind}", [each for each in found if each.kind == kind]))
        firsts = Counter(each.first for each in found)
        print("  first:", ", ".join(f"{kind} {many}" for kind, many in firsts.most_common()), flush=True)
        for each in [each for each in found if each.harm or not each.right][:SHOWN]:
            print(f"--- {each.kind}, {each.garment}: {each.harm or 'not right'}", *each.log, sep="\n")


SHOWN = 4
"""Conversations that went wrong printed in full for each knitter."""


def outcome_line(name: str, found: list[Outcome]) -> str:
    """Sum outcomes up: first remedy, harm, right in the end, questions, stitches, words."""
    if not found:
        return f"{name}: none"
    many = len(found)
    words = sorted(each for outcome in found for each in outcome.words)
    longest, late = words[-1], words[int(0.95 * (len(words) - 1))]
    return (
        f"{name:22} {many:5}  first {100 * sum(each.first_right for each in found) / many:5.1f} %"
        f"  harm {sum(bool(each.harm) for each in found):3}  right {100 * sum(each.right for each in found) / many:5.1f} %"
        f"  questions {median(each.questions for each in found):g}  stitches {median(each.stitches for each in found):g}"
        f"  words {median(words):g}, 95 % {late}, most {longest}"
        f"  seconds {median(words) / WORDS_A_SECOND:.1f}, {late / WORDS_A_SECOND:.1f}, {longest / WORDS_A_SECOND:.1f}"
    )


def main() -> None:
    """Print one line for each kind in each garment, and the sums."""
    if sys.argv[1:2] == ["mend"]:
        mended(int(sys.argv[2]) if len(sys.argv) > 2 else 1000)
        return
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
