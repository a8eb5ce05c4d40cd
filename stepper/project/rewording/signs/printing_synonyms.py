"""Other wordings by whole classes: what a page says beside the work, and signs lost or doubled in print. No I/O.

A remark is told by how it begins (for what, so that what, what it will look like), not by its words: they are
looked through for instructions, and the line is refused where they may hold one.
"""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import LONG, OFF, ROUND, STS, N, Synonym, row

_NTH = r"\d{1,2}(?:st|nd|rd|th)"
_NDLS = r"(?:needles?|dpns?)"
_MM = r"\d{1,2}(?:\.\d+|[¼½¾])?"
_FABRIC = r"(?:the\s+)?(?:stockinette|stocking\s+st|st\.?\s?st\b|patt(?:ern)?\b|rib\b|ribbing|garter|seed\s+st|moss\s+st|established)"
_BE = r"(?:be|look|curl|roll|lie|seem|appear|feel|stretch|fold|flare|pull|help|keep|allow|give|create|become)"
_NOT_WORK = r"(?![^.]*\b(?:work\w*|knit\w*|turn\w*|join\w*|held|hold|repeat\w*|patt\w*|flat|side|facing|same)\b)"
_HELD = (
    r"(?:(?:the|all|both|side|centre|center|front|neck|button|lace|cable|cabled|(?:garter|moss|seed|g)\.?(?:\s*st(?:itch)?\.?)?|double|rope|braid)\s+)*"
    r"(?:patt(?:ern)?s?|lace|cables?|panels?|ribs?|ribbing|fabric|stripes?|borders?|edgings?|edges|edge\s+st(?:itche)?s|bands?|bobbles?|(?:moss|seed|garter|g|st|stocking)\.?\s*st(?:itch)?)\b\.?"
)
_KEPT = (
    rf"(?:(?:still\s+)?(?:(?:keeping|maintaining)\s+(?:{_HELD}(?:\s*(?:,|and|&)\s*{_HELD})*)\s+(?:correct|right|straight|in\s+order|continuous|as\s+(?:set|established|before)|in\s+place)"
    rf"|keeping\s+(?:to\s+)?(?:the\s+)?continuity\s+of\s+(?:{_HELD}(?:\s*(?:,|and|&)\s*{_HELD})*)(?:\s+correct)?"
    r"|keeping\s+(?:in|to)\s+(?:the\s+)?patt(?:ern\b|\b\.?)|maintaining\s+(?:the\s+)?patt(?:ern)?)(?:\s+(?:throughout|all\s+the\s+time|as\s+far\s+as\s+possible))?)"
)
"""Ways to say that a shaping goes on in pattern."""
_AT_ENDS = rf"(?:{OFF}|dec|inc|bo)\b(?=[^.;:*]*\b(?:ends?|beg|beginning|edges?|sides?)\b)"
"""How a shaping begins that falls on the ends of rows, which go on in pattern anyway."""
_PURPOSE = r"(?:so\s+(?:that|as\s+to)|thus|thereby|in\s+order\s+to|to\s+(?:avoid|prevent|form|create|ensure|hide|neaten|tidy|tighten))"

SPELLINGS: tuple[Synonym, ...] = (
    # --- signs and spellings ---
    row("til", r"(?<![\w'])'?till?\b", "until", "Knit every rnd till piece measures 14 cm."),
    row("pat", r"\bpat\b(?!'|\s+(?:dry|out|into|to\s+(?:size|shape|(?:the\s+)?(?:finished\s+)?meas))\w*)", "patt", "Work 8 rows in pat."),
    row("y o", r"\by\s+o\b", "yo", "Row 3: K 4, y o, k 2 tog, k to end."),
    row("bind|cast", r"\b(?:bind\s*(?:\(\s*cast\s*\)|/\s*cast)|cast\s*(?:\(\s*bind\s*\)|/\s*bind))\s+off\b", "bind off", "Bind (cast) off 3 sts at beg of next 2 rows."),
    row("stocking", r"\bstockinette\s*[(/]\s*stocking\s*\)?\s*(?=st)", "stockinette ", "Work 6 rows in stockinette (stocking) stitch."),
    row("- |• |· |» |› ", r"^\s*[-•·»›]\s+(?=[kp*(\[]|[a-z]+(?:\s[a-z]+)?:|(?:change|work|cont(?:inue)?|rep(?:eat)?|join|bo|co|bind|cast|dec(?:rease)?|inc(?:rease)?|place|slip|with|using|break|cut|next|rows?|rnds?|rounds?|\d+(?:st|nd|rd|th)|turn|divide|return|at)\b)", "", "- K to last 3 sts, k2tog, k1."),
    row("foll", rf"^\s*foll(?:owing)?\s+({ROUND})\s*:", r"Next \1:", "Following row: K to end."),
    row("facing", r"\(\s*(?:rs|right\s+side)\s+facing\s*\)\s*(?=:)", "(RS)", "Next row (right side facing): K to end."),
    row("facing", r"\(\s*(?:ws|wrong\s+side)\s+facing\s*\)\s*(?=:)", "(WS)", "Next row (wrong side facing): P to end."),
    row("as", rf"(\brows\s*:\s*)as\s+({_NTH})\s+and\s+({_NTH})(?:\s+rows)?(?=\s*\.|\s*$)", r"\1Repeat \2 and \3 rows", "3rd and 4th rows: As 1st and 2nd."),
    row("as", rf"(\brows\s*:\s*)as\s+({_NTH})\s+and\s+({_NTH})\s+rows\s+({N})\s+times(?:\s+more)?(?=\s*\.|\s*$)", r"\1Repeat \2 and \3 rows \4 times", "5th to 10th rows: As 3rd and 4th rows 3 times more."),
    row("alternately", r"(\([^()]*\))\s*,?\s+(?P<said>alternately)\s+across", r"\1 across", "2nd row: (P1, k1) alternately across.", spelt_out=True),
    said_row_behind("facing", r"(\brep(?:eat)?\s+(?:the\s+)?(?:last|these)\s+[^,.;]*?(?:times|more|once|twice))\s*,?\s*(?P<said>ending\s+with\s+(?:the\s+)?(?:rs|ws|right\s+side|wrong\s+side)\s+facing(?:\s+for\s+(?:the\s+)?next\s+row)?)", "Rep last 2 rows 5 more times, ending with RS facing for next row."),
    # --- needles; no table of numbers has these halves, so they are millimetres ---
    row("to no|cm no|cm needle no", r"\b((?:change|switch)\s+(?:back\s+)?to\s+)(?P<said>\d{2,3}\s*cm\s+(?:(?:circular\s+)?needle\s+)?)?no\.?\s?(\d{1,2}(?:\.5)?)(?!\.?\d|\s?[/½]|\s*mm)(?=\s*[.,;]|\s*$|\s+and\b)", r"\1no. \3 needles", "Change to no 4.5 and knit 1 rnd."),
    row("stocking st", r"\bstocking\s+st\.?(?=\s*\.?\s*$|\s*,)", "stocking stitch", "Change to No. 10 needles and stocking st."),
    row("½|1/2", rf"\b((?:(?:circular|double[-\s]pointed)\s+)?{_NDLS})\s+(?:size\s+)?no\.?\s?([3-9])\s?(?:½|1/2)(?![\d/]|\s*mm)", r"\2.5 mm \1", "Change to needle no. 4½."),
    row("½|1/2|.5", rf"\b(?:no\.?\s?)?([3-9])(?:\.5|\s?(?:½|1/2))\s+(?=(?:(?:circular|double[-\s]pointed)\s+)?{_NDLS}\b)", r"\1.5 mm ", "Change to no. 4½ needles."),
    row("mm", rf"\b(?:us\s+|uk\s+)?(?:size|no\.?)\s*\d+(?:\.\d+)?\s*\(\s*({_MM})\s*mm\s*(?:/\s*(?:uk|us)\s*\d+\s*)?\)\s*(?=needles?\b|dpns?\b|circ)", r"\1 mm ", "Change to size 6 (4mm/UK8) needles."),
    row("circ", r'(\bsize\s+\d+(?:\.\d+)?)\s*,\s*(?P<said>\d+(?:"|[\s-]*(?:inch|in|cm)))\s+(?=circ)', r"\1 ", 'With size 8, 16" circular needle, CO 56 sts.', spelt_out=True),
)  # fmt: skip
"""The rows that come before all others, in the order tried: the other tables know the word meant."""

PRINTING: tuple[Synonym, ...] = (
    # --- stars and brackets ---
    row("*", r"(?<![\w*])\*\s*(\([^()*]+\))\s*,?\s*(?=(?:around|across|to\s+(?:the\s+)?end)\b[^*]*$)", r"\1 ", "Rnd 3: *(P2, k6, p2, k2), around."),
    row("have", rf"\(\s*(?:you\s+)?(?:(?:should|will|now)\s+){{1,2}}have\s+({N}\s+{STS})\s*\)", r"(\1)", "*K6, k2tog* around (should have 28 sts)."),
    row("slip|sl ", r"\b(?:slip|sl)\s+(?:the\s+)?(?:1st|first)\s+(?:st|stitch)\s*,", "sl 1,", "Row 1: Slip the first stitch, knit to end."),
    # --- manners and places ---
    row("further", rf"\bfor\s+(?:a\s+)?further\s+(?={N}\s+{ROUND}|{LONG})", "for ", "Work in k2, p2 rib for a further 12 rows."),
    row("you have", rf"\buntil\s+you\s+have\s+(?={LONG}\s*(?:[.,;]|$))", "until piece measures ", "Knit until you have 6 inches."),
    row("then", r",\s*and\s+then\s+(?=on\b|every\b|each\b)", ", then ", "Dec 1 st at each end of next 3 rows, and then on foll 2 alt rows."),
    row("then rem", rf"(\b{OFF}\s+[^.;:]*\brows)\s*,?\s*then\s+(?:the\s+)?(?=rem\w*\s+{N}\s+{STS})", r"\1. Bind off ", "Cast off 4 sts at beg of next 2 rows, then rem 14 sts."),
    row("knit", rf"\bknit\s+({N}\s+{ROUND})\s+in\s+(?={_FABRIC})", r"work \1 in ", "Cast on 20 sts and knit 5 rows in stockinette."),
    row("as", r"^\s*work\s+(?:1|one)\s+(?:rnd|round)\s+as\s*:?\s*(?=\()", "", "Work 1 rnd as (p1, k8, p1, k2) around."),
    said_row_behind("keeping|maintaining", rf"^(\s*(?:[a-z][a-z ]{{1,30}}:\s*)?)(?P<said>{_KEPT})\s*,?\s*(?={_AT_ENDS})", "Keeping patt correct, cast off 3 sts at beg of next row."),
    said_row_behind("keeping|maintaining", rf"^(\s*{_AT_ENDS}[^.;:*]*?)\s*,\s*(?P<said>{_KEPT})\s*\.?\s*$", "Cast off 3 sts at beg of next 2 rows, keeping continuity of pattern."),
    row("keeping|maintaining", rf"^\s*{_KEPT}\s*,\s*(?:work|cont(?:inue)?)\s+(?:in\s+patt(?:ern)?\.?\s+|even\s+|straight\s+|without\s+(?:further\s+)?shaping\s+)?(?=until\b|for\b)", "work in pattern ", "Keeping pattern correct, work until armhole measures 20 cm."),
    row("keeping|maintaining", rf"^\s*{_KEPT}\s*,\s*(?:work|cont(?:inue)?)\s+(?:in\s+patt(?:ern)?\.?\s+|even\s+|straight\s+|without\s+(?:further\s+)?shaping\s+)?(?={N}\s+(?:more\s+)?rows?\s*(?:\.|$))", "work in pattern for ", "Keeping pattern correct, work 6 rows."),
    said_row("keeping", r"^\s*(?P<said>keeping\s+(?:the\s+)?(?:neck|armhole|side|front|raglan|other)\s+edges?\s+(?:straight|even))\s*,\s*", "Keeping neck edge straight, work 4 rows."),
    # --- remarks, told by how they begin ---
    row("(", r"\s*\(\s*(?P<said>(?:for|see|so\s+that|to\s+(?:avoid|prevent|form|create)|this\s+(?:is|will|forms|makes)|these\s+(?:are|will))\s+[a-z][a-z' -]*)\)", "", "Next row: Rib 12, cast off 8 sts (for pocket opening), rib to end."),
    row("so |thus|thereby|order|to ", rf"\s*,?\s+(?P<said>{_PURPOSE}\b[^.;:,*\d()]*)(?=\s*[.]?\s*$)", "", "Cast off 8 sts, rib to end, to form pocket opening."),
    row("will|should|may|can", rf"^\s*(?P<said>(?:this|these|those|it|they|your\s+\w+|the\s+(?:\w+\s+){{1,3}}?)\s*(?:will|should|may|can)\s+(?:now\s+)?{_BE}\b(?!\s+(?:now\s+)?(?:put|held|set|cut|wound|drawn|[a-z]+ed|[a-z]+en)\b){_NOT_WORK}[^.:;*\d]*)\.?\s*$", "", "These will be the thumb stitches."),
)  # fmt: skip
"""The rows that come after all others, in the order tried."""
