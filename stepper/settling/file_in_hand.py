"""The project file while it is settled: what its questions have to know of it, and how it is written."""

from __future__ import annotations

import os
import shutil
import stat
from collections.abc import Iterable
from contextlib import suppress
from pathlib import Path

from stepper.craft.figures import list_words
from stepper.errors import SurroundingsError
from stepper.project.page.unread.answers import AnsweredNumber
from stepper.project.page.unread.kept_rows import keep_for_size
from stepper.project.problems import Problem
from stepper.project.reader import read_project
from stepper.project.yaml_file.source import read_picture, read_text
from stepper.records import dataclass
from stepper.settling.prompting import ask_read
from stepper.sitting.folding import print_folded


@dataclass(slots=True, kw_only=True)
class FileInHand:
    """A project file's text, with the sizes its questions are about."""

    folder: Path
    """Where its pictures are."""
    text: str
    sizes: tuple[str, ...]
    """Their names; a single one if the file names none yet."""
    size: str
    """The one that is knitted."""
    alone: bool
    """Whether the file is kept for that size alone."""
    inches: bool

    @property
    def several(self) -> bool:
        """Whether a single number may not be for every size that the file is for."""
        return len(self.sizes) > 1 and not self.alone

    def settle_sizes(self, numbers: Iterable[AnsweredNumber]) -> None:
        """Ask for which sizes single numbers are, if there are several; keep the file for hers if so.

        Args:
            numbers: What was typed about one row, and is not printed.

        Raises:
            LaterAsked: As `stepper.settling.prompting.ask`.
        """
        single = [each.text for each in numbers if each.single]
        if not self.several or not single:
            return
        are = "Is" if len(single) == 1 else "Are"
        alone = {"alone": True, "a": True, "every": False, "e": False}
        if ask_read(
            f"{are} {list_words(single)} for size {self.size} alone, or for every size?",
            "alone",
            lambda said: alone.get(said.lower(), "Answer alone or every."),
        ):
            self.keep_for_hers()
            self.tell_kept()

    def keep_for_hers(self) -> bool:
        """Keep the file for her size alone; return whether it was for several until now."""
        several = self.several
        if several:
            self.text, self.alone = keep_for_size(self.text, self.size), True
        return several

    def tell_kept(self) -> None:
        """Tell that the file is for her size alone from here."""
        print_folded(
            [
                f"The file is kept for size {self.size} alone from here (only: {self.size}); "
                "no other size is worked out."
            ]
        )

    def problems_with(self, text: str, first: int, rows: int) -> tuple[Problem, ...]:
        """Return what is not read in some rows of a changed text.

        Args:
            text: The text, changed.
            first: The first of the rows, from 1.
            rows: How many.
        """
        reading = read_project(text, lambda picture: read_picture(self.folder / picture))
        return tuple(each for each in reading.problems if first <= each.line < first + rows)


def take_in_hand(text: str, folder: Path) -> FileInHand:
    """Read what the questions have to know of a file.

    Args:
        text: Its text, sound or not.
        folder: Where its pictures are.
    """
    reading = read_project(text, lambda picture: read_picture(folder / picture))
    project = reading.project or reading.partial
    return FileInHand(
        folder=folder,
        text=text,
        sizes=project.sizes if project is not None else ("1",),
        size=project.sizes[project.size] if project is not None else "1",
        alone=project is not None and project.alone is not None,
        inches=project is not None and project.units == "in",
    )


def read_lines(path: Path) -> str:
    """Read a project file, its lines ended as everywhere but on Windows.

    Raises:
        StepperError: It cannot be read.
    """
    return read_text(path).replace("\r\n", "\n")


def write_whole(path: Path, text: str, *, crlf: bool = False) -> None:
    """Write a project file, whole or not at all; its permissions stay.

    Args:
        path: The file; a link is followed.
        text: Its text.
        crlf: Whether its lines end as on Windows.

    Raises:
        SurroundingsError: It cannot be written, or is read-only; what was there still is.
    """
    real = path.resolve()
    beside = real.with_name(f"{real.name}-new")
    try:
        if not real.stat().st_mode & stat.S_IWUSR or not os.access(real, os.W_OK):
            raise SurroundingsError(f"{path} is read-only, so nothing can be settled in it.")
        beside.write_text(text, encoding="utf-8", newline="\r\n" if crlf else "\n")
        shutil.copymode(real, beside)
        beside.replace(real)
    except OSError as error:
        raise SurroundingsError(f"{path} cannot be written: {error.strerror or error}.") from error
    finally:
        with suppress(OSError):
            beside.unlink(missing_ok=True)
