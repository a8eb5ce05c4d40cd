"""A round of even changes as a phrase: how it is built, said and printed, and how many words it takes.

A phrase is a tuple of parts. `Stretch(11, 15)` is "knit 11, make one, 15 times", `Plain(3)` "knit 3", and a
`Repeat` is parts worked over and over. `Change` says which change is meant.

How it is said so that the ear can tell what is repeated:

- "so many times" after something covers all that was said since the last "times", "once" or "then". So a
  single stretch in front of a repeated one is closed: by "then", or inside a repeat by "once".
- A repeat of single stretches ends with its times: "knit 4, make one, knit 3, make one, 11 times".
- A repeat of stretches with times of their own begins with its times, "8 times: …", and lasts until "then" or
  the end of the round. Such a repeat stands inside another one only if that one is the whole round, which is
  then said as "all this 3 times: …".

The measure of a phrase is its words as said, numbers in words: "knit twenty one, make one, six times" has
seven. Numbers are figures in what `speak_phrase` returns; they become words where it is spoken. No I/O.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import cache

from stepper.craft.stitches import stitch
from stepper.records import dataclass


@dataclass(frozen=True, slots=True)
class SpacedStretch:
    """Plain stitches and a change, worked a number of times."""

    gap: int
    """Plain stitches before the change. Range: 0 and up."""
    times: int = 1
    """Range: 1 and up."""


@dataclass(frozen=True, slots=True)
class Plain:
    """Plain stitches with no change after them."""

    stitches: int
    """Range: 1 and up."""


@dataclass(frozen=True, slots=True)
class Repeat:
    """Parts worked over and over."""

    parts: tuple[Part, ...]
    times: int
    """Range: 2 and up."""

    @property
    def nested(self) -> bool:
        """Whether something inside has its own times."""
        return any(isinstance(part, Repeat) or _has_times(part) for part in self.parts)

    @property
    def deep(self) -> bool:
        """Whether a repeat that begins with its times stands inside."""
        return any(isinstance(part, Repeat) and part.nested for part in self.parts)


Part = SpacedStretch | Plain | Repeat
Phrase = tuple[Part, ...]

MAKE_ONE = "m1"
KNIT_TOGETHER = "k2tog"


def unfold(phrase: Sequence[Part]) -> tuple[tuple[int, ...], int]:
    """Work a phrase.

    Returns:
        The plain stitches before each change, in order, and those after the last.

    Source: counting.
    """
    gaps: list[int] = []
    since = 0
    for leaf in _leaves(phrase):
        if isinstance(leaf, Plain):
            since += leaf.stitches
            continue
        gaps += [since + leaf.gap] + [leaf.gap] * (leaf.times - 1)
        since = 0
    return tuple(gaps), since


def _leaves(phrase: Sequence[Part]) -> Iterator[SpacedStretch | Plain]:
    for part in phrase:
        if isinstance(part, Repeat):
            for _ in range(part.times):
                yield from _leaves(part.parts)
        else:
            yield part


def speak_phrase(phrase: Sequence[Part], change: str, plain: str = "k") -> str:
    """Say a phrase, with its numbers in figures.

    Args:
        phrase: The round or a part of it.
        change: Code of the change in the stitch table: `m1`, `k2tog`.
        plain: Code of the stitch between the changes: `k`, `p`.

    Returns:
        Lower case, no full stop: "8 times: knit 4, make one, 4 times; knit 3, make one, 3 times".
    """
    worked = stitch(plain).counted, stitch(change).said.replace(",", "")
    return "".join(_spoken(phrase, worked, inside=False))


def _spoken(parts: Sequence[Part], worked: tuple[str, str], *, inside: bool) -> Iterator[str]:
    counted, change = worked
    for number, (part, link) in enumerate(zip(parts, links(parts), strict=True)):
        if number:
            after_single = _is_single(parts[number - 1])
            if link and inside and after_single and not _leads(part):
                yield ", once; "
            elif link:
                yield "; then "
            else:
                yield ", " if after_single else "; "
        if isinstance(part, Plain):
            yield counted.format(n=part.stitches)
        elif isinstance(part, SpacedStretch):
            yield (f"{counted.format(n=part.gap)}, " if part.gap else "") + change
            yield f", {part.times} times" if part.times > 1 else ""
        elif part.nested:
            yield f"all this {part.times} times: " if part.deep else f"{part.times} times: "
            yield from _spoken(part.parts, worked, inside=True)
        else:
            yield from _spoken(part.parts, worked, inside=True)
            yield f", {part.times} times"


def links(parts: Sequence[Part]) -> tuple[int, ...]:
    """Count the words between the parts: 1 where "then" or "once" parts one from the one before, else 0."""
    found = []
    for number, part in enumerate(parts):
        before = parts[number - 1] if number else None
        needed = before is not None and (
            _leads(before) or _leads(part) or (_is_single(before) and not _is_single(part))
        )
        found.append(int(needed))
    return tuple(found)


def _has_times(part: Part) -> bool:
    return isinstance(part, SpacedStretch) and part.times > 1


def _is_single(part: Part) -> bool:
    return not isinstance(part, Repeat) and not _has_times(part)


def _leads(part: Part) -> bool:
    """Return whether a part is said with its times in front."""
    return isinstance(part, Repeat) and part.nested


def words_in(phrase: Sequence[Part], change: str) -> int:
    """Count the words of a phrase as it is said.

    Args:
        phrase: The round or a part of it.
        change: Code of the change in the stitch table.
    """
    return _words(phrase, len(stitch(change).said.split()))


def _words(parts: Sequence[Part], change: int) -> int:
    total = sum(links(parts))
    for part in parts:
        if isinstance(part, Plain):
            total += 1 + number_words(part.stitches)
        elif isinstance(part, SpacedStretch):
            total += stretch_words(part.gap, change) + times_words(part.times)
        else:
            total += _words(part.parts, change) + times_words(part.times) + (2 if part.deep else 0)
    return total


def stretch_words(gap: int, change: int) -> int:
    """Count the words of "knit 11, make one", given those of the change."""
    return (1 + number_words(gap) if gap else 0) + change


@cache
def times_words(times: int) -> int:
    """Count the words of "15 times"; once is not said."""
    return number_words(times) + 1 if times > 1 else 0


def number_words(number: int) -> int:
    """Count the words of a whole number said without "and" and without hyphens.

    Args:
        number: Range: 1 to 999,999.

    Source: English cardinals; the tests compare with the numbers that the program says.
    """
    thousands, below = divmod(number, 1000)
    hundreds, rest = divmod(below, 100)
    last = 0 if rest == 0 else 2 if rest > 20 and rest % 10 else 1
    return (number_words(thousands) + 1 if thousands else 0) + (2 if hundreds else 0) + last


def print_phrase(phrase: Sequence[Part], change: str) -> str:
    """Write a phrase in the trade's abbreviations: "[(k4, m1) 4 times, (k3, m1) 3 times] 8 times"."""
    return ", ".join(_printed(part, change) for part in phrase)


def _printed(part: Part, change: str) -> str:
    if isinstance(part, Plain):
        return f"k{part.stitches}"
    if isinstance(part, Repeat):
        start, end = "[]" if part.nested else "()"
        return f"{start}{print_phrase(part.parts, change)}{end} {part.times} times"
    once = f"k{part.gap}, {change}" if part.gap else change
    if part.times == 1:
        return once
    return f"({once}) {part.times} times" if part.gap else f"{once} {part.times} times"
