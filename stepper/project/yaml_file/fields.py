"""Read a mapping key by key, reporting keys that are missing, given twice or unknown. No I/O.

A misspelt key is reported once and then read as the key that was meant, so that nothing seems missing.
"""

from __future__ import annotations

from types import MappingProxyType
from typing import Final

from stepper.project.problems import Problem, Span, nearest, one_of
from stepper.project.spelling import near
from stepper.project.yaml_file.source import Mapping, Node, Scalar, Sequence

KEYS = frozenset(
    {
        "title", "finish_by", "units", "sizes", "knit", "size", "then", "from", "reshape", "yarn",
        "name", "colour", "color", "skein", "grams", "metres", "ounces", "yards", "bought", "gauge",
        "tension",
        "needle", "needles", "stitches", "rounds", "rows", "blocked", "body", "charts", "key", "repeat",
        "drawn", "picture", "alterations", "note", "cues", "sections", "work", "short_rows",
        "wanted_ease", "swatch", "weight", "width", "height", "float_limit", "longest_float",
        "spacing", "over", "lengths", "abbreviations", "stripes",
    }
)  # fmt: skip
"""Keys of the outline. None of these is ever taken for a misspelling of another."""

_GAUGE = "{stockinette: {needle: 4 mm, stitches: 20, rows: 28}}"
FORMS: Final = MappingProxyType(
    {
        "abbreviations": "{SE: slip 1 purlwise}",
        "gauge": _GAUGE,
        "tension": _GAUGE,
        "knit": "{size: M}",
        "stripes": '{stripe sequence: "4 rnds MC, 2 rnds CC"}',
        "yarn": "{MC: {name: chalk}}",
    }
)
"""What is written below a key that holds others, each as an example."""


class Fields:
    """The keys of one mapping, taken one by one; any left over is a problem."""

    def __init__(self, node: Mapping, what: str, problems: list[Problem]) -> None:
        self.node = node
        self.what = what
        """What the mapping describes, for sentences: `the file`, `section "yoke"`."""
        self.problems = problems
        self.asked: list[str] = []
        self.found: dict[str, tuple[Scalar, Node]] = {}
        for key, value in node.entries:
            name = key.text.strip() or key.text[:1]
            if name in self.found:
                first = self.found[name][0].place.line
                problems.append(key.place.problem(f'"{name}" is given twice; the first is on line {first}.'))
                continue
            self.found[name] = (key, value)

    def report(self, place: Span, message: str, hint: str = "") -> None:
        """Add a problem at a place, as `Span.problem` makes it."""
        self.problems.append(place.problem(message, hint))

    def place(self, name: str) -> Span:
        """Return the place of a key, or of the mapping if the key is missing."""
        return self.found[name][0].place if name in self.found else self.node.place

    def take(self, name: str, *, required: bool = False) -> Node | None:
        """Take the value of a key, or of the one key that misspells it."""
        self.asked.append(name)
        if name in self.found:
            return self.found[name][1]
        meant = self._misspelt(name)
        if meant is not None:
            self.asked.append(meant)
            key, value = self.found[meant]
            self.report(key.place, f"`{meant}` is not a key of {self.what}.", f'Did you mean "{name}"?')
            self.found[name] = (key, value)
            return value
        if required:
            self.report(self.node.place, f"{self.what} has no `{name}`.", f"Add a line `{name}: …`.")
        return None

    def _misspelt(self, name: str) -> str | None:
        """Find the key that misspells this one: not legal itself, and nearer to this than to other keys."""
        for other in self.found:
            if other in self.asked or other.lower() in KEYS:
                continue
            twins = near(other, KEYS | {name})
            if twins and any(twin == name and count == twins[0][0] for count, twin in twins):
                return other
        return None

    def text(self, name: str, *, required: bool = False) -> Scalar | None:
        """Take a value that must be words on one line."""
        node = self.take(name, required=required)
        if node is None:
            return None
        if not isinstance(node, Scalar):
            form = _as_printed(node) if name == "sizes" else FORMS.get(name)
            hint = f'Write it as "{name}: {form}".' if form else ""
            self.report(node.place, f"`{name}` must be a single value.", hint)
            return None
        if not node.text.strip():
            hint = "Put a value that begins with # in quotes." if name == "colour" else ""
            self.report(self.place(name), f"`{name}` is empty.", hint)
            return None
        return node

    def mapping(self, name: str, *, required: bool = False) -> Mapping | None:
        """Take a value that must be a mapping."""
        node = self.take(name, required=required)
        if node is None or isinstance(node, Mapping):
            return node
        hint = f'Write it as "{name}: {FORMS[name]}".' if name in FORMS else ""
        told = f"`{name}` must hold keys and values, indented under it."
        self.report(node.place, told, hint)
        return None

    def items(self, name: str, *, required: bool = False) -> list[Node]:
        """Take a value that must be a list."""
        node = self.take(name, required=required)
        if node is None:
            return []
        if isinstance(node, Sequence):
            return node.items
        self.report(node.place, f'`{name}` must be a list: lines that begin with "- ".')
        return []

    def close(self) -> None:
        """Report every key that was not taken."""
        for name, (key, _) in self.found.items():
            if name not in self.asked:
                asked = [each for each in dict.fromkeys(self.asked) if each not in self.found]
                hint = nearest(name, asked) or nearest(name, self.asked)
                hint = hint or f"The keys here are {one_of(dict.fromkeys(self.asked))}."
                self.report(key.place, f"`{name}` is not a key of {self.what}.", hint)


def _as_printed(node: Node) -> str:
    """Return sizes that are written as a list the way a pattern prints them: `S (M, L)`."""
    listed = node.items if isinstance(node, Sequence) else []
    first, *others = [one.text for one in listed if isinstance(one, Scalar)] or ["S", "M", "L"]
    return f"{first} ({', '.join(others)})" if others else first
