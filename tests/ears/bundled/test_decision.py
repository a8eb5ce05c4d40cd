from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.ears.bundled.decision import (
    Candidate,
    decide,
    is_drawn_out,
    is_whole,
    leave_out_ends,
    says_more,
    total_score,
)
from stepper.ears.bundled.thresholds import LOOSE, STRICT, UNASKED_NUMBER

_UNLIKE = 0.1


def scored(text: str, score: float, means: str = "") -> Candidate:
    """Make a text that means itself, of which the words say no more than that they are not what is written."""
    return Candidate(text=text, means=means or text, sounds=score + _UNLIKE, words=-_UNLIKE / STRICT.words)


def test_the_likeliest_is_taken_when_it_is_clear_of_the_next() -> None:
    """Whatever the order they come in, and whatever else means the same."""
    found = decide([scored("go back", -9.0), scored("next", 5.0), scored("move on", 4.9, "next")], STRICT)
    assert found is not None
    assert found.text == "next"


@pytest.mark.parametrize(
    "texts",
    [[], [scored("next", STRICT.least - 0.1)], [scored("next", 9.0), scored("text", 9.1 - STRICT.clear)]],
    ids=["nothing", "unlikely", "not clear of the next"],
)
def test_a_doubtful_text_is_left(texts: list[Candidate]) -> None:
    """Each of the conditions alone refuses."""
    assert decide(texts, STRICT) is None


def test_the_words_have_a_weight() -> None:
    """By its sounds one is likelier, by its words the other; the weight decides. Worked out by hand."""
    one = Candidate(text="go on", means="next", sounds=-1.0, words=-9.0)
    other = Candidate(text="go back", means="back", sounds=-4.0, words=0.0)
    for words, best in ((0.0, one), (1.0, other)):
        found = decide([one, other], replace(STRICT, words=words, least=-20.0, clear=0.0))
        assert found == best
    assert total_score(one, replace(STRICT, words=0.5)) == -5.5


def test_a_word_is_no_answer_where_the_decoder_has_written_down_a_longer_one() -> None:
    """ "I don't know" of a synthetic voice, in quiet: by its sounds alone it was "no". The figures are those measured."""
    end = Candidate(text="no", means="no", sounds=0.0, words=-7.0, is_word=True)
    whole = Candidate(text="i don't know", means="unsure", sounds=-8.7, words=4.2)
    assert decide([end, whole], STRICT) == end
    assert decide(leave_out_ends([end, whole], {whole.text}), STRICT) == whole
    said = replace(end, words=4.0), replace(whole, words=-0.1)
    assert leave_out_ends(said, {whole.text}) == list(said)
    assert leave_out_ends([end, whole], set()) == [end, whole]


def test_less_is_asked_for_when_the_free_transcript_agrees() -> None:
    """An unlikely row of sounds is taken for what the other model writes down, and for nothing else."""
    sounds = (STRICT.agreed + STRICT.least) / 2
    said = Candidate(text="go on", means="next", sounds=sounds, words=0.0)
    assert decide([said], STRICT) == said
    assert decide([replace(said, words=-0.1)], STRICT) is None
    assert decide([replace(said, sounds=STRICT.agreed - 1)], STRICT) is None


def test_behind_the_address_word_less_is_asked_for() -> None:
    """What is too unlikely alone is taken behind it."""
    doubtful = [scored("next", (LOOSE.least + STRICT.least) / 2)]
    assert decide(doubtful, STRICT) is None
    assert decide(doubtful, LOOSE) is not None


@pytest.mark.parametrize("words", [-0.1, 0.0, 2.7])
def test_what_moves_the_knitting_has_to_fit_whatever_the_decoder_says(words: float) -> None:
    """Behind the address word "wrong yarn" of one voice fits "go on" at -18, and the decoder finds that likely."""
    said = Candidate(text="what is next", means="next step", sounds=LOOSE.least_moving - 1, words=words)
    assert decide([said], LOOSE) == said
    assert decide([replace(said, moves=True)], LOOSE) is None
    assert decide([replace(said, moves=True, sounds=LOOSE.least_moving + 1)], LOOSE) is not None


def test_a_number_has_to_be_clearer_than_a_cue() -> None:
    """To ask again costs a second, a wrong count a hunt for a fault that is not there."""
    between = (STRICT.clear + STRICT.clear_number) / 2
    assert STRICT.clear_number > STRICT.clear
    rival = scored("count is six", 9.0 - between)
    assert decide([scored("next", 9.0), rival], STRICT) is not None
    assert decide([replace(scored("count is sixteen", 9.0), number=16), rival], STRICT) is None


def test_a_number_that_hardly_fits_is_asked_for_again() -> None:
    """Where a cue is taken because the words agree, a number is not."""
    doubtful = Candidate(text="next", means="next", sounds=STRICT.least_number - 1, words=0.0)
    assert decide([doubtful], STRICT) is not None
    assert decide([replace(doubtful, number=16)], STRICT) is None


def test_a_number_alone_has_to_fit_better_than_one_behind_the_address_word() -> None:
    """A count that a film drowned in part is like a shorter one: "i count four" for twenty four fitted at -3.6. Who says
    the name means the program, and is heard at -4."""
    count = replace(scored("i count four", -3.6), number=4)
    assert decide([count], STRICT) is None
    assert decide([count], LOOSE) == count


@pytest.mark.parametrize("number", [None, 60.0])
def test_a_single_word_has_to_fit_wherever_it_is_said(number: float | None) -> None:
    """What noise leaves of "no loop" is like "no", and of a count like a number."""
    doubtful = replace(scored("no", STRICT.least_word - 1), is_word=True, number=number)
    assert decide([doubtful], LOOSE) is None
    assert decide([replace(doubtful, sounds=0.0)], LOOSE) is not None


def test_what_answers_an_open_question_is_taken_rather_than_what_does_not() -> None:
    """ "No" and "go" fit a word in a film alike. Without a question neither is clear of the other; "go" that is far
    clearer than "no" is "go" though. Without the address word a film answers, too: there nothing is expected."""
    no, go = replace(scored("no", 0.0), is_word=True), replace(scored("go", -0.2), is_word=True)
    assert decide([no, go], LOOSE) is None
    answer = replace(no, answers=True)
    assert decide([answer, go], LOOSE) == answer
    assert decide([answer, go], STRICT) is None
    clearer = replace(go, sounds=answer.sounds + LOOSE.expected + LOOSE.clear + 0.1)
    assert decide([answer, clearer], LOOSE) == clearer


def test_two_answers_to_one_question_are_told_apart_as_ever() -> None:
    """A number is asked for: that makes "two" no likelier than "three"."""
    two, three = (replace(scored(text, 0.0), is_word=True, number=number, answers=True) for text, number in (("two", 2), ("three", 3)))
    assert decide([two, three], LOOSE) is None
    assert decide([replace(two, sounds=LOOSE.clear_number + 0.1 + three.sounds), three], LOOSE) is not None


def test_what_answers_has_to_fit_as_any_word_does() -> None:
    """A question in the room makes no answer of what a film says."""
    doubtful = replace(scored("no", LOOSE.least_word - 1), is_word=True, answers=True)
    assert decide([doubtful], LOOSE) is None


def test_a_bare_number_that_nobody_asked_for_has_to_fit_well() -> None:
    """What a film leaves of a cue is like a number; asked for, or with a word around it, less is enough."""
    doubtful = replace(scored("ninety", UNASKED_NUMBER - 1), is_word=True, number=90)
    assert decide([doubtful], LOOSE) is None
    assert decide([replace(doubtful, answers=True)], LOOSE) is not None
    assert decide([replace(doubtful, is_word=False)], LOOSE) is not None
    assert decide([replace(doubtful, sounds=0.0)], LOOSE) is not None


def test_a_single_digit_that_nobody_asked_for_is_no_count() -> None:
    """Cut short, "forward" is "four"; and it is not "go" either, which fits worse."""
    four, go = replace(scored("four", 0.0), is_word=True, number=4), scored("go", -4.0)
    assert decide([four, go], LOOSE) is None
    assert decide([replace(four, answers=True), go], LOOSE) is not None
    assert decide([replace(four, text="count is four", is_word=False), go], LOOSE) is not None


@pytest.mark.parametrize(
    ("fit", "behind", "is_word", "is_over"),
    [
        (0.0, 0, True, True),
        (-1.5, 1, True, True),
        (0.0, 2, True, False),
        (-3.6, 0, True, False),
        (-7.3, 2, True, False),
    ],
)
def test_a_single_word_amid_a_film_has_to_fit_well_with_hardly_anything_behind_it(
    fit: float, behind: int, *, is_word: bool, is_over: bool
) -> None:
    """The end of "finished the round" was once taken for "two", two steps from where she is; words that people
    said 10 dB above a film fitted at -1.5 or better, with one frame behind them at most."""
    assert is_whole(fit, behind, is_word=is_word) is is_over


@pytest.mark.parametrize(("fit", "behind", "is_over"), [(-4.7, 2, True), (-6.5, 1, False), (0.0, 3, False)])
def test_a_longer_cue_amid_a_film_is_waited_for_where_only_part_of_it_fits(
    fit: float, behind: int, *, is_over: bool
) -> None:
    """ "When do I change colour" was cut off behind "change", and heard as "when do I turn"."""
    assert is_whole(fit, behind, is_word=False) is is_over


@pytest.mark.parametrize(
    ("behind", "more"),
    [([], False), ([0, 0, 0], False), ([7, 0, 7, 0], False), ([0, 0, 9], True), ([7, 7, 9], True)],
    ids=["nothing", "silence", "its own last sound fades", "another sound", "both"],
)
def test_what_sounds_behind_a_cue_is_more_than_its_own_last_sound(behind: list[int], more: bool) -> None:
    """The "t" of "one stitch" may be found twice, and "go" ends as "going" goes on."""
    assert says_more(behind, 7) is more


def test_two_words_with_a_pause_between_are_no_cue_and_a_slow_one_is() -> None:
    """ "Go", a pause and "on", 1.3 s of four sounds, are read out of a list; twice as slow as the slowest voice is hers."""
    assert is_drawn_out(1.3, 4)
    assert not is_drawn_out(0.8, 4)
    assert not is_drawn_out(2.0, 18)
