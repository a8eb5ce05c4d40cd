"""The style sheet fetches nothing, and a title cannot break out of it."""

from __future__ import annotations

import re

import pytest

from stepper.report.sheet.style import STYLE, footer_rule


def test_nothing_is_fetched() -> None:
    """No address, no import, no font from elsewhere."""
    assert not re.search(r"url\(|@import|@font-face|https?:", STYLE)
    assert STYLE.count("{") == STYLE.count("}")


@pytest.mark.parametrize(
    "title", ['"} body { display: none } /*', "</style><script>", "back\\slash\nline", "Grüße"]
)
def test_a_title_stays_a_title(title: str) -> None:
    """Whatever is in it, no quote, brace, bracket or line break of it is left as such."""
    inside = re.search(r'content: "(.*) · "', footer_rule(title))
    assert inside is not None
    assert not re.search(r'["{}<>\n;*/]', inside.group(1))
    assert re.sub(r"\\([0-9a-f]+) ", lambda code: chr(int(code.group(1), 16)), inside.group(1)) == title
