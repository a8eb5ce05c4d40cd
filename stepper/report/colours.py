"""Whether colours can be told apart: in light, in grey, and by eyes that lack a kind of cone. Pure.

Rows are plain records; how they are drawn is up to the caller.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from itertools import product
from typing import Final

from stepper.craft.colours.colour import Rgb, contrast, grey, rgb_from_hex
from stepper.craft.colours.colour_difference import ValueWord, value_difference, value_word
from stepper.craft.colours.colour_mend import HARD_BELOW, ColourChange, find_mend
from stepper.craft.colours.colour_vision import VISIONS, Vision, hardest_vision, simulate_vision
from stepper.craft.stitches import Kind, stitch
from stepper.plan.model import Plan, Round
from stepper.project.model import Chart, Project
from stepper.records import dataclass

CALLED: Final[Mapping[Vision, str]] = {
    "red-blind": "red-blind (protanopia)",
    "green-blind": "green-blind (deuteranopia)",
    "blue-blind": "blue-blind (tritanopia)",
}
"""The full name of each kind of colour vision."""

PLAIN_ROUNDS: Final = "from one round to the next"
"""Where two yarns touch outside charts."""

Pair = tuple[str, str]


@dataclass(frozen=True, slots=True, kw_only=True)
class ChartSquares:
    """A chart as yarns: rounds from the top, squares from the left; None for a square without a stitch."""

    name: str
    squares: tuple[tuple[str | None, ...], ...]
    wide: float = 1.0
    """Width of a stitch divided by its height, at the gauge it is knitted at."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PairRow:
    """Two yarns that touch."""

    one: str
    other: str
    """Keys of the yarns."""
    where: tuple[str, ...]
    """Charts they touch in, or `PLAIN_ROUNDS`."""
    contrast: float
    """Contrast ratio. Range: 1 to 21."""
    lightness_apart: float
    """Difference in lightness, that is, in grey. Unit: L*."""
    in_grey: ValueWord
    hardest: Vision
    """The kind of colour vision that has the most trouble with the pair."""
    seen_apart: float
    """The difference that remains for it. Unit: CIEDE2000."""

    @property
    def hard(self) -> bool:
        """Whether it is hard to tell apart for some eyes."""
        return self.seen_apart < HARD_BELOW


@dataclass(frozen=True, slots=True, kw_only=True)
class Colours:
    """Everything about the colours of a garment."""

    names: dict[str, str]
    """The name of each yarn, by its key."""
    colours: dict[str, Rgb]
    """The colour of each yarn that has one, by its key."""
    charts: tuple[ChartSquares, ...]
    """Charts of more than one yarn."""
    pairs: tuple[PairRow, ...]
    """Pairs that touch, those nearest to each other in grey first."""
    unknown: tuple[str, ...]
    """Keys of yarns that touch another and have no colour in the file."""
    mend: ColourChange | None
    """The single change that mends most; None if none is needed or none helps."""

    def beside(self, yarn: str) -> tuple[str, ...]:
        """Return the keys of the yarns that touch a given one."""
        own = [(pair.one, pair.other) for pair in self.pairs if yarn in (pair.one, pair.other)]
        return tuple(other if one == yarn else one for one, other in own)

    def with_yarn(self, yarn: str) -> tuple[ChartSquares, ...]:
        """Return the charts that use a yarn."""
        return tuple(chart for chart in self.charts if any(yarn in line for line in chart.squares))


def compare_colours(project: Project, plan: Plan) -> Colours:
    """Work out every pair of yarns that touch, in charts and from round to round."""
    charts = tuple(_charts(project, plan))
    touching: dict[Pair, list[str]] = {}
    for chart in charts:
        for pair in _pairs_in(chart):
            touching.setdefault(pair, []).append(chart.name)
    for pair in _pairs_between(plan):
        touching.setdefault(pair, [PLAIN_ROUNDS])
    colours = {
        key: rgb_from_hex(yarn.colour) for key, yarn in project.yarns.items() if yarn.colour is not None
    }
    keys = dict.fromkeys(key for pair in touching for key in pair)
    rows = [
        _row(pair, where, colours)
        for pair, where in touching.items()
        if pair[0] in colours and pair[1] in colours
    ]
    rows.sort(key=lambda row: (row.lightness_apart, row.one, row.other))
    return Colours(
        names={key: yarn.name for key, yarn in project.yarns.items()},
        colours=colours,
        charts=charts,
        pairs=tuple(rows),
        unknown=tuple(key for key in keys if key not in colours),
        mend=find_mend(colours, [(row.one, row.other) for row in rows]),
    )


def list_views(found: Colours) -> Iterator[tuple[str, dict[str, Rgb]]]:
    """Yield every view of the garment with its colours: as it is, in grey, by each kind of colour vision."""
    yield "in colour", found.colours
    yield "in grey", {key: grey(colour) for key, colour in found.colours.items()}
    for vision in VISIONS:
        yield vision, {key: simulate_vision(colour, vision) for key, colour in found.colours.items()}


def colours_after_mend(found: Colours) -> dict[str, Rgb]:
    """Return the colours after the proposed change; as they are if none is proposed."""
    if found.mend is None:
        return found.colours
    return {**found.colours, found.mend.yarn: found.mend.colour}


def _row(pair: Pair, where: Iterable[str], colours: Mapping[str, Rgb]) -> PairRow:
    one, other = colours[pair[0]], colours[pair[1]]
    hardest, apart = hardest_vision(one, other)
    return PairRow(
        one=pair[0],
        other=pair[1],
        where=tuple(where),
        contrast=contrast(one, other),
        lightness_apart=value_difference(one, other),
        in_grey=value_word(one, other),
        hardest=hardest,
        seen_apart=apart,
    )


def _charts(project: Project, plan: Plan) -> Iterator[ChartSquares]:
    knitted = plan.charts
    for name, chart in project.charts.items():
        if name not in knitted:
            continue
        worked = [each for each in plan.rounds if each.chart == name]
        squares = tuple(
            _squares(chart, number, worked, project) for number in range(len(chart.rounds), 0, -1)
        )
        if len({key for line in squares for key in line if key is not None}) > 1:
            fabric = project.fabrics.get(worked[0].gauge) if worked else None
            wide = 1.0 if fabric is None else fabric.gauge.stitch_mm / fabric.gauge.round_mm
            yield ChartSquares(name=name, squares=squares, wide=wide)


def _squares(chart: Chart, number: int, worked: list[Round], project: Project) -> tuple[str | None, ...]:
    """Return the yarn of every square; a square that names none is worked in the current yarn."""
    cells = chart.rounds[number - 1]
    named = {cell.yarn for cell in cells}
    round_ = next((each for each in worked if each.chart_round == number), None)
    in_hand = [run.yarn for run in round_.runs if run.yarn not in named] if round_ is not None else []
    usual = in_hand[0] if in_hand else next(iter(project.yarns), "")
    return tuple((cell.yarn or usual) if cell.stitch else None for cell in cells)


def _pairs_in(chart: ChartSquares) -> dict[Pair, None]:
    """Find the pairs that touch, beside and above each other, and across the edges, since charts repeat."""
    found: dict[Pair, None] = {}
    height, width = len(chart.squares), len(chart.squares[0])
    for row in range(height):
        for column in range(width):
            here = chart.squares[row][column]
            right = chart.squares[row][(column + 1) % width]
            above = chart.squares[row - 1][column]
            for other in (right, above):
                if here is not None and other is not None and here != other:
                    found[_ordered(here, other)] = None
    return found


def _pairs_between(plan: Plan) -> dict[Pair, None]:
    """Find the pairs that touch from round to round where a round is in a single yarn."""
    found: dict[Pair, None] = {}
    before: Round | None = None
    below: frozenset[str] = frozenset()
    known: dict[int, frozenset[str]] = {}
    for each in plan.rounds:
        key = id(each.runs)
        if key not in known:
            known[key] = _yarns(each)
        yarns = known[key]
        if before is not None and each.before and 1 in (len(yarns), len(below)):
            for one, other in (*product(below, yarns - below), *product(yarns, below - yarns)):
                found[_ordered(one, other)] = None
        before, below = each, yarns
    return found


def _yarns(round_: Round) -> frozenset[str]:
    return frozenset(
        run.yarn for run in round_.runs if run.leaves and stitch(run.stitch).kind is not Kind.SHIFT
    )


def _ordered(one: str, other: str) -> Pair:
    return (one, other) if one < other else (other, one)
