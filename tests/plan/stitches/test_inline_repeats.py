"""What a repeat inside a round comes to."""

from __future__ import annotations

from stepper.plan.stitches.inline_repeats import goes_by_markers, no_division, said_so_often
from stepper.project.problems import Span
from stepper.project.stitchwork import Mark, Several, Until

HERE = Span(line=1, column=1)


def test_a_repeat_goes_by_markers_where_it_takes_them() -> None:
    """"K to marker, sm" goes from marker to marker; "pm" makes one."""
    to = Until("k", "marker", None, None, HERE)
    assert goes_by_markers(Several((to, Mark("sm", "", HERE)), None, "end", None, HERE))
    assert not goes_by_markers(Several((to, Mark("pm", "", HERE)), None, "end", None, HERE))
    assert not goes_by_markers(Several((Mark("sm", "", HERE),), None, "end", None, HERE))


def test_a_repeat_that_does_not_divide_names_the_counts_that_would() -> None:
    """4 into 22 leaves 2: 20 or 24 would do. Source: arithmetic."""
    message, hint = no_division(4, 22, 22)
    assert "5 repeats leave 2 over" in message
    assert "20 or 24" in hint


def test_stitches_are_quoted_as_they_are_printed() -> None:
    """"k8", "k2tog", "k2tog × 3"."""
    assert (said_so_often("k", 8), said_so_often("k2tog", 1), said_so_often("k2tog", 3)) == ("k8", "k2tog", "k2tog × 3")


def test_a_stitch_with_a_name_of_several_letters_tells_how_often_from_two_on() -> None:
    """ "k2tog2" would be another stitch."""
    assert [said_so_often("k2tog", times) for times in (1, 2, 3)] == ["k2tog", "k2tog × 2", "k2tog × 3"]
    assert [said_so_often("k", times) for times in (1, 2)] == ["k1", "k2"]
