from __future__ import annotations

import re
from dataclasses import replace
from datetime import datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.language.effect_words import tell_effect
from stepper.plan.model import Round
from stepper.session import answers, cues, effects
from stepper.session.cues import Cue
from stepper.session.due import round_reached
from stepper.session.machine import Session
from stepper.session.state import Position
from stepper.session.steps import By, cut_into_steps
from tests.fixtures import plan_named
from tests.plans import final_increase, plan
from tests.playbook import AT, check, opened, tell, transcript
from tests.session.any_cue import CUES

GARMENT = final_increase()


@given(st.lists(CUES, max_size=25))
def test_every_answer_is_one_line_of_whole_sentences(said: list[Cue]) -> None:
    """Whatever is said in whatever order, each effect is one line that ends, with nothing left to fill in."""
    session = Session(GARMENT)
    for cue in said:
        considered = session.consider(cue)
        session.adopt(considered)
        for effect in considered.effects:
            line = tell_effect(effect, session.plan)
            if isinstance(effect, (effects.BeatIn, effects.Close)):
                assert not line  # for the conductor alone
                continue
            if isinstance(effect, effects.TellKept) and effect.note is not None:
                continue  # her own words
            if isinstance(effect, (effects.TellEvent, round_reached.Remind)):
                assert "\n" not in line  # her own words again
                continue
            assert re.fullmatch(r"[^\n{}]+[.?]", line), line
            assert "  " not in line


def test_remarks_are_said_once_at_the_beginning_of_the_round() -> None:
    """A change of yarn belongs before the first stitch, and is said again only when the round begins again."""
    garment = plan(
        ("body", ["co20", ("k5 m1 k5 m1 k5 m1 k5", {"remarks": ("break A", "With B.")})])
    )

    check(
        opened(garment),
        """
        > next step
        Count now: 20 expected, before the shaping.
        Break A. With B. Round 2: knit five, make one, knit five, make one.
        > next step
        At stitch 12: knit five, make one, knit five.
        > go back
        Break A. With B. Body, round 2 of 2: knit five, make one, knit five, make one.
        """,
    )


def test_a_repeat_is_named_by_its_number() -> None:
    """By repeat she counts repeats, not stitches."""
    check(
        opened(plan(("rib", ["co9", "k1 (p1 k1)x4"]))),
        """
        > by repeat
        By repeat, in plain rounds.
        Round 1: cast on nine.
        > next step
        Round 2: knit one.
        > next step
        Repeat 1 of 4: purl one, knit one.
        > stitch 4
        Repeat 2 of 4, at stitch 4: knit one.
        > go back
        Rib, round 2 of 2, repeat 2 of 4: purl one, knit one.
        """,
    )


@pytest.mark.parametrize(
    ("effect", "line"),
    [
        (
            answers.TellExpected(now=225, end=246, between=(41, 82, 123)),
            "225 stitches now, 246 at the end. Between the markers at the end: 41, 82, 123.",
        ),
        (
            answers.TellFar(section="body", section_rounds=1, rounds=1, stitches=1),
            "1 round left in body, 1 altogether, 1 stitch.",
        ),
        (
            answers.TellFar(section="body", section_rounds=96, rounds=140, stitches=25_540),
            "96 rounds left in body, 140 altogether, about 26 thousand stitches.",
        ),
        (
            effects.AskCount(expect=246, reason="after the increases"),
            "Count now: 246 expected, after the increases.",
        ),
        (effects.AskLength(target_mm=320.0, section="body"), "Measure now: 32 cm to reach."),
        (
            effects.TellMeasured(
                length_mm=99.0,
                target_mm=100.0,
                rounds_per_10cm=30.3,
                planned_per_10cm=30.0,
                rounds_left=0,
                longer_by=-1,
            ),
            "9.9 cm: 30.3 rounds to 10 cm. Near enough to 10 cm, this part ends here.",
        ),
        (effects.TellUndone(event=None, again=False), "Taken back: that."),
        (effects.TellRecap(done=None, at=AT), "Nothing has been knitted yet."),
        (effects.TellRecap(done=Position(index=2), at=""), "Last done: Neckband, round 2 of 2."),
        (effects.TellTaken(stitches=450, place=Position(index=3)), "Taken as done: up to Yoke, round 1 of 6."),
        (
            effects.TellTaken(stitches=700, place=Position(index=4), changed=(3,)),
            "Taken as done: up to Yoke, round 2 of 6, Final increase, which goes from 225 to 246 stitches.",
        ),
        (
            effects.TellTaken(stitches=900, place=Position(index=5), changed=(3,)),
            "Taken as done: up to Yoke, round 3 of 6, chart cairn round 1; among them round 2, Final increase, from 225 to 246 stitches.",
        ),
        (
            effects.TellTaken(stitches=900, place=Position(index=5), changed=(0, 3)),
            "Taken as done: up to Yoke, round 3 of 6, chart cairn round 1; two rounds among them change the number of stitches.",
        ),
        (effects.Close(), ""),
    ],
)
def test_an_effect_has_its_line(effect: effects.Effect, line: str) -> None:
    """The wording of the rarer answers, as it is heard."""
    assert tell_effect(effect, GARMENT) == line


@pytest.mark.parametrize(
    ("text", "line"),
    [
        ("(k1 m1 k2 m1 k3 m1 k4 m1)x2 k4", "8 increases: gaps from 1 to 5; first in 1 stitch."),
        ("(k6 k2tog)x3", "3 decreases: every gap 6; first in 6 stitches."),
        ("m1 k24", "1 increase; first now."),
        ("(k3 yo k2tog k1)x4", "4 increases and 4 decreases: 4 gaps of 4 and 4 of 0; first in 3 stitches."),
    ],
)
def test_spacing_is_summed_up(text: str, line: str) -> None:
    """Few sizes of gap are counted, many are bounded, one change needs no gaps."""
    garment = plan(("body", ["co24", text]))
    place = Position(index=1)

    assert tell_effect(answers.TellSpacing(place=place, next_index=None), garment) == line


def test_by_repeat_a_repeat_is_taught_once() -> None:
    """Lace from repeat to repeat: the same words thrice are two too many; who was away, or asks, hears them."""
    check(
        opened(plan(("lace", ["co25", "k3 (k3 yo sk2p yo k1)x3 k1"]))),
        """
        > go to round 2
        Taken as done: up to Lace, round 1 of 2.
        Lace, round 2 of 2: knit three.
        > by repeat
        By repeat, in lace and cables.
        Round 2: knit three.
        > next step
        Repeat 1 of 3: knit three, yarn over, slip one knit two together pass over.
        > next step
        At stitch 8: yarn over, knit one.
        > next step
        Repeat 2 of 3: the same again.
        > what comes next
        Next: knit three, yarn over, slip one knit two together pass over, yarn over, knit one.
        > say again
        Repeat 2 of 3: knit three, yarn over, slip one knit two together pass over, yarn over, knit one.
        > next step
        Repeat 3 of 3: the same again.
        > go back
        Lace, round 2 of 2, repeat 2 of 3: knit three, yarn over, slip one knit two together pass over.
        """,
    )


def test_after_a_silence_a_repeat_is_read_out_in_full() -> None:
    """The door bell rang in the second repeat: what "the same" was is no longer in her ear."""
    session = opened(plan(("lace", ["co25", "k3 (k3 yo sk2p yo k1)x3 k1"])))
    transcript(session, "> go to round 2\n> by repeat\n> next step\n> next step\n> next step")
    later = (datetime.fromisoformat(AT) + timedelta(hours=1)).isoformat()
    told = tell(session, session.consider(cues.Next(at=later)))
    assert told[-1] == (
        "Repeat 3 of 3: knit three, yarn over, slip one knit two together pass over, yarn over, knit one."
    )


def test_by_marker_a_raglan_section_is_one_step_also_where_its_place_has_no_room() -> None:
    """A landmark a cue: she is at the marker and need not hear at which stitch that is."""
    made = plan(("yoke", ["co64", "k20 m1r k1 sm k1 m1l k39 m1r k1 sm k2"]))
    check(
        made,
        """
        > go to round 2
        Taken as done: up to Yoke, round 1 of 2.
        Yoke, round 2 of 2: knit twenty, make one right, knit one, slip marker.
        > by marker
        By marker, in rounds with shaping.
        Round 2: knit twenty, make one right, knit one, slip marker.
        > next step
        Knit one, make one left, knit thirty nine, make one right, knit one, slip marker.
        > next step
        At stitch 65: knit two.
        """,
    )


def test_a_long_repeat_is_named_by_how_often_and_read_out_when_asked_for_again() -> None:
    """ "The same again" is short for the ear; "say again" gives what the same was."""
    made = plan(("body", ["co60", "(k1 p2 k2 p2 k1 p2 k2 p2 k1)x4"]))
    check(
        made,
        """
        > next step
        Round 2, repeat 1 of 4: knit one, purl two, knit two, purl two.
        > next step
        At stitch 7: knit one, purl two, knit two, purl two, knit one.
        > next step
        At stitch 15: the same again, three times.
        > say again
        At stitch 15: knit one, purl two, knit two, purl two, knit one, purl two, knit two, purl two, knit one,
            three times.
        """,
    )


def test_floats_are_told_behind_the_stitches_and_once_for_a_chart() -> None:
    """In front of them they would come before the first stitch, at each round of the chart anew."""
    made = plan_named("switchback")
    first, again = (
        [each for each in made.rounds if (each.chart, each.chart_round) == ("trail", 2)][at] for at in (0, 1)
    )

    def told(round_: Round, *, slower: bool = False) -> str:
        part = cut_into_steps(round_, By.ROUND)[0]
        return tell_effect(effects.TellStep(index=round_.index, part=part, lead=effects.Lead.ROUND, slower=slower), made)

    catches = " Catch pine behind stitch 1 of each repeat."
    stitches = "chart trail round 2: three chalk, four pine, three chalk, fifteen times."
    assert told(first).endswith(f"{stitches}{catches}")
    assert told(again).endswith(stitches)
    assert told(again, slower=True).endswith(catches)


def test_a_count_made_again_says_only_what_is_off_before_a_part_is_asked_for() -> None:
    """She has heard what was expected; with the question behind it the whole would be a breath too long."""
    again = effects.TellCounted(counted=128, now=129, end=129, brief=True)
    assert tell_effect(again, GARMENT) == "128: 1 too few."
    assert tell_effect(effects.TellCounted(counted=131, now=129, end=129, brief=False), GARMENT) == "131: 2 more than 129."


def test_own_words_that_end_a_sentence_get_no_second_full_stop() -> None:
    """A page's aside in brackets has its full stop within."""
    made = plan(("hat", ["co20", "k20"]))
    round_ = replace(made.rounds[1], words="Go on in rib. (Try it on.)")
    made = replace(made, rounds=(made.rounds[0], round_))
    part = cut_into_steps(round_, By.ROUND)[0]
    told = tell_effect(effects.TellStep(index=1, part=part, lead=effects.Lead.ROUND), made)
    assert told.endswith("(Try it on.)")
