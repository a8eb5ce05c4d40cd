"""A short dose of whatever comes in besides files and pages; the long one is `python -m tests.bench.fuzz quick 180000`."""

from __future__ import annotations

import random
from contextlib import suppress
from pathlib import Path

import pytest

from tests.fuzz.kinds import KINDS
from tests.fuzz.limits import Counts, TooSlowError, time_bounded

INPUTS = {"cues": 25, "touches": 150, "settings": 120, "vocabularies": 120, "recordings": 80, "pictures": 80, "archives": 120, "journals": 25}


@pytest.mark.parametrize("name", INPUTS)
def test_what_comes_in_spoilt_is_answered_in_a_sentence(name: str, tmp_path: Path) -> None:
    """A slip, a damaged disk or ill will: never a traceback, and never a wait."""
    (tmp_path / "keep").mkdir()
    (tmp_path / "place").mkdir()
    kind, chance = KINDS[name][0](tmp_path / "place"), random.Random(f"{name} 20")
    counts = Counts(name, tmp_path / "keep")
    try:
        if name == "cues":  # what is drawn depends on how many wordings there are
            counts.take(b"next step", kind.take)
            assert list(counts.became) == ["taken"]
        for _ in range(INPUTS[name]):
            counts.take(kind.fresh(chance), kind.take)
    finally:
        kind.close()
    assert dict(counts.faults) == {}
    assert len(counts.became) > 1  # some are good for something, some are not


def test_the_counts_tell_a_fault_from_an_answer(tmp_path: Path) -> None:
    """A bench that counts nothing would find nothing."""
    counts = Counts("inputs", tmp_path)
    counts.take(b"1", lambda raw: str(1 // (len(raw) - 1)))
    assert [name.partition(":")[0] for name in counts.faults] == ["ZeroDivisionError in test_kinds.py"]
    assert (tmp_path / "inputs-0.input").read_bytes() == b"1"


def test_what_takes_too_long_is_stopped() -> None:
    """Also where whatever takes it handles every ordinary error."""

    def work_on() -> None:
        while True:
            with suppress(Exception):
                sum(range(1000))

    with pytest.raises(TooSlowError), time_bounded(0.05):
        work_on()
