"""Other printed wordings. Source: the wording of patterns in print, US and UK; common practice."""

from __future__ import annotations

import re

import pytest

from stepper.project.instructions import Remark
from stepper.project.problems import Span
from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import Words, read_line, reads
from stepper.project.rewording.reword import put_words
from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.synonym import Synonym
from stepper.project.rewording.synonyms import SYNONYMS
from tests.tables import each_row


def place_of(offset: int, length: int) -> Span:
    """Count columns from 1 on one line."""
    return Span(line=1, column=offset + 1, length=length)


TOGETHER = 50
"""Rows of the table that a test looks at: handing out a test takes longer than looking at a row."""


def rows_from(first: int) -> tuple[Synonym, ...]:
    """Return the rows of the table that are looked at together."""
    return SYNONYMS[first : first + TOGETHER]


@pytest.mark.parametrize("first", range(0, len(SYNONYMS), TOGETHER))
def test_every_row_of_the_table_reads_its_example(first: int) -> None:
    """A row that no line needs, or that leaves its line unread, is taken out or mended."""
    words = Words(sizes=3, names={"MC", "A", "B", "chart", "fern"})
    read = {row.example: read_line(row.example, place_of, words).problems for row in rows_from(first)}
    assert {example: problems for example, problems in read.items() if problems} == {}


@pytest.mark.parametrize("first", range(0, len(SYNONYMS), TOGETHER))
def test_every_row_is_tried_on_the_lines_it_is_for(first: int) -> None:
    """A line that its pattern would change has one of the pieces it is looked for by."""
    assert [told for row in rows_from(first) if (told := not_tried(row, row.example))] == []


def not_tried(row: Synonym, line: str) -> str:
    """Say which row is not tried on the way of a line to a row, or that the row does not change it; else nothing."""
    made = as_printed(made_plain(line))
    for earlier in SYNONYMS:
        if earlier.pattern.search(made.text) is not None:
            low = made.text.lower()
            changed = put_words(made, earlier)
            if changed.text != made.text and not any(piece in low for piece in earlier.has):
                return f"{line}: the row of {earlier.example!r} is not tried on {made.text!r}"
            if changed.text != made.text and earlier is row:
                return ""
            made = changed
    return f"{line}: its row does not change it; by then it is {made.text!r}"


def test_a_row_that_is_not_tried_would_be_seen() -> None:
    """The watch can fail: a row does not change a line of another kind."""
    assert not_tried(SYNONYMS[0], SYNONYMS[0].example) == ""
    assert "does not change it" in not_tried(SYNONYMS[0], "Knit all sts.")


@pytest.mark.parametrize("end", ["around for 2", "across and", "to end and"])
def test_a_long_row_of_single_stitches_is_looked_through_at_once(end: str) -> None:
    """A row that can be parted in two ways at each stitch was tried in all of them: forty stitches took for ever."""
    line = f"Row 1: {'p1 ' * 60}{end}"
    assert all(isinstance(synonym.pattern.sub("", line), str) for synonym in SYNONYMS)


@each_row(
    ("printed", "plain"),
    [
        ("Next row: K1, k2tog, k to end (20 sts.)", "Next row: K1, k2tog, k to end. 20 sts."),
        ("Work 10 rows in st.st., beginning with a k row.", "Next row (RS): Work 10 rows in st st."),
        ("Work 6 rows in g-st.", "Work 6 rows in garter stitch."),
        ("K10, [yo, k2tog] 3x, k to end.", "K10, (yo, k2tog) 3 times, k to end."),
        ("Rnd 2: K1 sl marker, k to end.", "Rnd 2: K1, sm, k to end."),
        ("Rep these 2 rows a further 4 times.", "Rep last 2 rows 4 times more."),
        ("Place first 8 sts on a holder.", "Hold 8."),
        ("Work as for the back up to the armholes.", "Work as for back to armholes."),
        ("Work to match left front, reversing all shaping.", "Work as for left front, reversing shaping."),
        ("Next row: K20, turn, leave rem sts on a spare needle.", "Next row: K20, turn, leave rem sts on a holder."),
        ("Row 1: *k2 p2* across", "Row 1: *K2, p2; rep from * to end."),
        ("Inc one st at each end of next row.", "Inc 1 st at each end of next row."),
        ("K to marker, slip sts to next marker to waste yarn, k to end.", "K to marker, slip sts to next marker on hold, k to end."),
        ("Row 5: Ssk, k to end-1 neck st dec'd.", "Row 5: Ssk, k to end. 1 st dec'd."),
        ("Switch to larger needle. Knit 2 rounds.", "Change to larger needles. Knit 2 rounds."),
        ("Change to larger needles and st st.", "Change to larger needles. Go on in st st."),
        ("Knit 3 rows for border.", "Knit 3 rows."),
        ("Change to dpn.", "Change to dpns."),
        ("Increase by 8 evenly across row.", "Increase 8 sts evenly across row."),
        ("Row 1 and 3: Knit.", "Rows 1 and 3: Knit."),
        ("Cast on 44 sts in CC.", "With CC, cast on 44 sts."),
        ("Repeat round 1 only until 12 sts remain.", "Rep round 1 until 12 sts rem."),
        ("Work 10 rnds of 2x2 ribbing (k2, p2).", "Work 10 rnds in k2, p2 rib."),
        ("Now work 6 rows in st st.", "Work 6 rows in st st."),
        ("Knit 3 rows, increase 8 sts at even intervals across last row.", "Knit 3 rows, increasing 8 sts evenly across last row."),
        ("At armhole edge bind off 2 sts.", "Bind off 2 sts at armhole edge."),
        ("Using 4 mm needles and yarn A, work 6 rows in st st.", "Change to 4 mm needles. With A, work 6 rows in st st."),
        ("K2, skpo, k to end.", "K2, skp, k to end."),
        ("Then work 6 rows in st st.", "Work 6 rows in st st."),
        ("K4, *k2tog, yo; rep from * to within last 4 sts, k4.", "K4, *k2tog, yo; rep from * to last 4 sts, k4."),
        ("Leaving a long tail, cast on 80 sts.", "Cast on 80 sts."),
        ("Bind off 5 sts at beg of next 2 rows, then bind off rem 10 sts.", "Bind off 5 sts at beg of next 2 rows. Bind off rem 10 sts."),
        ("Using backward loop method, cast on 8 sts.", "Cast on 8 sts."),
        ("Knit 1 round, inc 10 sts evenly. 110 sts.", "Knit 1 round, increasing 10 sts evenly. 110 sts."),
        ("Knit 1 round, dec 10 sts evenly.", "Knit 1 round, decreasing 10 sts evenly."),
        ("Work in st st throughout until piece measures 12 cm.", "Work in st st until piece measures 12 cm."),
        ("Knit in garter st for 12 rows.", "Work in garter st for 12 rows."),
        ("With right side facing you pick up and knit 44 sts.", "With RS facing, pick up and knit 44 sts."),
        (
            "Pick up and knit 20 sts down left front neck, 14 sts from the holder and 20 sts up right front neck.",
            "Pick up and knit 20 sts down left front neck, 14 sts from holder, 20 sts up right front neck.",
        ),
        (
            "Work even until sleeve measures 24(26,29)cm/9½(10¼,11½)in.",
            "Work even until sleeve measures 24 (26, 29) cm [9½ (10¼, 11½) in].",
        ),
        ("Darn in the yarn tails.", "Darn in the ends."),
        ("K10, pm (place a marker), k to end.", "K10, pm, k to end."),
        ("Row 1 Knit.", "Row 1: Knit."),
        ("WS row Purl.", "WS row: Purl."),
        ("Dec rnd *K2tog, k3; rep from * to end.", "Dec rnd: *K2tog, k3; rep from * to end."),
        ("On next round, k12, k2tog, k to end.", "Next round: K12, k2tog, k to end."),
        ("K1, k2tog, work across 12 sts, k2tog, k1.", "K1, k2tog, work 12 sts in pattern, k2tog, k1."),
        ("Knit, increasing 7 sts evenly so you have 107 sts.", "Knit, increasing 7 sts evenly. 107 sts."),
        ("Place 20 sleeve sts on dpns and join in the round.", "Return 20 sleeve sts to needles. Join in the round."),
        ("Dec 10 sts evenly around.", "Decrease 10 sts evenly around."),
        ("Dec 1 st at each end of next row, then on foll 3 alt rows.", "Dec 1 st at each end of next row, then every 2nd row 3 times."),
        ("Dec 1 st at each end of next row, then on foll alt rows until 32 sts rem.", "Dec 1 st at each end of next row, then every 2nd row until 32 sts rem."),
        ("Dec 1 st at each end of next row, then on foll alt row.", "Dec 1 st at each end of next row, then every 2nd row 1 times."),
        ("Purl to last 5 band sts, knit to end.", "Purl to last 5 sts, knit to end."),
        ("CO 20 sts and join into a ring.", "CO 20 sts. Join in the round."),
        ("Work 10 rows in st st, beginning with a knit row.", "Next row (RS): Work 10 rows in st st."),
        ("Work 9 rows in st st, beginning with a purl row.", "Next row (WS): Work 9 rows in st st."),
        ("Cont in st st, starting with a p row, and work 5 rows.", "Next row (WS): Work 5 rows in st st."),
    ],
)
def test_a_wording_that_needs_no_row_of_its_own_reads_as_the_plain_one(printed: str, plain: str) -> None:
    """What rows for other wordings, or the grammar, read together: each of these once had a row besides."""
    assert worked(printed) == worked(plain)


def worked(line: str) -> list[str]:
    """Return what a line has worked, without where it is printed and without what is only said."""
    words = Words(sizes=3, names={"MC", "CC", "A", "B"})
    read = read_line(line, place_of, words).line
    assert read is not None, line
    said = [sentence for sentence in read.sentences if not isinstance(sentence, Remark)]
    told = [read.label, read.numbers, read.side, read.times, said]
    return [re.sub(r"Span\([^)]*\)|(?:text|printed|note)='[^']*'", "", repr(part)) for part in told]


@each_row(
    "printed",
    [
        "(Inc 1 st in next st) twice, k to end.",
        "*K3, k2tog; rep from * 4 times in all, k to end.",
        "*With A k1, with B k1; rep from * to end.",
        "*With A k1, with B k2; rep from * to end.",
        "10 rows st st.",
        "4 mm needles: K 14 rounds.",
        "Beg with p row, work 6 rows in st st.",
        "Bind off 5 sts at beg of next 4 rows and 6 sts at beg of following 2 rows.",
        "Break yarn and run through rem sts; draw up and secure.",
        "Break yarn, graft remaining 5 sts together.",
        "CO 20 sts. Pick up and knit 20 sts, pm, and join.",
        "Change back to larger needles.",
        "Change to 3 mm needles, knit 3 ridges.",
        "Change to larger needles; work in st st for 5 cm.",
        "Change to st st and work until leg measures 16 cm.",
        "Complete second side to match first.",
        "Cont on the 41 sts obtained until piece measures 9 cm.",
        "Continue on larger needles and work 6 rows in garter st.",
        "Continue repeating rows 1-4 until piece measures 20 cm.",
        "Continuing in st st, dec 1 st at each end of next row.",
        "Dec 1 st at each end of every RS row 4 times, 62 sts rem.",
        "Dec 1 st at each end of every RS row until 31 sts rem, then of every row until 17 sts rem.",
        "Dec 1 st at each end of next 3 rows, then on the 3 foll WS rows.",
        "Dec 1 st at each end of next row and every 2 cm thereafter until 30 sts remain.",
        "Dec 1 st at neck edge in the next and every following 3rd row until 36 sts remain.",
        "Divide over three needles: 16 sts on N1, 8 sts on N2 and N3 each.",
        "Divide over three needles: 16 sts on N1, 8 sts on each of N2 and N3.",
        "Don't worry if the edge curls.",
        "Finish it like the left side.",
        "Finish with 6 rows of k2, p2 rib.",
        "Inc rnd: *K to 1 st before m, kfb, sm, kfb; rep from * around — 8 sts inc.",
        "K 40 held left sleeve sts.",
        "K- (2, 4), p2.",
        "K.1, p.1 across row.",
        "Keeping first and last 4 sts in garter stitch, work in pattern for 20 rows.",
        "Knit 2 rounds in MC, 2 rounds in CC, and then 2 rounds in MC.",
        "Knit 3 rnds or to desired length of cuff.",
        "Knit until hand measures 16 cm from end of cuff, or until the tip of the little finger is covered.",
        "Make an increase at both sides of every 6th row until there are 60 sts.",
        "Next rnd, k1, remove marker, k to end.",
        "Next rnd, pattern 18, k2, pm, k to end.",
        "Next round: K3, inc 1 in next st, k to end.",
        "Next: Purl.",
        "PU and K 30 sts.",
        "Patt 1 row.",
        "Pick up and knit 30 sts across back neck, 16 sts down left neck, 20 held front sts and 16 sts up right neck.",
        "Pick up and knit 4 sts from the remaining cast-on edge.",
        "Pick up and knit 4 sts to center of underarm.",
        "Pick up and knit 6 sts down left front, 8 sts from front holder and k 10 sts from back holder.",
        "Place a marker at each end of last row to mark armholes.",
        "Put the sts of the right front on hold.",
        "R3-4: rep R1 and R2.",
        "Rep last 2 rows 3 times further.",
        "Rep last 2 rows until the cuff is 5 cm deep.",
        "Rnd 1: *K2, k2tog*, repeat. 30 sts.",
        "Rnd 2: K1, m1 k to end.",
        "Row 1 (RS): Knit to last 10 sts, skpo, turn the piece.",
        "Row 11: K3, *yo, sk2p, yo, k1*, repeat between stars to last 3 sts, k3",
        "Row 1: K1 p1, across.",
        "Row 2: *K1, k2tog* x 6.",
        "Row 2: Sl 1 k11 p8.",
        "Row 3 (RS): Make DS, k to prev DS (slipping Ms), k DS, k4, turn.",
        "Row 3: *k1, p1, * repeat between *s.",
        "Row 5: K1, k2tog, k to end -> 28 sts.",
        "Row 5: K5 in A, with B k5.",
        "Row 5: With A k5, with B k5.",
        "Row 7: P to last stitch K1.",
        "The edges will curl, but blocking will flatten them.",
        "The first few rows may feel a bit fiddly.",
        "Then knit 5 rows of garter stitch.",
        "Thread the next 12 sts on a strand of wool.",
        "Using CC, CO 60 sts.",
        "Using a tapestry needle, weave in ends.",
        "With RS facing and using 4 mm needles and yarn A, pick up and knit 30 sts.",
        "With RS facing, pick up and knit 20 sts down left front neck, 10 across back neck, and 20 up right front neck.",
        "With smaller needles and RS facing, pick up and knit 44 sts evenly around neck.",
        "Work 10 further rows in st st.",
        "Work 3 inches.",
        "Work 4 rounds K2/P2 rib.",
        "Work another 5 cm without shaping.",
        "Work as for back until 30 sts rem in raglan shaping.",
        "Work dec round every 8th round a total of 6 times.",
        "Work even for 4 cm, ending on the right side.",
        "Work even until armhole matches that of the back.",
        "Work even until body measures 8 cm (try on as you go).",
        "Work even until the leg is 18 cm long or as long as you like.",
        "Work even until the yoke measures 20 cm, or desired depth.",
        "Work flat in 1x1 rib for 8 rows, ending with a WS row.",
        "Work in rows now.",
        "Work in same manner as back until piece measures 9 cm.",
        "Work rnds 1 and 2 a total of 8 times, then work rnd 1 only 4 times.",
        "Work stockinette stitch for 5 cm.",
        "Work straight until front measures 30 cm, 11¾ in, from beg.",
        "Work the 2 rounds of chart fern.",
        "Work the other sleeve the same way.",
        "Work to correspond with left front, reversing shaping.",
        "Rep rows 1 and 2 two (three, four) more times.",
        "Rep rows 1 and 2 eleven (twelve, twenty) more times.",
        "Knit fifteen rows.",
        "Break wool and with the yarn needle, draw end through rem sts.",
        "*K2, k2tog; rep from * to end = 8 sts dec'd.",
        "Rnd. 1: K2, p2, k to end.",
        "Row1: K2, p2, k to end.",
        "Next row - With MC, knit.",
        "Row 1 = K2, p2, k to end.",
        "Knit until piece measures 5 centimetres.",
        "There will be 58 sts.",
        "Row 5: Knit. (= 88 (92, 96) sts)",
        "Work two further rows.",
        "Work an additional 4 rows in st st.",
        "Work 6 rows in s.s.",
        "Continue as set until Rnd 4 of chart has been worked.",
        "Rejoin yarn at beginning of underarm sts.",
        "Rnds 3-4: In CC, knit.",
        "Keep 4 sts at each end in garter st and work in st st until piece measures 20 cm.",
        "50 sts for each sleeve, 70 sts for front, 70 sts for back.",
        "K10, CO 4 sts (underarm), k to end.",
        "Change to smaller needles, No. 10.",
        "Work 3 cm even in st st.",
        "Work across instep sts. Pick up and knit 16 sts along the edge of the flap.",
        "Knit all 20 rnds of Chart A.",
        "Rep 1st and 2nd rows 3 times.",
    ],
)
def test_a_line_whose_row_was_taken_out_is_read_by_others(printed: str) -> None:
    """What a row read once is read by the other rows, or phrase by phrase, and is taken out for that alone."""
    assert reads(printed)
