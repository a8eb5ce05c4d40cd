"""Tell facts on how a pattern lies, where a round begins and what the yarn does, from orders in the same words. No I/O.

Theory of operation. Each form states what the lines around it make anyway: how often a repeat comes in a round, what lies
between two markers, how much yarn an edging takes. Several may be joined by ", and" or a semicolon, if each is a fact. A
sentence by which alone some stitches would rest, a round would begin elsewhere or a fabric would change is none, though it
states too: "the instep stitches wait on needle 2", "this marker is your BOR from now on", "the toe is worked in stockinette".
Nor is one that says two things are shaped at the same time: the lines of both would be worked one after the other. What
`rest` matches is free, and is looked through by `idle`. Source: common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.part_names import PART, STRIP, WHICH
from stepper.regex import regex

_L: Final = r"(?:\d[\d\s()\[\]{},:/.-]*|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|twice)"
_STS: Final = r"(?:sts?|stitch(?:es)?)"
_TIMES: Final = rf"(?:{_L}\s*times|twice)"
_AROUND: Final = (
    r"(?:around|across|all\s+(?:the\s+way\s+)?round|(?:a?round)\s+the\s+(?:body|yoke|hat|leg|mitten|cowl|hem)|(?:in|on|per|over|across|around)\s+(?:the|each|a|every)?\s*(?:rounds?|rnds?|rows?))"
)
_REPEAT: Final = rf"(?:(?:the|this|each|every)\s+)?(?:{_L}-?\s*{_STS}\s+)?(?:(?:pattern|chart|lace|motif|stitch)\s+)?(?:repeat|motif|pattern|chart)(?:\s+[a-z])?"
_PART: Final = rf"{WHICH}(?:{PART}|{STRIP}|gusset|spine|steek|wing)s?"
_CHANGES: Final = r"(?:(?:raglan|neck|armhole|waist|gusset|further|more)\s+)*(?:increases|decreases|shaping|shapings|increasing|decreasing)"
_EDGING: Final = r"(?:bind[-\s]?off|cast[-\s]?off|bo|edging|border|picots?|picot\s+edging|ribbing|rib|cuffs?|collar|neckband|hood|pompom|fringe|i-cord|button\s?bands?|second\s+[a-z]+|last\s+[a-z]+)"
_AMOUNT: Final = r"(?:(?:quite\s+)?a\s+(?:lot|fair\s+amount|good\s+deal|little)\s+of|lots\s+of|plenty\s+of|more|(?:about\s+|around\s+|at\s+least\s+|roughly\s+)?\d[\d\s.,()\[\]{}/-]*(?:%|g|gr|grams?|m|metres?|meters?|yards?|yds?)\b\.?(?:\s+of)?)"

_FORM: Final = (
    rf"{_REPEAT}\s+is\s+(?:worked|knitted|repeated)\s+{_TIMES}\s+{_AROUND}|(?:the|this|each)\s+\d+-?\s*{_STS}\s+(?:pattern\s+)?repeat\s+is\s+(?:worked|repeated|knitted)\s+{_TIMES}|{_REPEAT}\s+(?:has|is)\s+{_L}\s*{_STS}(?:\s+(?:wide|long))?|you(?:'ll|\s+will)?\s+work\s+it\s+{_TIMES}\s+{_AROUND}"
    rf"|(?:one|a|each)\s+repeat\s+of\s+the\s+(?:chart|pattern|lace|cable)\s+(?:is|measures|takes)\s+{_L}\s*{_STS}(?:\s+(?:wide|across))?|(?:the\s+)?charts?\s+shows?\s+the\s+right\s+side(?:\s+of\s+(?:the\s+)?(?:work|fabric|knitting))?|(?:each|every|one)\s+square(?:\s+(?:of|in|on)\s+the\s+chart)?\s+(?:is|represents|stands\s+for|shows)\s+(?:one|1)\s+stitch(?:\s+and\s+(?:one|1)\s+(?:row|round|rnd))?"
    r"|(?:the\s+)?(?:pattern\s+)?repeats?\s+(?:is|are)\s+(?:outlined|framed|boxed|marked|shown|enclosed)(?:\s+(?:in|by|with|between))?(?:\s+(?:an?|the|red|blue|bold|heavy|thick|dotted|coloured|colored|lines?|box(?:es)?|frames?|border))*|(?:in|on)\s+the\s+charts?\s*,\s*(?:work|repeat|knit)\s+the\s+(?:sts|stitches)\s+(?:inside|within|between)\s+the\s+(?:heavy|bold|thick|red|dotted)\s+(?:lines?|box|frame)\s+as\s+(?:many\s+times|often)\s+as\s+(?:they(?:\s+will)?\s+fit|it\s+fits|there\s+is\s+room)"
    r"|(?:the\s+)?(?:written|charted)\s+(?:and|or)\s+(?:the\s+)?(?:written|charted)\s+(?:directions|instructions|versions?)\s+(?:are\s+(?:exactly\s+)?the\s+same|agree|match)"
    rf"|(?:each|every)\s+(?:round|rnd|row)\s+has\s+{_L}\s*(?:repeats?|motifs?|panels?)(?:\s+of\s+the\s+(?:chart|pattern|lace|cable))?|(?:the\s+)?(?:motif|pattern|repeat|chart)\s+(?:comes|goes|fits|appears)\s+{_TIMES}\s+{_AROUND}|(?:an?|the)\s+(?:thick|heavy|bold|red|blue|dotted|double)\s+(?:line|box|frame)\s+(?:marks|shows|outlines|frames|encloses)\s+(?:the|one|each)\s+(?:pattern\s+)?repeat|(?:the\s+)?numbers\s+(?:at|on|along|beside)\s+the\s+(?:sides?|edges?|right|left)(?:\s+of\s+the\s+chart)?\s+(?:are|show|give|stand\s+for)\s+(?:the\s+)?(?:rounds?|rows?|rnds?)(?:\s+numbers?)?"
    rf"|(?:(?:first|second|third|fourth|last)\s+)?(?:colou?r\s+)?(?:band|pattern|motif|border)(?:\s+[a-h\d])?\s*\(\s*\d+[-\s]*{_STS}\s+(?:pattern\s+)?rep(?:eat)?\s*\)"
    # where things are, as they are
    r"|(?:the\s+)?markers\s+(?:sit|lie|are|stand|hang)\s+(?:on|at)\s+(?:either|each|both)\s+sides?\s+of\s+the\s+(?:[a-z]+\s+){0,2}(?:st|stitch|spine|panel|steek|thumb|gusset|cable)s?|(?:the\s+|this\s+)?(?:ribbing|rib|cable|garter\s+stitch|brioche|twisted\s+rib|colou?rwork)\s+(?:pulls|draws)\s+in(?:\s+(?:more\s+than\s+you\s+(?:might\s+)?(?:expect|think)|a\s+(?:lot|little|bit)|quite\s+a\s+(?:lot|bit)|strongly))?"
    rf"|(?:the\s+)?(?:beg(?:inning)?|start)\s+of\s+(?:the\s+)?(?:round|rnd)\s+(?:is|lies|falls)\s+(?:at|in|on|between)(?:\s+(?:the|start|beginning|middle|cent(?:er|re)|of|back|front|left|right|side|underarm|sole|heel|palm|and|n\d|needles?|\d))+|(?:this|that|it)\s+(?:is|marks|will\s+be)\s+the\s+(?:(?:cent(?:er|re)|middle)\s+(?:back|front|of\s+the\s+(?:back|front|heel|sole|palm))|(?:left|right)\s+(?:side|underarm)|side\s+(?:seam|line)|raglan\s+line|back|front)"
    rf"|the\s+(?:back\s+neck|front\s+neck|{_PART}|steek|button\s?band|placket)\s+(?:lies|is|sits|falls)\s+between\s+the\s+(?:two\s+|{_L}\s+)?markers|there\s+(?:is|are)\s+no\s+{_CHANGES}\s+(?:in|on|over)\s+this\s+(?:part|section|stretch|piece|bit)"
    rf"|(?:you(?:'ll|\s+will|\s+should)?\s+(?:now\s+)?have|there\s+(?:is|are))\s+{_L}\s*{_STS}\s+(?:more|fewer|less)\s+(?:on|for|at)\s+(?:the\s+)?{_PART}\s+than\s+(?:on|for|at)\s+(?:the\s+)?{_PART}|the\s+{_PART}\s+(?:now\s+)?has\s+{_L}\s*{_STS}\s+(?:more|fewer|less)\s+than\s+the\s+{_PART}"
    rf"|(?:each|every|one)\s+(?:repeat|rep)(?:\s+of\s+(?:the|these|all)?\s*(?:{_L}\s*)?(?:rows|rounds|rnds|chart|pattern)(?:\s+\d+\s*-\s*\d+)?)?\s+(?:adds|brings|gives)\s+{_L}\s*(?:full\s+|whole\s+|more\s+|new\s+|lace\s+|pattern\s+)*(?:motifs?|repeats?|{_STS})(?:\s+(?:on|at|to|in)\s+(?:each|both|either|every)\s+(?:sides?|wings?|edges?|end)(?:\s+of\s+(?:each|the|every)\s+[a-z]+)?)?(?P<rest>(?:,\s+so\b[a-z', ]*)?)(?:\s*:\s*{_L}(?:\s*,?\s*(?:and\s+)?(?:finally\s+|then\s+)?{_L})*(?:\s*{_STS})?)?"
    rf"|the\s+held\s+(?:sts|stitches)\s+(?:stay|remain|wait|rest|are\s+left)(?:\s+(?:on\s+(?:their|the|hold|a)\s*(?:holders?|threads?|waste\s+yarn|scrap\s+yarn|needles?)?|where\s+they\s+are|untouched))*(?:\s+(?:until|while)\s+the\s+{_PART}\s+is\s+(?:finished|done|complete|being\s+worked|worked))?"
    rf"|the\s+(?:slipped|edge|selvedge|selvage|border|steek)\s+(?:sts|stitches)\s+are\s+included\s+in\s+(?:the|all)\s+(?:stitch\s+)?counts?"
    # what the yarn does
    rf"|(?:the\s+)?{_EDGING}\s+(?:uses?|needs?|takes?|eats?|requires?)\s+(?:up\s+)?{_AMOUNT}(?:\s*(?:the\s+)?(?:yarn|wool))?(?:\s*,\s*(?:but|and)\s+(?:it\s+)?(?:gives|is)\s+(?:plenty\s+of\s+|very\s+|a\s+)?(?:stretchy?|elastic|pretty|neat|stretchy\s+edge))?|i\s+weigh\s+(?:my|the)\s+(?:ball|yarn)(?:\s*[:,]\s*the\s+{_EDGING}\s+needs\s+{_AMOUNT})?"
    rf"|(?:be\s+sure\s+to\s+|you\s+should\s+)?(?:leave|save|keep|reserve|set\s+aside)\s+(?:(?:about|around|at\s+least|roughly|enough)\s+)*(?:\d[\d\s.,]*(?:%|g|gr|grams?|m|metres?|meters?|yards?|yds?|per\s*cent)\s*(?:of\s+)?)?(?:(?:your|the)\s+)?(?:yarn|wool)\s+for\s+(?:the\s+)?{_EDGING}(?:\s+and\s+(?:the\s+)?{_EDGING})?"
    r"|(?:cotton|linen|silk|bamboo|hemp|alpaca|superwash\s+wool|this\s+yarn)\s+(?:relaxes|grows|stretches|drops|gives)(?:\s+(?:a\s+little|a\s+bit|with\s+wear|when\s+(?:washed|worn|wet)|in\s+the\s+wash))?\s*,\s*so\s+(?:do\s+)?(?:re-?)?check\s+(?:the|your)\s+(?:length|gauge|tension|measurements)(?:\s+(?:after|once|when)\s+(?:washing|blocking|it\s+is\s+(?:washed|blocked|dry)))?"
    r"|tip\s*:\s*(?:(?:place|put|use|hang)\s+(?:an?\s+)?(?:stitch\s+)?markers?\s+(?:after|between)\s+(?:each|every|the)\s+(?:pattern\s+)?repeats?|(?:use|run|insert|place)\s+a\s+lifeline\s+(?:before\s+(?:you\s+begin|beginning|starting|you\s+start)\s+(?:the\s+)?(?:lace|chart|cables?|edging)|after\s+(?:each|every)\s+(?:repeat|chart|section)))"
)
STANDING: Final = regex(rf"(?:(?:please\s+)?note\s+(?:that\s+|[:,-]\s*)|note\s*[:-]\s*)?(?:{_FORM})", re.I)
"""One such fact; what its group `rest` matches is still to be looked through."""
_JOINT: Final = regex(r"\s*;\s*(?:and\s+)?|\s*,\s*(?:and|but|so|though|although|because|since|as)\s+|\s+(?:though|although|because)\s+(?:and\s+|but\s+)?|\s+and\s+(?=you(?:'ll|\s+will)\b)", re.I)


def facts_of(sentence: str) -> list[str]:
    """Cut a sentence where one fact may be joined to another; the whole alone if it has no such joint."""
    return [part for part in _JOINT.split(sentence) if part]
