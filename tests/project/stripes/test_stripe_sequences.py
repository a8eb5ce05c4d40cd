"""Stripe sequences that a page defines, and the words of a row that call for one."""

from __future__ import annotations

import time

import pytest

from stepper.project.problems import Span
from stepper.project.stripes.stripe_sequences import StripeSequences, read_stripes

YARNS = {"mc", "cc", "oat", "moss"}
PLACE = Span(line=1, column=1)


@pytest.mark.parametrize(
    ("words", "stripes"),
    [
        ("2 rnds MC, 1 rnd CC, 1 rnd CC2.", [(2, "MC"), (1, "CC"), (1, "CC2")]),
        ("*2 rnds CC, 2 rnds MC; rep from * throughout.", [(2, "CC"), (2, "MC")]),
        ("(1 row A, 1 row B) 2 times, 2 rows MC.", [(1, "A"), (1, "B"), (1, "A"), (1, "B"), (2, "MC")]),
        ("1 rnd each of A, B and CC.", [(1, "A"), (1, "B"), (1, "CC")]),
        ("Rows 1-4: MC; rows 5 and 6: CC", [(4, "MC"), (2, "CC")]),
        ("four rows in oat, then two rows in moss", [(4, "oat"), (2, "moss")]),
        ("MC 4 rnds, CC 2 rnds", [(4, "MC"), (2, "CC")]),
    ],
)
def test_a_list_of_stripes_is_read(words: str, stripes: list[tuple[int, str]]) -> None:
    """Source: the wording of patterns in print; common practice."""
    assert read_stripes(words, YARNS) == tuple(stripes)


def test_a_list_of_a_hundred_yarns_is_looked_through_once() -> None:
    """A row of a page with forty yarns between commas kept the program busy for ever."""
    begun = time.process_time()
    assert read_stripes("2 rnds MC, 1 rnd " + "CC, " * 100 + "2 rnds CC2.", YARNS) is None
    assert time.process_time() - begun < 1


@pytest.mark.parametrize(
    "words",
    ["Knit.", "2 rows knit", "K2, p2", "2 rnds MC, knit 2 rnds", "2 rnds mauve", "Rows 1-4: MC, rows 6-8: CC", "0 rows MC", "", "2 rnds MC or CC"],
)  # fmt: skip
def test_what_is_no_stripe_makes_no_list(words: str) -> None:
    """A row that is swallowed as a stripe would never be knitted; a gap in the numbers leaves a row without a yarn."""
    assert read_stripes(words, YARNS) is None


def defined(*rows: str) -> StripeSequences:
    """Define sequences."""
    made = StripeSequences()
    for row in rows:
        assert made.take([row], YARNS) == 1
    return made


@pytest.mark.parametrize(
    ("row", "read", "start", "first", "goes_on"),
    [
        ("Knit 6 rounds in stripe sequence.", "Knit 6 rounds.", None, "", False),
        (
            "Work in stripe pattern until piece measures 2 cm.",
            "Work until piece measures 2 cm.",
            None,
            "",
            False,
        ),
        (
            "Continue in stripe sequence until piece measures 2 cm.",
            "Work until piece measures 2 cm.",
            None,
            "",
            True,
        ),
        (
            "Repeat stripe sequence until piece measures 2 cm.",
            "Work until piece measures 2 cm.",
            None,
            "",
            False,
        ),
        ("Keeping stripes correct, bind off 3 sts.", "Bind off 3 sts.", None, "", True),
        ("Beginning with round 3 of stripe sequence, knit 4 rounds.", "Knit 4 rounds.", 2, "", False),
        ("Beg with 1 rnd CC, work in stripe pattern for 10 rnds.", "Work for 10 rnds.", None, "CC", False),
        ("Work in stripe sequence throughout.", "", None, "", False),
        ("Work stripe sequence twice.", "Work 6 rounds.", None, "", False),
    ],
)
def test_the_words_that_call_for_stripes_are_taken_out(
    row: str, read: str, start: int | None, first: str, goes_on: bool
) -> None:
    """What is left is read as a row of its fabric."""
    called = defined("Stripe sequence: 2 rnds MC, 1 rnd CC.").call(row, PLACE)
    assert called is not None
    assert called.reworded.text == read
    assert len(called.reworded.places) == len(read) + 1
    assert (called.stripes.start, called.stripes.first, called.stripes.goes_on) == (start, first, goes_on)
    assert called.stripes.rounds == 3


@pytest.mark.parametrize(
    "row",
    [
        "Knit 4 rounds in stripes of 1 rnd A, 1 rnd B.",
        "Knit 4 rounds in sleeve stripe sequence.",
        "Beginning with round 4 of stripe sequence, knit 4 rounds.",
        "Work in stripe sequence to the end of the second stripe.",
        "Knit 4 rounds.",
    ],
)
def test_a_row_that_says_more_or_other_of_stripes_stays_as_it_is(row: str) -> None:
    """What is not read of its stripes is refused with the row."""
    assert defined("Stripe sequence: 2 rnds MC, 1 rnd CC.").call(row, PLACE) is None


def test_of_two_sequences_the_row_has_to_name_one() -> None:
    """Which is meant by "stripe sequence" nobody can tell."""
    two = defined("Sleeve stripe sequence: 2 rnds MC, 1 rnd CC.", "Body stripe sequence: 1 rnd CC, 1 rnd MC.")
    called = two.call("Knit 3 rounds in body stripe sequence.", PLACE)
    assert called is not None
    assert called.stripes.stripes == ((1, "CC"), (1, "MC"))
    assert two.call("Knit 3 rounds in stripe sequence.", PLACE) is None


def test_the_stripes_may_stand_below_their_head() -> None:
    """The list ends with the first row that is no stripe."""
    made = StripeSequences()
    assert made.take(["Stripe sequence", "2 rnds MC", "1 rnd CC", "Knit 4 rounds."], YARNS) == 3
    assert made.known == {"stripe sequence": ((2, "MC"), (1, "CC"))}
    assert StripeSequences().take(["Stripe sequence", "Knit 4 rounds."], YARNS) == 0


def test_how_many_rows_a_sequence_has_is_checked() -> None:
    """Below its list, and where it is called: a sum that is another is none of this sequence."""
    made = StripeSequences()
    assert made.take(["Stripe sequence", "2 rows MC", "1 row CC", "(3 rows)", "Knit."], YARNS) == 4
    assert StripeSequences().take(["Stripe sequence", "2 rows MC", "1 row CC", "(4 rows)"], YARNS) == 3
    called = made.call("Work the 3-row stripe sequence 4 times.", PLACE)
    assert called is not None
    assert called.reworded.text == "Work 12 rounds."
    assert made.call("Work the 4-row stripe sequence 4 times.", PLACE) is None
