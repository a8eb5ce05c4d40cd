"""Whether a rib stands under "work 3 rows in rib". The wordings are common practice in print."""

from __future__ import annotations

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

BAND = "Cast on 9 sts.\nRow 1 (RS): K1, *p1, k1; rep from * to end.\nRow 2: P1, *k1, p1; rep from * to end.\nRep these 2 rows twice.\n"


def test_a_neckband_picked_up_beside_a_ribbed_band_is_not_called_rib() -> None:
    """The picked-up stitches look knitted: "in rib" over them was worked as stockinette, and called sound."""
    work = f"{BAND}Next row (RS): Rib 9, pick up and k 31 sts.\nWork 3 rows in rib.\nBind off in rib."
    told = faults(project(work))
    assert "no rib stands under these stitches" in told
    assert "k2, p2 rib" in told


def test_a_neckband_whose_rib_is_written_out_goes_on_in_it() -> None:
    """Once a row of it stands, it is the rib meant."""
    work = (
        f"{BAND}Next row (RS): Rib 9, pick up and k 30 sts.\nNext row: P1, *k1, p1; rep from * to end.\n"
        "Work 3 rows in rib.\nBind off in rib."
    )
    plan = plan_of(project(work))
    assert [row.side for row in plan.rounds[-4:-1]] == ["RS", "WS", "RS"]
    assert [str(run.stitch) for run in plan.rounds[-2].runs][:4] == ["k", "p", "k", "p"]


def test_moss_stitch_is_no_rib() -> None:
    """It looks like one on each row, and going on "in rib" over it made more moss stitch."""
    work = "Cast on 21 sts.\nRow 1: K1, *p1, k1; rep from * to end.\nRep last row 5 times.\nWork 4 rows in rib.\nBind off."
    assert "no rib stands under these stitches" in faults(project(work))


RING = "Cast on 24 sts.\nJoin in the round.\nWork in k1, p1 rib for 2 rnds.\n"


def test_a_rib_goes_on_over_the_plain_round_that_begins_a_yarn() -> None:
    """A plain round hides the purls of two colours; the rib over it is the one below, and that is told."""
    plan = plan_of(project(f"{RING}With A, knit 1 rnd. Work 2 rnds in rib.\nBind off."))
    assert [[run.stitch for run in row.runs][:2] for row in plan.rounds[-3:-1]] == [["k", "p"], ["k", "p"]]
    assert any("plain round that begins the yarn" in told.text for told in plan.warnings)


def test_a_rib_is_not_guessed_over_a_plain_round_of_the_same_yarn() -> None:
    """There the plain round may end the rib."""
    assert "no rib stands under these stitches" in faults(project(f"{RING}Knit 1 rnd. Work 2 rnds in rib.\nBind off."))
