"""Abbreviations of the sheet: all that stand in its lines, each with a meaning a knitter can work from."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from stepper.craft.stitches import Kind, find_stitch
from stepper.project.reader import read_project
from stepper.report.sheet.abbreviations import explain_yarn, list_abbreviations
from stepper.report.sheet.blocks import RoundTable
from stepper.report.sheet.rounds import lay_out_rounds
from stepper.sitting.project_file import load_project
from tests.plan.test_compile import plan_of
from tests.plans import plan
from tests.project.samples import project

SHIPPED = sorted((Path(__file__).parents[3] / "sample_projects").glob("*.yaml"))


def texts(path: Path) -> list[str]:
    """List what the rounds of a sample say."""
    loaded = load_project(path)
    return [
        words
        for block in lay_out_rounds(loaded.plan, loaded.project)
        if isinstance(block, RoundTable)
        for row in block.rows
        for words in (row.numbers, *row.remarks, row.label, *row.words)
    ]


@pytest.mark.parametrize("path", SHIPPED, ids=lambda path: path.stem)
def test_no_abbreviation_of_a_line_is_left_unexplained(path: Path) -> None:
    """Every word of a line that is in the table of stitches under a short name is in the list, and every yarn."""
    loaded = load_project(path)
    listed = dict(list_abbreviations(loaded.plan, texts(path)))
    whole = re.sub(r"\(size \w+\)", "", " ".join(texts(path))).lower()
    for word in set(re.findall(r"(?<![\w/])[a-z][a-z0-9&]*", whole)):
        bare = re.sub(r"^(k|p|sl)\d+$", r"\1", word)
        entry = find_stitch(bare)
        spelled = entry is None or entry.kind in (Kind.EDGE, Kind.SHIFT) or bare in ("knit", "purl", "turn", "bead")
        assert spelled or bare in listed, word
    assert {key for key, name in loaded.plan.yarns.items() if key != name} <= set(listed)


@pytest.mark.parametrize("path", SHIPPED, ids=lambda path: path.stem)
def test_nothing_is_explained_that_does_not_occur(path: Path) -> None:
    """A list of everything there is would be no help beside the needles."""
    loaded = load_project(path)
    whole = " ".join(texts(path)).lower()
    for word, _ in list_abbreviations(loaded.plan, texts(path)):
        assert word in loaded.plan.yarns or re.search(rf"(?<!\w){re.escape(word.lower().split()[0])}(?![a-z])", whole), word


def test_yarns_are_told_by_their_part_and_name() -> None:
    """MC is the main colour and CC a contrast (common practice); a letter is a yarn of the file."""
    assert explain_yarn("MC", "tarn") == "main colour, tarn"
    assert explain_yarn("CC2", "curd") == "contrast colour 2, curd"
    assert explain_yarn("A", "curd") == "the yarn curd"
    assert explain_yarn("tarn", "tarn") == "tarn"


def test_words_are_listed_behind_the_stitches() -> None:
    """Yarns, stitches, words: in the order in which they are looked for."""
    made = plan(("body", ["co8", "k8", "(k1:A k2tog k1)x2"]))
    found = [word for word, _ in list_abbreviations(made, ["K8.", "*k1 A, k2tog; rep from * to end of rnd."])]
    assert found[-4:] == ["k", "k2tog", "rep", "rnd"]


def test_own_words_need_no_abbreviation() -> None:
    """What their stitches are stands in the row itself."""
    text = project("Cast on 20 sts.\nJoin in the round.\nOwn words: twist on your own. 24 sts.\nKnit 1 round.")
    made, file = plan_of(text), read_project(text).project
    assert file is not None
    (table,) = [block for block in lay_out_rounds(made, file) if isinstance(block, RoundTable)]
    assert any("Twist on your own." in row.words for row in table.rows)
    assert not any("own" in short for short, _ in list_abbreviations(made, ["Twist on your own."]))
