"""The yoke's profile: the lines where the lengths are, each with its name."""

from __future__ import annotations

from dataclasses import replace

from stepper.plan.blend import try_sizes
from stepper.plan.compile import compile_plan
from stepper.project.model import Project
from stepper.report.drawing.shapes import Area, Drawing, Label, Path
from stepper.report.drawing.yoke_picture import HEIGHT, WIDTH, draw_yoke_of
from tests.plan.test_blend import switchback


def drawn(project: Project, trouble: str = "") -> Drawing:
    """Draw the sample."""
    plan = compile_plan(project if not trouble else replace(project, switches=())).plan
    assert plan is not None
    alone = [try_sizes(project, size, size, "") for size in range(6)]
    drawing = draw_yoke_of(project, plan, alone, trouble=trouble)
    assert drawing is not None
    return drawing


def words(drawing: Drawing) -> list[str]:
    """Return all words of a drawing."""
    return [shape.text for shape in drawing.shapes if isinstance(shape, Label)]


def test_printed_sizes_blend_and_body_are_drawn_and_named() -> None:
    """Size 4, size 2, what is knitted of them, the wearer, and every increase."""
    drawing = drawn(switchback())
    said = words(drawing)
    for name in ("size 4", "size 2", "as knitted: 4, then 2", "body and arms", "Final increase: 225 to 246"):
        assert name in said
    assert any(isinstance(shape, Area) for shape in drawing.shapes)  # it binds at the underarm
    assert "narrower than the wearer" in drawing.title


def test_nothing_lies_outside_the_sheet() -> None:
    """Every point and every word begins on the sheet."""
    for shape in drawn(switchback()).shapes:
        for x, y in shape.points if isinstance(shape, Path | Area) else (shape.at,):
            assert 0 <= x <= WIDTH
            assert 0 <= y <= HEIGHT


def test_the_outlines_keep_their_proportions() -> None:
    """The blend ends at 246 stitches, size 4 alone at 288: 288 / 246 of the way from the left."""
    paths = [shape for shape in drawn(switchback()).shapes if isinstance(shape, Path)]
    knitted = next(path for path in paths if path.width == 3.4)
    size_4 = next(path for path in paths if path.dash == (9.0, 4.0))
    left = 70
    assert (size_4.points[-1][0] - left) / (knitted.points[-1][0] - left) == 288 / 246


def test_without_a_body_it_says_what_to_write_and_without_a_yoke_there_is_no_picture() -> None:
    """Nothing is made up for a wearer who is not described."""
    project = replace(switchback(), body={})
    assert any("Write neck, bust and upper_arm" in text for text in words(drawn(project)))
    plan = compile_plan(project).plan
    assert plan is not None
    assert draw_yoke_of(project, replace(plan, rounds=plan.rounds[:5]), ()) is None


def test_a_blend_that_cannot_be_knitted_leaves_the_size_alone() -> None:
    """One outline with its name, no printed size beside itself."""
    said = words(drawn(switchback(), trouble="it cannot"))
    assert "size 4" in said
    assert not any(text.startswith("as knitted") for text in said)
