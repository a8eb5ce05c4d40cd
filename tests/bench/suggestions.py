"""How often the suggestion for a misspelt word is the legal word.

    python -m tests.bench.suggestions [SHARE]    # SHARE of all slips that is tried, 0.05 where not given

Takes the examples of the wording and every line of the samples, makes every slip of one letter in every word (one
too few, too many or wrong, two exchanged), and reads the line. Prints how many lines are still legal, and of the
others how often the legal word is the only one suggested, among those suggested, or missing; then the misses.
"""

from __future__ import annotations

import random
import re
import sys
import time
from collections import Counter

from stepper.project.problems import Span
from stepper.project.reading.wording import Words, read_line
from tests.project.slips import legal_lines, slips_of, words_of

def main() -> None:
    """Measure."""
    share = float(sys.argv[1]) if len(sys.argv) > 1 else 0.05
    chance = random.Random(11)
    counts: Counter[str] = Counter()
    missed = []
    begun = time.perf_counter()
    for text, (sizes, names) in legal_lines().items():
        words = Words(sizes=sizes, names=set(names))
        for at, word in words_of(text):
            for slip in slips_of(word):
                if chance.random() > share:
                    continue
                wrong = text[:at] + slip + text[at + len(word) :]
                reading = read_line(wrong, lambda o, n: Span(line=1, column=o + 1, length=n), words)
                if reading.line is not None:
                    counts["still legal"] += 1
                    continue
                hint = reading.problems[0].hint.lower()
                offered = re.findall(r'"([^"]*)"', hint) if hint.startswith("did you mean") else []
                offered = [re.sub(r"(?<=sl)\d+$", "", each) for each in offered]  # sl1 is sl with its number
                kind = "only" if offered == [word.lower()] else "among" if word.lower() in offered else "missing"
                counts[kind] += 1
                if kind == "missing":
                    missed.append((word, slip, wrong[max(0, at - 20) : at + 25], hint[:60]))
    took = time.perf_counter() - begun
    told = counts["only"] + counts["among"] + counts["missing"]
    print(f"{sum(counts.values())} slips, {counts['still legal']} still legal; {told} errors: {dict(counts)}")
    print(f"suggested: {100 * (told - counts['missing']) / max(1, told):.2f} %; {1000 * took / sum(counts.values()):.1f} ms a line")
    for miss in missed[:60]:
        print(miss)


if __name__ == "__main__":
    main()
