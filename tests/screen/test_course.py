from __future__ import annotations

from stepper.plan.stitches.abbreviate import yarns_of
from stepper.screen.course import course_of
from stepper.session.progress import measure_progress
from stepper.session.state import Knitting, Position, State
from tests.screen.scenes import garment


def test_the_sums_agree_with_what_where_says() -> None:
    """The screen and `stepper where` must never differ by a stitch."""
    plan = garment()
    course = course_of(plan)
    for index, round_ in enumerate(plan.rounds):
        place = Position(index=index, stitch=round_.progress // 2)
        standing = measure_progress(plan, State(knitting=Knitting(place=place)))

        assert course.done(place) == standing.stitches_done
        assert course.stitches - course.done(place) == standing.stitches_left


def test_sections_begin_and_end_where_their_rounds_do() -> None:
    """Three rounds of neckband, six of yoke, three of body."""
    course = course_of(garment())

    assert course.section_begins == (0, 0, 0, 3, 3, 3, 3, 3, 3, 9, 9, 9)
    assert course.section_ends == (3, 3, 3, 9, 9, 9, 9, 9, 9, 12, 12, 12)
    assert (course.shaped, course.counted) == ((4, 10), (0, 4, 8))


def test_a_garment_without_rounds_is_no_fault() -> None:
    """Nothing to knit is nothing to add up."""
    course = course_of(type(garment())(title="", rounds=()))

    assert (course.stitches, course.done(Position())) == (0, 0)


def test_stitches_put_on_hold_are_in_no_yarn() -> None:
    """Their name stands where a yarn would."""
    assert yarns_of(garment().rounds[8].runs) == ("MC",)
    assert yarns_of(garment().rounds[5].runs) == ("MC", "A", "B")
