"""Read the short answers about an unread row: a count, how many rows, what goes on hold. No I/O."""

from __future__ import annotations

import re
from typing import Final

from stepper.project.page.unread.proposals import one_list
from stepper.project.reading.wording import reads
from stepper.records import dataclass
from stepper.regex import regex

MOST: Final = 2_000
"""Most stitches or rows that an answer may name; more is a slip."""
_LIST: Final = regex(r"\d+(?:[\s,;:/(\[\])]+\d+)*[)\]\s]*")

_HELD: Final = regex(
    r"(?P<number>\d[^a-z]*?)\s*(?:sts?\b\.?\s*)?(?:for\s+(?P<name>[a-z][a-z -]*))?", re.I
)


@dataclass(frozen=True, slots=True, kw_only=True)
class AnsweredNumber:
    """A number as answered: for all sizes, one by one, or a single one."""

    values: tuple[int, ...]

    @property
    def text(self) -> str:
        """As it is written in the file: `96`, `88 (92, 96)`."""
        return one_list(" ".join(map(str, self.values)))

    @property
    def single(self) -> bool:
        """Whether one number was answered."""
        return len(self.values) == 1


def read_numbers(answer: str, sizes: int, what: str) -> AnsweredNumber | str:
    """Read a number, or one for each size.

    Args:
        answer: As typed: `96`, `96 sts`, `88 (92, 96)`, `88 92 96`.
        sizes: How many sizes the file has. Range: 1 and up.
        what: What is counted, for a refusal: "stitches", "rows".

    Returns:
        The number, or what is wrong with the answer as a sentence.
    """
    plain = re.sub(r"\s*\b(?:sts?|stitches|rows?|rnds?|rounds?)\b\.?\s*$", "", answer.strip(), flags=re.I)
    one, rest = ("6", "6, 8") if what == "rows" else ("88", "92, 96")
    example = f"{one} ({rest})" if sizes > 1 else one
    if re.match(r"[-–—]\s*\d", plain):
        return f"A number of {what} is 1 or more."
    if not _LIST.fullmatch(plain):
        return f"Write a number of {what}, in figures: {example}."
    figures = re.findall(r"\d+", plain)
    if any(len(each) > len(str(MOST)) or int(each) > MOST for each in figures):
        return f"More than {MOST} {what} is taken for a slip."
    values = tuple(map(int, figures))
    if not all(values):
        return f"A number of {what} is 1 or more."
    if len(values) not in (1, sizes):
        if sizes == 1:
            return "The file has one size: write one number."
        return f"There are {sizes} sizes, and {len(values)} numbers are written: write 1, or {sizes}."
    return AnsweredNumber(values=values)


def read_duration(answer: str, sizes: int, *, inches: bool) -> AnsweredNumber | str | tuple[str]:
    """Read how many rows, or how long: `4`, `until 12 cm`, `for 7 cm`.

    Args:
        answer: As typed.
        sizes: How many sizes the file has.
        inches: Whether a length without a unit is in inches.

    Returns:
        The number; or how long as it stands in the file, in a tuple; or what is wrong, as a sentence.
    """
    lasting = re.match(
        r"(?P<how>until(?:\s+[a-z][a-z ]*?\s(?:measures?|is))?|for)\s+(?P<length>\d.*)$", answer.strip(), re.I
    )
    if lasting is None:
        if re.search(r"\d\s*(?:cm|mm|in\b|inch|\")", answer, re.I):
            return 'Write "until 12 cm", measured as the piece is, or "for 12 cm", from here.'
        return read_numbers(answer, sizes, "rows")
    length = lasting["length"]
    if not re.search(r"[a-z\"”″]", length, re.I):
        length = f"{length} {'in' if inches else 'cm'}"
    lasts = f"{lasting['how'].lower()} {length}"
    if lasts.startswith("until") and not re.search(r"\b(?:measures?|is)$", lasting["how"], re.I):
        lasts = f"until piece measures {length}"
    if not reads(f"Knit {lasts}.") or not re.search(r"[1-9½¼¾⅓⅔⅛⅜⅝⅞]", length):
        return "That is no length. Write it as until 12 cm, or for 12 cm."
    return (lasts,)


_SAID_ROWS: Final = r"\d+(?:[\s,;:/(\[\])]+\d+)*[)\]]?\s*(?:rows?|rnds?|rounds?)\b\.?"
_SAID_LENGTH: Final = r"(?:until|for)\b.*?(?:\b(?:cms?|mm|inch(?:es)?|ins?)\b|[\"”″]|\d(?=\s*(?:,\s+|;|$)))"
_FROM: Final = r"(?:\s+(?:from|above|below|after|beyond)\s+[^,;]+?)?"
_JOINED: Final = r"(?:\s*[,;]\s*(?:then\s+)?|\s+then\s+|\s+)"
_SAID_COUNT: Final = (
    r"(?:(?:the\s+)?same|=|[+-]\s*\d+(?:\s*(?:sts?|stitches))?|\d+(?:[\s,;:/(\[\])]+\d+)*[)\]]?"
    r"(?:\s*(?:sts?|stitches)\b)?)\.?(?:\s+after)?"
)
_SAID: Final = regex(
    rf"(?P<rows>{_SAID_ROWS}|{_SAID_LENGTH}{_FROM})(?:{_JOINED}(?P<count>{_SAID_COUNT}))?"
    rf"|(?P<alone>{_SAID_COUNT})",
    re.I,
)


@dataclass(frozen=True, slots=True, kw_only=True)
class SaidNumbers:
    """An answer that says how many rows, how many stitches, or both, as typed."""

    rows: str = ""
    count: str = ""


def split_numbers(answer: str, sizes: int, *, bare: bool = False) -> SaidNumbers | None:
    """Split an answer into how many rows and how many stitches after them: `12 rows, 84 sts`.

    Args:
        answer: As typed.
        sizes: How many sizes the file has, since a list of as many is one number.
        bare: Whether a number alone is one of rows, as where these are asked for; else it is neither.

    Returns:
        What is said of each; None if the answer is of another kind, or does not say of which a number is.
    """
    plain = answer.strip()
    two = re.fullmatch(r"(\d+)\s*[,;]\s*(\d+|[+-]\d+|same)", plain, re.I)
    if two is not None and sizes != len(two.groups()):
        return SaidNumbers(rows=two[1], count=two[2])
    match = _SAID.fullmatch(plain)
    if match is None:
        return None
    if match["rows"]:
        return SaidNumbers(rows=match["rows"], count=match["count"] or "")
    if plain[0].isdigit() and re.search(r"(?:\b|\d)st", plain, re.I) is None:
        return SaidNumbers(rows=plain) if bare else None
    return SaidNumbers(count=plain)


def read_each(answer: str) -> tuple[int, ...]:
    """Read the counts after each of several rows, `17 16 15`; 0 at the end is the last row bound off.

    Returns:
        The counts; empty if they are not numbers from 1 up to there.
    """
    answer = re.sub(r"\s*\b(?:sts?|stitches)\b\.?(?:\s+after)?\s*$", "", answer.strip(), flags=re.I)
    if not re.fullmatch(r"\d+(?:[\s,;]+\d+)*", answer):
        return ()
    values = tuple(int(each) for each in re.findall(r"\d{1,5}", answer))
    return values if all(0 < each <= MOST for each in values[:-1]) and values[-1] <= MOST else ()


def read_held(answer: str, sizes: int) -> str:
    """Read what goes on hold: `54 for first sleeve; 54 for second sleeve`; empty if it cannot be read.

    Args:
        answer: As typed; parts stand apart by a semicolon.
        sizes: How many sizes the file has.
    """
    parts = []
    for each in answer.split(";"):
        match = _HELD.fullmatch(each.strip())
        found = read_numbers(match["number"], sizes, "stitches") if match is not None else ""
        if match is None or isinstance(found, str):
            return ""
        parts.append(found.text + (f" for {match['name'].strip()}" if match["name"] else ""))
    return "; ".join(parts)
