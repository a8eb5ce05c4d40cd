"""Each question is answered at places all over each garment as it was agreed on.

The texts in `agreed/` hold what is said where it is not what was said at the place before. Whether an answer is right is judged beside
this, by hand and by second reckonings; here nothing changes unseen. Where one differs, it is read before it is kept:
`STEPPER_WRITE_GOLDENS=1`.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.agreed import compare
from tests.agreed_sitting import Sitting

HERE = Path(__file__).parent / "agreed"
QUESTIONS = (HERE / "questions.txt").read_text(encoding="utf-8").splitlines()
GARMENTS = ("cardigan", "shawl", "socks", "switchback")
PLACES = 4
"""Places of a garment at which everything is asked, evenly over it."""


def heard(sitting: Sitting, said: str) -> str:
    """Return what is told when something is said, without what it makes of the state."""
    begin = len(sitting.lines)
    sitting.hear(said)
    return " / ".join(line for line in sitting.lines[begin + 1 :] if not line.startswith("~"))


@pytest.mark.parametrize("garment", GARMENTS)
def test_questions_are_answered_as_agreed(garment: str) -> None:
    """She asks where she is; nobody sees that she was told the round before."""
    sitting, rows = Sitting(garment), []
    said: dict[str, str] = {}
    plan = sitting.session.plan
    for number in range(PLACES):
        round_ = plan.rounds[(2 * number + 1) * len(plan.rounds) // (2 * PLACES)]
        heard(sitting, f"go to {round_.section} round {round_.number}")
        moved = [heard(sitting, word) for word in ("done", "next", "count 3", "no", "cancel")]
        rows.append(f"== {round_.section} round {round_.number}: {moved[0]}")
        for question in QUESTIONS:
            answer = heard(sitting, question)
            if answer != said.get(question):
                rows.append(f"{question}? {answer}")
            said[question] = answer
    compare(HERE / f"{garment}.txt", rows)


def test_no_text_is_left_over() -> None:
    """What nobody asks any more must not be kept as if it were agreed on."""
    assert {path.stem for path in HERE.glob("*.txt")} == {*GARMENTS, "questions"}
