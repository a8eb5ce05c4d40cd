r"""The table of other printed wordings that are read: each a pattern and the words that replace it.

The rows are tried from the top down, and only on a line that does not read as written: first how numbers and
stitches are written, which brings a line into one notation, then words around the stitches, lengths, whole
lines, and what is worked inside a row. `\1` in the words is what group 1 of the pattern matched. `KEPT`
takes the words out of the line and has them said with it: they work no stitches, but the knitter needs them.
Each row has a line as an example; a test reads them all.
Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

from stepper.project.rewording.on_needles.both_sides_synonyms import BOTH_SIDES
from stepper.project.rewording.on_needles.cast_on_synonyms import CASTING
from stepper.project.rewording.on_needles.holding_synonyms import HOLDING
from stepper.project.rewording.on_needles.joined_synonyms import JOINED
from stepper.project.rewording.on_needles.marker_synonyms import MARKERS, NEEDLEWORK
from stepper.project.rewording.on_needles.needle_synonyms import BY_NEEDLES
from stepper.project.rewording.remarks.advice_synonyms import ADVICE
from stepper.project.rewording.remarks.comment_synonyms import COMMENTS
from stepper.project.rewording.remarks.continental_remarks import CONTINENTAL_REMARKS
from stepper.project.rewording.remarks.explained_synonyms import EXPLAINED
from stepper.project.rewording.remarks.filler_synonyms import FILLERS, LATE_FILLERS
from stepper.project.rewording.remarks.remark_synonyms import BESIDE, REMARKS, THROUGH
from stepper.project.rewording.signs.list_synonyms import LISTS, STATED_COUNTS
from stepper.project.rewording.signs.mixed_list_synonyms import MIXED_LISTS
from stepper.project.rewording.signs.notation import NOTATION, NUMBERS
from stepper.project.rewording.signs.old_print_synonyms import OLD_PRINT, STATED
from stepper.project.rewording.signs.one_form_synonyms import ONE_FORM
from stepper.project.rewording.signs.page_row_synonyms import HEADS, PAGE_ROWS
from stepper.project.rewording.signs.printing_synonyms import PRINTING, SPELLINGS
from stepper.project.rewording.signs.side_synonyms import SIDES
from stepper.project.rewording.signs.sign_synonyms import SIGNS
from stepper.project.rewording.style.continental_synonyms import CONTINENTAL, CONTINENTAL_SIGNS, TECHNIQUES
from stepper.project.rewording.style.designer_synonyms import IN_ROWS, STATEMENTS
from stepper.project.rewording.style.garment_synonyms import GARMENTS
from stepper.project.rewording.style.hand_and_foot_synonyms import HANDS_AND_FEET
from stepper.project.rewording.style.homely_synonyms import HOMELY
from stepper.project.rewording.style.leaflet_synonyms import LEAFLETS
from stepper.project.rewording.style.line_synonyms import LINES
from stepper.project.rewording.style.magazine_synonyms import BOOKLETS, BRITISH, MAGAZINE_WORDS, MAGAZINES
from stepper.project.rewording.style.name_synonyms import ASIDES
from stepper.project.rewording.style.other_word_synonyms import OTHER_WORDS
from stepper.project.rewording.style.paragraph_synonyms import PARAGRAPHS, STOPS
from stepper.project.rewording.style.piece_synonyms import PIECES
from stepper.project.rewording.style.plain_synonyms import EVERYDAY
from stepper.project.rewording.style.prose_synonyms import PROSE
from stepper.project.rewording.style.shawl_synonyms import SHAWLS
from stepper.project.rewording.style.textured_synonyms import RIBS_BEGUN, TEXTURED
from stepper.project.rewording.style.told_synonyms import TOLD
from stepper.project.rewording.style.whole_page_synonyms import WHOLE_PAGES
from stepper.project.rewording.style.yarn_synonyms import YARNS
from stepper.project.rewording.style.yoke_synonyms import YOKES
from stepper.project.rewording.synonym import Synonym
from stepper.project.rewording.work.adjunct_synonyms import ADJUNCTS
from stepper.project.rewording.work.chart_synonyms import CHARTS
from stepper.project.rewording.work.fabric_synonyms import FABRICS
from stepper.project.rewording.work.first_row_synonyms import FIRST_ROWS
from stepper.project.rewording.work.front_synonyms import FRONTS
from stepper.project.rewording.work.heel_synonyms import HEELS
from stepper.project.rewording.work.interval_synonyms import COUNTED, INTERVALS
from stepper.project.rewording.work.length_synonyms import LENGTHS
from stepper.project.rewording.work.measured_synonyms import AS_LONG, MEASURED
from stepper.project.rewording.work.own_length_synonyms import OWN_LENGTHS
from stepper.project.rewording.work.panel_synonyms import PANELS, PANELS_SET
from stepper.project.rewording.work.part_synonyms import AGAIN, DIVIDED
from stepper.project.rewording.work.pattern_synonyms import PATTERNS, STRETCHES
from stepper.project.rewording.work.row_synonyms import ROWS
from stepper.project.rewording.work.shaping_synonyms import BETWEEN, SHAPING
from stepper.project.rewording.work.stitch_row_synonyms import STITCH_ROWS
from stepper.project.rewording.work.times_synonyms import TIMES
from stepper.project.rewording.work.told_count_synonyms import AFTER_ROWS, TOLD_COUNTS
from stepper.project.rewording.work.until_synonyms import UNTIL

SYNONYMS: tuple[Synonym, ...] = (
    *AFTER_ROWS,
    *STOPS,
    *SPELLINGS,
    *STITCH_ROWS,
    *ONE_FORM,
    *MIXED_LISTS,
    *LISTS,
    *TOLD_COUNTS,
    *FIRST_ROWS,
    *ADJUNCTS,
    *STATEMENTS,
    *YOKES,
    *IN_ROWS,
    *BY_NEEDLES,
    *HANDS_AND_FEET,
    *CONTINENTAL_REMARKS,
    *CONTINENTAL_SIGNS,
    *BESIDE,
    *THROUGH,
    *YARNS,
    *OLD_PRINT,
    *PIECES,
    *BOTH_SIDES,
    *FRONTS,
    *OTHER_WORDS,
    *BETWEEN,
    *AS_LONG,
    *FILLERS,
    *MAGAZINE_WORDS,
    *GARMENTS,
    *OWN_LENGTHS,
    *WHOLE_PAGES,
    *HEADS,
    *SHAWLS,
    *CHARTS,
    *TEXTURED,
    *PANELS_SET,
    *PANELS,
    *STRETCHES,
    *SIDES,
    *PAGE_ROWS,
    *HEELS,
    *SIGNS,
    *BRITISH,
    *ADVICE,
    *TIMES,
    *NUMBERS,
    *STATED_COUNTS,
    *CONTINENTAL,
    *TOLD,
    *DIVIDED,
    *HOMELY,
    *PROSE,
    *REMARKS,
    *PARAGRAPHS,
    *LEAFLETS,
    *EVERYDAY,
    *CASTING,
    *FABRICS,
    *RIBS_BEGUN,
    *JOINED,
    *UNTIL,
    *NOTATION,
    *AGAIN,
    *HOLDING,
    *NEEDLEWORK,
    *ASIDES,
    *MARKERS,
    *SHAPING,
    *INTERVALS,
    *LENGTHS,
    *COUNTED,
    *PATTERNS,
    *LINES,
    *MEASURED,
    *ROWS,
    *MAGAZINES,
    *PRINTING,
    *BOOKLETS,
    *EXPLAINED,
    *COMMENTS,
    *STATED,
    *TECHNIQUES,
    *LATE_FILLERS,
)
"""Every other wording, in the order tried."""
