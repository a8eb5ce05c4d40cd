"""Every garment on the needles in a few words: where it stands, when last touched, when due. Pure."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from stepper.language.measures import plural
from stepper.language.outlook import say_day, say_hours
from stepper.records import dataclass
from stepper.session.pace.outlook import Outlook
from stepper.session.progress import Progress


@dataclass(frozen=True, slots=True, kw_only=True)
class Garment:
    """One garment in a folder."""

    file: str
    """Name of the project file."""
    standing: Progress
    outlook: Outlook
    begun: bool
    """Whether a sitting was ever opened."""


def outlook_fields(seen: Outlook) -> dict[str, Any]:
    """Return what is ahead as plain values, under the names used by `stepper where --json`."""
    return {
        "knitting_seconds_left": round(seen.seconds_left),
        "pace_measured": seen.paces.measured,
        "stitches_per_minute": {
            kind: round(pace.stitches_per_minute, 1) for kind, pace in seen.paces.by_kind.items()
        },
        "finish": seen.likely,
        "finish_early": seen.early,
        "finish_late": seen.late,
        "assumed_days": seen.assumed_days,
        "finish_by": seen.finish_by,
        "evenings": seen.evenings,
        "rounds_an_evening": seen.rounds_each,
        "rounds_in_a_film": seen.film_rounds,
    }


def garment_lines(garments: Sequence[Garment], problems: Sequence[tuple[str, str]]) -> Iterator[str]:
    """Write the list: on the needles, latest touched first; then not begun, finished and unreadable.

    Args:
        garments: What could be read.
        problems: File and reason for each that could not.
    """
    if not garments and not problems:
        yield "No project files here. `stepper start` writes one."
    going = [each for each in garments if each.begun and not each.standing.finished]
    for each in sorted(going, key=lambda each: each.standing.last_cue_at or "", reverse=True):
        yield from _going(each)
    for each in garments:
        if not each.begun:
            words = "; ".join(filter(None, [_size(each), _due(each.outlook)]))
            yield f"{each.standing.title} ({each.file}): not begun, {words}."
    for each in garments:
        if each.begun and each.standing.finished:
            yield f"{each.standing.title} ({each.file}): finished{_touched(each)}."
    for name, reason in problems:
        yield f"{name}: cannot be read: {reason}"


def _going(each: Garment) -> Iterator[str]:
    standing, seen = each.standing, each.outlook
    total = standing.stitches_done + standing.stitches_left
    share = 100 * standing.stitches_done // max(1, total)
    of = f" of {standing.of}" if standing.of else ""
    place = f"{standing.section}, round {standing.round}{of}"
    if not standing.whole:
        known = f"{plural(standing.rounds_left, 'round')} up to a row that is not read"
        yield f"{standing.title} ({each.file}): {place}{_touched(each)}; {known}."
        return
    yield f"{standing.title} ({each.file}): {place}, {share} % done{_touched(each)}."
    ahead = [f"{say_hours(seen.seconds_left)} left", *([_finish(seen)] if seen.likely else [])]
    yield f"    {'; '.join([*ahead, *([_due(seen)] if _due(seen) else [])])}.".replace(
        "    about", "    About"
    )


def _finish(seen: Outlook) -> str:
    assert seen.likely is not None
    line = f"done about {say_day(seen.likely, seen.today)}"
    if seen.early is not None and seen.late is not None and seen.early != seen.late:
        line += f", {say_day(seen.early, seen.today)} to {say_day(seen.late, seen.today)} in 8 cases of 10"
    guess = not seen.paces.measured or seen.assumed_days
    return f"{line} (partly a guess)" if guess else line


def _due(seen: Outlook) -> str:
    if seen.finish_by is None or seen.evenings is None:
        return ""
    name = say_day(seen.finish_by, seen.today)
    if seen.rounds_each is None:
        return f"was due {name}"
    return f"due {name}: {plural(seen.rounds_each, 'round')} an evening"


def _touched(each: Garment) -> str:
    at = each.standing.last_cue_at
    return f", last touched {say_day(at, each.outlook.today)}" if at else ""


def _size(each: Garment) -> str:
    return f"{plural(each.standing.rounds_left, 'round')}, {say_hours(each.outlook.seconds_left)}"
