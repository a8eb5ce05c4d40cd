from __future__ import annotations

import pytest

from stepper.screen.keys import KEYS, Page, TypedEntry
from stepper.screen.ui_state import (
    FADES_S,
    LONGEST_LINE,
    KeyRequest,
    UIState,
    fade_typed,
    paste_text,
    press_key,
)
from stepper.session import cues
from tests.screen.scenes import Desk
from tests.tables import each_row

DESK = Desk().do("next")


class Hands:
    """Presses keys half a second apart and remembers what they asked for."""

    def __init__(self, desk: Desk = DESK) -> None:
        self.desk, self.ui, self.now = desk, UIState(), 0.0
        self.asked: list[KeyRequest] = []

    def press(self, *keys: str, every: float = 0.5) -> Hands:
        """Press keys."""
        for key in keys:
            self.now += every
            pressed = press_key(self.ui, key, self.now, self.desk.plan, self.desk.state)
            self.ui = pressed.ui
            self.asked.append(pressed.request)
        return self

    @property
    def cues(self) -> list[cues.Cue]:
        """All cues asked for."""
        return [cue for asked in self.asked for cue in asked.cues]


@each_row("row", KEYS)
def test_every_key_of_the_table_does_what_it_says(row: object) -> None:
    """Its cue, its page or its line, from a screen nobody touched."""
    assert isinstance(row, type(KEYS[0]))
    for key in row.keys:
        hands = Hands().press(*key.split(" ")) if key == "q q" else Hands().press(key)
        if row.cue is not None:
            assert hands.cues == [row.cue(DESK.state)]
        elif row.page is not None:
            assert hands.ui.page is row.page
        else:
            assert hands.ui.entry is row.entry


@pytest.mark.parametrize(
    ("keys", "cue"),
    [
        ("246|enter", cues.Count(stitches=246)),
        ("84|s", cues.AtStitch(stitch=84)),
        ("12|r", cues.GoTo(round_number=12)),
        ("3|t", cues.Tink(stitches=3)),
        ("2|y", cues.Choose(number=2)),
        ("2|4|backspace|5|enter", cues.Count(stitches=25)),
        ("246|space", cues.Next()),
        ("246|page down", cues.Next()),
        ("246|u", cues.Undo()),
    ],
)
def test_a_number_is_no_mode(keys: str, cue: cues.Cue) -> None:
    """What follows the figures uses them or lets them go; a pedal steps whatever was typed."""
    hands = Hands()
    for key in keys.split("|"):
        hands.press(*(list(key) if key.isdigit() else [key]))

    assert hands.cues == [cue]
    assert hands.ui.digits == ""


def test_figures_double_pressed_are_two_figures() -> None:
    """Sixty-six is typed quickly."""
    assert Hands().press("6", "6", every=0.05).ui.digits == "66"


def test_figures_left_alone_fade() -> None:
    """After a while enter is a step again."""
    hands = Hands().press("2", "4")
    hands.now += FADES_S
    assert fade_typed(hands.ui, hands.now).digits == ""
    hands.press("enter")

    assert hands.cues == [cues.Next()]


def test_enter_answers_what_was_asked() -> None:
    """In a count aloud figures add; where a part is to be counted they answer; else they are a count, as while a loop is
    asked after: "59 cannot be; 28 are expected there" answered nothing that was asked."""
    counting = Hands(Desk().do("next", "count with me")).press("3", "0", "enter")
    searching = Hands(Desk().do("go to yoke round 2", "count is 59", "no loop")).press("2", "8", "enter")
    looking = Hands(Desk().do("go to yoke round 2", "count is 59")).press("5", "8", "enter")

    assert looking.cues == [cues.Count(stitches=58)]
    assert counting.cues == [cues.Ten(stitches=30)]
    assert searching.cues == [cues.SectionCount(stitches=28)]


def test_the_enter_that_ends_a_number_is_not_also_a_step() -> None:
    """A contact that bounces must not count twice, once as a count and once as a step."""
    hands = Hands().press("6", "0")
    hands.press("enter", "enter", every=0.05)

    assert hands.cues == [cues.Count(stitches=60)]


def test_a_note_takes_every_letter_and_pedals_still_step() -> None:
    """PageDown can never be a letter; the note waits meanwhile."""
    hands = Hands().press("n", "u", "space", "q", "page down", "1", "enter")

    assert hands.cues == [cues.Next(), cues.Note(text="u q1")]
    assert hands.ui.entry is None


def test_space_in_an_empty_line_is_a_step() -> None:
    """Whoever opened a line and forgot it loses no step."""
    hands = Hands().press("n", "space")

    assert hands.cues == [cues.Next()]
    assert hands.ui.entry is None


@pytest.mark.parametrize(
    ("keys", "words"),
    [
        (["l", "3", "0", "enter"], "measures 30"),
        (["l", "1", "2", "space", "i", "n", "enter"], "measures 12 in"),
        (["g", "4", "2", "enter"], "weigh chalk 42 g"),
        (["g", "tab", "4", "2", "g", "enter"], "weigh pine 42g"),
        (["/", "f", "a", "r", "enter"], "far"),
        (["l", "enter"], ""),
    ],
)
def test_lengths_weights_and_words_go_through_the_same_door_as_the_voice(keys: list[str], words: str) -> None:
    """They are understood as if said."""
    hands = Hands().press(*keys)

    assert hands.asked[-1].words == words
    assert hands.ui.entry is None


@pytest.mark.parametrize("before", [["?"], ["d", "up", "left"], ["n", "a"], ["4", "2"], ["q"], ["j", "down"]])
def test_escape_leads_home_from_anywhere_and_silences(before: list[str]) -> None:
    """One key gets her out of everything."""
    hands = Hands().press(*before, "escape")

    assert hands.asked[-1].hush
    assert (hands.ui.page, hands.ui.entry, hands.ui.text, hands.ui.digits, hands.ui.leaving) == (
        Page.ROUND,
        None,
        "",
        "",
        False,
    )


@pytest.mark.parametrize("page", ["?", "j", "d", "o"])
@pytest.mark.parametrize("key", ["page down", "space"])
def test_a_pedal_steps_from_every_page_and_shows_the_round(page: str, key: str) -> None:
    """She need not look up to know that it counted."""
    hands = Hands().press(page, key)

    assert hands.cues == [cues.Next()]
    assert hands.ui.page is Page.ROUND


def test_a_held_step_is_taken_back_only_when_it_was_a_step() -> None:
    """The repeat of a held key is undone, and nothing else."""
    stepped = Hands(Desk().do("next", "next"))
    stepped.press("space", "space", every=0.5).press("space", "space", "space", every=0.03)
    noted = Hands(Desk().do("make a note soft"))
    noted.press("space", "space", every=0.5).press("space", "space", "space", every=0.03)

    assert stepped.cues == [cues.Next(), cues.Next(), cues.Undo()]
    assert noted.cues == [cues.Next(), cues.Next()]


def test_one_q_fades_and_two_in_a_burst_are_one() -> None:
    """Only two meant ones end the evening."""
    hands = Hands().press("q", "q", every=0.1)
    assert hands.cues == []
    hands.press("u", "q")
    assert hands.cues == [cues.Undo()]
    hands.now += FADES_S
    hands.press("q")

    assert cues.Enough() not in hands.cues


def test_enter_in_the_journal_goes_back_to_the_entry_marked() -> None:
    """And the screen returns to the round."""
    hands = Hands().press("j", "down", "down", "up", "enter")

    assert hands.asked[-1].back_to == 1
    assert hands.ui.page is Page.ROUND


def test_what_is_pasted_needs_an_open_line() -> None:
    """And is made safe and short there."""
    assert paste_text(UIState(), "abc") == UIState()
    assert paste_text(UIState(entry=TypedEntry.NOTE, text="a"), "b\x1bc\n").text == "ab c "
    assert len(paste_text(UIState(entry=TypedEntry.NOTE), "x" * 9999).text) == LONGEST_LINE


def test_keys_nobody_knows_do_nothing() -> None:
    """Not even a sound."""
    hands = Hands().press("Z", "é", "f12", "%")

    assert hands.cues == []
    assert hands.ui.page is Page.ROUND
