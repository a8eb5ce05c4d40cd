"""Lay stitches out without working a row of their own: over needles, aside, to another beginning. No I/O."""

from __future__ import annotations

from stepper.plan.fabric.new_beginning import begin_further
from stepper.plan.lines.held.set_apart import set_apart
from stepper.plan.state.needles import Needles
from stepper.plan.state.over_needles import move_over, over_needles
from stepper.project.laying_out import BeginFurther, MoveOver, OverNeedles, SetApart


def lay_out(instruction: OverNeedles | MoveOver | SetApart | BeginFurther, needles: Needles) -> None:
    """Lay the stitches in hand out as an instruction says."""
    if isinstance(instruction, OverNeedles):
        over_needles(instruction, needles)
    elif isinstance(instruction, MoveOver):
        move_over(instruction, needles)
    elif isinstance(instruction, SetApart):
        set_apart(instruction, needles)
    else:
        begin_further(instruction, needles)
