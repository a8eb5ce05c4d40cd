"""Read the knitter's rules for what she does differently, and check that they fit the file. No I/O.

The rules, each ending in `in SECTION` if it is for one section only:

- `no bobbles` · `no needle change` · `needle 3.75 mm instead of 4 mm`
- `body 4 cm longer`, `sleeves 6 rounds shorter`
- `bind off in pattern`, `sewn bind-off`
- `k1, p1 rib instead of k2, p2`
- `size 3 in sleeves`
- `240 sts at Final increase`: another count for an evenly spread line, by its label
- `keep 20 sts free at centre front and back`: no evenly spread change there; rounds are assumed to begin at
  the centre back unless the rule ends with `from the side`

A section is named in full, or by a word of its name: `sleeves` means every section with `sleeve` in its name.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from typing import Final

from stepper.project.draft import FileDraft
from stepper.project.lengths import read_length, read_needle
from stepper.project.model import Alteration, RuleKind, Section
from stepper.project.problems import Span, nearest, one_of
from stepper.project.sizes import find_size, nearest_size
from stepper.regex import regex

EXAMPLES = (
    "no bobbles",
    "needle 3.75 mm instead of 4 mm in yoke",
    "no needle change in body",
    "body 4 cm longer",
    "sleeves 6 rounds shorter",
    "bind off in pattern in body",
    "sewn bind-off in neckband",
    "k1, p1 rib instead of k2, p2 in neckband",
    "size 3 in sleeves",
    "240 sts at Final increase",
    "keep 20 sts free at centre front in yoke",
    "note: free words",
)
"""One rule of each kind, for the hint when a rule is not understood."""

_IN = r"(?:\s+(?:in|for)\s+(?:the\s+)?(?P<section>.+?))?"
_RIB = r"[kp]\s*\d+(?:\s*,\s*[kp]\s*\d+)+"
_NO_BOBBLES = regex(rf"(?:no|without|leave out) bobbles{_IN}", re.I)
_NOTE = regex(r"note:\s*(?P<note>.*\S)\s*", re.I)
_LEFT_OUT = regex(r"\s*(?:no|without|omit|skip|leave\s+out)\s", re.I)
_NO_CHANGE = regex(rf"no needle changes?{_IN}", re.I)
_NEEDLE = regex(
    r"needles?\s+(?P<used>.+?)(?:\s+instead\s+of\s+(?P<printed>.+?))?(?:\s+(?:in|for)\s+(?:the\s+)?(?P<section>.+))?",
    re.I,
)
_OF_NEEDLE = regex(r"(?:[\d.,/()#½¼¾\s-]|mm\b|us\b|uk\b|size\b|no\b|needles?\b|circulars?\b|dpns?\b)*", re.I)
"""What a needle is called by: its sizes."""
_LENGTH = regex(
    r"(?P<section>.+?):?\s+(?P<amount>\d[\d./\s½¼¾]*)\s*(?P<unit>cm|mm|in|inch|inches|rounds?|rows?|rnds?)\s+"
    r"(?P<way>longer|shorter)",
    re.I,
)
_BIND_OFF = regex(
    r"(?:bind|cast)[ -]off\s+(?P<manner>.+?)(?:\s+in\s+(?!pattern|rib)(?:the\s+)?(?P<section>.+?))?", re.I
)
"""Words that are a manner, "in pattern", name no section."""
_NAMED_BIND_OFF = regex(rf"(?P<manner>.+?)\s+(?:bind|cast)[ -]off{_IN}", re.I)
_RIBBING = regex(
    rf"(?P<used>{_RIB})(?:\s+rib(?:bing)?)?(?:\s+instead\s+of\s+(?P<printed>{_RIB})(?:\s+rib(?:bing)?)?)?{_IN}",
    re.I,
)
_SIZE = regex(r"size\s+(?P<size>.+?)\s+in\s+(?:the\s+)?(?P<section>.+)", re.I)
_COUNT = regex(r"(?P<count>\d+)\s*(?:sts?|stitch(?:es)?)\s+at\s+(?:the\s+)?(?P<label>.+)", re.I)
_KEEP_FREE = regex(
    r"keep\s+(?P<amount>\d[\d./\s½¼¾]*?)\s*(?P<unit>sts?|stitch(?:es)?|cm|mm|in|inch|inches)\s+free\s+at\s+"
    r"(?P<where>(?:the |and |centre |center |front |back )*(?:centre|center|front|back))"
    rf"(?P<side>,?\s+from\s+the\s+side)?{_IN}",
    re.I,
)


_DECIMAL_COMMA = regex(r"(?<=\d),(?=\d{1,2}\s*(?:mm|cm)\b)")


def read_alteration(text: str, place: Span, *, inches: bool = False) -> Alteration | None:
    """Read a rule; None if the words are not one.

    Args:
        text: The rule as written in the file.
        place: Where it is in the file.
        inches: Whether a length without a unit is in inches.
    """
    printed = " ".join(text.split())
    bare = _DECIMAL_COMMA.sub(".", printed.rstrip(" ,;."))  # as she writes a list, and numbers
    return _rule(printed, place, inches) or _rule(bare, place, inches)


def _rule(plain: str, place: Span, inches: bool) -> Alteration | None:
    for kind, words, fill in _RULES:
        match = words.fullmatch(plain)
        if match is not None:
            section = (match.groupdict().get("section") or "").strip(" ,")
            rule = fill(Alteration(kind=kind, text=plain, place=place, section=section), match, inches)
            if rule is not None:
                return rule
    return None


def say_instead(text: str) -> str:
    """Return what to write in place of words that are no rule: a note alone leaves every row as it is.

    Of an example near to them only its form is meant, not its numbers.
    """
    near = nearest(text, EXAMPLES)
    if near:
        example = near.removeprefix('Did you mean "').removesuffix('"?')
        has_number = any(letter.isdigit() for letter in example)
        return f'Write it like "{example}", with your own numbers.' if has_number else near
    note = f"- note: {' '.join(text.split())}"
    if _LEFT_OUT.match(text):
        return f"Put # in front of the rows that you leave out, and keep it for your notes as\n{note}"
    return f"Change the rows themselves, and keep it for your notes as\n{note}"


def _as_it_is(rule: Alteration, match: re.Match[str], inches: bool) -> Alteration:
    return rule


def _note(rule: Alteration, match: re.Match[str], inches: bool) -> Alteration:
    return replace(rule, text=match["note"])


def _needle(rule: Alteration, match: re.Match[str], inches: bool) -> Alteration | None:
    if not all(_OF_NEEDLE.fullmatch(each) for each in (match["used"], match["printed"] or "")):
        return None  # "4 mm at the hem" is no needle, and where it is meant would be lost
    used = read_needle(match["used"])
    printed = read_needle(match["printed"]) if match["printed"] else None
    if used is None or (printed is None and match["printed"]):
        return None
    return replace(rule, mm=used, instead_of=printed)


def _keep_free(rule: Alteration, match: re.Match[str], inches: bool) -> Alteration | None:
    where = [word for word in ("front", "back") if word in match["where"].lower()]
    if not where:
        return None
    rule = replace(rule, words=" ".join([*where, *(["side"] if match["side"] else [])]))
    amount = match["amount"].strip()
    if match["unit"].lower().startswith("st"):
        return replace(rule, stitches=int(amount)) if amount.isdigit() and int(amount) > 1 else None
    return _lengthened(rule, match, inches)


def _count(rule: Alteration, match: re.Match[str], inches: bool) -> Alteration | None:
    stitches = int(match["count"])
    return replace(rule, stitches=stitches, words=match["label"].strip()) if stitches else None


def _length(rule: Alteration, match: re.Match[str], inches: bool) -> Alteration | None:
    sign, amount = 1 if match["way"].lower() == "longer" else -1, match["amount"].strip()
    if match["unit"].lower().startswith("r"):
        return replace(rule, rounds=sign * int(amount)) if amount.isdigit() else None
    return _lengthened(rule, match, inches, sign)


def _lengthened(rule: Alteration, match: re.Match[str], inches: bool, sign: int = 1) -> Alteration | None:
    values, trouble = read_length(f"{match['amount'].strip()} {match['unit'].lower()}", inches=inches)
    return None if trouble or len(values) != 1 else replace(rule, mm=sign * values[0])


def _size(rule: Alteration, match: re.Match[str], inches: bool) -> Alteration:
    return replace(rule, words=match["size"].strip())


def _ribbing(rule: Alteration, match: re.Match[str], inches: bool) -> Alteration:
    return replace(rule, rib=_rib(match["used"]), rib_printed=_rib(match["printed"] or ""))


def _rib(words: str) -> tuple[tuple[str, int], ...]:
    pairs = re.findall(r"([kp])\s*(\d+)", words.lower())
    return tuple((code, int(times)) for code, times in pairs)


def _named_bind_off(rule: Alteration, match: re.Match[str], inches: bool) -> Alteration:
    return replace(rule, words=f"by the {match['manner'].lower()} method")


def _bind_off(rule: Alteration, match: re.Match[str], inches: bool) -> Alteration:
    return replace(rule, words=match["manner"].lower())


_Fill = Callable[[Alteration, re.Match[str], bool], Alteration | None]
_RULES: Final[tuple[tuple[RuleKind, re.Pattern[str], _Fill], ...]] = (
    (RuleKind.NOTE, _NOTE, _note),
    (RuleKind.NO_BOBBLES, _NO_BOBBLES, _as_it_is),
    (RuleKind.NO_NEEDLE_CHANGE, _NO_CHANGE, _as_it_is),
    (RuleKind.NEEDLE, _NEEDLE, _needle),
    (RuleKind.KEEP_FREE, _KEEP_FREE, _keep_free),
    (RuleKind.COUNT, _COUNT, _count),
    (RuleKind.LENGTH, _LENGTH, _length),
    (RuleKind.SIZE, _SIZE, _size),
    (RuleKind.RIB, _RIBBING, _ribbing),
    (RuleKind.BIND_OFF, _NAMED_BIND_OFF, _named_bind_off),
    (RuleKind.BIND_OFF, _BIND_OFF, _bind_off),
)
"""The words of each kind of rule, the first that reads them, and what fills it; None where they are no such
rule."""


def meets(alteration: Alteration, section: str) -> bool:
    """Return whether an alteration is for a section: by its name, or a word of it, singular or plural."""
    if not alteration.section:
        return True
    wanted, name = alteration.section.casefold(), section.casefold()
    singular = wanted.removesuffix("s")
    return wanted == name or any(word.removesuffix("s") == singular for word in name.split())


def check_alterations(
    alterations: Iterable[Alteration], sections: Sequence[Section], draft: FileDraft
) -> None:
    """Report alterations that name a section, a label or a size the file does not have."""
    names = [section.name for section in sections]
    for alteration in alterations:
        if alteration.section and names and not any(meets(alteration, name) for name in names):
            hint = nearest(alteration.section, names) or f"The sections are {one_of(names)}."
            draft.report(alteration.place, f'there is no section "{alteration.section}" to alter.', hint)
        labels = {line.label for section in sections for line in section.lines if line.label}
        if (
            alteration.kind is RuleKind.COUNT
            and names
            and alteration.words.casefold() not in map(str.casefold, labels)
        ):
            hint = nearest(alteration.words, labels) or (
                f"The labelled lines are {one_of(sorted(labels))}." if labels else "No line has a label."
            )
            draft.report(alteration.place, f'there is no line labelled "{alteration.words}" to alter.', hint)
        sizes = draft.sizes if alteration.kind is RuleKind.SIZE else ()
        if sizes and find_size(alteration.words, sizes) is None:
            hint = nearest_size(alteration.words, sizes)
            draft.report(alteration.place, f'there is no size "{alteration.words}".', hint)
