"""Looks of the yarns: letters unlike each other, ink that can be read (WCAG contrast by the craft's formula)."""

from __future__ import annotations

from pathlib import Path

import pytest

from stepper.craft.colours.colour import contrast, rgb_from_hex
from stepper.report.sheet.looks import assign_looks
from stepper.sitting.project_file import load_project

SAMPLES = sorted((Path(__file__).parents[2] / "fixtures").glob("*.yaml"))


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_every_yarn_is_told_apart_without_colour(path: Path) -> None:
    """The first is plain, every other has a letter of its own that can be read on it: 3:1 for large letters
    (SC 1.4.3), in colour and so in the grey of the same luminance."""
    found = list(assign_looks(load_project(path).project, ("odd", "odder")).values())
    letters = [shade.letter for shade in found]
    assert len(set(letters)) == len(letters)
    assert letters[0] == ""
    assert all(letters[1:])
    assert all(contrast(rgb_from_hex(each.ink), rgb_from_hex(each.colour)) >= 3 for each in found)
    assert [shade.stripes for shade in found] == [max(0, place - 1) for place in range(len(found))]


def test_yarns_of_one_letter_get_others() -> None:
    """More yarns than letters in their keys are still told apart."""
    found = assign_looks(load_project(SAMPLES[-1]).project, [f"A{number}" for number in range(9)])
    assert len({shade.letter for shade in found.values()}) == len(found)
