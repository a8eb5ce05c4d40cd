"""How stitches flow through a garment: which piece continues another, divides from it or joins it. Pure.

A strand is what is worked in one go from an edge: a cast-on, stitches picked up, or stitches taken off hold.
Stitches put on hold link strands by their name. Nothing here depends on the order of sections.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import field, replace
from typing import Literal

from stepper.plan.model import Item, runs_written
from stepper.records import dataclass
from stepper.report.measure.measuring import AnyRound

Beginning = Literal["cast-on", "pick-up", "return"]
Ending = Literal["bind-off", "closed", "held", "open"]

_EDGES = frozenset({"co", "bo", "pu", "hold", "return", "graft", "draw"})


@dataclass(frozen=True, slots=True)
class Passage:
    """Stitches that went from one strand to another by way of a holder."""

    name: str
    """What they were held for."""
    stitches: int
    source: int
    """Number of the strand they were put on hold in."""
    left_at: int
    """Index of the round that put them on hold."""
    target: int
    """Number of the strand that takes them up; -1 if none."""
    taken_at: int
    """Index of the round that takes them up; -1 if none."""
    opens: bool = False
    """Whether the strand that takes them up begins with them."""
    closes: bool = False
    """Whether the strand they left ended with them, with nothing left on the needles."""


@dataclass(slots=True, kw_only=True)
class Strand:
    """Rounds worked in one go, and again after a rest on a holder."""

    number: int
    begins: Beginning
    rounds: list[int] = field(default_factory=list)
    """Indexes of its rounds, in working order."""
    ends: Ending = "open"


@dataclass(frozen=True, slots=True, kw_only=True)
class Flow:
    """The strands of a garment, and what passes between them."""

    strands: tuple[Strand, ...]
    passages: tuple[Passage, ...]
    edges: tuple[dict[str, int], ...]
    """For each round, how many stitches edges and holders bring to the needles or take off, by code."""

    def leaving(self, number: int) -> tuple[Passage, ...]:
        """Return what leaves a strand for another."""
        return tuple(each for each in self.passages if each.source == number != each.target)

    def joining(self, number: int) -> tuple[Passage, ...]:
        """Return what joins a strand from another."""
        return tuple(each for each in self.passages if each.target == number != each.source)

    def has(self, index: int, *codes: str) -> bool:
        """Return whether a round casts on, binds off, holds or returns stitches, as the codes ask."""
        return any(code in self.edges[index] for code in codes)


def follow_stitches(rounds: Sequence[AnyRound]) -> Flow:
    """Follow the stitches of a garment through all its rounds."""
    known: dict[int, tuple[dict[str, int], list[tuple[str, str, int]]]] = {}
    strands: list[Strand] = []
    passages: list[Passage] = []
    held: dict[str, list[Passage]] = {}
    edges = []
    for index, each in enumerate(rounds):
        if id(each.phrase) not in known:
            known[id(each.phrase)] = _edges_of(each.phrase)
        found, moved = known[id(each.phrase)]
        edges.append(found)
        opens = each.before == 0 or not strands
        if opens:
            _open(strands, held, found, moved)
        strand = strands[-1]
        strand.rounds.append(index)
        for code, name, stitches in moved:
            if code == "return":
                taken = held.pop(name, [])
                passages += [replace(one, target=strand.number, taken_at=index, opens=opens) for one in taken]
            else:
                closes = each.after == 0
                held.setdefault(name, []).append(
                    Passage(name, stitches, strand.number, index, -1, -1, closes=closes)
                )
        if each.after == 0:
            strand.ends = _ending(found)
    passages += [one for left in held.values() for one in left]
    return Flow(
        strands=tuple(sorted(strands, key=lambda strand: strand.number)),
        passages=tuple(passages),
        edges=tuple(edges),
    )


def _open(
    strands: list[Strand],
    held: dict[str, list[Passage]],
    found: dict[str, int],
    moved: list[tuple[str, str, int]],
) -> None:
    """Begin a strand, or continue one that was put on hold as a whole."""
    names = [name for code, name, _ in moved if code == "return"]
    if len(names) == 1:
        left = held.get(names[0], [])
        whole = left[0] if len(left) == 1 and left[0].closes else None
        if whole is not None:
            again = next(strand for strand in strands if strand.number == whole.source)
            again.ends = "open"
            strands.remove(again)
            strands.append(again)
            return
    begins: Beginning = "return" if names else "pick-up" if "pu" in found else "cast-on"
    strands.append(Strand(number=len(strands), begins=begins))


def _ending(found: dict[str, int]) -> Ending:
    if "hold" in found:
        return "held"
    return "closed" if "graft" in found or "draw" in found else "bind-off"


def _edges_of(phrase: tuple[Item, ...]) -> tuple[dict[str, int], list[tuple[str, str, int]]]:
    """Add up what comes and goes by edges and holders, and list by name what is held and returned."""
    found: dict[str, int] = {}
    moved: dict[tuple[str, str], int] = {}
    for run in runs_written(phrase):
        if run.stitch in _EDGES:
            found[run.stitch] = found.get(run.stitch, 0) + run.times
        if run.stitch in ("hold", "return"):
            key = (run.stitch, run.yarn)
            moved[key] = moved.get(key, 0) + run.times
    # What is returned comes first: a round that joins and holds at once takes up what lay there before it.
    ordered = sorted(moved.items(), key=lambda pair: pair[0][0] != "return")
    return found, [(code, name, stitches) for (code, name), stitches in ordered]
