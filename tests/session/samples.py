"""Events of every kind, for the tests of folding and of the codec."""

from __future__ import annotations

from typing import Any

from hypothesis import strategies as st

from stepper.plan.model import OpenKind
from stepper.plan.under_way.absorb import Mend
from stepper.plan.under_way.carry import Difference
from stepper.plan.under_way.lengthen import LengthCorrection
from stepper.plan.under_way.respace import Respacing
from stepper.plan.under_way.resuming import PlaceChoice
from stepper.session import events
from stepper.session.events import Event
from stepper.session.fault.ways import RemedyKind
from stepper.session.state import (
    Adapted,
    Answer,
    Asking,
    Doubt,
    DoubtKind,
    Observation,
    OpenAnswer,
    OpenWork,
    Position,
    Question,
    ReadingAlong,
    Reminder,
    Seen,
)
from stepper.session.steps import By, RoundSort

COUNTS = st.integers(0, 9999)
PLACES = st.builds(Position, index=st.integers(0, 900), stitch=COUNTS)
TIMES = st.sampled_from(["2025-03-03T20:15:00+01:00", "2025-12-31T23:59:59-05:00"])
POSITIVE = st.floats(0.1, 5000, allow_nan=False)
CORRECTIONS = st.builds(LengthCorrection, stretch=st.integers(0, 9), rounds=COUNTS, rounds_per_10cm=POSITIVE)
CHANGES = st.builds(
    Difference,
    kind=st.sampled_from(["changed", "added", "removed", "renamed"]),
    was=st.text(max_size=5),
    section=st.text(),
    first=COUNTS,
    last=COUNTS,
    label=st.none() | st.text(),
    rounds_before=COUNTS,
    rounds_after=COUNTS,
    count_before=COUNTS,
    count_after=COUNTS,
    knitted=st.booleans(),
)

MENDS = st.builds(
    Mend,
    index=COUNTS,
    stitch=COUNTS,
    change=st.integers(-9, 9),
    origin=st.integers(-1, 99),
    spread=st.booleans(),
)
CHOICES = st.builds(
    PlaceChoice,
    index=COUNTS,
    stitch=COUNTS,
    section=st.text(max_size=5),
    number=COUNTS,
    flat=st.booleans(),
    label=st.none() | st.text(max_size=5),
    have=COUNTS,
    want=COUNTS,
    rounds_back=COUNTS,
    stitches_back=COUNTS,
    places=st.lists(COUNTS, max_size=3).map(tuple),
    made=COUNTS,
    before=COUNTS,
    after=COUNTS,
)
RESPACINGS = st.builds(
    Respacing,
    index=COUNTS,
    section=st.text(max_size=5),
    before=COUNTS,
    after=COUNTS,
    places=st.lists(COUNTS, max_size=4).map(tuple),
)
ADAPTED = st.builds(
    Adapted,
    corrections=st.lists(CORRECTIONS, max_size=2).map(tuple),
    mends=st.lists(MENDS, max_size=2).map(tuple),
    respacings=st.lists(RESPACINGS, max_size=2).map(tuple),
    lifelines=st.lists(PLACES, max_size=2).map(tuple),
)
QUESTIONS = st.builds(
    Question,
    new_fingerprint=st.text(),
    choices=st.lists(CHOICES, min_size=1, max_size=4).map(tuple),
    adapted=ADAPTED,
)
FIELDS: dict[str, st.SearchStrategy[Any]] = {
    "at": TIMES,
    "fingerprint": st.text(),
    "old_fingerprint": st.text(),
    "new_fingerprint": st.text(),
    "origin": PLACES,
    "place": PLACES,
    "corrections": st.lists(CORRECTIONS, max_size=3).map(tuple),
    "changes": st.lists(CHANGES, max_size=3).map(tuple),
    "have": COUNTS,
    "want": COUNTS,
    "found": st.booleans(),
    "comparable": st.booleans(),
    "stitches": COUNTS,
    "worked": COUNTS,
    "doubt": st.none()
    | st.builds(
        Doubt,
        kind=st.sampled_from(DoubtKind),
        place=PLACES,
        number=st.integers(-99, 999),
        length_mm=st.floats(0, 900, allow_nan=False),
    ),
    "work": st.sampled_from(["", "plain", "rib", "colourwork"]),
    "by": st.sampled_from(By),
    "sort": st.none() | st.sampled_from(RoundSort),
    "expected": COUNTS,
    "expected_end": COUNTS,
    "length_mm": POSITIVE,
    "section": st.text(),
    "rounds_worked": COUNTS,
    "rounds_before": COUNTS,
    "rounds_left": COUNTS,
    "target_mm": POSITIVE,
    "planned_per_10cm": POSITIVE,
    "correction": st.none() | CORRECTIONS,
    "yarn": st.text(),
    "grams": POSITIVE,
    "text": st.text(),
    "seq": st.integers(1, 70),
    "answers": st.lists(st.builds(Answer, first=COUNTS, end=COUNTS, stitches=COUNTS), max_size=4).map(tuple),
    "sight": st.none()
    | st.builds(Observation, seen=st.sampled_from(Seen), number=st.integers(-99, 99), index=st.none() | COUNTS),
    "index": st.none() | COUNTS,
    "remedy": st.sampled_from(RemedyKind),
    "difference": st.integers(-99, 99),
    "minutes": POSITIVE,
    "mend": st.none() | MENDS,
    "mends": st.lists(MENDS, max_size=2).map(tuple),
    "undone": COUNTS,
    "off_path": st.booleans(),
    "reminder": st.builds(Reminder, index=COUNTS, text=st.text(max_size=9)),
    "made": COUNTS,
    "planned": COUNTS,
    "respacing": RESPACINGS,
    "respacings": st.none() | st.lists(RESPACINGS, max_size=2).map(tuple),
    "lifelines": st.none() | st.lists(PLACES, max_size=2).map(tuple),
    "answer": st.integers(0, 4),
    "settled": st.booleans(),
    "unplaced": COUNTS,
    "said": st.builds(
        OpenWork, rows=COUNTS, stitches=st.none() | COUNTS, declined=st.booleans(), idle=st.booleans()
    ),
    "meant": st.builds(
        OpenAnswer, kind=st.sampled_from(OpenKind), rows=COUNTS, stitches=st.none() | COUNTS
    ),
    "words": st.text(max_size=9),
    "question": QUESTIONS,
    "asking": st.sampled_from(Asking),
    "reading": st.none()
    | st.builds(ReadingAlong, index=COUNTS, factor=st.floats(0.25, 4, allow_nan=False), held=st.booleans()),
    "tens": st.lists(COUNTS, max_size=4).map(tuple),
}
"""A strategy for each field of any event, by its name."""


def of_kind(kind: type[Event]) -> st.SearchStrategy[Event]:
    """Return events of one kind with all their fields filled in."""
    names = kind.__dataclass_fields__
    return st.builds(kind, **{name: FIELDS[name] for name in names})


EVENTS: st.SearchStrategy[Event] = st.one_of(*map(of_kind, events.EVENTS))
"""Any event."""
