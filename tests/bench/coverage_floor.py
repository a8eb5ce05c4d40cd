"""Ask whether the tests of a room still reach what they reached: no file below its floor.

    python -m tests.bench.coverage_floor [ROOM ...] [--keep]

ROOM is one of those in `ROOMS`; all of them where none is named. The tests of each room run under `coverage`, and the
share of lines that a room's OWN tests reach is compared with the floor of the file in `tests/coverage_floor.txt`.
A file below its floor by more than `SLACK`, or a new one below `LEAST_OF_NEW`, ends the command with exit code 1. `--keep`
raises the floors to what was reached and writes down those of new files; a floor is lowered by hand alone, with a reason
in the commit.

What is left out, and why: the rooms that need a device or a terminal (devices, mouth, ears, screen) and `commands`,
whose tests run the program in processes of its own, of which nothing is seen from here; tests that try everything
there is (`EXHAUSTIVE`) or take long (`LONG`), which reach no line that shorter ones do not; and most of hypothesis' examples, for the same
reason. Tracing takes nearly twice the time of the tests, so this is no part of the test command; CI runs it on the
rooms in `IN_CI`.
"""

from __future__ import annotations

import argparse
import json
import os
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest
from hypothesis import settings, strategies

ROOT = Path(__file__).parents[2]
TABLE = ROOT / "tests" / "coverage_floor.txt"
"""A row each: the file, and the share of its lines that its room's tests reach at least. Unit: per cent."""

ROOMS = ("craft", "project", "plan", "session", "language", "store", "report")
IN_CI = ("craft", "language")
"""Rooms whose tests are short enough to be run twice: half a minute of processor time each."""
SLACK = 2
"""How far below its floor a file may be, since a line more in the file moves its share too. Unit: points of per cent."""
LEAST_OF_NEW = 85
"""The floor of a file that has no row yet. Unit: per cent."""
EXHAUSTIVE = (
    "for_every_pair_up_to_400",
    "common_divisor_is_its_reduced_pair",
    "follow_the_floor_oracle",
    "evenly_mixed_stands_where_it_always_stood",
    "no_manner_is_said_in_fewer_words",
    "in_the_round_no_phrase_of_any_order",
    "keeps_what_is_promised",
    "equal_sections_are_halved",
    "no_arrangement_at_all",
    "as_an_outside_library_says",
    "librarys_own_wording",
    "stands_for_two_numbers",
    "numerals_are_understood",
    "digits_say_the_numeral",
    "talk_in_the_room",
    "beside_another_without_a_pause",
    "true_day_is_in_the_range",
    "loses_least_time",
    "survives_a_kill_at_any_moment",
    "of_single_damages",
)
"""Words of the names of tests that are left out here."""
LONG = (
    "heard_as_meant_and_measured",
    "avoiding_is_the_best_of_all",
    "agrees_with",
    "light_is_encoded",
    "another_pair_vanish",
    "counts_lie_between",
    "any_ends_is_shorter",
    "in_a_narrow_window_no_phrase",
    "few_gaps_none_is_shorter",
    "every_set_of_forbidden_places",
    "smallest_of_all_half_steps",
    "rounds_of_all_sizes_are_said",
    "rounds_of_many_changes_are_said",
    "(longer_than_ten_seconds and (switchback or cardigan or socks or mittens))",
    "solves_the_prediction_interval",
    "holds_eight_finishes",
    "no_short_phrase_stays_near",
    "(of_all_phrases_in_any_window and not 20)",
    "no_strategy_counts_fewer",
    "promised_are_those_that_are_counted",
    "no_stronger_colour",
    "lightness",
    # what asks a library that is loaded nowhere else in the room: in a new environment that takes ten seconds each
    "agree_with_scikit_image",
    "hues_agree",
    "a_motif_vanishes",
    "of_student",
    "interval_of_weeks",
)
"""Tests, by words of their names, that take long under a tracer and reach no line that others do not, left out besides."""


def reached(room: str) -> dict[str, float]:
    """Return the share of lines of each file of a room that the room's tests reach. Unit: per cent."""
    with tempfile.TemporaryDirectory() as folder:
        data = Path(folder) / "coverage"
        environment = {**os.environ, "COVERAGE_FILE": str(data), "PYTHONDONTWRITEBYTECODE": "1"}
        run = [sys.executable, "-m", "coverage"]
        subprocess.run(
            [*run, "run", f"--include={ROOT}/stepper/{room}/*", "-m", "tests.bench.coverage_floor", "--inside", room],
            cwd=ROOT,
            env=environment,
            check=True,
        )
        report = Path(folder) / "report.json"
        subprocess.run(
            [*run, "json", "-q", "-o", report, f"--include={ROOT}/stepper/{room}/*"], cwd=ROOT, env=environment, check=True
        )
        files = json.loads(report.read_text(encoding="utf-8"))["files"]
    found = {Path(name).as_posix(): each["summary"]["percent_covered"] for name, each in files.items()}
    # What no test so much as loads is not in the report at all.
    every = [path.relative_to(ROOT).as_posix() for path in sorted((ROOT / "stepper" / room).rglob("*.py"))]
    return {name: found.get(name, 0.0) for name in every if not name.endswith("__init__.py")}


def floors(table: Path = TABLE) -> dict[str, int]:
    """Return the floor of each file. Unit: per cent."""
    rows = [line.split() for line in table.read_text(encoding="utf-8").splitlines() if line and line[0] != "#"]
    return {name: int(share) for name, share in rows}


def below(found: dict[str, float], least: dict[str, int]) -> list[str]:
    """List what is below its floor or has none, a sentence each."""
    told = []
    for name, share in found.items():
        floor = least[name] - SLACK if name in least else LEAST_OF_NEW
        if share < floor:
            told.append(f"{name}: {share:.1f} % of its lines reached, {floor} % at least")
    return told


def _inside(room: str) -> int:
    """Run the tests of a room in this process, which is being watched."""
    left_out = " and ".join(f"not {each}" for each in (*EXHAUSTIVE, *LONG))
    words = ["-q", "-x", "-p", "no:cacheprovider", "--hypothesis-profile=short", "-m", "not sound", "-k", left_out]
    return int(pytest.main([*words, f"tests/{room}"]))


def _keep(found: dict[str, float], least: dict[str, int]) -> None:
    kept = {**least, **{name: max(least.get(name, 0), int(share)) for name, share in found.items()}}
    kept = {name: share for name, share in kept.items() if (ROOT / name).exists()}
    head = [line for line in TABLE.read_text(encoding="utf-8").splitlines() if line.startswith("#")]
    TABLE.write_text("\n".join([*head, *(f"{name} {kept[name]}" for name in sorted(kept))]) + "\n", encoding="utf-8")


def main() -> int:
    """Compare, or keep.

    Returns:
        Exit code: 1 where a file is below its floor.
    """
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("rooms", nargs="*", metavar="ROOM", help="all where none is named")
    parser.add_argument("--keep", action="store_true", help="raise the floors to what was reached")
    parser.add_argument("--ci", action="store_true", help="the rooms that CI looks at")
    parser.add_argument("--inside", help=argparse.SUPPRESS)
    args = parser.parse_args()
    if args.inside:
        return _inside(args.inside)
    # What hypothesis works out once about all letters would be traced in each room: it takes ten seconds then.
    strategies.characters(categories=["Lu"]).validate()
    found: dict[str, float] = {}
    with ThreadPoolExecutor(max_workers=os.cpu_count()) as side_by_side:
        for each in side_by_side.map(reached, args.rooms or (IN_CI if args.ci else ROOMS)):
            found |= each
    if args.keep:
        _keep(found, floors())
        return 0
    told = below(found, floors())
    print("\n".join(told) or f"{len(found)} files, none below its floor")
    return 1 if told else 0


if __name__ == "__main__":
    sys.exit(main())
