"""What the parts of a garment are called on a page: the list from which tables of wordings name them. No I/O.

Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.project.pairs import WHOLES

_OF_BODIES: Final = "front|back|sleeve|body|yoke|hood|collar|neck(?:line|band)?|shoulder|underarm|armhole"
_OF_FEET: Final = "heel|flap|instep|sole|foot|leg|toe"
_OF_HANDS: Final = "thumb|hand|palm|finger"
PART: Final = rf"(?:{_OF_BODIES}|{_OF_FEET}|{_OF_HANDS}|pocket)"
"""A part whose stitches lie beside others or wait, in the singular; those of a gusset are its thumb's."""
STRIP: Final = r"(?:side|half|panel|strap|border|(?:button\s?)?band|edge)"
"""What lies along a part."""
SIDED: Final = (
    r"(?:left|right|first|second|third|other|front|back|upper|lower|top|inner|outer|cent(?:er|re)"
    r"|little|ring|middle|index)"
)
"""A word by which one of several is meant."""
WHICH: Final = rf"(?:{SIDED}[\s-]+)*"
"""Such words in front of a name; empty too."""
EDGING: Final = r"(?:cuff|hem|welt|brim|border|edging|waistband|ribbing|(?:button\s?|front\s+)?band)"
"""What is worked at the edge of a part, mostly in rib."""
GARMENT: Final = (
    rf"(?:{WHOLES}|hat|cap|bonnet|cowl|scarf|shawl|blanket|bag|skirt|bodice|dress|vest|slipover|jumper|"
    r"sweater|pullover|cardigan|jacket|garment)"
)
"""What is knitted as a whole."""
PIECE: Final = (
    rf"(?:piece|work|knitting|section|{PART}|{EDGING}|{GARMENT}|gusset|crown|panel|strap|edge|tube|rib(?:bing)?)"
)
"""What is measured while it is knitted, but "it"."""
