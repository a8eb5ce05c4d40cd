"""Rows of the file become printed lines, and every word keeps its place."""

from __future__ import annotations

from stepper.project.lines import Placer
from stepper.project.problems import Place
from stepper.project.reader import read_project
from tests.project.samples import project


def test_an_offset_in_joined_rows_leads_back_to_its_row() -> None:
    """The caret stands under the word in the file, not in the joined sentence."""
    place_of = Placer([("K1, k2tog,", Place(line=7, column=7)), ("  ssk, k1.", Place(line=8, column=7))])
    joined = "K1, k2tog, ssk, k1."
    assert (place_of(joined.index("k2tog"), 5).line, place_of(joined.index("k2tog"), 5).column) == (7, 11)
    assert (place_of(joined.index("ssk"), 3).line, place_of(joined.index("ssk"), 3).column) == (8, 9)


def test_rows_that_begin_with_a_hash_are_left_out() -> None:
    """Words to herself that are not read out."""
    found = read_project(project("Cast on 8 sts.\n# the blue needles\nBind off.")).project
    assert found is not None
    assert len(found.sections[0].lines) == 2


def test_work_must_be_a_block() -> None:
    """A folded block runs the lines together, and their places are lost."""
    text = project("Cast on 8 sts.").replace("work: |", "work: >")
    assert "block" in read_project(text).problems[0].message
