"""The needles as the next row meets them."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.plan.model import Run
from stepper.plan.stitches.row_facing import face, leave, mirror_places
from tests.plan.test_compile import plan_of
from tests.project.samples import project


def test_a_wrong_side_row_meets_the_markers_from_the_other_end() -> None:
    """Markers after 20 and 50 of 70 stitches are 20 and 50 from behind."""
    facing = face(count=70, flat=True, side="WS", markers=(20, 45))
    assert facing.markers == (25, 50)
    assert mirror_places((20, 45), 70) == (25, 50)


@given(
    count=st.integers(4, 60),
    data=st.data(),
    flat=st.booleans(),
    side=st.sampled_from(["RS", "WS"]),
)
def test_a_row_that_is_only_knitted_leaves_every_marker_where_it_was(
    count: int, data: st.DataObject, flat: bool, side: str
) -> None:
    """Turning the needles over and back again moves nothing, wherever the row begins and turns."""
    markers = tuple(sorted(data.draw(st.sets(st.integers(1, count - 1), max_size=4))))
    gap = data.draw(st.one_of(st.none(), st.integers(1, count - 1)))
    if not flat and side == "WS" and gap is None:
        return
    facing = face(count=count, flat=flat, side=side, markers=markers, gap=gap)
    used = data.draw(st.integers(1, facing.room))
    placed = tuple(mark for mark in facing.markers)
    left = leave(facing, (Run("k", used, "MC"),), used=used, made=used, placed=placed, turned=used < facing.room)
    assert left.markers == markers


@given(data=st.data(), count=st.integers(3, 14), flat=st.booleans(), wrong=st.booleans())
def test_every_place_stays_between_its_stitches(data: st.DataObject, count: int, flat: bool, wrong: bool) -> None:
    """A marker or a turn on the wrong side of a stitch is a gusset that leans, or a heel with a hole.

    Source: the needles laid out as a list, stitches, markers, turns and the beginning of the round in their order, and
    worked one after the other from where the row begins.
    """
    gap = data.draw(st.one_of(st.none(), st.integers(1 if flat else 0, count - 1)))
    ring = not flat and gap is not None
    if not flat and wrong and not ring:
        return
    marks, turns = (data.draw(st.sets(st.integers(1, count - 1), max_size=4)) for _ in range(2))
    names = [("begin", 0), *(("mark", at) for at in sorted(marks)), *(("turn", at) for at in sorted(turns))]
    laid: list[str | int] = []
    for place in range(count + 1):
        laid += [f"{name} {at}" for name, at in names if at == place] + [place] * (place < count)
    laid = laid[::-1] if wrong else laid
    # The row begins behind whatever hangs where the last one was turned.
    start = (count - gap if wrong else gap) if gap is not None else 0
    order = [*(at for at, one in enumerate(laid) if isinstance(one, int)), len(laid)]
    behind, ahead = laid[: order[start]], laid[order[start] :]
    if not flat:
        at = next(at for at in range(len(behind), -1, -1) if at == 0 or isinstance(behind[at - 1], int))
        behind, ahead = behind[at:], ahead + behind[:at]
    facing = face(
        count=count, flat=flat, side="WS" if wrong else "RS", markers=tuple(sorted(marks)), gap=gap, turns=tuple(sorted(turns))
    )
    met: dict[str, list[int]] = {"begin": [], "mark": [], "turn": []}
    for at, one in enumerate(ahead):
        if isinstance(one, str):
            met[one.split()[0]].append(sum(isinstance(other, int) for other in ahead[:at]))
    assert (facing.markers, facing.turns) == (tuple(met["mark"]), tuple(met["turn"]))
    assert facing.end == (met["begin"][0] if ring and met["begin"] else facing.room)
    made: list[str | int] = []
    worked: list[Run] = []
    room = sum(isinstance(one, int) for one in ahead)
    used, wanted = 0, data.draw(st.integers(1, room))
    while used < wanted:
        while isinstance(ahead[0], str):
            made.append(ahead.pop(0))
        two = len(ahead) > 1 and isinstance(ahead[1], int) and used + 2 <= wanted
        code = data.draw(st.sampled_from(["k", "kfb", "bo", *["k2tog"] * two]))
        one = ahead.pop(0)
        made += {"k": [one], "kfb": [one, one], "bo": [], "k2tog": [one]}[code]
        if code == "k2tog":
            ahead.pop(0)
        used += 2 if code == "k2tog" else 1
        worked.append(Run(code, 1, "MC"))
    kept = [one for one in made if not isinstance(one, str) or not one.startswith("turn")]
    beyond = next((at for at, one in enumerate(ahead) if isinstance(one, int)), len(ahead))
    ends = ring and "begin 0" in ahead[:beyond]
    turned = used < room and not (ends and data.draw(st.booleans()))
    ahead = [one for at, one in enumerate(ahead) if at >= beyond or not str(one).startswith("turn")]
    after = [*behind, *kept, *["turned"] * turned, *ahead]
    if ring:
        begin = after.index("begin 0")
        after = after[begin:] + after[:begin]
    after = after[::-1] if wrong and flat else after
    if wrong and not flat:
        after = [after[0], *after[:0:-1]]
    at_place: dict[str, int] = {}
    stitches = 0
    for one in after:
        if isinstance(one, int):
            stitches += 1
        else:
            at_place[one] = stitches
    leaves = sum(isinstance(one, int) for one in kept)
    placed, passed = [], 0
    for one in [*kept, *ahead]:
        if isinstance(one, int):
            passed += 1
        elif one.startswith("mark"):
            placed.append(passed)
    left = leave(facing, worked, used=used, made=leaves, placed=tuple(placed), turned=turned)
    whole = not (turned or gap is not None or wrong or turns)
    within = {name: at for name, at in at_place.items() if 0 < at < stitches}
    assert left.markers == (tuple(placed) if whole else tuple(sorted({at for name, at in within.items() if name.startswith("mark")})))
    assert left.turns == (() if whole else tuple(sorted({at for name, at in within.items() if name.startswith("turn")})))
    if turned and ring:
        at_place["turned"] %= stitches
    assert left.gap == (at_place["turned"] if turned else None)
    assert left.passed == any(str(one).startswith("turn") for one in made)


@pytest.mark.parametrize("method", ["german", "wrap and turn", "plain"])
@pytest.mark.parametrize("rows", [True, False], ids=["flat", "round"])
def test_short_rows_keep_every_stitch_whatever_the_turn(method: str, rows: bool) -> None:
    """A heel turned over 12 of 24 stitches: the count stays, and the work goes on where it stopped.

    Source of the three methods: common practice.
    """
    begin = "Cast on 24 sts. " + ("Work flat." if rows else "Join in the round.")
    text = project(
        f"{begin}\nShort row 1 (RS): K12, turn.\nShort row 2 (WS): P8, turn.\n"
        "Short row 3: K to 1 st before last turn, turn.\nShort row 4: P to 1 st before last turn, turn.\n"
        "Rep rows 3 and 4 once more.\n"
        "Short row 5: K to 1 st past last turn, turn.\nShort row 6: P to 1 st past last turn, turn.\n"
        "Rep rows 5 and 6 once more.\n"
        + ("Next row (RS): Knit.\nNext row (WS): Purl.\n" if rows else "Knit 2 rounds.\n")
        + "24 sts.\nBind off."
    ).replace("    work: |", f"    short_rows: {method}\n    work: |")
    plan = plan_of(text)
    assert {round_.after for round_ in plan.rounds[:-1]} == {24}
    turn = "w&t" if method.startswith("wrap") else "turn"
    turned = [round_ for round_ in plan.rounds if any(run.stitch == turn for run in round_.runs)]
    assert [round_.side for round_ in turned] == ["RS", "WS"] * 5
    worked = [sum(run.uses for run in round_.runs if run.stitch in ("k", "p", "ds")) for round_ in turned]
    assert worked == [12, 8, 7, 6, 5, 4, 5, 6, 7, 8]
    assert any(run.stitch == "ds" for round_ in turned for run in round_.runs) == (method == "german")


def test_the_double_stitch_and_the_wrapped_stitch_lie_on_either_side_of_the_turn() -> None:
    """German: the double stitch is before the gap; wrap and turn: the wrapped one is after it."""
    start = "Cast on 20 sts. Work flat.\nRow 1 (RS): K15, turn.\nRow 2 (WS): P10, turn.\n{}\nBind off."
    german = plan_of(project(start.format("Row 3 (RS): K to ds, turn.")))
    wrapped = plan_of(project(start.format("Row 3 (RS): K to wrapped st, turn.")))
    assert german.rounds[3].instruction.startswith("ds, k8, turn")
    assert wrapped.rounds[3].instruction.startswith("ds, k9, turn")


def test_short_rows_across_the_beginning_of_the_round_come_back_to_it() -> None:
    """A neck is raised around the beginning of the round: the rows go past it on both sides."""
    plan = plan_of(
        project(
            "Cast on 40 sts.\nJoin in the round.\nShort row 1 (RS): K5, turn.\nShort row 2 (WS): P10, turn.\n"
            "Short row 3: K to 3 sts past last turn, turn.\nShort row 4: P to 3 sts past last turn, turn.\n"
            "Short row 5: K to end.\nKnit 1 round. 40 sts.\nBind off."
        )
    )
    said = [round_.instruction for round_ in plan.rounds[1:7]]
    assert said[0].startswith("k5, turn")
    assert said[2].startswith("ds, k12, turn")
    assert said[3].startswith("ds, p15, turn")
    assert said[4] == "ds, k7"
    assert said[5] == "knit"
    assert "double stitch" in " ".join(plan.rounds[6].remarks)


def test_a_heel_flap_with_slipped_edges_keeps_the_pattern_s_own_turns() -> None:
    """The stitch after a turn is slipped where the line slips it, and no double stitch is asked for later.

    Source: common practice; a flap of n stitches, a turn that leaves n/2 + 2, half the flap's rows picked up.
    """
    plan = plan_of(
        project(
            "Cast on 40 sts.\nJoin in the round.\nKnit 1 round.\n"
            "Row 1 (RS): *Sl 1, k1; rep from * 9 times more, turn.\nRow 2 (WS): Sl 1, p19, turn.\n"
            "Rep rows 1 and 2 4 times more.\n"
            "Row 1 (RS): Sl 1, k11, ssk, k1, turn.\nRow 2 (WS): Sl 1, p5, p2tog, p1, turn.\n"
            "Row 3: Sl 1, k to 1 st before gap, ssk, k1, turn.\nRow 4: Sl 1, p to 1 st before gap, p2tog, p1, turn.\n"
            "Rep rows 3 and 4 once more.\nRow 5: Sl 1, k10, ssk, turn.\nRow 6: Sl 1, p10, p2tog, turn. 32 sts.\n"
            "Next rnd: K12, pick up and knit 5 sts along the flap, pm, k20, pm, pick up and knit 5 sts along the flap.\n"
            "Gusset rnd: K to 3 sts before marker, k2tog, k1, sm, k to marker, sm, k1, ssk, k to end. 40 sts.\n"
            "Bind off."
        )
    )
    assert not any(run.stitch == "ds" for round_ in plan.rounds for run in round_.runs)
    assert not any("double stitch" in remark for round_ in plan.rounds for remark in round_.remarks)
    gusset = next(round_ for round_ in plan.rounds if round_.label == "Gusset rnd")
    assert gusset.instruction == "k14, k2tog, k1, sm, k20, sm, k1, ssk, k2"
    assert plan.rounds[13].instruction.startswith("sl1, p5, p2tog, p1, turn")


def test_rows_begun_after_rounds_may_name_either_side_first() -> None:
    """"Work in rows" does not say which side comes first; the line does, and nothing is warned about."""
    plan = plan_of(
        project(
            "Cast on 40 sts.\nJoin in the round.\nKnit 1 round.\nHeel: K20, hold 20 sts for instep.\nWork in rows.\n"
            "Row 1 (WS): Purl.\nRow 2 (RS): Knit.\nBind off.\nReturn instep to needles.\nBind off."
        )
    )
    assert [round_.side for round_ in plan.rounds[3:5]] == ["WS", "RS"]
    assert plan.warnings == ()
