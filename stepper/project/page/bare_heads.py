"""Tell a heading by how it stands on the page, whatever it is called: "Texture band", "LAST THINGS". No I/O.

Theory of operation. Pages have a heading for everything, and no list of words has them all. But a heading is
short, stands on a row of its own with text below it, begins with a capital, and ends in no full stop, where
the sentences of its page do. What it may not be is a short order or half of one, which would be lost with it.
So every word that could work something rules it out: a verb of the craft or of making up as the first word,
stitches, rows, numbers, how often, for whom, like what, and the names of yarns, colours and sides. What
begins with "-ing" ("Separating the sleeves") or stands in capitals or before a colon is a heading without an
empty row around it; the rest need one. A fabric ("Garter border") is a heading only where the row below says
itself what is worked. Source: common practice.
"""

from __future__ import annotations

import re
from collections.abc import Collection, Sequence
from typing import Final

from stepper.project.page.orders import casts_on, has_row_head
from stepper.project.page.stops import ENDS
from stepper.project.rewording.asides import instructs
from stepper.project.rewording.synonym import word_set
from stepper.project.sizes import HEAD_OF_SIZES, names_people
from stepper.regex import regex

_LETTERS: Final = 48
_WORDS: Final = 7
_FEW: Final = 4
_SHAPE: Final = regex(
    r"(?P<words>[^\W\d_](?:[^\W\d_]|[ '\u2019&/-]|\s[\u2013\u2014]\s|,\s)*[^\W\d_])"
    r"(?:\s*[(\[][^\W\d_][^()\[\]\d.;:*]{1,40}[)\]])?(?P<colon>\s*:)?"
)
"""Letters, and an aside in brackets behind them."""
_ORDERS: Final = word_set(
    "add adjust alternate arrange attach baste beg begin bind block break bring cast catch change "
    "check choose close cont continue count cover cross crochet cut darn dampen dec decrease discard "
    "divide do double draw drop dry duplicate embroider end ensure fasten felt find finish fix flip "
    "fold follow gather get give go graft hang have hide hold inc increase insert iron join keep "
    "knit knot lay leave let lift line make mark match maintain measure mattress mirror move neaten "
    "note omit oversew pass pick pin pinch place pm pop position press pull purl push put read "
    "rearrange reattach rejoin release remember remove rep repeat reserve restore resume return "
    "reverse rib rinse rip roll rotate run secure see seam separate set sew shape shift skip slide "
    "slip soak start stay steam steek stitch stop stretch stuff swap switch take thread tie tighten "
    "tink trim try tuck turn twist undo unite unpick unpin unravel unzip use wait wash weave whip "
    "wind work wrap yo"
)
"""With one of these as its first word a row orders something."""
_NEEDS_NUMBERS: Final = word_set("divide separate split")
"""With one of these alone nobody could work anything: how many stitches go where is told below."""
_HIDING: Final = word_set(
    "afterwards ahead alike alt alternate alternately alternating also another anew as backwards "
    "between bo bor cc chart charts co col color colored colors colour coloured colours contrast contrasting "
    "correspondingly ditto doubled dpn dpns dpn's even evenly extra flat foll following forwards "
    "further held if instead inverted k knit knitting knitwise ktog l later left-over like likewise "
    "live longer loosely loops m mc mirrored mirroring multiple needle needles nothing off on "
    "onwards opposite optional optionally others otherwise p patt pieces plain previously purl "
    "purling purlwise reversed reversing row rows round rounds rnd rnds rs s same shorter "
    "side-by-side similarly size sizes slipped st stitch stitches straight strand strands stripe "
    "striped stripes sts tbl tightly together too upside unshaped unworked using with without ws "
    "wool x xl xs xxl yarn yarns ribbed unless until when while whichever"
)
"""Words in which half an order can hide: how, how far, with what, like what."""
_COLOURS: Final = word_set(
    "white black grey gray red blue green yellow orange purple pink brown cream navy beige ecru teal "
    "rust gold silver natural ivory charcoal dark light"
)
_FABRICS: Final = word_set(
    "garter stockinette stocking rib ribs ribbing moss seed lace eyelet eyelets cable cables cabled "
    "mesh texture textured brioche pattern fabric welt ridge ridges basket lattice "
    "fisherman's mosaic colorwork colourwork stranded intarsia zigzag wave waves dots bobbles i-cord "
    "icord"
)
_PLACING: Final = word_set("in on at from over under through into by around round along across per")
"""Words that say where something is worked, first in a row: "In the round"."""
_AS_WORN: Final = regex(r"\s*[,(]?\s*(?:as|when)\s+worn\s*\)?", re.I)
_FACING: Final = regex(r"(?:the\s+)?(?:right|wrong)\s+side", re.I)
_GERUND: Final = regex(r"[A-Z][a-z]{2,}ing\b")
_NO_GERUND: Final = word_set(
    "alternating carrying changing continuing ending holding ignoring increasing decreasing keeping"
    " leaving maintaining omitting remembering repeating reversing skipping slipping using"
)
"""Such words tell how, rather than head what is below."""
_NO_VERB: Final = word_set("king ring spring string wing during nothing something everything anything")
_FABRIC_TOLD: Final = regex(r"[*]|\b[kp]\s?\d|\bpurl\b.*\bknit\b|\bknit\b.*\bpurl\b", re.I)
"""What says of which stitches something is worked."""
_SENTENCE_END: Final = regex(r"[.!?:;)\]*\"'\u201d\u2019]$")


def heads_by_shape(
    row: str, above: str, below: str, *, apart: bool, stopped: bool, yarns: Collection[str] = ()
) -> bool:
    """Return whether a row is a heading by how it stands on the page, and nothing is ordered in it.

    Args:
        row: The row.
        above: The row above it; empty if that is.
        below: The next row that is not empty; empty if there is none.
        apart: Whether the row above is empty or a heading.
        stopped: Whether the sentences of the page end in full stops.
        yarns: Words that the page calls its yarns by, in small letters.
    """
    plain = _AS_WORN.sub("", " ".join(row.split()).strip("*_#~=|<>\u2013\u2014- "))
    shape = _SHAPE.fullmatch(plain)
    if shape is None or not plain[0].isupper() or not below or below[:1].islower():
        return False
    words = [
        word.strip(",'\u2019").lower()
        for word in re.split(r"[\s/]+", shape["words"])
        if word.strip(",'\u2019&-\u2013\u2014")
    ]
    colon = shape["colon"] is not None
    if (
        not words
        or len(words) > _WORDS
        or len(plain) > _LETTERS
        or (above and not apart and not above.endswith(ENDS))
    ):
        return False
    if _hides_an_order(words, plain, yarns):
        return False
    named = words[0] not in _NO_VERB
    gerund = named and (_GERUND.match(plain) is not None or (plain.isupper() and words[0].endswith("ing")))
    if gerund and words[0] in _NO_GERUND:
        return False
    told = has_row_head(below) or casts_on(below) or _FABRIC_TOLD.search(below)
    if any(word in _FABRICS for word in words) and not told:
        return False
    return colon or plain.isupper() or gerund or (apart and stopped)


def may_head(row: str, below: str, *, apart: bool, stopped: bool) -> bool:
    """Return whether a row of an order's words alone may as well head what is below it: "JOIN", "Bind off".

    Args:
        row: The row.
        below: The next row that is not empty; empty if there is none.
        apart: Whether the row above is empty or a heading.
        stopped: Whether the sentences of the page end in full stops.
    """
    plain = " ".join(row.split()).strip("*_#~=|<>\u2013\u2014-: ")
    words = plain.lower().split()
    if not 0 < len(words) <= _FEW - 1 or not plain.replace(" ", "").isalpha() or not plain[0].isupper():
        return False
    if words[0] not in _ORDERS or len(words[0]) < 3 or not below or below.isupper():
        return False
    return plain.isupper() or (apart and stopped and not row.rstrip().endswith("."))


def _hides_an_order(words: Sequence[str], plain: str, yarns: Collection[str]) -> bool:
    """Return whether words may order something, or say in which way, for whom or with what."""
    if len(words) == 1 and words[0] in _NEEDS_NUMBERS:
        return False
    gerund = words[0].endswith("ing") and words[1:2] in (
        [],
        ["the"],
        ["off"],
        ["up"],
        ["for"],
        ["to"],
        ["on"],
        ["it"],
    )
    if plain.lower() in ("end", "the end", "begin", "start", "start here", "begin here"):
        return False
    return bool(
        words[0] in _ORDERS
        or words[0] in _PLACING
        or words[0].endswith("ly")
        or any(word in _HIDING or word in yarns for word in words[2 * gerund :])
        or any(word in _COLOURS for word in words)
        or instructs(" ".join(words[2 * gerund :])) is not None
        or _FACING.fullmatch(" ".join(words))
        or HEAD_OF_SIZES.match(f"{plain.rstrip(': ')}: x")
        or names_people(plain.rstrip(": "))
    )


def ends_in_stops(rows: Sequence[str]) -> bool:
    """Return whether the sentences of a page end in full stops: most rows of more than a few words do."""
    long = [row for row in rows if len(row.split()) > _FEW]
    return bool(long) and 2 * sum(_SENTENCE_END.search(row.strip()) is not None for row in long) >= len(long)
