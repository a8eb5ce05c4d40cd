"""Find where the rows of a line end: full stops inside one row, and rows that break off. No I/O."""

from __future__ import annotations

import re
from dataclasses import replace
from itertools import pairwise

from stepper.craft.stitches import Kind, find_stitch
from stepper.project.instructions import (
    Assumed,
    AtIntervals,
    EdgeShaping,
    EdgesTogether,
    Evenly,
    Going,
    Line,
    Needle,
    Phrase,
    PrintedCount,
    RowsCount,
    Sentence,
    StopShort,
    Together,
    WithYarn,
    WorkRounds,
)
from stepper.project.reading.needle_rounds import joined_needles
from stepper.project.reading.sentences import Head
from stepper.project.stitchwork import Element, Hold, Numbers, Several, TurnHere, Until, Work


def joined_stops(head: Head, label: str | None, sentences: tuple[Sentence, ...]) -> tuple[Sentence, ...]:
    """Join the sentences of one row that has full stops inside: `Row 1: P3. K4. P to end.`

    If the head names one row, sentences are joined until the stitches come to its end. Without a head only a
    shaping of a few stitches, which is no row by itself, is joined to what follows. A plain row that its head
    names, and a change that is spread over it (`Row 8: Purl. Decrease 6 sts evenly.`), are one row.
    """
    numbered = len(head.numbers) == 1 or head.side or re.search(r"\b(?:round|rnd|row)$", label or "", re.I)
    made: list[Sentence] = []
    for sentence in sentences:
        before = made[-1] if made else None
        needled = joined_needles(before, sentence)
        if needled is not None:
            made[-1] = needled
            continue
        plain = _plain(before) if numbered or head.next else ""
        if plain and isinstance(sentence, Evenly) and not sentence.stitch:
            made[-1] = replace(sentence, stitch=plain)
            continue
        one_row = numbered or head.next or _slight(before)
        goes_on = one_row and (_open(before) or _casts_on(before, sentence))
        if goes_on and isinstance(before, Phrase) and isinstance(sentence, Phrase):
            made[-1] = replace(before, elements=(*before.elements, *sentence.elements))
        else:
            made.append(sentence)
    return tuple(made)


def split_at_turns(sentences: tuple[Sentence, ...]) -> tuple[Sentence, ...]:
    """Split rows that turn and go on: `K10, turn, p10, turn, k to end` is three rows.

    What turns behind a stitch worked several times is a bobble, and is left as it stands.
    """
    return tuple(
        row
        for sentence in sentences
        for row in (_rows_of(_cast_on_turned(sentence)) if isinstance(sentence, Phrase) else (sentence,))
    )


def _rows_of(phrase: Phrase) -> tuple[Phrase, ...]:
    """Return the rows of a phrase, each but the last with its turn."""
    elements = phrase.elements
    ends = [
        at
        for at, (turn, following) in enumerate(pairwise(elements), start=1)
        if isinstance(turn, TurnHere) and _is_worked(following) and not _bobble(elements[at - 2])
    ]
    if not ends:
        return (phrase,)
    bounds = pairwise((0, *ends, len(elements)))
    return tuple(
        replace(phrase, elements=elements[first:last], note="" if first else phrase.note)
        for first, last in bounds
    )


def _cast_on_turned(phrase: Phrase) -> Phrase:
    """Return a phrase without the turns about stitches cast on in its middle: `turn, cast on 5 sts, turn`."""
    elements = phrase.elements
    for at in range(len(elements) - 2):
        turn, made, back = elements[at : at + 3]
        about = isinstance(turn, TurnHere) and isinstance(back, TurnHere)
        if about and isinstance(made, Work) and made.stitch == "co":
            note = phrase.note or "turn to cast on, and turn back"
            return _cast_on_turned(
                replace(phrase, elements=(*elements[:at], made, *elements[at + 3 :]), note=note)
            )
    return phrase


def _is_worked(element: Element) -> bool:
    """Return whether an element works stitches that stand on the needle."""
    return isinstance(element, Until) or (isinstance(element, Work) and element.stitch != "co")


def _bobble(element: Element) -> bool:
    """Return whether several stitches are worked into one."""
    found = find_stitch(element.stitch) if isinstance(element, Work) else None
    return found is not None and found.uses == 1 and found.leaves > 2


def split_over_end(head: Head, sentences: tuple[Sentence, ...]) -> tuple[Sentence, ...]:
    """Split a round that is dealt with over its end: `k to last 5 sts, bind off 10 sts`.

    An underarm lies on both sides of the beginning of the round. What is bound off or put on hold there
    in one go begins before the end and ends behind it, so that the round stops before it, and the rounds
    begin there from then on. A line for rows by number, by side or for several stays as it is.
    Source: common practice.
    """
    if head.numbers or head.rows or head.side or head.times is not None:
        return sentences
    made = list[Sentence]()
    for sentence in sentences:
        before = made[-1] if made else None
        if isinstance(before, Phrase) and isinstance(sentence, Phrase) and _go_together(before, sentence):
            made[-1] = replace(before, elements=(*before.elements, *sentence.elements))
        else:
            made.append(sentence)
    return tuple(part for sentence in made for part in _split_at_end(sentence))


def _split_at_end(sentence: Sentence) -> tuple[Sentence, ...]:
    elements = sentence.elements if isinstance(sentence, Phrase) else ()
    for at in range(1, len(elements)):
        left = _left_at_end(elements[at - 1])
        if isinstance(sentence, Phrase) and left is not None and _takes_more(elements[at], left):
            up_to = elements[at - 1]
            assert isinstance(up_to, Until)  # it leaves stitches
            whole = replace(sentence, elements=(*elements[: at - 1], replace(up_to, goal="end", short=None)))
            behind = replace(sentence, elements=elements[at:], note="")
            return (whole, StopShort(left, up_to.place), *_split_at_end(behind))
    return (sentence,)


def _left_at_end(element: Element) -> Numbers | None:
    """Return how many stitches an element leaves before the end of the round; None if it does not say."""
    return element.short if isinstance(element, Until) and element.goal == "last" else None


def _takes_more(element: Element, left: Numbers) -> bool:
    """Return whether stitches are bound off or put on hold, and in each size more than are left."""
    if isinstance(element, Hold):
        times = None if element.worked or element.to_marker or element.rest else element.times
    else:
        times = element.times if isinstance(element, Work) and element.stitch == "bo" else None
    return times is not None and all(
        times.of(size) > left.of(size) for size in range(max(len(times.values), len(left.values)))
    )


def _go_together(before: Phrase, behind: Phrase) -> bool:
    """Return whether a full stop stands inside a round that goes over its end.

    It may stand in front of what lies over the end, and behind it if the rest of the round follows.
    """
    first, last = behind.elements[0], before.elements[-1]
    left = _left_at_end(last)
    if left is not None:
        return _takes_more(first, left)
    over = _left_at_end(before.elements[-2]) if len(before.elements) > 1 else None
    to_end = isinstance(first, Until) and first.goal == "end" and first.short is None
    return over is not None and _takes_more(last, over) and to_end and len(behind.elements) == 1


def change_in_doubt(head: Head, label: str | None, sentences: tuple[Sentence, ...]) -> Evenly | None:
    """Return a change that may be spread over the row of its line or over one of its own; None if none.

    "Row 8: *K2, p2; rep from * to end. Decrease 6 sts evenly." may be one row or two, and so may a change
    behind a row that several numbers are for.
    """
    named = head.numbers or head.side or head.next or re.search(r"\b(?:round|rnd|row)$", label or "", re.I)
    if not named or head.times is not None or head.legs:
        return None
    for before, sentence in pairwise(sentences):
        if isinstance(before, Phrase) and isinstance(sentence, Evenly) and not sentence.stitch:
            return sentence
    return None


_TAKEN_UP = Needle | WithYarn
"""What a line takes up before it works."""
_ONE_ROW = "neither rows nor a length are given: one row of it is worked."


def work_once(head: Head, label: str | None, sentences: tuple[Sentence, ...]) -> tuple[Assumed, ...]:
    """Tell that one row is worked where a line gives neither rows nor a length, and its head names no row."""
    named = head.numbers or head.side or head.next or head.times is not None or head.legs or head.every
    if named or re.search(r"\b(?:round|rnd|row)s?$", label or "", re.I):
        return ()
    once = (one for one in sentences if isinstance(one, WorkRounds) and one.once)
    return tuple(Assumed(_ONE_ROW, one.place) for one in once)


def fabric_goes_on(line: Line, following: Line) -> tuple[Line, Line]:
    """Return two lines as one: the first names a fabric and no rows, if the second gives its rows.

    "Work in st st." above "Work 10 rows.", or above a shaping over rows, says in what these are worked; alone
    it is one row, which is told. Any other fabric is worked by the second line, where that shapes nothing.
    """
    last = line.sentences[-1] if line.sentences else None
    at = next((at for at, one in enumerate(following.sentences) if not isinstance(one, _TAKEN_UP)), None)
    first = following.sentences[at] if at is not None else None
    named = line.numbers or line.times is not None or line.every or line.only != following.only
    if named or not isinstance(last, WorkRounds) or not last.once or following.numbers:
        return line, following
    even = isinstance(first, WorkRounds) and not first.once and (first.bare or first.even)
    goes_on = isinstance(first, WorkRounds) and not first.once and first.manner == "pattern"
    shaping = isinstance(first, AtIntervals | EdgeShaping | EdgesTogether | Together)
    assumed = tuple(one for one in line.assumed if one.text != _ONE_ROW)
    plain = last.manner == "stockinette"
    if (plain and (even or goes_on or shaping)) or (last.manner == "garter" and shaping):
        going = Going(last.manner, last.place, line.side)
        sentences = (*line.sentences[:-1], going)
        return replace(line, sentences=sentences, assumed=assumed, side="", rows=False), following
    if not even or at is None or not isinstance(first, WorkRounds) or last.manner in ("pattern", "rib"):
        return line, following
    worked = replace(first, manner=last.manner, bare=False, even=False, first=last.first, edges=last.edges)
    sentences = (*following.sentences[:at], worked, *following.sentences[at + 1 :])
    side = following.side or line.side
    return (
        replace(line, sentences=line.sentences[:-1], assumed=assumed, side="", rows=False),
        replace(following, sentences=sentences, side=side),
    )


def _open(row: Sentence | None) -> bool:
    """Return whether a row breaks off early: it neither goes on to the end nor turns."""
    last = row.elements[-1] if isinstance(row, Phrase) else None
    if isinstance(last, Until | Several):
        return last.goal in ("last", "marker", "times")
    return isinstance(last, Work)


def _casts_on(row: Sentence | None, following: Sentence) -> bool:
    """Return whether a row puts some stitches on hold and the next sentence casts on in their place."""
    last = row.elements[-1] if isinstance(row, Phrase) else None
    first = following.elements[0] if isinstance(following, Phrase) else None
    held = isinstance(last, Hold) and last.times is not None and not last.rest
    return held and isinstance(first, Work) and first.stitch == "co"


def _plain(row: Sentence | None) -> str:
    """Return how a row is worked if it is knitted or purled from end to end; else empty."""
    (work, *more) = row.elements if isinstance(row, Phrase) else (None,)
    whole = isinstance(work, Until) and work.goal == "end" and work.stitch in ("k", "p") and not more
    return work.stitch if whole and isinstance(work, Until) else ""


def _slight(row: Sentence | None) -> bool:
    """Return whether a row is a single shaping of at most three stitches."""
    (work, *more) = row.elements if isinstance(row, Phrase) else (None,)
    entry = find_stitch(work.stitch) if isinstance(work, Work) else None
    shaping = entry is not None and entry.kind in (Kind.INCREASE, Kind.DECREASE)
    return not more and shaping and entry is not None and 0 < entry.uses <= 3


def with_open_edge(sentences: tuple[Sentence, ...]) -> tuple[tuple[Sentence, ...], tuple[Assumed, ...]]:
    """Complete a row that only binds off at its beginning: "BO 5 sts for armhole."

    Only if nothing but a count follows; anything else may be the rest of the row.

    Returns:
        The sentences, and what was assumed.
    """
    rest = [one for one in sentences if not isinstance(one, PrintedCount | RowsCount)]
    row = rest[-1] if rest else None
    edge = row.elements[0] if isinstance(row, Phrase) and len(row.elements) == 1 else None
    if not isinstance(row, Phrase) or not isinstance(edge, Work) or edge.stitch != "bo":
        return sentences, ()
    whole = replace(row, elements=(edge, Until("pattern", "end", None, None, row.place)))
    told = "how the rest of the row is worked is not said; in pattern to the end is taken."
    return tuple(whole if one is row else one for one in sentences), (Assumed(told, row.place),)


def on_rows(head: Head, sentences: tuple[Sentence, ...]) -> tuple[Sentence, ...] | None:
    """Repeat the row of a line on the rows that its head names: "Next and foll alt row: ..."

    Returns:
        The sentences; None if the line does not begin with a row that is written out.
    """
    if not head.legs:
        return sentences
    row = sentences[0] if sentences else None
    if not isinstance(row, Phrase):
        return None
    return (AtIntervals("", head.legs, False, row.place, row, head.first), *sentences[1:])
