from __future__ import annotations

from dataclasses import replace

from stepper.plan.under_way.lengthen import LengthCorrection
from stepper.session.counting.checks import stretch_to_measure, yarn_called
from stepper.session.cues import Count, Length, Note, OffBy, Weight
from stepper.session.machine import Session
from stepper.session.state import Knitting, Position, State
from tests.plan.test_compile import plan_of
from tests.plans import final_increase, plan, with_stretch
from tests.playbook import AT, after, check, opened, transcript
from tests.project.samples import project


def _at(index: int, stitch: int = 0) -> Session:
    return Session(final_increase(), State(seq=1, knitting=Knitting(place=Position(index=index, stitch=stitch))))


def test_a_count_is_compared_with_here_and_with_the_end_of_the_round() -> None:
    """In a shaped round either may be meant; a wrong count is told plainly and nothing is lost."""
    session = _at(3, stitch=102)

    check(
        session,
        """
        > count is two hundred thirty four
        234, as it should be.
        > count is two hundred forty six
        246 is what the whole round leaves. Is it finished? Say: yes it is, or: no it is not.
        > i count 248
        248: 14 more than 234.
        Count once more: a marker every 58; 60 behind the third. Say: count is, and the number.
        > i have 233 stitches
        233: 1 fewer than 234.
        Is there a loose loop below the needles? Say: I see a loop, or: no loop.
        """,
    )
    assert session.state.place == Position(index=3, stitch=102)


def test_a_count_in_a_plain_round_has_one_right_answer() -> None:
    """Where nothing is shaped the end of the round need not be mentioned."""
    check(
        _at(8),
        "> count is 156\n156, as it should be.\n> count is 158\n158: 2 more than 156.\n"
        "In parts: count after the twentieth repeat to the end: 27 expected. Say: there are, and the number.",
    )


def test_before_the_cast_on_a_wrong_count_starts_no_search() -> None:
    """There is nothing to look for on an empty needle; what the cast-on is to make is what she wants to hear."""
    check(_at(0), "> count is 228\nNothing is on the needles yet; this round makes 225.")


def test_after_the_last_round_nothing_is_on_the_needles() -> None:
    """A count when all is bound off is compared with none."""
    check(_at(23), "> count is zero\n0, as it should be.")


def test_a_measurement_is_asked_for_when_three_rounds_are_left() -> None:
    """Near enough to the target to know, early enough to change course."""
    check(
        _at(14),
        """
        > next step
        Measure now: 10 cm to reach.
        Round 8: knit all one hundred fifty six.
        """,
    )


def test_a_measurement_corrects_the_rounds_left() -> None:
    """Seven rounds are 7.7 cm long: 9.1 rounds to 10 cm, so nine in all, two left. By the rule of three."""
    session = _at(15)

    check(
        session,
        """
        > measures seven point seven centimetres
        7.7 cm: 9.1 rounds to 10 cm. 2 rounds left, 1 fewer than planned.
        > next step
        Round 9: knit all one hundred fifty six.
        > next step
        Count now: 156 expected, 17 rounds without a count.
        Round 10: knit two, purl two, thirty nine times.
        """,
    )
    assert session.plan.rounds[-1].of == 14
    assert session.state.knitting.corrections[0] == LengthCorrection(stretch=0, rounds=9, rounds_per_10cm=700 / 77)


def test_a_piece_long_enough_ends_there() -> None:
    """Not one round more than needed; what comes next is said at once."""
    check(
        _at(15),
        """
        > measures 10.4 cm
        10.4 cm: 6.7 rounds to 10 cm. Long enough, this part ends here.
        Body, round 8 of 12: knit two, purl two, thirty nine times.
        """,
    )


def test_a_piece_too_long_says_by_how_much() -> None:
    """"Long enough" at two centimetres too many leaves her to find it out at the bind-off. Ripped rounds come back into the
    plan as rounds to knit, so that she is told to measure again. 12 cm are 9 rounds: 2 cm are one and a half of them."""
    check(
        _at(17),
        """
        > measures 12 cm
        12 cm: 7.5 rounds to 10 cm. 2 cm past 10 cm, about 2 rounds: leave it, or rip them and measure again.
            This part ends here.
        Body, round 10 of 14: knit two, purl two, thirty nine times.
        > go back two rounds
        Body, round 8 of 14: knit all one hundred fifty six.
        > measures 10 cm
        10 cm: 7 rounds to 10 cm. Long enough, this part ends here.
        Body, round 8 of 12: knit two, purl two, thirty nine times.
        """,
    )


def test_a_piece_long_enough_in_the_middle_of_a_round_ends_after_it() -> None:
    """A round begun is a round finished."""
    check(
        _at(15, stitch=20),
        """
        > measures 10.4 cm
        10.4 cm: 6.7 rounds to 10 cm. Long enough, finish this round, then this part is done.
        > next step
        Round 9: knit two, purl two, thirty nine times.
        """,
    )


def test_a_piece_found_short_at_its_end_goes_on() -> None:
    """She measures when all the rounds are done, and it is too short: more rounds, not a refusal."""
    check(
        _at(18),
        """
        > measures eight centimetres
        8 cm: 12.5 rounds to 10 cm. 3 rounds left, 3 more than planned.
        Body, round 11 of 18: knit all one hundred fifty six.
        """,
    )


def test_a_measurement_far_from_the_gauge_is_doubted_aloud() -> None:
    """A number misheard must be noticed at once; it is one cue to take it back."""
    check(
        _at(15),
        """
        > measures seventy centimetres
        70 cm: 1 round to 10 cm. That is far from 10 rounds to 10 cm; if it is wrong, say undo that.
            Long enough, this part ends here.
        Body, round 8 of 12: knit two, purl two, thirty nine times.
        > undo that
        Taken back: the measurement.
        Body, round 8 of 15: knit all one hundred fifty six.
        """,
    )


def test_a_length_where_nothing_is_worked_to_one_is_kept() -> None:
    """Any measurement is worth keeping, also at the very beginning of a stretch."""
    kept = "Nothing here is worked to a length."
    check(_at(3), f"> measures 12 in\n30.5 cm, noted. {kept}")
    check(_at(3), "> measures zero cm\nA length is more than nothing.")
    check(_at(8), "> measures 2 cm\n2 cm, noted. Too early for a gauge.")


def test_a_measurement_belongs_to_the_stretch_it_was_taken_in() -> None:
    """At the first round of a rib, the tape lies on the body; one round later it lies on the rib."""
    garment = with_stretch(final_increase(), last=12)
    rib = garment.stretches[0].__class__(first=13, last=17, origin=13, target_mm=50.0, rounds_per_10cm=10.0)
    both = garment.__class__(title="x", rounds=garment.rounds, stretches=(*garment.stretches, rib))

    assert [stretch_to_measure(both, Position(index=at)) for at in (8, 9, 13, 14, 18, 19)] == [
        None,
        0,
        0,
        1,
        1,
        None,
    ]


def test_yarns_are_called_by_name_or_key() -> None:
    """She says pine, the chart says A; an unknown name is answered with those there are."""
    check(
        _at(8),
        """
        > pine weighs forty two and a half grams
        42.5 g of pine left, noted.
        > weigh a 40
        40 g of pine left, noted.
        > coal weighs 4 grams
        No yarn here is called coal; say chalk or pine or ember.
        """,
    )


def test_a_note_is_kept_as_it_was_written() -> None:
    """A note is for her own eyes: case and signs stay."""
    check(
        _at(8),
        "> make a note Cuff K2, tight!\nNoted: Cuff K2, tight!\n> make a note\nA note needs some words.",
    )


def test_measurements_in_inches_are_said_in_inches() -> None:
    """A pattern in inches is told in inches: 7 rounds over 2.8 in are 10 rounds to 4 in."""
    inches = final_increase().__class__(
        title="x", rounds=final_increase().rounds, stretches=final_increase().stretches, units="in"
    )
    session = Session(inches, State(seq=1, knitting=Knitting(place=Position(index=15))))

    check(session, "> measures two point eight\n2.8 in: 10 rounds to 4 in. 3 rounds left, as planned.")


def test_a_bare_garment_measures_too() -> None:
    """A plan without a round to its name keeps what it is told."""
    bare = plan()

    assert after(opened(bare), "measures 3 cm").state.undo[-1].kind == "Measured"


def test_a_length_that_cannot_be_is_not_taken() -> None:
    """A slip of the tongue would make the garment ten thousand rounds long, or end it here."""
    session = _at(14)
    for words in ("measures 0.1 cm", "measures 900 cm"):
        assert "Measure again." in transcript(session, f"> {words}")
    assert session.state.place == Position(index=14, stitch=0)


def test_a_count_that_cannot_be_is_refused() -> None:
    """More than twice what there should be was misheard, and so was less than nothing; just twice may be a slip of hers.
    In round 9 of the plan 156 are expected."""
    session = _at(8)
    for stitches, kept in ((-1, False), (0, True), (312, True), (313, False)):
        events = session.consider(Count(at=AT, stitches=stitches)).events
        assert bool(events) is kept, stitches


def test_a_length_belongs_to_the_stretch_in_hand_or_the_one_just_ended() -> None:
    """Of a stretch from the ninth to the eighteenth round: nothing to measure before one of it is done, and none once
    the next round after it is begun."""
    garment = final_increase()
    found = {
        (index, stitch): stretch_to_measure(garment, Position(index=index, stitch=stitch))
        for index, stitch in ((7, 0), (8, 0), (9, 0), (17, 5), (18, 0), (18, 1), (19, 0))
    }
    assert found == {(7, 0): None, (8, 0): None, (9, 0): 0, (17, 5): 0, (18, 0): 0, (18, 1): None, (19, 0): None}


def test_a_stretch_without_a_round_has_nothing_to_be_measured() -> None:
    """Cut down to nothing it ends before it begins: no round is worked in it, and none is a gauge."""
    (stretch,) = final_increase().stretches
    gone = replace(final_increase(), stretches=(replace(stretch, first=9, last=8, origin=9),))
    assert stretch_to_measure(gone, Position(index=9)) is None
    assert stretch_to_measure(gone, Position(index=10)) is None


def test_a_length_far_beyond_any_gauge_is_a_slip_of_the_tongue() -> None:
    """Seven rounds at 10 to 10 cm are 70 mm; by a factor of twenty either way it is kept, beyond it is not. By hand:
    200 and 0.5 rounds to 10 cm are 3.5 mm and 1,400 mm."""
    for length_mm, kept in ((3.4, False), (3.5, True), (1400.0, True), (1401.0, False), (0.0, False)):
        assert bool(_at(15).consider(Length(at=AT, length_mm=length_mm)).events) is kept, length_mm


def test_a_yarn_is_known_by_its_key_and_its_name_in_any_case() -> None:
    """She says "chalk" or the letter that the page prints; a yarn nobody named is refused with those there are."""
    garment = final_increase()
    assert [yarn_called(garment, name) for name in ("chalk", "MC", "mc", "Chalk", "a", "ember", "sand")] == [
        "MC", "MC", "MC", "MC", "A", "B", None,
    ]  # fmt: skip
    assert _at(8).consider(Weight(at=AT, yarn="MC", grams=0.0)).events
    assert not _at(8).consider(Weight(at=AT, yarn="MC", grams=-1.0)).events
    assert not _at(8).consider(Note(at=AT, text="  ")).events


def test_no_more_stitches_can_be_missing_than_there_are() -> None:
    """156 there should be: all of them may be gone, and one more was misheard; "off by none" is no number at all."""
    session = _at(8)
    assert session.consider(OffBy(at=AT, stitches=156, sign=-1)).events
    for stitches, sign, said in ((157, -1, "There are only 156."), (0, -1, "Say how many."), (0, 1, "Say how many.")):
        refused = session.consider(OffBy(at=AT, stitches=stitches, sign=sign))
        assert not refused.events
        assert [getattr(effect, "sentence", "") for effect in refused.effects] == [said]


def test_a_count_within_a_row_in_own_words_is_not_judged() -> None:
    """Only the counts before and after it are known; a fault told there would send her looking for nothing."""
    garment = plan_of(project("Cast on 20 sts.\nJoin in the round.\nOwn words: twist it. 24 sts.\nKnit 1 round."))
    session = Session(garment, State(seq=1, knitting=Knitting(place=Position(index=1, stitch=10))))
    check(
        session,
        """
        > count is 22
        Within its own words nobody can tell; 24 when all of it is done.
        > next
        Count now: 24 expected, as printed for this row.
        Round 3: knit all twenty four.
        """,
    )


ONLY_LAST_COUNTED = """
Cast on 40 sts.
Join in the round.
Knit 2 rounds.
Note: Twirl the loops.
Own words: by the words above, row 1 of 3, stitches not counted. 40 sts.
Own words: by the words above, row 2 of 3, stitches not counted. 40 sts.
Own words: by the words above, row 3 of 3. 50 sts.
Knit 2 rounds.
"""


def test_where_nobody_knows_the_count_none_is_said_and_none_is_wrong() -> None:
    """Of three rows only the last was counted: 40 would be false behind the others, and 46 no fault."""
    session = opened(plan_of(project(ONLY_LAST_COUNTED)))
    check(
        after(session, "six rounds done", "go back one round"),
        """
        > where am i
        Body, round 6 of 8, at its beginning. Nobody knows how many stitches are on the needles here.
        > how many stitches
        Nobody knows how many stitches are on the needles here. 50 at the end.
        > count is 46
        Among these rows nobody knows the count. 50 are expected after the last of them.
        > next step
        Count now: 50 expected, as printed for this row.
        Round 7: knit all fifty.
        > count is 50
        50, as it should be.
        """,
    )
