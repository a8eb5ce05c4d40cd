"""Talk between the orders is told by what it lacks and how it begins. Source: pages hobby knitters write; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.talk import is_talk, take_talk_out
from tests.tables import each_row


@each_row(
    "sentence",
    [
        "OK, are you there?",
        "Good!",
        "Put on a good film, this is the boring bit.",
        "That's it!",
        "Send me pictures.",
        "I usually stop when I'm bored.",
        "I always use the long-tail method.",
        "Nobody will ever see it.",
        "Don't worry, it gets easier.",
        "Have a cup of tea, you deserve it.",
        "See what's happening?",
        "Trust me.",
        "My gran would be proud.",
    ],
)
def test_a_sentence_of_talk_is_known(sentence: str) -> None:
    """Between two orders a friend says something that is no order, in any words."""
    assert is_talk(sentence)
    assert reads(sentence)


@each_row(
    "sentence",
    [
        # They order, or may: the same, once more, elsewhere, in another size or yarn.
        "It's pretty, now go on.",
        "Do it again.",
        "Do that twice, it's fun.",
        "It's the same on the other side.",
        "I do this at both ends.",
        "This is only for the large size.",
        "It's for the big ones.",
        "This is for the men.",
        "You can leave it out.",
        "That part is optional.",
        "Everything is in blue from here.",
        "It is plain from here.",
        "This bit is in purple.",
        "Here you change colour.",
        "It's time to cut the yarn.",
        "It gets a stripe here.",
        "It wants a little more.",
        "It starts with a purl.",
        "This is the left front.",
        "They are worked in pairs.",
        "This one is knitted twice.",
        "It takes 4 of them.",
        # The writer's own doing may be the order in a page that tells how she did it.
        "I bound off loosely.",
        "I knit 2 rows here.",
        "I usually decrease on every round here.",
        "I always knit the first stitch.",
        "We always begin with a purl row.",
        # They begin as orders do.
        "Leave it and have a cup of tea.",
        "Steek it.",
        "Have a look at the chart and work it.",
    ],
)
def test_what_may_change_the_knitting_is_no_talk(sentence: str) -> None:
    """A sentence taken for talk is only said: what it changes would not be knitted."""
    assert not is_talk(sentence)


@pytest.mark.parametrize(
    ("printed", "rest", "said"),
    [
        ("Place a marker so you know where your round begins.", "Place a marker.", ("so you know where your round begins",)),
        ("Cast on 60 sts. Then put the kettle on, have some cake, and please tag me in your pictures!", "Cast on 60 sts. ", ("Then put the kettle on, have some cake, and please tag me in your pictures!",)),
        ("Knit 2 rnds. Want a slouchy hat? Add another full repeat here.", "Knit 2 rnds. ", ("Want a slouchy hat? Add another full repeat here",)),
        ("Cast on 60 sts (it looks like nothing, trust me).", "Cast on 60 sts.", ("it looks like nothing, trust me",)),
        ("Knit 2 rounds. (You can pick up an extra stitch in each corner. Just get rid of it on the next round.)", "Knit 2 rounds. ", ("You can pick up an extra stitch in each corner. Just get rid of it on the next round",)),
        ("Bind off loosely, sorry.", "Bind off loosely.", ("sorry",)),
        ("Knit 2 rounds. Isn't that nice? Purl 1 round.", "Knit 2 rounds. Purl 1 round.", ("Isn't that nice?",)),
        ("Join in the round, because it's easier.", "Join in the round.", ("because it's easier",)),
    ],
)
def test_talk_is_taken_out_and_said(printed: str, rest: str, said: tuple[str, ...]) -> None:
    """No word is lost: what is not worked is said with what is; each letter that stays keeps its place."""
    made = take_talk_out(as_printed(made_plain(printed)))
    assert (made.text, made.kept) == (rest, said)
    assert all(printed[place] == letter for letter, place in zip(made.text, made.places, strict=False))


@pytest.mark.parametrize(
    "printed",
    [
        "Knit 4 rows so you end with a purl row.",
        "Knit 4 rows so it's long enough for the front.",
        "Knit 1 round so that you get back to the marker.",
        "Make one so the number is even.",
        "Knit 2 rounds (that's for the small one).",
        "Knit 2 rounds (it's the last but one).",
        "Knit 2 rounds (or you might like four).",
        "Knit 2 rounds or you might run short of them twice.",
        "Knit 1 round, then 2 more.",
    ],
)
def test_a_reason_or_a_bracket_that_says_more_stays(printed: str) -> None:
    """Where it ends, how many there are to be and for whom are no reasons."""
    line = as_printed(made_plain(printed))
    assert take_talk_out(line) == line
