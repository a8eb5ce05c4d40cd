"""The notes a knitter shares afterwards, as Markdown: what she chose, altered and ran into. Pure."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from itertools import groupby

from stepper.craft.figures import format_number
from stepper.language.event_words import notes_words
from stepper.language.measures import plural
from stepper.language.places import full_date, place_name, sentence_case
from stepper.plan.model import Plan
from stepper.project.model import Project, RuleKind
from stepper.session.events import (
    Advanced,
    Counted,
    Event,
    Opened,
    Placed,
    PlanChanged,
    Remedied,
    Respaced,
    Tinked,
)
from stepper.session.pace.learning import evening_of
from stepper.session.pace.time_spent import find_repeated_rounds, time_spent
from stepper.session.replay import list_standing


def write_notes(project: Project, plan: Plan, events: Iterable[tuple[int, Event]]) -> Iterator[str]:
    """Write the notes, line by line.

    Args:
        project: The checked file.
        plan: Its plan, as knitted.
        events: All numbered events from the first on; empty if nothing has been knitted.
    """
    for line in _lines(project, plan, list(events)):
        yield _in_markdown(line)


def _lines(project: Project, plan: Plan, kept: Sequence[tuple[int, Event]]) -> Iterator[str]:
    yield from (f"# {project.title}", "")
    yield from _chosen(project, plan)
    yield from ("", "## Altered", "")
    yield from _altered(project, plan)
    yield from ("", "## As it went", "")
    if not any(not isinstance(event, Opened) for _, event in kept):
        yield "Nothing has been knitted yet."
        return
    yield from _course(plan, kept)


def _in_markdown(line: str) -> str:
    """Keep free text in a line from becoming a tag, a link, a picture or another line.

    Source: CommonMark 0.31, 6.6 (raw HTML begins with "<" and a letter or one of / ! ?), 6.5 (autolinks the
    same), 6.3 and 6.4 (links and pictures: a bracket closed and a parenthesis or bracket opened), 4.7
    (definitions of links), 2.4 (a backslash takes a sign literally).
    """
    line = re.sub(r"<(?=[A-Za-z/!?])", r"\\<", " ".join(line.splitlines()))
    return re.sub(r"\](?=[(:\[])", r"\\]", line)


def _chosen(project: Project, plan: Plan) -> Iterator[str]:
    yield f"- Size {project.sizes[project.size]}"
    for switch in project.switches:
        yield f"- Size {project.sizes[switch.size]} from {switch.label} on{_blended(plan, switch.label)}"
    for yarn in project.yarns.values():
        skein = ""
        if yarn.grams is not None and yarn.metres is not None:
            skein = f", {yarn.metres:g} m to {yarn.grams:g} g"
        bought = f", {_skeins(yarn.bought)} bought" if yarn.bought is not None else ""
        yield f"- Yarn {yarn.key}: {yarn.name}{skein}{bought}"
    needles = sorted({each.needle_mm for each in plan.rounds if each.needle_mm is not None})
    if needles:
        yield f"- Needles: {', '.join(f'{each:g} mm' for each in needles)}"
    for fabric in project.fabrics.values():
        blocked = ""
        if fabric.blocked is not None:
            blocked = f"; blocked {_gauge(fabric.blocked.stitches, fabric.blocked.rounds, project.units)}"
        gauge = _gauge(fabric.gauge.stitches, fabric.gauge.rounds, project.units)
        yield f"- Gauge, {fabric.name}: {gauge}{blocked}"


def _skeins(skeins: float) -> str:
    """Return a number of skeins with its word: "1 skein", "2.5 skeins"."""
    return f"{skeins:g} skein{'' if skeins == 1 else 's'}"


def _gauge(stitches: float, rounds: float, units: str) -> str:
    over, factor = ("4 in", 1.016) if units == "in" else ("10 cm", 1.0)
    wide, high = format_number(stitches * factor), format_number(rounds * factor)
    return f"{wide} stitches and {high} rounds to {over}"


def _blended(plan: Plan, label: str) -> str:
    found = next((each for each in plan.rounds if (each.label or "").lower() == label.lower()), None)
    if found is None or found.before == found.after:
        return ""
    return f", {found.before} to {found.after} stitches in that round"


def _altered(project: Project, plan: Plan) -> Iterator[str]:
    """List the rules and where each takes effect; one that changes no round says so."""
    for rule in project.alterations:
        if rule.kind is RuleKind.NOTE:
            yield f"- {rule.text}"
            continue
        rounds = [each for each in plan.rounds if rule.text in each.altered]
        sections = list(dict.fromkeys(each.section for each in rounds))
        where = "no round that is knitted differs"
        if rounds:
            where = f"{plural(len(rounds), 'round')} in {', '.join(sections)}"
        yield f"- {rule.text} ({where})"
    if not project.alterations:
        yield "Nothing."


# --- what happened ------------------------------------------------------------------------------------


def _course(plan: Plan, kept: Sequence[tuple[int, Event]]) -> Iterator[str]:
    happened = [event for _, event in list_standing(kept)]
    everything = [event for _, event in kept]
    yield f"- {_dates(everything)}"
    spent = _hours(time_spent(everything))
    if spent:
        yield f"- {spent} of knitting, breaks left out"
    for index, times in find_repeated_rounds(happened):
        if index < len(plan.rounds):
            often = "" if times == 1 else f", {times} times"
            yield f"- Worked again: {place_name(plan.rounds[index])}{often}"
    for day, lines in groupby(_by_day(plan, happened), key=lambda each: each[0]):
        yield from ("", f"### {day}", "")
        yield from (f"- {sentence_case(line)}" for _, line in lines)


def _by_day(plan: Plan, happened: Sequence[Event]) -> Iterator[tuple[str, str]]:
    """Yield what a knitter would write down, each with its day in words."""
    changed = max((at for at, event in enumerate(happened) if isinstance(event, PlanChanged)), default=-1)
    for at, event in enumerate(happened):
        # What was finished by an earlier pattern is not known by the rounds of this one.
        parts = _finished(plan, event) if at > changed else []
        words = "" if _is_recounted(happened, at) else notes_words(event, plan)
        for line in (words, *(f"{part} finished" for part in parts)):
            if line:
                yield full_date(evening_of(event.at) or event.at[:10]), line


def _is_recounted(happened: Sequence[Event], at: int) -> bool:
    """Return whether an event is a count that was made again before anything was knitted: nobody keeps it."""
    event = happened[at]
    if not isinstance(event, Counted):
        return False
    for later in happened[at + 1 :]:
        if isinstance(later, Counted) and later.place == event.place:
            return True
        if isinstance(later, Advanced | Placed | Remedied | Respaced | Tinked):
            return False
    return False


def _finished(plan: Plan, event: Event) -> list[str]:
    """Return the parts of the garment that an event finished."""
    if not isinstance(event, Advanced | Placed):
        return []
    last = {each.section: each.index for each in plan.rounds}
    done = plan.rounds[event.origin.index : event.place.index]
    return [each.section for each in done if last[each.section] == each.index]


def _dates(events: Sequence[Event]) -> str:
    days = sorted({evening_of(event.at) for event in events if evening_of(event.at)})
    sittings = sum(isinstance(event, Opened) for event in events)
    if not days:
        return plural(sittings, "sitting")
    first, last = full_date(days[0]), full_date(days[-1])
    span = f"On {first}" if first == last else f"From {first} to {last}, on {len(days)} days"
    return f"{span}, {plural(max(1, sittings), 'sitting')}"


def _hours(seconds: float) -> str:
    """Return a time in hours and minutes; empty for less than half a minute."""
    minutes = round(seconds / 60)
    hours, rest = divmod(minutes, 60)
    if not minutes:
        return ""
    return f"{hours} h {rest} min" if hours else f"{rest} min"
