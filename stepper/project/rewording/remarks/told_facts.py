"""Tell facts with numbers, how a piece is built, and what knitters find, from what orders the same. No I/O.

Theory of operation. Each form spells out every word, so that a number can stand in it: how many repeats lie around,
what can be counted along an edge, how long something is by now. Such a sentence states what follows from lines that
are read beside it; none says what is done, in which rows or for which size. What "is to be", "needs" or "should be
made" is no fact, nor is one with a second half. Source: common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.part_names import PIECE
from stepper.project.rewording.remarks.chart_reading import tells_reading
from stepper.regex import regex

_L: Final = r"(?:\d[\d\s()\[\]{},:/.\u00bd\u00bc\u00be\u2013-]*|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)"
"""A number, or one for each size."""
_STS: Final = r"(?:sts|stitches)"
_HAS: Final = r"(?:there\s+(?:are|will\s+be|should\s+be)|you(?:\s+have|'ll\s+have|\s+will\s+have|\s+should\s+have))(?:\s+(?:now|then|made|about))*"
_MOTIFS: Final = r"(?:repeats?|reps?|panels?|wedges|diamonds|motifs|cables|ropes|leaves|hearts|stars|points|scallops|picots)"
_PATTERN: Final = r"(?:the\s+)?(?:[a-z]+\s+)?(?:pattern|chart|lace|motif|cable)(?:\s+[a-z])?"
_AROUND: Final = (
    r"(?:around|across|all\s+round|(?:in|into|on|per|over)\s+(?:the|each|a|every)?\s*(?:rounds?|rnds?|rows?|wing|half|needle|panel)|(?:on|along)\s+(?:the\s+top\s+of\s+the\s+foot|each\s+(?:side|edge|needle)|the\s+edge|the\s+(?:front|back|instep)))"
)
_LONG: Final = r"(?:cm|mm|ins?\.?|inch(?:es)?|\"|'')"
_FROM: Final = (
    r"(?:from\s+(?:the\s+)?(?:cast[-\s]on(?:\s+edge)?|co(?:\s+edge)?|beg(?:inning)?|start|division|divide|shoulder(?:\s+down)?|underarm|heel|hem|(?:tip|back|middle)\s+of\s+the\s+[a-z]+)"
    r"|with\s+(?:the\s+)?brim\s+(?:un)?folded|without\s+(?:the\s+)?(?:turned-up\s+)?(?:cuff|brim|edge)|when\s+(?:laid\s+flat|blocked|unstretched))"
)
_SHAPED: Final = r"(?:shaping|shapings|increases|decreases|short\s+rows|increasing|decreasing)"
_PLACE: Final = r"(?:(?:cent(?:er|re)|middle|side|sides|start|beginning)(?:\s+of\s+(?:the\s+)?(?:(?:back|front|left|right)\s+)?(?:neck|back|front|body|heel|sole|sleeve|sleeves|palm|rounds?|rnds?))?|(?:underarm|raglan|side)s?(?:\s+lines?)?)"
_PLACE_OF: Final = r"(?:back|front|underarm|side|(?:left|right)\s+(?:shoulder|side|underarm))"
_PLACE_ENDS: Final = r"(?:cent(?:er|re)|mid(?:dle)?)[-\s]+(?:of\s+(?:the\s+)?)?(?:back|front)"
_FINDS: Final = r"(?:(?:the\s+)?(?:hardest|easiest|trickiest|most\s+[a-z]+)|(?:a\s+(?:bit|little)\s+|rather\s+|quite\s+|too\s+)?(?:hard|easy|easier|harder|tricky|fiddly|awkward|boring|slow|difficult|confusing))"
_ROWS: Final = r"(?:(?:the\s+)?(?:first|second|third|last|next)\s+(?:few\s+)?(?:rows?|rounds?|rnds?|stitches)|(?:row|round|rnd)s?\s+\d+(?:\s*(?:-|and|to)\s*\d+)?|it|this|that|them|(?:this|the)\s+(?:part|heel|thumb|cable|bobble|cast-on|chart|row|round|section|technique))"

_CHANGED: Final = (
    rf"{_L}\s*(?:pairs\s+of\s+)?(?:(?:raglan|neck|neckline|armhole|sleeve|body|front|back|waist|hip|bust|gusset|yoke|thumb|toe|heel|shoulder|side)\s+)*(?:inc|dec)(?:reas(?:e|es))?s?(?:\s+(?:rounds|rnds|rows))?"
)
_ON_SIDES: Final = r"(?:\s+(?:on|at|along|in)\s+(?:either|each|both|the|every)\s+(?:(?:neck|armhole|side|raglan|front|sleeve)\s+)?(?:sides?|edges?|ends?|fronts?|sleeves?|markers?|lines?))?"
_MENDED: Final = r"(?:closed|pulled\s+(?:together|tight)|sewn(?:\s+up)?|darned|tightened|stitched(?:\s+up)?|hidden)"

_FACT: Final = regex(
    # which changes are behind her
    rf"(?:from\s+here\s+|(?:and\s+)?remember\s+that\s+)?the\s+(?:rib(?:bing)?|hem|cuffs?|bands?|border|edging|crown|neckband|collar|brim|toe|yoke)\s+(?:will\s+)?(?:adds?|takes?|gives?)\s+(?:another\s+|about\s+|roughly\s+|a\s+further\s+)*{_L}\s*{_LONG}(?:\s+(?:to\s+the\s+length|more|in\s+length))?|"
    rf"(?:the\s+)?[a-z]+\s+(?:is|are)\s+the\s+same\s+(?:back\s+and\s+front|front\s+and\s+back|on\s+both\s+sides)(?:\s*,?\s+and\s+(?:can|may)\s+be\s+worn\s+either\s+way(?:\s+round)?)?|"
    r"(?:i|we)\s+(?:also\s+|then\s+)?(?:soaked|washed|blocked|steamed|dried|pressed|pinned|ripped|frogged|twisted|rinsed|wore)(?:\s+(?:mine|it|them|ours|this|everything))?(?:\s+(?:back|out|twice|again|flat|in|by|on|the|a|my|our|over|with|sink|bath|bathtub|towel|woodstove|stove|fire|radiator|board|sun|night|overnight|once|whole|thing|wool|wash|soap|and|dried|soaked|it|them|pinned))*|"
    r"i\s+(?:use|used|like|prefer)\s+(?:the\s+)?(?:[a-z-]+\s+){1,4}?(?:here\s*|for\s+this\s*)?,?\s*but\s+any\s+(?:sort|kind|method|other|stretchy)(?:\s+(?:one|method|kind|bind-off|cast-on))?\s+(?:will\s+do|works|is\s+fine|will\s+work)|"
    r"(?:leave|keep)\s+(?:(?:the|your|working)\s+)*(?:yarn|wool|strand|ball|thread)s?\s+(?:attached|hanging|connected|joined|where\s+it\s+is|in\s+place)(?:\s+(?:for\s+(?:later|now|the\s+[a-z]+)|to\s+be\s+used\s+(?:later|again)|as\s+it\s+will\s+be\s+used\s+(?:later|again)))?|"
    rf"{_HAS}\s+(?:worked|made|done|completed)\s+{_CHANGED}(?:\s*(?:,|,?\s+and)\s+{_CHANGED})*{_ON_SIDES}(?:\s+(?:in\s+all|altogether|in\s+total|so\s+far|by\s+now))?"
    rf"|{_CHANGED}(?:\s*(?:,|,?\s+and)\s+{_CHANGED})*{_ON_SIDES}\s+(?:(?:have\s+been|are|now|have\s+now\s+been)\s+)?(?:worked|made|done|completed|complete)(?:\s+(?:in\s+all|altogether|in\s+total|so\s+far))?|"
    # how it is measured and held, what a double stitch counts for, what lies where by now
    rf"measure(?:\s+(?:it|the\s+work|the\s+piece))?\s+(?:on\s+the\s+flat|on\s+a\s+flat\s+surface|lying\s+flat|laid\s+flat|without\s+stretching(?:\s+it)?)(?:\s*,?\s+(?:and\s+|but\s+)?(?:do\s+not|don't|without)\s+stretch(?:ing)?(?:\s+(?:it|the\s+work))?)?"
    r"|work\s+(?:(?:fairly|very|rather|quite|not\s+too|reasonably|a\s+little)\s+)(?:tightly|loosely|firmly|evenly|snugly)(?:\s+(?:here|throughout))?"
    rf"|(?:the|each|every|a)\s+(?:ds|double\s+(?:st|stitch))\s+(?:is|will\s+be)\s+(?:knitted|knit|worked|purled|counted)\s+as\s+(?:one|a\s+single)\s+(?:st|stitch)(?:\s+(?:when(?:ever)?\s+you\s+(?:meet|come\s+to|reach|get\s+to)\s+it|later(?:\s+on)?))?"
    rf"|the\s+(?:two\s+)?ends\s+of\s+(?:the|your)\s+(?:needle|row|work)\s+are\s+(?:at\s+)?(?:the\s+)?{_PLACE_ENDS}"
    rf"|the\s+first\s+half\s+(?:of\s+the\s+(?:sts|stitches|round|rnd|row)\s+)?is\s+the\s+{_PLACE_OF}\s*[,;]?\s*(?:and\s+)?the\s+second(?:\s+half)?\s+(?:is\s+)?the\s+{_PLACE_OF}"
    rf"|this\s+is\s+(?:now\s+)?the\s+(?:left|right)\s+(?:shoulder|front|sleeve|side|hand|mitten|sock)\s*,?\s*\(?(?:as\s+(?:worn|(?:you|he|she|the\s+(?:child|wearer|baby))\s+wears?\s+it)|when\s+worn)\)?"
    rf"|these\s+{_L}\s*{_STS}\s+are\s+for\s+the\s+(?:heel|instep|sole|thumb|back|front|left\s+front|right\s+front|sleeve|palm)(?:\s+and\s+(?:are\s+|will\s+be\s+)?(?:worked\s+on|lie\s+on)\s+(?:one|a\s+single)\s+needle)?"
    rf"|{_HAS}\s+{_L}\s*(?:purl|knit)\s+{_STS}\s+(?:at|on)\s+(?:each|either|both)\s+(?:ends?|sides?)(?:\s+of\s+the\s+(?:instep|heel|sole|front|back|needle|panel))?"
    rf"|(?:the\s+)?(?:bor|(?:beginning|start)\s+of\s+(?:the\s+)?(?:rnd|round))\s+(?:stays|remains|is\s+still)\s+(?:at|in)\s+(?:the\s+)?(?:mid(?:dle)?|cent(?:er|re))?[-\s]*(?:of\s+(?:the\s+)?)?{_PLACE_OF}(?:\s*,\s*where\s+it\s+is\s+(?:least|hardly|not|barely)\s+seen(?:\s+[a-z ]{{2,30}})?)?|"
    # what is left to be mended, and how rows feel
    r"(?:make\s+a\s+note\s+of|note(?:\s+down)?|write\s+down|jot\s+down|remember)\s+how\s+many\s+(?:rows|rounds|rnds|rep(?:eat)?s|increases|decreases|times)(?:\s+(?:you\s+(?:have\s+)?(?:did|do|worked|knit(?:ted)?|made)(?:\s+(?:it|them))?))?\s*,?\s*so\s+(?:that\s+)?(?:(?:the\s+)?(?:second|other|next)(?:\s+[a-z]+)?|they|both|(?:sock|sleeve|mitten|mitt|glove)\s+(?:2|two|ii))\s+(?:will\s+)?match(?:es)?(?:\s+(?:it|this\s+one|the\s+first))?|"
    rf"there\s+(?:will|may|might|can|could)\s+(?:well\s+|now\s+)?be\s+(?:an?|some|small|little|tiny|\s)+(?:holes?|gaps?|ladders?)(?:\s+(?:at|in|on|near)\s+(?:each|either|both|the)\s+(?:[a-z]+\s+)?(?:ends?|sides?|corners?|underarms?|joins?|base|thumbs?)(?:\s+of\s+the\s+[a-z]+)?)?(?:\s*[,;]?\s*(?:which|that|this|it|these|they)\s+(?:(?:can|may|will|is|are)\s+)?(?:easily\s+)?(?:to\s+)?(?:be\s+)?(?:later\s+)?{_MENDED}(?:\s+(?:later|with\s+the\s+(?:yarn\s+)?(?:tail|end)s?|when\s+(?:finishing|weaving\s+in(?:\s+the\s+ends)?|making\s+up)|at\s+the\s+end|afterwards))*)?"
    rf"|(?:the\s+)?(?:first|next)\s+(?:{_L}|few|couple\s+of)?\s*(?:rows|rounds|rnds|row|round)(?:\s+(?:after\s+the\s+join|of\s+the\s+[a-z]+))?\s+(?:is|are|will\s+be|may\s+be|can\s+be|might\s+be|(?:will\s+|may\s+|might\s+|can\s+)?(?:feel|seem|look))\s+(?:(?:a\s+(?:bit|little)|rather|quite|very|somewhat|too)\s+)*(?:tight|snug|crowded|stiff|awkward|tricky|fiddly|wobbly|untidy|loose|messy|slow|hard|cramped)(?:\s+(?:at|around|in|near)\s+(?:the\s+)?(?:corners?|underarms?|armpits?|joins?|sleeves?|start|beginning|first|edges?))?|"
    r"short\s+rows\s+are\s+(?:given|written|described|shown)\s+(?:in|with|by|for|using)\s+(?:the\s+)?(?:wrap[-\s](?:and|&)[-\s]turn|german(?:\s+short[-\s]row)?|japanese)(?:\s+(?:method|technique|style))?(?:\s*[,;]\s*but\s+(?:any\s+other(?:\s+method)?|other\s+methods|you)\s+(?:may|can|will)\s+(?:be\s+(?:substituted|used)|work\s+as\s+well|do|use\s+(?:any\s+other|your\s+favou?rite)(?:\s+method)?))?|"
    # what lies beside each other, and what can be counted
    rf"{_HAS}\s+{_L}\s*(?:(?:full|little|small|pattern|chart|lace)\s+)*{_MOTIFS}\s+(?:of\s+{_PATTERN}\s+{_AROUND}|of\s+(?:the\s+|a\s+)?{_L}[-\s](?:sts?|stitch(?:es)?)(?:\s+pattern)?(?:\s+{_AROUND})?|{_AROUND}|of\s+{_L}\s*{_STS}(?:\s+each)?)"
    rf"|(?:the\s+)?(?:repeat|pattern|motif)\s+(?:goes|fits|comes)\s+{_L}\s*times\s+{_AROUND}"
    rf"|{_HAS}\s+{_L}\s*(?:picots|points|scallops)(?:\s+in\s+all)?|{_HAS}\s+(?:worked\s+)?{_L}\s*(?:inc(?:rease)?|dec(?:rease)?)\s+(?:rounds|rnds|rows)(?:\s+(?:in\s+(?:all|total)|altogether))?"
    rf"|(?:{_HAS}|you\s+(?:should|will|can|may)(?:\s+now)?(?:\s+be\s+able\s+to)?\s+(?:count|see|find))\s+{_L}\s*(?:(?:slipped|slip|chain|edge|selvedge|garter|purl)\s+)*(?:(?<!\d\s)(?<!\)\s)(?<!\]\s)(?<!\}}\s){_STS}|loops|ridges|bumps|chains)\s+(?:along|on|at|down)\s+(?:each|the|both|either|one)\s+(?:edge|side)s?(?:\s+of\s+the\s+(?:flap|heel|piece|heel\s+flap))?"
    rf"|(?:if\s+you\s+like\s+to\s+count\s*[:,]\s*)?(?:that|this|it)(?:'s|\s+is|\s+makes|\s+was)\s+{_L}\s*(?:more\s+|further\s+)?(?:(?:rs|ws|right-?\s?side|inc(?:rease)?|dec(?:rease)?|pattern|lace|garter)\s+)*(?:rows|rnds|rounds|repeats|ridges)(?:\s+(?:in\s+all|altogether|in\s+total|so\s+far|worked))?(?:\s+(?:after|counting)\s+(?:the\s+)?(?:row|rnd|round)\s+\d+)?"
    rf"|if\s+you\s+like\s+to\s+count\s*[:,]\s*you(?:'ll|\s+will)\s+have\s+made\s+{_L}\s*(?:increase|decrease)\s+(?:rounds|rows|rnds)"
    rf"|{_L}\s*(?:rows|rnds|rounds|repeats|ridges)(?:\s+of\s+[a-z]+)?\s+(?:(?:have\s+been|are|now)\s+)*(?:worked|done|completed)(?:\s+(?:in\s+all|so\s+far|altogether))?"
    rf"|there\s+(?:will\s+be|are)\s+{_L}\s*{_STS}\s+you\s+(?:haven't|have\s+not)\s+(?:knitted|knit|worked)(?:\s*,\s*that's\s+(?:right|fine|ok|as\s+it\s+should\s+be))?"
    rf"|there\s+are\s+{_L}\s*{_STS}\s+between\s+(?:the\s+)?(?:two\s+)?(?:cables|ropes|panels|leaves)|{_L}\s*{_STS}\s+have\s+been\s+(?:added|increased|decreased)(?:\s+in\s+all)?|each\s+time\s+you\s+work\s+(?:them|these\s+rows)\s*,?\s+you(?:'ll|\s+will)\s+add\s+{_L}\s*{_STS}"
    # how long something is by now
    rf"|(?:the\s+|your\s+)?{PIECE}\s+(?:now\s+)?(?:measures|is\s+now|should\s+(?:now\s+)?(?:be|measure))\s+(?:approx(?:\.|imately)?\s*|about\s+|roughly\s+)?{_L}\s*{_LONG}(?:\s+(?:long|high|wide|deep|across|around))?(?:\s*,?\s*(?:measured\s+)?{_FROM})*(?:\s+(?:by\s+now|now|by\s+this\s+(?:point|time)|at\s+this\s+(?:point|stage)|so\s+far))?"
    rf"|the\s+ease\s+(?:allowed\s+)?is\s+(?:about\s+)?{_L}\s*{_LONG}(?:\s+at\s+the\s+(?:chest|bust|hips?))?"
    # how it is built
    rf"|the\s+markers?\s+(?:indicates?|marks?|shows?)\s+the\s+{_PLACE}"
    r"|the\s+(?:[a-z]+\s+)?(?:neck|heel|toe|shoulders?|collar|bust|sleeve\s+caps?|back\s+of\s+the\s+neck|hood)\s+(?:is|are)\s+(?:(?:now|then|first)\s+)?(?:shaped|raised|turned|lifted|formed)\s+(?:with|by|in|by\s+means\s+of)\s+(?:(?:german|wrapped|japanese|some|a\s+few)\s+)?(?:short\s+rows|wedges)(?:\s*,?\s+without\s+a\s+flap)?"
    rf"|(?:all\s+)?(?:the\s+)?(?:(?:armhole|neck|shoulder|raglan|waist|yoke|toe|heel|crown|gusset|sleeve|hip|thumb|front|back)\s+)?{_SHAPED}\s+(?:is|are)\s+(?:now\s+)?(?:complete|completed|finished|done|over)"
    r"|(?:(?:now\s+)?divide\s+(?:for|into)\s+(?:the\s+)?body\s+and\s+(?:the\s+)?sleeves\s*[:;,]\s*)?(?:the\s+)?raglan\s+(?:sts|stitches|lines)\s+(?:now\s+)?(?:belong\s+to|go\s+with|are\s+(?:now\s+)?part\s+of)\s+(?:the\s+)?(?:front\s+and\s+(?:the\s+)?back|body|sleeves)"
    r"|(?:the|both)\s+(?:two\s+)?(?:wings|halves|sides|fronts|wedges)\s+(?:always\s+)?have\s+the\s+same\s+number\s+of\s+(?:sts|stitches)|the\s+two\s+halves\s+mirror\s+each\s+other"
    r"|the\s+[a-z]+\s+edges?\s+(?:is|are)\s+(?:left\s+)?(?:unshaped|straight)\s+(?:for\s+(?:ease\s+of|easier)|to\s+make)\s+(?:sewing|seaming|picking\s+up)(?:\s+(?:up|easier|easy))?"
    r"|(?:rows?|rounds?|rnds?)\s+\d+\s+is\s+where\s+the\s+[a-z]+\s+(?:appear|begin\s+to\s+show|show)|(?:rows|rounds|rnds)\s+\d+\s*(?:-|to)\s*\d+\s+of\s+the\s+(?-i:[A-Z])[a-z]+\s+form\s+the\s+pattern"
    r"|read\s+(?:the\s+)?(?:rs|right-?\s?side)\s+rows\s+from\s+right\s+to\s+left(?:\s*,?\s*(?:and\s+)?(?:ws|wrong-?\s?side)\s+rows\s+from\s+left\s+to\s+right)?"
    # what becomes of a part later, and where rounds begin by now
    r"|(?:the\s+)?(?:neck|button)?-?\s?(?:band|collar|hem|cuff|brim|edge|facing|ribbing)\s+(?:is|will\s+be|gets)\s+(?:(?:later|then|afterwards|finally)\s+)?(?:folded|turned)\s+(?:(?:double|in\s+half|over|in)\s+)*(?:to|towards|onto)\s+the\s+(?:inside|wrong\s+side|ws)(?:\s+(?:later|afterwards|at\s+the\s+end|when\s+finishing))?(?:\s+and\s+sewn\s+down)?"
    r"|the\s+neck(?:line)?\s+is\s+(?:lifted|raised|higher)\s+(?:at|in)\s+the\s+back(?:\s*[,;]\s*(?:so\s+)?(?:please\s+)?(?:do\s+not|don't)\s+(?:leave\s+(?:this|it|them|these)\s+out|skip\s+(?:this|it|them|these)))?"
    rf"|(?:you\s+(?:have\s+(?:then|now|thus)|then\s+have|now\s+have)|this\s+has)\s+(?:also\s+)?(?:moved|shifted)\s+the\s+(?:bor|(?:beginning|start)\s+of\s+the\s+(?:round|rnd)|marker)\s+to\s+(?:the\s+)?(?:(?:mid|middle|cent(?:er|re))(?:\s+of\s+the)?\s+)?{_PLACE_OF}(?:\s*[,;]\s*(?:this|that|which|it)\s+is\s+(?:meant|intended|as\s+it\s+should\s+be|correct|right))?"
    r"|(?:the|this)\s+(?:pattern|lace|chart|motif|yoke|sweater|pullover|cardigan|jumper|shawl|fabric|knitting)\s+only\s+(?:becomes|gets|looks|comes\s+out|is)\s+(?:(?:really|quite|so|truly)\s+)?(?:beautiful|even|lovely|nice|right|itself|flat|smooth|soft)\s+(?:when|once|after)\s+it\s+has\s+been\s+(?:wet|washed|blocked|soaked|steamed|pressed)"
    # what knitters find
    rf"|(?:beginners|(?:some|many|most)\s+(?:people|knitters|of\s+us)|you)\s+(?:may|might|will|often|usually)?\s*(?:well\s+)?find\s+{_ROWS}\s+{_FINDS}|{_ROWS}\s+(?:is|are)\s+{_FINDS}(?:\s*,?\s+but\s+it\s+gets\s+(?:easier|better|quicker))?"
    r"|(?:several\s+|some\s+|two\s+)?things\s+(?:now\s+)?happen\s+at\s+(?:the\s+same\s+time|once)(?:\s+here)?|(?:this|it)\s+(?:may|might|will)\s+(?:feel|look|seem)\s+like\s+a\s+lot\s+of\s+(?:plain\s+)?knitting|(?:there\s+is|it's|it\s+is)\s+(?:a\s+lot|plenty|miles)\s+of\s+plain\s+knitting(?:\s+but\s+it's\s+good\s+for\s+you|\s+ahead)?"
    # how far a colour is carried, and who has knitted it
    rf"|(?:you(?:'ll|\s+will)?\s+)?never\s+(?:have\s+to\s+|need\s+to\s+)?(?:carry|strand|float)\s+(?:the\s+|a\s+|an?y\s+|either\s+)?(?:(?:other|unused|second|idle|resting)\s+)?(?:yarn|colou?r|strand|wool|float)\s+(?:for|over|across|behind|along)\s+more\s+than\s+{_L}\s*(?:{_STS}|{_LONG})(?:\s+at\s+a\s+time)?"
    rf"|(?:no\s+floats?\s+(?:is|are)|(?:the\s+)?floats?\s+(?:is|are)\s+never)\s+(?:longer|more)\s+than\s+{_L}\s*(?:{_STS}|{_LONG})|(?:the\s+)?longest\s+float\s+is\s+{_L}\s*(?:{_STS}|{_LONG})"
    rf"|(?:i|we|my\s+[a-z]+)(?:'ve|\s+have|\s+has)?\s+(?:now\s+|already\s+)?(?:knit(?:ted)?|made)\s+(?:this|it|these|mine|hers|his|theirs|(?:the\s+)?(?:largest|smallest|biggest|medium|small|large|same|other|second|first)?\s*one|(?:a\s+)?pair|several|lots|dozens)(?:\s+(?:{_L}\s*times|twice|once|again|several\s+times|for\s+(?:my|a|the|both)\s+[a-z]+(?:\s+[a-z]+)?|last\s+(?:winter|year|summer|spring|autumn)))?"
    r"|they(?:'re|\s+are)\s+not\s+left\s+and\s+right(?:\s*,?\s+(?:so\s+)?(?:you\s+can\s+)?wear\s+them\s+either\s+way(?:\s+round)?)?|(?:you\s+can\s+wear|wear)\s+them\s+(?:either\s+way(?:\s+round)?|on\s+either\s+(?:hand|foot))"
    r"|(?:this|that|it)\s+(?:takes|took|will\s+take)\s+(?:me\s+|you\s+)?(?:about\s+)?(?:as\s+far\s+as\s+the\s+(?:[a-z]+\s+){1,3}(?:bridge|station|stop|river|tunnel|border|church)|(?:an|one|two|three|a\s+few|several)\s+(?:evenings?|days?|weeks?|films?|episodes?|hours?|weekends?)(?:\s+or\s+(?:two|so))?)"
    r"|markers\s+are\s+not\s+(?:essential|necessary)(?:\s*,?\s+but\s+(?:they\s+)?save\s+a\s+lot\s+of\s+counting)?|(?:the\s+|a\s+)?[a-z ]{3,30}\s+pulls\s+in\s+(?:quite\s+a\s+bit|a\s+lot|more\s+than\s+you\s+(?:might\s+)?think)"
    r"|(?:wool|a?\s*[a-z-]+\s+(?:yarn|wool)|yarn)(?:\s+with\s+(?:some|a\s+little)\s+grip)?\s+is\s+best\s+for\s+(?:the\s+)?(?:colourwork|colorwork|cables|lace|steeks?|ribs?|stitch\s+pattern|pattern)"
    r"|(?:it\s+is|it's)\s+easie(?:r|st)\s+to\s+knit\s+both\s+(?:sleeves|socks|mittens|fronts)\s+at\s+(?:once|the\s+same\s+time)(?:\s+on\s+(?:one|a)\s+long\s+needle)?|an?\s+(?:row\s+counter|lifeline|marker\s+of\s+another\s+kind)\s+is\s+(?:a\s+(?:great\s+)?help|a\s+good\s+idea|useful|handy)(?:\s+(?:here|from\s+here(?:\s+on)?))?"
    r"|(?:here\s*,?\s+)?i(?:'d)?\s+(?:strongly\s+)?recommend\s+(?:running|using|adding|inserting)\s+a\s+lifeline(?:\s+(?:here|now|at\s+this\s+point))?|(?:run|insert|add|put\s+in)\s+a\s+lifeline(?:\s+(?:here|now|at\s+this\s+point))?"
    r"|it\s+(?:does\s+not|doesn't)\s+matter\s+on\s+which\s+side\s+the\s+ends\s+come\s+out|the\s+(?:slipped|chain)\s+edges?\s+(?:makes?|will\s+make)\s+(?:it\s+easy\s+to\s+pick\s+up|picking\s+up(?:\s+the\s+(?:sts|stitches))?\s+(?:easy|easier))"
    # what she does beside the knitting
    r"|(?:now\s+)?try\s+(?:it|them|(?:the|your)\s+[a-z]+)\s+on(?:\s+(?:now|here|as\s+you\s+go|from\s+time\s+to\s+time|often))?(?:\s+for\s+(?:size|length|fit))?|(?:mind|be\s+careful|take\s+care)\s+(?:that\s+)?you\s+(?:don't|do\s+not)\s+twist\s+(?:it|them|anything|the\s+(?:round|sts|stitches|cast-on))|(?:mind|beware\s+of|be\s+careful\s+with)\s+the\s+twist"
    r"|move\s+(?:the|your)\s+(?:safety-?\s?pin|removable\s+)?markers?\s+up(?:wards)?(?:\s+(?:as\s+you\s+(?:go|work|knit)|with\s+the\s+work|now\s+and\s+then|from\s+time\s+to\s+time|every\s+now\s+and\s+then))|(?:carry|strand|take)\s+(?:the\s+)?(?:colou?rs?|yarns?|unused\s+yarns?|unused\s+colou?rs?)(?:\s+not\s+in\s+use)?\s+(?:loosely\s+)?up\s+the\s+side(?:\s+of\s+the\s+(?:work|piece))?(?:\s+when\s+striping)?"
    r"|(?:make\s+a\s+note\s+of|note(?:\s+down)?|write\s+down|jot\s+down|remember)\s+(?:which|what|the|how\s+many)\s+(?:pattern\s+|chart\s+)?(?:rows?|rounds?|rnds?)(?:\s+(?:of|in)\s+the\s+(?:stripe\s+sequence|stripes|pattern|chart|lace))?\s+(?:you\s+(?:have\s+)?(?:just\s+)?)?(?:ended|finished|stopped|worked|knitted|knit|left\s+off)(?:\s+(?:on|with|at|in|after))?(?:\s+so\s+far)?",
    re.I,
)
"""Facts and advice whose words are all told."""


def tells_fact(sentence: str) -> bool:
    """Return whether a sentence only states what the lines around it make, or what is done beside the knitting.

    Args:
        sentence: One sentence, made plain, without its full stop and without brackets around it.
    """
    return _FACT.fullmatch(sentence) is not None or tells_reading(sentence)
