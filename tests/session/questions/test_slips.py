from __future__ import annotations

from textwrap import indent

from stepper.session import cues
from stepper.session.effects import Refuse
from stepper.session.machine import Session
from stepper.session.questions.slips import Harm, TellMarkersLost, TellWayOut, TellWorkedTwice
from stepper.session.questions.topics import Topic
from stepper.session.state import Knitting, Position, State
from tests.agreed_sitting import plan_of
from tests.plans import plan
from tests.playbook import AT
from tests.tables import each_row

FILE = """\
title: Reed cowl
sizes: one
knit: {size: one}
yarn:
  MC: {name: reed}
  A: {name: sand}
gauge:
  stockinette: {needle: 4 mm, stitches: 20, rounds: 28}
charts:
  speck:
    key: {".": MC, a: A}
    rows: |
      a...
      ..a.
sections:
  - name: cowl
    work: |
      Cast on 40 sts. Work flat.
      Work 2 rows in stockinette.
      Join in the round.
      Knit 3 rounds.
      Increase evenly to 48 sts.
      Purl 1 round.
      Chart speck.
      *K1, p1; rep from * to end.
      *P1, k1; rep from * to end.
      Change to 5 mm needles.
      *P1, k1; rep from * to end.
      *P1, k1; rep from * to end.
      Knit 1 round.
      Bind off.
"""
# The rounds: 1 cast on, 2 and 3 rows, 4 to 6 knit, 7 increases, 8 purl, 9 and 10 the chart, 11 and 12 moss, 13 and
# 14 rib on other needles, 15 knit, 16 bound off.


def _harm(done: int, stitch: int = 0) -> Harm:
    cowl = plan_of(FILE, None)
    assert cowl is not None
    session = Session(
        cowl, State(seq=1, knitting=Knitting(place=Position(index=done, stitch=stitch)), last_cue_at=AT)
    )
    (told,) = session.consider(cues.About(at=AT, topic=Topic.WORKED_TWICE)).effects
    assert isinstance(told, TellWorkedTwice)
    assert told.index == done - 1
    return told.harm


@each_row(
    ("done", "harm"),
    [
        (1, Harm.COUNT),
        (3, Harm.SIDE),
        (4, Harm.NONE),
        (5, Harm.NONE),
        (6, Harm.LONGER),
        (7, Harm.COUNT),
        (8, Harm.SHOWS),
        (9, Harm.SHOWS),
        (10, Harm.SHOWS),
        (11, Harm.SHOWS),
        (12, Harm.SHOWS),
        (13, Harm.NONE),
        (14, Harm.LONGER),
        (15, Harm.LONGER),
        (16, Harm.COUNT),
    ],
)
def test_what_a_round_more_does_depends_on_the_round(done: int, harm: Harm) -> None:
    """Plain rounds are a length, and the next of them is done with it; a pattern shows it, shaping has another count, and
    in rows the sides change places. To be told to undo a harmless round costs half an hour, and to be told to leave a
    row that turns the work spoils what follows. Round 12 is worked like 13, but on other needles. Common practice."""
    assert _harm(done) is harm


def test_amid_the_next_round_it_is_not_taken_for_done() -> None:
    """What she has of the round in hand would be lost from her place."""
    assert _harm(4, stitch=10) is Harm.LONGER


def test_before_the_first_round_is_done_there_is_none() -> None:
    """The very beginning has nothing behind it."""
    cowl = plan_of(FILE, None)
    assert cowl is not None
    session = Session(cowl, State(seq=1, last_cue_at=AT))
    (told,) = session.consider(cues.About(at=AT, topic=Topic.WORKED_TWICE)).effects
    assert isinstance(told, Refuse)


def test_markers_are_told_as_they_stand_on_the_needles() -> None:
    """Behind a round with increases between them they stand wider apart than before it; and in the middle of
    such a round only those that she has passed are where the round puts them."""
    lines = "Cast on 37 sts.\nJoin in the round.\nRnd 1: K18, pm, k1, pm, k18.\nRnd 2: K18, sm, m1l, k1, m1r, sm, k18.\nKnit 1 rnd."
    made = plan_of(FILE[: FILE.index("      Cast on 40")] + indent(lines, "      ") + "\n", None)
    assert made is not None

    def told(index: int, stitch: int) -> tuple[int, tuple[int, ...]]:
        at = State(seq=1, knitting=Knitting(place=Position(index=index, stitch=stitch)), last_cue_at=AT)
        (effect,) = Session(made, at).consider(cues.About(at=AT, topic=Topic.MARKER_LOST)).effects
        assert isinstance(effect, TellMarkersLost)
        return effect.worked, effect.after

    assert told(2, 0) == (0, (18, 19))
    assert told(2, 19) == (19, (18,))
    assert told(3, 0) == (0, (18, 21))


def test_the_way_out_is_told_wherever_she_stands() -> None:
    """A yarn ends when it ends."""
    made = plan(("hand", ["co37", "k37"]))
    for topic in (Topic.WRONG_YARN, Topic.LONG_FLOAT, Topic.YARN_OUT):
        effects = Session(made, State(seq=1, last_cue_at=AT)).consider(cues.About(at=AT, topic=topic)).effects
        assert effects == (TellWayOut(topic=topic),)
