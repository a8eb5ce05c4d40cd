"""What counting a stranded yoke costs and saves: the sum behind each count that is asked for.

Prints figures; fails never. `python -m tests.bench.yoke`: for each yoke among the fixtures and garments with a chart,
the rounds of it in which a count is asked for, if every count asked for is made and good, with the minutes a count
takes and the minutes of ripping and knitting again that are to be expected without it; and the most counts in
fourteen rounds. Then, for each piece with short rows, how many counts are asked for at a short row that another
follows, and at the last before all stitches are worked again.
"""

from __future__ import annotations

from pathlib import Path

from stepper.plan.model import Plan
from stepper.session.counting.count_timing import price_counting, why_count
from stepper.session.state import Knitting, Position, State, Verified
from stepper.sitting.project_file import load_project
from tests.garments import NAMES, read_garment

SAMPLES = sorted((Path(__file__).parents[1] / "fixtures").glob("*.yaml"))
WINDOW = 14


def asked_in(plan: Plan) -> list[tuple[int, str, float, float]]:
    """List the counts asked for: the round, why, the minutes it takes, the minutes expected to be lost without
    it (the chance of a fault in the stitches since the last count, times half of them knitted again)."""
    found, verified = [], Verified(place=Position(), stitches=0)
    hers = price_counting()
    for round_ in plan.rounds:
        state = State(seq=1, knitting=Knitting(place=Position(index=round_.index + 1), verified=verified))
        why = why_count(plan, state, round_.index)
        if why is None:
            continue
        since = sum(each.progress for each in plan.rounds[verified.place.index : round_.index + 1])
        ahead = since  # as much again would be knitted before the next chance to count
        lost = hers.faults_per_stitch * since * (since / 2 + ahead) * hers.redo_s / 60
        found.append((round_.index, why, round_.after * hers.count_s / 60, lost))
        verified = Verified(place=Position(index=round_.index + 1), stitches=round_.after)
    return found


def asked_in_short_rows(plan: Plan) -> tuple[int, int, int]:
    """Give how many short rows there are, after how many of them that another follows a count is asked for, and
    after how many of the others."""
    short = {each.index for each in plan.rounds if any(run.stitch in SHORT for run in each.runs)}
    asked = {index for index, *_ in asked_in(plan)} & short
    inside = sum(each + 1 in short for each in asked)
    return len(short), inside, len(asked) - inside


SHORT = ("turn", "w&t", "rest")


def main() -> None:
    """Print each stranded yoke, and each piece with short rows."""
    plans = [load_project(path).plan for path in SAMPLES] + [read_garment(name)[1] for name in NAMES]
    for plan in plans:
        stranded = {round_.section for round_ in plan.rounds if round_.chart and len(round_.floats) > 1}
        asked = [each for each in asked_in(plan) if plan.rounds[each[0]].section in stranded]
        if not asked:
            continue
        most = max(sum(first <= each[0] < first + WINDOW for each in asked) for first, *_ in asked)
        print(f"{plan.title}: {len(asked)} counts in {', '.join(sorted(stranded))}, at most {most} in {WINDOW} rounds")
        for index, why, takes, lost in asked:
            round_ = plan.rounds[index]
            print(f"  round {round_.number:3} {round_.after:4} sts  counting {takes:4.1f} min, lost without {lost:5.1f} min  {why}")
    for plan in plans:
        short, inside, ends = asked_in_short_rows(plan)
        if short:
            print(f"{plan.title}: {short} short rows, {inside} counts inside, {ends} at their end")


if __name__ == "__main__":
    main()
