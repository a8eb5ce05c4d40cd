"""Words for answers about the piece in hand as a whole: the answer first, then what it rests on. No I/O."""

from __future__ import annotations

from collections.abc import Callable
from types import MappingProxyType
from typing import Any, Final

from stepper.craft.figures import list_words
from stepper.craft.gauge import to_mm
from stepper.craft.rows import row_word
from stepper.language.measures import length, plural
from stepper.language.outlook import say_hours
from stepper.language.places import name_from, round_name, round_word, sentence_case
from stepper.plan.model import Plan
from stepper.session.effects import Effect
from stepper.session.questions import about_piece
from stepper.session.state import NoteKept

_MOST_NAMES: Final = 4
"""Most names listed in one breath."""


def _last_shaping(effect: about_piece.TellLastShaping, plan: Plan) -> str:
    word = "increase" if effect.increases else "decrease"
    if effect.index is None:
        return f"No {word}s yet in {plan.rounds[effect.here].section}."
    round_ = plan.rounds[effect.index]
    ago = effect.here - effect.index
    when = f"In the last {round_word(round_)}" if ago == 1 else f"{plural(ago, round_word(round_))} ago"
    return f"{when}, {name_from(effect.index, effect.here, plan)}: {plural(effect.changes, word)}."


def _next_count(effect: about_piece.TellNextCount, plan: Plan) -> str:
    if effect.index is None:
        return "None is near." if effect.asks else "I ask for no counts."
    round_ = plan.rounds[effect.index]
    ahead = effect.index - effect.here
    when = f"in {plural(ahead, round_word(round_))}" if ahead else "now"
    later = f"After {name_from(effect.index, effect.here, plan)}, {when}"
    name = later if ahead else f"After this {round_word(round_)}"
    return f"{name}: {effect.expect} expected, {effect.reason}."


def _next_section(effect: about_piece.TellNextSection, plan: Plan) -> str:
    if effect.index is None:
        return f"{sentence_case(effect.section)} is the last part."
    ahead = plural(effect.index - effect.here, round_word(plan.rounds[effect.here]))
    return f"{sentence_case(plan.rounds[effect.index].section)}, in {ahead}."


def _held(effect: about_piece.TellHeld, plan: Plan) -> str:
    if not effect.held:
        return "None is on hold."
    named = [
        f"{plural(many, 'stitch', 'stitches')} {'on a holder' if name == 'holder' else f'for {name}'}"
        for name, many in effect.held[:_MOST_NAMES]
    ]
    return f"{sentence_case(list_words(named))}."


def _cast_on(effect: about_piece.TellCastOn, plan: Plan) -> str:
    if effect.stitches is None:
        return "Nothing is on the needles yet."
    how = "cast on" if effect.is_cast_on else "taken up"
    return f"{plural(effect.stitches, 'stitch', 'stitches')}, {how} for {effect.section}."


def _width(effect: about_piece.TellWidth, plan: Plan) -> str:
    stitches = plural(effect.stitches, "stitch", "stitches")
    if effect.width_mm is None:
        return f"{sentence_case(stitches)}; the file gives no gauge to tell by."
    wide = length(_whole(effect.width_mm, plan.units), plan.units)
    return f"About {wide} {'across' if effect.flat else 'around'} by the gauge, {stitches}."


def _share_done(effect: about_piece.TellShareDone, plan: Plan) -> str:
    share = round(100 * effect.stitches)
    return f"{share} percent of the stitches; {effect.rounds} of {plural(effect.of, 'round')} are done."


def _section(effect: about_piece.TellSection, plan: Plan) -> str:
    name, word = sentence_case(effect.section), row_word(effect.flat)
    if effect.done >= effect.of:
        return f"{name} is done."
    guess = "" if effect.measured else ", at a usual pace"
    rounds = plural(effect.of, word)
    done = f"{effect.done} of {rounds} done" if effect.done else f"{rounds} to knit"
    return f"{name}: {done}. {sentence_case(say_hours(effect.seconds_left))} for the rest{guess}."


def _notes(effect: about_piece.TellNotes, plan: Plan) -> str:
    if effect.here:
        told = effect.here[-_MOST_NAMES:]
        return " ".join(f"{sentence_case(_noted(each, plan))}." for each in told)
    if effect.last is None:
        return "Nothing is noted yet."
    section = plan.rounds[effect.last.index].section
    return f"Nothing is noted in {effect.section}. In {section}, {_noted(effect.last, plan)}."


def _noted(note: NoteKept, plan: Plan) -> str:
    return f"{round_name(plan.rounds[note.index])}: {note.text.rstrip('.')}"


def _part_length(effect: about_piece.TellPartLength, plan: Plan) -> str:
    name, rounds = sentence_case(effect.section), plural(effect.rounds, row_word(effect.flat))
    if effect.length_mm is None:
        return f"{name}: {rounds}; the file gives no gauge to tell by."
    return f"{name}: about {length(_whole(effect.length_mm, plan.units), plan.units)} by the gauge, {rounds}."


def _whole(length_mm: float, units: str) -> float:
    """Round a length that is only computed to half a centimetre or a quarter of an inch. Unit: mm."""
    step = to_mm(0.25, "in") if units == "in" else 5.0
    return max(step, round(length_mm / step) * step)


LINES: Final[MappingProxyType[type[Effect], Callable[[Any, Plan], str]]] = MappingProxyType(
    {
        about_piece.TellLastShaping: _last_shaping,
        about_piece.TellNextCount: _next_count,
        about_piece.TellNextSection: _next_section,
        about_piece.TellHeld: _held,
        about_piece.TellCastOn: _cast_on,
        about_piece.TellWidth: _width,
        about_piece.TellShareDone: _share_done,
        about_piece.TellSection: _section,
        about_piece.TellPartLength: _part_length,
        about_piece.TellNotes: _notes,
    }
)
"""The words of each effect."""
