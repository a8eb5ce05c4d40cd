"""Sort each row of a printed page into a line, under a mark, or into front matter. No I/O.

Theory of operation. The rows are read once. In front matter every sentence gets its kind
(`stepper.project.page.front_matter`); one without a kind goes under a mark, so that no instruction is
silently passed over. Knitting begins at the heading of a part with something to knit below it, or where
stitches are cast on without a heading; from there on every row is a line of the pattern or goes under a mark.
It is long because what a row is hangs on where the page has got to, which is the one state of `Sorter`.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import field
from itertools import dropwhile, pairwise, takewhile

from stepper.project.instructions import ONLY_CHART, Line, is_only_said
from stepper.project.own_stitches.lists import entries_of
from stepper.project.page.abbreviation_lists import explains_short_form
from stepper.project.page.bare_heads import ends_in_stops, heads_by_shape, may_head
from stepper.project.page.descriptions import describes
from stepper.project.page.drawn.grid_charts import GridChart
from stepper.project.page.front_matter import is_soft, kind_of, kind_under, means_something
from stepper.project.page.front_pieces import front_pieces
from stepper.project.page.headings import (
    Heading,
    begins_work,
    chart_in_words,
    fabric_part,
    heading_of,
    holds_below,
    inline_part,
    is_clutter,
    is_explained,
    is_told_below,
    is_whole_piece,
    is_within_piece,
    names_needle,
    names_one_yarn,
    names_technique,
    shouted_part,
    shouts,
    small_part,
)
from stepper.project.page.orders import (
    SWATCH,
    casts_on,
    gives_needle_for_part,
    has_row_head,
    holds_instruction,
    holds_strands_together,
    is_for_some_sizes,
    is_order,
    needles_for_part,
    part_given_needle,
    takes_given_needle,
    takes_needle,
    takes_sized_needle,
)
from stepper.project.page.page_lines import PageLines
from stepper.project.page.pieces import DrawnChart, PagePart, Piece, has_key
from stepper.project.page.stops import ENDS, is_broken_at, sentences_of
from stepper.project.page.stretches import names_a_stretch
from stepper.project.pairs import pair_alike
from stepper.project.pattern_heads import (
    as_plain_head,
    heads_pattern,
    is_in_words,
    name_in_head,
    names_shaping_row,
    tells_pattern,
)
from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.asides import label_instructs
from stepper.project.rewording.remarks.chart_reading import reads_otherwise
from stepper.project.rewording.remarks.edge_rules import insets_in
from stepper.project.rewording.remarks.finishing import goes_on_finishing
from stepper.project.rewording.remarks.idle import is_imprint
from stepper.project.rewording.remarks.wishes import orders_instead
from stepper.project.size_blocks import names_sizes
from stepper.project.sizes import names_people, size_called
from stepper.records import dataclass
from stepper.regex import regex

_MOST_EXPLAINED = 3
"""Sentences of an explanation that are tried as one round: what is changed, and how."""
_ASIDE = regex(r"(?:pattern\s+)?notes?$|hints?$|needles?$|gauge$|tension$", re.I)
"""Headings that may come in the middle of a pattern without ending it."""
_SUBHEAD = regex(
    r"(?:(?:shape|shaping|divide|begin|separate|split)\b(?:\s+(?!and\b)[a-z]+){0,4}"
    r"(?:\s+(?:and|&)\s+(?:(?:back|front|v)[\s-]+)?(?:neck(?:line)?|armholes?|shoulders?|sleeves?|raglan))?"
    r"|turn(?:ing)?\s+(?:the\s+)?heel|heel\s+turn(?:ing)?"
    r"|(?:divide|separate|split)\s+for(?:\s+[a-z]+){1,5}|(?:first|second|third|fourth|fifth|final|last)\s+(?:inc|dec)rease"
    r"|(?:(?:v[-\s]neck|first|second|final|sleeve|body|yoke|raglan|waist|bust|hip|crown|hat|top|thumb|gusset|toe|heel|foot|leg|calf|hand|wrist"
    r"|forearm|palm|finger|neck|armhole|shoulder|front|back|side|left|right|shawl|cap)\s+(?:(?:and|&)\s+)?){0,3}"
    r"(?:shapings?|increases|decreases|(?:inc|dec)reas(?:e|ing)\s+(?:rows|rounds|rnds)))\s*[:.]?$",
    re.I,
)
"""Rows that say what follows is for, such as "Shape armholes"."""
_SHAPED = regex(
    r"(?:shape|shaping)\b|(?:[a-z]+\s+(?:(?:and|&)\s+)?){1,4}shaping$"
    r"|(?:separat(?:e|ing|ion)|divid(?:e|ing)|division|split(?:ting)?)\b(?:\s+(?:for|the|of|and|body|sleeves?|fronts?|backs?|yoke|from|to))*$"
    r"|divide\s+(?:for\s+)?(?:the\s+)?(?:v[- ]?neck|neck(?:line|\s+opening)?|armholes?|shoulders?)$",
    re.I,
)
"""Headings of a shaping within a piece: "Shape armholes", "Neck shaping", "Divide for neck"."""
_WORKING = regex(
    r"\b(?:rows?|rnds?|rounds?|sts?|stitches|working|knitting|even(?:ly)?|straight|with|as|rib|pattern"
    r"|patt|until)\b",
    re.I,
)
_NO_NAME = regex(r"\d|\b(?:the|an?|of|are|and|last|first)$", re.I)
"""A number, or an end with which a sentence goes on in the row below: no name of a garment."""
_HEAD_ORDERS = regex(
    r"^(?:repeat|rep|join|pick|cast|bind|place|continue|cont|graft|sew|turn(?!\s+(?:the\s+)?heel)|purl|slip(?!\s+st(?:itch)?\b)|return|transfer"
    r"|hold|break"
    r"|change|increase|decrease|close)\b(?!-)"
    r"|^(?:work|knit|make|begin|divide)\b.*\b(?:in|even|straight|until|for|with|rows?|rounds?|rnds?"
    r"|stitches|sts"
    r"|pattern|rib|other)\b|\bsame\b|\bas\s+(?:for|first|left|right|back|front|the|other)\b|\bto\s+match\b",
    re.I,
)
"""Headings that name a part and also tell the knitter to do something."""
_MOST_LISTED = 20
_MEASURED_ROW = regex(
    r"\W*(?P<size>[A-Za-z\d][\w' /\u2013-]{0,24}?)\s*[:=\u2013\u2014-]\s*"
    r"[\d.,\u00bc\u00bd\u00be]+\s*(?:cm|mm|in|inch(?:es)?|\"|\u2033)"
    r"(?:\s+(?:foot|feet|hand|head|around|long|wide|high|circumference|chest|length))*\W*"
)
"""A size and its measure: "EU 36 - 22.5 cm foot"."""
_SHOE = regex(
    r"(?:EU|US|UK|EUR|shoe|size)\s*\d{1,2}(?:[.,\u00bd]5?)?(?:\s*[-/\u2013]\s*\d{1,2})?|(?:adult|child|bab[a-z]+|wom[ae]n|m[ae]n|teen|toddler)(?:'?s)?\s+(?:x?s|m|x*l|small|medium|large|\d{1,2}(?:\s*[-\u2013]\s*\d{1,2})?(?:\s*(?:years?|months?))?)",
    re.I,
)
"""What a size of shoes or people is called: "EU 38", "Adult Small"."""
_COUNTED_ROW = regex(
    r"\W*(?P<size>[A-Z][A-Za-z' /-]{0,24}(?:\s\d+)?)\s*[:=\u2013\u2014]\s*"
    r"\d+(?:\s*,\s*\d+){2,}(?:\s*(?:sts|stitches))?\.?"
)
"""A size and the counts after each round, to tick off: "Adult Small: 80, 72, 64, 56, 48, 40"."""
_SPAN = r"\d[\d.,\u00bc\u00bd\u00be]*\s*(?:cm|mm|in|inch(?:es)?|\"|\u2033|'')?"
_OFFERED_ROW = regex(
    r"\W*[A-Za-z][A-Za-z' -]{1,30}?\s*,?\s+(?:(?:about|approx\.?|approximately|ca\.?)\s+)?"
    rf"{_SPAN}\s*(?:x|\u00d7|by)\s*{_SPAN}\s*[:=\u2013\u2014-]\s*(?:cast\s+on\s+)?\d+\s*(?:sts|stitches)\s*[,;]\s*"
    r"\d+\s*(?:balls?|skeins?|hanks?|g|m|yds?|yards|metres)\b\.?"
)
"""Another size that a page offers behind its pattern: "Lap throw, about 48 x 60 in: 217 sts, 11 balls"."""
_OFTEN = regex(
    r"\b(?:make|work|knit)\s+(?:[2-9]|\d\d|two|three|four|five|six|both)\b"
    r"|\b(?:\d+|two|both|worked)\s+(?:alike|the\s+same)\b|\btwice\b|[(\[]\s*(?:2|two|both)\s*[)\]]|\bx\s?2\b",
    re.I,
)
_OF_DEFINITION = regex(
    r"\W*(?:rep(?:eat)?|these|this|(?:work|use)\s+these|the\s+(?:above|last|\d+)\s)\b", re.I
)
"""What a sentence behind the rows of a stitch pattern begins with: "Rep rows 1-4 for pattern."."""
_HEAD_OR_ORDER = "this may be a heading, or order something: write what is worked as a sentence."
_ON_CONDITION = regex(r"^\W*(?:(?:only\s+)?if|unless|optional(?:ly)?)\b|\boptional\W*$", re.I)
_CONDITION = "what is below is knitted only by choice: leave it out, or take this row away."
"""Why a heading as "If you want a lace edge" is asked about: its rows look like all others."""
_RULES = " =*~_#"
"""Signs drawn on both sides of a heading."""
_OFTEN_WHY = "this part is knitted more than once, and stands here once."
_FORMS = {
    "d": r"\b(?:dpn|dp\s+needle|double[-\s]?point|d\.p)",
    "m": r"\bmagic\s+loop",
    "s": r"\bstraight\s+needle",
    "c": r"\bcirc(?:ular)?",
}
"""How rows name needles of a form, by its first letter."""
_LISTED = regex(r"[\u2022\u00b7*\u2013\u2014-]\s*\S")
_NOTED = regex(r"^\W*(?:please\s+)?(?:nb|note)\s*(?:that\b|[:.\u2013\u2014-])\s*", re.I)
_VARIED = regex(
    r"\W*(?:(?:some|other|possible|design|pattern)\s+)?(?:variations|modifications|adaptations|alternatives|mods|troubleshooting|change\s?-?log|(?:notes\s*/\s*)?faqs?"
    r"|frequently\s+asked\s+questions)\W*",
    re.I,
)
"""What heads things that a page only offers behind the knitting, or tells of itself."""
_STITCH_STOP = regex(r"\b[kp]\.$", re.I)
"""The full stop after an abbreviated stitch, as in "K. 132": at the end of a row it ends no sentence."""
_PAGE_NUMBER = regex(
    r"(?:(?<=\w)|^)\W*+\b(?:page\s*|p\.\s*)?\d+(?:\s*(?:of|/)\s*\d+)?\W*$|^\W*(?:page\s*)?\d+\W+", re.I
)


@dataclass(slots=True, kw_only=True)
class Sorter:
    """Reads the rows once and sorts each."""

    lines: PageLines
    front: list[Piece] = field(default_factory=list)
    parts: list[PagePart] = field(default_factory=list)
    grids: Mapping[int, GridChart] = field(default_factory=dict)
    """The charts that the page draws by signs, by the row each begins with; `lines` has empty rows there."""
    charts: list[DrawnChart] = field(default_factory=list)
    last_cast_on: int = -1
    """Last row that casts on, from 0; -1 if none does."""
    title: str = ""
    """The row that names the garment; empty if none does."""
    stopped: bool = False
    """Whether the sentences of the page end in full stops."""
    mode: str = "front"
    """`front`, `work` or `chart`."""
    context: str = ""
    """Kind of the heading above the front matter; empty if there is none."""
    begun: bool = False
    """Whether that heading has any text below it yet."""
    said_chart: str = ""
    """The chart whose rounds the rows in hand tell in words; empty if they are rows of their own."""
    apart: bool = False
    """Whether an empty row separates that text from what comes next."""

    def sort(self) -> None:
        """Sort all rows."""
        rows = self.lines.rows
        casting = (at for at in range(len(rows) - 1, -1, -1) if any(map(casts_on, sentences_of(rows[at]))))
        self.last_cast_on = next(casting, -1)
        self.stopped = ends_in_stops(rows)
        at = 0
        while at < len(rows):
            if at in self.grids:
                at = self._draw(self.grids[at])
            elif self.lines.rows[at]:
                at = self._take(at)
            else:
                self.apart = self.begun
                at += 1

    def _draw(self, grid: GridChart) -> int:
        """Take a chart drawn by signs; return the row behind it. One that is not whole gets one mark."""
        for row, words in grid.printed:
            self.pieces.append(Piece(kind="comment", text=words, row=row + 1, front="chart"))
        if grid.why:
            told = next(at for at in range(len(self.pieces)) if self.pieces[at].row == grid.printed[0][0] + 1)
            row, words = grid.printed[0]
            self.pieces[told] = Piece(kind="note", text=words, row=row + 1, why=grid.why)
        else:
            alone = len(self.grids) == 1
            name = grid.name or (ONLY_CHART if alone else f"row {grid.first + 1}")
            self.charts.append(DrawnChart(name=name, key=list(grid.key), rows=list(grid.rows)))
        self.mode = ("work" if self._knits else "front") if self.mode == "chart" else self.mode
        return grid.last

    @property
    def pieces(self) -> list[Piece]:
        """The pieces of the current part, or those before the first part."""
        return self.parts[-1].pieces if self.parts else self.front

    @property
    def _knits(self) -> bool:
        """Whether knitting has begun: a pattern that is only defined is no beginning."""
        return any(not part.defines for part in self.parts)

    @property
    def _defines(self) -> bool:
        """Whether the current part is only a stitch pattern that stands before the garment."""
        return bool(self.parts) and self.parts[-1].defines

    @staticmethod
    def _goes_on_defining(row: str) -> bool:
        """Return whether a row below a pattern that is only defined belongs to it: a row or a repeat."""
        return has_row_head(row) or bool(_OF_DEFINITION.match(row))

    def _defines_again(self, at: int) -> bool:
        """Return whether a row right below words told among the rows of a pattern is its next row."""
        below = self.lines.rows[at] if at < len(self.lines.rows) else ""
        return bool(self.lines.rows[at - 1]) and has_row_head(below) and not heads_pattern("Chart A", below)

    def _take(self, at: int) -> int:
        """Sort a row, with those that continue it; return the next row."""
        row = self.lines.rows[at]
        heading = self._heading_at(at)
        if self._is_title(at, heading):
            self.title = row
            self._comment(row, at, "title")
        elif (explained := self._explained(at)) > at:
            return explained
        elif heads_pattern(row, self._first_below(at), knits=self._knits):
            return self._head_pattern(at)
        elif not self._knits and tells_pattern(row) and self.lines.read(row) is not None:
            self._open("stitch pattern", defines=True)
            return self._content(at)
        elif self._tells_shaping_row(at):
            if not self._defines:
                self._open("explanations", defines=True)
            self.mode = "work"
            return self._content(at)
        elif self.mode == "work" and is_told_below(row) and heads_pattern("Chart A", self._below(at)):
            self._comment(row, at, "heading")  # those rows are worked
        elif is_in_words(row) and self.pieces and heads_pattern(self.pieces[-1].text, self._below(at)):
            self._comment(row, at, "heading")
        elif (offered := self._varied(at)) > at:
            return offered
        elif heading is not None and self._is_heading(heading, at):
            return self._head(heading, at)
        elif self.mode == "chart" and self.charts[-1].take(row):
            self._comment(row, at, "chart")
        elif shouts(row):
            self._tell_heading(row, at)
        elif self._is_of_the_page(at):
            self._comment(row, at, kind_of(row) if is_clutter(row) else "page")
        elif self.mode == "front" and self._heads_front_by_shape(at):
            self.mode, self.context, self.begun, self.apart = "front", self._context_below(at), False, False
            self._comment(row, at, self.context or "notes of the designer")
        elif self.mode == "work" and (listed := self._listed(at)):
            for row_at in range(at, at + listed):
                self._comment(self.lines.rows[row_at], row_at, "finished measurements")
            return at + listed
        elif self._is_headed_by_shape(at):
            if casts_on(self._below(at)):
                self._open(row.strip(" :").lower(), heading=row)
            self._tell_heading(row, at)
        elif self._may_head(at):
            self.pieces.append(Piece(kind="note", text=row, row=at + 1, why=_HEAD_OR_ORDER))
        else:
            if self.mode == "chart":
                self.mode = "work" if self._knits else "front"
            aside = self.mode == "work" and self._defines and not self._goes_on_defining(row)
            if aside:
                self.mode, self.context = "front", ""
            after = self._content(at) if self.mode == "work" else self._front(at)
            if aside and self.mode == "front" and self._defines_again(after):
                self.mode = "work"
            return after
        return at + 1

    # --- headings ---

    def _heading_at(self, at: int) -> Heading | None:
        """Return what a row heads, by itself or by the rows around it; None if it is an ordinary row."""
        row = self.lines.rows[at]
        heading = None if is_clutter(row) and self.mode != "chart" else heading_of(row)
        if heading is None and any(self.lines.rows[:at]):
            above = self.lines.rows[at - 1]
            heading = shouted_part(row, self._below(at)) or small_part(row, above, self._below(at))
        if heading is None and self.mode == "work" and self._knits:
            heading = fabric_part(row, self._below(at))
        return heading

    def _heads_a_piece(self, heading: Heading, at: int) -> bool:
        """Return whether a heading is of a whole piece and the next, right below it, of a part of that."""
        below = next((row for row in range(at + 1, len(self.lines.rows)) if self.lines.rows[row]), None)
        found = self._heading_at(below) if below is not None and is_whole_piece(heading.name) else None
        within = found is not None and found.kind == "part" and is_within_piece(found.name)
        return within and below is not None and self._work_follows(below + 1)

    def _piece_of(self, name: str, row: str) -> str:
        """Return the piece of which a heading is a part: one right above it, or in larger letters."""
        last = self.parts[-1] if self.parts and self.mode == "work" else None
        if last is None or not is_within_piece(name):
            return ""
        if last.piece:
            return last.piece if _is_shouted(row) == _is_shouted(last.heading) else ""
        bare = all(piece.kind == "comment" or _OFTEN.search(piece.text) for piece in last.pieces)
        smaller = _is_shouted(last.heading) and not _is_shouted(row)
        return last.name if is_whole_piece(last.name) and (bare or smaller) else ""

    def _explained(self, at: int) -> int:
        """Take a row with the round explained below it, "DECREASE TIP:"; return the next row, or this one.

        It is one line of the file, which names the round; nothing is worked there.
        """
        rows = self.lines.rows
        if not names_technique(rows[at]) or not self._below(at):
            return at
        begin = rows.index(self._below(at), at + 1)
        end = begin + self.lines.run_on(begin)
        sentences = sentences_of(" ".join(rows[begin:end]))
        for taken in range(1, min(len(sentences), _MOST_EXPLAINED) + 1):
            text = " ".join([rows[at], *sentences[:taken]])
            line = self.lines.read(text)
            if line is None or not is_explained(line.label or "", rows[at]):
                continue
            before = self.mode, self.context
            if self.mode != "work" or self._defines:
                self._open("explanations", defines=True)
            self.pieces.append(Piece(kind="line", text=text, row=at + 1, line=line))
            if sentences[taken:]:
                self.pieces.extend(self.lines.by_sentence(" ".join(sentences[taken:]), begin + 1))
            self.mode, self.context = before
            return end
        return at

    def _tells_shaping_row(self, at: int) -> bool:
        """Return whether a row in front of the pattern tells a row of increases or decreases by its name.

        Nothing is on the needles there, so that it is worked where a line below calls it, and not here.
        """
        row = self.lines.rows[at]
        if self._knits or self.mode == "chart" or at >= self.last_cast_on or not names_shaping_row(row):
            return False
        return not is_soft(self.context) and self.lines.joined(at)[1] is not None

    def _is_title(self, at: int, heading: Heading | None) -> bool:
        """Return whether a row is the first of the text and names the garment."""
        row = self.lines.rows[at]
        if any(self.lines.rows[:at]) or is_clutter(row):
            return False
        if heading is None:
            named = kind_of(row) in ("notes of the designer", "yarn", "finished measurements")
            short = len(row) <= 60 and not row.endswith(".") and not _NO_NAME.search(row)
            below = self.lines.rows[at + 1] if at + 1 < len(self.lines.rows) else ""
            return named and short and not holds_instruction(f"{row} {below}")
        below = next((row for row in self.lines.rows[at + 1 :] if row), "")
        begins = below and heading_of(below) is None and self._begins_in(below)
        if begins and at + 1 < self.last_cast_on and not self.lines.rows[at + 1]:
            # Talk of knitting below the title begins nothing: the page casts on further down.
            sentences = [below, *sentences_of(below)]
            begins = any(
                self.lines.is_worked(each) or casts_on(each) or has_row_head(each) for each in sentences
            )
        return heading.kind == "part" and not begins and not _HEAD_ORDERS.search(heading.name)

    def _begins_in(self, row: str) -> bool:
        """Return whether knitting begins in a row."""
        return self.lines.is_worked(row) or any(
            self.lines.is_worked(sentence) or (holds_instruction(sentence) and not kind_of(sentence))
            for sentence in sentences_of(row)
        )

    def _is_heading(self, heading: Heading, at: int) -> bool:
        """Return whether a row that looks like a heading is one, and not a line of the pattern."""
        row = self.lines.rows[at]
        if heading.kind == "chart":
            below = next((row for row in self.lines.rows[at + 1 :] if row), "")
            return has_key(below)
        if heading.kind == "front":
            return self.mode != "work" or not heading.rest or bool(kind_of(row, kind_under(heading)))
        if _is_often(heading):
            return True
        return not self.lines.is_worked(row) and not (self.mode == "work" and self._goes_on_from_above(at))

    def _goes_on_from_above(self, at: int) -> bool:
        """Return whether a row that could be a heading is the rest of a sentence: "and set / panel thus:"."""
        above = self.lines.rows[at - 1] if at else ""
        return bool(above) and self.lines.rows[at][:1].islower() and not above.endswith(ENDS) and " " in above

    def _head(self, heading: Heading, at: int) -> int:
        row, self.said_chart = self.lines.rows[at], ""
        if heading.kind == "front":
            return self._head_front(heading, at)
        if heading.kind == "chart":
            self.charts.append(DrawnChart(name=heading.name))
            self.mode = "chart"
            self._comment(row, at, "chart")
            return at + 1
        if self.mode == "work" and self.parts and _SHAPED.match(heading.name):
            pass  # what is shaped goes on with the fabric and the lengths of its piece
        elif self._knits or self._work_follows(at + 1) or self._heads_a_piece(heading, at):
            piece = self._piece_of(heading.name, row)
            self._open(heading.name, heading.aside, piece=piece, heading=row)
        else:
            self.mode, self.context = "front", ""
        often, yarn, needle = _is_often(heading), names_one_yarn(row), names_needle(heading)
        bare = row.strip(_RULES) if often else row
        made = self.lines.read(bare) if (often or yarn or needle) and self.mode == "work" else None
        if made is not None:
            self.pieces.append(Piece(kind="line", text=bare, row=at + 1, line=made))
        elif often or yarn or (_HEAD_ORDERS.search(heading.name) and not self._names_a_shaping(at)):
            why = _OFTEN_WHY if often else self.lines.why(row)
            self.pieces.append(Piece(kind="note", text=row, row=at + 1, why=why))
        else:
            self._tell_heading(row, at)
        return at + 1

    def _tell_heading(self, row: str, at: int) -> None:
        """Keep a heading as a comment, or ask about it if what is below is knitted on a condition."""
        if self.mode == "work" and _ON_CONDITION.search(row) and self._work_follows(at + 1):
            self.pieces.append(Piece(kind="note", text=row, row=at + 1, why=_CONDITION))
        else:
            self._comment(row, at, "heading")

    def _names_a_shaping(self, at: int) -> bool:
        """Return whether a row only says what those below are for."""
        return names_a_shaping(self.lines.rows[at], self._below(at))

    def _below(self, at: int) -> str:
        """Return the next row that is not empty; empty if there is none."""
        return next((row for row in self.lines.rows[at + 1 :] if row), "")

    def _may_head(self, at: int) -> bool:
        """Return whether a row among the rows of the pattern may be a heading, or an order."""
        above = self.lines.rows[at - 1] if at else ""
        knits = self.mode == "work" and self._knits and not self._defines
        return knits and may_head(self.lines.rows[at], self._below(at), apart=not above, stopped=self.stopped)

    def _is_headed_by_shape(self, at: int) -> bool:
        """Return whether a row of the pattern is a heading by how it stands on the page."""
        if self.mode != "work" or self._defines or not self._knits:
            return False
        above = self.lines.rows[at - 1] if at else ""
        last = self.pieces[-1] if self.pieces else None
        apart = (
            not above
            or is_clutter(above)
            or (last is not None and last.front == "heading" and last.text == above)
        )
        if not heads_by_shape(
            self.lines.rows[at],
            above,
            self._below(at),
            apart=apart,
            stopped=self.stopped,
            yarns=self._yarns(),
        ):
            return False
        words = self.lines.words
        finishing, words.finishing = words.finishing, False  # below such a heading any name would be told
        line = self.lines.joined(at)[1]
        words.finishing = finishing
        return line is None or is_only_said(line)

    def _listed(self, at: int) -> int:
        """Return how many rows from this one on are a list to look something up in, one for each size.

        A row alone may be a line of the pattern; of two and more each names a size and gives a measure, or
        counts that come after each other.
        """
        rows = list(takewhile(bool, self.lines.rows[at : at + _MOST_LISTED]))
        offered = len(list(takewhile(_OFFERED_ROW.fullmatch, rows)))
        if offered:
            return offered
        for form in (_MEASURED_ROW, _COUNTED_ROW):
            found = [form.fullmatch(row) for row in rows]
            listed = list(takewhile(lambda match: match is not None and self._is_size(match["size"]), found))
            if len(listed) > 1:
                return len(listed)
        return 0

    def _is_size(self, name: str) -> bool:
        """Return whether a name is one of a size, of the page or of shoes and people."""
        known = size_called(name, self.lines.words.size_names) is not None
        return known or names_people(name) or _SHOE.fullmatch(name.strip()) is not None

    def _heads_front_by_shape(self, at: int) -> bool:
        """Return whether a row between paragraphs of front matter heads the second, whatever it is called."""
        row, above = self.lines.rows[at], self.lines.rows[at - 1] if at else ""
        bare = not re.search(r"[.,;:!?]$", row) and len(row.split()) <= 6 and not kind_of(row)
        named = (bare and not kind_of(row, self.context, apart=True)) or row.isupper()
        shown = heads_by_shape(row, above, self._below(at), apart=True, stopped=True)
        return not above and named and shown and bool(self.lines.rows[at + 1 : at + 2] and self._below(at))

    def _context_below(self, at: int) -> str:
        """Return what the entries below a heading are: abbreviations where most look so, else nothing."""
        below = list(takewhile(bool, dropwhile(lambda row: not row, self.lines.rows[at + 1 :])))
        short = [row for row in below if explains_short_form(row)]
        return "abbreviations" if len(short) > 1 and 2 * len(short) > len(below) else ""

    def _yarns(self) -> frozenset[str]:
        """Return the words, in small letters, that the front matter has where it is about yarn."""
        told = " ".join(piece.text for piece in self.front if piece.front in ("yarn", "materials"))
        return frozenset(re.findall(r"[^\W\d_]{2,}", told.lower()))

    def _first_below(self, at: int) -> str:
        """Return the next row that is not empty and not only "In words:"; empty if there is none."""
        below = (row for row in self.lines.rows[at + 1 :] if row and not is_in_words(row))
        return next(below, "")

    def _varied(self, at: int) -> int:
        """Take what a page offers behind the knitting, below "Variations"; return the next row, or this one.

        It tells how others may be knitted. Where it has rows of its own, it may be a part of this one.
        """
        rows = self.lines.rows
        if not self._knits or not _VARIED.fullmatch(rows[at]) or not self._below(at):
            return at
        end = at + 1
        while end < len(rows) and (not rows[end] or self._heading_at(end) is None):
            if not rows[end] and end > at + 1 and not _LISTED.match(self._below(end)):
                break  # behind an empty row a sentence may be of the pattern again
            end += 1
        if any(has_row_head(row) for row in rows[at + 1 : end]):
            return at
        for row in range(at, end):
            if rows[row]:
                self._comment(rows[row], row, "notes of the designer")
        return end

    def _head_pattern(self, at: int) -> int:
        """Take the heading of a stitch pattern: its rows are lines, of the part in hand or one before all."""
        row = self.lines.rows[at]
        if not self._knits:
            self._open(name_in_head(row), defines=True)
        instructs = label_instructs(as_plain_head(row))  # "(over then 10 sts)": no name of a line
        why = f'"{instructs}" is not understood here.' if instructs else self.lines.why_no_head(row)
        self.pieces.append(Piece(kind="note" if why else "line", text=row, row=at + 1, why=why))
        return at + 1

    def _head_front(self, heading: Heading, at: int) -> int:
        """Take a heading of front matter, with the rest of its row."""
        kind = kind_under(heading)
        if kind == "comments" and not self._knits:
            kind = "notes of the designer"  # readers comment on what is there
        if self._defines or not (self.mode == "work" and _ASIDE.match(heading.name)):
            self.mode, self.context, self.begun, self.apart = "front", kind, False, False
        if not heading.rest:
            self._comment(self.lines.rows[at], at, kind)
            return at + 1
        taken = self._paragraph(at)
        self._name(" ".join(self.lines.rows[at : at + taken]), at, taken, kind)
        return at + taken

    def _open(
        self, name: str, aside: str = "", *, piece: str = "", heading: str = "", defines: bool = False
    ) -> None:
        name = re.sub(r"^the\s+(?=\S)", "", name)  # rows call it by its bare name: "until it matches back"
        self.parts.append(PagePart(name=name, aside=aside, piece=piece, heading=heading, defines=defines))
        self.mode, self.context = "work", ""
        self.lines.words.finishing = False

    def _work_follows(self, at: int) -> bool:
        """Return whether the rows up to the next heading hold anything to knit."""
        rows = self.lines.rows
        while at < len(rows) and (not rows[at] or heading_of(rows[at]) is None):
            if not rows[at]:
                at += 1
                continue
            taken, _ = self.lines.joined(at)
            if self._begins_in(" ".join(rows[at : at + taken])):
                return True
            at += taken
        return False

    # --- front matter ---

    def _is_of_the_page(self, at: int) -> bool:
        """Return whether a row is a page number, an address, a rule, or the title printed again."""
        row = self.lines.rows[at]
        if is_clutter(row):
            broken = at > 0 and is_broken_at(self.lines.rows[at - 1]) and row.isdigit()
            measured = self.mode == "front" and self.context == "finished measurements" and row.isdigit()
            return not (broken and self.mode == "work") and not measured
        return bool(self.title) and _PAGE_NUMBER.sub("", row).lower() == self.title.lower()

    def _comment(self, row: str, at: int, kind: str) -> None:
        self.lines.words.finishing = goes_on_finishing(self.lines.words.finishing, row)
        if kind == "heading" and self.mode == "work" and (line := self._offered(row)) is not None:
            self.pieces.append(Piece(kind="line", text=row, row=at + 1, line=line))
            return
        holds = holds_below(row) if kind == "heading" and self.mode == "work" else ""
        if holds and not re.search(rf"\b{re.escape(holds)}\b", self._below(at)):
            why = f'"{holds}" holds for the lines below, which do not say so.'
            self.pieces.append(Piece(kind="note", text=row, row=at + 1, why=why))
        else:
            self.pieces.append(Piece(kind="comment", text=row, row=at + 1, front=kind))
        self.begun = self.begun or (self.mode == "front" and heading_of(row) is None)

    def _offered(self, row: str) -> Line | None:
        """Return the heading of a part that may be left out as a line that tells so; None if it is none."""
        line = self.lines.read(row) if re.search(r"\boptional\b", row, re.I) else None
        return line if line is not None and is_only_said(line) else None

    def _paragraph(self, at: int) -> int:
        """Count the rows of a paragraph of front matter; entries of a list are separate."""
        most, rows = self.lines.run_on(at), self.lines.rows
        for taken in range(1, most):
            row, below = rows[at + taken - 1], rows[at + taken]
            entry = below[0].isdigit() or means_something(below, self.context)
            goes_on = ";" in row and not row.endswith((";", "."))  # a running list of abbreviations
            if not entry or goes_on or is_broken_at(row) or row.endswith("="):
                continue
            before = sentences_of(" ".join(rows[at : at + taken]))
            kinds = [kind_of(sentence, self.context) for sentence in before]
            following = kind_of(below, self.context)
            ended = kinds[-1] == "gauge" and not following  # a count below a gauge is not part of it
            if all(kinds) and (ended or following not in ("", "notes of the designer")):
                return taken
        return most

    def _front(self, at: int) -> int:
        """Take a paragraph of front matter, up to where knitting begins in it; return the next row."""
        self.lines.words.finishing = False
        if self._explains_stitch(at):
            self._name(self.lines.rows[at], at, 1, "abbreviations")
            return at + 1
        taken = self._paragraph(at)
        text = " ".join(self.lines.rows[at : at + taken])
        part = inline_part(text)
        if part and self._begins_in(text):
            self._open(part)
            return at
        sentences = sentences_of(text)
        begun = (number for number, each in enumerate(sentences) if self._begins(each, at + taken))
        opening = next(begun, None)
        if opening is None:
            self._name(text, at, taken, self.context)
            return at + taken
        if opening:
            self._name(" ".join(sentences[:opening]), at, taken, self.context)
        if not self._knits:
            self._open("beginning")
        self.mode = "work"
        if not opening:
            return at
        self.pieces.extend(self.lines.by_sentence(" ".join(sentences[opening:]), at + 1))
        return at + taken

    def _explains_stitch(self, at: int) -> bool:
        """Return whether a row above the cast-on is the meaning of a short form, under no heading of a list.

        "C6: slip 3 sts to cn, k3, k3 from cn" is worked where a row says C6, and nowhere else.
        """
        row = self.lines.rows[at]
        told = not self._knits and row.endswith((".", ";")) and explains_short_form(row)
        entries = entries_of(row) if told else []
        return bool(entries) and all(one.read for one in entries)

    def _begins(self, sentence: str, after: int) -> bool:
        """Return whether knitting begins, or goes on, at a sentence in the front matter."""
        if self.context == "comments" or kind_of(sentence, self.context, apart=self.apart):
            return False
        worked = self.lines.is_worked(sentence)
        casts = casts_on(sentence) or (worked and bool(re.search(r"\b(?:cast\s+on|co)\s+\d", sentence, re.I)))
        free = is_soft(self.context) or self.apart
        if casts:
            return (free or worked) and not (self.context == "gauge" and SWATCH.search(sentence))
        if not free or self.context in ("stitch patterns", "abbreviations"):
            return False
        if worked and self._is_torn_off():
            return True
        if self._knits:
            return holds_instruction(sentence)
        return after > self.last_cast_on and (worked or is_order(sentence))

    def _is_torn_off(self) -> bool:
        """Return whether the page begins in the middle of a part: all in front of this may be worked."""
        torn = all(piece.kind == "note" or piece.front == "title" for piece in self.front)
        return torn and not self._knits and not self._defines

    def _takes_needle(self, given: str, after: int) -> bool:
        """Return whether a row from here on takes the needle that is given to a part.

        Below the heading of that part, if it has one: the needle of the rest says nothing of its bands.
        """
        rows, part = self.lines.rows[after:], part_given_needle(given)
        heads = [at for at, row in enumerate(rows) if heading_of(row) is not None]
        for at in heads:
            if re.search(rf"(?:\b|neck|button|front|head){re.escape(part)}(?:ing)?s?\b", rows[at], re.I):
                end = next((other for other in heads if other > at), len(rows))
                if not any(map(takes_sized_needle, rows[at:end])):
                    return False
        if not any(takes_given_needle(row, given) for row in rows):
            return False  # the lines take the needle of the body alone: "With the circular, pick up 80 sts"
        return any(takes_needle(one) for row in rows for one in sentences_of(row))

    def _prints_one_of(self, piece: str, after: int) -> bool:
        """Return whether the rows from here on head one of a pair that is alike, and tell of no other."""
        rows = self.lines.rows[after:]
        heads = [found for found in map(heading_of, rows) if found is not None and found.kind == "part"]
        named = {found.name for found in heads if re.search(rf"\b{piece}(?:s|es)?\b", found.name)}
        made = any(found.aside or found.name.endswith("s") for found in heads if found.name in named)
        other = rf"\bmake\s+(?:2|two)\b|\b(?:second|other|another|left|right)\s+{piece}\b"
        return bool(piece) and len(named) < 2 and not made and not re.search(other, " ".join(rows), re.I)

    def _name(self, text: str, at: int, taken: int, context: str) -> None:
        """Sort a paragraph of front matter by kind; put what has none under a mark."""
        sentences = sentences_of(text)
        kinds = [kind_of(sentence, context, apart=self.apart) for sentence in sentences]
        if not self._knits and at < self.last_cast_on:
            kinds = [
                kind or ("notes of the designer" if describes(one) else "")
                for kind, one in zip(kinds, sentences, strict=True)
            ]
        if not self._knits:
            kinds = [
                kind or ("notes of the designer" if self._only_tells(one) else "")
                for kind, one in zip(kinds, sentences, strict=True)
            ]
        if not self._knits:
            kinds = [
                "" if gives_needle_for_part(one) and not self._takes_needle(one, at + taken) else kind
                for kind, one in zip(kinds, sentences, strict=True)
            ]
        if not self._knits:
            kinds = [
                "" if self._prints_one_of(pair_alike(one), at + taken) else kind
                for kind, one in zip(kinds, sentences, strict=True)
            ]
        if not self._knits and (form := next(filter(None, map(needles_for_part, sentences)), "")):
            below = " ".join(self.lines.rows[at + taken :]).lower()
            if not re.search(_FORMS[form], below):
                kinds = [
                    "" if needles_for_part(one) else kind for kind, one in zip(kinds, sentences, strict=True)
                ]
        for number, (one, other) in enumerate(pairwise(sentences)):
            if one.endswith("?") and orders_instead(made_plain(f"{one} {other}").rstrip(".! ")):
                kinds[number : number + 2] = "", ""
        if self._is_unended(at) and (kinds[0] == "notes of the designer" or not text[0].isupper()):
            kinds[0] = ""
        self.begun = True
        rows = self.lines.rows[at : at + taken]
        self.pieces.extend(front_pieces(sentences, kinds, rows, at + 1))

    def _only_tells(self, sentence: str) -> bool:
        """Return whether a sentence of the front would only be told among the lines, and orders nothing."""
        ordering = (
            is_order,
            holds_strands_together,
            is_for_some_sizes,
            reads_otherwise,
            needles_for_part,
            gives_needle_for_part,
        )
        if any(orders(sentence) for orders in ordering):
            return False
        if insets_in((made_plain(sentence),)):
            return False
        bare = _NOTED.sub("", sentence)  # behind "Note:" anything would be told
        line = self.lines.read(bare[:1].upper() + bare[1:])
        return line is not None and is_only_said(line)

    def _is_unended(self, at: int) -> bool:
        """Return whether the row above is under a mark, and its sentence is unfinished."""
        above = self.lines.rows[at - 1] if at else ""
        last = self.pieces[-1] if above and self.pieces else None
        if last is None or last.kind != "note":
            return False
        return last.text.endswith(above) and (not above.endswith(ENDS) or bool(_STITCH_STOP.search(above)))

    # --- the pattern ---

    def _content(self, at: int) -> int:
        """Take a row of the pattern, with those that continue it; return the next row."""
        row = self.lines.rows[at]
        if names_sizes(row, self.lines.words.size_names, self.lines.rows[at + 1 :]):
            # "Sizes S, M only:" is for all lines up to the next such row, and joins none of them.
            self.pieces.append(Piece(kind="line", text=row, row=at + 1))
            return at + 1
        in_words = chart_in_words(row)
        if in_words or (self.said_chart and re.match(r"\W*(?:rnds?|rounds?|rows?)\s+\d", row, re.I)):
            # The rounds of a chart in words are worked where the chart is called, not once more here.
            self.said_chart = in_words or self.said_chart
            why = f"this says chart {self.said_chart} in words, and is not worked a second time here."
            self.pieces.append(Piece(kind="note", text=row, row=at + 1, why=why))
            return at + 1
        self.said_chart = ""
        taken = self.lines.run_on(at)
        text = " ".join(self.lines.rows[at : at + taken])
        if all(_is_of_leaflet(sentence) for sentence in sentences_of(text)):
            self._comment(text, at, "copyright")
            return at + taken
        part = inline_part(row, self.parts[-1].pieces[0].text if self.parts and self.parts[-1].pieces else "")
        fresh = not self.parts or self.parts[-1].name != part or bool(self.pieces)
        worked = self.lines.joined(at)[1] is not None or self._begins_in(row) or begins_work(row)
        if part and fresh and worked:
            self._open(part)
        taken, line = self.lines.joined(at)
        if line is None and self._names_a_shaping(at):
            self._comment(row, at, "heading")
            return at + 1
        text = " ".join(self.lines.rows[at : at + taken])
        if line is not None:
            self.pieces.append(Piece(kind="line", text=text, row=at + 1, line=line))
            return at + taken
        taken = self.lines.run_on(at)
        text = " ".join(self.lines.rows[at : at + taken])
        self.pieces.extend(self.lines.by_sentence(text, at + 1))
        return at + taken


def _is_of_leaflet(sentence: str) -> bool:
    """Return whether a sentence is about the page itself: who may use it, where to write to."""
    return is_imprint(made_plain(sentence)) or kind_of(sentence) in ("copyright", "page")


_COUNTED = regex(
    r"^(?:(?:begin|start)\s+(?:(?:the|crown|top|toe|sleeve|raglan|yoke)\s+){0,2})?"
    r"(?:inc|dec)reas(?:e|ing)\s+(?:rows|rounds|rnds)\s*:?$",
    re.I,
)


def _is_shouted(row: str) -> bool:
    """Return whether a heading is in capitals, what stands in brackets behind it aside."""
    return re.sub(r"[(\[].*", "", row).isupper()


def _is_often(heading: Heading) -> bool:
    """Return whether a heading says that its part is made more than once: "Sleeves (two)"."""
    return bool(_OFTEN.search(f"({heading.aside})"))


def names_a_shaping(row: str, below: str = "") -> bool:
    """Return whether a row only says what those below are for: "Crown shaping", "Decrease rounds:".

    Args:
        row: The row.
        below: The next row that is not empty; empty if there is none, or it is not known.
    """
    if names_a_stretch(row, below):
        return True
    return bool(_SUBHEAD.match(row)) and (not _WORKING.search(row) or bool(_COUNTED.match(row)))
