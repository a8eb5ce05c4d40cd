from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.mouth.pieces import LONGEST_PIECE, cut_into_clauses, cut_into_pieces, strip_unspeakable


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("  Knit\tto \n end. ", "Knit to end."),
        ("Work ½ of it – 3 × 4 cm", "Work ½ of it – 3 × 4 cm"),
        ("a\0b\x1b[31mc", "a b [31mc"),
        ("\ud800half", "half"),
        ("", ""),
    ],
)
def test_what_cannot_be_said_is_left_out(text: str, said: str) -> None:
    """Control characters and halves of characters never reach a voice; other writing does."""
    assert strip_unspeakable(text) == said


@given(st.text(max_size=2000))
def test_text_is_always_fit_for_a_pipe(text: str) -> None:
    """Whatever is said encodes to UTF-8 on one line, with single spaces."""
    said = strip_unspeakable(text)
    said.encode("utf-8")
    assert said == " ".join(said.split())


@given(st.text(alphabet=st.sampled_from("ab .,;é\n"), max_size=3000))
def test_pieces_hold_the_whole_text_in_order(text: str) -> None:
    """Cutting a long text loses nothing and makes no piece too long or empty."""
    cut = cut_into_pieces(text)
    assert "".join(cut).replace(" ", "") == strip_unspeakable(text).replace(" ", "")
    assert all(0 < len(piece) <= LONGEST_PIECE for piece in cut)


def test_a_long_text_is_cut_where_one_draws_breath() -> None:
    """A sentence is not torn when it can be kept whole."""
    sentence = "Knit to the marker, slip it, and knit to the end of the round."
    assert all(piece.endswith("round.") for piece in cut_into_pieces(" ".join([sentence] * 20)))


def test_a_word_without_end_is_cut_all_the_same() -> None:
    """Text without a space is still said in bounded pieces."""
    assert [len(piece) for piece in cut_into_pieces("k" * 650)] == [300, 300, 50]


def test_a_slow_voice_is_asked_for_a_clause_at_a_time() -> None:
    """The first words of a line are ready while the rest is made."""
    line = "Join in the round. Round 2: knit two, purl two, twenty five times."
    assert cut_into_clauses(line) == ("Join in the round.", "Round 2:", "knit two, purl two, twenty five times.")
    long = ", ".join(["knit two together"] * 8)
    assert max(map(len, cut_into_clauses(long))) <= 60


@given(st.text())
def test_clauses_leave_nothing_out(text: str) -> None:
    """Joined, they hold the characters of what can be spoken, in their order."""
    assert "".join(cut_into_clauses(text)).replace(" ", "") == strip_unspeakable(text).replace(" ", "")
