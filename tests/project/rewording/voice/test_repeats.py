"""A repeat goes to the end or so many times, in any words. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.voice.repeats import write_repeats


@pytest.mark.parametrize(
    ("printed", "written"),
    [
        ("*k2, p2* - repeat between the stars all the way around.", "*k2, p2; rep from * to end."),
        ("[k2, p2] all the way round.", "*k2, p2; rep from * to end."),
        ("Repeat *k1, p1* to the end of the round.", "*k1, p1; rep from * to end."),
        ("*Knit 2, purl 2*. Repeat from * to *.", "*Knit 2, purl 2; rep from *."),
        ("(k1, p1) around, 8 rounds.", "*k1, p1; rep from * to end. Work for 8 rounds."),
        ("*knit 3, purl 3* - 10 times.", "(knit 3, purl 3) 10 times."),
        ("*Knit 3, M1* = 96 sts.", "*Knit 3, M1; rep from *. 96 sts."),
    ],
)
def test_a_repeat_is_written_as_the_grammar_has_it(printed: str, written: str) -> None:
    """Stars and brackets, with every word for "to the end"."""
    assert write_repeats(as_printed(printed)).text == written


@pytest.mark.parametrize(
    "printed",
    ["*k2, p2* repeat 8 times.", "(see photo) all around.", "Work [k1, p1] to the end of the heel."],
)
def test_another_end_or_number_stays(printed: str) -> None:
    """Repeated 8 times after once is nine times, or it is not."""
    assert write_repeats(as_printed(printed)).text == printed
