"""Leftover yarn, kept in a small file beside the projects for the next garment. No I/O.

The file is YAML that reads like a label, so that the knitter can edit it. A garment's entries are replaced
when it is kept again; all others stay as they are.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import Final

from stepper.craft.figures import format_number
from stepper.craft.skeins import Skein
from stepper.plan.model import Plan
from stepper.project.draft import FileDraft
from stepper.project.keys.materials import read_amount
from stepper.project.page.quoting import value
from stepper.project.problems import Problem
from stepper.project.yaml_file.fields import Fields
from stepper.project.yaml_file.source import Mapping, read_nodes
from stepper.records import dataclass
from stepper.report.yarn import YarnRow

FILE_NAME: Final = "leftovers.yarn"
"""Name of the file, in the folder of the project. It does not end in `.yaml`, since garments do."""
SAME_THICKNESS: Final = 0.10
"""How much two yarn numbers may differ for one yarn to replace the other. Chosen here."""

_HEAD: Final = (
    "# Yarn left over from finished garments, kept by `stepper yarn FILE --keep`.",
    "# One entry for each yarn of each garment. Change it by hand as you like; grams and metres are what is",
    "# left, skein is what the label says, and `known` tells whether it was weighed or is the estimate.",
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Leftover:
    """What is left of one yarn of one garment."""

    yarn: str
    """Its name."""
    garment: str
    """Title of the garment it is left from."""
    grams: float
    """What is left. Range: above 0. Unit: g."""
    skein: Skein
    colour: str = ""
    """`#rrggbb`, or empty."""
    known: str = "estimated"
    """`weighed` or `estimated`."""

    @property
    def metres(self) -> float:
        """What is left. Unit: m."""
        return self.skein.metres_in(self.grams)


def list_leftovers(plan: Plan, rows: Iterable[YarnRow]) -> tuple[Leftover, ...]:
    """List what is or will be left of each yarn of a garment; yarns that are used up are left out."""
    found = []
    for row in rows:
        stock, ahead = plan.materials.stocks.get(row.key), row.forecast
        if stock is None or ahead is None or ahead.over_m is None:
            continue
        grams = round(stock.skein.grams_of(max(0.0, ahead.over_m)), 1)
        if grams <= 0:
            continue
        found.append(
            Leftover(
                yarn=row.name,
                garment=plan.title,
                grams=grams,
                skein=stock.skein,
                colour=row.colour or "",
                known="weighed" if ahead.weighed and not ahead.rest_m else "estimated",
            )
        )
    return tuple(found)


def read_leftovers(text: str) -> tuple[tuple[Leftover, ...], tuple[Problem, ...]]:
    """Read the file.

    Returns:
        The entries, and the problems of the file; an entry with a problem is left out.
    """
    root, problems = read_nodes(text)
    draft = FileDraft(text_lines=text.splitlines(), problems=problems)
    found: list[Leftover] = []
    if isinstance(root, Mapping):
        fields = Fields(root, "the file", problems)
        for node in fields.items("left"):
            if isinstance(node, Mapping):
                entry = _entry(node, draft)
                found += [entry] if entry is not None else []
            else:
                problems.append(node.place.problem("an entry holds keys and values, like the ones kept."))
        fields.close()
    return tuple(found), tuple(sorted(set(problems)))


def write_leftovers(entries: Iterable[Leftover]) -> str:
    """Return the text of the file. Always: `read_leftovers` reads the same entries from it."""
    return "\n".join([*_HEAD, "", "left:", *_lines(entries), ""])


def replace_leftovers(
    before: Iterable[Leftover], garment: str, now: Iterable[Leftover]
) -> tuple[Leftover, ...]:
    """Replace a garment's entries by what is left of it now."""
    return (*(each for each in before if each.garment != garment), *now)


def find_usable(
    row: YarnRow, skein: Skein | None, entries: Iterable[Leftover], garment: str
) -> list[Leftover]:
    """Find what other garments left of the same yarn, or of one of the same thickness and colour."""
    found = []
    for entry in entries:
        thick = skein is not None and abs(entry.skein.tex / skein.tex - 1) <= SAME_THICKNESS
        same = entry.yarn.casefold() == row.name.casefold() or bool(row.colour and entry.colour == row.colour)
        if entry.garment != garment and same and (thick or skein is None):
            found.append(entry)
    return found


def _lines(entries: Iterable[Leftover]) -> Iterator[str]:
    for entry in entries:
        yield f"  - yarn: {value(entry.yarn)}"
        if entry.colour:
            yield f'    colour: "{entry.colour}"'
        yield f"    grams: {format_number(entry.grams)}"
        yield f"    metres: {format_number(entry.metres)}"
        grams, metres = format_number(entry.skein.grams), format_number(entry.skein.metres)
        yield f"    skein: {{grams: {grams}, metres: {metres}}}"
        yield f"    from: {value(entry.garment)}"
        yield f"    known: {entry.known}"


def _entry(node: Mapping, draft: FileDraft) -> Leftover | None:
    fields = Fields(node, "an entry", draft.problems)
    yarn, garment = fields.text("yarn", required=True), fields.text("from", required=True)
    colour, known = fields.text("colour"), fields.text("known")
    grams = read_amount(fields, "grams", draft, required=True)
    read_amount(fields, "metres", draft)  # for the human reader; it follows from the grams
    skein = fields.mapping("skein", required=True)
    of_grams = of_metres = None
    if skein is not None:
        label = Fields(skein, "`skein`", draft.problems)
        of_grams = read_amount(label, "grams", draft, required=True)
        of_metres = read_amount(label, "metres", draft, required=True)
        label.close()
    fields.close()
    if yarn is None or garment is None or grams is None or of_grams is None or of_metres is None:
        return None
    return Leftover(
        yarn=yarn.text.strip(),
        garment=garment.text.strip(),
        grams=grams,
        skein=Skein(grams=of_grams, metres=of_metres),
        colour=colour.text.strip().lower() if colour is not None else "",
        known=known.text.strip() if known is not None else "estimated",
    )
