"""Every record inside a record is found, once and in order."""

from __future__ import annotations

from stepper.project.problems import Span
from stepper.project.records import records_in
from stepper.project.stitchwork import Numbers, Several, Work

PLACE = Span(line=1, column=1)


def test_records_are_found_in_order_however_deep_they_stand() -> None:
    """A number inside a bracket counts as much as one beside it; words and figures are no records."""
    one, two, three = (Numbers((each,), PLACE) for each in (1, 2, 3))
    group = Several((Work("k", two, None, PLACE),), three, "times", None, PLACE)
    found = [each for each in records_in((Work("p", one, None, PLACE), group, "words", 7)) if isinstance(each, Numbers)]
    assert found == [one, two, three]
