from __future__ import annotations

import time
from collections.abc import Iterator
from pathlib import Path

import pytest

from stepper.session.cues import Next
from stepper.session.machine import Session
from stepper.sitting.conductor import Conductor
from stepper.sitting.front_end import FrontEnd, SittingView
from stepper.sitting.line_mode import LineMode, complain
from stepper.sitting.ports import ConductorPorts
from tests.commands.garments import Sitting, garment, stepper
from tests.plans import final_increase
from tests.playbook import AT


def _opened(lines: LineMode) -> Conductor:
    ports = ConductorPorts(keep=lambda events, state: None, show=lines.show, clock=lambda: AT, turn=lines.turn)
    conductor = Conductor(Session(final_increase()), ports)
    lines.open(
        SittingView(
            title="Swatch",
            conductor=conductor,
            history=tuple,
            whole_history=tuple,
            speaker=None,
            why_no_voice="",
            why_no_ears="",
        )
    )
    return conductor


def test_the_title_comes_first_and_each_line_as_it_is_told(capsys: pytest.CaptureFixture[str]) -> None:
    """A screen reader reads nothing but what the session says."""
    lines = LineMode(prompts=False)
    _opened(lines)
    lines.show("Knit one.")

    assert capsys.readouterr() == ("Swatch.\nKnit one.\n", "")


def test_what_is_beside_the_knitting_goes_to_standard_error(capsys: pytest.CaptureFixture[str]) -> None:
    """What a script reads as answers are answers."""
    lines = LineMode(prompts=False)
    conductor = _opened(lines)
    capsys.readouterr()
    lines.report_voice("There is no voice.")
    lines.report_ears(True, "Listening.")
    lines.hear("next step")
    lines.hear("")
    complain("Enough of it.")

    told = capsys.readouterr()
    assert told.out == ""
    assert told.err.splitlines() == [
        "There is no voice.",
        "Listening.",
        'Heard "next step".',
        "Heard something that is no cue.",
        "Enough of it.",
    ]
    conductor.drain()
    assert conductor.session.state.seq == 1


def test_a_recording_is_followed_to_its_end_which_is_enough(capsys: pytest.CaptureFixture[str]) -> None:
    """Cues are worked off one by one; where they end, so does the sitting, unless it ended before."""
    lines = LineMode(prompts=True)
    conductor = _opened(lines)
    lines.run(iter(["next step", "where am i"]))
    assert conductor.closed
    assert capsys.readouterr().out.splitlines()[-1].startswith("Done so far: ")

    def ends_early() -> Iterator[str]:
        yield "that is all for tonight"
        raise AssertionError("nothing is asked for any more")

    _opened(lines)
    lines.run(ends_early())


def test_a_cue_is_offered_after_a_while() -> None:
    """Reading along needs a clock, and the session has none."""
    lines = LineMode(prompts=False)
    conductor = _opened(lines)
    lines.schedule(0.0, Next())
    for _ in range(1000):
        conductor.drain()
        if conductor.session.state.seq:
            break
        time.sleep(0.01)
    assert conductor.session.state.seq == 1


def test_there_is_no_page_to_turn_to() -> None:
    """So what a page would show is told in words."""
    lines: FrontEnd = LineMode(prompts=False)
    assert lines.turn is None
    assert not lines.listens_by_itself


def test_the_end_of_the_input_is_enough_and_the_next_sitting_goes_on(tmp_path: Path) -> None:
    """Closing the lid says where it stops; opening it again says what was done last and what comes first."""
    path = garment(tmp_path)
    first = stepper("knit", path, "--plain", "--mute", typed="next step\nnext step\nstitch 9\n")
    second = stepper("knit", path, "--plain", "--mute", typed="that is all for tonight\nnext step\n")

    assert first.stdout.splitlines()[-1] == (
        "Done so far: Cuff, round 3 of 17, stitch 9. First next time: Cuff, round 3 of 17, at stitch 9: "
        "knit one, purl two; then knit two, purl two, three times."
    )
    lines = second.stdout.splitlines()
    assert lines[0] == "Cuff."
    assert lines[1].startswith("Last done on ")
    assert lines[1].endswith(": Cuff, round 3 of 17, stitch 9.")
    assert lines[2].startswith("At stitch 9: knit one")
    assert len(lines) == 4  # after "that is all" nothing more is answered


def test_each_cue_is_answered_at_once(tmp_path: Path) -> None:
    """A line typed is answered before the next is typed, also through a pipe; nonsense too."""
    sitting = Sitting(garment(tmp_path))

    assert sitting.say("next step")[-1] == "Join in the round. Round 2: knit two, purl two, six times."
    assert sitting.say("film o") == ['Not understood: "film o". Did you mean: film on or film off?']
    assert sitting.say("where am i") == [
        "Cuff, round 2 of 17, at its beginning. 24 stitches on the needles."
    ]
    sitting.kill()


def test_notes_survive_any_bytes(tmp_path: Path) -> None:
    """A line that is no UTF-8 must not end the session."""
    path = garment(tmp_path)
    sitting = Sitting(path)
    sitting.stdin.buffer.write(b"make a note \xff\xfe caf\xe9\n")

    assert sitting.say()[0].startswith("Noted: ")
    sitting.kill()
