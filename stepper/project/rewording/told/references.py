"""What another part, or a section of this one, is worked again for: what of it, how far, how often. No I/O.

Theory of operation. "Work from ** to ** as given for Back", "work as for the Back between ** and **" and
"Follow the back up to **" are one order: a verb, the part, and how far it goes, in any order. Each phrase is
of one of a few kinds (`REFERENCES`); what they mean together is written in the grammar's words, and a sentence
that has none or too many of a kind stays as it is printed. It is long because each kind of phrase may stand
beside any other. Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from stepper.craft.stitch_patterns import RIB
from stepper.project.pairs import WHOLES
from stepper.project.part_names import EDGING, PART, WHICH
from stepper.project.rewording.synonym import LONG, ROUND, STS, N
from stepper.project.rewording.told.numbers import digits_of
from stepper.project.rewording.told.phrases import Kinds, ToldPhrase, prepare_kinds
from stepper.project.rewording.told.repeats import HOW_OFTEN
from stepper.project.rewording.told.shaping import Piece
from stepper.regex import regex

_MARK: Final = r"[(\[]?(?:\*{2,4}|\u2020{1,2}|\u2021|\u00a7)[)\]]?"
_LIKE: Final = (
    r"(?:(?:exactly|just)\s+)?(?:(?:in\s+)?(?:the\s+)?same(?:\s+(?:way|manner))?\s+as(?:\s+you\s+did)?"
    r"|as(?:\s+(?:you\s+(?:did|worked)|given|worked|directed|described|instructed|written|set|explained))?|like|identical(?:ly)?\s+(?:to|with)|following)"
    r"(?:\s+(?:for|on|in|at))?\s+(?:the\s+)?(?:instructions\s+(?:for|of)\s+(?:the\s+)?)?"
)
_SECTION: Final = r"(?:section|part|step|block|stage|tier|square|chapter)\s+\d{1,2}"
_GARMENT: Final = rf"(?:{WHOLES}|{PART}|{EDGING})"
_PART: Final = rf"(?P<part>{_SECTION}|{WHICH}{_GARMENT}|(?:left|right)(?=\s*[,;:(]|\s+(?:but|until|to|up|as)\b))s?\b"
_SAME_SIDE: Final = r"(?:(?:the\s+)?(?:(?:first|1st|other|opposite)(?:\s+(?:side|half|shoulder|one))?|(?:left|right)\s+(?:side|half|shoulder))(?:\s+of\s+(?:the\s+)?neck)?)"
_THIS_SIDE: Final = r"(?:this|it|(?:(?:the\s+)?(?:second|2nd|other|left|right)|this)\s+(?:side|half|shoulder))(?:\s+of\s+(?:the\s+)?neck)?"
_EVENT: Final = r"(?:armholes?|neck|neckline|shoulders?|yoke|raglans?|underarms?|crown|toe|heel|(?:thumb\s+)?gusset|thumb)"
_PLACE: Final = rf"(?:the\s+)?(?:(?:beg(?:inning)?|start|end)\s+of\s+(?:the\s+)?)?{_EVENT}(?:\s+(?:shapings?|opening))?"
_REVERSED: Final = (
    r"(?:but\s+|and\s+|only\s+)?(?:with\s+)?(?:(?:work(?:ing)?\s+)?(?:(?:all|the|its)\s+)*(?:shapings?|everything)\s+(?:is\s+|are\s+)?(?:reversed|mirrored|in\s+reverse)"
    r"|mirrored|reversed|in\s+(?:mirror\s+image|reverse)|as\s+(?:a|its)\s+mirror\s+image|(?:make|making|as|work(?:ed)?|knit)\s+(?:(?:it|this(?:\s+(?:one|side|front))?|the\s+(?:second|other)(?:\s+(?:one|side|front))?)\s+)?(?:as\s+)?(?:a|the|its)\s+mirror\s+image|the\s+other\s+way\s+a?round"
    r"|(?:mirror|revers)(?:e|ing|ed)?(?:\s+(?:all|the|both|its))*\s+(?:shapings?|decreases?|decs?|increases?|everything))\b"
)
_UP_TO: Final = regex(r"shoulder|armhole|underarm|neck|raglan", re.IGNORECASE)
REFERENCES: Final[Kinds] = prepare_kinds(
    ("lead", r"(?:now|then|next)\b\s*,?"),
    ("cast", r"cast\s+on\s+and(?=\s+(?:work|knit|rib)\b)"),
    (
        "begun",
        rf"(?P<begun>(?:(?:using|with)\s+[^.,;:]{{2,50}},\s*)?(?:cast\s+on|pick\s+up\s+and\s+knit)\s+{N}\s*{STS})\s*,?\s+and(?=\s+(?:(?:then\s+)?(?:work|knit|cont)|rib)\b)",
    ),
    ("finish", r"(?:complete|finish)\b"),
    ("own", rf"{_THIS_SIDE}(?:\s+is)?(?:\s+(?:worked|knit(?:ted)?|made))?(?=\s+(?:to\s+match|to\s+correspond|(?:exactly\s+|just\s+)?(?:(?:in\s+)?the\s+same|same|as|like)\b))"),
    (
        "shape",
        r"(?:shape|work|make|dec(?:rease)?\.?(?:\s+for)?|rep(?:eat)?)\s+(?:the\s+)?(?:(?P<shaped>armhole|raglan)s?\s+(?:edge\s+)?(?:shapings?|dec(?:rease)?s?)(?:\s+rows?)?|(?:shapings?|decreases?|decs)\s+(?:for|of)\s+(?:the\s+)?(?P<shaped2>armhole|raglan)s?)\b",
    ),
    ("shape", r"(?:shape|dec(?:rease)?\.?\s+(?:for|at))\s+(?:the\s+)?(?P<shaped>armhole|raglan)s?\b"),
    ("reversed", _REVERSED),
    ("verb", r"(?:work|knit|make|do|cont(?:inue)?\.?|proceed|go\s+on|rep(?:eat)?\.?|follow)(?:\s+(?:even|straight|this(?:\s+(?:one|piece|front))?(?!\s+(?:side|half|shoulder)\b)|it|(?:the\s+)?(?:left|right)\s+front))?(?=\s)"),
    # --- what of it ---
    ("rows", rf"(?:all\s+)?(?:(?:of\s+)?the\s+)?(?P<n>{N}\s+)?(?P<row>{ROUND})\s+(?:of|from|in)\s+(?:the\s+)?(?P<part>{_SECTION})\b"),
    (
        "span",
        rf"(?:the\s+)?(?P<row>{ROUND})\s+(?P<first>\d+)(?:\s*(?:-|and|&|to|through)\s*(?P<last>\d+))?(?:\s+(?:of|from|in)\s+(?:the\s+)?(?P<part>{_SECTION})\b)?",
    ),
    ("section", rf"(?P<part>{_SECTION})\b"),
    ("long", rf"(?P<long>{LONG})(?=\s+(?:in\s+|of\s+)?(?:the\s+)?(?:\S+\s+)?rib)"),
    ("lines", rf"(?P<n>{N})\s+(?P<row>{ROUND})(?=\s+(?:in\s+|of\s+)?(?:the\s+)?(?:\S+\s+)?rib)"),
    ("lines", rf"(?P<n>{N})\s+(?P<row>{ROUND})(?=\s+(?:as|like|the\s+same|exactly)\b)"),
    ("rib", rf"(?:in\s+|of\s+)?(?:the\s+)?(?:{RIB}|rib(?:bing)?|(?:cuff|welt)(?=\s+(?:exactly\s+|just\s+)?(?:as|like|the\s+same)\b))(?:\s+(?:rounds?|rnds?|rows?))?\b"),
    # --- of what ---
    ("side", r"(?:in\s+)?the\s+same(?:\s+(?:way|manner))?(?=\s*[,.;]|\s*$|\s+but\b)"),
    ("side", rf"(?<=mirror\simage\s)of\s+{_SAME_SIDE}"),
    ("side", r"(?P<bare>to\s+(?:match|correspond))(?=\s*[.;,]|\s*$)"),
    ("side", rf"(?:{_LIKE}|to\s+(?:match|correspond(?:\s+(?:to|with))?)\s+){_SAME_SIDE}"),
    ("like", rf"(?:{_LIKE}|(?:to\s+)?(?:match|correspond(?:\s+(?:to|with))?)\s+(?:the\s+)?){_PART}"),
    ("like", rf"(?<=mirror\simage\s)of\s+(?:the\s+)?{_PART}"),
    ("like", rf"(?:the\s+)?(?:instructions|directions)\s+(?:for|of)\s+(?:the\s+)?{_PART}"),
    ("along", r"(?:along|on|up|down)\s+(?:the\s+)?(?:other|second|opposite|remaining)\s+(?:front\s+|side\s+)?edge"),
    # --- as long as another ---
    ("manner", r"(?:in\s+(?:[a-z0-9][a-z0-9'.-]*\s+){1,3}?(?=(?:until|to)\b)|(?:even|straight|without\s+(?:any\s+)?(?:further\s+)?shaping)\b|st(?:\.?\s*st\b\.?|ockinette|ocking\s+st(?:itch)?))"),
    (
        "aslong",
        rf"(?:until|to)\s+(?:(?:the\s+)?(?P<own>armholes?|piece|work|it|this\s+(?:side|piece|front|half)|(?:(?:left|right|second)\s+)?(?:front|back|side|sleeve|body))\s+)?"
        rf"(?:(?:(?:measures?|is|are)\s+)?(?:exactly\s+)?(?:the\s+)?(?:same(?:\s+(?:length|depth|height))?\s+as|as\s+(?:long|deep)\s+as)|match(?:es)?|equals?)\s+(?:(?:on|for|that\s+of|those\s+of)\s+)?"
        rf"(?:(?P<first>{_SAME_SIDE})|(?:the\s+)?(?P<part>(?:(?:left|right)\s+)?(?:back|front|sleeve|body)))s?\b(?:\s+armholes?\b)?(?:\s+in\s+length)?",
    ),
    # --- how far ---
    ("between", rf"(?:from|between)\s+(?P<from>{_MARK})\s*(?:to|and|until|-)\s*(?P<to>{_MARK})"),
    ("mark", rf"(?:up\s+to|to|until|as\s+far\s+as)\s+(?:the\s+)?(?P<to>{_MARK})"),
    ("ribbed", r"(?:to|until)\s+(?:the\s+)?end\s+of\s+(?:the\s+)?rib(?:bing)?"),
    ("event", rf"(?:until|up\s+to|as\s+far\s+as|to)\s+(?P<place>{_PLACE})(?=\s*[.,;(]|\s*$|\s+(?:as|but|revers|like))"),
    ("upto", r"(?:(?:up\s+)?to|at|before)\s+(?:the\s+)?(?:(?:beg(?:inning)?|start)\s+of\s+(?:the\s+)?)?(?P<place>shoulder|armhole|underarm|neck|raglan)s?(?:\s+shapings?)?"),
    ("for", rf"for\s+(?P<for>{LONG}|{N}\s+{ROUND})"),
    ("measured", rf"until\s+(?:the\s+)?(?:piece|work|it|[a-z]+)\s+measures\s+{LONG}(?:\s+from\s+[a-z -]{{3,30}}?(?=\s*[.,;]|\s*$))?"),
    ("until", rf"until\s+(?:there\s+are\s+)?(?P<sts>{N})\s+{STS}(?:\s+(?:rem(?:ain)?|(?:are\s+)?left))?"),
    # --- how often, from where, to where, with what difference ---
    *HOW_OFTEN,
    (
        "begin",
        rf"(?:beg(?:inning)?|start(?:ing)?)\s+(?:with|on|from)\s+(?P<row>{ROUND})\s+(?P<n>\d+)(?P<once>\s+(?:on\s+|for\s+)?the\s+first\s+(?:time|repeat)(?:\s+only)?)?",
    ),
    (
        "ending",
        rf"(?:but\s+)?(?:and\s+)?(?:end(?:ing)?|finish(?:ing)?|stop(?:ping)?)\s+(?:(?:with|after|on)\s+)?(?:an?\s+|the\s+)?(?:(?P<facing>(?:rs|ws|right[-\s]side|wrong[-\s]side)\s+(?:is\s+)?facing(?:\s+for\s+(?:the\s+)?next\s+row)?)|(?P<edge>at\s+(?:the\s+)?(?:armhole|neck|side|front)\s+edge)|(?P<row>{ROUND})\s+(?P<n>\d+)|(?P<nth>\d+)(?:st|nd|rd|th)\s+(?P<row2>{ROUND})|(?:(?:at\s+)?(?:the\s+)?end\s+of\s+an?\s+)?(?P<side>rs|ws|right[-\s]side|wrong[-\s]side)(?:\s+{ROUND})?(?=\s*[.,;)]|\s*$))",
    ),
    ("omit", rf"(?:but\s+)?(?:omit(?:ting)?|leav(?:e|ing)\s+(?:out|off))\s+(?:the\s+)?(?P<what>last|final)\s+{ROUND}"),
    (
        "lie",
        rf"(?:[:(]\s*)?(?:so\s+that\s+)?(?:the\s+)?(?P<edge>neck|front|armhole|raglan|side)(?:\s+edge)?\s+(?:dec(?:rease)?s?|shapings?)\s+(?:(?:now|will|then)\s+)*(?:(?:lie|are|is|come|comes|fall|go)(?:\s+(?:now|worked))?\s+)?at\s+(?:the\s+)?(?P<end>beg(?:inning)?|start|end)s?(?:\s+of\s+(?:the\s+)?(?:(?:rs|right[-\s]side)\s+)?{ROUND})?\s*\)?",
    ),
    (
        "later",
        rf"(?:but\s+)?work(?:ing)?\s+(?:1|one)\s+(?:{ROUND}\s+more|more\s+{ROUND}|extra\s+{ROUND}|additional\s+{ROUND})\s+before\s+(?:the\s+)?(?:shaping|start\s+of|beginning)(?:\s+(?:the\s+)?(?:shoulders?|armholes?|necks?)(?:\s+shapings?)?)?",
    ),
)
"""The kinds of phrases of which such a sentence is made."""


def write_reference(phrases: Sequence[ToldPhrase]) -> tuple[tuple[Piece, ...], tuple[str, ...]] | None:
    """Write a sentence that works something again in the grammar's words.

    Args:
        phrases: The phrases it is made of.

    Returns:
        The words in their order, each with its place, and what is only said; None if they are not read.
    """
    by_kind: dict[str, ToldPhrase] = {}
    spans: list[ToldPhrase] = []
    often: list[ToldPhrase] = []
    lies: list[ToldPhrase] = []
    for phrase in phrases:
        if phrase.kind == "span":
            spans.append(phrase)
        elif phrase.kind in _OFTEN:
            often.append(phrase)
        elif phrase.kind == "lie":
            lies.append(phrase)
        elif phrase.kind in by_kind:
            return None
        else:
            by_kind[phrase.kind] = phrase
    told = _Kinds(by_kind, tuple(spans), tuple(often))
    if lies and not _lie_mirrored(lies, by_kind):
        return None
    said = tuple(phrase.match.group().strip(" :()") for phrase in lies)
    begun = by_kind.pop("begun", None)
    before: tuple[Piece, ...] = ()
    if begun is not None:
        before = ((begun.get("begun"), begun.match.start()), (". ", begun.match.end("begun")))
    for write in (_as_long, _side, _shaped, _ribbed, _rows, _section, _part):
        written = write(told)
        if written is not None and told.read == {*by_kind, *({"span"} if spans else ()), *({"often"} if often else ())}:
            (words, at), *others = written
            written = ((words[:1].upper() + words[1:], at), *others) if before else written
            return (*before, *written), (*told.said, *said)
        told = _Kinds(by_kind, tuple(spans), tuple(often))
    return None


def _lie_mirrored(lies: Sequence[ToldPhrase], by_kind: dict[str, ToldPhrase]) -> bool:
    """Return whether shaping lies where the mirror image of a front has it, as the words tell besides.

    A left front is shaped for its neck at the end of right-side rows, as it is worn, a right front at their
    beginning.
    """
    like = by_kind.get("like")
    side = like.get("part").lower().split()[0] if like is not None else ""
    if "reversed" not in by_kind or side not in ("left", "right"):
        return False
    for lie in lies:
        inner, ends = lie.get("edge").lower() in ("neck", "front"), lie.get("end").lower() == "end"
        if (inner == ends) != (side == "right"):
            return False
    return True


_OFTEN: Final = ("all", "more", "once", "times")


class _Kinds:
    """The phrases of a sentence by their kinds, and which of them are read so far."""

    def __init__(
        self, by_kind: dict[str, ToldPhrase], spans: tuple[ToldPhrase, ...], often: tuple[ToldPhrase, ...]
    ) -> None:
        self._by_kind, self._spans, self._often = by_kind, spans, often
        self.read: set[str] = {"lead"} & {*by_kind}
        self.said: tuple[str, ...] = ()

    def get(self, kind: str) -> ToldPhrase | None:
        """Return the phrase of a kind, which is read by that; None if the sentence has none."""
        phrase = self._by_kind.get(kind)
        if phrase is not None:
            self.read.add(kind)
        return phrase

    def say(self, kind: str) -> None:
        """Have the phrase of a kind only said, if there is one."""
        phrase = self.get(kind)
        self.said += () if phrase is None else (phrase.match.group(),)

    def spans(self) -> tuple[ToldPhrase, ...]:
        self.read |= {"span"} if self._spans else set()
        return self._spans

    def often(self) -> tuple[ToldPhrase, ...]:
        self.read |= {"often"} if self._often else set()
        return self._often


def _count(told: _Kinds) -> tuple[Piece, ...]:
    count = told.get("count")
    if count is None:
        return ()
    return ((". ", count.match.start()), (f"{count.get('n')} sts", count.match.start("n")))


def _reversing(told: _Kinds) -> tuple[Piece, ...]:
    back = told.get("reversed")
    return () if back is None else ((", reversing shaping", back.match.start()),)


def _as_long(told: _Kinds) -> tuple[Piece, ...] | None:
    """ "Work straight until same length as first side, ending with a WS row"."""
    long, verb, manner = told.get("aslong"), told.get("verb"), told.get("manner")
    if long is None or (verb is None and manner is None):
        return None
    upto = told.get("upto") or told.get("event")
    part = "first side" if long.get("first") else long.get("part").lower()
    named = _UP_TO.search(upto.get("place")) if upto is not None else None
    place = named.group().lower() if named is not None else ""
    if (upto is None) != (named is None):
        return None
    if (part == "first side" and place not in ("", "shoulder")) or (not place and part.endswith(("sleeve", "body"))):
        return None  # where it ends is not said
    whose = long.get("own").lower()
    if whose.endswith(("sleeve", "body")) and not part.endswith(whose.split()[-1]):
        return None  # a sleeve that is as long as a back: to where?
    own = "armhole" if whose.startswith("armhole") else "piece"
    words = manner.match.group().strip().lower() if manner is not None else "even"
    if words.startswith("st"):
        words = "even" if words == "straight" else f"in {words}"
    words = "even" if words.startswith("without") else words
    at = long.match.start()
    ending = _ending(told)
    tail = tuple((words.replace(", ending", ". ends", 1), place) for words, place in ending)
    start = (verb or manner or long).match.start()
    bare = verb is not None and manner is None and verb.match.group().lower().startswith("knit")
    return (("knit " if bare else f"work {words} ", start), (f"until {own} measures same as {part} to {place or 'shoulder'}", at), *tail, *_count(told))


def _side(told: _Kinds) -> tuple[Piece, ...] | None:
    """ "Complete to match first side": what is left of it. One row more before its edges is what a mirror image has."""
    side = told.get("side")
    verb = told.get("finish") or told.get("verb")
    own = told.get("own")
    if side is None or told.get("like") is not None or (verb is None and (own is None or len(own.match.group()) < len("left side"))):
        return None
    if verb is not None and verb.kind == "verb" and own is None and not side.match.group().lower().startswith("to"):
        return None  # "work as first half" may be all of it
    if side.get("bare") and own is None:
        return None  # to match which part
    told.say("later")
    return (("complete like other side", side.match.start()), *_reversing(told), *_count(told))


def _shaped(told: _Kinds) -> tuple[Piece, ...] | None:
    """ "Shape armholes as for back"."""
    shape, like = told.get("shape"), told.get("like")
    if shape is None or like is None:
        return None
    name = shape.get("shaped") or shape.get("shaped2")
    until = told.get("until")
    end: tuple[Piece, ...] = ()
    if until is not None:
        end = ((" until ", until.match.start()), (until.get("sts"), until.match.start("sts")), (" sts rem" if "rem" in until.match.group().lower() else " sts", until.match.end("sts")))
    measured = told.get("measured")
    if measured is not None:
        end = (*end, (f" {measured.match.group()}", measured.match.start()))
    at = shape.match.start()
    return ((f"shape {name} as for {like.get('part')}", at), *end, *_count(told))


def _ribbed(told: _Kinds) -> tuple[Piece, ...] | None:
    """ "Work 3 cm in rib as given for back, ending with a 2nd row"; "cast on and work rib as for back"."""
    rib, like = told.get("rib"), told.get("like")
    if rib is None or like is None:
        return None
    part = like.get("part").lower().removesuffix("s")
    cast, verb = told.get("cast"), told.get("verb")
    lasts = next((found for found in (told.get("long"), told.get("lines"), told.get("for"), told.get("measured")) if found is not None), None)
    if lasts is None:
        if verb is None and cast is None:
            return None
        at = (cast or verb or rib).match.start()
        return ((f"work as for {part} to end of ribbing", at), *_count(told))
    if cast is not None:
        return None
    if lasts.kind == "measured":
        return ((f"work in as-{part} rib ", rib.match.start()), (lasts.match.group(), lasts.match.start()), *_ending(told), *_count(told))
    group = {"long": "long", "for": "for"}.get(lasts.kind, "")
    words, at = (lasts.get(group), lasts.match.start(group)) if group else (lasts.match.group(), lasts.match.start())
    return ((f"work in as-{part} rib for ", rib.match.start()), (words, at), *_ending(told), *_count(told))


def _ending(told: _Kinds) -> tuple[Piece, ...]:
    ending = told.get("ending")
    if ending is None:
        return ()
    at = ending.match.start()
    if ending.get("facing"):
        facing = ending.get("facing").lower().startswith("w")
        return ((f", ending with a {'RS' if facing else 'WS'} row", at),)
    if ending.get("edge"):
        return ((f", ending {' '.join(ending.get('edge').lower().split())}", at),)
    if ending.get("side"):
        side = "WS" if ending.get("side").lower().startswith("w") else "RS"
        return ((f", ending with a {side} row", at),)
    return ((f", ending with row {ending.get('n') or ending.get('nth')}", at),)


def _times(phrase: ToldPhrase | None, *, again: bool) -> tuple[Piece, ...] | None:
    """Return the words for how often rows of a section are worked, whole; None if nobody can tell."""
    if phrase is None:
        return ((" once", 0),)
    at, words = phrase.match.start(), phrase.match.group().lower()
    if phrase.kind == "once":
        return ((" once", at),)
    group = "n" if phrase.match.groupdict().get("n") else "n2"
    if not phrase.get(group):
        return ((" once" if words.startswith("once") else " twice", at),)
    number = (f" {phrase.get(group)}", phrase.match.start(group))
    if phrase.kind == "times" and again:
        return None  # on top of the first time, or with it
    return (number, (" times", at))


def _rows(told: _Kinds) -> tuple[Piece, ...] | None:
    """ "Work the 6 rows of section 2 three times, then rows 1 to 4 once more"."""
    rows, spans, often = told.get("rows"), told.spans(), told.often()
    verb = told.get("verb")
    named = rows or (spans[0] if spans else None)
    if named is None or verb is None or not named.get("part") or (rows is not None and spans):
        return None
    again = verb.match.group().lower().startswith("rep")
    part, at = named.get("part"), named.match.start()
    if rows is not None:
        many = (("the ", at), (digits_of(rows.get("n")), rows.match.start("n")), (f" rows of {part}", at))
        whole = many if rows.get("n") else ((f"all rows of {part}", at),)
        lasts = _times(often[0] if often else None, again=again)
        if lasts is None or len(often) > 1:
            return None
        return (("work ", at), *whole, *lasts, *_count(told))
    if len(often) not in (len(spans), 0) or (len(spans) > 1 and not often):
        return None
    pieces: list[Piece] = [("work ", at)]
    for number, span in enumerate(spans):
        lasts = _times(often[number] if often else None, again=again and not number)
        if lasts is None or (span.get("part") or part) != part:
            return None
        here = span.match.start()
        to = f"-{span.get('last')}" if span.get("last") else ""
        pieces += [
            (", then " if number else "", here),
            (f"rows {span.get('first')}{to}", here),
            ("" if number else f" of {part}", here),
            *lasts,
        ]
    return (*pieces, *_count(told))


def _section(told: _Kinds) -> tuple[Piece, ...] | None:
    """ "Repeat section 1 twice more": all its lines."""
    section, verb, often = told.get("section"), told.get("verb"), told.often()
    if section is None or verb is None or len(often) > 1:
        return None
    begin, ending, omit = told.get("begin"), told.get("ending"), told.get("omit")
    differs = [phrase for phrase in (begin, ending, omit) if phrase is not None]
    again = verb.match.group().lower().startswith("rep")
    at = section.match.start()
    times = 1
    if often:
        lasts = _times(often[0], again=again)
        if lasts is None:
            return None
        number = _WORDS.get(said := "".join(words for words, _ in lasts).split()[0].lower(), said)
        if not number.isdigit() or int(number) > _MOST_TIMES:
            return None  # of sizes with other numbers, whole sections are not worked
        times = int(number)
    part = section.get("part")
    if not differs:
        return (*((f"{'. Work' if number else 'work'} as for {part}", at) for number in range(times)), *_count(told))
    last = ending.get("n") or ending.get("nth") if ending is not None else ""
    if len(differs) > 1 or (begin is not None and times > 1 and not begin.get("once")) or (ending is not None and not last):
        return None
    where, whole = differs[0].match.start(), (f"work all rows of {part} {times - 1} times", at)
    if begin is not None:
        pieces = [(f"work rows {begin.get('n')} to last of {part}", where), (f". Work all rows of {part} {times - 1} times", at)]
        pieces = pieces[: 2 if times > 1 else 1]
    else:
        one = f"rows 1-{last} of {part}" if ending is not None else f"all rows of {part} once but the last"
        pieces = [whole, (". W", where)] if times > 1 else [("w", where)]
        pieces.append((f"ork {one}", where))
    return (*pieces, *_count(told))


_MOST_TIMES: Final = 12
_WORDS: Final = {
    word: str(number)
    for number, word in enumerate(
        ("once", "twice", "three", "four", "five", "six", "seven", "eight", "nine", "ten"), start=1
    )
} | {"one": "1", "two": "2"}


def _part(told: _Kinds) -> tuple[Piece, ...] | None:
    """ "Work from ** to ** as given for back", as far as it goes."""
    like, verb = told.get("like"), told.get("verb")
    if like is None:
        return None
    part, at = like.get("part"), (verb or like).match.start()
    if part.lower() in ("left", "right") and verb is not None and verb.match.group().lower().endswith(" front"):
        part += " front"
    far = [phrase for kind in ("between", "mark", "event", "ribbed", "for", "measured", "until") if (phrase := told.get(kind))]
    if len(far) > 1:
        return None
    pieces: list[Piece] = [(f"work as for {part}", at)]
    for phrase in far:
        here = phrase.match.start()
        if phrase.kind == "between":
            pieces.append((f" from {_bare(phrase.get('from'))} to {_bare(phrase.get('to'))}", here))
        elif phrase.kind == "mark":
            pieces.append((f" to {_bare(phrase.get('to'))}", here))
        elif phrase.kind == "event":
            pieces.append((f" to {phrase.get('place')}", here))
        elif phrase.kind == "measured":
            pieces.append((f" {phrase.match.group()}", here))
        elif phrase.kind == "ribbed":
            pieces.append((" to end of ribbing", here))
        elif phrase.kind == "for":
            pieces += [(" for ", here), (phrase.get("for"), phrase.match.start("for"))]
        else:
            pieces += [(" until ", here), (phrase.get("sts"), phrase.match.start("sts")), (" sts", here)]
    told.say("along")
    back = _reversing(told)
    ending = told.get("ending")
    ends = _ending(told) if ending is not None else ()
    tail = tuple((words.replace(", ending", ". ends"), place) for words, place in ends)
    return (*pieces, *back, *tail, *_count(told))


def _bare(mark: str) -> str:
    return mark.strip("()[]")
