"""What makes a plan, or a round of it, the same to knit, so that changes are noticed. No I/O."""

from __future__ import annotations

import hashlib

from stepper.plan.model import Plan, Round

Knitted = tuple[int, int, bool, str, tuple[tuple[str, str, int], ...]]
"""What is knitted in a round: stitches before and after, whether flat, its side, and its stitches."""

_MARKERS = frozenset(("pm", "sm", "rm"))


def describe_knitted(round_: Round) -> Knitted:
    """Return what is knitted in a round: two rounds with the same are the same fabric on the same stitches.

    Names, labels, remarks, needles and markers do not matter; the name of stitches on hold does, since one
    sleeve is not the other. A cast-on is the same whether rows or rounds follow.
    """
    work: list[tuple[str, str, int]] = []
    for run in round_.runs:
        if run.stitch in _MARKERS:
            continue
        if work and work[-1][:2] == (run.stitch, run.yarn):
            work[-1] = (run.stitch, run.yarn, work[-1][2] + run.times)
        else:
            work.append((run.stitch, run.yarn, run.times))
    if round_.words:
        work = [(round_.words, yarn, times) for _, yarn, times in work]  # all that is known of its stitches
    return round_.before, round_.after, round_.flat and round_.before > 0, round_.side, tuple(work)


def placed_alike(round_: Round) -> Knitted:
    """Return the same, but regardless of the places of changes that are spread evenly.

    Those depend on the manner and on what is to be kept clear; it is the same round of the garment.
    """
    before, after, flat, side, work = describe_knitted(round_)
    if not round_.evenly:
        return before, after, flat, side, work
    in_all: dict[tuple[str, str], int] = {}
    for code, yarn, times in work:
        in_all[code, yarn] = in_all.get((code, yarn), 0) + times
    sums = sorted((code, yarn, times) for (code, yarn), times in in_all.items())
    return before, after, flat, side, tuple(sums)


def fingerprint(plan: Plan) -> str:
    """Return a name that changes when any round of the plan does.

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
