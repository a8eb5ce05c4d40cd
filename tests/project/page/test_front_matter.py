from __future__ import annotations

import pytest

from stepper.project.page.front_matter import KINDS, is_soft, kind_of, kind_under
from stepper.project.page.headings import heading_of
from tests.tables import each_row


@each_row(
    ("sentence", "context", "kind"),
    [
        ("Chest 84 (92, 100) cm", "", "finished measurements"),
        ("A: 42 (46, 50) cm", "finished measurements", "finished measurements"),
        ("Bust 80 90 100", "sizes", "finished measurements"),
        ("To fit bust 32 [34, 36] in", "", "sizes"),
        ("XS, (S, M, L)", "", "sizes"),
        ("22 sts and 30 rows = 10 cm", "", "gauge"),
        ("Cast on 30 sts for a swatch.", "gauge", ""),
        ("112 sts.", "gauge", ""),
        ("3 balls of merino", "materials", "yarn"),
        ("4 mm needles", "materials", "needles"),
        ("Stitch markers", "materials", "notions"),
        ("Main (M) \u2013 130 m [255 m]", "materials", "yarn"),
        ("CC1 (peach): 1 (1) 1 (2) 2", "", "yarn"),
        ("A (RS): 2 (3)", "", ""),
        ("S / M / L / XL.", "", "sizes"),
        ("Rib: US 5 / 3.75 mm, same", "needles", "needles"),
        ("A friend and a pot of tea", "materials", "materials"),
        ("k2tog: knit 2 together", "abbreviations", "abbreviations"),
        ("k2tog  knit two sts together", "abbreviations", "abbreviations"),
        ("BO bind off", "abbreviations", "abbreviations"),
        ("BO all sts.", "abbreviations", ""),
        ("Rep rows 1 and 2 until piece measures 5 cm.", "abbreviations", ""),
        ("K., knit; p., purl; st., stitch.", "abbreviations", "abbreviations"),
        ("St(s)., stitch(es); st.st., stocking stitch; dec., work 2 sts. together.", "abbreviations", "abbreviations"),
        ("K., knit; p., purl 12 rows; st., stitch.", "abbreviations", ""),
        ("Row 1: Knit.", "abbreviations", ""),
        ("k = knit", "", "abbreviations"),
        ("MC = oatmeal", "", "yarn"),
        ("The collar is a joy to make.", "", "notes of the designer"),
        ("Slip the first stitch of every row.", "notes of the designer", ""),
        ("..x..x..", "", ""),
        ("12", "", "page"),
        ("12", "finished measurements", "finished measurements"),
        ("© the maker", "", "copyright"),
        ("For personal use only.", "", "copyright"),
        ("Waffle stitch (multiple of 4 + 2)", "", "stitch patterns"),
    ],
)
def test_a_sentence_has_the_kind_that_a_reader_gives_it(sentence: str, context: str, kind: str) -> None:
    """The kind stands over it in the file; what holds an instruction has none."""
    assert kind_of(sentence, context) == kind
    assert kind == "" or kind in KINDS


def test_behind_an_empty_row_a_list_has_ended() -> None:
    """A paragraph below a list of needles is no needle."""
    prose = "This hat was made for a friend who lives by the sea."
    assert kind_of(prose, "needles", apart=True) == "notes of the designer"


@pytest.mark.parametrize(
    ("row", "kind"),
    [
        ("Finished measurements", "finished measurements"),
        ("SIZES", "sizes"),
        ("Tension", "gauge"),
        ("What you'll need", "materials"),
        ("Special abbreviations:", "abbreviations"),
        ("Stitch guide", "stitch patterns"),
        ("Pattern notes", "notes of the designer"),
        ("Notions: buttons", "notions"),
        ("12 thoughts on “The Long Way Shawl”", "comments"),
        ("Comments (3)", "comments"),
        ("What our readers say", "comments"),
    ],
)
def test_a_heading_gives_its_kind_to_what_stands_below(row: str, kind: str) -> None:
    """Nobody repeats in every row what the heading says."""
    heading = heading_of(row)
    assert heading is not None
    assert kind_under(heading) == kind


def test_knitting_may_begin_below_a_list_of_needles_but_not_among_abbreviations() -> None:
    """A stitch pattern is defined there, and worked later."""
    assert is_soft("needles")
    assert not is_soft("abbreviations")
    assert not is_soft("stitch patterns")


def test_a_sentence_of_endless_length_is_not_named() -> None:
    """No page has one; whatever it is, the knitter is sent to it."""
    assert kind_of("wool " * 400) == ""


@pytest.mark.parametrize(
    ("sentence", "kind"),
    [
        ("Anja says: I added 10 rows to the body.", "comments"),
        ("I cast on 76 though, because my gauge was off.", "comments"),
        ("“Made three pairs in a week.”", "comments"),
        ("Anja: Cast on 76 stitches.", ""),
        ("Row 5: K2, yo, k2tog.", ""),
        ("Knit 2 rounds.", ""),
    ],
)
def test_what_readers_tell_is_no_order(sentence: str, kind: str) -> None:
    """A comment that begins as an order stands under a mark: it may be a correction, or the page goes on."""
    assert kind_of(sentence, "comments") == kind


@pytest.mark.parametrize(
    "sentence",
    [
        "• Catch floats longer than 5 sts.",
        "The lace is a multiple of 8 sts plus 1 on each side of the center st.",
        "The Ladder repeats over 4 rows, the Rope over 8.",
        "Slip the markers as you come to them.",
    ],
)
def test_what_a_page_tells_before_the_knitting_is_no_instruction_for_its_stitches(sentence: str) -> None:
    """It names rows and stitches, and stood under a mark for that."""
    assert kind_of(sentence) == "notes of the designer"


def test_an_order_among_what_a_page_tells_stands_under_a_mark() -> None:
    """A note of the designer is knitted by nobody."""
    assert kind_of("The Ladder is worked over 4 rows, then repeat row 1.") == ""
    assert kind_of("Slip the first stitch of every row as you come to it.") == ""


@each_row(
    ("sentence", "order"),
    [
        ("If it comes out tighter (mine does!) go up a needle size for the patterned rounds and drop back down afterwards.", True),
        ("If they differ, change needle size at the division.", True),
        ("If your rows are too short, switch to a larger needle when you reach the yoke.", True),
        ("Use the smaller needle for all ribs.", True),
        ("Use a needle one size larger for binding off.", True),
        ("Ribs are worked on needles two sizes smaller.", True),
        ("Use larger needles for the stranded section to keep gauge.", True),
        ("Start with the smaller needle.", True),
        ("The yarn is used double.", True),
        ("Two strands are held together for the whole hat.", True),
        ("Carry the mohair together with the wool in the body only.", True),
        ("3.5 mm for ribs", False),
        ("If you have too many sts per 10 cm, change to a larger needle.", False),
        ("Go up or down a needle size if your swatch differs.", False),
        ("Change the needle size if necessary to obtain the gauge.", False),
    ],
)
def test_another_needle_or_yarn_for_a_part_of_the_work_is_an_order(sentence: str, order: bool) -> None:
    """It stands among the advice on the gauge and has to be thought of far below; a needle that gives the gauge has not."""
    assert (kind_of(sentence, "gauge") == "") is order


def test_how_a_shawl_grows_is_told_and_not_knitted() -> None:
    """What the page orders stays an order: a cast-on, a row, what she does."""
    for told in (
        "It grows by four sts on every RS row: one inside each edge and one on either side of the spine.",
        "Osier Bank starts with a garter tab and gains 4 sts every other row.",
    ):
        assert kind_of(told) == "notes of the designer"
    for order in (
        "It begins with a tab: cast on 3 sts and knit 6 rows.",
        "It grows by four sts; repeat rows 1 and 2 to keep it growing.",
        "The shawl begins with 3 sts, then knit every row.",
        "Increase 4 sts on every RS row.",
    ):
        assert kind_of(order) == ""


@pytest.mark.parametrize(
    ("row", "context", "kind"),
    [
        ("2-3 | 4-5 | 6-7 | 8-9 years", "", "sizes"),
        ("3-6, 6-12, 12-18 months", "", "sizes"),
        ("XS {S-M-L-XL-2XL}", "", "sizes"),
        ("Sizes XS S M L XL 2XL", "materials", "sizes"),
        ("US 6 [4 mm] circular needle, 32 inches or longer", "needles", "needles"),
        ("2 4 6 rows", "", ""),
        ("M1L / M1R = make 1 left / right", "abbreviations", "abbreviations"),
        ("C4B (Cable 4 Back) Slip 2 sts to cable needle and hold in back, k2, then k2 from cable needle.", "abbreviations", "abbreviations"),
        ("Body (worked once) Slip 2 sts to holder.", "abbreviations", ""),
        ("Work all decreases 2 sts in from the edge.", "", ""),
    ],
)
def test_sizes_and_needles_in_odd_print(row: str, context: str, kind: str) -> None:
    """Ages between strokes, letters in braces, "32 inches", which is no increase."""
    assert kind_of(row, context) == kind


def test_an_increase_between_two_stitches_is_asked_about_where_rows_say_inc() -> None:
    """As rows are read "inc" is worked into one: the list would be kept as a comment, and every such row be two too many."""
    told = "K., knit; inc., increase by picking up the thread lying before the next st. and knitting into the back of it."
    assert kind_of(told, "abbreviations") == ""
    assert kind_of("Inc = increase 1 st by knitting into front and back.", "abbreviations") == "abbreviations"
