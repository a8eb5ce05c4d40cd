"""Say whole numbers and decimals in English, and understand them as said, typed or half misheard.

No I/O. Range: whole numbers 0 to 9999, more than the stitches in a round of any garment.

Four readings, which never compete for the same words:

1. **cardinal**: "two hundred forty six", "a hundred and four", "twelve hundred", "2 hundred 46";
2. **digit by digit**: "two four six", "one oh three", at most four digits, leading zeros allowed;
3. **digit and two figures**: "two forty six" for 246, the everyday way of saying three figures;
4. **numerals**: "246", "1,024".

Two two-figure numbers in a row ("twenty twelve", "twelve forty") are **not** read as 2012 or 1240. In
knitting they are more often a count corrected in mid-sentence than a count above a thousand; being asked
again costs a second, a wrong count a hunt for a fault that does not exist. The same number can be said as
"two thousand twelve", "twelve hundred forty" or digit by digit.

A recogniser may hear a digit as "to", "for" or "won". These count as digits here, because the caller of
`number` has already matched the words around it that make a number the only sensible thing ("count is …").

Source: cardinals, ordinals and "and" before the last two figures follow common practice in American and
British English; the tests compare every number with an independent library.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable, Mapping, Sequence
from decimal import Decimal
from fractions import Fraction
from types import MappingProxyType
from typing import Final

LARGEST: Final = 9999
"""Largest whole number said or understood."""

_TO_NINETEEN: Final = (
    "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve",
    "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
)  # fmt: skip
_TENS: Final = ("zero", "ten", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")

HOMOPHONES: Final[Mapping[str, int]] = MappingProxyType(
    {
        "oh": 0, "o": 0, "nought": 0, "naught": 0,
        "won": 1,
        "to": 2, "too": 2,
        "tree": 3,
        "for": 4, "fore": 4,
        "ate": 8,
    }
)  # fmt: skip
"""Other names and mishearings of a digit, with the digit. Range: 0 to 9."""

_FRACTIONS: Final[Mapping[str, int]] = MappingProxyType(
    {
        "half": 2, "halves": 2,
        "third": 3, "thirds": 3,
        "quarter": 4, "quarters": 4, "fourth": 4, "fourths": 4,
        "eighth": 8, "eighths": 8,
    }
)  # fmt: skip

_VALUES: Final[Mapping[str, int]] = MappingProxyType(
    {word: value for value, word in enumerate(_TO_NINETEEN)}
    | {word: 10 * value for value, word in enumerate(_TENS) if value > 1}
    | dict(HOMOPHONES)
)
_SCALES: Final = ("hundred", "thousand", "and", "a")
_IRREGULAR_ORDINALS: Final[Mapping[str, str]] = MappingProxyType(
    {
        "one": "first", "two": "second", "three": "third", "five": "fifth", "eight": "eighth",
        "nine": "ninth", "twelve": "twelfth",
    }
)  # fmt: skip

_Token = int | str
"""A number from 0 to 99, or one of `_SCALES`."""


# Saying


def words(n: int) -> str:
    """Say a whole number, as in "two hundred forty six".

    Without "and" and hyphens, so that a voice, a screen and a word list share one spelling.

    Args:
        n: The number. Range: 0 to 9999.

    Returns:
        Lower-case words. Always: number(words(n)) == n.

    Raises:
        ValueError: `n` is out of range.
    """
    if not 0 <= n <= LARGEST:
        raise ValueError(f"n must be from 0 to {LARGEST} (got {n!r})")
    if n == 0:
        return _TO_NINETEEN[0]
    thousands, below_thousand = divmod(n, 1000)
    hundreds, below_hundred = divmod(below_thousand, 100)
    parts = []
    if thousands:
        parts += [_TO_NINETEEN[thousands], "thousand"]
    if hundreds:
        parts += [_TO_NINETEEN[hundreds], "hundred"]
    if below_hundred >= 20:
        tens, below_hundred = divmod(below_hundred, 10)
        parts.append(_TENS[tens])
    if below_hundred:
        parts.append(_TO_NINETEEN[below_hundred])
    return " ".join(parts)


def digits_words(n: int) -> str:
    """Say a whole number digit by digit, as in "two four six"; 0 is "zero", which is hard to mishear.

    Args:
        n: The number. Range: 0 to 9999.

    Returns:
        Lower-case words, one for each digit. Always: number(digits_words(n)) == n.

    Raises:
        ValueError: `n` is out of range.
    """
    if not 0 <= n <= LARGEST:
        raise ValueError(f"n must be from 0 to {LARGEST} (got {n!r})")
    return " ".join(_TO_NINETEEN[int(digit)] for digit in str(n))


def ordinal_words(n: int) -> str:
    """Say a place in an order, as in "eleventh" or "two hundred forty sixth".

    Args:
        n: The number. Range: 0 to 9999.

    Raises:
        ValueError: `n` is out of range.
    """
    head, _, last = words(n).rpartition(" ")
    if last in _IRREGULAR_ORDINALS:
        last = _IRREGULAR_ORDINALS[last]
    elif last.endswith("y"):
        last = last[:-1] + "ieth"
    else:
        last += "th"
    return f"{head} {last}".lstrip()


def spoken_decimal(value: float | Decimal | Fraction) -> str:
    """Say a number that need not be whole, as in "three point seven five".

    Args:
        value: The number. Range: -9999 to 9999 after rounding to two decimals.

    Returns:
        Lower-case words, beginning with "minus" if below zero, without zeros at the end. Halves are rounded
        away from zero. Always: decimal(spoken_decimal(value)) == value for 0 to 9999 with no more than two
        decimals.

    Raises:
        ValueError: `value` is out of range or not a number.
    """
    try:
        size = abs(Fraction(value))
    except OverflowError as error:  # what Fraction raises for infinity; for NaN it is ValueError
        raise ValueError(f"value must be a finite number (got {value!r})") from error
    whole, hundredths = divmod(int(size * 100 + Fraction(1, 2)), 100)
    text = words(whole)
    if hundredths:
        figures = f"{hundredths:02}".rstrip("0")
        text += " point " + " ".join(_TO_NINETEEN[int(figure)] for figure in figures)
    return f"minus {text}" if value < 0 and text != words(0) else text


# Understanding


def number(text: str | Iterable[str]) -> int | None:
    """Understand a text that as a whole is one whole number.

    Args:
        text: What was said or typed, as one text or word by word.

    Returns:
        The number, from 0 to 9999, or None if the text is not exactly one such number.
    """
    tokens = _tokens(_split(text))
    if not tokens:
        return None
    if all(isinstance(token, int) and token < 10 for token in tokens):
        figures = "".join(map(str, tokens))
        return int(figures) if len(figures) <= 4 else None
    first = tokens[0]
    if isinstance(first, int) and 1 <= first <= 9 and len(tokens) > 1:
        two_figures = _below_hundred(tokens[1:])
        if two_figures is not None:
            return first * 100 + two_figures
    return _cardinal(tokens)


def decimal(text: str | Iterable[str]) -> Fraction | None:
    """Understand a number that need not be whole: a measurement, a weight.

    It understands all that `number` does, and "thirty point five", "point seven five", "32.5", "ten and a
    half", "three quarters", "10 1/2", "10½". Halves, thirds, quarters and eighths, since inches go by
    eighths.

    Args:
        text: What was said or typed, as one text or word by word.

    Returns:
        The exact number, from 0 to below 10000, or None if the text is not exactly one such number.
    """
    split = _split(text)
    whole = number(split)
    if whole is not None:
        return Fraction(whole)
    if len(split) == 1 and re.fullmatch(r"([0-9]{0,4}|[0-9],[0-9]{3})\.[0-9]{1,6}", split[0]):
        return Fraction("0" + split[0].replace(",", ""))
    if "point" in split:
        return _pointed(split)
    return _fractional(split)


def _split(text: str | Iterable[str]) -> list[str]:
    """Return bare lower-case words without a recogniser's punctuation ("246.", "two,")."""
    whole = (text if isinstance(text, str) else " ".join(text)).lower()
    whole = re.sub("[½⅓⅔¼¾⅛⅜⅝⅞]", lambda found: " " + unicodedata.normalize("NFKC", found[0]), whole)
    whole = whole.replace("\N{FRACTION SLASH}", "/")
    whole = re.sub(r"(?<=[0-9])-(?=[0-9]+/[0-9])", " ", whole)  # 10-1/2, as inches are printed
    # Between letters only: "5-6" is a range, and "-5" is not a count at all.
    whole = re.sub(r"(?<=[a-z])-(?=[a-z])", " ", whole)
    return [word.rstrip(".,;:!?") for word in whole.split()]


def _tokens(split: Sequence[str]) -> list[_Token] | None:
    """Return the words as numbers below 100 and scale words; None if a word is neither."""
    tokens: list[_Token] = []
    for word in split:
        if word in _VALUES:
            tokens.append(_VALUES[word])
        elif word in _SCALES:
            tokens.append(word)
        elif re.fullmatch(r"[0-9]{1,4}|[0-9],[0-9]{3}", word):
            tokens += _numeral_tokens(word.replace(",", ""))
        else:
            return None
    return tokens


def _numeral_tokens(numeral: str) -> list[_Token]:
    """Return a numeral as if it had been said, so that "200 and 46" needs no rules of its own."""
    if numeral.startswith("0"):
        return [int(figure) for figure in numeral]
    thousands, below_thousand = divmod(int(numeral), 1000)
    hundreds, below_hundred = divmod(below_thousand, 100)
    tokens: list[_Token] = []
    if thousands:
        tokens += [thousands, "thousand"]
    if hundreds:
        tokens += [hundreds, "hundred"]
    if below_hundred:
        tokens.append(below_hundred)
    return tokens


def _below_hundred(tokens: Sequence[_Token]) -> int | None:
    """Return 1 to 99 for a single number, or for tens and a unit; otherwise None."""
    match tokens:
        case [int(value)] if value > 0:
            return value
        case [int(tens), int(unit)] if tens >= 20 and tens % 10 == 0 and 1 <= unit <= 9:
            return tens + unit
    return None


def _cardinal(tokens: Sequence[_Token]) -> int | None:
    """Return the number said with thousands and hundreds; otherwise None."""
    total, rest, scaled = 0, list(tokens), False
    if "thousand" in rest:
        at = rest.index("thousand")
        thousands = _multiplier(rest[:at])
        if thousands is None or thousands > 9:
            return None
        total, rest, scaled = 1000 * thousands, rest[at + 1 :], True
    if "hundred" in rest:
        at = rest.index("hundred")
        head = rest[1:at] if scaled and rest[0] == "and" else rest[:at]
        # "one thousand twelve hundred" and "two thousand hundred" are slips, "a thousand a hundred" is not.
        hundreds = None if scaled and not head else _multiplier(head)
        if hundreds is None or (scaled and hundreds > 9):
            return None
        total, rest, scaled = total + 100 * hundreds, rest[at + 1 :], True
    if scaled and not rest:
        return total
    if scaled and rest[0] == "and":
        rest = rest[1:]
    below = _below_hundred(rest)
    return None if below is None else total + below


def _multiplier(tokens: Sequence[_Token]) -> int | None:
    """Return the number before "hundred" or "thousand": 1 for nothing or "a"; "twenty hundred" is a slip."""
    if not tokens or list(tokens) == ["a"]:
        return 1
    value = _below_hundred(tokens)
    return None if value is None or value % 10 == 0 else value


def _pointed(split: Sequence[str]) -> Fraction | None:
    """Return the number with the word "point" in it; otherwise None."""
    at = split.index("point")
    whole = number(split[:at]) if at else 0
    figures = _figures(split[at + 1 :])
    if whole is None or figures is None:
        return None
    return whole + Fraction(int(figures), 10 ** len(figures))


def _figures(split: Sequence[str]) -> str | None:
    """Return the decimals after a point: one by one, as a numeral, or two at once ("point seventy five")."""
    if len(split) == 1 and re.fullmatch("[0-9]{1,6}", split[0]):
        return split[0]
    tokens = _tokens(split)
    if not tokens or len(tokens) > 6:
        return None
    if all(isinstance(token, int) and token < 10 for token in tokens):
        return "".join(map(str, tokens))
    two_figures = _below_hundred(tokens)
    return None if two_figures is None else str(two_figures)


def _fractional(split: Sequence[str]) -> Fraction | None:
    """Return the number that ends in a fraction; otherwise None."""
    if not split:
        return None
    *before, last = split
    if found := re.fullmatch("([1-9][0-9]{0,3})/([1-9][0-9]{0,2})", last):
        part = Fraction(int(found[1]), int(found[2]))
        if before and before[-1] == "and":
            before.pop()
            if not before:
                return None
    elif last in _FRACTIONS:
        counted = before.pop() if before and before[-1] != "and" else "a"
        count = 1 if counted in ("a", "an") else number([counted])
        if count is None or (before and before.pop() != "and"):
            return None
        if not before and "and" in split:
            return None
        part = Fraction(count, _FRACTIONS[last])
    else:
        return None
    if not before:
        return part
    whole = number(before)
    return None if whole is None or not 0 < part < 1 else whole + part
