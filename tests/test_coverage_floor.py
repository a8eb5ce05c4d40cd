"""The floor of coverage: what it says of a file, and that its table is one."""

from __future__ import annotations

from pathlib import Path

from tests.bench.coverage_floor import IN_CI, ROOMS, TABLE, below, floors


def test_a_file_below_its_floor_and_a_new_one_hardly_tried_are_named() -> None:
    """A floor that nobody falls through holds nothing; one that is just reached is kept."""
    least = {"stepper/craft/gauge.py": 98, "stepper/craft/fit.py": 90}
    found = {
        "stepper/craft/gauge.py": 95.9,
        "stepper/craft/fit.py": 88.0,
        "stepper/craft/new.py": 84.9,
        "stepper/craft/tried.py": 85.0,
    }
    assert [each.split(":")[0] for each in below(found, least)] == [
        "stepper/craft/gauge.py",
        "stepper/craft/new.py",
    ]


def test_a_row_of_the_table_is_a_file_and_a_share(tmp_path: Path) -> None:
    """A row that is misread would let its file fall."""
    table = tmp_path / "floor.txt"
    table.write_text("# words\nstepper/craft/gauge.py 98\n\nstepper/craft/fit.py 90\n", encoding="utf-8")
    assert floors(table) == {"stepper/craft/gauge.py": 98, "stepper/craft/fit.py": 90}
    assert all(0 <= share <= 100 for share in floors().values())
    assert TABLE.read_text(encoding="utf-8").isascii()


def test_what_ci_looks_at_is_among_the_rooms() -> None:
    """A room misspelt there would be looked at by nobody."""
    assert set(IN_CI) < set(ROOMS)
