from __future__ import annotations

from stepper.ears.wordings import Called, Frame, Wordings, list_address_ways, strip_address


def test_a_number_is_put_into_its_frame() -> None:
    """In front, behind and around."""
    assert Frame(before="count is", after="", means=1).around("ten") == "count is ten"
    assert Frame(before="", after="left over", means=1).around("ten") == "ten left over"
    assert Frame(before="i have", after="stitches", means=1).around("ten") == "i have ten stitches"


def test_every_word_that_can_occur_is_listed_once() -> None:
    """Phrases, frames and numbers together; a model is asked for each."""
    wordings = Wordings(
        phrases={"next step": 1}, frames=(Frame(before="count is", after="", means=2),), numbers={"ten": 10}
    )
    assert wordings.words() == {"next", "step", "count", "is", "ten"}


def test_a_frame_may_have_numbers_of_its_own() -> None:
    """A length takes halves, a count does not; each way to say a number is listed once."""
    length = Frame(
        before="it measures", after="", means="length", numbers={"ten": 10, "ten and a half": 10.5}
    )
    count = Frame(before="count is", after="", means="count")
    wordings = Wordings(phrases={}, frames=(length, count), numbers={"ten": 10})
    assert wordings.numbers_of(length) == {"ten": 10, "ten and a half": 10.5}
    assert wordings.numbers_of(count) == {"ten": 10}
    assert wordings.spoken_numbers() == ("ten", "ten and a half")
    assert wordings.words() == {"it", "measures", "count", "is", "ten", "and", "a", "half"}
    assert wordings.number_words() == {"ten"}  # a half is no count: a remark may have one


def test_the_address_word_is_taken_off_whole_and_only_in_front() -> None:
    """The word in the middle, a word that begins like it, or nothing behind it is no address."""
    assert strip_address("stepper next step", "stepper") == "next step"
    assert strip_address("next step stepper", "stepper") is None
    assert strip_address("steppers next step", "stepper") is None
    assert strip_address("stepper", "stepper") is None
    assert strip_address("next step", "") == "next step"


def test_the_address_word_may_stand_behind_a_word_that_calls() -> None:
    """As people call anybody; not where the address word has such a word of its own."""
    for text in ("stepper next step", "okay stepper next step", "hey stepper next step"):
        assert strip_address(text, "stepper") == "next step", text
    for text in ("okay next step", "hey stepper", "no stepper next step"):
        assert strip_address(text, "stepper") is None, text
    assert list_address_ways("hey marigold") == ("hey marigold",)
    assert list_address_ways("") == ()


def test_a_number_without_words_around_it_may_go_on_too() -> None:
    """ "Two", a breath, "four six"; the single words count among those that can occur."""
    bare = Frame(before="", after="", means=2, numbers={"two": 2, "two four": 24})
    wordings = Wordings(phrases={}, called={"forward": Called(means=1)}, frames=(bare,))
    assert bare.is_bare
    assert not Frame(before="", after="short", means=3).is_bare
    assert wordings.may_go_on("two")
    assert not wordings.may_go_on("two four")
    assert wordings.words() == {"forward", "two", "four"}


def test_the_words_of_longer_wordings_that_count_only_behind_the_word_are_not_listed() -> None:
    """What is written down freely is taken for a cue only where it holds a word that no phrase has."""
    wordings = Wordings(phrases={"go back": 1}, called={"not now": Called(means=2), "stop": Called(means=3)})
    assert wordings.words() == {"go", "back", "stop"}


def test_the_words_of_numbers_are_listed_without_the_one_that_is_everywhere() -> None:
    """ "And" stands in many a cue that holds no number."""
    wordings = Wordings(phrases={"knit and purl": 1}, numbers={"one hundred and six": 106})
    assert wordings.number_words() == {"one", "hundred", "six"}


def test_a_number_may_go_on_when_more_words_make_another_of_it() -> None:
    """ "Two hundred" is the beginning of others, "two hundred six" is not; what stands in front has to be there."""
    halves = {"six": 6, "six and a half": 6.5, "sixty": 60}
    wordings = Wordings(
        phrases={"next step": 1},
        frames=(
            Frame(before="count is", after="", means=2),
            Frame(before="i have", after="stitches", means=2),
            Frame(before="it measures", after="", means=3, numbers=halves),
            Frame(before="it measures", after="inches", means=4, numbers=halves),
        ),
        numbers={"two hundred": 200, "two hundred six": 206, "two six": 26, "six": 6, "two": 2},
    )
    for text in ("count is two hundred", "count is two", "it measures six", "it measures sixty"):
        assert wordings.may_go_on(text), text
    for text in (
        "count is six",
        "count is two hundred six",
        "i have two stitches",
        "next step",
        "two hundred",
    ):
        assert not wordings.may_go_on(text), text
    assert wordings.is_begun("count is")
    assert not wordings.is_begun("count")


def test_what_begins_a_longer_cue_is_listed() -> None:
    """ "Go back" is no whole cue where "go back to yoke" is one, nor is what a number or a remark stands behind."""
    wordings = Wordings(
        phrases={"go back": 1, "go back to yoke": 2, "next step": 3, "take it back": 4},
        called={"take": Called(means=5)},
        frames=(Frame(before="take it", after="times", means=6), Frame(before="", after="left", means=7)),
        openings=frozenset({"make a note"}),
    )
    begun = wordings.beginnings()
    assert {"go back", "go back to", "take", "take it", "make a note", "make a", "next"} <= begun
    assert begun.isdisjoint({"next step", "go back to yoke", "take it back", "left", ""})
