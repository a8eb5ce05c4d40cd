"""The chart and the yoke from above as data for a page to draw: squares and rings in runs of yarns. No I/O.

A run is a yarn, by its number in the file, a sign, and how many stitches. Runs keep what is sent small: most
stitches look like their neighbour.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import groupby
from typing import Any, Final

from stepper.plan.model import Round
from stepper.screen.cells import Square, draw_squares, is_turned
from stepper.screen.chart_lines import ChartWindow
from stepper.screen.course import SummedPlan
from stepper.screen.pages.strip import part_in_hand, rounds_above, rounds_below, window_of
from stepper.screen.pages.yoke_page import rings_of
from stepper.screen.scene import Scene
from stepper.screen.yarns import Yarns
from stepper.session.counting.tally import markers_in

LEAST_ROOM, MOST_ROOM = 4, 120
"""Fewest and most stitches of a round that are sent. Unit: stitches."""
ABOVE: Final = 4
"""Most rounds to come that are sent."""
BELOW: Final = 3
"""Most finished rounds that are sent."""


def list_yarns(scene: Scene) -> list[dict[str, Any]]:
    """List the yarns in the order of the file, by which runs name them, then those only the plan names."""
    return [
        {"name": yarn.name, "sign": yarn.sign, "colour": None if yarn.colour is None else yarn.colour.hex}
        for yarn in map(scene.yarns.of, _keys(scene.course, scene.yarns))
    ]


def yarn_numbers(course: SummedPlan, yarns: Yarns) -> dict[str, int]:
    """Return the number of each yarn, from 0, by its key."""
    return {key: number for number, key in enumerate(_keys(course, yarns))}


def _keys(course: SummedPlan, yarns: Yarns) -> Sequence[str]:
    return tuple(dict.fromkeys((*yarns.by_key, *(key for keys in course.yarns for key in keys))))


def describe_strip(scene: Scene, room: int) -> dict[str, Any] | None:
    """Describe the current round as squares, with the rounds around it; None if no round is in hand.

    Args:
        scene: What there is to show.
        room: How many stitches of a round are shown. Unit: stitches.

    Returns:
        Places in it are counted from the chart's right edge.
    """
    course = scene.course
    part = part_in_hand(course, scene.state)
    if part is None:
        return None
    here = course.rounds[scene.state.place.index]
    window = window_of(here, part, room)
    numbers = yarn_numbers(course, scene.yarns)
    first, end, place = part.start, part.end, scene.state.place.stitch
    marks = set(markers_in(here))
    if is_turned(here):
        total = here.progress
        first, end, marks = total - end, total - first, {total - mark for mark in marks}
    above = rounds_above(course, here.index, window, ABOVE)
    below = rounds_below(course, here.index, window, BELOW)
    rows = [
        *(_row(each, edge, window, numbers) for each, edge in reversed(above)),
        {**_row(here, window.first, window, numbers), "here": True},
        *(_row(each, edge, window, numbers) for each, edge in below),
    ]
    return {
        "first": window.first,
        "wide": window.end - window.first,
        "step": [first, end],
        "worked": place,
        "turned": is_turned(here),
        "markers": sorted(mark for mark in marks if window.first < mark < window.end),
        "rows": rows,
    }


def _row(round_: Round, first: int, window: ChartWindow, numbers: dict[str, int]) -> dict[str, Any]:
    """Describe a round seen through the window, from its right edge."""
    begin = max(0, first)
    shown = draw_squares(round_)[begin : begin + window.end - window.first]
    return {"number": round_.number, "runs": _runs(shown, numbers)}


def _runs(squares: Iterable[Square], numbers: dict[str, int]) -> list[list[int | str]]:
    return [
        [numbers.get(each.yarn, -1), each.sign, sum(1 for _ in run)] for each, run in groupby(squares)
    ]


def describe_yoke(course: SummedPlan, yarns: Yarns) -> dict[str, Any] | None:
    """Describe the yoke from the neck outwards, each round from its beginning; None if there is none."""
    rings = rings_of(course)
    if rings is None:
        return None
    numbers = yarn_numbers(course, yarns)
    return {
        "first": rings.first,
        "inner": rings.inner,
        "rings": [
            [[numbers.get(key, -1), sum(1 for _ in run)] for key, run in groupby(ring)]
            for ring in rings.yarns
        ],
    }
