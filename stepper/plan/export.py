"""The plan as the JSON document that tests and other tools read. No I/O."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from stepper.plan.model import Plan, Round

FORMAT = 1
"""Version of the document; raised by every change that breaks readers."""


def plan_document(plan: Plan, *, spoken: Callable[[Round], str]) -> dict[str, Any]:
    """Build the document.

    Args:
        plan: The plan.
        spoken: Returns a round in words for the ear.

    Returns:
        Plain values only: text, integers, numbers, lists, tables and None.
    """
    laid: dict[int, list[list[Any]]] = {}
    return {
        "format": FORMAT,
        "title": plan.title,
        "sections": [_section(plan, name) for name in plan.sections],
        "rounds": [_round(round_, spoken, laid) for round_ in plan.rounds],
        "warnings": [{"line": caution.line, "text": caution.text} for caution in plan.warnings],
    }


def _section(plan: Plan, name: str) -> dict[str, Any]:
    rounds = [round_ for round_ in plan.rounds if round_.section == name]
    return {"name": name, "rounds": len(rounds), "stitches": sum(round_.progress for round_ in rounds)}


def _round(
    round_: Round, spoken: Callable[[Round], str], laid: dict[int, list[list[Any]]]
) -> dict[str, Any]:
    """Write a round; `laid` keeps the runs of those before it, which thousands of rounds may share."""
    checkpoint = round_.checkpoint
    runs = laid.get(id(round_.runs))
    if runs is None:
        runs = laid[id(round_.runs)] = [[run.stitch, run.times, run.yarn] for run in round_.runs]
    return {
        "index": round_.index,
        "section": round_.section,
        "number": round_.number,
        "of": round_.of,
        "label": round_.label,
        "size": round_.size,
        "needle_mm": round_.needle_mm,
        "flat": round_.flat,
        "side": round_.side,
        "instruction": round_.instruction,
        "spoken": spoken(round_),
        "before": round_.before,
        "after": round_.after,
        "held": round_.held,
        "runs": runs,
        "shaping": list(round_.shaping),
        "floats": [[yarn, stitches] for yarn, stitches in round_.floats],
        "checkpoint": {"expect": checkpoint.expect, "reason": checkpoint.reason} if checkpoint else None,
        "own_words": round_.words or None,
    }
