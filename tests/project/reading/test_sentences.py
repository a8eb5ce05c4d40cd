"""From the parsed tree to records: numbers, places and names come through unharmed."""

from __future__ import annotations

from stepper.project.instructions import BindOff, BreakYarn, Needle, Phrase, Return, WithYarn
from stepper.project.stitchwork import Hold, Work
from tests.project.reading.test_wording import only, read


def test_a_part_put_on_hold_and_returned_bears_one_name() -> None:
    """`hold 46 for left sleeve` and `Return left sleeve to needles` must meet."""
    held = only("Hold 46 sts for the left sleeve.")
    back = only("Return the left sleeve to needles.")
    assert isinstance(held, Phrase)
    assert isinstance(held.elements[0], Hold)
    assert isinstance(back, Return)
    assert held.elements[0].name == back.name == "left sleeve"
    assert isinstance(only("Place left sleeve sts back on needles."), Return)


def test_a_needle_is_read_in_millimetres() -> None:
    """By its own diameter or by an undisputed US number."""
    for line in (
        "Change to 3.75 mm needles.",
        "Change to US 5 (3.75 mm) needles.",
        "Change to US 5 needles.",
    ):
        sentence = only(line)
        assert isinstance(sentence, Needle)
        assert sentence.mm == 3.75
    assert "millimetres" in read("Change to US 17 needles.").problems[0].hint


def test_yarns_keep_their_keys() -> None:
    """`With A` and `Break MC` name keys of the file."""
    with_a = read("With A, knit 2 rounds.").line
    assert with_a is not None
    assert isinstance(with_a.sentences[0], WithYarn)
    assert with_a.sentences[0].yarn == "A"
    broken = only("Break MC.")
    assert isinstance(broken, BreakYarn)
    assert broken.yarn == "MC"


def test_binding_off_all_and_binding_off_some_are_two_things() -> None:
    """One ends the piece, the other is a part of a row."""
    everything = only("Cast off in pattern.")
    some = only("Bind off 5 sts, k to end.")
    assert isinstance(everything, BindOff)
    assert everything.manner == "in pattern"
    assert isinstance(some, Phrase)
    assert isinstance(some.elements[0], Work)
    assert some.elements[0].stitch == "bo"


def test_rounds_must_run_upwards() -> None:
    """`Rnds 4-1` is a slip."""
    assert "upwards" in read("Rnds 4-1: Knit.").problems[0].message
