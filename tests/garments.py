"""Garments invented for the tests of fit, one of each construction: `tests/report/garments/*.yaml`."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path

from stepper.plan.compile import compile_plan
from stepper.plan.model import Plan
from stepper.project.model import Project
from stepper.project.reader import read_project

FOLDER = Path(__file__).parent / "report" / "garments"
NAMES = tuple(sorted(path.stem for path in FOLDER.glob("*.yaml")))


@lru_cache
def read_garment(name: str) -> tuple[Project, Plan]:
    """Read an invented garment and work its plan."""
    project = read_project((FOLDER / f"{name}.yaml").read_text(encoding="utf-8")).project
    assert project is not None, name
    plan = compile_plan(project).plan
    assert plan is not None, name
    return project, plan
