"""The phrases of which one row told stitch by stitch is made: stitches, how far, where, and what is only said. No I/O.

Each kind is told by how it begins and has one way to write it in the grammar's words (`write`); what stands
around them - brackets, stars, what joins them - is for `rows`. A kind knows nothing of its neighbours but for
those that are one stitch together, as "slip 1, knit 2 together, pass the slipped stitch over". Source: the
wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Final

from stepper.project.grammar import stitch_words
from stepper.project.part_names import PART, SIDED, WHICH
from stepper.project.rewording.beginnings import ByLetter
from stepper.project.rewording.synonym import STS as _WORD
from stepper.project.rewording.synonym import N
from stepper.project.rewording.told.numbers import digits_of
from stepper.records import dataclass
from stepper.regex import regex

STS: Final = rf"(?:{_WORD}(?:\.(?=\s*[,;)\]*]))?)"
_V: Final = r"(?P<verb>knit|purl|k|p)(?![a-z])\.?"
_THE: Final = r"(?:the\s+|these\s+)?"
_ONE: Final = r"(?:1|one|an?|the\s+(?:first|next|last))(?![\w-])"
_ROW: Final = r"(?:row|rnd|round)\b"
_OVER: Final = rf"(?:\s+of\s+{_THE}{_ROW})?"
END: Final = rf"(?:{_THE}(?:very\s+|other\s+)?end\b(?!\s+of\s+(?!{_THE}{_ROW}))(?:\s+of\s+{_THE}{_ROW})?)"
ALONG: Final = (
    rf"(?:(?:all\s+(?:the\s+way\s+)?|right\s+)?(?:across|a?round|along)(?![a-z])(?:\s+(?:all\s+(?:the\s+)?{STS}|{_THE}{_ROW}))?"
    rf"|all\s+the\s+way(?!\s+(?:to|a?round|across|along))|to\s+{END}|(?:for\s+)?the\s+(?:whole|entire|rest\s+of\s+the)\s+{_ROW})"
)
"""All of the row, or the rest of it."""
PLACE: Final = (
    r"(?P<place>(?:the\s+)?(?:(?:next|first|second|third|fourth|last|raglan|side|gusset|thumb|bor|beg(?:inning)?|end|underarm)\s+)*(?:marker|m)(?![\w-])"
    r"|bor(?![\w-])|(?P<gap>(?:the\s+)?(?:(?:last|previous|next)\s+)?(?:turning\s+(?:point|gap|place)|gap)(?![\w-]))"
    r"|(?:the\s+)?(?:(?:last|previous|next)\s+)?(?:ds|double\s+st(?:itch)?|turn)(?![\w-])|(?P<wrapped>(?:the\s+)?(?:(?:last|previous|next|first|nearest)\s+)?wrapped\s+(?:st(?:itch)?|one)(?![\w-]))"
    r"|(?:the\s+)?(?:cent(?:re|er)|middle)\s+st(?:itch)?(?![\w-])"
    r"|(?P<marked>(?:the\s+|this\s+|your\s+)?marked\s+(?:cent(?:er|re)\s+)?st(?:itch)?(?![\w-])))"
)
_TO: Final = r"(?:(?:(?:back|across|along|around|round)\s+)?(?:(?:up\s+)?to|(?:until|till)(?:\s+you(?:\s+(?:reach|meet)|(?:\s+(?:get|come|are|have\s+come)|'re)\s+(?:back\s+)?(?:to|at)))?))"
_SINCE: Final = r"(?:after|from|since|beyond|past)\s+(?:(?:the|last|first|previous|these)\s+)*(?:(?:cast|bound|bind)[-\s]off|bo)(?:\s+(?:sts|stitches|st|edge))?(?![\w-])"
_LEFT: Final = r"(?:rem(?:ain(?:s|ing)?)?|(?:is|are)\s+(?:left|remaining)|left)(?:\s+(?:on|in|of)\s+(?:the\s+)?(?:left(?:-hand)?\s+)?(?:needle|row|rnd|round))?"
_FOR_PART: Final = rf"(?:(?:last|next)\s+)?{WHICH}(?:{PART}|side)"
GOALS: Final = (
    ("last", rf"{_TO}\s+(?:the\s+)?last\s+(?:(?P<n>{N})(?:\s*{STS})?|(?P<one>st(?:itch)?(?:\.(?=\s*[,;)\]*]))?)(?![\w-])){_OVER}(?!\s*{STS}|\s+(?:of|before|on|in)\b)"),
    ("left", rf"{_TO}\s+(?:there\s+(?:is|are)\s+)?(?:only\s+)?(?P<n>{N})\s+{STS}\s+{_LEFT}(?:\s+(?:before|to)\s+{PLACE})?"),
    ("from", rf"{_TO}\s+(?:within\s+)?(?P<n>{N})(?:\s+{STS})?\s+(?:before|from)\s+{END}"),
    ("from", rf"{_TO}\s+within\s+(?P<n>{N})(?:\s+{STS})?\s+of\s+{END}"),
    ("before", rf"{_TO}\s+(?:the\s+)?(?:last\s+)?(?P<n>{N})(?:\s+{STS})?\s+before\s+{PLACE}"),
    ("before", rf"{_TO}\s+within\s+(?P<n>{N})(?:\s+{STS})?\s+of\s+{PLACE}"),
    ("before", rf"{_TO}\s+(?:the\s+)?(?P<one>st(?:itch)?)\s+before\s+{PLACE}"),
    ("needle", rf"{_TO}\s+(?:(?:there\s+are|you\s+have)\s+)?(?P<n>{N})\s+{STS}\.?(?:\s+(?:(?:are|rem(?:ain)?)\s+)?(?:on\s+(?:the\s+|your\s+)?(?:right(?:[-\s]hand)?|rh)\s+needle(?P<since>\s+{_SINCE})?|(?P<since2>{_SINCE}))|\s*,?\s+(?P<whose>for\s+(?:the\s+)?{_FOR_PART}(?![\w-])))"),
    ("past", rf"{_TO}\s+(?P<n>{N})(?:\s+{STS})?\s+past\s+{PLACE}"),
    ("place", rf"{_TO}\s+{PLACE}"),
    ("end", ALONG),
)  # fmt: skip
"""How far stitches or a repeat go, in the order tried."""
_BACK_LOOP: Final = r"(?P<tbl>\s+(?:tbl|t\.b\.l\.|(?:through|into|in)\s+(?:the\s+)?backs?\s+loops?)(?![\w-]))?"
_MANNER: Final = r"(?:\s+(?:in|as)\s+(?P<manner>(?:the\s+)?(?:rib(?:bing)?|patt(?:ern)?|(?:moss|seed)\s+st(?:itch)?|set|established|before)))?"
_SLIPPED: Final = r"(?:slip(?:ped)?|sl)\s+(?:st(?:itch)?|one)"
_PASSED: Final = (
    rf"(?:p\.?\s?s\.?\s?s\.?\s?o\b\.?|pass\s+(?:the\s+)?{_SLIPPED}\s+over(?:\s+(?:it\b|(?:the\s+)?(?:knit(?:ted)?|k2tog|k1|other)(?:\s+(?:st(?:itch)?|one))?(?![\w-])))?)"
)
_J: Final = r"\s*[,-]\s*(?:and\s+|then\s+)*"
_KNIT: Final = r"(?:knit|k)\s*"
_TWO: Final = rf"(?:2|two)\s*(?:{STS}\s+)?tog(?:ether)?\b\.?"
_AS_IF: Final = r"(?:\s+(?:knitwise|kwise|k-?wise|as\s+if\s+to\s+k(?:nit)?))"
_CN: Final = r"(?:a\s+|the\s+|your\s+)?(?:cable\s+needle|cable\s+ndl|cn)\b\.?"
_CABLE: Final = (
    rf"(?:slip|sl|place|put)\s+(?:the\s+)?(?:next\s+|first\s+)?(?P<held>\d)\s*(?:{STS}\s+)?(?:on(?:to)?|to)\s+{_CN}\s*,?\s*(?:and\s+)?(?:(?:hold|leave|place|keep)\s+(?:it\s+|them\s+|these\s+)?)?"
    rf"(?:(?:in|at|to)\s+(?:the\s+)?(?P<where>front|back)(?:\s+of\s+(?:the\s+)?work)?|(?P<behind>behind)(?:\s+(?:the\s+)?work)?|(?P<fore>in\s+front)(?:\s+of\s+(?:the\s+)?work)?)"
    rf"\s*[,;]?\s*(?:then\s+)?(?P<first>knit|purl|k|p)(?![a-z])\s*(?:the\s+)?(?:next\s+)?(?P<next>\d)\s*(?:{STS})?(?:\s*from\s+(?:the\s+)?left(?:-hand)?\s+needle)?\s*[,;]?\s*(?:and\s+)?(?:then\s+)?"
    rf"(?P<second>knit|purl|k|p)(?![a-z])\s*(?:the\s+)?(?P<back>\d)\s*(?:{STS}\s+)?(?:from|on|off)\s+{_CN}"
)
_STITCH: Final = rf"(?:{stitch_words()})(?![\w&/-])"
_TWISTED: Final = rf"(?:working|knitting)\s+(?:all\s+)?(?:the\s+|these\s+)?(?:picked[-\s]up|cast[-\s]on|new)\s+{_WORD}\s+(?:tbl|through\s+(?:the(?:ir)?\s+)?backs?\s+loops?)"
_PART: Final = rf"(?:this\s+is\s+|these\s+are\s+)?(?:for\s+)?(?:the\s+)?(?:(?:half|of|sleeve|{SIDED})\s+)*{PART}s?(?:\s+sts)?"
_GAP: Final = r"(?:the\s+|each\s+)?(?:gap|turning\s+point|turn)s?"
_BEING: Final = rf"(?:(?:for|the)\s+)*(?:back\s+of\s+(?:the\s+)?hand|top\s+of\s+(?:the\s+)?foot|{_FOR_PART}|gusset|thumb|seam|edge|border|cent(?:re|er))(?:\s+(?:sts|stitches|panel|pattern))?"
_SAID: Final = (
    rf"{_PART}|(?:these\s+)?{N}\s+{_WORD}\s+(?:being|forming|making|form|make|are)\s+{_BEING}(?=\s*[,;)\]]|\s*$)"
    rf"|one\s+(?:st\s+)?(?:from|on|at)\s+(?:each|either)\s+side\s+of\s+{_GAP}|(?:(?:the|this\s+is\s+the)\s+)?(?:edge|selvedge|selvage|border|marked|cent(?:re|er)|seam)\s+st(?:itche?)?s?"
    rf"|(?:(?:the\s+)?sts?\s+)?(?:before\s+and\s+after|on\s+(?:each|either|both)\s+sides?\s+of|across)\s+{_GAP}|(?:to\s+)?clos(?:e|ing)\s+{_GAP}"
)


@dataclass(frozen=True, slots=True)
class RowPhrase:
    """One phrase of a row."""

    kind: str
    match: re.Match[str]
    write: str | None = None
    """The phrase in the grammar's words; None if it is not read."""

    def get(self, name: str) -> str:
        """Return what a group of the phrase matched; empty if it has none."""
        return self.match.groupdict().get(name) or ""


def _number(phrase: RowPhrase) -> str:
    """Return a number as the grammar has it behind a letter: in figures."""
    said = phrase.get("n") or "1"
    return digits_of(said)


def _verb(phrase: RowPhrase) -> str:
    """Return the verb as the grammar has it: knit and purl by their letters."""
    said = phrase.get("verb").lower()
    return said[0] if said in ("knit", "purl", "k", "p") else said


def write_goal(phrase: RowPhrase) -> str:
    """Return how far something goes in the grammar's words."""
    kind, number, place = phrase.kind, phrase.get("n") and _number(phrase), phrase.get("place")
    place = "gap" if phrase.get("gap") else re.sub(r"\bone$", "st", place) if phrase.get("wrapped") else "the marked st" if phrase.get("marked") else place
    if kind == "end":
        return "to end"
    if kind == "needle":
        return ""
    if kind == "past":
        return f"to {number} sts past {place}"
    if kind == "place":
        return f"to {place}"
    if place:
        return f"to {number or 1} sts before {place}"
    return f"to last {number} sts" if number else "to last st"


def _far(phrase: RowPhrase) -> str | None:
    """Write stitches worked up to a place, which the goal in the phrase tells."""
    goal = goal_of(phrase)
    if goal is None or goal.kind == "needle":
        return None
    verb, manner, tbl = _verb(phrase), phrase.get("manner").lower(), phrase.get("tbl") or phrase.get("loops")
    if verb == "rib":
        return f"rib {write_goal(goal)}"
    manner = "pattern" if verb.startswith("patt") else manner.removeprefix("the ")
    if verb in ("patt", "pattern", "work"):
        how = "" if manner in ("", "set", "established", "before") else f"in {manner} "
        return f"work {how}{write_goal(goal)}"
    if manner:
        return None
    return f"{verb}{' tbl' if tbl else ''} {write_goal(goal)}"


def _cable(phrase: RowPhrase) -> str | None:
    """Write a cable told in words by its name: the stitches that end up in front, those behind."""
    held, following = phrase.get("held"), phrase.get("next")
    first, second = phrase.get("first")[0].lower(), phrase.get("second")[0].lower()
    if held != phrase.get("back"):
        return None
    front = bool(phrase.get("fore")) or phrase.get("where").lower() == "front"
    if first == second == "k":
        return f"{held}/{following} LC" if front else f"{following}/{held} RC"
    if front and (first, second) == ("p", "k"):
        return f"{held}/{following} LPC"
    if not front and (first, second) == ("k", "p"):
        return f"{following}/{held} RPC"
    return None


def _slip(phrase: RowPhrase) -> str:
    words = phrase.match.group().lower()
    number = _number(phrase)
    way = " kwise" if re.search(r"kn|kwise|k-?wise", words) else " pwise" if re.search(r"pur|pw|p-?wise", words) else ""
    yarn = ""
    if phrase.get("yarn"):
        yarn = " wyif" if re.search(r"front|forward|wyif", phrase.get("yarn"), re.IGNORECASE) else " wyib"
    return f"sl {number}{way}{yarn}"


def _counted(phrase: RowPhrase) -> str:
    yarn = phrase.get("yarn").split()
    return f"{_verb(phrase)}{_number(phrase)}{' tbl' if phrase.get('tbl') else ''}{f' in {yarn[-1]}' if yarn else ''}"


def _tog(phrase: RowPhrase) -> str:
    return f"{_verb(phrase)}{_number(phrase)}tog{' tbl' if phrase.get('tbl') else ''}"


def _passed(phrase: RowPhrase) -> str | None:
    """Write the stitch at a turn, where the words before it work up to that stitch."""
    before = phrase.match.string[: phrase.match.start()].lower()
    verb = _verb(phrase)
    if phrase.get("wrap"):
        return f"{verb} wrapped st with its wrap" if re.search(r"wrapped (?:st(?:itch)?|one),?\s+(?:and\s+|then\s+)?$", before) else None
    return f"{verb} ds" if re.search(r"(?:\bds|double st(?:itch)?),?\s+(?:and\s+|then\s+)?$", before) else None


def marker_of(phrase: RowPhrase) -> str:
    """Return whether a marker taken out with stitches bound off `hung` among them; else its words, said only: rounds began there."""
    within = phrase.kind == "off" and phrase.get("marker")
    first = phrase.match.string[: phrase.match.start()].rstrip()[-1:] in ("", ":", ".")
    return "hung" if within and not first else phrase.get("marker") or phrase.get("bor")


def _placed(phrase: RowPhrase) -> str | None:
    """Write a marker that is named alone between counted stitches; in a row that goes to markers it may be slipped."""
    met = re.search(r"\b(?:to|until|before|past|slip|slipping)\b[^,;.]*\b(?:markers?|m)\b|\bsm\b", phrase.match.string, re.IGNORECASE)
    return None if met and phrase.match.group().lower().split()[0] == "marker" else "pm"


def _another(phrase: RowPhrase) -> str | None:
    """Write stitches that go on as those before them: "purl back to the marker and another 15"."""
    before = re.findall(r"\b(knit|purl|k|p)(?![a-z])", phrase.match.string[: phrase.match.start()].lower())
    return f"{before[-1][0]}{_number(phrase)}" if before else None


def _as_printed(phrase: RowPhrase) -> str:
    return phrase.match.group().strip()


_YARN: Final = (
    r"(?P<yarn>[,\s]+(?:wyi[bf]\b|(?:with|keeping|holding|bringing)\s+(?:the\s+)?(?:yarn|wool)\s+(?:in|to|at|held\s+in)\s+(?:the\s+)?(?:front|back)(?:\s+of\s+(?:the\s+)?work)?(?![\w-])))?"
)
_SLIP_WAY: Final = (
    r"(?:\s*,?\s*(?:purlwise|knitwise|[kp]\s?-?wise|as\s+if\s+to\s+(?:purl|knit|[kp])\b))?"
)
_IN_YARN: Final = r"(?P<yarn>\s+(?:(?:in|with)\s+)?(?-i:MC|CC\d?|[A-D])(?=\s*[,;.*)\]]|\s*$))?"
_KINDS: Final[tuple[tuple[str, str, Callable[[RowPhrase], str | None]], ...]] = (
    ("cable", _CABLE, _cable),
    ("s2kp", rf"(?:slip|sl)\s+(?:the\s+)?(?:next\s+)?(?:2|two)\s*(?:{STS}\s+)?(?:tog(?:ether)?\b\.?)?{_AS_IF}{_J}{_KNIT}(?:1|one|(?:the\s+)?next\s+st(?:itch)?){_J}(?:p2sso\b|pass\s+(?:(?:the|2|two|both)\s+)*(?:slip(?:ped)?|sl)\s+{STS}\s+over(?:\s+(?:it\b|the\s+knit(?:ted)?\s+st(?:itch)?\b))?)", lambda _: "s2kp"),
    ("sk2p", rf"(?:slip|sl)\s*{_ONE}(?:\s+st(?:itch)?\b)?{_SLIP_WAY}{_J}{_KNIT}{_TWO}{_J}{_PASSED}", lambda _: "sk2p"),
    ("skp", rf"(?:slip|sl)\s*{_ONE}(?:\s+st(?:itch)?\b)?{_SLIP_WAY}{_J}{_KNIT}(?:1|one)(?:\s+st(?:itch)?\b)?{_J}{_PASSED}", lambda _: "skp"),
    ("slip", rf"(?:slip|sl)\.?\s*(?:the\s+)?(?:(?:next|first|last)\s+)?(?:(?P<n>{N})(?:\s*{STS})?|(?<=next\s)st(?:itch)?\b|(?<=first\s)st(?:itch)?\b|(?<=last\s)st(?:itch)?\b){_SLIP_WAY}{_YARN}{_SLIP_WAY}(?!\s+(?:to|on|onto|over|from)\b)", _slip),
    ("yo", r"(?:bring\s+(?:the\s+)?(?:yarn|wool)\s+(?:forward|to\s+(?:the\s+)?front)(?:\s+between\s+the\s+needles)?)(?=[,\s]+(?:k|knit|ssk)(?:\W|\d))", lambda _: "yo"),
    ("yo", r"(?:w\.\s?f\.?|wf)(?=[,\s]+(?:k|knit|ssk|sl)(?:\W|\d))", lambda _: "yo"),
    ("inc", rf"inc(?:rease)?\b\.?(?:\s+(?:1|one)(?:\s+st(?:itch)?\b)?)?(?:\s+in(?:to)?\s+(?:the\s+)?(?:next|first|last|foll(?:owing)?)\s+st(?:itch)?\b)?(?!\s*(?:{STS}|\d|at\b|on\b|to\b|every|each|evenly|row|rnd|round|in\b))", lambda _: "inc 1"),
    ("mark", r"(?:(?:put|insert|hang)\s+(?:in\s+)?(?:a\s+|your\s+|the\s+)?|a\s+)?marker(?=\s*[,.;]|\s*$|\s+and\b)", _placed),
    ("mark", r"(?:pm|place\s+(?:a\s+)?(?:marker|m)|sm|slm|slip\s+(?:the\s+)?(?:marker|m)|rm|remove\s+(?:the\s+)?(?:marker|m))(?![\w-])(?:\s+for\s+[a-z][a-z ]*?(?=\s*[,.;]|\s*$))?", _as_printed),
    ("turn", r"wrap\s+(?:it|(?:the\s+|that\s+)?(?:next\s+)?(?:st(?:itch)?|one))(?:\s*[(\[][^()\[\]]*\bwraps?\s*[)\]])?\s*,?\s*(?:and\s+|then\s+)*turn(?![\w-])", lambda _: "w&t"),
    ("turn", rf"(?:w\s?&\s?t|wrap\s+and\s+turn|turn)(?![\w-])(?:\s*[(\[]\s*(?P<bracket>leaving\s+\d[\d\s,()]*{_WORD})(?:\s+unworked)?\s*[)\]]|\s*,?\s*(?:and\s+)?leav(?:e|ing)\s+(?:the\s+)?rem(?:aining)?\.?\s+(?:{N}\s+)?{_WORD}\.?\s+(?:unworked|on\s+(?:a\s+)?(?:(?:st(?:itch)?[\s-])?holder|spare\s+needle|thread|waste\s+yarn|hold)(?:\s+for\s+(?:the\s+)?[a-z]+)?)(?![\w-]))?", lambda phrase: f"turn {phrase.get('bracket')}" if phrase.get("bracket") else _as_printed(phrase)),
    ("doubled", r"(?:(?:make|work)\s+(?:a\s+|one\s+|1\s+)?|1\s+|one\s+)?(?:ds|double\s+st(?:itch)?)(?![\w-])", lambda _: "ds"),
    ("passed", rf"{_V}\s+(?:it|this\s+st(?:itch)?)(?![\w-])(?P<wrap>\s+(?:tog(?:ether)?\s+)?with\s+(?:its|the|both(?:\s+its)?)\s+wraps?)?(?:\s+as\s+one(?:\s+st(?:itch)?)?)?", _passed),
    ("more", rf"{_V}\s*(?P<n>{N})\s+more(?:\s+{STS})?(?=\s*[,.;]|\s*$)", _counted),
    ("another", rf"(?:on\s+)?(?:for\s+)?(?:another|a\s+further)\s+(?P<n>{N})(?:\s+{STS})?(?=\s*[,.;]|\s*$)", _another),
    ("dropped", r"(?:slip\s*,\s*slip\s*,\s*knit)(?![\w-])", lambda _: "ssk"),
    ("often", r"(?P<stitch>[kp]\dtog|ssk|ssp|skp|kfb|pfb)\s+(?P<often>twice|(?:\d+|two|three|four|five|six|seven|eight|nine|ten)\s+times)(?![\w-])", lambda phrase: f"({phrase.get('stitch')}) {phrase.get('often')}"),
    ("tog", rf"{_V}\s*(?:the\s+)?(?:next\s+|last\s+|first\s+)?(?P<n>2|two|3|three)\s*(?:{STS}\s+)?tog(?:ether)?\b\.?{_BACK_LOOP}", _tog),
    ("worked", rf"(?P<verb>work)\s*(?:the\s+)?(?:next\s+|last\s+|first\s+)?(?P<n>2|two)\s*(?:{STS}\s+)?tog(?:ether)?\b\.?", lambda _: "k2tog"),
    ("panel", r"work\s+(?:row|rnd|round)\s+\d+\s+of\s+(?:the\s+)?(?:[a-z'-]+\s+){0,3}?(?:pattern|patt|panel|cable|motif|lace|chart(?:\s+[a-z0-9])?)(?![\w-])(?:\s+over\s+(?:the\s+)?(?:next\s+)?\d[\d\s(),;]*(?:sts|stitches)\b)?(?=\s*[,.;]|\s*$)", _as_printed),
    ("crossed", r"(?:\d{1,2}/\d{1,2}(?:/\d{1,2})?\s+[rl]p?c|[ct]\d{1,2}[fb])(?![\w-])", _as_printed),
    ("stitch", rf"{_STITCH}(?!\s+{N}\s)", _as_printed),
    ("marked", rf"{_V}\s+the\s+marked\s+st(?:itch)?(?![\w-])", _as_printed),
    ("across", rf"(?P<verb>knit|purl)(?=\s*,\s+(?:{_TWISTED}))", lambda phrase: f"{_verb(phrase)} to end"),
    ("across", rf"{_V}\s+in(?:to)?\s+(?:the\s+)?backs?\s+of\s+(?:all\s+(?:the\s+)?{STS}|(?:each|every)\s+st(?:itch)?\b)", lambda phrase: f"{_verb(phrase)} tbl to end"),
    ("across", rf"{_V}(?P<loops>\s+tbl)?\s+(?:back\s*(?=[.;,]|$)|all\s+(?:the\s+)?{STS}|(?:each|every)\s+st(?:itch)?\b){_BACK_LOOP}", lambda phrase: f"{_verb(phrase)}{' tbl' if phrase.get('tbl') or phrase.get('loops') else ''} to end"),
    ("across", rf"{_V}\s+(?:the\s+)?rem(?:aining)?\b\.?\s+{STS}(?=\s*[,.;]|\s*$)", lambda phrase: f"{_verb(phrase)} to end"),
    ("far", rf"(?P<verb>knit|purl|k|p|work|rib|patt(?:ern)?)(?![a-z])\.?(?P<loops>\s+tbl)?{_MANNER}\s*,?\s+(?P<goal>(?={_TO}\s|back\s|across|all\s|a?round|along|right\s|the\s|for\s))", _far),
    ("tied", rf"{_V}\s*(?P<n>\d\d+(?:\s*[(\[]\s*\d\d[\d\s,;:]*[)\]])?)(?:\s*{STS})?\s+to\s+{END}", _counted),
    ("counted", rf"{_V}\s*(?:the\s+)?(?:(?:next|first|last|foll(?:owing)?|rem(?:aining)?)\s+)?(?P<n>{N})(?:\s*{STS})?{_BACK_LOOP}{_IN_YARN}(?!\s*(?:rows?|rnds?|rounds?|ridges?|tog|cm|mm|in\b|inch|\"|times|x\b|-\d|/\d|\.\d|in(?:to)?\b|below|of\b|from\b|more\b))", _counted),
    ("counted", rf"{_V}\s+(?:the\s+)?(?:last|first)\s+(?P<n>{N})\s+{STS}\s+of\s+(?:the\s+)?(?:palm|back|front|sole|instep|heel|hand|rnd|round|row)\b(?=\s*[,.;-]|\s*$)", _counted),
    ("counted", rf"{_V}\s+(?:the\s+)?(?:next|first|last)\s+st(?:itch)?\b{_BACK_LOOP}(?!\s+(?:in(?:to)?|of|from|below)\b)", _counted),
    ("patterned", rf"(?P<verb>rib|patt)(?:ern)?\b\.?\s*(?:the\s+)?(?:next\s+)?(?P<n>{N})(?:\s*{STS})?(?!\s*(?:rows?|rnds?|rounds?|cm|mm|in\b|inch|\"|times))", lambda phrase: f"{_verb(phrase)} {_number(phrase)}"),
    ("stretch", rf"(?:work\s+(?:the\s+)?(?:next\s+|first\s+|last\s+)?)?(?P<n>{N})\s+{STS}\s+in\s+(?P<manner>(?:the\s+)?(?:rib(?:bing)?|patt(?:ern)?|(?:moss|seed|garter|stockinette|stocking)(?:\s+st(?:itch)?)?|st\s+st))\b\.?", lambda phrase: f"work {_number(phrase)} sts in {phrase.get('manner')}"),
    ("off", rf"(?P<verb>bo|bind\s+off|cast\s+off|co|cast\s+on)\s+(?:the\s+|these\s+|those\s+)?(?:(?:next|foll(?:owing)?|first|last|rem(?:aining)?)\s+)?(?P<n>{N})(?:\s*{STS})?(?:\s+of\s+(?:the\s+)?(?:next|foll(?:owing)?)\s+{_ROW})?(?:\s*[,(]?\s*(?:(?P<bor>(?:removing|taking\s+out)\s+(?:(?:the|your)\s+)?(?:bor|(?:beg(?:inning)?|start|end)(?:[\s-]+of[\s-]+(?:the[\s-]+)?(?:rnd|round))?)(?:\s+(?:marker|m))?\b)|(?P<marker>(?:removing|taking\s+out)\s+(?:(?:the|your)\s+)?(?:(?:side|raglan|gusset|thumb|underarm)\s+)?(?:marker|m)\b))(?:\s+as\s+you\s+(?:go|(?:pass|come\s+to|get\s+to|reach)\s+(?:it|them)))?\s*\)?)?(?!\s*(?:{STS}|using|with|for|at|on|over|in)\b)", lambda phrase: f"{phrase.get('verb')} {_number(phrase)} sts{', rm' if marker_of(phrase) == 'hung' else ''}"),
)  # fmt: skip
_Kinds = ByLetter[tuple[str, re.Pattern[str], Callable[[RowPhrase], str | None]]]
_PHRASES: Final[_Kinds] = ByLetter((form, (kind, regex(form, re.IGNORECASE), write)) for kind, form, write in _KINDS)
_GOALS: Final[_Kinds] = ByLetter((form, (kind, regex(form, re.IGNORECASE), write_goal)) for kind, form in GOALS)
SAID: Final = regex(rf"\s*(?:[(\[]\s*(?P<said>{_SAID})\s*[)\]]|,?\s+(?P<bare>these\s+{N}\s+{_WORD}\s+(?:being|forming|making|form|make|are)\s+{_BEING}(?=\s*[,;.]|\s*$)|for\s+(?:the\s+|a\s+)?{_FOR_PART}(?:\s+(?:back\s+)?to\s+(?:the\s+)?(?:bor|end(?:\s+of\s+(?:the\s+)?{_ROW})?))?(?=\s*[,;.]|\s*$)|to\s+close\s+{_GAP}|closing\s+{_GAP}|{_TWISTED})(?![\w-]))", re.IGNORECASE)
"""What is only said of the phrase before it."""
CABLE_TOLD: Final = regex(rf"\s*[(\[]\s*{_CABLE}\s*[)\]]", re.IGNORECASE)
"""A cable told in words behind its name."""


def match_phrase(text: str, at: int) -> RowPhrase | None:
    """Return the phrase of a row that begins at a place; None if there is none."""
    return _first(_PHRASES, text, at)


def match_goal(text: str, at: int) -> RowPhrase | None:
    """Return the phrase that says how far, beginning at a place; None if there is none."""
    return _first(_GOALS, text, at)


def cable_of(told: re.Match[str]) -> str | None:
    """Return the name of a cable told in words (`CABLE_TOLD`); None if it is none."""
    return _cable(RowPhrase("cable", told))


def end_of(phrase: RowPhrase) -> int:
    """Return where a phrase ends, the goal that belongs to it included."""
    goal = goal_of(phrase)
    return goal.match.end() if goal is not None else phrase.match.end()


def goal_of(phrase: RowPhrase) -> RowPhrase | None:
    """Return how far the stitches of a phrase go; None if it does not say."""
    return match_goal(phrase.match.string, phrase.match.start("goal")) if phrase.kind == "far" else None


def _first(kinds: _Kinds, text: str, at: int) -> RowPhrase | None:
    for kind, expression, write in kinds.at(text, at):
        match = expression.match(text, at)
        if match is None or match.end() <= at:
            continue
        phrase = RowPhrase(kind, match)
        if kind == "far" and goal_of(phrase) is None:
            continue
        end = end_of(phrase)
        if not (0 < end < len(text) and text[end - 1].isalnum() and text[end].isalnum()):
            return RowPhrase(kind, match, write(phrase))
    return None
