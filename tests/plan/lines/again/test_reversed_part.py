"""A part worked from the other edge, row by row by hand. Source: common practice ("reversing shaping")."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from stepper.craft.stitches import stitch
from stepper.plan.lines.again.reversed_part import MIRRORED
from tests.plan.lines.again.test_another_part import knit, refused

RIGHT = (
    "== right front",
    "CO 20 sts. Work flat.",
    "Work 2 rows in stockinette st.",
    "Next row (RS): K1, ssk, k to end. 19 sts.",
    "Purl 1 row.",
    "Next row (RS): Bind off 5 sts, k to end. 14 sts.",
    "Purl 1 row.",
    "Bind off.",
)
LEFT = ("== left front", "As right front, reversing shaping.")


def rows(*lines: str) -> list[str]:
    """Return the rows of the left front."""
    return [f"{round_.side} {round_.instruction}" for round_ in knit(*lines).rounds if round_.section == "left front"]


def test_shaping_changes_edges_and_lean_and_bind_offs_come_a_row_later() -> None:
    """The left front has its neck and armhole on the other side."""
    assert rows(*RIGHT, *LEFT)[3:] == ["RS k17, k2tog, k1", "WS purl", "RS knit", "WS bind off 5, p14", "RS bind off"]


def test_the_mirror_image_of_the_mirror_image_is_the_row() -> None:
    """Every lean goes to the other and comes back, or to one that looks like it."""
    for code, other in MIRRORED.items():
        assert MIRRORED[other] == code or stitch(code).change == stitch(other).change


def test_two_edges_bound_off_in_turn_are_exchanged() -> None:
    """4 at the beginning of a right-side row and 2 of the wrong-side row after it."""
    right = (*RIGHT[:3], "Next row (RS): Bind off 4 sts, k to end.", "Next row: Bind off 2 sts, p to end.", "Knit 1 row.", "Bind off.")
    assert rows(*right, *LEFT)[3:5] == ["RS bind off 2, k18", "WS bind off 4, p14"]


def test_a_bind_off_in_the_last_row_takes_a_row_more() -> None:
    """The wrong side has the edge, and there is no wrong-side row left."""
    right = (*RIGHT[:3], "Next row (RS): Bind off 4 sts, k to end.", "Bind off.")
    assert rows(*right, *LEFT)[3:] == ["RS knit", "WS bind off 4, p16", "RS bind off"]


def test_it_is_told() -> None:
    """She should look at the first rows of it."""
    assert any("shaping is mirrored" in caution.text for caution in knit(*RIGHT, *LEFT).warnings)


@pytest.mark.parametrize(
    "line", ["K1, yo, k2tog, k to end.", "K2, 2/2 RC, k to end.", "K10, turn.", "*K1 in CC, k1 in MC; rep from * to end."]
)
def test_what_has_no_mirror_image_is_refused(line: str) -> None:
    """Lace, cables, short rows and colours are no shaping."""
    assert refused(*RIGHT[:3], f"Next row (RS): {line}", "Bind off.", *LEFT)


def test_the_second_side_goes_on_as_the_first_from_the_other_edge() -> None:
    """Complete to match first side: the rows after those it has, mirrored."""
    front = (
        "== left front", "CO 30 sts. Work flat.", "Next row (RS): K12, turn and leave rem 18 sts on a holder.", "Purl 1 row.",
        "Next row: K to last 3 sts, k2tog, k1.", "Bind off all sts.", "With RS facing, rejoin yarn to held sts, bind off 6 sts, k to end.",
        "Complete to match first side.",
    )  # fmt: skip
    assert rows(*front)[-3:] == ["WS purl", "RS k1, ssk, k9", "WS bind off"] or rows(*front)[-3:-1] == ["WS purl", "RS k1, ssk, k9"]


def test_a_second_side_without_a_first_is_refused() -> None:
    """Nothing was put on hold."""
    assert "no first side" in refused("== left front", "CO 30 sts. Work flat.", "Knit 2 rows.", "Complete to match first side.")


LEANS = {"ssk": "k2tog", "k2tog": "ssk", "m1r": "m1l", "m1l": "m1r"}


@given(
    pairs=st.lists(
        st.tuples(
            st.sampled_from(["plain", "ssk", "k2tog", "m1r", "m1l", "bind off"]), st.integers(0, 3), st.sampled_from([0, 0, 2, 3])
        ),
        min_size=1,
        max_size=5,
    )
)
@settings(max_examples=15, deadline=None, derandomize=True)
def test_the_other_edge_is_what_a_mirror_shows(pairs: list[tuple[str, int, int]]) -> None:
    """A second reckoning on squared paper: a row that shapes is read from its other end with every lean exchanged; of two rows in
    turn each binds off at its beginning what the other one did, so that the same row of the piece loses it at the other edge."""
    count, lines, wanted = 40, [], []
    for kind, before, back in pairs:
        at = before + 2
        adds = {"ssk": -1, "k2tog": -1, "m1r": 1, "m1l": 1}.get(kind, 0)
        takes = 2 if adds < 0 else 0
        if kind == "bind off":
            lines.append("Next row (RS): Bind off 4 sts, k to end.")
            out, away = "knit", 4
        elif kind == "plain":
            lines.append("Next row (RS): Knit.")
            out, away = "knit", 0
        else:
            lines.append(f"Next row (RS): K{at}, {kind}, k to end.")
            out, away = f"k{count - at - takes}, {LEANS[kind]}, k{at}", 0
        count += adds - away
        # What the row back binds off is bound off by the right-side row of the other piece, and the other way round.
        lines.append(f"Next row (WS): Bind off {back} sts, p to end." if back else "Next row (WS): Purl.")
        if not away and not back:
            wanted += [(f"RS {out}", None), ("WS purl", None)]
        elif away:
            first = f"RS bind off {back}, k{count + 4 - back}" if back else "RS knit"
            wanted += [(first, count + 4 - back), (f"WS bind off 4, p{count - back}", count - back)]
        else:  # a wrong-side row alone: its stitches are bound off by a row that comes behind it
            wanted += [(f"RS {out}", None), ("WS purl", count)]
        count -= back
        if back and not away:
            # A right-side row follows, which binds off what the row before it did; it is the next pair's first row.
            lines.append("Next row (RS): Knit.")
            lines.append("Next row (WS): Purl.")
            wanted += [(f"RS bind off {back}, k{count}", count), ("WS purl", count)]
    right = ("== right front", "CO 40 sts. Work flat.", "Work 2 rows in stockinette st.", *lines, "Bind off.")
    plan = knit(*right, *LEFT)
    made = [round_ for round_ in plan.rounds if round_.section == "left front"][3:-1]
    assert [f"{each.side} {each.instruction}" for each in made] == [told for told, _ in wanted]
    assert all(after in (None, each.after) for each, (_, after) in zip(made, wanted, strict=True))


def test_the_other_side_changes_its_yarn_in_the_same_rows() -> None:
    """Fronts meet at the opening: a stripe that one has and the other lacks is seen by everyone."""
    striped = (*RIGHT[:4], "With A, purl 1 row.", "With MC, knit 1 row.", "With A, purl 1 row.", "With MC, bind off.")
    rounds = knit(*striped, *LEFT).rounds
    yarns = {
        name: [sorted({run.yarn for run in each.runs}) for each in rounds if each.section == name]
        for name in ("right front", "left front")
    }
    assert yarns["left front"] == yarns["right front"]
    assert yarns["left front"][3:] == [["MC"], ["A"], ["MC"], ["A"], ["MC"]]


def test_the_last_step_of_a_shoulder_comes_a_row_later_like_the_others() -> None:
    """Three steps of 5 at the beginning of right-side rows: on the other shoulder all three stand on wrong-side rows.

    Worked by hand (common practice: all steps of a shoulder begin at the armhole).
    """
    right = (
        "== right front",
        "CO 15 sts. Work flat.",
        "Work 2 rows in stockinette st.",
        "Next row (RS): Bind off 5 sts, k to end.",
        "Purl 1 row.",
        "Next row (RS): Bind off 5 sts, k to end.",
        "Purl 1 row.",
        "Bind off.",
    )
    assert rows(*right, *LEFT)[3:] == ["RS knit", "WS bind off 5, p10", "RS knit", "WS bind off 5, p5", "RS knit", "WS bind off"]


def test_the_other_side_of_a_neck_is_taken_back_first() -> None:
    """Nobody knits it otherwise: it waits alone, and has as many stitches."""
    neck = ("== left front", "CO 30 sts. Work flat.", "Work 4 rows in st st.", "Bind off center 10 sts, work to end.", "Hold sts beyond gap.")
    lines = (*neck, "Bind off 1 st at neck edge of next row.", "Work 1 row in st st.", "Bind off.", "Complete like other side, reversing shaping.")
    assert rows(*lines)[-5:] == ["WS return 10 from the holder", "WS purl", "RS knit", "WS bind off 1, p9", "RS bind off"]


@pytest.mark.parametrize("steps", [1, 2])
def test_a_neck_edge_behind_the_shoulder_of_the_row_that_parts_the_sides_is_bound_off_on_both(steps: int) -> None:
    """The 4 stitches of the neck edge went into the row in which the other side is taken up: 11 were left for the shoulder, in
    silence. By hand: 7 at the shoulder, 4 at the neck and what is left, on both sides, a row later on the second."""
    lines = (
        "== left front",
        "CO 65 sts. Work flat.",
        "Work 4 rows in st st.",
        f"Next row (RS): Bind off 7 sts, k until there are {11 if steps == 1 else 18} sts on right needle and turn, leaving rem sts on a holder.",
        "Bind off 4 sts at beg of next row.",
        *(["Bind off 7 sts at beg of next row.", "Purl 1 row."] if steps == 2 else []),
        "Bind off rem 7 sts.",
        f"With RS facing, rejoin yarn to rem sts, bind off centre {29 if steps == 1 else 15} sts, k to end.",
        "Complete to match first side, reversing shaping.",
    )
    two = ["WS bind off 7, p7"] if steps == 2 else []
    first = [f"WS bind off 7, p{11 if steps == 1 else 18}", f"RS bind off 4, k{7 if steps == 1 else 14}"]
    told = rows(*lines)
    assert told[-5 if steps == 2 else -3 :] == [*first, *two, *(["RS knit"] if two else []), "WS bind off"]
