"""From file to plan: the scenario to the stitch, every legal file sound, every fault told."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings

from stepper.plan.compile import Compiled, compile_plan, faults_of
from stepper.plan.model import Plan, Round
from stepper.project.problems import render_problems
from stepper.project.reader import read_project
from tests.invariants import broken_invariants
from tests.project.samples import legal_works, project
from tests.tables import each_row

SWITCHBACK = Path(__file__).parents[1] / "fixtures" / "switchback.yaml"


@lru_cache(maxsize=64)
def compiled(text: str) -> Compiled:
    """Read and compile a text that has no problem of its own, once for all who ask: plans are frozen."""
    reading = read_project(text)
    assert reading.problems == ()
    assert reading.project is not None
    return compile_plan(reading.project)


def plan_of(text: str) -> Plan:
    """Compile a text that must come out."""
    outcome = compiled(text)
    assert outcome.problems == ()
    assert outcome.plan is not None
    return outcome.plan


def faults(text: str) -> str:
    """Compile a text that must not come out; give what is printed."""
    outcome = compiled(text)
    assert outcome.plan is None
    return render_problems(outcome.problems, text, "a.yaml")


@pytest.fixture(scope="module")
def switchback() -> Plan:
    """Compile the sample once."""
    return plan_of(SWITCHBACK.read_text(encoding="utf-8"))


def labelled(plan: Plan, label: str) -> Round:
    """Find the round that bears a label."""
    return next(round_ for round_ in plan.rounds if round_.label == label)


def test_the_final_increase_is_blended(switchback: Plan) -> None:
    """Size 4 comes with 225 stitches, size 2 goes on with 246; it is round 30 of 37 of the yoke."""
    round_ = labelled(switchback, "Final increase")
    assert (round_.before, round_.after, round_.size) == (225, 246, "2")
    assert (round_.number, round_.of) == (30, 37)
    assert round_.shaping[:2] == (11, 22)  # (k11, m1) 15 times, (k10, m1) 6 times
    assert round_.shaping[-1] == 225


def test_the_body_starts_on_164_and_the_sleeves_on_50(switchback: Plan) -> None:
    """The divide of size 2: 36 + 9 + 73 + 9 + 37, and 50 on hold twice."""
    divide = labelled(switchback, "Divide")
    assert divide.after == 164
    assert divide.held == {"left sleeve": 50, "right sleeve": 50}
    assert next(r for r in switchback.rounds if r.section == "body").before == 164


def test_the_sample_is_sound_and_whole(switchback: Plan) -> None:
    """Every invariant holds, and it ends with nothing on the needles or on hold."""
    assert broken_invariants(switchback) == ()
    assert switchback.rounds[-1].after == 0
    assert switchback.rounds[-1].held == {}
    assert switchback.sections == ("neckband", "yoke", "body", "left sleeve", "right sleeve")


def test_a_length_becomes_rounds_by_the_gauge_of_its_section(switchback: Plan) -> None:
    """Source: arithmetic; 32 cm at 30 rounds over 10 cm are 96 rounds, 3 cm at 32 are 9.6, so 10."""
    body = [r for r in switchback.rounds if r.section == "body" and r.instruction == "knit"]
    assert len(body) == 96
    rib = [r for r in switchback.rounds if r.section == "neckband" and r.instruction.startswith("*k2")]
    assert len(rib) == 10
    stretch = switchback.stretch_at(body[0].index)
    assert stretch is not None
    assert (stretch.first, stretch.last, stretch.target_mm) == (body[0].index, body[-1].index, 320.0)


def test_charts_are_read_bottom_up_and_right_to_left_in_the_round(switchback: Plan) -> None:
    """Source: in the round every row is read right to left, the bottom one first (check-values 1.7.3)."""
    text = project("Cast on 4 sts.\nChart peak.\nBind off.").replace("a..a", "a...").replace(".aa.", "..aa")
    rounds = [r for r in plan_of(text).rounds if r.chart]
    assert [[(run.yarn, run.times) for run in r.runs] for r in rounds] == [
        [("A", 2), ("MC", 2)],
        [("MC", 3), ("A", 1)],
    ]
    trail = next(r for r in switchback.rounds if r.chart == "trail")
    assert trail.chart_round == 1
    assert [(run.yarn, run.times) for run in trail.runs[:3]] == [("MC", 4), ("A", 2), ("MC", 8)]


def test_floats_are_measured_around_the_join(switchback: Plan) -> None:
    """Source: a float can cross the beginning of the round (check-values 5.8, common practice).

    In the fifth round of trail, `aa......aa`, the colour floats over six stitches, and the ground over the
    four that meet at the join.
    """
    last = next(r for r in switchback.rounds if r.chart == "trail" and r.chart_round == 5)
    assert dict(last.floats) == {"A": 6, "MC": 4}


def test_a_count_is_asked_where_a_fault_would_be_locked_in(switchback: Plan) -> None:
    """Every shaped round, before and after a chart, at the divide, at the end of a section."""
    for round_ in switchback.rounds:
        if round_.shaping:
            assert round_.checkpoint is not None
        if round_.checkpoint is not None:
            assert round_.checkpoint.expect == round_.after
    reasons = {r.checkpoint.reason for r in switchback.rounds if r.checkpoint}
    assert {"after the increases", "after chart ridge", "before chart trail", "after the divide"} <= reasons
    assert {"before the bind-off", "end of the neckband"} <= reasons


@pytest.mark.parametrize("size", ["1", "2", "3", "4", "5", "6"])
@pytest.mark.parametrize("other", ["1", "2", "3", "4", "5", "6"])
def test_sizes_may_be_switched_in_either_direction_where_the_arithmetic_carries_it(size: str, other: str) -> None:
    """Any size to any other at the final increase: an increase as long as there is one to make."""
    text = SWITCHBACK.read_text(encoding="utf-8")
    text = text.replace("  size: 4\n", f"  size: {size}\n").replace("size: 2}", f"size: {other}}}")
    before = {"1": 180, "2": 195, "3": 210, "4": 225, "5": 240, "6": 255}[size]
    after = {"1": 228, "2": 246, "3": 270, "4": 288, "5": 312, "6": 330}[other]
    outcome = compiled(text)
    if after >= before:
        assert outcome.plan is not None
        assert broken_invariants(outcome.plan) == ()
        assert labelled(outcome.plan, "Final increase").after == after
    else:
        shown = render_problems(outcome.problems, text, "a.yaml")
        assert f"asks to increase to {after} stitches, but {before}" in shown
        assert "must decrease" in shown


def test_several_switches_follow_each_other() -> None:
    """Size 1 at the neck, 3 from the second increase, 2 from the final one."""
    text = SWITCHBACK.read_text(encoding="utf-8").replace("  size: 4\n", "  size: 1\n")
    text = text.replace("  then:\n", "  then:\n    - {from: Second increase, size: 3}\n")
    plan = plan_of(text)
    assert [labelled(plan, label).after for label in ("First increase", "Second increase", "Final increase")] == [
        120,
        210,
        246,
    ]


def test_a_switch_at_a_line_without_a_count_of_its_own_says_what_would_work() -> None:
    """The body's lines cannot change the number of stitches on the needles."""
    text = SWITCHBACK.read_text(encoding="utf-8").replace("from: Final increase", "from: Divide")
    shown = faults(text)
    assert "after the switch" in shown
    assert "increase line" in shown


def test_a_printed_count_that_disagrees_names_size_line_counts_and_cause() -> None:
    """220 printed as 202 in the last size."""
    text = SWITCHBACK.read_text(encoding="utf-8").replace("152 (164, 180, 192, 208, 220)", "152 (164, 180, 192, 208, 202)")
    shown = faults(text)
    assert "size 6: the pattern prints 202 stitches; the lines so far come to 220, 18 more" in shown
    assert "digits seem to be exchanged" in shown
    assert shown.count("error:") == 1


def test_a_chart_that_does_not_divide_says_where_it_would_fit() -> None:
    """120 divides by ten; 124 does not."""
    text = SWITCHBACK.read_text(encoding="utf-8").replace("to 120 (130, 140, 150", "to 124 (130, 140, 150")
    shown = faults(text)
    assert 'chart "trail"' in shown
    assert "120 or 130" in shown


def test_shaping_at_intervals_counts_as_published() -> None:
    """Source: 136 rounds for 14 paired decreases are 10 × every 10th and 4 × every 9th (check-values 4.3.1)."""
    plan = plan_of(
        project(
            "Cast on 88 sts.\nDec round: K1, k2tog, k to last 3 sts, ssk, k1.\n"
            "Work dec round every 10th round 10 times, then every 9th round 4 times. 60 sts.\nBind off."
        )
    )
    assert len(plan.rounds) == 1 + 136 + 1
    shaped = [r.index for r in plan.rounds if r.shaping and r.after]
    assert [b - a for a, b in zip([0, *shaped], shaped, strict=False)] == [10] * 10 + [9] * 4


def test_yoke_decreases_come_out_as_published() -> None:
    """Source: the percentage yoke, 268 to 179 to 120 to 80 (check-values 4.1.9, published)."""
    plan = plan_of(
        project(
            "Cast on 268 sts.\nDecrease evenly to 179 sts.\nDecrease evenly to 120 sts.\nDecrease evenly to 80 sts.\nBind off."
        )
    )
    assert [r.after for r in plan.rounds] == [268, 179, 120, 80, 0]
    assert [len(r.shaping) for r in plan.rounds[1:4]] == [89, 59, 40]


def test_numbered_rounds_are_worked_in_order_and_again() -> None:
    """`Rnds 1 and 3`, `Rnd 2`, then the whole three more times."""
    plan = plan_of(project("Cast on 8 sts.\nRnds 1 and 3: Knit.\nRnd 2: Purl.\nRep rnds 1-3 3 times.\nBind off."))
    assert [r.instruction for r in plan.rounds[1:-1]] == ["knit", "purl", "knit"] * 4


def test_repeating_to_a_length_stops_at_the_nearest_round() -> None:
    """28 rounds over 10 cm: 5 cm are 14 rounds, the one already worked included."""
    plan = plan_of(project("Cast on 8 sts.\nKnit 1 round.\nRep last round until piece measures 5 cm.\nBind off."))
    assert len(plan.rounds) == 1 + 14 + 1


def test_work_for_a_length_counts_the_round_on_the_same_line_only() -> None:
    """`*K2, p2…. Work for 5 cm.` is 5 cm in all; the same words on the next line are 5 cm more."""
    same = plan_of(project("Cast on 8 sts.\n*K2, p2; rep from * to end. Work for 5 cm.\nBind off."))
    later = plan_of(project("Cast on 8 sts.\n*K2, p2; rep from * to end.\nWork for 5 cm.\nBind off."))
    assert len(same.rounds) == 1 + 14 + 1
    assert len(later.rounds) == 1 + 1 + 14 + 1


def test_a_length_after_blocking_uses_the_blocked_gauge() -> None:
    """28 rounds become 27 over 10 cm: 20 cm finished are 54 rounds, not 56."""
    needles = plan_of(project("Cast on 8 sts.\nKnit until piece measures 20 cm.\nBind off."))
    blocked = plan_of(project("Cast on 8 sts.\nKnit until piece measures 20 cm after blocking.\nBind off."))
    assert (len(needles.rounds), len(blocked.rounds)) == (58, 56)
    assert "after blocking" in needles.warnings[0].text


def test_what_a_length_becomes_is_told_of_the_size_and_the_change_she_knits() -> None:
    """28 rounds become 27 over 10 cm: her 24 cm become 24.9. What she is to write is the pattern's own words."""
    text = project("Cast on 8 sts.\nKnit until piece measures 20 (22, 24) cm.\nBind off.").replace("size: M", "size: L")
    lengths = ("24 cm on the needles become 24.9 cm", '"20 (22, 24) cm after blocking"')
    for shown in lengths:
        assert shown in plan_of(text).warnings[0].text
    longer = plan_of(text.replace("sections:", "alterations:\n  - body 2 cm longer\nsections:", 1)).warnings[0].text
    assert "26 cm on the needles become 27.0 cm" in longer
    assert '"20 (22, 24) cm after blocking"' in longer


@each_row(
    ("work", "words"),
    [
        ("Knit 2 rounds.", "no stitches on the needles"),
        ("Cast on 10 sts.\n*K2, p2; rep from * to end.", "does not divide"),
        ("Cast on 10 sts.\nWork for 3 cm.", "no pattern has been set up"),
        ("Cast on 10 sts.\nRep rnds 1-2 3 times.", "has not been written out"),
        ("Cast on 10 sts.\nWork dec round every 2nd round 3 times.", "has not been written out"),
        ("Cast on 10 sts.\nChart valley.", 'no chart "valley"'),
        ("Cast on 8 sts.\nChart peak, rounds 1-9.", "has 2 rounds"),
        ("Cast on 10 sts.\nWith B, knit 1 round.", 'no yarn "B"'),
        ("Cast on 10 sts.\nReturn thumb to needles.", 'on hold for "thumb"'),
        ("Cast on 10 sts.\nDecrease evenly to 3 sts.", "cannot decrease"),
        ("Cast on 10 sts.\nKnit for 5 cm.\nKnit until piece measures 3 cm.", "already measures"),
        ("Cast on 10 sts.\nPlace marker every 20 sts.", "does not go on 10"),
        ("Cast on 10 sts.\nKnit 5 rounds.\nRep last 5 rounds 9999 times.", "more than any garment"),
        ("Note: nothing to knit.", "no rounds"),
    ],
)
def test_what_the_arithmetic_cannot_carry_is_told(work: str, words: str) -> None:
    """A sentence with the numbers, never a traceback."""
    assert words in faults(project(work))


def test_one_fault_is_told_once_for_all_sizes() -> None:
    """Three sizes, one sentence."""
    shown = faults(project("Cast on 10 sts.\n*K2, p2; rep from * to end.\nKnit 2 rounds. 10 sts."))
    assert shown.count("error:") == 1
    assert "also size S or L" in shown


@given(legal_works())
@settings(max_examples=150, deadline=None, suppress_health_check=[HealthCheck.too_slow])
def test_every_legal_file_keeps_every_invariant(work: str) -> None:
    """The invariants of the contract, for generated garments."""
    plan = plan_of(project(work))
    assert broken_invariants(plan) == ()
    assert plan.rounds[-1].after == 0


AMBIGUOUS = "Cast on 20 sts. Join in the round.\n*K2, m1; rep from * 4 times, k to end.{count}\nBind off."


def test_of_two_readings_the_one_that_meets_the_printed_count_is_taken() -> None:
    """`rep from * 4 times` is four on top of the first, or four in all; both counts are told."""
    for count, after, other in ((" 25 sts.", 25, 24), (" 24 sts.", 24, 25)):
        plan = plan_of(project(AMBIGUOUS.format(count=count)))
        assert plan.rounds[1].after == after
        (caution,) = plan.warnings
        assert str(after) in caution.text
        assert str(other) in caution.text


def test_of_two_readings_that_both_fit_the_common_one_is_taken_and_told() -> None:
    """Without a printed count nothing decides, so the knitter must hear of it. Source: common practice."""
    plan = plan_of(project(AMBIGUOUS.format(count="")))
    assert plan.rounds[1].after == 25
    assert "both fit" in plan.warnings[0].text


def test_a_shaping_round_counts_itself_where_only_that_meets_the_count() -> None:
    """`work dec round … 2 times`: two in all, unless the printed count needs the one written out as well."""
    text = (
        "Cast on 20 sts.\nDec round: K1, k2tog, k to last 3 sts, ssk, k1.\n"
        "Work dec round every 3rd round 2 times. {} sts.\nBind off."
    )
    in_all = plan_of(project(text.format(16)))
    on_top = plan_of(project(text.format(14)))
    assert (in_all.warnings, in_all.rounds[-2].after) == ((), 16)
    assert (len(on_top.warnings), on_top.rounds[-2].after) == (1, 14)


@pytest.mark.parametrize(
    ("work", "told"),
    [
        # the count comes again with a printed one, an even change, a bind-off; until then nothing is told
        ("Cast on 80 sts.\nSing.\n*K3, p2; rep from * to end. 33 sts.\nK1, k2tog, k to end. 30 sts.", ["prints 30"]),
        ("Cast on 80 sts.\nSing.\nIncrease evenly to 90 sts.\nKnit 1 row. 91 sts.", ["prints 91"]),
        ("Cast on 80 sts.\nSing.\nK to marker, sm, k to end.\nReturn hood to needles.\nWork dec rnd 2 times.", []),
        ("Cast on 80 sts.\nSing.\nRep rnds 1-4 3 times.\nBind off.\nBind off.", ["to bind off"]),
        # one fault is told once, not again by the count behind it
        ("Cast on 81 sts.\n*K2, p2; rep from * to end. 80 sts.\nKnit 1 row. 80 sts.\nBind off.", ["81 it has"]),
        ("Cast on 80 sts.\nKnit 1 row. 78 sts.\nKnit 1 row. 78 sts.\nBind off.", ["prints 78"]),
        ("Cast on 80 sts.\nK10, hold 20 for hood, k to end. 62 sts.\n*K2; rep from * to end. 62 sts.\nBind off.", ["prints 62"]),
    ],
)
def test_what_follows_from_a_fault_is_not_told_again(work: str, told: list[str]) -> None:
    """A knitter with one slip in her file gets one error, and one with two gets two."""
    partial = read_project(project(work, sizes="one", size="one"))
    given_project = partial.partial or partial.project
    assert given_project is not None
    found = [problem.message for problem in faults_of(given_project)]
    assert len(found) == len(told)
    assert all(words in message for words, message in zip(told, found, strict=True))


def test_a_wrong_count_behind_work_in_pattern_is_told() -> None:
    """Looking for the number that would set it right ended in a traceback."""
    rib = "Cast on 22 sts.\nWork flat.\nRow 1 (RS): K2, *p2, k2; rep from * to end.\nRow 2: P2, *k2, p2; rep from * to end.\n"
    assert "prints 23" in faults(project(f"{rib}Next row (RS): Work 4 sts in patt, yo, k2tog, work in patt to end. 23 sts.\nBind off."))


def test_a_file_kept_for_one_size_is_worked_out_in_that_alone() -> None:
    """What does not come out in another is no problem then, and it is told that no other was checked."""
    text = project("Cast on 40 (44, 48) sts.\nKnit 1 round. 40 (44, 50) sts.\nBind off.", size="M")
    assert "size L" in faults(text)
    plan = plan_of(text.replace("size: M", "size: M, only: M"))
    assert [each.text for each in plan.warnings if "alone" in each.text] == [
        "size M alone is worked out; no other is checked or claimed."
    ]
    wrong = faults(project("Cast on 40 (44, 48) sts.\nKnit 1 round. 45 sts.", size="M").replace("size: M", "size: M, only: M"))
    assert "also size" not in wrong
    assert "the other sizes" not in wrong
