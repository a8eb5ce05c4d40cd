from __future__ import annotations

import re
from functools import cache

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from stepper.project.problems import Problem, Span
from stepper.project.reading.explaining import Trials, explain, mend, misspelt_head
from stepper.project.reading.parsing import Stopped
from stepper.project.reading.wording import EXAMPLES, LineReading, Words, read_line
from tests.project.slips import legal_lines, slips_of, words_of

NAMES = frozenset({"trail"})


def read(text: str, sizes: int = 6, names: frozenset[str] = NAMES) -> LineReading:
    """Read a line as if it were the first of a file."""
    return read_line(
        text,
        lambda at, length: Span(line=1, column=at + 1, length=length),
        Words(sizes=sizes, names=set(names)),
    )


@cache
def lines() -> dict[str, tuple[int, frozenset[str]]]:
    """Return the legal lines that are read by themselves, with what they rest on.

    A row with the marks of a part is read with the rows around it, not by itself.
    """
    return {line: known for line, known in sorted(legal_lines().items()) if read(line, *known).line is not None}


def suggested(problem: Problem) -> list[str]:
    """Return the words that a problem suggests."""
    return re.findall(r'"([^"]*)"', problem.hint) if problem.hint.startswith("Did you mean") else []


def without_number(word: str) -> str:
    """Return a stitch without the number behind it: sl for sl1."""
    return re.sub(r"(?<=sl)\d+$", "", word)


@st.composite
def misspelt(draw: st.DrawFn) -> tuple[str, str, str]:
    """Draw a legal line with one slip in one word: the line as it was, as it is, and the word."""
    line = draw(st.sampled_from(list(lines())))
    at, word = draw(st.sampled_from(words_of(line) or [(0, line[:1])]))
    slip = draw(st.sampled_from(list(slips_of(word))))
    return line, line[:at] + slip + line[at + len(word) :], word


@given(misspelt())
@settings(max_examples=200, deadline=None)
def test_for_any_slip_in_any_word_the_legal_word_is_suggested(case: tuple[str, str, str]) -> None:
    """A line that cannot be read any more teaches the word that was meant, whichever of its words it was.

    A slip inside a name (of a sleeve, a marker, a label) leaves the line legal, and is not counted here.
    """
    line, wrong, word = case
    assume(not line.startswith("Own words"))  # she writes what she likes there, and what is wrong is said so
    sizes, names = lines()[line]
    reading = read(wrong, sizes, names)
    assume(reading.line is None)
    # Where a length is measured from, a label that instructs, and a length or an edge by a name that is not known
    # have an answer of their own: what to write.
    own = ("Measure from", "Say it in the line", "Write the length that you want", "Write its side")
    assume(not reading.problems[0].hint.startswith(own))
    assert word.lower() in [without_number(each).lower() for each in suggested(reading.problems[0])]


@pytest.mark.parametrize(
    ("line", "word", "offered"),
    [
        ("Incrase evenly to 246 sts.", "Incrase", ["increase"]),
        ("Rdn 1: Knit.", "Rdn", ["rnd"]),
        ("Noet: she was here, and gone.", "Noet", ["note"]),
        ("k1, ktog, k to end.", "ktog", ["k2tog", "k3tog"]),
        ("Work dec round every 8ht round 6 times.", "8ht", ["8th"]),
        ("With A, aown words: as before. 96 sts.", "aown", ["own"]),
    ],
)
def test_the_word_and_all_it_may_stand_for_are_told(line: str, word: str, offered: list[str]) -> None:
    """Where several legal words are as near, none is chosen silently."""
    problem = read(line).problems[0]
    assert problem.message == f'"{word}" is not understood here.'
    assert suggested(problem)[: len(offered)] == offered
    assert line[problem.column - 1 :].startswith(word)


def test_a_word_that_orders_may_be_a_slip_for_one_that_does_not() -> None:
    """Both are told: she may have typed "then" for "the", or have two things in one line."""
    (problem,) = read("Cut yarn, and draw it through then sts.").problems
    assert '"then" in' in problem.message
    assert "the" in suggested(problem)
    assert "an instruction of its own" in problem.hint


def test_two_slips_in_a_line_are_two_problems() -> None:
    """She mends both at once."""
    problems = read("Incrase evenly to 246 sts. Kint 2 ronuds.").problems
    assert [suggested(problem)[0] for problem in problems] == ["increase", "knit", "rounds"]


def test_the_line_that_was_meant_is_kept_for_the_arithmetic() -> None:
    """The rest of the file is checked as if the word were right, and places stay those of the file."""
    meant = read("Incrase evenly to 246 sts.").meant
    assert meant is not None
    (sentence,) = meant.sentences
    assert read("Increase evenly to 246 sts.").line is not None
    assert sentence.place.column == 1


def test_a_line_of_prose_gets_no_made_up_word() -> None:
    """A guess for every word of a letter would teach nothing."""
    problem = read("She walked along the shore until the tide had turned again.").problems[0]
    assert suggested(problem) == []
    assert "can stand as a note" in problem.hint
    assert not any(example in problem.hint for example in EXAMPLES)


def test_a_line_that_says_almost_the_same_is_offered() -> None:
    """Numbers apart, all words but one are those of a line that is read."""
    assert "Chart trail, rounds 3-9." in read("Chart trail, rounds 4 upto 8.").problems[0].hint


@pytest.mark.parametrize(
    ("line", "word"),
    [
        ("Using the grommet, cast on 40 sts.", "grommet"),
        ("Work even until armhole measures 18 cm, ending with a wibble row.", "wibble"),
        ("Bind off 4 sts at beg of the furthest 2 rows.", "furthest"),
    ],
)
def test_the_word_that_is_strange_is_told_and_not_the_good_one_before_it(line: str, word: str) -> None:
    """"Using" is read in a hundred other lines; what nobody knows is what follows."""
    assert read(line).problems[0].message.startswith(f'"{word}" is not understood here')


def test_many_bad_lines_share_one_search() -> None:
    """Each trial reads a line; seventy lines with a search of their own took eight seconds."""
    words = Words(sizes=1, trials=Trials(left=200))
    for number in range(70):
        place = Span(line=number + 1, column=1)
        found = read_line(f"Knti {number} ruonds of weft and then selvdge.", lambda *_, here=place: here, words)
        assert found.problems
    assert words.trials.left > -80


def test_a_label_stays_a_label() -> None:
    """Only what is one slip from a round with a number is taken for one."""
    assert misspelt_head("Step 1") is None
    assert misspelt_head("First increase") is None
    assert misspelt_head("Ronud 12") is not None
    assert mend("Knit 2 rounds.", NAMES) == ([], "Knit 2 rounds.")


def test_what_works_stitches_is_not_sent_to_a_note() -> None:
    """In a note they would be left out, and every count after it would be off."""
    assert read("K10, grommet 4, k to end.").problems[0].hint == ""


def test_words_that_ask_for_something_else_are_no_slip() -> None:
    """"The marked stitch" is one letter from "the marker", and another place."""
    problem = read("Mark the center st, then knit to the markers of the marked stitches.").problems[0]
    assert suggested(problem) == []
    assert "pm, k1, pm" in problem.hint


def test_a_side_of_the_work_and_the_letter_of_a_step_are_no_slips() -> None:
    """A suggestion that cannot be meant sends her off to change what is right."""
    for line in ("A.", "K2, p2 WS"):
        told = explain(line, 0, Stopped(0, line), frozenset(), ())
        assert "Did you mean" not in told.slips[0].hint
