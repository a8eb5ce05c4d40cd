"""Let her interrupt by voice: hold the program's speech back as soon as somebody speaks over it, and listen.

While the program speaks the ears stay closed, since it would hear itself; what comes in then is cleaned of
its own sound. If somebody near speaks in what is left, its speech is held back (`Speaker.pause`), and the
ears open. Where every cue needs the address word, what she has said so far goes to the ears in front of what
she says next, cleaned: of 39 such cues 28 were understood at once, none as another. Without the word one of
49 was another cue, so there she says it again. Where no cue comes, what was held back is said again, once
through, without being interrupted again; after three times in a row this is given up, since something in the
room is taken for her.

The microphone's own thread only puts blocks into a queue; a thread of its own does the rest.
"""

from __future__ import annotations

import time
from collections import deque
from collections.abc import Callable
from queue import Empty, SimpleQueue
from threading import Lock, Thread
from typing import Protocol

from stepper.devices.played_sound import PlayedSound
from stepper.devices.ports import HEARING_RATE_HZ
from stepper.devices.streams import GAP
from stepper.ears.gate import CHUNK_S
from stepper.ears.listen import measure_level_db
from stepper.ears.over_speech import OverSpeech
from stepper.ears.ports import Canceller
from stepper.records import dataclass

WAIT_S = 3.0
"""How long to wait for a cue after the last sound of somebody near. Unit: s."""
LONGEST_WAIT_S = 8.0
"""How long to wait for one at most, however long somebody talks. Unit: s."""
MOST_IN_VAIN = 3
"""How often in a row speech may be held back for nothing before this is given up."""
HELD_BACK = "I stopped for you, and listen."
GOES_ON = "No cue was understood, so I say it again."
GIVEN_UP = (
    "Something here sounds as if you spoke while I do, so from now on only a key stops me; "
    "it may be the film, or the loudspeaker near the microphone."
)
_CHUNK_BYTES = round(HEARING_RATE_HZ * CHUNK_S) * 2
_BEFORE_S = 0.8
"""How much of what was said before it was noticed goes to the ears."""
_WARM_UP_CHUNKS = 8
_LATE_BLOCKS = 3
"""How many blocks later one is cleaned: a loudspeaker's thread that is late has brought its sound by then."""
_LOOK_S = 0.25
_END_TIMEOUT_S = 1.0


class Holding(Protocol):
    """What speaks, and can be held back; `stepper.mouth.ports.Speaker` is one."""

    @property
    def paused(self) -> bool:
        """Whether lines are held back."""

    def pause(self) -> bool:
        """Hold back what is being said; return whether anything was."""

    def go_on(self) -> None:
        """Say what was held back."""


@dataclass(frozen=True, slots=True, kw_only=True)
class _Block:
    """A block of the microphone, and what the loudspeaker was given meanwhile."""

    number: int
    near: bytes
    far: bytes
    far_rate_hz: int
    is_deaf: bool


class Interrupting:
    """Stands at the microphone's door; holds the speaker back, and lets it go on."""

    def __init__(
        self,
        speaker: Holding,
        played: PlayedSound,
        canceller: Canceller,
        speech: Callable[[bytes], float],
        *,
        tell: Callable[[str], None],
        is_wanted: Callable[[], bool] = lambda: True,
        is_addressed: Callable[[], bool] = lambda: True,
        clock: Callable[[], float] = time.monotonic,
    ) -> None:
        """Start the thread.

        Args:
            speaker: What speaks.
            played: What the loudspeaker is given.
            canceller: Takes that out of what comes in; used by this alone.
            speech: How likely a chunk of 32 ms is speech; used by this alone. Range: 0 to 1.
            tell: Called from a thread with a sentence each time the speaker is held back or goes on, and when
                this is given up.
            is_wanted: Whether speech may be held back now.
            is_addressed: Whether every cue needs the address word now.
            clock: Returns the time now. Unit: s.
        """
        self._speaker, self._played, self._canceller = speaker, played, canceller
        self._speech, self._tell, self._clock = speech, tell, clock
        self._is_wanted, self._is_addressed = is_wanted, is_addressed
        self._waiting: SimpleQueue[_Block | None] = SimpleQueue()
        self._lock = Lock()
        self._number = 0
        self._handed_up_to = 0
        self._holds_door = False
        self._for_ears: list[bytes] = []
        self._over_with = False
        # Of this thread alone:
        self._over = OverSpeech()
        self._late: deque[_Block] = deque()
        self._rest = b""
        self._cleaned: deque[bytes] = deque()
        self._passed_over: deque[bytes] = deque(maxlen=_WARM_UP_CHUNKS)
        self._jumps = 0
        self._since: float | None = None
        self._sound_at = 0.0
        self._spared = False
        self._in_vain = 0
        self._thread = Thread(target=self._work, name="interrupting", daemon=True)
        self._thread.start()

    def door(self, pcm: bytes, is_deaf: bool) -> bytes:
        """Return what of a block the ears get; called by the microphone's own thread."""
        if self._over_with:
            return GAP if is_deaf else pcm
        far = self._played.take(len(pcm) / 2 / HEARING_RATE_HZ)
        with self._lock:
            self._number += 1
            block = _Block(
                number=self._number, near=pcm, far=far, far_rate_hz=self._played.rate_hz, is_deaf=is_deaf
            )
            self._waiting.put(block)
            if not self._holds_door:
                return GAP if is_deaf else pcm
            if is_deaf or self._handed_up_to != self._number - 1:
                return GAP  # this thread still collects what was said until now, this block too
            self._holds_door = False
            before, self._for_ears = b"".join(self._for_ears), []
            return before + pcm

    def understood(self) -> None:
        """Note that a cue was understood: what was just said was hers."""
        self._waiting.put(None)

    def close(self) -> None:
        """Stop, and let the speaker say what is held back."""
        self._over_with = True
        self._waiting.put(None)
        self._thread.join(_END_TIMEOUT_S)
        if self._speaker.paused:
            self._speaker.go_on()

    def _work(self) -> None:
        try:
            self._work_off()
        except Exception as fault:  # nothing here may end the knitting, or leave the speaker held back
            self._over_with = True
            self._open_door()
            if self._speaker.paused:
                self._speaker.go_on()
            self._tell(f"Only a key stops me from now on, since the canceller failed ({fault}).")

    def _work_off(self) -> None:
        while not self._over_with:
            try:
                block = self._waiting.get(timeout=_LOOK_S)
            except Empty:  # a microphone that has gone must not hold the speaker back for good
                self._mind_the_wait()
                continue
            if block is None:
                self._over.leave_out_her_words()
                self._in_vain = 0
                continue
            self._take(block)
            self._mind_the_wait()

    def _take(self, block: _Block) -> None:
        """Take a block; one a little older is cleaned, so that a loudspeaker's thread that is late is in
        time."""
        self._late.append(block)
        late = self._late.popleft() if len(self._late) > _LATE_BLOCKS else None
        if late is not None and late.is_deaf:
            if self._played.jumps != self._jumps:  # a device was late: the canceller has lost the echo
                self._jumps = self._played.jumps
                self._over.unsettle()
            cleaned = self._canceller.clean(late.near, block.far, block.far_rate_hz)
            self._keep(cleaned)
            for chunk in self._chunks(cleaned):
                if self._is_hers(chunk):
                    self._hold_back()
            if not self._late[0].is_deaf and self._since is None:
                self._spared = False
        elif late is not None:
            self._keep(late.near)
            for chunk in self._chunks(late.near):
                self._take_room(chunk)
        with self._lock:
            if self._holds_door and not any(each.is_deaf for each in self._late):
                # All up to this block is cleaned or needs no cleaning: hand it to the ears whole.
                self._for_ears = [*self._cleaned, *(each.near for each in self._late)]
                self._handed_up_to = block.number
        if self._since is None and not self._holds_door:
            while sum(map(len, self._cleaned)) > _BEFORE_S * HEARING_RATE_HZ * 2:
                self._cleaned.popleft()

    def _keep(self, sound: bytes) -> None:
        self._cleaned.append(sound)

    def _chunks(self, sound: bytes) -> list[bytes]:
        self._rest += sound
        count = len(self._rest) // _CHUNK_BYTES
        chunks = [self._rest[at * _CHUNK_BYTES : (at + 1) * _CHUNK_BYTES] for at in range(count)]
        self._rest = self._rest[count * _CHUNK_BYTES :]
        return chunks

    def _take_room(self, chunk: bytes) -> None:
        level = measure_level_db(chunk)
        if self._since is None:
            self._over.take_room(level)
        elif self._over.matters(level):
            self._sound_at = self._clock()

    def _is_hers(self, chunk: bytes) -> bool:
        level = measure_level_db(chunk)
        if not self._over.matters(level):
            self._passed_over.append(chunk)
            return self._over.take(level, 0.0)
        for earlier in self._passed_over:  # the detector goes by what came before
            self._speech(earlier)
        self._passed_over.clear()
        return self._over.take(level, self._speech(chunk))

    def _hold_back(self) -> None:
        """Hold the speaker back, if it still speaks and may be interrupted."""
        may = self._since is None and not self._spared and self._in_vain < MOST_IN_VAIN
        if not (may and self._played.was_fed and self._is_wanted() and self._speaker.pause()):
            return
        self._since = self._sound_at = self._clock()
        with self._lock:
            self._holds_door, self._handed_up_to = self._is_addressed(), 0
        self._tell(HELD_BACK)

    def _mind_the_wait(self) -> None:
        """Let the speaker go on once no cue has come for long enough."""
        if self._since is None:
            return
        now = self._clock()
        if not self._speaker.paused:  # a cue has been answered
            self._since, self._in_vain = None, 0
            self._open_door()
        elif now - self._sound_at > WAIT_S or now - self._since > LONGEST_WAIT_S:
            self._since, self._spared = None, True
            self._in_vain += 1
            self._open_door()
            self._speaker.go_on()
            self._tell(GIVEN_UP if self._in_vain == MOST_IN_VAIN else GOES_ON)

    def _open_door(self) -> None:
        with self._lock:
            self._holds_door, self._for_ears = False, []
