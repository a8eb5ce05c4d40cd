"""Clauses of a sentence that are worked one after the other. Source: the wording of patterns; common practice."""

from __future__ import annotations

import pytest

from stepper.project.duration import UntilLength
from stepper.project.instructions import BindOff, WorkRounds
from stepper.project.problems import Span
from stepper.project.reading import clauses
from stepper.project.reading.clauses import clauses_of, first_work
from stepper.project.reading.wording import Words, read_line, reads


def cut(text: str) -> list[str]:
    """Return the clauses of a sentence."""
    return [text[start:end] for start, end in clauses_of(text)]


@pytest.mark.parametrize(
    ("printed", "clauses"),
    [
        (
            "Change to 5 mm needles and work 8 rows in rib, then place all sts on a holder.",
            ["Change to 5 mm needles", "work 8 rows in rib, then place all sts on a holder."],
        ),
        (
            "Work 3 rows straight in st st and then increase 1 st at each end of next row.",
            ["Work 3 rows straight in st st", "increase 1 st at each end of next row."],
        ),
        (
            "Work in st st until piece measures 9 cm, then dec 1 st at each end of next and every foll alt row 5 times.",
            ["Work in st st until piece measures 9 cm", "dec 1 st at each end of next and every foll alt row 5 times."],
        ),
    ],
)
def test_what_is_worked_one_after_the_other_is_cut(printed: str, clauses: list[str]) -> None:
    """A sentence of three instructions is three instructions."""
    assert cut(printed) == clauses


@pytest.mark.parametrize(
    "printed",
    [
        "Work 20 rows in rib and inc 1 st at each end of every 4th row.",
        "Knit 1 row, purl 1 row until piece measures 7 cm.",
        "Work 4 rows in rib, work 2 rows in garter st twice.",
        "Work 6 rows in garter st, dec 1 st at each end of last row.",
        "Work in rib for 4 cm or work 12 rows straight.",
        "Work 8 rows in rib and at the same time change to 4 mm needles.",
        "Next row: Knit 4 rows and cast on 5 sts at beg of next row.",
    ],
)
def test_what_is_worked_together_stays_together(printed: str) -> None:
    """Cut apart, the shaping would follow the rows it stands in, and a repeat would lose its first half."""
    assert cut(printed) == []


@pytest.mark.parametrize(
    ("printed", "works"),
    [
        ("Knit 3 rows; purl 1 row; knit 3 rows.", ["Knit 3 rows", "purl 1 row", "knit 3 rows."]),
        (
            "Dec 1 st each side every 4th row 5 times, then work even until sleeve measures 9 cm, bind off.",
            # what ends with the binding off reads as a whole, and is two works all the same
            ["Dec 1 st each side every 4th row 5 times", "work even until sleeve measures 9 cm, bind off."],
        ),
        (
            "Work even until back measures 20 cm, bind off 4 sts at beg of next 2 rows, then dec 1 st each side every alt row 3 times.",
            ["Work even until back measures 20 cm", "bind off 4 sts at beg of next 2 rows", "dec 1 st each side every alt row 3 times."],
        ),
        ("Row 3 k to last 2 sts, ssk; Row 4 purl; rep these 2 rows 5 times.", ["Row 3 k to last 2 sts, ssk", "Row 4 purl", "rep these 2 rows 5 times."]),
        ("Work in patt as folls: Row 1 Knit. Row 2 *K1, p1; rep from * to end.", ["Work in patt as folls:", "Row 1 Knit.", "Row 2 *K1, p1; rep from * to end."]),
        ("K 4 rnds Next rnd: k2tog around.", ["K 4 rnds", "Next rnd: k2tog around."]),
    ],
)
def test_each_work_of_a_long_sentence_is_one(printed: str, works: list[str]) -> None:
    """A leaflet says a whole back in one sentence, and its rows one behind the other."""
    assert cut(printed) == works


def test_a_piece_is_bound_off_behind_its_length() -> None:
    """Cut or read as a whole, the length comes first and all stitches are bound off behind it."""
    reading = read_line("Work even until sleeve measures 9 cm, bind off.", lambda at, length: Span(line=1, column=at + 1, length=length), Words(sizes=1))
    assert reading.line is not None
    worked, ends = reading.line.sentences
    assert isinstance(worked, WorkRounds)
    assert isinstance(worked.duration, UntilLength)
    assert isinstance(ends, BindOff)


@pytest.mark.parametrize(
    "printed",
    [
        "Work 12 rows even, dec 1 st each side every 4th row 3 times.",
        "Dec 1 st each side every 4th row 3 times, work in garter st.",
        "Work 8 rows in st st, dec 1 st at each end of 3rd and foll 4th row.",
        "Knit 8 rows, inc 1 st at each end of the third and every foll 4th row twice.",
        "Row 2 purl, row 1 knit.",
        "Rows 1-4: Knit 2 rows; purl 2 rows.",
        "Work 4 rows; 2 rows in rib; 3 times.",
        "Pick up 20 sts along edge, k to end.",
        "Row 1 knit; while working row 2 purl.",
    ],
)
def test_works_that_may_run_together_are_not_cut(printed: str) -> None:
    """Which rows a shaping falls on, and how much a number of times is of, is not for a comma to say."""
    assert cut(printed) == []


def test_what_reads_only_in_part_is_not_cut() -> None:
    """Half a sentence read would be a plan with a hole."""
    assert cut("Change to 5 mm needles and work the frobnicated edge.") == []


def test_many_joints_are_tried_once_each(monkeypatch: pytest.MonkeyPatch) -> None:
    """Twenty-five clauses with one at the end that cannot be read may be cut in thirty million ways."""
    tried: list[str] = []

    def read(clause: str) -> bool:
        tried.append(clause)
        return reads(clause)

    monkeypatch.setattr(clauses, "reads", read)
    assert clauses_of("K 1 rnd, " * 25 + "k 1 wombat.") == ()
    assert 0 < len(tried) <= 25 * 26 * 2


def test_works_that_were_found_are_not_looked_for_again(monkeypatch: pytest.MonkeyPatch) -> None:
    """Cast-ons that are joined at the end may be cut: those behind were found anew from each."""
    tried: list[str] = []

    def read(clause: str) -> bool:
        tried.append(clause)
        return reads(clause)

    monkeypatch.setattr(clauses, "reads", read)
    assert clauses_of(", ".join(["Cast on 24 sts."] * 14) + " and join.")
    assert len(tried) <= 14 * 15 * 2


@pytest.mark.parametrize(
    ("printed", "work", "behind"),
    [
        ("Change to 5 mm needles and patt the walls.", "Change to 5 mm needles", "patt the walls."),
        ("Purl 1 round, knit 1 round, then begin the wall.", "Purl 1 round, knit 1 round", "begin the wall."),
        (
            "With 3 mm needles cast on 54 sts. and work 4 cm in twirls, inc 6 sts in the last row.",
            "With 3 mm needles cast on 54 sts.",
            "work 4 cm in twirls, inc 6 sts in the last row.",
        ),
    ],
)
def test_the_first_work_is_found_where_another_order_follows(printed: str, work: str, behind: str) -> None:
    """Read or not: it cannot be meant for the rows in front of it."""
    found = first_work(printed)
    assert found is not None
    assert (printed[: found[0]], printed[found[1] :]) == (work, behind)


@pytest.mark.parametrize(
    "printed",
    [
        "Knit 4 rounds and work twirls in every round.",
        "Knit 4 rounds, placing twirls.",
        "Knit 4 rounds, and begin the wall at the same time.",
        "Purl 1 round, knit 1 twirl, 3 times in all.",
        "Row 1: K4, then begin the wall.",
        "*K4; knit the wall.",
        "Knit 4 rounds (as she said, then begin the wall).",
        "If you are tall, knit 4 rounds, then begin the wall.",
        "Round the wall: Knit 4 rounds, then begin the wall.",
        "K4, purl the wall.",
    ],
)
def test_what_may_be_meant_for_the_rows_before_it_is_no_work_of_its_own(printed: str) -> None:
    """Cut off, it would be worked after them."""
    assert first_work(printed) is None
