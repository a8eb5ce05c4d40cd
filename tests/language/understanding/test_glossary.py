from __future__ import annotations

from stepper.language.understanding.glossary import asks_for_word, term_called, terms_in
from tests.tables import each_row


@each_row(
    ("said", "term"),
    [
        ("casting on", "cast on"),
        ("cast off", "bind off"),
        ("the ribbing", "rib"),
        ("join in a round", "join in the round"),
        ("stocking stitch", "stockinette stitch"),
        ("St st", "stockinette stitch"),
        ("a holder", "stitch holder"),
        ("dpns", "double pointed needles"),
        ("psso", "pass over"),
        ("tension", "gauge"),
        ("reversing shapings", "reverse the shaping"),
        ("the moon", None),
        ("knit", None),
    ],
)
def test_a_word_is_known_by_each_of_its_names(said: str, term: str | None) -> None:
    """Pages say cast off and bind off, stocking stitch and stockinette, and a beginner says neither exactly.

    The pairs are those of the British and the American craft; common practice.
    """
    assert term_called(said) == term


def test_the_words_of_a_sentence_are_found_in_their_order_and_the_longer_first() -> None:
    """ "Join in the round" is one word of the trade, and not the round of it."""
    assert terms_in("Being careful not to twist, join in the round. Place a marker, join in round.") == (
        "twist",
        "join in the round",
        "marker",
    )
    assert terms_in("Knit twelve.") == ()


def test_a_word_is_told_from_the_knitting_in_hand() -> None:
    """ "What is the round" asks where she is."""
    assert asks_for_word("What is a round?")
    assert asks_for_word("what does round mean")
    assert asks_for_word("how do I increase")
    assert not asks_for_word("what is the round")
    assert not asks_for_word("how do I work the neckband")
