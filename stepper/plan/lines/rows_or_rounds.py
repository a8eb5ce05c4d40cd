"""Tell whether a piece just cast on goes on in rows, where nothing joins it or says "work flat". No I/O.

Patterns knitted in rows often say so only by speaking of rows: "Cast on 60 sts. Work 6 rows in garter st."
Taken as rounds, every other row of such a piece would be knitted wrongly, and nothing would show it.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import lru_cache

from stepper.craft.stitches import TURNS, Kind, stitch
from stepper.plan.lines.flat_or_round import closes
from stepper.plan.model import flatten
from stepper.plan.state.needles import Needles
from stepper.project.instructions import (
    AtIntervals,
    BreakYarn,
    EdgeRows,
    EdgeShaping,
    EdgesTogether,
    Evenly,
    Join,
    Line,
    Phrase,
    Repeated,
    Return,
    Sentence,
    WorkRounds,
    is_only_said,
)
from stepper.project.model import Project, Section
from stepper.project.stitchwork import Across, Hold, Mark, PickUp, Work
from stepper.regex import regex

_ROWS = regex(r"(?<!short )(?<!short-)\brows?\b(?!\s+below)|\b[RW]S\b|\b(?:right|wrong)\s+side\b", re.I)
_R = regex(r"\s*[Rr]\s?\d")
"""The head of a row or a round, as the work goes: "R1:"."""
_ROUNDS = regex(
    r"\b(?:rnds?|rounds?|around|bor|dpns?|double[- ]pointed)\b|\bNeedles?\s+1\b|\bN1\b|"
    r"\bjoin(?:ed|ing)?\b(?!\s+(?:(?:in|the|a|new)\s+)*(?:yarn|wool|ball|MC|CC|[A-Z]\b))",
    re.I,
)

_A_ROUND = regex(
    r"\b(?:rnds?|rounds?)\b(?!\s+(?:neck|the\b))|\baround\b(?=\s*(?:[.,;]|for\b|until\b|till\b|in\s+(?:(?:rib(?:bing)?|st|stocking|stockinette|garter|patt(?:ern)?|moss|seed)\b|[kp]\s?\d)|$))|"
    r"\bNeedles?\s+1\s*:|\bN1\s*:",
    re.I,
)
_ASIDE = regex(r"\([^()]*\)")
_FACING = regex(r"\b(?:[RW]S|(?:right|wrong)\s+side)(?:\s+of\s+(?:the\s+)?[a-z ]+?)?\s+facing\b", re.I)
_OPEN_SAY = (
    'Say where the rows begin: join the yarn at the gap and write "Work flat", '
    'or write "rounds" where the gap is closed again.'
)
_PURL_FIRST = regex(r"\bp(?:url|\.)?\s*(?:1|one)\s+row\b", re.I)
_RIGHT_NEXT = regex(r"^[^:]*\(?\b(?:RS|right\s+side)\b\)?[^:]*:", re.I)
"""A right-side row right behind a single row that is purled: that one was the wrong side."""

_RESUMES = regex(r"\b(?:resume|return|go\s+back)\b[^.;]*\bin\s+(?:the\s+)?(?:rounds?|rnds?)\b", re.I)
"""Words by which a round goes on behind a row that was turned."""
_STRAIGHT = regex(
    r"\b(?:straight|single[-\s]pointed)\s+(?:needles?|ndls?)\b|\bpair\s+of\s+"
    r"(?!(?:[^\s.;,]+\s+){0,4}?(?:circulars?|circ|dpns?|double[-\s]pointed|sock)\b)"
    r"(?:[^\s;,]+\s+){0,4}?(?:needles|ndls)\b",
    re.I,
)
"""Needles on which nothing can be worked in the round (common practice)."""


def settle_rows(line: Line, section: Section, needles: Needles) -> None:
    """Go on in rows with what was just cast on, if its lines speak of rows and nothing of rounds.

    The line in hand decides; where it says neither, those after it in the section do.

    Args:
        line: The line to be worked.
        section: Its section.
        needles: The knitting in hand.
    """
    drafts = needles.drafts
    if speaks_of_rows(line) and opened_midway(needles):
        refuse_rows_around_gap(line, needles)
    goes_round = not needles.flat and needles.project.spacing is not None
    if goes_round and is_parted(needles) and not brings_stitches(line):
        _go_on_beside_held(line, section, needles)
        return
    if needles.flat or needles.joined or not needles.count or needles.counting.lost or not drafts:
        return
    if drafts[-1].before or drafts[-1].after != needles.count or needles.project.spacing is None:
        return  # without a spacing the plan is made as it was before, for a journal knitted then
    _, rounds = _words(line.text)
    if rounds:
        return
    behind = _worked_behind(line, section)
    follow = [_words(other.text) for other in behind]
    rounds_follow = any(rounds for _, rounds in follow)
    # Stitches are picked up with the right side facing for a neckband in the round as for a band in rows.
    picked = "pu" in drafts[-1].codes
    here, _ = _words(_FACING.sub("", line.text) if rounds_follow or picked else line.text)
    here = here or (says_neither(line) and not rounds_follow)
    here = here or _STRAIGHT.search(_begun(section, needles)) is not None
    if not here and not any(rows or rounds for rows, rounds in follow) and picked:
        here = _lies_open(section, needles)
    if here or (not rounds_follow and any(rows for rows, _ in follow)):
        needles.begin_rows("WS" if _is_purled_first(line, behind) else None)
    elif not rounds_follow and _held_in_rows(needles):
        told = "these stitches went on hold in rows, and no line here says whether rows or rounds go on"
        needles.warn(line.place, f'{told}: rounds are taken. Write "Work flat" where the work is turned.')
    elif not rounds_follow and not picked and not needles.section.way_told and _begins_rounds(line, needles):
        needles.section.way_told = True
        told = "no line of this part says whether rows or rounds are worked: rounds are taken."
        needles.warn(line.place, f'{told} Write "Work flat" or "Join in the round".')


def settle_turned_rows(block: Sequence[Line], section: Section, needles: Needles) -> None:
    """Go on in rows with what was just cast on, if a numbering with turned rows among it is of no round.

    Short rows are worked in the round, too; where nothing of the part speaks of rounds, it is in rows.
    """
    behind = [*block, *_worked_behind(block[-1], section)]
    if speaks_of_rows(block[0]) and not any(_words(line.text)[1] for line in behind):
        settle_rows(block[0], section, needles)


def _go_on_beside_held(line: Line, section: Section, needles: Needles) -> None:
    """Go on in rows over a part of a ring, if the line is of rows; refused where their side is not known.

    Where the yarn hangs at the gap, the wrong side comes next. Cut or joined anew, it begins on either side.
    """
    anew = _BEGINS_ANEW.search("; ".join((*needles.remarks, *line.said))) is not None
    anew = anew or any(isinstance(sentence, BreakYarn) for sentence in line.sentences)
    facing = _FACING.search(line.text) is not None
    if not anew and not facing:
        if speaks_of_rows(line):
            needles.begin_rows("WS")
        return
    works = any(isinstance(one, _WORKED) and not _only_moves(one) for one in line.sentences)
    rows, rounds = _words(_FACING.sub("", line.text))
    if not works or rounds or needles.line.side:
        return
    behind = _worked_behind(line, section)
    told = (_words(other.text) for other in behind)
    rows = rows or next((by_rows and not around for by_rows, around in told if by_rows or around), False)
    if not rows:
        return
    if needles.line.right_facing and anew:
        needles.begin_rows("RS")
    elif not needles.line.right_facing and _is_purled_first(line, behind):
        needles.begin_rows("WS")
    else:
        unsaid = "rows go on over a part of the ring, and it is not said on which side the yarn begins them."
        needles.miss(line.place, unsaid, 'Write it: "Next row (WS): Join the yarn, purl to end."')


_WORKED = (AtIntervals, EdgeRows, EdgeShaping, EdgesTogether, Evenly, Phrase, Repeated, WorkRounds)
"""Instructions of which rows or rounds come."""
_BEGINS_ANEW = regex(
    r"(?:^|;\s*)(?:break|cut|fasten\s+off|(?:re-?)?(?:join|attach)\b(?!\s+in\b[^;]*\b(?:rounds?|rnds?)\b))",
    re.I,
)
"""Words by which yarn is broken, or joined where it does not hang."""


def _only_moves(instruction: Sentence) -> bool:
    """Return whether a line works no stitch of those that it puts on hold or marks."""
    elements = instruction.elements if isinstance(instruction, Phrase) else ()
    return bool(elements) and all(isinstance(one, Hold | Mark) for one in elements)


def _is_purled_first(line: Line, behind: Sequence[Line]) -> bool:
    """Return whether a line purls a single row, and those behind it go on with one of the right side."""
    return bool(_PURL_FIRST.search(line.text) and behind and _RIGHT_NEXT.search(behind[0].text))


def _worked_behind(line: Line, section: Section) -> list[Line]:
    """List the lines behind a line that work: "Fold the edge to the wrong side" speaks of no rows."""
    behind = (other for other in section.lines if other.place.line > line.place.line)
    return [other for other in behind if not is_only_said(other)]


def _begins_rounds(line: Line, needles: Needles) -> bool:
    """Return whether a line works the first round on a cast-on that no row or round is told of."""
    works = any(isinstance(one, Phrase | WorkRounds | Evenly | Repeated) for one in line.sentences)
    begun = next((one.text for one in needles.project.lines if one.place.line == needles.drafts[-1].line), "")
    return works and "co" in needles.drafts[-1].codes and not any(_words(begun))


def _begun(section: Section, needles: Needles) -> str:
    """Return the line that put the stitches on the needles; empty if it is of another section."""
    begun = needles.drafts[-1].line
    return next((other.text for other in section.lines if other.place.line == begun), "")


def _lies_open(section: Section, needles: Needles) -> bool:
    """Return whether stitches picked up lie along an edge that has two ends; what is in doubt is told."""
    words = f"{section.name} {_begun(section, needles)}"
    if _BAND.search(words):
        return True
    ring = _RING.search(words) is not None
    if not ring and (_OPEN_EDGE.search(words) or _ONE_FRONT.search(words)):
        return True
    rounds = any(draft.before and not draft.flat for draft in needles.drafts)
    if ring and rounds and not (_NECK.search(words) and _opens(needles.project)):
        return False
    taken = "rows" if ring else "rounds"
    told = f"no line says whether rows or rounds go on behind the stitches picked up: {taken} are taken."
    needles.warn(needles.here, f'{told} Write "Work flat" or "Join in the round".')
    return ring


def _opens(project: Project) -> bool:
    """Return whether a page speaks of what only a garment that opens in front has."""
    names = (section.name for section in project.sections)
    return any(map(_OPENS.search, (*names, *(line.text for line in project.lines))))


_BAND = regex(r"\b(?:button(?:hole)?\s*bands?|front\s+bands?|plackets?|lapels?)\b", re.I)
"""What a garment that opens has along its fronts."""
_OPENS = regex(rf"{_BAND.pattern}|\b(?:cardigan|jacket|button(?:hole)?s?|zip(?:per)?|steek)\b", re.I)
_NECK = regex(r"\b(?:neck(?:band|line)?|collar|hood)\b", re.I)
_RING = regex(
    rf"{_NECK.pattern}|\b(?:arm(?:holes?|bands?)|sleeves?|cuffs?|thumbs?|fingers?|heels?|gussets?|legs?|foot|instep|toes?"
    r"|underarms?|hat|crown|brim|waist|hem)\b",
    re.I,
)
"""Places knitted around in a garment that is, where no line speaks of rows. Source: common practice."""
_OPEN_EDGE = regex(
    r"\b(?:(?:front|side|long|short|straight|top|bottom|lower|upper|bound[-\s]off|cast[-\s]on)\s+edges?"
    r"|selvedges?|(?:one|each|this|other)\s+side|pocket)\b",
    re.I,
)
_ONE_FRONT = regex(r"^(?!.*\bright\b.*\bleft\b)(?!.*\bleft\b.*\bright\b).*\b(?:left|right)\s+front\b", re.I)
"""One front of a garment, and not the other."""


def _held_in_rows(needles: Needles) -> bool:
    """Return whether stitches that just came back had gone on hold in a row."""
    names = {run.yarn for run in flatten(needles.drafts[-1].phrase) if run.stitch == "return"}
    return any(
        draft.flat and any(run.yarn in names and run.stitch == "hold" for run in flatten(draft.phrase))
        for draft in needles.drafts
    )


def settle_rounds(line: Line, needles: Needles) -> None:
    """Go on in the round behind a row that took held stitches back, if the next line speaks of rounds alone.

    "Knit across heel sts, pick up 16, knit the instep sts, pick up 16" closes the ring of a sock, and says so
    only by what follows: taken as rows, every other round would be worked back.
    """
    if needles.counting.lost or not needles.drafts or needles.project.spacing is None:
        return
    rounds = _A_ROUND.search(line.text) is not None and not _ROWS.search(line.text)
    outright = _A_ROUND.search(_ASIDE.sub("", line.text)) is not None
    whole = rounds and outright and any(isinstance(sentence, WorkRounds) for sentence in line.sentences)
    turned = needles.short_rows.gap and needles.side == "WS" and not _RESUMES.search(line.text)
    if whole and not needles.flat and turned:
        told = "the row before was turned, so that the wrong side comes next, and this line works rounds."
        needles.miss(line.place, told, "Write the rows out until the round goes on.")
    if not needles.flat:
        return
    if any(isinstance(sentence, Join) for sentence in line.sentences):
        return
    if line.side == "WS" and needles.last.apart == len(needles.drafts) and needles.side == "RS":
        told = "rows over the stitches that come next begin on the right side; this is the wrong one."
        needles.miss(line.place, told, "Work across them first, then put the others on hold.")
        return
    if rounds and closes(needles.drafts[-1]):
        needles.flat, needles.side = False, "RS"
        told = "rounds behind rows: the row that takes stitches back is taken as joined in the round."
        needles.warn(line.place, told)
    elif (needles.line.around or rounds) and needles.last.apart and needles.held and not _takes_back(line):
        told = "this line calls itself a round, and rows are worked over a part of the stitches here."
        hint = 'Say how the others come back: "k across instep sts", "Join in the round."'
        needles.miss(line.place, told, hint)
    elif whole and needles.count:
        told = "this line works rounds, and the work goes in rows here: half of them would be worked back."
        needles.miss(
            line.place, told, 'Write "Join in the round." where it is joined, or "rows" in the line.'
        )


def brings_stitches(line: Line) -> bool:
    """Return whether a line takes held stitches back, picks some up, or casts some on."""
    begins = (one.elements[0] for one in line.sentences if isinstance(one, Phrase) and one.elements)
    casts_on = any(isinstance(one, Work) and one.stitch == "co" for one in begins)
    return casts_on or _takes_back(line) or any(isinstance(one, Return) for one in line.sentences)


def _takes_back(line: Line) -> bool:
    """Return whether a line works across held stitches, or picks some up."""
    return any(
        isinstance(one, Across | PickUp) or (isinstance(one, Work) and one.stitch == "pu")
        for sentence in line.sentences
        if isinstance(sentence, Phrase)
        for one in sentence.elements
    )


def says_neither(line: Line) -> bool:
    """Return whether the head of a line stands for a row as well as for a round: "R1:"."""
    return _R.match(line.text) is not None


def speaks_of_rows(line: Line) -> bool:
    """Return whether a line speaks of rows and of no round."""
    rows, rounds = _words(line.text)
    return (line.rows or rows) and not rounds


_RATIO = regex(r"\b\d+\s+st(?:s|itch(?:es)?)?\.?\s+(?:for|in|per)\s+(?:each|every)?\s*\d+\s+rows\b", re.I)
"""How densely stitches are picked up along an edge: no word of what is worked then."""


@lru_cache(maxsize=4096)
def _words(text: str) -> tuple[bool, bool]:
    """Return whether a line has words of rows, and of rounds; it is asked again in every size and trial."""
    told = _RATIO.sub("", text)
    return _ROWS.search(told) is not None, _ROUNDS.search(told) is not None


def opened_midway(needles: Needles) -> bool:
    """Return whether the last round put stitches in its middle on hold, and cast none on in their place."""
    if needles.flat or not needles.drafts or needles.drafts[-1].flat or needles.counting.lost:
        return False
    codes = [run.stitch for run in flatten(needles.drafts[-1].phrase)]
    return "hold" in codes[1:-1] and not (TURNS | {"co", "rest"}) & set(codes)


def hangs_at_gap(needles: Needles) -> bool:
    """Return whether the last round left the yarn at a gap: rows go on there, with one on the wrong side."""
    return is_parted(needles) and not any(map(_CUT.match, needles.remarks))


_CUT = regex(r"(?:break|cut|fasten\s+off)\b", re.I)


def is_parted(needles: Needles) -> bool:
    """Return whether the last round ended at a gap, wherever its yarn is by now.

    It began by binding off or holding stitches and was worked to its end, or it ended before held stitches.
    """
    if not needles.drafts or needles.drafts[-1].flat or needles.counting.lost or not needles.drafts[-1].after:
        return False
    last = needles.drafts[-1]
    codes = [run.stitch for run in flatten(last.phrase) if stitch(run.stitch).kind is not Kind.MARK]
    if len(codes) < 2 or (TURNS | {"co", "return"}) & set(codes):
        return False
    if codes[0] not in ("bo", "hold"):
        return codes[-1] == "hold"
    aside = codes[-1] == "rest" and len(needles.drafts) > 1 and needles.drafts[-2].line == last.line
    return stitch(codes[-1]).kind is Kind.PLAIN or aside


def refuse_rows_around_gap(line: Line, needles: Needles) -> None:
    """Report a line of rows behind a round that was opened in its middle.

    Rows would begin at the gap; the round begins elsewhere, so both a row and a round would be another
    knitting than the page's.
    """
    needles.report(
        line.place,
        "stitches in the middle of the round before are on hold, and this line speaks of rows: "
        "it does not say where they begin.",
        _OPEN_SAY,
    )
    needles.lose()
