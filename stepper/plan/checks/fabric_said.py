"""Hold what a page says of a fabric against how its rows are worked: "garter st (knit every row)". No I/O.

Explained for rows and worked in the round, garter stitch would purl every other round, though the page says
to knit. "Taking inc sts into st st" beside a rib makes stockinette, and no rib.
"""

from __future__ import annotations

import re
from functools import lru_cache

from stepper.plan.drafts import DraftRound
from stepper.plan.fabric.columns import KNIT, UnknownFabricError, trace_columns
from stepper.plan.fabric.established import columns_of
from stepper.plan.state.in_hand import Column
from stepper.plan.state.needles import Needles
from stepper.project.instructions import Line, Remark, WorkRounds
from stepper.regex import regex

_EVERY = regex(r"\b(?:every|each|all)\b.*\b(?:rows?|rnds?|rounds?)\b", re.I)
_KNIT, _PURL = regex(r"\b(?:k|knit)\b", re.I), regex(r"\b(?:p|purl)\b", re.I)
_ONE_AND_ONE = regex(r"\b(?:1|one|rs|right\s+side)\b", re.I)
_TAKEN_INTO = regex(
    r"(?:\binto|\b(?:new|extra|inc\w*)\s+(?:sts?|stitch(?:es)?)\s+in)\s+(?:the\s+)?(?:.*?\s)?(?:(?P<moss>moss|seed)|(?P<rib>rib(?:bing)?)|(?P<garter>garter)"
    r"|(?P<stockinette>st\.?\s?st|stockinette|stocking))\b",
    re.I,
)
_AS_THEY_LOOK = regex(
    r"\bk(?:nit(?:ting)?)?\s+(?:all\s+)?(?:the\s+)?knits?\b.{0,12}?(?:,|and|&)\s*p(?:url(?:ing)?)?\s+(?:all\s+)?(?:the\s+)?"
    r"purls?\b",
    re.I,
)
_THESE_ONLY = regex(r"\bon\s+these\s+(?:sts|stitches)\s+(?:only|alone)\b", re.I)
_HALVES = regex(
    r"(?=.*\b(?:instep|top\s+of\b.*\bfoot)\b)(?=.*\bpatt)(?=.*\b(?:sole|bottom\s+of\b.*\bfoot)\b)", re.I
)
"""Words that give the two halves of a foot their fabrics: "instep in pattern, sole in St st"."""
_EDGE = 3
"""Stitches at an edge that are looked at for the fabric which new ones are said to be taken into."""


def check_fabric_said(block: list[Line], needles: Needles, begin: int) -> None:
    """Report a fabric that is explained otherwise than it is worked here; tell one explained for rows.

    Args:
        block: The lines just worked.
        needles: The knitting in hand.
        begin: Index of the first draft of them.
    """
    for line in block:
        _check_taken_into(line, needles)
        _check_as_they_look(line, needles, begin)
        heard = (*line.said, *(one.text for one in line.sentences if isinstance(one, Remark)))
        if begin and any(map(_THESE_ONLY.search, heard)) and _ends_short(needles.drafts[begin - 1]):
            told = "a row before this turns in its middle, and no line says that the rest of it waits."
            needles.report(line.place, told, 'Write in that row: "K20, turn, leave rem 40 sts on a holder."')
        if any(_HALVES.search(words) for words in line.said):
            _check_halves(line, needles)
        manners = {one.manner for one in line.sentences if isinstance(one, WorkRounds)}
        said = [words for words in line.said if _KNIT.search(words)]
        if len(manners) != 1 or not said:
            continue
        drafts = [draft for draft in needles.drafts[begin:] if draft.line == line.place.line and draft.before]
        if not drafts:
            continue
        (manner,), flat = manners, drafts[-1].flat
        for words in said:
            _hold_against(words, manner, line, needles, flat=flat)


def _ends_short(draft: DraftRound) -> bool:
    """Return whether a row leaves its rest unworked, and puts none of it on hold."""
    codes = draft.codes
    return "rest" in codes and "hold" not in codes


def _hold_against(words: str, manner: str, line: Line, needles: Needles, *, flat: bool) -> None:
    every = _EVERY.search(words) is not None and not _PURL.search(words)
    one_and_one = _PURL.search(words) is not None and _ONE_AND_ONE.search(words) is not None
    where = "in rows" if flat else "in the round"
    if manner == "garter" and ((every and not flat) or (one_and_one and flat)):
        done = "knitted in every row" if flat else "knit one round and purl one round"
        hint = 'Write "Join in the round." before it' if flat else 'Write "Work flat." before it'
        needles.report(
            line.place,
            f'garter stitch {where} is {done}, and the line says "{words}".',
            f"{hint}, if it is worked so, or take these words out.",
        )
    elif manner == "stockinette" and every and flat:
        needles.report(
            line.place,
            f'stockinette in rows is purled on the wrong side, and the line says "{words}".',
            'Write "Join in the round." before it, if it is worked so, or take these words out.',
        )
    elif manner == "stockinette" and one_and_one and not flat:
        needles.warn(
            line.place,
            f'"{words}" is said of rows; in the round every round of stockinette is knitted.',
        )


def _check_halves(line: Line, needles: Needles) -> None:
    """Report a foot whose sole is no plain half of the round, or whose instep has no pattern."""
    try:
        columns, _ = columns_of(needles)
    except UnknownFabricError:
        columns = []
    plain = "".join("k" if set(column) == {KNIT} else "." for column in columns)
    stretch = max(map(len, (plain * 2).split(".")), default=0)
    if "." not in plain or stretch * 4 < len(plain):
        told = "an instep in pattern and a plain sole are gone on with, and the rounds before have not both."
        needles.report(line.place, told, "Write the round out.")


def _check_taken_into(line: Line, needles: Needles) -> None:
    """Report new stitches that the line takes into another fabric than the one that goes on beside them."""
    named = next((found for words in line.said if (found := _TAKEN_INTO.search(words))), None)
    if named is None or needles.counting.lost or not needles.count:
        return
    try:
        columns, _ = columns_of(needles)
    except UnknownFabricError:
        return
    wanted, edge = str(named.lastgroup), [*columns[:_EDGE], *columns[-_EDGE:]]
    if not _is_of(wanted, edge, columns):
        said = {"moss": f"{named['moss']} stitch", "garter": "garter stitch"}.get(wanted, wanted)
        needles.report(
            line.place,
            f"the new stitches are to be taken into {said}, and beside them another pattern goes on.",
            'Write the rows out, or "taking inc sts into patt" if the pattern goes on over them.',
        )


def _check_as_they_look(line: Line, needles: Needles, begin: int) -> None:
    """Report a row "knit the knits and purl the purls" that works a stitch otherwise than it looks.

    The pattern that goes on does so in a rib; in moss stitch it purls the knit stitches.
    """
    if not _goes_as_they_look(line.text):
        return
    for at in range(max(1, begin), len(needles.drafts)):
        draft = needles.drafts[at]
        told = draft.line == line.place.line and draft.before == draft.after and draft.codes <= {"k", "p"}
        if not told or needles.drafts[at - 1].after != draft.before:
            continue
        try:
            below, worked = trace_columns(needles.drafts[at - 1 : at]), trace_columns([draft])
        except UnknownFabricError:
            continue
        if [column[0][0] for column in worked] != [column[0][0] for column in below]:
            needles.report(
                line.place,
                "the pattern that goes on here does not knit the knit stitches and purl the purl ones.",
                'Write "work in pattern" if it goes on, or the stitches of the row.',
            )
            return


@lru_cache(maxsize=4096)  # every line is asked in every size
def _goes_as_they_look(text: str) -> bool:
    """Return whether a line knits the knits and purls the purls."""
    return _AS_THEY_LOOK.search(text) is not None


def _is_of(fabric: str, edge: list[Column], columns: list[Column]) -> bool:
    """Return whether the stitches at the edges are of a fabric."""
    if fabric == "stockinette":
        return all(set(column) == {KNIT} for column in edge)
    if fabric == "garter":
        return len(set(edge)) == 1 and [code for code, _ in edge[0]] in (["k", "p"], ["p", "k"])
    looks = {tuple(code for code, _ in column) for column in columns}
    if fabric == "rib":
        return any(len(set(look)) == 1 for look in looks) and len(looks) > 1
    return any(len(set(look)) > 1 for look in looks) and len(looks) > 1
