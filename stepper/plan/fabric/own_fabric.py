"""A fabric in the page's own words: what goes on in it, and how far it is known. No I/O.

Theory of operation. The rows of a pattern that the page names, and words worked to a length, are said again
row after row. What is shaped at the edges or between is known then by its count alone: each column is "own",
a stitch that the knitter works by the words of the row that is due. A row that is not worked in the pattern
ends that, and so does one that is turned or takes back stitches of another fabric.
"""

from __future__ import annotations

from stepper.craft.stitches import TURNS, stitch
from stepper.plan.drafts import DraftRound, Template, own_words_of
from stepper.plan.fabric.begun_charts import asks_pattern
from stepper.plan.fabric.columns import UnknownFabricError
from stepper.plan.state.in_hand import Column, Established
from stepper.project.stitchwork import Element, Several, Until, Work, every_element

_HERS: Column = (("own", ""),)
_OTHERS = TURNS | {"return", "pu", "rest"}
"""What a row may not hold that goes on in the words: stitches of another fabric, and turns."""


def hers(count: int) -> list[Column]:
    """Return the columns of so many stitches that are all the knitter's."""
    return [_HERS] * count


def in_own_words(cycle: tuple[Template, ...], line: int, start: int, worked: list[DraftRound]) -> Established:
    """Return the fabric that rows in own words leave.

    Args:
        cycle: The rows.
        line: That of the first in own words.
        start: Index of the first draft worked of them.
        worked: The drafts from there on.
    """
    once, end = worked[: len(cycle)], start + len(worked)
    shapes = bool(once) and once[0].before != once[-1].after
    again = () if shapes or (len(cycle) == 1 and not _lasts(cycle[0])) else cycle
    goes_on = bool(again) and keeps_its_count(cycle, worked)
    return Established(
        cycle=again,
        rounds=len(cycle),
        start=start,
        end=end,
        reached=end,
        why="" if goes_on else own_words_of(line),
        own=line,
        hers=goes_on,
    )


def _lasts(row: Template) -> bool:
    return row.own is not None and row.own.lasts is not None


def keeps_its_count(cycle: tuple[Template, ...], worked: list[DraftRound]) -> bool:
    """Return whether no row of a pattern changes the stitches, so that on others it leaves as many as it met.

    A row in own words without a count is taken to keep it, as everywhere; one with a count is for that count.
    """
    if any(row.counts or (row.own is not None and row.own.count is not None) for row in cycle):
        return False
    if any(draft.before != draft.after for draft in worked):
        return False
    met = [draft.template for draft in worked]
    return all(row.own is not None or row in met or _is_plain(row.elements) for row in cycle)


def _is_plain(elements: tuple[Element, ...]) -> bool:
    """Return whether stitches are all worked one into one."""
    return bool(elements) and all(
        isinstance(each, Work | Until) and (each.stitch == "pattern" or not stitch(each.stitch).change)
        for each in every_element(elements)
        if not isinstance(each, Several)
    )


def goes_on_as_lace(known: Established, worked: list[DraftRound]) -> bool:
    """Return whether a lace goes on beside what is shaped by its count alone, each stitch hers to keep in it.

    What is made and taken at the edges of a lace depends on where its holes fall there, which no page prints;
    a row of it keeps its number, though, so that every count stays known. Source: common practice.
    """
    cycle = known.cycle
    plain = cycle and not any(row.chart or row.evenly or row.own or row.stockinette for row in cycle)
    looked_at = any(asks_pattern(row.elements) for row in cycle)  # "knit the knit sts and purl the purl sts"
    return bool(plain) and not looked_at and len(worked) >= len(cycle) and keeps_its_count(cycle, worked)


def hers_after(draft: DraftRound, known: Established) -> list[Column]:
    """Return the columns after a row.

    Raises:
        UnknownFabricError: the row is not worked in the pattern.
    """
    template = draft.template
    spread = template is not None and template.evenly is not None and template.evenly.stitch == "pattern"
    goes_on = spread or bool(draft.due) or template in known.cycle
    if known.lace and template is not None:
        goes_on |= asks_pattern(template.elements)  # on a row of it that is plain no stitch is hers
    if not goes_on or draft.from_turn or draft.codes & _OTHERS:
        why = "its stitches are increased and decreased in the pattern"
        raise UnknownFabricError(why if known.lace else own_words_of(known.own))
    return hers(draft.after)
