"""A knitter who works a plan's JSON document loop by loop, and reads the printed page by herself.

She shares nothing with the program: stitches come from a table of her own, counts from the page by an expression
of her own, and what is even from the rules in print. So what she finds is an outside check of a blended round.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from fractions import Fraction
from itertools import pairwise
from typing import Any

USES_LEAVES = {
    "k": (1, 1), "p": (1, 1), "k tbl": (1, 1), "p tbl": (1, 1), "sl": (1, 1), "rest": (1, 1), "ds": (1, 1),
    "m1": (0, 1), "m1l": (0, 1), "m1r": (0, 1), "m1p": (0, 1), "yo": (0, 1), "kfb": (1, 2), "pfb": (1, 2),
    "k2tog": (2, 1), "p2tog": (2, 1), "ssk": (2, 1), "ssp": (2, 1), "skp": (2, 1), "k3tog": (3, 1), "sk2p": (3, 1),
    "co": (0, 1), "pu": (0, 1), "bo": (1, 0), "draw": (1, 0), "graft": (1, 0),
    "pm": (0, 0), "sm": (0, 0), "rm": (0, 0), "turn": (0, 0), "w&t": (0, 0),
}  # fmt: skip
"""Loops each takes off the left needle and puts on the right one. Source: the Craft Yarn Council's list of knitting
abbreviations."""

SHAPES = {"m1", "m1l", "m1r", "m1p", "yo", "kfb", "pfb", "k2tog", "p2tog", "ssk", "ssp", "skp", "k3tog", "sk2p"}


@dataclass
class Needles:
    """Loops on the needle, each with a name of its own, and those on holders."""

    loops: list[int] = field(default_factory=list)
    held: dict[str, list[int]] = field(default_factory=dict)
    made: int = 0

    def work(self, round_: dict[str, Any]) -> Worked:
        """Work one round of the document from the first loop to the last."""
        assert len(self.loops) == round_["before"], where(round_)
        right: list[int] = []
        changes: list[Shaped] = []
        at = plain = 0  # loops of the old round that are used up, and plain stitches among what they became
        for code, times, name in round_["runs"]:
            left = len(self.loops) - at
            if code == "return":
                waiting = self.held[name]
                assert len(waiting) >= times, f"{where(round_)}: {len(waiting)} loops wait on {name}"
                right += waiting[:times]
                del waiting[:times]
                continue
            uses, leaves = (1, 0) if code == "hold" else USES_LEAVES[code]
            assert left >= uses * times, f"{where(round_)}: {times} times {code} find {left} loops"
            if code == "hold":
                self.held.setdefault(name, []).extend(self.loops[at : at + times])
            else:
                if code in SHAPES:
                    changes += [Shaped(code, plain, at + uses * done) for done in range(times)]
                plain += times * (uses == leaves == 1)
                right += range(self.made, self.made + leaves * times)
                self.made += leaves * times
            at += uses * times
        assert at == len(self.loops), f"{where(round_)}: {len(self.loops) - at} loops are not worked"
        assert len(right) == round_["after"], where(round_)
        self.loops = right
        self.held = {name: loops for name, loops in self.held.items() if loops}
        assert {name: len(loops) for name, loops in self.held.items()} == round_["held"], where(round_)
        return Worked(round_, tuple(changes), plain)


@dataclass(frozen=True)
class Shaped:
    """A change as it was met."""

    code: str
    plain: int
    """Plain stitches worked before it in the round."""
    used: int
    """Loops of the old round used up before it."""


@dataclass(frozen=True)
class Worked:
    """A round as it came out."""

    round_: dict[str, Any]
    changes: tuple[Shaped, ...]
    plain: int

    def uneven(self) -> str:
        """Say how the round breaks the rules of even shaping; empty if it keeps them.

        Gaps differ by at most one, and as many are larger as the division leaves over (quotient and remainder, as in
        the published examples: 51 + 4 has gaps 13, 13, 13, 12). In the round a gap runs across the join; in rows the
        two ends are about half a gap. No change stands more than two gaps from its exactly even place.
        """
        if not self.changes:
            return ""
        if len({change.code for change in self.changes}) != 1:
            return "changes of several kinds"
        number, flat = len(self.changes), self.round_["flat"]
        takes = USES_LEAVES[self.changes[0].code][0]
        stitch_of_gap = 1 if takes == 1 else 0  # worked into the last stitch of its gap
        inner = [later.plain - earlier.plain + stitch_of_gap for earlier, later in pairwise(self.changes)]
        first = self.changes[0].plain + stitch_of_gap
        tail = self.plain - self.changes[-1].plain
        gaps = inner if flat else [first + tail, *inner]
        if gaps and max(gaps) - min(gaps) > 1:
            return f"gaps of {min(gaps)} to {max(gaps)}"
        total = self.plain + stitch_of_gap * number
        if not flat and sum(gap > total // number for gap in gaps) != total % number:
            return "not so many larger gaps as are left over"
        if flat and gaps and max(first, tail) > max(gaps) // 2 + 1:
            return f"ends of {first} and {tail} beside gaps of {max(gaps)}"
        way = Fraction(self.round_["before"], number)
        for at, change in enumerate(self.changes):
            even = Fraction(total * (2 * at + (1 if flat else 2)), 2 * number)
            stands = change.plain + stitch_of_gap * (at + 1)
            if abs(stands - even) > 2 * way:
                return f"change {at + 1} stands {float(abs(stands - even)):.1f} stitches from its even place"
        return ""


def where(round_: dict[str, Any]) -> str:
    """Name a round."""
    return f"{round_['section']} {round_['number']} ({round_['label'] or round_['instruction']})"


def knit(document: dict[str, Any]) -> list[Worked]:
    """Work a whole document, loop by loop."""
    needles = Needles()
    return [needles.work(round_) for round_ in document["rounds"]]


def printed_target(page: str, label: str, size: int) -> int | None:
    """Read from the page what a line ends with in a size (its place in the lists); None if it prints no count."""
    (line,) = re.findall(rf"^\s*{re.escape(label)}:(.*)$", page, re.MULTILINE)
    found = re.search(r"(?:\. |to )(\d+) \(([\d, ]+)\) sts\.\s*$", line)
    if found is None:
        return None
    return [int(found.group(1)), *(int(each) for each in found.group(2).split(","))][size]


def rounds_alike(one: list[dict[str, Any]], other: list[dict[str, Any]]) -> Iterator[str]:
    """Compare the stitches of two lists of rounds; yield what differs."""
    if len(one) != len(other):
        yield f"{len(one)} rounds and {len(other)}"
    for mine, yours in zip(one, other, strict=False):
        if mine["runs"] != yours["runs"]:
            yield f"{where(mine)}: {mine['instruction']} and {yours['instruction']}"
