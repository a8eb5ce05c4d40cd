"""Tell where a page calls needles larger that are smaller than those in hand, or the other way round. No I/O.

An old British number falls as the needle grows thicker, so that "change to larger needles, No. 10" behind
No. 8 goes to thinner ones. The size is taken: whether the word or the number is the slip nobody can tell.
"""

from __future__ import annotations

import re

from stepper.craft.needles import is_same_needle
from stepper.plan.state.needles import Needles
from stepper.project.instructions import Line, Needle, Remark
from stepper.regex import regex

_WORD = regex(r"\b(larger|bigger|smaller)\b(?=(?:\bno\.|[^.;:])*\bneedles?\b)", re.I)
_KIND = regex(
    r"(?:(?:with|using)\s+)?(?:an?\s+|the\s+)?(?:\d+(?:\.\d+)?\s*[-\s]?(?:cms?|in(?:ch(?:es)?)?\b|[\"\u2033\u201d])\s*)?(?:short(?:er)?\s+|long(?:er)?\s+)?"
    r"(?:(?:circular|double[-\s]pointed)\s+needles?|needles?|circulars?)|\w+\s+dpns?",
    re.I,
)
"""A needle called by its kind or its length, without a size."""
_OTHER = {"larger": "smaller", "smaller": "larger"}


def tell_other_way(instruction: Needle, mm: float, needles: Needles) -> None:
    """Tell the knitter if needles called larger are smaller than those last knitted with, or vice versa.

    Args:
        instruction: The change, by a word, a size or both.
        mm: The needle that it takes up. Unit: mm.
        needles: The knitting in hand, before the change.
    """
    before = needles.drafts[-1].needle_mm if needles.drafts and needles.count else None
    word = _word_of(instruction, needles)
    if before is None or not word or instruction.own or is_same_needle(before, mm):
        return
    if (mm > before) == (word == "larger"):
        return
    told = (
        f"the line calls these needles {word}, and {mm:g} mm is {_OTHER[word]} than the {before:g} mm in hand"
    )
    needles.warn(
        instruction.place, f"{told}: {mm:g} mm is taken. An old UK number rises as the needle grows thinner."
    )


def tell_names_crossed(instruction: Needle, mm: float, needles: Needles) -> None:
    """Tell the knitter if a gauge of the file that is called larger has the smaller needle, or vice versa."""
    if instruction.printed not in _OTHER:
        return
    for fabric in needles.project.fabrics.values():
        named = re.search(r"\b(larger|bigger|smaller)\b", fabric.name.replace("_", " "), re.I)
        if named is None or fabric.needle_mm is None:
            continue
        called = "smaller" if named.group(1).lower() == "smaller" else "larger"
        if (called == instruction.printed) != is_same_needle(fabric.needle_mm, mm):
            called_so = f'the file calls its gauge on {fabric.needle_mm:g} mm "{fabric.name}"'
            told = f'"{instruction.printed} needles" is taken as {mm:g} mm, by their size; {called_so}.'
            needles.warn(instruction.place, told)
            return


def tell_needle_unsaid(line: Line, needles: Needles) -> None:
    """Tell the knitter on which needle a piece begins, if its line names one by its kind or length alone.

    "With circular needle, pick up 80 sts": where a page has two sizes, its front matter says which it is.
    """
    sizes = {fabric.needle_mm for fabric in needles.project.fabrics.values() if fabric.needle_mm}
    sizes |= {*needles.project.needles_mm, *(draft.needle_mm for draft in needles.drafts if draft.needle_mm)}
    in_hand = needles.needle_mm or needles.fabric.needle_mm
    if needles.count or in_hand is None or len(sizes) < 2:
        return
    said = [*line.said, *(one.text for one in line.sentences if isinstance(one, Remark))]
    if any(map(_KIND.fullmatch, said)) and not any(isinstance(one, Needle) for one in line.sentences):
        told = f"which size is not said here: {in_hand:g} mm is taken."
        needles.warn(line.place, f'{told} Write "With 3.5 mm needles" if it is another.')


def _word_of(instruction: Needle, needles: Needles) -> str:
    """Return `larger` or `smaller` as the line says of its needles; empty if it says neither, or both."""
    if instruction.printed in _OTHER:
        return instruction.printed
    lines = needles.project.lines
    text = next((line.text for line in lines if line.place.line == instruction.place.line), "")
    words = {"smaller" if word.lower() == "smaller" else "larger" for word in _WORD.findall(text)}
    return words.pop() if len(words) == 1 else ""
