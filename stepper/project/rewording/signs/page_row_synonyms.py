"""Heads, slipped stitches and repeats in the dress of printed rows, cables told in words, counts behind a row. No I/O."""

from __future__ import annotations

from stepper.project.grammar import stitch_words
from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import ROUND, STS, N, Synonym, row

_NUMBERED = r"(?:rows?|rnds?|rounds?)\s+\d+(?:\s*(?:-+|,|and|&|to)\s*\d+)*"
_FACED = r"(?:as\s+they\s+(?:face\s+you|appear|present(?:\s+themselves)?|look|come|show))"
_STITCH = rf"(?:(?:[kp]|knit|purl|sl|slip)\.?\s?\d+(?!\d*\s*(?:{ROUND}|\w*\s*rib))|(?:{stitch_words()})(?![\w&/-]))"
_ALL = rf"(?:(?:all\s+)?(?:across|around)(?:\s+(?:the\s+)?{ROUND})?|to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?{ROUND})?)"
_BRACKET = r"([(\[][^()\[\]]*[)\]])"
_ORDINAL = r"(?:\d+(?:st|nd|rd|th)|first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth)"
_EACH_END = r"(?:at\s+)?(?:each\s+end|both\s+ends|(?:the\s+)?beg(?:inning)?\s+and\s+(?:the\s+)?end)(?:\s+of\s+(?:the\s+|this\s+)?(?:row|needle))?"
_ONE = r"(?:1|one)\s+(?:st|stitch)\s+"
_ROW_HEAD = r"((?:^|[.])\s*(?:[a-z]+\s+|(?:\d{1,3}(?:st|nd|rd|th)\s*(?:,|&|and\b)?\s*)+)?rows?(?:\s+\d{1,3}(?:(?:\s*(?:-|–|,|&)\s*|\s+(?:to|and)\s+)\d{1,3})*)?(?:\s*\((?:rs|ws)\))?\s*:\s*)"
"""A head and nothing behind it: the row is only what follows."""
_ROWS_HEAD = r"(?:^|[.])\s*[^:.()]*\brows\b[^:.()]*(?:\((?:rs|ws)\))?\s*:\s*"
"""The same of several rows."""
_ENDS = r"(?:at\s+)?(?:each|both|either)\s+(?:ends?|sides?)(?:\s+of\s+(?:(?:the|this|each)\s+)?row)?"
_SHAPED_HEAD = rf"(?:(?:{_ORDINAL}|last|final)\s+)?(?:inc|dec)(?:rease)?\.?(?:\s+(?:row|rnd|round))?(?:\s+\d{{1,2}})?"
"""The name of a row that shapes, as one of several: "Increase round 1", "First decrease"."""
_ROW_BEGINS = r"(?:[*(\[]|[kp]\s?\d|(?:knit|purl|k|p)\b)"
_ROW_DONE = rf"(?=\s*[,.]?\s*(?:$|[(]?\s*{N}\s+{STS}|taking\b|working\b))"

SPLIT_HEADS: tuple[Synonym, ...] = (
    row("(|[", r"^(\s*(?:next\s+)?(?:row|rnd|round)(?:\s+\d+)?\s*)[(\[]\s*([rw]s)\s*[-,;/]\s*([a-z][a-z' -]*?)\s*[)\]](?=\s*:)", r"\1(\2) (\3)", "Row 1 (WS - inc row): K1, m1, k to end."),
    row("(|[", r"^(\s*(?:next\s+)?(?:row|rnd|round)(?:\s+\d+)?\s*)[(\[]\s*([a-z][a-z' -]*?)\s*[-,;/]\s*([rw]s)\s*[)\]](?=\s*:)", r"\1(\3) (\2)", "Row 1 (inc row, WS): K1, m1, k to end."),
    row("side", r"^(\s*(?:next\s+)?(?:row|rnd|round)(?:\s+\d+)?\s*)[(\[]\s*(?:as\s+)?(?:seen\s+|worked\s+|knit(?:ted)?\s+)?(?:from|on)\s+(?:the\s+)?(right|wrong)\s+side\s*[)\]](?=\s*:)", r"\1(\2 side)", "Next row (from the wrong side): K2, p to end."),
)
"""Side and name in one bracket, taken apart before the name is looked for, and a side that is no name."""

PAGE_ROWS: tuple[Synonym, ...] = (
    row("odd|even", rf"^(\s*)(odd|even)(?:[-\s]numbered)?\s+({ROUND})(?=\s*[(\[]?\s*(?:rs|ws)\s*[)\]]?\s*:)", r"\1All \2 \3", "Odd rows (RS): Knit."),
    row("as for|same as", rf"^(\s*{_NUMBERED}(?:\s*\([rw]s\))?\s*:\s*)(?:work|knit)\s+(?:(?:as\s+for|same\s+as|as\s+in)\s+)(?=(?:row|rnd|round)\s+\d)", r"\1as ", "Row 5: Work as for Row 1."),
    row("knits|purls", r"(?<![(\[])\bk(?:nit)?\s+(?:all\s+)?(?:the\s+)?knits?\s*(?:,|and|&)\s*p(?:url)?\s+(?:all\s+)?(?:the\s+)?purls?\b", "work in pattern to end", "Row 2: Knit the knits and purl the purls."),
    row("as they", rf"(\bin\s+patt(?:ern)?(?:\s+to\s+end)?|\bpurl(?:\s+the)?\s+p(?:url)?\s+{STS}|\bp\s+(?:the\s+)?p\s+{STS})\s+{_FACED}", r"\1", "Row 2: K the k sts and p the p sts as they appear."),
    row("[ to|[to|] to", rf"(\[[^\]]+\])\s*[.,;]?\s*rep(?:eat)?\s+(?:from\s+)?\[\s*to\s*\]\s+(?:to|until)\s+(?:the\s+)?(last\s+{N}\s+{STS})", r"\1 to \2", "[K3, yo, k2tog], repeat from [ to ] until last 3 sts, k3."),
    row("tog", r"(\btimes\s*,\s*|[)\]]\s*,\s*)(k2tog|p2tog|k3tog|p3tog|ssk|ssp)\s+(\d+|two|three|four|five|six|seven|eight|nine|ten)\s+times\b", r"\1(\2) \3 times", "Row 1: K2tog 3 times, [yo, k1] 6 times, k2tog 3 times.", again=True),
    row("sl1k|sl1p", r"\bsl1k\b", "sl 1 knitwise", "Row 9: Sl1k, k to end."),
    row("sl1k|sl1p", r"\bsl1p\b", "sl 1 purlwise", "Row 9: Sl1p, k to end."),
    row("{", r"\{\s*([kp]\s?\d[^{}]*)\}", r"(\1)", "Round 1: {K3, p1} to end."),
    row("pw|kw", r"\b(sl(?:ip)?\s?\d*(?:\s+sts?)?)\s+pw\b", r"\1 purlwise", "Row 5: Sl1 pw wyib, k to end."),
    row("pw|kw", r"\b(sl(?:ip)?\s?\d*(?:\s+sts?)?)\s+kw\b", r"\1 knitwise", "Row 5: Sl1 kw, k to end."),
    row("yarn in", r"(^|[,;:]\s*)with\s+(?:the\s+)?yarn\s+in\s+front\s*,\s*sl(?:ip)?\s+(?:(?:the\s+)?(?:first|next)\s+st(?:itch)?|1)(?:\s+purlwise|\s+as\s+if\s+to\s+purl)?(?=\s*,)", r"\1sl 1 wyif", "Row 6: With yarn in front, sl first st purlwise, k to end."),
    row("yarn in", r"(^|[,;:]\s*)with\s+(?:the\s+)?yarn\s+in\s+back\s*,\s*sl(?:ip)?\s+(?:(?:the\s+)?(?:first|next)\s+st(?:itch)?|1)(?:\s+purlwise|\s+as\s+if\s+to\s+purl)?(?=\s*,)", r"\1sl 1 wyib", "Row 6: With yarn in back, sl first st purlwise, k to end."),
    row("for", r"^(\s*rep(?:eat)?\s+(?:rows?|rnds?|rounds?)\s+\d+\s*(?:-+|to|and|&)\s*\d+\s+for\s+)(?:the\s+)?(?P<said>(?:(?!pattern\b|patt\b)[a-z0-9x,/&-]+\s+){1,3}(?:st(?:itch)?|patt(?:ern)?|rib(?:bing)?|lace|cable)\b\.?)(?=\s*\.?\s*$)", r"\1pattern", "Rep Rows 1 and 2 for Seed St.", spelt_out=True),
    row("until the last", rf"\b((?:k|p|knit|purl|work)\s+)until\s+the\s+last\s+(?={N}\s+{STS})", r"\1to last ", "Knit until the last 2 stitches, kfb, k1."),
    row("rib to", r"(^|[,;:]\s*)k\s?(\d)\s*,?\s*p\s?(\d)\s+rib(?:bing)?\s+to\s+end\b", r"\1*k\2, p\3; rep from * to end", "K2, p2 rib to end."),
    # --- what older pages repeat, and how it ends ---
    row("end", rf"(\*[^*]*(?<!\*)[,;])\s*rep(?:eat)?\s+{_ALL}\s*,?\s*end(?:ing)?\s+(?:with\s+)?(?={_STITCH})", r"\1 rep from *, ", "*K5, k2tog, repeat across, ending k 1."),
    row("rep", r"(\*[^*]*(?<!\*)[,;])\s*rep(?:eat)?(?:\s+\*)?(?=\s*\.?\s*$|\s*[.=-]\s*\(?\d)", r"\1 rep from * to end", "Row 1: *K5, k2tog, repeat."),
    row("rep", rf"((?:^|:)[^.*]*?){_BRACKET}\s*,?\s*rep(?:eat)?(?=\s*\.?\s*$|\s*[.=-]\s*\(?\d)", r"\1\2 to end", "Row 1: (K1, p1, k2tog) repeat."),
    # --- steps that a page numbers, rows or not ---
    said_row_behind("next|following", r"^(\s*)(?P<said>\d{1,3})[.)]?\s+(?=(?:next|following)\s+(?:row|rnd|round)\b)", "3 Next row: K2, k2tog, k to end."),
    said_row_behind("rep", r"^(\s*)(?P<said>\d{1,3})[.)]?\s+(?=rep(?:eat)?\s+last\s)", "10 Rep last 2 rows 3 times."),
    said_row_behind("step", r"(\blast\s+(?:2|two)\s+(?:rows|rnds|rounds))\s*\(\s*(?P<said>steps?\s+\d+\s*(?:and|&)\s*\d+)\s*\)", "Rep last 2 rows (steps 8 and 9) 3 times."),
    row("alternately", r"\b(in\s+k\s?\d+\s*,?\s*p\s?\d+)(?:\s+rib(?:bing)?)?\s+alternately\b", r"\1 rib", "Work 6 rows in k 1, p 1 alternately."),
    row("alternately", rf"((?:^|:)\s*)({_STITCH}(?:\s*,\s*|\s+){_STITCH})\s*,?\s+alternately\s+{_ALL}(?=\s*[.]|\s*$)", r"\1(\2) to end", "K 1, p 1 alternately across."),
)
"""The rows, in the order tried."""

HEADS: tuple[Synonym, ...] = (
    row("as", r"^(\s*\d{1,2}(?:st|nd|rd|th)[^:]*\b(rows|rnds|rounds)\s*:\s*)(?:work\s+|same\s+)?as\s+(?:the\s+)?(\d{1,2})(?:st|nd|rd|th)\s+(?:and|&)\s+(\d{1,2})(?:st|nd|rd|th)(?:\s+(?:rows|rnds|rounds))?(?=\s*[.]?\s*$)", r"\1as \2 \3-\4", "3rd and 4th rnds: As 1st and 2nd."),
    row("same as", r"^(\s*\d{1,2}(?:st|nd|rd|th)\s+(?:row|rnd|round)\s*:\s*)(?:the\s+)?same\s+as\s+(?:the\s+)?(\d{1,2}(?:st|nd|rd|th))(?=\s*[.]?\s*$)", r"\1as \2", "2nd rnd: Same as 1st."),
    said_row_behind("=", r"(\b(?:rounds?|rnds?|rows?|times?))\s*=\s*(?P<said>\d{1,3}\s+(?:rounds|rnds|rows))(?=\s*[.]?\s*$)", "Rep rows 1-2 one more time, then K 2 rounds = 6 rounds."),
    row("all the", r"^(\s*(?:row|rnd|round)s?\s+\d{1,3}[^:]*?\ball)\s+the\s+(?=(?:other|odd|even|rs|ws)\b[^:]*:)", r"\1 ", "Round 2 and all the even rounds: Knit."),
    row("all", r"^(\s*(?:row\s+\d{1,3}|\d{1,3}(?:st|nd|rd|th)\s+row)\s+(?:and|&)\s+all)\s+(ws|rs)\s*(?:rows?)?(?:\s+(?:of|in)\s+(?:the|this)\s+(?:section|patt(?:ern)?|chart|lace|part))?\s*:", r"\1 \2 rows:", "Row 2 and all WS rows of the section: Purl."),
    row("back rows", r"^(\s*(?:row\s+\d{1,3}|\d{1,3}(?:st|nd|rd|th)\s+row)\s+(?:and|&)\s+all)\s+back\s+rows\s*:", r"\1 WS rows:", "2nd row and all back rows: Purl."),
    row("inc|dec", rf"^(\s*{_SHAPED_HEAD})\s*\.\s+(?={_ROW_BEGINS})", r"\1: ", "First decrease. (K8, k2tog) all round."),
    row("inc|dec", rf"^(\s*{_SHAPED_HEAD})\s*,\s*(?:in|with|using)\s+((?-i:MC|CC\d?|C\d|[A-H]))\s*[.:]\s+(?={_ROW_BEGINS})", r"\1: With \2, ", "Increase round 3, in MC. *K10, m1; rep from * to end."),
    row("with|using|in", rf"^(\s*(?:with|using|in)\s+(?-i:MC|CC\d?|C\d|[A-H]))\s*:\s+(?={_ROW_BEGINS})", r"\1, ", "With MC: Knit 1 round, purl 1 round."),
    row("row|rnd|round", r"^(\s*(?:row|rnd|round)\s+\d{1,3})\s*[);=]\s*(?=[a-z*(\[])", r"\1: ", "Row 1) Knit"),
    row("r", r"^\s*(?-i:R|Rw|Rw\.)\s?(\d{1,3})\s*[.)-]?\s+(?=[kpKP]\s?\d|knit|purl|sl\b|\*)", r"Row \1: ", "R1 k2, p2, k to end"),
    row("row|rnd|round", rf"^(\s*{_ORDINAL}\s+(?:row|rnd|round))\s*\.?\s*-+\s*(?=[a-z*(\[])", r"\1: ", "First row - Knit 4, purl to end."),
    row("side)|(rs)|(ws)", r"^(\s*(?:row|rnd|round)\s+\d{1,3}\s*\((?:rs|ws|right\s+side|wrong\s+side)\))\s*\.\s*(?=[a-z*(\[])", r"\1: ", "Row 1 (Right Side). K1, p1, k to end."),
    row("row|rnd|round", r"^(\s*(?:row|rnd|round))\s+(\d{1,3})\s*(?:-|to|thru|through)\s*(\d{1,3})\s*:", r"\1s \2-\3:", "Row 9 to 12: knit"),
    row("and", r"^(\s*(?:rows|rnds|rounds)\s+\d[\d\s,]*?)\s*,\s+and\s+(\d{1,3})\s*:", r"\1 and \2:", "Rows 9, 10, and 11: knit"),
    # --- signs left out ---
    row("(k|(p", r"(?<![\w(])([kp]\s?\d+)\s+(?=[(\[]\s*[kp]\s?\d+\s*,[^()\[\]]*[)\]]\s*(?:to\b|around|across|twice|rep|\d+\s*(?:times|x)))", r"\1, ", "Row 1: K2 (p2, k2) to end"),
    row("*", r"(?<![\w(])([kp]\s?\d+)\s+\*(?=\s?[kp]\s?\d)", r"\1, *", "Row 1: k2 *p2, k2* across"),
    # --- rows that say only what is shaped at their ends ---
    row("each|both|either", rf"{_ROW_HEAD}(inc|dec)(?:reas(?:e|ing))?\.?\s+{_ONE}{_ENDS}{_ROW_DONE}", r"\1\2 1 st at each end of next row", "Next row: Inc 1 st at each end of row."),
    row("then", r"\b((?:dec|inc)(?:rease)?\.?\s+)(\d\s+sts?)(\s+at\s+(?:each|both)\s+ends?\s+of\s+[^.;:]*?,?\s*(?:and\s+)?\bthen)\s+\2\s+at\s+(?:each|both)\s+ends?\s+(?=of\b)", r"\1\2\3 ", "Dec 1 st at each end of next 3 rows, then 1 st at each end of foll 3 alt rows."),
    row("each|every", rf"({_ROWS_HEAD}(?:inc|dec)(?:reas(?:e|ing))?\.?\s+{_ONE}at\s+(?:each|both)\s+ends?\s+of\s+)(?:each|every)\s+row{_ROW_DONE}", r"\1next row", "Rows 3-6: Inc 1 st at each end of every row."),
    row("beg", rf"({_ROWS_HEAD}(?:cast|bind)[-\s]off\s+{N}(?:\s+{STS})?)\s+at\s+(?:the\s+)?beg(?:inning)?\.?(?:\s+of\s+(?:the|each|every)\s+rows?)?{_ROW_DONE}", r"\1 at beg of row", "Rows 1 and 2: Cast off 4 sts at the beginning of each row."),
    row("first and", rf"{_ROW_HEAD}inc(?:reas(?:e|ing))?\.?\s+(?:{_ONE})?in(?:to)?\s+(?:the\s+)?first\s+and\s+(?:the\s+)?last\s+(?:sts?|stitch|stitches)(?:\s+of\s+(?:the\s+)?row)?{_ROW_DONE}", r"\1inc in first st, work to last st, inc in last st", "Next row: Inc in first and last st."),
    # --- stitches in words ---
    row("tog", r"\b(k|p|knit|purl)\s*(2|two|3|three)\s+(?:sts|stitches)\s+tog(?:ether)?\b", r"\1 \2 together", "K 2 sts together, k to last 2 sts, k 2 sts together"),
    row("inc", r"\binc(?:rease)?\s+(?:(?:1|one)\s+)?(?:st\s+)?in(?:to)?\s+(?:the\s+)?(?:first|last)\s+(?:st|stitch)(?=\s*[,.(]|\s*$)", "inc in next st", "Row 3: Inc in first st, k to last st, inc in last st"),
    row("front and", r"\b(?:k|knit)\s+(?:in)?to\s+(?:the\s+)?front\s+and\s+(?:the\s+)?back\s+of\s+(?:every|each)\s+(?:st|stitch)(?=\s*[.(]|\s*$)", "*kfb; rep from * to end", "Row 3: knit into front and back of each stitch"),
    row("wool|wl|yarn|wrn|w.", r"(?<![\w-])(?:wool|wl|w|yarn)\.?\s?(?:fwd|forward)\b\.?(?=\s*[,.;)\]*]|\s*$)", "yfwd", "K2, wool fwd, k2tog, k to end"),
    row("wrn|wool|wl|yarn", r"(?<![\w-])(?:wrn|w\.r\.n\.|(?:wool|wl|yarn)\s+(?:round|rnd)\s+(?:the\s+)?needle)(?=\s*[,.;)\]*]|\s*$)", "yrn", "K2, wrn, p2tog, p to end"),
    row("yarn over needle|wool over needle|won", r"(?<![\w-])(?:won|(?:wool|yarn)\s+over\s+(?:the\s+)?needle)(?=\s*[,.;)\]*]|\s*$)", "yon", "P2, yarn over needle, k2tog, k to end"),
    row("inc", rf"\b(k)(?:nit)?\s*,\s*inc(?:reas(?:e|ing))?\s+{_ONE}{_EACH_END}(?=\s*[.(]|\s*$)", r"k1, inc 1, k to last 2 sts, inc 1, k1", "Row 3: Knit, increasing 1 st at each end"),
    row("inc", rf"\b(p)(?:url)?\s*,\s*inc(?:reas(?:e|ing))?\s+{_ONE}{_EACH_END}(?=\s*[.(]|\s*$)", r"p1, inc 1, p to last 2 sts, inc 1, p1", "Row 4: Purl, increasing 1 st at each end"),
    row("dec", rf"\b(k)(?:nit)?\s*,\s*dec(?:reas(?:e|ing))?\s+{_ONE}{_EACH_END}(?=\s*[.(]|\s*$)", r"k1, k2tog, k to last 3 sts, k2tog, k1", "Row 3: Knit, decreasing one stitch at beginning and end of row."),
    row("dec", rf"\b(p)(?:url)?\s*,\s*dec(?:reas(?:e|ing))?\s+{_ONE}{_EACH_END}(?=\s*[.(]|\s*$)", r"p1, p2tog, p to last 3 sts, p2tog, p1", "Row 4: Purl, decreasing one stitch at each end of row."),
    row("k sts|k stitches|over knit", r"(?<!with\s)\b(?:k|knit)\s+(?:(?:all\s+)?(?:the\s+)?k\s+(?:sts|stitches)|over\s+knit)\s*,?\s*(?:and\s+)?(?:p|purl)\s+(?:(?:all\s+)?(?:the\s+)?p\s+(?:sts|stitches)|over\s+purl)\b", "knit the knit sts and purl the purl sts", "K the k sts and p the p sts"),
    # --- counts ---
    row("-", r"(?<=[\w)\]])\s*-\s*(\d{1,3})\s*-\s*$", r" (\1 sts)", "Row 3: k2, m1, k to last 2 sts, m1, k2 -24-"),
    row(";", rf"(?<=[\w)\]])\s*;\s*({N}\s+{STS})(?=\s*\.?\s*$)", r". \1", "Row 3: k2, m1, k to last 2 sts, m1, k2; 24 sts."),
)  # fmt: skip
"""The rows, in the order tried."""
