from __future__ import annotations

from stepper.language.effect_words import tell_effect
from stepper.language.piece_words import LINES
from stepper.session.questions import about_piece
from stepper.session.state import NoteKept
from tests.plans import plan

GARMENT = plan(("body", ["co120", "k120", "(k10 m1)x12", "bo132"]), ("sleeve", ["co60", "k60"]))


def test_each_answer_is_a_sentence_with_the_answer_first() -> None:
    """She hears the number before what it rests on."""
    told = {
        about_piece.TellLastShaping(increases=True, index=2, here=3, changes=12): "In the last round, round 3: 12 increases.",
        about_piece.TellLastShaping(increases=False, index=None, here=3, changes=0): "No decreases yet in body.",
        about_piece.TellNextCount(
            index=3, here=2, reason="before a bind-off", expect=132, asks=True
        ): "After round 4, in 1 round: 132 expected, before a bind-off.",
        about_piece.TellNextCount(index=None, here=2, reason="", expect=0, asks=True): "None is near.",
        about_piece.TellNextCount(index=None, here=2, reason="", expect=0, asks=False): "I ask for no counts.",
        about_piece.TellNextSection(section="body", index=4, here=2): "Sleeve, in 2 rounds.",
        about_piece.TellNextSection(section="sleeve", index=None, here=5): "Sleeve is the last part.",
        about_piece.TellHeld(held=()): "None is on hold.",
        about_piece.TellHeld(
            held=(("left sleeve", 40), ("right sleeve", 41))
        ): "40 stitches for left sleeve and 41 stitches for right sleeve.",
        about_piece.TellHeld(held=(("sleeve", 40), ("holder", 41))): "40 stitches for sleeve and 41 stitches on a holder.",
        about_piece.TellCastOn(section="body", stitches=120, is_cast_on=True): "120 stitches, cast on for body.",
        about_piece.TellCastOn(section="body", stitches=90, is_cast_on=False): "90 stitches, taken up for body.",
        about_piece.TellCastOn(section="body", stitches=None, is_cast_on=False): "Nothing is on the needles yet.",
        about_piece.TellWidth(stitches=120, width_mm=547, flat=False): "About 54.5 cm around by the gauge, 120 stitches.",
        about_piece.TellWidth(
            stitches=60, width_mm=None, flat=True
        ): "60 stitches; the file gives no gauge to tell by.",
        about_piece.TellShareDone(stitches=0.372, rounds=3, of=6): "37 percent of the stitches; 3 of 6 rounds are done.",
        about_piece.TellSection(
            section="body", done=1, of=4, flat=False, seconds_left=7200, measured=True
        ): "Body: 1 of 4 rounds done. About 2 hours for the rest.",
        about_piece.TellSection(
            section="sleeve", done=0, of=2, flat=True, seconds_left=240, measured=False
        ): "Sleeve: 2 rows to knit. About 4 minutes for the rest, at a usual pace.",
        about_piece.TellSection(section="body", done=4, of=4, flat=False, seconds_left=0, measured=True): "Body is done.",
        about_piece.TellNotes(section="body", here=(), last=None): "Nothing is noted yet.",
        about_piece.TellNotes(
            section="sleeve", here=(), last=NoteKept(index=1, text="larger needle.")
        ): "Nothing is noted in sleeve. In body, round 2: larger needle.",
        about_piece.TellNotes(
            section="body", here=(NoteKept(index=1, text="one"), NoteKept(index=2, text="two")), last=None
        ): "Round 2: one. Round 3: two.",
        about_piece.TellPartLength(
            section="sleeve", rounds=132, flat=False, length_mm=431
        ): "Sleeve: about 43 cm by the gauge, 132 rounds.",
        about_piece.TellPartLength(
            section="sleeve", rounds=2, flat=True, length_mm=None
        ): "Sleeve: 2 rows; the file gives no gauge to tell by.",
    }
    assert {tell_effect(effect, GARMENT): said for effect, said in told.items()} == {said: said for said in told.values()}
    assert {type(each) for each in told} == set(LINES)
