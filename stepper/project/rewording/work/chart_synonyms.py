"""Charts as they are called in print: without a name, by several words, through a row, beside stitches. No I/O.

A chart is worked upwards from the row that comes next; how often it stands across the row is read aloud, and held
against its stitches (`reading/chart_repeats`). Bare repeats ("work 6 repeats of chart A") may be meant either way and have no row.
"""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import PAUSE, ROUND, ROW, N, Synonym, row

_NO_NAME = (
    r"over|to|until|till|through|for|from|in|as|and|then|once|twice|around|across|between|beg\w*|start\w*|rows?|rnds?|rounds?|"
    r"again|is|has|are|repeats?|reps?|repeating|while|using|with|working|ending|or|on|at|patt(?:ern)?|stitch(?:es)?|sts?|key|page|"
    r"a\s+total|(?:\d+|one|two|three|four|five|six|seven|eight|nine|ten)\s+(?:more\b|times?\b|x\b|(?:rows?|rnds?|rounds?)\b)"
)
_C = rf"(?:the\s+)?chart\b(?:\s+(?!(?:{_NO_NAME})\b)[a-z0-9][\w-]*)?"
_NO_WORD = (
    r"next|rows?|rnds?|rounds?|of|the|this|that|from|all|each|every|both|same|following|sts|stitch|pattern|patt|in|and|to|with|work\w*|"
    r"above|below|first|second|last|your|charted|over|entire|whole|complete|full|until|begin\w*|follow\w*|using|repeat|rep|for|on|by"
)
_WORD = rf"(?!(?:{_NO_WORD})\b)[a-z][a-z'-]*"
_BEFORE = r"\b(of|from|work(?:ing)?|begin(?:ning)?|start(?:ing)?|follow(?:ing)?|rep(?:eat)?|continue|cont|using|through)\s+(?:the\s+)?"
_ROWS = r"(?:rows?|rnds?|rounds?)\s+\d+(?:\s*(?:-+|to|through)\s*\d+)?"
_DONE = r"(?:is|are|has\s+been|have\s+been)\s+(?:completed?|worked|finished|done)"
_ON = (
    r"\b(?:work|cont(?:inue)?)(?:\s+(?:to\s+work|working|to\s+follow|following|in|with|on|as\s+(?:set|established)\s+(?:in|on|with)))?"
    r"(?:\s+(?:in\s+)?patt(?:ern)?)?\s+(?:from\s+|following\s+)?"
)
_ESTABLISHED = (
    r"\b(?:work|cont(?:inue)?)(?:\s+(?:even|straight))?(?:\s+(?:working\s+)?in\s+(?:the\s+)?(?:established\s+)?patt(?:ern)?s?)?"
    r"(?:\s+as\s+(?:set|established))?"
)
_STITCH = r"(?:[kp]\s?\d+|knit|purl|k|p|sm|slm|pm|rm|ssk|k2tog|m1[lr]?|slip\s+(?:the\s+)?marker|place\s+(?:a\s+)?marker|remove\s+(?:the\s+)?marker)"
_READING = (
    r"reading\s+(?:(?:rs|right[-\s]side|odd(?:-numbered)?|knit)\s+rows\s+(?:from\s+)?right\s+to\s+left|"
    r"(?:all|every)\s+(?:rounds?|rnds?)\s+(?:from\s+)?right\s+to\s+left)(?:\s*,?\s*(?:and\s+)?(?:ws|wrong[-\s]side|even(?:-numbered)?|purl)\s+rows\s+"
    r"(?:from\s+)?left\s+to\s+right)?"
)
_OVER_ROW = r"(?:around|across|to\s+end)(?:\s+(?:of\s+)?(?:the\s+)?(?:row|rnd|round)|\s+all\s+(?:sts|stitches))?"

CHARTS: tuple[Synonym, ...] = (
    # --- how it is called ---
    row("charted", r"\bchart(?:ed)?\s+(?:patt(?:ern)?|design|motif)\b(?!\s+rep)", "chart", "Work the charted pattern for 8 rounds."),
    row("chart", r"\b(?:the\s+)?(?:entire|whole|full|complete)\s+(?=(?:[a-z]+\s+)?chart\b)", "", "Work the entire chart."),
    row("chart", rf"{_BEFORE}({_WORD})\s+({_WORD})\s+chart\s+([a-z]|\d)(?=\W|$)(?!\s+(?:time|more|row|rnd|round))", r"\1 chart \2-\3-\4", "Work Rnds 1-4 of Upper Yoke Chart B."),
    row("chart", rf"{_BEFORE}({_WORD})\s+chart\s+([a-z]|\d)(?=\W|$)(?!\s+(?:time|more|row|rnd|round))", r"\1 chart \2-\3", "Work Rnds 1-4 of Yoke Chart B."),
    row("chart", rf"{_BEFORE}({_WORD})\s+({_WORD})\s+chart\b", r"\1 chart \2-\3", "Work Rnds 1-4 of Upper Yoke Chart."),
    row("chart", rf"{_BEFORE}({_WORD})\s+chart\b", r"\1 chart \2", "K3, work row 1 of Fern Chart to last 3 sts, k3."),
    # --- its size, and how often it stands in a round ---
    row("chart", rf"\bwork\s+({_C})\s*[(\[]\s*({N}\s+{ROUND})\s*(?:,|and|x)\s*(\d+)\s+sts\s+(?:per|in\s+(?:each|a|the))\s+repeat\s*[)\]]\s*,?\s*({N})\s+(?:times\s+(?:a?round)|repeats(?:\s+a?round)?){PAUSE}", r"work all \2 of \1, repeating the \3 sts \4 times around", "Work Chart fern (4 rnds, 6 sts per repeat) 8 times round."),
    row("chart", rf"\bwork\s+(?P<said>({_C})(?:\s+(?:once\s+more|again|as\s+before))?)\s*(?:,|-)?\s*(?:there\s+are\s+now|now\s+there\s+are|you\s+now\s+have|now\s+you\s+have|now|this\s+time(?:\s+there\s+are)?)\s+(?:with\s+)?({N})\s+repeats(?:\s+(?:a?round|in\s+(?:the|each)\s+r(?:ou)?nd))?{PAUSE}", r"work \2, repeating the pattern \3 times around", "Work Chart fern again, now there are 8 repeats.", spelt_out=True),
    row("chart", rf"\bwork\s+(?P<said>({_C})\s+(?:once\s+more|again)){PAUSE}", r"work \2", "Work Chart fern again.", spelt_out=True),
    # --- what is only said ---
    said_row_behind("rest|wait", r"((?:[*)]|\bto\s+end)\s*[.;,]?)\s*(?P<said>(?:here\s+)?(?-i:MC|CC\d?|[A-H])\s+(?:rests|waits|is\s+(?:not\s+(?:used|needed)|resting))(?:\s+(?:here|in\s+this\s+r(?:ou)?nd))?(?:\s*[,;]\s*(?:(?:carry|strand)\s+it(?:\s+(?:loosely|along|up))*|leave\s+it(?:\s+(?:hanging|behind))?)(?:\s+or\s+(?:cut|break)\s+it)?)?)\s*\.?\s*$", "Rnd 5: *1 B, 2 C, 3 B, 2 C*. Here A rests, carry it loosely or cut it."),
    said_row_behind(
        "chart",
        rf"(\b{_C}[^.;:]*?)\s*,?\s*(?P<said>\b(?:work|repeat)ing\s+(?:the\s+|each\s+)?(?:\d+[-\s]*(?:st|stitch|sts|stitches)\s+)?(?:rep(?:eat)?|patt(?:ern)?|motif|chart|\d+\s+(?:sts|stitches))?(?:\s+rep(?:eat)?)?\s*(?:{N}\s+times\s*)?(?:around|across)(?:\s+(?:the\s+)?(?:row|rnd|round))?){PAUSE}",
        "Work Rnds 1-4 of Chart fern, working the 6-st repeat 8 times around.",
    ),
    said_row_behind(
        "chart",
        rf"(\b{_C}[^.;:]*?)\s*,?\s*(?P<said>\b(?:work|repeat)ing\s+(?:the\s+|each\s+)?(?:\d+[-\s]*(?:st|stitch|sts|stitches)\s+)(?:(?:rep(?:eat)?|patt(?:ern)?|motif)(?:\s+rep(?:eat)?)?(?:\s+{N}\s+times)?|{N}\s+times)){PAUSE}",
        "Work Rnds 1-4 of Chart fern, working the 6-stitch repeat 8 times.",
    ),
    said_row_behind(
        "chart",
        rf"(\b{_C}[^.;:]*?)\s*,?\s*(?P<said>\b(?:(?:joining|adding|changing|using|carrying)\s+(?:in\s+)?(?:(?:new|the|both|contrast|contrasting)\s+)?(?:colou?rs?|cc\d?|mc|yarns?)(?:\s+and\s+cc\d?)?\s+)?as\s+(?:needed|necessary|required|indicated|shown|directed)){PAUSE}",
        "Work Rnds 1-4 of Chart fern, joining CC as needed.",
    ),
    said_row_behind(
        "chart",
        r"(^\s*|[.;:]\s*)(?P<said>(?:with|using)\s+(?:(?:mc|[a-z])\s+and\s+(?:cc\d?|[a-z])|both\s+(?:colou?rs|yarns)))\s*,\s*(?=(?:work|begin|follow)\b[^.;:]*\bchart\b)",
        "With MC and CC, work Rnds 1-4 of Chart fern.",
    ),
    said_row_behind("reading", rf"(\b{_C}[^.;:]*?)\s*,?\s*(?P<said>{_READING}){PAUSE}", "Work Chart fern, reading RS rows from right to left and WS rows from left to right."),
    said_row_behind("chart", rf"(\b{_C})\s*,\s*(?P<said>which\s+(?:goes|comes|is\s+(?:worked|repeated))\s+{N}\s+times\s+(?:round|around)(?:\s+the\s+(?:yoke|body|work))?){PAUSE}", "Work Chart fern, which goes 32 times round."),
    # --- rows of it by number ---
    row("first row|first rnd|first round", rf"\bwork\s+(?:the\s+)?first\s+({ROW})\s+of\s+(?={_C})", r"work \1 1 of ", "Rnd 1: Work the first row of Chart fern around."),
    row("complete|knit", rf"\b(?:complete|knit)\s+({_ROWS}\s+of\s+{_C})", r"work \1", "Complete Rows 1-4 of Chart fern."),
    row("work", rf"\bwork\s+the\s+({N}\s+(?:rounds|rnds|rows)\s+of\s+{_C})(?=\s*[.,;]|\s*$|\s+(?:once|twice|{N}\s+times)\b)", r"work all \1", "Work the 2 rounds of the chart."),
    row("rep", rf"\brep(?:eat)?\s+(?:the\s+|all\s+(?:the\s+)?)?({N}\s+{ROUND}\s+of\s+{_C})(?=\s+(?:until|for|{N}\s+(?:more\s+)?times)\b|\s+(?:once|twice)\b)", r"work all \1", "Rep the 2 rnds of Chart fern until work measures 30 cm."),
    row("then", rf"\bwork\s+({_C})\s*,?\s*({_ROWS})(?=\s+(?:once|twice|{N}\s+times)\s*,?\s*(?:and\s+)?then\b)", r"work \2 of \1", "Work Chart fern rows 1-2 three times, then row 1 once."),
    row("chart", r"\bwork\s+(?:the\s+)?\d+[-\s]st(?:itch)?\s+(chart)\s+rep(?:eat)?(?=\s+(?:to|around|across)\b)", r"work \1", "Next row: Work the 4-st chart repeat to last st, k1."),
    row("chart", rf"{_ON}({_C})\s+(?=until\s+(?:all|the)\s)", r"work \1 ", "Cont with Chart fern until all 2 rows have been worked."),
    row("chart", rf"(\b{_C})\s*,?\s*[(\[]\s*({_ROWS})\s*[)\]]", r"\1, \2", "Work Chart fern (Rnds 1-4)."),
    row("chart", rf"\b(?:follow(?:ing)?|using)\s+({_C})\s*,\s*work\s+({_ROWS})(?=\s*[.,;]|\s*$|\s+{N}|\s+(?:once|twice))", r"work \2 of \1", "Following Chart fern, work Rows 1-4."),
    row("chart", rf"\brep(?:eat)?\s+(?:the\s+)?({_ROWS}\s+of\s+{_C})", r"work \1", "Rep Rnds 1-4 of Chart fern 3 more times."),
    row("chart", rf"\brep(?:eat)?\s+({_C})(?=\s+(?:{N}\s+(?:more\s+)?times|until|for|twice|once)\b)", r"work \1", "Repeat Chart fern 3 more times."),
    row("chart", rf"\bwork\s+({N})\s+(?:vertical|complete|full)\s+rep(?:eat)?s\s+of\s+({_C})(?=\s*[.,;]|\s*$)", r"work \2 \1 times", "Work 3 vertical repeats of Chart fern."),
    row(
        "chart",
        rf"(\bof\s+({_C})(?:,?\s+(?:once|twice|{N}\s+(?:more\s+)?times?(?:\s+more)?|once\s+more))?)\s*[,;]?\s*(?:and\s+)?then\s+(?:(?:work|rep(?:eat)?)\s+)?({_ROWS})(?![\d-]|\s*-|\s+(?:of|to|through)\b)(?:\s+again)?",
        r"\1. work \3 of \2",
        "Work Rnds 1-4 of Chart fern twice, then Rnds 1-2 once more.",
        again=True,
    ),
    row(
        "chart",
        rf"(\bof\s+{_C}(?:,?\s+(?:once|twice|{N}\s+(?:more\s+)?times?(?:\s+more)?|once\s+more))?)\s*[,;]?\s*(?:and\s+)?then\s+(?:(?:work|rep(?:eat)?)\s+)?(?={_ROWS}\s+of\s+)",
        r"\1. work ",
        "Work Rnds 1-4 of Chart fern, then rnds 1-2 of Chart peak.",
    ),
    row("then", rf"(\bof\s+{_C}(?:,?\s+(?:once|twice|{N}\s+times))?)\s*,?\s*(?:and\s+)?then\s+(knit|purl)(?=\s+{N}\s+{ROUND})", r"\1. \2", "Work Rnds 1-2 of the Chart fern, then knit 2 rounds."),
    said_row_behind("chart", rf"(\bwork\s+{_ROWS}\s+of\s+{_C})\s+(?P<said>around|across)(?:\s+(?:the\s+)?(?:row|rnd|round))?{PAUSE}", "Work Rnds 1-4 of Chart fern around."),
    row("chart", rf"(\bchart\b[^.;:]*?)\s*,\s*end(?:ing)?\s+(?:with|after|on)\s+(?:an?\s+)?((?:rs|ws)\s+{ROUND})(?=\s*\.?\s*$)", r"\1. ends with a \2", "Work Rnds 1-4 of Chart fern, ending with a WS row."),
    # --- through a row of it ---
    row("chart", rf"{_ON}({_C})\s+(?:as\s+(?:set|established)\s+)?(?:through|(?:up\s+)?to\s+(?:the\s+)?end\s+of|up\s+to\s+and\s+including)\s+{ROW}\s+(\d+)(?:\s+{_DONE})?{PAUSE}", r"work \1 through row \2", "Continue working Chart fern through Rnd 4."),
    row("chart", rf"{_ON}({_C})\s+(?:as\s+(?:set|established)\s+)?(?:until|till)\s+(?:you\s+have\s+(?:worked|completed)\s+)?{ROW}\s+(\d+)\s+{_DONE}{PAUSE}", r"work \1 through row \2", "Continue with chart until Rnd 4 is complete."),
    row("chart", rf"{_ON}({_C})\s*,\s*ending\s+(?:with|after)\s+{ROW}\s+(\d+)(?:\s+of\s+(?:the\s+)?chart)?(?=\s*\.?\s*$)", r"work \1 through row \2", "Work Chart fern, ending with Rnd 4."),
    row("chart", rf"{_ESTABLISHED}\s+(?:through|(?:up\s+)?to\s+(?:the\s+)?end\s+of|(?:until|till)(?=[^.;]*{_DONE}{PAUSE}))\s+{ROW}\s+(\d+)\s+of\s+({_C})(?:\s+{_DONE})?{PAUSE}", r"work \2 through row \1", "Work as established through Rnd 4 of Chart fern."),
    row("chart", rf"(\b{_C})\s+(?:until|till)\s+(?:it\s+{_DONE}|all\s+{ROUND}\s+of\s+(?:the\s+)?chart\s+{_DONE}){PAUSE}", r"\1 until chart is complete", "Work Chart fern until it is complete."),
    row("chart", rf"((?:^|[.;:,])\s*(?:and\s+)?)(?:begin(?:ning)?|start(?:ing)?)\s+(?:to\s+work|work(?:ing)?|knitting|to\s+follow|following|with)?\s*(?:from\s+)?({_C})(?=\s*\.?\s*$|\s*\.\s)", r"\1begin \2", "Begin working Chart fern."),
    # --- so many rows of it ---
    row("chart", rf"\b(?:work|knit)\s+({N}\s+(?:more\s+)?{ROUND})\s+(?:from|of|in|following)\s+({_C})(?=\s*\.?\s*$)", r"work \2 for \1", "Work 8 rnds from Chart fern."),
    row("chart", rf"\b(?:following|using)\s+({_C})\s*,\s*work\s+(?:for\s+)?({N}\s+(?:more\s+)?{ROUND})(?=\s*\.?\s*$)", r"work \1 for \2", "Following Chart fern, work 8 rnds."),
    row("chart", rf"\b(?:work|knit(?=\s+(?:the\s+)?patt)|cont(?:inue)?)\s+(?:(?P<said>in\s+(?:st\s+st|stockinette(?:\s+st(?:itch)?)?|fair\s+isle|stranded\s+(?:colou?rwork|knitting)))\s+(?:from|following)|(?:in\s+)?(?:the\s+)?patt(?:ern)?\s+(?:from|following|after|according\s+to)|from|following)\s+(?={_C}(?:\s*[.,;]|\s*$|\s+(?:for|until|through)\b))", "work ", "Work in St st following Chart fern for 8 rnds.", spelt_out=True),
    row("chart", rf"\b(?:follow|(?:beg(?:in(?:ning)?)?|start(?:ing)?)(?:\s+work(?:ing)?)?(?:\s+from)?(?!\s+{_C}\s*(?:\.|$))|work(?:ing)?\s+from)\s+(?={_C})", "work ", "Follow chart for 8 rnds."),
    # --- over a part of the row ---
    row("chart", rf"(:\s*work\s+(?:{ROW}\s+\d+\s+of\s+)?{_C})\s+(?P<said>{N}\s+times\s+(?:around|across))(?:\s+(?:the\s+)?(?:row|rnd|round))?(?=\s*\.?\s*$)", r"\1 to end", "Next rnd: Work rnd 1 of Chart fern 8 times around.", spelt_out=True),
    row("chart", rf"\b(?:beg(?:in(?:ning)?)?|start(?:ing)?)\s+(?:with|on|at)\s+{ROW}\s+(\d+)\s*,\s*work\s+({_C})(?=\s+(?:over|across|to)\b)", r"work \2, round \1", "Next rnd: K3, beg with rnd 1, work Chart fern over next 20 sts, k to end."),
    row("chart", rf"\bwork\s+(?:across\s+)?{ROW}\s+(\d+)\s+of\s+({_C})(?=\s+(?:over|across|to|between|around)\b|\s*[,;]\s*(?:and\s+)?{_STITCH}(?=\W|$))", r"work \2, round \1", "K3, work rnd 1 of chart across next 20 sts, k to end."),
    row("chart", rf"([,;:*]\s*(?:and\s+|then\s+)?)work\s+(?:across\s+)?{ROW}\s+(\d+)\s+of\s+({_C})(?=\s*\.?\s*$)", r"\1work \3, round \2", "Next rnd: K3, pm, work rnd 1 of chart fern."),
    row("chart", rf"(\b{_C}(?:,\s*round\s+\d+)?)\s+across\s+(?=(?:the\s+)?next\s+\d|to\b|\d)", r"\1 over ", "K3, work chart across next 20 sts, k to end."),
    row("chart", rf"(\b{_C}(?:,\s*round\s+\d+)?)\s+over\s+(?=to\b)", r"\1 ", "K3, work chart across to last 3 sts, k3."),
    row("chart", rf"(:\s*(?:\*\s*)?(?:work\s+)?{_C}(?:,\s*round\s+\d+)?)\s+{_OVER_ROW}(?=\s*\.?\s*$)", r"\1 to end", "Next rnd: Work Chart fern around."),
    row("chart", rf"(:\s*)\*\s*(work\s+{_C}(?:,\s*round\s+\d+)?)\s*[,;]\s*rep(?:eat)?\s+from\s+\*\s+{_OVER_ROW}(?=\s*\.?\s*$)", r"\1\2 to end", "Next rnd: *Work Chart fern; rep from * around."),
    row("chart", rf"\bwork\s+(?:the\s+)?(\d+)[-\s]?st(?:itch)?\s+rep(?:eat)?\s+of\s+({_C})", r"work \2 over \1 sts", "Rnd 1: *Work 12-st rep of Chart fern; rep from * around."),
    row("chart", rf"\bwork\s+(?:the\s+)?(?:next\s+)?(\d+)\s+(?:sts|stitches)\s+(?:of|from|in|following)\s+({_C})(?=\s*[,;)\]]|\s*\.?\s*$)", r"work \2 over \1 sts", "Rnd 1: *Work 12 sts of Chart fern; rep from * around."),
    row("chart", rf"((?<![.\w])\s*(?:work\s+)?(?:next\s+round\s+of\s+)?{_C}(?:,\s*round\s+\d+)?)(?=\s*[,;]\s*(?:and\s+|then\s+)?{_STITCH}(?=\W|$))", r"\1 to fill", "P2, work Chart fern, p2."),
    row("chart", rf"(\b{_STITCH}\s*[,;]\s*(?:and\s+|then\s+)?work\s+(?:next\s+round\s+of\s+)?{_C}(?:,\s*round\s+\d+)?)(?=\s*\.?\s*$)", r"\1 to end", "Next rnd: K3, work Chart fern."),
)
"""The rows, in the order tried."""
