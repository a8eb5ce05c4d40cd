"""Turn stitches into a phrase for the ear: "knit eleven, make one, six times". No I/O.

A list of stitches is said with commas; a repeat is a part of its own, set off with "then", and ends with how
often. So "knit five, make one; then knit eleven, make one, fifteen times" leaves no doubt about what is
worked fifteen times. If a round uses more than one yarn, the yarns are named; if all of it is knitted, "knit"
is left out: "three pine, four chalk". A round of even changes is said as its phrase is
(`stepper.language.even_words`).
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from stepper.craft.stitches import Kind, stitch
from stepper.language.aloud import spell_out
from stepper.language.even_words import said_evenly
from stepper.language.numbers import LARGEST, words
from stepper.plan.model import Group, Item, Plan, Round, Run
from stepper.plan.stitches.abbreviate import leave_out_rests, put_on_hold, taken_from_hold, yarns_of
from stepper.records import dataclass
from stepper.regex import regex

_STAR = regex(r"\s*\*\s*")
"""The sign from which a repeat begins, in the page's own words; a voice would leave it out."""
_BESIDE_STAR = regex(r"(?<=[(\[]) (?=star)|(?<=star) (?=[,;.:)\]])")
_WORKED = (Kind.PLAIN, Kind.INCREASE, Kind.DECREASE, Kind.CABLE)


def say_round(round_: Round, plan: Plan) -> str:
    """Say a whole round, without its place: the `say_round` of the plan's JSON.

    Returns:
        Lower case, words only, no full stop.
    """
    return in_yarn(round_, plan) + said_items(round_.phrase, round_, plan)


def in_yarn(round_: Round, plan: Plan) -> str:
    """Say which yarn a round is in if it differs from the round before: "in ember, "; otherwise empty.

    A round of several yarns names them stitch by stitch instead.
    """
    yarns = yarns_of(round_.runs)
    if len(yarns) != 1 or not round_.index:
        return ""
    before = yarns_of(plan.rounds[round_.index - 1].runs)
    if not before or before == yarns:
        return ""
    (yarn,) = yarns
    if f"with {plan.yarns.get(yarn, yarn)}" in round_.remarks:
        return ""  # the change is said before the round
    return f"in {plan.yarns.get(yarn, yarn)}, "


def said_items(items: tuple[Item, ...], round_: Round, plan: Plan) -> str:
    """Say some items of a round.

    Args:
        items: The whole phrase of the round, or part of it.
        round_: The round they are from; whether yarns are named depends on all of it.
        plan: For the names of the yarns.
    """
    if round_.words:
        return spell_out(_BESIDE_STAR.sub("", _STAR.sub(" star ", round_.words).strip()))
    if items == round_.phrase and len(round_.runs) == 1:
        whole = _said_whole(round_.runs[0], round_.instruction)
        if whole:
            return whole
    if items == round_.phrase:
        items = leave_out_rests(items)
    said = said_evenly(items, round_) if round_.evenly and round_.shaping else None
    if said is None:
        said = _said_parts(items, _Manner.of(round_, plan))
    return spell_out(said or round_.instruction or "nothing to work")


@dataclass(frozen=True, slots=True)
class _Manner:
    """How the runs of a round are said."""

    yarns: dict[str, str] | None
    """Names of the yarns if they are said; otherwise None."""
    knitted: bool
    """Whether every stitch is knitted, so that this need not be said."""
    across: bool
    """Whether held stitches are worked as they come back."""

    @classmethod
    def of(cls, round_: Round, plan: Plan) -> _Manner:
        """Decide from the whole round."""
        worked = [run for run in round_.runs if stitch(run.stitch).kind in _WORKED]
        coloured = len(yarns_of(round_.runs)) > 1
        plain = coloured and all(run.stitch == "k" for run in worked)
        across = bool(worked) or _ACROSS in round_.instruction  # a joining round may have no other stitches
        return cls(plan.yarns if coloured else None, plain, across)


_ACROSS: Final = "work across"
"""What is written where held stitches are worked as they come back."""


_BIND_OFF = regex(r"bind off(?: \d+)?(?: sts)?((?: [a-z]+)*)$")
# How to bind off does not show in the stitches, so it is only in the instruction.


def _said_whole(run: Run, instruction: str) -> str:
    """Say a round that is the same stitch throughout; empty if that is not a plain stitch."""
    entry = stitch(run.stitch)
    if run.stitch == "bo":
        manner = _BIND_OFF.match(instruction)
        return f"bind off {_number(run.times)}{manner.group(1) if manner else ''}"
    if entry.kind is not Kind.PLAIN or not entry.counted or run.times == 1:
        return ""
    return entry.counted.format(n=f"all {_number(run.times)}")


def _said_parts(items: Iterable[Item], manner: _Manner) -> str:
    parts: list[str] = []
    plain: list[str] = []
    for item in items:
        if isinstance(item, Run):
            plain.append(_said_run(item, manner))
            continue
        if plain:
            parts.append(", ".join(plain))
            plain = []
        parts.append(_said_group(item, manner))
    if plain:
        parts.append(", ".join(plain))
    return "; then ".join(parts)


def _said_group(group: Group, manner: _Manner) -> str:
    inner = _said_parts(group.items, manner)
    if group.times == 1:
        return inner
    times = f"{_number(group.times)} times"
    if any(isinstance(item, Group) for item in group.items):
        return f"{inner.replace('; then ', ', then ')}, all that {times}"
    return f"{inner}, {times}"


def _said_run(run: Run, manner: _Manner) -> str:
    entry = stitch(run.stitch)
    if run.stitch == "hold":
        return f"hold {_number(run.times)} {put_on_hold(run.yarn)}"
    if run.stitch == "return":
        held = f"{_number(run.times)} {taken_from_hold(run.yarn)}"
        return f"work across {held}" if manner.across else f"return {held} to the needles"
    named = manner.yarns is not None and entry.kind in _WORKED
    yarn = manner.yarns.get(run.yarn, run.yarn) if named and manner.yarns is not None else ""
    if manner.knitted and run.stitch == "k":
        return f"{_number(run.times)} {yarn}"
    if entry.counted and (run.times > 1 or yarn):
        return entry.counted.format(n=f"{_number(run.times)} {yarn}".rstrip())
    # Said without its own commas, or "slip, slip, knit, knit one" would sound like four things.
    said = entry.said.replace(",", "")
    if yarn:
        said = f"{said} in {yarn}"
    return said if run.times == 1 else f"{said} {_number(run.times)} times"


def _number(count: int) -> str:
    return words(count) if count <= LARGEST else str(count)
