"""Put the words of the stitch and needle tables into the grammar of pattern lines. No I/O.

`wording.lark` says how a line is built and leaves `<STITCHES>` and `<NEEDLES>` open. They are filled in from
`stepper.craft.stitches` and `stepper.craft.needles`, so an abbreviation added to a table is read at once.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from importlib import resources

from stepper.craft import needles, stitch_patterns, stitches
from stepper.regex import regex

_OTHERWISE = {
    "m": "a marker, as in `k to m`",
    "inc": "the word before a number of stitches, as in `inc 8 sts evenly`",
    "dec": "the word before a number of stitches",
}
"""Forms of the stitch table that mean something else where a stitch could be, and what."""
_ONE = regex(r"^(?:inc|dec)\s*(?:1|one)$")


def stitch_words() -> str:
    """Return a regular expression for every form of the stitch table that by itself names one worked stitch.

    Of those that begin alike the longest come first. Case and the number of spaces are left to whoever
    compiles it.
    """
    return _by_first_letter(_stitch_forms())


def _stitch_forms() -> list[str]:
    return [form for form in stitches.whole_words() if form not in _OTHERWISE]


def abbreviations() -> str:
    """Return a regular expression for the forms that are not plain English: stitches, never prose.

    "Bobble" may be in the name of a hat, k2tog only in a row.
    """
    return _by_first_letter(form for form in _stitch_forms() if not _prose(form))


def _by_first_letter(forms: Iterable[str]) -> str:
    """Return an expression for some forms, those with the same first letter together.

    Where case does not matter, Python tries one alternative after the other: of sixty, at every word.
    """
    begun: dict[str, list[str]] = {}
    for form in forms:
        begun.setdefault(form[0], []).append(_form(form)[1:])
    return "|".join(f"{letter}(?:{'|'.join(ways)})" for letter, ways in begun.items())


def _prose(form: str) -> bool:
    """Return whether every word of a form is also spoken when the stitch is said."""
    entry = stitches.find_stitch(form)
    said = re.findall(r"[a-z]+", entry.said) if entry is not None else []
    return all(word in said for word in form.split())


def _form(form: str) -> str:
    """Return the expression for one form; "inc 1 st at each end" is no stitch by itself."""
    words = r"\s+".join(re.escape(word) for word in form.split())
    return rf"{words}(?!\s+st)" if _ONE.match(form) else words


def grammar_text() -> str:
    """Return the whole grammar as text for the parser generator."""
    text = resources.files("stepper.project").joinpath("wording.lark").read_text(encoding="utf-8")
    tables = {
        "<STITCHES>": "|".join(map(_form, _stitch_forms())),
        "<NEEDLES>": needles.NEEDLES,
        "<RIB>": stitch_patterns.RIB,
        "<KNOWN>": stitch_patterns.KNOWN,
        "<TEXTURE>": stitch_patterns.TEXTURE,
    }
    for mark, words in tables.items():
        text = text.replace(mark, words.replace("/", r"\/"))
    return text
