"""The whole outline of a project file, and every problem of it in one run."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from stepper.plan.compile import faults_of
from stepper.project.problems import render_problems
from stepper.project.reader import read_project
from tests.project.samples import legal_works, project
from tests.tables import each_row

SWITCHBACK = Path(__file__).parents[1] / "fixtures" / "switchback.yaml"


def test_the_sample_is_read_whole() -> None:
    """Every key of the outline is in it."""
    reading = read_project(SWITCHBACK.read_text(encoding="utf-8"))
    assert reading.problems == ()
    garment = reading.project
    assert garment is not None
    assert garment.sizes == ("1", "2", "3", "4", "5", "6")
    assert garment.sizes[garment.size] == "4"
    assert [(switch.label, garment.sizes[switch.size]) for switch in garment.switches] == [("Final increase", "2")]
    assert garment.yarns["A"].name == "pine"
    assert garment.fabrics["stockinette"].blocked is not None
    assert garment.body["bust"] == 880.0
    assert garment.finish_by == "2027-02-14"
    assert [chart.width for chart in garment.charts.values()] == [10, 15, 6]
    assert [alteration.kind for alteration in garment.alterations] == ["no bobbles", "needle", "note"]


def test_gauge_in_inches_is_over_four_inches() -> None:
    """Source: 4 in is 10.16 cm, 22 sts over 4 in are 21.654 over 10 cm (check-values 1.1.12, computed)."""
    text = project("Cast on 8 sts.").replace("title:", "units: in\ntitle:").replace("stitches: 20", "stitches: 22")
    reading = read_project(text)
    assert reading.project is not None
    assert reading.project.fabrics["plain"].gauge.stitches == pytest.approx(21.654, abs=0.001)


@each_row(
    ("old", "new", "words"),
    [
        ("title: Bramble", "titel: Bramble", "titel"),
        ("sizes: S (M, L)", "sizes: S (S, L)", "differ"),
        ("{size: M}", "{size: XXL}", 'no size "XXL"'),
        ("{size: M}", "{size: M, then: [{from: Nowhere, size: S}]}", "Nowhere"),
        ('colour: "#d8ccb0"', "colour: #d8ccb0", "taken for a comment"),
        ('colour: "#d8ccb0"', "colour: oatmeal", "not a colour"),
        ("stitches: 20, rounds: 28", "stitches: none, rounds: 28", "`stitches`"),
        ("needle: 4 mm", "needle: four", "length"),
        (".: MC", ".: MC", ""),
        ('a: A}', 'a: Q}', '"Q"'),
        ("  - name: body", "  - name: body\n    yarn: Z", 'no yarn "Z"'),
        ("  - name: body", "  - name: body\n    gauge: plane", 'no gauge "plane"'),
        ("title: Bramble", "finish_by: soon\ntitle: Bramble", "not a date"),
        ("title: Bramble", "units: ells\ntitle: Bramble", "ells"),
        ("title: Bramble", "body: {bust: wide}\ntitle: Bramble", "not a length"),
        ("title: Bramble", "alterations: [more cowbell]\ntitle: Bramble", "alteration"),
    ],
)
def test_a_fault_of_the_outline_is_told_in_words(old: str, new: str, words: str) -> None:
    """Each value is checked where it stands."""
    text = project("Cast on 8 sts.")
    if words:
        assert old in text
    shown = render_problems(read_project(text.replace(old, new)).problems, text, "a.yaml")
    assert words in shown


def test_an_empty_gauge_is_a_fault_and_the_counts_are_checked_all_the_same() -> None:
    """Lengths need a gauge; what the stitches come to does not wait for it."""
    text = re.sub(r"^gauge:.*\n(?: .*\n)*", "gauge: {}\n", project("Cast on 8 sts.\nK1, k2tog, k5. 8 sts."), flags=re.M)
    reading = read_project(text)
    assert [problem.message for problem in reading.problems] == ["`gauge` is empty."]
    assert reading.partial is not None
    assert "prints 8" in faults_of(reading.partial)[0].message


def test_every_problem_is_told_in_one_run() -> None:
    """Never only the first."""
    text = project("Cast on 8 (9) sts.\nKnti 2 rounds.\nKnit 2 rouns.\nIncrease evenlly to 10 sts.")
    lines = [problem.line for problem in read_project(text.replace("{size: M}", "{size: Q}")).problems]
    assert len(lines) == 5
    assert lines == sorted(lines)


def test_a_sentence_broken_over_lines_is_read_as_one() -> None:
    """Text copied from a page has its lines broken inside a sentence."""
    broken = project("Cast on 8 sts.\nK1, k2tog,\n  k to last 3 sts,\n  ssk, k1.")
    whole = project("Cast on 8 sts.\nK1, k2tog, k to last 3 sts, ssk, k1.")
    one, other = read_project(broken).project, read_project(whole).project
    assert one is not None
    assert other is not None
    assert len(one.sections[0].lines) == len(other.sections[0].lines) == 2


def test_a_fault_in_a_broken_sentence_is_told_where_it_stands() -> None:
    """The third line of the file's block, not the first."""
    problems = read_project(project("Cast on 8 sts.\nK1, k2tog,\nk to last 3 sts, ssk (7, 8), k1.")).problems
    assert problems


def test_numbers_of_yarn_and_gauge_have_bounds() -> None:
    """A skein of minus fifty grams is no skein."""
    text = project("Cast on 8 sts.").replace("grams: 50", "grams: -50")
    assert "`grams`" in read_project(text).problems[0].message


@given(legal_works())
@settings(max_examples=60, deadline=None)
def test_every_legal_work_is_read(work: str) -> None:
    """The wording covers what the strategies make."""
    assert read_project(project(work)).problems == ()


@given(work=legal_works(), data=st.data())
@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])
def test_one_word_changed_is_the_same_garment_or_a_problem_on_its_line(work: str, data: st.DataObject) -> None:
    """A slip is found where it was made; nothing ever raises."""
    text = project(work)
    lines = text.splitlines()
    number = data.draw(st.integers(0, len(lines) - 1))
    words = lines[number].split(" ")
    place = data.draw(st.integers(0, len(words) - 1))
    words[place] = data.draw(st.sampled_from(["", words[place] + "x", "0", "sts", "…"]))
    lines[number] = " ".join(words)
    reading = read_project("\n".join(lines) + "\n")
    assert reading.project is not None or reading.problems


def test_a_file_kept_for_one_size_is_kept_for_the_one_that_is_knitted() -> None:
    """Its single counts are that size's, so that another may not be knitted by them, nor switched to."""
    text = project("Cast on 40 (44, 48) sts.\nFirst: Increase evenly to 50 (54, 58) sts.", size="M")
    kept = read_project(text.replace("size: M", "size: M, only: M")).project
    assert kept is not None
    assert kept.alone is not None
    whole = read_project(text).project
    assert whole is not None
    assert whole.alone is None
    (other,) = read_project(text.replace("size: M", "size: M, only: L")).problems
    assert other.message == "the file is kept for size L alone, and size M is to be knitted."
    (unknown,) = read_project(text.replace("size: M", "size: 38, only: M")).problems
    assert unknown.message == 'there is no size "38".'
    (none,) = read_project(text.replace("size: M", "size: M, only: XL")).problems
    assert none.message == 'there is no size "XL".'
    switched = text.replace("{size: M}", "{size: M, only: M, then: [{from: First, size: L}]}")
    (switch,) = read_project(switched).problems
    assert switch.message == "the file is kept for size M alone, so that no other can be switched to."
