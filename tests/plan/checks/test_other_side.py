"""Two fronts are each other's image. Source: common practice, "work as for left front, reversing shaping"."""

from __future__ import annotations

import textwrap

import pytest

from stepper.plan.checks.other_side import faces
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import HEAD, project
from tests.tables import each_row

ONE_EDGE = "Next row (RS): K to last 3 sts, k2tog, k1.\nNext row: Purl.\nRep last 2 rows 3 times.\nBind off."
BOTH_EDGES = "Next row (RS): K1, ssk, k to last 3 sts, k2tog, k1.\nNext row: Purl.\nBind off 3 sts at beg of next 2 rows.\nBind off."
BOUND_OFF = "Bind off 4 sts at beg of next row.\nPurl 1 row.\nBind off."


def garment(first: str, rows: str, second: str, line: str) -> str:
    """Write a file of two pieces, the second of which has one line."""
    work = textwrap.indent(f"Cast on 30 sts. Work flat.\nWork 6 rows in st st.\n{rows}", "      ")
    head = HEAD.format(sizes="S", size="S").replace("- name: body", f"- name: {first}")
    return f"{head}{work}\n  - name: {second}\n    work: |\n      {line}\n"


@each_row("rows", [ONE_EDGE, BOUND_OFF])
@each_row(
    ("first", "second", "line"),
    [
        ("left front", "right front", "Work as for left front."),
        ("left front", "right front", "Work to match left front."),
        ("left front", "right front", "Work to correspond to left front."),
        ("first front", "second front", "Work as for first front."),
        ("front", "second front", "Work as for front."),
        ("left shoulder", "right shoulder", "Work as for left shoulder."),
    ],
)
def test_a_second_front_that_would_be_the_first_again_is_refused(first: str, second: str, line: str, rows: str) -> None:
    """Worked row by row as the first it would be a second left front, and was called sound."""
    assert "the same one again" in faults(garment(first, rows, second, line))


@pytest.mark.parametrize(("name", "refused"), [("front", True), ("fronts", True), ("side panel", True), ("pocket", False), ("sleeve", False)])
@pytest.mark.parametrize("rows", [ONE_EDGE, BOUND_OFF])
def test_a_second_of_one_sided_rows_is_refused_for_a_front_and_told_of_other_parts(name: str, refused: bool, rows: str) -> None:
    """"Make 2" below a front gave two left fronts; two pockets may be alike."""
    text = garment(name, rows + "\nMake 2.", "edging", "Cast on 4 sts. Work flat.")
    if refused:
        assert "the same one again" in faults(text)
    else:
        assert any("the second is worked just the same" in caution.text for caution in plan_of(text).warnings)


@pytest.mark.parametrize("rows", [BOTH_EDGES, "Next row (RS): K13, turn, leave rem 17 sts on a holder.\nBind off.\nWith RS facing, rejoin yarn to held sts, bind off 4 sts, k to end.\nBind off."])
def test_a_second_of_a_piece_that_is_its_own_image_is_read(rows: str) -> None:
    """Shaped alike at both edges, or parted in two sides that are each other's image."""
    plan = plan_of(garment("front", rows + "\nMake 2.", "edging", "Cast on 4 sts. Work flat."))
    assert "front, second" in {each.section for each in plan.rounds}
    assert not any("just the same" in caution.text for caution in plan.warnings)


def test_a_front_that_is_mirrored_is_read() -> None:
    """By hand: what leaned left at the end of the row leans right at its beginning."""
    plan = plan_of(garment("left front", ONE_EDGE, "right front", "Work as for left front, reversing shaping."))
    assert [each.instruction for each in plan.rounds if each.section == "right front" and each.after == 29][:1] == ["k1, ssk, k27"]


@pytest.mark.parametrize(
    ("first", "rows", "second", "line"),
    [
        ("left front", BOTH_EDGES, "right front", "Work as for left front."),
        ("first sleeve", ONE_EDGE, "second sleeve", "Work as for first sleeve."),
        ("back", ONE_EDGE, "front", "Work as for back."),
    ],
)
def test_what_is_alike_on_both_sides_or_faces_nothing_is_read(first: str, rows: str, second: str, line: str) -> None:
    """A piece that is its own image may be worked as it stands; a sleeve and a back have no other side."""
    plan = plan_of(garment(first, rows, second, line))
    counts = [[each.after for each in plan.rounds if each.section == name] for name in (first, second)]
    assert counts[0] == counts[1]


@pytest.mark.parametrize(
    ("here", "source", "wanted"),
    [
        ("right front", "left front", True),
        ("second front", "front", True),
        ("other side", "one side", True),
        ("front", "back", False),
        ("right front neck", "right front", False),
        ("left sleeve", "right sleeve", False),
        ("second front", "second back", False),
    ],
)
def test_which_parts_face_each_other(here: str, source: str, wanted: bool) -> None:
    """By their names."""
    assert faces(here, source) is wanted


def test_a_buttonhole_band_lies_at_the_front_across_from_the_buttons() -> None:
    """Both picked up down the left front, the cardigan would not close."""
    bands = "Cast on 20 sts. Work flat.\nBind off."
    head = HEAD.replace("name: body", "name: back")
    text = project(bands, head=head) + (
        "  - name: button band\n    work: |\n      Pick up and knit 21 sts evenly down left front edge.\n      Knit 5 rows.\n      Bind off.\n"
        "  - name: buttonhole band\n    work: |\n      Work as for button band.\n"
    )
    told = "the front that its rows name is that of the button band: the buttonhole band lies at the other."
    assert told in [each.text for each in plan_of(text).warnings]
