from __future__ import annotations

import hashlib
import re
from pathlib import Path

import pytest

from stepper.ears.packaged_weights import weights_path

MODELS = Path(__file__).parents[2] / "models" / "ears"
CARD = (MODELS / "README.md").read_text(encoding="utf-8")


@pytest.mark.parametrize("name", ["encoder.onnx", "sounds.onnx", "voices.onnx"])
def test_the_weights_are_those_that_were_measured(name: str) -> None:
    """The figures of the card are of files with this checksum, and of no others."""
    content = weights_path(name).read_bytes()
    assert hashlib.sha256(content).hexdigest() in CARD
    assert weights_path(name).parts[-3:] == ("models", "ears", name)


def test_all_weights_together_are_small() -> None:
    """Sixteen megabytes, as everybody who installs the program downloads them."""
    assert sum(path.stat().st_size for path in MODELS.glob("*.onnx")) <= 16_000_000


def test_every_source_that_wants_to_be_named_is_named() -> None:
    """Each licence that asks for attribution stands beside who is to be named; share-alike sources are left out."""
    for source in ("Speech Commands", "LibriSpeech", "ESC-10", "Kokoro", "Moonshine"):
        assert source in CARD
    table = re.findall(r"^\|.*\|$", CARD.partition("## Learnt from")[2].partition("\n## ")[0], re.M)
    assert len(table) > 10
    assert not any("SA" in row for row in table)
