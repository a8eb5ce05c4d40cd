from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from stepper.language.aloud import spell_out
from stepper.language.numbers import words
from tests.tables import each_row


@each_row(
    ("line", "said"),
    [
        ("Round 31 of 37.", "Round thirty one of thirty seven."),
        ("Change to 3.75 mm needles.", "Change to three point seven five millimetres needles."),
        ("Measure now: 32 cm to reach.", "Measure now: thirty two centimetres to reach."),
        ("1 cm, 1 in, 1 g", "one centimetre, one inch, one gram"),
        ("12.5 in", "twelve point five inches"),
        ("34.75 in across, 9 in by the rounds", "thirty four point seven five inches across, nine inches by the rounds"),
        ("42 g of pine", "forty two grams of pine"),
        ("246, as it should be.", "two hundred forty six, as it should be."),
        ("246: that is 2 more.", "two hundred forty six: that is two more."),
        ("12, 14 and 9.", "twelve, fourteen and nine."),
        ("2027-02-14, 2/2 RC, about 20000", "2027-02-14, 2/2 RC, about 20000"),
        ("k2tog, 3.75 mm, 10½", "knit two together, three point seven five millimetres, ten and a half"),
        ("Work 10½ in, then ¾ in.", "Work ten and a half inches, then three quarters of an inch."),
        ("10 1/2 in to reach, ⅛ in.", "ten and a half inches to reach, an eighth of an inch."),
        ("K2, p2, ssk, 12 sts, 3 rnds", "knit two, purl two, slip slip knit, twelve stitches, three rounds"),
        ("2 left in 4 in the yoke, 20 in all", "two left in four in the yoke, twenty in all"),
        (
            "12.5 in to reach, 30 rounds to 4 in.",
            "twelve point five inches to reach, thirty rounds to four inches.",
        ),
        ('16" or 2½" less', "sixteen inches or two and a half inches less"),
        ('Not understood: "stitch 7". Nearest: "stitch 5".', 'Not understood: "stitch seven". Nearest: "stitch five".'),
    ],
)
def test_figures_and_units_become_words(line: str, said: str) -> None:
    """So that every voice says a line alike; what is no number by itself is left alone."""
    assert spell_out(line) == said


@given(st.integers(0, 9999))
def test_every_count_is_said_in_words(n: int) -> None:
    """A count that a voice reads in its own way might be heard wrong."""
    assert spell_out(f"{n} stitches on the needles.") == f"{words(n)} stitches on the needles."


@given(st.text())
def test_a_line_said_in_words_stays_as_it_is(text: str) -> None:
    """Saying twice changes nothing, so nobody has to know whether a line was prepared already."""
    assert spell_out(spell_out(text)) == spell_out(text)
