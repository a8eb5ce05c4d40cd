"""Checksums of what a journal holds, each entry's over the one before it.

Because they are chained, changing, swapping, removing or inserting an entry changes the checksum of every
entry after it. They find damage; they do not protect against deliberate forgery.

BLAKE2b (RFC 7693) with 16 bytes: the odds that damage goes unnoticed are 2^-128.
"""

from __future__ import annotations

from hashlib import blake2b
from typing import Final

from stepper.store.records import Newest

DIGEST_BYTES: Final = 16
"""Length of each checksum."""


def chain_seed(journal: str) -> bytes:
    """Return what a journal's chains begin with, standing in for an entry before the first.

    Args:
        journal: The journal's own, unique name.
    """
    return _digest(b"journal\n", journal)


def entry_digest(before: bytes, seq: int, at: str, kind: str, version: int, body: str) -> bytes:
    """Return an entry's checksum.

    Args:
        before: That of the entry before it, or `chain_seed`.
        seq: Its place; the rest are the fields of `Entry`, of which only the body may contain a line break.
    """
    text = f"{seq}\n{at}\n{kind}\n{version}\n{body}"
    # Not by `_digest`: this is called ten thousand times in a row.
    return blake2b(before + text.encode(), digest_size=DIGEST_BYTES).digest()


def plan_digest(before: bytes, number: int, from_seq: int, at: str, fingerprint: str, text: str) -> bytes:
    """Return the checksum of a kept project text.

    Args:
        before: That of the one before it, or `chain_seed`.
        number: Its number; the rest are the fields of `PlanVersion`.
    """
    return _digest(before, f"{number}\n{from_seq}\n{at}\n{len(fingerprint)}\n{fingerprint}\n{text}")


def snapshot_digest(entry: bytes, seq: int, fingerprint: str, codec_version: int, body: str) -> bytes:
    """Return the checksum of a snapshot, which binds it to the history it stands for.

    Args:
        entry: The checksum of the last entry it contains, or `chain_seed`.
        seq: That entry's place; the rest are the fields of `Snapshot`.
    """
    return _digest(entry, f"{seq}\n{codec_version}\n{len(fingerprint)}\n{fingerprint}\n{body}")


def newest_digest(newest: Newest, title: str) -> bytes:
    """Return the checksum of the row that says how far the journal goes.

    Args:
        newest: What it says.
        title: The garment's title, which the checksum covers too.
    """
    return _digest(
        newest.digest + newest.plan_digest, f"{newest.journal}\n{newest.seq}\n{newest.plan}\n{title}"
    )


def _digest(before: bytes, text: str) -> bytes:
    return blake2b(before + text.encode(), digest_size=DIGEST_BYTES).digest()
