from __future__ import annotations

import pytest

from stepper.plan.model import Plan
from stepper.session import cues
from stepper.session.machine import Session
from stepper.session.questions import about_piece
from stepper.session.questions.about_ahead import TellLength
from stepper.session.questions.about_piece import part_called
from stepper.session.questions.topics import PartTopic, Topic
from stepper.session.state import Asking, Knitting, NoteKept, Position, State
from tests.asking import session_at
from tests.fixtures import plan_named
from tests.plans import plan
from tests.playbook import after, opened

GARMENT = plan(
    ("body", ["co120", "k120", "(k10 m1)x12", "k132", "hold40:sleeve k92", "bo92"]),
    ("left sleeve", ["co60", "k60", "k1 k2tog k54 k2tog k1", "k58", "bo58"]),
    ("right sleeve", ["co60", "k60"]),
)


def _asked(cue: cues.Cue, index: int, stitch: int = 0, asking: Asking = Asking.COST) -> object:
    place = Position(index=index, stitch=stitch)
    session = Session(GARMENT, State(seq=1, knitting=Knitting(place=place, asking=asking)))
    (effect,) = session.consider(cue).effects
    return effect


def _about(topic: Topic, index: int, stitch: int = 0, asking: Asking = Asking.COST) -> object:
    return _asked(cues.About(topic=topic), index, stitch, asking)


def test_the_last_shaping_is_looked_for_in_this_section_alone() -> None:
    """The increases of the body say nothing of the sleeve. By hand: round 2 of the body has twelve."""
    body = _about(Topic.LAST_INCREASE, 3)
    assert body == about_piece.TellLastShaping(increases=True, index=2, here=3, changes=12)
    assert _about(Topic.LAST_INCREASE, 9) == about_piece.TellLastShaping(increases=True, index=None, here=9, changes=0)


def test_a_count_that_will_be_asked_for_is_told_unless_none_are() -> None:
    """Before the stitches are divided a count is due (common practice); who wants none is told so."""
    told = _about(Topic.NEXT_COUNT, 3)
    assert isinstance(told, about_piece.TellNextCount)
    assert (told.index, told.expect, told.reason) == (3, 132, "before the division")
    never = _about(Topic.NEXT_COUNT, 3, asking=Asking.NEVER)
    assert isinstance(never, about_piece.TellNextCount)
    assert (never.index, never.asks) == (None, False)


def test_the_next_section_and_the_last() -> None:
    """After the body the left sleeve, and after the right one nothing."""
    assert _about(Topic.NEXT_SECTION, 1) == about_piece.TellNextSection(section="body", index=6, here=1)
    last = _about(Topic.NEXT_SECTION, 12)
    assert last == about_piece.TellNextSection(section="right sleeve", index=None, here=12)


def test_what_is_cast_on_belongs_to_the_piece_in_hand() -> None:
    """The sleeve began with 60, whatever the body had."""
    told = _about(Topic.CAST_ON, 9)
    assert told == about_piece.TellCastOn(section="left sleeve", stitches=60, is_cast_on=True)


def test_how_much_is_done_is_a_share_of_all_stitches() -> None:
    """The first two rounds have 120 each."""
    told = _about(Topic.SHARE_DONE, 2)
    assert isinstance(told, about_piece.TellShareDone)
    whole = sum(each.progress for each in GARMENT.rounds)
    assert told.stitches == 240 / whole
    assert (told.rounds, told.of) == (2, 13)


def test_without_a_gauge_no_width_is_made_up() -> None:
    """The stitches alone are told."""
    told = _about(Topic.WIDTH, 1)
    assert told == about_piece.TellWidth(stitches=120, width_mm=None, flat=False)


def test_a_word_of_its_name_means_the_section_in_hand_or_else_the_next() -> None:
    """Whoever is at the right sleeve and asks for the sleeve means this one."""
    assert part_called(GARMENT, "sleeves", GARMENT.rounds[12]).name == "right sleeve"
    assert part_called(GARMENT, "sleeve", GARMENT.rounds[1]).name == "left sleeve"
    assert part_called(GARMENT, "hood", GARMENT.rounds[1]).name == "body"


def test_a_rib_is_its_own_rounds_where_it_is_a_part_of_a_section() -> None:
    """Who asks for the rib does not ask for the body. By hand: rounds 97 to 112 are rib, round 113 binds off."""
    switchback = plan_named("switchback")
    body = next(each for each in switchback.rounds if each.section == "body" and each.number == 40)
    rib = part_called(switchback, "rib", body)
    assert rib.name == "rib"
    assert [each.number for each in rib.rounds] == list(range(97, 113))
    neckband = next(each for each in switchback.rounds if each.section == "neckband" and each.number == 4)
    assert part_called(switchback, "ribbing", neckband).rounds[0].section == "neckband"


def test_the_length_of_another_part_is_told_as_a_whole() -> None:
    """The one in hand is told as far as it is done. By the pattern: 38 cm and 5 cm of rib."""
    session = session_at("yoke")
    (other,) = session.consider(cues.HowFarIn(place="left sleeve", asks=PartTopic.LENGTH)).effects
    assert isinstance(other, about_piece.TellPartLength)
    assert (other.section, other.rounds) == ("left sleeve", 132)
    assert other.length_mm == pytest.approx(430)
    (here,) = session.consider(cues.HowFarIn(place="yoke", asks=PartTopic.LENGTH)).effects
    assert isinstance(here, TellLength)
    (bare,) = Session(GARMENT, State(seq=1)).consider(cues.HowFarIn(place="sleeve", asks=PartTopic.LENGTH)).effects
    assert isinstance(bare, about_piece.TellPartLength)
    assert bare.length_mm is None


def test_the_rest_of_a_section_takes_as_long_as_its_stitches() -> None:
    """A part that is done takes none, one in hand what is left of it."""
    told = _asked(cues.HowFarIn(), 7, 30)
    assert isinstance(told, about_piece.TellSection)
    assert (told.section, told.done, told.of, told.measured) == ("left sleeve", 1, 5, False)
    assert told.seconds_left > 0
    done = _asked(cues.HowFarIn(place="body"), 7)
    assert isinstance(done, about_piece.TellSection)
    assert (done.done, done.seconds_left) == (6, 0)


def test_stitches_on_hold_are_named_by_what_they_wait_for() -> None:
    """The sleeves of the yoke knitted top down."""
    garment = plan_named("switchback")
    index = next(each.index for each in garment.rounds if each.holds) + 1
    session = Session(garment, State(seq=1, knitting=Knitting(place=Position(index=index))))
    (told,) = session.consider(cues.About(topic=Topic.HELD)).effects
    assert isinstance(told, about_piece.TellHeld)
    assert {name for name, _ in told.held} == set(garment.rounds[index - 1].held)


def test_what_she_noted_is_told_for_the_section_in_hand() -> None:
    """At the sleeve she asks what she noted of this one; what was said of the body is told as the last, by name."""
    session = after(opened(GARMENT), "make a note used the larger needle")
    (told,) = session.consider(cues.About(topic=Topic.NOTES)).effects
    assert told == about_piece.TellNotes(
        section="body",
        here=(NoteKept(index=0, text="used the larger needle"),),
        last=NoteKept(index=0, text="used the larger needle"),
    )
    (later,) = after(session, "go to left sleeve").consider(cues.About(topic=Topic.NOTES)).effects
    assert isinstance(later, about_piece.TellNotes)
    assert (later.section, later.here) == ("left sleeve", ())
    assert later.last is not None


def test_a_count_is_looked_for_as_far_as_she_is_told_it_is() -> None:
    """The last round before a bind-off locks a fault in (common practice): sixty rounds off it is told, farther off it is not."""
    scarf = plan(("strip", ["co4", *["k4"] * 80, "bo4"]))
    first = next(at for at in range(81) if _next_count(scarf, at).index is not None)
    assert _next_count(scarf, first).index == first + about_piece.COUNT_WITHIN - 1 == 80
    assert _next_count(scarf, first).asks
    none = _next_count(scarf, first - 1)
    assert (none.index, none.asks) == (None, True)


def _next_count(garment: Plan, index: int) -> about_piece.TellNextCount:
    """Ask for the next count at the beginning of a round, with counts only where a fault is locked in."""
    place = Position(index=index)
    knitting = Knitting(place=place, asking=Asking.LESS)
    (told,) = Session(garment, State(seq=1, knitting=knitting)).consider(cues.About(topic=Topic.NEXT_COUNT)).effects
    assert isinstance(told, about_piece.TellNextCount)
    return told


def test_a_note_from_behind_the_last_round_is_of_no_section() -> None:
    """Kept when all is knitted, it is no remark on the last section, and asking for notes must not fail."""
    notes = (NoteKept(index=2, text="loose"), NoteKept(index=len(GARMENT.rounds), text="blocked"))
    place = Position(index=3)
    state = State(seq=1, knitting=Knitting(place=place, notes=notes))
    (told,) = about_piece.tell_notes(GARMENT, state, "")
    assert isinstance(told, about_piece.TellNotes)
    assert [each.text for each in told.here] == ["loose"]


def test_a_rib_that_is_a_section_of_its_own_goes_by_its_name_and_without_one_the_section_in_hand_is_meant() -> None:
    """Where there is no rib there is nothing to name so."""
    rib = "(k2 p2)x5"
    hem = plan(("hem", ["co20", rib, rib]), ("body", ["k20", "k20", rib, rib]))
    found = part_called(hem, "rib", hem.rounds[4])
    assert (found.name, [each.index for each in found.rounds]) == ("rib", [5, 6])
    assert part_called(plan(("body", ["co20", "k20", "k20"])), "rib", GARMENT.rounds[1]).name == "body"
    alone = plan(("hem", [rib.replace("(k2 p2)x5", "co20"), rib]), ("edge", [rib, rib]))
    assert part_called(alone, "rib", alone.rounds[2]).name == "edge"
