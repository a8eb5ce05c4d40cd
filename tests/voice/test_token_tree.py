from __future__ import annotations

from stepper.voice.token_tree import Place, TokenTree, written
from stepper.voice.wordings import Frame, Wordings

WORDINGS = Wordings(
    phrases={"go back": "back", "go on": "next", "i have a loop": "loop"},
    frames=(
        Frame(before="i have", after="", means="have"),
        Frame(before="i have", after="stitches", means="count"),
        Frame(before="", after="short", means="short"),
    ),
    numbers={"six": 6, "forty six": 46},
)


def split(text: str) -> tuple[int, ...]:
    """Take each word for one token."""
    return tuple(hash(word) for word in text.split())


def readings(tree: TokenTree, text: str) -> set[tuple[str, str]]:
    """Walk a text word by word; give what is complete at its end, and the number in it."""
    places: list[Place] = tree.start()
    for token in split(text):
        places = [after for place in places for found, after in tree.following(place) if found == token]
    complete = [tree.complete(place) for place in places]
    return {(each[0], each[2]) for each in complete if each is not None}


def test_every_phrase_and_every_number_in_every_frame_is_a_way_through_the_tree() -> None:
    """In words or in figures, with words in front, behind or around it."""
    tree = TokenTree(WORDINGS, "", split)
    for phrase in WORDINGS.phrases:
        assert readings(tree, written(phrase)) == {(phrase, "")}
    for frame in WORDINGS.frames:
        for said, number in WORDINGS.numbers.items():
            for way in (said, str(number)):
                assert (frame.around(said), said) in readings(tree, written(frame.around(way))), way


def test_nothing_else_is_complete() -> None:
    """A beginning, a number alone, words behind a phrase, another order of words."""
    tree = TokenTree(WORDINGS, "", split)
    for text in ("Go", "Six", "Go back on", "Back go", "I have", "Forty short", ""):
        assert readings(tree, text) == set(), text


def test_behind_an_address_word_the_same_can_be_said_and_nothing_without_it() -> None:
    """The word belongs to the way, not to what comes out."""
    tree = TokenTree(WORDINGS, "stepper", split)
    assert readings(tree, "Stepper, go back") == {("go back", "")}
    assert readings(tree, "Stepper, six short") == {("six short", "six")}
    assert readings(tree, "Stepper, I have 46 stitches") == {("i have forty six stitches", "forty six")}
    assert readings(tree, "Go back") == set()


def test_a_text_is_written_as_prose_is() -> None:
    """A capital in front and for "I"."""
    assert written("where am i") == "Where am I"
    assert written("i count six") == "I count six"
