"""Needle sizes: US numbers against millimetres.

The metric diameter is the safe key: different makers sell different diameters under one US number
(sizes.com, tools/knitting_needles). Rows on which printed tables disagree say so. No I/O.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class NeedleSize:
    """One row of the needle table."""

    us: str
    """The US number as printed, for example "10.5" or "000"."""
    mm: float
    """The diameter most tables give. Unit: mm."""
    also_mm: tuple[float, ...] = ()
    """Other diameters met in print under the same number. Unit: mm."""
    note: str = ""
    """Why the row is disputed; empty when the tables agree."""

    @property
    def is_disputed(self) -> bool:
        """Whether printed tables disagree on this row."""
        return bool(self.note)


NEEDLE_SIZES: tuple[NeedleSize, ...] = (
    NeedleSize(us="000", mm=1.5, also_mm=(1.25,), note="1.5 mm in one table, 1.25 mm in another"),
    NeedleSize(us="00", mm=1.75, also_mm=(1.5,), note="1.75 mm in one table, 1.5 mm in another"),
    NeedleSize(us="0", mm=2.0),
    NeedleSize(us="1", mm=2.25, note="one table prints 2.25 mm as US 0"),
    NeedleSize(us="1.5", mm=2.5, note="not in every table"),
    NeedleSize(us="2", mm=2.75, also_mm=(3.0,), note="some makers sell 3 mm as US 2"),
    NeedleSize(us="2.5", mm=3.0, note="some makers sell 3 mm as US 2"),
    NeedleSize(us="3", mm=3.25),
    NeedleSize(us="4", mm=3.5),
    NeedleSize(us="5", mm=3.75),
    NeedleSize(us="6", mm=4.0),
    NeedleSize(us="7", mm=4.5),
    NeedleSize(us="8", mm=5.0),
    NeedleSize(us="9", mm=5.5),
    NeedleSize(us="10", mm=6.0),
    NeedleSize(us="10.5", mm=6.5),
    NeedleSize(us="11", mm=8.0),
    NeedleSize(us="13", mm=9.0),
    NeedleSize(us="15", mm=10.0),
    NeedleSize(us="17", mm=12.75, also_mm=(12.0,), note="12.75 mm in one table, 12 mm in another"),
    NeedleSize(us="19", mm=15.0, also_mm=(16.0,), note="15 mm in one table, 16 mm in another"),
    NeedleSize(us="35", mm=19.0, note="some tables list 20 mm as US 36 beside it"),
    NeedleSize(us="36", mm=20.0, note="not in every table"),
    NeedleSize(us="50", mm=25.0),
)
"""US sizes from thin to thick. 7 mm and 7.5 mm have no US number.

Source: three published conversion tables that agree on every row not marked.
"""


def needle_from_us(us: str) -> NeedleSize:
    """Find the row of a US number.

    Args:
        us: The number as printed, with or without "US"; "10 1/2" and "10½" are read as "10.5".

    Raises:
        ValueError: No table has that number.

    Source: `NEEDLE_SIZES`.
    """
    wanted = us.upper().removeprefix("US").strip().replace("½", " 1/2").replace(" 1/2", ".5").replace(" ", "")
    for size in NEEDLE_SIZES:
        if size.us == wanted:
            return size
    known = ", ".join(size.us for size in NEEDLE_SIZES)
    raise ValueError(f'there is no US needle size "{us}"; the sizes are {known}.')


def needles_from_mm(mm: float) -> tuple[NeedleSize, ...]:
    """Find the US numbers under which a diameter is sold, the usual one first.

    Args:
        mm: Diameter. Range: above 0. Unit: mm.

    Returns:
        Matching rows; none for diameters without a US number, such as 7 mm.

    Raises:
        ValueError: The diameter is not above 0.

    Source: `NEEDLE_SIZES`.
    """
    if not mm > 0:
        raise ValueError(f"a needle's diameter must be above 0 mm (got {mm}).")
    usual = tuple(size for size in NEEDLE_SIZES if _same(size.mm, mm))
    return usual + tuple(size for size in NEEDLE_SIZES if any(_same(also, mm) for also in size.also_mm))


def _same(one_mm: float, other_mm: float) -> bool:
    # Sizes are quarter millimetres, so a hundredth tells a rounding from another size.
    return abs(one_mm - other_mm) < 0.01
