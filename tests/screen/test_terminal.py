from __future__ import annotations

import pytest
from prompt_toolkit.layout.screen import Char
from prompt_toolkit.styles import Attrs, Style

from stepper.craft.colour import rgb_from_hex
from stepper.screen.keys import BY_KEY, NUMBER_KEYS
from stepper.screen.rows import Span
from stepper.screen.style import BOLD, PLAIN, SIXTEEN, Paint
from stepper.screen.terminal import KEY_NAMES, style_of, write_row


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


def _written(*spans: Span, columns: int = 9) -> dict[int, tuple[str, str]]:
    buffer: dict[int, Char] = {}
    write_row(spans, buffer, 1, columns)
    return {column: (char.char, char.style) for column, char in buffer.items()}


def test_a_row_becomes_letters_each_in_its_column() -> None:
    """Wide letters take two columns, marks that combine none, and nothing goes beyond the edge."""
    assert _written(Span("a"), Span("b", BOLD)) == {1: ("a", ""), 2: ("b", "bold")}
    assert _written(Span("漢b")) == {1: ("漢", ""), 2: ("", ""), 3: ("b", "")}
    assert _written(Span("e\u0301b")) == {1: ("e\u0301", ""), 2: ("b", "")}
    assert list(_written(Span("a漢"), columns=2)) == [1]
