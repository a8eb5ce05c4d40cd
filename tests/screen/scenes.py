"""A small garment and the moments of its knitting that the screen is looked at in."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

from stepper.craft.colours.colour import Rgb, rgb_from_hex
from stepper.plan.model import Plan
from stepper.screen.answer_lines import pick_answers
from stepper.screen.course import course_of
from stepper.screen.device_status import DeviceStatus, EarsState, HeardWords, MouthState
from stepper.screen.drawing.style import Depth, Terminal
from stepper.screen.event_log import list_entries
from stepper.screen.garment_record import record_garment
from stepper.screen.keys import Page
from stepper.screen.open_questions import find_asked
from stepper.screen.scene import Scene
from stepper.screen.ui_state import UIState, press_key
from stepper.screen.yarns import Yarns, yarns_of
from stepper.session.cues import Cue, View
from stepper.session.events import Event
from stepper.session.machine import Session
from stepper.session.state import State
from stepper.sitting.conductor import Conductor
from stepper.sitting.ports import ConductorPorts, Keep
from tests.plans import plan

AT = "2025-03-03T20:15:00+01:00"
"""When everything happens."""
COLOURS: dict[str, Rgb | None] = {
    "MC": rgb_from_hex("#ece6d8"),
    "A": rgb_from_hex("#1f4d3a"),
    "B": rgb_from_hex("#c4512d"),
}


def garment() -> Plan:
    """Make a small garment with all that a screen has to show: rib, an increase, three yarns in a round,
    markers, a division, rows, a decrease."""
    needle = {"needle_mm": 3.5}
    wide = {"needle_mm": 3.75}
    return plan(
        (
            "neckband",
            [
                ("co60", {"checkpoint": "after the cast-on", **needle}),
                ("(k2 p2)x15", {"remarks": ("Join in the round",), **needle}),
                ("(k2 p2)x15", needle),
            ],
        ),
        (
            "yoke",
            [
                ("pm k15 pm k15 pm k15 pm k15", {"remarks": ("Change to 3.75 mm needles",), **wide}),
                (
                    "(k6 m1)x10",
                    {"label": "First increase", "checkpoint": "after the increases", **wide},
                ),
                ("k2 k3:A k2 (k3:B k4 k3:A k4)x4 k3:B k4", {"chart": ("ridge", 1), **wide}),
                ("k1 k4:A k2 (k3:B k3 k4:A k4)x4 k3:B k4", {"chart": ("ridge", 2), **wide}),
                ("k70:B", {"chart": ("ridge", 3), **wide}),
                (
                    "k10 hold15:left_sleeve co5 k20 hold15:right_sleeve co5 k10",
                    {"label": "Divide", "checkpoint": "after the division", **wide},
                ),
            ],
        ),
        (
            "body",
            [
                ("k50", {"flat": True, "side": "RS", **wide}),
                ("p48 p2tog", {"flat": True, "side": "WS", **wide}),
                ("bo49", {"flat": True, "side": "RS", **wide}),
            ],
        ),
        title="Ridgeway yoke",
    )


class Desk:
    """A session in memory: cues go in, and what happened and was told is remembered."""

    def __init__(self, made: Plan | None = None, state: State | None = None) -> None:
        self.events: list[tuple[int, Event]] = []
        self.lines: list[str] = []
        self.keep: Keep = self._remember
        self.show: Callable[[str], None] = self.lines.append
        self.turn: Callable[[View], None] = lambda view: None
        # Looked up with each call, so that a screen can be put before the session, or a full disk behind it.
        self.conductor = Conductor(
            Session(made or garment(), state),
            ConductorPorts(
                keep=lambda events, state: self.keep(events, state),
                show=lambda line: self.show(line),
                turn=lambda view: self.turn(view),
                clock=lambda: AT,
            ),
        )
        self.conductor.begin("f")

    def _remember(self, events: tuple[Event, ...], state: State) -> None:
        first = state.seq - len(events) + 1
        self.events += list(enumerate(events, start=first))

    def do(self, *asked: str | Cue) -> Desk:
        """Work off cues or words; the lines of the last are kept."""
        for each in asked:
            self.lines.clear()
            if isinstance(each, str):
                self.conductor.offer_words(each)
            else:
                self.conductor.offer(each)
            self.conductor.drain()
        return self

    @property
    def state(self) -> State:
        """Where the session stands."""
        return self.conductor.session.state

    @property
    def plan(self) -> Plan:
        """The plan as knitted."""
        return self.conductor.session.plan

    def scene(self, *keys: str, devices: DeviceStatus | None = None) -> Scene:
        """Show the session after some keys that only change what is shown."""
        ui = UIState()
        for number, key in enumerate(keys):
            ui = press_key(ui, key, float(number), self.plan, self.state).ui
        return Scene(
            course=course_of(self.plan),
            state=self.state,
            ui=ui,
            yarns=yarns(),
            devices=devices or DeviceStatus(),
            asked=find_asked(self.plan, self.state),
            record=record_garment(self.events, self.plan),
            told=pick_answers(self.lines, self.conductor.session),
            history=list_entries(self.events, self.plan),
        )


def yarns() -> Yarns:
    """Return the garment's yarns."""
    return yarns_of(garment().yarns, COLOURS)


def at(words: Sequence[str], *keys: str, devices: DeviceStatus | None = None) -> Callable[[], Scene]:
    """Describe a moment: what was said before, which keys are pressed, what ears and mouth do."""
    return lambda: Desk().do(*words).scene(*keys, devices=devices)


_LISTENING = DeviceStatus(
    ears=EarsState.LISTENING, why_no_ears="", mouth=MouthState.SPEAKING, why_no_mouth=""
)
_HEARD = replace(_LISTENING, heard=HeardWords(text="where am i", did="answered"))
_CLOSED = replace(_LISTENING, ears=EarsState.CLOSED, mouth=MouthState.QUIET)


def _remedies(scene: Scene) -> Scene:
    """Turn to the remedies and mark the second."""
    return replace(scene, ui=UIState(page=Page.REMEDIES, down=1))


MOMENTS: dict[str, Callable[[], Scene]] = {
    "start": at([]),
    "count-asked": at(["next"]),
    "count-stands": at(["next", "count is 60"]),
    "rib": at(["go to round 3", "stitch 22"]),
    "needle-change": at(["go to yoke"]),
    "markers": at(["go to yoke", "stitch 20"]),
    "increase": at(["go to first increase", "stitch 30"]),
    "count-off": at(["go to yoke round 2", "count is 59"]),
    "part-asked": at(["go to yoke round 2", "count is 59", "no loop"]),
    "remedies": lambda: _remedies(Desk().do("go to yoke round 4", "count is 69", "no loop").scene()),
    "three-yarns": at(["go to yoke round 3", "by repeat", "next", "next"]),
    "heard": at(["go to yoke round 4", "where am I"], devices=_HEARD),
    "ears-closed": at(["go to yoke round 4", "stop listening"], devices=_CLOSED),
    "number": at(["go to yoke round 2"], "7", "0"),
    "note": at(["go to yoke round 2"], "n", "t", "i", "g", "h", "t", "space", "e", "r"),
    "weight": at(["go to yoke round 4"], "g", "tab", "4", "2"),
    "leaving": at(["go to yoke round 4"], "q"),
    "rows": at(["go to body", "next", "stitch 12"]),
    "finished": at(["go to body round 3", "next"]),
    "keys": at(["go to yoke"], "?"),
    "journal": at(["next", "count is 60", "next", "undo that", "make a note soft"], "j", "down", "down"),
    "chart": at(["go to yoke round 4", "stitch 20"], "d"),
    "from-above": at(["go to yoke round 4", "stitch 20"], "o"),
}
"""The moments, by name."""

SIZES = ((80, 24), (40, 12), (120, 40))
"""Columns and rows of the screens."""


def terminal(
    columns: int = 80, rows: int = 24, depth: Depth = Depth.NONE, *, blocks: bool = True
) -> Terminal:
    """Describe a terminal."""
    return Terminal(columns=columns, rows=rows, depth=depth, blocks=blocks)
