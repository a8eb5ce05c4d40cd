"""Rounds put together only where nothing is lost by it."""

from __future__ import annotations

from pathlib import Path

import pytest

from stepper.plan.alike import fold_alike
from stepper.sitting.project_file import load_project
from tests.plans import plan

SAMPLES = sorted((Path(__file__).parents[1] / "fixtures").glob("*.yaml"))


def test_plain_rounds_are_one_stretch() -> None:
    """A label, a remark or a count begins another."""
    made = plan(
        (
            "body",
            ["co8", *["k8"] * 5, ("k8", {"label": "Here"}), "k8", ("k8", {"remarks": ("With A.",)}), "k8"],
        )
    )
    assert [(first.number, last.number) for first, last in fold_alike(made.rounds)] == [
        (1, 1),
        (2, 6),
        (7, 8),
        (9, 10),
    ]


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_every_round_is_in_one_stretch_and_like_its_first(path: Path) -> None:
    """Nothing is left out, nothing said twice, nothing counted in the middle goes unsaid."""
    rounds = load_project(path).plan.rounds
    at = 0
    for first, last in fold_alike(rounds):
        assert first.index == at
        for each in rounds[first.index : last.index + 1]:
            assert (each.instruction, each.after) == (first.instruction, first.after)
            assert each is first or not (each.label or each.remarks)
            assert each is last or each.checkpoint is None
        at = last.index + 1
    assert at == len(rounds)


def test_nothing_is_nothing() -> None:
    """An empty plan has no stretches."""
    assert list(fold_alike(())) == []


def test_rounds_in_two_colours_are_not_alike() -> None:
    """Both read "knit"; a round of one colour names its yarn only behind the instruction."""
    made = plan(("body", ["co8", "k8", "k8:A", "k8:A", "k8"]))
    found = [(first.number, last.number) for first, last in fold_alike(made.rounds)]
    assert found == [(1, 1), (2, 2), (3, 4), (5, 5)]
