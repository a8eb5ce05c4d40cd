"""Alterations as rules: their words, their sections, what is refused."""

from __future__ import annotations

import pytest

from stepper.project.keys.alterations import EXAMPLES, meets, read_alteration, say_instead
from stepper.project.problems import Span
from stepper.project.reader import read_project
from tests.project.samples import project

HERE = Span(line=1, column=1)


def test_an_alteration_is_read_as_a_rule() -> None:
    """Rules are carried out; anything else has to be called a note."""
    rule = read_alteration("needle 3.75 mm instead of 4 mm in yoke", HERE)
    assert rule is not None
    assert (rule.kind, rule.mm, rule.instead_of, rule.section) == ("needle", 3.75, 4.0, "yoke")
    typed = read_alteration("needle 3,75 mm instead of 4 mm for the yoke,", HERE)
    assert typed is not None
    assert (typed.mm, typed.instead_of, typed.section) == (3.75, 4.0, "yoke")
    assert read_alteration("needle 3.75 mm instead of 4 mm at the hem", HERE) is None
    bobbles = read_alteration("no bobbles", HERE)
    assert bobbles is not None
    assert bobbles.kind == "no bobbles"
    assert read_alteration("knit it nicely", HERE) is None


def test_who_leaves_a_detail_out_is_told_how_since_a_note_alone_leaves_it_in() -> None:
    """"no waist shaping" kept as a note only would still be knitted."""
    assert "Put # in front of the rows that you leave out" in say_instead("no waist shaping")
    assert say_instead("no  waist shaping").endswith("- note: no waist shaping")
    assert "Change the rows themselves" in say_instead("knit it nicely")


def test_of_an_example_only_the_form_is_offered_not_its_number() -> None:
    """"Did you mean: body 4 cm longer" to who wants 3 cm would be a plan that she did not ask for."""
    assert say_instead("body longer by 3 cm") == 'Write it like "body 4 cm longer", with your own numbers.'
    assert say_instead("no bobbels") == 'Did you mean "no bobbles"?'


def test_a_note_in_quotation_marks_is_a_note() -> None:
    """As a list of quoted rules is written."""
    note = read_alteration("note: shorter  cuffs", HERE)
    assert note is not None
    assert (note.kind, note.text) == ("note", "shorter cuffs")


@pytest.mark.parametrize("text", [example for example in EXAMPLES if not example.startswith("note")])
def test_every_example_offered_is_understood(text: str) -> None:
    """A hint must never offer wording that is refused itself."""
    assert read_alteration(text, HERE) is not None


@pytest.mark.parametrize(
    ("text", "section", "mm", "rounds"),
    [
        ("body 4 cm longer", "body", 40.0, 0),
        ("left sleeve 2 in shorter", "left sleeve", -50.8, 0),  # 1 in = 25.4 mm, international inch
        ("sleeves 6 rounds shorter", "sleeves", None, -6),
        ("body: 1 1/2 inches longer", "body", 38.1, 0),
    ],
)
def test_longer_and_shorter_take_a_length_or_rounds(
    text: str, section: str, mm: float | None, rounds: int
) -> None:
    """Both ways of measuring are in use."""
    rule = read_alteration(text, HERE)
    assert rule is not None
    assert (rule.kind, rule.section, rule.rounds) == ("length", section, rounds)
    assert rule.mm == (None if mm is None else pytest.approx(mm))


def test_binding_off_in_pattern_names_no_section() -> None:
    """`in pattern` is how, `in body` is where."""
    rule = read_alteration("bind off in pattern in body", HERE)
    assert rule is not None
    assert (rule.words, rule.section) == ("in pattern", "body")
    everywhere = read_alteration("bind off in pattern", HERE)
    assert everywhere is not None
    assert (everywhere.words, everywhere.section) == ("in pattern", "")
    ribbed = read_alteration("cast off loosely in rib in the body", HERE)
    assert ribbed is not None
    assert (ribbed.words, ribbed.section) == ("loosely in rib", "body")


def test_a_rib_is_read_stitch_by_stitch() -> None:
    """The rib worked and the one it replaces."""
    rule = read_alteration("k1, p1 rib instead of k2, p2 in neckband", HERE)
    assert rule is not None
    assert rule.rib == (("k", 1), ("p", 1))
    assert rule.rib_printed == (("k", 2), ("p", 2))


@pytest.mark.parametrize(
    ("section", "name", "fits"),
    [("sleeves", "left sleeve", True), ("body", "Body", True), ("body", "left sleeve", False)],
)
def test_a_word_of_the_name_stands_for_all_sections_that_bear_it(section: str, name: str, fits: bool) -> None:
    """Both sleeves are altered by one rule."""
    rule = read_alteration(f"no bobbles in {section}", HERE)
    assert rule is not None
    assert meets(rule, name) is fits


def test_an_unknown_section_is_a_problem_with_the_nearest() -> None:
    """A rule that would never apply is a slip of the pen."""
    text = project("Cast on 8 sts.") + "\nalterations:\n  - no bobbles in sleeev\n"
    problems = read_project(text).problems
    assert any('no section "sleeev"' in problem.message for problem in problems)


@pytest.mark.parametrize(
    ("text", "words", "stitches", "mm", "section"),
    [
        ("keep 20 sts free at centre front", "front", 20, None, ""),
        ("keep 20 stitches free at the center back in yoke", "back", 20, None, "yoke"),
        ("keep 8 cm free at front and back centre", "front back", 0, 80.0, ""),
        ("keep 4 in free at centre front, from the side in the body", "front side", 0, 101.6, "body"),
    ],
)
def test_a_centre_to_keep_free_is_read_with_its_width(
    text: str, words: str, stitches: int, mm: float | None, section: str
) -> None:
    """By stitches or by a length; front, back or both; rounds from the back or from the side."""
    rule = read_alteration(text, HERE)
    assert rule is not None
    assert (rule.kind, rule.words, rule.stitches, rule.section) == ("keep free", words, stitches, section)
    assert rule.mm == (None if mm is None else pytest.approx(mm))
    assert read_alteration("keep 20 sts free at the shoulder", HERE) is None
    assert read_alteration("keep 1 st free at centre front", HERE) is None


def test_an_unknown_label_of_a_count_is_a_problem_with_the_nearest() -> None:
    """`28 sts at Mor` was meant for the line "More"."""
    text = project("Cast on 20 sts.\nMore: Increase evenly to 24 sts.").replace(
        "sections:", "alterations:\n  - 28 sts at Mor\nsections:"
    )
    (problem,) = read_project(text).problems
    assert 'no line labelled "Mor"' in problem.message
    assert problem.hint == 'Did you mean "More"?'
