"""What becomes of a plan that is being knitted is as it was agreed on: a place in another plan, a count that is off, a round
whose changes are spread anew, a stretch that was measured.

The texts in `agreed/` try all rounds of a few small works, where the tests beside them try one. What a place becomes in another
plan, and a part of the rest, was compared with the rounds by hand; stretches that were measured hold only that nothing changed. Where one differs, it is read before it is kept: `STEPPER_WRITE_GOLDENS=1`.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import MISSING, fields, is_dataclass
from itertools import product
from pathlib import Path

import pytest

from stepper.plan.model import Plan
from stepper.plan.under_way.absorb import Mend, apply_mends
from stepper.plan.under_way.aligning import renamed_sections
from stepper.plan.under_way.carry import carry
from stepper.plan.under_way.fingerprint import fingerprint, placed_alike
from stepper.plan.under_way.labelled import same_distance
from stepper.plan.under_way.lengthen import in_rows, rounds_to_reach, with_rounds
from stepper.plan.under_way.respace import (
    NoRoomError,
    Respacing,
    apply_respacings,
    gaps_ahead,
    moves_marker,
    respace,
    spread_of,
)
from stepper.plan.under_way.resuming import PlaceChoice, follow
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


EDITED = [
    ["CO 24 sts. Join in the round.", "Knit 2 rounds.", "Increase evenly to 30 sts.", "Inc round: K1, m1, k to end.", "K1, m1, k to end.", "*K2, p2; rep from * to end.", "BO."],
    ["== left [plain]", "CO 16 sts. Join in the round.", "Knit 3 rounds.", "K8, place 4 sts on hold for thumb, k to end.", "BO.", "== right [plain]", "CO 16 sts. Join in the round.", "Knit 3 rounds.", "K8, place 4 sts on hold for thumb, k to end.", "BO."],
    ["CO 20 sts. Work flat.", "Row 1 (RS): K10, pm, k10.", "Row 2: Purl.", "Next row (RS): Decrease evenly to 16 sts.", "Purl 1 row.", "Dec row: K1, ssk, k to last 3 sts, k2tog, k1.", "Purl 1 row.", "Next row (RS): Decrease evenly to 10 sts."],
]  # fmt: skip
"""Works that are edited a line at a time."""


def edits(lines: list[str]) -> Iterator[tuple[str, list[str]]]:
    """Yield works that differ in one line: left out, in another place, or with another number."""
    for at, line in enumerate(lines):
        before, after = lines[:at], lines[at + 1 :]
        yield f"without {line}", [*before, *after]
        yield f"later {line}", [*before, *after[:1], line, *after[1:]]
        for number in re.finditer(r"\d+", line):
            more = f"{line[: number.start()]}{int(number[0]) + 2}{line[number.end() :]}"
            yield f"now {more}", [*before, more, *after]


def place_row(old: Plan, new: Plan, index: int, stitch: int) -> str:
    """Say where a place is in another plan: sure, or what she has to choose from."""
    found = carry(old, new, index=index, stitch=stitch)
    row = f"{index}.{stitch} -> {found.index}.{found.stitch}{' same' if found.same else ''}"
    if found.found:
        return row
    return f"{row}, {found.have} for {found.want}, or {'; '.join(map(choice_row, found.choices))}"


def choice_row(choice: PlaceChoice) -> str:
    """Write a place to choose, without what follows from the one in the plan."""
    name = f"{choice.section} {choice.number} {choice.label or ''}{' in rows' if choice.flat else ''}"
    row = f"{choice.index}.{choice.stitch} {name.rstrip()} {choice.have} for {choice.want}"
    if choice.rounds_back or choice.stitches_back:
        row += f" back {choice.rounds_back}.{choice.stitches_back}"
    if choice.places:
        row += f" {choice.made} of {told(choice.places)} made, {choice.before}-{choice.after}"
    return row


def test_places_are_found_after_each_edit_as_agreed() -> None:
    """Whichever line she mends, the place is hers, or it is asked for. Places that stay where they were are not listed."""
    rows = []
    for lines in EDITED:
        old = worked(lines)
        rows.append(f"@ {lines[0]}, known in journals as {fingerprint(old)}")
        rows += [f"     {placed_alike(round_)}" for round_ in old.rounds]
        for name, edited in edits(lines):
            new = plan_from(as_file(edited))
            if new is None:
                continue
            rows += [f"@ {name}", *map(told, carry(old, new, index=len(old.rounds) // 2, stitch=0).changes)]
            rows.append(f"     follows {[follow(old, new, index) for index in range(len(old.rounds) + 1)]}")
            for index in range(len(old.rounds) + 1):
                stitches = old.rounds[index].progress if index < len(old.rounds) else 0
                found = [place_row(old, new, index, stitch) for stitch in sorted({0, stitches * 2 // 3})]
                rows += [f"     {row}" for row in found if not re.fullmatch(r"(\d+\.\d+) -> \1 same", row)]
    compare(HERE / "agreed" / "edited.txt", rows)


OFF = [
    ["CO 24 sts. Join in the round.", "Knit 2 rounds.", "K12, pm, k12.", "Increase evenly to 30 sts.", "Knit 1 round.", "*K3, p3; rep from * to end."],
    ["CO 24 sts. Join in the round.", "Work in k2, p2 rib for 2 rounds.", "*K4, k2tog; rep from * to end.", "Chart wave.", "BO."],
    ["CO 24 sts. Work flat.", "Row 1 (RS): K10, pm, k14.", "Row 2: Purl.", "Row 3: K1, ssk, k to last 3 sts, k2tog, k1.", "Row 4: P4, k4, p to end.", "Row 5: *K2, yo, k2tog; rep from * to last 2 sts, k2."],
]  # fmt: skip
"""Works in which a count is off: an even change, a rib and a chart, rows with shaping at their ends."""

FEW = [
    ["CO 6 sts. Work flat.", "Row 1 (RS): K2, pm, k2, pm, k2.", "Row 2: P2, k2, p2.", "Row 3: *K1, p1; rep from * to end.", "Row 4: Purl.", "Row 5: Increase 4 sts evenly.", "BO in pattern."],
    ["CO 12 sts. Join in the round.", "Decrease 3 sts evenly.", "*K1 with CC, k2 with MC; rep from * to end.", "Purl 1 round.", "Increase evenly to 12 sts.", "Decrease evenly to 7 sts.", "Break yarn and draw through rem sts."],
]  # fmt: skip
"""Works of few stitches, in which what is off soon has no room."""


@pytest.mark.parametrize("number", range(len(FEW)))
def test_a_count_that_is_off_in_few_stitches_is_made_good_as_agreed(number: int) -> None:
    """What no longer fits is left as it is, wherever in the round the stitch was lost."""
    plan, rows = worked(FEW[number]), []
    places = range(1, len(plan.rounds) + 1)
    for index, change, stitch in product(places, (-4, -1, 2, 5, 6), (1, 5)):
        mend = Mend(index=index, stitch=stitch, change=change, origin=index // 3, spread=stitch == 5)
        mended = apply_mends(plan, [mend])
        rows.append(f"@ round {index}: {change:+} at {stitch} since {mend.origin}{', spread' * mend.spread}")
        rows += [row_of(new) for old, new in zip(plan.rounds, mended.rounds, strict=True) if new != old]
    compare(HERE / "agreed" / f"few-{number}.txt", rows)


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


SPREAD = [
    *(
        [f"CO 24 sts. {begin}", "K12, pm, k12.", line]
        for line in ("Increase 4 sts evenly.", "Decrease 4 sts evenly.", "*K4, k2tog; rep from * to end.")
        for begin in ("Join in the round.", "Work flat.")
    ),
    ["CO 24 sts. Work flat.", "K10, pm, k14.", "Purl 1 row.", "Increase 4 sts evenly."],
    ["CO 24 sts. Work flat.", "K8, pm, k16.", "Decrease 1 st evenly."],
    ["CO 24 sts. Join in the round.", "K3, pm, k21.", "*K5, m1, k7; rep from * to end."],
    ["CO 8 sts. Join in the round.", "K2tog around.", "*M1, k1; rep from * to end."],
    ["CO 24 sts. Join in the round.", "*K5, k3tog; rep from * to end."],
    ["CO 24 sts. Join in the round.", "*K5 with MC, k1 with CC, k2tog; rep from * to end."],
    ["CO 24 sts. Join in the round.", "*K4, yo, k2tog; rep from * to end."],
    ["CO 24 sts. Join in the round.", "*P4, p2tog; rep from * to end.", "*P4, k1; rep from * to end.", "*Sl1, k4, m1; rep from * to end."],
]  # fmt: skip
"""Rounds of changes, with markers before and behind them, on either side, and some that cannot be spread anew."""


def spread_rows(lines: list[str]) -> Iterator[str]:
    """Say what becomes of each round with changes."""
    plan = worked(lines)
    for round_ in plan.rounds:
        if round_.before == 0 or not round_.shaping:
            continue
        yield f"@ {round_.instruction} {told(spread_of(round_))} planned {told(round_.shaping)}"
        if spread_of(round_) is None:
            continue
        for made, used in product(range(-1, 6), (-1, *range(0, round_.before + 2, 3))):
            try:
                found = respace(round_, used=used, made=made)
            except NoRoomError as no_room:
                yield f"     {made} made in {used}: {no_room}"
            else:
                moved = ", moves a marker" if moves_marker(round_, found) else ""
                ahead = gaps_ahead(found, used=used, made=made)
                yield f"     {made} made in {used}: {told(found)}, ahead {told(ahead)}{moved}"
                again = apply_respacings(plan, [Respacing.of(round_, found)]).rounds[round_.index]
                if again != round_ and made == 2:
                    yield f"         {row_of(again)}"


def test_changes_are_spread_anew_as_agreed() -> None:
    """What is left of an even round, from each place in it and however many changes are made; markers that move are told."""
    rows = [row for lines in SPREAD for row in spread_rows(lines)]
    compare(HERE / "agreed" / "spread_anew.txt", rows)


LONG = [
    [
        "CO 24 sts. Join in the round.", "Knit for 2 cm.", "K1, k2tog, k to last 3 sts, ssk, k1. 22 sts.", "Rnd 1: *K1, p1; rep from * to end.",
        "Rnd 2: Knit.", "Rnd 3: Purl.", "Rep rnds 1-3 until piece measures 6 cm. 22 sts.", "Purl 1 round.", "Knit until piece measures 8 cm.",
    ],
    [
        "CO 24 sts. Work flat.", "Knit every row for 2 cm. 24 sts.", "Row 1 (RS): *K1, p1; rep from * to end.", "Row 2: Purl.", "Row 3: Knit.",
        "Rep rows 1-3 until piece measures 5 cm.", "BO.",
    ],
]  # fmt: skip
"""Works with lengths, in the round and in rows, where a repeat of three rows begins on the other side each time."""


def test_stretches_are_made_longer_and_shorter_as_agreed() -> None:
    """Rounds go on with the repeat; what stands behind moves, and a count asked for at the end stays there."""
    rows = []
    for plan in map(worked, LONG):
        for number, stretch in enumerate(plan.stretches):
            for rounds in (0, 1, 4, 7, 12):
                changed = with_rounds(plan, number, rounds)
                rows += [
                    f"@ stretch {number} with {rounds} rounds: {told(changed.stretches)}",
                    *joined([row_of(each) for each in changed.rounds]),
                ]
            for measured_mm in (10.0, 20.0, 27.5, 60.0, 90.0):
                for done in (3, 6, 9):
                    flat = in_rows(plan, stretch)
                    found = rounds_to_reach(
                        stretch, measured_mm=measured_mm, worked=done, at_least=2, flat=flat
                    )
                    rows.append(f"     {done} rounds measure {measured_mm:g} mm: {told(found)}")
    compare(HERE / "agreed" / "longer.txt", rows)
