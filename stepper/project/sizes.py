"""Read and find the names of the sizes, in the order of every list of the pattern. No I/O."""

from __future__ import annotations

import re
from difflib import get_close_matches

from stepper.regex import regex


def read_sizes(text: str) -> tuple[str, ...]:
    """Read the size line: `1 (2, 3, 4)`, `S (M, L)` or a single name.

    Returns:
        The names in order; empty if the text holds none.
    """
    parts = re.split(r"[(\[\]){},;]+", text)
    return tuple(" ".join(part.split()) for part in parts if part.strip())


def find_size(name: str, sizes: tuple[str, ...]) -> int | None:
    """Return the index of a size by its name, whatever the case, from 0; None if there is none."""
    wanted = " ".join(name.split()).lower()
    for place, size in enumerate(sizes):
        if size.lower() == wanted:
            return place
    return None


# Sizes printed as letters and said as words.
_WORDS = {
    "extra small": "xs",
    "x-small": "xs",
    "small": "s",
    "medium": "m",
    "large": "l",
    "extra large": "xl",
    "x-large": "xl",
}
_RANGE = regex(r"\s*(?:[-\u2013]|\bto\b|\bthrough\b)\s*", re.I)
_NTHS = ("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth")

_MANY = {"two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "2": 2, "3": 3, "4": 4, "5": 5, "6": 6}
_HOW_MANY = r"two|three|four|five|six|[2-6]"
_LOW = r"small(?:er|est)|first"
_HIGH = r"(?:larg|bigg)(?:er|est)|last"
_SOME = regex(
    rf"(?:the\s+)?(?:({_HOW_MANY})\s+(?:({_LOW})|{_HIGH})|(?:({_LOW})|{_HIGH})\s+({_HOW_MANY}))",
    re.I,
)
"""Several sizes at one end of the list."""
_FROM_ONE_ON = regex(
    r"(?P<one>\S+(?:\s+small|\s+large)?)\s+(?:and|&)\s+(?:(?P<up>up(?:wards?)?|above|over|all\s+larger|larger|bigger)|below|down|under|all\s+smaller|smaller)",
    re.I,
)
"""All sizes from one of them on: "L and up"."""
_RELATIVE = regex(r"(?:the\s+)?(?:small|larg|bigg)(?:er|est)\s+sizes?\s*\(([^()]+)\)", re.I)
"""Sizes that are named in brackets behind what they are: "smaller sizes (S and M)"."""
_THE = regex(r"^\s*the\s+", re.I)
_FOR = regex(r"^\s*(?:for\s+)?(?:the\s+|an?\s+)?", re.I)


_PEOPLE = {
    "man": r"m[ae]n(?:'?s)?|gents?|gentlem[ae]n",
    "woman": r"wom[ae]n(?:'?s)?|lad(?:y|ies)(?:'?s)?",
    "child": r"child(?:ren)?(?:'?s)?|kid(?:'?s)?|little\s+ones?",
    "adult": r"adult(?:'?s)?|grown[-\s]?up(?:'?s)?",
    "baby": r"bab(?:y|ies)(?:'?s)?",
    "toddler": r"toddler(?:'?s)?",
    "newborn": r"new[-\s]?born(?:s)?",
    "boy": r"boy(?:'?s)?",
    "girl": r"girl(?:'?s)?",
    "teen": r"teen(?:'?s)?|teenager(?:'?s)?",
}
"""For whom a size is, in the words of pages: "men", "for him" is none of them."""


def _who(name: str) -> str:
    """Return for whom a size is, in one word; the name itself, in small letters, if it names nobody."""
    plain = " ".join(name.split()).lower()
    return next((who for who, words in _PEOPLE.items() if re.fullmatch(words, plain)), plain)


_AGE = regex(
    r"(?P<number>\d{1,2}(?:\s*[-/\u2013]\s*\d{1,2})?)[-\s]*(?P<unit>y|m)(?:ears?|rs?|onths?|ths?|os?)?\.?",
    re.I,
)


def _aged(name: str) -> tuple[str, str] | None:
    """Return the number and unit, `y` or `m`, of a size told by age: "2-year", "6 mths"; None for others."""
    found = _AGE.fullmatch(name.strip())
    return (re.sub(r"\s", "", found["number"]), found["unit"].lower()) if found is not None else None


def names_people(name: str) -> bool:
    """Return whether a name is of people for whom a garment is made: "Women", "Grown-ups and children"."""
    parts = [part for part in re.split(r"\s*(?:,|&|\band\b)\s*", _FOR.sub("", name)) if part]
    return bool(parts) and all(_who(part) in _PEOPLE for part in parts)


_WHOSE = regex(
    r"^(?:for\s+)?(?:an?\s+|the\s+)?(?:m[ae]n|gent(?:leman|lemen)?|wom[ae]n|lad(?:y|ie)|child(?:ren)?|kid|adult|bab(?:y|ie)|toddler|boy|girl|teen(?:ager)?)"
    r"(?:'s|s')\s+(?=[a-z])",
    re.I,
)


def names_whose(name: str) -> bool:
    """Return whether a name says for whom of several it is: "Girl's buttonhole row", "Men's cuff"."""
    return _WHOSE.match(name) is not None


_OFFERED = regex(
    r"^[\s\u2022*-]*(?:(?:tip|note)\s*:\s*)?for\s+(?:an?\s+)?(?P<who>[a-z]+)(?:'s)?(?:\s+(?:size|version|hat|sock|mitten|mitt|sweater|scarf|cowl|fit))?\s*[:,]?\s+"
    r"(?:just\s+|simply\s+)?(?:cast\s+on|co)\s+(?!.*[.,;]\s*(?:and\s+|or\s+|but\s+)?for\b)\S",
    re.I,
)


def is_other_make(plain: str, sizes: tuple[str, ...]) -> bool:
    """Return whether a line tells how the piece is begun for people whom none of the sizes is made for.

    "For a child: cast on 96 sts and work three bands." is another piece than the one that the page tells.

    Args:
        plain: The line, made plain.
        sizes: The sizes of the pattern.
    """
    found = _OFFERED.match(plain)
    return found is not None and names_people(found["who"]) and not any(map(names_people, sizes))


def size_called(name: str, sizes: tuple[str, ...]) -> int | None:
    """Return the index of a size, from 0, by its name or number ("2nd size", "size 2"), if there is one.

    A bare number is a place in the list where no size is called by one.
    """
    found = find_size(name, sizes)
    wanted = " ".join(name.split()).lower()
    if found is None:
        people = [_who(size) for size in sizes]
        found = people.index(_who(wanted)) if people.count(_who(wanted)) == 1 else None
    if found is None and wanted in _WORDS:
        found = find_size(_WORDS[wanted], sizes)
    if found is None and (aged := _aged(wanted)) is not None:
        ages = [_aged(size.lower()) or (size, "") for size in sizes]
        alike = [at for at, (number, unit) in enumerate(ages) if number == aged[0] and unit in ("", aged[1])]
        found = alike[0] if len(alike) == 1 else None
    nth = re.fullmatch(r"(\d{1,2})(st|nd|rd|th)?", wanted)
    bare = nth is not None and nth.group(2) is None
    if found is None and nth is not None and not (bare and any(re.search(r"\d", size) for size in sizes)):
        found = int(nth.group(1)) - 1
    if found is None and wanted in _NTHS:
        found = _NTHS.index(wanted)
    ends = {"smallest": 0, "largest": -1} | ({"smaller": 0, "larger": -1} if len(sizes) == 2 else {})
    if found is None and wanted in ends:
        found = ends[wanted] % len(sizes)
    return found if found is not None and 0 <= found < len(sizes) else None


def sizes_called(words: str, sizes: tuple[str, ...]) -> tuple[tuple[int, ...], str]:
    """Read which sizes a line is for: `S, M and L`, `1, 2 and 3`, `M-XL`, `2nd and 3rd`.

    Returns:
        Their indices, from 0, and the first name that no size has; empty if all are found.
    """
    found: list[int] = []
    named = _RELATIVE.fullmatch(words.strip())
    words = named.group(1) if named is not None else words
    some = _SOME.fullmatch(words.strip())
    if some is not None:
        many = _MANY.get((some.group(1) or some.group(4)).lower(), 0)
        low = bool(some.group(2) or some.group(3))
        if not 0 < many <= len(sizes):
            return (), words.strip()
        return tuple(range(many)) if low else tuple(range(len(sizes) - many, len(sizes))), ""
    from_one = _FROM_ONE_ON.fullmatch(words.strip())
    named_end = size_called(from_one["one"], sizes) if from_one is not None else None
    if from_one is not None and named_end is not None:
        return tuple(range(named_end, len(sizes)) if from_one["up"] else range(named_end + 1)), ""
    words = words if any("/" in size for size in sizes) else words.replace("/", ",")
    for name in re.split(r"\s*(?:[,&()\[\]{}]|\band\b|\bor\b)\s*", _THE.sub("", words)):
        if not name.strip(" -\u2013"):
            continue  # a dash in a list of sizes: not worked in that size
        one = size_called(name, sizes)
        ends = [size_called(end, sizes) for end in _RANGE.split(name)]
        first, last = ends if len(ends) == 2 else (None, None)
        if one is not None:
            found.append(one)
        elif first is not None and last is not None and first < last:
            found.extend(range(first, last + 1))
        else:
            return (), name.strip()
    return tuple(dict.fromkeys(found)), ""


_CALLED = (
    r"(?:(?:extra[-\s])?(?:small|medium|large)|(?:x{1,4}|\d?x)?[sl]|m|child(?:ren)?|adults?|babies|baby|teens?"
    r"|newborn|men|women|toddlers?)"
)
_SOME_CALLED = rf"{_CALLED}(?:\s*(?:,|&|/|,?\s+and\b)\s*{_CALLED}){{0,4}}"
"""Sizes by their names alone: "Small and Large"."""
_VERB = r"(?-i:(?=(?:now\s+)?(?:work|knit|purl|rep|repeat|cont|continue|cast|bind|dec|inc)\b))"
_IN_PROSE = regex(
    r"^\s*(?:for\s+)?(?:the\s+)?(?:sizes?\s+([^:.]{1,40}?)|([^:.,]{1,40}?)\s+sizes?)\s+only\s*[,-]\s*(?=\S)"
    r"|^\s*only\s+for\s+(?:the\s+)?(?:sizes?\s+([^:.]{1,40}?)|([^:.,]{1,40}?)\s+sizes?)\s*[,:]\s*(?-i:(?=[A-Za-z(*][a-z\d]))"
    r"|^\s*(?:for|in)\s+(?!all\b|the\s+(?:other|rem\w*)\b)(?:the\s+)?(?:sizes?\s+([^:.,]{1,40}?(?:,[^:.,]{1,12}?){0,3})|([^:.,]{1,30}?)\s+sizes?)\s*,\s*(?-i:(?=[a-z(*][a-z]))"
    r"|^\s*if\s+(?:you(?:\s+are|'re)\s+)?(?:making|knitting|working)\s+(?:the\s+)?(?:sizes?\s+([^:.]{1,40}?)|([^:.,]{1,40}?)\s+sizes?)"
    r"\s*[,:]\s*(?-i:(?=[a-z(*]))"
    rf"|^\s*(?:for|in)\s+(?:the\s+)?({_SOME_CALLED})(?:\s+only)?\s*,\s*{_VERB}"
    rf"|^\s*(?:for|in)\s+(?:the\s+)?sizes?\s+({_SOME_CALLED})(?:\s+only)?\s*,?\s+{_VERB}",
    re.I,
)
_ABBREVIATED = "".join(
    rf"(?<!\b{word})"
    for word in ("inc", "dec", "rep", "beg", "sts", "st", "tog", "alt", "rem", "rnd", "foll", "cont", "patt")
)
"""No short form stands before: its full stop ends no sentence."""
_MORE = regex(
    rf"(?:{_ABBREVIATED}\.|\.(?-i:(?=\s+[A-Z(\[*\d]))|!)\s+"
    r"(?![(=]?\s*\d+\s+(?:sts|stitches)\b[^.]*\W*$)\S"
)
"""A further sentence, if it does not only count what the one before it leaves."""
HEAD_OF_SIZES = regex(
    r"^\s*(?:for\s+)?(?:the\s+)?"
    r"(?!(?:all|every|each|both|any|[a-z\s]*\bneedles?|shoe|foot|head|hook|finished)\b)"
    r"([^:.]{1,40}?)\s+sizes?\s*:\s*(?=\S)",
    re.I,
)
"""The head of a line for sizes that are named before the word: "Child and adult sizes: knit 2 rounds."."""
_FOR_SOME = regex(r"^\s*(?:(?:only\s+)?for\s+|only\s+)?sizes?\b[^:]*:|^[^:.]*\bonly\s*:", re.I)
PEOPLE_HEAD = regex(r"^\s*(?:for\s+)?(?:the\s+|an?\s+)?([a-z][a-z ,'&-]{1,40}?)\s*:\s*(?=\S)", re.I)
"""A label that may be the names of sizes, where these are of people: "Men: knit 2 rounds."."""


def is_for_some(text: str) -> bool:
    """Return whether a line begins with the sizes it is for, whether the file has them or not.

    Such a line stays whole: where it does not read so, nobody can tell how far "Men only:" reaches.
    """
    if _FOR_SOME.match(text) or HEAD_OF_SIZES.match(text):
        return True
    people = PEOPLE_HEAD.match(text)
    return people is not None and names_people(people.group(1))


def begun_by_size(name: str, size_names: tuple[str, ...]) -> str:
    """Return the size that a longer name begins with: "Adult Large starts here"; empty for none."""
    if len(size_names) < 2:
        return ""
    spelt = (size for size in size_names if re.fullmatch(r"[a-z][a-z -]{2,}", size, re.I))
    return next((size for size in spelt if re.match(rf"{re.escape(size)}\s", name, re.I)), "")


def sizes_in_prose(plain: str) -> re.Match[str] | None:
    """Find the sizes that a sentence is for, before a comma: `For size S only, knit 2 rounds.`

    Returns:
        The match, whose only group holds their names; None if there are none, or if another sentence follows,
        which may be for all sizes.
    """
    match = _IN_PROSE.match(plain)
    return match if match is not None and not more_behind(plain, match.end()) else None


def more_behind(plain: str, at: int) -> bool:
    """Return whether another sentence follows behind an offset, which may be for all sizes."""
    return _MORE.search(plain, at) is not None


def nearest_size(name: str, sizes: tuple[str, ...]) -> str:
    """Return the size of the file nearest to a name it does not have: by number, by letter or by spelling.

    Returns:
        A sentence with the nearest and all sizes, or all sizes if none is near; empty without sizes.
    """
    wanted = " ".join(name.split()).lower()
    wanted = _WORDS.get(wanted, wanted)
    near = ""
    numbers = {float(size): size for size in sizes if re.fullmatch(r"\d+(?:\.\d+)?", size)}
    if numbers and re.fullmatch(r"\d+(?:\.\d+)?", wanted):
        near = numbers[min(numbers, key=lambda number: abs(number - float(wanted)))]
    else:
        lowered = {size.lower(): size for size in sizes}
        close = [wanted] if wanted in lowered else get_close_matches(wanted, lowered, n=1, cutoff=0.5)
        near = lowered[close[0]] if close else ""
    if not sizes:
        return ""
    listed = ", ".join(sizes)
    return f"The nearest is {near}; the sizes are {listed}." if near else f"The sizes are {listed}."
