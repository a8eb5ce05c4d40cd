from __future__ import annotations

import json
from pathlib import Path

from stepper.store.location import journal_path
from tests.commands.garments import CUFF, Sitting, garment, stepper

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
    """In the increase round after three stitches and one made: 25 on the needles, four rounds of 24 done."""
    path = garment(tmp_path)
    stepper("knit", path, "--plain", "--mute", typed="go to first increase\nstitch 4\n")

    found = json.loads(stepper("where", path, "--json").stdout)

    assert set(found) >= FIELDS
    assert (found["title"], found["section"], found["label"]) == ("Cuff", "cuff", "First increase")
    assert (found["round"], found["of"], found["stitch"], found["stitches"]) == (5, 17, 4, 25)
    assert (found["rounds_done"], found["rounds_left"], found["finished"]) == (4, 13, False)
    assert found["stitches_done"] == 4 * 24 + 4
    assert found["stitches_done"] + found["stitches_left"] == 4 * 24 + 13 * 28
    assert found["last_cue_at"][:2] == "20"


def test_before_the_first_sitting_it_stands_at_the_beginning(tmp_path: Path) -> None:
    """Asking is not knitting: nothing is written, not even a journal."""
    path = garment(tmp_path)

    found = json.loads(stepper("where", path, "--json").stdout)
    words = stepper("where", path).stdout.splitlines()

    assert (found["round"], found["stitches"], found["last_cue_at"]) == (1, 0, None)
    assert words[:2] == ["Cuff.", "Nothing is knitted yet."]
    assert not journal_path(path).exists()


def test_it_can_be_asked_while_a_session_is_open(tmp_path: Path) -> None:
    """Someone may want to know while she knits, and sees every cue that was answered."""
    path = garment(tmp_path)
    sitting = Sitting(path)
    sitting.say("next step", "next step")

    found = json.loads(stepper("where", path, "--json").stdout)
    sitting.kill()

    assert found["rounds_done"] == 2


def test_a_changed_pattern_is_taken_into_account_and_told(tmp_path: Path) -> None:
    """It answers for the file as it is now, and leaves the telling of what changed to the next sitting."""
    path = garment(tmp_path)
    stepper("knit", path, "--plain", "--mute", typed="go to round 7\n")
    garment(tmp_path, CUFF.replace("Work 3 rounds", "Work 5 rounds"))

    words = stepper("where", path).stdout.splitlines()

    assert (
        words[1] == "Cuff, round 9 of 17, chart dots round 2, at stitch 0 of 28. 28 stitches on the needles."
    )
    assert words[-1] == "The pattern has changed since then; the next sitting says how."
    assert stepper("where", path).stdout.splitlines() == words
