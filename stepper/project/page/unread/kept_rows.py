"""Write what a knitter answers about an unread row into the text of a project file. No I/O.

Every function takes the whole text of a file and returns it changed in the rows named and nowhere else.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from stepper.project.page.marks import MARK
from stepper.project.page.quoting import comment, value, writable
from stepper.project.page.stops import sentences_of
from stepper.project.page.unread.proposals import LONGEST, NUMBER, Kept, printed_change, printed_count
from stepper.project.reading.own_words import UNCOUNTED
from stepper.regex import regex

_HEAD: Final = regex(
    r"^(?P<head>\W*(?:(?:[\w'-]+\s+){0,3}?(?:rows?|rnds?|rounds?)\b[^:.]{0,40}:"
    r"|\d+(?:st|nd|rd|th)\s+(?:rows?|rnds?|rounds?)\b[^:.]{0,30}[:.]))\s*(?=\S)",
    re.I,
)
_COUNT_BEHIND: Final = regex(
    r"(?:(?<=[.!?)])\s+[(\[]?|\s*[–—=]\s*|\s+-\s+|\s*[(\[])"
    rf"{NUMBER}(?:\s+[a-z]+){{0,2}}?\s*(?:sts?|stitches)\b[^.\d]{{0,24}}[.;]?\s*$",
    re.I,
)
"""The count that ends the words of a row, with what joins it to them."""
_ROUNDS: Final = regex(r"\b(?:rnds?|rounds?)\b", re.I)


def write_kept(
    words: str, kept: Kept, *, rows: str = "", count: str = "", moved: str = "", flat: bool | None = None
) -> tuple[str, ...]:
    """Write a row as the knitter keeps it.

    Args:
        words: The words of the page.
        kept: What she keeps it as.
        rows: How many rows, a number or a list, or how long ("until piece measures 12 cm"); empty for one.
        count: The stitches after it, a number, a list or a change ("4 sts dec'd"); empty for the same.
        moved: What is cast on or picked up, or goes on hold ("54 for left sleeve; 54 for right sleeve").
        flat: Whether the piece is worked in rows there; None if not known.

    Returns:
        The rows of the file, without indentation. The first that is read is to be taken: what stands before
        the colon of an old page may not be read, and its words are then kept whole.
    """
    plain = " ".join(words.split())
    if kept is Kept.NOTE:
        return (f"Note: {plain}",)
    if kept is Kept.OUT:
        return (comment(plain),)
    if kept in (Kept.CAST_ON, Kept.PICK_UP):
        verb = "cast on" if kept is Kept.CAST_ON else "pick up"
        return (f"Own words, {verb} {moved} sts: {_ended(plain)}",)
    if kept is Kept.BIND_OFF:
        return (f"Own words, bind off all sts: {_ended(plain)}",)
    if kept is Kept.HOLD:
        return (f"Own words, {_holds(moved)}: {_counted(plain, count)}",)
    several = rows not in ("", "1")
    head, plain = _take_aside(plain)
    made = []
    if head and not several:
        made.append(f"{head} Own words: {_counted(plain.removeprefix(head).lstrip(), count)}")
    if not several:
        lasts = ""
    elif rows[0].isdigit():
        round_ = flat is False or (flat is None and bool(_ROUNDS.search(plain[:LONGEST])))
        lasts = f", {rows} {'rounds' if round_ else 'rows'}"
    else:
        lasts = f", {rows}"
    made.append(f"Own words{lasts}: {_counted(plain, count)}")
    return tuple(made)


def write_numbered(words: str, count: str) -> tuple[str, ...]:
    """Write a row whose head says which rows it is, all of which leave the same number."""
    head, plain = _take_aside(" ".join(words.split()))
    return (f"{head} Own words: {_counted(plain.removeprefix(head).lstrip(), count)}",) if head else ()


def _take_aside(plain: str) -> tuple[str, str]:
    """Return the head of a row and the row; a name in brackets in the head, "Rnd 15 (shift):", behind it."""
    match = _HEAD.match(plain)
    if match is None:
        return "", plain
    head = match["head"].strip()
    aside = re.search(r"\s*\((?![RW]S\b)(?P<name>[^()]*[a-z][^()]*)\)(?=\s*:$)", head, re.I)
    if aside is None or not re.search(r"\d", head[: aside.start()]):
        return head, plain
    head = f"{head[: aside.start()]}:"
    return head, f"{head} {aside['name'].strip()}: {plain[match.end() :]}"


def write_each(words: str, counts: Sequence[str], *, uncounted: bool = False) -> tuple[str, ...]:
    """Write rows one by one: the words once as a note, then a row for each with its count.

    Args:
        words: The words of the page, which are for all of the rows.
        counts: The stitches after each row, a number or a list; empty for the same as before it, `0` at the
            end where all are bound off.
        uncounted: Whether nobody knows the count of any but the last, and none of them is to be said.
    """
    plain = " ".join(words.split())
    rows = [f"Note: {plain}"]
    for number, count in enumerate(counts, start=1):
        which = f"by the words above{f', row {number} of {len(counts)}' if len(counts) > 1 else ''}"
        which += f", {UNCOUNTED}." if uncounted and number < len(counts) else "."
        if count == "0":
            rows.append(f"Own words, bind off all sts: {which}")
        else:
            rows.append(f"Own words: {which}{f' {count} sts.' if count else ''}")
    return tuple(rows)


def split_sentences(words: str) -> list[str]:
    """Split the words of a row into sentences; several only if they may be settled one by one."""
    return sentences_of(" ".join(words.split()))


def marked_rows(sentences: Sequence[str], where: str, why: str) -> list[str]:
    """Write sentences as notes, each under a mark of its own.

    Args:
        sentences: The words.
        where: The row of the page: `row 87`.
        why: What is not understood.
    """
    told = f": {why}" if why else "."
    return [
        row
        for sentence in sentences
        for row in (f"# {MARK} ({where or 'row 0'} of the text){told}", f"Note: {writable(sentence)}")
    ]


def put_rows(text: str, first: int, last: int, rows: Sequence[str]) -> str:
    """Put rows in the place of some rows of a file.

    Args:
        text: The whole file.
        first: The first row replaced, from 1; its indentation is that of the new rows.
        last: The last.
        rows: The new rows, without indentation; none takes the old ones out.
    """
    lines = text.split("\n")
    old = lines[first - 1]
    indent = old[: len(old) - len(old.lstrip())]
    return "\n".join([*lines[: first - 1], *(f"{indent}{row}" for row in rows), *lines[last:]])


def take_mark_off(text: str, row: int) -> str:
    """Take the mark off a row of a file, from 1: the whole row if nothing else stands in it."""
    lines = text.split("\n")
    bare = re.sub(rf"(?:^|\s+)# ?{MARK}\b.*$", "", lines[row - 1])
    lines[row - 1 : row] = [bare] if bare.strip() else []
    return "\n".join(lines)


def put_value(text: str, row: int, old: str, new: str) -> str:
    """Put a value in the place of another on a row of a file that bears a mark, and take the mark off.

    Args:
        text: The whole file.
        row: The row, from 1.
        old: A regular expression for what is replaced; the first match counts.
        new: What takes its place, as it stands in the file.
    """
    return take_mark_off(put_in_row(text, row, old, new), row)


def put_in_row(text: str, row: int, old: str, new: str) -> str:
    """Put something in the place of another on a row of a file.

    Args:
        text: The whole file.
        row: The row, from 1.
        old: A regular expression for what is replaced; the first match counts.
        new: What takes its place, as it stands in the file.
    """
    lines = text.split("\n")
    lines[row - 1] = re.sub(old, lambda _: new, lines[row - 1], count=1)
    return "\n".join(lines)


def keep_for_size(text: str, name: str) -> str:
    """Write that a file is kept for the size that is knitted alone (`only`, below `size`).

    Args:
        text: The whole file.
        name: The size.
    """
    written = value(name)
    block = re.compile(r"^(?P<in>[ \t]+)size:[^\n]*$", re.M)
    knit = re.search(r"^knit:(?P<flow>[ \t]*\{[^}\n]*\})?[^\n]*$", text, re.M)
    if knit is None:
        return text
    if knit["flow"] is not None:
        end = knit.end("flow") - 1
        return f"{text[:end].rstrip()}, only: {written}{text[end:]}"
    size = block.search(text, knit.end())
    if size is None:
        return text
    return f"{text[: size.end()]}\n{size['in']}only: {written}{text[size.end() :]}"


def _holds(moved: str) -> str:
    parts = []
    for each in moved.split(";"):
        number, _, name = each.strip().partition(" for ")
        parts.append(f"hold {number.strip()} sts" + (f" for {name.strip()}" if name.strip() else ""))
    return ", ".join(parts)


def _counted(words: str, count: str) -> str:
    """Return words with the count behind them, which is not said twice."""
    if not count:
        return _ended(words)
    numbers = set(re.findall(r"\d+", count))
    said = words
    printed = _COUNT_BEHIND.search(words[-LONGEST:])
    if printed is not None and numbers <= set(
        re.findall(r"\d+", printed_count(words) or printed_change(words))
    ):
        said = words[: len(words) - len(printed[0])]
    behind = count if re.search(r"[a-z]", count) else f"{count} sts"
    return f"{_ended(said)} {behind}."


def _ended(words: str) -> str:
    """Return words that end as a sentence does."""
    plain = words.strip().rstrip(" ,;:=([–—-")
    return plain if plain.endswith((".", "!", "?")) else f"{plain}."
