from __future__ import annotations

import io

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.sitting.folding import NARROWEST, fold, print_folded, terminal_columns, write_folded


class Terminal(io.StringIO):
    """Text that goes to a terminal."""

    def isatty(self) -> bool:
        """Say so."""
        return True


WORDS = st.text(alphabet="abk2-*()é", min_size=1, max_size=15)


@given(st.lists(WORDS, min_size=1, max_size=40), st.integers(0, 12), st.integers(NARROWEST, 120))
def test_no_word_is_lost_or_broken_and_no_line_is_too_wide(words: list[str], indent: int, columns: int) -> None:
    """The terminal would break a stitch name in two; and a word left out would be a wrong instruction."""
    line = " " * indent + " ".join(words)
    folded = fold(line, columns)

    assert " ".join(folded).split() == words
    assert all(len(each) <= columns or len(each.split()) == 1 for each in folded)


@pytest.mark.parametrize(
    ("line", "folded"),
    [
        ("  count these: one two three", ["  count these: one two", "    three"]),
        ("  2-18 *k2, p2; rep from * to end", ["  2-18 *k2, p2; rep from", "       * to end"]),
        ("- Gauge, cables: 22 stitches", ["- Gauge, cables: 22", "  stitches"]),
        (">   1. size 2, then 3 from First", [">   1. size 2, then 3", "       from First"]),
        ("x" * 40, ["x" * 40]),
        ("a " + "x" * 40, ["a", "  " + "x" * 40]),
        ("", [""]),
    ],
)
def test_what_goes_on_stands_clear_of_what_it_begins_with(line: str, folded: list[str]) -> None:
    """So that a round's number, a bullet or an indentation is found by the eye."""
    assert fold(line, 24) == folded


def test_wide_letters_take_two_columns() -> None:
    """Unicode Standard Annex 11: wide characters take two columns."""
    assert fold("糸 " * 15, 20)[0] == "糸 糸 糸 糸 糸 糸 糸"


def test_colours_take_no_columns() -> None:
    """A row of a chart in colours was laid out for the terminal, and a break inside it would tear the chart."""
    row = "\x1b[48;5;22m \x1b[0m" * 20
    assert fold(row, 20) == [row]


def test_what_goes_into_a_file_is_left_as_it_is() -> None:
    """A line there is one fact, for whatever program reads it."""
    plain, terminal = io.StringIO(), Terminal()
    write_folded("word " * 40, plain)
    write_folded("word " * 40, terminal)

    assert plain.getvalue().count("\n") == 1
    assert terminal.getvalue().count("\n") > 1


def test_the_environment_says_how_wide_a_terminal_is(monkeypatch: pytest.MonkeyPatch) -> None:
    """`COLUMNS` goes first, as in POSIX; a file has no width."""
    monkeypatch.setenv("COLUMNS", "61")
    assert terminal_columns(Terminal()) == 61
    assert terminal_columns(io.StringIO()) is None


def test_a_report_keeps_its_width_in_a_file_too(capsys: pytest.CaptureFixture[str]) -> None:
    """Whoever keeps it reads it as a page; without a width lines stay whole."""
    print_folded(["word " * 40], otherwise=60)
    assert max(map(len, capsys.readouterr().out.splitlines())) <= 60
    print_folded(["word " * 40])
    assert capsys.readouterr().out.count("\n") == 1
    print_folded(["one", "two"], otherwise=20)
    assert capsys.readouterr().out == "one\ntwo\n"
