from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta
from threading import Thread

import pytest

from stepper.errors import SurroundingsError
from stepper.mouth.fakes import RecordingSpeaker
from stepper.mouth.ports import Tone
from stepper.plan.model import OpenKind, Proposed
from stepper.session.clock_cues import Beat
from stepper.session.cues import (
    Again,
    AtStitch,
    Count,
    Cue,
    Enough,
    Look,
    Next,
    No,
    ReadAlong,
    View,
    Where,
    Yes,
)
from stepper.session.events import Event
from stepper.session.machine import Session
from stepper.session.read_along import cut_into_runs
from stepper.session.state import Knitting, OpenAnswer, OpenWork, Position, State
from stepper.sitting.conductor import Conductor
from stepper.sitting.ports import ConductorPorts, ConductorSettings, GoesOn
from tests.plans import final_increase
from tests.playbook import AT
from tests.session.open_row.evening import ROW


class Log:
    """Remembers in which order things were kept, shown and said."""

    def __init__(self) -> None:
        self.lines: list[str] = []
        self.full = False
        self.remarks: tuple[str, ...] = ()

    def keep(self, events: tuple[Event, ...], state: State) -> tuple[str, ...]:
        """Keep events, unless the disk is full."""
        if self.full:
            raise SurroundingsError("The disk is full.")
        self.lines += [f"kept {type(event).__name__} {state.seq}" for event in events]
        return self.remarks

    def show(self, line: str) -> None:
        """Show a line."""
        self.lines.append(f"shown {line}")


class LoggingSpeaker(RecordingSpeaker):
    """A speaker that writes into the same log."""

    def __init__(self, log: Log) -> None:
        super().__init__()
        self._log = log

    def say(self, text: str, slower: bool = False) -> None:
        """Say a line."""
        super().say(text, slower)
        self._log.lines.append(f"said {text}")


def _conductor(log: Log, speaker: RecordingSpeaker | None = None) -> Conductor:
    return Conductor(
        Session(final_increase()),
        ConductorPorts(keep=log.keep, show=log.show, clock=lambda: AT, speaker=speaker),
    )


def test_what_is_heard_is_answered_with_a_tone_and_what_is_no_cue_with_nothing_else() -> None:
    """She hears that she was heard; a film that is taken for her is never talked to."""
    log, speaker = Log(), RecordingSpeaker()
    conductor = _conductor(log, speaker)
    conductor.offer_words("next step", heard=True)
    conductor.offer_words("count is many", heard=True)
    conductor.offer_words("", heard=True)
    conductor.offer_words("stop there")
    conductor.drain()
    assert speaker.sounds == [Tone.HEARD, Tone.NOT_UNDERSTOOD, Tone.NOT_UNDERSTOOD]
    assert not any("many" in line for line in speaker.texts)
    assert speaker.texts[-1].startswith("Not understood")  # typed, so she waits for an answer
    assert speaker.silenced == 2


def test_what_is_to_be_told_of_the_journal_is_shown_and_said_before_the_answer() -> None:
    """A journal that was deleted and put back is hers to know, with the step kept first as ever."""
    log = Log()
    log.remarks = ("cuff.journal was put back.",)
    conductor = _conductor(log, LoggingSpeaker(log))
    conductor.offer(Next(at=AT))
    conductor.drain()

    assert log.lines[:3] == [
        "kept Advanced 1",
        "shown cuff.journal was put back.",
        "said cuff.journal was put back.",
    ]
    assert log.lines[3].startswith("shown ")
    assert conductor.session.state.seq == 1


def test_a_beat_is_asked_for_of_whoever_has_a_clock_and_interrupts_nobody() -> None:
    """Reading along goes on by itself, and a line that is being said is not cut off by the clock."""
    asked: list[tuple[float, Cue]] = []
    log, speaker = Log(), RecordingSpeaker()
    conductor = Conductor(
        Session(final_increase()),
        ConductorPorts(
            keep=log.keep,
            show=log.show,
            clock=lambda: AT,
            speaker=speaker,
            schedule=lambda seconds, cue: asked.append((seconds, cue)),
        ),
    )
    while len(cut_into_runs(conductor.session.plan.rounds[conductor.session.state.place.index])) < 2:
        conductor.offer(Next())
        conductor.drain()
    conductor.offer(ReadAlong())
    conductor.drain()
    ((seconds, beat),) = [(after, cue) for after, cue in asked if isinstance(cue, Beat)]
    assert seconds > 0
    before, silenced = len(speaker.texts), speaker.silenced
    conductor.offer(beat)
    conductor.drain()
    assert len(speaker.texts) == before + 1
    assert speaker.silenced == silenced
    assert sum(isinstance(cue, Beat) for _, cue in asked) == 2


class Alarm:
    """A clock that goes on only when it is told to, and the alarms set on it."""

    def __init__(self) -> None:
        self.minutes = 0.0
        self.set: list[tuple[float, Cue]] = []

    def now(self) -> str:
        """Return the time."""
        return (datetime.fromisoformat(AT) + timedelta(minutes=self.minutes)).isoformat()

    def later(self, seconds: float, cue: Cue) -> None:
        """Set an alarm."""
        self.set.append((seconds, cue))


def _watched(alarm: Alarm, log: Log, **more: float) -> Conductor:
    conductor = Conductor(
        Session(final_increase()),
        ConductorPorts(keep=log.keep, show=log.show, clock=alarm.now, schedule=alarm.later),
        ConductorSettings(**more),
    )
    conductor.begin("f")
    return conductor


def test_in_a_long_silence_the_place_is_said_once() -> None:
    """Five minutes after the 225 stitches in hand should be worked; a question asked meanwhile begins it anew,
    and one alarm is set at a time. No test waits: the clock is told what time it is."""
    alarm, log = Alarm(), Log()
    conductor = _watched(alarm, log)
    ((seconds, silence),) = alarm.set
    assert seconds == 300 + 225 / 30 * 60
    alarm.minutes = 2
    conductor.offer(Where())
    conductor.drain()
    assert len(alarm.set) == 1
    log.lines.clear()
    alarm.minutes = seconds / 60
    conductor.offer(silence)
    conductor.drain()
    assert log.lines == []
    assert alarm.set[1][0] == 120
    alarm.minutes += 2
    conductor.offer(alarm.set[1][1])
    conductor.drain()
    assert log.lines == ["shown You begin neckband round 1."]
    assert len(alarm.set) == 2, "not again before she asks something"
    conductor.offer(AtStitch(stitch=20))
    conductor.drain()
    assert len(alarm.set) == 3


def test_in_the_round_the_stitch_is_said() -> None:
    """What she asks at that very moment comes first, and says the place itself."""
    alarm, log = Alarm(), Log()
    conductor = _watched(alarm, log)
    conductor.offer(AtStitch(stitch=205))
    conductor.drain()
    assert [round(seconds) for seconds, _ in alarm.set] == [750, 340], (
        "less is left to work, so it rings sooner"
    )
    log.lines.clear()
    alarm.minutes = 60
    for _, silence in alarm.set:
        conductor.offer(silence)
        conductor.drain()
    assert log.lines == ["shown You are 205 stitches past the beginning of the round."]
    log.lines.clear()
    conductor.offer(Where())
    conductor.drain()
    assert log.lines[0] == "shown You are 205 stitches past the beginning of the round."
    assert log.lines[-1].endswith("cast on twenty.")


def test_silence_is_let_be_by_one_setting() -> None:
    """Zero is never."""
    alarm = Alarm()
    _watched(alarm, Log(), silence_s=0)
    assert alarm.set == []


def test_tones_are_off_by_one_setting() -> None:
    """Who does not want them hears the answers alone."""
    speaker = RecordingSpeaker()
    conductor = Conductor(
        Session(final_increase()),
        ConductorPorts(keep=Log().keep, show=Log().show, clock=lambda: AT, speaker=speaker),
        ConductorSettings(sounds=False),
    )
    conductor.offer_words("next step", heard=True)
    conductor.drain()
    assert (speaker.sounds, len(speaker.texts)) == ([], 1)


@pytest.mark.parametrize("rest", [True, False])
def test_the_reminder_to_rest_is_off_by_one_setting(rest: bool) -> None:
    """With it the hands are remembered at the end of a round; without it nothing of it is said or shown."""
    log = Log()
    times = iter(f"2025-03-03T{20 + each // 20}:{each * 3 % 60:02}:00+01:00" for each in range(30))
    conductor = Conductor(
        Session(final_increase()),
        ConductorPorts(keep=log.keep, show=log.show, clock=lambda: next(times)),
        ConductorSettings(rest=rest),
    )
    conductor.begin("a")
    for _ in range(20):
        conductor.offer(Next())
    conductor.drain()
    reminders = [line for line in log.lines if "rest your hands" in line]
    assert len(reminders) == (1 if rest else 0)
    assert all("Pain is for a doctor" in line for line in reminders)


def test_the_next_line_is_expected_before_it_is_asked_for() -> None:
    """A voice that takes long to make a line has it ready: the first line expected is the one said next."""
    speaker = RecordingSpeaker()
    conductor = _conductor(Log(), speaker)
    for _ in range(3):
        conductor.offer(Next())
        conductor.drain()
        expected = [line.text for line in speaker.expected]
        conductor.offer(Next())
        before = len(speaker.texts)
        conductor.drain()
        now_said = list(speaker.texts[before:])
        assert expected[: len(now_said)] == now_said


def test_a_page_is_shown_where_there_is_a_screen_and_told_where_there_is_none() -> None:
    """With a screen the words turn it and nothing is said; without one they say why nothing comes."""
    log, turned = Log(), list[View]()
    plain = _conductor(log)
    plain.offer(Look(view=View.CHART))
    plain.drain()
    assert log.lines == ["shown That is shown on the full screen only."]
    full = Conductor(
        Session(final_increase()),
        ConductorPorts(keep=log.keep, show=log.show, clock=lambda: AT, turn=turned.append),
    )
    full.offer(Look(view=View.CHART))
    full.drain()
    assert turned == [View.CHART]
    assert len(log.lines) == 1


def test_the_ears_are_told_whether_a_film_is_on_and_so_is_she() -> None:
    """By words as by any other door; nothing is kept, since it is nothing of the garment."""
    log, turned = Log(), list[bool]()
    conductor = Conductor(
        Session(final_increase()),
        ConductorPorts(keep=log.keep, show=log.show, clock=lambda: AT, film=turned.append),
    )
    for words in ("film on", "the film is over"):
        conductor.offer_words(words)
        conductor.drain()
    assert turned == [True, False]
    assert [line.split(":")[0] for line in log.lines] == ["shown The film is on", "shown The film is off"]


def test_a_film_begins_with_a_tone_and_the_help_then_names_the_surest_words() -> None:
    """She hears that it is on, when it is turned on and when the sitting begins with it; and what to say over it."""
    log, speaker = Log(), RecordingSpeaker()
    conductor = _conductor(log, speaker)
    for words in ("film on", "what can i say", "help with counts", "film off", "what can i say"):
        conductor.offer_words(words)
        conductor.drain()
    assert speaker.sounds.count(Tone.FILM) == 1
    helped = [line for line in log.lines if "two four six" in line]
    assert [("stepper: forward; backward" in line) for line in helped] == [True, False]
    assert not conductor.film_is_on
    ports = ConductorPorts(keep=log.keep, show=log.show, clock=lambda: AT, speaker=speaker)
    begun = Conductor(Session(final_increase()), ports, ConductorSettings(film=True))
    begun.begin("f")
    assert begun.film_is_on
    assert speaker.sounds.count(Tone.FILM) == 2


@pytest.mark.parametrize("listens", [True, False])
def test_the_help_with_listening_tells_how_to_answer_while_others_talk(listens: bool) -> None:
    """Where nothing listens there is nobody to answer."""
    log = Log()
    ports = ConductorPorts(keep=log.keep, show=log.show, clock=lambda: AT, listens=lambda: listens)
    conductor = Conductor(Session(final_increase()), ports, ConductorSettings(address_word="marigold"))
    conductor.offer_words("help with listening")
    conductor.drain()
    assert any("marigold, yes" in line for line in log.lines) is listens


def test_nothing_claims_to_listen_without_ears() -> None:
    """ "Listening" where nothing listens would have her talk to nobody."""
    log = Log()
    ports = ConductorPorts(keep=log.keep, show=log.show, clock=lambda: AT, listens=lambda: False)
    conductor = Conductor(Session(final_increase()), ports)
    for words in ("stop listening", "start listening", "film on"):
        conductor.offer_words(words)
        conductor.drain()
    assert not [line for line in log.lines if "listening" in line.lower() or "I listen" in line]
    assert sum("nothing listens now" in line.lower() for line in log.lines) == 3


def test_what_one_word_may_answer_is_told_while_the_question_is_open() -> None:
    """A count off by one that was heard is asked back: yes, no or the number. Then nothing is open."""
    log, told = Log(), list[frozenset[type[Cue]]]()
    ports = ConductorPorts(keep=log.keep, show=log.show, clock=lambda: AT, asked=told.append)
    conductor = Conductor(Session(final_increase()), ports)
    for words in ("next step", "two two four", "no"):
        conductor.offer_words(words, heard=True)
        conductor.drain()
    assert told == [frozenset(), frozenset({Yes, No, Count}), frozenset()]


@pytest.mark.parametrize(
    ("said", "answer"),
    [
        ("rip back", "How many rounds?"),
        ("i did that round twice", "Then the count may be off: 225"),
        ("wrong yarn", "No count shows that."),
        ("not now", "Nothing waits for an answer"),
        ("i don't know", "Nothing waits for an answer"),
    ],
)
def test_what_is_heard_of_a_slip_tells_and_asks_and_moves_nothing(said: str, answer: str) -> None:
    """A film may have said it: nothing is kept, and the place stays."""
    log = Log()
    session = Session(final_increase())
    conductor = Conductor(session, ConductorPorts(keep=log.keep, show=log.show, clock=lambda: AT))
    conductor.offer_words("finished the round", heard=True)
    conductor.drain()
    place = session.state.place
    log.lines.clear()
    conductor.offer_words(said, heard=True)
    conductor.drain()
    assert session.state.place == place
    assert not [line for line in log.lines if line.startswith("kept")]
    assert log.lines[0].startswith(f"shown {answer}")


def test_a_film_that_answers_with_a_number_moves_nothing_until_it_is_said_again_or_confirmed() -> None:
    """What is read back is dropped by a no, and by anything else she asks; another number is read back anew."""

    def kept_after(*heard: str) -> list[str]:
        log = Log()
        conductor = Conductor(
            Session(final_increase()), ConductorPorts(keep=log.keep, show=log.show, clock=lambda: AT)
        )
        for words in ("next step", "count is 224", "count again"):
            conductor.offer_words(words)
        conductor.drain()
        log.lines.clear()
        for words in heard:
            conductor.offer_words(words, heard=True)
        conductor.drain()
        return [line.split()[1] for line in log.lines if line.startswith("kept")]

    assert kept_after("six") == ["Doubted"]
    assert kept_after("six", "two two one") == ["Doubted", "Doubted"]
    assert kept_after("six", "no") == ["Doubted", "Doubted"]
    assert kept_after("six", "where am i") == ["Doubted"]
    assert kept_after("six", "yes") == ["Doubted", "Counted"]
    assert kept_after("six", "six") == ["Doubted", "Counted"]


def test_a_bare_number_is_a_count_heard_or_typed() -> None:
    """The ears pass one on only behind the address word or in answer to a question; on the keyboard she means one."""
    log = Log()
    conductor = _conductor(log)
    conductor.offer_words("12")
    conductor.drain()
    assert log.lines == ["shown Nothing is on the needles yet; this round makes 225."]
    for words in ("two two five", "no"):
        conductor.offer_words(words)
        conductor.drain()
        assert any("225" in line for line in log.lines)
    log.lines.clear()
    conductor.offer_words("two two five", heard=True)
    conductor.drain()
    assert log.lines[-1].startswith("shown 225 is what the whole round leaves.")
    assert any("kept Doubted" in line for line in log.lines)


def test_what_happened_is_kept_before_it_is_shown_and_said() -> None:
    """Disk before voice: what the knitter was told can never be lost."""
    log = Log()
    conductor = _conductor(log, LoggingSpeaker(log))
    conductor.begin("f")
    log.lines.clear()

    conductor.offer(Next())
    conductor.drain()

    assert log.lines == [
        "kept Advanced 2",
        "shown Change to 3.75 mm needles. Round 2: knit all two hundred twenty five.",
        "said Change to three point seven five millimetres needles. "
        "Round two: knit all two hundred twenty five.",
    ]


def test_what_cannot_be_kept_is_neither_told_nor_done() -> None:
    """A full disk stops the session with its sentence; it does not pretend."""
    log = Log()
    conductor = _conductor(log)
    log.full = True
    conductor.offer(Next())

    with pytest.raises(SurroundingsError, match="disk is full"):
        conductor.drain()

    assert log.lines == []
    assert conductor.session.state.place.index == 0


def test_a_question_is_answered_without_keeping_anything() -> None:
    """Asking changes nothing, so nothing is written."""
    log = Log()
    conductor = _conductor(log)
    conductor.offer(Where())
    conductor.drain()

    assert log.lines == ["shown Neckband, round 1 of 2, at its beginning. No stitches on the needles."]


def test_a_cue_silences_what_was_being_said() -> None:
    """She need not hear the end of what she has understood."""
    speaker = RecordingSpeaker()
    conductor = _conductor(Log(), speaker)
    conductor.offer(Again())
    conductor.drain()

    assert speaker.silenced == 1
    assert [line.slower for line in speaker.said] == [True]


def test_while_the_ears_are_closed_the_film_is_not_answered() -> None:
    """What is heard is passed over without a word; what is typed, or comes from a key or a pedal, is done."""
    log, speaker = Log(), RecordingSpeaker()
    conductor = _conductor(log, speaker)
    conductor.offer_words("stop listening", heard=True)
    conductor.drain()
    before = (list(log.lines), list(speaker.said))

    conductor.offer_words("next step", heard=True)
    conductor.offer_words("what is the next step inspector", heard=True)
    conductor.drain()
    assert (log.lines, speaker.said) == before

    place = conductor.session.state.place
    conductor.offer_words("next step")
    conductor.drain()
    assert conductor.session.state.place != place
    assert conductor.session.state.asleep

    conductor.offer_words("start listening", heard=True)
    conductor.drain()
    assert "Listening." in speaker.texts[-2:]


def test_words_that_are_no_cue_are_answered() -> None:
    """With the nearest wordings, and nothing else happens."""
    log = Log()
    conductor = _conductor(log)
    conductor.offer_words("film o")
    conductor.drain()

    assert log.lines == ['shown Not understood: "film o". Did you mean: film on or film off?']


def test_what_is_typed_nearly_right_is_done_and_what_is_heard_so_only_answered() -> None:
    """A slip of a finger is plain on the screen and can be undone; a step that a film half said is not wanted."""
    log = Log()
    conductor = _conductor(log)
    conductor.offer_words("nxt step")
    conductor.offer_words("nxt step", heard=True)
    conductor.offer_words("where am", heard=True)
    conductor.drain()

    shown = [line for line in log.lines if line.startswith("shown")]
    assert "Round 2" in shown[0]
    assert shown[1] == 'shown Not understood: "nxt step". Did you mean: next step?'
    assert shown[2].startswith("shown Neckband, round 2 of 2")


def test_cues_from_several_threads_are_worked_off_one_by_one() -> None:
    """Keys, ears and typed lines all offer; none is lost and none worked twice."""
    log = Log()
    conductor = _conductor(log)
    hands = [Thread(target=lambda: [conductor.offer(Next()) for _ in range(5)]) for _ in range(4)]
    for hand in hands:
        hand.start()
    for hand in hands:
        hand.join()
    conductor.offer(Enough())

    conductor.run()

    assert conductor.closed
    assert [line for line in log.lines if line.startswith("kept")] == [
        *(f"kept Advanced {seq}" for seq in range(1, 21)),
        "kept Closed 21",
    ]


def test_after_the_end_nothing_more_is_worked_off() -> None:
    """What was still in the queue when she said good night is not done."""
    log = Log()
    conductor = _conductor(log)
    conductor.offer(Enough())
    conductor.offer(Next())
    conductor.drain()

    assert [line for line in log.lines if line.startswith("kept")] == ["kept Closed 1"]


def test_her_own_wordings_reach_the_session() -> None:
    """What she set as her own is a cue."""
    log = Log()
    conductor = Conductor(
        Session(final_increase()),
        ConductorPorts(keep=log.keep, show=log.show, clock=lambda: AT),
        ConductorSettings(own_wordings={"onward": "next step"}),
    )
    conductor.offer_words("Onward!")
    conductor.drain()

    assert log.lines[0] == "kept Advanced 1"


def test_a_number_carries_how_well_it_was_heard_and_a_typed_one_does_not() -> None:
    """What the ears doubt is read back; what she typed herself is not."""
    log = Log()
    conductor = _conductor(log)
    conductor.offer_words("next step")
    conductor.offer_words("count is 225", heard=True, score=0.2)
    conductor.drain()
    assert conductor.session.state.knitting.doubt is not None
    conductor.offer_words("count is 225", heard=True, score=0.9)
    conductor.drain()
    assert conductor.session.state.knitting.verified is not None
    conductor.offer_words("count is 224")
    conductor.drain()
    assert conductor.session.state.knitting.doubt is None
    assert conductor.session.state.knitting.fault is not None


def test_a_row_that_is_not_read_is_settled_and_the_knitting_goes_on() -> None:
    """The answer is on the disk before the file is written, and the place after it before anything is said."""
    log, asked = Log(), list[OpenAnswer]()
    whole = final_increase()
    short = replace(whole, rounds=whole.rounds[:4], stretches=(), open=ROW)

    def settle(answer: OpenAnswer) -> GoesOn | str:
        asked.append(answer)
        log.lines.append("written")
        return "It cannot be kept so." if len(asked) == 1 else GoesOn(plan=whole, fingerprint="new")

    state = State(seq=9, knitting=Knitting(place=Position(index=4), open=OpenWork(rows=1, stitches=246)))
    conductor = Conductor(
        Session(short, state), ConductorPorts(keep=log.keep, show=log.show, clock=lambda: AT, settle=settle)
    )
    conductor.offer(Yes(at=AT))
    conductor.drain()
    assert log.lines == ["kept RowAnswered 10", "written", "shown It cannot be kept so."]
    assert conductor.session.plan is short
    conductor.offer(Yes(at=AT))
    conductor.drain()
    assert log.lines[3:7] == ["kept RowAnswered 11", "written", "kept PlanChanged 12", "shown Kept so."]
    assert asked == [OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=246)] * 2
    assert conductor.session.plan is whole
    assert conductor.session.state.place == Position(index=4)


def test_without_anyone_who_writes_the_file_that_is_said() -> None:
    """A page that only shows the sitting, a test: nothing is written and nothing moves."""
    log = Log()
    short = replace(final_increase(), open=replace(ROW, proposed=Proposed(kind=OpenKind.IDLE)))
    state = State(seq=9, knitting=Knitting(place=Position(index=len(short.rounds))))
    conductor = Conductor(
        Session(short, state), ConductorPorts(keep=log.keep, show=log.show, clock=lambda: AT)
    )
    conductor.offer(Yes(at=AT))
    conductor.drain()
    assert log.lines[-1] == "shown Nothing is written here: stepper settle asks about it."
