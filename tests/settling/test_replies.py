"""The one question about a row: what can be answered to it. All rows are invented."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from stepper.project.page.unread.left_open import find_left_open
from stepper.project.page.unread.proposals import Kept
from stepper.settling.file_in_hand import take_in_hand
from stepper.settling.number_questions import CountAnswer, NumberQuestions, RowNumbers
from stepper.settling.part_questions import row_by_parts
from stepper.settling.replies import HELP, Reply, ask_kind
from stepper.settling.rows_asked import look_at
from tests.settling.test_row_questions import file_with
from tests.settling.typed import type_answers


def reply_to(words: str, said: str = "", sizes: str = "S (M, L)") -> Reply:
    """Ask what a row of the hat is."""
    text = file_with(words).replace("S (M, L)", sizes).replace("size: M", f"size: {re.split('[(,]', sizes)[1]}")
    asked = look_at(find_left_open(text)[0], text)
    file = take_in_hand(text, Path())
    return ask_kind(
        asked,
        NumberQuestions(proposal=asked.proposal, before=asked.so_far.stitches, file=file, words=words, flat=False),
        said,
    )


@pytest.mark.parametrize(
    ("answer", "reply"),
    [
        ("note all", Reply(kept=Kept.NOTE, below=True)),
        ("o", Reply(kept=Kept.OUT)),
        ("hold 8 for thumb", Reply(kept=Kept.HOLD, moved="8 for thumb")),
        ("Again right paw 1-2", Reply(kept=Kept.AGAIN, moved="right paw 1-2")),
        ("k2 => p2", Reply(kept=Kept.ANEW, change="k2 => p2")),
        ("1 round, same", Reply(kept=Kept.ROWS, numbers=RowNumbers(rows="1", count=CountAnswer()))),
        ("", Reply(kept=Kept.ROWS, numbers=RowNumbers(rows="1", count=CountAnswer()))),
    ],
)
def test_one_answer_says_all(answer: str, reply: Reply, monkeypatch: pytest.MonkeyPatch) -> None:
    """What it leaves out is asked for afterwards."""
    type_answers(monkeypatch, answer)
    assert reply_to("Twirl k2 in loops.") == reply


@pytest.mark.parametrize(
    ("words", "shown"),
    [
        ("Twirl k2 in loops.", "[1 round, then 44 sts as before]"),
        ("Twirl k2 in loops until it is long.", "[rows]"),
        ("Dec 2 in loops.", "[rows]"),
        ("Place 8 (9, 10) sts on a holder for thumb.", "[hold 8 (9, 10) for thumb, then the rest]"),
        ("Place 8 (9, 10) sts on a holder. 32 (35, 38) sts.", "[hold 8 (9, 10), then 32 (35, 38) sts as printed]"),
        ("Place 8 (9, 10) sts on a holder, K2 tog, twirl.", "[hold 8 (9, 10), then how many sts]"),
        ("Rnd 4: Twirl k2.", "[1 round, then 44 sts as before]"),
        ("Graft the sts tog.", "[bind off all sts]"),
        ("It is soft.", "[note]"),
    ],
)
def test_what_enter_takes_stands_in_brackets(
    words: str, shown: str, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Nothing is taken that is not said there."""
    type_answers(monkeypatch, "note")
    reply_to(words)
    assert shown in capsys.readouterr().out


@pytest.mark.parametrize(
    ("words", "shown"),
    [
        ("This round is all there is to do until the cosy is 11 in.", ""),
        ("Tie wool to the far edge of the other 6 sts and work the same.", ""),
        ("Patch 2: PUK 18 down patch 1, cast on 19.", ""),
        ("Rd 13 as 9, 15 as 7, 17 as 5.", ""),
        ("The lid carries an 8-st panel.", "note"),
        ("Put a thread at the start.", ""),
        ("Now it measures 27 / 30 / 33 cm.", ""),
        ("These 8 rnds set the loops, and give a rope.", ""),
        ("In the last of them decrease 4 sts evenly = 40 (44, 48) sts.", ""),
        ("1st row (W.S.): p 30, turn.", ""),
        ("Next row: Twirl k2 in loops to end, turn.", ""),
        ("Repeat these 2 rnds until 2 sts are left.", "rows"),
        ("Repeat these six rnds until there are seven patterns.", "rows"),
        ("Rib, knit 2 and purl 1, for 3 inches. Knit three rounds plain.", "rows"),
        ("1st round. Knit 4, knit 2 together, and repeat; six narrowings.", "rows"),
        ("Knit in loops, k8, s2kp, k8. → 43", "rows"),
        ("Rnd 2: loops, k8, s2kp, k8. → 42 sts", "1 round, then 42 sts as printed"),
        ("Set-up: k1, m1, loops. 3 gusset sts.", "rows"),
        ("Knit on till the lid is 4 in. less than wanted.", "rows"),
    ],
)
def test_what_is_not_sure_stands_in_no_bracket(
    words: str, shown: str, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Enter takes a proposal without a thought: where it may be wrong she is asked, and says it."""
    type_answers(monkeypatch, "note")
    text = file_with(words)
    asked = look_at(find_left_open(text)[0], text)
    file = take_in_hand(text, Path())
    numbers = NumberQuestions(
        proposal=asked.proposal, before=asked.so_far.stitches, file=file, words=words, flat=False
    )
    ask_kind(asked, numbers, by_parts=row_by_parts(asked) is not None)
    asks = capsys.readouterr().out.split("What is it? ")[1]
    assert asks == (f"[{shown}] " if shown else "")


def test_a_length_is_no_number_of_times() -> None:
    """ "Rep these 2 rows until it measures 10 ins" was proposed as 20 rows."""
    found = reply_to("Rep these 2 rnds until cosy measures 3¾ ins.", "84 sts", sizes="S (M, L)")
    assert found.numbers is not None
    assert found.numbers.rows == "until cosy measures 3¾ ins"


def test_a_row_for_the_other_side_is_not_proposed(capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch) -> None:
    """A row above is missing then, or one too many: worked here, all its shaping came on the other edge."""
    for side, shown in (("W.S.", "What is it? "), ("R.S.", "What is it? [1 row, then 44 sts as before] ")):
        text = file_with(f"Next row ({side}): twirl k2 in loops.").replace("Join in the round", "Work flat")
        asked = look_at(find_left_open(text)[0], text)
        type_answers(monkeypatch, "note")
        file = take_in_hand(text, Path())
        ask_kind(asked, NumberQuestions(proposal=asked.proposal, before=44, file=file, words=asked.left.text, flat=True))
        assert capsys.readouterr().out == shown


def test_what_can_be_answered_is_told(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    """By a question mark, and by an answer that is none."""
    type_answers(monkeypatch, "?", "knot", "rows all", "n")
    reply_to("Twirl k2 in loops.")
    shown = capsys.readouterr().out
    assert all(line in shown for line in HELP)
    assert shown.count("? tells them all.") == 2


def test_what_was_answered_already_is_not_asked_for(monkeypatch: pytest.MonkeyPatch) -> None:
    """It was said to the question before."""
    type_answers(monkeypatch)
    assert reply_to("Twirl k2 in loops.", "note").kept is Kept.NOTE


@pytest.mark.parametrize(
    ("words", "shown"),
    [
        ("Large only: *twirl k2* around. Knit 1 round.", "[out]"),
        ("Large starts here: *twirl k2* around. Knit 1 round.", "[later]"),
        ("Small starts here: *twirl k2* around.", "[1 round, then 44 sts as before]"),
    ],
)
def test_what_is_headed_by_another_size_is_nothing_for_her(
    words: str, shown: str, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Enter would put rows of somebody else's hat into hers; but where another size begins, hers may go on."""
    type_answers(monkeypatch, "note")
    reply_to(words, sizes="Child (Small, Large)")
    assert shown in capsys.readouterr().out
