from __future__ import annotations

import textwrap

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from stepper.project.page.file_text import write_file
from stepper.project.page.front_matter import KINDS
from stepper.project.page.front_values import find_yarns
from stepper.project.page.pasted import take_apart
from stepper.project.page.quoting import writable
from stepper.project.reader import read_project
from tests.project.page_kinds import FOLDER, Table, tables
from tests.tables import each_row

TABLES = tables()


def bare(text: str) -> str:
    """Take the white space out of a text."""
    return "".join(writable(text).split())


def sorted_signs(text: str) -> str:
    """Return the kind of the piece that each sign of a page stands in, as text to compare: a word a sign.

    The comma at which a row is cut in two ("With CC, pick up and knit 80 sts") belongs to the first of them.
    """
    kinds: list[str] = []
    whole = bare(text)
    for piece in take_apart(text).pieces:
        words = bare(piece.text)
        cut = whole[len(kinds) :].startswith((f",{words}", f";{words}"))
        kinds += kinds[-1:] * cut + [piece.front or piece.kind] * len(words)
    return "\n".join(kinds)


def misplaced(table: Table) -> list[str]:
    """List the sentences of a page that do not stand where a reader puts them."""
    kinds = sorted_signs(table.text).split("\n")
    wrong = []
    at = 0
    for kind, words in table.words:
        found = set(kinds[at : at + len(bare(words))])
        at += len(bare(words))
        allowed = {"work": {"line", "note"}, "look": {"note"}}.get(kind, {kind})
        if not found <= allowed:
            wrong.append(f"{words}: {kind}, not {', '.join(sorted(found))}")
    return wrong


def test_the_tables_are_of_the_pages() -> None:
    """A table of other words would show nothing."""
    for table in TABLES:
        page = (FOLDER.parent / f"{table.name}.txt").read_text(encoding="utf-8")
        assert [row.split() for row in page.splitlines()] == [row.split() for row in table.text.splitlines()]
    assert {path.name for path in FOLDER.glob("*.txt")} == {path.name for path in FOLDER.parent.glob("*.txt")}


@each_row("table", TABLES)
def test_every_sentence_of_a_page_stands_where_a_reader_puts_it(table: Table) -> None:
    """In a line, under a mark, or in front matter of a kind that can be named: nothing is passed over."""
    assert {kind for kind, _ in table.words} <= {*KINDS, "work", "look"}
    assert misplaced(table) == []


@each_row("table", TABLES)
def test_the_sizes_and_yarns_are_those_of_the_page(table: Table) -> None:
    """A table of measurements names no yarn, and every list of sizes as many as it has."""
    pasted = take_apart(table.text)
    sizes = table.facts["sizes"].split(", ")
    if len(sizes) == 1 and sizes[0].isdigit():
        assert (len(pasted.sizes), pasted.sizes_found) == (int(sizes[0]), False)
    else:
        assert list(pasted.sizes) == sizes
    yarns = [yarn.key for yarn in find_yarns(pasted.yarn_rows)]
    assert yarns == [key for key in table.facts["yarns"].split(", ") if not key.endswith("?")]


INSTRUCTIONS = [words for table in TABLES for kind, words in table.words if kind in ("work", "look")]
INSTRUCTIONS = [
    words
    for words in INSTRUCTIONS
    if words.endswith((".", ":")) and words[:1].isalnum() and words[:1] == words[:1].upper()
]
INSTRUCTIONS += [
    "Knit.", "Turn.", "P to end.", "Dec 1 st at each end of next row.", "Work even for 10 cm.", "Slip 5 sts to a holder.",
    "Rnds 3, 5 and 7: As rnd 1.", "With CC, pick up and knit 80 sts around the neck.", "Continue as set until 24 sts remain.",
    "The sleeves are decreased by 2 sts on every 6th round.", "112 sts.", "Break yarn and place sts on hold.",
    "Join MC and purl 1 round.", "Next row (WS): P3, *k2, p2; rep from * to last 3 sts, p3.", "2nd row: As 1st row.",
    "Repeat from * to end of round.", "K2tog across.", "Inc 8 sts evenly across the last row.", "Place marker after 20 sts.",
    "Wrap the next st and turn.", "1st rnd: *P3. C4B. K6. Rep from * around.", "BO 4 sts at beg of next 2 rows.",
    "All even rnds: Knit.", "Work rows 1-4 of the chart.", "Cut yarn.", "Graft the toe.", "Change to smaller needles.",
]  # fmt: skip
_PROSE_IN_WORK = (
    "Try it",
    "Turn the corner",
    "Sing while",
    "Count them",
    "The thumb",
    "Think",
    "Press each",
    "Go on",
    "All pieces",
    "Ditto",
)
INSTRUCTIONS = [words for words in INSTRUCTIONS if not words.startswith(_PROSE_IN_WORK)]
FRONT = [
    words for table in TABLES for kind, words in table.words if kind not in ("work", "look", "heading", "chart", "title")
]  # fmt: skip
HEADINGS = [words for table in TABLES for kind, words in table.words if kind == "heading"]


@each_row(
    ("told", "row", "asked"),
    [
        ("Use DPNs for the crown.", "Change to dpns.", False),
        ("Use DPNs for the crown.", "Shape the crown:", True),
        ("For size L follow the length of M.", "Knit 8 rounds.", True),
    ],
)
def test_what_the_front_orders_for_a_part_or_a_size_is_asked_about(told: str, row: str, asked: bool) -> None:
    """Unless a row says it again."""
    page = f"Hat\n\nSizes: S (M, L)\n\nNotes\n{told}\n\nBODY\nCast on 80 sts. Join in the round.\n{row}\nKnit 2 rounds.\n"
    assert (told in [piece.text for piece in take_apart(page).pieces if piece.kind == "note"]) == asked


def test_what_is_only_offered_behind_the_knitting_is_not_worked() -> None:
    """It tells of another piece, unless it has rows, which may be of this one."""
    page = "Hat\n\nBODY\nCast on 80 sts. Join in the round.\nKnit 2 rounds.\nBind off.\n\nVariations\n{}\n\u2022 Cast on 96 sts and work 3 bands.\n\nKnit 2 rounds.\n\nFINISHING\nWeave in ends.\n"
    kinds = {piece.text: piece.kind for piece in take_apart(page.format("One colour only: ignore B.")).pieces}
    assert [text for text, kind in kinds.items() if kind == "comment" and "9" in text] == ["\u2022 Cast on 96 sts and work 3 bands."]
    assert kinds["Knit 2 rounds."] == "line"
    assert kinds["Weave in ends."] == "line"
    assert "line" in [piece.kind for piece in take_apart(page.format("Rnd 1: Purl.")).pieces if piece.text == "Rnd 1: Purl."]


@each_row(
    ("told", "asked"),
    [
        ("NOTE: Body and sleeves are worked in rounds to underarms, then placed on one needle and worked back and forth in rows.", False),
        ("Carry the yarn up the side.", False),
        ("NOTE: All WS rows are purled.", True),
        ("Note: the first stitch of every row is slipped.", True),
        ("All armhole and neck decreases are made 2 sts in from the edge.", True),
        ("Yarn is held double throughout.", True),
    ],
)
def test_what_would_only_be_told_among_the_lines_is_no_question_in_front(told: str, asked: bool) -> None:
    """A rule is one: nothing below says it again."""
    page = f"Hat\n\nNOTES\n{told}\n\nBODY\nCast on 80 sts. Join in the round.\nKnit 2 rounds.\n"
    assert (told in [piece.text for piece in take_apart(page).pieces if piece.kind == "note"]) == asked


@st.composite
def pages(draw: st.DrawFn) -> tuple[str, list[str]]:
    """Draw a page: sentences of all pages shuffled, rows broken anywhere, headings lost; and its instructions."""
    said: list[str] = []
    rows: list[str] = []
    for _ in range(draw(st.integers(1, 14))):
        which = draw(st.sampled_from(["front", "front", "work", "work", "work", "heading", "blank"]))
        if which == "work":
            words = draw(st.sampled_from(INSTRUCTIONS))
            said.append(words)
            alone = words[0].isdigit() and rows and rows[-1] in FRONT  # a count behind a gauge is of the gauge
            if rows and rows[-1].endswith(".") and not alone and draw(st.integers(0, 3)) == 0:
                rows[-1] += f" {words}"
                continue
            width = draw(st.sampled_from([0, 0, 24, 40]))
            rows += (
                textwrap.wrap(words, width, break_long_words=False, break_on_hyphens=False)
                if width
                else [words]
            )
        else:
            choices = {"front": FRONT, "heading": HEADINGS, "blank": [""]}[which]
            rows.append(draw(st.sampled_from(choices)))
    return "\n".join(rows) + "\n", said


@given(pages())
@settings(max_examples=150, deadline=None)
def test_no_instruction_is_ever_passed_over(page: tuple[str, list[str]]) -> None:
    """However a page is shuffled, broken and torn, an instruction is a line or stands under a mark."""
    text, said = page
    kinds = sorted_signs(text).split("\n")
    whole = bare(text)
    at = 0
    for words in said:
        at = whole.index(bare(words), at)
        found = set(kinds[at : at + len(bare(words))])
        assert found <= {"line", "note"}, f"{words}: {', '.join(sorted(found))}"
        at += len(bare(words))


def test_what_follows_a_row_cut_at_its_comma_stands_where_it_did() -> None:
    """Counted sign by sign, a comma that falls away once made a line of the heading behind it."""
    text = "You need two balls of wool, 100 g each. With CC, pick up and knit 80 sts.\nBreak yarn.\n\nFINISHING\n"
    kinds, whole = sorted_signs(text).split("\n"), bare(text)
    assert len(kinds) == len(whole)
    assert set(kinds[whole.index("WithCC") : whole.index("FINISHING")]) == {"line"}
    assert set(kinds[whole.index("FINISHING") :]) == {"heading"}


@pytest.mark.parametrize(
    "heading",
    [
        "Join sleeves and body:",
        "WORK EVEN TO ARMHOLE",
        "Second sleeve the same:",
        "PURL BACK",
        "Sleeves (make 2)",
        "SLEEVES (worked alike)",
        "Close the toe:",
    ],
)
def test_a_heading_that_tells_to_do_something_stands_under_a_mark(heading: str) -> None:
    """The name of a section is not knitted."""
    pieces = take_apart(f"Jumper\n\n{heading}\nCast on 40 sts.\nKnit 2 rows.\n").pieces
    (piece,) = [piece for piece in pieces if piece.text == heading]
    assert piece.kind in ("line", "note")


@pytest.mark.parametrize("heading", ["IF YOU WANT A LACE EDGE", "POCKET (OPTIONAL)"])
def test_what_is_knitted_by_choice_is_asked_about(heading: str) -> None:
    """Its rows look like all others, and would be worked as if the page ordered them."""
    edge = "Row 1: K1, *yo, k2tog; rep from * to last st, k1.\nKnit 2 rows.\n"
    pieces = take_apart(f"Scarf\n\nCast on 20 sts.\nKnit 4 rows.\n\n{heading}\n{edge}\nBODY\nKnit 9 rows.\n").pieces
    (piece,) = [piece for piece in pieces if piece.text == heading]
    assert (piece.kind, "only by choice" in piece.why) == ("note", True)
    assert [piece.kind for piece in pieces if piece.text == "BODY"] == ["comment"]


def test_a_part_begins_without_a_single_line_that_is_read() -> None:
    """Whole garments were once comments, because the wording knew none of their lines."""
    pasted = take_apart("Gannet\n\nBODY\nLoop 180 sts onto the needle.\nRnds of ribs, 18 of them.\n")
    assert [part.name for part in pasted.parts] == ["body"]
    assert [piece.kind for piece in pasted.parts[0].pieces] == ["comment", "note", "note"]


def test_a_part_begins_with_its_name_though_its_first_sentence_is_not_read() -> None:
    """ "Head: With the woolly yarn begin under the chin": its rows are none of the body's."""
    text = "Body: With A, cast on 20 sts.\nKnit 4 rows.\nBind off.\nHead: With the woolly yarn begin at the chin.\n"
    parts = take_apart(text + "Cast on 12 sts.\nKnit 6 rows.\nBind off.").parts
    assert [part.name for part in parts] == ["body", "head"]


@pytest.mark.parametrize("intro", ["set lace\npanel thus:\u2014", "set lace panel\nas follows:-"])
def test_the_end_of_a_sentence_on_a_row_of_its_own_heads_no_part(intro: str) -> None:
    """What stood below such a "heading" was left out of "work as for left front": the right one was only cast on."""
    rows = "1st row.\u2014K. 20, P. 4.\n2nd row.\u2014K. 4, P. to end.\nRep. these 2 rows 3 times.\nCast off."
    page = f"Cardigan\n\nLEFT FRONT\nCast on 24 sts.\nK. 4 rows. Change to 3 mm needles and {intro}\n{rows}\n\nRIGHT FRONT\nWork as for left front."
    pasted = take_apart(page)
    assert [part.name for part in pasted.parts] == ["left front", "right front"]
    assert [piece.kind for piece in pasted.parts[0].pieces if piece.kind == "note"] == []


def test_a_part_of_which_nothing_is_read_stays_apart_from_the_one_above() -> None:
    """A collar whose rows are not read was knitted once in each of two sleeves."""
    sleeves = "SLEEVES (make 2)\nCO 60 sts. Join in the round. Knit 20 rnds.\nBind off.\n\n"
    page = f"Pullover\n\n{sleeves}COLLAR\nLoop 80 sts onto a spare needle round the neck.\nTwirl 6 rnds.\n\nFINISHING\nWeave in ends."
    assert [part.name for part in take_apart(page).parts] == ["sleeves", "collar"]


def test_a_part_may_begin_in_prose_before_its_heading() -> None:
    """What is cast on in the introduction is knitted first."""
    pasted = take_apart("Blanket\nIt is soft.\nWith A, cast on 40 sts.\n\nBODY\nKnit 2 rows.\n")
    assert [part.name for part in pasted.parts] == ["beginning", "body"]


def test_a_swatch_is_not_knitted() -> None:
    """It stands under a mark among the gauge, and the pattern begins with its own cast-on."""
    pasted = take_apart(
        "Cap\nGAUGE\nCast on 30 sts and knit 40 rows for a swatch.\n\nCO 80 sts.\nKnit 2 rows.\n"
    )
    assert [piece.kind for piece in pasted.front] == ["comment", "comment", "note"]
    assert pasted.parts[0].pieces[0].text == "CO 80 sts."


def test_a_page_that_begins_in_the_middle_of_a_part_is_read() -> None:
    """The second sheet of a pattern has no heading above its first rows; what is cast on comes further down."""
    pasted = take_apart(
        "58 sts.\n\nWork 10 rows, ending with a WS row.\nCast off.\n\nCOLLAR\nCast on 40 sts.\n"
    )
    assert [piece.kind for piece in pasted.parts[0].pieces] == ["line", "line"]
    assert [part.name for part in pasted.parts] == ["beginning", "collar"]


def test_a_count_below_a_gauge_is_none_of_it() -> None:
    """The gauge ends in no full stop, and the count begins with no capital."""
    pieces = take_apart("Cap\nGauge: 18 sts and 24 rows = 10 cm\n112 sts.\n").pieces
    assert [(piece.kind, piece.front) for piece in pieces[1:]] == [("comment", "gauge"), ("note", "")]


def test_a_page_of_prose_is_no_hundred_marks() -> None:
    """Of the front matter of all pages at most one row in twelve stands under a mark."""
    fronts = [piece for table in TABLES for piece in take_apart(table.text).front]
    assert sum(piece.kind == "note" for piece in fronts) * 12 <= len(fronts)


def test_a_shaping_goes_on_with_its_piece() -> None:
    """Below "Shape Armholes" the fabric goes on, and lengths are still measured from where the piece began."""
    page = """\
BACK
With 4 mm needles, cast on 41 sts. Work flat.
Work 20 rows in st st.
Shape Armholes
Cast off 3 sts at beg of next 2 rows. [35 sts]
Cont straight until armholes measure 5 cm, ending with a WS row.
Shape Shoulders Cast off 6 sts at beg of next 2 rows; 23 sts.
"""
    pasted = take_apart(page)
    assert [part.name for part in pasted.parts] == ["back"]
    assert [piece.text for piece in pasted.pieces if piece.kind == "note"] == []


@pytest.mark.parametrize(
    "row",
    [
        "Crown shaping",
        "THUMB SHAPING:",
        "Decrease rounds:",
        "Sleeve increases",
        "Begin crown decrease rounds:",
        "Back neck short rows",
        "Second colour band:",
    ],
)
def test_a_row_that_names_a_shaping_is_a_heading(row: str) -> None:
    """She has nothing to put into words there."""
    page = take_apart(f"Hat\n\nCast on 40 sts.\nKnit 4 rounds.\n{row}\nKnit 2 rounds.\n")
    assert {piece.kind for piece in page.pieces if row in piece.text} <= {"comment", "label"}


@pytest.mark.parametrize(
    "row", ["Repeat decreases", "Stop increases.", "Continue shaping", "Omit second increases", "Repeat short rows"]
)
def test_a_row_that_tells_what_to_do_with_a_shaping_is_no_heading(row: str) -> None:
    """It would be passed over in silence."""
    page = take_apart(f"Hat\n\nCast on 40 sts.\nKnit 4 rounds.\n{row}\nKnit 2 rounds.\n")
    assert {piece.kind for piece in page.pieces if row in piece.text} == {"note"}


def test_sizes_are_sent_on_to_a_heading_of_the_page() -> None:
    """The lines between are for the others, and all come together at the heading."""
    page = """\
Sizes: S [M] {L}
Materials
Wool, needles 4 mm

YOKE
Cast on 40 [44] {48} sts. Join in the round.
Knit 2 rounds.
Sizes S and M: proceed to "Second colour band".
Knit 4 rounds.
Second colour band
Knit 1 round. 40 [44] {48} sts.
"""
    pasted = take_apart(page)
    assert pasted.sizes == ("S", "M", "L")
    assert [piece.text for piece in pasted.pieces if piece.kind == "note"] == []
    assert "Second colour band:" in write_file(pasted).text


def test_a_chart_told_in_words_is_not_worked_twice() -> None:
    """Its rounds are worked where the chart is called; told beside it they stand under a mark."""
    page = """\
YOKE
Cast on 40 sts. Join in the round.
Work chart B, rnds 1-2.
Here is Chart B in words:
Rnd 1: *3 MC, 1 CC; rep from * around.
Rnd 2: *1 MC, 3 CC; rep from * around.
Next rnd: *K2, k2tog; rep from * around. 30 sts.
"""
    notes = [piece.text for piece in take_apart(page).pieces if piece.kind == "note"]
    assert [text.split(":")[0] for text in notes] == ["Here is Chart B in words", "Rnd 1", "Rnd 2"]


def test_a_stitch_pattern_in_front_of_the_garment_is_a_definition() -> None:
    """Most pages print it before the first cast-on; what is worked afterwards calls it by name."""
    page = """\
Lantern Cowl

Ladder Lace (multiple of 8 sts)
Rnd 1: *K6, yo, k2tog; rep from * to end.
Rnd 2: Knit.
Rep rnds 1-2 for pattern.

Basket Stitch
1st rnd: Knit.
2nd rnd: *P4, k4; rep from * to end.

Cast on 80 sts. Join in the round.
Work rnds 1-2 of Ladder Lace 5 times.
"""
    pasted = take_apart(page)
    assert [part.name for part in pasted.parts] == ["ladder lace", "basket stitch", "beginning"]
    assert {piece.kind for part in pasted.parts for piece in part.pieces} == {"line"}
    assert pasted.parts[2].pieces[0].text == "Cast on 80 sts. Join in the round."


def test_a_pattern_heading_that_orders_stands_under_a_mark() -> None:
    """It cannot be the name of a line, and a file with it would not be read at all."""
    page = "Cable panel (over then 10 sts):\nRow 1 (RS): P2, k6, p2.\nRow 2: K2, p6, k2.\n"
    written = write_file(take_apart(page))
    assert [each.text for each in take_apart(page).pieces if each.kind == "note"] == ["Cable panel (over then 10 sts):"]
    assert not any("instructs" in problem.message for problem in read_project(written.text).problems)


def test_a_neck_divides_its_piece() -> None:
    """Lengths go on from where the piece began, so "Divide for neck:" begins no piece of its own."""
    pasted = take_apart("FRONT\nCast on 40 sts. Work flat.\nKnit 4 rows.\n\nDivide for neck:\nNext row: K20, turn.\n")
    assert [part.name for part in pasted.parts] == ["front"]


def test_a_row_that_names_sizes_joins_no_line() -> None:
    """Joined with the next row it would be for that row alone, and the rest be knitted in every size."""
    text = (
        "Sizes: S (M, L)\n\nHAT\nCast on 60 (66, 72) sts. Join in the round.\nSizes M, L only:\nKnit 2 rounds.\n"
        "Purl 1 round.\nAll sizes:\nKnit 3 rounds.\n"
    )
    lines = [piece.text for piece in take_apart(text).pieces if piece.kind == "line"]
    assert lines[-5:] == ["Sizes M, L only:", "Knit 2 rounds.", "Purl 1 round.", "All sizes:", "Knit 3 rounds."]


def test_a_pattern_whose_first_row_is_not_read_is_one_thing_to_settle() -> None:
    """Its heading is a note then, and no second problem."""
    page = "Lantern Cowl\nGauge: 20 sts and 28 rows = 10 cm\n\nLadder Lace (multiple of 8 sts)\nRnd 1: *K6, twiddle; rep from * to end.\n\nCast on 80 sts.\n"
    written = write_file(take_apart(page)).text
    assert written.count("is not understood") == 1
    assert not any("Ladder" in problem.message for problem in read_project(written).problems)


@pytest.mark.parametrize("head", ["MITTS (make two alike)", "========== MITTS (make two) ==========", "MITTS - make two"])
def test_a_piece_made_twice_has_its_parts(head: str) -> None:
    """The parts below its heading are those of the pair: else only the heading is made again, and she knits one mitt."""
    page = f"{head}\nCUFF\nCast on 40 sts. Join in the round.\nKnit 4 rounds.\n\nHAND\nKnit 4 rounds. Bind off.\n"
    found = take_apart(f"Plain Set\n\nCOWL\nCast on 80 sts. Bind off.\n\n{page}")
    assert [part.name for part in found.parts] == ["cowl", "mitts", "mitts, cuff", "mitts, hand"]
    assert not [piece.text for piece in found.pieces if piece.kind == "note"]


def test_how_stitches_are_picked_up_is_told_where_they_are() -> None:
    """A row that casts on and knits before it would tell it all with the cast-on."""
    row = "Cast on 3 sts. Knit 6 rows. Do not turn; pick up and knit 3 along the side, then 3 from the cast-on edge. 9 sts."
    lines = [piece.text for piece in take_apart(f"Shawl\n\nTAB\n{row}\nKnit 2 rows.\n").pieces if piece.kind == "line"]
    assert lines[0] == "Cast on 3 sts."
    assert lines[-2].startswith("Do not turn; pick up")


def test_an_aside_among_the_rows_of_a_pattern_does_not_end_it() -> None:
    """The rows behind it would be lost to the pattern, and each be asked about as text in front of the knitting."""
    page = (
        "Cowl\n\nTRELLIS (multiple of 4, in the round)\nRnd 1: (K1, p3) around.\nRnd 2: K.\n{i.e. you look at the back of it}\n"
        "Rnd 3: (K3, p1) around.\nRnd 4: K.\n\nCOWL\nCast on 80 sts. Join in the round.\nKnit 4 rounds.\n"
    )
    kinds = {piece.text: piece.kind for piece in take_apart(page).pieces}
    assert kinds["{i.e. you look at the back of it}"] == "comment"
    assert kinds["Rnd 3: (K3, p1) around."] == kinds["Rnd 4: K."] == "line"


def test_a_heading_of_two_shapings_heads_what_follows() -> None:
    """It says what is shaped below and orders nothing."""
    page = "Vest\n\nSizes: S (M)\n\nBACK\nCast on 90 (96) sts.\nKnit 8 rows.\nShape armholes and neck\nBind off 6 (7) sts at beg of next 2 rows.\n"
    kinds = {piece.text: piece.kind for piece in take_apart(page).pieces}
    assert kinds["Shape armholes and neck"] == "label"
    assert kinds["Bind off 6 (7) sts at beg of next 2 rows."] == "line"


def test_comments_of_readers_are_no_knitting() -> None:
    """What they did otherwise is not worked, and what looks like an order among it stands under a mark."""
    page = (
        "HAT\nCast on 60 sts. Join in the round.\nKnit 4 rounds.\nBind off.\n\nComments (2)\n\nAnja: I did 10 rounds. So warm!\n\n"
        "Bo says: Where do I start?\n\nCas: Cast on 70 sts for a big head.\n\nPia: Mine has 64 stitches.\n"
    )
    pieces = take_apart(page).pieces
    assert [piece.text for piece in pieces if piece.kind == "note"] == ["Cas: Cast on 70 sts for a big head."]
    assert {piece.front for piece in pieces[-5:] if piece.kind == "comment"} == {"comments"}
    assert [piece.text for piece in pieces if piece.kind == "line"][-1] == "Bind off."


def test_comments_before_the_knitting_are_the_designers() -> None:
    """What stands below them may be the pattern."""
    page = "Warm Hat\n\nComments\nThis is a plain hat.\n\nCast on 60 sts. Join in the round.\nKnit 4 rounds.\n"
    assert [piece.kind for piece in take_apart(page).pieces][-2:] == ["line", "line"]


def test_what_a_leaflet_says_of_itself_is_kept_and_asked_about_by_nobody() -> None:
    """Printed behind the making up, it would be read out with the last round, or stand under a mark."""
    page = "Hat\nBRIM\nCast on 40 sts. Join in the round.\nKnit 3 rounds.\nBind off.\n{}\n"
    (last,) = take_apart(page.format("Printed in England. Have you a question about this pattern?")).pieces[-1:]
    assert (last.kind, last.front) == ("comment", "copyright")
    (last,) = take_apart(page.format("Printed in England. Then repeat from the cast-on for the second one.")).pieces[-1:]
    assert last.kind == "note"


def test_rows_told_below_a_chart_are_worked_once() -> None:
    """The line above them chooses between the drawing and the rows; without rows below it is left to the knitter."""
    line = "Work Rows 1-2 of Lace Chart, or follow the written instructions below:"
    page = "Shawl\nCast on 19 sts.\n" + line + "\n{}"
    assert sorted_signs(page.format("Row 1 (RS): Knit.\nRow 2: Purl.")).split("\n")[-1] == "line"
    pieces = take_apart(page.format("Row 1 (RS): Knit.\nRow 2: Purl.")).pieces
    assert next(piece.kind for piece in pieces if piece.text == line) == "comment"
    alone = take_apart(page.format("Knit 2 rows.")).pieces
    assert next(piece.kind for piece in alone if line.startswith(piece.text[:20])) == "note"


def test_strands_held_together_and_a_needle_for_a_part_are_asked_about_where_no_row_says_them() -> None:
    """Gauge and yarn needed hang on the strands; a needle of the list is worked with only where a row takes it up."""
    listed = "Pine hat\n\nMaterials\n\n200 g of fern, held double.\n\n3 mm needles for the ribbing.\n\n4 mm needles.\n\n{}Rnd 1: *K2, p2; rep from * to end.\n"
    marks = [piece.text for piece in take_apart(listed.format("Cast on 80 sts.\n")).pieces if piece.kind == "note"]
    assert marks == ["200 g of fern, held double.", "3 mm needles for the ribbing."]
    told = take_apart(listed.format("With 3 mm needles, cast on 80 sts.\n")).pieces
    assert [piece.text for piece in told if piece.kind == "note"] == ["200 g of fern, held double."]


def test_a_needle_that_a_list_gives_to_a_part_is_taken_by_its_own_size_or_word() -> None:
    """ "With the circular" under "Neckband" was worked on the needle of the body, though the list gives the edgings another."""
    page = (
        "Fern pullover\n\nMaterials\n\n5 mm needles for the body.\n\n4 mm needles for the edgings.\n\nBODY\n"
        "With 5 mm needles, cast on 40 sts.\nKnit 9 rounds.\nBind off.\n\nNECKBAND\nWith {}, pick up and knit 30 sts.\nBind off.\n"
    )
    left = {
        words: [piece.text for piece in take_apart(page.format(words)).pieces if piece.kind == "note"]
        for words in ("the circular", "the 4mm circular", "smaller needles")
    }
    edging = ["4 mm needles for the edgings."]
    assert left == {"the circular": edging, "the 4mm circular": [], "smaller needles": []}


@pytest.mark.parametrize(
    ("heads", "asked"),
    [("MITTEN", True), ("MITTEN (make 2)", False), ("MITTENS", False), ("LEFT MITTEN", False)],
)
def test_a_pair_that_is_alike_is_asked_about_where_one_is_printed(heads: str, asked: bool) -> None:
    """The second mitten was never knitted, and nothing said so. Two in the heading are told of by the plan."""
    page = "Fern pair\n\nMaterials\n4 mm needles\n\nBoth mittens are alike.\n\n{}\nCast on 40 sts.\nKnit 9 rows.\nBind off.\n"
    text = page.format(heads) + (page.format("RIGHT MITTEN").split("alike.")[1] if heads.startswith("LEFT") else "")
    notes = [piece for piece in take_apart(text).pieces if piece.kind == "note"]
    assert [piece.text for piece in notes] == ["Both mittens are alike."] * asked
    assert all("the second has to be knitted" in piece.why for piece in notes)


def test_another_way_in_front_of_the_pattern_is_asked_about() -> None:
    """Its question alone is a remark; what it has knitted instead stands in the next sentence."""
    page = take_apart("Pine vest\n\nNo buttons? Then just rib.\n\nNo marker? A loop of yarn will do.\n\nCast on 80 sts.\nKnit 2 rows.\n")
    assert [piece.text for piece in page.pieces if piece.kind == "note"] == ["No buttons? Then just rib."]
