"""What an element of a row needs from the stitches on the needles, and the error if they do not fit. No
I/O."""

from __future__ import annotations

from collections.abc import Container, Iterable, Mapping
from types import MappingProxyType
from typing import Final

from stepper.craft.stitches import stitch
from stepper.project.instructions import Return
from stepper.project.pairs import without_copy
from stepper.project.problems import ProblemKind, Span, nearest, one_of
from stepper.project.stitchwork import (
    Across,
    ChartPart,
    Element,
    Hold,
    Mark,
    PickUp,
    Several,
    Spread,
    TurnHere,
    Work,
)
from stepper.records import dataclass

UNNAMED: Final = "holder"
"""What stitches on hold are called for which the page has no name."""
NO_LOTS: Final[Mapping[str, str]] = {}
"""Of no stitches it is known in which section they were put on hold."""


def is_unnamed(part: str) -> bool:
    """Return whether a part on hold has no name of its own: "holder", "second holder"."""
    return part.split()[-1:] == [UNNAMED]


def name_apart(name: str, taken: Container[str]) -> str:
    """Return a name under which no stitches wait yet: of two sleeves, neither is the other's stitches."""
    names = (name, *(f"{which} {name}" for which in ("second", "third", "fourth", "fifth", "sixth")))
    return next((other for other in names if other not in taken), name)


@dataclass(frozen=True, slots=True, kw_only=True)
class JustWorked:
    """Stitches that a row has worked and that go on hold: `K8, place these sts on a holder, bind off 12`."""

    hold: Hold
    last: int
    """Where the words in front of it begin. Unit: stitches that the row has made."""
    end: int
    """Where it stands."""


class MisfitError(Exception):
    """The line does not fit the stitches on the needles."""

    def __init__(self, place: Span, message: str, hint: str = "", kind: ProblemKind = "misfit") -> None:
        super().__init__(message)
        self.place = place
        self.message = message
        self.hint = hint
        self.kind = kind


def held_stitches(
    element: Across | Return,
    held: dict[str, int],
    size: int,
    section: str = "",
    copied: str = "",
    lots: Mapping[str, str] = NO_LOTS,
) -> tuple[str, int]:
    """Find the held stitches that a line means: their name and number.

    "Sleeve sts" in the section of the left sleeve are those of the left sleeve; where no name is given and
    several parts are on hold, those that the section is called after are meant. In a part `copied` from
    another, what was on hold for that one is what is on hold for this. Of several without a name, those are
    meant that were put on hold in the section of that name, or else in the section itself: `lots` are the
    sections in which stitches were put on hold, by their names.

    Raises:
        MisfitError: there are none by that name, or not so many.
    """
    own = section.lower()
    as_own = bool(copied) and own in held and set(element.name.split()) <= set(copied.lower().split())
    unnamed = {part: number for part, number in held.items() if is_unnamed(part)}
    if not element.name and not as_own and unnamed:
        own_lots = [part for part in unnamed if lots.get(part) == section]
        name = _unnamed_meant(element, unnamed, size, own_lots, of_sleeve=is_sleeve(section))
    else:
        name = own if as_own else _meant(element.name, held, section, lots)
    if name not in held and (copied or without_copy(section) != section):
        name = _across(name, held)
    if name not in held:
        name = _put_by_in(name, unnamed, lots)
    if name not in held and element.number is not None:
        name = _as_many(name, element.number.of(size), held, lots)
    if name not in held:
        hint = nearest(name, held) or f"On hold: {one_of(held) or 'nothing'}."
        if not name and held:
            hint += f' Say which, as "held {next(iter(held))} sts".'
        what = f'nothing is on hold for "{name}".' if name else "the line does not say which held stitches."
        raise MisfitError(element.place, what, hint)
    printed = element.number.of(size) if element.number is not None else held[name]
    if printed != held[name]:
        raise MisfitError(
            element.place, f"the pattern prints {printed} held stitches; {held[name]} are on hold for {name}."
        )
    return name, held[name]


def _unnamed_meant(
    element: Across | Return,
    unnamed: dict[str, int],
    size: int,
    own_lots: Container[str],
    *,
    of_sleeve: bool,
) -> str:
    """Return which of the parts put on hold without a name a line means, by their number or as the rest.

    What remains beside a piece that was just worked is what was put aside last. In the section of a sleeve
    two lots of as many stitches are both sleeves, and the one held first is worked first.

    Raises:
        MisfitError: several may be meant.
    """
    number = element.number.of(size) if element.number is not None else None
    fits = [part for part, held in unnamed.items() if number is None or held == number]
    if len(fits) == 1:
        return fits.pop()
    if number is not None and of_sleeve and len(fits) == len(unnamed) == 2:
        return fits[0]
    if number is None and isinstance(element, Return) and element.on_needle:
        return list(unnamed)[-1]
    if len(unnamed) == 1:
        return next(iter(unnamed))
    own = [part for part in unnamed if part in own_lots]
    if number is None and len(own) == 1:
        return own.pop()
    lots = " and ".join(str(held) for held in unnamed.values())
    raise MisfitError(
        element.place,
        f"{lots} stitches are on hold without a name, and the line may mean any of them.",
        "Say how many they are, or give them names where they are put on hold.",
    )


_FACING: Final = MappingProxyType({"left": "right", "right": "left", "first": "second", "1st": "2nd"})


def _across(name: str, held: dict[str, int]) -> str:
    """Return the held part across from the one a name means, which was taken by the piece that is made again;
    else the name.

    "Place right sleeve sts on the needle … make another one" goes on with those of the left sleeve.
    """
    across = " ".join(_FACING.get(word, word) for word in name.split())
    return across if across in held else name


def _put_by_in(name: str, unnamed: dict[str, int], lots: Mapping[str, str]) -> str:
    """Return the one lot without a name that was put on hold in the section a name means; else the name.

    "The 9 sts of the right front" wait on the pin of the right front, "the front neck sts" on the one of the
    front.
    """
    words = _section_words(name)
    found = {part: _section_words(lots.get(part, "")) for part in unnamed}
    fits = [part for part, of in found.items() if of and words and (words <= of or of <= words)]
    return fits[0] if len(fits) == 1 else name


def _section_words(name: str) -> set[str]:
    """Return the words of the name of a section or part, one of a pair as both: "left front", "sleeve"."""
    return {word.strip(",").removesuffix("s") for word in name.lower().split()}


_SIDES = {"left", "right"}


def _of_other_side(name: str, section: str) -> bool:
    """Return whether stitches put on hold in a section are of the other side than those of a name."""
    here, there = _section_words(name) & _SIDES, _section_words(section) & _SIDES
    return bool(here and there) and here != there


def _as_many(name: str, number: int, held: dict[str, int], lots: Mapping[str, str]) -> str:
    """Return the one held part of that many stitches which may be meant by a name that none has; else the
    name.

    It has no name, or one that the line only adds to: "front neck" for the stitches of the front. It was not
    put on hold in a section of the other side.
    """
    words = set(name.split())
    fits = [part for part in held if is_unnamed(part) or set(part.split()) < words or not words]
    fits = [part for part in fits if not _of_other_side(name, lots.get(part, ""))]
    fits = [part for part in fits if held[part] == number] or fits
    alike = all(is_unnamed(part) and held[part] == number for part in fits)
    if len(fits) > 1 and alike and len({lots.get(part) for part in fits}) == 1:
        return fits[0]  # both sleeves of a pair, held by one line: the one held first is worked first
    return fits[0] if len(fits) == 1 and held[fits[0]] == number else name


def is_short(name: str, held: Iterable[str]) -> bool:
    """Return whether a name may stand for one of some held parts that is called by more words."""
    words = set(name.split())
    return bool(words) and any(words <= set(part.split()) for part in held)


def _meant(name: str, held: dict[str, int], section: str, lots: Mapping[str, str]) -> str:
    """Return the held part that a name means, in the section that is worked; the name itself if none."""
    own, words = section.lower(), set(name.split())
    if own in held and words <= set(own.split()):
        return own
    if name in held:
        return name
    fits = [part for part in held if words <= set(part.split())] or _of_a_pair(name, held)
    only = next(iter(held)) if len(held) == 1 else ""
    if not fits and is_unnamed(only) and not _of_other_side(name, lots.get(only, "")):
        return only  # the page gave them no name when it put them aside, and there are no others
    if len(fits) > 1:
        owned = [part for part in fits if set(part.split()) <= set(own.split())]
        called = {word.removesuffix("s") for word in own.split()}
        named = called <= words if words else all(called <= set(part.split()) for part in fits)
        pair = len({held[part] for part in fits}) == 1 and bool(called) and named
        # "Sleeve sts" or "held sts" under "Sleeves": both are alike, and the one held first is worked first.
        fits = fits[:1] if pair and not owned else owned
    return fits.pop() if len(fits) == 1 else name


_SECOND = ", second"
_OF_A_PAIR = {"first": "", "1st": "", "one": "", "second": _SECOND, "2nd": _SECOND, "other": _SECOND}
"""What a page calls each of a pair, and how the second one's section is told from the first's."""


def _of_a_pair(name: str, held: dict[str, int]) -> list[str]:
    """Return the part called the first or second of a pair, each made in a section of its own ("make 2").

    "Sleeve sts" of a pair alike are those of the one that still waits, the first before the second; so are
    those of the left and the right one of a pair made alike.
    """
    which, _, part = name.partition(" ")
    if which in _OF_A_PAIR and part:
        pair = (f"{part}{_OF_A_PAIR[which]}", f"{part}s{_OF_A_PAIR[which]}")
        return [called for called in pair if called in held]
    one = part if which in ("left", "right") else name
    pairs = (one, f"{one}{_SECOND}", f"{one}s", f"{one}s{_SECOND}")
    waiting = [called for called in pairs if one and called in held]
    return waiting[:1] if len({held[called] for called in waiting}) == 1 else []


def is_of_pair(section: str) -> bool:
    """Return whether a section is one that is made twice, by its name: "sleeves", "sleeves, second"."""
    return section.lower().removesuffix(_SECOND).endswith("s")


def is_sleeve(section: str) -> bool:
    """Return whether a section is of a sleeve or both: "sleeves", "left sleeve", "sleeves, second"."""
    return section.lower().removesuffix(_SECOND).removesuffix("s").endswith("sleeve")


def fixed_uses(element: Element, size: int) -> int:
    """Return the stitches an element uses by its own number. Raises MisfitError if it is open-ended."""
    if isinstance(element, Work):
        return element.times.of(size) * (1 if element.stitch == "pattern" else stitch(element.stitch).uses)
    if isinstance(element, Hold) and element.worked:
        return 0
    if isinstance(element, Hold) and element.times is not None:
        return element.times.of(size)
    if isinstance(element, Mark | TurnHere | PickUp | Across):
        return 0
    if isinstance(element, ChartPart | Spread) and element.over is not None:
        return element.over.of(size)
    if isinstance(element, Several) and element.times is not None:
        return element.times.of(size) * sum(fixed_uses(inner, size) for inner in element.elements)
    raise MisfitError(
        element.place,
        "an element that works up to a place cannot stand inside a repeat that does so too.",
        "Give the inner one a number.",
    )
