"""Random edits between two sittings: how many places are carried over, asked for, and wrong in silence.

`python -m tests.bench.edits` makes 1,000 edits over all samples; a number behind it makes so many, a second
one begins with another seed.
"""

from __future__ import annotations

import random
import sys
from collections import Counter

from stepper.plan.under_way.carry import carry
from stepper.plan.model import Plan
from tests.edits import EDITS, SAMPLES, edited, plan_of, wrong_in_silence

PLACES = 4
"""Places tried in each edited file: random ones, half of them inside a round."""


def run(edits: int, seed: int = 0, *, told: bool = False) -> tuple[dict[str, Counter[str]], list[str]]:
    """Edit and judge.

    Args:
        edits: How many.
        seed: Which.
        told: Whether to print how far it has come.

    Returns:
        For each kind of edit how many places were sure, asked for, and wrong; and what was wrong.
    """
    chance = random.Random(f"edits {seed}")
    plans: dict[str, Plan] = {}
    for name, text in SAMPLES.items():
        plan = plan_of(text)
        assert plan is not None
        plans[name] = plan
    found: dict[str, Counter[str]] = {kind: Counter() for kind in EDITS}
    wrong: list[str] = []
    for number in range(edits):
        if told and number % 100 == 99:
            print(number + 1, sum(found.values(), Counter()), *wrong, sep="\n  ", flush=True)
        name = list(SAMPLES)[number % len(SAMPLES)]
        old, new = plans[name], edited(SAMPLES[name], chance)
        for _ in range(PLACES):
            index = chance.randrange(len(old.rounds))
            stitch = chance.choice((0, chance.randrange(max(1, old.rounds[index].progress))))
            carried = carry(old, new.plan, index=index, stitch=stitch)
            if carried.choices:
                found[new.kind]["asked"] += 1
                continue
            found[new.kind]["sure"] += 1
            why = wrong_in_silence(old, new, index, carried.index)
            if stitch and not why and carried.stitch != stitch:
                why = f"{stitch} stitches worked, on at {carried.stitch}"
            if why:
                found[new.kind]["wrong"] += 1
                wrong.append(f"{name}, {new.kind}, place {index}/{stitch} -> {carried.index}: {why}")
    return found, wrong


def main() -> None:
    """Print the figures."""
    edits = int(sys.argv[1]) if len(sys.argv) > 1 else 1000
    found, wrong = run(edits, int(sys.argv[2]) if len(sys.argv) > 2 else 0, told=True)
    for kind, counts in found.items():
        print(f"{kind:20} sure {counts['sure']:5}  asked {counts['asked']:5}  wrong {counts['wrong']:3}")
    total = sum(found.values(), Counter())
    print(f"{edits} edits, {total['sure'] + total['asked']} places: {dict(total)}")
    for each in wrong[:20]:
        print(each)


if __name__ == "__main__":
    main()
