"""No word of a line that is read is passed over: each changes the reading, is said, or is known to mean nothing.

Checked on the reading alone, for every line of the reference, the samples, the printed pages and the table of other
wordings, and for what becomes of them when a word is taken out or put in.
"""

from __future__ import annotations

import re
from collections.abc import Collection
from dataclasses import fields, is_dataclass
from functools import cache, lru_cache
from pathlib import Path

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from stepper.project.instructions import Assumed, Line, Remark
from stepper.project.problems import Span
from stepper.project.reader import read_project
from stepper.project.reading.parsing import NOTE, made_plain, stop_of
from stepper.project.reading.wording import EXAMPLES, Words, read_line
from stepper.project.rewording.reference import other_wordings
from stepper.project.stitchwork import PrintedLength
from tests.project.wording_patterns import patterns
from tests.tables import each_row

HERE = Path(__file__).parent
NAMES = frozenset({"trail", "ridge", "cairn", "peak", "lace", "fern", "MC", "A", "B"})

SILENT = {
    # Articles, prepositions and conjunctions: the words around them say what is meant.
    "a", "the", "of", "in", "at", "on", "for", "from", "with", "using", "and", "then", "while",
    # What a number counts, where no other thing could be.
    "st", "sts", "stitch", "row", "edge", "yarn",
    # "Work even" and "follow" go on; "all", "across", "around" and "remaining" take what is there.
    "work", "even", "follow", "all", "across", "around", "remaining", "rem", "end", "entire",
    # "Make second sleeve same as first", "make 3 alike": they are made as the first.
    # "Next 8 sts", "back on the needles", "the held stitches", "graft together": there are no others.
    "make", "same", "alike", "given",
    "next", "first", "back", "held", "together",
    # "In this pattern": the one that is worked. "Knit all the way": to the end, as "knit" alone.
    "this", "way",
    # "Less than desired foot length" is less than the foot length that the file gives.
    "desired",
    # "On to a holder", "12 sts on each needle", stitches divided "evenly" where no other way is said.
    "to", "needle", "evenly",
    # "Larger" and "4 mm" are needles'.
    "needles",
    # "Right side facing" in the head of a row is its side.
    "facing",
    # The beginning of the round is the only marker there is where it begins.
    "bor",
    # "Up to the marker", "8 cm long", "4 (3, 2)th": the same length, place and number without them.
    "up", "long", "th",
    # "Until heel flap measures": the flap is the heel that is being worked.
    "flap",
    # "For another 3 cm", "3 cm more": a length that is worked, and not measured, comes on top as it is.
    "another", "more",
    # "Hereafter work straight", "in st st throughout until": it goes on anyway. "Starting at armhole edge".
    "hereafter", "throughout",
    # "K rnd", "k remainder": what is knitted without a number is knitted to the end. "Knit plain": as "knit" alone.
    "rnd", "remainder", "plain",
    # "Evenly distributed", "so that 22 sts remain", "until it is 9 cm deep", "armhole depth": as it is without them.
    # "Divide them over 4 needles": the stitches.
    "distributed", "that", "deep", "depth", "them",
    # "Continue working on these 20 sts": they are gone on with.
    "working",
    # "The marker thread": a thread that marks is a marker.
    "thread",
    # "32 sts left", "6 sts remain unworked", "you should have": what is on the needles.
    "left", "unworked", "should",
    # "Next and every foll 6th row": every sixth counts from the one before, said or not.
    "foll",
    # "The same length as the back to armhole": nothing else is measured there.
    "length",
    # "Size 8 or 4 mm", "color A", "7 in tall", "increase by 8": the number or letter says it.
    "size", "color", "tall", "by",
    # "Your needles", "facing you", "work in rows now": said to her, and nothing else is meant without them.
    "your", "now",
    # "You will have 16 heel sts", "the 41 sts obtained", "needle number 1", "any desired length": none is another.
    "will", "heel", "number", "place", "any",
    # "K 5 rounds plain stockinette" are knitted, an armhole begins with its shaping.
    "stockinette", "shaping",
    # "Very loosely" is loosely, "straight needles" work rows or rounds as said, a "rib pattern" is the rib just set.
    "straight", "pattern", "rib",
    # "Without further increase", "rows 1 and 2 alternately", "to within the last 4", "to last 2 sts before marker".
    "further", "alternately", "within", "last",
    # "Over 16 left front sts only": the count is checked, and no other stitches are on the needle.
    "front",
    # "FINISHING Weave in ends": what it heads says so. "All following rows", "previously wrapped", "every 4th row thereafter".
    "finishing", "following", "previously", "thereafter", "remain",
    # "Evenly spaced", "arranging 16 on each", "a second holder", "the larger circular", "1st patt row", a star
    # closed by "repeat to last 4 sts", "rep round 1 only until", "rep rows 1 and 2 10 times more": the words beside them
    # say what is done.
    "spaced", "arranging", "second", "circular", "patt", "thus", "repeat", "only", "these",
    # "Inc 1 in next st", "1x1 twisted rib": there is no other.
    "1", "1stitch", "1x1",
    # "Repeat between *s" is between the two stars, as "between *".
    "s",
    # "Exactly as the first", "the first one", "40 cm long measured from the underarm": as without them.
    "exactly", "one", "measured", "just", "live",
    # "Until you've got 20 cm", "12 new ones over the gap", "your own thumb", "as long as you want it", "always with one stitch
    # less", "being careful not to twist": talk around what is said.
    "got", "new", "it",     # "Proceed as for the back", "until the sleeve seam measures 40 cm": it is worked, and the sleeve is as long.
    "proceed", "seam",
    # "The marker threads", "the back piece", "in the piece": a thread that marks is a marker, the back is a piece.
    "threads", "piece",
    # The usual way of slipping is purlwise, and s2kp slips knitwise.
    "purlwise", "knitwise",
    # "In st st until work measures 4 cm": a sentence without a verb goes on in what it names, as "continue" does.
    # "Continue decreasing on every 6th row", "cont to dec 1 st at neck edge": the row shown is worked again.
    "continue", "cont",
    # "On each needle tip", "above the thumb gap": a needle of two tips, the gap that the thumb's stitches left.
    # "On waste yarn", "on a safety pin", "with a removable marker": whatever holds or marks them does.
    "waste", "safety",
    "tip", "thumb",
}  # fmt: skip
"""Words that may be left out of a line without changing what is knitted."""

SILENT_THERE = {
    # One stitch at each end, said or not.
    "Inc once at each end of the 5th row and every foll 6th row 3 times.": ("once",),
    # "All WS" are rows.
    "Row 2 and all WS rows: Purl.": ("rows",),
    "Row 2 and all WS rows of the section: Purl.": ("rows",),
    # A half between 3 and 9 is in no table of numbers.
    "Cast on 40 sts with MC on a 3.5 mm circular needle, 80 cm.": ("mm",),
    # The stitches that have wraps are the wrapped ones.
    "Knit 1 rnd, picking up and knitting wraps together with wrapped sts.": ("wrapped",),
    # "20 of body" behind others that are knitted is knitted as they are.
    "Joining rnd: with 80 cm needle and starting at left back, k 20 of left sleeve, pm, k 20 of body.": ("k",),
    "Cast off 6 sts at beg of the 2 rows after that.": ("rows",),
    "Bind off 5 sts at beg of next 2 rows, and 3 sts at beg of the 2 rows after that.": ("rows",),
    "Work even until front armholes match back.": ("armholes",),
    "Rejoin yarn to inner end of rem sts, k to end.": ("inner",),
    "Work even until armhole is same length as on back, ending with a WS row.": ("armhole", "is",),
    "Cont straight until armhole matches back.": ("armhole",),
    "Finish the second side the same as the first.": ("finish",),
    "NOTE - Slip all markers as you come to them.": ("note",),
    "Work even until left sleeve is the same length as right sleeve to underarm.": ("is",),
    "Join shoulders with a three-needle bind-off.": ("join",),
    "K20, turn, leaving the remaining sts to wait.": ("leaving",),
    "Work rib round and round (knit 1, purl 1) until piece measures 9 cm.": ("round", "round"),
    # said again, or of no weight where the other words say it
    "4th round: Quite plain.": ("quite",),
    "Rep rnds 1 and 2 until 32 sts remain, then rep rnd 1 every round until 16 sts remain.": ("rep",),
    "Rep rows 1-8 4 times more, then rep rows 1-4 again.": ("rep",),
    "Rep these rows once more.": ("rows",),
    "Rnd 1: Needle 1: k1, m1, k to last st, m1, k1. Same again on needle 2.": ("again",),
    "The second sleeve is worked just like the first.": ("is", "worked"),
    # a count, led in by two words of which one suffices
    "Total sts: 58 (60, 62).": ("total",),
    # how far a row goes, in words of which one suffices
    "Row 1 (RS): Knit until 10 stitches remain on the needle, skpo, turn.": ("stitches",),
    "Knit to the last six stitches, purl to end.": ("stitches",),
    "*Knit 4, knit 2 together*, repeat *-* all the way round.": ("round",),
    "Row 3: Knit until there's 1 stitch left before the marker, kfb, slip marker, knit to end.": ("there's",),
    "Needle 1: K1, m1r, knit until 1 st is left on the needle, m1l, k1.": ("is",),
    "K to last 3 stitches of the round, ssk, k1.": ("stitches",),
    # A "k" that ends a row knits what is left of it.
    "Buttonhole row (RS): K3, yo, k2tog, k rest.": ("rest",),
    "Knit until the last 2 stitches, kfb, k1.": ("stitches",),
    "Row 4: Knit, casting on 2 sts over each buttonhole. 20 sts.": ("each",),
    "Next row: Work in pattern, casting on 2 sts over each buttonhole. 20 sts.": ("each",),
    "Rep last 3 rnds until there are 13 sts between gusset markers, 44 sts total.": ("total",),
    "Knit 1 round over all stitches.": ("over",),
    "Work to underarm 7 inches.": ("underarm",),
    "Knit, casting on 2 sts over those bound off on previous row.": ("those",),
    "Keep repeating rows 1 and 2 until there are 60 sts.": ("keep", "repeating"),
    "Then knit 1x1 ribbing for 2 inches.": ("knit",),
    "Knit as for the first sleeve as far as the cap shaping.": ("knit",),
    "Inc 1 st before and after marker on every 8th round 6 times.": ("round",),
    "Rep dec rnd every 3rd rnd 4 times more, until only 56 sts remain.": ("until",),
    "Knit 1 round, at the same time as 16 sts are increased evenly.": ("as",),
    "Knit 1 round. 17 sts between markers and 64 sts in total.": ("total",),
    "Knit straight up in stockinette stitch for 5 cm.": ("knit",),
    "Knit straight in stockinette stitch for 5 cm.": ("knit",),
    "Continue in this way, turning 4 sts further out each time, 3 more times.": ("turning", "out"),
    "Those 2 rows are the whole pattern.": ("whole",),
    "Inc 1 st at neck edge of next and every subsequent 6th row to 50 sts.": ("subsequent",),
    "K8, join a second ball, bind off 4 sts, k8. Work both shoulders at the same time, each with its own ball.": ("each", "its"),
    "K8, join a second ball, bind off 4 sts, k8. Both sides are now worked at once, each from its own ball.": ("its",),
    "With separate balls of yarn for each side, decrease 1 st at each neck edge on every RS row 4 times.": ("each",),
    "K8, pm, k8, pm, k8. K to marker, put the thumb stitches on hold and cast on 2 sts in the gap.": ("stitches",),
    "K8, pm, k8, pm, k20, pm, k8, pm. K to marker, remove marker, hold 8 sts, remove marker, knit the back, put the other sleeve on waste yarn the same way, cast on 4 sts, k to end.": ("other",),
    "K8, pm, k8, pm, k20, pm, k8, pm. K to marker, hold 8 sts, knit the back, put the other sleeve on waste yarn the same way, cast on 4 sts, k to end.": ("other",),
    "Cast on 60 sts. Work flat. Work on the 20 sts of the left front only; the others can stay on the needle.": ("can",),
    "Cast on 60 sts. Work flat. K20, bind off 20 sts, k20. Continue on the last 20 sts only; the others can stay on the needle.": ("can",),
    "Let the front rest on a thread while you work the back.": ("rest",),
    "K8, pm, k8. K to marker, put the other sleeve on waste yarn the same way, cast on 4 sts.": ("other",),
    "Next row: BO 8 sts, work until there are 20 sts on the right-hand needle, BO 8 sts, work to end.": ("right-hand",),
    "Next row: Bind off 8 sts, k until there are 16 sts on needle, bind off rem sts. Place center sts on holder for neck.": ("center",),
    "Graft underarms.": ("underarms",),
    "With right sides together, bind off both sets of 20 sts together (3-needle bind-off).": ("20",),
    "Next row: Work in pattern, casting on 2 sts over each pair of bound-off sts.": ("each", "pair"),
    "The right front is a mirror image of the left.": ("is",),
    "The left front is a mirror image of the right.": ("is",),
    "Row 3: K1, k2tog, k to last 3 sts, ssk, k1. That's 2 stitches fewer.": ("that's",),
    "Work dec round every 16th (12th, 12th, 9th, 9th, 8th) round 5 (8, 8, 10, 10, 12) times. 44 (44, 48, 48, 52, 52) sts.": ("round",),
    # "Work dec every 8th round" is the round that decreases; "less before the decrease" decreases; "carry on that" is no other manner.
    "Work dec round every 8th round 6 times.": ("round",),
    "Work dec round every 8th round 2 times, then every 6 rounds 3 times. 70 (74, 80) sts.": ("round",),
    "Work dec round on next and every 4th round 3 times. 48 (52, 58) sts.": ("round",),
    "Rep dec round every 4th round 3 times more. 52 sts.": ("round",),
    "Rep dec round every 4th round 3 times, then in every round twice.": ("round",),
    "Knit 1 round where you decrease 4 sts evenly.": ("you",),
    "Decrease 1 st at each end of every other row until 14 sts are left.": ("are",),
    # The other side is matched whatever it is called; "then", "again", "just" and "B" say the same by themselves.
    "Inc 1 st at each end of next row and then every foll 6th row 8 times more.": ("every",),
    "Join in B.": ("join",),
    "Rep the last 2 rows once again.": ("once",),
    "Work 4 rows in st st. End having just worked a WS row.": ("having",),
    "Work other side to correspond.": ("side",),
    "Work other side to match.": ("side",),
    "Work the left front the same as the right, but mirrored.": ("but",),
    "Work to correspond with first side, reversing shaping.": ("side",),
    # What stitches hung on, where the yarn is joined, what a marker is called, for which part they lie on a needle.
    "Change to the larger No. 10 needles.": ("larger",),
    "Break yarn and leave these 3 sets of sts on holders.": ("3",),
    "CO 40 sts. Divide over 2 needles. Move one stitch from N2 to N1, so that there are 20 sts on each needle.": ("divide",),
    "CO 40 sts. Divide over 2 needles. Slip the first st of N2 (a purl st) to the end of N1.": ("divide",),
    "CO 40 sts. Divide over 2 needles. Slip last st of N1 to N2. N1: 19 sts. N2: 21 sts.": ("divide",),
    "With 12 sts on each needle, graft the toe.": ("toe",),
    "Swap over to the 4 mm dpns.": ("over",),
    "Next rnd: K20, place gusset m, m1l, place m, k to end.": ("gusset",),
    "K20, place a contrasting marker, k20.": ("contrasting",),
    "Knit 4 sts and place your BOR marker here, in the middle of the underarm.": ("here",),
    "With the circular needle, cast on 64 stitches using the long tail method and join to knit in the round. Place your marker.": ("knit",),
    # The first side is matched by completing the second, whatever the verb; the row above is done again; legs that go on to
    # a number of stitches are of every such row; what is told to be read on, and "but" and "been", join what is said.
    "Complete to match first side, reversing shaping.": ("complete", "side"),
    "Complete to match first side of neck.": ("complete", "side"),
    "Complete to match first side reversing shaping.": ("complete", "side"),
    "Complete second side to match first.": ("complete", "side"),
    "Complete second shoulder to match the first, reversing all shapings.": ("complete", "shoulder"),
    "Complete to match first side.": ("complete", "side"),
    "Work second side to match first side, reversing shaping.": ("side",),
    "At the beginning of every RS row, k1, ssk, work to end, 5 times. Then do the same at the beginning of every 4th row 3 times.": ("do",),
    "Neck: At the end of every RS row, work to last 3 sts, k2tog, k1, for a total of 6 times. Then do the same at the end of every 4th row 11 times.": ("do",),
    "On every RS row, k1, ssk, k to last 3 sts, k2tog, k1, 8 times, then do the same every 4th row 3 times.": ("do",),
    "Shaping sides by increasing 1 st at both ends of 7th and every foll 8th row, work in st st until there are 64 sts.": ("every",),
    "Beg with a k row and working all increases 2 sts in from ends of rows, now work in st st, shaping sides by inc 1 st at each end of 3rd and every foll 8th row to 71 sts.": ("every",),
    "Dec 1 st at each end of next 3 rows, then of 4 foll alt rows, then of every foll 4th row until 50 sts rem.": ("every",),
    "Read the next section through before you continue, as armhole and neck are shaped at the same time.": ("section", "through", "you", "shaped"),
    "Next row (WS): P to end, but dec 1 st at armhole edge.": ("but",),
    "Bind off in steps at the neck edge: 6 sts twice, then 7 sts once.": ("once",),
    "Work exactly as for the front until the armhole shapings have been completed and 105 sts remain.": ("been",),
    # "4 mm" is a needle's; the pattern's name says its row again; "so", "is" and "stitches" are the grammar of print.
    "Change to 5 mm needles and place panels as follows:": ("needles",),
    "Work in twisted rib (k1tbl, p1) for 6 rnds.": ("twisted",),
    "Change to 4 mm needles and starting with a knit row, work in st st for 3 cm.": ("needles",),
    "Change to 4 mm needles and, beginning with a purl row, work in st st for 3 cm.": ("needles",),
    "The other one is just the same.": ("is",),
    "Knit rib (K1, P1) for 5 cm.": ("knit",),
    "Row 3 (RS): Make DS, k to prev DS, k DS, k4, turn.": ("prev",),
    "Change to 3.75 mm needles and knit 2 rounds.": ("needles",),
    "Change to 4 mm needles and st.st.": ("needles",),
    "Graft the stitches with your tapestry needle.": ("stitches",),
    # A total is one of the readings of the bare number; a count holds where a repeat ends, whether "until" says so or not.
    "Repeat these 2 rows 14 more times: 30 rows total.": ("total",),
    "Rep last 2 rnds until there are 28 sts on each needle, 56 altogether.": ("altogether",),
    # "Until measures same as back to shoulder" is of the piece; "as for back" is worked; rounds in stockinette are every round.
    "Continuing in MC, knit 1 round.": ("continuing",),
    "Knit every round, at the same time inc 1 st at each end of 5th and every foll 8th round until there are 66 sts.": ("every",),
    # --- where the stitches are: one way to say it of several that mean the same, or a place that is one ---
    "CO 56 sts. Divide equally between 4 needles.": ("equally",),
    "CO 56 sts, distribute them equally on 4 needles and join.": ("equally",),
    "K20, turn, and continue on these 20 sts only, slipping remaining sts on to a spare needle.": ("20",),
    "K8, pm for new BOR, knit to end of back sts and continue to BOR marker.": ("marker",),
    "K8, hold 8 sts, k16. 24 body sts remain on the needle.": ("body",),
    "CO 8 sts. Graft the toe with Kitchener stitch.": ("toe",),
    "Pick up and knit 3 sts, k 15 thumb sts from waste yarn.": ("waste",),
    "Pick up and knit 4 sts, k held sts, pick up and knit 4 sts to end at center of underarm.": ("k",),
    "Pick up and knit 20 sts down left neck, knit the 2 sts from safety pin and mark them, pick up and knit 20 sts up right neck.": ("safety",),
    "N1: Knit to last 3 sts, k2tog, k1; N2 and N3: work instep in pattern; N4: k1, ssk, knit to end.": ("instep",),
    "CO 40 sts. Divide over 2 needles. Slip last st of N1 onto N2.": ("divide",),
    # The head names the rows, and the change falls on each of them whether that is said again or not.
    "Rows 1 and 2: Cast off 4 sts at the beginning of each row.": ("each",),
    "Rows 3-6: Inc 1 st at each end of every row.": ("every",),
    # Of two sides worked at once, what is done at the neck edge is done at each; balls are of one side each.
    "Bind off 2 sts at each neck edge once. 46 sts.": ("each",),
    "Bind off 6 sts at each shoulder edge twice.": ("each",),
    "Dec 1 st at each neck edge every 4th row 8 times — 18 sts rem each side.": ("each",),
    "Dec 1 st at each neck edge every RS row twice. 42 sts.": ("each",),
    "Working both sides at the same time with separate balls of yarn, dec 1 st at each neck edge every RS row twice.": ("separate", "each"),
    "Working each side at the same time with a separate ball, bind off 2 sts at each neck edge once.": ("separate", "each"),
    # Where the round begins hangs a marker, whether it is called so or not.
    "Shift rnd: Remove BOR marker, k1, replace BOR.": ("marker",),
    "Remove BOR marker, k5, replace marker for new BOR.": ("marker",),
    "Remove BOR marker, place 12 sts on scrap yarn, k to end.": ("marker",),
    # The decrease is named again.
    "Rep rows 1 and 2 four more times, until you have 17 sts.": ("until",),
    "Row 3: K1, k2tog, knit until there's 1 stitch left, k1.": ("there's",),
    # A count behind a comma is the count; a marker is placed at the beginning; a length of yarn is waste yarn; "end WS row".
    "Bind off 7 sts at beg of next 4 rows, leaving 22 sts.": ("leaving",),
    "Join in the round, placing a marker at beg of rnd.": ("marker",),
    "Knit, inc 6 sts evenly over row.": ("over",),
    "Place next 20 sts on a length of waste yarn.": ("waste",),
    "Work even until piece measures 9 cm, ending after a wrong-side row.": ("after",),
    # "Foll 6th row 3 times" is every sixth row that follows. A row of buttonholes has its own number behind its name.
    "Inc 1 st at each end of every foll. 6th row 3 times.": ("every",),
    "Inc 1 st at each end of the 5th row and of every foll 8th row until there are 66 sts.": ("every",),
    # What is on a holder is knitted from it, whether the verb or the second holder is named again or not.
    "1st buttonhole row (RS): Rib 3, cast off 3, rib to end.": ("buttonhole",),
    "2nd buttonhole row: Rib, casting on 3 sts over those cast off.": ("buttonhole", "those"),
    "Next row: Rib to end, casting on 3 sts over those cast off on previous row.": ("those",),
    # A count is of what is on the needles, whatever they are called; the rows last worked are the short ones.
    "Knit 1 rnd. Still 40 sts.": ("still",),
    "Knit 1 rnd. 40 total sts.": ("total",),
    "Knit 1 rnd. You now have 40 body sts.": ("body",),
    "K20, CO 4 sts. - 44 body sts.": ("body",),
    # The round is joined once; a second sleeve is knitted; a third holder is one; a firm edge is loose or not too firm.
    "CO 40 sts. Join to work in the rnd again and knit to BOR.": ("again",),
    "Knit the other sleeve the same way, but do not cut the yarn.": ("knit",),
    "Place first 8 sts on a holder, the next 24 sts on another holder, and the last 8 sts on a third holder.": ("third",),
    "Cast off all sts in rib, not too tightly.": ("too",),
    # Behind stitches that were left on one side of a neck, those at the yarn are the centre ones.
    "Rejoin yarn to rem sts, cast off centre 21 sts, k to end.": ("centre",),
    "Inc 1 st at each end of every 6th row until 70 sts are on needle.": ("are",),
    # "Are left", "ending after", "facing you", "has reached" and "every subsequent": as without them.
    "Work in garter st for 4 rows, ending after working a WS row.": ("after",),
    "Work chart peak until piece has reached 5 cm.": ("has",),
    "Work in st st and stripe sequence of 6 rows B, 6 rows A until piece measures 20 cm.": ("sequence",),
    # There are no others: sets to graft, needles to divide over, a stitch before the marker, stitches in the middle of a heel.
    "CO 8 sts. Graft the two sets of sts together.": ("two",),
    "Divide over three needles: 16 sts on N1, 8 sts each on N2 and N3.": ("three",),
    "K to 1st st before marker, m1, k to end.": ("1st",),
    "Rep rows 3 and 4 until 4 sts rem unwrapped in center.": ("unwrapped",),
}
"""Words that may be left out of one line, and tell in others."""

TELLING = (
    "twice", "thrice", "3 times", "each", "every other", "every 4th row", "alternate", "both", "not", "once more", "again", "half",
    "for armhole", "for the neck", "along the edge", "at each end", "until 20 sts rem", "until 5 cm", "except the last", "without",
    "5", "12 sts", "k2tog", "ssk", "yo", "k10", "and turn", "then turn", "purl", "work to end", "with A", "WS", "inc 1", "bind off",
)  # fmt: skip
"""Words that say something wherever they stand."""


def place_of(offset: int, length: int) -> Span:
    """Count columns from 1 on one line."""
    return Span(line=1, column=offset + 1, length=max(1, length))


@lru_cache(maxsize=1)
def legal_lines() -> dict[str, tuple[int, tuple[str, ...]]]:
    """Collect every line that is read: text to the number of sizes and their names."""
    lines: dict[str, tuple[int, tuple[str, ...]]] = dict.fromkeys(EXAMPLES, (6, ("1", "2", "3", "4", "5", "6")))
    lines |= {row: (3, ("S", "M", "L")) for pattern in patterns() for row in pattern.work.splitlines()}
    lines |= dict.fromkeys(other_wordings(), (0, ("S", "M", "L")))
    for path in sorted((HERE.parent / "fixtures").glob("*.yaml")):
        project = read_project(path.read_text(encoding="utf-8")).project
        assert project is not None
        sizes = (len(project.sizes), project.sizes)
        lines |= {line.text: sizes for section in project.sections for line in section.lines}
    for page in sorted((HERE / "printed").glob("*.txt")):
        rows = (row.strip() for row in page.read_text(encoding="utf-8").splitlines())
        found = {row: (0, ("S", "M", "L")) for row in rows if row.endswith(".") and row not in lines}
        lines |= {row: sizes for row, sizes in found.items() if reading(row, *sizes) is not None}
    return {text: sizes for text, sizes in lines.items() if not NOTE.match(text)}


def reading(text: str, sizes: int, size_names: tuple[str, ...]) -> Line | None:
    """Read a line; None if it is refused."""
    sized = "size" in text.lower() or " only" in text
    if not sized and stop_of(made_plain(" ".join(text.split()))) is not None:
        return None  # refused; why is not asked, which would take a hundred times as long
    return read_line(text, place_of, Words(sizes=sizes, names=set(NAMES), size_names=size_names)).line


def bare(record: object) -> object:
    """Take places and printed words out of a record, so that two readings can be compared."""
    if isinstance(record, PrintedLength):
        return record.values, record.own
    if isinstance(record, tuple):
        return tuple(bare(inner) for inner in record)
    if isinstance(record, Span) or not is_dataclass(record):
        return None if isinstance(record, Span) else record
    told = isinstance(record, Remark | Assumed)
    kept = (each.name for each in fields(record) if told or each.name != "text")
    return (type(record).__name__, *(bare(getattr(record, name)) for name in kept))


@cache
def bare_reading(text: str, sizes: int, size_names: tuple[str, ...]) -> object:
    """Read a line that is read, for comparison with others."""
    return bare(reading(text, sizes, size_names))


def same(one: str, other: str, sizes: int, size_names: tuple[str, ...]) -> bool:
    """Say whether another line is read, and says just the same."""
    changed = reading(other, sizes, size_names)
    return changed is not None and bare(changed) == bare_reading(one, sizes, size_names)


def silent_words(
    text: str,
    sizes: int,
    size_names: tuple[str, ...],
    tried: set[tuple[str, ...]] | None = None,
    among: Collection[str] | None = None,
) -> list[str]:
    """List the words of a line that can be left out without a trace.

    Args:
        text: The line.
        sizes: How many sizes its lists have.
        size_names: Their names.
        tried: Words with their neighbours that need not be tried again; those of the line are added.
        among: The words to try, in small letters; all where None.
    """
    found = []
    words = list(re.finditer(r"[A-Za-z0-9][\w'&/½¼¾-]*", text))
    plain = ["", *(re.sub(r"\d+", "1", match.group().lower()) for match in words), ""]
    for at, match in enumerate(words):
        if among is not None and match.group().lower() not in among:
            continue
        here = tuple(plain[at : at + 3])
        if tried is not None:
            if here in tried or (match.group().lower(),) in tried:
                continue
            tried.add(here)
        shorter = " ".join((text[: match.start()] + text[match.end() :]).split())
        if same(text, shorter, sizes, size_names):
            found.append(match.group().lower())
    return found


@lru_cache(maxsize=1)
def silent_everywhere() -> dict[str, list[str]]:
    """List such words of all lines: each word once between the same two neighbours, and those of `SILENT`, which
    are half of all words, where each is first met."""
    tried: set[tuple[str, ...]] = set()
    words = {}
    for text, sizes in legal_lines().items():
        words[text] = silent_words(text, *sizes, tried)
        tried |= {(word,) for word in SILENT & set(words[text])}
    return words


def test_every_word_of_a_line_that_is_read_is_accounted_for_and_none_in_vain() -> None:
    """A word that could be left out unnoticed was never read; one that nobody needs in the table hides the next hole.

    Both are asked here, as it takes long to take each word out of each line.
    """
    lost = {
        text: words
        for text, silent in silent_everywhere().items()
        if (words := [word for word in silent if word not in (*SILENT, *SILENT_THERE.get(text, ()))])
    }
    assert lost == {}
    met = {word for words in silent_everywhere().values() for word in words}
    assert sorted(SILENT - met) == []
    there = {text: silent_words(text, *legal_lines()[text], among=words) for text, words in SILENT_THERE.items()}
    assert all(set(SILENT_THERE[text]) <= set(words) for text, words in there.items())


def test_a_word_that_is_passed_over_would_be_seen() -> None:
    """The watch can fail: "the" changes nothing, "twice" does."""
    assert same("K across all sts.", "K across all the sts.", 0, ())
    assert silent_words("Join in the round.", 0, ()) == ["in", "the"]
    assert not same("(K2, p2) twice, k to end.", "(K2, p2) 3 times, k to end.", 0, ())


@st.composite
def crowded_lines(draw: st.DrawFn) -> tuple[str, str, int, tuple[str, ...]]:
    """Put a telling word between two words of a line that is read."""
    text, (sizes, names) = draw(st.sampled_from(sorted(legal_lines().items())))
    telling = draw(st.sampled_from(TELLING))
    assume(telling != "bind off" or not re.match(r"(?:bind|cast)\s+(?:\((?:bind|cast)\)\s+)?off", text, re.I))  # it says so again
    assume(telling != "bind off" or not re.search(r"\b(?:edge|needle|cm),?\s+bind\s+off", text, re.I))  # so it does there
    assume(telling != "again" or not re.match(r"[A-Z]\w+ stitch for\b", text))  # a fabric may come again
    assume(telling != "each" or not re.search(r"at (?:neck|armhole|side|front) edge", text))  # of one piece there is one
    at = draw(st.sampled_from([0, *(match.end() for match in re.finditer(r"\s+", text)), len(text)]))
    if at == len(text):
        return text, f"{text.rstrip('. ')} {telling}.", sizes, names
    crowded = f"{text[:at]}{telling} {text[at:]}"
    assume(telling != "again" or at)  # "Again continue": an order that only says it comes again
    assume("bind off bind off" not in crowded)  # it says so again
    assume("every other alt" not in crowded)  # so it does there
    assume(not re.search(r"(?:^|[.!?:] )again \d", crowded))  # "Again 42 sts" tells the count
    assume(not re.search(r"[.!?:] again [A-Z]", crowded))  # as at the front: an order that comes again
    return text, crowded, sizes, names


@given(crowded_lines())
@settings(max_examples=500, deadline=None, derandomize=True)
def test_a_telling_word_put_in_anywhere_changes_the_reading_or_is_refused(case: tuple[str, str, int, tuple[str, ...]]) -> None:
    """"Twice", "not", "for armhole", a stitch or a number are never passed over, wherever they stand."""
    text, crowded, sizes, names = case
    assert not same(text, crowded, sizes, names), crowded


@each_row(
    "line",
    [
        "Bind off 4 sts for underarm twice.",
        "Bind off 4 sts along the edge every other row 3 times.",
        "Bind off 2 sts at neck edge twice, k to end.",
        "Hold 12 sts for left sleeve and k to end.",
        "K20, hold 12 for sleeve every other row, k to end.",
        "Place marker for raglan twice.",
        "Return left sleeve and k10 to needles.",
        "K across left sleeve and k2tog sts.",
        "Pick up and knit 12 sts along each side.",
        "Pick up and knit 12 sts along edge with smaller needles.",
        "Draw yarn through sts, k10, k2tog.",
        "Do not break yarn k10, k2tog.",
        "Weave in ends and knit 2 rounds.",
        "Bind off 20 sts knitting every other row and working to the turn.",
        "K30 across instep twice, k to end.",
        "*K to marker, sm; rep from * at every other marker, k to end.",
        "Every other WS row: Purl.",
        "Row 2 and all alternate WS rows: Purl.",
        "2nd and every other alt rounds: K.",
        "Total with A of 96 sts on needles.",
        "Work dec round every 8th (decrease) round 6 times.",
        "Work in broken rib to last 3 sts, k3.",
        "Inc round, every 4th round: K1, m1, k to end.",
        "MC: knit 2 rounds.",
        "XL only: knit 2 rounds.",
        "Next 2 rows: knit 4 rows.",
        "Next 2 rows: Bind off 4 sts at the beginning of the next 2 rows.",
        "Join to A, k10.",
    ],
)
def test_an_instruction_in_free_words_is_refused(line: str) -> None:
    """Each of these can be taken for a shorter line with words behind it, and was."""
    assert reading(line, 0, ("S", "M", "L")) is None


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("BO 5 sts for armhole, k to end.", "for armhole"),
        ("K10, pm for raglan, k to end.", "raglan"),
        ("Graft 8 sts along the toe.", "along the toe"),
        ("Pick up and knit 15 sts, k30 across instep, pick up and knit 15 sts.", "across instep"),
        ("K20, BO center 20 sts, k to end.", "center 20"),
        ("Join 8 underarm sts by grafting.", "underarm"),
        ("Draw yarn through sts and pull tight.", "pull tight"),
        ("Sl1 kwise wyib, k to end.", "wyib"),
        ("P across held sts, k to end.", "purl across"),
        ("Bind off 4 sts for underarm at beg of next 2 rows.", "for underarm"),
    ],
)
def test_words_that_work_no_stitch_are_said(line: str, said: str) -> None:
    """They are worth no stitches, and she needs them."""
    made = reading(line, 0, ())
    assert made is not None
    assert any(said in words for words in made.said)
