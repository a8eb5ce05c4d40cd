"""Markup against the standard library's own parser."""

from __future__ import annotations

from html.parser import HTMLParser
from xml.etree import ElementTree

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.report.drawing.markup import figure, svg, table, tag, text


class Seen(HTMLParser):
    """Remembers what a parser makes of markup."""

    def __init__(self) -> None:
        super().__init__()
        self.tags: list[tuple[str, dict[str, str | None]]] = []
        self.data = ""

    def handle_starttag(self, name: str, attributes: list[tuple[str, str | None]]) -> None:
        """Remember a tag."""
        self.tags.append((name, dict(attributes)))

    def handle_data(self, data: str) -> None:
        """Remember text."""
        self.data += data


def parsed(markup: str) -> Seen:
    """Parse markup."""
    seen = Seen()
    seen.feed(markup)
    seen.close()
    return seen


WORDS = st.text(st.characters(exclude_categories=["Cs", "Cc"]))


@given(WORDS, WORDS)
def test_whatever_is_written_comes_back_and_makes_no_tag(inner: str, value: str) -> None:
    """A title of `<script>` is a title."""
    seen = parsed(tag("p", text(inner), title=value))
    assert seen.tags == [("p", {"title": value})]
    assert seen.data == inner


def test_attributes_are_named_as_html_names_them() -> None:
    """An underscore is a hyphen, at the end nothing; nothing is left out."""
    assert tag("th", "a", aria_label="b", class_="c", id=None) == '<th aria-label="b" class="c">a</th>'


@pytest.mark.parametrize(
    ("value", "short"), [(1.0, "1"), (0.125, "0.12"), (-0.001, "0"), (2.5, "2.5"), ("x", "x")]
)
def test_numbers_are_short(value: float | str, short: str) -> None:
    """A drawing of thousands of numbers stays small."""
    assert tag("i", x=value) == f'<i x="{short}"></i>'


def test_a_table_names_columns_and_rows() -> None:
    """Who hears a table hears which row and column a cell is of."""
    seen = parsed(table(("", "Metres"), [("chalk", "640")], named="yarn"))
    scopes = [attributes.get("scope") for name, attributes in seen.tags if name == "th"]
    assert scopes == ["col", "col", "row"]
    assert ("table", {"aria-labelledby": "yarn"}) in seen.tags


def test_a_drawing_says_what_it_shows() -> None:
    """Title and label are there for those who do not see it."""
    seen = parsed(figure(svg(10, 20, [], title="A & B"), "words"))
    drawing = dict(seen.tags)["svg"]
    assert (drawing["role"], drawing["aria-label"], drawing["viewbox"]) == ("img", "A & B", "0 0 10 20")
    assert "title" in dict(seen.tags)


@pytest.mark.parametrize("hostile", ["A \x1b]0;title\x07\x1b[31m", "\x00\x08\x0b\x1f", "\ud800\uffff", "a\tb\u0085"])
def test_a_title_with_any_character_leaves_a_drawing_that_is_xml(hostile: str) -> None:
    """The PDF reads its drawings as XML (expat judges here): an escape in a title must not end the sheet."""
    drawn = svg(10, 10, [tag("text", text(hostile), aria_label=hostile)], title=hostile, alone=True)
    assert "\x1b" not in "".join(ElementTree.fromstring(drawn).itertext())
