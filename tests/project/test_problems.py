"""Problems are told with their place, the line and a caret, all at once."""

from __future__ import annotations

from stepper.project.problems import Problem, Span, nearest, one_of, render_problem, render_problems


def test_a_problem_is_shown_with_its_line_and_a_caret() -> None:
    """The form editors jump to: file, line, column, then the line itself."""
    problem = Span(line=2, column=7, length=3).problem("`size` is bad.", "Write it well.")
    assert render_problem(problem, ["title: x", "size: bad"], "a.yaml") == (
        "a.yaml:2:7: error: `size` is bad.\n    2 | size: bad\n      |       ^^^\n  Write it well."
    )


def test_a_long_line_is_cut_around_the_place() -> None:
    """A ten-thousand-character line must not flood the terminal."""
    problem = Problem(line=1, column=5001, message="here.", length=2)
    shown = render_problem(problem, ["x" * 5000 + "YY" + "x" * 5000], "a.yaml")
    assert max(len(row) for row in shown.splitlines()) < 120
    marks = shown.splitlines()[2]
    assert shown.splitlines()[1][marks.index("^")] == "Y"


def test_all_problems_are_told_in_the_order_of_the_file() -> None:
    """One run shows everything there is to mend."""
    late = Problem(line=9, column=1, message="late.")
    early = Problem(line=2, column=1, message="early.")
    text = render_problems([late, early, late], "\n" * 9, "a.yaml")
    assert text.index("early") < text.index("late")
    assert text.endswith("2 problems in a.yaml. Nothing was changed.")


def test_a_hint_is_given_once_where_the_next_problem_has_the_same() -> None:
    """Under each of thirty rows that are not read it hid the rows; what a word is meant for is told each time."""
    made = [Problem(line=at, column=1, message="not read.", hint=hint) for at, hint in ((1, "Settle."), (2, "Settle."), (3, 'Did you mean "k"?'), (4, 'Did you mean "k"?'))]
    text = render_problems(made, "\n" * 9, "a.yaml")
    assert text.count("Settle.") == 1
    assert text.count("Did you mean") == 2


def test_the_nearest_choice_is_offered_only_when_it_is_near() -> None:
    """A wild guess misleads more than none."""
    assert nearest("stokinette", ["stockinette", "rib"]) == 'Did you mean "stockinette"?'
    assert nearest("xyz", ["stockinette", "rib"]) == ""


def test_choices_read_as_prose() -> None:
    """"a, b or c"."""
    assert one_of(["a", "b", "c"]) == "a, b or c"
    assert one_of([]) == ""
