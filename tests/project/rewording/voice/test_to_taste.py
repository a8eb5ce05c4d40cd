"""Lengths by a body or a taste stand beside the printed one, which is worked. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.voice.to_taste import take_tastes_out


@pytest.mark.parametrize(
    ("printed", "worked", "said"),
    [
        (
            "Knit until the sleeve is 38 cm, or 5 cm short of your wrist bone.",
            "Knit until the sleeve is 38 cm.",
            "or 5 cm short of your wrist bone",
        ),
        ("Knit for 10 cm, or as long as you like.", "Knit for 10 cm.", "or as long as you like"),
        (
            "Work until piece measures 16 cm, or until your yarn is nearly used up.",
            "Work until piece measures 16 cm.",
            "or until your yarn is nearly used up",
        ),
        (
            "Rep this round until brim measures 4 cm (for a single brim) or 9 cm (to fold up).",
            "Rep this round until brim measures 4 cm.",
            "(for a single brim) or 9 cm (to fold up)",
        ),
        (
            "Work in rib for 3 cm (or 7 cm, for a doubled neckband).",
            "Work in rib for 3 cm.",
            "or 7 cm, for a doubled neckband",
        ),
        (
            "Work until your sock is 6 in, or as tall as you've got patience for.",
            "Work until your sock is 6 in.",
            "or as tall as you've got patience for",
        ),
        (
            "Knit until the brim measures 4 cm; for a double brim, work 9 cm and turn up.",
            "Knit until the brim measures 4 cm.",
            "; for a double brim, work 9 cm and turn up",
        ),
        (
            "Work in rib for 3 cm (or 7 cm, then fold inside and stitch down).",
            "Work in rib for 3 cm.",
            "or 7 cm, then fold inside and stitch down",
        ),
        ("Work until it is 26 cm (or 6 cm less than you want).", "Work until it is 26 cm.", "or 6 cm less than you want"),
        (
            "Rep rnd 1 for 5 in for turtleneck (or 1 in for crewneck).",
            "Rep rnd 1 for 5 in.",
            "for turtleneck (or 1 in for crewneck)",
        ),
        (
            "Knit until the body is as long as you like, or about 35 cm.",
            "Knit until body measures 35 cm.",
            "is as long as you like",
        ),
    ],
)
def test_the_printed_length_is_worked_and_the_rest_told(printed: str, worked: str, said: str) -> None:
    """She is told that she may choose, and nothing waits for it."""
    taken = take_tastes_out(as_printed(printed))
    assert (taken.text, taken.kept) == (worked, (said,))


@pytest.mark.parametrize(
    "printed",
    [
        "Knit until the sleeve is 40 cm, or 3 cm longer than the first sleeve.",
        "Knit until the sleeve is 40 cm, or 20 rounds.",
        "Knit until the sleeve is as long as you like.",
        "Knit 4 rounds, or until piece measures 5 cm.",
        "Knit until the brim measures 4 cm; for size large, work 9 cm.",
        "Knit for 10 cm; for a hem, work 2 cm.",
        "Knit until the brim measures 4 cm; for the larger sizes, work 9 cm.",
        "Work in rib for 5 cm for size small (or 7 cm for size large).",
        "Work in rib for 5 cm for the front (or 7 cm for the back).",
        "Knit for 5 cm, or until you reach your marker.",
        "Work in rib for 3 cm (or 7 cm, decreasing 4 sts).",
    ],
)
def test_what_is_no_matter_of_taste_stays(printed: str) -> None:
    """Another piece is a measure, and rows that are printed are to be worked."""
    assert take_tastes_out(as_printed(printed)).text == printed
