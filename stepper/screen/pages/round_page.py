"""The page for a half-second glance: the round, what to do, the place in it, whether the count stands.

What she must read is never cut: what to do, where she is, what is asked, and the keys. The step is as large
as the window allows once that is placed; the numerals give way to it, and all else gives way to both. If even
that is too much for the window, the text is turned page by page. No I/O.
"""

from __future__ import annotations

from dataclasses import replace

from stepper.language.places import list_marks, sentence_case
from stepper.plan.model import Round
from stepper.screen.drawing.layout import Block, stack_blocks
from stepper.screen.drawing.letters import NARROW, enlarge
from stepper.screen.drawing.numerals import Scale, draw_numeral
from stepper.screen.drawing.rows import (
    Row,
    Styled,
    flow_facts,
    indent,
    paragraph,
    put_apart,
    put_beside,
    row_width,
    shorten,
)
from stepper.screen.drawing.style import BOLD, Badge, Terminal
from stepper.screen.pages.ahead import draw_progress, list_facts
from stepper.screen.pages.bottom_row import draw_bottom_row
from stepper.screen.pages.count_badge import CountVerdict, draw_verdict, judge_count
from stepper.screen.pages.device_signs import draw_devices, draw_heard
from stepper.screen.pages.finished_page import draw_finished_page
from stepper.screen.pages.open_row_page import draw_open_row_page
from stepper.screen.pages.place_lines import list_counts, list_place
from stepper.screen.pages.ribbon import draw_ribbon
from stepper.screen.pages.step_text import (
    StepText,
    draw_first,
    draw_minded,
    draw_step,
    word_step,
    write_step,
)
from stepper.screen.pages.strip import draw_strip
from stepper.screen.scene import Scene

_EDGE = " "
_LARGE_ROWS = NARROW.pitch
"""Rows of one line of the smallest large letters."""
_LEAST_BESIDES = 4
"""Rows that large letters leave in any case."""
_ROOMY_ROWS = 36
"""From this many rows on, the place and what is asked are written large too."""


def draw_round_page(scene: Scene, terminal: Terminal) -> list[Row]:
    """Draw the page. Always: as many rows as the terminal has."""
    if scene.state.place.index >= len(scene.course.rounds):
        open_row = scene.plan.open
        return (
            draw_finished_page(scene, terminal)
            if open_row is None
            else draw_open_row_page(scene, terminal, open_row)
        )
    return _spread_out(scene, terminal) or _close(scene, terminal)


def scale_for(terminal: Terminal) -> Scale:
    """Choose the size of the numerals for a size of the screen."""
    if terminal.columns >= 110 and terminal.rows >= _ROOMY_ROWS:
        return Scale.HUGE
    return Scale.LARGE if terminal.columns >= 60 and terminal.rows >= 18 else Scale.SMALL


# With numerals


def _spread_out(scene: Scene, terminal: Terminal) -> list[Row] | None:
    """Draw the page with numerals; None if what she must read does not fit beside them."""
    columns = terminal.columns
    step, asked = word_step(scene), _asked(scene, terminal)
    large_place = _large_place(scene, terminal)
    facts = list_place(scene)[1 if large_place else 0 :]  # the stitch stands large already
    place = indent(flow_facts(facts, columns - 2))
    asked, beneath = _with_yarns(scene, terminal, asked)
    musts = [_head(scene, columns)], place[:1], asked, [draw_bottom_row(scene, terminal)]
    free = terminal.rows - sum(map(len, musts))
    figure = _figure(scene, terminal, step, free - _reserve(scene, terminal), free)
    if len(figure) > free or any(row_width(row) > columns for row in figure):
        return None
    large_asked = _large_asked(scene, terminal, free - len(figure) - len(large_place) - _LEAST_BESIDES)
    if large_asked:
        asked = _with_yarns(scene, terminal, _asked(scene, terminal, large=True))[0]
    gap = Block(rank=9, rows=[()] if terminal.rows >= 22 else [])
    blocks = [
        Block(rank=0, rows=musts[0]),
        gap,
        Block(rank=0, rows=figure),
        gap,
        Block(rank=0, rows=[*large_place, *place[:1]]),
        Block(rank=4, rows=place[1:]),
        Block(rank=3, rows=[_ribbon(scene, terminal)]),
        gap,
        Block(rank=0, rows=[*asked, *large_asked]),
        Block(rank=5, rows=beneath),
        gap,
        Block(rank=8, grown=lambda rows: _chart(scene, terminal, rows), floor=3),
        Block(rank=7, rows=_ahead(scene, terminal), least=1),
        gap,
        Block(rank=4, rows=draw_heard(scene.devices, columns, scene.told)),
        Block(rank=2, rows=_devices(scene, terminal), least=1),
        Block(rank=0, rows=musts[3]),
    ]
    return stack_blocks(blocks, columns, terminal.rows)


def _reserve(scene: Scene, terminal: Terminal) -> int:
    """Return how many rows large letters leave to the ribbon, the chart, the signs and the rest."""
    if terminal.rows < 22:
        return 1
    if terminal.rows < _ROOMY_ROWS:
        return 6
    return 22 if judge_count(scene.plan, scene.state, scene.asked).badge in _PRESSING else 18


_PRESSING = (Badge.ASKS, Badge.OFF)


def _figure(scene: Scene, terminal: Terminal, step: StepText, rows: int, most: int) -> list[Row]:
    """Draw the numerals with what to do beside them, or under them on a narrow screen.

    Args:
        scene: What there is to show.
        terminal: The terminal to draw on.
        step: What to do.
        rows: Room that leaves some to everything else. Unit: rows.
        most: Room in any case. Unit: rows.
    """
    round_, scale = _here(scene), scale_for(terminal)
    drawn = [
        (Styled(_EDGE), *each)
        for each in draw_numeral(round_.number, scale, blocks=terminal.blocks or terminal.solid)
    ]
    drawn[-1] = (*drawn[-1], Styled(round_.numbered.removeprefix(str(round_.number)), BOLD))
    side = max(row_width(each) for each in drawn) + 3
    room = terminal.columns - side - 1
    if scale is Scale.SMALL:
        narrow = put_beside(drawn, flow_facts(list_counts(scene, room), room)[: scale.rows], at=side)
        inner = terminal.columns - 2
        text = [*draw_first(step, terminal, inner), *write_step(step, inner), *draw_minded(step, inner)]
        return [*narrow, *indent(text)]
    counts = flow_facts(list_counts(scene, room), room)
    first, minded = draw_first(step, terminal, room), draw_minded(step, room)
    taken = len(first) + len(minded) + len(counts) + 1
    text = draw_step(step, terminal, room, rows - taken, most - taken)
    beside = [*first, *text, *minded, (), *counts]
    above = max(0, (scale.rows - len(beside)) // 2) if scale is Scale.HUGE else 0
    return put_beside(drawn, [*[()] * above, *beside], at=side)


def _large_place(scene: Scene, terminal: Terminal) -> list[Row]:
    """Write the stitch large on a large screen."""
    if terminal.rows < _ROOMY_ROWS:
        return []
    stitch = f"Stitch {scene.state.place.stitch} of {scene.course.stitches_in(scene.state.place.index)}"
    return indent(enlarge(stitch, terminal.columns - 2, _LARGE_ROWS, terminal) or [])


def _large_asked(scene: Scene, terminal: Terminal, rows: int) -> list[Row]:
    """Write what is asked large on a large screen."""
    verdict = judge_count(scene.plan, scene.state, scene.asked)
    if terminal.rows < _ROOMY_ROWS or verdict.badge not in _PRESSING:
        return []
    text = " ".join(scene.asked.questions) or _say_verdict(verdict)
    return indent(enlarge(text, terminal.columns - 2, min(rows, 2 * _LARGE_ROWS), terminal) or [])


# Without numerals


def _close(scene: Scene, terminal: Terminal) -> list[Row]:
    """Draw the page without numerals; text that still does not fit is turned page by page."""
    columns, rows = terminal.columns, terminal.rows
    step = word_step(scene)
    inner = columns - 2 if columns > 20 else columns
    texts = [*draw_first(step, terminal, inner), *write_step(step, inner)]
    asked = _asked(scene, terminal)
    minded = draw_minded(step, inner)
    edge = columns > 20
    flow = [*(indent(texts) if edge else texts), *asked, *(indent(minded) if edge else minded)]
    counted = flow_facts([*list_place(scene)[:1], *list_counts(scene, 0)[:1]], columns - 2)
    place = indent(counted) if rows >= 6 else []
    room = max(1, rows - 2 - len(place))
    pages = -(-len(flow) // room)
    at = scene.ui.down % pages * room
    bottom = draw_bottom_row(scene, terminal, page=(scene.ui.down % pages + 1, pages))
    blocks = [
        Block(rank=1, rows=[_numbered_head(scene, columns)]),
        Block(rank=0, rows=flow[at : at + room]),
        Block(rank=9, grown=lambda left: [()] * left, floor=0),
        Block(rank=2, rows=place),
        Block(rank=5, rows=[_ribbon(scene, terminal)]),
        Block(rank=6, rows=draw_heard(scene.devices, columns, scene.told)),
        Block(rank=4, rows=_devices(scene, terminal), least=1),
        Block(rank=0 if _is_typing(scene) else 3, rows=[bottom]),
    ]
    return stack_blocks(blocks, columns, rows)


def _is_typing(scene: Scene) -> bool:
    return bool(scene.ui.digits) or scene.ui.entry is not None


def _numbered_head(scene: Scene, columns: int) -> Row:
    """Write the round without numerals: section and number whole, the rest as far as there is room."""
    round_ = _here(scene)
    number = round_.numbered
    section = shorten(sentence_case(round_.section), max(1, columns - len(number) - 2))
    name = f"{section} {number}" if columns >= len(number) + 4 else number
    marks = "".join(f", {mark}" for mark in list_marks(round_))
    return (Styled(_EDGE + shorten(name + marks, columns - 1), BOLD),)


# Parts of both


def _here(scene: Scene) -> Round:
    return scene.course.rounds[scene.state.place.index]


def _head(scene: Scene, columns: int) -> Row:
    round_ = _here(scene)
    title = Styled(shorten(scene.plan.title, columns // 2) + _EDGE)
    name = ", ".join([sentence_case(round_.section), *list_marks(round_)])
    return put_apart((Styled(_EDGE + shorten(name, columns - 2), BOLD),), (title,), columns)


def _asked(scene: Scene, terminal: Terminal, *, large: bool = False) -> list[Row]:
    """Write whether the count stands, what is asked, and the answers to the last cue, each whole and once.

    Args:
        scene: What there is to show.
        terminal: The terminal to draw on.
        large: Whether what is asked, or else the verdict, stands in large letters already.
    """
    verdict = judge_count(scene.plan, scene.state, scene.asked)
    questions, columns = scene.asked.questions, terminal.columns - 2
    said = {*questions, _say_verdict(verdict)}
    if large:
        verdict = verdict if questions else replace(verdict, detail="")
        questions = ()
    rows = draw_verdict(verdict, terminal.depth, columns, blocks=terminal.blocks)
    for line in (*(each for each in scene.told if each not in said), *questions):
        rows += paragraph(line, columns, BOLD)
    return indent(rows)


def _say_verdict(verdict: CountVerdict) -> str:
    """Write a verdict as a sentence, as a count that is due is told."""
    return f"{sentence_case(verdict.word)}: {verdict.detail}."


def _ribbon(scene: Scene, terminal: Terminal) -> Row:
    columns = max(1, terminal.columns - 2)
    return (
        Styled(_EDGE),
        *draw_ribbon(_here(scene), scene.state.place.stitch, columns, blocks=terminal.blocks),
    )


def _with_yarns(scene: Scene, terminal: Terminal, asked: list[Row]) -> tuple[list[Row], list[Row]]:
    """Write which yarns are in hand, each on its colour: beside the count, or else on a row of its own."""
    hand: list[Row] = [
        (scene.yarns.swatch(key, terminal.depth),) for key in scene.course.yarns[_here(scene).index]
    ]
    named = flow_facts([(Styled("in hand"),), *hand], terminal.columns - 2, gap=1)
    if not hand or len(named) > 1:
        return asked, []
    last = (*named[0], Styled(_EDGE))
    if row_width(asked[0]) + row_width(last) + 2 <= terminal.columns:
        return [put_apart(asked[0], last, terminal.columns), *asked[1:]], []
    return asked, indent(named)


def _chart(scene: Scene, terminal: Terminal, rows: int) -> list[Row]:
    """Draw the strip in the room that is left."""
    square = 2 if terminal.columns >= 70 else 1
    most = 13 if terminal.rows >= _ROOMY_ROWS else 7
    return draw_strip(scene.course, scene.state, scene.yarns, terminal, rows=min(rows, most), square=square)


def _ahead(scene: Scene, terminal: Terminal) -> list[Row]:
    """Write what is ahead, in two columns on a wide screen."""
    columns = terminal.columns - 2
    bar = 20 if columns >= 100 else 0
    facts = [
        *list_facts(scene.course, scene.state),
        *draw_progress(scene.course, scene.state, bar, blocks=terminal.blocks),
    ]
    if columns < 100:
        return indent(flow_facts(facts, columns))
    half = columns // 2
    pairs = zip(facts[::2], [*facts[1::2], ()], strict=False)
    if any(row_width(left) >= half for left in facts[::2]):
        return indent(flow_facts(facts, columns))
    return indent([row for left, right in pairs for row in put_beside([left], [right], at=half)])


def _devices(scene: Scene, terminal: Terminal) -> list[Row]:
    room = terminal.columns - 1
    return indent(draw_devices(scene.devices, terminal.depth, room, blocks=terminal.blocks))
