"""Named rounds, worked where they are printed and where they are called."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

HEAD = "Cast on 40 sts. Join in the round.\n"


@pytest.mark.parametrize(
    "again",
    [
        "Rep dec rnd. 38 sts.",
        "Repeat dec rnd. 38 sts.",
        "Rep dec rnd once more. 38 sts.",
        "Work dec rnd. 38 sts.",
    ],
)
def test_a_named_round_is_worked_where_it_is_printed_and_again_where_it_is_called(again: str) -> None:
    """Once on the second round, once on the eighth: before, the first was left out and the count with it."""
    plan = plan_of(project(f"{HEAD}Dec rnd: K1, k2tog, k to end.\nKnit 5 rounds.\n{again}\nKnit 1 round."))
    assert [each.index for each in plan.rounds if each.shaping] == [1, 7]


def test_a_call_that_may_be_the_round_itself_is_told() -> None:
    """ "Work dec rnd" has two readings; the count decides, and without one the knitter is told."""
    words = f"{HEAD}Dec rnd: K1, k2tog, k to end.\nWork dec rnd."
    assert len([each for each in plan_of(project(f"{words} 39 sts.")).rounds if each.shaping]) == 1
    plan = plan_of(project(words))
    assert len([each for each in plan.rounds if each.shaping]) == 2
    assert "work dec rnd" in plan.warnings[0].text


def test_a_round_that_is_not_worked_where_it_is_written_out_is_told() -> None:
    """Ten in all end with the same count whether the first is the ninth round or the nineteenth."""
    words = f"{HEAD}Knit 8 rounds.\nDec round: K1, k2tog, k to last 3 sts, ssk, k1.\n{{}} dec round every 11th round a total of 3 times."
    for verb, first, told in (("Work", 19, True), ("Rep", 9, False)):
        plan = plan_of(project(words.format(verb)))
        assert next(each.index for each in plan.rounds if each.shaping) == first
        assert any("not where it is written out" in each.text for each in plan.warnings) is told


def test_a_count_printed_with_a_round_that_is_called_later_is_checked() -> None:
    """Written out first and worked at intervals, what it loses and leaves is checked where it is worked."""
    words = f"{HEAD}Dec rnd: K1, k2tog, k to last 3 sts, ssk, k1. {{}}\nWork dec rnd every 4th round 2 times. 36 sts."
    assert plan_of(project(words.format("2 sts dec'd."))).rounds[-1].after == 36
    assert "prints 3 stitches lost" in faults(project(words.format("3 sts dec'd.")))
    assert "prints 37 stitches" in faults(project(words.format("37 sts.")))


def test_a_label_may_say_how_often_its_round_is_worked() -> None:
    """ "Inc round (work 3 times)" is three rounds, under the name by which it is called again."""
    work = "Cast on 20 sts. Join in the round.\nInc round (work 3 times): K1, m1, k to end. 23 sts.\nWork inc round. 24 sts.\nBind off."
    assert [round_.after for round_ in plan_of(project(work, sizes="S", size="S")).rounds[1:-1]] == [
        21,
        22,
        23,
        24,
    ]


@pytest.mark.parametrize(
    ("written", "called"),
    [("Dec round", "the decrease round"), ("Decrease rnd", "dec round"), ("Dec rnd", "decrease rnd")],
)
def test_a_round_called_in_full_is_the_one_written_short(written: str, called: str) -> None:
    """ "Dec round: …" and "work the decrease round every 2nd round 3 times": three decreases, not four."""
    words = f"{HEAD}{written}: K1, k2tog, k to last 3 sts, ssk, k1.\nWork {called} every 2nd round 3 times. 34 sts."
    assert [each.after for each in plan_of(project(words)).rounds] == [40, 40, 38, 38, 36, 36, 34]


def test_two_rounds_with_one_name_in_full_stay_apart() -> None:
    """Where both are written out, each is worked by its own name alone."""
    words = (
        f"{HEAD}Dec round: K1, k2tog, k to end.\nKnit 1 round.\nDecrease round: K2tog, k to last 2 sts, ssk.\n"
        "Work decrease round every 2nd round 2 times."
    )
    assert [each.after for each in plan_of(project(words)).rounds] == [40, 39, 39, 39, 37, 37, 35]


def test_a_named_round_worked_to_a_length_right_behind_it_counts_from_where_it_is_written() -> None:
    """ "Work rib rnd for 5 cm" is a rib of 5 cm at 28 rounds to 10 cm; one round more stood there before."""
    ribbed = "Rib rnd: *K2, p2; rep from * to end.\n{}\nBind off."
    assert len(plan_of(project(f"{HEAD}{ribbed.format('Work rib rnd for 5 cm.')}")).rounds) == 1 + 14 + 1
    twice = ribbed.format("Work rib rnd for 5 cm.\nWork rib rnd for 5 cm.")
    assert len(plan_of(project(f"{HEAD}{twice}")).rounds) == 1 + 28 + 1
    assert len(plan_of(project(f"{HEAD}{ribbed.format('Rep rib rnd for 5 cm.')}")).rounds) == 1 + 15 + 1


@pytest.mark.parametrize(
    ("call", "after"),
    [
        ("Rep dec rnd every 6th rnd 3 more times. 32 sts.", [38, 36, 34, 32]),
        ("Work decrease round every 6th rnd 3 times. 34 sts.", [38, 36, 34]),
    ],
)
def test_the_one_decrease_round_of_a_section_may_be_called_so_for_short(call: str, after: list[int]) -> None:
    """ "Waist dec rnd: …" is "dec rnd" further down, worked as often as if it had been written out by that name."""
    plan = plan_of(
        project(
            f"{HEAD}Knit 3 rounds.\nWaist dec rnd: K1, k2tog, k to last 3 sts, ssk, k1.\n{call}\nKnit 1 round."
        )
    )
    assert [each.after for each in plan.rounds if each.shaping] == after


@pytest.mark.parametrize(
    ("call", "after"),
    [
        ("Work dec rnd every 4th rnd 3 times in all.", [38, 36, 34]),
        ("Work dec rnd every 4th rnd a total of 3 times.", [38, 36, 34]),
        ("Work dec rnd every 4th rnd 3 times in all. 32 sts.", [38, 36, 34, 32]),
        ("Work dec rnd every 4th rnd 3 times. 32 sts in all.", [38, 36, 34, 32]),
    ],
)
def test_so_often_in_all_counts_the_round_that_was_worked(call: str, after: list[int]) -> None:
    """If no printed count shows otherwise, the words are taken at their word."""
    plan = plan_of(
        project(f"{HEAD}Dec rnd: K1, k2tog, k to last 3 sts, ssk, k1.\nKnit 3 rnds.\n{call}\nKnit 1 round.")
    )
    assert [each.after for each in plan.rounds if each.shaping] == after


def test_of_two_decrease_rounds_none_is_meant_by_the_short_name() -> None:
    """Nobody can tell which; nor where the other is only written out below."""
    first, other = "Waist dec rnd: K1, k2tog, k to end.\n", "Hip dec rnd: K2tog, k to end.\n"
    rep = "Rep dec rnd every 2nd rnd 3 more times.\n"
    for words in (f"{first}Knit 1 round.\n{other}{rep}", f"{first}{rep}Knit 1 round.\n{other}"):
        assert '"dec rnd" has not been written out' in faults(project(f"{HEAD}{words}"))


def test_rows_numbered_behind_one_name_are_one_pattern() -> None:
    """ "Rib row 1", "Rib row 2", then "Work in rib": both are repeated, with their edge stitches."""
    rib = "Rib row 1 (RS): K2, *p1, k1; rep from * to last st, k1.\nRib row 2: K1, *p1, k1; rep from * to end.\n"
    plan = plan_of(project(f"Cast on 21 sts. Work flat.\n{rib}Work in rib for 4 rows more.\nBind off."))
    first, second, *again = [each.phrase for each in plan.rounds[1:-1]]
    assert again == [first, second] * 2
    assert not any("read as line" in caution.text for caution in plan.warnings)


def test_a_named_round_that_only_a_note_says_when_to_work_is_refused() -> None:
    """It stands there to be called, or is worked there first; the line that would tell is not read."""
    lines = "Dec rnd: K1, k2tog, k to last 3 sts, ssk, k1.\nNote: *Work dec rnd, then work 1 rnd even; rep from * 5 more times.\n"
    assert "a line that is not read says when dec rnd is worked" in faults(project(f"{HEAD}{lines}"))
    plan_of(project(f"{HEAD}{lines}".replace("*Work dec", "Rep dec")))
