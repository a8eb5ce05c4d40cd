"""Other wordings for a change of needles: to another size, or to a longer or shorter one once the stitches ask for it. No I/O.

A change of size is worked; one between needles of a size, as from a circular needle to double-pointed ones, works no
stitch and is said at its place. "When the stitches no longer fit" leaves the moment to the knitter, so a size behind
such words is not taken: where the gauge changes has to be known. Source: the wording of patterns in print, US and UK;
common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.craft.needles import BARE_SIZE, MM_SIZE, ROLE_SIZE, SIZE, UK_SIZE
from stepper.project.rewording.said_rows import said_row_behind
from stepper.project.rewording.synonym import STS, Synonym, row

_GO: Final = r"(?:(?:change|switch|swap|move|transfer|shift|go|return)(?:\s+(?:over|back|up|down))?\s+(?:on)?to|back\s+to|(?:take|use)(?=\s))"
_ART: Final = r"(?:(?:the|a|an|your|some|one)\s+)?"
_SIZED: Final = rf"(?:{SIZE}|{UK_SIZE}|{BARE_SIZE}|smaller|larger|{ROLE_SIZE})"
_LENGTH: Final = r"(?:\d{2,3}(?:\.\d)?(?:\s*cm\b|-?\s*(?:inch(?:es)?\b|in\b\.?|\"))(?:\s*\([^()]*\))?)"
_LENGTHS: Final = rf"(?:{_LENGTH}(?:\s*(?:,|/|or|and|-)\s*(?:an?\s+)?{_LENGTH})*(?:[-\s]*long)?)"
_FORM: Final = r"(?:(?:short(?:er)?|long(?:er)?|circular|circ\.?|double[-\s]pointed|d\.?p\.?|sock|straight|set\s+of(?:\s+(?:four|five|4|5))?|two|(?:four|five|4|5)(?=[\s-]+(?:double|d\.?p|sock)))(?:\s*-\s*|\s*))"
"""The form of needles; a number alone, "smaller 5 needles", may be how many or how thick."""
_KIND: Final = rf"(?:{_LENGTH}(?:\s*(?:,|/|or\b|and\b))?\s*|{_FORM})"
_NOUN: Final = r"(?:needles?|ndls?\.?|dpns?|circulars?|circs?|magic\s+loop)(?!\w)"
_FREE: Final = (
    r"(?:the|your|sts|stitches|st|circumference|work|needles?|circular|dpns?|it|they|there|is|are|isn't|aren't|has|have|gets?|getting|becomes?|become|feels?|"
    r"feel|fits?|too|enough|few|many|small|tight|crowded|cramped|snug|no|longer|more|room|place|space|long|wide|comfortably|for|on|around|round|to|of|you|"
    r"need|needed|necessary|convenient|possible|desired|required|not|already|done|so|be|stretch|stretched|reach|as|can|will|do|don't|that|this|large|and|any|with|"
    r"hat|crown|sleeve|piece|mitten|sock|thumb|hold|holds|accommodate|worked|on)"
)
_WHEN: Final = rf"(?:(?:(?:when(?:ever)?|as\s+soon\s+as|once|if|as|where(?:ver)?)(?:\s+{_FREE}\b){{1,14}})|underway|along\s+the\s+way|as\s+you\s+go|at\s+any\s+(?:time|point))"
_OTHER_KIND: Final = rf"(?:{_ART}{_KIND}+(?:{_NOUN})?|{_ART}(?:dpns?|circulars?|circs?|magic\s+loop))(?<!\s)"
_END: Final = r"\s*(?=[.;!]|$)"
_FIRST: Final = r"(^\s*|[.;!]\s*)"
_TEXTURE: Final = r"(?P<said>\s+and\s+(?:now\s+)?(?:work|knit|begin)\s+the\s+(?:[a-z-]+\s+){0,2}(?:hem|cuff|ribbing|rib|border|edging|band|collar|neckband)(?:\s+as\s+foll(?:ow)?s)?)"

NEEDLE_CHANGES: tuple[Synonym, ...] = (
    # --- to another size ---
    row("needle|dpn", rf"^(\s*(?!(?:change|switch|swap|with|using|use|on|in|to|and|then|next|needles?|gauge|tension)\b)[a-z][a-z' ]{{1,30}}?)\s*(?:,\s|-\s|[(\[])\s*(?:(?:worked\s+)?(?:with|using|on)\s+)?{_ART}({_SIZED})\s+{_KIND}*{_NOUN}\s*[)\]]?\s*[.:]?\s*$", r"\1: \2 needles", "Yoke (4 mm needle)"),
    row("to", rf"{_FIRST}(?:now\s+|then\s+)?{_GO}\s+{_ART}(?:({_SIZED})(?:\s+{_KIND}*{_NOUN})?){_TEXTURE}\s*:\s*$", r"\1change to \2 needles", "Swap to US 3 needles and work the textured hem:", spelt_out=True),
    row("to", rf"{_FIRST}(?:now\s+|then\s+)?{_GO}\s+{_ART}({_SIZED})\s+(?P<said>{_LENGTHS})\s*-?\s*{_FORM}*(?:{_NOUN})?(?<!\s)(?=\s*[.;,:]|\s*$|\s+and\b)", r"\1change to \2 needles", "Change to smaller 24\" or 32\" needle.", spelt_out=True),
    row("to", rf"{_FIRST}({_GO}\s+{_ART}{_SIZED}(?:\s+{_KIND}*{_NOUN})?)\s*,?\s+and\s+(?=(?:work|knit|purl|cont|continue|k|p|rib|rep|repeat|begin|proceed)\b)", r"\1\2. ", "Switch to the larger circular, and knit 1 round."),
    row("to", rf"{_FIRST}(?:now\s+|then\s+)?{_GO}\s+{_ART}({_SIZED})\s+(?:set\s+of\s+)?(?:dpns?|d\.?p\.?\s+needles?|double[-\s]pointed(?:\s+needles?)?)(?=\s*[.;,:]|\s*$|\s+and\b)", r"\1change to \2 double-pointed needles", "Swap over to the 4 mm dpns."),
    row("to", rf"{_FIRST}(?:now\s+|then\s+)?{_GO}\s+{_ART}({_SIZED})(?!\s+double-pointed)(?:\s+(?:(?:long|short)(?:er)?\s+)?(circular\s+)?(?:{_FORM})*{_NOUN})?(?=\s*[.;,:]|\s*$|\s+and\b)", r"\1change to \2 \3needles", "Switch to the US 8 needle."),
    row("mm", rf"^(\s*)({MM_SIZE})\s*\.\s*$", r"\1change to \2 needles", "3.5 mm."),
    row("mm", rf"{_FIRST}({MM_SIZE})(?:\s+{_KIND}*{_NOUN})?\s*[,:]\s*((?:rib|k|p|knit|purl|work)\b[^.;:]*?)\s*,\s*(?:and\s+)?(?:then\s+)?(?=(?:cast|bind)\s+off\b)", r"\1change to \2 needles. \3. ", "4 mm, rib 6 cm, cast off."),
    row("mm", rf"{_FIRST}({MM_SIZE})(?:\s+{_KIND}*{_NOUN})?\s*[,:]\s*(?=(?:rib|k|p|knit|purl|work)\b)", r"\1change to \2 needles. ", "4 mm: rib 6 cm."),
    # --- to another needle of the same size ---
    said_row_behind("to", rf"{_FIRST}(?P<said>(?:now\s+|then\s+)?(?:{_GO}|(?:transfer|move|put|slip|place)\s+(?:the\s+|all\s+|your\s+)*(?:{STS}|work)\s+(?:on)?to)\s+{_OTHER_KIND}\s*,?\s+{_WHEN}){_END}", "Swap to dpns when the circumference gets too small for the circular needle."),
    said_row_behind("to", rf"{_FIRST}(?P<said>{_WHEN}\s*,?\s*(?:{_GO}|(?:transfer|move|put|slip|place)\s+(?:the\s+|all\s+|your\s+|them\s*|{STS}\s*)*(?:on)?to)\s+{_OTHER_KIND}){_END}", "If the stitches become too few for the circular needle, change to dpns."),
    said_row_behind("to", rf"{_FIRST}(?P<said>{_GO}\s+{_ART}{_FORM}*{_LENGTHS}\s*-?\s*{_FORM}*(?:{_NOUN})?(?<!\s)){_END}", "Change to a 24\" needle."),
)  # fmt: skip
"""The rows, tried on lines that nothing else reads."""
