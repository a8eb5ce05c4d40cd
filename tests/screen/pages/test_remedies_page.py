from __future__ import annotations

import re
from dataclasses import replace

import pytest

from stepper.screen.drawing.rows import row_width, text_of
from stepper.screen.keys import Page
from stepper.screen.pages.remedies_page import draw_remedies_page, find_marked_remedy
from stepper.screen.scene import Scene
from stepper.screen.ui_state import UIState
from tests.screen.scenes import Desk, terminal


def _scene(down: int = 0) -> Scene:
    desk = Desk().do("go to yoke round 4", "count is 69", "no loop")
    return replace(desk.scene(), ui=UIState(page=Page.REMEDIES, down=down))


def _text(scene: Scene, columns: int, rows: int) -> list[str]:
    return [text_of(row) for row in draw_remedies_page(scene, terminal(columns, rows))]


@pytest.mark.parametrize("size", [(40, 12), (80, 24), (30, 10), (120, 40)])
def test_every_word_of_every_remedy_can_be_reached(size: tuple[int, int]) -> None:
    """A remedy that is cut cannot be chosen: marked, each stands on the page whole."""
    scene = _scene()
    assert len(scene.asked.remedies) > 1
    for number, remedy in enumerate(scene.asked.remedies):
        shown = _text(_scene(number), *size)
        marked = shown.index(next(line for line in shown if line.startswith("▸")))
        words = " ".join(" ".join(shown[marked:-1]).split())
        assert words.startswith(f"▸ {number + 1} {remedy}")


@pytest.mark.parametrize("size", [(24, 8), (20, 5), (24, 3)])
def test_a_remedy_longer_than_the_window_is_turned_part_by_part(size: tuple[int, int]) -> None:
    """In the smallest window too: turned on as often as the bottom row says, every word of it was shown."""
    all_parts = 0
    for number, remedy in enumerate(_scene().asked.remedies):
        first = _text(_scene(number), *size)
        found = re.search(r"1 of (\d+)", first[-1])
        parts = int(found[1]) if found else 1
        all_parts += parts
        seen = []
        for part in range(parts):
            scene = replace(_scene(number), ui=UIState(page=Page.REMEDIES, down=number, part=part))
            seen += [line[5:] for line in _text(scene, *size)[1:-1]]
        words = iter(" ".join(seen).split())
        assert all(word in words for word in remedy.split())
        again = replace(_scene(number), ui=UIState(page=Page.REMEDIES, down=number, part=parts))
        assert _text(again, *size) == first
    assert all_parts > len(_scene().asked.remedies)


def test_the_mark_stays_on_a_remedy() -> None:
    """Beyond the last there is nothing to take."""
    assert find_marked_remedy(_scene(99)) == len(_scene().asked.remedies) - 1
    assert find_marked_remedy(_scene()) == 0


def test_what_is_off_is_in_sight() -> None:
    """She compares the remedies with the fault in hand."""
    assert "1 too few" in _text(_scene(), 80, 24)[0]


@pytest.mark.parametrize("size", [(1, 1), (10, 3), (40, 12), (200, 60)])
def test_it_has_its_size_whatever_the_size(size: tuple[int, int]) -> None:
    """Nothing is ever wider or higher than the window."""
    drawn = draw_remedies_page(_scene(), terminal(*size))

    assert len(drawn) == size[1]
    assert all(row_width(row) <= size[0] for row in drawn)


def test_without_a_fault_it_says_so() -> None:
    """There is nothing to mend."""
    calm = replace(Desk().scene(), ui=UIState(page=Page.REMEDIES))

    assert "No fault is being looked for." in "\n".join(_text(calm, 80, 24))
