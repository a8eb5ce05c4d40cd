"""Stitches laid over numbered needles, told in prose. Source: the wording of socks and mittens in print; common practice."""

from __future__ import annotations

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.told.needle_layouts import write_needle_layouts

TWO = "Divide over 2 needles, 30 sts on needle 1, 30 sts on needle 2"
WRITTEN = {
    "Place the first 30 sts on Needle 1 (instep) and the remaining 30 sts on Needle 2 (sole).": f"{TWO}. Instep on needle 1.",
    "Divide evenly: 30 sts on N1 and 30 sts on N2. Join in the round.": f"{TWO}. Join in the round.",
    "Slip 14 sts to each of needles 1 and 3, and 28 sts to needle 2.": (
        "Divide over 3 needles, 14 sts on needle 1, 28 sts on needle 2, 14 sts on needle 3."
    ),
    "Arrange sts so that 20 (22, 26) sts lie on needles 1 and 2 together and the same on needles 3 and 4.": (
        "Divide over 4 needles, 10 (11, 13) sts on needle 1, 10 (11, 13) sts on needle 2, "
        "10 (11, 13) sts on needle 3, 10 (11, 13) sts on needle 4."
    ),
    "Needles 1 and 2 hold the instep sts, needles 3 and 4 hold the sole sts.": "Instep on needles 1 and 2.",
    "Slip sts from needle 2 on to needle 1 and from needle 4 on to needle 3, 8 sts on each.": (
        "Divide over 2 needles, 8 sts on needle 1, 8 sts on needle 2."
    ),
    "Arrange sts so that there are 28 on each needle and join.": "28 sts on each needle. Join.",
    "Needle 1: 16 sts, needle 2: 32 sts.": "Lying over 2 needles, 16 sts on needle 1, 32 sts on needle 2.",
    "K across 32 instep sts, then work heel on next 30 sts only.": (
        "K32 sts to new beginning. Work in rows over next 30 sts of heel, hold others for instep."
    ),
    "Knit across heel sts. Pick up and knit 9 sts along the flap. N1: Work across instep. N2: Pick up and knit 9 sts, k8.": (
        "Knit across heel sts, Pick up and knit 9 sts along the flap, Work across instep, Pick up and knit 9 sts, k8."
    ),
    "Knit across N1. The heel flap is worked back and forth over the 28 sts of N2; N1 sts are on hold.": (
        "K needle 1 to the new beginning. Work in rows over next 28 sts of heel, hold others for instep."
    ),
}
PRINTED = (
    "Place 14 sts on needle 1 and 28 sts on needle 3.",
    "Place 14 sts on needle 1, 14 sts on a holder and 28 sts on needle 2.",
    "Divide over 3 needles, placing 14 sts on needle 1, 28 sts on needle 2 and the rest on needle 3.",
    "Slip 14 sts to needles 1 and 3, and 28 sts to needle 2.",
    "Slip 2 sts from needle 1 to needle 2.",
    "Place the last 15 sts on N1 (instep) and the remaining 25 sts on N2.",
    "Slip sts from needle 2 on to needle 3 and from needle 4 on to needle 1, 8 sts on each.",
    "Needle 1: 3.5 mm; needle 2: 4 mm.",
    "Needle 2 is the smaller needle.",
    "74 sts total: 28 on N1, 46 on N2.",
)


def test_every_needle_from_the_first_has_its_number() -> None:
    """Told in any order, and of two needles together half on each."""
    assert {printed: write_needle_layouts(as_printed(printed)).text for printed in WRITTEN} == WRITTEN


def test_other_lists_and_needles_stay_as_printed() -> None:
    """A needle left out, the last stitches on the first, a holder among them, "14 sts to needles 1 and 3", which may be both together or each, sizes."""
    assert tuple(write_needle_layouts(as_printed(printed)).text for printed in PRINTED) == PRINTED
