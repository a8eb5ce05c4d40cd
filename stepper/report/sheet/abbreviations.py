"""The abbreviations that the lines of a plan use, each with its meaning, so that the sheet needs no book.
Pure."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from typing import Final

from stepper.craft.how_made import explain_stitch
from stepper.craft.stitches import Kind, find_stitch, stitch
from stepper.language.abbreviations import WORDS
from stepper.plan.model import Plan, runs_written
from stepper.regex import regex

_MAIN: Final = regex(r"^(MC|CC|C)\s*(\d*)$", re.IGNORECASE)
_PLAIN_WORDS: Final = frozenset(("approx", "ch"))
# Words as well, or spelled out where they stand.


def list_abbreviations(plan: Plan, texts: Iterable[str]) -> tuple[tuple[str, str], ...]:
    """List what a sheet abbreviates.

    Args:
        plan: For its stitches and yarns.
        texts: Everything that stands on the sheet in the words of a pattern.

    Returns:
        Abbreviation and meaning: yarns first, then stitches by the alphabet, then other words.
    """
    whole = "\n".join(texts)
    return (*_yarns(plan), *_stitches(plan, whole), *_words(whole))


def explain_yarn(key: str, name: str) -> str:
    """Say what a yarn is that the lines name by its key: "main colour, tarn"."""
    match = _MAIN.match(key)
    if match is None:
        return f"the yarn {name}" if key != name else name
    role = "main colour" if match.group(1).upper() == "MC" else "contrast colour"
    number = f" {match.group(2)}" if match.group(2) else ""
    return f"{role}{number}, {name}"


def _yarns(plan: Plan) -> Iterator[tuple[str, str]]:
    for key, name in plan.yarns.items():
        if key != name:
            yield key, explain_yarn(key, name)


def _stitches(plan: Plan, whole: str) -> Iterator[tuple[str, str]]:
    codes = {run.stitch for each in plan.phrases for run in runs_written(each)}
    # A line for the whole garment, such as a decrease row told once, may name what no round shows.
    named = {
        found.code for word in set(re.findall(r"[a-z][\w&]*", whole.lower())) if (found := find_stitch(word))
    }
    for code in sorted(codes | named):
        entry = stitch(code)
        if entry.kind is Kind.OWN:
            continue  # its words stand in the row
        shown = code.upper() if entry.kind is Kind.CABLE else code
        spelled = entry.kind in (Kind.EDGE, Kind.SHIFT) or code in ("turn", "bead", "inc", "dec")
        if not spelled and _stands_in(shown.split()[0] if entry.kind is not Kind.CABLE else shown, whole):
            if " " in shown and entry.kind is not Kind.CABLE:
                head, tail = shown.split(" ", 1)
                if not re.search(rf"\b{re.escape(head)}\d* {re.escape(tail)}\b", whole, re.IGNORECASE):
                    continue
            yield shown, explain_stitch(code)


def _words(whole: str) -> Iterator[tuple[str, str]]:
    for word, meaning in sorted(WORDS.items()):
        shown = word.upper() if word in ("rs", "ws", "bor", "eor") else word
        if word not in _PLAIN_WORDS and _stands_in(shown, whole, exactly=True):
            yield shown, meaning


def _stands_in(word: str, whole: str, *, exactly: bool = False) -> bool:
    """Return whether an abbreviation is among the words, alone or with a number behind it."""
    pattern = rf"(?<![\w/]){re.escape(word)}(?:\d+)?(?![\w/])"
    return re.search(pattern, whole, 0 if exactly else re.IGNORECASE) is not None
