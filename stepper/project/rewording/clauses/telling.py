"""Tell by its clauses whether a sentence works no stitch: a fact, a reason, advice, talk. No I/O.

Theory of operation. An order may hide in an imperative, a passive ("are slipped"), a modal ("should be purled"), the second
person ("you turn here"), a copula that says what something is worked in ("Rounds 2 and 4 are plain"), a fragment ("Garter from
here"), a participle behind a comma, and in every number, limit and difference ("every", "instead", "except"). So a sentence is
told only if, with what is harmless put into other words (`neutral`), it has no verb of the craft, no number, no limit and no
fabric, and each of its clauses does nothing: it states how something looks, feels or turns out, or what somebody thinks; it
orders what is done off the needles or in the head; it asks. What a condition says is free, as what hangs on it is looked
through. A verb nobody has listed is let pass only where nothing of the work is named. In doubt the sentence is not told.
Source: common practice.
"""

from __future__ import annotations

from functools import lru_cache
from typing import Final

from stepper.project.rewording.clauses import small_classes as small
from stepper.project.rewording.clauses import word_classes as of
from stepper.project.rewording.clauses.clause import Clause, Mood, clauses_of, words_of
from stepper.project.rewording.clauses.neutral import made_neutral
from stepper.project.rewording.clauses.off_needle import forbids_nothing, orders_nothing
from stepper.project.rewording.synonym import word_set
from stepper.regex import regex

_LONGEST: Final = 320
"""Most letters of a sentence that is looked through."""
_ENDS: Final = "?!.\u2026"
_DANGERS: Final = of.CRAFT | of.FABRIC | of.COLOURS | of.LIMITS | of.NUMBERS
_WORK: Final = of.STITCH_THINGS | of.PARTS
_SIGN: Final = regex(r"[*\[\]=/<>#@]|\d")
_SUPPLIES: Final = frozenset(["yarn", "yarns", "wool", "pattern", "patterns"])
_ACTS: Final = of.GENERAL | of.CRAFT
_VERDICT: Final = regex(
    r"\b(?:[a-z]+est|most|best|worst|hardest|favou?rite|easy|easier|hard|harder|tricky|fiddly|boring|fun|quick|nice|pretty|neat|lovely|beautiful|great|important|clever|charm|design|matter|question|good|perfect|generous|little|tiny|small|big|neater|simple|soft|warm|loose|tight|snug|stretchy|firm|elastic|long|short|wide|narrow|deep|high|full|comfortable|"
    r"so|so-far|too|very|quite|rather|really|[a-z]+(?:able|ible|ful|ous|ive))\b"
)
"""Words by which something is judged, so that naming it works nothing."""
_YOU_MAY: Final = (
    of.MINDING
    | of.SHOWING - of.GENERAL
    | of.AUXILIARIES - frozenset(["do", "does", "did"])
    | word_set(
        "deserve look be have thank read admire brag relax breathe rest wear stop try ask skip"
    )
)


ENDS_IN_KEY: Final = regex(r"(?<!chart )(?<!Chart )\b(?:[A-HJ-Z]|MC|CC\d?)[\s.!?)\"']*$")
"""A sentence whose last word is the sign of a yarn, which it may bring in: "Here comes A."."""


@lru_cache(maxsize=2048)
def works_nothing(sentence: str) -> bool:
    """Return whether a sentence works no stitch, by what its clauses do.

    Args:
        sentence: One sentence, made plain, with the sign that ends it.

    Returns:
        Whether it can only be said. False in every doubt.
    """
    said = sentence.strip(" \"'")
    if not said or len(said) > _LONGEST or ENDS_IN_KEY.search(said):
        return False
    neutral = made_neutral(said)
    asks = neutral.rstrip(" \"')!").endswith("?")
    words = words_of(neutral.strip(_ENDS + " \"'"))
    if any(word in _ENDS and word != "!" for word in words):
        return False
    clauses = clauses_of(words)
    spoken = [each for each in clauses if each.mood is not Mood.CONDITION]
    if not any(each.mood is not Mood.PHRASE or _is_cry(each) for each in spoken):
        return False
    if any(_endangers(each, first=each is clauses[0]) for each in clauses) or _recommends(clauses):
        return False
    whole = [each for each in spoken if each.mood is not Mood.PHRASE]
    if not whole:
        if asks:
            return all(set(each.words) <= of.CRIES | of.ADVERBS for each in spoken)
        return spoken[0].words[0] in small.GREETINGS or not any(set(each.words) & _WORK for each in spoken)
    if asks and not all(each.mood in (Mood.ASKS, Mood.STATES) or each.verbs == ("see",) for each in whole):
        return False
    every = frozenset(words)
    return all(_does_nothing(each, every, asks=asks) for each in spoken)


def asks_to_do(sentence: str) -> bool:
    """Return whether a sentence that works no stitch asks for something that is done beside the needles.

    Args:
        sentence: One sentence, made plain.
    """
    clauses = clauses_of(words_of(made_neutral(sentence).strip(_ENDS + " \"'")))
    return any(each.mood is Mood.ORDERS for each in clauses)


def _is_cry(clause: Clause) -> bool:
    """Return whether a phrase stands alone: a cry, or words that judge; nothing of the work."""
    words = set(clause.words)
    if clause.words[0] in small.GREETINGS:
        return not words & (of.STITCH_THINGS | of.GENERAL)
    if clause.words[0] not in of.CRIES | of.ADVERBS | small.OPENS or not words & (of.CRIES | small.FRAGMENT):
        return False
    return not words & (_WORK | of.GENERAL - frozenset(["done"]))


def _recommends(clauses: list[Clause]) -> bool:
    """Return whether a sentence calls it good if something is worked."""
    worked = any(set(each.words) & of.CRAFT for each in clauses if each.mood is Mood.CONDITION)
    return worked and any(set(each.words) & small.GOOD for each in clauses if each.mood is not Mood.CONDITION)


def _endangers(clause: Clause, *, first: bool) -> bool:
    """Return whether a clause holds a word that may order, wherever it stands."""
    words = set(clause.words)
    if clause.mood is Mood.CONDITION and (
        clause.joint in ("unless", "until", "till") or _runs_on(clause.words)
    ):
        return True
    if clause.mood is Mood.CONDITION and clause.joint == "if" and first:
        return False
    if clause.mood is Mood.CONDITION and first:
        return bool(words & (of.LIMITS | of.FABRIC)) and bool(words & of.CRAFT)
    return bool(words & _DANGERS) or any(_SIGN.search(word) for word in clause.words)


def _runs_on(words: tuple[str, ...]) -> bool:
    """Return whether an order follows a condition without any sign between: "if you like knit two rounds"."""
    for at, word in enumerate(words[1:], start=1):
        if word not in _ACTS | frozenset(["be"]) or word.endswith(("ed", "ing", "s")) or word in small.PAST:
            continue
        before = next(
            (
                each
                for each in reversed(words[:at])
                if each not in of.ADVERBS - frozenset(["so", "then", "enough"])
            ),
            "",
        )
        if before not in _CARRIES and not before.endswith("s"):
            return True
    return False


_CARRIES: Final = (
    of.SELF
    | of.YOU
    | of.IT
    | of.PEOPLE
    | of.MODALS
    | of.DETERMINERS
    | word_set(
        "to not don't doesn't do does did didn't and or who that of in on at for with by from 'll 'd"
    )
)


def _does_nothing(clause: Clause, said: frozenset[str], *, asks: bool) -> bool:
    """Return whether a clause without dangerous words does nothing."""
    words = set(clause.words)
    if _second_person_acts(clause):
        return False
    match clause.mood:
        case Mood.PHRASE:
            return not words & of.STITCH_THINGS and not _acts_in(clause.words[:1])
        case Mood.ASKS:
            return asks and not words & (_WORK | small.ANSWERED)
        case Mood.ORDERS:
            return orders_nothing(clause, said) or (asks and not words & _WORK)
        case Mood.FORBIDS:
            return forbids_nothing(clause)
        case _:
            return _states_nothing(clause) and not (asks and words & _WORK)


def _acts_in(words: tuple[str, ...]) -> bool:
    return any(word in _ACTS and word not in of.SHOWING for word in words)


def _second_person_acts(clause: Clause) -> bool:
    """Return whether words say what she, or we, do with the work."""
    words = clause.words
    for at, word in enumerate(words):
        if word not in of.YOU | small.SOMEBODY and word not in ("we", "let"):
            continue
        verb = next(
            (
                each
                for each in words[at + 1 :]
                if each not in of.ADVERBS | of.MODALS | of.NEGATIONS | frozenset(["'ll", "'d", "'ve", "'re"])
            ),
            "",
        )
        if set(words[:at]) & small.INDIFFERENT and verb not in of.CRAFT:
            continue
        if verb in _ACTS and verb not in _YOU_MAY and word != "let":
            return True
        if verb in ("have", "are", "need", "want", "going") and "to" in words[at + 1 : at + 6]:
            behind = words[words.index("to", at) + 1 :][:1]
            if behind and behind[0] not in _YOU_MAY:
                return True
    return False


def _states_nothing(clause: Clause) -> bool:
    """Return whether a statement says nothing that is worked."""
    subject, rest, verb = set(clause.subject), clause.rest, clause.verbs[-1]
    if verb in of.COPULAS or verb in ("'s", "'re", "'m") or verb == "be":
        return _is_nothing(clause)
    if verb in of.MODALS or verb in ("'ll", "'d"):
        return not set(clause.words) & _WORK
    if not rest and verb in _WANTS_OBJECT:
        return False
    if verb in small.LIES and subject & small.BEGINNINGS:
        return rest[:1] != () and rest[0] in of.PREPOSITIONS and "now" not in clause.words
    if subject & (of.SELF - frozenset(["we"])) and not subject & of.DETERMINERS:
        if verb in of.GENERAL and verb not in small.PAST and verb not in of.MINDING:
            return not set(rest) & _WORK
        return not _acts_in(rest)
    if subject & of.YOU or "we" in subject:
        return _says_nothing_of_you(clause)
    if verb in of.MINDING and subject & of.PEOPLE:
        return True
    return not _leads_to_work(clause) and _shows_only(clause)


_WANTS_OBJECT: Final = frozenset(
    ["need", "needs", "want", "wants", "mean", "means", "have", "has", "make", "makes", "like", "love"]
)
"""Verbs behind which something is missing if nothing stands there."""


def _says_nothing_of_you(clause: Clause) -> bool:
    """Return whether a statement about her, or about us, says nothing that is worked."""
    rest, verb = clause.rest, clause.verbs[-1]
    helped = clause.verbs[0] in ("have", "'ve") and len(clause.verbs) > 1
    if helped and verb not in of.AUXILIARIES | of.CRAFT:
        return not set(clause.words) & _WORK
    if verb in ("need", "want"):
        return (
            rest[:1] != ("to",)
            and (not set(rest) & _WORK or "some" in rest)
            and not set(rest) & of.STITCH_THINGS - frozenset(["yarn", "wool"])
        )
    if verb in ("have", "has", "had", "'ve", "see"):
        return not set(rest) & of.STITCH_THINGS and rest[:1] != ("to",)
    return verb in _YOU_MAY and not _acts_in(rest)


def _leads_to_work(clause: Clause) -> bool:
    """Return whether a statement about a thing says what becomes of it, or what has to be done with it."""
    rest, verb, words = clause.rest, clause.verbs[-1], set(clause.words)
    if verb in small.INTO and words & _WORK:
        return True
    if verb in ("drop", "drops") and words & of.STITCH_THINGS:
        return True
    has_to = rest[:1] == ("to",) and verb in ("has", "have", "had", "needs", "need", "wants")
    if has_to and not set(rest[1:2]) & _YOU_MAY - frozenset(["be"]):
        return True
    if any(
        word in of.GENERAL and word.endswith(("ed", "en", "ing")) and word not in of.HARMLESS_PARTICIPLES
        for word in rest
    ):
        return True
    return (
        verb in ("come", "comes") and rest[:1] != () and rest[0] in ("off", "on", "next", "now", "up", "down")
    )


def _shows_only(clause: Clause) -> bool:
    """Return whether the verb of a statement about a thing says how that is, or how it turns out."""
    subject, rest, verb = set(clause.subject), clause.rest, clause.verbs[-1]
    if verb == "has" and subject & _SUPPLIES and not set(rest) & _WORK:
        return True
    if verb in of.GIVING or verb in ("'ve", "had"):
        if set(rest) & of.STITCH_THINGS:
            return False
        return not (subject & of.STITCH_THINGS and verb not in ("make", "makes", "give", "gives"))
    if verb in of.SHOWING or verb in of.MINDING:
        return True
    if verb in of.GENERAL:
        moves = rest[:1] and rest[0] in of.PREPOSITIONS
        return (
            verb in small.GOES
            and not subject & _WORK
            and not moves
            and not set(rest) & _WORK
            and bool(subject & (of.IT | of.PEOPLE))
        )
    return not set(clause.words) & _WORK


def _is_nothing(clause: Clause) -> bool:
    """Return whether a statement with a form of "be" says no more than how something is."""
    subject, rest = (
        set(clause.subject),
        [word for word in clause.rest if word not in of.ADVERBS | of.NEGATIONS or word in ("too", "so")],
    )
    if not rest:
        return clause.joint == "as" or clause.subject[0] in ("than", "as") or clause.verbs[-1].endswith("n't")
    first = rest[0]
    if first in ("been", "being"):
        rest = rest[1:]
        first = rest[0] if rest else ""
    if (
        (first.endswith(("ed", "en", "wn", "lt", "ung")) or first in _ACTS)
        and first not in of.HARMLESS_PARTICIPLES | frozenset(["open"])
        and first not in of.CRIES
    ):
        return not subject & (_WORK | of.IT) and not set(rest) & _WORK and first not in _ACTS
    if first in of.HARMLESS_PARTICIPLES and "be" in rest:
        behind = rest[rest.index("be") + 1 :][:1]
        if behind and behind[0].endswith(("ed", "en", "wn")) and behind[0] not in of.HARMLESS_PARTICIPLES:
            return False
    if first.endswith("ing") and first not in small.MILD:
        return not set(clause.words) & _WORK and first not in _ACTS and not subject & of.YOU
    if first == "to":
        return (
            len(rest) > 1
            and rest[1] in of.SHOWING | of.MINDING | frozenset(["relax", "breathe", "check", "read"])
            and rest[1] not in of.GIVING
        )
    if subject & (of.SELF - frozenset(["we"])) and not subject & of.DETERMINERS:
        return (
            not _acts_in(tuple(rest))
            and not set(rest) & of.STITCH_THINGS
            and not (first in of.PREPOSITIONS and set(rest) & _WORK)
        )
    if first in small.SHOWN and not subject & of.STITCH_THINGS:
        return not _acts_in(tuple(rest)) and not any(word.endswith("ing") for word in rest)
    if subject & of.YOU and not set(rest) & of.STITCH_THINGS:
        return not _acts_in(tuple(rest))
    if "there" in subject:
        return not set(rest) & of.STITCH_THINGS and (
            not set(rest) & of.PARTS or bool(set(rest) & of.TROUBLES)
        )
    if first in of.PREPOSITIONS:
        if subject & small.BEGINNINGS:
            return "now" not in clause.rest and "now" not in clause.words
        return not set(rest) & _WORK or (
            bool(subject & of.PARTS) and not subject & of.STITCH_THINGS and not set(rest) & of.STITCH_THINGS
        )
    if set(rest) & _WORK:
        judged = _VERDICT.search(" ".join(rest)) is not None
        return judged and not _acts_in(tuple(rest))
    return True
