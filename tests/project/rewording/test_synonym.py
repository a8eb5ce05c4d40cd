"""One row of the table of other wordings."""

from __future__ import annotations

from stepper.project.rewording.synonym import KEPT, row


def test_a_row_knows_where_it_is_tried_and_what_is_said() -> None:
    """Trying every pattern on every line would cost time; words that are said are found by name."""
    made = row("long|short", r"(is) (?P<said>long)", r"\1", "It is LONG.", spelt_out=True)
    assert made.has == ("long", "short")
    assert (made.said, made.spelt_out, made.again) == ("said", True, False)
    assert made.pattern.search("it IS Long")
    assert row("a", "a", KEPT, "a", exact=True).pattern.search("A") is None
