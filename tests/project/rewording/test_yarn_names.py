"""Yarns called by a colour of one or more words. Source: two-colour rows of old booklets and blogs; common practice."""

from __future__ import annotations

import pytest

from stepper.project.nested_records import records_in
from stepper.project.problems import Span
from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import Words, read_line, reads
from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.yarn_names import find_called, printed_again, sign_yarns, with_names
from stepper.project.stitchwork import Work

YARNS = {"MC": "soft white", "A": "dark grey", "B": "grey", "C": "off-white"}


def worked(line: str) -> list[tuple[str, int, str | None]]:
    """Return the stitches of a line: stitch, times and yarn."""
    read = read_line(line, lambda at, length: Span(line=1, column=at + 1, length=length), Words(sizes=0, yarns=YARNS))
    assert read.line is not None, read.problems
    return [
        (one.stitch, one.times.values[0], one.yarn)
        for one in records_in(read.line.sentences)
        if isinstance(one, Work)
    ]


def test_the_letters_of_background_and_pattern_are_yarns() -> None:
    """Only where a yarn can stand: "bc" in small letters, or before stitches that cross, is none."""
    assert find_called("BC", {"MC": "main", "BC": "background"}) == "BC"
    assert sign_yarns(as_printed("Rnds 1-2: Knit with BC.")).yarns == (("CC9", "BC"),)
    assert reads("Rnd 1: *K3 BC, k1 PC; rep from * to end.")
    assert sign_yarns(as_printed("Rnd 1: K2, 4 BC, k2.")).yarns == ()
    assert sign_yarns(as_printed("Knit with bc.")).yarns == ()


def test_a_two_colour_row_says_which_yarn_works_each_stitch() -> None:
    """A row in the wrong colours is seen across the room, and ripped back."""
    assert worked("Row 1: *K2 soft white, p3 dark grey; rep from * to end.") == [("k", 2, "MC"), ("p", 3, "A")]
    assert worked("Row 1: *With Grey K. 1, Dark Grey K. 3, repeat from * across row.") == [
        ("k", 1, "B"),
        ("k", 3, "A"),
    ]
    assert worked("Row 3: With off-white, k10, with grey, k12.") == [("k", 10, "C"), ("k", 12, "B")]


@pytest.mark.parametrize(
    "printed",
    [
        "Change to blue needles and knit 2 rounds.",
        "With soft white and grey, knit 2 rounds.",
        "Row 1: *With Grey K. 1, P. 3, Dark Grey K. 3, repeat from * across row.",
    ],
)
def test_what_names_no_single_yarn_is_not_read(printed: str) -> None:
    """The colour of a needle, two yarns held together, a stitch of either yarn: none of them is guessed."""
    assert not reads(printed)


def test_a_name_is_for_the_one_yarn_it_calls() -> None:
    """The whole name goes before a part of one; a word of two yarns calls neither."""
    assert find_called("grey", YARNS) == "B"
    assert find_called("white", YARNS) == "white"
    assert find_called("soft white", YARNS) == "MC"
    assert find_called("a", YARNS) == "A"


def test_signs_keep_their_places_and_are_never_said() -> None:
    """A problem is shown under the printed colour, and nobody hears of a sign."""
    printed = made_plain("K2 navy, k2 soft white.")
    made = sign_yarns(as_printed(printed))
    assert made.text == "K2 CC9, k2 CC8."
    assert made.yarns == (("CC9", "navy"), ("CC8", "soft white"))
    assert made.place(made.text.index("CC8"), 3)[0] == printed.index("soft")
    assert printed_again("with CC9 only", made.yarns) == "with navy only"
    assert with_names((("k", "CC9"), 2), dict(made.yarns)) == (("k", "navy"), 2)


def test_a_part_in_the_pattern_calls_its_one_yarn() -> None:
    """With two contrast colours "contrast colour" is the one without a number, or none."""
    keys = {"MC": "grey", "CC1": "rust", "CC2": "straw"}
    called = {name: find_called(name, keys) for name in ("main colour", "contrast colour", "contrast colour 2", "colour 2")}
    assert called == {
        "main colour": "MC",
        "contrast colour": "contrast colour",
        "contrast colour 2": "CC2",
        "colour 2": "colour 2",
    }
    assert find_called("contrasting colour", {"MC": "oat", "CC": "moss", "CC2": "plum"}) == "CC"
    assert find_called("pattern colour b", {"MC": "grey", "A": "white", "B": "brown"}) == "B"
    assert find_called("colour 2", {"C1": "charcoal", "C2": "white"}) == "C2"
