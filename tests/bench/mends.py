"""How many unread rows get the offer of a change, how many of these are right, and what they cost.

    python -m tests.bench.mends

Each row of the table is put into a hat in the round, unread, and its change is looked for as `stepper settle` does. It stands
beside what is knitted by it, or beside nothing where no change may be offered: then the words that keep it from being read order
something. An offer is right if the row is read as what is knitted, and misleads if it is read as anything else. All rows are invented.
"""

from __future__ import annotations

import time
from pathlib import Path
from typing import Final

from stepper.project.page.unread.left_open import find_left_open
from stepper.project.reading.wording import reads
from stepper.settling.file_in_hand import take_in_hand
from stepper.settling.mend_questions import find_fitting
from stepper.settling.rows_asked import look_at
from tests.project.samples import project

ROWS: Final = (
    # what is told beside the work
    ("Knit 4 rounds (as on my drawing).", "Knit 4 rounds."),
    ("Purl 2 rounds (my aunt hums it).", "Purl 2 rounds."),
    ("Purl 2 rounds, or so many as you like.", "Purl 2 rounds."),
    ("Knit until hat measures 12 cm, or till you've got about 12 grams left.", "Knit until hat measures 12 cm."),
    ("Knit until hat measures 12 cm, or 1 cm less if a flat crown is liked.", "Knit until hat measures 12 cm."),
    ("Work in k2, p2 rib, being kind to your wool, for 4 cm.", "Work in k2, p2 rib for 4 cm."),
    ("*K2tog, k2; rep from * to end (my aunt hums here). 33 sts.", "*K2tog, k2; rep from * to end. 33 sts."),
    ("*K2tog, k2; rep from * to end, sort of. 33 sts.", "*K2tog, k2; rep from * to end. 33 sts."),
    ("Cast on 4 sts, thorn method.", "Cast on 4 sts."),
    ("For the crown.--*K2tog, k2; rep from * to end.", "*K2tog, k2; rep from * to end."),
    # words that are none
    ("Knlt 4 rounds.", "Knit 4 rounds."),
    ("Knit 4 ruonds.", "Knit 4 rounds."),
    ("Knit 1 round, increasjng 4 sts evenly.", "Knit 1 round, increasing 4 sts evenly."),
    ("Purrl 1 round.", "Purl 1 round."),
    # two orders, of which one is read
    ("Change to 3.5 mm needles and patt the walls as given.", "Change to 3.5 mm needles."),
    ("Knit 4 rounds, then begin the wall.", "Knit 4 rounds."),
    ("Purl 1 round, then work the wall until it is tall.", "Purl 1 round."),
    # what orders something
    ("Knit 4 rounds except at the wall.", ""),
    ("Knit 4 rounds but not the wall.", ""),
    ("Knit 4 rounds of 12 walls.", ""),
    ("Knit 4 rounds in heather white.", ""),
    ("Knit 4 rounds on the twirled needle.", ""),
    ("Knit 4 rounds (on the wrong side of the wall).", ""),
    ("Knit 4 rounds (grown men only).", ""),
    ("The wall (optional): Knit 4 rounds.", ""),
    ("Knit until hat measures 12 cm, measured from the wall.", ""),
    ("Work 4 rounds as on the front.", ""),
    ("Knit 4 rounds, if you want a wall.", ""),
    ("Purl 2 rounds of snow.", ""),
    ("Knit 4 rounds (trellis).", ""),
    ("Knit 20 furrows.", ""),
    ("Knit furrows to end of row.", ""),
    ("Stick 4 markers in the wall.", ""),
    ("Work as on the wall: Knit 4 rounds, then begin the wall.", ""),
    ("Knit 4 rounds, unless you are tall.", ""),
    ("Knit 4 rounds, but with C6F in the wall.", ""),
    ("Knit 4 rounds (through the back of each wall).", ""),
    ("Knit 4 rounds, picot.", ""),
    ("Knit 4 rounds, keeping the wall tall.", ""),
    ("Knit 4 rounds and work a twirl in every round.", ""),
    ("Knit 4 rounds, and begin the wall at the same time.", ""),
    ("Purl 1 round, knit 1 twirl, 3 times in all.", ""),
    ("Knit 4 trellis rounds.", ""),
    ("Knit 4 rounds at the lower wall.", ""),
    ("*K2tog, k2; rep from * to end (my aunt hums here). 35 sts.", ""),
    ("Knot 4 sts.", ""),
    ("K4 LC, twirl.", ""),
)  # fmt: skip
"""A row that is not read, and the row that is knitted; empty where no change may be offered."""


def offered(row: str) -> tuple[str, ...]:
    """Return as what a row is offered to be read, in a hat of 44 stitches."""
    text = project(f"Cast on 44 sts.\nJoin in the round.\n# LOOK (row 9 of the text).\nNote: {row}\nBind off.", sizes="one", size="one")
    (left,) = find_left_open(text)
    return tuple(mend.text for mend, _ in find_fitting(look_at(left, text), take_in_hand(text, Path())))


def main() -> None:
    """Measure."""
    offered("Twirl.")  # the tables of the reader are loaded
    assert not any(reads(row) for row, _ in ROWS)
    right = missing = 0
    misleading, seconds = [], []
    for row, knitted in ROWS:
        begun = time.process_time()
        found = offered(row)
        seconds.append(time.process_time() - begun)
        right += bool(knitted) and found == (knitted,)
        missing += bool(knitted) and not found
        misleading += [(row, each) for each in found if each != knitted]
    mendable = sum(bool(knitted) for _, knitted in ROWS)
    print(f"{len(ROWS)} rows, {mendable} with a change: {right} right, {missing} without an offer")
    print(f"of the {len(ROWS) - mendable} that may get none {len(misleading)} get one that misleads")
    print(f"{1000 * sum(seconds) / len(ROWS):.0f} ms a row, {1000 * max(seconds):.0f} ms at most")
    for row, each in misleading:
        print(f"  {row} -> {each}")


if __name__ == "__main__":
    main()
