"""Headings by how they stand on the page. The rows are invented; what each is, is common practice."""

from __future__ import annotations

from stepper.project.page.bare_heads import ends_in_stops, heads_by_shape, may_head
from stepper.project.page.pasted import take_apart
from tests.tables import each_row


def heads(
    row: str, below: str = "Knit 3 rows.", *, above: str = "", apart: bool = True, stopped: bool = True
) -> bool:
    """Return whether a row is a heading, on a page that calls its yarn Slate."""
    return heads_by_shape(row, above, below, apart=apart, stopped=stopped, yarns={"slate"})


@each_row(
    "row",
    [
        "Separating the sleeves", "V-neck band", "ALL DONE BUT THE ENDS", "LAST THINGS", "End", "Details", "THE BIB",
        "Dividing", "Cord", "The other shoulder", "Where body and sleeves meet", "Finishing touches & care", "Working up the front",
        "GETTING READY FOR THE CROWN", "Splitting off the sleeves", "Main part", "Setting in the sleeves",
    ],
)  # fmt: skip
def test_a_short_row_of_its_own_without_a_stop_is_a_heading(row: str) -> None:
    """No list of words has them all."""
    assert heads(row)


@each_row(
    "row",
    [
        "Knit to end", "Purl", "Again", "Both sides alike", "Blue", "All stitches", "Swap yarns", "Decreasing at both ends", "Every round",
        "Without shaping", "Repeat", "As before", "RS facing", "Wrong side", "Right side:", "Turn", "Plain", "Smaller needles", "Loosely",
        "In pattern", "Backwards", "Slate", "Stockinette", "Size M", "Women", "Stripe", "Knitting every stitch", "Keeping the rib",
        "Alternating skeins", "In the round", "On the left needle", "Reversing the shaping", "Same again", "To the end", "Second one too",
    ],
)  # fmt: skip
def test_a_short_order_or_half_of_one_is_none(row: str) -> None:
    """Lost with its row, it would not be knitted."""
    assert not heads(row)


def test_a_fabric_is_a_heading_only_where_the_row_below_tells_it() -> None:
    """ "Texture band" above "Work 10 rows." is what those rows are worked in."""
    assert heads("Texture band", "Rnd 1: Purl.")
    assert heads("Texture band", "*Purl 1 round, knit 1 round.")
    assert not heads("Texture band", "Work 10 rows.")
    assert not heads("Texture band", "Knit until piece measures 10 cm.")


def test_nothing_below_it_or_a_page_without_stops_leaves_it_open() -> None:
    """The last row of a page, or one that goes on, heads nothing; capitals and "-ing" need no stops around them."""
    assert not heads("Cord", "")
    assert not heads("Cord", "and knit to end")
    assert not heads("Cord", stopped=False)
    assert not heads("Cord", above="Knit 3 rows and", apart=False)
    assert heads("CORD", stopped=False)
    assert heads("Dividing the back", above="Knit 3 rows.", apart=False)


def test_a_page_ends_its_sentences_in_stops_or_not() -> None:
    """A heading is too short to count."""
    assert ends_in_stops(["Body", "", "Knit until the piece measures ten cm from here.", ""])
    assert not ends_in_stops(["Body", "", "Knit until the piece measures ten cm from here", ""])


def test_what_stands_below_such_a_heading_is_worked_as_before() -> None:
    """It is a comment, not a part: the rows go on with the stitches in hand; a cast-on begins a part."""
    page = "Hat\n\nCast on 40 sts. Join in the round.\nKnit until the hat measures ten cm from here.\n\nLAST THINGS\nKnit 3 rnds.\n\nCord\n\nCast on 3 sts.\nKnit 10 rows.\n"
    pasted = take_apart(page)
    assert [piece.text for piece in pasted.pieces if piece.front == "heading"] == [
        "Hat",
        "LAST THINGS",
        "Cord",
    ]
    assert [part.name for part in pasted.parts] == ["hat", "cord"]


@each_row("row", ["DIVIDE", "SEPARATE", "Divide"])
def test_an_order_that_needs_numbers_is_a_heading_where_it_has_none(row: str) -> None:
    """Kept as an order it would be a round more, and the numbers stand in the row below."""
    below = "Knit 20, put 10 sts on a thread."
    assert heads_by_shape(row, "", below, apart=True, stopped=True)
    assert not heads_by_shape(f"{row} evenly", "", below, apart=True, stopped=True)


@each_row("row", ["JOIN", "TURN", "BIND OFF", "Join", "Increase"])
def test_an_order_of_its_words_alone_may_be_a_heading(row: str) -> None:
    """It is asked about: taken for an order it would join what is joined, taken for a heading it would be lost."""
    assert may_head(row, "Rnd 1: Knit.", apart=True, stopped=True)
    assert not may_head(f"{row} loosely here now.", "Rnd 1: Knit.", apart=True, stopped=True)
    assert not may_head(row, "", apart=True, stopped=True)
