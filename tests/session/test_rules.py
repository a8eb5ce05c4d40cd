from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

import pytest

from stepper.plan.model import OpenRow, Plan
from stepper.plan.under_way.resuming import PlaceChoice
from stepper.session import control, cues
from stepper.session.changed_plan import plan_question
from stepper.session.decide import decide
from stepper.session.decision import Refusal
from stepper.session.questions.topics import Topic
from stepper.session.rules import RULES, Mode, mode_of
from stepper.session.state import Asking, Knitting, Position, Question, Seen, State
from stepper.session.steps import By
from tests.plans import final_increase
from tests.tables import each_row

GARMENT = final_increase()
CHOICE = PlaceChoice(index=4, stitch=0, section="yoke", number=1, flat=False, label=None, have=9, want=9)
OPEN_ENDED = replace(GARMENT, open=OpenRow(line=40, section="body", flat=False, words="Twirl k2 in loops."))
STATES: Mapping[Mode, State] = {
    Mode.OPEN: State(seq=9, knitting=Knitting(place=Position(index=len(GARMENT.rounds)))),
    Mode.KNITTING: State(seq=9, knitting=Knitting(place=Position(index=4, stitch=7))),
    Mode.FINISHED: State(seq=9, knitting=Knitting(place=Position(index=len(GARMENT.rounds)))),
    Mode.ASKED: State(
        seq=9,
        knitting=Knitting(place=Position(index=4)),
        question=Question(new_fingerprint="b", choices=(CHOICE, replace(CHOICE, index=6, number=3))),
    ),
    Mode.CLOSED: State(seq=9, knitting=Knitting(place=Position(index=4)), closed=True),
}
EXAMPLES: Mapping[type[cues.Cue], cues.Cue] = {
    cues.Count: cues.Count(stitches=246),
    cues.AtStitch: cues.AtStitch(stitch=84),
    cues.Stride: cues.Stride(by=By.REPEAT),
    cues.Length: cues.Length(length_mm=300.0),
    cues.Weight: cues.Weight(yarn="pine", grams=42.0),
    cues.Note: cues.Note(text="tight"),
    cues.RemindMe: cues.RemindMe(rounds=2, text="try it on"),
    cues.GoTo: cues.GoTo(place="body"),
    cues.About: cues.About(topic=Topic.YARN),
    cues.HowFarTo: cues.HowFarTo(place="body"),
    cues.Explain: cues.Explain(text="k2tog"),
    cues.RoundsBack: cues.RoundsBack(rounds=2),
    cues.StitchesBack: cues.StitchesBack(stitches=2),
    cues.YarnDone: cues.YarnDone(yarn="pine"),
    cues.SectionCount: cues.SectionCount(stitches=40),
    cues.MarkerCounts: cues.MarkerCounts(counts=(20, 20)),
    cues.Saw: cues.Saw(seen=Seen.LEFT, number=3),
    cues.FaultIn: cues.FaultIn(round_number=1),
    cues.Choose: cues.Choose(number=1),
    cues.Ask: cues.Ask(asking=Asking.MORE),
    cues.Ten: cues.Ten(stitches=10),
    cues.Film: cues.Film(on=True),
    cues.Look: cues.Look(view=cues.View.CHART),
}


def garment_in(mode: Mode) -> Plan:
    """Return the garment of a state: only where a row is open it is not read to its end."""
    return OPEN_ENDED if mode is Mode.OPEN else GARMENT


def example(cue: type[cues.Cue]) -> cues.Cue:
    """Return a cue of a kind."""
    return replace(EXAMPLES.get(cue, None) or cue(), at="2025-03-03T20:15:00+01:00")


@each_row("mode", Mode)
@each_row("cue", cues.CUES)
def test_every_cue_is_answered_in_every_mode(mode: Mode, cue: type[cues.Cue]) -> None:
    """No cue may ever fall through: it gives events, an answer, or a refusal in one short sentence."""
    decision = decide(garment_in(mode), STATES[mode], example(cue))

    if isinstance(decision, Refusal):
        assert 0 < len(decision.sentence) <= 80
        assert decision.sentence.endswith(".")
    else:
        assert len(decision) <= 1
        assert all(event.at == "2025-03-03T20:15:00+01:00" for event in decision)


def test_the_table_has_no_hole() -> None:
    """Every mode and every kind of cue, and nothing else."""
    assert set(RULES) == {(mode, cue) for mode in Mode for cue in cues.CUES}


@pytest.mark.parametrize("mode", Mode, ids=lambda mode: mode.value)
def test_a_state_is_in_the_mode_it_looks_like(mode: Mode) -> None:
    """The states the table is tested with are in the modes they stand for."""
    assert mode_of(garment_in(mode), STATES[mode]) is mode


@each_row("mode", Mode)
@each_row("cue", [c for c in cues.CUES if c not in (cues.Listen, cues.Wait)])
def test_with_the_ears_closed_keys_and_typed_cues_do_what_they_always_do(mode: Mode, cue: type[cues.Cue]) -> None:
    """Who closes the ears for a telephone call still steps by pedal; a step that counts for nothing loses the place."""
    state, plan = STATES[mode], garment_in(mode)
    assert decide(plan, replace(state, asleep=True), example(cue)) == decide(plan, state, example(cue))


def test_after_the_end_everything_is_refused() -> None:
    """A sitting that was closed stays closed."""
    assert all(isinstance(decide(GARMENT, STATES[Mode.CLOSED], example(cue)), Refusal) for cue in cues.CUES)


def welcome_in(mode: Mode) -> set[type[cues.Cue]]:
    """Return the cues that are not turned away in a mode, whatever they ask."""
    away = (plan_question.not_yet, control.refuse, control.refuse_done)
    return {cue for cue in cues.CUES if RULES[mode, cue] not in away}


def test_each_mode_turns_away_what_makes_no_sense_in_it_and_nothing_else() -> None:
    """While she knits all of them; after the end nothing."""
    assert welcome_in(Mode.KNITTING) == set(cues.CUES)
    assert cues.Next not in welcome_in(Mode.FINISHED)
    assert welcome_in(Mode.CLOSED) == set()
