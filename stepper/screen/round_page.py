"""The page for a half-second glance: the round, what to do, the place in it, whether the count stands.

Everything else ranks lower and gives way on a small screen. No I/O.
"""

from __future__ import annotations

from stepper.language.phrasing import in_yarn, said_items
from stepper.language.places import list_marks, sentence_case
from stepper.plan.model import Round
from stepper.plan.yarn.strand_remarks import catches_of
from stepper.screen.ahead import draw_progress, find_next_shaping, list_facts, say_duration
from stepper.screen.bottom_row import draw_bottom_row
from stepper.screen.count_badge import count_expected, draw_badge, draw_verdict
from stepper.screen.device_status import describe_heard, draw_devices
from stepper.screen.layout import Block, stack_blocks
from stepper.screen.numerals import Scale, draw_numeral
from stepper.screen.ribbon import draw_ribbon
from stepper.screen.rows import (
    Row,
    Span,
    clean,
    flow_facts,
    paragraph,
    put_apart,
    put_beside,
    row,
    row_width,
    shorten,
    wrap,
)
from stepper.screen.scene import Scene
from stepper.screen.strip import draw_strip, part_in_hand, place_within
from stepper.screen.style import BOLD, Badge, Terminal
from stepper.session.counting.count_timing import pace_of

_EDGE = " "
_FEWEST_ROWS = 8
_FEWEST_COLUMNS = 20
# A smaller screen has no room for numerals: the round and what to do are written in letters there.


def draw_round_page(scene: Scene, terminal: Terminal) -> list[Row]:
    """Draw the page. Always: as many rows as the terminal has."""
    columns, tall = terminal.columns, terminal.rows >= 22
    gap = Block(rank=9, rows=[()] if tall else [])
    blocks = [
        Block(rank=1, rows=[_head(scene, columns)]),
        gap,
        Block(rank=0, rows=_figure(scene, terminal, scale_for(terminal))),
        gap,
        Block(rank=2, rows=_place(scene, terminal)),
        gap,
        Block(rank=0, rows=_verdict(scene, terminal)),
        gap,
        Block(rank=8, grown=lambda rows: _chart(scene, terminal, rows), floor=3),
        Block(rank=6, rows=_ahead(scene, terminal), least=1),
        gap,
        Block(rank=3, rows=_told(scene, terminal), least=1),
        Block(rank=5, rows=_devices(scene, terminal), least=1),
        Block(rank=2, rows=[draw_bottom_row(scene, terminal)]),
    ]
    return stack_blocks(blocks, columns, terminal.rows)


def scale_for(terminal: Terminal) -> Scale:
    """Choose the size of the numerals for a size of the screen."""
    if terminal.columns >= 110 and terminal.rows >= 36:
        return Scale.HUGE
    return Scale.LARGE if terminal.columns >= 60 and terminal.rows >= 18 else Scale.SMALL


def _here(scene: Scene) -> Round | None:
    index = scene.state.place.index
    return scene.course.rounds[index] if index < len(scene.course.rounds) else None


def _head(scene: Scene, columns: int) -> Row:
    round_ = _here(scene)
    title = Span(shorten(scene.plan.title, columns // 2) + _EDGE)
    if round_ is None:
        return put_apart((Span(f"{_EDGE}Finished", BOLD),), (title,), columns)
    name = ", ".join([sentence_case(round_.section), *list_marks(round_)])
    return put_apart((Span(_EDGE + shorten(name, columns - 2), BOLD),), (title,), columns)


def _figure(scene: Scene, terminal: Terminal, scale: Scale) -> list[Row]:
    """Draw the numerals with what to do beside them, or under them on a narrow screen."""
    round_ = _here(scene)
    if round_ is None:
        rounds = len(scene.course.rounds)
        return [row(f"{_EDGE}Every round is done: {rounds} of {rounds}. The garment is finished.", BOLD)]
    if terminal.rows < _FEWEST_ROWS or terminal.columns < _FEWEST_COLUMNS:
        counted = row(f"{_EDGE}{round_.number} of {round_.of}", BOLD)
        return [counted, *_instruction(scene, terminal, terminal.columns)]
    drawn = [(Span(_EDGE), *each) for each in draw_numeral(round_.number, scale, blocks=terminal.blocks)]
    drawn[-1] = (*drawn[-1], Span(f" of {round_.of}", BOLD))
    side = max(row_width(each) for each in drawn) + 3
    room = terminal.columns - side - 1
    if scale is not Scale.SMALL:
        beside_it = [*_instruction(scene, terminal, room), (), *_counts(scene, room)]
        above = max(0, (scale.rows - len(beside_it)) // 2) if scale is Scale.HUGE else 0
        return put_beside(drawn, [*[()] * above, *beside_it], at=side)
    narrow = put_beside(drawn, _counts(scene, room)[: scale.rows], at=side)
    text = _instruction(scene, terminal, terminal.columns - 2)
    return [*narrow, *[(Span(_EDGE), *each) for each in text]]


def _instruction(scene: Scene, terminal: Terminal, columns: int) -> list[Row]:
    """Write what to do now, one clause per line, between what comes first and what to watch throughout."""
    round_, part = _here(scene), part_in_hand(scene.course, scene.state)
    assert round_ is not None
    assert part is not None
    rows: list[Row] = []
    begins = part.start == 0
    minded = catches_of(round_)
    for remark in (each for each in round_.remarks if begins and each not in minded):
        for line in wrap(sentence_case(remark.rstrip(".")), columns - 4):
            rows.append((draw_badge(Badge.ASKS, line, terminal.depth, blocks=terminal.blocks),))
    yarn = in_yarn(round_, scene.plan) if begins else ""
    clauses = f"{yarn}{said_items(part.items, round_, scene.plan)}".split("; then ")
    for number, clause in enumerate(clauses):
        said = f"then {clause}" if number else sentence_case(clause)
        end = ";" if number < len(clauses) - 1 else "."
        rows += paragraph(said + end, columns, BOLD)
    for remark in minded:
        rows += paragraph(f"{remark.rstrip('.')}.", columns)
    return rows


def _counts(scene: Scene, columns: int) -> list[Row]:
    """Write the stitches now and at the end, the needle, and the time for the round."""
    round_ = _here(scene)
    assert round_ is not None
    now, end = count_expected(scene.plan, scene.state)
    narrow = columns < 36
    if now == end:
        counts: Row = (Span(f"{now} sts", BOLD), Span("" if narrow else " throughout"))
    elif narrow:
        counts = (Span(f"{now} to {end} sts", BOLD),)
    else:
        counts = (Span(f"{now} sts", BOLD), Span(" now, "), Span(f"{end}", BOLD), Span(" at the end"))
    facts: list[Row] = [counts]
    if round_.needle_mm is not None:
        facts.append((Span(f"{round_.needle_mm:g} mm", BOLD), Span(" needle")))
    pace, left = pace_of(scene.state), scene.course.stitches_in(round_.index) - scene.state.place.stitch
    assumed = "" if pace.measured or narrow else " at a usual pace"
    facts.append((Span(f"{say_duration(pace.seconds_for(left))}{assumed}"),))
    return flow_facts(facts, columns)


def _place(scene: Scene, terminal: Terminal) -> list[Row]:
    """Write the place in the round, and draw the round as a line."""
    round_ = _here(scene)
    if round_ is None:
        return []
    stitch, total = scene.state.place.stitch, scene.course.stitches_in(round_.index)
    where: list[Row] = [(Span("Stitch "), Span(f"{stitch}", BOLD), Span(f" of {total}"))]
    inside = place_within(scene.course, scene.state)
    if inside:
        where.append(row(sentence_case(inside)))
    change = find_next_shaping(scene.course, scene.state)
    if change is not None and not change.rounds:
        soon = f"in {change.stitches}" if change.stitches else "now"
        where.append((Span(f"Next {change.word} "), Span(soon, BOLD)))
    line = draw_ribbon(round_, stitch, max(1, terminal.columns - 2), blocks=terminal.blocks)
    return [(Span(_EDGE), *flow_facts(where, terminal.columns - 2)[0]), (Span(_EDGE), *line)]


def _verdict(scene: Scene, terminal: Terminal) -> list[Row]:
    """Write whether the count stands and which yarns are in hand, each on its colour."""
    stands = (Span(_EDGE), *draw_verdict(scene.plan, scene.state, terminal.depth, blocks=terminal.blocks))
    round_ = _here(scene)
    if round_ is None:
        return [stands] if scene.state.knitting.fault is not None else []
    if terminal.columns < 60:
        return [stands]
    hand: list[Span] = []
    for key in scene.course.yarns[round_.index]:
        hand += [Span(" "), scene.yarns.swatch(key, terminal.depth)]
    if not hand:
        return [stands]
    named: Row = (Span("in hand"), *hand, Span(_EDGE))
    if row_width(stands) + row_width(named) + 2 <= terminal.columns:
        return [put_apart(stands, named, terminal.columns)]
    return [stands, (Span(_EDGE), *named)]


def _chart(scene: Scene, terminal: Terminal, rows: int) -> list[Row]:
    """Draw the strip in the room that is left."""
    square = 2 if terminal.columns >= 70 else 1
    most = 13 if terminal.rows >= 36 else 7
    return draw_strip(scene.course, scene.state, scene.yarns, terminal, rows=min(rows, most), square=square)


def _ahead(scene: Scene, terminal: Terminal) -> list[Row]:
    """Write what is ahead: each on a row of its own if there is room."""
    columns = terminal.columns - 2
    roomy = terminal.rows >= 36
    bar = 20 if columns >= 100 else 0
    done = draw_progress(scene.course, scene.state, bar, blocks=terminal.blocks)
    rows = flow_facts(list_facts(scene.course, scene.state), columns // (2 if roomy else 1))
    return [(Span(_EDGE), *each) for each in (*rows, *(done if roomy else flow_facts(done, columns)))]


def _devices(scene: Scene, terminal: Terminal) -> list[Row]:
    room = terminal.columns - 1
    rows = draw_devices(scene.devices, terminal.depth, room, blocks=terminal.blocks)
    return [(Span(_EDGE), *each) for each in rows]


def _told(scene: Scene, terminal: Terminal) -> list[Row]:
    """Write the answers to the last cue, and what was heard."""
    columns = terminal.columns - 2
    most = 8 if terminal.rows >= 36 else 4
    lines: list[str] = []
    heard = describe_heard(scene.devices)
    if heard:
        lines.append(shorten(heard, columns))
    for told in scene.told:
        lines += wrap(told, columns)
    if len(lines) > most:
        lines = [*lines[: most - 1], shorten(f"{lines[most - 1]} …", columns)]
    return [(Span(_EDGE), Span(clean(line), BOLD)) for line in lines]
