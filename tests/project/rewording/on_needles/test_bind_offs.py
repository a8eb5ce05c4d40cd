"""All stitches bound off, told in any order. Source: common practice."""

from __future__ import annotations

from stepper.project.rewording.on_needles.bind_offs import write_bind_offs
from stepper.project.rewording.reworded import as_printed
from tests.tables import each_row


@each_row(
    ("printed", "order"),
    [
        ("BO in pattern, loosely.", "BO in pattern."),
        ("Bind off REALLY loosely.", "Bind off."),
        ("Cast off loosely with K over K and P over P.", "Cast off in pattern."),
        ("Cast off purlwise, fairly loosely.", "Cast off purlwise."),
        ("Cast off, not tightly, on the wrong side.", "Cast off on WS."),
        ("Cast off rib-wise.", "Cast off in rib."),
        ("Knit 4 more rows and cast off the 20 sts not too tight.", "Knit 4 more rows. Cast off rem 20 sts."),
        ("Firmly bind off in rib.", "Bind off in rib."),
        ("Bind off in k2, p2 rib with medium tension.", "Bind off in k2, p2 rib."),
        ("Bind off loosely in rib using a larger needle.", "Change to larger needles. Bind off in rib."),
        # some stitches only, another side, or something else
        ("Knit 4 rows and cast off on the wrong side.", None),
        ("Knit 4 rows and bind off with a larger needle.", None),
        ("Bind off 5 sts at beg of next 2 rows.", None),
        ("Bind off loosely for the neck.", None),
        ("Bind off while knitting the next round.", None),
        ("Bind off in rib in purl.", None),
    ],
)
def test_how_they_are_bound_off_is_told_or_ordered(printed: str, order: str | None) -> None:
    """One word more leaves the sentence as it is printed."""
    line = write_bind_offs(as_printed(printed))
    assert line.text == (printed if order is None else order)
    assert len(line.places) == len(line.text) + 1
