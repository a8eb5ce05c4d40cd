"""What the words of an open row say of its stitches, and how her answers are written. Asks nothing.

Theory of operation. Words are taken apart only where every stitch that the row meets comes up in them:
worked, bound off, put on hold, with at most one stretch of no number, which is what is left over. Else
nothing is proposed, and she is asked stretch by stretch (`stepper.session.open_row.by_parts`).
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import replace
from typing import Final

from stepper.language.places import sentence_case
from stepper.plan.model import OpenKind, OpenRow, PartKind, RowPart
from stepper.plan.stitches.row_elements import is_unnamed
from stepper.project.page.unread.kept_rows import write_each
from stepper.project.page.unread.left_open import LeftKind, LeftOpen, find_left_open, line_at
from stepper.project.page.unread.proposals import NUMBER, PUT_ON_HOLD
from stepper.project.reading.own_words import find_depended_on, turns_at_its_end
from stepper.project.rewording.synonym import STS
from stepper.regex import regex
from stepper.session.state import OpenAnswer
from stepper.settling.coming import CASTS_ON, open_behind, wanted_in, write_come
from stepper.settling.rows_asked import RowAsked, bound_off_at_edge
from stepper.settling.written_rows import Forms

_PARTS: Final = (
    r"(?:left|right|first|second|other|front|back|sleeve|thumb|shoulder|neck|body|heel|instep|toe|hood|yoke)"
)
_TURN: Final = regex(r"\bw\s*&\s*t\b|\bturn(?:ed|ing)?\b(?!\s+up\b)|\bshort[\s-]+rows?\b", re.I)
_TURN_AT_END: Final = regex(r"\bturn\W*$", re.I)
_TO_END: Final = regex(r"\bto\s+(?:the\s+)?end\b|\bacross\b|\ball\b|\bwhole\b", re.I)
"""Words by which a row goes to its end before it turns, as every row does."""
_PUTS: Final = regex(r"\b(?:place|put|slip|leav(?:e|ing)|transfer|keep|hold|holding|thread)\b", re.I)
"""Words by which stitches go on hold, rather than come back."""
_WAIT: Final = regex(
    r"\b(?:wait(?:ing)?|(?<!the )rest(?:s|ing)?|(?:set|put|left?|leave)\s+(?:them\s+)?aside|at\s+rest)\b"
    r"(?=\s*(?:[.,;:]|$|for|until|till|while|on|now))",
    re.I,
)
"""Words by which stitches wait on their needle."""
_FLAT: Final = regex(r"\b(?:flat|in\s+rows|back\s+and\s+forth)\b", re.I)
"""Words by which a ring may be left."""
_COMES_BACK: Final = regex(
    r"\breturn\b|\bre-?join\b|\bfrom\s+(?:the\s+)?(?:hold|waste|thread)|\bback\s+on(?:to)?\b|\bheld\b|\bhold",
    re.I,
)
JOINS: Final = regex(r"\bjoin(?:ing|ed)?\b[^.]*\bround\b", re.I)
"""Words by which rows become rounds."""
_JOINED: Final = regex(
    r"\bfrom\s+(?:the\s+)?(?:hold|waste|thread)|\bheld\b|\breturn\b|\bjoin(?:ing)?\b(?!\s+(?:in|to\s+work|for\s+working|yarn|wool))"
    rf"|\b(?:across|over)\s+(?:the\s+)?(?:\d+\s+)?(?:sts?\s+(?:of|from)\s+(?:the\s+)?)?{_PARTS}\b",
    re.I,
)
"""Words by which stitches that wait may be worked in the row."""
_UNITES: Final = regex(
    rf"\b(?<!re-)join(?:ed|ing)?\b(?!\s+(?:in|to\s+work|for\s+working|(?:the\s+)?(?:new\s+)?(?:yarn|wool)))|\bunit(?:e|ed|ing)\b"
    rf"|\bone\s+(?:long\s+)?(?:circular\s+)?needle\b|\b(?:all|both)\s+(?:the\s+)?(?:pieces|parts|sleeves)\b"
    rf"|\b{_PARTS}(?:\s+sts)?\s*,\s*(?:and\s+|then\s+)?(?:the\s+)?{_PARTS}\b|\b(?:body|sleeves?)\s+and\s+(?:the\s+)?(?:body|sleeves?)\b",
    re.I,
)
"""Words by which parts that wait come together."""
_NAMED: Final = regex(rf"\b(?P<name>{_PARTS}(?:\s+{_PARTS}){{0,2}})\b", re.I)
_CLOSES: Final = regex(r"\bwraps?\b|\bgaps?\b|\bdouble\s+st|\bDS\b|\bshort", re.I)
_HEAD: Final = regex(r"^\W*(?:[\w'-]+\s+){0,4}?(?:rows?|rnds?|rounds?)\b[^:.]{0,30}[:.]\s*", re.I)
_WORK: Final = r"(?:(?:knit|purl|work|rib|patt(?:ern)?|k|p)\b|[kp](?=\d))"
_TOKENS: Final = regex(
    rf"(?P<off>\b(?:(?:bind|cast)(?:ing)?\s+off|BO)\s+(?:the\s+)?(?:next\s+|first\s+|following\s+|(?:cent(?:re|er)|middle)\s+)?"
    rf"(?P<off_many>{NUMBER})(?:\s*{STS})?)"
    rf"|(?P<on>\b(?:cast(?:ing)?\s+on|CO)\s+(?P<on_many>{NUMBER})(?:\s*{STS})?)"
    rf"|(?P<turn>\bturn\b(?:\s+(?:the\s+)?work)?)"
    rf"|(?P<open>\b{_WORK}(?:\s+[a-z]+){{0,3}}?\s+(?:to\s+(?:the\s+)?end\b(?:\s+of\s+(?:the\s+)?(?:row|round|rnd))?|across\b(?!\s+\d)))"
    rf"|(?P<work>\b{_WORK}\s*(?:(?:in\s+patt(?:ern)?|across|over|the|next|first|last)\s+){{0,3}}(?P<work_many>{NUMBER})(?:\s*{STS})?)",
    re.I,
)
"""What the words of a row say of its stitches, one thing after the other."""
_JOINT: Final = regex(
    rf"(?:\s|[,.;:()]|\bfor\s+(?:the\s+)?{_PARTS}(?:\s+{_PARTS})*\b|"
    r"\b(?:and|then|with|your|tail|yarn|in|patt(?:ern)?|loosely|the|sts?|stitches|next|for|"
    r"neck|under\s*arms?|(?:RS|WS)|row|knitwise|purlwise|over|gap|a|all|on|more)\b)*",
    re.I,
)
"""What may stand between: nothing by which stitches come or go."""
_APART: Final = regex(
    r"(?:\bwork(?:ing|ed)?\s+)?\b(?:each\s+side|(?:both\s+)?sides?)\s+(?:is\s+|are\s+)?(?:\w+\s+)?(?:separately|by\s+itself)|\bthis\s+side\s+(?:only|first)"
    r"|\bthese\s+(?:\d+\s+)?st(?:itche)?s\s+only",
    re.I,
)
"""Words by which the two sides of a gap are worked one after the other."""


def asked_by_parts(row: OpenRow, asked: RowAsked) -> OpenRow:
    """Return an open row with what is asked of its stitches; as it was if its count is enough.

    Args:
        row: The row, as the plan ends at it.
        asked: What is known of it.
    """
    words, flat = asked.left.text, row.flat
    depended = find_depended_on(words)
    if row.stitches == 0:
        held, back = _first_named(words, row.held), "held" in depended or _COMES_BACK.search(words)
        if len(held) > 1 and _UNITES.search(words) and CASTS_ON.search(words) is None:
            return replace(row, by_parts=frozenset({PartKind.HELD, PartKind.BACK}), held=held)
        if held and back:
            return replace(row, by_parts=frozenset({PartKind.HELD}), held=held)
        anew = not held or CASTS_ON.search(words) is not None
        kinds_come = {PartKind.ON} if anew else {PartKind.HELD, PartKind.ON}
        return replace(row, by_parts=frozenset(kinds_come), held=held, wanted=wanted_in(words))
    kinds = set[PartKind]()
    if "go" in depended and not (flat and bound_off_at_edge(words)):
        kinds.add(PartKind.OFF)
    if ("held" in depended and _PUTS.search(words)) or _WAIT.search(words):
        kinds.add(PartKind.HELD)
    if kinds and CASTS_ON.search(words):
        kinds.add(PartKind.ON)
    if row.held and _JOINED.search(words):
        kinds.add(PartKind.BACK)
    short = "turn" in depended and not turns_at_its_end(words)
    ends = flat and _TURN_AT_END.search(words) is not None and _TO_END.search(words) is None
    waits = PartKind.HELD in kinds
    ends = ends or (flat and row.gap)
    turns = (short and (flat or waits)) or ends or (waits and _TURN.search(words) is not None)
    several = short and not kinds
    return replace(
        row,
        by_parts=frozenset(kinds),
        turns=turns or several,
        several=several,
        leaves_ring=not flat and not kinds.isdisjoint(_LEAVING) and _FLAT.search(words) is not None,
        names=_names(words),
        held=_first_named(words, row.held),
    )


def _first_named(words: str, held: Sequence[tuple[str, int]]) -> tuple[tuple[str, int], ...]:
    """Return what waits on hold, first what the words of a row name."""
    said = set(words.lower().replace("'", " ").split())

    def rank(each: tuple[str, int]) -> tuple[bool, bool]:
        return not set(each[0].split()) <= said, each[0].startswith("second ")

    return tuple(sorted(held, key=rank))


def _names(words: str) -> tuple[str, ...]:
    """Return the parts for which words put stitches on hold, where all of them are named."""
    told = [found["name"] for found in PUT_ON_HOLD.finditer(words)]
    if told and all(told):
        return tuple(each.lower() for each in told)
    held = [found for found in re.split(r"[.;,]", words) if _PUTS.search(found) and _NAMED.search(found)]
    names = [found["name"].lower() for each in held for found in [_NAMED.search(each)] if found is not None]
    return tuple(names) if len(set(names)) == len(names) else ()


def short_rows_from(left: LeftOpen, text: str) -> LeftOpen:
    """Return an open row with the rows right behind it that turn as well, as one piece.

    A row that closes the turns belongs to them if it is not read either; one that is read is worked behind.

    Args:
        left: A row that turns before its end.
        text: The whole file.
    """
    rows = text.split("\n")
    opened = {each.first: each for each in find_left_open(text) if each.kind is LeftKind.ROW}
    last, words = left.last, [left.text]
    while True:
        at = next((at for at in range(last + 1, len(rows) + 1) if rows[at - 1].strip()), 0)
        behind = opened.get(at) or (line_at(text, at, "") if at else None)
        if behind is None or behind.part != left.part or not _goes_on(behind, at in opened):
            return replace(left, last=last, text=" ".join(words))
        last, words = behind.last, [*words, behind.text]


def _goes_on(behind: LeftOpen, unread: bool) -> bool:
    """Return whether a row belongs to the short rows above it."""
    if _TURN.search(behind.text) is not None and "held" not in find_depended_on(behind.text):
        return True
    return unread and _CLOSES.search(behind.text) is not None


def parts_in(
    words: str, before: int, number: Callable[[str], int], *, flat: bool
) -> tuple[RowPart, ...]:
    """Take the stitches of a row apart by its words.

    Args:
        words: The words.
        before: Stitches that the row meets.
        number: Returns a number that is printed for several sizes in that of the knitter; 0 if it has none.
        flat: Whether the piece is worked in rows.

    Returns:
        All stitches of the row, in their order; none where the words do not say enough.
    """
    found = list(_tokens(words))
    if not found or None in found:
        return ()
    made, turned, unknown = list[RowPart](), False, -1
    for token in found:
        assert token is not None  # looked at above
        kind, printed, name = token
        if kind == "turn":
            turned = True
            continue
        many = number(printed) if printed else 0
        if (not printed and unknown >= 0) or (printed and many <= 0):
            return ()
        unknown = unknown if printed else len(made)
        if turned and kind is not PartKind.HELD:
            return ()
        made.append(_part(PartKind.BEYOND if turned else PartKind(kind), many, name))
    left = before - sum(part.stitches for part in made if part.kind is not PartKind.ON)
    if unknown >= 0 and left > 0:
        made[unknown], left = _part(made[unknown].kind, left, made[unknown].name), 0
    kinds = [part.kind for part in made]
    beyond = kinds.count(PartKind.BEYOND)
    ends = beyond == turned and (not turned or kinds[-1] is PartKind.BEYOND)
    if left or PartKind.WORKED not in kinds or not ends or not {*kinds} - {PartKind.WORKED}:
        return ()
    if flat and kinds == [PartKind.WORKED, PartKind.OFF, PartKind.WORKED]:
        if _APART.search(words) is None:
            return ()  # whether the first of them wait from then on she has to say
        waits = RowPart(kind=PartKind.FIRST_HELD, stitches=made[0].stitches)
        return (made[0], waits, *made[1:])
    if flat and PartKind.OFF in kinds[1:-1]:
        return ()
    return tuple(made)


def _part(kind: PartKind, many: int, name: str) -> RowPart:
    return RowPart(kind=kind, stitches=many, leaves=many if kind is PartKind.WORKED else 0, name=name)


def _tokens(words: str) -> Iterator[tuple[PartKind | str, str, str] | None]:
    """Yield what words say of stitches, in their order; None where anything else stands between."""
    plain = _APART.sub("", _HEAD.sub("", " ".join(words.split()), count=1))
    holds = {found.start(): found for found in PUT_ON_HOLD.finditer(plain)}
    at = 0
    while at < len(plain):
        at = max(at, _JOINT.match(plain, at).end())  # type: ignore[union-attr]  # it may be empty
        if at >= len(plain):
            return
        held, found = holds.get(at), _TOKENS.match(plain, at)
        if held is not None:
            yield PartKind.HELD, held["number"], (held["name"] or "").lower()
            at = held.end()
            continue
        if found is None:
            if _SAID_ONLY.match(plain, at):
                return
            yield None
            return
        at = found.end()
        if found["off"]:
            yield PartKind.OFF, found["off_many"], ""
        elif found["on"]:
            yield PartKind.ON, found["on_many"], ""
        elif found["turn"]:
            yield "turn", "", ""
        else:
            yield PartKind.WORKED, found["work_many"] or "", ""


_SAID_ONLY: Final = regex(
    rf"\W*(?:(?:there\s+(?:are|will\s+be)|you\s+(?:now\s+)?have|now)\s+)?{NUMBER}\s*{STS}\b[^.]*\.?\s*$", re.I
)
"""A count behind the words."""


def told_apart(parts: Iterable[RowPart], held: Iterable[str]) -> tuple[RowPart, ...]:
    """Return the stitches of a row, with a name for what waits where two would wait without one.

    The plan tells those of one name apart, "piece" and "second piece", and a part that is made twice takes
    first the one, then the other.

    Args:
        parts: The stitches.
        held: The names of what waits already.
    """
    made = tuple(parts)
    unnamed = [part for part in made if part.kind in _WAITING and not part.name]
    if len(unnamed) + sum(map(is_unnamed, held)) < 2:
        return made
    return tuple(replace(part, name="piece") if part in unnamed else part for part in made)


_LEAVING: Final = frozenset((PartKind.HELD, PartKind.OFF))
_WAITING: Final = (PartKind.HELD, PartKind.BEYOND, PartKind.FIRST_HELD)


def write_parts(parts: Iterable[RowPart], words: str, *, round_: bool | None = None) -> Forms:
    """Write a row whose stitches are known in their order.

    Args:
        parts: The stitches.
        words: The words of the page.
        round_: Whether rounds follow, else rows; None for as before.

    Returns:
        The rows that may be written, without indentation, the best form first.
    """
    head = f"Own words, {', '.join(map(_written, parts))}"
    follows = {True: ("Join in the round.",), False: ("Work flat.",), None: joined_behind(words)}
    behind = follows[round_]
    plain = " ".join(words.split()).rstrip(" ,;:–—-")
    ended = plain if plain.endswith((".", "!", "?")) else f"{plain}."
    return (
        (f"{head}: {ended}", *behind),
        (f"Note: {plain}", f"{head}: by the words above.", *behind),
    )


def _written(part: RowPart) -> str:
    """Return a stretch of stitches as it stands before the colon."""
    many = f"{part.stitches} sts"
    named = f" for {part.name}" if part.name and not is_unnamed(part.name) else ""
    match part.kind:
        case PartKind.WORKED:
            return f"work {many}" + (f" to {part.leaves}" if part.leaves != part.stitches else "")
        case PartKind.OFF:
            return f"bind off {many}"
        case PartKind.ON:
            return f"cast on {many}"
        case PartKind.HELD:
            return f"hold {many}{named}"
        case PartKind.FIRST_HELD:
            return f"hold these {many}{named}"
        case PartKind.BACK:
            return f"k across {_held(part.name)} sts"
        case PartKind.BEYOND:
            return f"turn, hold {many}{named}"


def _called(name: str) -> str:
    """Return what waits as a line calls it: the copy "sleeves, second" is the second sleeve."""
    piece, _, nth = name.partition(", ")
    return f"{nth} {piece.removesuffix('s')}" if nth else name


def write_asked(answer: OpenAnswer, row: OpenRow, left: LeftOpen) -> Forms:
    """Write an open row of whose stitches she was asked.

    Args:
        answer: What she answered, of a kind in `OF_PARTS`.
        row: The row.
        left: The row as it stands in the file.

    Returns:
        The rows that may be written, without indentation, the best form first.
    """
    match answer.kind:
        case OpenKind.PARTS if row.stitches == 0:
            return write_united(answer, left.text)
        case OpenKind.PARTS:
            return write_parts(told_apart(answer.parts, dict(row.held)), left.text, round_=answer.round)
        case OpenKind.SHORT_ROWS:
            return write_short_rows(answer, left.text, row.stitches)
        case OpenKind.COME:
            return tuple((*form, *open_behind(left, row.by_parts)) for form in write_come(answer, left.text))
        case _:
            behind = open_behind(left, row.by_parts) if PartKind.ON in row.by_parts else ()
            return write_taken(answer, left.text, dict(row.held).get(answer.name, 0), behind)


def write_taken(answer: OpenAnswer, words: str, held: int, behind: tuple[str, ...] = ()) -> Forms:
    """Write that stitches come back from hold.

    Args:
        answer: What she answered, of kind `TAKEN`.
        words: The words of the page.
        held: How many wait.
        behind: The row as it stays open behind them; empty where its words are settled so.
    """
    plain = " ".join(words.split())
    name = "" if is_unnamed(answer.name) else _called(answer.name)
    side = "" if answer.round else f"With {'RS' if answer.right else 'WS'} facing, "
    shape = "Join in the round." if answer.round else "Work flat."
    more = () if answer.stitches == held else (f"Own words: by the words above. {answer.stitches} sts.",)
    back = f"place {name} sts back on needles." if name else "place held sts back on needles."
    first = f"{side}{back}" if side else back[0].upper() + back[1:]
    said = () if behind and not more else (f"Note: {plain}",)
    return (
        (*said, first, shape, *more, *behind),
        (*said, back[0].upper() + back[1:], shape, *more, *behind),
    )


def write_united(answer: OpenAnswer, words: str) -> Forms:
    """Write that several parts come back from hold onto empty needles, one behind the other.

    Args:
        answer: What she answered, of kind `PARTS`, all of them `BACK`.
        words: The words of the page.
    """
    came = sum(part.stitches for part in answer.parts)
    more = () if answer.left == came else (f"Own words: by the words above. {answer.left} sts.",)
    first, *others = (f"place {_held(part.name)} sts back on needles." for part in answer.parts)
    side = "" if answer.round else f"With {'RS' if answer.right else 'WS'} facing, "
    shape = "Join in the round." if answer.round else "Work flat."
    back = (sentence_case(f"{side}{first}"), *map(sentence_case, others))
    return ((f"Note: {' '.join(words.split())}", *back, shape, *more),)


def _held(name: str) -> str:
    return "held" if is_unnamed(name) else _called(name)


def write_counted(answer: OpenAnswer, words: str, before: int) -> Forms:
    """Write a row by its words with the stitches behind it; where nothing was on the needles, what came."""
    if before == 0:
        return (_noted(words, f"Own words, pick up {answer.stitches} sts: by the words above."),)
    return (write_each(words, (str(answer.stitches),)),)


def _noted(words: str, *rows: str) -> tuple[str, ...]:
    return (write_each(words, ("",))[0], *rows)


def joined_behind(words: str) -> tuple[str, ...]:
    """Return what is written behind a row whose words say that rounds follow rows, or rows rounds."""
    if "join" not in find_depended_on(words):
        return ()
    return ("Join in the round." if JOINS.search(words) else "Work flat.",)


def write_short_rows(answer: OpenAnswer, words: str, before: int) -> Forms:
    """Write short rows as whole rows that leave as many stitches and the same side facing."""
    same = "" if answer.stitches == before else str(answer.stitches)
    return (write_each(words, (*[""] * (answer.rows - 1), same), uncounted=bool(same)),)


OF_PARTS: Final = (OpenKind.PARTS, OpenKind.SHORT_ROWS, OpenKind.TAKEN, OpenKind.COME)
"""What is written here."""
