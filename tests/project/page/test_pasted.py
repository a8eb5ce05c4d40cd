from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from stepper.project.page.pasted import Pasted, take_apart
from stepper.project.page.quoting import writable
from tests.tables import each_row
from tests.waiting import processor_s, usual_s

PAGES = sorted((Path(__file__).parent.parent / "printed").glob("*.txt"))
ROWS = [row for page in PAGES for row in page.read_text(encoding="utf-8").splitlines()]


def bare(text: str) -> str:
    """Take the white space out of a text."""
    return "".join(writable(text).split())


def assert_nothing_is_dropped(text: str, pasted: Pasted) -> None:
    """Put the pieces together again."""
    assert "".join(bare(piece.text) for piece in pasted.pieces) == bare(text)


@each_row("page", PAGES)
def test_the_pieces_are_the_text(page: Path) -> None:
    """US, UK, old style, flat, in the round, with the line breaks of a PDF, tables, no headings at all."""
    text = page.read_text(encoding="utf-8")
    assert_nothing_is_dropped(text, take_apart(text))


@given(st.lists(st.sampled_from(ROWS), max_size=30))
@settings(max_examples=60, deadline=None)
def test_rows_in_any_order_are_all_kept(rows: list[str]) -> None:
    """A page need not be in a sensible order to be kept whole."""
    text = "\n".join(rows)
    assert_nothing_is_dropped(text, take_apart(text))


@given(st.text(max_size=200))
@settings(max_examples=150, deadline=None)
def test_any_text_is_kept_to_the_last_sign(text: str) -> None:
    """Signs that no file may hold are kept as their codes."""
    assert_nothing_is_dropped(text, take_apart(text))


def test_a_page_falls_into_its_parts() -> None:
    """Headings make sections; what stands before them is not knitted."""
    pasted = take_apart((Path(__file__).parent.parent / "printed" / "us_hat.txt").read_text(encoding="utf-8"))
    assert [part.name for part in pasted.parts] == ["brim", "body", "crown"]
    assert (pasted.title, pasted.sizes) == ("Copperleaf Hat", ("S", "M", "L"))
    assert {piece.kind for piece in pasted.front} == {"comment"}
    assert all(piece.front for piece in pasted.front)


def test_a_sentence_broken_over_rows_is_put_together() -> None:
    """A PDF breaks its lines anywhere."""
    pasted = take_apart("Cuff\nCast on 40 sts. Join\nin the round. Knit 2\nrounds. K to\nend.\n")
    assert [piece.text for piece in pasted.parts[0].pieces if piece.kind == "line"] == [
        "Cast on 40 sts. Join in the round. Knit 2 rounds. K to end."
    ]


def test_what_cannot_be_read_is_a_note_with_the_reason() -> None:
    """The readable sentences around it are lines."""
    pasted = take_apart("Body\nCast on 40 sts. Think of the sea. Knit 2 rows. Incrase evenly to 44 sts.\n")
    kinds = [(piece.kind, piece.text) for piece in pasted.parts[0].pieces[1:]]
    assert kinds == [
        ("line", "Cast on 40 sts."),
        ("note", "Think of the sea."),
        ("line", "Knit 2 rows."),
        ("note", "Incrase evenly to 44 sts."),
    ]
    assert 'Did you mean "increase"?' in pasted.parts[0].pieces[-1].why


def test_abbreviations_are_not_knitted() -> None:
    """ "k: knit" would otherwise be a round."""
    pasted = take_apart("Abbreviations\nk: knit\np: purl\n\nBody\nCast on 4 sts.\nKnit 2 rows.\n")
    assert [piece.kind for piece in pasted.pieces] == ["comment"] * 4 + ["line"] * 2


def test_a_part_that_comes_twice_gets_a_number() -> None:
    """Two sections of one name cannot be told apart."""
    pasted = take_apart("Title\n\nSLEEVE\nCast on 4 sts.\n\nSLEEVE\nCast on 4 sts.\n")
    assert [part.name for part in pasted.parts] == ["sleeve", "sleeve 2"]


@pytest.mark.parametrize("text", ["(" * 10_000, "[ " * 5_000, "(1" * 5_000, "(k1, " * 2_500, "k1, " * 2_500])
def test_what_no_pattern_holds_is_told_apart_quickly(text: str) -> None:
    """A page copied badly must not stop the program for half a minute: thousands of brackets take a moment."""
    assert processor_s(lambda: take_apart(text), tries=1) < usual_s(5)


MITTENS = """Loop mittens

RIGHT MITTEN

cuff
With thin needles, cast on 36 sts. Join in the round.
Knit 12 rounds.

thumb gusset
Inc rnd: K18, m1, k to end. 37 sts.
Bind off.

LEFT MITTEN
Loop it as the right one, and never mind.

cuff
Cast on 36 sts.
Knit 2 rounds.

FINISHING
Weave in ends.
"""


def test_small_headings_below_a_piece_are_parts_of_it() -> None:
    """Else nobody could mean the right mitten by its name; a piece of which nothing is read stays one."""
    pasted = take_apart(MITTENS)
    assert [part.name for part in pasted.parts] == [
        "right mitten, cuff",
        "right mitten, thumb gusset",
        "left mitten",
        "left mitten, cuff",
    ]
    assert "RIGHT MITTEN" in [piece.text for piece in pasted.parts[0].pieces]
    assert_nothing_is_dropped(MITTENS, pasted)


def test_headings_of_one_size_are_parts_side_by_side() -> None:
    """In "BACK", "NECK" nothing says that the neck is of the back."""
    page = "BACK\nCast on 40 sts.\nKnit 2 rows.\nNECK\nKnit 2 rows.\nBind off.\n"
    assert [part.name for part in take_apart(page).parts] == ["back", "neck"]
    smaller = page.replace("NECK", "Neck")
    assert [part.name for part in take_apart(smaller).parts] == ["back", "back, neck"]
    twice = smaller.replace("BACK", "SLEEVES (two)").replace("Neck", "Sleeve head")
    assert [part.name for part in take_apart(twice).parts] == ["sleeves", "sleeves, sleeve head"]


def test_a_heading_of_several_words_set_wide_is_read_as_words() -> None:
    """Its words stand apart by more blanks than its letters."""
    page = take_apart("Heron cardigan\n\nL E F T   F R O N T\nCast on 40 sts. Work flat.\nKnit 2 rows.\n\nR I G H T   F R O N T\nCast on 40 sts.\nKnit 2 rows.\n")
    assert [part.name for part in page.parts if part.is_worked] == ["left front", "right front"]


def test_a_row_whose_number_stands_in_a_column_of_its_own_is_a_row() -> None:
    """Set off by a gap instead of a colon, such rows ran into one that nobody could read."""
    page = take_apart(
        "Mesh sock\n\nCast on 40 sts. Join.\nrnd 1   *p1, k3\nrnd 2   as rnd 1\nrnd 3\t*p1, k1, yo, ssk\n"
        "Knit 2 rnds.\nrow 4 of the list is long.\n"
    )
    lines = [piece.text for piece in page.pieces if piece.kind == "line"]
    assert [line for line in lines if line.startswith("rnd")] == [
        "rnd 1: *p1, k3",
        "rnd 2: as rnd 1",
        "rnd 3: *p1, k1, yo, ssk",
    ]
    assert "row 4:" not in " ".join(piece.text for piece in page.pieces)


def test_a_round_that_a_leaflet_calls_rd_is_one_everywhere_on_the_page() -> None:
    """In its rows, in its gauge and where it is repeated, or a whole sock is left unread; an ordinal is none."""
    page = take_apart(
        "SOCK\nTension: 32 sts and 44 rds to 10 cm.\nLEG\nCast on 72 sts. Join in the round.\n"
        "1st rd.: *K2, P2. Rep. from * to end of rd.\nRep. this rd. 11 times.\n2nd rd.: Knit.\n3rd Rd: Knit.\n"
        "NB: the 3rd row is on page 3, 5 Mill Rd., Aln."
    )
    assert [piece.kind for piece in page.parts[0].pieces[1:6]] == ["line"] * 5
    assert "44 rnds" in page.text
    assert "3rd row" in page.parts[0].pieces[-1].text
    assert "Mill Rd." in page.parts[0].pieces[-1].text
