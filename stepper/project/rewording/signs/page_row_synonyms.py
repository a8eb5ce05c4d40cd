"""Heads, slipped stitches and repeats in the dress of printed rows: "rep from * to * across row, end k 1". No I/O."""

from __future__ import annotations

from stepper.project.grammar import stitch_words
from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import ROUND, STS, N, Synonym, row

_NUMBERED = r"(?:rows?|rnds?|rounds?)\s+\d+(?:\s*(?:-+|,|and|&|to)\s*\d+)*"
_FACED = r"(?:as\s+they\s+(?:face\s+you|appear|present(?:\s+themselves)?|look|come|show))"
_TO = r"(?=\s+(?:to|until|across|around|along|\d|once|twice|[a-z]+\s+(?:more\s+)?times)\b|\s*[.,;]|\s*$)"
_STITCH = rf"(?:(?:[kp]|knit|purl|sl|slip)\.?\s?\d+(?!\d*\s*(?:{ROUND}|\w*\s*rib))|(?:{stitch_words()})(?![\w&/-]))"
_ALL = rf"(?:(?:all\s+)?(?:across|around)(?:\s+(?:the\s+)?{ROUND})?|to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?{ROUND})?)"
_FROM = r"rep(?:eat)?\.?\s+from\s+\*+"
_ONE_STAR = r"^([^*]*\*[^*]*)"
"""One star before the repeat: with a second, what stands behind it may not be repeated."""
_PLACE = rf"(?:to\s+(?:the\s+)?(?:next\s+)?(?:marker|m)\b|to\s+(?:the\s+)?last\s+{N}\s+{STS})"
_BRACKET = r"([(\[][^()\[\]]*[)\]])"

SPLIT_HEADS: tuple[Synonym, ...] = (
    row("(|[", r"^(\s*(?:next\s+)?(?:row|rnd|round)(?:\s+\d+)?\s*)[(\[]\s*([rw]s)\s*[-,;/]\s*([a-z][a-z' -]*?)\s*[)\]](?=\s*:)", r"\1(\2) (\3)", "Row 1 (WS - inc row): K1, m1, k to end."),
    row("(|[", r"^(\s*(?:next\s+)?(?:row|rnd|round)(?:\s+\d+)?\s*)[(\[]\s*([a-z][a-z' -]*?)\s*[-,;/]\s*([rw]s)\s*[)\]](?=\s*:)", r"\1(\3) (\2)", "Row 1 (inc row, WS): K1, m1, k to end."),
)
"""Side and name in one bracket, taken apart before the name is looked for."""

PAGE_ROWS: tuple[Synonym, ...] = (
    row("odd|even", rf"^(\s*)(odd|even)(?:[-\s]numbered)?\s+({ROUND})(?=\s*[(\[]?\s*(?:rs|ws)\s*[)\]]?\s*:)", r"\1All \2 \3", "Odd rows (RS): Knit."),
    row("as for|same as", rf"^(\s*{_NUMBERED}(?:\s*\([rw]s\))?\s*:\s*)(?:work|knit)\s+(?:(?:as\s+for|same\s+as|as\s+in)\s+)(?=(?:row|rnd|round)\s+\d)", r"\1as ", "Row 5: Work as for Row 1."),
    row("knits|purls", r"(?<![(\[])\bk(?:nit)?\s+(?:all\s+)?(?:the\s+)?knits?\s*(?:,|and|&)\s*p(?:url)?\s+(?:all\s+)?(?:the\s+)?purls?\b", "work in pattern to end", "Row 2: Knit the knits and purl the purls."),
    row("as they", rf"(\bin\s+patt(?:ern)?(?:\s+to\s+end)?|\bpurl(?:\s+the)?\s+p(?:url)?\s+{STS}|\bp\s+(?:the\s+)?p\s+{STS})\s+{_FACED}", r"\1", "Row 2: K the k sts and p the p sts as they appear."),
    row("*", rf"(\*[^*]+)\*\s*[,;.]?\s*rep(?:eat)?\s+\*\s*(?:-|to)\s*\*{_TO}", r"\1, rep from *", "*K4, p1*; rep * to * to last 4 sts, k4."),
    row("[ to|[to|] to", rf"(\[[^\]]+\])\s*[.,;]?\s*rep(?:eat)?\s+(?:from\s+)?\[\s*to\s*\]\s+(?:to|until)\s+(?:the\s+)?(last\s+{N}\s+{STS})", r"\1 to \2", "[K3, yo, k2tog], repeat from [ to ] until last 3 sts, k3."),
    row("tog", r"(\btimes\s*,\s*|[)\]]\s*,\s*)(k2tog|p2tog|k3tog|p3tog|ssk|ssp)\s+(\d+|two|three|four|five|six|seven|eight|nine|ten)\s+times\b", r"\1(\2) \3 times", "Row 1: K2tog 3 times, [yo, k1] 6 times, k2tog 3 times.", again=True),
    row("sl1k|sl1p", r"\bsl1k\b", "sl 1 knitwise", "Row 9: Sl1k, k to end."),
    row("sl1k|sl1p", r"\bsl1p\b", "sl 1 purlwise", "Row 9: Sl1p, k to end."),
    row("{", r"\{\s*([kp]\s?\d[^{}]*)\}", r"(\1)", "Round 1: {K3, p1} to end."),
    row("pw|kw", r"\b(sl(?:ip)?\s?\d*(?:\s+sts?)?)\s+pw\b", r"\1 purlwise", "Row 5: Sl1 pw wyib, k to end."),
    row("pw|kw", r"\b(sl(?:ip)?\s?\d*(?:\s+sts?)?)\s+kw\b", r"\1 knitwise", "Row 5: Sl1 kw, k to end."),
    row("first st", r"\bsl(?:ip)?\s+(?:the\s+)?first\s+st(?:itch)?\s+(?:purlwise\s+|as\s+if\s+to\s+purl\s+)?(?=wyi[fb]\b|with\s+yarn\s+in\b)", "sl 1 ", "Row 6: Sl first st purlwise wyif, k to end."),
    row("yarn in", r"(^|[,;:]\s*)with\s+(?:the\s+)?yarn\s+in\s+front\s*,\s*sl(?:ip)?\s+(?:(?:the\s+)?(?:first|next)\s+st(?:itch)?|1)(?:\s+purlwise|\s+as\s+if\s+to\s+purl)?(?=\s*,)", r"\1sl 1 wyif", "Row 6: With yarn in front, sl first st purlwise, k to end."),
    row("yarn in", r"(^|[,;:]\s*)with\s+(?:the\s+)?yarn\s+in\s+back\s*,\s*sl(?:ip)?\s+(?:(?:the\s+)?(?:first|next)\s+st(?:itch)?|1)(?:\s+purlwise|\s+as\s+if\s+to\s+purl)?(?=\s*,)", r"\1sl 1 wyib", "Row 6: With yarn in back, sl first st purlwise, k to end."),
    row("repeating", rf"\bcont(?:inue)?\s+(?:to\s+rep(?:eat)?|repeating)\s+(?=(?:these\s+|the\s+last\s+)?(?:{N}\s+)?{ROUND})", "rep ", "Continue repeating rows 1-4 until piece measures 20 cm."),
    row("for", r"^(\s*rep(?:eat)?\s+(?:rows?|rnds?|rounds?)\s+\d+\s*(?:-+|to|and|&)\s*\d+\s+for\s+)(?:the\s+)?(?P<said>(?:(?!pattern\b|patt\b)[a-z0-9x,/&-]+\s+){1,3}(?:st(?:itch)?|patt(?:ern)?|rib(?:bing)?|lace|cable)\b\.?)(?=\s*\.?\s*$)", r"\1pattern", "Rep Rows 1 and 2 for Seed St.", spelt_out=True),
    row("until", rf"(\brep(?:eat)?\s+from\s+\*)\s+until\s+(?:you\s+(?:reach|get\s+to|come\s+to)\s+)?(?:the\s+)?(?=last\s+(?:{N}\s+)?{STS}|{N}\s+{STS}\s+(?:from|before)\s)", r"\1 to ", "*K4, p1; rep from * until last 3 sts, k3."),
    row("until the last", rf"\b((?:k|p|knit|purl|work)\s+)until\s+the\s+last\s+(?={N}\s+{STS})", r"\1to last ", "Knit until the last 2 stitches, kfb, k1."),
    row("rib to", r"(^|[,;:]\s*)k\s?(\d)\s*,?\s*p\s?(\d)\s+rib(?:bing)?\s+to\s+end\b", r"\1*k\2, p\3; rep from * to end", "K2, p2 rib to end."),
    # --- what older pages repeat, and how it ends ---
    row("to *", rf"{_ONE_STAR}\b({_FROM})\s+to\s+\*", r"\1\2", "*K 1, p 1, repeat from * to * across row."),
    row("end", rf"({_FROM})(?:\s+{_ALL})?\s*,?\s*end(?:ing)?\s+(?:with\s+)?(?={_STITCH})", r"\1, ", "*K1, p1, repeat from * across row, end k 1."),
    row("*", rf"\*([^*]+?)[,;]?\s*\*\s*,?\s*rep(?:eat)?\s+between\s+(?:the\s+)?(?:\*'?s?|stars|asterisks|\*\s+and\s+\*)\s+{_ALL}", r"*\1; rep from * to end", "*K 1, p 1 *, repeat between *s across row."),
    row("to last|to the last", rf"({_FROM})\s+(?:across|around)\s+(?=to\s+(?:the\s+)?last\s)", r"\1 ", "K2, *p1, k1; repeat from * across to last 6 sts, k 6."),
    row("end", rf"(\*[^*]*(?<!\*)[,;])\s*rep(?:eat)?\s+{_ALL}\s*,?\s*end(?:ing)?\s+(?:with\s+)?(?={_STITCH})", r"\1 rep from *, ", "*K5, k2tog, repeat across, ending k 1."),
    row("rep", r"(\*[^*]*(?<!\*)[,;])\s*rep(?:eat)?(?:\s+\*)?(?=\s*\.?\s*$|\s*[.=-]\s*\(?\d)", r"\1 rep from * to end", "Row 1: *K5, k2tog, repeat."),
    row("rep", rf"(\*[^*]*(?<!\*)[,;])\s*rep(?:eat)?\s+(?={_PLACE})", r"\1 rep from * ", "*K6, k2tog, repeat to marker, k to end."),
    row("rep", rf"{_BRACKET}\s*,?\s*rep(?:eat(?:ed)?)?\s+(?={_PLACE})", r"\1 ", "(K2, p2) repeat to last 2 sts, k2."),
    row("rep", rf"((?:^|:)[^.*]*?){_BRACKET}\s*,?\s*rep(?:eat)?(?=\s*\.?\s*$|\s*[.=-]\s*\(?\d)", r"\1\2 to end", "Row 1: (K1, p1, k2tog) repeat."),
    # --- steps that a page numbers, rows or not ---
    said_row_behind("next|following", r"^(\s*)(?P<said>\d{1,3})[.)]?\s+(?=(?:next|following)\s+(?:row|rnd|round)\b)", "3 Next row: K2, k2tog, k to end."),
    said_row_behind("rep", r"^(\s*)(?P<said>\d{1,3})[.)]?\s+(?=rep(?:eat)?\s+last\s)", "10 Rep last 2 rows 3 times."),
    said_row_behind("step", r"(\blast\s+(?:2|two)\s+(?:rows|rnds|rounds))\s*\(\s*(?P<said>steps?\s+\d+\s*(?:and|&)\s*\d+)\s*\)", "Rep last 2 rows (steps 8 and 9) 3 times."),
    row("alternately", r"\b(in\s+k\s?\d+\s*,?\s*p\s?\d+)(?:\s+rib(?:bing)?)?\s+alternately\b", r"\1 rib", "Work 6 rows in k 1, p 1 alternately."),
    row("alternately", rf"((?:^|:)\s*)({_STITCH}(?:\s*,\s*|\s+){_STITCH})\s*,?\s+alternately\s+{_ALL}(?=\s*[.]|\s*$)", r"\1(\2) to end", "K 1, p 1 alternately across."),
)
"""The rows, in the order tried."""
