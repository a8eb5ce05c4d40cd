"""A line that is read is read with the same meaning in other words. The families of words stand in `word_dresses`."""

from __future__ import annotations

from tests.bench.reworded import WRONG, judge_words, sample
from tests.project.corpus_entries import Entry, entries
from tests.project.corpus_judge import verdict
from tests.project.rewording.word_dresses import FAMILIES, dress, others, put

READ_OF_TEN = 9.5
"""How many of ten lines of the sample are read in other words, at least; `python -m tests.bench.reworded one` gives the share."""


def test_lines_of_the_corpus_mean_the_same_in_other_words() -> None:
    """Who words a row otherwise must get the same rows, or hear that it is not read."""
    judged = [
        (why, was, now, judge_words(was, now))
        for seed in ("first", "second")
        for why, was, now in sample(seed, 150)
        if verdict(was.name).outcome == "read"
    ]
    wrong = [f"{was.name}: {why}: {now.printed}: {found.why}" for why, was, now, found in judged if found.outcome in WRONG]
    assert wrong == []
    read = sum(found.outcome == "read" for *_, found in judged)
    assert len(judged) > 200
    assert read / len(judged) >= READ_OF_TEN / 10, [now.printed for _, _, now, found in judged if found.outcome != "read"]


def test_another_meaning_would_be_seen() -> None:
    """The judge can fail: words that do not mean the same are found."""
    was = entries()["0-straight-rounds"]
    assert judge_words(was, Entry(**{name: getattr(was, name) for name in Entry.__dataclass_fields__} | {"printed": ["Work 5 rounds straight."]})).outcome == "misread"


def test_every_family_changes_a_line_of_the_corpus() -> None:
    """A family that matches nothing measures nothing."""
    lines = [line for entry in entries().values() for line in entry.printed]
    assert [family.name for family in FAMILIES if not any(others(family, line) for line in lines)] == []


def test_a_capital_stays_where_a_sentence_begins() -> None:
    """Other words begin a sentence as the words before did, and only there."""
    off = next(family for family in FAMILIES if family.name == "bind off")
    assert put(off, "cast off", "Bind off 4 sts, k to last 4 sts, BO 4 sts.") == "Cast off 4 sts, k to last 4 sts, cast off 4 sts."


def test_one_manner_is_kept_from_top_to_bottom() -> None:
    """A designer does not change her words from row to row."""
    lines = dress(["Work even for 2 cm.", "Work even for 4 cm."], "manner", share=1.0)
    assert lines[0].replace("2", "4") == lines[1]
