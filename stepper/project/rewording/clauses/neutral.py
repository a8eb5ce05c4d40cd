"""Put harmless words for what is only called by a word of the craft, or counts no stitch. No I/O.

Theory of operation. "The cast-on edge" casts nothing on, "every evening" is no row, "40 m of yarn" no number of stitches, and
"easy to pick up" picks nothing up. Such phrases are put into words of no danger before a sentence is looked through, so that
what is left of the craft's words, numbers and limits may order something. Source: common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.rewording.candidates import Candidates
from stepper.project.rewording.synonym import row

_NUMBER: Final = r"(?:\d[\d.,/\u00bd\u00bc\u00be]*(?:\s*[/-]\s*\d[\d.,]*)*|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|a\s+dozen|a\s+couple\s+of|half\s+an?)"
_TIME: Final = r"(?:hours?|minutes?|days?|weeks?|weekends?|evenings?|nights?|mornings?|months?|years?|winters?|summers?|films?|episodes?|movies?|meetings?|journeys?|trips?|breaks?)"
_AMOUNT: Final = r"(?:g|gr|grams?|m|metres?|meters?|yards?|yds?|skeins?|balls?|hanks?|cakes?|%|per\s*cent|euros?|dollars?|pounds?)"
_NOUN: Final = r"(?:decreases?|increases?|cables?|twists?|wraps?|turns?|joins?|stripes?|hems?|seams?|bobbles?|hooks?|beads?|pleats?|crosses|crossings?|chains?|short[-\s]rows?|shift|switch|swap)"
_FABRIC: Final = r"(?:garter|lace|rib|ribbing|ribbed|stockinette|stocking|cabled?|brioche|moss|seed|striped|stranded|textured|colou?rwork|plain|fair\s+isle|knitted|knit|ribbed)"
_DETERMINER: Final = r"(?:the|a|an|this|that|these|those|your|my|our|its|their|some|such|most|many|any|whichever|whatever|of|no)"
_EASY: Final = r"(?:easy|hard(?:er|est)?|difficult|trick(?:y|ier|iest)|fiddl(?:y|ier|iest)|simple|tempting|satisfying|boring|annoying|awkward|quick|impossible|a\s+(?:pleasure|joy|pain|nuisance)|fun)"

_ROWS: Final[tuple[tuple[str, str], ...]] = (
    (r"\s+(?:approx|ca|incl|etc)\.", " "),
    (r"\b(easy|fun|plain\s+sailing|downhill|quick)\s+from\s+(?:here|now)(?:\s+on)?\b", r"\1"),
    (
        r"\bfrom\s+(?:here|now)(?:\s+on)?\s*,?\s+(it(?:'s|\s+is|\s+gets)\s+(?:all\s+)?(?:plain\s+sailing|downhill|easy|easier|fun|quick))\b",
        r"\1",
    ),
    # what is done as elsewhere is ordered
    (
        r"\bas\s+(?:for|before|given|set|established|follows|written|stated|with|on|in|per|worked|usual\s+for|already)\b|\bjust\s+like\b|\bin\s+pattern\b|\bfrom\s+(?:here|now)(?:\s+on)?\b",
        "same",
    ),
    (
        r"\bfor\s+(?:the\s+)?(?:wom[ae]n|m[ae]n|lad(?:y|ies)|kids?|child(?:ren)?|adults?|grown-?ups?|bab(?:y|ies)|toddlers?|(?:big|small|tall|short|large|little)\s+(?:ones?|people|kids?|children|feet|hands|heads?))\b",
        "size",
    ),
    # what only leads up
    (
        r"^(?:please\s+)?(?:note|remember|know|mind|be\s+aware|(?:keep|bear)\s+in\s+mind)\s+(?:that\b|:|,|-)\s*",
        "",
    ),
    (
        r"^(?:an?\s+)?(?:note|word|tip|hint|remark|comment|thought)s?\s+(?:on|about)\s+(?:the\s+)?[a-z -]+?\s*:",
        "",
    ),
    (r"\bunlike\s+[a-z' -]+?,", ""),
    # what is easy is not ordered
    (
        r"\b(?:easier|easiest|simpler|quicker|quickest)\s+(?:for\s+\w+\s+)?to\s+(?:see|count|sew|seam|read|measure|pick\s+up|find|spot|memori[sz]e|remember|understand|keep|follow|wear|wash|block|try|recogni[sz]e|adjust)\b",
        "easy",
    ),
    (
        rf"\b({_EASY})\s+(?:for\s+\w+\s+)?to\s+[a-z-]+(?:\s+(?:up|in|on|off|out|together)\b)?(?:\s+one\b)?",
        r"\1",
    ),
    (
        r"\b(handy|useful|good|great|helpful|perfect|ideal|practical)\s+for\s+[a-z]+ing(?:\s+(?:up|in|on|off|out|together)\b)?",
        r"\1",
    ),
    (
        r"\bhow\s+(?:many\s+(?:rows|rounds|rnds|repeats|decreases|increases|times|stitches)|often|far)\s+you(?:'ve|\s+have|'re|\s+are)?\s+(?:already\s+)?(?:worked|knitted|knit|done|made|repeated|decreased|increased|got)\b",
        "how much",
    ),
    (r"\bhow\s+(?:you|it|yours)\s+(?:get|gets|got|are\s+getting|turns?|turned)\s+(?:on|out)\b", "how much"),
    (
        r"\b(?:choose|pick|select|take|make|knit|go)\s+(?:down\s+|up\s+|for\s+)?(?:a|one|the)\s+(?:(?:smaller|larger|bigger|next)\s+)*size(?:\s+(?:up|down|smaller|larger|bigger))?\b|\b(?:choose|pick|select)\s+the\s+(?:smaller|larger|bigger)\s+one\b",
        "choose whichever",
    ),
    (
        r"\b(?:mak(?:es?|ing)|made|keeps?)\s+(?:the\s+)?(?:joining|counting|picking\s+up|sewing|seaming|grafting|measuring|weaving\s+in|blocking|finishing|knitting|casting\s+on|binding\s+off|purling)(?:\s+(?:the|your|up|in)\b)?(?:\s+[a-z]+)?\s+(?=eas|simpl|neat|quick|tid)",
        "makes it ",
    ),
    (
        r"\b(?:happy|enjoy\s+(?:your|the)|(?:good|best\s+of)\s+luck\s+with\s+(?:your|the))\s+knitting\b",
        "enjoy",
    ),
    # things called by the craft's words
    (
        r"\b(?:the|an?|this|your|my|any|that)\s+(?:[a-z-]+\s+)?(?:cast|bind|bound|casting|binding)[-\s](?:on|off)(?=\s+(?:edges?|rows?|rounds?|tails?|sts?|stitch(?:es)?|methods?)\b)(?:\s+[a-z]+)?",
        "the edge",
    ),
    (r"\b(?:cast|bind)-(?:on|off)s?(?:\s+(?:edges?|tails?|methods?))?\b", "edge"),
    (
        r"\b(?:stitch|row|round)\s+(?:counts?|counters?|definition|markers?|gauge)\b|\b(?:crochet\s+hook|cable\s+needle|(?:tapestry|yarn|darning|sewing)\s+needle|circular\s+needle)s?\b",
        "tool",
    ),
    (
        r"\b(?:stitch|knitting|lace|cable|colou?r|rib|knit)\s+patterns?\b|\bknitt(?:ed|ing)\s+(?:fabric|pieces?|bags?|groups?|friends?|time)\b|\bknit\s+(?:fabric|along|night|group)s?\b",
        "fabric",
    ),
    (
        rf"\b({_DETERMINER})\s+(?:knitting|knit|work|working)(?=\s+(?:is|will|may|should|looks?|can|does|has|grows?|from|so|and|a|to\s+(?:grow|dry))\b|\s*[,.;:!?]|\s*$)",
        r"\1 project",
    ),
    (
        rf"\b({_DETERMINER})\s+(?:knitted|slipped|purled|picked-up|dropped|twisted|crossed|wrapped|increased|decreased|finished|felted|bound-off|cast-on|striped|cabled)\s+(?=[a-z])",
        r"\1 ",
    ),
    (
        rf"\b({_DETERMINER})\s+((?:[a-z-]+\s+)?)(?<!to\s){_NOUN}(?=\s|$|[,.;:!?])(?!\s+(?:the|a|an|one|it|them|to)\b)",
        r"\1 \2shaping",
    ),
    (
        rf"\b({_DETERMINER})\s+{_FABRIC}(?:\s+stitch)?(?=\s+[a-z])(?!\s+(?:round|rnd|row|stitch|st)s?\b)",
        r"\1 fabric",
    ),
    (
        r"^(?:decreases|increases|cables|bobbles|stripes|seams|hems|short\s+rows)(?=\s+(?:is|are|will|may|can|look|give|make|feel|pull|tend|lean|add|take|draw|grow|help|need)\b)",
        "these shaping",
    ),
    (
        r"^(?:(?:[a-z]+ly|just)\s+)?(?:knitting|purling|swatching|counting|cabling|joining|grafting|seaming|ripping|frogging|casting\s+on|binding\s+off|picking\s+up|crossing|weaving)\b(?:\s+(?!every|each|both|all|only|first|last|next|alternate|row|plain)[a-z'-]+){0,4}?(?=\s+(?:is|makes|takes|helps|gives|will|can|may|looks|feels|saves|does|doesn't|works)\b)",
        "it",
    ),
    (
        r"\b(?:the\s+)?pattern\s+(?:is\s+)?(?:written|designed|meant|worked)\s+(?:for|in|with|to\s+be)\s+[a-z ]+",
        "it is meant",
    ),
    (
        r"\bworks?\s+(?=(?:just\s+|also\s+|very\s+|equally\s+|really\s+)*(?:as\s+well|well|best|fine|nicely|beautifully|better|great|perfectly|wonders|too\b|for\s+me))",
        "looks ",
    ),
    (r"\b(?:slip|pull|get|put)\s+it\s+(?:on\s+)?over\s+(?:your|the|his|her)\s+head\b", "wear it"),
    (
        r"\b(?:careful|care|sure)\s+(?:not\s+to|that\s+you\s+(?:don't|do\s+not))\s+(?:twist|split|pull|drop|stretch|lose|snag|tighten)\b",
        "careful with",
    ),
    (
        r"\benough\s+to\s+(?:go|fit|reach|pass|slip|pull|be|get|stretch|hold|cover|wear|use|sew|tie|keep|wrap)\b",
        "enough for",
    ),
    (
        r"\bthe\s+(?:whole|entire|full)\s+(?:of\s+the\s+|of\s+this\s+)?(?=pattern|section|page|text|thing|lot|process|chapter|paragraph)",
        "the ",
    ),
    (r"\b(?:even|evens|evened)\s+(?:everything|it|them|things|out)(?:\s+out)?\b", "help"),
    (
        r"\bwithout\s+(?:pulling|stretching|puckering|gaping|tugging|straining|any\s+(?:strain|problem|trouble|fuss|effort|difficulty))\b",
        "nicely",
    ),
    (r"\b(?:pulls|draws)\s+in\b|\b(will|to|may|might|does)\s+(?:pull|draw)\s+in\b(?!\s+the)", r"\1 shrinks"),
    (r"\bpurl\s+bumps?\b", "bumps"),
    (
        r"\b(?:for|makes?)\s+(?:a|one)\s+pair\b|\b(?:an?|the|one|each|every)\s+pair\s+of\s+(?:socks|mittens|mitts|gloves|slippers|booties|hands|needles|scissors)\b",
        "for it",
    ),
    (
        rf"\b(?:about\s+|up\s+to\s+)?{_NUMBER}\s*(?:cm|mm|ins?|inch(?:es)?)\s+(too\s+(?:big|small|long|short|wide|narrow|large|tight|loose))\b",
        r"\1",
    ),
    (r"\bmy\s+(?:very\s+)?(?:first|second|third|fourth|last|next|latest)\b", "my"),
    (
        r"\buntil\s+(?:it\s+is\s+|they\s+are\s+|you\s+have\s+)?(?:blocked|washed|dry|worn|sewn\s+up|finished|cool)\b",
        "so-far",
    ),
    (
        r"^an?\s+(?:smaller|larger|finer|thicker|longer|shorter|different|second|extra)\s+([a-z]+(?:\s+[a-z]+)?)(?=\s+(?:makes|gives|helps|will\s+(?:make|give|help|look)|would\s+(?:make|give|help|look)|looks|works)\b)",
        r"the \1",
    ),
    (
        r"\b(holes?|gaps?|bumps?|ladders?|jogs?)\s+(?:at|on|in|along|under|between)\s+(?:each|both|either|every)\s+[a-z]+(?:\s+of\s+the\s+[a-z]+)?",
        r"\1",
    ),
    (
        r"\b(?:the\s+)?(?:stitch\s+count|number\s+of\s+(?:sts|stitches))\s+(?:does\s+not|doesn't|will\s+not|won't|never)\s+changes?\b",
        "it is the tool",
    ),
    (
        r"\bfrom\s+(?:row\s+to\s+row|round\s+to\s+round|(?:one\s+)?(?:knitter|person|yarn|dye\s?lot|ball)\s+to\s+(?:another|the\s+next|knitter|person|yarn|ball))\b",
        "so-far",
    ),
    (
        r"\b((?:if\s+)?(?:you|who|i|we|everybody|everyone)(?:'ve|\s+have)?\s+(?:make|made|knit|knitted|wants?|needs?|got))\s+one(?=\s*(?:[,.;!?]|$)|\s+(?:of|sock|such|too)\b)(?:\s+sock)?",
        r"\1 it",
    ),
    (
        r"\bgives?\s+(?:it|them|(?:the|your)\s+[a-z ]+?)\s+(?:(?:a\s+(?:little|bit)\s+)?more|some|a\s+little|a\s+bit\s+of)\s+(?:room|height|depth|ease|shape|stability|structure|hold|body|drape|stretch|space)\b",
        "makes it fine",
    ),
    (r"\b(an?\s+[a-z-]+),\s+([a-z-]+\s+(?:yarn|wool|fabric|edge|fibre|fiber|finish)\b)", r"\1 \2"),
    (r"\s+for\s+each(?=\s*(?:$|[.;,!]))", ""),
    (r"\b(yarn|wool)\s+left(?:\s+over)?\b", r"\1"),
    (
        r"\b(?:an?|the|one|each|every)\s+pair\s+of\s+(?!st|row|round|rnd|dec|inc|mark|need|cabl|dpn|loop|yarn)[a-z]+\b",
        "it",
    ),
    (r"\btwice\s+(?:its|their)\s+(?:size|length|width)\b", "big"),
    (
        r"\bbefore\s+(?:you\s+)?(?:begin|start|cast\s+on|casting\s+on|go\s+on|going\s+on|continue|continuing|beginning|starting)\b(?:\s+(?:the|your|with\s+the|on\s+the)\s+[a-z]+(?:\s+(?:sock|mitten|sleeve|glove|half|side|front))?)?(?=\s*(?:$|[,.;!]))",
        "so-far",
    ),
    # time, yarn and money
    (
        rf"\b(?:every|each|next|last|another|other|first|second|all|whole|same|(?:the\s+)?other|once\s+an?|twice\s+an?|half\s+an?)\s+(?:single\s+|few\s+|other\s+)?(?:{_TIME}|time|knitter|person|people|skein|ball|hank|dye\s?lot|hand|wearer|designer|yarn|wool|pattern\s+of\s+mine|try|attempt|glance|sight|wash|wear|fitting|project|sample)\b",
        "so-far",
    ),
    (
        rf"\b(?:(?:an?\s+)?(?:extra|additional|further)\s+)?{_NUMBER}\s*(?:or\s+{_NUMBER}\s+)?(?:more\s+|extra\s+|whole\s+|full\s+)?(?:{_TIME}|{_AMOUNT}|people|tries|attempts|ways|things|reasons|options|tricks|tips|designs?|friends|samples?|colou?rs|yarns)\b(?:\s+of\s+(?:[a-z]+\s+)?(?:yarn|wool|knitting|ease))?",
        "some",
    ),
    (
        rf"\b{_NUMBER}\s*(?:-\s*{_NUMBER}\s*)?(?:cm|mm|in|ins|inch|inches|\")\s+(?:of\s+)?(?:(?:positive|negative)\s+)?ease\b",
        "ease",
    ),
    (
        r"\b(?:no|any|some|every)\s+one\b|\b(?:the|this|that|which|each|every|my|your|whichever|any)\s+ones?\b(?!\s+(?:st|row|round|rnd|stitch|more|time)s?\b)",
        "it",
    ),
    (r"\bone\s+(?:of|or\s+the\s+other)\b|\bone\s+day\b|\bone\s+(?:can|may|might|could|would)\s+", "some "),
    # everyday phrases with a word of limit
    (
        r"\b(?:each|one\s+an|the)\s*other\b(?=\s*(?:$|[,.;:!?]|well|so|nicely|perfectly|closely))|\b(?:once\s+in\s+a\s+while|once\s+upon\s+a\s+time|at\s+once|all\s+at\s+once|again\s+and\s+again|over\s+and\s+over|time\s+and\s+again|(?:never|ever)\s+again|the\s+other\s+day|at\s+last|at\s+all\s+times|in\s+half\s+the\s+time|from\s+time\s+to\s+time|at\s+the\s+same\s+time\s+as\s+you\s+talk|second\s+nature|second\s+thoughts|sooner\s+or\s+later|first\s+and\s+foremost|last\s+but\s+not\s+least|(?:it'll|that'll|will)\s+last|half\s+the\s+(?:fun|battle)|double-?\s?check)\b",
        "so-far",
    ),
    (r"\b(?:no|any)\s+(?:longer|more|further)\b|\bmore\s+or\s+less\b", "no-longer"),
    (
        r"\b(?:(?:a\s+(?:bit|little)|much|far|even|slightly|somewhat|the|any)\s+)?(?:more|less)\s+(?=(?:fun|often|stable|secure|even|firm|snug|room|ease|drape|give|height|depth|time|work|yarn|wool|elastic|stretch|[a-z]+(?:able|ible|ful|ic|al|ive|ous|ent|ant|ed|ly|y|ing|ated))\b)",
        "so-far ",
    ),
    (
        r"\b(looks?|feels?|seems?|appears?|grows?|gets?|becomes?|comes?\s+out|turns?\s+out)\s+((?:(?:a\s+(?:bit|little)|much|far|slightly|somewhat|rather|way|too|still)\s+)*)(?:longer|shorter|wider|narrower|larger|smaller|odd|different|flat|uneven|plain)\b(?!\s+by\b)",
        r"\1 odd-looking",
    ),
    (
        r"\b(?:lies?|lay|lying|dry|dries|block|blocks)\s+(?:quite\s+|perfectly\s+|completely\s+)?flat\b",
        "dries nicely",
    ),
    (
        r"\beven(?:\s+out|ed\s+out|s\s+out|\s+(?:if|though|when|more|better|the|a|an|in|on|with|for|after|so|than))\b",
        "even-so",
    ),
    (
        r"\s+(?:until|till)\s+(?:you\s+do\s+(?:this|so|it)|(?:(?:it|they|you)(?:\s+is|\s+are|\s+have|'s|'re|'ve)?\s+)?(?:been\s+)?(?:blocked|washed|soaked|pressed|dressed|sewn\s+up|finished)(?:\s+(?:it|them))?)(?=\s*[.,!;]|\s*$)",
        " later",
    ),
    (r"\bplain\s+sailing\b|\bstraight(?:forward|\s+away)\b|\bodd(?:ly)?\s+(?:enough|looking)\b", "easy"),
    (
        r"\b(?:(?:of\s+course|by\s+the\s+way|as\s+(?:well|usual|ever)|at\s+(?:least|first|all|hand|most|best|home)|a\s+(?:little|bit)|so\s+far|in\s+(?:fact|case|general|the\s+end|the\s+meantime|my\s+opinion|my\s+experience|our\s+experience|theory|practice|place|person|time|short|other\s+words)|on\s+the\s+other\s+hand|as\s+you\s+(?:go(?:\s+along)?|can\s+see|may\s+have\s+noticed|will\s+see)|all\s+(?:the\s+same|right|in\s+all|over|along)|after\s+all|not\s+at\s+all|for\s+(?:now|ever|good|once|sure|instance|example)))\b",
        "so-far",
    ),
    (
        r"\b(?:there\s+is\s+|you\s+have\s+|has\s+|it\s+has\s+)?no\s+need\s+(?:to\s+(?:worry|hurry|rush|panic|swatch|block|count|measure|sew|buy|be|break|cut|weave\s+in|seam|stress)\b(?:\s+(?:about\s+|in\s+)?(?:it|them|(?:the|your|any)\s+[a-z]+))?|for\s+(?:seams?|sewing|panic|blocking|finishing)\b)",
        "it is so",
    ),
    (
        r"\bneeds?\s+no\s+(?:finishing|blocking|sewing|seaming|ironing|explanation|introduction|border|further\s+[a-z]+)\b",
        "is fine",
    ),
    (
        r"\bno\s+(?:finishing|blocking|sewing|seaming|border|edging)\s+(?:is|will\s+be)\s+(?:needed|required|necessary)\b",
        "it is fine",
    ),
    (r"\bonce(?=\s+(?:you|it|they|the|your|this|these|that|we|dry|blocked|washed|finished)\b)", "when"),
    (r"\bright\s+(?:away|now|here|there|from\s+the\s+start)\b|\bleft\s+over\b", "so-far"),
)
_NEUTRAL: Final = Candidates([row("", pattern, words, "", exact=True) for pattern, words in _ROWS])


def made_neutral(sentence: str) -> str:
    """Return a sentence in small letters with harmless words for what orders nothing.

    Args:
        sentence: One sentence, made plain.
    """
    words, at = " ".join(sentence.lower().split()), -1
    while (found := _NEUTRAL.find_first(words, at + 1)) is not None:
        at, one = found, _NEUTRAL.table[found]
        words = one.pattern.sub(one.words, words)
    return words
