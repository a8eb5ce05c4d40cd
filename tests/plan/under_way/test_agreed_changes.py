"""What becomes of a plan that is being knitted is as it was agreed on: a place in another plan, a count that is off, a round
whose changes are spread anew, a stretch that was measured.

The texts in `agreed/` try all rounds of a few small works, where the tests beside them try one. What a place becomes in another
plan, and a part of the rest, was compared with the rounds by hand; stretches that were measured hold only that nothing changed. Where one differs, it is read before it is kept: `STEPPER_WRITE_GOLDENS=1`.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import MISSING, fields, is_dataclass
from pathlib import Path

import pytest

from stepper.plan.model import Plan
from stepper.plan.under_way.absorb import Mend, apply_mends
from stepper.plan.under_way.aligning import renamed_sections
from stepper.plan.under_way.carry import carry
from stepper.plan.under_way.labelled import same_distance
from stepper.plan.under_way.lengthen import rounds_to_reach, with_rounds
from stepper.plan.under_way.respace import NoRoomError, moves_marker, respace, spread_of
from stepper.plan.under_way.resuming import follow
from tests.agreed import compare, joined, plan_from, row_of
from tests.plan.test_agreed_works import as_file
from tests.plan.under_way.test_resuming import compiled

HERE = Path(__file__).parent


def worked(lines: list[str]) -> Plan:
    """Return the plan of some lines."""
    return compiled(as_file(lines))


def changes() -> dict[str, tuple[Plan, Plan]]:
    """Return the plans before and after each change."""
    found = {}
    for block in re.split(r"^@ ", (HERE / "changed.txt").read_text(encoding="utf-8"), flags=re.M)[1:]:
        name, *lines = [line for line in block.splitlines() if line]
        turn = next(at for at, line in enumerate(lines) if line.startswith("=> "))
        found[name] = (worked(lines[:turn]), worked(lines[turn + 1 :]))
    return found


def told(value: object) -> str:
    """Write a record with what is not as usual in it."""
    if is_dataclass(value) and not isinstance(value, type):
        parts = [
            f"{each.name} {told(getattr(value, each.name))}"
            for each in fields(value)
            if each.default is MISSING or getattr(value, each.name) != each.default
        ]
        return f"({', '.join(parts)})"
    if isinstance(value, tuple):
        return f"[{' '.join(told(each) for each in value)}]"
    return "-" if value is None else f"{value:.2f}" if isinstance(value, float) else str(value)


def places(old: Plan, new: Plan) -> Iterator[str]:
    """Say where each place of a plan is in another, and what is told of the difference."""
    yield f"renamed: {renamed_sections(old, new)}"
    last: tuple[str, ...] = ()
    for index in range(len(old.rounds) + 1):
        by_name = same_distance(old, new, index, renamed_sections(old, new))
        yield f"  round {index}: follows as {told(follow(old, new, index))}, by its name {by_name}"
        stitches = old.rounds[index].progress if index < len(old.rounds) else 0
        for stitch in sorted({0, stitches // 3, stitches - stitches // 6}):
            found = carry(old, new, index=index, stitch=stitch)
            sure = f"found {found.found} same {found.same} have {found.have} want {found.want}"
            yield f"     {index}.{stitch} -> {found.index}.{found.stitch} {sure}"
            yield from (f"          or {told(choice)}" for choice in found.choices)
            differing = tuple(f"          {told(change)}" for change in found.changes)
            yield from differing if differing != last else ()
            last = differing


def test_places_are_found_in_a_changed_plan_as_agreed() -> None:
    """Where she goes on is asked of every round and the middle of it."""
    rows = []
    for name, (old, new) in changes().items():
        rows += [f"@ {name}", *places(old, new), f"@ {name}, back", *places(new, old)]
    compare(HERE / "agreed" / "places.txt", rows)


OFF = [
    ["CO 24 sts. Join in the round.", "Knit 2 rounds.", "K12, pm, k12.", "Increase evenly to 30 sts.", "Knit 1 round.", "*K3, p3; rep from * to end."],
    ["CO 24 sts. Join in the round.", "Work in k2, p2 rib for 2 rounds.", "*K4, k2tog; rep from * to end.", "Chart wave.", "BO."],
    ["CO 24 sts. Work flat.", "Row 1 (RS): K10, pm, k14.", "Row 2: Purl.", "Row 3: K1, ssk, k to last 3 sts, k2tog, k1.", "Row 4: P4, k4, p to end.", "Row 5: *K2, yo, k2tog; rep from * to last 2 sts, k2."],
]  # fmt: skip
"""Works in which a count is off: an even change, a rib and a chart, rows with shaping at their ends."""


@pytest.mark.parametrize("number", range(len(OFF)))
def test_a_count_that_is_off_is_made_good_as_agreed(number: int) -> None:
    """Each round makes good what the rounds before it have too few or too many, at a place of it or spread over it."""
    plan, rows = worked(OFF[number]), []
    for index in range(2, len(plan.rounds)):
        for change in (-30, -2, -1, 1, 4):
            for spread in (False, True):
                mend = Mend(index=index, stitch=7, change=change, origin=index - 1, spread=spread)
                mended = apply_mends(plan, [mend])
                rows.append(f"@ round {index}: {change:+}{', spread' if spread else ''}")
                rows += [
                    row_of(new) for old, new in zip(plan.rounds, mended.rounds, strict=True) if new != old
                ]
    compare(HERE / "agreed" / f"off-{number}.txt", rows)


def test_changes_are_spread_anew_as_agreed() -> None:
    """What is left of an even round, from each place in it and however many changes are made; markers that move are told."""
    rows = []
    for line in ("Increase 4 sts evenly.", "Decrease 4 sts evenly.", "*K4, k2tog; rep from * to end."):
        for flat in (False, True):
            begin = "Work flat." if flat else "Join in the round."
            plan = plan_from(as_file([f"CO 24 sts. {begin}", "K12, pm, k12.", line]))
            assert plan is not None
            round_ = plan.rounds[-1]
            rows.append(f"@ {line} {begin} {told(spread_of(round_))} planned {told(round_.shaping)}")
            for made in range(5):
                for used in range(0, 26, 3):
                    try:
                        found = respace(round_, used=used, made=made)
                    except NoRoomError as no_room:
                        rows.append(f"     {made} made in {used}: {no_room}")
                    else:
                        moved = ", moves a marker" if moves_marker(round_, found) else ""
                        rows.append(f"     {made} made in {used}: {told(found)}{moved}")
    compare(HERE / "agreed" / "spread_anew.txt", rows)


def test_stretches_are_made_longer_and_shorter_as_agreed() -> None:
    """Rounds go on with the repeat; what stands behind moves, and a count asked for at the end stays there."""
    plan = worked([
        "CO 24 sts. Join in the round.", "Knit for 2 cm.", "K1, k2tog, k to last 3 sts, ssk, k1. 22 sts.", "Rnd 1: *K1, p1; rep from * to end.",
        "Rnd 2: Knit.", "Rnd 3: Purl.", "Rep rnds 1-3 until piece measures 6 cm. 22 sts.", "Purl 1 round.", "Knit until piece measures 8 cm.",
    ])  # fmt: skip
    rows = []
    for number, stretch in enumerate(plan.stretches):
        for rounds in (0, 1, 4, 7, 12):
            changed = with_rounds(plan, number, rounds)
            rows += [
                f"@ stretch {number} with {rounds} rounds: {told(changed.stretches)}",
                *joined([row_of(each) for each in changed.rounds]),
            ]
        for measured_mm in (10.0, 20.0, 27.5, 60.0, 90.0):
            for done in (3, 6, 9):
                found = rounds_to_reach(stretch, measured_mm=measured_mm, worked=done, at_least=2)
                rows.append(f"     {done} rounds measure {measured_mm:g} mm: {told(found)}")
    compare(HERE / "agreed" / "longer.txt", rows)
