"""Changes of needle and yarn along the way. No I/O."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from stepper.craft.needles import NEEDLE_ROLES, NEEDLE_SIZES, UK_SIZES, is_same_needle
from stepper.plan.drafts import DraftRound
from stepper.plan.state.needle_words import tell_names_crossed, tell_other_way
from stepper.plan.state.needles import Needles, yarns_in
from stepper.project.dialect import is_american
from stepper.project.instructions import AsPart, BreakYarn, Needle, Remark, WithYarn
from stepper.project.model import Fabric, Project, Section
from stepper.project.problems import Span, nearest, one_of
from stepper.regex import regex

_NO = regex(r"no\.?\s*(?P<number>\d+)", re.I)
"""A number that a US page takes from the US table, and an old UK page from its own."""


def change_needle(instruction: Needle, needles: Needles) -> None:
    """Go on with another needle."""
    if instruction.own and not instruction.kept and instruction.instead_of is not None:
        needles.remarks.append(_own_needle(instruction.mm, instruction.instead_of))
    bare = (instruction.kept or not instruction.own) and _NO.match(instruction.printed)
    mm = _by_page(instruction, needles) if bare else instruction.mm or _by_word(instruction, needles)
    if not mm:
        return
    needles.alterations.printed_mm = mm if instruction.kept else instruction.instead_of
    if instruction.kept:
        needles.remarks.append(f"keep your needle; the pattern changes to {mm:g} mm")
        return
    tell_other_way(instruction, mm, needles)
    tell_names_crossed(instruction, mm, needles)
    needles.needle_mm = mm
    needles.fabric = fabric_on(mm, needles.section.fabric, needles.project)
    needles.alterations.needle = (instruction.own,) if instruction.own else ()
    needles.remarks.append(f"change to {mm:g} mm needles")


def refuse_needles_by_turns(
    found: Sequence[DraftRound],
    before: DraftRound | None,
    place: Span,
    needles: Needles,
    *,
    tell: bool = True,
) -> bool:
    """Report rounds that come again and were on several needles; return whether they are refused.

    Where one change falls among them they are worked on the needle in hand, which is told; where they bring
    their own, nobody knows.

    Args:
        found: The rounds as they were worked last.
        before: The round before them; None if there is none.
        place: The words that work them again.
        needles: The knitting in hand.
        tell: Whether to tell of one change.
    """
    changes = sum(first.needle_mm != second.needle_mm for first, second in pairwise(found))
    if not changes:
        return False
    if changes == 1 and before is not None and before.needle_mm == found[0].needle_mm:
        told = f"what is worked again was on two needles: {needles.needle_mm:g} mm is taken for it."
        if tell:
            needles.warn(place, told)
        return False
    told = "what is worked again was on two needles, and nobody can tell whether these change again."
    needles.report(place, told, "Write the rounds out, with their needles.")
    needles.lose()
    return True


def fabric_on(needle_mm: float, own: Fabric, project: Project) -> Fabric:
    """Return the fabric that a section is on a needle: lengths become rounds by its gauge.

    Args:
        needle_mm: The needle in hand. Unit: mm.
        own: The fabric that the section names.
        project: The checked file.

    Returns:
        The one fabric of the file with that needle. The section's own if it has that needle or names none, or
        if the file has no other for it, or several, among which the needle does not choose.
    """
    if own.needle_mm is None or project.spacing is None:
        return own  # without a spacing the plan is made as it was before, for a journal knitted then
    if is_same_needle(own.needle_mm, needle_mm):
        return own
    on_it = [
        fabric
        for fabric in project.fabrics.values()
        if fabric.needle_mm is not None and is_same_needle(fabric.needle_mm, needle_mm)
    ]
    return on_it.pop() if len(on_it) == 1 else own


def goes_on_with_needle(section: Section, needles: Needles) -> bool:
    """Return whether a section goes on with the needle in hand, which is another than that of its gauge.

    A heading changes no needle: "Ribbing.", "Crown" stand in the middle of a piece. One that names its gauge
    in the file changes to the needle of that gauge. A plan without a spacing is made as it was before.
    """
    own, in_hand = needles.section.fabric.needle_mm, needles.needle_mm
    if not needles.count or section.own_gauge or own is None or in_hand is None:
        return False
    return needles.project.spacing is not None and not is_same_needle(own, in_hand)


def go_on_with_needle(section: Section, needles: Needles) -> None:
    """Begin a section with the needle in hand, which is told unless its first lines name one."""
    in_hand = needles.needle_mm or 0.0
    needles.fabric = fabric_on(in_hand, needles.section.fabric, needles.project)
    if not _names_needle(section):
        told = f"{section.name} goes on with {in_hand:g} mm needles: nothing names others here."
        needles.warn(section.place, told)


def take_needle(mm: float, section: Section, needles: Needles, instead_of: float | None = None) -> None:
    """Begin a section with another needle than the one in hand; it is said unless its first lines name one.

    Args:
        mm: The needle. Unit: mm.
        section: The section.
        needles: The knitting in hand.
        instead_of: The printed needle that it is taken for, if it is the knitter's own. Unit: mm.
    """
    in_hand, needles.needle_mm = needles.needle_mm, mm
    if in_hand is None or is_same_needle(in_hand, mm) or _names_needle(section):
        return
    if needles.project.spacing is None:
        return  # a plan without a spacing is made as it was before
    if instead_of is not None:
        needles.remarks.append(_own_needle(mm, instead_of))
    needles.remarks.append(f"change to {mm:g} mm needles")


def _names_needle(section: Section) -> bool:
    """Return whether a section names a needle before anything is worked in it, or works nothing."""
    for sentence in (one for line in section.lines for one in line.sentences):
        if isinstance(sentence, Needle | AsPart):
            return True  # a part worked again brings its own
        if not isinstance(sentence, Remark | WithYarn | BreakYarn):
            return False
    return True


def _own_needle(mm: float, printed: float) -> str:
    return f"your own needle, {mm:g} instead of {printed:g} mm"


def _by_word(instruction: Needle, needles: Needles) -> float:
    """Return the needle meant by `smaller` or `larger`, if the file names two sizes. Unit: mm."""
    if instruction.printed not in ("smaller", "larger", *NEEDLE_ROLES):
        return _by_number(instruction, needles)
    called = _called_so(instruction, needles)
    if called is not None:
        return called
    gauges = {fabric.needle_mm for fabric in needles.project.fabrics.values() if fabric.needle_mm}
    sizes = list(needles.project.needles_mm) or sorted(gauges)
    if instruction.printed in NEEDLE_ROLES:
        # Two gauges tell nothing of a needle that neither is named for.
        if instruction.printed in _OF_TWO and len(needles.project.needles_mm) == 2:
            which, at = _OF_TWO[instruction.printed]
            told = f"the {instruction.printed} needles are taken as the {which} of the two, {sizes[at]:g} mm"
            needles.warn(instruction.place, f"{told}: ribs are worked on the smaller.")
            return sizes[at]
    elif len(sizes) == 2:
        return sizes[0] if instruction.printed == "smaller" else sizes[1]
    needles.report(
        instruction.place,
        f'"{instruction.printed} needles" is clear only where the file names two sizes, by its gauges or '
        f"under `needles`; it names {one_of(f'{size:g} mm' for size in sizes) or 'none'}.",
        "Give the size in millimetres, for example 3.75 mm needles.",
        kind="needles",
    )
    return 0.0


_OF_TWO = {"rib": ("smaller", 0), "main": ("larger", 1)}
"""Which of two needles are those for ribs and edges, and those for the fabric. Source: common practice."""


def _called_so(instruction: Needle, needles: Needles) -> float | None:
    """Return the one needle that the file, in its needles or gauges, calls as the line does. Unit: mm."""
    if instruction.printed not in NEEDLE_ROLES:
        return None
    name = regex(rf"\b{NEEDLE_ROLES[instruction.printed]}\b", re.I)
    project = needles.project
    named = {mm for words, mm in project.needle_names if name.search(words)}
    if not named and not project.needles_mm:
        gauges = [(one.name.replace("_", " "), one.needle_mm) for one in project.fabrics.values()]
        named = {mm for words, mm in gauges if mm and name.search(words)}
    return named.pop() if len(named) == 1 else None


def _by_number(instruction: Needle, needles: Needles) -> float:
    """Return the needle meant by "size 8", of two tables or in mm: the one that the file names. Unit: mm."""
    named = {fabric.needle_mm for fabric in needles.project.fabrics.values() if fabric.needle_mm}
    named |= set(needles.project.needles_mm)
    number = re.sub(
        r"^size\s*#?\s*|\s+(?:(?:circular|double-pointed)\s+)?needles?$", "", instruction.printed, flags=re.I
    )
    american = next((size.mm for size in NEEDLE_SIZES if size.us == number and not size.also_mm), None)
    british = UK_SIZES.get(int(number)) if number.isdigit() else None
    metric = next((mm for mm in named if f"{mm:g}" == number), None)
    both: dict[str, float | None] = {"US": american, "UK": british}
    fits = {table: mm for table, mm in both.items() if mm in named}
    if not fits and metric is not None:
        fits = {"millimetres": metric}
    if len(fits) == 1:
        ((table, mm),) = fits.items()
        called = f"{mm:g} mm" if mm == metric else f"{table} {number}, {mm:g} mm"
        needles.warn(
            instruction.place,
            f'"{instruction.printed}" is taken as {called}, as a gauge of the file names.',
        )
        return mm
    meant = one_of(f"{mm:g} mm ({table})" for table, mm in both.items() if mm is not None)
    needles.report(
        instruction.place,
        f'"{instruction.printed}" does not say of which table: {meant or "none has it"}.',
        "Give the size in millimetres, for example 3.75 mm needles.",
    )
    return 0.0


def _by_page(instruction: Needle, needles: Needles) -> float:
    """Return the needle meant by "No. 2 needles": US on a page in US wording, else old UK; told. Unit: mm."""
    match = _NO.match(instruction.printed)
    assert match is not None
    number = match["number"]
    named = {fabric.needle_mm for fabric in needles.project.fabrics.values() if fabric.needle_mm}
    american = next((size for size in NEEDLE_SIZES if size.us == number), None)
    text = " ".join(line.text for line in needles.project.lines)
    if american is None or not is_american(text) or (instruction.mm in named and american.mm not in named):
        needles.warn(
            instruction.place,
            f'"{instruction.printed}" is taken as the old UK size, {instruction.mm:g} mm.',
        )
        return instruction.mm
    if american.also_mm and american.mm not in named:
        sizes = one_of(f"{mm:g} mm" for mm in sorted((american.mm, *american.also_mm)))
        needles.report(
            instruction.place,
            f'"{instruction.printed}" on a page in US wording is US {number}, which is sold as {sizes}.',
            "Give the size in millimetres, for example 3.75 mm needles.",
        )
        return 0.0
    needles.warn(
        instruction.place,
        f'"{instruction.printed}" is taken as US {number}, {american.mm:g} mm: the page is in US wording.',
    )
    return american.mm


def take_yarn(instruction: WithYarn, needles: Needles) -> None:
    """Go on with another yarn."""
    key = yarn_key(instruction.yarn, instruction.place, needles)
    if key is None:
        return
    needles.last.yarn_named = needles.last.yarn_taken = len(needles.drafts)
    _leave_two_yarns(instruction.place, needles)
    if needles.stripes is not None:
        needles.yarn = needles.stripes.last or needles.yarn
        needles.leave_stripes()
    if key != needles.yarn or needles.section.own_yarn_again:
        needles.yarn = key
        needles.remarks.append(f"with {needles.project.yarns[key].name}")
    needles.section.own_yarn_again = False


def break_yarn(instruction: BreakYarn, needles: Needles) -> None:
    """Have a yarn cut, or all contrast yarns ("Break CCs"), before the next round or after the last."""
    contrasts = [key for key in needles.project.yarns if re.fullmatch(r"CC\d?", key)]
    if instruction.yarn and instruction.yarn.lower() == "ccs" and contrasts:
        for contrast in contrasts:
            break_yarn(replace(instruction, yarn=contrast), needles)
        return
    words, key = "break the yarn", None
    if instruction.yarn:
        key = yarn_key(instruction.yarn, instruction.place, needles)
        if key is None:
            return
        words = f"break {needles.project.yarns[key].name}"
        if needles.stripes is not None and key in needles.stripes.yarns:
            needles.yarn = needles.stripes.last or needles.yarn
            needles.leave_stripes()
        needles.last.yarn_named = len(needles.drafts)
        _leave_two_yarns(instruction.place, needles)
    if needles.count == 0 and needles.drafts:
        # The stitches are bound off: there may be no further round to say it with.
        last = needles.drafts[-1]
        last.remarks = (*last.remarks, f"{words} when it is done")
        return
    needles.remarks.append(words)
    if key == needles.yarn != needles.section.yarn:
        needles.yarn, needles.section.own_yarn_again = needles.section.yarn, True


def _leave_two_yarns(place: Span, needles: Needles) -> None:
    """End a pattern in two yarns where one is named alone: "Continue in MC". Source: common practice."""
    known = needles.established
    if any(len(yarns_in(draft.phrase)) > 1 for draft in needles.drafts[known.start : known.end]):
        known.one_yarn_since = place.line


def yarn_key(name: str, place: Span, needles: Needles) -> str | None:
    """Return the key of the yarn that a line names; None, reported, if the file has no such yarn."""
    keys = {key.lower(): key for key in needles.project.yarns}
    key = keys.get(name.lower())
    if key is None:
        # "Change to white": the one yarn that is called so.
        called = [
            yarn.key for yarn in needles.project.yarns.values() if name.lower() in yarn.name.lower().split()
        ]
        if len(called) == 1:
            return called.pop()
        hint = nearest(name, keys.values()) or f"The yarns are {one_of(keys.values())}."
        needles.report(place, f'there is no yarn "{name}".', hint)
    return key
