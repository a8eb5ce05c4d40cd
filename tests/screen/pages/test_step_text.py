from __future__ import annotations

from stepper.screen.drawing.rows import text_of
from stepper.screen.pages.step_text import draw_first, draw_minded, draw_step, word_step, write_step
from tests.plans import plan
from tests.screen.scenes import Desk, terminal

REMARKS = ("With A", "Catch A at 5")


def test_what_comes_first_is_said_at_the_beginning_and_what_is_minded_all_round_long() -> None:
    """In the second repeat a catch holds as in the first; a change of yarn is said once."""
    desk = Desk(plan(("body", ["co20", ("(k2:A k8)x2", {"remarks": REMARKS})]))).do("next")
    begun = word_step(desk.scene())
    half_way = word_step(desk.do("stitch 10").scene())

    assert begun.first == (REMARKS[0],)
    assert half_way.first == ()
    assert begun.minded == half_way.minded == (f"{REMARKS[1]}.",)


def test_clauses_stand_on_lines_of_their_own() -> None:
    """Yoke round 2 from stitch 30 on, by hand: the fifth repeat is half knitted."""
    step = word_step(Desk().do("go to first increase", "stitch 30").scene())

    assert step.clauses == ("Knit four, make one;", "then knit six, make one, five times.")
    assert [text_of(row) for row in write_step(step, 60)] == list(step.clauses)


def test_letters_are_plain_only_if_there_is_no_room_for_large_ones() -> None:
    """Large whenever it fits, whole whenever it does not."""
    step = word_step(Desk().scene())

    assert len(draw_step(step, terminal(), 60, 8, 8)) > 1
    assert len(draw_step(step, terminal(), 60, 3, 4)) == 4
    assert [text_of(row) for row in draw_step(step, terminal(), 60, 3, 3)] == ["Cast on sixty."]


def test_remarks_are_wrapped_and_never_cut() -> None:
    """Each word of both is there in a window of twenty columns."""
    desk = Desk(plan(("body", ["co20", ("(k2:A k8)x2", {"remarks": REMARKS})]))).do("next")
    step = word_step(desk.scene())
    first = " ".join(text_of(row).strip(" ?") for row in draw_first(step, terminal(), 20))
    minded = " ".join(text_of(row) for row in draw_minded(step, 20))

    assert first == REMARKS[0]
    assert minded == f"{REMARKS[1]}."


def test_a_stop_is_shown_alone_until_it_is_answered() -> None:
    """With the stitches beside it she would knit them, and her next key would be taken for the stop."""
    remarks = ("Change to 4 mm needles", "with RS facing", "pick up along the right front edge")
    desk = Desk(plan(("body", ["co20", ("(k2:A k8)x2", {"remarks": remarks})]))).do("next")
    stop, step = word_step(desk.scene()), word_step(desk.do("next").scene())

    assert stop.clauses == tuple(f"{each[0].upper()}{each[1:]}." for each in remarks)
    assert (stop.first, stop.minded, step.first) == ((), (), ())
    assert step.clauses == ("Two pine, eight chalk, two times.",)
