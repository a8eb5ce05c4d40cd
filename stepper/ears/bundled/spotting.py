"""Find which of all that may be said fits the sounds of an utterance. No I/O.

Phrases are laid over the sounds all at once. A frame with a number in it is first laid over them with
anything at all in the number's place; the numbers themselves, two thousand ways to say a thousand, are tried
only after the few openings that fit best.
"""

from __future__ import annotations

import importlib
import math
from collections.abc import Collection, Hashable, Sequence
from typing import Any

from stepper.ears.bundled.sound_tree import Endings, SoundTree, find_span, log_anything, log_silence
from stepper.ears.wordings import Frame, Reply, Wordings, list_address_ways
from stepper.mouth.pronunciation import Pronounces, Sounds
from stepper.records import dataclass

_MOST_OPENINGS = 3
# What may follow the number is tried at little cost.
_NUMBERS = 12
_NOTHING_ELSE: Sounds = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class PhraseMatch:
    """Something that may have been said."""

    text: str
    """Without the address word."""
    figures: str
    """The same with its number in figures; the text itself if there is none."""
    means: Hashable
    score: float
    """Natural log-probability of its sounds, above that of the likeliest sounds of any kind; 0 or less."""
    sounds: Sounds
    """What it sounds like."""
    number: float | None = None
    """The number in it, if it has one."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PronouncedPhrase:
    """A phrase with its sounds."""

    text: str
    means: Hashable
    sounds: Sounds


class Spotter:
    """Knows the sounds of everything that may be said."""

    def __init__(self, wordings: Wordings, address: str, pronouncer: Pronounces) -> None:
        """Look up the sounds of every phrase, frame and number.

        Args:
            wordings: What may be said.
            address: What may have to stand in front of everything, in any of `list_address_ways`; empty for
                nothing.
            pronouncer: Knows how words are pronounced.
        """
        self._np: Any = importlib.import_module("numpy")
        words = {text: each.means for text, each in wordings.called.items()}
        texts = {**words, **wordings.phrases}
        said = pronouncer.sounds(list(texts))
        spoken = [
            PronouncedPhrase(text=text, means=means, sounds=sounds)
            for (text, means), sounds in zip(texts.items(), said, strict=True)
        ]
        self.phrases = tuple(each for each in spoken if each.sounds)
        """Every phrase and single word that can be heard."""
        self._sounds = {each.text: each.sounds for each in self.phrases}
        self.unspeakable = tuple(each.text for each in spoken if not each.sounds)
        """The phrases that have no sound, and so can never be heard."""
        self._phrase_tree = SoundTree([each.sounds for each in self.phrases])
        self._guarded = {
            at: (wordings.called[each.text].answers, " " in each.text)
            for at, each in enumerate(self.phrases)
            if each.text in wordings.called and each.text not in wordings.phrases
        }
        self._openings = _openings(wordings, pronouncer)
        befores = [opening.before_sounds for opening in self._openings]
        self._befores = [at for at, sounds in enumerate(befores) if sounds]
        self._before_tree = SoundTree([sounds for sounds in befores if sounds])
        frames = [frame for opening in self._openings for frame in opening.frames]
        self._bare = [at for at, frame in enumerate(frames) if frame.is_bare]
        afters = list(dict.fromkeys(("", *(frame.after for frame in wordings.frames))))
        self._opening = [at for at, opening in enumerate(self._openings) for _ in opening.frames]
        self._after = [afters.index(frame.after) for frame in frames]
        self._behind = [_NOTHING_ELSE, *pronouncer.sounds(afters[1:])]
        self._endings = Endings(self._behind)
        ways = list_address_ways(address)
        fronts = {
            way: sounds for way, sounds in zip(ways, pronouncer.sounds(list(ways)), strict=True) if sounds
        }
        self._fronts, self._ways = fronts, tuple(fronts)
        self.address_sounds: Sounds = fronts.get(address, ())
        """What the address word sounds like; empty if it has no sound or there is none."""
        self._address = SoundTree(list(fronts.values())) if fronts else None

    def best(
        self,
        likely: Any,
        most: int,
        within: float,
        *,
        addressed: bool = False,
        asked: Collection[Reply] = (),
        amid: bool = False,
        numbers: bool = True,
        floor: float = -math.inf,
    ) -> list[PhraseMatch]:
        """List what fits best, the best first.

        Args:
            likely: Natural log-probability of each sound in each frame: frames × columns.
            most: How many at most.
            within: How much less likely than the best they may be. A natural logarithm.
            addressed: Whether the address word has to stand in front, if there is one.
            asked: The questions that are open. A single word that answers one is heard while that is open and
                never else, a longer wording and a bare number behind the address word too.
            amid: Whether anything at all may be said before and after it.
            numbers: Whether what has a number in it is looked for, which takes most of the time.
            floor: Nothing is listed where nothing fits as well as this, and no time is spent on finding it.
                A natural logarithm.
        """
        called = addressed and self._address is not None
        start = self._start(likely, addressed, amid)
        free = log_anything(likely)
        endings = self._endings.points(likely, amid=amid)
        found: list[PhraseMatch] = []
        if self.phrases:
            points = self._phrase_tree.points(likely, start)
            scores = (points + endings[:, :1]).max(0) - free[-1]
            for at, (answers, is_longer) in self._guarded.items():
                if not (answers in asked or (called and (answers is None or is_longer))):
                    scores[at] = -math.inf
            for at in scores.argsort(kind="stable")[::-1][:most]:
                each = self.phrases[at]
                score = float(scores[at])
                found.append(
                    PhraseMatch(
                        text=each.text, figures=each.text, means=each.means, score=score, sounds=each.sounds
                    )
                )
        if self._openings and numbers:
            closest = max((match.score for match in found), default=-math.inf)
            least = max(closest, floor) - within
            bare = called or Reply.NUMBER in asked
            needed = floor if closest < floor else -math.inf
            after = endings[:, self._after]
            found += self._with_numbers(likely, start, free, after, least, bare=bare, needed=needed)
        found = [match for match in found if match.score > -math.inf]
        found.sort(key=lambda match: -match.score)
        if not found or found[0].score < floor:
            return []
        return [match for match in found[:most] if match.score >= found[0].score - within]

    def called(self, likely: Any, *, amid: bool = False) -> tuple[float, float]:
        """Return how well the address word fits, with anything after it and with nothing after it.

        Args:
            likely: As in `best`.
            amid: Whether anything at all may be said before it.

        Returns:
            Two natural log-probabilities, above that of the likeliest sounds of any kind: 0 or less, minus
            infinity without an address word.
        """
        if self._address is None:
            return -math.inf, -math.inf
        above = self._start(likely, addressed=True, amid=amid) - log_anything(likely)
        return float(above.max()), float(above[-1])

    def way_called(self, likely: Any) -> str:
        """Return the way to say the address word that fits best in front; empty without an address word.

        Args:
            likely: As in `best`.
        """
        if self._address is None:
            return ""
        above = self._address.points(likely) - log_anything(likely)[:, None]
        return self._ways[int(above.max(0).argmax())]

    def sounds_of(self, text: str) -> Sounds:
        """Return what a phrase or a single word sounds like; empty where it is none."""
        return self._sounds.get(text, ())

    def span(self, likely: Any, match: PhraseMatch) -> tuple[int, int]:
        """Find where in an utterance something was said behind the address word, with anything around it.

        Args:
            likely: As in `best`.
            match: What.

        Returns:
            The first frame of the address word, and the frame behind the last of the rest.
        """
        fronts = self._fronts.values() or (_NOTHING_ELSE,)
        return find_span(likely, [(*front, *match.sounds) for front in fronts])

    def _start(self, likely: Any, addressed: bool, amid: bool = False) -> Any:
        """Return the log-probability of what stands in front by each point: the address word, or silence.

        Where a cue may stand amid anything, that takes the place of the silence.
        """
        before = log_anything(likely) if amid else log_silence(likely)
        if not addressed or self._address is None:
            return before
        return self._address.points(likely, before).max(1)

    def begun(self, likely: Any, *, addressed: bool = False) -> float:
        """Return how well an utterance fits as the beginning of a cue with a number, which is still to come.

        That is an opening alone ("count is"), or one with a number that needs more words after it ("i have
        forty"). Openings without a word before the number are none.

        Args:
            likely: As in `best`.
            addressed: As in `best`.

        Returns:
            A natural log-probability, above that of the likeliest sounds of any kind: 0 or less, minus
            infinity if there is no opening.
        """
        if not self._befores:
            return -math.inf
        start = self._start(likely, addressed)
        points, free = self._before_tree.points(likely, start), log_anything(likely)
        best = float(points[-1].max() - free[-1])
        nearest = (points - free[:, None]).max(0).argsort(kind="stable")[::-1][:_MOST_OPENINGS]
        for at in nearest:
            opening = self._openings[self._befores[at]]
            if all(frame.after for frame in opening.frames):
                numbers = opening.tree.points(likely, points[:, at])
                best = max(best, float(numbers[-1].max() - free[-1]))
        return best

    def _with_numbers(
        self, likely: Any, start: Any, free: Any, after: Any, least: float, *, bare: bool, needed: float
    ) -> list[PhraseMatch]:
        """Look for numbers in the frames that fit best whatever is said in them; in bare ones only if asked
        to, and in none if none of them fits as well as is needed."""
        np = self._np
        before = np.repeat(start[:, None], len(self._openings), 1)
        if self._befores:
            before[:, self._befores] = self._before_tree.points(likely, start)
        anywhere = free[:, None]
        reached = np.maximum.accumulate(before - anywhere, 0) + anywhere
        bounds = (reached[:, self._opening] + after).max(0) - free[-1]
        if not bare:
            bounds[self._bare] = -math.inf
        best = np.full(len(self._openings), -math.inf)
        np.maximum.at(best, self._opening, bounds)
        found: list[PhraseMatch] = []
        if best.max() < needed:
            return found
        for at in best.argsort(kind="stable")[::-1][:_MOST_OPENINGS]:
            if best[at] < least:
                break
            opening = self._openings[at]
            points = opening.tree.points(likely, before[:, at])
            for column, frame in enumerate(opening.frames, self._opening.index(at)):
                if bounds[column] >= least:
                    scores = (points + after[:, column, None]).max(0) - free[-1]
                    behind = self._behind[self._after[column]]
                    found += [
                        opening.fit(frame, int(number), float(scores[number]), behind)
                        for number in scores.argsort(kind="stable")[::-1][:_NUMBERS]
                    ]
        return found


@dataclass(frozen=True, slots=True, kw_only=True)
class _Opening:
    """Frames that begin alike and take the same numbers."""

    before: str
    before_sounds: Sounds
    frames: list[Frame]
    numbers: list[tuple[str, float]]
    number_sounds: list[Sounds]
    tree: SoundTree

    def fit(self, frame: Frame, number: int, score: float, behind: Sounds) -> PhraseMatch:
        """Put a number into a frame."""
        said, value = self.numbers[number]
        return PhraseMatch(
            text=frame.around(said),
            figures=frame.around(_figures(said, value)),
            means=(frame.means, value),
            score=score,
            sounds=(*self.before_sounds, *self.number_sounds[number], *behind),
            number=value,
        )


def _openings(wordings: Wordings, pronouncer: Pronounces) -> list[_Opening]:
    """Put together the frames that begin alike; leave out those that no number can stand in."""
    alike: dict[tuple[str, int], list[Frame]] = {}
    trees: dict[int, tuple[list[tuple[str, float]], list[Sounds], SoundTree]] = {}
    for frame in wordings.frames:
        numbers = wordings.numbers_of(frame)
        if not numbers:
            continue
        if id(numbers) not in trees:
            said = _spoken(list(numbers), pronouncer)
            trees[id(numbers)] = list(numbers.items()), said, SoundTree(said)
        alike.setdefault((frame.before, id(numbers)), []).append(frame)
    befores = pronouncer.sounds([before for before, _ in alike])
    return [
        _Opening(
            before=before,
            before_sounds=sounds,
            frames=frames,
            numbers=trees[kind][0],
            number_sounds=trees[kind][1],
            tree=trees[kind][2],
        )
        for ((before, kind), frames), sounds in zip(alike.items(), befores, strict=True)
    ]


def _figures(said: str, value: float) -> str:
    """Write a number as prose does: 246, 12.5, "12 and a half"."""
    if value == int(value):
        return str(int(value))
    _, joined, part = said.partition(" and ")
    return f"{int(value)} and {part}" if joined else f"{value:g}"


def _spoken(texts: Sequence[str], pronouncer: Pronounces) -> list[Sounds]:
    """Return the sounds of numbers, each word looked up once."""
    words = sorted({word for text in texts for word in text.split()})
    known = dict(zip(words, pronouncer.sounds(words), strict=True))
    return [tuple(sound for word in text.split() for sound in known[word]) for text in texts]
