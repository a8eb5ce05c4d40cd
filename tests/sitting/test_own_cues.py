from __future__ import annotations

from pathlib import Path

import pytest

from stepper.commands.main import main
from stepper.errors import ProjectError
from stepper.sitting.own_cues import add_own_cues
from stepper.sitting.preferences import Preferences
from stepper.sitting.project_file import load_project
from stepper.sitting.recogniser_wordings import list_wordings
from tests.commands.garments import CUFF, garment, stepper

CUES = "\ncues:\n  weiter bitte: next step\n  zurueck bitte: go back\n"


def test_words_of_the_file_are_followed_and_named_in_the_help(tmp_path: Path) -> None:
    """`cues:` in a file that is called sound has to work: typed, and in the answer to "what can I say"."""
    path = garment(tmp_path, CUFF + CUES)

    done = stepper("knit", path, "--plain", "--mute", typed="weiter bitte\nzurueck bitte\nwhat can i say\n")

    lines = done.stdout.splitlines()
    assert [line for line in lines if "Round 2: knit two" in line]
    assert "round 1 of 17" in lines[-3], "back where it began"
    assert lines[-2].endswith('Your own words: "weiter bitte" for next step; "zurueck bitte" for go back.')
    assert (done.returncode, done.stderr) == (0, "")


def test_words_of_the_file_are_listened_for(tmp_path: Path) -> None:
    """What can be typed can be said, beside the words of her settings."""
    loaded = load_project(garment(tmp_path, CUFF + CUES))
    mine = add_own_cues(loaded, Preferences(wordings={"fertig jetzt": "that is all for tonight"}))

    heard = list_wordings(loaded.plan, mine.wordings).phrases

    assert heard["weiter bitte"] == heard["next step"]
    assert heard["zurueck bitte"] == heard["go back"]
    assert heard["fertig jetzt"] == heard["that is all for tonight"]


@pytest.mark.parametrize(
    ("line", "place", "words"),
    [
        ("tick: next stp", "29:9", 'Did you mean "next step"?'),
        ("carry on: go back", "29:3", '"carry on" is a cue already'),
        ("tick: 's {number}'", "29:9", "has a blank in it"),
    ],
)
def test_words_that_cannot_be_followed_are_a_problem_of_the_file(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], line: str, place: str, words: str
) -> None:
    """Told by `check`, where they stand, and not found out in the middle of a round."""
    path = garment(tmp_path, f"{CUFF}\ncues:\n  {line}\n")

    assert main(["check", str(path)]) == 1
    told = capsys.readouterr().err
    assert f"{path}:{place}: error: " in told
    assert words in told


def test_all_problems_of_a_file_are_told_in_one_run(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """A slip in the cues and one in the work do not take two runs."""
    text = CUFF.replace("increase evenly to 28 sts.", "increase evenly to 27 sts.")
    path = garment(tmp_path, f"{text}\ncues:\n  carry on: go back\n")

    assert main(["check", str(path)]) == 1
    told = capsys.readouterr().err
    assert "is a cue already" in told
    assert "dots" in told


def test_words_that_mean_another_cue_in_her_settings_are_told(tmp_path: Path) -> None:
    """The same words for two cues: which of them counts would be a guess."""
    loaded = load_project(garment(tmp_path, CUFF + CUES))

    with pytest.raises(ProjectError, match=r"29:3: error: .*weiter bitte.* in your settings"):
        add_own_cues(loaded, Preferences(wordings={"Weiter, bitte": "go back"}))
    same = add_own_cues(loaded, Preferences(wordings={"weiter bitte": "carry on"}))
    assert same.wordings["weiter bitte"] == "next step"
