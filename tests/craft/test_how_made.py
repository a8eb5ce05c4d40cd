from __future__ import annotations

from stepper.craft.how_made import explain_stitch, how_made
from stepper.craft.stitches import STITCHES, Kind, stitch
from tests.tables import each_row


def test_a_cable_is_told_by_how_it_is_worked() -> None:
    """By the Craft Yarn Council's form: 2/2 RC, slip 2 to a cable needle and hold in back, k2, k2 from cable needle."""
    assert explain_stitch("2/2 rc") == "2 over 2 right cross: 2 to a cable needle behind, k2, k2 from it"
    assert explain_stitch("2/1 lpc") == "2 over 1 left cross: 2 to a cable needle in front, p1, k2 from it"
    assert explain_stitch("c6f") == "cable: 3 to a cable needle in front, k3, k3 from it"
    assert explain_stitch("t3b") == stitch("t3b").said


WORKED = [entry.code for entry in STITCHES.values() if entry.kind not in (Kind.EDGE, Kind.SHIFT) and entry.code != "turn"]


@each_row("code", WORKED)
def test_every_stitch_that_is_abbreviated_has_a_meaning(code: str) -> None:
    """In words, not by its own abbreviation alone."""
    assert len(explain_stitch(code)) > 3
    assert explain_stitch(code) != code


@each_row(
    ("code", "how"),
    [
        ("ssk", "slip two one by one as if to knit, knit them together through the back loops; leans left"),
        ("m1l", "lift the strand from front to back, knit it through the back loop"),
        ("k2tog", "leans right"),
        ("p2tog", ""),
        ("pm", ""),
        ("k", ""),
    ],
)
def test_behind_its_name_only_what_the_name_leaves_open_is_told(code: str, how: str) -> None:
    """ "Place marker: place a marker" would be breath for nothing; "make one left" tells nobody which leg to knit."""
    assert how_made(code) == how
