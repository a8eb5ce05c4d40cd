"""Other ways to write the same signs. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Row 2: Sl-1, k4, p to end.", "Row 2: sl 1, k4, p to end."),
        ("Row 2: Sl 1 k11 p8.", "Row 2: Sl 1, k11, p8."),
        ("R5: (K1 p1), 3 times, k to end.", "Row 5: (K1, p1) 3 times, k to end."),
        ("Work even until piece measures 11 (11½-12) inches.", "Work even until piece measures 11 (11½, 12) inches."),
        ("Row 1: K1 p1, across.", "Row 1: (K1, p1) to end."),
        ("Round 1: K2, p2 to end of round.", "Round 1: (K2, p2) to end."),
        ("P1, k3 all around.", "(P1, k3) to end."),
        ("Row 1: K2, p2 to last 2 sts, k2.", "Row 1: (K2, p2) to last 2 sts, k2."),
        ("K1, p1 to last st, k1.", "(K1, p1) to last st, k1."),
    ],
)
def test_the_signs_say_the_same(printed: str, words: str) -> None:
    """A hyphen, a comma or a letter more changes nothing that is knitted."""
    assert reword(made_plain(printed)).text == words


def test_a_range_of_counts_is_no_list_of_sizes() -> None:
    """"4-5 rows" leaves a choice, and is not cut into two numbers."""
    assert reword("Work 4-5 rows.").text == "Work 4-5 rows."


@pytest.mark.parametrize("printed", ["K5, k1, p1 to end.", "K1, m1, p7 to end.", "K2, k1 to end.", "K1, p1 to marker."])
def test_only_a_rib_of_two_is_repeated_without_its_brackets(printed: str) -> None:
    """With a border or an increase before it, which stitches go on is a guess."""
    assert reword(made_plain(printed)).text == printed


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Work Chart A, starting with rnd 1.", "Work Chart A."),
        ("K across back to marker, turn.", "K to marker, turn."),
        ("Rep raglan dec every rnd 5 times.", "Rep raglan dec rnd every rnd 5 times."),
        ("Row 1: K to 10 sts before end, turn, MDS.", "Row 1: K to 10 sts before end, turn, make DS."),
    ],
)
def test_a_short_form_says_what_it_stands_for(printed: str, words: str) -> None:
    """A name, a place and a turn in short are the same name, place and turn."""
    assert " ".join(reword(made_plain(printed)).text.split()) == words


@pytest.mark.parametrize(
    "printed",
    [
        "Work Chart A, starting with rnd 5.",
        "Place sts between markers on waste yarn.",
    ],
)
def test_what_means_something_else_stays(printed: str) -> None:
    """A chart from its fifth row: nothing to pass over."""
    assert reword(made_plain(printed)).text == made_plain(printed)
