from __future__ import annotations

from dataclasses import replace

from stepper.project.instructions import Line
from stepper.project.own_stitches.abbreviations import Abbreviations
from stepper.project.page.page_lines import PageLines
from stepper.project.problems import Span
from stepper.project.reading.wording import Words


def page(*rows: str, sizes: int = 1) -> PageLines:
    """Make the rows of a page."""
    return PageLines(rows=rows, words=Words(sizes=sizes))


def test_a_line_is_read_over_the_rows_it_is_broken_in() -> None:
    """As many rows as make a line, and no more."""
    taken, line = page("Cast on 40 sts. Join", "in the round.", "Knit 2 rounds.").joined(0)
    assert taken == 2
    assert line is not None


def test_a_row_of_stitches_with_full_stops_stays_whole() -> None:
    """A line for each stitch would be a round for each; where the row is not read, one mark stands over all of it."""
    text = "1st rnd: *P3. C4B. K6. Rep from * around. 112 sts."
    assert [piece.text for piece in page(text).by_sentence(text, 1)] == [text]
    assert len(page("P3. K4. K6.").by_sentence("P3. K4. K6.", 1)) == 1
    assert page("P3. K4. K6.").read("P3. K4. K6.") is None
    assert "full stops" in page("P3. K4. K6.").why("P3. K4. K6.")


def test_no_line_is_cut_out_of_a_row_of_stitches() -> None:
    """The first half of a row, read alone, would be worked as all of it."""
    taken, line = page("3rd rnd: *P3. K4.", "K6. Rep from * around.").joined(0)
    assert taken == 2
    assert line is not None
    assert [type(sentence).__name__ for sentence in line.sentences] == ["Phrase"]


def test_neighbours_that_cannot_be_read_stay_together() -> None:
    """One mark for a paragraph, not one for each of its sentences."""
    pieces = page().by_sentence("Steek the front. Zigzag it twice. Knit 2 rows. Pink the edge.", 3)
    assert [(piece.kind, piece.text) for piece in pieces] == [
        ("note", "Steek the front. Zigzag it twice."),
        ("line", "Knit 2 rows."),
        ("note", "Pink the edge."),
    ]
    assert all(piece.row == 3 for piece in pieces)


def test_a_row_that_would_take_the_next_one_to_itself_is_no_line() -> None:
    """In the file a comma at its end goes on, and # begins a comment."""
    assert page().read("K2, p2,") is None
    assert page().read("# knit") is None
    assert page().is_worked("Knit 2 rows.")
    assert page("Rep rnds 1 and", "2 until it fits.").run_on(0) == 2


def test_a_line_keeps_the_mark_that_others_refer_to() -> None:
    """Under a note it would be lost, and "rep from ** to **" with it; two marks in one row make two rows of the file."""
    assert page().read("** K 4 rnds.") is not None
    assert page().read("K 4 rnds. ** K 4 rnds.") is None


def test_a_cast_on_is_read_though_the_rest_of_its_sentence_is_not() -> None:
    """Without it every line after it would be a fault; the rest stays under its mark."""
    pieces = page().by_sentence("Cast on 40 sts, and hum a song that you like.", 3)
    assert [(piece.kind, piece.text) for piece in pieces] == [
        ("line", "Cast on 40 sts"),
        ("note", "and hum a song that you like."),
    ]


def test_a_cast_on_is_cut_off_only_with_its_stitches() -> None:
    """A list of sizes is never cut into, and a swatch is no garment."""
    for text in ("Cast on 40, 44 and hum.", "Work and cast on 40 sts, and hum.", "Cast on 30 sts, and knit a swatch."):
        assert [piece.kind for piece in page().by_sentence(text, 3)] == ["note"]


def test_a_sentence_of_several_instructions_is_a_row_of_the_file_for_each() -> None:
    """All of it is read, clause by clause, or all of it stands under one mark."""
    pieces = page().by_sentence("Change to 5 mm needles and knit 2 rows, then bind off all sts loosely.", 3)
    assert [(piece.kind, piece.text) for piece in pieces] == [
        ("line", "Change to 5 mm needles"),
        ("line", "knit 2 rows, then bind off all sts loosely."),
    ]
    pieces = page().by_sentence("Change to 5 mm needles and knit a pleat, then bind off all sts loosely.", 3)
    assert [piece.kind for piece in pieces] == ["note"]


def test_a_row_of_thousands_of_clauses_is_not_read_at_each_of_them() -> None:
    """Found by the fuzz: a row of 15,000 letters, read up to each of its commas, took minutes."""
    asked: list[str] = []

    class Counted(PageLines):
        def read(self, text: str) -> Line | None:
            asked.append(text)
            return super().read(text)

    text = "With smaller needles, CO 40 join sts in the rnd, " * 200
    pieces = Counted(rows=(text,), words=Words(sizes=1)).by_sentence(text, 1)
    assert {piece.kind for piece in pieces} <= {"line", "note"}
    assert len(asked) < 60


def test_a_paragraph_for_one_size_is_not_cut() -> None:
    """Cut at its full stops, its second sentence would be worked in every size."""
    text = "Men only: Twiddle around. Knit one round. 40 sts."
    pieces = page(text, sizes=2).by_sentence(text, 1)
    assert [(piece.kind, piece.text) for piece in pieces] == [("note", text)]
    text = "Adult Large starts here: *k9, k2tog* around. 80 stitches. Knit 1 round."
    named = PageLines(rows=(text,), words=Words(sizes=2, size_names=("Child", "Adult Large")))
    assert [(piece.kind, piece.text) for piece in named.by_sentence(text, 1)] == [("note", text)]


def test_a_b_behind_a_stitch_is_what_the_page_says_it_is() -> None:
    """K1B is a stitch in the row below, one into the back loop, or one in yarn B: nothing but the page tells."""
    for row in ("Rnd 1: *K1B, P1B; rep from * to end.", "Row 2: *K1b, p1; rep from * to end."):
        assert page(row).read(row) is None
        assert "row below or one into the back loop" in page(row).why(row)
    striped = "Rnd 1: *K1A, k1B; rep from * to end."
    assert page(striped, "With B, knit 2 rounds.").read(striped) is not None
    for words in ("knit into the back of the stitch", "knit 1 in the stitch below"):
        told = Abbreviations()
        told.define("K1b", words, Span(line=1, column=1))
        row = "Row 2: *K1b, p1; rep from * to end."
        assert replace(page(row), abbreviations=told).read(row) is not None
