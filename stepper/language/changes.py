"""What changed in a pattern, in a breath or two. No I/O."""

from __future__ import annotations

from typing import assert_never

from stepper.craft.rows import row_word
from stepper.language.measures import plural
from stepper.language.places import sentence_case
from stepper.plan.under_way.carry import ChangeKind, Difference
from stepper.plan.under_way.resuming import PlaceChoice
from stepper.session.effects import AskPlace, TellChanges, TellChosen

MOST_TOLD = 4
"""Most changes told one by one; of the rest only the number. Source: chosen for the ear, see
`steps.BREATH`."""


def tell_changes(effect: TellChanges) -> str:
    """Say what changed since the last sitting, which of it is already knitted, and what no longer fits."""
    sentences = ["The pattern has changed since last time."]
    if not effect.comparable:
        sentences.append("The earlier version can no longer be read, so check the place yourself.")
    elif not effect.changes:
        sentences.append("No round is different.")
    # What is already knitted matters most: reading on cannot change it.
    ordered = sorted(effect.changes, key=lambda change: not change.knitted)
    sentences += [tell_change(change) for change in ordered[:MOST_TOLD]]
    if len(ordered) > MOST_TOLD:
        sentences.append(f"And {len(ordered) - MOST_TOLD} more.")
    if not effect.found:
        sentences.append("The round you were in is no longer as it was; this is the nearest to it.")
    if effect.have != effect.want:
        sentences.append(
            f"You have {plural(effect.have, 'stitch', 'stitches')} where it now wants {effect.want}."
        )
    if effect.unplaced:
        rounds = plural(effect.unplaced, "round")
        counted = f"You had counted {rounds} of a row that was not read"
        sentences.append(f"{counted}, and are in front of them: say {rounds} done.")
    return " ".join(sentences)


def tell_change(change: Difference) -> str:
    """Say one change."""
    if change.first == change.last:
        rounds = f"round {change.first}"
    else:
        rounds = f"rounds {change.first} to {change.last}"
    name = f"{sentence_case(change.section)}, {rounds}"
    if change.label:
        name += f", {change.label}"
    match change.kind:
        case ChangeKind.RENAMED:
            return f"{sentence_case(change.was)} is now called {change.section}."
        case ChangeKind.CHANGED if change.rounds_before != change.rounds_after:
            what = f"changed, {plural(change.rounds_before, 'round')} before"
        case ChangeKind.CHANGED | ChangeKind.ADDED | ChangeKind.REMOVED:
            what = str(change.kind)
        case _:  # pragma: no cover - there is no other kind
            assert_never(change.kind)
    if change.count_before != change.count_after:
        what += f", {change.count_after} stitches after it and not {change.count_before}"
    return f"{name}: {what}, {'already knitted' if change.knitted else 'still to come'}."


def ask_place(effect: AskPlace) -> str:
    """Ask where to go on, giving for each place what comes off first and whether the count fits there."""
    if effect.later:
        return "I will ask again next time where to go on in the changed pattern."
    offers = [f"{number}: {name_place_choice(each)}" for number, each in enumerate(effect.choices, start=1)]
    return f"Where do you go on? {' '.join(offers)} Say: take number 1."


def tell_choice(effect: TellChosen) -> str:
    """Say what has to be done at the chosen place before going on."""
    choice = effect.choice
    sentences = [_taken_back(choice, "Take back")] if _taken_back(choice, "Take back") else []
    if choice.have != choice.want:
        have = plural(choice.have, "stitch", "stitches")
        sentences.append(f"You have {have} where it wants {choice.want}.")
    return " ".join(["Going on in the changed pattern.", *sentences])


def name_place_choice(choice: PlaceChoice) -> str:
    """Say one place where the knitting may go on, whether the count fits there and what comes off first."""
    word = row_word(choice.flat)
    if choice.number:
        where = f"{sentence_case(choice.section)}, {word} {choice.number}"
        where += f", {choice.label}" if choice.label else ""
        where += f", stitch {choice.stitch}" if choice.stitch else ""
    else:
        where = f"the end of {choice.section}"
    fits = f"{plural(choice.have, 'stitch', 'stitches')}, as it wants"
    if choice.places:
        fits = f"the rest spread anew, {choice.made} of {len(choice.places)} made"
    elif choice.have != choice.want:
        fits = f"you have {plural(choice.have, 'stitch', 'stitches')} and it wants {choice.want}"
    back = _taken_back(choice, "take back")
    return f"{where}; {fits}{'; ' + back.rstrip('.') if back else ''}."


def _taken_back(choice: PlaceChoice, verb: str) -> str:
    """Say what comes off first; empty if nothing does."""
    word = row_word(choice.flat)
    parts = [plural(choice.rounds_back, word)] if choice.rounds_back else []
    if choice.stitches_back:
        parts.append(f"{plural(choice.stitches_back, 'stitch', 'stitches')} of the {word} in hand")
    return f"{verb} {' and '.join(parts)}." if parts else ""
