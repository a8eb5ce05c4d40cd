"""Drawing ahead in idle moments: what the first turn to another page needs and what rests on plan and size.

It is done in pieces of a few milliseconds, so that a key never waits for more than one of them; once all are
done, nothing runs any more.
"""

from __future__ import annotations

import asyncio
from collections.abc import Iterator
from typing import Final

from stepper.screen.drawing.style import Terminal
from stepper.screen.pages.chart_page import prepare_chart
from stepper.screen.pages.yoke_page import prepare_yoke
from stepper.screen.scene import Scene

_FIRST_S: Final = 0.3
"""How long after a new plan or size drawing ahead begins: she may be about to press a key. Unit: s."""
_BETWEEN_S: Final = 0.005
"""Pause between two pieces, in which keys are taken. Unit: s."""


def draw_ahead(scene: Scene, terminal: Terminal) -> Iterator[None]:
    """Draw ahead what the pages of chart and yoke need, one piece with each step."""
    yield from prepare_chart(scene, terminal)
    yield from prepare_yoke(scene, terminal)


class Preparation:
    """What is drawn ahead for one plan on one terminal at a time."""

    def __init__(self) -> None:
        """Have nothing drawn yet."""
        self._known: tuple[object, Terminal] | None = None
        self._pieces: Iterator[None] = iter(())

    def see(self, scene: Scene, terminal: Terminal, loop: asyncio.AbstractEventLoop) -> None:
        """Take note of what is on the screen; if plan or terminal are new, draw ahead for them soon."""
        if self._known is not None and self._known[0] is scene.course and self._known[1] == terminal:
            return
        self._known = scene.course, terminal
        self._pieces = pieces = draw_ahead(scene, terminal)
        loop.call_later(_FIRST_S, self._go_on, pieces, loop)

    def _go_on(self, pieces: Iterator[None], loop: asyncio.AbstractEventLoop) -> None:
        """Draw one piece, and the next a little later, unless there is another plan or size by now."""
        if pieces is not self._pieces:
            return
        try:
            next(pieces)
        except StopIteration:
            return
        loop.call_later(_BETWEEN_S, self._go_on, pieces, loop)
