"""`stepper start FILE`: a commented project file, from answers or from the text of a printed pattern."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

from stepper.commands.error_text import error_text
from stepper.commands.loading import load, tell_how_far
from stepper.commands.settle import settle
from stepper.errors import ProjectError, SurroundingsError
from stepper.files import open_plain
from stepper.project.page.file_text import WrittenFile, write_file
from stepper.project.page.marks import MARK, find_standing_marks
from stepper.project.page.pasted import take_apart
from stepper.project.page.pdf import MOST_BYTES, is_pdf, read_pdf, told_pictures
from stepper.project.page.questions import QUESTIONS, default_of, first_file
from stepper.project.problems import UNCHANGED, UnsoundFileError
from stepper.project.yaml_file.missing_file import name_missing
from stepper.project.yaml_file.source import MAX_BYTES
from stepper.settling.prompting import BackAsked, LaterAsked, StopAsked, ask_yes, can_ask
from stepper.sitting.folding import print_folded, terminal_columns
from stepper.sitting.patience import patience

_MOST_TRIES = 5
"""Number of unusable answers before the question's default is taken."""


EXAMPLES = (
    ("stepper start garment.yaml", "answer some questions and begin a file"),
    ("stepper start garment.yaml --paste pattern.pdf", "begin it from a pattern that you bought"),
    ("stepper start garment.yaml --paste -", "begin it from text on standard input"),
)


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("file", type=Path, metavar="FILE", help="the project file to write, a new one")
    parser.add_argument(
        "--paste",
        metavar="PATTERN",
        help="a pattern as PDF, or a file with its text as copied from the page; - for standard input",
    )


def run(args: argparse.Namespace) -> int:
    """Write the file.

    Returns:
        Exit code.

    Raises:
        SurroundingsError: The file exists already, or cannot be written or read.
        ProjectError: The text to paste is empty or is not text.
    """
    if args.file.exists():
        raise SurroundingsError(f"{args.file} exists already and was not touched. Name another file.")
    if args.paste is not None:
        return _from_text(args.file, _text(args.paste))
    _save(args.file, first_file(_answers()))
    print_folded([f"{args.file} is written. Type the pattern into it, then: stepper check {args.file}"])
    return 0


def _answers() -> dict[str, str]:
    """Ask every question on a line of its own; at the end of the input, take the defaults for the rest."""
    answers: dict[str, str] = {}
    print("An empty line takes what is in brackets.")
    ended = False
    for question in QUESTIONS:
        if not question.only(answers):
            continue
        default = default_of(question, answers)
        answers[question.name] = default
        for _ in range(_MOST_TRIES):
            if ended:
                break
            print(f"{question.text} [{default}] ", end="", flush=True)
            line = sys.stdin.readline()
            ended = not line
            answer = " ".join(line.split()) or default
            trouble = question.trouble(answer, answers)
            if not trouble:
                answers[question.name] = answer
                break
            print_folded([trouble])
    if ended:
        print()
    return answers


def _text(name: str) -> str:
    try:
        raw = sys.stdin.buffer.read(MOST_BYTES + 1) if name == "-" else _start_of(Path(name))
    except FileNotFoundError as error:
        raise SurroundingsError(name_missing(Path(name))) from error
    except OSError as error:
        raise SurroundingsError(f"{name} cannot be read: {error.strerror or error}.") from error
    if len(raw) > (MOST_BYTES if is_pdf(raw) else MAX_BYTES // 3):
        raise ProjectError(f"{name} is too large for the text of one pattern.")
    text = _printed(raw, name) if is_pdf(raw) else _decoded(raw)
    if len(text) > MAX_BYTES // 3:
        raise ProjectError(f"{name} is too large for the text of one pattern.")
    if not text.strip():
        raise ProjectError(f"{name} holds no text.")
    return text


def _start_of(path: Path) -> bytes:
    with open_plain(path) as stream:
        return stream.read(MOST_BYTES + 1)


def _printed(raw: bytes, name: str) -> str:
    """Extract the text of a PDF's pages, and say which of them could not be read."""
    with patience(f"Reading the pages of {name}"):
        found = read_pdf(raw, name)
    remark = told_pictures(found)
    if remark:
        print_folded([remark])
    return found.text


def _decoded(raw: bytes) -> str:
    try:
        return raw.decode("utf-16" if raw[:2] in (b"\xff\xfe", b"\xfe\xff") else "utf-8-sig")
    except UnicodeDecodeError:
        return raw.decode("cp1252", errors="replace")


def _from_text(path: Path, text: str) -> int:
    """Write the file of a page, and go through what is left open if somebody is there to answer."""
    with patience("Reading the pattern"):
        made = write_file(take_apart(text))
    _save(path, made.text)
    print_folded(_summary(path, made).split("\n"))
    if made.looks and can_ask():
        return _settle(path, len(made.looks))
    print_folded(_checked(path, bool(made.looks)).split("\n"))
    return 0


def _settle(path: Path, looks: int) -> int:
    """Offer to settle what is left open at once."""
    try:
        open_ = "1 thing is" if looks == 1 else f"{looks} things are"
        now = ask_yes(f"{open_} open. Settle them now, by short answers?")
    except (LaterAsked, BackAsked, StopAsked):
        now = False
    if now:
        return settle(path)
    print_folded([f"When you have the page at hand: stepper settle {path}"])
    return 0


def _summary(path: Path, made: WrittenFile) -> str:
    words = f"{path} is written: {made.lines} lines of the pattern, {made.notes} left as notes."
    if not made.looks:
        return words
    rows = ", ".join(str(row) for row in made.looks[:12])
    more = f" and {len(made.looks) - 12} more" if len(made.looks) > 12 else ""
    return f"{words}\nLook at {'row' if len(made.looks) == 1 else 'rows'} {rows}{more}, marked {MARK}."


def _checked(path: Path, marked: bool) -> str:
    """Say whether the file is sound as it stands, and how many rounds it has."""
    try:
        plan = load(path, marks=False).plan
    except ProjectError as error:
        told = error_text(error, terminal_columns(sys.stdout)).removesuffix(UNCHANGED)
        places = len(error.problems) if isinstance(error, UnsoundFileError) else 1
        how_far = tell_how_far(path, places)
        right = f"Put it right there, then: stepper check {path}"
        rows = ["It cannot be knitted to its end yet:", told, right]
        return "\n".join([*rows, *([how_far] if how_far else [])])
    if marked:
        rounds = f"What is read comes to {len(plan.rounds)} rounds."
        then = f"{rounds} It can be knitted from once no {MARK} stands in it any more."
        how_far = tell_how_far(path, len(find_standing_marks(path.read_text(encoding="utf-8"))))
        return "\n".join([then, *([how_far] if how_far else [])])
    return f"It is sound as it stands: {len(plan.rounds)} rounds."


def _save(path: Path, text: str) -> None:
    try:
        with path.open("x", encoding="utf-8") as stream:
            stream.write(text)
    except FileExistsError as error:
        raise SurroundingsError(f"{path} exists already and was not touched. Name another file.") from error
    except OSError as error:
        raise SurroundingsError(f"{path} cannot be written: {error.strerror or error}.") from error
