"""The manner in which she wants even changes spaced, as the file names it. No I/O."""

from __future__ import annotations

from stepper.craft.manners import Manner
from stepper.project.draft import FileDraft
from stepper.project.fields import Fields
from stepper.project.problems import nearest

_NAMES = {
    "evenly mixed": Manner.MIXED,
    "mixed": Manner.MIXED,
    "sayable": Manner.SAYABLE,
    "in two runs": Manner.RUNS,
    "two runs": Manner.RUNS,
    "runs": Manner.RUNS,
}


def read_spacing(fields: Fields, draft: FileDraft) -> Manner:
    """Read `spacing`: `evenly mixed`, `sayable` or `in two runs`; sayable where it is not given."""
    node = fields.text("spacing")
    if node is None:
        return Manner.SAYABLE
    words = " ".join(node.text.lower().split())
    if words not in _NAMES:
        hint = nearest(words, _NAMES) or "Write evenly mixed, sayable or in two runs."
        draft.problems.append(node.place.problem(f'`spacing` is "{node.text}".', hint))
    return _NAMES.get(words, Manner.SAYABLE)
