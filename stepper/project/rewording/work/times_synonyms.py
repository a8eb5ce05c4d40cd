"""Other wordings for how often rows and rounds are worked: "only", "in all", "over and over", "once more". No I/O.

A second number of rows behind a repeat ("14 more times - 30 rows total") becomes a sentence of its own, which
is checked. "Only" says that no other row is worked between, which is what the row's own number says; it is
silent. Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

from stepper.project.rewording.synonym import ROUND, STS, N, Synonym, row

_GO_ON = r"(?:keep(?:\s+on)?|cont(?:inue)?|carry\s+on|go\s+on)"
_SPAN = rf"{ROUND}\s+\d+(?:\s*(?:-|–|and|&|to)\s*\d+)?"
_THESE = rf"(?:(?:these|those|the\s+last|last)\s+(?:{N}\s+)?{ROUND})"
_ROWS = rf"(?:{_SPAN}|{_THESE})"
_OFTEN = rf"(?:{N}\s+(?:more\s+)?times(?:\s+more)?|once(?:\s+more)?|twice(?:\s+more)?)"
_TOTAL = r"(?:in\s+(?:all|total)|altogether|all\s+told|total)"
_START = r"(^\s*|[.!;]\s*|,?\s*(?:and\s+)?then\s+)"
_HAVE = r"(?:there\s+are|you(?:\s+have|'ve)(?:\s+got)?)"
_SIGN = r"\s*[-:=;,]+\s*"

TIMES: tuple[Synonym, ...] = (
    row("these|last ", rf"(^\s*|[.!;]\s+)(?={_THESE}\s+{_OFTEN})", r"\1work ", "These 2 rnds 4 times."),
    row("the ", rf"{_START}(?:work|knit|do)\s+the\s+(?=(?:[2-9]|1\d|two|three|four|six|eight)\s+{ROUND}\s+{_OFTEN})", r"\1work these ", "Work the 2 rnds eight times."),
    row(
        "repeat",
        rf"{_START}{_GO_ON}\s+(?:to\s+)?repeat(?:ing)?\s+(?={_ROWS}\s[^.;]*?\b(?:until|times|once|twice)\b)",
        r"\1rep ",
        "Keep repeating rows 1 and 2 until there are 60 sts.",
    ),
    row(
        "over and over|continuously|again and again",
        rf"(\b(?:rep(?:eat)?|do|work)\s+{_ROWS})\s*,?\s+(?:over\s+and\s+over(?:\s+again)?|again\s+and\s+again|continuously)\s*,?\s+(?=until\b|for\b)",
        r"\1 ",
        "Rep rnds 1 and 2 over and over until there are 60 sts.",
    ),
    row(
        "do ",
        rf"{_START}(?:then\s+|now\s+)?do\s+(?={_SPAN}\s*(?:,?\s+(?:{_OFTEN}|{N}\s+times|a\s+total\s+of|until|in\s+(?:that|this)\s+order)\b|\.?\s*$))",
        r"\1work ",
        "Do rnds 1 and 2 three times in all.",
    ),
    row(
        "do ",
        rf"{_START}do\s+(?={_THESE}\s+(?:until|a\s+total\s+of|{N}\s+times\s+{_TOTAL}|once\s+more|twice\s+more)\b)",
        r"\1rep ",
        "Do these two rows 4 times altogether.",
    ),
    row(
        "altogether|in all|in total",
        rf"(\b{_ROWS})\s*,?\s+(?:altogether|in\s+all|in\s+total)\s+({N})\s+times\b",
        r"\1 \2 times in all",
        "Work rnds 1 to 8 altogether 4 times.",
    ),
    row("all told", rf"(\b{N}\s+times)\s*,?\s+all\s+told\b", r"\1 in all", "Work rnds 1 and 2 three times all told."),
    row(
        "worked",
        rf"(\b(?:rep(?:eat)?|work)\s+{_ROWS})\s*,?\s+until\s+(?:you(?:\s+have|'ve)\s+(?:worked|done|knitted)\s+(?:them|these)|(?:they|these|these\s+{ROUND})\s+have\s+been\s+(?:worked|done|knitted))\s+"
        rf"(?:a\s+total\s+of\s+)?({N})\s+times(?:\s+{_TOTAL})?(?=\s*[.:;,(]|\s*$)",
        r"\1 \2 times in all",
        "Rep rows 1 and 2 until you have worked them 12 times in all.",
    ),
    row(
        "until",
        rf"(\b{_ROWS}\s+{N}\s+times(?:\s+(?:{_TOTAL}|more))?)\s*,\s*until\s+{_HAVE}\s+({N}\s+{STS})(?=\s*[.(]|\s*$)",
        r"\1. \2",
        "Work rows 1 and 2 4 times in total, until you have 18 sts.",
    ),
    # --- only ---
    row(
        "only",
        rf"(\b(?:work|rep(?:eat)?|then)\s+)only\s+(?={_SPAN}\s+(?:until|{_OFTEN}|another|{N}\s+times)\b)",
        r"\1",
        "Work only rnd 1 3 times.",
    ),
    row(
        "only",
        rf"(\b{_SPAN})\s+only\s*,?\s+(?=(?:until|{_OFTEN}|another|{N}\s+times|every\s+(?:row|rnd|round))\b)",
        r"\1 ",
        "Work rnd 1 only, 3 times.",
    ),
    row(
        "times|once|twice",
        rf"(\b(?:work|rep(?:eat)?)\s+{_ROWS}\s+{N}\s+times\s+{_TOTAL})\s+and\s+(?={_SPAN}\s+{_OFTEN})",
        r"\1, then ",
        "Work rows 1-6 five times in total and rows 1-3 once more.",
    ),
    row(
        "then|and",
        rf"(^\s*|[.!]\s*)(work\s+{_SPAN})\s*,?\s*(?:and\s+)?then\s+(?:(?:rep(?:eat)?|work)\s+)?({_SPAN})\s+(?:once\s+more|again|once)(?=\s*[.]|\s*$)",
        r"\1\2 once, then \3 once",
        "Work rows 1-2, then row 1 once more.",
    ),
    row(
        "until",
        rf"(\b(?:rep|repeat|work)\s+{_ROWS}\s+until\s+[^.;]*?{STS}(?:\s+(?:rem(?:ain)?|are\s+left))?)\s*,?\s*(?:and\s+)?then\s+(?:(?:work|rep(?:eat)?)\s+)?({_SPAN}\s+until\s+(?:{_HAVE}\s+)?{N})(?:\s+{STS})?",
        r"\1. rep \2 sts",
        "Work these 2 rnds until you have 28 sts, then rnd 1 until you have 16.",
    ),
    # --- counts of rows behind ---
    row(
        "total|worked|in all|altogether| row| rnd| round",
        rf"(\b(?:rep(?:eat)?|work)\s+[^.;:]*?(?:\btimes(?:\s+more)?|\bonce\s+more|\btwice\s+more)){_SIGN}({N}\s+{ROUND})(?:\s+(?:{_TOTAL}|(?:have\s+been\s+)?worked(?:\s+{_TOTAL})?))?(?=\s*[.,]|\s*$)",
        r"\1. \2",
        "Repeat these 2 rows 14 more times: 30 rows total.",
    ),
    row(
        "twice more",
        rf"(\brep(?:eat)?\s+{_SPAN}\s+)twice\s+more\s*[.:;-]\s*({N}\s+{STS})\s*,\s*(?:and\s+)?then\s+({N}\s+{STS})",
        r"\1once more. \2. \1once more. \3",
        "Rep Rows 1-8 twice more. 205 sts, then 221 sts.",
    ),
    # --- one more ---
    row("another", r"\b(knit|purl)\s+another\s+(round|rnd|row)\b", r"\1 1 \2", "Purl 1 row, knit 1 row, purl another row."),
    row(
        "for a total of",
        rf"{_START}(?:work|rep(?:eat)?)\s+((?:the\s+)?[a-z][a-z'-]*(?:\s+[a-z][a-z'-]*)?\s+(?:rnd|round|row))\s+for\s+a\s+total\s+of\s+({N})\s+{ROUND}(?=\s*[.,]|\s*$)",
        r"\1rep \2 \3 times in all",
        "Work rib rnd for a total of 18 rnds.",
    ),
    row(
        "removing",
        rf"(^\s*|[.]\s*)((?:knit|purl)\s+{N}\s+{ROUND})\s*,\s*removing\s+(?:(?:all|any|the)\s+)*markers?\s+on\s+(?:the\s+)?first\s+(?:one|row|rnd|round|of\s+(?:these|them))",
        r"\1remove markers. \2",
        "Knit 4 rows, removing any markers on the first row.",
    ),
    # --- all worked ---
    row(
        "every|each",
        r"\buntil\s+(?:every|each)\s+((?:heel|flap|gusset|side)\s+)?(?:st|stitch)\s+has\s+been\s+(worked|used(?:\s+up)?)\b",
        r"until all the \1sts have been \2",
        "Rep rows 3 and 4 until every heel st has been worked. 20 sts remain.",
    ),
    row(
        "used up",
        rf"\buntil\s+you(?:'ve|\s+have)\s+used\s+up\s+all\s+(?:of\s+)?the\s+((?:heel|flap|gusset|side)\s+)?{STS}",
        r"until all the \1sts are used up",
        "Rep rows 3 and 4 until you have used up all the heel stitches. 16 sts.",
    ),
)
"""The rows, in the order tried."""
