from __future__ import annotations

import unicodedata

from hypothesis import given
from hypothesis import strategies as st
from wcwidth import wcswidth, wcwidth

from stepper.screen.drawing.rows import (
    Styled,
    clean,
    cut,
    flow_facts,
    pad,
    paragraph,
    put_apart,
    put_beside,
    row,
    row_width,
    shorten,
    text_of,
    text_width,
    wrap,
    write_fact,
)
from stepper.screen.drawing.style import BOLD

WORDS = st.text(st.sampled_from("ab é漢字ｗ🧶 ́-"), max_size=40)


def test_width_is_that_of_terminals() -> None:
    """Checked against wcwidth for letters of a pattern's languages, wide ones and marks that combine."""
    for text in ("Ärmel", "袖口", "ｗｉｄｅ", "e\u0301", "abc", "Ω", "🧶"):
        assert text_width(text) == wcswidth(text), text
    for code in (*range(0x20, 0x7F), *range(0xA1, 0x250), *range(0x3040, 0x30FF), *range(0x4E00, 0x4F00)):
        # On a soft hyphen terminals do not agree; what is not assigned is in no pattern.
        if chr(code) != "\xad" and unicodedata.category(chr(code)) != "Cn":
            assert text_width(chr(code)) == max(0, wcwidth(chr(code))), hex(code)


def test_nothing_that_moves_the_cursor_gets_through() -> None:
    """A title may hold an escape sequence; the terminal must not see it."""
    assert clean("a\x1b[2Jb\nc\x07\x9b") == "a [2Jb c  "


@given(WORDS, st.integers(1, 30))
def test_wrapped_lines_fit_and_lose_no_word(text: str, columns: int) -> None:
    """Every letter is still there, in order, and no line is too wide but for a letter wider than a line."""
    lines = wrap(text, columns)

    assert "".join("".join(lines).split()) == "".join(clean(text).split())
    assert all(text_width(line) <= max(columns, 2) for line in lines)


@given(WORDS, st.integers(0, 30))
def test_cut_padded_and_shortened_keep_to_the_width(text: str, columns: int) -> None:
    """The one thing that tears a screen is a row that is too wide."""
    assert row_width(cut(row(text), columns)) <= columns
    assert row_width(pad(row(text), columns)) == columns
    assert text_width(shorten(text, columns)) <= columns


def test_shortened_says_that_something_is_missing() -> None:
    """A label cut off must not look whole."""
    assert shorten("Final increase", 8) == "Final i…"
    assert shorten("Final", 8) == "Final"


def test_rows_are_put_apart_and_beside_each_other() -> None:
    """What belongs to the right edge gives way where there is no room."""
    assert text_of(put_apart(row("left"), row("right"), 12)) == "left   right"
    assert text_of(put_apart(row("left"), row("right"), 10)) == "left"
    assert [text_of(each) for each in put_beside([row("a")], [row("x"), row("y")], at=3)] == ["a  x", "   y"]


def test_facts_flow_and_none_is_broken() -> None:
    """As many to a row as fit."""
    facts = [write_fact("Count", "60"), write_fact("Needle", "4 mm"), write_fact("Yarn", "pine joins")]

    assert [text_of(each) for each in flow_facts(facts, 24)] == ["Count 60   Needle 4 mm", "Yarn pine joins"]
    assert facts[0][1] == Styled("60", BOLD)


def test_a_paragraph_has_one_look() -> None:
    """Words in bold stay bold on every line."""
    assert {span.paint for each in paragraph("knit two purl two", 8, BOLD) for span in each} == {BOLD}
