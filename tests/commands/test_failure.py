"""Our own faults are written down and told with their place."""

from __future__ import annotations

from pathlib import Path

import pytest

from stepper.commands.failure import BUG, report


def test_a_bug_leaves_a_log_and_exit_code_three(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """The log holds the traceback; the screen holds a sentence."""
    monkeypatch.chdir(tmp_path)
    try:
        raise RuntimeError("the yarn is in a knot")
    except RuntimeError:
        assert report() == BUG == 3
    logs = list(tmp_path.glob("stepper-*.log"))
    assert len(logs) == 1
    assert "the yarn is in a knot" in logs[0].read_text(encoding="utf-8")
    shown = capsys.readouterr().err
    assert str(logs[0]) in shown
    assert "Traceback" not in shown
