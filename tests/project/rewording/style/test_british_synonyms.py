"""Other wordings of British patterns. Source: the wording of patterns in print in the UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import recast


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Next row: Inc in every 5th st to end.", "Next row: (k4, inc 1) to end."),
        ("K2tog all around. 8 sts.", "K2tog around. 8 sts."),
        ("Bind off loosely using 5 mm needle.", "change to 5 mm needles. Bind off loosely."),
        ("Work on these 24 sts for first side.", "24 sts."),
    ],
)
def test_a_british_wording_says_the_same(printed: str, words: str) -> None:
    """Counts, places and needles are those of the page."""
    assert " ".join(recast(made_plain(printed)).text.split()) == words


@pytest.mark.parametrize(
    "printed",
    [
        "Inc in every st to the marker, k to end.",
        "Inc in every 5th st 3 times.",
        "Proceed to the neck.",
        "Cont until armhole matches the chart.",
        "Slip centre marker, k to end.",
    ],
)
def test_what_is_not_all_told_stays(printed: str) -> None:
    """Where it ends, or what it is measured against, would have to be guessed."""
    assert recast(made_plain(printed)).text == made_plain(printed)
