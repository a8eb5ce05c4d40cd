r"""Other printed wordings of what the grammar reads, as one table: a pattern, and the words put in its place.

The rows are tried from the top down, and only on a line that does not read as it stands. `\1` in the words is
what stood in that bracket of the pattern. `KEPT` takes the words out of the line and has them said beside it:
they are worth no stitches, but the knitter needs them. Each row has a line as an example; a test reads them all.
Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from stepper.craft.needles import NEEDLES

KEPT = "\0"
"""In place of words: they are taken out of the line and said with it."""

_N = r"(?:\d+(?:\s*[(\[]\s*[\d\s,;]+[)\]])?|(?:one|two|three|four|five|six|seven|eight|nine|ten)\b)"
_ROUND = r"(?:rounds?|rnds?|rows?)\b"
_STS = r"(?:stitches|stitch|sts?)\b"
_END = r"(?=\s*[,.;)\]]|\s*$)"
_LONG = r'\d[\d\s./¼½¾⅛⅜⅝⅞]*(?:\s*[(\[][^)\]]*[)\]])?\s*(?:cm|mm|inch(?:es)?|in|")'
_HELD_BY = r"(?:hold|(?:a\s+)?(?:st(?:itch)?\s+)?holder|(?:waste|scrap)\s+yarn|(?:a\s+)?spare\s+needle)\b"
_OFF = r"(?:bind|cast)\s+off"


@dataclass(frozen=True, slots=True)
class Synonym:
    """One other wording."""

    pattern: re.Pattern[str]
    words: str
    example: str
    has: tuple[str, ...]
    """Pieces of words, in lower case, of which one must stand in a line before the pattern is tried."""
    again: bool = False
    """Whether it is tried again on what it made, for lists."""
    said: str = ""
    """Name of the bracket of the pattern whose words are said beside the line, as they are worth no stitches."""


def _row(
    has: str, pattern: str, words: str, example: str, *, again: bool = False, exact: bool = False
) -> Synonym:
    compiled = re.compile(pattern, 0 if exact else re.I)
    said = "said" if "said" in compiled.groupindex else ""
    return Synonym(compiled, words, example, tuple(has.split("|")), again, said)


SYNONYMS: tuple[Synonym, ...] = (
    # --- heads ---
    _row(
        "rnd|round|row",
        rf"^(\s*)((?:\d+(?:st|nd|rd|th)(?:\s*(?:,|and|&|to|-)\s*)?)+)\s+({_ROUND})(?=[^:]*:)",
        r"\1\3 \2",
        "1st row (RS): Knit.",
    ),
    _row(
        "rnd|round|row",
        r"^(\s*(?:rows?|rnds?|rounds?)\b[^:]*?\d)(?:st|nd|rd|th)\b(?=[^:]*:)",
        r"\1",
        "1st and 2nd rows: Knit.",
        again=True,
    ),
    _row(
        "rnd|round|row",
        r"^(\s*(?:next\s+)?(?:rows?|rnds?|rounds?)(?:\s+\d+)?)\s*[-,]\s*\(?([rw]s)\)?\s*:",
        r"\1 (\2):",
        "Next row, RS: Knit.",
    ),
    _row(
        "rnd|round|row",
        r"^(\s*(?:rows?|rnds?|rounds?)\s+\d+)\s*(?:[.]|-+)\s+(?=\(?[rw]s\)|[a-z*\[(])",
        r"\1: ",
        "Round 1. Knit.",
    ),
    _row(
        "rnd|round|row",
        r"^(\s*(?:rows?|rnds?|rounds?)\s+\d+):\s*\(([rw]s)\)\s*",
        r"\1 (\2): ",
        "Row 1: (RS) K to end.",
    ),
    _row("and", r"\(\s*(and\s+(?:all|every)[^)]*)\)(?=\s*:)", r"\1", "Row 2 (and all WS rows): Purl."),
    _row("&", r"(?<=\s)&(?=\s)", "and", "Rnds 2 & 4: Knit.", again=True),
    _row(
        "row",
        rf"^(\s*)(knit|purl)\s+(?:1|one)\s+row\s*(?:\(|on\s+(?:the\s+)?)(rs|ws|right\s+side|wrong\s+side)\)?{_END}",
        r"\1next row (\3): \2",
        "Purl 1 row (WS).",
    ),
    _row(
        "row",
        r"^(\s*)(?:beg(?:inning|in)?|start(?:ing)?)\s+(?:with|on)\s+an?\s+(?:rs|right\s+side|knit|k)\s+row\s*,\s*",
        r"\1next row (rs): ",
        "Starting with a knit row, work 10 rows in stocking stitch.",
    ),
    _row(
        "row",
        r"^(\s*)(?:beg(?:inning|in)?|start(?:ing)?)\s+(?:with|on)\s+an?\s+(?:ws|wrong\s+side|purl|p)\s+row\s*,\s*",
        r"\1next row (ws): ",
        "Beginning with a purl row, work 9 rows in st st.",
    ),
    # --- what is said beside the line ---
    _row(
        "block|change|divide|fasten|inside|make|marker|n't|not|sew|soak|steam|try|wash|weave",
        r"(?:(?<=^)|(?<=[.!]))\s*(?:weave|block|sew|steam|soak|wash|fasten\s+off|(?:slip|sl)\s+markers?\s+as|"
        r"divide\s+for|try\s+on|turn\s+inside\s+out|(?:do\s+not|don't)\s+(?:break|cut|turn|join)|"
        r"change\s+to\s+(?:dpns?|double-pointed|circular)|make\s+(?:1|2|one|two)(?=\s*[.!]|\s*$|\s+(?:alike|the\s+same)\b))\b[^.!;]*;?\s*",
        KEPT,
        "Weave in ends.",
    ),
    _row("leaving", r",?\s*leaving\s+an?\s+[^.,;]*tail\b", KEPT, "Break yarn, leaving a long tail."),
    _row(
        "length",
        r",?\s*\bor\s+(?:to\s+)?(?:the\s+)?(?:desired|required|wanted)\s+length",
        KEPT,
        "Work until piece measures 30 cm or desired length.",
    ),
    _row(
        "closing|hiding|knitting|lifting|picking|purling|slipping|working",
        r",?\s*\b(?:knitting|purling|working|picking\s+up|lifting|hiding|closing|slipping)\s+"
        r"(?=[^.,;]*\b(?:wraps?|ds|double|markers?|legs?|gaps?|turns?)\b)[^.,;]*",
        KEPT,
        "K to end, picking up wraps as you come to them.",
    ),
    _row(
        "cast|loop|method|technique",
        r"^\s*(?:using|by|with)\s+(?:the\s+|an?\s+)?(?!rs\b|ws\b|right\b|wrong\b|three\b|\d)[a-z-]+(?:\s+[a-z-]+){0,3}?\s+(?:loops?\s+(?:method|cast-?\s?on)|method|cast-?\s?on|technique|loops?)\b\s*,\s*",
        KEPT,
        "Using backward loop method, cast on 8 sts.",
    ),
    _row(
        "cast|loop|method|technique",
        r",?\s*\b(?:using|by|with)\s+(?:the\s+|an?\s+)?(?!rs\b|ws\b|right\b|wrong\b|three\b|\d)[a-z-]+(?:\s+[a-z-]+){0,3}?\s+(?:loops?\s+(?:method|cast-?\s?on)|method|cast-?\s?on|technique|loops?)\b",
        KEPT,
        "K20, using the backward loop method, cast on 8 sts, k to end.",
    ),
    _row(
        "and",
        r"\band\s+(?:starting|beginning)\s+at\s+[^,.;]*",
        KEPT,
        "With RS facing and starting at the front edge, pick up and knit 98 sts.",
    ),
    _row(
        "rnd|round|row",
        rf"\s*\(\s*({_N}\s+{_ROUND}(?:\s+(?:total|in\s+all|in\s+total))?)\s*\)(?=\s*[.]|\s*$)",
        r". \1",
        "Repeat rounds 1 and 2 four more times (8 rounds).",
    ),
    _row(
        "rnd|round|row", rf"\s*\(\s*\d+\s+{_ROUND}[^)]*\)", KEPT, "Knit 8 rounds (8 rounds in stockinette)."
    ),
    _row(
        "garter|st|stocking",
        r"\s*\((?:=\s*)?(?:garter|st(?:ockinette)?|stocking)\b[^)]*\)",
        KEPT,
        "Knit 6 rows (garter stitch).",
    ),
    _row(
        "on|right|rs|wrong|ws",
        rf"\s*\((?:rs|ws|right\s+side|wrong\s+side)\)(?={_END})|\s*\bon\s+(?:the\s+)?(?:rs|ws|right\s+side|wrong\s+side){_END}",
        KEPT,
        "Knit 1 row. Purl 1 row (WS).",
    ),
    _row(
        "across|over",
        rf"\b((?:k|p|knit|purl)\s*{_N})\s+(?P<said>(?:across|over)\s+(?!(?:the\s+)?next\b)(?:the\s+)?[a-z][a-z ]*(?<!\s)){_END}",
        r"\1",
        "Pick up and knit 15 sts, k30 across instep, pick up and knit 15 sts.",
    ),
    # --- yarn and needles ---
    _row("dpn", r"\bdpns?\b", "double-pointed needles", "Change to 3.75 mm dpns."),
    _row("us", r"\bus\s*\d+(?:\.\d+)?\s*/\s*(?=\d+(?:\.\d+)?\s*mm)", "", "Change to US 5 / 3.75mm needles."),
    _row(
        "needle",
        rf"\b(?:with|using)\s+({NEEDLES})\s+and\s+([a-z]\w?\d?)\s*,",
        r"change to \1. with \2,",
        "Using 3.5 mm needles and MC, cast on 80 sts.",
    ),
    _row(
        "needle",
        rf"\b(?:with|using)\s+([a-z]\w?\d?)\s+and\s+({NEEDLES})\s*,",
        r"change to \2. with \1,",
        "With MC and smaller needles, CO 80 sts.",
    ),
    _row(
        "needle",
        rf"\b(?:with|using)\s+({NEEDLES})\s*,\s*",
        r"change to \1. ",
        "With larger needles, cast on 80 sts.",
    ),
    _row(
        "needle",
        rf"\b(?:with|using)\s+({NEEDLES})\s+(?=(?:cast\s+on|co|pick\s+up)\b)",
        r"change to \1. ",
        "Using 3.25 mm needles cast on 98 sts.",
    ),
    _row(
        "change",
        rf"\b(change\s+to\s+{NEEDLES})\s+and\s+",
        r"\1. ",
        "Change to 3.75 mm needles and knit 2 rounds.",
    ),
    _row("rejoin", r"\b[Rr]ejoin\s+([A-Z]\w?)\b", r"with \1", "Rejoin MC, k to end.", exact=True),
    _row(
        "in|using|with",
        rf"\b((?:[Cc]ast\s+on|CO|[Pp]ick\s+up\s+and\s+knit)\s+{_N}(?:\s+{_STS})?)\s+(?:in|using|with)\s+(?:yarn\s+)?(MC|CC\d?|[A-Z])\b",
        r"with \2, \1",
        "Cast on 80 sts using A.",
        exact=True,
    ),
    _row(
        "yarn",
        r"\b(?:re-?join|re-?attach|attach|join)\s+(?:the\s+)?yarn\s*(?:,\s*(?:and\s+)?|and\s+)?",
        KEPT,
        "With RS facing, rejoin yarn and k across left sleeve sts.",
    ),
    _row(
        "knit|purl|work",
        rf"\b([Kk]nit|[Pp]url|[Ww]ork)\s+({_N})\s+({_ROUND})\s+(?:in\s+|with\s+)?(MC|CC\d?|[A-Z])\b",
        r"with \4, \1 \2 \3",
        "Knit 1 rnd in A.",
        exact=True,
    ),
    _row(
        "",
        r"\b([KkPp]\s?\d*)\s+(?:with\s+)?(MC|CC\d?|[A-Z])(?=\s*[,;.)\]]|\s*$)",
        r"\1 in \2",
        "*K1 A, k1 B; rep from * to end.",
        exact=True,
        again=True,
    ),
    _row(
        "with",
        r"\b[Ww]ith\s+(MC|CC\d?|[A-Z])\s*,?\s+([KkPp]\s?\d+)(?=\s*[,;])",
        r"\2 in \1",
        "*With A k1, with B k1; rep from * to end.",
        exact=True,
        again=True,
    ),
    _row(
        "yarn",
        r"\b((?:break|cut)\s+(?:off\s+)?(?:the\s+)?yarn)\s*,?\s*and\s+(?=place|put|leave|slip|hold)",
        r"\1. ",
        "Break yarn and place sts on hold for front.",
    ),
    # --- the round, its markers ---
    _row(
        "join",
        r"\b(?:pm|place\s+(?:an?\s+)?marker)(?:\s+for\s+[^,.;]*?)?\s*(?:,|and)\s*(?=join\b)",
        KEPT,
        "PM and join in the round.",
    ),
    _row(
        "join",
        r"(?<=join)(?=\s*,\s*(?:being|taking)|\s*[.]|\s*$)",
        " in the round",
        "Join, being careful not to twist.",
    ),
    _row(
        "and",
        r"(?<=\S),?\s*\band\s+(?:pm|place\s+(?:an?\s+)?marker)\b[^.,;]*(?=\s*[.]|\s*$)",
        KEPT,
        "Join in the round and place marker.",
    ),
    _row(
        "in",
        r"(?<!\bto\s)\b(?:begin|start|cont(?:inue)?|go\s+on)\s+(?:working\s+|knitting\s+)?in\s+(?:the\s+)?(?:rounds?|rnds?)\b",
        "join in the round",
        "Continue in rounds.",
    ),
    _row(
        "join",
        rf"\b((?:cast\s+on|co)\s+{_N}\s+{_STS})\s*,?\s*(?:and\s+)?(?=join\b)",
        r"\1. ",
        "Cast on 120 sts and join in the round.",
    ),
    _row("turn", r"\bturn\s+and\s+(?=work\b)", "", "Turn and work in rows."),
    _row(
        "marker",
        r"\bplace\s+(?:an?\s+)?(bor|end|side)\s+marker\b",
        r"place marker for \1",
        "Place BOR marker.",
    ),
    _row(
        "p",
        r"\b(place\s+(?:an?\s+)?marker|pm)\s+([A-Z]|\d)\b",
        r"\1 for \2",
        "K10, place marker A, k to end.",
        exact=True,
    ),
    _row(
        "sl",
        r"\b(?:sl|slip)\s+(?:the\s+)?(?:m|marker)\b",
        "sm",
        "*K to marker, sl m; rep from * 3 times more, k to end.",
    ),
    # --- how often, how long ---
    _row(
        "knit|purl",
        rf"\b((?:knit|purl)\s+{_N}\s+{_ROUND})\s*,\s*(?:then\s+|and\s+)?(?=(?:knit|purl)\s+{_N}\s+{_ROUND})",
        r"\1. ",
        "Purl 1 round, knit 1 round, purl 1 round.",
        again=True,
    ),
    _row(
        "same",
        r"(?<=[^\s.])\.\s+(?=at\s+the\s+same\s+time\b)",
        ", ",
        "Work dec row every 4th row 3 times. At the same time, work neck row every 2nd row 5 times.",
    ),
    _row(
        "total",
        r"\ba\s+total\s+of\s+(\S+)\s+times\b",
        r"\1 times in all",
        "Rep Rnds 1 and 2 a total of 5 times.",
    ),
    _row(
        "another", r"\banother\s+(\S+)\s+times\b", r"\1 times more", "Repeat rounds 1 and 2 another 4 times."
    ),
    _row("thrice", r"\bthrice\b", "3 times", "K10, (yo, k2tog) thrice, k to end."),
    _row("x", r"([)\]])\s*x\s*(\d+)", r"\1 \2 times", "K10, [yo, k2tog] × 3, k to end."),
    _row(
        "rep",
        rf"\b(rep(?:eat)?)\s+(?:the\s+last|the\s+prev(?:ious)?|prev(?:ious)?|these|those)\s+((?:{_N}\s+)?{_ROUND})",
        r"\1 last \2",
        "Rep these two rows three times more.",
    ),
    _row(
        "rnd|round|row",
        rf"\b({_ROUND}\s+\d+)\s+(?:to|through|thru)\s+(?=\d)",
        r"\1-",
        "Rep rows 1 to 4 twice.",
    ),
    _row(
        "patt",
        rf"\b(rep(?:eat)?\s+(?:last\s+(?:\S+\s+)?{_ROUND}|{_ROUND}\s+[\d\s,and-]*\d))\s+(?:for|to\s+form)\s+(?:the\s+)?patt(?:ern)?\b",
        r"\1 0 times more",
        "Rep these 4 rows for pattern.",
    ),
    _row(
        "knit|purl",
        rf"\b(knit|purl)\s+(?:every|all|each)\s+{_ROUND}\s+(?=until\b|for\b)",
        r"\1 ",
        "Knit every round until piece measures 10 cm.",
    ),
    _row(
        "knit|work",
        rf"\b(?:knit|work)\s+({_LONG})\s+(in\s+[^.;]+?)(?=\s*[.;]|\s*$)",
        r"work \2 for \1",
        "Work 5 cm in k2, p2 rib.",
    ),
    _row("knit|purl", rf"\b(knit|purl)\s+(?={_LONG}(?:[\s.,;]|$))", r"\1 for ", "Knit 5 cm."),
    _row("rib", rf"\brib\s+({_N}\s+{_ROUND})", r"work \1 in rib", "Rib 6 rows."),
    _row(
        "rib",
        r"(?<!\bin\s)(?:\bwork\s+)?\b(k\s?\d+\s*,?\s*p\s?\d+\s+rib(?:bing)?)\b",
        r"work in \1",
        "K2, p2 rib for 5 cm.",
    ),
    _row("rib", r"\bin\s+rib(?:bing)?\s+(?=as\s+(?:set|established)\b)", "", "Work in rib as set for 5 cm."),
    _row("rnd|round|row", rf"\bk\s*(?={_N}\s+{_ROUND})", "knit ", "K 2 rows."),
    _row("rnd|round|row", rf"\bp\s*(?={_N}\s+{_ROUND})", "purl ", "P 1 row."),
    _row(
        "knit|purl|work",
        rf"\b((?:knit|purl|work)\s+{_N}\s+{_ROUND})\s+(?:even|straight|plain)\b",
        r"\1",
        "Knit two rounds even.",
    ),
    _row(
        "knit|work",
        r"\b(?:knit\s+the\s+knit(?:\s+(?:sts|stitches))?\s+and\s+purl\s+the\s+purl\s+(?:sts|stitches)|work\s+(?:all\s+|the\s+)*(?:sts|stitches)\s+as\s+they\s+(?:appear|present)(?:\s+themselves)?)",
        "work in pattern to end",
        "Knit the knit sts and purl the purl sts.",
    ),
    # --- inside a round ---
    _row(
        "across|all|round",
        rf"\b(k|p|knit|purl|work)\s+(?:across|around|all)(?:\s+(?:all|the|these|rem(?:aining)?))*(?:\s+(?:{_STS}|{_ROUND}))?{_END}",
        r"\1 to end",
        "K across all sts.",
    ),
    _row(
        "last",
        rf"\b(to\s+last\s+{_N}\s+{_STS})\s+(?:of|in|on)\s+(?:the\s+)?(?:{_ROUND}|needle\b)",
        r"\1",
        "K to last 3 stitches of the round, ssk, k1.",
    ),
    _row(
        "until",
        rf"\b(k|p|knit|purl|work)\s+until\s+({_N})\s+{_STS}\s+(?:rem(?:ain)?s?|(?:are\s+)?left)\b",
        r"\1 to last \2 sts",
        "K until 3 sts rem, k2tog, k1.",
    ),
    _row(
        "next",
        rf"\b(k|p|knit|purl|bo|{_OFF})\s+(?:the\s+)?next\s+(?=\d)",
        r"\1 ",
        "K20, BO next 20 sts, k to end.",
    ),
    _row(
        "cent|first|last|middle",
        rf"\b(k|p|knit|purl|bo|{_OFF})\s+(?=(?P<said>(?:the\s+)?(?:first|last|cent(?:er|re)|middle)\s+{_N}(?:\s+{_STS})?))(?:the\s+)?(?:first|last|cent(?:er|re)|middle)\s+(?=\d)",
        r"\1 ",
        "K20, BO center 20 sts, k to end.",
    ),
    _row(
        "across|around|end",
        r"\*((?:(?!\brep(?:eat)?\b)[^*])+?)[,;]?\s*\*\s*,?\s*(?:(?:rep(?:eat)?)\s+(?:from\s+\*\s+to\s+\*\s+)?)?(?:around|across|to\s+end)\b",
        r"*\1; rep from * to end",
        "Next rnd: *K8, k2tog* around.",
    ),
    _row(
        "times",
        r"\*((?:(?!\brep(?:eat)?\b)[^*])+?)[,;]?\s*\*\s*,?\s*(?=\S+\s+times\b)",
        r"(\1) ",
        "*K8, k2tog* 3 times, k to end.",
    ),
    _row(
        "across|around|end",
        r"([)\]])\s*,?\s*(?:rep(?:eat)?\s+)?(?:around|across|to\s+end)\b",
        r"\1 to end",
        "Next round: (K8, k2tog) around.",
    ),
    _row(
        "from",
        r"\b(rep(?:eat)?\s+from\s+\*+)\s*,?\s*end(?:ing)?(?:\s+with)?\s+(?=[a-z])",
        r"\1, ",
        "*K8, k2tog; rep from *, end k2.",
    ),
    _row(
        "between",
        r"\brep(?:eat)?\s+(?=between\s+(?:the\s+)?markers\b)",
        "rep from * ",
        "*K2, p2; rep between markers.",
    ),
    _row(
        "wrap",
        r"\bwrap\s+(?:(?:the\s+)?next\s+st(?:itch)?\s*(?:,\s*(?:and\s+)?|and\s+)|(?:&|and)\s+)turn\b",
        "w&t",
        "K to last 5 sts, wrap next st, turn.",
    ),
    _row(
        "double|ds",
        r"(^\s*|[:,]\s*)(?:m?ds|double\s+st(?:itch)?)(?=\s*,)",
        r"\1make a ds",
        "MDS, p to last 5 sts, turn.",
    ),
    _row("k2tog", r"\bsl(?:ip)?\s*1\s*[,-]\s*k2tog\s*[,-]\s*psso\b", "sk2p", "Yo, sl 1, k2tog, psso, yo."),
    _row("psso", r"\bsl(?:ip)?\s*1\s*[,-]\s*k1\s*[,-]\s*psso\b", "skp", "K1, sl1, k1, psso, k to end."),
    _row(
        "p2sso",
        r"\bsl(?:ip)?\s*2\s*(?:tog(?:ether)?\s*)?(?:kwise|knitwise)?\s*[,-]\s*k1\s*[,-]\s*p2sso\b",
        "s2kp",
        "K1, sl2 knitwise, k1, p2sso, k to end.",
    ),
    _row("tog", r"\b(?:knit|k)\s?(?:2|two)\s+tog(?:ether)?\b", "k2tog", "Knit to last 2 sts, k2 tog."),
    _row("tog", r"\b(?:purl|p)\s?(?:2|two)\s+tog(?:ether)?\b", "p2tog", "Purl two together, purl to end."),
    _row("tog", r"\b([kp][23]tog)tbl\b", r"\1 tbl", "P2togtbl, p to end."),
    _row("tbl", r"\b([kp])\s+tbl\s+(\d+)", r"\1\2 tbl", "K tbl 1, p to end."),
    _row(
        "next",
        r"\b(inc|dec|mb|make\s+bobble)\s+in(?:to)?\s+(?:the\s+)?next\s+st(?:itch)?\b",
        r"\1 1",
        "K3, make bobble in next st, k3.",
    ),
    _row("m", r"\b(mb|make\s+bobble)\s+1\b", r"\1", "K3, mb in next st, k3."),
    _row("slip", r"\bslip\s+(?=\d)", "sl ", "Slip 1 purlwise, knit to end."),
    _row(
        "front",
        r"\bsl(?:ip)?\s+(\d)\s+(?:sts?\s+)?(?:to|onto)\s+(?:an?\s+)?(?:cn|cable\s+needle)\s*,?\s+(?:and\s+)?hold\s+(?:in|at|to)\s+(?:the\s+)?front\s*,\s*k(\d)\s*,\s*k\1\s+from\s+(?:cn|cable\s+needle)",
        r"\1/\2 lc",
        "Sl 2 sts to cn and hold in front, k2, k2 from cn.",
    ),
    _row(
        "hold",
        r"\bsl(?:ip)?\s+(\d)\s+(?:sts?\s+)?(?:to|onto)\s+(?:an?\s+)?(?:cn|cable\s+needle)\s*,?\s+(?:and\s+)?hold\s+(?:in|at|to)\s+(?:the\s+)?back\s*,\s*k(\d)\s*,\s*k\1\s+from\s+(?:cn|cable\s+needle)",
        r"\2/\1 rc",
        "Sl 1 st to cn and hold in back, k2, k1 from cn.",
    ),
    _row(
        "chart",
        r"\bwork\s+(?:across\s+)?(?:row|rnd|round)\s+(\d+)\s+of\s+((?:the\s+)?chart\s+\S+?)(?=\s+(?:over|to)\b)",
        r"work \2, round \1",
        "K3, work row 1 of chart fern over next 20 sts, k to end.",
    ),
    _row(
        "chart",
        r"\bwork\s+(?:across\s+)?(?:the\s+)?next\s+(?:row|rnd|round)\s+of\s+(?=(?:the\s+)?chart\b)",
        "work ",
        "K3, work next row of chart fern to last 3 sts, k3.",
    ),
    _row(
        "chart",
        r"\b(?:follow|(?:beg(?:in|inning)?|start(?:ing)?)(?:\s+work(?:ing)?)?(?:\s+from)?|work(?:ing)?\s+from)\s+(?=(?:the\s+)?chart\b)",
        "work ",
        "Follow chart fern for 8 rnds.",
    ),
    # --- cast on, bind off, hold, pick up ---
    _row("bo", r"\bbo\b(?!\s*\d)", "bind off", "BO in patt."),
    _row(
        "needle",
        rf"\b(?:join\b(?P<said>[^.,;\d]*?)\b(?:with|using)\s+(?:an?\s+|the\s+)?three[-\s]needle\s+bind[-\s]?off|(?:{_OFF}(?:\s+(?:all|the|these|rem(?:aining)?|shoulder|both|sets|of|sts|stitches|together|tog))*\s+(?:with|using)\s+(?:an?\s+|the\s+)?)?three[-\s]needle\s+bind[-\s]?off)\b",
        "bind off with a three-needle bind-off",
        "Join shoulders with a three-needle bind-off.",
    ),
    _row(
        "using",
        rf"\b({_OFF})((?:\s+(?:all|rem(?:aining)?|sts|stitches))*)\s+using\s+(?:an?\s+|the\s+)?(stretchy|sewn)\s+bind[-\s]?off(?:\s+method)?\b",
        r"\1\2 with a \3 bind-off",
        "Bind off using a stretchy bind off.",
    ),
    _row(
        "grafting",
        rf"\bjoin\s+(?:the\s+)?({_N}\s+)?(?P<said>[a-z ]*?){_STS}\s+by\s+grafting\b",
        r"graft \1sts",
        "Join 8 underarm sts by grafting.",
    ),
    _row(
        "at",
        rf"\b((?:bo|co|{_OFF}|cast\s+on)\s+{_N}(?:\s+{_STS})?(?:\s+for\s+[a-z][a-z ]*?)?)\s+at\s+(?:the\s+)?(?:beg|beginning|start)\s+of\s+(?:the\s+)?next\s+(?:row|rnd|round)\s*,\s*(?:then\s+|and\s+)?(?=(?:work|k|p|knit|purl)\b)",
        r"\1, ",
        "Bind off 5 sts at beg of next row, k to end.",
    ),
    _row("pick", r"\b(pick\s+up\s+and\s+)k(?=\s+\d)", r"\1knit", "Pick up and k 12 sts along gusset edge."),
    _row(
        "hold|holder|needle|yarn",
        rf"\b(?:place|put|slip|sl|leave|transfer)\s+(?:the\s+)?(?:(?:next|last|first|rem(?:aining)?|these|foll(?:owing)?)\s+)*({_N})\s+{_STS}\s+(?:on|onto|to)\s+{_HELD_BY}",
        r"hold \1 sts",
        "K20, slip next 40 sts to waste yarn, CO 8, k to end.",
    ),
    _row(
        "hold|holder|needle|yarn",
        rf"\b(?:place|put|slip|sl|leave|transfer)\s+(?:(?:all|the|rem(?:aining)?|these|those)\s+)*{_STS}\s+(?:on|onto|to)\s+{_HELD_BY}",
        "hold all sts",
        "Place all sts on hold for front.",
    ),
    _row(
        "needle",
        rf"\b(?:return|place|put|transfer|slip)\s+([^.,;]*?)(?:\s+{_STS})?\s+(?:back\s+)?(?:on|onto|to)\s+({NEEDLES})",
        r"change to \2. return \1 to needles",
        "Return left sleeve sts to 3.75 mm needles.",
    ),
    _row(
        "needle",
        rf"\b(?:return|place|put|transfer|slip)\s+(?:the\s+)?({_N}\s+)?(?:held\s+)?{_STS}\s+(?:of|for|from)\s+(?:the\s+)?([a-z][a-z ]*?)\s+(?:back\s+)?(?:on|onto|to)\s+(?:the\s+)?needles?\b",
        r"return \1\2 to needles",
        "Place held sts for left sleeve on needles.",
    ),
    _row(
        "needle",
        rf"\b(?:place|put|transfer|slip)\s+(?:the\s+)?(?=(?:{_N}\s+)?(?:held\s+)?[a-z][a-z ]*?\s+(?:back\s+)?(?:on|onto|to)\s+(?:the\s+)?needles?\b)",
        "return ",
        "Transfer left sleeve sts to needles.",
    ),
    _row(
        "needle",
        r"\b(return\s+[^.,;]*?)\s+(?:back\s+)?(?:on|onto)\s+(?:the\s+)?needles?\b",
        r"\1 to needles",
        "Place 40 left sleeve sts on needles.",
    ),
    _row(
        "holder",
        rf"\b(k|p|knit|purl)\s*(?:across\s+)?({_N})\s+(?:{_STS}\s+)?from\s+(?:the\s+)?(?:st(?:itch)?\s+)?holder\b",
        r"\1 across \2 held sts",
        "K40 from holder.",
    ),
    _row(
        "held", rf"\b(k|p|knit|purl)\s+({_N})\s+held\s+", r"\1 across \2 held ", "K 40 held left sleeve sts."
    ),
    # --- shaping ---
    _row(
        "inc",
        rf"\binc\.?(?=\s+(?:evenly\b|{_N}\s+(?:{_STS}\s+)?evenly\b|to\s+{_N}))",
        "increase",
        "Inc 10 sts evenly around.",
    ),
    _row(
        "dec",
        rf"\bdec\.?(?=\s+(?:evenly\b|{_N}\s+(?:{_STS}\s+)?evenly\b|to\s+{_N}))",
        "decrease",
        "Dec 10 sts evenly around.",
    ),
    _row(
        "increase",
        rf"\b((?:knit|purl)\s+{_N}\s+{_ROUND}\s*,\s*)increase\b",
        r"\1increasing",
        "Knit 1 round, inc 10 sts evenly. 110 sts.",
    ),
    _row(
        "decrease",
        rf"\b((?:knit|purl)\s+{_N}\s+{_ROUND}\s*,\s*)decrease\b",
        r"\1decreasing",
        "Knit 1 round, dec 10 sts evenly.",
    ),
    _row("st", rf"\s*(?::\s|=)\s*({_N}\s+{_STS})(?=\s*[.]?\s*$)", r". \1", "K1, k2tog, k to end = 78 sts."),
    # --- numbers ---
    _row(":", r"([(\[][\d\s,]*\d)\s*:\s*(?=\d)", r"\1, ", "K10[12:14], p2.", again=True),
    _row("-", r"\b([kp])\s*-\s*(?=[(\[]\s*\d)", r"\10 ", "K- (2, 4), p2."),
    _row("-", r"([(\[,]\s*)-(?=\s*[,)\]])", r"\10", "K2 (-, 4), p2.", again=True),
    _row(
        '"|cm|in|inches',
        r'(\d[\d\s./¼½¾]*?)\s*("|cm|inches|in)(?=\s*[(\[][^)\]]*\2)',
        r"\1",
        'Knit until piece measures 10½" (11", 11½").',
    ),
    _row(
        ",",
        r'([(\[][^)\]"]*?\d[\d\s./¼½¾]*?)\s*(?:"|cm|inches|in)(?=\s*,[^)\]]*[)\]])',
        r"\1",
        "Knit until piece measures 25 cm (27 cm, 29 cm).",
        again=True,
    ),
    _row(
        '"|cm|in|inches',
        r'(?<=[\d¼½¾])\s*("|cm|inches|in)\s*([)\]])',
        r"\2 \1",
        'Knit until piece measures 10½ (11, 11½").',
    ),
)
"""Every other wording, in the order in which they are tried."""
