"""Find a round of another plan by names, equally far into the same section and label. Pure; only a hint."""

from __future__ import annotations

from collections.abc import Mapping

from stepper.plan.model import Plan


def same_distance(old: Plan, new: Plan, index: int, renamed: Mapping[str, str]) -> int:
    """Find the round as far from its label, or the beginning of its section, as one of the old plan.

    Args:
        old: The old plan.
        new: The new plan.
        index: A round of the old plan; the number of rounds for the end.
        renamed: Sections that have another name in the new plan, old to new.

    Returns:
        Its index, or the nearest in its stretch; if its section is gone, the first round of the next section
        that is left; otherwise as far along as the plan allows.
    """
    if index >= len(old.rounds) or not new.rounds:
        return len(new.rounds) if index >= len(old.rounds) else 0
    section = old.rounds[index].section
    inside = _section(new, renamed.get(section, section))
    if not inside:
        return _after_lost_section(old, new, index, renamed)
    start = _head(old, index)
    label = old.rounds[start].label
    stretch = _from(new, inside.start) if label is None else inside
    if label is None:
        return min(stretch.start + index - start, stretch.stop - 1)
    alike = [at for at in _section(old, section) if _same_name(old.rounds[at].label, label)]
    found = [at for at in inside if _same_name(new.rounds[at].label, label)]
    nth = alike.index(start)
    if nth < len(found):
        stretch = _from(new, found[nth])
        return min(stretch.start + index - start, stretch.stop - 1)
    # What was labelled may still be there without its label.
    return min(inside.start + old.rounds[index].number - 1, inside.stop - 1)


def _section(plan: Plan, name: str) -> range:
    """Return the rounds of a section."""
    places = [round_.index for round_ in plan.rounds if round_.section == name]
    return range(places[0], places[-1] + 1) if places else range(0)


def _head(plan: Plan, index: int) -> int:
    """Return the round with the label that a round belongs to, or else the first of its section."""
    section = plan.rounds[index].section
    start = index
    while start and plan.rounds[start].label is None and plan.rounds[start - 1].section == section:
        start -= 1
    return start


def _from(plan: Plan, start: int) -> range:
    """Return the rounds from one that begins a labelled line, or a section, up to the next such."""
    section, stop = plan.rounds[start].section, start + 1
    while (
        stop < len(plan.rounds) and plan.rounds[stop].label is None and plan.rounds[stop].section == section
    ):
        stop += 1
    return range(start, stop)


def _same_name(one: str | None, other: str | None) -> bool:
    return one is not None and other is not None and one.casefold() == other.casefold()


def _after_lost_section(old: Plan, new: Plan, index: int, renamed: Mapping[str, str]) -> int:
    """Find where to go on if the current section is gone: with the next section that is still there."""
    names = old.sections
    for name in names[names.index(old.rounds[index].section) + 1 :]:
        inside = _section(new, renamed.get(name, name))
        if inside:
            return inside.start
    return min(index, len(new.rounds))
