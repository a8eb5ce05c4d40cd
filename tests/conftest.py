"""Settings for all tests."""

from __future__ import annotations

import gc
import os
import sys

import pytest
from hypothesis import HealthCheck, Phase, settings

pytest_plugins = ["tests.sound_room"]

# A busy machine is no fault of the code, and explaining a failure may take longer than finding it.
settings.register_profile(
    "house",
    deadline=None,
    suppress_health_check=[HealthCheck.too_slow],
    phases=[Phase.explicit, Phase.reuse, Phase.generate, Phase.shrink],
)
settings.load_profile("house")

# Many tests start the program as a process of its own: each would compile the whole package anew.
os.environ.pop("PYTHONDONTWRITEBYTECODE", None)
sys.dont_write_bytecode = False


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Begin with what takes longest however fast the machine is: sittings by voice, as they are spoken."""
    items.sort(key=lambda item: "test_evening.py" not in item.nodeid)


def pytest_collection_finish() -> None:
    """Leave what was collected out of every search for garbage: some fifteen thousand tests, which stay to the end.

    And search less often than after every 700 objects: plans are made of tens of thousands, and hardly a circle among them.
    """
    gc.collect()
    gc.freeze()
    gc.set_threshold(50_000, 20, 10)
