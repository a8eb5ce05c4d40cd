"""Legal project files changed by one key, one word or one number, for the tests of what that may lead to."""

from __future__ import annotations

import re
from dataclasses import dataclass
from pathlib import Path

from hypothesis import strategies as st

from tests.project.samples import legal_works, project
from tests.project.slips import slips_of

SAMPLES = [
    path.read_text(encoding="utf-8")
    for path in sorted((Path(__file__).parents[1] / "fixtures").glob("*.yaml"))
    if path.stem in ("hat", "mittens", "shawl")
]
_KEY = re.compile(r"(?:(?<=^)|(?<=[\s{,]))[a-z_]+(?=: )|(?<=\s)[a-z_]+(?=:$)", re.M)
_WORD = re.compile(r"(?<![\w#])[A-Za-z][A-Za-z']+")
_NUMBER = re.compile(r"(?<![\w#.])\d+(?![\w.])")


@dataclass(frozen=True, slots=True)
class Changed:
    """A file with one change."""

    text: str
    row: int
    """Row of the change, from 1."""
    kind: str
    """`key`, `word` or `number`."""
    said: str
    """What was put for what."""


def legal_files() -> st.SearchStrategy[str]:
    """Make legal files: samples and generated ones."""
    made = legal_works().map(lambda work: project(work, sizes="S (M, L)", size="M"))
    return st.one_of(st.sampled_from(SAMPLES), made, made)


@st.composite
def changed_files(draw: st.DrawFn) -> Changed:
    """Change one key, word or number of a legal file: misspelt, replaced, left out or doubled."""
    text = draw(legal_files())
    kind = draw(st.sampled_from(["key", "word", "number"]))
    pattern = {"key": _KEY, "word": _WORD, "number": _NUMBER}[kind]
    found = [match for match in pattern.finditer(text) if not _in_comment(text, match.start())]
    match = draw(st.sampled_from(found))
    old = match.group()
    if kind == "number":
        value = int(old)
        others = [value + 1, value + 2, value * 2, value * 10, 0, 1, 99, int(old[::-1])]
        others += [value - 1] if value else []
        new = str(draw(st.sampled_from(others)))
    else:
        other = draw(st.sampled_from(found)).group()
        new = draw(st.sampled_from([*list(slips_of(old))[:40:3], other, "", f"{old} {old}"]))
    row = text[: match.start()].count("\n") + 1
    return Changed(text[: match.start()] + new + text[match.end() :], row, kind, f"{old!r} -> {new!r}")


def _in_comment(text: str, at: int) -> bool:
    row = text[text.rfind("\n", 0, at) + 1 : at]
    return bool(re.search(r"(?:^|\s)#(?![0-9a-f]{6})", row))
