"""Counts and repeats told in the second person. Source: blogs and newsletters of hobby knitters; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording import reword as rewording
from stepper.project.rewording.candidates import Candidates
from stepper.project.rewording.remarks.stated_synonyms import STATED_FACTS
from stepper.project.rewording.reword import reword
from stepper.project.rewording.style.spoken_synonyms import SPOKEN
from tests.project.rewording.without import Without, forget_reworded
from tests.tables import each_row


def spoken(printed: str) -> str:
    """Return a line in the words that are read, as a line that is talk to the knitter."""
    return reword(made_plain(printed), spoken=True).text


@pytest.fixture
def _fresh() -> object:
    """Forget what was reworded by another table, before and after."""
    forget_reworded()
    yield
    forget_reworded()


def test_every_row_reads_its_example() -> None:
    """A row that leaves its line unread is taken out or mended."""
    assert [row.example for row in SPOKEN if not reads(row.example)] == []


@pytest.mark.usefixtures("_fresh")
def test_every_row_is_needed(monkeypatch: pytest.MonkeyPatch) -> None:
    """A row without which its line is read all the same is taken out."""
    idle, rows = [], Candidates((*STATED_FACTS, *SPOKEN))
    for at, row in enumerate(SPOKEN, start=len(STATED_FACTS)):
        monkeypatch.setattr(rewording, "SPOKEN_ROWS", Without(rows, at))
        forget_reworded()
        idle += [row.example] if reads(row.example) else []
    assert idle == []


@each_row(
    "lead",
    [
        "You have", "You'll have", "You should now have", "Now you've got", "You'll end up with", "There should be", "That makes",
        "You're back to", "That leaves you with", "You'll be down to", "Back to", "There, back to", "OK, now you'll see",
    ],
)  # fmt: skip
@each_row("tail", ["", " now", " on your needle", " altogether"])
def test_a_count_is_a_count_however_it_is_told(lead: str, tail: str) -> None:
    """She is told what she has; the number is checked, whatever small words stand around it."""
    assert spoken(f"{lead} 44 (48) stitches{tail}.").replace("stitches", "sts") == "44 (48) sts."


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Do these two rows 14 more times.", "Rep last two rows 14 more times."),
        ("Now do this 4 more times.", "repeat 4 more times."),
        ("Keep repeating these two rows until you have 60 stitches.", "Rep last two rows until 60 sts."),
        ("Do these rounds over and over until you're down to 20 stitches.", "Rep last rounds until 20 sts."),
        ("Keep going like this until there are 26 sts.", "repeat last rounds until there are 26 sts."),
        ("Turn your work.", "turn."),
        ("That's 8 new stitches.", "8 sts increased."),
        ("That's 2 stitches fewer.", "2 sts decreased."),
        ("You should now have 110 (120).", "110 (120) sts."),
        ("There should be 28 (30) on each needle.", "28 (30) sts on each needle."),
        ("Count again: 220.", "220 sts."),
        ("Knit 1 round and you're at 80.", "Knit 1 round. 80 sts."),
        ("Knit until there's 1 stitch left before the marker, kfb.", "Knit to 1 stitch before the marker, kfb."),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """What is meant is the same, whoever is talked to."""
    assert spoken(printed) == read


@each_row(
    "printed",
    [
        "Do these two rows 4 times.",  # four in all, or on top of the once it is worked
        "Do this 4 times.",
        "Do this once more for the other sleeve.",
        "Work 6 more rows like this.",
        "You should end up with.",
        "This makes 12 sts.",  # "this" may be the manner, not the row
        "If you have 40 stitches, knit 2 rounds.",
        "You have 40 stitches on hold.",
        "You'll get 10 stitches on each side.",
        "That's 2 stitches for each side.",
        "Turn your work a quarter.",
        "You increase 8 stitches in every round.",
        "You can knit 4 rows.",
        "Knit until you run out of yarn.",
        "Join in the round without twisting the yarns.",
    ],
)
def test_what_may_mean_something_else_is_not_read(printed: str) -> None:
    """A number of times that may count the first or not, a count of a part, a choice: she has to look."""
    assert not reads(printed)
