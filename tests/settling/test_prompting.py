"""Questions of one line: what Enter takes, and the words that answer none."""

from __future__ import annotations

import pytest

from stepper.settling.prompting import (
    BackAsked,
    LaterAsked,
    StopAsked,
    ask,
    ask_read,
    ask_right,
    ask_yes,
    can_ask,
    read_line,
    turn_away,
)
from tests.settling.typed import type_answers


def test_enter_takes_what_stands_in_brackets(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    """And nothing where nothing stands there."""
    type_answers(monkeypatch, "", "", "  12   rows ")
    assert ask("How many?", "9") == "9"
    assert ask("How many?") == "12 rows"
    told = " ".join(capsys.readouterr().out.split())
    assert told == "How many? [9] How many? Please answer, or leave it open: later. Enter once more leaves it open too. How many?"


def test_enter_twice_where_nothing_stands_in_brackets_leaves_it_open(monkeypatch: pytest.MonkeyPatch) -> None:
    """The same sentence came without end."""
    type_answers(monkeypatch, "", "")
    with pytest.raises(LaterAsked):
        ask("How many?")


@pytest.mark.parametrize(
    ("word", "asked"),
    [("later", LaterAsked), ("L", LaterAsked), ("back", BackAsked), ("Stop", StopAsked), ("q", StopAsked)],
)
def test_some_words_answer_no_question(word: str, asked: type[Exception], monkeypatch: pytest.MonkeyPatch) -> None:
    """They mean the same wherever something is asked."""
    type_answers(monkeypatch, word)
    with pytest.raises(asked):
        ask("How many?", "9")
    with pytest.raises(asked):
        turn_away(word)
    turn_away("backwards")


def test_the_end_of_the_input_stops(monkeypatch: pytest.MonkeyPatch) -> None:
    """Nobody is there any more."""
    type_answers(monkeypatch)
    with pytest.raises(StopAsked):
        read_line("> ")


def test_an_answer_that_will_not_do_is_asked_again(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    """With what is wrong with it."""
    type_answers(monkeypatch, "maybe", "NO", "perhaps", "")
    assert not ask_yes("Now?")
    assert "Answer yes or no." in capsys.readouterr().out
    ask_right("Right?")
    assert "Answer yes or later." in capsys.readouterr().out


def test_an_answer_is_returned_as_it_is_read(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    """Nobody has to read it a second time."""
    type_answers(monkeypatch, "none", "")
    assert ask_read("How many?", "7", lambda said: int(said) if said.isdecimal() else "In figures.") == 7
    assert capsys.readouterr().out == "How many? [7] In figures.\nHow many? [7] "


def test_without_a_terminal_nobody_can_answer(monkeypatch: pytest.MonkeyPatch) -> None:
    """A script must not wait for ever, nor take what nobody read."""
    type_answers(monkeypatch, "yes")
    assert not can_ask()
