"""Put a line that orders in another voice into the orders the grammar knows. No I/O."""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.reworded import Reworded
from stepper.project.rewording.told.straight import put_works_in_order
from stepper.project.rewording.voice.imperative import put_in_orders
from stepper.project.rewording.voice.needle_roles import write_needle_roles
from stepper.project.rewording.voice.to_taste import take_tastes_out


def write_orders(line: Reworded) -> Reworded:
    """Return a line with each sentence as an order, in the order of words that the grammar has.

    Args:
        line: The line as printed, its lists of sizes in one form.
    """
    for turned in _TURNS:
        line = turned(line)
    return line


_TURNS: Final = (take_tastes_out, write_needle_roles, put_in_orders, put_works_in_order)
"""In this order: what stands beside a length first, so that the rest is the order alone."""
