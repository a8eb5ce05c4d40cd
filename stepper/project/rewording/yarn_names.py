"""Put signs for yarns that a line calls by a colour, and the names back into what was read. No I/O.

Theory of operation. "*K2 navy, p2 soft white*" is "*K2 A, p2 B*" with names of one or more words where the
tables know letters. So before they are looked at, a colour that stands where only a yarn can stand - behind
"with", "join", "break", behind the number of a stitch or of rows - is replaced by a sign that they take for a
yarn (`CC9`, `CC8`), and afterwards the name is put back. A colour anywhere else ("change to blue needles")
stays as it is. A name stands for the yarn of the file that is called so, by its whole name or as the only one
with its words.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace
from typing import Any, Final

from stepper.project.nested_records import replace_nested
from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.regex import regex

_SHADE: Final = (
    r"(?:white|black|gr[ae]y|pink|blue|navy|green|yellow|brown|cream|purple|orange|beige|lilac|lemon|turquoise|gold|"
    r"red|ecru|ivory|charcoal|teal|coral|burgundy|maroon|mauve|violet|lavender|tan|camel|fawn|oatmeal|mustard|rust|"
    r"khaki|aqua|crimson|scarlet|magenta|taupe|plum|peach|silver|straw|soot|slate|indigo|denim|sand|sage|wine|honey|"
    r"copper|bronze|ochre|terracotta|apricot|salmon|raspberry|cherry|mint|emerald|jade|petrol|chocolate|coffee|caramel|"
    r"cinnamon|anthracite|graphite|vanilla|amber|ginger|ruby|aubergine|fuchsia|cerise|chestnut|fawn|russet|(?-i:BC|PC|DC|LC))"
)
"""A colour, or the letters of a background, a pattern, a dark, a light or a dominant colour."""
_TINT: Final = (
    r"(?:light|dark|pale|deep|soft|bright|off|mid|medium|royal|sky|baby|olive|forest|lime|rose|dusty|natural)"
)
_ROLE: Final = (
    r"(?:(?:main|contrast(?:ing)?|background|pattern)\s+(?:colou?r|shade)(?:\s+(?-i:[A-D1-9])\b)?"
    r"|colou?r\s+[1-9]\b)"
)
CALLED: Final = rf"(?:(?:(?:{_TINT}|{_SHADE})[-\s]+){{0,2}}(?:{_SHADE}|light|dark)|{_ROLE})"
"""What a page calls a yarn by: its colour, in a tint or between two, or its part in the pattern."""
_NAME: Final = rf"(?P<name>{CALLED})(?![-\w])"
_WOOL: Final = r"(?:\s+(?:yarn|wool|colou?r))?"
_GOES_ON: Final = (
    r"(?=\s*[,;:.)*\]]|\s*$|\s+(?:and|then|only|alone|until|till|for|knit|purl|k|p|work|cast|co|cont|continue|bind|bo|"
    r"pick|change|on)\b|\s+[kp]\s?\d)"
)
_WITH: Final = (
    r"\b(?:with|using|in|join(?:\s+in)?|re-?join|break(?:\s+off)?|cut|(?:change|switch|go\s+back|return)\s+to|and)\s+"
    r"(?:the\s+)?(?:yarn\s+|colou?r\s+)?"
)
_PLACES: Final = tuple(
    regex(expression, re.IGNORECASE)
    for expression in (
        rf"(?<![-\w]){_WITH}{_NAME}{_WOOL}{_GOES_ON}",
        rf"(?<![-\w])[kp]\.?\s?\d+\s+{_NAME}(?=\s*[,;.)*\]]|\s*$|\s+and\s+[kp]\.?\s?\d)",
        rf"^\s*(?:next\s+)?(?:rows?|rnds?|rounds?)\b[^:]*?[(\[]\s*(?:(?:rs|ws)\s*[-,;/]\s*)?(?:in\s+|with\s+|using\s+)?{_NAME}(?=\s*(?:[-,;/]\s*(?:rs|ws)\s*)?[)\]]\s*:)",
        rf"\b(?:rows?|rnds?|rounds?)\s+{_NAME}(?=\s*[,;.)]|\s*$|\s+and\b)",
    )
)
"""Where a colour can only be a yarn; "and" is behind a yarn or a needle alone."""
_ANY: Final = regex(rf"\b(?:{_SHADE}|light|dark|{_ROLE})\b", re.IGNORECASE)
_AND: Final = regex(r"\band\s+(?:the\s+)?$", re.IGNORECASE)
_YARN_OR_NEEDLE: Final = regex(
    r"(?:needles?|dpns?|circulars?|CC\d|MC)\s+and\s+(?:the\s+)?$", re.IGNORECASE
)
_SIGNS: Final = tuple(f"CC{number}" for number in range(9, 2, -1))


def sign_yarns(line: Reworded) -> Reworded:
    """Put a sign for each colour that stands where only a yarn can stand.

    Args:
        line: A line as printed.

    Returns:
        The line, with the names its signs stand for; the same if it calls no yarn by a colour.
    """
    if _ANY.search(line.text) is None:
        return line
    names: dict[str, str] = {}
    signs = [sign for sign in _SIGNS if sign not in line.text]

    def sign_of(name: str) -> str | None:
        known = name if name.isupper() else " ".join(name.lower().replace("-", " ").split())
        if known not in names and len(names) < len(signs):
            names[known] = signs[len(names)]
        return names.get(known)

    made = line
    for pattern in _PLACES:
        at = 0
        while (match := pattern.search(made.text, at)) is not None:
            at = match.end("name")
            before = made.text[: match.start("name")]
            if _AND.search(before) and not _YARN_OR_NEEDLE.search(before):
                continue
            sign = sign_of(match.group("name"))
            if sign is None:
                return line
            made = laid_anew(made, match.start("name"), match.end(), [sign])
            at = match.start("name") + len(sign)
    return replace(made, yarns=tuple((sign, name) for name, sign in names.items())) if names else line


def printed_again(words: str, yarns: tuple[tuple[str, str], ...]) -> str:
    """Return words with the names of yarns in the place of their signs."""
    for sign, name in yarns:
        words = re.sub(rf"\b{sign}\b", name, words)
    return words


def with_names(record: Any, names: Mapping[str, str]) -> Any:
    """Return a record, or a tuple of records, in which each field that is a sign is the name."""
    return replace_nested(record, lambda inner: names.get(inner, inner) if isinstance(inner, str) else inner)


def find_called(name: str, yarns: Mapping[str, str]) -> str:
    """Find the yarn that a name calls.

    Args:
        name: The name, in small letters.
        yarns: The names of the yarns of the file, by their keys.

    Returns:
        Its key; the name itself if none or several may be meant, which the plan then tells.
    """
    numbered = re.fullmatch(r"colou?r (\d)", name)
    if numbered is not None:
        return f"C{numbered[1]}" if f"C{numbered[1]}" in yarns else name
    role = _OF_ROLE.fullmatch(name)
    if role is not None:
        return _in_role(role, name, tuple(yarns))
    for key in yarns:
        if key.lower() == name:
            return key
    called = {key: printed.lower().replace("-", " ").split() for key, printed in yarns.items()}
    whole = [key for key, words in called.items() if words == name.split()]
    found = whole or [key for key, words in called.items() if set(name.split()) <= set(words)]
    return found[0] if len(found) == 1 else name


_OF_ROLE: Final = regex(
    r"(?P<role>main|contrast(?:ing)?|background|pattern)\s+(?:colou?r|shade)(?:\s+(?P<which>\w))?"
)
_LETTERS: Final = {"main": r"M[CS]?", "contrast": r"C[CS]?\d?", "background": "BC", "pattern": "PC"}
"""The letters of yarns by their part in the pattern; common practice."""


def _in_role(role: re.Match[str], name: str, keys: tuple[str, ...]) -> str:
    """Return the one key that stands for a part in the pattern; the name without it."""
    which = (role["which"] or "").upper()
    letters = _LETTERS["contrast" if role["role"] == "contrasting" else role["role"]]
    fits = [key for key in keys if re.fullmatch(letters, key)]
    fits = [key for key in fits if key == "CC"] or fits  # "CC2" beside it is the second contrast colour
    fits = fits or [key for key in keys if key == "MC" and role["role"] == "background"]
    if which:
        fits = [key for key in keys if key in (which, f"CC{which}", f"C{which}")]
    return fits[0] if len(fits) == 1 else name
