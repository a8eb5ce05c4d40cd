"""The percentage system for seamless pullovers, as far as judging the fit needs it.

Every share is relative to the body at its widest. The system gives narrower upper arms than sizing tables, so
its counts are never mixed with a table's. No I/O.

Source: Zimmermann's percentages, by "Elizabeth Zimmermann Yoke Cheat Sheet", which cites Knitting Without
Tears, and J. Joyce, "Percentage Systems", 2012.
"""

from __future__ import annotations

UNDERARM_SHARE = 0.08
"""Each underarm. Source: see the module."""
DEPTH_SHARE = 0.25
"""Depth of the yoke. Source: see the module."""


def joined_width(body: float, sleeve: float) -> float:
    """Return the width of body and sleeves together once they are joined.

    At each underarm, one edge of the body and one of a sleeve are left out: four in all.

    Args:
        body: Around the body at its widest. Range: 0 and up.
        sleeve: Around one upper arm. Range: 0 and up.

    Returns:
        Unit: that of the arguments.

    Source: joined = body + 2 sleeves - 4 underarms; see the module.
    """
    return body + 2 * sleeve - 4 * UNDERARM_SHARE * body
