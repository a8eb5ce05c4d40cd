"""Find runs of words of an unread sentence that may be struck out: they order nothing, and are said. No I/O.

"Cont even until piece measures 11 cm, or until it reaches your fingertip" is read without its second half.
What is told beside the work may be struck: an alternative, a reason, a wish, what stands in brackets behind
it. It is known by the word it begins with, and may hold what shapes nothing and says neither for whom nor
with what. So may a phrase of a third of the sentence at most: a likeness or a reason without any word by
which something could be ordered (no number, no verb of the craft, no part, side, needle, yarn or stitch, no
limit, no negation, no name), or words between commas that are all known to order nothing. A word that
nobody knows is never taken for one that orders nothing: "picot", "trellis" and "slope" are such.
Source: English grammar; common practice.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Final

from stepper.project.page.orders import has_row_head
from stepper.project.reading.parsing import legal_words
from stepper.project.rewording.clauses import word_classes as of
from stepper.project.rewording.synonym import word_set
from stepper.records import dataclass
from stepper.regex import regex

_UNSHAPED: Final = regex(r"without\s+(?:any\s+)?(?:further\s+)?shaping", re.I)
_BEGINS: Final = regex(
    r"\s*[(\[](?=[^()\[\]]*[a-z]{3})|\s*[,;]\s+(?:or|so|taking|being|making\s+sure|remembering|as|which"
    r"|not\s+(?:like|too)|for|to\s+be|preferably|ideally|see|without\s+(?:any\s+)?(?:further\s+)?shaping)\b"
    r"|\s+(?:or\s+(?:until|for|to|the|as|your|whatever|longer|desired)"
    r"|if\s+(?:possible|necessary|needed|liked|preferred|desired)|so\s+(?:that|as)|in\s+order\s+to)\b",
    re.I,
)
"""Where words begin that are told beside the work."""
_ENDS: Final = regex(r"\s*(?:[.;,)\]]|$)")
_WORKS: Final = regex(
    r"\b(?:[kp]\s?\d+|[kp]\d?tog\w*|ssk|ssp|yo|m1\w*|sl\s?\d*|tog|together|knit(?:ting)?|purl(?:ing)?"
    r"|(?:inc|dec)(?:reas\w*)?|(?:bind|cast)(?:ing)?\s+o(?:n|ff)|bo|co|pick\w*|join\w*|turn\w*|hold\w*|place|slip\w*"
    r"|rep(?:eat\w*)?|every|each|next|last|times|twice|once|rows?\s+\d|\d+\s*(?:sts?|stitches|rows|rnds|rounds)"
    r"|revers\w*|shap\w*|change|changing|at\s+the\s+same\s+time|mark\w*)\b",
    re.I,
)
"""Words that change what is knitted: what holds one is never struck."""
_LASTS: Final = regex(r"\b(?:until|for|to)\b|\b\d", re.I)
_CHOICE: Final = regex(
    r"^\W*or\b|\bif\s+(?:possible|liked|preferred|desired)\b|\bpreferably\b|\bideally\b|\bso\s+much\s+the\b",
    re.I,
)
"""How long is worked may only be struck where it is another choice, or a wish."""
_SEEN: Final = regex(r"^\W*(?:see|as\s+(?:shown|above|below))\b", re.I)

_WORD: Final = regex(r"[^\s()\[\],;:]+")
_LIKE: Final = word_set("like because since thanks")
"""Words that begin a likeness or a reason."""
_NEVER: Final = (
    of.CRAFT
    | of.GENERAL
    | of.FABRIC
    | of.COLOURS
    | of.LIMITS
    | of.NUMBERS
    | of.NEGATIONS
    | of.STITCH_THINGS
    | of.PARTS
    | of.PREPOSITIONS - word_set("of for to by like thanks because")
    | of.SUBORDINATING - word_set("because since as that which who so")
    | of.AUXILIARIES
    | of.MODALS
    | of.SELF
    | of.YOU
    | of.IT - frozenset(["that"])
    | word_set(
        """
        all total altogether also more most any some few several many enough within up then them its same
        back here there start k p rs ws dpn inch inches cm mm patt together apart away ahead later first
        meanwhile still yet short long lower upper inner outer outermost inside outside near far high low
        wide narrow centre central whichever man men woman women lady ladies girl girls boy boys child
        children adult adults baby babies kids toddler picot turned afterwards beforehand simultaneously
        tight tightly loose loosely doubled side method provisional stretchy
        """
    )
)
"""Words by which something could be ordered or referred to: a phrase that holds one is never struck."""
_HARMLESS: Final = (
    of.CRIES | of.ADVERBS | of.MINDING | of.SHOWING | of.TROUBLES | of.DETERMINERS
    | word_set("sort kind bit of so")
) - _NEVER  # fmt: skip
"""Words that are known to order nothing."""
_SAYS: Final = (
    of.AUXILIARIES | of.MODALS | of.MINDING | of.SHOWING | of.SELF | of.SUBORDINATING | word_set("my our")
)
"""What a bracket holds that says something, and names no stitch or pattern."""
_SCOPE: Final = regex(
    r"\b(?:only|optional(?:ly)?|sizes?|m[ae]n|wom[ae]n|lad(?:y|ies)|girls?|boys?|child(?:ren)?|adults?|bab(?:y|ies)"
    r"|kids|toddlers?|(?:right|wrong)\s+side"
    r"|[rw]s|mc|cc\d?|n\d|needles?|dpns?|colou?rs?|yarns?|strands?|except|both|through|loops?|using|instead"
    r"|but|if\s+(?!possible|necessary|needed|liked|preferred|desired|a\b)|when|unless|where"
    r"|without\s+(?!(?:any\s+|further\s+)*shaping)"
    r"|end(?:s|ing)?|begin\w*|start(?!\s+of)\w*|[a-z]+\d\w*)\b",
    re.I,
)
"""Words that say for whom, on which side, with what, where, when, and what else."""
_AS_ELSEWHERE: Final = regex(r"^\W*(?:as|for)\b", re.I)
_ELSEWHERE: Final = of.PARTS | of.STITCH_THINGS | word_set("for before given set established")
"""What a row is worked like, or for."""
_ORDERING: Final = (of.CRAFT | of.FABRIC | of.COLOURS) - word_set("work even pattern")
"""Words that order, or say in what is worked, wherever they stand."""
_MOST_SHARE: Final = 3
"""A run is at most one word in so many of its sentence."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Struck:
    """A sentence without some of its words."""

    text: str
    """What is left to be read."""
    words: str
    """The words struck, as printed."""
    start: int
    """Where they begin in the sentence, from 0. Unit: letters."""
    end: int
    """Where they end."""
    told: bool
    """Whether they are told beside the work: an alternative, a reason, a wish."""

    @property
    def cost(self) -> tuple[bool, int]:
        """How much is struck: what is told beside the work first, then by the number of words."""
        return not self.told, len(self.words.split())


def ways_to_strike(plain: str) -> tuple[Struck, ...]:
    """List the ways to strike words out of a sentence: what is told beside the work first, by length.

    Args:
        plain: One sentence, with single spaces.
    """
    ways = {(way.text, way.words): way for way in (*_phrases(plain), *_told(plain), *_set_off(plain))}
    return tuple(sorted(ways.values(), key=lambda way: way.cost))


def _told(plain: str) -> Iterator[Struck]:
    """Yield the ways to strike what is told beside the work, or all from one place to the end."""
    for match in _BEGINS.finditer(plain):
        start = match.start()
        if not start:
            continue  # in front of an order it says for whom, or where
        for end in _ENDS.finditer(plain, match.end()):
            stop = end.end() if end[0].strip() in (")", "]") else end.start()
            words = plain[start:stop].strip(" ,;()[].")
            if not _is_whole(plain[start:stop]) or not _is_told(words):
                continue
            if plain[start:stop].lstrip()[:1] in ("(", "[") and not _says(words):
                continue
            at = plain.index(words, start)
            kept = re.sub(r"\s+(?=[,.;])", "", f"{plain[:start]}{plain[stop:]}".strip())
            if stop == len(plain) and not kept.endswith((".", ":")):
                kept = f"{kept}."
            if kept and end[0].strip() == ",":  # the words stood between two commas
                text = f"{plain[:start]} {plain[stop:].lstrip(' ,')}"
                yield Struck(text=text, words=words, start=at, end=at + len(words), told=True)
            if kept and not has_row_head(words):
                yield Struck(text=kept, words=words, start=at, end=at + len(words), told=True)


_SET_OFF: Final = regex(
    r"^(?P<heading>(?:to|for)\s+(?:(?:shape|slope|form|work|make|round)\s+)?"
    r"the\s+(?:shoulders?|armholes?|neck|crown|raglans?|waist))\s?[.:]?\s?(?:[–—-]{1,2}|(?<=[.:])\s)\s*(?=\S)"
    r"|(?<=\S)\s*,\s+(?P<method>(?:(?:using|by)\s+)?(?:the\s+|an?\s+)?[a-z'’-]+(?:\s+[a-z'’-]+)?\s+"
    r"(?:method|cast[\s-]on|bind[\s-]off))(?=\s*\.?$)",
    re.I,
)
"""Words set off by their place: for which shaping a row is, and how it is cast on or bound off."""


def _set_off(plain: str) -> Iterator[Struck]:
    """Yield the ways to strike a heading of a shaping that is run in, or a method."""
    for match in _SET_OFF.finditer(plain):
        name = "heading" if match["heading"] else "method"
        if name == "method" and not _METHOD_OF.match(plain):
            continue
        text = f"{plain[: match.start()]}{plain[match.end() :]}"
        yield Struck(text=text, words=match[name], start=match.start(name), end=match.end(name), told=False)


_METHOD_OF: Final = regex(r"[^.]*\b(?:cast\s+o(?:n|ff)|bind\s+off|co|bo)\b", re.I)


def _is_whole(run: str) -> bool:
    """Return whether a run is cut out of no bracket, and is one if it begins with one."""
    plain = run.strip(" ,;")
    depth = 0
    for at, sign in enumerate(plain):
        depth += (sign in "([") - (sign in ")]")
        if depth < 0 or (plain[0] in "([" and not depth and at + 1 < len(plain)):
            return False
    return depth == 0


def _says(words: str) -> bool:
    """Return whether words in brackets say something or are all known; else they may name a pattern."""
    said = [_plain(word) for word in words.replace(",", " ").split()]
    return said[0] == "see" or not _SAYS.isdisjoint(said) or of.ALL.issuperset(said)


def _is_told(words: str) -> bool:
    """Return whether some words are told beside the work and change nothing that is knitted."""
    if _UNSHAPED.fullmatch(words):
        return True
    if _AS_ELSEWHERE.match(words) and not _ELSEWHERE.isdisjoint(words.lower().split()[1:]):
        return False
    if _SCOPE.search(words) or not _ORDERING.isdisjoint(re.findall(r"[a-z0-9&'-]+", words.lower())):
        return False
    if _WORKS.search(words) or re.search(r"[.!?]\s+[A-Z]", words):
        return False
    if _SEEN.match(words):
        return True
    return _CHOICE.search(words) is not None or not _LASTS.search(words)


def _phrases(plain: str) -> Iterator[Struck]:
    """Yield the ways to strike a likeness or a reason, or words between commas that order nothing."""
    words = list(_WORD.finditer(plain))
    most = len(words) // _MOST_SHARE
    for first, begin in enumerate(words[1:], start=1):  # the first word orders
        alike = _plain(begin[0]) in _LIKE
        if not alike and not _is_set_off(plain[words[first - 1].end() : begin.start()]):
            continue
        for last in range(first, min(first + most, len(words))):
            word, end = words[last][0], words[last].end()
            if not (_orders_nothing(word) if alike else _plain(word) in _HARMLESS):
                break
            ends = word.endswith(".") or not plain[end:].strip() or _is_set_off(plain[end : end + 1])
            if ends and (last > first or not alike):
                yield _without(plain, begin.start(), end)


def _is_set_off(between: str) -> bool:
    """Return whether a comma or the like stands between two words."""
    return between.strip() in (",", ";", ".", ":")


def _orders_nothing(word: str) -> bool:
    """Return whether a word is of none of the classes by which something could be ordered."""
    plain = _plain(word)
    if plain in _LIKE:
        return True
    if plain in ("a", "an", "the", "my", "your"):
        return True
    if not plain.isalpha() or not plain[1:] or not word.strip("\"'“”*").islower():
        return False  # letters alone are a yarn or a side; a capital begins a name
    return plain not in _NEVER and plain not in legal_words() - _HARMLESS


def _plain(word: str) -> str:
    return word.strip(".!?\"'“”*").lower().replace("’", "'")


def _without(plain: str, start: int, end: int) -> Struck:
    """Strike one run, with one of two commas around it; a full stop at its end stays."""
    words = plain[start:end].rstrip(".")
    before, behind = plain[:start].rstrip(), plain[start + len(words) :].lstrip()
    if before.endswith((",", ";")) and (not behind or behind[0] in ",;."):
        before = before[:-1].rstrip()
    joint = "" if behind[:1] in (",", ";", ":", ".", ")", "") else " "
    text = f"{before}{joint}{behind}"
    return Struck(text=text, words=words, start=start, end=start + len(words), told=False)
