"""A round in the trade's abbreviations, on one line. No I/O."""

from __future__ import annotations

import re
from collections.abc import Iterable

from stepper.craft.stitches import TURNS, Kind, stitch
from stepper.plan.model import Group, Item, Plan, Round, Run, runs_written
from stepper.plan.stitches.row_elements import is_unnamed


def instruction(
    phrase: tuple[Item, ...],
    *,
    chart: str | None = None,
    chart_round: int | None = None,
    manner: str | None = None,
    evenly: bool = False,
) -> str:
    """Write a round as a printed pattern would.

    Args:
        phrase: The round, repeats kept as groups.
        chart: Name of the chart it is from.
        chart_round: Round of the chart, from 1.
        manner: How the stitches are bound off, if they all are; empty if plainly.
        evenly: Whether it is one of even changes, of which every repeat says how often it is worked.
    """
    if manner is not None and not (isinstance(phrase[0], Run) and phrase[0].stitch in ("graft", "draw")):
        return f"bind off {manner}".strip()
    if len(phrase) == 1 and isinstance(phrase[0], Run) and phrase[0].stitch in ("k", "p"):
        return "knit" if phrase[0].stitch == "k" else "purl"
    phrase = leave_out_rests(phrase)
    coloured = len({run.yarn for run in runs_written(phrase) if run.stitch not in ("hold", "return")}) > 1
    text = ", ".join(
        _item(item, coloured=coloured, last=not evenly and number == len(phrase) - 1)
        for number, item in enumerate(phrase)
    )
    if not _is_shift(phrase):  # held stitches that come back in a worked round are worked across
        text = re.sub(r"\breturn (\d+) of\b", r"work across \1 of", text)
    return f"chart {chart}, round {chart_round}: {text}" if chart else text


def in_its_yarn(round_: Round, before: Round | None, plan: Plan) -> str:
    """Write a round with its yarn, if it has only one and that is not the obvious one.

    A round in one colour names no yarn at its stitches. The yarn is named after the round if it is not the
    main one, the first of the file, or if it changes without a remark, as after a round of a chart.

    Args:
        round_: The round.
        before: The round before it, if there is one.
        plan: For its yarns.
    """
    yarns = yarns_of(round_.runs)
    if len(yarns) != 1 or round_.after == 0:
        return round_.instruction
    (yarn,) = yarns
    said = f"with {plan.yarns.get(yarn, yarn)}" in round_.remarks
    changed = before is not None and set(yarns_of(before.runs)) not in (set(), set(yarns)) and not said
    if yarn == next(iter(plan.yarns), yarn) and not changed:
        return round_.instruction
    comma = "," if " " in round_.instruction else ""
    return f"{round_.instruction}{comma} in {yarn}"


def yarns_of(runs: Iterable[Run]) -> tuple[str, ...]:
    """Return the keys of the yarns that stitches are worked in, in the order they are first used."""
    return tuple(
        dict.fromkeys(run.yarn for run in runs if stitch(run.stitch).kind not in (Kind.SHIFT, Kind.MARK))
    )


def leave_out_rests(phrase: tuple[Item, ...]) -> tuple[Item, ...]:
    """Leave out the stitches that rest before a row goes on from a turn or after it has reached its end.

    They belong to the row's count but are not worked; after a turn they are named.
    """
    kept: list[Item] = []
    for item in phrase:
        resting = isinstance(item, Run) and item.stitch == "rest"
        turned = any(isinstance(one, Run) and one.stitch in TURNS for one in kept)
        if not resting or turned or _is_shift(phrase):
            kept.append(item)
    return tuple(kept)


def _is_shift(phrase: tuple[Item, ...]) -> bool:
    """Return whether stitches are only moved, so that those left alone are worth naming."""
    return all(isinstance(item, Run) and item.stitch in ("rest", "return", "hold") for item in phrase)


def _item(item: Item, *, coloured: bool, last: bool) -> str:
    if isinstance(item, Run):
        return _run(item, coloured=coloured)
    inside = ", ".join(_item(inner, coloured=coloured, last=False) for inner in item.items)
    if item.times == 1:
        return inside
    if last:
        return f"*{inside}; rep from * to end"
    start, end = "[]" if any(isinstance(inner, Group) for inner in item.items) else "()"
    return f"{start}{inside}{end} {item.times} times"


def put_on_hold(part: str) -> str:
    """Return where stitches go on hold: "for left sleeve", "on a holder" if they have no name."""
    return f"on a {part}" if is_unnamed(part) else f"for {part}"


def taken_from_hold(part: str) -> str:
    """Return where stitches on hold come from: "of left sleeve", or "from the holder"."""
    return f"from the {part}" if is_unnamed(part) else f"of {part}"


def _run(run: Run, *, coloured: bool) -> str:
    yarn = f" {run.yarn}" if coloured else ""
    words = {
        "co": f"cast on {run.times}",
        "bo": f"bind off {run.times}",
        "pu": f"pick up and knit {run.times}",
        "hold": f"hold {run.times} {put_on_hold(run.yarn)}",
        "return": f"return {run.times} {taken_from_hold(run.yarn)}",
        "rest": f"leave {run.times} unworked",
        "graft": f"graft {run.times}",
        "own": f"{run.times} st{'s' if run.times > 1 else ''} in pattern",
        "draw": f"draw the yarn through the {run.times} sts left and fasten it off",
    }
    if run.stitch in words:
        return words[run.stitch]
    head, _, tail = run.stitch.partition(" ")
    if head == "own":
        uses, _, leaves = tail.partition(" to ")
        return f"{uses} sts in pattern, to {leaves}"
    if head in ("k", "p", "sl"):
        return f"{head}{run.times}{' ' + tail if tail else ''}{yarn}"
    # Cables are printed in capitals, by the Craft Yarn Council's form.
    name = run.stitch.upper() if stitch(run.stitch).kind is Kind.CABLE else run.stitch
    return f"{name}{yarn}" + (f" {run.times} times" if run.times > 1 else "")
