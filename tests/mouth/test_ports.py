"""What every speaker promises, kept by the fake, by silence, and by the real ones in a room with sound."""

from __future__ import annotations

import threading
import time
from collections.abc import Callable, Iterator

import pytest

from stepper.mouth.fakes import RecordingSpeaker
from stepper.mouth.open_speaker import open_speaker
from stepper.mouth.ports import Speaker
from stepper.mouth.settings import Engine, SpeechSettings
from tests.waiting import PATIENCE_S, least_of

LINE = "Knit to two stitches before the marker, knit two together, slip marker."


def _real(engine: Engine) -> Callable[[], Speaker]:
    def make() -> Speaker:
        speaker, remark = open_speaker(SpeechSettings(engine=engine))
        if engine == "pyttsx3" and remark is not None:
            pytest.skip(remark)
        assert remark is None, remark
        return speaker

    return make


_AUDIBLE = {
    "fake": lambda: RecordingSpeaker(seconds_per_word=0.4),
    "espeak": _real("espeak"),
    "pyttsx3": _real("pyttsx3"),
}


_NEEDS_SOUND = pytest.mark.sound


@pytest.fixture(
    params=[
        "fake",
        pytest.param("espeak", marks=_NEEDS_SOUND),
        pytest.param("pyttsx3", marks=_NEEDS_SOUND),
    ]
)
def make_speaker(request: pytest.FixtureRequest) -> Callable[[], Speaker]:
    """Return how each kind of speaker is made that can be heard, or remembers what would be."""
    if request.param != "fake":
        request.getfixturevalue("room")
    return _AUDIBLE[request.param]


@pytest.fixture
def speaker(make_speaker: Callable[[], Speaker]) -> Iterator[Speaker]:
    """A speaker of each kind."""
    made = make_speaker()
    yield made
    made.close()


def test_say_returns_at_once(speaker: Speaker) -> None:
    """The session must not stand still while a line is spoken."""

    def said_s() -> float:
        speaker.silence()
        began = time.monotonic()
        speaker.say(LINE)
        took_s = time.monotonic() - began
        assert speaker.speaking
        return took_s

    assert least_of(said_s, 0.05) < 0.05


def test_wait_ends_when_the_line_is_over(speaker: Speaker) -> None:
    """Whoever waits is told when it is quiet, and not before twelve words can have been said."""

    def heard_s() -> float:
        began = time.monotonic()
        speaker.say(LINE)
        assert speaker.wait(PATIENCE_S)
        took_s = time.monotonic() - began
        assert took_s > 3.5
        assert not speaker.speaking
        return took_s

    assert least_of(heard_s, 9, tries=4) < 9


def test_wait_gives_up_after_its_timeout(speaker: Speaker) -> None:
    """A wait is bounded, and says that it is not quiet yet."""

    def waited_s() -> float:
        speaker.silence()
        speaker.say(LINE)
        began = time.monotonic()
        assert not speaker.wait(0.2)
        took_s = time.monotonic() - began
        assert took_s > 0.15
        return took_s

    assert least_of(waited_s, 0.6) < 0.6


def test_silence_ends_the_line_and_those_that_wait(speaker: Speaker) -> None:
    """A key during a line leaves nothing to be said."""

    def silent_s() -> float:
        for _ in range(3):
            speaker.say(LINE)
        time.sleep(0.3)
        began = time.monotonic()
        speaker.silence()
        took_s = time.monotonic() - began
        assert not speaker.speaking
        assert speaker.wait(0.0)
        return took_s

    assert least_of(silent_s, 0.1) < 0.1


def test_a_line_after_silence_is_said(speaker: Speaker) -> None:
    """Silence is for what was said before it, not for what comes after."""
    speaker.say(LINE)
    time.sleep(0.3)
    speaker.silence()
    speaker.say("Round two.")
    assert speaker.speaking
    assert speaker.wait(PATIENCE_S)


@pytest.mark.parametrize("nothing", ["", "   ", "\n\t"])
def test_nothing_is_not_a_line(speaker: Speaker, nothing: str) -> None:
    """An empty line takes no time."""
    speaker.say(nothing)
    assert not speaker.speaking
    assert speaker.wait(0.0)


def test_silence_and_wait_are_harmless_when_quiet(speaker: Speaker) -> None:
    """Every key falls silent first, whether or not something is said."""
    speaker.silence()
    speaker.silence()
    assert speaker.wait(0.0)


def test_after_close_nothing_is_said_and_nothing_raises(make_speaker: Callable[[], Speaker]) -> None:
    """Closing is final, however often, and quick in the middle of a line."""

    def closed_s() -> float:
        speaker = make_speaker()
        speaker.say(LINE)
        began = time.monotonic()
        speaker.close()
        took_s = time.monotonic() - began
        speaker.close()
        speaker.say(LINE)
        speaker.silence()
        assert not speaker.speaking
        assert speaker.wait(0.0)
        return took_s

    assert least_of(closed_s, 3) < 3


def test_many_threads_may_call_at_once(speaker: Speaker) -> None:
    """Keys, the clock and the ears live on threads of their own."""
    faults: list[BaseException] = []

    def call() -> None:
        try:
            for _ in range(10):
                speaker.say("One.")
                speaker.silence()
                speaker.wait(0.001)
        except BaseException as fault:
            faults.append(fault)

    threads = [threading.Thread(target=call) for _ in range(4)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join(PATIENCE_S)
    assert not faults
    speaker.silence()
    assert speaker.wait(PATIENCE_S)
