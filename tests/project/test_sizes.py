"""The size line."""

from __future__ import annotations

import pytest

from stepper.project.sizes import find_size, read_sizes


@pytest.mark.parametrize(
    ("text", "names"),
    [
        ("1 (2, 3, 4, 5, 6)", ("1", "2", "3", "4", "5", "6")),
        ("S (M, L)", ("S", "M", "L")),
        ("XS [S, M]", ("XS", "S", "M")),
        ("One size", ("One size",)),
        ("", ()),
    ],
)
def test_sizes_read_as_printed(text: str, names: tuple[str, ...]) -> None:
    """The order of the names is the order of every list."""
    assert read_sizes(text) == names


def test_a_size_is_found_whatever_the_case() -> None:
    """`m` means size M."""
    assert find_size("m", ("S", "M")) == 1
    assert find_size("XL", ("S", "M")) is None
