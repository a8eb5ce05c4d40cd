from __future__ import annotations

from dataclasses import replace

from stepper.plan.under_way.resuming import PlaceChoice
from stepper.screen.drawing.rows import row_width, text_of
from stepper.screen.drawing.style import Badge, Depth
from stepper.screen.open_questions import find_asked
from stepper.screen.pages.count_badge import count_expected, draw_verdict, judge_count
from stepper.screen.ui_state import pick_number_cue
from stepper.session.cues import Choose
from stepper.session.state import Question
from tests.screen.scenes import Desk
from tests.tables import each_row


@each_row(
    ("words", "badge", "text"),
    [
        ([], Badge.CALM, "– not counted  yet"),
        (["next"], Badge.ASKS, "? count now  60 expected, after the cast-on"),
        (["next", "count is 60"], Badge.STANDS, "✓ count stands  60 counted here"),
        (["next", "count is 60", "next"], Badge.STANDS, "✓ count stands  60 counted 1 round ago"),
        (["next", "count is 60", "stitch 9"], Badge.STANDS, "✓ count stands  60 counted in this round"),
        (["next", "count is 58"], Badge.OFF, "! count is off  2 too few"),
        (["next", "count is 61"], Badge.OFF, "! count is off  1 too many"),
        (["next", "count with me", "ten", "ten"], Badge.ASKS, "? counting  20 so far"),
        (["next", "count is 60", "go to yoke round 5"], Badge.CALM, "– not counted  yet"),
        (["next", "count is 60", "next", "next", "go to neckband round 2"], Badge.STANDS, "✓ count stands"),
        (["next", "next", "count is 60", "go to neckband round 1"], Badge.CALM, "– not counted"),
        (["next", "next", "count is 60", "back", "back"], Badge.CALM, "– not counted"),
        (["next", "next"], Badge.CALM, "– not counted  in 120 stitches"),
        (["next", "never ask"], Badge.CALM, "– not counted  in 60 stitches"),
        (["next", "count is 60", "undo that"], Badge.ASKS, "? count now  60 expected, after the cast-on"),
    ],
)
def test_the_count_stands_or_it_is_said_how_it_stands(words: list[str], badge: Badge, text: str) -> None:
    """One word and the figure that matters."""
    desk = Desk().do(*words)

    assert judge_count(desk.plan, desk.state).badge is badge
    (shown,) = draw_verdict(judge_count(desk.plan, desk.state), Depth.TRUE, 80, blocks=True)
    assert text_of(shown).strip().startswith(text)


def test_a_number_that_the_question_names_is_not_said_twice() -> None:
    """Two sentences with the same figure below each other read as two counts."""
    desk = Desk().do("go to yoke round 2", "count is 59", "no loop")
    asked = find_asked(desk.plan, desk.state)

    assert f"{asked.expect} expected" in " ".join(asked.questions)
    assert judge_count(desk.plan, desk.state, asked).detail == "1 too few"


def test_a_narrow_screen_writes_the_detail_below_its_badge_and_keeps_the_number() -> None:
    """The number a count should come to stands at the end: cut there, the question would be worth nothing."""
    desk = Desk().do("go to yoke round 2", "count is 59", "no loop")
    asked = replace(find_asked(desk.plan, desk.state), questions=("Count once more.",))
    rows = draw_verdict(judge_count(desk.plan, desk.state, asked), Depth.NONE, 38, blocks=True)

    assert asked.expect is not None
    assert text_of(rows[0]).strip() == "! count is off"
    assert " ".join(map(text_of, rows)).endswith(f"should be {asked.expect}")
    assert all(row_width(each) <= 38 for each in rows)


def test_a_place_that_is_asked_for_comes_before_any_count() -> None:
    """Nothing can be said of a count as long as it is open where she is."""
    choice = PlaceChoice(index=1, stitch=0, section="yoke", number=1, flat=False, label=None, have=9, want=8)
    state = replace(Desk().state, question=Question(new_fingerprint="b", choices=(choice,)))

    found = judge_count(Desk().plan, state)

    assert (found.badge, found.word) == (Badge.ASKS, "which place")
    assert found.detail == "First say where you go on: take number 1."
    assert pick_number_cue(Desk().plan, state, 1) == Choose(number=1)


def test_a_count_made_ahead_of_the_end_is_not_asked_for_again() -> None:
    """70 counted on the last increase, the round being finished with it: the count after the increases is that one."""
    desk = Desk().do("go to yoke round 2", "stitch 69", "count is 70", "yes")

    assert desk.state.place.index == 5
    assert judge_count(desk.plan, desk.state).badge is Badge.STANDS


def test_what_is_asked_back_is_shown_until_it_is_answered() -> None:
    """She looks up and sees what waits for her yes."""
    desk = Desk().do("go to yoke round 2", "stitch 69", "count is 70")

    verdict = judge_count(desk.plan, desk.state)
    assert (verdict.badge, verdict.detail) == (Badge.ASKS, "70 and the round finished?")


def test_stitches_expected_are_those_worked_out_by_hand() -> None:
    """Yoke round 2 takes 60 stitches to 70, an increase after each sixth: by stitch 30 of the new round four
    increases are made, so 64 are on the needles (arithmetic)."""
    desk = Desk().do("go to yoke round 2", "stitch 30")

    round_ = desk.plan.rounds[desk.state.place.index]
    assert (round_.before, round_.after) == (60, 70)
    assert count_expected(desk.plan, desk.state) == (64, 70)
