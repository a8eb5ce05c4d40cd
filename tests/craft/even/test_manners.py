"""The three manners of an even round: what every one of them keeps, for all small rounds and any large one."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from stepper.craft.even.manners import Manner, Spaced, space_changes
from stepper.craft.even.phrases import KNIT_TOGETHER, MAKE_ONE, Phrase, Plain, Repeat, SpacedStretch
from stepper.craft.even.spacing import decrease_positions, increase_positions
from stepper.craft.stitches import stitch


def worked(phrase: Phrase) -> str:
    """Knit a phrase stitch by stitch: a letter for each plain stitch, a cross for each change."""
    row = ""
    for part in phrase:
        if isinstance(part, Plain):
            row += "k" * part.stitches
        elif isinstance(part, SpacedStretch):
            row += ("k" * part.gap + "x") * part.times
        else:
            row += worked(part.parts) * part.times
    return row


def keeps_its_promises(stitches: int, changes: int, change: str, flat: bool, manner: Manner) -> Spaced:
    """Check a round from its stitches alone."""
    uses, leaves = stitch(change).uses, stitch(change).leaves
    round_ = space_changes(stitches, changes, change=change, flat=flat, manner=manner)
    row = worked(round_.phrase)
    told = (stitches, changes, change, flat, manner)
    plain = row.count("k")
    assert row.count("x") == changes, told
    assert plain + uses * changes == stitches, told  # all stitches are used
    assert plain + leaves * changes == stitches + changes * (leaves - uses), told
    places = tuple(
        row[:at].count("k") + row[:at].count("x") * uses for at in range(len(row)) if row[at] == "x"
    )
    assert round_.positions == places, told
    full = [len(gap) for gap in row.split("x")]
    if flat:
        ends, inner = (full[0], full[-1]), full[1:-1]
    else:
        ends, inner = (), [full[-1] + full[0], *full[1:-1]] if changes else []
    assert not inner or max(inner) - min(inner) <= 1, told
    assert sorted(round_.gaps) == sorted(inner), told
    if inner and manner is not Manner.MIXED:
        assert all(min(inner) // 2 <= end <= (max(inner) + 1) // 2 for end in ends), told
    if uses == 0 and places:
        assert places[0] >= 1, told
        assert not flat or places[-1] < stitches, told
    if not flat and places and plain >= changes and manner is not Manner.MIXED:
        assert places[0] >= 1, told
    half = flat or manner is Manner.MIXED
    off = max(
        (
            abs(
                place
                + uses
                - Fraction(stitches, changes) * (at + 1)
                + (Fraction(plain, changes) / 2 if half else 0)
            )
            for at, place in enumerate(places)
        ),
        default=Fraction(0),
    )
    assert round_.off == off, told
    assert manner is not Manner.MIXED or off <= 1, told
    assert manner is not Manner.SAYABLE or not places or off <= 2 * Fraction(stitches, changes), told
    return round_


@pytest.mark.parametrize("manner", Manner)
@pytest.mark.parametrize("flat", [False, True])
def test_every_small_round_keeps_what_is_promised(flat: bool, manner: Manner) -> None:
    """Every count up to 26 with every number of changes that fits, up to all stitches used."""
    for stitches in range(1, 27):
        for changes in range((stitches - 1 if flat else stitches) + 1):
            keeps_its_promises(stitches, changes, MAKE_ONE, flat, manner)
        for changes in range(stitches // 2 + 1):
            keeps_its_promises(stitches, changes, KNIT_TOGETHER, flat, manner)
        for changes in range(stitches // 3 + 1):
            keeps_its_promises(stitches, changes, "k3tog", flat, manner)


@pytest.mark.parametrize("manner", Manner)
@pytest.mark.parametrize("flat", [False, True])
def test_the_smallest_rounds_are_knitted_as_they_are_told(flat: bool, manner: Manner) -> None:
    """Cuffs, fingers and toes, where a gap is nought or one and the ends of a row leave no choice."""
    for stitches in range(1, 14):
        for change, most in (
            (MAKE_ONE, stitches - flat),
            (KNIT_TOGETHER, stitches // 2),
            ("k3tog", stitches // 3),
        ):
            for changes in range(most + 1):
                keeps_its_promises(stitches, changes, change, flat, manner)


@pytest.mark.parametrize(("stitches", "changes", "flat"), [(435, 331, False), (580, 439, True)])
def test_where_no_short_phrase_stays_near_the_most_even_order_is_said(
    stitches: int, changes: int, flat: bool
) -> None:
    """Of rounds with more than three hundred increases a few have no phrase of up to four stretches within two gaps. Then
    each change stands within a stitch of its even place, however long that is to hear."""
    round_ = keeps_its_promises(stitches, changes, MAKE_ONE, flat, Manner.SAYABLE)
    assert round_.off <= 1
    assert _named(round_.phrase) > 4


def _named(phrase: Phrase) -> int:
    """Count the stretches that a phrase names."""
    return sum(
        _named(part.parts) if isinstance(part, Repeat) else isinstance(part, SpacedStretch) for part in phrase
    )


@settings(max_examples=150, deadline=None)
@given(st.integers(27, 900), st.floats(0, 1), st.booleans(), st.booleans(), st.sampled_from(Manner))
def test_any_large_round_keeps_what_is_promised(
    stitches: int, share: float, decrease: bool, flat: bool, manner: Manner
) -> None:
    """Larger than any garment's round."""
    most = stitches // 2 if decrease else stitches - 1
    keeps_its_promises(stitches, round(share * most), KNIT_TOGETHER if decrease else MAKE_ONE, flat, manner)


@settings(max_examples=150, deadline=None)
@given(st.integers(2, 400), st.floats(0, 1), st.booleans(), st.booleans())
def test_no_manner_is_said_in_fewer_words_unless_it_stands_farther_off(
    stitches: int, share: float, decrease: bool, flat: bool
) -> None:
    """Two runs are a phrase that the sayable manner looks at too: it may take more words only to stay near."""
    change = KNIT_TOGETHER if decrease else MAKE_ONE
    changes = round(share * (stitches // 2 if decrease else stitches - 1))
    sayable = space_changes(stitches, changes, change=change, flat=flat)
    runs = space_changes(stitches, changes, change=change, flat=flat, manner=Manner.RUNS)
    assert sayable.words <= runs.words or runs.off > 2 * runs.gap


@pytest.mark.parametrize("stitches", [10, 72, 129])
@pytest.mark.parametrize("flat", [False, True])
def test_evenly_mixed_stands_where_it_always_stood(stitches: int, flat: bool) -> None:
    """The places are those of `stepper.craft.even.spacing`, which are checked against Bresenham and Bjorklund."""
    for changes in range(1, stitches):
        round_ = space_changes(stitches, changes, change=MAKE_ONE, flat=flat, manner=Manner.MIXED)
        assert round_.positions == increase_positions(stitches, changes, flat=flat)
    for changes in range(1, stitches // 2 + 1):
        round_ = space_changes(stitches, changes, change=KNIT_TOGETHER, flat=flat, manner=Manner.MIXED)
        assert round_.positions == decrease_positions(stitches, changes, flat=flat)


def test_a_round_ends_with_its_last_change() -> None:
    """As in print: *k4, m1; rep from * around (common practice); knitabit.net: every 10th of 100, ten times."""
    assert space_changes(100, 10, change=MAKE_ONE, flat=False).positions == tuple(range(10, 101, 10))
    # woolpackyarn.com, "Calculating where to place the increases": 51 + 4 in the round at 13, 26, 39, 51.
    assert space_changes(51, 4, change=MAKE_ONE, flat=False).positions == (13, 26, 39, 51)


def test_a_row_has_half_a_gap_at_each_end() -> None:
    """woolpackyarn.com, same page, flat: at 6, 19, 32, 45 of 51."""
    row = space_changes(51, 4, change=MAKE_ONE, flat=True)
    assert row.positions == (6, 19, 32, 45)
    assert row.phrase == (SpacedStretch(6), SpacedStretch(13, 3), Plain(6))


def test_two_runs_put_all_larger_gaps_first() -> None:
    """225 = 15 x 11 + 6 x 10, and 200 = 32 x 4 + 24 x 3."""
    runs = space_changes(225, 21, change=MAKE_ONE, flat=False, manner=Manner.RUNS)
    assert runs.phrase == (SpacedStretch(11, 15), SpacedStretch(10, 6))
    wide = space_changes(200, 56, change=MAKE_ONE, flat=False, manner=Manner.RUNS)
    assert wide.phrase == (SpacedStretch(4, 32), SpacedStretch(3, 24))
    # Behind the 32nd: 128 worked, 32 x 200 / 56 would be even.
    assert wide.off == 128 - Fraction(32 * 200, 56) or wide.off == Fraction(32 * 200, 56) - 128


def test_a_common_factor_is_said_once_in_the_mixed_manner_too() -> None:
    """200 to 256 was sixty parts; its period is worked eight times."""
    mixed = space_changes(200, 56, change=MAKE_ONE, flat=False, manner=Manner.MIXED)
    (whole,) = mixed.phrase
    assert isinstance(whole, Repeat)
    assert whole.times == 8
    assert mixed.words <= 25


def test_decreases_with_nothing_between_are_one_stretch() -> None:
    """Half of the stitches gone is k2tog all around, the only round with a change at its very beginning."""
    assert space_changes(80, 40, change=KNIT_TOGETHER, flat=False).phrase == (SpacedStretch(0, 40),)
    assert space_changes(81, 40, change=KNIT_TOGETHER, flat=False).phrase == (SpacedStretch(1), SpacedStretch(0, 39))


@pytest.mark.parametrize("manner", Manner)
def test_what_does_not_fit_is_refused_in_every_manner(manner: Manner) -> None:
    """One increase goes between two stitches; a decrease takes two."""
    with pytest.raises(ValueError, match="at most 10"):
        space_changes(10, 11, change=MAKE_ONE, flat=False, manner=manner)
    with pytest.raises(ValueError, match="at most 5"):
        space_changes(10, 6, change=KNIT_TOGETHER, flat=True, manner=manner)


def test_no_change_is_plain_knitting() -> None:
    """Nothing to space."""
    none = space_changes(40, 0, change=MAKE_ONE, flat=False)
    assert (none.phrase, none.positions, none.gaps, none.off) == ((Plain(40),), (), (), 0)


def test_a_round_without_stitches_and_changes_is_empty() -> None:
    """ "Knit none" is not said."""
    assert space_changes(0, 0, change="m1", flat=False).phrase == ()
    assert space_changes(1, 0, change="m1", flat=False).phrase == (Plain(1),)
