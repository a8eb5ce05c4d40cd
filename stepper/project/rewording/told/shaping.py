"""What the phrases of a sentence about shaping mean together, in the grammar's words. No I/O.

Common practice. What goes on ("continue", "repeat", "more") comes on top of the rows worked so; "in all" and
"until you have done it 8 times" count those too. A number of times that says neither is only read where
stitches are counted behind it, which decides. "Do that again" is the row just worked; "the increases" are the
last row of the part that increases, at the places it shows. A number of stitches that the words give
("increase 8 sts on every other round") has to be that of the row shown, as a raglan has to lie at markers.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from stepper.project.rewording.told.numbers import digits_of, number_of
from stepper.project.rewording.told.phrases import ToldPhrase
from stepper.records import dataclass
from stepper.regex import regex

Piece = tuple[str, int]
"""Words of the grammar, and the offset in the line of what they stand for."""
_MUCH: Final = ("change", "noun", "again")
_WHERE: Final = ("ends", "arm", "edge", "marker", "markers", "gusset", "raglan")
_SIDE: Final = regex(r"w", re.IGNORECASE)


@dataclass(slots=True)
class _Leg:
    """One interval: every so many rows, so often or to a count."""

    every: ToldPhrase
    often: ToldPhrase | None = None


@dataclass(slots=True)
class _Told:
    """What a sentence says."""

    what: list[ToldPhrase]
    where: ToldPhrase | None
    first: ToldPhrase | None
    legs: list[_Leg]
    count: ToldPhrase | None
    onwards: bool
    """Whether it goes on with something: "continue", "repeat", "again"."""
    manner: bool
    again: bool
    """Whether it is worked again: "repeat"."""
    step: str
    """`closer` or `wider` if the stitches between the changes become fewer or more each time."""
    counts_first: bool


def write_shaping(phrases: Sequence[ToldPhrase]) -> tuple[Piece, ...] | None:
    """Write a sentence about shaping in the grammar's words.

    Args:
        phrases: The phrases it is made of.

    Returns:
        The words in their order, each with its place; None if they are not read together.
    """
    told = _gather(phrases)
    if told is None:
        return None
    if not (told.what or told.step):
        return _side_again(told)
    if not (told.legs or told.step):
        return _once(told) or _straight_on(told)
    if not told.legs:
        return _onwards(told, phrases)
    named = _named(told)
    when = _when(told)
    if named is None or when is None:
        return None
    count: tuple[Piece, ...] = ()
    if told.count is not None:
        count = (
            (". ", told.count.match.start()),
            (f"{told.count.get('n')} sts", told.count.match.start("n")),
        )
    return (*named, *when, *count, *sections(phrases))


def _side_again(told: _Told) -> tuple[Piece, ...] | None:
    """Return "rep every RS row 4 times more": the last row of that side, what it shapes shaped again."""
    if not told.again or len(told.legs) != 1 or told.where is not None or told.first is not None:
        return None
    (leg,) = told.legs
    if not leg.every.get("side") or leg.every.get("other") or leg.often is None or leg.often.kind != "more":
        return None
    when = _when(told)
    if when is None:
        return None
    count = told.count
    behind: tuple[Piece, ...] = ()
    if count is not None:
        behind = ((". ", count.match.start()), (f"{count.get('n')} sts", count.match.start("n")))
    which = "wrong" if _side(leg.every).startswith("W") else "right"
    return ((f"rep same {which} row on ", leg.every.match.start()), *when, *behind)


def sections(phrases: Sequence[ToldPhrase]) -> tuple[Piece, ...]:
    """Return the words for what is counted between each two markers; none if nothing is."""
    each = next((phrase for phrase in phrases if phrase.kind == "each"), None)
    if each is None:
        return ()
    where = "between the markers" if each.get("two") else "between each marker"
    return ((". ", each.match.start()), (f"{each.get('n')} sts {where}", each.match.start("n")))


def _gather(phrases: Sequence[ToldPhrase]) -> _Told | None:
    """Sort phrases by what they say; None if one comes twice or belongs to no interval."""
    told = _Told([], None, None, [], None, False, False, False, "", False)
    waiting: ToldPhrase | None = None
    for phrase in phrases:
        kind = phrase.kind
        if kind in _MUCH:
            told.what.append(phrase)
            told.onwards |= kind == "again" or phrase.match.group().lower().endswith("again")
        elif kind in _WHERE:
            if told.where is not None:
                return None
            told.where = phrase
        elif kind == "next":
            if told.first is not None or told.legs:
                return None
            told.first = phrase
        elif kind in ("every", "apart"):
            told.legs.append(_Leg(phrase, waiting))
            waiting = None
        elif kind in ("all", "more", "times", "until"):
            if told.legs and told.legs[-1].often is None:
                told.legs[-1].often = phrase
            elif kind == "until" and _counts(told) and told.count is None and not phrase.get("between"):
                told.count = phrase  # "8 times in all, until there are 36 sts"
            elif told.legs or waiting is not None:
                return None
            else:
                waiting = phrase
        elif kind == "count":
            told.count = phrase
        elif kind in ("closer", "wider"):
            told.step = kind
        elif kind == "manner":
            told.manner = True
        elif kind == "first":
            told.counts_first = True
        elif kind in ("go", "rep"):
            told.onwards, told.again = True, told.again or kind == "rep"
    if waiting is not None and told.legs:
        return None
    if waiting is not None:
        if waiting.kind != "until" or told.first is not None or told.count is not None:
            return None
        told.count = waiting
    return told


def _once(told: _Told) -> tuple[Piece, ...] | None:
    """Return stitches changed at both ends of the next row alone: "inc 1 st in first and last st of next rnd"."""
    if told.first is None or told.where is None or told.where.kind not in ("ends", "arm") or len(told.what) != 1:
        return None
    if told.onwards or told.manner or not told.what[0].get("n") or (told.count is not None and told.count.kind != "count"):
        return None
    named = _named(told)
    if named is None:
        return None
    at = told.first.match.start()
    count = told.count
    behind = ((". ", count.match.start()), (f"{count.get('n')} sts", count.match.start("n"))) if count is not None else ()
    return (*named, (f"next {_side(told.first)}{told.first.get('row') or _row(told)}", at), *behind)


def _counts(told: _Told) -> bool:
    """Return whether how often is told by a number already, so that "until" only tells the count behind it."""
    return bool(told.legs) and told.legs[-1].often is not None and told.legs[-1].often.kind != "until"


def _straight_on(told: _Told) -> tuple[Piece, ...] | None:
    """Return a named round that is worked again and again: "now only the decrease round until 8 sts remain"."""
    if told.count is None or told.count.kind != "until" or told.where is not None or len(told.what) != 1:
        return None
    (noun,), until = told.what, told.count
    if noun.kind != "noun" or not noun.get("row") or noun.get("this") or until.get("between"):
        return None
    named = _named(told)
    if named is None or until.get("gusset"):
        return None
    (words, at), number = named[0], (until.get("n"), until.match.start("n"))
    return (
        (f"rep{words.removeprefix('rep').removeprefix('work').removesuffix('on ')}until ", at),
        number,
        (" sts", at),
    )


def _direction(told: _Told) -> str:
    """Return `inc` or `dec`; empty if the words say neither, or both."""
    said = {phrase.get("dir").lower() for phrase in told.what} - {""}
    return said.pop() if len(said) == 1 else ""


def _row(told: _Told) -> str:
    """Return the word for a row that the sentence uses."""
    says = [*told.what, *(leg.every for leg in told.legs), *([told.first] if told.first else [])]
    rows = [phrase.get("row").lower() for phrase in says if phrase.get("row")]
    return "row" if any(row.startswith("row") for row in rows) else "round"


def _number(told: _Told) -> str | None:
    """Return how many stitches the words say that a row changes; empty if not, None if that differs."""
    said = [phrase.get("n") for phrase in told.what if phrase.get("n")]
    if len(said) > 1:
        return None
    if not said:
        return ""
    number = number_of(said[0])
    if not number:
        return None
    return str(number * (2 if told.where is not None and told.where.kind == "ends" else 1))


def _named(told: _Told) -> tuple[Piece, ...] | None:
    """Return the words for what is worked; None if nobody can tell."""
    what = told.what[0] if told.what else told.legs[0].every
    at = what.match.start()
    direction, row, number = _direction(told), _row(told), _number(told)
    where = told.where.kind if told.where is not None else ""
    if where == "ends" and number == "":
        number = "2"  # one at each end
    rows = [phrase for phrase in told.what if phrase.kind == "noun" and phrase.get("row")]
    if len(told.what) > 2 or number is None or (len(told.what) == 2 and not _one_thing(told)):
        return None
    if told.step:
        wanted = "dec" if told.step == "closer" else "inc"
        return None if direction not in ("", wanted) or where else ((f"rep {told.step} {wanted} {row} ", at),)
    if rows and not where:
        if told.counts_first and not told.onwards:
            return None  # a row that is only called by its name was not worked before, as the page counts it
        (noun,) = rows[:1]
        if noun.get("this"):
            return ((f"rep same {direction} {row} on ", at),)
        kind = f"{noun.get('kind')} " if noun.get("kind") else ""
        verb = "rep" if told.onwards else "work"
        said = noun.match.group("dir").lower()
        full = noun.match.group()[noun.match.start("dir") - noun.match.start() :].split()[0]
        name = f"{kind}{full if full.lower().startswith((said + 'rease',)) else said} {noun.get('row')}"
        return ((f"{verb} {name} on ", at),)
    if what.kind == "again" and len(told.what) == 1:
        return ((f"rep same {row} on ", at),) if told.again and not where else None
    if not direction:
        return None
    goes_on = told.onwards or told.manner or any(phrase.kind == "noun" for phrase in told.what)
    ordered = not (told.onwards or told.manner or any(map(_is_name, told.what)))
    if where == "arm" and (number != "2" or not ordered):
        return None  # at a sleeve, where rounds begin under the arm, one lies on each side
    if where in ("ends", "arm", "marker") and ordered:
        if not number and where != "ends":
            return None
        assert told.where is not None
        each = "each side of the marker" if where == "marker" else "each end"
        said = "1" if where == "arm" else next((phrase.get("n") for phrase in told.what if phrase.get("n")), "1")
        return (
            (f"{direction} {said} st at ", at),
            (each, told.where.match.start()),
            (" of ", told.where.match.start()),
        )
    if where in ("edge", "marker"):
        return None
    if where == "markers":
        return ((f"rep beside {direction} {row} on ", at),) if number in ("1", "") else None
    kinds = {phrase.get("kind").lower() for phrase in told.what} - {""}
    kinds |= {where} if where in ("gusset", "raglan") else set()
    kinds -= {"crown"}
    if not kinds <= {"gusset", "thumb", "raglan"} or len(kinds) > 1:
        return None  # of which row it is said is not known from what it shapes
    kind = f"{'raglan' if 'raglan' in kinds else 'gusset'} " if kinds else ""
    if not goes_on and not kind and not number:
        return None
    behind = f" {number}" if number else ""
    return ((f"rep alike {kind}{direction} {row}{behind} on ", at),)


_VERB: Final = regex(r"(?:an?\s+)?(?:inc|dec)(?:reas(?:e|ing))?\.?", re.IGNORECASE)


def _is_name(phrase: ToldPhrase) -> bool:
    """Return whether a phrase names a shaping, as "the increases" does; "increase" alone orders one."""
    return phrase.kind == "noun" and _VERB.fullmatch(phrase.match.group()) is None


def _one_thing(told: _Told) -> bool:
    """Return whether two names are of one thing: "continue in this way, increasing", "the decreases again"."""
    kinds = {phrase.kind for phrase in told.what}
    return kinds in ({"change", "noun"}, {"noun", "again"}) or kinds == {"change", "again"}


def _when(told: _Told) -> tuple[Piece, ...] | None:
    """Return the words for on which rows and how often; None if how often is not said."""
    pieces: list[Piece] = []
    row = _row(told)
    if told.first is not None:
        side = _side(told.first)
        pieces.append((f"next {side}{told.first.get('row') or row} and ", told.first.match.start()))
    for number, leg in enumerate(told.legs):
        often = _often(told, leg, first=not number)
        if often is None:
            return None
        pieces += [
            ("" if not number else ", then ", leg.every.match.start()),
            *_every(leg.every, row),
            *often,
        ]
    return tuple(pieces)


def _side(phrase: ToldPhrase) -> str:
    side = phrase.get("side")
    return "" if not side else "WS " if _SIDE.match(side) else "RS "


def _every(phrase: ToldPhrase, row: str) -> tuple[Piece, ...]:
    """Return the words for an interval."""
    at, side = phrase.match.start(), _side(phrase)
    if phrase.kind == "apart":
        return (("every ", at), (_apart(phrase), phrase.match.start("n")), (f" {phrase.get('row')} ", at))
    if phrase.get("length"):
        return (("every ", at), (f"{phrase.get('length')} ", phrase.match.start("length")))
    each = phrase.get("nth") or phrase.get("number")
    named = phrase.get("row") or row
    if not each:
        return ((f"every {'other ' if phrase.get('other') else ''}{side}{named} ", at),)
    group = "nth" if phrase.get("nth") else "number"
    return (("every ", at), (each, phrase.match.start(group)), (f" {side}{named} ", phrase.match.end(group)))


def _apart(phrase: ToldPhrase) -> str:
    """Return every how many rows it is: with 7 rounds between, every 8th; with 7 from one to the next, every 7th."""
    more = 0 if phrase.get("distance") else 1
    return re.sub(r"\d+", lambda number: str(int(number.group()) + more), digits_of(phrase.get("n")))


def _often(told: _Told, leg: _Leg, *, first: bool) -> tuple[Piece, ...] | None:
    """Return the words for how often, or to which count; None if nobody can tell."""
    phrase = leg.often
    if phrase is None:
        return None
    at = phrase.match.start()
    group = "n" if phrase.match.groupdict().get("n") else "n2"
    said = phrase.get(group)
    if phrase.kind == "until":
        inside = phrase.get("between") or phrase.get("gusset")
        between = " between the markers" if inside else ""
        return (
            ("until ", at),
            (said, phrase.match.start(group)),
            (f" sts{between}", phrase.match.end(group)),
        )
    if not said:
        more = " more" if phrase.kind == "more" else ""
        return ((f"{phrase.match.group().split()[0].lower()}{more}", at),)
    number = (said, phrase.match.start(group))
    end = phrase.match.end(group)
    if phrase.kind == "all" or (told.counts_first and first):
        return (number, (" times in all", end)) if phrase.kind != "more" else None
    if phrase.kind == "more":
        return (number, (" more times", end))
    open_ = not (told.onwards or told.count or told.first or told.where or told.counts_first)
    if first and open_ and not any(one.kind == "noun" and one.get("row") for one in told.what):
        return None  # whether the row shown is one of them is not said, and nothing would tell
    return (number, (" times", end))


def _onwards(told: _Told, phrases: Sequence[ToldPhrase]) -> tuple[Piece, ...] | None:
    """Return a shaping whose stitches become fewer or more each time, at the intervals there were."""
    if told.count is None or not told.step:
        return None
    start, at = phrases[0].match.start(), told.count.match.start("n")
    name = "onwards dec" if told.step == "closer" else "widening inc"
    return ((f"rep {name} {_row(told)} until ", start), (f"{told.count.get('n')} sts", at))
