"""Rows kept in the page's own words: what is taken off them, and which words need a line that is read."""

from __future__ import annotations

import pytest

from stepper.project.duration import UntilLength, UntilLike, UntilRows
from stepper.project.instructions import BindOff, Line, OwnWords, Phrase, PrintedCount, WithYarn
from stepper.project.problems import Problem, Span
from stepper.project.reading.own_words import find_depended_on, printed_words
from stepper.project.reading.wording import Words, read_line
from stepper.project.stitchwork import Work
from tests.tables import each_row

WORDS = Words(sizes=3, size_names=("S", "M", "L"), names={"MC", "A"})


def place(offset: int, length: int) -> Span:
    """Place a stretch on the first row of a file."""
    return Span(line=1, column=offset + 1, length=length)


def read(text: str) -> Line:
    """Read a line without problems."""
    reading = read_line(text, place, WORDS)
    assert reading.problems == ()
    assert reading.line is not None
    return reading.line


def own_of(line: Line) -> OwnWords:
    """Return the one sentence in own words."""
    (own,) = (one for one in line.sentences if isinstance(one, OwnWords))
    return own


def refused(text: str) -> Problem:
    """Return the one problem of a line."""
    (problem,) = read_line(text, place, WORDS).problems
    return problem


@pytest.mark.parametrize(
    ("text", "words", "count"),
    [
        ("Own words: *k2, wyif sl2, yb; rep from * across. 96 sts.", "*k2, wyif sl2, yb; rep from * across", (96,)),
        ("own words:  Twist it!  (96 sts)", "Twist it!", (96,)),
        ("Own words: Twist it – 96 sts.", "Twist it", (96,)),
        ("Own words: twist. 96 (98, 100) sts", "twist", (96, 98, 100)),
        ("Own words: twist. 96 sts rem.", "twist", (96,)),
        ("Own words: Knit. Purl 2 rounds.", "Knit. Purl 2 rounds", None),
        ("Own words: twist to last 6 sts.", "twist to last 6 sts", None),
        ("Own words: twist to end, then 3 sts.", "twist to end, then 3 sts", None),
        ("Own words: k2, “brk” 1 × 3", "k2, “brk” 1 × 3", None),
    ],
)
def test_only_a_count_that_ends_the_words_by_itself_is_taken_off(
    text: str, words: str, count: tuple[int, ...] | None
) -> None:
    """A number in the last words may be any: what is not a sentence of its own stays with them."""
    own = own_of(read(text))
    assert own.text == words
    assert (own.count.number.values if own.count is not None else None) == count


def test_the_count_keeps_its_place() -> None:
    """A problem with it stands under it."""
    own = own_of(read("Own words: twist. 96 (98, 100) sts."))
    assert isinstance(own.count, PrintedCount)
    assert (own.count.place.column, own.count.number.place.length) == (19, 12)
    assert refused("Own words: twist. 96 (98) sts.").column == 19
    assert refused("Own words, 4 (6) rows: twist.").column == 12


@pytest.mark.parametrize(
    ("text", "label", "numbers", "side", "rows", "several"),
    [
        ("Row 5 (RS): Own words: twist.", None, (5,), "RS", None, False),
        ("Rnds 3-6: Own words: twist.", None, (3, 4, 5, 6), "", None, True),
        ("Rnds 3-6: Own words, 4 rounds: twist.", None, (3, 4, 5, 6), "", None, True),
        ("Decrease round: Own words: twist.", "Decrease round", (), "", None, False),
        ("Next 4 rows: Own words: twist.", None, (), "", (4,), False),
        ("Own words, 4 (6, 8) rows: twist.", None, (), "", (4, 6, 8), False),
        ("Own words, two rounds: twist.", None, (), "", (2,), False),
        ("All WS rows: Own words: twist.", None, (), "WS", None, True),
    ],
)
def test_what_stands_before_them_is_read_as_before_any_row(
    text: str,
    label: str | None,
    numbers: tuple[int, ...],
    side: str,
    rows: tuple[int, ...] | None,
    several: bool,
) -> None:
    """She keeps the head of the row as it is printed and puts two words behind it."""
    line = read(text)
    own = own_of(line)
    assert (line.label, line.numbers, line.side or line.every) == (label, numbers, side)
    assert (own.rows.values if own.rows is not None else None, own.several) == (rows, several)
    assert own.text == "twist"


@pytest.mark.parametrize(
    ("text", "lasts"),
    [
        ("Own words, until piece measures 12 (13, 14) cm: twist.", UntilLength),
        ("Own words, until piece measures 12 cm from cast-on, ending with a WS row: twist.", UntilLength),
        ("Own words, for 5 cm: twist.", UntilLength),
        ("With A, own words, until work measures 5 in: twist.", UntilLength),
        ("Own words, until piece measures same as back to armhole: twist.", UntilLike),
        ("Own words, until 40 rows have been worked in all: twist.", UntilRows),
    ],
)
def test_how_long_the_words_are_worked_is_read_as_in_any_line(text: str, lasts: type) -> None:
    """A page gives a length for a pattern that only its picture shows; it stands where a number of rows does."""
    own = own_of(read(text))
    assert isinstance(own.lasts, lasts)
    assert (own.text, own.rows) == ("twist", None)


def test_a_number_of_rows_may_stand_as_a_length_does() -> None:
    """ "For 4 rows" is four rows."""
    own = own_of(read("Own words, for 4 rows: twist."))
    assert own.rows is not None
    assert (own.rows.values, own.lasts) == ((4,), None)


def test_the_length_keeps_its_place() -> None:
    """A problem with it stands under it."""
    assert refused("Own words, until piece measures 12 (13) cm: twist.").column == 33
    misspelt = refused("Own words, until peice measures 12 cm: twist.")
    assert (misspelt.column, misspelt.hint) == (18, 'Did you mean "piece"?')
    unread = refused("Own words, in leaf pattern: twist.")
    assert (unread.column, unread.length) == (12, 15)
    assert '"Own words, until piece measures 12 cm: …"' in unread.hint


@pytest.mark.parametrize(
    ("text", "known"),
    [
        ("Own words, cast on 38 (40, 42) sts: begin as pictured.", ("co", (38, 40, 42))),
        ("Own words, pick up and knit 31 sts: along the rim.", ("pu", (31,))),
        ("With A, own words, CO 38 sts: begin as pictured.", ("co", (38,))),
    ],
)
def test_stitches_that_come_are_said_before_the_colon(text: str, known: tuple[str, tuple[int, ...]]) -> None:
    """A first sentence in words of the page's own begins a piece all the same."""
    beside = own_of(read(text)).beside
    assert isinstance(beside, Phrase)
    (work,) = beside.elements
    assert isinstance(work, Work)
    assert work.times is not None
    assert (work.stitch, work.times.values) == known


@pytest.mark.parametrize("words", ["bind off all sts", "cast off", "bind off"])
def test_all_stitches_may_be_bound_off_in_words(words: str) -> None:
    """How, the page says in its own way."""
    own = own_of(read(f"Own words, {words}: cast off with the spare needle."))
    assert isinstance(own.beside, BindOff)
    assert own.text == "cast off with the spare needle"


def test_stitches_that_go_on_hold_are_said_before_the_colon() -> None:
    """How many and for what; the words may speak of the holder then."""
    own = own_of(read("Row 7: Own words, hold 12 sts for thumb: slip the thumb sts to waste yarn, twist to end."))
    assert [(one.name, one.times.values) for one in own.held if one.times is not None] == [("thumb", (12,))]


def test_a_yarn_may_be_taken_up_before_them() -> None:
    """The yarn of the row is what the stash is reckoned with."""
    line = read("With A, own words: twist.")
    assert isinstance(line.sentences[0], WithYarn)
    assert isinstance(line.sentences[1], OwnWords)


def test_a_row_for_some_sizes_has_its_counts_for_these() -> None:
    """As other rows have."""
    line = read("Sizes M and L only: Own words: twist. 96 (98) sts.")
    count = own_of(line).count
    assert line.only == (1, 2)
    assert count is not None
    assert count.number.values[1:] == (96, 98)


@each_row(
    ("text", "told"),
    [
        ("Own words twist it", "a colon is missing"),
        ("Own words:", "no words follow"),
        ("Own words: 96 sts.", "no words follow"),
        ("Own words: work to the neck, bind off 12 sts, work to end. 60 sts.", "stitches bound off leave an edge"),
        ("Own words: slip 12 sts onto a holder, twist to end. 60 sts.", "put on hold or taken back there"),
        ("Own words: hold 12 sts behind, twist. 60 sts.", "put on hold or taken back there"),
        ("Own words: k20, w&t, p10, w&t.", "the row is turned before its end"),
        ("Own words: k20, turn and work back.", "the row is turned before its end"),
        ("Own words: cast on 12 more and join in the round. 60 sts.", "rows become rounds there"),
        ("Own words: twist, AT THE SAME TIME shape the neck.", "two things are worked at the same time"),
        ("Own words: cast on 6 sts, twist to end.", "stitches come onto the needles there"),
        ("Own words: pick up the dropped sts.", "stitches come onto the needles there"),
        ("Own words: twist the panel (12 sts).", '"(12 sts)." may be the count after the row'),
        ("Rnds 3-6: Own words, 2 rounds: twist.", "the line numbers 4 rows, and says otherwise"),
        ("Next 4 rows: Own words, 1 row: twist.", "the line says twice how many rows it is for"),
        ("Rnd 2: Own words, for 5 cm: twist.", "the line says twice how many rows it is for"),
        ("Own words, k2, p2: twist.", "it is not understood how long the words are worked"),
        ("Own words, until piece measures 5 cm, k5: twist.", "it is not understood how long the words are"),
        ("Own words, bind off 6 sts: cast off at the neck.", "it is not understood what comes or goes"),
        ("Own words, hold the sts: slip them to a holder.", "it is not understood what comes or goes"),
        ("Own words, cast on 8 sts and join in the round: as pictured.", "what comes or goes"),
        ("Own words, cast on 8 sts: as pictured, join in the round.", "rows become rounds there"),
        ("Own words, hold 8 sts: slip them to a holder, bind off 3 sts.", "stitches bound off leave an edge"),
        ("Row 5: Own words, bind off all sts: as pictured.", "the line says twice which row it is for"),
        ("Next 2 rows: Own words, hold 8 sts: as pictured.", "stitches go on hold in one row"),
        ("Own words, until 96 sts rem: twist.", "nobody can tell when that is reached"),
        ("Next 2 rows: Own words, work 25 sts, bind off 10 sts: as pictured.", "stitches come, go or wait in one row"),
        ("Own words, work 25 sts, k2tog, work 10 sts: as pictured.", "which stitches come, go or wait"),
        ("Own words, work 25 sts, k to end: as pictured.", "which stitches come, go or wait"),
        ("Own words, work 25 (27, 29) sts to 24, bind off 4 sts, work 9 sts to 8: as pictured.", "which stitches come, go or wait"),
        ("Own words, work 25 sts, turn, hold 35 sts: join in the round.", "rows become rounds there"),
    ],
)
def test_words_on_which_later_rows_depend_need_a_line_that_is_read(text: str, told: str) -> None:
    """A row kept in words is one whole row on the stitches on the needles: anything else would be lost."""
    assert told in refused(text).message


@pytest.mark.parametrize("text", ["Own words: twist to end, turn.", "Own words: cast on 6 sts, twist. 60 sts."])
def test_a_turn_at_the_end_and_stitches_that_are_counted_are_no_hindrance(text: str) -> None:
    """Rows are turned at their ends anyway."""
    assert own_of(read(text))


def test_a_note_may_speak_of_them() -> None:
    """What begins as a note is one."""
    assert not any(isinstance(one, OwnWords) for one in read("Note: Own words: twist.").sentences)


def test_the_words_are_no_words_of_the_line() -> None:
    """"Row" or "round" in free words says nothing of how the piece is worked."""
    assert read("Rnd 2: Own words: twist over the row below.").text == "Rnd 2: Own words:"


@pytest.mark.parametrize(
    ("text", "column", "meant"),
    [
        ("Owm words: twist.", 1, "own"),
        ("Rnd 2: Own wrods: twist.", 12, "words"),
        ("Tuck round: Owwn words: twist.", 13, "own"),
        ("Own words, 4 ronds: twist.", 14, "rounds"),
        ("Own words: twist. 96 stss.", 22, "sts"),
        ("Own words, bind aoff all sts: as the picture shows.", 17, "off"),
        ("Own words, cast onn 40 sts: begin at the wrist.", 17, "on"),
    ],
)
def test_a_slip_in_the_words_around_them_is_pointed_at(text: str, column: int, meant: str) -> None:
    """Else the row would be one of no kind, or its count only said."""
    problem = refused(text)
    assert (problem.column, problem.hint) == (column, f'Did you mean "{meant}"?')


@pytest.mark.parametrize("text", ["Own words, bind off frobs sts: twist.", "Own words, cast on the wrist: begin."])
def test_a_word_that_is_right_is_not_suggested_in_its_own_place(text: str) -> None:
    """What stands behind it is what was not understood: how to write it is told."""
    assert refused(text).hint.startswith("Before the colon stands")


def test_two_other_words_before_a_colon_are_a_label() -> None:
    """One of the two has to be right before the other is taken for a slip."""
    assert read("Down wards: Knit.").label == "Down wards"


def test_a_turn_before_stitches_on_hold_is_the_end_of_the_row() -> None:
    """What is behind it waits, and is known; where more is worked behind the turn, the line is two rows."""
    assert own_of(read("Own words, hold 12 sts for neck: patt 28, turn; leave the others on a thread.")).held
    told = "Own words, hold 12 sts for neck: patt 28, turn and work back, the others on a thread."
    assert "the row is turned before its end" in refused(told).message


def test_what_later_rows_would_have_to_know_is_found_by_kind() -> None:
    """Whoever keeps such words as rows has to ask about each."""
    assert find_depended_on("Twirl to the end.") == {}
    words = "Cast off 3, k4, turn, slip 5 to a holder, at the same time twirl."
    assert set(find_depended_on(words)) == {"go", "turn", "held", "at once"}
    assert set(find_depended_on("Join in the round.")) == {"join"}
    for words in ("let ten go by binding them off", "cast these sts off", "bind 10 off"):
        assert set(find_depended_on(words)) == {"go"}
    for words in ("put eight on a thread", "leave them on a spare needle", "on scrap yarn", "onto a length of waste yarn"):
        assert set(find_depended_on(words)) == {"held"}
    for words in ("knit to the marking thread", "with yarn on a bobbin", "change to a smaller needle"):
        assert find_depended_on(words) == {}


@pytest.mark.parametrize(
    ("line", "printed"),
    [
        ("Row 2: Own words: twirl 4, turn. 40 sts.", "Row 2: twirl 4, turn. 40 sts."),
        ("Own words, 4 rounds: twirl 4.", "twirl 4."),
        ("Own words, hold 8 sts for thumb: twirl 8.", "twirl 8."),
        ("Knit 4 rounds.", "Knit 4 rounds."),
    ],
)
def test_a_line_in_own_words_is_shown_as_the_page_prints_it(line: str, printed: str) -> None:
    """So that it can be kept otherwise without being wrapped in own words twice."""
    assert printed_words(line) == printed
