"""The last pass: worked drafts become numbered rounds with floats, checkpoints and words. No I/O."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from stepper.craft.even.manners import Manner
from stepper.plan.drafts import DraftRound
from stepper.plan.lines.flat_or_round import settle_flat
from stepper.plan.lines.held.gaps import gap_left
from stepper.plan.materials import materials_of
from stepper.plan.model import Caution, Checkpoint, OpenRow, Plan, Round, Run
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.abbreviate import instruction
from stepper.plan.stitches.evenly import shaping_places
from stepper.plan.stitches.run_repeats import laid_flat
from stepper.plan.yarn.floats import longest_floats
from stepper.plan.yarn.strand_remarks import with_strands
from stepper.project.model import Project
from stepper.project.rewording.signs.size_lists import SIDE_BY_SIDE
from stepper.regex import regex

_AGAIN: Final = "It is worked again here, and does not fit this time."


def finish(needles: Needles, project: Project, cautions: tuple[Caution, ...]) -> Plan:
    """Number the rounds of the worked pattern and add what is derived from them."""
    drafts = needles.drafts
    settle_flat(drafts)
    drafts = [_with_buttonholes(draft) for draft in drafts]
    of, number = Counter(draft.section for draft in drafts), Counter[str]()
    seen: dict[int, _Flat] = {}
    rounds = []
    for index, draft in enumerate(drafts):
        number[draft.section] += 1
        following = drafts[index + 1] if index + 1 < len(drafts) else None
        rounds.append(
            _round(index, draft, following, number[draft.section], of[draft.section], project, seen)
        )
    laid, more = with_strands(_repeats_told_once(rounds), project)
    open_row = _open_row(needles)
    if open_row is not None:
        laid = tuple(replace(each, of=0) if each.section == open_row.section else each for each in laid)
    return Plan(
        title=project.title,
        rounds=laid,
        stretches=tuple(needles.stretches),
        warnings=tuple(sorted((*cautions, *more), key=lambda caution: caution.line)),
        units=project.units,
        yarns={key: yarn.name for key, yarn in project.yarns.items()},
        finish_by=project.finish_by,
        materials=materials_of(project),
        spacing=project.spacing or Manner.MIXED,
        open=open_row,
    )


def _with_buttonholes(draft: DraftRound) -> DraftRound:
    """Return a row with the buttonholes that lie in it; till here its pattern went on as if without."""
    opened = draft.opened
    if opened is None:
        return draft
    return replace(
        draft,
        phrase=opened.phrase,
        before=opened.before,
        after=opened.after,
        label=draft.label or (None if opened.closes else "Buttonhole row"),
        remarks=(*draft.remarks, opened.remark),
        opened=None,
    )


_OF_REPEAT: Final = regex(r"these \d+ stitches are the repeat, worked to the end of the round")


def _repeats_told_once(rounds: Sequence[Round]) -> list[Round]:
    """Leave out what the repeat of a round is where the round before it has the same."""
    laid: list[Round] = []
    told: tuple[str, ...] = ()
    for each in rounds:
        of_repeat = tuple(remark for remark in each.remarks if _OF_REPEAT.fullmatch(remark))
        again = tuple(remark for remark in each.remarks if remark not in of_repeat)
        laid.append(replace(each, remarks=again) if of_repeat and of_repeat == told else each)
        told = of_repeat
    return laid


def _open_row(needles: Needles) -> OpenRow | None:
    """Return the row up to which the garment was worked; None if it was worked to its end."""
    line = needles.ends_at
    if line is None:
        return None
    return OpenRow(
        line=line.place.line,
        section=needles.section.name,
        flat=needles.flat,
        remarks=tuple(needles.remarks),
        words=line.text,
        second=needles.ends_second,
        gap=gap_left(needles) > 0,
        trouble=_AGAIN if any(draft.line == line.place.line for draft in needles.drafts) else "",
        stitches=needles.count,
        wrong=needles.wrong,
        within_turns=needles.short_rows.gap is not None or bool(needles.short_rows.turns),
        held=tuple(reversed(needles.held.items())),
    )


class _Flat:
    """What is derived from a phrase alone, kept for rounds that share it."""

    __slots__ = ("floats", "instruction", "phrase", "runs", "shaping")

    def __init__(self, draft: DraftRound) -> None:
        self.phrase = draft.phrase  # kept alive, so that no other phrase gets its id
        self.runs = laid_flat(draft.phrase)
        self.shaping = shaping_places(self.runs)
        self.floats = longest_floats(self.runs, flat=draft.flat)
        left_plain = draft.altered and not draft.chart and len(self.runs) == 1  # nothing stands out any more
        self.instruction = instruction(
            self.runs if left_plain else draft.phrase,
            chart=draft.chart,
            chart_round=draft.chart_round,
            manner=draft.bound_off,
            evenly=draft.template is not None and draft.template.evenly is not None,
        )


def _round(
    index: int,
    draft: DraftRound,
    following: DraftRound | None,
    number: int,
    of: int,
    project: Project,
    seen: dict[int, _Flat],
) -> Round:
    flat = seen.get(id(draft.phrase))
    if flat is None:
        flat = seen[id(draft.phrase)] = _Flat(draft)
    words = _remark(draft.words, draft, project)
    if draft.due and len(flat.runs) > 1:  # what the program knows of the row, and hers after it
        words = f"{flat.instruction}; {'pattern' if words.startswith('row ') else 'in pattern:'} {words}"
    return Round(
        index=index,
        section=draft.section,
        number=number,
        of=of,
        label=draft.label,
        size=project.sizes[draft.size],
        needle_mm=draft.needle_mm,
        flat=draft.flat,
        side=draft.side,
        before=draft.before,
        after=draft.after,
        held=draft.held,
        phrase=draft.phrase,
        runs=flat.runs,
        shaping=draft.shaping if draft.shaping is not None else flat.shaping,
        floats=flat.floats,
        instruction=words or flat.instruction,
        checkpoint=_checkpoint(draft, following),
        remarks=tuple(_remark(each, draft, project) for each in draft.remarks),
        evenly=draft.evenly,
        chart=draft.chart,
        chart_round=draft.chart_round,
        gauge=draft.gauge,
        # What parts the sides of a neck is no marker.
        markers=() if draft.markers and draft.two_balls else draft.markers,
        line=draft.line,
        altered=draft.altered,
        words=words,
    )


_DRAWN: Final = regex(r"(?<=through )((?:(?:the|all|rem|rem\.|remaining) ){0,2})(?=(?:sts|stitches)\b)")


def _remark(remark: str, draft: DraftRound, project: Project) -> str:
    """Return a remark as it is said with a round: in its size, and with the number that went to the check."""
    said = " ".join(in_size(remark, draft.size, len(project.sizes)).split()).lstrip(",;: ")
    if draft.phrase and _first_stitch(draft) == "draw":
        return _DRAWN.sub(rf"\g<1>{draft.before} ", said)
    return said


_ONE: Final = r"(?:\d+(?:\.\d+)?[½¼¾⅓⅔⅛⅜⅝⅞]?(?:st|nd|rd|th)?|[½¼¾⅓⅔⅛⅜⅝⅞])"
_LIST: Final = rf"[(\[] ?{_ONE}(?:(?: ?[,;:/] ?| ?[-–] ?| ){_ONE})* ?[)\]]"
_EACH_SIZE: Final = regex(
    rf"(?<![\d./]){_ONE}(?: ?{_LIST})+|[(\[] ?{_ONE}(?: ?[,;:] ?{_ONE}){{2,}} ?[)\]]"
)
"""A number for each size, the first before brackets or in them, the others in one pair or several."""
_BY_TURNS: Final = regex(rf"(?<![\d./]){_ONE} ?{_LIST}(?: {_ONE}(?: ?{_LIST})?)+")
"""The same in and out of brackets by turns: "96 (100, 104) 108 (112, 116)", "every 8th (6th) 5th"."""


def in_size(remark: str, size: int, of: int) -> str:
    """Return a remark with the numbers of one size, where it lists one for each.

    Args:
        remark: As printed: "ending 4 (4, 5, 5) sts before the marker", in brackets of any kind or none.
        size: From 0.
        of: How many sizes there are; a list of any other length is left alone.
    """

    def own(match: re.Match[str]) -> str:
        numbers = re.findall(_ONE, match.group())
        return numbers[size] if len(numbers) == of else match.group()

    return _EACH_SIZE.sub(own, SIDE_BY_SIDE.sub(own, _BY_TURNS.sub(own, remark)))


def _checkpoint(draft: DraftRound, following: DraftRound | None) -> Checkpoint | None:
    """Place a count where a fault would be locked in."""
    reason = ""
    if draft.divide:
        if not draft.after:
            return None  # all of it lies on hold, and there is nothing to count
        reason = "after the divide"
    elif draft.bound_off is not None:
        return None
    elif draft.before == 0:
        reason = (
            "after the cast-on" if draft.phrase and _first_stitch(draft) == "co" else "on the needles again"
        )
    elif any(isinstance(item, Run) and item.stitch == "pu" for item in draft.phrase):
        reason = "after picking up"
    elif draft.words and not draft.due and draft.after != draft.before:
        reason = "as printed for this row"
    elif draft.after > draft.before:
        reason = "after the increases" if draft.chart is None else "after the shaping"
    elif draft.after < draft.before:
        reason = "after the decreases" if draft.chart is None else "after the shaping"
    elif draft.evenly or (draft.shaping or ()):
        reason = "after the shaping"
    elif following is not None and following.chart and not _same_chart(draft, following):
        reason = f"before chart {following.chart}"
    elif draft.chart and (following is None or not _same_chart(draft, following)):
        reason = f"after chart {draft.chart}"
    elif following is not None and following.bound_off is not None:
        reason = "before the bind-off"
    elif following is None or following.section != draft.section:
        reason = f"end of the {draft.section}"
    return Checkpoint(expect=draft.after, reason=reason) if reason else None


def _first_stitch(draft: DraftRound) -> str:
    first = draft.phrase[0]
    return first.stitch if isinstance(first, Run) else ""


def _same_chart(draft: DraftRound, following: DraftRound) -> bool:
    return draft.chart == following.chart and draft.section == following.section
