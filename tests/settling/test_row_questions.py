"""One row asked about: what it is, in which form it is kept, and what is refused. All rows are invented."""

from __future__ import annotations

from pathlib import Path

import pytest

from stepper.project.page.unread.left_open import LeftKind, find_left_open, line_at
from stepper.project.page.unread.proposals import Kept
from stepper.settling.file_in_hand import take_in_hand
from stepper.settling.prompting import BackAsked, LaterAsked
from stepper.settling.row_questions import ask_front, ask_row
from stepper.settling.rows_asked import look_at
from tests.project.samples import project
from tests.settling.typed import type_answers

MARK = '# LOOK (row 9 of the text): "twirl" is not understood here.'


def file_with(*rows: str, behind: str = "Bind off.") -> str:
    """Put unread rows into a hat of 40 (44, 48) stitches in the round."""
    marked = "\n".join(f"{MARK}\nNote: {row}" for row in rows)
    return project(f"Cast on 40 (44, 48) sts.\nJoin in the round.\n{marked}\n{behind}", size="M")


def settle(text: str, number: int = 0) -> list[str]:
    """Ask about an open row; return the rows of the file that are new."""
    left = [each for each in find_left_open(text) if each.kind is LeftKind.ROW][number]
    new = ask_row(look_at(left, text), take_in_hand(text, Path()))
    rows = text.split("\n")
    others = {*rows[: left.first - 1], *rows[left.last :]}
    return [row.strip() for row in new.split("\n") if row not in others]


@pytest.mark.parametrize(
    ("words", "answers", "rows"),
    [
        ("Twirl k2 in loops.", [""], ["Own words: Twirl k2 in loops."]),
        ("Twirl k2 in loops.", ["3 rounds", "every"], ["Own words, 3 rounds: Twirl k2 in loops."]),
        ("Twirl k2 in loops.", ["r", "3", "every"], ["Own words, 3 rounds: Twirl k2 in loops."]),
        ("Twirl k2 in loops. 50 (54, 58) sts.", [""], ["Own words: Twirl k2 in loops. 50 (54, 58) sts."]),
        ("Twirl k2 in loops.", ["50 54 58 sts"], ["Own words: Twirl k2 in loops. 50 (54, 58) sts."]),
        ("Twirl k2 in loops.", ["1 row, 50 (54, 58)"], ["Own words: Twirl k2 in loops. 50 (54, 58) sts."]),
        ("Twirl k2 in loops.", ["54 sts", ""], ["knit: {size: M, only: M}", "Own words: Twirl k2 in loops. 54 sts."]),
        ("Twirl k2 for 7 cm.", [""], ["Own words, for 7 cm: Twirl k2 for 7 cm."]),
        ("Twirl k2 in loops.", ["until 7 cm, same"], ["Own words, until piece measures 7 cm: Twirl k2 in loops."]),
        ("Rnd 4: P2, loop.", [""], ["Rnd 4: Own words: P2, loop."]),
        ("Twirl by twos. 2 sts dec'd.", [""], ["Own words: Twirl by twos. 2 sts dec'd."]),
        ("Show it to her.", [""], ["Note: Show it to her."]),
        ("Show it to her.", ["out"], ["# Show it to her."]),
        ("Change to loops and knit stockinette.", ["note", "", "t", "Knit 2 rounds.", ""], ["Knit 2 rounds."]),
        ("Change to loops and knit stockinette.", ["note", "yes"], ["Note: Change to loops and knit stockinette."]),
        ("Off they go.", ["bind off"], ["Own words, bind off all sts: Off they go."]),
        ("The thumb waits.", ["hold 8 (9, 10) for thumb"], ["Own words, hold 8 (9, 10) sts for thumb: The thumb waits."]),
        ("The thumb waits.", ["h", "8 for thumb", "e"], ["Own words, hold 8 sts for thumb: The thumb waits."]),
        ("Twirl k2 in loops.", ["t", "K10, purl to end.", "Knit 2 rounds.", ""], ["K10, purl to end.", "Knit 2 rounds."]),
        ("Purl 1 rnd of loops.", ["of loops =>"], ["Purl 1 rnd."]),
        ("Purl 1 rnd of loops.", ["t", "of loops =>", ""], ["Purl 1 rnd."]),
        ("Purl 1 rnd of Loops.", ["OF loops =>"], ["Purl 1 rnd."]),
        ("Purl 1 rnd of loops.", ["of loops => of hoops", "1 rnd of loops => 1 rnd"], ["Purl 1 rnd."]),
        ("Purl 1 rnd or as many as she likes to.", ["t", "nowhere =>", "or ... to =>", ""], ["Purl 1 rnd."]),
    ],
)
def test_an_answer_becomes_a_row_that_is_read(
    words: str, answers: list[str], rows: list[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    """With as few letters as there can be."""
    type_answers(monkeypatch, *answers)
    assert settle(file_with(words)) == rows


def test_what_comes_onto_empty_needles_is_asked_for(monkeypatch: pytest.MonkeyPatch) -> None:
    """Its number is needed, its words are said."""
    text = file_with("With the thin yarn pick up and k20 round the hem, 20 sts in all.", behind="Knit 2 rounds.").replace(
        MARK, f"Bind off.\n      {MARK}"
    )
    type_answers(monkeypatch, "", "")
    assert settle(text)[-1].startswith("Own words, pick up 20 sts: With the thin yarn")


def test_rows_that_change_the_number_are_written_one_by_one(monkeypatch: pytest.MonkeyPatch) -> None:
    """The words may say two things at the same time, as the counts say what they come to."""
    text = file_with("Take off one loop each row at both ends, at the same time one at the front. 38 (42, 46) sts.")
    type_answers(monkeypatch, "r", "2", "", "43 42", "alone")
    assert settle(text) == [
        "knit: {size: M, only: M}",
        "Note: Take off one loop each row at both ends, at the same time one at the front. 38 (42, 46) sts.",
        "Own words: by the words above, row 1 of 2. 43 sts.",
        "Own words: by the words above, row 2 of 2. 42 sts.",
    ]


def test_words_that_cannot_be_kept_are_told_before_she_answers(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """What is proposed is then to be asked of its stitches; if she keeps it all the same, it is told again and asked again."""
    text = file_with("Twirl 12 loops, turn, twirl back.")
    type_answers(monkeypatch, "rows", "1 row, same", "note")
    assert settle(text) == ["Note: Twirl 12 loops, turn, twirl back."]
    shown = capsys.readouterr().out
    assert "As it stands it cannot be kept: the row is turned before its end" in shown
    assert "What is it? [parts]" in shown
    assert "It cannot be kept as rows: the row is turned before its end" in shown


def test_a_row_that_is_typed_wrong_can_be_gone_on_with(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Her own words are those to be changed then."""
    type_answers(monkeypatch, "t", "Purl 1 rnd of twirls.", "", "t", "of twirls =>", "")
    assert settle(file_with("Twirl k2 in loops.")) == ["Purl 1 rnd."]
    assert "That is not read:" in capsys.readouterr().out


def test_several_sentences_are_asked_about_one_by_one(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """They are open until then; one sentence cannot be split."""
    type_answers(monkeypatch, "s")
    rows = settle(file_with("Lay it flat. Graft the sts tog."))
    assert [row for row in rows if row.startswith("Note")] == ["Note: Lay it flat.", "Note: Graft the sts tog."]
    type_answers(monkeypatch, "split", "n")
    settle(file_with("Lay it flat."))
    assert "It is one sentence." in capsys.readouterr().out


def test_all_below_are_left_out_at_once(monkeypatch: pytest.MonkeyPatch) -> None:
    """A chart written out at the end has thirty rows."""
    type_answers(monkeypatch, "out all")
    assert settle(file_with("Loops.", "Twirls.", "Knots."), 1) == ["# Twirls.", "# Knots."]


def test_a_line_that_does_not_fit_is_left_open_by_enter(monkeypatch: pytest.MonkeyPatch) -> None:
    """A count that does not come out must not be put right by a key that she pressed too often."""
    text = project("Cast on 40 (44, 48) sts.\nK10. 12 sts.\nKnit 2 rows.\nBind off.", size="M")
    at = text.split("\n").index("      K10. 12 sts.") + 1
    line = line_at(text, at, "the line works 10 of the 44 stitches.")
    assert line is not None
    asked, file = look_at(line, text), take_in_hand(text, Path())
    assert asked.so_far.stitches == 44
    type_answers(monkeypatch, "")
    with pytest.raises(LaterAsked):
        ask_row(asked, file)
    type_answers(monkeypatch, "note all")
    assert ask_row(asked, file).count("Note:") == 3


def test_back_from_a_number_asks_what_it_is(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    """And from there the answer before; a file kept for one size in between is as it was."""
    type_answers(monkeypatch, "r", "back", "r", "7", "back", "note")
    assert settle(file_with("Twirl k2 in loops.")) == ["Note: Twirl k2 in loops."]
    assert capsys.readouterr().out.count("What is it?") == 3
    type_answers(monkeypatch, "back")
    with pytest.raises(BackAsked):
        settle(file_with("Twirl k2 in loops."))


def test_rows_of_a_stitch_pattern_are_asked_for_no_count(monkeypatch: pytest.MonkeyPatch) -> None:
    """They are worked over as many stitches as a line says."""
    text = project(f"Loop panel (10 sts):\nRow 1: P10.\n{MARK}\nNote: Row 2: P2, loops, p2.\nCast on 40 sts.", size="M")
    type_answers(monkeypatch, "")
    assert settle(text) == ["Row 2: Own words: P2, loops, p2."]


def test_text_in_front_of_the_pattern_stays_a_comment(monkeypatch: pytest.MonkeyPatch) -> None:
    """It stands before all parts, where nothing is knitted; remarks between the parts are proposed as notes."""
    text = "# LOOK (row 3 of the text): it stands in front of the pattern.\n# Loops are long.\n" + file_with("Twirl.")
    front = find_left_open(text)[0]
    type_answers(monkeypatch, "no", "")
    assert ask_front(front, take_in_hand(text, Path())) == "\n".join(text.split("\n")[1:])
    casts_on = find_left_open(text.replace("Loops are long.", "Make a ring or cast on 8 sts."))[0]
    type_answers(monkeypatch, "", "later")
    with pytest.raises(LaterAsked):  # what may be knitted is no comment by Enter
        ask_front(casts_on, take_in_hand(text, Path()))
    between = file_with("Twirl k2 all round.").replace('"twirl" is not understood here.', "this stands in front of the pattern.")
    assert look_at(find_left_open(between)[0], between).proposal.kept is Kept.NOTE


@pytest.mark.parametrize(
    ("words", "answers", "rows"),
    [
        ("Cast off 2 loops at the beginning of the next 2 twirls.", ["2 rows, 38 36", ""], 2),
        ("Twirl, binding off the 2 loops.", ["1 row, 38", "yes", ""], 1),
        ("Twirl, binding off the 2 loops.", ["1 row, 38", "no", "note"], 0),
        ("Twirl 12, turn, twirl back.", ["2 rows, 38 36", "note"], 0),
        ("Slip 3 loops to a holder, twirl.", ["2 rows, 38 36", "note"], 0),
        ("Join into a round of twirls.", ["2 rows, 38 36", "note"], 0),
    ],
)
def test_words_that_bind_off_or_turn_are_never_silently_plain_rows(
    words: str, answers: list[str], rows: int, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """However she counts them: at an edge is asked where the page does not say it, the rest is refused."""
    text = project(f"Cast on 40 (44, 48) sts.\nWork flat.\n{MARK}\nNote: {words}\nBind off.", size="M")
    type_answers(monkeypatch, *answers)
    kept = settle(text)
    assert sum(row.startswith("Own words: by the words above") for row in kept) == rows
    shown = capsys.readouterr().out
    assert ("cannot be kept as rows" in shown) == (rows == 0)
    assert ("at an edge of the piece? yes or no" in shown) == ("yes" in answers or "no" in answers)


def test_rounds_have_no_edge_to_bind_off_at(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    """A round that binds off some stitches leaves a gap, wherever it is."""
    type_answers(monkeypatch, "2 rounds, 38 36", "note")
    assert settle(file_with("Cast off 2 loops at the beginning of the next 2 twirls.")) == [
        "Note: Cast off 2 loops at the beginning of the next 2 twirls."
    ]
    assert "It cannot be kept as rows: stitches bound off leave an edge" in capsys.readouterr().out


def test_a_row_that_is_read_without_some_words_is_proposed_so(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """It is then worked out to the stitch; the words left out are said before it."""
    words = "Knit 4 rounds, which looks like a small wall."
    type_answers(monkeypatch, "")
    assert settle(file_with(words)) == ["Note: … which looks like a small wall", "Knit 4 rounds."]
    assert 'Do the words "which looks like a small wall" change anything you knit?' in capsys.readouterr().out
    type_answers(monkeypatch, "1 round, same")
    assert settle(file_with(words)) == [f"Own words: {words}"]


def test_remarks_and_an_end_are_settled_in_one_answer(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    """Sentence by sentence it would be three."""
    words = "Lay the loops flat. Graft the sts tog."
    type_answers(monkeypatch, "")
    assert settle(file_with(words, behind="")) == ["Note: Lay the loops flat.", "Own words, bind off all sts: Graft the sts tog."]
    assert "What is it? [a note, then bind off all sts]" in capsys.readouterr().out
