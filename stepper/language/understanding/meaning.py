"""Find what a question means by the ideas in it, whatever its words and their order. No I/O.

What asks nothing is left out, each other word stands for an idea, and the ideas together are looked up in the
table of senses. A question with a word in it that stands for nothing known is not answered: it asks for more
than is understood. So is one that fits two senses alike, or none.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import replace
from typing import Final

from stepper.language.same_words import ARTICLES
from stepper.language.understanding.question_meanings import REMARKS, SENSES, Sense
from stepper.language.understanding.trade_words import ASKS_NOTHING, COUNTED, IDEA_OF, JOINED, PHRASES, TRADE
from stepper.records import dataclass
from stepper.regex import regex
from stepper.session.cues import Asks, HowFarIn, HowFarTo


@dataclass(frozen=True, slots=True, kw_only=True)
class Names:
    """What a plan calls its parts and yarns, for finding them in a question."""

    find_place: Callable[[str], str | None]
    """Return the section or label that some words name; None if they name none."""
    yarns: frozenset[str]
    """Names of its yarns, as compared."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Ideas:
    """What is left of a question."""

    ideas: frozenset[str]
    place: str
    """The section or label that was named; empty for none."""
    unknown: int
    """Words that stand for nothing known."""
    is_question: bool

    @property
    def is_whole(self) -> bool:
        """Whether it is a question about something, every word of which was understood."""
        return self.is_question and not self.unknown and bool(self.ideas - _OPENINGS)


def meant_by_ideas(said: str, names: Names, *, aloud: bool) -> Asks | None:
    """Return the cue that a question comes to; None if it is no question, or not surely that one.

    Args:
        said: Words in one form, as `understand` compares them.
        names: Of the plan.
        aloud: Whether it was heard, where something has to be about knitting and nothing else.
    """
    found = read_ideas(said, names)
    if not found.is_whole:
        return None
    if aloud and not any(idea.removeprefix("many ") in TRADE for idea in found.ideas):
        return None
    fitting = [each for each in SENSES if _fits(each, found)]
    most = max((len(each.needs) for each in fitting), default=0)
    cues = [_with_place(each, found.place) for each in fitting if len(each.needs) == most]
    return cues[0] if cues and all(each == cues[0] for each in cues) else None


def nearest_remarks(said: str, names: Names) -> tuple[str, ...]:
    """Return the wordings for what was remarked on; empty if it is a question, or none is near."""
    found = read_ideas(said, names)
    if found.is_question:
        return ()
    return tuple(each.wording for each in REMARKS if each.needs <= found.ideas)


def find_remark(said: str, names: Names) -> str | None:
    """Return the wording for the one thing that was surely remarked on, with nothing else; None for none.

    "A stitch too many" is one; how many "stitches too many" are is not said.
    """
    found = read_ideas(said, names)
    if found.is_question or found.unknown or found.place or _SEVERAL.search(said):
        return None
    whole = [each for each in REMARKS if each.needs <= found.ideas <= each.needs | each.may]
    return whole[0].wording if len(whole) == 1 and whole[0].is_surely_meant else None


_SEVERAL: Final = regex(
    r"\b(?:stitches|increases|decreases|two|three|four|five|several|some|not|never|if|maybe|always)\b|\d"
)
"""What speaks of more than one, or of none."""


def nearest_senses(said: str, names: Names) -> tuple[Asks, ...]:
    """Return what a question that was not understood may have meant, the likeliest first."""
    found = read_ideas(said, names)
    telling = found.ideas - _OPENINGS
    if not telling or not found.is_question:
        return ()
    scored: dict[Asks, float] = {}
    for each in SENSES:
        needed = [group for group in each.needs if not group <= _OPENINGS]
        met = [group for group in needed if group & telling]
        known = telling & frozenset[str]().union(each.may, *needed)
        if not met or (each.fills_place and not found.place):
            continue
        share = (len(met) / len(needed) + len(known) / (len(telling) + found.unknown)) / 2
        opening = [group for group in each.needs if group <= _OPENINGS]
        asked = all(group & found.ideas for group in opening)
        cue = _with_place(each, found.place)
        scored[cue] = max(scored.get(cue, 0.0), share + (_ASKED_ALIKE if asked else 0.0))
    best = sorted(scored, key=lambda cue: -scored[cue])
    return tuple(cue for cue in best if scored[cue] >= _NEAR and scored[cue] > scored[best[0]] - _APART)


_NEAR: Final = 0.8
"""From which share on a sense is offered. Chosen here."""
_ASKED_ALIKE: Final = 1 / 3
"""What it adds to the share if it is asked with the same question word. Chosen here."""
_APART: Final = 0.3
"""How much less near than the nearest it may be. Chosen here."""
_OPENINGS: Final = frozenset(["which", "when", "where", "whether", "much", "many", "far"])
"""How questions begin: on its own none of these says what is asked about."""


def _fits(sense: Sense, found: Ideas) -> bool:
    if sense.fills_place and not found.place:
        return False
    needed = frozenset[str]().union(*sense.needs)
    return all(group & found.ideas for group in sense.needs) and found.ideas <= needed | sense.may


def _with_place(sense: Sense, place: str) -> Asks:
    cue = sense.cue
    if sense.fills_place and isinstance(cue, HowFarIn | HowFarTo):
        return replace(cue, place=place)
    return cue


_PREFACE: Final = regex(
    r"(?:(?:and|but|oh|ah|right|sorry|whoops|oops|damn|listen|excuse me|so|i think|i believe|i am afraid) )*"
    r"(?:(?:can|could|will|would) you )?(?:please )?"
    r"(?P<tells>tell me|say|give me|read me|read|let me know|do you know|i wonder|any idea)? ?"
    r"(?:please )?(?:if )?"
)
_WHETHER: Final = frozenset(
    (
        *("do", "does", "did", "is", "are", "am", "was", "were", "have", "has"),
        *("will", "should", "shall", "must", "can", "ought"),
    )
)
_ASKED: Final[Mapping[str, str]] = {"what": "which", "which": "which", "when": "when", "where": "where"}
_HOW_MANY: Final = regex(
    r"how many(?P<more>(?: more| further| extra)*)(?: of)?(?: (?P<noun>\w+))?(?P<rounds> rounds?\b)?"
)
_PLACE, _NAMED = "theplace", "named"
_UP_TO: Final = frozenset(("to", "until", "till", "before"))
_LONGEST_NAME: Final = 4
"""Most words of a name that are looked for together."""


def read_ideas(said: str, names: Names) -> Ideas:
    """Take a question apart into its ideas."""
    preface = _PREFACE.match(said)
    assert preface is not None
    tells = preface["tells"] or ""
    words = [word for word in said[preface.end() :].split() if word not in ARTICLES]
    text, place = _without_names(words, names)
    for pattern, plain in PHRASES:
        text = pattern.sub(plain, text)
    tokens = tuple(_tokens(_how_long(" ".join(text.split()))))
    if tells and tokens and not _is_asked(tokens):
        tokens = ("read" if "read" in tells else "which", *tokens)
    ideas = {token for token in tokens if token and not token.startswith("?")}
    if "many times" in ideas:
        counted = ideas & {"increase", "decrease", "repeat", "turn"}
        ideas = (ideas - counted - {"many times"}) | {f"many {each}" for each in counted}
    unknown = sum(token.startswith("?") for token in tokens)
    return Ideas(ideas=frozenset(ideas), place=place, unknown=unknown, is_question=_is_asked(tuple(ideas)))


def _is_asked(tokens: Sequence[str]) -> bool:
    openings = {*_OPENINGS, "length", "time", "time past", "wide", "read", "often", "not heard"}
    return any(token in openings or token.startswith("many") for token in tokens)


def _without_names(words: Sequence[str], names: Names) -> tuple[str, str]:
    """Return the text with a sign for each name of the plan, and the place that was named."""
    left: list[str] = []
    place, start = "", 0
    while start < len(words):
        for end in range(min(len(words), start + _LONGEST_NAME), start, -1):
            name = " ".join(words[start:end])
            if end == start + 1 and (name in IDEA_OF or name in ASKS_NOTHING or name in _ASKED):
                continue  # the trade's own word before a name that is the same
            if name in names.yarns:
                left.append(_NAMED)
                break
            found = names.find_place(name) if not place and not _is_common(words[start:end]) else None
            if found is not None:
                place = found
                left += ["until", _PLACE] if left[-1:] and left[-1] in _UP_TO else [_PLACE]
                break
        else:
            left.append(words[start])
            end = start + 1
        start = end
    return " ".join(left), place


def _is_common(words: Sequence[str]) -> bool:
    """Return whether a name would begin or end with a word that is no part of one."""
    return words[0] in ASKS_NOTHING or words[-1] in ASKS_NOTHING or words[0] in _ASKED


def _how_long(text: str) -> str:
    """Tell a length from a time: "how long is it" and "how long have I", "how long does it take"."""
    if not text.startswith("how long"):
        return text
    rest = text.removeprefix("how long").strip()
    first, *others = rest.split() or [""]
    if re.search(r"\b(?:until|till|before)\b", rest):
        return f"when {rest}"
    if re.search(r"\btakes?\b", rest):
        return f"time {rest}"
    if first in ("have", "did") and others[:1] == ["i"]:
        return f"timepast {' '.join(others)}"
    if first in _WHETHER - {"do"} and others[:1] != ["i"]:
        return f"length {rest}"
    return text


def _tokens(text: str) -> Iterator[str]:
    """Yield the idea of each word; a word that is not known with "?" before it."""
    counted = _HOW_MANY.search(text)
    if counted is not None:
        yield from _counted(counted)
        text = f"{text[: counted.start()]} {text[counted.end() :]}"
        if counted["noun"] and _idea(counted["noun"]) not in COUNTED and counted["noun"] != "times":
            text = f"{counted['noun']} {text}"  # no noun: "how many have I"
    text = re.sub(r"\bhow much\b", "much", text)
    words = text.split()
    if words and counted is None and words[0] in _WHETHER:
        yield "whether"
    for word in words:
        if word in ("much", "far", "time", "length", "read"):
            yield word
        elif word == "timepast":
            yield "time past"
        elif word == _PLACE:
            yield "place"
        elif word == _NAMED:
            yield "named"
        elif word in _ASKED:
            yield _ASKED[word]
        else:
            idea = _idea(word)
            yield idea if idea is not None else "" if word in ASKS_NOTHING else f"?{word}"


def _counted(found: re.Match[str]) -> Iterator[str]:
    """Yield what "how many" counts: rounds of a chart are rounds, increase rounds are increases."""
    if found["more"]:
        yield "left"
    noun = found["noun"] or ""
    idea = "times" if noun == "times" else _idea(noun)
    if idea != "times" and idea not in COUNTED:
        idea = None
    if idea == "chart" and found["rounds"]:
        yield "chart"
        idea = "round"
    yield f"many {idea}" if idea is not None else "many"
    if found["rounds"] and idea is None:
        yield "round"


def _idea(word: str) -> str | None:
    return JOINED.get(word) or IDEA_OF.get(word)
