from __future__ import annotations

from pathlib import Path

import pytest

from stepper.store.copies import Copies
from stepper.store.examination import examine
from stepper.store.history import read_newest
from stepper.store.images import open_image
from stepper.store.records import Newest
from stepper.store.salvage import ReadableRows, SalvagedJournal, salvage
from tests.store.damages import ENTRIES, Original
from tests.store.disk import saved_journal


def bodies(whole: Original, salvaged: SalvagedJournal | None) -> tuple[str, ...]:
    """Return the bodies of a salvaged journal, which must be whole."""
    assert salvaged is not None
    connection = open_image(whole.path, salvaged.image)
    examine(connection, whole.path)
    return tuple(body for (body,) in connection.execute("SELECT body FROM entry ORDER BY seq"))


def spoilt(whole: Original, first: int, last: int) -> bytes:
    """Return the journal with some of its pages gone."""
    image = bytearray(whole.path.read_bytes())
    image[first * 4096 : last * 4096] = bytes((last - first) * 4096)
    return bytes(image)


def test_what_comes_before_the_damage_is_read(whole: Original) -> None:
    """Without copies, the entries up to the spoilt page are there, and how many are missing is known."""
    findings = ReadableRows()
    findings.look_through(whole.path, spoilt(whole, 12, 14))
    salvaged = salvage(whole.path, findings, [], "Cuff")
    found = bodies(whole, salvaged)

    assert salvaged is not None
    assert found == whole.bodies[: len(found)]
    assert 0 < len(found) < len(whole.bodies)
    assert salvaged.lost == len(whole.bodies) - len(found)


def test_a_journal_put_together_again_keeps_its_title(whole: Original) -> None:
    """Where nobody says how the garment is called, what is left of its own journal does."""
    findings = ReadableRows()
    findings.look_through(whole.path, spoilt(whole, 12, 14))
    salvaged = salvage(whole.path, findings, [], "")

    assert salvaged is not None
    own, found = (
        open_image(whole.path, image).execute("SELECT title FROM garment").fetchone()
        for image in (whole.path.read_bytes(), salvaged.image)
    )
    assert found == own != (whole.path.stem,)


def test_a_journal_read_without_copies_has_its_project_texts_and_says_how_far_it_goes(whole: Original) -> None:
    """Without the text that was in force nobody knows what its entries meant. Both texts, and the end, are those kept."""
    findings = ReadableRows()
    findings.look_through(whole.path, whole.path.read_bytes())
    salvaged = salvage(whole.path, findings, [], "Cuff")

    assert salvaged is not None
    connection = open_image(whole.path, salvaged.image)
    texts = tuple(text for (text,) in connection.execute("SELECT project_text FROM plan ORDER BY number"))
    assert texts == whole.texts
    kept = read_newest(open_image(whole.path, whole.path.read_bytes()))
    assert salvaged.newest == read_newest(connection) == kept
    assert (kept.seq, kept.plan) == (len(whole.bodies), len(whole.texts))


def test_a_copy_and_what_is_behind_the_damage_make_the_whole(whole: Original) -> None:
    """A page spoilt early costs nothing: a copy bridges it, and the entries after the copy are still there."""
    findings, copies = ReadableRows(), Copies(whole.path).listed()
    findings.look_through(whole.path, spoilt(whole, 8, 9))
    earlier = [each for each in copies if "-00149-" in each.name]
    salvaged = salvage(whole.path, findings, earlier, "Cuff")

    assert len(earlier) == 1
    assert bodies(whole, salvaged) == whole.bodies
    assert salvaged is not None
    assert salvaged.lost == 0


def test_copies_alone_are_enough(whole: Original) -> None:
    """With the journal gone altogether the fullest copy is taken."""
    assert (
        bodies(whole, salvage(whole.path, ReadableRows(), Copies(whole.path).listed(), "Cuff"))
        == whole.bodies
    )


def test_rows_that_do_not_follow_are_never_taken(whole: Original) -> None:
    """An entry that was changed, or is of another journal, must end the chain and not be put into it."""
    findings = ReadableRows()
    findings.look_through(whole.path, whole.path.read_bytes())
    row = findings.entries[200][0]
    findings.entries[200] = [(*row[:4], '{"n": 0}', row[5])]

    assert bodies(whole, salvage(whole.path, findings, [], "Cuff")) == whole.bodies[:199]


def test_a_copy_that_does_not_go_on_from_the_journal_is_left_aside(whole: Original) -> None:
    """Where she knitted on from an earlier journal, a longer copy of another course is not hers."""
    with_copies = Copies(whole.path).listed()
    findings = ReadableRows()
    findings.look_through(whole.path, whole.path.read_bytes())
    mark = Copies(whole.path).mark()
    assert mark is not None
    other = Newest(journal=mark.journal, seq=100, digest=b"x" * 16, plan=1, plan_digest=b"")
    found = salvage(whole.path, ReadableRows(), with_copies, "Cuff", continues=other)

    assert found is None
    assert mark.seq > ENTRIES


def test_nothing_is_made_of_nothing(whole: Original) -> None:
    """Where not one entry can be read there is no journal to give."""
    findings = ReadableRows()
    findings.look_through(whole.path, b"")
    findings.look_through(whole.path, b"title: Cuff\n")
    findings.look_through(whole.path, bytes(90_000))

    assert salvage(whole.path, findings, [], "Cuff") is None


def test_rows_that_are_malformed_or_known_are_left_out() -> None:
    """A page that is half another page yields rows of the right length and the wrong kinds; two copies yield each row
    twice. Only one of each, and nothing else, is put together again."""
    good = (1, "2025-03-03T20:15:00+01:00", "Advanced", 1, "{}", b"x" * 16)
    other = (1, "2025-03-03T20:15:00+01:00", "Advanced", 1, "{ }", b"y" * 16)
    odd = [("1", *good[1:]), (*good[:5], "x"), (1, None, *good[2:]), (*good[:3], True, *good[4:]), good[:5]]
    findings = ReadableRows()
    findings.add([good, good, *odd, other, good], [])
    assert dict(findings.entries) == {1: [good, other]}
    assert dict(findings.plans) == {}
    plan = (1, 1, "2025-03-03T20:15:00+01:00", "f", "title: Cuff", b"x" * 16)
    findings.add([], [plan, plan, (*plan[:1], "1", *plan[2:])])
    assert dict(findings.plans) == {1: [plan]}


def test_a_journal_is_known_by_its_own_name_where_its_checksum_is_wrong(whole: Original) -> None:
    """Its name is what ties it to its copies; the row that says how far it goes may be spoilt and still hold that name."""
    image = open_image(whole.path, whole.path.read_bytes())
    (name,) = image.execute("SELECT journal FROM newest").fetchone()
    image.execute("UPDATE newest SET checksum = x'00'")
    findings = ReadableRows()
    findings.look_through(whole.path, image.serialize())
    assert findings.names == [name]
    salvaged = salvage(whole.path, findings, [], "Cuff")
    assert salvaged is not None
    assert salvaged.newest.journal == name


def test_what_stands_for_a_name_and_is_no_text_is_no_name(whole: Original) -> None:
    """A spoilt row may hold anything; a number as the name of a journal would begin a chain of checksums with it."""
    image = open_image(whole.path, whole.path.read_bytes())
    image.execute("DROP TABLE newest")
    image.execute("CREATE TABLE newest (id INTEGER PRIMARY KEY, journal, seq)")
    image.execute("INSERT INTO newest VALUES (1, 7, 3)")
    findings = ReadableRows()
    findings.look_through(whole.path, image.serialize())
    assert findings.names == []
    assert len(findings.entries) == len(whole.bodies)


def test_a_copy_of_the_first_form_is_no_base(tmp_path: Path) -> None:
    """It has no checksums to go on from: whole as it is, it is passed over and not stumbled upon."""
    copy = saved_journal(tmp_path / "first.journal")
    assert salvage(tmp_path / "cuff.journal", ReadableRows(), [copy], "Cuff") is None


@pytest.mark.parametrize(
    ("said", "found", "title"), [("Cuff", "Sleeve", "Cuff"), ("", "Sleeve", "Sleeve"), ("", "", "cuff")]
)
def test_the_title_is_what_is_said_or_else_found_or_else_the_files_name(
    whole: Original, tmp_path: Path, said: str, found: str, title: str
) -> None:
    """She sees it at the top of the screen and knows what lies in her lap; without one there is at least the file's."""
    findings = ReadableRows()
    findings.look_through(whole.path, whole.path.read_bytes())
    findings.title = found
    salvaged = salvage(tmp_path / "cuff.journal", findings, [], said)
    assert salvaged is not None
    kept = open_image(whole.path, salvaged.image).execute("SELECT title FROM garment").fetchone()
    assert kept == (title,)
