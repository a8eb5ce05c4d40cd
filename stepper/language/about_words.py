"""Words for answers about the knitting in hand: the answer first, then what it rests on. No I/O.

Each answer is short enough to remember; where one number follows another, a word or a comma
stands between them. It is long because it is one list: a function of a few lines for each answer.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from types import MappingProxyType
from typing import Any, Final

from stepper.craft.figures import format_number, list_words
from stepper.craft.gauge import to_mm
from stepper.craft.how_made import how_made
from stepper.craft.rows import row_word
from stepper.craft.stitches import Kind, find_stitch
from stepper.language import outlook
from stepper.language.abbreviations import WORDS
from stepper.language.ahead_words import name_skein
from stepper.language.aloud import spell_out
from stepper.language.measures import length, many_stitches, plural, weight
from stepper.language.numbers import ordinal_words
from stepper.language.phrasing import in_yarn, said_items
from stepper.language.places import end_sentence, name_from, place_name, round_name, round_word, sentence_case
from stepper.language.understanding.glossary import term_called, terms_in
from stepper.language.understanding.terms import BY_HAND, TERMS
from stepper.plan.model import Plan, Round
from stepper.session.effects import Effect, Lead, TellFinished
from stepper.session.questions import about, about_ahead, about_round
from stepper.session.state import Position

SHORT_WORDS: Final = 20
"""Most words for a round not in hand to be read out whole; a longer one is summed up. Chosen here:
about eight seconds of speech."""
_MOST_NAMES: Final = 4
"""Most names listed in one breath."""


def _near(effect: about_round.TellNear, plan: Plan) -> str:
    step = effect.step
    if step is None:
        return "Nothing is knitted yet."
    if isinstance(step, TellFinished):
        return "After this every round is done."
    round_ = plan.rounds[step.index]
    yarn = "" if step.part.start else in_yarn(round_, plan)
    what = f"{yarn}{said_items(step.part.items, round_, plan)}"
    where = {
        Lead.FULL: f"{place_name(round_)}: ",
        Lead.ROUND: f"{round_name(round_)}: ",
        Lead.PART: "",
    }[step.lead]
    first = {-1: "Last", 1: "Next", 2: "After that"}[effect.ahead]
    return f"{first}: {where[:1].lower()}{where[1:]}{what}."


def _round(effect: about_round.TellRound, plan: Plan) -> str:
    if effect.index is None:
        return "No round comes after this one." if effect.ahead > 0 else "This is the first round."
    round_ = plan.rounds[effect.index]
    whole = f"{in_yarn(round_, plan)}{said_items(round_.phrase, round_, plan)}"
    short = not effect.ahead or len(whole.split()) <= SHORT_WORDS
    what = whole if short else _in_short(round_, plan)
    return f"{sentence_case(round_name(round_))}: {what}."


def _in_short(round_: Round, plan: Plan) -> str:
    """Sum a round up: what changes, in which yarns, how many stitches."""
    parts = []
    for kind, word in ((Kind.INCREASE, "increase"), (Kind.DECREASE, "decrease")):
        changes = about_ahead.changes_in(round_, kind)
        if changes:
            parts.append(plural(changes, word))
    yarns = about_round.yarns_of(round_)
    if len(yarns) > 1:
        parts.append(f"in {_names(yarns, plan)}")
    if not round_.is_uncounted:
        parts.append(f"{plural(round_.after, 'stitch', 'stitches')} after it")
    return ", ".join(parts)


def _stitches_left(effect: about_round.TellStitchesLeft, plan: Plan) -> str:
    round_ = plan.rounds[effect.index]
    left = plural(effect.left, "stitch", "stitches")
    return f"{left} to the {'turn' if effect.turned else 'end'} of this {round_word(round_)}, of {effect.of}."


def _names(yarns: Sequence[str], plan: Plan) -> str:
    return list_words([plan.yarns.get(yarn, yarn) for yarn in yarns])


def _yarns(effect: about_round.TellYarns, plan: Plan) -> str:
    if not effect.yarns:
        return "No yarn is worked in this round."
    if len(effect.yarns) == 1:
        return f"{sentence_case(_names(effect.yarns, plan))}."
    if effect.now is None:
        return f"{sentence_case(_names(effect.yarns, plan))}, in this round."
    now = sentence_case(plan.yarns.get(effect.now, effect.now))
    return f"{now} now. In this round: {_names(effect.yarns, plan)}."


def _colour_change(effect: about_round.TellColourChange, plan: Plan) -> str:
    if not effect.yarns:
        return "No other colour comes."
    name = sentence_case(_names(effect.yarns, plan))
    if effect.stitches is not None:
        return f"{name} after {plural(effect.stitches, 'stitch', 'stitches')}."
    assert effect.index is not None
    return f"{name} in {name_from(effect.index, effect.here, plan)}."


def _floats(effect: about_round.TellFloats, plan: Plan) -> str:
    if not effect.longest:
        return "No floats in this round."
    yarn, stitches = effect.longest[0]
    line = f"The longest float is {plural(stitches, 'stitch', 'stitches')} of {plan.yarns.get(yarn, yarn)}"
    if effect.stitch_mm is not None:
        line = f"{line}, about {length(stitches * effect.stitch_mm, plan.units)}"
    if not effect.catches:
        return f"{line}. It needs no catching."
    return f"{line}. {' '.join(end_sentence(sentence_case(each)) for each in effect.catches)}"


def _carried(effect: about_round.TellCarried, plan: Plan) -> str:
    return f"{effect.words}." if effect.words else "One yarn is carried here: none lies below another."


def _side(effect: about_round.TellSide, plan: Plan) -> str:
    round_ = plan.rounds[effect.index]
    if not round_.flat:
        return "The right side, as always in the round."
    side = "right" if round_.side == "RS" else "wrong"
    return f"The {side} side, row {round_.number}."


def _repeat(effect: about_round.TellRepeat, plan: Plan) -> str:
    if not effect.of:
        return "This round has no repeat."
    if effect.number is None:
        return f"Outside the repeats, of which there are {effect.of}."
    left = effect.of - effect.number
    after = "it is the last" if not left else f"{left} after it"
    ends = f"; {plural(effect.left, 'stitch', 'stitches')} to its end" if effect.left else ""
    return f"Repeat {effect.number} of {effect.of}, {after}{ends}."


def _chart(effect: about_round.TellChartRow, plan: Plan) -> str:
    round_ = plan.rounds[effect.index]
    if round_.chart is None or round_.chart_round is None:
        return "No chart is in hand."
    left = f"{plural(effect.left, round_word(round_))} of it left" if effect.left else "the last of it"
    return f"{sentence_case(round_word(round_))} {round_.chart_round} of chart {round_.chart}, {left}."


def _marker(effect: about_round.TellMarker, plan: Plan) -> str:
    if effect.stitches is not None:
        which = f", the {ordinal_words(effect.number)} of {effect.of}" if effect.of > 1 else ""
        line = f"The next marker is after {plural(effect.stitches, 'stitch', 'stitches')}{which}."
    else:
        line = "No marker lies ahead in this round."
    if not effect.between:
        return line
    return f"{line} Between the markers at the end: {', '.join(map(str, effect.between))}."


def _alike(effect: about_round.TellAlike, plan: Plan) -> str:
    here = plan.rounds[effect.index]
    if not effect.more:
        return f"No more: this {row_word(here.flat)} is the last like it."
    last = round_name(plan.rounds[effect.index + effect.more])
    return f"{effect.more} more after this {row_word(here.flat)}, up to {last}."


def _turn(effect: about_round.TellTurn, plan: Plan) -> str:
    if effect.stitches is None:
        return "No row ahead is turned before its end."
    row = round_name(plan.rounds[effect.index])
    left = f"{plural(effect.rows, 'short row')} left" if effect.rows > 1 else "it is the last short row"
    return f"After {plural(effect.stitches, 'stitch', 'stitches')}, in {row}; {left}."


def _next_shaping(effect: about_ahead.TellNextShaping, plan: Plan) -> str:
    word = "increase" if effect.increases else "decrease"
    if effect.index is None:
        return f"No {word}s come."
    changes = plural(effect.changes, word)
    after = plural(plan.rounds[effect.index].after, "stitch", "stitches")
    if effect.index == effect.here:
        return f"In this {round_word(plan.rounds[effect.here])}: {changes} to make, {after} after it."
    return f"{_how_far(effect.index, effect.here, plan)}: {changes}, {after} after it."


def _how_far(index: int, here: int, plan: Plan) -> str:
    """Say where a round that lies ahead is: "In 3 rounds, yoke round 35"."""
    return f"In {plural(index - here, round_word(plan.rounds[index]))}, {name_from(index, here, plan)}"


def _shaping_left(effect: about_ahead.TellShapingLeft, plan: Plan) -> str:
    word = "increase" if effect.increases else "decrease"
    done = f"; {effect.done} done" if effect.done else ""
    if not effect.rounds:
        return f"No {word}s are left in {effect.section}{done}."
    row = row_word(effect.flat)
    if effect.in_hand is not None:
        left, whole = effect.in_hand
        here = f"{left} of the {plural(whole, word)} of this {row} {'is' if left == 1 else 'are'} left."
        if effect.rounds == 1:
            return f"{here} It is the last {word} {row} in {effect.section}{done}."
        later = plural(effect.changes - left, "stitch", "stitches")
        return f"{here} Then {plural(effect.rounds - 1, f'{word} {row}')} in {effect.section}, {later}{done}."
    rounds = plural(effect.rounds, f"{word} {row}")
    changes = plural(effect.changes, "stitch", "stitches")
    return f"{rounds} left in {effect.section}, {changes}{done}."


def _rounds_to(effect: about_ahead.TellRoundsTo, plan: Plan) -> str:
    if effect.index is None:
        return f"No round ahead is {effect.place}."
    if effect.index == effect.here:
        return "That is the round in hand."
    if effect.index < effect.here:
        return f"{sentence_case(effect.place)} is done."
    return f"{_how_far(effect.index, effect.here, plan)}."


def _needle(effect: about_ahead.TellNeedle, plan: Plan) -> str:
    here = "The pattern names no needle" if effect.needle_mm is None else _mm(effect.needle_mm)
    if effect.index is None:
        return f"{here}, to the end." if effect.needle_mm is not None else f"{here}."
    round_ = plan.rounds[effect.index]
    return f"{here}; from {place_name(round_)}, {_mm(round_.needle_mm or 0.0)}."


def _mm(needle_mm: float) -> str:
    return f"{format_number(needle_mm, 2)} mm"


def _size(effect: about_ahead.TellSize, plan: Plan) -> str:
    line = f"Size {effect.size} here"
    if not effect.others:
        return f"{line}, and everywhere."
    return f"{line}; {_from_where(effect.others, plan)}."


def _from_where(sizes: Sequence[tuple[int, str]], plan: Plan) -> str:
    """Say where other sizes begin: "M from Yoke, round 31 of 56, Increase round 3"."""
    return "; ".join(f"{size} from {place_name(plan.rounds[index])}" for index, size in sizes[:_MOST_NAMES])


def _gauge(effect: about_ahead.TellGauge, plan: Plan) -> str:
    if effect.stitches_per_10cm is None:
        return "The file gives no gauge."
    over, factor = ("4 in", to_mm(4, "in") / 100) if plan.units == "in" else ("10 cm", 1.0)
    stitches = format_number(effect.stitches_per_10cm * factor, 1)
    rounds = format_number(effect.rounds_per_10cm * factor, 1)
    needle = f", on {_mm(effect.needle_mm)}" if effect.needle_mm is not None else ""
    return f"{stitches} stitches and {rounds} rounds to {over}{needle}."


def _length(effect: about_ahead.TellLength, plan: Plan) -> str:
    left = f"{plural(effect.rounds_left, row_word(effect.flat))} left"
    if effect.length_mm is None:
        return f"The file gives no gauge to tell by; {left} in {effect.section}."
    length_mm = _whole(effect.length_mm, plan.units)
    now = f"About {length(length_mm, plan.units)} by the rounds" if length_mm else "Hardly begun"
    if effect.target_mm is None:
        return f"{now}; {left} in {effect.section}."
    return f"{now}, of {length(effect.target_mm, plan.units)}; {left}."


def _whole(length_mm: float, units: str) -> float:
    """Round a length that is only computed to half a centimetre or a quarter of an inch. Unit: mm."""
    step = to_mm(0.25, "in") if units == "in" else 5.0
    return round(length_mm / step) * step


def _yarn_needed(effect: about_ahead.TellYarnNeeded, plan: Plan) -> str:
    if not effect.needed:
        return "The file says too little of the skeins to tell. Weigh the ball and say its weight."
    named = [(plan.yarns.get(yarn, yarn), grams) for yarn, grams in effect.needed[:_MOST_NAMES]]
    needed = [f"{_grams(grams)} of {name}" for name, grams in named]
    takes = f"The rest takes about {list_words(needed)}."
    ask = "" if effect.weighed else f" Weigh the ball and say: {named[0][0]} weighs, and the grams."
    return takes + ask


def _yarn_used(effect: about_ahead.TellYarnUsed, plan: Plan) -> str:
    if not effect.used:
        return "Nothing yet that the file lets me weigh."
    used = [f"{_grams(grams)} of {plan.yarns.get(yarn, yarn)}" for yarn, grams in effect.used[:_MOST_NAMES]]
    return f"About {list_words(used)} so far, by the rounds."


def _grams(grams: float) -> str:
    return weight(round(grams) if grams < 100 else round(grams, -1))


def _pace(effect: about_ahead.TellPace, plan: Plan) -> str:
    guess = "" if effect.measured else ", the usual pace until yours is known"
    minutes = max(1, round(effect.round_s / 60))
    pace = f"{round(effect.stitches_per_minute)} stitches a minute"
    return f"{pace}, {plural(minutes, 'minute')} for this round{guess}."


def _evening(effect: about_ahead.TellEvening, plan: Plan) -> str:
    line = outlook.tell_film(effect.outlook, plan)
    if effect.sights:
        first, *others = [_sight(index, effect, plan) for index in effect.sights]
        line = " ".join([f"{line} On the way: {first}.", *(f"Then {each}." for each in others)])
    if effect.reminders:
        line = f"{line} And {plural(effect.reminders, 'reminder')}."
    return line


def _sight(index: int, effect: about_ahead.TellEvening, plan: Plan) -> str:
    """Say what has to be at hand at a round."""
    before, round_ = plan.rounds[index - 1], plan.rounds[index]
    new = about_ahead.yarns_taken_up(plan, index)
    things = []
    if round_.section != before.section:
        things.append(f"{round_.section} begins")
    if round_.needle_mm not in (None, before.needle_mm):
        things.append(f"the {_mm(round_.needle_mm or 0.0)} needle")
    if round_.holds:
        things.append("a holder")
    if any(run.stitch == "pm" for run in round_.runs):
        things.append("markers")
    if new:
        things.append(_names(new, plan))
    ending = [end for end in effect.skeins if end.likely == index and end.yarn not in new]
    things += [name_skein(end, plan) for end in ending]
    if round_.section != before.section:
        return list_words(things)
    return f"{round_word(round_)} {round_.number}, {list_words(things)}"


def _knitted_today(effect: about_ahead.TellKnittedToday, plan: Plan) -> str:
    if effect.stitches <= 0:
        return "Nothing this evening yet."
    stitches = many_stitches(effect.stitches)
    if effect.rounds < 1:
        return f"{sentence_case(stitches)} this evening."
    return f"About {plural(round(effect.rounds), 'round')} this evening, {stitches}."


def _reminders(effect: about_ahead.TellReminders, plan: Plan) -> str:
    if not effect.reminders:
        return "No reminders."
    said = []
    for each in effect.reminders[:_MOST_NAMES]:
        text = each.text.rstrip(".")
        said.append(f"{_how_far(each.index, effect.here, plan)}{f': {text}' if text else ''}")
    return ". ".join(said) + "."


def _last_count(effect: about_ahead.TellLastCount, plan: Plan) -> str:
    count = effect.count
    if count is None:
        return "No count stands for the stitches in hand."
    where = _place(count.place, plan)
    return f"{plural(count.stitches, 'stitch', 'stitches')}, {where}."


def _place(place: Position, plan: Plan) -> str:
    if place.index >= len(plan.rounds):
        return "at the very end"
    round_ = plan.rounds[place.index]
    inside = f", stitch {place.stitch}" if place.stitch else ""
    return f"at {round_.section}, {round_name(round_)}{inside}"


def _alterations(effect: about_ahead.TellAlterations, plan: Plan) -> str:
    here = "; ".join(_where_else(each, "also in") for each in effect.here[:_MOST_NAMES])
    lines = [here] if here else []
    if effect.elsewhere:
        elsewhere = "; ".join(_where_else(each, "in") for each in effect.elsewhere[:_MOST_NAMES])
        lines.append(f"Elsewhere: {elsewhere}" if effect.here else f"Nothing here; elsewhere: {elsewhere}")
    if effect.sizes:
        blended = f"size {_from_where(effect.sizes, plan)}"
        lines.append(blended if lines else f"it is knitted as printed, but {blended}")
    return " ".join(f"{sentence_case(line)}." for line in lines) or "Nothing: it is knitted as printed."


def _where_else(change: tuple[str, tuple[str, ...]], joined: str) -> str:
    """Say a change with its sections, unless its words name one: "body 3 cm longer"."""
    words, sections = change
    if not sections or any(section in words for section in sections):
        return words
    return f"{words}, {joined} {list_words(sections[:_MOST_NAMES])}"


_MOST_MEANINGS: Final = 2
"""Most words explained in one breath: each takes some eight seconds."""


def _meaning(effect: about.TellMeaning, plan: Plan) -> str:
    return _meaning_of(effect.code)


def _meaning_of(code: str) -> str:
    """Say what a word of the trade, a stitch or an abbreviation means."""
    term = term_called(code)
    if term is not None:
        return f"{sentence_case(term)}: {TERMS[term]}."
    entry = find_stitch(code)
    if entry is None:
        return f"{sentence_case(code)}: {WORDS.get(code, 'that word I do not know')}."
    if entry.kind in (Kind.INCREASE, Kind.DECREASE):
        become = f"{plural(entry.uses, 'stitch', 'stitches')} become {entry.leaves}"
        if not entry.uses:
            become = f"{plural(entry.leaves, 'stitch', 'stitches')} more"
        made = f"{sentence_case(entry.said)}: {become}."
    else:
        made = f"{sentence_case(entry.said)}."
    how = BY_HAND.get(entry.code) or spell_out(how_made(entry.code))
    return f"{made} {sentence_case(how)}." if how else made


def _meaning_here(effect: about.TellMeaningHere, plan: Plan) -> str:
    told = terms_in(". ".join(effect.words))
    shaped = [code for code in effect.stitches if code not in BY_HAND]
    names = list(dict.fromkeys((*told, *(term_called(each) or each for each in shaped))))
    if not names:
        names = [code for code in effect.stitches if code in BY_HAND]
    if not names:
        return "There is no word in it that I can explain. Ask for one: what does marker mean."
    return " ".join(_meaning_of(each) for each in names[:_MOST_MEANINGS])


def _finish(effect: about.TellFinishDate, plan: Plan) -> str:
    due = outlook.tell_evenings_due(effect.outlook)
    return f"{outlook.tell_time_left(effect.outlook)} {due}".strip()


LINES: Final[MappingProxyType[type[Effect], Callable[[Any, Plan], str]]] = MappingProxyType(
    {
        about_round.TellNear: _near,
        about_round.TellRound: _round,
        about_round.TellStitchesLeft: _stitches_left,
        about_round.TellAlike: _alike,
        about_round.TellYarns: _yarns,
        about_round.TellColourChange: _colour_change,
        about_round.TellFloats: _floats,
        about_round.TellCarried: _carried,
        about_round.TellSide: _side,
        about_round.TellRepeat: _repeat,
        about_round.TellChartRow: _chart,
        about_round.TellMarker: _marker,
        about_round.TellTurn: _turn,
        about_ahead.TellNextShaping: _next_shaping,
        about_ahead.TellShapingLeft: _shaping_left,
        about_ahead.TellRoundsTo: _rounds_to,
        about_ahead.TellNeedle: _needle,
        about_ahead.TellSize: _size,
        about_ahead.TellGauge: _gauge,
        about_ahead.TellLength: _length,
        about_ahead.TellYarnNeeded: _yarn_needed,
        about_ahead.TellYarnUsed: _yarn_used,
        about_ahead.TellPace: _pace,
        about_ahead.TellEvening: _evening,
        about_ahead.TellKnittedToday: _knitted_today,
        about_ahead.TellReminders: _reminders,
        about_ahead.TellLastCount: _last_count,
        about_ahead.TellAlterations: _alterations,
        about.TellMeaning: _meaning,
        about.TellMeaningHere: _meaning_here,
        about.TellFinishDate: _finish,
    }
)
"""The line of each answer."""
