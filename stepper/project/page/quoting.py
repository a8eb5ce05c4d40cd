"""Write values and lines so that the reader of project files returns them unchanged. No I/O."""

from __future__ import annotations

import re
from collections.abc import Sequence

from stepper.regex import regex

_UNPRINTABLE = regex("[^\t\n\r\x20-\x7e\x85\xa0-\ud7ff\ue000-\ufefe\uff00-\ufffd\U00010000-\U0010ffff]")
_PLAIN = regex(r"[A-Za-z0-9][A-Za-z0-9 .'-]*")
_GUESSED = regex(r"(?:.*[:#]|.*\s$|[-?]\s|.*: )")


def writable(text: str) -> str:
    """Replace every character that a text file may not hold by its code: `<U+0007>`. White space stays."""
    return _UNPRINTABLE.sub(
        lambda match: " " if match.group().isspace() else f"<U+{ord(match.group()):04X}>", text
    )


def value(text: str) -> str:
    """Write a value on one line, in quotes if its signs would mean something else."""
    plain = " ".join(writable(text).split())
    if _PLAIN.fullmatch(plain) and not _GUESSED.match(plain):
        return plain
    escaped = plain.replace("\\", "\\\\").replace('"', '\\"')
    return f'"{escaped}"'


def comment(text: str, indent: int = 0) -> str:
    """Write a row of comment."""
    return f"{' ' * indent}# {' '.join(writable(text).split())}".rstrip()


def list_values(parts: Sequence[str]) -> str:
    """Write a list as printed patterns do: `S (M, L)`."""
    return parts[0] if len(parts) == 1 else f"{parts[0]} ({', '.join(parts[1:])})"


def size_line(names: Sequence[str]) -> str:
    """Write the value of `sizes`, in quotes only if a name needs them."""
    line = list_values(names)
    return line if re.fullmatch(r"[A-Za-z0-9][\w ./'-]*(?: \([\w ,./'-]+\))?", line) else value(line)
