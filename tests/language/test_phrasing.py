from __future__ import annotations

import re
from dataclasses import replace

from hypothesis import given

from stepper.language.phrasing import in_yarn, said_items, say_round
from stepper.plan.model import flatten
from tests.plan.test_compile import plan_of
from tests.plans import final_increase, phrase, plan
from tests.project.samples import project
from tests.session.test_steps import ROUNDS
from tests.tables import each_row


def _spoken(text: str) -> str:
    uses = sum(run.uses for run in flatten(phrase(text)))
    garment = plan(("body", [f"co{uses}" if uses else "", text]))
    return say_round(garment.rounds[1], garment)


@each_row(
    ("text", "said"),
    [
        ("k246", "knit all two hundred forty six"),
        ("p12", "purl all twelve"),
        ("(k6)x41", "knit all two hundred forty six"),
        ("(k2 p2)x39", "knit two, purl two, thirty nine times"),
        ("(k11 m1)x6", "knit eleven, make one, six times"),
        (
            "k5 m1 (k11 m1)x15 k6",
            "knit five, make one; then knit eleven, make one, fifteen times; then knit six",
        ),
        ("k1 k2tog k6 ssk k1", "knit one, knit two together, knit six, slip slip knit, knit one"),
        ("k2tog2 yo3", "knit two together two times, yarn over three times"),
        ("(k2:A k6 k2:A)x25", "two pine, six chalk, two pine, twenty five times"),
        ("k2 p2:A", "knit two chalk, purl two pine"),
        ("k2:A m1:A k2tog", "knit two pine, make one in pine, knit two together in chalk"),
        (
            "k34 hold46:left_sleeve co8 k68",
            "knit thirty four, hold forty six for left sleeve, cast on eight, knit sixty eight",
        ),
        ("return46:left_sleeve pu8", "return forty six of left sleeve to the needles, pick up and knit eight"),
        ("bo14", "bind off fourteen"),
        ("k4 2/2_rc k4", "knit four, two over two right cross, knit four"),
        ("k_tbl3 p1", "knit three through the back loop, purl one"),
        (
            "(k1 (p1 k1)x3 p2)x4",
            "knit one, then purl one, knit one, three times, then purl two, all that four times",
        ),
        ("k1", "knit one"),
        ("k10 turn", "knit ten, turn"),
        ("mb2 k1", "make two bobbles, knit one"),
    ],
)
def test_a_round_is_said_as_a_knitter_would_say_it(text: str, said: str) -> None:
    """Short, in words, with the repeat set off and counted, and the yarn where there is more than one."""
    assert _spoken(text) == said


@given(ROUNDS)
def test_what_is_said_has_no_figures_and_no_abbreviations(text: str) -> None:
    """Every voice reads figures its own way and spells out "k2tog"; so there must be none."""
    said = _spoken(text)

    assert said
    assert not re.search(r"\d|k2tog|\bssk\b|\byo\b", said)


def test_a_change_of_yarn_is_said_where_it_happens() -> None:
    """A round all in another colour must not sound like the round before."""
    garment = final_increase()

    assert say_round(garment.rounds[6], garment) == "in ember, knit all two hundred forty six"
    assert [in_yarn(round_, garment) for round_ in garment.rounds[:3]] == ["", "", ""]


def test_a_part_names_the_yarns_its_round_needs() -> None:
    """In a round of two colours even a part in one colour says which."""
    garment = final_increase()

    assert said_items(phrase("k2"), garment.rounds[4], garment) == "two chalk"
    assert said_items(phrase("k2"), garment.rounds[3], garment) == "knit two"


def test_how_to_bind_off_is_said() -> None:
    """A tight bind-off on a neck or a hem is a garment nobody gets into."""
    for instruction in ("bind off stretchily", "bind off in pattern"):
        garment = plan(("body", ["co20", "bo20"]))
        end = replace(garment.rounds[1], instruction=instruction)
        assert say_round(end, garment) == f"bind off twenty{instruction.removeprefix('bind off')}"


def test_a_round_without_stitches_is_said_as_it_is_written() -> None:
    """A note or a bare turn is still something to do."""
    garment = plan(("body", ["turn"]))

    assert say_round(garment.rounds[0], garment) == "turn"


def test_held_stitches_that_come_back_in_a_round_are_worked_across() -> None:
    """ "Return twelve" would leave them unknitted; put back alone, they are only returned."""
    work = "Cast on 12 sts.\nHold 12 sts for left sleeve.\nCast on 40 sts.\n{}\nBind off."
    joined = plan_of(project(work.format("K40, k across left sleeve sts.")))
    assert say_round(joined.rounds[3], joined) == "knit forty, work across twelve of left sleeve"
    alone = project("Cast on 12 sts.\nHold 12 sts for sleeve.\nCast on 40 sts.\nHold 40 sts for body.\nK 12 of sleeve, pm, k 40 of body, pm.\nKnit 1 round.\nBind off.")
    assert "work across twelve of sleeve, place marker, work across forty of body" in say_round(plan_of(alone).rounds[4], plan_of(alone))
    put = plan_of(project(work.format("Return left sleeve to needles.")))
    assert say_round(put.rounds[3], put) == "leave forty unworked, return twelve of left sleeve to the needles"


def test_own_words_are_said_as_they_stand() -> None:
    """Figures and abbreviations in words, and the star of a repeat by its name, which a voice would leave out."""
    garment = plan_of(
        project("Cast on 20 sts.\nJoin in the round.\nOwn words: *k2, loop it; rep from * 4 times.\nKnit 1 round.")
    )
    assert say_round(garment.rounds[1], garment) == "star knit two, loop it; repeat from star four times"


def test_a_star_behind_a_stitch_is_a_word_of_its_own() -> None:
    """ "*k2, p2* and on" ends its repeat with a star too; glued to the stitch it would be no word at all."""
    garment = plan_of(
        project("Cast on 20 sts.\nJoin in the round.\nOwn words: *k2, p2* and on (*k2tog*).\nKnit 1 round.")
    )
    assert say_round(garment.rounds[1], garment) == "star knit two, purl two star and on (star knit two together star)"
