"""Regular expressions compiled late: they answer as those of Python's `re`, which is asked beside them."""

from __future__ import annotations

import importlib
import pkgutil
import re
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

import stepper
from stepper.kept import KeptTable
from stepper.project.rewording.synonyms import SYNONYMS
from stepper.regex import Compiled, regex
from tests.hanging import NUMBERS_AGAIN, hung_on, may_hang, needs_clock, words_again
from tests.tables import each_row

PATTERN = r"(?P<work>k|p)(\d+)|(yo)"
TEXT = "K2, p3, yo, k12"
QUESTIONS: dict[str, Callable[[re.Pattern[str]], object]] = {
    "match": lambda asked: [_shown(asked.match(TEXT)), _shown(asked.match(TEXT, 4)), _shown(asked.match(TEXT, 4, 5))],
    "fullmatch": lambda asked: [_shown(asked.fullmatch(TEXT)), _shown(asked.fullmatch("K2"))],
    "search": lambda asked: [_shown(asked.search(TEXT)), _shown(asked.search(TEXT, pos=3))],
    "finditer": lambda asked: [_shown(each) for each in asked.finditer(TEXT)],
    "findall": lambda asked: asked.findall(TEXT),
    "split": lambda asked: [asked.split(TEXT), asked.split(TEXT, maxsplit=1)],
    "sub": lambda asked: [asked.sub("", TEXT), asked.sub(lambda found: found[0] * 2, TEXT, count=1)],
    "pattern": lambda asked: asked.pattern,
}


def _shown(match: re.Match[str] | None) -> object:
    return None if match is None else (match.span(), match.groups(), match.lastgroup)


@each_row("question", QUESTIONS)
@each_row("flags", [0, re.I])
def test_it_answers_as_a_pattern_compiled_at_once(question: str, flags: int) -> None:
    """The first time, when it is compiled, and every time after."""
    late, at_once = regex(PATTERN, flags), re.compile(PATTERN, flags)
    ask = QUESTIONS[question]
    assert [ask(late), ask(late)] == [ask(at_once), ask(at_once)]


def test_each_question_may_be_the_first() -> None:
    """And the others are answered behind it."""
    at_once = re.compile(PATTERN)
    for first in QUESTIONS.values():
        late = regex(PATTERN)
        first(late)
        assert [ask(late) for ask in QUESTIONS.values()] == [ask(at_once) for ask in QUESTIONS.values()]


def test_nothing_is_compiled_before_it_is_asked() -> None:
    """What this is for: a wrong expression is not even looked at until somebody asks it."""
    wrong = regex("(")
    assert "(" in repr(wrong)
    with pytest.raises(re.error):
        wrong.search(TEXT)


_ALL = """
import gc, importlib, pkgutil, stepper
for each in pkgutil.walk_packages(stepper.__path__, "stepper."):
    if not each.name.endswith("__main__"):
        importlib.import_module(each.name)
late = [each for each in gc.get_objects() if type(each).__name__ == "_LateRegex"]
for each in late:
    each.search("")
print(len(late))
"""


def test_every_expression_of_the_house_compiles() -> None:
    """One that is wrong would be told to whoever asks it first."""
    asked = subprocess.run([sys.executable, "-c", _ALL], capture_output=True, text=True, check=False)
    assert asked.stderr == ""
    assert int(asked.stdout) > 400


@pytest.fixture
def beside(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Return a folder in the place of the one beside the compiled modules; the user's is another."""
    monkeypatch.setattr(sys, "pycache_prefix", str(tmp_path / "beside"))
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path / "hers"))
    return tmp_path / "beside"


def kept(name: str, pattern: str, flags: int) -> object:
    """Return what is kept of an expression, as the next start finds it."""
    return KeptTable(name, most=1, least_new=1).get((pattern, int(flags)))


def house_expressions() -> list[tuple[str, int]]:
    """Return each tenth row of the other wordings, and expressions of every notation the house has."""
    rows = [(each.expression, 0 if each.exact else re.I) for each in SYNONYMS[::10]]
    return [*rows, (PATTERN, 0), (r"(?x) a # b", re.M), (r"(?P<a>a)|(?P<b>[^\W\d_]+)(?P=b)?", re.I | re.S), ("é", re.A)]


def test_what_is_kept_is_the_program_that_the_library_compiles(beside: Path) -> None:
    """One that is taken up wrongly would read a line wrongly. The library compares two patterns by their programs."""
    first, at_once = Compiled("some"), [re.compile(*each) for each in house_expressions()]
    assert [first.compiled(*each) for each in house_expressions()] == at_once
    first.keep(least=1)
    assert all(kept("some", *each) for each in house_expressions())
    second = Compiled("some")
    taken_up = [second.compiled(*each) for each in house_expressions()]
    assert taken_up == at_once
    assert [each.groupindex for each in taken_up] == [each.groupindex for each in at_once]
    text = "K2, p3, yo, k12"
    shown = [[_shown(found) for found in each.finditer(text)] for each in taken_up]
    assert shown == [[_shown(found) for found in each.finditer(text)] for each in at_once]
    second.keep(least=0)
    assert all(kept("some", *each) for each in house_expressions())


def test_what_others_kept_stays_and_a_few_are_not_worth_writing(beside: Path) -> None:
    """Two that run beside each other add to what is kept; all of it is written, which takes a moment."""
    one, other = Compiled("some"), Compiled("some")
    one.compiled("a")
    other.compiled("b")
    one.keep()
    assert kept("some", "a", 0) is None
    one.keep(least=1)
    other.keep(least=1)
    assert kept("some", "a", 0)
    assert kept("some", "b", 0)


@pytest.mark.parametrize("spoilt", [(0, b"\xff" * 12, 0, {}, (None,)), (0, b"\xff", 0, {}, (None,)), (0,), None])
def test_a_program_that_is_none_is_compiled_again(beside: Path, spoilt: object) -> None:
    """Another form of what is kept, or a program that is not sound."""
    table = KeptTable("some", most=10, least_new=1)
    table.add(("k+", 0), spoilt)
    table.keep()
    assert Compiled("some").compiled("k+") == re.compile("k+")


def test_a_wrong_expression_is_told_as_the_library_tells_it(beside: Path) -> None:
    """Whoever writes a row sees where it is wrong."""
    with pytest.raises(re.error, match="position 0"):
        Compiled("some").compiled("(")


@needs_clock
def test_no_expression_of_the_house_hangs_on_words_said_again_and_again() -> None:
    """A line of a page may be anything, also a word that somebody typed thirty times."""
    late = type(regex(""))
    modules = [each.name for each in pkgutil.walk_packages(stepper.__path__, "stepper.") if not each.name.endswith("__main__")]
    kept = [(name, key, value) for name in modules for key, value in vars(importlib.import_module(name)).items()]
    # Kinds of phrases stand in tables, each beside its name.
    each_kept = [(name, key, one) for name, key, value in kept for one in _inside(value)]
    asked = [(name, key, one) for name, key, one in each_kept if isinstance(one, late) and may_hang(one.pattern)]
    assert len(asked) > 200
    hung = [
        (name, key, line)
        for name, key, one in asked
        for line in (*words_again(one.pattern), *NUMBERS_AGAIN)
        if hung_on([one.search, one.fullmatch], line)
    ]
    assert hung == []


def _inside(value: object) -> list[object]:
    """Return a value, or what a table of pairs holds."""
    rows = value if isinstance(value, tuple) else (value,)
    return [one for row in rows for one in (row if isinstance(row, tuple) else (row,))]
