"""Pieces laid flat, against arithmetic on the printed counts and gauges of the samples."""

from __future__ import annotations

from itertools import pairwise
from pathlib import Path

import pytest

from stepper.report.sheet.pieces import GarmentPiece, lay_out_pieces, merge_like_pieces
from stepper.sitting.project_file import load_project

SAMPLES = Path(__file__).parents[2] / "fixtures"


def laid(name: str) -> tuple[GarmentPiece, ...]:
    """Lay out a sample."""
    loaded = load_project(SAMPLES / f"{name}.yaml")
    return lay_out_pieces(loaded.plan, loaded.project)


def test_a_pullover_is_a_body_and_two_sleeves() -> None:
    """Size 4 then 2: cast on 100 at 24 to 10 cm is 41.7 cm; 164 end in a rib at 24, 68.3 cm around; the
    sleeves begin with 50 + 10 stitches at 21.5."""
    body, left, right = laid("switchback")
    assert body.levels[0].around_mm == pytest.approx(100 / 24 * 100)
    assert body.levels[-1].around_mm == pytest.approx(164 / 24 * 100)
    assert body.levels[-1].wide_mm == pytest.approx(body.levels[-1].around_mm / 2)
    assert body.divided_mm is not None
    assert [part.name for part in body.parts] == ["neckband", "yoke", "body"]
    assert (left.sleeve, right.sleeve, left.levels) == (True, True, right.levels)
    assert left.levels[0].around_mm == pytest.approx(60 / 21.5 * 100)


def test_lengths_are_rounds_by_their_gauge() -> None:
    """The body's 96 rounds at 29 to 10 cm after blocking and 16 of rib at 32 are 38.1 cm (arithmetic)."""
    body = laid("switchback")[0]
    part = body.parts[-1]
    assert part.end_mm - part.start_mm == pytest.approx(96 / 29 * 100 + 16 / 32 * 100)
    assert body.parts[0].start_mm == 0
    for one, other in pairwise(body.parts):
        assert one.end_mm == pytest.approx(other.start_mm)


def test_what_is_worked_in_rows_lies_single() -> None:
    """137 stitches of shawl at 17 to 10 cm are 80.6 cm wide."""
    (shawl,) = laid("shawl")
    assert not shawl.doubled
    assert shawl.widest.wide_mm == pytest.approx(137 / 17 * 100)


@pytest.mark.parametrize(("name", "count"), [("hat", 1), ("mittens", 4), ("socks", 2), ("cardigan", 6)])
def test_every_piece_is_laid_out(name: str, count: int) -> None:
    """Hand and thumb twice, two socks; body, sleeves, neckband and both bands."""
    assert len(laid(name)) == count


@pytest.mark.parametrize(("name", "count"), [("mittens", 2), ("socks", 1), ("cardigan", 4)])
def test_the_two_of_a_pair_are_drawn_once(name: str, count: int) -> None:
    """With the names of both."""
    found = merge_like_pieces(laid(name))
    assert len(found) == count
    assert all(" / " in part.name for part in found[0].parts) or name == "cardigan"


@pytest.mark.parametrize("path", sorted(SAMPLES.glob("*.yaml")), ids=lambda path: path.stem)
def test_an_outline_goes_down_and_stays_within_the_piece(path: Path) -> None:
    """From the first edge to the last, as wide at both as the piece is, and nowhere wider."""
    for piece in laid(path.stem):
        depths = [side.depth_mm for side in piece.sides]
        assert depths == sorted(depths)
        assert (depths[0], depths[-1]) == (0, piece.long_mm)
        assert piece.sides[0].wide_mm == piece.levels[0].wide_mm
        assert piece.sides[-1].wide_mm == piece.levels[-1].wide_mm
        assert max(side.wide_mm for side in piece.sides) <= piece.widest.wide_mm


def test_the_chest_is_measured_below_the_divide_also_where_the_divide_has_a_section_of_its_own(tmp_path: Path) -> None:
    """164 body stitches at 21.5 to 10 cm: the drawing named all the stitches of the yoke, sleeves and all, the chest."""
    text = (SAMPLES / "switchback.yaml").read_text(encoding="utf-8")
    (divide,) = [line for line in text.splitlines() if line.strip().startswith("Divide:")]
    path = tmp_path / "switchback.yaml"
    apart = f"  - name: divide\n    gauge: stockinette\n    yarn: MC\n    work: |\n{divide}\n  - name: body"
    path.write_text(text.replace(f"{divide}\n", "", 1).replace("  - name: body", apart, 1), encoding="utf-8")
    loaded = load_project(path)
    body = lay_out_pieces(loaded.plan, loaded.project)[0]
    assert body.divided_mm is not None
    below = next(level for level in body.levels if level.depth_mm > body.divided_mm)
    split = next(each for each in loaded.plan.rounds if each.holds)
    assert (split.section, split.after) == ("divide", 164)
    assert below.around_mm == pytest.approx(164 / 21.5 * 100)
    assert max(level.around_mm for level in body.levels if level.depth_mm <= body.divided_mm) > below.around_mm
