"""Ask for a value of the file that the page does not say: size, length, gauge, name, two needles."""

from __future__ import annotations

import re
from collections.abc import Callable

from stepper.craft.figures import format_number
from stepper.project.lengths import read_length, read_needle, read_number
from stepper.project.page.quoting import size_line, value
from stepper.project.page.unread.kept_rows import put_in_row, put_rows, put_value, take_mark_off
from stepper.project.page.unread.left_open import LeftOpen, indent_of
from stepper.project.problems import one_of
from stepper.project.sizes import find_size, read_sizes
from stepper.settling.file_in_hand import FileInHand
from stepper.settling.prompting import LaterAsked, ask, ask_read, ask_right, ask_yes
from stepper.sitting.folding import print_folded

_MOST = 300.0
"""Most stitches or rows of a gauge, as the file allows."""
_SIZE_KNITTED = r"(?<=size:)\s*(?:\"[^\"]*\"|[^#\n,}]*?)(?=\s*[#,}])"
"""The size that is knitted, alone on its row or among others in braces."""


def ask_value(left: LeftOpen, file: FileInHand) -> str:
    """Ask for a value and return the text of the file with it.

    Args:
        left: The value and what the mark says of it.
        file: The file.

    Raises:
        LaterAsked: It is left open; `BackAsked` and `StopAsked` likewise.
    """
    for said, ask_it in _BY_MARK:
        if said in left.why:
            return ask_it(left, file)
    ask_right("Is it right as it stands?")
    return take_mark_off(file.text, left.first)


def ask_needles(file: FileInHand) -> str:
    """Ask which two needles "smaller" and "larger" are, and return the text of the file with them.

    Raises:
        LaterAsked: It is left open; `BackAsked` and `StopAsked` likewise.
    """
    print_folded(["The lines speak of a smaller and a larger needle, and the file does not say which."])
    told = "Write it as 3.25 mm, or as US 3."
    sizes = [
        ask_read(f"The {which} needle?", default, lambda said: _mm(said) or told)
        for which, default in (("smaller", "later"), ("larger", ""))
    ]
    rows = file.text.split("\n")
    listed = ", ".join(f"{format_number(mm)} mm" for mm in sorted(sizes))
    named = next((at for at, row in enumerate(rows, start=1) if row.startswith("needles:")), 0)
    if named:
        return put_rows(file.text, named, named, [f"needles: {listed}"])
    at = next((at for at, row in enumerate(rows, start=1) if row.startswith("sections:")), len(rows))
    return put_rows(file.text, at, at, [f"needles: {listed}", "", rows[at - 1]])


def _mm(answer: str) -> float | None:
    plain = read_number(answer)
    return read_needle(f"{plain} mm") if plain is not None else read_needle(answer)


def _size(left: LeftOpen, file: FileInHand) -> str:
    """Ask which size she knits."""
    told = f"The sizes are {one_of(file.sizes).replace(' or ', ' and ')}."

    def read(answer: str) -> int | str:
        found = find_size(answer, file.sizes)
        return told if found is None else found

    file.size = file.sizes[ask_read(f"Which size do you knit: {one_of(file.sizes)}?", file.size, read)]
    return put_value(file.text, left.first, _SIZE_KNITTED, f" {value(file.size)}")


def _sizes(left: LeftOpen, file: FileInHand) -> str:
    """Ask what the sizes are called; they stand as numbers so far."""
    many = len(file.sizes)

    def read(answer: str) -> tuple[str, ...] | str:
        names = read_sizes(answer)
        if len(names) != many:
            return f"Its lists have {many} numbers, so write {many} names: S (M, L)."
        return names if len({name.lower() for name in names}) == many else "Each size has a name of its own."

    names = ask_read(f"What are its {many} sizes called?", size_line(file.sizes), read)
    text = put_value(file.text, left.first, r"(?<=sizes:)\s*[^#\n]*?(?=\s*#)", f" {size_line(names)}")
    old = file.sizes.index(file.size)
    renamed = re.sub(
        rf"^(\s+size:|knit:.*?\bsize:)[ \t]*{re.escape(value(file.size))}(?=[\s,}}]|$)",
        lambda found: f"{found[1]} {value(names[old])}",
        text,
        count=1,
        flags=re.M,
    )
    file.sizes, file.size = names, names[old]
    return renamed


def _no_sizes(left: LeftOpen, file: FileInHand) -> str:
    """Ask for the sizes where the page is not sure about them; as of one, its lists are asked about later."""

    def read(answer: str) -> tuple[str, ...] | str:
        names = read_sizes(answer)
        different = len({name.lower() for name in names}) == len(names)
        return names if names and different else "Write them as printed, each once: S (M, L)."

    print_folded(["Of one size, each of its lists of numbers is asked about where you come to it."])
    names = ask_read("Which sizes does it print?", "one", read)
    rows = [f"sizes: {size_line(names)}"]
    if len(names) > 1:
        rows += ["knit:", f"  size: {value(names[0])}  # LOOK: which size do you knit?"]
    file.sizes, file.size = names, names[0]
    return put_rows(file.text, left.first, left.first, rows)


def _length(left: LeftOpen, file: FileInHand) -> str:
    """Ask for a length that is left to her."""

    def read(answer: str) -> tuple[str] | str:
        length = answer if read_number(answer) is None else f"{answer} {'in' if file.inches else 'cm'}"
        values, told = read_length(length, inches=file.inches)
        if told or not values or values[0] <= 0:
            return "Write one length: 24 cm."
        return (length,) if len(values) == 1 else "It is one length, of the size that you knit: 24 cm."

    (length,) = ask_read(f"How long do you want the {left.key}?", "", read)
    return put_value(file.text, left.first, r":\s*(?=#)", f": {length}  ")


def _gauge(left: LeftOpen, file: FileInHand) -> str:
    """Ask for what is made up of a gauge."""
    over = "4 in" if file.inches else "10 cm"
    text = file.text
    asked = [("rounds", f"How many rows are {over} of it?")]
    if "no gauge" in left.why:
        asked.insert(0, ("stitches", f"Gauge: how many stitches are {over}?"))
    if "which of its needles" in left.why and "rows" not in left.why:
        asked = []
    for key, question in asked:
        amount = ask_read(question, "", _amount)  # what stands there is made up: Enter must not take it
        text = put_in_row(text, left.first, rf"\b{key}: [\d.]+", f"{key}: {format_number(amount)}")
    if "which of its needles" in left.why:
        now = re.search(r"\bneedle: (?P<now>[\d.]+ mm)", left.text)
        needle_mm = ask_read(
            "Which needle gives it?",
            now["now"] if now is not None else "",
            lambda said: _mm(said) or "Write it as 3.75 mm, or as US 5.",
        )
        needle = f"needle: {format_number(needle_mm)} mm"
        text = put_in_row(text, left.first, r"\bneedle: [\d.]+ mm", needle)
    return take_mark_off(text, left.first)


def _amount(answer: str) -> float | str:
    amount = read_number(answer)
    if amount is None or not 0.01 <= amount <= _MOST:
        return f"Write a number above 0, up to {_MOST:g}."
    return amount


def _yarn(left: LeftOpen, file: FileInHand) -> str:
    """Ask what a yarn is called."""
    now = re.search(r"name: (?P<now>\"[^\"]*\"|[^,}]+)", left.text)
    default = now["now"].strip().strip('"') if now is not None else ""
    answer = ask(f"What is the yarn {left.key} called?", default)
    return put_value(file.text, left.first, r"name: (?:\"[^\"]*\"|[^,}]+)", f"name: {value(answer)}")


def _chart(left: LeftOpen, file: FileInHand) -> str:
    """Ask whether rows of a chart that is not drawn are kept in own words; take its stand-in out."""
    print_folded(["Its rows can be knitted from the page, in your own words, without it."])
    if not ask_yes(f"Do without the chart {left.key}?"):
        print_folded([f"Draw it in the file then, in row {left.first}."])
        raise LaterAsked
    rows = file.text.split("\n")
    last = left.first
    indent = indent_of(rows[left.first - 1])
    while last < len(rows) and rows[last].strip() and indent_of(rows[last]) > indent:
        last += 1
    first = left.first
    more = last < len(rows) and rows[last].startswith(" " * indent)
    alone = rows[first - 2].startswith("charts:") and not more
    return put_rows(file.text, first - 1 if alone else first, last, [])


_BY_MARK: tuple[tuple[str, Callable[[LeftOpen, FileInHand], str]], ...] = (
    ("which size do you knit", _size),
    ("the text names no sizes", _sizes),
    ("the sizes are not sure", _no_sizes),
    ("how long do you want it", _length),
    ("no gauge was found", _gauge),
    ("the text gives no rows", _gauge),
    ("on which of its needles", _gauge),
    ("no yarn was found", _yarn),
    ("what is it called", _yarn),
    ("draws no such chart", _chart),
)
"""What a mark says, and what is asked then; any other value is right as it stands, or left open."""
