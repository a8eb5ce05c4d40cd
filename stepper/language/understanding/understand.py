"""Understand what was said or typed: a text becomes a cue, or a sentence saying what was not understood. No
I/O.

Only a whole utterance counts, word for word, apart from what does not matter (case, punctuation, articles,
fillers at either end, American or British form). No step is guessed from a near miss of what was heard: a
wrong one costs more than asking again, and the nearest wording is offered instead. A question that is nearly
right is answered, and what was typed nearly right is done, if only one meaning is near.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from difflib import SequenceMatcher, get_close_matches
from functools import cache
from typing import Any, Final

from stepper.craft.gauge import to_mm
from stepper.craft.stitches import STITCHES, find_stitch
from stepper.language.numbers import decimal, number
from stepper.language.same_words import ARTICLES, FILLERS, SAME_WORDS
from stepper.language.understanding.paraphrases import in_plain_words
from stepper.language.understanding.vocabulary import VOCABULARY
from stepper.language.understanding.wordings import Wording
from stepper.plan.model import Plan
from stepper.session.cues import Asks, Count, Cue, Enough, RemindMe, Ten
from stepper.session.moves import DIVISION_NAMES, RIB_NAMES, bare_words


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
        figures: Whether a bare number is otherwise a count, as where it was heard behind the address word or
            while a count is asked for.
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
        filled = _filled(match.groupdict(), text, frame, plan)
        if isinstance(filled, str):
            complaint = complaint or filled
            continue
        return frame.wording.cue(at=at, **frame.wording.fixed, **filled)
    part = _tens(said) if counting else None
    if part is not None:
        return Ten(at=at, stitches=part)
    stitches = number(said) if figures else None
    if stitches is not None:
        return Count(at=at, stitches=stitches)
    near = _near(said, own or {}, cutoff=OFFERED)
    cue = (_said_otherwise(said, at) or _meant(said, near, at)) if nearly is not None else None
    if cue is not None and nearly is not None and isinstance(cue, nearly):
        return cue
    return NotUnderstood(text=text, sentence=complaint or _offer(text, near))


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


def _meant(said: str, near: Sequence[tuple[float, str]], at: str) -> Cue | None:
    """Return the cue of a wording that is nearly right; None if two are near, or none is near enough."""
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


_PARTS: Final = "½⅓⅔¼¾⅛⅜⅝⅞"
# Signs for fractions, as used when typing inches.


def normalise(text: str) -> str:
    """Reduce a text to the words that matter, each in one form, with one space between them."""
    if text.strip() == "?":
        return "?"
    plain = re.sub(r"['’`]", "", text.casefold())
    plain = re.sub(rf"(?<=[\d{_PARTS}])\s*\"", " in", plain)
    plain = re.sub(rf"(?<=[\d{_PARTS}])(?=(cm|mm|in|g)\b)", " ", plain)
    plain = re.sub(rf"(?<![0-9])\.|\.(?![0-9])|,(?![0-9]{{3}})|[^\w\s./,{_PARTS}-]", " ", plain)
    plain = re.sub(r"-(?!\d)|(?<=[^\s\d])-", " ", plain)  # a minus and a range of figures stay
    words = " ".join(SAME_WORDS.get(word, word) for word in plain.split()).split()
    while words and words[0] in FILLERS:
        words.pop(0)
    while words and words[-1] in FILLERS:
        words.pop()
    return " ".join(words)


def drop_articles(normal_text: str) -> str:
    """Leave out the articles too, though not in text still to be read: a yarn may be called "A"."""
    return " ".join(word for word in normal_text.split() if word not in ARTICLES)


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


_SLOT: Final = re.compile(r"\{(\w+)\}")


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
        if slot != word and slot in _SLOTS:
            pattern.append(f"(?:the )?(?P<{slot}>.+?)")
        elif word not in ARTICLES:
            pattern.append(f"(?:(?:the|an?) )?{re.escape(word)}")
    fixed_letters = len(_SLOT.sub("", phrase))
    return _Frame(
        phrase=phrase, pattern=re.compile(" ".join(pattern)), wording=wording, fixed_letters=fixed_letters
    )


def _filled(slots: Mapping[str, str], text: str, frame: _Frame, plan: Plan) -> dict[str, Any] | str:
    """Read the slots of a frame: return the fields of the cue, or a sentence if a slot cannot be read."""
    fields: dict[str, Any] = {}
    for slot, said in slots.items():
        value = _SLOTS[slot](said, _Heard(text=text, frame=frame, plan=plan))
        if isinstance(value, _Unread):
            return value.sentence
        fields[frame.wording.fills.get(slot, slot)] = value
    return fields


@dataclass(frozen=True, slots=True, kw_only=True)
class _Heard:
    """The context in which a slot is read."""

    text: str
    """All that was said or typed, unchanged."""
    frame: _Frame
    plan: Plan


@dataclass(frozen=True, slots=True)
class _Unread:
    """Why what was said in a slot cannot be read."""

    sentence: str


def _read_number(said: str, heard: _Heard) -> int | _Unread:
    value = number(said)
    return _Unread(f'"{said}" is not a whole number that I know.') if value is None else value


def _read_made(said: str, heard: _Heard) -> int | _Unread:
    return 0 if said in ("none", "no") else _read_number(said, heard)


def _read_numbers(said: str, heard: _Heard) -> tuple[int, ...] | _Unread:
    values = [number(part) for part in re.split(r",| and |\s", said) if part]
    whole = tuple(each for each in values if each is not None)
    return whole if len(whole) == len(values) else _Unread(f'"{said}" are not whole numbers that I know.')


def _read_tens(said: str, heard: _Heard) -> int | _Unread:
    value = _tens(said)
    return _Unread(f'"{said}" is not a whole number that I know.') if value is None else value


def _tens(said: str) -> int | None:
    """Add up what was counted in one breath: "ten", "ten ten", "ten and four"."""
    value = number(said)
    if value is not None:
        return value
    values = [number(part) for part in re.split(r" and |\s", said) if part]
    return sum(each for each in values if each is not None) if values and None not in values else None


def _read_length(said: str, heard: _Heard) -> float | _Unread:
    *before, last = said.split()
    unit = last if last in ("cm", "mm", "in") else heard.plan.units
    value = decimal(before if last in ("cm", "mm", "in") else said)
    if value is None:
        return _Unread(f'"{said}" is not a length that I know.')
    if unit == "in":
        return to_mm(float(value), "in")
    return to_mm(float(value), "mm" if unit == "mm" else "cm")


def _read_weight(said: str, heard: _Heard) -> float | _Unread:
    value = decimal(said.removesuffix(" g"))
    return _Unread(f'"{said}" is not a weight that I know.') if value is None else float(value)


def _read_yarn(said: str, heard: _Heard) -> str:
    for key, name in heard.plan.yarns.items():
        if drop_articles(said) in (
            drop_articles(normalise(name)),
            drop_articles(normalise(f"{name} yarn")),
        ) or said == normalise(key):
            return key
    return said  # the session says which names exist


def _read_place(said: str, heard: _Heard) -> str | _Unread:
    names = tuple(_places(heard.plan))
    for name in names:
        if drop_articles(said) == drop_articles(normalise(name)):
            return name
    # "The next buttonhole" is the line called "Buttonhole row", if no other has the word.
    wanted = set(drop_articles(said.removeprefix("next ")).split())
    holding = [name for name in names if wanted <= set(drop_articles(normalise(name)).split())]
    if len(holding) == 1:
        return holding[0]
    if issubclass(heard.frame.wording.cue, Asks | RemindMe) and _is_shared(said, heard.plan):
        return said  # several parts have the word, and the session knows which is near
    near = get_close_matches(said, [normalise(name) for name in names], n=1, cutoff=0.5)
    hint = f" Nearest: {near[0]}." if near else ""
    return _Unread(f'Nothing here is called "{said}".{hint}')


def _is_shared(said: str, plan: Plan) -> bool:
    """Return whether some part's name holds what was said, in any number, or it is what a rib is called."""
    wanted = bare_words(drop_articles(said))
    names = (bare_words(normalise(each)) for each in plan.sections)
    return bool(wanted) and (any(wanted <= each for each in names) or said in RIB_NAMES)


def _places(plan: Plan) -> Iterator[str]:
    labels = (round_.label for round_ in plan.rounds if round_.label)
    yield from dict.fromkeys((*plan.sections, *labels, *DIVISION_NAMES))


def _read_abbreviation(said: str, heard: _Heard) -> str | _Unread:
    code = said.removeprefix("to ")
    entry = find_stitch(code) or next(
        (each for each in STITCHES.values() if normalise(each.said) == code), None
    )
    return _Unread(f'I do not know a stitch "{said}".') if entry is None else entry.code


def _read_text(said: str, heard: _Heard) -> str:
    """Return free words as typed, not as compared: all after the last fixed word."""
    before, _, behind = heard.frame.phrase.partition("{text}")
    if behind:  # other words follow, which are no part of it
        return said.strip()
    fixed = before.split()[-1]
    match = re.search(rf"\b{re.escape(fixed)}\b[\s:,.-]*(.*)", heard.text, re.IGNORECASE | re.DOTALL)
    return (match.group(1) if match else said).strip()


_SLOTS: Final[Mapping[str, Callable[[str, _Heard], Any]]] = {
    "number": _read_number,
    "made": _read_made,
    "stitch": _read_number,
    "length": _read_length,
    "weight": _read_weight,
    "yarn": _read_yarn,
    "place": _read_place,
    "text": _read_text,
    "abbreviation": _read_abbreviation,
    "numbers": _read_numbers,
    "tens": _read_tens,
}
"""How each slot is read: the value of a field, or why it cannot be read."""


def _near(said: str, own: Mapping[str, str], cutoff: float) -> tuple[tuple[float, str], ...]:
    """Return the wordings that are near, the nearest first, each with how near it is."""
    known = {
        drop_articles(normalise(phrase)): phrase for phrase in (*list_phrases(), *own) if "{" not in phrase
    }
    known |= {
        drop_articles(normalise(_SLOT.split(phrase)[0])): phrase
        for phrase in list_phrases()
        if phrase.find("{") > 1
    }
    wanted = drop_articles(said)
    close = get_close_matches(wanted, known, n=5, cutoff=cutoff)
    return tuple((SequenceMatcher(None, each, wanted).ratio(), known[each]) for each in close)


def _offer(text: str, near: Sequence[tuple[float, str]]) -> str:
    shown = text.strip()
    if not shown:
        return "I heard nothing. Say: what can I say."
    if not near:
        return f'Not understood: "{shown}". Say: what can I say.'
    # Two wordings of one cue count as one offer.
    offers: dict[object, str] = {}
    for _, each in near:
        offers.setdefault(_meaning(each), _SLOT.sub("…", each))
    return f'Not understood: "{shown}". Did you mean: {" or ".join(list(offers.values())[:2])}?'


def _meaning(phrase: str) -> object:
    """Return what a wording means, or the wording itself if it is the knitter's own."""
    row = next((row for row in VOCABULARY if phrase in row.spoken or phrase in row.typed), None)
    return phrase if row is None else (row.cue, *row.fixed.values())
