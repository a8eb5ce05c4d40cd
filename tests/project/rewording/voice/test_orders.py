"""A line in another voice becomes an order, through all the turns in their order. Invented; common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.voice.orders import write_orders


@pytest.mark.parametrize(
    ("printed", "order"),
    [
        ("Now you knit 4 rounds.", "Knit 4 rounds."),
        ("The next 6 stitches are slipped to a holder.", "Slip the next 6 stitches to a holder."),
        ("Using the ribbing needles, you cast on 80 sts.", "Using rib-size needles, cast on 80 sts."),
    ],
)
def test_another_voice_becomes_an_order(printed: str, order: str) -> None:
    """The grammar reads orders; "you knit" and "are slipped" ask for the same."""
    assert write_orders(as_printed(printed)).text == order


def test_what_is_an_order_stays_as_printed() -> None:
    """Nothing is put into words that need none."""
    line = as_printed("Knit 4 rounds.")
    assert write_orders(line).text == line.text


def test_a_taste_is_taken_out_before_the_needle_is_put_first() -> None:
    """Behind "as long as you like" the needles would not stand at the end, and the line would not be read."""
    line = write_orders(as_printed("Knit for 10 cm on main needles, or as long as you like."))
    assert line.text == "Change to main-size needles. Knit for 10 cm."
    assert line.kept == ("or as long as you like",)
