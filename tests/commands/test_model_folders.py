from __future__ import annotations

from pathlib import Path

from stepper.commands.model_folders import data_folder


def test_data_lies_where_each_system_keeps_it() -> None:
    """The folders of the XDG specification, of macOS and of Windows; a variable of ours goes before."""
    home = {"HOME": "/h"}
    assert data_folder(home, "linux") == Path("/h/.local/share/stepper")
    assert data_folder({**home, "XDG_DATA_HOME": "/x"}, "linux") == Path("/x/stepper")
    assert data_folder(home, "darwin") == Path("/h/Library/Application Support/stepper")
    assert data_folder({"USERPROFILE": "/u"}, "win32") == Path("/u/AppData/Local/stepper")
    assert data_folder({"STEPPER_DATA": "/d", "HOME": "/h"}, "linux") == Path("/d")
