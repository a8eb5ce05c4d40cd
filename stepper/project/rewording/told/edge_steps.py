"""Write a shaping in steps at one edge or at one end of rows as a sentence for each step. No I/O.

Theory of operation. "At the neck edge (beginning of the WS rows) bind off 3 sts once and 2 sts twice", "Cast off 9
sts at the beginning of the next row and the remaining 9 two rows later": a verb, numbers of stitches, and where, on
which rows and how often, before the first number for all of them or behind one for it. A sentence is taken apart into
phrases of these kinds (`STEPS`), in any order; each step is then written by itself, "Bind off 3 sts at beginning of
every WS row 1 times". An end of rows of one side needs no knowledge of the edge, which is only said then. A step
without its rows, or one of several without its number of times, leaves the sentence as it is printed. Looked for only
in a line that nothing else reads. Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import SIDE, STS, N
from stepper.project.rewording.told.phrases import Kinds, ToldPhrase, leading_phrases, prepare_kinds
from stepper.records import dataclass
from stepper.regex import regex

_EDGE: Final = r"(?:(?:the|each)\s+)?(?P<edge>neck|armhole|shoulder|front|side|inner|outer|left|right|raglan)\s+(?:edge|side)"
_ROWS: Final = (
    rf"(?:(?P<this>this\s+and\s+(?:the\s+)?next)\s+(?:(?P<thisside>{SIDE})\s+)?rows?"
    rf"|(?:the\s+)?(?:(?P<alt>(?:(?P<altmany>{N})\s+)?(?:next|following|foll\.?)\s+(?:(?P<altmore>{N})\s+)?(?:alt(?:ernate)?\.?|2nd|second|other)|(?:row\s+after\s+(?:the\s+)?next)|alt(?:ernate)?\s+row\s+(?:after|following)(?:\s+(?:that|this))?(?=\s*[.;,]|\s*$))|(?P<next>next|following|foll\.?)(?:\s+(?P<many>{N}))?)(?:\s+(?P<nextside>{SIDE}))?(?:\s+rows?|(?<=next))"
    rf"|(?:the\s+)?(?:(?P<after>{N})\s+(?:rows?\s+)?(?:after(?:\s+(?:that|those|these|them))?|following|thereafter)|(?P<later>row\s+after(?:\s+that)?))(?=\s*[,.;]|\s*$|\s+and\b|\s+then\b)"
    rf"|(?:the\s+)?(?:(?P<every>every|each)\s+(?:(?P<other>other|alt(?:ernate)?\.?|2nd|second)\s+)?(?:(?P<side>{SIDE})\s+)?(?P<row>rows?)"
    rf"|(?:all\s+(?:the\s+)?)?(?:(?P<others>other|alt(?:ernate)?\.?|2nd|second)\s+)?(?:(?P<sides>{SIDE})\s+)?(?P<rows>rows)))"
)

STEPS: Final[Kinds] = prepare_kinds(
    # --- how often ---
    ("often", rf"(?:once|twice|thrice|(?:for\s+)?(?P<n>{N})\s+times?)(?:\s+(?P<more>more|again))?(?:\s+in\s+(?:all|total))?\b"),
    # --- on which rows, and at which end of them ---
    ("rows", rf"\(?(?:(?:that\s+is|i\.e\.|which\s+is)\s*,?\s*)?(?:(?:at|on|from)\s+)?(?:the\s+)?(?P<end>beg(?:inning)?|start|end)s?\.?\s+of\s+{_ROWS}\s*\)?\s*[,:]?(?![\w-])"),
    ("rows", rf"(?:(?:on|in|of)\s+)?{_ROWS}\s*:?(?![\w-])"),
    ("lone", r"at\s+(?:the\s+)?(?P<end>beg(?:inning)?|start|end)(?:\s+of\s+(?:the|each|every)\s+row)?(?![\w-])(?!\s+of\b)"),
    ("apart", rf"(?P<apart>{N})\s+rows\s+later\b"),
    # --- at which edge ---
    ("edge", rf"(?:(?:at|on|from|along)\s+{_EDGE}|\(\s*{_EDGE.replace('<edge>', '<named>')}\s*\))\s*[,:]?(?![\w-])"),
    ("same", r"(?:at|on|from)\s+(?:(?:the\s+)?same|this|that)\s+(?:edge|side)\b"),
    ("for", r"for\s+(?:the\s+)?(?:(?:left|right|front|back)\s+)?(?P<of>neck|armhole|shoulder|raglan)(?:line|(?P<both>s))?(?:\s+(?:edge|shaping|slope))?\s*[,:]?(?![\w-])"),
    # --- what ---
    ("do", r"(?P<do>(?:bind|cast)\s+off|(?-i:BO)|dec(?:rease)?\b\.?|inc(?:rease)?\b\.?)(?:\s+(?:in\s+(?:patt(?:ern)?|rib)|loosely)\b)?"),
    ("step", rf"(?P<rest>(?:the\s+)?(?:remaining|rem\b\.?|last)\s+)?(?P<n>{N})(?:\s+{STS})?\.?(?!\s+rows?\b)"),
    ("lead", r"(?:now|next|then)\b"),
)  # fmt: skip
"""The kinds of phrases about steps at an edge, in the order tried."""
_STARTS: Final = regex(r"(?P<joint>\s*[.,;]?\s*(?:and\s+)?(?:,\s*)?at\s+(?:the\s+)?same\s+time\s*[,:]?\s+)|(?:^|[.!:;])\s*(?=[A-Za-z])", re.IGNORECASE)
_SAME_TIME: Final = regex(r"\s*[.,;]?\s*(?:and\s+)?(?:,\s*)?at\s+(?:the\s+)?same\s+time\b", re.IGNORECASE)
"""What follows steps that another shaping goes on beside."""
_END: Final = regex(r"\s*[.;]|\s*$|\s*-+\s*\d|\s*=\s*\d|\s*[(\[]\s*\d[\d\s,()\[\]]*\s*(?:sts|stitches)\b")
_THING: Final = r"(?:the\s+)?(?:[a-z]+\s+){1,2}?(?:is|are)\s+(?:shaped|bound\s+off|cast\s+off|decreased|increased|worked)(?:\s+(?:from|at)\s+(?:the\s+)?[a-z]+\s+edge)?"
_ANNOUNCED: Final = regex(
    rf"(?:(?<=^)|(?<=\.\s))(?P<said>{_THING}\s+at\s+the\s+same\s+time\s+(?:as|that|while)\s+{_THING}\s*,?\s*(?:as\s+foll(?:ow)?s|thus)?)\s*:\s*(?=[a-z])(?=[^.:]*\bsame\s+time\b)(?P<next>[a-z])",
    re.IGNORECASE,
)
"""What only says that the two shapings told behind it go on at once."""
_MOST: Final = 5
_HAS: Final = regex(r"\b(?:edge|beg(?:inning)?|start|end|ends)\b", re.IGNORECASE)


@dataclass(slots=True)
class _Step:
    """One step: so many stitches, and what its own words tell of it."""

    verb: str
    number: str
    rest: bool
    """Whether it is all that is left."""
    often: ToldPhrase | None = None
    rows: ToldPhrase | None = None
    edge: str = ""
    same: bool = False
    lone: ToldPhrase | None = None
    again: bool = False
    """Whether it is done once more, on the next row of its side or the next but one."""


def write_edge_steps(line: Reworded) -> Reworded:
    """Write each step of a shaping at one edge, or at one end of rows, as a sentence.

    Returns:
        The line; the same if it has no such shaping.
    """
    if not _HAS.search(line.text):
        return line
    told = _ANNOUNCED.search(line.text)
    if told is not None:
        cut = laid_anew(line, *told.span(), [told["next"].upper()])
        line = replace(cut, kept=(*cut.kept, told["said"].strip()))
    for start in reversed(list(_STARTS.finditer(line.text))):
        phrases, end = leading_phrases(line.text, start.end(), len(line.text), STEPS)
        beside = _SAME_TIME.match(line.text, end) is not None
        if _END.match(line.text, end) is None and not beside:
            continue
        made = _sentences(phrases)
        joined = bool(start["joint"]) and bool(line.text[: start.start()].strip())
        if not made or (start["joint"] and not joined):
            continue
        if joined or (beside and len(made) > 1):
            if not all(_AT_EDGE.search(words) for words in made):
                continue  # of steps that name no edge, side by side would be all of them at once
            made = [_AT_ONCE.join([made[0], *(words[0].lower() + words[1:] for words in made[1:])])]
        words = ". ".join(made)
        if joined:
            line = laid_anew(line, start.start(), end, [f"{_AT_ONCE}{words[0].lower()}{words[1:]}"])
        else:
            line = laid_anew(line, start.end(), end, [words])
        line = replace(line, kept=(*line.kept, *_said(phrases, words)))
    return line


def _said(phrases: tuple[ToldPhrase, ...], words: str) -> list[str]:
    """Return what is only said: what the steps are for, and an edge where the rows tell it."""
    beside = ("for",) if " edge" in words else ("for", "edge", "same")
    return [phrase.match.group().strip(" ,:()") for phrase in phrases if phrase.kind in beside]


_AT_ONCE: Final = ", at the same time "
_AT_EDGE: Final = regex(r"^(?!.*\. ).*\bat (?:neck|armhole|front|side) edge\b")


def _sentences(phrases: tuple[ToldPhrase, ...]) -> list[str]:
    """Return a sentence for each step; none where one does not say where, on which rows or how often."""
    found = _steps(phrases)
    if found is None:
        return []
    steps, ahead = found
    if ahead.often is not None and all(step.often for step in steps):
        return []  # "twice … 3 sts once, then 2 sts twice": how often the whole is done would be lost
    if len(steps) > 1 and ahead.rows is None and ahead.edge == "" and ahead.lone is None:
        _share(steps)
    made: list[str] = []
    before: _Step | None = None
    for step in steps:
        step.often = step.often or ahead.often
        bare = step.rows is None and not (step.edge or step.same)
        if bare and not (ahead.rows or ahead.edge or ahead.lone) and before is not None and step.often:
            step.edge = before.edge  # "4 sts at armhole edge once, then 2 sts twice"
            step.rows = before.rows if _is_every(before.rows) else None
            step.lone = before.lone
        elif bare:
            step.rows, step.edge, step.lone = ahead.rows, ahead.edge, step.lone or ahead.lone
        elif step.edge or step.same:
            step.rows = step.rows or (ahead.rows if not step.same or _is_every(ahead.rows) else None)
        if not step.edge:
            goes_on = step.same or (step.rows is not None and bool(step.rows.get("alt") or step.rows.kind == "apart"))
            step.edge = ahead.edge or (before.edge if before is not None and goes_on else "")
        words = _sentence(step, before, alone=len(steps) == 1)
        if not words:
            return []
        made.append(words)
        before = step
    return made


def _steps(phrases: tuple[ToldPhrase, ...]) -> tuple[list[_Step], _Step] | None:
    """Return the steps, and what is told before the first of them; None if a thing is told twice."""
    steps: list[_Step] = []
    ahead = _Step("", "", False)
    verb = use = ""
    for phrase in phrases:
        here = steps[-1] if steps else ahead
        if phrase.kind == "do":
            if verb:
                return None
            verb = phrase.get("do").lower()
        elif phrase.kind == "step":
            if not verb:
                return None
            steps.append(_Step(verb, phrase.get("n"), bool(phrase.get("rest"))))
        elif phrase.kind == "edge":
            if here.edge:
                return None
            here.edge = (phrase.get("edge") or phrase.get("named")).lower()
        elif phrase.kind == "for":
            use = use or ("" if phrase.get("both") else phrase.get("of").lower())
        elif phrase.kind == "same":
            if not steps or here.same:
                return None
            here.same = True
        elif phrase.kind in ("often", "rows", "lone"):
            if phrase.kind == "rows" and steps and _is_again(here, phrase):
                if here.verb[:1] in "bc":
                    steps.append(_Step(here.verb, here.number, False, rows=phrase, edge=here.edge, lone=here.lone))
                else:
                    here.again = True
                continue
            if phrase.kind == "rows" and _opens_every(here.rows, phrase):
                if here.often is not None:
                    return None  # "on next row and 3 times more on foll alt rows" is told of those alone
                here.rows = None  # "of next and foll alt rows"
            if getattr(here, phrase.kind) is not None:
                return None
            setattr(here, phrase.kind, phrase)
        elif phrase.kind == "apart":
            if here.rows is not None or len(steps) < 2:
                return None
            here.rows = phrase
    if use and not any(step.edge for step in (*steps, ahead)) and use != "raglan":
        ahead.edge = use
    return (steps, ahead) if steps else None


def _opens_every(first: ToldPhrase | None, rows: ToldPhrase) -> bool:
    """Return whether two phrases tell of every other row from the next on: "of next and foll alt rows"."""
    if first is None or first.kind != "rows" or not first.get("next") or first.get("many"):
        return False
    return bool(rows.get("alt")) and _is_every(rows)


def _is_again(step: _Step, rows: ToldPhrase) -> bool:
    """Return whether a step is done again on another row: "on next RS row and the following RS row"."""
    first = step.rows
    if first is None or first.kind != "rows" or step.often is not None or not first.get("next"):
        return False
    if first.get("many") or first.get("end"):
        return False
    same = first.get("nextside") and first.get("nextside").lower() == rows.get("nextside").lower()
    return bool(rows.get("alt") and not first.get("nextside")) or bool(rows.get("next") and not rows.get("many") and same)


def _share(steps: list[_Step]) -> None:
    """Give what the last step alone tells of its rows or its edge to those before it, each told with its times."""
    last = steps[-1]
    if any(step.rows or step.edge or step.same or step.lone or step.often is None for step in steps[:-1]):
        return
    if last.rows is None or _is_every(last.rows):
        for step in steps[:-1]:
            step.rows, step.edge, step.lone = last.rows, last.edge, last.lone


def _told(rows: ToldPhrase, name: str) -> str:
    """Return what rows told one by one, or in the plural, say of a kind: `row`, `side` or `other`."""
    return rows.get(name) or rows.get(f"{name}s")


def _is_every(rows: ToldPhrase | None) -> bool:
    """Return whether rows are told without an end to them: "every RS row", "foll alt rows"."""
    if rows is None or rows.kind != "rows":
        return False
    many = rows.match.group().rstrip(" :,)").lower().endswith("rows")
    told = rows.get("next") and rows.get("nextside") and not rows.get("many")
    return bool(_told(rows, "row") or (many and (told or (rows.get("alt") and not (rows.get("altmany") or rows.get("altmore"))))))


def _sentence(step: _Step, before: _Step | None, *, alone: bool) -> str:
    """Return one step as a sentence; empty if nobody can tell what it is."""
    verb = "Bind off" if step.verb[:1] in "bc" else "Dec" if step.verb.startswith("dec") else "Inc"
    what = f"{verb} {step.number} {'st' if step.number.lower() in ('1', 'one') else 'sts'}"
    often = _times(step.often)
    name = "armhole" if step.edge == "shoulder" else step.edge  # a shoulder is bound off from there
    edge = f"{name} edge" if name in ("neck", "armhole", "front", "side") else ""
    rows = step.rows
    if step.rest and (before is None or often or verb != "Bind off"):
        return ""
    end = ""
    for phrase in (rows, step.lone):
        end = end or (phrase.get("end") if phrase is not None else "")
    end = "end" if end.lower() == "end" else "beginning" if end else ""
    if end == "end" and verb == "Bind off":
        return ""
    if rows is not None and rows.kind == "apart":
        if rows.get("apart").lower() not in ("2", "two") or before is None or not _is_one_row(before) or often:
            return ""
        return f"Work 1 row even. {f'Bind off rem {step.number} sts' if step.rest else f'{what} at beginning of next row'}"
    if rows is None:
        return _at_edge(what, step, before, edge, often, alone=alone)
    side = next((rows.get(one) for one in ("side", "sides", "nextside", "thisside") if rows.get(one)), "")
    side = "" if not side else "WS" if side.lower().startswith("w") else "RS"
    if _is_every(rows):
        return _on_every(what, step, edge, often, end, side, alone=alone)
    if rows.get("alt"):
        many = rows.get("altmany") or rows.get("altmore") or "1"
        again = int(many) if many.isdigit() else 0
        if side or often or step.rest or before is None or not _is_one_row(before):
            return ""
        if edge and not end:
            return f"{what} at {edge} every 2nd row {many} times"
        return ". ".join([f"Work 1 row even. {what} at {end} of next row"] * again) if end and again < _MOST else ""
    if step.rest and not end and rows.get("next") and before is not None and before.rows is not None:
        same = side and before.rows.get("nextside").lower()[:1] == rows.get("nextside").lower()[:1]
        return f"Work 1 row even. Bind off rem {step.number} sts" if same and not often and _is_one_row(before) else ""
    if step.rest and not end:
        return f"Bind off rem {step.number} sts" if rows.get("later") and not often else ""
    many = rows.get("many") or rows.get("after") or ("2" if rows.get("this") else "")
    if often and not (often == "1" and not many):
        return ""
    if side and end:
        return f"{what} at {end} of every {side} row {many or 1} times"
    if end:
        return f"{what} at {end} of next {f'{many} rows' if many else 'row'}"
    if edge and side and many:
        return f"{what} at {edge} every {side} row {many} times"
    if edge and verb != "Bind off":
        once = f", then every {side or '2nd'} row 1 times" if step.again else ""
        return f"{what} at {edge} on next {f'{side} ' if side else ''}{f'{many} rows' if many else 'row'}{once}"
    if edge and not many:
        return f"{what} at {edge} on next {f'{side} ' if side else ''}row"
    return ""


def _at_edge(what: str, step: _Step, before: _Step | None, edge: str, often: str, *, alone: bool) -> str:
    """Return a step of which no rows are told: at the edge so often, or where the step before was, again."""
    if step.same and before is not None and before.rows is not None and often:
        side = before.rows.get("nextside") or _told(before.rows, "side") if before.rows.kind == "rows" else ""
        if side and before.rows.get("end").lower() not in ("", "end"):
            return f"{what} at beginning of every {'WS' if side.lower().startswith('w') else 'RS'} row {often} times"
    if not edge or not what.startswith("Bind off"):
        return ""
    if often:
        return f"{what} at {edge} {often} times"
    return "" if alone else f"{what} at {edge} 1 times" if before is not None else f"{what} at {edge}"


def _on_every(what: str, step: _Step, edge: str, often: str, end: str, side: str, *, alone: bool) -> str:
    """Return a step on every so many rows."""
    rows = step.rows
    if rows is None or not often:
        return ""
    other = _told(rows, "other") or rows.get("alt")
    if side and end and not other:
        return f"{what} at {end} of every {side} row {often} times"
    if other and edge:
        return f"{what} at {edge} every {f'other {side}' if side else '2nd'} row {often} times"
    if side and edge:
        return f"{what} at {edge} every {side} row {often} times"
    if end == "beginning" and not side and not other and rows.get("every"):
        # Of one step alone nobody can tell whether it is worked on both sides; rows in pairs are of two armholes, never of a neck.
        both = not edge or (edge == "armhole edge" and often.isdigit() and int(often) % 2 == 0)
        if alone or not both or not what.startswith("Bind off"):
            return ""
        return f"{what} at beginning of next {often} rows"
    return ""


def _times(often: ToldPhrase | None) -> str:
    """Return a number of times; empty if there is none."""
    if often is None:
        return ""
    words = often.match.group().lower()
    return often.get("n") or {"once": "1", "twice": "2", "thrice": "3"}[words.split()[0]]


def _is_one_row(step: _Step) -> bool:
    """Return whether a step was one row, worked where the next of its kind is two rows on."""
    rows = step.rows
    if rows is None or _times(step.often) not in ("", "1"):
        return False
    if rows.kind == "apart":
        return True
    placed = bool(rows.get("end") or step.edge)
    return placed and bool(rows.get("next") or rows.get("alt")) and not rows.get("many")
