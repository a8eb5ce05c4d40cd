"""`stepper where FILE`: where the knitting stands. Reads only, also while a session is open."""

from __future__ import annotations

import argparse
import json
from collections.abc import Iterator
from contextlib import ExitStack
from dataclasses import asdict
from datetime import datetime
from pathlib import Path

from stepper.commands.keeping import take_up
from stepper.commands.loading import load
from stepper.language.places import on_day
from stepper.language.telling import told
from stepper.session.cues import HowFar, Where
from stepper.session.machine import Session
from stepper.session.respond import respond
from stepper.session.standing import Standing, standing_of
from stepper.store.journal import Journal
from stepper.store.location import journal_path


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("file", type=Path, metavar="FILE", help="the project file")
    parser.add_argument("--json", action="store_true", help="print one JSON document")


def run(args: argparse.Namespace) -> int:
    """Say where the knitting stands.

    Returns:
        Exit code.

    Raises:
        StepperError: The project file or the journal cannot be read.
    """
    loaded = load(args.file)
    path = journal_path(loaded.path)
    with ExitStack() as stack:
        journal = stack.enter_context(Journal.read_only(path)) if path.exists() else None
        taken = take_up(loaded, journal, datetime.now().astimezone().isoformat(timespec="seconds"))
    if taken.changed is not None:
        taken.session.adopt(taken.changed)  # in memory: the sitting that follows is the one to keep it
    standing = standing_of(taken.session.plan, taken.session.state)
    if args.json:
        print(json.dumps(asdict(standing), ensure_ascii=False, indent=2))
        return 0
    for line in _lines(taken.session, standing, changed=taken.changed is not None):
        print(line)
    return 0


def _lines(session: Session, standing: Standing, *, changed: bool) -> Iterator[str]:
    """Give the answer in words, the same as in a sitting."""
    yield f"{standing.title}."
    plan, state = session.plan, session.state
    if state.seq == 0:
        yield "Nothing is knitted yet."
    for cue in (Where(), HowFar()):
        for effect in respond(plan, state, cue, (), state):
            yield told(effect, plan)
    if standing.last_cue_at is not None:
        yield f"Last knitted{on_day(standing.last_cue_at)}."
    if changed:
        yield "The pattern has changed since then; the next sitting says how."
