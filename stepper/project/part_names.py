"""What the parts of a garment are called on a page: the one list from which expressions name them. No I/O.

Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

from typing import Final

_OF_BODIES: Final = "front|back|sleeve|body|yoke|hood|collar|neck(?:line|band)?|shoulder|underarm|armhole"
_OF_FEET: Final = "heel|flap|instep|sole|foot|leg|toe|gusset"
_OF_HANDS: Final = "thumb|hand|palm|finger"
PART: Final = rf"(?:{_OF_BODIES}|{_OF_FEET}|{_OF_HANDS}|pocket)"
"""A part of a garment whose stitches lie beside others or wait, in the singular."""
STRIP: Final = r"(?:side|half|panel|strap|border|(?:button\s?)?band|edge)"
"""What lies along a part."""
SIDED: Final = (
    r"(?:left|right|first|second|third|other|front|back|upper|lower|top|inner|outer|cent(?:er|re)"
    r"|little|ring|middle|index)"
)
"""A word by which one of several is meant."""
WHICH: Final = rf"(?:{SIDED}[\s-]+)*"
"""Such words in front of a name; empty too."""
