"""Shawls, cowls and blankets of today in other words. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword
from tests.tables import each_row

BACK = "slip both sts back to left needle"


@each_row(
    ("printed", "words", "kept"),
    [
        ("Rnds 8-10: Work Rnds 6, 5 and 4, in that order.", "Rnds 8-10: Work Rnds 6, 5 and 4.", ()),
        (
            "Work Chart A once more, this time working Rnds 3, 2 and 1, in that order.",
            "work Rnds 3, 2 and 1 of Chart A.",
            (),
        ),
        ("Repeat Section 1 rows 1 and 2 5 times.", "Repeat rows 1 and 2 of Section 1 5 times.", ()),
        ("Rep rows 1-4 from Section 2 5 times.", "Rep rows 1-4 of Section 2 5 times.", ()),
        ("SECTION 5 (color B)", "with B", ("SECTION 5",)),
        (
            "97 (129) sts: 45 (61) sts in each wing, 1 center st, and 3 sts in each border.",
            "97 (129) sts.",
            ("45 (61) sts in each wing, 1 center st, and 3 sts in each border",),
        ),
        (f"K2, *{BACK}, k2tog tbl, k1; rep from * until 1 st remains.", "bind off all sts.", ("K2, *slip",)),
        (f"With WS facing, bind off: K1, *k1, {BACK}, p2tog; rep from * to end.", "With WS facing, bind off all sts.", ("bind off: K1",)),
        ("Rep this rnd every 6th rnd 4 more times.", "Rep same rnd every 6th rnd 4 more times.", ()),
        ("Rnd 15: Remove BOR, k6, replace BOR.", "Rnd 15: remove marker, k6, place marker for BOR.", ()),
        ("You have worked 36 increase rows.", ".", ("You have worked 36 increase rows",)),
        ("105 sts: 3 at each edge, 49 on each side, and the spine.", "105 sts.", ("3 at each edge, 49 on each side, and the spine",)),
        ("*CO 2 sts, BO 4 sts, slip st back to left needle; rep from * to end.", "bind off all sts.", ("*CO 2 sts",)),
    ],
)
def test_it_is_put_into_the_words_that_are_read(printed: str, words: str, kept: tuple[str, ...]) -> None:
    """The way to bind off is said with the row, as are the parts of a count."""
    made = reword(made_plain(printed))
    assert made.text == words
    assert len(made.kept) == len(kept)
    assert all(said.startswith(start) for said, start in zip(made.kept, kept, strict=True))


@each_row(
    "printed",
    [
        f"K2, *{BACK}, k2tog tbl, k1; rep from * 4 times.",
        f"K2, *{BACK}, k2tog tbl, k1; rep from * until 12 sts remain.",
        "*CO 4 sts, BO 4 sts, slip st back to left needle; rep from * to end.",
        "*CO 2 sts, BO 2 sts, slip st back to left needle; rep from * to end.",
        "CO 3 sts onto left needle. *K2, k2tog tbl, slip 3 sts back to left needle; rep from * 10 times.",
        "SECTION 5 (colors A & B)",
        "Rep this rnd every time you like.",
        "You have worked 36 rows, now rep them.",
        "Rnd 15: Remove BOR, k6, replace every marker 6 sts to the left.",
        "97 sts: 45 sts in each wing, then dec 2 sts.",
        "Work Rnds 6, 5 and 4, in that order, then knit 1 rnd twice every other time.",
        "Repeat Section 1 rows 1 and 2 in reverse.",
    ],
)
def test_what_says_more_stays_as_it_is(printed: str) -> None:
    """An edge bound off in part, or one that gets no shorter, is none that ends the work."""
    assert not reads(printed)
