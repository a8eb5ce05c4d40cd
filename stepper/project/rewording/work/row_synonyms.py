"""Other wordings for what is worked inside a row or round, for its edges and its shaping. No I/O."""

from __future__ import annotations

from stepper.project.rewording.synonym import END, HELD_BY, OFF, ROUND, STS, N, Synonym, row

_PUT = r"(?:place|put|slip|sl|leave|transfer)"
_NOTHING_WORKED = (
    r"((?:^|[.:;]\s)(?:(?!\b(?:k|p|knit|purl|work|sl|slip)\s*\d+(?!\d*\s*(?:rows?|rnds?|rounds?|cm|in)\b))[^.;:])*?)"
)
"""The sentence so far, without a stitch worked: in "k11, place these sts on a holder" they are those eleven, which is
not what a hold of the stitches to come does."""

ROWS: tuple[Synonym, ...] = (
    # --- inside a round ---
    row(
        "even|odd",
        rf"^(\s*)(?:all|every)\s+(?:the\s+)?(even|odd)(?:[-\s]numbered)?\s+({ROUND})\s+(?:from\s+)?(\d+)\s*(?:-|to|through)\s*(\d+)\s*:",
        r"\1\2 \3 \4-\5:",
        "Every even round from 2 to 6: Knit.",
    ),
    row("st", rf"\s*(?::\s|=)\s*({N}\s+{STS})(?=\s*[.]?\s*$)", r". \1", "K1, k2tog, k to end: 78 sts."),
    row(
        "even|odd",
        rf"^(\s*)({ROUND})\s+(\d+)\s*(?:-|to|through)\s*(\d+)\s*,?\s*\(?\s*(even|odd)(?:[-\s]numbered)?(?:\s+{ROUND}(?:\s+only)?)?\s*\)?\s*:",
        r"\1\5 \2 \3-\4:",
        "Rnds 2-6 (even rnds only): Knit.",
    ),
    row(
        "across|all|round",
        rf"\b(?!(?:k|p|knit|purl)\s+across{END})(k|p|knit|purl|work)\s+(?:across|around|all)(?:\s+(?:all|the|these|rem(?:aining)?))*(?:\s+(?:{STS}|{ROUND}))?{END}",
        r"\1 to end",
        "K across all sts.",
    ),
    row(
        "last",
        rf"\b(to\s+last\s+{N}\s+{STS})\s+(?:of|in|on)\s+(?:the\s+)?(?:{ROUND}|needle\b)",
        r"\1",
        "K to last 3 stitches of the round, ssk, k1.",
    ),
    row(
        "until",
        rf"\b(k|p|knit|purl|work)\s+until\s+({N})\s+{STS}\s+(?:rem(?:ain)?s?|(?:are\s+)?left)\b",
        r"\1 to last \2 sts",
        "K until 3 sts rem, k2tog, k1.",
    ),
    row(
        "next",
        rf"\b(k|p|knit|purl|bo|{OFF})\s+(?:the\s+)?next\s+(?=\d)",
        r"\1 ",
        "K20, BO next 20 sts, k to end.",
    ),
    # In the middle of a row: at the beginning of a line it is worked up to there first, as it is in every row.
    row(
        "cent|middle",
        rf"^(\s*(?:[^:,;.]*:)?\s*)({OFF}|bo)\s+(?:the\s+)?(?:cent(?:er|re)|middle)\s+({N})(?:\s+{STS})?",
        r"\1work in pattern to center \3 sts, \2 \3 sts",
        "Bind off center 16 sts.",
    ),
    row(
        "to cent|to the cent",
        rf"\bto\s+(?:the\s+)?cent(?:er|re)\s*,\s*(?:then\s+)?({OFF}|bo)\s+(?:the\s+)?(?:cent(?:er|re)|middle)\s+({N})(?:\s+{STS})?",
        r"to center \2 sts, \1 \2 sts",
        "Work to center, bind off center 16 sts, work to end.",
    ),
    row(
        "first",
        rf"\b(k|p|knit|purl|bo|{OFF})\s+(?=(?P<said>(?:the\s+)?first\s+{N}(?:\s+{STS})?))(?:the\s+)?first\s+(?=\d)",
        r"\1 ",
        "Bind off first 5 sts, k to end.",
    ),
    row(
        "cent|last|middle",
        rf"(?:(?<=[,;)]\s)|(?<=\bthen\s)|(?<=\band\s))(k|p|knit|purl|bo|{OFF})\s+"
        rf"(?=(?P<said>(?:the\s+)?(?:last|cent(?:er|re)|middle)\s+{N}(?:\s+{STS})?))(?:the\s+)?(?:last|cent(?:er|re)|middle)\s+(?=\d)",
        r"\1 ",
        "K20, BO center 20 sts, k to end.",
    ),
    row(
        "across|around|end",
        r"\*((?:(?!\brep(?:eat)?\b)[^*])+?)[,;]?\s*\*\s*,?\s*(?:(?:rep(?:eat)?)\s+(?:from\s+\*\s+to\s+\*\s+)?)?(?:around|across|to\s+end)\b",
        r"*\1; rep from * to end",
        "Next rnd: *K8, k2tog* around.",
    ),
    row(
        "times",
        r"\*((?:(?!\brep(?:eat)?\b)[^*])+?)[,;]?\s*\*\s*,?\s*(?=\S+\s+times\b)",
        r"(\1) ",
        "*K8, k2tog* 3 times, k to end.",
    ),
    row(
        "across|around|end",
        r"([)\]])\s*,?\s*(?:rep(?:eat)?\s+)?(?:around|across|to\s+end)\b",
        r"\1 to end",
        "Next round: (K8, k2tog) around.",
    ),
    row(
        "fit|possible",
        r"\b(as\s+(?:many\s+times|often)\s+as\s+(?:(?:it|they|will|you|possible|can|fits?)\b\s*)+)\s*,?\s*end(?:ing)?(?:\s+with)?\s+(?=[a-z])",
        r"\1, ",
        "*K5, p2; rep from * as many times as fit, end k1.",
    ),
    row("rib", r"\brib\s+(?=to\s+(?:end|last|m\b|marker|within|\d))", "work in rib ", "K2, rib to end."),
    row(
        "patt",
        r"(?<!in )(?<!the )\bpatt(?:ern)?\s+(?=to\s+(?:end|last|m\b|marker|within|\d))",
        "work in pattern ",
        "K2, patt to end.",
    ),
    row(
        "between",
        r"\brep(?:eat)?\s+(?=between\s+(?:the\s+)?markers\b)",
        "rep from * ",
        "*K2, p2; rep between markers.",
    ),
    row(
        "wrap",
        r"\bwrap\s+(?:(?:the\s+)?next\s+st(?:itch)?\s*(?:,\s*(?:and\s+)?|and\s+)|(?:&|and)\s+)turn\b",
        "w&t",
        "K to last 5 sts, wrap next st, turn.",
    ),
    row(
        "double|ds",
        r"(^\s*|[:,]\s*)(?:m?ds|double\s+st(?:itch)?)(?=\s*,)",
        r"\1make a ds",
        "MDS, p to last 5 sts, turn.",
    ),
    row(
        "turn",
        r"\bturn\s+and\s+(?:proceed|continue|cont|work|go\s+on)\s+as\s+follows(?=\s*[.:,;]|\s*$)",
        "turn",
        "K20, turn and proceed as follows.",
    ),
    row(
        "unworked",
        rf"\bturn(?:\s+(?:the\s+|your\s+)?work)?\s*,?\s*(?:and\s+)?(?P<said>leav(?:e|ing)\s+(?:the\s+)?(?:rem(?:aining)?\s+|last\s+|other\s+)*{STS}\s+unworked)\b",
        "turn",
        "K20, turn, leaving rem sts unworked.",
        spelt_out=True,
    ),
    row(
        "unworked",
        rf"\bturn(?:\s+(?:the\s+|your\s+)?work)?\s*,?\s*(?:and\s+)?leav(?:e|ing)\s+(?:the\s+)?(?:rem(?:aining)?\s+|last\s+|other\s+)*({N})\s+{STS}\s+unworked\b",
        r"turn leaving \1 sts",
        "K20, turn, leaving rem 10 sts unworked.",
    ),
    row("k2tog", r"\bsl(?:ip)?\s*1\s*[,-]\s*k2tog\s*[,-]\s*psso\b", "sk2p", "Yo, sl 1, k2tog, psso, yo."),
    row("psso", r"\bsl(?:ip)?\s*1\s*[,-]\s*k1\s*[,-]\s*psso\b", "skp", "K1, sl1, k1, psso, k to end."),
    row(
        "p2sso",
        r"\bsl(?:ip)?\s*2\s*(?:tog(?:ether)?\s*)?(?:kwise|knitwise)?\s*[,-]\s*k1\s*[,-]\s*p2sso\b",
        "s2kp",
        "K1, sl2 knitwise, k1, p2sso, k to end.",
    ),
    row(
        "tog",
        r"\b(?:knit|k)\s?(?:2|two)\s+tog(?:ether)?\b",
        "k2tog",
        "Knit to last 2 sts, knit two together.",
    ),
    row("tog", r"\b(?:purl|p)\s?(?:2|two)\s+tog(?:ether)?\b", "p2tog", "Purl two together, purl to end."),
    row("tog", r"\b([kp][23]tog)tbl\b", r"\1 tbl", "P2togtbl, p to end."),
    row("tbl", r"\b([kp])\s+tbl\s+(\d+)", r"\1\2 tbl", "K tbl 1, p to end."),
    row(
        "next",
        r"\b(inc|dec|mb|make\s+bobble)\s+in(?:to)?\s+(?:the\s+)?next\s+st(?:itch)?\b",
        r"\1 1",
        "K3, make bobble in next st, k3.",
    ),
    row("m", r"\b(mb|make\s+bobble)\s+1\b", r"\1", "K3, mb in next st, k3."),
    row("slip", r"\bslip\s+(?=\d)", "sl ", "Slip 1 purlwise, knit to end."),
    row(
        "chart",
        r"\bwork\s+(?:across\s+)?(?:the\s+)?next\s+(?:row|rnd|round)\s+of\s+(?=(?:the\s+)?chart\b)",
        "work next round of ",
        "K3, work next row of chart fern to last 3 sts, k3.",
    ),
    # --- cast on, bind off, hold, pick up ---
    row("bo", r"\bbo\b(?!\s*\d)", "bind off", "BO in patt."),
    row(
        "needle",
        rf"\b(?:join\b(?P<said>[^.,;\d]*?)\b(?:with|using)\s+(?:an?\s+|the\s+)?three[-\s]needle\s+bind[-\s]?off|(?:{OFF}(?:\s+(?:all|the|these|rem(?:aining)?|shoulder|both|sets|of|sts|stitches|together|tog))*\s+(?:with|using)\s+(?:an?\s+|the\s+)?)?three[-\s]needle\s+bind[-\s]?off)\b",
        "bind off with a three-needle bind-off",
        "Join shoulders with a three-needle bind-off.",
    ),
    row(
        "using",
        rf"\b(bo|{OFF})((?:\s+(?:all|rem(?:aining)?|sts|stitches|in|patt(?:ern)?|rib|loosely))*)\s+(?:using|with)\s+(?:an?\s+|the\s+)?(stretchy|sewn)\s+bind[-\s]?off(?:\s+method)?\b",
        r"\1\2 with a \3 bind-off",
        "Bind off in pattern using a stretchy bind off.",
    ),
    row(
        "grafting",
        rf"\bjoin\s+(?:the\s+)?({N}\s+)?(?P<said>[a-z ]*?){STS}\s+by\s+grafting\b",
        r"graft \1sts",
        "Join 8 underarm sts by grafting.",
    ),
    row(
        "at",
        rf"\b((?:bo|co|{OFF}|cast\s+on)\s+{N}(?:\s+{STS})?(?:\s+for\s+[a-z][a-z ]*?)?)\s+at\s+(?:the\s+)?(?:beg|beginning|start)\s+of\s+(?:the\s+)?next\s+(?:row|rnd|round)\s*,\s*(?:then\s+|and\s+)?(?=(?:work|k|p|knit|purl)\b)",
        r"\1, ",
        "Bind off 5 sts at beg of next row, k to end.",
    ),
    row("pick", r"\b(pick\s+up\s+and\s+)k(?=\s+\d)", r"\1knit", "Pick up and k 12 sts along gusset edge."),
    row(
        "hold|holder|needle|yarn",
        rf"\b{_PUT}\s+(?:the\s+)?(?:(?:next|first|rem(?:aining)?|foll(?:owing)?)\s+)*({N})\s+{STS}\s+(?:on|onto|to)\s+{HELD_BY}",
        r"hold \1 sts",
        "K20, slip next 40 sts to waste yarn, CO 8, k to end.",
    ),
    row(
        "hold|holder|needle|yarn",
        rf"{_NOTHING_WORKED}\b{_PUT}\s+these\s+({N})\s+{STS}\s+(?:on|onto|to)\s+{HELD_BY}",
        r"\1hold \2 sts",
        "Place these 40 sts on a holder.",
    ),
    row(
        "hold|holder|needle|yarn",
        rf"\b{_PUT}\s+(?:(?:the|these|those)\s+)*(?:(?:all|rem(?:aining)?)\s+)+(?:(?:the|these|those|rem(?:aining)?)\s+)*{STS}\s+(?:on|onto|to)\s+{HELD_BY}",
        "hold all sts",
        "Place all sts on hold for front.",
    ),
    row(
        "hold|holder|needle|yarn",
        rf"{_NOTHING_WORKED}\b{_PUT}\s+(?:(?:the|these|those)\s+)*{STS}\s+(?:on|onto|to)\s+{HELD_BY}",
        r"\1hold all sts",
        "Break yarn and place these sts on a holder.",
    ),
    row(
        "needle",
        rf"\b(?:return|place|put|transfer|slip)\s+(?:the\s+)?({N}\s+)?(?:held\s+)?{STS}\s+(?:of|for|from)\s+(?:the\s+)?([a-z][a-z ]*?)\s+(?:back\s+)?(?:on|onto|to)\s+(?:the\s+)?(?:(?:double-pointed\s+)?needles?|dpns?)(?!\s*\d)\b",
        r"return \1\2 to needles",
        "Place held sts for left sleeve on needles.",
    ),
    row(
        "holder",
        rf"\b(k|p|knit|purl)\s*(?:across\s+)?({N})\s+(?:{STS}\s+)?from\s+(?:the\s+)?(?:st(?:itch)?\s+)?holder\b",
        r"\1 across \2 held sts",
        "K40 from holder.",
    ),
    # --- shaping ---
    row(
        "inc|dec",
        rf"\b(inc|dec)\.?(?=\s+(?:evenly\b|{N}\s+(?:{STS}\s+)?evenly\b|to\s+{N}))",
        r"\1rease",
        "Inc 10 sts evenly around.",
    ),
    # --- numbers ---
    row("-", r"([(\[,]\s*)-(?=\s*[,)\]])", r"\10", "K2 (-, 4), p2.", again=True),
    row(
        '"|cm|in|inches',
        r'(\d[\d\s./¼½¾]*?)\s*("|cm|inches|in)(?=\s*[(\[][^)\]]*\2)',
        r"\1",
        'Knit until piece measures 10½" (11", 11½").',
    ),
    row(
        ",",
        r'([(\[][^)\]"]*?\d[\d\s./¼½¾]*?)\s*(?:"|cm|inches|in)(?=\s*,[^)\]]*[)\]])',
        r"\1",
        "Knit until piece measures 25 cm (27 cm, 29 cm).",
        again=True,
    ),
    row(
        '"|cm|in|inches',
        r'(?<![\d.])(\d[\d./¼½¾]*\s*[(\[][^()\[\]"]*?[\d¼½¾])\s*("|cm|inches|in)\s*([)\]])',
        r"\1\3 \2",
        'Knit until piece measures 10½ (11, 11½").',
    ),
)
"""The rows, in the order tried."""
