from __future__ import annotations

import math
import random

from stepper.session.fault import off_sections, search, window
from stepper.session.landmarks import sections_at
from stepper.session.state import Answer, Fault, Knitting, Place, State, Verified
from tests.plans import final_increase, plan

MARKED = plan(("yoke", [("co160", {"markers": tuple(range(20, 160, 20))}), "k160"]))
"""Eight sections of twenty."""


def found_by(fault: Fault, state: State, wrong: int) -> tuple[tuple[int, int], int]:
    """Answer every question truly for one fault in a section; give where it is found and the questions."""
    asked = 0
    while True:
        looking = search(MARKED, state, fault)
        assert looking.single
        if looking.next is None:
            return looking.suspects, asked
        asked += 1
        first, end = looking.next.count
        stitches = 20 * (end - first) - (1 if first <= wrong < end else 0)
        answer = Answer(first=first, end=end, stitches=stitches)
        fault = Fault(place=fault.place, difference=-1, answers=(*fault.answers, answer))


def test_a_single_fault_is_always_found() -> None:
    """Wherever it is, in as many questions as halving needs; source: information bound, log2 of eight."""
    state = State(knitting=Knitting(place=Place(index=1)))
    for wrong in range(8):
        suspects, asked = found_by(Fault(place=Place(index=1), difference=-1), state, wrong)
        assert suspects == (wrong, wrong + 1)
        assert asked == math.log2(8)


def test_an_interruption_is_looked_at_first() -> None:
    """Where she was called away the odds are higher, so the fault there is found sooner on average."""
    state = State(
        knitting=Knitting(place=Place(index=2)), breaks=tuple(Place(index=1, stitch=150) for _ in range(9))
    )
    _, asked = found_by(Fault(place=Place(index=2), difference=-1), state, 7)
    assert asked < math.log2(8)


def test_two_faults_are_said_to_be_two() -> None:
    """An answer that explains only a part of the difference cannot come from a single fault."""
    state = State(knitting=Knitting(place=Place(index=1)))
    fault = Fault(place=Place(index=1), difference=-2, answers=(Answer(first=0, end=4, stitches=79),))
    assert not search(MARKED, state, fault).single


def test_all_counts_at_once_find_it_too() -> None:
    """Whoever counts every section is believed."""
    state = State(knitting=Knitting(place=Place(index=1)))
    dice = random.Random(1)
    for _ in range(20):
        wrong = dice.randrange(8)
        answers = tuple(Answer(first=at, end=at + 1, stitches=20 + (at == wrong)) for at in range(8))
        fault = Fault(place=Place(index=1), difference=1, answers=answers)
        assert search(MARKED, state, fault).suspects == (wrong, wrong + 1)


def test_the_sections_that_are_off_are_named() -> None:
    """By how much, too."""
    sections = sections_at(MARKED, Place(index=1))
    assert sections is not None
    assert off_sections(sections, (20, 19, 20, 20, 22, 20, 20, 20)) == ((1, -1), (4, 2))


def test_only_rounds_since_the_last_good_count_are_suspected() -> None:
    """What was right then is not to blame."""
    garment = final_increase()
    verified = Verified(place=Place(index=6), stitches=246)
    assert window(garment, Fault(place=Place(index=9), difference=1), verified) == (8, 7, 6)
    assert window(garment, Fault(place=Place(index=9), difference=1, index=2), verified) == (2,)
