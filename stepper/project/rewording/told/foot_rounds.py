"""Write a round told by the needles or halves it is worked over in the grammar's words: needles, instep and sole. No I/O.

Theory of operation. "Knit to 3 sts before instep, k2tog, k1; instep in pattern; k1, ssk, knit to end", "On the instep: ...",
"work across the sole in St st", "front needle in pattern; back needle knit": a round is a list of clauses, and a clause
names a place - what it works up to, what it works across, whose last stitches it leaves - or names none and belongs to
the place in hand. A half that is worked to its end is followed by the other. The clauses are put together under
one head for each place ("on sole: k to last 3 sts, k2tog, k1; on instep: work in pattern to end"), whose stitches
the plan knows or asks for. A clause that names a place in no known way leaves the round as it is printed, as does a
round of which only one half is told. Source: the wording of socks in print, US and UK; common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import LONG, STS, N
from stepper.project.rewording.told.row_kinds import end_of, match_phrase
from stepper.records import dataclass
from stepper.regex import regex

Words = list[str | tuple[int, int]]
"""A round as it is written anew: words, or where in the line they are from."""
_NAMED: Final = r"(?:(?P<half>instep|sole)|(?P<side>front|back)\s+needle|(?:needles?|N)\s*(?P<number>[1-5])(?!\d|\.\d)(?!\s*(?:mm|,\s*[1-5]\b|(?:and|&)\s*(?:N|needle\s*)?[1-5]\b)))"
_PLACE: Final = rf"(?:the\s+|your\s+|all\s+(?:the\s+|of\s+the\s+)?)?(?:(?:{N}|held|next)\s+)*{_NAMED}(?:\s+(?:{STS}|half))?"
_PATT: Final = (
    r"(?:(?:even\s+)?in\s+(?:the\s+)?(?:set\s+|est(?:ablished)?\.?\s+|charted\s+)?patt(?:ern)?(?:\s+as\s+(?:set|est(?:ablished)?|before))?"
    r"|in\s+(?:the\s+)?(?:[a-z'-]+\s+){0,2}(?:rib(?:bing)?|lace|patt(?:ern)?|st(?:itch)?)\s+as\s+(?:set|est(?:ablished)?|before)|(?:even\s+)?as\s+(?:set|est(?:ablished)?))"
)
_KNIT: Final = r"(?:(?:even\s+)?in\s+(?:plain\s+knit(?:ting)?|st\.?\s?st(?:itch)?|stockinette(?:\s+st(?:itch)?)?|stocking\s+st(?:itch)?))"
_HOW: Final = rf"(?:(?P<patt>{_PATT})|(?P<plain>{_KNIT}|plain)|(?P<rib>in\s+(?:the\s+)?rib(?:bing)?(?!\s+(?:as|patt))))"
_VERB: Final = r"(?:k|knit|p|purl|work|patt(?:ern)?)"
_LEAD: Final = r"(?:(?:and|then|now)\s+)*"
_CROSS: Final = r"(?:(?:even\s+)?(?:across|over|along|on)\s+)?"
_E: Final = r"(?:\s+only)?\s*"
_KINDS: Final = tuple(
    (kind, regex(_LEAD + expression + _E, re.IGNORECASE))
    for kind, expression in (
        # "knit to last 3 instep sts", "k to last 3 sts of the sole"
        (
            "last",
            rf"(?P<verb>{_VERB})\s+(?:to|until)\s+(?:the\s+)?last\s+(?P<n>{N})\s+(?:(?P<of>instep|sole)\s+{STS}|{STS}\s+(?:of|on)\s+{_PLACE})",
        ),
        # "knit to 3 sts before the instep": the other half, but its last 3
        (
            "to",
            rf"(?P<verb>{_VERB})\s+(?:up\s+to|to|until)\s+(?:(?:within\s+)?(?:the\s+)?(?:last\s+)?(?P<n>{N})(?:\s+(?:(?:sole|instep)\s+)?{STS})?\s+(?:before|of|from)\s+)?(?:the\s+)?(?:(?:beg(?:inning)?|start)\s+of\s+)?(?!{N}){_PLACE}",
        ),
        ("end", rf"(?P<verb>{_VERB})\s+(?:(?:to|across\s+to)\s+(?:the\s+)?end\s+of\s+(?:the\s+)?{_PLACE})(?:\s+{_HOW})?"),
        # "work across the instep in pattern", "instep in pattern", "knit the sole"
        ("across", rf"(?:keep(?:ing)?|working)\s+(?:{STS}\s+on\s+)?{_PLACE}\s+{_HOW}"),
        ("across", rf"(?P<verb>{_VERB})\s+{_CROSS}(?:{STS}\s+(?:on|of)\s+)?{_PLACE}(?:\s+{_HOW})?"),
        ("across", rf"{_PLACE}\s*:?\s+(?:is\s+|to\s+be\s+|worked\s+|work\s+)*(?:{_HOW}|(?P<said>knit|purl)(?:\s+to\s+(?:the\s+)?end)?)"),
        ("across", rf"(?:work\s+|keep\s+)?{_HOW}\s+(?:across|over|on)\s+(?:{STS}\s+(?:on|of)\s+)?{_PLACE}"),
    )
)
"""The kinds of clauses that name a place, and how each looks."""
_HEADS: Final = tuple(
    regex(_LEAD + expression + r"\s*(?=[a-z*(\[])", re.IGNORECASE)
    for expression in (rf"(?:work\s+)?(?:on|over|across|for)\s+{_PLACE}\s*[:,]?", rf"{_PLACE}(?:\s+again)?\s*:")
)
"""A place that heads what is worked on it: "on the instep k1, ssk, ...", "sole: ..."."""
_SAME: Final = regex(rf"(?:work\s+)?(?:(?:(?:the\s+)?same\s+)?as\s+(?:(?:for|on)\s+)?{_PLACE}|(?:the\s+)?same(?:\s+again)?(?!\s+as)|likewise)", re.IGNORECASE)
"""What repeats on a place all that is worked on another."""
_REST: Final = regex(rf"{_LEAD}(?P<verb>k|knit|work)\s+(?:the\s+(?:rest|remainder)|(?:to|across\s+to)\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?(?:rnd|round))?|to\s+(?:the\s+)?end)\s*", re.IGNORECASE)
"""What ends a round."""
_ROW: Final = regex(
    r"\s*(?:(?:next\s+)?(?:rounds?|rnds?)\b[^:.;,]*|[a-z]+\s+(?:round|rnd)[^:.;,\d]*|\d+(?:st|nd|rd|th)(?:\s+and\s+[^:.]*)?\s+(?:rnd|round))[:.]\s*(?=\S)", re.IGNORECASE
)
"""The head of a round."""
_LABEL: Final = regex(r"\s*(?!(?:on|over|across|for|instep|sole|front|back|needles?)\b|N\d)[a-z][a-z ]{1,20}:\s+(?=(?:rounds?|rnds?)\b)", re.IGNORECASE)
_GLUE: Final = regex(r"\s*(?P<sign>[,;/]|\.(?=\s+\S))\s*")
_FORBIDDEN: Final = regex(
    r"\b(?:instep|sole|needles?|N\d|heel|toe|gusset|flap|markers?|pm|sm|slm|rm|turn|w&t|pick|hold|rep(?:eat)?|cont(?:inue)?|until|break|graft|rounds?|rnds?|rows?)\b", re.IGNORECASE
)
"""Words of a clause that belongs to the place in hand, which may name another."""
_STITCHES: Final = regex(r"(?:[kp]|knit|purl|work|ssk|ssp|skp|sl|yo|m1|\*|\(|\[|inc|dec|[kp]fb|[ks]\d|\d)", re.IGNORECASE)
_GOES_ON: Final = regex(
    r"(?:work|cont(?:inue)?|carry\s+on|go\s+on|knit)\b(?:\s+(?:on|even|straight|working|in\s+this\s+(?:way|manner)|without\s+(?:further\s+)?shaping|with))*\s*[,:]?\s*(?:(?:with|keeping|working)\s+)?(?=(?:the\s+)?(?:instep|sole|front|back|needle|N\d|in\s))",
    re.IGNORECASE,
)
"""What a sentence opens with that tells how all rounds go on."""
_SO_MANY: Final = regex(
    rf"(?:work|knit)\s+(?P<n>{N})\s+(?:rounds|rnds)\s*(?:(?:even|straight)\s*)?,?\s*(?:(?:with|keeping|working)\s+)?(?=(?:the\s+)?(?:instep|sole|front|back|needle|N\d|in\s))",
    re.IGNORECASE,
)
_AND: Final = regex(r"\s*(?:,\s*(?:and\s+)?|and\s+|while\s+|;\s*)", re.IGNORECASE)
_FAR: Final = regex(r"\s*,?\s*(?P<far>(?:until|till|for)\b[^;]*?)(?=\.(?:\s|$)|$)", re.IGNORECASE)
_FIRST_LONG: Final = regex(rf"\s*(?:for\s+(?P<long>{LONG})\s*,\s*)?", re.IGNORECASE)


@dataclass(slots=True)
class _Part:
    """What is worked on one place."""

    place: str
    """`instep`, `sole`, `needle 1`, `front needle`; empty while nothing says."""
    words: Words
    done: bool = False
    """Whether it is worked to its end."""
    last: bool = False
    """Whether it is worked up to its last stitches, and what follows are those."""


def write_foot_rounds(line: Reworded) -> Reworded:
    """Write the rounds of a line that name needles or halves in the grammar's words.

    Returns:
        The line; the same if it has none that is read so.
    """
    if not _TELLS.search(line.text):
        return line
    text = line.text
    label = _LABEL.match(text)
    start = label.end() if label is not None else 0
    row = _ROW.match(text, start)
    begin = row.end() if row is not None else start + len(text[start:]) - len(text[start:].lstrip())
    if (went := _going_on(line, begin, alone=row is not None)) is not None:
        return went
    read = _round(text, begin)
    if read is None:
        return line
    parts, end = read
    return laid_anew(line, begin, end, _written(parts))


_TELLS: Final = regex(r"\b(?:instep|sole|front\s+needle|back\s+needle)\b", re.IGNORECASE)


def _place_of(match: re.Match[str]) -> str:
    """Return the place that a clause names."""
    found = match.groupdict()
    if found.get("of"):
        return found["of"].lower()
    if found.get("half"):
        return found["half"].lower()
    return f"{found['side'].lower()} needle" if found.get("side") else f"needle {found['number']}"


def _other(place: str) -> str:
    """Return the half that is not this one; empty for a needle, of which there may be more than two."""
    return {"instep": "sole", "sole": "instep"}.get(place, "")


def _round(text: str, begin: int) -> tuple[list[_Part], int] | None:
    """Take one round apart; None if it is not told by its places.

    Returns:
        What is worked on each place in order, and where the round ends in the text.
    """
    parts, at, end, sign = [_Part("", [])], begin, begin, ""
    while at < len(text):
        named, head = _named(text, at), _head(text, at)
        if (again := _as_another(parts, text, at)) is not None:
            at = end = again
        elif named is not None:
            if not _take_named(parts, named[0], named[1]):
                return None
            at = end = named[1].end()
        elif head is not None:
            if not _take_up(parts, _place_of(head)):
                return None
            at = head.end()
            continue
        else:
            clause = _clause(text, at)
            if clause is None or not _take_plain(parts, text, at, clause, sign):
                break
            at = clause
            end = at if parts[-1].place else end
        glue = _GLUE.match(text, at)
        if glue is None:
            break
        sign, at = glue["sign"], glue.end()
        if sign == "." and _named(text, at) is None and _head(text, at) is None:
            break
    places = {part.place for part in parts}
    halves, needles = places & {"instep", "sole"}, places - {"instep", "sole"}
    whole = re.match(r"\s*(?:\.|$|[-(\[=])", text[end:]) is not None
    if not whole or "" in places or (halves and needles) or len(places) < 2 or any(not part.words for part in parts):
        return None
    return parts, end


def _named(text: str, at: int) -> tuple[str, re.Match[str]] | None:
    """Return the clause that names a place and begins here, if it goes to a sign or to the end."""
    for kind, expression in _KINDS:
        match = expression.match(text, at)
        if match is not None and re.match(r"\s*(?:$|[,;/.(\[=]|-\s)", text[match.end() :]):
            return kind, match
    return None


def _head(text: str, at: int) -> re.Match[str] | None:
    """Return the place that heads what is worked on it, beginning here; None if none does."""
    return next((match for head in _HEADS if (match := head.match(text, at)) is not None), None)


def _take_up(parts: list[_Part], place: str) -> bool:
    """Begin a place that is named; return whether it may follow what is in hand."""
    part = parts[-1]
    if not part.words and not part.place:
        part.place = place
        return True
    if not part.place:
        part.place = _other(place)
    if not part.place or part.place == place or not part.words:
        return False
    parts.append(_Part(place, []))
    return True


def _take_named(parts: list[_Part], kind: str, match: re.Match[str]) -> bool:
    """Take a clause that names a place; return whether it may follow what is in hand."""
    found, place = match.groupdict(), _place_of(match)
    verb = (found.get("verb") or found.get("said") or "").lower()
    if kind == "to":
        here = _other(place)
        if not here or (parts[-1].place not in ("", here) and not _take_up(parts, here)):
            return False
        if parts[-1].done:
            return False
        parts[-1].place = here
        _add(parts[-1], _far(match, verb))
        parts[-1].done, parts[-1].last = not found.get("n"), bool(found.get("n"))
        return True
    if kind == "last":
        if parts[-1].place not in ("", place) and not _take_up(parts, place):
            return False
        parts[-1].place, parts[-1].last = place, True
        _add(parts[-1], _far(match, verb))
        return True
    how = "work in pattern to end" if found.get("patt") or verb.startswith("patt") else "k to end" if found.get("plain") else ""
    how = "rib to end" if found.get("rib") else how
    if not how:
        how = {"p": "p to end", "purl": "p to end", "work": "work to end", "k": "k to end", "knit": "k to end"}[verb]
    if kind == "end" and parts[-1].place in ("", place) and not parts[-1].done:
        parts[-1].place = place
    elif not _take_up(parts, place):
        return False
    _add(parts[-1], [how])
    parts[-1].done = True
    return True


def _far(match: re.Match[str], verb: str) -> Words:
    """Return stitches worked up to the last of a place, or to its end."""
    if not match["n"]:
        return [verb, " to end"]
    return [verb, " to last ", match.span("n"), " sts"]


def _add(part: _Part, words: Words) -> None:
    part.words += [", ", *words] if part.words else words


def _clause(text: str, at: int) -> int | None:
    """Return where the clause that begins here ends: before a sign outside brackets; None if it names a place."""
    depth, end = 0, at
    while end < len(text):
        sign = text[end]
        depth += (sign in "([") - (sign in ")]")
        if depth == 0 and (sign in ",;/" or (sign == "." and re.match(r"\.(?:\s|$)", text[end:]))):
            break
        if depth == 0 and sign in "(-=" and re.match(rf"\s*[-(=]+\s*{N}\s+{STS}", text[end:]):
            break
        end += 1
    words = text[at:end].rstrip()
    if words and _REST.fullmatch(words) is not None:
        return at + len(words)
    fits = bool(words) and _STITCHES.match(words) is not None and _FORBIDDEN.search(words) is None and ":" not in words
    return at + len(words) if fits else None


def _take_plain(parts: list[_Part], text: str, at: int, end: int, sign: str) -> bool:
    """Take a clause that names no place; return whether it is known whose it is."""
    part, rest = parts[-1], _REST.fullmatch(text, at, end)
    if part.done or (part.last and sign in (";", "/") and part.words):
        other = _other(part.place)
        if not other:
            return False
        parts.append(_Part(other, []))
        part = parts[-1]
    if rest is not None:
        _add(part, ["k to end" if rest["verb"].lower() != "work" else "work to end"])
        part.done = True
    elif re.fullmatch(r"(?:work|knit)\s+(?:even|straight)", text[at:end], re.IGNORECASE):
        return False  # of the whole round, more likely than of one place
    else:
        phrase = match_phrase(text, at)
        told = phrase.write if phrase is not None and end_of(phrase) == end else None
        _add(part, [told if told is not None else (at, end)])
    return True


def _as_another(parts: list[_Part], text: str, at: int) -> int | None:
    """Take "the same", "same as front needle" behind a head; return where it ends, None if it is not said."""
    same = _SAME.match(text, at)
    if same is None or len(parts) < 2 or parts[-1].words or re.match(r"\s*(?:$|[;.(\[=]|-\s)", text[same.end() :]) is None:
        return None
    of = _place_of(same) if same["half"] or same["side"] or same["number"] else parts[-2].place
    shown = [part for part in parts[:-1] if part.place == of]
    if len(shown) != 1:
        return None
    parts[-1].words, parts[-1].done = list(shown[0].words), True
    return same.end()


def _written(parts: list[_Part]) -> Words:
    """Return a round with a head for each of its places."""
    made: Words = []
    for number, part in enumerate(parts):
        head = f"on {part.place}: " if part.place in ("instep", "sole") else f"{part.place}: "
        made += ["; "] if number else []
        made += [head if number else head.capitalize(), *part.words]
    return made


def _going_on(line: Reworded, begin: int, *, alone: bool) -> Reworded | None:
    """Write rounds that go on until something is reached, told by their places; None if the line tells none.

    Args:
        line: The line.
        begin: Where the rounds are told.
        alone: Whether the head before them is of one round, which goes on to nothing.
    """
    text = line.text
    first = _FIRST_LONG.match(text, begin)
    at = first.end() if first is not None else begin
    rounds = _SO_MANY.match(text, at)
    lead = rounds or _GOES_ON.match(text, at)
    if lead is None and (first is None or first["long"] is None):
        return None
    at = lead.end() if lead is not None else at
    parts = [_Part("", [])]
    while (named := _going_clause(text, at)) is not None:
        if not _take_named(parts, "across", named):
            return None
        at = named.end()
        glue = _AND.match(text, at)
        if glue is None or _going_clause(text, glue.end()) is None:
            break
        at = glue.end()
    far = _FAR.match(text, at)
    long = first is not None and first["long"] is not None
    if rounds is not None or alone:
        if len(parts) < 2 or far is not None or long or _round_ends(text, at, None) is None:
            return None
        more = _one_less(rounds["n"]) if rounds is not None else ""
        if rounds is not None and (alone or not more):
            return None
        return laid_anew(line, begin, at, [*_written(parts), *([f". Rep last round {more} times"] if more else [])])
    if len(parts) < 2 or (far is None) != long or _round_ends(text, at, far) is None:
        return None
    reach: Words = ["for ", first.span("long")] if long and first is not None else [*_until(far)] if far is not None else []
    end = far.end() if far is not None else at
    return laid_anew(line, begin, end, [*_written(parts), ". Rep last round ", *reach])


def _one_less(number: str) -> str:
    """Return a number of rounds without the one written out; empty for one that is too small or a word."""
    rounds = [int(each) - 1 for each in re.findall(r"\d+", number)]
    if not rounds or min(rounds) < 1:
        return ""
    first, *others = map(str, rounds)
    return f"{first} ({', '.join(others)})" if others else first


def _until(far: re.Match[str]) -> Words:
    """Return how far rounds go on."""
    start, end = far.span("far")
    return ["until", (start + 4, end)] if far["far"][:4].lower() == "till" else [(start, end)]


def _going_clause(text: str, at: int) -> re.Match[str] | None:
    """Return what one place is worked in."""
    for kind, expression in _KINDS:
        match = expression.match(text, at) if kind == "across" else None
        if match is not None and (match.groupdict().get("patt") or match.groupdict().get("plain") or match.groupdict().get("rib") or match.groupdict().get("said")):
            return match
    return None


def _round_ends(text: str, at: int, far: re.Match[str] | None) -> bool | None:
    """Return whether the sentence ends behind what was read; None if it does not."""
    end = far.end() if far is not None else at
    return True if re.match(r"\s*(?:\.|$)", text[end:]) else None
