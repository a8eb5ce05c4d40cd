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

from stepper.craft.needles import BARE_SIZE, ROLE_SIZE, SIZE, UK_SIZE
from stepper.project.rewording.reworded import Reworded
from stepper.project.rewording.synonym import JOIN_ANY_YARN, SIDE, STS, N
from stepper.project.rewording.told.phrases import prepare_kinds
from stepper.regex import regex

_WITH: Final = r"(?:with|using|on|working\s+with)\s+(?:the\s+|a\s+|an\s+|your\s+)?"
_FRACTION: Final = r"(?:\d\s?(?:[¼½¾]|[13]/[24])\s?mm(?:\s*\(\s*(?:uk|us|no\.?)\s*\d{1,2}\s*\))?)"
"""A size in millimetres as British pages print it: "3¼mm", "3¼mm (No. 10)"."""
_WORD: Final = rf"(?:{ROLE_SIZE}|smaller|larger|finer|thinner|thicker|coarser|bigger|smallest|largest)"
_NOUN: Final = r"(?:needles?|ndls?\.?|dpns?|circulars?)"
_LIKE: Final = (
    r"(?:(?:set\s+of|pair\s+of|two|four|five|2|4|5|short|long|shorter|longer|straight|circular|circ\.?|double[-\s]pointed|d\.?p\b\.?|"
    r"spare|second|other|single|\d+\s*(?:cm|in\.?|inch(?:es)?|\")(?:\s*/\s*\d+\s*(?:cm|in\.?|inch(?:es)?|\"))?|[,-])\s*)*"
)
_CABLE: Final = r"\d+\s*(?:cm|in\.?|inch(?:es)?|\")(?:\s*/\s*\d+\s*(?:cm|in\.?|inch(?:es)?|\"))?"
_BY_ROLE: Final = r"(?:(?:main|contrast(?:ing)?)\s+(?:colou?r|yarn)(?!\s*[(\[]))"
"""A yarn by what it is for, where the page gives no letters for it behind."""
_LONG: Final = (
    rf"(?:\s*\(\s*(?:{_CABLE}(?:\s+long)?|{_CABLE}\s+cable)\s*\)"
    r"|\s+(?:with\s+points|pointed)\s+at\s+both\s+ends)?"
)
"""How long a circular needle is, in brackets behind it."""
PLACE: Final = (
    r"(?:left|right|front|back|cent(?:er|re)|middle|side|neck|neckline|shoulder|armhole|armpit|underarm|thumb|heel|gusset|"
    r"flap|edge|edges|selvedge|selvage|band|button|buttonhole|collar|hood|body|sleeve|cuff|hem|lower|upper|bottom|top|"
    r"first|second|other|inside|outside|inner|outer|corner|seam|opening|cast-?on|cast-?off|bind-?off|bound-?off|end|beginning|tip|"
    r"point|paw|paws|foot|feet|leg|legs|head|nose|snout|muzzle|ear|ears|tail|arm|arms|hand|hands|crown|brim|waist|base|narrow|wide|raglan|yoke|neckband|sts|stitches|of|the|at)"
)
_KINDS: Final = prepare_kinds(
    (
        "facing",
        rf"(?:(?:and\s+)?with\s+)?(?:the\s+)?(?P<side>{SIDE})(?:\s+of\s+(?:the\s+)?(?:work|piece|knitting|fabric|front|back|body|sleeve|left\s+front|right\s+front))?\s+(?:facing(?:\s+(?:you|me|out|outwards|as\s+before|again))?|towards?\s+you)\b",
    ),
    (
        "facing",
        rf"from\s+(?:the\s+)?(?P<side>{SIDE})(?:\s+of\s+(?:the\s+)?work)?"
        r"(?=\s*[,:]|\s+(?:with|using|pick|pu)\b)",
    ),
    (
        "sized",
        rf"{_WITH}(?:(?:two|three|four|[2-4]|set|pair)\s+of\s+(?:the\s+|your\s+)?)?(?P<needle>(?:{SIZE}|{_FRACTION}|{UK_SIZE}|{BARE_SIZE}|{_WORD})(?:\s+|$){_LIKE}{_NOUN})(?=\W|$){_LONG}",
    ),
    (
        "behind",
        rf"{_WITH}(?P<needle>{_LIKE}{_NOUN}\s+(?:size\s+)?(?:\d+(?:\.\d+)?\s?mm|no\.?\s?(?!10\.5)\d{{1,2}}\.\d+))(?=\W|$){_LONG}",
    ),
    ("sized", rf"{_WITH}(?P<needle>{SIZE}|{_FRACTION})(?=\s*,|\s+and\b)"),
    (
        "sized",
        rf"(?:{_CABLE}\s+)?(?P<needle>(?:{SIZE}|{_FRACTION}|{UK_SIZE}|{BARE_SIZE}|{_WORD})\s+{_LIKE}{_NOUN})(?={_LONG}\s*[,:]|\s+(?:and|with)\s+(?-i:MC|CC\d?|[A-H])\s*[,:]){_LONG}",
    ),
    (
        "yarn",
        rf"(?P<yarn>(?-i:MC|CC\d?|[A-H])|{_BY_ROLE})(?=\s*(?:,|\band\b)\s*(?:with\s+|using\s+)?(?:the\s+)?(?:{SIZE}|{_WORD})\s+{_LIKE}{_NOUN}\s*[,:])",
    ),
    ("sizeless", rf"(?:with|using|on)\s+(?:the\s+|a\s+|an\s+|your\s+)?{_LIKE}{_NOUN}(?=\W|$)"),
    (
        "yarn",
        rf"(?:with|using|in)\s+(?:the\s+|your\s+)?(?:yarn\s+|colou?r\s+)?(?P<yarn>(?-i:MC|CC\d?|[A-Z])|{_BY_ROLE})(?=\s*[,.;:]|\s+and\b|\s+[a-z]|\s*$)",
    ),
    (
        "method",
        r"(?:with|using)\s+(?:the\s+|an?\s+|your\s+(?:favou?rite|preferred)\s+)?(?:[a-z]+[-\s]){1,4}?(?:method|technique|cast[-\s]?on|(?:bind|cast)-off)(?=\s*,|\s+and\b|\s*$)",
    ),
    ("facing", r"(?P<side>(?-i:RS|WS))(?=\s*,)"),
    ("place", rf"from\s+{PLACE}(?:\s+{PLACE})*(?<!\bof)(?<!\bthe)(?=\s*[,:]|\s+(?:pick|pu)\b)"),
    ("place", rf"{PLACE}(?:\s+{PLACE})+(?<!\bof)(?<!\bthe)(?=\s*[:,]\s*(?:pick|pu)\b)"),
    ("place", rf"at\s+{PLACE}(?:\s+{PLACE})*(?<!\bof)(?<!\bthe)(?=\s*,)"),
    (
        "place",
        rf"(?:(?:beg(?:inning|in)?|start(?:ing)?|commencing)\.?\s+(?:at|from|in|on)|along|down|up|around|round)\s+{PLACE}(?:\s+{PLACE})*(?<!\bof)(?<!\bthe)(?=\W|$)",
    ),
)
_BARE: Final = prepare_kinds(
    (
        "sized",
        rf"(?:the\s+|a\s+|an\s+|your\s+)?(?P<needle>(?:{SIZE}|{_FRACTION}|{UK_SIZE}|{_WORD})\s+{_LIKE}{_NOUN})(?=\W|$){_LONG}",
    ),
    (
        "sizeless",
        rf"(?:dpns?|(?:the\s+|an?\s+|your\s+)?(?:{_CABLE}\s+)?(?:circ\.?|{_LIKE}{_NOUN}))(?=\W|$)",
    ),
    (
        "joined",
        rf"{JOIN_ANY_YARN}"
        rf"(?:\s+(?:at|in)\s+{PLACE}(?:\s+{PLACE})*(?<!\bof)(?<!\bthe)(?<!\band))?(?=\s*,|\s+and\b)",
    ),
    (
        "yarn",
        rf"(?:yarn\s+|colou?r\s+)?(?P<yarn>(?-i:MC|CC\d?|[A-Z])|{_BY_ROLE})(?=\s*[,.;:]|\s+and\b|\s*$)",
    ),
    (
        "behind",
        rf"(?P<needle>{_LIKE}{_NOUN}\s+(?:size\s+)?(?:\d+(?:\.\d+)?\s?mm|no\.?\s?(?!10\.5)\d{{1,2}}\.\d+))(?=\W|$){_LONG}",
    ),
    (
        "method",
        r"(?:the\s+|an?\s+)?(?:[a-z]+[-\s]){1,3}?(?:method|technique|cast-on|bind-off|cast-off)(?=\s*,|\s+and\b|\s*$)",
    ),
)
"""Kinds that need no "with" of their own behind another phrase: "with MC and smaller needles"."""
_JOINT: Final = regex(r"\s*,\s*(?:and\s+)?|\s+and\s+|\s+", re.IGNORECASE)
_ACTS: Final = regex(
    r"(?:k|p|knit|purl|co|cast|pick|pu|bo|bind|work|cont|continue|rejoin|re-join|join|inc|dec|increase|decrease|rib|return|"
    r"\*|\(|m1[lr]?|k2tog|p2tog|ssk|sl|slip|yo)(?![\w-])|[kp]\d",
    re.IGNORECASE,
)
"""What follows an opening: something to do."""
_HARMLESS: Final = regex(
    r"(?:pick|pu|cast\s+on|co|(?:knit|k)\s+up)\b|(?:knit|k)\s*(?:across\s+)?(?:the\s+)?\d[^.;,]*?\bfrom\s+[^.;,()]*?\b(?:holder|hold|pin)\s*,\s*(?:then\s+)?(?:pick|pu)\b",
    re.IGNORECASE,
)
"""Stitches picked up or cast on are as many wherever they begin; so are those of a neck that is gathered."""
_COLON: Final = regex(r"\s*:\s*(?=(?:pick|pu)\b)", re.IGNORECASE)
_HEADED: Final = regex(r"\s*:\s*(?=\S)")
"""Behind needles that head what is worked with them."""
_BEGUN: Final = regex(r"\s*\.\s+(?=(?:pick|pu)\b)", re.IGNORECASE)
"""Between a sentence that only says where to begin and the one that picks up from there."""
_WITH_SIDE: Final = regex(
    r"(?:and\s+)?(?:with\s+)?(?:the\s+)?\w+(?:[-\s]side)?(?:\s+of\s+\w+(?:\s+\w+){0,2})?\s+facing\b(?!\s+(?:as|again)\b)",
    re.IGNORECASE,
)
_STARTS: Final = regex(r"(?:^|[.!](?!\d)|(?<!\d):)\s*(?=[A-Za-z]|\d[\d.]*\s?(?:mm\b|cm\s|in(?:ch)?\s|\"\s))")
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
    found, at, open_end = _phrases(text, start)
    colon = _COLON.match(text, at) if any(kind in ("place", "facing") for kind, _, _ in found) else None
    if colon is None and any(kind == "sized" for kind, _, _ in found):
        colon = _HEADED.match(text, at)
    if not open_end and colon is not None:
        at = colon.end()
    elif not open_end:
        stop = _BEGUN.match(text, at) if any(kind == "place" for kind, _, _ in found) else None
        if stop is None:
            return None
        at = stop.end()
    acts = _ACTS.match(text, at)
    if not found or acts is None:
        return None
    if sum(kind == "yarn" for kind, _, _ in found) > 1:
        return None  # two yarns are held together, which is not knitted with one after the other
    if any(kind == "place" for kind, _, _ in found) and not _HARMLESS.match(text, at):
        return None  # "beginning at the armhole edge, bind off 5 sts" says which edge is meant
    return tuple(found), at


def colon_behind_opening(text: str, start: int) -> int | None:
    """Return where a colon stands behind the phrases that a sentence opens with; None if there is none.

    Args:
        text: The line.
        start: Where the sentence begins.
    """
    found, at, open_end = _phrases(text, start)
    if open_end or all(kind == "yarn" for kind, _, _ in found):
        return None  # "With MC:" may be the name of a line
    return at if text[at : at + 1] == ":" else None


def _phrases(text: str, start: int) -> tuple[list[tuple[str, int, int]], int, bool]:
    """Return the phrases from a place on, where they end, and whether a joint stands behind the last."""
    at, found = start, list[tuple[str, int, int]]()
    while True:
        match, kind = None, ""
        for kinds in (_KINDS, _BARE) if found else (_KINDS,):
            for name, pattern in kinds.at(text, at):
                match = pattern.match(text, at)
                if match is not None:
                    kind = name
                    break
            if match is not None:
                break
        if match is None:
            return found, at, True
        group = {"sized": "needle", "behind": "needle", "yarn": "yarn", "facing": "side"}.get(kind)
        span = match.span(group) if group else match.span()
        if kind == "sized" and match.start() < span[0] and match.group()[:1].isdigit():
            found.append(("cable", match.start(), span[0]))
        found.append((kind, *span))
        if kind in ("sized", "behind") and match.end() > span[1]:
            found.append(("cable", span[1], match.end()))
        joint = _JOINT.match(text, match.end())
        if joint is None:
            return found, match.end(), False
        at = joint.end()


def write_openings_in_order(line: Reworded) -> Reworded:
    """Write what each sentence of a line opens with in the order of the grammar.

    Returns:
        The line; the same if no sentence opens with more than the grammar reads as it is.
    """
    line = _cast_ons_in_order(line)
    text: list[str] = []
    places: list[int] = []
    kept = list(line.kept)
    done = 0
    for start in _STARTS.finditer(line.text):
        if start.end() < done:
            continue
        opening = split_opening(line.text, start.end())
        if opening is None or _is_plain(opening[0], line.text, start.end()):
            continue  # the grammar reads it as it is
        phrases, behind = opening
        text.append(line.text[done : start.end()])
        places.extend(line.places[done : start.end()])
        _write_in_order(phrases, line, text, places, kept)
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


def _is_plain(phrases: tuple[tuple[str, int, int], ...], text: str, start: int) -> bool:
    """Return whether an opening is one phrase that the grammar reads: "with rs facing", not "from rs"."""
    if len(phrases) != 1:
        return False
    kind = phrases[0][0]
    return kind == "yarn" or (kind == "facing" and _WITH_SIDE.match(text, start) is not None)


def _cast_ons_in_order(line: Reworded) -> Reworded:
    """Write what a cast-on says behind it of needles, yarn and manner before it, as an opening would."""
    for match in reversed(list(_CAST_ON.finditer(line.text))):
        phrases, at, _ = _phrases(line.text, match.end())
        at = phrases[-1][2] if phrases else at
        behind = _BEHIND.match(line.text, at)
        wanted = {kind for kind, _, _ in phrases}
        if not wanted & {"sized", "behind", "yarn"} or "facing" in wanted or behind is None:
            continue
        number = match["number"] or behind["number"]
        if number is None or (match["number"] and behind["number"]):
            continue
        if sum(kind == "yarn" for kind, _, _ in phrases) > 1:
            continue
        text, places, kept = list[str](), list[int](), list(line.kept)
        _write_in_order(tuple(phrases), line, text, places, kept)
        kept += [line.text[first:end].strip(" ()") for kind, first, end in phrases if kind in _SAID]
        head = match.start("act")
        act = (head, match.end("number") if match["number"] else match.end("act"))
        count = (behind.start("number"), behind.end("number")) if behind["number"] else (at, at)
        gap = " " if behind["number"] else ""
        written = "".join(text) + line.text[slice(*act)].capitalize() + gap + line.text[slice(*count)]
        at = behind.end("number") if behind["number"] else at
        line = replace(
            line,
            text=line.text[:head] + written + line.text[at:],
            places=(
                *line.places[:head], *places, *line.places[slice(*act)], *[line.places[head]] * len(gap),
                *line.places[slice(*count)], *line.places[at:],
            ),
            kept=tuple(kept),
        )  # fmt: skip
    return line


_CAST_ON: Final = regex(
    rf"(?:(?<=^)|(?<=[.!:]\s))(?P<act>cast\s+on|co)(?:\s+(?P<number>{N}\s+{STS}))?\s*,?\s+(?=with|using|in\b|on\b)",
    re.IGNORECASE,
)
_BEHIND: Final = regex(
    rf"(?=\s*(?:[.;(]|,(?!\s*\d)|$|and\s+(?:join|divide|distribute|place|work|knit)\b))|\s*:\s*(?P<number>{N}\s+{STS})",
    re.IGNORECASE,
)


def _write_in_order(
    phrases: tuple[tuple[str, int, int], ...],
    line: Reworded,
    text: list[str],
    places: list[int],
    kept: list[str],
) -> None:
    """Write needles, yarn and side, and keep how long the needles are."""
    for kind, form in _ORDER:
        for name, first, end in (phrase for phrase in phrases if phrase[0] in kind):
            before, after = form.split("{}")
            kept += [line.text[first:end]] if name == "behind" else []
            cable = _CABLE_IN.search(line.text, first, end) if name == "sized" else None
            cut = cable.span() if cable is not None else (end, end)
            kept += [line.text[cut[0] : end].replace('"', " in")] if cable is not None else []
            noun = _in_full(line.text[cut[1] : end])
            text += [before, _named(name, _in_full(line.text[first : cut[0]])), noun, after]
            places += [line.places[first]] * len(before)
            written = len(text[-3]) + len(text[-2])
            same = [*line.places[first : cut[0]], *line.places[cut[1] : end]]
            places += same if written == len(same) else [line.places[first]] * written
            places += [line.places[max(first, end - 1)]] * len(after)


def _named(kind: str, words: str) -> str:
    """Return needles with their size before them, and a yarn by its letters."""
    if kind == "behind":
        size = _SIZE_BEHIND.search(words)
        assert size is not None  # its phrase was found by it
        return f"{size['mm']} mm needles"
    if kind == "yarn" and _ROLE.match(words):
        return "MC" if words[0] in "mM" else "CC"
    return f"{words} needles" if kind == "sized" and _BARE_OF_NOUN.search(words) else words


def _in_full(needles: str) -> str:
    """Return needles without the short forms that the grammar does not have."""
    for short, full in _SHORT:
        needles = short.sub(full, needles)
    return needles


_SHORT: Final = (
    (regex(r"\bndls?\b\.?", re.IGNORECASE), "needles"),
    (regex(r"\bd\.?p\b\.?(?=\s+needles?\b)", re.IGNORECASE), "double-pointed"),
    (regex(r"\bcirc(?:ular)?\b\.?(?=\s*$)", re.IGNORECASE), "circular needle"),
)
_SIZE_BEHIND: Final = regex(r"(?:size\s+|no\.?\s?)?(?P<mm>\d+(?:\.\d+)?)(?:\s?mm)?$", re.IGNORECASE)
_BARE_OF_NOUN: Final = regex(r"[\d)m½]$", re.IGNORECASE)
_ROLE: Final = regex(_BY_ROLE, re.IGNORECASE)
_ORDER: Final = (
    (("sized", "behind"), "Change to {}. "),
    (("yarn",), "With {}, "),
    (("facing",), "With {} facing, "),
)
_SAID: Final = ("sizeless", "method", "place", "joined", "cable")
_CABLE_IN: Final = regex(rf"{_CABLE}\s*-?\s*(?=(?:circular|circ|needle|ndl|long)|$)", re.IGNORECASE)
