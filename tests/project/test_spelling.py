from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from stepper.project.spelling import most_slips, near, slips
from tests.project.slips import slips_of

WORDS = st.text(alphabet="abcd", max_size=6)


def edits(one: str, other: str) -> int:
    """Count slips by their definition, without regard to time: the restricted Damerau distance, recursively."""
    if not one or not other:
        return len(one) + len(other)
    ways = [
        edits(one[1:], other) + 1,
        edits(one, other[1:]) + 1,
        edits(one[1:], other[1:]) + (one[0] != other[0]),
    ]
    if one[:2] == other[:2][::-1] and len(one[:2]) == 2:
        ways.append(edits(one[2:], other[2:]) + 1)
    return min(ways)


@given(WORDS, WORDS)
def test_slips_are_counted_as_defined(one: str, other: str) -> None:
    """The fast way and the definition agree, and the order of the words does not count. Source: Damerau 1964."""
    assert slips(one, other, most=12) == edits(one, other) == slips(other, one, most=12)


@given(WORDS, WORDS, st.integers(0, 3))
def test_more_slips_than_matter_are_not_counted(one: str, other: str, most: int) -> None:
    """A word far away is just far away."""
    assert slips(one, other, most=most) == min(edits(one, other), most + 1)


def test_every_slip_of_one_letter_finds_its_word() -> None:
    """Each of Damerau's four kinds."""
    for slip in slips_of("round"):
        if slip != "round":
            assert (1, "round") in near(slip, ("round", "row", "purl"))


def test_the_nearest_comes_first_and_short_words_allow_one_slip() -> None:
    """In a short word two slips leave nothing of it."""
    assert near("ronds", ("rnds", "rounds", "purl")) == ((1, "rounds"), (1, "rnds"))
    assert near("ssk", ("k2tog",)) == ()
    assert (most_slips("sts"), most_slips("increase")) == (1, 2)
    assert near("form", ("fork", "from"))[0] == (1, "from")
