"""Write lists of sizes in one form, whatever brackets and words they are printed with. No I/O.

A page of many sizes sets its numbers in groups: "88 [96, 104] (112, 120) {128}". A group may hold ordinals
("every 8th [6th, 6th] (4th) rnd"), lengths with their unit each, how often in words ("once [twice, 3
times]"), and a dash for a size that has no such number. All become one bracket behind the first number, as
the grammar reads them, each letter with its printed place. A dash becomes a nought here; which sizes it
leaves out of the line is for `stepper.project.reading.left_out_sizes` to say. Source: the print of patterns
in many sizes; common practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.regex import regex

_UNIT: Final = r"(?:cm|mm|in|inch(?:es)?|\")(?![\w])"
_NUMBER: Final = r"\d+(?:\.\d+)?(?:\s?[¼½¾⅛⅜⅝⅞])?(?:st|nd|rd|th)?(?!\w)"
_WORDS: Final = ("one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen", "twenty")
_SPELT: Final = rf"(?:{'|'.join(_WORDS)})\b"
_ALT: Final = r"alt(?:ernate|\.)?(?!\w)"
_VALUE: Final = rf"(?:{_SPELT}|(?:{_NUMBER}|[¼½¾])(?:\s?(?:{_UNIT}|times\b))?|once\b|twice\b|{_ALT}|-)"
_SIGN: Final = r"\s*(?:[,;:/]|(?<=(?:st|nd|rd|th))-|(?<=(?:st|nd|rd|th)\s)-|(?<=\balt)-)\s*"
_GROUP: Final = rf"\s*(?:,\s*)?[(\[{{]\s*{_VALUE}(?:{_SIGN}{_VALUE})*\s*[)\]}}]"
_OPENED: Final = re.sub(
    r"\w+",
    lambda word: rf"(?<=\b{word[0]}\s)",
    "on|off|co|bo|knit|purl|work|are|is|have|after|measures|ending|finishing|decrease|increase|dec|inc|decreasing|increasing|remaining|rem|"
    "across|over|the|next|last|every|for|of|until|before|by|another|additional|around|approx|about|hold|cm|in",
)
_FIRST: Final = (
    rf"(?:(?:{_OPENED}|(?<=^)|(?<=\blast\sround\s)|(?<=\blast\srnd\s)|(?<=[a-z][a-z][a-z]\sand\s)|(?<=[.:=(]\s)|(?<=[=(])|(?<=[a-z][a-z][a-z],\s))(?:{_NUMBER}\s*,\s+)+(?={_VALUE}{_GROUP})"
    rf"|(?<![\w.¼½¾/-])|(?<=\b[kp])(?:(?:{_NUMBER}\s*,\s+){{3,}})?)"
)
"""Where a list begins, with what it has before its last number outside brackets: "88, 96, 104 (112, 120)" is one
list, and "rep rnds 1 and 2, 5 (6, 7) times" has one of three."""
SIZE_LIST: Final = regex(rf"{_FIRST}{_VALUE}(?:{_GROUP})+", re.I)
"""A list of sizes as printed, made plain: a number, or several with commas, and groups in brackets."""
_BROKEN: Final = regex(rf"{_FIRST}{_VALUE}(?:{_GROUP})+(?:\s+{_VALUE}(?:{_GROUP})+)+", re.I)
"""Such a list whose brackets come and go; read as one only with a dash in it, which no two lists side by side have."""
_DASH: Final = regex(r"(?:^|[(,\s])-(?=\s*[(,)])")
_EACH: Final = regex(_VALUE, re.I)
_ODD: Final = regex(rf"[(\[,;:/-]\s*{_ALT}\s*[,;:/)\]-]|{_ALT}\s*[(\[]\s*\d|\b{_SPELT}\s*[(\[]\s*{_SPELT}|" r"(?:st|nd|rd|th)\s?-\s?\d+(?:st|nd|rd|th)|\{|[)\]]\s*,?\s*[(\[]|\b(?:once|twice)\s*[(\[,]|[(\[,]\s*(?:once|twice|\d+\s?times)\b|-\s*[,)\](\[]|[,(\[]\s*-|\d\s?(?:cm|mm|in|\")\s*[(\[,]|\d\s*,\s+[\d.½¼¾]+(?:st|nd|rd|th)?\s*[(\[]", re.I)
"""What a list has that the grammar does not read as it stands."""
_TIMES: Final = {"once": "1", "twice": "2"}
_AS_DIGITS: Final = {word: str(at) for at, word in enumerate(_WORDS, start=1)}

_FIGURE: Final = r"(?:\d+(?:\.\d+)?[½¼¾⅓⅔⅛⅜⅝⅞]?(?:st|nd|rd|th)?|[½¼¾⅓⅔⅛⅜⅝⅞])"
_PLACES: Final = ("row", "rows", "rnd", "rnds", "round", "rounds", "page", "pages", "rep", "chart")
_NO_PLACE: Final = f"(?:{''.join(rf'(?<!{word} )' for word in _PLACES)}" r"|(?=[\d\s/–-]+times\b))"
_SLASHED: Final = (
    rf"{_NO_PLACE}(?<![\w./½¼¾-])(?<![\d/] )(?:{_FIGURE}(?: / {_FIGURE})+(?! ?/)|{_FIGURE}(?:/{_FIGURE}){{2,}}(?! ?/))"
)
_WITH_SLASHES: Final = regex(_SLASHED, re.I)
SIDE_BY_SIDE: Final = regex(
    rf"{_SLASHED}|{_NO_PLACE}(?<![\w./½¼¾–-])(?<![\d–-] ){_FIGURE}(?: ?[-–] ?{_FIGURE}){{2,}}(?! ?[/–-])", re.I
)
"""A number for each size without brackets, "102 / 112 / 122", "88-92-98": two alone with a dash are a range, and
without spaces a fraction or a cable; behind "rows" or "page" each is one of them."""


def in_brackets(text: str) -> str:
    """Write the lists of a text that stand without brackets as one number and one bracket."""
    return SIDE_BY_SIDE.sub(_bracketed, text)


def _bracketed(match: re.Match[str]) -> str:
    first, *others = re.findall(_FIGURE, match.group())
    return f"{first} ({', '.join(others)})"


def write_lists_plainly(line: Reworded) -> Reworded:
    """Write each list of sizes of a line as one number and one bracket.

    Returns:
        The line; the same if all its lists are read as they are.
    """
    if not any(map(line.text.count, "([{")) or not _ODD.search(line.text):
        return line
    text: list[str] = []
    places: list[int] = []
    done = 0
    for match, _ in find_lists(line.text):
        written = _written(line.text, match)
        if written is None:
            continue
        text.append(line.text[done : match.start()])
        places.extend(line.places[done : match.start()])
        for words, at in written:
            text.append(words)
            places.extend([line.places[at]] * len(words))
        done = match.end()
    if not done:
        return line
    return replace(
        line, text="".join(text) + line.text[done:], places=(*places, *line.places[done:])
    )


def find_lists(text: str) -> list[tuple[re.Match[str], list[str]]]:
    """Find the lists of sizes of a line made plain, each with its values as printed; a dash is one too."""
    if not any(map(text.count, "([{")):
        return []
    broken = [match for match in _BROKEN.finditer(text) if _DASH.search(match.group())] if "-" in text else []
    whole = [match for match in SIZE_LIST.finditer(text) if not any(_within(match, other) for other in broken)]
    found = [
        (match, [value.group() for value in _EACH.finditer(match.group())])
        for match in sorted([*broken, *whole], key=lambda match: match.start())
    ]
    return [
        (match, values)
        for match, values in found
        # "64 - (72, 80)", "k to end - (24)": the dash stands between the two.
        if values[0] != "-" or (len(values) > 2 and not text[: match.start()].rstrip()[-1:].isdigit())
    ]


def _within(match: re.Match[str], other: re.Match[str]) -> bool:
    return other.start() <= match.start() < other.end()


def _written(text: str, match: re.Match[str]) -> list[tuple[str, int]] | None:
    """Return the pieces of a list with the offset of each; None if the list is no list of sizes."""
    values = list(_EACH.finditer(text, match.start(), match.end()))
    printed = [value.group() for value in values]
    if all(word == "-" for word in printed) or not _ODD.search(match.group()):
        return None
    often = any(word.lower() in _TIMES or word.lower().endswith("times") for word in printed)
    units = {unit.group().lower() for word in printed if (unit := re.search(rf"{_UNIT}$", word, re.I))}
    if len(units) > 1:
        return None
    ordinal = any(word[-2:] in ("st", "nd", "rd", "th") for word in printed)
    nought = "0th" if ordinal else "0"
    if not ordinal and any(word.lower().startswith("alt") for word in printed):
        return None
    behind = re.match(r"\s*(?:(?:more\s+)?times\b)", text[match.end() :], re.I)
    pieces: list[tuple[str, int]] = []
    for number, value in enumerate(values):
        word = re.sub(rf"\s?(?:{_UNIT}|times)$", "", value.group(), flags=re.I)
        word = "2nd" if word.lower().startswith("alt") else word
        word = nought if word == "-" else _TIMES.get(word.lower(), _AS_DIGITS.get(word.lower(), word))
        joint = ("", " (", *([", "] * (len(values) - 2)))[number]
        pieces += [(joint, value.start()), (word, value.start())]
    last = match.end() - 1
    pieces.append((")", last))
    if units:
        pieces.append((f" {units.pop()}", last))
    if often and behind is None:
        pieces.append((" times", last))
    return pieces


_IN_TURN: Final = regex(
    rf"(?:(?<![\w.¼½¾/(\[-])|(?<=\b[kpKP])){_NUMBER}\s*\(\s*{_NUMBER}\s*\)(?:(?:\s+{_NUMBER}\s*\(\s*{_NUMBER}\s*\))+(?:\s+{_NUMBER}(?!\s*[(\[]\s*\d))?"
    rf"|\s+{_NUMBER}(?=\s*(?:{_UNIT}|(?:new\s+|more\s+)?(?:st|stitch|row|rnd|round|time)(?:e?s)?\b))"
    rf")|(?<=\b[kpKP]){_NUMBER}\s*\(\s*{_NUMBER}\s*\)\s+{_NUMBER}(?!\s*(?:times\b|x\b|[(\[]\s*\d))"
)
"""A list of which every other number stands in brackets: "4 (3.5) 3 (3) 2.5 (2)"."""
_ONE: Final = regex(_NUMBER)
_CHAIN: Final = regex(
    rf"(?:(?<=[a-z)])-\s*|(?<![\w.¼½¾/(\[:,-])(?<!\d,\s)(?<![\d./-]\s))(?P<list>{_NUMBER}(?:-{_NUMBER}){{2,}})(?=\s*{_UNIT}|\s+(?:(?:(?:new|edge|more|garter)\s+)?(?:st|stitch|row|rnd|round|time|ridge)(?:e?s)?\b|more\b|each\b|evenly\b))",
    re.I,
)
"""A list of three sizes or more joined by dashes, also one that a dash joins to a word: "rows-88-96-106 sts"."""


def write_lists_in_turn(line: Reworded) -> Reworded:
    """Write each list in which brackets come and go, and each joined by dashes or slashes, in one bracket.

    Returns:
        The line; the same if it has none.
    """
    for match in reversed(list(_CHAIN.finditer(line.text))):
        chain: list[str | tuple[int, int]] = [" - "] if match.start() < match.start("list") else []
        for number, value in enumerate(_ONE.finditer(line.text, *match.span("list"))):
            chain += [" (" if number == 1 else ", "] if number else []
            chain.append(value.span())
        line = laid_anew(line, *match.span(), [*chain, ")"])
    for match in reversed(list(_WITH_SLASHES.finditer(line.text)) if "/" in line.text else []):
        slashed: list[str | tuple[int, int]] = []
        for number, value in enumerate(re.finditer(_FIGURE, match.group())):
            slashed += [" (" if number == 1 else ", "] if number else []
            slashed.append((match.start() + value.start(), match.start() + value.end()))
        line = laid_anew(line, *match.span(), [*slashed, ")"])
    for match in reversed(list(_IN_TURN.finditer(line.text))):
        pieces: list[str | tuple[int, int]] = []
        for number, value in enumerate(_ONE.finditer(line.text, *match.span())):
            pieces += [" (" if number == 1 else ", "] if number else []
            pieces.append(value.span())
        line = laid_anew(line, *match.span(), [*pieces, ")"])
    return line
