"""The percentage system to the stitch, as it is in print: a second opinion on what the package says of a yoke.

Source: "Elizabeth Zimmermann Yoke Cheat Sheet", citing Knitting Without Tears; J. Joyce, "Percentage Systems", 2012.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class YokeCounts:
    """The counts of a seamless pullover. Unit: stitches."""

    body: int
    sleeve: int
    underarm: int
    neck: int

    @property
    def joined(self) -> int:
        """Stitches on the needle when body and sleeves are joined."""
        return self.body + 2 * self.sleeve - 4 * self.underarm


def yoke_counts(body: int) -> YokeCounts:
    """Return the counts that belong to a body: the sleeve 33 %, the underarm 8 %, the neck 40 % of it."""
    return YokeCounts(
        body=body,
        sleeve=2 * round(body * 33 / 200),
        underarm=round(body * 8 / 100),
        neck=2 * round(body * 40 / 200),
    )
