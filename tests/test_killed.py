"""Sittings killed at their calls to the disk, and on a disk that fails: a short dose (`tests/bench/kills`)."""

from __future__ import annotations

import random
from pathlib import Path

import pytest

from stepper.sitting.project_file import load_project
from tests.disk_calls import WHY_NOT, Blow
from tests.killed import PROJECT, Garment, judged, kept, kill_evenings, knit, make_garments, struck

pytestmark = pytest.mark.skipif(bool(WHY_NOT), reason=WHY_NOT)


@pytest.fixture(scope="module")
def begun(tmp_path_factory: pytest.TempPathFactory) -> Garment:
    """A garment of which a few rounds are knitted."""
    return make_garments(tmp_path_factory.mktemp("garments"), ["begun"])["begun"]


def test_nothing_answered_is_lost_by_a_kill_at_a_call_to_the_disk(begun: Garment, tmp_path: Path) -> None:
    """Power, battery or a closed lid may end it anywhere; the evening before that must be there."""
    calls = struck(begun, tmp_path / "whole", Blow(at=0)).outcome.calls
    assert calls > 100
    chance = random.Random(5)
    found = [
        struck(begun, tmp_path / f"{at}", Blow(at=at, kind=chance.choice(("kill", "torn"))))
        for at in sorted(chance.sample(range(1, calls + 1), 8))
    ]
    assert [each.wrong for each in found] == [""] * 8
    assert all(each.outcome.killed for each in found)


def test_evenings_that_are_all_killed_are_gone_on_with(tmp_path: Path) -> None:
    """One kill after another, each in the middle of what the one before left."""
    found = list(kill_evenings(tmp_path / "one", 6, random.Random(2)))
    assert [verdict.wrong for verdict, _ in found] == [""] * 6
    assert found[-1][1] > 6


@pytest.mark.parametrize("kind", ["ENOSPC", "EIO"])
def test_a_disk_that_fails_is_told_in_a_sentence(begun: Garment, tmp_path: Path, kind: str) -> None:
    """No room, or a drive that is dying: never a traceback, and what was kept is there once it works again."""
    chance = random.Random(kind)
    refused = 0
    for number in range(4):
        blow = Blow(at=chance.randint(1, 200), kind=kind, lasting=number % 2 == 0, reads=number % 3 == 0)
        found = struck(begun, tmp_path / f"{number}", blow)
        assert found.wrong == ""
        refused += bool(found.outcome.refused)
        assert not found.outcome.refused or found.outcome.refused.endswith(".")
    assert refused


def test_the_judge_sees_what_is_lost_and_what_is_forged(begun: Garment, tmp_path: Path) -> None:
    """A judge that always agrees would prove nothing."""
    loaded = begun.copied(tmp_path / "one")
    before = kept(loaded)
    outcome = struck(begun, tmp_path / "two", Blow(at=0)).outcome
    assert "entries lost" in judged(loaded, before, outcome)
    loaded = load_project(tmp_path / "one" / "cuff.yaml")
    knit(loaded, ["next"], lambda said: None)
    assert "not those handed over" in judged(loaded, before[:-1], outcome)
    assert PROJECT.exists()
