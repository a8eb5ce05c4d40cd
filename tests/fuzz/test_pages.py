"""A short dose of spoilt project files and pages; the long one is `python -m tests.bench.fuzz_pages`."""

from __future__ import annotations

import random
from pathlib import Path

from tests.fuzz import reader
from tests.fuzz.page_mutations import seeds, spoilt

INPUTS = 250


def test_spoilt_files_and_pages_are_told_and_never_end_in_a_traceback(tmp_path: Path) -> None:
    """Whatever was typed or copied, the knitter gets a plan or the places that are wrong, at once."""
    bench, chance = reader.Bench(tmp_path), random.Random(20)
    for _ in range(INPUTS):
        bench.take(spoilt(chance.choice(seeds()), chance).encode("utf-8", errors="replace"))
    assert dict(bench.faults) == {}
    assert min(bench.counts[kind] for kind in ("plans", "not read", "pasted")) > 0
