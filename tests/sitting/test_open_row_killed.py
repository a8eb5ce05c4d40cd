"""A sitting that is killed while a row is asked stretch by stretch goes on with the next question."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import time
from pathlib import Path

from tests.project.samples import begun_from_page

WORK = """
Cast on 60 sts. Work flat.
Knit 1 row.
# LOOK (row 3 of the text).
Note: Work to the neck, cast off the middle twirls, twirl to the end.
Knit 2 rows.
"""
WAIT_S = 120.0


def killed_after(path: Path, cues: tuple[str, ...], marker: str) -> str:
    """Knit with typed cues until a line with some words is shown, then kill the program; return what it said."""
    command = [sys.executable, "-m", "stepper", "knit", str(path), "--plain", "--mute", "--deaf"]
    with subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True, env={**os.environ, "PYTHONUNBUFFERED": "1"}) as child:
        assert child.stdin is not None
        assert child.stdout is not None
        child.stdin.write("".join(f"{cue}\n" for cue in cues))
        child.stdin.flush()
        said, until = "", time.monotonic() + WAIT_S
        while marker not in said and time.monotonic() < until:
            line = child.stdout.readline()
            assert line, said
            said += line
        child.send_signal(signal.SIGKILL)
    return said


def test_nothing_she_answered_is_asked_again(tmp_path: Path) -> None:
    """Killed amid the questions, and right behind the last yes: the next evening begins where she was."""
    path = tmp_path / "front.yaml"
    path.write_text(begun_from_page(WORK, sizes="one", size="one"), encoding="utf-8")
    killed_after(path, ("next", "next", "yes", "25"), "25. How many are bound off there?")
    assert "LOOK" in path.read_text(encoding="utf-8")
    said = killed_after(path, ("10", "yes", "yes", "yes"), "Kept so.")
    assert "25. How many are bound off there? If none, say no." in said
    line = "Own words, work 25 sts, hold these 25 sts, bind off 10 sts, work 25 sts: Work to the neck"
    assert line in path.read_text(encoding="utf-8")
    again = killed_after(path, ("how many stitches",), "25")
    assert "LOOK" not in path.read_text(encoding="utf-8")
    assert "How many did you work" not in again


def test_a_garment_that_begins_with_a_row_that_is_not_read_is_begun_where_it_was_left(tmp_path: Path) -> None:
    """Killed at the first questions of all; the cast-on is hers, and the rows behind it are the page's."""
    path = tmp_path / "mitt.yaml"
    work = "# LOOK (row 3 of the text).\nNote: By the twirled way cast on for the rim.\nKnit 2 rows.\nBind off."
    path.write_text(begun_from_page(work, sizes="one", size="one"), encoding="utf-8")
    first = killed_after(path, ("60",), "60. Do you go on in rounds?")
    assert "Starting. Body begins with words that I do not read: By the twirled way cast on for the rim." in " ".join(first.split())
    assert "LOOK" in path.read_text(encoding="utf-8")
    said = killed_after(path, ("no", "yes", "yes"), "Kept so.")
    assert "How many stitches come" not in said
    assert "60 stitches on the needles, in rows, the right side facing: is that so?" in said
    assert "Own words, cast on 60 sts: By the twirled way cast on for the rim." in path.read_text(encoding="utf-8")
