"""A sentence is cut into clauses, each with what it does. All examples are invented; source: English grammar."""

from __future__ import annotations

from stepper.project.rewording.clauses.clause import Mood, clauses_of, words_of
from tests.tables import each_row


def moods(sentence: str) -> list[Mood]:
    """Return what each clause of a sentence does."""
    return [each.mood for each in clauses_of(words_of(sentence))]


def test_contractions_are_taken_apart_and_fractions_stay_whole() -> None:
    """A verb hidden in "it's" makes a statement, and half a ball is no two numbers."""
    assert words_of("It's 1½ balls (you'll see)") == [
        *("it", "'s", "1½", "balls", "(", "you", "'ll", "see", ")"),
    ]
    assert words_of("The knitter's cast-on") == ["the", "knitter's", "cast-on"]


@each_row(
    ("sentence", "mood"),
    [
        ("The edge curls a little", Mood.STATES),
        ("Lace looks lovely", Mood.STATES),
        ("The cuff may look small", Mood.STATES),
        ("Weigh the yarn", Mood.ORDERS),
        ("Now just weigh the yarn", Mood.ORDERS),
        ("Do weigh the yarn", Mood.ORDERS),
        ("Don't worry", Mood.FORBIDS),
        ("Do not twist the edge", Mood.FORBIDS),
        ("Never iron lace", Mood.FORBIDS),
        ("Is the hat too wide", Mood.ASKS),
        ("How lovely", Mood.ASKS),
        ("Soft and warm", Mood.PHRASE),
    ],
)
def test_a_clause_is_told_by_its_verb_and_what_stands_before_it(sentence: str, mood: Mood) -> None:
    """An order taken for a statement would be dropped from the plan without a word."""
    assert moods(sentence) == [mood]


def test_a_verb_nobody_has_listed_orders_if_an_object_follows() -> None:
    """No list has every verb, and what orders may not pass for a name."""
    assert moods("Frobble the hem") == [Mood.ORDERS]
    assert moods("Woolly hem") == [Mood.PHRASE]


def test_each_of_two_orders_is_a_clause() -> None:
    """The second of them would hide behind a harmless first: "weigh the yarn and slip the marker"."""
    first, second = clauses_of(words_of("Weigh the yarn and slip the marker"))
    assert (first.verbs, first.rest) == (("weigh",), ("the", "yarn"))
    assert (second.verbs, second.rest) == (("slip",), ("the", "marker"))


def test_two_things_joined_are_one_clause() -> None:
    """An "and" within a name cuts nothing off."""
    assert len(clauses_of(words_of("The hat and the cowl look lovely"))) == 1


def test_a_condition_is_apart_from_what_hangs_on_it() -> None:
    """What is worked stands behind the condition, and is looked at by itself."""
    condition, order = clauses_of(words_of("If it's too wide, use a smaller needle"))
    assert (condition.mood, condition.joint) == (Mood.CONDITION, "if")
    assert (order.mood, order.verbs) == (Mood.ORDERS, ("use",))


def test_a_reason_is_a_statement_and_no_condition() -> None:
    """What a condition says is free; what a reason says is claimed."""
    _, reason = clauses_of(words_of("Count the stitches because the lace hides mistakes"))
    assert (reason.mood, reason.joint, reason.subject) == (Mood.STATES, "because", ("the", "lace"))


def test_the_verb_of_a_relative_clause_is_not_the_statements_own() -> None:
    """In "the yarn I used is soft" the statement says how the yarn is: "used" orders nothing of it."""
    (said,) = clauses_of(words_of("The yarn I used is soft"))
    assert (said.subject, said.verbs, said.rest) == (("the", "yarn", "i", "used"), ("is",), ("soft",))


def test_the_verb_behind_an_auxiliary_belongs_to_it() -> None:
    """By "may" alone nobody knows what may happen."""
    (said,) = clauses_of(words_of("You'll really love it"))
    assert (said.subject, said.verbs, said.rest) == (("you",), ("'ll", "love"), ("it",))
