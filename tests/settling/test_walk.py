"""A run through what is open: the order, what is written when, back, later and stop."""

from __future__ import annotations

from pathlib import Path

import pytest

from stepper.errors import ProjectError, SurroundingsError
from stepper.project.page.unread.left_open import find_left_open
from stepper.settling.walk import Settling
from tests.project.samples import project
from tests.settling.typed import type_answers

MARK = "# LOOK (row {} of the text)."


def written(tmp_path: Path, work: str, sizes: str = "one") -> Path:
    """Write a file with these lines, of one size."""
    path = tmp_path / "hat.yaml"
    path.write_text(project(work, sizes=sizes, size=sizes.split()[0]), encoding="utf-8")
    return path


TWO = f"""
    Cast on 40 sts.
    {MARK.format(3)}
    Note: Twirl k2 in loops.
    {MARK.format(5)}
    Note: Knot them. 44 sts.
    Bind off.
"""


def test_each_answer_is_in_the_file_before_the_next_question(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Whatever happens then, it is kept."""
    path = written(tmp_path, TWO)
    type_answers(monkeypatch, "")
    settling = Settling(path=path)
    assert not settling.run()  # the input ended
    assert settling.answered == 1
    assert "Own words: Twirl k2 in loops." in path.read_text()
    (left,) = find_left_open(path.read_text())
    assert left.where == "row 5"
    type_answers(monkeypatch, "")
    capsys.readouterr()
    assert Settling(path=path).run()
    shown = capsys.readouterr().out
    assert "1 open. Row 5 of the page" in shown
    assert "Own words: Knot them. 44 sts." in path.read_text()


def test_breaking_off_keeps_what_was_answered(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Ctrl-C comes as an exception out of the reading of a line."""
    path = written(tmp_path, TWO)

    class BrokenOff:
        lines = iter(["note\n"])

        def readline(self) -> str:
            for line in self.lines:
                return line
            raise KeyboardInterrupt

    monkeypatch.setattr("sys.stdin", BrokenOff())
    with pytest.raises(KeyboardInterrupt):
        Settling(path=path).run()
    assert len(find_left_open(path.read_text())) == 1


def test_back_puts_the_file_as_it_was_and_asks_again(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """As often as there were answers; what was left open is open again too."""
    path = written(tmp_path, TWO)
    before = path.read_text()
    type_answers(monkeypatch, "back", "note", "later", "stop")
    settling = Settling(path=path)
    assert settling.run()  # the second was left open, and nothing else is
    assert "nothing was answered before it" in capsys.readouterr().out
    assert path.read_text() != before
    path.write_text(before)
    type_answers(monkeypatch, "note", "back", "back", "stop")
    Settling(path=path).run()
    assert path.read_text() == before


def test_what_is_left_open_is_asked_again_in_the_next_run_alone(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Later is not never."""
    path = written(tmp_path, TWO)
    for _ in range(2):
        type_answers(monkeypatch, "later", "later")
        settling = Settling(path=path)
        assert settling.run()
        assert settling.answered == 0
    assert len(find_left_open(path.read_text())) == 2


def test_lines_that_do_not_fit_come_behind_the_open_rows_of_their_part(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """They mostly hang on them: here the line above fits once the row below it is known, and another never does."""
    work = f"""
        Loop panel (10 sts):
        Row 1: P10.
        {MARK.format(4)}
        Note: Row 2: P2, loops, p2.
        Cast on 40 sts.
        K10. 12 sts.
        {MARK.format(9)}
        Note: Knot them.
        Bind off.
    """
    path = written(tmp_path, work)
    type_answers(monkeypatch, "r", "note", "o", "stop")
    assert Settling(path=path).run()
    shown = capsys.readouterr().out
    asked = [line for line in shown.split("\n") if "open. " in line or "does not fit" in line]
    assert [each.split(",")[0].split(":")[0] for each in asked] == ["2 open. Row 4 of the page", "1 open. Row 9 of the page", "Read"]
    assert "# K10. 12 sts." in path.read_text()


def test_a_row_in_own_words_that_does_not_fit_is_not_wrapped_in_own_words_again(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Enter would go round for ever, a word longer each time; the same answer once more changes nothing."""
    row = "Row 2: Own words: Twirl back in loops."
    path = written(tmp_path, f"\n    Cast on 40 sts.\n    Join.\n    Row 1: K20, turn.\n    {row}\n    Bind off.\n")
    type_answers(monkeypatch, "1 row, same", *[""] * 9)
    Settling(path=path).run()
    shown = capsys.readouterr().out
    assert "short rows are open here" in shown
    assert "That changes nothing, so it is left open." in shown
    assert row in path.read_text()
    type_answers(monkeypatch, *[""] * 9)
    assert Settling(path=path).run()
    assert "[later]" in capsys.readouterr().out
    assert row in path.read_text()


def test_what_is_so_only_in_sizes_that_she_does_not_knit_can_be_left_aside(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """The page has eleven sizes, and she is knitting one."""
    path = written(tmp_path, "Cast on 40 (44) sts.\nKnit 1 row. 40 (45) sts.\nBind off.", sizes="S (M)")
    type_answers(monkeypatch, "")
    assert Settling(path=path).run()
    assert "  only: S\n" in path.read_text() or "only: S}" in path.read_text()
    assert "in sizes that you do not knit; you knit size S" in capsys.readouterr().out
    path = written(tmp_path, "Cast on 40 (44) sts.\nKnit 1 row. 40 (45) sts.\nBind off.", sizes="S (M)")
    type_answers(monkeypatch, "no")
    assert Settling(path=path).run()
    assert "only" not in path.read_text()


def test_needles_that_are_called_smaller_are_asked_for(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Two of them are needed, once for all lines."""
    path = written(tmp_path, "Change to smaller needles.\nCast on 40 sts.\nKnit 1 row.\nBind off.")
    type_answers(monkeypatch, "US 3", "4 mm")
    settling = Settling(path=path)
    assert settling.run()
    assert settling.answered == 1
    assert "\nneedles: 3.25 mm, 4 mm\n\nsections:" in path.read_text()


def test_before_the_first_round_enter_leaves_the_two_needles_open(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The rows that speak of them are asked about then."""
    path = written(tmp_path, "Change to smaller needles.\nCast on 40 sts.\nKnit 1 row.\nChange to larger needles.\nBind off.")
    type_answers(monkeypatch, "", "never asked")
    settling = Settling(path=path, to_begin=True)
    assert settling.run()
    assert settling.answered == 0
    type_answers(monkeypatch, "US 3", "4 mm")
    assert Settling(path=path, to_begin=True).run()
    assert "\nneedles: 3.25 mm, 4 mm\n" in path.read_text()


def test_a_file_changed_meanwhile_is_gone_on_with_as_it_is(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """An editor is open beside it; what was saved there is not written over."""
    path = written(tmp_path, TWO)

    class Beside:
        answers = iter(["note\n", "note\n", ""])

        def readline(self) -> str:
            answer = next(self.answers)
            if "# hers" not in path.read_text():
                path.write_text(path.read_text() + "# hers\n")
            return answer

    monkeypatch.setattr("sys.stdin", Beside())
    settling = Settling(path=path)
    settling.run()
    assert "The file was changed meanwhile" in capsys.readouterr().out
    assert "# hers" in path.read_text()
    assert settling.answered == 1  # the first answer was to the file of before; it was asked again


def test_back_writes_over_nothing_that_was_changed_meanwhile(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """What was saved beside the question is worth more than the answer that is taken back."""
    path = written(tmp_path, TWO)

    class Beside:
        answers = iter(["note\n", "back\n", ""])

        def readline(self) -> str:
            answer = next(self.answers)
            if answer == "back\n":
                path.write_text(path.read_text() + "# hers\n")
            return answer

    monkeypatch.setattr("sys.stdin", Beside())
    Settling(path=path).run()
    assert "# hers" in path.read_text()


def test_lines_end_as_they_did(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A file from Windows stays one."""
    path = written(tmp_path, TWO)
    path.write_bytes(path.read_bytes().replace(b"\n", b"\r\n"))
    type_answers(monkeypatch, "note")
    Settling(path=path).run()
    raw = path.read_bytes()
    assert raw.count(b"\n") == raw.count(b"\r\n") > 10


@pytest.mark.parametrize("text", ["", " \n", "title: a\0b\n"])
def test_what_is_no_project_file_is_refused(text: str, tmp_path: Path) -> None:
    """As by every other command."""
    path = tmp_path / "hat.yaml"
    path.write_text(text)
    with pytest.raises(ProjectError):
        Settling(path=path).run()
    with pytest.raises(SurroundingsError):
        Settling(path=tmp_path / "none.yaml").run()


def test_only_what_stands_in_front_is_asked_about_before_the_knitting(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Without a size nothing can be knitted; the rows are asked about where she comes to them."""
    path = written(tmp_path, TWO, sizes="S (M)")
    size = "knit:\n  size: S  # LOOK: which size do you knit?"
    text = path.read_text().replace("knit: {size: S}", size)
    path.write_text(f"# Written from the text of a printed pattern.\n{text}")
    before = [each.kind for each in find_left_open(path.read_text())]
    type_answers(monkeypatch, "M")
    assert Settling(path=path, to_begin=True).run()
    after = find_left_open(path.read_text())
    assert [each.kind for each in after] == before[1:]
    assert "size: M" in path.read_text()
