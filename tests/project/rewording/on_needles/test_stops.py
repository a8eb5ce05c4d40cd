"""A last round that stops before its end, told in any order. Source: common practice."""

from __future__ import annotations

from stepper.project.rewording.on_needles.stops import write_stops
from stepper.project.rewording.reworded import as_printed
from tests.tables import each_row


@each_row(
    ("printed", "order"),
    [
        ("Knit 5 rounds, ending the last one 5 sts before marker.", "Knit 5 rounds. Stop short 5 sts."),
        ("On the last round stop 6 (7) sts before the end-of-round marker and put the next 12 on a thread.", "Stop short 6 (7) sts. Put the next 12 on a thread."),
        ("Knit 2 rnds. Stop 4 sts short of BOR on the last rnd.", "Knit 2 rnds. Stop short 4 sts."),
        ("On the last round stop 5 sts before the marker, and slip the next 10 sts onto waste yarn, removing marker.", "Stop short 5 sts. Slip the next 10 sts onto waste yarn."),
        ("Knit 2 rnds, ending 5 sts before marker. Slip next 10 sts onto waste yarn and remove the marker.", "Knit 2 rnds. Stop short 5 sts. Slip next 10 sts onto waste yarn."),
        ("Knit 2 rnds, ending 4 sts before the end of the round. Slip the next 8 sts onto waste yarn, removing marker.", "Knit 2 rnds. Stop short 4 sts. Slip the next 8 sts onto waste yarn, removing marker."),
        # another place, or another row
        ("Knit 5 rounds, ending 5 sts before the side marker.", None),
        ("Work 5 cm, ending 5 sts before the end of the sleeve.", None),
        ("Knit to 5 sts before the marker.", None),
    ],
)
def test_what_is_left_of_the_last_round_is_a_sentence_of_its_own(printed: str, order: str | None) -> None:
    """What is ordered behind it begins a sentence too."""
    line = write_stops(as_printed(printed))
    assert line.text == (printed if order is None else order)
    assert len(line.places) == len(line.text) + 1
