"""The stitch table: what each abbreviation uses, what it leaves, and how it is said.

Source: Craft Yarn Council, knitting master list of abbreviations (the entries that change or keep a
count), as checked in the tests; cables by the Council's `n/m RC` form. The pseudo-stitches at the end (`co`,
`bo`, `pu`, `hold`, `return`, `rest`) allow any whole round to be written in one notation.
"""

from __future__ import annotations

from enum import Enum
from functools import lru_cache

from stepper.records import dataclass
from stepper.regex import regex


class Kind(Enum):
    """What a stitch does to the fabric, as far as counting and speaking need to know."""

    PLAIN = "plain"
    """Knit, purl, slip: one stitch stays one stitch."""
    INCREASE = "increase"
    DECREASE = "decrease"
    CABLE = "cable"
    EDGE = "edge"
    """Cast on, bind off, pick up: stitches come to or leave the needles."""
    SHIFT = "shift"
    """Hold, return: stitches are moved, not worked."""
    MARK = "mark"
    """Markers and turns: no stitch at all."""
    OWN = "own"
    """Stitches of a row that is kept in the page's own words: only their number is known."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Stitch:
    """One entry of the stitch table."""

    code: str
    """The abbreviation as printed, in lower case."""
    uses: int
    """Stitches of the old round taken off the left needle. Unit: stitches. Range: 0 and up."""
    leaves: int
    """Stitches put on the right needle. Unit: stitches. Range: 0 and up."""
    said: str
    """How one of it is said."""
    kind: Kind
    counted: str = ""
    """How several of it are said, as a template with `{n}`; empty if it is said that many times."""
    wrong_side: str = ""
    """The code worked on the wrong side that looks like this one from the right side; empty if the same."""
    spellings: tuple[str, ...] = ()
    """Other printed forms of the code, in lower case. British `yfwd`, `yon`, `yrn` all equal a yarn over in
    count."""

    @property
    def change(self) -> int:
        """Stitches gained or lost. Unit: stitches."""
        return self.leaves - self.uses

    @property
    def shapes(self) -> bool:
        """Whether it is an increase or a decrease."""
        return self.kind in (Kind.INCREASE, Kind.DECREASE)

    @property
    def progress(self) -> int:
        """How far one such stitch moves the place in the round, as counted on the right needle.

        A stitch that leaves nothing (bound off, put on hold) counts as the stitches it uses, so that the
        place in a round always advances. Unit: stitches.
        """
        return self.leaves or self.uses


def _plain(code: str, said: str, counted: str = "", wrong_side: str = "", also: str = "") -> Stitch:
    return _other(code, 1, 1, said, Kind.PLAIN, counted, also, wrong_side)


def _inc(code: str, uses: int, leaves: int, said: str, wrong_side: str = "", also: str = "") -> Stitch:
    return _other(code, uses, leaves, said, Kind.INCREASE, "", also, wrong_side)


def _dec(code: str, uses: int, said: str, wrong_side: str = "", also: str = "") -> Stitch:
    return _other(code, uses, 1, said, Kind.DECREASE, "", also, wrong_side)


def _other(
    code: str,
    uses: int,
    leaves: int,
    said: str,
    kind: Kind,
    counted: str = "",
    also: str = "",
    wrong_side: str = "",
) -> Stitch:
    return Stitch(
        code=code,
        uses=uses,
        leaves=leaves,
        said=said,
        kind=kind,
        counted=counted,
        wrong_side=wrong_side,
        spellings=tuple(also.split(", ")) if also else (),
    )


# fmt: off
ENTRIES: tuple[Stitch, ...] = (
    _plain("k", "knit one", "knit {n}", "p", also="knit"),
    _plain("p", "purl one", "purl {n}", "k", also="purl"),
    _plain("k tbl", "knit one through the back loop", "knit {n} through the back loop", "p tbl",
           also="k1tbl, ktbl, k1 tbl"),
    _plain("p tbl", "purl one through the back loop", "purl {n} through the back loop", "k tbl",
           also="ptbl, p1 tbl"),
    _plain("sl", "slip one", "slip {n}", also="slip, sl1"),
    _plain("sl wyib", "slip one with yarn in back", "slip {n} with yarn in back", "sl wyif"),
    _plain("sl wyif", "slip one with yarn in front", "slip {n} with yarn in front", "sl wyib"),
    _plain("sl kwise", "slip one knitwise", "slip {n} knitwise"),
    _plain("sl pwise", "slip one purlwise", "slip {n} purlwise"),
    _plain("k1b", "knit one in the row below", "knit {n} in the row below"),
    _plain("mb", "make a bobble", "make {n} bobbles", also="bobble, make bobble"),
    _inc("m1", 0, 1, "make one", "m1p", also="m, make one, make 1"),
    _inc("m1l", 0, 1, "make one left", "m1lp", also="m1 left"),
    _inc("m1r", 0, 1, "make one right", "m1rp", also="m1 right"),
    _inc("m1p", 0, 1, "make one purlwise", "m1"),
    _inc("m1lp", 0, 1, "make one left purlwise", "m1l"),
    _inc("m1rp", 0, 1, "make one right purlwise", "m1r"),
    _inc("kfb", 1, 2, "knit front and back", "pfb", also="k1-f/b, k1f&b, kf&b, k1 fb"),
    _inc("pfb", 1, 2, "purl front and back", "kfb", also="pf&b"),
    _inc("kfbf", 1, 3, "knit front, back and front"),
    _inc("kyok", 1, 3, "knit, yarn over, knit into one stitch"),
    _inc("yo", 0, 1, "yarn over", also="yf, yfwd, yon, yrn, yfrn, yfon"),
    _inc("yo2", 0, 2, "double yarn over", also="yo twice"),
    _inc("inc", 1, 2, "increase one", also="inc 1, inc1, inc one"),
    _inc("rli", 0, 1, "right lifted increase"),
    _inc("lli", 0, 1, "left lifted increase"),
    _dec("k2tog", 2, "knit two together", "p2tog"),
    _dec("p2tog", 2, "purl two together", "k2tog"),
    _dec("k2tog tbl", 2, "knit two together through the back loop", "p2tog tbl"),
    _dec("p2tog tbl", 2, "purl two together through the back loop", "k2tog tbl"),
    _dec("ssk", 2, "slip, slip, knit", "ssp"),
    _dec("ssp", 2, "slip, slip, purl", "ssk"),
    _dec("skp", 2, "slip one, knit one, pass over", "ssp", also="skpo, sl1-k1-psso, s1k1p"),
    _dec("k3tog", 3, "knit three together", "p3tog"),
    _dec("p3tog", 3, "purl three together", "k3tog"),
    _dec("k3tog tbl", 3, "knit three together through the back loop", "p3tog tbl"),
    _dec("p3tog tbl", 3, "purl three together through the back loop", "k3tog tbl"),
    _dec("k4tog", 4, "knit four together", "p4tog"),
    _dec("p4tog", 4, "purl four together", "k4tog"),
    _dec("k5tog", 5, "knit five together", "p5tog"),
    _dec("p5tog", 5, "purl five together", "k5tog"),
    _dec("sssk", 3, "slip three, knit them together", "sssp"),
    _dec("sssp", 3, "slip three, purl them together", "sssk"),
    _dec("sk2p", 3, "slip one, knit two together, pass over", "p3tog", also="sk2po"),
    _dec("s2kp", 3, "centred double decrease", "s2pp", also="s2kpo, cdd, sl2-k1-p2sso"),
    _dec("s2pp", 3, "centred double decrease purlwise", "s2kp"),
    _dec("dec", 2, "decrease one", also="dec 1, dec1, dec one"),
    _other("bead", 0, 0, "slide up a bead", Kind.MARK,
           also="pb, place bead, place a bead, slide bead, slide bead up, slide a bead up"),
    _other("co", 0, 1, "cast on one", Kind.EDGE, "cast on {n}"),
    _other("bo", 1, 0, "bind off one", Kind.EDGE, "bind off {n}"),
    _other("pu", 0, 1, "pick up and knit one", Kind.EDGE, "pick up and knit {n}"),
    _other("graft", 1, 0, "graft one", Kind.EDGE, "graft {n}"),
    _other("draw", 1, 0, "draw the yarn through one", Kind.EDGE, "draw the yarn through {n}"),
    _other("hold", 1, 0, "hold one", Kind.SHIFT, "hold {n}"),
    _other("return", 0, 1, "return one", Kind.SHIFT, "return {n}"),
    _other("rest", 1, 1, "leave one unworked", Kind.SHIFT, "leave {n} unworked"),
    _other("ds", 1, 1, "make a double stitch", Kind.PLAIN),
    _other("pm", 0, 0, "place marker", Kind.MARK, also="place marker"),
    _other("sm", 0, 0, "slip marker", Kind.MARK, also="slip marker, slm"),
    _other("rm", 0, 0, "remove marker", Kind.MARK, also="remove marker"),
    _other("join 2nd ball", 0, 0, "join a second ball of yarn", Kind.MARK),
    _other("other ball", 0, 0, "take the ball of the other side", Kind.MARK),
    _other("turn", 0, 0, "turn", Kind.MARK),
    _other("w&t", 0, 0, "wrap and turn", Kind.MARK, also="wrap and turn"),
)
"""Every entry, in the order of the table. A new stitch is a row here; the reader's words come from it."""
# fmt: on

STITCHES: dict[str, Stitch] = {entry.code: entry for entry in ENTRIES}
"""Every stitch by its code."""

ALIASES: dict[str, str] = {spelling: entry.code for entry in ENTRIES for spelling in entry.spellings}
"""The code of every other printed form."""

TURNS = frozenset({"turn", "w&t"})
"""The codes at which a short row ends and the work is turned."""
_WHOLE_WORDS = ("k1b", "mb", "bead")
# These are worked on their own as well, though they keep the count.

_CABLE = regex(r"^(\d{1,2})/(\d{1,2})(?:/(\d{1,2}))? (r|l)(p?)c$")
_UK_CABLE = regex(r"^(c|t)([2-9]|1\d|20)(f|b)$")
_OWN = regex(r"^own(?: (\d{1,5}) to (\d{1,5}))?$")
_INTO_ONE = regex(r"^\((?:(?:[kp]1(?: tbl)?|yo)(?:, )?){2,9}\) in one$")


@lru_cache(maxsize=256)
def _cable(code: str) -> Stitch | None:
    match = _UK_CABLE.match(code)
    if match is not None:
        what = "cable" if match.group(1) == "c" else "twist"
        said = f"{what} {match.group(2)} {'front' if match.group(3) == 'f' else 'back'}"
        over = int(match.group(2))
        return Stitch(code=code, uses=over, leaves=over, said=said, kind=Kind.CABLE)
    match = _CABLE.match(code)
    if match is None:
        return None
    counts = [int(part) for part in match.group(1, 2, 3) if part]
    lean = "right" if match.group(4) == "r" else "left"
    purl = " purl" if match.group(5) else ""
    said = f"{' over '.join(str(count) for count in counts)} {lean}{purl} cross"
    total = sum(counts)
    return Stitch(code=code, uses=total, leaves=total, said=said, kind=Kind.CABLE)


@lru_cache(maxsize=64)
def _into_one(code: str) -> Stitch | None:
    """Read several stitches worked into one: `(k1, yo, k1) in one` uses one and leaves three."""
    if _INTO_ONE.match(code) is None:
        return None
    parts = code[1 : code.index(")")].split(", ")
    said = " ".join(STITCHES[ALIASES.get(part, part).replace("1", "")].said for part in parts)
    return Stitch(
        code=code, uses=1, leaves=len(parts), said=f"{said}, all into one stitch", kind=Kind.INCREASE
    )


@lru_cache(maxsize=64)
def _own(code: str) -> Stitch | None:
    """Read what is worked by the page's own words: `own` is one stitch of a row that keeps its count, and
    `own 96 to 102` a whole row that uses 96 and leaves 102. No page prints them."""
    match = _OWN.match(code)
    if match is None:
        return None
    if match.lastindex is None:
        return _other("own", 1, 1, "work one as the words say", Kind.OWN, "work {n} as the words say")
    uses, leaves = int(match.group(1)), int(match.group(2))
    return _other(code, uses, leaves, f"work {uses} as the words say, to {leaves}", Kind.OWN)


def find_stitch(code: str) -> Stitch | None:
    """Find a stitch by any printed form of its abbreviation.

    Args:
        code: The abbreviation without its number, in any case: `K2tog`, `ssk`, `2/2 RC`.

    Returns:
        The entry; None if the abbreviation is not in the table.
    """
    name = " ".join(code.lower().split())
    return STITCHES.get(ALIASES.get(name, name)) or _cable(name) or _into_one(name)


@lru_cache(maxsize=1024)
def stitch(code: str) -> Stitch:
    """Return the entry of a code known to be in the table.

    Raises:
        KeyError: the code is not in the table.
    """
    found = STITCHES.get(code) or find_stitch(code) or _own(code)
    if found is None:
        raise KeyError(code)
    return found


def list_codes() -> tuple[str, ...]:
    """List every printed form the table knows, for suggestions."""
    return tuple(STITCHES) + tuple(ALIASES)


def whole_words() -> tuple[str, ...]:
    """List the printed forms that name one worked stitch by themselves, longest first.

    A reader's terminal for "a stitch" is made of these. Left out are those followed by a number or words of
    their own (`k5`, `sl 1 wyif`), and anything that is not a worked stitch: edges, stitches moved, markers
    and turns. A reader to which a form means something else at that place, as `inc` may, leaves it out.
    """
    named = [
        form
        for entry in ENTRIES
        if entry.shapes or entry.code in _WHOLE_WORDS
        for form in (entry.code, *entry.spellings)
    ]
    return tuple(sorted(named, key=lambda form: (-len(form), form)))
