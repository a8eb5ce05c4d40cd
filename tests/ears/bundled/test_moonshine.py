from __future__ import annotations

from array import array
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest

from stepper.ears.bundled.decision import Candidate
from stepper.ears.bundled.moonshine import Listening, MoonshineRecogniser, Utterance, said_behind
from stepper.ears.bundled.moonshine_model import Encoded, MoonshineModel
from stepper.ears.nearness import CLEAR_NUMBER
from stepper.ears.ports import Heard
from stepper.ears.wordings import Called, Frame, Reply, Wordings
from stepper.language.understanding.normal_text import normalise
from tests.ears.hearing import NETWORKS, NUDGES, model, needs_recogniser, nudges, sound

WORDINGS = Wordings(
    phrases={"next step": "next", "go back": "back", "where are we": "where", "say that again": "again"},
    frames=(Frame(before="count is", after="", means="count"),),
    numbers={"two hundred forty six": 246, "two hundred fifty six": 256, "forty six": 46, "twelve": 12},
)

pytestmark = needs_recogniser


@pytest.fixture(scope="module", params=NETWORKS)
def network(request: pytest.FixtureRequest) -> str:
    """The packaged network and its twin that rounds nothing."""
    model(request.param)
    return str(request.param)


@pytest.fixture(scope="module")
def recogniser(network: str) -> Iterator[MoonshineRecogniser]:
    """One for the tests of this module."""
    found = MoonshineRecogniser(WORDINGS, model=model(network))
    yield found
    found.close()


@pytest.mark.parametrize(
    "cue", ["next step", "where are we", "say that again", "count is two hundred forty six"]
)
def test_a_cue_is_heard_as_that_cue(cue: str, recogniser: MoonshineRecogniser, tmp_path: Path) -> None:
    """A synthetic voice is understood on every machine; a number comes back as words that can be read."""
    for each in nudges(sound(cue, tmp_path)):
        heard = recogniser.recognise(each)
        assert heard is not None
        assert heard.text == cue


@pytest.mark.parametrize(
    "line", ["somebody followed us from the station", "please sit down and listen to me"]
)
def test_what_is_no_cue_is_not_heard(line: str, recogniser: MoonshineRecogniser, tmp_path: Path) -> None:
    """Lines of a film are left alone."""
    assert [recogniser.recognise(each) for each in nudges(sound(line, tmp_path))] == [None] * len(NUDGES)


@pytest.mark.parametrize(
    ("transcript", "address", "is_called", "tried"),
    [
        ("note it", "", False, ["note it"]),
        ("stepper note it now", "stepper", False, ["note it now"]),
        ("step or note it now", "stepper", True, ["or note it now", "note it now", "it now"]),
        ("step or note it now", "stepper", False, []),
        ("stepper", "stepper", True, []),
    ],
)
def test_where_the_transcript_has_the_name_wrong_its_sounds_count(
    transcript: str, address: str, is_called: bool, tried: list[str]
) -> None:
    """As many words are left out as the name may have been taken for; without its sounds none are."""
    assert [text for text in said_behind(transcript, address, is_called) if text] == tried


@pytest.mark.parametrize(
    ("remark", "words"),
    [
        ("make a note, two stitches were dropped", {"two", "dropped"}),
        ("make a note, the yarn is splitting in three places", {"yarn", "three", "places"}),
        ("make a note, I dropped two stitches", {"two", "stitches"}),
    ],
)
def test_a_remark_is_heard_behind_the_name_with_a_number_in_it(
    remark: str, words: set[str], network: str, tmp_path: Path
) -> None:
    """No list of phrases can hold it, so the free transcript is taken; what the name was taken for is left out.

    The transcript is no more than likely: "step, make a note" on one machine is "step 1. make a note." on another.
    Like the program's own, this test for a remark does not see full stops and quotes. No remark here has words that
    sound like others: "in two places" is "into places" as well.
    """
    wordings = replace(WORDINGS, remark=lambda text: normalise(text).startswith("make a note "))
    recogniser = MoonshineRecogniser(wordings, address="stepper", model=model(network))
    try:
        for each in nudges(sound(f"stepper, {remark}", tmp_path)):
            heard = recogniser.recognise(each)
            assert heard is not None
            said = normalise(heard.text)
            assert said.startswith("make a note")
            assert heard.addressed
            assert words <= set(said.split())
    finally:
        recogniser.close()


@pytest.mark.parametrize(
    ("line", "early"),
    [
        ("where are we", "where are we"),
        ("next step", None),
        ("count is twelve", None),
        ("please sit down and listen to me", None),
    ],
)
def test_only_a_cue_that_begins_nothing_longer_is_known_early(
    line: str, early: str | None, network: str, tmp_path: Path
) -> None:
    """ "Next step" begins "next step please" here, and a number may go on: both wait for the whole silence."""
    longer = replace(WORDINGS, phrases={**WORDINGS.phrases, "next step please": "next"})
    recogniser = MoonshineRecogniser(longer, model=model(network))
    heard = [recogniser.recognise_early(each) for each in nudges(sound(line, tmp_path))]
    assert {each and each.text for each in heard} == {early}


@pytest.mark.parametrize(("line", "goes_on"), [("go back", False), ("go back to bed", True)])
def test_a_cue_that_moves_is_told_from_what_only_begins_as_it(
    line: str, goes_on: bool, network: str, tmp_path: Path
) -> None:
    """ "Go back" may be the beginning of what is said to a child; of what moves nothing it is not asked."""
    moving = replace(WORDINGS, moves=lambda means: means == "back")
    recogniser = MoonshineRecogniser(moving, model=model(network))
    heard = Heard(text="go back", score=1.0, moves=True)
    for each in nudges(sound(line, tmp_path)):
        assert recogniser.goes_on(each, heard) is goes_on
        assert not recogniser.goes_on(each, replace(heard, moves=False))
        found = recogniser.recognise(each)
        assert (found is not None and found.moves) is not goes_on


def test_what_nobody_calls_is_not_written_down(
    network: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Most of what a film says behind the gate would cost the decoder's time for nothing."""
    written, transcribe = [], MoonshineModel.transcribe

    def counted(model: MoonshineModel, encoded: Encoded) -> tuple[str, float]:
        written.append(encoded)
        return transcribe(model, encoded)

    monkeypatch.setattr(MoonshineModel, "transcribe", counted)
    recogniser = MoonshineRecogniser(WORDINGS, address="stepper", model=model(network))
    for each in nudges(sound("please sit down and listen to me", tmp_path)):
        assert recogniser.recognise(each) is None
    assert not written
    for each in nudges(sound("stepper, paint the garage", tmp_path)):
        assert recogniser.recognise(each) is not None
    assert len(written) == len(NUDGES)


class Doubting(MoonshineRecogniser):
    """A recogniser whose decoder would rather have something else, though not by much."""

    def weighed(self, utterance: Utterance, manner: Listening) -> list[Candidate]:
        """Weigh, and take a little off the words."""
        return [replace(each, words=-1.0) for each in super().weighed(utterance, manner)]


def test_a_number_counts_only_if_the_transcript_does_not_end_in_another(network: str, tmp_path: Path) -> None:
    """She said "two hundred forty six", the transcript has another number at its end: she is to say it again. What
    may go on says so."""
    numbers = {"two hundred": 200, **WORDINGS.numbers}
    for written, texts in ((246.0, {"count is two hundred forty six"}), (46.0, {""})):
        wordings = replace(WORDINGS, numbers=numbers, last_number=lambda text, written=written: written)
        recogniser = Doubting(wordings, model=model(network))
        heard = [
            recogniser.recognise(each) for each in nudges(sound("count is two hundred forty six", tmp_path))
        ]
        assert {each and each.text for each in heard} == texts
    recogniser = MoonshineRecogniser(replace(WORDINGS, numbers=numbers), model=model(network))
    for line, goes_on in (("count is two hundred", True), ("count is twelve", False)):
        heard = [recogniser.recognise(each) for each in nudges(sound(line, tmp_path))]
        assert {each and (each.text, each.goes_on) for each in heard} == {(line, goes_on)}


def test_silence_and_next_to_no_sound_are_no_cue(recogniser: MoonshineRecogniser) -> None:
    """Nothing at all, a tenth of a second and a second of silence."""
    assert [recogniser.recognise(bytes(size)) for size in (0, 3200, 32_000)] == [None] * 3


def test_behind_an_address_word_only_what_is_addressed_is_heard(network: str, tmp_path: Path) -> None:
    """The cue comes back without the word; without it there is no cue, until the word is no longer asked for. The
    word alone waits for more, and something else behind it is no cue but is answered."""
    is_addressed = True
    recogniser = MoonshineRecogniser(
        WORDINGS, address="computer", is_addressed=lambda: is_addressed, model=model(network)
    )

    def heard(line: str) -> set[tuple[str, bool] | None]:
        found = [recogniser.recognise(each) for each in nudges(sound(line, tmp_path))]
        return {None if each is None else (each.text, each.goes_on) for each in found}

    try:
        assert heard("computer, say that again") == {("say that again", False)}
        assert heard("say that again") <= {None, ("", False)}
        assert heard("computer") == {("", True)}
        assert heard("computer, paint the garage") == {("", False)}
        is_addressed = False
        for line in ("say that again", "computer, say that again"):
            assert heard(line) == {("say that again", False)}
    finally:
        recogniser.close()


def test_a_cue_behind_the_name_is_found_amid_talk(network: str, tmp_path: Path) -> None:
    """Where it stands, to a fifth of a second; nothing is found in the talk alone, nor where no name is kept.

    The talk is 16 dB softer; 14 dB softer one sound more of it is heard behind the cue than may be.
    """
    film = array("h", sound("somebody followed us from the station, please sit down", tmp_path))
    cue = array("h", sound("stepper, next step", tmp_path))
    both = array("h", (each // 6 for each in film * 2))
    at = len(film) - len(cue) // 2
    for place, each in enumerate(cue, at):
        both[place] = max(-32_768, min(32_767, both[place] + each))
    addressed = MoonshineRecogniser(WORDINGS, address="stepper", model=model(network))
    found = addressed.find(both.tobytes())
    assert found is not None
    assert found.end_s is not None
    loud = [place for place, each in enumerate(cue, at) if abs(each) > 300]
    assert found.start_s == pytest.approx(loud[0] / 16_000, abs=0.2)
    assert found.end_s == pytest.approx(loud[-1] / 16_000, abs=0.2)
    assert not found.may_go_on
    assert addressed.find(film.tobytes()) is None
    assert MoonshineRecogniser(WORDINGS, model=model(network)).find(both.tobytes()) is None


def test_a_cue_alone_is_found_amid_talk_and_told_from_the_sentence_around_it(
    network: str, tmp_path: Path
) -> None:
    """Where it stands, to a fifth of a second, and whether something sounds before and behind; not while the name
    is asked for."""
    film = array("h", sound("somebody followed us from the station, please sit down", tmp_path))
    cue = array("h", sound("next step", tmp_path))
    both = array("h", (each // 4 for each in film * 2))
    at = len(film) - len(cue) // 2
    for place, each in enumerate(cue, at):
        both[place] = max(-32_768, min(32_767, both[place] + each))
    is_addressed = False
    recogniser = MoonshineRecogniser(
        WORDINGS, address="stepper", is_addressed=lambda: is_addressed, model=model(network)
    )
    assert recogniser.hears_alone()
    found = recogniser.find_alone(both.tobytes())
    assert found is not None
    assert found.text == "next step"
    loud = [place for place, each in enumerate(cue, at) if abs(each) > 300]
    assert found.start_s == pytest.approx(loud[0] / 16_000, abs=0.2)
    assert found.end_s == pytest.approx(loud[-1] / 16_000, abs=0.2)
    assert recogniser.find_alone(film.tobytes()) is None
    told = recogniser.find_alone(sound("she made the next step towards the door", tmp_path))
    assert told is not None
    assert min(told.before, told.behind) > max(0, min(found.before, found.behind))
    is_addressed = True
    assert not recogniser.hears_alone()


def test_a_count_alone_is_found_and_it_is_told_how_clear_it_is_and_whether_it_may_go_on(
    network: str, tmp_path: Path
) -> None:
    """ "Forty six" is whole; of "two hundred" nobody knows."""
    numbers = {**WORDINGS.numbers, "two hundred": 200}
    recogniser = MoonshineRecogniser(replace(WORDINGS, numbers=numbers), model=model(network))
    whole = recogniser.find_alone(sound("count is two hundred forty six", tmp_path))
    begun = recogniser.find_alone(sound("count is two hundred", tmp_path))
    assert whole is not None
    assert begun is not None
    assert (whole.text, whole.has_number, whole.may_go_on) == ("count is two hundred forty six", True, False)
    assert (begun.text, begun.has_number, begun.may_go_on) == ("count is two hundred", True, True)
    assert whole.clear > CLEAR_NUMBER
    cue = recogniser.find_alone(sound("next step", tmp_path))
    assert cue is not None
    assert not cue.has_number


def test_no_part_of_a_count_is_its_rival(network: str, tmp_path: Path) -> None:
    """ "Count is two hundred" stands in "my count is two hundred forty six", and so does "two hundred" alone."""
    before = (*WORDINGS.frames, Frame(before="my count is", after="", means="count"))
    known = replace(
        WORDINGS,
        frames=(*before, Frame(before="", after="", means="count")),
        numbers={**WORDINGS.numbers, "two hundred": 200},
    )
    recogniser = MoonshineRecogniser(known, asked=lambda: {Reply.NUMBER}, model=model(network))
    whole = recogniser.find_alone(sound("my count is two hundred forty six", tmp_path))
    assert whole is not None
    assert whole.text == "my count is two hundred forty six"
    assert whole.clear > CLEAR_NUMBER


def test_a_single_word_is_found_alone_only_while_it_answers_what_is_open(network: str, tmp_path: Path) -> None:
    """Films are full of "no" and "two"; what was said before the answer is not in its way."""
    words = {"no": Called(means="no", answers=Reply.YES_OR_NO), "go": Called(means="go")}
    digits = {**WORDINGS.numbers, "two": 2}
    known = replace(
        WORDINGS, called=words, numbers=digits, frames=(*WORDINGS.frames, Frame(before="", after="", means="bare"))
    )
    asked: set[Reply] = set()
    recogniser = MoonshineRecogniser(known, asked=lambda: asked, model=model(network))
    word, cue = (sound(each, tmp_path) for each in ("no", "next step"))
    assert recogniser.find_alone(word) is None
    asked = {Reply.YES_OR_NO}
    found = recogniser.find_alone(word)
    assert found is not None
    assert (found.text, found.is_answer) == ("no", True)
    behind = recogniser.find_alone(cue + bytes(64_000) + word)
    assert behind is not None
    assert (behind.text, behind.is_answer) == ("no", True)
    assert behind.start_s > len(cue) / 32_000 + 2
    told = recogniser.find_alone(cue)
    assert told is not None
    assert not told.is_answer
    asked = {Reply.NUMBER}
    number = recogniser.find_alone(sound("two", tmp_path))
    assert number is not None
    assert (number.text, number.is_answer) == ("two", True)


def test_a_longer_answer_is_one_alone_only_while_it_is_asked_for(network: str, tmp_path: Path) -> None:
    """ "I don't know" is in every film; behind the address word it counts whatever is open, and is no answer."""
    called = {
        "i don't know": Called(means="unsure", answers=Reply.NO_ANSWER),
        "i do not know": Called(means="unsure", answers=Reply.NO_ANSWER),
        "wrong yarn": Called(means="yarn"),
    }
    asked: set[Reply] = set()
    is_addressed = False
    recogniser = MoonshineRecogniser(
        replace(WORDINGS, called=called),
        address="stepper",
        is_addressed=lambda: is_addressed,
        asked=lambda: asked,
        model=model(network),
    )
    texts = ("I don't know", "wrong yarn")
    alone, yarn = (sound(each, tmp_path) for each in texts)
    for each in (set(), {Reply.YES_OR_NO, Reply.NUMBER}):
        asked = each
        assert recogniser.find_alone(alone) is None
        assert not getattr(recogniser.recognise(alone), "text", "")
    asked = {Reply.NO_ANSWER}
    found, heard = recogniser.find_alone(alone), recogniser.recognise(alone)
    assert found is not None
    assert heard is not None
    assert (found.text, found.is_answer) == (heard.text, heard.is_answer) == ("i don't know", True)
    assert heard.means == "unsure"
    assert recogniser.find_alone(yarn) is None
    asked, is_addressed = set(), True
    for text in texts:
        behind = recogniser.recognise(sound(f"stepper, {text}", tmp_path))
        assert behind is not None
        assert (behind.text, behind.addressed, behind.is_answer) == (text.lower(), True, False)


def test_where_a_cue_stands_in_what_was_cut_out_is_told(network: str, tmp_path: Path) -> None:
    """The ears ask whether the sound falls behind it, and a piece may end in somebody else's words."""
    recogniser = MoonshineRecogniser(WORDINGS, model=model(network))
    pcm = sound("next step", tmp_path)
    heard = recogniser.recognise(pcm)
    assert heard is not None
    assert heard.span_s is not None
    loud = [place / 16_000 for place, each in enumerate(array("h", pcm)) if abs(each) > 300]
    assert heard.span_s[0] == pytest.approx(loud[0], abs=0.2)
    assert heard.span_s[1] == pytest.approx(loud[-1], abs=0.2)
