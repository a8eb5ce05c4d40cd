"""Sentences that work something again, taken apart. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.told.phrases import split_phrases
from stepper.project.rewording.told.references import REFERENCES, write_reference


def written(sentence: str) -> str:
    """Return a sentence in the grammar's words; empty if it is not read."""
    found = split_phrases(sentence, 0, REFERENCES)
    made = write_reference(found[0]) if found is not None and found[1] >= len(sentence.rstrip(".")) else None
    return "".join(words for words, _ in made[0]) if made is not None else ""


@pytest.mark.parametrize(
    ("sentence", "words"),
    [
        ("Work from ** to ** as given for Back.", "work as for Back from ** to **"),
        ("Work as for the Back between ** and **.", "work as for Back from ** to **"),
        ("As for back up to the armhole, shaping reversed.", "work as for back to the armhole, reversing shaping"),
        ("Work 3 cm in rib as given for back, ending with a 2nd row.", "work in as-back rib for 3 cm, ending with row 2"),
        ("As given for back, work 3 cm in rib, ending with a 2nd row.", "work in as-back rib for 3 cm, ending with row 2"),
        ("Work even until same length as back, finishing with a WS row.", "work even until piece measures same as back to shoulder. ends with a WS row"),
        ("Complete to match first side, working one row more before shaping shoulder.", "complete like other side"),
        ("Repeat Section 2 twice more.", "work as for Section 2. Work as for Section 2"),
    ],
)
def test_phrases_are_put_together_in_any_order(sentence: str, words: str) -> None:
    """What, of what, how far and how often are told by their words and not by their place."""
    assert written(sentence) == words


@pytest.mark.parametrize(
    "sentence",
    [
        "Work as for back to ** and as for front to **.",
        "Repeat Section 2 two times.",
        "Work in rib as for back until the rib looks right.",
        "Work until same length as first sleeve.",
        "Knit this as the right, but mirrored: the neck decreases lie at the beginning.",
        "Work as first half.",
    ],
)
def test_a_sentence_that_is_not_sure_stays_as_printed(sentence: str) -> None:
    """Two parts, "two times" with or without the first, an end that nobody can tell, an edge that is the other one."""
    assert not written(sentence)
