"""What is drawn ahead in idle moments."""

from __future__ import annotations

import asyncio
import math
from collections.abc import Iterator
from types import SimpleNamespace
from typing import Any

import pytest

from stepper.screen import preparation
from stepper.screen.drawing.style import Depth, Terminal
from stepper.screen.pages import yoke_page
from stepper.screen.preparation import Preparation, draw_ahead
from stepper.screen.scene import Scene
from stepper.screen.view import draw_screen
from tests.screen.scenes import Desk, terminal

WIDE = terminal(90, 30, Depth.TRUE)


def test_the_first_turn_to_the_yoke_looks_up_no_stitch_any_more(monkeypatch: pytest.MonkeyPatch) -> None:
    """Finding the stitch of each point takes far longer than a key may: it is done before she asks."""
    scene = Desk().do("go to yoke round 4", "stitch 20").scene("o")
    found: list[float] = []

    def counted(east: float, south: float) -> float:
        found.append(east)
        return math.hypot(east, south)

    monkeypatch.setattr(yoke_page, "math", SimpleNamespace(hypot=counted, atan2=math.atan2, pi=math.pi))
    pieces = sum(1 for _ in draw_ahead(scene, WIDE))
    assert pieces > 30
    assert len(found) > 1000

    found.clear()
    draw_screen(scene, WIDE)
    assert not found


class _Later:
    """What a loop is asked to do later, done when the test says so."""

    def __init__(self) -> None:
        self.due: list[tuple[Any, ...]] = []

    def call_later(self, seconds: float, *call: Any) -> None:
        self.due.append(call)

    def go_on(self) -> None:
        action, *arguments = self.due.pop(0)
        action(*arguments)


def _drawn(monkeypatch: pytest.MonkeyPatch) -> list[tuple[int, int]]:
    """Have four pieces drawn for each plan and size, and note for which columns which of them was."""
    done: list[tuple[int, int]] = []

    def pieces(scene: Scene, screen: Terminal) -> Iterator[None]:
        for number in range(4):
            done.append((screen.columns, number))
            yield

    monkeypatch.setattr(preparation, "draw_ahead", pieces)
    return done


def test_it_goes_on_piece_by_piece_and_ends(monkeypatch: pytest.MonkeyPatch) -> None:
    """Between two pieces a key is taken; after the last nothing runs, or the battery would pay for it."""
    done, later, scene = _drawn(monkeypatch), _Later(), Desk().scene()
    ahead = Preparation()
    ahead.see(scene, WIDE, later)  # type: ignore[arg-type]
    assert not done
    for number in range(4):
        later.go_on()
        assert done[-1] == (90, number)
    later.go_on()
    assert not later.due

    ahead.see(scene, WIDE, later)  # type: ignore[arg-type]
    assert not later.due


def test_a_new_size_ends_what_is_drawn_for_the_old_one(monkeypatch: pytest.MonkeyPatch) -> None:
    """While a window is pulled larger there are many sizes; only the last is worth the work."""
    done, later, scene = _drawn(monkeypatch), _Later(), Desk().scene()
    ahead = Preparation()
    ahead.see(scene, WIDE, later)  # type: ignore[arg-type]
    later.go_on()
    ahead.see(scene, terminal(100, 30), later)  # type: ignore[arg-type]
    while later.due:
        later.go_on()

    assert done == [(90, 0), *((100, number) for number in range(4))]


def test_a_running_loop_draws_all_of_it(monkeypatch: pytest.MonkeyPatch) -> None:
    """The real loop, as the screen has one."""
    done, scene = _drawn(monkeypatch), Desk().scene()

    async def look() -> None:
        Preparation().see(scene, WIDE, asyncio.get_running_loop())
        while len(done) < 4:
            await asyncio.sleep(0.005)

    asyncio.run(asyncio.wait_for(look(), timeout=60))
    assert [number for _, number in done] == [0, 1, 2, 3]
