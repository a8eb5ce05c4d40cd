"""Charts drawn as a picture. Source of the reading: chart conventions, one square one stitch (check-values 1.7)."""

from __future__ import annotations

import os
import sys
import warnings
from pathlib import Path

import pytest
from PIL import Image

from stepper.project.keys.charts import draw_chart
from stepper.project.keys.pictures import MAX_COLOURS, Pixel, Pixels, chart_of_picture
from stepper.project.model import Cell, Chart
from stepper.project.problems import Problem, Span
from stepper.project.reader import read_project
from stepper.project.yaml_file.source import read_picture
from tests.fuzz.limits import memory_bounded_to
from tests.plan.test_compile import compiled, plan_of
from tests.project.samples import HEAD, project

HERE = Span(line=3, column=14)
CHALK, PINE, CLEAR = (236, 230, 216, 255), (31, 77, 58, 255), (0, 0, 0, 0)
COLOURS = {"#ece6d8": Cell("k", "MC"), "#1f4d3a": Cell("k", "A")}
DRAWN = ("a...", ".a..", "..aa")


def picture(*rows: str, block: int = 1, a: Pixel = PINE) -> Pixels:
    """Paint rows of signs, top row first."""
    signs = {".": CHALK, "a": a, "x": CLEAR}
    painted = tuple(tuple(signs[sign] for sign in row for _ in range(block)) for row in rows for _ in range(block))
    return Pixels(width=len(painted[0]), height=len(painted), rows=painted)


def chart(pixels: Pixels, *, stitches: int | None = None) -> Chart:
    """Read a picture that must come out."""
    made, problems = chart_of_picture("t", pixels, COLOURS, HERE, stitches=stitches)
    assert problems == []
    assert made is not None
    return made


def fault(pixels: Pixels, *, stitches: int | None = None) -> Problem:
    """Read a picture that must not come out."""
    made, problems = chart_of_picture("t", pixels, COLOURS, HERE, stitches=stitches)
    assert made is None
    return problems[0]


@pytest.mark.parametrize("block", [1, 3, 8])
def test_a_picture_gives_the_chart_that_is_drawn_as_text(block: int) -> None:
    """One pixel or one square of pixels is one stitch, the bottom row the first round."""
    lines = [(row, HERE) for row in DRAWN]
    text, _ = draw_chart("t", lines, {".": Cell("k", "MC"), "a": Cell("k", "A")}, HERE)
    assert text is not None
    assert chart(picture(*DRAWN, block=block)).rounds == text.rounds


def test_a_colour_a_little_off_is_still_its_yarn() -> None:
    """A scanned or exported picture is rarely exact."""
    assert chart(picture(*DRAWN, a=(38, 80, 66, 255))).rounds[0][3] == Cell("k", "A")


def test_a_colour_of_no_yarn_says_where_it_stands() -> None:
    """The stitch is counted from the right and the round from below, as they are knitted."""
    problem = fault(picture(*DRAWN, a=(200, 30, 30, 255)))
    assert '#c81e1e at stitch 2 of round 1 (pixel 3, 3 from the top left)' in problem.message
    assert '"#c81e1e": A' in problem.hint
    assert (problem.line, problem.column) == (3, 14)
    assert "stitch 2 of round 1 (pixel 17, 24" in fault(picture(*DRAWN, block=8, a=(200, 30, 30, 255))).message


def test_a_colour_between_two_yarns_is_neither() -> None:
    """A silent choice would be wrong in half of the cases."""
    colours = {"#808080": Cell("k", "MC"), "#8a8a8a": Cell("k", "A")}
    grey = Pixels(width=1, height=1, rows=(((133, 133, 133, 255),),))
    made, problems = chart_of_picture("t", grey, colours, HERE)
    assert made is None
    assert "it could be" in problems[0].message


def test_what_can_be_seen_through_is_no_stitch() -> None:
    """A square of no stitch is left empty in a picture."""
    assert chart(picture("a.x", "aaa")).rounds[1][2] == Cell("", None)


def test_a_guessed_size_is_told_and_can_be_given() -> None:
    """Squares of two pixels may also be a motif two stitches wide: both readings can be had."""
    doubled = picture(*DRAWN, block=2)
    assert "read as 4 stitches by 3 rounds, 2 pixels each" in chart(doubled).caution
    given = chart(doubled, stitches=8)
    assert (given.width, len(given.rounds), given.caution) == (8, 6, "")


def test_squares_of_more_than_one_colour_and_sizes_that_do_not_fit_are_told() -> None:
    """A picture with lines between its squares cannot be read as one."""
    assert "stitch 2 of round 2, from pixel 1, 1 on" in fault(picture("a...", "....", "....", "...."), stitches=2).message
    assert "do not fill" in fault(picture("a..", "..."), stitches=2).message
    assert "do not fill" in fault(picture("a..."), stitches=2).message


def head(key: str = "") -> str:
    """Make the head of a project whose chart is the picture beside it."""
    rows = HEAD[HEAD.index("    key:") : HEAD.index("sections:")]
    return HEAD.replace(rows, f"    picture: peak.png\n{key}")


def test_a_project_knits_from_the_picture_beside_it(tmp_path: Path) -> None:
    """The picture is read by a library of its own, and knitted as the same chart in text would be."""
    image = Image.new("RGB", (4, 2), "#d8ccb0")
    for x, y in ((0, 0), (3, 0), (1, 1), (2, 1)):
        image.putpixel((x, y), (79, 107, 58))
    image.save(tmp_path / "peak.png")
    work = "Cast on 8 sts. Join in the round.\nChart peak.\nBind off."
    reading = read_project(project(work, head=head()), lambda name: read_picture(tmp_path / name))
    assert reading.project is not None, reading.problems
    drawn = compiled(project(work)).plan
    assert drawn is not None
    assert reading.project.charts["peak"].rounds == plan_charts(project(work))


def plan_charts(text: str) -> tuple[tuple[Cell, ...], ...]:
    """Return the rounds of the chart that a text draws, once it is known to be knittable."""
    assert plan_of(text)
    reading = read_project(text)
    assert reading.project is not None
    return reading.project.charts["peak"].rounds


def test_pictures_that_are_none_are_told_where_they_are_named(tmp_path: Path) -> None:
    """A missing, broken or foreign file is a problem of the project file."""
    (tmp_path / "text.png").write_text("not a picture")
    Image.effect_noise((64, 64), 50).save(tmp_path / "whole.png")
    (tmp_path / "cut.png").write_bytes((tmp_path / "whole.png").read_bytes()[:1500])
    Image.new("RGB", (4000, 4000)).save(tmp_path / "huge.png")
    told = {name: read_picture(tmp_path / name) for name in ("none.png", "text.png", "cut.png", "huge.png")}
    assert "there is no picture" in str(told["none.png"])
    assert told["text.png"] == "text.png is not a PNG picture."
    assert "cannot be read" in str(told["cut.png"])
    assert "too large" in str(told["huge.png"])
    problems = read_project(project("Cast on 8 sts.\nBind off.", head=head()), lambda name: "it is gone.").problems
    assert [(problem.line, problem.message) for problem in problems] == [(11, "it is gone.")]


def test_the_key_names_colours_that_no_yarn_has() -> None:
    """`"#000000": p` makes black squares purl; what is no colour is a problem."""
    black = Pixels(width=1, height=1, rows=(((0, 0, 0, 255),),))
    text = project("Cast on 8 sts. Join in the round.\nChart peak.\nBind off.", head=head('    key: {{"#000000": p}}\n'))
    reading = read_project(text, lambda name: black)
    assert reading.project is not None
    assert reading.project.charts["peak"].rounds == ((Cell("p", None),),)
    bad = read_project(text.replace("#000000", "black"), lambda name: black)
    assert '"black" is not a colour' in bad.problems[0].message


def test_a_picture_of_noise_is_refused_before_it_is_compared(tmp_path: Path) -> None:
    """Four million pixels of as many colours once took minutes."""
    path = tmp_path / "noise.png"
    colours = [bytes((number % 256, number // 256, 7)) for number in range(MAX_COLOURS + 1)]
    Image.frombytes("RGB", (len(colours), 1), b"".join(colours)).save(path)
    found = read_picture(path)
    assert isinstance(found, str)
    assert f"more than {MAX_COLOURS:,} colours" in found
    Image.frombytes("RGB", (MAX_COLOURS, 1), b"".join(colours[:-1])).save(path)
    assert isinstance(read_picture(path), Pixels)


def test_the_largest_picture_of_two_colours_is_told_to_be_too_large() -> None:
    """Its squares are pixels, so it has more stitches than any chart; that is said before they are looked at."""
    row = (CHALK, PINE) * 300
    pixels = Pixels(width=600, height=2, rows=(row, row[::-1]))
    assert "larger than 500 by 500 stitches" in fault(pixels).message


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="this system has no pipes with a name")
def test_a_pipe_in_place_of_a_picture_is_refused_at_once(tmp_path: Path) -> None:
    """Nobody may ever write into it."""
    os.mkfifo(tmp_path / "pipe.png")
    assert read_picture(tmp_path / "pipe.png") == "pipe.png cannot be read as a picture: it is no plain file."


@pytest.mark.skipif(sys.platform != "linux", reason="how much memory a process has is read as Linux tells it")
def test_a_chunk_that_claims_gigabytes_is_told_in_a_sentence(tmp_path: Path) -> None:
    """Four bytes of a damaged file must not ask for all the memory there is, nor a warning reach the terminal."""
    Image.new("RGB", (8, 6)).save(tmp_path / "a.png")
    raw = (tmp_path / "a.png").read_bytes()
    at = raw.index(b"IDAT") - 4
    (tmp_path / "a.png").write_bytes(raw[:at] + b"\x7f\xff\xff\xff" + raw[at + 4 :])
    with warnings.catch_warnings(), memory_bounded_to(200 << 20):
        warnings.simplefilter("error")
        found = read_picture(tmp_path / "a.png")
    assert isinstance(found, Pixels) or found.startswith("a.png cannot be read as a picture: ")
