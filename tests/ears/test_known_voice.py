from __future__ import annotations

from pathlib import Path

import pytest

from stepper.ears.known_voice import (
    KnowingRecogniser,
    KnownVoice,
    enrol,
    keep_voice,
    kept_voice,
    mean_of,
    pieces_of,
)
from stepper.ears.ports import Heard, Place
from stepper.ears.speaker_embedding import Vector
from stepper.errors import SurroundingsError

HER, OTHER, HOARSE = b"\1\0", b"\2\0", b"\3\0"


class ByFirstSample:
    """An encoder that knows speakers by their first sample, and strays a little with each piece."""

    def __init__(self) -> None:
        self.asked = 0

    def vector(self, sound: bytes) -> Vector:
        """Return the direction of who speaks, not quite."""
        self.asked += 1
        ways = {HER: (1.0, 0.1 * (self.asked % 3)), HOARSE: (0.2, 1.0)}
        return mean_of([ways.get(sound[:2], (-0.2, 1.0))])


class Parrot:
    """A recogniser that hears "next step" in anything loud."""

    def __init__(self) -> None:
        self.closed = False

    def recognise(self, segment: bytes) -> Heard | None:
        """Hear it."""
        return Heard(text="next step", score=1.0) if any(segment) else None

    def close(self) -> None:
        """Remember it."""
        self.closed = True


def knowing(recogniser: object) -> KnowingRecogniser:
    """Return a recogniser that knows her."""
    encoder = ByFirstSample()
    voice = enrol(HER * 16_000 * 15, encoder).voice  # type: ignore[arg-type]
    return KnowingRecogniser(recogniser, voice, encoder)  # type: ignore[arg-type]


def test_what_is_hers_is_told_and_what_is_surely_anothers_is_left_out() -> None:
    """The film says "next step" too; with a cold she is not sure to be herself, and is heard as if nobody were
    known."""
    parrot = Parrot()
    known = knowing(parrot)
    assert known.recognise(HER * 16_000) == Heard(text="next step", score=1.0, hers=True)
    assert known.recognise(HOARSE * 16_000) == Heard(text="next step", score=1.0)
    assert known.recognise(OTHER * 16_000) is None
    assert [known.is_hers(each * 16_000) for each in (HER, HOARSE, OTHER)] == [True, False, False]
    known.close()
    assert parrot.closed


def test_only_where_a_cue_is_heard_it_is_asked_who_said_it() -> None:
    """A film is recognised all evening, and hardly any of it is a cue."""
    encoder = ByFirstSample()
    known = KnowingRecogniser(Parrot(), KnownVoice(vector=(1.0, 0.0)), encoder)  # type: ignore[arg-type]
    assert known.recognise(bytes(32_000)) is None
    assert encoder.asked == 0


def test_of_one_stretch_it_is_asked_once_who_speaks() -> None:
    """What is found amid a film is asked about before it is recognised, and again when it is."""
    encoder = ByFirstSample()
    known = KnowingRecogniser(Parrot(), KnownVoice(vector=(1.0, 0.0)), encoder)  # type: ignore[arg-type]
    assert known.is_hers(HER * 16_000)
    assert known.recognise(HER * 16_000) == Heard(text="next step", score=1.0, hers=True)
    assert encoder.asked == 1
    assert not known.is_hers(OTHER * 16_000)
    assert encoder.asked == 2


def test_what_is_said_behind_the_name_counts_whoever_says_it() -> None:
    """Who is hoarse beyond knowing, or somebody who helps her, says the name; that name alone is passed on too."""

    class Named(Parrot):
        def recognise(self, segment: bytes) -> Heard | None:
            cue = Heard(text="next step", score=1.0, addressed=True)
            return cue if len(segment) > 16_000 else Heard(text="", score=0.0, goes_on=True)

    known = knowing(Named())
    assert known.recognise(OTHER * 16_000) == Heard(text="next step", score=1.0, addressed=True)
    assert known.recognise(OTHER * 8000) == Heard(text="", score=0.0, goes_on=True)


def test_how_surely_she_is_known_is_told() -> None:
    """Ten pieces of fifteen seconds, each laid beside the others."""
    enrolment = enrol(HER * 16_000 * 15, ByFirstSample())  # type: ignore[arg-type]
    assert (len(enrolment.own), enrolment.sure, enrolment.refused) == (10, 10, 0)


def test_too_little_speech_is_a_sentence() -> None:
    """Five seconds are not enough to set a threshold on."""
    with pytest.raises(SurroundingsError, match="too little speech"):
        enrol(HER * 16_000 * 5, ByFirstSample())  # type: ignore[arg-type]


def test_pieces_are_as_long_as_a_cue_and_leave_the_rest_out() -> None:
    """1.5 s at 16 kHz and 16 bit are 48,000 bytes."""
    assert [len(piece) for piece in pieces_of(bytes(100_000))] == [48_000, 48_000]


def test_what_is_kept_comes_back_and_what_is_broken_is_named(tmp_path: Path) -> None:
    """No sound is in the file; a damaged one is a sentence with what to do."""
    path = tmp_path / "deep" / "voice.json"
    assert kept_voice(path) is None
    voice = KnownVoice(vector=mean_of([tuple(float(at) for at in range(96))]))
    keep_voice(voice, path)
    assert kept_voice(path) == voice
    for broken in ("{", '{"vector": [0.6, 0.8], "threshold": 0.7}'):  # the second as another network made it
        path.write_text(broken)
        with pytest.raises(SurroundingsError, match="stepper voice enrol"):
            kept_voice(path)


def test_a_count_that_may_go_on_is_no_exception() -> None:
    """Somebody else's "count is forty" does not count, though more might follow."""

    class Open(Parrot):
        def recognise(self, segment: bytes) -> Heard | None:
            return Heard(text="count is forty", score=0.9, goes_on=True)

    known = knowing(Open())
    assert known.recognise(OTHER * 16_000) is None
    assert known.recognise(HER * 16_000) is not None


def test_the_name_amid_other_sound_is_looked_for_where_the_recogniser_can() -> None:
    """With a voice enrolled the program must not be harder to reach through a film."""

    class Finding(Parrot):
        def find(self, sound: bytes) -> Place | None:
            return Place(start_s=0.5, end_s=float(len(sound)), may_go_on=False)

    assert knowing(Finding()).find(bytes(4)) == Place(start_s=0.5, end_s=4.0, may_go_on=False)
    assert knowing(Parrot()).find(bytes(4)) is None


def test_what_is_known_early_is_hers_too() -> None:
    """Somebody else's "next step" does not get through by being short; without foresight nothing is known early."""

    class Early(Parrot):
        def recognise_early(self, segment: bytes) -> Heard | None:
            return Heard(text="next step", score=0.9) if segment else None

        def goes_on(self, segment: bytes, heard: Heard) -> bool:
            return len(segment) > len(heard.text)

    known = knowing(Early())
    assert known.recognise_early(HER * 16_000) == Heard(text="next step", score=0.9, hers=True)
    assert known.recognise_early(OTHER * 16_000) is None
    assert known.recognise_early(b"") is None
    assert known.goes_on(bytes(100), Heard(text="next step", score=0.9))
