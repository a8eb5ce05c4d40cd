"""The screen of a garment as a picture, without a sitting."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from stepper.errors import SurroundingsError
from stepper.screen.course import course_of
from stepper.screen.device_status import DeviceStatus, MouthState
from stepper.screen.drawing.picture import write_svg
from stepper.screen.drawing.rows import Row, text_of
from stepper.screen.drawing.style import Terminal
from stepper.screen.pages.step_text import word_step
from stepper.screen.scene import Scene
from stepper.screen.view import draw_screen
from stepper.sitting.clock import now
from stepper.sitting.full_screen import list_screen_yarns
from stepper.sitting.project_file import LoadedProject
from stepper.sitting.session_journal import open_to_read, resume_session
from stepper.store.location import journal_path

PICTURE = (80, 24)
"""Columns and rows of a picture."""
_NO_MICROPHONE = "keys and typed cues only"


def write_picture(loaded: LoadedProject, target: Path) -> None:
    """Write the screen as it would appear now, as SVG. The journal is read, never written.

    Args:
        loaded: The project file.
        target: The file to write; an existing one is replaced.

    Raises:
        SurroundingsError: The journal cannot be read or the picture cannot be written.
    """
    with open_to_read(journal_path(loaded.path)) as journal:
        session = resume_session(loaded, journal, now()).session
    scene = Scene(
        course=course_of(session.plan),
        state=session.state,
        yarns=list_screen_yarns(loaded),
        devices=DeviceStatus(why_no_ears=_NO_MICROPHONE, mouth=MouthState.QUIET),
    )
    rows = draw_screen(scene, Terminal(columns=PICTURE[0], rows=PICTURE[1]))
    try:
        target.write_text(write_svg(rows, PICTURE[0], title=_in_words(scene, rows)), encoding="utf-8")
    except OSError as error:
        raise SurroundingsError(f"{target} cannot be written: {error.strerror}.") from error


def _in_words(scene: Scene, rows: Sequence[Row]) -> str:
    """Return the step and the text of the screen, without block characters, for those who cannot see the
    picture."""
    text = " ".join(text_of(row) for row in rows)
    if scene.state.place.index < len(scene.course.rounds):
        text = f"{' '.join(word_step(scene).clauses)} {text}"
    return " ".join("".join(sign if sign.isascii() else " " for sign in text).split())
