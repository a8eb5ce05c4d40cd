"""What each line comes to in a size alone, and which lines spread a change."""

from __future__ import annotations

import pytest

from stepper.plan.compile import work_as_knitted
from stepper.plan.state.size_alone import (
    LinesAlone,
    lines_alone,
    lines_labelled_once,
    quote_label,
    spreads_change,
    why_unmet,
)
from stepper.project.model import Project
from stepper.project.reader import read_project
from tests.project.samples import project


def worked(line: str, *, begin: str = "Join in the round.") -> tuple[Project, LinesAlone]:
    """Work a labelled line on forty stitches."""
    read = read_project(project(f"Cast on 40 sts.\n{begin}\nThis: {line}", sizes="S", size="S"))
    assert read.project is not None
    return read.project, lines_alone(work_as_knitted(read.project, frozenset()).drafts)


@pytest.mark.parametrize(
    ("line", "code"),
    [
        ("Increase evenly to 50 sts.", "m1"),
        ("Decrease 8 sts evenly.", "k2tog"),
        ("*K3, k2tog; rep from * to end.", "k2tog"),
        ("*K5, ssk; rep from * to last 5 sts, k to end.", "ssk"),
        ("*K1, yo; rep from * to end.", "yo"),
        ("*K7, kfb; rep from * to end.", "kfb"),
        ("*P2tog; rep from * to end.", "p2tog"),
        ("*K2, k3tog; rep from * to end.", "k3tog"),
        # These stand where they stand: at edges, beside markers, in lace, in two colours.
        ("K1, ssk, k to last 3 sts, k2tog, k1.", None),
        ("*K2, yo, k2tog; rep from * to end.", None),
        ("K10, k2tog, k16, k2tog, k10.", None),
        ("*K8, sl1, kfb; rep from * to end.", None),
        ("K1, m1, k1, m1, k1, m1, k to end.", None),
        ("Knit 2 rounds.", None),
    ],
)
def test_a_line_spreads_its_change_or_shapes_where_it_stands(line: str, code: str | None) -> None:
    """What is spread can be spread anew over other stitches; a dart or a raglan line would come out of place."""
    found, alone = worked(line)
    (labelled,) = lines_labelled_once(found)
    rounds = alone[labelled.place.line]
    assert (rounds[0].change.code if rounds[0].change is not None else None) == code
    assert spreads_change(labelled, alone) is (code is not None)
    assert rounds[0].before == 40


def test_the_rounds_of_a_line_stand_under_its_number() -> None:
    """With the stitches before and after each."""
    found, alone = worked("Increase evenly to 50 sts. Knit 2 rounds.")
    (labelled,) = lines_labelled_once(found)
    assert [(each.before, each.after) for each in alone[labelled.place.line]] == [(40, 50), (50, 50), (50, 50)]


def test_a_label_that_two_lines_have_names_neither() -> None:
    """A switch at it would be one of two places."""
    read = read_project(project("Cast on 40 sts.\nInc: Knit 1 row.\nInc: Knit 1 row.\nOther: Knit 1 row."))
    assert read.project is not None
    assert [line.label for line in lines_labelled_once(read.project)] == ["Other"]


def test_where_no_line_can_the_wording_of_one_is_shown() -> None:
    """She learns what to write; where the stitches meet there is nothing to say."""
    found, alone = worked("Knit 2 rounds.")
    (labelled,) = lines_labelled_once(found)
    assert "put one in front of such a line" in why_unmet(labelled, 0, 36, alone, found)
    assert why_unmet(labelled, 0, 40, alone, found) == ""
    assert quote_label("Inc") == '"Inc"'
