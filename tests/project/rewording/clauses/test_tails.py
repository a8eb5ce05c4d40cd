"""What only tells behind an order is taken off it and said; what changes the order stays. All sentences are invented."""

from __future__ import annotations

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.clauses.tails import take_tails_off
from stepper.project.rewording.reworded import as_printed
from tests.tables import each_row

TAILED = (
    ("Work even until piece measures 10 cm", ", ending with a complete round"),
    ("Work even until foot measures 20 cm", ", allowing 5 cm for the toe"),
    ("Rep rnds 1 and 2 until 60 (64) sts rem", " [that is 10 (12) dec rounds]"),
    ("Rep rnd 2 until 40 sts rem", " -- that's 9 decs counting the set-up"),
    ("Knit 5 rows", ", being a ridge on the right side"),
    ("K2, *yo, k2tog; rep from * to end", ", which forms the eyelets for the ribbon"),
    ("BO in rib", ", loosely but not sloppily"),
    ("Knit 10 rounds", ", for it pulls in later"),
    ("Work rounds 1-15 of chart", " and rep the 12 sts 10 (11) times around"),
    ("Work until piece measures 20 cm", ", adjusting length here if required"),
    ("Purl 1 round", " for a crisp fold"),
    ("Cut the yarn", " and leave a long tail"),
    ("Work even until piece is 30 cm", ", this is your moment to lengthen"),
    ("Knit 18", ", these 18 sts being the back of the hand"),
    ("K5, p1, k6", ", these 12 (14) sts being the palm"),
    ("Work until armhole measures 12 cm", ", all armhole shaping being complete"),
    ("K2tog all the way around", ", and you're done"),
    ("Work until piece measures 30 cm", ", remembering that the rib will add another 5 cm"),
    ("Increase every 4th round until there are 96 (100) sts", ", that is 12 (14) increase rounds"),
    ("Knit 10 rounds", "; this is the boring bit"),
    ("Bind off all sts loosely", ", using a needle two sizes larger if need be"),
    ("Bind off all sts knitwise", ", keeping an even tension so that top and bottom edges match"),
    ("Cast off in rib", ", taking care not to pull too tight"),
    ("BO knitwise", ", firm but not tight"),
    ("Bind off", " firm but not tight"),
    ("Knit 1 round", ", and that is the brim"),
    ("Work 6 rounds in k1, p1 rib", ", keeping an even tension"),
    ("Work 6 rounds in k1, p1 rib", " (or so)"),
    ("Work k1, p1 rib for 3 cm", ", not too tightly"),
    ("Knit to end", ", keeping the tension even at the changes of colour"),
    ("Purl 1 round", ", which is what I do"),
    ("Purl 1 round", ", which makes the fold line"),
    ("Cast on 40 sts", ", which is the back neck"),
    ("Knit 6 rounds", " so that the edge rolls nicely"),
    ("Knit 2 rounds", ", because it looks better"),
)
UNTAILED = (
    "When there are too few sts for the circular, change to dpns.",
    "Knit 10 rounds, adjusting length here if required.",
    "Knit 10 rounds, ending with a complete round.",
    "Work even until piece measures 10 cm, ending with a complete repeat.",
    "Work even until foot measures 20 cm, allowing 5 sts for the toe.",
    "Work even until foot measures 20 cm, allowing for the toe.",
    "Rep rnd 2 until 40 sts rem, that is 9 dec rounds and 3 plain.",
    "Knit 5 rows, being purl on the right side.",
    "Joining in B and C as required, knit 10 rounds.",
    "Joining in B on row 4, work rows 1-15 of chart.",
    "To avoid a hole, pick up 2 sts at the corner.",
    "Slipping the first st, knit 10 rows.",
    "Work rounds 1-15 of chart and rep the 12 sts around.",
    "Knit 10 rounds, for a total of 20 rounds.",
    "Knit 18, these 18 sts being held for the back.",
    "Knit 10 rounds, the seam sts being purled.",
    "Increase every 4th round, that is 12 increase rounds.",
    "Knit 10 rounds; the last is purled.",
    "Knit 10 rounds; the neck is shaped at the same time.",
    "Knit 6 rounds, which are purled in size S.",
    "Knit 6 rounds, which are worked on smaller needles.",
    "Knit 4 rounds, keeping the first st in garter.",
    "Knit 4 rounds, keeping continuity of pattern.",
    "Knit 4 rounds so that you end at the side marker.",
    "Knit 4 rounds, so that the piece is as long as the front.",
    "Place the sts so that the BOR is at the back.",
    "Work 4 rounds, so that there are 40 sts.",
    "Knit to end, taking care to slip the last st.",
    "Knit 4 rounds, but every other st is slipped.",
    "Purl 1 round, and that is worked twice.",
    "Work the stitches as many times as they will fit.",
    "Since the garter edge is firm, no border is needed.",
    "Bind off using a needle two sizes larger for the last 10 sts.",
    "Knit 4 rounds, because the next 4 are purled.",
    "Firm but not tight.",
)


@each_row(("order", "tail"), TAILED)
def test_a_tail_is_taken_off_its_order_and_said(order: str, tail: str) -> None:
    """The order is read as if it stood alone."""
    made = take_tails_off(as_printed(f"{order}{tail}."))
    assert made.text == f"{order}."
    assert made.kept
    assert reads(f"{order}{tail}.")


LED = (
    ("Being careful not to pull too tight, ", "bind off all sts."),
    ("Keeping the yarn loose, ", "knit 1 round."),
    ("Leaving a long end for sewing up, ", "cast on 80 sts."),
    ("Working loosely, ", "bind off all sts."),
    ("Joining in B and C as required, ", "work rounds 1-15 of chart."),
)


@each_row(("lead", "order"), LED)
def test_a_clause_that_leads_up_to_an_order_is_taken_off_it(lead: str, order: str) -> None:
    """It stands in front as often as behind."""
    made = take_tails_off(as_printed(f"{lead}{order}"))
    assert (made.text, made.kept) == (order, (lead.strip(" ,"),))


@each_row("line", UNTAILED)
def test_what_changes_an_order_is_no_tail(line: str) -> None:
    """It says how often, how far, where or with what, or stands alone."""
    assert take_tails_off(as_printed(made_plain(line))).text == line


def test_the_letters_of_a_line_keep_their_places() -> None:
    """A problem behind a tail is shown where it is printed."""
    line = "Knit 1 round, not too tightly. 40 sts."
    made = take_tails_off(as_printed(line))
    assert made.text == "Knit 1 round. 40 sts."
    assert [line[made.places[at]] for at in range(len(made.text))] == list(made.text)
