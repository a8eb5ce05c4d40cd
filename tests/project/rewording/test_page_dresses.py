"""Whole pages in other words, compared row by row with the page as printed."""

from __future__ import annotations

from tests.project.rewording import page_dresses
from tests.project.rewording.page_dresses import compare

PAGE = (
    "Plain hat\n\nHat\nCast on 40 sts. Join in the round.\nKnit 4 rounds.\n"
    "Dec rnd: K1, k2tog, k to last 3 sts, ssk, k1.\nWork even until piece measures 10 cm from cast-on edge.\nBind off.\n"
)


def test_a_page_in_other_words_is_read_as_before() -> None:
    """Rows that were read are read, as the same instructions."""
    seen = [compare(PAGE, seed) for seed in ("1", "2", "3", "4")]
    assert all(found.tried >= 2 for found in seen)
    assert [found.lost + found.other for found in seen] == [()] * 4


def test_a_row_that_is_lost_and_one_that_means_another_thing_are_found(monkeypatch: object) -> None:
    """The comparison can fail."""

    def spoilt(lines: list[str], seed: str) -> list[str]:
        return [line.replace("Knit 4 rounds", "Knit 5 rounds").replace("Bind off", "Blind off") for line in lines]

    monkeypatch.setattr(page_dresses, "dress", spoilt)  # type: ignore[attr-defined]
    found = compare(PAGE, "1")
    assert [now for _, now in found.other] == ["Knit 5 rounds."]
    assert [now for _, now in found.lost] == ["Blind off."]
