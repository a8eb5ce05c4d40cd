"""The page of keys, drawn from the table: each key with the words that do the same. No I/O."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from types import MappingProxyType
from typing import Final

from stepper.language.understanding.vocabulary import recommend_wordings
from stepper.screen.cells import LEGEND
from stepper.screen.drawing.layout import Block, stack_blocks
from stepper.screen.drawing.rows import Row, Styled, clean, pad, row, row_width
from stepper.screen.drawing.style import BOLD, Terminal
from stepper.screen.keys import KEYS, NUMBER_KEYS, Key
from stepper.screen.pages.bottom_row import draw_bottom_row
from stepper.screen.scene import Scene

_NAMES: Final = MappingProxyType({"page down": "PageDown", "page up": "PageUp"})
_BLANKS: Final = MappingProxyType(
    {"tens": "ten", "text": "and your words", "length": "30 cm", "weight": "42 grams", "number": "246"}
)
_KEY_COLUMNS = 14
_SAID_COLUMN = 54


def draw_keys_page(scene: Scene, terminal: Terminal) -> list[Row]:
    """Draw the page, scrolled down as far as asked. Always: as many rows as the terminal has."""
    yarn = next(iter(scene.plan.yarns.values()), "wool")
    lines = _lines(terminal.columns, yarn, scene.own_words)
    room = max(1, terminal.rows - 3)
    down = min(scene.ui.down, max(0, len(lines) - room))
    shown = lines[down : down + room]
    more = f"{down + len(shown)} of {len(lines)}"
    blocks = [
        Block(rank=1, rows=[(Styled(" Keys and words", BOLD), Styled(f"   {more}"))]),
        Block(rank=0, rows=shown, least=1),
        Block(rank=9, grown=lambda rows: [()] * rows),
        Block(rank=2, rows=[draw_bottom_row(scene, terminal)]),
    ]
    return stack_blocks(blocks, terminal.columns, terminal.rows)


def _lines(columns: int, yarn: str, own: Mapping[str, str]) -> list[Row]:
    """Write the whole page."""
    lines = [line for key in KEYS for line in _key(key, columns, yarn)]
    lines += [(), row(" A number, then:", BOLD)]
    for each in NUMBER_KEYS:
        phrase = recommend_wordings(each.kind)[0].replace("{number}", str(each.for_instance))
        lines.append(_entry(each.key, each.says, _said((phrase,), yarn)))
    if own:
        lines += [(), row(" Your own words:", BOLD)]
        lines += [_entry("", f'"{clean(words)}"', _said((meant,), yarn)) for words, meant in own.items()]
    lines += [(), row(" Always:", BOLD), _entry("esc", "be silent at once; back to the round", "")]
    lines += [_entry("tab", "the rest of a text too long for the window", "")]
    lines += [_entry("ctrl-c", "leave at once; nothing is lost", "")]
    lines += [(), row(" Signs of the chart:", BOLD)]
    lines += [_entry(sign, says, "") for sign, says in LEGEND]
    lines += [(), row(" With a screen reader: stepper knit FILE --plain")]
    return lines


def _key(key: Key, columns: int, yarn: str) -> list[Row]:
    """Write a row of the table; whatever does not fit beside the rest gets a line of its own."""
    said = _said(key.spoken, yarn)
    keys = " ".join(_NAMES.get(name, name) for name in key.keys)
    lines: list[Row] = []
    if len(keys) > _KEY_COLUMNS - 2:
        lines, keys = [(Styled(f" {keys}", BOLD),)], ""
    whole = _entry(keys, key.says, said)
    if not said or row_width(whole) <= columns:
        return [*lines, whole]
    return [*lines, _entry(keys, key.says, ""), (Styled(" " * (_KEY_COLUMNS + 3)), Styled(said))]


def _said(phrases: Iterable[str], yarn: str) -> str:
    return " / ".join(f'"{fill_blanks(phrase, yarn)}"' for phrase in phrases)


def fill_blanks(phrase: str, yarn: str) -> str:
    """Write a wording as it would be said, with its blanks filled in.

    Args:
        phrase: The wording.
        yarn: Name of a yarn of this garment.
    """
    filled = re.sub(r"\{(\w+)\}", lambda blank: _BLANKS.get(blank[1], yarn), phrase)
    return re.sub(r"\bi\b", "I", filled)


def _entry(keys: str, says: str, said: str) -> Row:
    """Write a line in three columns, the third only if there are words for it."""
    line = (*pad((Styled(f" {keys}", BOLD),), _KEY_COLUMNS), Styled(f" {says}"))
    if not said:
        return line
    beside = pad(line, _SAID_COLUMN) if row_width(line) < _SAID_COLUMN else (*line, Styled(" "))
    return (*beside, Styled(f" {said}"))
