"""Split off what only tells behind an order: in what manner, with what care, to what end, a word of comfort. No I/O.

Theory of operation. "Bind off all sts, taking care not to pull too tight" is an order and a tail that works no stitch. A tail is
of one of a few kinds (`TAILS`), whose words are all told, a clause whose verb only says how, when or whither (`beside`), or one
behind "which", "so that", "because" that works nothing (`telling`). It stands behind its order, or leads up to it. It is taken off before the order is looked at, so that no order is left unread for it, and said with it. What says
how often, how far, with which yarn or in which rows is no tail. Source: the wording of patterns in print; common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.beginnings import ByLetter
from stepper.project.rewording.clauses import word_classes as of
from stepper.project.rewording.clauses.beside import kind_beside
from stepper.project.rewording.clauses.clause import words_of
from stepper.project.rewording.clauses.telling import works_nothing
from stepper.project.rewording.reworded import Reworded, cut_out
from stepper.project.rewording.synonym import LONG
from stepper.regex import regex

_HOW_MUCH: Final = r"(?:(?:very|quite|rather|fairly|really|nice\s+and|not\s+too|a\s+(?:bit|little)|just|too|reasonably|relatively)\s+)"
_TAUT: Final = r"(?:firm|tight|loose|slack|relaxed|elastic|stretchy|snug|even|neat|steady|gentle|soft|flexible)"
_TAUTLY: Final = r"(?:loosely|firmly|tightly|snugly|gently|neatly|carefully|elastically|steadily)"
_THINGS: Final = (
    r"(?:(?:the|your|any|all|these|those|an?|working)\s+)*"
    r"(?:tension|floats?|yarns?|strands?|(?:yarn\s+)?tails?|work|fabric|knitting|edges?|cast-?\s?on|bind-?\s?off|it|them|patt(?:ern)?|texture|ribbing|rib|cables?|lace|loops?|sts|stitches|wool)"
)
_HARM: Final = r"(?:twist|pull|stretch|split|drop|flatten|tighten|pucker|distort|snag|crush|tangle|lose|scorch|overstretch|draw|tug)"
_PLACES: Final = (
    r"(?:throughout|as\s+you\s+(?:go|work|knit)|(?:at|across|along|in)\s+the\s+(?:back|colou?r\s+changes?|changes?(?:\s+of\s+colou?r)?|edge|join|wrong\s+side)|behind)"
)
_SO: Final = rf"{_HOW_MUCH}?{_TAUT}(?:\s+(?:and|but)\s+(?:not\s+(?:too\s+)?)?{_TAUT})?"
_NEED: Final = r"(?:if\s+(?:need\s+be|needed|necessary|you\s+(?:like|wish|prefer)|you(?:\s+tend\s+to|'re\s+inclined\s+to)?\s+(?:bind|cast)\s+off\s+tight(?:ly)?|your\s+(?:cast|bind)-?(?:off|on)\s+is\s+tight))"
_SIZES: Final = r"(?:(?:a|one|1|two|2|three|3)\s+sizes?\s+(?:larger|bigger|smaller|thicker|thinner)|(?:larger|bigger)\s+by\s+(?:one|two|1|2)\s+sizes?)"
_N: Final = r"\d+(?:\s*[(\[]\s*[\d\s,;:]+[)\]])?"
_NAMES: Final = "|".join(sorted(of.PARTS - frozenset(["work", "start", "end", "beginning"])))
TAILS: Final = ByLetter(
    (expression, (kind, regex(rf"(?:{expression})(?![\w'-])", re.IGNORECASE)))
    for kind, expression in (
        (
            "care",
            rf"(?:(?:taking|with)\s+(?:great\s+|good\s+|special\s+)?care|being\s+(?:very\s+)?careful|careful|carefully|making\s+sure|trying|but\s+do)\s+(?:not\s+to\s+|you\s+do(?:n't|\s+not)\s+|not\s+)?"
            rf"(?<=t\s|o\s){_HARM}\s+{_THINGS}?(?:\s*(?:too\s+|so\s+)?(?:tight(?:ly)?|hard|much|out\s+of\s+shape|flat|taut))?",
        ),
        ("care", r"(?:taking\s+care|being\s+careful|careful)\s+(?:with|of|about)\s+the\s+tension"),
        (
            "tension",
            rf"(?:keeping|maintaining|holding|leaving|with|minding|watching)\s+(?:(?:an?|the|your)\s+)?(?:{_SO}\s+)?(?:tension|{_THINGS}(?=\s+{_HOW_MUCH}?{_TAUT}\b))(?:\s+{_SO})?(?:\s+{_PLACES})?",
        ),
        (
            "tension",
            rf"(?:pulling|tugging|snugging|drawing)\s+(?:(?:up|on)\s+)?{_THINGS}(?:\s+{_HOW_MUCH}?(?:tight(?:ly)?|firmly|snug(?:ly)?|taut|gently|a\s+little))?(?:\s+(?:at\s+the\s+(?:gap|join|corner|turn)s?|to\s+(?:close|avoid|prevent)\s+(?:the\s+|any\s+|an?\s+)?(?:gaps?|holes?|ladders?)))?",
        ),
        ("manner", rf"(?:{_SO}|{_HOW_MUCH}?{_TAUTLY}\s+(?:and|but)\s+(?:not\s+(?:too\s+)?)?(?:{_TAUTLY}|sloppily|slackly)|(?:but\s+)?not\s+too\s+(?:tight|loose)(?:ly)?|as\s+(?:loosely|neatly|invisibly)\s+as\s+(?:you\s+can|possible))"),
        ("tool", rf"(?:using|with|on)\s+an?\s+needle\s+{_SIZES}(?:\s+{_NEED})?"),
        (
            "named",
            rf"(?:(?:which|that|these|this)\s+(?:is|are|forms?|makes?|marks?|becomes?|will\s+be|gives?)|(?:thus\s+)?(?:being|forming|marking))\s+(?:the|an?|your|one)\s+(?:(?:neat|nice|pretty|deep|whole|full|fold|turning|purl|garter|left|right|front|back|first|second|cast-on|total|centre|center|little|picot|rolled)\s+)*(?:lines?|ridges?|eyelets|scallops|picots|points|height|width|depth|length|hem|facing|{_NAMES})(?:\s+(?:of|for)\s+(?:the|your|one|an?)\s+(?:{_NAMES}|ribbon|ties?|cord|drawstring|elastic))?(?:\s+on\s+the\s+(?:right\s+side|rs)(?:\s+of\s+(?:the\s+)?(?:work|fabric))?)?",
        ),
        (
            "named",
            rf"(?:these|this|those|the(?=\s+(?:first|last)?\s*(?:{_N}\s+)?(?:sts|stitches)))\s+(?:first\s+|last\s+)?(?:{_N}\s+)?(?:(?:sts|stitches)\s+)?(?:being|forming|to\s+be|for|make\s+up|form|are)\s+(?:for\s+)?(?:the|an?|your|one)\s+(?:(?:left|right|front|back|first|second|centre|center|upper|lower|inner|outer|new|thumb|underarm)\s+)*(?:{_NAMES})(?:\s+of\s+(?:the|your|one)\s+(?:{_NAMES}))?",
        ),
        ("named", rf"(?:all\s+)?(?:the\s+)?(?:(?:{_NAMES}|raglan|side)\s+)?(?:shapings?|increases|decreases)\s+(?:being|now|having\s+been)(?:\s+now)?\s+(?:complete|completed|finished|done)"),
        ("comfort", r"and\s+(?:then\s+|now\s+)?(?:you(?:'re|\s+are)\s+(?:all\s+|now\s+)?(?:done|finished|there)|(?:it|that)(?:'s|\s+is)\s+(?:done|finished))"),
        ("ahead", r"(?:remembering|bearing\s+in\s+mind|knowing|allowing\s+for\s+the\s+fact)\s+that\s+the\s+(?:rib(?:bing)?|hem|cuff|band|border|edging|crown|neckband|collar|brim|toe)\s+(?:will\s+)?(?:adds?|takes?|gives?)\s+(?:another\s+|about\s+|a\s+further\s+)*[\d\u00bd\u00bc\u00be][\d\s./()\u00bd\u00bc\u00be,]*(?:cm|mm|ins?|inch(?:es)?|\")?"),
        ("comfort", r"(?:and\s+)?(?:that|this)(?:\s+is|'s)\s+(?:it|that|all|the\s+(?:brim|cuff|hem|heel|toe|crown|collar|thumb|body|sleeve|border|edging)(?:\s+(?:done|finished))?|done)"),
        ("comfort", r"and\s+(?:admire|enjoy|breathe|relax|celebrate|smile|marvel)(?:\s+(?:it|your\s+(?:work|handiwork)))?"),
        ("comfort", r"(?:exactly\s+)?(?:as|which\s+is\s+what)\s+(?:I|we)\s+(?:always\s+|usually\s+|mostly\s+)?(?:do|did|like)(?:\s+(?:it|myself|best))?"),
        ("comfort", r"(?:this|here)\s+is\s+(?:your|the)\s+(?:moment|chance|time|place|point|spot)\s+to\s+(?:lengthen|shorten|adjust|try\s+(?:it\s+)?on)(?:\s+(?:it|the\s+(?:body|sleeve|leg|foot|hand)))?"),
        ("comfort", r"as\s+(?:usual|ever)|I\s+promise|of\s+course|no\s+cheating|trust\s+me|or\s+so|if\s+you\s+(?:please|will)"),
    )
)
"""The kinds of tails and how each looks; each tells every word of it."""
_COUNTED: Final = regex(
    rf"\b(?:until|till)\b[^.!?;:]*?(?P<cut>\s*(?P<open>[(\[])?(?(open)|(?:,|;|-+))\s*(?:which\s+(?:means|is|makes)|(?:that|this)(?:'s|\s+is|\s+makes)|i\.e\.|making|or)\s*,?\s*{_N}\s+(?:(?:inc|dec)s|(?:inc|dec)(?:reas(?:e|ing))?\s+(?:rounds|rnds|rows)|(?:increases|decreases))"
    rf"(?:\s+(?:in\s+all|altogether|in\s+total|counting\s+the\s+(?:set-?\s?up|first)(?:\s+(?:one|round|rnd|row))?))?\s*(?(open)[)\]]))(?=\s*[.!;,]|\s*$)",
    re.IGNORECASE,
)
"""How often the row was worked by the count that ends it: "until you have 56 sts, which means 8 inc rounds"."""
_BESIDES: Final = regex(r"\s*;\s+(?P<said>[^.!?;:()*\d]{8,90})(?=\s*(?:[.!?]|$))", re.IGNORECASE)
"""A statement behind a semicolon."""
_STEP: Final = regex(r"\s*(?:,|;|\s-+|\()\s*|\s+(?=(?:taking\s+care|being\s+careful|using\s+a\s+needle|firm\b|keeping\s+an?\b))", re.IGNORECASE)
"""What stands before a tail of a kind."""
_TO_LENGTH: Final = r"\b(?:until|till|for)\b(?:[^.;*]|\.(?=\d|\s*[a-z,(])){0,60}?\d(?:[^.;*]|\.(?=\d|\s*[a-z,(])){0,90}?"
"""Rows that are worked to a length, up to what stands behind it; no farther
than a page does, since two stretches of any length take ever longer."""
_WHOLE_ROUND: Final = regex(
    rf"{_TO_LENGTH}(?P<cut>\s*,?\s*(?:and\s+)?(?:end|finish)(?:ing)?\s+(?:(?:with|after|on)\s+an?\s+(?:complete|completed|full|whole|entire)\s+(?:rnd|round|rd\b)|at\s+the\s+end\s+of\s+an?\s+(?:(?:complete|full|whole)\s+)?(?:rnd|round)))(?=\s*[.;,!]|\s*$)",
    re.IGNORECASE,
)
"""That rounds to a length are whole ones, as they are."""
_ALLOWED: Final = regex(
    rf"{_TO_LENGTH}(?P<cut>\s*,\s*(?P<said>allowing\s+(?:about\s+|approx\.?\s+|another\s+)?{LONG}s?\.?\s+for\s+(?:the\s+)?(?:{_NAMES})(?:\s+shaping)?))(?=\s*[.;,!]|\s*$)",
    re.IGNORECASE,
)
"""What is still to come on top of a length."""
_ACROSS: Final = regex(
    rf"\bchart\b[^.;:]*?(?P<cut>\s*,?\s+and\s+(?:then\s+)?rep(?:eat(?:ing)?)?\.?\s+(?P<what>(?:the|each|these)\s+{_N}[-\s](?:sts?|stitch(?:es)?)(?:\s+(?:rep(?:eat)?|patt(?:ern)?))?\s+{_N}\s+times\s+(?:a?round|across)))(?=\s*[.;]|\s*$)",
    re.IGNORECASE,
)
"""How often a chart stands across the row, joined to what is told of the chart."""
_STATED: Final = regex(
    r"(?:\s*,\s*|\s+-+\s+|\s+)(?:(?P<which>which)|(?P<because>so\s+that|because|since|although|though)|(?<=,\s)for(?=\s+(?:an?|the|it|this|that|they)\s)|(?P<joint>as|so|and|but|otherwise)(?=\s+(?:it|it's|they|they're|that|that's|this|there|there's|the|these|your|you|you'll|nobody|everything)\b))\s+(?P<clause>[^.!?:;()*]{6,160}?)(?=\s*(?:[.!?;)]|$))",
    re.IGNORECASE,
)
"""A clause behind an order, joined to it by a word of reason or purpose."""
_PURPOSE: Final = of.SHOWING - of.GENERAL | frozenset(["match", "meet", "align", "lie", "sit", "lies", "sits", "matches", "meets", "overlap"])
"""Verbs behind "so that" by which something turns out so."""
_ORDERED: Final = of.CRAFT | of.FABRIC | of.LIMITS - frozenset(["last", "other", "both"]) | of.NUMBERS | of.COLOURS | of.STITCH_THINGS | of.YOU | of.SELF
"""Words with which a purpose may say what is worked, and where."""
_REFERS: Final = regex(r"\b(?:as|than|like)\s+(?:before|for|on|in|the)\b|\b(?:rs|ws|right|wrong|long|short|wide|same|enough|until|level|even|bor|beg\w*|start\w*)\b|\bend(?:s|ing)?\b|\byou\b[^.]*\b(?:work|knit|purl|repeat|go)\b", re.IGNORECASE)
"""Words of a reason that may say where or how the order goes on."""
_CLOSING: Final = regex(r"(?:\b(?:bind|cast)\s+(?:off|on)\b|\b[bc]o\b)[^.!?:;]*$", re.IGNORECASE)
"""An order in whose sentence a tail may stand without a sign before it."""
_BARE_STEP: Final = regex(r"\s+(?=(?:leaving\s+(?:an?|enough)\b|(?:and|but)\s+leave\s+(?:yourself\s+)?(?:an?|enough)\b|with\s+an?\s+(?:(?:good|very|nice)\s+)*(?:long|generous|short)\s+(?:tail|end)\b|(?:with|without)\s+(?:an?\s+)?(?:easy|loose|light|firm|pulling|stretching)\b|for\s+an?\s+(?:neat|crisp|tid|firm|clean|smooth|stretch|elastic|nice|decorative|sharp|pretty)|so\s+as\s+not\s+to\b|(?:in\s+order\s+)?to\s+(?:avoid|prevent)\b|taking\s+(?:great\s+|good\s+)?care\b|making\s+sure\b|when\s+you(?:'re|\s+are)\s+(?:quite\s+)?(?:sure|certain)\b))", re.IGNORECASE)
"""What stands before a clause that needs no sign."""
_STOPS: Final = regex(r"[,;!)\]]|(?<!\bapprox)\.(?!\d)|\s+-+\s|\s*[(\[=](?=\d)|$")
"""Where a clause beside an order may end."""
_ABBREVIATED: Final = regex(r"\.(?=\s*[,;)]|\s+[a-z])")
"""The full stop of an abbreviation with which a clause ends: "about 12 ins., and"."""
_AND: Final = regex(r"^(?:and|but)\s+(?=leav)", re.IGNORECASE)
_CONDITION: Final = regex(r"(?:^|[.:;!]\s)\W*(?:when(?:ever)?|once|if|after|as|before|while|until|where)\b[^,]*$", re.IGNORECASE)
"""A sentence of which so far only its condition has been said."""
_TO_ONE: Final = regex(r"\b(?:until|till|for)\b[^;*]*\d[^;*]*$", re.IGNORECASE)
"""A length, behind which its own is adjusted."""
_MOST_STOPS: Final = 6
_FRONTED: Final = regex(r"(?:(?<=^)|(?<=[.;:]\s))\s*(?P<clause>[a-z][^.;:()*]{5,80}?)\s*,\s+(?=[a-z])", re.IGNORECASE)
"""A clause that leads up to an order."""
_LEADS_UP: Final = frozenset(["care", "tension", "yarns", "line", "tail"])
"""The kinds of those that do."""
_JOINS_AS_SHOWN: Final = regex(
    r"(?:(?<=^)|(?<=[.;:]\s))\s*(?P<clause>(?:joining|introducing|changing|breaking|cutting)(?:\s+(?:in|off))?(?:\s+and\s+(?:breaking|cutting|joining)(?:\s+(?:in|off))?)?\s+"
    r"(?:(?:the|new|all|other|contrasting|and)\s+|(?-i:MC|CC\d?|[A-H])\b\s*,?\s*)*(?:(?:colou?rs?|yarns?|shades?)\s+)?(?:as|when|where|wherever)\s+(?:required|needed|necessary|shown|indicated))\s*,\s+(?=[^.;]*\bchart\b)",
    re.IGNORECASE,
)
"""Yarns that are joined where a chart has them; where no chart says where, it is not told."""
_ENDS: Final = regex(r"\s*(?:[.!;)]|$|(?:[-=(\[]+\s*)(?=\d))")
_MIDDLE: Final = regex(r"\s*,")
_CLOSES: Final = regex(r"\s*\)")
_ORDERS: Final = regex(r"[a-z]{2}|\b[kp]\s?\d", re.IGNORECASE)


def take_tails_off(line: Reworded) -> Reworded:
    """Take the tails off the orders of a line, to be said with it.

    Returns:
        The line without them; the same if it has none.
    """
    cuts = _cuts_in(line.text)
    if not cuts:
        return line
    return cut_out(line, [(start, end, _AND.sub("", said.strip(" .,;-()[]"))) for start, end, said in cuts])


def _cuts_in(text: str) -> list[tuple[int, int, str]]:
    """Return the tails of a text: where each stands with what joins it, and its words."""
    found: list[tuple[int, int, str]] = []
    for match in _STATED.finditer(text):
        clause = match["clause"]
        if not _ORDERS.search(text[: match.start()]) or text[: match.start()].rstrip()[-1:] in ".!?:":
            continue
        told = f"this {clause}" if match["which"] else clause
        if _REFERS.search(clause) or (match["joint"] and match.group().lstrip()[:1] not in ",-"):
            continue
        if works_nothing(f"{told}.") or (match["because"] == "so that" and _is_purpose(clause)):
            found.append((match.start(), match.end(), match.group().strip(" ,-")))
    found += [(*match.span("cut"), match["cut"]) for match in _COUNTED.finditer(text)]
    found += [(*match.span("cut"), f"repeating {match['what']}") for match in _ACROSS.finditer(text)]
    found += [(*match.span("cut"), match["cut"]) for match in (*_WHOLE_ROUND.finditer(text), *_ALLOWED.finditer(text))]
    for match in _BESIDES.finditer(text):
        if _ORDERS.search(text[: match.start()]) and works_nothing(f"{match['said']}."):
            found.append((match.start(), match.end(), match["said"]))
    found += [(*match.span(), match["clause"]) for match in _JOINS_AS_SHOWN.finditer(text)]
    found += [(*match.span(), match["clause"]) for match in _FRONTED.finditer(text) if _leads_up(match["clause"])]
    stated = {start for start, _, _ in found}
    bare = [(match, True) for match in _BARE_STEP.finditer(text)]
    for step, is_bare in [*((match, False) for match in _STEP.finditer(text)), *bare]:
        if not _ORDERS.search(text[: step.start()]) or text[: step.start()].rstrip()[-1:] in ".!?:":
            continue
        if not step.group().strip() and not is_bare and not _CLOSING.search(text[: step.start()]):
            continue
        end = _end_of_tail(text, step.end(), stated, bracket=step.group().strip() == "(")
        if end is not None:
            found.append((step.start(), end, text[step.end() : end]))
    found.sort()
    return [cut for at, cut in enumerate(found) if at == 0 or cut[0] >= found[at - 1][1]]


def _leads_up(clause: str) -> bool:
    """Return whether a clause in front of an order says with what care it is worked."""
    if kind_beside(clause) in _LEADS_UP:
        return True
    kinds = (kind for kind, form in TAILS.at(clause, 0) if form.fullmatch(clause))
    return next(kinds, "") in _LEADS_UP


def _is_purpose(clause: str) -> bool:
    """Return whether a clause behind "so that" says how something turns out, and nothing that is worked."""
    words = set(words_of(clause))
    return bool(words & _PURPOSE) and not words & _ORDERED and not any(word[:1].isdigit() for word in words)


def _end_of_tail(text: str, at: int, stated: set[int], *, bracket: bool) -> int | None:
    """Return where a tail of a kind that begins at a place ends; None if there is none."""
    for _, expression in TAILS.at(text, at):
        match = expression.match(text, at)
        if match is None:
            continue
        closed = _CLOSES.match(text, match.end()) if bracket else None
        if closed is not None:
            return closed.end()
        end = match.end()
        if not bracket and (end in stated or _ENDS.match(text, end) or _MIDDLE.match(text, end)):
            return end
    return _end_beside(text, at, bracket=bracket)


def _end_beside(text: str, at: int, *, bracket: bool) -> int | None:
    """Return where a clause that says only how, when or whither ends, its bracket closed; None if none begins there."""
    if _CONDITION.search(text[:at].rstrip(" ,;(-")):
        return None  # the order that hangs on it follows
    for number, stop in enumerate(_STOPS.finditer(text, at)):
        if number == _MOST_STOPS or text[at : stop.start()].count(".") > 2:
            return None
        kind = kind_beside(text[at : stop.start()])
        if not kind or (kind == "sizes" and not bracket) or (kind == "length" and not _TO_ONE.search(text[:at])):
            continue
        if bracket:
            return stop.end() if stop.group() == ")" else None
        return stop.end() if _ABBREVIATED.match(text, stop.start()) else stop.start()
    return None
