"""Stitches taken back from hold, or taken up where they lie. Counts by hand; common practice."""

from __future__ import annotations

import pytest

from stepper.plan.model import Plan, flatten
from tests.plan.lines.again.test_another_part import knit, refused
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

DIVIDED = """Cast on 80 sts. Join in the round.
Knit 4 rounds.
Bind off 4, k36, bind off 4, k to end.
Break yarn.
Place the front 36 sts on a holder.
"""


def test_yarn_is_joined_to_what_lies_on_the_needle() -> None:
    """The back was never put on hold: nothing can come back from there."""
    plan = plan_of(
        project(
            f"{DIVIDED}With RS facing, rejoin yarn to back sts.\nRow 1 (RS): K2, ssk, k to last 4 sts, k2tog, k2.\nRow 2: Purl."
        )
    )
    decrease = plan.rounds[-2]
    assert (decrease.before, decrease.after, decrease.side, decrease.flat) == (36, 34, "RS", True)
    assert "join the yarn to the 36 stitches on the needle" in decrease.remarks


def test_another_number_than_lies_there_is_refused() -> None:
    """The page and the needle disagree; which is right only she can see."""
    assert "the pattern prints 38 stitches; 36 are on the needles" in faults(
        project(f"{DIVIDED}With RS facing, rejoin yarn to 38 back sts.\nRow 1: Knit.")
    )


def test_stitches_on_hold_come_back_by_the_same_words() -> None:
    """The front waits on its holder; the same sentence fetches it."""
    plan = plan_of(
        project(
            f"{DIVIDED}With RS facing, rejoin yarn to back sts.\nRow 1 (RS): Knit.\nRow 2: Purl.\nBind off.\n"
            "With RS facing, rejoin yarn to front sts.\nNext row (RS): Knit.\nBind off."
        )
    )
    back = next(round_ for round_ in plan.rounds if any(run.stitch == "return" for run in round_.runs))
    assert (back.before, back.after) == (0, 36)


def test_a_name_that_fits_both_is_refused() -> None:
    """The stitches of the back neck would be taken for the back."""
    told = faults(
        project(
            "Cast on 60 sts. Work flat.\nKnit 2 rows.\nK20, hold 20 for back neck, k to end.\n"
            "With RS facing, rejoin yarn to back sts.\nNext row (RS): Knit."
        )
    )
    assert "may be what is on the needle or what is on hold" in told


def test_two_parts_that_wait_without_a_name_one_after_the_other() -> None:
    """The fabric of the first is looked up at its own row, not at the row of the second, which comes later."""
    plan = plan_of(
        project(
            "Cast on 40 sts. Work flat.\nWork 4 rows in stockinette.\n"
            "Next row: K14, turn and leave rem sts on a spare needle.\nPurl 1 row.\nBind off.\n"
            "With RS facing, rejoin yarn to rem sts.\nNext row: Hold 12, k to end.\n"
            "Next row: Purl.\nWork straight for 2 rows.\nBind off."
        )
    )
    assert [round_.after for round_ in plan.rounds if any(run.stitch == "hold" for run in round_.runs)] == [
        14,
        14,
    ]


SLEEVES = """Cast on 60 sts. Join in the round.
K8, hold 14 for right sleeve, cast on 4, k16, hold 14 for left sleeve, cast on 4, k8.
Bind off.
"""


def test_sleeve_stitches_under_sleeves_are_those_held_first() -> None:
    """Both are alike; the second of the pair takes the other one, and none is taken twice."""
    rows = (
        "Return held sleeve sts to needles. Pick up and knit 2 sts, knit across sleeve sts, pick up and knit 2 sts.",
        "Knit 3 rounds.", "Bind off.", "Work second sleeve the same.",
    )  # fmt: skip
    text = project(SLEEVES) + "\n  - name: sleeves\n    work: |\n" + "".join(f"      {row}\n" for row in rows)
    plan = plan_of(text)
    back = [run.yarn for round_ in plan.rounds for run in round_.runs if run.stitch == "return"]
    assert back == ["right sleeve", "left sleeve"]
    assert plan.rounds[-1].held == {}
    assert [round_.after for round_ in plan.rounds if any(run.stitch == "pu" for run in round_.runs)] == [
        18,
        18,
    ]


def test_the_gusset_on_hold_is_the_thumb() -> None:
    """A page holds "the 17 gusset sts" and takes back "the 17 held thumb sts": the same stitches. Common practice."""
    hand = ("== hand", "CO 40 sts. Join in the round.", "Next rnd: K20, put the 17 gusset sts on hold, CO 3 sts, knit to end.", "Bind off.")
    plan = knit(*hand, "== thumb", "Place the 17 held thumb sts on the needles. Pick up and knit 3 sts. Join.", "Bind off.")
    assert max(round_.after for round_ in plan.rounds if round_.section == "thumb") == 20


def test_sleeve_stitches_of_two_sizes_are_refused() -> None:
    """A pair that is not alike is no pair."""
    told = faults(
        project(
            f"{SLEEVES.replace('hold 14 for left', 'hold 12 for left').replace('k16', 'k18')}Return held sleeve sts to needles.\nKnit 3 rounds."
        )
    )
    assert 'nothing is on hold for "sleeve"' in told


PAIR = """
  - name: sleeves
    work: |
      Sleeves (make 2)
      Cast on 14 sts. Join in the round.
      Knit 3 rounds.
      Place remaining 14 sts on hold.
  - name: yoke
    work: |
      Join body and sleeves: K across 14 sleeve sts, pm, k 20 front sts, pm, {second}, pm, k 20 back sts. 68 sts.
      Bind off.
"""


@pytest.mark.parametrize(
    "second",
    ["k across 14 sleeve sts", "k across 14 sts of second sleeve", "k14 sts from second sleeve holder"],
)
def test_a_yoke_takes_up_body_and_both_sleeves_that_were_made_alike(second: str) -> None:
    """The number printed where they go on hold does not cost them their name; 14 + 20 + 14 + 20 is 68."""
    text = project("Cast on 40 sts. Join in the round.\nKnit 3 rounds.\nPlace sts on holder.\n")
    plan = plan_of(text.rstrip() + PAIR.format(second=second))
    (joined,) = (each for each in plan.rounds if each.section == "yoke" and each.before == 0)
    assert [(run.yarn, run.times) for run in joined.runs if run.stitch == "return"] == [
        ("sleeves", 14), ("body", 20), ("sleeves, second", 14), ("body", 20)
    ]  # fmt: skip
    assert joined.after == 68
    assert plan.rounds[-1].held == {}


NECK = (
    "Cast on 40 sts. Work flat.\nKnit 2 rows.\nNext row (RS): K15, place next 10 sts on a holder, k15.\n"
    "Next row: P15, turn, leave remaining sts on a holder.\nKnit 4 rows. Bind off.\n"
)


def plan_of_lines(work: str) -> Plan:
    """Compile lines in one size."""
    return plan_of(project(work, sizes="S", size="S"))


def test_what_remains_beside_a_finished_shoulder_is_the_other_shoulder() -> None:
    """The ten stitches of the neck were put aside before, and wait for the neckband: 40 = 15 + 10 + 15."""
    plan = plan_of_lines(f"{NECK}With RS facing, rejoin yarn to remaining sts, k to end.\nBind off.")
    assert [round_.after for round_ in plan.rounds[-3:]] == [15, 15, 0]
    assert plan.warnings[-1].text == "10 stitches are still on hold when the last line is done."


def test_stitches_on_hold_without_a_name_are_known_by_their_number() -> None:
    """Ten are the neck's and fifteen the shoulder's, whichever was put aside last."""
    plan = plan_of_lines(
        f"{NECK}Return 10 held sts to needles.\nBind off.\nReturn 15 held sts to needles.\nBind off."
    )
    assert [round_.before for round_ in plan.rounds if round_.after == 0][1:] == [10, 15]


def test_one_of_several_without_a_name_is_not_guessed() -> None:
    """The shoulder knitted on the stitches of the neck is found out at the neckband."""
    assert "10 and 15 stitches are on hold without a name" in faults(
        project(f"{NECK}Return held sts to needles.", sizes="S", size="S")
    )


def test_the_neck_of_one_piece_is_not_taken_up_with_the_next() -> None:
    """The back's six stitches still wait when the front parts; the rest of the front is twelve of its own."""
    back = "Cast on 20 sts. Work flat.\nKnit 2 rows.\nNext row: BO 7 sts, place next 6 sts on a holder, bo 7 sts.\n"
    front = "Cast on 24 sts. Work flat.\nKnit 2 rows.\nNext row: K12, turn, leave remaining sts on a holder.\nBind off.\n"
    plan = plan_of_lines(f"{back}{front}Rejoin yarn to remaining sts, k to end.")
    assert plan.rounds[-1].after == 12


def test_a_row_worked_again_adds_to_what_it_put_on_hold() -> None:
    """A shoulder put aside in three steps of four is twelve stitches of one holder."""
    steps = "Cast on 20 sts. Work flat.\nKnit 1 row.\nNext row: K to last 4 sts, place rem 4 sts on a holder.\nRep last row twice more.\n"
    plan = plan_of_lines(f"{steps}Bind off.\nReturn 12 held sts to needles.")
    assert plan.rounds[-1].after == 12


def test_stitches_taken_up_with_the_wrong_side_facing_begin_with_a_wrong_side_row_in_a_section_of_their_own_too() -> (
    None
):
    """The second shoulder was knitted and purled on the wrong sides where the page gave it a heading, and only there."""
    begin = "Cast on 40 sts. Work flat.\nNext row (RS): K30, leave rem 10 sts on a holder.\nBO.\n"
    taken = "With WS facing, rejoin yarn to held sts.\nWork 2 rows in stockinette."
    for head in ("", "  - name: shoulder\n    gauge: plain\n    work: |\n"):
        text = project(begin) + head + "".join(f"      {line}\n" for line in taken.splitlines())
        assert [(round_.side, round_.instruction) for round_ in plan_of(text).rounds[-2:]] == [
            ("WS", "purl"),
            ("RS", "knit"),
        ]


@pytest.mark.parametrize("rows", [1, 2])
@pytest.mark.parametrize(
    ("divide", "join", "side"),
    [
        (
            "K20, turn and leave rem 40 sts on a holder for right front.",
            "With RS facing, rejoin yarn to right front sts and knit to end.",
            "RS",
        ),
        (
            "K20, turn and leave rem 40 sts on a holder for right front.",
            "Rejoin yarn to right front sts and work 1 row.",
            "RS",
        ),
        (
            "K20 and place these 20 sts on a holder for right front, k to end.",
            "Rejoin yarn to right front sts and work 1 row.",
            "WS",
        ),
        (
            "K20 and place these 20 sts on a holder for right front, k to end.",
            "With RS facing, rejoin yarn to right front sts and knit to end.",
            "RS",
        ),
    ],
)
def test_stitches_come_back_on_the_side_on_which_they_were_left(
    divide: str, join: str, side: str, rows: int
) -> None:
    """How many rows the other front had since makes no difference; a side that is told is the one."""
    work = f"Cast on 60 sts. Work flat.\nWork 4 rows in st st.\n{divide}\nPurl {rows} rows.\nPlace sts on a holder.\n{join}"
    assert plan_of(project(work)).rounds[-1].side == side


DIVIDED_YOKE = (
    "Cast on 80 sts. Join in the round.\nKnit 5 rounds.\n"
    "Next rnd: Place first 18 sts on waste yarn, cast on 8 sts, k22, place next 18 sts on waste yarn, cast on 8 sts, k to end.\nBind off.\n"
)


def below(part: str, lines: str) -> str:
    """Write a project whose second section has a name and lines."""
    head = f"  - name: {part}\n    gauge: plain\n    work: |\n"
    return project(DIVIDED_YOKE) + head + "".join(f"      {line}\n" for line in lines.splitlines())


def test_both_sleeves_held_without_a_name_come_back_one_after_the_other() -> None:
    """A page seldom names the stitches of a sleeve; in its section they can be no others, and both are alike."""
    plan = plan_of(below("sleeves", "Sleeves (work two)\nPut the 18 held sts back on the needles.\nJoin in the round.\nKnit 2 rounds.\nBind off."))
    back = [run.yarn for each in plan.rounds for run in flatten(each.phrase) if run.stitch == "return"]
    assert back == ["holder", "second holder"]


def test_two_lots_alike_are_not_guessed_in_a_part_of_another_name() -> None:
    """A front may be sewn to either."""
    assert "18 and 18 stitches are on hold without a name" in faults(below("front", "Put the 18 held sts back on the needles."))


def test_a_band_takes_each_front_from_the_pin_on_which_that_front_waits() -> None:
    """The left front is printed first and the band begins at the right one: neither pin has a name."""
    front = "CO 20 sts. Work flat.\nKnit 1 row.\nNext row: K5 and slip these 5 sts onto a safety pin, k to end.\nBind off."
    fronts = [line for side in ("left", "right") for line in (f"== {side} front", *front.split("\n"))]
    ask = "With RS facing, knit across 5 sts from right front, pick up and knit 9 sts"
    band = knit(*fronts, "== band", f"{ask}, knit across 5 sts of left front. 19 sts.").rounds[-1]
    pins = {run.yarn: number for number, run in enumerate(run for run in band.runs if run.stitch == "return")}
    assert pins == {"second holder": 0, "holder": 1}
    assert 'nothing is on hold for "right front"' in refused(*fronts[:5], "== band", f"{ask}. 14 sts.")
