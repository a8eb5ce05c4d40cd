"""Write one row told stitch by stitch in the grammar's words, whatever joins and repeats its stitches. No I/O.

Theory of operation. A row is a list of phrases (`row_kinds`), of brackets and stars around lists, and of what
says how far a bracket, a star or the whole list goes. It is taken apart from left to right up to the end of
its sentence, or to the count behind it; one word that belongs to no phrase leaves the row as it is printed.
"*A*, b; rep from * to *" works A again behind b. "K1, p1, all along" repeats what stands before the comma; "k5,
p to end" does not. What a repeat "ends with" is left outside it where the stitches that takes are known.
Looked for only in a line that nothing else reads. It is long because brackets, stars and what repeats them
are closed by the same walk over the phrases. Source: common practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.project.rewording.reworded import Reworded
from stepper.project.rewording.synonym import LONG, ROUND, N
from stepper.project.rewording.told.row_kinds import (
    ALONG,
    CABLE_TOLD,
    END,
    SAID,
    STS,
    RowPhrase,
    cable_of,
    end_of,
    goal_of,
    marker_of,
    match_goal,
    match_phrase,
    write_goal,
)
from stepper.project.rewording.told.yarn_orders import YARN
from stepper.records import dataclass
from stepper.regex import regex

_WITH: Final = rf"(?:with|using|in)\s+(?P<yarn>{YARN}|(?-i:M)(?![-'\w]))(?:\s+(?:only|alone))?"
_STARTS: Final = regex(
    rf"(?:(?:^|:\s|[.!]\s)\s*{_WITH}\s*[,:]?\s*(?=[\w*(\[])(?!and\b)|(?:^|:\s|[.!]\s|\b(?:knit|purl|work|rib|k|p)\s+{N}\s+(?:rounds?|rnds?|rows?)(?P<then>\s*[,;]?\s+(?:and\s+)?then\s))\s*(?=[\w*(\[]))",
    re.IGNORECASE,
)
"""Where a row may begin: behind its head or the yarn that works it, or behind rows told by their number."""
_JOINT: Final = regex(
    r"\s*[,;]\s*(?:(?:and|then|now)\s+)*|\s+-+\s+|\s*/\s+|\s+(?:and\s+then|then|and)\s+", re.IGNORECASE
)
_SENTENCE_ENDS: Final = regex(
    rf"\s*(?:$|[.!](?=\s|$)|[;,]?\s*(?:=|-+|[(\[])\s*(?:(?:you\s+(?:now\s+)?have|there\s+are)\s+)?{N}\s*{STS})", re.IGNORECASE
)
_REP: Final = regex(
    r"\s*[;,.]?\s*(?:-+\s*)?(?:and\s+)?(?:rep(?:eat)?(?:ed|ing)?)\b\.?\s*(?:(?:from|between)\s+)?(?:(?:the\s+)?(?:two\s+)?(?:first\s+)?(?:\*+(?:s\b)?|stars?\b|asterisks?\b)(?P<to>\s*(?:to|-|and)\s*(?:the\s+)?(?:second\s+)?(?:\*+|stars?\b|asterisks?\b))?)?\s*,?\s*",
    re.IGNORECASE,
)
_TIMES: Final = regex(
    rf"\s*[,-]?\s*(?:(?P<twice>twice|once)(?P<more>\s+(?:more|again))?|(?:x\s?(?P<x>\d+)|(?P<n>{N})\s*(?P<more2>more\s+)?(?:times|x)(?P<more3>\s+more)?)(?P<all>\s+(?:in\s+(?:all|total)|altogether))?)(?![\w-])",
    re.IGNORECASE,
)
_INTO: Final = regex(r"\s*(?:all\s+)?in(?:to)?\s+(?:the\s+)?(?:(?:next|same|foll(?:owing)?)\s+|one\s+)st(?:itch)?\b", re.IGNORECASE)
_OFTEN: Final = regex(rf"\s*(?:,\s*)?(?:(?:and\s+)?rep(?:eat)?\s+(?:(?:this|these|those)\s+)?|\*\s*)?(?={ALONG}|to\s|until\s)", re.IGNORECASE)
_ALL_ALONG: Final = regex(
    rf"(?P<comma>\s*,)?\s*(?:(?:and\s+)?(?P<rep>rep(?:eat)?)\s+(?:(?:this|these|those)\s+)?(?:{N}\s+)?(?:{STS}\s+)?)?(?P<along>{ALONG})", re.IGNORECASE
)
_ENDING: Final = regex(r"\s*,?\s*(?:and\s+)?(?:ending|end|finish(?:ing)?)\s+(?:with\s+)?(?!(?:last|the\s+last)\b)", re.IGNORECASE)
_LAST: Final = regex(
    r"\s*,?\s*(?:and\s+)?(?:ending|end|finish(?:ing)?)\s+(?:the\s+)?last\s+rep(?:eat)?\b\.?\s*(?:with\s+)?", re.IGNORECASE
)
_NONE: Final = regex(r"yo|m1[lrp]?", re.IGNORECASE)
_FIXED: Final = regex(r"(?:([kp])(\d+)(?: tbl)?|(k|p)(\d)tog(?: tbl)?|(ssk|ssp|skp)|(sk2p|s2kp)|sl (\d+).*)")
_SO_LONG: Final = regex(rf"(?:\s*,\s*(?:for\s+)?|\s+for\s+|\s+-\s+)(?P<long>{N}\s+{ROUND}|{LONG})(?=\s*[.;]|\s*$)", re.IGNORECASE)
"""How long a repeat to the end is worked, behind it: "(k1, p1) around, 8 rounds"."""
_LEAD: Final = regex(r"(?:rep(?:eat)?|work)\s+(?=[*(\[])", re.IGNORECASE)
_SHAPELESS: Final = r"without\s+(?:any\s+)?(?:further\s+)?(?:shaping|(?:inc|dec)(?:reas(?:ing|es?)|s)?)"
_PLAIN: Final = regex(
    rf"(?P<adverb>(?:(?:just|simply|only)\s+)*)(?:(?P<verb>knit|purl|k|p)(?![\w])(?:(?<=\b[kp])\.)?(?:\s+(?P<all>everything|plain(?:\s+knitting)?|straight|even|each\s+one|all(?!\s+{STS})|{_SHAPELESS}))?"
    rf"(?:\s+(?:all\s+(?:the\s+)?{STS}\s+)?(?P<with>(?:(?:all\s+)?(?:in|with|using)\s+)?(?P<yarn>{YARN}|(?-i:M)(?![-'\w]))))?|(?P<plain>plain(?:\s+knitting)?))(?:\s+{ALONG})?(?=\s*(?:[.;!(=]|-+\s*\d|$))",
    re.IGNORECASE,
)
"""A plain row: "just knit", "knit everything", "knit MC", "plain knitting"."""
_ROUND_HEAD: Final = regex(r"\b(?:rounds?|rnds?)\b[^:]*:\s*$", re.IGNORECASE)
_EVEN: Final = regex(rf"work\s+{_SHAPELESS}(?=\s*(?:[.;!(=]|-+\s*\d|$))", re.IGNORECASE)
_BARE: Final = regex(r"(rib|patt)(?:ern)?(?:\s+(?:across|to\s+end|all\s+along))?(?=\.?\s*$)", re.IGNORECASE)
_LAYS: Final = regex(r"(?:[kp](\d+)(?: tbl)?|[kp]\dtog(?: tbl)?|ssk|ssp|skp|sk2p|s2kp|yo|sl (\d+).*|(inc 1|kfb|pfb))", re.IGNORECASE)
_OFF: Final = regex(r"(?:bo|bind\s+off|cast\s+off)\s+\d.*", re.IGNORECASE)
_THESE: Final = regex(rf"\s*,?\s*(?:and\s+)?rep(?:eat)?\s+(?:these|those)\s+(?:{N}\s+)?{STS}\s+(?=to|until|till)", re.IGNORECASE)
_RIB: Final = regex(r"k(\d), p\1|p(\d), k\2")
_ALONE: Final = regex(r"[kp]\dtog(?: tbl)?|ssk|ssp|skp|kfb|pfb", re.IGNORECASE)
_CHANGES: Final = regex(r"yo|m1[lrp]?|inc 1|kfb|pfb|[kp]\dtog(?: tbl)?|ssk|ssp|skp|sk2p|s2kp", re.IGNORECASE)
_OWN_TIMES: Final = regex(r".*(?:times|twice)|[(*].*", re.IGNORECASE)
_CLOSES: Final = {"(": ")", "[": "]"}
_DEEPEST: Final = 4
"""Brackets open at once."""


@dataclass(slots=True)
class _Parts:
    """What was read of a list: its words, where it ends, and what is only said."""

    words: list[str]
    at: int
    said: list[str]
    waits: bool = False
    """Whether the last goes on until so many stitches are left, which only what follows tells from a count."""
    numbered: bool = False
    """Whether the last is a number of stitches."""
    often: bool = False
    """Whether the last is a stitch with a number of times behind it, and no bracket around it."""

    @property
    def text(self) -> str:
        """The list in the grammar's words."""
        return ", ".join(self.words)


def write_rows(line: Reworded) -> Reworded:
    """Write the rows of a line that are told stitch by stitch in the grammar's words.

    Returns:
        The line; the same if it has none that is read so.
    """
    text: list[str] = []
    places: list[int] = []
    kept = list(line.kept)
    done = 0
    for start in _STARTS.finditer(line.text):
        at = start.end()
        parts = _row(line.text, at) if at >= done else None
        if parts is None or _alike(parts.text, line.text[at : parts.at]):
            continue
        words = parts.text[:1].upper() + parts.text[1:]
        before = at
        if start["yarn"]:
            before, words = start.end("yarn"), f", {words}"
        if start["then"]:
            before, words = start.start("then"), f". {words}"
        text += [line.text[done:before], words]
        places += [*line.places[done:before], *_places(words, line, at, parts.at)]
        kept += parts.said
        done = parts.at
    if not done:
        return line
    text.append(line.text[done:])
    places += line.places[done:]
    return replace(line, text="".join(text), places=tuple(places), kept=tuple(kept))


def _alike(written: str, printed: str) -> bool:
    return re.sub(r"[\s,;.]", "", written.lower()) == re.sub(r"[\s,;.]", "", printed.lower())


def _places(words: str, line: Reworded, start: int, end: int) -> list[int]:
    """Return a printed place for each letter: that of the same word further on, else of the last one met."""
    made: list[int] = []
    at = start
    for piece in re.findall(r"\d+|[a-z]+|[^\da-z]", words, re.IGNORECASE):
        found = line.text.lower().find(piece.lower(), at, end) if piece.strip(" ,;") else -1
        at = found if found >= 0 else at
        made += [line.places[min(at + (letter if found >= 0 else 0), end - 1)] for letter in range(len(piece))]
        at = at + len(piece) if found >= 0 else at
    return made


def _row(text: str, start: int) -> _Parts | None:
    """Return a whole row; None if a word of it belongs to no phrase."""
    bare = _BARE.match(text, start) if text[:start].rstrip().endswith(":") else None
    if bare is not None:
        return _Parts([f"work in {'rib' if bare[1][0] in 'rR' else 'pattern'}"], bare.end(), [])
    plain = _PLAIN.match(text, start) or _EVEN.match(text, start)
    if plain is not None and text[:start].rstrip().endswith(":"):
        named = "plain" in plain.groupdict() and plain["plain"]
        if not named or _ROUND_HEAD.search(text[:start]) is not None:  # a plain row may be a purled one
            return _plain(plain)
    lead = _LEAD.match(text, start)
    parts = _list(text, lead.end() if lead is not None else start, "", 0)
    if lead is not None and parts is not None and (len(parts.words) != 1 or not parts.text.endswith("to end")):
        return None  # what is repeated so many times may have been worked once before
    if parts is not None and parts.text.endswith("to end"):
        lasts = _SO_LONG.match(text, parts.at)
        if lasts is not None:
            return _Parts([f"{parts.text}. Work for {lasts['long']}"], lasts.end(), parts.said)
    if parts is None or not parts.words or parts.waits or _SENTENCE_ENDS.match(text, parts.at) is None:
        return None
    return parts


def _plain(found: re.Match[str]) -> _Parts | None:
    """Return a row that is knitted or purled to its end, or worked as it comes."""
    told = found.groupdict()
    if not told:
        return _Parts(["work even"], found.end(), [])
    verb = "purl" if (told["verb"] or "k").lower().startswith("p") else "knit"
    return _Parts([f"{verb} in {told['yarn']}" if told["yarn"] else verb], found.end(), [])


def _list(text: str, start: int, closes: str, depth: int) -> _Parts | None:
    """Return a list of phrases up to the sign that closes it, or to the end of the row."""
    made = _Parts([], start, [])
    at, first = start, True
    while True:
        at = _blank(text, at)
        if first and closes and text[at : at + 1] == closes:
            return None
        item = _item(text, at, depth)
        if item is None and not depth and not closes:
            item = _until_on_needle(text, at, made.words)
        if item is None or (item.often and _is_pair(made.words)):
            return None
        made.words += item.words
        made.said += item.said
        made.at, made.waits, made.numbered, first = item.at, item.waits, item.numbered, False
        if not depth and not closes:
            made = _ribbed(text, made)
            whole = _whole(text, made)
            if whole is not None:
                return whole
        following = _blank(text, made.at)
        if closes and (text[following : following + 1] == closes or (closes == "*" and _REP.match(text, made.at) and _has_rep(text, made.at))):
            return made
        if closes in ("", "*") and _SENTENCE_ENDS.match(text, made.at):
            return made
        joint = _JOINT.match(text, made.at)
        if not closes and _SO_LONG.match(text, made.at):
            return made
        if joint is None:
            return None
        if closes == "*" and text[_blank(text, joint.end()) : _blank(text, joint.end()) + 1] == "*":
            made.at = joint.end()
            return made
        if _SENTENCE_ENDS.match(text, joint.end()) and not closes:
            return made
        at = joint.end()


def _has_rep(text: str, at: int) -> bool:
    found = _REP.match(text, at)
    return found is not None and "rep" in found.group().lower()


def _blank(text: str, at: int) -> int:
    while at < len(text) and text[at].isspace():
        at += 1
    return at


def _item(text: str, at: int, depth: int) -> _Parts | None:
    """Return a phrase, a bracket or a star that begins at a place."""
    sign = text[at : at + 1]
    if sign in _CLOSES and depth < _DEEPEST:
        return _bracket(text, at, depth)
    if sign == "*":
        return _star(text, at) if not depth else None
    phrase = match_phrase(text, at)
    words = phrase.write if phrase is not None else None
    if phrase is None or words is None:
        return None
    end, said = end_of(phrase), [told for told in (marker_of(phrase),) if told not in ("", "hung")]
    while (told := SAID.match(text, end)) is not None:
        said.append(told.group("said") or told.group("bare"))
        end = told.end()
    if phrase.kind == "crossed":
        same = CABLE_TOLD.match(text, end)
        if same is not None:
            if not _is_same_cable(words, same):
                return None
            said.append(same.group().strip(" ()[]"))
            end = same.end()
    return _Parts([words], end, said, _waits(phrase), phrase.kind in ("counted", "stitch", "tog", "inc", "slip"), phrase.kind == "often")


def _is_pair(before: list[str]) -> bool:
    """Return whether a number of times behind the next stitch may be of those before it as well: "yo, k2tog 3 times"."""
    for word in reversed(before):
        if _CHANGES.fullmatch(word) or _OWN_TIMES.fullmatch(word):
            return _CHANGES.fullmatch(word) is not None
    return False


def _until_on_needle(text: str, at: int, before: list[str]) -> _Parts | None:
    """Return stitches worked until so many are on the right needle, where those before them are counted."""
    phrase = match_phrase(text, at)
    goal = goal_of(phrase) if phrase is not None else None
    if phrase is None or goal is None or goal.kind != "needle" or text[:at].rstrip()[-1:] not in (":", ",", "", "."):
        return None
    since = goal.get("since") or goal.get("since2") or goal.get("whose")
    if since and not any(_OFF.fullmatch(word) for word in before):
        return None
    lie = [0] if since else [_lies(word) for word in before]
    if None in lie:
        return None
    number = re.sub(r"\d+", lambda each: str(int(each[0]) - sum(one or 0 for one in lie)), goal.get("n"))
    verb = phrase.get("verb").lower()
    how = verb[0] if verb in ("knit", "purl", "k", "p") else "rib " if verb == "rib" else "patt "
    if "-" in number or not number[0].isdigit() or (verb == "work" and not phrase.get("manner")):
        return None
    return _Parts([f"{how}{number}"], goal.match.end(), [goal.get("whose")] if goal.get("whose") else [])


def _lies(word: str) -> int | None:
    """Return how many stitches a phrase in the grammar's words leaves on the needle; None where not known."""
    found = _LAYS.fullmatch(word)
    if found is None:
        return None
    return int(found[1] or found[2] or (2 if found[3] else 1))


def _is_same_cable(name: str, told: re.Match[str]) -> bool:
    """Return whether a cable told in words is that of the name before it."""
    words = cable_of(told) or ""
    half = re.fullmatch(r"[ct](\d+)([fb])", name, re.IGNORECASE)
    if half is None:
        return words.lower() == " ".join(name.lower().split())
    number = int(half[1]) // 2
    purled = "p" if name[0] in "tT" else ""
    return not purled and words == f"{number}/{number} {'L' if half[2] in 'fF' else 'R'}C"


def _waits(phrase: RowPhrase) -> bool:
    """Return whether a phrase goes on until so many stitches are left, of no place."""
    goal = goal_of(phrase)
    return goal is not None and goal.kind == "left" and not goal.get("place")


def _bracket(text: str, at: int, depth: int) -> _Parts | None:
    """Return a list in brackets, with how often or how far it goes."""
    inside = _list(text, at + 1, _CLOSES[text[at]], depth + 1)
    if inside is None or inside.waits:
        return None
    end = _blank(text, inside.at) + 1
    into = _INTO.match(text, end)
    if into is not None:
        return _Parts([f"({inside.text}) in next st"], into.end(), inside.said)
    times = _TIMES.match(text, end)
    if times is not None and not times["more"] and not times["more2"] and not times["more3"]:
        often = times["twice"] or f"{times['x'] or times['n']} times"
        return _Parts([f"({inside.text}) {often}"], times.end(), inside.said)
    lead = _OFTEN.match(text, end)
    goal = match_goal(text, _blank(text, lead.end())) if lead is not None else None
    if goal is None and not depth and text[:at].rstrip().endswith(":") and _SENTENCE_ENDS.match(text, end):
        return _Parts([f"({inside.text}) to end"], end, inside.said)  # the whole of a row that has a head
    if goal is None or goal.kind == "needle" or (depth and goal.kind == "end"):
        return None
    made = _Parts([f"({inside.text}) {write_goal(goal)}"], goal.match.end(), inside.said, _left(goal))
    return _with_ending(text, made, f"({inside.text})", goal)


def _left(goal: RowPhrase) -> bool:
    return goal.kind == "left" and not goal.get("place")


def _star(text: str, at: int) -> _Parts | None:
    """Return a list behind a star, with how often or how far it is repeated."""
    begin = at
    while text[begin : begin + 1] == "*":
        begin += 1
    inside = _list(text, begin, "*", 1)
    if inside is None or inside.waits:
        return None
    end = _blank(text, inside.at)
    closed = text[end : end + 1] == "*"
    if not closed and not _has_rep(text, inside.at):
        return _open_star(text, at, inside)
    if closed:
        while text[end : end + 1] == "*":
            end += 1
    between = _between(text, end) if closed else None
    rep = _REP.match(text, between.at if between is not None else end)
    said_rep = rep is not None and "rep" in rep.group().lower()
    if between is not None:
        return _again(text, inside, between, rep)
    if not said_rep and not closed:
        return None
    after = _blank(text, rep.end() if said_rep and rep is not None else end)
    times = _TIMES.match(text, after if said_rep else end)
    body = inside.text
    if times is not None:
        number = times["twice"] or f"{times['x'] or times['n']} times"
        more = times["more"] or times["more2"] or times["more3"]
        if not said_rep:
            return None if more else _Parts([f"({body}) {number}"], times.end(), inside.said)
        if rep is None or ("*" not in rep.group() and "st" not in rep.group()[3:]):
            return None  # what is repeated so many times was worked once before, or was not
        tail = " more" if more else " in total" if times["all"] else ""
        if tail == " in total" and times["twice"]:
            return None
        return _Parts([f"*{body}; rep from * {number}{tail}"], times.end(), inside.said)
    behind = match_goal(text, after) if said_rep else None
    last = _LAST.match(text, behind.match.end() if behind is not None and behind.kind == "end" else after)
    if said_rep and last is not None:
        return _with_last(text, inside, last.end())
    lead = _OFTEN.match(text, end) if not said_rep else None
    goal = match_goal(text, _blank(text, lead.end()) if lead is not None else after)
    if goal is not None and goal.kind == "needle":
        return None
    if goal is None and not said_rep:
        ends = _SENTENCE_ENDS.match(text, end) is not None
        return _Parts([f"*{body}; rep from * to end"], end, inside.said) if ends else None
    if goal is None:
        assert rep is not None
        if rep.group().rstrip(" ,")[-1:] != "*":
            return None
        made = _Parts([f"*{body}; rep from *"], rep.end() - len(rep.group()) + len(rep.group().rstrip(" ,")), inside.said)
        return _with_ending(text, made, f"*{body}; rep from *", None)
    made = _Parts([f"*{body}; rep from * {write_goal(goal)}"], goal.match.end(), inside.said, _left(goal))
    return _with_ending(text, made, f"*{body}; rep from *", goal)


def _open_star(text: str, at: int, inside: _Parts) -> _Parts | None:
    """Return a list behind a star that nothing closes: it is repeated to the end of a row that has a head or a count."""
    ends = _SENTENCE_ENDS.match(text, inside.at)
    counted = ends is not None and any(sign.isdigit() for sign in ends.group())
    if ends is None or text.count("*") != 1 or not (counted or text[:at].rstrip().endswith(":")):
        return None
    return _Parts([f"*{inside.text}; rep from * to end"], inside.at, inside.said)


def _between(text: str, at: int) -> _Parts | None:
    """Return what stands between a closed star and "rep from * to *"; None if nothing does."""
    joint = _JOINT.match(text, at)
    if joint is None or _has_rep(text, at):
        return None
    made = _Parts([], joint.end(), [])
    while True:
        item = _item(text, _blank(text, made.at), 1)
        if item is None or (item.often and _is_pair(made.words)):
            return None
        made.words += item.words
        made.said += item.said
        made.at = item.at
        rep = _REP.match(text, made.at)
        if rep is not None and "rep" in rep.group().lower():
            return made if rep["to"] else None
        joint = _JOINT.match(text, made.at)
        if joint is None:
            return None
        made.at = joint.end()


def _again(text: str, inside: _Parts, between: _Parts, rep: re.Match[str] | None) -> _Parts | None:
    """Return a stretch that is worked again behind what follows it: "*A*, b; rep from * to * once"."""
    if rep is None:
        return None
    times = _TIMES.match(text, rep.end())
    end = rep.end() - len(rep.group()) + len(rep.group().rstrip(" ,")) if times is None else times.end()
    often = 1
    if times is not None:
        number = times["x"] or times["n"] or ("1" if (times["twice"] or "").lower() == "once" else "2")
        if not number.isdigit() or times["all"]:
            return None
        often = int(number)
    again = inside.words if often == 1 else [f"({inside.text}) {often} times"]
    return _Parts([*inside.words, *between.words, *again], end, [*inside.said, *between.said])


def _with_ending(text: str, made: _Parts, repeat: str, goal: RowPhrase | None) -> _Parts | None:
    """Return a repeat with what it ends with behind it: "to last 3 sts, ending k3", "to end, ending with k1"."""
    lead = _ENDING.match(text, made.at)
    if lead is None:
        return made
    words: list[str] = []
    at = lead.end()
    while True:
        phrase = match_phrase(text, _blank(text, at))
        word = phrase.write if phrase is not None else None
        if phrase is None or word is None or (phrase.kind == "often" and _is_pair(words)):
            return None
        words.append(word)
        at = end_of(phrase)
        joint = _JOINT.match(text, at)
        if joint is None or match_phrase(text, joint.end()) is None:
            break
        at = joint.end()
    if goal is not None and goal.kind != "end":
        return _Parts([made.words[0], *words], at, made.said)
    takes = [_takes(word) for word in words]
    if None in takes:
        return None
    number = sum(take or 0 for take in takes)
    return _Parts([f"{repeat} to last {number} sts", *words], at, made.said)


def _with_last(text: str, inside: _Parts, at: int) -> _Parts | None:
    """Return a repeat that ends with another number of its last stitch: "ending last rep k2"."""
    phrase = match_phrase(text, at)
    word = phrase.write if phrase is not None else None
    *before, last = inside.words
    if phrase is None or word is None or not re.fullmatch(r"([kp])\d+ \1\d+", f"{last} {word}"):
        return None
    takes = [_takes(each) for each in (*before, word)]
    if None in takes:
        return None
    number = sum(take or 0 for take in takes)
    repeat = f"*{inside.text}; rep from * to last {number} sts"
    return _Parts([repeat, *before, word], end_of(phrase), inside.said)


def _takes(word: str) -> int | None:
    """Return how many stitches a phrase in the grammar's words takes; None where that is not known."""
    found = _FIXED.fullmatch(word)
    if found is None:
        return 0 if _NONE.fullmatch(word) else None
    plain, tog, two, three, slipped = found[2], found[4], found[5], found[6], found[7]
    return int(plain or tog or slipped or (2 if two else 3 if three else 0)) or None


def _ribbed(text: str, made: _Parts) -> _Parts:
    """Return stitches that begin a row as one repeat where they go on to a place: "k1, p1 to last st".

    Without "repeat these" only two of a rib do, as the first of "k3, p1, k1 to last 3 sts" may be an edge.
    """
    these = _THESE.match(text, made.at)
    goal = match_goal(text, _blank(text, made.at if these is None else these.end()))
    if goal is None or goal.kind not in ("last", "before", "from", "place", "left"):
        return made
    if any("*" in word or "to " in word for word in made.words) or (these is None and not _RIB.fullmatch(made.text)):
        return made
    return _Parts([f"({made.text}) {write_goal(goal)}"], goal.match.end(), made.said, _left(goal))


def _whole(text: str, made: _Parts) -> _Parts | None:
    """Return a list that is repeated as a whole: "knit 1, purl 1, all along", "k1, p1 - repeat around"."""
    single = len(made.words) == 1 and not (made.numbered and _ALONE.fullmatch(made.text))
    if single or any("*" in word or "to " in word for word in made.words):
        return None
    found = _ALL_ALONG.match(text, made.at)
    if found is None or _SENTENCE_ENDS.match(text, found.end()) is None:
        return None
    said = found["along"].lower()
    plain_end = re.fullmatch(rf"to\s+{END}|(?:for\s+)?the\s+rest.*", said) is not None
    if plain_end and not found["rep"]:
        return None  # of "k3, yo, to end" and "sl 1, k7 to end" nobody can tell what is repeated
    if not found["comma"] and not found["rep"] and not made.numbered:
        return None
    return _Parts([f"*{made.text}; rep from * to end"], found.end(), made.said)
