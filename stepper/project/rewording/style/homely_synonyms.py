"""Other wordings of pages that knitters write for each other: short heads, abbreviations told twice. No I/O."""

from __future__ import annotations

from stepper.craft.stitch_patterns import KNOWN, RIB
from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import LONG, OFF, ROUND, STS, N, Synonym, row

_EDGE = r"(?:(?:lower|bottom|upper|top|neck|cuff|sleeve)\s+edge|bottom|top|hem|cuff|wrist|ankle|brim|toe|crown|welt|waist)"
_SHAPED = r"(?:the\s+)?(?:1st|first|commencement|beginning|start)\s+(?:row\s+)?of\s+(?:the\s+)?armhole\s+shaping"

HOMELY: tuple[Synonym, ...] = (
    # --- numbers of rows and abbreviations, as typed ---
    row(
        "&",
        r"^(\s*(?:row|rnd|round)s?\s+\d+(?:\s*,\s*\d+)*)(?:\s*,\s*&\s*|\s*&)(?=\d)",
        r"\1 and ",
        "Rows 2,3,&4- Purl.",
    ),
    row(
        "(rs)|(ws)",
        r"^(\s*(?:row|rnd|round)s?\s+[\d\s,]+(?:(?:and|&)\s+\d+)?)\s*-\s*(\((?:rs|ws)\))\s*:?\s*",
        r"\1 \2: ",
        "Row 1- (rs) k2, *yo, k2tog; rep from * to end.",
    ),
    row("tog", r"\b([kp])\s+([23])tog\b", r"\1\2tog", "K 2tog, k to end."),
    row(
        "(pm|(sm|(slm|(place|(slip",
        r"\b((?:place|slip)\s+(?:a\s+|the\s+)?marker|pm|sm)\s*\(\s*(?:pm|sm|slm|(?:place|slip)\s+(?:a\s+|the\s+)?marker)\s*\)",
        r"\1",
        "K10, place marker (pm), k to end.",
    ),
    row("stst|st-st", r"\bst-?st\b", "st st", "Work four rows of stst."),
    row("gtst|gst|g-st", r"\b(?:gt?st|g-st)\b", "garter st", "Work 8 rows in gtst."),
    row(
        "every s",
        r"^((?:[^:]*:)?\s*)(k|p|knit|purl)\s+every\s+(?:st|stitch)(?=\s*\.?\s*$)",
        r"\1\2",
        "Round 2: Knit every stitch.",
    ),
    row(
        "between",
        r"\*\s*([^*]+?)\s*\*\s*[,;]?\s*rep(?:eat)?\s+between\s+\*\s*['\u2019]?s\b",
        r"*\1; rep from * to end",
        "Round 1: *K8, k2tog*, repeat between *'s.",
    ),
    row(
        "1st",
        rf"\b(to|until|within)\s+1st\s+(?={STS}\s+before\b)",
        r"\1 1 ",
        "K to 1st st before marker, m1, k to end.",
    ),
    row("incl", rf"({ROUND}\s+\d+\s*-\s*\d+)\s+incl(?:usive)?\b\.?", r"\1", "Rep rows 1-2 incl. once more."),
    # --- casting on and joining ---
    said_row(
        "starting at|beginning at|commencing at",
        rf"(?P<said>(?:starting|beginning|commencing)\s+at\s+(?:the\s+)?{_EDGE})\s*,?\s*(?=(?:cast\s+on|co|with|using)\b)",
        "Starting at lower edge, cast on 20 sts.",
    ),
    row(
        "twisted",
        rf"\bbeing\s+careful\s+that\s+(?:the\s+)?{STS}\s+are\s+not\s+twisted(?:\s+on\s+(?:the\s+)?needles?)?",
        "being careful not to twist",
        "Join in the round, being careful that sts are not twisted on needle.",
    ),
    said_row_behind(
        "circular knitting",
        r"(\bjoin\s+in(?:to)?\s+(?:the\s+)?(?:rnd|round))\s+(?P<said>for\s+circular\s+knitting)",
        "Join into round for circular knitting.",
    ),
    row("amongst", r"\bamongst\b", "among", "Divide sts evenly amongst 3 needles."),
    # --- rows that go on ---
    said_row(
        "as follows",
        rf"\s*(?:,|\band\b)?\s*(?P<said>work\s+as\s+follows|(?:then\s+)?(?:work|knit|cont(?:inue)?|proceed)\s+in\s+(?:the\s+)?(?:rib(?:bing)?|patt(?:ern)?|{RIB}|{KNOWN})\s+(?:as\s+follows|thus|like\s+this))\s*[:.]?\s*$",
        "Change to 3.25 mm needles and work as follows",
    ),
    row(
        "then",
        rf"({OFF}\s+{N}\s+{STS}\s+at\s+(?:the\s+)?beg(?:inning)?\.?\s+of\s+(?:each\s+of\s+)?(?:the\s+)?next\s+{N}\s+rows)\s*[,;]\s*(?:and\s+)?then\s+(?=(?:dec|inc)(?:rease)?\.?\s+{N}\s+{STS}\.?\s+(?:at\s+)?)",
        r"\1. ",
        "Bind off 3 sts at the beginning of the next 2 rows, then decrease 1 st at each end every other row twice.",
    ),
    row(
        "there remain",
        rf"\buntil\s+there\s+remain\s+({N})\s+{STS}",
        r"until \1 sts remain",
        "Dec 1 st at each end of every row until there remain 14 sts.",
    ),
    row(
        "the rem",
        rf"\b({OFF})\s+(?P<said>for\s+(?:the\s+)?(?:back\s+of\s+(?:the\s+)?neck|back\s+neck|neck|shoulder))\s+(?=the\s+rem(?:aining)?\s+{N}\s+{STS})",
        r"\1 ",
        "Bind off for back of neck the remaining 20 sts.",
        spelt_out=True,
    ),
    row(
        "rep",
        rf"^(\s*)rep(?:eat)?\s+(?=until\s+{N}\s+{STS}\s+(?:rem|remain)\b)",
        r"\1rep these rows ",
        "Repeat until 12 sts remain.",
    ),
    row(
        "on these",
        rf"^(\s*)cont(?:inue)?\s+(?:working|to\s+work)\s+on\s+these\s+({N}\s+{STS})(?:\s+only)?(?=\s*\.?\s*$)",
        r"\1\2",
        "Continue working on these 20 sts.",
    ),
    row(
        "next",
        r"^(\s*next\s+(?:row|rnd|round)\s*(?:\((?:rs|ws)\))?\s*:\s*work)\s+(?:even|straight)\s+(?=in\b)",
        r"\1 ",
        "Next row: Work even in seed st.",
    ),
    row(
        "gather",
        r"\bgather\s+(?=(?:the\s+)?rem(?:aining)?\s+(?:sts|stitches))((?:the\s+)?rem(?:aining)?\s+(?:sts|stitches))\s+tog(?:ether)?\s+and\s+close\s+(?:the\s+)?top\b",
        r"draw yarn through \1 and pull tight",
        "Gather remaining sts tog and close top.",
    ),
    row(
        "**",
        rf"(\bfrom\s+(\*{{2,4}})\s+to\s+\2\s+(?:{N}\s+times|once|twice)(?:\s+more)?)\s*,\s*then\s+(rows?\s+\d+(?:\s*-\s*\d+)?)\s+(?=once\b|twice\b|{N}\s+times)",
        r"\1. work \3 ",
        "Rep from ** to ** twice, then rows 1-2 once.",
    ),
    # --- lengths ---
    row(
        "more",
        r"\bfor\s+([\u00bc\u00bd\u00be\u215b-\u215e]\s*(?:\"|in(?:ch(?:es)?)?\b|cm\b)(?:\s*\([^)]*\))?)\s+more\b",
        r"for \1",
        'Work even in st st for \u00bd" more.',
    ),
    row(
        "armhole",
        rf"\b(?:piece|work|armholes?)\s+(measures?)\s+({LONG})\s+from\s+{_SHAPED}",
        r"armhole \1 \2",
        "Work straight until piece measures 5 cm from 1st row of armhole shaping.",
    ),
    row(
        "armhole",
        rf"\b(?:piece|work)\s+(measures?)\s+from\s+{_SHAPED}\s+({LONG})",
        r"armhole \1 \2",
        "Work even until piece measures from first row of armhole shaping 5 cm.",
    ),
)
