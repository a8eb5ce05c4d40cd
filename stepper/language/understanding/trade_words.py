"""The words of a question, each with the idea it stands for, and the words that ask nothing. No I/O.

The trade has several words for most things, and a question is about the thing: a skein, a hank and a ball are
one idea. A word that stands nowhere here is one the question cannot do without, so that a question with
such a word in it is not answered.
"""

from __future__ import annotations

from types import MappingProxyType
from typing import Final

from stepper.regex import regex

_IDEAS: Final = MappingProxyType(
    {
        # What is knitted with, and what comes of it.
        "yarn": "yarn yarns wool wools thread strand strands fibre",
        "colour": "colour colours shade shades",
        "ball": "ball balls skein skeins hank hanks",
        "needle": "needle needles",
        "stitch": "stitch stitches",
        "round": "round rounds",
        "increase": "increase increases increasing increased inc",
        "decrease": "decrease decreases decreasing decreased dec",
        "repeat": "repeat repeats motif motifs",
        "cable": "cable cables cabling crossing crossings",
        "marker": "marker markers",
        "float": "float floats",
        "caught": "caught catch trap trapped",
        "chart": "chart charts diagram",
        "turn": "turn turns turning",
        "side": "side facing",
        "knit or purl": "purl purling",
        "gauge": "gauge tension",
        "size": "size sizes",
        "division": "divide division split divided dividing separate separating underarm underarms "
        "armhole armholes",
        "hold": "hold held holder holders waiting parked",
        "pattern": "pattern instruction instructions",
        "plain": "plain",
        "longest": "longest",
        "count": "count counts counted counting",
        "section": "section sections part parts piece bit",
        "garment": "jumper sweater pullover cardigan garment sock shawl hat cowl vest",
        # How much of it.
        "cm": "cm",
        "grams": "g",
        "minutes": "minutes",
        "hours": "hours",
        "length": "length",
        "width": "width",
        "wide": "wide",
        "pace": "pace speed fast quick quickly",
        "size in mm": "mm",
        "half": "halfway half",
        "other": "other another",
        "alike": "alike",
        # When, and in what order.
        "next": "next following coming upcoming ahead",
        "last": "last previous",
        "after": "after afterwards",
        "left": "left remaining remain remains more further rest",
        "done": "done made worked knitted completed",
        "finish": "finish finished finishing end ends ending complete",
        "begin": "begin begins start starts beginning",
        "soon": "soon",
        "tonight": "tonight evening today",
        "past": "did was were since ago",
        "between": "between",
        "stop": "stop stopping",
        "until": "until till before",
        "time": "time",
        "take": "take takes",
        # What is done with it.
        "change": "change changes changing switch swap",
        "altered": "changed altered different differently alterations alteration",
        "enough": "enough suffice",
        "used": "used use using gone",
        "ready": "ready",
        "new": "new",
        "reminder": "reminder reminders reminded",
        "note": "note notes noted",
        "whole": "whole entire",
        "hand": "holding hand",
        "right": "right",
        # What goes wrong.
        "forgot": "forgot forgotten missed skipped omitted",
        "dropped": "dropped drop fell fall fallen slipped let",
        "lost": "lost",
        "surplus": "extra surplus",
        "missing": "missing short",
        "fault": "wrong mistake error fault instead",
    }
)
"""Each idea with the words for it, as `normalise` writes them: a row is a round."""

IDEA_OF: Final[MappingProxyType[str, str]] = MappingProxyType(
    {word: idea for idea, words in _IDEAS.items() for word in words.split()}
)
"""The idea each word stands for."""

_IDLE: Final = (
    "i my me myself we us our am is are be been being do does have has will shall should would must can "
    "could ought to of on at in for by with from into this that these those it its here there now got "
    "get getting go going come comes need needs supposed meant just again already still yet so then and "
    "like else something anything say says said "
    "one ones knit knitting work working making put exactly actually currently moment about "
    "roughly please each manage managed ever up due nearly almost quite really probably aiming aim "
)
ASKS_NOTHING: Final = frozenset(_IDLE.split())
"""Words that a question can do without."""

TRADE: Final = frozenset(
    (
        *("stitch", "needle", "round", "increase", "decrease", "marker", "float", "chart", "gauge"),
        *("knit or purl", "short row"),
    )
)
"""Ideas that hardly anything but knitting is about: what was heard needs one of them."""

PHRASES: Final = tuple(
    (regex(rf"\b(?:{pattern})\b"), plain)
    for pattern, plain in (
        (r"what is number of|what number of", "how many"),
        (r"^(?:have i got|have i|do i have|are there|is there) many", "how many"),
        (r"how often (?=have|did)", "how many times "),
        (r"how often", "often"),
        (r"how much time", "time"),
        (r"(?:have|did) i (?:put in|put into|spend|spent|sat|sit)", "did"),
        (r"how many (?:stitches )?(?:have|did) i (?:already )?(?=increased?\b|decreased?\b)", "much done "),
        (r"(?:at|by) end(?: of)?(?: (?:this )?round)?", "atend"),
        (r"(?:good|safe|right) (?:place|point|moment|time) to stop", "stop"),
        (r"under (?:my )?arms?", "underarm"),
        (r"on (?:my )?(?:thread|scrap yarn|waste yarn|spare yarn)", "hold"),
        (
            r"(?:(?<=rounds )|(?<=more )|(?<=many )|(?<=are ))(?:just )?"
            r"(?:like|same as) (?:this|that|these|it)"
            r"(?: (?:one|round|rounds))?",
            "alike",
        ),
        (r"at (?:the )?same time|side by side|at once", "atonce"),
        (r"(?:gone|got|went|go) (?:into|through)", "used"),
        (r"(?<=increase )rounds?|(?<=decrease )rounds?", ""),
        (r"purl back", "purl"),
        (r"how far have i (?:got|come)", "much done"),
        (r"how many in (?=have|are|is|do|left|to|more|long)", "how many cm "),
        (r"in how many (?:more )?rounds(?: time)?", "when"),
        (r"(?:on|at) (?:what|which) round (?=do|does|is|will|must|should)", "when "),
        (r"how soon|(?:on |by )?(?:what|which) (?:day|date)", "when"),
        (r"how far (?:off|away)", "how far"),
        (
            r"how (?:much )?(?:long|longer|further|far|many more rounds) (?:is it |do i have |have i got )?"
            r"(?:until|till|before)",
            "when",
        ),
        (r"how much (?:longer|further)", "far left"),
        (r"(?:did|could|can) ?not (?:quite )?(?:catch|hear|get|follow|understand)", "unheard"),
        (r"(?:what|which) did you (?:just )?say", "unheard"),
        (r"how (?:deep|tall|high)", "how long"),
        (r"how (?:fast|quick|quickly)", "what pace"),
        (r"how (?:broad|wide)|how far across", "wide"),
        (r"how far (?:in|into|through|along|round|around)", "where"),
        (r"(?:at|to) (?:what|which) (?:point|place|spot)", "where"),
        (r"line of chart|chart line", "chart round"),
        (r"short rounds?", "shortrow"),
        (r"(?:to go|to come|to do|to knit|to work|to be done|to be knitted)$", "left"),
        (r"(?:still|yet) (?:to|got to|have to|need to|must)", "left"),
        (r"(?:behind me|so far|(?:by|up to|until|till) now)", "done"),
        (r"after this(?: one| round| step)?$", "next"),
        (r"on (?:my |left |right )?needles?", "oneneedle"),
        (r"(?:cast|casted) on", "caston"),
        (r"(?:run|runs|ran|running) out(?: of)?|(?:run|running) short(?: of)?", "enough"),
        (r"(?:write|wrote|written|jot|jotted) (?:it |that )?down", "note"),
        (r"(?:knit|purl) (?:round )?or (?:a )?(?:purl|knit)", "purl"),
        (r"right (?:side )?or wrong side|wrong (?:side )?or right side|right side|wrong side", "side"),
        (r"(?:in|on) time|by then", "intime"),
        (r"too many", "surplus"),
        (r"too few|not enough", "missing"),
        (r"how far", "far"),
        (r"of all|in all|in total|altogether|at all", ""),
    )
)
"""What several words stand for together, in the order in which they are replaced."""

JOINED: Final = MappingProxyType(
    {
        "shortrow": "short row",
        "oneneedle": "on the needle",
        "caston": "cast on",
        "intime": "in time",
        "unheard": "not heard",
        "atend": "at the end",
        "atonce": "at once",
        "often": "often",
    }
)
"""Ideas that `PHRASES` writes as one word."""

COUNTED: Final = frozenset(
    (
        *("yarn", "colour", "ball", "needle", "stitch", "round", "increase", "decrease", "repeat", "marker"),
        *("float", "chart", "turn", "short row", "cm", "grams", "minutes", "hours", "size in mm", "note"),
        *("reminder", "altered", "cable"),
    )
)
"""Ideas that there can be so many of."""
