"""Charts drawn by signs in the text of a page. All are invented; how they are read is common practice."""

from __future__ import annotations

from stepper.plan.compile import compile_plan
from stepper.plan.model import flatten
from stepper.project.page.drawn.grid_charts import find_grids, is_yarn
from stepper.project.page.file_text import write_file
from stepper.project.page.pasted import take_apart
from stepper.project.reader import read_project

CHART = """\
4 3 2 1
3 . . . .
2 . o o .
1 o . . o
. = DC o = LC"""
BODY = (
    "Yarn: 50 g in a dark colour (DC), 50 g in a light one (LC)\nGauge: 22 sts and 30 rnds to 10 cm on 4 mm needles\n\nBODY\n"
    "With DC, cast on 24 sts. Join in the round.\nKnit 1 round.\n\n{chart}\n\nWork the 3 rounds of the chart.\nWith DC, knit 1 round.\n"
)

WRONG = {
    "3 . . . .\n2 . o o\n1 o . . o\n. = DC, o = LC": "row 2 of this chart is drawn over 3 stitches, and row 1 leaves 4",
    "3 . . . .\n2 . x x .\n1 o . . o\n. = DC, o = LC": 'the page does not say what "x" means',
    "3 . . . .\n2 . o o .\n1 o . . o\n. = DC, o = see page 4": "neither a yarn nor a stitch",
    "2 . o o .\n1 o . . o\n. = LC, o = DC\n. = DC, o = LC": 'two things of what "." means',
    "5 . . . .\n3 . o o .\n1 o . . o\n. = DC, o = LC": "numbered 5, 3, 1",
    "1 2 3 4\n. . . .\n. o o .\n. = DC, o = LC": "numbered from the left",
    "5 4 3 2 1\n. . . .\n. o o .\n. = DC, o = LC": "numbers 5 stitches and draws 4",
    "3 . . . .\n. o o .\n1 o . . o\n. = DC, o = LC": "some rows of this chart have a number",
}
NONE = (
    "* * *\n* * *",
    "S A L T\nM A R S H",
    "---- ----\n---- ----",
    "8 7 6 5\n4 3 2 1",
    "K2, p2.\nP2, k2.",
    "3 . . . .\n. = DC", "Row 1 k p k p\nRow 2 p k p k\nRow 3 k p k p",
)


def drawn(text: str) -> list[tuple[str, ...]]:
    """Return the rows of the charts found in a text that are whole."""
    return [grid.rows for grid in find_grids(text.split("\n")).values() if not grid.why]


def test_a_chart_is_its_signs_with_numbers_and_a_key_around_them() -> None:
    """Numbers at either side or none, bars, the key behind the last row or below, two rows run together by copying."""
    rows = ("....", ".oo.", "o..o")
    assert drawn(CHART) == [rows]
    assert drawn("3 | . . . . | 3\n2 | . o o . | 2\n1 | o . . o | 1 . = DC, o = LC") == [rows]
    assert drawn("rnd 3 . . . .\nrnd 2 . o o .\nrnd 1 o . . o\nSigns: . DC o LC") == [rows]
    assert drawn(". . . .\n. o o .\no . . o\n\n. = dark brown; o = white") == [rows]
    assert drawn("4 3 2 1 3 . . . . 2 . o o .\n1 o . . o\n. = DC, o = LC") == [rows]
    assert drawn("1 o . . o\n2 . o o .\n3 . . . .\n. = DC, o = LC") == [
        rows
    ]  # its numbers say which is first


def test_a_chart_narrows_where_it_decreases() -> None:
    """Rows above a decrease have fewer signs, and no stitch in the place of the others."""
    text = "3 . x .\n2 . . / \n1 . x x .\n. colour 1, x colour 2, / knit 2 together with colour 1"
    text = text.replace(". colour 1,", "Signs: . colour 1").replace("2, /", "2 /")
    (grid,) = find_grids(text.split("\n")).values()
    assert (grid.why, grid.rows) == ("", ("_.x.", "_../", ".xx."))
    assert dict(grid.key) == {".": "colour 1", "x": "colour 2", "/": "colour 1 k2tog", "_": "no stitch"}


def test_its_heading_names_it() -> None:
    """A line calls it by that name."""
    (grid,) = find_grids(["Chart B (4-st repeat)", "", *CHART.split("\n"), "", "Knit."]).values()
    assert (grid.name, grid.first, grid.last) == ("b", 0, 7)


def test_what_is_missing_is_said() -> None:
    """A chart that is not whole would be knitted wrong from its first gap on."""
    for text, why in WRONG.items():
        (grid,) = find_grids(text.split("\n")).values()
        assert why in grid.why, text


def test_a_key_is_of_the_signs_that_are_drawn() -> None:
    """A line of the pattern right below or above a chart is no part of it."""
    rows = "3 . . . .\n2 . o o .\n1 o . . o"
    assert drawn(f". = DC, o = LC\n{rows}") == drawn(CHART)
    below, above = f"{rows}\n. = DC, o = LC\nA: Cast on 24 sts.", f"A = 24 sts\n{rows}\n. = DC, o = LC"
    assert [grid.last for grid in find_grids(below.split("\n")).values()] == [4]
    assert [grid.first for grid in find_grids(above.split("\n")).values()] == [1]
    assert drawn("Knit.\n. = DC; a = A\n....\n.aa.") == []  # read by another form of charts


def test_ornaments_and_spaced_letters_are_no_charts() -> None:
    """Rows of signs without a key or numbers decorate."""
    assert [text for text in NONE if find_grids(text.split("\n"))] == []


def test_a_yarn_is_told_from_a_stitch() -> None:
    """In the key a page calls yarns as its lines do."""
    words = ("MC", "dark brown", "main colour", "k2tog", "knit", "P")
    assert [each for each in words if is_yarn(each)] == ["MC", "dark brown", "main colour"]


def test_the_chart_of_a_page_is_knitted_from_the_bottom_right() -> None:
    """From the page to the rounds: the first is the bottom row, from right to left, in the yarns of the key."""
    file = write_file(take_apart(BODY.format(chart=CHART))).text
    reading = read_project(file)
    assert reading.project is not None, (reading.problems, file)
    plan = compile_plan(reading.project).plan
    assert plan is not None
    rounds = [
        "".join(str(run.yarn)[0] * run.times for run in flatten(each.phrase)) for each in plan.rounds[2:]
    ]
    assert rounds == ["LDDL" * 6, "DLLD" * 6, "D" * 24, "D" * 24]
    assert "# LOOK (row" not in file


def test_a_chart_that_is_not_whole_gets_one_mark() -> None:
    """Not one for each of its rows."""
    file = write_file(take_apart(BODY.format(chart="\n".join(next(iter(WRONG)).split("\n"))))).text
    assert file.count("is drawn over 3 stitches") == 1
