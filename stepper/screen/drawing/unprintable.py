"""What a terminal must never be sent as it stands: characters that act instead of showing something. No I/O.

Those are the control characters (C0 without tab and line feed, DELETE, C1: escape sequences begin with one of
them), what turns the direction of writing around, separators of lines that are none, halves of pairs, and
marks of annotations. Each is shown as the code that a program would write for it, backslash and u, so that
nothing is hidden; within the strings of a JSON document that code means the very character.

Source: ECMA-48 (C0, C1); Unicode Standard Annex 9 (explicit directional formatting characters); RFC 8259,
section 7.
"""

from __future__ import annotations

from typing import Final

from stepper.regex import regex

UNPRINTABLE: Final = regex(
    "[\x00-\x08\x0b-\x1f\x7f-\x9f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\ud800-\udfff\ufff9-\ufffb]"
)
"""One such character."""


def show_unprintable(text: str) -> str:
    r"""Put the code of each such character in its place: `\u001b` for an escape."""
    return UNPRINTABLE.sub(lambda found: f"\\u{ord(found[0]):04x}", text)


def blank_unprintable(text: str) -> str:
    """Put a space in the place of each such character, of tabs and of line feeds."""
    if text.isprintable():  # nearly all texts are, and the screen asks for hundreds of them at every key
        return text
    return UNPRINTABLE.sub(" ", text).replace("\n", " ").replace("\t", " ")
