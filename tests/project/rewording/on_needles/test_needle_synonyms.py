"""Stitches over needles as printed. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Ndl 1: Knit; ndl 2: purl.", "needle 1: Knit; needle 2: purl."),
        ("N1: K1, k to end. N2: Same as N1.", "needle 1: K1, k to end; needle 2: K1, k to end."),
        ("N1: K1, k to end. N2: Knit. N3: Repeat N1.", "needle 1: K1, k to end; needle 2: Knit; needle 3: K1, k to end."),
        ("Arrange sts so that there are 8 sts on N1 and 9 sts on N2.", "divide over 2 needles, 8 sts on needle 1, 9 sts on needle 2."),
        ("Divide over 3 needles: 16 sts on N1, 8 sts each on N2 and N3.", "divide over 3 needles, 16 sts on needle 1, 8 sts on needle 2, 8 sts on needle 3."),
        ("Divide sts onto three dpns (12-24-12).", "divide over 3 needles, 12 sts on needle 1, 24 sts on needle 2, 12 sts on needle 3."),
        ("Rep rnd 1 until 24 sts rem: 12 sts on N1, 12 sts on N2.", "Rep rnd 1 until 24 sts rem. lying over 2 needles, 12 sts on needle 1, 12 sts on needle 2."),
        ("Knit until there are 24 sts; 12 sts per needle.", "Knit until there are 24 sts. 12 sts on each needle."),
        ("Knit across N1; work in patt across N2.", "needle 1: Knit to end; needle 2: work in pattern to end."),
        ("Knit the sts of N1 with N4.", "k needle 1 to the new beginning."),
        ("The heel is worked back and forth on N1 only.", "work in rows over sts of heel on needle 1."),
    ],
)
def test_needles_are_put_into_the_words_of_the_grammar(printed: str, words: str) -> None:
    """Which needle holds what, and what is worked on it, stays as printed."""
    assert reword(made_plain(printed)).text == words


@pytest.mark.parametrize(
    "printed",
    [
        "N1: K1, k to end. N2: Same as N1, but purl.",
        "N1: K1, ssk, k to end. N2: Same as N1 reversed.",
        "Divide over 4 needles: 16 sts on needles 1 and 2, 16 sts on needles 3 and 4.",
        "Divide sts over 3 needles: 16-24.",
        "Work even, working N1 in patt and N2 as before, until piece measures 4 cm.",
    ],
)
def test_what_may_mean_two_things_stays_unread(printed: str) -> None:
    """Sixteen on two needles may be on each or on both; "same, but" is not the same."""
    assert not reads(printed)


def test_needles_of_a_size_are_none_of_a_number() -> None:
    """A needle of 3 mm is not the third."""
    assert "needle 3" not in reword(made_plain("Change to ndl 3 mm and knit 2 rounds.")).text
