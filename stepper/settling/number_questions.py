"""Ask for the numbers of a row kept in its words: how many rows, how many stitches, what goes on hold.

Theory of operation. What is proposed is put together first, from what is printed, and said in one line that
Enter takes: "14 rounds, then 144 sts as before". Only what neither the page nor the answer says is asked for.
"""

from __future__ import annotations

import re
from dataclasses import field, replace
from typing import Final

from stepper.project.page.unread.answers import (
    AnsweredNumber,
    read_duration,
    read_each,
    read_held,
    read_numbers,
    split_numbers,
)
from stepper.project.page.unread.doubts import may_change
from stepper.project.page.unread.proposals import Kept, Proposal
from stepper.project.page.unread.steps import counts_by_words
from stepper.records import dataclass
from stepper.regex import regex
from stepper.settling.file_in_hand import FileInHand
from stepper.settling.prompting import ask_read
from stepper.sitting.folding import print_folded

_MOST_CHANGED = 1000
"""Stitches gained or lost in one row that are taken for a slip, and more."""
_NEEDS_COUNT: Final = "Say how many stitches after them, too: 84 sts, or same."
_NEEDS_ROWS: Final = "Say how many rows, or until what length: 12 rows, or until 12 cm."


_IN_EACH: Final = regex(r"\b(?:every|each|next|foll(?:owing)?|these|all)\b", re.I)
"""Words by which each of several rows may change the number alike."""
_AT_TIMES: Final = regex(
    r"\brep(?:eat)?\b|\balt|\bother\b|\bevery\s+\d|\d(?:st|nd|rd|th)\b|\bthen\b|\b(?:un)?til\b", re.I
)
"""Words by which only some of them do."""


@dataclass(frozen=True, slots=True, kw_only=True)
class CountAnswer:
    """How many stitches a row leaves, as answered."""

    text: str = ""
    """As it is written in the file, a number, a list or a change; empty if the number stays the same."""
    each: tuple[int, ...] = ()
    """The count after each of several rows, if they were answered one by one."""
    last_alone: bool = False
    """Whether only the last of them was counted, and those before it stand as before them."""


@dataclass(frozen=True, slots=True, kw_only=True)
class RowNumbers:
    """How long a row is worked and what it leaves."""

    rows: str = ""
    """How many rows, or how long, as written in the file; empty if that is not known yet."""
    count: CountAnswer | None = None
    """What it leaves; None if that is not known yet."""
    typed: tuple[AnsweredNumber, ...] = ()
    """What she typed and the page does not print."""


_ONLY_LAST: Final = regex(r"(?:it changes in |only )?(?:the )?last(?: one| row)?", re.I)
"""The answer that all rows but the last keep the number."""


@dataclass(frozen=True, slots=True, kw_only=True)
class _Typed:
    """A count as typed."""

    text: str = ""
    number: AnsweredNumber | None = None
    """The number in it; None for the same."""


@dataclass(slots=True, kw_only=True)
class NumberQuestions:
    """The questions about the numbers of one row."""

    proposal: Proposal
    """What its words say of it."""
    before: int | None
    """The stitches before it, in the size that is knitted; None if not known."""
    file: FileInHand
    words: str = ""
    """The words of the page, which may say that only the last row changes the number."""
    flat: bool | None = None
    """Whether the piece is worked in rows there; None if not known."""
    typed: list[AnsweredNumber] = field(default_factory=list)
    """What she typed and the page does not print."""

    # --- how many rows, and what they leave ---

    def propose(self) -> RowNumbers:
        """Return the numbers that the page says, or that stay as they are; its rows are empty if it does not
        say how many."""
        rows = "" if isinstance(self._read_rows(self.proposal.rows), str) else self.proposal.rows
        count = CountAnswer(text=self._printed(self.proposal.count) or self.proposal.change)
        told = self._by_words(count.text)
        if told:
            kept = replace(count, each=told)
            return RowNumbers(rows=str(len(told)), count=kept, typed=(AnsweredNumber(values=told[:1]),))
        lasts = bool(rows) and not rows[0].isdigit()  # in which of them the number changes is not known then
        if self._may_change and (not count.text or lasts):
            return RowNumbers(rows=rows)
        each = self._each_proposed(rows, count.text) if self._needs_each(rows, count) else ()
        typed = (AnsweredNumber(values=each[:1]),) if each else ()
        return RowNumbers(rows=rows, count=replace(count, each=each), typed=typed)

    def say(self, numbers: RowNumbers) -> str:
        """Return numbers as they are shown in brackets: `14 rounds, then 144 sts as before`."""
        rows = numbers.rows or "how many"
        if rows == "how many" or rows[0].isdigit():
            row = "row" if self.flat is not False else "round"
            rows = f"{rows} {row}{'' if rows == '1' else 's'}"
        count = numbers.count
        if count is None:
            return f"{rows}, then how many sts"
        if count.each:
            said = " ".join(map(str, count.each))
            if count.each == self._in_last(count.each[-1], len(count.each)):
                return f"{rows}, then {count.each[-1]} sts, and {count.each[0]} until the last"
            return f"{rows}, with {said} sts after each"
        if count.text:
            printed = " as printed" if not numbers.typed else ""
            return f"{rows}, then {count.text}{'' if count.text.endswith('d') else ' sts'}{printed}"
        return f"{rows}, then {'as many sts' if self.before is None else f'{self.before} sts'} as before"

    @property
    def _may_change(self) -> bool:
        """Whether the words may make another number of stitches."""
        return self.proposal.strange or may_change(self.words)

    def is_whole(self, numbers: RowNumbers) -> bool:
        """Return whether nothing has to be asked about numbers any more."""
        return self.trouble_with(numbers) == "" and not self._needs_each(numbers.rows, numbers.count)

    def trouble_with(self, numbers: RowNumbers) -> str:
        """Return what has to be said yet, as a sentence; empty if nothing has."""
        return _NEEDS_ROWS if not numbers.rows else _NEEDS_COUNT if numbers.count is None else ""

    def read(self, answer: str, *, bare: bool = False) -> RowNumbers | str | None:
        """Read an answer that says how many rows, how many stitches, or both.

        What it leaves out is as proposed.

        Args:
            answer: As typed: `12 rows, 84 sts`, `12 rows`, `84 sts`, `until 12 cm, same`, `-4`.
            bare: Whether a number alone is one of rows.

        Returns:
            The numbers; what is wrong with them, as a sentence; None if the answer is of another kind.
        """
        said = split_numbers(answer, len(self.file.sizes), bare=bare)
        if said is None:
            return None
        proposed = self.propose()
        rows, typed = proposed.rows, list[AnsweredNumber]()
        if said.rows:
            found = self._read_rows(said.rows)
            if isinstance(found, str):
                return found
            rows = found[0] if isinstance(found, tuple) else found.text
            if isinstance(found, AnsweredNumber) and rows not in (self.proposal.rows, "1"):
                typed.append(found)
        count = CountAnswer(text=proposed.count.text) if proposed.count is not None else None
        if not said.count:
            if rows == proposed.rows:
                count = proposed.count
                typed += proposed.typed
        elif len(read_each(said.count)) == self.in_size(rows) > 1:
            each = read_each(said.count)
            typed.append(AnsweredNumber(values=each[:1]))
            count = CountAnswer(each=each)
        else:
            number = self._read_count(said.count)
            if isinstance(number, str):
                return number
            if number.number is not None and number.number.text != self.proposal.count:
                typed.append(number.number)
            count = CountAnswer(text=number.text)
        if count is not None and self._needs_each(rows, count):
            each = self._each_proposed(rows, count.text) if _says_last(self.words) else ()
            count = replace(count, each=each)
            typed += [AnsweredNumber(values=each[:1])] if each else []
        return RowNumbers(rows=rows, count=count, typed=tuple(typed))

    def ask_numbers(self) -> RowNumbers | None:
        """Ask how many rows it is and how many stitches it leaves, in one question.

        Returns:
            The numbers; None, with why told, if they are not enough to write the rows.

        Raises:
            LaterAsked: It is left open; `BackAsked` and `StopAsked` likewise, here and below.
        """
        proposed = self.propose()
        whole = not self.trouble_with(proposed)
        default = self.say(proposed) if whole else ""

        def read(answer: str) -> RowNumbers | str:
            found = proposed if whole and answer == default else self.read(answer, bare=True)
            if found is None:
                return f"{_NEEDS_ROWS} The stitches after them stand behind: 12 rows, 84 sts."
            return found if isinstance(found, str) else self.trouble_with(found) or found

        question = "How many rows, or until what length, and how many sts then?"
        known = "" if whole else self._say_known(proposed)
        return self.complete(ask_read(f"{question}{known}", default, read))

    def _say_known(self, numbers: RowNumbers) -> str:
        """Return what is known of numbers of which something has to be said yet, in brackets."""
        said = self.say(numbers)
        known = [part for part in said.split(", then ") if not part.startswith("how many")]
        return f" (known: {', then '.join(known)})" if known else ""

    def complete(self, numbers: RowNumbers) -> RowNumbers | None:
        """Ask for the count after each row where it changes and is not known; None if that cannot be said."""
        self.typed += numbers.typed
        if self.is_whole(numbers):
            return numbers
        each = self._ask_each(numbers.rows, numbers.count.text if numbers.count is not None else "")
        return replace(numbers, count=CountAnswer(each=each)) if each else None

    def row_by_row(self, numbers: RowNumbers) -> tuple[str, ...]:
        """Return the count after each row as written in the file; empty, told, if they have no number."""
        assert numbers.count is not None
        if numbers.count.each:
            return tuple(map(str, numbers.count.each))
        many = self.in_size(numbers.rows)
        if not many:
            print_folded(["They are written one by one: say how many rows they are, not how long."])
            return ()
        if many > 1 and len(re.findall(r"\d+", numbers.rows)) > 1:
            self.typed.append(AnsweredNumber(values=(many,)))
        return (*("",) * (many - 1), numbers.count.text)

    def _ask_each(self, rows: str, count: str) -> tuple[int, ...]:
        """Ask for the count after each of several rows; empty, told, if they have no number."""
        many, last = self.in_size(rows), self.in_size(count)
        if not many:
            print_folded(["The number changes in them: say how many rows they are, not how long."])
            return ()
        in_last = self._in_last(last, many)

        def read(answer: str) -> tuple[int, ...] | str:
            found = in_last if _ONLY_LAST.fullmatch(answer) else read_each(answer)
            if len(found) != many:
                short = " Or answer last, if only the last row changes it." if in_last else ""
                return f"Write {many} numbers, with a space between them.{short}"
            return found if found[-1] == last or not last else f"The last of them is {last}, as was said."

        print_folded(["The number changes in these rows, and each needs its own, as you count it."])
        default = " ".join(map(str, self._in_steps(many, last)))
        if in_last and _says_last(self.words):
            default = "it changes in the last"
        each = ask_read(f"How many stitches after each of the {many} rows?", default, read)
        self.typed.append(AnsweredNumber(values=each[:1]))
        return each

    def counted_behind(self, rows: int, stitches: int) -> CountAnswer:
        """Return the counts of several rows of which only the number behind the last was said."""
        before = self.before or stitches
        each = (*(before,) * (rows - 1), stitches)
        return CountAnswer(each=each, last_alone=stitches != before and not _says_last(self.words))

    def _by_words(self, count: str) -> tuple[int, ...]:
        """Return the count after each row where the words tell them all."""
        sizes = self.file.sizes
        if not self.before:
            return ()
        last = self.in_size(count)
        return counts_by_words(self.words, self.before, last, sizes.index(self.file.size), len(sizes))

    def _needs_each(self, rows: str, count: CountAnswer | None) -> bool:
        """Return whether several rows change the number, and where is not said."""
        if count is None or count.each or rows in ("", "1") or not count.text:
            return False
        changed = self.before is not None and self.in_size(count.text) != self.before
        return changed or count.text.endswith("'d")

    def _each_proposed(self, rows: str, count: str) -> tuple[int, ...]:
        """Return the counts after each of several rows, if they change it by the same step or in the last."""
        many, last = self.in_size(rows), self.in_size(count)
        if not many:
            return ()
        return self._in_last(last, many) if _says_last(self.words) else self._in_steps(many, last)

    def _in_last(self, last: int, many: int) -> tuple[int, ...]:
        return () if not last or not self.before else (self.before,) * (many - 1) + (last,)

    def _in_steps(self, many: int, last: int) -> tuple[int, ...]:
        """Return the counts if all rows change as many stitches; empty if that does not come out."""
        if not last or not self.before or not _IN_EACH.search(self.words) or _AT_TIMES.search(self.words):
            return ()
        step, over = divmod(last - self.before, many)
        return () if over else tuple(self.before + step * row for row in range(1, many + 1))

    # --- what comes and goes ---

    def ask_moved(self, verb: str, said: str = "") -> str:
        """Ask how many stitches come onto the needles.

        Args:
            verb: What is done with them: "cast on", "picked up".
            said: How many, if that was answered already.
        """
        printed = self._printed(self.proposal.moved)
        found = self._read(said)
        if isinstance(found, str):
            found = ask_read(f"How many stitches are {verb}?", printed, self._read)
        if found.text != printed:
            self.typed.append(found)
        return found.text

    def ask_held(self, said: str = "") -> str:
        """Ask what goes on hold, and under which names.

        Args:
            said: What does, if that was answered already.
        """
        many = len(self.file.sizes)

        def read(answer: str) -> tuple[str] | str:
            told = "Write it as 12 for thumb; where there are several, with ; between them."
            return (held,) if (held := read_held(answer, many)) else told

        printed = read_held(self.proposal.moved, many)
        held = read_held(said, many) or ask_read("How many go on hold, and for what?", printed, read)[0]
        for each in held.split(";") if held != printed else ():
            found = self._read(each.partition(" for ")[0])
            if isinstance(found, AnsweredNumber):
                self.typed.append(found)
        return held

    def ask_rest(self) -> str:
        """Ask how many stitches stay on the needles where others go on hold, if the words may change that.

        Returns:
            The number as written in the file; empty for the rest of them.
        """
        shown = self._printed(self.proposal.count) or self.proposal.change
        if not self._may_change or shown:
            return shown
        count = ask_read("How many stitches stay on the needles after it?", "", self._read_count)
        if count.number is not None and count.number.text != self.proposal.count:
            self.typed.append(count.number)
        return count.text

    def moved_proposed(self) -> str:
        """Return what comes or goes by the words as printed; empty if they do not say, or for other sizes."""
        if self.proposal.kept is Kept.HOLD:
            return read_held(self.proposal.moved, len(self.file.sizes))
        return self._printed(self.proposal.moved)

    def _read(self, answer: str) -> AnsweredNumber | str:
        return read_numbers(answer, len(self.file.sizes), "stitches")

    def _read_rows(self, answer: str) -> AnsweredNumber | str | tuple[str]:
        return read_duration(answer, len(self.file.sizes), inches=self.file.inches)

    def _read_count(self, answer: str) -> _Typed | str:
        """Read how many stitches: a number, "the same", or +4 or -4; return what is wrong, as a sentence."""
        if answer.lower() in ("same", "the same", "="):
            return _Typed()
        sign, change = answer[0], answer[1:].strip()
        change = re.sub(r"\s*(?:sts?|stitches)\b\.?$", "", change)
        if sign in "+-" and change.isdecimal() and len(change) < 5 and 0 < int(change) < _MOST_CHANGED:
            number = AnsweredNumber(values=(int(change),))
            return _Typed(text=f"{number.text} sts {'inc' if sign == '+' else 'dec'}'d", number=number)
        found = self._read(re.sub(r"\s+after$", "", answer))
        return found if isinstance(found, str) else _Typed(text=found.text, number=found)

    def _printed(self, number: str) -> str:
        """Return a printed number if it fits the sizes of the file, else nothing."""
        return "" if isinstance(self._read(number), str) else number

    def after(self, count: str) -> int:
        """Return the stitches after a row, in the size that is knitted, from a count as it is written.

        Args:
            count: A number, a list, or a change ("4 sts dec'd"); empty for the same as before.
        """
        if not count:
            return self.before or 0
        change = re.fullmatch(r"(?P<number>\d[^a-z]*)(?:sts?)? ?(?P<way>inc|dec)'d", count)
        if change is None:
            return self.in_size(count)
        number = self.in_size(change["number"].strip())
        return (self.before or 0) + (number if change["way"] == "inc" else -number)

    def in_size(self, number: str) -> int:
        """Return a number as it is in the size that is knitted; 0 if it is no number."""
        found = self._read(number)
        if isinstance(found, str):
            return 0
        return found.values[0] if found.single else found.values[self.file.sizes.index(self.file.size)]


def _says_last(words: str) -> bool:
    return re.search(r"\blast\s+(?:row|rnd|round)\b", words, re.I) is not None
