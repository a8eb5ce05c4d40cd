"""A clause that says only how, when or whither is told from one that works something. All sentences are invented."""

from __future__ import annotations

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.clauses.beside import kind_beside
from tests.tables import each_row

BESIDE = (
    ("care", "making sure the double decreases stack neatly"),
    ("care", "making sure that the centre st stays in the middle"),
    ("care", "taking great care that the stitches do not twist on the needle"),
    ("care", "when you are sure nothing is twisted"),
    ("care", "trying it on as you go"),
    ("tool", 'changing to 16" circ when there are enough sts'),
    ("tool", "changing to dpns when the circular gets too long"),
    ("tool", "switching to double-pointed needles as soon as the circumference gets too small"),
    ("tool", "moving to a longer circular when the sts no longer fit comfortably"),
    ("tail", "leaving an end about 12 ins."),
    ("tail", "leaving an end long enough to sew the seam"),
    ("tail", "leaving a tail of about 20 in for seaming"),
    ("tension", "tightening the gap with your thumb"),
    ("tension", "always pulling the yarn tight at the join"),
    ("tension", "giving the yarn a gentle tug after the first st"),
    ("hole", "so as not to leave a gap"),
    ("hole", "to avoid small holes at the turns"),
    ("yarns", "twisting the yarns at each colour change to avoid holes"),
    ("yarns", "carrying the yarn not in use loosely up the side"),
    ("yarns", "catching long floats every 4 sts"),
    ("yarns", "keeping the pattern colour dominant"),
    ("line", "keeping the CDD lined up"),
    ("line", "keeping the decreases in line"),
    ("line", "moving the markers up as you go"),
    ("turnings", "resolving the rest of the DSs"),
    ("turnings", "picking up the remaining wraps as you come to them"),
    ("turnings", "knitting the wraps together with the sts they wrap"),
    ("turnings", "picking up the loop at each turning place and purling it with the next st to avoid a hole"),
    ("turnings", "working both legs of each double stitch as one"),
    ("turnings", "knitting wraps together with wrapped sts"),
    ("line", "slipping markers as you meet them"),
    ("tail", "leaving a 20 cm (8 in) tail"),
    ("tail", "leaving a long tail to thread through the sts"),
    ("tail", "leaving a tail at least 3 times the circumference of the hem"),
    ("done", "which completes the heel"),
    ("done", "completing the yoke shaping"),
    ("done", "ready for the toe"),
    ("chart", "following the chart from bottom to top"),
    ("tool", "using the dpns as soon as the hat gets too small for the circular"),
    ("tool", "changing to set of dpns when sts no longer meet around the needle"),
    ("tail", "leaving plenty of wool for the seam"),
    ("tail", "leaving a yard for grafting"),
    ("tail", "without breaking the yarn"),
    ("tension", "with an easy hand"),
    ("tension", "not pulling the wool too tight"),
    ("purpose", "for a neat edge"),
    ("purpose", "to give a firm, crisp fold"),
    ("purpose", "to keep the edges from curling"),
    ("turnings", "dealing with the wraps as before"),
    ("done", "to complete the heel"),
    ("length", "adjusting length here if required"),
    ("sizes", "shorter in large sizes because of the wider yoke"),
)
WORKING = (
    "decreasing at both ends of every 4th row",
    "slipping the last st",
    "slipping the first stitch of each row",
    "making a buttonhole on row 4",
    "keeping edge sts in garter",
    "keeping the purl st as a line",
    "keeping the pattern lined up with the body",
    "working the first and last 3 sts in garter",
    "beginning with a purl row",
    "ending with a WS row",
    "increasing into every 4th st",
    "changing to larger needles",
    "changing to 4 mm dpns",
    "changing to smaller dpns when the circular gets too long",
    "changing to US 8 circ when there are enough sts",
    "changing to dpns when 40 sts remain and purling the next",
    "changing to B",
    "holding 2 strands together",
    "holding the yarn in front",
    "carrying the yarn in front of the next 3 sts",
    "pushing the sts to the other end of the needle",
    "pulling the yarn through the last st",
    "tightening every 4th st",
    "closing the gap with an extra st",
    "avoiding gaps by picking up 2 sts",
    "completing the round in purl",
    "completing the round",
    "making sure that you end with a WS row",
    "making sure the first st is slipped",
    "making sure there are 40 sts on each needle",
    "making sure that the pattern matches the body",
    "making sure the RS is facing",
    "which ends with a purl",
    "leaving an end st at each side",
    "leaving the last 10 sts unworked",
    "leaving 10 sts on the needle",
    "leaving a long end to pick up 10 sts with",
    "picking up 4 sts at the corner",
    "resolving one DS in each round",
    "picking up the wraps and knitting them as sts",
    "working every other wrap",
    "working the wraps as sts",
    "slipping the first st at each marker",
    "purling between markers",
    "working garter between the markers",
    "picking up a st in each gap",
    "picking up an extra st at the gap",
    "lifting a loop at each gap",
    "knitting each leg of the double st",
    "working the double st as two sts",
    "leaving the last st at each end",
    "leaving 10 sts at the end",
    "removing a marker every round",
    "removing all markers",
    "moving the marker 1 st to the left",
    "when it is time to divide",
    "when the cables should be crossed",
    "reading k for p",
    "reading every other row from left to right",
    "twisting the first 2 sts at each colour change",
    "twisting the yarns every 3 rows",
    "trying on the sleeve and knitting 4 more rounds",
    "ready to knit the next 10 rows",
    "to make a buttonhole",
    "longer in the largest size",
    "enjoying 10 rounds of garter",
    "for a longer body",
    "for a firm edge of 4 sts",
    "to give a firm edge in garter",
    "with a loose stitch at each end",
    "with an even number of sts",
    "to keep the first st in garter",
    "to keep the pattern straight",
    "to complete the heel flap in garter",
    "without breaking the rib",
    "without turning",
    "using dpns for the next 4 rounds",
    "using a larger needle",
    "change to 4 mm dpns when required",
    "leaving enough sts for the thumb",
    "adjusting the number of sts",
    "adjusting length by 2 rows",
)


@each_row(("kind", "clause"), BESIDE)
def test_a_clause_that_works_nothing_is_of_a_kind(kind: str, clause: str) -> None:
    """A row that is read would be refused for it."""
    assert kind_beside(clause) == kind


@each_row("clause", WORKING)
def test_a_clause_that_works_something_is_of_none(clause: str) -> None:
    """Said beside the row it would be forgotten on the needles."""
    assert kind_beside(clause) == ""


SAYING_MORE = (
    "every 4th row", "twice", "2 sts", "purl", "in garter", "for size M", "except the first", "on WS rows", "with B", "4 times",
    "until 40 sts rem", "slip", "on the next round", "held", "instead", "only", "in front", "alternate", "if size S",
)  # fmt: skip


@each_row(("kind", "clause"), BESIDE)
def test_with_a_word_that_says_more_a_clause_is_of_no_kind(kind: str, clause: str) -> None:
    """How often, where, in which yarn or size may stand anywhere among its words."""
    words = clause.rstrip(".").split()
    placed = [" ".join((*words[:at], more, *words[at:])) for more in SAYING_MORE for at in range(len(words) + 1)]
    assert [each for each in placed if kind_beside(each)] == [], kind


@each_row("clause", [clause for kind, clause in BESIDE if kind not in ("sizes", "length")])
def test_a_row_is_read_with_the_clause_behind_it(clause: str) -> None:
    """Whatever the row is; what is said of a length stands behind one."""
    assert reads(made_plain(f"Knit 10 rounds, {clause.rstrip('.')}."))
