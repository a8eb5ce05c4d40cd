from __future__ import annotations

from pathlib import Path

import pytest

from stepper.ears.bundled.token_tree import build_token_tree
from tests.ears.hearing import NETWORKS, model, needs_recogniser, nudges, sound


@needs_recogniser
@pytest.mark.parametrize("network", NETWORKS)
def test_what_was_said_is_likelier_than_what_was_not(network: str, tmp_path: Path) -> None:
    """A synthetic voice saying "where are we" makes that likelier than other cues by far (15 where it was measured),
    and as likely as the free transcript, which is the same text."""
    tree = build_token_tree(("Go back", "Where are we", "Next step"), model(network).split)
    for each in nudges(sound("where are we", tmp_path)):
        encoded = model(network).encode(each)
        transcript, likely = model(network).transcribe(encoded)
        assert transcript == "Where are we?"
        assert likely <= 0
        found = model(network).search(encoded, tree)
        assert found[0].text == "Where are we"
        assert found[0].score == pytest.approx(likely, abs=0.5)  # its numbers are coarse
        assert len(found) == 3
        assert found[0].score - found[1].score > 8


@needs_recogniser
@pytest.mark.parametrize("network", NETWORKS)
def test_what_is_said_before_a_long_silence_is_taken_in_too(network: str, tmp_path: Path) -> None:
    """What was begun and what followed are heard as one, and may take more than ten seconds together."""
    long = sound("where are we", tmp_path) + bytes(10 * 2 * 16_000)
    encoded = model(network).encode(long)
    assert model(network).transcribe(encoded)[0] == "Where are we?"
    found = model(network).search(
        encoded, build_token_tree(("Go back", "Where are we"), model(network).split)
    )
    assert found[0].text == "Where are we"
