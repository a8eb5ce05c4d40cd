"""Orders that work no stitch: for the head, for the eye, for a table, and for what is done off the needles. No I/O.

Source: common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.clauses import word_classes as of
from stepper.project.rewording.clauses.clause import Clause
from stepper.regex import regex

_IN_THE_HEAD: Final = regex(
    r"(?:relax|breathe|smile|trust|imagine|guess|celebrate|admire|cheer|persevere|enjoy|believe|expect|bear|beware|hope|forgive)\b|(?:treat|reward|congratulate)\s+yourself\b"
    r"|(?:send|show|tag|tell|write|ask|visit|watch|listen|google|search|download|print|contact|email|credit|buy|gift|thank|join\s+(?:us|me|our))\b|share\s+(?:it|this|your|an?|the|them)\b|store\s+(?:it|them)\s+(?:flat|folded|away|in)\b"
    r"|(?:note|remember|know|mind)\b|hang\s+(?:on\s+)?in\s+there\b|let\s+(?:me|us)\s+know\b|stay\s+with\s+(?:me|it)\b|bear\s+with\s+me\b|practi[sc]e\b|swatch\b|plan\b|decide\b|experiment\b|avoid\b"
    r"|have\s+(?:fun|no\s+fear|faith|patience|a\s+(?:look|cup|break|rest|nap|moment|go|try|seat|snack|biscuit|cookie|piece|glass|drink|good|lovely|nice|great|pencil|friend)|some\s+(?:fun|patience|faith|tea|coffee|cake|chocolate|wine|water))\b"
    r"|take\s+(?:an?\s+(?:deep\s+)?(?:break|breath|moment|look|photo|picture|nap|rest|note|minute)|your\s+time|care|heart|notes?|photos|it\s+easy|pleasure)\b|pour\b|wear\b|put\s+(?:on\s+(?:an?|some|your|the)\s+(?:\w+\s+)?(?:film|movie|series|music|record|song|podcast|show|audiobook|kettle|coffee|tea|slippers)|the\s+kettle\s+on|your\s+feet\s+up)\b|grab\s+(?:a|some|yourself)\s+(?:cup|coffee|tea|drink|snack|biscuit|cookie|chair|blanket)\b|come\s+back\b|let\s+(?:me|us)\s+know\b|cross\s+your\s+fingers\b|pat\s+yourself\b"
    r"|make\s+(?:an?\s+(?:note|cup|pot|swatch)|notes|yourself|some\s+(?:tea|coffee|notes)|a\s+habit)\b|get\s+(?:comfortable|cosy|cozy|yourself|help|ready|a\s+(?:cup|friend))\b"
    r"|be\s+(?:careful|patient|brave|kind|gentle|warned|aware|proud|generous|honest|prepared|happy|mindful|bold|nice)\b(?!\s+to\b)|feel\s+(?:free\s+to\s+(?:ask|share|write|contact|experiment|play)|proud|smug)\b"
    r"|allow\s+(?:yourself|plenty|time|some|enough|so-far|for\s+(?:ease|shrinkage|stretching|growth|growing)|(?:it|them)\s+to\s+dry)\b|save\s+(?:the\s+(?:label|ball\s+band|leftovers?)|some|your|yourself|time|it\s+for)\b",
)
"""Orders for the head and for what surrounds the knitting."""
_LOOKED_AT: Final = regex(
    r"(?:check|weigh|inspect|recount|verify|test|count|double-check|look\s+(?:at|for|out|over|closely)|compare)\b(?!\s+to\b)|measure\s+(?:yourself|your|an?|the|it|often|carefully|twice|from|on|against)\b"
    r"|(?:see|consult|read|look\s+(?:up|at))\s+(?:through\s+|carefully\s+|all\s+(?:of\s+)?)?(?:the\s+|my\s+|our\s+|your\s+|this\s+|these\s+)*(?:[a-z]+\s+)?(?:photos?|photographs?|pictures?|website|site|blog|video|tutorial|notes?|label|ball\s+band|page|schematic|glossary|abbreviations|list|book|pattern|section|instructions)\b|read\s+(?:on|through|ahead|carefully)\b"
    r"|keep\s+(?:track|calm|an?\s+(?:eye|note|record|tally)|notes|count|the\s+(?:label|ball\s+band|leftovers?)|your\s+(?:label|fingers|eyes|tension|gauge))\b|(?:bear|keep)\s+in\s+mind\b"
)
"""Orders to look at something."""
_CARE: Final = regex(
    r"(?:soak|rinse|steam|block|press|iron|pin|unpin|air|dry|squeeze|wash|hand-?wash|stuff|smooth|pat|stretch|tidy|neaten|snug|tug)\b(?!\s+(?:the\s+)?(?:round|row|rnd|stitch|st)s?\b)|(?:lay|let|leave)\s+(?:it|them|the\s+[a-z]+|everything)\s+(?:(?:to|out|dries?|dry|soak|rest|nicely)\b\s*)+|wait\s+(?:until|till|for)\s+(?:it\s+(?:is|has|to)\s+)?(?:completely\s+|fully\s+)?(?:dr(?:y|ied|ies)|cool)\b|wait\s+so-far\b"
    r"|try\s+(?:it|them|this|on|(?:the|your)\s+[a-z]+)(?:\s+on)?\b(?!\s+(?:with|in|over)\b)|give\s+(?:it|them|the\s+[a-z]+)\s+an?\s+(?:gentle|good|little|light|bath|wash|tug|soak|steam|press|rest|rinse|name|try|go|hug|shake)\b|give\s+(?:yourself|your\s+(?:hands?|eyes|wrists?|shoulders|fingers)\s+an?)\b|mark\s+your\s+place\b|use\s+an?\s+(?:[a-z]+\s+){0,2}?(?:wool|blend|fibre|fiber|silk|cotton|alpaca|mohair|linen)\b"
    r"|leave\s+(?:an?\s+)?(?:[a-z]+\s+)?(?:tails?|ends?)\b|leave\s+(?:it|them)\s+(?:to\s+dry|for\s+so-far|alone)\b"
    r"|(?:use|choose|pick|select)\s+(?:whichever|whatever|any\b|your\s+(?:favou?rite|usual|preferred|own)|the\s+[a-z]+\s+you\s+(?:like|love|prefer|know)|a\s+(?:yarn|wool|fibre|fiber|colou?r|shade|shaping|edge)\b)",
)
"""Orders for what is done off the needles, and for what she may choose."""
_MENDS: Final = regex(
    r"(?:close|mend|sew|darn|catch)\s+(?:it|them|any|the\s+(?:hole|gap)s?)\b|use\s+(?:the|your|that)\s+(?:yarn\s+)?(?:tails?|ends?)\s+(?:[a-z]+\s+){0,4}?to\s+(?:close|sew|mend|tidy|fasten|neaten|tighten)\b"
)
"""Orders to mend a hole, if the sentence speaks of one."""
_HOLES: Final = frozenset(["hole", "holes", "gap", "gaps", "ladder", "ladders"])
_ELSEWHERE: Final = frozenset(["chart", "charts", "above", "below", "directions", "steps"])
_SIDES: Final = frozenset(["front", "back", "left", "right", "side", "sides", "top", "bottom", "middle"])
_FORBIDDEN: Final = regex(
    r"(?:worry|panic|sell|resell|copy|distribute|reproduce|fret|despair|be|give\s+up|rush|hurry|mind|forget|fear|cry|laugh|ask|tell|let|iron|wring|bleach|tumble|press|steam|stretch|fuss|stress|overthink|pull|twist|split|skimp|underestimate|be\s+tempted|expect|trust|lose\s+(?:heart|hope|patience))\b"
)
"""What is forbidden without any stitch being left out."""


def orders_nothing(clause: Clause, said: frozenset[str]) -> bool:
    """Return whether an order is for the head, for the eye, or for what is done off the needles.

    Args:
        clause: A clause that orders, without dangerous words.
        said: All words of its sentence.
    """
    words, order = set(clause.rest), " ".join((*clause.verbs, *clause.rest))
    if words & of.STITCH_THINGS and words & _SIDES and not order.startswith(("check", "count", "read")):
        return False
    if _IN_THE_HEAD.match(order):
        return not words & (of.STITCH_THINGS - of.PARTS)
    if _LOOKED_AT.match(order):
        return not words & _ELSEWHERE
    return _CARE.match(order) is not None or (bool(said & _HOLES) and _MENDS.match(order) is not None)


def forbids_nothing(clause: Clause) -> bool:
    """Return whether what a clause forbids leaves no stitch out.

    Args:
        clause: A clause that forbids, without dangerous words.
    """
    if set(clause.verbs) & {"sell", "resell", "copy", "distribute", "reproduce"} and set(clause.rest) & (
        of.STITCH_THINGS - frozenset(["pattern", "patterns"])
    ):
        return False
    return _FORBIDDEN.match(" ".join((*clause.verbs, *clause.rest))) is not None
