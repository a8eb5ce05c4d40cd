"""The page as a document: whole, self-contained, everything of the plan on it, nothing of a file's text let loose."""

from __future__ import annotations

import re
from itertools import pairwise
from pathlib import Path

import pytest

from stepper.commands.yarn import list_rows
from stepper.project.reader import read_project
from stepper.report.sheet.page import write_page
from stepper.report.yarn import list_yarns
from stepper.sitting.project_file import load_project, plan_of_text
from tests.report.drawing.test_markup import Seen, parsed

SAMPLES = sorted((Path(__file__).parents[2] / "fixtures").glob("*.yaml"))
IDS = [path.stem for path in SAMPLES]


def written(path: Path) -> str:
    """Write the page of a project file."""
    loaded = load_project(path)
    plan, rows = list_rows(loaded)
    return write_page(plan, loaded.project, rows)


def read(path: Path) -> Seen:
    """Write it and read it."""
    return parsed(written(path))


@pytest.mark.parametrize("path", SAMPLES, ids=IDS)
def test_it_needs_nothing_from_anywhere(path: Path) -> None:
    """No address, script, frame, picture or link outside; the browser is told to allow none."""
    markup = written(path)
    assert not re.search(r"https?:|//[a-z]|<script|<link|<img|<iframe|url\(|@import", markup)
    assert "default-src &#x27;none&#x27;" in markup


@pytest.mark.parametrize("path", SAMPLES, ids=IDS)
def test_it_is_a_whole_document(path: Path) -> None:
    """Language, title, headings without a gap from 1 to 3, unique names, every table with heads and a name."""
    seen = read(path)
    assert dict(seen.tags)["html"] == {"lang": "en"}
    levels = [int(name[1]) for name, _ in seen.tags if re.fullmatch(r"h[1-6]", name)]
    assert levels[0] == 1
    assert levels.count(1) == 1
    assert all(other <= one + 1 for one, other in pairwise(levels))
    names = [attributes["id"] for _, attributes in seen.tags if "id" in attributes]
    assert len(set(names)) == len(names)
    tables = [attributes for name, attributes in seen.tags if name == "table"]
    assert all(each["aria-labelledby"] in names for each in tables)


def test_everything_of_the_plan_is_on_it() -> None:
    """Sizes, measurements, yarn, alterations, charts, counts and every section of the pullover."""
    seen = read(SAMPLES[-1])
    for words in (
        "A blend of sizes: size 4 from the beginning",
        "Finished measurements",
        "Gauge",
        "The yoke from above",
        "no bobbles",
        "needle 3.75 mm instead of 4 mm in yoke",
        "Count 246 at 13.8 cm: after chart cairn.",
        "Chart ridge",
        "Left sleeve",
        "B, ember",
    ):
        assert words in seen.data, words
    drawings = [attributes.get("class") for name, attributes in seen.tags if name == "svg"]
    assert (drawings.count("schematic"), drawings.count("yoke"), drawings.count("chart")) == (1, 1, 3)
    assert "From the next round on 3 yarns at once" in seen.data or "3 yarns in one round" in seen.data


def test_how_a_cardigan_is_measured_is_said_beside_its_table() -> None:
    """Its chest holds a band that the drawing of the pieces does not; two figures without a word would be doubted."""
    assert "The chest counts one band" in written(next(path for path in SAMPLES if path.stem == "cardigan"))


@pytest.mark.parametrize("path", SAMPLES, ids=IDS)
def test_a_yoke_from_above_is_drawn_of_a_yoke_alone(path: Path) -> None:
    """Stitches go on hold for the thumb of a mitten and the instep of a sock, too; neither is a neck with rings around it."""
    assert ("The yoke from above" in written(path)) is (path.stem == "switchback")


def test_every_count_has_its_line_to_write_on() -> None:
    """One for each piece it is made in."""
    loaded = load_project(SAMPLES[-1])
    due = sum(each.checkpoint is not None for each in loaded.plan.rounds)
    assert written(SAMPLES[-1]).count('<span class="blank">') == due


def test_many_boxes_have_a_row_of_their_own() -> None:
    """Ninety-six rounds of a body are ticked across the sheet, not down a narrow column."""
    markup = written(SAMPLES[-1])
    assert re.search(r'<td colspan="4" class="many"><div class="boxes">(<label.{90,140}</label>){96}</div>', markup)


def test_words_of_the_file_stay_words(tmp_path: Path) -> None:
    """Title, names, labels, notes: a tag in them is shown, never followed."""
    evil = "<script>alert(1)</script>"
    path = tmp_path / "evil.yaml"
    text = SAMPLES[-1].read_text(encoding="utf-8")
    text = text.replace("title: Switchback pullover", f'title: "{evil}"').replace(
        "name: pine", f'name: "{evil}"'
    )
    text = text.replace("no bobbles", f'note: "{evil}"', 1)
    path.write_text(text, encoding="utf-8")
    markup = written(path)
    assert "<script" not in markup
    assert parsed(markup).data.count(evil) >= 3


def test_a_plan_with_next_to_nothing_is_a_page_too(tmp_path: Path) -> None:
    """No chart, colour, skein, body, alteration or finish: what is not there is not mentioned."""
    source = (
        "title: Strip\nsizes: 1\nknit: {size: 1}\nyarn:\n  MC: {name: chalk}\ngauge:\n"
        "  plain: {stitches: 20, rounds: 28}\nsections:\n  - name: strip\n    gauge: plain\n    yarn: MC\n"
        "    work: |\n      Cast on 8 sts. Work flat.\n      Knit 4 rows.\n      Bind off.\n"
    )
    plan = plan_of_text(source, "strip", tmp_path)
    project = read_project(source).project
    assert project is not None
    seen = parsed(write_page(plan, project, list_yarns(plan)))
    assert "Charts" not in seen.data
    assert "Wearer" not in seen.data
    assert "None: knitted as printed." in seen.data
