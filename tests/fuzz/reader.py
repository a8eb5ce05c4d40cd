"""Fuzz the reader of project files: text in, a plan or problems out, never a traceback.

    nice -n 15 python -m tests.fuzz.reader --minutes 10            # guided by coverage, needs `pip install atheris`
    nice -n 15 python -m tests.fuzz.reader --minutes 10 --plain    # without: random changes to the samples

Each input goes through everything a file goes through: reading, compiling, printing its problems; and where it
gives a plan, through the invariants and the JSON document. One input in eight is taken for a pasted page instead.
Faults are counted by the line of code they come from, and the smallest input of each is kept in the folder given
with `--keep`. Prints the counts; ends with 1 where there was a fault.
"""

from __future__ import annotations

import argparse
import random
import sys
import tempfile
import time
import traceback
from collections import Counter
from pathlib import Path

ROOT = Path(__file__).parents[2]
SAMPLES = sorted((ROOT / "tests" / "fixtures").glob("*.yaml")) + sorted((ROOT / "tests/project/bad").glob("*.yaml"))
PAGES = sorted((ROOT / "tests/project/printed").glob("*.txt"))
SLOW_S = 5.0


class Bench:
    """Runs inputs and counts what became of them."""

    def __init__(self, keep: Path) -> None:
        from stepper.plan.compile import compile_plan
        from stepper.plan.export import plan_document
        from stepper.project.page.file_text import write_file
        from stepper.project.page.pasted import take_apart
        from stepper.project.problems import render_problems
        from stepper.project.reader import read_project
        from tests.invariants import broken_invariants

        self.compile_plan, self.broken, self.document = compile_plan, broken_invariants, plan_document
        self.read, self.render = read_project, render_problems
        self.take_apart, self.written = take_apart, write_file
        self.keep = keep
        self.counts: Counter[str] = Counter()
        self.faults: Counter[str] = Counter()
        self.smallest: dict[str, int] = {}
        self.slowest = 0.0

    def take(self, raw: bytes) -> None:
        """Run one input; keep it where it brings out a fault."""
        self.counts["inputs"] += 1
        begun = time.process_time()
        try:
            self.judge(raw)
        except (MemoryError, KeyboardInterrupt):
            raise
        except BaseException as error:
            last = traceback.extract_tb(error.__traceback__)[-1]
            self._fault(f"{type(error).__name__} in {Path(last.filename).name}:{last.lineno}: {error}"[:160], raw)
        took = time.process_time() - begun
        self.slowest = max(self.slowest, took)
        if took > SLOW_S:
            self._fault("slow", raw)

    def judge(self, raw: bytes) -> None:
        """Run one input; whatever is raised is a fault."""
        text = raw.decode("utf-8", errors="replace")
        if raw[:1] == b"\0" or text.startswith("PASTE\n"):
            self._paste(text)
        else:
            self._check(text)

    def _check(self, text: str) -> None:
        reading = self.read(text)
        if reading.project is None:
            assert reading.problems, "no project and no problem"
            self.counts["not read"] += 1
            self._told(reading.problems, text)
            return
        compiled = self.compile_plan(reading.project)
        if compiled.plan is None:
            assert compiled.problems, "no plan and no problem"
            self.counts["read, does not fit"] += 1
            self._told(compiled.problems, text)
            return
        self.counts["plans"] += 1
        broken = self.broken(compiled.plan)
        assert not broken, f"invariant: {broken[0]}"
        self.document(compiled.plan, spoken=lambda round_: round_.instruction)

    def _told(self, problems: tuple, text: str) -> None:
        shown = self.render(problems, text, "a.yaml")
        assert shown
        last = text.count("\n") + 2 + sum(text.count(sign) for sign in "\r\x0b\x0c\x1c\x1d\x1e\x85\u2028\u2029")
        for problem in problems:
            assert 1 <= problem.line <= last, f"line {problem.line} of {last}"
            assert problem.column >= 1, f"column {problem.column}"

    def _paste(self, text: str) -> None:
        pasted = self.take_apart(text)
        made = self.written(pasted)
        self.counts["pasted"] += 1
        reading = self.read(made.text)
        if not pasted.sizes:  # which sizes there are is left to the knitter, and nothing else is wrong
            assert [problem.message for problem in reading.problems] == ["the file has no `sizes`."]
            return
        assert reading.project is not None, f"pasted file not read: {reading.problems[0].message}"

    def _fault(self, name: str, raw: bytes) -> None:
        self.faults[name] += 1
        if len(raw) < self.smallest.get(name, 1 << 30):
            self.smallest[name] = len(raw)
            number = list(self.smallest).index(name)
            (self.keep / f"fault-{number}.yaml").write_bytes(raw)
            (self.keep / f"fault-{number}.txt").write_text(name + "\n\n" + traceback.format_exc(), encoding="utf-8")

    def report(self, seconds: float) -> int:
        """Print the counts."""
        each = ", ".join(f"{number} {name}" for name, number in self.counts.items())
        print(f"{seconds:.0f} s: {each}; slowest {self.slowest:.2f} s; {len(self.faults)} kinds of fault")
        for name, number in self.faults.most_common():
            print(f"  {number} × {name}")
        sys.stdout.flush()
        return 1 if self.faults else 0


class Changes:
    """Makes a new input of an old one, word by word, as slips of the hand would."""

    def __init__(self, seed: int) -> None:
        self.random = random.Random(seed)
        self.seeds = [path.read_text(encoding="utf-8") for path in SAMPLES]
        self.seeds += ["PASTE\n" + path.read_text(encoding="utf-8") for path in PAGES]
        self.small = [_shortened(text) for text in self.seeds]
        self.words = sorted({word for text in self.seeds for word in text.split()})
        self.lines = sorted({line for text in self.seeds for line in text.splitlines()})

    def fresh(self) -> bytes:
        """Make an input from a sample."""
        pasted = self.random.random() < 1 / 8
        chosen = self.small if self.random.random() < 0.8 else self.seeds
        text = self.random.choice([text for text in chosen if text.startswith("PASTE") == pasted])
        return self.change(text.encode())

    def change(self, raw: bytes) -> bytes:
        """Change an input in one to four places."""
        text = raw.decode("utf-8", errors="replace")
        for _ in range(self.random.choice([1, 1, 1, 2, 4])):
            text = self.random.choice(
                [self._word, self._number, self._line, self._letter, self._drop, self._double, self._sign]
            )(text)
        return text.encode("utf-8", errors="replace")[:20_000]

    def _word(self, text: str) -> str:
        words = text.split(" ")
        words[self.random.randrange(len(words))] = self.random.choice(self.words)
        return " ".join(words)

    def _number(self, text: str) -> str:
        places = [at for at, sign in enumerate(text) if sign.isdigit()]
        if not places:
            return text
        at = self.random.choice(places)
        return text[:at] + self.random.choice(["0", "1", "9", "99", "7", "-3", "1000000", "½", "3.5", ""]) + text[at + 1 :]

    def _line(self, text: str) -> str:
        lines = text.split("\n")
        new = self.random.choice(self.lines)
        at = self.random.randrange(len(lines))
        indent = len(lines[at]) - len(lines[at].lstrip())
        lines.insert(at, " " * indent + new.strip())
        return "\n".join(lines)

    def _letter(self, text: str) -> str:
        at = self.random.randrange(len(text) + 1)
        return text[:at] + self.random.choice("abkps*()[],.:;#-0129 \n\"'é\t\u00a0½") + text[at + self.random.randint(0, 1) :]

    def _drop(self, text: str) -> str:
        lines = text.split("\n")
        del lines[self.random.randrange(len(lines))]
        return "\n".join(lines)

    def _double(self, text: str) -> str:
        lines = text.split("\n")
        at = self.random.randrange(len(lines))
        lines.insert(self.random.randrange(len(lines) + 1), lines[at])
        return "\n".join(lines)

    def _sign(self, text: str) -> str:
        pairs = [("(", "["), (")", ""), (",", ";"), ("k", "p"), ("rnd", "row"), ("RS", "WS"), (".", ""), ("*", "**"), (":", "")]
        old, new = self.random.choice(pairs)
        places = [at for at in range(len(text)) if text.startswith(old, at)]
        if not places:
            return text
        at = self.random.choice(places)
        return text[:at] + new + text[at + len(old) :]


def _shortened(text: str) -> str:
    """Keep the outline of a sample and its first two sections."""
    parts = text.split("  - name: ")
    return "  - name: ".join(parts[:3])


def main() -> int:
    """Run for the time given."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--minutes", type=float, default=10)
    parser.add_argument("--plain", action="store_true", help="random changes, not guided by coverage")
    parser.add_argument("--keep", type=Path, default=Path(tempfile.gettempdir()) / "stepper-fuzz")
    parser.add_argument("--seed", type=int, default=1)
    args = parser.parse_args()
    args.keep.mkdir(parents=True, exist_ok=True)
    begun, seconds = time.monotonic(), args.minutes * 60
    if args.plain:
        bench, changes = Bench(args.keep), Changes(args.seed)
        told = begun
        while time.monotonic() - begun < seconds:
            bench.take(changes.fresh())
            if time.monotonic() - told > 60:
                told = time.monotonic()
                bench.report(told - begun)
        return bench.report(time.monotonic() - begun)
    return guided(args, begun, seconds)


def guided(args: argparse.Namespace, begun: float, seconds: float) -> int:
    """Let libFuzzer choose which inputs to change further, by the code they reach."""
    import atheris

    with atheris.instrument_imports(include=["stepper"]):
        bench = Bench(args.keep)
    changes = Changes(args.seed)
    told = begun

    def one(raw: bytes) -> None:
        nonlocal told
        bench.take(raw)
        now = time.monotonic()
        if now - told > 60:
            told = now
            bench.report(now - begun)
        if now - begun > seconds:
            code = bench.report(now - begun)
            import os

            os._exit(code)

    def mutate(raw: bytes, most: int, seed: int) -> bytes:
        changes.random.seed(seed)
        made = changes.fresh() if len(raw) < 40 or seed % 5 == 0 else changes.change(raw)
        return made if len(made) <= most else changes.fresh()[:most]

    corpus = args.keep / "corpus"
    corpus.mkdir(exist_ok=True)
    for number, text in enumerate([*changes.small, *changes.seeds]):
        (corpus / f"seed-{number}").write_text(text, encoding="utf-8")
    options = [sys.argv[0], str(corpus), "-max_len=20000", f"-seed={args.seed}", "-timeout=60", "-verbosity=0"]
    options.append(f"-artifact_prefix={args.keep}/")
    atheris.Setup(options, one, custom_mutator=mutate)
    atheris.Fuzz()
    return 0


if __name__ == "__main__":
    sys.exit(main())
