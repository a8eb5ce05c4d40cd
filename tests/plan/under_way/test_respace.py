"""Spacing the rest of a round anew: every position, every count, target met or the reason told."""

from __future__ import annotations

from itertools import pairwise

import numpy
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from stepper.craft.even.spacing import gaps_between
from stepper.plan.model import Plan, Round
from stepper.plan.stitches.evenly import Change, round_at
from stepper.plan.under_way.respace import (
    NoRoomError,
    Respacing,
    apply_respacings,
    gaps_ahead,
    respace,
    spread_of,
)
from tests.invariants import broken_invariants
from tests.plan.test_compile import plan_of
from tests.plans import plan
from tests.project.samples import project


def shaped(before: int, after: int, *, flat: bool = False) -> Plan:
    """Compile a garment whose fourth round goes evenly from one count to the other."""
    rows = "Work flat." if flat else "Join in the round."
    word = "Increase" if after > before else "Decrease"
    work = f"Cast on {before} sts.\n{rows}\nKnit 2 {'rows' if flat else 'rounds'}.\n{word} evenly to {after} sts.\nKnit 2 {'rows' if flat else 'rounds'}."
    return plan_of(project(work))


def the_round(garment: Plan) -> Round:
    """Find the shaped round."""
    return next(round_ for round_ in garment.rounds if round_.evenly)


def applied(garment: Plan, places: tuple[int, ...]) -> Plan:
    """Lay new places on the shaped round."""
    round_ = the_round(garment)
    respacing = Respacing(
        index=round_.index, section=round_.section, before=round_.before, after=round_.after, places=places
    )
    return apply_respacings(garment, (respacing,))


COUNTS = st.tuples(st.integers(8, 60), st.integers(1, 30), st.sampled_from([1, -1]), st.booleans())


@settings(deadline=None, max_examples=150)
@given(COUNTS, st.data())
def test_the_target_is_met_from_anywhere_or_the_reason_is_told(
    counts: tuple[int, int, int, bool], data: st.DataObject
) -> None:
    """For every place and every number made: the round is sound, ends with its target, and the gaps to come differ by
    one at most; what is refused has really no room (counted here, not by the code under test)."""
    before, changes, way, flat = counts
    changes = min(changes, before // 2 - 1)
    garment = shaped(before, before + way * changes, flat=flat)
    round_ = the_round(garment)
    uses = 0 if way > 0 else 2
    used = data.draw(st.integers(0, before))
    made = data.draw(st.integers(0, changes + 1))
    try:
        places = respace(round_, used=used, made=made)
    except NoRoomError as none:
        left, due = before - used, changes - made
        said = str(none)
        too_many = due < 0
        behind = made > used if uses == 0 else made * uses > used
        # Increases go between two stitches; the one before the first and behind the last may lie behind her.
        no_room = due > left + 1 if uses == 0 else due * uses > left
        tight = uses == 0 and due >= left  # the last stitch or two decide whether a gap would be empty
        flat_end = flat and uses == 0 and made >= used
        assert too_many or behind or no_room or tight or flat_end, said
        return
    assert len(places) == changes
    new = the_round(applied(garment, places))
    assert broken_but_for_gaps(applied(garment, places)) == ()
    assert (new.before, new.after) == (before, before + way * changes)
    ahead = [later - earlier for earlier, later in pairwise(places[made:])]
    if ahead:
        assert max(ahead) - min(ahead) <= 1
        assert ahead == sorted(ahead, reverse=True)
        first, told = gaps_ahead(places, used=used, made=made)
        assert (first, list(told)) == (places[made] - used, ahead)
    assert all(place >= used for place in places[made:])
    assert all(place + uses <= used for place in places[:made])


def test_every_place_and_every_number_of_small_rounds() -> None:
    """Without a sample: all rounds of 8 to 14 stitches, all places in them, all numbers made."""
    tried = refused = 0
    for before in range(8, 15):
        for change in [*range(-(before // 2), 0), *range(1, before)]:
            round_ = the_round(shaped(before, before + change))
            spread = spread_of(round_)
            assert spread is not None
            uses = spread.change.uses
            for used in range(before + 1):
                for made in range(abs(change) + 1):
                    tried += 1
                    due, left = abs(change) - made, before - used
                    try:
                        places = respace(round_, used=used, made=made)
                    except NoRoomError:
                        refused += 1
                        assert made > used - 1 or made * uses > used or due * uses > left or due >= left
                        continue
                    items = round_at(before, places, Change(code=spread.change.code, yarn="MC")).items
                    assert sum(item.uses for item in items) == before
                    assert sum(item.leaves for item in items) == before + change
                    gaps = gaps_ahead(places, used=used, made=made)[1]
                    assert not gaps or max(gaps) - min(gaps) <= 1
    assert 0 < refused < tried


def broken_but_for_gaps(garment: Plan) -> tuple[str, ...]:
    """List what is broken besides the gaps, which what she has done may have made uneven."""
    return tuple(each for each in broken_invariants(garment) if "gaps of" not in each)


def test_every_position_of_a_round_as_planned_stays_within_one() -> None:
    """Asked anywhere in an untouched round of 225 to 246 the whole round still has 15 gaps of 11 and 6 of 10.

    Source: 225 = 21 × 10 + 15; numpy.array_split shares the same way.
    """
    round_ = the_round(shaped(225, 246))
    sizes = sorted(len(part) for part in numpy.array_split(range(225), 21))
    for used in range(226):
        made = sum(place <= used for place in round_.shaping)
        places = respace(round_, used=used, made=made)
        assert sorted(gaps_between(places, 225)) == sizes


def test_nine_left_after_a_stretch_without_increases() -> None:
    """Twelve made, 97 stitches left for nine: 7 of 11 and 2 of 10. Source: 97 = 9 × 10 + 7."""
    round_ = the_round(shaped(225, 246))
    places = respace(round_, used=round_.shaping[11], made=12)
    first, gaps = gaps_ahead(places, used=round_.shaping[11], made=12)
    left = 225 - round_.shaping[11] + round_.shaping[0]
    assert first + sum(gaps) + (225 - places[-1]) + round_.shaping[0] == left
    assert len(gaps) == 8


@pytest.mark.parametrize(
    ("used", "made", "words"),
    [
        (100, 22, "takes 21 increases; 22 are too many by 1"),
        (220, 10, "11 increases do not fit into the 5 stitches left; 6 would"),  # 4 between them, 1 at each end
        (3, 9, "9 increases do not lie in 3 stitches"),
        (300, 9, "worked over 225 stitches"),
    ],
)
def test_what_is_impossible_is_said_with_its_numbers(used: int, made: int, words: str) -> None:
    """One short sentence: how many, how much room, how many would fit."""
    with pytest.raises(NoRoomError, match=words):
        respace(the_round(shaped(225, 246)), used=used, made=made)


def test_a_round_with_places_of_its_own_is_left_alone() -> None:
    """Two kinds of decrease, two yarns or a plain round have no even shaping to spread, and in a rib a change that moves
    would turn purl to knit."""
    garment = plan(("body", ["co20", "k1 k2tog k14 ssk k1", "k9 m1:A k9", "k19", "k9 p9 m1 k1"]))
    assert [spread_of(round_) for round_ in garment.rounds[1:]] == [None, None, None, None]
    with pytest.raises(ValueError, match="no even shaping"):
        respace(garment.rounds[3], used=3, made=0)


def test_a_respacing_follows_its_round_and_fits_no_other() -> None:
    """A round added before it moves it along; other counts leave it out."""
    garment = shaped(20, 24)
    round_ = the_round(garment)
    moved = Respacing(index=round_.index - 1, section="body", before=20, after=24, places=(1, 2, 3, 4))
    assert the_round(apply_respacings(garment, (moved,))).shaping == (1, 2, 3, 4)
    assert the_round(apply_respacings(garment, (moved,))).altered == ("spaced anew while it was knitted",)
    other = Respacing(index=round_.index, section="body", before=21, after=24, places=(1, 2, 3))
    wild = Respacing(index=round_.index, section="body", before=20, after=24, places=(9, 2, 3, 40))
    assert apply_respacings(garment, (other, wild)) == garment


def test_of_two_rounds_that_it_fits_the_nearer_is_the_one_meant() -> None:
    """The same increase comes twice in a piece; a line longer before it has moved it by two rounds."""
    again = "Increase evenly to 12 sts.\nKnit 2 rounds.\nDecrease evenly to 8 sts.\nKnit 2 rounds.\n"
    garment = plan_of(project(f"Cast on 8 sts.\nJoin in the round.\nKnit 2 rounds.\n{again}{again}"))
    first, second = (round_ for round_ in garment.rounds if (round_.before, round_.after) == (8, 12))
    for meant, off in ((first, -2), (first, 2), (second, -2), (second, 2)):
        moved = Respacing(index=meant.index + off, section=meant.section, before=8, after=12, places=(1, 2, 3, 4))
        changed = [round_.index for round_ in apply_respacings(garment, (moved,)).rounds if round_.shaping == (1, 2, 3, 4)]
        assert changed == [meant.index]


def test_the_runs_are_those_of_an_even_round() -> None:
    """Laid out at the places planned, a round is what it was."""
    garment = shaped(20, 24)
    made = round_at(20, the_round(garment).shaping, Change(code="m1", yarn="MC"))
    assert applied(garment, made.places) == garment
    assert the_round(garment).phrase == made.items


@pytest.mark.parametrize(
    ("before", "after", "marks", "flat"),
    [
        (40, 44, (10, 20), False),
        (40, 34, (13, 26), False),
        (60, 67, (15, 31, 45), False),
        (30, 25, (7, 15), False),
        (41, 46, (12, 29), True),
    ],
)
def test_a_marker_never_hangs_elsewhere_than_the_rounds_to_come_expect(
    before: int, after: int, marks: tuple[int, ...], flat: bool
) -> None:
    """"K to marker" two rounds on is a number by now. From every place and with every number made, each marker, laid out
    stitch by stitch here, hangs where the plan has it; else the reason is told."""
    ends = zip((0, *marks), (*marks, before), strict=True)
    pieces = ", pm, ".join(f"k{later - earlier}" for earlier, later in ends)
    word = "Increase" if after > before else "Decrease"
    garment = plan_of(
        project(f"Cast on {before} sts.\n{'Work flat' if flat else 'Join in the round'}.\n{pieces}.\n{word} evenly to {after} sts.\nBind off.")
    )
    round_ = the_round(garment)
    spread = spread_of(round_)
    assert spread is not None
    hung = [before - mark for mark in marks] if round_.side == "WS" and flat else list(marks)
    expected = sorted(round_.after - mark for mark in round_.markers) if round_.side == "WS" and flat else list(round_.markers)
    told = 0
    for used in range(before + 1):
        for made in range(abs(after - before) + 1):
            try:
                places = respace(round_, used=used, made=made)
            except NoRoomError as none:
                told += "marker" in str(none)
                continue
            laid, old = list[int](), 0  # for each new stitch, the last of the old ones behind it
            for place in places:
                laid += range(old + 1, place + 1)
                old = place + spread.change.uses
                laid += [old] * spread.change.leaves
            laid += range(old + 1, before + 1)
            assert sorted(sum(each <= mark for each in laid) for mark in sorted(hung)) == expected, (used, made, places)
    assert told
