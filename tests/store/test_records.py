from __future__ import annotations

from typing import Any

import pytest

from stepper.store.records import JournalEntry, check_moment
from tests.tables import each_row

GOOD: dict[str, Any] = {"at": "2025-03-03T20:15:00+01:00", "kind": "Advanced", "body": "{}", "version": 1}


@each_row(
    "change",
    [
        {"at": "2025-03-03T20:15:00"},
        {"at": "yesterday"},
        {"at": ""},
        {"kind": ""},
        {"kind": "Adv\nanced"},
        {"kind": "Adv\0anced"},
        {"body": ""},
        {"body": "{"},
        {"body": "{}\0"},
        {"body": '"\ud800"'},
        {"version": 0},
        {"version": -1},
    ],
)
def test_an_entry_that_could_not_be_read_back_cannot_be_made(change: dict[str, Any]) -> None:
    """A wrong entry must be found where it is made, not months later when the garment is resumed."""
    with pytest.raises(ValueError, match=r".+"):
        JournalEntry(**{**GOOD, **change})


@pytest.mark.parametrize(
    "at",
    [
        "2025-03-03T20:15:00+01:00",
        "2025-03-03T20:15:00.123456-05:30",
        "2025-03-03T19:15:00Z",
    ],
)
def test_times_with_an_offset_are_taken(at: str) -> None:
    """Any ISO 8601 time that says which moment it is must be taken as it is written."""
    check_moment(at)

    assert JournalEntry(**{**GOOD, "at": at}).at == at
