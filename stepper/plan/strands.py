"""Strands behind the work: every float, where to catch the long ones, which yarn lies below, three at once.

What is found is said before the round as a remark, and so is read out, shown and printed with it. No I/O.

Source: a float is caught when it is over an inch (J. Richards, "Stranding and catching in the back"); the
strand carried below makes the larger stitch and shows more, and keeping it the same matters most
(moderndailyknitting, 6 March 2023); three yarns in a round are slower and thicker (common practice).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from typing import Final

from stepper.craft.stitches import Kind, stitch
from stepper.plan.materials import float_limit
from stepper.plan.model import Caution, Group, Round, Run
from stepper.project.model import Project

MANY: Final = 3
"""Yarns in a round that are named in advance. Source: two at most in Fair Isle proper (Starmore)."""
_APART: Final = 3
"""Rounds with fewer yarns between two with many that do not end the stretch. Chosen here."""
_CATCH: Final = "Catch "
"""What a remark on floats begins with."""
_MOST_PLACES: Final = 8
"""Places to catch that are told one by one. Chosen here: more are not kept in mind."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Float:
    """One yarn passing behind stitches of others."""

    yarn: str
    start: int
    """Stitches of the round before the first one it passes. Unit: stitches."""
    stitches: int
    """How many it passes. Range: 1 and up. Unit: stitches."""


def floats(runs: Sequence[Run], *, flat: bool) -> tuple[Float, ...]:
    """Find every float of a round, also the ones that go around the join.

    Args:
        runs: The round, laid out flat.
        flat: Whether the row has ends, which no float crosses.

    Returns:
        In the order of the yarns and of the round; one around the join begins before the end of the round.
    """
    segments: dict[str, list[tuple[int, int]]] = {}
    worked = [run for run in runs if run.leaves and stitch(run.stitch).kind not in (Kind.EDGE, Kind.SHIFT)]
    place = 0
    for run in worked:
        own = segments.setdefault(run.yarn, [])
        end = place + run.leaves
        if own and own[-1][1] == place:
            own[-1] = (own[-1][0], end)
        else:
            own.append((place, end))
        place = end
    if len(segments) < 2:
        return ()
    found = []
    for yarn, own in segments.items():
        starts = [start for start, _ in own[1:]] + ([] if flat else [own[0][0] + place])
        for (_, end), start in zip(own, starts, strict=False):
            if start > end:
                found.append(Float(yarn=yarn, start=end % place, stitches=start - end))
    return tuple(found)


def longest_floats(runs: Sequence[Run], *, flat: bool) -> tuple[tuple[str, int], ...]:
    """Give the longest float of each yarn: stitches of other yarns between two of its own.

    Args:
        runs: The round, laid out flat.
        flat: Whether the row has ends, which no float crosses.

    Returns:
        Yarn and stitches, in the order in which the yarns first appear; nothing with fewer than two yarns.
        Unit: stitches.
    """
    worked = [run for run in runs if run.leaves and stitch(run.stitch).kind not in (Kind.EDGE, Kind.SHIFT)]
    longest = dict.fromkeys((run.yarn for run in worked), 0)
    if len(longest) < 2:
        return ()
    for each in floats(runs, flat=flat):
        longest[each.yarn] = max(longest[each.yarn], each.stitches)
    return tuple(longest.items())


def catches(one: Float, limit: int, total: int) -> tuple[int, ...]:
    """Give the stitches behind which a float is caught, so that no part of it is over the limit.

    Args:
        one: The float.
        limit: Longest part left free. Range: 1 and up. Unit: stitches.
        total: Stitches in the round.

    Returns:
        Numbers of stitches in the round, from 1, as far apart as can be; nothing where it need not be caught.
    """
    parts = -(-one.stitches // limit)
    steps = [(part * one.stitches + parts // 2) // parts for part in range(1, parts)]
    return tuple((one.start + step - 1) % total + 1 for step in steps)


def with_strands(rounds: Sequence[Round], project: Project) -> tuple[tuple[Round, ...], tuple[Caution, ...]]:
    """Add to each round with several yarns what there is to say about its strands.

    Returns:
        The rounds with their remarks, and what should be known before the first stitch.
    """
    stranded = {each.index: yarns for each in rounds if (yarns := _yarns(each))}
    if not stranded:
        return tuple(rounds), ()
    names = {key: yarn.name for key, yarn in project.yarns.items()}
    said: dict[int, list[str]] = {}
    cautions = []
    for stretch in _stretches([index for index, yarns in stranded.items() if len(yarns) >= MANY]):
        first = rounds[stretch[0]]
        # Said a round ahead, so that the third ball is at hand.
        said.setdefault(max(0, first.index - 1), []).append(_many(stretch, stranded, names))
        cautions.append(Caution(line=first.line, text=_many_ahead(stretch, rounds, stranded, names)))
    for index, words in _carried(rounds, stranded, names):
        said.setdefault(index, []).append(words)
    known: dict[tuple[int, str], str] = {}
    for index in stranded:
        each = rounds[index]
        key = (id(each.phrase), each.gauge)
        if key not in known:
            known[key] = catching(each, project)
        if known[key]:
            said.setdefault(index, []).append(known[key])
    done = [
        replace(each, remarks=(*each.remarks, *said[each.index])) if each.index in said else each
        for each in rounds
    ]
    return tuple(done), tuple(cautions)


def catches_of(round_: Round) -> tuple[str, ...]:
    """Give the remarks of a round that hold all through it: where its floats are caught."""
    return tuple(remark for remark in round_.remarks if remark.startswith(_CATCH))


def catching(round_: Round, project: Project) -> str:
    """Say where the long floats of a round are caught; nothing where there is none."""
    fabric = project.fabrics.get(round_.gauge)
    limit, _ = float_limit(project, fabric)
    if limit is None:
        return ""
    total = sum(run.leaves for run in round_.runs)
    long: dict[str, list[Float]] = {}
    for one in floats(round_.runs, flat=round_.flat):
        if one.stitches > limit:
            long.setdefault(one.yarn, []).append(one)
    sentences = []
    for yarn, found in long.items():
        places = sorted({place for one in found for place in catches(one, limit, total)})
        name = project.yarns[yarn].name if yarn in project.yarns else yarn
        over = max(one.stitches for one in found)
        sentences.append(
            f"{_CATCH}{name} behind {_where(places, round_, limit)}: it floats over {over} stitches"
        )
    return ". ".join(sentences)


def _where(places: list[int], round_: Round, limit: int) -> str:
    """Name the places, by the repeat where they are the same in each."""
    whole = round_.phrase[0] if len(round_.phrase) == 1 else None
    if isinstance(whole, Group) and whole.times > 1 and places:
        wide = whole.leaves // whole.times
        inside = sorted({(place - 1) % wide + 1 for place in places})
        if len(inside) * whole.times == len(places):
            return f"{_stitches(inside)} of each repeat"
    if len(places) > _MOST_PLACES:
        return f"every {limit} stitches or fewer"
    return _stitches(places)


def _stitches(numbers: list[int]) -> str:
    return f"stitch{'es' if len(numbers) > 1 else ''} {_listed(str(number) for number in numbers)}"


def _listed(words: Iterable[str]) -> str:
    items = list(words)
    return items[0] if len(items) == 1 else f"{', '.join(items[:-1])} and {items[-1]}"


def _yarns(round_: Round) -> tuple[str, ...]:
    """Give the yarns of a stranded round; nothing where no yarn is taken up again in it."""
    segments = Counter[str]()
    last = ""
    for run in round_.runs:
        if run.leaves and stitch(run.stitch).kind not in (Kind.EDGE, Kind.SHIFT):
            segments[run.yarn] += run.yarn != last
            last = run.yarn
    return tuple(segments) if len(segments) > 1 and max(segments.values()) > 1 else ()


def _stretches(indices: list[int]) -> list[list[int]]:
    """Put rounds together that are near each other."""
    found: list[list[int]] = []
    for index in indices:
        if found and index - found[-1][-1] <= _APART:
            found[-1].append(index)
        else:
            found.append([index])
    return found


def _many(stretch: list[int], stranded: dict[int, tuple[str, ...]], names: dict[str, str]) -> str:
    yarns = dict.fromkeys(yarn for index in stretch for yarn in stranded[index])
    most = max(len(stranded[index]) for index in stretch)
    span = stretch[-1] - stretch[0] + 1
    often = f"{span} rounds" if span == len(stretch) else f"{len(stretch)} of {span} rounds"
    often = "one round" if span == 1 else often
    head = f"From the next round on {most} yarns at once, in {often}"
    return f"{head}: {_listed(names.get(yarn, yarn) for yarn in yarns)}"


def _many_ahead(
    stretch: list[int], rounds: Sequence[Round], stranded: dict[int, tuple[str, ...]], names: dict[str, str]
) -> str:
    first, last = rounds[stretch[0]], rounds[stretch[-1]]
    yarns = dict.fromkeys(yarn for index in stretch for yarn in stranded[index])
    where = f"{first.section}, round {first.number}"
    if first.section == last.section and first is not last:
        where = f"{first.section}, rounds {first.number} to {last.number}"
    return (
        f"{where}: {len(yarns)} yarns in one round ({_listed(names.get(yarn, yarn) for yarn in yarns)}). "
        "That is slower, and thicker by a second strand behind each stitch."
    )


def _carried(
    rounds: Sequence[Round], stranded: dict[int, tuple[str, ...]], names: dict[str, str]
) -> Iterable[tuple[int, str]]:
    """Say once for each set of yarns which lies below; one order for the whole garment.

    The ground, which most of the garment is in, lies above all others; of the rest the one with the fewest
    stitches in such rounds lies lowest, since it needs most to be seen.
    """
    whole, inside = Counter[str](), Counter[str]()
    for each in rounds:
        for run in each.runs:
            if stitch(run.stitch).kind is not Kind.SHIFT:
                whole[run.yarn] += run.leaves
                inside[run.yarn] += run.leaves if each.index in stranded else 0
    ground = max(whole, key=lambda yarn: whole[yarn])
    order = sorted(inside, key=lambda yarn: (yarn == ground, inside[yarn]))
    told: set[frozenset[str]] = set()
    for index, yarns in stranded.items():
        key = frozenset(yarns)
        if key not in told:
            told.add(key)
            low, *others = [names.get(yarn, yarn) for yarn in order if yarn in key]
            if len(others) == 1:
                words = f"Carry {low} below {others[0]}, in every round with both"
            else:
                words = f"Carry {low} lowest, above it {', then '.join(others)}, in every round with them"
            yield index, words
