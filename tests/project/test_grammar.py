"""The grammar takes its words from the stitch table and the needle table."""

from __future__ import annotations

import re
import sys
from dataclasses import replace
from pathlib import Path

import pytest

from stepper.craft import needles, stitches
from stepper.project.grammar import abbreviations, grammar_text, stitch_words
from stepper.project.problems import Span
from stepper.project.reading import parsing
from stepper.project.reading.wording import LineReading, Words, read_line
from stepper.project.stitchwork import Work
from tests.tables import each_row


def read(text: str) -> LineReading:
    """Read a line of one size."""
    return read_line(text, lambda offset, length: Span(line=1, column=offset + 1, length=length), Words(sizes=1))


def forget() -> None:
    """Drop what was built from the tables as they were."""
    for built in (parsing.build_parser, parsing.parse_line, parsing.legal_words, stitches.stitch):
        built.cache_clear()


def test_a_stitch_added_to_the_table_is_read(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """Whoever adds an abbreviation adds it once; a second list would be forgotten."""
    assert read("K1, k6tog, k to end.").line is None
    said = {"said": "knit six together", "wrong_side": "", "spellings": ("knit six as one",)}
    added = replace(stitches.STITCHES["k3tog"], code="k6tog", uses=6, **said)
    with monkeypatch.context() as table:
        table.setattr(sys, "pycache_prefix", str(tmp_path))  # where the tables of this grammar are kept
        table.setattr(stitches, "ENTRIES", (*stitches.ENTRIES, added))
        table.setitem(stitches.STITCHES, "k6tog", added)
        table.setitem(stitches.ALIASES, "knit six as one", "k6tog")
        forget()
        for words in ("K1, k6tog, k to end.", "K1, knit six as one, k to end."):
            line = read(words).line
            assert line is not None
            assert isinstance(line.sentences[0].elements[1], Work)  # type: ignore[union-attr] # a round
            assert line.sentences[0].elements[1].stitch == "k6tog"  # type: ignore[union-attr] # a round
    forget()


@each_row("form", [form for form in stitches.whole_words() if form not in ("m", "inc", "dec")])
def test_every_form_of_the_table_is_read_as_its_stitch(form: str) -> None:
    """A form in the table that no line may use would be a promise not kept."""
    line = read(f"K2, {form}, k to end.").line
    assert line is not None
    entry = stitches.find_stitch(form)
    assert entry is not None
    assert line.sentences[0].elements[1].stitch == entry.code  # type: ignore[union-attr] # a round


def test_words_with_another_meaning_are_left_out() -> None:
    """`k to m` is a marker and `inc 8 sts evenly` no stitch."""
    assert not re.fullmatch(stitch_words(), "m")
    assert not re.match(rf"(?:{stitch_words()})(?=\W|$)", "inc 1 st at each end")


def test_the_needle_sizes_are_those_of_the_table() -> None:
    """One expression says how a size is written, wherever it stands."""
    assert needles.NEEDLES.replace("/", r"\/") in grammar_text()
    assert "<" not in re.sub(r"\(\?<[!=]", "", grammar_text())


def test_a_word_of_plain_english_is_no_abbreviation() -> None:
    """The name of a bobble hat is no row of stitches."""
    assert not re.fullmatch(abbreviations(), "bobble")
    assert not re.fullmatch(abbreviations(), "make one")
    assert re.fullmatch(abbreviations(), "kyok")
    assert re.fullmatch(abbreviations(), "k2tog")
