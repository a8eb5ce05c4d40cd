"""The house keeps its own rules: rooms import only what they may, and every module has its tests."""

from __future__ import annotations

import ast
import re
import tomllib
from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache
from pathlib import Path

import pytest

from tests.house_map import page_with_map

ROOT = Path(__file__).parent.parent
PACKAGE = ROOT / "stepper"

MAY_IMPORT = {
    "errors": set(),
    "files": set(),
    "kept": {"files"},
    "records": set(),
    "regex": {"kept"},
    "craft": {"errors"},
    "project": {"craft", "kept", "files", "errors"},
    "plan": {"project", "craft", "errors"},
    "session": {"plan", "craft", "errors"},
    "language": {"session", "plan", "craft", "errors"},
    "store": {"session", "files", "errors"},
    "devices": {"files", "errors"},
    "mouth": {"devices", "errors"},
    "ears": {"mouth", "devices", "files", "errors"},
    "screen": {"language", "session", "plan", "craft", "errors"},
    "report": {"language", "session", "plan", "project", "craft", "errors"},
    "lap": {"screen", "language", "session", "plan", "craft", "errors"},  # shows what the screen shows, as data
    "sitting": {
        *("lap", "screen", "store", "ears", "mouth", "devices"),
        *("language", "session", "plan", "project", "craft", "files", "errors"),
    },
    "settling": {"sitting", "language", "session", "project", "plan", "craft", "errors"},
}
"""Room by room, what it may import besides itself. `commands` may import anything."""

NARROWER = {
    "stepper.sitting.conductor": {"sitting", "language", "session", "plan", "mouth", "errors"},
    "stepper.sitting.ports": {"session", "plan", "mouth", "errors"},
}
"""Modules that keep to fewer rooms than their own may: with these the whole session runs in a test without a
disk, a screen or a sound device."""

RECORDS = {
    "stepper/project/model.py",
    "stepper/project/instructions.py",
    "stepper/project/duration.py",
    "stepper/project/laying_out.py",
    "stepper/project/stitchwork.py",
    "stepper/project/draft.py",
    "stepper/plan/model.py",
    "stepper/plan/drafts.py",
    "stepper/plan/state/in_hand.py",
    "stepper/plan/state/needles.py",
    "stepper/language/understanding/wordings.py",
    "stepper/session/clock_cues.py",
    "stepper/session/cues.py",
    "stepper/session/effects.py",
    "stepper/session/state.py",
    "stepper/report/sheet/blocks.py",
    "stepper/screen/scene.py",
    "stepper/screen/device_status.py",
    "stepper/screen/ports.py",
    "stepper/ears/ports.py",
    "stepper/lap/ports.py",
    "stepper/commands/command.py",
    "stepper/sitting/ports.py",
    "stepper/sitting/front_end.py",
    "stepper/errors.py",
    "stepper/__main__.py",
}
"""Modules that hold records alone; the tests of the modules that use them are theirs."""


PRIVATE_OF_LIBRARIES = {
    "os._exit": "documented, in spite of its name: ends a child without what its parent would have done",
    "sounddevice._terminate": "PortAudio looks for devices once; there is no public way to have it look again",
    "sounddevice._initialize": "the same",
    "app._on_resize": "prompt_toolkit is told of another size by SIGWINCH alone, which only the main thread gets",
    "core._data": "a package of voices names its model and not the table that belongs to it",
}
"""What tests may reach into, and why: of libraries, and nothing of the house."""


def room_of(name: str) -> str:
    """Return the room of a dotted name below `stepper`."""
    return name.split(".")[1] if "." in name else ""


def imports(tree: ast.Module) -> set[str]:
    """List what a module imports of the package, at its head, inside functions, for the type checker alone and by
    name in a string.

    Returns:
        Dotted names; of "from a import b" both a and a.b, since b may be a module.
    """
    found: set[str] = set()
    todo: list[ast.AST] = [tree]
    while todo:
        node = todo.pop()
        todo += ast.iter_child_nodes(node)
        if isinstance(node, ast.ImportFrom) and node.module:
            found |= {node.module} | {f"{node.module}.{alias.name}" for alias in node.names}
        elif isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.Call):
            found |= strings_imported(node)
    return {name for name in found if name.split(".")[0] == "stepper"}


def called(call: ast.Call) -> str:
    """Return the name of what is called, without what it belongs to; empty if it has none."""
    return call.func.attr if isinstance(call.func, ast.Attribute) else getattr(call.func, "id", "")


def strings_imported(call: ast.Call) -> set[str]:
    """List what a call imports by a name in a string; of a name put together, what is written of it."""
    if called(call) not in ("import_module", "__import__"):
        return set()
    first = next((each for each in ast.walk(call) if isinstance(each, ast.Constant)), None)
    return {first.value.rstrip(".")} if first is not None and isinstance(first.value, str) else set()


def forbidden(importer: str, imported: set[str]) -> list[str]:
    """List what a module imports that its room may not."""
    room = room_of(importer)
    if room in ("commands", "__main__", ""):
        return []
    allowed = NARROWER.get(importer, {room, *MAY_IMPORT[room]})
    # "from stepper import screen" brings the room; "from stepper.errors import X" is judged by its module.
    return sorted(name for name in imported if room_of(name) not in {"", "__version__", "records", "regex", *allowed})


def reached_into(source: str) -> list[str]:
    """List what a test reaches into that its owner keeps to itself: attributes, imports, names given as strings."""
    found = []
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Attribute) and _is_private(node.attr):
            if not (isinstance(node.value, ast.Name) and node.value.id in ("self", "cls")):
                found.append(ast.unparse(node))
        elif isinstance(node, ast.ImportFrom):
            found += [f"{node.module}.{each.name}" for each in node.names if _is_private(each.name)]
        elif isinstance(node, ast.Call) and called(node) in ("getattr", "setattr", "object"):
            names = [each.value for each in node.args if isinstance(each, ast.Constant)]
            found += [str(each) for each in names if _is_private(str(each).rpartition(".")[2])]
    return [each for each in found if each not in PRIVATE_OF_LIBRARIES]


def _is_private(name: str) -> bool:
    return name.startswith("_") and not name.startswith("__") and name.isidentifier() and name != "_"


def modules() -> list[Path]:
    """List every module of the package."""
    return sorted(path for path in PACKAGE.rglob("*.py") if path.name != "__init__.py")


def dotted(path: Path) -> str:
    """Return the dotted name of a module."""
    return ".".join(path.relative_to(ROOT).with_suffix("").parts)


@dataclass(frozen=True, slots=True, kw_only=True)
class Found:
    """What the rules of the house ask of a module."""

    imports: set[str]
    string_imports: list[str]
    long_functions: list[str]
    participles: set[str]
    compiled: list[str]


@cache
def look_through(path: Path) -> Found:
    """Return what is found in a module, which is parsed once for all the rules."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    return Found(
        imports=imports(tree),
        string_imports=string_imports(tree),
        long_functions=long_functions(tree),
        participles=participles(tree),
        compiled=compiled_at_import(tree),
    )


def test_a_room_imports_only_what_it_may() -> None:
    """The table of the house holds for every module."""
    found = {dotted(path): forbidden(dotted(path), look_through(path).imports) for path in modules()}
    assert {name: wrong for name, wrong in found.items() if wrong} == {}


@pytest.mark.parametrize(
    "source",
    [
        "from stepper.plan.model import Plan",
        "import stepper.session.state",
        "from stepper.screen import view",
        "from stepper import screen",
        "def later():\n    from stepper.plan.model import Plan",
        "if TYPE_CHECKING:\n    from stepper.plan.model import Plan",
        'importlib.import_module("stepper.plan.model")',
        'import_module(f"stepper.plan.{name}")',
        '__import__("stepper.plan")',
    ],
)
def test_the_guard_catches_a_made_up_violation(source: str) -> None:
    """A guard that cannot fail guards nothing."""
    assert forbidden("stepper.craft.gauge", imports(ast.parse(source)))


def test_tests_go_through_the_public_side() -> None:
    """A promise that can only be seen from inside is none, and a test that looks inside stands in the way of whoever
    would keep the promise another way."""
    found = {
        path.relative_to(ROOT).as_posix(): reached
        for path in sorted((ROOT / "tests").rglob("*.py"))
        if (reached := reached_into(path.read_text(encoding="utf-8")))
    }
    assert found == {}


@pytest.mark.parametrize(
    "source",
    [
        "assert gate._floor_db() == 3",
        "desk.conductor._keep = full",
        "self.screen._app.loop",
        "from stepper.session.respond import _TOLD",
        "monkeypatch.setattr(playback, '_STALLED_S', 0.2)",
        "monkeypatch.setattr('stepper.mouth.playback._STALLED_S', 0.2)",
        "getattr(speaker, '_current')",
        "mock.patch.object(store, '_copy')",
    ],
)
def test_reaching_into_what_is_private_is_seen(source: str) -> None:
    """The guard that none of the tests does it has to be able to fail."""
    assert reached_into(source)


@pytest.mark.parametrize(
    "source",
    ["self._drawn += 1", "cls._made()", "speaker, _ = both", "path.__class__", "os._exit(0)", "take(_NAME)"],
)
def test_what_is_ones_own_is_not_reaching(source: str) -> None:
    """What a test keeps for itself is its own affair."""
    assert reached_into(source) == []


def test_the_conductor_keeps_to_fewer_rooms_than_its_own() -> None:
    """It is tried without a disk, a screen or a sound device, so it may know of none."""
    journal = imports(ast.parse("from stepper.store.journal import Journal"))
    assert forbidden("stepper.sitting.conductor", journal)
    assert not forbidden("stepper.sitting.assembly", journal)


def test_nothing_of_the_house_is_imported_by_a_string() -> None:
    """The type checker follows plain imports, inside functions too; a name in a string is Any to it."""
    found = [f"{dotted(path)}: {name}" for path in modules() for name in look_through(path).string_imports]
    assert found == []
    by_string = ast.parse('def later():\n    importlib.import_module(f"stepper.commands.{name}")')
    assert string_imports(by_string)
    assert not string_imports(ast.parse('importlib.import_module("numpy")'))


def string_imports(tree: ast.Module) -> list[str]:
    """List what of the house is imported by a name in a string."""
    calls = (node for node in ast.walk(tree) if isinstance(node, ast.Call))
    return [name for call in calls for name in strings_imported(call) if name.split(".")[0] == "stepper"]


def test_every_room_is_in_the_table() -> None:
    """A new room has to say what it may import."""
    rooms = {path.name for path in PACKAGE.iterdir() if path.is_dir() and (path / "__init__.py").exists()}
    assert rooms - {"commands"} <= set(MAY_IMPORT)


MOST_MODULES = 25
"""Modules in the fullest folder."""


def crowded(paths: Iterable[Path]) -> dict[str, int]:
    """Count the modules of the folders that hold more than one finds one's way in."""
    side_by_side = Counter(path.parent.as_posix() for path in paths)
    return {folder: number for folder, number in side_by_side.items() if number > MOST_MODULES}


def test_no_room_is_crowded() -> None:
    """Where more lie side by side a stranger has to read them all to find an idea: some of them are a room."""
    assert crowded(modules()) == {}
    assert crowded(Path(f"room/m{number}.py") for number in range(MOST_MODULES + 1)) == {"room": MOST_MODULES + 1}


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


MOST_LINES = 60
"""Lines of the longest function, its docstring among them."""


def long_functions(tree: ast.Module) -> list[str]:
    """List the functions that nobody takes in at a glance."""
    functions = (
        node for node in ast.walk(tree) if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef)
    )
    return [node.name for node in functions if (node.end_lineno or 0) - node.lineno >= MOST_LINES]


def test_no_function_is_longer_than_a_page() -> None:
    """What is longer does more than one thing, and its parts have names."""
    found = {dotted(path): long for path in modules() if (long := look_through(path).long_functions)}
    assert found == {}
    assert long_functions(ast.parse("def endless():\n" + "    pass\n" * MOST_LINES)) == ["endless"]


def compiled_at_import(tree: ast.AST) -> list[str]:
    """List what a module compiles while it is imported: what `stepper.records` and `stepper.regex` would put off."""
    found: list[str] = []
    for node in ast.iter_child_nodes(tree):
        if isinstance(node, ast.ImportFrom) and node.module == "dataclasses":
            found += [each.name for each in node.names if each.name == "dataclass"]
        if isinstance(node, ast.Attribute) and ast.unparse(node) == "re.compile":
            found.append("re.compile")
        found += [] if isinstance(node, ast.FunctionDef | ast.Lambda) else compiled_at_import(node)
    return found


def test_nothing_is_compiled_at_import() -> None:
    """Five hundred classes and as many expressions were two thirds of what a command took to begin."""
    exempt = {"stepper.records", "stepper.regex"}
    found = {dotted(path): look_through(path).compiled for path in modules()}
    assert {name: each for name, each in found.items() if each and name not in exempt} == {}
    made_up = "from dataclasses import dataclass, field\n_HEAD = re.compile('k')\ndef f(): re.compile('p')"
    assert compiled_at_import(ast.parse(made_up)) == ["dataclass", "re.compile"]


def find_circle(graph: dict[str, set[str]]) -> tuple[str, ...]:
    """Return the first circle of a graph of imports, with its first module again at the end; empty if none."""
    done: set[str] = set()

    def visit(name: str, trail: tuple[str, ...]) -> tuple[str, ...]:
        if name in trail:
            return (*trail[trail.index(name) :], name)
        if name in done:
            return ()
        for other in sorted(graph[name] & set(graph)):
            circle = visit(other, (*trail, name))
            if circle:
                return circle
        done.add(name)
        return ()

    return next((circle for name in graph if (circle := visit(name, ()))), ())


def test_no_module_imports_itself_in_a_circle() -> None:
    """Every part can be understood alone, and an import put off into a function or a string, or for the type checker
    alone, hides no circle."""
    graph = {dotted(path): look_through(path).imports for path in modules()}
    assert find_circle(graph) == ()


@pytest.mark.parametrize(
    "back",
    [
        "from stepper.a import x",
        "from stepper import a",
        "import stepper.a",
        "class A:\n    def later(self):\n        from stepper.a import x",
        'def later():\n    importlib.import_module("stepper.a")',
        "if TYPE_CHECKING:\n    from stepper.a import x",
    ],
)
def test_the_guard_finds_a_made_up_circle(back: str) -> None:
    """Wherever the way back is hidden."""
    sources = {"stepper.a": "from stepper.b import y", "stepper.b": back}
    graph = {name: imports(ast.parse(source)) for name, source in sources.items()}
    assert find_circle(graph) == ("stepper.a", "stepper.b", "stepper.a")


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


IRREGULAR = {
    *("begun", "caught", "drawn", "found", "given", "held", "kept", "known", "laid", "left", "lost", "made", "met"),
    *("said", "seen", "shown", "spoken", "taken", "told", "undone", "worn", "written"),
}
"""Participles that do not end as the regular ones do."""


def participles(tree: ast.Module) -> set[str]:
    """Return the public functions of a module that are named by a participle alone."""
    names = {node.name for node in tree.body if isinstance(node, ast.FunctionDef)}
    return {name for name in names if re.fullmatch("[a-z]+(?:ed|ing)", name) or name in IRREGULAR}


def test_a_function_is_named_by_what_it_does() -> None:
    """`altered` tells a stranger nothing that `apply_alterations` does not say at once."""
    found = {f"{dotted(path)}:{name}" for path in modules() for name in look_through(path).participles}
    assert found == set()


def test_the_guard_sees_a_made_up_participle() -> None:
    """A guard that sees nothing would pass for ever."""
    tree = ast.parse("def altered(): ...\ndef told(): ...\ndef find_told(): ...\ndef _held(): ...")
    assert participles(tree) == {"altered", "told"}


def test_every_room_is_packed() -> None:
    """A package that is not named in pyproject.toml would be missing in what is installed."""
    told = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["tool"]["setuptools"]
    rooms = {".".join(path.parent.relative_to(ROOT).parts) for path in PACKAGE.rglob("__init__.py")}

    assert set(told["packages"]) == rooms | set(told["package-dir"])
