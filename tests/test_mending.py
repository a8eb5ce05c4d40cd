"""A mistake of each kind in every construction, mended by what is said: nothing is spoilt."""

from __future__ import annotations

import random
from dataclasses import replace
from functools import lru_cache

import pytest

from stepper.plan.under_way.absorb import Mend
from stepper.session.fault.ways import RemedyKind
from tests import fabric, mending
from tests.garments import NAMES, read_garment
from tests.mending import KINDS, KNITTERS, Mender, Outcome, Piece, mend
from tests.plans import plan

DOSE = 2
"""Mistakes of each kind for each knitter; `python -m tests.bench.faults` makes a thousand."""
WORDS = 25
"""Words of an answer at most, before what can be said to it: about nine seconds."""


@lru_cache
def pieces() -> tuple[Piece, ...]:
    """Knit some of the garments right, once."""
    return tuple(mending.piece(name, read_garment(name)[1]) for name in sorted({*NAMES[::2], "shawl"}))


@pytest.mark.parametrize("knitter", KNITTERS)
@pytest.mark.parametrize("kind", KINDS)
def test_the_first_advice_never_harms(kind: str, knitter: str) -> None:
    """However many of the questions she answers: no good knitting is changed, no loop is left to run, nothing is made in
    another stretch than the mistake's, and in the end the fabric is that of one who made no mistake. Asking to count
    for ever would not bring it there. Every other mistake is noticed in the middle of its round."""
    dice = random.Random(f"test {kind}")
    found: list[Outcome] = []
    ends = kind == "missed repeat"  # what shows at the end of the round, and hardly before
    while len(found) < DOSE:
        outcome = mend(dice.choice(pieces()), kind, knitter, dice, midway=len(found) % 2 == 1 and not ends)
        if outcome is not None:
            found.append(outcome)
    assert [each.harm for each in found] == [""] * DOSE, found[0].log
    assert all(each.first_right and each.right for each in found)
    assert max(words for each in found for words in each.words) <= WORDS


def test_a_stitch_made_where_none_is_missing_is_called_harm() -> None:
    """The judge is no friend of the advice: whoever makes a stitch good in sound knitting, or beside a loop that hangs, is
    found out."""
    for kind, harm in (("miscount", "good knitting changed"), ("dropped", "loop left")):
        dice = random.Random(f"harm {kind}")
        while True:
            knitting = Mender(dice.choice(pieces()), kind, "at once", dice)
            if knitting.begin():
                break
        way = mending.a_stitch_more(knitting)
        assert way.kind is RemedyKind.PLAIN
        knitting.carry_out(way)
        assert knitting.outcome.harm.startswith(harm)


def test_a_round_left_in_the_middle_keeps_what_is_on_the_left_needle() -> None:
    """The judge works a round in two halves as in one: the same loops, markers and stitches left over."""
    garment = pieces()[0]
    for index in range(1, len(garment.photographs) - 1, 7):
        whole, halved = garment.photographs[index].copy(), garment.photographs[index].copy()
        todo = fabric.steps(garment.plan.rounds[index].phrase)
        whole.work(index, todo)
        half = len(todo) // 2
        halved.work(index, todo[:half], stops=True)
        halved.work(index, todo[half:])
        assert halved.count == whole.count
        assert halved.left[index] == whole.left[index]
        assert halved.edges("marker") == whole.edges("marker")


def test_below_an_underarm_a_stitch_too_many_is_not_taken_away_half_a_round_off() -> None:
    """Plain fabric below a raglan still shows its lines: the count is narrowed to the stretch between two of them before
    two stitches are worked together, and that costs a few questions, not many."""
    dice, found = random.Random("below an underarm"), 0
    raglan = mending.piece("raglan", read_garment("raglan")[1])
    first = next(each.index for each in raglan.plan.rounds if each.section == "body")
    while found < 3:
        knitting = Mender(raglan, "split yarn", "all", dice)
        if knitting.begin() and first <= knitting.index < first + 6:
            outcome = knitting.run()
            assert (outcome.harm, outcome.right) == ("", True), outcome.log
            assert outcome.questions <= 6
            found += 1


def test_between_blocks_of_colour_a_split_stitch_is_taken_away_in_its_own_block() -> None:
    """A few motifs on a plain body are all that tells one side of it from the other: the count goes from block to block, and
    what is worked together lies no farther from the mistake than its block is wide."""
    motif = "k30:MC k9:P k30:MC k9:P k42:MC"
    body = mending.piece("motifs", plan(("body", ["co120", "k120:MC", *[motif] * 3, "k120:MC", "k120:MC"])))
    dice, found = random.Random("blocks"), 0
    while found < 6:
        knitting = Mender(body, "split yarn", "all", dice)
        if knitting.begin() and knitting.index in (2, 3) and knitting.session.state.place.index == knitting.index + 1:
            outcome = knitting.run()
            assert (outcome.harm, outcome.right) == ("", True), outcome.log
            places = [mending.loops_before(knitting.fabric, kind) for kind in ("fault", "mend")]
            assert abs(places[0] - places[1]) <= 43, outcome.log
            assert any("block" in line for line in outcome.log)
            found += 1


LACE = mending.piece(
    "lace",
    plan(
        (
            "shawl",
            [
                "co44",
                ("k4 pm (k2 yo k2tog)x9 pm k4", {"markers": (4, 40)}),
                *[(row, {"markers": (4, 40)}) for row in ("k44", "k4 sm (k2 yo k2tog)x9 sm k4") * 5],
            ],
        )
    ),
)


def test_a_stitch_made_in_another_repeat_of_lace_is_called_harm() -> None:
    """The section between its markers counts right then, and every repeat between the two stands a stitch aside."""
    dice, found = random.Random("lace"), 0
    while not found:
        knitting = Mender(LACE, "missed increase", "at once", dice)
        if not knitting.begin() or knitting.index % 2 == 0 or not 2 < knitting.index < 8:
            continue
        place = knitting.session.state.place
        if place.index != knitting.index + 1 or not 12 < knitting.slip.before < 20:
            continue
        way = replace(mending.a_stitch_more(knitting), mend=Mend(index=place.index, stitch=36, change=1, origin=place.index))
        knitting.carry_out(way)
        assert knitting.outcome.harm.startswith("wrong section")
        found += 1


def test_in_lace_a_missed_yarn_over_is_never_made_good_between_the_markers_alone() -> None:
    """However few of the questions she answers: the fabric is right in the end, and no repeat stands aside."""
    dice, found = random.Random("yarn over in lace"), 0
    while found < 4:
        knitting = Mender(LACE, "missed increase", "half", dice)
        if knitting.begin():
            outcome = knitting.run()
            assert outcome.harm == "", outcome.log
            found += 1
