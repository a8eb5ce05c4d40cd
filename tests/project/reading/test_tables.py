"""A line is parsed as the parser generator's own parser does it, built anew of the same grammar: it is the outside check."""

from __future__ import annotations

import binascii
import sys
from functools import cache
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from lark import Lark
from lark.exceptions import UnexpectedInput, UnexpectedToken

from stepper.project.grammar import grammar_text
from stepper.project.reading import tables
from stepper.project.reading.parsing import legal_words
from stepper.project.reading.tables import LineParser, build, load_tables, work_out
from stepper.project.reading.wording import EXAMPLES

SMALL = """
line: (knit | purl) ("," (knit | purl))* end?
knit: "k" NUMBER -> worked
?purl: "p" NUMBER | "p" [NUMBER "times"]
_end: "to" "end"
end: _end
NUMBER: /[0-9]+/
%ignore " "
"""


@cache
def parsers() -> tuple[Lark, LineParser]:
    """The generator's own parser, and ours, of the whole grammar."""
    grammar = grammar_text()
    return build(grammar), LineParser(load_tables(grammar))


def told(parser: Lark | LineParser, line: str) -> object:
    """Return the tree of a line with the places of its tokens; where it stops, the place and what would go on."""
    try:
        tree = parser.parse(line)
    except UnexpectedToken as error:
        return error.token.type, error.token.start_pos, sorted(error.expected), sorted(error.accepts)
    except UnexpectedInput as error:
        return error.pos_in_stream
    places = [(each.type, each.start_pos) for each in tree.scan_values(lambda value: hasattr(value, "start_pos"))]
    return tree, places


def test_every_example_is_parsed_into_the_same_tree() -> None:
    """As printed, and cut short or with a word doubled, so that it stops somewhere or goes on otherwise."""
    own, ours = parsers()
    for line in EXAMPLES:
        words = line.split(" ")
        for text in (line.rstrip("."), " ".join(words[:-1]), " ".join([words[0], *words]), line.upper()):
            assert told(ours, text) == told(own, text), text


@given(st.lists(st.sampled_from([*sorted(legal_words()), *"0129,.;:*()[]-/½MA"]), max_size=12))
def test_any_words_in_any_order_are_parsed_alike(words: list[str]) -> None:
    """Whatever is typed comes to the same tree, or stops at the same place for the same reason."""
    own, ours = parsers()
    assert told(ours, " ".join(words)) == told(own, " ".join(words))


@pytest.mark.parametrize("line", ["k2", "k2, p3", "p", "p3 times, k1 to end", "k2 to", "to end", "k2 §", ""])
def test_a_small_grammar_is_parsed_alike(line: str) -> None:
    """With all that makes a tree of another form: another name, one child alone, a part left out, a part not shown."""
    own = build(SMALL)
    assert told(LineParser(work_out(own)), line) == told(own, line)


@pytest.fixture
def apart(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Keep tables in a folder of the test's own."""
    monkeypatch.setattr(sys, "pycache_prefix", str(tmp_path))


@pytest.mark.usefixtures("apart")
def test_tables_are_worked_out_once(monkeypatch: pytest.MonkeyPatch) -> None:
    """The second start reads them; for this the generator is not asked at all."""
    first = load_tables(SMALL)
    monkeypatch.setattr(tables, "build", None)
    assert load_tables(SMALL) == first


@pytest.mark.usefixtures("apart")
def test_another_grammar_has_tables_of_its_own() -> None:
    """A stitch that is added to the table is read from the next start on."""
    load_tables(SMALL)
    wider = SMALL.replace('"k" NUMBER', '("k" | "kb") NUMBER')
    assert told(LineParser(load_tables(wider)), "kb2") != told(LineParser(load_tables(SMALL)), "kb2")


def test_another_form_has_another_number() -> None:
    """Tables that a former version kept would be read as something else: with a new sum comes a new number."""
    made = work_out(build(SMALL))
    rows = sorted(sorted((token, number >= 0) for token, number in row.items()) for row in made["rows"])
    form = [sorted(made), made["kinds"], made["beginning"], made["ignored"], rows, sorted(made["first"])]
    assert (tables.FORM, binascii.crc32(repr(form).encode())) == (1, 192193836)
