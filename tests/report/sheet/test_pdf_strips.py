"""Strips on sheets: nothing is lost, cut or parted from what it belongs to."""

from __future__ import annotations

from typing import Any

import pytest

pytest.importorskip("reportlab", reason="reportlab is not installed")
pytest.importorskip("font_source_sans_pro", reason="the typeface is not installed")

from hypothesis import given
from hypothesis import strategies as st

from stepper.report.sheet.pdf_strips import (
    BOLD,
    PLAIN,
    Strip,
    break_lines,
    find_missing,
    load_typeface,
    place_strips,
    wide_of,
)

load_typeface()


def nothing(canvas: Any, left: float, top: float) -> None:
    """Draw nothing."""


WORDS = st.lists(st.text("abcdefghij", min_size=1, max_size=40), max_size=30)


@given(WORDS, WORDS)
def test_lines_hold_every_word_in_order_and_fit(plain: list[str], bold: list[str]) -> None:
    """Whatever the words, however long."""
    lines = break_lines([(" ".join(plain), PLAIN), (" ".join(bold), BOLD)], 9.5, 120)
    assert "".join(word for line in lines for word, _ in line) == "".join((*plain, *bold))
    for line in lines:
        used = sum(wide_of(word, font, 9.5) for word, font in line)
        assert used <= 120.01


@given(st.lists(st.tuples(st.floats(1, 90), st.booleans()), min_size=1, max_size=40))
def test_sheets_hold_every_strip_in_order(sizes: list[tuple[float, bool]]) -> None:
    """None is taller than the sheet, none is left out, and where a whole group fits it is not parted."""
    strips = [Strip(high=high, draw=nothing, keeps=keeps) for high, keeps in sizes]
    sheets = place_strips(strips, 100)
    assert [strip for sheet in sheets for _, strip in sheet.strips] == strips
    assert all(sheet.filled <= 100.01 for sheet in sheets)


def test_a_heading_stays_with_what_follows() -> None:
    """A heading at the foot of a sheet has lost its table."""
    strips = [Strip(high=90, draw=nothing), Strip(high=8, draw=nothing, keeps=True), Strip(high=10, draw=nothing)]
    assert [len(sheet.strips) for sheet in place_strips(strips, 100)] == [1, 2]


def test_a_table_says_its_heads_again_on_the_next_sheet() -> None:
    """A column of figures without a name is a riddle."""
    head = Strip(high=5, draw=nothing)
    rows = [Strip(high=30, draw=nothing, head=head) for _ in range(5)]
    first, second = place_strips([head, *rows], 100)
    assert [strip for _, strip in first.strips] == [head, *rows[:3]]
    assert [strip for _, strip in second.strips] == [head, *rows[3:]]


def test_letters_are_looked_for_one_by_one() -> None:
    """Space and what the typeface has are not missing."""
    assert find_missing("Ёлка → ½ שלג") == "".join(sorted("שלג"))
