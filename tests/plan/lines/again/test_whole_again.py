"""A whole worked again below its last part. Source: common practice; counts by hand."""

from __future__ import annotations

from tests.plan.lines.again.test_another_part import counts, knit
from tests.tables import each_row


@each_row("line", ["Make another one.", "Make 2.", "Work the second in the same way."])
def test_below_a_thumb_another_one_is_another_mitten(line: str) -> None:
    """Its last part begins on stitches that waited or are picked up, or goes on from those of its hand: no thumb comes alone."""
    hand = ("== hand", "CO 16 sts. Join in the round.", "Next round: K6, slip next 4 sts to waste yarn, k6.")
    for hat in ((), ("== hat", "CO 30 sts. Join in the round.", "Bind off.")):
        held = knit(*hat, *hand, "Bind off.", "== thumb", "Return the held sts to the needle.", "Knit 1 round.", "Bind off.", line)
        assert counts(held, "hand, second") == [16, 12, 0]
        assert counts(held, "thumb, second") == [4, 4, 0]
        assert "hat, second" not in held.sections
        top = knit(*hat, *hand[:2], "Knit 1 round.", "== top", "Knit 1 round.", "Bind off.", line)
        assert counts(top, "hand, second") == [16, 16]
        assert counts(top, "top, second") == [16, 0]
    picked = knit(*hand[:2], "Bind off.", "== thumb", "Pick up and knit 9 sts around the opening.", "Bind off.", line)
    assert counts(picked, "hand, second") == [16, 0]
    assert counts(picked, "thumb, second") == [9, 0]
    band = knit(*hand[:2], "Bind off.", "== sleeve", "Pick up and knit 9 sts around the armhole.", "Bind off.", line)
    assert "hand, second" not in band.sections
    assert counts(band, "sleeve, second") == [9, 0]
