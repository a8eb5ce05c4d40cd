"""The phrases of a row told stitch by stitch. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

from stepper.project.rewording.told.row_kinds import end_of, match_phrase
from tests.tables import each_row


def written(words: str) -> str | None:
    """Return a phrase in the grammar's words; None if it is none, or more stands behind it."""
    phrase = match_phrase(words, 0)
    return phrase.write if phrase is not None and end_of(phrase) == len(words) else None


@each_row(
    ("printed", "words"),
    [
        ("sl 1 purlwise with yarn in back", "sl 1 pwise wyib"),
        ("slip the first st", "sl 1"),
        ("slip one, knit two together, pass the slipped stitch over", "sk2p"),
        ("slip 2 sts together as if to knit, k1, pass the 2 slipped sts over", "s2kp"),
        ("place 3 sts on a cable needle behind the work, k3, k3 from the cable needle", "3/3 RC"),
        ("slip next 2 sts to cn and hold in front, p1, k2 from cn", "2/1 LPC"),
        ("slip next st", "sl 1"),
        ("knit the next three stitches through the back loop", "k3 tbl"),
        ("p. 2 tog.", "p2tog"),
        ("purl until 1 stitch remains before the marker", "p to 1 sts before the marker"),
        ("k to within 4 sts of the end of the row", "k to last 4 sts"),
        ("knit to the last 2 sts before side marker", "k to 2 sts before side marker"),
        ("rib to the end", "rib to end"),
        ("k across to last 3 sts", "k to last 3 sts"),
        ("5 sts in moss st", "work 5 sts in moss st"),
        ("knit to 1 st before the marked stitch", "k to 1 sts before the marked st"),
        ("inc in the last st", "inc 1"),
        ("k2 CC", "k2 in CC"),
    ],
)
def test_a_phrase_has_one_way_to_be_written(printed: str, words: str) -> None:
    """In old leaflets and new, in figures and in words."""
    assert written(printed) == words


@each_row(
    "printed",
    [
        "sl 1, k2tog, pass the 2 slipped sts over",
        "slip next 2 sts to cn and hold in front, k2, p2 from cn",
        "slip next 3 sts to cn and hold in back, k2, k2 from cn",
        "slip 5 sts onto a holder",
        "k1 below",
        "k 2 rows",
        "k 5 cm",
        "inc 2 sts",
        "inc to 60 sts",
        "bring yarn forward",
        "knit to last 3 sts of instep",
        "k to end of needle",
    ],
)
def test_what_only_begins_like_a_phrase_is_none(printed: str) -> None:
    """A cable has as many stitches behind as were held, and rows are no stitches."""
    assert written(printed) is None
