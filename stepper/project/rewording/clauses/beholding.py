"""Tell what a sentence lets her see, count, expect or leave out, from what it orders; numbers may stand in it. No I/O.

Theory of operation. "You should be able to count 14 slipped stitches down each edge" states what follows from rows that are read
beside it. Such a sentence is taken apart from left to right into phrases of closed kinds (`SIGHTS`): who sees, what is seen, where,
by when; what lifts or shapes a part; how a stitch shows; where in the work she is. It is told if no word is left over and its kinds
make a statement together (`_SHAPES`). What is counted is never the stitches of the needle, which are checked elsewhere.
Source: common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.beginnings import ByLetter
from stepper.project.rewording.told.phrases import Kinds, ToldPhrase, split_phrases
from stepper.regex import regex

_N: Final = r"(?:\d++(?:[\s()\[\]{},:/\u2013-]++\d++)*+[)\]}]*+|an?|the|your|some|several|both|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|a\s+(?:row|line|column|ladder|chain|stack|number|pair|series)\s+of|the\s+(?:row|line|column)\s+of)"
_FINE: Final = r"(?:(?:neat|tidy|nice|little|small|tiny|clear|clean|pretty|lovely|smooth|straight|visible|distinct|perfect|first|new|full|complete|chain-looking|chained|decorative|slanting|diagonal|vertical|horizontal|garter|purl|knit|slipped|lace|cable|eyelet|triangular|equal)\s+)*"
_SEEN: Final = (
    r"(?:ridges?|bumps?|v's|vs|loops|eyelets?|holes?|gaps?|ladders?|sections?|wedges?|segments?|quarters|points?|columns?|lines?|spokes|repeats?|motifs?|chains?|edge|edges|selvedges?|spine|seam|fold\s?line|triangles?|diamonds?|scallops?|spiral|star|petals?|leaves|pleats?|wraps?|double\s+stitches)"
)
_PART: Final = (
    r"(?:necks?|neckline|neckband|collar|back|front|fronts|shoulders?|sleeves?|yoke|body|waist|bust|hips?|heel|toe|toes|foot|instep|sole|flap|gusset|cuffs?|brim|crown|thumbs?|hand|palm|tip|edge|edges|border|hem|piece|work|fabric|hat|sock|mitten|mitt|cowl|shawl|scarf|armholes?|underarms?|corner|corners|point|centre|center|middle|top|bottom|side|sides|join|gaps?|holes?|opening|round|needle|needles|spine|wings?|ankle|curve)"
)
_WHICH: Final = r"(?:the|each|both|either|your|one|this|that|its|all|these)"
_KIND: Final = r"(?:(?:right|wrong|left|front|back|other|outer|inner|upper|lower|top|bottom|cast-on|long|short|rs|ws|side|centre|center|neck|heel)[-\s]+(?:side\s+)?)*"
_LINKS: Final = r"(?:now|then|by\s+now|by\s+this\s+(?:time|point)|at\s+this\s+(?:point|stage)|so\s+far|here|already|again|soon)"
_SO: Final = r"(?:a\s+(?:little|bit|touch)|slightly|nicely|neatly|gently|beautifully|properly|just\s+so|up|down|in|out|together|at\s+the\s+same\s+time)"
_CAN: Final = r"(?:(?:'ll|'ve|\s+will|\s+should|\s+can|\s+may|\s+might|\s+must|\s+ought\s+to)(?:\s+(?:now|then|soon|already|also|just))*)?"

SIGHTS: Final[Kinds] = ByLetter(
    (expression, (kind, regex(expression, 0)))
    for kind, expression in (
        ("link", rf"{_LINKS}\b"),
        (
            "ready",
            rf"(?:you|we)(?:'re|'ll\s+be|\s+are|\s+(?:will|should)\s+be)(?:\s+{_LINKS})?\s+(?:(?:all\s+)?(?:ready|set)\s+for|(?:back\s+)?at\s+the\s+(?:start|beginning|end)\s+of|about\s+to\s+(?:start|begin|work)|done\s+with|finished\s+with|through\s+with)"
            rf"\s+(?:an?\s+|the\s+|your\s+|another\s+)?(?:next\s+|first\s+|new\s+|last\s+)?(?:{_KIND}(?:row|round|rnd)|{_KIND}{_PART}|decreases|increases|shaping|short\s+rows)(?![a-z])",
        ),
        ("see", rf"(?:you|we){_CAN}\s+(?:be\s+able\s+to\s+)?(?:see|count|spot|notice|recogni[sz]e|make\s+out|have\s+made)\b"),
        ("see", rf"(?:(?:you|we){_CAN}\s+(?:have|end\s+up\s+with|got|be\s+left\s+with|are\s+left\s+with|get)|you've\s+(?:now\s+)?got|there(?:'s|\s+is|\s+are|\s+will\s+be|\s+should\s+be)|(?:this|that|it|they|these){_CAN}\s+(?:makes?|gives?|forms?|leaves?|creates?)(?:\s+you)?)\b"),
        ("unworked", rf"{_N}\s+(?:sts|stitches)\s+(?:not\s+(?:yet\s+)?worked|unworked|still\s+(?:unworked|waiting|to\s+(?:go|come)))(?:\s+(?:at|on)\s+(?:each|either|both)\s+(?:side|end)s?)?"),
        ("seen", rf"(?:{_N}\s+)+{_FINE}(?:{_SEEN}(?:\s+of\s+{_FINE}{_SEEN})?|(?<=slipped\s)(?:sts|stitches)|(?<=chained\s)(?:sts|stitches))\b"),
        ("place", rf"(?:along|down|up|on|at|in|across|round|around|over|near|next\s+to|by|of|to|from|between|all\s+along|all\s+round|towards?)\s+(?:{_WHICH}\s+)?{_KIND}{_PART}\b"),
        ("place", r"(?:on|from)\s+the\s+(?:rs|ws|right|wrong)(?:\s+side)?(?:\s+of\s+(?:the\s+)?(?:work|fabric|piece))?\b"),
        # --- what shapes a part ---
        (
            "shapes",
            rf"(?:these|this|they|that|the)(?:\s+(?:short\s+rows?|(?:extra|few)\s+rows?|decreases|increases|shaping|rows?|rounds?|slipped\s+(?:sts|stitches)))?(?:\s+(?:will|should|help\s+to|helps\s+to|help|helps|also))*\s+"
            rf"(?:lifts?|raises?|drops?|lowers?|deepens?|curves?|rounds|tilts?|tid(?:y|ies)|neatens?|hides?|reinforces?|strengthens?|brings?\s+up|hugs?|cups?|supports?|flatters?|pulls?\s+in|draws?\s+in)"
            rf"\s+(?:up\s+)?{_WHICH}\s+{_KIND}{_PART}\b",
        ),
        ("so", rf"{_SO}\b"),
        # --- how a stitch shows ---
        (
            "shows",
            rf"(?:the|this|that|each|your)\s+(?:(?:marked|middle|centre|center|slipped|last|first|edge|remaining|twisted|raised)\s+)*(?:st|stitch|sts|stitches|column|ridge|line|edge)\s+(?:will\s+|should\s+)?(?:comes?\s+out|ends?\s+up|shows?(?:\s+up)?|appears?|stands?\s+out|reads?|looks?)\s+(?:as|like)\s+(?:an?\s+)?{_FINE}(?:st|stitch|sts|stitches|column|line|ridge|rib|chain|braid)\b",
        ),
        # --- a way of doing it, judged ---
        (
            "judged",
            r"(?:an?\s+|the\s+|any\s+|your\s+)?(?:(?:plain|simple|ordinary|usual|stretchy|old|german|twisted|tubular|knitted|cabled?|provisional|backwards?|crochet|sewn|elastic|favou?rite|good)[-\s]+)*(?:long-?tail|cast-?\s?on|bind-?\s?off|cast-?\s?off|loop|magic\s+loop|dpns|double\s+points|kitchener(?:\s+stitch)?|mattress\s+stitch|whip\s?stitch|backstitch|russian\s+join|spit\s+splice|long-tail\s+method|method)(?:\s+(?:cast-?\s?on|bind-?\s?off|method))?(?:\s+over\s+two\s+needles|\s+on\s+a\s+larger\s+needle)?"
            r"\s+(?:is|are|works|work|will\s+do|does|gives|would\s+be)(?:\s+(?:(?:absolutely|perfectly|quite|just|also|really|a|an|very|well|too|as|best|fine|lovely|nice|good|ideal|great|perfect|enough|stretchy|here|neat|pretty|my|favou?rite|tidy|edge|result|nicely|beautifully|choice|for\s+this|for\s+socks|for\s+me)(?![a-z-])))*",
        ),
        # --- what is done, and how it goes ---
        ("done", rf"(?:that's|this\s+is|that\s+is|there's|there\s+goes)\s+(?:the|your|one|all\s+the)\s+(?:whole\s+)?{_PART}\s+(?:done|finished|complete|over(?:\s+with)?)"),
        ("done", r"(?:now\s+)?(?:the|here\s+comes\s+the)\s+(?:fun|best|easy|good|boring|tricky|hard|clever|magic|exciting)\s+(?:part|bit)(?:\s+(?:starts|begins|is\s+(?:over|done|next)))?"),
        ("done", r"(?:yes\s*,?\s*)?(?:it|they|that|this|you|there)\s+(?:is|are|does|do|will)(?:\s+(?:too|indeed|really))?(?=\s*[.!]|\s*$)"),
        ("done", r"(?:from\s+here\s+(?:on\s+)?,?\s*)?(?:the|these|your)\s+(?:rows|rounds|rnds|rest|body|foot|leg|sleeve|crown)\s+(?:go|goes|fly|flies|get|gets|grow|grows)\s+(?:by\s+|more\s+and\s+more\s+)?(?:very\s+|really\s+|much\s+|quite\s+)*(?:quick(?:ly|er)?|fast(?:er)?|easy|easier|by)(?:\s+and\s+(?:quick(?:ly|er)|fast(?:er)))?"),
        ("done", r"(?:you|they|it|that\s+one)\s+(?:can|may|will)\s+(?:have\s+a\s+(?:rest|break|nap)|wait\s+(?:patiently|its\s+turn|their\s+turn))(?:\s+(?:now|for\s+(?:now|a\s+while)))?"),
        (
            "leans",
            r"(?:the|these|your|both|left-leaning|right-leaning)\s+(?:two\s+)?(?:decreases|increases)\s+(?:lean|slant|tilt|mirror|face|frame|point)\s+(?:towards?\s+|away\s+from\s+)?(?:each\s+other|the\s+(?:centre|center|middle|spine|edge|marker|left|right)|(?:left|right)(?:wards?)?)",
        ),
        # --- what may be left out ---
        (
            "free",
            r"(?:you|we)\s+(?:can|may|could|might)\s+(?:just\s+|simply\s+|safely\s+|happily\s+|of\s+course\s+)*(?:skip|omit|leave\s+out|do\s+without|miss\s+out|leave)\s+(?:them|these|it|this|the\s+(?:short\s+rows|bobbles|beads|picots?|embroidery|pocket|pockets|buttons?|buttonholes?|ties|eyelets|fringe|tassels?|pompom))(?:\s+(?:out|off|away))?"
            r"(?:\s+(?:altogether|completely|entirely|here))?(?:\s*,?\s+if\s+you\s+(?:like|want|prefer|wish|don't\s+mind|don't\s+like|dislike|have)\b[a-z' ]{0,40})?",
        ),
    )
)
"""The kinds of phrases of such sentences."""
_SHAPES: Final = (
    (("see",), ("seen", "unworked"), ("place", "link", "so")),
    (("ready",), (), ("place", "link")),
    (("shapes",), (), ("place", "link", "so")),
    (("shows",), (), ("place", "link")),
    (("judged", "done", "leans", "free"), (), ("link",)),
)
"""Which kinds make a statement: what it begins with, what has to stand in it, what may."""
_LONGEST: Final = 200


def is_beheld(sentence: str) -> bool:
    """Return whether a sentence only says what she sees, expects or may leave out.

    Args:
        sentence: One sentence, made plain, without its full stop.
    """
    words = " ".join(sentence.lower().split()).strip(" .!\"'")
    if not words or len(words) > _LONGEST:
        return False
    found = split_phrases(words, 0, SIGHTS)
    return found is not None and found[1] == len(words) and _states(found[0])


def _states(phrases: tuple[ToldPhrase, ...]) -> bool:
    """Return whether the kinds of phrases make a statement together."""
    kinds = [each.kind for each in phrases]
    heads = [kind for kind in kinds if kind != "link"]
    for heading, needed, besides in _SHAPES:
        if not heads or heads[0] not in heading:
            continue
        rest = heads[1:]
        if needed and not any(kind in needed for kind in rest):
            continue
        return all(kind in (*needed, *besides) for kind in rest)
    return False
