"""Other words that mean the same: a printed line as another designer words it.

Each family holds a pattern of the words as printed and the wordings that say the same wherever the pattern matches.
What is true only at times is left out ("knit even" of a fabric that is purled, "around" behind stitches in a row).
Source: common practice, UK and US, old and modern print.
"""

from __future__ import annotations

import random
import re
from collections.abc import Sequence
from dataclasses import dataclass

NUMBER = r"(?:\d+(?:\s*[(\[][\d\s,:;-]+[)\]])?|two|three|four|five|six|seven|eight|nine|ten)"
STS = r"(?:sts|stitches)"
LENGTH = r"(?:[\d¼½¾][\d\s.,()¼½¾]*(?:cm|in|inches|\"))"
END = r"(?=\s*[.;]?\s*$)"
_BIG = re.compile(r"(^|[.:;!(]\s|^\W+)$")
"""What stands in front of a word that is written with a capital."""
_KEPT_BIG = ("BO", "CO", "PM", "SM", "RM", "AT THE", "BOR", "RS", "WS")


@dataclass(frozen=True, slots=True)
class Family:
    """Words of one meaning."""

    name: str
    pattern: str
    wordings: tuple[str, ...]
    """Replacements, with `\\1` for what the first group matched; each true wherever the pattern matches."""
    exact: bool = False
    """Whether case matters."""


def _family(name: str, pattern: str, *wordings: str, exact: bool = False) -> Family:
    return Family(name, pattern, wordings, exact)


_HOLDER = r"(?:waste yarn|scrap yarn|spare yarn|(?:a )?(?:st(?:itch)? )?holders?\b)"

WORDS: tuple[Family, ...] = (
    # --- verbs ---
    _family("even", r"(?<!to )\b(?:work|cont(?:inue)?) (?:even|straight|without shaping)\b(?! \d)(?! (?:two|three|four|five|six|eight|ten)\b)",
            "work even", "continue even", "cont even", "work straight", "continue straight", "cont straight",
            "work without shaping", "continue without shaping", "cont without shaping", "cont working even", "continue to work even",
            "carry on without shaping", "work without further shaping", "work evenly without shaping"),
    _family("bind off", r"(?<!needle )(?<!sewn )(?<!stretchy )(?<!underarm )\b(?:bind|cast) off\b|\bBO\b(?=[ ,.])", "bind off", "cast off", "BO"),
    _family("binding off", r"\b(?:binding|casting) off\b", "binding off", "casting off"),
    _family("cast on", r"\bcast on\b(?= \d|(?= an? ))|\bCO\b(?= \d)", "cast on", "CO"),
    _family("pick up", r"\bpick up (?:and|&) k(?:nit)?(?= [\d(])",
            "pick up and knit", "pick up & knit", "pick up and k", "PU and knit", "knit up", "pick up & k", "PU & K"),
    _family("hold", rf"\b(?:place|slip|put|transfer|move)(?= (?:the )?(?:next|these|those|last|first|rem|remaining|\d)[^.;:*]*? on(?:to)? (?:a |the )?{_HOLDER})",
            "place", "slip", "put", "transfer", "move"),
    _family("on waste yarn", r"\bon(?:to)? (?:waste|scrap|spare) yarn\b",
            "on waste yarn", "onto waste yarn", "on scrap yarn", "onto scrap yarn", "onto a piece of waste yarn", "on a length of scrap yarn",
            "to waste yarn", "to a strand of waste yarn", "onto a strand of scrap yarn", "onto a length of spare yarn", "on to waste yarn"),
    _family("on a holder", r"\bon(?:to)? (?:a )?(?:st(?:itch)? )?holder\b(?! and)",
            "on a holder", "onto a holder", "on a stitch holder", "onto a stitch holder", "on holder", "onto a st holder", "on a stitch-holder", "on to a holder",
            "to a holder", "to a stitch holder"),
    _family("change", r"\b(?:change|switch) (?:back )?to (?=(?:the )?(?:larger|smaller|\d|US \d)[^.;]*?needle)",
            "change to ", "switch to ", "swap to ", "move to ", "change over to ", "now change to ", "change to the "),
    _family("break", r"\b(?:break|cut)(?: off)? (?:the )?yarn\b",
            "break yarn", "cut yarn", "break the yarn", "cut the yarn", "break off yarn", "break off the yarn", "cut off the yarn"),
    _family("break a colour", r"\b(?:break|cut)(?: off)? (?=(?:MC|CC\d?|[AB])\b)", "break ", "cut ", "break off ", "cut off "),
    _family("rejoin", r"\b(?:re-?join|reattach)(?: the)? yarn\b(?= (?:to|at|with))",
            "rejoin yarn", "rejoin the yarn", "re-join yarn", "reattach yarn", "re-attach the yarn", "attach yarn again"),
    _family("join yarn", r"(?<!re-)\bjoin(?: the)? yarn\b(?= (?:to|at|and)|,)", "join yarn", "attach yarn", "join the yarn", "attach the yarn"),
    _family("join", r"\bjoin (?:to work |for working )?in (?:the )?(?:round|rnd)(?=[.,;])",
            "join in the round", "join to work in the round", "join for working in the round", "join in the rnd", "join for working in rnds",
            "join to knit in the round", "join into a round", "join for knitting in the round", "join in a round", "join to begin working in the round"),
    _family("turn", r"\bturn\b(?! the| work|s| [a-z]+ing)(?=[.,;]|$)", "turn", "turn work", "turn the work"),
    _family("repeat", r"\brep(?:eat)?\b(?= (?:from|the|last|these|rows?|rnds?|rounds?|dec|inc|\w+ (?:row|rnd)))", "rep", "repeat"),
    _family("work again", rf"(?<![\w,] )\brep(?:eat)? (?=(?:the last|last|these|rows|rnds|rounds)\b[^.;]*?(?:{NUMBER} (?:more times|times more)|(?:once|twice) more))",
            "repeat ", "work ", "rep "),
    _family("dec", r"\bdec(?:rease)? (?=1 st\b)", "dec ", "decrease "),
    _family("inc", r"\binc(?:rease)? (?=1 st\b)", "inc ", "increase "),
    _family("dec some", r"(?<!round, )(?<!row, )(?<!rnd, )(?<=, )dec(?:reasing|rease|'g|ing)? (?=\d+(?: \([\d, ]+\))? sts)", "decreasing ", "dec'ing ", "dec ", "and decrease ", "and at the same time decrease ", "decrease "),
    _family("inc some", r"(?<!round, )(?<!row, )(?<!rnd, )(?<=, )inc(?:reasing|rease|'g|ing)? (?=\d+(?: \([\d, ]+\))? sts)", "increasing ", "inc'ing ", "inc ", "and increase ", "and at the same time increase ", "increase "),
    _family("return", r"\breturn (?:the )?((?:\d+(?: \([\d, ]+\))? )?held (?:\w+ )?sts) to (?:the )?needles?\b", r"return \1 to needles", r"return the \1 to the needles", r"place \1 back on needles", r"transfer \1 to needles",
            r"place the \1 back onto the needles", r"slip the \1 back to the needle", r"put the \1 back on the needle", r"move \1 back to needles"),
    _family("continue", r"\bcont(?:inue)?\b(?= in\b)", "cont", "continue", "carry on", "go on", "proceed", "keep on"),
    _family("change fabric", r"\bwork(?= in (?:st st|stockinette|garter|moss))", "work", "continue", "cont", "work now"),
    _family("knit a number", r"\bk(?:nit)? ?(?=\d+(?: \([\d, ]+\))?(?:[.;]|, (?!p)))", "knit ", "k", "k "),
    _family("knit to", r"\b(?:knit|k) to\b(?!g)", "knit to", "k to"),
    _family("purl to", r"\b(?:purl|p) to\b", "purl to", "p to"),
    # --- how often ---
    _family("more times", rf"\b({NUMBER}) (?:more times|times more)\b",
            r"\1 more times", r"\1 times more", r"another \1 times", r"a further \1 times", r"an additional \1 times", r"\1 further times", r"\1 additional times"),
    _family("once more", r"\bonce more\b(?! \w)|\b(?:1|one) more time\b", "once more", "one more time", "1 more time", "once again", "1 time more", "another time", "one time more"),
    _family("twice more", r"\btwice more\b|\b2 more times\b", "twice more", "2 more times", "two more times", "another two times", "2 times more", "a further 2 times", "another 2 times"),
    _family("in all", rf"(?<!for )(?<!work)\b({NUMBER}) times (?:in total|in all|total|altogether)\b",
            r"\1 times in total", r"\1 times in all", r"\1 times total", r"\1 times altogether", r"a total of \1 times", r"for a total of \1 times", r"for \1 times in total"),
    _family("total of", rf"(?<!,)(?<!, )\b(?:for )?a total of ({NUMBER}) times\b", r"\1 times in total", r"\1 times in all", r"\1 times total", r"a total of \1 times", r"for a total of \1 times"),
    _family("twice", r"\btwice\b(?! more)(?! as)", "twice", "2 times", "two times"),
    _family("some times", r"\b3 times\b(?! (?:more|in|total|alt))", "3 times", "three times"),
    _family("rows in words", r"\b(?<=work |knit |purl )(?:2|two) (?=rows|rnds|rounds)", "2 ", "two "),
    _family("one row in words", r"\b(?<=work |knit |purl )(?:1|one) (?=row|rnd|round)", "1 ", "one ", "a "),
    # --- which rows ---
    _family("other", r"\bevery (?:other|alt(?:ernate)?|2nd|second) (?=row|rnd|round)",
            "every other ", "every alternate ", "every alt ", "every 2nd ", "every second ", "each alternate "),
    _family("following other", r"\bevery foll(?:owing)? (?:alternate|alt) (?=row|rnd|round)", "every foll alt ", "every following alternate ", "every following alt ", "each following alternate "),
    _family("following nth", r"\bevery (?:foll(?:owing)?) (?=\d+th)", "every foll ", "every following ", "each following ", "each foll ", "every subsequent "),
    _family("every RS", r"\bevery (?:RS|right[- ]side) row\b", "every RS row", "each RS row", "every right side row", "each right-side row"),
    _family("next and", r"\b(?:the )?next and every\b", "next and every", "the next and every", "next row and every"),
    _family("next rows", r"(?<!the )\b(?:at|on|of) (?:the )?next (\d) (rows|rnds|rounds)\b(?<!\.)", r"of next \1 \2", r"of the next \1 \2"),
    _family("begin of rows", r"\bat (?:the )?(?:beg|beginning|start) of (?:the )?(?=(?:next|foll|following)\b)",
            "at beg of ", "at the beginning of the ", "at beginning of ", "at start of ", "at the start of the ", "at the beg of the "),
    _family("following rows", r"\b(?:foll|following) (?=\d+ rows)", "foll ", "following "),
    _family("each end", r"\b(?:at )?(?:each|both) ends? of\b", "at each end of", "at both ends of", "each end of", "at each side of", "each side of", "both ends of", "on each side of"),
    _family("last rows", r"(?<!these )\b(?:the last|last|these) (?=\d (?:rows|rnds|rounds))", "last ", "the last ", "these ", "the previous ", "previous ", "these last "),
    _family("rounds", r"\brnds\b|\brounds\b", "rnds", "rounds"),
    _family("round", r"\brnd\b|(?<!the )(?<!all )(?<!change of )(?<!between )(?<!way )(?<!whole )(?<!go )\bround\b(?! (?:the|marker|neck|armhole|edge))", "rnd", "round"),
    _family("rs", r"(?<!ending )(?<!end )\bwith (?:the )?(?:RS|right side)(?: of work)? facing\b",
            "with RS facing", "with the RS facing", "with right side facing", "with right side of work facing", "with the right side facing", "RS facing", "from the right side", "from RS",
            "with right side facing you", "with the right side of the work facing"),
    _family("ending ws", r", (?:ending|end) (?:with|after|on) a WS row\b",
            ", ending with a WS row", ", ending on a WS row", ", ending after a WS row", ", end with a WS row", ", ending with a wrong side row", ", ending with RS facing for next row",
            ", finishing with a WS row", ", ending after completing a WS row", ", ending having worked a WS row", ", ending after working a WS row", " and end with a WS row", "; end after a WS row",
            ", ending ready to work a RS row"),
    _family("next row", r"^next (row|rnd|round)\b(?= \((?:RS|WS)\):|:)", r"next \1", r"following \1", r"foll \1", r"on the next \1", r"on next \1"),
    _family("edges", r"\bat (?:the )?(?=(?:armhole|neck|raglan|front) edge\b)", "at ", "at the ", "on ", "along "),
    _family("rows of", r"\bwork (\d+|two|four|six|eight) (rows|rnds|rounds) in (st st|stockinette stitch|garter st|rib|pattern|patt|k\d, p\d rib)(?=\.$)",
            r"work \1 \2 in \3", r"work in \3 for \1 \2", r"work \1 \2 of \3", r"work \1 \2 \3", r"cont in \3 for \1 \2"),
    _family("length of", rf"\bwork in (st st|stockinette stitch|garter st|rib|pattern|patt|k\d, p\d rib) for ({LENGTH})(?=\.$)",
            r"work in \1 for \2", r"work \2 in \1", r"work \2 of \1", r"cont in \1 for \2", r"continue in \1 for \2", r"work \1 for \2"),
    _family("part", r"\bfor (?:the )?(?=(?:left|right|first|second|other) (?:sleeve|front|shoulder|back)\b|(?:body|back|front|neck|thumb|heel|instep|gusset)(?=[,.;]))", "for ", "for the "),
    # --- how far ---
    _family("to end of round", r"\bto (?:the )?end of (?:the )?(?:rnd|round)\b", "to end of rnd", "to the end of the round", "to end of round", "to the end of rnd", "to end", "to the end"),
    _family("to end of row", r"\bto (?:the )?end of (?:the )?row\b", "to end of row", "to the end of the row", "to end", "to the end", "to row end"),
    _family("to end", r"\bto end\b(?! of| with)", "to end", "to the end"),
    _family("rep to end", r"\b(rep(?:eat)? from \*) to (?:the )?end(?: of (?:the )?(?:row|rnd|round))?(?=[.,;]|$)", r"\1 to end", r"\1 to the end", r"\1 across"),
    _family("to last", r"\bto (?:the )?last (?=\d)", "to last ", "to the last "),
    _family("remain", rf"\buntil ({NUMBER} {STS}) (?:rem(?:ain)?|are left)(?! on| for| in| un)\b",
            r"until \1 rem", r"until \1 remain", r"until \1 are left", r"until there are \1", r"until there are \1 left", r"until there are \1 remaining", r"until you have \1 left", r"until only \1 remain"),
    _family("measures", rf"\buntil (?:the )?(piece|work) measures (?={LENGTH})", r"until \1 measures ", r"until \1 is ", r"until the \1 measures ", r"until \1 reaches ", r"until \1 has reached ", r"until the \1 is ",
            r"till \1 measures ", r"until the \1 reaches ", r"until your \1 measures "),
    _family("from cast-on", r"\bfrom (?:the )?(?:cast-on|cast on|CO) edge\b", "from cast-on edge", "from the cast-on edge", "from CO edge", "from cast on edge", "from the CO edge", "from cast-on", "from the cast-on", "from CO", "from beg",
            "from beginning", "from the beginning"),
    _family("from beginning", r"\bfrom (?:the )?(?:beg|beginning|start)(?=[,.;]|$)", "from beg", "from beginning", "from the beginning", "from start", "from the start", "from the beg"),
    # --- what is on the needles ---
    _family("stitches", r"\b(?:sts|stitches)\b(?!\.)", "sts", "stitches"),
    _family("stitch", r"(?<=\b[1-9] )st\b(?! st)(?!\.)|(?<=\blast )st\b(?! st)(?!\.)|(?<=\bnext )st\b(?! st)(?!\.)|(?<=\bfirst )st\b(?! st)(?!\.)", "st", "stitch"),
    _family("place marker", r"\b(?:place (?:a )?marker|PM|pm|place m)\b(?! (?:A|B|1|2)\b)(?! ?[()])", "place marker", "place a marker", "pm", "PM", "place m", "pl m"),
    _family("slip marker", r"\b(?:slip (?:the )?marker|SM|sm|sl m|slip m)\b(?! [A-Z1-9]\b)", "slip marker", "slip the marker", "sm", "SM", "slip m", "sl m", "slm", "sl marker", "slip mkr"),
    _family("remove marker", r"\b(?:remove (?:the )?marker|RM|rm|remove m)\b(?! [A-Z1-9]\b)", "remove marker", "remove the marker", "rm", "RM", "remove m", "take out the marker"),
    _family("to marker", r"\bto (?:the )?(?:next )?(?:marker|m)\b(?=[,.;]|$)", "to marker", "to m", "to the marker", "to next marker", "to next m", "to the next marker", "to mkr"),
    _family("before marker", r"\b(st|sts) before (?:the )?(?:next )?(?:marker|m)\b(?=[,.;]|$)", r"\1 before marker", r"\1 before m", r"\1 before the marker", r"\1 before next marker", r"\1 before next m", r"\1 from m"),
    _family("begin of round", r"\b(for|to mark) (?:the )?(?:beg(?:inning)?|start) of (?:the )?(?:rnd|round)s?\b", r"\1 beg of rnd", r"\1 beginning of round", r"\1 the beginning of the round", r"\1 start of rnd", r"\1 the start of the round", r"\1 BOR",
            r"\1 the beg of the rnd"),
    _family("underarm", r"\bcast on (\d+(?: \([\d, ]+\))?) sts for (?:the )?underarm\b", r"cast on \1 sts for underarm", r"cast on \1 sts for the underarm", r"cast on \1 underarm sts", r"cast on \1 sts at underarm"),
    _family("larger needles", r"\b(?:with|using) (?:the )?(larger|smaller) needles?\b", r"with \1 needles", r"using \1 needles", r"with the \1 needles", r"using the \1 needles", r"on \1 needles"),
    _family("with yarn", r"(?<!join )(?<!work )(?<!k )\b(?:with|using|in) (?:yarn )?(?=(?:MC|CC)\b(?!\)))", "with ", "using ", "with yarn ", "in "),
    # --- the fabric ---
    _family("stockinette", r"\bin (?:st st|St st|stockinette(?: st(?:itch)?)?|stocking st(?:itch)?)\b", "in st st", "in St st", "in stockinette stitch", "in stockinette", "in stocking stitch", "in stockinette st", "in stocking st"),
    _family("garter", r"\bin garter (?:st(?:itch)?)\b", "in garter st", "in garter stitch", "in garter", "in g st", "in g-st"),
    _family("pattern", r"\bin patt(?:ern)?\b(?! st| [A-Z]|\. [a-z])", "in pattern", "in patt", "in pat"),
    _family("established", r"\bas (?:established|est|set)\b", "as established", "as set", "as est"),
    _family("as for", r"\bwork (?:the )?(?:same )?as (?:given )?for (?:the )?(back|front|left front|right front|first side|left sleeve)\b",
            r"work as for \1", r"work same as for \1", r"work as given for \1", r"work the same as for \1", r"work as for the \1", r"work the same as \1", r"work in the same way as for \1", r"work exactly as for \1"),
    _family("in a fabric as for", r"(?<!work )(?<!same )\bas (?:given )?for (?:the )?(back|front)\b(?=[.,])", r"as for \1", r"as given for \1", r"as for the \1", r"same as for \1", r"as worked for \1"),
    _family("reversing", r"\brevers(?:ing|e) (?:all |the )?shapings?\b", "reversing shaping", "reversing all shaping", "reversing the shaping", "reversing shapings", "reversing all shapings"),
    _family("evenly", r"(?<=sts )evenly(?: spaced| across)?(?=[.,;]|$)", "evenly", "evenly spaced", "evenly across", "evenly spaced across"),
    _family("same time", r"\bat (?:the )?same time\b", "at the same time", "AT THE SAME TIME", "at same time"),
    # --- counts ---
    _family("count", rf"\. ({NUMBER} {STS})\.{END}", r". \1.", r". There are \1.", r". You now have \1.", r". You will have \1.", r". You should have \1.", r". You should now have \1.", r". There should be \1.", r". Total \1.",
            r". \1 on needle.", r". \1 in total.", r". There will be \1.", r". There are now \1 on the needle.", r". You have \1 on your needle."),
    _family("count rem", rf"\. ({NUMBER} {STS}) rem(?:ain(?:ing)?)?\.{END}", r". \1 rem.", r". \1 remain.", r". \1 remaining.", r". \1 left.", r". There are \1 left.", r". You now have \1.", r". You will have \1 left.", r". \1 are left.",
            r". There should be \1 left."),
)  # fmt: skip
"""What changes words and nothing else."""

ADDED: tuple[Family, ...] = (
    _family("cast on loosely", rf"(?<![,;:] )(?<!, )\b((?:cast on|CO) {NUMBER} {STS})(?=\.(?! [a-z]))", r"\1 loosely", r"loosely \1", r"\1 using the long-tail method", r"\1, using the long-tail cast-on", r"\1 using your preferred method",
            r"\1 with the long-tail method", r"\1 using a long-tail cast on"),
    _family("bind off loosely", r"(?<!needle )(?<!sewn )(?<!as for )\b((?:bind|cast) off|BO)(?: all(?: sts)?)?\.", r"\1 all sts loosely.", r"loosely \1 all sts.", r"\1 all sts, not too tightly.", r"\1 all sts loosely and evenly."),
    _family("backward loop", rf"(?<=, )(cast on {NUMBER}(?: {STS})?)(?=, )", r"\1 using the backward loop method", r"\1 with the backward loop method", r"\1 using the backward-loop cast-on", r"\1 using the cable cast-on"),
    _family("not twist", r"\b(join in the round)(?=\.)", r"\1, being careful not to twist", r"\1, taking care not to twist sts", r"\1 being careful not to twist sts", r"\1, making sure not to twist the stitches", r"\1, being careful not to twist stitches",
            r"\1, without twisting the cast-on edge", r"carefully \1"),
    _family("as before", r"\b(work even|cont even|continue even|work straight)\b(?= (?:until|for))", r"\1 as before"),
    _family("from here on", r"^(Knit every (?:rnd|round))\b", r"From here on, knit every round", r"From here on knit every rnd", r"From now on, knit every round"),
    _family("with a tail", r"\b((?:break|cut) (?:the )?yarn)(?=, (?:draw|thread)|\.)", r"\1, leaving a long tail", r"\1, leaving a 20 cm tail", r"\1, leaving a tail", r"\1 leaving a tail"),
    _family("hold for later", r"\b(on(?:to)? (?:a )?(?:holder|waste yarn|scrap yarn))\.$", r"\1 for later.", r"\1 and set aside.", r"\1 to be worked later.", r"\1 until later."),
    _family("now", r"^(Work|Knit|Purl|Continue|Cont) (?=(?:even|in|\d+ (?:rows|rnds|rounds)))", r"Now \1 ", r"Next, \1 ", r"Then \1 "),
    _family("you are", r"^(Change to (?:larger|smaller) needles)\.$", r"\1 now.", r"Now \1."),
)  # fmt: skip
"""Words put beside that change nothing that is knitted."""

FAMILIES = (*WORDS, *ADDED)


def has(family: Family, line: str) -> bool:
    """Return whether words of a family stand in a line."""
    return _pattern(family).search(line) is not None


def put(family: Family, wording: str, line: str) -> str:
    """Return a line with one wording at each place of a family."""

    def worded(match: re.Match[str]) -> str:
        said = re.sub(r"(?<=[a-z] )(Work|Knit|Purl|Continue|Cont|Bind|Cast|Join|Change)\b", lambda m: m[1].lower(), match.expand(wording))
        said = re.sub(r"(?<=, )(Work|Knit|Purl|Continue|Cont)\b", lambda m: m[1].lower(), said)
        if _BIG.search(line[: match.start()]) and line[match.start()].isupper():
            return said[0].upper() + said[1:]
        return said

    return _pattern(family).sub(worded, line)


def others(family: Family, line: str) -> list[str]:
    """Return the wordings of a family that change a line."""
    return [wording for wording in dict.fromkeys(family.wordings) if put(family, wording, line).lower() != line.lower()]


def dress(lines: Sequence[str], seed: str, *, share: float = 0.5, families: Sequence[Family] = FAMILIES) -> list[str]:
    """Return lines as one designer words them: of some families one wording, the same in every line."""
    drawn = random.Random(seed)
    for family in families:
        wanted, wording = drawn.random() < share, drawn.choice(family.wordings)
        if wanted:
            lines = [put(family, wording, line) for line in lines]
    return list(lines)


def _pattern(family: Family) -> re.Pattern[str]:
    return re.compile(family.pattern, 0 if family.exact else re.IGNORECASE)
