from __future__ import annotations

import threading
import time
from collections.abc import Iterable, Iterator

import pytest

from stepper.mouth.ports import NoVoiceError
from stepper.mouth.prefetch import KEPT, PrefetchingVoice
from tests.waiting import PATIENCE_S, least_of, wait_until


class SlowVoice:
    """Takes its time over each piece and remembers what it was asked for."""

    rate_hz = 1000

    def __init__(self) -> None:
        self.takes_s = 0.05
        self.goes_on = threading.Event()
        self.goes_on.set()
        self.asked: list[str] = []
        self.made: list[str] = []
        self.at_once = 0
        self.most_at_once = 0
        self.fails = False
        self.closed = False

    def speech(self, text: str, words_per_minute: int) -> bytes:
        """Make it, slowly."""
        self.asked.append(text)
        if self.fails:
            raise NoVoiceError("it is tired")
        self.at_once += 1
        self.most_at_once = max(self.most_at_once, self.at_once)
        time.sleep(self.takes_s)
        assert self.goes_on.wait(PATIENCE_S)
        self.at_once -= 1
        self.made.append(text)
        return text.encode() + words_per_minute.to_bytes(2, "big")

    def expect(self, pieces: Iterable[tuple[str, int]]) -> None:
        """Leave it aside."""

    def close(self) -> None:
        """Remember it."""
        self.closed = True


@pytest.fixture
def slow() -> SlowVoice:
    """A voice that needs a twentieth of a second for anything."""
    return SlowVoice()


@pytest.fixture
def voice(slow: SlowVoice) -> Iterator[PrefetchingVoice]:
    """The same, with what is likely made ahead."""
    made = PrefetchingVoice(slow)
    yield made
    made.close()


def wait_until_made(slow: SlowVoice, text: str) -> None:
    """Wait until a piece is made."""
    wait_until(lambda: text in slow.made, f"{text} was never made")


def wait_until_under_way(slow: SlowVoice, text: str) -> None:
    """Wait until a piece is being made."""
    wait_until(lambda: text in slow.asked, f"{text} was never begun")


def test_what_was_expected_is_there_at_once_and_the_same(voice: PrefetchingVoice, slow: SlowVoice) -> None:
    """The next line begins without the time it takes to make it or what is made meanwhile, and is made only once."""
    plain = slow.speech("next", 150)
    slow.made.clear()
    voice.expect([("next", 150), ("again", 120)])
    wait_until_made(slow, "next")
    slow.goes_on.clear()  # whoever waits for what is made from now on waits for ever
    said = []
    asking = threading.Thread(target=lambda: said.append(voice.speech("next", 150)), daemon=True)
    asking.start()
    asking.join(PATIENCE_S)
    assert said == [plain]
    slow.goes_on.set()
    assert slow.asked.count("next") == 2


def test_what_is_asked_for_goes_in_front_of_what_is_expected(voice: PrefetchingVoice, slow: SlowVoice) -> None:
    """Somebody waits for it: at most the piece under way is made before."""
    tries = iter(range(100))

    def made_before() -> int:
        number = next(tries)
        slow.goes_on.clear()
        voice.expect([(f"likely {number} {each}", 150) for each in range(20)])
        wait_until_under_way(slow, f"likely {number} 0")
        before = len(slow.asked)
        asking = threading.Thread(target=voice.speech, args=(f"now {number}", 150))
        asking.start()
        time.sleep(0.02)
        slow.goes_on.set()
        asking.join(PATIENCE_S)
        return slow.asked.index(f"now {number}") - before

    assert least_of(made_before, 1) == 0


def test_a_stale_expectation_is_dropped(voice: PrefetchingVoice, slow: SlowVoice) -> None:
    """After another cue nobody wants what was likely before it."""
    slow.goes_on.clear()
    voice.expect([(f"old {number}", 150) for number in range(50)])
    wait_until_under_way(slow, "old 0")
    voice.expect([("new", 150)])
    slow.goes_on.set()
    wait_until_made(slow, "new")
    assert slow.asked == ["old 0", "new"]


def test_the_speed_is_part_of_the_piece(voice: PrefetchingVoice) -> None:
    """A line said again slower is another sound."""
    assert voice.speech("one", 150) != voice.speech("one", 120)


def test_the_voice_is_asked_by_one_thread_at_a_time(voice: PrefetchingVoice, slow: SlowVoice) -> None:
    """A worker process answers one question at a time."""
    slow.takes_s = 0.005
    voice.expect([(f"likely {number}", 150) for number in range(20)])
    threads = [threading.Thread(target=voice.speech, args=(f"asked {n}", 150)) for n in range(6)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join(PATIENCE_S)
    assert slow.most_at_once == 1


def test_what_is_kept_is_bounded(voice: PrefetchingVoice, slow: SlowVoice) -> None:
    """However long the evening, memory does not grow; the oldest goes first."""
    slow.takes_s = 0.0
    for number in range(KEPT + 5):
        voice.speech(str(number), 150)
    voice.speech("5", 150)
    voice.speech("0", 150)
    assert slow.asked.count("5") == 1
    assert slow.asked.count("0") == 2


def test_a_voice_that_stops_is_told_to_who_asks_and_closing_ends_it(voice: PrefetchingVoice, slow: SlowVoice) -> None:
    """Making ahead fails in silence; asking does not."""
    slow.fails = True
    voice.expect([("next", 150)])
    with pytest.raises(NoVoiceError, match="tired"):
        voice.speech("next", 150)
    voice.close()
    assert slow.closed
