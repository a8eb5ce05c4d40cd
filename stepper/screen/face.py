"""What the screen shows besides the knitting, and what a key does to it. Pure: time is handed in.

There is no mode to fall into. Figures begin a number that stands at the foot of the screen and fades; every
other key does what it always does. Words are typed only after the key that asks for them, while the round
stays in sight; space in an empty line is still a step. A pedal's PageDown and PageUp step whatever is shown.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from typing import Final

from stepper.plan.model import Plan
from stepper.screen.debounce import Presses, PressVerdict, judge
from stepper.screen.keys import BY_KEY, LONGEST_NUMBER, NUMBER_KEYS, Page, TypedEntry
from stepper.screen.rows import clean
from stepper.session.cues import Choose, Cue, Enough, Note, SectionCount, Ten, Undo
from stepper.session.fault.inquiry import inquire
from stepper.session.state import State

FADES_S: Final = 8.0
"""Figures typed and not used are gone after so long; so is a first q. Unit: s."""
LONGEST_LINE: Final = 2000
"""Letters of a typed line at most."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Face:
    """What is shown besides the knitting."""

    page: Page = Page.ROUND
    digits: str = ""
    """Figures typed so far."""
    entry: TypedEntry | None = None
    """What words are being typed for."""
    text: str = ""
    """Those words."""
    yarn: int = 0
    """Which yarn is weighed, by its place in the file, from 0."""
    leaving: bool = False
    """Whether q was pressed once."""
    touched_s: float = 0.0
    """When the last key was pressed. Unit: s."""
    down: int = 0
    """How far the page is moved: rows down, or entries back in the journal."""
    along: int = 0
    """How far the chart is moved, in stitches."""
    presses: Presses = field(default_factory=Presses)


@dataclass(frozen=True, slots=True, kw_only=True)
class Asked:
    """What a key asks of the rest of the program."""

    cues: tuple[Cue, ...] = ()
    words: str = ""
    """Words to be understood as if said; empty for none."""
    hush: bool = False
    """Whether to fall silent at once."""
    back_to: int | None = None
    """Journal entry to go back to, by its place in the list shown, from 0."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Pressed:
    """What comes of a key."""

    face: Face
    asked: Asked = Asked()


NOTHING: Final = Asked()


def press(face: Face, key: str, at_s: float, plan: Plan, state: State) -> Pressed:
    """Work out what a key does.

    Args:
        face: What is shown.
        key: Name of the key; a letter stands for itself.
        at_s: When. Unit: s, on any clock that only goes forward.
        plan: The plan as knitted.
        state: Where the session stands.
    """
    face = replace(faded(face, at_s), touched_s=at_s)
    if key == "escape":
        return Pressed(face=_home(face), asked=Asked(hush=True))
    if face.entry is not None and not _steps_through(face, key):
        return _typed(face, key, at_s, tuple(plan.yarns.values()))
    if key.isascii() and key.isdigit():
        return Pressed(face=replace(face, digits=(face.digits + key)[-LONGEST_NUMBER:], leaving=False))
    if face.digits:
        return _number(face, key, at_s, plan, state)
    moved = _moved(face, key, at_s, plan)
    if moved is not None:
        return moved
    if key == "q":
        return _leave(face, at_s)
    return _cued(face, key, at_s, state)


def faded(face: Face, at_s: float) -> Face:
    """Let what was typed and not used go after a while."""
    if at_s - face.touched_s < FADES_S:
        return face
    return replace(face, digits="", leaving=False)


def pasted(face: Face, text: str) -> Face:
    """Take words from the clipboard into the line being typed; anywhere else they do nothing."""
    if face.entry is None:
        return face
    return replace(face, text=clean(face.text + text)[:LONGEST_LINE])


def turned(face: Face, page: Page) -> Face:
    """Turn to a page, from its beginning."""
    return replace(_home(face), page=page)


def _home(face: Face) -> Face:
    return replace(face, page=Page.ROUND, digits="", entry=None, text="", leaving=False, down=0, along=0)


def _steps_through(face: Face, key: str) -> bool:
    """Tell whether a key steps although a line is open: pedals must never type into a note."""
    return key in ("page down", "page up") or (not face.text and key == "space")


def _typed(face: Face, key: str, at_s: float, yarns: Sequence[str]) -> Pressed:
    if key == "enter":
        # Remembered, so that a bounce of this press is not taken for a step.
        return _entered(replace(face, presses=judge(face.presses, key, at_s)[1]), yarns)
    if key == "backspace":
        return Pressed(face=replace(face, text=face.text[:-1]))
    if key in ("tab", "down", "up") and face.entry is TypedEntry.WEIGHT and yarns:
        step = -1 if key == "up" else 1
        return Pressed(face=replace(face, yarn=(face.yarn + step) % len(yarns)))
    letter = " " if key == "space" else key
    if len(letter) != 1:
        return Pressed(face=face)
    return Pressed(face=replace(face, text=(face.text + letter)[:LONGEST_LINE]))


def _entered(face: Face, yarns: Sequence[str]) -> Pressed:
    text, entry = face.text.strip(), face.entry
    closed = replace(face, entry=None, text="")
    if not text:
        return Pressed(face=closed)
    if entry is TypedEntry.NOTE:
        return Pressed(face=closed, asked=Asked(cues=(Note(text=text),)))
    if entry is TypedEntry.LENGTH:
        return Pressed(face=closed, asked=Asked(words=f"measures {text}"))
    if entry is TypedEntry.WEIGHT:
        unit = "" if text[-1:].isalpha() else " g"
        yarn = yarns[face.yarn % len(yarns)] if yarns else ""
        return Pressed(face=closed, asked=Asked(words=f"weigh {yarn} {text}{unit}"))
    return Pressed(face=closed, asked=Asked(words=text))


def _number(face: Face, key: str, at_s: float, plan: Plan, state: State) -> Pressed:
    """Use the figures typed, or let them go."""
    number, without = int(face.digits), replace(face, digits="")
    if key == "backspace":
        return Pressed(face=replace(face, digits=face.digits[:-1]))
    for row in NUMBER_KEYS:
        if row.key == key:
            cue = number_cue(plan, state, number) if key == "enter" else row.cue(number)
            return Pressed(face=replace(without, presses=judge(face.presses, key, at_s)[1]), asked=_one(cue))
    return press(without, key, at_s, plan, state)


def number_cue(plan: Plan, state: State, number: int) -> Cue:
    """Give what enter makes of a number: a place to go on where that is asked, a part of a count aloud, an
    answer where a count between landmarks is asked for, else a count."""
    if state.question is not None:
        return Choose(number=number)
    if state.knitting.tens is not None:
        return Ten(stitches=number)
    inquiry = inquire(plan, state)
    if inquiry is not None and inquiry.search.single and inquiry.search.next is not None:
        return SectionCount(stitches=number)
    return NUMBER_KEYS[0].cue(number)


def _moved(face: Face, key: str, at_s: float, plan: Plan) -> Pressed | None:
    """Move a page that can be moved; the journal's enter goes back to the entry marked."""
    if face.page in (Page.ROUND, Page.YOKE):
        return None
    steps = {"down": (1, 0), "up": (-1, 0), "left": (0, 1), "right": (0, -1)}.get(key)
    if steps is not None:
        # Never further than there can be anything, or she would have to come all the way back.
        far, wide = len(plan.rounds), max((round_.after for round_ in plan.rounds), default=0)
        down = face.down + steps[0]
        down = max(-far, min(far, down)) if face.page is Page.CHART else max(0, down)
        along = max(-wide, min(wide, face.along + 5 * steps[1]))
        return Pressed(face=replace(face, down=down, along=along))
    if face.page is Page.JOURNAL and key == "enter":
        home = replace(_home(face), presses=judge(face.presses, key, at_s)[1])
        return Pressed(face=home, asked=Asked(back_to=face.down))
    return None


def _leave(face: Face, at_s: float) -> Pressed:
    verdict, presses = judge(face.presses, "q", at_s)
    face = replace(face, presses=presses)
    if verdict is not PressVerdict.COUNTS:
        return Pressed(face=face)
    if face.leaving:
        return Pressed(face=replace(face, leaving=False), asked=_one(Enough()))
    return Pressed(face=replace(face, leaving=True))


def _cued(face: Face, key: str, at_s: float, state: State) -> Pressed:
    row = BY_KEY.get(key)
    if row is None:
        return Pressed(face=replace(face, leaving=False))
    verdict, presses = judge(face.presses, key, at_s)
    face = replace(face, presses=presses, leaving=False)
    if verdict is PressVerdict.TAKE_BACK and row.steps and _stepped(state):
        return Pressed(face=face, asked=_one(Undo()))
    if verdict is not PressVerdict.COUNTS:
        return Pressed(face=face)
    if row.entry is not None:
        return Pressed(face=replace(face, entry=row.entry, text=""))
    if row.page is not None:
        page = Page.ROUND if face.page is row.page else row.page
        return Pressed(face=turned(face, page))
    if row.steps and not face.text:
        face = _home(face)  # she sees that it counted; words half typed wait
    return Pressed(face=face, asked=_one(row.cue(state)) if row.cue is not None else NOTHING)


def _stepped(state: State) -> bool:
    return bool(state.undo) and state.undo[-1].kind in ("Advanced", "Returned")


def _one(cue: Cue) -> Asked:
    return Asked(cues=(cue,))
