"""What fills and explains a sentence. Source: the wording of patterns in print, US, UK and translated; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Work in k1, p1 rib throughout for 5 cm.", "Work in k1, p1 rib for 5 cm."),
        ("Cast off knitwise and loosely.", "Cast off loosely knitwise."),
        ("*K6, k2tog*, repeat *-* the round out.", "*K6, k2tog; rep from * to end."),
        ("Bind off 7 sts at beg of next 4 rows, leaving 22 sts.", "Bind off 7 sts at beg of next 4 rows. 22 sts."),
        ("Repeat the last 2 rnds 3 times more, for 8 rnds altogether.", "Repeat last 2 rnds 3 times more. 8 rnds in all."),
        ("Rep last 2 rows twice more (6 rib rows in total).", "Rep last 2 rows twice more. 6 rows in all."),
        ("Work 8 rnds in 1x2 rib (k1, p2).", "Work 8 rnds in k1, p2 rib."),
        ("2nd dec row: K1, k2tog, k to end.", "dec row 2: K1, k2tog, k to end."),
        ("K to marker, remove it, k to end.", "K to marker, remove marker, k to end."),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """What is meant is the same, whichever way the page says it."""
    assert reword(made_plain(printed)).text == read


@pytest.mark.parametrize(
    ("printed", "said"),
    [
        ("Cast off quite loosely.", "quite loosely"),
        ("Break yarn, leaving a tail about 20 cm long.", "leaving a tail about 20 cm long"),
        ("Work in k2, p2 rib for 5 cm, i.e. about 16 rounds.", "i.e. about 16 rounds"),
    ],
)
def test_an_explanation_is_said_with_its_line(printed: str, said: str) -> None:
    """The knitter hears what the page tells her, although no stitch of it is counted."""
    assert said in reword(made_plain(printed)).kept


@pytest.mark.parametrize(
    "printed",
    [
        "Work first 4 sts in garter st throughout.",
        "Work 8 rnds in 2x2 rib (k1, p1).",
        "Work 3 rows in st st (p on RS, k on WS).",
        "Repeat the last 2 rnds three times more, or 8 rnds altogether.",
        "Purl, slipping the first stitch knitwise.",
        "Work at least 4 rows without shaping.",
        "Rep rnds 1-2 3 times more (5 times in all).",
        "Bind off 7 sts, leaving 22 sts on a holder.",
    ],
)
def test_what_would_change_the_knitting_is_no_filler(printed: str) -> None:
    """Some stitches all the time, a rib told otherwise than named, a choice: none of it may be dropped."""
    assert not reads(printed)
