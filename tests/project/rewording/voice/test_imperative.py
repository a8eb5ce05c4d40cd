"""What is told in the passive, to the knitter or in -ing becomes an order only where it is one. Source: common practice."""

from __future__ import annotations

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.voice.imperative import put_in_orders
from tests.tables import each_row


@each_row(
    ("told", "order"),
    [
        (
            "The yarn is cut and drawn through the remaining stitches.",
            "Cut the yarn and draw through the remaining stitches.",
        ),
        ("All stitches are bound off.", "Bind off all stitches."),
        (
            "48 sts are picked up and knitted around the armhole.",
            "Pick up and knit 48 sts around the armhole.",
        ),
        ("On the next round 8 sts are decreased.", "On the next round decrease 8 sts."),
        ("Rib is worked for 5 cm.", "Work in rib for 5 cm."),
        ("Rows 2 and 4 are purled.", "Rows 2 and 4: purl."),
        ("You then change to 4 mm needles.", "Change to 4 mm needles."),
        ("We'll repeat rounds 1 and 2 until 40 sts remain.", "Repeat rounds 1 and 2 until 40 sts remain."),
        ("Now it's time to bind off.", "Bind off."),
        ("You begin by casting on 60 sts.", "Cast on 60 sts."),
        ("Switching to larger needles, knit 1 round.", "Switch to larger needles. Knit 1 round."),
        ("Next round, decrease: k2tog, k to end.", "Next round (decrease): k2tog, k to end."),
        ("Knit 1 round where 6 sts are increased evenly.", "Knit 1 round, increasing 6 sts evenly."),
        ("On needle 3 mm, from RS: knit 2 rows.", "On needle 3 mm, from RS, knit 2 rows."),
    ],
)
def test_what_orders_is_put_as_an_order(told: str, order: str) -> None:
    """Every verb has these forms, and a page written in another language than its reader's prefers them."""
    assert put_in_orders(as_printed(told)).text.strip() == order


@each_row(
    "told",
    [
        # What lies there, what was done, what is done each time or elsewhere, what may be done.
        "2 sts are left on the needle.",
        "The marker is placed at the centre back.",
        "The first stitch of every row is slipped purlwise.",
        "The stitches were bound off.",
        "All stitches have been worked.",
        "The round is begun at the centre back.",
        "The increases are worked on both sides of the marker.",
        "The sleeves are knitted in stockinette.",
        "The neck stitches will be bound off on the next round.",
        "The edge may be bound off in rib.",
        "If all stitches are worked, bind off.",
        "When you knit the next round, slip the first stitch.",
        "You can change to larger needles.",
        "In the next round you will decrease 8 sts.",
        "You will work the next 4 rounds later.",
        "Knitting every row gives garter stitch.",
        "The yarn is not cut.",
    ],
)
def test_what_orders_nothing_stays_as_it_is(told: str) -> None:
    """A fact taken for an order is knitted once more than it is printed."""
    assert put_in_orders(as_printed(told)).text == told


def test_words_keep_their_printed_places() -> None:
    """A problem is shown under what is printed, wherever the words have gone."""
    told = "The last 8 sts are placed on a holder."
    order = put_in_orders(as_printed(told))
    at = order.text.index("8 sts")
    assert order.place(at, len("8 sts")) == (told.index("8 sts"), len("8 sts"))
    assert order.place(order.text.index("Place"), 1)[0] == 0
