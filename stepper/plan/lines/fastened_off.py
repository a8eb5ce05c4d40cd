"""What a line takes off the needles that fastens off: the last stitch, or all as another part ends. No I/O.

"Fasten off" alone breaks the yarn. Where one stitch is left it is drawn through, and where it is done "as for
the thumb" the stitches come off as they did there. Source: common practice.
"""

from __future__ import annotations

import re

from stepper.plan.drafts import DraftRound
from stepper.plan.lines.again.another_part import part_meant
from stepper.plan.lines.working import work
from stepper.plan.state.needles import Needles
from stepper.project.instructions import AsPart, BindOff, Line, Remark
from stepper.project.model import Section
from stepper.project.rewording.synonym import CUT_YARN
from stepper.regex import regex

_YARN = rf"(?:{CUT_YARN}\s*,?\s*(?:and\s+)?)?"
_STITCHES = r"(?:\s+(?:all|the|rem(?:aining)?|these|sts|stitches))*\s+(?:sts|stitches)"
_SAME = r"in\s+(?:the\s+)?same\s+(?:way|manner)"
_FASTENS = regex(
    rf"{_YARN}fasten\s+off\b(?P<all>{_STITCHES}\b)?(?:\s+securely)?(?P<yarn>\s+(?!as\b|like\b|in\b)\w+)?"
    rf"(?P<like>\s*,?\s*(?:(?:{_SAME}\s+)?(?:as|like)|{_SAME})\b(?P<part>.*))?",
    re.I | re.S,
)
_LEAD = regex(r"^\s*(?:(?:given|directed|described|before|done|for|on|with|at|the|in)\b\s*)*", re.I)
_OF = regex(r"\s+(?:of|on|in)\s+.*$", re.I | re.S)
_DRAW = "Write how they come off: bind off, or break yarn and draw it through."


def fasten_off(line: Line, section: Section, needles: Needles) -> None:
    """Take off what a line fastens off, once the rest of the line is worked.

    Args:
        line: The line; nothing is done if it does not fasten off.
        section: Its section.
        needles: The knitting in hand.
    """
    words = (*line.said, *(sentence.text for sentence in line.sentences if isinstance(sentence, Remark)))
    found = next(filter(None, map(_FASTENS.match, words)), None)
    if found is None or not needles.count or needles.counting.lost:
        return
    if found["like"] is not None:
        _as_another(" ".join(found["part"].split()).rstrip("."), line, section, needles)
    elif needles.count == 1 or found["all"]:
        work(BindOff("", line.place, how="draw"), needles)
    elif not found["yarn"]:
        told = f"{needles.count} stitches stay on the needles where the line fastens off"
        needles.warn(line.place, f"{told}; only the yarn is broken.")


def _as_another(words: str, line: Line, section: Section, needles: Needles) -> None:
    """Take all stitches off as those of another part came off; refused if no such part is known."""
    name = _LEAD.sub("", words.lower())
    drafts = needles.drafts
    if name:
        places = part_meant(AsPart(_OF.sub("", name), line.place), section, needles)
        names = {one.name for one in places}
        if not names:
            return
        drafts = [draft for draft in drafts if draft.section in names]
    ends = (draft for draft in reversed(drafts) if draft.bound_off is not None and not draft.after)
    last = next(ends, None)
    if last is None or (name and last is not drafts[-1]):
        where = f"at the end of the {name}" if name else "before this"
        told = f"no stitches came off the needles {where}, so it is not known how these do."
        needles.miss(line.place, told, _DRAW, anywhere=True)
        return
    needles.warn(line.place, f"{needles.count} stitches come off as in line {last.line}.")
    work(BindOff(last.bound_off or "", line.place, how=_how(last)), needles)


def _how(draft: DraftRound) -> str:
    return next((code for code in ("draw", "graft") if code in draft.codes), "bind off")
