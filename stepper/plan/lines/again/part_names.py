"""What parts are called: which sections are one piece, and which is the first of a pair. No I/O."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from stepper.plan.state.needles import Needles
from stepper.project.instructions import AsPart
from stepper.project.model import Section
from stepper.project.pairs import COPIES, WHOLE_NAMES, piece_in
from stepper.project.rewording.told.numbers import digits_of

ORDINALS = frozenset({"first", "1st", "second", "2nd", "other", "another", "one"})


def copy_of(section: Section, number: int) -> Section:
    """Return a section under the name of its second or third copy."""
    return replace(section, name=f"{section.name}, {COPIES[min(number, len(COPIES)) - 1]}")


def piece_of(section: Section) -> str:
    """Return the name of the piece that a section belongs to."""
    return piece_in(section.name)


def sections_of_piece(section: Section, sections: Sequence[Section]) -> tuple[Section, ...]:
    """Return the sections of the piece that a section belongs to, in their order."""
    return tuple(one for one in sections if piece_of(one) == piece_of(section))


def words_of(name: str) -> list[str]:
    """Return the words of a name, a number that it spells out as digits: "section one" is "section 1"."""
    return [digits_of(word).removesuffix("s") for word in re.sub(r"[,:]", " ", name.lower()).split()]


def first_of(
    section: Section, before: Sequence[Section], instruction: AsPart, needles: Needles
) -> tuple[Section, ...]:
    """Return what "as the first" means in a part that has no row of its own: the sections before it.

    "First sleeve" for a second sleeve; for a second glove all of the page before it, which may be in parts.
    """
    words = words_of(section.name)
    if len(needles.drafts) > needles.section.start or not instruction.part:
        return ()
    if not ORDINALS.intersection((*words, *instruction.part.split())):
        return ()
    nouns = set(words) - ORDINALS
    named = [one for one in before if nouns and nouns == set(words_of(piece_of(one))) - ORDINALS]
    named = [one for one in named if "first" in words_of(one.name)] or named
    if named:
        return sections_of_piece(named[0], before)
    return tuple(before) if nouns & WHOLE_NAMES else ()
