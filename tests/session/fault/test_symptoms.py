from __future__ import annotations

from itertools import chain

import pytest

from stepper.craft.stitches import stitch
from stepper.session.fault.symptoms import BY_MISTAKE, ODDS, Cause, Symptoms, list_symptoms, work_items
from tests.plan.test_compile import plan_of
from tests.plans import plan
from tests.project.samples import project

ROUNDS = plan(("yoke", ["co80", "(k8 m1)x10", "k90", "(k4 k2tog)x15", "(k3 yo k2tog)x15"]))


def told(index: int, cause: Cause) -> list[tuple[int, int, int, bool]]:
    """Return what is foretold of a cause: difference, changes, left over, loop."""
    found = [each for each in list_symptoms(ROUNDS, index) if each.cause is cause]
    return [(each.difference, each.changes, each.left, each.loop) for each in found]


def test_what_each_kind_leads_to() -> None:
    """Worked out by hand for eighty stitches with ten increases, and for ninety with fifteen decreases."""
    assert told(1, Cause.LEFT_OUT) == [(-1, -1, 0, False)]
    assert told(3, Cause.LEFT_OUT) == [(1, -1, 0, False)]
    # An increase too many, or two stitches worked together by mistake.
    assert told(1, Cause.ONE_TOO_MANY) == [(1, 1, 0, False), (-1, 1, 0, False)]
    assert told(1, Cause.DROPPED) == [(-1, 0, 0, True)]
    assert told(4, Cause.YARN_OVER) == [(-1, -1, 0, True)]
    assert told(1, Cause.REPEAT_LEFT_OUT) == [(-1, -1, 8, False)]
    # Eight stitches of the eleventh repeat are not there: it stops before its first increase.
    assert told(1, Cause.REPEAT_TWICE) == [(0, 0, -8, False)]
    # The plain round in the place of the ten increases.
    assert (-10, -10, -10, False) in told(1, Cause.OTHER_ROUND)


def test_where_a_fault_can_lie() -> None:
    """An increase left out lies at an increase, a dropped stitch anywhere, a repeat among the repeats."""
    of = {each.cause: each for each in list_symptoms(ROUNDS, 1)}
    assert of[Cause.LEFT_OUT].inside(0, 0.5) == pytest.approx(0.5)
    assert of[Cause.LEFT_OUT].inside(0, 8 / 90) == 0
    assert of[Cause.LEFT_OUT].inside(8 / 90, 9 / 90) == pytest.approx(0.1)
    assert of[Cause.DROPPED].inside(0, 8 / 90) == pytest.approx(0.1)
    assert of[Cause.LEFT_OUT].inside(81 / 90, 82 / 90, turned=True) == pytest.approx(0.1)
    for each in of.values():
        assert each.inside(0, 1) == pytest.approx(1)


def test_every_kind_has_its_odds() -> None:
    """A kind without odds could never be named."""
    assert set(ODDS) == set(Cause)
    assert all(each.odds > 0 for index in range(1, 5) for each in list_symptoms(ROUNDS, index))


def test_what_runs_out_is_left() -> None:
    """Over seventy stitches only eight of the ten repeats fit, and the stitches after them are plain."""
    assert work_items(ROUNDS.rounds[1].phrase, 70) == (8, 8)


def test_another_round_worked_in_its_place_is_foretold_from_each_that_lies_near() -> None:
    """By hand: ninety plain stitches over eighty gain none of the ten and are ten short; the round of decreases makes
    thirteen out of eighty, and is ten short too. Nobody casts on again in the place of a round."""
    assert told(1, Cause.OTHER_ROUND) == [(-10, -10, -10, False), (-23, 3, -10, False)]
    # The plain round: the increases before it fit ten times into ninety, and one repeat is short of nothing.
    assert (11, 11, 10, False) not in told(2, Cause.OTHER_ROUND)
    assert (10, 10, 10, False) in told(2, Cause.OTHER_ROUND)


def test_a_plain_round_is_never_another_plain_one_by_mistake() -> None:
    """Between increases each has more stitches than the last, and looks the same. In another yarn it does not."""
    yoke = plan(("yoke", ["co80", "k80", "(k8 m1)x10", "k90"]))
    assert Cause.OTHER_ROUND not in {each.cause for each in list_symptoms(yoke, 1) if each.other == 3}
    assert Cause.OTHER_ROUND in {each.cause for each in list_symptoms(yoke, 1) if each.other == 2}


def test_a_repeat_more_or_less_is_foretold_by_what_the_others_leave() -> None:
    """By hand: of fifteen repeats of six, fourteen leave six stitches that are worked plain, so that a decrease is missing;
    for a sixteenth nothing is left."""
    assert told(3, Cause.REPEAT_LEFT_OUT) == [(1, -1, 6, False)]
    assert told(3, Cause.REPEAT_TWICE) == [(0, 0, -6, False)]


def test_nothing_happens_by_mistake_where_it_is_done_on_purpose() -> None:
    """In a plain round a yarn over or two worked together are slips, and rarer than one increase too many."""
    plain = [each for each in list_symptoms(ROUNDS, 2) if each.cause is Cause.ONE_TOO_MANY]
    assert [(each.difference, each.code, each.changes, each.left, each.loop) for each in plain] == [
        (1, "yo", 1, 0, False), (-1, "k2tog", 1, 0, False),
    ]  # fmt: skip
    assert {each.odds for each in plain} == {ODDS[Cause.ONE_TOO_MANY] * BY_MISTAKE}
    decreases = [each for each in list_symptoms(ROUNDS, 3) if each.cause is Cause.ONE_TOO_MANY]
    assert [(each.difference, each.odds) for each in decreases] == [(-1, ODDS[Cause.ONE_TOO_MANY])]


@pytest.mark.parametrize(
    "line", ["(k4 kfb)x4", "k2 (m1 k6)x3", "(k3 ssk)x4", "k1 yo k9 k3tog k7", "(k2 kfbf k2)x4"]
)
def test_a_change_lies_where_its_last_stitch_lies(line: str) -> None:
    """Asked stitch by stitch around the needle: a share of the places just there, and nothing anywhere else. The stitches
    are laid out one by one."""
    round_ = plan(("yoke", ["co20", line])).rounds[1]
    laid = list(
        chain.from_iterable(
            [False] * (stitch(run.stitch).leaves - 1)
            + [stitch(run.stitch).kind.value in ("increase", "decrease")]
            for run in round_.runs
            for _ in range(run.times)
        )
    )
    assert len(laid) == round_.after
    found = [
        each for each in list_symptoms(plan(("yoke", ["co20", line])), 1) if each.cause is Cause.LEFT_OUT
    ]
    shares = [0.0] * round_.after
    for each in found:
        for at in range(round_.after):
            inside = each.inside(at / round_.after, (at + 1) / round_.after)
            shares[at] += inside * each.odds / ODDS[Cause.LEFT_OUT]
            assert each.inside(
                1 - (at + 1) / round_.after, 1 - at / round_.after, turned=True
            ) == pytest.approx(inside)
    assert shares == pytest.approx([made / sum(laid) for made in laid])


def test_a_place_between_two_stitches_lies_inside_a_stretch_and_at_no_edge() -> None:
    """Spans worked out by hand: two places at a point, one of them on the landmark, and four over half of the round. On
    the landmark it lies in neither stretch, as nothing there is counted to either."""
    told = Symptoms(
        Cause.LEFT_OUT, "m1", -1, -1, 0, False, 1.0, ((0.25, 0.25, 1.0), (0.5, 0.5, 1.0), (0.5, 1.0, 4.0))
    )
    assert told.inside(0.0, 0.5) == pytest.approx(1 / 6)
    assert told.inside(0.5, 1.0) == pytest.approx(4 / 6)
    assert told.inside(0.2, 0.6) == pytest.approx((2 + 0.8) / 6)
    assert told.inside(0.4, 0.8, turned=True) == pytest.approx((2 + 0.8) / 6), "0.2 to 0.6 from the other end"


def test_a_repeat_worked_once_may_be_left_out_and_stitches_made_in_a_row_are_none() -> None:
    """By hand: without the repeat of four the last four of eight are worked over it and four are left over, two changes
    fewer; yarn overs one after the other use no stitch that could be left over."""
    once = plan(("yoke", ["co12", "k4 (k2 yo k2tog)x1 k4"]))
    left_out = [each for each in list_symptoms(once, 1) if each.cause is Cause.REPEAT_LEFT_OUT]
    assert [(each.difference, each.changes, each.left) for each in left_out] == [(0, -2, 4)]
    made = plan(("yoke", ["co8", "k4 (yo)x3 k4"]))
    assert not {Cause.REPEAT_LEFT_OUT, Cause.REPEAT_TWICE} & {each.cause for each in list_symptoms(made, 1)}


def test_a_row_in_own_words_is_suspected_as_a_whole() -> None:
    """A stitch dropped or made there is as likely as in any row, and nobody can say where."""
    garment = plan_of(
        project(
            "Cast on 20 sts.\nJoin in the round.\nKnit 1 round.\nOwn words: twist. 24 sts.\nPurl 1 round."
        )
    )
    found = list(list_symptoms(garment, 2))
    assert {(each.cause, each.difference) for each in found} == {
        (Cause.DROPPED, -1), (Cause.ONE_TOO_MANY, 1), (Cause.ONE_TOO_MANY, -1),
    }  # fmt: skip
    assert all(each.spans == ((0.0, 1.0, 1.0),) for each in found)
    beside = [each for at in (1, 3) for each in list_symptoms(garment, at) if each.cause is Cause.OTHER_ROUND]
    assert all(each.other != 2 for each in beside)


def test_a_round_of_one_repeat_can_hide_it_anywhere() -> None:
    """Also where it leaves a single stitch, the toe of a sock before the yarn is drawn through."""
    toe = plan(("toe", ["co2", "(k2tog)x1"]))
    spans = [
        each.spans
        for each in list_symptoms(toe, 1)
        if each.cause in (Cause.REPEAT_LEFT_OUT, Cause.REPEAT_TWICE)
    ]
    assert spans
    assert all(each == ((0.0, 1.0, 1.0),) for each in spans)


def test_shaping_is_looked_at_first() -> None:
    """Common practice: a change left out is likelier than any other slip, and a yarn over that fell off next to it. How much
    likelier is an assumption of this project."""
    ranked = sorted(ODDS, key=lambda cause: -ODDS[cause])
    assert ranked[:2] == [Cause.LEFT_OUT, Cause.YARN_OVER]
    assert [ODDS[cause] for cause in ranked] == [8, 6, 3, 3, 3, 3, 2]
