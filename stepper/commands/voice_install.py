"""`stepper voice install PATH-OR-ADDRESS`: put a Vosk model in place, whole or not at all."""

from __future__ import annotations

import argparse
import shutil
import tempfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

from stepper.commands.standard_streams import complain
from stepper.ears.archive import unpack
from stepper.ears.download import checksum, fetch, is_address, is_open, name_at
from stepper.ears.vosk_model import try_to_load, why_no_model
from stepper.errors import SurroundingsError
from stepper.sitting.folding import print_folded
from stepper.sitting.patience import patience
from stepper.sitting.user_folders import models_folder

_DEEPEST = 2
# An archive may hold its model in a folder, and that in another.


EXAMPLES = (("stepper voice install vosk-model.zip", "put a downloaded model in place"),)


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("source", metavar="PATH-OR-ADDRESS", help="a folder, a zip archive or an address")
    parser.add_argument("--sha256", metavar="HEX", help="refuse an archive with another checksum")
    parser.add_argument("--replace", action="store_true", help="replace a model of the same name")


def run(args: argparse.Namespace) -> int:
    """Install.

    Returns:
        Exit code.

    Raises:
        SurroundingsError: It cannot be fetched, is not a model, or does not load. Nothing is changed then.
    """
    folder = install(args.source, models_folder(), sha256=args.sha256, replace=args.replace)
    print_folded([f"Installed: {folder}"])
    return 0


def install(
    source: str,
    models: Path,
    *,
    sha256: str | None = None,
    replace: bool = False,
    check: Callable[[Path], None] = try_to_load,
) -> Path:
    """Put a model in place.

    Args:
        source: A folder, a zip archive or an address.
        models: The folder of models; created if missing.
        sha256: The checksum that the archive must have.
        replace: Whether to replace a model of the same name.
        check: Raises a SurroundingsError if the model does not load.

    Returns:
        The model's folder.

    Raises:
        SurroundingsError: It cannot be fetched, is not a model, or does not load. Nothing is changed then.
    """
    try:
        models.mkdir(parents=True, exist_ok=True)
        with tempfile.TemporaryDirectory(prefix=".new-", dir=models) as new:
            found = _bring(source, models, Path(new), sha256)
            with patience("Trying the model"):
                check(found)
            return _put(found, models / _name_of(source, found, Path(new)), replace=replace)
    except OSError as error:
        raise SurroundingsError(f"The model cannot be installed: {error.strerror or error}.") from error


def _bring(source: str, models: Path, new: Path, sha256: str | None) -> Path:
    """Bring the model into a new folder, and find it there."""
    path = Path(source)
    if is_address(source):
        path = models / f".{_last_part(source)}"
        if is_open(source) and not sha256:
            complain(
                f"{source} comes in without encryption, so anyone on the way can exchange it: take an "
                "address that begins with https, or give the archive's checksum with --sha256."
            )
        with _bar("fetching") as progress:
            fetch(source, path, progress)
    elif path.is_dir():
        if sha256:
            raise SurroundingsError("A folder has no checksum; give the archive.")
        reason = why_no_model(path)
        if reason:
            raise SurroundingsError(reason)
        shutil.copytree(path, new / path.resolve().name)
        return new / path.resolve().name
    elif path.exists() and not path.is_file():
        raise SurroundingsError(f"{source} is no plain file.")
    elif not path.is_file():
        raise SurroundingsError(f"There is no file or folder {source}.")
    try:
        found = checksum(path)
        print(f"SHA-256 {found}")
        if sha256 and found != sha256.strip().lower():
            raise SurroundingsError(f"The checksum is not the one asked for, {sha256}.")
        with _bar("unpacking") as progress:
            unpack(path, new, progress)
    finally:
        if is_address(source):
            path.unlink(missing_ok=True)
    return _model_in(new, source)


def _model_in(folder: Path, source: str) -> Path:
    """Find the model in what was unpacked, at any depth."""
    level, reasons = [folder], []
    for _ in range(_DEEPEST + 1):
        for each in level:
            reason = why_no_model(each)
            if not reason:
                return each
            reasons.append(reason)
        level = [inner for each in level for inner in sorted(each.iterdir()) if inner.is_dir()]
    partly = next((reason for reason in reasons if "is not a Vosk model" not in reason), "")
    raise SurroundingsError(
        f"{source} holds no Vosk model." if not partly else partly.replace(f"{folder}/", "")
    )


def _put(found: Path, target: Path, *, replace: bool) -> Path:
    """Move the model to its place in one step."""
    if target.exists() and not replace:
        raise SurroundingsError(f"{target} exists already; --replace replaces it.")
    if target.exists():
        old = target.with_name(f".old-{target.name}")
        target.rename(old)
        found.rename(target)
        shutil.rmtree(old)
    else:
        found.rename(target)
    return target


def _name_of(source: str, found: Path, new: Path) -> str:
    name = found.name if found != new else Path(_last_part(source)).stem
    return name.lstrip(".") or "model"


def _last_part(source: str) -> str:
    name = name_at(source) if is_address(source) else ""
    return name or Path(source).name or "model.zip"


@contextmanager
def _bar(what: str) -> Iterator[Callable[[int, int], None]]:
    """Show a bar on a terminal, and nothing elsewhere."""
    from rich.console import Console
    from rich.progress import BarColumn, DownloadColumn, Progress, TimeRemainingColumn

    console = Console(stderr=True)
    bar = Progress(
        "{task.description}", BarColumn(), DownloadColumn(), TimeRemainingColumn(), console=console
    )
    if not console.is_terminal:
        yield lambda done, of: None
        return
    with bar:
        task = bar.add_task(what, total=None)
        yield lambda done, of: bar.update(task, completed=done, total=of or None)
