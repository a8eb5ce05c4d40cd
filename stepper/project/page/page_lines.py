"""Read the rows of a printed page as lines of the pattern. No I/O."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import field, replace
from itertools import islice

from stepper.project.draft import FileDraft
from stepper.project.instructions import Line, Phrase
from stepper.project.lines import label_of_head, read_rows
from stepper.project.marks.mark_references import plain_reference
from stepper.project.marks.part_marks import without_marks
from stepper.project.own_stitches.abbreviations import Abbreviations
from stepper.project.own_stitches.yarn_letters import put_yarns
from stepper.project.page.orders import SWATCH, casts_on
from stepper.project.page.pieces import Piece, works
from stepper.project.page.stops import ENDS, begins_row, goes_on, sentences_of, stands_in_stops
from stepper.project.pattern_heads import as_first_row, heads_pattern, is_in_words
from stepper.project.problems import Span
from stepper.project.reading.clauses import clauses_of
from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import Words, read_line, reads
from stepper.project.size_heads import cut_at_sizes
from stepper.project.sizes import begun_by_size, is_for_some
from stepper.project.stripes.stripe_sequences import StripeSequences
from stepper.records import dataclass
from stepper.regex import regex

_AGAIN = regex(r"rep(?:eat)?\.?\s+from\s+\*", re.I)
_MOST_ROWS = 8
"""Most rows of a page that one sentence may span."""
_LONGEST = 1000
"""Most letters of two sentences that are read together."""
_CLAUSE = regex(r"\s*[,;]\s+|\s+(?=and\s)")
_MOST_CLAUSES = 24
"""A cast-on ends within so many commas, a list of nine sizes among them; a row may be thousands long."""
_STITCHES = regex(r"\bst(?:itche)?s\b", re.I)
_PLACE = Span(line=1, column=1)
_BELOW_OR_BACK = regex(r"(?<!\w)[kp]\s?1\s?b(?!\w)", re.I)
"""A stitch in the row below, or into the back loop, or in yarn B: pages print all three so.

Source: common practice.
"""
_YARN_B = regex(
    r"^\W*B\s*(?:[:=\u2013-]|\()|\b(?i:with|in|yarns?|colou?rs?|shades?|wool|using|join|break|drop|to|and|or)\s+B(?![\w'.-]*\w)|\d\s+B(?!\w)"
)
_WHICH_B = (
    '"{}" may be a stitch in the row below or one into the back loop, and the page does not say which. Write '
    "k1b for below, k1 tbl for the back loop, or explain it under abbreviations."
)
_STOPS = "full stops stand between the stitches of this row; it is not clear where each sentence ends."


@dataclass(frozen=True, slots=True, kw_only=True)
class PageLines:
    """The rows of a page, and the words that its lines may use."""

    rows: Sequence[str]
    words: Words
    stars: bool = False
    """Whether a single star that stands alone marks what another row works again."""
    abbreviations: Abbreviations = field(default_factory=Abbreviations)
    """Those that the page explains."""
    stripes: StripeSequences = field(default_factory=StripeSequences)
    """The stripe sequences that the page defines."""

    def read(self, text: str) -> Line | None:
        """Read a stretch of text as one line of the pattern; None if it is not one."""
        if text.endswith((",", ";", "-", "(", "[")) or text.startswith("#"):
            return None  # in the file such a row would take in the next one, or be a comment
        again = plain_reference(text)
        if again is not None:
            line = read_rows([(again.text, _PLACE)], self.words, FileDraft(text_lines=[])).line
            return replace(line, text=text) if line is not None else None
        if len(cut_at_sizes(text, self.words.size_names)) > 1:
            return None  # in the file each would be a row
        pieces, _ = without_marks((text, _PLACE), stars=self.stars)
        if len(pieces) != 1:
            return None  # in the file each piece would be a row
        ((printed, _),) = pieces
        lettered = put_yarns(made_plain(printed), self.words.letters)
        if lettered is not None:
            line = read_rows([(lettered.text, _PLACE)], self.words, FileDraft(text_lines=[])).line
            return replace(line, text=printed) if line is not None else None
        used = self.abbreviations.used(printed)
        if any(one.meaning is None and not one.usual for one in used):
            return None
        if self._in_doubt(printed):
            return None
        called = self.stripes.call(made_plain(printed), _PLACE)
        plain = (called.reworded.text or f"Note: {printed}") if called is not None else printed
        text = self.abbreviations.put(plain).text
        if not reads(text, self.words.size_names, finishing=self.words.finishing):
            return None
        line = read_rows([(text, _PLACE)], self.words, FileDraft(text_lines=[])).line
        if line is not None and stands_in_stops(text) and _phrases(line) > 1:
            return None  # each would be worked as a separate round
        if line is not None and _says_too_early(line, printed):
            return None  # in the file each sentence is a row, told where it is worked
        if line is None or not (used or called):
            return line
        return replace(line, text=printed, stripes=called.stripes if called is not None else None)

    def _in_doubt(self, text: str) -> str:
        """Return the first stitch of a row that pages print for several, if this one says nothing of it."""
        found = _BELOW_OR_BACK.search(text)
        if found is None or self.abbreviations.explains(found.group()):
            return ""
        upper = found.group().endswith("B")
        return "" if upper and any(map(_YARN_B.search, self.rows)) else found.group()

    def why_no_head(self, row: str) -> str:
        """Return why the name of a stitch pattern is not read in the file, before any row; empty if it is."""
        problems = read_line(f"{label_of_head(row)}: knit to end.", lambda *_: _PLACE, self.words).problems
        return problems[0].message if problems else ""

    def is_worked(self, text: str) -> bool:
        """Return whether a stretch of text reads as a line that works stitches."""
        line = self.read(text)
        return line is not None and works(line)

    def goes_on(self, at: int) -> bool:
        """Return whether the row after this one continues its sentence. `at`: a row, from 0."""
        return at + 1 < len(self.rows) and goes_on(self.rows[at], self.rows[at + 1])

    def run_on(self, at: int) -> int:
        """Count the rows from this one to the end of its sentence."""
        taken = 1
        while self.goes_on(at + taken - 1) and taken < 4 * _MOST_ROWS:
            taken += 1
        return taken

    def joined(self, at: int) -> tuple[int, Line | None]:
        """Read a row together with those that continue it, as many as make a line.

        Returns:
            How many rows are taken, and the line; one row and None if no line begins here.
        """
        most = 1
        while most < _MOST_ROWS and self.goes_on(at + most - 1):
            most += 1
        for taken in range(most, 0, -1):
            if taken < most and stands_in_stops(" ".join(self.rows[at : at + most])):
                break  # the row of stitches would be cut in two
            if taken < most and not self.rows[at + taken - 1].endswith(ENDS):
                break  # the row below goes on with the sentence: "Rep last 2 rows 3 times" / "more"
            line = self.read(self._text(at, taken))
            if line is not None:
                return taken, line
        return self._broken_anywhere(at)

    def _text(self, at: int, taken: int) -> str:
        """Join rows; the only row of a pattern whose name stands above it, "All rows:", is its first."""
        text = " ".join(self.rows[at : at + taken])
        before = reversed(self.rows[max(0, at - 3) : at])
        above = next((row for row in before if row and not is_in_words(row)), "")
        return as_first_row(text) if heads_pattern(above, text) else text

    def _broken_anywhere(self, at: int) -> tuple[int, Line | None]:
        """Read a row that does not end its sentence together with those below it, however they begin."""
        for taken in range(2, _MOST_ROWS + 1):
            rows = self.rows[at : at + taken]
            if len(rows) < taken or not all(rows) or rows[-2].endswith(ENDS) or begins_row(rows[-1]):
                break
            line = self.read(" ".join(rows))
            if line is not None:
                return taken, line
        return 1, None

    def by_sentence(self, text: str, row: int) -> list[Piece]:
        """Split text that cannot be read as a whole into sentences; adjacent unreadable ones stay together.

        Args:
            text: The text.
            row: Row of the page where it begins, from 1.
        """
        cut = cut_at_sizes(text, self.words.size_names)
        if len(cut) > 1:
            return [piece for start, end in cut for piece in self._whole_or_by_sentence(text[start:end], row)]
        head, colon, _ = text.partition(":")
        if is_for_some(text) or (colon and begun_by_size(head, self.words.size_names)):
            return [Piece(kind="note", text=text, row=row, why=self.why(text))]
        pieces: list[Piece] = []
        sentences = self._starred_joined(sentences_of(text))
        before = ""
        for whole in sentences:
            sentence, line = whole, self.read(whole) if len(sentences) > 1 else None
            clauses = self._clauses_of(whole, row) if line is None else []
            if clauses:
                pieces += clauses
                continue
            if line is None:
                cast, sentence = self._cast_on_of(whole, row)
                pieces += cast
            if line is not None:
                pieces.append(Piece(kind="line", text=sentence, row=row, line=line))
            elif pieces and pieces[-1].kind == "note":
                pieces += self._with_next(pieces.pop(), before, sentence)
            else:
                pieces.append(Piece(kind="note", text=sentence, row=row, why=self.why(sentence)))
            before = sentence
        return pieces

    def _with_next(self, note: Piece, before: str, sentence: str) -> list[Piece]:
        """Put a sentence to the note before it; the two are a line if they read together.

        Args:
            note: What is not read yet.
            before: The last sentence of it.
            sentence: The next one.
        """
        both = f"{before} {sentence}"
        line = self.read(both) if before and note.text.endswith(before) and len(both) < _LONGEST else None
        if line is None:
            return [replace(note, text=f"{note.text} {sentence}")]
        rest = note.text.removesuffix(before).rstrip()
        read = Piece(kind="line", text=both, row=note.row, line=line)
        return [replace(note, text=rest), read] if rest else [read]

    def _whole_or_by_sentence(self, text: str, row: int) -> list[Piece]:
        line = self.read(text)
        return [Piece(kind="line", text=text, row=row, line=line)] if line else self.by_sentence(text, row)

    def _starred_joined(self, sentences: list[str]) -> list[str]:
        """Join what stands between a star and "Rep from * once more.", if it reads as rounds worked again."""
        if not any(_AGAIN.match(one) for one in sentences):
            return sentences
        made: list[str] = []
        for one in sentences:
            made.append(one)
            stars = [at for at, text in enumerate(made[:-1]) if text.lstrip().startswith("*")]
            if stars and _AGAIN.match(one):
                joined = " ".join(made[stars[-1] :])
                made[stars[-1] :] = [joined] if self.read(joined) is not None else made[stars[-1] :]
        return made

    def _clauses_of(self, sentence: str, row: int) -> list[Piece]:
        """Cut a sentence into clauses that are each a line; empty if it is not made of such."""
        texts = [sentence[start:end] for start, end in clauses_of(sentence, self.words.sizes)]
        lines = [self.read(text) for text in texts]
        return [
            Piece(kind="line", text=text, row=row, line=line)
            for text, line in zip(texts, lines, strict=True)
            if line is not None and None not in lines
        ]

    def _cast_on_of(self, sentence: str, row: int) -> tuple[list[Piece], str]:
        """Split off the cast-on that a sentence begins with, if it can be read alone.

        Without it nothing after it would fit; what is not read stays marked, and the file is no plan until
        that is settled.

        Returns:
            The cast-on, at most one piece, and what is left of the sentence.
        """
        if casts_on(sentence) and not SWATCH.search(sentence):
            for clause in islice(_CLAUSE.finditer(sentence), _MOST_CLAUSES):
                text = sentence[: clause.start()]
                line = self.read(text) if _STITCHES.search(text) else None
                if line is not None:
                    return [Piece(kind="line", text=text, row=row, line=line)], sentence[clause.end() :]
        return [], sentence

    def why(self, sentence: str) -> str:
        """Return why a sentence is not read; empty if there is nothing to say."""
        unread = [one for one in self.abbreviations.used(sentence) if not (one.meaning or one.usual)]
        if unread:
            return unread[0].refusal()[0]
        if in_doubt := self._in_doubt(sentence):
            return _WHICH_B.format(in_doubt)
        draft = FileDraft(text_lines=[])
        read_rows([(self.abbreviations.put(sentence).text, _PLACE)], self.words, draft)
        if not draft.problems:
            return _STOPS if stands_in_stops(sentence) else ""
        problem = draft.problems[0]
        hint = problem.hint if problem.hint.startswith("Did you mean") else ""
        return f"{problem.message} {hint}".strip()


def _phrases(line: Line) -> int:
    return sum(isinstance(sentence, Phrase) for sentence in line.sentences)


def _says_too_early(line: Line, text: str) -> bool:
    """Return whether a row works rows and then picks up stitches, and tells how.

    What a line tells is said where the line begins, rows before the stitches are picked up: each sentence
    has to be a line of its own.
    """
    _, *rest = sentences_of(text)
    return bool(line.said) and any(_PICKED.search(each) for each in rest)


_PICKED = regex(r"\bpick\s+up\b", re.I)
