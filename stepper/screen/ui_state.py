"""What the screen shows besides the knitting, and what a key does to it. Pure: time is passed in.

There is no mode to be trapped in. Figures begin a number that is shown at the bottom of the screen and fades;
every other key does what it always does. Words are typed only after the key that asks for them, while the
round stays in sight; space in an empty line is still a step. A pedal's PageDown and PageUp step whatever is
shown.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import field, replace
from typing import Final

from stepper.plan.model import Plan
from stepper.records import dataclass
from stepper.screen.debounce import Presses, PressVerdict, judge_press
from stepper.screen.drawing.rows import clean
from stepper.screen.keys import BY_KEY, LONGEST_NUMBER, NUMBER_KEYS, Page, TypedEntry
from stepper.session.cues import Choose, Cue, Enough, Note, SectionCount, Ten, Undo
from stepper.session.events import Advanced, Returned
from stepper.session.fault.inquiry import inquire
from stepper.session.state import State

FADES_S: Final = 8.0
"""Figures typed but not used are dropped after this long; so is a first q. Unit: s."""
LONGEST_LINE: Final = 2000
"""Most characters a typed line can have."""


@dataclass(frozen=True, slots=True, kw_only=True)
class UIState:
    """What is shown besides the knitting."""

    page: Page = Page.ROUND
    digits: str = ""
    """Figures typed so far."""
    entry: TypedEntry | None = None
    """What words are being typed for."""
    text: str = ""
    """Those words."""
    yarn: int = 0
    """Which yarn is being weighed, by its index in the file, from 0."""
    leaving: bool = False
    """Whether q was pressed once."""
    touched_s: float = 0.0
    """When the last key was pressed. Unit: s."""
    down: int = 0
    """How far the page is scrolled: rows down, entries back in the journal, remedies, or pages of a
    round's text."""
    along: int = 0
    """How far the chart is scrolled sideways. Unit: stitches."""
    part: int = 0
    """How often the marked remedy was turned on, where the window is too small for all of it."""
    presses: Presses = field(default_factory=Presses)


@dataclass(frozen=True, slots=True, kw_only=True)
class KeyRequest:
    """What a key asks of the rest of the program."""

    cues: tuple[Cue, ...] = ()
    words: str = ""
    """Words to be understood as if said; empty for none."""
    hush: bool = False
    """Whether to fall silent at once."""
    back_to: int | None = None
    """Journal entry to go back to, by its index in the list shown, from 0."""
    remedy: int | None = None
    """Remedy to take, by its index in the list shown, from 0."""


@dataclass(frozen=True, slots=True, kw_only=True)
class KeyOutcome:
    """What comes of a key."""

    ui: UIState
    request: KeyRequest = KeyRequest()


def press_key(ui: UIState, key: str, at_s: float, plan: Plan, state: State) -> KeyOutcome:
    """Work out what a key does.

    Args:
        ui: What is shown.
        key: Name of the key; a letter is its own name.
        at_s: When. Unit: s, on any clock that only goes forward.
        plan: The plan as knitted.
        state: Where the session stands.
    """
    ui = replace(fade_typed(ui, at_s), touched_s=at_s)
    if key == "escape":
        return KeyOutcome(ui=_home(ui), request=KeyRequest(hush=True))
    if ui.entry is not None and not _steps_through(ui, key):
        return _typed(ui, key, at_s, tuple(plan.yarns.values()))
    if key.isascii() and key.isdigit():
        return KeyOutcome(ui=replace(ui, digits=(ui.digits + key)[-LONGEST_NUMBER:], leaving=False))
    if ui.digits:
        return _number(ui, key, at_s, plan, state)
    moved = _moved(ui, key, at_s, plan)
    if moved is not None:
        return moved
    if key == "q":
        return _leave(ui, at_s)
    return _cued(ui, key, at_s, state)


def fade_typed(ui: UIState, at_s: float) -> UIState:
    """Drop what was typed but not used for a while."""
    if at_s - ui.touched_s < FADES_S:
        return ui
    return replace(ui, digits="", leaving=False)


def paste_text(ui: UIState, text: str) -> UIState:
    """Put pasted text into the line being typed; without such a line it does nothing."""
    if ui.entry is None:
        return ui
    return replace(ui, text=clean(ui.text + text)[:LONGEST_LINE])


def turn_to(ui: UIState, page: Page) -> UIState:
    """Turn to a page, at its beginning."""
    return replace(_home(ui), page=page)


def _home(ui: UIState) -> UIState:
    return replace(
        ui, page=Page.ROUND, digits="", entry=None, text="", leaving=False, down=0, along=0, part=0
    )


def _steps_through(ui: UIState, key: str) -> bool:
    """Return whether a key steps even though a line is being typed: pedals must never type into a note."""
    return key in ("page down", "page up") or (not ui.text and key == "space")


def _typed(ui: UIState, key: str, at_s: float, yarns: Sequence[str]) -> KeyOutcome:
    if key == "enter":
        # Remembered so that a bounce of this press is not taken for a step.
        return _entered(replace(ui, presses=judge_press(ui.presses, key, at_s)[1]), yarns)
    if key == "backspace":
        return KeyOutcome(ui=replace(ui, text=ui.text[:-1]))
    if key in ("tab", "down", "up") and ui.entry is TypedEntry.WEIGHT and yarns:
        step = -1 if key == "up" else 1
        return KeyOutcome(ui=replace(ui, yarn=(ui.yarn + step) % len(yarns)))
    letter = " " if key == "space" else key
    if len(letter) != 1:
        return KeyOutcome(ui=ui)
    return KeyOutcome(ui=replace(ui, text=(ui.text + letter)[:LONGEST_LINE]))


def _entered(ui: UIState, yarns: Sequence[str]) -> KeyOutcome:
    text, entry = ui.text.strip(), ui.entry
    closed = replace(ui, entry=None, text="")
    if not text:
        return KeyOutcome(ui=closed)
    if entry is TypedEntry.NOTE:
        return KeyOutcome(ui=closed, request=KeyRequest(cues=(Note(text=text),)))
    if entry is TypedEntry.LENGTH:
        return KeyOutcome(ui=closed, request=KeyRequest(words=f"measures {text}"))
    if entry is TypedEntry.WEIGHT:
        unit = "" if text[-1:].isalpha() else " g"
        yarn = yarns[ui.yarn % len(yarns)] if yarns else ""
        return KeyOutcome(ui=closed, request=KeyRequest(words=f"weigh {yarn} {text}{unit}"))
    return KeyOutcome(ui=closed, request=KeyRequest(words=text))


def _number(ui: UIState, key: str, at_s: float, plan: Plan, state: State) -> KeyOutcome:
    """Use the figures typed, or drop them."""
    number, without = int(ui.digits), replace(ui, digits="")
    if key == "backspace":
        return KeyOutcome(ui=replace(ui, digits=ui.digits[:-1]))
    for row in NUMBER_KEYS:
        if row.key == key:
            cue = pick_number_cue(plan, state, number) if key == "enter" else row.cue(number)
            return KeyOutcome(
                ui=replace(without, presses=judge_press(ui.presses, key, at_s)[1]), request=_one(cue)
            )
    return press_key(without, key, at_s, plan, state)


def pick_number_cue(plan: Plan, state: State, number: int) -> Cue:
    """Return the cue that enter makes of a number: the place to go on from or the count between landmarks if
    either was asked for, part of a count aloud, or else a count."""
    if state.question is not None:
        return Choose(number=number)
    if state.knitting.tens is not None:
        return Ten(stitches=number)
    inquiry = inquire(plan, state)
    if inquiry is not None and inquiry.asks_part(state.place):
        return SectionCount(stitches=number)
    return NUMBER_KEYS[0].cue(number)


def _moved(ui: UIState, key: str, at_s: float, plan: Plan) -> KeyOutcome | None:
    """Scroll a page that can be scrolled; enter goes back to the marked entry of the journal,
    or takes the marked remedy."""
    if ui.page is Page.ROUND and key == "tab":
        return KeyOutcome(ui=replace(ui, down=ui.down + 1))
    if ui.page is Page.REMEDIES and key == "tab":
        return KeyOutcome(ui=replace(ui, part=ui.part + 1))
    if ui.page in (Page.ROUND, Page.YOKE):
        return None
    steps = {"down": (1, 0), "up": (-1, 0), "left": (0, 1), "right": (0, -1)}.get(key)
    if steps is not None:
        # Never beyond the last row, or she would have to come all the way back.
        far, wide = len(plan.rounds), max((round_.after for round_ in plan.rounds), default=0)
        down = ui.down + steps[0]
        down = max(-far, min(far, down)) if ui.page is Page.CHART else max(0, down)
        along = max(-wide, min(wide, ui.along + 5 * steps[1]))
        return KeyOutcome(ui=replace(ui, down=down, along=along, part=0))
    if ui.page in (Page.JOURNAL, Page.REMEDIES) and key == "enter":
        home = replace(_home(ui), presses=judge_press(ui.presses, key, at_s)[1])
        taken = KeyRequest(back_to=ui.down) if ui.page is Page.JOURNAL else KeyRequest(remedy=ui.down)
        return KeyOutcome(ui=home, request=taken)
    return None


def _leave(ui: UIState, at_s: float) -> KeyOutcome:
    verdict, presses = judge_press(ui.presses, "q", at_s)
    ui = replace(ui, presses=presses)
    if verdict is not PressVerdict.COUNTS:
        return KeyOutcome(ui=ui)
    if ui.leaving:
        return KeyOutcome(ui=replace(ui, leaving=False), request=_one(Enough()))
    return KeyOutcome(ui=replace(ui, leaving=True))


def _cued(ui: UIState, key: str, at_s: float, state: State) -> KeyOutcome:
    row = BY_KEY.get(key)
    if row is None:
        return KeyOutcome(ui=replace(ui, leaving=False))
    verdict, presses = judge_press(ui.presses, key, at_s)
    ui = replace(ui, presses=presses, leaving=False)
    if verdict is PressVerdict.TAKE_BACK and row.steps and _stepped(state):
        return KeyOutcome(ui=ui, request=_one(Undo()))
    if verdict is not PressVerdict.COUNTS:
        return KeyOutcome(ui=ui)
    if row.entry is not None:
        return KeyOutcome(ui=replace(ui, entry=row.entry, text=""))
    if row.page is not None:
        page = Page.ROUND if ui.page is row.page else row.page
        return KeyOutcome(ui=turn_to(ui, page))
    if row.steps and not ui.text:
        ui = _home(ui)  # so she sees that it counted; half-typed words wait
    if row.cue is None:
        return KeyOutcome(ui=ui)
    if ui.page is Page.ROUND:
        ui = replace(ui, down=0)  # the answer begins at the top
    return KeyOutcome(ui=ui, request=_one(row.cue(state)))


def _stepped(state: State) -> bool:
    return bool(state.undo) and state.undo[-1].kind in (Advanced.__name__, Returned.__name__)


def _one(cue: Cue) -> KeyRequest:
    return KeyRequest(cues=(cue,))
