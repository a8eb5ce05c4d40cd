from __future__ import annotations

import pytest

from stepper.project.page.orders import casts_on, has_row_head, holds_instruction, is_fragment, is_order
from tests.tables import each_row
from tests.waiting import processor_s, usual_s

ORDERS = [
    "2 k back.",
    "3 RS: k to end",
    "Row 1 (RS): Knit.",
    "1st rnd: *P3.",
    "2nd and every foll alt row: P.",
    "Next row K2, p2",
    "Dec rnd: K1, k2tog",
    "Cast on 96 sts.",
    "With MC, loosely cast on 96 (104) sts.",
    "Using 3.25 mm needles cast on 98 sts",
    "CO 64.",
    "Work even for 10 cm.",
    "Knit.",
    "Join in the round.",
    "Bind off loosely.",
    "112 sts.",
    "Dec 1 st at each end of every row.",
    "Slip all edge stitches.",
    "The yoke is decreased by 8 sts every other round.",
    "Pick up and knit 12 sts along the edge.",
    "At the same time, inc 1 st each end.",
    "Place marker.",
    "Sew side seams.",
    "(Yo, k2tog) 6 times",
    "The sleeve is worked until it measures 40 cm.",
    "Garter stitch 4 rows.",
    "Left front: as right front, reversing shaping.",
    "Second sleeve the same.",
    "XL only:",
    "1x1 ribbing",
    "Carry on in stocking stitch without shaping.",
    "From here on work flat.",
    "Thread yarn through remaining sts and pull tight.",
    "Once the piece is 40 cm long, shape the crown.",
    "Repeat decreases every 8th row.",
]
PROSE = [
    "A warm hat with a folded brim, knitted from the brim up.",
    "Knit from the top down in one piece.",
    "Work begins at the brim.",
    "Take time to check your gauge.",
    'Finished circumference: 18 (20, 22)"',
    'US 7 (4.5 mm) needles, 16" circular',
    "4 stitch markers",
    "To fit chest 81 [86:91:97] cm",
    "Instructions are given for the smallest size, with larger sizes in brackets.",
    "Read the whole pattern before you begin.",
    "Join us for a summer of knitting.",
    "The lace pattern is easy to memorise.",
    "This pattern uses a provisional cast-on and short rows.",
    "Sleeves are picked up at the armholes and worked downwards.",
    "The charts are read from right to left.",
    "Cable needle optional.",
    "Change needle size if necessary to obtain gauge.",
    "If only one number is given, it applies to all sizes.",
    "Lace pattern (multiple of 6 sts + 1)",
]


@each_row("sentence", ORDERS)
def test_an_instruction_is_seen(sentence: str) -> None:
    """One that is not seen may be passed over in silence, and the garment comes out wrong."""
    assert holds_instruction(sentence)


@each_row("sentence", PROSE)
def test_prose_is_told_from_instructions(sentence: str) -> None:
    """A page of prose under a hundred marks is a page that nobody looks through."""
    assert not holds_instruction(sentence)


def test_a_number_of_stitches_cast_on_begins_the_knitting() -> None:
    """A multiple to cast on is no number; a swatch has none either."""
    assert casts_on("CO 64 sts.")
    assert casts_on("With MC and 4 mm needles, pick up and knit 80 sts.")
    assert not casts_on("Cast on a multiple of 4 sts.")
    assert not casts_on("The scarf casts on 40 sts.")


def test_the_head_of_a_row_is_told_from_a_gauge() -> None:
    """ "24 rounds over 10 cm" is no row."""
    assert has_row_head("Rnds 1-4: Knit.")
    assert has_row_head("2nd row: P.")
    assert not has_row_head("24 rounds over 10 cm")
    assert not has_row_head("30 rows = 10 cm")


def test_an_order_is_told_by_how_it_begins() -> None:
    """Only a sentence that begins like one opens a part."""
    assert is_order("Work 4 rows.")
    assert not is_order("The border is worked over 4 rows.")


@pytest.mark.parametrize("sentence", ["P3.", "1st rnd: *C4B.", "K6", "*K2, p2.", "2nd round: *P3."])
def test_single_stitches_are_a_fragment(sentence: str) -> None:
    """Behind them a full stop may stand for a comma."""
    assert is_fragment(sentence)
    assert not is_fragment(f"{sentence} and knit")


def test_a_long_row_of_stitches_is_told_at_once() -> None:
    """Each stitch may be read in several ways; trying them all would never end."""
    row = "k2 tog tbl, " * 200 + "grommet"
    assert not is_fragment(row)
    assert processor_s(lambda: is_fragment(row)) < usual_s(1)


@each_row(
    "told",
    [
        "The edge stitches are worked in garter stitch throughout.",
        "The first stitch of every row is slipped.",
        "The seam stitch is always purled.",
        "The hem is worked with colour A.",
        "The rib is worked on the smaller needles.",
        "All ribs are worked with 3.5 mm needles.",
        "Sleeves and collar are in the contrast colour.",
        "All knit stitches are worked through the back loop.",
        "All increases are made on right-side rows.",
        "The body is knitted inside out.",
        "The first two sizes omit the last increase.",
        "Instructions in italics are for size L only.",
        "Use larger needles for the cast-on.",
        "For the ribbing use 3.5 mm needles.",
        "Go down a needle size for the ribbing.",
        "The ribbing uses a smaller needle.",
        "Use a provisional cast-on.",
        "Work all slipped stitches as if to knit.",
        "Stitches are slipped purlwise with yarn in back.",
        "All increases are M1L unless told otherwise.",
        "All increases are lifted increases.",
        "Increases are made by lifting the strand between two stitches.",
        "Every increase is a yarn over.",
        "Twist all purl stitches.",
        "All knit stitches are twisted.",
        "Always slip the first stitch.",
        "Keep the first and last stitch in garter throughout.",
        "The wrong-side rows are purled.",
        "Yarn is held double throughout.",
        "Held double throughout",
        "Use the yarn double.",
        "The hat is knitted with two strands of yarn held together.",
        "200 g of fern, held double",
        "Double the yarn for the whole hat.",
        "MC and CC are held together throughout.",
        "One strand of wool and one of mohair, knitted together.",
        "The brim is knitted on needles one size down.",
        "Use paired decreases.",
        "Wherever it says increase, make one left.",
        "Use wrap and turn for short rows.",
        "Wraps are not picked up.",
        "Edge stitches are not counted.",
        "Double yarn overs count as two.",
        "Always slip the first stitch purlwise.",
        "Keep the edge stitch in garter throughout.",
        "The yarn is held double throughout.",
        "Two strands of yarn are used together throughout.",
        "Even-numbered rounds, not given, are knitted.",
        "Wrong side rows are not shown on the chart and are purled.",
        "Rounds without a number are knitted.",
        "For size L follow the length of M.",
        "(1st, 2nd) Read all chart rows right to left.",
    ],
)
def test_a_rule_for_all_that_follows_orders_something(told: str) -> None:
    """In front of the pattern it would be passed over, though every row hangs on it."""
    assert holds_instruction(told)


@pytest.mark.parametrize(
    "told",
    [
        "Ribbed edges are worked at the end.",
        "The body is worked in the round to the armholes.",
        "Larger sizes are given in brackets; where only one figure is given it applies to all sizes.",
        "The sleeves are knitted first.",
        "It is worked in one piece.",
        "The yarn is a soft one.",
        "Short rows are worked as German short rows.",
        "Twist the two yarns together at the back.",
        "Work all slipped stitches as if to purl.",
        "Slip all stitches purlwise unless otherwise stated.",
        "Stitches are slipped purlwise.",
        "Use 5 mm needles.",
        "For sizes L and XL you will need one more ball.",
        "For the larger sizes use a longer circular needle.",
        "10 markers, one for each repeat, plus another for the start of the round",
        "Double knitting wool.",
        "Use a smaller needle if you knit loosely.",
        "Colours are stranded throughout.",
        "Increases are worked on both sides of the raglan lines.",
        "The wool holds its stitches throughout many washes.",
        "The border stitches look best in garter stitch.",
    ],
)
def test_what_only_describes_the_garment_orders_nothing(told: str) -> None:
    """Else every page would be asked about how it is made, or about a rule that rows are read by anyway."""
    assert not holds_instruction(told)
