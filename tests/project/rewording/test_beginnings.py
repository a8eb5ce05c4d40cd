"""The forms that may begin as a text does, against one who tries form after form."""

from __future__ import annotations

import re

from hypothesis import given
from hypothesis import strategies as st

from stepper.project.rewording.beginnings import ByLetter

FORMS = (r"(?:the\s+)?(?:next|first)\s+\d+", r"k\s?\d+|knit\b", r"(?<!\w)(?=[kp])\w\d", r"[(\[]?\d+[)\]]?", r"(?-i:MC|CC)", r"\W+rep", "(?:and)?")
PIECES = ("the ", "next ", "First ", "K", "k 3", "KNIT", "p2", "(4)", "MC", "mc", "\u212a", "* rep", "and", " ", "\u00bd")


@given(st.lists(st.sampled_from(PIECES), max_size=5).map("".join), st.integers(0, 12))
def test_what_is_found_at_any_place_is_what_one_finds_who_tries_all(text: str, at: int) -> None:
    """A form left out wrongly would leave an order of the page unread; the sign of kelvin is a K in either case."""
    forms = ByLetter((form, re.compile(form, re.IGNORECASE)) for form in FORMS)
    tried = [match for form in FORMS if (match := re.compile(form, re.IGNORECASE).match(text, at)) and match.end() > at]
    found = [match for form in forms.at(text, at) if (match := form.match(text, at)) and match.end() > at]
    assert [match.re for match in found] == [match.re for match in tried]


def test_forms_of_another_letter_are_left_out() -> None:
    """That is what it is for; what is in doubt is tried, and at the end of a text there is nothing to try."""
    forms = ByLetter((form, form) for form in FORMS)
    assert list(forms.at("purl", 0)) == [FORMS[2], FORMS[5], FORMS[6]]
    assert list(forms.at("purl", 4)) == []
