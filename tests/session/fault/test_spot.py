from __future__ import annotations

import pytest

from stepper.session.fault.search import search
from stepper.session.fault.spot import find_spot
from stepper.session.state import Answer, Fault, Knitting, Observation, Position, Seen, State, Verified
from tests.plans import plan
from tests.tables import each_row

NO_LOOP = Observation(seen=Seen.LOOP, number=0)


def _spot_in(rounds: list[object], answer: Answer, off: int) -> int | None:
    """Find where a fault in one stretch, counted after the second round, is made good in the third."""
    garment = plan(("body", rounds))  # type: ignore[list-item] # strings, and pairs with markers
    state = State(
        knitting=Knitting(place=Position(index=2), verified=Verified(place=Position(index=1), stitches=40))
    )
    fault = Fault(place=Position(index=2), difference=off, answers=(answer,), sights=(NO_LOOP,))
    return find_spot(garment, fault, search(garment, state, fault), (), garment.rounds[2])


MARKED = [("co40", {"markers": (10, 14)}), ("k40", {"markers": (10, 14)}), ("k40", {"markers": (10, 14)})]


def test_a_stitch_is_made_strictly_between_the_markers_its_loss_lies_between() -> None:
    """One made right at a marker comes to lie on the wrong side of it as often as not. By hand: three stitches hang
    from 10 to 13."""
    assert _spot_in([*MARKED], Answer(first=1, end=2, stitches=3), -1) in (11, 12)


def test_a_stretch_too_short_for_it_has_no_spot() -> None:
    """Nothing is made in the section beside it instead."""
    narrow = [(row, {"markers": (10, 11)}) for row in ("co40", "k40", "k40")]
    assert _spot_in([*narrow], Answer(first=1, end=2, stitches=0), -1) is None


def test_two_surplus_stitches_are_not_taken_where_three_plain_ones_do_not_stand() -> None:
    """Two decreases side by side make a pucker: they want a stitch between them."""
    narrow = [(row, {"markers": (10, 12)}) for row in ("co40", "k40", "k40")]
    assert _spot_in([*narrow], Answer(first=1, end=2, stitches=4), 2) is None


@each_row(
    ("section", "off", "spot"),
    [
        (0, -1, 5), (1, -1, 12), (2, -1, 27),
        (0, 1, 5), (1, 1, 12), (2, 1, 27),
        (0, 2, 5), (1, 2, 11), (2, 2, 27),
        (0, -2, 4), (1, -2, None), (2, -2, 26),
        (0, -3, 2), (2, -3, 26),
    ],
)  # fmt: skip
def test_in_a_plain_round_it_is_made_good_in_the_middle_of_its_stretch(
    section: int, off: int, spot: int | None
) -> None:
    """Away from both markers, and with room for as many as are made or lost and a stitch between each two. By hand, for
    stretches from 0 to 10, 10 to 14 and 14 to 40: made stitches stay clear of the markers by one, and by their number at
    the far one; of four stitches three are needed for two decreases, of six five for three."""
    edges = (0, 10, 14, 40)
    counted = edges[section + 1] - edges[section] + off
    assert _spot_in([*MARKED], Answer(first=section, end=section + 1, stitches=counted), off) == spot


@pytest.mark.parametrize(
    ("in_hand", "markers", "spot"),
    [
        ("k40", (10, 14), 27),  # from 14 to 40
        ("k10 sm k2 m1 k2 sm k26", (10, 15), 28),  # moved on by the increase, from 15 to 41
        ("k40", (10, 14, 40), 27),  # one at the join bounds no stretch
        ("k10 rm k4 sm k26", (14,), None),  # one is gone: which stretch it is nobody can tell
    ],
)
def test_found_in_the_middle_of_a_round_it_is_made_good_where_its_stretch_lies_once_the_round_is_done(
    in_hand: str, markers: tuple[int, ...], spot: int | None
) -> None:
    """Counted with four stitches of the round done, one is missing behind the second marker. By hand: made one clear of
    either end of the stretch, in its middle."""
    after = 41 if "m1" in in_hand else 40
    garment = plan(
        ("body", [*MARKED[:2], (in_hand, {"markers": markers}), (f"k{after}", {"markers": markers})])
    )
    place = Position(index=2, stitch=4)
    state = State(knitting=Knitting(place=place, verified=Verified(place=Position(index=1), stitches=40)))
    answer = Answer(first=2, end=3, stitches=25)
    fault = Fault(place=place, difference=-1, answers=(answer,), sights=(NO_LOOP,))
    assert find_spot(garment, fault, search(garment, state, fault), (), garment.rounds[3]) == spot


def test_beside_the_join_two_stitches_are_not_made_where_there_is_room_for_one() -> None:
    """Three stitches from the beginning of the round to the first increase, and two of them missing: at the join itself they may
    come to lie on its wrong side, and beside it a stitch has to stand between them."""
    rows = ["co39", "k2 m1 k20 m1 k17", "k41"]
    assert _spot_in([*rows], Answer(first=0, end=1, stitches=1), -2) is None
    assert _spot_in([*rows], Answer(first=0, end=1, stitches=2), -1) in (1, 2)
