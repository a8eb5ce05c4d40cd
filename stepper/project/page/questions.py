"""Ask, one question at a time, what a first project file needs. No I/O."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from stepper.craft.figures import format_number
from stepper.project.lengths import read_needle, read_number
from stepper.project.page.quoting import list_values, size_line, value
from stepper.project.sizes import find_size, read_sizes
from stepper.records import dataclass

Answers = Mapping[str, str]
"""The answers so far, by the name of the question."""


@dataclass(frozen=True, slots=True, kw_only=True)
class StartQuestion:
    """One question."""

    name: str
    text: str
    default: str
    """What an empty answer means."""
    trouble: Callable[[str, Answers], str]
    """Returns what is wrong with an answer, as a sentence; empty if it will do."""
    only: Callable[[Answers], bool] = lambda _: True
    """Returns whether it is asked at all, given the answers so far."""


def _any(_answer: str, _answers: Answers) -> str:
    return ""


def _unit(answer: str, _answers: Answers) -> str:
    return "" if answer.lower() in ("cm", "in") else "Answer cm or in."


def _sizes(answer: str, _answers: Answers) -> str:
    names = read_sizes(answer)
    different = len({name.lower() for name in names}) == len(names)
    return "" if names and different else "Write the sizes as printed, each once: S (M, L)."


def _size(answer: str, answers: Answers) -> str:
    names = read_sizes(answers["sizes"])
    return "" if find_size(answer, names) is not None else f"The sizes are {', '.join(names)}."


def _needle(answer: str, _answers: Answers) -> str:
    return "" if _mm(answer) is not None else "Write it in millimetres, between 0.5 and 50: 3.75 mm."


def _mm(answer: str) -> float | None:
    plain = read_number(answer)
    return read_needle(f"{plain} mm") if plain is not None else read_needle(answer)


def _gauge(most: int) -> Callable[[str, Answers], str]:
    def trouble(answer: str, _answers: Answers) -> str:
        amount = read_number(answer)
        return (
            "" if amount is not None and 0.01 <= amount <= most else f"Write a number above 0, up to {most}."
        )

    return trouble


def _cast_on(answer: str, answers: Answers) -> str:
    sizes = len(read_sizes(answers["sizes"]))
    values = read_sizes(answer)
    if not values or not all(part.isascii() and part.isdigit() and 0 < int(part) <= 2000 for part in values):
        return "Write a number of stitches, or one for each size: 80 (84, 92)."
    if len(values) not in (1, sizes):
        return f"There are {sizes} sizes: write one number, or {sizes}."
    return ""


def _round(answer: str, _answers: Answers) -> str:
    return "" if answer.lower() in ("round", "rows") else "Answer round or rows."


QUESTIONS = (
    StartQuestion(name="title", text="What is it called?", default="My garment", trouble=_any),
    StartQuestion(name="units", text="Does the pattern measure in cm or in?", default="cm", trouble=_unit),
    StartQuestion(name="sizes", text="Which sizes does it print, as printed?", default="one", trouble=_sizes),
    StartQuestion(
        name="size",
        text="Which of them do you knit?",
        default="",
        trouble=_size,
        only=lambda answers: len(read_sizes(answers["sizes"])) > 1,
    ),
    StartQuestion(name="yarn", text="What do you call the yarn?", default="main yarn", trouble=_any),
    StartQuestion(name="needle", text="Which needle, in millimetres?", default="4 mm", trouble=_needle),
    StartQuestion(name="stitches", text="Gauge: how many stitches?", default="22", trouble=_gauge(200)),
    StartQuestion(name="rounds", text="Gauge: how many rounds or rows?", default="30", trouble=_gauge(300)),
    StartQuestion(name="section", text="Which part comes first?", default="body", trouble=_any),
    StartQuestion(name="cast_on", text="How many stitches are cast on?", default="80", trouble=_cast_on),
    StartQuestion(
        name="shape", text="Is it knitted in the round or in rows?", default="round", trouble=_round
    ),
)
"""The questions, in the order asked."""


def default_of(question: StartQuestion, answers: Answers) -> str:
    """Return what an empty answer means; for the size to knit, the middle one."""
    if question.name == "size":
        names = read_sizes(answers["sizes"])
        return names[(len(names) - 1) // 2]
    return question.default


def first_file(answers: Answers) -> str:
    """Write the commented project file of a newly begun garment.

    Args:
        answers: The answer to every question, each accepted.

    Returns:
        The whole file. Always: it passes every check.
    """
    return "\n".join((*_head_rows(answers), *_gauge_rows(answers), *_work_rows(answers))) + "\n"


def _head_rows(answers: Answers) -> list[str]:
    """Write the title, the sizes, the size to knit, and the yarn."""
    inches = answers["units"].lower() == "in"
    names = read_sizes(answers["sizes"])
    found = find_size(answers.get("size", ""), names)
    rows = [
        "# One garment. Type the pattern below as it is printed; `stepper check` tells what cannot be read,",
        "# `stepper wording` prints every wording that can.",
        "",
        f"title: {value(answers['title'])}",
        "# finish_by: 2027-02-14         # the day it should be done",
        f"units: {'in' if inches else 'cm'}" + " " * 23 + "# cm or in; any length may carry its own unit",
        "",
        "# The sizes in the order of every list of the pattern: 80 (84, 92) sts.",
        f"sizes: {size_line(names)}",
    ]
    if len(names) > 1 and found is not None:
        rows += ["knit:", f"  size: {value(names[found])}"]
        rows += ["  # then:                       # another size from a labelled line on"]
        rows += [f"  #   - {{from: First increase, size: {value(names[-1])}}}"]
    rows += [
        "",
        "yarn:                           # the letters that the pattern and its charts use",
        f"  MC: {{name: {value(answers['yarn'])}}}",
        '  # A: {name: pine, colour: "#1f4d3a", skein: {grams: 50, metres: 175}, bought: 1}',
        "",
    ]
    return rows


def _gauge_rows(answers: Answers) -> list[str]:
    """Write the gauge, and samples of how charts and alterations are written."""
    over = "4 in" if answers["units"].lower() == "in" else "10 cm"
    return [
        f"gauge:                          # stitches and rounds over {over}; blocked: after washing",
        f"  stockinette: {{needle: {format_number(_mm(answers['needle']) or 4)} mm, "
        f"stitches: {format_number(read_number(answers['stitches']) or 22)}, "
        f"rounds: {format_number(read_number(answers['rounds']) or 30)}}}",
        "  # rib: {needle: 3.5 mm, stitches: 24, rounds: 32, blocked: {stitches: 23, rounds: 31}}",
        "",
        "# charts:                       # the first round is the BOTTOM line, read from right to left",
        "#   trail:",
        '#     key: {".": MC, a: A}',
        "#     rows: |",
        "#       a..a",
        "#       .aa.",
        "",
        "# alterations:                  # what you do differently",
        "#   - note: two rounds more of ribbing",
        "",
    ]


def _work_rows(answers: Answers) -> list[str]:
    """Write the first section, with a first line and a last."""
    in_rounds = answers["shape"].lower() == "round"
    return [
        "sections:                       # parts in the order they are knitted",
        f"  - name: {value(answers['section'])}",
        "    work: |",
        f"      Cast on {list_values(read_sizes(answers['cast_on']))} sts.",
        "      Join in the round." if in_rounds else "      Work flat.",
        "      # Type the pattern's own lines here, for example:",
        "      #   *K2, p2; rep from * to end. Work for 5 cm.",
        "      #   First increase: increase evenly to 96 sts.",
        f"      Knit 1 {'round' if in_rounds else 'row'}.",
        "      Bind off.",
    ]
