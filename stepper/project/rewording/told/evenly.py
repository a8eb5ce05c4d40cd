"""A change spread evenly over a round, told in prose: in which round, how many, beside what. No I/O.

"Knit 1 round where 8 sts are increased evenly", "On the next round, increase 8 sts evenly spaced" and "Knit 3
rounds and on the last of these decrease 4 sts, spread evenly" are made of the same few phrases. Source: the
wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from stepper.project.rewording.synonym import ROUND, STS, N
from stepper.project.rewording.told.phrases import Kinds, ToldPhrase, prepare_kinds
from stepper.project.rewording.told.shaping import Piece

_DIR: Final = r"(?P<dir>inc|dec)(?:reas(?:e|ing|ed)|(?:'|\u2019)?(?:ing|d))?\b\.?"
_FABRIC: Final = r"(?:\s+(?:(?:in\s+)?(?:rib(?:bing)?|patt(?:ern)?|st\.?\s?st|stockinette|stocking\s+st(?:itch)?|garter(?:\s+st(?:itch)?)?)))?"

EVENLY: Final[Kinds] = prepare_kinds(
    (
        "lead",
        rf"(?P<verb>(?:knit|purl|work|rib)(?=\s)|[kp](?=\s*\d))\s*(?P<n>{N}|an?)\s+(?:more\s+)?(?P<row>{ROUND})(?P<in>{_FABRIC})(?:\s+(?:on|from)\s+(?:the\s+)?(?P<side>ws|rs|wrong[-\s]side|right[-\s]side))?",
    ),
    (
        "lead",
        rf"(?P<verb>(?:knit|purl|work|rib|[kp])(?=\s))(?P<before>{_FABRIC})\s+(?:(?:the\s+)?(?:next|foll(?:owing)?)\s+(?P<row>{ROUND})|(?:all\s+(?:the\s+way\s+)?)?(?P<along>across|a?round|along)(?:\s+(?:all\s+(?:the\s+)?{STS}|(?:the\s+|next\s+)?{ROUND}))?|(?:all\s+{STS}\s+)?to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?{ROUND})?)(?P<in>{_FABRIC})(?![\w-])",
    ),
    ("lead", rf"(?:on|in|over|across)\s+(?:an?|one|the\s+next)\s+(?P<verb>knit|purl|plain)\s+(?P<row>{ROUND})(?P<in>)"),
    (
        "which",
        rf"(?:(?:on|in|over|across)\s+)?(?:the\s+)?(?P<which>last|first|next|second|following|this)(?:\s+|(?=\s*(?:[.;]|$)))(?:rib(?:bing)?\s+(?=row|rnd|round))?(?:(?:of\s+(?:these|those|them)|one)(?:\s+{ROUND})?|(?P<row>{ROUND})|(?<=last)(?=\s*(?:[.;]|$)))(?!\s*:)(?:\s+of\s+(?:the\s+)?rib(?:bing)?)?",
    ),
    ("with", r"(?:with|using|in)\s+(?:yarn\s+)?(?P<yarn>(?-i:MC|CC\d?|[A-H]))(?=\s*,|\s+(?:knit|purl|work|[kp])\b)"),
    (
        "said",
        r"(?:resolving|closing|working|picking\s+up|knitting|hiding)\s+(?:all\s+)?(?:the\s+)?(?:ds|dss|double\s+st(?:itche)?s|wraps?)(?:\s+(?:as\s+(?:one|you\s+(?:come|get)\s+to\s+them|single\s+sts)|together\s+with\s+their\s+sts|with\s+their\s+sts))?\b",
    ),
    ("passive", rf"(?:(?:where|while|in\s+which)\s+)?(?:you\s+)?(?P<n>{N})\s+{STS}\s+are\s+{_DIR}"),
    (
        "to",
        rf"(?:(?:where|in\s+which)\s+you\s+)?{_DIR}\s+(?P<even>evenly\s+(?:(?:across|around|over|in|on)\s+(?:the\s+)?(?:next\s+)?(?:round|rnd|row)\s+)?)?to\s+(?P<n>{N})(?:\s+{STS})?",
    ),
    ("change", rf"(?:(?:where|in\s+which)\s+you\s+|(?:it|there)\s+(?:is|are)\s+)?{_DIR}\s+(?:by\s+)?(?P<n>{N})(?:\s+{STS}\.?)?"),
    (
        "evenly",
        r"(?:(?:spaced\s+|spread\s+)?as\s+evenly\s+(?:spaced\s+|spread\s+)?as\s+(?:you\s+can|possible))(?:\s+(?:a?round|across)\b)?|(?:spread\s+(?:out\s+)?|spaced\s+|distributed\s+|dispersed\s+|placed\s+)?evenly\b(?:\s+(?:spaced|spread|distributed|apart))?(?:\s+(?:a?round|across|over|along)\b(?:\s+(?:the\s+)?(?:(?:whole|entire)\s+)?(?:round|rnd|row)\b)?)?|at\s+(?:even|regular)\s+intervals|regularly\s+(?:spaced|spread)",
    ),
    ("join", r"(?:at\s+the\s+same\s+time(?:\s+as)?|while|as\s+you\s+go|by|where)\b"),
)
"""The kinds of phrases of which such a sentence is made."""
JOINED: Final = ", "
"""Begins a sentence that goes on with the one before it: "On the last round, increase 4 sts evenly"."""
_ONE: Final = ("1", "one", "a", "an")


def write_evenly(phrases: Sequence[ToldPhrase]) -> tuple[tuple[Piece, ...], tuple[str, ...]] | None:
    """Write a sentence about an even change in the grammar's words.

    Args:
        phrases: The phrases it is made of.

    Returns:
        The words in their order, each with its place, and what is only said; None if they are not read.
    """
    by_kind: dict[str, ToldPhrase] = {}
    for phrase in phrases:
        kind = "change" if phrase.kind in ("passive", "to") else phrase.kind
        if kind in by_kind:
            return None
        by_kind[kind] = phrase
    change, lead, which = by_kind.get("change"), by_kind.get("lead"), by_kind.get("which")
    if change is None or not ("evenly" in by_kind or change.match.groupdict().get("even") or (change.kind == "to" and lead)):
        return None
    number = _number(lead, which)
    start = phrases[0].match.start()
    last = lead is None and which is not None and which.get("which").lower() == "last"
    if (number is None and not last) or (lead is not None and lead.get("side") and (start or number != "1")):
        return None
    pieces: list[Piece] = []
    if "with" in by_kind:
        if by_kind["with"] is not phrases[0]:
            return None
        pieces.append((f"with {by_kind['with'].get('yarn')}, ", start))
    if lead is not None and lead.get("side"):
        side = lead.get("side")[:1].upper() + "S"
        pieces.append((f"Next {lead.get('row')} ({side}): {lead.get('verb')}, ", start))
        lead = None
    if lead is not None and number is not None:
        verb = {"k": "knit", "p": "purl"}.get(lead.get("verb").lower(), lead.get("verb").lower())
        verb, fabric = ("work", " in rib") if verb == "rib" else ("knit" if verb == "plain" else verb, lead.get("before"))
        row = lead.get("row") or ("round" if lead.get("along").lower() in ("around", "round") else "row")
        pieces += [(f"{verb} ", start), (number, lead.match.start("n") if lead.get("n") else start)]
        apart = _is_apart(lead, which)
        pieces.append((f" {row}{lead.get('in') or fabric}{f'. {verb.capitalize()} 1 round' if apart else ''}, ", lead.match.end() - 1))
    direction = "increase" if change.get("dir").lower() == "inc" else "decrease"
    many = (change.get("n"), change.match.start("n"))
    at = change.match.start()
    if change.kind == "to":
        pieces += [(f"{direction} evenly to ", at), many, (" sts", change.match.end() - 1)]
    else:
        pieces += [(f"{direction} ", at), many, (" sts evenly", change.match.end() - 1)]
    if last:
        row = "row" if which is not None and which.get("row").lower().startswith("row") else "round"
        pieces = [(f"{JOINED}{pieces[0][0]}", pieces[0][1]), *pieces[1:], (f" on last {row}", start)]
    if lead is not None and which is not None and number is not None and number.lower() not in _ONE and not _is_apart(lead, which):
        row = "row" if lead.get("row").lower().startswith("row") else "round"
        first = which.get("which").lower() == "first"
        pieces.append((f" on {'first' if first else 'last'} {row}", which.match.start()))
    count = by_kind.get("count")
    if count is not None:
        pieces += [(". ", count.match.start()), (f"{count.get('n')} sts", count.match.start("n"))]
    said = by_kind.get("said")
    return tuple(pieces), () if said is None else (said.match.group(),)


def _number(lead: ToldPhrase | None, which: ToldPhrase | None) -> str | None:
    """Return how many rounds are worked, the changed one among them; None if which it is, is not said.

    Without such rounds it is the next round; the last one is worked already where the sentence begins.
    """
    named = which.get("which").lower() if which is not None else ""
    if lead is None:
        return "1" if named in ("next", "following", "this", "") else None
    number = "1" if lead.get("n").lower() in ("", *_ONE) else lead.get("n")
    if _is_apart(lead, which):
        return number
    if number == "1":
        return number if named in ("", "this", "last") else None
    if named == "second":
        return number if number.lower() in ("2", "two") else None
    return number if named in ("last", "first") else None


def _is_apart(lead: ToldPhrase, which: ToldPhrase | None) -> bool:
    """Return whether the changed round comes behind those told: "knit 2 rounds, then on the next round decrease 4 sts"."""
    behind = which is not None and which.match.start() > lead.match.start() and which.get("which").lower() in ("next", "following")
    return bool(lead.get("n")) and behind
