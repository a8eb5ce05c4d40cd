"""The wordings that are looked for only in a line that nothing else reads: where its stitches are. No I/O.

How a piece is cast on and joined, what waits on which thread, where it is taken up again and how it is
closed is told in more ways than any other thing in print, and of most of them a part reads by the rows of the
whole table. Rows that came before those would change lines that read well; so these are tried on what is left
over, as printed.
"""

from __future__ import annotations

from stepper.project.rewording.on_needles.closing_synonyms import CLOSINGS
from stepper.project.rewording.on_needles.parting_synonyms import PARTINGS
from stepper.project.rewording.synonym import Synonym
from stepper.project.rewording.work.beginning_synonyms import BEGINNINGS
from stepper.project.rewording.work.place_synonyms import PLACES

SECOND_LOOK: tuple[Synonym, ...] = (*BEGINNINGS, *PARTINGS, *CLOSINGS, *PLACES)
"""The rows, in the order tried."""
