"""Where the rows of a line end. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.project.instructions import Phrase, StopShort
from stepper.project.problems import Span
from stepper.project.reader import read_project
from stepper.project.reading.wording import Words, read_line
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

HEAD = "Cast on 40 sts. Work flat.\nWork 2 rows in stockinette.\n"


def test_a_row_that_only_binds_off_goes_on_to_its_end_and_that_is_told() -> None:
    """"BO 5 sts for armhole." leaves the rest of the row to her; it is worked as it is."""
    plan = plan_of(project(f"{HEAD}BO 5 sts for armhole. 35 sts.\nBind off."))
    assert [(run.stitch, run.times) for run in plan.rounds[3].runs] == [("bo", 5), ("k", 35)]
    assert any("rest of the row" in warning.text for warning in plan.warnings)


def test_words_behind_it_may_be_the_rest_of_the_row_and_are_not_passed_over() -> None:
    """"BO 5 sts. K to end." may be one row or two; nobody guesses."""
    assert faults(project(f"{HEAD}BO 5 sts. K to end.\nBind off."))


@pytest.mark.parametrize(
    ("line", "rows"),
    [
        ("Next and foll alt row: K1, ssk, k to last 3 sts, k2tog, k1. 36 sts.", [38, 38, 36]),
        ("Next and every foll 4th row to 34 sts: K1, ssk, k to last 3 sts, k2tog, k1.", [38, 38, 38, 38, 36, 36, 36, 36, 34]),
        ("Dec row (twice): K1, ssk, k to end. 38 sts.", [39, 38]),
        ("Dec row, every 2nd row 2 times: K1, ssk, k to end. 38 sts.", [40, 39, 39, 38]),
    ],
)
def test_a_head_may_say_on_which_rows_its_row_is_worked(line: str, rows: list[int]) -> None:
    """The row is worked on each of them, with the rows between as the fabric is."""
    plan = plan_of(project(f"{HEAD}{line}\nBind off."))
    assert [round_.after for round_ in plan.rounds[3:-1]] == rows


@pytest.mark.parametrize("head", ["Row 4:", "Next row:", "Inc row:"])
def test_a_change_spread_over_the_row_of_its_head_is_that_row(head: str) -> None:
    """A plain row in front of it would shift every row after it."""
    plan = plan_of(project(f"{HEAD}{head} Knit. Increase 8 sts evenly across row.\nBind off."))
    assert [round.after for round in plan.rounds[3:]] == [48, 0]


@pytest.mark.parametrize(
    "line",
    [
        "Rows 4 and 5: Knit. Increase 8 sts evenly across row.",
        "Row 4: *K2, p2; rep from * to end. Increase 8 sts evenly.",
        "Inc row: *K2, p2; rep from * to end. Increase 8 sts evenly.",
    ],
)
def test_a_change_that_may_be_a_row_of_its_own_is_refused(line: str) -> None:
    """One row more or fewer would be knitted, in one of the two readings, and nothing would show it."""
    problems = read_project(project(f"{HEAD}{line}\nBind off.")).problems
    assert [problem.message for problem in problems] == ["the change may fall in the row before it or in a row of its own."]


@pytest.mark.parametrize(
    ("lines", "kinds"),
    [
        ("Work in garter st.\nWork 5 rows.", "kkkkk"),
        ("Change to 3.5 mm needles and work in garter st.\nWith A, work 5 rows.", "kkkkk"),
        ("Work in garter st.\nWork 5 rows even.", "kkkkk"),
        ("Work in st st.\nWith A, work 5 rows.", "kpkpk"),
        ("Work in seed st.\nWork 5 rows.", "....."),
        ("Work in k2, p2 rib.\nWork 5 rows.", "....."),
    ],
)
def test_a_fabric_named_alone_is_worked_by_the_line_below_that_gives_its_rows(lines: str, kinds: str) -> None:
    """The two are one thing; a row for the first line was one too many, and the side was wrong from there on."""
    plan = plan_of(project(f"{HEAD}{lines}\nBind off."))
    rows = plan.rounds[3:-1]
    assert len(rows) == len(kinds)
    found = ["".join({run.stitch for run in row.runs}) for row in rows]
    assert all(kind in (".", stitches) for kind, stitches in zip(kinds, found, strict=True)), found
    assert not [told for told in plan.warnings if "one row of it is worked" in str(told)]


def test_garter_stitch_named_alone_is_that_of_the_shaping_below() -> None:
    """Shaped from the next row on, and knitted between."""
    shaped = "Work in garter st.\nDec 1 st at each end of next and every foll 4th row until 36 sts rem.\nBind off."
    rows = plan_of(project(f"{HEAD}{shaped}")).rounds[3:-1]
    assert [row.after for row in rows] == [38, 38, 38, 38, 36]
    assert {run.stitch for row in rows[1:4] for run in row.runs} == {"k"}



@pytest.mark.parametrize(
    ("line", "rows"),
    [
        ("K10, turn, p10, turn, k to end.", [40, 40, 40]),
        ("Next row: K30, w&t; p20, w&t; k to end.", [40, 40, 40]),
        ("K20, turn, cast on 5 sts, turn, k to end.", [45]),  # the turns only bring the yarn to where it is cast on
    ],
)
def test_a_row_that_turns_and_goes_on_is_several(line: str, rows: list[int]) -> None:
    """What is worked behind a turn is another row, over the same stitches."""
    plan = plan_of(project(f"{HEAD}{line}\nBind off."))
    assert [round_.after for round_ in plan.rounds[3:-1]] == rows


def kinds(words: str, sizes: int = 1) -> list[str]:
    """Return what a line becomes: `stop` where a round stops before its end, else its elements."""
    line = read_line(words, lambda offset, length: Span(line=1, column=offset + 1, length=length), Words(sizes=sizes)).line
    assert line is not None
    return [
        f"stop {each.number.values[-1]}" if isinstance(each, StopShort) else " ".join(type(one).__name__ for one in each.elements)
        for each in line.sentences
        if isinstance(each, StopShort | Phrase)
    ]


@pytest.mark.parametrize(
    "words",
    [
        "Next rnd: Knit to 5 sts before the end of the rnd, place next 10 sts on hold for underarm, k to end.",
        "Knit to 5 sts before the end of the round. Slip the next 10 sts to a holder for underarm. Knit to end.",
        "Next rnd: K to last 5 sts, bind off 10 sts, k to end.",
    ],
)
def test_the_round_stops_before_what_lies_over_its_end(words: str) -> None:
    """An underarm has the beginning of the round in its middle, and goes on a thread in one go."""
    whole, stop, behind = kinds(words)
    assert (whole, stop) == ("Until", "stop 5")
    assert behind in ("Hold Until", "Work Until")


def test_the_rest_of_the_round_may_wait() -> None:
    """Where the body is laid aside then, nothing more is knitted; what stood before the end stays in its round."""
    words = "Next rnd: K10, hold 10 sts for sleeve, k to 4 sts before the end of the rnd, hold 8 sts for underarm."
    assert kinds(words) == ["Work Hold Until", "stop 4", "Hold"]


@pytest.mark.parametrize(
    ("words", "sizes"),
    [
        ("Next rnd: K to last 5 sts, bind off 5 sts.", 1),
        ("Next rnd: K to last 5 sts, bind off 3 sts, k2.", 1),
        ("Next rnd: K to last 4 (5) sts, bind off 8 (5) sts, k to end.", 2),
        ("Rnd 5: K to last 5 sts, bind off 10 sts, k to end.", 1),
        ("Next row (RS): K to last 5 sts, bind off 10 sts, k to end.", 1),
    ],
)
def test_other_rows_stay_whole(words: str, sizes: int) -> None:
    """What fits before the end is there, and a row has no beginning behind its end."""
    assert len(kinds(words, sizes)) == 1
