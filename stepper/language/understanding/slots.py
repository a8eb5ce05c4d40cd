"""What stands in the slots of a wording: numbers, lengths, weights, names, stitches. No I/O."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from difflib import get_close_matches
from functools import lru_cache
from typing import Any, Final

from stepper.craft.gauge import to_mm
from stepper.craft.stitches import STITCHES, Stitch, find_stitch
from stepper.language.abbreviations import WORDS
from stepper.language.numbers import decimal, number
from stepper.language.same_words import ARTICLES
from stepper.language.understanding.glossary import asks_for_word, term_called
from stepper.language.understanding.normal_text import drop_articles, normalise
from stepper.language.understanding.terms import OTHERWISE_ASKED
from stepper.language.understanding.wordings import Wording
from stepper.plan.model import Plan
from stepper.plan.same_plan import SamePlan
from stepper.records import dataclass
from stepper.regex import regex
from stepper.session.cues import Asks, RemindMe
from stepper.session.moves import DIVISION_NAMES, RIB_NAMES, bare_words


def fill_slots(
    slots: Mapping[str, str], text: str, wording: Wording, phrase: str, plan: Plan
) -> dict[str, Any] | str:
    """Read what was said in the slots of a wording.

    Args:
        slots: What was said in each, in one form.
        text: All that was said or typed, unchanged.
        wording: The row.
        phrase: The wording of it that fits, with its slots in braces.
        plan: For the names of yarns, sections and labels, and the unit of a bare length.

    Returns:
        The fields of the cue, or a sentence if a slot cannot be read; empty if none is worth telling.
    """
    fields: dict[str, Any] = {}
    heard = _Heard(text=text, wording=wording, phrase=phrase, plan=plan)
    for slot, said in slots.items():
        value = _SLOTS[slot](said, heard)
        if isinstance(value, _Unread):
            return value.sentence if _is_meant_for(slot, said, phrase) else ""
        fields[wording.fills.get(slot, slot)] = value
    return fields


MOST_WORDS: Final = 3
"""Most words of what is told to be no number, length, place or stitch. Chosen here."""


def _is_meant_for(slot: str, said: str, phrase: str) -> bool:
    """Return whether words that cannot be read were meant for a slot, so that it is worth telling.

    A sentence was not, nor "a stitch" before "short", nor what stands before "too many" unless it is a word.
    """
    most = MOST_WORDS
    if slot == "number":
        most = 1 if phrase.startswith("{number}") else 2
    words = said.split()
    return not (slot == "number" and words[0] in ARTICLES) and len(words) <= most


@dataclass(frozen=True, slots=True, kw_only=True)
class _Heard:
    """The context in which a slot is read."""

    text: str
    """All that was said or typed, unchanged."""
    wording: Wording
    phrase: str
    """The wording of it that fits, with its slots in braces."""
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
    value = read_tens(said)
    return _Unread(f'"{said}" is not a whole number that I know.') if value is None else value


def read_tens(said: str) -> int | None:
    """Add up what was counted in one breath: "ten", "ten ten", "ten and four"."""
    value = number(said)
    if value is not None:
        return value
    values = [number(part) for part in re.split(r" and |\s", said) if part]
    return sum(each for each in values if each is not None) if values and None not in values else None


def _read_length(said: str, heard: _Heard) -> float | _Unread:
    *before, last = _unit_last(said).split()
    unit = last if last in ("cm", "mm", "in") else heard.plan.units
    value = decimal(before if last in ("cm", "mm", "in") else said)
    if value is None:
        return _Unread(f'"{said}" is not a length that I know.')
    if unit == "in":
        return to_mm(float(value), "in")
    return to_mm(float(value), "mm" if unit == "mm" else "cm")


_HOW_SURE: Final = regex(r"^(?:about|around|roughly|exactly|just) ")
_UNIT_WITHIN: Final = regex(r"^(?P<whole>.+?) (?P<unit>in|cm|mm) and (?P<part>.+)$")
_PART_OF: Final = regex(r"^(?P<part>.+?)(?: of)? an? (?P<unit>in|cm|mm)$")
_ONE: Final = regex(r"^an? (?=in\b|cm\b|mm\b|and\b)")


def _unit_last(said: str) -> str:
    """Put the unit behind the number: "an inch and a quarter", "half an inch" as they are said."""
    plain = _HOW_SURE.sub("", said)
    plain = _UNIT_WITHIN.sub(r"\g<whole> and \g<part> \g<unit>", plain)
    return _ONE.sub("1 ", _PART_OF.sub(r"\g<part> \g<unit>", plain))


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


def place_called(said: str, plan: Plan) -> str | None:
    """Return the section or label that words name; None if they name none, or several."""
    names = _places(plan)
    for name in names:
        if drop_articles(said) == drop_articles(normalise(name)):
            return name
    # "The second sleeve" is the part "sleeves, second".
    words = bare_words(drop_articles(said))
    called = [name for name in names if len(words) > 1 and bare_words(normalise(name)) == words]
    if len(called) == 1:
        return called[0]
    # "The next buttonhole" is the line called "Buttonhole row", if no other has the word.
    wanted = set(drop_articles(said.removeprefix("next ")).split())
    holding = [name for name in names if wanted <= set(drop_articles(normalise(name)).split())]
    return holding[0] if len(holding) == 1 and wanted else None


def words_of_places(plan: Plan) -> frozenset[str]:
    """Return every word with which a section or a label may be named, without its plural."""
    return bare_words(" ".join((*(normalise(name) for name in _places(plan)), *RIB_NAMES)))


def _read_place(said: str, heard: _Heard) -> str | _Unread:
    called = place_called(said, heard.plan)
    if called is not None:
        return called
    if issubclass(heard.wording.cue, Asks | RemindMe) and is_shared(said, heard.plan):
        return said  # several parts have the word, and the session knows which is near
    names = [normalise(name) for name in _places(heard.plan)]
    near = get_close_matches(said, names, n=1, cutoff=0.5)
    hint = f" Nearest: {near[0]}." if near else ""
    return _Unread(f'Nothing here is called "{said}".{hint}')


def is_shared(said: str, plan: Plan) -> bool:
    """Return whether some part's name holds what was said, in any number, or it is what a rib is called."""
    wanted = bare_words(drop_articles(said))
    names = (bare_words(normalise(each)) for each in plan.sections)
    return bool(wanted) and (any(wanted <= each for each in names) or said in RIB_NAMES)


def _places(plan: Plan) -> tuple[str, ...]:
    return _named_in(SamePlan(plan))


@lru_cache(maxsize=8)
def _named_in(same: SamePlan) -> tuple[str, ...]:
    """Return the names of a plan's sections and labels; kept, since each word of a question asks for them."""
    labels = (round_.label for round_ in same.plan.rounds if round_.label)
    return tuple(dict.fromkeys((*same.plan.sections, *labels, *DIVISION_NAMES)))


def _read_abbreviation(said: str, heard: _Heard) -> str | _Unread:
    code = stitch_called(drop_articles(said.removeprefix("to ")))
    if code in OTHERWISE_ASKED and not asks_for_word(heard.text):
        return _Unread("")
    return _Unread(f'I do not know a word "{said}".') if code is None else code


def stitch_called(said: str) -> str | None:
    """Return the code of the stitch, or the word of the trade, that words name; None if they name none."""
    term = term_called(said)
    if term is not None:
        return term
    entry = find_stitch(said) or next((each for each in STITCHES.values() if said in _called(each)), None)
    if entry is not None:
        return entry.code
    return said if said in WORDS else None


def _called(each: Stitch) -> tuple[str, ...]:
    """Return what a stitch is called: as it is said, by its code, or as what "make a double stitch" makes."""
    said = normalise(each.said)
    return said, normalise(each.code), drop_articles(said).removeprefix("make ")


def _read_text(said: str, heard: _Heard) -> str:
    """Return free words as typed, not as compared: all after the last fixed word."""
    before, _, behind = heard.phrase.partition("{text}")
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


SLOTS: Final = frozenset(_SLOTS)
"""Names of the slots."""
