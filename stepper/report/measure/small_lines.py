"""Measurements of hats, mittens and socks around head, hand and foot, and of flat pieces. Pure."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from itertools import groupby
from typing import Literal

from stepper.regex import regex
from stepper.report.measure.flow import Flow, Strand
from stepper.report.measure.measuring import AnyRound, Measurement
from stepper.report.measure.tape import Tape, count_unworked, is_whole

Kind = Literal["sock", "mitten", "hat", "flat", "tube", "closed"]

CLOSED_SHARE = 0.6
"""An end with at most this share of the stitches around is closed, as a toe, a tip or a crown. Chosen
here."""
HEEL_ROWS = 6
"""Fewer short rows than this do not make a heel. Chosen here."""

_KINDS: tuple[tuple[Kind, re.Pattern[str], str], ...] = (
    ("sock", regex(r"\b(?:socks?|foot|heel|toe)\b", re.IGNORECASE), "foot"),
    ("mitten", regex(r"\b(?:mitts?|mittens?|hand|thumb|gloves?)\b", re.IGNORECASE), "hand"),
    ("hat", regex(r"\b(?:hat|cap|beanie|beret|brim|crown|tam|bonnet)\b", re.IGNORECASE), "head"),
)
_SIDE = regex(r"^(?:left|right|first|second)\b", re.IGNORECASE)


def measure_small(rounds: Sequence[AnyRound], flow: Flow, tape: Tape) -> Iterator[Measurement]:
    """Measure everything that has neither body nor sleeves, strand by strand."""
    for strand in flow.strands:
        kind = kind_of(strand, rounds, flow, tape)
        if kind == "sock" and find_heel(strand, rounds):
            yield from _sock(strand, rounds, tape)
        elif kind == "flat":
            yield from _flat(strand, rounds, tape)
        else:
            yield from _around_sections(strand, rounds, flow, kind, tape)


def kind_of(strand: Strand, rounds: Sequence[AnyRound], flow: Flow, tape: Tape) -> Kind:
    """Return what a strand is, judged by its heel, thumb and ends, and only then by names or the wearer."""
    whole = [rounds[index] for index in strand.rounds if is_whole(rounds[index])]
    if whole and 5 * sum(each.flat for each in whole) > 4 * len(whole):
        return "flat"
    if find_heel(strand, rounds):
        return "sock"
    if strand.begins != "cast-on":
        return "closed"
    if any(one.opens for one in flow.leaving(strand.number)):
        return "mitten"
    if not closed_ends(strand, rounds)[0] and not closed_ends(strand, rounds)[1]:
        return "tube"
    said = " ".join(dict.fromkeys([rounds[index].section for index in strand.rounds]))
    for kind, words, _ in _KINDS:
        if words.search(said) or words.search(tape.project.title):
            return kind
    given = [kind for kind, _, measure in _KINDS if measure in tape.project.body]
    return given[0] if len(given) == 1 else "closed"


def closed_ends(strand: Strand, rounds: Sequence[AnyRound]) -> tuple[bool, bool]:
    """Return whether a strand is closed at its beginning and at its end."""
    counts = [rounds[index].after for index in strand.rounds if rounds[index].after]
    if not counts:
        return False, False
    around = most_common(strand, rounds)
    return counts[0] <= CLOSED_SHARE * around, strand.ends == "closed" or counts[-1] <= CLOSED_SHARE * around


def most_common(strand: Strand, rounds: Sequence[AnyRound]) -> int:
    """Return the number of stitches that most rounds have."""
    counts = Counter(rounds[index].after for index in strand.rounds if rounds[index].after)
    return counts.most_common(1)[0][0]


def find_heel(strand: Strand, rounds: Sequence[AnyRound]) -> tuple[int, int] | None:
    """Find the rows of a heel: rows between rounds, over part of the stitches. None if there are too few.

    Returns:
        Indexes in the strand's rounds of the heel's first row and of the round after its last.
    """
    rows = [place for place, index in enumerate(strand.rounds) if _is_row(rounds[index])]
    if len(rows) < HEEL_ROWS:
        return None
    start, end = rows[0], rows[-1] + 1
    while end > start and _takes_up(rounds[strand.rounds[end - 1]]):
        end -= 1
    around = [
        sum(not rounds[index].flat and is_whole(rounds[index]) for index in part)
        for part in (strand.rounds[:start], strand.rounds[end:])
    ]
    return (start, end) if min(around) >= 2 and end - start >= HEEL_ROWS else None


def _is_row(round_: AnyRound) -> bool:
    if not (round_.before and round_.after):
        return False
    return not is_whole(round_) or (round_.flat and not count_unworked(round_))


def _takes_up(round_: AnyRound) -> bool:
    """Return whether a row takes up stitches beside a heel or joins it again, and so belongs to the foot."""
    return round_.after > round_.before


def heel_rows(strand: Strand, rounds: Sequence[AnyRound]) -> tuple[list[int], float]:
    """Return the rows by which a heel makes the foot longer, and the share of them that counts.

    A flap lies behind the heel and adds nothing; the rows that turn it lie under the foot. Short rows without
    a flap go back and forth over the same place, so half of them count.

    Source: common practice.
    """
    heel = find_heel(strand, rounds)
    if heel is None:
        return [], 0.0
    rows = list(strand.rounds[heel[0] : heel[1]])
    worked = [rounds[index].before - count_unworked(rounds[index]) for index in rows]
    flap = 0
    while flap < len(rows) and worked[flap] == worked[0]:
        flap += 1
    if flap >= HEEL_ROWS:
        return rows[flap:], 1.0
    return rows, 0.5


def _sock(strand: Strand, rounds: Sequence[AnyRound], tape: Tape) -> Iterator[Measurement]:
    heel = find_heel(strand, rounds)
    assert heel is not None, "asked before"
    before = [rounds[index] for index in strand.rounds[: heel[0]]]
    after = [rounds[index] for index in strand.rounds[heel[1] :]]
    at_start, at_end = closed_ends(strand, rounds)
    upward = at_start and not at_end
    leg, foot = (after, before) if upward else (before, after)
    side = _side_of(strand, rounds)
    cuff = next((each for each in (reversed(leg) if upward else leg) if each.after), None)
    if cuff is not None:
        yield tape.around(f"{side}cuff", cuff, cuff.after)
    yield from _at_its_width(f"{side}leg, around", leg, "", tape)
    # The round that puts the instep on hold is worked over the heel only.
    yield tape.long(f"{side}leg, length", [each for each in leg if each.after > CLOSED_SHARE * each.before])
    rows, share = heel_rows(strand, rounds)
    turned = tape.tall(f"{side}heel, under the foot", [rounds[index] for index in rows], share=share)
    yield turned
    yield from _at_its_width(f"{side}foot, around", foot, "foot", tape)
    sole = tape.long("", foot)
    blocked = sole.blocked_mm is not None or turned.blocked_mm is not None
    whole = tape.long(f"{side}foot, length", (), "foot_length")
    if at_start or at_end:
        finished = sole.finished_mm + turned.finished_mm if blocked else None
        yield replace(whole, needles_mm=sole.needles_mm + turned.needles_mm, blocked_mm=finished)


def _at_its_width(name: str, worked: Sequence[AnyRound], measure: str, tape: Tape) -> Iterator[Measurement]:
    """Measure around the place where most rounds of one fabric have the same count."""
    counts = Counter(
        (each.after, _fabric_name(tape, each))
        for each in worked
        if each.after == each.before and each.after and is_whole(each)
    )
    if not counts:
        return
    (stitches, fabric), _ = counts.most_common(1)[0]
    even = [each for each in worked if each.after == stitches == each.before]
    here = next(each for each in even if _fabric_name(tape, each) == fabric)
    yield tape.around(name, here, stitches, measure)


def _fabric_name(tape: Tape, round_: AnyRound) -> str:
    fabric = tape.fabrics.of(round_)
    return fabric.name if fabric is not None else ""


def _side_of(strand: Strand, rounds: Sequence[AnyRound]) -> str:
    found = _SIDE.match(rounds[strand.rounds[0]].section)
    return f"{found.group().lower()} " if found else ""


def _flat(strand: Strand, rounds: Sequence[AnyRound], tape: Tape) -> Iterator[Measurement]:
    """Measure rows: across if no row grows, otherwise along the widest, which may run along several edges."""
    sections = _by_section(strand, rounds)
    for name, worked in sections:
        widest = max(worked, key=lambda each: each.after)
        shaped = any(each.before != each.after for each in worked if is_whole(each))
        if widest.after:
            yield tape.around(f"{name}, {'widest row' if shaped else 'width'}", widest, widest.after)
        line = tape.long(f"{name}, length", worked)
        if line.needles_mm:
            yield line
    if len({name for name, _ in sections}) > 1:
        yield tape.long("height", [rounds[index] for index in strand.rounds])


def _around_sections(
    strand: Strand, rounds: Sequence[AnyRound], flow: Flow, kind: Kind, tape: Tape
) -> Iterator[Measurement]:
    """Measure a hat, a mitten or a tube around each section and in length."""
    thumb = max((one.left_at for one in flow.leaving(strand.number) if one.opens), default=None)
    sections = _by_section(strand, rounds)
    hand = rounds[thumb].section if thumb is not None else _longest(sections)
    for place, (name, worked) in enumerate(sections):
        measure = ""
        if kind == "hat":
            # What closes the top, decreasing from its first round on, is around no part of a head.
            crown = place == len(sections) - 1 > 0 and _most(worked) < _most(sections[place - 1][1])
            measure = "" if crown else "head"
        elif kind == "mitten" and name == hand:
            measure = "hand"
        elif kind == "mitten" and place == 0 and not closed_ends(strand, rounds)[0]:
            measure = "wrist"
        elif kind == "sock":
            measure = "foot" if name == _longest(sections) else ""
        yield from _at_its_width(f"{name}, around", worked, measure, tape)
        yield tape.long(f"{name}, length", worked)
    if kind in ("hat", "mitten", "tube") and strand.begins == "cast-on":
        side = _side_of(strand, rounds)
        yield tape.long(f"{side}{kind}, height", [rounds[index] for index in strand.rounds])


def _most(worked: Iterable[AnyRound]) -> int:
    return max(each.after for each in worked)


def _longest(sections: Sequence[tuple[str, list[AnyRound]]]) -> str:
    return max(sections, key=lambda pair: len(pair[1]))[0]


def _by_section(strand: Strand, rounds: Sequence[AnyRound]) -> list[tuple[str, list[AnyRound]]]:
    return [
        (name, [rounds[index] for index in group])
        for name, group in groupby(strand.rounds, key=lambda index: rounds[index].section)
    ]
