"""Words beside an instruction, and whether they instruct. The wordings are invented in the manner of print."""

from __future__ import annotations

import pytest

from stepper.project.rewording.asides import commands, instructs, joins_order, label_instructs, label_times
from tests.tables import each_row


@each_row(
    "words",
    [
        "underarm",
        "left sleeve",
        "the left front edge",
        "cast-on edge",
        "bound-off edge of the back",
        "row ends",
        "end of row",
        "beginning of the round",
        "holder",
        "underarm stitches",
        "wrong side of the work",
        "the long-tail method",
    ],
)
def test_names_and_places_instruct_nothing(words: str) -> None:
    """A line that says where and for what has to be read as before."""
    assert instructs(words) is None


@pytest.mark.parametrize(
    ("words", "first"),
    [
        ("underarm at beg of next 2 rows", "2"),
        ("neck twice", "twice"),
        ("edge every other row 3 times", "every"),
        ("left sleeve and k to end", "to end"),
        ("left sleeve k10", "k10"),
        ("thumb, ssk", "ssk"),
        ("each side", "each"),
        ("marker three", "three"),
        ("smaller needles", "smaller"),
        ("edge with A", "with A"),
        ("sleeve until 10 rem", "until"),
    ],
)
def test_what_says_how_often_or_what_to_do_is_found(words: str, first: str) -> None:
    """Passed over, it would be knitted once, or not at all."""
    found = instructs(words)
    assert found is not None
    assert found.group() == first


def test_an_order_joined_to_a_name_is_found() -> None:
    """Stitches held "for the gusset and tie the ends" were called so, and nothing was tied."""
    for words, verb in (("gusset and tie the ends", "tie"), ("pocket, close it", "close"), ("pocket and weave in ends", "weave")):
        found = joins_order(words)
        assert found is not None
        assert found.group() == verb
    for name in ("left front, around the neck and down the right front", "gusset and heel", "front and the back"):
        assert joins_order(name) is None


def test_a_remark_may_hold_numbers_but_no_round() -> None:
    """ "Sew on 4 buttons" is no round; "k10, k2tog" is one, wherever it stands."""
    assert commands("sew on 4 buttons, 5 cm apart") is None
    assert commands("block to size") is None
    for words in ("yarn, k10", "yarn and work to end", "ends, then knit 2", "on every 2 rows", "seams twice"):
        assert commands(words) is not None


@each_row(
    "label",
    [
        "Dec round",
        "Final increase",
        "Set-up row",
        "Knit round",
        "Joining round",
        "Turn heel",
        "Thumb opening",
        "To shape armholes",
        "Place markers",
        "Short rows",
        "Second sleeve",
        "Join yoke",
        "All sizes",
        "Sizes S and M only",
        "Dec rnd 1",
        "Inc Rnd 2",
        "Set-up row 3",
        "For the thumb",
        "After the thumb",
        "Beginning of round",
        "Toe (64 sts)",
    ],
)
def test_a_name_of_a_line_is_one(label: str) -> None:
    """What only names its line is read as its name."""
    assert label_instructs(label) == ""


@each_row(
    "label",
    [
        "Next and foll alt row",
        "Decrease round, every 4th round",
        "Dec rows",
        "Next row twice",
        "At the same time",
        "With MC",
        "On larger needles",
        "Needle 1",
        "Work even",
        "Both sides",
        "In the round",
        "Last 2 rows",
        "RS rows",
        "Inc round, repeat once",
        "Rep rnd 1",
        "Repeat row 2",
        "Work rnd 1",
        "After row 3",
        "Next row 1",
        "Dec rnd 1 and 2",
        "Knit rnd 2",
        "Start 3 sts after the marker",
        "Between markers",
        "Past the first marker",
        "Over the first 10 sts",
        "From the 5th st",
        "End of round",
        "Halfway",
        "Hem (6 rnds)",
        "Start at side rnd",
        "Cut MC rnd",
        "Inside out rnd",
        "If needed round",
        "Leg, 10 cm",
        "For a longer leg",
        "To lengthen",
        "Double yarn",
        "Hold 10 sts",
        "Cast on 10 sts",
        "Skip for S",
        "Instead",
        "Option 2",
        "Short version",
        "Second colour",
        "Brim (US 5)",
        "Brim worked flat",
        "Over the left 20 sts",
        "Over these sts",
        "Across the last 20 sts",
        "Between the markers",
        "Before the thread",
        "Beside the thread",
        "Along the raglan line",
        "Next to the seam",
        "After the marking thread",
        "Between the seams",
        "After the seam st",
        "To the left of the marker",
        "For the left 20 sts",
        "Next 20 sts",
        "The first row is from the wrong side",
        "Wrong side",
        "Seen from the right side",
    ],
)
def test_a_label_that_instructs_is_found(label: str) -> None:
    """Taken for a name it would be worked once, and its words would be lost."""
    assert label_instructs(label)


def test_a_label_may_say_how_often_its_round_is_worked() -> None:
    """ "Inc round (work 3 times)" is a name and a number; a heading that is no round keeps its words."""
    assert label_times("Inc round (work 3 times)") == ("Inc round", 3)
    assert label_times("Inc rnd, worked twice") == ("Inc rnd", 2)
    assert label_times("Shaping (work 3 times)") == ("Shaping (work 3 times)", 0)
    assert label_times("Dec round") == ("Dec round", 0)


def test_a_label_that_binds_off_instructs() -> None:
    """ "BO in picot: *BO 2, CO 1" would be worked as a round that leaves half of the stitches."""
    assert label_instructs("BO in picot")
    assert not label_instructs("Bind off round")


@pytest.mark.parametrize(
    "label",
    [
        "Next but one rnd",
        "Third rnd from here",
        "Previous rnd",
        "Same rnd",
        "Dec 4 sts evenly in the purl rnd",
    ],
)
def test_a_label_that_counts_rounds_instructs(label: str) -> None:
    """Taken as a name, the round would be worked next."""
    assert label_instructs(label)
