"""Read project files, here and nowhere else, into nodes that keep their line and column.

YAML is read as text alone: no value is ever guessed to be a number, a date or a boolean. Anchors, aliases and
tags are refused, which also keeps a small file from expanding into a large one. The 0-based marks of the
parser become 1-based places here and nowhere else.
"""

from __future__ import annotations

import sys
import warnings
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import field
from io import BytesIO
from pathlib import Path
from typing import TYPE_CHECKING, Any, cast

import yaml

from stepper.errors import ProjectError, SurroundingsError
from stepper.files import open_plain, read_plain
from stepper.project.keys.pictures import MAX_COLOURS, MAX_PIXELS, Pixel, Pixels
from stepper.project.problems import Problem, Span
from stepper.project.yaml_file.indentation import find_slip
from stepper.project.yaml_file.missing_file import name_folder, name_missing
from stepper.records import dataclass

MAX_BYTES = 1_000_000
"""Largest project file. A long pattern with charts has about 20,000 bytes."""
MAX_DEPTH = 12
"""Deepest nesting allowed; the outline needs five levels."""
MAX_NODES = 50_000
MAX_PICTURE_BYTES = 64_000_000
"""Largest file of a picture: as many pixels as are read, of eight bytes each, without any compression, and as
much again."""

if TYPE_CHECKING:
    from PIL import Image

_Loader: Any = getattr(yaml, "CBaseLoader", yaml.BaseLoader)


@dataclass(frozen=True, slots=True, kw_only=True)
class Scalar:
    """A value as written in the file."""

    text: str
    place: Span
    block: bool = False
    """Whether it is a block that keeps its line breaks (`|`)."""
    folded: bool = False
    """Whether it is a block with its lines folded together (`>`)."""


@dataclass(slots=True, kw_only=True)
class Mapping:
    """Keys and values in the order of the file, duplicates included."""

    place: Span
    entries: list[tuple[Scalar, Node]] = field(default_factory=list)


@dataclass(slots=True, kw_only=True)
class Sequence:
    """A list of values."""

    place: Span
    items: list[Node] = field(default_factory=list)


Node = Scalar | Mapping | Sequence


def read_text(path: Path) -> str:
    """Read a project file.

    Raises:
        SurroundingsError: The file is missing, is a folder or no plain file, or may not be read.
        ProjectError: The file is empty, too large, or not text.
    """
    try:
        with open_plain(path) as stream:
            raw = stream.read(MAX_BYTES + 1)
    except FileNotFoundError as error:
        raise SurroundingsError(name_missing(path)) from error
    except IsADirectoryError as error:
        raise SurroundingsError(name_folder(path)) from error
    except OSError as error:
        raise SurroundingsError(f"{path} cannot be read: {error.strerror or error}.") from error
    if len(raw) > MAX_BYTES:
        raise ProjectError(f"{path}:1:1: error: the file is larger than 1 MB, too large for a project file.")
    try:
        text = raw.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = raw[: error.start].count(b"\n") + 1
        raise ProjectError(f"{path}:{line}:1: error: the file is not text in UTF-8.") from error
    if "\0" in text:
        line = text[: text.index("\0")].count("\n") + 1
        raise ProjectError(f"{path}:{line}:1: error: the file is not text; a zero byte stands here.")
    if not text.strip():
        raise ProjectError(f"{path}:1:1: error: the file is empty. `stepper start` writes one to fill in.")
    return text


def read_picture(path: Path) -> Pixels | str:
    """Read the picture of a chart.

    Returns:
        The picture, or what is wrong with it as a sentence.
    """
    from PIL import Image, UnidentifiedImageError

    try:
        # From memory, since the length that a damaged file claims is asked for whole of a file on the disk.
        raw = BytesIO(read_plain(path, MAX_PICTURE_BYTES))
        with _quietly(), Image.open(raw, formats=["PNG"]) as image:
            if image.width * image.height > MAX_PIXELS:
                return f"{path.name} is {image.width} by {image.height} pixels, too large for a chart."
            plain = image.convert("RGBA")
        if plain.getcolors(MAX_COLOURS) is None:
            return (
                f"{path.name} has more than {MAX_COLOURS:,} colours, too many for a chart: draw it with one "
                "colour for each yarn, and save it without smoothing."
            )
    except FileNotFoundError:
        return f"there is no picture {path}."
    except UnidentifiedImageError:
        return f"{path.name} is not a PNG picture."
    except (OSError, SyntaxError, ValueError, Image.DecompressionBombError) as error:
        reason = getattr(error, "strerror", None) or error
        return f"{path.name} cannot be read as a picture: {reason}."
    return Pixels(width=plain.width, height=plain.height, rows=_rows_of(plain))


@contextmanager
def _quietly() -> Iterator[None]:
    """Keep the library's warnings off the terminal; what matters of them is told in a sentence."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        yield


def _rows_of(picture: Image.Image) -> tuple[tuple[Pixel, ...], ...]:
    """Return a picture's rows; pixels of one colour are one and the same tuple, to save memory."""
    whole = memoryview(picture.tobytes()).cast("I")
    shared = {each: cast(Pixel, tuple(each.to_bytes(4, sys.byteorder))) for each in set(whole)}
    across = picture.width
    return tuple(
        tuple(map(shared.__getitem__, whole[at : at + across])) for at in range(0, len(whole), across)
    )


def read_nodes(text: str) -> tuple[Node | None, list[Problem]]:
    """Turn the text into nodes.

    Returns:
        The outermost node, or None if the text cannot be read as YAML, and the problems found.
    """
    problems = _tabs(text)
    if problems:
        return None, problems
    composer = _Composer(text)
    try:
        for event in yaml.parse(text, Loader=_Loader):
            composer.take(event)
            if composer.stopped:
                break
    except yaml.MarkedYAMLError as error:
        problems.append(_syntax_problem(error, text))
    except yaml.reader.ReaderError as error:
        line = text[: error.position].count("\n") + 1
        problems.append(
            Problem(line=line, column=1, message="a character that a text file may not hold stands here.")
        )
    except RecursionError:
        problems.append(Problem(line=1, column=1, message="the values are nested too deeply."))
    problems += composer.problems
    return composer.root, problems


def _tabs(text: str) -> list[Problem]:
    found = []
    for number, line in enumerate(text.splitlines(), start=1):
        indent = line[: len(line) - len(line.lstrip())]
        if "\t" in indent:
            found.append(
                Problem(
                    line=number,
                    column=indent.index("\t") + 1,
                    message="a tab at the beginning of the line.",
                    hint="Indent with spaces.",
                )
            )
    return found


def _syntax_problem(error: yaml.MarkedYAMLError, text: str) -> Problem:
    found = [mark for mark in (error.problem_mark, error.context_mark) if mark is not None]
    line, column = (found[0].line + 1, found[0].column + 1) if found else (1, 1)
    lines = text.splitlines()
    if line > len(lines):
        line, column = len(lines), len(lines[-1]) + 1
    slip = find_slip(text, line)
    if slip is not None:
        return slip
    told = f"{error.context or ''} {error.problem or ''}"
    source = lines[line - 1] if lines else ""
    if "alias" in told or source[column - 1 : column] == "*":
        return _star(Span(line=line, column=column))
    if "mapping values are not allowed" in told:
        return Problem(
            line=line,
            column=column,
            message='a second ":" in one line.',
            hint='Put the value in quotes, or write "|" after the key and the text on the lines below it.',
        )
    comment = _swallowed(lines, line)
    if comment is not None:
        return comment
    if "expected ',' or" in told or "expected the node content" in told:
        return Problem(
            line=line,
            column=column,
            message="a bracket that is not closed, or a comma that is missing, before this place.",
        )
    if "quoted scalar" in told:
        return Problem(line=line, column=column, message="a quotation mark that is not closed.")
    if "could not find expected ':'" in told:
        return Problem(
            line=line,
            column=column,
            message='a key without ":", or a line that is not indented under its key.',
        )
    return Problem(
        line=line,
        column=column,
        message=f"the file cannot be read here ({(error.problem or 'it is not YAML').strip()}).",
        hint="Check the indentation, and put values with special signs in quotes.",
    )


def _swallowed(lines: list[str], line: int) -> Problem | None:
    """Find an unquoted value that begins with #, which turns the rest of its line into a comment."""
    for number in range(min(line, len(lines)), max(0, line - 3), -1):
        column = lines[number - 1].find(": #")
        if column >= 0:
            return Problem(
                line=number,
                column=column + 3,
                message="a value that begins with # is taken for a comment.",
                hint='Put it in quotes, for example "#ece6d8".',
            )
    return None


def _star(place: Span) -> Problem:
    return place.problem(
        'a line that begins with "*" outside a block.',
        'Write "work: |" and the line below it, indented.',
    )


class _Composer:
    """Builds nodes from the parser's events, without recursion, within the limits above."""

    def __init__(self, text: str) -> None:
        self.lines = text.splitlines()
        self.root: Node | None = None
        self.problems: list[Problem] = []
        self.stopped = False
        self.nodes = 0
        self.open: list[Mapping | Sequence] = []
        self.keys: list[Scalar | None] = []

    def take(self, event: yaml.Event) -> None:
        mark: Any = event.start_mark
        place = Span(line=mark.line + 1, column=mark.column + 1)
        if isinstance(event, yaml.AliasEvent):
            self._stop(_star(place))
        elif isinstance(event, yaml.ScalarEvent):
            if event.anchor or (event.tag and event.tag != "!"):
                self._stop(place.problem("anchors (&) and tags (!) are not used in project files."))
                return
            self._add(self._scalar(event, place))
        elif isinstance(event, yaml.MappingStartEvent):
            self._open(Mapping(place=place), event, place)
        elif isinstance(event, yaml.SequenceStartEvent):
            self._open(Sequence(place=place), event, place)
        elif isinstance(event, yaml.MappingEndEvent | yaml.SequenceEndEvent):
            self.open.pop()
            self.keys.pop()
        elif isinstance(event, yaml.DocumentStartEvent) and self.root is not None:
            self._stop(place.problem("a second document; one file describes one garment."))

    def _stop(self, problem: Problem) -> None:
        self.problems.append(problem)
        self.stopped = True

    def _scalar(self, event: Any, place: Span) -> Scalar:
        end = event.end_mark
        length = len(event.value) or 1
        if end.line == event.start_mark.line:
            length = max(1, end.column - event.start_mark.column)
        style = event.style
        return Scalar(
            text=event.value,
            place=Span(line=place.line, column=place.column, length=length if style not in "|>" else 1)
            if style
            else Span(line=place.line, column=place.column, length=length),
            block=style == "|",
            folded=style == ">",
        )

    def _open(self, node: Mapping | Sequence, event: Any, place: Span) -> None:
        if event.anchor or event.tag:
            self._stop(place.problem("anchors (&) and tags (!) are not used in project files."))
            return
        if len(self.open) >= MAX_DEPTH:
            self._stop(place.problem("the values are nested too deeply."))
            return
        self._add(node)
        self.open.append(node)
        self.keys.append(None)

    def _add(self, node: Node) -> None:
        self.nodes += 1
        if self.nodes > MAX_NODES:
            self._stop(node.place.problem("the file has too many values."))
            return
        if not self.open:
            self.root = node
            return
        parent = self.open[-1]
        if isinstance(parent, Sequence):
            parent.items.append(node)
            return
        key = self.keys[-1]
        if key is None:
            if isinstance(node, Scalar):
                self.keys[-1] = node
            else:
                self._stop(node.place.problem("a key must be one word or name."))
            return
        parent.entries.append((key, node))
        self.keys[-1] = None


def block_lines(scalar: Scalar, text_lines: list[str]) -> list[tuple[str, Span]]:
    """Split a block into its lines, each with the place of its first character.

    Args:
        scalar: A block (`|`), or a value on one line.
        text_lines: The lines of the whole file, to find the indentation.
    """
    if not scalar.block:
        return [(scalar.text, scalar.place)]
    first = scalar.place.line
    values = scalar.text.split("\n")
    indent = 0
    for offset, value in enumerate(values):
        row = first + offset
        if value.strip() and row < len(text_lines):
            source = text_lines[row]
            indent = len(source) - len(source.lstrip(" ")) - (len(value) - len(value.lstrip(" ")))
            break
    return [
        (value, Span(line=first + 1 + offset, column=indent + 1, length=len(value) or 1))
        for offset, value in enumerate(values)
    ]
