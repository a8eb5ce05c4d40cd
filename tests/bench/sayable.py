"""Words of an even round in each manner, over pairs of counts drawn evenly, and over the samples.

Prints figures; fails never. `python -m tests.bench.sayable [pairs]`.

Pairs: 60 to 400 stitches with 2 to 50 % of them increased or decreased, seeded. Words are those spoken, numbers
in words ("knit twenty one, make one" is five); in print "(k21, m1) 6 times" is four. "floor" is the share of
pairs that no phrase at all can say in twelve spoken words, wherever it puts the changes: with gaps of two sizes each has to be
named, with how often. Seconds are those of this process.
"""

from __future__ import annotations

import random
import re
import sys
import time
from pathlib import Path

from stepper.sitting.project_file import load_project
from stepper.craft.even.manners import Manner, space_changes
from stepper.craft.even.phrases import KNIT_TOGETHER, MAKE_ONE, Repeat, SpacedStretch, print_phrase, words_in
from stepper.craft.even.sayable import shortest
from stepper.craft.stitches import stitch
from stepper.craft.window import Gaps, Window
from stepper.language.aloud import spell_out
from stepper.language.phrasing import said_items
from stepper.plan.stitches.evenly import even_places, formerly_written, usual_change
from stepper.plan.model import Plan, Round, flatten

SAMPLES = Path(__file__).parents[1] / "fixtures"
TABLE = ((200, 256), (294, 364), (175, 300), (204, 240), (225, 246), (72, 90), (128, 167), (290, 416),
         (337, 490), (120, 80), (179, 120), (260, 213), (300, 231), (100, 53))  # fmt: skip


def drawn(number: int) -> list[tuple[int, int]]:
    """Draw stitches and changes evenly."""
    dice = random.Random(60_400)
    pairs = []
    for _ in range(number):
        stitches = dice.randint(60, 400)
        pairs.append((stitches, dice.randint(-(-stitches * 2 // 100), stitches // 2)))
    return pairs


def at(values: list[float], share: float) -> float:
    """Return a quantile."""
    return sorted(values)[min(len(values) - 1, int(share * len(values)))]


def print_words(phrase: tuple, change: str) -> int:
    """Count what stands between spaces in print."""
    return len(re.sub(r"[()\[\]]", "", print_phrase(phrase, change)).split())


def stretches_in(phrase: tuple) -> int:
    """Count the gaps named: each "after ten" in place of "knit ten, make one" would save the words of the change."""
    return sum(stretches_in(part.parts) if isinstance(part, Repeat) else isinstance(part, SpacedStretch) for part in phrase)


def unbounded(stitches: int, changes: int, change: str) -> int:
    """Count the words of the shortest phrase wherever the changes go."""
    size, larger = divmod(stitches - changes * stitch(change).uses, changes)
    phrase = shortest([(Gaps(size, changes - larger, larger), Window(0, 0, 0, 0))], change)
    return words_in(phrase, change)


def as_before(before: int, after: int) -> int:
    """Count the words of the round as it was said until now: mixed, with flat repeats."""
    change = usual_change(before, after, "a")
    places = even_places(before, abs(after - before), change, flat=False, manner=Manner.MIXED)
    phrase = formerly_written(before, places, change).items
    round_ = Round.__new__(Round)
    values = {"phrase": (), "runs": tuple(flatten(phrase)), "instruction": "", "words": "", "evenly": False}
    for name, value in values.items():
        object.__setattr__(round_, name, value)
    plan = Plan.__new__(Plan)
    object.__setattr__(plan, "yarns", {"a": "a"})
    return len(spell_out(said_items(phrase, round_, plan)).split())


def main(number: int = 3000) -> None:
    """Print all tables."""
    pairs = drawn(number)
    print(f"{number} pairs: median / 95 % / most words spoken; in print; ms a pair, mean / 95 % / most")
    for flat in (False, True):
        for change in (MAKE_ONE, KNIT_TOGETHER):
            words, prints, seconds, once = [], [], [], []
            for stitches, changes in pairs:
                start = time.process_time()
                round_ = space_changes(stitches, changes, change=change, flat=flat)
                seconds.append(1000 * (time.process_time() - start))
                words.append(round_.words)
                prints.append(print_words(round_.phrase, change))
                once.append(round_.words - len(stitch(change).said.split()) * (stretches_in(round_.phrase) - 1))
            row = " / ".join(str(at(words, share)) for share in (0.5, 0.95, 1))
            short = " / ".join(str(at(prints, share)) for share in (0.5, 0.95, 1))
            ms = f"{sum(seconds) / len(seconds):.1f} / {at(seconds, 0.95):.1f} / {max(seconds):.1f}"
            print(f"  {'rows ' if flat else 'round'} {change:5}: {row}; {short}; {ms}")
            said_once = " / ".join(str(at(once, share)) for share in (0.5, 0.95, 1))
            print(f"    the same phrases with the change said once, which is not how they are said: {said_once}")
    for change in (MAKE_ONE, KNIT_TOGETHER):
        over = sum(unbounded(*pair, change) > 12 for pair in pairs)
        print(f"  floor {change}: {100 * over / number:.0f} % of pairs take more than 12 words in any order")
    was = sorted(as_before(one, one + more) for one, more in pairs[:400])
    print(f"  as before, m1 in the round, of {len(was)}: {at(was, 0.5)} / {at(was, 0.95)} / {was[-1]}")
    print(
        "\nwords spoken (seconds at 150 words a minute): as before, mixed, sayable (off, in gaps), in two runs (off)"
    )
    rows = [*TABLE]
    for before, after in rows:
        table_row(before, after)
    print("\nincrease and decrease rounds of the samples")
    for before, after in sample_rounds():
        table_row(before, after)


def table_row(before: int, after: int) -> None:
    """Print one pair."""
    change = MAKE_ONE if after > before else KNIT_TOGETHER
    mixed, sayable, runs = (
        space_changes(before, abs(after - before), change=change, flat=False, manner=manner)
        for manner in (Manner.MIXED, Manner.SAYABLE, Manner.RUNS)
    )
    print(
        f"  {before:3} to {after:3}: {timed(as_before(before, after))}, {timed(mixed.words)}, "
        f"{timed(sayable.words)} ({float(sayable.off / sayable.gap):.1f}), {runs.words:2} "
        f"({float(runs.off / runs.gap):.1f})  {print_phrase(sayable.phrase, change)}"
    )


def timed(words: int) -> str:
    """Write words with the seconds they take."""
    return f"{words:3} {words * 60 / 150:4.1f} s"


def sample_rounds() -> list[tuple[int, int]]:
    """Find the rounds of the samples that are spread evenly."""
    found = set()
    for path in sorted(SAMPLES.glob("*.yaml")):
        plan = load_project(path).plan
        found |= {
            (each.before, each.after)
            for each in plan.rounds
            if each.evenly and not each.flat and each.shaping
        }
    return sorted(found)


if __name__ == "__main__":
    main(*(int(each) for each in sys.argv[1:2]))
