"""The wording: every legal line is read, and a slip is told with the word that was meant."""

from __future__ import annotations

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.project.duration import Rounds, UntilLength
from stepper.project.instructions import (
    AtIntervals,
    ChartWork,
    Evenly,
    Phrase,
    PrintedCount,
    Repeated,
    WorkRounds,
)
from stepper.project.problems import Span
from stepper.project.reading.parsing import legal_words
from stepper.project.reading.wording import EXAMPLES, LineReading, Words, read_line
from stepper.project.stitchwork import Several, Until, Work
from tests.tables import each_row


def place_of(offset: int, length: int) -> Span:
    """Count columns from 1 on one line."""
    return Span(line=1, column=offset + 1, length=length)


def read(text: str, sizes: int = 6) -> LineReading:
    """Read a line as if it were the first of a file."""
    return read_line(text, place_of, Words(sizes=sizes))


def only(text: str, sizes: int = 6) -> object:
    """Return the one sentence of a line."""
    reading = read(text, sizes)
    assert reading.problems == ()
    assert reading.line is not None
    assert len(reading.line.sentences) == 1
    return reading.line.sentences[0]


@each_row("example", EXAMPLES)
def test_every_example_can_be_read(example: str) -> None:
    """What an error offers as a legal line must be one."""
    assert read(example).problems == ()


@each_row("example", EXAMPLES)
def test_case_does_not_matter(example: str) -> None:
    """Printed patterns begin sentences with capitals, and some print everything in them."""
    if "with a" not in example.lower() and "break a" not in example.lower():
        assert read(example.upper()).problems == ()
    assert read(example.lower()).problems == ()


def test_a_list_may_be_parted_by_colons() -> None:
    """Common in British magazines; the colon of a list ends no head and no label. Source: common practice."""
    line = read("Dec row: K to last 3 (4:5:6:7:8) sts, k2tog, k1. 80 [84:92:96:100:104] sts.").line
    assert line is not None
    assert line.label == "Dec row"
    assert [sentence.number.values for sentence in line.sentences if isinstance(sentence, PrintedCount)] == [
        (80, 84, 92, 96, 100, 104)
    ]


def test_words_may_stand_further_apart() -> None:
    """A page sets its lines to one width; places are those of the line as it stands."""
    labelled = read("Dec  round:  K1,   k2tog,  k to  end.").line
    assert labelled is not None
    assert labelled.label == "Dec round"
    line = read("Short   row 1  (RS):  K27,  turn.").line
    assert line is not None
    assert (line.numbers, line.side, line.text) == ((1,), "RS", "Short row 1 (RS): K27, turn.")
    problem = read("Knit  2   ronds.").problems[0]
    assert (problem.column, problem.length) == (11, 5)


def test_typographic_signs_are_read_as_their_plain_twins() -> None:
    """Text copied from a page has dashes, quotes and spaces of every kind."""
    assert read("Rnds 1–4:\u00a0Knit.").line is not None
    assert read("Rep rnds 1—2 5 times.").line is not None
    assert read("Knit until piece measures 12½ in.").line is not None
    assert read("Knit until piece measures 12 1/2″.").line is not None


def test_a_size_list_gives_one_number_for_each_size() -> None:
    """`k34 (36, 40, 43, 47, 49)` is six numbers in the order of the sizes."""
    sentence = only("K34 (36, 40, 43, 47, 49).")
    assert isinstance(sentence, Phrase)
    work = sentence.elements[0]
    assert isinstance(work, Work)
    assert work.times.values == (34, 36, 40, 43, 47, 49)


def test_square_brackets_hold_a_size_list_too() -> None:
    """Rule: lists read as printed, round or square."""
    sentence = only("K34 [36, 40, 43, 47, 49].")
    assert isinstance(sentence, Phrase)
    assert sentence.elements[0].times.values[-1] == 49  # type: ignore[union-attr]


def test_a_list_of_the_wrong_length_is_a_problem_at_its_place() -> None:
    """Five numbers for six sizes would shift every size after the gap."""
    problem = read("Cast on 80 (84, 92, 100, 108) sts.").problems[0]
    assert "5 numbers" in problem.message
    assert "6 sizes" in problem.message
    assert problem.column == 9


def test_a_star_repeat_runs_to_its_end() -> None:
    """`*k2, p2; rep from * to end` is the most printed line of all."""
    sentence = only("*K2, p2; rep from * to end.")
    assert isinstance(sentence, Phrase)
    several = sentence.elements[0]
    assert isinstance(several, Several)
    assert several.goal == "end"
    assert [element.stitch for element in several.elements] == ["k", "p"]  # type: ignore[union-attr]


def test_a_star_repeat_with_a_number_comes_on_top_of_the_first_time() -> None:
    """Common practice: `*k1, p1; rep from * 3 times` is worked four times in all."""
    sentence = only("*k1, p1; rep from * 3 times.")
    assert isinstance(sentence, Phrase)
    assert sentence.elements[0].times.values == (4,)  # type: ignore[union-attr]


def test_brackets_nest() -> None:
    """`*k2, (k1, yo) 2 times; rep from * to last 3 sts, k3` has a bracket in a star."""
    sentence = only("*k2, (k1, yo) 2 times; rep from * to last 3 sts, k3.")
    assert isinstance(sentence, Phrase)
    outer = sentence.elements[0]
    assert isinstance(outer, Several)
    assert isinstance(outer.elements[1], Several)
    assert outer.short is not None
    assert outer.short.values == (3,)


def test_knit_alone_is_the_whole_round() -> None:
    """`Rnd 2: Knit.` works every stitch."""
    sentence = only("Knit.")
    assert isinstance(sentence, Phrase)
    assert isinstance(sentence.elements[0], Until)
    assert sentence.elements[0].goal == "end"


def test_rounds_lengths_and_repeats_are_told_apart() -> None:
    """Two rounds, two centimetres and two times are three different durations."""
    rounds = only("Knit 2 rounds.")
    length = only("Knit for 2 cm.")
    again = only("Rep last round 2 times.")
    assert isinstance(rounds, WorkRounds)
    assert isinstance(rounds.duration, Rounds)
    assert isinstance(length, WorkRounds)
    assert isinstance(length.duration, UntilLength)
    assert length.duration.length.values == (20.0,)
    assert isinstance(again, Repeated)


def test_bind_off_five_in_pattern_is_not_five_inches() -> None:
    """ "5 in" is a length only where no word of the pattern follows."""
    sentence = only("Bind off 5 sts in pattern.")
    assert isinstance(sentence, Phrase)


def test_shaping_at_intervals_keeps_its_legs() -> None:
    """`every 8th round 6 times, then every 6th round 4 times` has two legs."""
    sentence = only("Work dec round every 8th round 6 times, then every 6th round 4 times.")
    assert isinstance(sentence, AtIntervals)
    assert [(leg.every.values, leg.times.values) for leg in sentence.legs] == [((8,), (6,)), ((6,), (4,))]
    assert sentence.label == "dec round"


def test_a_chart_line_names_rounds_and_times() -> None:
    """`Chart trail, rounds 3-9` works a part of it."""
    part = only("Chart trail, rounds 3-9.")
    whole = only("Chart trail, 2 times.")
    assert isinstance(part, ChartWork)
    assert (part.name, part.first, part.last) == ("trail", 3, 9)
    assert isinstance(whole, ChartWork)
    assert whole.times is not None
    assert whole.times.values == (2,)


def test_a_count_at_the_end_is_kept_apart_from_the_round() -> None:
    """The printed count is checked, not worked."""
    reading = read("K34, k to end. 152 (164, 180, 192, 208, 220) sts.")
    assert reading.line is not None
    assert isinstance(reading.line.sentences[1], PrintedCount)
    bracketed = read("*k4, k2tog; rep from * to end (60 sts).").line
    assert bracketed is not None
    assert isinstance(bracketed.sentences[1], PrintedCount)


def test_a_label_is_taken_off_the_front() -> None:
    """`Final increase: …` names the line for a switch of size."""
    line = read("Final increase: increase evenly to 246 sts.").line
    assert line is not None
    assert line.label == "Final increase"
    assert isinstance(line.sentences[0], Evenly)


def test_round_numbers_are_not_a_label() -> None:
    """`Rnds 1-4:` says which rounds the line is for."""
    line = read("Rnds 1-4: Knit.").line
    assert line is not None
    assert line.label is None
    assert line.numbers == (1, 2, 3, 4)


def test_anything_can_be_a_note() -> None:
    """Free words are said and shown and worth no stitches."""
    line = read("Note: try it on here; the yoke should reach the armpit (k2tog!).").line
    assert line is not None
    assert len(line.sentences) == 1


@pytest.mark.parametrize(
    ("line", "wrong", "right"),
    [
        ("Incrase evenly to 246 sts.", "Incrase", "increase"),
        ("Knit 2 ronds.", "ronds", "rounds"),
        ("*K2, p2; rep form * to end.", "form", "from"),
        ("k1, k2tgo, k to end.", "k2tgo", "k2tog"),
        ("Bind off strechily.", "strechily", "stretchily"),
        ("Knit until peice measures 30 cm.", "peice", "piece"),
        ("Return left sleeve to nedles.", "nedles", "needles"),
    ],
)
def test_a_misspelt_word_is_answered_with_the_legal_one(line: str, wrong: str, right: str) -> None:
    """The error teaches the wording."""
    problem = read(line).problems[0]
    assert f'"{wrong}"' in problem.message
    assert f'"{right}"' in problem.hint.lower()
    assert problem.column == line.index(wrong) + 1


def test_what_no_word_mends_gets_no_line_that_says_something_else() -> None:
    """A line that only looks alike would send her astray; what is only to be said can be a note."""
    problem = read("Frobnicate the purple stitches sideways.").problems[0]
    assert "A line that can be read" not in problem.hint
    assert "Note:" in problem.hint


def test_legal_words_are_words() -> None:
    """Suggestions come from the grammar, not from its notation."""
    words = legal_words()
    assert {"increase", "evenly", "rounds", "k2tog", "needles", "stretchily"} <= words
    assert all(re.fullmatch(r"[\w&/'-]+", word) for word in words)


@given(st.text(alphabet=st.characters(blacklist_categories=["Cs"]), max_size=60))
def test_no_text_makes_the_reader_fall_over(text: str) -> None:
    """Whatever is typed, the answer is a line or a problem, never a traceback."""
    reading = read(text.replace("\n", " "))
    assert (reading.line is None) == bool(reading.problems)


def test_a_stop_after_an_abbreviation_ends_the_sentence() -> None:
    """`Cast on 80 sts. Join in the round.` is two sentences on one line."""
    for line in (
        "Cast on 80 sts. Join in the round.",
        "Knit 2 rnds. 80 sts.",
        "Work 2 rounds in rib. 80 sts.",
    ):
        reading = read(line)
        assert reading.line is not None, reading.problems
        assert len(reading.line.sentences) == 2


def test_a_line_for_one_size_need_not_say_size() -> None:
    """ "L only: …" is for that size alone, and not a name of the line that is worked in every size."""
    words = Words(sizes=3, size_names=("S", "M", "L"))
    for line in ("L only: Knit 2 rounds.", "Size L only: Knit 2 rounds.", "For size L: Knit 2 rounds."):
        made = read_line(line, place_of, words).line
        assert made is not None
        assert (made.only, made.label) == ((2,), None)
    problem = read_line("XL only: Knit 2 rounds.", place_of, words).problems[0]
    assert 'no size "XL"' in problem.message


@pytest.mark.parametrize(
    "line",
    [
        "Grown-up size: Knit 2 rounds.",
        "Grown-ups: Knit 2 rounds.",
        "For the adult size: Knit 2 rounds.",
        "Grown-up size only: Knit 2 rounds.",
    ],
)
def test_a_size_before_the_word_is_no_name_of_the_line(line: str) -> None:
    """ "Adult size: …" was worked in the child's size too, under that name."""
    made = read_line(line, place_of, Words(sizes=2, size_names=("child", "grown-up"))).line
    assert made is not None
    assert (made.only, made.label) == ((1,), None)


@pytest.mark.parametrize(
    "line", ["Men: Knit 2 rounds.", "Large size: Knit 2 rounds.", "Women and men: Knit 2 rounds."]
)
@pytest.mark.parametrize("sizes", [(), ("child", "grown-up")])
def test_a_size_that_the_file_does_not_have_is_refused(line: str, sizes: tuple[str, ...]) -> None:
    """Taken for a name, the line would be worked in every size."""
    assert read_line(line, place_of, Words(sizes=len(sizes), size_names=sizes)).line is None


@pytest.mark.parametrize(
    ("line", "told"), [("MC: Knit 2 rounds.", "With MC"), ("S: Knit 2 rounds.", "Size S only")]
)
def test_a_label_that_is_a_yarn_or_sizes_is_refused(line: str, told: str) -> None:
    """Taken for a name, the yarn would not be taken up and the line would be worked in every size."""
    problem = read_line(line, place_of, Words(sizes=3, names={"MC"}, size_names=("S", "M", "L"))).problems[0]
    assert told in problem.hint


def test_a_line_for_several_rows_gives_one_row() -> None:
    """ "Next 2 rows: knit 4 rows" says two things."""
    made = read("Next 2 rows: K2, p2, k to end. 80 sts.").line
    assert made is not None
    assert made.times is not None
    assert made.times.values == (2,)
    assert "one row" in read("Next 2 rows: Knit 4 rows.").problems[0].message


def test_do_not_turn_is_told_as_changing_nothing() -> None:
    """The side of the next row is counted as after any row; she has to know."""
    made = read("Knit 1 row. Do not turn.").line
    assert made is not None
    assert made.said == ("Do not turn",)
    assert "other side" in made.assumed[0].text


def test_what_is_allowed_on_top_of_a_length_is_told() -> None:
    """"20 cm, allowing 5 cm for the toe" may be a foot of 20 cm or of 25: it is worked as it stands, and she hears it."""
    made = read("Knit until foot measures 20 cm, allowing 5 cm for the toe.").line
    assert made is not None
    assert made.said == ("allowing 5 cm for the toe",)
    assert ["on top" in assumed.text for assumed in made.assumed] == [True]


def test_a_problem_in_free_words_stands_under_the_word() -> None:
    """The column is that of the word, and the hint says what to do with it."""
    line = "Bind off 4 sts for underarm twice."
    problem = read(line).problems[0]
    assert (problem.column, problem.length) == (line.index("twice") + 1, len("twice"))
    assert "Note:" in problem.hint


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("Dec 1 st at each end of next row.", "how far from the edge"),
        ("Inc 1 st at the beginning of next row.", "how far from the edge"),
        ("Dec 1 st at each end of every 4th row 3 times.", "how far from the edge"),
        ("Change to US 8 (3.5 mm) needles.", "US 8 is 5 mm in the tables"),
    ],
)
def test_what_a_line_leaves_open_is_told_once(line: str, told: str) -> None:
    """An assumption in silence is found when the garment does not fit."""
    made = read(line).line
    assert made is not None
    assert [told in assumed.text for assumed in made.assumed] == [True]


def test_needle_sizes_that_agree_are_not_told() -> None:
    """A note on every needle would hide the one that matters. US 6 is 4 mm in every table."""
    made = read("Change to US 6 (4 mm) needles.").line
    assert made is not None
    assert made.assumed == ()


def test_a_count_behind_a_colon_ends_a_row() -> None:
    """ "K1, k2tog, k to end: 39 sts." is a row with its count, not the name of one."""
    made = read("K1, k2tog, k to end: 39 sts.").line
    assert made is not None
    assert made.label is None
    assert [type(sentence).__name__ for sentence in made.sentences] == ["Phrase", "PrintedCount"]


@pytest.mark.parametrize("line", ["(" * 300 + "k1", "K1, " * 3000 + "k1.", "(k1, " * 200])
def test_a_line_that_no_pattern_has_is_refused_at_once(line: str) -> None:
    """A slip of the clipboard must not stop the program; what is wrong is told."""
    problem = read(line).problems[0]
    assert "brackets" in problem.message or "longer" in problem.message


def test_stitches_of_a_provisional_cast_on_are_set_on_the_needle_or_knitted() -> None:
    """Set on the needle they are no row; "pick up" alone was knitted. Common practice."""
    told = read("Pick up 20 sts from the provisional cast-on.").problems
    assert "set on the needle or knitted onto it" in told[0].message
    assert read("Pick up and knit 20 sts from the provisional cast-on.").line is not None


@each_row(
    "line, whether",
    [
        ("Row 4: DS, p to the st before the DS, turn.", False),
        ("Row 3: K to stitch before last double stitch on the other side, and turn.", False),
        ("Row 4: DS, p to 1 st before the DS, turn.", True),
        ("Row 4: DS, p to last DS, turn.", True),
    ],
)
def test_a_turn_at_the_stitch_before_a_double_one_has_to_say_whether_that_is_worked(line: str, *, whether: bool) -> None:
    """A heel whose double stitches lie side by side is printed so, and one with a stitch between them as well."""
    problems = read(line).problems
    assert whether is (problems == ())
    assert whether or "before the turn is not said" in problems[0].message


def test_what_the_stretches_of_a_row_are_for_is_told_in_their_order() -> None:
    """ "For back. For sleeve. For front." says of no stretch which it is, and the second sleeve was lost."""
    line = read("Set-up rnd: k28 for back, pm, k10 for sleeve, pm, k28 for front, pm, k10 for sleeve.").line
    assert line is not None
    assert line.said == ("the stretches of the row are in turn for back, for sleeve, for front, for sleeve",)
    alone = read("K28 for back, k10.").line
    assert alone is not None
    assert alone.said == ("for back",)
