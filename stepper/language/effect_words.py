"""Turn effects into lines, to be printed and, with figures as words, to be said. No I/O.

One short line for each effect. Work is given in words, counts and places in figures; see
`stepper.language.aloud`.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from types import MappingProxyType
from typing import Any, Final, assert_never

from stepper.craft.gauge import half_up
from stepper.language import (
    about_words,
    ahead_words,
    doubt_words,
    fault_words,
    named_words,
    open_words,
    outlook,
    piece_words,
    remedy_words,
    slip_words,
)
from stepper.language.aloud import spell_out
from stepper.language.changes import ask_place, tell_changes, tell_choice
from stepper.language.event_words import EVENT_WORDS
from stepper.language.help_words import tell_help
from stepper.language.measures import gauge, length, many_stitches, plural, weight
from stepper.language.numbers import words
from stepper.language.phrasing import in_yarn, said_items
from stepper.language.places import (
    done_name,
    end_sentence,
    name_from,
    on_day,
    place_name,
    round_name,
    round_word,
    rounds_of_sort,
    sentence_case,
)
from stepper.language.yarn_left import tell_yarn_left
from stepper.plan.model import Group, Plan, Round
from stepper.plan.told_only import lead_in_once
from stepper.plan.yarn.strand_remarks import catches_of
from stepper.plan.yarn.worked_twice import second_pieces
from stepper.session import answers, effects
from stepper.session.counting.tally import Shaping, is_counted_at, shaping_at
from stepper.session.due import round_reached
from stepper.session.effects import Effect, Lead, ReadingChange
from stepper.session.speech_length import MOST_S, seconds_of
from stepper.session.state import Position
from stepper.session.steps import StepPart
from stepper.session.stops import list_first_catches, remarks_before, shorten_catches


def tell_effect(effect: Effect, plan: Plan) -> str:
    """Return the line of an effect.

    Args:
        effect: What to tell or ask.
        plan: The plan as knitted after what happened.

    Returns:
        One line; empty if the effect has no words (`Close`).
    """
    return LINES[type(effect)](effect, plan)


# Steps


def _step(effect: effects.TellStep, plan: Plan) -> str:
    if effect.stop:
        return " ".join(f"{sentence_case(each)}." for each in effect.stop)
    round_, part = plan.rounds[effect.index], effect.part
    begins = part.start == 0
    yarn = in_yarn(round_, plan) if begins else ""
    # When asked for again, it is read out in full: she may have forgotten what "the same" was.
    what = ("" if effect.slower else _the_same_again(part)) or said_items(part.items, round_, plan)
    said = _with_lead(effect, round_, end_sentence(f"{yarn}{what}"))
    if not begins:
        return said
    before = () if effect.heard else remarks_before(round_)
    before = tuple(each for each in before if each.rstrip(".") not in effect.told)
    remarks = [end_sentence(sentence_case(remark)) for remark in lead_in_once(before)]
    catches = shorten_catches(catches_of(round_)) if effect.slower else list_first_catches(plan, round_)
    # Behind the stitches: she works those first.
    behind = [f"{each}." for each in catches if effect.slower or each not in effect.heard]
    return " ".join([*remarks, said, *behind])


def _with_lead(effect: effects.TellStep, round_: Round, what: str) -> str:
    """Put the place in front of a step; what it can do without is left out where that makes it too long."""
    lead = _lead(effect, round_)
    if not lead:
        return sentence_case(what)
    said = f"{lead}: {what}"
    if effect.part.at_marker and effect.lead is Lead.PART and seconds_of(spell_out(said)) > MOST_S:
        return sentence_case(what)  # she is at the marker
    wanted = effect.slower or effect.lead is not Lead.ROUND  # asked for, or to say where she is
    if wanted or seconds_of(spell_out(said)) <= MOST_S:
        return said
    return f"{_lead(effect, replace(round_, label=None, chart=None))}: {what}"


def _the_same_again(part: StepPart) -> str:
    """Say how often a repeat just read out in full is worked again; empty for any other part."""
    if not part.again:
        return ""
    if part.repeat is not None:
        return "the same again"
    times = sum(item.times for item in part.items if isinstance(item, Group))
    return "the same again" if times == 1 else f"the same again, {words(times)} times"


def _lead(effect: effects.TellStep, round_: Round) -> str:
    part, lead = effect.part, effect.lead
    inside = ""
    if part.repeat is not None:
        inside = f"{'change' if part.change else 'repeat'} {part.repeat[0]} of {part.repeat[1]}"
        inside += f", at stitch {part.start}" if part.begun else ""
    elif part.start:
        inside = f"at stitch {part.start}"
    if lead is Lead.RUN:
        return sentence_case(inside) if part.repeat is not None else ""
    if lead is Lead.PART and inside:
        return sentence_case(inside)
    name = place_name(round_) if lead is Lead.FULL else sentence_case(round_name(round_))
    return f"{name}, {inside}" if inside else name


def _taken(effect: effects.TellTaken, plan: Plan) -> str:
    taken = f"Taken as done: up to {done_name(effect.place, plan)}"
    changed = [plan.rounds[index] for index in effect.changed]
    if not changed:
        return f"{taken}."
    if len(changed) > 1:
        many = f"{words(len(changed))} {round_word(changed[0])}s"
        return f"{taken}; {many} among them change the number of stitches."
    before = f"from {changed[0].before} " if is_counted_at(plan, Position(index=changed[0].index)) else ""
    told = f"{before}to {changed[0].after} stitches"
    if changed[0].index == effect.place.index - 1 and not effect.place.stitch:
        return f"{taken}, which goes {told}."
    return f"{taken}; among them {name_from(changed[0].index, effect.place.index - 1, plan)}, {told}."


def _finished(effect: effects.TellFinished, plan: Plan) -> str:
    if any(piece[-1] == len(plan.rounds) - 1 for piece in second_pieces(plan)):
        return "Every round is done. With both made, the garment is finished."
    return "Every round is done. The garment is finished."


def _start(effect: effects.TellStart, plan: Plan) -> str:
    if not plan.rounds:
        return "Starting."  # what is asked of the first row comes next
    read = "in all" if plan.open is None else "as far as the pattern is read"
    return f"Starting: {plural(len(plan.rounds), 'round')} {read}. Say next step when a step is done."


def _recap(effect: effects.TellRecap, plan: Plan) -> str:
    if effect.done is None:
        return "Nothing has been knitted yet."
    return f"Last done{on_day(effect.at)}: {done_name(effect.done, plan)}."


def _stop(effect: effects.TellStop, plan: Plan) -> str:
    if isinstance(effect.first, effects.TellFinished):
        return _finished(effect.first, plan)
    done = f"Done so far: {done_name(effect.place, plan)}. " if effect.place != Position() else ""
    return f"{done}First next time: {tell_effect(effect.first, plan)}"


# Answers


_UNCOUNTED: Final = "Nobody knows how many stitches are on the needles here."


def _place(effect: answers.TellPlace, plan: Plan) -> str:
    place = effect.place
    many = plural(effect.count, "stitch", "stitches") if effect.count else "No stitches"
    where = "by the pattern" if effect.is_off else "on the needles"
    on_needles = f"{many} {where}." if effect.count is not None else _UNCOUNTED
    if place.index >= len(plan.rounds):
        if plan.open is not None:
            return f"{sentence_case(plan.open.section)}, at a row that I do not read. {on_needles}"
        return f"Finished: all {plural(len(plan.rounds), 'round')} done. {on_needles}"
    round_ = plan.rounds[place.index]
    inside = f"at stitch {place.stitch} of {round_.progress}" if place.stitch else "at its beginning"
    return f"{place_name(round_)}, {inside}. {on_needles}"


def _spacing(effect: answers.TellSpacing, plan: Plan) -> str:
    round_ = plan.rounds[effect.place.index]
    shaping = shaping_at(round_, effect.place.stitch)
    if shaping is not None:
        return f"{_shaping_kinds(shaping)}{_gaps(shaping)}; {_next_change(shaping)}."
    none = f"None in this {round_word(round_)}"
    if effect.next_index is None:
        return f"{none}, and none follow."
    coming = plan.rounds[effect.next_index]
    ahead = plural(effect.next_index - round_.index, round_word(coming))
    changes = shaping_at(coming, 0)
    assert changes is not None  # it is the next round that has any
    where = f"{sentence_case(coming.section)}, {round_name(coming)}"
    return f"{none}. Next: {_shaping_kinds(changes)}, in {ahead}: {where}."


def _shaping_kinds(shaping: Shaping) -> str:
    kinds = [
        plural(count, word)
        for count, word in ((shaping.increases, "increase"), (shaping.decreases, "decrease"))
        if count
    ]
    return " and ".join(kinds)


def _gaps(shaping: Shaping) -> str:
    """Sum up the gaps; if there are many sizes, give the range."""
    if shaping.increases + shaping.decreases < 2 or not shaping.gaps:
        return ""
    if len(shaping.gaps) > 3:
        return f": gaps from {shaping.gaps[-1][0]} to {shaping.gaps[0][0]}"
    if len(shaping.gaps) == 1:
        return f": every gap {shaping.gaps[0][0]}"
    (gap, times), *others = shaping.gaps
    rest = "".join(f" and {times} of {gap}" for gap, times in others)
    return f": {plural(times, 'gap')} of {gap}{rest}"


def _next_change(shaping: Shaping) -> str:
    if shaping.next_in is None:
        return "all done"
    if not shaping.done:
        return f"first in {plural(shaping.next_in, 'stitch', 'stitches')}" if shaping.next_in else "first now"
    where = f"in {plural(shaping.next_in, 'stitch', 'stitches')}" if shaping.next_in else "now"
    return f"{shaping.done} done, next {where}"


def _expected(effect: answers.TellExpected, plan: Plan) -> str:
    if effect.now is None or effect.end is None:
        known = f" {effect.now} now." if effect.now is not None else ""
        known = f" {effect.end} at the end." if effect.end is not None else known
        return f"{_UNCOUNTED if effect.now is None else 'Nobody knows the count at the end.'}{known}"
    if effect.now == effect.end:
        line = f"{plural(effect.now, 'stitch', 'stitches')}, now and at the end."
    else:
        line = f"{plural(effect.now, 'stitch', 'stitches')} now, {effect.end} at the end."
    if not effect.between:
        return line
    return f"{line} Between the markers at the end: {', '.join(map(str, effect.between))}."


def _counted(effect: effects.TellCounted, plan: Plan) -> str:
    if effect.counted == effect.now:
        return f"{effect.counted}, as it should be."
    if effect.counted == effect.end:
        return f"{effect.counted}, as it should be at the end."
    difference = effect.counted - effect.now
    if effect.brief:
        return f"{effect.counted}: {abs(difference)} {'too many' if difference > 0 else 'too few'}."
    side = "more" if difference > 0 else "fewer"
    return f"{effect.counted}: {abs(difference)} {side} than {effect.now}."


def _ask_count(effect: effects.AskCount, plan: Plan) -> str:
    return f"Count now: {effect.expect} expected, {effect.reason}."


def _ask_length(effect: effects.AskLength, plan: Plan) -> str:
    return f"Measure now: {length(effect.target_mm, plan.units)} to reach."


def _stride(effect: effects.TellStride, plan: Plan) -> str:
    if effect.sort is None:
        return f"By {effect.by.value}."
    return f"By {effect.by.value}, {rounds_of_sort(effect.sort, flat=effect.flat)}."


def _second(effect: effects.TellSecond, plan: Plan) -> str:
    name = " ".join(effect.section.split("(")[0].replace(",", " ").lower().split())
    return f"This is printed once for two. If this was the first, say: go to {name} round 1."


def _far(effect: answers.TellFar, plan: Plan) -> str:
    if not plan.rounds:
        return "No round is known yet."
    if not effect.rounds:
        read = "" if plan.open is None else " that is read"
        return f"Nothing is left: every round{read} is done."
    section = f"{plural(effect.section_rounds, 'round')} left in {effect.section}"
    stitches = many_stitches(effect.stitches)
    return f"{section}, {effect.rounds} altogether, {stitches}."


def _time_knitted(effect: answers.TellTimeKnitted, plan: Plan) -> str:
    if not effect.all_s:
        return "Nothing has been knitted yet."
    guess = "" if effect.her_pace else ", at a usual pace until yours is known"
    evening = f"{outlook.say_hours(effect.evening_s)} of knitting this evening"
    if not effect.evening_s:
        evening = "nothing this evening yet"
    elif effect.evening_s == effect.all_s:
        return f"{sentence_case(evening)}, the first{guess}."
    return f"{sentence_case(evening)}, {outlook.say_hours(effect.all_s)} in all{guess}."


def _remind(effect: round_reached.Remind, plan: Plan) -> str:
    said = effect.reminder.text.rstrip(".")
    return f"You asked to be reminded: {said}." if said else "You asked to be reminded here."


def _rest(effect: effects.RestHands, plan: Plan) -> str:
    knitted = f"{effect.minutes} minutes of knitting: rest your hands for a while and stretch them."
    return f"{knitted} Pain is for a doctor, not for a program."


FAR_OFF: Final = 1.5
"""By what factor a measurement may differ from the gauge before it is doubted. Source: chosen here; a
measurement over fewer than ten rounds can be off by a third, a misheard number by more."""
TOO_LONG: Final = 2
"""From how many rounds on a piece is told to be too long: a tape is out by one. Source: chosen here."""


def _measured(effect: effects.TellMeasured, plan: Plan) -> str:
    line = f"{length(effect.length_mm, plan.units)}: {gauge(effect.rounds_per_10cm, plan.units)}."
    is_far = not 1 / FAR_OFF <= effect.rounds_per_10cm / effect.planned_per_10cm <= FAR_OFF
    if is_far:
        planned = gauge(effect.planned_per_10cm, plan.units)
        line = f"{line} That is far from {planned}; if it is wrong, say undo that."
    if effect.length_mm >= effect.target_mm:
        end = "finish this round, then this part is done" if effect.rounds_left else "this part ends here"
        past = effect.length_mm - effect.target_mm
        rounds = half_up(past * effect.rounds_per_10cm / 100)
        if is_far or rounds < TOO_LONG:
            return f"{line} Long enough, {end}."
        by = f"{length(past, plan.units)} past {length(effect.target_mm, plan.units)}, about {rounds} rounds"
        return f"{line} {by}: leave it, or rip them and measure again. {sentence_case(end)}."
    if not effect.rounds_left:
        return f"{line} Near enough to {length(effect.target_mm, plan.units)}, this part ends here."
    change = "as planned"
    if effect.longer_by:
        change = f"{abs(effect.longer_by)} {'more' if effect.longer_by > 0 else 'fewer'} than planned"
    return f"{line} {plural(effect.rounds_left, 'round')} left, {change}."


def _kept(effect: effects.TellKept, plan: Plan) -> str:
    if effect.length_mm is not None:
        why = "Too early for a gauge" if effect.early else "Nothing here is worked to a length"
        return f"{length(effect.length_mm, plan.units)}, noted. {why}."
    if effect.yarn is not None and effect.grams is not None:
        return f"{weight(effect.grams)} of {plan.yarns.get(effect.yarn, effect.yarn)} left, noted."
    return f"Noted: {effect.note}"


def _undone(effect: effects.TellUndone, plan: Plan) -> str:
    name = EVENT_WORDS[effect.event].name if effect.event is not None else "that"
    return f"{'Done again' if effect.again else 'Taken back'}: {name}."


def _event(effect: effects.TellEvent, plan: Plan) -> str:
    return EVENT_WORDS[type(effect.event)].told(effect.event, plan)


def _reading(effect: effects.TellReading, plan: Plan) -> str:
    match effect.change:
        case ReadingChange.HELD:
            return "Waiting. Say: go on."
        case ReadingChange.SLOWER:
            return "Slower."
        case ReadingChange.FASTER:
            return "Faster."
        case ReadingChange.LIMIT:
            return "That is as far as it goes."
        case ReadingChange.END:
            round_ = plan.rounds[effect.index]
            count = plural(effect.count, "stitch", "stitches")
            return f"End of {round_word(round_)} {round_.number}: {count}. Say next step when it is right."
    assert_never(effect.change)


def _turn_film(effect: effects.TurnFilm, plan: Plan) -> str:
    if effect.on:
        return "The film is on: I listen only to what begins with the address word."
    return "The film is off: no address word is needed."


def _refuse(effect: effects.Refuse, plan: Plan) -> str:
    return effect.sentence


def _nothing(effect: Effect, plan: Plan) -> str:
    return ""


LINES: Final[MappingProxyType[type[Effect], Callable[[Any, Plan], str]]] = MappingProxyType(
    {
        effects.Refuse: _refuse,
        effects.TellStart: _start,
        effects.TellRecap: _recap,
        effects.TellChanges: lambda effect, plan: tell_changes(effect),
        effects.AskPlace: lambda effect, plan: ask_place(effect),
        effects.TellChosen: lambda effect, plan: tell_choice(effect),
        effects.TellStep: _step,
        effects.TellTaken: _taken,
        effects.TellFinished: _finished,
        answers.TellPlace: _place,
        answers.TellSpacing: _spacing,
        answers.TellExpected: _expected,
        effects.TellCounted: _counted,
        effects.AskCount: _ask_count,
        effects.AskLength: _ask_length,
        effects.TellStride: _stride,
        effects.TellSecond: _second,
        answers.TellFar: _far,
        answers.TellTimeKnitted: _time_knitted,
        answers.TellTimeLeft: lambda effect, plan: outlook.tell_time_left(effect.outlook),
        answers.TellDue: lambda effect, plan: outlook.tell_evenings_due(effect.outlook),
        round_reached.Remind: _remind,
        effects.RestHands: _rest,
        effects.TellMeasured: _measured,
        effects.TellKept: _kept,
        effects.TellLasting: tell_yarn_left,
        effects.TellUndone: _undone,
        effects.TellEvent: _event,
        effects.TellAsleep: lambda effect, plan: "Not listening until you say: start listening.",
        effects.TellAwake: lambda effect, plan: "Listening.",
        effects.TurnTo: lambda effect, plan: "That is shown on the full screen only.",
        effects.TurnFilm: _turn_film,
        effects.TellHelp: tell_help,
        effects.TellStop: _stop,
        effects.TellReading: _reading,
        effects.BeatIn: _nothing,
        effects.Close: _nothing,
        **about_words.LINES,
        **ahead_words.LINES,
        **doubt_words.LINES,
        **fault_words.LINES,
        **piece_words.LINES,
        **named_words.LINES,
        **open_words.LINES,
        **remedy_words.LINES,
        **slip_words.LINES,
    }
)
