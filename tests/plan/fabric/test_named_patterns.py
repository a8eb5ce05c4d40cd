"""Patterns called by name, row by row. Source: stitch dictionaries (from memory), worked out by hand."""

from __future__ import annotations

from itertools import pairwise

import pytest

from stepper.craft.stitch_patterns import PATTERNS
from tests.plan.fabric.test_established import knit, seen, told
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project


def checks(work: str) -> str:
    """Return what is printed of the problems of some lines in one size."""
    return faults(project(work, sizes="S", size="S"))


@pytest.mark.parametrize("count", [20, 21])
@pytest.mark.parametrize("before", ["", "Knit 1 row."])
def test_seed_stitch_has_a_purl_above_every_knit_on_both_sides(count: int, before: str) -> None:
    """Whatever the count and the side it begins on, no stitch stands on its like."""
    plan = knit(f"Cast on {count} sts. Work flat.\n{before}\nWork in seed st for 4 rows.")
    rows = [seen(round_) for round_ in plan.rounds[-4:]]
    for below, above in pairwise(rows):
        assert all(one != other for one, other in zip(below, above, strict=True))
    assert plan.rounds[-4].instruction.lstrip("*(").startswith("k1, p1")


@pytest.mark.parametrize(("first", "then"), [(7, 3), (4, 4), (5, 2)])
def test_a_pattern_called_again_goes_on_where_it_stands(first: int, then: int) -> None:
    """Beginning anew after an odd number of rows would put like on like for one row."""
    plan = knit(
        f"Cast on 20 sts. Work flat.\nWork {first} rows in moss st.\nContinue in moss stitch for {then} rows."
    )
    whole = knit(f"Cast on 20 sts. Work flat.\nWork {first + then} rows in moss st.")
    assert [seen(round_) for round_ in plan.rounds] == [seen(round_) for round_ in whole.rounds]


def test_a_pattern_after_an_even_increase_begins_anew() -> None:
    """Its columns are lost between the new stitches; the rib has to fit the new count."""
    plan = knit(
        "Cast on 24 sts.\nJoin in the round.\nWork in k2, p2 rib for 3 rnds.\nIncrease evenly to 28 sts.\nWork in k2, p2 rib for 1 rnd."
    )
    assert told(plan, 1) == ["*k2, p2; rep from * to end"]


def test_edges_are_worked_in_their_own_fabric() -> None:
    """Garter edges are knitted on both sides, the stockinette between them is purled back."""
    plan = knit(
        "Cast on 20 sts. Work flat.\nWork 2 rows in stockinette, keeping 3 sts at each edge in garter st."
    )
    assert told(plan, 2) == ["knit", "k3, p14, k3"]


def test_a_misfit_tells_the_counts_that_would_do() -> None:
    """She learns which count would go."""
    printed = checks("Cast on 25 sts. Work flat.\nWork in double rib for 4 rows.")
    assert "multiple of 4, or 2 more; 25 stitches" in printed
    assert "24 or 28 stitches" in printed


@pytest.mark.parametrize("work", ["Work flat.", "Join in the round."])
def test_every_pattern_fits_the_counts_that_a_misfit_tells(work: str) -> None:
    """Whole repeats always; in rows those with what the pattern may end on besides, which is said if there is any."""
    misfits = 0
    for name, pattern in PATTERNS.items():
        for count in range(17, 22):
            begin = f"Cast on {{}} sts. {work}\nWork in {name} for 4 rows.\nBind off."
            ends = pattern.even_ends if "flat" in work else ()
            if pattern.any_count or count % pattern.repeat in (0, *ends):
                continue
            printed = checks(begin.format(count))
            more = f", or {' or '.join(map(str, ends))} more" if ends else ""
            assert f"needs a multiple of {pattern.repeat}{more}; {count} stitches" in printed
            below, above = (
                count // pattern.repeat * pattern.repeat,
                (count // pattern.repeat + 1) * pattern.repeat,
            )
            assert f"It would fit on {below} or {above} stitches" in printed
            misfits += 1
    assert misfits


def test_an_unknown_pattern_is_refused() -> None:
    """A guess would be a garment in another fabric."""
    printed = checks("Cast on 24 sts. Work flat.\nWork in herringbone stitch for 4 rows.")
    assert 'no pattern called "herringbone stitch" is known, nor defined on this page.' in printed


def test_what_books_do_not_agree_on_is_told() -> None:
    """Moss stitch is seed stitch in the UK, and changes every second row in the US."""
    plan = knit("Cast on 20 sts. Work flat.\nWork in moss st for 2 rows.\nCast off.")
    other = knit("Cast on 20 sts. Work flat.\nWork in moss st for 4 rows.\nBind off.")
    assert any("US seed stitch" in caution.text for caution in plan.warnings)
    assert [seen(round_) for round_ in other.rounds[1:3]] == ["kp" * 10] * 2
    assert any("in the UK it is seed stitch" in caution.text for caution in other.warnings)


def test_rows_that_form_a_pattern_can_be_called_by_its_name() -> None:
    """These 2 rnds form the lace pattern: the two, whatever was worked since."""
    plan = knit(
        "Cast on 24 sts.\nJoin in the round.\nRnd 1: *K1, yo, k2tog; rep from * to end.\nRnd 2: Knit.\n"
        "These 2 rnds form the lace pattern.\nPurl 3 rnds.\nWork 2 rnds in lace pattern."
    )
    assert told(plan, 2) == ["*k1, yo, k2tog; rep from * to end", "knit"]


def test_one_row_that_forms_a_pattern_is_that_of_both_sides() -> None:
    """Moss stitch over an odd number is one row, printed for the right side; it stopped at the first wrong-side row. Common practice."""
    plan = plan_of(project("Cast on 21 sts. Work flat.\nRow 1 (RS): K1, *p1, k1; rep from * to end.\nThis row forms moss st. Work in moss st for a further 9 rows.\nBind off."))
    assert len({round_.words for round_ in plan.rounds[1:11]}) == 1


def test_more_rows_than_there_are_form_no_pattern() -> None:
    """The rows meant are not on the page."""
    assert checks("Cast on 24 sts.\nJoin in the round.\nKnit 1 rnd.\nThese 4 rnds form the pattern.")


def test_a_cast_on_is_no_row_of_the_pattern_that_a_page_names() -> None:
    """ "These 4 rows form pebble pattern" behind three rows took the cast-on with them, and cast on once more in the next repeat."""
    rows = "Row 1 (RS): *K1, p1; rep from *.\nRow 2: Purl.\nRow 3: Knit.\nThese 4 rows form pebble pattern.\nWork 4 rows in pebble pattern."
    assert "4 rounds that could be the pattern are not written out" in faults(
        project(f"Cast on 24 sts. Work flat.\n{rows}")
    )


FOUR = (
    "Cast on 40 sts. Work flat.\nRow 1: Knit.\nRow 2: Purl.\n"
    "Row 3: *K2, p2; rep from * to end.\nRow 4: *K2, p2; rep from * to end.\n"
)


@pytest.mark.parametrize(
    "said", ["Rep rows 3 and 4 for pattern.", "Rep these 2 rows for pattern.", "Rows 3-4 form the pattern."]
)
def test_the_rows_that_a_page_names_are_the_pattern(said: str) -> None:
    """Behind four numbered rows "in pattern" took all four, though the page says that two of them are it."""
    rows = plan_of(project(f"{FOUR}{said}\nWork in pattern for 6 rows.")).rounds[5:]
    assert {round_.instruction for round_ in rows} == {"*k2, p2; rep from * to end"}


@pytest.mark.parametrize("said", ["Rep rows 1 and 2 for pattern.", "Rows 1-2 form the pattern."])
def test_a_pattern_of_rows_further_back_is_refused(said: str) -> None:
    """Rows 3 and 4 were taken in their place, since they were the last two."""
    assert "not the last ones worked" in faults(project(f"{FOUR}{said}\nWork in pattern for 6 rows."))


def test_all_the_rows_written_out_go_on_in_their_order() -> None:
    """Four rows that are the pattern begin again with the first."""
    plan = plan_of(project(f"{FOUR}Rows 1-4 form the pattern.\nWork in pattern for 4 rows."))
    assert [round_.instruction for round_ in plan.rounds[5:]] == [
        round_.instruction for round_ in plan.rounds[1:5]
    ]


def test_a_rib_with_a_slipped_edge_is_the_rib_of_that_part() -> None:
    """"Sl 1, *p1, k1" is ribbed as well: the sleeve has those rows, and "rib 5" goes by them."""
    work = (
        "Cast on 21 sts.\nRow 1 (RS): Sl 1, *P1, K1; rep from * to end.\nRow 2: Sl 1, *K1, P1; rep from * to last 2 sts, K2.\n"
        "Rep these 2 rows 3 times more.\nBind off.\n"
        "Cast on 11 sts and work in rib as given for body for 4 rows.\nRib 5, m1, rib 6. 12 sts.\nBind off."
    )
    plan = plan_of(project(work, sizes="S", size="S"))
    assert plan.rounds[-2].instruction == "sl1, (p1, k1) 2 times, m1, *p1, k1; rep from * to end"


def test_a_twisted_rib_is_the_rib_of_that_part() -> None:
    """Its knit stitches are worked through the back loop; the sleeve has them so too."""
    work = (
        "Cast on 20 sts. Join in the round.\nRib rnd: *K1 tbl, p1; rep from * around.\nWork in rib for 3 rnds.\nKnit 3 rnds.\nBind off.\n"
        "Cast on 12 sts. Join in the round.\nWork in rib as given for body for 3 rnds.\nBind off."
    )
    plan = plan_of(project(work, sizes="S", size="S"))
    assert [round_.instruction for round_ in plan.rounds[-4:-1]] == ["*k1 tbl, p1; rep from * to end"] * 3
