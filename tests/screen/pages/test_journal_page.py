from __future__ import annotations

import pytest

from stepper.screen.drawing.rows import text_of
from stepper.screen.pages.journal_page import draw_journal_page, find_marked
from tests.screen.scenes import Desk, terminal


def _text(desk: Desk, *keys: str, rows: int = 24) -> str:
    return "\n".join(
        text_of(row).rstrip() for row in draw_journal_page(desk.scene("j", *keys), terminal(80, rows))
    )


def test_what_enter_would_do_is_said_beforehand() -> None:
    """Undo, redo or nothing."""
    desk = Desk().do("next", "next", "next", "undo that")

    assert "Enter does 1 again." in _text(desk)
    assert "This is where the knitting stands." in _text(desk, "down")
    assert "Enter takes back 1; r does them again." in _text(desk, "down", "down")


@pytest.mark.parametrize("size", [(24, 10), (40, 12), (80, 24)])
def test_the_marked_entry_is_never_cut(size: tuple[int, int]) -> None:
    """She must know what she goes back to, in a small window too."""
    desk = Desk().do(
        "next", "next", "note: soft on the left side, tighter from the second marker on", "undo that"
    )
    for number, entry in enumerate(desk.scene("j").history):
        rows = [
            text_of(row) for row in draw_journal_page(desk.scene("j", *["down"] * number), terminal(*size))
        ]
        start = next(at for at, line in enumerate(rows) if line.startswith("▸"))
        assert entry.what in " ".join(" ".join(rows[start:-2]).split())


def test_the_marked_entry_is_always_in_sight() -> None:
    """However many there are and however small the screen."""
    desk = Desk().do(*["next", "undo that"] * 40)
    for downs in (0, 3, 39, 500):
        scene = desk.scene("j", *["down"] * downs)
        assert sum(line.startswith("▸") for line in _text(desk, *["down"] * downs, rows=10).splitlines()) == 1
        assert find_marked(scene) == min(downs, len(scene.history) - 1)
