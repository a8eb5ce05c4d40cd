"""What she asks, and what she is told: every question of the tests with its answer, and the shares. No judgement.

    python -m tests.bench.asked [--aloud]

The questions are those of `tests/test_questions.py` and the `tests/test_asked_*.py`, written before the answers were
built. `--aloud` asks them as they are heard, where only a question may be nearly right, in place of typed.
"""

from __future__ import annotations

import argparse

from stepper.session.cues import Asks, Cue
from tests import (
    test_asked_afresh,
    test_asked_in_other_words,
    test_asked_in_the_round,
    test_questions,
)
from tests.asking import answer_to


def main() -> None:
    """Print questions, answers and shares."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--aloud", action="store_true")
    options = parser.parse_args()
    nearly = Asks if options.aloud else Cue
    sets = (
        ("first", test_questions.ROWS),
        ("second", test_asked_in_the_round.ROWS),
        ("third", test_asked_afresh.THIRD),
        ("fourth", test_asked_in_other_words.ROWS),
        ("fifth", test_asked_afresh.FIFTH),
    )
    for name, rows in sets:
        refused = 0
        for place, said, *_ in rows:
            understood, answer = answer_to(place, said, nearly=nearly)
            refused += not understood
            print(f"{place:9} {said}\n          {answer}")
        print(f"{name} set: {len(rows) - refused} of {len(rows)} answered\n")


if __name__ == "__main__":
    main()
