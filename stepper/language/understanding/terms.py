"""The words of the trade that a beginner hears or reads and may not know, each with what it means. No I/O.

It stands alone because it is one list. What is told is heard once, with both hands full: one or two short
sentences, and of two ways to do a thing the one that is safe. Source: common practice; the last rows are this
program's own words.
"""

from __future__ import annotations

from types import MappingProxyType
from typing import Final

TERMS: Final = MappingProxyType(
    {
        # Beginning and ending.
        "cast on": "make the first loops on the needle, as many as are said; each loop is one stitch. Any "
        "way that you know will do, unless the pattern names one",
        "bind off": "knit two, lift the first over the second and off the needle, knit one more, lift again, "
        "to the end. What is bound off cannot run down; keep it loose",
        "join in the round": "push the stitches to both tips, the yarn at the right one and all of the edge "
        "hanging inside. Then knit into the first stitch of the cast-on",
        "twist": "the edge of the cast-on winding round the needle. Look before you join: all of it must "
        "hang to one side, since a twist stays in for good",
        "working yarn": "the end of the yarn that leads to the ball, with which you knit",
        "tail": "the short end of the yarn, left at a beginning or an end; it is sewn in when all is done",
        "weave in": "sew the loose ends through the back of the fabric with a blunt needle, so that they "
        "hold",
        # Round and row, side and direction.
        "round": "once over all stitches. In rounds the same side stays before you and you go on and on; in "
        "rows you turn at each end and come back",
        "beginning of round": "where a round begins, as a rule at a marker unlike the others",
        "right side": "the side that is seen when it is worn, RS in short. It has nothing to do with your "
        "right hand",
        "wrong side": "the side that lies inside when it is worn, WS in short",
        "turn": "change the needles over in your hands, so that the other side is before you, and go back",
        "left needle": "the needle in your left hand, which holds the stitches you have not worked yet",
        "right needle": "the needle in your right hand, onto which the worked stitches come",
        "work": "make the stitches, as the pattern goes there; where it says nothing else, knit and purl as "
        "before",
        # Fabrics.
        "stockinette stitch": "smooth on one side. In rounds knit every round; in rows knit when the right "
        "side is before you and purl when the wrong side is",
        "reverse stockinette stitch": "stockinette with its bumpy side outwards: purl where the right side "
        "is before you",
        "garter stitch": "ridges on both sides. In rows knit every row; in rounds knit one round, purl the "
        "next",
        "ridge": "a line of bumps in garter stitch. It takes two rows",
        "rib": "knit and purl stitches above each other in columns, which makes the fabric stretch",
        "moss stitch": "knit and purl by turns, and over them the other way about, so that no columns form. "
        "American pages call the finer one seed stitch",
        "cable": "some stitches crossed over others: they wait on a short spare needle, before or behind the "
        "work, while the next are knitted",
        "stranded knitting": "two yarns in one round, the one not in use carried along behind the stitches",
        "float": "the yarn not in use, lying behind the stitches from one in its colour to the next",
        "repeat": "some stitches that are worked again and again, as between two stars",
        "multiple": "a number of stitches into which the repeat goes without any left over",
        "duplicate stitch": "a stitch sewn over a knitted one, along both its legs",
        "main colour": "the yarn that most of the garment is knitted in, MC in short",
        "contrast colour": "a yarn beside the main one, CC in short",
        # Shaping.
        "increase": "make more stitches than there were, as the line tells; make one is the usual way",
        "decrease": "make fewer stitches, mostly by knitting two together",
        "shaping": "increases and decreases, which make the piece wider or narrower",
        "evenly": "with about the same number of stitches between one and the next. I tell you where each "
        "one goes",
        "work even": "go on as before, without increases or decreases",
        "short row": "a row that is turned before its end, so that one part grows longer than the rest",
        "at the same time": "two things go on together in the same rows. I tell you both where they fall",
        "alternate": "every second one: one with it, one without",
        "every following": "count from the last one you made: every fourth is three plain ones and then one "
        "with it",
        "reverse the shaping": "the same as on the other side, mirrored: what was at the beginning of a row "
        "comes at its end",
        "in pattern": "go on with what lies below: over each stitch the one that the pattern has there now",
        # Stitches in words.
        "live stitch": "a stitch on a needle or a thread, not bound off. If it slips off it runs down, so do "
        "not pull",
        "on hold": "kept on a pin or a thread and not knitted, until the pattern takes them back",
        "stitch holder": "a large pin, or a spare thread, that keeps stitches you do not knit now",
        "waste yarn": "any smooth spare yarn. Drawn through stitches with a blunt needle it keeps them, and "
        "later it comes out again",
        "pick up and knit": "put the needle in along an edge, from the right side, and draw a loop of yarn "
        "through for each stitch",
        "slip stitch": "a stitch passed to the right needle without knitting it",
        "pass over": "lift the slipped stitch with the left needle over the one just knitted, and off",
        "knitwise": "with the needle put in as if to knit, from left to right",
        "purlwise": "with the needle put in as if to purl, from right to left; the stitch does not turn",
        "through the back loop": "put the needle into the back half of the loop, so that the stitch is "
        "twisted",
        "front loop": "the half of the stitch on your side of the needle",
        "back loop": "the half of the stitch behind the needle",
        "strand between the stitches": "the piece of yarn that runs from the last stitch to the next",
        "edge stitch": "the first or last stitch of a row; a seam eats it up",
        # Tools.
        "double pointed needles": "short needles with a point at both ends. The stitches lie on three or "
        "four, and you knit with the one that is free",
        "circular needle": "two points joined by a cord. It does for rounds, and for rows as well: turn at "
        "the end",
        "magic loop": "small rounds on one long circular needle, its cord pulled out in a loop between two "
        "halves",
        "cable needle": "a short needle that holds a few stitches while others are knitted before them",
        "blunt needle": "a thick sewing needle without a point, which goes between the strands and splits "
        "none",
        "marker": "a ring on the needle between two stitches; you slip it across as you come to it",
        "lifeline": "a thin smooth thread, drawn through all stitches on the needle; you can rip back to it "
        "and lose none",
        "skein": "the yarn as it is sold, a ball or a hank",
        "gauge": "how many stitches and rounds go into ten centimetres. With another number it comes out in "
        "another size",
        "swatch": "a small piece knitted before, to measure how many stitches go into ten centimetres",
        "ease": "how much wider the garment is than you are",
        # Parts of a garment.
        "yoke": "what goes round the shoulders, body and sleeves in one",
        "raglan": "slanting lines from the neck to under the arms, along which stitches come or go",
        "set in sleeve": "a sleeve whose rounded top fits into a curved armhole, with the seam on the "
        "shoulder",
        "saddle": "a strip on top of the shoulder, going on from the sleeve to the neck",
        "underarm": "the few stitches under the arm, where body and sleeve meet",
        "gusset": "a wedge that gives room, as at a thumb or beside a heel",
        "heel flap": "the square behind the heel of a sock, worked to and fro",
        "instep": "the top of the foot, between the leg and the toes",
        "cuff": "the ribbed end of a sleeve, a sock or a mitten",
        "neckband": "the ribbed edge round the neck",
        "button band": "the edge with the buttons or buttonholes",
        "steek": "a few extra stitches that are cut open when the knitting is done; secure them before you "
        "cut",
        # Making up and mending.
        "graft": "sew two rows of open stitches together with a blunt needle, stitch for stitch, so that the "
        "seam looks like knitting",
        "seam": "two edges sewn together",
        "mattress stitch": "a seam sewn from the right side, a bar of one edge and a bar of the other by "
        "turns, which does not show",
        "three needle bind off": "two needles side by side: knit one of each together, and bind off as you "
        "go",
        "provisional cast on": "a cast-on over spare yarn, which is taken out later to knit on the other way",
        "block": "wash or damp the finished piece as the band of its yarn allows, lay it flat to its "
        "measures, and let it dry there",
        "rip back": "take the needle out and pull the yarn until the fault is gone, then pick the stitches "
        "up again",
        "unknit": "undo stitch by stitch: left needle into the stitch below, old one off, pull the yarn out",
        # Of this program.
        "step": "what is said at once: work it, then say next step",
        "place": "the stitch I take you to be at; to hear it, say: where am I",
        "remedy": "a way to mend a count that is off; to hear them, say: what can I do",
    }
)
"""Each word with its meaning, in sentences that end without their last full stop."""

ALSO_CALLED: Final = MappingProxyType(
    {
        "cast on": "casting on, cast on stitches, cast on edge, co",
        "bind off": "binding off, cast off, casting off, bo, bound off",
        "join in the round": "join, joining, join in a round, joining in the round, join into the round, "
        "join into a round, join to work in the round, join for working in the round, join the round",
        "twist": "twisted, twisting, not to twist, do not twist, being careful not to twist, without "
        "twisting, careful not to twist",
        "weave in": "weave in the ends, weaving in, weave in ends, darn in, darn ends, darn in ends, sew in "
        "ends",
        "beginning of round": "bor, beginning of the round, start of the round",
        "right side": "rs, right side facing, rs facing, right side row",
        "wrong side": "ws, wrong side facing, ws facing, wrong side row",
        "turn": "turn the work, turning",
        "left needle": "left hand needle, lh needle, left hand, lh",
        "right needle": "right hand needle, rh needle, right hand, rh",
        "stockinette stitch": "stockinette, stocking stitch, stocking st, st st, stocking, stockinet, plain "
        "knitting",
        "reverse stockinette stitch": "reverse stockinette, reverse stocking stitch, rev st st",
        "garter stitch": "garter, g st, gst, garter st",
        "ridge": "ridges, garter ridge",
        "rib": "ribbing, ribs, ribbed, k1 p1 rib, k2 p2 rib, k1 p1 ribbing, k2 p2 ribbing, one by one rib, "
        "two by two rib, k1 p1, k2 p2, rib stitch",
        "moss stitch": "moss, moss st, seed stitch, seed st",
        "cable": "cables, cabling, cable stitch",
        "stranded knitting": "stranded, fair isle, colourwork, stranded colourwork",
        "float": "floats",
        "repeat": "repeats, rep, stars, asterisk, star",
        "main colour": "mc",
        "contrast colour": "cc, contrasting colour",
        "increase": "increasing, increases",
        "decrease": "decreasing, decreases",
        "shaping": "shape, shapings",
        "evenly": "evenly spaced, spread evenly, even",
        "work even": "work straight, straight, continue straight, work plain, without shaping, knit straight",
        "short row": "short rows",
        "at the same time": "at same time",
        "alternate": "alt, every alternate row, alternate rows, alternate row, every other row, every other "
        "round",
        "every following": "foll, following, every following row, every foll row, following alternate rows, "
        "foll alt rows, every foll alt row",
        "reverse the shaping": "reversing shapings, reversing shaping, reverse shaping, reverse shapings, "
        "reversing the shaping, reversing all shapings, reversing all shaping",
        "in pattern": "patt, as set, as established, keeping pattern correct, keep pattern correct, in patt, "
        "keeping patt correct, continue in pattern, as before",
        "live stitch": "live stitches, open stitches, live",
        "on hold": "hold, held, place on hold, put on hold, put them on hold, held stitches, slip to a "
        "holder",
        "stitch holder": "holder, stitch holders, holders",
        "waste yarn": "scrap yarn, spare yarn, contrast thread, spare thread",
        "pick up and knit": "pick up, picking up, pick up stitches, picking up stitches, pu, pick up and k",
        "slip stitch": "slip a stitch, slipped stitch, slip",
        "pass over": "psso, pass slipped stitch over, pass the slipped stitch over, passing over, pass it "
        "over",
        "knitwise": "kwise, as if to knit",
        "purlwise": "pwise, as if to purl",
        "through the back loop": "tbl, back of the loop, through back loop, through the back loops",
        "strand between the stitches": "strand, bar, loop between stitches, strand between stitches",
        "edge stitch": "selvedge, selvage, edge stitches, selvedge stitch",
        "double pointed needles": "dpn, dpns, dp needles, double points, double pointed needle, set of "
        "needles, set of double pointed needles",
        "circular needle": "circular, circulars, circular needles, circ",
        "cable needle": "cn",
        "blunt needle": "tapestry needle, darning needle, wool needle, yarn needle",
        "marker": "stitch marker, markers",
        "skein": "ball, hank, balls, skeins",
        "gauge": "tension, my gauge, my tension",
        "swatch": "tension square, gauge swatch",
        "raglan": "raglan line, raglan lines, raglans",
        "set in sleeve": "set in sleeves",
        "saddle": "saddle shoulder, saddles",
        "underarm": "underarms",
        "gusset": "thumb gusset, heel gusset, gore",
        "button band": "front band, buttonhole band, placket",
        "graft": "grafting, kitchener, kitchener stitch",
        "seam": "seaming, sew up, sewing up, making up, make up",
        "three needle bind off": "three needle cast off, 3 needle bind off, 3 needle cast off",
        "block": "blocking, block the garment",
        "rip back": "frog, frogging, rip, ripping, ripping back, rip out, unravel, pull back",
        "unknit": "tink, tinking, undo stitch by stitch",
        "remedy": "remedies",
    }
)
"""Other words for the same: of pages and of people, American and British, short and long."""

BY_HAND: Final = MappingProxyType(
    {
        "k": "Yarn behind the needle. Right needle into the front of the stitch, from left to right; lay the "
        "yarn round its tip, draw the loop through, let the old stitch off",
        "p": "Yarn in front of the needle. Right needle into the stitch from right to left, its tip on your "
        "side; lay the yarn round it, draw the loop through to the back, let the old stitch off",
        "sl": "Pass it to the right needle without working it, as if to purl unless the line says otherwise",
    }
)
"""What the hands do for a stitch whose name says no more. Source: common practice; English and Continental
hands hold the yarn otherwise and make the same stitch."""

OTHERWISE_ASKED: Final = frozenset(
    (
        "round", "gauge", "on hold", "underarm", "repeat", "float", "increase", "decrease", "step", "work",
        "turn", "shaping", "neckband", "yoke", "cuff", "saddle", "gusset", "instep", "heel flap",
        "button band", "raglan", "steek",
    )
)  # fmt: skip
"""Words of the knitting in hand as well: "what is the round" asks for her place, "what is a round"
for the word, and "how do I work the neckband" for none."""

PLAIN: Final = frozenset(("round", "work", "place", "step", "remedy", "turn", "seam"))
"""Words that most know, or that this program says: explained where they are asked for by name alone."""
