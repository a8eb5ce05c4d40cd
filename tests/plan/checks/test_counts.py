"""A printed count is the one thing on the page that knows better: wherever it stands, it is checked in every size."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from itertools import product
from pathlib import Path
from typing import TypeVar

import pytest

from stepper.plan.compile import compile_plan, findings_of
from stepper.project.instructions import PrintedCount
from stepper.project.model import Project
from stepper.project.reader import read_project
from stepper.project.stitchwork import Numbers
from tests.plan.test_compile import compiled, faults, plan_of
from tests.project.samples import HEAD, project
from tests.project.wording_patterns import Pattern, as_file, patterns
from tests.tables import each_row

T = TypeVar("T")

SAMPLES = sorted((Path(__file__).parents[2] / "fixtures").glob("*.yaml"))


def read(text: str) -> Project:
    """Read a sound file."""
    reading = read_project(text)
    assert reading.problems == ()
    assert reading.project is not None
    return reading.project


def with_changed_counts(sound: Project) -> Iterator[tuple[str, int, Project]]:
    """Change every printed count by one, up and down, in one size after the other.

    Yields:
        The line, the place of the size, and the project.
    """
    for at, section in enumerate(sound.sections):
        for line_at, line in enumerate(section.lines):
            for place, sentence in enumerate(line.sentences):
                if not isinstance(sentence, PrintedCount):
                    continue
                values = sentence.number.values
                for size, by in product(range(len(sound.sizes)), (1, -1)):
                    number = list(values) if len(values) > 1 else list(values) * len(sound.sizes)
                    number[size] += by
                    wrong = replace(sentence, number=Numbers(tuple(number), sentence.number.place))
                    made = replace(line, sentences=put(line.sentences, place, wrong))
                    lines = replace(section, lines=put(section.lines, line_at, made))
                    yield line.text, size, replace(sound, sections=put(sound.sections, at, lines))


def put(items: tuple[T, ...], at: int, item: T) -> tuple[T, ...]:
    """Put an item in the place of another."""
    return (*items[:at], item, *items[at + 1 :])


def unchecked(text: str) -> list[str]:
    """List the lines of a sound file whose count can be wrong by one in some size with nobody saying so."""
    sound = read(text)
    assert not any(findings_of(sound, size) for size in range(len(sound.sizes)))
    return [
        line
        for line, size, wrong in with_changed_counts(sound)
        if not findings_of(wrong, size) and not taken(line, replace(wrong, size=size))
    ]


def taken(line: str, wrong: Project) -> bool:
    """Say whether a count was taken for the arithmetic with a note beside it, as where stitches are picked up."""
    plan = compile_plan(wrong).plan
    return plan is not None and any("taken as" in each.text for each in plan.warnings) and "pick up" in line


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_every_count_of_the_samples_is_checked(path: Path) -> None:
    """In each printed size, knitted or not."""
    assert unchecked(path.read_text(encoding="utf-8")) == []


@pytest.mark.parametrize("pattern", patterns(), ids=lambda pattern: f"line {pattern.line}")
def test_every_count_of_the_reference_is_checked(pattern: Pattern) -> None:
    """What the page shows as a count is one."""
    assert unchecked(as_file(pattern)) == []


ROUND = "Cast on 40 (44, 48) sts.\nJoin in the round.\n"
ROWS = "Cast on 40 (44, 48) sts. Work flat.\n"


@each_row(
    "count",
    [
        ". 39 (43, 47) sts.",
        " (39 (43, 47) sts).",
        ". (39 (43, 47) sts)",
        ". [39 (43, 47) sts]",
        ". 39 [43, 47] stitches.",
        " - 39 (43, 47) sts.",
        " = 39 (43, 47) sts.",
        ". 39 (43, 47) sts rem.",
        ". 39 (43, 47) sts on needles.",
        ". 39 (43, 47) sts. Knit 2 rounds.",
        ". 1 st dec'd.",
        ". 1 st dec'd. 39 (43, 47) sts.",
        ". 39 (43, 47) sts. 1 st dec'd.",
    ],
)
@each_row(
    "line",
    ["K1, k2tog, k to end", "Next rnd: K1, k2tog, k to end", "Rnd 1: K1, k2tog, k to end", "With A, k1, k2tog, k to end"],
)
def test_a_count_is_checked_however_it_is_printed(line: str, count: str) -> None:
    """In brackets, behind a dash, before another sentence; stitches or a change."""
    assert unchecked(project(f"{ROUND}{line}{count}")) == []


@each_row(
    "work",
    [
        f"{ROUND}Dec rnd: K1, k2tog, k to end. 39 (43, 47) sts.\nKnit 3 rounds.\nRep dec rnd 2 times. 37 (41, 45) sts.",
        f"{ROUND}Dec rnd: K1, k2tog, k to end. 39 (43, 47) sts.\nWork dec rnd every 4th rnd 3 times. 37 (41, 45) sts.",
        f"{ROUND}Dec rnd: K1, k2tog, k to end. 1 st dec'd.\nWork dec rnd every 4th rnd 3 times. 37 (41, 45) sts.",
        f"{ROUND}Rnd 1: K1, k2tog, k to end.\nRnd 2: Knit. 39 (43, 47) sts.\nRep rnds 1-2 3 times. 36 (40, 44) sts.",
        f"{ROUND}Rnd 1: K1, k2tog, k to end.\nRnd 2: Knit.\nRep rnds 1-2 until 36 (40, 44) sts rem. 36 (40, 44) sts.",
        f"{ROUND}Rnd 1: K1, k2tog, k to end.\nRnds 2-6: Knit. 39 (43, 47) sts.",
        f"{ROUND}Rnds 1-3: K1, k2tog, k to end. 37 (41, 45) sts.",
        f"{ROUND}Rnds 1-3: K1, k2tog, k to end. 1 st dec'd.",
        f"{ROUND}Rnds 1 and 3: K1, k2tog, k to end. 38 (42, 46) sts.\nRnd 2: Knit. 39 (43, 47) sts.",
        f"{ROUND}Rnd 1: Increase evenly to 44 (48, 52) sts. 44 (48, 52) sts.",
        f"{ROWS}Row 1 (RS): K1, k2tog, k to end. 39 (43, 47) sts.\nRow 2 and all WS rows: Purl.\n"
        "Row 3: K1, k2tog, k to end. 38 (42, 46) sts.",
        f"{ROUND}Inc 1 st at each end of every 4th rnd 2 times. 44 (48, 52) sts.",
        f"{ROWS}Bind off 4 sts at the beginning of the next 2 rows. 32 (36, 40) sts.",
        f"{ROUND}Increase evenly to 48 (52, 56) sts. 8 sts inc'd.",
        f"{ROUND}Knit 2 rounds. 40 (44, 48) sts. Purl 2 rounds. 40 (44, 48) sts.",
        f"{ROUND}Chart peak, 2 times. 40 (44, 48) sts.",
        f"{ROUND}Rnds 1-2: Chart peak. 40 (44, 48) sts.",
        f"{ROUND}*K2, p2; rep from * to end. Work 3 rounds. 40 (44, 48) sts.",
        f"{ROUND}K10, hold 20 for strap, k to end. 20 (24, 28) sts.\nHold all sts for cap.\nReturn strap to needles. 20 sts.",
        f"{ROUND}Place marker every 10 sts.\n*Ssk, k to marker, sm; rep from * to end. 36 (39, 43) sts.",
        f"{ROUND}K1, k2tog, k to end.\nWork even for 3 cm. 39 (43, 47) sts.",
        "Cast on 40 (44, 48) sts. 40 (44, 48) sts.\nKnit 1 row.",
        f"{ROUND}Bind off. 0 sts.",
    ],
)  # fmt: skip
def test_a_count_is_checked_wherever_it_stands(work: str) -> None:
    """Behind a repeat, a range of rows, a named round, a chart, in the middle of a line and at its end."""
    assert unchecked(project(work)) == []


def test_a_count_behind_a_switch_of_size_is_checked() -> None:
    """The sizes that are switched from and to are worked in full as well, each with its own counts."""
    head = HEAD.replace("knit: {{size: {size}}}", "knit: {{size: {size}, then: [{{from: Increase, size: S}}]}}")
    work = f"{ROUND}Knit 2 rounds.\nIncrease: increase evenly to 50 (54, 58) sts. 50 (54, 58) sts.\nKnit 1 round."
    assert unchecked(project(work, head=head)) == []


def test_a_change_below_numbered_rows_is_that_of_all_of_them() -> None:
    """"4 sts inc'd." in a row of its own below four rows speaks of the four; two is what none of them gained."""
    rows = "Cast on 10 sts. Work flat.\nRow 1: K1, yo, k to last st, yo, k1.\nRow 2: Knit.\nRow 3: K1, yo, k to last st, yo, k1.\nRow 4: Knit.\n"
    assert [one.after for one in plan_of(project(rows + "4 sts inc'd.\nBind off.", sizes="S", size="S")).rounds[1:]] == [12, 12, 14, 14, 0]
    for wrong in ("2 sts inc'd.", "Knit 1 row.\n4 sts inc'd."):
        assert compiled(project(f"{rows}{wrong}\nBind off.", sizes="S", size="S")).plan is None


@pytest.mark.parametrize(
    ("count", "told"),
    [
        ("After Rnd 1: 50 sts.", ""),
        ("After round 1 there are 50 sts, after round 3 60 sts.", ""),
        ("After the 3rd rnd you will have 60 sts.", ""),
        ("After Rnd 3: 62 sts.", "the pattern prints 62 stitches after round 3; it leaves 60"),
        ("After Rnd 9: 60 sts.", "a count is printed after round 9, and no round 9 is worked above"),
    ],
)
def test_a_count_of_a_round_worked_before_is_checked_by_its_number(count: str, told: str) -> None:
    """It stands behind all the rounds of a chart, and each of its numbers is of another."""
    rounds = "Rnd 1: *K4, m1; rep from * to end.\nRnd 2: Knit.\nRnd 3: *K5, m1; rep from * to end.\n"
    found = compiled(project(f"CO 40 sts. Join in the round.\n{rounds}{count}\nKnit 1 round.")).problems
    assert [each.message.partition(": ")[2][: len(told)] for each in found] == ([told] if told else [])


BAND = "Cast on 20 sts. Work flat.\nKnit 2 rows.\n"


@pytest.mark.parametrize(
    "holes",
    [
        "Row 1: K4, cast off 2, knit to end (14 sts).\nRow 2: K14, cast on 2 sts, knit to end (4 sts).",
        "Next row: K4, cast off 2, k to end of row (= 14 sts).\nNext row: K14, cast on 2 sts, k4. 20 sts.",
    ],
)
def test_a_number_behind_the_last_stretch_of_a_row_of_buttonholes_is_of_that_stretch(holes: str) -> None:
    """As the numbers between the holes are told, so is the last. Source: common practice."""
    plan = plan_of(project(f"{BAND}{holes}\nBind off."))
    assert [each.after for each in plan.rounds[3:]] == [18, 20, 0]


@pytest.mark.parametrize(
    ("row", "printed"),
    [
        ("K4, cast off 2, knit to end (13 sts).", 13),
        ("K4, cast off 2, knit to end. (14 sts)", 14),
        ("K4, k2tog, knit to end (14 sts).", 14),
    ],
)
def test_any_other_number_is_of_the_row(row: str, printed: int) -> None:
    """One that differs from the stretch too, stands behind the row, or where no hole is, is checked as ever."""
    assert f"prints {printed} stitches" in faults(project(f"{BAND}Row 1: {row}\nKnit 1 row.\nBind off."))
