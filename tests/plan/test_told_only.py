"""Which remarks leave nothing to do. The sentences are invented; what each is, is common practice."""

from __future__ import annotations

import pytest

from stepper.plan.told_only import is_told_only, lead_in_once, lets_stop_sooner


@pytest.mark.parametrize(
    "remark",
    [
        "The Fern repeats over 6 rounds, the Twig over 4",
        "The hem is meant to roll a little",
        "Now comes the shaping of the neck",
        "these 12 stitches are the repeat, worked to the end of the round",
        "The hem is meant to roll. The edge will curl",
    ],
)
def test_a_fact_leaves_nothing_to_do(remark: str) -> None:
    """She would have to say "next step" to nothing."""
    assert is_told_only(remark)


@pytest.mark.parametrize(
    "remark",
    [
        "pick up along the right front edge",
        "change to 4.5 mm needles",
        "with RS facing",
        "place a marker after 10 stitches from the beginning, without working them",
        "when it is done: Weave in all ends",
        "Weave in all ends",
        "Check your tension again",
        "The hem is meant to roll. Change to 4.5 mm needles",
    ],
)
def test_what_is_to_be_done_before_a_step_is_not_passed_over(remark: str) -> None:
    """Said along with the stitches it would be forgotten."""
    assert not is_told_only(remark)


def test_what_comes_when_a_piece_is_done_is_led_in_once() -> None:
    """Five times "when it is done" in a row are not listened to."""
    said = (
        "change needles",
        "when it is done: Weave in ends",
        "when it is done: When dry, trim ends",
        "with B",
        "when it is done: Block",
    )
    assert lead_in_once(said) == (
        "change needles", "when it is done: Weave in ends", "When dry, trim ends", "with B", "when it is done: Block",
    )  # fmt: skip
    assert lead_in_once(()) == ()


@pytest.mark.parametrize(
    ("remark", "sooner"),
    [
        ("If you like a single band then stop at 3 cm", True),
        ("for a short cuff, end after 12 rounds", True),
        ("the band is later folded double to the inside", False),
        ("the increases end at the underarm", False),
    ],
)
def test_what_lets_her_stop_sooner_is_told_before_it_is_too_late(remark: str, sooner: bool) -> None:
    """A band of 7 cm is knitted when she hears that 3 cm were enough."""
    assert lets_stop_sooner(remark) is sooner
