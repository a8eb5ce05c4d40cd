"""`stepper where [FILE or FOLDER]`: where the knitting stands. Only reads, even while a session is open.

With a project file it answers as a sitting would; with a folder, by default the current one, it lists every
garment there in a few words.
"""

from __future__ import annotations

import argparse
import re
from collections.abc import Iterator
from dataclasses import asdict, replace
from pathlib import Path
from typing import Any

from stepper.commands.standard_streams import print_document
from stepper.errors import StepperError, SurroundingsError
from stepper.language.effect_words import tell_effect
from stepper.language.places import on_day
from stepper.project.yaml_file.missing_file import PROJECT_ENDINGS
from stepper.report.garment_list import Garment, garment_lines, outlook_fields
from stepper.report.leftovers import FILE_NAME as LEFTOVERS
from stepper.session.cues import HowFar, Where
from stepper.session.machine import Session
from stepper.session.pace.outlook import look_ahead
from stepper.session.progress import measure_progress
from stepper.session.respond import respond
from stepper.sitting.clock import now
from stepper.sitting.folding import print_folded
from stepper.sitting.patience import patience
from stepper.sitting.project_file import load_known
from stepper.sitting.session_journal import open_to_read, resume_session
from stepper.store.location import journal_path

EXAMPLES = (
    ("stepper where garment.yaml", "where the knitting stands and when it will be done"),
    ("stepper where", "every garment in this folder"),
)


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument(
        "path",
        type=Path,
        nargs="?",
        default=Path(),
        metavar="FILE",
        help="the project file, or a folder of them; by default the current folder",
    )
    parser.add_argument("--json", action="store_true", help="print one JSON document")


def run(args: argparse.Namespace) -> int:
    """Print where the knitting stands.

    Returns:
        Exit code.

    Raises:
        StepperError: The project file or its journal cannot be read, though within a folder that is only
            reported on a line; or the folder cannot be read.
    """
    at = now()
    if args.path.is_dir():
        return _folder(args.path, at, as_json=args.json)
    with patience(f"Looking where {args.path.name} stands"):
        garment, session, changed = _garment(args.path, at)
    if args.json:
        print_document({"format": 1, **_document(garment)}, indent=2)
        return 0
    print_folded(_lines(session, garment, at, changed=changed))
    return 0


def _garment(path: Path, at: str) -> tuple[Garment, Session, bool]:
    """Return where a garment stands, without writing anything."""
    loaded = load_known(path)
    with open_to_read(journal_path(loaded.path)) as journal:
        taken = resume_session(loaded, journal, at)
    session = taken.session
    if taken.changed is not None:
        session.adopt(taken.changed)  # in memory only: the next sitting will keep it
    standing = measure_progress(session.plan, session.state)
    ahead = look_ahead(session.plan, session.state, at)
    garment = Garment(file=path.name, standing=standing, outlook=ahead, begun=session.state.seq > 0)
    return garment, session, taken.changed is not None


def _document(garment: Garment) -> dict[str, Any]:
    return {**asdict(garment.standing), **outlook_fields(garment.outlook)}


def _lines(session: Session, garment: Garment, at: str, *, changed: bool) -> Iterator[str]:
    """Yield the answer in words, the same as in a sitting."""
    standing, plan = garment.standing, session.plan
    yield f"{standing.title}."
    if not garment.begun:
        yield "Nothing has been knitted yet."
    # Here nobody returns from a silence, so the place is not said twice, and nobody answers a question.
    state = replace(session.state, last_cue_at="", question=None)
    for cue in (Where(at=at), HowFar(at=at)):
        for effect in respond(plan, state, cue, (), state):
            yield tell_effect(effect, plan)
    if standing.last_cue_at is not None:
        yield f"Last knitted{on_day(standing.last_cue_at)}."
    if changed:
        yield "The pattern has changed since then; the next sitting says how."


def _folder(folder: Path, at: str, *, as_json: bool) -> int:
    """List every garment of a folder; an unreadable one is reported on a line and does not stop the rest."""
    garments: list[Garment] = []
    problems: list[tuple[str, str]] = []
    try:
        paths = sorted(each for each in folder.iterdir() if each.suffix.lower() in PROJECT_ENDINGS)
    except OSError as error:
        raise SurroundingsError(f"{folder} cannot be read: {error.strerror}.") from error
    for path in paths:
        if path.name == LEFTOVERS or not path.is_file():
            continue
        try:
            garments.append(_garment(path, at)[0])
        except StepperError as error:
            problems.append((path.name, _in_a_line(str(error), path)))
    if as_json:
        found = [{"file": each.file, "begun": each.begun, **_document(each)} for each in garments]
        troubles = [{"file": name, "text": text} for name, text in problems]
        document = {"format": 1, "garments": found, "problems": troubles}
        print_document(document, indent=2)
        return 0
    print_folded(garment_lines(garments, problems))
    return 0


def _in_a_line(text: str, path: Path) -> str:
    """Shorten an error to what fits a list: its first line, and the number of further problems."""
    first, *others = text.splitlines()
    count = sum(f"{path}:" in line and " error: " in line for line in others)
    told = re.sub(r"^(\d+):\d+: error: ", r"line \1: ", first.replace(f"{path}:", ""))
    return told + (f" And {count} more." if count else "")
