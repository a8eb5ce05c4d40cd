"""Tell advice that only those follow who wish to: "If the yoke feels short, add a few rounds". No I/O.

Theory of operation. The pattern as printed is knitted without it, so it works no stitch, and is told at its place for
her to take up. That holds only where the sentence begins with a wish of hers, with how something turns out, or with
yarn to spare, and says one thing. A size, a version, "otherwise", "then" and a second thing to do may each mean that
the other way is none of the pattern's: such a sentence stays unread. Source: common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.clauses.telling import works_nothing
from stepper.regex import regex

_MORE: Final = r"(?:longer|shorter|wider|narrower|deeper|taller|larger|bigger|smaller|roomier|snugger|looser|tighter|slouchier|warmer|fuller|closer|slouchier|baggier|shallower|cosier|cozier)"
_TURNS_OUT: Final = r"(?:short|shallow|tight|loose|wide|narrow|deep|long|small|big|high|low|snug|baggy|floppy|flimsy)"
_PIECE: Final = r"(?:yoke|body|sleeves?|neck|neckband|collar|cuffs?|brim|hat|crown|foot|leg|heel|toe|thumb|hand|band|hem|shawl|scarf|cowl|armholes?|it|this|fit|length|edge)"
_HOLE: Final = r"(?:holes?|gaps?)"
_SHORT: Final = r"(?:you(?:'re|\s+are)\s+(?:running\s+)?(?:short\s+(?:of|on)|low\s+on|(?:almost|nearly)\s+out\s+of|worried\s+about|running\s+out\s+of)\s+(?:the\s+)?(?:yarn|wool)|(?:the|your)\s+(?:yarn|wool)\s+(?:is\s+(?:running\s+)?(?:short|low|out)|runs\s+(?:short|out|low)|does\s+not\s+last))"
_LIKES: Final = rf"(?:(?:you'd|you\s+would|you)\s+(?:rather\s+not|prefer\s+not\s+to|don't\s+(?:want|like|wish)\s+to|do\s+not\s+(?:want|wish)\s+to)\s+(?:do|have|knit|work|make)\s+[a-z' -]{{2,30}}?|you\s+(?:hate|dislike|don't\s+like|can't\s+stand)\s+[a-z' -]{{2,30}}?|you'd\s+(?:like|rather\s+have|prefer)\s+(?:an?\s+|the\s+|your\s+)[a-z]+(?:[-\s][a-z]+){{0,3}}|you\s+(?:like|want|prefer|wish(?:\s+for)?|would\s+like|would\s+rather\s+have|fancy)\s+(?:an?\s+|the\s+|your\s+)[a-z]+(?:[-\s][a-z]+){{0,3}}|{_SHORT})"
_THIS_PART: Final = r"(?:(?:this|the\s+next|the\s+following)\s+(?:whole\s+)?(?:section|part|step|paragraph|bit)|(?:the|these|all\s+the|both)\s+(?:short\s+rows|picots?|picot\s+edging|buttonholes?|pockets?|ties|eyelets|last\s+repeat|embroidery|pompom|lace\s+edging|fold\s?line))"
_SKIPPED: Final = r"(?:(?:just|simply|you\s+(?:can|may|could|might))\s+)*(?:skip|omit|leave\s+out|leave\s+off|miss\s+out|do\s+without)\s+"
_LEFT_OUT: Final = regex(
    rf"(?:note\s*[:-]\s*|tip\s*[:-]\s*)?(?:if\s+{_LIKES}\s*,\s*(?:then\s+)?(?:{_SKIPPED}{_THIS_PART}|leave\s+{_THIS_PART}\s+out)(?:\s+(?:altogether|entirely|completely))?(?:\s*,?\s+(?:and\s+)?(?P<comfort>(?:no\s+one|nobody|the|it|you|your)\s[a-z' ]{{3,60}}))?|{_SKIPPED}(?:{_THIS_PART}|it|them)\s+if\s+{_LIKES}(?:\s*,\s+(?P<solace>(?:no\s+one|nobody|the|it|your)\s[a-z' ]{{3,60}}))?|(?:to\s+)?(?:adjust|alter|change|lengthen|shorten)\s+(?:the\s+)?(?:[a-z]+\s+)?(?:length|depth|height|width|{_PIECE})\s*,\s*do\s+(?:so|it|this)\s+(?:here|now|at\s+this\s+point)|(?:this|the\s+next)\s+(?:section|part|step)\s+(?:is\s+optional|(?:can|may)\s+be\s+(?:skipped|omitted|left\s+out))(?:\s*,?\s+if\s+{_LIKES})?|{_THIS_PART}\s+(?:is|are)\s+optional"
    rf"|feel\s+free\s+to\s+(?:skip|omit|leave\s+out|lengthen|shorten|adjust|add\s+to)\s+(?:(?:the|these|any|this|some)\s+)?[a-z]+(?:\s+[a-z]+)?(?:\s+here)?|(?:the|these)\s+(?:bobbles|beads|stripes|pockets?|ties|picots|buttons|buttonholes|embroidery|eyelets|bands?|fringe|pompom|tassels?|short\s+rows)\s+(?:can|may|could)\s+be\s+(?:left\s+out|omitted|skipped)(?:\s+if\s+you\s+[a-z' ]{{3,40}})?"
    rf"|(?:add|work|knit)\s+(?:a\s+few\s+|some\s+)?(?:more|extra|fewer)\s+(?:rows|rounds|rnds|repeats)\s+(?:here\s+|now\s+)?for\s+an?\s+{_MORE}\s+[a-z]+|(?:stop|end)\s+(?:sooner|earlier|later)\s+if\s+you\s+(?:want|like|prefer|wish|would\s+like)(?:\s+it|\s+an?)\s+{_MORE}(?:\s+[a-z]+)?|(?:those|knitters|anyone)\s+who\s+(?:like|likes|want|wants|prefer|prefers)\s+an?\s+[a-z]+\s+[a-z]+\s+(?:may|can)\s+(?:add|work|knit)\s+(?:a\s+few\s+|some\s+)?(?:more\s+|extra\s+)?(?:rows|rounds|rnds|repeats)"
    rf"|the\s+(?:length|width|depth|size|fit)\s+(?:(?:of\s+the\s+[a-z]+\s+)?(?:is|can\s+be|may\s+be))\s+(?:easily\s+)?(?:altered|adjusted|changed)(?:\s+(?:here|at\s+this\s+point))?|you\s+(?:may|might)\s+(?:wish|want|like)\s+to\s+(?:knit|make|work)\s+(?:it|them|the\s+[a-z]+)\s+{_MORE}(?:\s+here)?|(?:work|knit|add)\s+an?\s+(?:extra|additional)\s+(?:repeat|round|row|rnd)\s+for\s+an?\s+{_MORE}\s+[a-z]+"
    rf"|if\s+you\s+(?:don't|do\s+not)\s+(?:like|want|care\s+for|need)\s+(?:the\s+)?(?:ties|bobbles|beads|pockets?|buttons|picots|fringe|tassels?|pompoms?|eyelets|stripes)\s*,\s+(?:just\s+|simply\s+)?(?:leave|skip|omit)\s+(?:them|it|these)(?:\s+(?:off|out))?"
    rf"|(?:lengthen|shorten|add\s+(?:length|rows|rounds|repeats)|work\s+(?:a\s+few\s+)?(?:more|fewer|extra)\s+(?:rows|rounds|rnds|repeats)|make\s+it\s+{_MORE}|adjust\s+(?:the\s+)?(?:length|width|size))(?:\s+(?:it|the\s+[a-z]+|here|at\s+this\s+point|now))*\s*,?\s+if\s+(?:you\s+(?:like|wish|prefer|want|need)(?:\s+to|\s+it\s+{_MORE}|\s+it)?|desired|preferred|needed|necessary|required)(?:\s+here)?)",
    re.I,
)
"""A part that may be left out: the plan has it, as it is printed."""
_OPTIONAL: Final = regex(
    r"(?:(?:the|back|front|neck|bust|waist|sleeve|hip|body|shoulder|heel|yoke|raglan|german|picot|side|lace|garter|button|tie|turning|i-cord|contrast|hem)\s+){0,3}"
    r"(?:short[-\s]rows?|shaping|darts?|buttonholes?|pockets?|edging|border|picots?|colou?rwork|embroidery|stripes?|ties?|hood|collar|band|bands|pompom|pom-pom|flap|eyelets|fringe|tassels?|beads?|bobbles?|i-cord|thumb|thumbs|belt|loop|lining)"
    r"\s*(?:[(\[]\s*|[,-]\s|(?<=pom)\s)(?:this\s+(?:part|section)\s+is\s+|these\s+are\s+|totally\s+|entirely\s+|completely\s+)?optional(?:\s*[,;-]\s*(?P<comfort>[^()\[\]]{2,90}))?\s*[)\]]?\s*:?",
    re.I,
)
"""A heading of a part that may be left out, with why: "Short rows (optional, but worth it)"."""
_COMES_OUT: Final = regex(
    r"(?:the|it|your)(?:\s+[a-z]+)?(?:\s+will|'ll)\s+(?:survive|cope|be\s+(?:just\s+)?(?:fine|ok|okay|all\s+right)|still\s+(?:fit|work|be\s+fine)|forgive\s+you|not\s+mind)", re.I
)
"""How it comes out all the same: "the sweater will survive"."""
_OUT_BY_ONE: Final = regex(
    r"if\s+(?:you(?:'re|\s+are)|your\s+count\s+is|the\s+count\s+is)\s+(?:(?:only|just)\s+)?(?:an?\s+(?:st|stitch)|one|two|a\s+few|a\s+couple)(?:\s+or\s+(?:two|so|three))?(?:\s+(?:sts?|stitch(?:es)?))?"
    r"\s+(?:off|out|short|over|too\s+(?:many|few))\s*,?\s+(?!.*\b(?:otherwise|sizes?|until|then)\b)[^.!?:;*\d]{3,140}",
    re.I,
)
"""What she does about a stitch lost or made by mistake: the page's count is the plan's."""
_QUESTION: Final = regex(r"(?:(?:do|would)\s+you\s+)?(?:want|like|prefer|fancy|need)\s+(?P<wish>(?:an?|it|the|your)\s+[a-z' -]{2,40}?)\s*\?+\s+(?P<answer>\S.*)", re.I)
"""A wish of hers as a question, and what she may do about it."""
_CUT_SHORT: Final = regex(
    rf"(?:(?:but\s+|and\s+|still\s+|feeling\s+|a\s+bit\s+|rather\s+|too\s+)*(?:{_MORE}|{_TURNS_OUT}|wavy|floppy|puckered|stiff|bulky|(?:pulling|curling|flaring|rolling|sagging|gaping|puckering)(?:\s+(?:in|up|out))?|left-handed|in\s+a\s+hurry|impatient|bored|ambitious|brave|stripes|a\s+gift)"
    r"|(?:no|not\s+enough|short\s+of|short\s+on|out\s+of|run\s+out\s+of|don't\s+have|missing)\s+(?:an?\s+|the\s+|any\s+|your\s+|enough\s+)?(?:buttons?|(?:stitch\s+)?holders?|markers?|cable\s+needle|dpns|double\s+points|circular(?:\s+needle)?|yarn|wool|patience|time|beads?|tapestry\s+needle|row\s+counter|waste\s+yarn|blocking\s+wires|crochet\s+hook)(?:\s+left|\s+at\s+hand)?"
    r"|(?:lost|losing|unsure\s+of|forgotten)\s+(?:your\s+|the\s+|a\s+)?(?:place|count|track|row|stitch\s+count)(?:\s+between\s+[a-z]+)?|(?:don't|do\s+not)\s+(?:like|want|have|fancy)\s+[a-z' -]{2,30})\s*[?!]+\s+(?P<answer>\S.*)",
    re.I,
)
"""A wish or a trouble of hers in a word or two, "Slouchier?", and what she may do about it."""
_IN_ITS_STEAD: Final = regex(
    r"(?:then|just|simply|so|instead|please|you\s+(?:can|may|could|might)|\s|,)*(?:knit|purl|rib|work|continue|cont|carry\s+on|keep|go\s+on|cast|bind|skip|leave|omit|stop|end|finish|graft|begin|start|turn|"
    r"repeat|rep|join|increase|decrease|inc|dec|[kp]\d*)\b|.*\binstead\b",
    re.I,
)
"""An answer that has something else knitted than the page: which of the two is hers, nobody has said."""
_OF_ALL: Final = regex(r"\bsizes?\b|\b(?:first|last|next)\s+(?:row|rnd|round)\b|:\s", re.I)
"""Words with which the answer may be for the pattern itself."""
_ADDS: Final = regex(r"\b(?:more|extra|another|additional|again|longer|shorter|further|fewer|less|deeper)\b", re.I)
_FOR_A: Final = regex(r"(?:tip\s*:\s*|note\s*:\s*)?for\s+an?\s+(?:un)?(?:folded|turned|double)", re.I)
_WISH: Final = (
    r"(?:if\s+(?:you(?:'d|\s+would)?\s+(?:like|want|wish|prefer|fancy)\b[a-z' -]{0,60}|you(?:'ve\s+got|\s+have|\s+still\s+have)\s+(?:lots\s+of|enough|plenty\s+of|some|more|a\s+lot\s+of)\s+(?:yarn|wool)(?:\s+(?:left|over|to\s+spare))*"
    rf"|(?:(?:the|your)?\s*{_PIECE}\s+(?:feels?|seems?|looks?|is|are|comes?\s+out|turns?\s+out)|it's|that's)\s+(?:(?:a\s+bit|a\s+little|too|rather|very)\s+)*{_TURNS_OUT}(?:\s+(?:for\s+you|to\s+you|on\s+you))?|(?:(?:the|your)\s+)?{_PIECE}\s+(?:pinch(?:es)?|gapes?|sags?|binds|pulls|bunches|rides\s+up|flares|puckers|cuts\s+in)(?:\s+(?:a\s+bit|a\s+little|too\s+much))?|(?:the|your)\s+{_PIECE}\s+(?:does\s+not|doesn't|do\s+not|don't)\s+(?:yet\s+|quite\s+)*(?:reach|come\s+(?:down\s+|up\s+)?to|cover)\s+(?:your|the)\s+(?:[a-z]+\s+){{0,2}}[a-z]+(?:\s+yet|\s+comfortably)*|{_SHORT}|your\s+(?:row\s+)?(?:gauge|tension)\s+(?:is\s+(?:off|different)|differs\b[a-z ]{{0,30}}|does\s+not\s+match\b[a-z ]{{0,20}}|is\s+not\s+the\s+same\b[a-z ]{{0,20}})|you\s+need\s+(?:more|extra)\s+(?:length|depth|width|room|height)"
    rf"|you\s+(?:find|get|see)\s+(?:an?\s+|any\s+)?{_HOLE}\b[a-z' -]{{0,30}}|there\s+(?:is|are)\s+(?:an?\s+|any\s+)?{_HOLE}\b[a-z' -]{{0,30}}|(?:liked|preferred|desired|wished|in\s+doubt)(?!\s*,?\s*(?:then\s+)?(?:change|switch|(?:knit|work|purl|rib|continue|add|repeat|make|keep|go)\b(?![^.]*\binstead\b))\b)"
    r"|(?:your|the)\s+(?:person|wearer|recipient|head|foot|feet|hands?|arms?|legs?|calves|child|baby)\s+(?:has|have|is|are|likes?|wants?|prefers?)\b[a-z' -]{1,40})\s*,?"
    rf"|for\s+an?\s+(?:{_MORE}|slouchy|firmer|softer|denser|sturdier|thicker|folded|unfolded|turned-up|double)\s+[a-z]+\s*,?|alternatively\s*,|(?:to\s+(?:make|get|have)|for)\s+(?:it\s+|(?:an?|the|your)\s+)?{_MORE}(?:\s+[a-z]+)?\s*,|(?:the\s+|your\s+)?(?:yarn|wool)\s+running\s+(?:out|short|low)\s*\?)\s+"
)
_TAKEN_UP: Final = (
    r"(?:(?:just|simply|you\s+(?:can|may|could|might)|feel\s+free\s+to)\s+)*(?:add|knit|work|make|place|use|try|do|run|go|graft|sew|seam|weave|wear|line|block|continue|carry|pick\s+up|cast\s+on|change|adjust|repeat|remove|lengthen|shorten|stop|keep\s+(?:going|on|knitting|ribbing)|switch|rip(?:\s+(?:it\s+)?(?:back|out))?|unpick|redo|undo|close\s+(?:it|them)|(?:it|they|this)\s+(?:is|are|can\s+be|may\s+be)\s+(?:closed|sewn|darned|tightened|pulled)|(?:the\s+)?[a-z]+(?:\s+[a-z]+){0,2}\s+(?:may|can|could|might)\s+(?:also\s+)?be\s+[a-z]+(?:ed|n|t|de)|this\s+is\s+the\s+place\s+to|here\s+is\s+the\s+place\s+to)\b"
)
_SAID: Final = regex(
    rf"(?:tip\s*:\s*|note\s*:\s*)?{_WISH}{_TAKEN_UP}(?P<rest>(?:[^.!?:;*]|(?<=\d)\.(?=\d))*)"
    rf"|(?:tip\s*:\s*(?:you\s+can\s+)?|you\s+can\s+|(?=to\s+(?:avoid|prevent|close)\s))(?:to\s+(?:avoid|prevent|close)\s+(?:an?\s+|any\s+|the\s+)?{_HOLE}[a-z ]{{0,30}},\s*)?(?:you\s+can\s+)?pick\s+up\s+(?:an|one|one\s+or\s+two|two|a\s+few|a\s+couple\s+of)\s+extra\s+(?:sts?|stitch(?:es)?)\b[a-z' ]{{0,50}}(?:\s*,)?\s+and\s+(?:(?:decrease|lose|get\s+rid\s+of|work|knit)\s+(?:it|them)(?:\s+(?:away|again|together|off))?|k2tog)(?:\s+(?:in|on)\s+the\s+(?:next|following|first)\s+(?:rnd|round|row)|\s+with\s+(?:its|the|their)\s+neighbou?r(?:ing|s)?(?:\s+(?:sts?|stitch(?:es)?))?)*|(?:[a-z' ]{{3,50}}\s+(?:is|are)\s+(?:lovely|nice|cosy|cozy|warm|fun|pretty|smart)[a-z' ]{{0,30}},\s+)?(?:so\s+)?(?:do\s+)?make\s+(?:it|them|the\s+[a-z]+)\s+{_MORE}\s+if\s+you\s+(?:like|want|wish|prefer|feel\s+like\s+it)"
    rf"|(?:you\s+can\s+)?(?:add|knit|work)\s+(?:a\s+few|some)\s+(?:more|extra)\s+(?:plain\s+)?(?:rows|rounds|rnds)\s+(?:here\s+)?if\s+you\s+(?:like|want|wish|prefer)(?:\s+(?:it|an?)\s+{_MORE}(?:\s+[a-z]+)?)?",
    re.I,
)
_TWO: Final = regex(
    r"\b(?:then|otherwise|or\s+else|before|sizes?|versions?|style|instead|here\s+and|only|unless|else|(?:cast|bind)\s+off|(?<=,\s)(?:and\s+|or\s+)?for\s+(?:an?|the)|skip|go\s+(?:on\s+)?to\s+(?:the\s+)?(?:next|section|part|step|page)|continue\s+(?:with|as|from)|as\s+(?:follows|for|given|before)|follow\w*|row\s+\d|leave\s+out|omit)\b"
    r"|(?:,\s*(?:and\s+)?|\band\s+)(?:knit|work|purl|cast|bind|turn|continue|join|place|slip|repeat|rep|pick|increase|decrease|inc|dec|[kp]\d*)\b(?!\s+it\s+(?:together|tog|away)\b)",
    re.I,
)
"""Words with which the sentence may say that the pattern itself goes one way or the other."""
_BEFORE: Final = regex(r"\s+before\s+(?:(?:beginning\s+|starting\s+|working\s+)?the\s+(?:cuffs?|rib(?:bing)?|hem|toe|heel|crown|bind-off|edging|border|band|collar|decreases)|going\s+on|continuing|you\s+(?:go\s+on|continue))\s*$", re.I)
_NEEDLE_SIZE: Final = regex(r"\b(?:an?|one|half\s+a|two)\s+(?:needle\s+)?sizes?\b", re.I)
_CHOICE: Final = regex(r"(?:tip\s*:\s*|note\s*:\s*)?if\s+(?:you(?:'d|\s+would)?\s+(?:like|want|wish|prefer|fancy)|liked|preferred|desired|wished)\b", re.I)
"""A wish of her own: the page as printed is the other way, and what she does in its place is no order."""
_IN_PLACE: Final = regex(r"\s+instead(?=\s*(?:$|,|and\b))", re.I)
_SEWN: Final = regex(r"(?:,\s*(?:and\s+)?|\s+and\s+)(?:then\s+)?(?:sew|fold|seam|stitch|turn)\s+(?:it|them)\s+(?:down|up|in|under|inside|over|in\s+half|together)(?:\s+(?:at\s+the\s+end|when\s+(?:finishing|done|making\s+up)|later|afterwards))?\s*$|,?\s+and\s+(?:buy|allow\s+for)\s+(?:an?\s+(?:bit|little)\s+)?(?:more|extra)\s+(?:yarn|wool)\s*$", re.I)
"""What is done to the piece off the needles, or bought for it, when she has chosen."""
_UNDONE: Final = regex(r"(?:pick\s+up|make|add)\b[^.]*\bextra\s+(?:sts?|stitch(?:es)?)\b(?![^.]*\b(?:together|(?:decrease|lose|get\s+rid\s+of)\s+(?:it|them)|k2tog)\b)", re.I)
"""A stitch picked up and not lost again: the counts of the pattern are without it."""


def tells_wish(sentence: str) -> bool:
    """Return whether a sentence says only what she may do if she wishes, and the pattern is knitted without it.

    Args:
        sentence: One sentence, made plain, without its full stop and without brackets around it.
    """
    asked = _QUESTION.fullmatch(sentence)
    if asked is not None:
        return tells_wish(f"if you want {asked['wish']}, {asked['answer']}")
    short = _CUT_SHORT.fullmatch(sentence)
    if short is not None:
        answer = re.split(r"(?<=[.!])\s+", short["answer"])
        return len(answer) == 1 and not orders_instead(sentence) and not _OF_ALL.search(short["answer"])
    if _OUT_BY_ONE.fullmatch(sentence):
        return True
    left_out = _LEFT_OUT.fullmatch(sentence)
    if left_out is not None:
        said = [words for words in (left_out["comfort"], left_out["solace"]) if words]
        return all(_COMES_OUT.fullmatch(words) or works_nothing(f"{words}.") for words in said)
    optional = _OPTIONAL.fullmatch(sentence)
    if optional is not None:
        why = re.sub(r"^(?:but|and|though|yet|so)\s+", "", optional["comfort"] or "It helps")
        return works_nothing(f"It is {why}.") or works_nothing(f"{why}.")
    match = _SAID.fullmatch(sentence)
    if match is None or _UNDONE.search(sentence):
        return False
    if match["rest"] is None:
        return True
    wish, rest = sentence[: match.start("rest")], match["rest"]
    if _CHOICE.match(sentence):
        rest = _IN_PLACE.sub(" ", _SEWN.sub(" ", rest))
    if _FOR_A.match(sentence) and not _ADDS.search(rest):
        return False  # "for a folded collar work 12 cm" is one of two ways, each of them whole
    return not _TWO.search(_NEEDLE_SIZE.sub(" ", _BEFORE.sub(" ", rest))) and not re.search(r"\b(?:sizes?|versions?|style)\b", wish, re.I)


def orders_instead(sentence: str) -> bool:
    """Return whether a sentence has something else knitted where she lacks or dislikes a thing: "No buttons? Rib"."""
    short = _CUT_SHORT.fullmatch(sentence)
    return (
        short is not None
        and _IN_ITS_STEAD.match(short["answer"]) is not None
        and not _ADDS.search(short["answer"])
    )
