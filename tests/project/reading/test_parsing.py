from __future__ import annotations

import pytest

from stepper.project.reading.parsing import (
    Stopped,
    legal_words,
    made_plain,
    parse_line,
    split_label,
    stop_of,
    understood,
)
from tests.tables import each_row


def test_a_plain_line_has_the_length_of_the_printed_one() -> None:
    """Columns stay true."""
    printed = "Rnds 1–4:\u00a0“K2”, 10½ in × 2 ’ — *"
    assert len(made_plain(printed)) == len(printed)


@pytest.mark.parametrize(
    ("line", "label", "side", "rest"),
    [
        ("Dec round: K1.", "Dec round", "", "K1."),
        ("Set-up row (WS): P9.", "Set-up row", "WS", "P9."),
        ("Rnds 1-4: Knit.", None, "", "Rnds 1-4: Knit."),
        ("All WS rows: Purl.", None, "", "All WS rows: Purl."),
        ("Cast on 80 (84: 88) sts.", None, "", "Cast on 80 (84: 88) sts."),
    ],
)
def test_a_label_is_told_from_a_head(line: str, label: str | None, side: str, rest: str) -> None:
    """A head numbers rounds; a label names a line; a colon in a list does neither."""
    found, on, start = split_label(line)
    assert (found, on, line[start:]) == (label, side, rest)


def test_the_place_where_the_reading_stops_is_in_the_line() -> None:
    """Of the whole line, its label included."""
    assert stop_of("Knit 2 rounds.") is None
    assert stop_of("Note: anything at all (") is None
    assert stop_of("Dec round: K1, foo, k to end.") == len("Dec round: K1, ")
    assert isinstance(parse_line(""), Stopped)


def test_legal_words_hold_every_form() -> None:
    """Words with optional letters are spelt out."""
    assert {"needle", "needles", "increase", "increasing", "rnds", "k2tog", "stretchily"} <= legal_words()


@each_row("heading", ["Joining", "JOINING", "Casting off", "Binding off.", "Turning", "Knitting", "Grafting", "Holding", "Increasing", "Joining up"])
def test_a_gerund_alone_orders_nothing(heading: str) -> None:
    """It heads what is told below: "Joining" over two sleeves and a body joins no row in the round."""
    assert isinstance(understood(made_plain(heading)).outcome, Stopped)


def test_a_gerund_with_what_it_works_is_an_order() -> None:
    """Pages in that voice go on being read."""
    for line in ("Working in rows", "Breaking yarn", "Joining in the round"):
        assert not isinstance(understood(made_plain(line)).outcome, Stopped)


@each_row(
    "line",
    [
        "Using needle B, cast on 88 sts.",
        "With needle A, knit 2 rounds.",
        "With larger needle A, knit 2 rounds.",
        "Cast on 60 sts on needle B.",
        "With B needles, cast on 60 sts.",
        "Dec round: With needles C, knit.",
    ],
)
def test_a_needle_called_by_a_letter_is_no_yarn(line: str) -> None:
    """A list of needles letters them as a list of yarns does, and the body would be worked in a yarn that is none."""
    outcome = understood(made_plain(line)).outcome
    assert isinstance(outcome, Stopped)
    assert "calls a needle by a letter" in outcome.why


def test_a_yarn_called_by_a_letter_stays_one() -> None:
    """Also beside a needle that is called by its size or its number."""
    for line in ("With A, knit 2 rounds.", "With 4 mm needles and A, cast on 60 sts.", "Using larger needles and yarn B, knit 2 rows."):
        assert not isinstance(understood(made_plain(line)).outcome, Stopped)


def test_a_row_with_a_clause_beside_it_is_read_as_the_row_alone() -> None:
    """ "Across" behind short rows may end with the heel, which is asked; put as "to end" it would not be."""
    read = understood("K across, picking up wraps, turn.")
    assert read.reworded.text == "K across, turn."
    assert read.reworded.kept == ("picking up wraps",)


@pytest.mark.timeout(5)
def test_a_long_number_in_a_list_of_rows_ends_at_once() -> None:
    """Each figure of a number might be a number of its own: thirty of them would be tried in a thousand million ways."""
    found = understood(f"work dec round every 16th (12th, {'1234567890' * 4}th, 9th round round 5 times")
    assert found is not None
