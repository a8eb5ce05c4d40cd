"""Patterns by their names. Source: stitch dictionaries, US and UK (from memory); counts: common practice.

The multiple of k2, p2 rib, 4 in the round and 4 + 2 balanced in rows, is published (copiouscrafts, "2 X 2 Ribbing").
"""

from __future__ import annotations

import pytest

from stepper.craft.stitch_patterns import PATTERNS, StitchPattern, find_pattern
from stepper.craft.stitches import stitch
from tests.tables import each_row


@each_row(
    ("words", "rows"),
    [
        ("seed stitch", ["k p", "p k"]),
        ("Moss St.", ["k p", "p k"]),
        ("rev St st", ["p"]),
        ("reverse stocking stitch", ["p"]),
        ("stocking stitch", ["k"]),
        ("garter st", ["k", "p"]),
        ("double moss stitch", ["k k p p", "k k p p", "p p k k", "p p k k"]),
        ("linen stitch", ["k,sl wyif", "sl wyif,k"]),
        ("k2, p2 rib", ["k k p p"]),
        ("K1P1 ribbing", ["k p"]),
        ("3x2 ribbing", ["k k k p p"]),
        ("two by two rib", ["k k p p"]),
        ("three by one rib", ["k k k p"]),
        ("four by one rib", ["k k k k p"]),
        ("double rib", ["k k p p"]),
        ("k1 tbl, p1 rib", ["k tbl,p"]),
        ("twisted rib", ["k tbl,p"]),
        ("k3, p1, k1, p1 rib", ["k k k p k p"]),
    ],
)
def test_a_name_means_its_rows(words: str, rows: list[str]) -> None:
    """A name taken for another pattern would be a whole garment in the wrong fabric."""
    found = find_pattern(words)
    assert found is not None
    assert [",".join(row) if "," in rows[0] else " ".join(row) for row in found.rows] == rows


@pytest.mark.parametrize(
    "words", ["herringbone stitch", "rib", "pattern", "k2 rib", "brioche", "fisherman's rib"]
)
def test_a_name_that_is_not_known_is_none(words: str) -> None:
    """Books differ in many patterns; such a name is refused rather than guessed."""
    assert find_pattern(words) is None


def test_moss_is_another_pattern_in_a_us_page() -> None:
    """UK moss is US seed stitch; an American moss stitch changes every second row. Both are told."""
    british, american = find_pattern("moss stitch"), find_pattern("moss stitch", american=True)
    assert british is not None
    assert american is not None
    assert (len(british.rows), len(american.rows)) == (2, 4)
    assert british.open
    assert american.open
    assert find_pattern("seed stitch", american=True) == find_pattern("seed stitch")


@pytest.mark.parametrize(
    ("words", "count", "flat", "fits"),
    [
        ("k2, p2 rib", 168, False, True),
        ("k2, p2 rib", 169, False, False),
        ("k2, p2 rib", 18, False, False),
        ("k2, p2 rib", 18, True, True),
        ("seed stitch", 21, False, True),
        ("1x1 rib", 21, True, True),
        ("1x1 rib", 21, False, False),
    ],
)
def test_a_pattern_fits_its_multiples(words: str, count: int, flat: bool, fits: bool) -> None:
    """A rib that does not divide shows at the join: k2, p2 goes on 168 stitches and not on 169."""
    found = find_pattern(words)
    assert found is not None
    assert found.fits(count, flat=flat) == fits


def test_every_row_of_the_table_is_made_of_stitches_and_equally_long() -> None:
    """A row of another length would shift the pattern below it."""
    for pattern in PATTERNS.values():
        assert len({len(row) for row in pattern.rows}) == 1
        assert all(stitch(code).uses == stitch(code).leaves == 1 for row in pattern.rows for code in row)


@each_row(
    ("words", "repeat", "extra"),
    [
        ("stockinette", 1, None),
        ("garter", 1, None),
        ("american moss stitch", 2, 1),
        ("irish moss stitch", 2, 1),
        ("double moss stitch", 4, 2),
        ("double seed stitch", 4, 2),
        ("single rib", 2, 1),
        ("double rib", 4, 2),
        ("twisted rib", 2, 1),
        ("broken rib", 2, 1),
        ("linen stitch", 2, 1),
        ("k3, p3 rib", 6, 3),
        ("k4, p2 rib", 6, 4),
    ],
)
def test_in_rows_a_pattern_is_a_multiple_and_the_stitches_that_balance_it(
    words: str, repeat: int, extra: int | None
) -> None:
    """ "A multiple of 4, plus 2": rows that end as they began lie flat at both edges; a round takes the multiple alone."""
    found = find_pattern(words)
    assert found is not None
    for count in range(5 * repeat, 6 * repeat):
        over = count - 5 * repeat
        assert found.fits(count, flat=False) == (over == 0)
        assert found.fits(count, flat=True) == (over in (0, extra))


@pytest.mark.parametrize("words", ["k1 p0 rib", "k0, p1 rib", "0/1 rib", "2x0 rib", "0x0 rib", "k2 k2 rib"])
def test_a_rib_of_knit_or_purl_alone_is_none(words: str) -> None:
    """It is stocking stitch or a slip of the pen; worked out as a rib, its ends and its elasticity would be wrong."""
    assert find_pattern(words) is None


def _from_behind(rows: tuple[tuple[str, ...], ...]) -> tuple[tuple[str, ...], ...]:
    """Return the rows as the other side shows them: mirrored, knit for purl and purl for knit."""
    return tuple(tuple({"k": "p", "p": "k"}.get(code, "another") for code in reversed(row)) for row in rows)


def _shifted(rows: tuple[tuple[str, ...], ...]) -> set[tuple[tuple[str, ...], ...]]:
    """Return the same rows, begun at any of them and at any stitch of the repeat."""
    turned = [rows[at:] + rows[:at] for at in range(len(rows))]
    return {tuple(row[by:] + row[:by] for row in each) for each in turned for by in range(len(rows[0]))}


@each_row("pattern", PATTERNS.values())
def test_a_pattern_is_reversible_if_its_other_side_shows_the_same(pattern: StitchPattern) -> None:
    """A knit seen from behind is a purl. Twisted and slipped stitches look otherwise there. Source: common practice."""
    assert pattern.reversible == (_from_behind(pattern.rows) in _shifted(pattern.rows))


def test_only_what_alternates_stitch_by_stitch_in_every_row_may_stop_anywhere() -> None:
    """Seed stitch, and moss as the British call it, keep their dots on any count. Source: common practice."""
    assert {pattern.name for pattern in PATTERNS.values() if pattern.any_count} == {"seed", "moss"}


@pytest.mark.parametrize("name", ["stockinette", "garter", "reverse stockinette"])
def test_what_repeats_over_one_stitch_fits_every_count(name: str) -> None:
    """With nothing left over."""
    assert all(PATTERNS[name].fits(count, flat=flat) for count in (1, 2, 7) for flat in (True, False))
