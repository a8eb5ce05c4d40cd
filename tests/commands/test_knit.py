from __future__ import annotations

import signal
import time
from itertools import pairwise
from pathlib import Path

import pytest

from stepper.session.events import Advanced, Undone
from stepper.session.replay import list_standing
from stepper.session.state import Position
from stepper.sitting.session_journal import read_events, restore_state
from stepper.store.journal import Journal
from stepper.store.location import journal_path
from tests.commands.garments import CUFF, PAGE, Sitting, garment, stepper

ROUNDS = 17
STEPS = 18
"""Cues of "next" from the cast-on to the end: one a round, and one for what is to be done before the last."""


@pytest.fixture(scope="module")
def unbroken(tmp_path_factory: pytest.TempPathFactory) -> list[list[str]]:
    """Knit the whole garment in one sitting and give the answers."""
    sitting = Sitting(garment(tmp_path_factory.mktemp("unbroken")))
    answers = [sitting.say("next step") for _ in range(STEPS)]
    sitting.kill()
    return answers


def test_the_first_lines_are_title_start_and_instruction(tmp_path: Path) -> None:
    """Whoever reads along with a screen reader hears at once what this is and what to do."""
    done = stepper("knit", garment(tmp_path), "--plain", "--mute")

    assert done.stdout.splitlines() == [
        "Cuff.",
        "Starting: 17 rounds in all. Say next step when a step is done.",
        "Cuff, round 1 of 17: cast on twenty four.",
        "First next time: Cuff, round 1 of 17: cast on twenty four.",
    ]
    assert (done.returncode, done.stderr) == (0, "")


@pytest.mark.parametrize("every", [1, 5])
def test_killed_after_every_so_many_cues_nothing_is_lost_or_doubled(
    tmp_path: Path, every: int, unbroken: list[list[str]]
) -> None:
    """A whole garment with the power cut again and again tells the same steps as one knitted in peace."""
    path = garment(tmp_path)
    answers: list[list[str]] = []
    while len(answers) < STEPS:
        sitting = Sitting(path)
        if answers:
            assert sitting.opening[-1].endswith(answers[-1][-1].split(": ", 1)[-1])
        answers += [sitting.say("next step") for _ in range(min(every, STEPS - len(answers)))]
        sitting.kill()

    assert answers == unbroken
    with Journal.read_only(journal_path(path)) as journal:
        steps = [event for _, event in read_events(journal) if isinstance(event, Advanced)]
        assert len(steps) == STEPS
        assert all(after.origin == before.place for before, after in pairwise(steps))
        assert restore_state(journal).place.index == ROUNDS


def test_killed_at_any_moment_what_was_answered_is_kept(tmp_path: Path) -> None:
    """A burst of cues and a kill in the middle of it: every answer seen is on the disk, and no cue counts
    twice."""
    path = garment(tmp_path)
    for attempt in range(8):
        before = _events(path)
        sitting = Sitting(path)
        sitting.send(*["next step", "undo that"] * 100)
        time.sleep(0.004 * attempt)
        sitting.process.send_signal(signal.SIGKILL)
        seen = sum(line.startswith("Taken back") for line in sitting.stdout)
        sitting.kill()

        kept = _events(path) - before - 1  # the opening is an event too
        assert 2 * seen <= kept <= 200
        with Journal.read_only(journal_path(path)) as journal:
            events = read_events(journal)
            assert [seq for seq, _ in events] == list(range(1, len(events) + 1))
            steps = [event for _, event in list_standing(events) if isinstance(event, Advanced)]
            undone = sum(isinstance(event, Undone) for _, event in events)
            assert len(steps) == sum(isinstance(event, Advanced) for _, event in events) - undone
            assert all(after.origin == before.place for before, after in pairwise(steps))
            assert restore_state(journal).place == (steps[-1].place if steps else Position())


def _events(path: Path) -> int:
    if not journal_path(path).exists():
        return 0
    with Journal.read_only(journal_path(path)) as journal:
        return journal.count()


def test_ctrl_c_ends_with_130_and_loses_nothing(tmp_path: Path) -> None:
    """Interrupted is not the same as finished, and what was answered is kept."""
    path = garment(tmp_path)
    sitting = Sitting(path)
    sitting.say("next step", "next step")

    assert sitting.kill(signal.SIGINT) == 130
    with Journal.read_only(journal_path(path)) as journal:
        assert restore_state(journal).place.index == 2


def test_a_changed_pattern_is_told_before_going_on(tmp_path: Path) -> None:
    """32 stitches where 28 were knitted: she hears what changed, that it is too late, and both counts."""
    path = garment(tmp_path)
    stepper("knit", path, "--plain", "--mute", typed="go to round 7\n")
    garment(tmp_path, CUFF.replace("to 28 sts", "to 32 sts"))

    typed = "next step\ntake number 1\n"
    unanswered = stepper("knit", path, "--plain", "--mute").stdout.splitlines()
    lines = stepper("knit", path, "--plain", "--mute", typed=typed).stdout.splitlines()
    again = stepper("knit", path, "--plain", "--mute").stdout.splitlines()

    assert unanswered[-1] == "I will ask again next time where to go on in the changed pattern."
    assert lines[1].startswith(
        "The pattern has changed since last time. "
        "Cuff, rounds 5 to 6, First increase: changed, 32 stitches after it and not 28, already knitted. "
        "Cuff, rounds 7 to 17: changed, still to come."
    )
    assert lines[2] == (
        "Where do you go on? 1: Cuff, round 7; you have 28 stitches and it wants 32. "
        "2: Cuff, round 5, First increase; 24 stitches, as it wants; take back 2 rounds. Say: take number 1."
    )
    assert lines[3] == "First say where you go on: take number 1 to 2."
    assert lines[4] == "Going on in the changed pattern. You have 28 stitches where it wants 32."
    assert lines[5].startswith("Cuff, round 7 of 17, chart dots round 2: ")
    assert not any("has changed" in line for line in again)


def test_a_length_measured_is_remembered_in_the_next_sitting(tmp_path: Path) -> None:
    """The corrected number of rounds is the plan from then on."""
    path = garment(tmp_path)
    typed = "go to round 12\nmeasures three point three centimetres\n"
    first = stepper("knit", path, "--plain", "--mute", typed=typed).stdout.splitlines()
    second = stepper("knit", path, "--plain", "--mute", typed="go to round 99\n").stdout.splitlines()

    # Eleven rounds are 3.3 cm, so 5 cm are 16 or 17 and the bind-off: 11 * 50 / 33 = 16.7, rounded.
    assert "3.3 cm: 33.3 rounds to 10 cm. 6 rounds left, 1 more than planned." in first
    assert "Cuff has 18 rounds." in second


def test_a_problem_in_the_file_ends_with_1_and_a_busy_journal_with_4(tmp_path: Path) -> None:
    """Each kind of failure has its sentence and its code, and none a traceback."""
    bad = stepper("knit", garment(tmp_path, CUFF.replace("24 sts", "24 socks"), "bad.yaml"), "--plain")
    path = garment(tmp_path)
    sitting = Sitting(path)
    busy = stepper("knit", path, "--plain", "--mute")
    sitting.kill()
    missing = stepper("knit", tmp_path / "none.yaml", "--plain")

    assert (bad.returncode, busy.returncode, missing.returncode) == (1, 4, 4)
    for done in (bad, busy, missing):
        assert done.stderr
        assert "Traceback" not in done.stderr


def test_a_recording_that_is_missing_is_named(tmp_path: Path) -> None:
    """A recording that is not there is one sentence, before the session is opened."""
    done = stepper("knit", garment(tmp_path), "--hear", tmp_path / "cues.wav")

    assert (done.returncode, len(done.stderr.splitlines())) == (4, 1)


OWN = CUFF.replace(
    "      Chart dots, 2 times.\n",
    "      Own words: *k2, lift the 3rd st over, loop it; rep from * around. 30 sts.\n"
    "      Own words, 2 rounds: twist every st as the drawing shows.\n",
)


FERN = """\
      Own words, cast on 20 sts: begin softly with the spare needle.
      Fern pattern (any number of sts):
      Rows 1-3: Own words: as the drawing shows.
      Row 4: Purl.
      Work flat.
      Work 4 rows in fern pattern.
      Dec row: K1, k2tog, work in pattern to last 3 sts, ssk, k1.
      Work 1 row in pattern.
      Own words, hold 6 sts for thumb: slip the thumb sts to a thread, twist on.
      Own words, for 1 cm: in the small check.
      Own words, bind off all sts: as the drawing shows.
"""


def test_a_piece_in_own_words_is_begun_shaped_parted_and_ended_by_ear(tmp_path: Path) -> None:
    """What the program knows of a row is said first, her words behind it; killed, it goes on where she was.

    Counts by hand: 20, less 2 is 18, less 6 on hold is 12.
    """
    head = CUFF.partition("    work: |\n")[0]
    path = garment(tmp_path, f"{head}    work: |\n{FERN}")
    sitting = Sitting(path)
    told = [*sitting.opening, *(line for _ in range(6) for line in sitting.say("next step"))]
    assert any("Begin softly with the spare needle" in line for line in told)
    assert "Work in rows. Row 2: row one: as the drawing shows." in told
    dec = (
        "knit one, knit two together, fourteen stitches in pattern, slip slip knit, knit one; "
        "pattern row one: as the drawing shows."
    )
    assert any(line.endswith(dec) for line in told)
    sitting.kill()
    again = Sitting(path)
    assert again.opening[-1].endswith("row two: as the drawing shows.")
    assert again.say("count is 18") == ["18, as it should be."]
    more = [line for _ in range(2) for line in again.say("next step")]
    assert more[1].endswith("slip the thumb stitches to a thread, twist on.")
    assert again.say("count is 12") == ["12, as it should be."]
    last = [line for _ in range(3) for line in again.say("next step")]
    assert last[-1].endswith("As the drawing shows. Row 12: bind off twelve.")
    again.kill()


def test_rows_in_own_words_are_said_counted_and_found_again_after_a_kill(tmp_path: Path) -> None:
    """She knits them by ear like any other; the power may be cut in the middle of them."""
    path = garment(tmp_path, OWN)
    sitting = Sitting(path)
    told = [line for _ in range(6) for line in sitting.say("next step")]
    assert "Round 6: star knit two, lift the 3rd stitch over, loop it; repeat from star around." in told
    assert told[-2:] == [
        "Count now: 30 expected, as printed for this row.",
        "Round 7: twist every stitch as the drawing shows.",
    ]
    sitting.kill()
    again = Sitting(path)
    assert again.opening[-1].endswith("twist every stitch as the drawing shows.")
    assert again.say("count is 30") == ["30, as it should be."]
    assert again.say("count is 29")[0] == "29: 1 fewer than 30."
    again.kill()
    with Journal.read_only(journal_path(path)) as journal:
        assert restore_state(journal).place.index == 6


def test_a_page_is_knitted_as_far_as_it_is_read_and_asked_about_on_the_way(tmp_path: Path) -> None:
    """No LOOK has to be put right before the first evening: each is answered where she comes to it."""
    path = garment(tmp_path, PAGE, "mitts.yaml")
    done = stepper(
        *("knit", path, "--plain", "--mute", "--deaf"),
        typed="4 rounds done\nnext\nnext\ncount is 40\nyes\n2 rounds done\nno\nyes\nwhere am i\n",
    )
    assert done.returncode == 0, done.stderr
    assert "2 places are open in mitts.yaml. Up to line 16 it can be knitted (4 rounds); there you are asked." in done.stderr
    told = done.stdout
    assert "Starting: 4 rounds as far as the pattern is read." in told
    assert "2 rounds, 40 stitches after them: is that so?" in told
    assert "I take it for 1 round, 20 stitches after it as printed: is that so?" in told
    text = path.read_text()
    assert "Own words, 2 rounds: Twirl each pair of loops over the thumb." in text
    assert "LOOK" in text


def test_killed_at_a_row_that_is_not_read_she_goes_on_there(tmp_path: Path) -> None:
    """What she counted of it is on the disk like every step; once it is written, the rounds behind it are read."""
    path = garment(tmp_path, PAGE, "mitts.yaml")
    sitting = Sitting(path)
    sitting.say("4 rounds done")
    sitting.say("next step")
    sitting.kill()

    sitting = Sitting(path)
    assert any("Round 1 of these words is done" in line for line in sitting.opening), sitting.opening
    sitting.say("next step")
    assert sitting.say("count is 40") == ["2 rounds, 40 stitches after them: is that so?"]
    answer = sitting.say("yes")
    assert answer[0] == "Kept so."
    assert answer[-1].endswith("knit all forty.")
    sitting.kill()

    sitting = Sitting(path)
    assert any("knit all forty" in line for line in sitting.opening), sitting.opening
    sitting.say("2 rounds done")
    assert sitting.say("yes")[0] == "Kept so."
    sitting.say("3 rounds done")
    assert "The garment is finished" in " ".join(sitting.say("where am i") + sitting.say("say again"))
    sitting.kill()
    assert "Next rnd: Own words: Nest the loops in pairs. 18 (20, 22) sts." in path.read_text()


def test_a_row_written_while_the_power_failed_is_found_by_the_next_evening(tmp_path: Path) -> None:
    """The file has it, the journal not yet: the place is behind the rounds of it that she has knitted."""
    path = garment(tmp_path, PAGE, "mitts.yaml")
    sitting = Sitting(path)
    sitting.say("4 rounds done", "next step", "next step", "count is 40")
    sitting.kill()
    words = "Note: Twirl each pair of loops over the thumb."
    row = "Own words, 2 rounds: Twirl each pair of loops over the thumb."
    path.write_text(path.read_text().replace(words, row))
    sitting = Sitting(path)
    told = " ".join(sitting.opening)
    assert "Cuff, rounds 5 to 8: added" in told
    assert sitting.opening[-1].endswith("knit all forty.")
    assert sitting.say("where am i") == ["Cuff, round 7, at its beginning. 40 stitches on the needles."]
    sitting.kill()


def test_a_file_that_goes_less_far_than_it_is_knitted_is_refused(tmp_path: Path) -> None:
    """A slip of the keyboard behind her must not take rounds away that she has knitted."""
    path = garment(tmp_path, PAGE, "mitts.yaml")
    sitting = Sitting(path)
    sitting.say("3 rounds done")
    sitting.kill()
    path.write_text(path.read_text().replace("Knit 3 rounds.", "Knti 3 rounds."))
    done = stepper("knit", path, "--plain", "--mute", "--deaf")
    assert done.returncode == 1
    assert "Knti" in done.stderr


def test_a_file_that_was_typed_is_refused_with_its_problems_as_ever(tmp_path: Path) -> None:
    """Whoever types a pattern wants to know of a slip before the first round."""
    path = garment(tmp_path, PAGE.replace("# Written from the text of a printed pattern.\n", "").replace("# LOOK", "# look"))
    path.write_text(path.read_text().replace("Note: Twirl each", "Twirl each"))
    done = stepper("knit", path, "--plain", "--mute", "--deaf")
    assert done.returncode == 1
    assert "Twirl" in done.stderr
