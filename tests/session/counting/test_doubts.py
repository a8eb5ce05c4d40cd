from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.plan.model import Stretch
from stepper.session import cues
from stepper.session.codec import decode_event, decode_state, encode_event, encode_state
from stepper.session.counting.doubts import HEARD_WELL, AskBack, ask_back
from stepper.session.cues import Cue
from stepper.session.events import Event
from stepper.session.evolve import evolve_all
from stepper.session.machine import Session
from stepper.session.state import Doubt, DoubtKind, Knitting, Position, Seen, State, Verified
from tests.plans import final_increase, plan
from tests.playbook import AT, after, tell, transcript

MARKED = plan(
    ("yoke", [("co80", {"markers": (20, 40, 60)}), ("k80", {"markers": (20, 40, 60)}), "k80", "k80"])
)
WELL, BADLY = HEARD_WELL, HEARD_WELL - 0.1


def _at(index: int, stitch: int = 0) -> Session:
    verified = Verified(place=Position(index=1), stitches=80)
    knitting = Knitting(place=Position(index=index, stitch=stitch), verified=verified)
    return Session(MARKED, State(seq=1, knitting=knitting))


def _told(session: Session, cue: Cue) -> str:
    return " ".join(tell(session, session.consider(replace(cue, at=AT))))


def test_a_wrongly_heard_count_moves_nothing() -> None:
    """The film said a number; no search begins, no fault is learned from, and a no leaves everything as it was."""
    session = _at(2)
    before = session.state.knitting
    said = _told(session, cues.Count(stitches=146, heard=1.0))
    assert said == "146? That is 66 more than 80. Say: yes it is, no it is not, or the number again."
    assert replace(session.state.knitting, doubt=None) == before
    assert _told(session, cues.No(heard=1.0)) == "Nothing is changed. Say the number again, digit by digit."
    assert session.state.knitting == before


@pytest.mark.parametrize("again", [cues.Yes(), cues.Count(stitches=79, heard=BADLY), cues.Count(stitches=79)])
def test_a_yes_or_the_same_number_once_more_is_believed(again: Cue) -> None:
    """Heard the same twice, or typed, it is what she counted."""
    session = _at(2)
    _told(session, cues.Count(stitches=79, heard=WELL))
    said = _told(session, again)
    assert said.startswith("79: 1 fewer than 80.")
    assert session.state.knitting.doubt is None
    assert session.state.knitting.fault is not None


def test_another_number_is_read_back_in_its_turn() -> None:
    """Seventy was misheard for seventy nine; the second number is the one that counts."""
    session = _at(2)
    _told(session, cues.Count(stitches=70, heard=WELL))
    said = _told(session, cues.Count(stitches=79, heard=WELL))
    assert said == "79? That is 1 fewer than 80. Say: yes it is, no it is not, or the number digit by digit."
    assert _told(session, cues.Count(stitches=80, heard=WELL)) == "80, as it should be."
    assert session.state.knitting.doubt is None


def test_what_confirms_is_taken_at_once_only_if_it_was_heard_well() -> None:
    """Else the film confirms a count that she never made. What is typed is not read back at all."""
    assert _told(_at(2), cues.Count(stitches=80, heard=WELL)) == "80, as it should be."
    assert _told(_at(2), cues.Count(stitches=80, heard=BADLY)).startswith("80? Say:")
    assert _told(_at(2), cues.Count(stitches=79)).startswith("79: 1 fewer than 80.")


def test_a_length_that_would_cut_rounds_waits_for_a_yes() -> None:
    """"Measures three inches", misheard, cut 64 rounds at once."""
    knitting = Knitting(place=Position(index=14))
    session = Session(final_increase(), State(seq=1, knitting=knitting))
    rounds = len(session.plan.rounds)
    said = _told(session, cues.Length(length_mm=90.0, heard=1.0))
    assert said.startswith("9 cm? That cuts 3 rounds, 1 left.")
    assert len(session.plan.rounds) == rounds
    _told(session, cues.Yes())
    assert len(session.plan.rounds) < rounds
    as_planned = Session(final_increase(), State(seq=1, knitting=knitting))
    assert "?" not in _told(as_planned, cues.Length(length_mm=60.0, heard=1.0))


def test_a_part_that_is_off_and_stitches_left_over_are_read_back() -> None:
    """Each would lead the search to another place."""
    session = after(_at(2), "count is 79", "no loop")
    assert _told(session, cues.SectionCount(stitches=19, heard=1.0)).startswith("19? That is 1 fewer than 20.")
    assert session.state.knitting.fault is not None
    assert session.state.knitting.fault.answers == ()
    _told(session, cues.Yes())
    assert session.state.knitting.fault.answers != ()
    over = _at(2)
    assert _told(over, cues.Saw(seen=Seen.LEFT, number=4, sign=-1, heard=1.0)).startswith("4 short?")
    assert over.state.knitting.fault is None
    _told(over, cues.Yes())
    assert over.state.knitting.fault is not None


def test_a_typed_part_that_the_count_of_all_does_not_account_for_is_read_back() -> None:
    """One stitch is missing in all; twelve too many in twenty is a slip of hers, and would end in ripping back."""
    session = after(_at(2), "count is 79", "no loop")
    assert _told(session, cues.SectionCount(stitches=32)).startswith("32? That is 12 more than 20.")
    assert session.state.knitting.fault is not None
    assert session.state.knitting.fault.answers == ()
    taken = _told(session, cues.SectionCount(stitches=19))
    assert "?" not in taken
    assert session.state.knitting.fault.answers != ()


def test_a_count_of_the_end_asks_whether_the_round_is_finished() -> None:
    """Two hundred forty six is right at the end of the increases and wrong in the middle of them."""
    knitting = Knitting(place=Position(index=3, stitch=102))
    session = Session(final_increase(), State(seq=1, knitting=knitting))
    assert _told(session, cues.Count(stitches=246)).startswith("246 is what the whole round leaves. Is it finished?")
    (count,) = session.consider(cues.No(at=AT)).events[-1:]
    assert (count.worked, count.stitches) == (0, 246), "nothing was knitted by saying no"  # type: ignore[attr-defined]
    finished = Session(final_increase(), session.state)
    said = _told(finished, cues.Yes())
    assert said.startswith("246, as it should be at the end.")
    assert "Count now" not in said  # she has just said it
    assert finished.state.place == Position(index=4)
    assert finished.state.knitting.verified == Verified(place=Position(index=4), stitches=246)
    assert "12 more than 234" in _told(session, cues.No())
    assert session.state.place == Position(index=3, stitch=102)
    assert session.state.knitting.fault is not None


def test_whatever_else_she_asks_lets_the_question_lapse() -> None:
    """A question is never in the way of the knitting; what only asks leaves it open and asks it again."""
    session = _at(2)
    _told(session, cues.Count(stitches=146, heard=1.0))
    assert transcript(session, "> say again").splitlines()[1].startswith("146?")
    after(session, "next step")
    assert session.state.knitting.doubt is None
    assert session.state.place == Position(index=3)


def test_what_is_asked_back_survives_a_kill() -> None:
    """The journal alone leads to the same question, and it is asked when she comes back; a snapshot holds it, too."""
    session = _at(2)
    kept: list[Event] = []
    start = session.state
    for cue in (cues.Count(at=AT, stitches=79), cues.Saw(at=AT, seen=Seen.LOOP, number=0), cues.SectionCount(at=AT, stitches=19, heard=1.0)):
        considered = session.consider(cue)
        kept += considered.events
        session.adopt(considered)
    read = [decode_event(*encode_event(event)) for event in kept]
    assert evolve_all(start, read) == session.state
    assert session.state.knitting.doubt == Doubt(kind=DoubtKind.PART, place=Position(index=2), number=19)
    assert decode_state(encode_state(session.state)) == session.state
    resumed = Session(MARKED, session.state)
    assert any(line.startswith("19? That is 1 fewer than 20.") for line in tell(resumed, resumed.consider_opening(AT, "x")))
    loop = after(_at(2), "count is 79")
    back = Session(MARKED, loop.state)
    assert any("loose loop" in line for line in tell(back, back.consider_opening(AT, "x")))


def test_yes_and_no_mean_nothing_where_nothing_is_asked() -> None:
    """They are said in every film; nothing is even answered aloud."""
    session = _at(2)
    before = session.state
    for cue in (cues.Yes(at=AT, heard=1.0), cues.No(at=AT, heard=1.0)):
        session.adopt(session.consider(cue))
    assert session.state == before


@pytest.mark.parametrize(
    "cue", [cues.Count(stitches=9, heard=WELL), cues.Saw(seen=Seen.LEFT, number=14, heard=WELL)]
)
def test_digit_by_digit_is_advised_for_counts_of_several_figures_alone(cue: Cue) -> None:
    """Nine has one digit, and only a count can be said in digits."""
    session = _at(2)
    _told(session, cue)
    assert _told(session, cues.No(heard=1.0)) == "Nothing is changed. Say the number again."


def test_stitches_left_over_are_taken_with_the_sign_they_were_said_with() -> None:
    """Four short is not four over: the first looks for what was left out, the second for what was made twice."""
    for sign in (1, -1):
        session = _at(2)
        _told(session, cues.Saw(seen=Seen.LEFT, number=4, sign=sign, heard=BADLY))
        _told(session, cues.Yes())
        assert session.state.knitting.fault is not None
        assert [each.number for each in session.state.knitting.fault.sights] == [4 * sign]


def test_nothing_left_over_and_what_is_no_number_are_not_read_back() -> None:
    """ "No stitches left" and "the loop is there" have nothing that could have been heard as another number."""
    session = after(_at(2), "count is 79")
    for cue in (cues.Saw(seen=Seen.LEFT, number=0, heard=BADLY), cues.Saw(seen=Seen.LOOP, number=1, heard=BADLY)):
        _told(session, cue)
        assert session.state.knitting.doubt is None, cue
    assert session.state.knitting.fault is not None
    assert {each.seen for each in session.state.knitting.fault.sights} == {Seen.LEFT, Seen.LOOP}


def test_of_a_number_of_one_figure_after_one_of_two_none_was_misheard() -> None:
    """To ask for nine digit by digit would only puzzle her."""
    session = _at(2)
    _told(session, cues.Count(stitches=70, heard=WELL))
    assert _told(session, cues.Count(stitches=9, heard=WELL)).endswith("or the number again.")


@pytest.mark.parametrize("length_mm", [40.0, 9000.0])
def test_a_length_asked_back_of_which_nothing_follows_any_more_is_still_read_back(length_mm: float) -> None:
    """The line with the length may have gone from the file overnight, or have another gauge: the number is asked back
    as it was said, with no rounds to add or to cut."""
    place = Position(index=2)
    doubt = Doubt(kind=DoubtKind.LENGTH, place=place, length_mm=length_mm)
    state = State(seq=1, knitting=Knitting(place=place, doubt=doubt))
    assert list(ask_back(MARKED, state)) == [AskBack(doubt=doubt)]
    stretch = Stretch(first=1, last=3, origin=1, target_mm=50, rounds_per_10cm=30)
    measured = list(ask_back(replace(MARKED, stretches=(stretch,)), state))
    assert (measured == [AskBack(doubt=doubt)]) is (length_mm > 1000), "one round of nine metres is a slip"


def test_a_search_can_be_left_and_taken_up_again() -> None:
    """She wants to knit, not to look; what was counted and seen comes back when leaving is undone, and how often
    counts are asked for stays as it was."""
    session = after(_at(2), "my count is 79", "no loop")
    before = session.state.knitting
    assert before.fault is not None
    assert before.fault.sights
    left = "Then I leave it for now, and go by the pattern. Count again when you can."
    assert transcript(session, "> stop asking") == f"> stop asking\n{left}"
    assert session.state.knitting == replace(before, fault=None)
    assert "leaving the search" in transcript(session, "> undo that")
    assert session.state.knitting == before


def test_what_she_cannot_tell_stays_open() -> None:
    """Not to know is neither yes nor no: nothing is kept, and the question stays."""
    for said in (("my count is 79",), ("my count is 79", "no loop")):
        session = after(_at(2), *said)
        before = session.state
        assert "Then it stays open." in transcript(session, "> i do not know")
        assert session.state == before


def test_a_live_loop_is_not_left_hanging() -> None:
    """It runs down while she knits on; once it is held, the search is over."""
    session = after(_at(2), "i dropped a stitch")
    before = session.state
    for said in ("not now", "stop asking"):
        assert "put a pin through it" in transcript(session, f"> {said}")
        assert session.state == before
    transcript(session, "> it is caught")
    assert session.state.knitting.fault is None


def test_a_number_read_back_is_left_before_the_search_is() -> None:
    """One thing at a time: the last that was asked."""
    session = after(_at(2), "my count is 79")
    before = session.state.knitting
    _told(session, cues.Count(stitches=146, heard=1.0))
    assert session.state.knitting.doubt is not None
    transcript(session, "> not now")
    assert session.state.knitting == before
    assert before.fault is not None


@pytest.mark.parametrize("said", ["not now", "i do not know"])
def test_nothing_is_left_where_nothing_is_asked(said: str) -> None:
    """She is told how to be asked less, and the evening does not end."""
    session = _at(2)
    before = session.state
    answer = "Nothing waits for an answer: go on. To be asked for no counts, say: never ask."
    assert transcript(session, f"> {said}") == f"> {said}\n{answer}"
    assert session.state == before
