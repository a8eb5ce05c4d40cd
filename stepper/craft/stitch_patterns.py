"""Stitch patterns that printed patterns call by name: what each is, row by row, and which counts fit it.

A row is as seen from the right side, starting at the right edge, with one code of the stitch table for each
stitch of the repeat. A reversible pattern looks the same from the other side, so its rows begin on whichever
side comes first. Source: stitch dictionaries, US and UK; common practice.
"""

from __future__ import annotations

import re

from stepper.records import dataclass
from stepper.regex import regex


@dataclass(frozen=True, slots=True, kw_only=True)
class StitchPattern:
    """One stitch pattern of the trade."""

    name: str
    rows: tuple[tuple[str, ...], ...]
    """Codes of the stitch table for each row of the repeat, all rows equally long."""
    any_count: bool = False
    """Whether it can stop anywhere in its repeat without that showing."""
    even_ends: tuple[int, ...] = ()
    """Numbers of stitches that may be left over after the last repeat when worked in rows. Unit: stitches."""
    reversible: bool = False
    """Whether it is the same from both sides."""
    open: str = ""
    """Which reading is taken, if books differ; empty if they agree."""

    @property
    def repeat(self) -> int:
        """Stitches of one repeat. Unit: stitches."""
        return len(self.rows[0])

    def fits(self, count: int, *, flat: bool) -> bool:
        """Return whether it can be worked on a number of stitches."""
        over = count % self.repeat
        return self.any_count or not over or (flat and over in self.even_ends)


def _rows(*rows: str, tbl: bool = False) -> tuple[tuple[str, ...], ...]:
    return tuple(tuple("k tbl" if tbl and code == "k" else code for code in row) for row in rows)


_SEED = _rows("kp", "pk")
_AMERICAN_MOSS = _rows("kp", "kp", "pk", "pk")

PATTERNS: dict[str, StitchPattern] = {
    pattern.name: pattern
    for pattern in (
        StitchPattern(name="stockinette", rows=_rows("k")),
        StitchPattern(name="garter", rows=_rows("k", "p"), reversible=True),
        StitchPattern(name="reverse stockinette", rows=_rows("p")),
        StitchPattern(name="seed", rows=_SEED, any_count=True, reversible=True),
        StitchPattern(
            name="moss",
            rows=_SEED,
            any_count=True,
            reversible=True,
            open="moss stitch is taken as k1, p1 that changes every row (US seed stitch); American books "
            "have one that changes every second row.",
        ),
        StitchPattern(
            name="american moss",
            rows=_AMERICAN_MOSS,
            even_ends=(1,),
            reversible=True,
            open="moss stitch is taken, in a US pattern, as k1, p1 that changes every second row; in the UK "
            "it is seed stitch.",
        ),
        StitchPattern(name="irish moss", rows=_AMERICAN_MOSS, even_ends=(1,), reversible=True),
        *(
            StitchPattern(
                name=name,
                rows=_rows("kkpp", "kkpp", "ppkk", "ppkk"),
                even_ends=(2,),
                reversible=True,
                open=f"{name} stitch is taken as k2, p2 that changes every second row; some books have "
                "k1, p1.",
            )
            for name in ("double moss", "double seed")
        ),
        StitchPattern(name="single rib", rows=_rows("kp"), even_ends=(1,), reversible=True),
        StitchPattern(name="double rib", rows=_rows("kkpp"), even_ends=(2,), reversible=True),
        StitchPattern(
            name="twisted rib",
            rows=_rows("kp", tbl=True),
            even_ends=(1,),
            open="twisted rib is taken as k1 tbl, p1; some books twist the purl stitches too.",
        ),
        StitchPattern(
            name="broken rib",
            rows=_rows("kk", "kp"),
            even_ends=(1,),
            open="broken rib is taken as one plain row and one of k1, p1 in turn; some books begin with the "
            "other.",
        ),
        StitchPattern(
            name="linen",
            rows=(("k", "sl wyif"), ("sl wyif", "k")),
            even_ends=(1,),
            open="linen stitch is taken as k1, sl 1 wyif, the other way round on the next row; books differ "
            "in which comes first.",
        ),
    )
}
"""The patterns, by name."""

_WORDS = {"rev": "reverse", "reversed": "reverse", "us": "american", "uk": "british"}
_ALSO = {
    "american seed": "seed",
    "british seed": "seed",
    "british moss": "moss",
    "single ribbing": "single rib",
    "double ribbing": "double rib",
    "broken ribbing": "broken rib",
    "twisted ribbing": "twisted rib",
    "half-twisted rib": "twisted rib",
    "half twisted rib": "twisted rib",
}
_LAST = regex(r"\s+(?:pattern|patt|stitch|st|sts)\.?$")

_STITCH = r"[kp]\s?\d{1,2}(?:\s*tbl\b|\s+through\s+(?:the\s+)?back\s+loop)?"
RIB = (
    rf"(?:\(?\s*(?:{_STITCH})(?:\s*[,/&-]?\s*(?:and\s+)?(?:{_STITCH})){{1,7}}\s*\)?|\d{{1,2}}\s*(?:x|/|-?by-?|\s+by\s+)\s*\d{{1,2}}"
    r"|(?:one|two|three|four)[\s-]by[\s-](?:one|two|three|four))\s*rib(?:bing)?"
)
"""A rib named by its stitches: "k2, p2 rib", "k1 tbl, p1 ribbing", "3x2 rib"."""
KNOWN = (
    r"(?:(?:reversed?|rev\.?|single|double|twisted|half[\s-]twisted|broken|irish|american|us|british|uk)\s+)?"
    r"(?:seed|moss|linen|stockinette|stockinet|stocking|st(?:\.|\.?\s+)st\.?|garter|(?<=single\s)rib(?:bing)?|(?<=double\s)rib(?:bing)?"
    r"|(?<=twisted\s)rib(?:bing)?|(?<=broken\s)rib(?:bing)?)(?:\s+(?:stitch|st)\b\.?)?(?:\s+patt(?:ern)?\b)?"
)
"""A pattern of the table by its name."""
TEXTURE = (
    r"(?:(?!(?:next|same|each|every|this|that|first|last|garter|stockinette|work|even|for|until|to|in|and"
    r"|the|of)\b)"
    r"[a-z][a-z'-]*\s+){0,2}(?:basketweave|herringbone|trellis|honeycomb|waffle|lattice)"
)
"""A texture by a name that pages call alone, "in honeycomb": its rows are on the page, not in the table."""
_SMALL = {"one": 1, "two": 2, "three": 3, "four": 4}


def find_pattern(words: str, *, american: bool = False) -> StitchPattern | None:
    """Return the pattern that a name means.

    Args:
        words: The name as printed: "seed stitch", "rev St st", "k2, p2 rib".
        american: Whether the page is in US wording, where "moss stitch" is a different pattern from the UK's.

    Returns:
        The pattern; None if the table has no such name.
    """
    name = " ".join(words.lower().replace(".", " ").split())
    rib = _rib(name)
    if rib is not None:
        return rib
    name = re.sub(
        r"\bst st\b|\bstocking(?: stitch| st)?\b|\bstockinet(?:te)?(?: stitch| st)?\b", "stockinette", name
    )
    name = _LAST.sub("", _LAST.sub("", name))
    name = " ".join(_WORDS.get(word, word) for word in name.split())
    name = _ALSO.get(name, name)
    if name == "moss" and american:
        name = "american moss"
    return PATTERNS.get(name)


def _rib(name: str) -> StitchPattern | None:
    """Return a rib named by its stitches; None if the words are not one."""
    if not re.fullmatch(RIB, name):
        return None
    by = re.match(r"(\d+|[a-z]+?)\s*(?:x|/|[\s-]?by[\s-]?)\s*(\d+|[a-z]+)\b", name)
    if by is not None:
        knit, purl = (_SMALL.get(word) or int(word) for word in by.groups())
        stitches = [("k", knit), ("p", purl)]
    else:
        found = re.findall(r"([kp])\s?(\d{1,2})(\s*tbl\b|\s+through)?", name)
        stitches = [(f"{code} tbl" if tbl else code, int(times)) for code, times, tbl in found]
    row = tuple(code for code, times in stitches for _ in range(times))
    if len(set(row)) < 2:
        return None
    ends = (stitches[0][1],)  # in rows it may end as it begins
    return StitchPattern(name=name, rows=(row,), even_ends=ends, reversible=not any("tbl" in c for c in row))
