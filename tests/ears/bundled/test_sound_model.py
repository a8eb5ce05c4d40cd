from __future__ import annotations

from itertools import groupby
from pathlib import Path

import numpy as np
import pytest

from stepper.ears.bundled import sound_model
from stepper.ears.bundled.sound_distance import SoundDistances
from stepper.ears.bundled.sound_model import SoundModel
from stepper.errors import SurroundingsError
from stepper.mouth.pronunciation import SOUNDS, Pronouncer
from tests.ears.hearing import NETWORKS, model, needs_recogniser, nudges, sound

pytestmark = needs_recogniser


@pytest.mark.parametrize("network", NETWORKS)
def test_the_sounds_of_a_sentence_are_found_frame_by_frame(network: str, tmp_path: Path) -> None:
    """Nearer to the sentence than to another of its length, and each frame's sounds add up to one.

    Where it was measured the distances were 0 and 0.75. Source: eSpeak NG says the sentence, and tells by itself how both are pronounced.
    """
    pronouncer = Pronouncer()
    said = pronouncer.sounds(["where is the next marker", "there were five on either side"])
    pronouncer.close()
    for pcm in nudges(sound("where is the next marker", tmp_path)):
        likely = SoundModel().likely(model(network).encode(pcm).states)
        assert likely.shape == (pytest.approx(len(pcm) / 32_000 / 0.024, abs=4), len(SOUNDS) + 1)
        assert np.exp(likely).sum(1) == pytest.approx(np.ones(len(likely)), abs=1e-4)
        heard = tuple(SOUNDS[column - 1] for column, _ in groupby(likely.argmax(1)) if column)
        right, wrong = SoundDistances(said).distances(heard)
        assert right < 0.2
        assert wrong > 0.4


def test_damaged_weights_are_a_sentence(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Half a file is no model."""
    half = tmp_path / "half.onnx"
    half.write_bytes(sound_model.WEIGHTS.read_bytes()[:100_000])
    monkeypatch.setattr(sound_model, "WEIGHTS", half)
    with pytest.raises(SurroundingsError, match="model of sounds cannot be loaded"):
        SoundModel()
