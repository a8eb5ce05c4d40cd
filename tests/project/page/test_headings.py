from __future__ import annotations

import pytest

from stepper.project.page.headings import (
    fabric_part,
    heading_of,
    holds_below,
    inline_part,
    is_clutter,
    is_explained,
    is_told_below,
    is_whole_piece,
    is_within_piece,
    names_one_yarn,
    names_technique,
    shouted_part,
    shouts,
)
from stepper.project.page.pasted import take_apart
from tests.tables import each_row


@each_row(
    ("row", "kind", "name", "aside"),
    [
        ("BODY", "part", "body", ""),
        ("Sleeves (make 2)", "part", "sleeves", "make 2"),
        ("Left front", "part", "left front", ""),
        ("Button band:", "part", "button band", ""),
        ("3. Directions", "part", "directions", ""),
        ("To make up", "part", "to make up", ""),
        ("Yoke (colourwork gauge)", "part", "yoke", "colourwork gauge"),
        ("\u2702 Sleeves", "part", "sleeves", ""),
        ("Sleeves, both alike", "part", "sleeves", "both alike"),
        ("MITTENS \u2013 make 2", "part", "mittens", "make 2"),
        ("Neckband \u2013 smaller needles", "part", "neckband", "smaller needles"),
        ("MOTIF", "part", "motif", ""),
        ("The top", "part", "the top", ""),
        ("MATERIALS", "front", "materials", ""),
        ("7 comments", "front", "comments", ""),
        ("Leave a comment", "front", "comments", ""),
        ("Tension: 22 sts to 10 cm", "front", "tension", ""),
        ("SIZES: S (M, L)", "front", "sizes", ""),
        ("Chart trail", "chart", "trail", ""),
    ],
)
def test_a_heading_is_told_from_a_line(row: str, kind: str, name: str, aside: str) -> None:
    """Where a part begins decides which lines belong together."""
    heading = heading_of(row)
    assert heading is not None
    assert (heading.kind, heading.name, heading.aside) == (kind, name, aside)


@pytest.mark.parametrize(
    "row",
    [
        "Knit 2 rounds.",
        "Cast on 80 (84, 92) sts.",
        "Work in rib for 5 cm.",
        "Note: block the body.",
        "Chart trail, 2 times.",
        "*K2, p2; rep from * to end.",
        "The sleeve is long.",
        "Set lace panel thus:",
        "",
    ],
)
def test_an_ordinary_row_is_no_heading(row: str) -> None:
    """A line taken for a heading would not be knitted."""
    assert heading_of(row) is None


def test_a_part_may_stand_in_front_of_its_first_line() -> None:
    """Some pages print the heading and the first line in one row."""
    assert inline_part("BODY: Cast on 80 sts.") == "body"
    assert inline_part("Rnd 1: Knit.") == ""
    assert inline_part("Dec round: K1, k2tog, k to end.") == ""


@pytest.mark.parametrize(
    "row", ["Page 2 of 5", "12", "- 3 -", "© the maker", "https://example.invalid/a", "-----"]
)
def test_the_page_itself_is_told_from_the_pattern(row: str) -> None:
    """A page number is no stitch count."""
    assert is_clutter(row)
    assert not is_clutter("12 sts.")


def test_an_instruction_behind_a_copyright_is_no_clutter() -> None:
    """A PDF may put the foot of a page and the next line of the pattern into one row."""
    assert is_clutter("All rights reserved.")
    assert not is_clutter("All rights reserved. Cast on 96 sts.")


@pytest.mark.parametrize(
    ("row", "name"),
    [
        ("B R I M", "brim"),
        ("~ Body ~", "body"),
        ("== Yoke ==", "yoke"),
        ("Yoke.", "yoke"),
        ("YOKE, PHASE A", "yoke phase a"),
        ("Yoke - Part 2", "yoke part 2"),
        ("Step 1: Brim", "brim"),
        ("PART TWO - THE CUFF", "the cuff"),
        ("A) Back", "back"),
    ],
)
def test_a_heading_is_seen_in_whatever_dress(row: str, name: str) -> None:
    """Stars, rules, numbers and wide letters are the printer's."""
    heading = heading_of(row)
    assert heading is not None
    assert (heading.kind, heading.name) == ("part", name)


def test_the_size_that_some_lines_are_for_is_no_front_matter() -> None:
    """What follows would not be knitted."""
    assert heading_of("SIZES S AND M ONLY:") is None
    assert heading_of("needles") is None


def test_a_table_of_measurements_is_front_matter() -> None:
    """The sizes over its columns are no instruction."""
    heading = heading_of("Measurements 1 2 3 4 5")
    assert heading is not None
    assert heading.kind == "front"
    assert heading_of("Measurements 1 2 of the body are taken") is None


def test_a_part_in_plain_letters_begins_with_a_cast_on() -> None:
    """A label like "Crown:" may be the name of a round."""
    assert inline_part("Back: Using 3 mm needles cast on 98 sts.") == "back"
    assert inline_part("Crown: K2tog around.") == ""


def test_a_part_in_plain_letters_begins_where_its_sentence_says_so() -> None:
    """What is not read there would go on with the part before."""
    assert inline_part("Head: With the woolly yarn begin under the chin.") == "head"
    assert inline_part("Left sleeve: Starting at the shoulder, work as pictured.") == "left sleeve"
    assert inline_part("Crown: Begin decreases.") == ""
    assert inline_part("Crown: K2tog around, begin with a k st.") == ""


@pytest.mark.parametrize("row", ["EARFLAPS (make 2)", "Petals (make five)", "Buds (both alike)", "Buds (two of 'em)", "Buds (work 2 of them)"])
def test_what_is_made_several_times_is_a_part_whatever_it_is_called(row: str) -> None:
    """Taken for a remark in front of the pattern, it was knitted once."""
    heading = heading_of(row)
    assert heading is not None
    assert heading.kind == "part"
    assert heading.aside


def test_a_row_of_capitals_above_a_cast_on_is_a_part_whatever_it_is_called() -> None:
    """The stitches of the part before are off the needles by then."""
    heading = shouted_part("SECOND SQUARE", "With A, pick up and k 26 sts along the left edge.")
    assert heading is not None
    assert heading.name == "second square"
    assert shouted_part("SECOND SQUARE", "Next row: Knit.") is None
    assert shouted_part("REPEAT ROWS 1-2", "Cast on 20 sts.") is None
    assert shouted_part("Second square", "Cast on 20 sts.") is None


def test_a_piece_is_told_from_a_part_of_it() -> None:
    """A sleeve is knitted by itself, its head is not; a yoke is neither."""
    assert all(map(is_whole_piece, ("right mitten", "the back", "sleeves", "first sock")))
    assert all(map(is_within_piece, ("cuff", "thumb gusset", "sleeve head", "armholes", "heel flap")))
    assert not any(map(is_whole_piece, ("yoke", "cuff", "back neck")))
    assert not any(map(is_within_piece, ("yoke", "sleeve", "body")))

EXPLAINING = """PEBBLE SLOPE
DECREASE TIP (applies to the sleeves):
Decrease 1 stitch on each side of the marker thread as follows: Work until 3 stitches remain before the marker thread, \
knit 2 together, knit 2 (the marker thread sits between these stitches), slip 1 stitch as if to knit, knit 1, pass the \
slipped stitch over (= 2 stitches decreased).

SLEEVE:
Cast on 40 stitches on double pointed needles size 3 mm. Join in the round. Knit 4 rounds.
Decrease 2 stitches under the sleeve - read DECREASE TIP = 38 stitches.
"""


@pytest.mark.parametrize("row", ["DECREASE TIP:", "RAGLAN", "DECREASE TIP (applies to the sleeves):", "Toe decreases", "Increase tip:"])
def test_a_name_may_head_an_explanation(row: str) -> None:
    """In capitals, or one of a few in small letters."""
    assert names_technique(row)


@pytest.mark.parametrize("row", ["Knit 2 rounds.", "Sleeve", "DECREASE 8 STS:", "Row 1:"])
def test_what_counts_or_works_is_no_such_name(row: str) -> None:
    """It would be passed over as a heading."""
    assert not names_technique(row)


def test_the_label_of_the_line_is_the_name() -> None:
    """Another label means that the line was read as something else."""
    assert is_explained("DECREASE TIP round", "DECREASE TIP (applies to the sleeves):")
    assert not is_explained("Dec round", "DECREASE TIP:")


@pytest.mark.parametrize(("row", "heading"), [("ASSEMBLY:", True), ("SHORT OVERVIEW OF THE PIECE:", True), ("KNIT ALL ROWS:", False), ("SIZES M AND L:", False), ("ALL ROUNDS:", False), ("MC:", False)])
def test_capitals_with_a_colon_head_something_unless_they_order(row: str, *, heading: bool) -> None:
    """A row that says what to do, how often or for whom is no heading."""
    assert shouts(row) is heading


def test_an_explanation_becomes_one_line_before_the_garment() -> None:
    """Nothing is worked there, so it is no part of its own; the sleeve calls it."""
    page = take_apart(EXPLAINING)
    assert [part.defines for part in page.parts] == [True, False]
    assert [piece.text[:12] for piece in page.parts[0].pieces if piece.kind == "line"] == ["DECREASE TIP"]
    assert [piece.text for piece in page.pieces if piece.kind == "note"] == []


@pytest.mark.parametrize(
    ("row", "name"),
    [
        ("SECTION 7", "section 7"),
        ("SECTION 1: STOCKINETTE", "section 1: stockinette"),
        ("Section 3 (eyelets, color A)", "section 3"),
        ("SECTION 6 (stripes again)", "section 6"),
        ("Clue 2: Ripples", "clue 2: ripples"),
    ],
)
def test_a_section_by_its_number_is_a_part(row: str, name: str) -> None:
    """Pages of today cut a shawl into such sections, and lines call them by their numbers."""
    heading = heading_of(row)
    assert heading is not None
    assert (heading.kind, heading.name) == ("part", name)


@pytest.mark.parametrize(
    "row",
    [
        "Section 2: Knit 4 rows",
        "Section 3: Repeat",
        "section 2 is worked flat",
        "Section 2: work as for Section 1",
        "Section 4 (work twice)",
        "Step 2: Turn",
    ],
)
def test_a_section_that_says_what_is_worked_is_no_heading(row: str) -> None:
    """A row taken for a heading would be knitted nowhere."""
    heading = heading_of(row)
    assert heading is None or not heading.name.startswith(("section", "step"))


def test_a_heading_names_the_one_yarn_of_its_section() -> None:
    """With two of them the rows say which."""
    assert names_one_yarn("SECTION 5 (color B)")
    assert names_one_yarn("Section 3 (eyelets, color A)")
    assert names_one_yarn("Section 3 in MC")
    assert not names_one_yarn("SECTION 2 (stripes, colors A & B)")
    assert not names_one_yarn("SECTION 2")


def test_a_part_is_called_by_its_fabric() -> None:
    """But not where the heading is all that names the fabric of the rows below it."""
    for row in ("Colorwork", "Second Slip Stitch Section", "GARTER RIDGES", "Eyelet Band"):
        assert fabric_part(row, "Row 1: Knit.") is not None
    assert fabric_part("Garter Stitch", "Work 10 rows.") is None
    assert fabric_part("Stockinette", "With CC, work for 4 in.") is None
    assert fabric_part("Lace and lemon cake", "Row 1: Knit.") is None
    assert fabric_part("garter ridge", "Row 1: Knit.") is None


def test_a_chart_may_be_worked_from_the_rows_below() -> None:
    """Not where it says how often, or which of its later rows: those are told nowhere else."""
    assert is_told_below("Work Rows 1-8 of Lace Chart, or follow the written instructions below:")
    assert is_told_below("Work Chart A (or written instructions below)")
    assert not is_told_below("Work Rows 1-8 of Lace Chart 3 times, or follow the written instructions below:")
    assert not is_told_below("Work Rows 5-8 of Lace Chart or the written instructions below")
    assert not is_told_below("Work Rows 1-8 of Lace Chart.")


def test_thanks_and_credits_are_the_page_s_own() -> None:
    """No instruction may hide in them."""
    for row in ("Tech edited by a patient friend.", "Thank you for supporting a small designer!", "Photos: the author"):
        assert is_clutter(row)
    for row in ("Thank you for knitting 4 rows.", "Photo: shows row 3. Knit 2 rows.", "Test knit 4 rows first."):
        assert not is_clutter(row)


@pytest.mark.parametrize("row", ["FOR MORE LEAFLETS ASK AT THE COUNTER Page 3 of 3", "harbour knits \u2013 page four of five \u2013 all rights reserved", "harbour-knits | v1.2", "No. 603", "Design no. 214-7", "v1.2", "Made with love? Tag us!", "Tag your hat #harbourhat", "MAUDE QUILL knits and keeps hens in a town by the sea."])
def test_what_stands_at_the_foot_of_a_page_is_of_the_page(row: str) -> None:
    """It is no sentence of the pattern."""
    assert is_clutter(row)


@pytest.mark.parametrize("row", ["No. 9", "Version 2", "Knit page 1 of 2", "Repeat rows 1 to 4 of page 2 of 3", "Tag the 4th stitch", "RIB ROW lives 4 sts", "BACK FRONT is a mirror of it", "Cast off page 2 of 2"])
def test_what_looks_like_it_and_orders_is_not(row: str) -> None:
    """In doubt it is asked about."""
    assert not is_clutter(row)


@pytest.mark.parametrize(
    "row",
    ["--- YOKE ---", "////// YOKE", "/ Yoke /", "[YOKE]", "YOKE ------", "::: Yoke :::", "\\\\ YOKE", "++ Yoke ++", "- YOKE -", "<< Yoke >>"],
)
def test_a_heading_is_known_in_any_decoration(row: str) -> None:
    """A part that is not seen to begin loses its name, and its measures run from the part above."""
    heading = heading_of(row)
    assert heading is not None
    assert (heading.kind, heading.name) == ("part", "yoke")


@pytest.mark.parametrize("row", ["- Sleeves, as for body", "[k2, p2] to end", "[160 sts]", "SLEEVES [both]"])
def test_signs_about_other_rows_are_no_decoration(row: str) -> None:
    """A bracket that closes another word's belongs to it."""
    heading = heading_of(row)
    assert heading is None or (heading.name, heading.aside) == ("sleeves", "both")


@pytest.mark.parametrize(
    ("row", "what"),
    [
        ("BRIM (with A)", "A"),
        ("YOKE - MC", "MC"),
        ("Body in colour B", "colour B"),
        ("Cuff (3.5 mm)", "3.5 mm"),
        ("Collar (smaller needles)", "smaller"),
        ("CROWN (size L only)", "L only"),
        ("Front (sizes S and M)", "sizes S and M"),
        ("Men's version", "Men's"),
        ("BODY (all sizes)", ""),
        ("Sleeves (make 2)", ""),
        ("CROWN: Colour A", "Colour A"),
        ("Section A", ""),
        ("Body (worked flat)", ""),
        ("The lace version", ""),
    ],
)
def test_a_heading_may_say_what_holds_for_the_lines_below(row: str, what: str) -> None:
    """In a comment it would be passed over, and the part be knitted in another yarn or for every size."""
    assert holds_below(row) == what


def test_a_heading_that_holds_for_its_lines_is_asked_about() -> None:
    """Unless the lines say it themselves."""
    page = "Cap\n\nBRIM (with A)\n{}Cast on 80 sts. Join in the round.\nKnit 4 rounds.\n"
    asked = [piece.text for piece in take_apart(page.format("")).pieces if piece.kind == "note"]
    assert asked == ["BRIM (with A)"]
    assert not [piece for piece in take_apart(page.format("With A, ")).pieces if piece.kind == "note"]
