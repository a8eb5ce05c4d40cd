from __future__ import annotations

from dataclasses import replace

from stepper.screen.device_status import DeviceStatus, EarsState, HeardWords, MouthState
from stepper.screen.drawing.rows import row_width, text_of
from stepper.screen.drawing.style import Depth
from stepper.screen.pages.device_signs import describe_heard, draw_devices, draw_heard


def _text(devices: DeviceStatus, columns: int = 80) -> str:
    return " ".join(text_of(row) for row in draw_devices(devices, Depth.NONE, columns, blocks=True))


def test_no_ears_and_no_voice_say_why() -> None:
    """Silence without a reason is a fault to whoever sits before it."""
    devices = DeviceStatus(why_no_ears="no microphone is connected", why_no_mouth="no sound device.")

    assert _text(devices) == "No ears: no microphone is connected.  No voice: no sound device."
    assert _text(devices, 40) == "No ears, no voice: keys alone."


def test_what_is_missing_is_said_once() -> None:
    """After the first cue she knows; what is there keeps its sign."""
    missing = DeviceStatus(news=False)
    deaf_only = replace(missing, mouth=MouthState.SPEAKING)

    assert _text(missing) == ""
    assert _text(deaf_only) == " – speaking "


def test_a_film_is_on_only_with_ears() -> None:
    """Without ears nothing is listened for, whatever the settings say of films."""
    without = DeviceStatus(film=True)
    listening = replace(without, ears=EarsState.LISTENING, why_no_ears="")
    asleep = replace(listening, ears=EarsState.CLOSED)

    assert "film" not in _text(without)
    assert "film on" in _text(listening)
    assert "film on" in _text(asleep)


def test_every_state_has_a_word_of_its_own() -> None:
    """Listening, deaf while speaking, asleep, speaking, quiet."""
    texts = {
        _text(DeviceStatus(ears=ears, mouth=mouth, why_no_ears="", why_no_mouth=""))
        for ears in EarsState
        for mouth in MouthState
    }

    assert len(texts) == len(EarsState) * len(MouthState)


def test_while_it_speaks_one_sign_says_both() -> None:
    """Deaf because it speaks is one thing to know, not two signs beside each other."""
    listening = DeviceStatus(ears=EarsState.LISTENING, why_no_ears="", mouth=MouthState.QUIET, why_no_mouth="")

    assert _text(listening.while_speaking()) == " – speaking, deaf meanwhile "


def test_what_is_told_already_repeats_no_typed_words() -> None:
    """She reads what she typed once, in the answer that quotes it; what was heard always keeps its row."""
    typed = DeviceStatus(heard=HeardWords(text="nxt", did="nothing, not understood", by_ear=False))
    told = ('Not understood: "nxt". Did you mean: next?',)

    assert draw_heard(typed, 80, told) == []
    assert draw_heard(typed, 80, ("Something else.",)) != []
    heard = replace(typed, heard=HeardWords(text="nxt", did="nothing, not understood"))
    assert draw_heard(heard, 80, told) != []


def test_a_long_reason_is_wrapped_and_never_cut() -> None:
    """The reason is what helps, to its last word."""
    devices = DeviceStatus(why_no_ears="a reason as long as a row " * 3 + "and its end", why_no_mouth="another one")
    rows = draw_devices(devices, Depth.NONE, 60, blocks=True)

    assert "and its end." in _text(devices, 60)
    assert "another one." in _text(devices, 60)
    assert all(row_width(row) <= 60 for row in rows)


def test_the_last_words_are_shown_with_what_they_did() -> None:
    """Heard or typed, and what came of it."""
    assert describe_heard(DeviceStatus(heard=HeardWords(text="next step", did="done"))) == 'Heard "next step": done'
    assert describe_heard(DeviceStatus(heard=HeardWords(text="x", did="nothing", by_ear=False))) == 'Typed "x": nothing'
    assert describe_heard(DeviceStatus()) == ""


def test_what_a_library_says_is_left_out() -> None:
    """A stranger reads her first screen: "PortAudio: Error querying device -1" tells her nothing."""
    status = DeviceStatus(why_no_ears="no microphone can be opened (PortAudio: Error querying device -1")
    (shown, *_) = draw_devices(status, Depth.NONE, 78, blocks=True)

    assert text_of(shown).startswith("No ears: no microphone can be opened.")
    assert "PortAudio" not in text_of(shown)
