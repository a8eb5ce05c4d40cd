"""Other wordings of rows and pieces told in everyday words, as knitters write to one another. No I/O."""

from __future__ import annotations

from stepper.project.rewording.said_rows import said_row, said_row_behind
from stepper.project.rewording.synonym import KEPT, LONG, ROUND, STS, N, Synonym, row

_HEAD = r"^(\s*(?:(?:(?:next|last|first|every|each|set-?up|foundation|dec|inc)\s+)?(?:row|rnd|round)s?\b[^:]{0,24}:\s*)?)"
"""The head of a row, if it has one."""
_EDGE = r"(?:border|borders|edge|edging|cent(?:er|re)\s+st(?:itch)?|button\s?band|band|selvedge|hem|brim|cuff|steek|seam\s+st(?:itch)?|thumb|instep|sole|heel|palm)"
_MAIN = r"(?:(?:the\s+)?(?:main|working|regular|project|original)\s+(?:yarn|wool|colou?r))"

TOLD: tuple[Synonym, ...] = (
    # --- casting on and needles ---
    row("needle", r"^\s*(?:using|with)\s+(?:the\s+|your\s+)?((?:(?:smaller|larger|bigger|size)\b|[a-z]{0,2}\s?\d)(?:[^:.,;]|\.(?=\d))*?\bneedles?)\s*:\s*", r"Change to \1. ", "Using 4mm needles:"),
    row("needle", r"\bcont(?:inue)?\s+(?:using|with|on)\s+(?:the\s+)?((?:smaller|larger|bigger|\d)(?:[^:.,;]|\.(?=\d))*?\bneedles?)(?:\s*,\s*(?:and\s+)?|\s+and\s+)(?=(?:work|knit|purl|k|p|cast|bind|pick|rep(?:eat)?)\b)", r"Change to \1. ", "Continue on larger needles and work 6 rows in garter st."),
    row("needle", r"\bcont(?:inue)?\s+(?:using|with|on)\s+(?:the\s+)?((?:smaller|larger|bigger|\d)(?:[^:.,;]|\.(?=\d))*?\bneedles?)(?=\s+and\b|\s*[.;]|\s*$)", r"Change to \1", "Continue using larger needles."),
    row("needle", r"(?<=\w)\s*,?\s*(?:and\s*,?\s+)?(?P<said>(?:using|with)\s+an?\s+(?:blunt\s+)?(?:tapestry|darning|yarn|wool|sewing)\s+needle)\s*,?\s*(?=(?:thread|draw|run|pull|pass|weave)\b)", ", ", "Break yarn and, using a tapestry needle, draw it through rem sts.", spelt_out=True),
    row("needle", r"(?<=\w)\s*,?\s*(?:and\s*,?\s+)?(?P<said>(?:using|with)\s+the\s+(?:blunt\s+)?(?:tapestry|darning|yarn|wool|sewing)\s+needle)\s*,?\s*(?=(?:thread|draw|run|pull|pass|weave)\b)", ", ", "Break wool and with the yarn needle, draw end through rem sts.", spelt_out=True),
    row("tight", r"^\s*pull\s+(?:it\s+|up\s+|the\s+(?:yarn|tail|end)\s+)?tight(?:ly)?(?:\s*,\s*|\s+and\s+)(?:(?:make|tie)\s+a\s+knot|tie\s+off|knot|fasten(?:\s+off)?|secure(?:\s+(?:it|the\s+(?:end|tail)))?|weave\s+in\s+(?:the\s+|all\s+)?ends?)(?:\s*,?\s*and\s+weave\s+in\s+(?:the\s+|all\s+)?ends?)?(?=\s*\.?\s*$)", KEPT, "Pull up tightly and fasten off."),
    row("each of", rf"\b((?:cast\s+on|co)\s+{N}\s+{STS}\s+loosely)\s*,\s*({N})\s+(?:{STS}\s+)?(?:on|onto)\s+each\s+of\s+(3|4|three|four)\s+needles", r"\1. \2 sts on each needle", "Cast on 48 stitches loosely, 16 on each of 3 needles."),
    row("needles", rf"\b((?:cast\s+on|co)\s+{N}\s+{STS})\s+(?:on|onto|over)\s+(?:3|three)\s+(?:dpns|(?:double[-\s]pointed\s+)?needles)\s*[,(:]\s*(\d+)\s*[-,/]\s*(\d+)\s*[-,/]\s*(\d+)\s*\)?(?=\s*[.;]|\s*$)", r"\1. divide over 3 needles, \2 sts on needle 1, \3 sts on needle 2, \4 sts on needle 3", "Cast on 52 stitches on 3 needles, 16-16-20."),
    row("divide|distribute|arrange", rf"\b((?:cast\s+on|co)\s+{N}\s+{STS})\s*,?\s+(?:and\s+)?(?:divide|distribute|arrange|spread)\s+(?:(?:the\s+)?(?:sts|stitches|them)\s+)?evenly\s+(?:(?:over|onto|among|between|across)\s+(?:the\s+)?(?=\w+\s+needles)|(?:over|on|onto|among|between|across)\s+(?:the\s+)?(?=\w+\s+(?:dpns|double)))(3|4|three|four)\s+(?:dpns|(?:double[-\s]pointed\s+)?needles)\s*,?\s*(?:and\s+(?=join\b)|(?=[.;]|$))", r"\1. divide over \2 needles. ", "Cast on 60 sts, distribute evenly on 4 dpns and join in the round."),
    row("circle|ring", r"\bjoin(?:ing)?\s+in\s+(?:a\s+)?(?:circle|ring)\b(?:\s*,?\s*(?:without\s+twisting|(?:being|taking)\s+care(?:ful)?\s+not\s+to\s+twist)(?:\s+(?:the\s+)?(?:sts|stitches))?)?", "join in the round", "Join in a circle without twisting."),
    said_row("same needle", r"\b(?P<said>(?:with|using)\s+the\s+same\s+(?:dpn|needles?))\s*,\s*", "With the same needle, pick up and knit 16 sts along side of heel flap."),
    row("join", r"\b(pick\s+up\s+(?:and\s+knit\s+)?\d+\s+(?:sts|stitches))(?:\s+(?P<said>(?:at|over|in|across|from)\s+(?:the\s+)?(?:gap|underarm|corner|opening)))?\s*,?\s+and\s+join(?=\s*[.;]|\s*$)", r"\1. join in the round", "K15, pick up 3 sts at gap and join.", spelt_out=True),
    row("back and forth", rf"^(\s*)work(?:ing)?\s+back\s+and\s+forth\s+(?:in\s+rows\s+)?(?:on|over)\s+(?:these|the|rem\w*|heel)\s+({N}\s+)?(?:{STS})(?:\s+only)?(?=\s*\.?\s*$)", r"\1\2 sts. work flat", "Work back and forth on these 32 sts."),
    # --- rows by their fabric ---
    row("for", rf"(?:(?<=^)|(?<=[.!]\s))(?:k|knit)\s*(\d+)\s*(?:plain\s+)?(?:,\s*|\s+and\s+|,\s*and\s+)(?:(?:p|purl)\s*\1|\1\s+purl)\s*,?\s+for\s+(?=(?:about\s+)?(?:{LONG}|{N}\s+{ROUND}))", r"work in k\1, p\1 rib for ", "Knit 2, purl 2 for 30 rows."),
    row("back", rf"{_HEAD}(purl|knit|p|k)\s+back(?=\s*[.,;]|\s*$)", r"\1\2", "Purl back."),
    row("alternat", r"\bknit\s+(?:1|one)\s+row\s*,?\s*(?:and\s+)?purl\s+(?:1|one)\s+row\s*,?\s*(?:alternately|alternating)\s*,?\s+(?=(?:for|until)\b)", "work in st st, beg with a knit row, ", "Knit 1 row, purl 1 row alternately for 26 rows."),
    row("g st|g-st|g. st", r"(?<=^)G(?:[-.]\s?|\s)st\b\.?(?=\s*[.,;]|\s*$|\s+(?:for|until|edge|border|rows?\b))", "garter st", "G st for 5 rows."),
    row("rib", r"\bin\s+rib(?:bing)?\s*[(\[]\s*(k\s?\d+)\s*,?\s*(p\s?\d+)\s*[)\]]", r"in \1, \2 rib", "Work in rib (k2, p2) for 10 rnds."),
    row("rib", r"\bknit\s+(?:in\s+)?(\d\s?x\s?\d|k\d+,?\s*p\d+)\s+(rib(?:bing)?)\s+(?=(?:for|until)\b)", r"work in \1 \2 ", "Then knit 1x1 ribbing for 2 inches."),
    row("for|until", rf"\*\s*(k\s?\d+)\s*,?\s*(p\s?\d+)\s*[;,]?\s*\*?\s*[;,]?\s*(?:rep(?:eat)?\s+from\s+\*\s*)?(?:around|across|to\s+(?:the\s+)?end)\s*,?\s+(?=(?:for\s+{LONG}|for\s+{N}\s+{ROUND}|until\s+(?:piece|work|ribbing|rib|cuff|it)\s+measures))", r"work in \1, \2 rib ", "*K2, p2; repeat from * around for 4 cm."),
    row("rows of|rounds of|rnds of", rf"\b(?:knit|work)\s+({N}\s+{ROUND})\s+of\s+(garter\s+st(?:itch)?|st\s+st|stockinette(?:\s+st(?:itch)?)?|stocking\s+st(?:itch)?)\b", r"work \1 in \2", "Then knit 5 rows of garter stitch."),
    said_row_behind("(", rf"(\b{ROUND}|\d|\bst(?:itch)?)\s*[(\[]\s*(?P<said>(?:the\s+)?(?:(?:lower|upper|bottom|top|garter|left|right)\s+)?{_EDGE})\s*[)\]]", "K5 (border), k to last 5 sts, k5."),
    row("keeping", rf"^(\s*)keeping\s+((?:the\s+)?(?:first\s+and\s+last)\s+{N}\s+{STS}\s+(?:at\s+each\s+(?:end|side|edge)\s+)?in\s+garter(?:\s+st(?:itch)?)?)\s*,\s*((?:work|continue|cont)\b[^.;]*?)(?=\s*\.|\s*$)", r"\1\3, keeping \2", "Keeping first and last 4 sts in garter stitch, work in pattern for 20 rows."),
    row("this pattern|this patt", r"\b(cont(?:inue)?|work|go\s+on|proceed)\s+in\s+this\s+(?:patt|pattern)\s+(?=(?:until|for)\b)", "continue in pattern ", "Continue in this pattern until piece measures 8 inches."),
    row("knitting|working|to knit|to work", r"\b(?:continue|keep(?:\s+on)?|go\s+on|carry\s+on)\s+knitting\s+(?=(?:until|for)\b)", "knit ", "Continue knitting until piece measures 15 cm."),
    row("as follows", r"(?<=[\w)\]])\s*,?\s*(?:and\s+)?(?P<said>then\s+(?:work|continue|cont|proceed)(?:\s+in\s+(?:the\s+)?(?:[a-z]+\s+)?(?:patt|pattern))?\s+as\s+foll(?:ow)?s)\s*[.:]?\s*$", ".", "Work 4 rows in garter stitch, then work in pattern as follows.", spelt_out=True),
    # --- inside a row ---
    row("as for", r"^(\s*(?:row|rnd|round)s?\s+\d[^:]*:\s*)as\s+for\s+(?=(?:row|rnd|round)s?\s+\d)", r"\1as ", "Row 10: as for row 2."),
    row("all the way", r"\s+all\s+the\s+way\s+(?=(?:across|around|to\s+the\s+end)\b)", " ", "Knit 2 together all the way across."),
    row("all the way|the whole way", rf"{_HEAD}(knit|purl|k|p)\s+(?:all\s+the|the\s+whole)\s+way(?=\s*[.,;]|\s*$)", r"\1\2 to end", "Row 6: knit all the way"),
    row("rep", rf"{_HEAD}((?=(?:k|p|knit|purl|ssk|yo|sl)\b|[kp]\s?\d|k2tog)[^*:;.()\[\]]*?(?:[kp\d](?:tog|tbl)?|\b(?:ssk|yo|kfb|tog|together)))\s*[,;]\s*rep(?:eat)?\s+(?:to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?(?:row|rnd|round))?|around|across)(?:\s+(?:the\s+)?(?:row|rnd|round))?(?=\s*[.(–—-]|\s*$)", r"\1*\2; rep from * to end", "Round 1: K6, K2tog, repeat around."),
    row("rep", r"(\*[^*]*?)\s*[;,]?\s*\*\s*,?\s*rep(?:eat)?(?:\s+(?:across|around|to\s+(?:the\s+)?end)(?:\s+(?:of\s+)?(?:the\s+)?(?:row|rnd|round))?)?(?=\s*[.(–—]|\s*$)", r"\1; rep from * to end", "Row 1: *yo, k2tog, k3* repeat"),
    row("between", r"(\*[^*]*?)\s*[;,]?\s*\*\s*[,;]?\s*rep(?:eat)?\s+between\s+(?:the\s+)?(?:\*'?s?|stars)\s+(?=to\s+(?:the\s+)?last\b)", r"\1; rep from * ", "Row 11: K3, *yo, sk2p, yo, k1*, repeat between stars to last 3 sts, k3"),
    row("around", rf"{_HEAD}((?:[kp]\s?\d*\s?tog|ssk|skp|[kp]\s?\d+)(?:\s*,\s*(?:[kp]\s?\d*\s?tog|ssk|skp|[kp]\s?\d+))*\s*,\s*[kp]\s?\d+)\s+around(?=\s*[.(–—-]|\s*$)", r"\1*\2; rep from * to end", "Round 1: K2tog, K6 around."),
    row("every|each|all", rf"{_HEAD}(?:(kfb|inc)|inc(?:rease)?(?:\s+(?:1|one))?)\s+in(?:to)?\s+(?:every|each)\s+(?:st|stitch)(?:\s+(?:to\s+(?:the\s+)?end|across|around))?(?=\s*[.(–—-]|\s*$)", r"\1*kfb; rep from * to end", "Next row: inc in every st."),
    row("slip the|sl the|slip first", r"\b(?:slip|sl)\s+(?:the\s+)?(?:1st\s+(?:st|stitch)(?:\s*\(\s*sl\s?1\s*\))?|first\s+(?:st|stitch)\s*\(\s*sl\s?1\s*\))(?=\s*,)", "sl 1", "Slip the 1st stitch (Sl1), knit to the end."),
    row("slip the|sl the|slip first", r"\b(?:slip|sl)\s+(?:the\s+)?(?:first|1st|next)\s+(?:st|stitch)\s+(purlwise|knitwise|pwise|kwise)\b", r"sl 1 \1", "Slip the first stitch purlwise, knit to end."),
    row("as if to", r"\b(sl(?:ip)?\s*\d+)(?:\s+(?:st|sts|stitch|stitches))?\s+as\s+if\s+to\s+(purl|knit)\b", r"\1 \2wise", "Sl 1 as if to purl, k to end"),
    row("last r", r"^\s*last\s+(row|rnd|round)\s*:", r"next \1:", "Last round: k2tog around (8 sts)"),
    row("(", r"^(\s*(?:row|rnd|round|next\s+(?:row|rnd|round))\b[^:*]*:\s*[^:]*?[a-z])\s*[(\[]\s*(\d{1,3})\s*[)\]]\s*\.?\s*$", r"\1 (\2 sts)", "Row 2: purl (16)"),
    row("waste|scrap", rf"\b(?:k|knit)\s*({N})(?:\s+{STS})?\s+(?P<said>(?:with|using|in|onto)\s+(?:a\s+(?:length|piece|strand)\s+of\s+)?(?:waste|scrap|contrast(?:ing)?)\s+yarn\s*[,;]?\s*(?:then\s+|and\s+)?(?:slip|sl|place|return|put|move)\s+(?:these|them|those|the\s+same)\s*(?:\d+\s+)?(?:waste\s+yarn\s+|scrap\s+)?(?:(?:sts|stitches)\s+)?(?:back\s+)?(?:on)?to\s+(?:the\s+)?left(?:-?\s?hand)?\s+needle\s*[,;]?\s*(?:then\s+|and\s+)?(?:k|knit)\s+(?:them|these|those|the\s+same)(?:\s+\d+)?(?:\s+(?:sts|stitches))?(?:\s+again)?(?:\s+(?:with|in|using)\s+{_MAIN})?)(?=\s*[,.;]|\s*$)", r"k\1", "K3, k8 with waste yarn, slip these 8 sts back to left needle and knit them again, k to end.", spelt_out=True),
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
)  # fmt: skip
"""The rows, in the order tried."""
