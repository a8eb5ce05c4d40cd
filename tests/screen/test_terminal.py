from __future__ import annotations

from collections.abc import Sequence

import pyte
import pytest
from hypothesis import given
from hypothesis import strategies as st
from prompt_toolkit.data_structures import Size
from prompt_toolkit.layout.screen import Char
from prompt_toolkit.output import ColorDepth
from prompt_toolkit.output.vt100 import Vt100_Output
from prompt_toolkit.styles import Attrs, Style

from stepper.craft.colours.colour import rgb_from_hex
from stepper.screen.drawing.rows import Row, Styled, cut
from stepper.screen.drawing.style import BOLD, PLAIN, SIXTEEN, Paint
from stepper.screen.keys import BY_KEY, NUMBER_KEYS
from stepper.screen.terminal import KEY_NAMES, style_of, write_changes, write_row


@pytest.mark.parametrize(
    ("paint", "expected"),
    [
        (PLAIN, ("", "", False, False)),
        (BOLD, ("", "", True, False)),
        (Paint(reverse=True), ("", "", False, True)),
        (
            Paint(ground=rgb_from_hex("#ece6d8"), ink=rgb_from_hex("#000102")),
            ("000102", "ece6d8", False, False),
        ),
        (Paint(ink=rgb_from_hex("#123456")), ("123456", "", False, False)),
    ],
)
def test_a_paint_is_what_the_library_makes_of_it(paint: Paint, expected: tuple[object, ...]) -> None:
    """Read back through the library's own style."""
    attrs: Attrs = Style([]).get_attrs_for_style_str(style_of(paint))

    assert (attrs.color, attrs.bgcolor, attrs.bold, attrs.reverse) == expected


def test_the_sixteen_go_by_their_names() -> None:
    """So that a terminal shows its own shade of them."""
    for colour, name in SIXTEEN.items():
        attrs = Style([]).get_attrs_for_style_str(style_of(Paint(ground=colour, ink=colour)))
        assert (attrs.color, attrs.bgcolor) == (name, name)


def test_every_named_key_of_the_table_can_be_pressed() -> None:
    """A row for a key that no terminal sends would be a lie."""
    names = set(KEY_NAMES.values()) | {"space"}
    wanted = {key for key in BY_KEY if len(key) > 1 and key != "q q"} | {row.key for row in NUMBER_KEYS}

    assert {key for key in wanted if len(key) > 1} <= names


def _written(*spans: Styled, columns: int = 9) -> dict[int, tuple[str, str]]:
    buffer: dict[int, Char] = {}
    write_row(spans, buffer, 1, columns)
    return {column: (char.char, char.style) for column, char in buffer.items()}


def test_a_row_becomes_letters_each_in_its_column() -> None:
    """Wide letters take two columns, marks that combine none, and nothing goes beyond the edge."""
    assert _written(Styled("a"), Styled("b", BOLD)) == {1: ("a", ""), 2: ("b", "bold")}
    assert _written(Styled("漢b")) == {1: ("漢", ""), 2: ("", ""), 3: ("b", "")}
    assert _written(Styled("e\u0301b")) == {1: ("e\u0301", ""), 2: ("b", "")}
    assert list(_written(Styled("a漢"), columns=2)) == [1]


class _Sink:
    """Keep what is written."""

    encoding = "utf-8"

    def __init__(self) -> None:
        self.text = ""

    def write(self, text: str) -> int:
        """Take letters."""
        self.text += text
        return len(text)

    def flush(self) -> None:
        """Nothing waits."""

    def isatty(self) -> bool:
        """Say that it is a terminal."""
        return True

    def fileno(self) -> int:
        """Say that it has no number."""
        raise OSError("no file")


COLUMNS, ROWS = 12, 3
_PAINTS = (
    PLAIN,
    BOLD,
    Paint(reverse=True),
    Paint(ground=rgb_from_hex("#1b4d3a"), ink=rgb_from_hex("#ffffff")),
)
_TEXTS = st.text(alphabet="ab ▀漢é\x1b", min_size=1, max_size=6)
_ROW = st.lists(st.builds(Styled, _TEXTS, st.sampled_from(_PAINTS)), max_size=4).map(
    lambda spans: cut(tuple(spans), COLUMNS)
)
_SCREENS = st.lists(_ROW, min_size=ROWS, max_size=ROWS)


def _changes(before: Sequence[Row], now: Sequence[Row]) -> str:
    sink = _Sink()
    output = Vt100_Output(sink, get_size=lambda: Size(rows=ROWS, columns=COLUMNS))  # type: ignore[arg-type]
    write_changes(output, before, now, ColorDepth.DEPTH_24_BIT)
    output.flush()
    return sink.text


def _cells(screen: pyte.Screen) -> list[list[pyte.screens.Char]]:
    return [[screen.buffer[row][column] for column in range(COLUMNS)] for row in range(ROWS)]


@given(st.lists(_SCREENS, min_size=1, max_size=4))
def test_only_changes_written_show_the_same_as_all_of_it(screens: list[list[Row]]) -> None:
    """Whatever stood there before: pyte, a terminal of its own, ends up with the same letters in the same looks.

    The cursor is back in the corner, from where the next change is reckoned.
    """
    step_by_step, at_once = pyte.Screen(COLUMNS, ROWS), pyte.Screen(COLUMNS, ROWS)
    before: list[Row] = [()] * ROWS
    stream = pyte.Stream(step_by_step)
    stream.feed("\x1b[?7l")  # as the library has it: nothing is wrapped at the right edge
    for now in screens:
        stream.feed(_changes(before, now))
        before = now
        assert (step_by_step.cursor.x, step_by_step.cursor.y) == (0, 0)
    pyte.Stream(at_once).feed("\x1b[?7l" + _changes([()] * ROWS, before))

    assert _cells(step_by_step) == _cells(at_once)


def test_a_row_is_written_from_its_first_change_to_its_last() -> None:
    """A slow line, as over a network, carries a number that changes and not the row around it."""
    before = (Styled("round "), Styled("7", BOLD), Styled(" of 12"))
    now = (Styled("round "), Styled("8", BOLD), Styled(" of 12"))
    written = _changes([before, before, ()], [before, now, ()])

    assert "8" in written
    assert "round" not in written
    assert "of" not in written
    assert _changes([before, now, ()], [before, now, ()]).strip("\r") == ""
