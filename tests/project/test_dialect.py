"""Pages in US and in UK wording. Source: common practice (bind off, stockinette; cast off, stocking stitch)."""

from __future__ import annotations

import pytest

from stepper.project.dialect import is_american


@pytest.mark.parametrize(
    ("text", "american"),
    [
        ("Work in stockinette for 3 in.", True),
        ("4 sts bound off.", True),
        ("Cast off.", False),
        ("Bind off at the centre.", False),
        ("Cast on 20 sts. Knit 4 rows.", False),
    ],
)
def test_a_page_is_american_by_its_words_alone(text: str, american: bool) -> None:
    """A page that mixes both, or says neither, is not taken for a US one: moss and needles differ in it."""
    assert is_american(text) is american
