"""The tool that makes mutants: one that makes none would call every test perfect."""

from __future__ import annotations

import ast
import sys
from pathlib import Path
from types import ModuleType
from typing import Any

import pytest

from tests.bench.mutant_swap import CannotSwapError, swap
from tests.bench.mutant_tests import mirrored_tests, other_tests, reached_from
from tests.bench.mutants import EQUIVALENT, candidates_of, differs, equivalents, modules_of, mutants_of
from tests.tables import each_row

ROOT = Path(__file__).parent.parent

SOURCE = '''"""Words."""

@cache(7)
def least(some: "list[1]", bound: int = 3) -> int:
    """Return 5."""
    found = [each for each in some if each > 2 and not each == bound]
    if bound < 0:
        raise ValueError(f"{bound} is below {0}")
    some.clear()
    total -= max(found, key=len)
    return swap(bound, "é") + 1 if found else None
'''


def changes(source: str) -> set[tuple[str, str]]:
    """List what becomes of what, by the code alone."""
    return {(each.before, each.after) for each in mutants_of("stepper/x.py", source)}


@each_row(
    ("before", "after"),
    [
        ("each > 2", "(each >= 2)"),
        ("each > 2", "(each <= 2)"),
        ("2", "(3)"),
        ("3", "(2)"),
        ("each > 2 and (not each == bound)", "(each > 2 or not each == bound)"),
        ("each > 2 and (not each == bound)", "(each > 2)"),
        ("not each == bound", "(each == bound)"),
        ("for each in some if each > 2 and (not each == bound)", "for each in some"),
        ("bound < 0", "not (bound < 0)"),
        ("some.clear()", "pass"),
        ("total -= max(found, key=len)", "total += max(found, key=len)"),
        ("max(found, key=len)", "(min(found, key=len))"),
        ("swap(bound, 'é')", "(swap('é', bound))"),
        ("swap(bound, 'é') + 1", "(swap(bound, 'é') - 1)"),
        ("swap(bound, 'é') + 1 if found else None", "(None if found else swap(bound, 'é') + 1)"),
        ("return swap(bound, 'é') + 1 if found else None", "return"),
    ],
)
def test_each_kind_of_change_is_made(before: str, after: str) -> None:
    """Comparisons, sums, constants, conditions, statements, arguments and results."""
    simple = {
        (a.replace("(", "").replace(")", ""), b.replace("(", "").replace(")", "")) for a, b in changes(SOURCE)
    }
    assert (before.replace("(", "").replace(")", ""), after.replace("(", "").replace(")", "")) in simple


def test_what_the_program_does_not_do_is_left_alone() -> None:
    """Annotations, docstrings, decorators and the words of an error make no mutant: nothing could kill it."""
    assert not {before for before, _ in changes(SOURCE)} & {"7", "1]", "5", "'list[1]'"}
    for mutant in mutants_of("stepper/x.py", SOURCE):
        assert 'raise ValueError(f"{bound} is below {0}")' in mutant.source


@pytest.mark.parametrize("module", ["craft/pace", "stepper/craft/colours/colour.py"])
def test_every_mutant_of_a_real_module_is_another_program_on_one_line_or_statement(module: str) -> None:
    """It compiles, it differs, and only at the place that is told."""
    (path,) = modules_of(module)
    source = (ROOT / path).read_text(encoding="utf-8")
    found = mutants_of(path, source)
    assert len(found) > 50
    lines, plain = source.splitlines(), ast.dump(ast.parse(source))
    for mutant in found:
        assert ast.dump(ast.parse(mutant.source)) != plain
        assert mutant.source.splitlines()[: mutant.line - 1] == lines[: mutant.line - 1]
        assert mutant.code == lines[mutant.line - 1].strip()


def test_a_room_is_its_modules_and_each_has_its_tests() -> None:
    """Records without a file of their own have none, and are told so rather than called unkilled."""
    assert "stepper/craft/pace.py" in modules_of("craft")
    assert mirrored_tests("stepper/craft/pace.py") == ["tests/craft/test_pace.py"]
    assert mirrored_tests("stepper/project/draft.py") == []


def test_who_does_not_import_a_module_is_not_asked_about_it() -> None:
    """However long the way: a test of a plan meets the spacing of its even rounds, one of the tape measure does not."""
    assert {"stepper.craft.even.spacing", "stepper.craft.bounds"} <= reached_from("tests.plan.test_compile")
    others = other_tests("stepper/craft/even/spacing.py")
    assert "tests/craft/even/test_manners.py" in others
    assert not {"tests/craft/even/test_spacing.py", "tests/craft/test_gauge.py"} & set(others)


def test_every_equivalent_mutant_is_still_one_of_the_code() -> None:
    """A row that no mutant matches would excuse another one some day."""
    names = equivalents()
    assert len(names) == len(EQUIVALENT.read_text(encoding="utf-8").splitlines()) - 2
    for module in {name.split(" ¦ ")[0] for name in names}:
        source = (ROOT / module).read_text(encoding="utf-8")
        made = {each.name: each for each in candidates_of(module, source)}
        for name in (each for each in names if each.startswith(module)):
            assert differs(made[name], source), name


def loaded_module(monkeypatch: pytest.MonkeyPatch, name: str, source: str) -> dict[str, Any]:
    """Load a module from its text, and have it forgotten after the test."""
    module = ModuleType(name)
    exec(compile(source, name, "exec"), vars(module))
    monkeypatch.setitem(sys.modules, name, module)
    return vars(module)


LOADED = '''
from functools import cache

def half(number: int) -> int:
    """Return half of a number."""
    return number // 2

@cache
def more(number: int) -> int:
    return max(number + each for each in (1, 2))

class Box:
    least = 3

    @property
    def most(self) -> int:
        return self.least * 2
'''


@pytest.mark.parametrize(
    ("before", "after", "asked", "comes_to"),
    [
        ("number // 2", "number * 2", "half(6)", 12),
        ("number + each", "number - each", "more(6)", 5),
        ("self.least * 2", "self.least * 3", "Box().most", 9),
    ],
)
def test_a_function_is_changed_where_it_lies(
    monkeypatch: pytest.MonkeyPatch, before: str, after: str, asked: str, comes_to: int
) -> None:
    """Whoever took it by name before meets the change too, as a test that is loaded has to; whatever is wrapped around it."""
    names = loaded_module(monkeypatch, "loaded_before", LOADED)
    taken = dict(names)
    swap("loaded_before", LOADED, LOADED.replace(before, after))
    assert eval(asked, taken) == comes_to


@pytest.mark.parametrize(("before", "after"), [("least = 3", "least = 4"), ("class Box", "ALSO = 1\n\nclass Box")])
def test_what_is_not_inside_a_function_is_left_to_the_slower_way(
    monkeypatch: pytest.MonkeyPatch, before: str, after: str
) -> None:
    """Called unkilled, a table's mutant would accuse tests that never saw it."""
    loaded_module(monkeypatch, "loaded_before", LOADED)
    with pytest.raises(CannotSwapError):
        swap("loaded_before", LOADED, LOADED.replace(before, after))
    with pytest.raises(CannotSwapError):
        swap("never_loaded", LOADED, LOADED.replace("// 2", "* 2"))
