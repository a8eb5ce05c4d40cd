"""How stitches are closed. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword
from tests.tables import each_row


def written(printed: str) -> str:
    """Return a line in the words it is read in at the second look."""
    return " ".join(reword(made_plain(printed), spoken=True).text.split()).strip(" ,.")


@each_row("behind", ["on right needle after last BO", "on the right-hand needle after the cast off", "after the bound-off sts", "on right needle since last buttonhole"])
@each_row("verb", ["rib", "k", "patt"])
def test_stitches_are_counted_from_the_last_bind_off(verb: str, behind: str) -> None:
    """The stitch that the bind-off left is the first of them."""
    words = f"{verb} 16"
    assert words in written(f"Next row: K4, *BO 2 sts, {verb} until there are 16 sts {behind}; rep from * twice more, k to end.")


def test_stitches_counted_from_nowhere_are_not_read() -> None:
    """Twenty stitches on the right needle may be those behind the bind-off, or all there are."""
    assert not reads("Next row: K20, bind off 12 sts, k until there are 20 sts on right needle.")


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Cut the yarn, thread it through, pull tight.", "Cut the yarn, thread it through remaining sts, pull tight"),
        ("Break off wool, thread through remaining 10 sts, draw up and fasten off.", "10 sts. Cut yarn and draw through remaining sts"),
        ("Graft the toe with Kitchener stitch.", "graft the sts together"),
        ("With RS together, join front and back shoulders using the 3-needle BO.", "bind off with a three-needle bind-off"),
        ("Cast off, knitting the knit sts and purling the purl sts.", "Cast off in pattern"),
    ],
)
def test_ends_are_told_in_many_words(printed: str, words: str) -> None:
    """The last stitches are closed as the page means it, and counted where it gives their number."""
    assert written(printed) == words


@pytest.mark.parametrize("line", ["Pull the yarn through.", "Thread it through the eyelets.", "Join shoulders."])
def test_what_only_looks_like_an_end_closes_nothing(line: str) -> None:
    """A tie through eyelets and a seam leave the stitches on the needle."""
    assert "through remaining" not in written(line)
