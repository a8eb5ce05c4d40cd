"""A small garment that goes on with a row that is not read, and a session that stands there."""

from __future__ import annotations

from dataclasses import replace

from stepper.plan.model import OpenKind, OpenRow, Plan, Proposed
from stepper.session.machine import Session
from stepper.session.state import Knitting, Position, State
from tests.plans import plan
from tests.playbook import AT

ROW = OpenRow(line=12, section="body", flat=False, words="Twirl the loops over the thumb.", stitches=40)
ONE_ROUND = Proposed(kind=OpenKind.ROWS, rows=1, stitches=36, printed=True)


def cowl(*, proposed: Proposed | None = None, trouble: str = "", fabric: str = "") -> Plan:
    """Return a garment of three rounds of 40 stitches, behind which a row is open."""
    made = plan(("body", ["co40", "k40", "k40"]))
    return replace(made, open=replace(ROW, proposed=proposed, trouble=trouble, fabric=fabric))


def evening(garment: Plan, index: int = 3) -> Session:
    """Return a session at a round of a garment, by default behind the last that is read."""
    knitting = Knitting(place=Position(index=index))
    return Session(garment, State(seq=4, knitting=knitting, last_cue_at=AT))
