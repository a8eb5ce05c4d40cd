"""What pages of sweaters in the round tell, in other words. Source: the print of such pages; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword
from stepper.project.rewording.style.yoke_synonyms import YOKES
from tests.tables import each_row


@each_row("printed", [one.example for one in YOKES])
def test_the_lines_are_read(printed: str) -> None:
    """Each row has a line that needs it."""
    assert reads(printed)


@pytest.mark.parametrize(
    ("printed", "plain"),
    [
        ("Body now has 156 sts.", "156 sts."),
        ("8 sts have been decreased.", "8 sts dec'd."),
        ("Place the BOR marker and join.", "join in the round."),
        ("Knit to BOR, then knit 2 rnds.", "Knit to end. knit 2 rnds."),
        ("Set-up rnd: *K8, pm, k12, pm; rep from * once, omitting the last pm.", "Set-up rnd: K8, pm, k12, pm, K8, pm, k12."),
        ("Knit until yoke measures 8 cm from underside of the collar.", "Knit until yoke measures 8 cm from end of collar."),
        ("Row 2 (WS): MDS, p to 3 sts past next two markers, turn.", "Row 2 (WS): make a ds, p to marker, sm, p to marker, sm, p 3, turn."),
        ("Knit 3 rnds. On the last rnd, increase 4 sts evenly.", "Knit 3 rnds, increasing 4 sts evenly across the last rnd."),
    ],
)
def test_what_they_become(printed: str, plain: str) -> None:
    """The words the grammar knows, and no stitch more or less."""
    assert " ".join(reword(made_plain(printed)).text.split()) == plain


@each_row(
    "printed",
    [
        "Still 40 sts, inc 4.",
        "Body now has 40 sts, dec to 36.",
        "You should have 40 sts and 4 markers and k2 on your needle.",
        "You have placed 4 markers and 2 yos.",
        "4 sts have been increased on each side of each marker.",
        "Set-up rnd: *K8, pm, k12, pm; rep from * twice, omitting the last pm.",
        "Knit 2 rnds, switching to the longer needle on round 2.",
        "Knit 3 rounds. On the last but one round, decrease 4 sts evenly.",
        "Knit until yoke measures 8 cm from bottom of ribbing.",
        "Knit until yoke measures 8 cm from back neck.",
        "Work even until body measures 8 cm, or to 2 cm less than the back.",
        "Next rnd: K4, sm, knit the sleeve sts, sm, k to end.",
        "Place first 8 sts on a holder, the next 24 sts on the back needle.",
        "Use the tails at the underarms to graft 4 sts.",
        "Now knit all the parts onto the 80 cm circular needle, dec 4 sts: knit across 20 sts.",
        "Rnd 1: *K2, k2tog*, repeat *to* the marker.",
        "Work 6 cm rib (k1, yo).",
        "Row 3 (RS): Make a DS, k to DS, resolve DS of row 1, k3, turn.",
    ],
)
def test_another_word_and_it_is_none_of_these(printed: str) -> None:
    """What looks the same and means another thing is not passed over."""
    assert not reads(printed)
