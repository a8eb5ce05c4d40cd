"""What is flat and what is a round where only the next row tells."""

from __future__ import annotations

import pytest

from stepper.plan.drafts import DraftRound
from stepper.plan.lines.flat_or_round import closes, settle_flat
from stepper.plan.model import Plan
from tests.plan.test_compile import plan_of
from tests.plans import phrase
from tests.project.samples import project

FLAP = """
Cast on 64 sts.
Join in the round.
Next rnd: K32, hold 32 sts for instep. 32 sts.
Work flat.
Row 1 (WS): Sl 1, p to end.
Row 2 (RS): Sl 1, k to end.
Next row: Sl 1, p to end.
{close}: K32, pick up and knit 16 sts, k across instep sts, pick up and knit 16 sts. 96 sts.
"""


def told(plan: Plan) -> list[tuple[bool, str]]:
    """Return whether each round is flat, with its side."""
    return [(round_.flat, round_.side) for round_ in plan.rounds]


@pytest.mark.parametrize(
    "close", [FLAP.format(close="Next row") + "Join in the round.\nKnit 2 rounds.", FLAP.format(close="Next rnd") + "Knit 2 rounds."]
)
def test_the_round_that_closes_a_heel_flap_is_a_round(close: str) -> None:
    """She works around from there; said with "join", or by a line that calls itself a round."""
    plan = plan_of(project(close))
    assert told(plan)[2:] == [(True, "WS"), (True, "RS"), (True, "WS"), (False, "RS"), (False, "RS"), (False, "RS")]
    assert [each.instruction for each in plan.rounds[-2:]] == ["knit", "knit"]


def test_a_round_taken_as_the_join_is_told() -> None:
    """Nobody wrote "join"; a row of knit stitches on the wrong side would have been garter stitch all along the foot."""
    plan = plan_of(project(FLAP.format(close="Next rnd") + "Rnd 1: Knit.\nRnd 2: Knit."))
    assert told(plan)[-2:] == [(False, "RS")] * 2
    assert any("taken as joined in the round" in caution.text for caution in plan.warnings)


def test_a_row_that_takes_up_stitches_and_goes_on_in_rows_stays_flat() -> None:
    """Rows follow, so it was one."""
    plan = plan_of(project(FLAP.format(close="Next row") + "Next row: Purl.\nNext row: Knit."))
    assert [flat for flat, _ in told(plan)[-3:]] == [True, True, True]


def test_the_round_that_closes_short_rows_in_the_round_is_a_round() -> None:
    """From the turn on the right side to the end of the round, as behind a heel that lies in its middle."""
    work = "Cast on 60 sts.\nJoin in the round.\nKnit 1 round.\nK45, turn.\nP30, turn.\nK to end.\nKnit 1 round."
    assert told(plan_of(project(work)))[2:] == [(True, "RS"), (True, "WS"), (False, "RS"), (False, "RS")]


@pytest.mark.parametrize(
    ("behind", "flat"),
    [
        ("Row 1 (WS): Purl.\nRow 2: Knit.", True),
        ("Work in rows.\n*K2, p2; rep from * to end. Work for 2 cm.", True),
        ("Join in the round.\nKnit 2 rounds.", False),
    ],
)
def test_a_picked_up_band_begins_with_a_row_if_rows_follow(behind: str, flat: bool) -> None:
    """Picking up with the right side facing is its first row; a neckband in the round begins with a round."""
    plan = plan_of(project(f"Pick up and knit 40 sts along the edge.\n{behind}\nBind off."))
    assert told(plan)[0] == (flat, "RS")
    assert plan.rounds[1].flat is flat


def draft(text: str, *, before: int, after: int, flat: bool) -> DraftRound:
    """Make a worked round."""
    return DraftRound(
        section="band", before=before, after=after, phrase=phrase(text), line=1, size=0, flat=flat, side="RS",
        needle_mm=None, fabric=None, held={}, markers=(),
    )  # fmt: skip


def test_only_neighbours_on_the_same_stitches_tell() -> None:
    """What a piece begins with is its first row if rows follow on the same stitches; what follows on others says nothing."""
    following = draft("p40", before=40, after=40, flat=True)
    for text, after, is_row in (("pu40", 40, True), ("co40", 40, True), ("return40:front", 40, True), ("pu38", 38, False)):
        first = draft(text, before=0, after=after, flat=False)
        settle_flat([first, following])
        assert first.flat is is_row


def test_short_rows_at_the_beginning_do_not_tell() -> None:
    """They are turned in the round as well: only the first round worked whole says how the piece goes on."""
    for whole_is_flat in (False, True):
        first, *short = (
            draft("co12", before=0, after=12, flat=False),
            draft("k6 turn", before=12, after=12, flat=True),
            draft("p6 turn", before=12, after=12, flat=True),
        )
        settle_flat([first, *short, draft("k12", before=12, after=12, flat=whole_is_flat)])
        assert first.flat is whole_is_flat
    assert not closes(draft("k10 pu5 turn", before=10, after=15, flat=True))


def test_a_row_that_takes_stitches_back_and_works_on_closes_a_heel() -> None:
    """One that is turned, or works nothing, does not."""
    assert closes(draft("k10 pu5 return20:instep", before=10, after=35, flat=True))
    assert not closes(draft("k10 pu5 turn", before=10, after=15, flat=True))
    assert not closes(draft("return20:instep", before=0, after=20, flat=True))
