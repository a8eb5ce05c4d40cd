"""Values that the page does not say, asked for one by one."""

from __future__ import annotations

from pathlib import Path

import pytest

from stepper.project.page.unread.left_open import find_left_open
from stepper.settling.file_in_hand import take_in_hand
from stepper.settling.prompting import LaterAsked
from stepper.settling.value_questions import ask_needles, ask_value
from tests.settling.typed import type_answers

FILE = """\
title: Bramble hat
units: cm
sizes: 1 (2, 3)  # LOOK: the text names no sizes; numbered by its lists
knit:
  size: 1  # LOOK: which size do you knit?
yarn:
  MC: {name: main yarn, skein: {grams: 50, metres: 175}}  # LOOK: no yarn was found in the text
gauge:
  plain: {needle: 4 mm, stitches: 22, rounds: 30}  # LOOK: the text gives no rows; these are made up; the text does not say on which of its needles
lengths:
  foot:  # LOOK: how long do you want it? Write it here, as 24 cm. (Knit until foot is long.)
charts:
  loops:  # LOOK: the text draws no such chart; draw it, the bottom row worked first
    key: {".": k}
    rows: |
      .
sections:
  - name: hat
    work: |
      Cast on 40 (44, 48) sts.
      Bind off.
"""


def settle(text: str, key: str) -> str:
    """Ask for one value."""
    (left,) = (each for each in find_left_open(text) if each.key == key)
    return ask_value(left, take_in_hand(text, Path()))


def changed(text: str) -> list[str]:
    """List the rows of a text that are not in the file."""
    return [row for row in text.split("\n") if row not in FILE.split("\n")]


@pytest.mark.parametrize(
    ("key", "answers", "rows"),
    [
        ("size", ["4", "2"], ["  size: 2"]),
        ("size", [""], ["  size: 1"]),
        ("sizes", ["S (M)", "S (S, M)", "S (M, L)"], ["sizes: S (M, L)", "  size: S  # LOOK: which size do you knit?"]),
        ("MC", ["oat & ink"], ['  MC: {name: "oat & ink", skein: {grams: 50, metres: 175}}']),
        ("plain", ["", "30", "US 6"], ["  plain: {needle: 4 mm, stitches: 22, rounds: 30}"]),
        ("plain", ["many", "0", "31.5", "3.75"], ["  plain: {needle: 3.75 mm, stitches: 22, rounds: 31.5}"]),
        ("foot", ["long", "24 (25, 26) cm", "0 cm", "24"], ["  foot: 24 cm"]),
    ],
)
def test_a_value_is_written_where_the_mark_stood(
    key: str, answers: list[str], rows: list[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    """Answers that will not do are asked again; nothing else changes."""
    type_answers(monkeypatch, *answers)
    assert changed(settle(FILE, key)) == rows


def test_a_size_in_braces_keeps_what_stands_beside_it(monkeypatch: pytest.MonkeyPatch) -> None:
    """The braces close behind it, and other values stay."""
    for inside, settled in (("size: 1", "size: 2"), ("size: 1, only: 1", "size: 2, only: 1")):
        type_answers(monkeypatch, "2")
        text = FILE.replace("knit:\n  size: 1", f"knit: {{{inside}}}")
        key = next(each.key for each in find_left_open(text) if "which size" in each.why)
        assert f"\nknit: {{{settled}}}\n" in settle(text, key)


def test_a_chart_that_is_not_drawn_can_be_done_without(monkeypatch: pytest.MonkeyPatch) -> None:
    """Its stand-in goes, and the lines that name it are asked about in their turn."""
    type_answers(monkeypatch, "yes")
    text = settle(FILE, "loops")
    assert changed(text) == []
    assert "charts" not in text
    two = FILE.replace("sections:", "  twigs:\n    key: {a: k}\n    rows: |\n      a\nsections:")
    type_answers(monkeypatch, "yes")
    assert "charts:\n  twigs:" in settle(two, "loops")
    type_answers(monkeypatch, "no")
    with pytest.raises(LaterAsked):
        settle(FILE, "loops")


def test_sizes_that_are_not_sure_are_asked_for(monkeypatch: pytest.MonkeyPatch) -> None:
    """With several, which of them she knits is open next."""
    text = FILE.replace(FILE.split("\n")[2], "# LOOK: the sizes are not sure: two lists differ.").replace(
        "knit:\n  size: 1  # LOOK: which size do you knit?\n", ""
    )
    type_answers(monkeypatch, "S (M, S)", "S (M, L)")
    settled = settle(text, "")
    assert "sizes: S (M, L)\nknit:\n  size: S  # LOOK: which size do you knit?" in settled
    type_answers(monkeypatch, "")
    assert "\nsizes: one\n" in settle(text, "")  # what lists other numbers is open then


def test_a_value_of_no_known_kind_is_right_or_left_open(monkeypatch: pytest.MonkeyPatch) -> None:
    """She put a mark there herself, perhaps."""
    text = FILE.replace("title: Bramble hat", "title: Bramble hat  # LOOK: is it one?")
    type_answers(monkeypatch, "no", "yes")
    assert settle(text, "title").split("\n")[0] == "title: Bramble hat"


def test_two_needles_are_written_above_the_parts(monkeypatch: pytest.MonkeyPatch) -> None:
    """In millimetres, or by their numbers, the smaller first whichever is named first."""
    type_answers(monkeypatch, "thick", "US 8", "3.25")
    text = ask_needles(take_in_hand(FILE, Path()))
    assert "needles: 3.25 mm, 5 mm\n\nsections:" in text
    type_answers(monkeypatch, "4", "4.5")
    again = ask_needles(take_in_hand(text, Path()))
    assert "needles: 4 mm, 4.5 mm\n\nsections:" in again
    assert again.count("needles:") == text.count("needles:")  # those of the page are put right, not named beside
