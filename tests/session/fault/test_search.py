from __future__ import annotations

import math
import random

import pytest

from stepper.plan.model import flatten
from stepper.session.fault.landmarks import sections_at
from stepper.session.fault.search import most_counted, search, window
from stepper.session.state import Answer, Fault, Knitting, Position, State, Verified
from tests.plans import final_increase, phrase, plan

MARKED = plan(("yoke", [("co160", {"markers": tuple(range(20, 160, 20))}), "k160"]))
"""Eight sections of twenty."""


def found_by(fault: Fault, state: State, wrong: int) -> tuple[tuple[int, int] | None, int]:
    """Answer every question truly for one fault in a section; give where it is found and the questions."""
    asked = 0
    while True:
        looking = search(MARKED, state, fault)
        assert looking.single
        if looking.next is None:
            return looking.found, asked
        asked += 1
        first, end = looking.next.count
        stitches = 20 * (end - first) - (1 if first <= wrong < end else 0)
        answer = Answer(first=first, end=end, stitches=stitches)
        fault = Fault(place=fault.place, difference=-1, answers=(*fault.answers, answer))


def test_a_single_fault_is_always_found() -> None:
    """Wherever it is; on average in fewer stitches than by halving, which counts seven eighths of them, and in
    no fewer questions than the information bound, log2 of eight."""
    state = State(knitting=Knitting(place=Position(index=1)))
    asked = []
    for wrong in range(8):
        found, questions = found_by(Fault(place=Position(index=1), difference=-1), state, wrong)
        assert found == (20 * wrong, 20 * wrong + 20)
        asked.append(questions)
    assert sum(asked) / 8 >= math.log2(8)
    first = search(MARKED, state, Fault(place=Position(index=1), difference=-1)).next
    assert first is not None
    # The stretch that is left is counted itself, unless the last count was of just that one.
    assert first.expected_counts <= sum(asked) / 8 <= first.expected_counts + 1
    assert first.expected_stitches < 7 / 8 * 160


def test_a_stretch_is_never_only_inferred() -> None:
    """Where seven of eight stretches are as they should be the last is counted too: the whole count may have been a
    slip, and then nothing is to be changed."""
    state = State(knitting=Knitting(place=Position(index=1)))
    right = tuple(Answer(first=at, end=at + 1, stitches=20) for at in range(7))
    looking = search(MARKED, state, Fault(place=Position(index=1), difference=-1, answers=right))
    assert looking.found is None
    assert looking.next is not None
    assert looking.next.count == (7, 8)
    last = Answer(first=7, end=8, stitches=19)
    off = search(MARKED, state, Fault(place=Position(index=1), difference=-1, answers=(*right, last)))
    assert off.found == (140, 160)


def test_an_interruption_is_looked_at_first() -> None:
    """Where she was called away the odds are higher, so that section is counted before the others."""
    eighths = {"markers": tuple(range(20, 160, 20))}
    twice = plan(("yoke", [("co160", eighths), ("k160", eighths)]))
    called_away = State(knitting=Knitting(place=Position(index=2)), breaks=(Position(index=1, stitch=150),))
    fault = Fault(place=Position(index=2), difference=-1)
    undisturbed = search(twice, State(knitting=Knitting(place=Position(index=2))), fault).next
    first = search(twice, called_away, fault).next
    assert undisturbed is not None
    assert first is not None
    assert undisturbed.count == (0, 1)
    assert first.count == (7, 8)


def test_two_faults_are_looked_for_one_after_the_other() -> None:
    """An answer that explains only a part of the difference is one fault of two; each has its own sign."""
    state = State(knitting=Knitting(place=Position(index=1)))
    fault = Fault(place=Position(index=1), difference=-2, answers=(Answer(first=0, end=4, stitches=79),))
    first = search(MARKED, state, fault)
    assert (first.suspects, first.difference, first.rest) == ((0, 1, 2, 3), -1, -1)
    one_more = Answer(first=0, end=1, stitches=21)
    other = search(MARKED, state, Fault(place=Position(index=1), difference=-2, answers=(one_more,)))
    assert (other.found, other.difference, other.rest) == ((0, 20), 1, -3)


def test_all_counts_at_once_find_it_too() -> None:
    """Whoever counts every section is believed."""
    state = State(knitting=Knitting(place=Position(index=1)))
    dice = random.Random(1)
    for _ in range(20):
        wrong = dice.randrange(8)
        answers = tuple(Answer(first=at, end=at + 1, stitches=20 + (at == wrong)) for at in range(8))
        fault = Fault(place=Position(index=1), difference=1, answers=answers)
        assert search(MARKED, state, fault).suspects == (wrong,)


def test_where_every_stretch_is_right_the_whole_count_was_a_slip() -> None:
    """Every section right and the whole wrong: it is all there."""
    state = State(knitting=Knitting(place=Position(index=1)))
    right = tuple(Answer(first=at, end=at + 1, stitches=20) for at in range(8))
    assert search(MARKED, state, Fault(place=Position(index=1), difference=-1, answers=right)).sound


def test_a_later_count_refutes_an_earlier_one() -> None:
    """Four sections were one short together, and each of them alone is as it should be: the first count was a slip."""
    state = State(knitting=Knitting(place=Position(index=1)))
    each = tuple(Answer(first=at, end=at + 1, stitches=20) for at in range(4))
    answers = (Answer(first=0, end=4, stitches=79), *each)
    looking = search(MARKED, state, Fault(place=Position(index=1), difference=-1, answers=answers))
    assert looking.suspects == (4, 5, 6, 7)


def test_among_very_many_increases_the_one_left_out_is_narrowed_to_its_repeat() -> None:
    """Forty increases, the thirtieth left out: counted in groups first, then one by one, until it is known which. The
    counts are those of stitches that lie three apart, by hand."""
    garment = plan(("yoke", ["co80", "(k2 m1)x40", "k120"]))
    state = State(
        knitting=Knitting(place=Position(index=2), verified=Verified(place=Position(index=1), stitches=80))
    )
    made = [3 * at for at in range(1, 40) if at < 30] + [3 * at - 1 for at in range(31, 40)]
    edges = [0, *made, 119]
    fault = Fault(place=Position(index=2), difference=-1)
    for _ in range(30):
        looking = search(garment, state, fault)
        if looking.next is None:
            break
        first, end = looking.next.count
        stitches = (edges[end] if end < len(edges) else 119) - edges[first]
        fault = Fault(
            place=fault.place,
            difference=-1,
            answers=(*fault.answers, Answer(first=first, end=end, stitches=stitches)),
        )
    assert looking.next is None
    assert looking.found == (87, 90)


def test_increases_are_counted_off_from_the_beginning() -> None:
    """One that is missing moves the number of all behind it; counted from a known one it shows at once."""
    garment = plan(("yoke", ["co80", "(k8 m1)x10", "k90"]))
    state = State(
        knitting=Knitting(place=Position(index=2), verified=Verified(place=Position(index=1), stitches=80))
    )
    fault = Fault(place=Position(index=2), difference=-1)
    first = search(garment, state, fault).next
    assert first is not None
    assert first.count[0] == 0
    missing = Answer(first=0, end=1, stitches=17)
    found = search(garment, state, Fault(place=Position(index=2), difference=-1, answers=(missing,)))
    assert (found.landmark, found.found) == (-1, (0, 9))
    sections = sections_at(garment, Position(index=2))
    assert sections is not None
    assert most_counted(sections, 0, 1) >= 90, "all of them may be missing"


def test_only_rounds_since_the_last_good_count_are_suspected() -> None:
    """What was right then is not to blame."""
    garment = final_increase()
    verified = Verified(place=Position(index=6), stitches=246)
    assert window(garment, Fault(place=Position(index=9), difference=1), verified) == (8, 7, 6)
    assert window(garment, Fault(place=Position(index=9), difference=1, index=2), verified) == (2,)


def test_twenty_rounds_are_looked_back_over_where_nothing_was_counted() -> None:
    """The latest first; a good count ends it, and a round begun is suspected as well. By hand."""
    plain = plan(("body", ["co10", *["k10"] * 30]))

    def rounds(index: int, stitch: int = 0, verified: int | None = None) -> tuple[int, ...]:
        good = None if verified is None else Verified(place=Position(index=verified), stitches=10)
        return window(plain, Fault(place=Position(index=index, stitch=stitch), difference=1), good)

    assert rounds(25) == tuple(range(24, 4, -1))
    assert rounds(25, stitch=3) == tuple(range(25, 5, -1))
    assert rounds(4) == (3, 2, 1, 0)
    assert rounds(31) == tuple(range(30, 10, -1))
    assert rounds(25, verified=22) == (24, 23, 22)
    assert rounds(25, verified=25) == (24,)
    assert rounds(0) == ()
    assert window(plain, Fault(place=Position(index=5), difference=1, index=2), None) == (2,)
    assert window(plain, Fault(place=Position(index=5), difference=1, index=31), None) == ()


def test_the_most_a_count_between_markers_can_be_is_twice_what_is_there() -> None:
    """Two sections of twenty: eighty, and no slip of the tongue above it; where increases are counted between, all may
    be missing, and she counts on to the end."""
    marked = sections_at(MARKED, Position(index=1))
    seen = sections_at(plan(("yoke", ["co80", "(k8 m1)x10", "k90"])), Position(index=2))
    assert marked is not None
    assert seen is not None
    assert most_counted(marked, 0, 2) == 80
    assert most_counted(seen, 0, 2) == 180


YOKE = plan(("yoke", ["co80", "(k8 m1)x10", "k90"]))
"""Ten increases: sections of nine, the last one ends the round."""


@pytest.mark.parametrize(
    ("difference", "answers", "landmark", "found", "spot"),
    [
        (-1, [(0, 1, 8)], 0, (0, 9), None),  # a stitch is missing before the first increase
        (-1, [(0, 1, 17)], -1, (0, 9), None),  # the first increase is, and she counted on to the second
        (-1, [(0, 1, 9), (1, 2, 17)], -1, (9, 18), None),
        (-1, [(0, 1, 9), (1, 2, 8)], 0, (9, 18), None),
        (1, [(0, 1, 10)], 0, (0, 9), None),
        (1, [(0, 1, 4)], 1, (0, 9), 3),  # an increase too many behind the fourth stitch
        (1, [(0, 1, 9), (1, 2, 5)], 1, (9, 18), 13),
        (1, [(0, 1, 8)], 1, (0, 9), 7),
        (-1, [(0, 1, 7)], 1, (0, 9), 6),
        (-1, [(0, 9, 81), (9, 10, 8)], 0, (81, 90), None),  # nothing lies behind the last section
    ],
)
def test_a_count_up_to_an_increase_tells_whether_that_increase_is_there(
    difference: int,
    answers: list[tuple[int, int, int]],
    landmark: int,
    found: tuple[int, int],
    spot: int | None,
) -> None:
    """Counted from increase to increase: a section that runs on to the next lacks its own, one cut short has another in
    it. By hand, for ten sections of nine."""
    given = tuple(Answer(first=first, end=end, stitches=stitches) for first, end, stitches in answers)
    state = State(knitting=Knitting(place=Position(index=2), verified=Verified(place=Position(index=1), stitches=80)))
    looking = search(YOKE, state, Fault(place=Position(index=2), difference=difference, answers=given))
    assert (looking.landmark, looking.found, looking.spot) == (landmark, found, spot)


def test_an_increase_is_not_missed_before_those_ahead_of_it_are_known_to_be_there() -> None:
    """A count from the second increase on begins nowhere, as long as the first may be the one that is missing."""
    state = State(knitting=Knitting(place=Position(index=2), verified=Verified(place=Position(index=1), stitches=80)))
    for stitches in (17, 4):
        answers = (Answer(first=1, end=2, stitches=stitches),)
        looking = search(YOKE, state, Fault(place=Position(index=2), difference=-1, answers=answers))
        assert looking.landmark == 0, stitches


def test_what_is_off_elsewhere_is_another_fault() -> None:
    """Three too few in all and two of them in one section: one is left to be looked for. By hand."""
    state = State(knitting=Knitting(place=Position(index=1)))
    fault = Fault(place=Position(index=1), difference=-3, answers=(Answer(first=2, end=3, stitches=18),))
    looking = search(MARKED, state, fault)
    assert (looking.difference, looking.rest, looking.found) == (-2, -1, (40, 60))


@pytest.mark.parametrize(
    ("stitch", "verified", "index", "rounds"),
    [
        (0, 1, None, (1,)),  # the last round worked, if the one before was counted
        (5, 1, None, (2, 1)),
        (0, 0, None, (1, 0)),
        (0, 2, None, (1,)),  # counted right just here: it must have been a slip, or the last round
        (5, 2, None, (2,)),
        (0, None, None, (1, 0)),
        (0, 1, 0, (0,)),  # she saw it
        (0, 1, 3, ()),  # in a round that is no more
    ],
)
def test_suspected_are_the_rounds_from_the_last_good_count_to_the_needles(
    stitch: int, verified: int | None, index: int | None, rounds: tuple[int, ...]
) -> None:
    """The latest first, that of the count itself among them, and the one in hand once it is begun. By hand, for a piece of
    three rounds of which two are done."""
    good = None if verified is None else Verified(place=Position(index=verified), stitches=80)
    fault = Fault(place=Position(index=2, stitch=stitch), difference=-1, index=index)
    assert window(YOKE, fault, good) == rounds


def test_where_nothing_was_counted_the_fault_may_be_in_any_round_down_to_the_cast_on() -> None:
    """By hand: behind the cast-on only it can be wrong, behind two rounds more all three; of a round in hand it is one of
    them, and never more than twenty are looked back over."""
    body = plan(("body", ["co60", *["k60"] * 30]))

    def rounds(index: int, stitch: int = 0) -> tuple[int, ...]:
        return window(body, Fault(place=Position(index=index, stitch=stitch), difference=-1), None)

    assert rounds(1) == (0,)
    assert rounds(3) == (2, 1, 0)
    assert rounds(3, 5) == (3, 2, 1, 0)
    assert rounds(31) == tuple(range(30, 10, -1))


@pytest.mark.parametrize(
    ("text", "difference", "answers", "expected"),
    [
        # Sections of nine; what is landmark, suspects, difference and the rest elsewhere.
        ("(k8 m1)x10", -1, [(0, 1, 17), (4, 5, 9)], (-1, (0,), -1, 0)),  # one behind it is right: it is still the first
        ("(k8 m1)x10", -1, [(0, 2, 26), (0, 1, 9)], (-1, (1,), -1, 0)),  # of two, the first is there: it is the second
        # Sections of eight and of one in turn.
        ("(k7 m1 m1)x10", -1, [(0, 1, 8), (1, 2, 8)], (-1, (0, 1), -1, 0)),  # the one of a pair: it may be either
        ("(k7 m1 m1)x10", -1, [(0, 1, 8), (1, 3, 4)], (1, (1, 2), -1, 0)),  # one too many is not before the pair
        ("(k7 m1 m1)x10", -1, [(0, 1, 8), (1, 2, 0)], (0, (1,), -1, 0)),  # the stitch of the increase is gone, not it
        # The first section is of one stitch: nothing lies before it in which the increase could hide.
        ("(m1 k8)x10", -1, [(0, 1, 9)], (-1, (0,), -1, 0)),
        # What lies behind the last increase: one stitch, two, or two sections of one each.
        ("(k8 m1)x9 k7 m1 k1", -1, [(9, 10, 8), (10, 11, 0)], (-1, (9, 10), -1, 0)),
        ("(k8 m1)x9 k7 m1 k1", -1, [(10, 11, 1)], (0, (0, 1, 2, 3, 4, 5, 6, 7, 8, 9), -1, 0)),
        ("(k8 m1)x9 k6 m1 k2", -1, [(10, 11, 0)], (0, tuple(range(11)), -1, 0)),  # two are gone: not one fault
        ("(k8 m1)x9 k6 m1 m1 k1", -1, [(10, 12, 0)], (0, tuple(range(12)), -1, 0)),
    ],
)
def test_what_a_count_at_an_increase_says_depends_on_what_lies_beside_it(
    text: str, difference: int, answers: list[tuple[int, int, int]], expected: tuple[int, tuple[int, ...], int, int]
) -> None:
    """Two increases side by side, one at the very beginning or the very end: read as elsewhere, they would send her to
    the wrong one. By hand, on what a knitter would count who goes from increase to increase."""
    uses = sum(run.uses for run in flatten(phrase(text)))
    yoke = plan(("yoke", [f"co{uses}", text]))
    given = tuple(Answer(first=first, end=end, stitches=stitches) for first, end, stitches in answers)
    state = State(
        knitting=Knitting(place=Position(index=2), verified=Verified(place=Position(index=1), stitches=uses))
    )
    looking = search(yoke, state, Fault(place=Position(index=2), difference=difference, answers=given))
    assert (looking.landmark, looking.suspects, looking.difference, looking.rest) == expected


def test_a_last_stretch_of_one_stitch_behind_a_marker_that_is_gone_is_a_stitch_that_is_missing() -> None:
    """A marker hangs where it hangs: nothing was counted past it, as it may be past an increase that is not there."""
    marked = plan(("yoke", [("co160", {"markers": (20, 159)}), "k160"]))
    answer = Answer(first=2, end=3, stitches=0)
    state = State(knitting=Knitting(place=Position(index=1)))
    looking = search(marked, state, Fault(place=Position(index=1), difference=-1, answers=(answer,)))
    assert (looking.landmark, looking.found) == (0, (159, 160))


def test_a_fault_lies_in_no_piece_that_was_finished_before() -> None:
    """What came before the last cast-on hangs on no needle; the cast-on itself may be wrong. The first piece has nothing
    before it."""
    pair = plan(("first", ["co20", "k20", "bo20"]), ("second", ["co20", "k20", "k20"]))

    def looked_through(index: int, stitch: int = 0, verified: int | None = None) -> tuple[int, ...]:
        known = None if verified is None else Verified(place=Position(index=verified), stitches=20)
        return window(pair, Fault(place=Position(index=index, stitch=stitch), difference=1), known)

    assert looked_through(6) == (5, 4, 3)
    assert looked_through(6, verified=1) == (5, 4, 3)
    assert looked_through(6, verified=5) == (5,)
    assert looked_through(4) == looked_through(3, 7) == (3,)
    assert looked_through(3) == (2, 1, 0)
