"""Rows of the file become printed lines, and every word keeps its place."""

from __future__ import annotations

from stepper.project.lines import Placer
from stepper.project.problems import Span
from stepper.project.reader import read_project
from tests.project.samples import project


def test_an_offset_in_joined_rows_leads_back_to_its_row() -> None:
    """The caret stands under the word in the file, not in the joined sentence."""
    place_of = Placer([("K1, k2tog,", Span(line=7, column=7)), ("  ssk, k1.", Span(line=8, column=7))])
    joined = "K1, k2tog, ssk, k1."
    assert (place_of(joined.index("k2tog"), 5).line, place_of(joined.index("k2tog"), 5).column) == (7, 11)
    assert (place_of(joined.index("ssk"), 3).line, place_of(joined.index("ssk"), 3).column) == (8, 9)


def test_rows_that_begin_with_a_hash_are_left_out() -> None:
    """Words to herself that are not read out."""
    found = read_project(project("Cast on 8 sts.\n# the blue needles\nBind off.")).project
    assert found is not None
    assert len(found.sections[0].lines) == 2


def test_work_must_be_a_block() -> None:
    """A folded block runs the lines together, and their places are lost."""
    text = project("Cast on 8 sts.").replace("work: |", "work: >")
    assert "block" in read_project(text).problems[0].message


def test_a_note_does_not_swallow_the_line_below_it() -> None:
    """A comma at the end of a note would else cost her two rounds."""
    found = read_project(project("Cast on 8 sts.\nNote: slowly,\nKnit 2 rows.\nNote: loosely,\nand with care.\nBind off."))
    assert found.project is not None
    assert [line.text for line in found.project.sections[0].lines] == [
        "Cast on 8 sts.",
        "Note: slowly,",
        "Knit 2 rows.",
        "Note: loosely, and with care.",
        "Bind off.",
    ]


def test_a_line_that_cannot_be_read_keeps_its_place() -> None:
    """What was meant, or that nobody knows, so that the counts behind it are checked all the same."""
    found = read_project(project("Cast on 8 sts.\nKnti 2 rows.\nSing a song of sixpence.\nBind off."))
    assert (found.project, len(found.problems)) == (None, 2)
    assert found.partial is not None
    kinds = [type(line.sentences[0]).__name__ for line in found.partial.sections[0].lines]
    assert kinds == ["Phrase", "WorkRounds", "Unread", "BindOff"]


def test_a_row_that_reads_sentence_by_sentence_only_becomes_several_lines() -> None:
    """What one sentence says may need a head of its own; one for some sizes only stays whole."""
    row = "Change to 4 mm needles. Next row (RS): K8. Bind off."
    found = read_project(project(f"Cast on 8 sts.\nWork flat.\n{row}")).project
    assert found is not None
    assert [line.text for line in found.sections[0].lines][2:] == ["Change to 4 mm needles.", "Next row (RS): K8. Bind off."]
    assert read_project(project("Cast on 8 sts.\nSizes S only: Knit 2 rows. Next row (RS): K8.")).project is None


def test_a_row_that_only_opens_lines_for_sizes_may_be_the_last_of_a_section() -> None:
    """A page that breaks off behind "All sizes:" is read as far as it goes, and nothing is made of that row."""
    text = project("Cast on 8 (10, 12) sts.\nBind off.").rstrip() + "\n  - name: cuff\n    work: |\n      All sizes:\n"
    found = read_project(text).project
    assert found is not None
    assert [len(section.lines) for section in found.sections] == [2, 0]


def test_a_row_of_the_page_may_hold_several_heads_of_rows() -> None:
    """"4th row: As 2nd. 5th to 8th rows: ..." are two lines, also where the second is of several rows."""
    rows = "1st row: K. 2nd row: P. 3rd row: P. 4th row: As 2nd. 5th to 8th rows: Repeat 1st and 2nd rows twice."
    read = read_project(project(f"Cast on 10 sts. Work flat.\n{rows}"))
    assert read.project is not None
    numbers = [line.numbers for line in read.project.lines if line.numbers]
    assert numbers == [(1,), (2,), (3,), (4,), (5, 6, 7, 8)]


def test_a_long_heading_of_a_pattern_is_its_name() -> None:
    """That it is worked in rounds is said there too; a name has so many letters at most."""
    head = "Ropes and twists pattern (multiple of 4 sts, worked in the round)"
    read = read_project(project(f"{head}\nRnd 1: *K2, p2; rep from * to end.\nCast on 8 sts."))
    assert read.project is not None
    assert read.project.lines[0].label == "Ropes and twists pattern (multiple of 4 sts)"
