"""Find the rows of a printed pattern that head a part, front matter or a chart. No I/O.

It is long because pages have many words for a heading, and all of them have to be looked at together.
"""

from __future__ import annotations

import re

from stepper.project.page.orders import casts_on, holds_instruction
from stepper.project.pairs import WHOLES
from stepper.project.rewording.asides import label_instructs
from stepper.project.sizes import names_people
from stepper.records import dataclass
from stepper.regex import regex

_PART = regex(
    r"\b(?:body|sleeves?|yoke|neck(?:band|line)?|collar|cuffs?|brim|crown|hat|bands?|thumbs?|hands?|palm"
    r"|fingers?|arms?|ears?|head|tail|wings?|muzzle|beak|paws?|flippers?|soles?|mittens|mitts|socks|helmet"
    r"|muffler|wristlets?|bonnet|flower|petals?|lid|"
    r"heel(?:\s+flap)?|foot|feet|toes?|legs?|gusset|back|fronts?|hem|edg(?:es?|ings?)|borders?|rib(?:bing)?|"
    r"button\s*bands?|buttonhole\s+band|hood|pockets?|shoulders?|raglan|cowl|shawl|scarf|mitten|mitt|sock|"
    r"skirt|waist|bodice|armholes?|underarms?|tip|straps?|welts?|centre|center|finishing|assembly|making\s+up|"
    r"(?:to\s+)?make\s+up|to\s+(?:make|finish)|section|panel|flap|plackets?|trim|ruffle|directions"
    r"|instructions|pattern|set-?up|cast-?on|gussets|steek|motifs?|frills?|(?:arm|wrist)bands?|(?:working\s+)?method|to\s+complete|sewing\s+up|(?:i-?cord|picot|stretchy|elastic)\s+bind[\s-]?off|bind-?off|tab|lace|main)\b",
    re.I,
)
"""Words that name a part of a garment, or the beginning of its instructions."""

_OF_PARTS = regex(
    r"(?:left|right|front|back|first|second|third|fourth|little|index|ring|middle|upper|lower|top|bottom|side|main|both|and|button|buttonhole|of|the|to"
    r"|make|making|up|inner|outer)",
    re.I,
)
"""Words that go with the name of a part."""
_WORN = regex(
    r"(?:gloves?|caps?|tam|beret|bootees|booties|balaclava|cravat|romper|tunic|jacket|ties|belt|dress)", re.I
)
"""What is worn, and may be named in the title too: a heading only where all words beside it are of parts."""
_FRONT = regex(
    r"^(?:(?:pattern|designer'?s?|general|important)\s+notes?|(?:finished|knitted"
    r"|actual)\s+(?:measurements?|sizes?|dimensions?)|"
    r"skill\s+level|level|special\s+(?:stitches|techniques|abbreviations?)|before\s+you\s+(?:begin"
    r"|start)|dimensions|"
    r"supplies(?:\s+needed)?|requirements|what\s+you(?:'ll|\s+will)?\s+need|haberdashery|glossary"
    r"|legend|symbols?|inspiration|"
    r"pattern\s+stitch(?:es)?|stitches\s+used|shoe\s+sizes?|"
    r"(?:[a-z]+\s+(?:and|&)\s+)?abbreviations?(?:\s+used|\s+(?:and|&)\s+(?:terms|techniques|stitches|symbols|definitions|glossary))?|materials?(?:\s+needed)?|measurements?"
    r"|yarns?|needles?|notions|notes?|sizes?|"
    r"sizing|gauge|tension|techniques?|equipment|tools|you(?:['’]ll|\s+will)\s+need"
    r"|about(?:\s+the\s+pattern)?|"
    r"construction|stitch\s+guide|stitch\s+patterns?|stitch\s+(?:key|explanations?|definitions?|abbreviations?|glossary)"
    r"|(?:explanations?|key|glossary|list)\s+(?:of|to|for)\s+(?:the\s+)?(?:stitches|abbreviations|terms|symbols)|key|charts?|chart\s+key|schematic|copyright|difficulty|"
    r"ease|colou?rs?|shades?|hints?|introduction|description|to\s+fit)\b",
    re.I,
)
"""Words that head text that is not knitted: materials, gauge, abbreviations."""

_BARE = regex(
    r"\W*(?:(?:with|using)\s[^,]{1,30},\s*)?(?:work|cont(?:inue)?|rep(?:eat)?)\s+"
    r"(?:even|straight|as\b|until|for|(?:\d+|one|two|three|four|five|six|eight|ten)\s+(?:more\s+)?(?:rows?|rnds?|rounds?|cm|in)\b|\d)",
    re.I,
)
"""A row that says only how long something is worked."""
_COMMENTS = regex(
    r"(?:(?:leave|post|add)\s+(?:a|your)\s+)?(?:\d{1,4}\s+)?(?:(?:readers?'?s?'?|your|the)\s+)?"
    r"(?:comments?|responses?|replies|reactions|thoughts\s+on\s.{1,60})(?:\s*\(\d{1,4}\))?"
    r"|what\s+(?:our|the|my|other)\s+(?:readers|knitters)\s+(?:say|said|wrote|think|thought)(?:\s+about\s.{1,40})?",
    re.I,
)
"""What heads the comments of readers below a page: "3 comments", "What our readers say"."""
_TOP = regex(r"(?:the\s+)?top", re.I)
"""The last part of a hat or mitten, which is no word of a part beside others: "top down"."""

_ENDING = regex(
    r"finish(?:ing)?(?:\s+(?:off|up|touches|details|instructions))?|(?:sewing|seaming)\s+(?:it\s+|them\s+)?(?:all\s+)?(?:up|together)|putting\s+(?:it\s+|them\s+|everything\s+)?(?:all\s+)?together"
    r"|to\s+(?:complete|assemble)|(?:wet[-\s]|steam\s+)?blocking(?:\s+and\s+(?:finishing|care))?|(?:blocking|washing|finishing)\s+(?:and|&)\s+(?:care|blocking|seaming|drying|making\s+up)|after-?\s?care|care(?:\s+(?:instructions|of\s+your\s+[a-z]+))?",
    re.I,
)
"""What heads the end of a page, where the pieces are made up: "Finishing touches", "Putting it together"."""

_CHART = regex(r"^chart\s+([A-Za-z0-9][\w-]*)\b(?!\s*,)(?P<rest>[^.]*)$", re.I)
_CLUTTER = regex(
    r"^(?:(?:page|p\.)\s*\d+(?:\s*(?:of|/)\s*\d+)?|\d{1,3}|\d+\s*/\s*\d+|-\s*\d+\s*-|https?://\S+|www\.\S+"
    r"|(?:tech(?:nical(?:ly)?)?[\s-]+edit\w*|test[\s-]+knit\w*|photograph\w*|photos?|illustrations?|layout)\s*(?:\bby\b|:).*"
    r"|thank(?:s|\s+you)(?:\s+so\s+much|\s+very\s+much)?\s+for\s+(?:supporting|buying|purchasing|choosing|knitting|reading|testing|your)\b[^:]*"
    r"|(?:[^.;:*\d]{0,70}\W)?page\s+(?:\d{1,2}|one|two|three|four|five|six)\s+of\s+(?:\d{1,2}|one|two|three|four|five|six)(?:\W[^.;:*\d]{0,70})?"
    r"|(?:leaflet|design|pattern|booklet)\s+(?:no\.?|number|nr\.?|№|#)\s?\d{1,5}(?:[-/.]\d{1,4})?[a-z]?|no\.?\s?\d{3,5}(?:-\d{1,4})?|v(?:ersion|er\.)?\s?\d+(?:\.\d+){1,2}"
    r"|[a-z][a-z._-]{2,40}(?:\s[a-z._-]{2,20}){0,2}\s*[|·•]\s*v\.?\s?\d+(?:\.\d+){0,2}"
    r"|(?:made\s+with\s+love\W+)?tag\s+(?:us|me|your\s+\w+)(?:\s+(?:with\s+)?[#@]\w+|\s+on\s+[a-z]+)?\W*"
    r"|(?:made|knitted)\s+with\s+love\W*"
    r"|(?-i:[A-Z]{3,}\s+[A-Z]{3,})\s+(?:knits\s+and|lives|designs|teaches)\b[^;:*\d]{0,160}"
    r"|(?:©|\(c\)|copyright\b).*|all\s+rights\s+reserved.*|[-=_*~·•/\\#+^:|<>\s]{3,}|[■-➿\s]+)$",
    re.I,
)
_TOLD_BELOW = regex(
    r"work\s+(?:(?:rows|rnds|rounds)\s+1\s*[-\u2013]\s*\d+\s+(?:of|from)\s+)?(?:the\s+)?(?:[a-z]+\s+){0,2}chart(?:\s+[a-z\d])?\s*[,(]?\s*"
    r"or\s+(?:follow(?:ing)?\s+|use\s+|work\s+(?:from\s+)?|from\s+)?(?:the\s+)?(?:written|row[-\s]by[-\s]row)\s+(?:instructions|directions|rows|version|out)"
    r"(?:\s+(?:below|here|that\s+follow|as\s+follows))?\s*\)?\s*[:.]?",
    re.I,
)
"""A chart that is to be worked from the drawing or from the rows written right below."""
_STITCH_PATTERN = regex(
    r"^[A-Z][\w' -]{0,40}\b(?:pattern|stitch|patt|st|rib|lace|cable|panel)\s*"
    r"\((?:[a-z ]*\bmultiple\b|(?:(?:worked\s+)?over|worked\s+on)\b|\d+\s*sts|any\b)[^)]*\)\s*:?$",
    re.I,
)
"""The name of a stitch pattern with the stitches it needs: "Lace pattern (over 8 sts)"."""
_NUMBERED = regex(
    r"^(?:step|part|section)\s+(?:\d{1,2}|[IVX]{1,4}|one|two|three|four|five)\s*[:.–—-]\s*", re.I
)
_SECTION = regex(
    r"(?P<called>(?:section|part|clue|stage)\s+(?:\d{1,2}|[A-H]|[IVX]{1,4}|one|two|three|four|five|six|seven|eight|nine|ten)\b)"
    r"\s*(?:[:.\u2013\u2014-]\s*)?(?P<title>[^\d.;*:()\[\]]{0,48}?)\s*(?:[(\[](?P<aside>[^()\[\]\d.;*]{1,60})[)\]])?\s*:?",
    re.I,
)
"""A section by its number, with what it is about: "SECTION 3 (eyelets)", "Section 2: Lace"."""
_YARN = regex(r"\bcolou?rs?\s+[A-H]\b|\b(?:MC|CC\d?)\b|^[A-H]$")
_UNSAID = regex(rf"{_YARN.pattern}|\b(?:once\s+)?(?:again|more)$", re.I)
"""Words of an aside that tell nothing to do: a yarn by its letter, "stripes again"."""
_FABRIC_HEAD = regex(
    r"(?:(?:the|first|second|third|fourth|final|last|upper|lower|main|top|bottom)\s+)*"
    r"(?:colou?r\s?work|fair\s+isle|stranded|lace|eyelets?|stripes?|striped|mosaic|garter|stockinette|slip(?:ped)?[\s-]st(?:itch)?"
    r"|textured?|mesh|cables?|cabled|ridges?|increases?|transition)"
    r"(?:\s+(?:stitch|stripes?|ridges?|bands?|section|panel|part|lace|eyelets?|edging|colou?rwork))*\s*:?",
    re.I,
)
"""What a part of a shawl or cowl is called by its fabric: "Colorwork", "Second Slip Stitch Section"."""
HOW_OFTEN = r"(?:make|work|knit)\s+(?:\d{1,2}|one|two|three|four|five|six|both)"
"""How often a part is made, in brackets behind its name."""
_OF_THEM = r"(?:\s+of\s+(?:each|these|them|those|['\u2019]em))?"
_MADE = regex(
    rf"{HOW_OFTEN}{_OF_THEM}(?:\s+(?:alike|the\s+same))?"
    rf"|(?:both|(?:two|2|(?:(?:make|work|knit)\s+)?a\s+pair){_OF_THEM})(?:\s+(?:alike|the\s+same))?|(?:worked|knit(?:ted)?|made)\s+alike",
    re.I,
)
"""How often a part is made: what such words stand behind is a part, whatever it is called."""
_SIZED = (
    r"(?:(?:with|using|on)\s+)?(?:the\s+)?(?:(?:small|larg|bigg)er|\d(?:[.,]\d+)?\s*mm|(?:size\s+)?US\s?\d+(?:\.\d+)?|size\s+\d+)"
    r"\s+(?:(?:circular|straight|double-pointed)\s+)?(?:needles?|dpns?)"
)
"""The needle of a part, behind its name."""
_BEHIND = regex(
    rf"\s*(?:,|[–—-])\s+((?:make|knit)\s+(?:two|2|both|a\s+pair)(?:\s+(?:alike|the\s+same))?|(?:both|two|2)\s+(?:alike|the\s+same)|{_SIZED})\s*[.:]?$",
    re.I,
)
"""What stands behind the name of a part without brackets: how often it is made, on which needle."""
_ON_NEEDLE = regex(_SIZED, re.I)
_BANDED = regex(r"\((button(?:hole)?)\)(?=\s+band\b)", re.I)
"""Which band of a cardigan this is: "Left Front (Button) Band"."""
_STAGE = regex(
    r"\s*[,:–—-]\s*((?:phase|part|stage)\s+(?:[A-H]|\d{1,2}|[IVX]{1,4}|one|two|three|four))$", re.I
)
"""Which stage of a part it is, behind its name: "YOKE, PHASE A"."""
_INLINE = regex(r"^([^\W\d_][^:]{1,40}?)\s*(?::|\.\s*[–—])\s*(\S.*)$")

_SIZE_COLUMNS = regex(
    r"\s*(?:[(\[](?:cm|in|inches)[)\]]\s*)?(?:(?:\d{1,3}|\d?X{0,3}[SML]|\dX)[\s|]+){2,}(?:\d{1,3}|\d?X{0,3}[SML]|\dX)[\s|]*"
)
"""The sizes over the columns of a table, behind what the table is of."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Heading:
    """A heading: what it heads, and its name."""

    kind: str
    """`part`, `front` or `chart`."""
    name: str
    """Name of the part or chart, or the heading's own word, in lower case."""
    aside: str = ""
    """Words in brackets after the name: `make 2`, or the name of a gauge."""
    rest: str = ""
    """The rest of the same row; it belongs to the content."""


def is_told_below(row: str) -> bool:
    """Return whether a row only says that a chart is worked, whose rows may stand right below it."""
    return _TOLD_BELOW.fullmatch(" ".join(row.split())) is not None


def is_clutter(row: str) -> bool:
    """Return whether a row belongs to the page, not the pattern: a page number, an address, a rule."""
    if not _CLUTTER.match(row.strip()):
        return False
    return not any(holds_instruction(sentence) for sentence in re.split(r"(?<=[.!?;])\s+", row))


def heading_of(row: str) -> Heading | None:
    """Return what a row heads; None if it is an ordinary row.

    Args:
        row: A row of the text, as copied.
    """
    plain = _undressed(row)
    part = _part(_BANDED.sub(r"\1", plain))
    section = _section(row) if part is None or not _all_of_parts(part.name) else None
    if section is not None:
        return section
    chart = _CHART.match(plain.rstrip(":"))
    if chart and len(plain) <= 60:
        return Heading(kind="chart", name=chart.group(1).lower(), rest=chart.group("rest").strip(" :"))
    if _COMMENTS.fullmatch(plain.rstrip(": ")):
        return Heading(kind="front", name="comments")
    if _STITCH_PATTERN.match(plain):
        return Heading(kind="front", name="stitch pattern")
    front = _FRONT.match(plain)
    if front and _heads_front(plain, front):
        rest = plain[front.end() :].lstrip(" :.-–—=")
        return Heading(kind="front", name=front.group().lower(), rest=rest)
    return part


def _section(row: str) -> Heading | None:
    """Return what a row heads that calls a section by its number; None if it says what is worked, too."""
    match = _SECTION.fullmatch(" ".join(row.split()).strip("*_#•~=|<> "))
    if match is None or not match["called"][0].isupper():
        return None
    title, aside = match["title"].strip(" -"), (match["aside"] or "").strip()
    titled = not title or title.isupper() or title[:1].isupper()
    if not titled or any(label_instructs(words) for words in (title, _UNSAID.sub("", aside)) if words):
        return None
    name = f"{match['called']}: {title}" if title else match["called"]
    return Heading(kind="part", name=name.lower(), aside=aside)


_HOLDS = regex(
    r"(?:[(\[,]|:\s|\s[-\u2013\u2014]\s|\b(?:in|with|using)\s)(?:[^()\[\]]*\s)?"
    r"(?P<what>(?-i:MC|CC\d?)|(?:colou?r|yarn)\s+(?-i:[A-H]|\d)|(?:(?<=in\s)|(?<=with\s)|(?<=using\s)|(?<=[(\[]))(?-i:[A-H])"
    r"|\d(?:[.,]\d+)?\s*mm|(?:small|larg)er(?=\s+needles?)|(?<!all\s)(?<!two\s)sizes?\b[^()\[\]]*|[^()\[\],]*\sonly)"
    r"(?![\w-])|(?P<who>\w+(?:'s|s')?)\s+(?:version|size)s?\W*$",
    re.I,
)


def holds_below(row: str) -> str:
    """Return what a heading says of the lines below it besides their name: a yarn, a needle, for whom.

    Args:
        row: The row: "BRIM (with A)", "Crown (size L only)", "Men's version".

    Returns:
        The words; empty if it only names the part.
    """
    found = _HOLDS.search(row)
    if found is None or (found["who"] and not names_people(found["who"])):
        return ""
    return found["what"] or found["who"]


def names_needle(heading: Heading) -> bool:
    """Return whether a heading says on which needle its part is worked: "Yoke (4 mm needle)"."""
    return _ON_NEEDLE.fullmatch(heading.aside) is not None


def names_one_yarn(row: str) -> bool:
    """Return whether the heading of a section names one yarn, in which it is then worked."""
    match = _SECTION.fullmatch(" ".join(row.split()).strip("*_#•~=|<> "))
    words = f"{match['title']} {match['aside'] or ''}".strip() if match is not None else ""
    several = re.search(r"\bcolou?rs\b|(?:&|,|\band\b)\s*(?:[A-H]|MC|CC\d?)\b", words)
    return not several and len(_YARN.findall(words)) == 1


def fabric_part(row: str, below: str) -> Heading | None:
    """Return the part of a shawl or cowl that a row heads by its fabric; None if it heads none.

    Where the row below it only says how long, "Work 10 rows", the heading is the one to name the fabric.

    Args:
        row: The row.
        below: The next row that is not empty; empty if there is none.
    """
    plain = _undressed(row)
    words = [word for word in plain.rstrip(": ").split() if word not in ("and", "the", "of")]
    titled = bool(words) and all(word[:1].isupper() for word in words)
    if not titled or _FABRIC_HEAD.fullmatch(plain) is None or _BARE.match(below):
        return None
    return Heading(kind="part", name=plain.rstrip(": ").lower())


_SIGNS = "*_#•~=|<>–—·«» " + "".join(map(chr, range(0x25A0, 0x27C0)))
"""Signs about a heading that are never part of it: shapes, stars, scissors and flowers among them."""
_SET_OFF = regex(
    r"^(?:[-/\\+^:.]{2,}|[/\\](?=\s)|-\s(?=.*\s-$))|(?:(?:\s|\b)[-/\\+^.]{2,}|(?:\s|^):{2,}|\s[-/\\])$"
)
"""What else sets a heading off: "--- YOKE ---", "////// BODY", "YOKE ------", "[SLEEVES]"."""


def _undressed(row: str) -> str:
    """Strip the decoration from a heading: stars and rules, its number, letters set wide."""
    plain = _SET_OFF.sub("", " ".join(row.split()).strip(_SIGNS)).strip(_SIGNS)
    plain = plain[1:-1] if re.fullmatch(r"\[[^\[\]]+\]", plain) else plain
    if re.fullmatch(r"(?:[A-Z] ){3,}[A-Z]", plain):
        plain = plain.replace(" ", "")
    plain = _NUMBERED.sub("", plain)
    return re.sub(r"^(?:\d{1,2}(?:\.\d{1,2})+[.)]?|\d{1,2}[.)]|[IVX]{1,4}\.|[A-H]\))\s+(?=[A-Z])", "", plain)


def _heads_front(plain: str, front: re.Match[str]) -> bool:
    after = plain[front.end() :]
    if re.search(r"\bonly\b", after, re.I):
        return False  # "Sizes S and M only:" is above lines of the pattern
    if plain[:1].islower() and not re.match(r"\s*:", after):
        return False  # the last word of a broken row: "needles"
    if "measurement" in front.group().lower() and _SIZE_COLUMNS.fullmatch(after):
        return True  # the head of a table: "Measurements 1 2 3 4 5"
    if not after.strip() or re.match(r"\.?\s*[:=–—]|\s+-\s", after):
        return not re.match(r"note\s*:", plain, re.I)  # "Note:" is a remark of the wording
    return front.group().isupper() or (plain.lower().startswith("size") and bool(re.search(r"[(\[]", after)))


def _part(plain: str) -> Heading | None:
    aside = ""
    bracket = re.search(r"\s*[(\[]([^()\[\]]*)[)\]]\s*:?$", plain)
    behind = _BEHIND.search(plain) if bracket is None else None
    bracket = behind if behind is not None and _all_of_parts(plain[: behind.start()]) else bracket
    bare = plain
    if bracket:
        aside, bare = bracket.group(1).strip().lower(), plain[: bracket.start()]
    bare = bare.rstrip(": ").strip()
    if bare.endswith(".") and (_all_of_parts(bare[:-1]) or _ENDING.fullmatch(bare[:-1])):
        bare = bare[:-1]
    if _ENDING.fullmatch(bare) and bare[:1].isupper():
        return Heading(kind="part", name=bare.lower(), aside=aside)
    words = _STAGE.sub("", bare).split()
    sound = (
        0 < len(words) <= 6
        and len(bare) <= 48
        and not re.search(r"[\d.,;*(\[=]", _STAGE.sub("", bare))
        and bare[:1].isalpha()
        and bool(_PART.search(bare) or _TOP.fullmatch(bare) or _MADE.fullmatch(aside) or _is_worn(words))
        and not bare.lower().endswith(("as follows", " thus"))
    )
    if not sound:
        return None
    colon = plain.endswith(":")
    shouted = bare.isupper()
    titled = all(word[:1].isupper() or word in ("and", "of", "the", "for", "in") for word in words)
    named = bare[:1].isupper() and _all_of_parts(bare)
    if not (shouted or colon or titled or named):
        return None
    return Heading(kind="part", name=" ".join(_STAGE.sub(r" \1", bare).lower().split()), aside=aside)


def shouted_part(row: str, below: str) -> Heading | None:
    """Return what a row of capitals heads, whatever it is called, if the row below it casts on."""
    plain = _undressed(row).rstrip(": ")
    words = plain.split()
    named = 0 < len(words) <= 4 and all(word.isalpha() and len(word) > 1 for word in words)
    if not (named and plain.isupper()) or not casts_on(below) or holds_instruction(plain):
        return None
    return Heading(kind="part", name=plain.lower())


def small_part(row: str, above: str, below: str) -> Heading | None:
    """Return what a row in small letters heads, as some pages print it: "cuff" between two empty rows.

    Args:
        row: The row.
        above: The row above it; empty if that is.
        below: The next row that is not empty.
    """
    plain = " ".join(row.split())
    apart = not above or heading_of(above) is not None
    small = plain.islower() and plain.replace(" ", "").isalpha() and len(plain.split()) <= 4
    named = apart and bool(below) and small and _all_of_parts(plain)
    return Heading(kind="part", name=plain) if named else None


_BEGINS_WORK = regex(
    r"^[^:]+?\s*(?::|\.\s*[–—])\s*(?:(?:with|using|in)\b[^.;:]{1,60}?)?"
    r"\b(?:begin|beginning|start|starting|commence|commencing)\b(?!\s+(?:the\s+)?(?:dec|inc|shap|row|rnd|round))",
    re.I,
)


def begins_work(row: str) -> bool:
    """Return whether a row says behind the name of a part that it is begun, be it read or not."""
    return _BEGINS_WORK.match(row) is not None


_WHOLE = regex(
    rf"(?:(?:the|left|right|first|second|1st|2nd)\s+)*(?:back|front|sleeve|{WHOLES})s?",
    re.I,
)
"""A piece that is knitted by itself, and may have headings of its own below it."""
_WITHIN = regex(
    r"(?:(?:the|upper|lower|top|sleeve|thumb|heel)\s+)*(?:cuffs?|hand|palm|thumb|gusset|fingers?|tip|top|heel|flap|instep"
    r"|sole|foot|toe|leg|armholes?|neck(?:line)?|shoulders?|head|cap|crown|welt|hem|ribbing|rib|border|edging)",
    re.I,
)
"""A part of such a piece."""


def is_whole_piece(name: str) -> bool:
    """Return whether a heading names a piece that is knitted by itself: "right mitten"."""
    return _WHOLE.fullmatch(name) is not None


def is_within_piece(name: str) -> bool:
    """Return whether a heading names a part of a piece: "cuff", "armholes"."""
    return _WITHIN.fullmatch(name) is not None


_IN_WORDS = regex(
    r"^(?!.*\b(?:rnds?|rounds?|rows?)\s+\d).*\bchart\s+(?P<chart>[A-Za-z0-9]+)\b.{0,30}\b(?:in\s+words|written\s+out|written\s+instructions)\W*$",
    re.I,
)
"""What stands over the rounds of a chart that are told in words beside it."""


def chart_in_words(row: str) -> str:
    """Return the chart whose rounds the rows below tell in words; empty if a row does not say so."""
    match = _IN_WORDS.search(row)
    return match["chart"] if match is not None else ""


def _is_worn(words: list[str]) -> bool:
    """Return whether words call a thing that is worn, and nothing else: "LEFT GLOVE"."""
    worn = [word for word in words if _WORN.fullmatch(word)]
    return bool(worn) and all(word in worn or _OF_PARTS.fullmatch(word) for word in words)


def _all_of_parts(words: str) -> bool:
    """Return whether every word names a part or goes with the name of one."""
    kinds = (_OF_PARTS, _PART, _WORN)
    return all(any(kind.fullmatch(word) for kind in kinds) for word in words.split())


def is_heading_alone(words: str) -> bool:
    """Return whether words are the name of a part or of the end of a page, and nothing else."""
    return _ENDING.fullmatch(words) is not None or (
        _all_of_parts(words) and _OF_PARTS.fullmatch(words) is None
    )


_JOINS = regex(
    r"(?:the\s+)?(?:(?:lower|upper|main)\s+)?"
    r"(?:yoke|body|hood|collar|(?:neck|button|buttonhole|front|arm|armhole)\s*bands?)",
    re.I,
)
"""A part that is begun on stitches that other parts leave, with none cast on."""


def inline_part(row: str, above: str = "") -> str:
    """Return the part that a row begins with, as in "BODY: Cast on 80 sts."; empty if it names none.

    A name not in capitals must be all words of parts, and be followed by casting on or picking up stitches,
    or by words that begin it: "Head: With the thin wool begin at the chin". On a page that headed the part
    above in the same way, the name of a part that others join is enough: behind "Sleeves: Cast on 40 sts."
    "Yoke: K across" begins one.

    Args:
        row: The row.
        above: The first row of the part above; empty if there is none.
    """
    match = _INLINE.match(" ".join(row.split()))
    if match is None or re.search(r"[\d.,;*(\[]", match.group(1)):
        return ""
    words = match.group(1)
    joins = _JOINS.fullmatch(words) is not None and bool(above) and inline_part(above) != ""
    begins = joins or (_all_of_parts(words) and (casts_on(match.group(2)) or begins_work(row)))
    named = bool(_PART.search(words)) and (words.isupper() or begins)
    return words.lower() if named else ""


_EXPLAINED = regex(
    r"^\s*(?P<name>[A-Z][A-Z-]+(?:[ /][A-Z][A-Z-]+){0,3}|(?:Increas|Decreas)(?:e|ing) tip|Raglan(?: tip)?"
    r"|(?:Toe|Thumb|Crown|Raglan|Gusset) (?:decreases|increases))(?:\s*\([^()]*\))?\s*:?\s*$"
)


_SHOUTED = regex(r"^\s*[A-Z][A-Z/ \u2013-]{2,60}?(?:\s*\((?:applies to|for|worked) [a-z ]+\))?\s*:\s*$")
_ORDERED = regex(
    r"\b(?:KNIT|PURL|CAST|BIND|WORK|JOIN|TURN|REPEAT|REP|CHANGE|SLIP|PICK|PLACE|MAKE|BREAK|CUT|HOLD|CONTINUE|BEGIN|EVERY|EACH|ALL|BOTH|"
    r"ONLY|NOT|UNTIL|TIMES|TWICE|AGAIN|ROWS?|ROUNDS?|RNDS?|SIZES?|WITH|REVERSE|REVERSING|SAME|AS|[SMLX]{1,4}|MC|CC|[A-H]|RS|WS)\b"
)


def shouts(row: str) -> bool:
    """Return whether a row in capitals with a colon is a heading that says nothing to do."""
    return _SHOUTED.match(row) is not None and _ORDERED.search(row.split("(")[0]) is None


def names_technique(row: str) -> bool:
    """Return whether a row may be the name of a round that is explained below it."""
    return _EXPLAINED.match(row) is not None


def is_explained(label: str, row: str) -> bool:
    """Return whether the label of a line is the name in a row, with "round" behind it."""
    match = _EXPLAINED.match(row)
    return match is not None and label.lower() == f"{match['name'].lower()} round"
