from __future__ import annotations

from functools import cache

from hypothesis import given
from hypothesis import strategies as st

from stepper.plan.under_way.aligning import (
    common_lengths,
    renamed_sections,
    rounds_of,
    seams,
    skipped_or_doubled,
)
from tests.plans import plan

WORDS = st.text("abc", max_size=9)


def _by_the_table(one: str, other: str) -> int:
    """Return the longest common subsequence by the recurrence of the textbooks (Cormen, Leiserson, Rivest and
    Stein, "Introduction to Algorithms", section on the longest common subsequence; from memory)."""

    @cache
    def length(a: int, b: int) -> int:
        if not a or not b:
            return 0
        if one[a - 1] == other[b - 1]:
            return length(a - 1, b - 1) + 1
        return max(length(a - 1, b), length(a, b - 1))

    return length(len(one), len(other))


@given(WORDS, WORDS)
def test_the_common_rounds_are_those_of_the_table(one: str, other: str) -> None:
    """The place rests on these lengths; one off by one would move her a round."""
    expected = [_by_the_table(one, other[:end]) for end in range(len(other) + 1)]

    assert common_lengths(one, other) == expected


@given(WORDS, WORDS, WORDS)
def test_a_seam_counts_what_is_alike_on_both_sides(before: str, after: str, other: str) -> None:
    """Before it from the left, after it from the right, for every seam at once."""
    expected = [
        _by_the_table(before, other[:seam]) + _by_the_table(after, other[seam:])
        for seam in range(len(other) + 1)
    ]

    assert seams(before, after, other) == expected


def test_what_was_to_come_must_not_count_as_done() -> None:
    """A round left out and a round worked again are both told; one that is new or gone is neither."""
    assert skipped_or_doubled("ab", "cd", "abcd", 3), "c would be left out"
    assert skipped_or_doubled("ab", "cd", "abcd", 1), "b would be worked again"
    assert not skipped_or_doubled("ab", "cd", "abcd", 2)
    assert not skipped_or_doubled("ab", "cd", "axbcd", 3), "x was never to come"
    assert not skipped_or_doubled("ab", "cd", "acd", 1), "b is gone"


def test_a_section_is_known_by_what_is_knitted_in_it() -> None:
    """Another name over the same rounds is a new name; other rounds are another section."""
    old = plan(("neck", ["co20", "k20"]), ("body", ["k20", "p20", "k20"]), ("hem", ["bo20"]))
    new = plan(("neck", ["co20", "k20"]), ("trunk", ["k20", "p20", "k20", "k20"]), ("end", ["p20", "bo20"]))

    assert renamed_sections(old, new) == {"body": "trunk", "hem": "end"}
    assert renamed_sections(old, old) == {}
    assert len(rounds_of(new, "trunk")) == 4
    other = plan(("neck", ["co20", "k20"]), ("lace", ["(yo k2tog)x10"]), ("hem", ["bo20"]))
    assert renamed_sections(old, other) == {}
