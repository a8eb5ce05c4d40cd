"""Rounds told by instep and sole, or by front and back needle. Source: the wording of socks in print; common practice."""

from __future__ import annotations

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.told.foot_rounds import write_foot_rounds

DEC = "k1, ssk, k to last 3 sts, k2tog, k1"
WRITTEN = {
    "Rnd 1: Knit to 3 sts before the instep, k2tog, k1; instep in pattern; k1, ssk, knit to end.": (
        "Rnd 1: On sole: knit to last 3 sts, k2tog, k1; on instep: work in pattern to end; on sole: k1, ssk, k to end."
    ),
    "Round 1: Knit to last 3 sole sts before the instep, k2tog, k1 / k1, ssk, knit to last 3 instep sts, k2tog, k1 / k1, ssk, knit to end.": (
        "Round 1: On sole: knit to last 3 sts, k2tog, k1; on instep: k1, ssk, knit to last 3 sts, k2tog, k1; on sole: k1, ssk, k to end."
    ),
    "Rnd 2: Knit the sole, pattern over the instep, knit the rest.": (
        "Rnd 2: On sole: k to end; on instep: work in pattern to end; on sole: k to end."
    ),
    "Sole: knit. Instep: work in pattern as set.": "On sole: k to end; on instep: work in pattern to end.",
    "Front needle: K1, ssk, k to last 3 sts, k2tog, k1; back needle: the same.": f"Front needle: {DEC}; back needle: {DEC}.",
    "Continue with the sole in St st and the instep in pattern until foot measures 12 cm.": (
        "On sole: k to end; on instep: work in pattern to end. Rep last round until foot measures 12 cm."
    ),
    "Work 4 rounds even, instep in pattern and sole in stockinette.": (
        "On instep: work in pattern to end; on sole: k to end. Rep last round 3 times."
    ),
    "Rnd 2: Work even in established pattern on instep and in St st on sole.": "Rnd 2: On instep: work in pattern to end; on sole: k to end.",
    "For 5 cm, keep the front needle in pattern and the back needle in stockinette.": (
        "Front needle: work in pattern to end; back needle: k to end. Rep last round for 5 cm."
    ),
}
PRINTED = (
    "Knit to 3 sts before marker, k2tog, k1; work instep in pattern; sm, k1, ssk, knit to end.",
    "Rnd 1: Knit to 3 sts before the instep, k2tog, k1.",
    "Rnd 2: Work even, keeping the instep in pattern.",
    "Pick up and knit 8 sts, work across instep, pick up and knit 8 sts.",
    "Work the instep in pattern and the heel in St st.",
    "Rnd 1: On the instep, work chart row 1; on the sole, knit.",
    "Back needle: k to last 3 sts; front needle: as for the back needle of the first sock.",
    "Front needle: work rows 1-8 of chart; back needle: knit.",
    "Continue with the front needle in pattern until work measures 10 cm.",
    "Change to the front needle and knit to end.",
    "Sole: knit. Heel: purl.",
)


def test_each_place_has_its_clauses() -> None:
    """What names no place belongs to the one in hand, and behind a half worked to its end to the other."""
    assert {printed: write_foot_rounds(as_printed(printed)).text for printed in WRITTEN} == WRITTEN


def test_what_is_told_of_one_place_or_in_other_words_stays_as_printed() -> None:
    """A half of which nothing is said, a marker, a third place, a chart."""
    assert tuple(write_foot_rounds(as_printed(printed)).text for printed in PRINTED) == PRINTED
