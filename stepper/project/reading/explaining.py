"""Explain why a line is not understood, and which legal word was probably meant. No I/O.

Theory of operation. The grammar stops at the misspelt word, or at another word of its sentence. Each word
around it is tried in turn: it is replaced by a legal word one slip away, and the line is read again. A word
that makes the whole line readable is the one that was meant; if several do, all are reported. The search then
continues in the mended line, so that a line with two slips gives two problems.
"""

from __future__ import annotations

import difflib
import re

from stepper.project.problems import one_of
from stepper.project.reading.parsing import APART, Stopped, legal_words, list_expected, split_label, stop_of
from stepper.project.reading.unsupported import find_unsupported
from stepper.project.spelling import near, slips
from stepper.records import dataclass
from stepper.regex import regex

_MOST_EXPECTED = 5
_MOST_REPAIRS = 4
_MOST_TWINS = 6
_MOST_TRIALS = 80
"""Most lines read in the search for one word; each costs about a third of a millisecond."""
_MOST_MENDED = 1000
"""Longest line searched for a misspelt word, in letters; in longer ones each trial costs too much."""
_WORD = regex(r"[^\W_][\w'&]*")
_HEADS = ("rnd", "rnds", "round", "rounds", "row", "rows")


@dataclass(frozen=True, slots=True)
class Repair:
    """One word, and the legal words that may have been meant."""

    offset: int
    """Offset of the word in the line as written, from 0."""
    word: str
    twins: tuple[str, ...]
    """Nearest first."""


@dataclass(frozen=True, slots=True)
class Slip:
    """One thing wrong with a line."""

    offset: int
    length: int
    message: str
    hint: str


@dataclass(frozen=True, slots=True)
class Explained:
    """What is wrong with a line, and how it reads with the words that were meant."""

    slips: tuple[Slip, ...]
    mended: str
    """The line with the suggested words; empty if none mend it."""
    repairs: tuple[Repair, ...] = ()


def explain(
    plain: str,
    start: int,
    stopped: Stopped,
    names: frozenset[str],
    examples: tuple[str, ...],
    trials: Trials | None = None,
) -> Explained:
    """Say what stopped the reading and what would be legal.

    Args:
        plain: The line, made plain.
        start: Where its body begins, after the label.
        stopped: Where the reading of the body stopped.
        names: Words that the garment adds: charts, yarns.
        examples: Legal lines, one of which is offered if it says almost the same.
        trials: How many lines may still be read in the search for the words meant; no bound if None.
    """
    if stopped.why and len(plain) > _MOST_MENDED:
        return Explained((Slip(start + stopped.offset, 1, stopped.why, stopped.hint),), "")
    repairs, mended = mend(plain, names, trials)
    misspelt = mended is not None and not any(repair.word.lower() in legal_words() for repair in repairs)
    if stopped.why and not misspelt:
        hint = stopped.hint
        if hint == APART and [each.offset for each in repairs if mended] == [start + stopped.offset]:
            hint = f"{meant_words(repairs[0])} {hint}"  # "then sts" orders, or is a slip for "the sts"
        slip = Slip(start + stopped.offset, max(1, len(stopped.found)), stopped.why, hint)
        return Explained((slip,), "")
    kind = find_unsupported(plain) if repairs else None
    if kind is not None and any(0 <= repair.offset - kind.offset < kind.length for repair in repairs):
        # "the marked stitch" is no slip for "the marker": it asks for something else.
        return Explained((Slip(kind.offset, kind.length, kind.message, kind.hint),), "")
    slips = [_repaired(repair) for repair in repairs]
    if mended is None and not repairs:
        slips.append(_stopped_at(plain, start, stopped, names, examples))
    return Explained(tuple(slips), mended or "", tuple(repairs))


def meant_words(repair: Repair) -> str:
    """Ask which word was meant."""
    choices = one_of(f'"{twin}"' for twin in repair.twins)
    return f"Did you mean {choices}?"


def _repaired(repair: Repair) -> Slip:
    word = repair.word
    return Slip(repair.offset, len(word), f'"{word}" is not understood here.', meant_words(repair))


def misspelt_head(label: str | None) -> Repair | None:
    """Find a misspelt head that was read as a label: "Rdn 1"; None if it really is a label."""
    match = re.match(r"(?:short[-\s]?)?([a-z]+)\.?\s*\d", label or "", re.I)
    word = match.group(1) if match else ""
    if match is None or len(word) < 2 or word.lower() in _HEADS or word.lower() in legal_words():
        return None
    twins = [choice for count, choice in near(word, _HEADS) if count == 1]
    return Repair(match.start(1), word, tuple(twins)) if twins else None


def _stopped_at(
    plain: str, start: int, stopped: Stopped, names: frozenset[str], examples: tuple[str, ...]
) -> Slip:
    """Say which word stops the line, and what to write instead if that is known.

    The word at which the reading stops may be legal, as "using" is, and the one after it unknown: the first
    word from there to the end of the sentence that is in no legal line is reported.
    """
    offset = start + stopped.offset
    kind = find_unsupported(plain)
    if kind is not None:
        return Slip(kind.offset, kind.length, kind.message, kind.hint)
    hint = _nearest_line(plain[start:], examples)
    if not stopped.found:
        return Slip(offset, 1, f"the line ends too early{_expecting(stopped)}.", hint)
    strange = _stranger(plain, offset, names)
    if strange is not None and strange.start() > offset:
        return Slip(
            strange.start(), len(strange.group()), f'"{strange.group()}" is not understood here.', hint
        )
    if plain[offset : offset + 1].isspace() or not plain[offset : offset + 1].isalnum():
        offset += len(plain[offset:]) - len(plain[offset:].lstrip(" ,;"))
    while plain[offset - 1 : offset].isalnum() and plain[offset : offset + 1].isalnum():
        offset -= 1
    found = _whole_words(plain, offset) or stopped.found
    what = f'"{found}" is not understood here'
    return Slip(offset, max(1, len(found)), f"{what}{_expecting(stopped)}.", hint)


def _expecting(stopped: Stopped) -> str:
    expected = _expected_words(list_expected(stopped))
    return f"; expected {expected}" if expected else ""


def _stranger(plain: str, offset: int, names: frozenset[str]) -> re.Match[str] | None:
    """Find the first word from an offset to the end of its sentence that is in no legal line."""
    end = re.compile(r"[.!](?=\s|$)").search(plain, offset)
    known = (
        legal_words()
        | {name.lower() for name in names}
        | {part for name in names for part in name.lower().split()}
    )
    for match in _WORD.finditer(plain, offset, end.start() if end is not None else len(plain)):
        word = match.group().lower()
        if word not in known and word not in _COMMON and not any(letter.isdigit() for letter in word):
            return match
    return None


_COMMON = frozenset(
    {
        "a", "an", "the", "of", "on", "in", "at", "to", "for", "from", "with", "and", "or", "then", "as",
        "by", "all", "each", "left", "right", "front", "back", "sleeve", "sleeves", "body", "neck",
        "armhole", "armholes", "shoulder", "shoulders", "edge", "edges", "side", "sides", "marker",
        "markers", "is", "are", "be", "it", "this", "these", "that", "your", "you",
    }
)  # fmt: skip
"""Words that may be in any sentence of a pattern, and never stop it."""


@dataclass(slots=True)
class Trials:
    """How many more lines may be read to find the words meant, in one file.

    Each word tried costs the reading of a line; a file with seventy bad lines would take seconds.
    """

    left: int = 600


def mend(plain: str, names: frozenset[str], trials: Trials | None = None) -> tuple[list[Repair], str | None]:
    """Replace misspelt words by legal ones, one after the other, until the line reads.

    Returns:
        The words, in line order, and the mended line; None if it still does not read.
    """
    # A yarn is known by its capitals: "in MC".
    known = legal_words() | names | {part for name in names for part in name.lower().split()}
    text, repairs, grown = plain, list[Repair](), list[tuple[int, int]]()
    for _ in range(_MOST_REPAIRS):
        stop = stop_of(text, spoken=False)
        if stop is None:
            break
        if len(text) > _MOST_MENDED:
            return [], None
        found = _best(text, stop, known, trials or Trials(_MOST_TRIALS * _MOST_REPAIRS))
        if found is None:
            return sorted(repairs, key=lambda repair: repair.offset), None
        moved = sum(by for at, by in grown if at <= found.offset)
        repairs.append(Repair(found.offset - moved, found.word, found.twins))
        text = text[: found.offset] + found.twins[0] + text[found.offset + len(found.word) :]
        grown.append((found.offset, len(found.twins[0]) - len(found.word)))
    done = stop_of(text, spoken=False) is None
    return sorted(repairs, key=lambda repair: repair.offset), text if done else None


def _best(text: str, stop: int, known: frozenset[str], left: Trials) -> Repair | None:
    """Find the word whose legal replacement lets the line be read to its end, or at least further."""
    further: Repair | None = None
    trials = 0
    labelled = split_label(text)[0] is not None
    for count, _, match, twins in _candidates(text, stop, known):
        fits = []
        for twin in twins:
            trials += 1
            left.left -= 1
            if trials > _MOST_TRIALS or left.left < 0:
                return further
            trial = text[: match.start()] + twin + text[match.end() :]
            if not labelled and split_label(trial)[0] is not None:
                continue  # a head that became a label is not what was meant
            after = stop_of(trial, spoken=False)
            if after is None:
                fits.append(twin)
            elif further is None and count == 1 and len(match.group()) >= 4 and after > stop + len(twin) + 2:
                further = Repair(match.start(), match.group(), (twin,))
        if fits:
            return Repair(match.start(), match.group(), tuple(dict.fromkeys(fits))[:_MOST_TWINS])
    return further


def _candidates(
    text: str, stop: int, known: frozenset[str]
) -> list[tuple[float, int, re.Match[str], list[str]]]:
    """List the words around an offset with their replacements: fewest slips first, unknown words first."""
    words = list(_WORD.finditer(text))
    at = next((number for number, match in enumerate(words) if match.end() > stop), len(words))
    found = []
    end = re.compile(r"[.!](?=\s|$)").search(text, stop)
    for number in range(max(0, at - 6), min(len(words), at + 15)):
        match = words[number]
        if end is not None and match.start() > end.start():
            break
        word = match.group().lower()
        if _is_no_slip(text, match):
            continue
        away = abs(number - at)
        penalty = 0.5 if word in known or word.isdigit() else 0.0
        groups: dict[int, list[str]] = {}
        twins = () if word.isdigit() else near(word, known)
        for count, twin in [*_numbered(word), *twins]:
            if count == 0 or (penalty and count > 1):
                continue
            groups.setdefault(count, []).append(twin)
        found += [(count + penalty, away, match, twins) for count, twins in groups.items()]
    return sorted(found, key=lambda entry: entry[:2])


def _is_no_slip(text: str, match: re.Match[str]) -> bool:
    """Return whether a word is meant as it stands: a side of the work, or the letter of a step, "A."."""
    word = match.group()
    lettered = len(word) == 1 and word.isupper() and text[match.end() : match.end() + 1] == "."
    return word in ("RS", "WS") or (lettered and not text[: match.start()].strip())


def _numbered(word: str) -> list[tuple[int, str]]:
    """Return what a word with a number may stand for: "kn2" and "2k" for k2, "16ht" for 16th, "3" for k3."""
    digits = re.sub(r"\D", "", word)
    if not digits:
        return []
    twins = [f"k{digits}", f"p{digits}", f"sl{digits}"]
    twins += [] if word.isdigit() else [_nth(digits)]
    found = [(slips(word, twin), twin) for twin in twins]
    return sorted((count, twin) for count, twin in found if count == 1)


def _nth(digits: str) -> str:
    """Write an ordinal: 1st, 2nd, 3rd, 4th, 11th."""
    teens = digits[-2:-1] == "1"
    return digits + ("th" if teens else {"1": "st", "2": "nd", "3": "rd"}.get(digits[-1], "th"))


def _expected_words(expected: tuple[str, ...]) -> str:
    items = list(expected)
    if len(items) > _MOST_EXPECTED:
        first = ("an instruction", "a stitch", "a number", "a length")
        items = [item for item in first if item in items] + [item for item in items if item not in first]
        items = items[:_MOST_EXPECTED]
    if len(items) < 2:
        return "".join(items)
    return f"{', '.join(items[:-1])} or {items[-1]}"


def _whole_words(plain: str, offset: int) -> str:
    match = re.match(r"\S+?(?=[\s,.;:)\]]|$)", plain[offset:])
    return match.group() if match else plain[offset : offset + 1]


def _nearest_line(body: str, examples: tuple[str, ...]) -> str:
    """Offer a legal line that says almost the same, numbers aside; to words that work nothing, the note."""
    said = _bare(body)
    best, shared = "", 0.0
    for example in examples:
        words = _bare(example)
        alike = difflib.SequenceMatcher(None, said, words, autojunk=False).ratio()
        strange = len(set(said) ^ set(words))
        if alike > shared and alike >= _ALIKE and strange <= _MOST_STRANGE:
            best, shared = example, alike
    note = "" if _WORKS.search(body) else _AS_NOTE  # a note would leave out what the line works
    offered = f"A line that can be read: {best}" if best else ""
    return "  ".join(part for part in (offered, note) if part)


_ALIKE = 0.75
"""How alike two lines must be for one to be offered for the other. Range: 0 to 1; an assumption."""
_MOST_STRANGE = 2
_WORKS = regex(r"\d|\b(?:[kp]|ssk|yo|pm|sm)\b", re.I)
"""Signs of a line that works stitches."""
_AS_NOTE = "Words that are only to be said can stand as a note: Note: …"


def _bare(line: str) -> list[str]:
    """Return the words of a line, every number replaced by the same sign."""
    return [re.sub(r"\d+", "9", word) for word in re.findall(r"[a-z0-9*]+", line.lower())]
