"""The one door through which text comes in and leaves: standard input, output and error.

Whatever is printed, by whichever part or library, passes `_Door.write`. A character that would act on the
terminal leaves as its code; one that the console's encoding lacks leaves as something like it. A closed
stream is as good as one that nobody reads; one that cannot be written ends the program with a sentence. The
full screen draws past the door, on the terminal itself, and `screen/terminal` blanks there what must not
reach it.
"""

from __future__ import annotations

import codecs
import os
import sys
import unicodedata
from collections.abc import Generator
from contextlib import contextmanager, suppress
from typing import Any, Final, TextIO, cast

from stepper.errors import SurroundingsError
from stepper.screen.drawing.unprintable import show_unprintable

_LIKE: Final = {
    **dict.fromkeys("–—−‒‑─━", "-"),
    **dict.fromkeys("“”‘’′", "'"),
    **{"″": "''", "…": "...", "→": "->", "×": "x", "·": ".", "•": "*", "✓": "x"},
    **{"▸": ">", "►": ">", "◂": "<", "½": "1/2", "¼": "1/4", "¾": "3/4", "⅓": "1/3"},
    **{"⅔": "2/3", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8"},
}
"""What stands for a character that the console's encoding lacks. None holds a quotation mark or a backslash,
which would mean something else in a JSON document."""
_HANDLER: Final = "stepper.like"
_USUAL_HANDLERS: Final = ("strict", "surrogateescape", "backslashreplace")
"""How Python sets the streams up; another way was asked for by name (`PYTHONIOENCODING`) and stays."""


def _replace_with_the_like(error: UnicodeError) -> tuple[str, int]:
    """Replace what cannot be encoded; an error handler of `codecs`."""
    if not isinstance(error, UnicodeEncodeError):
        raise error
    return "".join(_like(letter) for letter in error.object[error.start : error.end]), error.end


def _like(letter: str) -> str:
    plain = unicodedata.normalize("NFKD", letter).encode("ascii", "ignore").decode()
    return _LIKE.get(letter) or plain or "?"


codecs.register_error(_HANDLER, _replace_with_the_like)


class _Door:
    """A stream that lets nothing out that acts on a terminal; everything else is the stream's own."""

    def __init__(self, stream: TextIO, name: str) -> None:
        self._stream, self._name = stream, name

    def write(self, text: str) -> int:
        """Write a text."""
        self.write_painted(show_unprintable(text))
        return len(text)

    def write_painted(self, text: str) -> None:
        """Write a text whose colours are our own."""
        try:
            self._stream.write(text)
        except BrokenPipeError:
            raise
        except OSError as error:
            raise self._refusal(error) from error

    def writelines(self, lines: list[str]) -> None:
        """Write some texts."""
        for line in lines:
            self.write(line)

    def flush(self) -> None:
        """Hand over what was written."""
        try:
            self._stream.flush()
        except BrokenPipeError:
            raise
        except OSError as error:
            raise self._refusal(error) from error

    def let_go(self) -> None:
        """Have what is still to be written go nowhere, so that the end of the program does not fail."""
        with suppress(OSError, ValueError):
            nowhere = os.open(os.devnull, os.O_WRONLY)
            os.dup2(nowhere, self._stream.fileno())
            os.close(nowhere)
            self._stream.flush()

    def _refusal(self, error: OSError) -> SurroundingsError:
        self.let_go()
        return SurroundingsError(
            f"Standard {self._name} cannot be written: {error.strerror or error}. "
            "Nothing that was kept is lost."
        )

    def __getattr__(self, name: str) -> Any:
        return getattr(self._stream, name)


@contextmanager
def guard_streams() -> Generator[None]:
    """Put the door in front of the process's streams for as long as the context lasts."""
    _open_what_is_closed()
    usual = sys.stdout, sys.stderr
    for stream in (sys.stdout, sys.stderr, sys.stdin):
        _be_lenient(stream)
    doors = [_Door(stream, name) for stream, name in zip(usual, ("output", "error"), strict=True)]
    sys.stdout, sys.stderr = (cast(TextIO, door) for door in doors)
    try:
        yield
    except BrokenPipeError:
        for door in doors:
            door.let_go()
        raise
    finally:
        sys.stdout, sys.stderr = usual


def print_document(document: object, *, indent: int | None = None) -> None:
    """Print a JSON document; with every character as it is where the console has them all, else as codes."""
    import json  # not needed for the help

    whole = "utf" in (sys.stdout.encoding or "utf-8").casefold()
    print(json.dumps(document, ensure_ascii=not whole, indent=indent))


def complain(sentence: str) -> None:
    """Print a sentence on standard error at once, if it can be written at all."""
    with suppress(OSError, SurroundingsError, ValueError):
        print(sentence, file=sys.stderr, flush=True)


def _open_what_is_closed() -> None:
    """Put the null device where a standard stream is closed.

    The next file opened would get its number, and what is printed would be written into it.
    """
    for number in range(3):
        try:
            os.fstat(number)
        except OSError:
            os.open(os.devnull, os.O_RDWR)  # takes the lowest number that is free
    sys.stdin = sys.stdin or open(os.devnull, encoding="utf-8")  # noqa: SIM115, PTH123
    sys.stdout = sys.stdout or open(os.devnull, "w", encoding="utf-8")  # noqa: SIM115, PTH123
    sys.stderr = sys.stderr or open(os.devnull, "w", encoding="utf-8")  # noqa: SIM115, PTH123


def _be_lenient(stream: TextIO) -> None:
    """Have a stream never fail over a character."""
    if getattr(stream, "errors", None) in _USUAL_HANDLERS and hasattr(stream, "reconfigure"):
        with suppress(OSError):  # a pipe that was read before cannot be set anew, and need not be
            stream.reconfigure(errors="replace" if stream is sys.stdin else _HANDLER)
