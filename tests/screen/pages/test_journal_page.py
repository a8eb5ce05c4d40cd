from __future__ import annotations

from stepper.screen.pages.journal_page import draw_journal_page, find_marked
from stepper.screen.rows import text_of
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


def test_the_marked_entry_is_always_in_sight() -> None:
    """However many there are and however small the screen."""
    desk = Desk().do(*["next", "undo that"] * 40)
    for downs in (0, 3, 39, 500):
        scene = desk.scene("j", *["down"] * downs)
        assert sum(line.startswith("▸") for line in _text(desk, *["down"] * downs, rows=10).splitlines()) == 1
        assert find_marked(scene) == min(downs, len(scene.history) - 1)
