"""Rows told in prose. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from tests.project.rewording.work.test_place_synonyms import written


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Row 3: DS, k to 3 sts before the last DS on the other side, turn.", "Row 3: make a ds, k to 3 sts before the last DS, turn"),
        ("Row 2: P to BOR and 6 sts further, turn.", "Row 2: P to end, P 6, turn"),
        ("Next rnd: K to marker, slip it, m1r, k to marker, m1l, slip it, k to end.", "Next rnd: K to marker, sm, m1r, k to marker, m1l, sm, k to end"),
    ],
)
def test_a_row_told_in_prose_is_written_as_others_print_it(printed: str, words: str) -> None:
    """Past which place, up to which stitch."""
    assert written(printed).replace(" :", ":") == words


@pytest.mark.parametrize("printed", ["*Knit to 2 sts before marker, k2tog* twice, knit to end.", "4 sts more than the smallest size."])
def test_what_only_looks_like_it_stays(printed: str) -> None:
    """A group that is not all of its row may be worked once, and a difference of sizes is no increase."""
    words = written(printed)
    assert "rep from" not in words
    assert "increased" not in words
