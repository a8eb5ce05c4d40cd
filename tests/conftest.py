"""Settings for all tests."""

from __future__ import annotations

import gc
import os
import sys

import pytest
from _pytest.runner import runtestprotocol
from hypothesis import HealthCheck, Phase, settings

pytest_plugins = ["tests.sound_room"]

# What is collected stays to the end, and is searched once, behind it.
gc.disable()

# A busy machine is no fault of the code, and explaining a failure may take longer than finding it.
settings.register_profile(
    "house",
    deadline=None,
    suppress_health_check=[HealthCheck.too_slow],
    phases=[Phase.explicit, Phase.reuse, Phase.generate, Phase.shrink],
)
settings.register_profile("short", settings.get_profile("house"), max_examples=10, derandomize=True)
# Where a whole day's work waits for the outcome, nothing is drawn anew: what chance finds is found where it can be mended.
settings.register_profile("same", settings.get_profile("house"), derandomize=True)
settings.load_profile("same" if os.environ.get("CI") else "house")

# Many tests start the program as a process of its own: each would compile the whole package anew.
os.environ.pop("PYTHONDONTWRITEBYTECODE", None)
sys.dont_write_bytecode = False


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Begin with what takes longest: what is spoken and played as it is heard, then other tests of half a minute each.

    One worker waits for them while the others have the cores; at the end all would wait for it.
    """
    first = (
        "test_evening.py",
        "test_live_ears.py",
        "test_open_streams.py",
        "mouth/test_open_speaker.py",
        "mouth/test_ports.py",
        "test_system_voice.py",
        "test_interrupting.py",
        "test_live_microphone.py",
        "test_whole_garment.py",
        "test_every_word.py",
        "test_standard_streams.py",
    )
    items.sort(key=lambda item: next((at for at, name in enumerate(first) if name in item.nodeid), len(first)))


def pytest_collection_finish() -> None:
    """Leave what was collected out of every search for garbage: some fifteen thousand tests, which stay to the end.

    And search less often than after every 700 objects: plans are made of tens of thousands, and hardly a circle among them.
    """
    gc.collect()
    gc.freeze()
    gc.set_threshold(50_000, 20, 10)
    gc.enable()


def _tell_briefly(item: pytest.Item, nextitem: pytest.Item | None) -> bool:
    """Run a test in a worker, and send only what tells something: its outcome, and what went wrong before or behind it.

    What is sent of a test costs as much as many a test: that it was made ready and cleared away is two thirds of it.
    """
    item.ihook.pytest_runtest_logstart(nodeid=item.nodeid, location=item.location)
    for each in runtestprotocol(item, log=False, nextitem=nextitem):
        if each.when == "call" or not each.passed:
            item.ihook.pytest_runtest_logreport(report=each)
    item.ihook.pytest_runtest_logfinish(nodeid=item.nodeid, location=item.location)
    return True


MOST_TRIES = 5
"""How often what is played and recorded in real time is tried: a machine that stalls tears a hole in it."""


@pytest.hookimpl(tryfirst=True)
def pytest_runtest_protocol(item: pytest.Item, nextitem: pytest.Item | None) -> bool | None:
    """Try what is played and recorded in real time once more if it fails, with all that is made for it made anew.

    Three tests run at a time on two cores. What fails each time fails; what failed at first is told as a warning.
    """
    if item.get_closest_marker("sound") is None:
        return _tell_briefly(item, nextitem) if hasattr(item.config, "workerinput") else None
    item.ihook.pytest_runtest_logstart(nodeid=item.nodeid, location=item.location)
    for tried in range(1, MOST_TRIES + 1):
        reports = runtestprotocol(item, log=False, nextitem=nextitem)
        if tried == MOST_TRIES or not any(each.failed for each in reports):
            break
        told = next(each.longreprtext for each in reports if each.failed).splitlines()
        why = next((line for line in told if line.startswith("E ")), "")
        item.warn(pytest.PytestWarning(f"failed and is tried again: {why[2:].strip()}"))
    for each in reports:
        item.ihook.pytest_runtest_logreport(report=each)
    item.ihook.pytest_runtest_logfinish(nodeid=item.nodeid, location=item.location)
    return True
