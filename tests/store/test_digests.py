from __future__ import annotations

from hashlib import blake2b

from stepper.store.digests import (
    DIGEST_BYTES,
    chain_seed,
    entry_digest,
    newest_digest,
    plan_digest,
    snapshot_digest,
)
from stepper.store.records import Newest

AT = "2025-03-03T20:15:00+01:00"


def test_an_entrys_checksum_is_blake2b_of_the_one_before_and_its_fields() -> None:
    """Files outlive programs: the form is fixed and computed here by hand (BLAKE2b, RFC 7693, 16 bytes)."""
    text = f'7\n{AT}\nadvanced\n2\n{{"n": "↗"}}'.encode()
    expected = blake2b(b"b" * 16 + text, digest_size=16).digest()

    assert entry_digest(b"b" * 16, 7, AT, "advanced", 2, '{"n": "↗"}') == expected
    assert chain_seed("j") == blake2b(b"journal\nj", digest_size=16).digest()
    assert len(expected) == DIGEST_BYTES


def test_each_field_and_the_one_before_count() -> None:
    """No field can be changed without its checksum changing, nor slide into its neighbour."""
    newest = Newest(journal="j", seq=1, digest=b"d", plan=1, plan_digest=b"p")
    found = [
        entry_digest(b"", 1, AT, "k", 1, "{}"),
        entry_digest(b"x", 1, AT, "k", 1, "{}"),
        entry_digest(b"", 2, AT, "k", 1, "{}"),
        entry_digest(b"", 1, AT + "0", "k", 1, "{}"),
        entry_digest(b"", 1, AT, "k1", 1, "{}"),
        entry_digest(b"", 1, AT, "k", 11, "{}"),
        entry_digest(b"", 1, AT, "k", 1, "{} "),
        plan_digest(b"", 1, 1, AT, "f", "text"),
        plan_digest(b"", 1, 1, AT, "ft", "ext"),
        plan_digest(b"", 1, 1, AT, "f\nt", "ext"),
        plan_digest(b"", 11, 1, AT, "f", "text"),
        snapshot_digest(b"", 1, "f", 1, "s"),
        snapshot_digest(b"y", 1, "f", 1, "s"),
        snapshot_digest(b"", 1, "fs", 1, ""),
        newest_digest(newest, "Cuff"),
        newest_digest(newest, "Cuffs"),
    ]

    assert len(set(found)) == len(found)
