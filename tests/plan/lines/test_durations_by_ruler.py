"""How long a pattern is worked, against a knitter with a ruler who looks after every row.

She works one row after the other as they are written, lays the ruler on, and stops at the row that is nearest to what is asked
among those she may stop at; midway she works on. Both reckonings are the project's own; that rows of one length stand at the
gauge, and that right-side and wrong-side rows take turns, is common practice.
"""

from __future__ import annotations

from fractions import Fraction

from hypothesis import given, settings
from hypothesis import strategies as st

from tests.plan.test_compile import plan_of
from tests.project.samples import project

ROW_MM = Fraction(100, 28)
"""Height of a row at the gauge of the sample file. Unit: mm."""
MOST = 120
"""Rows that no drawn length comes to."""


@given(
    flat=st.booleans(),
    rows=st.integers(1, 4),
    begun=st.integers(0, 5),
    mm=st.integers(6, 150),
    how=st.sampled_from(["for", "measures", "ending with a row", "ending with a side"]),
    data=st.data(),
)
@settings(max_examples=100)
def test_a_length_ends_with_the_nearest_row_that_it_may_end_with(
    flat: bool, rows: int, begun: int, mm: int, how: str, data: st.DataObject
) -> None:
    """A row too many is on the wrong side, and a row of the pattern too few breaks the pattern where the next one begins."""
    noun = "row" if flat else "round"
    if flat and rows % 2:
        rows += 1
    begun -= begun % 2 if flat else 0
    written = [f"{noun.capitalize()} {number}: K{number}, p to end." for number in range(1, rows + 1)]
    lead = [f"Knit {begun} {noun}s."] if begun else []
    ending, every, over = "", 1, 0
    if how == "ending with a row" and rows > 1:
        row = data.draw(st.integers(1, rows))
        ending, every, over = f", ending with {noun} {row}", rows, row
    elif how == "ending with a side" and flat:
        side = data.draw(st.sampled_from(["RS", "WS"]))
        ending, every, over = f", ending with a {side} row", 2, int(side == "RS")
    repeated = f"Rep {noun}s 1-{rows}" if rows > 1 else f"Rep {noun} 1"
    of_piece = how != "for"
    below = begun + rows if of_piece else 0
    target = mm + (int(below * ROW_MM) if of_piece else 0)
    line = f"{repeated} {'until piece measures' if of_piece else 'for'} {target / 10:g} cm{ending}."
    manner = "Work flat." if flat else "Join in the round."
    plan = plan_of(
        project(
            "\n".join(["Cast on 20 sts.", manner, *lead, *written, line, "Bind off."]), sizes="S", size="S"
        )
    )
    # Laid on after every row; of two that are as near she takes the later.
    tried = [number for number in range(1, MOST) if (number - over) % every == 0]
    best = min(tried, key=lambda number: (abs((below + number) * ROW_MM - target), -number))
    worked = [(each.side, each.instruction) for each in plan.rounds[1 + begun : -1]]
    expected = []
    for at in range(rows + best):
        side = "WS" if flat and (begun + at) % 2 else "RS"
        knits = at % rows + 1
        expected.append((side, f"k{knits}, p{20 - knits}"))
    assert worked == expected


@given(
    flat=st.booleans(),
    rows=st.integers(1, 4),
    stripes=st.lists(st.tuples(st.integers(1, 3), st.sampled_from(["MC", "A"])), min_size=2, max_size=3),
    number=st.integers(1, 17),
)
@settings(max_examples=50)
def test_stripes_take_the_yarn_on_the_next_card(
    flat: bool, rows: int, stripes: list[tuple[int, str]], number: int
) -> None:
    """She has a card for every row of the stripes and one for every row of the pattern, and puts each under its pile when it is used."""
    rows += flat and rows % 2
    noun = "row" if flat else "rnd"
    written = [f"{noun.capitalize()} {at}: K{at}, p to end." for at in range(1, rows + 1)]
    said = ", ".join(f"{often} {noun}{'s' * (often > 1)} {yarn}" for often, yarn in stripes)
    manner = "Work flat." if flat else "Join in the round."
    line = f"Work {number} {noun}{'s' * (number > 1)} in stripes of {said}."
    plan = plan_of(
        project("\n".join(["Cast on 20 sts.", manner, *written, line, "Bind off."]), sizes="S", size="S")
    )
    yarns = [yarn for often, yarn in stripes for _ in range(often)]
    patterns = [f"k{at}, p{20 - at}" for at in range(1, rows + 1)]
    expected = []
    for at in range(number):
        expected.append(("WS" if flat and (rows + at) % 2 else "RS", patterns[0], yarns[0]))
        yarns.append(yarns.pop(0))
        patterns.append(patterns.pop(0))
    made = plan.rounds[1 + rows : -1]
    assert [(each.side, each.instruction, each.runs[0].yarn) for each in made] == expected
    assert all(len({run.yarn for run in each.runs}) == 1 for each in made)
