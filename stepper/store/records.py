"""What a journal holds: entries, the plans they were knitted by, and snapshots.

The journal does not know what an entry means. It stores a kind and a body, which only their writer
understands.
"""

from __future__ import annotations

import json
from datetime import datetime

from stepper.records import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class JournalEntry:
    """One thing that happened, ready to be kept.

    Raises:
        ValueError: A field is not what its description says.
    """

    at: str
    """When it happened. ISO 8601 with the offset from UTC, as in "2025-03-03T20:15:00+01:00"."""
    kind: str
    """What kind of thing, in the writer's own names. Not empty."""
    body: str
    """The rest of it, as one JSON text."""
    version: int
    """Version of the writer's form of this kind. Range: 1 and up."""

    def __post_init__(self) -> None:
        check_moment(self.at)
        if not self.kind or not self.kind.isprintable():
            raise ValueError(f"kind must be printable text (got {self.kind!r})")
        if self.version < 1:
            raise ValueError(f"version must be 1 or more (got {self.version!r})")
        json.loads(self.body)
        self.body.encode()  # half of a surrogate pair is valid JSON in Python but cannot be stored as text


@dataclass(frozen=True, slots=True, kw_only=True)
class StoredEntry:
    """An entry as read back from the journal; not validated again, so that a long journal reads fast."""

    seq: int
    """Place in the journal. Range: 1 and up, without gaps."""
    at: str
    """When it happened. ISO 8601 with the offset from UTC."""
    kind: str
    """What kind of thing, in the writer's own names."""
    body: str
    """The rest of it, as one JSON text."""
    version: int
    """Version of the writer's form of this kind."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Newest:
    """How far a journal goes."""

    journal: str
    """The journal's own, unique name."""
    seq: int
    """Place of its newest entry. Range: 0 and up."""
    digest: bytes
    """That entry's checksum, which covers all entries before it."""
    plan: int
    """Number of its newest project text. Range: 0 and up."""
    plan_digest: bytes
    """That text's checksum, which covers all texts before it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PlanVersion:
    """A project text under which the garment was knitted."""

    number: int
    """Which version. Range: 1 and up, without gaps."""
    from_seq: int
    """Place of the first entry it applies to, which may be yet to come. Range: 1 and up."""
    at: str
    """When it was taken into the journal. ISO 8601 with the offset from UTC."""
    fingerprint: str
    """What identifies the plan made from it."""
    project_text: str
    """The project file, character by character."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Snapshot:
    """The state after some entry, kept only so that it need not be worked out again."""

    seq: int
    """Place of the last entry it contains. Range: 0 and up."""
    fingerprint: str
    """The plan it belongs to."""
    codec_version: int
    """Version of the form the body is written in."""
    body: str
    """The state, in the writer's own form."""


def check_moment(at: str) -> None:
    """Refuse a time that is ambiguous for want of an offset from UTC.

    Args:
        at: ISO 8601 with the offset from UTC.

    Raises:
        ValueError: It is not such a time.
    """
    if datetime.fromisoformat(at).tzinfo is None:
        raise ValueError(f"at must have its offset from UTC (got {at!r})")
