"""Another needle, or none: the rounds worked on it say so, the printed one is named beside it."""

from __future__ import annotations

from stepper.plan.alter_needles import own_needles
from stepper.plan.model import Plan
from stepper.project.reader import read_project
from tests.plan.test_compile import plan_of

TEXT = """\
title: Bramble cowl
sizes: one
yarn: {{MC: oat}}
gauge:
  rib: {{needle: 3.5 mm, stitches: 22, rounds: 30}}
  plain: {{needle: 4 mm, stitches: 20, rounds: 28}}
alterations:
  - {rule}
sections:
  - name: band
    gauge: rib
    work: |
      Cast on 20 sts.
      Join in the round.
      Knit 2 rounds.
      Change to 4 mm needles.
      Knit 2 rounds.
  - name: body
    gauge: plain
    work: |
      Knit 2 rounds.
      Change to 4.5 mm needles.
      Knit 1 round.
      Bind off.
"""


def needles_of(plan: Plan) -> list[tuple[float | None, bool]]:
    """Return the needle of each round and whether it is marked as the knitter's own."""
    return [(round_.needle_mm, bool(round_.altered)) for round_ in plan.rounds]


def test_a_needle_instead_of_a_printed_one_from_where_the_pattern_changes_to_it() -> None:
    """Cast-on and ribbing stay on 3.5 mm; what is printed for 4 mm is worked on 3.75 mm."""
    plan = plan_of(TEXT.format(rule="needle 3.75 mm instead of 4 mm"))
    assert needles_of(plan) == [
        (3.5, False), (3.5, False), (3.5, False), (3.75, True), (3.75, True),
        (3.75, True), (3.75, True), (4.5, False), (4.5, False),
    ]  # fmt: skip
    remarks = [remark for round_ in plan.rounds for remark in round_.remarks]
    assert "your own needle, 3.75 instead of 4 mm" in remarks


def test_a_needle_for_one_section_leaves_the_others_as_printed() -> None:
    """A section is meant by its name."""
    plan = plan_of(TEXT.format(rule="needle 3.75 mm instead of 4 mm in body"))
    assert needles_of(plan)[3:7] == [(4.0, False), (4.0, False), (3.75, True), (3.75, True)]


def test_no_needle_change_keeps_the_needle_in_hand_and_says_what_is_printed() -> None:
    """Nothing is silently left out."""
    plan = plan_of(TEXT.format(rule="no needle change in band"))
    assert needles_of(plan)[:7] == [(3.5, False)] * 5 + [(4.0, False)] * 2
    remarks = [remark for round_ in plan.rounds for remark in round_.remarks]
    assert "keep your needle; the pattern changes to 4 mm" in remarks
    everywhere = plan_of(TEXT.format(rule="no needle change"))
    assert {needle for needle, _ in needles_of(everywhere)} == {3.5}
    assert needles_of(everywhere)[5] == (3.5, True)


def test_a_rule_that_finds_no_such_needle_changes_nothing() -> None:
    """It may be meant for another part of the pattern; nothing is marked."""
    plan = plan_of(TEXT.format(rule="needle 5 mm instead of 6 mm"))
    assert not any(marked for _, marked in needles_of(plan))
    project = read_project(TEXT.format(rule="needle 5 mm instead of 6 mm")).project
    assert project is not None
    assert own_needles(project) == {}


def test_a_needle_that_a_section_begins_with_is_said_where_its_lines_name_none() -> None:
    """She has the rib's needle in hand: nothing else would tell her to change it."""
    text = TEXT.format(rule="needle 3.75 mm instead of 4 mm in body").replace("      Change to 4 mm needles.\n", "")
    first = next(round_ for round_ in plan_of(text).rounds if round_.section == "body")
    assert first.remarks == ("your own needle, 3.75 instead of 4 mm", "change to 3.75 mm needles")
    printed = plan_of(text.replace(" in body\n", " in band\n"))
    assert next(each for each in printed.rounds if each.section == "body").remarks == ("change to 4 mm needles",)
