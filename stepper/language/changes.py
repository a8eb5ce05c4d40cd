"""What changed in a pattern, told in one breath or two. No I/O."""

from __future__ import annotations

from stepper.language.measures import plural
from stepper.language.places import sentence_case
from stepper.plan.carry import Change
from stepper.session.effects import TellChanges

MOST_TOLD = 4
"""Changes told one by one; of more, the number. Source: chosen for the ear, see `steps.BREATH`."""


def told_changes(effect: TellChanges) -> str:
    """Say what changed since the last sitting, what of it is already knitted, and what no longer fits."""
    sentences = ["The pattern has changed since last time."]
    if not effect.comparable:
        sentences.append("What it was before cannot be read any more, so look at the place yourself.")
    elif not effect.changes:
        sentences.append("No round of it is different.")
    # What is knitted already matters most: it cannot be changed by reading on.
    ordered = sorted(effect.changes, key=lambda change: not change.knitted)
    sentences += [told_change(change) for change in ordered[:MOST_TOLD]]
    if len(ordered) > MOST_TOLD:
        sentences.append(f"And {len(ordered) - MOST_TOLD} more.")
    if not effect.found:
        sentences.append("The round you were in is not there as it was; this is the nearest to it.")
    if effect.have != effect.want:
        sentences.append(
            f"You have {plural(effect.have, 'stitch', 'stitches')} where it now wants {effect.want}."
        )
    return " ".join(sentences)


def told_change(change: Change) -> str:
    """Say one change."""
    if change.first == change.last:
        rounds = f"round {change.first}"
    else:
        rounds = f"rounds {change.first} to {change.last}"
    name = f"{sentence_case(change.section)}, {rounds}"
    if change.label:
        name += f", {change.label}"
    what: str = change.kind
    if change.kind == "changed" and change.rounds_before != change.rounds_after:
        what = f"changed, {plural(change.rounds_before, 'round')} before"
    if change.count_before != change.count_after:
        what += f", {change.count_after} stitches after it and not {change.count_before}"
    return f"{name}: {what}, {'already knitted' if change.knitted else 'still to come'}."
