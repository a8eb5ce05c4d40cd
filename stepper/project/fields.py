"""Reading a mapping key by key: what is missing, what is given twice, what is not a key at all. No I/O."""

from __future__ import annotations

from stepper.project.problems import Place, Problem, nearest, one_of
from stepper.project.source import Mapping, Node, Scalar, Sequence


class Fields:
    """The keys of one mapping, taken one after the other; what is left over is a problem."""

    def __init__(self, node: Mapping, what: str, problems: list[Problem]) -> None:
        self.node = node
        self.what = what
        """What the mapping describes, for sentences: `the file`, `section "yoke"`."""
        self.problems = problems
        self.asked: list[str] = []
        self.found: dict[str, tuple[Scalar, Node]] = {}
        for key, value in node.entries:
            name = key.text.strip()
            if name in self.found:
                first = self.found[name][0].place.line
                problems.append(key.place.problem(f'"{name}" is given twice; the first is on line {first}.'))
                continue
            self.found[name] = (key, value)

    def place(self, name: str) -> Place:
        """Give the place of a key, or of the mapping where the key is not there."""
        return self.found[name][0].place if name in self.found else self.node.place

    def take(self, name: str, *, required: bool = False) -> Node | None:
        """Take the value of a key."""
        self.asked.append(name)
        if name in self.found:
            return self.found[name][1]
        if required:
            self.problems.append(
                self.node.place.problem(f"{self.what} has no `{name}`.", f"Add a line `{name}: …`.")
            )
        return None

    def text(self, name: str, *, required: bool = False) -> Scalar | None:
        """Take a value that must be words on one line."""
        node = self.take(name, required=required)
        if node is None:
            return None
        if not isinstance(node, Scalar):
            self.problems.append(node.place.problem(f"`{name}` must be a single value."))
            return None
        if not node.text.strip():
            hint = "Put a value that begins with # in quotes." if name == "colour" else ""
            self.problems.append(self.place(name).problem(f"`{name}` is empty.", hint))
            return None
        return node

    def mapping(self, name: str, *, required: bool = False) -> Mapping | None:
        """Take a value that must be a mapping."""
        node = self.take(name, required=required)
        if node is None or isinstance(node, Mapping):
            return node
        self.problems.append(node.place.problem(f"`{name}` must hold keys and values, indented under it."))
        return None

    def items(self, name: str, *, required: bool = False) -> list[Node]:
        """Take a value that must be a list."""
        node = self.take(name, required=required)
        if node is None:
            return []
        if isinstance(node, Sequence):
            return node.items
        self.problems.append(node.place.problem(f'`{name}` must be a list: lines that begin with "- ".'))
        return []

    def close(self) -> None:
        """Report every key that nothing asked for."""
        for name, (key, _) in self.found.items():
            if name not in self.asked:
                hint = nearest(name, self.asked) or f"The keys here are {one_of(self.asked)}."
                self.problems.append(key.place.problem(f"`{name}` is not a key of {self.what}.", hint))
