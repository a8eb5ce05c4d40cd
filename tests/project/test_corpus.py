"""Printed sentences of every kind mean what a knitter reads in them, or are refused; never anything else.

The corpus (`tests/project/corpus/`, described in `corpus_entries`) is invented and was worked out by hand; the stitch
arithmetic of what is expected is checked here against the stitch table alone.
"""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from tests.project.corpus_entries import CORPUS, Entry, Row, entries, uses_and_leaves
from tests.project.corpus_garments import GARMENTS, names, plain_words, problems_of, table, told, work_rows
from tests.project.corpus_judge import (
    accepted_with_another_count,
    context_plans,
    same_rows,
    text_of,
    verdict,
    worked,
)
from tests.tables import each_row

KNOWN_MISREAD: tuple[str, ...] = ()
"""Entries accepted with another meaning, or with an assumption that is not told, or that end in a traceback. The list
only shrinks: one that is mended must be taken off it."""

KNOWN_MISREAD_ROWS: tuple[tuple[str, int], ...] = ()
"""Rows of the whole garments that are accepted with another meaning; this list only shrinks as well."""


def listed(path: Path) -> list[str]:
    """Read a list of names, one a row."""
    return [row for row in path.read_text(encoding="utf-8").splitlines() if row and not row.startswith("#")]


def of_kind(kind: int) -> list[str]:
    """List the entries of a kind: a thousand tests of a millisecond each take longer to hand out than to run."""
    return [name for name, entry in entries().items() if entry.kind == kind]


KINDS = 73


@pytest.mark.parametrize("kind", range(KINDS))
def test_printed_sentences_are_read_as_meant_or_refused_and_stay_read(kind: int) -> None:
    """A line knitted otherwise than printed is found by nobody until the garment does not fit; and what she could
    type yesterday she can type tomorrow."""
    once_read = set(listed(CORPUS / "read.txt"))
    wrong = []
    for name in of_kind(kind):
        found = verdict(name)
        allowed = ("misread", "untold", "crashed") if name in KNOWN_MISREAD else ("read", "refused")
        if found.outcome not in allowed or (name in once_read and found.outcome != "read"):
            wrong.append(
                f"{entries()[name].place}: {name}: {found.outcome}, not one of {allowed}: {found.why}"
            )
    assert wrong == []


COUNT_NOT_CHECKED = ("22-ratio",)
"""It picks up at a ratio along an edge, where the printed count is the better measure."""


def test_a_count_printed_behind_a_line_is_checked() -> None:
    """A printed count is the knitter's only oracle: with another count the line must not be accepted."""
    accepted = {name: accepted_with_another_count(name) for name in entries()}
    assert {name for name, lines in accepted.items() if lines} == set(COUNT_NOT_CHECKED), accepted


def test_every_list_names_entries_that_are_there() -> None:
    """A list that names what is gone guards nothing."""
    assert set(KNOWN_MISREAD) | set(listed(CORPUS / "read.txt")) <= set(entries())


def test_every_kind_has_its_entries() -> None:
    """The share read is a measure of all kinds only as long as every kind is there."""
    kinds = [entry.kind for entry in entries().values()]
    assert set(kinds) == set(range(KINDS))
    assert min(kinds.count(kind) for kind in range(40)) >= 9
    assert len(kinds) >= 450


def stitches_wrong(rows: list[Row], before: int) -> list[str]:
    """List the rows whose stitches are not those on the needles, by the stitch table."""
    wrong = []
    for row in rows:
        if row.runs is not None and uses_and_leaves(row.runs) != (before, row.after):
            wrong.append(f"{row}: {before} on the needles, uses and leaves {uses_and_leaves(row.runs)}")
        before = row.after
    return wrong


def stitches_before(entry: Entry, size: int) -> int:
    """Count the stitches that the lines before the sentence leave on the needles."""
    plans = context_plans(entry)
    return plans[size].rounds[-1].after if plans else 0


@each_row("kind", range(38))
def test_what_is_expected_can_be_knitted(kind: int) -> None:
    """A meaning worked out by hand may hold a slip; its rows must use what is there and leave what is printed."""
    for entry in entries().values():
        if entry.kind != kind or entry.refused or entry.meanings == [["nothing"]]:
            continue
        for size in range(entry.sizes):
            for rows in entry.rows(size):
                assert stitches_wrong(rows, stitches_before(entry, size)) == [], entry.place


def test_the_check_of_what_is_expected_can_fail() -> None:
    """A row that leaves a stitch over, and one that ends with another count, are both found."""
    entry = entries()["20-before-end"]
    (rows,) = entry.rows(0)
    assert stitches_wrong(rows, 40) == []
    assert stitches_wrong(rows, 41) != []
    assert stitches_wrong([Row(runs=(("k", 40, "MC"),), after=39)], 40) != []


def test_another_meaning_is_told_from_the_one_meant() -> None:
    """The judge must see one row more, one stitch otherwise, another side, yarn, needle or stitches held."""
    text, _ = text_of(
        ["CO 20 sts. Work flat.", "K8, hold 4 for tab, k to end.", "With CC, purl 1 row."], 1, "cm"
    )
    plans, problems = worked(text, 1)
    assert plans, problems
    right = ["co20 -> 20", "RS k8 hold4 k8 -> 16 ; held 4 ; needle 4", "WS p16:CC -> 16 ; yarn CC"]
    assert judged(right, plans[0].rounds)
    for at, wrong in (
        (1, "RS k9 hold4 k7 -> 16"), (1, "WS k8 hold4 k8 -> 16"), (1, "RS k8 hold4 k8 -> 17"), (2, "any -> 16 ; yarn MC"),
        (1, "any -> 16 ; held 5"), (1, "any -> 16 ; needle 3.5"), (2, "WS p16 -> 16"), (2, "2x WS p16:CC -> 16"),
    ):  # fmt: skip
        assert not judged(
            [wrong if number == at else line for number, line in enumerate(right)], plans[0].rounds
        ), wrong


def judged(lines: list[str], rounds: object) -> bool:
    """Judge rounds by rows written in the notation of the corpus."""
    from_lines = Entry(name="", kind=0, title="", place="", meanings=[lines]).rows(0)
    return any(same_rows(rows, rounds) for rows in from_lines)  # type: ignore[arg-type] # rounds of a plan


@pytest.mark.parametrize("name", names())
def test_a_whole_garment_is_read_as_meant_or_refused(name: str) -> None:
    """Row by row in every size, with plain words in place of what is refused, so that no row hides behind another."""
    found = told(name)
    assert found.stopped == ""
    wrong = [fault for fault in found.wrong if not re.match(r"row \d+ in plain", fault)]
    rows = {int(re.match(r"row (\d+)", fault)[1]) for fault in wrong}  # type: ignore[index] # all begin so
    known = {row for garment, row in KNOWN_MISREAD_ROWS if garment == name}
    assert rows == known, "\n".join(found.wrong)


@pytest.mark.parametrize("name", names())
def test_a_garment_keeps_the_rows_that_are_read(name: str) -> None:
    """The number of rows of a garment, as typed, that are accepted only grows."""
    floor = dict(row.split() for row in listed(GARMENTS / "read.txt"))
    text = (GARMENTS / f"{name}.yaml").read_text(encoding="utf-8")
    assert len(set(work_rows(text)) - set(told(name).refused)) >= int(floor[name])


@pytest.mark.parametrize("name", names())
def test_a_refused_row_of_a_garment_has_its_place(name: str) -> None:
    """Who cannot have her line read must at least see which one it is."""
    text = (GARMENTS / f"{name}.yaml").read_text(encoding="utf-8")
    height = len(text.splitlines())
    assert all(p.message and 1 <= p.line <= height and p.column >= 1 for p in problems_of(text))


@pytest.mark.parametrize("name", names())
def test_the_table_of_a_garment_names_rows_of_it(name: str) -> None:
    """A count beside the wrong row would check nothing."""
    text = (GARMENTS / f"{name}.yaml").read_text(encoding="utf-8")
    assert set(table(name)) <= set(work_rows(text))
    assert set(plain_words(name)) <= set(range(1, len(text.splitlines()) + 1))
