"""Charts as a page calls them. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Work Rnds 1-8 of Upper Yoke Chart B.", "Work Rnds 1-8 of chart Upper-Yoke-B."),
        ("Cont in chart until Row 12 has been completed.", "work chart through row 12."),
        ("Work in pattern as established through Row 30 of Chart C.", "work Chart C through row 30."),
        ("Work Rows 1-6 of Chart twice, then Rows 1-3.", "Work Rows 1-6 of Chart twice. work Rows 1-3 of Chart."),
        ("Row 3: K4, work Row 2 of Chart, k4.", "Row 3: K4, work Chart, round 2 to fill, k4."),
        ("Work Rows 1-40 of the charted pattern.", "Work Rows 1-40 of the chart."),
        ("Work Rnds 1-9 of Chart C, then knit 3 rnds.", "Work Rnds 1-9 of Chart C. knit 3 rnds."),
        ("Follow Chart C for 9 rows.", "work Chart C for 9 rows."),
        ("Work 14 rounds from chart.", "work chart for 14 rounds."),
        ("Next rnd: *Work Chart C; rep from * to end of rnd.", "Next rnd: Work Chart C to end."),
    ],
)
def test_a_chart_is_put_into_the_words_of_the_grammar(printed: str, words: str) -> None:
    """Its name, its rows and where it stands in the row stay as printed."""
    assert " ".join(reword(made_plain(printed)).text.split()) == words


def test_how_often_a_chart_stands_across_a_row_is_said() -> None:
    """The stitches say it themselves; the words are read aloud."""
    made = reword(made_plain("Work Rnds 1-8 of Chart C, repeating the 10 sts 9 times around."))
    assert made.text == "Work Rnds 1-8 of Chart C."
    assert made.kept == ("repeating the 10 sts 9 times around",)


@pytest.mark.parametrize("printed", ["Work 6 repeats of Chart C.", "Work Chart C to Row 12.", "Work Chart C between markers."])
def test_what_may_mean_two_things_stays_as_it_is(printed: str) -> None:
    """Repeats may lie beside or above each other; "to row 12" may stop short of it."""
    assert reword(made_plain(printed)).text == printed
