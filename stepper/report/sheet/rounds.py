"""The rounds for print: what is worked, how many stitches there are, and a box to tick for each. Pure."""

from __future__ import annotations

from collections.abc import Iterator

from stepper.language.measures import plural
from stepper.language.places import sentence_case
from stepper.plan.alike import fold_alike
from stepper.plan.model import Plan, Round
from stepper.plan.stitches.abbreviate import in_its_yarn
from stepper.report.drawing.markup import tag, text

MANY = 12
"""Up to this many boxes fit beside the instruction. Chosen here."""


def write_rounds(plan: Plan) -> Iterator[str]:
    """Write every section with its rounds."""
    for number, section in enumerate(plan.sections):
        rounds = [each for each in plan.rounds if each.section == section]
        name = f"section-{number}"
        word = "row" if all(each.flat for each in rounds) else "round"
        yield tag(
            "h3",
            [text(sentence_case(section)), " ", tag("small", plural(len(rounds), word))],
            id=name,
        )
        head = (
            tag("th", each, scope="col") for each in (word.capitalize(), "Instruction", "Stitches", "Done")
        )
        rows = "".join(_rows(first, last, plan) for first, last in fold_alike(rounds))
        inner = [tag("thead", tag("tr", head)), tag("tbody", rows)]
        yield tag("table", inner, aria_labelledby=name, class_="rounds")


def _rows(first: Round, last: Round, plan: Plan) -> str:
    """Write a run of identical rounds; many boxes get a row of their own, as wide as the sheet."""
    name = str(first.number) if first is last else f"{first.number}–{last.number}"
    side = f" {first.side}" if first.flat and first is last else ""
    boxes = "".join(_box(each) for each in plan.rounds[first.index : last.index + 1])
    many = last.index - first.index >= MANY
    cells = [
        tag("th", text(name + side), scope="row"),
        tag("td", _instruction(first, last, plan)),
        tag("td", _count(first)),
        tag("td", "below" if many else boxes),
    ]
    if not many:
        return tag("tr", cells)
    return tag("tr", cells, class_="above") + tag("tr", tag("td", boxes, colspan="4", class_="many"))


def _instruction(first: Round, last: Round, plan: Plan) -> Iterator[str]:
    for remark in first.remarks:
        yield tag("p", text(f"{sentence_case(remark.rstrip('.'))}."), class_="remark")
    label = tag("strong", text(f"{first.label}: ")) if first.label else ""
    size = f" (size {first.size})" if first.label else ""
    words = in_its_yarn(first, plan.rounds[first.index - 1] if first.index else None, plan)
    yield tag("p", label + text(sentence_case(words) + "." + size))
    if first.altered:
        yield tag("p", text(f"Altered: {'; '.join(first.altered)}."), class_="altered")
    if last.checkpoint is not None:
        yield tag("p", text(f"Count {last.checkpoint.expect}: {last.checkpoint.reason}."), class_="count")


def _count(round_: Round) -> str:
    if round_.before == round_.after:
        return str(round_.after)
    return f"{round_.before} → {tag('b', str(round_.after))}"


def _box(round_: Round) -> str:
    word = "row" if round_.flat else "round"
    said = f"{sentence_case(round_.section)}, {word} {round_.number}"
    return tag(
        "label",
        [f'<input type="checkbox" aria-label="{text(said)}">', tag("span", str(round_.number))],
        class_="tick",
    )
