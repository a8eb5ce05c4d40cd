"""Other wordings of pages that knitters tell, type or translate for one another, and of leaflets. No I/O.

Pages put into English from elsewhere say on which side of a thread stitches are worked, what a number of stitches is
for behind an equals sign, how often a shaping is worked in all before they say where, and list what is bound off at
both sides step by step.
"""

from __future__ import annotations

from stepper.project.part_names import PIECE
from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import KEPT, LONG, ROUND, STS, N, Synonym, row

_HEAD = r"^(\s*(?:(?:(?:next|last|first|every|each|set-?up|foundation|dec|inc)\s+)?(?:row|rnd|round)s?\b[^:]{0,24}:\s*)?)"
"""The head of a row, if it has one."""
_EDGE = r"(?:border|borders|edge|edging|cent(?:er|re)\s+st(?:itch)?|button\s?band|band|selvedge|hem|brim|cuff|steek|seam\s+st(?:itch)?|thumb|instep|sole|heel|palm)"
_OFF = r"(?:bind|cast)\s+off|bo"
_CHANGE = r"(?:inc|dec)(?:reas(?:e|ing))?\b\.?"
_SIDE = r"(?:in|on|at)\s+(?:the\s+)?(?:each|both|either)\s+sides?"
_STEP = rf"{N}\s+{STS}\s+{N}\s+times?"
_THUS = r"(?:as\s+foll(?:ow)?s|like\s+this|thus|in\s+this\s+(?:way|manner))"
_PART = rf"(?:{PIECE}|it)"
_WEARER = (
    r"(?:(?:base|top|tip|end|middle|cent(?:er|re)|start|beginning|bend|width|crook|nail|tips)\s+of\s+)?(?:the\s+|your\s+|her\s+|his\s+)?"
    r"(?:(?:little|ring|middle|index|pinky|pinkie|first|second|big|longest)\s+)?(?:finger|fingers|fingertips?|thumb|knuckles?|wrist|elbow|toes?|"
    r"ankle|heel|shoulder|underarm|ear|ears|earlobes?|neck|nail|palm|knee|waist|hips?|pinky|pinkie)"
)
"""A place on whoever wears it."""
_RIB = r"(?:[(\[]?\s*k\s?\d+\s*[,.]?\s*p\s?\d+\s*\.?\s*[)\]]?|\d\s?x\s?\d)(?:\s+rib(?:bing)?)?"
_NAMED_ROWS = (
    r"(?:seeding|foundation|preparation|preparatory|starting|opening|garter|border|edging|hem|ribbing|rib|base|set-?\s?up)"
)

TOLD: tuple[Synonym, ...] = (
    row("as foll|like this|thus", rf"^(\s*)(?:now\s+)?(?:(?:on\s+)?(?:the\s+)?next\s+(row|rnd|round)(?:\s+is\s+(?:worked|knitted)|\s*,?\s+(?:work|knit))?|(?:work|knit)\s+(?:the\s+)?(?:next|1|one)\s+(row|rnd|round))\s+{_THUS}\s*:\s*(?=\S)", r"\1Next \2\3: ", "Next round is worked as follows: K2, k2tog, k to end."),
    row("side", r"^(\s*)(knit|purl)\s+(?:1|one)\s+row\s+(?:back\s+)?(?:from|on)\s+the\s+(right|wrong)\s+side(?=\s*\.?\s*$)", r"\1with \3 side facing, \2 1 row", "Purl 1 row from the wrong side."),
    row("divided|split", r"\bfrom\s+where\s+(?:it|the\s+(?:work|piece|body|stitches))\s+(?:was|were)\s+(?:divided|split)\b", "from the divide", "Knit until body measures 12 cm from where it was divided."),
    row("front", rf"^(\s*(?:there\s+are\s+(?:now\s+)?)?)({N}\s+{STS})\s+(?:on|in|for)\s+(?:the\s+)?front\s+and\s+(?:(?:on|in|for)\s+)?(?:the\s+)?back(?=\s*\.?\s*$)", r"\2 each for front and back", "There are 12 sts on the front and on the back."),
    row(":=|: =|:.", rf"^\s*(?P<said>[a-z][a-z -]{{1,30}}):\s*[=.]\s*({N}\s+{STS}\s*\.?\s*)$", r"\2", "Body: = 24 sts."),
    row("thread", r"\b(?:marker|marking)\s+threads?\b", "marker", "Knit to 1 st before the marker thread, yo, k2, yo, k to end."),
    row("new", rf"\b((?:cast\s+on|co)\s+{N})\s+new\s+(?={STS})", r"\1 ", "K12, hold 10 sts, cast on 4 new sts, k to end."),
    row("without", r"\b(knit|purl)\s+without\s+(?:any\s+|further\s+)*(?:increas|decreas)ings?\s+(?=until\b|for\b)", r"\1 ", "Knit without decreasing until piece measures 12 cm."),
    row("without", r"\b(work|cont(?:inue)?)\s+without\s+(?:any\s+|further\s+)*(?:increas|decreas)ings?\s+(?=until\b|for\b)", r"\1 even ", "Work without increasing until piece measures 12 cm."),
    row("without", r"\b(in\s+(?:st\.?[\s-]?st|stockinette(?:\s+st(?:itch)?)?|stocking\s+st(?:itch)?|garter(?:\s+st(?:itch)?)?)\.?)\s*,?\s+without\s+(?:any\s+|further\s+)*(?:increas|decreas)ings?(?=\s+(?:until|for)\b|\s*\.?\s*$)", r"\1", "Work 2 cm in stocking stitch without decreasing."),
    row("inside|within", rf"^([^.]*?\b{_CHANGE}\s+{N}\s+{STS}[^.,]*?)\s*,?\s+(?:inside|within)\s+({N})\s+edge\s+{STS}\s*,?\s+([^.]*?)(?=\s*[.]|\s*$)", r"\1 \3, worked \2 sts in from edge", "Dec 1 st at each side on every 2nd row, inside 1 edge st, 4 times."),
    row("side", rf"\b({_CHANGE}\s+{N}\s+{STS})\s+(?:in|on)\s+(?:the\s+)?(?:each|both|either)\s+sides?\s*,?\s+(?=on\b|every\b|each\b|in\s+every\b|of\b)", r"\1 at each side ", "Decrease 1 st in each side on every 2nd row 4 times."),
    row("side", rf"\b({_OFF})\s+(?:(?P<said>for\s+(?:the\s+)?[a-z]+)\s+)?at\s+(?:the\s+)?beg(?:inning)?\s+of\s+(?:each|every)\s+row\s*,?\s+{_SIDE}\s*:\s*(?={_STEP})", r"\1 at each side: ", "Cast off at the beginning of each row in each side: 3 sts 2 times and 2 sts 1 time."),
    row("side", rf"\b({_OFF})\s+(?:(?P<said>for\s+(?:the\s+)?[a-z]+)\s+)?{_SIDE}\s*:\s*({N}\s+{STS})\s+({N})\s+times?\b\s*(?:,|and)\s*(?:and\s+)?(?:then\s+)?(?={_STEP})", r"\1 \3 at each side \4 times. \1 at each side: ", "Bind off at each side: 3 sts 2 times, 2 sts 2 times.", again=True),
    row("side:|sides:|side :|sides :", rf"\b({_OFF})\s+{_SIDE}\s*:\s*({N}\s+{STS})\s+({N})\s+times?\b(?=\s*[.,;=]|\s*$)", r"\1 \2 at each side \3 times", "Bind off at both sides: 3 sts 2 times."),
    # --- casting on and needles ---
    row("needle", r"^\s*(?:using|with)\s+(?:the\s+|your\s+)?((?:(?:smaller|larger|bigger|size)\b|[a-z]{0,2}\s?\d)(?:[^:.,;]|\.(?=\d))*?\bneedles?)\s*:\s*", r"Change to \1. ", "Using 4mm needles:"),
    row("needle", r"\bcont(?:inue)?\s+(?:using|with|on)\s+(?:the\s+)?((?:smaller|larger|bigger|\d)(?:[^:.,;]|\.(?=\d))*?\bneedles?)(?=\s+and\b|\s*[.;]|\s*$)", r"Change to \1", "Continue using larger needles."),
    row("needle", r"(?<=\w)\s*,?\s*(?:and\s*,?\s+)?(?P<said>(?:using|with)\s+(?:an?|the)\s+(?:blunt\s+)?(?:tapestry|darning|yarn|wool|sewing)\s+needle)\s*,?\s*(?=(?:thread|draw|run|pull|pass|weave)\b)", ", ", "Break yarn and, using a tapestry needle, draw it through rem sts.", spelt_out=True),
    row("tight", r"^\s*pull\s+(?:it\s+|up\s+|the\s+(?:yarn|tail|end)\s+)?tight(?:ly)?(?:\s*,\s*|\s+and\s+)(?:(?:make|tie)\s+a\s+knot|tie\s+off|knot|fasten(?:\s+off)?|secure(?:\s+(?:it|the\s+(?:end|tail)))?|weave\s+in\s+(?:the\s+|all\s+)?ends?)(?:\s*,?\s*and\s+weave\s+in\s+(?:the\s+|all\s+)?ends?)?(?=\s*\.?\s*$)", KEPT, "Pull up tightly and fasten off."),
    row("each of", rf"\b((?:cast\s+on|co)\s+{N}\s+{STS}\s+loosely)\s*,\s*({N})\s+(?:{STS}\s+)?(?:on|onto)\s+each\s+of\s+(3|4|three|four)\s+needles", r"\1. \2 sts on each needle", "Cast on 48 stitches loosely, 16 on each of 3 needles."),
    row("needles", rf"\b((?:cast\s+on|co)\s+{N}\s+{STS})\s+(?:on|onto|over)\s+(?:3|three)\s+(?:dpns|(?:double[-\s]pointed\s+)?needles)\s*[,(:]\s*(\d+)\s*[-,/]\s*(\d+)\s*[-,/]\s*(\d+)\s*\)?(?=\s*[.;]|\s*$)", r"\1. divide over 3 needles, \2 sts on needle 1, \3 sts on needle 2, \4 sts on needle 3", "Cast on 52 stitches on 3 needles, 16-16-20."),
    row("divide|distribute|arrange", rf"\b((?:cast\s+on|co)\s+{N}\s+{STS})\s*,?\s+(?:and\s+)?(?:divide|distribute|arrange|spread)\s+(?:(?:the\s+)?(?:sts|stitches|them)\s+)?evenly\s+(?:(?:over|onto|among|between|across)\s+(?:the\s+)?(?=\w+\s+needles)|(?:over|on|onto|among|between|across)\s+(?:the\s+)?(?=\w+\s+(?:dpns|double)))(3|4|three|four)\s+(?:dpns|(?:double[-\s]pointed\s+)?needles)\s*,?\s*(?:and\s+(?=join\b)|(?=[.;]|$))", r"\1. divide over \2 needles. ", "Cast on 60 sts, distribute evenly on 4 dpns and join in the round."),
    row("join", r"\bjoin(?:ing)?\s+(?:(?:in)?to\s+(?:an?\s+|the\s+)?(?:ring|circle|round|rnd)\b|in\s+(?:a\s+)?(?:circle|ring)\b(?:\s*,?\s*(?:without\s+twisting|(?:being|taking)\s+care(?:ful)?\s+not\s+to\s+twist)(?:\s+(?:the\s+)?(?:sts|stitches))?)?)", "join in the round", "Join in a circle without twisting."),
    row("join", r"\b(pick\s+up\s+(?:and\s+knit\s+)?\d+\s+(?:sts|stitches))(?:\s+(?P<said>(?:at|over|in|across|from)\s+(?:the\s+)?(?:gap|underarm|corner|opening)))?\s*,?\s+and\s+join(?=\s*[.;]|\s*$)", r"\1. join in the round", "K15, pick up 3 sts at gap and join.", spelt_out=True),
    row("back and forth", rf"^(\s*)work(?:ing)?\s+back\s+and\s+forth\s+(?:in\s+rows\s+)?(?:on|over)\s+(?:these|the|rem\w*|heel)\s+({N}\s+)?(?:{STS})(?:\s+only)?(?=\s*\.?\s*$)", r"\1\2 sts. work flat", "Work back and forth on these 32 sts."),
    # --- rows by their fabric ---
    row("for", rf"(?:(?<=^)|(?<=[.!]\s))(?:k|knit)\s*(\d+)\s*(?:plain\s+)?(?:,\s*|\s+and\s+|,\s*and\s+)(?:(?:p|purl)\s*\1|\1\s+purl)\s*,?\s+for\s+(?=(?:about\s+)?(?:{LONG}|{N}\s+{ROUND}))", r"work in k\1, p\1 rib for ", "Knit 2, purl 2 for 30 rows."),
    row("back", rf"{_HEAD}(purl|knit|p|k)\s+back(?=\s*[.,;]|\s*$)", r"\1\2", "Purl back."),
    row("alternat", r"\bknit\s+(?:1|one)\s+row\s*,?\s*(?:and\s+)?purl\s+(?:1|one)\s+row\s*,?\s*(?:alternately|alternating)\s*,?\s+(?=(?:for|until)\b)", "work in st st, beg with a knit row, ", "Knit 1 row, purl 1 row alternately for 26 rows."),
    row("g st|g-st|g. st", r"(?<=^)G(?:[-.]\s?|\s)st\b\.?(?=\s*[.,;]|\s*$|\s+(?:for|until|edge|border|rows?\b))", "garter st", "G st for 5 rows."),
    row("rib", r"\bin\s+rib(?:bing)?\s*[(\[]\s*(k\s?\d+)\s*,?\s*(p\s?\d+)\s*[)\]]", r"in \1, \2 rib", "Continue in rib (k2, p2) for 10 rnds."),
    row("rib", r"\bknit\s+(?:in\s+)?(\d\s?x\s?\d|k\d+,?\s*p\d+)\s+(rib(?:bing)?)\s+(?=(?:for|until)\b)", r"work in \1 \2 ", "Then knit 1x1 ribbing for 2 inches."),
    row("for|until", rf"\*\s*(k\s?\d+)\s*,?\s*(p\s?\d+)\s*[;,]?\s*\*?\s*[;,]?\s*(?:rep(?:eat)?\s+from\s+\*\s*)?(?:around|across|to\s+(?:the\s+)?end)\s*,?\s+(?=(?:for\s+{LONG}|for\s+{N}\s+{ROUND}|until\s+(?:piece|work|ribbing|rib|cuff|it)\s+measures))", r"work in \1, \2 rib ", "*K2, p2; repeat from * around for 4 cm."),
    said_row_behind("(", rf"(\b{ROUND}|\d|\bst(?:itch)?)\s*[(\[]\s*(?P<said>(?:the\s+)?(?:(?:lower|upper|bottom|top|garter|left|right)\s+)?{_EDGE})\s*[)\]]", "K5 (border), k to last 5 sts, k5."),
    row("this pattern|this patt", r"\b(cont(?:inue)?|work|go\s+on|proceed)\s+in\s+this\s+(?:patt|pattern)\s+(?=(?:until|for)\b)", "continue in pattern ", "Continue in this pattern until piece measures 8 inches."),
    row("knitting|working|to knit|to work", r"\b(?:continue|keep(?:\s+on)?|go\s+on|carry\s+on)\s+knitting\s+(?=(?:until|for)\b)", "knit ", "Continue knitting until piece measures 15 cm."),
    row("as follows", r"(?<=[\w)\]])\s*,?\s*(?:and\s+)?(?P<said>then\s+(?:work|continue|cont|proceed)(?:\s+in\s+(?:the\s+)?(?:[a-z]+\s+)?(?:patt|pattern))?\s+as\s+foll(?:ow)?s)\s*[.:]?\s*$", ".", "Work 4 rows in garter stitch, then work in pattern as follows.", spelt_out=True),
    # --- inside a row ---
    row("as for", r"^(\s*(?:row|rnd|round)s?\s+\d[^:]*:\s*)as\s+for\s+(?=(?:row|rnd|round)s?\s+\d)", r"\1as ", "Row 10: as for row 2."),
    row("all the way", r"\s+all\s+the\s+way\s+(?=(?:across|around|to\s+the\s+end)\b)", " ", "Knit 2 together all the way across."),
    row("all the way|the whole way", rf"{_HEAD}(knit|purl|k|p)\s+(?:all\s+the|the\s+whole)\s+way(?=\s*[.,;]|\s*$)", r"\1\2 to end", "Row 6: knit all the way"),
    row("rep", rf"{_HEAD}((?=(?:k|p|knit|purl|ssk|yo|sl)\b|[kp]\s?\d|k2tog)[^*:;.()\[\]]*?(?:[kp\d](?:tog|tbl)?|\b(?:ssk|yo|kfb|tog|together)))\s*[,;]\s*rep(?:eat)?\s+(?:to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?(?:row|rnd|round))?|around|across)(?:\s+(?:the\s+)?(?:row|rnd|round))?(?=\s*[.(–—-]|\s*$)", r"\1*\2; rep from * to end", "Round 1: K6, K2tog, repeat around."),
    row("rep", r"(\*[^*]*?)\s*[;,]?\s*\*\s*,?\s*rep(?:eat)?(?:\s+(?:across|around|to\s+(?:the\s+)?end)(?:\s+(?:of\s+)?(?:the\s+)?(?:row|rnd|round))?)?(?=\s*[.(–—]|\s*$)", r"\1; rep from * to end", "Row 1: *yo, k2tog, k3* repeat"),
    row("around", rf"{_HEAD}((?:[kp]\s?\d*\s?tog|ssk|skp|[kp]\s?\d+)(?:\s*,\s*(?:[kp]\s?\d*\s?tog|ssk|skp|[kp]\s?\d+))*\s*,\s*[kp]\s?\d+)\s+around(?=\s*[.(–—-]|\s*$)", r"\1*\2; rep from * to end", "Round 1: K2tog, K6 around."),
    row("every|each|all", rf"{_HEAD}(?:(kfb|inc)|inc(?:rease)?(?:\s+(?:1|one))?)\s+in(?:to)?\s+(?:every|each)\s+(?:st|stitch)(?:\s+(?:to\s+(?:the\s+)?end|across|around))?(?=\s*[.(–—-]|\s*$)", r"\1*kfb; rep from * to end", "Next row: inc in every st."),
    row("slip the|sl the|slip first", r"\b(?:slip|sl)\s+(?:the\s+)?(?:1st\s+(?:st|stitch)(?:\s*\(\s*sl\s?1\s*\))?|first\s+(?:st|stitch)\s*\(\s*sl\s?1\s*\))(?=\s*,)", "sl 1", "Slip the 1st stitch (Sl1), knit to the end."),
    row("slip the|sl the|slip first", r"\b(?:slip|sl)\s+(?:the\s+)?(?:first|1st|next)\s+(?:st|stitch)\s+(purlwise|knitwise|pwise|kwise)\b", r"sl 1 \1", "Slip the first stitch purlwise, knit to end."),
    row("as if to", r"\b(sl(?:ip)?\s*\d+)(?:\s+(?:st|sts|stitch|stitches))?\s+as\s+if\s+to\s+(purl|knit)\b", r"\1 \2wise", "Sl 1 as if to purl, k to end"),
    row("last r", r"^\s*last\s+(row|rnd|round)\s*:", r"next \1:", "Last round: k2tog around (8 sts)"),
    row("(", r"^(\s*(?:row|rnd|round|next\s+(?:row|rnd|round))\b[^:*]*:\s*[^:]*?[a-z])\s*[(\[]\s*(\d{1,3})\s*[)\]]\s*\.?\s*$", r"\1 (\2 sts)", "Row 2: purl (16)"),
    # --- shaping ---
    row("first and last", r"^(\s*)inc(?:rease)?\s+(?:1\s+st\s+)?in(?:to)?\s+(?:the\s+)?first\s+and\s+last\s+(?:st|stitch)\s+of\s+(?:the\s+)?next\s+row(?=\s*[.(]|\s*$)", r"\1Next row: kfb, work in pattern to last 1 sts, kfb", "Increase in first and last stitch of next row."),
    row("tog", r"^\s*k\s?2\s?tog\s+at\s+(?:both|each)\s+ends?\s+of\s+(?:the\s+)?next\s+(\d+|two|three|four|five|six)\s+rows(?=\s*[.(]|\s*$)", r"Next \1 rows: k2tog, work in pattern to last 2 sts, k2tog", "K2 tog at both ends of the next 3 rows."),
    row("needle", r"\b((?:inc|dec)(?:rease)?\s+(?:1|one)\s+(?:st|stitch)\s+(?:at\s+)?(?:each|both)\s+ends?)\s+of\s+the\s+needle\s+(?=(?:on\s+)?(?:every|each|next|foll))", r"\1 of ", "Decrease one stitch at each end of the needle every other row 4 times."),
    row("at the end of|at end of", rf"^(\s*)at\s+(?:the\s+)?end\s+of\s+(?:the\s+)?(next\s+(?:row|rnd|round))\s*,?\s*((?:cast\s+on|co)\s+{N}\s+{STS})", r"\1\2: work to end, \3", "At the end of next row cast on 6 sts."),
    # --- how often ---
    row("left", rf"\buntil\s+there\s+(?:are|is)\s+(?:only\s+)?({N}\s+{STS})\s+left\b", r"until \1 remain", "Repeat row 3 until there are 4 sts left."),
    row("times", r"\b((?:work|rep(?:eat)?)\s+(?:rows|rnds|rounds)\s+\d+\s*-\s*\d+)\s*,\s*(?=(?:\d+|two|three|four|five|six|seven|eight|nine|ten)\s+(?:more\s+)?times\b)", r"\1 ", "Work rows 1-12, 5 more times."),
    row("for a total of", rf"\b(times(?:\s+more)?)\s*,?\s+for\s+a\s+total\s+of\s+({N}\s+{ROUND})(?=\s*\.?\s*$)", r"\1. \2 in all", "Repeat these two rows 15 more times, for a total of 32 rows."),
    # --- ends ---
    row("in k", r"\b((?:bind|cast)\s+off)\s+in\s+k\s?\d+\s*,?\s*p\s?\d+(?:\s+rib(?:bing)?)?(?=\s*[.,;]|\s*$)", r"\1 in rib", "Bind off in k2, p2."),
    said_row_behind("leave a", r"\b((?:bind|cast)\s+off(?:\s+(?:all|loosely|rem\w*|sts|stitches))*)\s*,?\s+and\s+(?P<said>leave\s+an?\s+(?:long\s+)?(?:tail|end)(?:\s+(?:for|to)\s+(?:sew(?:ing)?|seam(?:ing)?|graft(?:ing)?|the\s+seam)(?:\s+up)?)?)(?=\s*[.,;]|\s*$)", "Bind off and leave a long tail for sewing."),
    row("make another|make one more|make a second|knit another|knit a second", r"^\s*(?:make|knit|work)\s+(?:another|one\s+more|a\s+second)(?:\s+one)?\s+(?:to\s+match|the\s+same(?:\s+way)?|just\s+like\s+it|in\s+the\s+same\s+(?:way|manner)|(?:exactly|just)\s+the\s+same)(?=\s*\.?\s*$)", "make again 1", "Make another to match."),
    row("second|other", r"^\s*(?:repeat|rep|do\s+the\s+same|make\s+the\s+same)\s+for\s+(?:the\s+|your\s+)?(?:second|other)\s+(?:sock|mitten|mitt|slipper|glove|bootee|bootie|sleeve|strap|pocket|cuff|(?:arm|leg|wrist)\s?warmer|leg|arm|ear|wing|paw)(?=\s*\.?\s*$)", "make again 1", "Repeat for second sock."),
    row("complete", r"\b(rejoin\s+yarn\s+to\s+(?:the\s+)?rem(?:aining)?\s+(?:sts|stitches))\s*,?\s+and\s+(complete\s+(?:to\s+match|as\s+for|same\s+as|like)\b)", r"\1. \2", "Rejoin yarn to remaining sts and complete to match first side."),
    row("draw|pull|thread", r"\b((?:break|cut))\s+(?:off\s+)?((?:the\s+)?yarn\s*,?\s*(?:and\s+)?(?:draw|pull|thread|run|pass)\s+(?:it\s+|tail\s+|yarn\s+|end\s+)?through\s+(?:all\s+|the\s+|rem(?:aining)?\s+|last\s+|live\s+|\d+\s+)*(?:sts|stitches|loops))\s+(?P<said>on\s+(?:the\s+)?needles?(?:\s*,?\s*(?:and\s+)?(?:draw|pull)\s+(?:up|it|them)?\s*(?:tight(?:ly)?|firmly)?(?:\s*,?\s*(?:and\s+)?(?:secure|fasten(?:\s+off)?))?)?)(?=\s*\.?\s*$)", r"\1 \2", "Break off yarn and thread through sts on needle, draw up tightly and secure.", spelt_out=True),
    row("stuff|sew|fold|seam|embroider|stitch|attach|press|felt|wet|trim|make up", r"(?:(?<=^)|(?<=[.!]))\s*(?P<said>(?:(?:make|making|to\s+make)\s+up\s*[:.-]\s*)?(?:(?:then|lightly|gently|carefully|firmly)\s+)*(?:stuff|sew|fold\s+in\s+half|seam|oversew|embroider|stitch\s+(?:the|on|up)|attach\s+(?:the\s+|an?\s+)?(?:button|ear|arm|leg|head|eye|tassel|pompom|pom-pom|ribbon|strap|fringe|flower)s?|press|wet[-\s]block|felt|trim|steam|join\s+(?:side\s+|shoulder\s+|sleeve\s+|leg\s+|the\s+|all\s+|back\s+)*seams?)\b[a-z ,'-]*)(?=[.!]|$)\s*(?:[.!]+|$)", "", "Stuff lightly and sew up."),
    # --- spelling and signs ---
    row("tog-b|tog b", r"\b([kp]\s?\d?\s?tog)-?\s?b(?:l)?\b(?![\w'])", r"\1 tbl", "K2, p2tog-b, yo, k to end."),
    row("dpn", r"\bdpn\b(?=\s*[.,;]|\s*$|\s+(?:as|when|if|once|before|and)\b)", "dpns", "Change to dpn."),
    row("size", r"\b(smaller|larger|bigger)[-\s]sized?\s+(?=needles?\b|dpns?\b|double|circular)", r"\1 ", "Change to smaller size needles."),
    row("till|until", r"\b(?:till|'til|until)\s+(?=(?:the\s+)?end\b)", "to ", "Row 2: Slip 1, then purl till the end."),
    row("(pm|(slip|(sm|(remove", r"(?<=[,;*])\s*[(\[]\s*(pm|slip\s+(?:the\s+)?marker|sm|remove\s+(?:the\s+)?marker)\s*[)\]]", r" \1", "K3, pm, k5, (slip marker), k to end."),
    row("last", r"\b(rep(?:eat)?\s+from\s+\*+)\s*(?:across(?:\s+(?:the\s+)?row)?|around)?\s*,?\s*end(?:ing)?\s+(?:with\s+)?(k|p|knit|purl)\s+(?:the\s+)?last\s+(\d+)\s+(?:sts|stitches)\b", r"\1 to last \3 sts, \2\3", "K2, *yo, k2tog, k1, repeat from * across row ending with K last 2 sts."),
    row("rows|rnds|rounds", rf"^\s*(?P<said>{_NAMED_ROWS})\s+(rows|rnds|rounds)\s+(\d+)\s*(?:-|to|and|&)\s*(\d+)\s*:", r"\2 \3-\4:", "Foundation rows 1 to 3: Knit.", spelt_out=True),
    # --- casting on, picking up, needles ---
    row("loosely", r"\bcast\s+on\s+loosely\s+with\s+([^,.;]*?\bneedles?)\s+and\s+([a-z][\w-]*)\s+(?=\d)", r"with \1 and \2, cast on loosely ", "Cast on loosely with 4 mm needles and A 38 sts."),
    row("pick up", r"\b(pick\s+up\s+and\s+)k(?=\d)", r"\1knit ", "K3, pick up and k3 sts along side edge."),
    row("evenly", rf"\b(pick\s+up\s+and\s+(?:knit|purl)\s+{N}\s+(?:sts|stitches))\s+evenly(?:\s+spaced)?\s+(?:across|along|down|up|over)\s+", r"\1 evenly along ", "K3, pick up and knit 3 sts evenly spaced across side edge, pick up and knit 3 sts along cast-on edge."),
    row("only", r"\b((?:change|switch|go)\s+(?:back\s+)?to)\s+((?-i:MC|CC\d?|[A-H]))\s+only\b|\b((?:change|switch|go)\s+(?:back\s+)?to|with|using)\s+only\s+((?-i:MC|CC\d?|[A-H]))\b", r"\1\3 \2\4", "Change back to only A and purl 1 row."),
    row("back", r"\b(?:change|switch|go)\s+back\s+to\s+(?=(?-i:MC|CC\d?|[A-H])\b)", "change to ", "Change back to A and purl 1 row."),
    row("to note|to mark|to denote|to show|to indicate", r"\b((?:place|put)\s+(?:an?\s+)?markers?)\s+to\s+(?:note|mark|denote|show|indicate)\s+(?=(?:the\s+)?(?:beg|start|end))", r"\1 for ", "Place marker to note beginning of round."),
    row("graft|kitchener", r"\b(?:kitchener(?:\s+st(?:itch)?)?\s+or\s+graft|graft\s+or\s+kitchener(?:\s+st(?:itch)?)?|kitchener\s+st(?:itch)?)(?=\s+(?:the\s+)?(?:rem\w*|last|\d))", "graft", "Kitchener stitch or graft the remaining 10 stitches."),
    said_row_behind("per |for each", r"\b(\d+\s+(?:sts|stitches))\s+(?P<said>(?:per|for\s+each)\s+(?:sock|mitten|mitt|sleeve|glove|leg|slipper|cuff))\b", "Cast on 16 stitches per sock."),
    # --- lengths and counts ---
    row("from", rf"\buntil\s+(?:the\s+)?{_PART}\s+(from\s+(?:the\s+)?(?:beg(?:inning)?\b\.?|start|cast-?\s?on(?:\s+edge)?|co\s+edge|underarm))\s+measures\s+((?:about\s+|approx(?:imately|\.)?\s+)?{LONG})", r"until piece measures \2 \1", "Work even until work from beg measures 20 cm."),
    row("around", rf"\b(knit|purl)\s+(?:around|in\s+the\s+(?:round|rnd))\s+(?=(?:until\s+(?:you\s+have\b|(?:the\s+)?{_PART}\s+(?:measures|is))|for\s+{LONG})\b)", r"\1 ", "Knit around for 6 in."),
    said_row("or ", r"\s*,?\s*(?P<said>or\s+(?:(?:about|roughly|approximately|approx\.?)\s+)?(?:(?:\d/\d|¼|½|¾|half|one\s+third|two[-\s]thirds|three[-\s]quarters|a\s+third)\s+(?:of\s+)?)the\s+(?:(?:total|full|whole|finished)\s+)?[a-z]+\s+length)(?=\s*\.?\s*$)", "Work even until piece measures 15 cm or about 2/3 of the total foot length."),
    row("k |p ", rf"^(\s*)k\s+(?:in\s+the\s+(?:round|rnd)\s+)?(?=for\s+(?:about\s+)?{LONG}|until\s+(?:the\s+)?{_PART}\s+(?:measures|is|reaches)\b|until\s+\d+\s+rows\s+from\b)", r"\1Knit ", "K for 2 inches."),
    row("from", rf"\buntil\s+(?:you\s+have\s+)?({N}\s+{ROUND})\s+from\s+(?:the\s+)?(?:beg(?:inning)?\b\.?|start|cast-?\s?on(?:\s+edge)?)", r"until \1 have been worked in all", "Knit until 16 rows from beginning."),
    row("reach|cover|touch", rf"\b(knit|purl|work|continue|cont)(?:\s+(plain|even|straight|in\s+pattern|in\s+st\s+st))?\s+(?P<said>until\s+(?:the\s+|your\s+)?{_PART}\s+(?:reaches|covers|touches|comes\s+to|fits\s+to)\s+(?:the\s+)?{_WEARER})\s*[(\[]\s*({N})\s+(rounds|rnds|rows)\s*[)\]]", r"\1 \4 \5", "Knit until mitten reaches the top of the little finger (26 rounds).", spelt_out=True),
    row("reach|cover|touch", rf"\buntil\s+(?P<said>(?:the\s+|your\s+)?{_PART}\s+(?:reaches|covers|touches|comes\s+to)\s+(?:the\s+)?{_WEARER})\s*[,(\[]+\s*((?:about\s+|approx(?:imately|\.)?\s+)?{LONG})\s+(from\s+(?:the\s+)?(?:beg(?:inning)?\b\.?|start|cast-?\s?on(?:\s+edge)?|underarm|cuff))\s*[)\]]?", r"until piece measures \2 \3", "Work even until sleeve reaches the wrist, about 40 cm from underarm.", spelt_out=True),
    row("leaving", rf"\s*,?\s*\bleaving\s+(?:you\s+with\s+)?(?:a\s+total\s+of\s+({N})\s+(?:total\s+)?{STS}|({N})\s+(?:{STS}\s+(?:total|in\s+(?:all|total))|total\s+{STS}))(?=\s*\.?\s*$)", r". \1\2 sts", "K to marker, remove marker, k to end, leaving a total of 34 sts."),
    row("shaping", r"\b(?:without|with\s+no)\s+(?:any\s+)?(?:further|more|additional)\s+shaping\b", "even", "Work without further shaping until piece measures 20 cm."),
    row("ending", rf"\b({ROUND}|{LONG}|measures\s+{LONG}),?\s+ending\s+on\s+(?:the\s+)?(\d+)(?:st|nd|rd|th)\s+(row|rnd|round)(?:\s+of\s+(?:the\s+)?(?:patt?|pattern))?\b", r"\1, ending with \3 \2", "Work in pattern until piece measures 20 cm, ending on 4th row of pattern."),
    # --- ribs and rows named again ---
    said_row_behind("as ", rf"\b({_RIB})\s+(?P<said>as\s+(?:(?:given|worked|set|described)\s+)?(?:above|before|at\s+(?:the\s+)?beg(?:inning)?))(?=\s*[.,;]|\s*$)", "Work 6 rows of k2, p2 rib as given above."),
    said_row_behind("of ", rf"\b(rep(?:eat)?\s+(?:the\s+)?last\s+(?:\w+\s+)?(?:rows|rnds|rounds))\s+(?P<said>of\s+(?:the\s+)?{_RIB})(?=\s)", "Rep last 2 rows of (k2, p2) ribbing twice more."),
    row("cent", r"(?<=(?:more|imes)[,.]\s)(inc|dec)(?:r|rease|reasing)?\.?\s+(?:1|one)\s+(?:st|stitch)\s+(?P<said>(?:at|in)\s+(?:the\s+)?(?:cent(?:er|re)|middle))\s+of\s+(?:the\s+)?last\s+(row|rnd|round)\b", r"\1 1 st evenly across last \3", "Rep last 2 rows twice more, dec 1 st at center of last row.", spelt_out=True),
    # --- shaping ---
    row("this row|this rnd|this round", r"\b((?:inc|dec)(?:rease)?\s+(?:1|one)\s+(?:st|stitch)\s+(?:at\s+)?(?:each|both)\s+ends?)\s+(?:of\s+)?this\s+(row|rnd|round)\s*,?\s*(?:and\s+)?then\s+(?:(?:inc|dec)(?:rease)?\s+(?:1|one)\s+(?:st|stitch)\s+(?:at\s+)?(?:each|both)\s+ends?\s+)?(?:of\s+)?(?=every\b)", r"\1 of next \2, then ", "Inc 1 st each end this row, then inc 1 st each end every 4th row 5 times."),
    row("begin|beg", r"^(\s*next\s+(?:row|rnd|round)(?:\s*\([rw]s\))?)\s*-+\s*(?P<said>(?:begin|beg)\s+(?:the\s+)?(?:[a-z]+\s+){0,2}(?:shapings?|increases|decreases))\s*:", r"\1:", "Next row - Begin sleeve shaping: K2, m1, k to end.", spelt_out=True),
)  # fmt: skip
"""The rows, in the order tried."""
