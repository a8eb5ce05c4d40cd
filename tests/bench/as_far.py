"""How far pasted pages can be knitted as they are, and how many answers they take to their end.

    python -m tests.bench.as_far FOLDER_OF_PAGES [SIZE_FROM_0]

Each page is pasted and its size chosen; then it is gone through as a sitting does it. At each row that is not read
what is proposed is taken; where nothing is proposed one round with as many stitches as before is said, which may not be
what the page means: so what is counted is how many answers there are and how the pages come through, not whether
the garment is right.
"""

from __future__ import annotations

import re
import shutil
import sys
import tempfile
from collections import Counter
from contextlib import redirect_stdout
from io import StringIO
from pathlib import Path

from stepper.errors import StepperError
from stepper.plan.model import OpenKind
from stepper.project.page.file_text import write_file
from stepper.project.page.marks import find_standing_marks
from stepper.project.page.pasted import take_apart
from stepper.project.page.unread.kept_rows import take_mark_off
from stepper.project.page.unread.left_open import LeftKind, find_left_open
from stepper.session.state import OpenAnswer
from stepper.settling.in_sitting import OpenRows
from stepper.settling.walk import Settling
from stepper.sitting.project_file import load_as_far

MOST_ANSWERS = 80


def settle_front(text: str) -> tuple[str, int]:
    """Take what stands in front as it is; return the text and how many things that were."""
    many = 0
    while True:
        left = [each for each in find_left_open(text) if each.kind is not LeftKind.ROW]
        if not left:
            return text, many
        text, many = take_mark_off(text, left[0].first), many + 1


def go_through(path: Path) -> tuple[Counter[str], int, int, str]:
    """Answer each open row; return the answers by kind, the rounds at first and at last, and how it ended."""
    answers: Counter[str] = Counter()
    loaded = load_as_far(path)
    if loaded is None:  # at the keyboard, before the first round: Enter takes what is proposed
        sys.stdin = StringIO("\n" * 40)
        with redirect_stdout(StringIO()):
            settling = Settling(path=path, to_begin=True)
            settling.run()
        answers["first"] = settling.answered
        loaded = load_as_far(path)
    if loaded is None:
        return answers, 0, 0, "not begun"
    begun = len(loaded.plan.rounds)
    rows = OpenRows(loaded)
    while rows.loaded.plan.open is not None and answers.total() < MOST_ANSWERS:
        row = rows.loaded.plan.open
        if row.trouble and row.proposed is None:
            answers["keyboard"] += 1
            return answers, begun, len(rows.loaded.plan.rounds), f"keyboard: {row.words[:90]}"
        before = rows.loaded.plan.count_before(len(rows.loaded.plan.rounds))
        answer = (
            OpenAnswer(kind=row.proposed.kind)
            if row.proposed is not None
            else OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=before)
            if before
            else OpenAnswer(kind=OpenKind.IDLE)
        )
        outcome = rows.settle(answer)
        kind = "counted" if row.proposed is None else row.proposed.kind.value
        if isinstance(outcome, str):
            outcome = rows.settle(OpenAnswer(kind=OpenKind.IDLE))
            kind = f"{kind} refused"
            if isinstance(outcome, str):
                return answers, begun, len(rows.loaded.plan.rounds), f"refused: {row.words[:60]} {outcome[:90]}"
        answers[kind] += 1
    return answers, begun, len(rows.loaded.plan.rounds), "to its end" if rows.loaded.plan.open is None else "endless"


def main() -> None:
    """Go through every page of a folder."""
    folder = Path(sys.argv[1])
    begun = ended = 0
    total: Counter[str] = Counter()
    pages = sorted(folder.glob("*.txt"))
    work = Path(tempfile.mkdtemp())
    for page in pages:
        path = work / f"{page.stem}.yaml"
        text, front = settle_front(write_file(take_apart(page.read_text(encoding="utf-8"))).text)
        if "sizes:" not in text:
            text = re.sub(r"^knit:", "sizes: one\nknit:", text, count=1, flags=re.M)
        path.write_text(text, encoding="utf-8")
        marks = len(find_standing_marks(text))
        try:
            answers, first, last, end = go_through(path)
        except StepperError as error:
            answers, first, last, end = Counter(), 0, 0, f"error: {str(error)[:90]}"
        begun += first > 0
        ended += end == "to its end"
        total += answers
        kinds = ", ".join(f"{kind} {many}" for kind, many in answers.most_common())
        print(f"{page.name}: front {front}, rows open {marks}; {first} rounds, then {last} with {answers.total()} answers ({kinds}); {end}")
    print(f"{begun} of {len(pages)} can be begun, {ended} come to their end; answers: {dict(total.most_common())}")
    shutil.rmtree(work)


if __name__ == "__main__":
    main()
