"""Kinds of work that no line can say. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.unsupported import find_unsupported


@pytest.mark.parametrize(
    ("line", "kind"),
    [
        ("Sl1yo, brk1, rep to end.", "brioche"),
        ("Bind off with an i-cord edge.", "an I-cord"),
        ("Work both sleeves at the same time.", "two pieces at once"),
        ("Rep rows 1 and 2 until all gusset sts have been worked.", "stitches that the page does not count"),
        ("Crochet around the neck.", "crochet"),
        ("Work even until foot measures 5 cm less than total foot length.", "a length of the wearer"),
    ],
)
def test_a_kind_that_is_not_read_is_named_with_what_to_write(line: str, kind: str) -> None:
    """A knitter who knows that it cannot be read stops looking for the right words."""
    found = find_unsupported(line)
    assert found is not None
    assert f"asks for {kind}, " in found.message
    assert found.hint


@pytest.mark.parametrize("line", ["K2, p2 to end.", "Work both sides alike.", "Cast on 40 sts."])
def test_what_is_read_is_none_of_them(line: str) -> None:
    """Words that only look like one would send her away from a line that can be read."""
    assert find_unsupported(line) is None
