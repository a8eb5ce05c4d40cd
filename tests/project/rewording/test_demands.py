"""What a regular expression demands of a text, against texts that are made to match it."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from stepper.project.rewording.demands import find_demands, stands_at_the_start
from stepper.project.rewording.synonyms import SYNONYMS

EXPRESSIONS = (
    r"\b(?:bind|cast)\s+off(?:\s+loosely)?",
    r"(?:rounds?|rnds?|rows?)\b\s*[-:]",
    r"(?P<said>leaving\s+an?\s+(?:long\s+)?tail)\s*\.",
    r"ab?c*d+e{0,2}f{2}g{,3}h{1,}i",
    r"(?:one|two(?:\s+more)?|)\s+end",
    r"(?:(?:a|bc)d|e(?:f|gh))+ij",
    r"[^\]a-z]x1\.5\(ma\)|yz\-\u00bd",
    r"over(?!\s+of)\s+\w+(?<!there)",
    r"(?-i:MC|CC\d)\s+(?i:yarn)+?",
    r"^(\s*)k(?:nit)?\s(\d)\2",
)


def is_met(expression: str, text: str) -> bool:
    """Return whether a text has a piece of each demand."""
    low = text.lower()
    return all(any(piece in low for piece in demand) for demand in find_demands(expression))


@pytest.mark.parametrize("expression", EXPRESSIONS)
def test_what_matches_meets_every_demand(expression: str) -> None:
    """The texts are hypothesis' own, drawn from the expression as Python's library takes it apart."""

    @settings(max_examples=25)
    @given(st.from_regex(expression, alphabet=st.characters(codec="latin-1")))
    def holds(text: str) -> None:
        assert is_met(expression, text)
        assert is_met(expression, text.upper())

    holds()


def test_a_row_of_the_table_finds_its_demands_in_what_it_is_found_in() -> None:
    """One in four, each in its own example wherever that needs no other row before, which is so of most."""
    rows = SYNONYMS[::4]
    found = [row for row in rows if row.pattern.search(row.example)]
    assert len(found) > 0.6 * len(rows)
    assert [row.expression for row in found if not is_met(row.expression, row.example)] == []


@pytest.mark.parametrize(
    ("expression", "demands"),
    [
        (r"\b(?:bind|cast)\s+off(?:\s+loosely)?", [{"bind", "cast"}, {"off"}]),
        (r"rnds?\b|rounds?\b", [{"rnd", "round"}]),
        (r"st(?:s|itch|itches)?\s+Marker", [{"marker"}, {"st"}]),
        (r"(?:stitch|stitches|sts?)\b", [{"st"}]),
        (r"k\d+|(?:purl|p)\d", []),
        (r"(?!never)work(?<!again)", [{"work"}]),
        (r"(?<=then\s)work(?=\s+even)", [{"even"}, {"then"}, {"work"}]),
        (r"\s*\((?:rs|ws)\)", [{"rs", "ws"}, {"("}, {")"}]),
    ],
)
def test_the_words_outside_of_what_may_be_left_out_are_demanded(expression: str, demands: list[set[str]]) -> None:
    """The most telling first; one letter alone, which is in nearly every line, is not asked for."""
    assert [set(one) for one in find_demands(expression)] == demands


@pytest.mark.parametrize("expression", [r"(?x) cast  on", r"(a)?(?(1)bc|de)", r"(?P<n>ab)(?P=n)", "(?>cast)on", "on)", "a{x}b"])
def test_of_what_is_not_taken_apart_nothing_is_demanded(expression: str) -> None:
    """The pattern is looked for in each line then."""
    assert find_demands(expression) == ()


def test_an_expression_that_stands_at_the_start_is_looked_for_there_alone() -> None:
    """"^" before one alternative of two says nothing of the other."""
    assert [stands_at_the_start(one) for one in (r"^(\s*)row|x", r"^(\s*)(?:row|x)", r"(^|x)row", "^(?x)a")] == [False, True, False, False]
