"""Answers about a part or a line that was named, counted by hand on small pieces and on a printed garment."""

from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.craft.stitches import Kind
from stepper.plan.model import Plan
from stepper.session.effects import Effect
from stepper.session.questions import about_named
from stepper.session.questions.about_piece import TellNotes
from stepper.session.state import Knitting, NoteKept, Position, State
from tests.fixtures import plan_named
from tests.plans import plan

SWITCHBACK = plan_named("switchback")
FLAT = {"flat": True}


def _at(garment: Plan, section: str, number: int) -> State:
    index = next(each.index for each in garment.rounds if (each.section, each.number) == (section, number))
    return State(seq=1, knitting=Knitting(place=Position(index=index)))


def _noted(state: State, *notes: tuple[int, str]) -> State:
    kept = tuple(NoteKept(index=index, text=text) for index, text in notes)
    return replace(state, knitting=replace(state.knitting, notes=kept))


def test_in_one_sleeve_the_notes_of_the_other_are_told() -> None:
    """What she did on the first sleeve is what she asks for on the second."""
    left = _at(SWITCHBACK, "left sleeve", 30).place.index
    state = _noted(_at(SWITCHBACK, "right sleeve", 30), (left, "two needles up"), (left + 200, "and here"))
    (told,) = about_named.tell_part_notes(SWITCHBACK, state, "sleeve")
    assert isinstance(told, about_named.TellPartNotes)
    assert [(name, [note.text for note in kept]) for name, kept in told.notes] == [("left sleeve", ["two needles up"])]
    (named,) = about_named.tell_part_notes(SWITCHBACK, state, "right sleeve")
    assert isinstance(named, about_named.TellPartNotes)
    assert [name for name, _ in named.notes] == ["right sleeve"]


def test_notes_of_what_is_no_section_are_those_of_the_one_in_hand() -> None:
    """A rib has no name of its own."""
    (told,) = about_named.tell_part_notes(SWITCHBACK, _at(SWITCHBACK, "neckband", 4), "rib")
    assert isinstance(told, TellNotes)


def test_the_stitches_of_a_section_are_those_of_its_first_and_last_round() -> None:
    """Printed: 246 stitches before the division, 164 after it; the body begins and ends with these."""
    (body,) = about_named.tell_part_counts(SWITCHBACK, _at(SWITCHBACK, "yoke", 13), "body")
    assert isinstance(body, about_named.TellPartCounts)
    assert (body.counts, body.is_line) == ((("body", 164, 164),), False)
    (line,) = about_named.tell_part_counts(SWITCHBACK, _at(SWITCHBACK, "body", 40), "division")
    assert isinstance(line, about_named.TellPartCounts)
    assert (line.counts, line.is_line) == ((("Divide", 246, 164),), True)
    (none,) = about_named.tell_part_counts(SWITCHBACK, _at(SWITCHBACK, "body", 40), "attic")
    assert isinstance(none, about_named.TellPartCounts)
    assert none.counts == ()


def test_the_last_round_bound_off_is_not_what_a_section_ends_with() -> None:
    """It would have no stitches."""
    piece = plan(("band", ["co8", "k8", "bo8"]))
    (told,) = about_named.tell_part_counts(piece, State(seq=1), "band")
    assert isinstance(told, about_named.TellPartCounts)
    assert told.counts == (("band", 8, 8),)


def test_lines_of_a_name_are_counted_from_the_one_in_hand() -> None:
    """Buttonholes: the one in this row is still to be made."""
    hole = {"label": "Buttonhole row", **FLAT}
    band = plan(("band", ["co8", ("k8", hole), ("k8", FLAT), ("k8", hole), ("k8", hole)]))
    found = []
    for index in (0, 1, 2, 4):
        state = State(seq=1, knitting=Knitting(place=Position(index=index)))
        (told,) = about_named.tell_lines_left(band, state, "buttonholes")
        assert isinstance(told, about_named.TellLinesLeft)
        found.append((told.ahead, told.done))
    assert found == [((1, 3, 4), 0), ((1, 3, 4), 0), ((3, 4), 1), ((4,), 2)]


def test_under_the_arm_is_where_stitches_are_held_and_cast_on_in_one_round() -> None:
    """Printed: nine at each underarm, in the last round of the yoke; asked before it and after it."""
    divide = _at(SWITCHBACK, "yoke", 37).place.index
    for section, number in (("yoke", 2), ("body", 40)):
        (told,) = about_named.tell_underarm(SWITCHBACK, _at(SWITCHBACK, section, number), "")
        assert isinstance(told, about_named.TellUnderarm)
        assert (told.index, set(told.stitches)) == (divide, {9})
    (none,) = about_named.tell_underarm(plan(("hat", ["co8", "k8"])), State(seq=1), "")
    assert none == about_named.TellUnderarm(index=None, stitches=())


def _rhythm(garment: Plan, index: int, kind: Kind = Kind.DECREASE) -> about_named.TellRhythm:
    state = State(seq=1, knitting=Knitting(place=Position(index=index)))
    told: list[Effect] = list(about_named.tell_rhythm(garment, state, "", kind=kind))
    (only,) = told
    assert isinstance(only, about_named.TellRhythm)
    return only


def test_how_often_is_counted_from_the_last_one_worked() -> None:
    """Rounds 2, 4, 6 and 9 decrease: every second round twice, and then after three."""
    rounds = ["co12", "k2tog k10", "k11", "k2tog k9", "k10", "k2tog k8", "k9", "k9", "k2tog k7", "k8"]
    hat = plan(("crown", rounds))
    assert (_rhythm(hat, 0).gaps, _rhythm(hat, 0).index) == (((2, 2), (3, 1)), 1)
    assert _rhythm(hat, 4).gaps == ((2, 1), (3, 1))
    assert _rhythm(hat, 8).gaps == ((3, 1),)
    assert (_rhythm(hat, 9).gaps, _rhythm(hat, 9).index) == ((), None)
    assert _rhythm(hat, 0, Kind.CABLE).index is None


HALVES = plan(
    ("left front", ["co20", ("k20", {"label": "Buttonhole row"}), "k20", ("k20", {"label": "buttonhole row"})]),
    ("right front", ["k20", "k10 hold10:strap", "k10", "k10 hold0:strap co4", "k14"]),
)
"""Rounds 0 to 3 and 4 to 8; stitches are held in 5 and cast on in 7."""


def test_a_name_of_nothing_finds_nothing() -> None:
    """ "The, of the" holds no word of a name: every section and every line would be meant."""
    assert about_named.find_sections(HALVES, "") == ()
    assert about_named.find_lines(HALVES, "") == ()
    assert about_named.find_sections(HALVES, "fronts") == ("left front", "right front")
    assert [each.index for each in about_named.find_lines(HALVES, "buttonhole row")] == [1, 3]


def test_the_section_in_hand_is_told_where_no_other_has_the_name_and_what_was_noted_at_the_end_is_of_none() -> None:
    """Asked in the left front for "left front", it is that one; a note from behind the last row belongs to no section."""
    state = _noted(_at(HALVES, "left front", 2), (1, "mind the gap"), (len(HALVES.rounds), "weave in"))
    (told,) = about_named.tell_part_notes(HALVES, state, "left front")
    assert isinstance(told, about_named.TellPartNotes)
    assert [(name, [note.text for note in kept]) for name, kept in told.notes] == [("left front", ["mind the gap"])]


def test_the_stitches_of_a_line_are_those_of_the_next_one_the_one_in_hand_among_them() -> None:
    """And of the last one where none is left; the division is called what she called it. By hand."""

    def counts(place: str, section: str, number: int) -> tuple[tuple[str, int, int], ...]:
        (told,) = about_named.tell_part_counts(HALVES, _at(HALVES, section, number), place)
        assert isinstance(told, about_named.TellPartCounts)
        assert told.is_line
        return told.counts

    assert counts("buttonhole", "left front", 2) == (("Buttonhole row", 20, 20),)
    assert counts("buttonhole", "left front", 3) == (("buttonhole row", 20, 20),)
    assert counts("buttonhole", "right front", 2) == (("buttonhole row", 20, 20),)
    assert counts("division", "left front", 1) == (("division", 20, 10),)
    named = plan(("yoke", ["co20", ("k20", {"label": "Division marker round"}), "k10 hold10:strap", "k10"]))
    assert [each.index for each in about_named.find_lines(named, "division")] == [1]


@pytest.mark.parametrize(("here", "index", "stitches"), [(0, 2, (4,)), (2, 2, (4,)), (3, 4, (6,)), (4, 4, (6,)), (5, 4, (6,))])
def test_under_the_arm_is_the_next_round_that_holds_and_casts_on_or_else_the_last(
    here: int, index: int, stitches: tuple[int, ...]
) -> None:
    """Where only stitches are put aside, as for a pocket, there is no underarm. By hand, of two armholes."""
    armholes = plan(
        ("yoke", ["co40", "k30 hold10:pocket", "k20 hold10:left_sleeve co4", "k24", "k14 hold10:right_sleeve co6", "k20"])
    )
    state = State(seq=1, knitting=Knitting(place=Position(index=here)))
    (told,) = about_named.tell_underarm(armholes, state, "")
    assert told == about_named.TellUnderarm(index=index, stitches=stitches)
