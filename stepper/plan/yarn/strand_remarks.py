"""Remarks about strands: where long floats are caught, which yarn lies below, and when there are three yarns.

Each becomes a remark before the round, and so is read out, shown and printed with it. No I/O.

Source: the strand carried below makes the larger stitch and shows more, and keeping it the same matters most
(moderndailyknitting, 6 March 2023); three yarns in a round are slower and thicker (common practice).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from typing import Final

from stepper.craft.figures import list_words
from stepper.craft.stitches import Kind, stitch
from stepper.plan.materials import float_limit
from stepper.plan.model import Caution, Group, Round, Run
from stepper.plan.yarn.floats import Float, floats, places_to_catch
from stepper.project.model import Project

MANY: Final = 3
"""From this many yarns, a round's yarns are named in advance. Source: two at most in Fair Isle proper
(Starmore)."""
_APART: Final = 3
"""Rounds with fewer yarns between two with many that do not end the stretch. Chosen here."""
_CATCH: Final = "Catch "
"""Beginning of a remark about floats."""
_CARRY: Final = "Carry "
"""Beginning of a remark about which yarn lies below."""
_MOST_PLACES: Final = 8
"""Most places to catch that are listed one by one. Chosen here: nobody remembers more."""


def with_strands(rounds: Sequence[Round], project: Project) -> tuple[tuple[Round, ...], tuple[Caution, ...]]:
    """Add to each round with several yarns what there is to say about its strands.

    Returns:
        The rounds with their remarks, and what should be known before the first stitch.
    """
    stranded = _stranded(rounds)
    if not stranded:
        return tuple(rounds), ()
    names = {key: yarn.name for key, yarn in project.yarns.items()}
    said: dict[int, list[str]] = {}
    cautions = []
    for stretch in _stretches([index for index, yarns in stranded.items() if len(yarns) >= MANY]):
        first = rounds[stretch[0]]
        # Said a round ahead, so that the third ball is at hand.
        said.setdefault(first.index - 1, []).append(_many(stretch, stranded, names))
        cautions.append(Caution(line=first.line, text=_many_ahead(stretch, rounds, stranded, names)))
    for index, words in _carried(rounds, stranded, names):
        said.setdefault(index, []).append(words)
    places: dict[int, Caught] = {}
    for index, caught, words in _caught(rounds, stranded, project):
        said.setdefault(index, []).append(words)
        places[index] = caught
    done = [
        replace(
            each,
            remarks=(*each.remarks, *said[each.index]),
            caught=tuple(places.get(each.index, {}).items()),
        )
        if each.index in said
        else each
        for each in rounds
    ]
    return tuple(done), tuple(cautions)


def catches_of(round_: Round) -> tuple[str, ...]:
    """Return the remarks that apply throughout a round: where its floats are caught."""
    return tuple(remark for remark in round_.remarks if remark.startswith(_CATCH))


def carrying_of(round_: Round) -> tuple[str, ...]:
    """Return the remarks of a round on which of its yarns is carried below."""
    return tuple(remark for remark in round_.remarks if remark.startswith(_CARRY))


Caught = dict[str, tuple[int, ...]]
"""Places where floats are caught, by yarn. Unit: stitches of the round, from 1."""


def _caught(
    rounds: Sequence[Round], stranded: dict[int, tuple[str, ...]], project: Project
) -> Iterator[tuple[int, Caught, str]]:
    """Find for each round where its long floats are caught, with the words for it."""
    known: dict[tuple[object, ...], tuple[Caught, str]] = {}
    below: Caught = {}
    last = -1
    for index in stranded:
        each = rounds[index]
        below = below if index == last + 1 and each.before == each.after else {}
        if each.flat:  # a row is met from the other end by the next one
            below = {
                yarn: tuple(each.before + 1 - place for place in reversed(places))
                for yarn, places in below.items()
            }
        key = (id(each.phrase), each.gauge, tuple(below.items()))
        if key not in known:
            known[key] = find_catches(each, project, below)
        below, words = known[key]
        last = index
        if words:
            yield index, below, words


def find_catches(round_: Round, project: Project, below: Mapping[str, tuple[int, ...]]) -> tuple[Caught, str]:
    """Find where the long floats of a round are caught.

    Args:
        round_: The round.
        project: The checked file, for the gauge, the limit and the names.
        below: Where those of the round below are caught.

    Returns:
        The places by yarn, and the words for them; both empty where there is no long float.
    """
    limit, _ = float_limit(project, project.fabrics[round_.gauge])
    total = sum(run.leaves for run in round_.runs)
    long: dict[str, list[Float]] = {}
    for one in floats(round_.runs, flat=round_.flat, over=limit):
        long.setdefault(one.yarn, []).append(one)
    caught: Caught = {}
    sentences = []
    for yarn, found in long.items():
        places = places_to_catch(found, limit, total, frozenset(below.get(yarn, ())))
        caught[yarn] = places
        name = project.yarns[yarn].name if yarn in project.yarns else yarn
        over = max(one.stitches for one in found)
        where = _where(list(places), round_, limit)
        sentences.append(f"{_CATCH}{name} behind {where}: it floats over {over} stitches")
    return caught, ". ".join(sentences)


def _where(places: list[int], round_: Round, limit: int) -> str:
    """Name the places, relative to the repeat if they are the same in each."""
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
    return f"stitch{'es' if len(numbers) > 1 else ''} {list_words(str(number) for number in numbers)}"


def _stranded(rounds: Sequence[Round]) -> dict[int, tuple[str, ...]]:
    """Return the yarns of each stranded round, by its index. Like rounds share their runs."""
    known: dict[int, tuple[str, ...]] = {}
    found = {}
    for each in rounds:
        key = id(each.runs)
        if key not in known:
            known[key] = _yarns(each.runs)
        if known[key]:
            found[each.index] = known[key]
    return found


def _yarns(runs: tuple[Run, ...]) -> tuple[str, ...]:
    """Return the yarns of a stranded round; empty if no yarn is taken up again in it."""
    segments = Counter[str]()
    last = ""
    for run in runs:
        if run.leaves and stitch(run.stitch).kind not in (Kind.EDGE, Kind.SHIFT):
            segments[run.yarn] += run.yarn != last
            last = run.yarn
    return tuple(segments) if len(segments) > 1 and max(segments.values()) > 1 else ()


def _stretches(indices: list[int]) -> list[list[int]]:
    """Group rounds that are near each other."""
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
    often = f"for {span} rounds" if span == len(stretch) else f"in {len(stretch)} of {span} rounds"
    head = f"From the next round on {most} yarns at once, {often}"
    if span == 1:
        head = f"In the next round {most} yarns at once"
    return f"{head}: {list_words(names.get(yarn, yarn) for yarn in yarns)}"


def _many_ahead(
    stretch: list[int], rounds: Sequence[Round], stranded: dict[int, tuple[str, ...]], names: dict[str, str]
) -> str:
    first, last = rounds[stretch[0]], rounds[stretch[-1]]
    yarns = dict.fromkeys(yarn for index in stretch for yarn in stranded[index])
    most = max(len(stranded[index]) for index in stretch)
    named = "of " * (most < len(yarns)) + list_words(names.get(yarn, yarn) for yarn in yarns)
    where = f"{first.section}, round {first.number}"
    if first.section == last.section and first is not last:
        where = f"{first.section}, rounds {first.number} to {last.number}"
    return (
        f"{where}: {most} yarns in one round ({named}). "
        "That is slower, and thicker by a second strand behind each stitch."
    )


def _carried(
    rounds: Sequence[Round], stranded: dict[int, tuple[str, ...]], names: dict[str, str]
) -> Iterable[tuple[int, str]]:
    """Say once for each set of yarns which lies below, with one order for the whole garment.

    The ground, which most of the garment is in, lies above all others; of the rest the one with the fewest
    stitches in such rounds lies lowest, since it needs most to be seen.
    """
    whole, inside = Counter[str](), Counter[str]()
    often = Counter(id(each.runs) for each in rounds)  # like rounds share their runs
    for each in rounds:
        times = often.pop(id(each.runs), 0)
        for run in each.runs if times else ():
            if stitch(run.stitch).kind is not Kind.SHIFT:
                left = times * run.leaves
                whole[run.yarn] += left
                inside[run.yarn] += left * (each.index in stranded)
    ground = max(whole, key=lambda yarn: whole[yarn])
    order = sorted(inside, key=lambda yarn: (yarn == ground, inside[yarn]))
    told: set[frozenset[str]] = set()
    for index, yarns in stranded.items():
        key = frozenset(yarns)
        if key not in told:
            told.add(key)
            low, *others = [names.get(yarn, yarn) for yarn in order if yarn in key]
            if len(others) == 1:
                words = f"{_CARRY}{low} below {others[0]}, in every round with both"
            else:
                words = f"{_CARRY}{low} lowest, above it {', then '.join(others)}, in every round with them"
            yield index, words
