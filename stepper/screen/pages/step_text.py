"""What to do now, in words: what comes first, the step itself, and what to mind all round long. No I/O."""

from __future__ import annotations

from stepper.language.phrasing import in_yarn, said_items
from stepper.language.places import sentence_case
from stepper.plan.yarn.strand_remarks import catches_of
from stepper.records import dataclass
from stepper.screen.drawing.letters import enlarge
from stepper.screen.drawing.rows import Row, Styled, paragraph, wrap
from stepper.screen.drawing.style import BOLD, Badge, Terminal
from stepper.screen.pages.count_badge import draw_badge
from stepper.screen.pages.strip import part_in_hand
from stepper.screen.scene import Scene
from stepper.session.stops import remarks_before, stop_in_hand


@dataclass(frozen=True, slots=True, kw_only=True)
class StepText:
    """What to do now."""

    first: tuple[str, ...]
    """What is said before the round; empty once it is begun."""
    clauses: tuple[str, ...]
    """The step, clause by clause."""
    minded: tuple[str, ...]
    """What holds throughout the round, such as where floats are caught."""


def word_step(scene: Scene) -> StepText:
    """Put the step in hand into words; there must be a round in hand."""
    course, state = scene.course, scene.state
    round_, part = course.rounds[state.place.index], part_in_hand(course, state)
    assert part is not None
    begins, minded = part.start == 0 and not state.knitting.heard, catches_of(round_)
    stop = stop_in_hand(scene.plan, state)
    if stop:
        return StepText(first=(), clauses=tuple(f"{sentence_case(each)}." for each in stop), minded=())
    first = [sentence_case(each.rstrip(".")) for each in remarks_before(round_) if begins]
    yarn = in_yarn(round_, scene.plan) if part.start == 0 else ""
    clauses = f"{yarn}{said_items(part.items, round_, scene.plan)}".split("; then ")
    said = [
        f"{f'then {clause}' if number else sentence_case(clause)}{';' if clause is not clauses[-1] else '.'}"
        for number, clause in enumerate(clauses)
    ]
    return StepText(
        first=tuple(first),
        clauses=tuple(said),
        minded=tuple(f"{each.rstrip('.')}." for each in minded),
    )


def draw_first(step: StepText, terminal: Terminal, columns: int) -> list[Row]:
    """Write what comes first, each line on a badge."""
    return [
        (draw_badge(Badge.ASKS, line, terminal.depth, blocks=terminal.blocks),)
        for each in step.first
        for line in wrap(each, columns - 4)
    ]


def draw_step(step: StepText, terminal: Terminal, columns: int, rows: int, most: int) -> list[Row]:
    """Write the step as large as there is room for, or else in the terminal's own letters.

    Args:
        step: What to do.
        terminal: The terminal to draw on.
        columns: Room. Unit: columns.
        rows: Room that leaves some to everything else. Unit: rows.
        most: Room that may be taken if the step would not be large otherwise. Unit: rows.
    """
    text = "\n".join(step.clauses)
    large = enlarge(text, columns, rows, terminal) or enlarge(text, columns, most, terminal)
    return large or write_step(step, columns)


def write_step(step: StepText, columns: int) -> list[Row]:
    """Write the step in the terminal's own letters, a clause on a line."""
    return [row for clause in step.clauses for row in paragraph(clause, columns, BOLD)]


def draw_minded(step: StepText, columns: int) -> list[Row]:
    """Write what to mind all round long."""
    return [(Styled(line),) for each in step.minded for line in wrap(each, columns)]
