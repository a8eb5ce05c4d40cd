"""Tell which remarks of a round leave nothing to do, so that nobody has to say that it is done. No I/O."""

from __future__ import annotations

import re
from functools import lru_cache
from typing import Final

from stepper.project.rewording.remarks.idle import leaves_nothing_to_do

_FULL_STOP: Final = re.compile(r"[.!] +(?=[A-Z])")


@lru_cache(maxsize=1024)
def is_told_only(remark: str) -> bool:
    """Return whether a remark tells a fact or what is to come, and asks for nothing to be done.

    Args:
        remark: As it stands with the round; of several sentences all have to be such.

    Returns:
        False in doubt: what is to be done before a step must not be said past her.
    """
    return all(map(leaves_nothing_to_do, _FULL_STOP.split(remark)))
