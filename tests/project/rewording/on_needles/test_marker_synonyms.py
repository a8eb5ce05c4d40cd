"""Other wordings of markers. Source: patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read", "kept"),
    [
        ("K10, place second marker, k10.", "K10, pm, k10.", ("place second marker",)),
        ("Knit 1 round, removing all markers except BOR.", "remove markers. Knit 1 round.", ()),
        ("Knit 4 rnds, removing all markers but the one at beg of rnd.", "remove markers. Knit 4 rnds.", ()),
        ("Knit 1 round. The remaining markers can come out.", "Knit 1 round. remove markers", ()),
        ("The markers may be taken out.", "remove markers", ()),
        ("The first marker may be removed.", "The first marker may be removed", ()),
        ("Mark the right side of the work with a safety pin.", "", ("Mark the right side of the work with a safety pin",)),
    ],
)
def test_markers_are_put_into_the_words_that_are_read(printed: str, read: str, kept: tuple[str, ...]) -> None:
    """What is worth no stitches is said beside the line."""
    made = reword(made_plain(printed))
    assert made.text.strip(" .") == read.strip(" .")
    assert made.kept == kept


@pytest.mark.parametrize("printed", ["Mark the right side and knit 2 rows.", "Place a safety pin at row 4, k10."])
def test_an_instruction_is_never_part_of_what_is_only_said(printed: str) -> None:
    """A row behind such words would be lost."""
    assert reword(made_plain(printed)).text == printed


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("On needle 1, k5, k2tog; on needle 2, knit.", "needle 1: k5, k2tog; needle 2: knit."),
        ("N1: K to last 3 sts on needle, k2tog, k1; N2: knit to end of needle.", "needle 1: K to last 3 sts, k2tog, k1; needle 2: knit to end."),
        ("*K1, m1r, knit to last st on needle, m1l, k1; rep from * on second needle.", "needles 1 and 2: K1, m1r, knit to last st, m1l, k1."),
        ("Place 16 sts on each of 2 needles.", "divide over 2 needles. 16 sts on each needle."),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """The end meant is that of the needle."""
    assert reword(made_plain(printed)).text == read


def test_needles_that_are_changed_to_are_no_heads() -> None:
    """A needle size is a needle too."""
    line = "Change to 3 mm needles. Knit 2 rounds."
    assert reword(line).text == line
