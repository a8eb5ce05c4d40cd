"""Stripes among the rows of a section."""

from __future__ import annotations

from stepper.project.problems import Span
from stepper.project.respelt import Respelt
from stepper.project.stripes.stripe_rows import take_stripes
from stepper.project.stripes.stripe_sequences import StripeSequences


def test_rows_are_left_without_the_words_that_call_for_stripes() -> None:
    """Notes and rows in own words keep all of theirs; a row that is nothing else is a note."""
    texts = ["Knit 1 round in stripe sequence.", "Stripe sequence: 1 rnd MC, 1 rnd CC.", "Note: in stripe sequence",
             "Own words: in stripe sequence", "Knit 1 round in stripe sequence.", "Work in stripe sequence throughout."]  # fmt: skip
    rows = [(text, Span(line=number, column=7)) for number, text in enumerate(texts, 1)]
    respelt = Respelt()
    left = take_stripes(rows, StripeSequences(), {"MC": "oat", "CC": "moss"}, respelt)
    assert [text for text, _ in left] == [texts[0], texts[2], texts[3], "Knit 1 round.", f"Note: {texts[5]}"]
    assert set(respelt.rows) == {5, 6}
    assert respelt.words([left[3]]) == texts[4]
    assert respelt.words([left[4]]) == texts[5]
    called = respelt.stripes([left[4]])
    assert called is not None
    assert called.stripes == ((1, "MC"), (1, "CC"))
    assert respelt.stripes([left[0]]) is None
