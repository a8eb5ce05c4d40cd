"""Tell of a clause beside an order whether it says only how, when or whither the work goes, and works nothing. No I/O.

Theory of operation. "Knit 10 rounds, tightening the gap with your thumb" is an order and a clause. What the clause does is told
by its verb, of a closed class (`_KINDS`), and by what that verb does it to: care that is taken, the yarn's tension, the form of
the needle, a tail of yarn, wraps that become one with their stitches, how a chart is looked at. Of each class the things are
closed where another thing would be work ("holding the yarn in front", "changing to larger needles"), and the words behind them
are open within limits: no number, no word for how often, which or how far, no verb of the craft (`_BOUNDS`). A clause of any
other verb is not told: "slipping the last st", "keeping the edge in garter", "ending with a WS row". Source: the wording of
patterns in print; common practice.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Final

from stepper.project.rewording.clauses import word_classes as of
from stepper.project.rewording.clauses.clause import words_of
from stepper.project.rewording.clauses.neutral import made_neutral
from stepper.project.rewording.synonym import LONG, N, word_set
from stepper.regex import regex

_BOUNDS: Final = (
    of.CRAFT
    | of.LIMITS
    | of.NUMBERS
    | of.FABRIC
    | of.COLOURS
    | of.GENERAL
    | of.MODALS
    | of.AUXILIARIES
    | of.SUBORDINATING
    | of.SELF
    | of.NEGATIONS
    | word_set("or then rs ws front where together pattern patterns chart charts repeat rep size sizes version versions")
)
"""Words with one of which the open end of a clause may say what is worked, where or how often."""
_LENGTH: Final = rf"{LONG}s?\.?(?:\s*[(\[][\d\s.,/\u00bd\u00bc\u00be]*(?:cm|mm|ins?|inch(?:es)?|\")\.?\s*[)\]])?"
_LED: Final = r"(?:(?:always|still|thus|again|carefully|gently|just|simply|and|but)\s+)*"
_DET: Final = r"(?:(?:the|an?|any|all|each|every|your|these|those|both|of)\s+)*"
_MET: Final = regex(
    r"\s+(?:(?:as|when|whenever|where|wherever)\s+you\s+(?:go(?:\s+(?:along|by|on))?|knit|work(?:\s+(?:across|round|around|along|up|on))?|(?:come|get)\s+(?:to|across)\s+(?:it|them|each(?:\s+one)?)|"
    r"(?:meet|reach|pass|encounter)(?:\s+(?:it|them|each(?:\s+one)?))?)|(?:all\s+)?throughout|all\s+the\s+(?:way|time)|from\s+time\s+to\s+time|now\s+and\s+(?:then|again)|(?:if|when|where|as)\s+(?:necessary|needed|required))$"
)
"""That it is done all along: "as you come to them"."""
_HOLES: Final = r"(?:(?:small|little|ugly|big|unsightly|possible|any|an?|the|those)\s+)*(?:holes?|gaps?|ladders?|jogs?|puckers?|puckering|bumps?|gaping|twisting|tangles?|tangling|stretching|flaring|distortion)"
_TO_AVOID: Final = rf"(?:(?:(?:so\s+as|in\s+order)\s+)?to\s+(?:avoid|prevent|close|hide|minimi[sz]e|reduce|disguise|eliminate)\s+{_HOLES}|(?:thus\s+)?(?:avoiding|preventing|minimi[sz]ing|hiding)\s+{_HOLES}|so\s+as\s+not\s+to\s+(?:leave|make|have|get|create|form)\s+{_HOLES})"


_CALLED: Final = regex(r"\b(?:the|an?|each|every)\s+(?:joins?|turns?|wraps?|turning\s+(?:points?|places?)|colou?r\s+changes?)\b")
"""Places called by a verb of the craft."""


def _is_free(words: str) -> bool:
    """Return whether the open end of a clause says where or how, and nothing that is worked."""
    if not words:
        return True
    told = words_of(made_neutral(_CALLED.sub("the spot", words)))
    if told[0] not in of.PREPOSITIONS | of.ADVERBS | of.LIMITS and not told[0].endswith("ly"):
        return False
    return not any(word in _BOUNDS or word[:1].isdigit() or not word[:1].isalnum() for word in told)


def _is_reason(words: str) -> bool:
    """Return whether a condition says that the needle in hand no longer suits the stitches, or that another does."""
    told = set(words_of(made_neutral(words)))
    if not told & _FITS:
        return False
    return not told & (_BOUNDS - _OF_FITTING) and not any(word[:1].isdigit() for word in told)


_FITS: Final = word_set(
    "fit fits enough too necessary needed required crowded crowd few fewer many comfortably comfortable tight desired possible "
    "convenient small easier easily stretch stretched meet reach room"
)
_OF_FITTING: Final = word_set(
    "are is be been have has do does not no can can't cannot don't doesn't longer fewer get gets getting got become becomes "
    "grow grows long small you there work meet reach for will won't more"
)


def _is_steady(words: str) -> bool:
    """Return whether what care is taken for is that something lies, looks or stays as it does anyway."""
    told = words_of(made_neutral(words))
    for at, word in enumerate(told):
        if word not in _STEADY and word not in _BEING:
            continue
        subject, rest = told[:at], told[at + 1 :]
        if not subject or any(each in _BOUNDS - _OF_THINGS or each[:1].isdigit() for each in subject):
            return False
        if word in _BEING:
            rest = [each for each in rest if each not in _HOW]
            return bool(rest) and all(each in _STATES | _WAYS for each in rest)
        return all(each in _STATES | _WAYS | _HOW for each in rest)
    return False


_STEADY: Final = word_set(
    "stay stays lie lies sit sits stack stacks look looks line lines remain remains hang hangs twist get gets become"
)
_BEING: Final = word_set("is are isn't aren't do does don't doesn't be")
_OF_THINGS: Final = word_set("increases decreases cast-on bind-off cast on edge first last double dec inc join centre shaping cdd")
_HOW: Final = word_set("not too so very all nice nicely and neatly evenly quite still also been become get become")
_STATES: Final = word_set(
    "twisted untwisted twist tight loose slack even flat neat tangled tangle caught secure firm stretched stretchy smooth "
    "straight snug crooked pucker elastic relaxed"
)
_WAYS: Final = word_set("up in line on top of each other one above the a place middle centre center needle needles round join way around and")

def _is_cause(words: str) -> bool:
    """Return whether words name what makes a part another length in other sizes, and work nothing."""
    told = words_of(words)
    return not any(each in _BOUNDS - _WIDTHS or each[:1].isdigit() for each in told)


_WIDTHS: Final = word_set("wider longer shorter narrower deeper")


def _is_joy(words: str) -> bool:
    """Return whether words name what there is to enjoy, and nothing of the work."""
    return not any(each in _BOUNDS | of.STITCH_THINGS or each[:1].isdigit() for each in words_of(words))


def _is_made_up(words: str) -> bool:
    """Return whether words say for which seam or end a tail of yarn is."""
    return set(words_of(words)) <= _MADE_UP


_LOOK: Final = r"(?:(?:very|really|more|less)\s+)?(?:neat(?:er)?|crisp(?:er)?|tidy|tidier|firm(?:er)?|clean(?:er)?|smooth(?:er)?|stretchy|stretchier|elastic|nice(?:r)?|decorative|sharp(?:er)?|pretty|prettier|soft(?:er)?|invisible|even)"
_Test = Callable[[str], bool]
_FORM: Final = (
    r"(?:(?:an?|the|your|one|some|set|of|two|shorter|longer|short|long|magic-?\s?loop|method|on|using)\s+)*"
    r"(?:(?:\d+\s*-?(?:cm|inch|in|\")|(?:16|20|24|29|32|40|47)(?:\"|''|\s*-?inch(?:es)?|\s*-?in\.?))\s*-?(?:long\s+)?)?"
    r"(?:(?:short(?:er)?|long(?:er)?)\s+)?"
    r"(?:(?:circular|circ|double[-\s]?pointed|dp)\s+(?:needles?|ndls?)|circ(?:ular)?s?|dpns?\.?|dp\s?ns|double[-\s]?points?|magic-?\s?loop(?:\s+method)?|(?:short(?:er)?|long(?:er)?)\s+(?:needles?|one))"
)
_TAIL: Final = (
    rf"(?:(?:about|around|approx(?:imately)?\.?|at\s+least|roughly|some)\s+)?(?:an?\s+|some\s+|enough\s+|sufficient\s+)?(?:(?:{_LENGTH}|\d+-(?:inch|in|cm))[-\s]*)?(?:(?:long\s+enough|long|longish|short|generous|good|small|decent|extra|nice|sufficient|reasonable|very|fairly)[\s-]+)*(?:(?:yarn|wool|loose)\s+)?"
    rf"(?:tail|end(?!\s+(?:st|stitch|of\s+(?:the\s+)?r))|length(?=\s+of\s+(?:yarn|wool|about|\d))|strand|thread)s?(?:\s+of\s+(?:the\s+)?(?:yarn|wool))?(?:\s+(?:of\s+)?(?:(?:about|around|approx(?:imately)?\.?|at\s+least|roughly|measuring)\s+)*{_LENGTH})?(?:\s+long)?(?:\s*,?\s+(?:long\s+)?enough)?"
    rf"(?:\s+(?:(?:about|at\s+least|roughly)\s+)*{N}\s+times\s+(?:as\s+long\s+as(?:\s+the\s+(?:length|width)\s+of)?|the\s+(?:length|width|circumference)\s+of)\s+(?:the\s+|your\s+)?(?:edge|hem|row|round|work|piece|band|seam|brim|cuff|neck|opening|width))?"
)
_MAKE_UP: Final = r"(?:\s+(?:for|to|with\s+which\s+to|to\s+be\s+used\s+(?:for|to))\s+(?P<making>[a-z][a-z' -]*))?"
_MADE_UP: Final = word_set(
    "sew sewing seam seaming seams graft grafting weave weaving darn darning close closing draw thread finish finishing use later "
    "up in the it them a side sides top toe thumb shoulder shoulders underarm underarms hole holes sleeve sleeves hem collar and on "
    "back heel crown pieces through with together your join joining all pocket pockets down for attach attaching end ends band bands gap gaps edge edges "
    "sts stitches remaining rem live last loops three-needle bind-off cast-off"
)
_TURNINGS: Final = (
    r"(?:(?:(?:both|the|two)\s+)*(?:legs|loops|strands)\s+of\s+)?"
    r"(?:(?:the|all|any|each|both|every|rest|remaining|last|of|your|german|two|turning)\s+)*"
    r"(?:wraps?|ds'?s|ds|double\s+(?:sts|stitches|stitch|st)|wrapped\s+(?:sts|stitches|st|stitch)|turning\s+(?:sts|stitches)|shadow\s+(?:wraps|stitches)|twin\s+(?:sts|stitches))"
)
_WITH_STS: Final = r"(?:\s+(?:(?:tog(?:ether)?|along)\s+)?with\s+(?:(?:the|their|its)\s+|(?=wrapped\b))(?:(?:wrapped|corresponding|own)\s+)?(?:sts?|stitch(?:es)?)(?:\s+(?:that\s+)?(?:they\s+(?:wrap|belong\s+to)|it\s+(?:wraps|belongs\s+to)))?|\s+as\s+(?:one|(?:(?:one|a|single|normal|ordinary)\s+)+(?:sts?|stitch(?:es)?))|\s+tog(?:ether)?)?"
_YARNS: Final = r"(?:(?:the|your|both|two|working|unused|other|resting|idle|contrast(?:ing)?|second)\s+)*(?:yarns?|strands?|colou?rs?|wools?|threads?)(?:\s+(?:that\s+is\s+)?not\s+(?:in|being)\s+use[d]?|\s+not\s+used)?"
_NAMES: Final = "|".join(sorted(of.PARTS - word_set("work start end beginning middle left right side sides half halves")))
_DONE: Final = rf"(?:(?:raglan|neck|armhole|sleeve|crown|toe|heel|waist|gusset|thumb|yoke|shoulder)\s+)?(?:shapings?|decreases|decreasings?|increases|increasings?|decs|incs|short[-\s]rows|opening)|(?:(?:left|right|front|back|first|second|lower|upper|main)\s+)*(?:{_NAMES})"

_KINDS: Final[tuple[tuple[str, str, _Test | None], ...]] = (
    # care that is taken, and for what
    ("care", r"(?:tak(?:ing|e)\s+(?:(?:great|good|special|extra|particular)\s+)?care|being\s+(?:(?:very|extra|really|quite)\s+)?careful|careful|mak(?:ing|e)\s+(?:(?:quite|very|absolutely)\s+)?sure|ensuring|seeing|checking|when\s+you(?:'re|\s+are)\s+(?:quite\s+)?(?:sure|certain))\s+(?:that\s+)?(?P<steady>.+)", _is_steady),
    ("care", r"when\s+you(?:'re|\s+are)\s+(?:quite\s+)?(?:sure|certain)\s+(?:that\s+)?nothing\s+is\s+twisted", None),
    ("care", r"(?:trying|checking)\s+(?:it|them)\s+on(?:\s+(?:for\s+(?:size|length|fit)|often))?|(?:counting|checking)(?:\s+(?:your|the)\s+(?:sts|stitches|count))?(?:\s+(?:often|carefully))?", None),
    # the needle in hand, in another form and of the same size
    ("tool", rf"(?:(?:chang|switch|mov|transferr|shift|swapp|go)ing|change|switch|move)\s+(?:over\s+|across\s+|back\s+|up\s+|down\s+)?(?:to|onto|on\s+to)\s+{_FORM}", None),
    ("tool", rf"(?:(?:chang|switch|mov|transferr|shift|swapp|go)ing|change|switch|move)\s+(?:over\s+|across\s+|back\s+|up\s+|down\s+)?(?:to|onto|on\s+to)\s+{_FORM}\s+(?:when(?:ever)?|once|as\s+soon\s+as|as|if|where|after)\s+(?P<reason>.+)", _is_reason),
    ("tool", rf"using\s+{_FORM}\s+(?:when(?:ever)?|once|as\s+soon\s+as|if|where|after)\s+(?P<reason>.+)", _is_reason),
    # yarn that is left hanging, and how it is drawn
    ("tail", rf"(?:leav(?:e|ing)\s+(?:yourself\s+)?|with\s+(?=an?\s)){_TAIL}{_MAKE_UP}", _is_made_up),
    ("tail", rf"leav(?:e|ing)\s+(?:a\s+yard|half\s+a\s+yard|a\s+metre|plenty|sufficient|enough)(?:\s+(?:of\s+)?(?:the\s+)?(?:yarn|wool|thread))?{_MAKE_UP}", _is_made_up),
    ("tail", r"without\s+(?:breaking|cutting)(?:\s+off)?\s+(?:(?:the|your|working)\s+)*(?:yarns?|wool|thread|mc|cc\d?|[a-d])", None),
    ("tension", rf"(?:tighten|snugg|tugg|eas|smooth|clos|minimi[sz]|avoid|prevent|spread|stretch)ing\s+(?:up\s+|out\s+|on\s+)?(?:{_HOLES}|{_DET}(?:yarn|strands?|wool|tension|floats?|tail|loop|work|fabric|knitting|first\s+(?:st|stitch))(?:\s+(?:up|out))?)(?:\s+(?:slightly|firmly|gently|well|a\s+(?:little|bit)))?(?:\s+(?P<free>.+))?", _is_free),
    ("tension", r"(?:pulling|drawing|tugging)\s+(?:(?:the|your|working)\s+)*(?:yarn|strand|wool|thread|first\s+(?:st|stitch))\s+(?:(?:fairly|quite|nice\s+and|very)\s+)?(?:tight(?:ly)?|firmly|taut|snug(?:ly)?|firm)(?:\s+(?P<free>.+))?", _is_free),
    ("tension", r"giving\s+(?:(?:the|your|working|first|last)\s+)*(?:it|yarn|strand|wool|tail|st|stitch)\s+an?\s+(?:(?:good|gentle|little|firm|sharp|extra|small)\s+)*(?:tug|pull|tweak)(?:\s+(?P<free>.+))?", lambda words: _is_free(words.replace("first st", ""))),
    ("tension", r"(?:working|knitting|purling)\s+(?:(?:very|quite|fairly|rather|nice\s+and)\s+)?(?:loosely|firmly|tightly|evenly\s+and\s+loosely)", None),
    ("tension", r"(?:without|not)\s+(?:pulling|drawing|stretching|tightening)\s+(?:(?:the|your|it|them)\s*)*(?:yarn|wool|strands?|edges?|work|floats?)?(?:\s*(?:too|so|very))?(?:\s*(?:tight(?:ly)?|hard|firmly|much|taut))?", None),
    ("tension", r"with\s+(?:an?\s+)?(?:(?:very|rather|fairly)\s+)?(?:easy|loose|light|firm|slack|relaxed)\s+hands?", None),
    ("purpose", rf"(?:for|to\s+(?:give|get|make|have|obtain)|giving)\s+an?\s+{_LOOK}(?:(?:\s+and|\s*,)\s+{_LOOK})?\s+(?:edges?|folds?|finish|lines?|look|joins?|hem|corners?|selvedge|selvage|appearance)", None),
    ("purpose", r"to\s+(?:keep|stop|prevent)\s+(?:(?:the|your|all)\s+)*(?:edges?|borders?|work|sts|stitches|fabric|it|them|band)\s+(?:from\s+)?(?:curling|rolling|stretching|flaring|twisting|spreading|gaping|flat|neat|firm|even|tidy|straight)(?:\s+(?:up|out))?", None),
    ("hole", _TO_AVOID + r"(?:\s+(?P<free>.+))?", _is_free),
    # two yarns at a change of colour, and the one that waits
    ("yarns", rf"(?:twist|cross|interlock|wrapp|lock|link)ing\s+{_YARNS}(?:\s+(?:together|(?:a?round|over)\s+(?:each\s+other|one\s+another)))?(?:\s+(?:once|on\s+the\s+(?:wrong\s+side|ws|back)|at\s+the\s+back))?(?:\s+(?:at\s+(?:each|every|the)\s+(?:colou?r\s+changes?|changes?(?:\s+of\s+colou?r)?|joins?)|when(?:ever)?\s+(?:changing\s+colou?rs?|you\s+change(?:\s+colou?rs?)?)))?(?:\s+{_TO_AVOID})?", None),
    ("yarns", rf"(?:carry|strand|float|trail|bring)ing\s+{_YARNS}\s+(?:(?:loosely|not\s+too\s+tightly|evenly|neatly)\s+)?(?P<free>(?:up|along|across|behind|at|on)\s.+?)(?:\s+loosely)?", lambda words: _is_free(words.replace("the ws", "the back").replace("wrong side", "back"))),
    ("yarns", rf"(?:catch|weav|trapp)ing\s+(?:in\s+)?{_DET}(?:long(?:er)?\s+)?floats(?:\s+in)?(?:\s+(?:longer\s+than|of\s+more\s+than|over\s+more\s+than|every|after)\s+{N}(?:\s+(?:or\s+\d\s+)?(?:sts|stitches))?)?(?:\s+(?:on|at)\s+the\s+(?:ws|wrong\s+side|back))?", None),
    ("yarns", r"(?:keeping|holding)\s+(?:the\s+)?(?:pattern\s+|background\s+|main\s+)?(?:colou?r|yarn|mc|cc\d?|[a-d])\s+dominant", None),
    # what lies above what, and markers hung in the fabric
    ("line", rf"(?:keeping|having|making)\s+{_DET}(?:(?:double|centre|center|central|raglan|paired)\s+)*(?:cdds?|s2kp|sk2p|decs?|decreases?|incs?|increases?|shapings?|markers?|decreasings?)\s+(?:nicely\s+|neatly\s+)?(?:lined?\s+up|in\s+(?:an?\s+)?(?:straight\s+)?(?:lines?|columns?)|aligned|stacked|vertical|(?:one\s+)?above\s+(?:each\s+other|one\s+another|the\s+other)|on\s+top\s+of\s+(?:each\s+other|one\s+another)|in\s+place)", None),
    ("line", r"moving\s+(?:(?:the|your|these|all|removable|locking|coloured|colored)\s+)*markers?\s+up(?:wards)?(?:\s+(?:with\s+(?:the|your)\s+(?:work|knitting)|every\s+few\s+(?:rows|rounds|rnds)))?", None),
    ("line", r"slipping\s+(?:(?:the|all|any|your|these|side|raglan|underarm|gusset|other|remaining)\s+)*markers?", None),
    # wraps and double stitches, each of which becomes one stitch again
    ("turnings", rf"(?:resolv|clos|process|work|knitt|purl|lift|hid|conceal|pick)ing\s+(?:up\s+)?(?:and\s+(?:work|knitt|purl)ing\s+)?{_TURNINGS}{_WITH_STS}(?:\s+{_TO_AVOID})?", None),
    ("turnings", rf"(?:pick|lift)ing\s+(?:up\s+)?{_TURNINGS}\s+and\s+(?:knitt|purl|work)ing\s+(?:it|them|each(?:\s+(?:one|wrap))?){_WITH_STS}", None),
    ("turnings", rf"dealing\s+with\s+{_TURNINGS}(?:\s+as\s+(?:before|usual))?", None),
    ("turnings", rf"(?:picking|lifting)\s+up\s+(?:the|a)\s+(?:loop|strand|bar|thread|yarn)\s+at\s+(?:each|every|the)\s+(?:turning[-\s](?:place|point)|turn|gap)s?\s+and\s+(?:knitt|purl|work)ing\s+it\s+(?:tog(?:ether)?\s+)?with\s+the\s+(?:next|following)\s+(?:st|stitch)(?:\s+{_TO_AVOID})?", None),
    # what is done with this, and what comes next
    ("done", rf"(?:which|this|that)\s+(?:now\s+)?(?:completes|ends|finishes|concludes|closes)\s+{_DET}(?:{_DONE})|(?:thus\s+|thereby\s+)?(?:completing|concluding)\s+{_DET}(?:{_DONE})", None),
    ("done", rf"(?:all\s+)?(?:ready|in\s+(?:readiness|preparation))\s+(?:for|to\s+(?:begin|start|work|shape))\s+{_DET}(?:{_DONE})(?:\s+shaping)?", None),
    ("done", rf"to\s+(?:complete|finish)\s+(?:the\s+(?:rnd|round|row)|{_DET}(?:{_DONE}))", None),
    ("length", r"adjust(?:ing)?\s+(?:(?:the|its|for)\s+)*(?:total\s+)?length\s*(?:(?:here|now|at\s+this\s+(?:point|stage))\s*)?(?:(?:if|as|when|where)\s+(?:required|desired|needed|necessary|wanted|you\s+(?:like|wish|prefer|want)))?", None),
    ("done", r"enjoying\s+(?P<joy>.+)", _is_joy),
    # how a chart is looked at
    ("chart", r"(?:following|reading)\s+(?:the\s+|your\s+)?chart\s+(?:from\s+)?(?:(?:the\s+)?bottom\s+(?:up\s+)?to\s+(?:the\s+)?top|right\s+to\s+left)", None),
    ("sizes", r"(?:(?:a\s+(?:bit|little)|slightly)\s+)?(?:shorter|longer|less|more)\s+(?:in|for|on)\s+(?:the\s+)?(?:larger?|small(?:er)?|big(?:ger)?|largest|smallest)\s+sizes?\s*,?\s+(?:because\s+of|due\s+to|owing\s+to|on\s+account\s+of)\s+(?P<why>.+)", _is_cause),
)  # fmt: skip
"""The classes of verbs, each with the form of its clause and what its open words, the one named group, are asked."""
_FORMS: Final = tuple((kind, regex(_LED + expression, re.IGNORECASE), test) for kind, expression, test in _KINDS)
_OPENS: Final = regex(
    r"(?:[a-z]+ing|so|to|for|with|without|not|change|switch|move|adjust|in|all|ready|careful|which|this|that|when|shorter|longer|less|more|slightly|a|take|make|leave|but|and|always|still|thus|thereby|carefully|gently)\b",
    re.IGNORECASE,
)
"""How a clause of one of the kinds may begin."""


_SIGNED: Final = regex(r"(?<![\w'-])(?:[A-HJ-Z]|MC|CC\d?|[2-6]?X+[SL])(?![\w'-])")
"""The sign of a yarn or a size, by which open words may say more than how."""


def kind_beside(clause: str) -> str:
    """Return of what kind a clause is that says only how, when or whither; empty if it may work something.

    Args:
        clause: The clause, made plain, without the signs around it.
    """
    if not _OPENS.match(clause):
        return ""
    words, signed = " ".join(clause.lower().split()), _SIGNED.search(clause) is not None
    met = _MET.search(words)
    for said in dict.fromkeys((words, words[: met.start()] if met else words)):
        for kind, form, test in _FORMS:
            match = form.fullmatch(said)
            if match is None:
                continue
            (opened,) = match.groupdict().values() if match.groupdict() else ("",)
            if test is None or not opened or (not signed and test(opened)):
                return kind
    return ""
