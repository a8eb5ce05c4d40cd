"""Set apart headings that are printed in one row with the text they head. No I/O.

"Shape Armholes Bind off 3 sts at beg of next 2 rows" is a heading and a sentence. Such a heading is told from
the beginning of a sentence by its capitals, by naming a part or a shaping, and by an order right after it.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from stepper.project.page.headings import HOW_OFTEN, heading_of, is_heading_alone
from stepper.project.page.stops import ENDS
from stepper.project.page.stretches import names_a_stretch
from stepper.project.pattern_heads import goes_with_head, run_in_head
from stepper.regex import regex

_ORDER = (
    r"(?:Cast|Bind|CO\b|BO\b|With|Using|Work|Knit|Purl|K\s?\d|P\s?\d|Pick|Place|Return|Rejoin|Join|Row|Rnd|Round|Next"
    r"|Cont|Continue|Dec|Decrease|Inc|Increase|Change|At|Beg|Beginning|Starting|Sl|Slip|\d(?:st|nd|rd|th)\s|As\s+(?:(?:given|for|the)\s+)*(?:[a-z]+\s+){0,2}(?:bands?|border)\b)"
)
"""How the text below a heading begins."""
_ROW_NAME = r"(?:Inc|Dec)(?:rease)?\.?\s+(?:Rnd|Row|Round)\b[^.:]{0,24}:"
"""What makes the name of a row of a name of a part: "Body Inc Rnd:", "Neck Dec Row (RS):"."""
_PART = (
    r"(?:Back|Fronts?|Sleeves?|Body|Yoke|Neck(?:band|line)?|Collar|Hood|Thumb|Hand|Heel|Foot|Toe|Gusset|Cuffs?|Leg|Crown|Brim"
    r"|Border|Edging|Armholes?|Shoulders?|Raglan|Cap|Band|Bands|Hem|Welt|Instep|Flap|Mitten|Mitt|Sock|Hat|Pocket|Cowl|Scarf|Shawl|Palm|Ribbing|Finger)"
)
_WITH_PART = (
    r"(?:Left|Right|First|Second|Upper|Lower|Front|Back|Button|Buttonhole|Neck|Heel|Full-Fashioned|Sweater|V"
    r"|Center|Centre|Side|Main|Inner|Outer|Collar|Arm)"
)
_NAMED = rf"(?:{_WITH_PART}\s+){{0,2}}{_PART}(?:\s+of\s+(?:the\s+)?{_PART})?"
_SHAPED = (
    rf"Shape\s+(?:(?:the|and|for|{_WITH_PART}|{_PART}|Top|Side|of)\s+){{0,3}}"
    rf"(?:{_PART}|Top|Neck|raglan|armholes?|neck|shoulders?|crown|toe|top|sleeve|cap)"
)
_HEADING = regex(
    rf"(?:(?<=^)|(?<=[.!?)\]]\s))(?P<name>{_SHAPED}|{_NAMED}|(?:{_WITH_PART.upper()}\s+){{0,2}}{_PART.upper()})"
    rf"(?:\s*(?P<sign>[…–—-]|\.\.\.)\s*|\s+)(?={_ORDER})(?!{_ROW_NAME})"
)

_MADE_HEADING = regex(
    r"^(?P<name>(?!(?:work|knit|purl|make|cast|bind|with|using|pick|join|sew|rep(?:eat)?|next|then)\b)"
    rf"[a-z][a-z' -]{{0,30}}?\s*:?\s*[(\[]{HOW_OFTEN}\b[^()\[\]\d]{{0,20}}[)\]])\s*[:.–—-]?\s+(?=\S)",
    re.I,
)
"""A part with how often it is made, whatever it is called, before a sentence: "Ears: (make two) Cast on."."""

_STOPPED = regex(
    rf"^(?P<name>(?:(?:(?:The|Top|Left|Right|First|Second|Upper|Lower|Front|Back|Little|Index|Ring|Middle|Button|Buttonhole|Neck|Heel|Thumb)\s+){{0,2}}(?:{_PART}|Thumb|Opening|Hole|Pattern|Frill|Top|Point)"
    rf"|(?:Shape|Shaping|Divide\s+for|Shaping\s+of)\s+(?:the\s+)?{_PART}|{_PART}\s+shaping|(?:First|Second|Third|Fourth|Fifth|Final|Last)\s+(?:decrease|increase))\.)\s+(?=[^\s\u2013\u2014-])",
    re.I,
)
"""A part before the first sentence of its row, with a full stop between: "Cuff. Cast on"."""


_BAND = regex(
    r"^(?P<name>(?:(?:Left|Right|Front|Button|Buttonhole|Neck|Arm|Armhole|Collar)\s?){0,3}[Bb]ands?\.)"
    r"\s?[\u2013\u2014-]+\s*(?=[A-Z])"
)
"""A band in front of its first sentence, with a full stop and a dash between: "Button Band.\u2014With"."""


_SHORT = regex(r"^(?P<name>[A-Z][^\d.;:*()\[\]]{2,30}\.)\s+(?=[A-Z(*\[])")


def _stopped_heading(row: str, above: str) -> re.Match[str] | None:
    """Return the part that a row begins with, and its full stop; None if it may end a sentence above."""
    match = (_STOPPED.match(row) or _ended(row)) if row[:1].isupper() else None
    if match is None or (above and not above.endswith((*ENDS, ")", "]")) and heading_of(above) is None):
        return None
    rest = row[match.end() :]
    return match if rest[:1] in "*([" or rest[:1].isupper() or rest[:1].isdigit() else None


def _ended(row: str) -> re.Match[str] | None:
    """Return a first short sentence that would be a heading on a row of its own: "Rib. Work 10 rows"."""
    match = _SHORT.match(row)
    if match is None:
        return None
    name = match["name"].rstrip(".")
    return match if is_heading_alone(name) or names_a_stretch(name, row[match.end() :]) else None


def set_headings_apart(rows: Sequence[str]) -> tuple[list[str], list[int]]:
    """Cut rows of a page so that a heading inside a row has a row of its own: its part begins even if what is
    below is not read. The stitches that a pattern needs come into the row of its name.

    Args:
        rows: The rows of the page.

    Returns:
        The rows, and for each the row of the page it comes from, from 1. Always: joined, they are the text,
        white space and the sign after a heading aside.
    """
    cut: list[str] = []
    origins: list[int] = []
    for number, row in enumerate(rows, 1):
        if cut and goes_with_head(row, cut[-1]):
            cut[-1] += f" {row}"
            continue
        if at := run_in_head(row):
            cut += [row[:at].rstrip(), row[at:]]
            origins += [number, number]
            continue
        done = 0
        made = _MADE_HEADING.match(row) or _BAND.match(row) or _stopped_heading(row, cut[-1] if cut else "")
        for match in [made] if made else _HEADING.finditer(row):
            before = row[done : match.start()].strip()
            cut += [before, match.group("name")] if before else [match.group("name")]
            done = match.end()
        rest = row[done:].strip() if done else row
        cut += [rest] if rest or not done else []
        origins += [number] * (len(cut) - len(origins))
    return cut, origins
