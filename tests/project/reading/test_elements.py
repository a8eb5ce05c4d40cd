"""The parts of a round come through with their stitch, number and place."""

from __future__ import annotations

import pytest

from stepper.project.instructions import Phrase
from stepper.project.problems import Span
from stepper.project.reading.elements import name_part
from stepper.project.reading.wording import Words, read_line
from stepper.project.stitchwork import Several, Until, Work
from tests.project.reading.test_wording import only
from tests.tables import each_row


def test_a_stitch_keeps_its_manner() -> None:
    """Through the back loop, with the yarn in front."""
    sentence = only("k1 tbl, p2, sl1 wyif, k2tog tbl, sl 1 purlwise.")
    assert isinstance(sentence, Phrase)
    assert [element.stitch for element in sentence.elements] == [  # type: ignore[union-attr]
        "k tbl",
        "p",
        "sl wyif",
        "k2tog tbl",
        "sl",
    ]


def test_a_number_in_words_is_a_number() -> None:
    """Patterns print small numbers in words."""
    sentence = only("(k1, yo) three times, knit two, p to end.")
    assert isinstance(sentence, Phrase)
    assert sentence.elements[0].times.values == (3,)  # type: ignore[union-attr]
    assert isinstance(sentence.elements[1], Work)
    assert sentence.elements[1].times.values == (2,)


@pytest.mark.parametrize(
    ("line", "goal"),
    [("*k; rep from * to end.", "end"), ("*p; rep from * to last 3 sts, k3.", "last"), ("[k] to end.", "end")],
)
def test_a_stitch_alone_between_stars_is_worked_up_to_there(line: str, goal: str) -> None:
    """ "*K* around" is as "k around" (common practice); it was refused as a stretch within a stretch."""
    sentence = only(line)
    assert isinstance(sentence, Phrase)
    assert isinstance(sentence.elements[0], Until)
    assert sentence.elements[0].goal == goal


def test_more_than_a_stitch_between_stars_stays_a_repeat() -> None:
    """A stretch up to a marker is worked once for each."""
    sentence = only("*k to marker, sm; rep from * to end.")
    assert isinstance(sentence, Phrase)
    assert isinstance(sentence.elements[0], Several)


def test_a_part_has_one_name_however_it_is_introduced() -> None:
    """`for the Left Sleeve sts` and `left sleeve` are one."""
    assert name_part("for the Left  Sleeve sts") == name_part("left sleeve") == "left sleeve"


def refused(line: str) -> str:
    """Return what is told of a line that is refused; empty if it is read."""
    reading = read_line(line, lambda offset, length: Span(line=1, column=offset + 1, length=length), Words(sizes=1))
    return " ".join(problem.message for problem in reading.problems)


@each_row("place", ["at the middle under the arm", "at center back", "at the centre of the front"])
def test_a_round_that_begins_with_stitches_bound_off_amid_it_is_refused(place: str) -> None:
    """Else those at its beginning would be bound off, and the place only be told."""
    assert "how many is not said" in refused(f"Bind off 10 sts {place}.")
    assert not refused(f"K20, bind off 10 sts {place}, k to end.")


def test_a_cable_of_no_stitches_is_told() -> None:
    """Its abbreviation looks like one, and the table has none of that width."""
    reading = read_line("P2, c0b, k to end.", lambda offset, length: Span(line=1, column=offset + 1, length=length), Words(sizes=1))
    assert "no cable" in reading.problems[0].message
