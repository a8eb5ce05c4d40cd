"""Ask of a row that is not read what is done with its stitches: which are worked, bound off, wait. Pure.

Theory of operation. The questions follow the row as it was knitted, from its first stitch: she has it in her
hands and counts what lies before the next gap, turn or thread. Each is answered by yes, no or a number, and
the answers alone are kept; what is asked next is found by asking all of them once more. Every stitch that the
row met has to come up in some answer, so that a number that was misheard does not come out. What is proposed
besides - that the rest was worked to its end, that the others wait - is a sum of what is known.
Source: how a row is told by whoever knitted it, from the right needle to the left; common practice.
"""

from __future__ import annotations

from collections.abc import Generator, Sequence
from dataclasses import replace
from enum import StrEnum

from stepper.plan.model import CountWanted, OpenKind, OpenRow, PartKind, RowPart
from stepper.records import dataclass
from stepper.session.state import OpenAnswer, OpenWork, PartAnswer

MOST_COME = 1000
"""Stitches that may come onto empty needles by the words of a row; more is a slip. Chosen here."""
MOST_MADE = 3
"""How many times as many stitches a row may leave as it met, or cast on; more is a slip. Chosen here."""


class Ask(StrEnum):
    """What is asked."""

    DONE = "done"
    """Whether it is knitted; a no stands for nothing to knit."""
    ALL_DONE = "all done"
    """Whether all its rows are knitted, short rows as they are."""
    TO_END = "to its end"
    """Whether the row was worked to its end; else it was turned before."""
    MADE = "made"
    """How many stitches are on the needle that she knits on."""
    BEYOND = "beyond"
    """Whether so many are left beyond the turn, or how many."""
    LEFT = "left"
    """How many are left beyond the turn."""
    WAIT = "wait"
    """Whether those beyond the turn wait on hold."""
    BEFORE = "before"
    """How many were worked before the first that are bound off or wait; a no stands for none."""
    MORE = "more"
    """How many were worked behind those, before the next."""
    OFF = "off"
    """How many were bound off there; a no stands for none."""
    HELD = "held"
    """How many wait there; a no stands for none."""
    ON = "on"
    """How many were cast on there; a no stands for none."""
    REST = "rest"
    """Whether the others were worked to the end of the row, or how many before the next."""
    FIRST = "first"
    """Whether those before the gap wait from here on."""
    SAME = "same"
    """Whether so many stitches are on the needles now, or how many."""
    AFTER = "after"
    """How many stitches are on the needles now."""
    FACING = "facing"
    """Whether the right side faces her."""
    TAKEN = "taken"
    """Whether what waits for a part comes onto the needles."""
    COME = "come"
    """How many come onto the needles otherwise; a no stands for none."""
    ROUND = "round"
    """Whether rounds follow, else rows."""
    SUM = "sum"
    """Whether all of it is so."""


_NONE = frozenset((Ask.BEFORE, Ask.MORE, Ask.OFF, Ask.HELD, Ask.ON, Ask.COME))
"""Where a no stands for none."""
NUMBERS = frozenset((Ask.MADE, Ask.LEFT, Ask.AFTER)) | _NONE
"""What is answered by a number alone."""
_EITHER = frozenset((Ask.BEYOND, Ask.REST, Ask.SAME))
"""What is answered by yes, by no, or by the right number at once."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PartQuestion:
    """A question about the stitches of a row."""

    ask: Ask
    number: int = 0
    """The stitches that it speaks of. Unit: stitches."""
    name: str = ""
    """`TAKEN`: the part that they wait for; empty for none."""
    most: int = 0
    """The largest number that may answer it. Unit: stitches."""
    least: int = 0
    parts: tuple[RowPart, ...] = ()
    """`SUM`: the stitches of the row in their order."""
    answer: OpenAnswer | None = None
    """`SUM`: what a yes keeps."""
    wanted: CountWanted | None = None
    """`COME`: what the page asks of the number; None where it says nothing of it."""

    @property
    def takes_number(self) -> bool:
        """Whether a number answers it."""
        return self.ask in NUMBERS or self.ask in _EITHER

    @property
    def takes_no(self) -> bool:
        """Whether a no answers it, rather than leaving it open."""
        return self.ask not in NUMBERS or self.ask in _NONE

    @property
    def takes_yes(self) -> bool:
        """Whether a yes answers it."""
        return self.ask not in NUMBERS


def say_wanted(wanted: CountWanted) -> str:
    """Say what the page asks of a number of stitches: "an odd number, about 95 to 107"."""
    kinds = {(2, 1): "an odd number", (2, 0): "an even number", (1, 0): "as many as fit the edge"}
    more = f" and {wanted.over} more" if wanted.over else ""
    said = kinds.get((wanted.multiple, wanted.over), f"a multiple of {wanted.multiple}{more}")
    if not wanted.most:
        return said
    far = f"{wanted.least}" if wanted.least == wanted.most else f"{wanted.least} to {wanted.most}"
    return f"{said}, about {far}"


def not_wanted(number: int, wanted: CountWanted) -> str:
    """Say that a number is not one of those asked for, and what to do: nothing is knitted on it yet."""
    one = " one" if wanted.multiple == 2 else ""
    said = say_wanted(replace(wanted, least=0, most=0))
    return f"{number} cannot be: it is to be {said}. Pick up{one} more or fewer, then say how many there are."


_Asking = Generator[PartQuestion, PartAnswer, OpenAnswer]


def question_of(row: OpenRow, work: OpenWork) -> PartQuestion | None:
    """Return what is asked of the stitches of a row; None where that is not how it is asked.

    Args:
        row: The row.
        work: What was said of it so far.
    """
    if work.joined and not work.idle:
        joined = replace(row, by_parts=frozenset({PartKind.BACK}), turns=False, several=False)
        return question_after(joined, work.answers)
    if not row.is_asked_by_parts or row.trouble or work.idle or work.rows or work.stitches is not None:
        return None
    if row.proposed is not None and not work.declined:
        return None
    return question_after(row, work.answers)


def question_after(row: OpenRow, answers: Sequence[PartAnswer]) -> PartQuestion:
    """Return what is asked of a row behind the answers given.

    Args:
        row: The row, of which it is asked by parts.
        answers: What she answered, in the order asked.
    """
    asking = _asking(row)
    question = next(asking)
    for answer in answers:
        try:
            question = asking.send(answer)
        except StopIteration as end:
            made: OpenAnswer = end.value
            return PartQuestion(ask=Ask.SUM, parts=made.parts, answer=made)
    return question


def _asking(row: OpenRow) -> _Asking:
    if row.stitches == 0:
        return (yield from _taken(row))
    yield PartQuestion(ask=Ask.ALL_DONE if row.several else Ask.DONE)
    if row.several:
        return (yield from _short_rows(row))
    if row.turns and not (yield PartQuestion(ask=Ask.TO_END)).yes:
        return (yield from _turned(row))
    if row.by_parts == {PartKind.BACK}:
        return (yield from _joined(row))
    if not row.by_parts:
        stitches = yield from _now(row.stitches)
        return OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=stitches)
    return (yield from _along(row))


def _now(likely: int) -> Generator[PartQuestion, PartAnswer, int]:
    """Ask how many stitches are on the needles."""
    most = MOST_MADE * likely
    said = yield PartQuestion(ask=Ask.SAME, number=likely, least=1, most=most)
    if said.number is None and not said.yes:
        said = yield PartQuestion(ask=Ask.AFTER, number=likely, least=1, most=most)
    return likely if said.number is None else said.number


def _short_rows(row: OpenRow) -> _Asking:
    """Ask of short rows what is known at their end: the stitches, and the side of the row behind them."""
    stitches = yield from _now(row.stitches)
    rows = 1
    if row.flat:
        right = (yield PartQuestion(ask=Ask.FACING)).yes
        rows = 1 if right == row.wrong else 2  # as many as bring that side to face her
    return OpenAnswer(kind=OpenKind.SHORT_ROWS, rows=rows, stitches=stitches)


def _turned(row: OpenRow) -> _Asking:
    """Ask of a row that was turned before its end."""
    before = row.stitches
    said = yield PartQuestion(ask=Ask.MADE, number=before, least=1, most=MOST_MADE * before)
    made = said.number or 0
    beyond = max(before - made, 0)
    if beyond:
        said = yield PartQuestion(ask=Ask.BEYOND, number=beyond, least=1, most=before - 1)
    if not beyond or (said.number is None and not said.yes):
        said = yield PartQuestion(ask=Ask.LEFT, least=1, most=before - 1)
    beyond = beyond if said.number is None else said.number
    if (yield PartQuestion(ask=Ask.WAIT, number=beyond)).yes:
        worked = RowPart(kind=PartKind.WORKED, stitches=before - beyond, leaves=made)
        waits = RowPart(kind=PartKind.BEYOND, stitches=beyond, name=_name(row, 0))
        return OpenAnswer(kind=OpenKind.PARTS, parts=(worked, waits))
    # A short row: behind its turn the other side faces her, as behind any row.
    return OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=made + beyond)


def _along(row: OpenRow) -> _Asking:
    """Ask along a row that was worked to its end what lies before each gap, and in it."""
    left, parts = row.stitches, list[RowPart]()
    said = PartAnswer()
    named = 0
    while left:
        if said.number is None:
            said = yield PartQuestion(ask=Ask.MORE if parts else Ask.BEFORE, number=left, most=left)
        worked = said.number or 0
        left -= worked
        parts += _stretch(PartKind.WORKED, worked)
        for kind, ask in ((PartKind.OFF, Ask.OFF), (PartKind.HELD, Ask.HELD), (PartKind.ON, Ask.ON)):
            if kind not in row.by_parts or (not left and kind is not PartKind.ON):
                continue
            most = MOST_MADE * row.stitches if kind is PartKind.ON else left
            many = (yield PartQuestion(ask=ask, number=worked, most=most)).number or 0
            name = _name(row, named) if kind is PartKind.HELD else ""
            named += kind is PartKind.HELD and many > 0
            parts += _stretch(kind, many, name)
            left -= many if kind is not PartKind.ON else 0
        if left:
            said = yield PartQuestion(ask=Ask.REST, number=left, least=1, most=left)
            if said.yes:
                parts += _stretch(PartKind.WORKED, left)
                left = 0
    if PartKind.BACK in row.by_parts:
        parts += yield from _back(row)
    first = _before_gap(row, parts)
    if first and (yield PartQuestion(ask=Ask.FIRST, number=first)).yes:
        waits = RowPart(kind=PartKind.FIRST_HELD, stitches=first, name=_name(row, named))
        at = next(at for at, part in enumerate(parts) if part.kind is PartKind.OFF and at)
        parts.insert(at, waits)
    round_ = (yield PartQuestion(ask=Ask.ROUND)).yes if row.leaves_ring else None
    return OpenAnswer(kind=OpenKind.PARTS, parts=tuple(parts), round=round_)


def _joined(row: OpenRow) -> _Asking:
    """Ask of a row to which stitches come back from hold, and none go."""
    back = yield from _back(row)
    came = sum(part.stitches for part in back)
    stitches = yield from _now(row.stitches + came)
    if not back or stitches <= came:
        return OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=stitches)
    worked = RowPart(kind=PartKind.WORKED, stitches=row.stitches, leaves=stitches - came)
    round_ = (yield PartQuestion(ask=Ask.ROUND)).yes if row.flat else None
    return OpenAnswer(kind=OpenKind.PARTS, parts=(worked, *back), round=round_ or None)


def _back(row: OpenRow) -> Generator[PartQuestion, PartAnswer, list[RowPart]]:
    """Ask which of the stitches that wait are worked in the row; where in it, no later row has to know."""
    back = []
    for name, many in row.held:
        if (yield PartQuestion(ask=Ask.TAKEN, number=many, name=name)).yes:
            back.append(RowPart(kind=PartKind.BACK, stitches=many, leaves=many, name=name))
    return back


def _stretch(kind: PartKind, many: int, name: str = "") -> tuple[RowPart, ...]:
    if not many:
        return ()
    return (
        RowPart(kind=kind, stitches=many, leaves=many if kind is PartKind.WORKED else 0, name=name),
    )


def _before_gap(row: OpenRow, parts: Sequence[RowPart]) -> int:
    """Return how many stitches a row of a flat piece worked before the one gap that it bound off; 0 if none.

    What is cast on again over the gap parts nothing.
    """
    kinds = [part.kind for part in parts]
    if not row.flat or kinds != [PartKind.WORKED, PartKind.OFF, PartKind.WORKED]:
        return 0
    return parts[0].stitches


def _name(row: OpenRow, number: int) -> str:
    """Return the part for which stitches wait, by the words of the row; empty if they name none.

    What is repeated is of one name: the plan tells a second sleeve from the first.
    """
    return row.names[min(number, len(row.names) - 1)] if row.names else ""


def _taken(row: OpenRow) -> _Asking:
    """Ask what comes onto empty needles: of what waits on hold, or anew; and how it goes on.

    Where the words join parts, each of them is asked about.
    """
    if PartKind.BACK in row.by_parts:
        back = yield from _back(row)
        if back:
            return (yield from _united(back))
    for name, many in row.held if row.by_parts & {PartKind.HELD, PartKind.BACK} == {PartKind.HELD} else ():
        if (yield PartQuestion(ask=Ask.TAKEN, number=many, name=name)).yes:
            stitches = yield from _now(many)
            round_, right = yield from _goes_on()
            return OpenAnswer(
                kind=OpenKind.TAKEN, rows=1, stitches=stitches, name=name, round=round_, right=right
            )
    many = (yield PartQuestion(ask=Ask.COME, most=MOST_COME, wanted=row.wanted)).number or 0
    if not many:
        return OpenAnswer(kind=OpenKind.IDLE)
    round_, right = yield from _goes_on()
    return OpenAnswer(kind=OpenKind.COME, rows=1, stitches=many, round=round_, right=right)


def _united(back: Sequence[RowPart]) -> _Asking:
    """Ask how the knitting goes on with what has come back onto empty needles, all of it in one row."""
    came = sum(part.stitches for part in back)
    stitches = yield from _now(came)
    round_, right = yield from _goes_on()
    if len(back) == 1:
        return OpenAnswer(
            kind=OpenKind.TAKEN, rows=1, stitches=stitches, name=back[0].name, round=round_, right=right
        )
    largest = max(range(len(back)), key=lambda at: back[at].stitches)
    made = replace(back[largest], leaves=back[largest].leaves + stitches - came)
    parts = (*back[:largest], made, *back[largest + 1 :])
    return OpenAnswer(kind=OpenKind.PARTS, parts=parts, round=round_, right=right)


def _goes_on() -> Generator[PartQuestion, PartAnswer, tuple[bool, bool]]:
    """Ask whether rounds follow what has come onto the needles, and else which side faces her."""
    round_ = (yield PartQuestion(ask=Ask.ROUND)).yes
    right = round_ or (yield PartQuestion(ask=Ask.FACING)).yes
    return round_, right
