"""The rounds for paper: what is worked, how many stitches there are, and a box to tick for each. Pure.

Sections that are worked alike are written once, with a column of boxes for each; so is what is printed once
for two, such as "sleeves" or "the second sock is the same".
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import Final

from stepper.craft.rows import row_word
from stepper.language.measures import length, plural
from stepper.language.places import end_sentence, sentence_case
from stepper.plan.alike import fold_alike
from stepper.plan.model import Plan, Round
from stepper.plan.stitches.abbreviate import in_its_yarn
from stepper.plan.yarn.worked_twice import second_pieces
from stepper.project.model import Project
from stepper.report.measure.fabrics import Fabrics
from stepper.report.measure.tape import is_whole
from stepper.report.sheet.alternation import FirstOfRow, fold_alternating
from stepper.report.sheet.blocks import Block, CountCheck, RoundRow, RoundTable, SheetHeading, TickBox
from stepper.report.sheet.pairs import find_pairs, join_words, merge_rows, tell_apart

_SEEN: Final = ("after the increases", "after the decreases")


def lay_out_rounds(plan: Plan, project: Project) -> Iterator[Block]:
    """Lay out every section with its rounds.

    Args:
        plan: The plan as knitted.
        project: The checked file, for its gauges.
    """
    sections = {name: [each for each in plan.rounds if each.section == name] for name in plan.sections}
    reached = _lengths(plan, project)
    rows = {
        name: tuple(fold_alternating(tuple(_entries(rounds, plan, reached))))
        for name, rounds in sections.items()
    }
    pairs = find_pairs(plan, rows)
    again = {index for piece in second_pieces(plan) for index in piece}
    place = 0
    for name, rounds in sections.items():
        if name in pairs.values():
            continue
        word = row_word(all(each.flat for each in rounds if each.before and each.after))
        note = plural(len(rounds), word)
        other = pairs.get(name)
        shown, title = rows[name], name
        pieces: tuple[str, ...] = ("Done",)
        if other is not None:
            shown = merge_rows(rows[name], rows[other], (name, other)) or shown
            pieces, title, note = tell_apart(name, other), join_words(name, other) or name, f"{note} each"
        elif again.issuperset(each.index for each in rounds):
            shown, pieces, note = tuple(map(_twice, shown)), ("First", "Second"), f"{note}, worked twice"
        key = f"section-{place}"
        place += 1
        yield SheetHeading(level=3, text=sentence_case(title), note=note, key=key)
        yield RoundTable(key=key, word=word.capitalize(), pieces=pieces, rows=shown)


def _entries(rounds: Sequence[Round], plan: Plan, reached: Sequence[float]) -> Iterator[FirstOfRow]:
    told: tuple[str, ...] = ()
    for first, last in fold_alike(rounds):
        numbers = str(first.number) if first is last else f"{first.number}–{last.number}"
        side = f" {first.side}" if first.flat and first is last else ""
        before = plan.rounds[first.index - 1] if first.index else None
        words = sentence_case(in_its_yarn(first, before, plan)) + "."
        due = last.checkpoint
        check = None
        if due is not None:
            far = reached[last.index]
            said = length(far, plan.units) if far else ""
            # That the stitches have changed is seen beside the count.
            reason = "" if first.before != last.after and due.reason in _SEEN else due.reason
            check = CountCheck(expect=due.expect, reason=reason, length=said)
        row = RoundRow(
            numbers=numbers + side,
            remarks=tuple(end_sentence(sentence_case(remark)) for remark in first.remarks),
            label=first.label or "",
            words=(words + (f" (size {first.size})" if first.label else ""),),
            altered=_altered(first.altered, told),
            check=check,
            before=first.before,
            after=first.after,
            boxes=(tuple(map(_box, plan.rounds[first.index : last.index + 1])),),
        )
        told = first.altered
        yield FirstOfRow(first, row)


def _altered(now: tuple[str, ...], told: tuple[str, ...]) -> str:
    """Say an alteration in the round that it begins in, not again in every round that it goes on in."""
    new = [rule for rule in now if rule not in told]
    if new:
        return f"Altered from here: {'; '.join(new)}."
    return "As printed from here." if told and not now else ""


def _lengths(plan: Plan, project: Project) -> list[float]:
    """Return how long its section is after every round, on the needles. Unit: mm; 0 without a gauge."""
    fabrics = Fabrics(project)
    found: list[float] = []
    for each in plan.rounds:
        goes_on = each.index and plan.rounds[each.index - 1].section == each.section
        fabric = fabrics.of(each)
        taller = fabric.gauge.round_mm if fabric is not None and is_whole(each) else 0.0
        found.append((found[-1] if goes_on else 0.0) + taller)
    return found


def _box(round_: Round) -> TickBox:
    word = row_word(round_.flat)
    return TickBox(number=round_.number, said=f"{sentence_case(round_.section)}, {word} {round_.number}")


def _twice(row: RoundRow) -> RoundRow:
    """Add the boxes of a second piece."""
    (boxes,) = row.boxes
    second = tuple(TickBox(number=each.number, said=f"{each.said}, second") for each in boxes)
    first = tuple(TickBox(number=each.number, said=f"{each.said}, first") for each in boxes)
    return replace(row, boxes=(first, second))
