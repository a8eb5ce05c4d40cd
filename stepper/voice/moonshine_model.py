"""The tiny English model inside the wheel of moonshine-voice 0.1.0, run in onnxruntime without a network."""

from __future__ import annotations

import importlib
import importlib.util
from pathlib import Path
from typing import Any

from stepper.errors import SurroundingsError

_BEGIN, _END = 1, 2
_FIRST_WORD = 3
_LONGEST = 24
_SHORTEST_SAMPLES = 8000


class MoonshineModel:
    """Encodes a stretch of sound and tells how likely a text is for it."""

    def __init__(self) -> None:
        """Load the model; takes about a third of a second.

        Raises:
            SurroundingsError: The packages it needs are not installed.
        """
        found = importlib.util.find_spec("moonshine_voice")
        if found is None or found.origin is None:
            raise SurroundingsError("The recogniser is not installed: pip install moonshine-voice==0.1.0")
        folder = Path(found.origin).parent / "assets" / "tiny-en"
        try:
            self._np: Any = importlib.import_module("numpy")
            runtime: Any = importlib.import_module("onnxruntime")
            self._tokens = _read_tokens((folder / "tokenizer.bin").read_bytes())
            options = runtime.SessionOptions()
            options.intra_op_num_threads = 1
            self._encoder = runtime.InferenceSession(str(folder / "encoder_model.ort"), options)
            self._decoder = runtime.InferenceSession(str(folder / "decoder_model_merged.ort"), options)
        except (ImportError, OSError, RuntimeError) as error:
            raise SurroundingsError(f"The recogniser's model cannot be loaded: {error}") from error
        self._ids = {token: number for number, token in enumerate(self._tokens)}

    def encode(self, pcm: bytes) -> Any:
        """Encode sound at the hearing rate, signed 16-bit."""
        np = self._np
        sound = np.frombuffer(pcm, np.int16).astype(np.float32) / 32768
        sound = np.pad(sound, (0, max(0, _SHORTEST_SAMPLES - len(sound))))
        mask = np.ones((1, len(sound)), np.int64)
        return self._encoder.run(None, {"input_values": sound[None], "attention_mask": mask})[0]

    def transcribe(self, encoded: Any) -> tuple[str, float]:
        """Give the likeliest text, as the model punctuates it, and its log-probability."""
        np, ids, score = self._np, [_BEGIN], 0.0
        for _ in range(_LONGEST):
            logits = self._logits(encoded, np.array([ids]))[0, -1]
            logits = logits - logits.max()
            best = int(logits.argmax())
            score -= float(np.log(np.exp(logits).sum()))
            if best == _END:
                break
            ids.append(best)
        words = b"".join(self._tokens[each] for each in ids if each >= _FIRST_WORD)
        return words.decode("utf-8", "replace").replace("\u2581", " ").strip(), score

    def likelihoods(self, encoded: Any, texts: list[str]) -> list[float]:
        """Give the log-probability of each text, as the model would punctuate it."""
        np, rows = self._np, [self._split(text) for text in texts]
        length = max(map(len, rows)) + 1
        given = np.full((len(rows), length), _END, np.int64)
        wanted = np.full((len(rows), length), -1, np.int64)
        for number, row in enumerate(rows):
            given[number, : len(row) + 1] = [_BEGIN, *row]
            wanted[number, : len(row) + 1] = [*row, _END]
        logits = self._logits(encoded, given)
        logits = logits - logits.max(-1, keepdims=True)
        chosen = np.take_along_axis(logits, np.maximum(wanted, 0)[..., None], 2)[..., 0]
        each = chosen - np.log(np.exp(logits).sum(-1))
        return [float(score) for score in np.where(wanted >= 0, each, 0).sum(1)]

    def _logits(self, encoded: Any, ids: Any) -> Any:
        np, count = self._np, len(ids)
        feed: dict[str, Any] = {
            "input_ids": ids,
            "encoder_hidden_states": np.repeat(encoded, count, 0),
            "encoder_attention_mask": np.ones((count, encoded.shape[1]), np.int64),
            "use_cache_branch": np.array([False]),
        }
        names = [each.name for each in self._decoder.get_inputs()]
        for name in names:
            if name.startswith("past"):
                feed[name] = np.zeros((count, 8, 0, 36), np.float32)
        return self._decoder.run(None, {name: feed[name] for name in names})[0]

    def _split(self, text: str) -> list[int]:
        """Split a text into the model's tokens: the pair that comes first in its table is joined first."""
        parts = [letter.encode() for letter in "\u2581" + text.replace(" ", "\u2581")]
        while True:
            pairs = [
                (self._ids[parts[at] + parts[at + 1]], at)
                for at in range(len(parts) - 1)
                if parts[at] + parts[at + 1] in self._ids
            ]
            if not pairs:
                return [self._ids[part] for part in parts]
            _, at = min(pairs)
            parts[at : at + 2] = [parts[at] + parts[at + 1]]


def _read_tokens(data: bytes) -> list[bytes]:
    """Read the table of tokens: each with its length in front, in one byte or, from 128, in two."""
    tokens, at = [], 0
    while at < len(data):
        length = data[at]
        at += 1
        if length >= 128:
            length = (length & 127) + data[at] * 128
            at += 1
        tokens.append(data[at : at + length])
        at += length
    return tokens
