"""Work the sections of a garment in order, and again where a line asks for another part. No I/O."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import field

from stepper.plan.alter import PLAIN_CHART, Altered, size_in
from stepper.plan.checks.fabric_said import check_fabric_said
from stepper.plan.checks.held_left import check_picked_up, note_left_on_hold
from stepper.plan.checks.other_side import check_other_side
from stepper.plan.lines.again.another_part import (
    lines_after_own,
    lines_of,
    part_meant,
    parts_meant,
    times_again,
    with_counts_of_here,
)
from stepper.plan.lines.again.left_uncut import said_at_once, with_yarn_uncut
from stepper.plan.lines.again.other_front import match_other_front, other_front
from stepper.plan.lines.again.other_shaping import shaping_of
from stepper.plan.lines.again.part_names import copy_of, piece_of, sections_of_piece
from stepper.plan.lines.again.rest_of_part import find_rest
from stepper.plan.lines.again.reversed_part import match_other_side, work_reversed
from stepper.plan.lines.again.section_rows import keep_section_rows
from stepper.plan.lines.held.set_apart import leave_waiting
from stepper.plan.lines.line_in_hand import begin_line
from stepper.plan.lines.rows_or_rounds import settle_rows
from stepper.plan.lines.section_lines import blocks, work_block
from stepper.plan.lines.shaping.edges_agree import check_edges
from stepper.plan.lines.short_row_method import turned_in
from stepper.plan.lines.working import work
from stepper.plan.state.needle_and_yarn import go_on_with_needle, goes_on_with_needle, take_needle
from stepper.plan.state.needles import Needles, OpenReachedError, PartReachedError
from stepper.plan.state.size_alone import AloneIn, why_as_wide, why_unmet
from stepper.plan.stitches.row_elements import is_sleeve
from stepper.plan.told_only import WHEN_DONE
from stepper.project.duration import Ended
from stepper.project.instructions import AsPart, Buttonholes, Line
from stepper.project.model import Project, Section, Switch
from stepper.project.problems import Span
from stepper.records import dataclass


@dataclass(slots=True, kw_only=True)
class Course:
    """The way through the sections of a garment."""

    project: Project
    """As the file has it."""
    needles: Needles
    own: Altered | None
    """Its alterations as applied; None for a printed size."""
    switches: dict[str, Switch]
    """Switches of size, by the label of their line."""
    size: int
    """The size in force: place in the list of sizes, from 0."""
    to_come: list[tuple[AsPart, Section]] = field(default_factory=list)
    """Second pieces of the section in hand, worked after its last line."""
    ended: list[tuple[AsPart, int]] = field(default_factory=list)
    """Lines that make the second of a piece of this section that is off the needles, and the rows so far."""
    made: dict[str, AsPart] = field(default_factory=dict)
    """The line that makes the second of a piece, by the name of the piece."""
    alone: AloneIn
    """Returns what each line comes to in a size alone, as the pattern prints it."""
    begun_in: dict[str, int] = field(default_factory=dict)
    """The size in which each section was begun."""

    def work_all(self) -> None:
        """Work every section, or up to the line at which the garment ends for now."""
        try:
            self._work_sections()
        except OpenReachedError:
            return
        self._tell_what_is_left()
        note_left_on_hold(self.needles)

    def _work_sections(self) -> None:
        for section in self.needles.project.sections:
            self._begin(section, section.name)
            self._work(section, section.lines)
            self._refuse_more_behind_second(section)
            keep_section_rows(self.needles)
            if section is not sections_of_piece(section, self.needles.project.sections)[-1]:
                continue  # the second piece comes behind all sections of the first
            made_up = self._take_making_up() if self.to_come else ()
            for instruction, source in self.to_come:
                piece = sections_of_piece(source, self.needles.project.sections)
                with self._called_by(instruction):
                    self._made_again(instruction, piece, section)
            self._tell_making_up(made_up)
            self.to_come = []

    def _take_making_up(self) -> tuple[str, ...]:
        """Take off the last round what is done once it is off the needles: a second piece comes first."""
        if not self.needles.drafts:
            return ()
        last = self.needles.drafts[-1]
        told = tuple(each for each in last.remarks if each.startswith(WHEN_DONE))
        last.remarks = tuple(each for each in last.remarks if each not in told)
        return told

    def _tell_making_up(self, told: tuple[str, ...]) -> None:
        """Tell with the last round of the second piece what was taken off that of the first."""
        if told:
            last = self.needles.drafts[-1]
            more = tuple(each for each in told if each not in last.remarks)
            last.remarks = (*last.remarks, *more)

    def _refuse_more_behind_second(self, section: Section) -> None:
        """Report rows behind a line that makes the second of a finished piece: whose they are is open."""
        needles = self.needles
        for instruction, rows in self.ended:
            if len(needles.drafts) > rows:
                told = f"rows are worked behind the line that makes the second of the {section.name}."
                hint = f"Give line {needles.drafts[rows].line} and those behind it a section of their own."
                needles.report(instruction.place, f"{told} They may be of both, or of neither.", hint)
        self.ended = []

    def _tell_what_is_left(self) -> None:
        """Tell with the last round what is said behind it and no later round is there to say: making up."""
        needles = self.needles
        if needles.remarks and needles.drafts and not needles.reached:
            last = needles.drafts[-1]
            last.remarks = (*last.remarks, *(f"{WHEN_DONE}{each}" for each in needles.remarks))
            needles.remarks = []

    def _begin(self, section: Section, name: str) -> None:
        """Take up a section: its gauge, its needle, its yarn."""
        needles, own = self.needles, self.own
        self.begun_in.setdefault(section.name, self.size)
        project = needles.project
        if any(chart.endswith(PLAIN_CHART) for chart in project.charts):
            # A chart and its copy without bobbles share a name, so what was read of one must not be used for
            # the other.
            needles.caches.drawn, needles.caches.charted = {}, {}
        in_hand = needles.stripes.last if needles.stripes is not None else needles.yarn
        needles.begin_section(name, section.yarn, project.fabrics[section.gauge])
        if needles.count and in_hand and not section.own_yarn and in_hand != section.yarn:
            needles.yarn = in_hand
            called = project.yarns[in_hand].name
            told = f"{section.name} goes on in {called}: nothing names another yarn here."
            needles.warn(section.place, told)
        method = section.short_rows or turned_in(section.lines)
        needles.short_rows.method = method or needles.short_rows.method
        needles.alterations.printed_mm = None
        fabric_needle = needles.fabric.needle_mm
        mine = own.needles.get(section.name) if own is not None else None
        if mine is not None and mine.mm is not None:
            take_needle(mine.mm, section, needles, instead_of=fabric_needle)
            needles.alterations.needle = (mine.rule,)
        elif mine is not None and needles.needle_mm is not None and needles.needle_mm != fabric_needle:
            needles.alterations.needle = (mine.rule,)
        elif goes_on_with_needle(section, needles):
            go_on_with_needle(section, needles)
        elif fabric_needle is not None:
            take_needle(fabric_needle, section, needles)
            needles.alterations.needle = ()

    def _work(self, section: Section, lines: tuple[Line, ...]) -> None:
        """Work lines of a section, in the size in force or the one they switch to."""
        needles = self.needles
        chosen = size_in(self.project, section.name) if self.own is not None else None
        if chosen is not None and lines and not needles.counting.lost:
            size, rule = chosen
            told = why_as_wide(rule, lines[0], size, needles.count, self.alone(size), self.project)
            if told:
                needles.warn(section.place, told)
        for block in blocks(lines):
            if needles.reached:
                return
            self._end_at(block, section)
            switch = self.switches.get((block[0].label or "").lower())
            self.size = switch.size if switch is not None else self.size
            needles.size = chosen[0] if chosen is not None else self.size
            needles.alterations.section = (chosen[1],) if chosen is not None else ()
            needles.alterations.reshape = switch is not None and switch.reshape
            needles.alterations.over = switch.over if switch is not None else 1
            if switch is not None or chosen is not None:
                needles.alterations.blended = self.alone
            if switch is not None and not needles.counting.lost:
                alone, size = self.alone(self.size), self.size
                needles.alterations.unmet = why_unmet(block[0], size, needles.count, alone, self.project)
            if any(isinstance(sentence, AsPart) for line in block for sentence in line.sentences):
                self._work_as(block, section)
            else:
                begin = len(needles.drafts)
                work_block(block, section, needles)
                check_edges(block, needles, begin)
                check_fabric_said(block, needles, begin)
                check_picked_up(block, needles, begin)

    def _end_at(self, block: list[Line], section: Section) -> None:
        """End the garment if it is worked up to one of these lines, in the size in force."""
        self.needles.block_begun = worked = len(self.needles.drafts)
        for line in block:
            end = line.ends if not line.only or self.needles.size in line.only else None
            if end is not None and end.since <= worked:
                self.needles.ends_at = line
                settle_rows(line, section, self.needles)  # a cast-on alone does not say it
                if not end.said:
                    self._close_before()
                raise OpenReachedError

    def _close_before(self) -> None:
        """Report short rows that are open where the garment ends for now, at the last row in front of it."""
        needles = self.needles
        if needles.drafts and (needles.short_rows.gap is not None or needles.short_rows.turns):
            place = Span(line=needles.drafts[-1].line, column=1)
            needles.report(place, "short rows are not closed before a row that is not read.")

    def _work_as(self, block: list[Line], section: Section) -> None:
        """Work a line that works another part again."""
        needles = self.needles
        begin = len(needles.drafts)
        for line in block:
            if line.only and needles.size not in line.only:
                continue
            begin_line(line, needles)
            needles.remarks.extend(said_at_once(line))
            for sentence, after in zip(line.sentences, (*line.sentences[1:], None), strict=True):
                if isinstance(sentence, AsPart):
                    needles.last.unholed = isinstance(after, Buttonholes) and after.none
                    self._as_part(sentence, section, after.side if isinstance(after, Ended) else "")
                else:
                    if isinstance(sentence, Buttonholes):
                        needles.line.start = begin  # they lie in rows of the part
                    work(sentence, needles)

    def _as_part(self, instruction: AsPart, section: Section, ending: str) -> None:
        with self._called_by(instruction):
            self._work_part(instruction, section, ending)

    @contextmanager
    def _called_by(self, instruction: AsPart) -> Iterator[None]:
        """Know which line it is while it works others once more: what does not fit then is open there."""
        needles, outer = self.needles, self.needles.called
        if not outer[0]:
            needles.called = instruction.place.line, len(needles.drafts)
        try:
            yield
        finally:
            needles.called = outer

    def _work_part(self, instruction: AsPart, section: Section, ending: str) -> None:
        needles = self.needles
        if instruction.rest and not instruction.part:
            front = other_front(instruction, section, needles)
            if front:
                match_other_front(instruction, front, section, needles)
            else:
                match_other_side(instruction, needles)
            return
        parts = part_meant(instruction, section, needles)
        if not parts or needles.counting.lost:
            return
        if instruction.shaped:
            shaped = shaping_of(instruction, parts, needles)
            if shaped is not None:
                self._work_again(*shaped, 0)
            return
        if instruction.rest:
            for source, lines in find_rest(instruction, parts, section, needles):
                self._work_again(source, lines, None, 0)
            return
        if parts == (section,) and instruction.from_mark:
            lines = lines_of(instruction, section, needles)
            for _ in range(times_again(instruction, lines, needles) if lines else 0):
                self._work(section, lines)
        elif parts == (section,):
            self.to_come.append((instruction, section))  # "Make 2." may stand before its lines
            if not needles.count and len(needles.drafts) > needles.section.start:
                self.ended.append((instruction, len(needles.drafts)))
        elif section in parts:
            self._made_again(instruction, parts, section)
            self.ended.append((instruction, len(needles.drafts)))
        else:
            self._again(instruction, parts_meant(instruction, parts, needles, ending))

    def _made_again(self, instruction: AsPart, parts: tuple[Section, ...], section: Section) -> None:
        """Work a piece, or a whole garment, once more or several times."""
        needles = self.needles
        for line in section.lines:
            at = line.place.line == instruction.place.line
            if at and line.ends is not None and line.ends.since <= len(needles.drafts):
                needles.ends_at, needles.ends_second = line, True
                raise OpenReachedError
        first = self.made.setdefault(piece_of(parts[0]), instruction)
        if first.place.line != instruction.place.line:
            told = f"the second {piece_of(parts[0])} is asked for in line {first.place.line}, too"
            needles.warn(instruction.place, f"{told}; it is made once.")
            return
        in_round = not needles.flat and not needles.counting.lost
        waits = bool(needles.count) and in_round and is_sleeve(section.name)
        if waits:
            leave_waiting(section.name, needles)  # until the yoke joins both
        if needles.count:
            told = f"stitches are on the needles where the second {section.name} begins."
            how = 'Write how the first ends, as its last line: "Bind off.", or "Place all sts on hold."'
            needles.report(instruction.place, told, how)
            return
        begin = len(needles.drafts)
        for copy in range(1, instruction.times + 1):
            for source in parts:
                ends = copy == instruction.times and source is parts[-1]
                self._again(instruction, ((source, None),), copy, ends=ends)
            if waits and needles.count and not needles.counting.lost:
                leave_waiting(copy_of(section, copy).name, needles)
        heads = not instruction.part and section is not needles.project.sections[-1]
        empty = heads and not any(lines_of(instruction, each, needles) for each in parts)
        if empty and section.lines and not needles.counting.lost and len(needles.drafts) == begin:
            told = f"nothing is knitted in the {section.name}, so that there is nothing to make again."
            how = f'Call the sections of the piece by it: "{section.name}, cuff".'
            needles.report(instruction.place, told, how)

    def _again(
        self,
        instruction: AsPart,
        sources: Sequence[tuple[Section, int | None]],
        copy: int = 0,
        *,
        ends: bool = True,
    ) -> None:
        """Work sections again, as a copy of them or in the section that the line stands in.

        Args:
            instruction: The line that asks for it.
            sources: The sections, each with after how many rows it ends; None for all of them.
            copy: Which copy it is; 0 where they are worked in the section in hand.
            ends: Whether what the line asks for ends with them.
        """
        needles = self.needles
        worked = [(source, rows, lines_of(instruction, source, needles)) for source, rows in sources]
        if ends:
            worked[-1:] = [
                (source, rows, with_yarn_uncut(lines, instruction, needles))
                for source, rows, lines in worked[-1:]
            ]
        if any(not lines or rows == 0 for _, rows, lines in worked):
            if copy and len(worked) == 1 and instruction.part and not needles.counting.lost:
                told = f"nothing of the {sources[0][0].name} stands before this line to be worked again."
                needles.report(instruction.place, told, "Write its lines out, or name the part.")
            return
        begun = 0
        if worked and not copy and not instruction.from_mark:
            source, rows, lines = worked[0]
            left, begun = lines_after_own(instruction, lines, source, needles)
            if not left:
                return
            worked[0] = source, rows, left
        if instruction.reversed_:
            own = [line for source, _ in sources for line in lines_of(instruction, source, needles)]
            work_reversed(instruction, sources, {line.place.line for line in own}, needles, begun=begun)
            return
        begin, here = len(needles.drafts), needles.section.name
        for source, rows, lines in with_counts_of_here(worked, needles):
            self._work_again(source, lines, None if rows is None else rows - begun, copy)
            begun = 0
        if worked:
            source = worked[0][0]
            here = copy_of(source, copy).name if copy else here
            check_other_side(here, source.name, begin, instruction.place, needles)

    def _work_again(self, source: Section, lines: tuple[Line, ...], rows: int | None, copy: int) -> None:
        """Work lines of one section again, as many of their rows as are meant."""
        needles = self.needles
        size = self.size
        self.size = self.begun_in.get(source.name, self.size)
        if copy:
            self._begin(source, copy_of(source, copy).name)
        limit, copied = needles.limit, needles.copied
        needles.copied = "" if copy else source.name
        if rows is not None:
            needles.limit = len(needles.drafts) + rows
        needles.remarks.append(f"as the {source.name.removeprefix('the ')}")
        try:
            self._work(source, lines)
        except PartReachedError:
            pass
        finally:
            needles.limit, needles.copied = limit, copied
        self.size = size if not self.switches else self.size
