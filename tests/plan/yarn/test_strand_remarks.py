"""Where floats are caught, which yarn lies below, and three yarns at once, as they are said."""

from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.plan.model import Plan, Run
from stepper.plan.yarn.strand_remarks import catches_of, find_catches
from stepper.project.reader import read_project
from tests.plan.test_agreed_works import as_file
from tests.plan.test_compile import SWITCHBACK, plan_of
from tests.project.samples import HEAD, project


def remarks(plan: Plan, number: int, section: str = "body") -> str:
    """Return what is said before a round."""
    found = next(each for each in plan.rounds if each.section == section and each.number == number)
    return ". ".join(found.remarks)


def test_the_long_floats_of_the_sample_are_caught_in_the_middle() -> None:
    """Trail round 1, `....aa....` at 22 sts: eight stitches, over 5 (2.5 cm); caught behind the tenth.

    Source: worked by hand on the chart; limit as check-values 5.4 and 5.6.
    """
    plan = plan_of(SWITCHBACK.read_text(encoding="utf-8"))
    said = remarks(plan, 5, "yoke")
    assert "Catch pine behind stitch 10 of each repeat: it floats over 8 stitches" in said
    assert "Catch" not in remarks(plan, 7, "yoke")


def test_one_order_from_below_to_above_for_the_whole_garment() -> None:
    """Chalk lies above in every pair; pine, with the fewest stitches, below; each set is told once."""
    plan = plan_of(SWITCHBACK.read_text(encoding="utf-8"))
    said = [words for each in plan.rounds for words in each.remarks if words.startswith("Carry")]
    assert said == [
        "Carry pine below chalk, in every round with both",
        "Carry pine lowest, above it ember, then chalk, in every round with them",
        "Carry ember below chalk, in every round with both",
    ]


def test_three_yarns_are_named_a_round_ahead_and_before_the_first_stitch() -> None:
    """Twelve rounds of ridge, from round 17 of the yoke on."""
    plan = plan_of(SWITCHBACK.read_text(encoding="utf-8"))
    assert "From the next round on 3 yarns at once, for 12 rounds" in remarks(plan, 16, "yoke")
    caution = next(each for each in plan.warnings if "3 yarns" in each.text)
    assert caution.text.startswith("yoke, rounds 17 to 28: 3 yarns in one round (")
    assert caution.line == plan.rounds[11 + 16].line


def chart_plan(
    cells: str, *, first: str = "", work: str = "Cast on 40 sts.\nJoin in the round.\nChart peak."
) -> Plan:
    """Compile a chart of one round at 20 stitches, 5 mm each."""
    return plan_of(first + project(work, head=HEAD.replace("      a..a\n      .aa.\n", f"      {cells}\n")))


@pytest.mark.parametrize(
    ("first", "caught"),
    [
        ("", True),
        ("longest_float: 3.5 cm\n", False),
        ("longest_float: 7 sts\n", False),
        ("longest_float: 1 in\n", True),
    ],
)
def test_the_limit_can_be_set_by_length_or_by_stitches(first: str, caught: bool) -> None:
    """Seven stitches of 5 mm: over 2.5 cm and an inch, not over 3.5 cm or seven stitches."""
    said = remarks(chart_plan("a.......", first=first), 2)
    assert ("Catch moss behind stitch 4 of each repeat: it floats over 7 stitches" in said) is caught


def test_a_plain_change_of_yarn_is_no_stranding() -> None:
    """A heel in another yarn has nothing to carry."""
    plan = plan_of(
        project("Cast on 40 sts.\nJoin in the round.\nWith A, knit 3 rounds.\nWith MC, knit 3 rounds.")
    )
    assert not any(words.startswith(("Carry", "Catch")) for each in plan.rounds for words in each.remarks)


def test_places_that_differ_are_told_one_by_one() -> None:
    """No repeat to go by: stitches of the round."""
    text = project("Cast on 40 sts.\nJoin in the round.\nKnit 1 round.")
    plan, found = plan_of(text), read_project(text).project
    assert found is not None
    runs = tuple(
        Run("k", times, yarn) for times, yarn in ((1, "A"), (9, "MC"), (1, "A"), (9, "MC"), (20, "A"))
    )
    worked = replace(plan.rounds[1], phrase=runs, runs=runs)
    caught, words = find_catches(worked, found, {})
    assert caught == {"A": (6, 16), "MC": (24, 28, 33, 37)}
    assert words == (
        "Catch moss behind stitches 6 and 16: it floats over 9 stitches. "
        "Catch oat behind stitches 24, 28, 33 and 37: it floats over 21 stitches"
    )


def test_the_remarks_that_hold_all_round_long_are_the_catches() -> None:
    """Which yarn lies below is said once; where to catch holds in every repeat."""
    plan = plan_of(SWITCHBACK.read_text(encoding="utf-8"))
    round_ = next(each for each in plan.rounds if each.section == "yoke" and each.number == 5)
    assert len(round_.remarks) == 2
    assert catches_of(round_) == (round_.remarks[1],)


def test_no_catch_of_the_sample_lies_above_another_where_it_could_be_moved() -> None:
    """Trail rounds 1 and 2 were both caught behind stitch 10: the second moves to the next stitch."""
    plan = plan_of(SWITCHBACK.read_text(encoding="utf-8"))
    behind = [
        catches_of(each)[0].split(" of ")[0]
        for each in plan.rounds
        if each.chart == "trail" and catches_of(each)
    ]
    assert behind[:3] == [
        "Catch pine behind stitch 10",
        "Catch pine behind stitch 1",
        "Catch pine behind stitch 5",
    ]


def test_two_blocks_of_colour_side_by_side_are_no_stranding() -> None:
    """A yarn that is taken up once in a round has nothing to be carried behind, so nothing is said of carrying it."""
    plan = chart_plan("aaaaaaaaaa..........", work="Cast on 20 sts. Work flat.\nChart peak.")
    assert not [
        words for each in plan.rounds for words in each.remarks if words.startswith(("Carry", "Catch"))
    ]
    stranded = chart_plan("aaaaa.....aaaaa.....", work="Cast on 20 sts. Work flat.\nChart peak.")
    assert [words for each in stranded.rounds for words in each.remarks if words.startswith("Carry")]


def test_in_rows_no_catch_lies_above_one_of_the_row_below() -> None:
    """A wrong-side row meets the stitches from the other end: stitch n of 24 lies above stitch 25 - n."""
    rows = (
        "Row 1 (RS): K5 with MC, k1 with CC, k12 with MC, k1 with CC, k5 with MC.",
        "Row 2: P5 with MC, p1 with CC, p12 with MC, p1 with CC, p5 with MC.",
    )
    plan = plan_of(as_file(["CO 24 sts. Work flat.", *rows]))
    first, second = (dict(each.caught)["CC"] for each in plan.rounds[1:3])
    assert len(first) == len(second) == 2
    assert not {25 - place for place in second} & set(first)


def test_yarns_of_several_rounds_are_not_counted_as_those_of_one() -> None:
    """Three yarns in each of two rounds, and four in both: nobody holds four strands at once."""
    rounds = [f"*K2 with MC, k1 with A, k1 with {yarn}; rep from * to end." for yarn in ("B", "CC")]
    (caution,) = plan_of(as_file(["CO 24 sts. Join in the round.", "Knit 1 round.", *rounds])).warnings
    assert ": 3 yarns in one round (of " in caution.text
