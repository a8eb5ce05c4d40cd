"""One short name for all the numbers of a plan, to notice that they changed. No I/O."""

from __future__ import annotations

import hashlib

from stepper.plan.model import Plan


def fingerprint(plan: Plan) -> str:
    """Give a name that changes when any round of the plan does.

    Titles, remarks and words may change without it; stitches, yarns, counts, labels and lengths may not.

    Returns:
        32 hexadecimal digits (the first half of SHA-256).
    """
    digest = hashlib.sha256()
    last = ""
    for round_ in plan.rounds:
        text = repr((round_.section, round_.label, round_.size, round_.before, round_.after, round_.phrase))
        # Long stretches of one plain round hash as a repeat sign, which keeps this quick.
        digest.update(b"=" if text == last else text.encode())
        last = text
    digest.update(repr(plan.stretches).encode())
    return digest.hexdigest()[:32]
