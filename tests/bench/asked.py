"""What she asks, and what she is told: every question of the tests with its answer, and the shares. No judgement.

    python -m tests.bench.asked [--aloud]

The questions are those of `tests/test_questions.py`, `tests/test_asked_in_the_round.py`, `tests/test_asked_afresh.py` and
`tests/test_asked_in_other_words.py`, written before the answers were built. `--aloud` asks them as they are heard, where only a question may be nearly right, in place of typed.
"""

from __future__ import annotations

import argparse

from stepper.language.understanding.understand import NotUnderstood, understand
from stepper.session.cues import Asks, Cue
from tests import test_asked_afresh, test_asked_in_other_words, test_asked_in_the_round, test_questions
from tests.playbook import AT, tell


def main() -> None:
    """Print questions, answers and shares."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--aloud", action="store_true")
    options = parser.parse_args()
    nearly = Asks if options.aloud else Cue
    sets = (
        ("first", test_questions.ROWS),
        ("second", test_asked_in_the_round.ROWS),
        ("third", test_asked_afresh.ROWS),
        ("fourth", test_asked_in_other_words.ROWS),
    )
    for name, rows in sets:
        refused = 0
        for place, said, *_ in rows:
            session = test_questions.session_at(place)
            cue = understand(said, session.plan, at=AT, nearly=nearly)
            if isinstance(cue, NotUnderstood):
                refused += 1
                answer = cue.sentence
            else:
                answer = " ".join(tell(session, session.consider(cue)))
            print(f"{place:9} {said}\n          {answer}")
        print(f"{name} set: {len(rows) - refused} of {len(rows)} answered\n")


if __name__ == "__main__":
    main()
