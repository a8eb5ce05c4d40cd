"""The record of a garment."""

from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.plan.compile import compile_plan
from stepper.plan.model import Plan
from stepper.plan.under_way.lengthen import LengthCorrection
from stepper.plan.under_way.respace import Respacing
from stepper.project.model import Project
from stepper.report.notes import write_notes
from stepper.session.events import (
    Advanced,
    Counted,
    Event,
    LifelineLaid,
    Measured,
    Mend,
    Noted,
    Opened,
    Placed,
    PlanChanged,
    Remedied,
    ReminderSet,
    Respaced,
    Undone,
    Weighed,
)
from stepper.session.state import Position, Reminder
from tests.fixtures import plan_named
from tests.plan.test_blend import switchback

AT = "2027-01-05T20:00:00+01:00"


def knitted() -> tuple[Project, Plan]:
    """Return the sample with its plan."""
    return switchback(), plan_named("switchback")


def record(*events: Event, units: str = "cm") -> str:
    """Write the record of some events."""
    project, plan = knitted()
    changed = replace(project, units=units), replace(plan, units=units)
    return "\n".join(write_notes(*changed, enumerate((Opened(at=AT, fingerprint="x"), *events), start=1)))


def test_the_record_holds_the_blend_the_yarn_the_needles_and_the_alterations() -> None:
    """What somebody else would need to knit the same."""
    text = record()
    assert "- Size 4\n- Size 2 from Final increase on, 225 to 246 stitches in that round" in text
    assert "- Yarn MC: chalk, 175 m to 50 g, 6 skeins bought" in text
    assert "- Needles: 3.5 mm, 3.75 mm" in text
    assert (
        "- Gauge, stockinette: 22 stitches and 30 rounds to 10 cm; blocked 21.5 stitches and 29 rounds"
        in text
    )
    assert "- no bobbles (no round that is knitted differs)" in text
    assert "- front rib two rounds longer" in text
    assert "Nothing has been knitted yet." in text


def test_an_alteration_says_where_it_shows() -> None:
    """12 rounds more in the body make a stretch of rounds that are all marked."""
    project, _ = knitted()
    from stepper.project.keys.alterations import read_alteration

    rule = read_alteration("body 4 cm longer", project.sections[0].place)
    assert rule is not None
    altered = replace(project, alterations=(rule,))
    plan = compile_plan(altered).plan
    assert plan is not None
    marked = sum(bool(round_.altered) for round_ in plan.rounds)
    assert f"- body 4 cm longer ({marked} rounds in body)" in list(write_notes(altered, plan, ()))


@pytest.mark.parametrize(
    ("event", "line"),
    [
        (
            Counted(at=AT, place=Position(index=40), stitches=245, expected=246, expected_end=246),
            "counted 245 where 246 were expected, yoke round 30 (Final increase)",
        ),
        (
            Remedied(at=AT, origin=Position(index=40), place=Position(index=40), remedy="accept", difference=-1,
                     stitches=0, minutes=0.0, mend=Mend(index=41, stitch=3, change=1)),
            "1 too few accepted; made good by working 1 more, yoke round 31",
        ),
        (
            Remedied(at=AT, origin=Position(index=40), place=Position(index=30), remedy="rip", difference=2,
                     stitches=900, minutes=30.0),
            "2 too many, ripped back, yoke round 20",
        ),
        (
            Respaced(at=AT, origin=Position(index=40), place=Position(index=40), made=10, planned=12,
                     respacing=Respacing(index=40, section="yoke", before=225, after=246, places=())),
            "increases or decreases respaced, 10 made where 12 were planned, yoke round 30 (Final increase)",
        ),
        (
            Measured(at=AT, place=Position(index=60), length_mm=300, section="body", rounds_before=96,
                     correction=LengthCorrection(stretch=1, rounds=90, rounds_per_10cm=29.0)),
            "body measured 30 cm; worked for 90 rounds instead of 96",
        ),
        (Weighed(at=AT, place=Position(), yarn="A", grams=42.5), "42.5 g of pine left"),
        (Noted(at=AT, place=Position(), text="ran short of ember"), "ran short of ember"),
        (LifelineLaid(at=AT, place=Position(index=40)), "lifeline, yoke round 30 (Final increase)"),
        (
            PlanChanged(at=AT, old_fingerprint="a", new_fingerprint="b", origin=Position(), place=Position(index=3),
                        corrections=(), changes=(), have=1, want=1),
            "the pattern was changed, neckband round 4",
        ),
    ],
)  # fmt: skip
def test_where_the_knitting_left_the_plan_is_told_with_its_day(event: Event, line: str) -> None:
    """Counts, remedies, spacing, lengths, weights, notes."""
    text = record(event)
    assert f"- {line[0].upper()}{line[1:]}" in text.split("### 5 January 2027\n")[1].splitlines()


def test_lengths_are_in_the_unit_of_the_file() -> None:
    """300 mm are 11.81 in. Source: 1 in = 25.4 mm exactly."""
    measured = Measured(at=AT, place=Position(), length_mm=300, section="body")
    assert "Body measured 11.81 in" in record(measured, units="in")


def test_a_finished_part_is_told_with_its_evening_even_after_midnight() -> None:
    """The neckband has eleven rounds; what is knitted at half past twelve belongs to the evening before."""
    ending = Placed(
        at="2027-01-06T00:30:00+01:00", origin=Position(index=9), place=Position(index=11), stitches=200
    )
    text = record(ending, replace(ending, origin=Position(index=11), place=Position(index=13)))
    assert text.count("finished") == 1
    assert "### 5 January 2027\n\n- Neckband finished" in text
    assert "- On 5 January 2027, 1 sitting" in text
    assert "of knitting, breaks left out" not in record(Noted(at=AT, place=Position(), text="a"))


def test_reminders_are_no_part_of_what_was_done() -> None:
    """Nobody writes down that she wanted to be reminded."""
    text = record(ReminderSet(at=AT, place=Position(), reminder=Reminder(index=9, text="try it on")))
    assert "try it on" not in text


def test_what_was_taken_back_is_left_out() -> None:
    """An undone count is no count, and neither is the undoing."""
    wrong = Counted(at=AT, place=Position(index=40), stitches=99, expected=246, expected_end=246)
    text = record(wrong, Undone(at=AT, seq=2))
    assert "99" not in text.split("## As it went")[1]


def test_a_count_made_again_at_once_is_told_once() -> None:
    """She miscounted and counted again: the record of a garment holds what was so, not each slip of the finger."""
    wrong = Counted(at=AT, place=Position(index=40), stitches=240, expected=246, expected_end=246)
    right = replace(wrong, stitches=246)
    assert "ounted" not in record(wrong, right).split("## As it went")[1]
    still = record(wrong, replace(wrong, stitches=245)).split("## As it went")[1]
    assert still.count("ounted") == 1
    assert "Counted 245 where 246 were expected" in still
    moved = Advanced(at=AT, origin=Position(index=40), place=Position(index=41), stitches=9)
    assert "Counted 240" in record(wrong, moved, replace(right, place=Position(index=41)))


def test_each_day_is_named_once() -> None:
    """As in a notebook: the day above, what was done below it."""
    notes = [Noted(at=AT, place=Position(), text=text) for text in ("one", "two")]
    later = Noted(at="2027-01-06T20:00:00+01:00", place=Position(), text="three")
    days = record(*notes, later).split("### ")[1:]
    assert [each.split() for each in days] == [
        ["5", "January", "2027", "-", "One", "-", "Two"],
        ["6", "January", "2027", "-", "Three"],
    ]


def test_days_sittings_time_and_repeated_rounds_are_told() -> None:
    """Five minutes on the first evening, four on the second; round 2 was worked twice."""

    def step(index: int, at: str) -> Advanced:
        return Advanced(at=at, origin=Position(index=index), place=Position(index=index + 1), stitches=9)

    text = record(
        step(0, "2027-01-05T20:02:00+01:00"),
        step(1, "2027-01-05T20:05:00+01:00"),
        Opened(at="2027-01-09T20:00:00+01:00", fingerprint="x"),
        step(1, "2027-01-09T20:04:00+01:00"),
    )
    assert "- From 5 January 2027 to 9 January 2027, on 2 days, 2 sittings" in text
    assert "- 9 min of knitting, breaks left out" in text
    assert "- Worked again: Neckband, round 2 of 11" in text


def test_a_count_gone_on_with_to_the_end_is_not_called_made_good() -> None:
    """Nothing makes it good, and the record says so."""
    _, plan = knitted()
    place = Position(index=len(plan.rounds) - 3)
    mend = Mend(index=len(plan.rounds), stitch=0, change=1, origin=place.index)
    event = Remedied(
        at=AT, origin=place, place=place, remedy="accept", difference=-1, stitches=1, minutes=0.1, mend=mend
    )
    assert "1 too few accepted and worked to the end, from " in record(event)


def test_free_text_becomes_no_tag_no_link_and_no_other_line() -> None:
    """Notes are shared and shown in a browser; a title from somewhere must not run, fetch or hide anything there."""
    project, plan = knitted()
    title = "A <script>x</script> <!-- ![y](http://a) [z][q]\n# Sound\n[q]: b k < 5 > 3"
    lines = list(write_notes(replace(project, title=title), plan, []))
    assert lines[0] == r"# A \<script>x\</script> \<!-- ![y\](http://a) [z\][q] # Sound [q\]: b k < 5 > 3"
    assert not any("\n" in line for line in lines)
