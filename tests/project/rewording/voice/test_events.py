"""What is ordered for when a length is reached. Source: common practice."""

from __future__ import annotations

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.voice.events import write_events
from tests.tables import each_row


@each_row(
    ("printed", "order"),
    [
        ("When the sleeve measures 15 cm, increase 2 sts under the arm.", "Work even until sleeve measures 15 cm. Increase 2 sts under the arm."),
        ("Once it's 8 (9, 10) in long k 1 round.", "Work even until it measures 8 (9, 10) in. K 1 round."),
        ("Work in rib. When piece measures 4 cm from cast-on edge, bind off.", "Work in rib. Work even until piece measures 4 cm from cast-on edge. Bind off."),
        # meanwhile, or nothing to do
        ("At the same time, when piece measures 4 cm, inc 1 st.", None),
        ("When piece measures 4 cm, it should fit.", None),
        ("When you have 40 sts, bind off.", None),
        ("When the body measures 4 cm less than you like, bind off.", None),
    ],
)
def test_work_goes_on_until_then(printed: str, order: str | None) -> None:
    """The order is a sentence of its own; every letter keeps a place."""
    line = write_events(as_printed(printed))
    assert line.text == (printed if order is None else order)
    assert len(line.places) == len(line.text) + 1
