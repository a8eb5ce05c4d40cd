from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.plan.model import Checkpoint, Plan, Stretch
from stepper.plan.under_way.lengthen import (
    LengthCorrection,
    correct_lengths,
    in_rows,
    renumber_rounds,
    rounds_at_gauge,
    rounds_to_reach,
    with_rounds,
)
from tests.plan.test_compile import plan_of
from tests.plans import plan
from tests.project.samples import project


def _body(*, cycle: int = 1, second: bool = True) -> Plan:
    """Make a body worked to a length, then a rib worked to a length, then a bound-off edge."""
    pattern = ["k10", "p10"] if cycle == 2 else ["k10"]
    body = [pattern[at % cycle] for at in range(6)]
    made = plan(
        ("yoke", ["co10", "k10"]),
        ("body", [(body[0], {"label": "Body", "remarks": ("Change to 4 mm needles",)}), *body[1:]]),
        ("rib", ["(k1 p1)x5"] * 4 + ["bo10"]),
        stretches=(
            Stretch(first=2, last=7, origin=2, target_mm=20.0, rounds_per_10cm=30.0, cycle=cycle),
            Stretch(first=8, last=11, origin=8, target_mm=13.0, rounds_per_10cm=30.0),
        ),
    )
    ask = Checkpoint(expect=10, reason="before the rib")
    rounds = [replace(r, checkpoint=ask) if r.index == 7 else r for r in made.rounds]
    return replace(made, rounds=tuple(rounds))


def test_a_longer_stretch_goes_on_with_its_pattern() -> None:
    """Added rounds must be what the next rounds of the pattern would have been, not copies of the last."""
    longer = with_rounds(_body(cycle=2), 0, 9)

    assert [r.instruction for r in longer.rounds[2:11]] == ["k10", "p10"] * 4 + ["k10"]


def test_what_is_said_once_is_not_said_again_in_added_rounds() -> None:
    """A label or a needle change belongs to the beginning of the line, not to every copy of its first
    round."""
    longer = with_rounds(_body(), 0, 9)

    assert [r.label for r in longer.rounds if r.label] == ["Body"]
    assert [r.remarks for r in longer.rounds if r.remarks] == [("Change to 4 mm needles",)]


@pytest.mark.parametrize("rounds", [1, 5, 8, 20])
def test_the_count_at_the_end_of_a_stretch_stays_at_its_end(rounds: int) -> None:
    """A count before the rib must be asked for before the rib, however long the body became."""
    changed = with_rounds(_body(), 0, rounds)

    assert [r.index for r in changed.rounds if r.checkpoint] == [2 + rounds - 1]


def test_a_stretch_cut_to_nothing_hands_its_count_to_the_round_before() -> None:
    """A section that ends before it begins must not swallow the count that was due at its end."""
    changed = with_rounds(_body(), 0, 0)

    assert [r.index for r in changed.rounds if r.checkpoint] == [1]
    assert changed.stretches[0].last == changed.stretches[0].first - 1


@given(st.integers(0, 30))
def test_numbers_and_later_stretches_follow(rounds: int) -> None:
    """Index, number and "of how many" must be right in the new plan, and the rib must still be the rib."""
    changed = with_rounds(_body(), 0, rounds)

    assert [r.index for r in changed.rounds] == list(range(len(changed.rounds)))
    for section in changed.sections:
        inside = [r for r in changed.rounds if r.section == section]
        assert [(r.number, r.of) for r in inside] == [(n, len(inside)) for n in range(1, len(inside) + 1)]
    rib = changed.stretches[1]
    assert {changed.rounds[at].section for at in range(rib.first, rib.last + 1)} == {"rib"}
    assert changed.rounds[rib.origin].number == 1


def test_two_stretches_are_corrected_each_by_its_own() -> None:
    """The second stretch has moved when it is corrected, and must still be found."""
    both = correct_lengths(
        _body(),
        [
            LengthCorrection(stretch=1, rounds=2, rounds_per_10cm=30.0),
            LengthCorrection(stretch=0, rounds=9, rounds_per_10cm=30.0),
            LengthCorrection(stretch=7, rounds=9, rounds_per_10cm=30.0),
        ],
    )

    assert {s: sum(r.section == s for r in both.rounds) for s in both.sections} == {
        "yoke": 2,
        "body": 9,
        "rib": 3,
    }


def test_impossible_lengths_are_refused() -> None:
    """A negative number of rounds, or more of a stretch that has none, is a mistake of the caller."""
    with pytest.raises(ValueError, match="0 or more"):
        with_rounds(_body(), 0, -1)
    with pytest.raises(ValueError, match="nothing to repeat"):
        with_rounds(with_rounds(_body(), 0, 0), 0, 3)


STRETCH = Stretch(first=10, last=105, origin=10, target_mm=320.0, rounds_per_10cm=30.0)


@pytest.mark.parametrize(
    ("worked", "measured_mm", "total"),
    [
        (60, 200.0, 96),  # exactly as planned: 30 rounds to 10 cm
        (60, 190.0, 101),  # 60 * 320 / 190 = 101.05
        (60, 210.0, 91),  # 60 * 320 / 210 = 91.43
        (95, 319.9, 95),  # a tenth of a millimetre short is there
    ],
)
def test_rounds_follow_the_gauge_really_knitted(worked: int, measured_mm: float, total: int) -> None:
    """The rounds of a piece are in proportion to its length; worked out by hand, source: the rule of
    three."""
    found = rounds_to_reach(STRETCH, measured_mm=measured_mm, worked=worked, at_least=worked, flat=False)

    assert found.rounds == total


def test_a_piece_long_enough_ends_with_the_round_in_hand() -> None:
    """Past the target not one more round than the one begun may be asked for."""
    assert rounds_to_reach(STRETCH, measured_mm=325.0, worked=90, at_least=91, flat=False).rounds == 91


@given(
    worked=st.integers(1, 200),
    begun=st.integers(0, 200),
    length_mm=st.floats(1, 319.0),
    cycle=st.integers(1, 12),
)
def test_a_stretch_ends_with_the_round_it_was_planned_to_end_with(worked: int, begun: int, length_mm: float, cycle: int) -> None:
    """While the piece is short, what is knitted stays, and the pattern stands as the rounds behind the stretch go on from: 96
    rounds and as many repeats more or fewer as the length asks for."""
    stretch = replace(STRETCH, cycle=cycle)

    found = rounds_to_reach(stretch, measured_mm=length_mm, worked=worked, at_least=begun, flat=False)

    assert found.rounds >= begun
    assert (found.rounds - 96) % cycle == 0


@pytest.mark.parametrize(
    ("planned", "cycle", "measured_mm", "rows"),
    [
        (30, 1, 65.0, 30),  # 20 / 65 mm are 30.77 rows to 100 mm: 30 is nearer than 32
        (30, 1, 62.0, 32),  # 32.26
        (31, 1, 65.0, 31),  # 30.77
        (31, 1, 62.0, 33),  # 32.26: 33 is nearer than 31
        (32, 4, 65.0, 32),
        (
            31,
            4,
            65.0,
            31,
        ),  # no whole repeat of four ends there: the pattern ends as it was planned, within it
        (30, 3, 65.0, 30),  # three rows end on the other side each time
        (33, 3, 59.0, 33),  # 33.9
        (30, 1, 100.0, 22),  # long enough: the row begun is the 21st, and the next begins on the right side
        (31, 1, 100.0, 21),
    ],
)
def test_rows_end_on_the_side_that_they_were_planned_to_end_on(
    planned: int, cycle: int, measured_mm: float, rows: int
) -> None:
    """An armhole that begins on a right-side row would begin on the wrong side after one row more; by hand, the rule of three
    and a count by twos."""
    stretch = Stretch(first=1, last=planned, origin=1, target_mm=100.0, rounds_per_10cm=30.0, cycle=cycle)
    found = rounds_to_reach(stretch, measured_mm=measured_mm, worked=20, at_least=21, flat=True)
    assert found.rounds == rows


@given(st.sampled_from(("10 cm", "11 cm", "7 cm, ending with a WS row", "9 cm, ending with a RS row")), st.sampled_from(
    ("Work in stockinette for", "Knit every row for", "Work in k2, p2 rib for")
), st.integers(1, 25), st.floats(20, 120))  # fmt: skip
def test_after_measuring_every_row_is_on_the_other_side(length: str, work: str, done: int, mm: float) -> None:
    """Whatever she measures, a right-side row comes after a wrong-side row, to the end of the piece."""
    made = plan_of(
        project(f"Cast on 24 sts. Work flat.\n{work} {length}.\nK1, ssk, k to end.\nPurl 1 row.\nBind off.")
    )
    (stretch,) = made.stretches
    begun = min(done, stretch.last - stretch.first)
    assert in_rows(made, stretch)
    found = rounds_to_reach(stretch, measured_mm=mm, worked=begun + 1, at_least=begun, flat=True)
    changed = with_rounds(made, 0, found.rounds)
    assert all(one.side != other.side for one, other in pairwise(changed.rounds[1:]))


def test_a_stretch_cut_down_to_nothing_is_still_in_rows() -> None:
    """Measured again, it goes on as the rows before it."""
    made = plan_of(
        project("Cast on 8 sts. Work flat.\nKnit 3 rows.\nKnit until piece measures 3 cm.\nBind off.")
    )
    cut = with_rounds(made, 0, 0)
    assert in_rows(cut, cut.stretches[0])


def test_rounds_of_a_gauge_leave_out_what_lies_before_the_stretch() -> None:
    """A body measured from the underarm, of which 12 rounds are worked before the stretch, needs 12 fewer."""
    assert rounds_at_gauge(replace(STRETCH, first=22), 30.0, flat=False) == 96 - 12


def test_renumbering_leaves_right_rounds_alone() -> None:
    """Rounds already numbered right must be the same objects, because plans are compared by what is in
    them."""
    rounds = _body().rounds

    assert all(one is other for one, other in zip(renumber_rounds(rounds), rounds, strict=True))


def test_a_longer_piece_in_rows_goes_on_side_by_side() -> None:
    """Three more rows of stockinette after a purl row are knit, purl, knit: never a purl row on both sides."""
    made = plan_of(project("Cast on 8 sts. Work flat.\nWork in stockinette for 2 cm.\nBind off."))
    longer = with_rounds(made, 0, 9)
    assert [(each.side, each.instruction) for each in longer.rounds[7:10]] == [
        ("RS", "knit"),
        ("WS", "purl"),
        ("RS", "knit"),
    ]


def test_a_longer_piece_goes_through_the_whole_chart() -> None:
    """A round that works the next row of a chart of two is as it was every second round."""
    work = "Cast on 8 sts. Join in the round.\nK2, chart peak over 4 sts, k2.\nRep last round until piece measures 2 cm.\nBind off."
    made = plan_of(project(work))
    last = made.stretches[0].last
    longer = with_rounds(made, 0, last - made.stretches[0].first + 3)
    assert longer.rounds[last + 1].runs == made.rounds[last - 1].runs != made.rounds[last].runs
