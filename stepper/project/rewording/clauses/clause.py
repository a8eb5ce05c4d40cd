"""Cut a sentence into clauses, and tell of each what it does: state, order, ask, set a condition, or only name. No I/O.

Theory of operation. A clause is told by the words of closed classes: it states if a finite verb stands behind who or what it is
about, orders if it begins with a verb, asks if it begins with an asking word or an auxiliary, sets a condition behind "if" and
the like. What has no verb is a phrase: it belongs to the clause beside it. A word of no class is a name, unless an object
follows it at the beginning of a clause: then it is a verb nobody has listed, and the clause orders.
Source: English grammar.
"""

from __future__ import annotations

from enum import Enum
from typing import Final

from stepper.project.rewording.clauses import word_classes as of
from stepper.project.rewording.synonym import word_set
from stepper.records import dataclass
from stepper.regex import regex


class Mood(Enum):
    """What a clause does."""

    STATES = "states"
    ORDERS = "orders"
    FORBIDS = "forbids"
    ASKS = "asks"
    CONDITION = "condition"
    PHRASE = "phrase"


@dataclass(frozen=True, slots=True)
class Clause:
    """One clause of a sentence."""

    mood: Mood
    words: tuple[str, ...]
    """All of its words, without those that only join it."""
    subject: tuple[str, ...] = ()
    """Of a statement: who or what it is about."""
    verbs: tuple[str, ...] = ()
    """Its finite verb, with the verb behind an auxiliary or modal; of an order its verb alone."""
    rest: tuple[str, ...] = ()
    """What stands behind the verb."""
    joint: str = ""
    """What joins it to the clause before: "if", "because"; empty if nothing."""


_TOKEN: Final = regex(
    r"\d[\d.,/\u00bd\u00bc\u00be]*|[a-z0-9&]+(?:['-][a-z]+)*|'[a-z]+|[,;:()\"]|-(?=\s)|[^\s]"
)
_SHORT: Final = regex(
    r"\b(i|you|we|they|it|he|she|that|this|there|here|what|who|where|how|let|these|those|nobody|everyone|everybody|one)('(?:s|re|ve|m|d|ll))\b"
)
_SIGNS: Final = frozenset(",;:()-!\"'\u2026")
_PRONOUNS: Final = of.SELF | of.YOU | of.IT | of.PEOPLE | of.THERE
_FREE_CONDITIONS: Final = frozenset(["if", "when", "whenever", "unless", "until", "till", "once", "while"])
_REASONS: Final = frozenset(["because", "although", "though", "since", "as", "so"])
_JOINTS: Final = frozenset(["and", "but", "or", "so", "yet", "then"])
_SHORT_CONDITIONS: Final = word_set(
    "necessary needed desired preferred possible required wished so blocked dry washed finished done "
    "worn completely"
)
_CONTRACTED: Final = frozenset(["'s", "'re", "'ve", "'m", "'d", "'ll"])
_FINITE: Final = of.AUXILIARIES | of.MODALS | _CONTRACTED
_VERBS: Final = of.SHOWING | of.GENERAL | of.MINDING | of.CRAFT
_OBJECTS: Final = of.DETERMINERS | frozenset(["it", "them", "me", "us", "yourself", "everything", "all"])
_BEFORE_VERBS: Final = of.ADVERBS | of.NEGATIONS | frozenset(["both", "all"])


def words_of(text: str) -> list[str]:
    """Return the words and signs of a sentence in small letters, contractions taken apart."""
    return _TOKEN.findall(_SHORT.sub(r"\1 \2", text.lower()))


def clauses_of(words: list[str]) -> list[Clause]:
    """Cut the words of a sentence into clauses, phrases among them.

    Args:
        words: As `words_of` returns them, without the sign that ends the sentence.
    """
    return [_clause(joint, piece) for joint, piece in _pieces(words) if piece]


def _pieces(words: list[str]) -> list[tuple[str, list[str]]]:
    """Return the stretches of a sentence that may be clauses, each with what joins it."""
    found: list[tuple[str, list[str]]] = [("", [])]
    for at, word in enumerate(words):
        behind = words[at + 1 :]
        if word in _SIGNS:
            found.append(("", []))
        elif word in _JOINTS and _begins_clause(behind):
            found.append((word if word == "so" else "", []))
        elif (
            word in _FREE_CONDITIONS | _REASONS
            and behind
            and (behind[0] in _PRONOUNS or _with_finite(behind))
        ):
            found.append((word, []))
        elif word in _FREE_CONDITIONS and behind and behind[0] in _SHORT_CONDITIONS:
            found += [(word, []), ("", [])]
        else:
            found[-1][1].append(word)
    return found


def _begins_clause(words: list[str]) -> bool:
    words = _stripped(words)
    if not words:
        return False
    if words[0] in _PRONOUNS or words[0] in ("don't", "do", "never"):
        return True
    if words[0] in of.DETERMINERS:
        return _with_finite(words)
    return words[0] in _VERBS or (len(words) > 1 and words[1] in _OBJECTS and not _known(words[0]))


def _with_finite(words: list[str]) -> bool:
    """Return whether a stretch up to the next sign begins with a subject and has a finite verb."""
    end = next((at for at, word in enumerate(words) if word in _SIGNS), len(words))
    return bool(words) and words[0] in of.DETERMINERS and _finite(words[:end]) is not None


def _known(word: str) -> bool:
    """Return whether a word is of a closed class that begins no order."""
    return (
        word
        in _PRONOUNS
        | of.DETERMINERS
        | of.PREPOSITIONS
        | of.ADVERBS
        | of.CRIES
        | of.SUBORDINATING
        | of.JOINING
        | of.NUMBERS
        or word in of.ASKING | of.AUXILIARIES | of.MODALS
        or word.endswith(("ly", "ing", "'s"))
    )


def _stripped(words: list[str]) -> list[str]:
    """Return words without what only leads up to a clause: joints, cries, adverbs."""
    at = 0
    while at < len(words) and words[at] in _LEADING and not (words[at] == "well" and at == len(words) - 1):
        at += 1
    return words[at:]


_LEADING: Final = (of.JOINING | of.ADVERBS | of.CRIES | frozenset(["please"])) - frozenset(["never"])


def _clause(joint: str, words: list[str]) -> Clause:
    """Return what a stretch of words is."""
    every = tuple(words)
    if joint in _FREE_CONDITIONS:
        return Clause(Mood.CONDITION, every, joint=joint)
    inner = _stripped(words)
    if not inner:
        return Clause(Mood.PHRASE, every, joint=joint)
    first = inner[0]
    if first in ("don't", "never") or (first == "do" and inner[1:2] == ["not"]):
        at = 2 if first == "do" else 1
        return Clause(
            Mood.FORBIDS, every, verbs=tuple(inner[at : at + 1]), rest=tuple(inner[at + 1 :]), joint=joint
        )
    if first in of.ASKING and inner[1:2] != ["'s"] and _finite(inner) is None:
        return Clause(Mood.ASKS, every, joint=joint)
    if (
        first in (of.AUXILIARIES | of.MODALS) - frozenset(["do", "have"])
        and len(inner) > 1
        and inner[1] in _PRONOUNS | of.DETERMINERS
    ):
        return Clause(Mood.ASKS, every, joint=joint)
    if first == "do" and inner[1:2] and _is_base(inner[1]):
        inner, first = inner[1:], inner[1]
    if first in ("do", "have") or (_is_base(first) and (len(inner) == 1 or not _is_verb_behind(inner))):
        return Clause(Mood.ORDERS, every, verbs=(first,), rest=tuple(inner[1:]), joint=joint)
    if first in of.MODALS or (first in of.SHOWING and first.endswith("s")):
        return _statement(every, ["it", *inner], 1, joint)
    found = _finite(inner)
    if found is not None:
        return _statement(every, inner, found, joint)
    if (first in _VERBS and not first.endswith(("ed", "ing"))) or (
        len(inner) > 1 and inner[1] in _OBJECTS and not _known(first)
    ):
        return Clause(Mood.ORDERS, every, verbs=(first,), rest=tuple(inner[1:]), joint=joint)
    return Clause(Mood.PHRASE, every, joint=joint)


def _is_base(word: str) -> bool:
    """Return whether a word is a verb as an order has it."""
    return ((word in _VERBS | _SAID or word == "be") and not word.endswith(("ing", "ed", "s"))) or word in (
        "press",
        "pass",
        "cross",
        "guess",
        "bless",
    )


def _is_verb_behind(words: list[str]) -> bool:
    """Return whether the second word is a finite verb, so that the first is a name: "work is", "lace looks"."""
    return words[1] in of.AUXILIARIES | of.MODALS or (words[1] in of.SHOWING and words[1].endswith("s"))


_SAID: Final = word_set(
    "relax breathe smile trust celebrate admire persevere treat send tag write ask visit watch listen "
    "google search download print contact email credit buy store note check compare weigh inspect "
    "recount verify test bear beware be choose select swatch soak rinse steam block press iron pin "
    "unpin air squeeze stuff lay plan read have experiment play cheer gift congratulate reward guess "
    "double-check adjust pause decide practise practice pour bring sit drink eat tidy neaten snug tug "
    "close mend darn wash hand-wash look see"
)
"""Verbs of orders that are in no other class."""


def _statement(every: tuple[str, ...], words: list[str], at: int, joint: str) -> Clause:
    """Return a statement whose finite verb stands at a place."""
    verbs = [words[at]]
    behind = at + 1
    while words[behind - 1] in _FINITE and behind < len(words):
        skipped = behind
        while skipped < len(words) and words[skipped] in _BEFORE_VERBS:
            skipped += 1
        helping = words[behind - 1]
        if (
            skipped < len(words)
            and (
                helping in of.MODALS
                or helping in ("'ve", "have", "has", "had", "do", "does", "did", "doesn't", "don't", "didn't")
            )
            and (words[skipped] in _VERBS | of.AUXILIARIES | _SAID or helping in of.MODALS)
        ):
            verbs.append(words[skipped])
            behind = skipped + 1
        else:
            break
    return Clause(Mood.STATES, every, tuple(words[:at]), tuple(verbs), tuple(words[behind:]), joint)


def _finite(words: list[str]) -> int | None:
    """Return where the finite verb of a statement stands; None if it has none."""
    pending = 1 if words[0] in _RELATIVE - frozenset(["that", "which"]) | frozenset(["whether"]) else 0
    for at, word in enumerate(words):
        if at == 0:
            continue
        before = words[at - 1]
        if word in _RELATIVE and before not in of.PREPOSITIONS:
            pending += 1
            continue
        if word in _CONTACT and words[0] in of.DETERMINERS and before not in _RELATIVE | of.PREPOSITIONS:
            pending += 1
            continue
        if not _is_finite(words, at):
            continue
        if pending:
            pending -= 1
            continue
        return at
    return None


_RELATIVE: Final = frozenset(["that", "which", "who", "where", "what", "how"])
_CONTACT: Final = frozenset(["i", "you", "we", "it", "they", "he", "she"])
"""Pronouns with which a clause begins that hangs on a noun without any word between: "the yarn I used"."""
_PAST: Final = word_set(
    "took made used came gave got went began kept put left found felt became grew ran"
)


def _is_finite(words: list[str], at: int) -> bool:
    """Return whether the word at a place may be the finite verb of what stands before it."""
    word = words[at]
    if word == "shaping":
        return False  # what `neutral` puts for an increase, a cable and the like
    subject_end = at - 1
    while subject_end > 0 and words[subject_end] in _BEFORE_VERBS:
        subject_end -= 1
    before = words[subject_end]
    if word in _CONTRACTED:
        return before in _PRONOUNS or before in of.ASKING or before == "here"
    if word in of.AUXILIARIES | of.MODALS:
        return before not in of.MODALS
    if before in of.SELF | of.YOU | of.PEOPLE | of.THERE or (
        before in of.IT and (before not in of.DETERMINERS or word in _VERBS)
    ):
        return word not in of.PREPOSITIONS | of.ADVERBS | of.DETERMINERS | of.JOINING or word in _VERBS
    if word not in _VERBS or before in of.DETERMINERS | of.PREPOSITIONS | of.MODALS | frozenset(
        ["to", "and", "or"]
    ):
        return False
    if word.endswith("s") and not word.endswith("ss"):
        return (
            words[0] in of.DETERMINERS
            or words[0].endswith("ing")
            or words[0] in of.NUMBERS
            or (at <= 3 and words[0] not in _VERBS)
        )
    if word.endswith("ing"):
        return False
    return (
        before.endswith("s")
        or before in _PRONOUNS
        or ((word.endswith("ed") or word in _PAST) and words[0] in of.DETERMINERS)
    )
