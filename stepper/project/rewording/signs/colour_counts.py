"""Write the stitches of a colour round, told by yarn in any of the ways in print, as stitches in yarns. No I/O.

Theory of operation. "*1 CC, 5 MC*", "*k1 LC, k3 DC; repeat from *", "3A, 1B all round" and "with white knit 2, with grey
knit 1" are one sentence: stitches, each with its number and its yarn, between stars or brackets that say what
is worked again. It is taken apart into phrases of a few kinds (`_KINDS`) and written in the grammar's words.
One word that belongs to no phrase leaves all of it as it is printed. Stitches without a verb are knitted in a
round, in a row called a right-side one and behind a star or bracket without a head; elsewhere they may be
purled, and are refused. A list of colours without a star is the repeat of its round, which is said with it.
Source: common practice of stranded colour knitting.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import STS
from stepper.project.rewording.told.numbers import SMALL, digits_of
from stepper.project.rewording.told.phrases import Kinds, ToldPhrase, prepare_kinds, split_phrases
from stepper.project.rewording.yarn_names import CALLED
from stepper.regex import regex

_YARN: Final = rf"(?:(?-i:MC\d?|CC\d?|LC|C\d|[A-JL-OQ-Z]\d?)|{CALLED})(?![-'\w])"
"""A yarn by its letters, all but those of knit and purl, or by its colour."""
_LISTED: Final = rf"(?:\d+(?:\s*\([\d\s,]+\))?|(?:{SMALL})(?=\s))"
_VERB: Final = r"(?:knit|purl|k|p)"
_OF_ROUND: Final = r"(?:\s+(?:of\s+)?(?:the\s+)?(?:row|rnd|round))?"
_KINDS: Final[Kinds] = prepare_kinds(
    (
        "stitches",
        rf"(?:(?P<verb>{_VERB})\.?\s*)?(?P<n>{_LISTED})\s*(?:{STS}\s+)?(?:(?:in|with|of)\s+)?(?:the\s+)?(?P<yarn>{_YARN})(?:\s+(?:yarn|wool))?(?:\s+{STS})?(?:\s+(?P<behind>knit|purl)(?:t?ed)?\b)?",
    ),
    (
        "stitches",
        rf"(?:(?:with|in|using)\s+)?(?:the\s+)?(?P<yarn>{_YARN})\s*,?\s*(?P<verb>{_VERB})\.?\s*(?P<n>{_LISTED})(?:\s+{STS})?(?![\w])",
    ),
    ("star", r"\*+"),
    ("open", r"[(\[]"),
    ("close", r"[)\]]"),
    (
        "again",
        r"rep(?:eat(?:ed|ing)?)?\b\.?(?:\s+(?:this|these|the\s+)(?:\s*\d+\s+(?:sts|stitches))?)?(?:\s+(?:from|between)\b)?(?:\s*\*+)?(?:\s*(?:to|-+|and)\s*\*+)?",
    ),
    ("last", rf"to\s+(?:the\s+)?last\s+(?P<n>\d+)?\s*{STS}"),
    (
        "goal",
        rf"(?:to\s+(?:the\s+)?end|(?:all\s+(?:the\s+way\s+)?|right\s+)?(?:around|round|across)){_OF_ROUND}\b",
    ),
    ("times", rf"(?P<times>{_LISTED}\s+times(?:\s+more|\s+in\s+all)?|once(?:\s+more)?|twice(?:\s+more)?)\b"),
    ("ending", r"(?:end(?:ing|s)?(?:\s+(?:with|in|on))?|and\s+end\s+with)\b"),
    ("alternately", r"alternat(?:e|ely|ing)\b"),
    ("all", rf"(?:all|every|entirely)\b(?:\s+(?:the\s+)?{STS})?(?:\s+(?:in|with)\b)?"),
    ("yarn", rf"(?:(?:in|with)\s+)?(?:the\s+)?(?P<yarn>{_YARN})(?:\s+(?:yarn|wool))?(?:\s+only)?"),
    ("verb", rf"{_VERB}\b"),
)
"""The kinds of phrases of a round told by its yarns."""
_CHART: Final = r"(?:(?:[a-z][a-z' -]*\s)?chart\b[^:*]{0,48}:\s*)?"
"""The name of a chart that is told in words, in front of its first round."""
_NTH: Final = r"\d+(?:st|nd|rd|th)"
_HEAD: Final = regex(
    rf"^\s*{_CHART}(?:(?P<round>(?:next\s+)?(?:rnds?|rounds?)\b[^:*]{{0,24}}|{_NTH}(?:\s*(?:,|and|&)\s*{_NTH})+\s+(?:rnds|rounds)|(?:{_NTH}|(?:[a-z]+[\s-]){{1,3}})\s*(?:rnd|round)(?:\s+\d+)?)"
    rf"|(?P<row>(?:next\s+|{_NTH}\s+)?rows?\b[^:*]{{0,24}})):\s*|^\s*(?P<bare>(?=[*(\[]|(?:k|knit|alternate|with|using|in)\s))",
    re.I,
)
_RIGHT_SIDE: Final = regex(r"\brs\b", re.I)
_BEHIND: Final = regex(r"\s*\.?\s*\*+\s*(?=\.?\s*$)")
"""A star behind the full stop of the sentence that it ends."""
_NEXT: Final = regex(r"\s*(?:[.!(]|$)")
_MOST: Final = 120
"""Most phrases of a round: a chart of sixty squares changes colour at nearly each of them."""


def write_colour_counts(line: Reworded) -> Reworded:
    """Write a round that is told by its yarns as stitches in yarns: "5 MC" as "k5 in MC".

    Returns:
        The line; the same if it is no such round.
    """
    head = _HEAD.match(line.text)
    if head is not None and _LETTERED.fullmatch(line.text, head.end()) is not None:
        line = _numbers_first(line, head.end())
    if head is None or _ANY.search(line.text, head.end()) is None:
        return line
    split = split_phrases(line.text, head.end(), _KINDS, most=_MOST)
    if split is None:
        return line
    phrases, end = split
    star = _BEHIND.match(line.text, end)
    if star is not None:
        phrases, end = (*phrases, ToldPhrase("star", star)), star.end()
    if _NEXT.match(line.text, end) is None or any(phrase.kind == "count" for phrase in phrases[:-1]):
        return line
    if phrases and phrases[-1].kind == "count":
        if not re.match(r"\s*[=(\[:-]", phrases[-1].match.group()):
            return line  # "*2 white, 2 brown*, 1 stitch" says no count
        end, phrases = phrases[-1].match.start(), phrases[:-1]
    made = _in_one_yarn(phrases, head) or _in_yarns(phrases, head)
    if made is None:
        return line
    words, said = made
    text, here = line.text, line.places[head.end()]
    return replace(
        line,
        text=text[: head.end()] + words + text[end:],
        places=(*line.places[: head.end()], *_places(line, phrases, words, here), *line.places[end:]),
        kept=(*line.kept, *([said] if said else [])),
    )


_ANY: Final = regex(_YARN, re.I)
_LETTER: Final = r"(?:MC|CC|[A-H])\d{1,2}"
_LETTERED: Final = regex(rf"(?=.*\b[ABD-H])(?:{_LETTER}(?:\s*,\s*{_LETTER})+|(?:MC|CC|[ABD-H])\d\d)\s*\.?\s*")
"""Yarns with their numbers behind them: "A4, B5, A3". One with one figure may be a name, those with C alone cables."""


def _numbers_first(line: Reworded, start: int) -> Reworded:
    """Return a round of yarns with the number of stitches in front of each."""
    if "," not in line.text[start:]:  # one yarn all round
        return laid_anew(line, start, len(line.text), ["all ", (start, start + len(line.text[start:].rstrip(" .0123456789")))])
    for found in reversed(list(regex(r"([A-Z]+)(\d+)").finditer(line.text, start))):
        line = laid_anew(line, found.start(), found.end(), [found.span(2), " ", found.span(1)])
    return line


def _places(line: Reworded, phrases: tuple[ToldPhrase, ...], words: str, here: int) -> list[int]:
    """Return a printed place for each letter of what is written: that of the stitches it is written from."""
    starts = [line.places[one.match.start()] for one in phrases if one.kind == "stitches"]
    made, at = [here] * len(words), 0
    for number, found in enumerate(_WRITTEN.finditer(words)):
        place = starts[min(number, len(starts) - 1)] if starts else here
        made[at : found.end()] = [place] * (found.end() - at)
        at = found.end()
    made[at:] = [made[at - 1] if at else here] * (len(words) - at)
    return made


_WRITTEN: Final = regex(r"[kp]\d+(?: \([\d ,]+\))? in [^,;)]+")


def _in_one_yarn(phrases: tuple[ToldPhrase, ...], head: re.Match[str]) -> tuple[str, str] | None:
    """Write a round of one colour: "Rnds 10 and 11: MC", "Round 3: all white"."""
    kinds = [phrase.kind for phrase in phrases]
    yarns = [phrase for phrase in phrases if phrase.kind == "yarn"]
    if len(yarns) != 1 or not set(kinds) <= {"all", "yarn", "goal", "verb"} or kinds.count("verb") > 1:
        return None
    verb = next((phrase.match.group().lower() for phrase in phrases if phrase.kind == "verb"), "")
    if kinds[0] == "verb" and head["bare"] is None and "all" in kinds:
        return f"with {yarns[0].get('yarn')}, {'purl' if verb.startswith('p') else 'knit'}", ""
    if not head["round"] or verb or kinds[0] == "goal":
        return None
    return f"with {yarns[0].get('yarn')}, knit", ""


_SIGNS: Final = {
    "stitches": "i", "star": "*", "open": "(", "close": ")", "again": "r", "last": "l", "goal": "g", "times": "t",
    "ending": "e", "alternately": "a", "verb": "v",
}  # fmt: skip
"""A sign for each kind of phrase, so that the order of phrases is a word."""
_SOME: Final = r"(?:i|\(i+\)t)+"
_STARRED: Final = regex(
    rf"(?P<lead>v?)(?P<before>(?:{_SOME})?)\*v?(?P<repeat>{_SOME})(?P<shut>\*?)(?P<again>r?)(?P<goal>[glt]?)(?P<ending>e?)(?P<behind>(?:{_SOME})?)"
)
_PLAIN: Final = regex(rf"(?P<lead>[va]{{0,2}})(?:(?P<repeat>{_SOME})|\((?P<bracket>i+)\))(?P<again>r?)(?P<goal>g?)(?P<by_turns>a?)")
_SO_OFTEN: Final = regex(r"v?(?P<repeat>ii+)t")
"""A list and how often it is worked: "1 white, 3 grey, twice"."""


def _in_yarns(phrases: tuple[ToldPhrase, ...], head: re.Match[str]) -> tuple[str, str] | None:
    """Write a round of stitches in several yarns; None if its stars, brackets or verbs leave a doubt."""
    kinds = "".join(_SIGNS.get(phrase.kind, "?") for phrase in phrases)
    verbs = _verbs(phrases, head)
    so_often = _SO_OFTEN.fullmatch(kinds)
    starred, plain = _STARRED.fullmatch(kinds), _PLAIN.fullmatch(kinds)
    if verbs is None or kinds.count("i") < (2 if starred is None else 1):
        return None
    if so_often is not None and re.search(r",\s*$", head.string[: phrases[-1].match.start()]):
        return f"({_some(phrases, verbs, so_often.span('repeat'))[0]}) {phrases[-1].get('times')}", ""
    if starred is not None:
        words = _starred(phrases, verbs, starred)
        return None if words is None else (words, "")
    if plain is None:
        return None
    at = "bracket" if plain["bracket"] else "repeat"
    worked, number = _some(phrases, verbs, plain.span(at))
    again = bool(plain["again"] or plain["goal"] or plain["by_turns"] or "a" in plain["lead"])
    if again:
        return f"*{worked}; rep from * to end", ""
    told = bool(plain["lead"]) or any(phrase.get("verb") for phrase in phrases)
    if at == "bracket" or (head["bare"] is not None and not told):
        return None
    if told or "(" in kinds or number is None:
        return worked, ""
    return f"*{worked}; rep from * to end", f"these {number} stitches are the repeat, worked to the end of the round"


def _starred(phrases: tuple[ToldPhrase, ...], verbs: list[str], form: re.Match[str]) -> str | None:
    """Write a round with a star: what stands before its repeat, the repeat, and what stands behind it."""
    before, _ = _some(phrases, verbs, form.span("before"))
    repeat, _ = _some(phrases, verbs, form.span("repeat"))
    behind, number = _some(phrases, verbs, form.span("behind"))
    goal = phrases[form.start("goal")] if form["goal"] else None
    left = bool(form["shut"] or form["again"])
    lead, rest = (f"{before}, " if before else ""), (f", {behind}" if behind else "")
    if goal is not None and goal.kind == "times":
        if form["again"]:
            return f"{lead}*{repeat}; rep from * {goal.get('times')}{rest}"
        return f"{lead}({repeat}) {goal.get('times')}{rest}" if form["shut"] else None
    if goal is not None and goal.kind == "last":
        return f"{lead}*{repeat}; rep from * to last {goal.get('n') or 1} sts{rest}" if left else None
    if not behind:
        return None if form["ending"] else f"{lead}*{repeat}; rep from * to end"
    if number is None or not (form["again"] or form["ending"]):
        return None
    return f"{lead}*{repeat}; rep from * to last {number} sts{rest}"


def _some(phrases: tuple[ToldPhrase, ...], verbs: list[str], span: tuple[int, int]) -> tuple[str, int | None]:
    """Write some stitches, and count them; None for a count that differs by size or stands in a bracket."""
    words, number = "", 0
    counted = True
    for at in range(*span):
        phrase = phrases[at]
        if phrase.kind == "stitches":
            told = digits_of(phrase.get("n"))
            words += ("" if not words or words.endswith("(") else ", ") + f"{verbs[at]}{told} in {phrase.get('yarn')}"
            counted = counted and told.isdigit()
            number += int(told) if told.isdigit() else 0
        else:
            counted = False
            words += {"open": f"{', ' if words else ''}(", "close": ")"}.get(phrase.kind, f" {phrase.get('times')}")
    return words, number if counted else None


def _verbs(phrases: tuple[ToldPhrase, ...], head: re.Match[str]) -> list[str] | None:
    """Return by which verb each phrase is worked, `k` or `p`; None if it is not clear."""
    told = [(phrase.get("verb") or phrase.get("behind")).lower()[:1] for phrase in phrases]
    leads = {phrase.match.group().lower()[0] for phrase in phrases if phrase.kind == "verb"}
    own = [verb for verb, phrase in zip(told, phrases, strict=True) if phrase.kind == "stitches"]
    row, round_ = head["row"], head["round"]
    if len(leads) > 1 or (leads and any(own)):
        return None
    if leads or (own and own[0] and not any(own[1:])):
        verb = leads.pop() if leads else own[0]
        return None if verb == "p" and row is None else [verb] * len(phrases)
    if all(own):
        return told
    knitted = round_ is not None or row is None or _RIGHT_SIDE.search(row) is not None
    return ["k"] * len(phrases) if knitted and not any(own) else None
