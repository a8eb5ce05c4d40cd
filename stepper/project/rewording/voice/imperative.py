"""Put what a page says in the passive, to "you" or "we", or in -ing, into the order that it is. No I/O.

Theory of operation. "The yarn is cut and drawn through the remaining stitches", "you now knit 5 rounds" and
"now it is time to bind off" order what "cut the yarn and draw it through" does, in other forms of the same verbs;
which form is whose verb's stands once, in `stepper.project.rewording.voice.verbs`. A sentence is taken clause by
clause, and only where a clause begins: "when you knit", "if all stitches are worked" stay as they are, and so does
every sentence with a condition. Only the present orders: what was done, is going to be done later, may, can or
should be done is told by other sentences. A passive tells as often what lies there: `2 sts are left`, `the marker
is placed at the side`, `the edge stitches are slipped`; those verbs are taken only with words that make an order of
them. What comes out is read by the grammar or not at all. Source: the wording of patterns in print; common practice.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import Final

from stepper.craft.stitch_patterns import KNOWN, RIB
from stepper.project.rewording.remarks.idle import is_idle
from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import ROUND, STS, N
from stepper.project.rewording.talk import SENTENCE, is_talk
from stepper.project.rewording.voice.row_phrases import (
    SOON,
    lead_space,
    with_change,
    with_comma,
    with_fabric_behind,
    with_repeat,
    with_row_named,
    with_total,
    with_whole_edge,
)
from stepper.project.rewording.voice.verbs import GERUNDS, PARTICIPLES, VERBS
from stepper.regex import regex


def put_in_orders(line: Reworded) -> Reworded:
    """Return a line with each of its clauses as an order, where it says in other forms what to do."""
    sentences = [match.span() for match in SENTENCE.finditer(line.text) if match.group().strip(" .")]
    for start, end in reversed(sentences):
        sentence = line.text[start:end]
        if _CONDITION.search(sentence) or is_idle(sentence) or is_talk(sentence):
            continue
        behind = len(line.text) - end
        for turned in (
            with_total,
            with_repeat,
            with_change,
            _without_after,
            _without_opening,
            _from_copula,
            _from_passive,
            _from_second_person,
            with_whole_edge,
            _from_gerund,
            with_row_named,
            with_comma,
            with_fabric_behind,
        ):
            line = turned(line, start, len(line.text) - behind)
    return line


_CONDITION: Final = regex(
    r"\b(?:if|unless|whether|because|since|although|though|while|whilst|as\s+though|instead|later|not(?!\s+to\b)|never|n't|don't)\b"
    r"|\bwhen(?:ever)?\s+(?!(?:the\s+|your\s+)?[a-z]+\s+(?:is|measures|has\s+reached)\b|[a-z]+ing\b)",
    re.IGNORECASE,
)
"""What makes a sentence tell of what is not always done, or not now."""
_VERB: Final = "|".join(sorted(VERBS, key=len, reverse=True))
_PARTICIPLE: Final = "|".join(sorted(PARTICIPLES, key=len, reverse=True))
_GERUND: Final = "|".join(
    sorted((word for word in GERUNDS if word not in ("ribbing", "ending")), key=len, reverse=True)
)
_JOINT: Final = r"(?:(?<=[,;:])\s+(?:and\s+)?(?:then\s+)?|\s+and\s+(?:then\s+)?)"
_STARTS: Final = rf"(?P<joint>\s*(?:(?:and|but|so)\s+)?(?:{SOON}\s*,?\s+)*|{_JOINT}(?:{SOON}\s+)*)"

_WHO: Final = r"(?:you|we)"
_WILL: Final = r"(?P<will>(?:'ll|\s+will|(?:'re|\s+are)\s+(?:now\s+)?(?:going|about)\s+to)(?:\s+(?:need|want|have)\s+to)?)"
_OPENING: Final = regex(
    rf"\s*(?:(?:{SOON}|ok(?:ay)?|right|well|so|and|please)\s*,?\s+)*"
    rf"(?:(?:(?:it's|it\s+is|that\s+means\s+it's)\s+)?(?:now\s+|finally\s+)?time\s+(?:now\s+)?to|let's|let\s+us|"
    rf"{_WHO}(?:'re|\s+are)\s+(?:now\s+)?ready\s+to|the\s+(?:next|last|first)\s+(?:step|thing)(?:\s+to\s+do)?\s+is\s+(?:now\s+)?to|"
    rf"all\s+(?:that\s+)?(?:{_WHO}\s+(?:have\s+to\s+|need\s+to\s+)?do\s+(?:now\s+)?|(?:there\s+)?(?:is|remains|that\s+remains|that's\s+left)\s+(?:to\s+do\s+)?)is\s+(?:to\s+)?|"
    rf"go\s+ahead\s+and|(?:{_WHO}\s+)?(?:begin|start)\s+(?:off\s+)?by(?=\s+(?:{_GERUND})\b)|be\s+sure\s+to)\s+"
    rf"(?:{SOON}\s+)*(?:(?P<verb>{_VERB})|(?P<gerund>{_GERUND}))\b",
    re.IGNORECASE,
)
"""What a sentence says before its order: that it is time for it, that you are ready for it."""
_SECOND: Final = regex(
    rf"{_STARTS}{_WHO}(?:\s+{SOON})*(?:{_WILL}|\s+(?:should\s+now|(?:can|may)\s+now|must|have\s+to|need\s+to))?(?:\s+{SOON})*\s+(?P<verb>{_VERB})\b(?!\s+(?:to\s+have|been)\b)",
    re.IGNORECASE,
)
_NOW_MAY: Final = regex(rf"\s*now\s+{_WHO}\s+(?:can|may)\s+(?P<verb>{_VERB})\b", re.IGNORECASE)
_TELLS_HOW: Final = regex(
    r"\*|\buntil\b|\ball\b|\b(?:knit|purl|work|repeat|rib)\s+(?:the\s+next\s+|another\s+)?\d|:\s*[kp]\d|\b(?:one|two|three|four|five|six|\d+)\s+(?:more\s+)?(?:rows|rounds|rnds)\b|"
    r"\bneedles?\b|\bfor\s+\d|\b(?:cast|bind)\s+o|\bthe\s+next\s+(?:row|round|rnd)\b",
    re.IGNORECASE,
)
"""What a sentence of what you will do holds if it orders it: without, it announces what the next rows do."""
_AFTER: Final = regex(
    r"\s*(?P<said>(?:(?:after|following)\s+(?:the\s+(?:ribbing|rib|cuff|hem|border|edging|band|brim|welt|heel|gusset|toe|thumb|neckband)|that|this)"
    r"|(?:when|once|as\s+soon\s+as)\s+(?:this|that|the\s+(?:ribbing|rib|cuff|hem|border|edging|band|brim|welt|heel|gusset|toe|thumb|neckband))\s+is\s+(?:done|finished|complete|completed|ready)))\s*,?\s+"
    rf"(?=(?:{_VERB}|{_WHO}|\d+|with)\b)",
    re.IGNORECASE,
)
"""What only says that it comes next: that a part is done which the lines before work to its end."""
_SHAPES: Final = regex(r"(?:increase|decrease)\b", re.IGNORECASE)

_NO_SUBJECT: Final = r"(?:is|are|was|were|be|been|being|has|have|had|will|would|can|could|may|might|should|must|which|that|who|what|where|how|when|while|until|till|as|so|than|before|it|they|you|we|i|he|she|there|this|these|not|no|never|only|always|usually|or|but|with|by)"
_TOKEN: Final = r"(?:[(\[{][\d\s,.:;/¼½¾-]+[)\]}]|,(?=\s*(?:\d|[kp]\s?\d))|[\w'&/¼½¾-]+(?:\.\d+)?)"
_ROUNDS_LEAD: Final = r"(?:(?:on|in|at|from|over|after|with)\s+(?!(?:both|each)\b)(?:[^\s,.;:]+\s+){0,6}?(?:row|rnd|round|rows|rnds|rounds|ribbing|rib|needles?)\s*,?\s+)"
_PASSIVE: Final = regex(
    rf"{_STARTS}(?P<lead>(?:{_ROUNDS_LEAD}|at\s+the\s+same\s+time\s*,?\s+)?)(?P<subject>(?!(?:at|on|in|from|to|for|over|after|with|of|under|along|around)\b)(?!(?:{_VERB})\s+(?!is\b|are\b))(?!{_NO_SUBJECT}\b(?!\s+(?:rows?|rounds?|rnds?|two|sts|stitches|{N})))"
    rf"{_TOKEN}(?:(?:\s+|(?=[(,\[]))(?!{_NO_SUBJECT}\b){_TOKEN}){{0,12}}?)\s+(?:is|are)\s+(?:to\s+be\s+)?"
    rf"(?:{SOON}\s+)*(?P<manner>(?:(?!only|usually|normally|generally|typically)[a-z]+ly\s+)?)(?:{SOON}\s+)*(?P<done>{_PARTICIPLE})\b"
    r"(?P<particle>(?:(?<=cast)\s+(?:on|off)|(?<=bound)\s+off|(?<=picked)\s+up(?:\s+and\s+(?:knit(?:ted)?|purled))?|(?<=set)\s+aside)?)",
    re.IGNORECASE,
)
_ALSO_DONE: Final = regex(
    rf"\s*,?\s+(?:and|then)\s+(?:then\s+)?(?P<done>(?!rib|knit\b|left\b){_PARTICIPLE})\b(?=\s+(?!(?:st|sts|stitch|stitches|row|edge)\b)|\s*[.,;]|\s*$)",
    re.IGNORECASE,
)
_NEEDS: Final = {
    "left": r"\s+(?:on\s+(?:an?\s+|the\s+|hold\b)|unworked\b)(?!needles?\b)",
    "slipped": r"\s+(?:on|onto|to)\s+(?:an?|hold|holders?|waste|scrap|spare|the\s+(?:left|right|other)|\d)",
    "moved": r"\s+(?:on|onto|to)\b",
    "put": r"\s+(?:on|onto|to|back|in)\b",
    "laid": r"\s+on\b",
    "held": r"(?!)",
    "set": r"(?!)",
    "kept": r"(?!)",
    "taken": r"(?!)",
    "made": r"(?!)",
    "marked": r"(?!)",
    "measured": r"(?!)",
    "shaped": r"(?!)",
    "begun": r"(?!)",
    "started": r"(?!)",
    "finished": r"(?!)",
    "ended": r"(?!)",
    "stopped": r"(?!)",
    "proceeded": r"(?!)",
    "arranged": r"(?!)",
    "positioned": r"(?!)",
    "separated": r"(?!)",
    "added": r"(?!)",
    "run": r"(?!)",
    "gone": r"(?!)",
    "done": r"(?!)",
    "closed": r"(?!)",
    "cast": r"(?!)",
    "casted": r"(?!)",
    "bound": r"(?!)",
    "picked": r"(?!)",
    "knit": r"(?!\s+(?:fabric|stitch|side|row|piece))",
}
"""What has to follow a participle that otherwise tells how something lies or was made; `(?!)` is nothing."""
_MARKER: Final = regex(r"(?:the|this|that|these|those|your|all)\s+(?:[\w-]+\s+){0,2}markers?$", re.IGNORECASE)
"""Markers that are there already; what is placed is one that is not."""
_NUMBERED: Final = regex(
    rf"(?:(?:all|every)\s+(?:other\s+|even\s+|odd\s+)?(?:RS|WS|even|odd|other|(?:right|wrong)[\s-]side)\s*(?:-?numbered\s+)?{ROUND}|{ROUND}\s+\d[\d\s,&-]*(?:(?:and|to)\s+\d+)?)$",
    re.IGNORECASE,
)
"""Rows by their numbers or their side, of which the passive says how they are worked each time."""
_ROUNDS: Final = regex(
    rf"(?:(?:another|a|one|the\s+next|next|these|the\s+last|every|each)\s+)?(?:{N}\s+)?(?:more\s+)?{ROUND}$|{ROUND}\s+\d[\d\s,&-]*(?:(?:and|to)\s+\d+)?$|(?:the|this)\s+[a-z]+\s+(?:row|rnd|round)$",
    re.IGNORECASE,
)
_FABRIC: Final = regex(rf"(?:the\s+)?(?:{RIB}|{KNOWN}|rib(?:bing)?)$", re.IGNORECASE)
_CHART: Final = regex(r"(?:the\s+)?chart(?:\s+[a-z0-9]+)?$", re.IGNORECASE)
_PATTERN: Final = regex(r"(?:the\s+|this\s+)?pattern$", re.IGNORECASE)
_FAR: Final = regex(r"\s+(?:until|for)\b", re.IGNORECASE)
_STITCHES: Final = regex(rf".*\b{STS}(?:\s+(?:of|on|at|from)\b.*)?$", re.IGNORECASE)
_PIECE: Final = regex(
    r"(?:(?:the|this|your|whole|entire|rest\s+of\s+the|lower|upper)\s+)*(?:body|sleeve|back|front|piece|work|cuff|leg|foot|hand|hem|hat|brim|crown|yoke|collar|neckband|"
    r"band|cowl|scarf|shawl|blanket|mitten|mitt|sock|bag|strap|border|edging|edge|waistband|skirt|bodice|vest|sweater|jumper|pullover|cardigan|hood|cap|knitting|round)$",
    re.IGNORECASE,
)
_HOW: Final = r"\s+(?:in|straight|even|until|for|without|flat|plain|round|back\s+and\s+forth|as\s+(?:k|p)\d|with\s+(?:smaller|larger|\d)|circularly)\b"
_ON: Final = regex(_HOW, re.IGNORECASE)


def _capital(verb: str, line: Reworded, at: int) -> str:
    """Return a verb as it stands there: with a capital where it begins the sentence."""
    before = line.text[:at].rstrip()
    return verb.capitalize() if not before or before[-1] in ".!?" else verb


def _without_opening(line: Reworded, start: int, end: int) -> Reworded:
    match = _OPENING.match(line.text, start, end)
    if match is None:
        return line
    verb = match["verb"] or GERUNDS[match["gerund"].lower()]
    return laid_anew(line, start, match.end(), [lead_space(line, start), _capital(verb.lower(), line, start)])


def _without_after(line: Reworded, start: int, end: int) -> Reworded:
    match = _AFTER.match(line.text, start, end)
    if match is None:
        return line
    first = line.text[match.end()]
    pieces = [lead_space(line, start), first.upper()]
    return replace(laid_anew(line, start, match.end() + 1, pieces), kept=(*line.kept, match["said"]))


def _from_second_person(line: Reworded, start: int, end: int) -> Reworded:
    if (may := _NOW_MAY.match(line.text, start, end)) is not None:
        verb = _capital(may["verb"].lower(), line, start)
        return laid_anew(line, start, may.end(), [lead_space(line, start), verb])
    behind = len(line.text) - end
    for match in reversed(list(_clauses(_SECOND, line, start, end))):
        rest = line.text[match.start() : len(line.text) - behind]
        if match["will"] and (
            not _TELLS_HOW.search(rest) or (_SHAPES.match(match["verb"]) and "*" not in rest)
        ):
            continue
        joint = _BARE_JOINT.match(match["joint"])
        verb = _capital(match["verb"].lower(), line, match.start())
        pieces = [joint.group() if joint else lead_space(line, match.start()), verb]
        line = laid_anew(line, match.start(), match.end(), pieces)
    return line


_BARE_JOINT: Final = regex(r"\s+(?:(?:and|then)\s+)+|(?<!^)\s+", re.IGNORECASE)


def _clauses(pattern: re.Pattern[str], line: Reworded, start: int, end: int) -> Iterator[re.Match[str]]:
    """Yield where a sentence has a form, at its beginning and at each joint."""
    at = start
    while at < end:
        match = pattern.match(line.text, at, end)
        if match is not None and match.end() > at:
            yield match
            at = match.end()
        joint = _NEXT.search(line.text, at, end)
        if joint is None:
            return
        at = joint.start() if joint.start() > at else joint.start() + 1


_NEXT: Final = regex(r"(?<=[,;:])\s+|\s+and\s+", re.IGNORECASE)


_COPULA: Final = regex(
    rf"{_STARTS}(?P<rounds>the\s+(?:next|following)\s+(?:{N}\s+)?{ROUND})\s+(?:is|are)\s+(?:all\s+)?(?:in\s+)?(?P<fabric>{RIB}|{KNOWN}|rib(?:bing)?)(?=\s*[.;]?\s*$)",
    re.IGNORECASE,
)


def _from_copula(line: Reworded, start: int, end: int) -> Reworded:
    """Write the next rounds, of which a sentence says what they are, as an order: "the next 4 rounds are rib"."""
    match = _COPULA.match(line.text, start, end)
    if match is None:
        return line
    pieces: list[str | tuple[int, int]] = [lead_space(line, start), "Work "]
    pieces += [*_small(line, *match.span("rounds")), " in ", match.span("fabric")]
    return laid_anew(line, start, match.end(), pieces)


def _from_passive(line: Reworded, start: int, end: int) -> Reworded:
    behind = len(line.text) - end
    for match in reversed(list(_clauses(_PASSIVE, line, start, end))):
        end = len(line.text) - behind
        pieces = _order_of(match, line, end)
        if pieces is not None:
            tail = line.text[match.end() : end]
            line = laid_anew(line, match.start(), match.end(), pieces)
            line = _also_in_orders(line, len(line.text) - behind - len(tail), len(line.text) - behind)
    return line


def _also_in_orders(line: Reworded, start: int, end: int) -> Reworded:
    """Turn what else is done in the same clause: "is cut and drawn through"."""
    match = _ALSO_DONE.search(line.text, start, end)
    if match is None or re.search(r"\b(?:is|are)\b", line.text[start : match.start()]):
        return line
    verb = PARTICIPLES[match["done"].lower()]
    return laid_anew(line, *match.span("done"), [verb])


def _order_of(match: re.Match[str], line: Reworded, end: int) -> list[str | tuple[int, int]] | None:
    """Return a passive clause as an order, in pieces of the line; None if it may be none."""
    done, particle = match["done"].lower(), match["particle"]
    subject, rest = match["subject"], line.text[match.end() : end]
    if not particle and done in _NEEDS and not re.match(_NEEDS[done], rest, re.IGNORECASE):
        return None
    first = match.start("lead") if match["lead"] else match.start("subject")
    verb = PARTICIPLES[done]
    written = _capital(verb, line, match.start()) if not match["lead"] else verb
    lead: list[str | tuple[int, int]] = [match.span("joint")]
    if match["lead"]:
        lead.append((first, match.end("lead")))
    if verb == "repeat" and _ROUNDS.match(subject):
        return [*lead, written, " ", *_small(line, *match.span("subject"))]
    if _NUMBERED.match(subject):
        return [*lead, match.span("subject"), ": ", verb] if verb in ("knit", "purl", "work") else None
    said: list[str | tuple[int, int]] = [" ", match.span("manner")] if match["manner"] else []
    if said:
        first_manner, last = match.span("manner")
        said = [" ", (first_manner, last - 1)]
    whole: list[str | tuple[int, int]] = [" ", *_small(line, *match.span("subject")), *said]
    if particle:
        return [*lead, written, _as_order(particle), *whole]
    if verb in ("work", "knit", "purl", "continue"):
        return _worked(subject, rest, lead, written, whole, said)
    if done == "placed" and _MARKER.match(subject):
        return None
    return [*lead, written, *whole]


def _small(line: Reworded, start: int, end: int) -> list[str | tuple[int, int]]:
    """Return words that no longer begin the sentence, without their capital."""
    if not re.match(r"[A-Z][a-z]|A\s", line.text[start:end]):
        return [(start, end)]
    return [line.text[start].lower(), (start + 1, end)]


def _as_order(particle: str) -> str:
    return re.sub(r"knitted", "knit", re.sub(r"purled", "purl", particle, flags=re.I), flags=re.I)


def _worked(
    subject: str,
    rest: str,
    lead: Sequence[str | tuple[int, int]],
    written: str,
    whole: Sequence[str | tuple[int, int]],
    said: Sequence[str | tuple[int, int]],
) -> list[str | tuple[int, int]] | None:
    """Return an order to work what a clause says is worked: rows, a fabric, stitches, a piece."""
    if _FABRIC.match(subject) or (_PATTERN.match(subject) and _FAR.match(rest)):
        return [*lead, written, " in", *whole]
    if _CHART.match(subject):
        return [*lead, written, *whole]
    if _ROUNDS.match(subject) or _STITCHES.match(subject):
        return [*lead, written, *whole]
    if _PIECE.match(subject) and _ON.match(rest):
        return [*lead, written, *said]
    return None


_BEFORE_ORDER: Final = regex(
    rf"\s*(?P<gerund>{_GERUND})\b(?P<what>[^,;:.*]*?)\s*,\s+(?P<order>{_VERB}|[kp]\d|\*|co\b|bo\b)",
    re.IGNORECASE,
)
_ALONE: Final = regex(
    rf"\s*(?:{SOON}\s+)*(?P<gerund>{_GERUND})\b(?![^.]*[,;]\s+(?:{_VERB})\b)(?!\s+(?:the\s+)?(?:\w+\s+){{0,2}}(?:is|are|will|makes?|gives?|begins?|takes?)\b)",
    re.IGNORECASE,
)
"""A sentence that has only a form in -ing for its verb."""
_DONE_FIRST: Final = (
    "switch",
    "change",
    "turn",
    "place",
    "cut",
    "break",
    "join",
    "rejoin",
    "swap",
    "return",
    "slip",
    "put",
)
"""What is done before what follows: the rest is worked on the other needle, on the other side."""


def _from_gerund(line: Reworded, start: int, end: int) -> Reworded:
    match = _BEFORE_ORDER.match(line.text, start, end)
    if match is not None:
        verb = GERUNDS[match["gerund"].lower()]
        if verb not in _DONE_FIRST or re.search(r"\bas\s+you\b", match["what"]):
            return line
        what = match.span("what")
        order = match["order"].capitalize()
        pieces = [lead_space(line, start), _capital(verb, line, start), what, ". ", order]
        return laid_anew(line, match.start(), match.end(), pieces)
    match = _ALONE.match(line.text, start, end)
    if match is None:
        return line
    verb = GERUNDS[match["gerund"].lower()]
    return laid_anew(line, start, match.end(), [lead_space(line, start), _capital(verb, line, start)])
