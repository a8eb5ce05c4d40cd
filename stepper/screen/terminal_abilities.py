"""Whether a terminal can show the full screen, and in how many colours, judging by what it says of itself.

No I/O: the environment is passed in.

Source: `NO_COLOR` as agreed at no-color.org; `COLORTERM` and `TERM` as terminals commonly set them, from
memory.
"""

from __future__ import annotations

from collections.abc import Mapping

from stepper.records import dataclass
from stepper.screen.drawing.style import Depth

_DUMB = frozenset(("", "dumb", "unknown"))


@dataclass(frozen=True, slots=True, kw_only=True)
class TerminalAbilities:
    """What a terminal can do."""

    why_not: str = ""
    """Why there can be no full screen; empty if there can."""
    depth: Depth = Depth.NONE
    blocks: bool = False
    """Whether it has characters beyond ASCII."""
    solid: bool = False
    """Whether it has at least full and half blocks, as the code pages 437 and 850 of a console have."""


def assess_terminal(
    environ: Mapping[str, str], *, is_terminal: bool, encoding: str, windows: bool
) -> TerminalAbilities:
    """Return what a terminal can do.

    Args:
        environ: The process's environment.
        is_terminal: Whether the output goes to a terminal at all.
        encoding: The encoding of what is written to it.
        windows: Whether it is a Windows console, which says nothing of itself.
    """
    if not is_terminal:
        return TerminalAbilities(why_not="The output does not go to a terminal")
    term = environ.get("TERM", "")
    if not windows and term.casefold() in _DUMB:
        return TerminalAbilities(why_not="This terminal cannot show a full screen")
    blocks = "utf" in encoding.casefold()
    depth = _depth(environ, term.casefold(), windows=windows)
    return TerminalAbilities(depth=depth, blocks=blocks, solid=_has_blocks(encoding))


def _has_blocks(encoding: str) -> bool:
    try:
        "█▀▄".encode(encoding)
    except (UnicodeEncodeError, LookupError):
        return False
    return True


def _depth(environ: Mapping[str, str], term: str, *, windows: bool) -> Depth:
    if environ.get("NO_COLOR"):
        return Depth.NONE
    if environ.get("COLORTERM", "").casefold() in ("truecolor", "24bit") or term.endswith("-direct"):
        return Depth.TRUE
    if "256" in term:
        return Depth.INDEXED
    if windows:
        return Depth.SIXTEEN if not environ.get("WT_SESSION") else Depth.TRUE
    return Depth.NONE if term.startswith("vt") or term.endswith("-m") else Depth.SIXTEEN
