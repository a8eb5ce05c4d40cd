from __future__ import annotations

from hypothesis import given, settings
from hypothesis import strategies as st

from stepper.plan.compile import compile_plan
from stepper.project.page.questions import QUESTIONS, default_of, first_file
from stepper.project.reader import read_project


def answered(given_answers: dict[str, str]) -> dict[str, str]:
    """Answer every question: with what is given where it will do, else with the default."""
    answers: dict[str, str] = {}
    for question in QUESTIONS:
        if not question.only(answers):
            continue
        answer = given_answers.get(question.name, "").strip()
        fits = answer and not question.trouble(answer, answers)
        answers[question.name] = answer if fits else default_of(question, answers)
    return answers


@given(
    st.fixed_dictionaries(
        {
            "title": st.text(max_size=30),
            "units": st.sampled_from(["cm", "in", "IN"]),
            "sizes": st.sampled_from(["one", "S (M, L)", "1 (2, 3, 4)", "2-4 yrs (6-8 yrs)", "a: [b], c"]),
            "size": st.sampled_from(["M", "3", "l", "q"]),
            "yarn": st.text(max_size=20),
            "needle": st.sampled_from(["3.75", "4 mm", "US 7", "0"]),
            "stitches": st.sampled_from(["21.5", "1/3", "0.001", "199"]),
            "rounds": st.sampled_from(["30", "29.25"]),
            "section": st.text(max_size=20),
            "cast_on": st.sampled_from(["80", "80 (90, 100)", "1", "60 (64, 68, 72)", "٣"]),
            "shape": st.sampled_from(["round", "rows"]),
        }
    )
)
@settings(max_examples=80, deadline=None)
def test_whatever_is_answered_the_file_is_sound(given_answers: dict[str, str]) -> None:
    """The first file a knitter sees has no fault in it."""
    reading = read_project(first_file(answered(given_answers)))
    assert reading.problems == ()
    assert reading.project is not None
    assert compile_plan(reading.project).plan is not None


def test_every_default_will_do() -> None:
    """Enter all the way through gives a file."""
    answers = answered({})
    for each in QUESTIONS:
        if each.only(answers):
            assert each.trouble(answers[each.name], answers) == ""


def test_an_answer_that_will_not_do_is_told_with_what_would() -> None:
    """The question comes again with the reason."""
    trouble = {question.name: question.trouble for question in QUESTIONS}
    assert trouble["units"]("ells", {}) == "Answer cm or in."
    assert trouble["size"]("Q", {"sizes": "S (M)"}) == "The sizes are S, M."
    assert trouble["cast_on"]("8 (9, 10)", {"sizes": "S (M)"}) == "There are 2 sizes: write one number, or 2."
    assert trouble["needle"]("thick", {}).startswith("Write it in millimetres")
