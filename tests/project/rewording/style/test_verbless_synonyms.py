"""Lines printed without their verb. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import recast


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Garter st, 6 rows.", "Work in Garter st for 6 rows."),
        ("Reverse St st for 4 rounds.", "Work in Reverse St st for 4 rounds."),
        ("1x1 rib for 3 cm.", "Work in 1x1 rib for 3 cm."),
        ("Rib for 8 rows.", "Work in rib for 8 rows."),
        ("Body: Stockinette stitch until piece measures 20 cm.", "Body: Work in Stockinette stitch until piece measures 20 cm."),
        ("Knit straight until piece measures 10 cm.", "Knit until piece measures 10 cm."),
        ("Knit another 3 rounds.", "Knit 3 more rounds."),
        ("Inc 8 sts evenly spaced on next rnd. 88 sts.", "increase 8 sts evenly. 88 sts."),
        ("Break off MC, join CC.", "Break off MC. join CC."),
        ("K2 in MC, k2 in CC around.", "(K2 in MC, k2 in CC) to end."),
        ("Pm at end of rnd.", "Pm for beg of rnd."),
    ],
)
def test_what_a_knitter_adds_in_her_head_is_added(printed: str, words: str) -> None:
    """A line as short as this can mean one thing only."""
    assert " ".join(recast(made_plain(printed)).text.split()) == words


@pytest.mark.parametrize(
    "printed",
    [
        "Garter stitch: 20 sts to 10 cm.",
        "2 rounds A, 2 rounds B.",
        "Knit even.",
        "Rib until it pleases you.",
        "K20, pm at end of rnd, k5.",
        "Use Kitchener stitch to close the underarm and shoulder.",
    ],
)
def test_what_leaves_a_choice_stays_as_it_is(printed: str) -> None:
    """How long, in which stitch or where is not to be guessed."""
    assert recast(made_plain(printed)).text == made_plain(printed)
