"""Take out of a length what a page says beside it for other bodies and other tastes, to be said with the line. No I/O.

"Until the sleeve is 38 cm, or 5 cm short of your wrist bone" has a length, and a measure by which she may choose
another: the length is worked, and the rest is told. So is "or as long as you like" and "or until your yarn is
nearly used up". What stands there is looked through for anything else to do. A length that hangs on her alone,
"until it is as long as you like", is asked for elsewhere. Source: common practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.project.rewording.remarks.idle import orders_besides
from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import LONG, ROUND, N
from stepper.regex import regex

_LIKED: Final = (
    r"(?:like|want|need|prefer|wish|please|fancy|think\s+(?:right|best|fit)|desire|require|choose)(?:d)?"
)
_BODY: Final = (
    r"(?:(?:your|the|her|his|their|its|wearer's|little|middle|index|longest|ring|big|wrist|ankle|elbow|knee|hip|arm|ear|finger|heel|toe|leg|foot|hand|neck|head|waist|bone|joint|knuckle|tip|tips|top|base|of|ears|"
    r"fingers?|toes?|thumb|wrists?|ankles?|elbows?|knees?|hips?|shoulders?|calf|calves|chin|collarbone|cuff|arms|legs|feet|head|total|length|actual|own|desired|wanted|wished|full|required|recipient's|finished)\b\s*)+"
)
_TASTE: Final = (
    rf"(?:(?:until|till|to|for|when)\s+)?(?:(?:it(?:'s|\s+is)?|the\s+\w+(?:\s+is|\s+measures)?|measures|is)\s+)?(?:just\s+|simply\s+|about\s+)*(?:"
    rf"(?:however|as)\s+(?:long|short|wide|tall|high|deep|far|many|much)\s+as\s+(?:(?:you|your\s+\w+(?:\s+\w+)?|it)\s+(?:{_LIKED}|would\s+like|'d\s+like|lets?|lasts?|allows?|is\s+long)|possible|needed|desired|required|necessary|wanted|{_BODY}(?:\s+is)?)|"
    rf"(?:however|as)\s+(?:long|short|wide|tall|high|deep|far|much)\s+(?:(?:you|it)\s+)?(?:{_LIKED}|would\s+like|'d\s+like|(?:has|needs)\s+to\s+be)(?:\s+(?:it|them)(?:\s+to\s+be)?)?|(?:about|approx(?:imately|\.)?|roughly|ca\.?)\s+{N}\s+{ROUND}|"
    rf"(?:you'd\s+like|you\s+(?:{_LIKED}|would\s+like|are\s+(?:happy|satisfied|pleased))(?:\s+(?:it|with\s+it|with\s+the\s+\w+))?)|"
    rf"(?:the\s+)?(?:desired|wanted|wished|required|preferred|your(?:\s+own)?|needed)\s+(?:length|height|width|depth|size)(?:\s+(?:you\s+)?{_LIKED})?|(?:the\s+)?(?:length|height|width|depth)\s+(?:(?:that\s+)?(?:you|it)\s+)?(?:{_LIKED}|desired|would\s+like|'d\s+like)|"
    rf"(?:a\s+(?:bit|little)\s+)?(?:longer|shorter|more|less)(?:\s+(?:if|when|as)\s+(?:you\s+(?:{_LIKED}|would\s+like|are\s+\w+|have\s+\w+\s+(?:arms|legs|feet|hands|fingers))|desired|needed|preferred|wanted|required|necessary))?(?:\s+for\s+(?:an?\s+)?[a-z-]+\s+[a-z-]+)?|"
    rf"(?:long|deep|wide|tall|big|high|large)\s+enough(?:\s+for\s+you)?(?=\s*[.,;(]|\s*$)|long\s+enough\s+(?:to\s+(?:cover|reach|fit|meet)|for)\s+{_BODY}(?:comfortably)?|(?:(?:it\s+)?(?:reaches|covers|fits|touches|meets|hits|comes\s+to)\s+)(?:just\s+(?:to|above|below|over|past)\s+)?{_BODY}(?:comfortably|snugly|nicely)?|"
    rf"(?:about\s+)?{LONG}\s+(?:(?:short|shy|less|shorter|longer|more)\s+(?:of|than)|above|below|before|from|past)\s+{_BODY}(?:(?:you\s+(?:{_LIKED}|would\s+like))|is\s+to\s+be)?|"
    rf"(?<=to\s)(?:the\s+)?{_BODY}|"
    rf"{LONG}\s*,?\s+(?:for|if\s+you\s+(?:want|prefer|like|would\s+like))\s+an?\s+(?:[a-z-]+\s+){{0,3}}[a-z-]+|"
    rf"(?:you\s+(?:are\s+|have\s+)?)?(?:almost|nearly|just\s+about)?\s*(?:run(?:ning)?\s+out\s+of|(?:run|used)\s+up|run\s+out\s+of|out\s+of)\s+(?:your\s+|the\s+|all\s+)?(?:yarn|wool)|(?:your\s+|the\s+)?(?:yarn|wool)\s+(?:is\s+(?:almost|nearly)\s+(?:used\s+up|gone|finished|out)|runs\s+(?:out|low)|is\s+running\s+(?:out|low|short))"
    r")"
)
_WORD: Final = (
    r"(?:until|till|to|for|when|it|the|this|is|are|as|if|so|just|simply|about|approx|roughly|however|whatever|a|an|and|else|which|what|do|long|tall|deep|high|wide|far|much|"
    r"you|your|you've|you'd|it's|i|would|like|liked|want|wanted|need|needed|prefer|preferred|wish|wished|please|fancy|choose|have|got|patience|desired|required|necessary|"
    r"total|finished|own|length|height|depth|width|reach(?:es)?|covers?|fits?|meets?|comes?|halfway|part|way|up|down|over|above|below|past|of|where|ends?|be|less|more|short|shorter|longer|than|bit|little|"
    r"rib|ribbing|hem|cuff|underarm|armhole|body|sleeve|crown|heel|toe|fold|folded|turn|double|wearer's?|thumbnail|fingernail|middle|tip|top|base|bottom|"
    r"(?:index|ring|big|longest)\s+(?:finger|toe)|fingers?|thumb|wrist|ankle|elbow|knee|calf|hips?|waist|foot|leg|arm|hand|feet|legs|arms|hands|neck|head|ears?|chin|shoulder|knuckles?)"
)
"""The words of which a choice left to the knitter is made: none of them orders anything."""
_HERS: Final = r"(?=(?:[^.;()]|\.(?=\d))*\b(?:you|your|you'd|you've|i|desired|required|wanted|preferred|needed|necessary|wearer's?|reach(?:es)?|covers?)\b)"
_FREE: Final = rf"{_HERS}(?:(?:(?:{LONG}(?:\s*/\s*{LONG})?)|{N}\s+{ROUND}|{_WORD}(?![\w'-]))(?:\s*[,+]\s+(?!(?:end|finish|work|knit|bind|cast)|[a-z]+ing\b)|\s+|(?=\s*(?:[.;,!)]|$))))+?"
_CHOSEN: Final = regex(rf"(?<=\w|\)|\")\s*(?:[,-]\s*|\s)\(?(?P<said>(?:or|preferably)\s+{_FREE})\)?(?=\s*[.;,!]|\s*$)", re.IGNORECASE)
"""A choice in whatever words: "or as tall as you've got patience for", "(or 6 cm less than you want)"."""
_NOT_TASTE: Final = r"(?:sizes?|small(?:er|est)?|medium|large[rs]?|largest|men's?|women's?|child|children|adults?|babies|front|back|left|right|first|second|sleeves?|body|cuffs?|each|all|both|[smlx]+|\d\w*)"
_FOR: Final = rf"for\s+(?:an?\s+)?(?!{_NOT_TASTE}\b)[a-z-]+(?:\s+(?!{_NOT_TASTE}\b)[a-z-]+)?"
_EITHER: Final = regex(
    rf"(?<=\s)(?P<long>{LONG}(?:\s*/\s*{LONG})?)\s+(?P<said>\(?\s*{_FOR}\s*\)?\s*,?\s*\(?\s*or\s+{LONG}(?:\s*/\s*{LONG})?\s+\(?\s*(?:{_FOR}|to\s+(?:fold|turn)(?:\s+it)?(?:\s+(?:up|over|back|double))?)\s*\)?)(?=\s*[.;,!]|\s*$)",
    re.IGNORECASE,
)
"""Two lengths for two looks, of which the first is worked: "5 in for turtleneck (or 1 in for crewneck)"."""
_LOOKS: Final = regex(
    rf"(?<=\s)(?P<long>{LONG}(?:\s*/\s*{LONG})?)\s*(?P<said>[;,]\s+(?:or\s+)?for\s+an?\s+(?:(?:folded|doubled?|turned-?\s?up|deep(?:er)?|wide(?:r)?|long(?:er)?|high(?:er)?|shallow(?:er)?|single|short(?:er)?|slouchy|snug|cropped|roll(?:ed)?)\s+[a-z-]+|turtle-?\s?neck|crew-?\s?neck|polo(?:\s+neck)?|roll-?\s?neck)\s*,?\s+(?:work|knit|make\s+it|continue\s+(?:for|to)|go\s+on\s+(?:for|to))\s+{LONG}(?:\s+and\s+(?:turn|fold)(?:\s+it)?\s+(?:up|over|back|down|in\s+half))?)(?=\s*[.!]|\s*$)",
    re.IGNORECASE,
)
"""A second length behind the first, for another look: "measures 4 cm; for a double brim, work 9 cm and turn up"."""
_FOLDED: Final = regex(rf"\s*\(\s*(?P<said>or\s+{LONG}\s*,?\s+(?:then|and)\s+(?:fold|turn)\s+(?:it\s+)?(?:inside|in|over|up|down|to\s+the\s+inside|in\s+half)(?:\s+and\s+(?:stitch|sew|slip-?stitch)\s+(?:it\s+)?down)?)\s*\)", re.IGNORECASE)
"""A longer piece that is folded, in brackets behind the length that is worked."""
_OR: Final = regex(
    rf"(?<=\w|\)|\")\s*(?:[,-]\s*|\s)\(?(?P<said>(?:or|preferably)\s+(?:else\s+|alternatively\s+)?{_TASTE})\)?(?=\s*[.;,!]|\s*$)",
    re.IGNORECASE,
)
_BRACKETED: Final = regex(rf"\s*\((?P<said>(?:or\s+)?{_TASTE})\s*\)(?=\s*[.;,!]|\s*$)", re.IGNORECASE)
_LENGTH_FIRST: Final = regex(
    rf"\buntil\s+(?:the\s+)?(?P<part>[a-z]+)\s+(?P<said>(?:is\s+|measures\s+|reaches\s+)?{_TASTE})\s*(?:,\s*|\s+)\(?(?:or\s+)?(?:about|approx(?:imately|\.)?|around|ca\.?|roughly)\s+(?P<long>{LONG})\)?(?=\s*[.;,!]|\s*$)",
    re.IGNORECASE,
)
_MEASURED: Final = regex(rf"{LONG}|\b\d+\s+(?:rows|rounds|rnds)", re.IGNORECASE)


_DESIRED_FIRST: Final = regex(
    rf"\b(?:until|to)\s+(?P<said>(?:the\s+|your\s+)?(?:desired|wanted|wished|required|preferred|needed)\s+(?:length|height|depth)(?:\s+is\s+reached)?)\s*(?:,\s*|\s+)\(?(?:or\s+)?(?:about|approx(?:imately|\.)?|around|ca\.?|roughly)\s+(?P<long>{LONG})\)?(?=\s*[.;,!]|\s*$)",
    re.IGNORECASE,
)


def take_tastes_out(line: Reworded) -> Reworded:
    """Return a line whose lengths are those it prints; what it says of others is to be said with it."""
    for match in reversed(list(_LENGTH_FIRST.finditer(line.text))):
        if not orders_besides(match["said"]):
            pieces: list[str | tuple[int, int]] = [
                "until ",
                match.span("part"),
                " measures ",
                match.span("long"),
            ]
            line = replace(laid_anew(line, *match.span(), pieces), kept=(*line.kept, match["said"].strip()))
    for match in reversed(list(_DESIRED_FIRST.finditer(line.text))):
        line = laid_anew(line, *match.span(), ["until piece measures ", match.span("long")])
        line = replace(line, kept=(*line.kept, match["said"].strip()))
    for match in reversed([*_EITHER.finditer(line.text), *_LOOKS.finditer(line.text)]):
        line = laid_anew(line, *match.span(), [match.span("long")])
        line = replace(line, kept=(*line.kept, match["said"].strip()))
    for pattern in (_OR, _BRACKETED, _FOLDED, _CHOSEN):
        for match in reversed(list(pattern.finditer(line.text))):
            before = line.text[: match.start()]
            if not _MEASURED.search(before[before.rfind(". ") + 1 :]) or orders_besides(match["said"]):
                continue
            line = replace(laid_anew(line, *match.span(), []), kept=(*line.kept, match["said"].strip()))
    return line
