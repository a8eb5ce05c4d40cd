"""The second of a pair in other words. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Make 2.", "make again 1."),
        ("Make a pair.", "make again 1."),
        ("Make second sleeve same as first.", "make again 1 sleeve."),
        ("Second sock the same.", "make again 1 sock."),
        ("Work the other mitten to match.", "make again 1 mitten."),
        ("Make another sock to match.", "make again 1 sock."),
        ("Complete as given for first side, reversing shaping.", "complete like other side, reversing shaping."),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """One more of the piece, whichever way it is said."""
    assert reword(made_plain(printed)).text == read


@pytest.mark.parametrize("printed", ["Make 2 buttonholes.", "Make second sleeve 2 cm longer.", "Work second row to match.", "Make 2 sts from 1."])
def test_what_says_more_than_that_stays_as_it_is(printed: str) -> None:
    """What differs in the second piece must not be passed over."""
    assert "again" not in reword(made_plain(printed)).text


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Slip the left front 44 sts to a holder.", "hold 44 sts for left front."),
        ("With WS facing, join yarn to front sts and p to end.", "With WS facing, take up front sts. p to end."),
        ("Go back to the held 40 front sts, k to end.", "take up 40 front sts. k to end."),
        ("Cont until left front matches right front to shoulder, finishing with a knit row.",
         "Cont until left front measures same as right front to shoulder. ends with a knit row."),
    ],
)  # fmt: skip
def test_the_other_part_is_taken_up(printed: str, words: str) -> None:
    """Numbers, names and sides are those of the page."""
    assert " ".join(reword(made_plain(printed)).text.replace(" .", ".").split()) == words


@pytest.mark.parametrize(
    "printed",
    ["Work on these sts only twice.", "Return to row 3.", "Place the front 44 sts in moss st."],
)
def test_what_says_more_stays(printed: str) -> None:
    """How often, and where, would have to be guessed."""
    assert reword(made_plain(printed)).text == made_plain(printed)


@pytest.mark.parametrize("heading",
    ["SLEEVES (two)", "Sleeves (2)", "SLEEVE [both alike]", "Sleeves (worked alike)", "SLEEVES (both the same)", "SLEEVES (two of 'em)", "SLEEVES (two of \u2019em)",
     "SLEEVES (two the same)", "Sleeves (knit two)", "SLEEVES (work 2 of them)", "Mittens (make a pair)", "SOCKS (a pair)"])  # fmt: skip
def test_a_heading_that_says_how_many_makes_them(heading: str) -> None:
    """The second sleeve was never knitted where only its number stood in brackets."""
    assert reword(made_plain(heading)).text == "make again 1."
