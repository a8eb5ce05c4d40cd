"""Words of a row are taken apart where every stitch comes up in them, and answers are written as lines that mean them."""

from __future__ import annotations

from pathlib import Path
from tempfile import TemporaryDirectory

import pytest

from stepper.language.open_words import say_parts
from stepper.plan.model import OpenKind, PartKind, RowPart
from stepper.project.page.unread.left_open import LeftKind, find_left_open
from stepper.session.state import OpenAnswer
from stepper.settling.by_parts import parts_in, short_rows_from, told_apart
from stepper.settling.in_sitting import OpenRows
from stepper.sitting.project_file import load_as_far
from tests.invariants import broken_invariants
from tests.project.samples import begun_from_page
from tests.settling.test_in_sitting import LOOK, rows_of, text_of
from tests.tables import each_row


def worked(many: int) -> RowPart:
    """Return stitches that are worked."""
    return RowPart(kind=PartKind.WORKED, stitches=many, leaves=many)


@each_row(
    ("words", "before", "flat", "said"),
    [
        ("Next row (RS): K25, turn, leave rem 35 sts on a holder.", 60, True, "25 worked, turned, the other 35 on hold"),
        ("Work 25 sts, bind off 10 sts, work to end. Work each side separately.", 60, True, "25 worked, these 25 then on hold, 10 bound off, 25 worked"),
        ("K30, place next 40 sts on waste yarn for right sleeve, cast on 8 sts, k to end. 168 sts.", 200, False, "30 worked, 40 on hold for right sleeve, 8 cast on, 130 worked"),
        ("Knit 38 for the left front, slip 44 sts to waste yarn, cast on 8 sts and knit the last 38 for the right front.", 120, True, "38 worked, 44 on hold, 8 cast on, 38 worked"),
        ("Bind off 8 sts, k44, bind off 8 sts, k to end.", 104, False, "8 bound off, 44 worked, 8 bound off, 44 worked"),
        # One stitch does not come up, or two stretches have no number, or something else is done.
        ("K25, turn, leave rem 34 sts on a holder.", 60, True, ""),
        ("K25, bind off 10 sts, k24. Work each side separately.", 60, True, ""),
        ("K to marker, bind off 10 sts, k to end.", 60, False, ""),
        ("K2tog, k23, turn, leave rem 35 sts on a holder.", 60, True, ""),
        ("K25, turn.", 60, True, ""),
        ("Rep twice: k10, place next 10 sts on a holder, k10.", 60, True, ""),
        # Whether the first wait from then on is not said.
        ("K25, bind off next 10 sts, k to end.", 60, True, ""),
        ("K60.", 60, True, ""),
    ],
)
def test_words_are_taken_apart_only_where_every_stitch_comes_up(words: str, before: int, flat: bool, said: str) -> None:
    """A yes to a wrong proposal would be as wrong as a wrong plan."""
    assert say_parts(parts_in(words, before, lambda printed: int(printed.split()[0]), flat=flat)) == said


@each_row(
    ("words", "kinds", "turns", "several", "flat"),
    [
        ("Work to the twirl and turn.", set(), True, False, True),
        ("Twirl to the end of the row, turn.", set(), False, False, True),
        ("Twirl 10, turn, twirl 5, turn.", set(), True, True, True),
        ("Twirl 10, turn, twirl 5, turn.", set(), True, True, False),
        ("Cast off the middle twirls.", {PartKind.OFF}, False, False, True),
        ("Cast off 4 twirls at the beg of the row.", set(), False, False, True),
        ("Cast off 4 twirls at the beg of the round.", {PartKind.OFF}, False, False, False),
        ("Slip the next twirls to a holder, cast on 8 over them.", {PartKind.HELD, PartKind.ON}, False, False, False),
        ("Twirl over N2. N1 sts wait.", {PartKind.HELD}, False, False, False),
        ("The twirls use short rows, of any sort.", set(), True, True, True),
        ("Twirl k2 on.", set(), False, False, True),
    ],
)
def test_what_is_asked_is_what_the_words_speak_of(words: str, kinds: set[PartKind], turns: bool, several: bool, flat: bool) -> None:
    """A row whose count is enough is asked for its count."""
    with TemporaryDirectory() as folder:
        row = rows_of(Path(folder), words, flat=flat, behind="Knit 2 rows." if flat else "Knit 2 rounds.").loaded.plan.open
    assert row is not None
    assert (set(row.by_parts), row.turns, row.several) == (kinds, turns, several)
    assert row.trouble == ""


@each_row(
    ("words", "flat", "answer", "counts", "held"),
    [
        ("Work to the twirl and turn.", True, OpenAnswer(kind=OpenKind.PARTS, parts=(worked(12), RowPart(kind=PartKind.BEYOND, stitches=28))), [12], {"holder": 28}),
        ("Cast off the middle twirls.", True, OpenAnswer(kind=OpenKind.PARTS, parts=(worked(15), RowPart(kind=PartKind.FIRST_HELD, stitches=15), RowPart(kind=PartKind.OFF, stitches=10), worked(15))), [30, 15], {"holder": 15}),
        ("Twirl 10, turn, twirl 5, turn.", True, OpenAnswer(kind=OpenKind.SHORT_ROWS, rows=2, stitches=38), [40, 38], {}),
        ("Twirl on N2. N1 sts wait, work flat.", False, OpenAnswer(kind=OpenKind.PARTS, parts=(RowPart(kind=PartKind.HELD, stitches=20, name="instep"), worked(20)), round=False), [20], {"instep": 20}),
        (
            "Slip both twirls to a holder.",
            False,
            OpenAnswer(kind=OpenKind.PARTS, parts=(worked(10), RowPart(kind=PartKind.HELD, stitches=10), worked(10), RowPart(kind=PartKind.HELD, stitches=10))),
            [20],
            {"piece": 10, "second piece": 10},
        ),
    ],
)
def test_what_she_answers_is_read_again_as_exactly_that(
    words: str, flat: bool, answer: OpenAnswer, counts: list[int], held: dict[str, int]
) -> None:
    """The file says it to every command; the words are said with it, and nothing is asked twice."""
    with TemporaryDirectory() as folder:
        behind = "Knit 2 rows." if flat or answer.round is False else "Knit 2 rounds."
        rows = rows_of(Path(folder), words, flat=flat, behind=behind)
        at = len(rows.loaded.plan.rounds)
        after = rows.settle(answer)
        assert not isinstance(after, str), after
        assert words in text_of(rows)
        assert after.plan.open is None
        assert [each.after for each in after.plan.rounds[at : at + len(counts)]] == counts
        assert after.plan.rounds[-1].held == held
        assert broken_invariants(after.plan) == ()


def test_what_waits_comes_back_under_its_name(tmp_path: Path) -> None:
    """And in the round if she says so, or with the side that faces her."""
    for answer in (
        OpenAnswer(kind=OpenKind.TAKEN, rows=1, stitches=14, name="thumb", round=True),
        OpenAnswer(kind=OpenKind.TAKEN, rows=1, stitches=12, name="thumb", round=False, right=False),
    ):
        above = "K28, hold 12 for thumb.\nKnit 1 round.\nBind off."
        rows = rows_of(tmp_path, "Go back to the held twirls.", behind="Knit 2 rows." if not answer.round else "Knit 2 rounds.", above=above)
        row = rows.loaded.plan.open
        assert row is not None
        assert (row.held, row.by_parts) == ((("thumb", 12),), frozenset({PartKind.HELD}))
        after = rows.settle(answer)
        assert not isinstance(after, str), after
        last = after.plan.rounds[-1]
        assert (last.after, last.flat, last.held) == (answer.stitches, not answer.round, {})


JOINING = (
    "Work across thumb, palm, all on one needle: 40 twirls.",
    "Joined: 40 sts.",
    "All pieces on one long needle = 40 sts.",
    "Unite the thumb and the palm in the twirl.",
)
NOT_JOINING = ("Go back to the held twirls, join the yarn.", "Thumb: join in the round on the held twirls.")


@pytest.mark.parametrize("words", [*JOINING, *NOT_JOINING])
def test_all_parts_that_words_join_come_off_hold(tmp_path: Path, words: str) -> None:
    """Kept as so many picked up, the pieces would wait on their threads for ever, and their columns with them."""
    above = "K12, hold 28 for palm.\nPlace all sts on hold for thumb."
    rows = rows_of(tmp_path, words, behind="Knit 2 rounds.", above=above)
    row = rows.loaded.plan.open
    assert row is not None
    assert (PartKind.BACK in row.by_parts) is (words in JOINING)
    if words in NOT_JOINING:
        return
    assert row.proposed is None
    back = tuple(RowPart(kind=PartKind.BACK, stitches=many, leaves=many, name=name) for name, many in row.held)
    after = rows.settle(OpenAnswer(kind=OpenKind.PARTS, parts=back, round=True))
    assert not isinstance(after, str), after
    assert [(each.after, dict(each.held)) for each in after.plan.rounds[-3:-1]] == [(40, {}), (40, {})]
    assert broken_invariants(after.plan) == ()


def test_a_count_that_is_not_their_sum_is_worked_by_the_words(tmp_path: Path) -> None:
    """Stitches cast on or worked together where the pieces meet are in no piece."""
    rows = rows_of(tmp_path, "Joined, with twirls.", behind="Knit 2 rows.", above="K12, hold 28 for palm.\nPlace all sts on hold for thumb.")
    back = (RowPart(kind=PartKind.BACK, stitches=12, leaves=12, name="thumb"), RowPart(kind=PartKind.BACK, stitches=28, leaves=32, name="palm"))
    after = rows.settle(OpenAnswer(kind=OpenKind.PARTS, parts=back, round=False, right=False))
    assert not isinstance(after, str), after
    assert [(each.after, each.flat) for each in after.plan.rounds[-3:]] == [(44, True)] * 3


def test_short_rows_that_follow_each_other_are_one_piece() -> None:
    """Those that are read among them, too; what closes them belongs to them if it is not read."""
    marked = [f"{LOOK.format(at)}\nNote: {words}" for at, words in ((7, "Twirl to the gap, turn, twirl back, turn."), (8, "Pick up the wraps, twirl."))]
    text = begun_from_page(f"Cast on 40 sts. Work flat.\n{marked[0]}\nK10, turn.\n{marked[1]}\nPurl 1 row.")
    first = next(each for each in find_left_open(text) if each.kind is LeftKind.ROW)
    piece = short_rows_from(first, text)
    assert piece.text == "Twirl to the gap, turn, twirl back, turn. K10, turn. Pick up the wraps, twirl."
    assert text.split("\n")[piece.last].strip() == "Purl 1 row."


def test_a_remark_that_speaks_of_short_rows_is_proposed_as_one(tmp_path: Path) -> None:
    """And is no piece with the rows below it."""
    rows = rows_of(tmp_path, "This part uses short rows of any sort.", flat=True, behind=f"{LOOK.format(8)}\nNote: Twirl 10, turn, twirl 5, turn.\nKnit 1 row.")
    row = rows.loaded.plan.open
    assert row is not None
    assert row.words == "This part uses short rows of any sort."
    assert row.proposed is not None
    assert row.proposed.kind is OpenKind.IDLE


def test_only_what_would_be_mistaken_is_told_apart() -> None:
    """One thread needs no name."""
    one = (worked(10), RowPart(kind=PartKind.HELD, stitches=8))
    assert told_apart(one, ()) == one
    assert told_apart(one, ("sleeve",)) == one
    assert [part.name for part in told_apart(one, ("holder",))] == ["", "piece"]


@pytest.mark.parametrize(("size", "asked"), [("S", True), ("M", False)])
def test_a_row_of_other_sizes_is_not_asked_of_her(tmp_path: Path, size: str, asked: bool) -> None:
    """Her size is known; it stays open for who knits the other."""
    path = tmp_path / "hat.yaml"
    work = f"Cast on 40 sts.\nJoin in the round.\nKnit 1 round.\n{LOOK.format(7)}\nNote: Size S only: Twirl k2 in loops.\nKnit 2 rounds."
    path.write_text(begun_from_page(work, sizes="S (M, L)", size=size), encoding="utf-8")
    loaded = load_as_far(path)
    assert loaded is not None
    row = OpenRows(loaded).loaded.plan.open
    assert (row is not None) is asked
    assert len(loaded.plan.rounds) == (2 if asked else 4)


def test_a_round_that_is_only_explained_stays_so(tmp_path: Path) -> None:
    """Whether it is worked where it stands is asked, since its caller is not read; then the caller is in her words."""
    caller = "Work inc rnd every other rnd in twirls until there are 44 sts."
    rows = rows_of(tmp_path, caller, above="Inc rnd: *K10, m1; rep from * to end. 44 sts.")
    before = rows.loaded.plan.open
    assert before is not None
    assert before.words.startswith("Inc rnd:")
    explained = rows.settle(OpenAnswer(kind=OpenKind.IDLE))
    assert not isinstance(explained, str), explained
    assert explained.plan.open is not None
    assert explained.plan.open.words == caller
    after = rows.settle(OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=44))
    assert not isinstance(after, str), after
    assert after.plan.open is None
    assert [each.after for each in after.plan.rounds[-4:]] == [40, 44, 44, 44]
