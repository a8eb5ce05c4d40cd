"""Work a stretch of a row in a fabric by its name: "work 5 sts in garter st, k to last 5 sts, ...". No I/O.

Source: common practice. Moss stitch (UK; seed stitch in the US) purls what shows a knit stitch and knits what
shows a purl one; where it begins, its first stitch is knitted.
"""

from __future__ import annotations

from itertools import pairwise

from stepper.plan.fabric.columns import as_seen
from stepper.plan.fabric.named_patterns import is_american
from stepper.plan.model import flatten
from stepper.plan.state.in_hand import Cell
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.row_elements import MisfitError
from stepper.project.problems import Span

_OTHER = {"k": "p", "p": "k"}
_WRITE = 'Write the stitches of the stretch, for example "k1, p1, k1".'


def stretch_of(name: str, start: int, number: int, needles: Needles, place: Span) -> tuple[Cell, ...]:
    """Return how the stitches of a stretch are worked from this side.

    Args:
        name: `garter`, `stockinette`, `reverse`, `seed`, `moss`, or `opposite`, which purls what shows a knit
            stitch and knits what shows a purl one, whatever their order.
        start: Stitches from where the row begins to the stretch.
        number: Stitches of the stretch.
        needles: The knitting in hand.
        place: Where the line says so.

    Raises:
        MisfitError: one row cannot say how it goes on.
    """
    if name == "garter" and not needles.flat:
        told = "garter stitch over a part of a round is knitted in one round and purled in the next."
        raise MisfitError(place, told, "Write k or p for the stretch, round by round.")
    if name == "moss" and is_american(needles):
        raise MisfitError(place, "moss stitch is another pattern on a US page than on a UK one.", _WRITE)
    if name == "opposite":
        below = _below(needles)[start : start + number]
        if len(below) != number or not set(below) <= _OTHER.keys():
            told = "not every stitch below is known to be a knit or a purl stitch, so the row is not clear."
            raise MisfitError(place, told, "Write the row out, stitch by stitch.")
        return tuple((_OTHER[code], "") for code in below)
    if name in ("moss", "seed"):
        return tuple((code, "") for code in _moss(start, number, needles, place))
    code = "k" if name == "garter" or (name == "stockinette") != needles.wrong else "p"
    return ((code, ""),) * number


def _moss(start: int, number: int, needles: Needles, place: Span) -> tuple[str, ...]:
    below = _below(needles)[start : start + number]
    alternate = set(below) <= {"k", "p"} and all(one != other for one, other in pairwise(below))
    if len(below) == number and alternate:
        return tuple(_OTHER[code] for code in below)
    if start and number % 2 == 0:
        told = "the stitches below are in no such pattern, so nobody can tell with which stitch it begins."
        raise MisfitError(place, told, _WRITE)
    return tuple("kp"[at % 2] for at in range(number))


def _below(needles: Needles) -> tuple[str, ...]:
    """Return what each stitch shows to this side, from where the row begins; empty if not known."""
    last = needles.drafts[-1] if needles.drafts else None
    if last is None or last.after != needles.count or needles.short_rows.gap is not None:
        return ()
    codes = [run.stitch for run in flatten(last.phrase) for _ in range(run.leaves)]
    if needles.flat and last.side != needles.side:
        return tuple(as_seen(code, wrong=True) for code in reversed(codes))
    return tuple(codes)
