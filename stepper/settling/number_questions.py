"""Ask for the numbers of a row kept in its words: how many rows, how many stitches, what goes on hold."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from typing import Final

from stepper.project.page.answers import AnsweredNumber, read_duration, read_each, read_held, read_numbers
from stepper.project.page.proposals import Proposal
from stepper.settling.file_in_hand import FileInHand
from stepper.settling.prompting import ask_read
from stepper.sitting.folding import print_folded

_MOST_CHANGED = 1000
"""Stitches gained or lost in one row that are taken for a slip, and more."""


@dataclass(frozen=True, slots=True, kw_only=True)
class CountAnswer:
    """How many stitches a row leaves, as answered."""

    text: str = ""
    """As it is written in the file, a number, a list or a change; empty if the number stays the same."""
    each: tuple[int, ...] = ()
    """The count after each of several rows, if they were answered one by one."""


_ONLY_LAST: Final = re.compile(r"(?:it changes in |only )?(?:the )?last(?: one| row)?", re.I)
"""The answer that all rows but the last keep the number."""


@dataclass(frozen=True, slots=True, kw_only=True)
class _Typed(CountAnswer):
    """A count, or how many rows, as typed."""

    number: AnsweredNumber | None = None
    """The number in it; None for a length, or for the same."""


@dataclass(slots=True, kw_only=True)
class NumberQuestions:
    """The questions about the numbers of one row."""

    proposal: Proposal
    """What its words say of it."""
    before: int | None
    """The stitches before it, in the size that is knitted; None if not known."""
    file: FileInHand
    typed: list[AnsweredNumber] = field(default_factory=list)
    """What she typed and the page does not print."""

    def ask_rows(self) -> str:
        """Ask how many rows it is, or how long; return that as it is written in the file.

        Raises:
            LaterAsked: It is left open; `BackAsked` and `StopAsked` likewise, here and below.
        """
        many, inches = len(self.file.sizes), self.file.inches

        def read(answer: str) -> _Typed | str:
            found = read_duration(answer, many, inches=inches)
            if isinstance(found, AnsweredNumber):
                return _Typed(text=found.text, number=found)
            return found if isinstance(found, str) else _Typed(text=found[0])

        default = "" if isinstance(read(self.proposal.rows), str) else self.proposal.rows
        found = ask_read("How many rows, or until what length?", default, read)
        if found.number is not None and found.text not in (default, "1"):
            self.typed.append(found.number)
        return found.text

    def ask_count(self, rows: str) -> CountAnswer:
        """Ask how many stitches it leaves, or each of its rows.

        Args:
            rows: How many rows it is, or how long, as written in the file.
        """
        printed = self._printed(self.proposal.count)
        shown = printed or self.proposal.change
        same = "the same" if self.before is None else f"the same, {self.before}"
        default = f"{shown}, as printed" if shown else same
        many = self._in_size(rows)

        def read(answer: str) -> _Typed | str:
            if answer == default:
                return _Typed(text=shown)
            each = read_each(answer)
            if len(each) == many > 1:
                return _Typed(each=each, number=AnsweredNumber(values=each[:1]))
            return self._read_count(answer)

        count = ask_read(f"How many stitches after {'it' if rows == '1' else 'them'}?", default, read)
        if count.number is not None and (count.each or count.number.text != self.proposal.count):
            self.typed.append(count.number)
        return CountAnswer(text=count.text, each=count.each)

    def ask_each(self, rows: str, count: str, words: str = "") -> CountAnswer:
        """Ask for the count after each of several rows that change it.

        Args:
            rows: How many rows, as written in the file.
            count: What they leave, as it was answered; the last of them has to be that.
            words: The words of the page, which may say that only the last row changes it.

        Returns:
            The counts; none if it is not known how many rows they are, which is told.
        """
        many = self._in_size(rows)
        if not many:
            print_folded(["The number changes in them: say how many rows they are, not how long."])
            return CountAnswer()
        last = self._in_size(count)
        in_last = () if not last or not self.before else (self.before,) * (many - 1) + (last,)

        def read(answer: str) -> tuple[int, ...] | str:
            found = in_last if _ONLY_LAST.fullmatch(answer) else read_each(answer)
            if len(found) != many:
                short = " Or answer last, if only the last row changes it." if in_last else ""
                return f"Write {many} numbers, with a space between them.{short}"
            return found if found[-1] == last or not last else f"The last of them is {last}, as was said."

        print_folded(["The number changes in these rows, and each needs its own, as you count it."])
        default = self._in_steps(many, last) if in_last else ""
        if in_last and re.search(r"\blast\s+(?:row|rnd|round)\b", words, re.I):
            default = "it changes in the last"
        each = ask_read(f"How many stitches after each of the {many} rows?", default, read)
        self.typed.append(AnsweredNumber(values=each[:1]))
        return CountAnswer(each=each)

    def _in_steps(self, many: int, last: int) -> str:
        """Return the counts if all rows change as many stitches; empty if that does not come out."""
        before = self.before or 0
        step, over = divmod(last - before, many)
        return "" if over else " ".join(str(before + step * row) for row in range(1, many + 1))

    def ask_moved(self, verb: str) -> str:
        """Ask how many stitches come onto the needles.

        Args:
            verb: What is done with them: "cast on", "picked up".
        """
        printed = self._printed(self.proposal.moved)
        found = ask_read(f"How many stitches are {verb}?", printed, self._read)
        if found.text != printed:
            self.typed.append(found)
        return found.text

    def ask_held(self) -> str:
        """Ask what goes on hold, and under which names."""
        many = len(self.file.sizes)

        def read(answer: str) -> tuple[str] | str:
            told = "Write it as 12 for thumb; where there are several, with ; between them."
            return (held,) if (held := read_held(answer, many)) else told

        printed = read_held(self.proposal.moved, many)
        (held,) = ask_read("How many go on hold, and for what?", printed, read)
        for each in held.split(";") if held != printed else ():
            found = self._read(each.partition(" for ")[0])
            if isinstance(found, AnsweredNumber):
                self.typed.append(found)
        return held

    def changes(self, count: str) -> bool:
        """Return whether a count is another than the one before the row; not if that is not known."""
        if count.endswith("'d"):
            return True
        return bool(count) and self.before is not None and self._in_size(count) != self.before

    def _read(self, answer: str) -> AnsweredNumber | str:
        return read_numbers(answer, len(self.file.sizes), "stitches")

    def _read_count(self, answer: str) -> _Typed | str:
        """Read how many stitches: a number, "the same", or +4 or -4; return what is wrong, as a sentence."""
        if answer.lower() in ("same", "the same", "="):
            return _Typed()
        sign, change = answer[0], answer[1:]
        if sign in "+-" and change.isdecimal() and len(change) < 5 and 0 < int(change) < _MOST_CHANGED:
            number = AnsweredNumber(values=(int(change),))
            return _Typed(text=f"{number.text} sts {'inc' if sign == '+' else 'dec'}'d", number=number)
        found = self._read(answer)
        return found if isinstance(found, str) else _Typed(text=found.text, number=found)

    def _printed(self, number: str) -> str:
        """Return a printed number if it fits the sizes of the file, else nothing."""
        return "" if isinstance(self._read(number), str) else number

    def _in_size(self, number: str) -> int:
        """Return a number as it is in the size that is knitted; 0 if it is no number."""
        found = self._read(number)
        if isinstance(found, str):
            return 0
        return found.values[0] if found.single else found.values[self.file.sizes.index(self.file.size)]
