"""The row that is not read, at which a sitting stands: what it seems to be, and how it is kept once answered.

Theory of operation. What is proposed is what `stepper settle` puts in brackets, and what is written is what
it writes. Nothing is asked here: the session has asked, and has had its yes. A row of several kinds is taken
sentence by sentence.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from typing import Final

from stepper.craft.rows import row_word
from stepper.plan.finish import in_size
from stepper.plan.lines.named_rounds import ROUND_NAME
from stepper.plan.model import OpenKind, OpenRow, PartKind, Plan, Proposed
from stepper.plan.so_far import find_misfits
from stepper.project.page.marks import find_standing_marks
from stepper.project.page.unread.answers import AnsweredNumber
from stepper.project.page.unread.kept_rows import put_rows, write_each
from stepper.project.page.unread.proposals import Kept
from stepper.project.page.unread.same_lines import SamePart
from stepper.project.problems import UnsoundFileError
from stepper.project.reading.own_words import find_depended_on
from stepper.project.yaml_file.source import read_picture
from stepper.session.state import OpenAnswer
from stepper.settling.by_count import besides_count, fabric_ordered, is_row_of_ring, why_not_by_count
from stepper.settling.by_parts import (
    OF_PARTS,
    asked_by_parts,
    joined_behind,
    parts_in,
    write_asked,
    write_counted,
)
from stepper.settling.coming import CASTS_ON, COMES
from stepper.settling.file_in_hand import FileInHand, read_lines, write_whole
from stepper.settling.looked import Looked, is_idle, look
from stepper.settling.number_questions import CountAnswer, RowNumbers
from stepper.settling.replies import Reply
from stepper.settling.same_part import rows_again
from stepper.settling.written_rows import Written, write_copied, write_first_read, write_reply
from stepper.sitting.project_file import LoadedProject, is_of_other_sizes, load_as_far, load_known

_KINDS: Final = {
    Kept.ROWS: OpenKind.ROWS,
    Kept.NOTE: OpenKind.IDLE,
    Kept.OUT: OpenKind.IDLE,
    Kept.CAST_ON: OpenKind.CAST_ON,
    Kept.PICK_UP: OpenKind.PICK_UP,
    Kept.HOLD: OpenKind.HOLD,
    Kept.BIND_OFF: OpenKind.BIND_OFF,
    Kept.AGAIN: OpenKind.AGAIN,
}
"""What may be proposed, and as what; the rest is settled at the keyboard."""
_LINES_BEGIN: Final = 2
"""Lines of a part in which its first stitches are cast on: a heading may stand above them."""
_WORDS_SAID: Final = 6
"""Words of a line by which it is named."""
_CHANGED: Final = "The file was changed meanwhile. Stop, and begin again: you go on where you are."


class OpenRows:
    """Settles the rows of one file at which its sitting ends."""

    def __init__(self, loaded: LoadedProject) -> None:
        """Take up a file whose plan ends at a row that is not read.

        Args:
            loaded: The file, read as far as it can be.
        """
        self._loaded = self.describe(loaded)

    @property
    def loaded(self) -> LoadedProject:
        """The file, with what the row at which its plan ends seems to be."""
        return self._loaded

    @staticmethod
    def describe(loaded: LoadedProject) -> LoadedProject:
        """Return a file with what the row seems to be; unchanged if its plan goes to the end."""
        row = loaded.plan.open
        if row is None:
            return loaded
        looked = look(loaded)
        asked = asked_by_parts(row, looked.asked)
        by_count = asked.is_asked_by_parts or not row.stitches  # nothing can be bound off, and nothing turned
        why = "" if by_count else why_not_by_count(looked.asked)
        hers, sizes = loaded.project.size, len(loaded.project.sizes)
        told = replace(
            asked,
            words=in_size(looked.asked.left.text, hers, sizes),
            remarks=tuple(
                in_size(each, hers, sizes)
                for each in row.remarks
                if not is_of_other_sizes(each, loaded.project)
            ),
            trouble=row.trouble or why,
            fabric=fabric_ordered(looked.asked.left.text),
            besides=besides_count(looked.asked),
            proposed=None if row.trouble else _proposed_of(looked, asked, first=not loaded.plan.rounds),
        )
        return replace(loaded, plan=replace(loaded.plan, open=told))

    def settle(self, answer: OpenAnswer) -> LoadedProject | str:
        """Write what the row is into the file, and read that again.

        Args:
            answer: What she answered, and said yes to.

        Returns:
            The file as it is then; why the row cannot be kept so, as a sentence, with the file as it was.

        Raises:
            SurroundingsError: The file cannot be written.
        """
        path, before = self._loaded.path, self._loaded.text
        if read_lines(path) != before.replace("\r\n", "\n"):
            return _CHANGED
        looked = look(self._loaded)
        if answer.kind in OF_PARTS:
            return self._settle_parts(answer, looked)
        reply = looked.reply if answer.stitches is None else None
        if answer.kind is OpenKind.IDLE:
            said = looked.reply.kept if looked.reply is not None else Kept.NOTE
            kept = (*([Kept.ROWS] if looked.asked.defines else []), said if said is Kept.OUT else Kept.NOTE)
            forms = [write_reply(Reply(kept=each), looked.asked, looked.file) for each in kept]
            return self._first_that_fits(forms, looked)
        if answer.kind is OpenKind.ROWS and answer.stitches is not None:
            reply = _counted(answer, looked)
        if reply is None:
            return "It cannot be kept so. Settle it at the keyboard: stepper settle."
        _keep_for_her_size(reply, looked.file)
        written = write_reply(reply, looked.asked, looked.file, behind=_behind(answer, looked))
        part, bound_off = reply.part, _bound_off_before(looked, self._loaded.plan.open)
        if part is not None and bound_off:
            rows = ("Bind off all sts.", *rows_again(part, looked.asked.left, looked.file, copied=True))
            written = write_first_read((rows,), looked.asked.left, looked.file)
        copied = (write_copied(part, looked.asked, looked.file),) if part is not None else ()
        return self._first_that_fits((written, *_by_note(answer, looked), *copied), looked)

    def _settle_parts(self, answer: OpenAnswer, looked: Looked) -> LoadedProject | str:
        """Write a row of which she was asked stretch by stretch."""
        asked, row = looked.asked, self._loaded.plan.open
        assert row is not None  # the caller has looked
        if answer.kind is OpenKind.PARTS and not answer.parts and row.proposed is not None:
            answer = replace(answer, parts=row.proposed.parts)
        forms = write_asked(answer, row, asked.left)
        file = looked.file
        file.keep_for_hers()
        each_form = (write_first_read((form,), asked.left, file) for form in forms)
        return self._first_that_fits(each_form, looked)

    def _first_that_fits(self, forms: Iterable[Written], looked: Looked) -> LoadedProject | str:
        """Write the first form of a row that is read and fits; return why none does, the file as it was."""
        trouble = ""
        for each in forms:
            why = each.trouble[0] if each.trouble else "it is not read then."
            after = self._written(each, looked) if each.text else why
            if not isinstance(after, str):
                self._loaded = _unheard(self.describe(after), self._loaded.plan)
                return self._loaded
            trouble = trouble or after
        return f"It cannot be kept so: {trouble}"

    def _written(self, written: Written, looked: Looked) -> LoadedProject | str:
        """Write a row, and read the file again; if it does not fit, return why, with the file as it was."""
        misfit = _misfit(written.text, looked.asked.left.first, len(written.rows), looked.file)
        if misfit and not written.copied:
            return misfit
        path, before = self._loaded.path, self._loaded.text
        crlf = b"\r\n" in path.read_bytes()
        write_whole(path, written.text, crlf=crlf)
        after = _load(self._loaded)
        opened = after.plan.open if after is not None else None
        above = opened is not None and opened.line < looked.asked.left.first
        if (after is None or above) and (told := self._only_explained(written.text)):
            write_whole(path, told, crlf=crlf)
            explained = _load(self._loaded)
            if explained is None and after is not None:
                write_whole(path, written.text, crlf=crlf)
            after = explained or after
        again = after.plan.open if after is not None else None
        stays = again is not None and written.text.split("\n")[again.line - 1].strip() in written.settled
        if written.copied and after is not None:  # what does not fit of them is asked about where it stands
            stays = len(after.plan.rounds) == len(self._loaded.plan.rounds)
        if after is not None and not stays:
            return after
        write_whole(path, before.replace("\r\n", "\n"), crlf=crlf)
        if not stays:
            return "what is knitted already would no longer fit."
        first, many = looked.asked.left.first, len(written.rows)
        return _misfit(written.text, 1, first + many - 1, looked.file) or "the row does not fit there then."

    def _only_explained(self, text: str) -> str:
        """Return a text with a row that is only explained as a note; empty if none is.

        "Inc round: k1, m1, k to end." is worked by the line that calls it. Where that is kept in its own
        words, nothing calls it any more, and it would be worked where it is explained.

        Args:
            text: The file, which goes less far than it did.
        """
        try:
            less = load_as_far(self._loaded.path)
        except UnsoundFileError:
            return ""
        row, rows = less.plan.open if less is not None else None, text.split("\n")
        if row is None or row.line > len(rows):
            return ""
        was, said = self._loaded.text.split("\n"), rows[row.line - 1].strip()
        worked = {was[each.line - 1].strip() for each in self._loaded.plan.rounds}
        if said in worked or ROUND_NAME.search(said.partition(":")[0]) is None:
            return ""
        return put_rows(text, row.line, row.line, [f"Note: {said}"])


def _unheard(loaded: LoadedProject, before: Plan) -> LoadedProject:
    """Leave out of what is said before the next row what she has just heard: no round stands between."""
    row, was = loaded.plan.open, before.open
    if row is None or was is None or len(loaded.plan.rounds) != len(before.rounds):
        return loaded
    heard = {each.rstrip(".") for each in (*was.remarks, was.words)}
    remarks = tuple(each for each in row.remarks if each.rstrip(".") not in heard)
    return replace(loaded, plan=replace(loaded.plan, open=replace(row, remarks=remarks)))


def _proposed_of(looked: Looked, row: OpenRow, *, first: bool) -> Proposed | None:
    """Return what a row seems to be; None where the page does not say enough.

    Args:
        looked: The row, as it is looked at.
        row: The same, with what is asked of its stitches.
        first: Whether nothing is knitted before it.
    """
    if row.is_asked_by_parts and row.stitches:
        numbers = looked.numbers
        parts = parts_in(looked.asked.left.text, row.stitches, numbers.in_size, flat=row.flat)
        if parts:
            return Proposed(kind=OpenKind.PARTS, parts=parts, printed=True)
        all_off = looked.reply is not None and looked.reply.kept is Kept.BIND_OFF
        idle = is_idle(looked.reply)
        if idle and row.by_parts:
            return None  # a yes to a remark would lose what waits
        if not idle and (row.turns or (PartKind.OFF in row.by_parts and not all_off)):
            return None
    if not row.stitches and row.by_parts in ({PartKind.HELD}, {PartKind.HELD, PartKind.BACK}):
        return None  # what waits may come back by it
    if first and looked.asked.defines and COMES.search(looked.asked.left.text) is None:
        return Proposed(kind=OpenKind.IDLE)  # a row of a stitch pattern: it is knitted where that is called
    if looked.reply is None:
        return None
    bound_off = _bound_off_before(looked, row)
    proposed = _proposed(looked)
    return replace(proposed, moved=f"{bound_off}") if bound_off else proposed


def _bound_off_before(looked: Looked, row: OpenRow | None) -> int:
    """Return the stitches of the first of two that have to be bound off before the second is cast on."""
    part = looked.reply.part if looked.reply is not None else None
    if row is None or part is None or not row.second or part.first != 1:
        return 0
    begins = any(CASTS_ON.search(each.text) is not None for each in part.lines[:_LINES_BEGIN])
    return row.stitches if begins else 0


def _proposed(looked: Looked) -> Proposed:
    """Return a proposal in the size that is knitted."""
    reply, numbers = looked.reply, looked.numbers
    assert reply is not None  # the caller has looked
    before = numbers.before or 0
    kind = _KINDS[reply.kept]
    if reply.kept is Kept.ROWS:
        assert reply.numbers is not None
        assert reply.numbers.count is not None
        count, rows = reply.numbers.count, numbers.in_size(reply.numbers.rows)
        after = count.each[-1] if count.each else numbers.after(count.text)
        file = numbers.file
        hers = in_size(reply.numbers.rows, file.sizes.index(file.size), len(file.sizes))
        lasts = "" if rows else hers
        return Proposed(kind=kind, rows=rows, lasts=lasts, stitches=after, printed=bool(count.text))
    if reply.kept is Kept.HOLD:
        held = [each.strip().partition(" for ") for each in reply.moved.split(";")]
        many = [(numbers.in_size(number), name) for number, _, name in held]
        moved = " and ".join(f"{number} for {name}" if name else f"{number}" for number, name in many)
        left = numbers.after(reply.count) if reply.count else before - sum(number for number, _ in many)
        return Proposed(kind=kind, moved=moved, stitches=left, printed=bool(reply.count))
    if reply.kept in (Kept.CAST_ON, Kept.PICK_UP):
        return Proposed(kind=kind, moved=f"{numbers.in_size(reply.moved)}", printed=True)
    return Proposed(kind=kind, part=_part_said(reply.part) if reply.part is not None else "")


def _part_said(part: SamePart) -> str:
    """Return which part comes once more, and from which line on if not from its first."""
    begins = " ".join(part.lines[part.first - 1].text.split()[:_WORDS_SAID]).rstrip(" .,;:")
    return part.name if part.first == 1 else f"{part.name}, from {begins} on,"


def _counted(answer: OpenAnswer, looked: Looked) -> Reply:
    """Return rows as she counted them; what the page prints alike stays as it is printed, for every size."""
    numbers, stitches = looked.numbers, answer.stitches
    assert stitches is not None  # the caller has looked
    if looked.asked.so_far.stitches == 0:  # wherever they come from: now they are on the needles
        return Reply(kept=Kept.PICK_UP, moved=str(stitches))
    proposed = numbers.propose()
    typed: list[AnsweredNumber] = []
    rows = proposed.rows
    if numbers.in_size(rows) != answer.rows:
        rows = str(answer.rows)
        typed += [AnsweredNumber(values=(answer.rows,))] if answer.rows != 1 else []
    count = proposed.count
    printed = count is not None and (count.each[-1] if count.each else numbers.after(count.text)) == stitches
    as_proposed = rows == proposed.rows and printed
    asked = looked.asked
    noted = find_depended_on(asked.left.text) or is_row_of_ring(asked)
    if noted or stitches == 0:  # its words are a note above the rows
        here = numbers.before or stitches
        count = numbers.counted_behind(answer.rows, stitches)
        typed += [AnsweredNumber(values=(stitches,))] if stitches != here else []
    elif count is None or not as_proposed:
        single = AnsweredNumber(values=(stitches,))
        before = numbers.before
        same = stitches == before
        text = "" if same else count.text if printed and count is not None else single.text
        changes = not same and answer.rows > 1
        last = numbers.counted_behind(answer.rows, stitches) if changes else CountAnswer()
        count = replace(last, text=text)
        typed += [single] if not same and (changes or not printed) else []
    return Reply(kept=Kept.ROWS, numbers=RowNumbers(rows=rows, count=count, typed=tuple(typed)))


def _by_note(answer: OpenAnswer, looked: Looked) -> tuple[Written, ...]:
    """Return what she counted with its words as a note above it, which holds whatever the words speak of."""
    if answer.kind is not OpenKind.ROWS or answer.stitches is None:
        return ()
    asked, here = looked.asked, looked.asked.so_far.stitches
    if here == 0:
        (rows,) = write_counted(answer, asked.left.text, 0)
    else:
        count = looked.numbers.counted_behind(answer.rows, answer.stitches)
        rows = write_each(asked.left.text, tuple(map(str, count.each)), uncounted=count.last_alone)
    return (write_first_read(((*rows, *_behind(answer, looked)),), asked.left, looked.file),)


def _behind(answer: OpenAnswer, looked: Looked) -> tuple[str, ...]:
    """Return what is written behind the rows that she counted: that rounds follow rows, or rows rounds."""
    if answer.kind is not OpenKind.ROWS or answer.stitches is None:
        return ()
    more = answer.rows - 1 if looked.asked.so_far.stitches == 0 else 0
    row = row_word(bool(looked.asked.so_far.flat))
    rows = (f"Own words, {more} {row}{'s' if more > 1 else ''}: by the words above.",) if more else ()
    return (*rows, *joined_behind(looked.asked.left.text))


def _keep_for_her_size(reply: Reply, file: FileInHand) -> None:
    """Keep the file for her size alone if a number is for no other."""
    typed = reply.numbers.typed if reply.numbers is not None else ()
    if any(each.single for each in typed):
        file.keep_for_hers()


def _misfit(text: str, first: int, rows: int, file: FileInHand) -> str:
    """Return what does not fit in the rows written, as a sentence; empty if all does."""
    found = find_misfits(text, lambda picture: read_picture(file.folder / picture))
    return next((each.message for each in found if first <= each.line < first + rows), "")


def _load(loaded: LoadedProject) -> LoadedProject | None:
    """Read a file again, all of it if nothing is open any more, else as far as it goes.

    None if it is open and goes less far than before.
    """
    whole = not find_standing_marks(read_lines(loaded.path))
    try:
        after = load_known(loaded.path) if whole else load_as_far(loaded.path)
    except UnsoundFileError:
        return None
    if after is None or (after.plan.open is not None and len(after.plan.rounds) < len(loaded.plan.rounds)):
        return None
    return after
