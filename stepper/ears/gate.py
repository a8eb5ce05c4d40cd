"""The near-talker gate: which stretch of sound was spoken near the microphone.

Pure: numbers in, decisions out.

Source: measured on synthetic voices in film sound; the figures below are those that did best.
"""

from __future__ import annotations

from collections import deque

from stepper.ears.room_levels import RoomLevels, level_at_share

CHUNK_S = 0.032
"""Length of the pieces the gate decides on. Unit: seconds."""
_OPENING_CHUNKS = 2
_NEARER_DB = 6.0
_PERCENTILE = 0.85
_LEVELS = round(15 / CHUNK_S)
_SILENCE_CHUNKS = round(0.4 / CHUNK_S)
_SILENCE_IN_NOISE_CHUNKS = round(0.32 / CHUNK_S)
_FAR_ABOVE_ROOM_DB = 16.0
# A short pause within a number must not end it: "two hundred" is a number too. In noise a longer one is rare,
# since the noise itself breaks it.
_BELOW_PEAK_DB = 18.0
_ABOVE_ROOM_DB = 2.0
# Somebody no longer louder than the room has stopped, even if the room goes on talking: of 30 cues
# 10 dB above a film (development voices of `tests/bench/voice`) 29 are cut out whole, and 11 without this.
_OWN_DB = 15.0
# What is so much softer than the loudest of an utterance, before its first or after its last loud sound, is
# somebody else: a film that opened the gate just before she spoke, or goes on talking after.
_SOFTEST_DB = 27.0
_CLEAR_OF_ROOM_DB = 18.0
# Where nothing in the room is that loud, it is her own falling voice: "sixty *three*".
_SOFT_END_CHUNKS = round(0.3 / CHUNK_S)
_BEFORE_CHUNKS = round(0.25 / CHUNK_S)
_AFTER_CHUNKS = round(0.15 / CHUNK_S)
_LONGEST_CHUNKS = round(5 / CHUNK_S)
_LOOKED_AT_CHUNKS = round(6 / CHUNK_S)
# A film talks on for ten seconds and more, and all of it would be looked at anew at each of its pauses. Of
# 60 cues 10 dB above a film the longest that is known so, with what the film said before it, takes 5.1 s.
_LATELY_CHUNKS = round(0.7 / CHUNK_S)
_TALK_CHUNKS = 5
_AS_LOUD_DB = 7.0
_LOUD_SHARE = 0.9
# A film's own "go on", cut out between two pauses, has the rest of its sentence just before it, and as loud;
# her cue has not. With the development voices this catches 9 of 12 of a film's; of cues and counts it costs
# none of 178 in quiet, 2 of 179 at 20 dB above a film and 12 of 135 at 10 dB.
_SILENT_CHUNKS, _ONSET_CHUNKS, _FROM_SILENCE_DB = round(1.5 / CHUNK_S), round(0.25 / CHUNK_S), 20.0
# Whoever talked with somebody is the room for the next 15 s, and would not be heard. What begins so far above
# the last second and a half is let in: in a quiet room all speech, in a film hardly a line. Its first
# consonant may be softer, for a quarter of a second.
_REFUSED_AT_FIRST = 3
# Somebody who was not heard says it again, and by then her own speech would be the room: of 211 cues and
# counts in quiet, three seconds apart, 46 never opened the gate when each was refused and counted at once.


class Gate:
    """Collects the chunks of one utterance at a time."""

    def __init__(self) -> None:
        """Start closed, with nothing heard yet."""
        self._room = RoomLevels(_LEVELS)
        # By the chunk at which each of the levels was; 0 for those of refused utterances, whose time is over.
        self._before: deque[bytes] = deque(maxlen=_BEFORE_CHUNKS + _OPENING_CHUNKS)
        self._latest: deque[float] = deque(maxlen=_SILENT_CHUNKS)
        self._silence_db: float | None = None
        # How loud it was before the utterance under way, or the last, where that began in silence.
        self._utterance: list[bytes] = []
        self._own_levels: list[float] = []
        self._refused: deque[tuple[int, list[float]]] = deque()
        self._lately: deque[float] = deque(maxlen=_LATELY_CHUNKS + _OPENING_CHUNKS)
        self._just_before: list[float] = []
        self._run = 0
        self._quiet = 0
        self._peak = 0.0
        self._taken = 0
        self._cut_at = 0

    def matters(self, level_db: float) -> bool:
        """Return whether it makes a difference if a chunk of this level is speech.

        Outside an utterance, a chunk no louder than the room stays out whatever it is, so nobody need find
        out. In a quiet room nearly all are such.
        """
        if self._utterance or self._is_above_room(level_db):
            return True
        return self._silence_before(level_db) is not None

    def take(self, chunk: bytes, *, speech: bool, level_db: float) -> bytes | None:
        """Take the next chunk.

        Args:
            chunk: The sound.
            speech: Whether it is speech.
            level_db: How loud it is. Unit: dB, above any fixed reference.

        Returns:
            A whole utterance when one has just ended, else None. One longer than five seconds is no cue and
            is dropped.
        """
        self._lately.append(level_db)
        self._taken += 1
        if self._utterance:
            self._latest.append(level_db)
            return self._go_on(chunk, speech, level_db)
        self._silence_db = None
        silence_db = self._silence_before(level_db)
        near = speech and (silence_db is not None or self._is_above_room(level_db))
        self._latest.append(level_db)
        self._run = self._run + 1 if near else 0
        self._before.append(chunk)
        if self._run >= _OPENING_CHUNKS:
            self._silence_db = silence_db
            self._utterance = list(self._before)
            self._own_levels, self._quiet, self._peak = [level_db], 0, level_db
            self._just_before = list(self._lately)[:-_OPENING_CHUNKS]
        else:
            self._room.take(level_db, self._taken)
        return None

    @property
    def is_open(self) -> bool:
        """Whether an utterance is under way."""
        return bool(self._utterance)

    @property
    def quiet_chunks(self) -> int:
        """How many chunks of silence the utterance under way ends with so far; 0 where there is none."""
        return self._quiet if self._utterance else 0

    @property
    def cut_ago_s(self) -> float:
        """How long ago the last utterance that was cut out began, with what was kept before it. Unit: s."""
        return (self._taken - self._cut_at) * CHUNK_S

    @property
    def is_clear(self) -> bool:
        """Whether the last utterance is far louder than the room, so that its silences are silent."""
        return self._peak - self._floor_db() >= _FAR_ABOVE_ROOM_DB

    @property
    def amid_talk(self) -> bool:
        """Whether the last utterance continues sound about as loud in the 0.7 s before it.

        Somebody is talking, then, and not to the program, unless its name is said.
        """
        own = level_at_share(self._own_levels[: len(self._own_levels) - self._quiet], _LOUD_SHARE)
        return sum(level >= own - _AS_LOUD_DB for level in self._just_before) >= _TALK_CHUNKS

    def so_far(self, *, to_now: bool = False) -> bytes:
        """Return the utterance under way, cut out as if it ended here; empty where there is none, or where it
        is too long for a cue by now.

        Args:
            to_now: Whether all that followed its last loud sound belongs to it.
        """
        if not self._utterance:
            return b""
        whole = self._whole()
        if len(whole) > _LOOKED_AT_CHUNKS:
            return b""
        return b"".join([*whole, *self._utterance[self._end() :]] if to_now else whole)

    def accept(self) -> None:
        """End the utterance under way before its silence does: it is known by now.

        What is behind it may be the soft beginning of the next: the "f" of "stepper, five".
        """
        behind = self._utterance[self._end() :] if self._utterance else []
        self._utterance, self._run = [], 0
        self._before.clear()
        self._before.extend(behind)

    def refuse(self) -> None:
        """Take the last utterance to be no cue; once three more were refused soon, it counts as the room.

        The levels of accepted cues are left out, or cues in quick succession would lock the speaker out. So
        would cues that are said again because they were not heard: the last few refused do not count yet, and
        what was refused longer ago than the room is measured never does.
        """
        self._refused.append((self._taken, self._own_levels))
        self._own_levels = []
        while self._taken - self._refused[0][0] > _LEVELS:
            self._refused.popleft()
        if len(self._refused) > _REFUSED_AT_FIRST:
            _, levels = self._refused.popleft()
            for level_db in levels:
                self._room.take(level_db, 0)

    def leave_out(self, began_s: float, ended_s: float) -> None:
        """Take what was said then to be a cue, though it was not cut out here or was refused: it is no room.

        Args:
            began_s: How long ago it began. Unit: s.
            ended_s: How long ago it ended. Unit: s.
        """
        begin, end = (self._taken - round(each / CHUNK_S) for each in (began_s, ended_s))
        self._room.leave_out(begin, end)
        self._refused = deque(each for each in self._refused if each[0] < begin)

    def reset(self) -> None:
        """Forget the utterance under way, as when the program itself begins to speak."""
        self._utterance, self._own_levels, self._run = [], [], 0
        self._before.clear()
        self._lately.clear()

    def _is_above_room(self, level_db: float) -> bool:
        return level_db >= self._floor_db() + _NEARER_DB

    def _silence_before(self, level_db: float) -> float | None:
        """Return how loud it was before what begins now, where that was silence beside it; else None."""
        if len(self._latest) < _SILENT_CHUNKS:
            return None
        loudest_db = max(list(self._latest)[:-_ONSET_CHUNKS])
        return loudest_db if level_db >= loudest_db + _FROM_SILENCE_DB else None

    def _go_on(self, chunk: bytes, speech: bool, level_db: float) -> bytes | None:
        self._utterance.append(chunk)
        self._own_levels.append(level_db)
        self._peak = max(self._peak, level_db)
        floor_db = self._floor_db()
        softest_db = max(self._softest_db(_BELOW_PEAK_DB), floor_db + _ABOVE_ROOM_DB)
        heard = speech and level_db > softest_db
        self._quiet = 0 if heard else self._quiet + 1
        if self._quiet < (_SILENCE_CHUNKS if self.is_clear else _SILENCE_IN_NOISE_CHUNKS):
            return None
        whole = self._whole()
        self.accept()
        if len(whole) > _LONGEST_CHUNKS:
            self.refuse()
            return None
        return b"".join(whole)

    def _whole(self) -> list[bytes]:
        """Cut out what is her own, with a little before and after, for soft consonants."""
        start = max(0, self._loud()[0] - _BEFORE_CHUNKS - _OPENING_CHUNKS)
        self._cut_at = self._taken - len(self._utterance) + start
        return self._utterance[start : self._end()]

    def _end(self) -> int:
        """Return where the cut ends in the utterance under way."""
        end = min(len(self._utterance) - self._quiet, self._loud()[-1] + 1 + _SOFT_END_CHUNKS)
        return end + _AFTER_CHUNKS

    def _loud(self) -> list[int]:
        """List the chunks of the utterance under way that are loud enough to be her own; at least one."""
        before = len(self._utterance) - len(self._own_levels)
        softest_db = self._softest_db(_OWN_DB)
        loud = [at for at, level in enumerate(self._own_levels, before) if level >= softest_db]
        return loud or [before]  # none where the utterance before was refused after this one had begun

    def _softest_db(self, below_peak_db: float) -> float:
        """Return how soft her own voice may get: so far below its peak, or farther in a quiet room."""
        quiet_db = max(self._peak - _SOFTEST_DB, self._floor_db() + _CLEAR_OF_ROOM_DB)
        return min(self._peak - below_peak_db, quiet_db)

    def _floor_db(self) -> float:
        floor_db = self._room.at_share(_PERCENTILE)
        return floor_db if self._silence_db is None else min(floor_db, self._silence_db)
