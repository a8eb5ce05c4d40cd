"""Numbers said and understood, against num2words (a general library) and tables of what is said and heard."""

from __future__ import annotations

import math
from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from num2words import num2words

from stepper.language.numbers import (
    HOMOPHONES,
    LARGEST,
    decimal,
    digits_words,
    number,
    ordinal_words,
    spoken_decimal,
    words,
)
from tests.tables import each_row

EVERY = range(LARGEST + 1)


def bare(text: str) -> str:
    """Return the library's wording without "and", commas and hyphens, which differ by country and taste."""
    return " ".join(word for word in text.replace("-", " ").replace(",", " ").split() if word != "and")


def test_every_number_is_said_as_an_outside_library_says_it() -> None:
    """Every number from 0 to 9999 must have the words num2words gives it."""
    assert [bare(num2words(n)) for n in EVERY] == [words(n) for n in EVERY]


def test_every_ordinal_is_said_as_an_outside_library_says_it() -> None:
    """Every place from 0 to 9999 must have the words num2words gives it."""
    assert [bare(num2words(n, to="ordinal")) for n in EVERY] == [ordinal_words(n) for n in EVERY]


def test_words_are_understood_again() -> None:
    """Whatever the program says, it must understand as the same number."""
    assert list(EVERY) == [number(words(n)) for n in EVERY]


def test_digits_are_understood_again() -> None:
    """Whatever the program says digit by digit, it must understand as the same number."""
    assert list(EVERY) == [number(digits_words(n)) for n in EVERY]


def test_digits_say_the_numeral() -> None:
    """Digit by digit, the words must be those num2words gives each figure of the numeral."""
    assert [" ".join(num2words(int(f)) for f in str(n)) for n in EVERY] == [digits_words(n) for n in EVERY]


def test_a_librarys_own_wording_is_understood() -> None:
    """British and American wordings, with "and", commas and hyphens, must be understood as they stand."""
    for country in ("en", "en_GB"):
        assert list(EVERY) == [number(num2words(n, lang=country)) for n in EVERY]


def test_numerals_are_understood() -> None:
    """Numerals must be understood with and without a comma for the thousands, and with noughts in front."""
    for form in ("{}", "{:,}", "{:04}", "{}.", " {} "):
        assert list(EVERY) == [number(form.format(n)) for n in EVERY]


def test_three_figures_are_understood_as_digit_and_two_figures() -> None:
    """ "two forty six" is how three figures are said (common practice), words and numerals alike."""
    for n in range(100, 1000):
        if n % 100 >= 10:
            assert n == number(f"{words(n // 100)} {words(n % 100)}")
            assert n == number(f"{n // 100} {n % 100}")


@each_row(
    ("text", "expected"),
    [
        # common practice: British "and", American none, hyphens in print, "a" for one
        ("two hundred and forty-six", 246),
        ("Two hundred forty-six.", 246),
        ("a hundred", 100),
        ("a hundred and four", 104),
        ("hundred and four", 104),
        ("a thousand", 1000),
        ("a thousand and one", 1001),
        ("a thousand a hundred", 1100),
        ("one thousand, two hundred and six", 1206),
        ("one thousand and two hundred", 1200),
        ("twelve hundred", 1200),
        ("twelve hundred and six", 1206),
        ("twenty one hundred", 2100),
        ("ninety nine hundred ninety nine", 9999),
        # digit by digit
        ("two four six", 246),
        ("Two, four, six.", 246),
        ("one oh three", 103),
        ("one o three", 103),
        ("one nought three", 103),
        ("one zero two four", 1024),
        ("oh four six", 46),
        ("zero zero zero seven", 7),
        # digit and two figures
        ("two forty six", 246),
        ("one twelve", 112),
        ("two ten", 210),
        # misheard digits
        ("to", 2),
        ("too", 2),
        ("for", 4),
        ("fore", 4),
        ("won", 1),
        ("tree", 3),
        ("ate", 8),
        ("oh", 0),
        ("nought", 0),
        ("too for six", 246),
        ("to hundred and forty ate", 248),
        ("for hundred", 400),
        ("won hundred", 100),
        ("tree forty for", 344),
        # words and numerals mixed, as recognisers write them
        ("2 hundred 46", 246),
        ("2 hundred and 46", 246),
        ("two hundred 46", 246),
        ("1 thousand 24", 1024),
        ("2 4 6", 246),
        ("2 05", 205),
        ("200 46", 246),
        ("200 and 46", 246),
        ("240 6", 246),
        ("1,000 and 6", 1006),
        ("20 4", 24),
    ],
)
def test_what_is_said_is_understood(text: str, expected: int) -> None:
    """Each wording in use, and each mishearing known, must give its number, whole or word by word."""
    assert expected == number(text)
    assert expected == number(text.split())


@each_row(
    "text",
    [
        "",
        "   ",
        "and",
        "a",
        "point",
        "hundred hundred",
        "two hundred hundred",
        "two hundred three hundred",
        "thousand thousand",
        "hundred thousand",
        "two thousand hundred",
        "two hundred thousand",
        "ten thousand",
        "twelve thousand",
        "one thousand twelve hundred",
        "twenty hundred",
        "ten hundred",
        "zero hundred",
        "two hundred zero",
        "two hundred oh six",
        "two hundred and",
        "two hundred and and six",
        "and six",
        "forty and six",
        "two hundred and forty and six",
        "a six",
        "to hundred for tea",
        "six a",
        "twenty twelve",
        "twelve forty",
        "forty forty",
        "twenty ten",
        "ten four",
        "forty zero",
        "six forty seven eight",
        "two four six eight one",
        "zero zero zero zero one",
        "oh forty six",
        "two hundred forty six stitches",
        "count two",
        "knit",
        "10000",
        "12,34",
        "1,0245",
        "-5",
        "+5",
        "5-6",
        "2.5",
        "1/2",
        "1e3",
        "٣",
        "²",
        "½",
        "246 5",
        "2 246",
        "200 300",
    ],
)
def test_nonsense_is_refused(text: str) -> None:
    """What is not exactly one number must give none, for a wrong count costs more than a question."""
    assert number(text) is None


def test_no_wording_stands_for_two_numbers() -> None:
    """No wording the program says or teaches may belong to two numbers."""
    meanings: dict[str, int] = {}
    for n in EVERY:
        wordings = {words(n), digits_words(n), num2words(n).replace(",", "").replace("-", " ")}
        if 100 <= n < 1000 and n % 100 >= 10:
            wordings.add(f"{words(n // 100)} {words(n % 100)}")
        for wording in wordings:
            assert n == meanings.setdefault(wording, n), wording


UNITS = [num2words(n) for n in range(20)]
WHOLE = [*UNITS, *(num2words(n) for n in range(20, 100, 10)), "hundred", "thousand", "and", "a", "oh"]
BROKEN = ["point", "half", "halves", "third", "thirds", "quarter", "quarters", "fourth", "fourths", "eighth", "eighths"]
HEARD = [*WHOLE, *BROKEN, *HOMOPHONES, "246", "46", "05", "1,024", "1/2"]


@given(st.lists(st.sampled_from(HEARD)))
def test_any_row_of_words_gives_a_number_in_range_or_none(said: list[str]) -> None:
    """Whatever row of number words is heard, the answer must be none or within range, and both must agree."""
    whole, exact = number(said), decimal(said)

    assert whole is None or 0 <= whole <= LARGEST
    assert exact is None or 0 <= exact < LARGEST + 1
    assert whole is None or exact == whole


@given(st.text())
def test_any_text_gives_a_number_in_range_or_none(text: str) -> None:
    """Whatever is typed, the answer must be none or within range, never an exception."""
    whole, exact = number(text), decimal(text)

    assert whole is None or 0 <= whole <= LARGEST
    assert exact is None or 0 <= exact < LARGEST + 1


def test_a_number_is_said_in_the_few_words_that_numbers_are_heard_in() -> None:
    """Whoever says a number as she heard it is understood: no word of a spoken number is unknown to the ear."""
    said = {word for n in EVERY for word in (words(n) + " " + digits_words(n)).split()}

    assert said <= set(WHOLE)
    assert all(number(word) is not None for word in said - {"hundred", "thousand"})


@pytest.mark.parametrize("n", [-1, 10000])
def test_numbers_out_of_range_are_refused(n: int) -> None:
    """A number the program cannot say must be an error, not a wrong sentence."""
    for say in (words, digits_words, ordinal_words):
        with pytest.raises(ValueError, match="from 0 to 9999"):
            say(n)


@each_row(
    ("text", "expected"),
    [
        ("thirty", "30"),
        ("thirty point five", "30.5"),
        ("thirty point oh five", "30.05"),
        ("three point seven five", "3.75"),
        ("three point seventy five", "3.75"),
        ("point five", "0.5"),
        ("zero point five", "0.5"),
        ("two hundred and four point two", "204.2"),
        ("to point for", "2.4"),
        ("30 point 5", "30.5"),
        ("30 point 05", "30.05"),
        ("32.5", "32.5"),
        ("32.5.", "32.5"),
        ("32.", "32"),
        (".5", "0.5"),
        ("1,024.25", "1024.25"),
        ("ten and a half", "21/2"),
        ("ten and half", "21/2"),
        ("ten and one half", "21/2"),
        ("a half", "1/2"),
        ("half", "1/2"),
        ("three quarters", "3/4"),
        ("a quarter", "1/4"),
        ("an eighth", "1/8"),
        ("to and a half", "5/2"),
        ("five and three eighths", "43/8"),
        ("two and two thirds", "8/3"),
        ("two hundred and ten and a half", "421/2"),
        ("10 and a half", "21/2"),
        ("10 1/2", "21/2"),
        ("10-1/2", "21/2"),
        ("10 and 1/2", "21/2"),
        ("1/2", "1/2"),
        ("3/2", "3/2"),
        ("10½", "21/2"),
        ("10 ½", "21/2"),
        ("¾", "3/4"),
        ("7⅜", "59/8"),
    ],
)
def test_measurements_are_understood(text: str, expected: str) -> None:
    """Each way a measurement is said or printed must give the exact number."""
    assert Fraction(expected) == decimal(text)


@each_row(
    "text",
    [
        "",
        "point",
        "thirty point",
        "thirty point five point two",
        "thirty point one hundred",
        "thirty point and",
        "point one two three four five six seven",
        "ten a half",
        "and a half",
        "and 1/2",
        "ten and",
        "ten and three halves",
        "10 3/2",
        "1/0",
        "0/2",
        "10½½",
        "½ 10",
        "32,5",
        "3.2.1",
        "-2.5",
        "1e3",
        "12345.5",
        "half half",
        "twenty twelve and a half",
        "ten centimetres",
    ],
)
def test_nonsense_measurements_are_refused(text: str) -> None:
    """What is not exactly one measurement must give none."""
    assert decimal(text) is None


def test_decimals_are_said_as_an_outside_library_says_them() -> None:
    """Decimals with up to two figures must have the words num2words gives them."""
    for hundredths in range(0, 100_000, 7):
        value = Decimal(hundredths) / 100
        plain = value.normalize()
        assert bare(num2words(plain if plain % 1 else int(plain))) == spoken_decimal(value)


@given(st.integers(0, 999_900))
def test_decimals_are_understood_again(hundredths: int) -> None:
    """Whatever decimal the program says, it must understand as the same number."""
    value = Fraction(hundredths, 100)

    assert value == decimal(spoken_decimal(value))


@each_row(
    ("value", "expected"),
    [
        (Fraction(15, 4), "three point seven five"),
        (Fraction(21, 2), "ten point five"),
        (Fraction(43, 4), "ten point seven five"),
        (Fraction(10), "ten"),
        (Fraction(1, 3), "zero point three three"),
        (Fraction(2, 3), "zero point six seven"),
        (Decimal("30.50"), "thirty point five"),
        (Decimal("30.05"), "thirty point zero five"),
        (Decimal("0.125"), "zero point one three"),
        (Decimal("1.999"), "two"),
        (30.5, "thirty point five"),
        (-5.5, "minus five point five"),
        (Decimal("-0.001"), "zero"),
    ],
)
def test_decimals_are_said_rounded_and_without_noughts(
    value: float | Decimal | Fraction, expected: str
) -> None:
    """A decimal must be said short: rounded half away from zero, no noughts at the end."""
    assert expected == spoken_decimal(value)


@pytest.mark.parametrize(
    "value", [math.nan, math.inf, Decimal("NaN"), Decimal("Infinity"), 10_000, -10_000, 9999.999]
)
def test_decimals_that_cannot_be_said_are_refused(value: float | Decimal) -> None:
    """A value out of range or no number at all must be an error, not a wrong sentence."""
    with pytest.raises(ValueError, match=r".+"):
        spoken_decimal(value)
