"""Put what is said of work without shaping - in which fabric, how, how far - in the order of the grammar. No I/O.

Theory of operation. "Knit the sleeve in the round in stockinette until it measures 40 cm", "Work the next 12 rounds
in 2x2 rib", "Rib as set for 5 cm", "Smaller needles, garter st for 8 rows": a sentence of work has a verb, or none,
and behind it phrases of few kinds in any order: what is worked on, a fabric, how the rounds go, that nothing is
shaped, how far. Each kind is told by how it begins. If phrases of known kinds make up all of the sentence, each
kind is there once at the most and one of them says how far, they are written as the grammar has them: "join in the
round. Work in stockinette until it measures 40 cm"; one phrase of no known kind leaves the sentence as it is
printed. Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.craft.needles import BARE_SIZE, ROLE_SIZE, SIZE, UK_SIZE
from stepper.craft.stitch_patterns import KNOWN, RIB
from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import LONG, ROUND, N
from stepper.project.rewording.talk import SENTENCE
from stepper.regex import regex

_PART: Final = (
    r"(?:body|sleeve|back|front|piece|work|cuff|leg|foot|hand|hem|hat|brim|crown|collar|neckband|band|cowl|scarf|shawl|blanket|mitten|mitt|"
    r"sock|bag|strap|border|edging|waistband|skirt|bodice|vest|sweater|jumper|pullover|cardigan|hood|cap|knitting)"
)
_KNIT: Final = r"k\.?\s?\d{1,2}(?:\s*(?:-?tbl|through\s+(?:the\s+)?back\s+loops?))?|knit\s+\d{1,2}"
_PURL: Final = r"p\.?\s?\d{1,2}(?:\s*-?tbl)?|purl\s+\d{1,2}"
_STS: Final = rf"(?:(?:{_KNIT})\s*,?\s*(?:{_PURL})|(?:{_PURL})\s*,?\s*(?:{_KNIT}))"
"""The repeat of a rib, told by its stitches."""
_NAMED: Final = rf"(?:{RIB}|{KNOWN}|rib(?:bing)?|(?:(?:the\s+)?(?:established\s+)?)?pattern)(?![\w-])"
_KINDS: Final = tuple(
    (kind, regex(expression, re.IGNORECASE))
    for kind, expression in (
        ("needle", rf"(?P<with>(?:with|on|using)\s+)?(?:the\s+)?(?P<needle>(?:{SIZE}|{UK_SIZE}|smaller|larger|{ROLE_SIZE})\s+needles?)\b"),
        ("ribbed", rf"(?:in\s+|as\s+)?(?:the\s+)?(?P<rib>rib(?:bing)?|(?P<k>\d)\s?[x/]\s?(?P<p>\d)\s+rib(?:bing)?(?=\W+(?:k|knit)\s?(?P=k)\W+(?:p|purl)\s?(?P=p)\b))\s*(?:\(|as\s+|of\s+|in\s+|[,:-]\s*)?\s*(?P<sts>{_STS})\s*\)?(?:\s+(?:all\s+)?around)?(?![\w-])"),
        ("ribbed", rf"(?:in\s+|as\s+)(?P<sts>{_STS})(?:\s+rib(?:bing)?)?(?![\w-])"),
        ("fabric", rf"(?:in\s+|of\s+)?(?:(?:rounds|rows)\s+of\s+)?(?:the\s+)?(?:established\s+)?(?P<fabric>{_NAMED})"),
        ("ribbed", rf"\(\s*(?P<sts>{_STS})\s*\)"),
        ("ribbed", rf"(?P<sts>{_STS})(?:\s+rib(?:bing)?)?(?:\s+(?:all\s+)?a?round)?(?![\w-])"),
        ("round", r"(?:in\s+(?:the\s+round|rounds|rnds)|round\s+and\s+round|around\s+and\s+around|circularly)\b"),
        ("flat", r"(?:back\s+and\s+forth(?:\s+in\s+rows)?|to\s+and\s+fro|flat|in\s+rows)\b"),
        ("even", r"(?:straight(?:\s+up)?|even(?:ly)?|without\s+(?:any\s+|further\s+|more\s+)*(?:shaping|increas(?:es|ing|e)|decreas(?:es|ing|e)))\b(?!\s+down\b)"),
        ("set", r"as\s+(?:set|established)\b"),
        ("rounds", rf"(?:for\s+|x\s+)?(?:the\s+)?(?:next\s+|first\s+|a\s+further\s+|another\s+)?(?P<number>{N})\s+(?P<more>more\s+)?(?P<row>{ROUND})"),
        ("ridges", rf"(?:for\s+)?(?P<number>{N})\s+(?:garter\s+)?ridges\b"),
        ("follow", r"(?:now\s+)?(?:follow|come\s+next)(?=\s*$)"),
        ("next", rf"(?:the\s+)next\s+(?P<row>{ROUND})"),
        ("long", rf"(?:for\s+)?(?:the\s+(?:first|last|next)\s+)?(?:another\s+|about\s+|approx(?:imately|\.)?\s+)*(?P<long>{LONG})"),
        ("till", r"to\s+(?P<until>the\s+\w+\s+measures\b[^*:]+?)(?=\s*$|\s*[,;]\s*(?:end(?:ing)?|finish(?:ing)?)\s)"),
        ("length", rf"(?:up\s+)?to\s+(?:about\s+)?(?P<long>{LONG})(?=\s*$|\s*,)"),
        ("length", rf"until\s+(?:about\s+)?(?P<long>{LONG})"),
        ("every", r"(?:knit\s+)?every\s+(?:single\s+)?(?:round|rnd)\b"),
        ("plain", r"plain\b"),
        ("until", r"(?P<until>(?:until|till)\s+[^*:]+?(?:(?:measures?|is|reach(?:es)?)\b[^*:]+?))(?=\s*$|\s*[,;]\s*(?:end(?:ing)?\s+|finish(?:ing)?\s+|\(|so\s+that|the\s+last)\b)"),
        ("ending", rf"(?:(?:so\s+that\s+)?(?:the\s+|your\s+)?last\s+{ROUND}\s+(?:(?:you\s+)?(?:worked|work|knit)\s+)?(?:is|being|should\s+be|will\s+be|must\s+be)|(?:end(?:ing)?|finish(?:ing)?)\s+(?:with|on|after|at\s+the\s+end\s+of))\s+(?:an?\s+)?(?P<row>(?:RS|WS|right[\s-]side|wrong[\s-]side|purl|knit|[pk]\.?)(?=\s+row))\s+row"),
        ("all", r"(?:(?:on|over)\s+)?all\s+(?:of\s+)?(?:the\s+)?(?:sts|stitches)\b"),
        ("part", rf"(?:on\s+)?(?:the\s+|this\s+|your\s+)(?:rest\s+of\s+the\s+|whole\s+|entire\s+)?{_PART}\b(?!\s+sts)"),
        ("verb", r"(?:work|continue|cont|knit|proceed)\b"),
        ("now", r"(?:now|again|from\s+here(?:\s+on)?|from\s+now\s+on)\b"),
    )
)  # fmt: skip
_BY: Final = regex(r"\s*[,;]\s*(?:and\s+)?|\s+and\s+|\s+", re.IGNORECASE)
_COLON: Final = regex(r"\s*:\s*")
"""What may stand behind a rib that is named first: "Ribbing: 5 cm k2, p2"."""
_DO: Final = r"(?P<verb>(?:work(?:ing)?|knit(?:ting)?|purl|continue\s+to\s+(?:knit|work)|continu(?:e|ing)|cont\.?|rib|proceed|go\s+on|carry\s+on|keep(?:ing)?|(?:begin|start|end|finish(?:\s+(?:off|up))?|follow(?:\s+(?:this|it))?)\s+with|do|make|(?:change|switch|go\s+over)\s+to)(?:\s+(?:working|knitting|ribbing|going))?)(?:\s+(?=\S))"
_WORKS: Final = regex(
    rf"(?P<lead>\s*(?:(?:now|then|next|and|just|simply|first|please|follows?|comes?|from\s+(?:here|now)\s+on|from\s+here)\s*,?\s+)*)(?:{_DO})?",
    re.IGNORECASE,
)
_NEEDLE: Final = regex(
    rf"(?P<lead>\s*(?:then\s+|now\s+)?)(?P<with>(?:with|on|using)\s+)?(?:the\s+)?(?P<needle>(?:{SIZE}|{UK_SIZE}|{BARE_SIZE}|smaller|larger|{ROLE_SIZE})\s+needles?|"
    rf"needles?\s+(?:size\s+|no\.?\s*)?(?P<mm>\d+(?:\.\d+)?)\s?mm)\s*(?P<sign>[,:])?\s+",
    re.IGNORECASE,
)
_DEFINED: Final = regex(r"\s*(?::|\s-)\s*(?P<row>\*[^*:.]+;\s*rep from \*(?: to end)?)\s*$", re.IGNORECASE)
"""The one row that a rib is, told behind its name."""
_RIB: Final = regex(rf"{RIB}$|(?:(?:single|double|twisted|half[\s-]twisted)\s+)?rib(?:bing)?$", re.IGNORECASE)
"""Fabrics whose every row is the same: a seed stitch is more than the row that it begins with."""


def put_works_in_order(line: Reworded) -> Reworded:
    """Return a line with its sentences of work in the order of the grammar; the same if it has none that need it."""
    for match in reversed(list(SENTENCE.finditer(line.text))):
        start = match.start()
        stop = start + len(match.group().rstrip(" .!"))
        if stop <= start:
            continue
        ordered = _in_order(line, start, stop)
        cut = _THEN.search(line.text, start, stop) if ordered is line else None
        if cut is not None:
            front = _in_order(line, start, cut.start())
            at = len(front.text) - (len(line.text) - cut.start())
            if front is not line:
                ordered = laid_anew(front, at, at + len(cut.group()), [". ", cut["order"].capitalize()])
        line = ordered
    return line


_BARE_RIB: Final = regex(r"rib(?:bing)?$", re.IGNORECASE)
_THEN: Final = regex(
    r"(?:\s*,\s+(?:and\s+)?|\s+and\s+)(?:then\s+)?(?P<order>bo|bind|cast|change|switch|place|break|cut|join|rejoin|divide)\b",
    re.IGNORECASE,
)
"""An order behind a work that is done."""


def _in_order(line: Reworded, start: int, end: int) -> Reworded:
    """Return a line with one sentence in order."""
    text, at = line.text, start
    made = list[str | tuple[int, int]]()
    needle = _NEEDLE.match(text, start, end)
    if needle is not None:
        at = needle.end()
        size = f"{needle['mm']} mm needles" if needle["mm"] else needle.span("needle")
        made = [needle.span("lead"), "Change to ", size, ". "]
    defined = _DEFINED.search(text, at, end)
    end = defined.start() if defined is not None else end
    works = _WORKS.match(text, at, end)
    assert works is not None  # all of it may be empty
    verb = " ".join((works["verb"] or "").lower().split())
    found = _phrases(text, works.end(), end)
    if found is None and works["verb"] and _COUNTED.match(text, works.start("verb"), end):
        found, verb = _phrases(text, works.start("verb"), end), ""
    if found is None or (needle is not None and not needle["sign"] and not needle["with"]):
        return line
    if "from" in works["lead"].lower():
        found["now"] = works
    if not verb and "verb" in found:
        verb = found.pop("verb").group().lower()
    body = _written(verb, found)
    if body is None:
        return line
    lead = [" "] if needle is None and works["lead"][:1] == " " else []
    said = tuple(found[kind].group().strip() for kind in ("part", "set") if kind in found)
    if defined is None:
        line = laid_anew(line, start, end, [*made, *lead, *body])
        return replace(line, kept=(*line.kept, *said))
    named = found.get("fabric")
    if named is None or not _RIB.match(named["fabric"]) or not {"long", "until"} & set(found):
        return line
    flat = [piece for piece in ("Join in the round. ", "Work flat. ") if piece in body]
    far = found["long"].span("long") if "long" in found else found["until"].span("until")
    told = [". Work", " for " if "long" in found else " ", far]
    return laid_anew(line, start, defined.end(), [*made, *flat, defined.span("row"), *told])


_COUNTED: Final = regex(r"(?:knit|purl)\s+\d", re.IGNORECASE)
"""What begins a rib told by its stitches, or a row: "Knit 2, purl 2 for 7 cm"."""


def _phrases(text: str, start: int, end: int) -> dict[str, re.Match[str]] | None:
    """Return the phrases that make up a stretch, by their kinds; None if it holds anything else."""
    found, at = dict[str, re.Match[str]](), start
    while at < end:
        for kind, pattern in _KINDS:
            match = pattern.match(text, at, end)
            if match is not None and kind not in found:
                found[kind] = match
                break
        else:
            return None
        at = match.end()
        if at < end:
            colon = (
                _COLON if found.keys() == {"fabric"} and _BARE_RIB.match(found["fabric"]["fabric"]) else None
            )
            joint = (colon.match(text, at, end) if colon else None) or _BY.match(text, at, end)
            if joint is None:
                return None
            at = joint.end()
    return found


def _written(verb: str, found: dict[str, re.Match[str]]) -> list[str | tuple[int, int]] | None:
    """Return a sentence of work in the grammar's order; None if it does not say one thing clearly."""
    far = [kind for kind in ("rounds", "next", "ridges", "long", "length", "until", "till") if kind in found]
    fabric = _fabric(verb, found)
    if not _agrees(verb, found, fabric):
        return None
    if not far and "now" in found and fabric and verb.startswith(("work", "knit", "cont", "change")):
        return ["Work", *fabric] if not {"round", "flat", "needle", "ending"} & set(found) else None
    if len(far) != 1:
        return None
    knits = (not fabric and verb.startswith(("knit", "purl", "continue to knit"))) or "every" in found
    made = list[str | tuple[int, int]]()
    if "needle" in found:
        made += ["Change to ", found["needle"].span("needle"), ". "]
    made += ["Join in the round. "] if "round" in found else []
    made += ["Work flat. "] if "flat" in found else []
    if knits and "even" not in found:
        made += ["Purl" if verb.startswith("purl") else "Knit"]
    else:
        made += ["Continue" if verb in ("continue", "cont", "cont.") and not fabric and not made else "Work"]
    if far == ["ridges"]:
        return [*made[:-1], "Knit ", found["ridges"].span("number"), " ridges"]
    if far[0] in ("rounds", "next"):
        rounds = found[far[0]]
        made += [" ", rounds.span("number") if far == ["rounds"] else "1", " "]
        made += [rounds.span("more")] if far == ["rounds"] and rounds["more"] else []
        made += [rounds.span("row")]
        return [*made, *([] if _in_hand(made) in ("Knit", "Purl") else fabric or [" even"])]
    if _in_hand(made) not in ("Knit", "Purl"):
        made += fabric or (
            [] if _in_hand(made) == "Continue" and not {"even", "set"} & set(found) else [" even"]
        )
    if "until" in found:
        made += [" ", found["until"].span("until")]
    elif "till" in found:
        made += [" until ", found["till"].span("until")]
    else:
        made += [" for " if "long" in found else " until piece measures ", found[far[0]].span("long")]
    return [*made, *_ended(found)]


def _ended(found: dict[str, re.Match[str]]) -> list[str]:
    """Return with which row a length ends."""
    if "ending" not in found:
        return []
    row = found["ending"]["row"].lower()
    side = {"r": "RS", "w": "WS", "p": "purl", "k": "knit"}[row[0]]
    return [f", ending with a {side} row"]


_GARTER: Final = regex(r"\bgarter\b", re.IGNORECASE)


def _in_hand(made: list[str | tuple[int, int]]) -> str | tuple[int, int]:
    """Return the verb of a sentence that has been begun."""
    return next(piece for piece in reversed(made) if piece in ("Knit", "Purl", "Work", "Continue"))


def _agrees(verb: str, found: dict[str, re.Match[str]], fabric: list[str | tuple[int, int]]) -> bool:
    """Return whether the verb and the phrases of a sentence order one work together."""
    if ("round" in found and "flat" in found) or ("ending" in found and {"rounds", "next"} & set(found)):
        return False
    if "ribbed" in found and "fabric" in found and not _BARE_RIB.match(found["fabric"]["fabric"]):
        return False
    if verb.startswith("purl") and (fabric or not {"rounds", "next"} & set(found) or "even" in found):
        return False
    if ("plain" in found or "every" in found) and (
        fabric or not ("every" in found or verb.startswith("knit"))
    ):
        return False
    goes_on = re.match(r"(?:change|switch|go\s+over)\s+to\b", verb) is not None
    if goes_on or ("needle" in found and not found["needle"]["with"]):
        return goes_on and bool(fabric)
    if verb in ("do", "make") and not fabric:
        return False
    if verb.startswith("knit") and not fabric and {"round", "flat"} & set(found) and not {"rounds", "even"} & set(found):
        return False  # in the knit stitch, or as the rows before?
    if (
        "ridges" in found
        and (fabric or "flat" in found)
        and not _GARTER.search(found["fabric"].group() if "fabric" in found else "")
    ):
        return False
    in_hand = re.match(r"\w+ing\b", verb) is not None
    if "verb" in found or in_hand:
        return "verb" in found and in_hand and bool(fabric)
    return bool(verb or fabric)  # "4 rounds", "10 cm": of what?


_IN_SIGNS: Final = (
    (regex(r"\bknit\s+", re.IGNORECASE), "k"),
    (regex(r"\bpurl\s+", re.IGNORECASE), "p"),
    (regex(r"\s+through\s+(?:the\s+)?back\s+loops?", re.IGNORECASE), " tbl"),
)


def _fabric(verb: str, found: dict[str, re.Match[str]]) -> list[str | tuple[int, int]]:
    """Return the fabric as the grammar has it, with a space before it; empty if none is named."""
    if "ribbed" in found:
        told = found["ribbed"]["sts"]
        for words, sign in _IN_SIGNS:
            told = words.sub(sign, told)
        return [f" in {told} rib"]
    if "fabric" in found:
        return [" in ", found["fabric"].span("fabric")]
    return [" in rib"] if verb.startswith("rib") or verb.endswith("ribbing") else []
