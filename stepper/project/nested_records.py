"""Go through a record and all records inside it, whatever fields they stand in, or change them. No I/O."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import fields, is_dataclass, replace
from functools import cache
from typing import Any


def records_in(record: object) -> Iterator[object]:
    """Yield a record and all records inside it, each before what it holds, and those of a tuple in order."""
    kind: Any = type(record)
    if isinstance(record, tuple):
        for inner in record:
            yield from records_in(inner)
    elif (names := _field_names(kind)) is not None:
        yield record
        for name in names:
            yield from records_in(getattr(record, name))


@cache
def _field_names(kind: type) -> tuple[str, ...] | None:
    """Return the names of the fields of a record; None for any other value."""
    return tuple(each.name for each in fields(kind)) if is_dataclass(kind) else None


def replace_nested(record: Any, change: Callable[[Any], Any]) -> Any:
    """Return a record with what stands in it changed; the record itself where nothing is.

    Args:
        record: A record, a tuple or any value.
        change: Returns what to put in the place of a record, tuple or value, which is not looked into any
            more; the very thing it is asked of to leave that and look inside it.
    """
    put = change(record)
    if put is not record:
        return put
    if isinstance(record, tuple):
        made = tuple(replace_nested(inner, change) for inner in record)
        return made if any(new is not old for new, old in zip(made, record, strict=True)) else record
    if is_dataclass(record) and not isinstance(record, type):
        held = {each.name: getattr(record, each.name) for each in fields(record)}
        changed = {name: new for name, old in held.items() if (new := replace_nested(old, change)) is not old}
        return replace(record, **changed) if changed else record
    return record
