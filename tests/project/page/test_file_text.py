from __future__ import annotations

import re
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from stepper.plan.compile import compile_plan
from stepper.plan.model import Plan, Round
from stepper.project.instructions import Remark
from stepper.project.model import Project
from stepper.project.page.file_text import WrittenFile, write_file
from stepper.project.page.pasted import take_apart
from stepper.project.reader import read_project
from tests.project.page.test_pasted import PAGES, ROWS
from tests.project.printing import printed
from tests.tables import each_row

SAMPLES = sorted((Path(__file__).parents[2] / "fixtures").glob("*.yaml"))


def assert_it_stands_there(text: str) -> WrittenFile:
    """Find every piece of a text on a row of its file, in order, and every line in the project read from it."""
    pasted = take_apart(text)
    made = write_file(pasted)
    rows = [" ".join(row.split()) for row in made.text.splitlines()]
    at = 0
    for piece in pasted.pieces:
        at = next(row for row in range(at, len(rows)) if piece.text in rows[row]) + 1
    reading = read_project(made.text)
    if not pasted.sizes:
        assert [problem.message for problem in reading.problems] == ["the file has no `sizes`."]
        assert "# LOOK: the sizes are not sure" in made.text
        return made
    assert reading.problems == ()
    assert reading.project is not None
    for part, section in zip(pasted.parts, reading.project.sections, strict=False):
        kinds = [piece.kind for piece in part.pieces if piece.kind != "comment"]
        expected = [
            "note" if kind == "note" or _is_note(piece.line.sentences) else "line"
            for kind, piece in zip(kinds, [p for p in part.pieces if p.kind != "comment"], strict=True)
            if piece.line is not None or kind == "note"
        ]
        # where a page has headings alone, a note asks for the lines
        assert ["note" if _is_note(line.sentences) else "line" for line in section.lines] == (expected or ["note"])
    return made


def _is_note(sentences: tuple[object, ...]) -> bool:
    return len(sentences) == 1 and isinstance(sentences[0], Remark)


def plan_of(project: Project) -> Plan:
    """Compile a project that has to be sound."""
    compiled = compile_plan(project)
    assert compiled.plan is not None, compiled.problems
    return compiled.plan


@pytest.mark.parametrize(
    ("name", "rounds", "notes"),
    [
        ("us_hat", 37, 1),
        ("flat_scarf", 50, 1),
        ("round_cowl", 43, 1),
        ("pdf_breaks", 48, 1),
        ("named_sizes", 96, 1),
        ("uk_jumper", 172, 0),
    ],
)
def test_a_printed_page_becomes_a_sound_file(name: str, rounds: int, notes: int) -> None:
    """What is understood is knitted as printed; the rest is said as a note, at its place. Rounds: counted by hand
    from the page and its gauge."""
    (page,) = [page for page in PAGES if page.stem == name]
    made = assert_it_stands_there(page.read_text(encoding="utf-8"))
    project = read_project(made.text).project
    assert project is not None
    assert len(plan_of(project).rounds) == rounds
    assert made.notes == notes


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.stem)
def test_every_mark_is_on_a_row_that_is_told(page: Path) -> None:
    """The knitter is sent to every row that needs her, and to no other."""
    made = write_file(take_apart(page.read_text(encoding="utf-8")))
    rows = made.text.splitlines()
    assert made.looks == tuple(at for at, row in enumerate(rows, start=1) if "# LOOK" in row)
    assert sum("# LOOK (row" in row for row in rows) == made.notes


@each_row("page", PAGES)
def test_every_page_stands_whole_in_its_file(page: Path) -> None:
    """Nothing of the text is dropped, and the file can be read."""
    assert_it_stands_there(page.read_text(encoding="utf-8"))


@given(st.lists(st.sampled_from(ROWS), max_size=25))
@settings(max_examples=40, deadline=None)
def test_rows_in_any_order_stand_whole_in_the_file(rows: list[str]) -> None:
    """However a page was copied, its file can be read and holds all of it."""
    assert_it_stands_there("\n".join(rows))


@given(st.text(max_size=150))
@settings(max_examples=100, deadline=None)
def test_any_text_stands_whole_in_the_file(text: str) -> None:
    """Whatever stands in the text, the file it makes can be read."""
    assert_it_stands_there(text)


def test_the_kind_of_front_matter_stands_over_it() -> None:
    """Who reads the file sees what need not be knitted, and why."""
    rows = write_file(take_apart("Cap\n\nSizes: S (M)\nGauge: 20 sts and 28 rows = 10 cm\n\nBrim\nCO 80 (88) sts.\n")).text
    assert "# --- title ---\n# Cap\n# --- sizes ---\n# Sizes: S (M)\n# --- gauge ---\n# Gauge: 20 sts" in rows
    assert "# --- heading ---" not in rows


def test_rows_that_the_gauge_leaves_out_are_asked_for() -> None:
    """The stitches are the page's; the rows are made up, and marked."""
    rows = write_file(take_apart("Cap\n\nGauge\n24 sts / 4''\n\nBrim\nCO 80 sts.\nKnit 4 rows.\n")).text
    assert "gauge:  # stitches and rounds over 4 in\n  plain: {stitches: 24, rounds: 33}  # LOOK: the text gives no rows" in rows


def test_instructions_in_front_of_the_pattern_stand_under_one_mark() -> None:
    """A stitch pattern of many rows is one thing to look at."""
    text = "Cap\n\nStitch guide\nRow 1: *K1, p1; rep from * to end.\nRow 2: Purl.\n\nBrim\nCO 80 sts.\n"
    made = write_file(take_apart(text))
    assert made.notes == 1
    assert "# LOOK (rows 4-5 of the text)" in made.text


def test_sizes_that_are_not_sure_are_not_written() -> None:
    """The file says so, and `check` refuses it until they stand there."""
    made = write_file(take_apart("Sizes: S (M, L)\n\nBody\nCO 80 (84, 88, 92) sts.\nK4 (5, 6, 7), p to end.\n"))
    assert "sizes:" not in re.sub(r"#.*", "", made.text)
    assert "# LOOK: the sizes are not sure: the text names S, M, L" in made.text
    assert [problem.message for problem in read_project(made.text).problems] == ["the file has no `sizes`."]


def test_without_any_yarn_in_the_text_none_is_made_out_of_it() -> None:
    """The file needs one; it says that it is not the page's."""
    made = write_file(take_apart("Schematic\nA: 42 cm\nB: 50 cm\n\nBody\nCO 80 sts.\nKnit 2 rows.\n"))
    assert "  MC: {name: main yarn}  # LOOK: no yarn was found in the text" in made.text
    assert "  A:" not in made.text


def shape(round_: Round) -> tuple[object, ...]:
    """Return what of a round is knitted."""
    return (
        round_.section, round_.number, round_.label, round_.instruction, round_.before, round_.after,
        round_.runs, round_.held, round_.needle_mm, round_.flat, round_.side,
    )  # fmt: skip


@pytest.mark.parametrize("width", [None, 56])
@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_a_sample_printed_and_pasted_back_gives_the_same_rounds(path: Path, width: int | None) -> None:
    """Paper and file say the same; what the knitter herself chose (her size) is not on the paper."""
    project = read_project(path.read_text(encoding="utf-8")).project
    assert project is not None
    made = assert_it_stands_there(printed(project, width=width, shout=width is None))
    text = re.sub(r"^  size: .*$", f"  size: {project.sizes[project.size]}", made.text, flags=re.M)
    again = read_project(text).project
    assert again is not None
    own = plan_of(replace(project, switches=(), alterations=()))
    assert [shape(round_) for round_ in plan_of(again).rounds] == [shape(round_) for round_ in own.rounds]


def test_the_smaller_needle_of_a_page_is_that_of_its_list() -> None:
    """The page names two needles and gives the gauge of one: the rib is worked on the other."""
    page = (
        "Sample cowl\nNeedles: 3.5 mm and 4 mm circular\nGauge: 22 sts and 30 rnds = 10 cm in stockinette on 4 mm needles\n\n"
        "COWL\nWith smaller needles cast on 96 sts. Join in the round.\n*K2, p2; rep from * to end.\nChange to larger needles.\n"
        "Knit 10 rounds.\nBind off.\n"
    )
    made = write_file(take_apart(page))
    assert 'needles: 3.5 mm, 4 mm' in made.text
    project = read_project(made.text).project
    assert project is not None
    plan = compile_plan(project).plan
    assert plan is not None
    assert [round_.needle_mm for round_ in plan.rounds[:2]] == [3.5, 3.5]
    assert plan.rounds[-1].needle_mm == 4.0


def test_which_of_three_needles_is_the_smaller_is_asked() -> None:
    """Of a set two pieces have gauges of their own, and the cuffs a third needle: the smaller gauge is not theirs."""
    page = (
        "Sample set\nNeedles: 4.5 mm for the cowl, 4 mm for the mitts, 3.75 mm for mitt cuffs\n"
        "Gauge: 20 sts and 30 rnds = 10 cm in stockinette on 4.5 mm\n21 sts and 32 rnds = 10 cm in garter on 4 mm\n\n"
        "MITTS\nWith smaller needles cast on 40 sts. Join in the round.\nKnit 10 rounds.\nBind off.\n"
    )
    made = write_file(take_apart(page))
    assert "needles: 3.75 mm, 4 mm, 4.5 mm" in made.text
    project = read_project(made.text.replace("  # LOOK", "  # ")).project
    assert project is not None
    assert [problem.kind for problem in compile_plan(project).problems] == ["needles"]


@pytest.mark.parametrize(
    ("on", "row"),
    [
        ("on larger needles", "needle: 4 mm, stitches: 22, rounds: 30}\n"),
        ("using the smaller circular needle", "needle: 3.5 mm, stitches: 22, rounds: 30}\n"),
        ("in stockinette", "rounds: 30}  # LOOK: the text does not say on which of its needles\n"),
    ],
)
def test_a_gauge_stands_on_the_needle_that_the_page_means(on: str, row: str) -> None:
    """On the other of two needles every width and length would be wrong; which is meant is asked where it is not said."""
    page = (
        f"Sample cowl\nNeedles: 3.5 mm and 4 mm circular\nGauge: 22 sts and 30 rnds = 10 cm {on}\n\n"
        "COWL\nCast on 96 sts. Join in the round.\nKnit 10 rounds.\nBind off.\n"
    )
    assert row in write_file(take_apart(page)).text


TORN = """Fern cap

Sizes: S (M)
Gauge: 20 sts and 28 rows = 10 cm on 4 mm needles
Yarn: main yarn

Brim
CO 80 (88) sts. Join in the round.
*K2, p2; rep from * around. Work 6 rounds.
Next rnd: *K2, brkyobrk; rep from * around. 80 (88) sts.
Knit 4 rounds.
Bind off.
"""


def test_a_row_that_is_not_read_is_offered_to_be_kept_and_not_kept_by_itself() -> None:
    """What it does to her stitches is hers to vouch for, so it stays a note under its mark until she says so."""
    made = write_file(take_apart(TORN)).text
    assert "# Own words: work the motif as on page 3. 96 sts.\n" in made.split("title:", maxsplit=1)[0]
    assert "\n      Own words" not in made
    assert made.count("# LOOK (row") == 1
    kept = re.sub(r" *# LOOK \(row.*\n( *)Note: Next rnd: ", r"\1Next rnd: Own words: ", made)
    project = read_project(re.sub(r" *# LOOK.*", "", kept)).project
    assert project is not None
    assert [each.words for each in plan_of(project).rounds if each.words] == ["*K2, brkyobrk; rep from * around"]


def test_a_page_that_is_read_needs_no_such_offer() -> None:
    """It would only be one thing more to read."""
    assert "Own words" not in write_file(take_apart(TORN.replace("brkyobrk", "p2"))).text


IN_WORDS = """Tarn Cowl
Materials
MC: 50 g, CC: 50 g
Gauge: 22 sts and 28 rnds = 10 cm in stockinette on 4 mm needles

Stitch patterns
2x2 Rib (multiple of 4 sts)
Every rnd: *K2, p2; rep from * to end.

Chart A (multiple of 4 sts, 2 rnds)
In words:
Rnd 1: *K1 MC, k3 CC; rep from *.
Rnd 2: *K2 MC, k2 CC; rep from *.

Cowl
With MC, cast on 80 sts. Join in the round.
Work in 2x2 Rib for 3 cm.

Colorwork
Work Rnds 1-2 of Chart A 4 times.

SECTION 2 (color CC)
Knit 2 rnds.
Bind off.
"""


def test_a_chart_in_words_is_not_asked_for_and_its_rows_are_knitted() -> None:
    """The page draws none, and needs none."""
    pasted = take_apart(IN_WORDS)
    assert not [piece.text for piece in pasted.pieces if piece.kind == "note"]
    made = write_file(pasted).text
    assert "charts:" not in made
    assert [part.name for part in pasted.parts][-2:] == ["colorwork", "section 2"]
    reading = read_project(re.sub(r"  # LOOK.*", "", made))
    assert reading.project is not None, reading.problems
    assert [one.after for one in plan_of(reading.project).rounds][-11:] == [80] * 10 + [0]


@pytest.mark.parametrize(
    ("width", "read"),
    [
        ("over 10 sts", True),
        (f"over {', '.join(['10'] * 14)} sts", True),
        (f"multiple of {', '.join(['10'] * 11)} sts", True),
        ("over 10 sts in size L", False),
    ],
)
def test_the_head_of_a_pattern_is_a_line_only_where_the_file_reads_it(width: str, read: bool) -> None:
    """With a number for each of many sizes it is longer than a name; it was pasted as a line that the file refused."""
    page = take_apart(f"Pine hat\n\nRidge stitch ({width})\nRow 1: Knit.\nRow 2: Purl.\n\nCast on 80 sts.\nKnit 2 rows.\n")
    head = next(piece for piece in page.pieces if piece.text.startswith("Ridge"))
    assert head.kind == ("line" if read else "note")
    assert read_project(write_file(page).text).problems == ()


def test_a_line_that_stops_the_file_where_it_stands_is_put_under_a_mark() -> None:
    """Read by itself, and not among the others: as a line it would keep the whole garment from being begun."""
    page = (
        "Sock\nSize: one\n\nCast on 24 sts. Join in the round.\ndec round: k1, k2tog, k to end.\nplain round: knit.\n"
        "work dec round and plain round 3 times.\nBind off.\n"
    )
    made = write_file(take_apart(page))
    assert read_project(made.text).project is not None
    assert "Note: plain round: knit." in made.text
    assert any("plain round" in made.text.split("\n")[row - 1] for row in made.looks)
