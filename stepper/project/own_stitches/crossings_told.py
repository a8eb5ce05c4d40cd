"""Read how a page tells a crossing, a twist or a bobble: "slip next st to cn, hold at back, k2, p1 from cn". No I/O.

What is held and what is worked are taken apart word for word; only crossings of knit over knit or purl stitches
and bobbles of one stitch have a name here, all else keeps its words.

Source: Craft Yarn Council, cable abbreviations (`n/m RPC`: the stitches behind are purled); twists without a
needle and bobbles: common practice.
"""

from __future__ import annotations

import re

from stepper.project.rewording.synonym import STS
from stepper.regex import regex

_NEEDLE = r"(?:(?:a\s+|the\s+)?(?:cable\s+(?:needle|pin)|cn|dpn|double[\s-]pointed\s+needle|(?:spare|extra|auxiliary)\s+needle))"
_WHERE = r"(?:at|in|to)\s+(?:the\s+)?(front|back)(?:\s+of\s+(?:the\s+)?work)?"
_SLIP = rf"\b(?:slip|sl|place|put)\s+(?:the\s+)?(?:next\s+|first\s+|foll(?:owing)?\s+)?(?:(?P<held>\d)\s*)?(?:(?:knit|purl|k|p)\s+)?(?P<sts>{STS})?"
_ONTO = rf"(?:on\s*to|on|to)\s+{_NEEDLE}"
_HOLDING = rf"{_SLIP}\s*(?:{_ONTO}\s*[,;]?\s*(?:(?:and|&)\s+)?(?:(?:hold|leave|bring|keep|place)\s+)?(?:it\s+|them\s+|cn\s+)?{_WHERE.replace('(front', '(?P<where>front')}|{_WHERE.replace('(front', '(?P<first_where>front')}\s+{_ONTO})"
_FROM_LEFT = r"(?:\s+from\s+(?:the\s+)?(?:(?:left(?:-hand)?|lh)\s+needle|lhn|ln))?"
_THEN = r"\s*[,;]?\s*(?:(?:and|&)\s+)?(?:then\s+)?"
_OTHERS = rf"(?P<first>knit|purl|k|p)\s*(?:(?:the\s+)?(?:next|foll(?:owing)?)\s+)?(?P<other>\d)?\s*(?P<other_sts>{STS})?{_FROM_LEFT}"
_AGAIN = rf"(?P<second>knit|purl|k|p)\s*(?:the\s+)?(?P<again>\d)?\s*(?:held\s+)?(?P<again_sts>{STS})?\s*from\s+{_NEEDLE}"
_CROSSING = regex(
    rf"(?:with\s+cn\s+(?:in|at)\s+(?P<with_where>front|back)\s*,?\s*{_SLIP.replace('?P<held>', '?P<with_held>').replace('?P<sts>', '?P<with_sts>')}\s*{_ONTO}|{_HOLDING}){_THEN}{_OTHERS}{_THEN}{_AGAIN}",
    re.I,
)
_LIKE = regex(
    rf"^(?:work\s+)?(?:the\s+)?(?:same\s+)?as\s+(?:for\s+)?(?P<cable>c(?P<both>\d{{1,2}})[fb]|(?P<left>\d)/(?P<right>\d)\s*[lr]c)\s*,?\s*(?:but|except)\s+(?:hold|leav|keep)\w*\s+"
    rf"(?:(?:the\s+)?(?:{STS}|cn|cable\s+needle)\s+|it\s+|them\s+)?{_WHERE}$",
    re.I,
)
_OFF = (
    r"(?:\s*[,;]?\s*(?:and\s+)?(?:then\s+)?(?:slip(?:ping)?|sl|drop(?:ping)?|take|let(?:ting)?)\s+(?:both\s*(?:sts|stitches|loops)?(?:\s+(?:slip|sl|drop))?|(?:the\s+)?(?:two|2)\s+(?:sts|stitches))"
    r"\s+(?:off|from)(?:\s+(?:the\s+)?(?:left(?:-hand)?\s+|lh\s+)?needle)?(?:\s+tog(?:ether)?)?)"
)
_LEFT = r"(?:\s+on\s+(?:the\s+)?(?:(?:left(?:-hand)?|lh)\s+)?needle)?"
_KEPT = r"(?:\s*,?\s*(?:without\s+slipping\s+it\s+off(?:\s+the\s+needle)?|(?:but\s+)?(?:do\s+not|don't)\s+(?:slip|drop)\s+(?:it\s+)?off(?:\s+(?:the\s+)?needle)?|leaving\s+it\s+on(?:\s+(?:the\s+)?(?:left\s+)?needle)?))?"
_LOOP = r"(?:through|thru|in(?:to)?)\s+(?:the\s+)?{}(?:\s+(?:loop|leg))?"
_TWIST = regex(
    rf"(?P<missed>(?:skip|miss)\s+(?:the\s+)?(?:first|next|1)\s*{STS}{_LEFT}{_THEN})?(?P<one>knit|purl|k|p)\s+(?:in)?(?:to\s+)?(?:the\s+)?(?:(?P<back>back)|front)?\s*"
    rf"(?:loop\s+)?(?:of\s+)?(?:the\s+)?(?P<which>second|2nd|next)\s+{STS}{_LEFT}(?:\s*(?:(?P<behind>{_LOOP.format('back')})|{_LOOP.format('front')}))?{_KEPT}{_THEN}(?P<two>knit|purl|k|p)\s+(?:in)?(?:to\s+)?(?:the\s+)?(?:front\s+)?(?:of\s+)?(?:the\s+)?(?:first|1st|skipped|missed)\s+{STS}(?:\s+{_LOOP.format('front')})?{_OFF}?",
    re.I,
)
_K2TOG = regex(
    rf"\bk(?:nit)?\s*2\s*(?:{STS}\s*)?tog(?:ether)?{_THEN}(?:but\s+)?(?:(?:do\s+not|don't|without)\s+(?:slip|drop|let)(?:ping|ting)?\s+(?:them\s+|sts\s+|it\s+)?off(?:\s+(?:the\s+)?(?:left(?:-hand)?\s+)?needle)?"
    rf"|(?:leave|leaving|keep|keeping)\s+(?:(?:the\s+)?(?:them|both|sts|stitches)\s+)?on\s+(?:the\s+)?(?:(?:left(?:-hand)?|lh)\s+)?needle){_THEN}"
    rf"(?:insert\s+(?:the\s+)?(?:rh|right(?:-hand)?)\s+needle\s+(?:from\s+(?:the\s+)?front\s+)?between\s+(?:the\s+)?(?:2\s+|two\s+)?(?:sts|stitches)(?:\s+just\s+(?:knitted|worked)(?:\s+tog(?:ether)?)?)?{_THEN})?"
    rf"k(?:nit)?\s+(?:the\s+)?(?:first|1st)\s+{STS}\s+again{_OFF}?",
    re.I,
)


def put_crossings(words: str) -> str:
    """Put a cable by its `n/m` name in place of every crossing and twist that the words tell; the rest as it is."""
    like = _LIKE.match(words)
    if like is not None:
        return _mirrored(like) or words
    words = _CROSSING.sub(_crossed, words)
    return _K2TOG.sub("1/1 rc", _TWIST.sub(_twisted, words))


def _mirrored(match: re.Match[str]) -> str:
    """Return the cable as it crosses with the needle held so; empty unless both its halves are alike."""
    if match["both"]:
        half, odd = divmod(int(match["both"]), 2)
    else:
        half, odd = int(match["left"]), int(match["left"] != match["right"])
    front = match.group(match.lastindex or 0).lower() == "front"
    return "" if odd else f"{half}/{half} {'lc' if front else 'rc'}"


def _number(number: str | None, sts: str | None) -> int | None:
    """Return how many stitches words name: a single one needs no number; None where they do not say."""
    if number:
        return int(number)
    return 1 if sts and sts.lower() in ("st", "stitch") else None


def _crossed(match: re.Match[str]) -> str:
    held = _number(match["held"] or match["with_held"], match["sts"] or match["with_sts"])
    other = _number(match["other"], match["other_sts"])
    again = int(match["again"]) if match["again"] else (held if match["again_sts"] else None)
    where = (match["where"] or match["first_where"] or match["with_where"] or "").lower()
    if held is None or other is None or again != held or not where:
        return match.group()
    first, second = match["first"][0].lower(), match["second"][0].lower()
    front = where == "front"
    behind, before = (first, second) if front else (second, first)
    if before != "k":
        return match.group()  # a purl stitch that passes in front has no name
    over, under = (held, other) if front else (other, held)
    purled = "p" if behind == "p" else ""
    return f"{over}/{under} {'l' if front else 'r'}{purled}c"


def _twisted(match: re.Match[str]) -> str:
    one, two = match["one"][0].lower(), match["two"][0].lower()
    if match["which"].lower() == "next" and not match["missed"]:
        return match.group()
    if match["back"] or match["behind"]:  # the second is reached from behind the first, which then lies in front
        return {"kk": "1/1 lc", "pk": "1/1 lpc"}.get(one + two, match.group())
    return {"kk": "1/1 rc", "kp": "1/1 rpc"}.get(one + two, match.group())


_MADE = regex(
    r"^(?:[(\[](?P<made>(?:[kp]1(?: tbl)?|yo)(?:, (?:[kp]1(?: tbl)?|yo))+)[)\]] in(?:to)? next st|(?P<legs>kfbf?)"
    r"|k1 into (?P<loops>(?:front|back)(?:(?:, | and | then |, and |, then )(?:the )?(?:front|back))+) of (?:the )?(?:next|same) st(?:itch)?), turn, (?P<rest>.+)$",
    re.I,
)
_OVER = regex(
    r",?\s*(?:then\s+)?(?:pass|lift|sl|slip)\s+(?P<which>(?:2nd|3rd|4th|5th|6th|second|third|fourth|fifth)(?:(?:,\s*|\s+)(?:and\s+|then\s+)?(?:2nd|3rd|4th|5th|6th|third|fourth|fifth))*)"
    r"\s+(?:sts?\s+|stitch(?:es)?\s+)?(?:one\s+(?:at\s+a\s+time|by\s+one)\s+)?over\s+(?:the\s+)?(?:1st|first)(?:\s+st(?:itch)?)?(?:\s+and\s+off(?:\s+(?:the\s+)?needle)?)?$"
)
_AGAIN_TURNED = regex(r"[\[(]turn(?:,| and)? ([kp]\d)[\])] (\d|twice)(?: times)?")
_TAKES = {"sk2p": 3, "s2kp": 3, "sssk": 3, "ssk": 2, "skp": 2}


def name_bobble(words: str) -> str:
    """Return `mb` for a bobble that begins and ends with one stitch, each row of it over all it has; else the words."""
    plain = _AGAIN_TURNED.sub(
        lambda m: ", ".join([f"turn, {m[1]}"] * (2 if m[2] == "twice" else int(m[2]))), words
    )
    found = _MADE.match(re.sub(r"\bturn(?: and|,)? (?=[kps])", "turn, ", plain))
    if found is None:
        return words
    made, rest = found["made"] or found["loops"] or found["legs"][1:], found["rest"]
    number = len(re.findall(r"[kp]1|yo|front|back", made, re.I)) or len(made)
    over = _OVER.search(rest)
    rows = (rest[: over.start()] if over is not None else rest).split(", turn, ")
    for row in rows:
        left = _after_row(row, number)
        if left is None:
            return words
        number = left
    number -= len(re.findall(r"\d(?:nd|rd|th)|second|third|fourth|fifth", over["which"])) if over is not None else 0
    return "mb" if number == 1 else words


def _after_row(row: str, number: int) -> int | None:
    """Return the stitches a row of a bobble leaves; None unless it is read and worked over all of them."""
    uses = leaves = 0
    for work in row.replace("sl 1, k2tog, psso", "sk2p").replace("sl 1, k1, psso", "skp").split(", "):
        plain = re.fullmatch(r"[kp](\d)", work)
        together = re.fullmatch(r"[kp](\d)tog(?: tbl)?", work)
        if plain is not None:
            uses, leaves = uses + int(plain[1]), leaves + int(plain[1])
        elif together is not None or work in _TAKES:
            uses, leaves = uses + (int(together[1]) if together else _TAKES[work]), leaves + 1
        else:
            return None
    return leaves if uses == number else None
