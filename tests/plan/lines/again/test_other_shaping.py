"""One shaping of another part. Source: common practice; counts by hand."""

from __future__ import annotations

import pytest

from tests.project.corpus_judge import text_of, worked

BACK = (
    "== back",
    "CO 40 sts. Work flat.",
    "Work 6 rows in st st.",
    "Shape armholes: Bind off 3 sts at beg of next 2 rows.",
    "Dec 1 st at each end of next and foll alt row.",
    "Work 10 rows.",
    "Bind off.",
)


def rows_of(*own: str, name: str = "front", stitches: int = 40) -> tuple[list[int], str]:
    """Return the counts of the rows of another piece behind the back, and what is reported."""
    begun = (f"== {name}", f"CO {stitches} sts. Work flat.", "Work 2 rows in st st.")
    plans, problems = worked(text_of([*BACK, *begun, *own], 1, "cm")[0], 1)
    told = " ".join(problem.message for problem in problems)
    return ([one.after for one in plans[0].rounds[24:]] if plans else []), told


def test_it_goes_from_its_first_row_to_the_last_that_shapes() -> None:
    """The even rows behind it are not part of it."""
    assert rows_of("Shape armholes as for back.", "Bind off.")[0][-6:] == [37, 34, 32, 32, 30, 0]


def test_it_ends_where_so_many_stitches_are_left() -> None:
    """Only on a piece that began with as many stitches."""
    assert rows_of("Shape armholes as for back until 32 sts rem.", "Bind off.")[0][-4:] == [37, 34, 32, 0]
    assert "it does not leave 32 stitches there" in rows_of("Shape armholes as for back until 32 sts rem.", stitches=44)[1]


@pytest.mark.parametrize(
    ("name", "line", "told"),
    [
        ("left front", "Shape armhole as for back.", "other edges than this piece"),
        ("front", "Shape raglans as for back.", "no rows of the back are said to shape it"),
        ("front", "Shape armholes as for back until piece measures 9 cm.", "only the stitches at which it ends"),
        ("front", "Shape armholes as for back. 31 sts.", "31"),
    ],
)
def test_what_is_not_that_of_the_other_part_is_refused(name: str, line: str, told: str) -> None:
    """A front that is half of a piece has one armhole, and a count that does not fit is reported."""
    found, said = rows_of(line, name=name)
    assert found == []
    assert told in said


@pytest.mark.parametrize("done", ["Bind off 3 sts at beg of next 2 rows.", "Bind off 3 sts at beg of next 2 rows. 34 sts.\nWork 2 rows.", "Bind off 2 sts, k to end.\nBind off 2 sts, p to end."])
def test_bind_offs_that_are_worked_here_already_are_not_worked_again(done: str) -> None:
    """The decreases that follow would hide it: they go on until the count is right."""
    back = [*BACK[:4], "Dec 1 st at each end of next and every alt row until 28 sts rem.", *BACK[5:]]
    text = text_of([*back, "== front", "CO 40 sts. Work flat.", "Work 2 rows in st st.", *done.split("\n"), "Shape armholes as for back."], 1, "cm")[0]
    assert "this piece has its own already" in " ".join(problem.message for problem in worked(text, 1)[1])
