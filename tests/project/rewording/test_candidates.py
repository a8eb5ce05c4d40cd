"""The rows that are looked for in a line, against one who tries row after row."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor

from hypothesis import given
from hypothesis import strategies as st

from stepper.project.rewording.candidates import Candidates
from stepper.project.rewording.synonym import Synonym, row
from stepper.project.rewording.synonyms import SYNONYMS

TABLE = (
    row("bind|cast", r"\b(?:bind|cast)\s+off\b", "", ""),
    row("", r"\d", "", ""),
    row("rnd|round", r"^(\s*)(?:rnds?|rounds?)\s+\d", "", ""),
    row("rnd 1|off", r"off", "", ""),
    row(":", r":\s*(?:K|P)", "", "", exact=True),
    row("st", r"sts?\b|stitch", "", ""),
    row("edge", r"(?:at|along)\s+(?:each|both|the)\s+edges?\s+of", "", ""),
)
WORDS = ("Bind", "cast", "off", "Rnd", "rounds", "1", "22", ":", "K", "k", "sts", "stitch", "at", "each", "edge", "of", "along", "along\tboth", "")


def found_by(table: tuple[Synonym, ...], text: str) -> list[int]:
    """Try one row after the other."""
    low = text.lower()
    return [at for at, one in enumerate(table) if any(piece in low for piece in one.has) and one.pattern.search(text)]


def found(candidates: Candidates, text: str) -> list[int]:
    """Ask for one row after the other."""
    rows: list[int] = []
    while (at := candidates.find_first(text, rows[-1] + 1 if rows else 0)) is not None:
        rows.append(at)
    return rows


@given(st.lists(st.lists(st.sampled_from(WORDS), max_size=8).map(" ".join), min_size=1, max_size=6))
def test_the_rows_of_any_text_are_those_that_one_finds_who_tries_all(texts: list[str]) -> None:
    """In the order of the table, whatever lines were looked at before."""
    candidates = Candidates(TABLE)
    for text in [*texts, *texts]:
        assert found(candidates, text) == found_by(TABLE, text)


def test_so_are_the_rows_of_the_whole_table_in_examples_of_its_own() -> None:
    """Read one after the other, and beside each other."""
    lines = [one.example for one in SYNONYMS[::150]]
    expected = [found_by(SYNONYMS, line) for line in lines]
    assert sum(map(bool, expected)) > len(lines) // 2
    candidates = Candidates(SYNONYMS)
    assert [found(candidates, line) for line in lines] == expected
    beside = Candidates(SYNONYMS)
    with ThreadPoolExecutor(max_workers=4) as pool:
        assert list(pool.map(lambda line: found(beside, line), lines)) == expected
