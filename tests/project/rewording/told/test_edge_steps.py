"""Shapings in steps at one edge, or at one end of rows. Source: common practice."""

from __future__ import annotations

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.told.edge_steps import write_edge_steps

_WS = "Bind off 3 sts at beginning of every WS row 1 times. Bind off 2 sts at beginning of every WS row 2 times."


def written(printed: str) -> str:
    """Return a line with its steps written one by one."""
    return write_edge_steps(as_printed(printed)).text


def test_each_step_is_a_sentence_wherever_its_place_stands() -> None:
    """Where, on which rows and how often may stand before all steps, or behind each."""
    told = {
        "At the neck edge (beginning of the WS rows) bind off 3 sts once and 2 sts twice.": _WS,
        "At the start of wrong-side rows, bind off 3 sts once, then 2 sts 2 times.": _WS,
        "Bind off at the beginning of WS rows for the neck: 3 sts once and 2 sts twice.": _WS,
        "At beg of foll WS rows, cast off 3 sts once, 2 sts twice.": _WS,
        "At beg of next WS row (neck edge) bind off 3 sts, then 2 sts at same edge twice.": _WS,
        "Bind off from the armhole edge 8 sts once and 7 sts once.": "Bind off 8 sts at armhole edge 1 times. Bind off 7 sts at armhole edge 1 times.",
        "Cast off 3 sts at armhole edge on next row, then 2 sts at the same edge on alternate rows twice.": "Bind off 3 sts at armhole edge on next row. Bind off 2 sts at armhole edge every 2nd row 2 times.",
        "Cast off for shoulder 6 sts at beg of next row and 5 sts at beg of foll alt row.": "Bind off 6 sts at beginning of next row. Work 1 row even. Bind off 5 sts at beginning of next row.",
        "Cast off 9 sts at the beginning of the next row and the remaining 8 two rows later.": "Bind off 9 sts at beginning of next row. Work 1 row even. Bind off rem 8 sts.",
        "Cast off 9 at the start of the next two rows, then 8 at the start of the two after.": "Bind off 9 sts at beginning of next two rows. Bind off 8 sts at beginning of next two rows.",
        "Cast off 3 sts at start of next 4 rows and the last 14 sts on the row after.": "Bind off 3 sts at beginning of next 4 rows. Bind off rem 14 sts.",
        "Dec 1 st at neck edge on next RS row and the following RS row.": "Dec 1 st at neck edge on next RS row, then every RS row 1 times.",
    }
    assert {printed: written(printed) for printed in told} == told


def test_steps_go_on_beside_the_other_edge() -> None:
    """ "At the same time" joins every step of an edge to what is shaped at the other, not the last of them alone."""
    steps = "bind off 8 sts at armhole edge 1 times, at the same time bind off 7 sts at armhole edge 1 times"
    neck = "dec 1 st at neck edge every RS row 2 times"
    assert written(f"D{neck[1:]}; at the same time, at armhole edge, bind off 8 sts once, and 7 sts once.") == f"Dec 1 st{neck[8:]}, at the same time {steps}."
    assert written(f"Bind off 8 sts at armhole edge once, then 7 sts once. At the same time {neck}.") == f"B{steps[1:]}, at the same time dec 1 st{neck[8:]}."
    told = f"Shoulder sts are bound off from the armhole edge at the same time as the neck is decreased, as follows: {neck}; at the same time, bind off 8 sts at armhole edge once."
    assert written(told) == f"Dec 1 st{neck[8:]}, at the same time bind off 8 sts at armhole edge 1 times."


def test_what_does_not_say_how_often_or_on_which_rows_stays() -> None:
    """Nobody can tell where such a shaping ends; none binds off at the end of a row, and of both sides each has its own."""
    left = (
        "At the beginning of RS rows bind off 3 sts.",
        "Bind off 3 sts at the beginning of each row: 2 sts.",
        "At the end of WS rows bind off 3 sts twice.",
        "At the beginning of rows bind off 3 sts twice.",
        "Bind off at the beginning of every other row 3 sts twice.",
        "Bind off for armholes at beg of every other row 3 sts twice and 2 sts once.",
        "Bind off 4 sts at the neck edge, k to end.",
        "Bind off 4 sts at the neck edge, then 2 sts.",
        "Bind off 3 sts at beginning of every WS row once, then 2 sts twice, at the same time rep dec row.",
        "Cast off 9 sts at the beginning of the next 2 rows and the remaining 8 two rows later.",
        "On every 2nd row at the neck edge bind off 1x3, 2x2 and 3x1 sts.",
        "Dec 1 st at neck edge twice.",
        "Twice bind off 3 sts at neck edge once, then 2 sts twice.",
        "Dec 1 st at neck edge on next row and 3 times more on foll alt rows.",
    )
    assert [printed for printed in left if written(printed) != printed] == []
