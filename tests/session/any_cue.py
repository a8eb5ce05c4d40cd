"""Cues of every kind, sensible and not, for the property tests."""

from __future__ import annotations

from hypothesis import strategies as st

from stepper.session import cues
from stepper.session.cues import Cue
from stepper.session.questions.topics import HelpWith, Topic
from stepper.session.state import Asking, Seen
from stepper.session.steps import By
from tests.playbook import AT

_NOW = st.just(AT)
_COUNTS = st.integers(-1, 400)

CUES: st.SearchStrategy[Cue] = st.one_of(
    st.builds(cues.Next, at=_NOW),
    st.builds(cues.Next, at=_NOW),
    st.builds(cues.Back, at=_NOW),
    st.builds(cues.Again, at=_NOW),
    st.builds(cues.Where, at=_NOW),
    st.builds(cues.Spacing, at=_NOW),
    st.builds(cues.HowMany, at=_NOW),
    st.builds(cues.HowLong, at=_NOW),
    st.builds(cues.Why, at=_NOW),
    st.builds(cues.Count, at=_NOW, stitches=_COUNTS),
    st.builds(cues.AtStitch, at=_NOW, stitch=_COUNTS),
    st.builds(cues.AtMarker, at=_NOW),
    st.builds(cues.Stride, at=_NOW, by=st.sampled_from(By)),
    st.builds(cues.HowFar, at=_NOW),
    st.builds(cues.Length, at=_NOW, length_mm=st.floats(-10, 400)),
    st.builds(cues.Weight, at=_NOW, yarn=st.sampled_from(["pine", "A", "coal"]), grams=st.floats(-1, 90)),
    st.builds(cues.Note, at=_NOW, text=st.text(max_size=9)),
    st.builds(
        cues.GoTo,
        at=_NOW,
        round_number=st.none() | st.integers(-1, 20),
        place=st.sampled_from(["", "yoke", "Body", "final increase", "attic"]),
    ),
    st.builds(cues.RemindMe, at=_NOW, rounds=st.integers(-1, 9), text=st.text(max_size=9)),
    st.builds(cues.RemindMe, at=_NOW, place=st.sampled_from(["Body", "divide", "attic"])),
    st.builds(cues.RemindMe, at=_NOW, length_mm=st.floats(-10, 400)),
    st.builds(cues.ForgetReminders, at=_NOW),
    st.builds(cues.About, at=_NOW, topic=st.sampled_from(Topic)),
    st.builds(cues.HowFarTo, at=_NOW, place=st.sampled_from(["Body", "yoke", "divide", "attic"])),
    st.builds(cues.Explain, at=_NOW, text=st.sampled_from(["k2tog", "yo", "p"])),
    st.builds(cues.RoundsDone, at=_NOW, rounds=st.integers(-1, 9)),
    st.builds(cues.RoundsBack, at=_NOW, rounds=st.integers(-1, 9)),
    st.builds(cues.StitchesBack, at=_NOW, stitches=st.integers(-1, 300)),
    st.builds(cues.HowFarIn, at=_NOW, place=st.sampled_from(["", "Body", "yoke", "attic"])),
    st.builds(cues.OffBy, at=_NOW, stitches=st.integers(-1, 300), sign=st.sampled_from([1, -1])),
    st.builds(cues.YarnDone, at=_NOW, yarn=st.sampled_from(["pine", "A", "coal"])),
    st.builds(cues.Undo, at=_NOW),
    st.builds(cues.Undo, at=_NOW),
    st.builds(cues.Redo, at=_NOW),
    st.builds(cues.Help, at=_NOW, about=st.sampled_from(HelpWith)),
    st.builds(cues.Film, at=_NOW, on=st.booleans()),
    st.builds(cues.Look, at=_NOW, view=st.sampled_from(cues.View)),
    st.builds(cues.Count, at=_NOW, stitches=st.integers(220, 250)),
    st.builds(cues.SectionCount, at=_NOW, stitches=_COUNTS),
    st.builds(cues.MarkerCounts, at=_NOW, counts=st.lists(_COUNTS, min_size=1, max_size=4).map(tuple)),
    st.builds(
        cues.Saw,
        at=_NOW,
        seen=st.sampled_from(Seen),
        number=st.integers(-1, 12),
        sign=st.sampled_from([1, -1]),
    ),
    st.builds(cues.FaultIn, at=_NOW, round_number=st.integers(-1, 20)),
    st.builds(cues.WhatHappened, at=_NOW),
    st.builds(cues.WhatElse, at=_NOW),
    st.builds(cues.CountAgain, at=_NOW),
    st.builds(cues.Yes, at=_NOW),
    st.builds(cues.No, at=_NOW, later=st.booleans(), unsure=st.booleans()),
    st.builds(cues.Count, at=_NOW, stitches=st.integers(220, 250), heard=st.floats(0, 1)),
    st.builds(cues.Length, at=_NOW, length_mm=st.floats(20, 400), heard=st.floats(0, 1)),
    st.builds(cues.Remedies, at=_NOW),
    st.builds(cues.Choose, at=_NOW, number=st.integers(0, 5)),
    st.builds(cues.Tink, at=_NOW, stitches=_COUNTS),
    st.builds(cues.Respace, at=_NOW, stitch=st.none() | _COUNTS, made=st.none() | st.integers(-1, 30)),
    st.builds(cues.Lifeline, at=_NOW),
    st.builds(cues.Ask, at=_NOW, asking=st.sampled_from(Asking)),
    st.builds(cues.CountAloud, at=_NOW),
    st.builds(cues.Ten, at=_NOW, stitches=_COUNTS),
    st.builds(cues.ThatIsAll, at=_NOW),
    st.builds(cues.ReadAlong, at=_NOW),
    st.builds(cues.Slower, at=_NOW),
    st.builds(cues.Faster, at=_NOW),
    st.builds(cues.PauseReading, at=_NOW),
    st.builds(cues.GoOn, at=_NOW),
)
"""Any cue that leaves the sitting open and the ears too."""
