"""Pieces that are worked in rows without a line that says so, and those that are not."""

from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.plan.compile import compile_plan
from stepper.project.model import Project
from stepper.project.reader import read_project
from tests.plan.stretches import Stretch
from tests.plan.test_compile import faults, plan_of
from tests.plan.test_stretches import file_of
from tests.project.samples import project
from tests.tables import each_row


@pytest.mark.parametrize(
    "work",
    [
        "Cast on 20 sts.\nWork 4 rows in garter stitch.",
        "Cast on 20 sts. Work 4 rows in garter stitch.",
        "Cast on 20 sts.\nWork in garter stitch for 2 cm.\nDec 1 st at each end of next row.",
        "Cast on 20 sts.\nWork in garter stitch until piece measures 3 cm, ending with a WS row.",
    ],
)
def test_what_speaks_of_rows_alone_is_worked_in_rows(work: str) -> None:
    """Garter stitch in the round purls every other round: a piece in rows would become ribs across."""
    rounds = plan_of(project(f"{work}\nBind off.")).rounds[1:-1]
    assert all(round_.flat for round_ in rounds)
    assert {round_.instruction for round_ in rounds[:4]} == {"knit"}
    assert "work in rows" in rounds[0].remarks


@pytest.mark.parametrize(
    "work",
    [
        "Cast on 20 sts. Join in the round.\nWork 4 rows in garter stitch.",
        "Cast on 20 sts.\nWork 4 rounds in garter stitch.",
        "Cast on 20 sts.\nKnit to end.\nPurl to end.",
        "Cast on 20 sts.\nKnit to end.\nJoin in the round.\nKnit 2 rows.",
    ],
)
def test_a_piece_that_is_joined_or_speaks_of_rounds_stays_in_the_round(work: str) -> None:
    """Many pages call rounds rows once they are joined."""
    assert not any(round_.flat for round_ in plan_of(project(f"{work}\nBind off.")).rounds)


@pytest.mark.parametrize(
    ("work", "flat"),
    [
        ("Cast on 20 sts.\nR1: Knit.\nR2: Purl.", True),
        ("Cast on 20 sts. Join in the round.\nR1: Knit.\nR2: Purl.", False),
        ("Cast on 20 sts.\nR1: *K2, p2; rep from * around.\nR2: Purl.", False),
        ("Cast on 20 sts. Work flat.\nR1 (RS): Knit.\nR2 (WS): Purl.", True),
    ],
)
def test_a_head_of_one_letter_is_a_row_or_a_round_as_the_work_goes(work: str, *, flat: bool) -> None:
    """ "R1" stands for both: as a mere name its rows had no number, and a piece in rows was worked around."""
    plan = plan_of(project(work, sizes="one", size="one"))
    assert [round_.flat for round_ in plan.rounds[1:]] == [flat] * 2
    assert plan.warnings == ()


@each_row(
    "begin, flat",
    [
        ("Using the pair of needles cast on 20 sts.", True),
        ("With a pair of 4 mm needles, cast on 20 sts.", True),
        ("Using straight needles, cast on 20 sts.", True),
        ("With a pair of circular needles, cast on 20 sts.", False),
        ("Cast on 20 sts.", False),
    ],
)
def test_on_a_pair_of_needles_rows_are_worked(begin: str, *, flat: bool) -> None:
    """Neither line says "row", and a sentence beside them tells of the same in rounds on four needles."""
    besides = "Note: They may be worked in rounds on four needles instead."
    rounds = plan_of(project(f"{begin}\nWork in stocking stitch for 1 cm.\nBind off.\n{besides}")).rounds
    assert [round_.instruction for round_ in rounds[1:3]] == ["knit", "purl" if flat else "knit"]
    assert all(round_.flat is flat for round_ in rounds)


def test_a_head_of_one_letter_is_a_row_where_the_round_was_opened() -> None:
    """A heel whose other stitches went on hold was worked around, and its flap became a tube."""
    work = "Cast on 40 sts. Join in the round.\nKnit 2 rounds.\nK20, place next 20 sts on hold for the instep.\nR1: Sl 1, purl to end.\nR2: Sl 1, knit to end."
    plan = plan_of(project(work, sizes="one", size="one"))
    assert [round_.side for round_ in plan.rounds if round_.flat][-2:] == ["WS", "RS"]


def test_a_single_purled_row_before_a_right_side_row_is_of_the_wrong_side() -> None:
    """Purled on the right side it would be a ridge that nobody printed."""
    plan = plan_of(project("Cast on 20 sts.\nPurl 1 row.\nDec row (RS): K1, k2tog, k to end.\nBind off."))
    assert [round_.side for round_ in plan.rounds[1:3]] == ["WS", "RS"]
    assert plan.warnings == ()


def test_a_journal_knitted_before_keeps_its_rounds() -> None:
    """Without a spacing the plan is the one that was knitted then."""
    file = read_project(project("Cast on 20 sts.\nWork 4 rows in garter stitch.\nBind off.")).project
    assert file is not None
    plan = compile_plan(replace(file, spacing=None)).plan
    assert plan is not None
    assert not any(round_.flat for round_ in plan.rounds)


NECK = (
    "Cast on 64 sts. Join in the round.\nKnit 2 rounds.\nK20, place next 24 sts on hold for neck, k to end.\n"
)


@pytest.mark.parametrize(
    "line", ["Work 4 rows in stockinette.", "Row 1 (RS): K1, ssk, k to last 3 sts, k2tog, k1.\nRow 2: Purl."]
)
def test_rows_behind_a_gap_in_the_round_ask_where_they_begin(line: str) -> None:
    """Worked around, the neck is drawn shut; as rows from where the round begins, the back is slit open."""
    told = faults(project(f"{NECK}{line}\nBind off."))
    assert "does not say where they begin" in told
    assert "join the yarn at the gap" in told


@pytest.mark.parametrize(
    "line",
    [
        "Knit 4 rounds.",
        "Work flat.\nWork 4 rows in stockinette.",
        "Row 1 (RS): Rejoin yarn, k to end.\nRow 2: Purl.",
    ],
)
def test_rounds_and_rows_that_say_where_they_begin_are_taken(line: str) -> None:
    """What closes the gap, or says that it is worked flat from there, leaves nothing open."""
    assert plan_of(project(f"{NECK}{line}\nBind off.")).rounds[-2].after == 40


PARTED = "Cast on 40 sts. Join in the round.\nKnit 4 rounds.\nK20, slip 20 sts to a holder.\n"


@each_row(
    ("lines", "sides"),
    [
        ("P. 1 row.", ["WS"]),
        ("Join the wool with the wrong side facing, and p. 1 row.\nWork 2 rows in st st.", ["WS", "RS", "WS"]),
        ("Break yarn.\nJoin the wool with the wrong side facing, and p. 1 row.", ["WS"]),
        ("Break yarn.\nWith RS facing, rejoin yarn and knit 1 row.\nPurl 1 row.", ["RS", "WS"]),
        ("Break yarn.\nWith RS facing, rejoin yarn and knit to end.\nNext row: Purl.", ["RS", "WS"]),
        ("Break yarn.\nPurl 1 row.\nDec row (RS): K1, k2tog, k to end.", ["WS", "RS"]),
        ("Break yarn.\nP. 1 row.", None),
        ("Break yarn. P. 1 row.", None),
        ("Break yarn.\nWork 4 rows in st st.", None),
        ("Break yarn.\nK to end.\nWork 4 rows in st st.", None),
        ("Break yarn.\nDec 1 st at each end of every right-side row 3 times.", None),
        ("Break yarn.\nWith RS facing, rejoin yarn and knit 2 rounds.", ["RS", "RS"]),
    ],
)
def test_a_part_of_a_ring_goes_on_in_rows_wherever_its_yarn_is(lines: str, sides: list[str] | None) -> None:
    """Cut or joined anew, the yarn begins on either side: rows ask for it, and were never rounds."""
    work = project(f"{PARTED}{lines}", sizes="one", size="one")
    if sides is None:
        assert "on which side the yarn begins" in faults(work)
        return
    rounds = plan_of(work).rounds[6:]
    assert [one.side for one in rounds] == sides
    assert {one.flat for one in rounds} == {"rounds" not in lines}


def test_rounds_behind_the_row_that_closes_a_heel_are_rounds() -> None:
    """Worked back as rows they would be purled on the outside, every other one."""
    work = (
        "Cast on 20 sts.\nJoin in the round.\nKnit 1 round.\nWork back and forth over the first 12 sts for heel.\n"
        "Row 1 (RS): Knit.\nRow 2: Purl.\n"
        "Knit across heel sts, pick up and knit 4 sts along flap, knit across 8 instep sts, pick up and knit 4 sts along flap.\n"
        "Rnd 1: Knit.\nRnd 2: Purl.\n"
    )
    plan = plan_of(project(work))
    assert [(one.flat, one.after) for one in plan.rounds[-3:]] == [(False, 28)] * 3
    assert any("taken as joined in the round" in caution.text for caution in plan.warnings)


@pytest.mark.parametrize(
    ("back", "refused"), [("", True), ("K across instep sts. Join in the round.\n", False)]
)
def test_rounds_over_the_stitches_of_a_heel_alone_are_refused(back: str, refused: bool) -> None:
    """ "Knit 2 rounds" while the instep waits would be two rows of garter stitch on the heel, in silence."""
    heel = "Heel: work back and forth over first 20 sts.\nRow 1 (RS): Knit 20, turn.\nRow 2 (WS): P20, turn.\nRow 3 (RS): Knit 20.\n"
    text = project(
        f"Cast on 40 sts. Join in the round.\nKnit 4 rounds.\n{heel}{back}Knit 2 rounds.\nBind off."
    )
    read = read_project(text).project
    assert read is not None
    found = compile_plan(read).problems
    assert any("rows are worked over a part of the stitches" in each.message for each in found) == refused


@pytest.mark.parametrize(
    ("before", "told"),
    [
        ("Cast on 40 sts. Work flat.\nWork 4 rows in st st.\n", "the work goes in rows here"),
        (
            "Cast on 40 sts. Join in the round.\nKnit 4 rounds.\nNext row (RS): K16, turn.\n",
            "the row before was turned",
        ),
    ],
)
def test_rounds_where_rows_go_on_are_refused(before: str, told: str) -> None:
    """Knitted back and forth, "knit 6 rounds" would be garter stitch; after a turn it would be purled back."""
    read = read_project(project(f"{before}Knit 6 rounds.\nBind off.")).project
    assert read is not None
    assert any(told in each.message for each in compile_plan(read).problems)


RING = "== body\nCO 20 sts. Join in the round.\nKnit 2 rnds.\nBind off.\n"
PIECES = "== body\nCO 20 sts. Work flat.\nKnit 2 rows.\nBind off.\n"
PICK = "With RS facing, pick up and knit"


@each_row(
    ("before", "band", "flat", "told"),
    [
        (RING, f"== neckband\n{PICK} 34 sts around neck. 34 sts.", False, False),
        (RING, f"== neckband\n{PICK} 4 sts along left saddle, 6 down left front, 14 along front neck, 10 up right front. 34 sts.", False, False),
        (RING, f"== armhole bands\n{PICK} 17 sts up front edge and 17 sts down back edge. 34 sts.", False, False),
        (RING, "== collar\nPick up and knit 34 sts.", False, False),
        (RING, f"== button band\n{PICK} 34 sts along left front.", True, False),
        (RING, "== bands\nPick up and knit 34 sts along left front.", True, False),
        (RING, f"== neckband\n{PICK} 34 sts around neck.\nKnit to end.\nBind off.\n== button band\nPick up and knit 34 sts.", True, True),
        (PIECES, f"== neckband\n{PICK} 34 sts around neck. 34 sts.", True, True),
        (PIECES, "== border\nPick up and knit 34 sts along long edge.", True, False),
        (PIECES, "== border\nPick up and knit 34 sts.", False, True),
    ],
)
def test_an_edge_with_two_ends_is_worked_in_rows(before: str, band: str, flat: bool, told: bool) -> None:
    """The side that faces says nothing of it: stitches are picked up so for a ring and for a band. Source: common practice."""
    lines = f"{before}{band}\nWork in k1, p1 rib for 1 cm.\nBind off."
    made = compile_plan(_read(file_of(Stretch(before="", lines=lines, means=""), lines)))
    assert made.plan is not None
    assert made.plan.rounds[-2].flat is flat
    assert any("rows or rounds go on behind" in one.text for one in made.plan.warnings) is told


def _read(text: str) -> Project:
    found = read_project(text).project
    assert found is not None
    return found


def test_a_cast_on_without_a_word_of_rows_or_rounds_tells_what_was_taken() -> None:
    """Taken in silence, every other row of a flat piece would be wrong; the finishing speaks of no rows."""
    told = "no line of this part says whether rows or rounds are worked: rounds are taken."
    lines = "Work in st st until piece measures 4 cm.\nBind off.\nFold the edge to the wrong side and sew it down."

    def notes(begin: str) -> list[str]:
        return [one.text for one in plan_of(project(f"{begin}\n{lines}")).warnings if told in one.text]

    assert len(notes("Cast on 20 sts.")) == 1
    assert not notes("Cast on 20 sts. Work flat.")
    assert not notes("Cast on 20 sts. Join in the round.")
