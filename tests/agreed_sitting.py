"""Sittings written out letter for letter: what is typed, what is said to it, and what is kept in the journal for it.

A sitting is a script. `> next step` is typed at the garment. In brackets stands what happens besides: `> (the next
evening)` opens it a day later, `> (size 2)` goes on in the size of that number, from 0, and `> (line 41 K 10.)` with a file
whose line 41 reads so; " / " parts two lines, and without words the line is taken out.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterable
from dataclasses import replace
from datetime import datetime, timedelta, timezone
from functools import lru_cache
from pathlib import Path

from stepper.language.effect_words import tell_effect
from stepper.language.understanding.understand import NotUnderstood, understand
from stepper.plan.compile import compile_plan
from stepper.plan.model import Plan
from stepper.project.reader import read_project
from stepper.session.codec import encode_event
from stepper.session.machine import Considered, Session

FIXTURES = Path(__file__).parent / "fixtures"
BEGIN = datetime(2026, 1, 5, 20, 0, tzinfo=timezone(timedelta(hours=1)))
SECONDS = 47
"""Between two things that are typed. Unit: s."""


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
        kind, number, *words = what.split(" ", 2)
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
        self.session.adopt(considered)
        kept = [_kept(*encode_event(event)) for event in considered.events]
        plan = self.session.plan
        return [*kept, *(line for effect in considered.effects if (line := tell_effect(effect, plan)))]


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
