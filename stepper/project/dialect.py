"""Tell pages in US wording from those in UK wording: some words and numbers differ between them. No I/O.

Moss stitch is one of them, and "No. 2 needles" another: 2.75 mm on a US page, 7 mm on an old UK one.
"""

from __future__ import annotations

import re

from stepper.regex import regex

_US = regex(r"\b(?:bind(?:ing)?\s+off|bound\s+off|bo|stockinette|center|gray)\b", re.I)
_UK = regex(r"\b(?:cast(?:ing)?\s+off|stocking\s+st(?:itch)?|centre|grey|tension)\b", re.I)


def is_american(text: str) -> bool:
    """Return whether the text of a page uses US wording and no UK wording. Source: common practice."""
    return bool(_US.search(text)) and not _UK.search(text)
