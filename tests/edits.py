"""Edit project files between two sittings, and judge where the place went by a rule of its own.

The editor knows what it did to each line of the file, which the program does not: every round of the new plan
comes from a line that was there before, or is new. By that the judge says what would be wrong in silence:
going on although the needles hold another count, leaving out rounds that were still to come, or knitting
rounds again that are done. It knows nothing of how the program compares two plans.
"""

from __future__ import annotations

import random
import re
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from stepper.plan.compile import work_as_knitted
from stepper.plan.finish import finish
from stepper.plan.model import Plan, Round
from stepper.project.reader import read_project

ROOT = Path(__file__).resolve().parents[1]
_PRINTED = re.compile(r"(?<=[.\]]) \d+( \([\d, ]+\))? sts\.$", re.M)
_AS_PRINTED = ("cardigan",)
SAMPLES = {
    path.stem: text if path.stem in _AS_PRINTED else _PRINTED.sub("", text)
    for path in sorted((ROOT / "tests" / "fixtures").glob("*.yaml"))
    for text in [path.read_text(encoding="utf-8")]
}
"""The samples without the counts printed behind their lines, which an edit would contradict; the cardigan's are
what its ribs are fitted to."""
MOST_TRIES = 40
"""Edits tried until one gives a file that holds together."""

Lines = list[tuple[int, str]]
"""A file line by line, each with the number it had before; 0 for a new one."""


@dataclass(frozen=True, slots=True)
class Edited:
    """A file that was edited and still holds together."""

    kind: str
    plan: Plan
    origin: dict[int, int]
    """For each line of the new file the line of the old one that it was, where it was one."""


def plan_of(text: str) -> Plan | None:
    """Compile a text as it is knitted; None where it does not hold together. The other sizes are not looked
    at, which would take most of the time."""
    project = read_project(text).project
    if project is None:
        return None
    worked = work_as_knitted(project, frozenset())
    if worked.findings or not worked.drafts:
        return None
    return finish(worked, project, ())


def edited(text: str, chance: random.Random) -> Edited:
    """Edit a file at random until what comes of it can be knitted."""
    for _ in range(MOST_TRIES):
        kind = chance.choice(list(EDITS))
        lines = EDITS[kind](list(enumerate(text.splitlines(), start=1)), chance)
        plan = plan_of("\n".join(line for _, line in lines) + "\n")
        if plan is not None and plan.rounds:
            return Edited(kind, plan, {at: was for at, (was, _) in enumerate(lines, start=1) if was})
    raise AssertionError("no edit leaves a file that holds together")


def wrong_in_silence(old: Plan, new: Edited, index: int, place: int) -> str:
    """Say what would be wrong with going on at a place without a question; empty where nothing would be.

    Args:
        old: The plan knitted so far.
        new: The edited file.
        index: Rounds knitted.
        place: The round of the new plan to go on with.
    """
    before, after = old.rounds[index - 1] if index else None, new.plan.rounds[:place]
    have = before.after if before is not None else 0
    want = after[-1].after if after else 0
    held = (before.held if before is not None else {}, after[-1].held if after else {})
    if have != want or sorted(held[0].values()) != sorted(held[1].values()):
        return f"{have} on the needles, {want} wanted"
    fabric = [_fabric(each) for each in old.rounds]
    if [_fabric(each) for each in after] == fabric[:index]:
        return ""  # the new plan begins with the very rounds that are knitted
    done = {_identity(each, number): _fabric(each) for each, number in _numbered(old)[:index]}
    ahead = {_identity(each, number): _fabric(each) for each, number in _numbered(old)[index:]}
    for each, number in _numbered(new.plan):
        line = new.origin.get(each.line)
        if line is None:
            continue
        name = (line, number)
        if each.index < place and ahead.get(name) == _fabric(each) and name not in done:
            return f"round {each.index} was still to come and is left out: {each.instruction}"
        if each.index >= place and done.get(name) == _fabric(each):
            return f"round {each.index} is knitted and comes again: {each.instruction}"
    return ""


def _fabric(round_: Round) -> tuple[object, ...]:
    """Return what one sees of a round: the stitches before, after, and in between one by one."""
    stitches = [
        (run.stitch, run.yarn)
        for run in round_.runs
        if run.stitch not in ("pm", "sm", "rm")
        for _ in range(run.times)
    ]
    return round_.before, round_.after, round_.flat, round_.side, tuple(stitches)


def _identity(round_: Round, number: int) -> tuple[int, int]:
    return round_.line, number


def _numbered(plan: Plan) -> list[tuple[Round, int]]:
    """Return each round with which of its line it is."""
    seen: dict[int, int] = {}
    numbered = []
    for round_ in plan.rounds:
        seen[round_.line] = seen.get(round_.line, 0) + 1
        numbered.append((round_, seen[round_.line]))
    return numbered


# Edits


def _work_lines(lines: Lines) -> list[int]:
    """Return where the lines of instructions stand."""
    found, inside = [], False
    for at, (_, line) in enumerate(lines):
        if re.match(r"\s+work: \|", line):
            inside = True
        elif inside and re.match(r"\s+- name:|\S", line):
            inside = False
        elif inside and line.strip() and not line.strip().startswith("#"):
            found.append(at)
    return found


def _sections(lines: Lines) -> list[tuple[int, int]]:
    """Return from where to where each section goes."""
    starts = [at for at, (_, line) in enumerate(lines) if re.match(r"\s+- name:", line)]
    return list(zip(starts, [*starts[1:], len(lines)], strict=True))


def _indent(line: str) -> str:
    return line[: len(line) - len(line.lstrip())]


def _rename(lines: Lines, chance: random.Random) -> Lines:
    at = chance.choice([start for start, _ in _sections(lines)])
    was, line = lines[at]
    name = line.split("name:")[1].split("#")[0].strip()
    lines[at] = (
        was,
        line.replace(name, chance.choice(("main part", "piece one", name.upper(), f"{name} 2")), 1),
    )
    return lines


def _delete_line(lines: Lines, chance: random.Random) -> Lines:
    del lines[chance.choice(_work_lines(lines))]
    return lines


def _insert_line(lines: Lines, chance: random.Random) -> Lines:
    at = chance.choice(_work_lines(lines))
    text = chance.choice(
        ("Knit 1 round.", "Knit 2 rounds.", "Knit 4 rounds.", "Purl 1 round.", "Purl 2 rounds.")
    )
    lines.insert(at, (0, _indent(lines[at][1]) + text))
    return lines


def _double_line(lines: Lines, chance: random.Random) -> Lines:
    at = chance.choice(_work_lines(lines))
    lines.insert(at, (0, lines[at][1]))
    return lines


def _move_line(lines: Lines, chance: random.Random) -> Lines:
    places = _work_lines(lines)
    moved = lines.pop(chance.choice(places))
    lines.insert(chance.choice(places[:-1]), moved)
    return lines


def _change_number(lines: Lines, chance: random.Random) -> Lines:
    at = chance.choice(_work_lines(lines))
    was, line = lines[at]
    numbers = list(re.finditer(r"(?<![\w.])\d+(?![\w.])", line))
    if numbers:
        match = chance.choice(numbers)
        value = max(1, int(match.group()) + chance.choice((-8, -4, -2, -1, 1, 2, 4, 8)))
        lines[at] = (was, line[: match.start()] + str(value) + line[match.end() :])
    return lines


def _switch_elsewhere(lines: Lines, chance: random.Random) -> Lines:
    """Begin a blend at another line, or take it out."""
    found = [at for at, (_, line) in enumerate(lines) if re.search(r"- *\{from: ", line)]
    labels = [line.strip().split(":")[0] for _, line in lines if re.match(r"\s+[A-Z][a-z]+ increase:", line)]
    if not found or not labels:
        return lines
    at = chance.choice(found)
    was, line = lines[at]
    if chance.random() < 0.3 and len(found) > 1:
        del lines[at]
    else:
        lines[at] = (was, re.sub(r"from: [^,}]+", f"from: {chance.choice(labels)}", line))
    return lines


def _switch_size(lines: Lines, chance: random.Random) -> Lines:
    found = [at for at, (_, line) in enumerate(lines) if re.search(r"\bsize: ", line)]
    sizes = next(
        (re.findall(r"[\w-]+", line.split(":", 1)[1]) for _, line in lines if line.startswith("sizes:"))
    )
    if found:
        at = chance.choice(found)
        was, line = lines[at]
        lines[at] = (was, re.sub(r"(\bsize: )[\w-]+", rf"\g<1>{chance.choice(sizes)}", line))
    return lines


def _move_section(lines: Lines, chance: random.Random) -> Lines:
    spans = _sections(lines)
    at = chance.randrange(len(spans))
    start, end = spans[at]
    moved = lines[start:end]
    rest = lines[:start] + lines[end:]
    spots = [begin for begin, _ in _sections(rest)] + [len(rest)]
    spot = chance.choice(spots)
    return rest[:spot] + moved + rest[spot:]


def _delete_section(lines: Lines, chance: random.Random) -> Lines:
    start, end = chance.choice(_sections(lines))
    return lines[:start] + lines[end:]


def _insert_section(lines: Lines, chance: random.Random) -> Lines:
    start, end = chance.choice(_sections(lines))
    copy = [(0, line) for _, line in lines[start:end]]
    copy[0] = (0, re.sub(r"(name: ).*", r"\1another piece", copy[0][1]))
    spot = chance.choice([start, end])
    return lines[:spot] + copy + lines[spot:]


def _whitespace(lines: Lines, chance: random.Random) -> Lines:
    at = chance.choice(_work_lines(lines))
    was, line = lines[at]
    words = line.strip().split(" ")
    lines[at] = (was, _indent(line) + "  ".join(words))
    lines.insert(at, (0, ""))
    return lines


def _remark(lines: Lines, chance: random.Random) -> Lines:
    at = chance.choice(_work_lines(lines))
    lines.insert(at, (0, _indent(lines[at][1]) + "Note: try it on."))
    return lines


EDITS: dict[str, Callable[[Lines, random.Random], Lines]] = {
    "rename a section": _rename,
    "delete a line": _delete_line,
    "insert a line": _insert_line,
    "double a line": _double_line,
    "move a line": _move_line,
    "change a number": _change_number,
    "switch a size": _switch_size,
    "switch elsewhere": _switch_elsewhere,
    "move a section": _move_section,
    "delete a section": _delete_section,
    "insert a section": _insert_section,
    "change white space": _whitespace,
    "add a remark": _remark,
}
"""What is done to a file, by what to call it."""
