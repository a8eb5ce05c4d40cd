"""What keeps a row from being kept by its count, and what she says yes to besides."""

from __future__ import annotations

from stepper.plan.so_far import SoFar
from stepper.project.page.unread.left_open import LeftKind, LeftOpen
from stepper.project.page.unread.proposals import propose
from stepper.settling.by_count import besides_count, fabric_ordered, is_row_of_ring, joins, why_not_by_count
from stepper.settling.rows_asked import RowAsked
from tests.tables import each_row


@each_row(
    ("words", "flat", "why", "besides", "row", "joined"),
    [
        ("Twirl 10, turn, twirl 5, turn and twirl.", True, "turned", "", False, False),
        ("Twirl 10, turn, twirl 5, turn and twirl.", False, "", "every turn closed", False, False),
        ("Twirl to the end, turn.", True, "", "", False, False),
        ("Cast off the middle twirls.", True, "bound off", "", False, False),
        ("Cast off 4 twirls at the beg of the row.", True, "", "", False, False),
        ("Cast off 4 twirls at the beg of the round.", False, "bound off", "", False, False),
        ("Twirl, then join in the round.", True, "", "in rounds from here", False, True),
        ("From here work back and forth.", False, "", "in rows from here", False, False),
        ("Row 3: Twirl k2.", False, "", "still in rounds", True, False),
        ("Rnd 3: Twirl k2.", False, "", "", False, False),
    ],
)
def test_what_a_count_leaves_open_is_known(words: str, flat: bool, why: str, besides: str, row: bool, joined: bool) -> None:
    """Later rows hang on it, so it is asked, or agreed to."""
    left = LeftOpen(kind=LeftKind.ROW, first=3, last=4, where="row 7", part="body", text=words, why="")
    asked = RowAsked(left=left, so_far=SoFar(stitches=40, flat=flat), proposal=propose(words))
    assert (why in why_not_by_count(asked)) if why else why_not_by_count(asked) == ""
    assert (besides_count(asked), is_row_of_ring(asked), joins(asked)) == (besides, row, joined)


@each_row(
    ("words", "fabric"),
    [
        ("Change to needle no. 9 and knit stockinette.", "stockinette"),
        ("Twirl, then go on in garter st all round.", "garter st"),
        ("Switch to k1, p1 rib with the loops.", "k1, p1 rib"),
        ("The rib is twirled loosely.", ""),
        ("Twirl in loops.", ""),
    ],
)
def test_a_fabric_that_words_order_is_known(words: str, fabric: str) -> None:
    """Where nothing were knitted for them, the rows behind would go on as before, in rib under a body."""
    assert fabric_ordered(words) == fabric
