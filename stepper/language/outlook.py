"""Time in words: what is left, when it will be done, what evenings must and a film will bring. No I/O."""

from __future__ import annotations

from datetime import date

from stepper.language.measures import plural
from stepper.language.places import done_name, on_day
from stepper.plan.model import Plan
from stepper.session.pace.outlook import Outlook
from stepper.session.state import Position

FAR_DAYS = 300
"""A date this far ahead is said with its year. Chosen here. Unit: days."""


def tell_time_left(seen: Outlook) -> str:
    """Say how much knitting is left and when it will be done, and which of that is a guess."""
    guess = "" if seen.paces.measured else ", at a usual pace until yours is known"
    line = f"{say_hours(seen.seconds_left)} of knitting left{guess}.".capitalize()
    if seen.likely is None:
        return line
    usual = ", with usual evenings until yours are known" if seen.assumed_days else ""
    likely = f"Done about {say_day(seen.likely, seen.today)}{usual}"
    if seen.late is None or seen.early is None:
        return f"{line} {likely}. It is too early to say how sure that is."
    if seen.early == seen.late:
        return f"{line} {likely}."
    between = f"between {say_day(seen.early, seen.today)} and {say_day(seen.late, seen.today)}"
    return f"{line} {likely}. In 8 cases of 10 {between}."


def tell_evenings_due(seen: Outlook) -> str:
    """Say how much to knit each evening to be done in time; empty if the file names no date."""
    if seen.finish_by is None or seen.evenings is None:
        return ""
    name = say_day(seen.finish_by, seen.today)
    if seen.rounds_each is None or seen.seconds_each is None:
        return f"{name}, the date in the file, has passed."
    each = f"{plural(seen.rounds_each, 'round')}, {say_hours(seen.seconds_each)}"
    when = "tonight" if seen.evenings == 1 else f"on each of {seen.evenings} evenings"
    return f"To be done by {name}: {each}, {when}."


def tell_film(seen: Outlook, plan: Plan) -> str:
    """Say how far the knitting gets during a two-hour film."""
    if seen.film_to.index >= len(plan.rounds):
        return "A two-hour film is enough to finish it."
    if not seen.film_rounds:
        return f"A two-hour film brings you to stitch {seen.film_to.stitch} of this round."
    to = done_name(Position(index=seen.film_to.index), plan)
    return f"A two-hour film brings {plural(seen.film_rounds, 'round')}: done to {to}."


def say_hours(seconds: float) -> str:
    """Say how long something takes, no more precisely than anyone can foresee: "about 3 hours 20 minutes".

    Args:
        seconds: Range: 0 and up. Unit: s.
    """
    minutes = round(seconds / 60)
    if minutes < 1:
        return "less than a minute"
    if minutes < 60:
        return f"about {plural(minutes, 'minute')}"
    if minutes >= 600:
        return f"about {round(minutes / 60)} hours"
    whole, rest = divmod(round(minutes, -1), 60)
    return f"about {plural(whole, 'hour')}{f' {rest} minutes' if rest else ''}"


def say_day(iso: str, today: str | None) -> str:
    """Say a date: "12 March", with its year if it is far off.

    Args:
        iso: ISO 8601.
        today: ISO 8601; None if not known.
    """
    name = on_day(iso).removeprefix(" on ")
    away = 0 if today is None else (date.fromisoformat(iso[:10]) - date.fromisoformat(today)).days
    return f"{name} {iso[:4]}" if abs(away) > FAR_DAYS else name
