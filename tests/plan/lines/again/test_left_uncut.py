"""A part worked again whose yarn is not cut at its end. Source of the reading: common practice."""

from __future__ import annotations

import pytest

from tests.plan.lines.again.test_another_part import knit

LEG = ("== leg", "CO 40 sts. Join in the round.", "Knit 2 rounds.")


def told(*lines: str) -> list[str]:
    """Return what is told of the yarn, round by round, of lines that are knitted to their end."""
    return [f"{at}: {each}" for at, one in enumerate(knit(*lines).rounds) for each in one.remarks if "yarn" in each]


@pytest.mark.parametrize(
    ("cut", "line"),
    [
        ("Cut the yarn and put the stitches aside.", "Knit the second leg the same way, but do not cut the yarn."),
        ("Break yarn and put the stitches on a holder.", "Work second leg as first, but do not break yarn."),
        ("Break yarn and put the stitches on a holder.", "Make second leg the same. Do not cut yarn."),
    ],
)
def test_the_copy_does_not_cut_the_yarn_that_is_knitted_on_with(cut: str, line: str) -> None:
    """Only the first leg is cut off; the second tells at its end, and not at its cast-on, to leave the yarn."""
    assert told(*LEG, cut, line) == ["3: break the yarn", "7: Do not cut yarn"]
    assert told(*LEG, cut, "Knit the second leg the same way.") == ["3: break the yarn", "7: break the yarn"]


def test_a_part_worked_as_another_does_not_cut_the_yarn_either() -> None:
    """Where the order to cut it is behind the last round, it is taken away there."""
    first = (*LEG, "Put the stitches on a holder. Break yarn.", "== second leg")
    assert told(*first, "Work as for leg. Do not break yarn.") == [
        "3: break the yarn when it is done",
        "7: when it is done: Do not break yarn",
    ]


def test_of_several_copies_the_last_keeps_its_yarn() -> None:
    """Two more are cut and left; the yarn of the last is not."""
    lines = (*LEG, "Cut the yarn and put the stitches on a holder.", "Make again 2. Do not cut the yarn.")
    assert [each.partition(": ")[2] for each in told(*lines)] == ["break the yarn", "break the yarn", "Do not cut yarn"]
