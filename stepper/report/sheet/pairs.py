"""Pieces that are worked alike, such as two sleeves: written once, with a column of boxes for each. Pure.

Two pieces are alike if their sections have the same rows with the same counts, once "left" and "right" or
"first" and "second" are set aside. Up to half the rows may differ in what is worked, as those of a thumb
gusset do in a pair of mittens; both are then told.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Final

from stepper.plan.model import Plan, Round
from stepper.regex import regex
from stepper.report.sheet.blocks import CountCheck, RoundRow

MOST_UNLIKE: Final = 0.5
"""Share of the rows of a section that may differ in what is worked. Chosen here."""

_SIDES: Final = (("left", "right"), ("first", "second"))
_PART: Final = regex(r"\W+|\w+")


def find_pairs(plan: Plan, rows: Mapping[str, Sequence[RoundRow]]) -> dict[str, str]:
    """Find which section is worked like an earlier one.

    Args:
        plan: The plan.
        rows: The rows of every section, by its name.

    Returns:
        The later section by the name of the earlier. Always: whole pieces, section by section.
    """
    found: dict[str, str] = {}
    pieces = _list_pieces(plan)
    while pieces:
        one = pieces.pop(0)
        for other in pieces:
            if len(other) == len(one) and all(
                merge_rows(rows[a], rows[b], (a, b)) is not None for a, b in zip(one, other, strict=True)
            ):
                found.update(zip(one, other, strict=True))
                pieces.remove(other)
                break
    return found


def merge_rows(
    one: Sequence[RoundRow], other: Sequence[RoundRow], names: tuple[str, str]
) -> tuple[RoundRow, ...] | None:
    """Write the rows of two sections as those of one; None if they are not worked alike.

    Args:
        one: Rows of the first.
        other: Rows of the second.
        names: Of both sections.
    """
    if len(one) != len(other) or join_words(*names) is None:
        return None
    merged = []
    unlike = 0
    for row, twin in zip(one, other, strict=True):
        both = _merge(row, twin, tell_apart(*names))
        if both is None:
            return None
        unlike += len(both.words) > len(row.words)
        merged.append(both)
    return tuple(merged) if unlike <= MOST_UNLIKE * len(one) else None


def join_words(one: str, other: str) -> str | None:
    """Write two texts as one: "left / right sleeve"; None if they differ in more than the side they are
    for."""
    parts, twins = _PART.findall(one), _PART.findall(other)
    if len(parts) != len(twins):
        return None
    joined = []
    for part, twin in zip(parts, twins, strict=True):
        pair = (part.lower(), twin.lower())
        if part != twin and pair not in _SIDES and pair[::-1] not in _SIDES:
            return None
        joined.append(part if part == twin else f"{part} / {twin.lower()}")
    return "".join(joined)


def tell_apart(one: str, other: str) -> tuple[str, str]:
    """Return what tells two names apart, "Left" and "Right"; the names themselves if that is not one word."""
    unlike = [
        pair for pair in zip(one.split(), other.split(), strict=False) if pair[0].lower() != pair[1].lower()
    ]
    first, second = unlike[0] if len(unlike) == 1 else (one, other)
    return first[:1].upper() + first[1:], second[:1].upper() + second[1:]


def _merge(one: RoundRow, other: RoundRow, apart: tuple[str, str]) -> RoundRow | None:
    figures = ("numbers", "before", "after")
    if any(getattr(one, name) != getattr(other, name) for name in figures):
        return None
    if len(one.remarks) != len(other.remarks) or len(one.words) != len(other.words):
        return None
    check = _merge_checks(one.check, other.check)
    if check is None and (one.check is not None or other.check is not None):
        return None
    remarks = [join_words(*pair) for pair in zip(one.remarks, other.remarks, strict=True)]
    label, altered = join_words(one.label, other.label), join_words(one.altered, other.altered)
    if None in remarks or label is None or altered is None:
        return None
    words: list[str] = []
    for mine, theirs in zip(one.words, other.words, strict=True):
        joined = join_words(mine, theirs)
        words += [joined] if joined is not None else [f"{apart[0]}: {mine}", f"{apart[1]}: {theirs}"]
    return replace(
        one,
        remarks=tuple(each for each in remarks if each is not None),
        label=label,
        altered=altered,
        words=tuple(words),
        check=check,
        boxes=one.boxes + other.boxes,
    )


def _merge_checks(one: CountCheck | None, other: CountCheck | None) -> CountCheck | None:
    """Write two checks as one; None if they are not the same count at the same length."""
    if one is None or other is None or (one.expect, one.length) != (other.expect, other.length):
        return None
    reason = join_words(one.reason, other.reason)
    return replace(one, reason=reason) if reason is not None else None


def _list_pieces(plan: Plan) -> list[list[str]]:
    """List the sections of each piece; a piece begins on empty needles or with stitches off a holder."""
    first: dict[str, Round] = {}
    for each in plan.rounds:
        first.setdefault(each.section, each)
    pieces: list[list[str]] = []
    for name, round_ in first.items():
        begins = round_.before == 0 or any(run.stitch == "return" for run in round_.runs)
        if begins or not pieces:
            pieces.append([])
        pieces[-1].append(name)
    return pieces
