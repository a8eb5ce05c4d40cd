"""Tell whether a sentence of a page works no stitch: facts, what is to come, advice, making up, imprint. No I/O.

Theory of operation. This is the one place that decides it for sentences of no fixed words; rows of the tables in
`remarks/` spell out theirs. A sentence is idle if it has one of the forms below and, in every part of it that the
form leaves free, no word that could order something (`_ORDERS`): nothing that is worked, moved, counted or chosen,
no number, no word for how often, how far, for which size or in which rows. A form is a statement whose verb does
nothing to a stitch ("looks", "is optional", "comes next"), or an order for what is off the needles ("trim
ends"). A sentence of no such form is told by what each of its clauses does (`rewording.clauses`). A bare
imperative, a passive ("is kept", "are worked") and a condition with anything to knit behind it are never idle:
they stay unread. A name with a capital is no free
word, and so a fact on how many rows a pattern has is a form of its own, with its numbers. Source: common practice.
"""

from __future__ import annotations

import re
from functools import lru_cache
from typing import Final

from stepper.project.rewording.clauses.beholding import is_beheld
from stepper.project.rewording.clauses.telling import ENDS_IN_KEY, asks_to_do, works_nothing
from stepper.project.rewording.remarks.chart_reading import reads_otherwise
from stepper.project.rewording.remarks.edge_rules import insets_in
from stepper.project.rewording.remarks.lasting import tells_lasting
from stepper.project.rewording.remarks.making_up import TRIM, begins_making_up, makes_up
from stepper.project.rewording.remarks.standing_facts import STANDING, facts_of
from stepper.project.rewording.remarks.told_facts import tells_fact
from stepper.project.rewording.remarks.wishes import tells_wish
from stepper.regex import regex

_LONGEST: Final = 220
"""Most letters of a sentence that may be idle."""
_NUMBER: Final = r"(?:\d+|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)"
_ORDERS: Final = regex(
    rf"[\d*\[\]:=/()]|(?<![\w'-])(?:{_NUMBER}|one|dozen|[kp]|sts?|rs|ws|mc|cc|yo|ssk|skp|psso|m1\w*|kfb|inc|dec|rep|cont|patt|foll|alt|beg|rem|co|bo|pm|sm|rm|"
    r"knit\w*|purl\w*|work\w*|slip\w*|cast\w*|bind\w*|bound|pick\w*|increas\w*|decreas\w*|repeat\w*|turn\w*|cross\w*|(?:re)?join\w*|hold\w*|held|wrap\w*|"
    r"plac(?:e|es|ed|ing)|put\w*|tak(?:e|es|en|ing)|took|leav(?:e|es|ing)|(?:is|are|be|was|were)\s+left|skip\w*|omit\w*|drop\w*|ravel\w*|unravel\w*|undo\w*|undone|rip\w*|"
    r"frog\w*|graft\w*|mov(?:e|es|ed|ing)|add\w*|los(?:e|es|ing)|lost|keep\w*|kept|continu\w*|begin\w*|began|begun|start\w*|finish\w*|stop\w*|go|goes|going|gone|chang(?:e|es|ed|ing)|"
    r"ends?\s+(?:with|at|on|in|after|before|when|here|there|one)|ending|ended|switch\w*|swap\w*|exchang\w*|us(?:e|es|ed|ing)|break\w*|cut\w*|divid\w*|split\w*|separat\w*|mirror\w*|revers\w*|"
    r"count\w*|measur\w*|transfer\w*|return\w*|remov\w*|replac\w*|mak(?:e|es|ing)|made|let|do|does|done|did|insert\w*|fold\w*|doubled?|lift\w*|pass\w*|draw\w*|pull\w*|carry|carried|"
    r"try|choos\w*|stretch\w*\s+to|shap(?:e|es|ed)|needs?|needed|needing|must|want\w*|wish\w*|prefer\w*|may|might|could|should|shall|can|"
    r"every|each|both|all|only|just|except\w*|unless|until|till|while|if|whether|or|when|whenever|wherever|again|same|alike|instead|alternat\w*|others?|another|next|following|previous|"
    r"more|less|fewer|longer|shorter|wider|narrower|larger|smaller|once|twice|thrice|times?|half|double|no|not|without|further|extra|additional|last|first|second|third|remaining|"
    r"sizes?|versions?|plain|garter|stock(?:inette|ing)|moss|seed|straight|even|flat|back\s+and\s+forth|in\s+the\s+rounds?|in\s+(?:rows|rounds)|n't|don't|then|before|after|from\s+(?:here|now)|here|now|"
    r"throughout|always|never|as\s+(?:for|on|before|given|in)|live|optional\w*|colou?rs?|shades?|background|contrast\w*|main|white|black|gr[ea]y|red|blue|green|yellow|orange|purple|pink|brown|cream|navy|(?<!into\sthe\s)rib\w*|(?:on|with)\s+the\s+(?:right|wrong)\s+side|(?:for|of)\s+(?:wom[ae]n|m[ae]n|child\w*|bab(?:y|ies)|adults?))(?![\w-])",
    re.IGNORECASE,
)
"""Words with one of which the free part of a sentence may say what is knitted, how often, how far or for whom."""
_HARMLESS: Final = regex(
    r"\b(?:cast[-\s]on\s+edge|(?:cast|bound)[-\s]off\s+edge|stitch\s+counts?|row\s+counters?|purl\s+(?:bumps?|stitch(?:es)?|ridges?)|columns?\s+of\s+(?:purl|knit)|"
    r"(?:the|your)\s+(?:work|knitting)(?=\s*[.,]|\s*$)|stitch\s+holders?|spare\s+yarn|light-?\s?colou?red|dark-?\s?colou?red|one-?\s?colou?red|(?:a\s+(?:little|bit)\s+)?more\s+(?:room|height|depth|ease|give|hold)|"
    r"at\s+first\s+sight|in\s+the\s+first\s+wash|not\s+to\s+scale|after\s+(?:the\s+)?first\s+(?:few\s+)?(?:repeats?|rows|rounds)|all\s+round|and\s+all)\b",
    re.IGNORECASE,
)
"""Things called by such words, which order nothing."""
_LEAD: Final = r"(?:(?:please\s+)?(?:note|remember)(?:\s+that\b|\s*[,:-]+)\s*|(?:tip|hint|nb|n\.b\.|a\s+note\s+on\s+the\s+[a-z]+)\s*[:-]+\s*|(?:as\s+you\s+(?:can|will)\s+see|of\s+course|by\s+the\s+way|usually|at\s+this\s+point)\s*,\s*)?"
_SIGHT: Final = regex(
    r"(?:as\s+you\s+(?:can|will)\s+see|you\s+(?:can|will)\s+(?:now\s+)?see\s+(?:that|how)|now\s+you\s+can\s+see)\b(?P<rest>.*)", re.IGNORECASE
)
_CHOSEN: Final = regex(r"if\s+you(?:'ve|\s+have|'re|\s+are|'d\s+rather|\s+would\s+rather)?\s+[a-z' -]{3,60},\s+(?:then\s+)?(?P<main>.+)", re.IGNORECASE)
"""A condition in front of what is made up: that works no stitch, whether it holds or not."""
_NAME: Final = r"(?:(?:the|this|your)\s+)?(?!(?-i:Row|Rnd|Round|RS|WS|Rep|Repeat|Work|Knit|Purl|Cast|Bind|Then|Now|Next|Make)\b)[a-z][a-z'-]*(?:\s+(?!and\b|every\b|each\b|last\b|next\b|these\b)[a-z][a-z'-]*){0,3}"
_REPEATS: Final = rf"(?:over|every|after)\s+{_NUMBER}(?:\s+(?:rows|rounds|rnds))?"
_SPOT: Final = r"(?:(?:the|at|in|on|of|and|to|between|under|mid|middle|centre|center|back|front|side|left|right|inner|outer|underarm|sleeve|arm|foot|sole|leg|palm|hand|mitten|glove|sock|shoulder|little-finger|index-finger|thumb|needles?|\d(?:st|nd|rd|th)?|each)\b\s*)+"
_ROUNDS_BEGIN: Final = r"(?:(?:the\s+)?rounds?|rnds|each\s+round|the\s+change\s+of\s+(?:the\s+)?rounds?|the\s+beginning\s+of\s+(?:the\s+|each\s+)?rounds?)\s+(?:begins?|starts?|lies|is|are|falls)"
_SAID: Final = r"(?:shaping\s+of\s+the\s+|shaping\s+for\s+the\s+)?(?:the\s+)?[a-z]+(?:\s+(?:line|edge|shaping|opening|flap))?"
_EXTRA: Final = r"(?:pockets?|pompoms?|pom-poms?|ties?|cords?|lining|fringes?|tassels?|embroidery|buttons?|belt|loop|patch(?:es)?|flowers?|beads?|ribbons?|bows?)"
_TOOL: Final = r"(?:stitch\s+holder|safety\s+pin|(?:length|piece|scrap)\s+of\s+(?:spare|scrap|waste|contrasting)\s+yarn|bit\s+of\s+string|coin|paper\s+clip|row\s+counter|pencil)"
_COUNT: Final = r"(?:the\s+(?:stitch\s+count|number\s+of\s+(?:sts|stitches)))"
_FORMS: Final = regex(
    rf"{_LEAD}(?:"
    # how many rows and stitches a pattern has
    rf"{_NAME}\s+repeats\s+{_REPEATS}(?:(?:\s*,\s*|\s+and\s+|\s*,\s+and\s+){_NAME}\s+(?:repeats\s+)?{_REPEATS})*(?:\s*,\s+so\s+(?:keep|have)\s+(?:\w+\s+)?(?:little\s+|row\s+)?counters?(?:\s+going)?(?:\s*,?\s*or\s+a\s+pencil)?)?"
    rf"|{_NAME}\s+is\s+(?:worked\s+over\s+)?a\s+multiple\s+of\s+{_NUMBER}\s+(?:sts|stitches)(?:\s*(?:plus|\+)\s*\d+)?(?:\s+on\s+each\s+side\s+of\s+the\s+cent(?:er|re)\s+(?:st|stitch))?"
    r"|(?:one|each)\s+repeat\s+(?:of\s+the\s+(?:chart|pattern)\s+)?measures\s+(?:about\s+|approximately\s+)?\d+\s*(?:cm|mm|ins?|inch(?:es)?)(?:\s+(?:across|wide|in\s+width|in\s+height))?"
    rf"|{_COUNT}\s+(?:is|stays|remains)\s+(?:unchanged|constant|the\s+same)(?:\s+(?:throughout|(?:at\s+the\s+end\s+of|in|on|after)\s+(?:every|each)\s+(?:row|round|rnd)|from\s+(?:row\s+to\s+row|round\s+to\s+round)))?|{_COUNT}\s+(?:varies|changes)\s+from\s+(?:row\s+to\s+row|round\s+to\s+round)"
    rf"|these\s+{_NUMBER}\s+(?:sts|stitches)\s+are\s+the\s+repeat\s*,\s+worked\s+to\s+the\s+end\s+of\s+the\s+round"
    # where the rounds begin, as it is
    r"|the\s+last\s+repeat\s+ends\s+at\s+(?:the\s+)?(?:bor|beginning\s+of\s+the\s+(?:round|rnd))(?:\s*,\s*which\s+serves\s+as\s+its\s+marker)?"
    rf"|{_ROUNDS_BEGIN}\s+(?=(?:at|in|on|between|under|mid)\b){_SPOT}(?:\s*[,(]\s*(?:this|that|which)(?:\s+is|'s)\s+(?:going\s+to\s+be\s+)?{_SPOT}\)?)?"
    # what is to come
    rf"|the\s+next\s+(?:row|round)\s+(?:makes|sets|prepares|opens|closes)\s+the\s+(?:extra\s+|new\s+)?[a-z]+(?:\s+for\s+the\s+[a-z]+(?:\s+(?:panels?|shaping))?)?|(?:now|next|then|here)\s+comes?\s+(?:the\s+)?{_SAID}(?:\s+of\s+the\s+[a-z]+)?|{_SAID}\s+(?:comes\s+next|follows)"
    r"|the\s+steek\s+is\s+cut\s+(?:only\s+)?(?:when|once|after)\s+all\s+(?:the\s+)?knitting\s+is\s+done|(?:these|the\s+held)\s+stitches\s+will\s+be\s+(?:picked\s+up|used)\s+again\s+later(?:\s+for\s+the\s+[a-z]+)?"
    rf"|(?:(?:all\s+)?(?:the\s+)?pieces\s+are\s+now\s+joined\s+and\s+)?(?:you\s+are|you're)\s+now\s+ready\s+(?:for|to\s+(?:begin|start|shape))\s+the\s+[a-z]+|(?:this|the|these)\s+(?:edges?|seams?|openings?|slits?|holes?|loops?|tails?)\s+will\s+later\s+be\s+(?:folded|sewn|hidden|closed|seamed|used)(?P<later>[a-z ]*)"
    r"|there\s+is\s+a\s+lot\s+of\s+[a-z ]{3,40}\s+ahead\s+of\s+you|the\s+(?:hardest|worst|tricky|fiddly|boring)\s+part\s+is\s+(?:now\s+)?(?:over|done|behind\s+you)|(?:you\s+have\s+now\s+reached\s+the|(?:that|this)\s+is\s+the\s+end\s+of\s+the)\s+(?:increases|decreases|shaping|short\s+rows|underarms?|armholes?|waist|hips?|shoulders?|heel|toe|cuff|crown|rib|pattern)"
    rf"|(?:the|all\s+the|any)\s+(?:{TRIM}|hem|facing)\s+(?:is|are)\s+sewn\s+(?:in|on|down)(?:\s+by\s+hand)?|(?:all\s+|the\s+)+ends\s+(?:can|may)\s+be\s+woven\s+in\s+(?:as\s+you\s+go|later|at\s+the\s+end)|this\s+(?:pattern|leaflet)\s+is\s+written\s+for\s+(?:beginners|(?:[a-z]+\s+)?knitters)"
    # advice
    rf"|an?\s+{_TOOL}(?:\s+or\s+an?\s+{_TOOL})?\s+will\s+do|both\s+(?:fronts|sleeves|socks|mittens)\s+are\s+begun\s+at\s+the\s+(?:lower|upper|bottom|top)\s+edge"
    rf"|(?:the|a)\s+{_EXTRA}\s+(?:is|are)\s+optional(?:\s+and\s+(?:may|can)\s+be\s+left\s+out(?:\s+without\s+(?:any\s+)?(?:harm|loss)(?:\s+to\s+the\s+(?:fit|look|shape))?)?)?|the\s+(?:cuffs?|brim|collar)\s+(?:can|may)\s+be\s+(?:turned|folded|worn)\s+(?:back|up|down|over)"
    r"|(?:write\s+down|note|make\s+a\s+note\s+of|keep\s+a\s+note\s+of)\s+(?:the\s+number\s+of|how\s+many|the)\s+(?:rows?|rounds?)(?:\s+(?:you\s+have\s+worked|you\s+worked|you\s+end(?:ed)?\s+on|worked|so\s+far))?(?:\s+(?:for|on)\s+the\s+(?:second|other)\s+[a-z]+)?|use\s+a\s+row\s+counter"
    r"|for\s+an?\s+(?:firmer|looser|snugger|neater|closer|softer|stretchier|tighter)\s+[a-z]+\s*,?\s+(?:use|choose)\s+a\s+(?:smaller|larger|finer|thicker)\s+needle(?:\s+size)?|if\s+(?:your|the)\s+stitches\s+are\s+(?:too\s+)?crowded\s*,\s*use\s+a\s+longer\s+(?:circular\s+)?needle"
    r"|check\s+your\s+(?:tension|gauge|measurements)(?:\s+(?:again|now|often|from\s+time\s+to\s+time))*(?:\s+before\s+going\s+(?:on|any\s+further))?|(?:please\s+)?read\s+(?:through\s+)?(?:all\s+)?(?:the|this)\s+(?:steps|section|instructions|notes)(?:\s+carefully)?\s+before\s+(?:you\s+)?(?:begin|start|going\s+on|beginning|starting)(?:\s+the\s+[a-z]+)?"
    r"|care\s+(?:should|must)\s+be\s+taken\s+not\s+to\s+(?:pull|stretch|twist|split)\s+the\s+[a-z]+(?:\s+(?:too\s+)?(?:tight|tightly|out\s+of\s+shape))?|count\s+your\s+stitches\s+(?:often|carefully|now)\s*,\s*as\s+(?:a|an|the|it)\b[a-z ]{3,40}\b(?:easily|often)\s+(?:lost|missed|overlooked)"
    r"|(?:slip|sl)\s+(?:all\s+)?(?:the\s+)?markers\s+as\s+you\s+(?:come\s+to|reach|pass)\s+them|(?:it\s+is\s+)?(?:do\s+not|don't)\s+put\s+it\s+off|catch\s+(?:any\s+)?floats\s+(?:longer\s+than|of\s+more\s+than|over\s+more\s+than)\s+\d+\s+(?:sts|stitches)"
    r")",
    re.IGNORECASE,
)
"""Sentences whose words are all told, numbers among them."""


_IMPRINT: Final = regex(
    r"printed\s+in\s+(?:(?:great|new|the)\s+)?[a-z]+(?:\s+in\s+\d{4})?|all\s+rights\s+reserved(?:\s*;\s*for\s+(?:private|personal)\s+use\s+only)?|errors\s+and\s+omissions\s+excepted|have\s+you\s+(?:a|any)\s+questions?\s+(?:about|on)\s+this\s+(?:pattern|leaflet)\s*\??|(?:first\s+)?published\s+in\s+\d{4}"
    r"|(?:for\s+(?:support|help|advice|helpful\s+advice|questions)\s*,?\s*(?:please\s+)?)?(?:write|please\s+write)\s+to\s+(?:us|the\s+address)\b(?:\s+(?:on|at|under|below|above|overleaf|the|my|our|website|picture|this|page|pattern))*|we\s+can\s+answer\s+in\s+\w+\s+languages|this\s+(?:pattern|leaflet)\s+(?:is\s+for\s+(?:personal|private)\s+use(?:\s+only)?|(?:must|may)\s+not\s+be\s+(?:re-?sold|copied|sold|reproduced)(?:[\s,]+(?:or|and|in|any|form|of|by|way|trade|except|on|condition|that|it|is|sold|its|complete|state|copied|shared|lent|without|written|permission))*)"
    r"|(?:the\s+publishers\s+cannot\s+accept|no)\s+responsibility\s+(?:can\s+be\s+accepted\s+)?for\s+(?:the\s+)?(?:use\s+of|results?\s+with)\s+other\s+(?:yarns?|wools?)|please\s+send\s+a\s+stamped\s+addressed\s+envelope(?:\s+with\s+your\s+enquiry)?|(?:see|turn\s+to)\s+page\s+\d+(?:\s+for\s+the\s+[a-z]+)?|continued\s+(?:overleaf|on\s+(?:the\s+next\s+page|page\s+\d+))"
    r"|do\s+not\s+copy(?:\s+or\s+(?:distribute|share|sell))?|translated\s+from\s+the\s+(?:[a-z]+(?:\s+edition)?|(?:first|second|third|[a-z]+)(?:\s*,\s*revised)?\s+edition)|(?:the\s+)?yarn\s+amounts\s+are\s+(?:approximate|based\s+on\s+average\s+requirements)(?:\s+and\s+are\s+approximate)?|leaflet\s+(?:no\.?\s*)?\d+(?:\s+\d+\s?p)?",
    re.IGNORECASE,
)
"""What a leaflet says of itself: where it was printed, who may use it, whom to ask."""
_TO_DO: Final = regex(
    r"(?:please\s+)?(?:check|count|read|write|note(?!\s+that)|make|keep|use|for|if|see|look|turn)\b",
    re.IGNORECASE,
)
"""How advice begins that she may want to follow before she goes on."""
_BESIDES: Final = regex(
    rf"(?:[,;:]|\band|\bthen)\s+(?:then\s+)?(?:(?:(?:bind|cast)\s+(?:on|off)|graft|turn|begin\s+again)(?=\s*(?:$|[.,;])|\s+(?:the|all|\d))|pick\s+up\s+(?:and\s+knit\s+)?{_NUMBER}|"
    r"slipping\s+the\s+first|placing\s+an?\s+marker|go\s+on\s+to|pass\s+it\s+over|continue\s+(?:plain|in|to)\b|so\s+(?:add|knit|purl|work)\s)|"
    rf"\bending\s+with\s+an?\s+[rw]s|\bleaving\s+{_NUMBER}\s+(?:sts|stitches)|\bover\s+the\s+(?:next|last)\s+{_NUMBER}\s+(?:sts|stitches)|\bwith\s+the\s+(?:live|held|open)\s+(?:sts|stitches|loops)|\bunless\s+you\s+(?:work|knit)|"
    r"\botherwise\s+(?:cast|bind|knit|purl|work|go|continue|turn|skip|begin)\b|[,;]\s+(?:working|knitting|purling|slipping|casting|binding)\s+(?:off\s+)?(?:the\s+)?(?:first|last|next|\d)|\bonly\s+on\s+(?:the\s+)?(?:right|wrong|rs|ws)\b|\bloop\s+of\s+\d+\s+ch|\bput\s+(?:an?|the|one|each)\s+(?:st|stitch)\b|"
    r"\bjoining\s+(?:the\s+)?\d+\s+(?:held|live|open)\b|(?:[,;]|\band|\bthen)\s+(?:then\s+)?(?:work|knit|purl)\s+(?:the\s+)?(?:collar|neckband|bands?|borders?|edging|sleeves?|hood|thumb|cuffs?)\b",
    re.IGNORECASE,
)
"""What stands in no remark."""


@lru_cache(maxsize=2048)
def is_idle(sentence: str) -> bool:
    """Return whether a sentence works no stitch and says nothing of how the knitting goes on.

    Args:
        sentence: One sentence, made plain.

    Returns:
        Whether it can only be said. False in every doubt, as what is only said is not knitted.
    """
    words = _bare(sentence)
    if not words or len(words) > _LONGEST or ENDS_IN_KEY.search(words):
        return False
    if orders_besides(words) or reads_otherwise(words):
        return False
    if _IMPRINT.fullmatch(words) or tells_fact(words) or tells_lasting(words) or tells_wish(words):
        return True
    if insets_in((words,)):
        return True
    if begins_making_up(words):
        return makes_up(words)
    chosen = _CHOSEN.fullmatch(words)
    if chosen is not None and begins_making_up(chosen["main"]):
        return makes_up(chosen["main"])
    if any(_has_form(words, form) for form in (_FORMS, STANDING, _SIGHT)) or is_beheld(words):
        return True
    facts = facts_of(words)
    if len(facts) > 1 and all(map(_is_fact, facts)):
        return True
    return works_nothing(sentence)


def _is_fact(fact: str) -> bool:
    """Return whether one of several facts of a sentence is one, or works nothing."""
    return (
        tells_fact(fact)
        or tells_lasting(fact)
        or is_beheld(fact)
        or _has_form(fact, STANDING)
        or works_nothing(fact)
    )


def _has_form(words: str, form: re.Pattern[str]) -> bool:
    """Return whether a sentence has a form, and the parts that the form leaves free order nothing."""
    match = form.fullmatch(words)
    return match is not None and not any(map(_orders, match.groupdict().values()))


def _bare(sentence: str) -> str:
    """Return a sentence without the signs around it: its full stop, quotation marks, brackets around the whole."""
    words = " ".join(sentence.split()).strip(" .!\"'")
    if words[:1] == "(" and words[-1:] == ")" and "(" not in words[1:]:
        words = words[1:-1].strip(" .!\"'")
    return words


def is_imprint(sentence: str) -> bool:
    """Return whether a sentence is about the leaflet itself and not worth saying while she knits.

    Args:
        sentence: One sentence, made plain.
    """
    words = " ".join(sentence.split()).strip(" .!\"'")
    return _IMPRINT.fullmatch(words) is not None and not orders_besides(words)


def leaves_nothing_to_do(sentence: str) -> bool:
    """Return whether a sentence that is only said tells something, and asks for nothing to be done.

    Args:
        sentence: One sentence, made plain.
    """
    words = " ".join(sentence.split()).strip(" .!\"'")
    return (
        is_idle(words)
        and not insets_in((words,))
        and not begins_making_up(words)
        and not _TO_DO.match(words)
        and not (works_nothing(words) and asks_to_do(words))
    )


def orders_besides(words: str) -> bool:
    """Return whether words that a row of the tables would only say hold an order of their own.

    It looks for what stands in no remark, whatever the row lets pass: an order behind a comma or "and", how a row
    ends, stitches that are left, on the needle or still to come, and a condition.

    Args:
        words: The words taken out of a line, made plain.
    """
    return _BESIDES.search(words) is not None


def _orders(words: str | None) -> bool:
    """Return whether the free words of a sentence hold one that could order something."""
    return _ORDERS.search(_HARMLESS.sub(" ", words or "")) is not None
