"""How a piece begins: joined, spread over needles. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword
from tests.tables import each_row


def written(printed: str) -> str:
    """Return a line in the words it is read in at the second look."""
    return " ".join(reword(made_plain(printed), spoken=True).text.split()).strip(" ,.")


@each_row("care", ["making sure nothing is twisted", "mind the twist", "without twisting", "taking care not to twist the sts", "but don't twist"])
@each_row("join", ["Join", "Join to work in the round", "Join into a ring", "Join the work into a round"])
def test_a_ring_is_closed_with_any_care(join: str, care: str) -> None:
    """The care is said; the ring is one of the stitches there are."""
    assert written(f"{join}, {care}.").lower() == "join in the round"


@pytest.mark.parametrize("lay", ["divide them evenly over", "distribute the sts equally on", "spread them out between", "arrange the stitches on"])
def test_stitches_lie_alike_on_each_needle_however_it_is_told(lay: str) -> None:
    """The number on each needle is not lost with the words around it."""
    assert written(f"CO 56 sts, {lay} 4 dpns (14 sts per needle) and join.") == "CO 56 sts. divide over 4 needles. 14 sts on each needle. Join in the round"


@pytest.mark.parametrize("line", ["CO 56 sts and a few more. Divide for the body.", "Join the shoulders.", "Join CC, twisting the yarns.", "Close the gap."])
def test_what_only_looks_like_a_ring_is_none(line: str) -> None:
    """A seam, a yarn and a gap are joined and closed too, and the round does not begin there."""
    assert "in the round" not in written(line)


def test_three_needles_by_their_order() -> None:
    """What lies on the first needle is laid there."""
    assert reads("CO 48 sts, 16 on the first needle, 16 on the second and 16 on the third.")
    assert not reads("CO 48 sts, 16 on the first needle, 16 on the third.")
