"""How far pasted pages can be knitted as they are, and how many answers they take to their end.

    python -m tests.bench.as_far FOLDER_OF_PAGES [SIZE_FROM_0]

Each page is pasted and its size chosen; then it is gone through as a sitting does it. At each row that is not read
what is proposed is taken. Where nothing is proposed it is answered as a knitter would who has the page's numbers and
no others: of a row that is asked stretch by stretch, a number that the words print behind "bind off", "cast on" or in
front of "on a holder" is said where such stitches are asked of, half of the stitches where the words say none, and yes
to what is proposed as left over; a row whose words turn did not end at its end; what lies beyond the turn waits where
the words put stitches on hold. Of any other row one round is said, with the count that its words print, else as many
stitches as before. What is refused is answered again as what she knitted. Sizes and what stands in front of the
pattern are taken as they are. None of this need be what the page means: so what is counted is how many answers there are
and how the pages come through, not whether the garment is right.
"""

from __future__ import annotations

import re
import shutil
import sys
import tempfile
from collections import Counter
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

from stepper.errors import StepperError
from stepper.plan.model import OpenKind, OpenRow, PartKind
from stepper.project.page.file_text import write_file
from stepper.project.page.marks import find_standing_marks
from stepper.project.page.pasted import take_apart
from stepper.project.page.unread.kept_rows import put_in_row, take_mark_off
from stepper.project.page.unread.left_open import LeftKind, find_left_open
from stepper.project.page.unread.proposals import printed_count
from stepper.session.open_row.by_parts import NUMBERS, Ask, question_of
from stepper.session.state import OpenAnswer, OpenWork, PartAnswer
from stepper.settling.in_sitting import OpenRows
from stepper.sitting.project_file import LoadedProject, find_in_the_way, load_as_far

MOST_ANSWERS = 80


def settle_front(text: str) -> tuple[str, int]:
    """Take what stands in front as Enter does, and a length as 20 cm; return the text and how many things that were."""
    many = 0
    while True:
        left = [each for each in find_left_open(text) if each.kind is not LeftKind.ROW]
        if not left and "\nsizes:" not in text:
            text = re.sub(r"^(?=knit:|yarn:|gauge:|sections:)", "sizes: one\n", text, count=1, flags=re.M)
        if not left:
            return text, many
        if "how long do you want it" in left[0].why:
            text = put_in_row(text, left[0].first, r":\s*(?=#)", ": 20 cm  ")
        text, many = take_mark_off(text, left[0].first), many + 1


def _number(printed: str) -> int:
    """Return the first number of what is printed; 0 for none."""
    found = re.search(r"\d+", printed)
    return int(found[0]) if found is not None else 0


_PRINTED = {
    Ask.OFF: r"\b(?:(?:bind|cast)(?:ing)?\s+off|BO)\b\D{0,30}(\d+)",
    Ask.ON: r"\b(?:cast(?:ing)?\s+on|CO)\b\D{0,20}(\d+)",
    Ask.HELD: r"(\d+)[^.;]{0,60}\b(?:hold(?:er)?|waste|spare|thread)",
}


def _come(words: str) -> int:
    """Return how many stitches come onto the needles by some words; 0 where they print none."""
    found = re.search(r"\b(?:cast(?:ing)?\s+on|CO|pick(?:ing)?\s+up)\b\D{0,60}(\d+)", words, re.I)
    return int(found[1]) if found is not None else _number(printed_count(words))


def _worked(row: OpenRow, *, first: bool) -> int:
    """Return how many stitches the words work before the first that come or go, or behind those."""
    broken = re.search("|".join(_PRINTED.values()), row.words, re.I)
    at = broken.start() if broken is not None else len(row.words)
    part = row.words[:at] if first else row.words[at:]
    numbers = [int(each) for each in re.findall(r"\b(?:k|p|knit|purl|work)\s*(\d+)", part, re.I)]
    if first:
        return sum(numbers) if numbers or broken is None or len(part.split()) < 3 else row.stitches // 4
    return numbers[0] if numbers else row.stitches // 4


def answer_by_parts(row: OpenRow) -> tuple[OpenAnswer, int]:
    """Answer what is asked of the stitches of a row; return that and how many answers it took."""
    work, again = OpenWork(declined=True), re.search(r"\brep(?:eat)?\b|\btwice\b|\bonce more\b", row.words, re.I)
    printed = {ask: [int(each) for each in re.findall(told, row.words, re.I)] for ask, told in _PRINTED.items()}
    while True:
        question = question_of(row, work)
        assert question is not None  # it is asked so
        if question.answer is not None or len(work.answers) > MOST_ANSWERS:
            return question.answer or OpenAnswer(kind=OpenKind.IDLE), len(work.answers)
        ask, number = question.ask, None
        yes = ask not in (Ask.TO_END, Ask.WAIT, Ask.ROUND)
        if ask is Ask.WAIT:
            yes = PartKind.HELD in row.by_parts
        if ask is Ask.ROUND:
            yes = re.search(r"\bjoin|\br(?:ou)?nds?\b", row.words, re.I) is not None
        if question.ask in NUMBERS:
            left = printed.get(ask, [])
            none = 0 if ask in _PRINTED or ask is Ask.COME else max(1, question.most // 2)
            number = left.pop(0) if left else none
            if ask is Ask.COME:
                number = _come(row.words)
            number = min(max(number, question.least), question.most)
        if ask is Ask.REST and again is not None:
            yes, again = False, None
            printed = {key: [int(each) for each in re.findall(told, row.words, re.I)] for key, told in _PRINTED.items()}
        if ask in (Ask.BEFORE, Ask.MORE):
            number = min(question.most, _worked(row, first=ask is Ask.BEFORE))
        if ask is Ask.MADE:
            number = max(1, row.stitches // 2)
        work = replace(work, answers=(*work.answers, PartAnswer(number=number, yes=yes and number is None)))


def _answers(row: OpenRow, answers: Counter[str]) -> Iterator[tuple[OpenAnswer, str]]:
    """Yield what she answers of a row, each with its kind: what is proposed; if that is refused, what she knitted."""
    if row.proposed is not None:
        yield OpenAnswer(kind=row.proposed.kind), row.proposed.kind.value
        row = replace(row, proposed=None)
    if row.is_asked_by_parts:
        answer, said = answer_by_parts(row)
        answers["asked of its stitches"] += said
        yield answer, f"{answer.kind.value} by parts"
    else:
        count = _number(printed_count(row.words)) or row.stitches
        yield OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=count), "counted"
    yield OpenAnswer(kind=OpenKind.IDLE), "idle for want of another"


def go_through(path: Path) -> tuple[Counter[str], int, int, str]:
    """Answer each open row; return the answers by kind, the rounds at first and at last, and how it ended."""
    answers: Counter[str] = Counter()
    loaded = load_as_far(path)
    if loaded is None:
        keeps = find_in_the_way(path)
        return answers, -1, 0, f"not begun: {keeps.message[:90] if keeps is not None else 'a line that fits nowhere'}"
    begun = len(loaded.plan.rounds)
    rows = OpenRows(loaded)
    while rows.loaded.plan.open is not None and answers.total() < MOST_ANSWERS:
        row = rows.loaded.plan.open
        if row.trouble and row.proposed is None:
            answers["keyboard"] += 1
            return answers, begun, len(rows.loaded.plan.rounds), f"keyboard: {row.words[:90]}"
        outcome: LoadedProject | str = ""
        kind = ""
        for answer, kind in _answers(row, answers):
            outcome = rows.settle(answer)
            if not isinstance(outcome, str):
                break
            answers[f"{kind} refused"] += 1
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
        path.write_text(text, encoding="utf-8")
        marks = len(find_standing_marks(text))
        try:
            answers, first, last, end = go_through(path)
        except StepperError as error:
            answers, first, last, end = Counter(), -1, 0, f"error: {str(error)[:90]}"
        begun += first >= 0
        ended += end == "to its end"
        total += answers
        kinds = ", ".join(f"{kind} {many}" for kind, many in answers.most_common())
        print(f"{page.name}: front {front}, rows open {marks}; {first} rounds, then {last} with {answers.total()} answers ({kinds}); {end}")
    print(f"{begun} of {len(pages)} can be begun, {ended} come to their end; answers: {dict(total.most_common())}")
    shutil.rmtree(work)


if __name__ == "__main__":
    main()
