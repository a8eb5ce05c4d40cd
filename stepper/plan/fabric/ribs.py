"""Tell whether a rib stands under the stitches, where a line says "in rib" and no more. No I/O."""

from __future__ import annotations

from stepper.plan.fabric.columns import UnknownFabricError
from stepper.plan.fabric.established import columns_of, ground
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.rib_cells import has_plain_stretch


def rib_stands(needles: Needles) -> bool:
    """Return whether the stitches on the needles may be meant by "in rib"; where none can tell, they may."""
    if ground(needles) in ("plain", "garter"):
        return False
    try:
        columns, _ = columns_of(needles)
    except UnknownFabricError:
        return True
    # Every stitch of moss stitch is knit and purl in turn, and so none is of a rib.
    steady = any(len(set(column)) == 1 for column in columns)
    return steady and not has_plain_stretch(column[0][0] for column in columns)
