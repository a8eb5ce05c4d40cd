"""What the row at which a sitting stands is taken for, where lines are worked once more and where a line is read."""

from __future__ import annotations

from pathlib import Path

from stepper.language.open_words import say_proposed
from stepper.plan.model import OpenKind, PartKind, Proposed, RowPart
from stepper.session.state import OpenAnswer
from stepper.settling.in_sitting import OpenRows
from stepper.settling.looked import look
from stepper.sitting.project_file import load_as_far, load_project
from tests.project.samples import begun_from_page

SECTION = "  - name: {}\n    work: |\n"


def rows_of(tmp_path: Path, *sections: tuple[str, str]) -> OpenRows:
    """Return what settles the row at which a garment of some sections ends."""
    path = tmp_path / "jacket.yaml"
    front = begun_from_page("Knit.", sizes="one", size="one").partition("  - name:")[0]
    lines = "".join(
        SECTION.format(name) + "".join(f"      {each}\n" for each in work.split("\n")) for name, work in sections
    )
    path.write_text(front + lines, encoding="utf-8")
    loaded = load_as_far(path)
    assert loaded is not None
    return OpenRows(loaded)


def test_a_second_piece_that_does_not_fit_is_knitted_by_its_words_in_a_section_of_its_own(tmp_path: Path) -> None:
    """What waited is used up by the first; the lines of that stay as she knitted them."""
    rows = rows_of(
        tmp_path,
        ("body", "Cast on 40 sts. Join in the round.\nNext round: K20, hold 20 for sleeve.\nBind off."),
        ("sleeves", "Sleeves (make 2)\nPlace sleeve sts back on needles. Join in the round.\nKnit 2 rounds.\nBind off."),
    )
    row, known = rows.loaded.plan.open, rows.loaded.plan.rounds
    assert row is not None
    assert (row.words, row.trouble) == ("Knit the second as the first: Sleeves (make 2)", "")
    assert known[-1].after == 0
    came = rows.settle(OpenAnswer(kind=OpenKind.COME, rows=1, stitches=20, round=True))
    assert not isinstance(came, str), came
    assert [each.before for each in came.plan.rounds[: len(known)]] == [each.before for each in known]
    assert came.plan.open is not None
    assert came.plan.open.proposed is None  # it is no heading: what is knitted for it she counts
    done = rows.settle(OpenAnswer(kind=OpenKind.ROWS, rows=3, stitches=0))
    assert not isinstance(done, str), done
    sound = load_project(rows.loaded.path)
    assert [each.after for each in sound.plan.rounds[len(known) :]] == [20, 20, 20, 0]
    assert sound.plan.sections == ("body", "sleeves", "sleeves, second")


def test_the_first_of_two_is_bound_off_before_the_second_is_cast_on(tmp_path: Path) -> None:
    """Its last row was kept as a remark: a yes to the second alone was refused, for the stitches that still hang there."""
    rows = rows_of(tmp_path, ("sleeves", "Sleeves (make 2)\nCast on 60 sts. Work flat.\nKnit 2 rows.\nNote: 60 are left."))
    row = rows.loaded.plan.open
    assert row is not None
    assert row.proposed == Proposed(kind=OpenKind.AGAIN, part="sleeves", moved="60")
    assert say_proposed(row.proposed, flat=True) == "all 60 stitches bound off, then sleeves once more"
    after = rows.settle(OpenAnswer(kind=OpenKind.AGAIN))
    assert not isinstance(after, str), after
    assert after.plan.open is None
    assert [each.after for each in after.plan.rounds] == [60, 60, 60, 0, 60, 60, 60]


def test_lines_that_fit_the_other_sleeve_but_for_one_come_once_more_and_that_one_is_asked_about(tmp_path: Path) -> None:
    """Ten stitches fewer: only the row that counts its stitches is hers."""
    rows = rows_of(
        tmp_path,
        ("left sleeve", "Cast on 40 sts. Work flat.\nKnit 2 rows.\nPurl 4 rows.\nNext row: K36, k2tog, k2.\nBind off."),
        ("right sleeve", "Cast on 30 sts. Work flat.\nKnit 2 rows.\nComplete as for left sleeve."),
    )
    row, known = rows.loaded.plan.open, len(rows.loaded.plan.rounds)
    assert row is not None
    assert row.proposed == Proposed(kind=OpenKind.AGAIN, part="left sleeve, from Purl 4 rows on,")
    after = rows.settle(OpenAnswer(kind=OpenKind.AGAIN))
    assert not isinstance(after, str), after
    assert len(after.plan.rounds) == known + 4
    assert after.plan.open is not None
    assert after.plan.open.words == "Next row: K36, k2tog, k2."
    assert not isinstance(rows.settle(OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=29)), str)
    assert [each.after for each in load_project(rows.loaded.path).plan.rounds[-2:]] == [29, 0]


def test_the_other_side_never_comes_once_more_as_it_stands(tmp_path: Path) -> None:
    """Its edges would be the wrong way round."""
    left = "Cast on 40 sts. Work flat.\nKnit 2 rows.\nPurl 4 rows.\nNext row: K36, k2tog, k2.\nBind off."
    rows = rows_of(
        tmp_path, ("left front", left), ("right front", "Cast on 30 sts. Work flat.\nKnit 2 rows.\nComplete as for left front.")
    )
    assert rows.loaded.plan.open is not None
    assert rows.loaded.plan.open.proposed is None
    assert look(rows.loaded).reply is None


def test_behind_a_gap_that_a_row_of_the_page_leaves_it_is_asked_where_the_next_turns(tmp_path: Path) -> None:
    """Its count cannot be kept: no row works across a gap."""
    neck = "Cast on 40 sts. Work flat.\nKnit 2 rows.\nNext row: K15, bind off 10, k to end.\nTwirl 1 row.\nKnit 2 rows.\nBind off."
    rows = rows_of(tmp_path, ("front", neck))
    row = rows.loaded.plan.open
    assert row is not None
    assert row.turns
    assert isinstance(rows.settle(OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=30)), str)
    parts = (RowPart(kind=PartKind.WORKED, stitches=15, leaves=15), RowPart(kind=PartKind.BEYOND, stitches=15))
    after = rows.settle(OpenAnswer(kind=OpenKind.PARTS, parts=parts))
    assert not isinstance(after, str), after
    assert [each.after for each in after.plan.rounds[-4:]] == [15, 15, 15, 0]


def test_the_second_of_two_that_wait_comes_back_under_the_name_that_lines_have_for_it(tmp_path: Path) -> None:
    """It waits as a copy of the first."""
    sleeves = "Sleeves (make 2)\nCast on 20 sts. Join in the round.\nKnit 2 rounds."
    rows = rows_of(tmp_path, ("sleeves", sleeves), ("yoke", "Twirl the second sleeve from its holder.\nKnit 2 rounds."))
    row = rows.loaded.plan.open
    assert row is not None
    assert row.held[0] == ("sleeves, second", 20)
    after = rows.settle(OpenAnswer(kind=OpenKind.TAKEN, rows=1, stitches=20, name="sleeves, second", round=True))
    assert not isinstance(after, str), after
    assert "Place second sleeve sts back on needles." in rows.loaded.path.read_text(encoding="utf-8")
