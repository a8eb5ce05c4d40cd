"""The evenly spaced round against published examples and general libraries."""

from __future__ import annotations

from itertools import groupby
from random import Random

import numpy
import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.even.manners import Manner
from stepper.craft.even.spacing import count_gaps, gaps_between
from stepper.craft.stitches import stitch
from stepper.plan.model import Group, Item, Run
from stepper.plan.stitches.evenly import (
    Change,
    even_places,
    even_round,
    formerly_written,
    in_fabric,
    purl_instead,
    round_at,
    tally_changes,
    usual_change,
)
from stepper.plan.stitches.run_repeats import laid_flat

MAKE = Change(code="m1", yarn="MC")
TOGETHER = Change(code="k2tog", yarn="MC")


def spread(before: int, after: int, *, flat: bool = False, manner: Manner = Manner.SAYABLE) -> tuple:
    """Return the round and its places."""
    change = usual_change(before, after, "MC")
    made = even_round(before, abs(after - before), change, flat=flat, manner=manner)
    return made.items, made.places


def test_the_blended_round_of_the_scenario() -> None:
    """225 to 246: 21 increases, 15 gaps of 11 and 6 of 10.

    Source: whole-number division, 225 = 21 × 10 + 15; numpy.array_split shares the same way (check-values
    3.3.5).
    """
    _, places = spread(225, 246)
    assert len(places) == 21
    assert count_gaps(gaps_between(places, 225)) == ((11, 15), (10, 6))
    parts = sorted(len(part) for part in numpy.array_split(range(225), 21))
    assert sorted(gaps_between(places, 225)) == parts


@pytest.mark.parametrize(
    ("before", "after", "sizes"),
    [
        # Source: published worked examples, check-values 3.1.1, 3.1.6, 3.1.7, 3.1.11 and computed 3.2.1, 3.2.3.
        (51, 55, [12, 13, 13, 13]),
        (100, 110, [10] * 10),
        (100, 111, [9] * 10 + [10]),
        (48, 54, [8] * 6),
        (72, 90, [4] * 18),
        (73, 91, [4] * 17 + [5]),
    ],
)
def test_published_increases_in_the_round(before: int, after: int, sizes: list[int]) -> None:
    """The gaps are those of the printed answers, whatever their order."""
    _, places = spread(before, after)
    assert sorted(gaps_between(places, before)) == sizes


def test_eighty_to_seventy_is_knit_six_knit_two_together_ten_times() -> None:
    """Source: check-values 3.2.4, computed: *k6, k2tog* x10 in the round."""
    phrase, places = spread(80, 70)
    assert len(places) == 10
    assert phrase == (Group((Run("k", 6, "MC"), Run("k2tog", 1, "MC")), 10),)


@given(st.integers(2, 400), st.data())
def test_the_round_uses_and_leaves_what_it_says(before: int, data: st.DataObject) -> None:
    """For every pair of counts, in the round and flat."""
    flat = data.draw(st.booleans())
    after = data.draw(st.integers((before + 1) // 2, 2 * before - 1))
    phrase, places = spread(before, after, flat=flat)
    assert sum(item.uses for item in phrase) == before
    assert sum(item.leaves for item in phrase) == after
    assert len(places) == abs(after - before)
    short = tally_changes(before, abs(after - before), usual_change(before, after, "MC"))
    assert sum(item.uses for item in short) == before
    assert sum(item.leaves for item in short) == after


def test_what_cannot_be_done_is_refused() -> None:
    """More than one increase between two stitches, more than half the stitches decreased away."""
    with pytest.raises(ValueError, match=r"."):
        spread(10, 40)
    with pytest.raises(ValueError, match=r"."):
        spread(10, 3)


def test_a_purled_round_looks_from_behind_as_the_knitted_one() -> None:
    """Each stitch has its twin of the other side: k and p, m1 and m1p, k2tog and p2tog (check-values 1.7.4)."""
    for after in (25, 16):
        knitted, _ = spread(20, after, flat=True)
        purl = laid_flat(purl_instead(knitted))
        assert [run.times for run in purl] == [run.times for run in laid_flat(knitted)]
        assert {run.stitch for run in purl} == ({"p", "m1p"} if after > 20 else {"p", "p2tog"})


def test_a_decrease_over_purls_is_purled() -> None:
    """In k2, p2 rib k2tog over the two purls would stand out; over a knit and a purl it is knitted (common practice)."""
    rib = tuple((code, "") for code in "kkpp" * 2)
    for gap, code in ((2, "p2tog"), (4, "k2tog"), (1, "k2tog")):
        made = in_fabric((Run("k", gap, "MC"), Run("k2tog", 1, "MC"), Run("k", 6 - gap, "MC")), rib)
        assert [run.stitch for run in made if run.stitch.endswith("tog")] == [code]


def test_a_round_in_the_fabric_is_worked_as_each_stitch_below_looks() -> None:
    """Stitch by stitch: plain ones as they look and in their yarn, k2tog and kfb purled over purls alone, every other change as it is."""
    chance, takes, crossed = Random(3), {"k2tog": 2, "ssk": 2, "k3tog": 3, "m1": 0, "kfb": 1}, 0
    for _ in range(400):
        codes = [
            chance.choice(("k", "k", "k", "k2tog", "ssk", "k3tog", "m1", "kfb"))
            for _ in range(chance.randint(1, 8))
        ]
        wide = sum(takes.get(code, 1) for code in codes)
        cable = "2/2 rc#1" if chance.random() < 0.1 else "p"
        cells = tuple(
            (chance.choice(("k", "p", "p", "p", cable)), chance.choice(("", "", "A")))
            for _ in range(wide - (codes[-1] == "k" and chance.random() < 0.3))
        )
        ahead, made = [*cells, ("k", "")], list[tuple[str, str]]()
        for code in codes:
            below = [ahead.pop(0) for _ in range(takes.get(code, 1)) if ahead]
            if code == "k":
                made.append((below[0][0], below[0][1] or "MC"))
            else:
                made.append(
                    (
                        {"k2tog": "p2tog", "kfb": "pfb"}.get(code, code)
                        if [look for look, _ in below] in (["p"] * 2, ["p"])
                        else code,
                        "MC",
                    )
                )
        items = tuple(Run(code, len(list(alike)), "MC") for code, alike in groupby(codes))
        if any("#" in code for code, _ in made):
            with pytest.raises(ValueError, match="a cable crosses"):
                in_fabric(items, cells)
            crossed += 1
            continue
        assert [
            (run.stitch, run.yarn) for run in in_fabric(items, cells) for _ in range(run.times)
        ] == made, (codes, cells)
    assert crossed


def test_two_hundred_to_two_hundred_and_fifty_six_is_a_phrase_eight_times() -> None:
    """Seven increases in 25 stitches, eight times: 4 × 4 + 3 × 3 = 25 and 8 × 25 = 200 (arithmetic)."""
    four, three = (Group((Run("k", gap, "MC"), Run("m1", 1, "MC")), times) for gap, times in ((4, 4), (3, 3)))
    assert spread(200, 256)[0] == (Group((four, three), 8),)


def simply(items: tuple[Item, ...]) -> list[str]:
    """Lay stitches out one by one, by a loop of the test's own."""
    found: list[str] = []
    for item in items:
        if isinstance(item, Group):
            found += simply(item.items) * item.times
        else:
            found += [item.stitch] * item.times
    return found


@given(st.integers(4, 300), st.data())
def test_places_are_where_the_stitches_are(before: int, data: st.DataObject) -> None:
    """Whatever is worked in, in every manner: counted off stitch by stitch, each change begins at its place."""
    change = Change(code=data.draw(st.sampled_from(("m1", "yo", "kfb", "k2tog", "ssk", "k3tog"))), yarn="MC")
    most = before // max(2, stitch(change.code).uses) - 1
    number = data.draw(st.integers(0, max(0, most)))
    flat, manner = data.draw(st.booleans()), data.draw(st.sampled_from(Manner))
    made = even_round(before, number, change, flat=flat, manner=manner)
    used, met = 0, []
    for code in simply(made.items):
        if code == change.code:
            met.append(used)
        used += stitch(code).uses
    assert (used, tuple(met)) == (before, made.places)
    places = even_places(before, number, change, flat=flat, manner=manner)
    assert round_at(before, places, change).places == made.places
    assert simply(round_at(before, places, change).items) == simply(made.items)


def test_an_increase_worked_into_a_stitch_is_the_last_of_its_gap() -> None:
    """Forty stitches, ten times knit three and knit the fourth front and back (check-values 3.2.1's likeness)."""
    made = even_round(40, 10, Change(code="kfb", yarn="MC"), flat=False, manner=Manner.SAYABLE)
    assert made.items == (Group((Run("k", 3, "MC"), Run("kfb", 1, "MC")), 10),)
    assert made.places == tuple(range(3, 40, 4))


def test_the_former_writing_is_kept_to_the_letter() -> None:
    """Journals know their plan by how it was written: 72 to 90 began with half a gap, its repeat in between."""
    made = formerly_written(72, even_places(72, 18, MAKE, flat=False, manner=Manner.MIXED), MAKE)
    pair = Group((Run("k", 4, "MC"), Run("m1", 1, "MC")), 17)
    assert made.items == (Run("k", 2, "MC"), Run("m1", 1, "MC"), pair, Run("k", 2, "MC"))


@given(st.integers(1, 200), st.integers(1, 200), st.sampled_from(["m1", "k2tog", "kfb"]), st.booleans())
def test_mixed_places_are_those_of_the_written_round(before: int, number: int, code: str, flat: bool) -> None:
    """They are worked out without the phrase, which is most of the time of a file with many sizes."""
    change = Change(code=code, yarn="MC")
    try:
        written = even_round(before, number, change, flat=flat, manner=Manner.MIXED).places
    except ValueError:
        with pytest.raises(ValueError, match=r"."):
            even_places(before, number, change, flat=flat, manner=Manner.MIXED)
        return
    places = even_places(before, number, change, flat=flat, manner=Manner.MIXED)
    assert tuple(place - change.inside for place in places) == written
