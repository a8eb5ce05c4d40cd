"""Read charts drawn as text: a line for each round, the first at the bottom, a sign for each stitch. No I/O.

A cable is drawn over as many squares as it has stitches: `cccc` is one 2/2 RC.

Source of the reading direction: chart conventions, bottom row first, one square one stitch; in the round
every row is read from right to left. The drawing itself is kept as printed, from left to right.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence

from stepper.craft import stitches
from stepper.project.model import Cell, Chart
from stepper.project.problems import Problem, Span, nearest

_NO_STITCH = ("no stitch", "none", "no st")
MAX_WIDTH = 500
MAX_ROUNDS = 500


def read_key(
    meaning: str, place: Span, yarns: Mapping[str, object], own: Mapping[str, str] | None = None
) -> Cell | Problem:
    """Read what a sign in the key stands for: a yarn, a stitch, or both (`A p`).

    Args:
        meaning: The words of the key.
        place: Where they stand.
        yarns: Those of the file, by their keys.
        own: The stitches that the page means by its own abbreviations, by these.
    """
    plain = " ".join(meaning.split())
    plain = (own or {}).get(plain, plain)
    if plain.lower() in _NO_STITCH:
        return Cell("", None)
    if plain in yarns:
        return Cell("k", plain)
    found = stitches.find_stitch(plain)
    if found is not None:
        return Cell(found.code, None)
    yarn, _, stitch = plain.partition(" ")
    found = stitches.find_stitch(stitch) if stitch else None
    if yarn in yarns and found is not None:
        return Cell(found.code, yarn)
    return place.problem(
        f'"{plain}" is neither a yarn of this file nor a stitch.',
        nearest(plain, [*yarns, *stitches.list_codes()])
        or "Name a yarn of `yarn`, a stitch, or `no stitch`.",
    )


def _usual(widths: Iterable[int]) -> int:
    """Return the width that most rounds have; in a tie, the first seen."""
    return Counter(widths).most_common(1)[0][0]


def draw_chart(
    name: str, lines: Sequence[tuple[str, Span]], key: Mapping[str, Cell], place: Span
) -> tuple[Chart | None, list[Problem]]:
    """Make a chart from its drawn lines.

    Args:
        name: Name of the chart.
        lines: The drawn lines from the top down, each with its place.
        key: What each sign stands for.
        place: Where the chart begins in the file.

    Returns:
        The chart, or None with the problems that stopped it.
    """
    drawn = [(text.rstrip(), where) for text, where in lines if text.strip()]
    if " " in key:  # a blank square may end a line, and editors take blanks off there
        widest = max((len(text) for text, _ in drawn), default=0)
        drawn = [(text.ljust(widest), where) for text, where in drawn]
    problems: list[Problem] = []
    if not drawn:
        return None, [place.problem(f'chart "{name}" has no rounds.')]
    width = _usual(len(text) for text, _ in reversed(drawn))
    usual = "round 1 has" if width == len(drawn[-1][0]) else "most have"
    if width > MAX_WIDTH or len(drawn) > MAX_ROUNDS:
        return None, [place.problem(f'chart "{name}" is larger than {MAX_WIDTH} by {MAX_ROUNDS} squares.')]
    rounds: list[tuple[Cell, ...]] = []
    unknown: set[str] = set()
    for number, (text, where) in enumerate(reversed(drawn), start=1):
        if len(text) != width:
            problems.append(
                where.problem(
                    f'round {number} of chart "{name}" has {len(text)} squares; {usual} {width}.',
                    "Every line of a chart is as long as the others; draw `no stitch` where there is none.",
                )
            )
        cells = []
        for column, sign in enumerate(text):
            cell = key.get(sign)
            if cell is None and sign not in unknown:  # each is told once, where it stands first
                unknown.add(sign)
                spot = Span(line=where.line, column=where.column + column)
                problems.append(
                    spot.problem(f'"{sign}" is not in the key of chart "{name}".', "Add it to `key`.")
                )
            if cell is None:
                cell = Cell("k", None)
            cells.append(cell)
        rounds.append(_crossed(name, number, cells, where, problems))
    if problems:
        return None, problems
    return Chart(name=name, rounds=tuple(rounds), place=place), []


def _crossed(
    name: str, number: int, cells: list[Cell], where: Span, problems: list[Problem]
) -> tuple[Cell, ...]:
    """Join the squares of each cable: the first becomes the cable, the others `no stitch`.

    A cable drawn in a single square stays as it is.
    """
    made = list(cells)
    at = 0
    while at < len(cells):
        end = at + 1
        while end < len(cells) and cells[end] == cells[at]:
            end += 1
        entry = stitches.find_stitch(cells[at].stitch) if cells[at].stitch else None
        if entry is not None and entry.kind is stitches.Kind.CABLE and end - at > 1:
            if (end - at) % entry.uses:
                spot = Span(line=where.line, column=where.column + at, length=end - at)
                problems.append(
                    spot.problem(
                        f'{entry.code} takes {entry.uses} squares; round {number} of chart "{name}" '
                        f"has {end - at} of it side by side.",
                    )
                )
            for square in range(at, end):
                if (square - at) % entry.uses:
                    made[square] = Cell("", None)
        at = end
    return tuple(made)
