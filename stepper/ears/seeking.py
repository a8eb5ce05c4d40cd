"""Look for the address word and a cue behind it where loudness does not tell when they begin and end.

A film 5 to 10 dB softer than she is hides from the gate where her words end, and the networks still hear
them: 5 dB above a film most cues are heard once they are cut out where their sounds begin and end, and hardly
any as the gate cuts them. So a window slides over the sound while that is louder than it mostly is, and what
stands behind the address word is looked for; `seeking_alone` looks into the same window for cues without it.
"""

from __future__ import annotations

import math
from collections import deque
from collections.abc import Callable, Sequence
from statistics import fmean, median
from typing import Final

from stepper.devices.ports import HEARING_RATE_HZ
from stepper.ears.gate import CHUNK_S
from stepper.ears.ports import LATEST_S, Place

_EVERY_CHUNKS: Final = 4
# How often the loudness is looked at.
_APART_CHUNKS = 12
_NARROW_CHUNKS = round(2.4 / CHUNK_S)
_WIDE_CHUNKS = round(5.0 / CHUNK_S)
# The narrow window has to hold the address word, the wide one what was said with it.
_LATELY_CHUNKS = 40
_LOUDEST_CHUNKS = 14
_ROOM = round(15 / CHUNK_S) // _EVERY_CHUNKS
_ABOVE_ROOM_DB = 1.5
# The mean of the loudest third of the last 1.3 s lies so far above its median of 15 s in 95 of 100 cues 5 dB
# above a film, and for a third of the time in a film alone.
_LONG_ROOM, _LONG_SHARE, _TALK_DB = round(300 / CHUNK_S) // _EVERY_CHUNKS, 0.3, 4.0
_DIP, _DIP_DB = round(3.0 / CHUNK_S) // _EVERY_CHUNKS, 6.0
# After a talk with somebody her own voice is most of the last 15 s, so much louder than the softest three
# tenths of the last five minutes; a film is that loud nearly all the time. Where it was so much softer within
# the last 3 s, what is so much louder than that again is looked into.
_CLEAR_DB = 12.0
# What is so much louder has ends that the gate finds; in a quiet room all speech is.
_SELDOM_CHUNKS = 24
# How often it is looked at while cues alone count and none can be over: two in three looks into a film are
# such, and a count that is under way is still seen before it ends.
_OVER_CHUNKS, _SOFTER_CHUNKS, _FALLEN_DB = 10, 9, 3.0
# What is over has ended 0.3 s ago (`seeking_alone`), and but for a moment it has been this much softer
# since: behind each of 33 cues of development voices that were found so 10 dB above a film it falls 5.9 dB
# or more. Seen sooner, the one look comes while the cue is just over and the next when it is long over.
_ALONE_DB = 0.5
# Where cues alone count: more than their loudness tells them from those of a film.
_BEFORE_S, _AFTER_S = 0.25, 0.22
_BEFORE_CHUNKS = round(_BEFORE_S / CHUNK_S)
_WAIT_S, _LONG_WAIT_S = 0.35, 0.9
_ATTENTIVE_CHUNKS = round(2.0 / CHUNK_S)
# So long it is looked on behind the address word, and behind the last cue that was seen there: a count takes
# up to 2.8 s with the word, and has to be over for 0.9 s where it may go on.
_BYTES_S: Final = HEARING_RATE_HZ * 2


class Seeking:
    """Keeps the last seconds of sound and looks into them now and then."""

    def __init__(
        self, find: Callable[[bytes], Place | None], hears_alone: Callable[[], bool] = lambda: False
    ) -> None:
        """Begin with nothing heard.

        Args:
            find: Finds the address word, and a cue behind it, in a stretch of sound.
            hears_alone: Tells whether cues without the address word count now.
        """
        self._find, self._hears_alone = find, hears_alone
        self._has_looked = False
        self._chunks: deque[bytes] = deque(maxlen=_WIDE_CHUNKS)
        self._lately: deque[float] = deque(maxlen=_LATELY_CHUNKS)
        self._room: deque[float] = deque(maxlen=_LONG_ROOM)
        self._passed = 0
        self._attentive = self._awaits = self._wide = self._taken = 0
        self._began: int | None = None
        # The chunk in which the address word began, as seen last.
        self.ago_s = (0.0, 0.0)
        """How long ago what was cut out last began, and ended. Unit: s."""
        self.says_more = False
        """Whether something else sounds behind what was cut out last."""

    def take(self, chunk: bytes, level_db: float) -> bytes | None:
        """Take one more chunk; return a cue with the address word, cut out, if one is found that is over.

        Args:
            chunk: The sound, as long as the gate's.
            level_db: How loud it is. Unit: dB, above any fixed reference.
        """
        self._chunks.append(chunk)
        self._lately.append(level_db)
        self._passed += 1
        self._taken += 1
        self._attentive, self._awaits = max(0, self._attentive - 1), max(0, self._awaits - 1)
        self._wide = max(0, self._wide - 1)
        self._has_looked = False
        if self._passed % _EVERY_CHUNKS:
            return None
        loudness_db = sum(sorted(self._lately)[-_LOUDEST_CHUNKS:]) / _LOUDEST_CHUNKS
        self._room.append(loudness_db)
        room = list(self._room)
        room_db = median(room[-_ROOM:])
        above_db = loudness_db - room_db
        least_db = _ALONE_DB if self._hears_alone() else _ABOVE_ROOM_DB
        is_worth_it = above_db >= least_db or self._attentive or self._awaits or _follows_talk(room, room_db)
        if self._passed < self._apart_chunks() or above_db >= _CLEAR_DB or not is_worth_it:
            return None
        self._passed, self._has_looked = 0, True
        return self._look()

    @property
    def looked_into(self) -> bytes:
        """The narrow window, or the wide one while a long count may be under way; nothing if none was looked
        into at the last chunk."""
        return self._last(_WIDE_CHUNKS if self._wide else _NARROW_CHUNKS) if self._has_looked else b""

    def await_more(self, *, is_long: bool = True) -> None:
        """Look on for the next two seconds, however soft: a count is being said.

        Args:
            is_long: Whether it may be too long for the narrow window, with the wait behind it.
        """
        self._awaits = _ATTENTIVE_CHUNKS
        if is_long:
            self._wide = _ATTENTIVE_CHUNKS

    def forget(self) -> None:
        """Begin anew: what was said so far is dealt with."""
        self._chunks.clear()
        self._attentive = self._awaits = self._wide = 0
        self._began = None
        self._has_looked = False

    def _apart_chunks(self) -> int:
        """Return how far apart the looks are now. Unit: chunks."""
        may_be_over = self._attentive or self._awaits or self._has_fallen()
        return _APART_CHUNKS if may_be_over or not self._hears_alone() else _SELDOM_CHUNKS

    def _has_fallen(self) -> bool:
        """Return whether something louder than what is heard now may just have ended."""
        lately = list(self._lately)
        louder, softer = sorted(lately[:-_OVER_CHUNKS])[-8:], sorted(lately[-_SOFTER_CHUNKS:])[-3:]
        return bool(louder) and fmean(louder) - fmean(softer) >= _FALLEN_DB

    def _look(self) -> bytes | None:
        """Look into the windows, and cut out the whole cue that fits best in one of them, once it is over."""
        seen = self._places()
        if not seen:
            return None
        place, sound = max(reversed(seen), key=lambda each: (each[0].end_s is not None, each[0].fit))
        if place.start_s > 0:
            self._began = self._taken - round((len(sound) / _BYTES_S - place.start_s) / CHUNK_S)
        wait_s = _LONG_WAIT_S if place.may_go_on else _WAIT_S
        if place.end_s is None or len(sound) / _BYTES_S - place.end_s < wait_s:
            if place.end_s is not None or not self._attentive:  # she may be in the middle of a count
                self._attentive = _ATTENTIVE_CHUNKS
            return None
        self.ago_s = (len(sound) / _BYTES_S - place.start_s, len(sound) / _BYTES_S - place.end_s)
        if self.ago_s[1] > LATEST_S:  # left out of what is looked into next, where it would be found again
            left = len(self._chunks) - int(self.ago_s[1] / CHUNK_S)
            for _ in range(left):
                self._chunks.popleft()
            return None
        self.says_more = place.says_more
        start = max(0, round((place.start_s - _BEFORE_S) * HEARING_RATE_HZ))
        return sound[start * 2 : round((place.end_s + _AFTER_S) * HEARING_RATE_HZ) * 2]

    def _places(self) -> list[tuple[Place, bytes]]:
        """Return where the address word, and a cue behind it, stand in each window, and the window itself.

        A wide window holds more of a film, and the networks hear a cue in it less well: so the last one
        begins where the word was seen to begin. The word with nothing behind it has to be in both windows; so
        has any cue while those alone count, since hardly anybody says the word then.
        """
        seen = list[tuple[Place, bytes]]()
        alone = self._hears_alone()
        if not self._attentive:
            self._began = None
            if not self._add(seen, self._last(_NARROW_CHUNKS)):
                return []
        elif self._began is not None and not alone:
            self._add(seen, self._last(self._taken - self._began + _BEFORE_CHUNKS))
            if seen and seen[0][0].end_s is not None:
                return seen
        if not seen or seen[0][0].end_s is None or len(self._chunks) > _NARROW_CHUNKS:
            is_cue = self._began is not None or any(each.fit > -math.inf for each, _ in seen)
            if not self._add(seen, self._last(_WIDE_CHUNKS)) and (alone or not is_cue):
                return []
        if alone:
            return seen[-1:]
        if seen and seen[-1][0].start_s > _BEFORE_S:
            place, sound = seen[-1]
            self._add(seen, sound[round((place.start_s - _BEFORE_S) * HEARING_RATE_HZ) * 2 :])
        return seen

    def _add(self, seen: list[tuple[Place, bytes]], sound: bytes) -> bool:
        """Add what is seen in a window; return whether anything is."""
        place = self._find(sound)
        if place is not None:
            seen.append((place, sound))
        return place is not None

    def _last(self, chunks: int) -> bytes:
        return b"".join(list(self._chunks)[-chunks:])


def _follows_talk(room: Sequence[float], room_db: float) -> bool:
    """Return whether something begins anew after a talk that was louder than the room mostly is.

    Args:
        room: How loud it was in the last five minutes, and is now. Unit: dB.
        room_db: How loud it mostly was lately. Unit: dB.
    """
    softest_db = min(room[-_DIP:])
    if room_db - softest_db < _DIP_DB or room[-1] - softest_db < _DIP_DB:
        return False
    return room_db - sorted(room)[int(_LONG_SHARE * len(room))] >= _TALK_DB
