"""Go through a record and all records inside it, whatever fields they stand in. No I/O."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import fields, is_dataclass


def records_in(record: object) -> Iterator[object]:
    """Yield a record and all records inside it, each before what it holds, and those of a tuple in order."""
    if isinstance(record, tuple):
        for inner in record:
            yield from records_in(inner)
    elif is_dataclass(record):
        yield record
        for each in fields(record):
            yield from records_in(getattr(record, each.name))
