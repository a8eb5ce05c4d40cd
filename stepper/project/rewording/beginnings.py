"""Choose, of forms tried one after the other, those that may begin as a text does at a place. No I/O.

Theory of operation. A sentence is taken apart phrase by phrase, and at each word some forty expressions are
tried; most of them begin with another letter. So for each letter that is met the forms are kept that may
begin with it. The others cannot match: what is found is the same.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Final, Generic, TypeVar

from stepper.project.reading.first_letters import may_begin

_Form = TypeVar("_Form")


class ByLetter(Generic[_Form]):
    """Forms in the order tried. They are never changed, but for what is remembered of letters."""

    def __init__(self, forms: Iterable[tuple[str, _Form]]) -> None:
        """Take the forms.

        Args:
            forms: The expression of each, for upper and lower case alike, and what is asked where it may
                match.
        """
        self._forms: Final = tuple(forms)
        self._beginning: dict[str, Sequence[_Form]] = {}

    def at(self, text: str, at: int) -> Sequence[_Form]:
        """Return the forms that may match something at a place of a text, in their order; at its end none."""
        letter = text[at : at + 1]
        found = self._beginning.get(letter)
        if found is None:
            forms = self._forms if letter else ()
            found = [form for expression, form in forms if may_begin(f"(?i:{expression})", letter)]
            self._beginning[letter] = found
        return found
