"""Tell which remarks of a round leave nothing to do, so that nobody has to say that it is done. No I/O."""

from __future__ import annotations

import re
from collections.abc import Iterable
from functools import lru_cache
from typing import Final

from stepper.project.rewording.remarks.idle import leaves_nothing_to_do
from stepper.regex import regex

WHEN_DONE: Final = "when it is done: "
"""Before a remark of what comes once the last stitch of a piece is worked: seams, ends, pressing."""
_STOPS_SOONER: Final = regex(
    r"\b(?:stop|end|finish|leave\s+off)\s+(?:already\s+)?(?:at|after|with)\s+(?:about\s+|approx\.?\s+|only\s+)?\d"
    r"|\b(?:work|knit|rib)\s+only\s+\d",
    re.IGNORECASE,
)
"""Words that let her end sooner what was just told: "if you like a single band, stop at 3 cm"."""
_FULL_STOP: Final = regex(r"[.!] +(?=[A-Z])")


def lead_in_once(remarks: Iterable[str]) -> tuple[str, ...]:
    """Return remarks said one after another, of which the first alone says that they come when it is done."""
    led = tuple(remarks)
    again = (
        bool(at) and one.startswith(WHEN_DONE) and led[at - 1].startswith(WHEN_DONE)
        for at, one in enumerate(led)
    )
    return tuple(one.removeprefix(WHEN_DONE) if twice else one for one, twice in zip(led, again, strict=True))


def lets_stop_sooner(remark: str) -> bool:
    """Return whether a remark lets her end sooner what is worked above it: behind its end it is too late."""
    return _STOPS_SOONER.search(remark) is not None


@lru_cache(maxsize=1024)
def is_told_only(remark: str) -> bool:
    """Return whether a remark tells a fact or what is to come, and asks for nothing to be done.

    Args:
        remark: As it stands with the round; of several sentences all have to be such.

    Returns:
        False in doubt: what is to be done before a step must not be said past her.
    """
    return all(map(leaves_nothing_to_do, _FULL_STOP.split(remark)))
