"""The wordings looked for only in a line that nothing else reads: other words, where stitches are. No I/O.

One thing has many words, and each row of the tables knows some of them: these are put into one first.
How a piece is cast on and joined, what waits on which thread, where it is taken up again and how it is
closed is told in more ways than any other thing in print, and of most of them a part reads by the rows of the
whole table. Rows that came before those would change lines that read well; so these are tried on what is left
over, as printed.
"""

from __future__ import annotations

from stepper.project.rewording.on_needles.closing_synonyms import CLOSINGS
from stepper.project.rewording.on_needles.dividing_synonyms import DIVISIONS
from stepper.project.rewording.on_needles.marker_synonyms import MARKED_STITCHES, MARKINGS, PLACED
from stepper.project.rewording.on_needles.needle_change_synonyms import NEEDLE_CHANGES
from stepper.project.rewording.on_needles.needle_synonyms import NEEDLE_BY_NEEDLE
from stepper.project.rewording.on_needles.parting_synonyms import PARTINGS
from stepper.project.rewording.on_needles.returning_synonyms import RETURNS
from stepper.project.rewording.on_needles.uniting_synonyms import UNITED
from stepper.project.rewording.on_needles.waiting_synonyms import WAITING
from stepper.project.rewording.style.same_word_synonyms import SAME_WORDS
from stepper.project.rewording.synonym import Synonym
from stepper.project.rewording.work.beginning_synonyms import BEGINNINGS
from stepper.project.rewording.work.edge_synonyms import ABBREVIATED, EDGES
from stepper.project.rewording.work.place_synonyms import PLACES
from stepper.project.rewording.work.reference_synonyms import REFERENCES
from stepper.project.rewording.work.told_row_synonyms import TOLD_ROWS

SECOND_LOOK: tuple[Synonym, ...] = (
    *TOLD_ROWS,
    *SAME_WORDS,
    *ABBREVIATED,
    *BEGINNINGS,
    *MARKED_STITCHES,
    *MARKINGS,
    *WAITING,
    *RETURNS,
    *PARTINGS,
    *DIVISIONS,
    *CLOSINGS,
    *NEEDLE_BY_NEEDLE,
    *PLACES,
    *NEEDLE_CHANGES,
    *PLACED,
    *UNITED,
    *EDGES,
    *REFERENCES,
)
"""The rows, in the order tried."""
