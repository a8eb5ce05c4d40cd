"""Counts that are told part by part. The sentences are invented; what they count is common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.work.counts_apart import counts_apart, counts_in_doubt, write_counts_apart
from tests.tables import each_row


@pytest.mark.parametrize(
    "line",
    [
        "You have 40 sts in total: 10 for each front and 20 for the back.",
        "40 sts: 20 each front and back.",
        "40 sts: 20 for front and back.",
        "40 sts: front 20, back 20.",
        "There are 40 sts on the needles: 10 per needle.",
        "40 sts (10 + 20 + 10).",
        "10 for the left front, 20 for the back and 10 for the right front, 40 sts in all.",
        "250 (270) sts total: fronts 35 (38) each sleeves 54 (58) each back 72 (78).",
        "76 (84) sts: 28 (32) each front and back, 10 each sleeve.",
        "Count: 76 (84) sts; each sleeve 10, front and back each 28 (32).",
        "Count: 40 sts (back 20, each front 10).",
    ],
)
def test_parts_that_add_up_leave_the_count_of_all(line: str) -> None:
    """The plan checks it, and the parts are told."""
    made = write_counts_apart(as_printed(line))
    assert made.text in ("40 sts.", "250 (270) sts.", "76 (84) sts.")
    assert made.kept == (line.rstrip("."),)
    assert made.place(0, 2)[0] == line.index(made.text[:2])


def test_the_same_number_of_several_parts_is_told() -> None:
    """What else waits nobody knows, so it is no count of all; "All 40 sts" is."""
    for line in ("The front and back now have 20 sts each.", "You have 20 sts for each of front and back."):
        assert write_counts_apart(as_printed(line)).kept == (line.rstrip("."),)
    assert write_counts_apart(as_printed("All 40 sts are now on the needle.")).text == "40 sts."
    assert write_counts_apart(as_printed("20 sts each side.")).text == "20 sts each side."


@pytest.mark.parametrize(
    "line",
    [
        "You have 40 sts in total: 11 for each front and 20 for the back.",
        "40 sts: 19 each front and back.",
        "Count: 40 sts; each sleeve 5, front and back each 14.",
        "40 (44) sts: 20 (23) for the back and 10 (11) for each front.",
        "40 sts, 50 between markers.",
        "Cast on 20 sts, that is 7 per needle.",
    ],
)
def test_parts_that_do_not_add_up_are_refused(line: str) -> None:
    """One of the numbers is wrong; nobody can tell which."""
    assert counts_in_doubt(line)


@pytest.mark.parametrize("line", ["Count: 40 sts, unchanged.", "Count: 40 body sts."])
def test_a_count_that_is_called_so_is_that_of_what_is_in_hand(line: str) -> None:
    """The plan checks it; nothing is left to tell."""
    made = write_counts_apart(as_printed(line))
    assert (made.text, made.kept) == ("40 sts.", ())


@pytest.mark.parametrize(
    ("line", "text"),
    [
        ("There will be 20 sts between the markers, and 40 sts in all.", "20 sts between markers. 40 sts."),
        (
            "Work until there are 17 sts between the markers, 64 sts altogether.",
            "Work until there are 17 sts between the markers. 64 sts.",
        ),
        ("Rep until there are 60 sts, 30 sts per needle.", "Rep until there are 60 sts."),
        ("Cast on 20 sts, that is 10 per needle.", "Cast on 20 sts."),
        ("Count your stitches: 40.", "40 sts."),
    ],
)
def test_what_can_be_checked_stands_as_counts_that_are(line: str, text: str) -> None:
    """Between two markers, and of all stitches behind a part of them."""
    assert write_counts_apart(as_printed(line)).text == text


@each_row(
    "line",
    [
        "Knit 10 for the back and 20 for the front.",
        "Place 10 on each needle.",
        "40 rows for the back, 20 for the front.",
        "Cast on 20 sts, 10 at each end.",
        "Hold 20 sts, 10 at each side.",
        "40 cm for the back.",
        "Dec 10 sts on each side, 20 in all.",
        "40.",
        "10 for each.",
        "You should have 6 markers in total.",
        "Cast on 16 sts (8 sts on each of 2 needles).",
        "40 sts on 4 needles.",
        "CO 40 sts, 16 on the first needle, 12 on the second and 12 on the third.",
        "Sleeve to top 45 (46) 47.",
        "Body to underarm 35 (36) 37.",
        "Back 51, neck 18 and 12 left.",
    ],
)
def test_what_does_or_measures_anything_stays_as_printed(line: str) -> None:
    """Only numbers, parts and joining words make such a sentence."""
    assert write_counts_apart(as_printed(line)).text == line


def test_a_sentence_of_other_words_is_none() -> None:
    """One word that is not known leaves it alone."""
    assert counts_apart("40 sts: 20 for the tail, 20 for the back") is None
