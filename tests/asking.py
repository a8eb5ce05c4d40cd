"""Ask a session what a knitter asks, and compare what it holds: the loop that all lists of questions share.

A row of a list is where she is, what she says, maybe what she needs to hear, and what the answer holds; "?" is a
plain refusal.
"""

from __future__ import annotations

from stepper.language.understanding.understand import NotUnderstood, understand
from stepper.session.cues import Cue
from stepper.session.machine import Session
from tests.fixtures import plan_named
from tests.playbook import AT, after, opened, tell

PLACES = {
    "yoke": ("switchback", "go to round 13 of yoke", "stitch 40"),
    "neckband": ("switchback", "go to round 4 of neckband"),
    "body": ("switchback", "go to round 40 of body"),
    "sleeve": ("switchback", "go to round 30 of left sleeve"),
    "lace": ("shawl", "go to row 38", "stitch 10"),
    "raglan": ("cardigan", "go to row 30 of yoke"),
    "rows": ("cardigan", "go to row 4 of right band"),
    "heel": ("socks", "go to row 2 of first heel"),
}
"""Garment and what is said first, for each place."""


def rows_of(table: str) -> list[tuple[str, ...]]:
    """Return the rows of a list, each cut at its strokes."""
    return [tuple(part.strip() for part in line.split("|")) for line in table.strip().splitlines()]


def session_at(place: str) -> Session:
    """Return a session at a place."""
    name, *said = PLACES[place]
    return after(opened(plan_named(name)), *said)


def answer_to(place: str, said: str, *, nearly: type[Cue] = Cue) -> tuple[bool, str]:
    """Return whether something was understood at a place, and what was told.

    Args:
        place: Of `PLACES`.
        said: As typed or heard.
        nearly: What is taken from a wording that is nearly right: any cue where typed, `Asks` where heard.
    """
    session = session_at(place)
    cue = understand(said, session.plan, at=AT, nearly=nearly)
    if isinstance(cue, NotUnderstood):
        return False, cue.sentence
    return True, " ".join(tell(session, session.consider(cue)))


def hears(place: str, said: str, answer: str) -> None:
    """Check that what she says at the prompt is answered so, or plainly refused, never with something else."""
    understood, told = answer_to(place, said)
    if not understood:
        assert answer == "?", told
        assert told.endswith((".", "?"))
        return
    assert answer != "?", told
    assert answer in told, told
