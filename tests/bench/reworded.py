"""How many lines that are read are read with the same meaning in other words.

    python -m tests.bench.reworded one [SEED]              # each entry of the corpus with one family of words changed
    python -m tests.bench.reworded corpus [SEED] [SHARE]   # each entry as a whole, about half of the families changed
    python -m tests.bench.reworded pages SEED PAGE...      # whole pages, from top to bottom in one manner
    -v lists what is not read, and how it was printed; what is read to another meaning is always listed

The families of words are those of `tests/project/rewording/word_dresses`, seeded; entries and pages that are read count alone.
"""

from __future__ import annotations

import random
import re
import sys
from collections import Counter
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

from tests.project.corpus_entries import Entry, entries
from tests.project.corpus_judge import Verdict, judge, verdict
from tests.project.rewording.page_dresses import compare
from tests.project.rewording.word_dresses import FAMILIES, Family, dress, has, others, put

WRONG = ("misread", "untold", "crashed")


def main() -> None:
    """Measure."""
    words = [word for word in sys.argv[1:] if not word.startswith("-")]
    what, seed = words[0] if words else "one", words[1] if len(words) > 1 else "1"
    if what == "pages":
        pages(seed, [Path(word) for word in words[2:]])
    else:
        share = float(words[2]) if len(words) > 2 else 0.5
        corpus(one_changed(seed) if what == "one" else all_changed(seed, share))


def one_changed(seed: str) -> Iterator[tuple[str, Entry, Entry]]:
    """Yield each entry in one other wording of each family that it holds."""
    for entry in _read():
        for family in FAMILIES:
            found = _with_one(entry, family, random.Random(f"{seed} {entry.name} {family.name}"))
            if found is not None:
                yield found[0], entry, found[1]


def _read() -> list[Entry]:
    return [entry for name, entry in entries().items() if verdict(name).outcome == "read"]


def sample(seed: str, number: int) -> list[tuple[str, Entry, Entry]]:
    """Return some entries, each in one other wording, drawn by chance."""
    drawn = random.Random(seed)
    found = []
    for name in drawn.sample(sorted(entries()), number):
        families = [family for family in FAMILIES if any(has(family, line) for line in entries()[name].printed)]
        changed = _with_one(entries()[name], drawn.choice(families), drawn) if families else None
        if changed is not None:
            found.append((changed[0], entries()[name], changed[1]))
    return found


def _with_one(entry: Entry, family: Family, drawn: random.Random) -> tuple[str, Entry] | None:
    if not any(has(family, line) for line in entry.printed) or _tells_the_country(entry, family):
        return None
    other = others(family, "\n".join(entry.printed))
    if not other:
        return None
    wording = drawn.choice(other)
    return f"{family.name} | {wording}", replace(entry, printed=[put(family, wording, line) for line in entry.printed])


def _tells_the_country(entry: Entry, family: Family) -> bool:
    """Return whether other words would make of a British page an American one, whose moss stitch is another."""
    lines = " ".join((*entry.before, *entry.printed, *entry.after))
    return family.name in ("bind off", "binding off") and "moss" in lines.lower()


def all_changed(seed: str, share: float) -> Iterator[tuple[str, Entry, Entry]]:
    """Yield each entry in a whole dress, if it changes."""
    for entry in _read():
        families = [family for family in FAMILIES if not _tells_the_country(entry, family)]
        printed = dress(entry.printed, f"{seed} {entry.name}", share=share, families=families)
        if printed != entry.printed:
            yield "all", entry, replace(entry, printed=printed)


def corpus(changed: Iterator[tuple[str, Entry, Entry]]) -> None:
    """Print what becomes of entries in other words, by what was changed."""
    counts: Counter[tuple[str, str]] = Counter()
    for why, was, now in changed:
        found = judge_words(was, now)
        counts[why, found.outcome] += 1
        counts["all", found.outcome] += why != "all"
        if found.outcome in WRONG or (found.outcome != "read" and "-v" in sys.argv):
            print(f"{found.outcome} {was.name} [{why}]")
            for line, printed in zip(now.printed, was.printed, strict=True):
                print(f"    > {line}" + (f"      was: {printed}" if line != printed else ""))
            print(f"    {found.why}")
    told(counts)


def judge_words(was: Entry, now: Entry) -> Verdict:
    """Judge an entry in other words; what it must tell in the words that were changed is not asked for."""
    return judge(replace(now, kept="", told=now.told if _says(was, now) else ""))


def _says(was: Entry, now: Entry) -> bool:
    """Return whether what must be told names none of the words that were changed."""
    quoted = re.search(was.told, " ".join(was.printed), re.I) if was.told else None
    return quoted is None or bool(re.search(was.told, " ".join(now.printed), re.I))


def told(counts: Counter[tuple[str, str]]) -> None:
    """Print the shares."""
    names = {why for why, _ in counts}
    of = {why: sum(number for (other, _), number in counts.items() if other == why) for why in names}
    for why in sorted(names, key=lambda each: (each == "all", counts[each, "refused"])):
        wrong = sum(counts[why, outcome] for outcome in WRONG)
        read = counts[why, "read"]
        print(f"{why:70} tried {of[why]:5} read {read:5} {read / of[why]:.3f} refused {counts[why, 'refused']:4} wrong {wrong}")


def pages(seed: str, paths: list[Path]) -> None:
    """Print how many rows of pages that are read stay read, and which are read to another meaning."""
    tried = read = other = 0
    for path in paths:
        found = compare(path.read_text(encoding="utf-8"), f"{seed} {path.name}")
        tried, read, other = tried + found.tried, read + found.tried - len(found.lost), other + len(found.other)
        print(f"{path}: {found.tried} changed, {len(found.lost)} not read, {len(found.other)} read to something else")
        for kind, pairs in (("lost", found.lost if "-v" in sys.argv else ()), ("other", found.other)):
            for was, now in pairs:
                print(f"  {kind}  {now}\n    was:  {was}")
    print(f"all: {tried} changed, {read} read {read / max(1, tried):.3f}, {other} to be looked at")


if __name__ == "__main__":
    main()
