"""A line taken up: rows or rounds, the side it is for, what it leaves open."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project
from tests.tables import each_row


def test_a_stretch_to_a_length_ends_on_the_side_that_the_next_line_needs() -> None:
    """`Row 1 (RS)` after so many centimetres: one row more rather than a row on the wrong side."""
    for length in (4, 5):
        plan = plan_of(project(f"Cast on 10 sts.\nWork flat.\nWork in stockinette for {length} cm.\nNext row (RS): K5, k2tog, k3.\nBind off."))
        shaped = next(round_ for round_ in plan.rounds if round_.shaping)
        assert shaped.side == "RS"
        assert plan.warnings == ()
        assert plan.stretches[0].last == shaped.index - 1


@pytest.mark.parametrize("change", ["Change to 4 mm needles.", "Join A.", "Change to 4 mm needles and A."])
def test_the_row_that_is_added_to_a_stretch_comes_before_what_changes_behind_it(change: str) -> None:
    """A rib that ends on the right side gets its row on its own needle, in its own yarn; that is told."""
    rib = "Change to 3 mm needles.\nWork in k1, p1 rib for {} cm."
    after = f"{change}\nNext row (RS): Knit.\nPurl 1 row.\nBind off."
    added = 0
    for length in (4, 5):
        plan = plan_of(project(f"Cast on 10 sts.\nWork flat.\n{rib.format(length)}\n{after}"))
        knit = next(round_ for round_ in plan.rounds if round_.instruction == "knit")
        ribbed = plan.rounds[knit.index - 1]
        assert (ribbed.side, ribbed.needle_mm, {run.yarn for run in ribbed.runs}, ribbed.remarks) == ("WS", 3, {"MC"}, ())
        assert ribbed.line == plan.rounds[knit.index - 2].line
        assert knit.side == "RS"
        assert knit.needle_mm == (4 if "4 mm" in change else 3)
        assert {run.yarn for run in knit.runs} == {"A" if "A" in change.replace(".", " ").split() else "MC"}
        assert knit.remarks
        assert plan.stretches[0].last == ribbed.index
        added += any("gets one row more before the change" in each.text for each in plan.warnings)
    assert added == 1


def test_rows_with_numbers_are_the_pattern_without_the_row_that_a_stretch_gets_before_them() -> None:
    """One rib row more before Row 1 is none of the rows that go on."""
    for length in (4, 5):
        rows = "Row 1 (RS): *K1, p1; rep from * to end.\nRow 2: Knit."
        plan = plan_of(project(f"Cast on 10 sts.\nWork flat.\nWork in stockinette for {length} cm.\n{rows}\nWork 4 rows in pattern.\nBind off."))
        assert [(each.side, each.instruction) for each in plan.rounds[-5:-1]] == [
            ("RS", "*k1, p1; rep from * to end"),
            ("WS", "knit"),
        ] * 2


def test_a_row_printed_for_the_other_side_is_told() -> None:
    """Two RS rows in a row mean that one is missing in between."""
    plan = plan_of(project("Cast on 10 sts.\nRow 1 (RS): Knit.\nNext row (RS): Knit.\nBind off."))
    assert "the line is for RS rows" in plan.warnings[0].text


@pytest.mark.parametrize("begin", ["With RS facing, pick up and knit 24 sts.", "Cast on 24 sts."])
@pytest.mark.parametrize(
    "rows",
    [
        "Row 1 (WS): P24.\nShort Row 2 (RS): K5, turn.\nShort Row 3: DS, p to end.\nNext row (RS): K.",
        "Short Row 1 (WS): P5, turn.\nShort Row 2 (RS): DS, k to end.\nNext row (WS): P.\nNext row (RS): K.",
    ],
)
def test_short_rows_that_begin_on_the_wrong_side_of_a_new_piece_go_in_rows(begin: str, rows: str) -> None:
    """No round begins on its wrong side, so that all of the piece is turned; the way is told with its first row."""
    plan = plan_of(project(f"{begin}\n{rows}\nWork 3 rows even.\nBind off.", sizes="S", size="S"))
    assert all(round_.flat for round_ in plan.rounds)
    assert "work in rows" in plan.rounds[1].remarks
    assert [round_.side for round_ in plan.rounds[1:3]] == ["WS", "RS"]
    assert [(round_.side, round_.instruction) for round_ in plan.rounds[-4:-1]] == [("WS", "purl"), ("RS", "knit"), ("WS", "purl")]


def test_short_rows_in_the_round_do_not_make_the_piece_flat() -> None:
    """After them the round goes on as a round."""
    plan = plan_of(project("Cast on 12 sts.\nJoin in the round.\nRow 1 (RS): K6, turn.\nRow 2 (WS): P6, turn.\nKnit 2 rounds.\nBind off."))
    assert [round_.flat for round_ in plan.rounds] == [False, True, True, False, False, False]


def test_from_round_to_flat_and_back() -> None:
    """A yoke opened for a neck slit, and closed again; and a split hem ribbed flat, then joined (6.17)."""
    plan = plan_of(
        project(
            "Cast on 106 sts.\nWork flat.\n*K2, p2; rep from * to last 2 sts, k2. Work for 3 cm.\nHold 106 sts for front.\n"
            "Cast on 106 sts.\nWork flat.\n*K2, p2; rep from * to last 2 sts, k2. Work for 5 cm.\nReturn front to needles.\n"
            "Join in the round.\nRnd 1: *K104, k2tog; rep from * to end. 210 sts.\nWork flat.\nRow 1 (RS): Knit.\nRow 2 (WS): Purl.\n"
            "Join in the round.\nKnit 1 round.\nBind off."
        )
    )
    joined = next(round_ for round_ in plan.rounds if round_.after == 210)
    assert not joined.flat
    assert [round_.flat for round_ in plan.rounds[joined.index + 1 :]] == [True, True, False, False]
    assert plan.rounds[joined.index + 2].side == "WS"


def test_what_a_line_leaves_open_is_told_with_its_place() -> None:
    """"Side marker" is taken as the next marker of the row, as markers have no names; she can judge."""
    work = "Cast on 20 sts. Join in the round.\nK10, pm, k to end.\nK to side marker, m1, k to end.\nBind off."
    (told,) = plan_of(project(work, sizes="S", size="S")).warnings
    assert told.line == 20
    assert "side marker" in told.text


def test_only_the_stretch_just_worked_to_a_length_is_made_longer() -> None:
    """Three rows that are counted stay three: what stands between a length and a row for the other side is told."""
    rows = "Work in stockinette until piece measures 2 cm.\nKnit 3 rows.\nNext row (RS): P1, k to end."
    plan = plan_of(project(f"Cast on 10 sts.\nWork flat.\n{rows}\nBind off."))
    assert "the line is for RS rows" in plan.warnings[0].text
    assert [round_.instruction for round_ in plan.rounds[-5:-1]] == ["knit", "knit", "knit", "p1, k9"]


@pytest.mark.parametrize(
    ("line", "flat"),
    [
        ("Next row: BO 2, k to end.", True),  # a row, and no side, where the round is opened
        ("(WS) P to end.", True),  # a side, and no row
        ("Next row (RS): K to end.", True),
        ("Next rnd: K to end.", False),
        ("K to end.", False),
    ],
)
def test_either_a_row_or_a_side_tells_that_the_piece_is_turned(line: str, *, flat: bool) -> None:
    """A round has neither."""
    plan = plan_of(project(f"Cast on 20 sts. Join in the round.\nKnit 2 rnds.\n{line}", sizes="one", size="one"))
    assert plan.rounds[-1].flat is flat


def test_a_row_behind_rounds_that_are_closed_is_a_round_and_that_is_told() -> None:
    """It was turned once without a word, and the rounds that the page goes on with were knitted to and fro."""
    work = "Cast on 48 sts. Join in the round.\nKnit 6 rounds.\nNext row: *K4, m1; rep from * to end.\nKnit 3 rounds."
    plan = plan_of(project(work, sizes="one", size="one"))
    assert [round_.flat for round_ in plan.rounds] == [False] * 11
    assert "speaks of a row: taken as a round" in plan.warnings[0].text


def test_a_row_right_behind_the_join_is_a_round_and_that_is_told() -> None:
    """Knitted to and fro behind "Join in the round", the first rib of a hat came out in rows and nothing showed it."""
    work = "Cast on 48 sts. Join in the round.\nRow 1: *K2, p2; rep from * to end.\nRow 2: *K2, p2; rep from * to end.\nKnit 3 rounds."
    plan = plan_of(project(work, sizes="one", size="one"))
    assert [round_.flat for round_ in plan.rounds] == [False] * 6
    assert "speaks of a row: taken as a round" in plan.warnings[0].text


@pytest.mark.parametrize(
    "rows", ["Row 1: Knit.\nRow 2: Purl.", "Next row: Knit.\nNext row (WS): Purl.", "Next row: BO 4, k to end.\nNext row: BO 4, p to end."]
)
def test_rows_behind_rounds_are_turned_where_what_follows_says_so(rows: str) -> None:
    """A number of its own, a wrong side or a bind-off means that the round is opened here."""
    plan = plan_of(project(f"Cast on 28 sts. Join in the round.\nKnit 6 rounds.\n{rows}", sizes="one", size="one"))
    assert [round_.side for round_ in plan.rounds if round_.flat] == ["RS", "WS"]
    assert any("turned after each" in warning.text for warning in plan.warnings) is rows.startswith("Row 1")


def test_a_wrong_side_short_row_that_nothing_has_turned_to_is_refused() -> None:
    """Behind a round the right side faces her: purled there, the short row stood at the wrong end, its purls on the right side."""
    begin = "Cast on 40 sts. Join in the round.\nKnit 2 rounds.\n"
    assert "nothing before it has turned the work" in faults(project(f"{begin}Short row 1 (WS): P24, w&t.\nKnit 1 round."))
    plan = plan_of(project(f"{begin}Short row 1 (RS): K30, w&t.\nShort row 2 (WS): P20, w&t.\nKnit 1 round."))
    assert [(round_.side, round_.instruction[:3]) for round_ in plan.rounds[3:5]] == [("RS", "k30"), ("WS", "p20")]


@pytest.mark.parametrize("row", ["K3, cast on 2 sts, k to end.", "Work in pattern, casting on 2 sts over each buttonhole."])
def test_a_row_that_closes_a_buttonhole_in_the_round_is_a_round(row: str) -> None:
    """It opened the round for good, in silence: "work 2 rounds" behind it was a purl row and a knit row."""
    work = f"Cast on 20 sts. Join in the round.\nButtonhole row: K3, bind off 2 sts, k to end.\nNext row: {row}\nWork 2 rounds in stockinette."
    plan = plan_of(project(work))
    assert [(round_.flat, round_.instruction) for round_ in plan.rounds[2:]] == [(False, "k3, cast on 2, k15"), (False, "knit"), (False, "knit")]
    assert any("taken as a round" in each.text for each in plan.warnings)


@each_row(
    ("work", "told"),
    [
        ("Cast on 20 sts. Work flat.\nWork 4 rows in st st.\nWith WS facing, p 1 row.", "by the rows so far the right side"),
        ("Cast on 20 sts. Work flat.\nWork 5 rows in st st.\nWith WS facing, p 1 row.", ""),
        ("Cast on 20 sts. Work flat.\nWork 4 rows in st st.\nJoin the wool with the wrong side facing, and p. 1 row.", ""),
        ("Cast on 20 sts. Work flat.\nWith WS facing, p 1 row.", ""),
        ("Cast on 20 sts.\nWith WS facing, p 1 row.", ""),
        ("Cast on 20 sts. Join in the round.\nKnit 2 rounds.\nWith WS facing, p 1 row.", "the work goes in rounds"),
    ],
)
def test_a_row_whose_words_turn_the_wrong_side_is_of_that_side_or_refused(work: str, told: str) -> None:
    """Purled with the right side facing it is a ridge. Yarn joined anew may begin on either side."""
    text = project(work, sizes="one", size="one")
    if told:
        assert told in faults(text)
        return
    last = plan_of(text).rounds[-1]
    assert (last.instruction, last.side, last.flat) == ("purl", "WS", True)
