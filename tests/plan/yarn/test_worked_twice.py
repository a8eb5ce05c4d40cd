"""Which rounds are printed once and worked twice."""

from __future__ import annotations

import textwrap

import pytest

from stepper.plan.model import Plan
from stepper.plan.yarn.worked_twice import second_pieces, with_second_pieces
from stepper.plan.yarn.yarn_use import total, yarn_use
from tests.plan.test_compile import plan_of
from tests.project.samples import project

TUBE = "Cast on 40 sts.\nJoin in the round.\nKnit 9 rounds.\n"
THUMB = (
    f"{TUBE}K10, hold 10 sts for thumb, k to end.\nKnit 4 rounds.\nBind off.\n"
    "Return thumb to needles.\nKnit 3 rounds.\nBind off.\n"
)


def knitted(work: str, *, name: str = "body", more: str = "") -> Plan:
    """Compile one section under a name."""
    return plan_of(project(work).replace("name: body", f'name: "{name}"') + more)


@pytest.mark.parametrize(
    "name", ["both sleeves", "sleeve (make 2)", "Sleeve, make two", "two mittens", "socks", "bootees", "Armhole bands", "wrist warmers"]
)
def test_a_section_in_the_plural_is_for_two(name: str) -> None:
    """As printed patterns head it (common practice)."""
    plan = knitted(f"{TUBE}Bind off.", name=name)
    assert [list(piece) for piece in second_pieces(plan)] == [list(range(len(plan.rounds)))]


@pytest.mark.parametrize(
    "name", ["sleeve", "left sleeve", "sleeves and body", "yoke", "make 2 rounds of edging", "second sock"]
)
def test_other_sections_are_worked_once(name: str) -> None:
    """Yarn for a sleeve that is not knitted would be money thrown away."""
    assert second_pieces(knitted(f"{TUBE}Bind off.", name=name)) == ()


@pytest.mark.parametrize(
    "note",
    [
        "The second sleeve is the same.",
        "Work second sleeve to match.",
        "Work the other sleeve as the first.",
        "Make second sleeve same as first.",
        "Knit another sleeve.",
        "Both sleeves are alike.",
    ],
)
def test_a_note_asks_for_a_second_piece(note: str) -> None:
    """The usual sentences at the end of a sleeve (common practice)."""
    plan = knitted(f"{TUBE}Bind off.\nNote: {note}")
    assert [len(piece) for piece in second_pieces(plan)] == [len(plan.rounds)]


@pytest.mark.parametrize("note", ["Sew the second sleeve in.", "Weave in both ends."])
def test_other_notes_ask_for_none(note: str) -> None:
    """Words about a second sleeve are no second sleeve."""
    assert second_pieces(knitted(f"{TUBE}Bind off.\nNote: {note}")) == ()


def test_a_pair_that_is_alike_is_told_of_in_front_and_is_none_where_both_are_printed() -> None:
    """ "Both mittens are alike" above the one that is printed: the other was never knitted, and nothing said so."""
    told = f"Note: Both mittens are alike. Wear on either hand.\n{TUBE}Bind off."
    whole = knitted(told, name="mitten")
    assert second_pieces(whole) == (range(len(whole.rounds)),)
    right = f"  - name: right mitten\n    work: |\n{textwrap.indent(f'{TUBE}Bind off.', '      ')}\n"
    assert second_pieces(knitted(told, name="left mitten", more=right)) == ()
    assert second_pieces(knitted(told.replace("alike", "the same as far as the thumb"), name="mitten")) == ()


def test_a_second_sock_takes_its_thumb_or_heel_with_it_and_a_second_thumb_does_not_take_the_hand() -> None:
    """A mitten is what was begun with nothing on the needles and nothing on hold."""
    whole = knitted(f"{THUMB}Note: Second mitten the same.")
    assert [list(piece) for piece in second_pieces(whole)] == [list(range(len(whole.rounds)))]
    part = knitted(f"{THUMB}Note: Work another thumb.")
    (piece,) = second_pieces(part)
    assert part.rounds[piece[0]].before == 0
    assert 0 < piece[0] < piece[-1] == len(part.rounds) - 1


def test_what_has_a_section_of_its_own_is_not_worked_again() -> None:
    """A remark in the left sleeve about the right one, which is printed, too."""
    both = "  - name: second sleeve\n    work: |\n      Cast on 40 sts.\n      Knit 1 round.\n      Bind off.\n"
    alone = knitted(f"{TUBE}Bind off.\nNote: Second sleeve the same.", name="first sleeve")
    assert len(second_pieces(alone)) == 1
    assert second_pieces(knitted(f"{TUBE}Bind off.\nNote: Second sleeve the same.", name="first sleeve", more=both)) == ()


def test_a_part_that_the_plan_works_again_itself_is_not_worked_twice_over() -> None:
    """"Sleeves (make 2)" above its lines is knitted twice by the plan: yarn for four sleeves would be money thrown
    away."""
    both = knitted(f"SLEEVES (make 2)\n{TUBE}Bind off.", name="sleeves")
    assert both.sections == ("sleeves", "sleeves, second")
    assert second_pieces(both) == ()


def test_two_pieces_of_one_garment_may_both_be_worked_twice() -> None:
    """Two sleeves and two pockets: yarn for one of them only would run out in the last pocket."""
    pair = "Cast on 40 sts.\nJoin in the round.\nKnit 9 rounds.\nBind off.\nNote: Make second {} same as first."
    pocket = "  - name: pocket\n    work: |\n" + textwrap.indent(pair.format("pocket"), "      ") + "\n"
    plan = knitted(pair.format("sleeve"), name="sleeve", more=pocket)
    assert second_pieces(plan) == (range(11), range(11, 22))


def test_the_second_piece_takes_its_yarn_when_the_first_is_done() -> None:
    """Whoever weighs in the first sleeve has still the rest of it and a whole one to knit."""
    plan = knitted(f"{TUBE}Bind off.\nNote: Second sleeve alike.")
    uses = yarn_use(plan)
    both = with_second_pieces(plan, uses)
    assert both[:-1] == uses[:-1]
    once = total(use["MC"] for use in uses).likely_mm
    assert total(use["MC"] for use in both).likely_mm == pytest.approx(2 * once)
