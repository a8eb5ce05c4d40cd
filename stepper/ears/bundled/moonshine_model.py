"""The tiny English model inside the wheel of moonshine-voice 0.1.0, run in onnxruntime without a network.

Its encoder is replaced by one that was taught to hear through films (`models/ears`).
"""

from __future__ import annotations

import heapq
import importlib
import importlib.util
import math
from collections.abc import Mapping
from dataclasses import replace
from pathlib import Path
from typing import Any, Final

from stepper.ears.bundled.sliding_encoder import SlidingEncoder
from stepper.ears.bundled.token_tree import Node
from stepper.ears.onnx_session import load_encoder, load_network
from stepper.ears.packaged_weights import weights_path
from stepper.errors import NotInstalledError, SurroundingsError
from stepper.records import dataclass

_BEGIN, _END = 1, 2
_FIRST_WORD = 3
_LONGEST = 24
_SHORTEST_BYTES = 16_000
_LAYERS, _HEADS, _WIDTH = 6, 8, 36
_BATCH: Final = 16
_ENDS: Final = 10
# Larger batches are no faster on one thread.


@dataclass(frozen=True, slots=True, kw_only=True)
class Encoded:
    """A stretch of sound as the model has taken it in, to be used for any number of questions."""

    states: Any
    """The encoder's output."""
    memory: Any
    """What the decoder keeps of it and of the mark of the beginning."""
    first: Any
    """Log-probabilities of the first token."""


@dataclass(frozen=True, slots=True)
class Hypothesis:
    """A text that was reached in a tree."""

    text: str
    score: float
    """Log-probability. Natural logarithm, 0 or less."""
    tokens: int
    """How many tokens it has, including its end."""


@dataclass(frozen=True, slots=True, kw_only=True)
class _Branch:
    """A beginning that several texts may share."""

    node: Node
    score: float
    likely: Any
    """Log-probabilities of the token after it."""
    memory: Mapping[str, Any]
    """What the decoder keeps of it."""


_End = tuple[float, int, int, "Hypothesis", "_Branch"]
# Log-probability with the mark, a number that makes it unique, the mark or the end, the text, its branch.
_Step = tuple[float, int, int, Node, _Branch]
# Log-probability, a number that makes it unique, the token, where it leads, and what it goes on from.


def packaged_folder() -> Path:
    """Return the folder of the model's files in the wheel.

    Raises:
        SurroundingsError: It is not installed.
    """
    found = importlib.util.find_spec("moonshine_voice")
    if found is None or found.origin is None:
        raise NotInstalledError("The recogniser is not installed.", "ears")
    return Path(found.origin).parent / "assets" / "tiny-en"


class MoonshineModel:
    """Encodes a stretch of sound and tells how likely a text is for it."""

    def __init__(self, folder: Path | None = None, *, encoder: Path | None = None) -> None:
        """Load the model; takes about a third of a second.

        Args:
            folder: Where its files are; None for those of the wheel.
            encoder: The network that takes sound in; None for the one that comes with the package, which was
                taught to hear through films what the wheel's own hears of clean sound.

        Raises:
            SurroundingsError: The packages it needs are not installed, or a file is missing or damaged.
        """
        folder = packaged_folder() if folder is None else folder
        try:
            self._np: Any = importlib.import_module("numpy")
            self._tokens = _read_tokens((folder / "tokenizer.bin").read_bytes())
        except (ImportError, OSError) as error:
            raise SurroundingsError(f"The recogniser's model cannot be loaded: {error}") from error
        network = load_encoder(encoder or weights_path("encoder.onnx"), "The recogniser's model")
        self._encoder = SlidingEncoder(network)
        decoder = folder / "decoder_model_merged.ort"
        self._decoder = load_network(decoder, "The recogniser's model", repacked=False)
        # Repacked it takes 10 MB more; as it is, a millisecond or two more for a step. The results are the
        # same to the last digit.
        self._ids = {token: number for number, token in enumerate(self._tokens)}
        self._words: dict[str, tuple[int, ...]] = {}
        self._outputs = [each.name for each in self._decoder.get_outputs()]
        self._full_stop = self._ids[b"."]
        self._question_mark = self._ids[b"?"]

    def states(self, pcm: bytes) -> Any:
        """Return what the encoder makes of sound at the hearing rate, signed 16-bit: 1 × frames × 288."""
        return self._encoder.states(pcm.ljust(_SHORTEST_BYTES, b"\0"))

    def encode(self, pcm: bytes) -> Encoded:
        """Encode sound at the hearing rate, signed 16-bit."""
        return self.keep(self.states(pcm))

    def keep(self, states: Any) -> Encoded:
        """Let the decoder take in what the encoder made of sound."""
        np = self._np
        nothing = np.zeros((1, _HEADS, 0, _WIDTH), np.float32)
        empty = {name.replace("present", "past_key_values"): nothing for name in self._outputs[1:]}
        logits, memory = self._run(states, np.array([[_BEGIN]]), empty, fresh=True)
        return Encoded(states=states, memory=memory, first=self._log(logits)[0, -1])

    def transcribe(self, encoded: Encoded) -> tuple[str, float]:
        """Return the likeliest text, as the model punctuates it, and its log-probability."""
        np, ids, score = self._np, [], 0.0
        likely, memory = encoded.first, encoded.memory
        for _ in range(_LONGEST):
            best = int(likely.argmax())
            score += float(likely[best])
            if best == _END:
                break
            ids.append(best)
            logits, grown = self._run(encoded.states, np.array([[best]]), memory)
            memory = memory | _decoder_part(grown)
            likely = self._log(logits)[0, -1]
        words = b"".join(self._tokens[each] for each in ids if each >= _FIRST_WORD)
        return words.decode("utf-8", "replace").replace("\u2581", " ").strip(), score

    def search(self, encoded: Encoded, root: Node) -> list[Hypothesis]:
        """Look for the likeliest of the texts in a tree.

        A beginning is weighed once for all that share it. A branch is abandoned when too many others are
        likelier.

        Args:
            encoded: The sound.
            root: What may have been said.

        Returns:
            The likeliest texts reached, the likeliest first, each with or without a mark at its end.
        """
        memory = _decoder_part(encoded.memory)
        level = [_Branch(node=root, score=0.0, likely=encoded.first, memory=memory)]
        ends: list[_End] = []
        for length in range(1, _LONGEST):
            steps: list[_Step] = []
            for branch in level:
                if branch.node.text:
                    found = Hypothesis(text=branch.node.text, score=branch.score, tokens=length)
                    ends += self._ends(branch, found, len(ends))
                for token, node in branch.node.children.items():
                    score = branch.score + float(branch.likely[token])
                    steps.append((score, len(steps), token, node, branch))
            if not steps:
                break
            level = self._further(encoded, heapq.nlargest(_BATCH, steps))
        return self._ended(encoded, ends)

    def _ends(self, branch: _Branch, found: Hypothesis, number: int) -> list[_End]:
        """Return the ways in which a complete text may end: as it is, or with a mark."""
        tokens = (_END, self._full_stop, self._question_mark)
        scores = [branch.score + float(branch.likely[token]) for token in tokens]
        return [
            (score, number + at, token, found, branch)
            for at, (score, token) in enumerate(zip(scores, tokens, strict=True))
        ]

    def _ended(self, encoded: Encoded, ends: list[_End]) -> list[Hypothesis]:
        """Weigh the end itself after a mark: after many a full stop somebody goes on talking."""
        scores: dict[Hypothesis, float] = {}
        best = heapq.nlargest(_ENDS, ends)
        after: dict[int, _Branch] = {}
        for length in {found.tokens for _, _, _, found, _ in best}:
            marked = [
                (score, number, token, branch.node, branch)
                for score, number, token, found, branch in best
                if token != _END and found.tokens == length
            ]
            branches = self._further(encoded, marked)
            after |= {step[1]: branch for step, branch in zip(marked, branches, strict=True)}
        for score, number, _, found, _ in best:
            behind = float(after[number].likely[_END]) if number in after else 0.0
            scores[found] = max(scores.get(found, -math.inf), score + behind)
        texts: dict[str, Hypothesis] = {}
        for found, score in sorted(scores.items(), key=lambda each: -each[1]):
            texts.setdefault(found.text, replace(found, score=score))
        return list(texts.values())

    def _further(self, encoded: Encoded, steps: list[_Step]) -> list[_Branch]:
        """Take one more token in each branch.

        All of them share what is kept of the sound: the decoder's products spread it over the batch, and a
        copy for each would take 46 MB for five seconds.
        """
        np = self._np
        if not steps:
            return []
        memory = {name: kept for name, kept in encoded.memory.items() if ".encoder." in name}
        for name in steps[0][-1].memory:
            memory[name] = np.concatenate([before.memory[name] for *_, before in steps])
        tokens = np.array([[token] for _, _, token, _, _ in steps])
        logits, grown = self._run(encoded.states, tokens, memory)
        likely, grown = self._log(logits)[:, -1], _decoder_part(grown)
        return [
            _Branch(
                node=node,
                score=score,
                likely=likely[at],
                memory={name: kept[at : at + 1] for name, kept in grown.items()},
            )
            for at, (score, _, _, node, _) in enumerate(steps)
        ]

    def _run(self, states: Any, ids: Any, memory: Any, fresh: bool = False) -> tuple[Any, dict[str, Any]]:
        np = self._np
        feed: dict[str, Any] = {
            "input_ids": ids,
            "encoder_hidden_states": states,
            "encoder_attention_mask": np.ones((len(states), 1), np.int64),
            # All of the sound is there. The decoder takes every 384th of these, as if of samples, so that
            # one for each frame would be two from 9.2 s on, which fit no frames.
            "use_cache_branch": np.array([not fresh]),
            **memory,
        }
        logits, *kept = self._decoder.run(None, feed)
        names = (name.replace("present", "past_key_values") for name in self._outputs[1:])
        return logits, dict(zip(names, kept, strict=True))

    def _log(self, logits: Any) -> Any:
        np = self._np
        logits -= logits.max(-1, keepdims=True)
        logits -= np.log(np.exp(logits).sum(-1, keepdims=True))
        return logits

    def split(self, text: str) -> tuple[int, ...]:
        """Split a text into the model's tokens; none spans the space between two words."""
        return tuple(token for word in text.split() for token in self._word(word))

    def _word(self, word: str) -> tuple[int, ...]:
        """Split a word: the pair that comes first in the model's table is joined first."""
        if word in self._words:
            return self._words[word]
        parts = [letter.encode() for letter in "\u2581" + word]
        while True:
            pairs = [
                (self._ids[parts[at] + parts[at + 1]], at)
                for at in range(len(parts) - 1)
                if parts[at] + parts[at + 1] in self._ids
            ]
            if not pairs:
                break
            _, at = min(pairs)
            parts[at : at + 2] = [parts[at] + parts[at + 1]]
        self._words[word] = tuple(self._ids[part] for part in parts if part in self._ids)
        return self._words[word]


def _decoder_part(memory: Mapping[str, Any]) -> dict[str, Any]:
    return {name: kept for name, kept in memory.items() if ".decoder." in name}


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
