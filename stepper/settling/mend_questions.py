"""Offer the smallest change with which an open row is read and fits, and ask what hangs on it.

Theory of operation. What is asked is never whether the program may read the row so, but what she knows and it
does not: whether some words change anything she knits, whether a word is a slip, whether a second order comes
after the first. Words struck once are struck in the same file again without asking, and that is told.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from stepper.craft.rows import row_word
from stepper.plan.mended import Worked, find_worked
from stepper.project.page.quoting import comment
from stepper.project.page.unread.kept_rows import marked_rows, put_rows
from stepper.project.page.unread.left_open import LeftKind, LeftOpen
from stepper.project.page.unread.mends import Mend, MendKind
from stepper.project.yaml_file.source import read_picture
from stepper.settling.file_in_hand import FileInHand
from stepper.settling.prompting import BackAsked, ask
from stepper.settling.rows_asked import RowAsked
from stepper.sitting.folding import print_folded

_MOST_TRIED: Final = 3
"""Most changes that are worked out for a row; each costs working the garment once."""
_HELP: Final = {
    MendKind.STRUCK: "no: the row is read without these words, which stay in the file and are said with it; "
    "yes: the row is open",
    MendKind.SPELT: "yes: the row is read so; no: the row is open",
    MendKind.CUT: "yes: the first order is read, and the other is asked about; no: the row is open as it is",
}
_OPEN_ABOVE: Final = "What stands open above it may change what it comes to."
_STRUCK: Final = "Note: … "
"""What stands in front of words struck, in the file: they are said in front of their row."""


def ask_mended(asked: RowAsked, file: FileInHand, found: Sequence[tuple[Mend, Worked]]) -> tuple[str, str]:
    """Show an open row, offer it with the smallest change if there is one, and put it into the file so.

    Args:
        asked: The row.
        file: The file.
        found: The changes with which it fits, as `find_fitting` finds them.

    Returns:
        The text of the file with it, empty if none is found or she takes none, so that the row is still open;
        then what she answered instead, empty if nothing: what the row is.

    Raises:
        LaterAsked: It is left open; `BackAsked` and `StopAsked` likewise.
    """
    if not found and asked.left.kind is LeftKind.ROW:
        print_folded([f"  {asked.left.text}", *(f"  {asked.left.why}" for _ in asked.left.why[:1])])
    at = 0
    while at < len(found):
        mend, worked = found[at]
        rows = rows_mended(mend, asked.left)
        if mend.kind is MendKind.STRUCK and _is_known(mend.words, file.text):
            print_folded([f'  Read without "{mend.words}", as before: {mend.text}'])
            return put_rows(file.text, asked.left.first, asked.left.last, rows), ""
        _show(mend, worked, asked)
        try:
            taken = _ask(mend)
        except BackAsked:
            if not at:
                raise
            at -= 1
            continue
        if isinstance(taken, str):
            return "", taken
        if taken:
            return put_rows(file.text, asked.left.first, asked.left.last, rows), ""
        at += 1
    return "", ""


def find_fitting(asked: RowAsked, file: FileInHand) -> tuple[tuple[Mend, Worked], ...]:
    """Find the changes with which a row is read in its place and fits.

    Returns:
        The smallest, with what the row then works. Several if they cost the same and come to different rows,
        since only she can tell them apart; of those that come to the same one is enough.
    """
    tried = asked.mends[:_MOST_TRIED]
    if not tried:
        return ()  # most rows: to work the garment for them would be for nothing
    ways = [(rows_mended(mend, asked.left), _row_of(mend)) for mend in tried]
    found = find_worked(
        file.text, asked.left.first, asked.left.last, ways, lambda name: read_picture(file.folder / name)
    )
    fitting = [
        (mend, worked)
        for mend, worked in zip(tried, found, strict=True)
        if worked is not None and (worked.rounds or not worked.known or _may_be_idle(mend))
    ]
    if not fitting:
        return ()
    least = min(mend.cost for mend, _ in fitting)
    first = fitting[0][1]
    return tuple(
        (mend, worked)
        for at, (mend, worked) in enumerate(fitting)
        if mend.cost == least and (not at or worked != first)
    )


def _may_be_idle(mend: Mend) -> bool:
    """Return whether a row with a change may work nothing: if nothing is lost, or what is told beside it."""
    return mend.told or mend.kind is MendKind.CUT


def rows_mended(mend: Mend, left: LeftOpen) -> tuple[str, ...]:
    """Write a row with a change as rows of the file: what is said, what is read, what stays open.

    Args:
        mend: The change.
        left: The row.
    """
    said: tuple[str, ...] = ()
    if mend.kind is MendKind.STRUCK:
        said = (f"{_STRUCK}{mend.words}",)
    elif mend.kind is MendKind.SPELT:
        said = (comment(f'"{mend.instead}" is printed "{mend.words}" in the row below.'),)
    return (*_open(mend.front, left), *said, mend.text, *_open(mend.behind, left))


def _open(words: str, left: LeftOpen) -> Sequence[str]:
    return marked_rows([words], left.where, "") if words else ()


def _row_of(mend: Mend) -> int:
    """Return which of the rows of a change is read, from 0."""
    return (2 if mend.front else 0) + (mend.kind is not MendKind.CUT)


def _is_known(words: str, text: str) -> bool:
    """Return whether she struck the same words in this file before."""
    said = f"{_STRUCK}{words}".casefold()
    return any(row.strip().casefold() == said for row in text.split("\n"))


def _show(mend: Mend, worked: Worked, asked: RowAsked) -> None:
    """Show a row with the words in question marked, and what the rest comes to."""
    plain = " ".join(asked.left.text.split())
    marked = f"{plain[: mend.start]}>>{plain[mend.start : mend.end]}<<{plain[mend.end :]}"
    above = mend.hangs or asked.so_far.stitches is None
    comes_to = _OPEN_ABOVE if above and worked.rounds else say_worked(worked)
    print_folded([f"  {marked}", f"  Read so: {mend.text}", *([f"  {comes_to}"] if comes_to else [])])


def say_worked(worked: Worked) -> str:
    """Return what a row comes to, as it is shown: `14 rows, 92 sts after; it was 118 before`.

    Empty if it works no row.
    """
    number = len(worked.rounds)
    if not worked.known:
        return "What it comes to is not known yet."
    if not number:
        return ""
    kind = row_word(worked.flat)
    after = f"{number} {kind}{'' if number == 1 else 's'}, {worked.after} sts after"
    return f"{after}{', as' if worked.before == worked.after else f'; it was {worked.before}'} before."


def _ask(mend: Mend) -> bool | str:
    """Ask what the change means.

    Returns:
        Whether the row is to be read with it; what she answered instead, if that is neither yes nor no.
    """
    default, taken = "", "yes"
    if mend.kind is MendKind.STRUCK:
        question = f'Do the words "{mend.words}" change anything you knit?'
        default, taken = "no" if mend.told else "", "no"
    elif mend.kind is MendKind.SPELT:
        question = f'Is "{mend.words}" a slip for "{mend.instead}"?'
    else:
        question = f'Does "{_begun(mend.words)}" come after that, as another order? It stays open.'
    known = {"yes": "yes", "y": "yes", "no": "no", "n": "no"}
    while True:
        answer = ask(f"{question} yes or no", default)
        if answer.lower() in known:
            return known[answer.lower()] == taken
        if answer not in ("?", "help"):
            return answer
        print_folded([_HELP[mend.kind], "Or answer at once what the row is: 12 rows, 84 sts; note; later."])


def _begun(words: str) -> str:
    """Return the first words of an order."""
    several = words.split()
    return words if len(several) <= 6 else f"{' '.join(several[:6])} …"
