from __future__ import annotations

from pathlib import Path

import pytest

from stepper.sitting import user_folders
from stepper.sitting.model_folders import data_folder, model_folders


def test_data_lies_in_the_folder_of_the_system_or_where_she_says(monkeypatch: pytest.MonkeyPatch) -> None:
    """A variable of ours goes before; models are looked for where she works first."""
    monkeypatch.delenv("STEPPER_DATA", raising=False)
    assert data_folder() == user_folders.data_folder()
    monkeypatch.setenv("STEPPER_DATA", "/d")
    assert data_folder() == Path("/d")
    assert model_folders() == (Path("models"), Path("/d/models"))
