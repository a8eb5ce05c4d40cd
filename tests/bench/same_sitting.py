"""Knit a garment in two trees of the program and print what one answers otherwise than the other. Passes no judgement.

    python -m tests.bench.same_sitting OTHER [GARMENT] [--here FOLDER] [--questions]

OTHER is the root of another tree of the program, FOLDER of the one to compare it with, this one where none is named. GARMENT is
a file that both can read, `tests/fixtures/switchback.yaml` where none is named. It is knitted from the first step to the last with "next step", and asked "where am I" whenever the index of the round is a
multiple of ten; with `--questions` a dozen other things too. Every answer is compared letter for letter, in the order in which it is
given; and once more sentence by sentence, whatever steps the sentences stand in. Each tree answers in a process of its own.
"""

from __future__ import annotations

import argparse
import difflib
import os
import re
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).parents[2]
EVERY = 10
"""Rounds between two questions."""
QUESTIONS = (
    "where am I", "how many stitches", "say that again", "read the whole round", "what's next", "how many rounds left",
    "how long does it measure", "when is the next increase", "when is the next decrease", "how much yarn is left",
    "what does k2tog mean", "notes", "where are the markers",
)  # fmt: skip
MOST_STEPS = 10_000

KNIT = """
import sys
from pathlib import Path
from stepper.plan.compile import compile_plan
from stepper.project.reader import read_project
from tests import playbook

garment, every, most, *questions = sys.argv[1:]
session = playbook.opened(compile_plan(read_project(Path(garment).read_text(encoding="utf-8")).project).plan)
asked = -1
for _ in range(int(most)):
    print(playbook.transcript(session, "> next step"))
    index = session.state.place.index
    if index >= len(session.plan.rounds):
        break
    if index != asked and index % int(every) == 0:
        asked = index
        for question in questions:
            print(playbook.transcript(session, "> " + question))
"""
"""Runs in either tree: what it calls has kept its name."""


def sitting(tree: Path, garment: Path, questions: tuple[str, ...]) -> list[str]:
    """Return the lines of a whole sitting, what is said to the program among them, behind "> "."""
    words = [sys.executable, "-c", KNIT, str(garment), str(EVERY), str(MOST_STEPS), *questions]
    here = {**os.environ, "PYTHONPATH": str(tree)}
    return subprocess.run(
        words, cwd=tree, env=here, check=True, capture_output=True, text=True
    ).stdout.splitlines()


def sentences(lines: list[str]) -> list[str]:
    """Return what was answered, one sentence each."""
    return [each for line in lines if not line.startswith("> ") for each in re.split(r"(?<=[.?!]) ", line)]


def main() -> None:
    """Print how many lines each sitting has, and the sentences that differ."""
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("other", type=Path)
    parser.add_argument(
        "garment", type=Path, nargs="?", default=ROOT / "tests" / "fixtures" / "switchback.yaml"
    )
    parser.add_argument("--here", type=Path, default=ROOT, metavar="FOLDER")
    parser.add_argument("--questions", action="store_true")
    args = parser.parse_args()
    questions = QUESTIONS if args.questions else QUESTIONS[:1]
    then, now = (
        sitting(tree.resolve(), args.garment.resolve(), questions) for tree in (args.other, args.here)
    )
    print(
        f"{len(then)} lines there, {len(now)} here, {'the same' if then == now else 'not the same'} letter for letter"
    )
    told = sentences(then), sentences(now)
    for line in difflib.unified_diff(*told, "there", "here", lineterm="", n=0):
        print(line)


if __name__ == "__main__":
    main()
