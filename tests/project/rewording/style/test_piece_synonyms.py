"""Garments in pieces. Source: the wording of leaflets and magazines, UK and US; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Rib 10 rows more.", "work 10 more rows in rib."),
        ("Work as back as far as armhole shaping.", "Work as back to armhole shaping."),
        ("Work in k.1, p.1 rib as given for Back for 6 cm.", "Work in as-Back rib for 6 cm."),
        ("Work in patt as on back for 10 cm.", "Work in as-back pattern for 10 cm."),
        ("Next row: K30, turn and work on these sts for first side of neck.", "Next row: K30, turn and work on these sts only."),
        ("Rejoin yarn to inner end of rem sts, k to end.", "take up remaining sts. k to end."),
        ("Dec 1 st at raglan edge on next 4 rows.", "Dec 1 st at armhole edge on next 4 rows."),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """One meaning in print has many forms of words; all of a family come to the one that is read."""
    assert reads(printed)
    assert read.lower().split()[:3] == reword(made_plain(printed)).text.lower().split()[:3]


@pytest.mark.parametrize(
    "printed",
    [
        "Work 2 rows more than on back.",
        "Dec 1 st at raglan edge on every RS row inside the border, at the same time dec 1 st at neck edge on next 4 rows.",
        "Next row: K30, turn and work on these sts or on the others.",
        "Work in patt as given for the scarf for 10 cm.",
        "Work as back as far as you like.",
        "Rejoin yarn to inner end of rem sts unless it is still attached, k to end.",
    ],
)
def test_what_only_looks_alike_is_refused(printed: str) -> None:
    """A comparison, a condition, a choice or a manner that another row shows is no such form."""
    assert not reads(printed)
