"""The colours in words."""

from __future__ import annotations

from stepper.report.colour_lines import pair_lines, verdict_lines, why_not_compared
from stepper.report.colours import Colours
from tests.project.samples import HEAD, project
from tests.report.test_colours import looked_at, with_colours


def words(found: Colours) -> str:
    """Write everything in one line."""
    return " ".join(" ".join([*pair_lines(found), *verdict_lines(found)]).split())


def test_what_vanishes_is_said_with_the_change_and_its_figures() -> None:
    """A concrete colour, near her own, and what it gives."""
    text = words(with_colours("#1e7a34", "#c0392b"))
    assert "pine and ember vanish in grey." in text
    assert "green-blind (deuteranopia) eyes" in text
    assert "One change would mend it: ember darker, #7c0004 in place of #c0392b" in text
    assert "Beside pine: 20.2 apart in lightness, contrast 2.09:1." in text


def test_the_threshold_is_told_with_its_reasoning_and_standing() -> None:
    """No published threshold for yarn exists (check-values 7.3 and 12)."""
    text = words(with_colours("#1f4d3a", "#c4512d"))
    assert "Every pair can be told apart" in text
    assert "No threshold for yarn is in print" in text
    assert "common practice" in text


def test_a_change_that_mends_only_some_says_what_is_left() -> None:
    """Two pairs without a yarn in common."""
    head = HEAD.replace(
        "  A: ",
        '  B: {{name: rust, colour: "#c0392b"}}\n  C: {{name: ink, colour: "#1b2a41"}}\n  D: {{name: night, colour: "#1d2c43"}}\n  A: ',
    )
    head = head.replace("#4f6b3a", "#1e7a34").replace('{{".": MC, a: A}}', "{{a: A, b: B, c: C, d: D}}")
    head = head.replace("      a..a\n      .aa.\n", "      ab\n").replace(
        "sections:", "  low:\n    key: {{c: C, d: D}}\n    rows: |\n      cd\nsections:"
    )
    head = head.replace("{{a: A, b: B, c: C, d: D}}", "{{a: A, b: B}}")
    work = "Cast on 40 sts.\nJoin in the round.\nChart peak.\nKnit 1 round.\nChart low."
    text = words(looked_at(project(work, head=head)))
    assert "One change would mend most" in text
    assert "would still be too near." in text


def test_why_there_is_nothing_to_compare() -> None:
    """No second yarn, or no colour: what to write is said."""
    plain = looked_at(project("Cast on 40 sts.\nJoin in the round.\nKnit 3 rounds."))
    assert "No chart has two yarns" in why_not_compared(plain)
    head = HEAD.replace(', colour: "#4f6b3a"', "")
    bare = looked_at(project("Cast on 40 sts.\nJoin in the round.\nChart peak.", head=head))
    assert why_not_compared(bare).startswith("No colour is known for moss")
    assert why_not_compared(with_colours("#1f4d3a", "#c4512d")) == ""
