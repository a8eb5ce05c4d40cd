"""Wordings looked for in lines that nothing else reads. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.page.stops import sentences_of
from stepper.project.reading.parsing import made_plain, understood
from stepper.project.reading.wording import reads
from stepper.project.rewording import reword as rewording
from stepper.project.rewording.candidates import Candidates
from stepper.project.rewording.second_look import SECOND_LOOK
from stepper.project.rewording.synonym import Synonym
from tests.project.rewording.without import Without, forget_reworded


def is_read(line: str) -> bool:
    """Return whether a line reads whole, or sentence by sentence."""
    return reads(line) or all(reads(each) for each in sentences_of(line))


@pytest.fixture
def _fresh() -> object:
    """Forget what was reworded by another table, before and after."""
    forget_reworded()
    yield
    forget_reworded()


def test_every_row_reads_its_example() -> None:
    """A row that leaves its line unread is taken out or mended."""
    assert [row.example for row in SECOND_LOOK if not reads(row.example)] == []


@pytest.mark.usefixtures("_fresh")
def test_every_row_is_needed(monkeypatch: pytest.MonkeyPatch) -> None:
    """A row without which its line is read all the same, in the same words, is taken out."""
    idle, rows = [], Candidates(SECOND_LOOK)
    for at, row in enumerate(SECOND_LOOK):
        monkeypatch.setattr(rewording, "SECOND_LOOK_ROWS", rows)
        read = [last_words(each) for each in (row.example, *sentences_of(row.example))]
        monkeypatch.setattr(rewording, "SECOND_LOOK_ROWS", Without(rows, at))
        forget_reworded()
        idle += [row.example] if [last_words(each) for each in (row.example, *sentences_of(row.example))] == read else []
        forget_reworded()
    assert idle == []


def last_words(line: str) -> str:
    """Return the words in which a line was read, or where it stopped."""
    found = understood(made_plain(line))
    return found.reworded.text


@pytest.mark.parametrize("line", ["Knit 2 rounds.", "K8, place next 8 sts on a holder, k to end.", "CO 40 sts. Join in the round."])
def test_what_reads_is_not_looked_at_again(line: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """These rows change no line that reads without them."""
    forget_reworded()
    monkeypatch.setattr(rewording, "SECOND_LOOK_ROWS", Candidates((Synonym(r".*", "nonsense", line, ("",)),)))
    assert is_read(line)
