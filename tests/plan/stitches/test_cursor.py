"""Inside a round: markers, repeats between them, stitches that come and go."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import compiled, faults, plan_of
from tests.project.samples import project


def rows(work: str, head: str = "Cast on 40 sts.\nJoin in the round.") -> list[str]:
    """Work some lines and give the rounds after the cast-on, without the bind-off."""
    return [round_.instruction for round_ in plan_of(project(f"{head}\n{work}\nBind off.")).rounds[1:-1]]


@pytest.mark.parametrize(
    "words",
    ["rep from * 3 times more, k to end", "rep from * at each marker, k to end"],
)
def test_a_raglan_round_shapes_at_every_marker(words: str) -> None:
    """Four markers, eight increases (check-values 4.2.2), however the repeat is printed."""
    plan = plan_of(
        project(
            "Cast on 50 sts.\nWork flat.\nRow 1 (RS): K10, pm, k8, pm, k14, pm, k8, pm, k10.\nRow 2: Purl.\n"
            f"Row 3 (RS): *K to 1 st before marker, m1r, k1, sm, k1, m1l; {words}. 58 sts.\nBind off."
        )
    )
    assert plan.rounds[3].shaping == (9, 11, 17, 19, 31, 33, 39, 41)


def test_the_end_of_the_round_is_a_marker() -> None:
    """`*k to 2 sts before marker, k2tog, sm; rep from * to end` closes with the beginning of the round."""
    said = rows("Place marker every 10 sts.\nRnd 1: *K to 2 sts before marker, k2tog, sm; rep from * to end. 36 sts.")
    assert said == ["*k8, k2tog, sm; rep from * to end"]


def test_repeats_run_between_markers() -> None:
    """A rib between two markers, plain stitches outside."""
    said = rows("Rnd 1: K6, pm, k28, pm, k6.\nRnd 2: K to marker, sm, *k2, p2; rep from * between markers, sm, k to end.")
    assert said[1] == "k6, sm, (k2, p2) 7 times, sm, k6"


def test_a_marker_that_is_not_there_is_told_with_the_distance_to_the_next() -> None:
    """Slipping a marker too soon is a miscount, and the error says by how many."""
    assert "the next is 1 stitches on" in faults(
        project("Cast on 40 sts.\nJoin in the round.\nRnd 1: K6, pm, k34.\nRnd 2: K5, sm, k to end.\nBind off.")
    )


def test_as_it_looks_knits_the_knit_stitches_from_either_side() -> None:
    """`work in pattern` and `rib 6` go on with the fabric below. Source: common practice."""
    said = rows(
        "Row 1 (RS): K3, *p2, k2; rep from * to last 5 sts, p2, k3.\nRow 2: Work in pattern to end.\n"
        "Row 3: Rib 5, yo, k2tog, work in pattern to last 3 sts, k3.",
        "Cast on 40 sts.\nWork flat.",
    )
    assert said[1] == "p3, k2, (p2, k2) 8 times, p3"
    assert said[2] == "k3, p2, yo, k2tog, p2, (k2, p2) 7 times, k3"


def test_held_stitches_are_worked_across_in_the_middle_of_a_round() -> None:
    """A yoke is joined: body, sleeve, body, sleeve."""
    plan = plan_of(
        project(
            "Cast on 12 sts.\nHold 12 sts for left sleeve.\nCast on 12 sts.\nHold 12 sts for right sleeve.\n"
            "Cast on 40 sts.\nJoin in the round.\nJoin yoke: K20, k across left sleeve sts, k20, k across right sleeve sts. 64 sts.\n"
            "Bind off."
        )
    )
    joined = plan.rounds[-2]
    assert joined.instruction == "k20, work across 12 of left sleeve, k20, work across 12 of right sleeve"
    assert joined.held == {}


def test_stitches_are_bound_off_and_cast_on_within_a_row() -> None:
    """A buttonhole: three bound off in one row, three cast on in the next."""
    said = rows("Row 1 (RS): K10, bind off 3 sts, k to end. 37 sts.\nRow 2: P27, cast on 3 sts, p to end. 40 sts.", "Cast on 40 sts.\nWork flat.")
    assert said == ["k10, bind off 3, k27", "p27, cast on 3, p10"]


def test_all_stitches_left_go_on_hold_and_come_back() -> None:
    """A split hem: the front waits while the back is ribbed, then both are joined (check-values 6.16, 6.17)."""
    plan = plan_of(
        project(
            "Cast on 42 sts. Work flat.\nK2, p2 rib for 3 cm.\nBreak yarn and place all sts on hold for front.\n"
            "Cast on 46 sts.\nK2, p2 rib for 5 cm, ending with a WS row.\n"
            "Joining rnd (RS): K across back, k across front sts. 88 sts.\nJoin in the round.\nKnit 2 rnds.\nBind off.".replace(
                "K2, p2 rib for", "Work in k2, p2 rib for"
            )
        )
    )
    hold = next(round_ for round_ in plan.rounds if round_.held)
    assert (hold.after, hold.held) == (0, {"front": 42})
    joining = next(round_ for round_ in plan.rounds if round_.label == "Joining rnd")
    assert (joining.before, joining.after, joining.held) == (46, 88, {})
    assert [round_.flat for round_ in plan.rounds[joining.index + 1 :]] == [False, False, False]


def test_held_stitches_are_found_without_a_name_and_checked_by_number() -> None:
    """"K across 16 held sts" means the only ones on hold, and the printed number has to be theirs."""
    work = "Cast on 40 sts. Work flat.\nK12, place next 16 sts on a stitch holder, k12.\nP24. 24 sts.\nK24, k across {} held sts.\nBind off."
    assert plan_of(project(work.format(16))).rounds[-2].after == 40
    bad = compiled(project(work.format(18)))
    assert "prints 18 held stitches; 16 are on hold" in bad.problems[0].message


def test_markers_are_removed_all_at_once() -> None:
    """After "remove all markers" no line can work to one."""
    plan = plan_of(
        project("Cast on 40 sts. Join in the round.\nPlace marker every 10 sts.\nK to end, removing markers.\nKnit 1 rnd.\nBind off.")
    )
    kept = plan_of(project("Cast on 40 sts. Join in the round.\nPlace marker every 10 sts.\nKnit 1 rnd.\nRemove all markers.\nKnit 1 rnd.\nBind off."))
    assert [round_.markers for round_ in kept.rounds[1:3]] == [(10, 20, 30), ()]
    assert [round_.markers for round_ in plan.rounds[1:4]] == [(), (), ()]


@pytest.mark.parametrize("words", ["K8, k2tog around", "K8, k2tog across", "K8, k2tog to end", "K8, k2tog to end of rnd"])
def test_two_readings_of_a_round_to_the_end_are_told_and_the_count_chooses(words: str) -> None:
    """k8 and twelve k2tog's in a row, or (k8, k2tog) all the way: 14 or 18 of 20. Source: worked by hand."""
    head = "Cast on 20 sts. Join in the round.\n"
    for count, after in (("", 18), (" 18 sts.", 18), (" 14 sts.", 14)):
        plan = plan_of(project(f"{head}{words}.{count}\nBind off.", sizes="S", size="S"))
        assert plan.rounds[1].after == after
        (told,) = [caution.text for caution in plan.warnings]
        assert "18 stitches" in told
        assert "14 stitches" in told
    assert "prints 16" in faults(project(f"{head}{words}. 16 sts.\nBind off.", sizes="S", size="S"))


def test_one_reading_is_not_told() -> None:
    """Plain stitches to the end, or stitches behind a marker, mean one thing."""
    head = "Cast on 20 sts. Join in the round.\nK10, pm, k to end.\n"
    for line in ("K8, k to end.", "K to marker, sm, k2tog to end.", "(K8, k2tog) to end."):
        assert plan_of(project(f"{head}{line}\nBind off.", sizes="S", size="S")).warnings == ()


def test_standing_at_a_marker_to_marker_means_the_next_one() -> None:
    """Markers at 10, 20 and 30 of 40: the second pass begins at the second marker and works to the third."""
    head = "Cast on 40 sts. Join in the round.\nK10, pm, k10, pm, k10, pm, k to end.\n"
    line = "[K to marker, k2tog, k to 2 sts before next marker, ssk] twice. 36 sts."
    plan = plan_of(project(f"{head}{line}\nBind off.", sizes="S", size="S"))
    assert plan.rounds[2].shaping == (10, 18, 30, 38)
    assert rows("K10, pm, k20, pm, k to end.\nK to marker, k to marker, k2tog, k to end.")[1] == "k10, k20, k2tog, k8"


def test_a_stretch_of_no_stitches_before_a_marker_stays_one() -> None:
    """"K1, kfb, k to marker, sm" where only two stitches lie before the marker: it is not the next one."""
    assert rows("K2, pm, k20, pm, k to end.\nK1, kfb, k to marker, sm, k to end.")[1] == "k1, kfb, sm, k38"


def test_the_first_marker_is_not_one_that_comes_later() -> None:
    """A marker that is behind cannot be worked to."""
    head = "Cast on 40 sts. Join in the round.\nK10, pm, k20, pm, k to end.\n"
    assert "first marker" in faults(project(f"{head}K20, k to first marker, k to end.\nBind off.", sizes="S", size="S"))


def test_stitches_in_hand_are_purled_across_where_the_line_purls() -> None:
    """"Purl across back" is no knitted row."""
    assert rows("Purl across back.") == ["purl"]
    assert rows("K across back.") == ["knit"]


FLAT = "Cast on 40 sts.\nWork flat."


@pytest.mark.parametrize("words", ["K15, turn, hold 25 for front.", "K15, turn, leave rem 25 sts on a holder."])
def test_a_turn_before_stitches_go_on_hold_ends_the_row(words: str) -> None:
    """The next row works the 15 that are left; it worked none of them and said nothing."""
    plan = plan_of(project(f"{FLAT}\nKnit 2 rows.\n{words}\nPurl 1 row."))
    assert [(round_.side, round_.instruction, round_.after) for round_ in plan.rounds[-1:]] == [("WS", "purl", 15)]
    assert sum(plan.rounds[-1].held.values()) == 25


def test_a_turn_before_stitches_go_on_hold_opens_the_round() -> None:
    """Turned, the round is rows from here on, and she is told."""
    plan = plan_of(project("Cast on 40 sts.\nJoin in the round.\nKnit 2 rounds.\nK15, turn, hold 25 for front.\nPurl 1 row.\nKnit 1 row."))
    assert [(round_.flat, round_.side) for round_ in plan.rounds[-3:]] == [(True, "RS"), (True, "WS"), (True, "RS")]
    assert "work in rows" in plan.rounds[-3].remarks


def test_stitches_left_behind_a_turn_go_on_hold_all_or_not() -> None:
    """24 of 25 leaves one stitch that nobody works again."""
    assert "25 are left" in faults(project(f"{FLAT}\nK15, turn, hold 24 for front.\nPurl 1 row.\nBind off."))


def test_a_gusset_marker_among_others_is_refused() -> None:
    """Markers have no names: with three on the needles the next one may be that of the side."""
    lines = "Cast on 40 sts.\nJoin in the round.\nK20, pm, k1, pm, k1, pm, k to end.\nK to gusset m, sm, m1, k to end.\nBind off."
    assert "which is the gusset marker" in faults(project(lines))
    two = lines.replace("K20, pm, k1, pm, k1, pm", "K20, pm, k1, pm")
    assert plan_of(project(two)).rounds[2].after == 41


def test_where_a_chart_does_not_fit_the_counts_beside_are_told() -> None:
    """One repeat fewer or one more: one of the two is what the page means."""
    told = faults(project("Cast on 14 sts.\nJoin in the round.\nK1, chart peak to last 2 sts, k2.\nBind off."))
    assert 'chart "peak" repeats 4 stitches and does not fit the 11 it has here' in told
    assert "It would fit on 8 or 12." in told


def test_a_chart_may_stand_between_plain_stitches() -> None:
    """Its repeats fill what is left of the round; one that is nowhere drawn is told."""
    assert rows("K14, work chart peak over 12 sts, k14.") == ["k14 MC, (k1 MC, k2 A, k1 MC) 3 times, k14 MC"]
    assert "chart" in faults(project("Cast on 14 sts.\nJoin in the round.\nK1, work chart fern over 12 sts, k1.\nBind off."))


JOINED = (
    "Cast on 20 sts.\nJoin in the round.\nPlace all sts on hold for sleeve.\nCast on 60 sts.\nPlace all sts on hold for body.\n"
)


def test_a_part_on_hold_is_worked_in_pieces_where_the_line_names_the_others() -> None:
    """Front and back of one body, with the sleeves between: both come from the only part that is not named."""
    plan = plan_of(project(f"{JOINED}K30 front sts, k20 sts from sleeve holder, k30 back sts. 80 sts.\nBind off."))
    assert plan.rounds[-2].after == 80
    assert plan.rounds[-2].held == {}


def test_front_and_back_are_taken_from_the_body_by_the_stitches_of_each() -> None:
    """A bottom-up yoke joins "30 sts of the front"; a name that is no part of a body is not taken from it."""
    joining = "Knit across 20 sts of the sleeve, 30 sts of the front and {}. 80 sts.\nBind off."
    plan = plan_of(project(JOINED + joining.format("30 sts of the back")))
    assert plan.rounds[-2].after == 80
    assert plan.rounds[-2].held == {}
    assert "nothing is on hold" in faults(project(JOINED + joining.format("30 sts of the right sleeve")))
    assert "left on hold for body" in faults(project(JOINED + joining.format("32 sts of the back")))


def test_what_is_left_of_such_a_part_is_told() -> None:
    """Stitches left on hold by a slip in the numbers would be missed rows later."""
    assert "are not worked" in faults(project(f"{JOINED}K30 front sts, k20 sts from sleeve holder, k20 back sts.\nBind off."))


def test_a_round_that_places_markers_slips_them_when_it_is_worked_again() -> None:
    """A marker in every round at the same place is thirty markers in one place after ten centimetres."""
    garment = plan_of(project("Cast on 20 sts.\nJoin in the round.\nRnd 1: K5, pm, k10, pm, k5.\nWork 3 rounds even.\nRep last round once.\nBind off."))
    marks = [[run.stitch for run in round_.runs if run.stitch in ("pm", "sm")] for round_ in garment.rounds[1:-1]]
    assert marks == [["pm", "pm"], *[["sm", "sm"]] * 4]
    assert [round_.markers for round_ in garment.rounds[1:-1]] == [(5, 15)] * 5


def test_the_first_of_a_pair_is_the_one_on_hold_and_not_what_is_on_the_needle() -> None:
    """The body was knitted on in the name of its first sleeve, since the section has that name too."""
    held = "Cast on 40 sts.\nJoin in the round.\nKnit 1 round.\nK10, hold 5 for sleeve, k10, hold 5 for sleeve, k10.\n"
    lines = [f"      {line}" for line in f"{held}Bind off.".splitlines()]
    text = "\n".join(
        [
            project("", sizes="one", size="one").rstrip("\n"),
            *lines,
            "  - name: first sleeve\n    work: |",
            "      K across first sleeve sts.\n      Knit 2 rounds.\n      Bind off.",
            "  - name: second sleeve\n    work: |",
            "      K across second sleeve sts.\n      Knit 2 rounds.\n      Bind off.\n",
        ]
    )
    assert [round_.after for round_ in plan_of(text).rounds if round_.number == 2 and round_.section != "body"] == [5, 5]
