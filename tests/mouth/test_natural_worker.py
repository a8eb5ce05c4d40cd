from __future__ import annotations

from pathlib import Path

import pytest

from stepper.mouth.natural_worker import NaturalLibrary
from stepper.mouth.ports import NoVoiceError


def test_a_file_that_is_no_model_is_a_reason(tmp_path: Path) -> None:
    """A path she wrote wrong is told as half a sentence, with the path."""
    pytest.importorskip("piper", reason="the natural voice is an extra")
    bad = tmp_path / "voice.onnx"
    bad.write_bytes(b"no model")
    with pytest.raises(NoVoiceError, match=r"voice\.onnx"):
        NaturalLibrary(voice=str(bad), volume=1.0)
