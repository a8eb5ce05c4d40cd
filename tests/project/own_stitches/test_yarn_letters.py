"""Letters by which a page counts the colours of a round. Source: common practice."""

from __future__ import annotations

from stepper.project.own_stitches.yarn_letters import letters_of, put_yarns, take_letters
from stepper.project.problems import Span
from stepper.project.respelt import Respelt

KNOWN = {"M": "MC", "R": "CC1", "S": "CC2"}


def test_a_sentence_says_which_yarn_each_letter_is() -> None:
    """Two letters at least, each of a yarn; a list of anything else is none."""
    assert letters_of("Letters: M = MC, R = CC1, S = CC2.") == KNOWN
    assert letters_of("M = main colour, C = contrast colour") == {"M": "main colour", "C": "contrast colour"}
    assert letters_of("Colour key: W = white; B = dark brown.") == {"W": "white", "B": "dark brown"}
    assert letters_of("M = MC.") == {}
    assert letters_of("K = knit, P = purl") == {}
    assert letters_of("M = marker, S = slip") == {}
    assert letters_of("Sizes: S = 36, M = 38") == {}


def test_a_row_of_such_letters_alone_is_counted_in_yarns() -> None:
    """Elsewhere on the page "M1" makes a stitch."""
    rows = {
        "Round 1. *M2, R1, M3*.": "Round 1. *2 MC, 1 CC1, 3 MC*.",
        "Rnd 4: R2, S1, rep from * to end": "Rnd 4: 2 CC1, 1 CC2, rep from * to end",
        "Increase Round 1. *K2, M1; repeat from * to end.": None,
        "Round 2: *K2, M1*": None,
        "Round 2: *M2, T1*": None,
        "*M2, R1*": None,
        "Round 2: M1 at each marker.": None,
    }
    for row, written in rows.items():
        put = put_yarns(row, KNOWN)
        assert (put.text if put is not None else None) == written
    assert put_yarns("Round 1: *M2, R1*", {}) is None


def test_the_row_keeps_its_printed_words() -> None:
    """What the knitter reads is what her page prints."""
    row, respelt = ("Round 1: *M2, R1*", Span(line=4, column=7)), Respelt()
    made = take_letters([row], KNOWN, respelt)
    assert made == [("Round 1: *2 MC, 1 CC1*", row[1])]
    assert respelt.words(made) == "Round 1: *M2, R1*"
