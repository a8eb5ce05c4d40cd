"""Print how large each room of the house is, and whether its modules import each other in a circle.

    python -m tests.bench.rooms [--of FOLDER]

FOLDER is the root of another tree, for a comparison; this one where none is named. Counted are modules other than
`__init__`, all lines, and the most modules that lie side by side in one folder of the room. Further down: functions
that are named by a bare participle, and docstrings that begin with "Give" or say "nothing where".
"""

from __future__ import annotations

import argparse
import ast
import re
from collections import Counter
from pathlib import Path

from tests.test_house import find_circle, imports, participles

ROOT = Path(__file__).parents[2]


def docstrings(source: str) -> list[str]:
    """List the docstrings of a module, its own among them."""
    nodes = ast.walk(ast.parse(source))
    kinds = (ast.Module, ast.ClassDef, ast.FunctionDef, ast.AsyncFunctionDef)
    return [ast.get_docstring(node) or "" for node in nodes if isinstance(node, kinds)]


def main() -> None:
    """Print a row for each room, and the sums."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--of", type=Path, default=ROOT, metavar="FOLDER")
    package = parser.parse_args().of / "stepper"
    paths = [path for path in sorted(package.rglob("*.py")) if path.name != "__init__.py"]
    sources = {path: path.read_text(encoding="utf-8") for path in paths}
    files, lines, most = Counter[str](), Counter[str](), Counter[str]()
    beside = Counter(path.parent for path in paths)
    for path, source in sources.items():
        inner = path.relative_to(package).parts
        room = inner[0] if len(inner) > 1 else "(the house)"
        files[room] += 1
        lines[room] += source.count("\n")
        most[room] = max(most[room], beside[path.parent])
    for room in sorted(files):
        print(f"{room:20} {files[room]:4} files, at most {most[room]:3} in a folder, {lines[room]:6} lines")
    print(f"{'in all':20} {len(paths):4} files, at most {max(beside.values()):3} in a folder, {sum(lines.values()):6} lines")
    dotted = {".".join(path.relative_to(package.parent).with_suffix("").parts): source for path, source in sources.items()}
    circle = find_circle({name: imports(ast.parse(source)) for name, source in dotted.items()})
    print(f"circles: {' - '.join(circle) or 'none'}")
    print(f"functions named by a bare participle: {sum(len(participles(ast.parse(source))) for source in sources.values())}")
    said = [text for source in sources.values() for text in docstrings(source)]
    print(f'docstrings that begin with "Give": {sum(text.startswith("Give ") for text in said)}')
    print(f'"nothing where" in docstrings: {sum(bool(re.search(r"nothing where", text)) for text in said)}')


if __name__ == "__main__":
    main()
