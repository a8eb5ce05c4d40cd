"""What every round takes, against Munden's chain, the arithmetic of floats, and plain counting."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import HealthCheck, given, settings

from stepper.plan.model import Plan, Run
from stepper.plan.yarn.yarn_use import Amount, carried_stitches, is_ribbing, total, yarn_use
from tests.plan.test_compile import SWITCHBACK, plan_of
from tests.project.samples import HEAD, legal_works, project


def knitted(
    work: str, *, gauge: str = "stitches: 20, rounds: 28", rows: str = "a..a", more: str = ""
) -> Plan:
    """Compile some lines at a gauge, with a chart of one round."""
    head = HEAD.replace("stitches: 20, rounds: 28, blocked: {{stitches: 20, rounds: 27}}", gauge)
    head = head.replace("      a..a\n      .aa.\n", f"      {rows}\n")
    text = project(work, head=head).replace("  - name: body\n", f"  - name: body\n    gauge: plain\n{more}")
    return plan_of(text)


def of_yarn(plan: Plan, yarn: str = "MC") -> Amount:
    """Add up what a plan takes of a yarn."""
    return total(use[yarn] for use in yarn_use(plan) if yarn in use)


@pytest.mark.parametrize(
    ("stitches", "rounds", "dry"),
    [(22, 30, 1119.8), (18, 24, 906.0), (28, 36, 1383.9), (20, 28, 1031.5)],
)
def test_a_square_metre_of_plain_fabric(stitches: int, rounds: int, dry: float) -> None:
    """Between Munden's dry and wet chains (computed), where the mill rule for plain fabric lies (Ks 20.44), to 1 %."""
    plan = knitted(
        f"Cast on {10 * stitches} sts.\nKnit {10 * rounds} rounds.",
        gauge=f"stitches: {stitches}, rounds: {rounds}",
    )
    metres = of_yarn(plan).parts["stitches"] / 1000
    assert metres == pytest.approx(dry * (20.44 / 19.0) ** 0.5, rel=0.01)
    assert dry < metres < dry * (21.73 / 19.0) ** 0.5


def test_every_second_stitch_floated_takes_a_quarter_more() -> None:
    """1/Kw of the yarn knitted is 26.3 % dry, 24.4 % wet (check-values 2.6.2), where width and height agree."""
    plan = knitted("Cast on 40 sts.\nChart peak.", gauge="stitches: 20, rounds: 26.316", rows="a.a.")
    amounts = total([of_yarn(plan, "MC"), of_yarn(plan, "A")])
    worked = amounts.parts["stitches"]
    straight = amounts.parts["floats"] - amounts.down["floats"]
    assert 0.244 < straight / worked < 0.263


def test_one_stitch_in_eight_is_two_thirds_float() -> None:
    """4 w knitted and 7 w floated are 64 % (check-values 2.6.3); l is 3.8 w dry and 4.1 w wet."""
    plan = knitted("Cast on 40 sts.\nChart peak.", gauge="stitches: 20, rounds: 26.316", rows="a.......")
    amount = of_yarn(plan, "A")
    straight = amount.parts["floats"] - amount.down["floats"]
    assert straight / (straight + amount.parts["stitches"]) == pytest.approx(0.64, abs=0.005)


def test_a_yarn_is_carried_all_round_but_in_a_row_only_between_its_stitches() -> None:
    """A float goes on around the join (check-values 5.8); a row has ends."""
    runs = (Run("k", 2, "MC"), Run("k", 3, "A"), Run("k", 5, "MC"))
    assert carried_stitches(runs, flat=False) == {"MC": 3, "A": 7}
    assert carried_stitches(runs, flat=True) == {"MC": 3, "A": 0}


def test_ribbing_widens_the_range_upwards_alone() -> None:
    """At most the mill's ratio of 1.167; the likely figure stays the gauge's own."""
    plain, rib = (
        knitted(f"Cast on 40 sts.\n{line}")
        for line in ("Knit 10 rounds.", "Work in k2, p2 rib for 10 rounds.")
    )
    assert of_yarn(rib).likely_mm == pytest.approx(of_yarn(plain).likely_mm)
    assert of_yarn(rib).up["ribbing"] == pytest.approx(of_yarn(rib).parts["stitches"] * 0.1668, rel=0.001)
    assert "ribbing" not in of_yarn(plain).up


@pytest.mark.parametrize(
    ("runs", "expected"),
    [
        ((("k", 2), ("p", 2)) * 10, True),
        ((("k", 1), ("p", 1)) * 10, True),
        ((("k", 40),), False),
        ((("k", 3), ("p", 30), ("k", 3)), False),
        ((("k", 20), ("p", 20)), False),
        ((("k2tog", 20),), False),
    ],
)
def test_what_is_ribbing(runs: tuple[tuple[str, int], ...], expected: bool) -> None:
    """Knit and purl side by side all along; a garter edge or two halves are none."""
    assert is_ribbing(tuple(Run(code, times, "MC") for code, times in runs)) is expected


def test_a_thinner_needle_makes_shorter_loops() -> None:
    """In proportion to its thickness, where the gauge was on another needle."""
    plain = knitted("Cast on 40 sts.\nKnit 10 rounds.")
    thin = knitted("Cast on 40 sts.\nChange to 3 mm needles.\nKnit 10 rounds.")
    assert of_yarn(thin).parts["stitches"] == pytest.approx(of_yarn(plain).parts["stitches"] * 3 / 4)


def test_edges_by_how_they_are_worked() -> None:
    """Long tail: a loop and three widths a stitch; a yarn over before each stitch bound off: two loops."""
    plan = knitted("Cast on 40 sts.\nKnit 1 round.")
    loop, width = of_yarn(plan).parts["stitches"] / 40, 5.0
    plan = knitted("Cast on 40 sts.\nKnit 1 round.\nBind off stretchily.")
    assert of_yarn(plan).parts["edges"] == pytest.approx(40 * (loop + 3 * width) + 40 * 2 * loop)
    bare = project("Cast on 40 sts.\nKnit 1 round.")
    loop = of_yarn(plan_of(bare)).parts["stitches"] / 40
    sewn = plan_of(
        "alterations: [sewn bind-off in body]\n" + project("Cast on 40 sts.\nKnit 1 round.\nBind off.")
    )
    assert sewn.rounds[-1].instruction == "bind off by the sewn method"
    assert of_yarn(sewn).parts["edges"] == pytest.approx(40 * (loop + 3 * width) + 40 * 3 * width)


def test_yarn_overs_cables_and_bobbles_widen_the_range() -> None:
    """A yarn over may take half a loop; a crossing reaches over; a bobble is a dozen loops or so."""
    lace = knitted("Cast on 40 sts.\n*K2tog, yo; rep from * to end.")
    assert of_yarn(lace).down["kinds"] == pytest.approx(20 * 0.5 * of_yarn(lace).parts["stitches"] / 40)
    cable = knitted("Cast on 40 sts.\n*2/2 RC, p4; rep from * to end.")
    assert of_yarn(cable).up["kinds"] > 0
    bobble = knitted("Cast on 40 sts.\n*K3, mb; rep from * to end.")
    assert of_yarn(bobble).parts["stitches"] == pytest.approx(
        of_yarn(lace).parts["stitches"] * (30 + 120) / 40
    )


def test_slipped_stitches_draw_no_loop() -> None:
    """The yarn lies straight behind them, over their width."""
    plan = knitted("Cast on 40 sts.\n*K1, sl1; rep from * to end.")
    amount = of_yarn(plan)
    assert amount.parts["floats"] == pytest.approx(20 * 5.0)


def test_a_plan_without_a_gauge_gives_no_amounts() -> None:
    """Nothing is made up."""
    plan = knitted("Cast on 40 sts.\nKnit 1 round.")
    bare = replace(plan, materials=replace(plan.materials, loops={}))
    assert set(map(len, yarn_use(bare))) == {0}


def test_each_spell_of_a_yarn_has_two_ends() -> None:
    """A contrast used once is joined and woven in once; a hand's length at either side (common practice)."""
    plan = knitted(
        "Cast on 40 sts.\nKnit 3 rounds.\nChart peak.\nKnit 20 rounds.\nChart peak.\nKnit 1 round."
    )
    assert of_yarn(plan, "A").parts["ends"] == pytest.approx(4 * 150)
    assert of_yarn(plan, "MC").parts["ends"] == pytest.approx(2 * 150)


@settings(max_examples=25, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(legal_works())
def test_every_stitch_of_any_garment_is_in_the_amount(work: str) -> None:
    """Low, likely and high stand in order, and no worked stitch goes without yarn."""
    plan = plan_of(project(work))
    for round_, use in zip(plan.rounds, yarn_use(plan), strict=True):
        for amount in use.values():
            assert 0 < amount.low_mm <= amount.likely_mm <= amount.high_mm
        worked = {run.yarn for run in round_.runs if run.leaves}
        assert worked <= set(use)


def test_the_whole_sample_stays_within_what_such_pullovers_take() -> None:
    """A cropped pullover for a chest of 75 cm at 22 stitches takes some 500 to 900 m (common practice)."""
    plan = plan_of(SWITCHBACK.read_text(encoding="utf-8"))
    assert 500 < of_yarn(plan).likely_mm / 1000 < 900
    assert of_yarn(plan, "A").likely_mm < of_yarn(plan).likely_mm / 10
