"""A garment is worked out as far as it is read, and not a round further."""

from __future__ import annotations

from stepper.plan.as_far import plan_as_far
from stepper.plan.model import Plan
from stepper.project.page.unread.left_open import LeftKind, find_left_open
from stepper.project.reader import read_project
from tests.project.samples import project
from tests.tables import each_row

MARK = "# LOOK (row 3 of the text)."


def as_far(work: str, size: str = "M") -> Plan | None:
    """Work out lines up to the first that is open."""
    text = project(work, size=size)
    reading = read_project(text)
    found = reading.project or reading.partial
    assert found is not None
    left = find_left_open(text)
    marked = {
        row for each in left if each.kind is LeftKind.ROW for row in range(each.first, each.last + 1)
    }
    return plan_as_far(found, marked | {each.line for each in reading.problems})


@each_row(
    ("work", "rounds", "words"),
    [
        (f"Cast on 40 sts.\n{MARK}\nNote: Twirl them.\nKnit 4 rounds.", 1, "Note: Twirl them."),
        ("Cast on 40 sts.\nJoin in the round.\nTwirl them.\nKnit 4 rounds.", 1, "Twirl them."),
        ("Cast on 40 sts.\nJoin in the round.\nKnit 3 rounds.\nKnit 1 round. 44 sts.\nKnit 9 rounds.", 4, "Knit 1"),
        ("Cast on 40 sts.\nJoin.\nKnit 3 rounds.\n*K3, p4; rep from * around.\nTwirl them.", 4, "*K3, p4"),
        ("Cast on 40 sts.\nRow 1: Knit.\nRow 2: Purl.\nRow 3: *K3, p4; rep from * to end.\nRow 4: Purl.", 3, "Row 3: *K3"),
        (f"Cast on 40 sts.\nKnit 8 rows.\n{MARK}\nNote: At the same time twirl them.", 1, "Knit 8 rows."),
        (f"Cast on 40 sts.\nKnit 8 rows.\n{MARK}\nNote: When piece measures 3 cm, twirl.", 1, "Knit 8 rows."),
        (f"Cast on 40 sts.\nKnit 8 rows.\n{MARK}\nNote: K10, twirl 4.\n{MARK}\nNote: At the same time twirl.", 9, "Note: K10"),
        (f"Cast on 40 sts.\nKnit 8 rows.\n{MARK}\nNote: Mind it.\n{MARK}\nNote: At the same time twirl.", 1, "Knit 8 rows."),
        (f"Cast on 40 sts.\nRow 1: Knit.\nRow 2: Purl.\n{MARK}\nNote: Row 3: Twirl.\nRow 4: Purl.", 3, "Note: Row 3"),
    ],
)
def test_it_ends_at_the_first_row_that_is_not_read_or_does_not_fit(work: str, rounds: int, words: str) -> None:
    """What hangs on such a row, and what only seems not to, is not announced before the row is known.

    A row that may begin above it ends the plan before the line above: knitted straight to its end, that would be
    wrong by the time the row is heard.
    """
    plan = as_far(work)
    assert plan is not None
    assert plan.open is not None
    assert len(plan.rounds) == rounds
    assert plan.open.words.startswith(words)
    assert plan.open.section == "body"
    assert {each.of for each in plan.rounds} == {0}
    assert plan.rounds[-1].numbered == str(plan.rounds[-1].number)


def test_a_piece_that_is_made_twice_is_not_made_again_before_it_is_read_to_its_end() -> None:
    """Or a sleeve would be begun a second time in the middle of the first."""
    plan = as_far(f"Make 2.\nCast on 40 sts.\nKnit 4 rows.\n{MARK}\nNote: Twirl them.\nBind off.")
    assert plan is not None
    assert len(plan.rounds) == 5


def test_a_row_of_other_sizes_ends_nothing() -> None:
    """She never comes to it."""
    work = "Cast on 40 sts.\nKnit 2 rows.\nSize L only: *K7, p7; rep from * to end.\nKnit 2 rows.\nBind off."
    mine, other = as_far(work, size="M"), as_far(work, size="L")
    assert mine is not None
    assert mine.open is None
    assert other is not None
    assert other.open is not None
    assert other.open.words.startswith("*K7, p7")


def test_what_fits_in_the_size_she_knits_is_no_end_though_it_does_not_in_another() -> None:
    """The others are not claimed: only hers is worked out."""
    work = "Cast on 40 (44, 48) sts.\nKnit 1 row. 40 (45, 48) sts.\nBind off."
    fits, other = as_far(work, size="S"), as_far(work, size="M")
    assert fits is not None
    assert fits.open is None
    assert other is not None
    assert other.open is not None


def test_remarks_in_front_of_the_row_are_kept_for_it() -> None:
    """ "Change to 4 mm needles." is done before the row, whatever that is."""
    plan = as_far(f"Cast on 40 sts.\nChange to 4.5 mm needle.\n{MARK}\nNote: Twirl them.")
    assert plan is not None
    assert plan.open is not None
    assert any("4.5 mm" in each for each in plan.open.remarks)


def test_where_no_round_stands_above_the_first_open_row_the_garment_begins_with_it() -> None:
    """Nothing is on the needles before it, and nothing is planned."""
    plan = as_far(f"{MARK}\nNote: Twirl on 40 sts.\nKnit 4 rows.")
    assert plan is not None
    assert plan.open is not None
    assert (plan.rounds, plan.open.words, plan.open.stitches) == ((), "Note: Twirl on 40 sts.", 0)


@each_row(
    ("work", "rounds", "words"),
    [
        ("Row 1: K10, turn.\nRow 2: P5, turn.\nRow 3: Twirl k2.\nRow 4: Knit.", 2, "Row 1: K10, turn."),
        (f"Row 1: K10, turn.\n{MARK}\nNote: You should have a tiny wedge.\nRow 2: P10.", 3, "Note: You should"),
        ("K10, turn.\nP10.\nKnit 2 rows.\nTwirl k2.", 6, "Twirl k2."),
    ],
)
def test_short_rows_are_not_begun_where_what_closes_them_is_not_read(work: str, rounds: int, words: str) -> None:
    """A count tells nothing of where they were turned: they are counted all, from the first on.

    Words that are only said, and rows behind short rows that are closed, leave them as they are.
    """
    plan = as_far(f"Cast on 40 sts.\nKnit 1 row.\n{work}")
    assert plan is not None
    assert plan.open is not None
    assert (len(plan.rounds), plan.open.words[: len(words)]) == (rounds, words)


def test_a_row_that_does_not_fit_is_open_from_where_its_line_begins() -> None:
    """A line under a label stands on two rows of the file, and its count on the second."""
    plan = as_far("Cast on 40 sts.\nKnit 2 rows.\nDIVIDE:\nK4, place next 8 sts on waste yarn, knit to end. 40 sts.")
    assert plan is not None
    assert plan.open is not None
    assert len(plan.rounds) == 3


def test_where_a_line_fits_the_first_time_and_not_the_second_what_works_it_again_is_open() -> None:
    """What is knitted of it stays knitted; kept by a count, the first time would be rewritten with the second."""
    again = "** Knit 2 rounds. 40 sts.\nDecrease evenly to 36 sts. **\nKnit 1 round.\nRep from ** to ** once more."
    plan = as_far(f"Cast on 40 sts.\nJoin.\nKnit 1 round.\n{again}\nKnit 5 rounds.")
    assert plan is not None
    assert plan.open is not None
    assert [each.after for each in plan.rounds] == [40, 40, 40, 40, 36, 36]
    assert plan.open.words == "Rep from ** to ** once more."
    assert plan.open.trouble == ""
    once = as_far("Cast on 40 sts.\nKnit 2 rows.\n*K3, p4; rep from * to end.")
    assert once is not None
    assert once.open is not None
    assert once.open.trouble == ""


@each_row(
    ("words", "behind", "flat"),
    [
        ("Twirl k2 for 8 rows.", "Row 9: Purl.", True),
        ("Twirl k2.", "Rnd 9: Purl.", False),
        # No word of the rows to come, but of an edge.
        ("Twirl (1 st for every 2 rows) and k2.", "Rnd 9: Purl.", False),
    ],
)
def test_a_row_right_behind_a_cast_on_is_of_the_kind_of_the_rows_around_it(words: str, behind: str, flat: bool) -> None:
    """Nothing but the lines says whether it is joined."""
    plan = as_far(f"Cast on 40 sts.\n{MARK}\nNote: {words}\n{behind}")
    assert plan is not None
    assert plan.open is not None
    assert plan.open.flat is flat
