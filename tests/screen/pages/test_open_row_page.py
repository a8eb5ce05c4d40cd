"""Where the pattern goes on with a row that is not read, the screen shows its words and what is asked."""

from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.plan.model import OpenKind, OpenRow, Proposed
from stepper.screen.drawing.rows import row_width, text_of
from stepper.screen.drawing.style import Depth
from stepper.screen.open_questions import find_asked
from stepper.screen.pages.bottom_row import draw_bottom_row
from stepper.screen.pages.open_row_page import draw_open_row_page
from stepper.screen.pages.round_page import draw_round_page
from stepper.screen.scene import Scene
from stepper.session.state import OpenWork
from tests.screen.scenes import Desk, course_of, terminal

ROW = OpenRow(
    line=31,
    section="collar",
    flat=False,
    remarks=("change to 3.5 mm needles",),
    words="Twirl the loops over the thumb, catching each of them with the one below it.",
)


def _scene(work: OpenWork | None = None) -> Scene:
    scene = Desk().do("go to body round 3", "next").scene()
    garment = replace(scene.plan, open=ROW)
    state = replace(scene.state, knitting=replace(scene.state.knitting, open=work))
    return replace(scene, course=course_of(garment), state=state, asked=find_asked(garment, state), told=())


def _text(scene: Scene, columns: int, rows: int) -> str:
    drawn = draw_open_row_page(scene, terminal(columns, rows, Depth.NONE), ROW)
    assert len(drawn) == rows
    assert all(row_width(each) <= columns for each in drawn)
    return " ".join(" ".join(text_of(each) for each in drawn).split())


@pytest.mark.parametrize("size", [(80, 20), (44, 18)])
def test_the_words_and_what_is_asked_stand_there(size: tuple[int, int]) -> None:
    """As printed, with what is to be done first; nothing says that the garment is finished."""
    text = _text(_scene(), *size)
    assert "Collar" in text
    assert "Change to 3.5 mm needles." in text
    assert ROW.words in text
    assert "Knit it by its words" in text
    assert "yes or no" in text
    assert "inished" not in text


def test_what_was_said_of_it_is_read_back() -> None:
    """A number that was heard is on the screen before it is a fact."""
    assert "2 rounds, 44 stitches after them: is that so?" in _text(_scene(OpenWork(rows=2, stitches=44)), 80, 20)


def test_the_bottom_row_names_no_key_that_is_refused_there() -> None:
    """At a remark, and while a question is open, "next step" says nothing of the row."""
    remark = replace(ROW, proposed=Proposed(kind=OpenKind.IDLE))
    for row, named in ((ROW, True), (remark, False)):
        scene = _scene()
        shown = replace(scene, course=course_of(replace(scene.plan, open=row)))
        assert ("a row is done" in text_of(draw_bottom_row(shown, terminal(120)))) is named


@pytest.mark.parametrize("size", [(120, 40), (100, 30), (60, 24), (30, 8)])
def test_it_is_the_page_of_the_round_in_every_window(size: tuple[int, int]) -> None:
    """Large where there is room."""
    drawn = draw_round_page(_scene(), terminal(*size, Depth.NONE))
    assert len(drawn) == size[1]
    assert all(row_width(each) <= size[0] for each in drawn)
