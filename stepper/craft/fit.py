"""Fit: how much wider a garment is than its wearer, and the word for it.

No I/O.
"""

from __future__ import annotations

from typing import Literal

from stepper.craft.gauge import from_mm

FitWord = Literal["stretched", "very close", "close", "standard", "loose", "oversized"]

STRETCHED_SHARE = 0.08
"""Share of the body by which a garment may be narrower before it is worn stretched rather than a close fit.
Chosen here: no published bound was found; the published classes end with "actual size or less"."""

# Upper bounds of ease at the chest, in inches. In print: 0; 1 to 2; 2 to 4; 4 to 6; 6 and more.
_BOUNDS_IN: tuple[tuple[float, FitWord], ...] = (
    (0.5, "very close"),
    (2, "close"),
    (4, "standard"),
    (6, "loose"),
)


def fit_word(ease_mm: float, body_mm: float | None = None) -> FitWord:
    """Return the Craft Yarn Council's word for an ease at the chest, or "stretched" far below.

    The printed classes share their bounds and leave a gap between 0 and 1 in. The rule here: a bound belongs
    to the closer fit (exactly 2 in is close), and within the gap the nearer class wins, with half an inch
    very close. So the inch bounds and the whole centimetres in print (5, 10, 15) get the same word.

    Args:
        ease_mm: Garment minus body at the chest. Unit: mm.
        body_mm: The body; None if only the ease is known, which is then never "stretched". Unit: mm.

    Raises:
        ValueError: The ease is not finite.

    Source: Craft Yarn Council, "Ease and Fit", as cited by gratefullyinhisgrace, 4 Aug 2011; ties: this
        project's rule.
    """
    if body_mm is not None and ease_mm < -STRETCHED_SHARE * body_mm:
        return "stretched"
    ease_in = round(from_mm(ease_mm, "in"), 9)
    for bound_in, word in _BOUNDS_IN:
        if ease_in <= bound_in:
            return word
    return "oversized"
