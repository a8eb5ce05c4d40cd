"""What she sees, counts and may leave out is told; what she is to do is not. All sentences are invented, common practice."""

from __future__ import annotations

from stepper.project.reading.wording import reads
from stepper.project.rewording.clauses.beholding import is_beheld
from tests.project.rewording.clauses.disguised_orders import DISGUISED_ORDERS
from tests.tables import each_row

BEHELD = (
    "You should be able to count 14 chain-looking slipped stitches down each edge.",
    "You should now see a neat line of eyelets along the edge.",
    "You'll have 12 (14, 16) garter ridges on the right side.",
    "You've got 8 sections.",
    "There are now six wedges around the crown.",
    "You'll have 8 sts not worked at each side.",
    "You'll be ready for a RS row.",
    "You are now at the start of a wrong-side row.",
    "By now you should have 6 eyelets.",
    "These short rows raise the back of the neck a little.",
    "They lift the front edge slightly.",
    "The marked stitch comes out as a knit stitch on the right side.",
    "Long-tail over two needles is fine.",
    "A tubular cast-on is lovely here.",
    "Magic loop works just as well.",
    "That's the brim done.",
    "Now the fun part starts.",
    "The decreases lean towards each other.",
    "You may leave them out.",
    "You can skip the short rows if you like a straight neck.",
    "They can have a rest now.",
    "It is.",
)


@each_row("sentence", BEHELD)
def test_what_is_seen_is_told(sentence: str) -> None:
    """It follows from the rows beside it, and no row comes of it."""
    assert is_beheld(sentence)
    assert reads(sentence)


def test_no_order_in_disguise_is_taken_for_what_is_seen() -> None:
    """One word that belongs to no phrase leaves the sentence as printed."""
    assert [sentence for sentence in DISGUISED_ORDERS if is_beheld(sentence)] == []
