"""The abbreviations that the lines of a plan use, each with its meaning, so that the sheet needs no book.
Pure."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping
from types import MappingProxyType
from typing import Final

from stepper.craft.stitches import Kind, find_stitch, stitch
from stepper.language.abbreviations import WORDS
from stepper.plan.model import Plan, runs_written
from stepper.regex import regex

_HOW: Final[Mapping[str, str]] = MappingProxyType(
    {
        "k": "knit",
        "p": "purl",
        "sl": "slip as if to purl, unless the line says otherwise",
        "k1b": "knit into the stitch below the next one",
        "m1": "make one: lift the strand between the needles and knit it twisted",
        "m1l": "make one left: lift the strand from front to back, knit it through the back loop",
        "m1r": "make one right: lift the strand from back to front, knit it through the front loop",
        "m1p": "make one: lift the strand between the needles and purl it twisted",
        "m1lp": "make one left purlwise: lift the strand from front to back, purl it through the back loop",
        "m1rp": "make one right purlwise: lift the strand from back to front, purl it through the front loop",
        "kfb": "knit into front and back of one stitch",
        "pfb": "purl into front and back of one stitch",
        "kfbf": "knit into front, back and front of one stitch",
        "kyok": "knit, yarn over, knit, all into one stitch",
        "yo": "yarn over: bring the yarn over the needle for a new stitch with a hole below it",
        "yo2": "yarn over twice",
        "rli": "right lifted increase: knit into the right leg of the stitch below the next one",
        "lli": "left lifted increase: knit into the left leg of the stitch two below the last one",
        "k2tog": "knit two together; leans right",
        "p2tog": "purl two together",
        "ssk": "slip two one by one as if to knit, knit them together through the back loops; leans left",
        "ssp": "slip two one by one as if to knit, return them, purl them together through the back loops",
        "skp": "slip one as if to knit, knit one, pass the slipped one over; leans left",
        "k3tog": "knit three together; leans right",
        "sssk": "slip three one by one as if to knit, knit them together through the back loops; leans left",
        "sk2p": "slip one as if to knit, knit two together, pass the slipped one over; leans left",
        "s2kp": "slip two together as if to knit, knit one, pass both slipped ones over; stands upright",
        "pm": "place a marker",
        "sm": "slip the marker",
        "rm": "remove the marker",
        "w&t": "wrap the next stitch and turn",
        "ds": "double stitch: slip as if to purl, pull the yarn up over the needle until both legs show",
    }
)
# How a stitch is made, if its name does not say so. Source: Craft Yarn Council, knitting abbreviations, and
# common practice; from memory.

_MAIN: Final = regex(r"^(MC|CC|C)\s*(\d*)$", re.IGNORECASE)
_CABLE: Final = regex(r"^(\d+)/(\d+) (r|l)(p?)c$")
_UK_CABLE: Final = regex(r"^c(\d+)(f|b)$")
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


def explain_stitch(code: str) -> str:
    """Say how a stitch is made."""
    known = _HOW.get(code) or _explain_cable(code)
    return known or stitch(code).said.replace(" one ", " ").removesuffix(" one")


def _explain_cable(code: str) -> str:
    match = _CABLE.match(code)
    if match is not None:
        front, behind, lean, purled = match.groups()
        other = f"{'p' if purled else 'k'}{behind}"
        if lean == "r":
            how = f"{behind} to a cable needle behind, k{front}, {other} from it"
            return f"{front} over {behind} right cross: {how}"
        how = f"{front} to a cable needle in front, {other}, k{front} from it"
        return f"{front} over {behind} left cross: {how}"
    match = _UK_CABLE.match(code)
    if match is not None and int(match.group(1)) % 2 == 0:
        half = int(match.group(1)) // 2
        where = "in front" if match.group(2) == "f" else "behind"
        return f"cable: {half} to a cable needle {where}, k{half}, k{half} from it"
    return ""


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
