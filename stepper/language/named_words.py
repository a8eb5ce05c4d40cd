"""Words for answers about a named part or line: the answer first, then what it rests on. No I/O."""

from __future__ import annotations

from collections.abc import Callable
from types import MappingProxyType
from typing import Any, Final

from stepper.craft.figures import list_words
from stepper.craft.stitches import Kind
from stepper.language.measures import plural
from stepper.language.places import name_from, place_name, round_name, round_word, sentence_case
from stepper.plan.model import Plan
from stepper.session.effects import Effect
from stepper.session.questions import about_named

_MOST_NAMES: Final = 3
"""Most parts, notes or stretches told in one breath."""
_DONE: Final = {Kind.INCREASE: "increase", Kind.DECREASE: "decrease", Kind.CABLE: "cable"}


def _part_notes(effect: about_named.TellPartNotes, plan: Plan) -> str:
    told = [(name, note) for name, kept in effect.notes for note in kept][-_MOST_NAMES:]
    if not told:
        names = list_words([name for name, _ in effect.notes][:_MOST_NAMES])
        return f"Nothing is noted in {names}."
    lines = (
        f"{name}, {round_name(plan.rounds[note.index])}: {note.text.rstrip('.')}." for name, note in told
    )
    return " ".join(sentence_case(line) for line in lines)


def _part_counts(effect: about_named.TellPartCounts, plan: Plan) -> str:
    if not effect.counts:
        return "Nothing here is called so."
    if effect.is_line:
        (name, before, after) = effect.counts[0]
        return f"{plural(before, 'stitch', 'stitches')} before {name}, {after} after it."
    lines = []
    for name, first, last in effect.counts[:_MOST_NAMES]:
        begins = plural(first, "stitch", "stitches")
        ends = f"{last} at its end" if last != first else "as at its end"
        lines.append(f"{sentence_case(name)}: {begins} at its beginning, {ends}.")
    return " ".join(lines)


def _lines_left(effect: about_named.TellLinesLeft, plan: Plan) -> str:
    if not effect.ahead and not effect.done:
        return f"No line here is called {effect.name}."
    done = f"; {effect.done} done" if effect.done else ""
    if not effect.ahead:
        return f"None is left{done}."
    first = plan.rounds[effect.ahead[0]]
    ahead, word = effect.ahead[0] - effect.here, round_word(first)
    name = name_from(effect.ahead[0], effect.here, plan)
    when = f"in {plural(ahead, word)}, {name}" if ahead else f"in this {word}"
    if len(effect.ahead) == 1:
        return f"One is left, {when}{done}."
    return f"{len(effect.ahead)} are left, the next {when}{done}."


def _underarm(effect: about_named.TellUnderarm, plan: Plan) -> str:
    if effect.index is None:
        return "Nothing is cast on where stitches are put on hold."
    alike = len(set(effect.stitches)) == 1
    many = plural(effect.stitches[0], "stitch", "stitches")
    if not alike:
        many = f"{list_words([str(each) for each in effect.stitches])} stitches"
    each = " each time" if len(effect.stitches) > 1 and alike else ""
    return f"{sentence_case(many)}{each}, in {place_name(plan.rounds[effect.index])}."


def _rhythm(effect: about_named.TellRhythm, plan: Plan) -> str:
    word = _DONE[effect.kind]
    if effect.index is None:
        return f"No {word}s come in {plan.rounds[effect.here].section}."
    round_ = plan.rounds[effect.index]
    ahead = effect.index - effect.here
    name = name_from(effect.index, effect.here, plan)
    when = f"in {plural(ahead, round_word(round_))}, {name}" if ahead else "now"
    if not effect.gaps:
        return f"Once, {when}."
    return f"{sentence_case(_stretches(effect, round_word(round_)))}. The next {when}."


def _stretches(effect: about_named.TellRhythm, word: str) -> str:
    """Say stretches of like gaps one after another; where they are many, between which they lie."""
    if len(effect.gaps) > _MOST_NAMES:
        least, most = min(gap for gap, _ in effect.gaps), max(gap for gap, _ in effect.gaps)
        often = sum(times for _, times in effect.gaps)
        return f"every {least} to {most} {word}s, {plural(often, 'time')} more"
    parts = []
    for gap, times in effect.gaps:
        every = f"in every {word}" if gap == 1 else f"every {gap} {word}s"
        parts.append(every if len(effect.gaps) == 1 and times == 1 else f"{every}, {plural(times, 'time')}")
    return "; then ".join(parts)


LINES: Final[MappingProxyType[type[Effect], Callable[[Any, Plan], str]]] = MappingProxyType(
    {
        about_named.TellPartNotes: _part_notes,
        about_named.TellPartCounts: _part_counts,
        about_named.TellLinesLeft: _lines_left,
        about_named.TellUnderarm: _underarm,
        about_named.TellRhythm: _rhythm,
    }
)
"""The words of each effect."""
