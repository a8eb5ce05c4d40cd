"""Lists of sizes in the dress of printed pages. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("CO 74, (80, 86) sts.", "CO 74 (80, 86) sts."),
        ("Work even until piece measures 9'', (9.5'', 10'').", 'Work even until piece measures 9 (9.5, 10) ".'),
        ("CO [74, 80, 86] sts.", "CO 74 (80, 86) sts."),
        ("K7/8/9, p2, k to end.", "K7 (8, 9), p2, k to end."),
        ("Knit 4 rounds [96 (102, 108) sts].", "Knit 4 rounds. 96 (102, 108) sts."),
        ("Stitch count: 74 (80, 86).", "74 (80, 86) sts."),
        ("There will be 74 sts on your needle.", "74 sts."),
    ],
)
def test_a_list_is_the_same_list_in_every_bracket(printed: str, words: str) -> None:
    """Which number is for which size does not hang on a comma."""
    assert " ".join(reword(made_plain(printed)).text.split()) == words


@pytest.mark.parametrize("printed", ["K2, (5), k4.", "K2/3, p1."])
def test_what_may_be_no_list_stays_as_it_is(printed: str) -> None:
    """One number in brackets may be a remark, and two with a stroke a cable."""
    assert reword(made_plain(printed)).text == printed


def words_of(printed: str) -> str:
    """Return a line in the grammar's words."""
    return " ".join(reword(made_plain(printed)).text.split())


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Knit 1 (1, 2) rnd(s).", "Knit 1 (1, 2) rnds."),
        ("Bind off the rem 4 stitch(es).", "Bind off the rem 4 sts."),
        ("Row 7: Knit 2, make one yarn-over, k2tog, knit to end.", "Row 7: Knit 2, yo, k2tog, knit to end."),
        ("K2tog around. 8 sts rem for each size.", "K2tog around. 8 sts rem."),
        ("Row 5: Ssk, k to end—1 armhole st decreased.", "Row 5: Ssk, k to end-1 st decreased."),
        ("Rnd 3: Knit to m, m1r, sm, k to end—31 sts; 7 thumb sts.", "Rnd 3: Knit to m, m1r, sm, k to end-31 sts. 7 sts of thumb."),
        ("K2tog around. [9 sts decreased; 9 sts rem]", "K2tog around. (9 sts decreased. 9 sts rem)"),
    ],
)  # fmt: skip
def test_a_count_is_a_count_in_any_dress(printed: str, words: str) -> None:
    """Whose stitches they are, and in which sizes, changes no number."""
    assert words_of(printed) == words
    assert reads(made_plain(printed))


@pytest.mark.parametrize("printed", ["K3, make 2 yarn overs, k2tog.", "K2tog around. 6 sts rem for size S."])
def test_what_says_more_is_no_count(printed: str) -> None:
    """Two yarn overs are not one, and a count for one size is not for all."""
    assert not reads(made_plain(printed))
