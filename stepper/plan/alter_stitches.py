"""Alterations of stitches: no bobbles, another rib, another bind-off. Sentences in, sentences out. No I/O."""

from __future__ import annotations

from dataclasses import replace

from stepper.project.instructions import (
    BindOff,
    ChartWork,
    Evenly,
    Phrase,
    PrintedCount,
    Sentence,
    WorkRounds,
)
from stepper.project.model import Alteration, Chart
from stepper.project.stitchwork import ChartPart, Element, Numbers, Several, Work

BOBBLE = "mb"


def with_bind_off(sentence: Sentence, rule: Alteration) -> Sentence:
    """Bind off the way the rule says; a grafted or drawn-up end stays as it is."""
    if isinstance(sentence, BindOff) and sentence.how == "bind off":
        return replace(sentence, manner=rule.words)
    return sentence


def with_count(sentence: Sentence, stitches: int) -> Sentence:
    """Spread the change to another count, and expect that one at the end of the line."""
    if isinstance(sentence, Evenly):
        return replace(sentence, to=Numbers((stitches,), sentence.place), by=None)
    if isinstance(sentence, PrintedCount) and not sentence.change:
        return replace(sentence, number=Numbers((stitches,), sentence.place))
    return sentence


# --- bobbles ------------------------------------------------------------------------------------------


def without_bobbles(sentence: Sentence, charts: dict[str, str]) -> Sentence:
    """Knit the stitch where the line makes a bobble.

    Args:
        sentence: Of a line.
        charts: Name, in small letters, of each chart with bobbles to the name of the one without.
    """
    if isinstance(sentence, Phrase):
        elements = tuple(_plain(element, charts) for element in sentence.elements)
        return sentence if elements == sentence.elements else replace(sentence, elements=elements)
    if isinstance(sentence, ChartWork) and sentence.name.lower() in charts:
        return replace(sentence, name=charts[sentence.name.lower()])
    return sentence


def _plain(element: Element, charts: dict[str, str]) -> Element:
    if isinstance(element, Work) and element.stitch == BOBBLE:
        return replace(element, stitch="k")
    if isinstance(element, Several):
        return replace(element, elements=tuple(_plain(inner, charts) for inner in element.elements))
    if isinstance(element, ChartPart) and element.name.lower() in charts:
        return replace(element, name=charts[element.name.lower()])
    return element


def chart_without_bobbles(chart: Chart) -> Chart | None:
    """Draw a chart with plain stitches for its bobbles; None if it has none."""
    if not any(cell.stitch == BOBBLE for drawn in chart.rounds for cell in drawn):
        return None
    rounds = tuple(
        tuple(replace(cell, stitch="k") if cell.stitch == BOBBLE else cell for cell in drawn)
        for drawn in chart.rounds
    )
    return replace(chart, rounds=rounds)


# --- ribs ---------------------------------------------------------------------------------------------

Ribbing = tuple[tuple[str, int], ...]


def with_rib(sentence: Sentence, rule: Alteration, side: str = "") -> Sentence:
    """Work another rib: in a repeat of knit and purl, with the edge stitches of a row, or by its name.

    Args:
        sentence: Of a line.
        rule: The ribs as seen from the right side.
        side: `WS` if the line is for wrong-side rows, which are worked the other way round.
    """
    if side == "WS":
        rule = replace(rule, rib=_behind(rule.rib), rib_printed=_behind(rule.rib_printed))
    if isinstance(sentence, WorkRounds):
        return _named_rib(sentence, rule)
    if not isinstance(sentence, Phrase):
        return sentence
    groups = [one for one in sentence.elements if isinstance(one, Several)]
    if len(groups) != 1:
        return sentence
    printed = _ribbing(groups[0])
    new = _turned_alike(rule, printed)
    if not printed or not new:
        return sentence
    counts = {code: times for (code, _), (_, times) in zip(printed, new, strict=False)}
    elements: list[Element] = []
    for one in sentence.elements:
        if isinstance(one, Several):
            works = tuple(Work(code, Numbers((times,), one.place), None, one.place) for code, times in new)
            elements.append(replace(one, elements=works))
        elif isinstance(one, Work) and (one.stitch, one.times.values) in {(c, (t,)) for c, t in printed}:
            elements.append(replace(one, times=Numbers((counts[one.stitch],), one.place)))
        else:
            return sentence  # more than a rib with its edge stitches
    return replace(sentence, elements=tuple(elements))


def _behind(rib: Ribbing) -> Ribbing:
    return tuple(("p" if code == "k" else "k", times) for code, times in rib)


def _turned_alike(rule: Alteration, printed: Ribbing) -> Ribbing:
    """Return the new rib, beginning with the same stitch as the printed one; None for a different rib."""
    if not printed:
        return ()
    for turn in range(len(printed)):
        turned = printed[turn:] + printed[:turn]
        if rule.rib_printed not in ((), turned):
            continue
        if rule.rib_printed:
            back = (len(rule.rib) - turn) % len(rule.rib)
            return rule.rib[back:] + rule.rib[:back]
        first = next((at for at, (code, _) in enumerate(rule.rib) if code == printed[0][0]), 0)
        return rule.rib[first:] + rule.rib[:first]
    return ()


def _named_rib(sentence: WorkRounds, rule: Alteration) -> Sentence:
    """Rename "k2, p2 rib"; the grammar knows ribs of one knit and one purl stretch by their numbers."""
    if not sentence.manner.startswith("rib"):
        return sentence
    printed = tuple(zip("kp", (int(word) for word in sentence.manner.split()[1:]), strict=False))
    if rule.rib_printed not in ((), printed) or tuple(code for code, _ in rule.rib) != ("k", "p"):
        return sentence
    return replace(sentence, manner=" ".join(["rib", *(str(times) for _, times in rule.rib)]))


def _ribbing(group: Several) -> Ribbing:
    """Return the stitches of a group that is a rib; None if it is not."""
    found = tuple(
        (one.stitch, one.times.values[0])
        for one in group.elements
        if isinstance(one, Work) and one.stitch in ("k", "p") and len(one.times.values) == 1
    )
    whole = len(found) == len(group.elements) and {code for code, _ in found} == {"k", "p"}
    return found if whole else ()
