"""What the tests of the journal share: entries to keep, and child processes that may be killed."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

import stepper
from stepper.store.records import JournalEntry
from tests.store.damages import Original, original

AT = "2025-03-03T20:15:00+01:00"


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """The place of a journal that does not exist yet."""
    return tmp_path / "switchback.journal"


@pytest.fixture(scope="session")
def whole(tmp_path_factory: pytest.TempPathFactory) -> Original:
    """A journal of two sittings with its copies, which is only read."""
    return original(tmp_path_factory.mktemp("whole"))


@pytest.fixture
def entry() -> Callable[[int], JournalEntry]:
    """Make the n-th entry of a made-up session."""

    def make(n: int) -> JournalEntry:
        return JournalEntry(at=AT, kind="Advanced", body=json.dumps({"n": n, "label": "Zunahmerunde ↗"}), version=1)

    return make


@pytest.fixture
def start_child() -> Iterator[Callable[..., subprocess.Popen[str]]]:
    """Start a Python process with the package at hand; what still runs at the end of the test is killed."""
    children: list[subprocess.Popen[str]] = []
    package_root = str(Path(stepper.__file__).parent.parent)

    def start(source: str, *arguments: object, prefix: tuple[str, ...] = ()) -> subprocess.Popen[str]:
        child = subprocess.Popen(
            [*prefix, sys.executable, "-c", source, *map(str, arguments)],
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            stdin=subprocess.PIPE,
            text=True,
            env={**os.environ, "PYTHONPATH": package_root},
        )
        children.append(child)
        return child

    yield start
    for child in children:
        if child.poll() is None:
            child.kill()
        child.communicate()
