"""Write the rounds on which a garment in the round hangs in the grammar's words: laid out, divided, bound off between. No I/O.

Theory of operation. "K1, *put the next 42 sts on a thread (sleeve), cast on 6 new sts under the arm*, k58 (front), rep * to * once,
knit the rest of the sts (back)" is a row of steps, each in a dress of its own: stitches worked, held, cast on or bound off, a
marker, and behind any of them the part it is for. A row is taken apart from left to right (`_STEPS`); one word that belongs to no
step leaves all of it as printed. Steps between stars are written as often as they are worked, so that each stands in its place.
What the stitches are for is said with the row, and is the name of those that wait. Looked for only in a line that nothing else
reads. Source: the wording of patterns in print, US, UK and Nordic; common practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.project.part_names import PART, SIDED, STRIP
from stepper.project.rewording.asides import instructs
from stepper.project.rewording.on_needles.waiting_synonyms import ON_HOLDER
from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import STS, N
from stepper.project.rewording.told.numbers import number_of
from stepper.records import dataclass
from stepper.regex import regex

# --- what stitches are for ---
_LINE: Final = r"raglans?|seam|underarm"
_OF_PART: Final = rf"(?:(?:{PART}|{STRIP})s?|{_LINE})"
_BESIDE: Final = rf"(?:{SIDED}|1st|2nd|\u00bd|half|rest|of|the|an?|one|both|pieces?|parts?|side|under|mid|middle|lines?|new|{STS})"
_WORDS: Final = rf"(?:(?:{_BESIDE}|\d+(?=\s+(?:raglan|seam|edge|band)))\s+)*{_OF_PART}(?:\s+(?:and\s+(?={SIDED}|{_OF_PART}))?(?:{_BESIDE}|{_OF_PART}))*(?![\w-])"
"""A part by its name, with words that say which."""
_BRACKET: Final = rf"\s*[(\[]\s*(?:=\s*)?(?:\d+\s+(?=raglan|seam|edge|band))?{_WORDS}(?:\s*(?:[,+&/]|\band\b)\s*{_WORDS})*\s*[)\]]"
_BY_WORD: Final = rf"\s*,?\s*(?:\bfor|=)\s+{_WORDS}|\s+of\s+(?:the\s+)?(?:(?:left|right)\s+)?(?:back|front|body)(?:\s+{STS})?(?![\w-])"
_THESE: Final = rf"\s*(?:[,;:(]|-+|[\u2013\u2014])\s*(?:these|this|which|those)\s+(?:are|is|will\s+be)\s+(?:(?:now|all)\s+)*(?:(?:your|the|for)\s+)*{_WORDS}\)?"
_LABEL: Final = rf"(?P<label>{_BRACKET}|{_THESE}|{_BY_WORD})?"

# --- what is done with them ---
_THE: Final = r"(?:(?:the|next|following|foll)\s+)*"
"""Those the row comes to; "the first" and "the last" may be of those it has worked."""
_WHO: Final = rf"(?:(?:{SIDED}\s+)*(?:{PART})\s+)?"
_MANNER: Final = r"(?:\s+(?P<manner>as\s+(?:before|set|established)|in\s+patt(?:ern)?(?:\s+as\s+(?:set|established))?))?"
_LATER: Final = r"(?:\s+(?:(?:whenever|when)\s+(?:it(?:'s|\s+is)\s+)?convenient|for\s+(?:now|later)))?"
_PUT: Final = r"(?:put|place|slip|sl|move|transfer|leave|set|thread)"
_MARKER: Final = r"(?:(?:stitch\s+|raglan\s+)?markers?|m|(?:marking\s+|marker\s+)?threads?)"
_FOR_ROUND: Final = r"(?:for\s+)?(?:the\s+)?(?:new\s+)?(?:bor|(?:beg(?:inning)?|start)\s+of\s+(?:the\s+)?(?:rnd|round))"
_LOOP: Final = r"(?:(?:w/|with|using|by|in)\s*(?:(?:the|a)\s+)?(?:backward|backwards|half-hitch|twisted|e)[-\s]loops?(?:\s+(?:method|cast-?\s?on))?)"
_WHERE: Final = rf"(?:(?:(?:on|onto)\s+(?:the\s+|your\s+)?(?:(?:right|right-hand)\s+)?needle|(?:under|for|at|in)\s+(?:the\s+)?(?:under)?arm|over\s+the\s+gap|between|{_LOOP})(?![\w-]))"

_STEPS: Final = tuple(
    (kind, regex(expression, re.IGNORECASE))
    for kind, expression in (
        ("mark", rf"(?:pm|(?:place|put|hang|insert)\s+(?:in\s+)?(?:(?:an?|the|another|last|final|different|contrasting|colou?r(?:ed)?|new|1|one)[\s-]+)*{_MARKER}|(?:marking\s+)?thread|marker)(?P<round>\s+{_FOR_ROUND})?(?![\w-])(?!\s+(?:after|before|at|in|on|every|between|around|over|\d))"),
        ("take", r"(?:rm|remove\s+(?:the\s+|next\s+)*(?:marker|m))(?![\w-])"),
        ("pass", r"(?:sm|slm|slip\s+(?:the\s+|next\s+)*(?:marker|m))(?![\w-])"),
        ("hold", rf"{_PUT}\s+{_THE}(?P<n>{N})(?:\s+{_WHO}{STS}{_LABEL})?\s*,?\s+{ON_HOLDER}(?P<other>{_BRACKET}|\s*,?\s*(?:\bfor|=)\s+(?:the\s+)?{_WORDS})?{_LATER}"),
        ("hold", rf"hold\s+{_THE}(?P<n>{N})\s+{_WHO}{STS}{_LABEL}"),
        ("these", rf"{_PUT}\s+(?P<them>(?:them|these|those)\s+(?:(?P<n>{N})\s+)?(?:{STS}\s+)?)?{ON_HOLDER}{_LATER}{_LABEL}"),
        ("these", rf"leave\s+(?P<them>these|those|them)(?:\s+{STS})?(?P<label>\s+for\s+(?:the\s+)?{_WORDS})"),
        ("cast", rf"(?:{_LOOP}\s*,?\s+)?(?P<do>cast\s+(?:on|up)|co)\s+(?P<n>{N})(?:\s+(?:new|extra|more|underarm))*(?:\s+{STS})?(?:\s*,?\s+{_WHERE})*{_LABEL}"),
        ("bind", rf"(?P<do>bind\s+off|cast\s+off|bo)\s+{_THE}(?P<n>{N})(?:\s+{STS})?(?P<gone>\s*,?\s+removing\s+(?:the\s+)?(?:(?:bor|side|underarm)(?:\s+(?:marker|m))?|markers?|m)(?:\s+as\s+you\s+(?:come\s+to|reach|pass)\s+(?:it|them))?)?(?:\s+(?:for|at)\s+(?:the\s+)?(?:under)?arm(?:hole)?)?{_LABEL}"),
        ("far", rf"(?P<verb>knit|k|purl|p|work)\s+(?:until|till)\s+(?:there\s+are|you\s+have)\s+(?P<n>{N})\s+{STS}\s+on\s+(?:the\s+|your\s+)?(?:right(?:[\s-]hand)?|rh)\s+needle(?:\s+(?:after|since|past|from|beyond)\s+(?:the\s+)?(?:bound-?\s?off|cast-?\s?off|bind-?\s?off|last)(?:\s+(?:gap|{STS}|edge|bind-?off|cast-?off))?)?{_LABEL}"),
        ("rest", rf"(?P<verb>knit|k|purl|p|work)\s+(?:to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?(?:row|rnd|round))?|(?:across\s+)?(?:the\s+)?(?:rest|remaining|rem\b|remainder)(?!\s*\d)(?:\s+of\s+(?:the\s+)?(?:{STS}|round|rnd|row))?(?:\s+{STS})?){_MANNER}{_LABEL}"),
        ("to", r"(?P<verb>knit|k|purl|p|work)\s+to\s+(?:the\s+)?(?:next\s+)?(?:marker|m)(?![\w-])"),
        ("work", rf"(?P<verb>knit|k|purl|p|work|patt)\s*(?:across\s+)?{_THE}(?:(?:remaining|first|last)\s+)?(?P<n>{N})(?![\w.])(?:\s+{_WHO}{STS})?{_MANNER}{_LABEL}"),
        ("again", rf"(?P<n>{N})\s+{_WHO}{STS}{_LABEL}"),
        ("again", rf"(?P<n>{N})(?P<label>{_BRACKET}|{_BY_WORD})"),
    )
)
"""The kinds of steps, in the order tried."""
_REPEAT: Final = regex(
    r"(?P<verb>rep(?:eat)?\.?|work)\s+(?:from\s+)?(?:\*\s*(?:-|to|and|\u2013)\s*\*|\*)\s*,?\s*(?:(?P<once>once)(?P<more>\s+more)?|(?P<twice>twice)(?P<more2>\s+more)?|a\s+total\s+of\s+(?P<total>\w+)\s+times|(?P<all>\w+)\s+times\s+in\s+(?:all|total)|(?P<further>\w+)\s+(?:more\s+times|times\s+more))(?![\w-])",
    re.IGNORECASE,
)
_BESIDES: Final = regex(
    rf"\s*[,(]?\s*(?P<said>(?:but\s+|only\s+)?(?:this|the\s+second)\s+time\s+(?:it(?:'s|\s+is)|for)\s+(?:the\s+)?(?:back|front)(?:\s+and\s+the\s+last\s+marker\s+(?:is|marks)\s+(?:the\s+)?{_FOR_ROUND})?)\s*\)?",
    re.IGNORECASE,
)
"""What is told of the second time of a repeat."""
_FIRST_AGAIN: Final = regex(r"(?:k|knit)\s+the\s+(?:very\s+)?first\s+st(?:itch)?\s+(?:once\s+)?(?:again|more)(?![\w-])", re.IGNORECASE)
_JOINT: Final = regex(r"\s*(?:[,;:]|-+(?=\s)|[\u2013\u2014]|\s(?=and\b|then\b|with\s+(?:an?\s+)?(?:marker|m|thread)\b))\s*(?:(?:and|then)\s+)*|\s+(?=\*)", re.IGNORECASE)
_SUM: Final = regex(
    rf"\s*(?:[:;=,(]|-+|[\u2013\u2014]|\.)\s*(?:(?:=|for|there\s+are(?:\s+now)?|you\s+(?:now\s+)?have|a\s+total\s+of|which\s+(?:is|makes))\s+)*(?P<n>{N})\s+{STS}(?:\s+(?:in\s+(?:all|total)|altogether|total|now|(?:remain|left|rem)|on\s+(?:the|your)\s+needles?|for\s+(?:the\s+)?(?:body|back|front)))*\s*\)?(?=\s*[.;]|\s*$)",
    re.IGNORECASE,
)
_TURN: Final = regex(r"\s*[.,;]\s*(?:and\s+)?turn(?=\s*\.?\s*$)", re.IGNORECASE)
"""Behind stitches that wait, rows follow on the others: no short row turns there."""
_END: Final = regex(r"\s*(?:\.(?!\d)|$)")
_ROW: Final = r"(?P<row>row|rnd|round)"
_THUS: Final = r"(?:\s+(?:as\s+(?:follows|folls?)|like\s+this|thus|so))?"
_MARKS: Final = r"(?:plac(?:e|ing)|put(?:ting)?|set(?:ting)?)\s+(?:the\s+|all\s+)*markers?"
_HEADS: Final = tuple(
    regex(expression, re.IGNORECASE)
    for expression in (
        rf"(?:now\s+)?{_MARKS}\s+(?:on|in)\s+(?:the\s+)?next\s+{_ROW}{_THUS}\s*:\s*",
        rf"(?:knit|purl|work)\s+(?:1|one|a|the\s+next)\s+{_ROW}\s*,?\s*(?:(?:and|while)\s+)?{_MARKS}{_THUS}\s*:\s*",
        rf"(?:now\s+)?{_MARKS}\s+while\s+(?:you\s+)?(?:knit|purl|work)(?:ing)?\s+(?:1|one|a|the\s+next)\s+{_ROW}{_THUS}\s*:\s*",
        rf"(?:on|in)\s+(?:the\s+)?next\s+{_ROW}\s*[,:]?\s+",
    )
)
"""Heads that say in a sentence that one row is told."""
_NO_ROW: Final = regex(
    rf"(?P<said>(?:now\s+|next\s*,?\s+)?(?:divide|separate|split)\s+(?:the\s+)?(?:(?:yoke|work|piece|sts|stitches)\s+)?(?:for|into)\s+(?:the\s+)?(?:body\s+and\s+(?:the\s+)?sleeves|sleeves\s+and\s+(?:the\s+)?body)|(?:the\s+)?(?:yoke|work|piece)\s+is\s+(?:now\s+)?divided\s+(?:for|into)\s+body\s+and\s+sleeves|(?:now\s+)?(?P<holds>(?:put|place|set|slip)\s+(?:the\s+|both\s+)?sleeves?\s+(?:{STS}\s+)?{ON_HOLDER}))(?:\s+(?:as\s+(?:follows|folls?)|like\s+this|thus))?\s*:\s*",
    re.IGNORECASE,
)
_PLAIN_HEAD: Final = regex(r"[^:.*]{1,60}:\s*")
_START: Final = regex(r"(?:^|(?<=[.!]\s))\s*(?=[A-Za-z*])")
_LEAST: Final = 3
"""Steps of a row that is one of these: two are read by themselves."""
_MOST: Final = 60
_MOST_TIMES: Final = 8


@dataclass(frozen=True, slots=True)
class _Step:
    """One step of a row."""

    kind: str
    pieces: tuple[str | tuple[int, int], ...]
    """Its words in the grammar, put in or from a place in the line."""
    said: tuple[str, ...] = ()
    hub: bool = False
    """Whether it is a step that only such rows have: stitches that wait, or a part that is named."""


def write_hub_rounds(line: Reworded) -> Reworded:
    """Write the first such row of a line in the grammar's words; the same line if it has none."""
    line = _write_armholes(line)
    for start in _START.finditer(line.text):
        head, at, said = _head(line.text, start.end())
        found = _steps(line.text, at)
        if found is None:
            continue
        steps, end = found
        if _HOLDS.match(line.text, start.end(), at) is not None and not any(step.kind == "hold" for step in steps):
            continue
        marked = _MARKED.match(line.text, start.end(), at)
        if marked is not None:
            if not head and instructs(f"{line.text[start.end() : marked.start('marks')]} {line.text[marked.end() : at]}"):
                continue  # "knit 2 rounds, placing markers" is more than this row
            steps = _with_markers(steps)
            said = (*said, line.text[start.end() : at].strip(" :"))
        if len(steps) < _LEAST or not any(step.hub for step in steps):
            continue
        pieces: list[str | tuple[int, int]] = [head] if head else []
        for number, step in enumerate(steps):
            pieces += [", ", *step.pieces] if number and step.kind != "next row" else step.pieces
        total = _SUM.match(line.text, end)
        if total is not None:
            pieces[:] = _counted(pieces, steps, total.span("n"))
            end = total.end()
        turn = _TURN.match(line.text, end)
        if turn is not None and any(step.kind == "these" for step in steps):
            pieces.append(". Turn work")
            end = turn.end()
        made = laid_anew(line, at if not head and not said else start.end(), end, pieces)
        told = (*said, *dict.fromkeys(words for step in steps for words in step.said))
        return replace(made, kept=(*made.kept, *told))
    return line


_ARMHOLES: Final = regex(
    rf"(?:^|(?<=[.!]\s))\s*(?:(?:on|in)\s+(?:the\s+)?next\s+(?:rnd|round)\s*[,:]?\s*)?(?:cast|bind)\s+off\s+(?:for\s+(?:the\s+)?armholes\s*[:,]?\s*)?(?P<n>{N})\s+{STS}\s+(?:for\s+(?:the\s+)?armholes\s+)?(?:on|at)\s+(?:both\s+sides|each\s+side|either\s+side)\s+of\s+(?:both|the\s+two|each(?:\s+of\s+the)?)\s+(?:side\s+)?(?:threads?|markers?|marker\s+threads?)"
    rf"(?:\s*[,(]?\s*(?:=|that\s+is)\s*(?P<each>{N})\s+{STS}\s+(?:at|on|under)\s+each\s+(?:side|arm))?(?:\s*(?:,|and|=|\s)\s*(?:and\s+)?(?P<left>{N})\s+{STS}\s+(?:(?:remain|left)\s+)?(?:for\s+)?(?:(?:the\s+)?front\s+and\s+(?:the\s+)?back\s+each|each\s+(?:for\s+)?(?:the\s+)?front\s+and\s+(?:the\s+)?back))?\s*\)?(?=\s*\.?\s*$)",
    re.IGNORECASE,
)
"""Underarms bound off on both sides of the beginning of the round and of the marker in its middle."""


def _write_armholes(line: Reworded) -> Reworded:
    """Write armholes bound off at both sides as one round; the same line if it has none, or if its own sums do not fit.

    The front goes to the marker and the back by its number, so that a marker elsewhere does not fit.
    """
    found = _ARMHOLES.search(line.text)
    if found is None or (found["each"] and _numbers(found["each"]) != [2 * each for each in _numbers(found["n"])]):
        return line
    number = found.span("n")
    both = re.sub(r"\d+", lambda each: str(2 * int(each.group())), found["n"])
    left = found.span("left")
    back: tuple[str | tuple[int, int], ...] = (
        (" sts, work ", left, " sts in pattern, bind off ") if found["left"] else (" sts, work to last ", number, " sts, bind off ")
    )
    before: list[str | tuple[int, int]] = ["Next rnd: Bind off ", number, " sts, work to ", number]
    pieces = [*before, f" sts before marker, bind off {both}", *back, number, " sts"]
    return laid_anew(line, *found.span(), pieces)


def _numbers(told: str) -> list[int]:
    """Return the numbers of a list of sizes."""
    return [int(number) for number in re.findall(r"\d+", told)]


_HOLDS: Final = regex(rf"(?:now\s+)?{_PUT}\s.*\bsleeve", re.IGNORECASE)
_MARKED: Final = regex(rf".*\b(?P<marks>{_MARKS})", re.IGNORECASE)


def _with_markers(steps: list[_Step]) -> list[_Step]:
    """Put a marker between each two parts, where the head has markers placed and no step says where.

    Stitches of a raglan or a seam among them may be what is marked: they stay as they are.
    """
    parts = all(step.kind == "work" and step.said and not _SEAMS.search(step.said[0]) for step in steps)
    if not parts:
        return steps
    mark = _Step("mark", ("pm",))
    return [one for step in steps for one in (step, mark)][:-1]


_SEAMS: Final = regex(_LINE, re.IGNORECASE)


def _counted(
    pieces: list[str | tuple[int, int]], steps: list[_Step], count: tuple[int, int]
) -> list[str | tuple[int, int]]:
    """Put the count behind the row that it is of: before what begins the round anew."""
    behind = len(steps[-1].pieces) if steps[-1].kind == "next row" else 0
    row, rest = pieces[: len(pieces) - behind], pieces[len(pieces) - behind :]
    return [*row, ". ", count, " sts", *rest]


def announces_one_row(row: str) -> bool:
    """Return whether a row of a page ends with the head of such a round alone, so that its steps stand below it."""
    if not row.endswith(":"):
        return False
    heads = (*_HEADS[:-1], _NO_ROW)  # the last has no colon
    return any(form.fullmatch(row, start.end()) for start in _START.finditer(row) for form in heads)


def _head(text: str, at: int) -> tuple[str, int, tuple[str, ...]]:
    """Return the head that a row is given instead of its own, where its steps begin, and what is said of the head."""
    for form in _HEADS:
        head = form.match(text, at)
        if head is not None:
            return f"Next {head['row'].lower()}: ", head.end(), ()
    divides = _NO_ROW.match(text, at)
    if divides is not None:
        return "", divides.end(), (divides["said"],)
    plain = _PLAIN_HEAD.match(text, at)
    return "", plain.end() if plain is not None else at, ()


def _steps(text: str, at: int) -> tuple[list[_Step], int] | None:
    """Take a row apart.

    Returns:
        Its steps in order, those between stars as often as they are worked, and the offset behind them; None if a word of
        it belongs to none.
    """
    steps: list[_Step] = []
    star = closed = -1
    group: list[_Step] = []
    verb = ""
    while len(steps) < _MOST:
        if text.startswith("*", at):
            if star < 0:
                star, at = len(steps), at + 1
                at += len(text[at:]) - len(text[at:].lstrip())
            elif closed < 0:
                closed, at = len(steps), at + 1
                group = steps[star:]
            else:
                return None
            if closed < 0:
                continue
        else:
            repeat = _REPEAT.match(text, at)
            if repeat is not None:
                if star < 0:
                    return None
                group = group or steps[star:]
                more = _more(repeat, apart=0 <= closed < len(steps))
                if more is None or not group:
                    return None
                steps += group * more
                at, star, closed, group = repeat.end(), -1, -1, []
                besides = _BESIDES.match(text, at)
                if besides is not None:
                    steps[-1] = replace(steps[-1], said=(*steps[-1].said, besides["said"]))
                    at = besides.end()
            else:
                found = _step(text, at, steps, verb)
                if found is None:
                    return None
                step, at, verb = found
                steps.append(step)
        if any(form.match(text, at) is not None for form in (_SUM, _END, _TURN)):
            return (steps, at) if star < 0 else None
        if text.startswith("*", at):
            continue
        joint = _JOINT.match(text, at)
        if joint is None:
            return None
        at = joint.end()
    return None


def _more(repeat: re.Match[str], *, apart: bool) -> int | None:
    """Return how often the steps between stars are worked besides the first time; None where two numbers may be meant.

    Args:
        repeat: What is printed.
        apart: Whether other steps stand between the stars and the repeat.
    """
    adds = repeat["verb"].lower() != "work" or apart
    if repeat["once"]:
        return 1 if adds or repeat["more"] else None
    if repeat["twice"]:
        return 2 if adds or repeat["more2"] else None
    word = repeat["total"] or repeat["all"] or repeat["further"]
    number = number_of(word)
    if number is None or not 1 < number + bool(repeat["further"]) <= _MOST_TIMES:
        return None
    return number if repeat["further"] else None if apart else number - 1


def _step(text: str, at: int, before: list[_Step], verb: str) -> tuple[_Step, int, str] | None:
    """Return the step at a place, the offset behind it, and the verb that a number alone behind it takes."""
    again = _FIRST_AGAIN.match(text, at)
    if again is not None:
        return _Step("next row", (". K1, pm for new BOR",)), again.end(), ""
    for kind, form in _STEPS:
        match = form.match(text, at)
        if match is None:
            continue
        step = _written(kind, match, text, before, verb)
        if step is None:
            continue
        worked = match.groupdict().get("verb")
        return step, match.end(), (worked or verb) if kind in ("work", "again", "mark") else ""
    return None


def _written(kind: str, match: re.Match[str], text: str, before: list[_Step], verb: str) -> _Step | None:
    """Write a step in the grammar's words; None if it is none behind those before it."""
    groups = match.groupdict()
    label = _name(groups.get("label") or groups.get("other"))
    said = (label,) if label else ()
    number = match.span("n") if groups.get("n") else (0, 0)
    hub = bool(label)
    if kind == "mark":
        return _Step(kind, ("pm for BOR" if groups["round"] else "pm",))
    if kind in ("take", "pass"):
        return _Step(kind, ("remove marker" if kind == "take" else "sm",))
    if kind == "hold":
        part = _PART_OF.search(label)
        return _Step(kind, ("hold ", number, f" sts for {part.group().lower()}" if part else " sts"), hub=True)
    if kind == "these":
        told = groups["them"] or _AND.search(text, 0, match.start())
        if not told or not before or before[-1].kind not in ("work", "far"):
            return None  # "work 8, place on a holder" may be of the next ones
        part = _PART_OF.search(" ".join((*before[-1].said, *said)))
        name = f" for {part.group().lower()}" if part else ""
        return _Step(kind, ("hold these ", *((number, " ") if groups.get("n") else ()), f"sts{name}"), hub=True)
    if kind in ("cast", "bind"):
        gone = (groups.get("gone") or "").strip()
        words = "cast on" if groups["do"].lower().endswith("up") else match.span("do")
        return _Step(kind, (words, " ", number, " sts"), (*said, gone) if gone else said, hub)
    if kind == "again":
        return _Step("work", (f"{verb} ", number), said, hub) if verb else None
    if kind == "far" and (not before or before[-1].kind != "bind"):
        return None
    worked, manner = match.span("verb"), " in pattern" if groups.get("manner") else ""
    if kind in ("work", "far"):
        gap = " " if text[worked[1] : number[0]] else ""
        open_verb = groups["verb"].lower() in ("work", "patt")
        return _Step(kind, (worked, gap, number, *([" sts" + manner] if manner or open_verb else [])), said, hub)
    return _Step(kind, (worked, " to marker" if kind == "to" else " to end", manner), said, hub)


_AND: Final = regex(r"[^,;]\s+and\s+$", re.IGNORECASE)
_PART_OF: Final = regex(rf"\b(?:(?:left|right|first|second)\s+)?(?:{PART})\b", re.IGNORECASE)
_SIGNS: Final = regex(r"^[\s,;:()\[\]=\u2013\u2014-]*(?:(?:for|of|these|this|which|those|are|is|will|be|now|your)\s+)*|[\s)\]]+$", re.IGNORECASE)


def _name(label: str | None) -> str:
    """Return what stitches are for, without its signs; empty if nothing is said."""
    return _SIGNS.sub("", label) if label else ""
