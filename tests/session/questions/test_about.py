from __future__ import annotations

import pytest

from stepper.session import cues
from stepper.session.effects import Refuse
from stepper.session.machine import Session
from stepper.session.questions.topics import PartTopic, Topic
from stepper.session.state import Knitting, Position, State
from tests.plans import final_increase, plan
from tests.playbook import AT, after, check, opened, tell, transcript
from tests.tables import each_row

GARMENT = final_increase()


@each_row("topic", Topic)
@each_row("index", [0, 4, 12, len(GARMENT.rounds)])
def test_every_question_is_answered_anywhere_and_changes_nothing(topic: Topic, index: int) -> None:
    """In one line that ends; when all is done, too, if only to say so."""
    state = State(seq=5, knitting=Knitting(place=Position(index=index)), last_cue_at=AT)
    session = Session(GARMENT, state)
    considered = session.consider(cues.About(at=AT, topic=topic))

    assert considered.events == ()
    (line,) = tell(session, considered)
    assert line.endswith(".")


def test_questions_in_the_middle_of_a_round_leave_the_place_alone() -> None:
    """The answers by hand: 13 of 21 increases lie behind stitch 100, the division is four rounds on."""
    check(
        GARMENT,
        """
        > go to round 2 of yoke
        Taken as done: up to Yoke, round 1 of 6.
        Yoke, round 2 of 6, Final increase: knit five, make one; then knit eleven, make one, eight times.
        > stitch 100
        At stitch 100: knit one, make one.
        > when is the next increase
        In this round: 13 increases to make, 246 stitches after it.
        > how many increases are left
        13 of the 21 increases of this round are left. It is the last increase round in yoke.
        > when do i divide
        In 4 rounds, round 6, Divide.
        > how far to body
        In 5 rounds, body, round 1.
        > when does the colour change
        Ember in round 3, chart cairn round 1.
        > what is k2tog
        Knit two together: 2 stitches become 1. Leans right.
        > where am i
        Yoke, round 2 of 6, Final increase, at stitch 100 of 246. 233 stitches on the needles.
        """,
    )


def test_several_rounds_are_taken_for_done_and_can_be_taken_back() -> None:
    """She knitted on without a word; what is taken for done is said, and the count that fell due is asked for."""
    check(
        GARMENT,
        """
        > go to round 2 of yoke
        Taken as done: up to Yoke, round 1 of 6.
        Yoke, round 2 of 6, Final increase: knit five, make one; then knit eleven, make one, eight times.
        > three rounds done
        Taken as done: up to Yoke, round 4 of 6, chart cairn round 2.
        Count now: 246 expected, after the increases.
        A lifeline pays here. When it is in, say: lifeline here.
        In the next round you need a holder.
        Round 5, chart cairn round 3: in ember, knit all two hundred forty six.
        > undo that
        Taken back: the place.
        Yoke, round 2 of 6, Final increase: knit five, make one; then knit eleven, make one, eight times.
        > 90 rounds done
        Only 20 are left.
        > go back two rounds
        Change to 3.75 mm needles. Neckband, round 2 of 2: knit all two hundred twenty five.
        > go back nine rounds
        Only 1 lies behind.
        """,
    )


def test_a_round_is_done_when_she_sees_its_colour_finished() -> None:
    """The next round with that yarn, if it is near; a yarn that is not there is refused with those that are."""
    check(
        GARMENT,
        """
        > go to round 4 of yoke
        Taken as done: up to Yoke, round 3 of 6, chart cairn round 1; among them round 2, Final increase, from 225 to 246 stitches.
        Yoke, round 4 of 6, chart cairn round 2: one chalk, four ember, one chalk, forty one times.
        > the ember round is finished
        Round 5, chart cairn round 3: in ember, knit all two hundred forty six.
        > the mauve round is done
        No yarn here is called mauve. There are: chalk, pine, ember.
        > the pine round is done
        No round in pine is near. Say go to round, and its number.
        """,
    )


def test_reminders_come_at_a_place_and_at_a_length_and_can_be_forgotten() -> None:
    """Ten rounds to 10 cm: 5 cm are reached before the body's sixth round."""
    check(
        GARMENT,
        """
        > go to body
        Taken as done: up to Yoke, round 6 of 6, Divide; two rounds among them change the number of stitches.
        Body, round 1 of 15: knit all one hundred fifty six.
        > remind me at 5 cm to try it on
        I will remind you at Body, round 6 of 15: try it on.
        > remind me at 30 cm
        It does not get that long.
        > remind me at the division
        Division does not lie ahead.
        > what are my reminders
        In 5 rounds, round 6: try it on.
        > forget the reminders
        No more reminders.
        > forget the reminders
        There are no reminders.
        """,
    )


@each_row("topic", Topic)
def test_when_all_is_knitted_only_what_lies_behind_can_be_asked(topic: Topic) -> None:
    """What was last done, or twice, altered, noted, and what she asked to be reminded of have an answer; a round that is left has
    none. Where nothing was ever to be knitted, nothing lies behind either."""
    behind = {Topic.REMINDERS, Topic.NOTES, Topic.LAST_STEP, Topic.LAST_ROUND, Topic.ALTERATIONS, Topic.WORKED_TWICE}
    behind |= {Topic.WRONG_YARN, Topic.LONG_FLOAT, Topic.YARN_OUT, Topic.UNREAD, Topic.HELD}
    refused = []
    for garment, index in ((GARMENT, 22), (GARMENT, 23), (plan(), 0)):
        session = Session(
            garment, State(seq=5, knitting=Knitting(place=Position(index=index)), last_cue_at=AT)
        )
        (effect, *_) = session.consider(cues.About(at=AT, topic=topic)).effects
        refused.append(isinstance(effect, Refuse))
    assert refused == [False, topic not in behind, True]


def test_the_next_round_and_the_one_after_it_are_told_apart() -> None:
    """She reads ahead by a round or two, and no further. Each round of the piece has its own first stitches."""
    body = plan(("body", ["co20", "k20", "k1 p19", "k2 p18", "k3 p17", "k4 p16"]))
    session = after(opened(body), "next step", "next step")
    assert transcript(session, "> what is the next round").endswith("Round 4: knit two, purl eighteen.")
    assert transcript(session, "> tell me the round after").endswith("Round 5: knit three, purl seventeen.")


@pytest.mark.parametrize(
    "topic", [PartTopic.STITCHES, PartTopic.NOTES, PartTopic.LINES], ids=lambda topic: topic.value
)
def test_what_is_asked_of_a_part_by_its_name_is_answered_of_that_part(topic: PartTopic) -> None:
    """From the neckband she asks about the body; its stitches by hand: 156 all along until they are bound off."""
    session = Session(GARMENT, State(seq=5, knitting=Knitting(place=Position(index=1)), last_cue_at=AT))
    lines = tell(session, session.consider(cues.HowFarIn(at=AT, place="body", asks=topic)))
    assert lines
    if topic is PartTopic.STITCHES:
        assert "156" in " ".join(lines)
