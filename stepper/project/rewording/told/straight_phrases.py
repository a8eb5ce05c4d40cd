"""The phrases of which a sentence about work without shaping is made: what, in which fabric, how far, to which row. No I/O.

"Continue in MC without shaping until yoke measures 20 cm from the end of the ribbing, finishing with a WS row" and
"St st with 3 garter sts at each edge, until same length as the back, end WS" are made of the same few phrases in any
order. Each is of one of a few kinds (`STRAIGHT`), told by how it begins; what they mean together is for `straight`.
Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.craft.needles import BARE_SIZE, MM_SIZE, ROLE_SIZE, SIZE, UK_SIZE
from stepper.craft.stitch_patterns import KNOWN, RIB, TEXTURE
from stepper.project.part_names import PART, PIECE, WHICH
from stepper.project.rewording.on_needles.stops import SHORT
from stepper.project.rewording.synonym import ROUND, STS, N
from stepper.project.rewording.told.numbers import LARGE
from stepper.project.rewording.told.phrases import Kinds, prepare_kinds

_KNIT: Final = r"k\.?\s?\d{1,2}(?:\s*(?:-?tbl|through\s+(?:the\s+)?back\s+loops?))?|knit\s+\d{1,2}"
_PURL: Final = r"p\.?\s?\d{1,2}(?:\s*-?tbl)?|purl\s+\d{1,2}"
_STS: Final = rf"(?:(?:{_KNIT})\s*[,.]?\s*(?:{_PURL})|(?:{_PURL})\s*[,.]?\s*(?:{_KNIT}))"
"""The repeat of a rib, told by its stitches."""
_NAMED: Final = rf"(?:{RIB}|{KNOWN}|{TEXTURE}|rib(?:bing)?|(?:the\s+)?(?:established\s+)?(?:pattern|patt\b\.?))(?![\w-])"
_FABRIC_BEHIND: Final = r"(?!\s+(?:the\s+)?(?:rib|garter|st\b|stock|moss|seed|patt|[kp]\s?\d|\d|\())"
_UNIT: Final = rf'(?:(?:cms?|ins?)\b\.(?=\s*(?-i:[a-z(,;\[]))|cms?\b|mm\b|inch(?:es)?\b|ins\b|in\b{_FABRIC_BEHIND}|")'
_MUCH: Final = r"(?:\d|[¼½¾⅛⅜⅝⅞])[\d\s./¼½¾⅛⅜⅝⅞]*(?:\s*[(\[][\d\s.,;:/¼½¾⅛⅜⅝⅞-]*[)\]])?"
LENGTH: Final = rf"(?:{_MUCH}\s*{_UNIT}(?:\s*(?:[/=]\s*)?(?:[(\[]\s*)?{_MUCH}\s*{_UNIT}(?:\s*[)\]])?)?)"
"""A length as printed, in one unit or two."""
_ABOUT: Final = r"(?P<about>(?:about|approx(?:imately)?\.?|roughly|around|ca\.?)\s+)?"
_TALL: Final = r"(?:\s+(?:long|tall|high|deep|in\s+(?:total\s+)?(?:length|height|depth)|altogether|in\s+(?:all|total)))?"
_CAST: Final = r"(?:cast-?\s?on|co|lower|bottom|cast-?\s?on/lower)(?:\s+(?:edge|row|rnd|round))?|(?:very\s+)?(?:beg\b\.?|beginning|start|commencement)(?:\s+of\s+(?:the\s+)?(?:work|piece))?|beginning\s+edge"
_RIBS: Final = r"(?:rib(?:bing)?|welt|cuff|hem|border|band|neckband|collar|edging|brim|heel|toe|gusset|waistband)"
FROM: Final = (
    r"(?:\s*,?\s*(?:(?:when\s+)?(?:measured|measuring)\s+)?(?:straight\s+)?(?:(?:up|down)\s+)?(?:"
    rf"(?:from|above|beyond|below)\s+(?:the\s+|your\s+)?(?:(?P<ribs>(?<=above\s){_RIBS}|(?<=above\sthe\s){_RIBS}|(?:end|top|edge|last\s+(?:row|rnd|round))\s+of\s+(?:the\s+)?{_RIBS})"
    r"|(?P<underarm>(?:underarm|armpit|armhole\s+divide|separation|divid(?:e|ing|ion)(?:\s+(?:row|rnd|round))?|split)s?(?:\s+(?:co|cast-?\s?on|edge))?)"
    r"|(?P<markers>(?:side\s+)?(?:markers?|marked\s+(?:row|rnd|round)))"
    r"|(?P<picked>pick-?\s?up(?:\s+(?:edge|row|rnd|round))?|picked-up\s+(?:edge|sts)|where\s+(?:you|the\s+sts\s+were)\s+picked\s+up(?:\s+(?:the\s+)?sts)?)"
    r"|(?P<heel>(?:(?:back|base|bottom)\s+of\s+(?:the\s+)?)?heel(?!\s+(?:flap|turn|shap)))"
    r"|(?P<armhole>(?:(?:beg(?:inning)?|start)\s+of\s+(?:the\s+)?)armhole(?:\s+shapings?)?)"
    rf"|(?P<cast>(?:(?<=from\s)|(?<=from\sthe\s))(?:{_CAST})(?!\s+(?:of|at)\b))"
    r"))(?![\w-]))?"
)
"""From where a length is measured, if it is said: one group for each place."""
ALONG: Final = (
    r"(?:\s*,?\s*(?P<along>(?:(?:when\s+)?(?:measured|measuring)\s+)?(?:straight\s+)?(?:(?:up|down|along|at|on|over)\s+)?(?:the\s+)?"
    r"(?:(?:centre|center|mid)(?:\s+of\s+(?:the\s+)?)?[-\s](?:front|back)|straight|(?:inside|outside|inner|outer|under)(?:\s*(?:edge|seam|leg|side|arm))?|(?:in|under)side|inseam|seam|(?:side|sleeve|underarm|selvedge|selvage)(?:\s+(?:edge|seam))?|edge)"
    r"|(?:when\s+)?(?:(?:very\s+)?slightly\s+stretched|laid\s+flat)))?"
)
"""Along which line it is measured, which only says."""
_UNTIL: Final = r"(?:until|till)"
_WHOLE: Final = r"(?:(?:the|this|your|whole|entire|total|finished)\s+)*"
_IS: Final = r"(?:measures?|meas\b\.?|is|'s|are|reach(?:es)?|has\s+reached|comes\s+to)"
_WHAT: Final = (
    rf"(?:{_WHOLE}(?:(?P<armholes>armholes?)|(?P<what>{PIECE}(?!\s+(?:markers?|edge)\b)|it))(?P<seam>\s+seam)?)"
)
MEASURED: Final = (
    rf"{_WHAT}\s*,?(?:\s*from\s+(?:the\s+)?(?P<first>(?:markers?|beg\b\.?|beginning|cast-?\s?on(?:\s+edge)?|start)))?\s*,?\s*{_IS}\s+{_ABOUT}(?P<long>{LENGTH}){_TALL}{FROM}{ALONG}"
)
"""That something measures a length, wherever from."""
_OTHER: Final = rf"(?:(?:(?:that|those)\s+(?:of|on|for)|on|for|of|in)\s+)?(?:the\s+)?(?P<other>{WHICH}{PART}s?)(?:\s+(?:armholes?|piece))?"
_UPTO: Final = r"(?:\s+(?:(?:up\s+)?to|at|before)\s+(?:the\s+)?(?:(?:beg(?:inning)?|start)\s+of\s+(?:the\s+)?)?(?P<upto>shoulder|armhole|underarm|neck|raglan)s?(?:\s+shapings?)?)?"
_SIDE: Final = r"(?P<side>RS|WS|right[-\s]side|wrong[-\s]side|purl|knit|[pk]\b\.?)"
_END: Final = r"(?:end(?:ing)?|finish(?:ing)?|stop(?:ping)?)"
_AN: Final = r"(?:an?\s+|the\s+)?"
_EDGES: Final = r"(?:at\s+(?:each|either|both)\s+(?:edges?|ends?|sides?)(?:\s+of\s+(?:the\s+)?(?:row|work|piece))?)"
_EDGING: Final = r"(?P<{0}>(?:garter|seed|moss)(?:\s+st(?:itch)?\b)?)"
_YARN: Final = r"(?:yarn\s+(?-i:[A-H])\b|(?-i:MC|CC\d?)\b)"
_SHAPED: Final = r"(?:any\s+|further\s+|more\s+)*(?:shaping|increas(?:es|ing|e)|decreas(?:es|ing|e)|incs|decs)(?:\s+or\s+(?:increas(?:es|ing|e)|decreas(?:es|ing|e)))?"
_PANEL: Final = r"(?:(?:the\s+)?(?:[a-z]+\s+){0,2}(?:panel|cable|chart|lace|motif|rib)s?(?:\s+[a-z])?)"
_REST: Final = rf"(?:(?:the\s+)?(?:rest|(?:rem(?:aining)?\.?|other)\s+{STS})(?:\s+(?:is|are))?\s+(?:in\s+)?(?:{KNOWN}))"

STRAIGHT: Final[Kinds] = prepare_kinds(
    # --- with what ---
    ("change", rf"(?:change|switch|go\s+over)\s+(?:back\s+)?to\s+(?:the\s+)?(?:(?P<size>{SIZE}|{UK_SIZE}|smaller|larger|{ROLE_SIZE})\s+(?:needles?|ndls?\b)|(?P<mm>{MM_SIZE})(?!\s*(?:\(|needles?|ndls?|circ|double|dpn|long)))"),
    ("needle", rf"(?P<with>(?:with|on|using)\s+)?(?:the\s+)?(?P<size>{SIZE}|{UK_SIZE}|smaller|larger|{ROLE_SIZE})\s+(?:needles?|ndls?\b)(?:\s*:(?=\s))?"),
    ("needle", rf"(?P<with>with|on|using)\s+(?:(?P<size>{BARE_SIZE})\s+needles?|needles?\s+(?:size\s+|no\.?\s*)?(?P<mm>{MM_SIZE}))"),
    ("yarn", rf"(?:with|using|in)\s+(?P<yarn>{_YARN})(?:\s+(?:only|alone))?(?!\s*(?:and|&|,)\s*{_YARN})"),
    # --- what is only said of it ---
    ("beginning", r"(?:(?:beg\b\.?|beginning|begin|starting|start)\s+(?:with|on)|first\s+row(?:\s+is)?)\s+(?:an?\s+)?(?P<side>RS|WS|right[-\s]side|wrong[-\s]side|purl|knit|[pk]\b\.?)(?:\s+row)(?:\s+first)?(?![\w-])"),
    ("beside", rf"(?:(?:and|with|working|keeping)\s+)?{_PANEL}\s+(?:between|inside)\s+(?:the\s+)?(?:markers?|ms)(?:\s*,?\s+(?:and\s+)?{_REST})?"),
    ("beside", r"(?:(?:keeping|with|keep)\s+)?(?:the\s+)?(?:cables?|panels?|rib(?:bing)?|patt(?:ern)?\.?|lace|stripes?|motifs?)\s+(?:in\s+place|correct|going|continuous|in\s+patt(?:ern)?)(?![\w-])"),
    ("beside", r"(?:keeping|with)\s+(?:the\s+)?(?:[a-z]+\s+)?(?:cables?|panels?|rib(?:bing)?|lace|stripes?|motifs?)\s+as\s+(?:set|est(?:ablished)?)(?![\w-])"),
    ("beside", r"keeping\s+(?:to\s+|in\s+)?(?:the\s+)?patt(?:ern)?(?:\s+(?:correct|as\s+(?:set|est(?:ablished)?)))?\b"),
    # --- the stitches at the edges ---
    ("keep", rf"(?:(?:with|keeping|working)\s+)(?:the\s+|an?\s+)?(?P<n>{N})\s+{_EDGING.format('edge')}\s+(?:edge\s+)?{STS}\s+{_EDGES}"),
    ("keep", rf"(?:(?:with|keeping|working)\s+)(?:the\s+|an?\s+)?(?P<n>{N})\s+edge\s+{STS}\s+in\s+{_EDGING.format('edge')}\s+{_EDGES}"),
    ("keep", rf"(?:(?:with|keeping|working)\s+)(?:the\s+)?first\s+and\s+last\s+(?P<n>{N})\s+{STS}(?:\s+of\s+(?:every|each)\s+row)?\s+in\s+{_EDGING.format('edge')}(?:\s+throughout)?"),
    ("keep", rf"(?:(?:with|keeping|working)\s+)(?:the\s+)?(?P<n>{N})\s+{STS}\s+{_EDGES}\s+in\s+{_EDGING.format('edge')}(?:\s+throughout)?"),
    ("keep", rf"(?:(?:with|keeping|working)\s+)(?:the\s+)?(?P<n>{N})\s+{STS}\s+in\s+{_EDGING.format('edge')}\s+{_EDGES}(?:\s+throughout)?"),
    # --- a change in the last row ---
    ("last", rf"(?:in|on|and\s+in|and\s+on)\s+(?:this|the)\s+last\s+(?:row|rnd|round)\s*,?\s+(?P<dir>inc|dec)(?:reas)?(?:e|ing)?\.?\s+(?P<n>{N})\s+{STS}(?P<where>\s+(?:evenly(?:\s+(?:across|spaced|around))?|spaced\s+evenly|somewhere\s+near\s+the\s+sides?))?"),
    ("last", rf"(?P<dir>inc|dec)(?:reas)?(?:e|ing)?\.?\s+(?P<n>{N})\s+{STS}(?P<where>\s+evenly(?:\s+(?:across|spaced|around))?)?\s+(?:in|on|across)\s+(?:this|the)?\s*last\s+(?:row|rnd|round)(?P<behind>\s+evenly)?"),
    # --- to which row ---
    ("short", SHORT),
    ("edge", rf"(?:so\s+(?:as\s+)?)?{_END}\s+at\s+(?:the\s+)?(?P<edge>neck|armhole|front|side)\s+edge"),
    ("ending", rf"(?:so\s+that\s+)?(?:(?:the\s+|your\s+)?last\s+(?:{ROUND})?(?:\s*(?:(?:you\s+)?(?:worked|work|knit)\s+)?(?:is|being|should\s+be|will\s+be|must\s+be))?|{_END}(?:\s+(?:with|on|after)|\s*,?\s+at\s+(?:the\s+)?end\s+of|\s+having\s+(?:just\s+)?(?:done|worked))?)\s+{_AN}(?:{_SIDE}(?:\s+row)?(?!\s+facing|\s*\d)|(?:(?:row|rnd|round)\s+(?P<number>\d{{1,2}})|(?P<nth>\d{{1,2}})(?:st|nd|rd|th)\s+(?:(?:patt(?:ern)?|rib)\s+)?(?:row|rnd|round))(?:\s+of\s+(?:the\s+)?patt(?:ern)?)?)(?![\w-])"),
    ("ending", rf"(?:so\s+that\s+)?(?:{_END}\s+)?(?:with\s+)?(?:the\s+)?(?P<facing>RS|WS|right\s+side|wrong\s+side)(?:\s+of\s+(?:the\s+)?work)?\s+(?:is\s+)?facing(?:\s+you)?(?:\s+for\s+(?:the\s+)?next\s+row)?(?![\w-])"),
    ("ending", rf"{_END}\s+(?:so\s+(?:that\s+)?(?:you(?:'re|\s+are)\s+)?)?ready\s+(?:to\s+(?:work|begin|start)|for)\s+{_AN}(?P<facing>RS|WS|right\s+side|wrong\s+side)\s+row"),
    # --- how far ---
    ("till", rf"to\s+(?P<until>(?:the\s+)(?P<what>{PIECE})\s+measures\s+(?P<long>{LENGTH}){FROM})"),
    ("length", rf"(?:(?:up\s+)?to|{_UNTIL}(?:\s+you\s+(?:have|reach))?)\s+{_ABOUT}(?P<long>{LENGTH}){_TALL}{FROM}{ALONG}"),
    ("until", rf"{_UNTIL}\s+{MEASURED}"),
    ("like", rf"(?:{_UNTIL}\s+(?:{_WHAT}\s*)?(?:(?:{_IS}|has)\s+)?|(?:up\s+)?to\s+)?(?:exactly\s+)?(?:(?:the\s+)?same(?:\s+(?P<own>armhole))?(?:\s+(?:length|depth|height))?\s+as|(?:the\s+same\s+number\s+of|as\s+many)\s+(?:rows|rounds|ridges)\s+as|as\s+(?:long|deep|high)\s+as|match(?:es)?|equals?|equal\s+to|=)\s+{_OTHER}(?:\s+(?:is|in\s+length|has|measures))?{_UPTO}(?:\s*,\s*(?P<about>(?:about\s+)?(?P<also>{LENGTH})))?(?![\w-])"),
    ("until", rf"to\s+(?:an?\s+)?(?P<armholes>armhole)\s+(?:depth|length|height)\s+(?:of\s+)?{_ABOUT}(?P<long>{LENGTH})"),
    ("until", r"(?P<raw>(?:until|till)\s+(?!(?:you|there)\b)(?:[^*:.;]|(?<=\d)\.(?=\d))+?(?:measures?|is|reach(?:es)?)\b(?:[^*:.;]|(?<=\d)\.(?=\d))+?)(?=\s*\.?\s*$|\s*\.\s+(?-i:[A-Z])|\s*[,;]\s*(?:end(?:ing)?\s+|finish(?:ing)?\s+|\(|so\s+that|the\s+last)\b)"),
    ("rounds", rf"(?:for\s+|x\s+)?(?:the\s+)?(?:next\s+|first\s+|a\s+further\s+|another\s+)?(?P<number>{N})\s+(?:full\s+|whole\s+)?(?P<more>(?:more|further|additional)\s+)?(?P<row>{ROUND})(?P<again>\s+more)?"),
    ("ridges", rf"(?:for\s+)?(?P<number>{N}|{LARGE})\s+(?:garter\s+)?ridges\b"),
    ("follow", r"(?:now\s+)?(?:follow|come\s+next)(?=\s*\.?\s*$)"),
    ("next", rf"(?:the\s+)next\s+(?P<row>{ROUND})"),
    ("long", rf"(?:for\s+)?(?:the\s+(?:first|last|next)\s+)?(?:another\s+|a\s+further\s+)?{_ABOUT}(?P<long>{LENGTH})(?:\s+(?:more|further))?(?:\s+of(?=\s))?(?:\s+only\b)?"),
    # --- in what ---
    # --- what is worked again ---
    ("rep", rf"(?:(?:keep|go)(?:\s+on)?\s+repeating|cont(?:inue|\.)?\s+(?:to\s+repeat|repeating)|rep(?:eat)?\b\.?)\s+(?P<rows>(?:these|the\s+last|last|the\s+above|both)\s+(?:{N}\s+)?{ROUND}|(?:the\s+)?{ROUND}\s+\d{{1,2}}(?:\s*(?:-|and|&|to)\s*\d{{1,2}})?)(?:\s+(?:over\s+and\s+over|alternately|in\s+turn))?"),
    ("rep", rf"(?:work|rep(?:eat)?)\s+(?P<rows>(?:the\s+)?{N}\s+{ROUND}\s+of\s+(?:the\s+)?(?-i:[A-Z][\w'-]*)(?:\s+(?-i:[A-Z][\w'-]*)){{0,2}})(?:\s+over\s+and\s+over(?:\s+again)?)?(?=\s+(?:until|till|for)\b)"),
    ("ribbed", rf"(?:in\s+|as\s+|of\s+)?(?:the\s+)?(?P<rib>(?:(?:twisted|half[-\s]twisted|single|double)\s+)?rib(?:bing)?|(?P<k>\d)\s?[x/]\s?(?P<p>\d)\s+rib(?:bing)?(?=\W+(?:k|knit)\s?(?P=k)\W+(?:p|purl)\s?(?P=p)\b))\s*(?:\(|as\s+|of\s+|in\s+|[,:-]\s*)?\s*(?P<sts>{_STS})\s*\)?(?:\s+(?:all\s+)?around)?(?![\w-])"),
    ("ribbed", rf"(?:in\s+|as\s+|of\s+)(?:(?:rounds|rnds|rows)\s+of\s+)?\(?\s*(?P<sts>{_STS})\s*\)?(?:\s+rib(?:bing)?)?(?![\w-])"),
    ("given", rf"(?:in\s+|of\s+)?(?:the\s+)?(?:{RIB}|rib(?:bing)?)\s*,?\s+(?:exactly\s+)?(?:as\s+(?:(?:given|worked|set)\s+)?(?:for|on)|the\s+same\s+way\s+as\s+(?:for|on))\s+(?:the\s+)?(?P<part>back|front|body|(?:left\s+|right\s+)(?:front|sleeve)|sleeve|cuff|hem)(?![\w-])"),
    ("fabric", rf"(?:in\s+|of\s+)?(?:(?P<rounds>rounds|rnds|rows)\s+of\s+)?(?:the\s+)?(?:(?P<set>established|set)\s+)?(?P<fabric>{_NAMED})(?:\s*\((?:even|straight)\))?"),
    ("ribbed", rf"\(?\s*(?P<sts>{_STS})\s*\)?(?:\s+rib(?:bing)?)?(?:\s+(?:all\s+)?a?round)?(?![\w-])"),
    # --- how ---
    ("round", r"(?:in\s+(?:the\s+(?:round|rnd)|rounds|rnds|circles)|(?P<around>a?round\s+and\s+a?round|all\s+(?:the\s+way\s+)?a?round|around|round(?!\s+\d))(?!\s+(?:the|your|each|both|all|neck|arm))|circularly)\b"),
    ("flat", r"(?:(?:still\s+)?(?:back\s+and\s+forth(?:\s+in\s+rows)?|to\s+and\s+fro|flat|in\s+rows))\b"),
    ("even", rf"(?:straight(?:\s+(?:up(?!\s+to)|on))?|even(?:ly)?|(?:with\s+)?no\s+(?:more|further)\s+shaping|without\s+{_SHAPED})\b(?!\s+down\b)"),
    ("set", r"as\s+(?:set|est(?:ablished)?\b\.?|before|you\s+(?:are|were))(?![\w-])"),
    ("every", r"(?:knit\s+)?every\s+(?:single\s+)?(?:round|rnd)\b"),
    ("plain", r"plain\b"),
    ("said", r"\(\s*(?:for\s+)?(?:the\s+)?(?:turning|fold|purl|hem|garter)\s*-?(?:ridge|line|row|rnd|round|edge)\s*\)"),
    ("these", rf"(?:on|over)\s+(?:these|those)\s+(?P<n>{N})\s+(?:sts|stitches)\b(?:\s+(?:only|alone))?"),
    ("all", r"(?:(?:on|over)\s+)?all\s+(?:of\s+)?(?:the\s+)?(?:sts|stitches)\b"),
    ("part", rf"for\s+(?:(?:the|your|an?|this)\s+)?(?:front\s+|back\s+|left\s+|right\s+|lower\s+|upper\s+)?(?:{PIECE}|facing|turning|welt|heel|toe|gusset|flap|lining|picot|strip|frill|ruffle|peplum|tail)\b(?!\s+(?:sts|markers?|shap))"),
    ("part", rf"(?:on\s+)?(?:the\s+|this\s+|your\s+)(?:rest\s+of\s+the\s+|whole\s+|entire\s+)?{PIECE}\b(?!\s+sts)"),
    ("do", r"(?:(?:begin|start|end|finish(?:\s+(?:off|up))?|follow(?:\s+(?:this|it))?)\s+with|do|make|(?:change|switch|go\s+over)\s+to|continue\s+to\s+(?:knit|work)|[kp](?=\s+(?:a?round|straight|even|in\s+(?:the\s+)?(?:rnds?|rounds?)|every|each)\b)|(?:work|continu(?:e|ing)|cont\b\.?|rib|proceed|go\s+on|carry\s+on|keep(?:ing)?(?:\s+to(?=\s+(?:garter|st|stock|rib|moss|seed|patt|the\s+patt)))?|knit|purl)(?:\s+(?:on\s+)?(?:working|knitting|ribbing|going))?|(?:work|knit)ing)(?![\w-])"),
    ("lead", r"(?:(?:now|again|then|next|just|simply|first|please|follows?|comes?|from\s+(?:here|now|this\s+point)(?:\s+on(?:wards?)?)?)\b\s*)"),
)  # fmt: skip
"""The kinds of phrases of which such a sentence is made, in the order tried."""
