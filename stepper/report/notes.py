"""The record a knitter shares afterwards, as Markdown: what she chose, altered and met on the way. Pure."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from stepper.plan.model import Plan
from stepper.project.model import Project
from stepper.session.events import Counted, Event, Measured, Noted, Weighed


def notes(project: Project, plan: Plan, events: Iterable[tuple[int, Event]]) -> Iterator[str]:
    """Write the record, line by line.

    Args:
        project: The checked file.
        plan: Its plan.
        events: What happened, with its numbers; empty where nothing is knitted.
    """
    happened = [event for _, event in events]
    yield f"# {project.title}"
    yield ""
    yield f"- Size {project.sizes[project.size]}"
    for switch in project.switches:
        yield f"- Size {project.sizes[switch.size]} from {switch.label} on"
    for yarn in project.yarns.values():
        yield f"- Yarn {yarn.key}: {yarn.name}"
    needles = sorted({each.needle_mm for each in plan.rounds if each.needle_mm is not None})
    yield f"- Needles: {', '.join(f'{each:g} mm' for each in needles)}"
    yield ""
    yield "## Altered"
    yield ""
    for rule in project.alterations:
        yield f"- {rule.text}"
    if not project.alterations:
        yield "Nothing."
    yield ""
    yield "## As it went"
    yield ""
    if not happened:
        yield "Nothing is knitted yet."
        return
    yield f"- From {happened[0].at[:10]} to {happened[-1].at[:10]}"
    for event in happened:
        line = _told(event)
        if line:
            yield f"- {event.at[:10]}: {line}"


def _told(event: Event) -> str:
    match event:
        case Counted() if not event.agrees:
            return f"counted {event.stitches} where {event.expected} were expected"
        case Measured():
            return f"{event.section} measured {event.length_mm / 10:g} cm"
        case Weighed():
            return f"{event.grams:g} g of {event.yarn} left"
        case Noted():
            return event.text
    return ""
