"""Settings for all tests."""

from __future__ import annotations

import gc
import inspect
import os
import sys
from collections.abc import Generator

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
settings.register_profile("short", settings.get_profile("house"), max_examples=10, derandomize=True)
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


@pytest.hookimpl(wrapper=True)
def pytest_pyfunc_call(pyfuncitem: pytest.Function) -> Generator[None, object, object]:
    """Try what is played and recorded in real time once more if it fails: a machine that stalls tears a hole in it.

    Three tests run at a time on two cores. What fails twice fails.
    """
    try:
        return (yield)
    except AssertionError:
        if pyfuncitem.get_closest_marker("sound") is None:
            raise
    given = inspect.signature(pyfuncitem.obj).parameters
    pyfuncitem.obj(**{name: pyfuncitem.funcargs[name] for name in given})
    return True
