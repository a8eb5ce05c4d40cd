"""Put what is said of work without shaping - in which fabric, how, how far - in the order of the grammar. No I/O.

Theory of operation. "Knit the sleeve in the round in stockinette until it measures 40 cm", "Rib as set for 5 cm",
"Even to 7 in from underarm, end WS", "St st with 3 garter sts at each edge until same length as back": a sentence of
work has a verb, or none, and phrases of few kinds in any order (`straight_phrases`): with what, what is worked on, a
fabric, how the rounds go, that nothing is shaped, how far, to which row, what the edges are. If phrases of known kinds
make up all of the sentence, each kind is there once at the most and one of them says how far, they are written as the
grammar has them: "join in the round. Work in stockinette until it measures 40 cm"; one phrase of no known kind leaves
the sentence as it is printed. Behind a sentence that is complete an order is a sentence of its own, and a reason or a
comfort is said with the line. It is long because each phrase has its form in the grammar, and only all together say
which sentence that is. Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from stepper.craft.stitch_patterns import RIB
from stepper.project.rewording.remarks.idle import is_idle, orders_besides
from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.talk import SENTENCE, is_talk
from stepper.project.rewording.told.numbers import digits_of
from stepper.project.rewording.told.phrases import ToldPhrase, leading_phrases
from stepper.project.rewording.told.straight_phrases import STRAIGHT
from stepper.regex import regex

Words = list[str | tuple[int, int]]
"""A sentence as it is written anew: words, or where in the line they are from."""
_FAR: Final = ("rounds", "next", "ridges", "long", "length", "until", "till", "like")
_TWICE: Final = ("lead", "do", "beside", "all", "part")
"""Kinds that may be there more than once."""
_LABEL: Final = regex(r"^\s*(?!(?:next|every|all|rows?|rnds?|rounds?|rs|ws)\b)[a-z][a-z ]{1,24}:\s*(?=[a-z])", re.IGNORECASE)
_AFTER: Final = regex(
    r"(?:\s*,\s+(?:and\s+)?|\s+and\s+)(?:then\s+)?(?=(?:work|cont(?:inue)?|rib|knit)\b[^,;:]*?\b(?:rib(?:bing)?|st(?:itch)?|garter|stockinette|patt(?:ern)?|even|straight)\b)",
    re.IGNORECASE,
)
"""Where a work may begin behind another order: "cast on 46 sts and work 3 cm in rib"."""
_ORDERED: Final = regex(
    r"(?:(?:with|using)\b[^.;:]*?\s)?(?:cast\s+on|co|pick\s+up|pu|join|rejoin|turn|change|switch|(?:knit|purl|[kp])\s*(?:\d+|one)\s+(?:row|rnd|round)s?)\b",
    re.IGNORECASE,
)
"""Orders behind which it may."""
_END: Final = regex(r"\s*(?:[.!]|$)")
_COUNT: Final = regex(r"\s*(?:[-=,:]+\s*)?[(\[]?\s*(?:=\s*)?\d[\d\s(),]*\s*(?:sts?|stitches)\b", re.IGNORECASE)
_THEN: Final = regex(
    r"(?:\s*,\s+(?:and\s+)?|\s+and\s+)(?:then\s+)?(?P<order>bo|bind|cast|change|switch|place|break|cut|join|rejoin|divide)\b",
    re.IGNORECASE,
)
"""An order behind a work that is done."""
_WHY: Final = regex(
    r"(?:\s*[,-]+\s*|\s+)(?P<said>(?:so\s+(?:that\s+)?(?:it|they|you|there|the)|because|since\s+(?:it|this|they)|as\s+(?:it|this|they)\s|which\s+(?:is|will)|this\s+(?:is|will))\b[^.;*:()]*)(?=\s*[.!]|\s*$)",
    re.IGNORECASE,
)
"""A reason or a comfort behind it."""
_DEFINED: Final = regex(r"\s*(?::|\s-)\s*(?P<row>\*[^*:.]+?)\s*\*?\s*[;,]?\s*rep(?:eat)?\s+from\s+\*(?:\s+to\s+\*)?(?P<end>\s+(?:to\s+end|a?round|across))?\s*(?=[.!]|$)", re.IGNORECASE)
"""The one row that a rib is, told behind its name."""
_RIB: Final = regex(rf"{RIB}$|(?:(?:single|double|twisted|half[\s-]twisted)\s+)?rib(?:bing)?$", re.IGNORECASE)
"""Fabrics whose every row is the same: a seed stitch is more than the row that it begins with."""
_PLAIN: Final = regex(r"(?:stockinette|stocking|st\.?\s?st|garter)\b", re.IGNORECASE)
"""Fabrics that say of no stitch among them that it is another: "in stocking stitch as set" keeps the seam stitches."""
_BARE_RIB: Final = regex(r"rib(?:bing)?$", re.IGNORECASE)
_COLON: Final = regex(r"(?:\s*(?:now|then)\s+)?rib(?:bing)?\s*:\s*", re.IGNORECASE)
"""What may stand before a rib that is named first: "Ribbing: 5 cm k2, p2"."""

_GERUND: Final = regex(r"\w+ing\b", re.IGNORECASE)


def put_works_in_order(line: Reworded) -> Reworded:
    """Return a line with its sentences of work in the order of the grammar; the same if it has none that need it."""
    at = 0
    label = _LABEL.match(line.text)
    while at < len(line.text):
        sentence = SENTENCE.match(line.text, at)
        if sentence is None or sentence.end() == at:
            break
        begin = at + len(sentence.group()) - len(sentence.group().lstrip())
        places = [(begin, begin)]
        places += [(label.end(), label.end())] if label is not None and not at else []
        if _ORDERED.match(line.text, begin):
            places += [match.span() for match in _AFTER.finditer(line.text, begin, sentence.end())]
        found = next((made for cut, start in places if (made := _in_order(line, cut, start)) is not None), None)
        line, at = found if found is not None else (line, sentence.end())
    return line


def _in_order(line: Reworded, cut: int, start: int) -> tuple[Reworded, int] | None:
    """Put one sentence in order.

    Args:
        line: The line.
        cut: Where what is written anew begins: before "and" if an order stands before it.
        start: Where the sentence begins.

    Returns:
        The line, and where what follows the sentence begins in it; None if it is not read so.
    """
    text = line.text
    colon = _COLON.match(text, start)
    phrases, at = leading_phrases(text, start, len(text), STRAIGHT)
    if colon is not None and colon.end() > at:
        phrases, at = leading_phrases(text, colon.end(), len(text), STRAIGHT)
    end, tail, said = at, Words(), list[str]()
    defined, order, why = _DEFINED.match(text, at), _THEN.match(text, at), _WHY.match(text, at)
    if defined is not None:
        end = defined.end()
    elif order is not None:
        end, tail = order.end(), [". ", order["order"].capitalize()]
    elif why is not None and _only_tells(why["said"]):
        end, said = why.end(), [why["said"].strip()]
    elif _END.match(text, at) is not None:
        more, behind = _last_rows(text, at)
        phrases, end = (*phrases, *more), behind
    elif _COUNT.match(text, at) is None:
        return None
    found = _sorted(phrases)
    written = _written(found) if found is not None else None
    if written is not None and found is not None and defined is not None:
        written = _with_row(found, written, defined)
    if found is None or written is None or ("beginning" in found and text[:start].strip()):
        return None
    joint: Words = [". "] if cut < start else []
    made = laid_anew(line, cut, end, [*joint, *written, *tail])
    kept = (*line.kept, *(words for words in (*_said(found), *said) if words))
    return replace(made, kept=kept), max(len(made.text) - (len(text) - end), cut + 1)


def _only_tells(words: str) -> bool:
    """Return whether words behind a work give a reason for it, and order nothing."""
    return not orders_besides(words) and (is_idle(words) or is_talk(words))


def _last_rows(text: str, at: int) -> tuple[tuple[ToldPhrase, ...], int]:
    """Return what the next sentence tells of the last row alone, "End with a WS row", and where it ends; none if it does not."""
    stop = _END.match(text, at)
    start = stop.end() if stop is not None else at
    start += len(text[start:]) - len(text[start:].lstrip())
    phrases, end = leading_phrases(text, start, len(text), STRAIGHT)
    if phrases and _END.match(text, end) and {phrase.kind for phrase in phrases} <= {"ending", "edge", "last"}:
        return phrases, end
    return (), at


def _sorted(phrases: Sequence[ToldPhrase]) -> dict[str, ToldPhrase] | None:
    """Return phrases by their kinds, a second verb as `doing`; None if a kind is there twice."""
    found: dict[str, ToldPhrase] = {}
    before = ""
    for phrase in phrases:
        kind = phrase.kind
        if phrase.match.group()[:3].lower() == "of " and before not in ("long", "rounds", "next", "length"):
            return None  # "from the bottom of ribbing" names no fabric
        before = kind
        if kind == "do" and "do" in found:
            kind = "doing"
            if _GERUND.match(found["do"].match.group()) and not _GERUND.match(phrase.match.group()):
                found["doing"], kind = found.pop("do"), "do"  # "continuing in rib, work 3 rounds"
        if kind in found and phrase.kind not in _TWICE:
            return None
        if kind == "doing" and kind in found:
            return None
        if phrase.kind == "lead" and found and "again" in phrase.match.group().lower():
            return None  # "knit again until" may come on top of what was worked
        if phrase.kind == "lead" and "from" in phrase.match.group().lower():
            kind = "now"
        if kind in ("part", "beside") and kind in found:
            kind += " too"
        found[kind] = phrase
    return found


def _said(found: dict[str, ToldPhrase]) -> list[str]:
    """Return what is only said of the work."""
    said = [found[kind].match.group().strip(" ,") for kind in ("part", "part too", "said", "set", "short", "beside", "beside too") if kind in found]
    for kind in _FAR:
        if kind in found:
            said += [found[kind].get(name).strip(" ,") for name in ("about", "along", "seam")]
    if {"rep", "ribbed"} <= found.keys():
        said.append(found["ribbed"].match.group().strip())
    if "last" in found and "near" in found["last"].get("where"):
        said.append(found["last"].get("where").strip())
    return said


def _with_row(found: dict[str, ToldPhrase], written: Words, defined: re.Match[str]) -> Words | None:
    """Return a rib whose one row is told behind it: that row, and how far it is worked."""
    named = found.get("fabric")
    if named is None or not _RIB.match(named.get("fabric")) or not {"long", "until"} & set(found):
        return None
    if {"ending", "edge", "last", "keep"} & set(found):
        return None
    first = next(at for at, piece in enumerate(written) if piece in ("Work", "Continue"))
    far = ["for ", found["long"].match.span("long")] if "long" in found else measured_words(found["until"])
    return [*written[:first], defined.span("row"), "; rep from * to end. Work " if defined["end"] else "; rep from *. Work ", *far] if far is not None else None


def _written(found: dict[str, ToldPhrase]) -> Words | None:
    """Return a sentence of work in the grammar's order; None if it does not say one thing clearly."""
    verb = " ".join(found["do"].match.group().lower().split()) if "do" in found else ""
    verb = {"k": "knit", "p": "purl"}.get(verb, verb)
    far = [kind for kind in _FAR if kind in found]
    fabric = _fabric(verb, found)
    if found.keys() <= {"needle", "change"} and len(found) == 1:
        return _needle(found)
    if "rep" in found:
        return _again(found, far)
    how = found.keys() & {"flat", "round"}
    if len(how) == 1 and found.keys() <= {"flat", "round", "lead", "now", "do"} and re.match(r"work|cont|proceed|go\s|carry|keep", verb):
        around = "round" in found and found["round"].get("around")
        return None if around else ["Work flat"] if "flat" in found else ["Join in the round"]
    if fabric is None or not _agrees(verb, found, fabric):
        return None
    if not far and "now" in found and fabric and verb.startswith(("work", "knit", "cont", "change")):
        alone = found.keys() <= {"now", "do", "fabric", "ribbed", "lead", "part", "all"}
        return ["Work", *fabric] if alone else None
    if len(far) != 1:
        return None
    knits = (not fabric and verb.startswith(("knit", "purl", "continue to knit"))) or "every" in found
    made = _opening(found)
    newly = "round" in found and not found["round"].get("around")  # what a piece in rows was set in does not go around
    if knits and not ({"beside", "set"} if newly else {"even", "beside", "set"}) & set(found):
        made += ["Purl" if verb.startswith("purl") else "Knit"]
    else:
        made += ["Continue" if verb in ("continue", "cont", "cont.") and not fabric and not made else "Work"]
    if far == ["ridges"]:
        many = found["ridges"].get("number")
        number = found["ridges"].match.span("number") if digits_of(many) == many else digits_of(many)
        return [*made[:-1], "Knit ", number, " ridges", *_behind(found)]
    plain = _in_hand(made) in ("Knit", "Purl")
    if far[0] in ("rounds", "next"):
        rounds = found[far[0]]
        made += [" ", rounds.match.span("number") if far == ["rounds"] else "1", " "]
        made += ["more "] if far == ["rounds"] and (rounds.get("more") or rounds.get("again")) else []
        made += [rounds.match.span("row")]
        made += [] if plain else fabric or [" even"]
        return [*made, *_behind(found)]
    if not plain:
        bare = _in_hand(made) == "Continue" and not {"even", "set", "beside"} & set(found)
        made += fabric or ([] if bare else [" even"])
    reach = ["for ", found["long"].match.span("long")] if far == ["long"] else measured_words(found[far[0]], ribbed=_is_ribbed(fabric, found))
    if reach is None:
        return None
    return [*made, " ", *reach, *_behind(found)]


def _again(found: dict[str, ToldPhrase], far: Sequence[str]) -> Words | None:
    """Return rows that are worked again until a length: "keep repeating these two rows until work measures 15 cm"."""
    if not found.keys() <= {"rep", "lead", "now", "ending", "edge", "ribbed", *_FAR} or len(far) != 1 or far[0] in ("rounds", "next", "ridges"):
        return None
    rep = found["rep"]
    reach = ["for ", found["long"].match.span("long")] if far[0] == "long" else measured_words(found[far[0]])
    verb = "Work " if rep.match.group().lower().startswith("work") else "Repeat "
    return [verb, rep.match.span("rows"), " ", *reach, *_behind(found)] if reach is not None else None


def _first_side(beginning: ToldPhrase) -> str:
    """Return the side of the row that a work begins with."""
    return "RS" if beginning.get("side")[0] in "rRkK" else "WS"


def _needle(found: dict[str, ToldPhrase]) -> Words | None:
    """Return needles that a sentence of its own changes to: "Larger ndl."."""
    (phrase,) = found.values()
    if phrase.kind == "needle" and (phrase.get("with") or not re.match("smaller|larger", phrase.get("size"), re.IGNORECASE)):
        return None
    return ["Change to ", _size(phrase), " needles"]


def _size(phrase: ToldPhrase) -> tuple[int, int]:
    """Return where the size of needles stands."""
    return phrase.match.span("size" if phrase.get("size") else "mm")


def _opening(found: dict[str, ToldPhrase]) -> Words:
    """Return what a sentence of work opens with: needles, a yarn, whether rounds or rows are worked."""
    made: Words = [found["these"].match.span("n"), " sts. "] if "these" in found else []
    made += [f"Next row ({_first_side(found['beginning'])}): "] if "beginning" in found else []
    for kind in ("change", "needle"):
        made += ["Change to ", _size(found[kind]), " needles. "] if kind in found else []
    made += ["Join in the round. "] if "round" in found and not found["round"].get("around") else []
    made += ["Work flat. "] if "flat" in found else []
    made += ["With ", found["yarn"].match.span("yarn"), ", "] if "yarn" in found else []
    return made


_FROM: Final = {
    "underarm": "underarm",
    "markers": "markers",
    "picked": "pick-up",
    "heel": "back of heel",
    "armhole": "beg of armhole",
    "cast": "cast-on edge",
}
"""Places that a length is measured from, as the grammar has them."""


def measured_words(phrase: ToldPhrase, *, ribbed: bool = False) -> Words | None:
    """Return the words for a length that something measures, or for another part it is as long as.

    Args:
        phrase: How far the work goes.
        ribbed: Whether it is a rib, which is then the edge that is measured.
    """
    if phrase.kind == "like":
        return _like(phrase)
    if phrase.get("raw"):
        return [phrase.match.span("raw")]
    what = phrase.get("what") or "piece"
    if phrase.get("seam") and what.lower() != "sleeve":
        return None
    if what.lower() == "edge" and not ribbed:
        return None
    span = "ribbing" if what.lower() == "edge" else phrase.match.span("what") if phrase.get("what") else "piece"
    subject: Words = ["until ", "armhole" if phrase.get("armholes") else span, " measures ", phrase.match.span("long")]
    places = [name for name in (*_FROM, "ribs", "first") if phrase.get(name)]
    if len(places) > 1:
        return None
    if not places:
        return subject
    (name,) = places
    at = phrase.match.span(name)
    if name == "ribs":
        of = re.split(r"\s", phrase.get("ribs"))[-1]
        return [*subject, " from end of ", (at[1] - len(of), at[1])]
    if name == "first":
        name = "markers" if phrase.get("first").lower().startswith("marker") else "cast"
    return [*subject, f" from {_FROM[name]}"]


def _like(phrase: ToldPhrase) -> Words | None:
    """Return the words for another part that a piece is as long as; up to its shoulders if nothing else is said."""
    what = phrase.get("what").lower()
    if phrase.get("seam") or (not phrase.get("upto") and what in ("body", "sleeve", "leg", "foot", "hand")):
        return None
    at = phrase.match.span("other")
    other = (at[0], at[1] - 1) if phrase.get("other").lower().endswith("s") else at
    upto = phrase.match.span("upto") if phrase.get("upto") else "shoulder"
    return ["until ", "armhole" if phrase.get("armholes") or phrase.get("own") else "piece", " measures same as ", other, " to ", upto]


def _behind(found: dict[str, ToldPhrase]) -> Words:
    """Return what stands behind how far: the last row, the edges, a change in that row."""
    made: Words = []
    apart = bool({"like", "rounds", "next", "ridges"} & set(found))
    if "keep" in found and apart:
        made += _kept_edges(found["keep"])
    if "edge" in found:
        made += [". Ends at " if apart else ", ending at ", found["edge"].match.span("edge"), " edge"]
    if "ending" in found:
        made += [". Ends with " if apart else ", ending with ", *_last_row(found["ending"])]
    if "keep" in found and not apart:
        made += _kept_edges(found["keep"])
    if "short" in found:
        made += [". Stop short ", found["short"].match.span("n"), " sts"]
    if "last" in found:
        last = found["last"]
        way = "increasing" if last.get("dir").lower() == "inc" else "decreasing"
        made += [f", {way} ", last.match.span("n"), " sts evenly on last row"]
    return made


def _kept_edges(keep: ToldPhrase) -> Words:
    """Return the stitches at both edges that are worked in another fabric."""
    st = "" if re.search(r"\bst", keep.get("edge"), re.IGNORECASE) else " st"
    return [", keeping ", keep.match.span("n"), " edge sts in ", keep.match.span("edge"), st]


def _last_row(ending: ToldPhrase) -> Words:
    """Return with which row a length ends."""
    for name in ("number", "nth"):
        if ending.get(name):
            return ["row ", ending.match.span(name)]
    if ending.get("facing"):
        return ["a WS row" if ending.get("facing")[0] in "rR" else "a RS row"]
    return [f"a {_SIDES[ending.get('side').lower()[0]]} row"]


_SIDES: Final = {"r": "RS", "w": "WS", "p": "purl", "k": "knit"}
_GARTER: Final = regex(r"\bgarter\b", re.IGNORECASE)


def _in_hand(made: Words) -> str | tuple[int, int]:
    """Return the verb of a sentence that has been begun."""
    return next(piece for piece in reversed(made) if piece in ("Knit", "Purl", "Work", "Continue"))


def _agrees(verb: str, found: dict[str, ToldPhrase], fabric: Words) -> bool:
    """Return whether the verb and the phrases of a sentence order one work together."""
    kinds = set(found)
    if {"round", "flat"} <= kinds or {"ending", "edge"} <= kinds or {"keep", "last"} <= kinds:
        return False
    if "short" in kinds and kinds & {"ending", "edge", "last", "keep", "flat", "next"}:
        return False
    if (kinds & {"ending", "edge"} and "next" in kinds) or {"these", "beginning"} <= kinds:
        return False
    if "beginning" in kinds and (
        "round" in kinds or (re.match(r"[kp]", found["beginning"].get("side"), re.IGNORECASE) and not _is_stockinette(found))
    ):
        return False  # which side a knit row is of is known of stocking stitch alone
    if "keep" in kinds and not (fabric or kinds & {"even", "set", "beside"}):
        return False
    if "beside" in kinds and fabric and not _PATTERN.search(found["fabric"].get("fabric") if "fabric" in kinds else ""):
        return False
    if "last" in kinds and kinds & {"next", "ridges", "like"} | ({"ending"} & kinds if "rounds" in kinds else set()):
        return False
    if "ribbed" in found and "fabric" in found and not _BARE_RIB.match(found["fabric"].get("fabric")):
        return False
    if verb.startswith("purl") and (fabric or not kinds & {"rounds", "next"} or "even" in found):
        return False
    if kinds & {"plain", "every"} and (fabric or not ("every" in found or verb.startswith("knit"))):
        return False
    goes_on = re.match(r"(?:change|switch|go\s+over)\s+to\b", verb) is not None
    if goes_on:
        return bool(fabric)
    if verb in ("do", "make") and not fabric:
        return False
    around = "round" in kinds and found["round"].get("around")  # "k around" is a row: every stitch of it
    if verb.startswith("knit") and not fabric and kinds & {"round", "flat"} and not (around or kinds & {"rounds", "even"}):
        return False  # in the knit stitch, or as the rows before?
    if "ridges" in found and (fabric or "flat" in found):
        return "fabric" in found and _GARTER.search(found["fabric"].match.group()) is not None
    if re.match(r"(?:work|knit)ing\b", verb):
        return False
    if "doing" in found and not (fabric and (_GERUND.match(found["doing"].match.group()) or kinds & {"round", "flat"})):
        return False
    return bool(verb or fabric or kinds & {"even", "set"})  # "4 rounds", "10 cm": of what?


def _is_ribbed(fabric: Words, found: dict[str, ToldPhrase]) -> bool:
    """Return whether the fabric is a rib."""
    return bool(fabric) and ("fabric" not in found or _RIB.match(found["fabric"].get("fabric")) is not None)


def _is_stockinette(found: dict[str, ToldPhrase]) -> bool:
    """Return whether the fabric is stocking stitch, its knit side the right one."""
    return "fabric" in found and _STOCKING.match(found["fabric"].get("fabric")) is not None


_STOCKING: Final = regex(r"st(?:o|\.?\s*st)", re.IGNORECASE)
_PATTERN: Final = regex(r"patt", re.IGNORECASE)
_IN_SIGNS: Final = (
    (regex(r"\bknit\s+", re.IGNORECASE), "k"),
    (regex(r"\bpurl\s+", re.IGNORECASE), "p"),
    (regex(r"\s+through\s+(?:the\s+)?back\s+loops?", re.IGNORECASE), " tbl"),
    (regex(r"(?<=\d)\.\s*(?=[kp])", re.IGNORECASE), ", "),
)
_TWISTED: Final = regex(r"twisted", re.IGNORECASE)


def _fabric(verb: str, found: dict[str, ToldPhrase]) -> Words | None:
    """Return the fabric as the grammar has it, with a space before it; empty if none is named, None if two are."""
    if "given" in found:
        return None if {"ribbed", "fabric"} & set(found) else [" in rib as given for ", found["given"].match.span("part")]
    if "ribbed" in found:
        told = found["ribbed"].get("sts")
        if _TWISTED.search(found["ribbed"].get("rib")) and "b" not in told.lower():
            return None
        for words, sign in _IN_SIGNS:
            told = words.sub(sign, told)
        return [f" in {told} rib"]
    if "fabric" in found:
        as_set = "set" in found or found["fabric"].get("set")
        set_ = [" as set"] if as_set and _PLAIN.match(found["fabric"].get("fabric")) else []
        return [" in ", found["fabric"].match.span("fabric"), *set_]
    return [" in rib"] if verb.startswith("rib") or verb.endswith("ribbing") else []
