from __future__ import annotations

import argparse
import json
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from stepper.commands.where import run
from stepper.errors import SurroundingsError
from stepper.store.location import journal_path
from tests.commands.garments import CUFF, PAGE, Sitting, environment, garment, stepper

FIELDS = {
    "title",
    "section",
    "round",
    "of",
    "stitch",
    "stitches",
    "label",
    "finished",
    "rounds_done",
    "rounds_left",
    "stitches_done",
    "stitches_left",
    "last_cue_at",
}
"""What the JSON document holds at least. Source: the project's design, "Commands"."""


def test_the_document_says_where_it_stands(tmp_path: Path) -> None:
    """In the increase round after six stitches and one made: 25 on the needles, four rounds of 24 done."""
    path = garment(tmp_path)
    stepper("knit", path, "--plain", "--mute", typed="go to first increase\nstitch 7\n")

    found = json.loads(stepper("where", path, "--json").stdout)

    assert set(found) >= FIELDS
    assert (found["title"], found["section"], found["label"]) == ("Cuff", "cuff", "First increase")
    assert (found["round"], found["of"], found["stitch"], found["stitches"]) == (5, 17, 7, 25)
    assert (found["rounds_done"], found["rounds_left"], found["finished"]) == (4, 13, False)
    assert found["stitches_done"] == 4 * 24 + 7
    assert found["stitches_done"] + found["stitches_left"] == 4 * 24 + 13 * 28
    assert found["last_cue_at"][:2] == "20"


def test_before_the_first_sitting_it_stands_at_the_beginning(tmp_path: Path) -> None:
    """Asking is not knitting: nothing is written, not even a journal."""
    path = garment(tmp_path)

    found = json.loads(stepper("where", path, "--json").stdout)
    words = stepper("where", path).stdout.splitlines()

    assert (found["round"], found["stitches"], found["last_cue_at"]) == (1, 0, None)
    assert words[:2] == ["Cuff.", "Nothing has been knitted yet."]
    assert not journal_path(path).exists()


def test_it_can_be_asked_while_a_session_is_open(tmp_path: Path) -> None:
    """Someone may want to know while she knits, and sees every cue that was answered."""
    path = garment(tmp_path)
    sitting = Sitting(path)
    sitting.say("next step", "next step")

    found = json.loads(stepper("where", path, "--json").stdout)
    sitting.kill()

    assert found["rounds_done"] == 2


def test_a_damaged_or_missing_journal_is_answered_from_its_copies_and_told(tmp_path: Path) -> None:
    """Neither "nothing is knitted yet" nor a fault of the program: the answer, and where it comes from."""
    path = garment(tmp_path)
    stepper("knit", path, "--plain", "--mute", typed="next step\nnext step\n")
    whole = stepper("where", path)
    assert whole.stderr == ""
    journal_path(path).write_bytes(journal_path(path).read_bytes()[:8000])
    damaged = stepper("where", path)
    journal_path(path).unlink()
    missing = stepper("where", path)

    assert damaged.stdout == missing.stdout == whole.stdout
    assert damaged.stderr == "cuff.journal is damaged; this is what can be read of it and its copies.\n"
    assert missing.stderr == "cuff.journal is missing; this is read from its copies.\n"
    opened = stepper("knit", path, "--plain", "--mute").stdout.splitlines()
    assert opened[1].startswith("cuff.journal was missing and was put back from its copies with 4 entries")
    assert opened[2].startswith("Last done")


def test_a_changed_pattern_is_taken_into_account_and_told(tmp_path: Path) -> None:
    """It answers for the file as it is now, and leaves the telling of what changed to the next sitting."""
    path = garment(tmp_path)
    stepper("knit", path, "--plain", "--mute", typed="go to round 7\n")
    garment(tmp_path, CUFF.replace("Work 3 rounds", "Work 5 rounds"))

    words = stepper("where", path).stdout.splitlines()

    assert (
        words[1] == "Cuff, round 9 of 17, chart dots round 2, at its beginning. 28 stitches on the needles."
    )
    assert words[-1] == "The pattern has changed since then; the next sitting says how."
    assert stepper("where", path).stdout.splitlines() == words


def test_a_place_still_to_be_asked_for_is_told_by_the_pattern_knitted_so_far(tmp_path: Path) -> None:
    """Nobody answers a question here: it says where she was, and that the pattern has changed."""
    path = garment(tmp_path)
    stepper("knit", path, "--plain", "--mute", typed="go to round 7\n")
    garment(tmp_path, CUFF.replace("to 28 sts", "to 32 sts"))
    stepper("knit", path, "--plain", "--mute")  # asked, and not answered

    lines = stepper("where", path).stdout.splitlines()

    assert lines[1].startswith("Cuff, round 7 of 17")
    assert lines[-1] == "The pattern has changed since then; the next sitting says how."


def test_time_is_told_in_words_and_figures(tmp_path: Path) -> None:
    """The finish and what each evening must bring; what a film would bring stands in the figures."""
    path = garment(tmp_path, CUFF.replace("sizes: 1\n", "sizes: 1\nfinish_by: 2099-12-24\n"))
    words = stepper("where", path).stdout
    found = json.loads(stepper("where", path, "--json").stdout)

    assert "of knitting left, at a usual pace until yours is known. Done about" in words
    assert "To be done by 24 December 2099: 1 round" in words
    assert (found["finish_by"], found["rounds_an_evening"], found["pace_measured"]) == (
        "2099-12-24",
        1,
        False,
    )
    assert found["finish_early"] <= found["finish"] <= found["finish_late"]


def test_a_folder_is_listed_whatever_is_in_it(tmp_path: Path) -> None:
    """A broken file, a journal that is none and one that is open in a session are a line each, never the
    end."""
    path = garment(tmp_path, CUFF, "first.yaml")
    garment(tmp_path, CUFF.replace("title: Cuff", "title: Second"), "second.yml")
    garment(tmp_path, CUFF, "odd.yaml").with_suffix(".journal").write_text("no journal", encoding="utf-8")
    garment(tmp_path, CUFF.replace("Cast on 24", "Cats on 24"), "torn.yaml")
    (tmp_path / "shopping.yaml").write_text("- milk\n", encoding="utf-8")
    (tmp_path / "notes.txt").write_text("none of ours", encoding="utf-8")
    sitting = Sitting(path)
    sitting.say("next step")

    ended = stepper("where", tmp_path)
    found = json.loads(stepper("where", tmp_path, "--json").stdout)
    sitting.kill()

    lines = ended.stdout.splitlines()
    assert (ended.returncode, ended.stderr) == (0, "")
    assert lines[0].startswith("Cuff (first.yaml): cuff, round 2 of 17, 5 % done, last touched ")
    assert lines[2].startswith("Second (second.yml): not begun, 17 rounds")
    assert [line.partition(":")[0] for line in lines[3:]] == ["odd.yaml", "shopping.yaml", "torn.yaml"]
    assert "is not a journal" in lines[3]
    assert 'line 20: "Cats" is not understood here.' in lines[5]
    assert [each["file"] for each in found["garments"]] == ["first.yaml", "second.yml"]
    assert [each["file"] for each in found["problems"]] == ["odd.yaml", "shopping.yaml", "torn.yaml"]


def test_without_a_name_it_is_the_folder_one_is_in(tmp_path: Path) -> None:
    """Nothing to type where nothing has to be told apart."""
    garment(tmp_path)
    ended = subprocess.run(
        [sys.executable, "-m", "stepper", "where"],
        cwd=tmp_path,
        env=environment(),
        capture_output=True,
        text=True,
        timeout=60,
        check=True,
    )
    assert ended.stdout.startswith("Cuff (cuff.yaml): not begun")


def test_a_folder_that_has_gone_is_a_fault_of_the_surroundings(tmp_path: Path) -> None:
    """A sentence that names it, not a fault of the program."""
    gone = tmp_path / "gone"
    gone.mkdir()
    with pytest.raises(SurroundingsError, match="gone cannot be read"):
        run(argparse.Namespace(path=_Gone(gone), json=False))


class _Gone(type(Path())):  # type: ignore[misc]
    """A folder that was there a moment ago."""

    def iterdir(self) -> Iterator[Path]:
        raise FileNotFoundError(2, "No such file or directory")


def test_of_a_page_that_is_not_read_to_its_end_only_what_is_known_is_told(tmp_path: Path) -> None:
    """No hour is named, no share, and nothing is called finished."""
    path = garment(tmp_path, PAGE, "mitts.yaml")
    words = stepper("where", path).stdout
    found = json.loads(stepper("where", path, "--json").stdout)
    assert "4 rounds left in cuff" in words
    assert "That is as far as the pattern is read." in words
    assert "knitting left" not in words
    assert (found["whole"], found["finished"], found["of"], found["rounds_left"]) == (False, False, 0, 4)
