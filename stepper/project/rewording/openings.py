"""Put what a sentence opens with in the grammar's order: needles, yarn, side, and what is only said. No I/O.

Theory of operation. Before it says what to do, a printed sentence says with what and from where: "With RS
facing, using dpns and MC, beginning at the underarm, pick up and knit 40 sts". These phrases come in any
number, in any order, joined by commas or "and". Each is of one of a few kinds that can be told by how it
begins; the sentence is written anew as "change to ... needles. with MC, with rs facing, pick up and knit 40
sts", and what works no stitches - needles without a size, a way of casting on, a place along an edge - is
said with the line. One phrase of no known kind leaves the whole opening as it is printed. Source: the
wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.craft.needles import BARE_SIZE, SIZE, UK_SIZE
from stepper.project.rewording.reworded import Reworded
from stepper.regex import regex

_WITH: Final = r"(?:with|using|working\s+with)\s+(?:the\s+|a\s+|an\s+|your\s+)?"
_SIDE: Final = r"(?:rs|ws|right[-\s]side|wrong[-\s]side)"
_FRACTION: Final = r"(?:\d\s?(?:[¼½¾]|[13]/[24])\s?mm(?:\s*\(\s*(?:uk|us|no\.?)\s*\d{1,2}\s*\))?)"
"""A size in millimetres as British pages print it: "3¼mm", "3¼mm (No. 10)"."""
_NOUN: Final = r"(?:needles?|ndls?\.?|dpns?|circulars?)"
_LIKE: Final = (
    r"(?:(?:set\s+of|pair\s+of|two|four|five|2|4|5|short|long|shorter|longer|straight|circular|circ\.?|double[-\s]pointed|"
    r"spare|second|other|single|\d+\s*(?:cm|in\.?|inch(?:es)?|\")(?:\s*/\s*\d+\s*(?:cm|in\.?|inch(?:es)?|\"))?|[,-])\s*)*"
)
_CABLE: Final = r"\d+\s*(?:cm|in\.?|inch(?:es)?|\")(?:\s*/\s*\d+\s*(?:cm|in\.?|inch(?:es)?|\"))?"
_LONG: Final = rf"(?:\s*\(\s*(?:{_CABLE}(?:\s+long)?|{_CABLE}\s+cable)\s*\))?"
"""How long a circular needle is, in brackets behind it."""
PLACE: Final = (
    r"(?:left|right|front|back|cent(?:er|re)|middle|side|neck|neckline|shoulder|armhole|armpit|underarm|thumb|heel|gusset|"
    r"flap|edge|edges|selvedge|selvage|band|button|buttonhole|collar|hood|body|sleeve|cuff|hem|lower|upper|bottom|top|"
    r"first|second|other|inside|outside|corner|seam|opening|cast-?on|cast-?off|bind-?off|bound-?off|end|beginning|tip|"
    r"point|paw|paws|foot|feet|leg|legs|head|nose|snout|muzzle|ear|ears|tail|arm|arms|hand|hands|crown|brim|waist|base|narrow|wide|of|the|at)"
)
_KINDS: Final = tuple(
    (kind, regex(expression, re.IGNORECASE))
    for kind, expression in (
        (
            "facing",
            rf"(?:(?:and\s+)?with\s+)?(?:the\s+)?(?P<side>{_SIDE})(?:\s+of\s+(?:the\s+)?(?:work|piece|knitting|fabric|front|back|body|sleeve|left\s+front|right\s+front))?\s+facing(?:\s+(?:you|me|out|outwards))?\b",
        ),
        (
            "sized",
            rf"{_WITH}(?P<needle>(?:{SIZE}|{_FRACTION}|{UK_SIZE}|{BARE_SIZE}|smaller|larger|finer|thinner|thicker|coarser)(?:\s+|$){_LIKE}{_NOUN})(?=\W|$){_LONG}",
        ),
        ("sizeless", rf"(?:with|using|on)\s+(?:the\s+|a\s+|an\s+|your\s+)?{_LIKE}{_NOUN}(?=\W|$)"),
        (
            "yarn",
            r"(?:with|using)\s+(?:the\s+)?(?:yarn\s+|colou?r\s+)?(?-i:(?P<yarn>MC|CC\d?|[A-Z]))(?=\s*,|\s+and\b|\s+[a-z]|\s*$)",
        ),
        (
            "method",
            r"(?:with|using)\s+(?:the\s+|an?\s+|your\s+(?:favou?rite|preferred)\s+)?(?:[a-z]+[-\s]){1,4}?(?:method|technique|cast[-\s]?on|(?:bind|cast)-off)(?=\s*,|\s+and\b|\s*$)",
        ),
        (
            "place",
            rf"(?:beg(?:inning|in)?|start(?:ing)?)\.?\s+(?:at|from|in|on)\s+{PLACE}(?:\s+{PLACE})*(?<!\bof)(?<!\bthe)(?=\W|$)",
        ),
    )
)
_BARE: Final = tuple(
    (kind, regex(expression, re.IGNORECASE))
    for kind, expression in (
        (
            "sized",
            rf"(?:the\s+|a\s+|an\s+|your\s+)?(?P<needle>(?:{SIZE}|{_FRACTION}|{UK_SIZE}|smaller|larger|finer|thinner|thicker|coarser)\s+{_LIKE}{_NOUN})(?=\W|$){_LONG}",
        ),
        ("sizeless", r"dpns?(?=\W|$)"),
        (
            "joined",
            rf"(?:re-?)?(?:join|attach)(?:ing)?\s+(?:the\s+|a\s+)?(?:new\s+|working\s+)?yarn"
            rf"(?:\s+(?:at|in)\s+{PLACE}(?:\s+{PLACE})*(?<!\bof)(?<!\bthe)(?<!\band))?(?=\s*,|\s+and\b)",
        ),
        ("yarn", r"(?:yarn\s+|colou?r\s+)?(?-i:(?P<yarn>MC|CC\d?|[A-Z]))(?=\s*,|\s+and\b|\s*$)"),
        (
            "method",
            r"(?:the\s+|an?\s+)?(?:[a-z]+[-\s]){1,3}?(?:method|technique|cast-on|bind-off|cast-off)(?=\s*,|\s+and\b|\s*$)",
        ),
    )
)
"""Kinds that need no "with" of their own behind another phrase: "with MC and smaller needles"."""
_JOINT: Final = regex(r"\s*,\s*(?:and\s+)?|\s+and\s+|\s+", re.IGNORECASE)
_ACTS: Final = regex(
    r"(?:k|p|knit|purl|co|cast|pick|pu|bo|bind|work|cont|continue|rejoin|re-join|join|inc|dec|increase|decrease|rib|return|"
    r"\*|\(|m1[lr]?|k2tog|p2tog|ssk|sl|slip|yo)(?![\w-])|[kp]\d",
    re.IGNORECASE,
)
"""What follows an opening: something to do."""
_HARMLESS: Final = regex(r"(?:pick|pu|cast\s+on|co)\b", re.IGNORECASE)
"""Stitches picked up or cast on are as many wherever they begin."""
_STARTS: Final = regex(r"(?:^|[.!]|(?<!\d):)\s*(?=[A-Za-z])")
"""Where a sentence of a line begins, behind its label or head too."""


def split_opening(text: str, start: int) -> tuple[tuple[tuple[str, int, int], ...], int] | None:
    """Return the phrases that a sentence opens with, and where what is to do begins.

    Args:
        text: The line.
        start: Where the sentence begins.

    Returns:
        Kind, start and end of each phrase, in their order, and the offset behind them; None if the sentence
        opens otherwise, or with a phrase of no known kind.
    """
    at = start
    found: list[tuple[str, int, int]] = []
    while True:
        match, kind = None, ""
        for kinds in (_KINDS, _BARE if found else ()):
            for name, pattern in kinds:
                match = pattern.match(text, at)
                if match is not None:
                    kind = name
                    break
            if match is not None:
                break
        if match is None:
            break
        group = {"sized": "needle", "yarn": "yarn", "facing": "side"}.get(kind)
        span = match.span(group) if group else match.span()
        found.append((kind, *span))
        if kind == "sized" and match.end() > span[1]:
            found.append(("cable", span[1], match.end()))
        joint = _JOINT.match(text, match.end())
        if joint is None:
            return None
        at = joint.end()
    acts = _ACTS.match(text, at)
    if not found or acts is None:
        return None
    if sum(kind == "yarn" for kind, _, _ in found) > 1:
        return None  # two yarns are held together, which is not knitted with one after the other
    if any(kind == "place" for kind, _, _ in found) and not _HARMLESS.match(text, at):
        return None  # "beginning at the armhole edge, bind off 5 sts" says which edge is meant
    return tuple(found), at


def write_openings_in_order(line: Reworded) -> Reworded:
    """Write what each sentence of a line opens with in the order of the grammar.

    Returns:
        The line; the same if no sentence opens with more than the grammar reads as it is.
    """
    text: list[str] = []
    places: list[int] = []
    kept = list(line.kept)
    done = 0
    for start in _STARTS.finditer(line.text):
        if start.end() < done:
            continue
        opening = split_opening(line.text, start.end())
        if opening is None or (len(opening[0]) == 1 and opening[0][0][0] in ("facing", "yarn")):
            continue  # the grammar reads it as it is
        phrases, behind = opening
        text.append(line.text[done : start.end()])
        places.extend(line.places[done : start.end()])
        for kind, form in _ORDER:
            for _, first, end in (phrase for phrase in phrases if phrase[0] == kind):
                before, after = form.split("{}")
                cable = _CABLE_IN.search(line.text, first, end) if kind == "sized" else None
                cut = cable.span() if cable is not None else (end, end)
                kept += [line.text[cut[0] : end].replace('"', " in")] if cable is not None else []
                text += [before, line.text[first : cut[0]], line.text[cut[1] : end], after]
                places += [line.places[first]] * len(before)
                places += [*line.places[first : cut[0]], *line.places[cut[1] : end]]
                places += [line.places[max(first, end - 1)]] * len(after)
        kept += [line.text[first:end].strip(" ()") for kind, first, end in phrases if kind in _SAID]
        done = behind
        if text[-1].endswith(". "):
            # A small letter behind a full stop is taken for what follows an abbreviation.
            text.append(line.text[done].upper())
            places.append(line.places[done])
            done += 1
    if not done:
        return line
    text.append(line.text[done:])
    places.extend(line.places[done:])
    return replace(line, text="".join(text), places=tuple(places), kept=tuple(kept))


_ORDER: Final = (("sized", "Change to {}. "), ("yarn", "With {}, "), ("facing", "With {} facing, "))
_SAID: Final = ("sizeless", "method", "place", "joined", "cable")
_CABLE_IN: Final = regex(rf"{_CABLE}\s*-?\s*(?=(?:circular|circ|needle|long)|$)", re.IGNORECASE)
