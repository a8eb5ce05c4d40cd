"""A row at which a sitting stands is written as she answered it, or the file stays as it was."""

from __future__ import annotations

from pathlib import Path
from tempfile import TemporaryDirectory

import pytest

from stepper.plan.model import OpenKind, PartKind, Proposed, RowPart
from stepper.session.state import OpenAnswer
from stepper.settling.in_sitting import OpenRows
from stepper.sitting.project_file import load_as_far, plan_of_text
from tests.project.samples import begun_from_page
from tests.tables import each_row

LOOK = "# LOOK (row {} of the text)."
AS_PROPOSED = {kind: OpenAnswer(kind=kind) for kind in OpenKind}


def rows_of(
    tmp_path: Path, words: str, *, sizes: str = "one", behind: str = "Knit 2 rounds.", flat: bool = False, above: str = ""
) -> OpenRows:
    """Return what settles a row behind a cast-on of 40 stitches."""
    path = tmp_path / "hat.yaml"
    first = "Knit 3 rows." if flat else "Join in the round.\nKnit 2 rounds."
    above = f"{first}\n{above}" if above else first
    work = f"Cast on 40 sts.\n{above}\n{LOOK.format(7)}\nNote: {words}\n{behind}"
    path.write_text(begun_from_page(work, sizes=sizes, size=sizes.split()[0]), encoding="utf-8")
    loaded = load_as_far(path)
    assert loaded is not None
    return OpenRows(loaded)


def text_of(rows: OpenRows) -> str:
    """Return the file as it is now."""
    return rows.loaded.path.read_text(encoding="utf-8")


@pytest.mark.parametrize(
    ("words", "proposed", "written", "rounds"),
    [
        (
            "Next rnd: Twirl k2 in loops. 36 sts.",
            Proposed(kind=OpenKind.ROWS, rows=1, stitches=36, printed=True),
            "Next rnd: Own words: Twirl k2 in loops. 36 sts.",
            6,
        ),
        (
            "Twirl the loops for 4 rounds.",
            Proposed(kind=OpenKind.ROWS, rows=4, stitches=40),
            "Own words, 4 rounds: Twirl the loops for 4 rounds.",
            9,
        ),
        (
            "You will twirl this later.",
            Proposed(kind=OpenKind.IDLE),
            "Note: You will twirl this later.",
            5,
        ),
        (
            "Slip next 8 twirls sts to a stitch holder for thumb.",
            Proposed(kind=OpenKind.HOLD, moved="8 for thumb", stitches=32),
            "Own words, hold 8 sts for thumb: Slip next 8 twirls sts to a stitch holder for thumb.",
            6,
        ),
    ],
)
def test_what_it_seems_to_be_is_proposed_and_kept_with_a_yes(
    tmp_path: Path, words: str, proposed: Proposed, written: str, rounds: int
) -> None:
    """As `stepper settle` keeps it with Enter; the plan then goes on to the end."""
    rows = rows_of(tmp_path, words)
    row = rows.loaded.plan.open
    assert row is not None
    assert (row.words, row.trouble, row.proposed) == (words, "", proposed)
    after = rows.settle(AS_PROPOSED[proposed.kind])
    assert not isinstance(after, str), after
    assert f"      {written}\n" in text_of(rows)
    assert "LOOK" not in text_of(rows)
    assert after.plan.open is None
    assert len(after.plan.rounds) == rounds
    assert after is rows.loaded


@pytest.mark.parametrize(
    ("words", "answer", "written"),
    [
        ("Twirl k2 in loops.", OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=44), ["Own words: Twirl k2 in loops. 44 sts."]),
        ("Twirl k2 in loops.", OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=40), ["Own words: Twirl k2 in loops."]),
        ("Twirl k2 in loops.", OpenAnswer(kind=OpenKind.ROWS, rows=6, stitches=40), ["Own words, 6 rounds: Twirl k2 in loops."]),
        (
            "Twirl k2 in loops.",
            OpenAnswer(kind=OpenKind.ROWS, rows=3, stitches=30),
            [
                "Note: Twirl k2 in loops.",
                "Own words: by the words above, row 1 of 3, stitches not counted. 40 sts.",
                "Own words: by the words above, row 2 of 3, stitches not counted. 40 sts.",
                "Own words: by the words above, row 3 of 3. 30 sts.",
            ],
        ),
        (
            "Twirl k2 in loops, and in the last round k2tog all round.",
            OpenAnswer(kind=OpenKind.ROWS, rows=2, stitches=20),
            [
                "Note: Twirl k2 in loops, and in the last round k2tog all round.",
                "Own words: by the words above, row 1 of 2. 40 sts.",
                "Own words: by the words above, row 2 of 2. 20 sts.",
            ],
        ),
        ("Twirl k2 in loops. 44 sts.", OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=42), ["Own words: Twirl k2 in loops. 44 sts. 42 sts."]),
        ("Twirl k2 in loops.", OpenAnswer(kind=OpenKind.IDLE), ["Note: Twirl k2 in loops."]),
    ],
)
def test_what_she_counted_is_written(tmp_path: Path, words: str, answer: OpenAnswer, written: list[str]) -> None:
    """The count is hers; of several rounds only the number after the last is known, and stands there."""
    rows = rows_of(tmp_path, words)
    after = rows.settle(answer)
    assert not isinstance(after, str), after
    assert "\n".join(f"      {row}" for row in written) + "\n" in text_of(rows)
    if answer.kind is OpenKind.ROWS:
        assert after.plan.rounds[2 + answer.rows].after == answer.stitches


def test_a_number_of_hers_is_kept_for_her_size_alone_and_a_printed_one_for_all(tmp_path: Path) -> None:
    """A single number would be wrong for the others, and they are no longer claimed."""
    words = "Next rnd: Twirl in loops. 36 (36, 36) sts."
    printed = rows_of(tmp_path, words, sizes="S (M, L)")
    assert printed.loaded.plan.open is not None
    assert printed.loaded.plan.open.proposed == Proposed(
        kind=OpenKind.ROWS, rows=1, stitches=36, printed=True
    )
    printed.settle(OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=36))
    assert "only:" not in text_of(printed)
    assert "Own words: Twirl in loops. 36 (36, 36) sts." in text_of(printed)
    other = rows_of(tmp_path, words, sizes="S (M, L)")
    other.settle(OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=34))
    assert "only: S" in text_of(other)
    assert "34 sts." in text_of(other)


def test_a_row_of_several_kinds_is_taken_sentence_by_sentence(tmp_path: Path) -> None:
    """She is asked of the first, and the next waits under its own mark."""
    rows = rows_of(tmp_path, "Twirl k2 in loops. Bind off rem sts.")
    assert rows.loaded.plan.open is not None
    first = rows.loaded.plan.open.words
    assert first == "Twirl k2 in loops."
    after = rows.settle(OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=40))
    assert not isinstance(after, str)
    assert after.plan.open is not None
    assert after.plan.open.words.startswith("Bind off rem")


@pytest.mark.parametrize(
    ("words", "flat"),
    [
        ("Bind off the centre 4 twirls, k to end.", False),
        ("Bind off the centre 4 twirls, k to end.", True),
        ("Knit 20 twirls, turn, purl 10, turn, knit to end.", True),
    ],
)
def test_what_later_rows_hang_on_is_no_matter_of_a_count(tmp_path: Path, words: str, flat: bool) -> None:
    """Kept by its count it would leave the program in the wrong: two pieces for one, the other side for this."""
    rows = rows_of(tmp_path, words, flat=flat)
    row = rows.loaded.plan.open
    assert row is not None
    assert row.proposed is None
    assert row.is_asked_by_parts
    before = text_of(rows)
    assert isinstance(rows.settle(OpenAnswer(kind=OpenKind.BIND_OFF)), str)
    assert text_of(rows) == before


@pytest.mark.parametrize(
    ("words", "besides", "flat", "answer", "written"),
    [
        (
            "Knit 20 twirls, turn, purl 10, turn, knit to end.",
            "every turn closed",
            False,
            OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=40),
            ["Own words: by the words above. 40 sts."],
        ),
        (
            "Slide the loops and join in the round, then twirl.",
            "in rounds from here",
            True,
            OpenAnswer(kind=OpenKind.ROWS, rows=2, stitches=40),
            ["Own words: by the words above, row 1 of 2. 40 sts.", "Own words: by the words above, row 2 of 2. 40 sts.", "Join in the round."],
        ),
        (
            "From here work back and forth in twirls.",
            "in rows from here",
            False,
            OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=40),
            ["Own words: by the words above. 40 sts.", "Work flat."],
        ),
        (
            "Twirl 15, turn, leave the other twirls on a spare needle.",
            "",
            True,
            OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=15),
            ["Own words: by the words above. 15 sts."],
        ),
        (
            "Bind off 3 twirls at the beg of each row.",
            "",
            True,
            OpenAnswer(kind=OpenKind.ROWS, rows=2, stitches=34),
            [
                "Own words: by the words above, row 1 of 2, stitches not counted. 40 sts.",
                "Own words: by the words above, row 2 of 2. 34 sts.",
            ],
        ),
    ],
)
def test_what_her_count_leaves_open_she_says_yes_to_besides(
    tmp_path: Path, words: str, besides: str, flat: bool, answer: OpenAnswer, written: list[str]
) -> None:
    """Its words stand above as a note, and rows by them below."""
    rows = rows_of(tmp_path, words, flat=flat, behind="Knit it.")
    row = rows.loaded.plan.open
    assert row is not None
    assert (row.trouble, row.besides) == ("", besides)
    after = rows.settle(answer)
    assert not isinstance(after, str), after
    block = "\n".join(f"      {each}" for each in [f"Note: {words}", *written])
    assert f"{block}\n" in text_of(rows)
    in_rows = besides == "in rows from here" or (flat and besides != "in rounds from here")
    text = after.text.replace("Knit it.", "Knit 2 rows." if in_rows else "Knit 2 rounds.")
    assert plan_of_text(text, "as it is now", tmp_path).rounds[-1].flat is in_rows


def test_a_line_that_is_read_and_does_not_fit_is_kept_by_her_count_too(tmp_path: Path) -> None:
    """Behind words of her own nothing may be as the page thinks it is."""
    rows = rows_of(tmp_path, "Twirl k2 in loops.", behind="*K3, p4; rep from * around.\nKnit 1 round.")
    after = rows.settle(OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=40))
    assert not isinstance(after, str)
    assert after.plan.open is not None
    assert after.plan.open.words == "*K3, p4; rep from * around."
    after = rows.settle(OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=40))
    assert not isinstance(after, str)
    assert after.plan.open is None


def test_a_file_that_another_changes_meanwhile_is_left_alone(tmp_path: Path) -> None:
    """What she answered was of what stood there before."""
    rows = rows_of(tmp_path, "Twirl k2 in loops.")
    path = rows.loaded.path
    path.write_text(path.read_text() + "# mine\n")
    assert isinstance(rows.settle(OpenAnswer(kind=OpenKind.IDLE)), str)
    assert path.read_text().endswith("# mine\n")


def test_line_ends_of_windows_stay(tmp_path: Path) -> None:
    """As in every file that is settled."""
    rows = rows_of(tmp_path, "Twirl k2 in loops.")
    path = rows.loaded.path
    path.write_bytes(path.read_bytes().replace(b"\n", b"\r\n"))
    loaded = load_as_far(path)
    assert loaded is not None
    again = OpenRows(loaded)
    after = again.settle(OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=44))
    assert not isinstance(after, str)
    raw = path.read_bytes()
    assert raw.count(b"\n") == raw.count(b"\r\n")


def test_a_file_that_goes_to_its_end_is_described_as_it_is(tmp_path: Path) -> None:
    """There is nothing to ask of it."""
    rows = rows_of(tmp_path, "Twirl k2 in loops.")
    after = rows.settle(OpenAnswer(kind=OpenKind.IDLE))
    assert not isinstance(after, str)
    assert OpenRows.describe(after) is after


@pytest.mark.parametrize("words", ["Twirl k2 in loops.", "Work to end, k2tog twirl."])
def test_nothing_is_asked_on_the_terminal(
    tmp_path: Path, words: str, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    """The full screen is there: a question printed into it would be lost, and wait for ever."""
    monkeypatch.setattr("sys.stdin", None)
    rows = rows_of(tmp_path, words)
    rows.settle(OpenAnswer(kind=OpenKind.ROWS, rows=2, stitches=41))
    assert capsys.readouterr() == ("", "")


@each_row(
    ("words", "besides"),
    [
        ("Row 1 (RS): Twirl to last 2 sts, turn.", "still in rounds"),
        ("Next row: Twirl k2 to marker.", "still in rounds"),
        ("Next rnd: Twirl k2 to marker.", ""),
    ],
)
def test_a_ring_stays_one_where_its_rounds_are_called_rows(words: str, besides: str) -> None:
    """Or all behind it would be worked back and forth; she says yes to that with the count."""
    with TemporaryDirectory() as folder:
        rows = rows_of(Path(folder), words, behind="Knit 4 rounds.\nBind off.")
        assert rows.loaded.plan.open is not None
        assert rows.loaded.plan.open.besides == besides
        assert besides == "" or rows.loaded.plan.open.proposed is None
        after = rows.settle(OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=40))
    assert not isinstance(after, str), after
    assert after.plan.open is None
    assert not any(each.flat for each in after.plan.rounds)


def test_what_comes_onto_empty_needles_is_counted(tmp_path: Path) -> None:
    """Wherever the stitches come from: of several rounds the first brings them."""
    rows = rows_of(tmp_path, "Twirl sleeve sts onto dpns.", behind="Knit 2 rounds.", above="Bind off.")
    after = rows.settle(OpenAnswer(kind=OpenKind.ROWS, rows=3, stitches=64))
    assert not isinstance(after, str), after
    assert after.plan.open is None
    assert [each.after for each in after.plan.rounds][-6:] == [0, 64, 64, 64, 64, 64]


def test_what_does_not_fit_where_it_stands_is_not_written(tmp_path: Path) -> None:
    """The same row would be asked again, and what was written would be read out as its words."""
    rows = rows_of(tmp_path, "Twirl k2. 44 sts.", behind="Knit 2 rounds. 44 sts.")
    before = text_of(rows)
    told = rows.settle(OpenAnswer(kind=OpenKind.ROWS, rows=3, stitches=44))
    assert not isinstance(told, str), told
    assert text_of(rows) != before
    rows = rows_of(tmp_path, "Twirl to the gap, turn.", flat=True)
    before = text_of(rows)
    for many in (39, 41):
        worked = RowPart(kind=PartKind.WORKED, stitches=many - 12, leaves=many - 12)
        parts = (worked, RowPart(kind=PartKind.BEYOND, stitches=12))
        assert isinstance(rows.settle(OpenAnswer(kind=OpenKind.PARTS, parts=parts)), str)
        assert text_of(rows) == before


@each_row(
    "behind",
    [f"{LOOK.format(9)}\nNote: Twirl k2 on.\nKnit 2 rounds.", "Knit 2 rounds."],
)
def test_short_rows_that_nothing_closes_are_opened_before_the_remark_among_them(behind: str) -> None:
    """Settled first, it would leave them open in front of the next row, and she has knitted them by then."""
    with TemporaryDirectory() as folder:
        path = Path(folder) / "hat.yaml"
        work = f"Cast on 40 sts.\nJoin in the round.\nK10, turn.\n{LOOK.format(7)}\nNote: You will see a wedge.\n{behind}"
        path.write_text(begun_from_page(work, sizes="one", size="one"), encoding="utf-8")
        loaded = load_as_far(path)
        assert loaded is not None
        rows, words = OpenRows(loaded), list[str]()
        while (row := rows.loaded.plan.open) is not None:
            words.append(row.words)
            told = rows.settle(AS_PROPOSED[OpenKind.IDLE] if row.proposed else OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=40))
            assert not isinstance(told, str), told
    assert words[:2] == ["K10, turn.", "You will see a wedge."]


@each_row(
    "words",
    ["Leave the body aside and knit the sleeves.", "Twirl k2 in loops.", "(For a wide hem, work 3 cm instead.)"],
)
def test_no_row_is_proposed_of_words_that_do_not_say_one(words: str) -> None:
    """A yes would put a round into the garment that the page does not have."""
    with TemporaryDirectory() as folder:
        row = rows_of(Path(folder), words).loaded.plan.open
    assert row is not None
    assert row.proposed is None or row.proposed.kind is OpenKind.IDLE


@each_row(
    ("words", "behind", "written"),
    [
        # A number that the rows around it would count on.
        ("Round 2: Twirl k2.", "Round 4: Knit.", ["Round 2: Own words: Twirl k2.", "Own words: Round 2: Twirl k2.", "Own words: by the words above. 40 sts."]),
        # Words that speak of a cast-on far below, or of one that comes to nothing.
        ("Twirl until work is 9 cm from the cast-on, or as long as you like.", "Knit 2 rounds.", ["Own words: by the words above. 40 sts."]),
    ],
)
def test_a_count_is_kept_whatever_the_words_speak_of(words: str, behind: str, written: list[str]) -> None:
    """In the first form that fits; the last has the words as a note, so that nothing of them counts."""
    with TemporaryDirectory() as folder:
        rows = rows_of(Path(folder), words, behind=behind)
        after = rows.settle(OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=40))
        assert not isinstance(after, str), after
        assert any(f"      {each}\n" in text_of(rows) for each in written)
    assert after.plan.open is None


def test_a_heading_is_no_row_of_its_own(tmp_path: Path) -> None:
    """The row below it does not fit, and is asked."""
    path = tmp_path / "hat.yaml"
    work = "Cast on 40 sts.\nJoin in the round.\nKnit 2 rounds.\nDIVIDE:\nK4, place next 8 sts on waste yarn, knit to end. 40 sts."
    path.write_text(begun_from_page(work, sizes="one", size="one"), encoding="utf-8")
    loaded = load_as_far(path)
    assert loaded is not None
    rows = OpenRows(loaded)
    assert rows.loaded.plan.open is not None
    assert rows.loaded.plan.open.words.startswith("DIVIDE: K4, place next 8")
    after = rows.settle(OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=32))
    assert not isinstance(after, str), after
    assert [each.after for each in after.plan.rounds] == [40, 40, 40, 32]


def test_a_read_line_that_a_row_speaks_of_is_asked_once(tmp_path: Path) -> None:
    """Once she has counted it, the row below that may begin in it comes."""
    path = tmp_path / "hat.yaml"
    work = f"Cast on 40 sts.\nJoin in the round.\nKnit 4 rounds.\n{LOOK.format(7)}\nNote: At the same time twirl k2.\nKnit 2 rounds."
    path.write_text(begun_from_page(work, sizes="one", size="one"), encoding="utf-8")
    loaded = load_as_far(path)
    assert loaded is not None
    rows = OpenRows(loaded)
    after = rows.settle(OpenAnswer(kind=OpenKind.ROWS, rows=4, stitches=40))
    assert not isinstance(after, str), after
    assert after.plan.open is not None
    assert after.plan.open.words == "At the same time twirl k2."
    last = rows.settle(OpenAnswer(kind=OpenKind.IDLE))
    assert not isinstance(last, str), last
    assert len(last.plan.rounds) == 7


@each_row(
    ("words", "kind"),
    [
        ("Work 1 row.", None),
        ("Next 2 rnds.", None),
        ("When you have 12 g left, begin the rib: k2, p2 for 4 cm.", None),
        ("In rounds 4-6 the strand of B has to travel far.", None),
        ("Mark the sides on the first round, after 20 sts and at the end.", None),
        ("Do that every 10th round, 8 times in all. Knit straight until it is 39 cm long, change to small needles and rib for 6 cm.", None),
        ("Rib as for the twirl for 6 cm, ending with a WS row.", None),
        ("Your gauge may change here.", OpenKind.IDLE),
        ("Cut the yarn, thread it through those last stitches and pull tight.", OpenKind.BIND_OFF),
    ],
)
def test_nothing_is_proposed_that_would_lose_or_add_a_row(words: str, kind: OpenKind | None) -> None:
    """She says yes with her hands full: what is not said by the page she counts."""
    with TemporaryDirectory() as folder:
        row = rows_of(Path(folder), words).loaded.plan.open
    assert row is not None
    found = None if row.proposed is None else row.proposed.kind
    assert found == kind


def test_a_brim_that_is_turned_up_turns_no_row(tmp_path: Path) -> None:
    """Nothing is to be closed there."""
    row = rows_of(tmp_path, "Twirl for 4 cm; for a double brim, 9 cm and turn up.").loaded.plan.open
    assert row is not None
    assert (row.besides, row.trouble) == ("", "")


def test_what_is_heard_is_not_said_again_before_the_next_row(tmp_path: Path) -> None:
    """Words for which nothing is knitted are remarks then, and she has them in her ear."""
    behind = f"This takes a while.\n{LOOK.format(8)}\nNote: Twirl k2.\nKnit 2 rounds."
    rows = rows_of(tmp_path, "Your gauge may change here.", behind=behind)
    after = rows.settle(AS_PROPOSED[OpenKind.IDLE])
    assert not isinstance(after, str), after
    assert after.plan.open is not None
    assert after.plan.open.words == "Twirl k2."
    assert not any("gauge" in each for each in after.plan.open.remarks)


def test_a_row_with_a_side_behind_hers_does_not_open_a_ring(tmp_path: Path) -> None:
    """Whether her rows left the work turned is not known: that row is asked, too, and the ring stays."""
    rows = rows_of(tmp_path, "Short row: Twirl k2, turn.", behind="Next row (RS): Knit.\nKnit 4 rounds.")
    after = rows.settle(OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=40))
    assert not isinstance(after, str), after
    assert after.plan.open is not None
    assert after.plan.open.words == "Next row (RS): Knit."
    assert after.plan.open.besides == "still in rounds"
    last = rows.settle(OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=40))
    assert not isinstance(last, str), last
    assert last.plan.open is None
    assert not any(each.flat for each in last.plan.rounds)


@each_row(
    ("words", "kind"),
    [
        ("Place next 8 twirled sts on waste yarn for sleeve; k6. Rep from * once more. 24 sts.", None),
        ("BO in pattern, loosely and with a twirl.", OpenKind.BIND_OFF),
    ],
)
def test_what_goes_is_proposed_if_that_is_all(words: str, kind: OpenKind | None) -> None:
    """A second sleeve that is put on hold by a repeat would be missing when it is knitted."""
    with TemporaryDirectory() as folder:
        row = rows_of(Path(folder), words, behind="Knit 1 round.").loaded.plan.open
    assert row is not None
    assert (None if row.proposed is None else row.proposed.kind) == kind


def test_a_length_is_proposed_in_the_size_that_is_knitted(tmp_path: Path) -> None:
    """Read aloud, "four, five, five and a half inches" is three mitts at once."""
    rows = rows_of(tmp_path, "Twirl the loops for 4 (5, 5½) inches.", sizes="S (M, L)")
    row = rows.loaded.plan.open
    assert row is not None
    assert row.proposed is not None
    assert row.proposed.lasts == "for 4 inches"
