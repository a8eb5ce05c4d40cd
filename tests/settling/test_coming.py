"""Stitches that come onto empty needles by the words of an open row, and what else its words say."""

from __future__ import annotations

from pathlib import Path
from tempfile import TemporaryDirectory

from stepper.plan.model import CountWanted, OpenKind, PartKind, Proposed
from stepper.session.state import OpenAnswer
from stepper.settling.coming import goes_on_behind, wanted_in
from stepper.settling.in_sitting import OpenRows
from stepper.sitting.project_file import load_as_far
from tests.project.samples import begun_from_page
from tests.tables import each_row

MARK = "# LOOK (row 3 of the text)."


def rows_of(tmp_path: Path, words: str, *, behind: str = "Knit 2 rows.", above: str = "") -> OpenRows:
    """Return what settles a row that stands on empty needles."""
    path = tmp_path / "mitt.yaml"
    work = f"{above}{MARK}\nNote: {words}\n{behind}"
    path.write_text(begun_from_page(work, sizes="one", size="one"), encoding="utf-8")
    loaded = load_as_far(path)
    assert loaded is not None
    return OpenRows(loaded)


@each_row(
    ("right", "written", "sides"),
    [
        (True, ["Own words, cast on 40 sts: Twirl the edge: cast on in a long tail.", "Work flat."], ["RS", "RS", "WS"]),
        (False, ["Own words, pick up 40 sts: Twirl the edge: cast on in a long tail.", "Work flat."], ["RS", "WS", "RS"]),
    ],
)
def test_a_garment_begins_with_a_row_that_is_not_read(right: bool, written: list[str], sides: list[str]) -> None:
    """How many, rows or rounds, and the side that faces her are hers; the rows behind are worked from that side."""
    with TemporaryDirectory() as folder:
        rows = rows_of(Path(folder), "Twirl the edge: cast on in a long tail.")
        row = rows.loaded.plan.open
        assert row is not None
        assert not rows.loaded.plan.rounds
        assert row.proposed is None
        assert row.by_parts == {PartKind.ON}
        after = rows.settle(OpenAnswer(kind=OpenKind.COME, rows=1, stitches=40, round=False, right=right))
        assert not isinstance(after, str), after
        assert [each.side for each in after.plan.rounds] == sides
        assert [each.strip() for each in rows.loaded.path.read_text(encoding="utf-8").split("\n")[-4:-2]] == written


def test_rounds_follow_where_she_says_so(tmp_path: Path) -> None:
    """Though nothing on the page joins it."""
    rows = rows_of(tmp_path, "Cast on in the way of the islands.", behind="Knit 2 rounds.")
    after = rows.settle(OpenAnswer(kind=OpenKind.COME, rows=1, stitches=40, round=True))
    assert not isinstance(after, str), after
    assert [(each.before, each.flat) for each in after.plan.rounds] == [(0, False), (40, False), (40, False)]
    assert "Own words, cast on 40 sts: " in rows.loaded.path.read_text(encoding="utf-8")


def test_what_the_words_work_besides_stays_open_behind_the_stitches(tmp_path: Path) -> None:
    """Or six rows that she knits would be in no plan."""
    rows = rows_of(tmp_path, "Cast on 40 twirls sts and knit 6 ridges.")
    row = rows.loaded.plan.open
    assert row is not None
    assert row.proposed == Proposed(kind=OpenKind.CAST_ON, moved="40", printed=True)
    after = rows.settle(OpenAnswer(kind=OpenKind.CAST_ON))
    assert not isinstance(after, str), after
    assert after.plan.open is not None
    assert (len(after.plan.rounds), after.plan.open.stitches) == (1, 40)
    assert after.plan.open.words == row.words


def test_a_row_of_a_stitch_pattern_in_front_of_the_cast_on_is_kept_by_its_words(tmp_path: Path) -> None:
    """Nothing is knitted for it yet; it is worked where the pattern is called."""
    behind = "Rnd 2: Knit.\nCast on 40 sts.\nJoin in the round.\nKnit 2 rounds."
    rows = rows_of(tmp_path, "Rnd 1: P1, twirl 2.", above="Twirl rib (3 sts):\n", behind=behind)
    row = rows.loaded.plan.open
    assert row is not None
    assert row.proposed == Proposed(kind=OpenKind.IDLE)
    after = rows.settle(OpenAnswer(kind=OpenKind.IDLE))
    assert not isinstance(after, str), after
    assert "Rnd 1: Own words: P1, twirl 2." in rows.loaded.path.read_text(encoding="utf-8")
    assert [each.before for each in after.plan.rounds] == [0, 40, 40]


@each_row(
    ("words", "more"),
    [
        ("Cast on 40 sts and knit 6 ridges.", True),
        ("CO 40, work 8 cm in rib.", True),
        ("Cast on 12 sts. K1, p1 to end.", True),
        ("Cast on 12 sts, then 3 cm of moss.", True),
        ("Cast on as for the first, and knit the second sleeve the same.", True),
        ("Work the other sleeve as the first.", True),
        ("With MC and smaller needles cast on 40 sts by the knitted cast-on.", False),
        ("Cast on 40 sts, join to work in the round, being careful not to twist.", False),
        ("CO 40 sts and join for working in the round; place marker.", False),
        ("With the right side facing pick up and k20 round the neck.", False),
        ("Pick up and knit 20 sts along the edge (3 for every 4 rows).", False),
    ],
)
def test_words_that_only_put_stitches_on_say_no_more(words: str, more: bool) -> None:
    """In doubt they say more: a no is cheaper than rows in no plan."""
    assert goes_on_behind(words) is more


@each_row(
    ("words", "wanted"),
    [
        ("Pick up and knit an odd number of sts (approx 95-107) around neck.", CountWanted(multiple=2, over=1, least=95, most=107)),
        ("Pick up & knit around armhole at a rate of 1 st in each BO st and about 3 sts for every 4 rows, ending with an even number.", CountWanted(multiple=2)),
        ("Pick up and k approx 92 sts evenly, an even number.", CountWanted(multiple=2, least=92, most=92)),
        ("Pick up and knit a multiple of 4 sts plus 2 around neck.", CountWanted(multiple=4, over=2)),
        ("Pick up round the neck; a number which must come to 4 and 2 over, about 106 (110: 114).", CountWanted(multiple=4, over=2)),
        ("Pick up 3 sts for every 4 rows along the edge.", CountWanted()),
        ("Pick up and knit 96 sts around the neck.", None),
        ("Knit until it is as long as the neck.", None),
    ],
)
def test_what_a_page_asks_of_a_number_left_to_her(words: str, wanted: CountWanted | None) -> None:
    """A rib in the round needs an even number, and nobody counts her edge but she."""
    assert wanted_in(words) == wanted
