"""The tape: widths, lengths and what counts as a whole round."""

from __future__ import annotations

import pytest

from stepper.report.measure.garment_lines import add_band
from stepper.report.measure.tape import Tape, count_unworked, is_whole
from tests.garments import read_garment
from tests.plans import plan


def test_lengths_are_rounds_and_shares_of_rounds() -> None:
    """Ten rounds of 4 mm, half of them 20 mm; after blocking 20 to 10 cm, 5 mm each."""
    project, garment = read_garment("shawl")
    rows = garment.rounds[5:15]
    tape = Tape(project)
    assert tape.long("a", rows).needles_mm == pytest.approx(40)
    assert tape.long("a", rows).blocked_mm == pytest.approx(50)
    assert tape.tall("a", rows, share=0.5).needles_mm == pytest.approx(20)
    assert tape.round_mm(rows[0]) == pytest.approx(5)


def test_widths_add_up_side_by_side() -> None:
    """100 and 50 stitches of 5 mm; a band of 30 mm makes them wider."""
    project, garment = read_garment("set_in")
    tape = Tape(project)
    parts = [tape.around("back", garment.rounds[1], 100), tape.around("front", garment.rounds[1], 50)]
    chest = tape.side_by_side("chest", parts, "bust")
    assert (chest.needles_mm, chest.stitches, chest.body_mm) == (pytest.approx(750), 150, 920)
    band = tape.tall("band", garment.rounds[1:11])
    assert add_band(tape.around("chest", garment.rounds[1], 100), band).needles_mm == pytest.approx(540)


@pytest.mark.parametrize(("text", "whole"), [("k20", True), ("rest1 k19", True), ("k10 rest10", False)])
def test_a_short_row_is_no_round_but_the_one_that_closes_it_is(text: str, whole: bool) -> None:
    """It begins a stitch or two late; a cast-on and a bind-off add nothing either."""
    rounds = plan(("a", ["co20", text, "bo20"])).rounds
    assert is_whole(rounds[1]) is whole
    assert not is_whole(rounds[0])
    assert not is_whole(rounds[2])
    assert count_unworked(rounds[1]) == (0 if text == "k20" else int(text.split("rest")[1].split()[0]))
