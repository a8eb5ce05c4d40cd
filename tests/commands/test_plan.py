"""`stepper plan`: the plan for people and for programs."""

from __future__ import annotations

import json
import sys
from pathlib import Path

import pytest

from stepper.commands.main import main
from stepper.commands.plan import plan_lines, speak_once
from stepper.language.phrasing import say_round
from stepper.sitting.project_file import load_project
from tests.plan.test_compile import plan_of
from tests.project.samples import HEAD, project

SWITCHBACK = Path(__file__).parents[1] / "fixtures" / "switchback.yaml"


def test_json_shows_the_blended_round(capsys: pytest.CaptureFixture[str]) -> None:
    """225 to 246 stitches, 15 gaps of 11 and 6 of 10 around the join; the body starts on 164."""
    assert main(["plan", str(SWITCHBACK), "--json"]) == 0
    document = json.loads(capsys.readouterr().out)
    final = next(r for r in document["rounds"] if r["label"] == "Final increase")
    assert (final["before"], final["after"]) == (225, 246)
    places = final["shaping"]
    gaps = [b - a for a, b in zip(places, [*places[1:], places[0] + 225], strict=True)]
    assert (gaps.count(11), gaps.count(10), len(gaps)) == (15, 6, 21)
    assert next(r for r in document["rounds"] if r["section"] == "body")["before"] == 164
    assert final["spoken"]


def test_text_puts_like_rounds_together() -> None:
    """A hundred plain rounds are one line."""
    lines = list(plan_lines(plan_of(project("Cast on 8 sts.\nKnit 100 rounds.\nBind off."))))
    assert len(lines) < 12
    assert any("2-101 knit. 8 sts" in line for line in lines)


def test_what_is_altered_is_told_where_it_begins_and_where_it_ends() -> None:
    """Not in every line between, which would hide where something changes."""
    head = HEAD.replace("sections:", "alterations:\n  - needle 3.5 mm instead of 4.5 mm\nsections:")
    work = "Cast on 8 sts.\nChange to 4.5 mm needles.\nKnit 2 rounds.\nPurl 2 rounds.\nChange to 5 mm needles.\nKnit 2 rounds."
    lines = [line.strip() for line in plan_lines(plan_of(project(work, head=head)))]
    told = [line for line in lines if line.startswith(("altered", "as printed"))]
    assert told == ["altered from here: needle 3.5 mm instead of 4.5 mm", "as printed from here"]
    assert "your own needle, 3.5 instead of 4.5 mm" in lines


SAMPLES = sorted(SWITCHBACK.parent.glob("*.yaml"))


@pytest.mark.parametrize("path", SAMPLES, ids=[path.stem for path in SAMPLES])
def test_a_round_said_once_is_said_right_every_time(path: Path) -> None:
    """Words kept for like rounds are those each of them would have had."""
    plan = load_project(path).plan
    say = speak_once(plan)
    assert [say(round_) for round_ in plan.rounds] == [say_round(round_, plan) for round_ in plan.rounds]


def test_the_page_is_written_beside_nothing_else(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """One file, replaced whole the second time, and said to be there."""
    target = tmp_path / "plan.html"
    for _ in range(2):
        assert main(["plan", str(SWITCHBACK), "--html", str(target)]) == 0
    assert [each.name for each in tmp_path.iterdir()] == ["plan.html"]
    assert target.read_text(encoding="utf-8").startswith('<!DOCTYPE html>\n<html lang="en">')
    assert "is written" in capsys.readouterr().out


def test_a_page_that_cannot_be_written_is_a_sentence(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """A folder that is not there is the surroundings' fault."""
    assert main(["plan", str(SWITCHBACK), "--html", str(tmp_path / "none" / "plan.html")]) == 4
    assert "cannot be written" in capsys.readouterr().err


def test_the_sheet_is_written_as_a_pdf(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Without a browser, beside the page if both are asked for; letters the typeface has not are told."""
    pytest.importorskip("reportlab", reason="reportlab is not installed")
    pytest.importorskip("font_source_sans_pro", reason="the typeface is not installed")
    page, sheet = tmp_path / "sheet.html", tmp_path / "sheet.pdf"
    assert main(["plan", str(SWITCHBACK), "--html", str(page), "--pdf", str(sheet)]) == 0
    assert sorted(each.name for each in tmp_path.iterdir()) == ["sheet.html", "sheet.pdf"]
    assert sheet.read_bytes().startswith(b"%PDF-")
    assert "has no letters" not in capsys.readouterr().out
    file = tmp_path / "garment.yaml"
    file.write_text(SWITCHBACK.read_text(encoding="utf-8").replace("name: pine", "name: אורן"), encoding="utf-8")
    assert main(["plan", str(file), "--pdf", str(sheet)]) == 0
    assert "no letters for" in " ".join(capsys.readouterr().out.split())


def test_a_pdf_without_its_packages_is_a_sentence(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    """It names the package, and no half file is left."""
    monkeypatch.setitem(sys.modules, "reportlab", None)
    monkeypatch.setitem(sys.modules, "reportlab.pdfbase", None)
    monkeypatch.setitem(sys.modules, "reportlab.pdfgen.canvas", None)
    assert main(["plan", str(SWITCHBACK), "--pdf", str(tmp_path / "sheet.pdf")]) == 4
    assert "reportlab" in capsys.readouterr().err
    assert list(tmp_path.iterdir()) == []


def test_a_round_in_one_colour_names_it(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """The last round of a chart may be all in one colour, and so may a stripe; nobody else says so."""
    file = tmp_path / "stripe.yaml"
    work = "Cast on 40 sts. Join in the round.\nKnit 1 round.\nWith A, purl 1 round.\nWith MC, knit 1 round.\nBind off."
    file.write_text(project(work), encoding="utf-8")
    assert main(["plan", str(file)]) == 0
    lines = [line.strip() for line in capsys.readouterr().out.splitlines()]
    assert [line for line in lines if "knit" in line or "purl" in line] == [
        "2 knit. 40 sts",
        "3 purl in A. 40 sts",
        "4 knit. 40 sts",
    ]


EVEN = "Cast on 200 sts.\nJoin in the round.\nIncrease evenly to 256 sts."


def test_the_manner_of_even_changes_is_told_with_what_it_does_to_the_look() -> None:
    """She can only choose by what it does; a garment without such rounds says nothing of it."""
    lines = list(plan_lines(plan_of(project(EVEN))))
    told = 'Even changes are spaced in the manner "sayable": wider and narrower gaps stand in groups'
    assert lines[1].startswith(told)
    assert "       2 [(k4, m1) 4 times, (k3, m1) 3 times] 8 times. 200 → 256 sts" in lines
    alike = plan_of(project("Cast on 72 sts.\nJoin in the round.\nIncrease evenly to 90 sts."))
    assert not any("spaced" in line for line in plan_lines(alike))


def test_another_manner_can_be_looked_at(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Without changing the file: the same counts, the gaps in another order."""
    path = tmp_path / "cowl.yaml"
    path.write_text(project(EVEN), encoding="utf-8")
    assert main(["plan", str(path), "--manner", "runs"]) == 0
    told = capsys.readouterr().out
    assert 'spaced in the manner "in two runs": all wider gaps stand in one stretch' in told
    assert "(k4, m1) 32 times, (k3, m1) 24 times. 200 → 256 sts" in told
    head = HEAD.replace("sections:", "spacing: in two runs\nsections:")
    path.write_text(project(EVEN, head=head), encoding="utf-8")
    assert main(["plan", str(path)]) == 0
    assert capsys.readouterr().out == told
