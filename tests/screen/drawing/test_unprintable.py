"""What acts on a terminal instead of showing something."""

from __future__ import annotations

import json
import unicodedata

from stepper.screen.drawing.unprintable import blank_unprintable, show_unprintable
from tests.tables import each_row

HOSTILE = {
    "CSI": "\x1b[2J",
    "CSI in one": "\x9b2J",
    "title": "\x1b]0;gone\x07",
    "DCS": "\x1bP1$r\x1b\\",
    "backspace": "a\x08b",
    "return": "sound\rwrong",
    "delete": "\x7f",
    "override": "\u202egnitfel",
    "isolate": "\u2066x\u2069",
    "line": "a\u2028b",
    "half": "\udcff",
    "zero": "\0",
}


@each_row("text", HOSTILE.values())
def test_nothing_that_acts_is_left(text: str) -> None:
    """Whoever wrote the pattern has no say over the knitter's terminal."""
    for safe in (show_unprintable(text), blank_unprintable(text)):
        assert not any(unicodedata.category(letter) in ("Cc", "Cs", "Zl", "Zp") for letter in safe)
        assert not any(unicodedata.bidirectional(letter) in ("RLO", "LRO", "RLI", "LRI", "PDI") for letter in safe)
    assert "\\u" in show_unprintable(text)


def test_a_json_document_means_the_same() -> None:
    """A program that reads it gets the very character."""
    text = "".join(HOSTILE.values())
    assert json.loads(show_unprintable(json.dumps(text, ensure_ascii=False))) == text


def test_what_people_write_is_left_as_it_is() -> None:
    """Letters of any script, signs, marks that join, line feeds and tabs."""
    text = "Zunahme ½ → שלום\tनमस्ते 👩‍🧶\n"
    assert show_unprintable(text) == text
    assert blank_unprintable("a\tb\nc") == "a b c"
