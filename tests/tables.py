"""One test for all rows of a table, where a row is tried in a few milliseconds."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import TypeVar

import pytest

Row = TypeVar("Row")

MOST_SHOWN = 20
"""How many rows that fail are told: the first say enough."""
MOST_LETTERS = 300
"""How much is told of a row's values."""


def each_row(names: str | tuple[str, ...], rows: Iterable[object]) -> Callable[[Callable[..., None]], Callable[..., None]]:
    """Try a test with each row of a table, all of them, and tell of each that fails its values and why.

    As `pytest.mark.parametrize` is called, and in its place: to collect, send and tell of a test costs three milliseconds
    of each process, and thousands of rows take less. Two tables above each other are tried in every pair. Not for tests
    that need a fixture, nor for tables that take more than a few seconds, which workers should share.
    """
    keys = [name.strip() for name in names.split(",")] if isinstance(names, str) else list(names)
    table = list(rows)
    assert table, "a table without rows tries nothing"

    def decorate(test: Callable[..., None]) -> Callable[..., None]:
        def walk(**others: object) -> None:
            wrong: list[str] = []
            first: BaseException | None = None
            for row in table:
                values = row if len(keys) > 1 else (row,)
                assert isinstance(values, tuple | list)
                try:
                    test(**others, **dict(zip(keys, values, strict=True)))
                except (Exception, pytest.fail.Exception) as failed:
                    first = first or failed
                    wrong.append(f"{repr(row)[:MOST_LETTERS]}: {type(failed).__name__}: {failed}")
            if wrong:
                raise AssertionError("\n".join([f"{len(wrong)} of {len(table)} rows:", *wrong[:MOST_SHOWN]])) from first

        walk.__name__, walk.__qualname__, walk.__module__ = test.__name__, test.__qualname__, test.__module__
        walk.__doc__ = test.__doc__
        return walk

    return decorate


def assert_all(judge: Callable[[Row], bool], rows: Iterable[Row], *, most_refused: int) -> None:
    """Judge each row of a table, all of them, and hold how many are refused: who refuses everything misreads nothing.

    Args:
        judge: Fails where a row is read otherwise than it means; returns whether it is read.
        rows: The table.
        most_refused: How many rows were refused until now.
    """
    read: list[bool] = []

    @each_row("row", rows)
    def hold(row: Row) -> None:
        read.append(judge(row))

    hold()
    assert read.count(False) <= most_refused
