"""The house keeps its own rules: rooms import only what they may, and every module has its tests."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

from tests.house_map import page_with_map

ROOT = Path(__file__).parent.parent
PACKAGE = ROOT / "stepper"

MAY_IMPORT = {
    "errors": set(),
    "craft": {"errors"},
    "project": {"craft", "errors"},
    "plan": {"project", "craft", "errors"},
    "session": {"plan", "craft", "errors"},
    "language": {"session", "plan", "craft", "errors"},
    "store": {"session", "errors"},
    "devices": {"errors"},
    "mouth": {"devices", "errors"},
    "ears": {"mouth", "devices", "errors"},
    "screen": {"language", "session", "plan", "craft", "errors"},
    "report": {"language", "session", "plan", "project", "craft", "errors"},
    "conductor": {"language", "session", "plan", "mouth", "errors"},
}
"""Room by room, what it may import besides itself. `commands` may import anything."""

RECORDS = {
    "stepper/project/model.py",
    "stepper/project/instructions.py",
    "stepper/project/stitchwork.py",
    "stepper/project/draft.py",
    "stepper/plan/model.py",
    "stepper/plan/drafts.py",
    "stepper/plan/in_hand.py",
    "stepper/plan/needles.py",
    "stepper/language/wordings.py",
    "stepper/session/cues.py",
    "stepper/session/events.py",
    "stepper/session/effects.py",
    "stepper/session/state.py",
    "stepper/screen/scene.py",
    "stepper/screen/seams.py",
    "stepper/ears/ports.py",
    "stepper/errors.py",
    "stepper/__main__.py",
}
"""Modules that hold records alone; the tests of the modules that use them are theirs."""


def room_of(name: str) -> str:
    """Give the room of a dotted name below `stepper`."""
    return name.split(".")[1] if "." in name else ""


def forbidden(importer: str, source: str) -> list[str]:
    """List what a module imports that its room may not."""
    room = room_of(importer)
    if room in ("commands", "__main__", "") or room not in MAY_IMPORT:
        return []
    found = []
    for node in ast.walk(ast.parse(source)):
        names = []
        if isinstance(node, ast.ImportFrom) and node.module:
            names = [node.module] if room_of(node.module) else [f"stepper.{a.name}" for a in node.names]
            if not node.module.startswith("stepper"):
                names = []
        elif isinstance(node, ast.Import):
            names = [alias.name for alias in node.names if alias.name.startswith("stepper")]
        found += [name for name in names if room_of(name) not in {room, "", *MAY_IMPORT[room]}]
    return found


def modules() -> list[Path]:
    """List every module of the package."""
    return sorted(path for path in PACKAGE.rglob("*.py") if path.name != "__init__.py")


def dotted(path: Path) -> str:
    """Give the dotted name of a module."""
    return ".".join(path.relative_to(ROOT).with_suffix("").parts)


@pytest.mark.parametrize("path", modules(), ids=dotted)
def test_a_room_imports_only_what_it_may(path: Path) -> None:
    """The table of the house holds for every module."""
    assert forbidden(dotted(path), path.read_text(encoding="utf-8")) == []


@pytest.mark.parametrize(
    "source",
    ["from stepper.plan.model import Plan", "import stepper.session.state", "from stepper.screen import view"],
)
def test_the_guard_catches_a_made_up_violation(source: str) -> None:
    """A guard that cannot fail guards nothing."""
    assert forbidden("stepper.craft.gauge", source)


def test_every_room_is_in_the_table() -> None:
    """A new room has to say what it may import."""
    rooms = {path.name for path in PACKAGE.iterdir() if path.is_dir() and (path / "__init__.py").exists()}
    assert rooms - {"commands"} <= set(MAY_IMPORT)


def test_every_module_has_a_test_file_of_its_name() -> None:
    """Who reads a module finds its promises at the same place under tests."""
    missing = []
    for path in modules():
        inner = path.relative_to(PACKAGE)
        expected = ROOT / "tests" / inner.parent / f"test_{inner.name}"
        if path.relative_to(ROOT).as_posix() not in RECORDS and not expected.exists():
            missing.append(inner.as_posix())
    assert missing == []


def test_the_records_are_still_there() -> None:
    """An exception that has gone is taken off the list."""
    assert {path.relative_to(ROOT).as_posix() for path in modules()} >= RECORDS


def imports_at_load(path: Path) -> set[str]:
    """List the modules of the package that a module imports when it is loaded."""
    found: set[str] = set()
    for node in ast.parse(path.read_text(encoding="utf-8")).body:
        if isinstance(node, ast.ImportFrom) and node.module and node.module.startswith("stepper"):
            found.add(node.module)
            found |= {f"{node.module}.{alias.name}" for alias in node.names}
    return found


def test_no_module_imports_itself_in_a_circle() -> None:
    """Every part can be understood and loaded alone."""
    graph = {dotted(path): imports_at_load(path) for path in modules()}
    done: set[str] = set()

    def visit(name: str, trail: tuple[str, ...]) -> None:
        assert name not in trail, " -> ".join((*trail, name))
        if name in done:
            return
        for other in graph.get(name, set()) & set(graph):
            visit(other, (*trail, name))
        done.add(name)

    for name in graph:
        visit(name, ())


def test_packages_do_not_re_export() -> None:
    """Inside the house modules are imported, never packages."""
    for path in PACKAGE.rglob("__init__.py"):
        body = ast.parse(path.read_text(encoding="utf-8")).body
        imports = [node for node in body if isinstance(node, ast.ImportFrom) and node.module != "__future__"]
        assert imports == [], path


def test_the_map_is_true() -> None:
    """Who looks for a module finds it on the contributor's page, said in one line (python -m tests.house_map)."""
    page = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")

    assert page == page_with_map(page)
