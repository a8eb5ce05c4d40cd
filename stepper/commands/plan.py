"""`stepper plan FILE`: every round of the garment, as text, as a JSON document or as a sheet to print."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Iterator
from pathlib import Path

from stepper.commands.loading import load
from stepper.commands.standard_streams import print_document
from stepper.craft.even.manners import Manner
from stepper.craft.even.spacing import gaps_between
from stepper.errors import NotInstalledError
from stepper.language.even_words import LOOKS, NAMES
from stepper.language.phrasing import say_round
from stepper.plan.alike import fold_alike
from stepper.plan.export import plan_document
from stepper.plan.model import Plan, Round
from stepper.plan.stitches.abbreviate import in_its_yarn
from stepper.report.output_file import replace_file
from stepper.sitting.folding import print_folded
from stepper.sitting.patience import patience
from stepper.sitting.project_file import LoadedProject

EXAMPLES = (
    ("stepper plan garment.yaml", "every round as text"),
    (
        "stepper plan garment.yaml --html sheet.html",
        "the sheet to print, with boxes to tick; a browser prints it",
    ),
    ("stepper plan garment.yaml --pdf sheet.pdf", "the same as a PDF, without a browser"),
    ("stepper plan garment.yaml --manner runs", "even changes in two runs, to see what that would be"),
)


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("file", type=Path, metavar="FILE", help="the project file")
    parser.add_argument("--json", action="store_true", help="print one JSON document")
    parser.add_argument(
        "--manner",
        choices=[manner.value for manner in Manner],
        help="space even changes in another manner than the file's `spacing`, to see what it would be",
    )
    parser.add_argument(
        "--html", type=Path, metavar="OUT", help="write one page to print, with boxes to tick, and end"
    )
    parser.add_argument(
        "--pdf", type=Path, metavar="OUT", help="write the same sheet as a PDF, without a browser, and end"
    )


def run(args: argparse.Namespace) -> int:
    """Print the plan.

    Returns:
        Exit code.

    Raises:
        StepperError: The file has problems, or cannot be read; the page cannot be written.
    """
    loaded = load(args.file, spacing=Manner(args.manner) if args.manner else None)
    if args.html is not None:
        with patience("Drawing the page"):
            write_page_file(loaded, args.html)
        print_folded([f"{args.html} is written."])
    if args.pdf is not None:
        with patience("Drawing the PDF"):
            missing = write_pdf_file(loaded, args.pdf)
        print_folded([f"{args.pdf} is written.", *([_what_is_missing(missing)] if missing else [])])
    if args.html is not None or args.pdf is not None:
        return 0
    plan = loaded.plan
    if args.json:
        document = plan_document(plan, spoken=speak_once(plan))
        print_document(document)
        return 0
    print_folded(plan_lines(plan))
    return 0


def write_page_file(loaded: LoadedProject, target: Path) -> None:
    """Write the page to print, for the garment as knitted; an existing file is replaced as a whole.

    Raises:
        SurroundingsError: The journal cannot be read or the page cannot be written.
    """
    # Loaded here: the page needs the yarn table and the drawings; the plain text needs neither.
    from stepper.commands.yarn import list_rows
    from stepper.report.sheet.page import write_page

    plan, yarns = list_rows(loaded)
    replace_file(target, write_page(plan, loaded.project, yarns).encode())


def write_pdf_file(loaded: LoadedProject, target: Path) -> str:
    """Write the sheet as a PDF: A4 for a file in centimetres, Letter for one in inches.

    Returns:
        Letters that are missing in its typeface, each once.

    Raises:
        NotInstalledError: A package that writes PDFs is not there.
        SurroundingsError: The journal cannot be read or the PDF cannot be written.
    """
    from stepper.commands.yarn import list_rows
    from stepper.report.sheet.contents import lay_out_sheet
    from stepper.report.sheet.pdf import write_pdf

    plan, yarns = list_rows(loaded)
    blocks = lay_out_sheet(plan, loaded.project, yarns)
    try:
        made = write_pdf(blocks, title=plan.title, size="Letter" if plan.units == "in" else "A4")
    except ImportError as error:
        name = (error.name or "").partition(".")[0].replace("_", "-")
        raise NotInstalledError(f"A PDF needs the package {name}, which is not installed.", "") from error
    replace_file(target, made.content)
    return made.missing


def _what_is_missing(letters: str) -> str:
    return (
        f"Its typeface has no letters for {' '.join(letters)}, which stand as empty boxes; "
        "--html writes them with the letters of your browser."
    )


def speak_once(plan: Plan) -> Callable[[Round], str]:
    """Return a function that says a round of the plan, working it out once for identical rounds."""
    known: dict[tuple[object, ...], str] = {}

    def say(round_: Round) -> str:
        before = plan.rounds[round_.index - 1] if round_.index else None
        # Identical rounds share one phrase; which yarn is new depends on the round before as well.
        key = (id(round_.phrase), id(before.phrase) if before else 0, round_.flat, round_.side)
        if key not in known:
            known[key] = say_round(round_, plan)
        return known[key]

    return say


def plan_lines(plan: Plan) -> Iterator[str]:
    """Write the plan for people: identical rounds together, counts where they change or are to be checked."""
    yield plan.title
    yield from _spacing_lines(plan)
    section = ""
    blended = len({round_.size for round_ in plan.rounds}) > 1
    for first, last in fold_alike(plan.rounds):
        if first.section != section:
            section = first.section
            yield ""
            flat = all(each.flat for each in plan.rounds[first.index : first.index + first.of])
            yield f"{section} ({first.of} {'rows' if flat else 'rounds'})"
        above = plan.rounds[first.index - 1] if first.index else None
        told = above.altered if above is not None else ()
        size = f" [size {first.size}]" if blended and first.label else ""
        yield from _lines(first, last, in_its_yarn(first, above, plan) + ".", size, told)
    for caution in plan.warnings:
        yield ""
        yield f"Line {caution.line}: {caution.text}"


def _spacing_lines(plan: Plan) -> Iterator[str]:
    """Say how even changes are spaced and how that looks, where there are any of unlike gaps."""
    if any(_is_unlike(round_) for round_ in plan.rounds if round_.evenly):
        yield f'Even changes are spaced in the manner "{NAMES[plan.spacing]}": {LOOKS[plan.spacing]}'


def _is_unlike(round_: Round) -> bool:
    """Return whether the gaps between the changes of a round differ."""
    gaps = gaps_between(round_.shaping, round_.before, flat=round_.flat)
    return len(set(gaps[1:-1] if round_.flat else gaps)) > 1


def _lines(first: Round, last: Round, words: str, size: str, told: tuple[str, ...]) -> Iterator[str]:
    """Write some identical rounds, without repeating alterations already told of the round before."""
    for remark in first.remarks:
        yield f"         {remark}"
    numbers = f"{first.number}" if first is last else f"{first.number}-{last.number}"
    label = f"{first.label}: " if first.label else ""
    count = f" {first.before} → {last.after} sts" if first.before != last.after else f" {last.after} sts"
    yield f"  {numbers:>6} {label}{words}{count}{size}"
    for rule in first.altered:
        if rule not in told:
            yield f"         altered from here: {rule}"
    if told and not first.altered:
        yield "         as printed from here"
    if last.checkpoint:
        yield f"         count {last.checkpoint.expect}: {last.checkpoint.reason}"
