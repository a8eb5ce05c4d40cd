"""Openings held by waste yarn for a thumb or a heel, told in prose. Source: mittens and socks in print; common practice."""

from __future__ import annotations

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.told.waste_yarn import write_waste_yarn

WRITTEN = {
    "K3, k8 with waste yarn, slip these 8 sts back to left needle and knit them again, k to end.": "K3, k8, k to end.",
    "K2, knit next 8 sts with a piece of contrasting wool, then slip them back onto the left needle, knit to end.": "K2, knit to end.",
    "With waste yarn, knit the 28 heel sts, slip them back to the left needle and knit them again with the main yarn.": "k28.",
    "K2, knit 9 sts with waste yarn; slip these 9 sts back to the left needle and knit over them again in pattern with the working yarns.": (
        "K2, work 9 sts in pattern."
    ),
}
PRINTED = (
    "Knit across the 30 heel sts with waste yarn.",
    "K2, slip next 8 sts onto waste yarn, cast on 8 sts, k to end.",
    "K2, k8 with contrast yarn, k to end.",
    "K2, k8 with waste yarn, slip these 8 sts back to the left needle.",
    "K2, k8 with waste yarn, slip these 8 sts to a holder, k to end.",
    "K3, k8 with waste yarn, slip these 6 sts back to left needle and knit them again, k to end.",
)


def test_what_goes_back_is_knitted_once() -> None:
    """By the words that knit it again, or by those that go on; the waste yarn is only said."""
    made = {printed: write_waste_yarn(as_printed(printed)) for printed in WRITTEN}
    assert {printed: line.text for printed, line in made.items()} == WRITTEN
    assert all(any("left needle" in said for said in line.kept) for line in made.values())


def test_what_does_not_go_back_stays_as_printed() -> None:
    """It stays in its yarn, waits on it, nothing says how it goes on, or another number goes back."""
    assert tuple(write_waste_yarn(as_printed(printed)).text for printed in PRINTED) == PRINTED
