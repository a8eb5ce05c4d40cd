"""Ordinary sentences of patterns in many dresses: each a frame with places, each place with wordings that say the same.

Source of the wordings: common practice, UK and US, old and modern print; the sentences are made up.
"""

from __future__ import annotations

import random
import re
from collections.abc import Iterator, Mapping, Sequence

LENGTHS = (
    "15 (16, 17) in", '15 (16, 17)"', "15 (16, 17) ins", "15 (16, 17) inches", "15 (16-17) in", "15 [16:17] in", '15 {16-17}"',
    "15 (16) 17 in", "15-16-17 in", "15, 16, 17 in", "15 (16–17) inches",
)  # fmt: skip
IN_BOTH_UNITS = (
    "38 (40.5, 43) cm / 15 (16, 17) in", "38 (40.5, 43) cm [15 (16, 17) in]", '38 [40.5, 43] cm (15 [16, 17]")', "38 {40.5-43} cm [15 {16-17} in]",
    "38 (40.5, 43) cm, 15 (16, 17) in",
)  # fmt: skip
ENDS = (
    ", ending with a WS row", ", ending on a WS row", ", ending after a WS row", ", end with a WS row", ", ending with a wrong-side row",
    ", ending with RS facing for next row", ", ending RS facing for next row", ", finishing after a WS row", ", ending ready for a RS row",
    ", end on a WS row", " ending with a WS row", "; end with a WS row", ", end WS row", ", ending by working a WS row",
    ", with RS facing for next row", ", thus ending with a WS row",
)  # fmt: skip
LISTS = ("4 (5, 6)", "4 [5, 6]", "4 {5-6}", "4 (5: 6)", "4 (5-6)", "4-5-6", "4 (5/6)", "4/5/6", "4 {5, 6}")
COUNTS = (
    ". 70 (76, 82) sts.", " — 70 (76, 82) sts.", " - 70 (76, 82) sts.", ". (70 (76, 82) sts)", ". [70 (76, 82) sts]", ". 70 (76, 82) stitches.",
    ". There are 70 (76, 82) sts.", ". You now have 70 (76, 82) sts.", " = 70 (76, 82) sts.", ". [70: 76: 82 sts.]", " (70 (76, 82) sts).",
    ". 70 [76, 82] sts.", ". 70 {76-82} sts.", ". Total 70 (76, 82) sts.", ". 70 (76, 82) sts now on needle.", ", 70 (76, 82) sts.",
)  # fmt: skip
TAKEN = ("Change to larger needles and ", "Switch to larger needles and ", "Change to larger needles; ", "Change to larger needles and, ", "Change to larger needles. ")
STOCKINETTE = ("in st st", "in stockinette stitch", "in St st", "in stocking stitch", "in stocking st", "in stockinette")

Frame = tuple[str, Mapping[str, Sequence[str]]]

FRAMES: Mapping[str, Frame] = {
    "length": (
        "{taken}{work} {fabric} until {piece} measures {length}{start}{end}.",
        {"taken": TAKEN, "work": ("work", "continue", "cont", "proceed"), "fabric": STOCKINETTE, "piece": ("piece", "work", "back", "it"),
         "length": LENGTHS, "start": (" from beg", " from beginning", " from cast-on edge", " from CO edge"), "end": ENDS},
    ),
    "even": (
        "{even} until {piece} measures {length}{end}.",
        {"even": ("Work even", "Cont even", "Continue even", "Work straight", "Cont straight", "Cont without shaping"),
         "piece": ("armhole", "armholes"), "length": LENGTHS, "end": ENDS},
    ),
    "both units": ("Work even until armhole measures {length}{end}.", {"length": IN_BOTH_UNITS, "end": ENDS}),
    "for": ("{work} {fabric} for {length}{end}.", {"work": ("Work", "Cont", "Continue"), "fabric": STOCKINETTE, "length": LENGTHS, "end": ENDS}),
    "again": (
        "{rep} until {piece} measures {length}{end}.",
        {"rep": ("Rep last 2 rows", "Rep these 2 rows", "Repeat the last 2 rows", "Rep these two rows"), "piece": ("piece",),
         "length": LENGTHS, "end": ENDS},
    ),
    "bind off": (
        "{off} {number} {sts} {at} next 2 rows{count}",
        {"off": ("Bind off", "BO", "Cast off", "B.O."), "number": LISTS, "sts": ("sts", "stitches"),
         "at": ("at beg of", "at beginning of", "at the beginning of the", "beg", "at start of"), "count": COUNTS},
    ),
    "shoulders": (
        "{off} 5 (6, 7) sts {at} next 4 rows{then}.",
        {"off": ("Bind off", "BO", "Cast off"), "at": ("at beg of", "at the beginning of", "beg"),
         "then": (", then 6 (6, 7) sts at beg of foll 2 rows", "; then 6 (6, 7) sts beg following 2 rows", " and 6 (6, 7) sts at beg of next 2 rows",
                  ", then 6 (6, 7) sts at beg of following 2 rows")},
    ),
    "cast on": (
        "{start}{on} {number} {sts}.",
        {"start": ("With smaller needles, ", "Using smaller needles "), "on": ("cast on", "CO", "c.o."),
         "number": ("91 (97, 103)", "91 [97, 103]", "91 {97-103}", "91 (97: 103)", "91 (97) 103", "91-97-103", "91 (97/103)"), "sts": ("sts", "stitches")},
    ),
    "join": (
        "{join}{twist}{mark}",
        {"join": ("Join to work in the round", "Join in the round", "Join in rnd", "Join for working in the round"),
         "twist": (", being careful not to twist", " without twisting", ", taking care not to twist"),
         "mark": (". Place marker for beg of rnd.", " and place marker for beg of rnd.", "; pm to mark beg of rnd.", ", placing a marker at beg of rnd.")},
    ),
    "hold": (
        "{place} next 20 sts {on} for left sleeve.",
        {"place": ("Place", "Slip", "Put", "Leave"), "on": ("on waste yarn", "onto waste yarn", "on a piece of waste yarn", "onto a length of scrap yarn")},
    ),
    "evenly": (
        "{head}{row}, {inc} 6 sts {evenly}{count}",
        {"head": ("Next row (RS): ",), "row": ("Knit", "K to end", "Knit across"), "inc": ("inc", "increasing", "increase"),
         "evenly": ("evenly", "evenly spaced", "evenly across", "evenly over row"), "count": COUNTS},
    ),
    "chart": (
        "{work} {rows} {of} {chart}.",
        {"work": ("Work", "Follow", "Knit"), "rows": ("rnds 1-20", "rounds 1 to 20", "rnds 1 through 20"), "of": ("of", "from"),
         "chart": ("Chart A", "chart A", "Chart A (page 4)")},
    ),
}  # fmt: skip


def fill(frame: Frame, chosen: Mapping[str, str]) -> str:
    """Return the sentence of a frame with one wording at each place."""
    text = re.sub(r"\{(\w+)\}", lambda match: chosen[match[1]], frame[0])
    return re.sub(r"(^|\. )([a-z])", lambda match: match[1] + match[2].upper(), text)


def first_of(frame: Frame) -> dict[str, str]:
    """Return the first wording of each place."""
    return {place: wordings[0] for place, wordings in frame[1].items()}


def one_changed(frame: Frame) -> Iterator[str]:
    """Yield the sentences in which one place has another wording than the first."""
    for place, wordings in frame[1].items():
        for wording in wordings[1:]:
            yield fill(frame, {**first_of(frame), place: wording})


def by_chance(frame: Frame, number: int, seed: str) -> list[str]:
    """Return some sentences with a wording drawn at each place, no sentence twice."""
    drawn = random.Random(seed)
    made = (fill(frame, {place: drawn.choice(of) for place, of in frame[1].items()}) for _ in range(6 * number))
    return list(dict.fromkeys(made))[:number]
