"""Go through what a pasted page left open, one question at a time, and write the file after each answer.

Theory of operation. The text in the file is the only state: what is open is found in it anew after each
answer, in the order of the page, and what she leaves open is remembered for this run alone. A part is gone
through twice, first its rows that are not read, then its lines that are read and do not fit, since these
mostly hang on those; the parts behind it come after. Going back puts the text before the last answer into the
file again.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import field
from pathlib import Path

from stepper.errors import ProjectError
from stepper.plan.so_far import find_misfits
from stepper.project.page.unread.kept_rows import keep_for_size
from stepper.project.page.unread.left_open import LeftKind, LeftOpen, find_left_open, line_at
from stepper.project.problems import Problem, UnsoundFileError
from stepper.project.yaml_file.source import read_picture
from stepper.records import dataclass
from stepper.settling.file_in_hand import FileInHand, read_lines, take_in_hand, write_whole
from stepper.settling.prompting import ENTER_TAKES, BackAsked, LaterAsked, StopAsked, ask_yes
from stepper.settling.row_questions import ask_front, ask_row
from stepper.settling.rows_asked import look_at
from stepper.settling.together import alike_below, ask_together
from stepper.settling.value_questions import ask_needles, ask_value
from stepper.sitting.folding import print_folded
from stepper.sitting.patience import patience
from stepper.sitting.project_file import load_project

_Key = tuple[LeftKind, str, str]


@dataclass(slots=True, kw_only=True)
class Settling:
    """One run through what is open in a file."""

    path: Path
    text: str = ""
    """The text as it was last read or written."""
    crlf: bool = False
    to_begin: bool = False
    """Whether only that is asked about which is of the whole garment: values, what stands in front of the
    pattern, two needles. Its rows are asked about where she comes to them, the first of them at once."""
    later: set[_Key] = field(default_factory=set)
    """What is left open in this run."""
    before: list[tuple[str, frozenset[_Key]]] = field(default_factory=list)
    """The texts before the answers so far, each with what was left open then."""
    apart: set[LeftOpen] = field(default_factory=set)
    """What is asked about one by one, though it could be kept together."""
    answered: int = 0

    def run(self) -> bool:
        """Ask about everything that is open.

        Returns:
            Whether nothing is left to ask about but what she leaves open; not if she stopped before.

        Raises:
            StepperError: The file cannot be read or written.
            KeyboardInterrupt: She broke it off; what was answered is in the file.
        """
        self._read()
        print_folded([f"Have the page at hand. {ENTER_TAKES} ? tells what can be answered."])
        while True:
            try:
                if not self._ask_next():
                    return True
            except BackAsked:
                self._go_back()
            except StopAsked:
                return False

    def _read(self) -> None:
        self.text = read_lines(self.path)
        self.crlf = b"\r\n" in self.path.read_bytes()

    def _ask_next(self) -> bool:
        """Ask about the next thing that is open; return False if nothing is."""
        self._take_changes()
        found = self._next()
        if found is None:
            return False
        left, problem = found
        opened = [each for each in find_left_open(self.text) if self._is_open(each)]
        together = () if problem is not None or left in self.apart else alike_below(left, opened, self.text)
        kept = (self.text, frozenset(self.later))
        try:
            if together:
                _show_all(together, len(opened))
                text = ask_together(together, self.text)
            else:
                _show(left, len(opened))
                text = self._ask(left, problem, take_in_hand(self.text, self.path.parent))
        except LaterAsked:
            self.later.update(map(_key_of, together or (left,)))
            self.before.append(kept)
            return True
        if self._take_changes():
            return True  # the answer was to what stood there before: it is asked again
        if text == self.text and together:
            self.apart.update(together)
            return True
        if text == self.text:
            self.later.add(_key_of(left))
            print_folded(["That changes nothing, so it is left open."])
        self._write(text)
        self.before.append(kept)
        self.answered += 1
        return True

    def _take_changes(self) -> bool:
        """Go on with the file as it is where another has changed it; return whether one has."""
        if read_lines(self.path) == self.text:
            return False
        self._read()
        self.before.clear()
        print_folded(["The file was changed meanwhile; going on with it as it is."])
        return True

    def _ask(self, left: LeftOpen, problem: Problem | None, file: FileInHand) -> str:
        if problem is not None and problem.kind == "needles":
            return ask_needles(file)
        if problem is not None and file.several and problem.sizes and file.size not in problem.sizes:
            print_folded([f"That is so in sizes that you do not knit; you knit size {file.size}."])
            if ask_yes(f"Keep the file for size {file.size} alone, so that no other is worked out?"):
                return keep_for_size(self.text, file.size)
            raise LaterAsked
        if left.kind is LeftKind.VALUE:
            return ask_value(left, file)
        if left.kind is LeftKind.FRONT:
            return ask_front(left, file)
        return ask_row(look_at(left, self.text), file)

    def _write(self, text: str) -> None:
        write_whole(self.path, text, crlf=self.crlf)
        self.text = text

    def _go_back(self) -> None:
        """Put the file back as it was before the last answer, and ask that again."""
        if not self.before:
            print_folded(["This is the first question; nothing was answered before it."])
            return
        if self._take_changes():
            return  # what stood there before the last answer is no longer what was changed
        text, later = self.before.pop()
        self._write(text)
        self.later = set(later)

    def _is_open(self, left: LeftOpen) -> bool:
        return _key_of(left) not in self.later

    def _next(self) -> tuple[LeftOpen, Problem | None] | None:
        """Return what is to be asked about next, with the problem if it is a line that does not fit."""
        marked = [each for each in find_left_open(self.text) if self._is_open(each)]
        if self.to_begin:
            front = next((each for each in marked if each.kind is not LeftKind.ROW), None)
            return (front, None) if front is not None else self._needles_unknown()
        first = marked[0] if marked else None
        if first is not None and not first.part:
            return first, None
        rows = self.text.split("\n")
        begins = _part_begins(rows, first.first) if first is not None else len(rows) + 1
        if first is not None and not any(re.match(r"\s*work:", row) for row in rows[: begins - 1]):
            return first, None  # nothing stands before its part
        for problem in self._problems(everywhere=first is None):
            if problem.line >= begins:
                break
            if first is not None and problem.kind == "empty":
                continue  # a row that is still open may cast on, or call these rows a pattern
            line = line_at(self.text, problem.line, f"{problem.message} {problem.hint}".strip())
            if line is not None and self._is_open(line):
                return line, problem
        return (first, None) if first is not None else None

    def _needles_unknown(self) -> tuple[LeftOpen, Problem] | None:
        """Return the first line of an unknown needle, with what is told; None for none, or if she left it."""
        found = (each for each in self._problems(everywhere=False) if each.kind == "needles")
        problem = next(found, None)
        if problem is None:
            return None
        line = line_at(self.text, problem.line, problem.message)
        return (line, problem) if line is not None and self._is_open(line) else None

    def _problems(self, *, everywhere: bool) -> tuple[Problem, ...]:
        """Return what does not fit, in the order of the file, marks aside.

        Args:
            everywhere: Whether in every size of the file, or in the one that is knitted.
        """
        if not everywhere:
            found = find_misfits(self.text, lambda picture: read_picture(self.path.parent / picture))
            return tuple(sorted(found, key=lambda each: each.line))
        try:
            with patience(f"Working out every round of {self.path.name}"):
                load_project(self.path, marks=False)
        except UnsoundFileError as error:
            return error.problems
        except ProjectError:
            return ()
        return ()


def _part_begins(rows: list[str], number: int) -> int:
    """Return the row where the part begins that a row stands in, both from 1."""
    return next((at for at in range(number, 0, -1) if re.match(r"\s*- name:", rows[at - 1])), 1)


def _key_of(left: LeftOpen) -> _Key:
    return left.kind, left.part, left.text


def _show(left: LeftOpen, many: int) -> None:
    """Show what is asked about, with its place and what is not understood."""
    part = f", {left.part}" if left.part else ""
    head = f"{many} open. {_where(left)}{part}."
    if left.kind is LeftKind.LINE:
        head = f"Read, and does not fit: line {left.first}{part}."
    row = left.kind is LeftKind.ROW  # it is shown with the words in question marked, as it is asked about
    said = () if row else (left.text, *(each for each in left.why.split("\n") if each))
    print_folded(["", head, *(f"  {each}" for each in said)])


def _show_all(together: Sequence[LeftOpen], many: int) -> None:
    """Show several pieces that are asked about in one question."""
    first = together[0]
    part = f", {first.part}" if first.part else ""
    rows = [f"  {number}. {each.text}" for number, each in enumerate(together, start=1)]
    print_folded(["", f"{many} open. From {_where(first).lower()}{part}: {len(together)} remarks.", *rows])


def _where(left: LeftOpen) -> str:
    return f"{left.where[0].upper()}{left.where[1:]} of the page" if left.where else f"Line {left.first}"
