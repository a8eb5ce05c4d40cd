"""The map of the house: one line for each module, taken from the first sentence of its docstring.

`python -m tests.house_map` writes it anew between the two marks in DEVELOPERS.md; a test asks that it be true.
"""

from __future__ import annotations

import ast
import inspect
import tokenize
from pathlib import Path

ROOT = Path(__file__).parent.parent
PAGE = ROOT / "DEVELOPERS.md"
BEGIN, END = "<!-- map: begin -->", "<!-- map: end -->"
_BEFORE = (tokenize.COMMENT, tokenize.NL)
"""What may stand above a module's docstring."""


def first_sentence(path: Path) -> str:
    """Return the first sentence of a module's docstring, without the words that repeat in every core module."""
    with path.open(encoding="utf-8") as file:
        first = next(each for each in tokenize.generate_tokens(file.readline) if each.type not in _BEFORE)
    doc = inspect.cleandoc(ast.literal_eval(first.string)) if first.type == tokenize.STRING else ""
    paragraph = " ".join(doc.split("\n\n")[0].split())
    sentence, full_stop, _ = paragraph.partition(". ")
    return sentence + "." if full_stop else paragraph


def lines() -> list[str]:
    """Return the lines of the map: a heading for each room, a row for each module."""
    package = ROOT / "stepper"
    rooms: dict[str, list[Path]] = {}
    for path in sorted(package.rglob("*.py")):
        if path.name != "__init__.py":
            rooms.setdefault(path.parent.relative_to(package).as_posix(), []).append(path)
    made = []
    for room, paths in sorted(rooms.items()):
        name = "stepper" if room == "." else room
        made.append(f"\n**{name}/** ({len(paths)})\n")
        made += [f"- `{path.stem}`: {first_sentence(path)}" for path in paths]
    return made


def page_with_map(page: str) -> str:
    """Return the page with the map as it is now."""
    before, _, rest = page.partition(BEGIN)
    _, _, after = rest.partition(END)
    return f"{before}{BEGIN}\n" + "\n".join(lines()) + f"\n\n{END}{after}"


if __name__ == "__main__":
    PAGE.write_text(page_with_map(PAGE.read_text(encoding="utf-8")), encoding="utf-8")
