"""A stitch pattern of the page that is worked by its name: which rounds, from which, how often, until when. No I/O.

Theory of operation. "With M, work Wave Lace as before, this time three times through", "Starting with Round 2, continue
in Wave Lace until Rounds 1-4 have been worked four times in total" and "Work Wave Lace rounds 1-4 twice" are one
sentence: a verb, a name, rounds, and how often or how far, in any order. What is worked "in total" counts what was
worked of it before; that is known only where the sentence begins with a later round of the same, as the rounds
before that are then the ones of the row above. Source: the wording of patterns in print; common practice.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from stepper.craft.stitch_patterns import KNOWN, RIB
from stepper.project.rewording.synonym import LONG, ROUND, N
from stepper.project.rewording.told.numbers import number_of
from stepper.project.rewording.told.phrases import ALL, DONE, Kinds, ToldPhrase, prepare_kinds
from stepper.project.rewording.told.shaping import Piece
from stepper.project.rewording.told.yarn_orders import YARN

_NOT: Final = (
    r"(?:in|even|next|established|rib|the|this|that|these|those|same|to|as|rows?|rnds?|rounds?|sts?|of|set|chart|first|last|all|each|every|"
    r"stripe|garter|stockinette|stocking|reverse|across|over|your|both|patt(?:ern)?|colou?r|on|with|work|until|for|from|and|until|end|ending|again|only|until|between)"
)
_SPAN: Final = rf"(?P<row>{ROUND})\s+(?P<n>\d+)(?:\s*(?:-|to|through|and)\s*(?P<to>\d+))?"
PATTERN_WORK: Final[Kinds] = prepare_kinds(
    ("lead", r"(?:now|then|next|this\s+time)\b"),
    ("yarn", rf"(?:with|using|in)\s+(?P<yarn>{YARN}|(?-i:M)(?![-'\w]))(?:\s+only)?"),
    ("begin", rf"(?:beg(?:inning|in)?|start(?:ing)?)\s+(?:again\s+)?(?:with|on|at|from)\s+(?P<row>{ROUND})\s+(?P<n>\d+)"),
    (
        "whole",
        rf"(?:until|till)\s+(?:you(?:'ve|\s+have)\s+{DONE}\s+)?(?:(?:all|the)\s+)*{_SPAN}\s+(?:(?:have\s+been|are)\s+{DONE}\s+)?(?:a\s+total\s+of\s+)?(?P<times>{N})\s+times(?:\s+{ALL})?",
    ),
    ("verb", r"(?:(?P<on>cont(?:inu(?:e|ing))?\b\.?|(?:go|carry|keep)\s+on)(?:\s+(?:working|to\s+work))?|work)(?:\s+(?:in|with))?(?=\s)"),
    ("span", rf"(?:the\s+)?{_SPAN}(?:\s+of)?(?!\s*[:(])"),
    (
        "name",
        rf"(?:the\s+)?(?P<name>(?!{KNOWN}\b|{RIB}\b)(?:(?!{_NOT}\b)[a-z][a-z'-]*\s+){{1,3}}?(?:lace|patt(?:ern)?|st(?:itch)?|panel|cable|motif)\b)(?:\s+patt(?:ern)?\b)?(?!\s+(?:panel|cable|motif|chart)\b)",
    ),
    ("before", r"as\s+(?:before|set|established)\b|again\b"),
    ("often", rf"(?P<n>{N})\s+times\b(?:\s+through)?(?!\s+(?:more|in|further))|(?:once|twice)\b(?!\s+more)(?:\s+through)?"),
    ("for", rf"for\s+(?:{LONG}|{N}\s+{ROUND})"),
    ("measured", rf"(?:until|till)\s+(?:[a-z][a-z'-]*\s+){{1,5}}(?:measures?|is)\s+[^.;:,()]*?{LONG}(?:\s+from\s+[^.;:,()]*)?"),
    ("ending", rf"ending\s+(?:with|after)\s+(?:an?\s+)?(?:{ROUND}\s+\d+|(?:rs|ws)\s+{ROUND})"),
)
"""The kinds of phrases of which such a sentence is made."""


def write_pattern_work(phrases: Sequence[ToldPhrase]) -> tuple[tuple[Piece, ...], tuple[str, ...]] | None:
    """Write a sentence about a pattern worked by its name in the grammar's words.

    Args:
        phrases: The phrases it is made of.

    Returns:
        The words in their order, each with its place, and what is only said; None if they are not read.
    """
    by_kind: dict[str, ToldPhrase] = {}
    for phrase in phrases:
        if phrase.kind in by_kind:
            return None
        by_kind[phrase.kind] = phrase
    name, verb = by_kind.get("name"), by_kind.get("verb")
    if name is None or verb is None or "count" in by_kind:
        return None
    ends = [kind for kind in ("whole", "often", "for", "measured") if kind in by_kind]
    if len(ends) > 1:
        return None
    pieces = _work(by_kind, name, ends[0] if ends else "")
    if pieces is None:
        return None
    yarn = by_kind.get("yarn")
    said = (by_kind["before"].match.group(),) if "before" in by_kind else ()
    return ((*(((f"with {yarn.get('yarn')}, ", yarn.match.start()),) if yarn is not None else ()), *pieces), said)


def _work(by_kind: dict[str, ToldPhrase], name: ToldPhrase, end: str) -> tuple[Piece, ...] | None:
    """Return the order itself; None if nobody can tell how much of the pattern it is."""
    at, called = name.match.start(), name.get("name")
    begin, span, ending = by_kind.get("begin"), by_kind.get("span"), by_kind.get("ending")
    on = bool(by_kind["verb"].get("on"))
    if end == "whole":
        return _whole(by_kind["whole"], begin, called, on=on) if span is None and ending is None else None
    if end in ("for", "measured") and span is None:
        first = f", beginning with {begin.get('row')} {begin.get('n')}" if begin is not None else ""
        far = by_kind[end]
        last = "" if ending is None else f", {ending.match.group()}"
        return ((f"work in {called}{first} ", at), (far.match.group(), far.match.start()), (last, at))
    if end in ("for", "measured") or ending is not None or on or (begin is not None and begin.get("n") != "1"):
        return None
    often = by_kind.get("often")
    rows = f"all {begin.get('row') if begin is not None else 'rounds'}"
    if span is not None:
        rows = f"{span.get('row')} {span.get('n')}{'-' + span.get('to') if span.get('to') else ''}"
    elif often is None:
        return None
    if rows.startswith("all") and not rows.endswith("s"):
        rows += "s"
    words = f"work {rows} of {called}"
    if often is None:
        return ((words, at),)
    number = often.get("n")
    return ((f"{words} ", at), (number, often.match.start("n")), (" times", at)) if number else ((f"{words} {often.match.group().split()[0].lower()}", at),)


def _whole(whole: ToldPhrase, begin: ToldPhrase | None, called: str, *, on: bool) -> tuple[Piece, ...] | None:
    """Return rounds worked until they have been worked so many times."""
    at, row, first, last = whole.match.start(), whole.get("row").lower(), whole.get("n"), whole.get("to") or whole.get("n")
    words = f"work {row} {first}-{last} of {called} "
    if begin is None or begin.get("n") == first:
        if on and begin is None:
            return None  # some of them may have been worked before
        return ((words, at), (whole.get("times"), whole.match.start("times")), (" times", at))
    times = number_of(whole.get("times"))
    if not times or not int(first) < int(begin.get("n")) <= int(last):
        return None
    pieces: tuple[Piece, ...] = ((f"work {row} {begin.get('n')}-{last} of {called} once", at),)
    return pieces if times == 1 else (*pieces, (f". W{words[1:]}{times - 1} times", at))
