"""Know a cue before the silence behind it is long enough to end an utterance.

Three quarters of the time from the end of a cue to the first sound was the wait for that silence. So a short
silence is enough where what was said is a cue and begins nothing longer. Meanwhile it is recognised: the time
for that and the silence run together. Numbers are none of these, since they go on.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from stepper.ears.gate import CHUNK_S, Gate
from stepper.ears.ports import Heard

_LOOK_CHUNKS = round(0.1 / CHUNK_S)
_SURE_CHUNKS = round(0.19 / CHUNK_S)
# A stop within a word ("back", "step") is silent for up to a tenth of a second, and the detector of speech
# adds some. Recognition takes about as long as the second wait adds to the first.


class Early:
    """Looks at the utterance under way as soon as it pauses."""

    def __init__(
        self,
        gate: Gate,
        recognise: Callable[[bytes], Heard | None],
        stands_out: Callable[[Heard], bool] = lambda heard: True,
        hears_alone: Callable[[], bool] = lambda: False,
        goes_on: Callable[[bytes, Heard], bool] = lambda segment, heard: False,
    ) -> None:
        """Begin with nothing heard.

        Args:
            gate: Collects the utterance.
            recognise: Returns the cue that a stretch of sound is, if nothing longer begins with it.
            stands_out: Tells whether what was heard is much louder than what is behind it.
            hears_alone: Tells whether cues without the address word count now.
            goes_on: Tells whether something else sounds behind a cue in a stretch of sound: "step back" may
                be the beginning of "step back from there".
        """
        self._gate, self._recognise, self._stands_out = gate, recognise, stands_out
        self._hears_alone, self._goes_on = hears_alone, goes_on
        self._heard: Heard | None = None
        self._segment = b""

    def take(self) -> Heard | None:
        """Look at what the gate took last; return a cue once it is surely over, and end the utterance.

        Without the address word only where she is far louder than the room, and not amid other talk: a film
        pauses within its sentences, too. Nor is it looked at there while the word is not asked for, since
        few say it then: they are heard when the silence is whole. Near a film half of the silences are over
        before they are sure, so what was said is recognised only then.
        """
        quiet = self._gate.quiet_chunks
        if quiet < _LOOK_CHUNKS:
            self._heard, self._segment = None, b""
        elif quiet == _LOOK_CHUNKS:
            stands_clear = self._gate.is_clear and not self._gate.amid_talk
            if stands_clear or not self._hears_alone():
                self._segment = self._gate.so_far()
        if self._segment and (self._gate.is_clear or quiet >= _SURE_CHUNKS):
            self._heard, self._segment = self._recognise(self._segment), b""
        if quiet >= _SURE_CHUNKS and self._heard is not None:
            heard, self._heard = self._heard, None
            is_hers = self._gate.is_clear and not self._gate.amid_talk and self._stands_out(heard)
            if (heard.addressed or is_hers) and not self._goes_on(self._gate.so_far(to_now=True), heard):
                self._gate.accept()
                return replace(heard, goes_on=False)
        return None
