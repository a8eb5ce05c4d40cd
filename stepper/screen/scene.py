"""Everything the screen is drawn from, in one record: the same scene gives the same rows. No I/O."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import field

from stepper.plan.model import Plan
from stepper.records import dataclass
from stepper.screen.course import SummedPlan
from stepper.screen.device_status import DeviceStatus
from stepper.screen.event_log import LogEntry
from stepper.screen.garment_record import NO_RECORD, GarmentRecord
from stepper.screen.open_questions import NOTHING_ASKED, OpenQuestions
from stepper.screen.ui_state import UIState
from stepper.screen.yarns import NO_YARNS, Yarns
from stepper.session.state import State


@dataclass(frozen=True, slots=True, kw_only=True)
class Scene:
    """What there is to show."""

    course: SummedPlan
    state: State
    ui: UIState = field(default_factory=UIState)
    yarns: Yarns = NO_YARNS
    devices: DeviceStatus = field(default_factory=DeviceStatus)
    asked: OpenQuestions = NOTHING_ASKED
    """What is asked and still open."""
    told: tuple[str, ...] = ()
    """The answer to the last cue, without the step itself, which is shown anyway."""
    record: GarmentRecord = NO_RECORD
    """The making of the garment; told once it is finished."""
    history: tuple[LogEntry, ...] = ()
    """What happened, latest first, for the journal's page."""
    own_words: Mapping[str, str] = field(default_factory=dict)
    """The knitter's own words for cues, each with the vocabulary's wording it stands for."""

    @property
    def plan(self) -> Plan:
        """The plan as knitted."""
        return self.course.plan
