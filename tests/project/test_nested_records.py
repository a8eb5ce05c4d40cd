"""Every record inside a record is found, once and in order."""

from __future__ import annotations

from stepper.project.nested_records import records_in, replace_nested
from stepper.project.problems import Span
from stepper.project.stitchwork import Numbers, Several, Work

PLACE = Span(line=1, column=1)


def test_records_are_found_in_order_however_deep_they_stand() -> None:
    """A number inside a bracket counts as much as one beside it; words and figures are no records."""
    one, two, three = (Numbers((each,), PLACE) for each in (1, 2, 3))
    group = Several((Work("k", two, None, PLACE),), three, "times", None, PLACE)
    found = [each for each in records_in((Work("p", one, None, PLACE), group, "words", 7)) if isinstance(each, Numbers)]
    assert found == [one, two, three]


def test_what_is_put_in_place_of_a_record_stands_wherever_that_stood() -> None:
    """The records around it are made anew, and those beside it stay the very same."""
    one, two, other = (Numbers((each,), PLACE) for each in (1, 2, 7))
    beside, group = Work("p", two, None, PLACE), Several((Work("k", one, None, PLACE),), two, "times", None, PLACE)
    changed = replace_nested((beside, group), lambda inner: other if inner is one else inner)
    assert changed == (beside, Several((Work("k", other, None, PLACE),), two, "times", None, PLACE))
    assert changed[0] is beside


def test_where_nothing_is_changed_the_record_itself_comes_back() -> None:
    """So that a caller sees at once whether anything was."""
    record = (Work("k", Numbers((1,), PLACE), None, PLACE), "words", 7)
    assert replace_nested(record, lambda inner: inner) is record
