from __future__ import annotations

import time
from pathlib import Path

import pytest

from stepper.mouth.fakes import RecordingSpeaker
from stepper.screen.device_status import GETTING_READY
from stepper.screen.drawing.style import Depth
from stepper.session.events import Advanced
from tests.screen.emulated import Emulated
from tests.screen.scenes import Desk
from tests.waiting import least_of

GOLDEN = Path(__file__).parent / "golden"


def test_space_steps_and_the_screen_shows_the_next_step() -> None:
    """The key she uses most."""
    with Emulated(Desk(), columns=58) as shown:
        assert "Cast on sixty." in shown.text

        shown.press("space")

        assert "Knit two, purl two, fifteen times." in shown.text
        assert "count now" in shown.text
        assert shown.desk.state.place.index == 1


def test_a_count_is_typed_and_kept_without_leaving_the_round() -> None:
    """Figures, enter, and the count stands."""
    with Emulated(Desk()) as shown:
        shown.press("space", "6", "0")
        assert "60   enter count" in shown.text
        shown.press("enter")

        assert "count stands  60 counted here" in shown.text


def test_a_note_goes_in_and_its_space_is_no_step() -> None:
    """Words typed are words."""
    with Emulated(Desk()) as shown:
        shown.press("n", "a", "space", "b", "enter")

        assert "Noted: a b" in shown.text
        assert shown.desk.state.place.index == 0


def test_going_back_in_the_journal_is_an_undo_that_loses_nothing() -> None:
    """Three steps, back to after the first, and forward again."""
    with Emulated(Desk()) as shown:
        shown.press("space", "space", "space", "j", "down", "down")
        assert "Enter takes back 2" in shown.text
        shown.press("enter")
        assert shown.desk.state.place.index == 1
        shown.press("r", "r")

        assert shown.desk.state.place.index == 3
        assert sum(isinstance(event, Advanced) for _, event in shown.desk.events) == 3


def test_a_held_pedal_steps_once() -> None:
    """A burst of PageDown within a quarter of a second each is one press."""
    with Emulated(Desk()) as shown:
        shown.press("page down")
        shown.now -= 0.45
        for _ in range(20):
            shown.now -= 0.45
            shown.press("page down")

        assert shown.desk.state.place.index == 1


def test_escape_silences_at_once_and_returns_to_the_round() -> None:
    """The one key for enough of that."""
    speaker = RecordingSpeaker(seconds_per_word=1.0)
    speaker.say("a long line that goes on and on")
    with Emulated(Desk(), columns=58, voice=speaker) as shown:
        shown.press("?")
        assert "Keys and words" in shown.text
        assert speaker.speaking
        shown.press("escape")
        shown.wait_for(lambda: "Cast on sixty." in shown.text)

        assert not speaker.speaking


def test_the_mouth_is_shown_speaking_until_it_is_quiet() -> None:
    """Nothing is pressed, and still the screen says when it is over."""
    speaker = RecordingSpeaker(seconds_per_word=60.0)
    speaker.say("one two three four five six seven eight nine ten")
    with Emulated(Desk(), voice=speaker) as shown:
        assert "speaking" in shown.text
        speaker.silence()  # the line ends here, however long the screen took to come up
        shown.wait_for(lambda: "Voice on." in shown.text)


def test_words_heard_are_shown_with_what_they_did() -> None:
    """Heard and done, heard and not understood, heard while the ears were closed."""
    with Emulated(Desk(), columns=58, why_no_ears="") as shown:
        assert "listening" in shown.text
        shown.screen.hear("next step")
        shown.wait_for(lambda: 'Heard "next step": done' in shown.text)
        assert "Knit two, purl two" in shown.text
        shown.screen.hear("next stop")
        shown.wait_for(lambda: 'Heard "next stop": nothing, not understood' in shown.text)
        shown.press("e")
        assert "asleep" in shown.text
        shown.screen.hear("next step")
        shown.wait_for(lambda: "nothing; the ears are closed" in shown.text)
        shown.screen.report_ears("the device has gone")
        shown.wait_for(lambda: "No ears: the device has gone." in shown.text)


def test_a_voice_that_goes_on_by_itself_is_seen_to_speak_and_not_to_listen() -> None:
    """She interrupted it and no cue came: it says the line again, and the ears are closed meanwhile."""
    voice = RecordingSpeaker(seconds_per_word=0.3)
    with Emulated(Desk(), why_no_ears="", voice=voice) as shown:
        voice.say("one two three four five six")
        shown.screen.report_ears("")
        shown.wait_for(lambda: "speaking, deaf meanwhile" in shown.text)
        assert voice.pause()
        shown.screen.report_ears("")
        shown.wait_for(lambda: "deaf" not in shown.text and "listening" in shown.text)
        voice.go_on()
        shown.screen.report_ears("")
        shown.wait_for(lambda: "speaking, deaf meanwhile" in shown.text)
        shown.wait_for(lambda: "deaf" not in shown.text and "listening" in shown.text)


def test_every_page_is_turned_to_by_words() -> None:
    """What the keys show, her voice shows; and it brings the round back."""
    with Emulated(Desk(), why_no_ears="") as shown:
        for words, title in (
            ("the whole chart", "of 60 sts"),
            ("yoke from above", "From above"),
            ("open the journal", "the latest first"),
        ):
            shown.screen.hear(words)
            shown.wait_for(lambda title=title: title in shown.text.splitlines()[0])  # type: ignore[misc] # bound now
            shown.screen.hear("back to the round")
            shown.wait_for(lambda: 'Heard "back to the round": shown' in shown.text)


def test_words_heard_before_the_screen_is_up_are_not_lost() -> None:
    """The ears may be quicker than the terminal."""
    early = Emulated(Desk(), why_no_ears="")
    early.screen.hear("next step")
    with early as shown:
        shown.wait_for(lambda: 'Heard "next step": done' in shown.text)

        assert shown.desk.state.place.index == 1


def test_a_voice_that_stops_says_why() -> None:
    """No silence without a reason."""
    with Emulated(Desk(), voice=RecordingSpeaker()) as shown:
        shown.screen.report_voice("The voice has stopped because of a fault; the session goes on in text.")
        shown.wait_for(lambda: "No voice: the voice has stopped because of a fault." in shown.text)


def test_q_twice_says_where_it_stops_and_closes() -> None:
    """One q is a question; two are good night."""
    with Emulated(Desk()) as shown:
        shown.press("space", "q")
        assert "q again stops for tonight" in shown.text
        shown.press("q", settle=False)

        assert shown.ended()
        assert shown.error is None
        assert shown.screen.last_lines[0].startswith("Done so far: Neckband, round 1 of 3.")


def test_ctrl_c_leaves_at_once() -> None:
    """Whoever leaves in a hurry loses nothing and is not asked."""
    with Emulated(Desk()) as shown:
        shown.press("ctrl-c", settle=False)

        assert shown.ended()
        assert isinstance(shown.error, KeyboardInterrupt)


def test_figures_fade_when_nothing_comes_of_them() -> None:
    """A number half typed and left must not wait for the next key."""
    with Emulated(Desk()) as shown:
        shown.press("6")
        assert "enter count" in shown.text
        shown.now += 9
        shown.press("?", "?")

        assert "enter count" not in shown.text
        shown.press("enter")
        assert shown.desk.state.place.index == 1


@pytest.mark.parametrize("size", [(80, 24), (40, 12), (120, 40), (20, 6), (200, 50)])
def test_resizing_draws_the_same_anew(size: tuple[int, int]) -> None:
    """A window pulled to another size shows the same moment, whole."""
    with Emulated(Desk()) as shown:
        shown.press("space")
        shown.resize(*size)
        pulled = shown.text
    with Emulated(Desk(), columns=size[0], rows=size[1]) as fresh:
        fresh.press("space")

        assert pulled == fresh.text


@pytest.mark.parametrize("depth", Depth)
def test_the_emulated_screen_is_as_agreed_on(depth: Depth) -> None:
    """What the terminal really shows, letter by letter, in every depth of colour."""
    desk = Desk().do("go to yoke round 3", "by repeat", "next", "next")
    with Emulated(desk, depth=depth) as shown:
        expected = (GOLDEN / "three-yarns-80x24.txt").read_text(encoding="utf-8")

        assert shown.text == expected


def test_yarns_are_shown_in_their_own_colours() -> None:
    """The letters of three yarns stand on three grounds, as the file has them."""
    desk = Desk().do("go to yoke round 3", "by repeat", "next", "next")
    with Emulated(desk, depth=Depth.TRUE) as shown:
        row = max(n for n, line in enumerate(shown.display.display) if line.rstrip().endswith("3◂"))
        cells = [shown.display.buffer[row][column] for column in range(80)]
        grounds = {cell.data: {each.bg for each in cells if each.data == cell.data} for cell in cells}

        assert {".": "ece6d8", "A": "1f4d3a", "B": "c4512d"}.items() <= {
            (sign, ground) for sign in ".AB" for ground in grounds[sign]
        }


def test_a_terminal_that_has_gone_ends_the_sitting_without_waiting() -> None:
    """The pipe breaks in the middle of drawing: the program ends at once, and what was done is kept."""

    def ended_s() -> float:
        with Emulated(Desk()) as shown:
            shown.press("space")
            shown.stream.broken = True
            begin = time.monotonic()
            shown.press("space", settle=False)

            assert shown.ended()
            took_s = time.monotonic() - begin
            assert isinstance(shown.error, BrokenPipeError)
            assert sum(isinstance(event, Advanced) for _, event in shown.desk.events) == 2
        return took_s

    assert least_of(ended_s, 5) < 5


def test_what_is_pasted_goes_into_a_note_and_nowhere_else() -> None:
    """A clipboard full of letters must not press keys."""
    with Emulated(Desk(), columns=58) as shown:
        shown.press("\x1b[200~qqq u\n\x1b[201~")
        assert shown.desk.state.place.index == 0
        assert "Cast on sixty." in shown.text
        shown.press("n", "\x1b[200~soft\x1b[201~", "enter")

        assert "Noted: soft" in shown.text


def test_what_cannot_be_kept_ends_the_sitting_with_its_sentence() -> None:
    """A full disk is told outside the screen, where it can be read."""
    from stepper.errors import SurroundingsError

    def full(*args: object) -> None:
        raise SurroundingsError("The disk is full.")

    desk = Desk()
    with Emulated(desk) as shown:
        desk.keep = full
        shown.press("space", settle=False)

        assert shown.ended()
        assert isinstance(shown.error, SurroundingsError)
        assert desk.state.place.index == 0


def test_remedies_get_a_page_of_their_own_and_one_is_taken_by_key() -> None:
    """Asked for by key or by word, chosen with the arrows, taken with enter; then the round is back."""
    desk = Desk().do("go to yoke round 4", "count is 69", "no loop")
    with Emulated(desk, columns=58) as shown:
        shown.press("y")
        assert "How to mend it" in shown.text
        many = len(shown.screen.scene().asked.remedies)
        shown.press(*["down"] * (many + 2), "up")
        marked = next(line for line in shown.text.splitlines() if line.startswith("▸"))
        assert marked.split()[1] == str(many - 1)
        shown.press("escape")
        shown.wait_for(lambda: "How to mend it" not in shown.text)
        shown.screen.hear("what else")
        shown.wait_for(lambda: "How to mend it" in shown.text)
        before = desk.state.seq
        shown.press(*["down"] * (many - 1), "enter")
        assert "How to mend it" not in shown.text
        assert desk.state.seq > before


def test_the_first_start_tells_how_letters_are_enlarged() -> None:
    """Hardly anyone knows it, and it is what makes a screen readable from the sofa; it is told once."""
    with Emulated(Desk(), columns=80) as shown:
        assert "Larger letters: ctrl and +" in shown.text
        shown.press("space")
        assert "Larger letters" not in shown.text


def test_without_ears_the_first_start_tells_how_to_type_what_there_is_to_say() -> None:
    """The lines are worded for those who speak: "say next step" is untrue where nothing listens."""
    with Emulated(Desk(), columns=100) as shown:
        assert "Nothing listens: space is next step" in shown.text
        shown.press("space")
        assert "Nothing listens" not in shown.text


def test_ears_that_turn_out_to_be_missing_are_told_of_the_same_way() -> None:
    """They are opened while the first screen stands there already: what she does instead is told then."""
    with Emulated(Desk(), columns=100, why_no_ears=GETTING_READY) as shown:
        assert "Nothing listens" not in shown.text
        shown.screen.report_ears("no microphone is connected")
        shown.wait_for(lambda: "Nothing listens: space is next step" in shown.text)
