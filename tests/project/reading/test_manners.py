"""How rounds are worked, as lines name it. Source: patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.instructions import Forms, Phrase, WorkRounds
from stepper.project.problems import Span
from stepper.project.reading.manners import forms_name
from stepper.project.reading.wording import Words, read_line
from stepper.project.stitchwork import Work


def sentence(text: str) -> object:
    """Read the first sentence of a line."""
    reading = read_line(text, lambda at, length: Span(line=1, column=at + 1, length=length), Words(sizes=1))
    assert reading.line is not None, reading.problems
    return reading.line.sentences[0]


@pytest.mark.parametrize(
    ("line", "manner"),
    [
        ("Work 4 rows.", "pattern"),
        ("Work in pattern for 3 cm.", "pattern"),
        ("Work in St st for 3 cm.", "stockinette"),
        ("Work in garter stitch for 3 cm.", "garter"),
        ("Work in rib for 3 cm.", "rib"),
        ("Work in k2, p2 rib for 3 cm.", "rib 2 2"),
        ("Work in seed stitch for 3 cm.", "named seed stitch"),
        ("Work in rev st st for 3 cm.", "named rev st st"),
        ("Work in the Trellis pattern for 3 cm.", "named trellis pattern"),
    ],
)
def test_a_line_names_its_manner(line: str, manner: str) -> None:
    """"In rib" goes on with one; "in k2, p2 rib" sets one up."""
    read = sentence(line)
    assert isinstance(read, WorkRounds)
    assert read.manner == manner


def test_rows_form_a_pattern_of_a_name() -> None:
    """The name is what a later line calls."""
    read = sentence("These 4 rows form the Trellis pattern and are repeated throughout.")
    assert isinstance(read, Forms)
    assert read.name == "trellis pattern"
    assert forms_name("set the rib") == "rib"


@pytest.mark.parametrize(
    ("line", "fabric"),
    [("K4, work 5 sts in garter st, k4.", "garter"), ("Moss 5, k to end.", "moss"), ("K4, work 5 sts in pattern.", "")],
)
def test_a_stretch_names_its_fabric(line: str, fabric: str) -> None:
    """"In pattern" goes on with what is there; a fabric is worked whatever is there."""
    read = sentence(line)
    assert isinstance(read, Phrase)
    assert {element.fabric for element in read.elements if isinstance(element, Work)} - {""} == ({fabric} - {""})
