from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.plan.compile import compile_plan
from stepper.plan.model import Plan
from stepper.plan.under_way.resuming import follow, resume
from stepper.project.reader import read_project
from tests.fixtures import SAMPLES
from tests.plans import plan

TEXTS = {path.stem: path.read_text(encoding="utf-8") for path in SAMPLES}


def compiled(text: str) -> Plan:
    """Compile a project text."""
    reading = read_project(text)
    assert reading.project is not None, reading.problems
    made = compile_plan(reading.project).plan
    assert made is not None
    return made


def index_of(garment: Plan, section: str, number: int) -> int:
    """Return the index of a round of a section."""
    return next(each.index for each in garment.rounds if (each.section, each.number) == (section, number))


@pytest.mark.parametrize("name", TEXTS)
def test_a_renamed_section_keeps_every_place(name: str) -> None:
    """A name is not in the fabric: the place was thrown to the end of the section once."""
    old = compiled(TEXTS[name])
    for section in old.sections:
        rounds = tuple(
            replace(each, section="main part" if each.section == section else each.section)
            for each in old.rounds
        )
        for index in (0, 1, len(rounds) // 2, len(rounds) - 1, len(rounds)):
            found = resume(old, replace(old, rounds=rounds), index=index, stitch=0)
            assert (found.index, found.choices) == (index, ()), section


def test_a_line_deleted_below_the_place_skips_nothing() -> None:
    """Two plain rounds before the chart taken out, and she is in the chart: she goes on in the same round of
    the chart, which is in the new file unchanged."""
    old = compiled(TEXTS["hat"])
    new = compiled(TEXTS["hat"].replace("      Knit 2 rnds.\n      Chart lantern", "      Chart lantern"))
    index = index_of(old, "band", 7)

    found = resume(old, new, index=index, stitch=0)

    assert (found.index, found.choices) == (index - 2, ())
    assert new.rounds[found.index].chart_round == old.rounds[index].chart_round == 5


def test_a_blend_changed_in_its_own_increase_round_is_asked_for() -> None:
    """In the middle of the round of the switch, with other increases in it now, no count is claimed: back to
    where both are the same, or on with a count that is off, each with both figures."""
    old = compiled(TEXTS["switchback"])
    new = compiled(
        TEXTS["switchback"].replace("{from: Final increase, size: 2}", "{from: Final increase, size: 1}")
    )
    increase = next(each for each in old.rounds if each.label == "Final increase")
    assert new.rounds[increase.index].after != increase.after

    found = resume(old, new, index=increase.index, stitch=120)

    assert found.choices
    back, on = found.choices[0], found.choices[1]
    assert (back.index, back.have, back.stitch + back.stitches_back) == (increase.index, back.want, 120)
    assert 0 < back.stitch < 120
    assert (on.index, on.stitch, on.have != on.want) == (increase.index, 120, True)


def test_two_that_are_alike_are_told_apart_by_their_names_or_asked() -> None:
    """The left mitten half done, and the right one stands first now: their rounds are the same."""
    mittens = [("left", ["co20", "k20", "k20", "bo20"]), ("right", ["co20", "k20", "k20", "bo20"])]
    old, new = plan(*mittens), plan(*reversed(mittens))

    found = resume(old, new, index=2, stitch=0)

    assert {(each.section, each.number) for each in found.choices} == {("right", 3), ("left", 3)}
    assert not resume(old, old, index=2, stitch=0).choices


def test_stitches_on_hold_are_a_part_of_the_place() -> None:
    """The left sleeve is taken out of the file while she knits the right one: the left one she has is not on
    hold, which the new plan says it is."""
    text = TEXTS["switchback"]
    start, end = text.index("  - name: left sleeve"), text.index("  - name: right sleeve")
    old, new = compiled(text), compiled(text[:start] + text[end:])

    assert resume(old, new, index=index_of(old, "right sleeve", 40), stitch=0).choices


def test_what_is_worked_of_a_round_says_where_it_lies() -> None:
    """A round put in just before the one half worked is behind it: the stitches on the needle say so."""
    old = plan(("yoke", ["co20", "k20", "k10 m1 k10", "p21"]))
    new = plan(("yoke", ["co20", "k20", "k20", "k10 m1 k10", "p21"]))

    assert resume(old, new, index=2, stitch=0).index == 2
    assert (resume(old, new, index=2, stitch=15).index, resume(old, new, index=2, stitch=15).choices) == (
        3,
        (),
    )


def test_every_choice_says_what_is_on_the_needles_and_what_comes_off() -> None:
    """She has to know before she says a number."""
    old = plan(("yoke", ["co20", "k20", "k10 m1 k10", "p21", "k21"]))
    new = plan(("yoke", ["co20", "k20", "k5 m1 k10 m1 k5", "p22", "k22"]))

    on, back = resume(old, new, index=4, stitch=3).choices

    assert (on.index, on.stitch, on.have, on.want, on.rounds_back) == (4, 3, 21, 22, 0)
    assert (back.index, back.stitch, back.have, back.want) == (2, 0, 20, 20)
    assert (back.rounds_back, back.stitches_back) == (2, 3)
    on, back = resume(old, new, index=4, stitch=0).choices
    assert (on.stitches_back, back.rounds_back, back.stitches_back) == (0, 2, 0)


def test_a_round_is_followed_into_another_plan_or_is_gone() -> None:
    """A lifeline, a mend and a round spread anew go with their round."""
    old = plan(("yoke", ["co20", "k20", "k10 m1 k10", "p21", "bo21"]))
    new = plan(("yoke", ["co20", "k20", "k20", "k10 m1 k10", "p21", "bo21"]))
    gone = plan(("yoke", ["co20", "k20", "bo20"]))

    assert [follow(old, new, index) for index in range(6)] == [0, 1, 3, 4, 5, 6]
    assert follow(old, gone, 2) is None


def _even(line: str) -> Plan:
    """Return a yoke with a round whose increases are spread evenly."""
    after = plan(("yoke", ["co20", line])).rounds[1].after
    made = plan(("yoke", ["co20", "k20", line, f"k{after}", f"bo{after}"]))
    return replace(made, rounds=(*made.rounds[:2], replace(made.rounds[2], evenly=True), *made.rounds[3:]))


@pytest.mark.parametrize(
    ("stitch", "made", "used"), [(3, 0, 3), (5, 1, 4), (10, 2, 8), (11, 2, 9), (12, 2, 10), (24, 4, 20)]
)
def test_in_a_round_spread_otherwise_she_may_keep_what_is_made(stitch: int, made: int, used: int) -> None:
    """Increases after every fourth of twenty stitches, and in the new file after the second and every fourth from there.
    Four ways are offered, as many as are kept in mind: the rest spread anew behind those made, back to where both part, on
    as it stands, or the round from its beginning. By hand: one in every five stitches worked is an increase."""
    old, new = _even("(k4 m1)x5"), _even("k2 m1 (k4 m1)x4 k2")
    kept, back, on, begun = resume(old, new, index=2, stitch=stitch).choices
    assert (kept.index, kept.made, kept.stitch, kept.have, kept.want) == (2, made, used + made, 20 + made, 20 + made)
    assert kept.places[:made] == (4, 8, 12, 16, 20)[:made]
    assert all(place >= used for place in kept.places[made:])
    assert (len(kept.places), kept.before, kept.after) == (5, 20, 25)
    assert (back.index, back.stitch, back.stitches_back, back.have) == (2, 2, stitch - 2, 20)
    assert (on.index, on.stitch, on.have, on.places) == (2, stitch, 20 + made, ())
    assert (begun.index, begun.stitch, begun.stitches_back, begun.have) == (2, 0, stitch, 20)
