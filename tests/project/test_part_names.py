"""The parts of a garment are known by one list, wherever a line names one."""

from __future__ import annotations

import re

import pytest

from stepper.project.part_names import PART
from stepper.project.problems import Span
from stepper.project.reading.wording import Words, read_line

NAMES = (
    "front", "back", "sleeve", "body", "yoke", "hood", "collar", "neck", "shoulder", "underarm", "heel", "instep",
    "sole", "foot", "leg", "thumb", "hand", "palm", "finger", "pocket",
)  # fmt: skip
LINES = (
    "Row 2 (WS): P to marker, sm, p across the {}, sm, p4, turn.",
    "Take the held {} sts off the holder and place them on dpns.",
    "K8, place the next 8 sts (left {}) on waste yarn, k to end.",
)
"""Each is worded by another table."""


def known(line: str) -> bool:
    """Return whether a line is read."""
    return read_line(line, lambda *_: Span(line=1, column=1), Words(sizes=1)).line is not None


@pytest.mark.parametrize("line", LINES)
def test_stitches_of_any_part_may_wait_and_come_back(line: str) -> None:
    """A sole that cannot be put on a holder where an instep can is a list that was forgotten."""
    assert [name for name in NAMES if not known(line.format(name))] == []
    assert not known(line.format("frobble"))


def test_a_part_is_named_by_the_whole_of_a_word() -> None:
    """The longer names of an alternation are found although the shorter ones stand before them."""
    assert re.fullmatch(PART, "neckband")
    assert not re.fullmatch(PART, "necklace")
