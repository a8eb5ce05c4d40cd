"""Understand what was said or typed: a text becomes a cue, or a sentence saying what was not understood. No
I/O.

Only a whole utterance counts, word for word, apart from what does not matter (case, punctuation, articles,
fillers at either end, American or British form). No step is guessed from a near miss of what was heard: a
wrong one costs more than asking again, and the nearest wording is offered instead. A question that is nearly
right is answered, and what was typed nearly right is done, if only one meaning is near.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from difflib import SequenceMatcher, get_close_matches
from functools import cache, lru_cache
from typing import Final

from stepper.language.numbers import number
from stepper.language.same_words import ARTICLES
from stepper.language.understanding.glossary import asks_for_word
from stepper.language.understanding.meaning import (
    Names,
    find_remark,
    meant_by_ideas,
    nearest_remarks,
    nearest_senses,
)
from stepper.language.understanding.normal_text import drop_articles, normalise
from stepper.language.understanding.paraphrases import in_plain_words
from stepper.language.understanding.slots import (
    SLOTS,
    fill_slots,
    is_shared,
    place_called,
    read_tens,
    stitch_called,
    words_of_places,
)
from stepper.language.understanding.terms import OTHERWISE_ASKED
from stepper.language.understanding.vocabulary import VOCABULARY
from stepper.language.understanding.wordings import Wording
from stepper.plan.model import Plan
from stepper.plan.same_plan import SamePlan
from stepper.records import dataclass
from stepper.regex import regex
from stepper.session.cues import Asks, Count, Cue, Enough, Explain, Help, Ten
from stepper.session.moves import bare_words


@dataclass(frozen=True, slots=True, kw_only=True)
class NotUnderstood:
    """A text that is not a cue."""

    text: str
    """As said or typed."""
    sentence: str
    """What to answer."""


def understand(
    text: str,
    plan: Plan,
    *,
    at: str = "",
    own: Mapping[str, str] | None = None,
    counting: bool = False,
    figures: bool = False,
    nearly: type[Cue] | None = None,
) -> Cue | NotUnderstood:
    """Turn a text into a cue.

    Args:
        text: What was said or typed.
        plan: For the names of yarns, sections and labels, and the unit of a bare length.
        at: Now, for the cue. ISO 8601.
        own: The knitter's own wordings, each with the vocabulary's wording it stands for.
        counting: Whether a count is being made aloud, so that a bare number is a part of it.
        figures: Whether a bare number is otherwise a count, as where it was typed, or heard behind the
            address word or while a count is asked for.
        nearly: The kind of cue that is taken from a wording that is nearly right: `Cue` for what was typed,
            `Asks` for what was heard; None for none.

    Returns:
        The cue, or a sentence with the nearest known wording.
    """
    said = normalise(text)
    for mine, known in (own or {}).items():
        if drop_articles(said) == drop_articles(normalise(mine)):
            said = normalise(known)
    complaint = ""
    for frame in _frames():
        match = frame.pattern.fullmatch(said)
        if match is None:
            continue
        filled = fill_slots(match.groupdict(), text, frame.wording, frame.phrase, plan)
        if isinstance(filled, str):
            complaint = complaint or filled
            continue
        return frame.wording.cue(at=at, **frame.wording.fixed, **filled)
    part = read_tens(said) if counting else None
    if part is not None:
        return Ten(at=at, stitches=part)
    stitches = number(said) if figures else None
    if stitches is not None:
        return Count(at=at, stitches=stitches, bare=True)
    near = _near(said, own or {}, cutoff=OFFERED)
    if nearly is not None:
        cue = (
            _said_otherwise(said, at)
            or _by_ideas(said, plan, nearly, at)
            or _meant(said, near, at)
            or _remarked(said, plan, at)
        )
        if cue is not None and isinstance(cue, nearly):
            return cue
    taught = tuple(phrase for _, phrase in near if phrase not in _untaught())
    offered = _offered_by_ideas(said, plan) or taught
    return NotUnderstood(text=text, sentence=complaint or _offer(text, offered))


@cache
def _untaught() -> frozenset[str]:
    """Return the wordings of the rows for the keyboard alone: nobody is offered to say what is not heard."""
    return frozenset(phrase for row in VOCABULARY if not row.spoken for phrase in row.typed)


OFFERED: Final = 0.65
"""How near a wording is to be offered: the share of letters that agree (`difflib`). Chosen here."""
TAKEN: Final = 0.84
"""How near it is to be taken for what was meant, if nothing else is near: a letter in six, or two in twelve,
missing or exchanged. Chosen here."""
APART: Final = 0.1
"""How much further away any other meaning has to be. Chosen here."""


FEWEST: Final = 3
"""Fewest words that another turn of phrase is known by: fewer can be meant in many ways. Chosen here."""


def _said_otherwise(said: str, at: str) -> Cue | None:
    """Return the cue of the one wording that says the same in another turn of phrase; None if none does."""
    row = _paraphrased().get(in_plain_words(drop_articles(said)))
    return None if row is None else row.cue(at=at, **row.fixed)


@cache
def _paraphrased() -> Mapping[str, Wording]:
    """Return the rows by what their wordings come to in plain words, where that is one meaning alone."""
    found: dict[str, list[Wording]] = {}
    for row in VOCABULARY:
        for phrase in (*row.spoken, *row.typed):
            if "{" not in phrase and row.cue is not Enough:  # what ends the evening is never guessed
                rows = found.setdefault(in_plain_words(drop_articles(normalise(phrase))), [])
                if row not in rows:
                    rows.append(row)
    known = ((plain, rows) for plain, rows in found.items() if len(plain.split()) >= FEWEST)
    return {plain: rows[0] for plain, rows in known if len(rows) == 1}


def asked_by_ideas(text: str, plan: Plan) -> Cue | None:
    """Return the question that a heard text comes to by what it is about; None if it is not surely one.

    Args:
        text: As a recogniser wrote it.
        plan: For the names of yarns, sections and labels.
    """
    return _by_ideas(normalise(text), plan, Asks, "")


def _by_ideas(said: str, plan: Plan, nearly: type[Cue], at: str) -> Cue | None:
    """Return the question that the words come to by what they are about; None if it is not one alone."""
    polite = _ASKED_FOR.match(said)
    if polite is not None:
        asked = understand(said[polite.end() :], plan, at=at)
        # "Can you help me" is said in every film.
        if isinstance(asked, Asks) and (nearly is Cue or not isinstance(asked, Help)):
            return asked
    explained = _EXPLAINED.fullmatch(drop_articles(said))
    code = stitch_called(explained["stitch"]) if explained is not None else None
    if code is not None and (code not in OTHERWISE_ASKED or asks_for_word(said)):
        return Explain(at=at, text=code)
    cue = meant_by_ideas(said, _names_of(plan), aloud=nearly is not Cue)
    return None if cue is None else replace(cue, at=at)


_ASKED_FOR: Final = regex(r"(?:can|could|would|will) you (?:please )?")
"""How a question is asked politely; what moves something is said as it stands."""
_EXPLAINED: Final = regex(
    r"(?:(?:what (?:is|are|does|was)|how (?:do i|is|does|to)|explain|tell me|how) )+"
    r"(?:(?:i |to )?(?:do|work|knit|make|meant by|meaning of) )?(?P<stitch>.+?)"
    r"(?: (?:mean|means|stand for|go|done|worked|made|again|work))*"
)
"""How a stitch is asked about; what is no stitch is none of it."""


def _remarked(said: str, plan: Plan, at: str) -> Cue | None:
    """Return the cue for what was remarked on by its ideas; None if that is not surely one thing alone."""
    wording = find_remark(said, _names_of(plan))
    cue = None if wording is None else understand(wording, plan, at=at)
    return cue if isinstance(cue, Cue) else None


def _offered_by_ideas(said: str, plan: Plan) -> tuple[str, ...]:
    """Return the wordings to offer for what a text is about, the likeliest first."""
    names = _names_of(plan)
    rows = (_row_of(cue) for cue in nearest_senses(said, names))
    return nearest_remarks(said, names) or tuple(row.spoken[0] for row in rows if row is not None)


def _row_of(cue: Cue) -> Wording | None:
    """Return the first row that comes to a cue without anything filled in."""
    rows = (row for row in VOCABULARY if row.spoken and "{" not in row.spoken[0])
    return next((row for row in rows if cue == row.cue(**row.fixed)), None)


def _names_of(plan: Plan) -> Names:
    """Return how a plan's parts and yarns are found in a question."""
    return _names_in(SamePlan(plan))


@lru_cache(maxsize=8)
def _names_in(same: SamePlan) -> Names:
    plan = same.plan
    yarns = frozenset(drop_articles(normalise(each)) for each in plan.yarns.values())
    known = words_of_places(plan)

    def find_place(said: str) -> str | None:
        if not bare_words(said) <= known:
            return None
        found = place_called(said, plan)
        return said if found is None and is_shared(said, plan) else found

    return Names(find_place=find_place, yarns=yarns)


def _meant(said: str, near: Sequence[tuple[float, str]], at: str) -> Cue | None:
    """Return the cue of a wording that is nearly right; None if two are near, or none is near enough."""
    near = [each for each in near if _denies(normalise(each[1])) == _denies(said)]
    if not near or near[0][0] < TAKEN or "{" in near[0][1]:
        return None
    best, phrase = near[0]
    if not _says_no_more(said, phrase):
        return None
    meaning = _meaning(phrase)
    if any(_meaning(other) != meaning for score, other in near if score > best - APART):
        return None
    row = next((row for row in VOCABULARY if phrase in row.spoken or phrase in row.typed), None)
    # What ends the evening is never guessed.
    if row is None or row.cue is Enough:
        return None
    return row.cue(at=at, **row.fixed)


TELLING: Final = 4
"""From how many letters on a word is taken to add to what is meant. Chosen here."""
ASKING: Final = frozenset(["what", "which", "when", "where", "this", "that", "does", "have"])
"""Longer words that add nothing."""


def _says_no_more(said: str, phrase: str) -> bool:
    """Return whether each longer word that was said is like one of a wording.

    "How many chalk stitches" asks more than "how many stitches".
    """
    known = normalise(phrase).split()
    more = (word for word in said.split() if len(word) >= TELLING and word not in ASKING)
    return all(get_close_matches(word, known, n=1) for word in more)


_DENYING: Final = frozenset(["no", "not", "never", "none", "nothing", "cannot", "without", "nor", "neither"])
"""Words of a few letters that turn a meaning round: "the loop is not caught" is near "the loop is caught"."""


def _denies(said: str) -> bool:
    """Return whether a text denies something, once for each pair of denials."""
    return sum(word in _DENYING for word in said.split()) % 2 == 1


def list_phrases() -> tuple[str, ...]:
    """List every wording of the vocabulary as written there, with slots in braces."""
    return tuple(phrase for row in VOCABULARY for phrase in (*row.spoken, *row.typed))


@dataclass(frozen=True, slots=True, kw_only=True)
class _Frame:
    """A wording prepared for comparison."""

    phrase: str
    pattern: re.Pattern[str]
    wording: Wording
    fixed_letters: int


_SLOT: Final = regex(r"\{(\w+)\}")


@cache
def _frames() -> tuple[_Frame, ...]:
    """Make the frames, those with the most fixed words first, so that the closest wording wins."""
    frames = [
        _frame(phrase, wording) for wording in VOCABULARY for phrase in (*wording.spoken, *wording.typed)
    ]
    return tuple(sorted(frames, key=lambda frame: ("{" in frame.phrase, -frame.fixed_letters)))


def _frame(phrase: str, wording: Wording) -> _Frame:
    """Turn a wording into a pattern that allows an article before each of its words."""
    words = normalise(_SLOT.sub(r" slot\1 ", phrase)).split()
    pattern = []
    for word in words:
        slot = word.removeprefix("slot")
        if slot != word and slot in SLOTS:
            pattern.append(f"(?:the )?(?P<{slot}>.+?)")
        elif word not in ARTICLES:
            pattern.append(f"(?:(?:the|an?) )?{re.escape(word)}")
    fixed_letters = len(_SLOT.sub("", phrase))
    return _Frame(
        phrase=phrase, pattern=re.compile(" ".join(pattern)), wording=wording, fixed_letters=fixed_letters
    )


@cache
def _phrases_to_compare() -> tuple[Mapping[str, str], Mapping[str, str]]:
    """Return the wordings without a slot, and of the others what stands before it, as they are compared."""
    phrases = list_phrases()
    whole = {drop_articles(normalise(each)): each for each in phrases if "{" not in each}
    begun = {drop_articles(normalise(_SLOT.split(each)[0])): each for each in phrases if each.find("{") > 1}
    return whole, begun


def _near(said: str, own: Mapping[str, str], cutoff: float) -> tuple[tuple[float, str], ...]:
    """Return the wordings that are near, the nearest first, each with how near it is."""
    whole, begun = _phrases_to_compare()
    known = {**whole, **{drop_articles(normalise(each)): each for each in own if "{" not in each}, **begun}
    wanted = drop_articles(said)
    close = get_close_matches(wanted, known, n=5, cutoff=cutoff)
    return tuple((SequenceMatcher(None, each, wanted).ratio(), known[each]) for each in close)


def _offer(text: str, near: Sequence[str]) -> str:
    shown = text.strip()
    if not shown:
        return "I heard nothing. Say: what can I say."
    if not near:
        return f'Not understood: "{shown}". Say: what can I say.'
    # Two wordings of one cue count as one offer.
    offers: dict[object, str] = {}
    for each in near:
        offers.setdefault(_meaning(each), _SLOT.sub("…", each))
    return f'Not understood: "{shown}". Did you mean: {" or ".join(list(offers.values())[:2])}?'


def _meaning(phrase: str) -> object:
    """Return what a wording means, or the wording itself if it is the knitter's own."""
    row = next((row for row in VOCABULARY if phrase in row.spoken or phrase in row.typed), None)
    return phrase if row is None else (row.cue, *row.fixed.values())
