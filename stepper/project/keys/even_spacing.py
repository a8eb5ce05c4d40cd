"""Read how the knitter wants even changes spaced: in which manner, and over how many rounds. No I/O."""

from __future__ import annotations

import re

from stepper.craft.even.manners import Manner
from stepper.project.draft import FileDraft
from stepper.project.model import MOST_ROUNDS_OVER
from stepper.project.problems import nearest
from stepper.project.yaml_file.fields import Fields

_NAMES = {
    "evenly mixed": Manner.MIXED,
    "mixed": Manner.MIXED,
    "sayable": Manner.SAYABLE,
    "in two runs": Manner.RUNS,
    "two runs": Manner.RUNS,
    "runs": Manner.RUNS,
}


def read_spacing(fields: Fields, draft: FileDraft) -> Manner:
    """Read `spacing`: `evenly mixed`, `sayable` or `in two runs`; `sayable` if it is not given."""
    node = fields.text("spacing")
    if node is None:
        return Manner.SAYABLE
    words = " ".join(node.text.lower().split())
    if words not in _NAMES:
        hint = nearest(words, _NAMES) or "Write evenly mixed, sayable or in two runs."
        draft.report(node.place, f'`spacing` is "{node.text}".', hint)
    return _NAMES.get(words, Manner.SAYABLE)


def read_rounds_over(fields: Fields, draft: FileDraft) -> int:
    """Read `over` at a switch (`2 rounds`): the rounds over which its change is spread; 1 if not given."""
    node = fields.text("over")
    if node is None:
        return 1
    match = re.fullmatch(r"(\d)(?:\s+(?:rounds?|rnds?|rows?))?", " ".join(node.text.lower().split()))
    if match is None or not 1 <= int(match[1]) <= MOST_ROUNDS_OVER:
        draft.report(node.place, f'`over` is "{node.text}".', "Write 2 rounds.")
        return 1
    return int(match[1])
