"""Rules for the cues that move the place. Each returns events or a refusal and changes nothing itself."""

from __future__ import annotations

from stepper.craft.rows import row_word
from stepper.plan.kinds import kind_of
from stepper.plan.model import Plan
from stepper.session.counting.checks import yarn_called
from stepper.session.counting.tally import count_between, markers_in
from stepper.session.cues import (
    AtMarker,
    AtStitch,
    Back,
    GoTo,
    Next,
    RoundsBack,
    RoundsDone,
    StitchesBack,
    YarnDone,
)
from stepper.session.decision import Decision, Refusal
from stepper.session.events import Advanced, Doubted, Jumped, Placed, Returned
from stepper.session.fault.tinking import reverse
from stepper.session.state import Doubt, DoubtKind, Position, State
from stepper.session.step_in_hand import step_before, step_in_hand
from stepper.session.stops import stop_in_hand

MOST_UNTOLD = 8
"""Rounds that may lie before the one she sees finished by its yarn: what a knitter works without a word, and
few enough that no other round in that yarn is meant. Chosen here."""

DIVISION_NAMES = ("division", "divide", "split")
"""What the round is called in which stitches are put on hold, where the pattern has no label for it. Common
practice."""


def advance(plan: Plan, state: State, cue: Next) -> Decision:
    """Finish the current step."""
    origin, round_ = state.place, plan.rounds[state.place.index]
    if stop_in_hand(plan, state):
        return (Advanced(at=cue.at, origin=origin, place=origin, stitches=0, work=kind_of(round_)),)
    part = step_in_hand(round_, state)
    place = _after(plan, origin.index, part.end)
    stitches = max(0, part.end - origin.stitch)
    return (Advanced(at=cue.at, origin=origin, place=place, stitches=stitches, work=kind_of(round_)),)


def go_back(plan: Plan, state: State, cue: Back) -> Decision:
    """Return to the beginning of the step before; from the middle of a step, to its own beginning."""
    origin = state.place
    if state.knitting.heard:  # to what comes before the step in hand
        return (Returned(at=cue.at, origin=origin, place=origin, stitches=0),)
    if origin == Position():
        return Refusal(sentence="This is the very beginning.")
    index = origin.index if origin.stitch else origin.index - 1
    start = step_before(plan.rounds[index], state, within=origin.stitch)
    place = Position(index=index, stitch=start)
    back = count_between(plan, place, origin)
    return (Returned(at=cue.at, origin=origin, place=place, stitches=back),)


def set_stitch(plan: Plan, state: State, cue: AtStitch) -> Decision:
    """Set the place within the round; its last stitch finishes it."""
    origin, round_ = state.place, plan.rounds[state.place.index]
    if not 0 <= cue.stitch <= round_.progress:
        return Refusal(sentence=f"This {row_word(round_.flat)} has {round_.progress} stitches.")
    return _placed(cue.at, plan, origin, _after(plan, origin.index, cue.stitch))


def set_marker(plan: Plan, state: State, cue: AtMarker) -> Decision:
    """Set the place to the next marker of the round."""
    origin, round_ = state.place, plan.rounds[state.place.index]
    ahead = [each for each in markers_in(round_) if each > origin.stitch]
    if not ahead:
        return Refusal(sentence=f"No marker lies ahead in this {row_word(round_.flat)}.")
    return _placed(cue.at, plan, origin, Position(index=origin.index, stitch=ahead[0]))


def go_to(plan: Plan, state: State, cue: GoTo) -> Decision:
    """Set the place to a round of a section, or to a section or label."""
    origin = state.place
    if not plan.rounds:
        return Refusal(sentence="There is nothing to knit in this file.")
    here = plan.rounds[min(origin.index, len(plan.rounds) - 1)]
    section, label = (here.section, None) if not cue.place else _named(plan, cue.place, here.section)
    if section is None:
        return Refusal(sentence=f"Nothing here is called {cue.place}.")
    inside = [round_ for round_ in plan.rounds if round_.section == section]
    number = cue.round_number if cue.round_number is not None else label or 1
    if not 1 <= number <= len(inside):
        return Refusal(sentence=f"{_sentence_case(section)} has {len(inside)} {row_word(here.flat)}s.")
    place = Position(index=inside[number - 1].index)
    back, last = max(0, count_between(plan, place, origin)), state.knitting.verified
    off_path = last is not None and not last.place <= place <= origin
    return (Jumped(at=cue.at, origin=origin, place=place, stitches=back, off_path=off_path),)


def rounds_done(plan: Plan, state: State, cue: RoundsDone) -> Decision:
    """Set the place behind rounds knitted without a cue, the one in hand being the first of them."""
    origin = state.place
    left = len(plan.rounds) - origin.index
    if cue.rounds < 1:
        return Refusal(sentence="Say how many rounds are done.")
    if cue.rounds > left:
        return Refusal(sentence=f"Only {left} {'is' if left == 1 else 'are'} left.")
    return _placed(cue.at, plan, origin, Position(index=origin.index + cue.rounds))


def yarn_done(plan: Plan, state: State, cue: YarnDone) -> Decision:
    """Set the place behind the next round that is worked in a yarn."""
    origin = state.place
    key = yarn_called(plan, cue.yarn)
    if key is None:
        known = f" There are: {', '.join(plan.yarns.values())}." if plan.yarns else ""
        return Refusal(sentence=f"No yarn here is called {cue.yarn}.{known}")
    for round_ in plan.rounds[origin.index :]:
        if any(run.yarn == key and run.progress for run in round_.runs):
            if round_.index > origin.index + MOST_UNTOLD:
                break
            return _placed(cue.at, plan, origin, Position(index=round_.index + 1))
    return Refusal(sentence=f"No round in {plan.yarns[key]} is near. Say go to round, and its number.")


def rounds_back(plan: Plan, state: State, cue: RoundsBack) -> Decision:
    """Return to the beginning of a round so many before the one in hand."""
    origin = state.place
    if cue.rounds < 0 and origin.index:
        if cue.heard is not None:  # a film may have said it, and the number behind it
            return Refusal(sentence=ask_how_far(lifeline_down(state)))
        return (Doubted(at=cue.at, doubt=Doubt(kind=DoubtKind.ROUNDS, place=origin)),)
    if not cue.rounds and not origin.stitch:
        return Refusal(sentence="You are at its beginning.")
    if cue.rounds > origin.index or cue.rounds < 0:
        many = f"Only {origin.index}" if origin.index else "None"
        return Refusal(sentence=f"{many} {'lie' if origin.index > 1 else 'lies'} behind.")
    if cue.wrong:
        return (Doubted(at=cue.at, doubt=Doubt(kind=DoubtKind.ROUNDS, place=origin, number=cue.rounds)),)
    place = Position(index=origin.index - cue.rounds)
    back = count_between(plan, place, origin)
    return (Returned(at=cue.at, origin=origin, place=place, stitches=back),)


def ask_how_far(lifeline: int) -> str:
    """Return what asks how many rounds were ripped.

    Args:
        lifeline: How far down the last lifeline lies; 0 for none. Unit: rounds.
    """
    asked = "How many rounds? Say: go back two rounds, or as many as it is."
    if not lifeline:
        return asked
    return f"{asked} Your lifeline is {lifeline} {'round' if lifeline == 1 else 'rounds'} down."


def lifeline_down(state: State) -> int:
    """Return how far down the last lifeline lies; 0 for none. Unit: rounds."""
    below = [each.index for each in state.knitting.lifelines if each.index < state.place.index]
    return state.place.index - below[-1] if below else 0


def stitches_back(plan: Plan, state: State, cue: StitchesBack) -> Decision:
    """Move the place back by stitches that are undone already."""
    origin = state.place
    back = reverse(plan, origin, cue.stitches) if cue.stitches > 0 else None
    if back is None:
        too_many = "So many stitches are not knitted yet."
        return Refusal(sentence=too_many if cue.stitches > 0 else "Say how many.")
    return (Returned(at=cue.at, origin=origin, place=back.place, stitches=back.stitches),)


def _placed(at: str, plan: Plan, origin: Position, place: Position) -> Decision:
    stitches, work = count_between(plan, origin, place), kind_of(plan.rounds[origin.index])
    return (Placed(at=at, origin=origin, place=place, stitches=stitches, work=work),)


def _after(plan: Plan, index: int, stitch: int) -> Position:
    """Return the place after a number of stitches of a round; after the last one, the next round."""
    if stitch >= plan.rounds[index].progress:
        return Position(index=index + 1)
    return Position(index=index, stitch=stitch)


def _named(plan: Plan, name: str, here: str) -> tuple[str | None, int | None]:
    """Find a section or a label by name: return the section and, for a label, its round in it.

    The current section is searched first, so that a label used in several sections means the nearest.
    """
    wanted = _plain(name)
    ordered = sorted(plan.rounds, key=lambda round_: round_.section != here)
    for round_ in ordered:
        if round_.label is not None and _plain(round_.label) == wanted:
            return round_.section, round_.number
    for section in plan.sections:
        if _plain(section) == wanted:
            return section, None
    if wanted in DIVISION_NAMES:
        for round_ in ordered:
            if round_.holds:
                return round_.section, round_.number
    return None, None


RIB_NAMES = ("rib", "ribbing")
"""What the rounds of a rib are called, where the pattern has no name for them. Common practice."""


def _begins_rib(plan: Plan, index: int) -> bool:
    """Return whether a rib begins at a round."""
    before = kind_of(plan.rounds[index - 1]) if index else None
    return kind_of(plan.rounds[index]) == "rib" != before


def round_called(plan: Plan, name: str, here: int) -> int | None:
    """Find the round that a label, a section or "the division" begins with.

    Args:
        plan: The plan as knitted.
        name: What was said, in any case.
        here: Index of the round in hand.

    Returns:
        Its index, the next one from here on rather than one that is done; None if nothing is called so.
    """
    wanted = _plain(name)
    found = [
        round_.index
        for round_ in plan.rounds
        if (round_.label is not None and _plain(round_.label) == wanted)
        or (round_.number == 1 and _plain(round_.section) == wanted)
    ]
    if not found and wanted in DIVISION_NAMES:
        found = [each.index for each in plan.rounds if each.holds]
    if not found and wanted:
        words = bare_words(wanted)
        found = [each.index for each in plan.rounds if each.number == 1 and words <= bare_words(each.section)]
    if not found and wanted in RIB_NAMES:
        found = [each.index for each in plan.rounds if _begins_rib(plan, each.index)]
    ahead = [index for index in found if index >= here]
    return min(ahead) if ahead else max(found, default=None)


def bare_words(name: str) -> frozenset[str]:
    """Return the words of a name, in any case and number: "sleeves" names a sleeve."""
    return frozenset(word.removesuffix("s") for word in name.casefold().split())


def _plain(name: str) -> str:
    """Return a name as it is compared: in any case, with single spaces."""
    return " ".join(name.casefold().split())


def _sentence_case(text: str) -> str:
    return text[:1].upper() + text[1:]
