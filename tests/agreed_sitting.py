"""Sittings written out letter for letter: what is typed, what is said to it, what is kept in the journal for it, and
where the session stands after that.

`+` stands before an event, `*` before an effect that has no words (and before how it is to be done, where that is not as
usual), `~` before what is another in the state: a field and its value, of long lists the number and the last.

A sitting is a script. `> next step` is typed at the garment. In brackets stands what happens besides: `> (the next
evening)` opens it a day later, `> (size 2)` goes on in the size of that number, from 0, and `> (line 41 K 10.)` with a file
whose line 41 reads so; " / " parts two lines, and without words the line is taken out. `> (the beat)` is the clock of what is
read along, `> (a long silence)` that of what was not said for long, `> (after 600 s)` lets so much time pass, and `> (badly heard: count 52)` is what the
recogniser is not sure of.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterable
from dataclasses import MISSING, Field, fields, is_dataclass, replace
from datetime import datetime, timedelta, timezone
from enum import Enum
from functools import lru_cache
from pathlib import Path

from stepper.language.effect_words import tell_effect
from stepper.language.understanding.understand import NotUnderstood, understand
from stepper.plan.compile import compile_plan
from stepper.plan.model import Plan
from stepper.project.reader import read_project
from stepper.session.clock_cues import Beat, Silence
from stepper.session.codec import encode_event
from stepper.session.effects import BeatIn, Effect, Refuse
from stepper.session.machine import Considered, Session
from stepper.session.state import Position, State

FIXTURES = Path(__file__).parent / "fixtures"
BEGIN = datetime(2026, 1, 5, 20, 0, tzinfo=timezone(timedelta(hours=1)))
SECONDS = 47
"""Between two things that are typed. Unit: s."""
LEFT_OUT = ("knitting", "seq")
"""Of the state, what is seen anyway: the first by its own fields, the second by the events."""
GROWING = ("undo", "redo", "worked", "days", "breaks", "notes")
"""Lists that are shown by their last."""


@lru_cache
def plan_of(text: str, size: int | None) -> Plan | None:
    """Return the plan of a file in a size, its own where none is given; None if it is refused."""
    project = read_project(text).project
    if project is None:
        return None
    return compile_plan(project if size is None else replace(project, size=size)).plan


class Sitting:
    """A garment on the needles, and a clock."""

    def __init__(self, garment: str) -> None:
        """Cast on."""
        self.text = (FIXTURES / f"{garment}.yaml").read_text(encoding="utf-8")
        self.size: int | None = None
        self.now = BEGIN
        plan = plan_of(self.text, None)
        assert plan is not None
        self.session = Session(plan)
        self.beats: list[BeatIn] = []
        self.lines = self._told(self.session.consider_opening(self.at, "as it is"))

    @property
    def at(self) -> str:
        """The moment, as events have it."""
        return self.now.isoformat()

    def hear(self, said: str) -> None:
        """Take what is typed, or what happens, and write down what comes of it."""
        self.now += timedelta(seconds=SECONDS)
        self.lines.append(f"> {said}")
        if said.startswith("("):
            self.lines += self._happened(said.strip("()"))
            return
        counting = self.session.state.knitting.tens is not None
        cue = understand(said, self.session.plan, at=self.at, counting=counting)
        self.lines += (
            [cue.sentence] if isinstance(cue, NotUnderstood) else self._told(self.session.consider(cue))
        )

    def _happened(self, what: str) -> list[str]:
        if what == "the next evening":
            self.now += timedelta(days=1)
            return self._told(self.session.consider_opening(self.at, self.session.state.fingerprint))
        if what == "the beat":
            beat = self.beats[-1]
            self.now += timedelta(seconds=round(beat.seconds) - SECONDS)
            return self._told(self.session.consider(Beat(at=self.at, seq=beat.seq)))
        if what == "a long silence":
            self.now += timedelta(minutes=12)
            return self._told(self.session.consider(Silence(at=self.at)))
        if what.startswith("badly heard: "):
            cue = understand(what.removeprefix("badly heard: "), self.session.plan, at=self.at)
            assert not isinstance(cue, NotUnderstood)
            return self._told(self.session.consider(replace(cue, heard=0.5)))
        kind, number, *words = what.split(" ", 2)
        if kind == "after":
            self.now += timedelta(seconds=int(number) - SECONDS)
            return []
        if kind == "size":
            text, size = self.text, int(number)
        else:
            rows = self.text.split("\n")
            indent = rows[int(number) - 1][: -len(rows[int(number) - 1].lstrip())]
            rows[int(number) - 1 : int(number)] = [
                indent + word for word in "".join(words).split(" / ") if word
            ]
            text, size = "\n".join(rows), self.size
        plan = plan_of(text, size)
        if plan is None:
            return ["refused"]
        self.text, self.size = text, size
        return self._told(self.session.consider_plan(plan, self.at, what))

    def _told(self, considered: Considered) -> list[str]:
        was = self.session.state
        self.session.adopt(considered)
        self.beats += [effect for effect in considered.effects if isinstance(effect, BeatIn)]
        told = [line for effect in considered.effects for line in _effect_rows(effect, self.session.plan)]
        return [*kept_rows(considered), *told, *state_rows(was, self.session.state)]


def _effect_rows(effect: Effect, plan: Plan) -> list[str]:
    """Write what an effect says, and what of it no words tell."""
    line = tell_effect(effect, plan)
    if not line:
        return [f"* {type(effect).__name__} {shown(effect)}".rstrip()]
    silent = ["* not aloud"] if isinstance(effect, Refuse) and not effect.aloud else []
    return [line, *silent]


def kept_rows(considered: Considered) -> list[str]:
    """Write a row for each event that is kept."""
    return [_kept(*encode_event(event)) for event in considered.events]


def state_rows(was: State, now: State) -> list[str]:
    """Write in one row what is another in the state than it was."""
    parts = [
        f"{name} {_field(name, new)}"
        for before, after in ((was.knitting, now.knitting), (was, now))
        for name in (field.name for field in fields(after))
        if name not in LEFT_OUT and (new := getattr(after, name)) != getattr(before, name)
    ]
    return [f"~ {'; '.join(parts)}"] if parts else []


def _field(name: str, value: object) -> str:
    """Write a field of the state: of the lists that only grow, their length and the last of them."""
    if name in GROWING and isinstance(value, tuple):
        return f"{len(value)} to {shown(value[-1])}" if value else "none"
    return shown(value)


def shown(value: object) -> str:
    """Write a value without what is as always."""
    if isinstance(value, Position):
        return f"{value.index}.{value.stitch}"
    if isinstance(value, Enum):
        return str(value.value)
    if isinstance(value, tuple):
        return f"[{', '.join(map(shown, value))}]"
    if isinstance(value, float):
        return f"{value:.5g}"
    if is_dataclass(value):
        told = [
            f"{field.name} {shown(part)}"
            for field in fields(value)
            if field.name not in ("knitting", "day") and (part := getattr(value, field.name)) != _usual(field)
        ]
        return f"({', '.join(told)})"
    moment = re.fullmatch(r"\d{4}-\d\d-(\d\d)T(\d\d:\d\d:\d\d)\+01:00", str(value))
    return " ".join(moment.groups()) if moment else str(value)


def _usual(field: Field[object]) -> object:
    return field.default if field.default is not MISSING else None


def _kept(kind: str, version: int, body: str) -> str:
    """Write an event as the journal has it, without its time and what is as always."""
    fields = {
        name: value
        for name, value in json.loads(body).items()
        if name != "at" and value not in (None, [], "")
    }
    return shortened(f"+ {kind} {version} {json.dumps(fields, ensure_ascii=False)}")


def shortened(row: str) -> str:
    """Write numbers with four digits behind the point: the last ones are the machine's."""
    return re.sub(r"\d+\.\d{5,}", lambda found: f"{float(found.group()):.4f}", row)


def replayed(garment: str, said: Iterable[str]) -> list[str]:
    """Return the whole sitting."""
    sitting = Sitting(garment)
    for each in said:
        sitting.hear(each)
    return sitting.lines
