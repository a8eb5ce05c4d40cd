from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.screen.drawing.rows import row_width, text_of
from stepper.screen.drawing.style import Depth
from stepper.screen.garment_record import GarmentRecord
from stepper.screen.pages.finished_page import CARE, draw_finished_page
from stepper.screen.scene import Scene
from tests.plans import plan
from tests.screen.scenes import Desk, terminal

RECORD = GarmentRecord(
    begun="2027-01-05",
    ended="2027-02-14",
    evenings=23,
    seconds=41.4 * 3600,
    altered=("Body: 4 cm longer",),
    notes=("the left sleeve is looser",),
)


def _scene(*keys: str, desk: Desk | None = None) -> Scene:
    done = (desk or Desk()).do("go to body round 3", "next")
    return replace(done.scene(*keys), record=RECORD)


def _text(columns: int, rows: int) -> str:
    """Turn all pages with tab; return what stands between title and bottom."""
    lines: dict[str, None] = {}
    for turned in range(12):
        drawn = draw_finished_page(_scene(*["tab"] * turned), terminal(columns, rows, Depth.NONE))
        lines |= dict.fromkeys(text_of(row) for row in drawn[1:-2])
    return " ".join(" ".join(lines).split())


def test_it_tells_the_days_the_hours_and_the_stitches() -> None:
    """Evenings and hours come from her journal, rounds and stitches from the plan; 41.4 hours are about 41."""
    text = _text(45, 40)

    assert "5 January 2027 to 14 February 2027: 23 evenings, about 41 h at the needles." in text
    assert "12 rounds, 748 stitches." in text


@pytest.mark.parametrize("size", [(40, 12), (30, 8)])
def test_all_of_it_can_be_turned_to_in_the_smallest_window(size: tuple[int, int]) -> None:
    """What was altered, what she noted, and the care of wool to its last word."""
    text = _text(*size)

    for words in (*CARE, "Body: 4 cm longer.", "the left sleeve is looser"):
        assert words in text


def test_wool_is_warned_of() -> None:
    """Common practice: wool felts by rubbing and by changes of heat, so cool water and still hands."""
    care = " ".join(CARE)

    assert "cool water" in care
    assert "felts if it is rubbed or wrung, or goes from warm water to cold" in care
    assert "dry away from sun and heaters" in care


def test_the_yoke_stands_beside_the_text_if_there_is_one() -> None:
    """A page worth reaching shows what was made; a mitten has no yoke, and none is drawn."""
    with_yoke = draw_finished_page(_scene(), terminal(120, 40))
    mitten = Desk(plan(("cuff", ["co8", "k8"]), ("hand", ["k8"]))).do("go to hand round 1", "next")
    without = draw_finished_page(mitten.scene(), terminal(120, 40))

    assert any("B B" in text_of(row)[70:] for row in with_yoke)
    assert not any(". ." in text_of(row) for row in without)


@pytest.mark.parametrize("size", [(1, 1), (12, 4), (40, 12), (80, 24), (200, 60)])
def test_it_has_its_size_whatever_the_size(size: tuple[int, int]) -> None:
    """Nothing is ever wider or higher than the window."""
    drawn = draw_finished_page(_scene(), terminal(*size))

    assert len(drawn) == size[1]
    assert all(row_width(row) <= size[0] for row in drawn)
