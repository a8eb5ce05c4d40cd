"""Every blend that is offered, worked loop by loop by a knitter who knows nothing of the program."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from stepper.language.phrasing import say_round
from stepper.plan.blend import Blend, blends
from stepper.plan.export import plan_document
from stepper.project.reader import read_project
from stepper.sitting.project_file import load_sizes
from tests.blend_simulator import Worked, knit, printed_target, rounds_alike
from tests.fixtures import compile_in_size

ROOT = Path(__file__).parent
GARMENTS = sorted(
    (
        *(ROOT / "blends").glob("*.yaml"),
        ROOT / "report" / "garments" / "hem_up_yoke.yaml",
        ROOT / "report" / "garments" / "top_down_yoke.yaml",
    )
)


def document(page: str, knit_line: str) -> dict[str, Any]:
    """Compile a page with another way to knit it, and read the plan back from its JSON.

    That its other sizes come out is known: the page was loaded as it is.
    """
    old = next(line for line in page.splitlines() if line.startswith("knit:"))
    project = read_project(page.replace(old, knit_line, 1)).project
    assert project is not None
    plan = compile_in_size(project, project.size).plan
    assert plan is not None
    found: dict[str, Any] = json.loads(json.dumps(plan_document(plan, spoken=lambda each: say_round(each, plan))))
    return found


def shaped(rounds: list[Worked], label: str) -> int:
    """Find the round that carries a label."""
    return next(at for at, each in enumerate(rounds) if each.round_["label"] == label)


def check(blend: Blend, page: str, sizes: tuple[str, ...], alone: Callable[[str], dict[str, Any]]) -> None:
    """Work one blend and compare it with the page and with both sizes alone."""
    line = f"knit: {{size: {blend.size}, then: [{{from: {blend.label}, size: {blend.then}}}]}}"
    worked = knit(document(page, line))
    begun, ended = alone(blend.size)["rounds"], knit(alone(blend.then))
    at, there = shaped(worked, blend.label), shaped(ended, blend.label)
    what = f"{blend.size} to {blend.then} at {blend.label}"
    mine = [each.round_ for each in worked]
    assert list(rounds_alike(mine[:at], begun[:at])) == [], what
    assert worked[at].uneven() == "", f"{what}: {worked[at].uneven()}"
    assert (blend.before, blend.after) == (mine[at]["before"], mine[at]["after"]), what
    target = printed_target(page, blend.label, sizes.index(blend.then))
    assert mine[at]["after"] == (ended[there].round_["after"] if target is None else target), what
    assert mine[at]["before"] == begun[at]["before"], what
    rest = [each.round_ for each in ended[there + 1 :]]
    assert list(rounds_alike(mine[at + 1 :], rest)) == [], what


@pytest.mark.parametrize("path", GARMENTS, ids=lambda path: path.stem)
def test_every_blend_offered_is_one_size_up_to_its_line_and_the_other_behind_it(path: Path) -> None:
    """Up to the line it is the first size alone, stitch for stitch; the line is even and meets the printed count;
    behind it every stitch is the other size's. A blend that is offered and does not come out would be found with the
    garment half knitted."""
    page = path.read_text(encoding="utf-8")
    sized = load_sizes(path)
    known: dict[str, dict[str, Any]] = {}

    def alone(size: str) -> dict[str, Any]:
        if size not in known:
            known[size] = document(page, f"knit: {{size: {size}}}")
        return known[size]

    offered = [each for each in blends(sized.project, sized.readings) if each.label and each.works]
    assert len(offered) >= 6
    for blend in offered:
        check(blend, page, sized.project.sizes, alone)


def test_a_wrong_document_is_found_out() -> None:
    """The simulator counts loops: one stitch too few, an uneven gap and a held stitch forgotten are told."""
    page = (ROOT / "blends" / "top_down_yoke_by_amounts.yaml").read_text(encoding="utf-8")
    right = document(page, "knit: {size: S}")
    knit(right)
    for spoil in ("runs", "after", "held"):
        wrong = json.loads(json.dumps(right))
        at = next(n for n, each in enumerate(wrong["rounds"]) if (each["held"] if spoil == "held" else each["shaping"]))
        round_ = wrong["rounds"][at]
        if spoil == "runs":
            round_["runs"][0][1] -= 1
        elif spoil == "after":
            round_["after"] += 1
        else:
            round_["held"] = {}
        with pytest.raises(AssertionError):
            knit(wrong)
    moved = json.loads(json.dumps(right))
    inc = next(each for each in moved["rounds"] if each["label"] == "Inc Rnd 1")
    inc["runs"][0][1] += 2
    inc["runs"][2][1] -= 2
    assert "gaps of" in knit(moved)[shaped(knit(moved), "Inc Rnd 1")].uneven()


def test_a_change_over_two_rounds_is_even_in_both() -> None:
    """36 stitches cannot become 96 in one round; over two they become 59 and then 96."""
    page = (ROOT / "blends" / "round_shawl_that_doubles.yaml").read_text(encoding="utf-8")
    worked = knit(document(page, "knit: {size: S, then: [{from: Third doubling, size: L, over: 2 rounds}]}"))
    at = shaped(worked, "Third doubling")
    assert [each.round_["after"] for each in worked[at - 1 : at + 3]] == [36, 59, 96, 96]
    assert [each.uneven() for each in worked[at : at + 2]] == ["", ""]
