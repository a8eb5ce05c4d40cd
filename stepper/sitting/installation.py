"""How this program was installed, so that a hint to install more can be typed as it stands."""

from __future__ import annotations

import json
import re
import shlex
import sys
from enum import Enum
from importlib.metadata import Distribution, PackageNotFoundError, distribution
from pathlib import Path

from stepper.records import dataclass
from stepper.regex import regex

_NAME = "stepper"
_NO_EXTRA_OF_HERS = {"test"}
_OF_EXTRA = regex(r"""([\w.-]+).*\bextra\s*==\s*['"]([\w-]+)['"]""")


class Way(Enum):
    """What put the program in its place."""

    PIPX = "pipx"
    UV_TOOL = "uv tool"
    UV = "uv"
    PIP = "pip"


@dataclass(frozen=True, slots=True, kw_only=True)
class Installation:
    """Where the program lies and how it came there."""

    way: Way
    prefix: Path
    """Folder of the virtual environment, or of Python itself."""
    source: str
    """What was installed: a folder, an address, or the name of the package."""
    editable: bool = False
    """Whether the folder is used as it stands (`pip install -e`)."""
    extras: tuple[str, ...] = ()
    """Extras that are there already, which must be named again where everything is installed anew."""


def find_installation(prefix: Path | None = None, found: Distribution | None = None) -> Installation:
    """Look how the program was installed.

    Args:
        prefix: Folder of the environment; the running one's if None.
        found: The installed distribution; the running one's if None.

    Source: `direct_url.json` is PEP 610, `INSTALLER` PEP 376; `pipx_metadata.json` and `uv-receipt.toml`
    are what the two tools keep in an environment of theirs, seen there.
    """
    prefix = prefix if prefix is not None else Path(sys.prefix)
    if found is None:
        try:
            found = distribution(_NAME)
        except PackageNotFoundError:  # it runs from its folder
            return Installation(
                way=Way.PIP, prefix=prefix, source=str(Path(__file__).parents[2]), editable=True
            )
    source, editable = _source(found)
    if (prefix / "pipx_metadata.json").exists():
        way = Way.PIPX
    elif (prefix / "uv-receipt.toml").exists():
        way = Way.UV_TOOL
    else:
        way = Way.UV if (found.read_text("INSTALLER") or "").strip() == "uv" else Way.PIP
    return Installation(way=way, prefix=prefix, source=source, editable=editable, extras=_extras(found))


def how_to_install(extra: str, there: Installation | None = None, *, folder: Path | None = None) -> str:
    """Return the command that installs an extra of this program.

    Args:
        extra: Its name; empty for the program itself with what it cannot do without.
        there: How the program was installed; looked up if None.
        folder: The folder in which the command will be typed; the current one if None. Paths below it are
            written from there.
    """
    there = there if there is not None else find_installation()
    folder = folder if folder is not None else Path.cwd()
    extras = [extra]
    if there.way in (Way.PIPX, Way.UV_TOOL):
        extras = sorted({*there.extras, extra})
    named = f"[{','.join(filter(None, extras))}]" if any(extras) else ""
    what = _quoted(f"{_from_here(there.source, folder)}{named}")
    if there.editable:
        what = f"-e {what}"
    match there.way:
        case Way.PIPX:
            return f"pipx install --force {what}"
        case Way.UV_TOOL:
            return f"uv tool install --force {what}"
        case Way.UV:
            return f"uv pip install --python {_quoted(_python(there.prefix, folder))} {what}"
        case Way.PIP:
            return f"{_quoted(_python(there.prefix, folder))} -m pip install {what}"


def _source(found: Distribution) -> tuple[str, bool]:
    try:
        written = json.loads(found.read_text("direct_url.json") or "{}")
    except ValueError:
        written = {}
    url = str(written.get("url", _NAME))
    editable = bool(written.get("dir_info", {}).get("editable", False))
    if url.startswith("file://"):
        from urllib.request import url2pathname

        url = url2pathname(url.removeprefix("file://"))
    return url, editable


def _extras(found: Distribution) -> tuple[str, ...]:
    """List the extras of which every package is there."""
    needed: dict[str, list[str]] = {}
    for line in found.requires or ():
        match = _OF_EXTRA.match(line)
        if match and match[2] not in _NO_EXTRA_OF_HERS:
            needed.setdefault(match[2], []).append(match[1])
    return tuple(sorted(extra for extra, names in needed.items() if all(map(_is_there, names))))


def _is_there(name: str) -> bool:
    try:
        distribution(name)
    except PackageNotFoundError:
        return False
    return True


def _python(prefix: Path, folder: Path) -> str:
    python = prefix / ("Scripts/python.exe" if sys.platform == "win32" else "bin/python")
    return _from_here(str(python), folder)


def _from_here(path: str, folder: Path) -> str:
    """Write a path below the folder from there; an address, a name or another path as it is."""
    if Path(path) == folder:
        return "."
    return str(Path(path).relative_to(folder)) if Path(path).is_relative_to(folder) else path


def _quoted(word: str) -> str:
    if sys.platform == "win32":
        return f'"{word}"' if re.search(r"[\s\[\]]", word) else word
    return shlex.quote(word)
